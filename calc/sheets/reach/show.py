"""The figures, working, table and chart of the sheet that asks if the water reaches."""

from calc import water
from calc.page.answer import Chart, Column, Figure, Series, Step, Table, Value
from calc.pipe import friction
from calc.sheets.reach.case import HOSE, SHOWER
from calc.units import GRAVITY


def figures(line, values):
    running, standing = line.left(values.flow), line.left(0.0)
    return (
        Figure("Pressure at the top, running", running, "pressure", main=True),
        Figure("Standing, all taps shut", standing, "pressure"),
        Figure("Taken by the climb", line.climb * line.weight, "pressure"),
        Figure("Taken by friction", line.loss(values.flow) * line.weight, "pressure"),
        Figure(
            "Highest this pressure lifts", line.pressure / line.weight, "head", note="with no flow"
        ),
        Figure("Speed in the pipe", line.speed(values.flow), "speed"),
    )


def steps(line, values):
    density = Value(water.density(line.temperature), "density", 4)
    gravity = Value(GRAVITY, "number", 6)
    found = [
        Step(
            "The pump's pressure as a height of water",
            "H = p / (rho * g)",
            {"p": Value(line.pressure, "pressure"), "rho": density, "g": gravity},
            Value(line.pressure / line.weight, "head"),
        )
    ]
    if values.flow > 0:
        found += _friction_steps(line, values, gravity)
    loss = line.loss(values.flow)
    found.append(
        Step(
            "What is left at the top",
            "p_top = p - rho * g * (z + h_f)",
            {
                "p": Value(line.pressure, "pressure"),
                "rho": density,
                "g": gravity,
                "z": Value(line.climb, "length"),
                "h_f": Value(loss, "head"),
            },
            Value(line.left(values.flow), "pressure"),
        )
    )
    return tuple(found)


def _friction_steps(line, values, gravity):
    bore, speed = Value(line.pipe.inside_m, "diameter"), Value(line.speed(values.flow), "speed")
    viscosity = water.kinematic_viscosity(line.temperature)
    reynolds = speed.value * bore.value / viscosity
    factor = friction.friction_factor(reynolds, line.pipe.roughness_m / bore.value)
    return [
        Step(
            "Speed in the pipe",
            "v = Q / (pi / 4 * D**2)",
            {"Q": Value(values.flow, "flow"), "D": bore},
            speed,
            note=f"{line.pipe.label}: the bore is its real inside diameter.",
            source=line.pipe.source,
        ),
        Step(
            "Reynolds number",
            "Re = v * D / nu",
            {"v": speed, "D": bore, "nu": Value(viscosity, "kinematic", 4)},
            Value(reynolds, "number"),
        ),
        Step(
            "Friction factor",
            note=f"f = {factor:.4f}, from the Colebrook equation (64/Re in smooth, slow flow) for a "
            f"roughness of {line.pipe.roughness_m * 1e3:.4g} mm.",
            source="Colebrook 1939",
        ),
        Step(
            "Length with bends and valves",
            "L = L_pipe * (1 + a)",
            {"L_pipe": Value(values.length, "length"), "a": Value(values.extra, "percent")},
            Value(line.length, "length"),
        ),
        Step(
            "Head lost to friction",
            "h_f = f * L / D * v**2 / (2 * g)",
            {
                "f": Value(factor, "number"),
                "L": Value(line.length, "length"),
                "D": bore,
                "v": speed,
                "g": gravity,
            },
            Value(line.loss(values.flow), "head"),
            source="Darcy-Weisbach",
        ),
    ]


def taps(line, values, wanted):
    """What is left for the usual things open together."""
    cases = [
        ("Nothing: standing", 0.0),
        ("1 shower", SHOWER),
        ("2 showers", 2 * SHOWER),
        ("3 showers", 3 * SHOWER),
        ("1 hose", HOSE),
        ("2 showers and a hose", 2 * SHOWER + HOSE),
    ]
    rows = []
    for name, flow in cases:
        left = line.left(flow)
        if flow > values.most * (1 + 1e-9):
            remark = "more than the pump gives"
        elif left <= 0:
            remark = "does not arrive"
        else:
            remark = "enough" if left >= wanted else "weak"
        rows.append(
            (name, flow, max(left, 0.0) if remark != "more than the pump gives" else None, remark)
        )
    out = tuple(i for i, row in enumerate(rows) if row[3] not in ("enough", "weak"))
    columns = (
        Column("Open together"),
        Column("Flow", "flow"),
        Column("Left at the top", "pressure"),
        Column("Result"),
    )
    note = "A shower at 7.5 L/min (2 gpm), a hose at 38 L/min (10 gpm): common practice."
    return Table(
        "What opens together, and what that leaves", columns, tuple(rows), dimmed=out, note=note
    )


def chart(line, values, wanted):
    top = max(line.pressure / line.weight, line.climb, 1.0) * 1.05
    bottom = min(0.0, line.climb)
    heights = tuple(bottom + (top - bottom) * i / 20 for i in range(21))
    loss = line.loss(values.flow)
    standing = tuple(line.pressure - line.weight * z for z in heights)
    running = tuple(line.pressure - line.weight * (z + loss) for z in heights)
    return Chart(
        "climb",
        "What is left at each height",
        "Pressure left against the climb: two straight falling lines, standing and running; "
        "yours is marked on the running one.",
        "Climb from pump to tap",
        "length",
        "Pressure left",
        "pressure",
        (
            Series("Running, at your flow and length", *_above_zero(heights, running)),
            Series("Standing, all taps shut", *_above_zero(heights, standing)),
        ),
        marks=((line.climb, max(line.left(values.flow), 0.0), "yours"),),
        levels=((wanted, "wanted"),),
    )


def _above_zero(heights, pressures):
    """The points above zero, ended on the height where the line meets zero."""
    kept = [(z, p) for z, p in zip(heights, pressures, strict=True) if p >= 0]
    if kept and len(kept) < len(heights):
        after, below = heights[len(kept)], pressures[len(kept)]
        last, above = kept[-1]
        kept.append((last + (after - last) * above / (above - below), 0.0))
    return tuple(z for z, _ in kept), tuple(p for _, p in kept)
