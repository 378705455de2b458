"""A sheet asked as a reader asks it: by typed texts, in one of the two systems of units."""

from calc.page.form import work
from calc.page.state import State


def outcome(sheet, system="metric", **texts):
    return work(sheet, State(system, texts))


def answer(sheet, system="metric", **texts):
    """The answer where every text can be read and worked with."""
    found = outcome(sheet, system, **texts)
    assert found.errors == {}, found.errors
    return found.answer


def figures(sheet, system="metric", **texts):
    """{label: value in SI}."""
    return {f.label: f.value for f in answer(sheet, system, **texts).figures}


def warned(sheet, system="metric", **texts):
    """All that is said beside the verdict as one text: findings, fixes, cautions."""
    found = answer(sheet, system, **texts)
    said = (one.text for one in found.findings)
    return " ".join((*said, *(fix.text for fix in found.fixes), *found.cautions))


def found(sheet, system="metric", **texts):
    """{key: level} of the findings."""
    return {one.key: one.level for one in answer(sheet, system, **texts).findings}


def figure(found, label):
    """The value of one figure of an answer, in SI."""
    return next(f.value for f in found.figures if f.label == label)
