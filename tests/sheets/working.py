"""Does a sheet's working hold: every printed formula, evaluated with its own numbers."""

import math

ALLOWED = {
    name: getattr(math, name)
    for name in ("sqrt", "log10", "log", "exp", "sin", "cos", "pi", "ceil", "floor")
} | {"min": min, "max": max, "abs": abs}


def check_working(answer, rel=1e-6):
    """Assert that each step's formula gives its result; returns how many were evaluated."""
    count = 0
    for step in answer.steps:
        if not step.formula:
            assert step.note, f"“{step.title}” has neither formula nor words"
            continue
        _target, _, right = step.formula.partition("=")
        names = {name: value.value for name, value in step.given.items()}
        found = eval(right.strip(), {"__builtins__": {}}, {**ALLOWED, **names})  # our own formulas
        told = f"{step.title}: {step.formula} with {names} gives {found}, said {step.result.value}"
        assert math.isclose(found, step.result.value, rel_tol=rel, abs_tol=1e-12), told
        count += 1
    assert count, "no step has a formula"
    return count
