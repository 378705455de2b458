"""What the pipe-sizing sheet shows: figures, working, tables, chart, warnings and links."""

from dataclasses import replace

from calc import water
from calc.page.answer import Chart, Column, Figure, Link, Series, Step, Table, Value, Warning
from calc.pipe import friction
from calc.sheets.pipe.case import FAST
from calc.units import GRAVITY, PSI

POINTS = 20  # of each line of the chart
REDUCER = 80 * PSI  # Pa, most allowed at a tap: IPC 604.8 and UPC 608.2, from memory
TURBULENT = 4000.0  # Re, above it flow is turbulent in any pipe; common practice
HW_COLD, HW_WARM = 277.15, 298.15  # K, 4-25 degC, where Hazen-Williams' C holds; common practice


def figures(run, trial):
    found = [
        Figure("Left at the far end", trial.left, "pressure", main=True, note=trial.pipe.label),
        Figure("Inside diameter", trial.pipe.inside_m, "diameter", main=True),
        Figure("Speed in the pipe", trial.speed, "speed"),
        Figure("Taken by friction and fittings", run.weight * trial.loss, "pressure"),
        Figure("At the far end with taps shut", run.standing, "pressure"),
    ]
    if trial.rating is not None:
        found.append(Figure("Rating of this pipe as hot as it gets", trial.rating, "pressure"))
    return tuple(found)


# The working -----------------------------------------------------------------


def steps(run, trial):
    given = {
        "D": Value(trial.pipe.inside_m, "diameter", 4),
        "v": Value(trial.speed, "speed"),
        "L": Value(run.length, "length"),
        "g": Value(GRAVITY, "number", 6),
        "rho": Value(water.density(run.water), "density", 4),
    }
    return (
        *_speed_steps(run, trial, given),
        *_loss_steps(run, trial, given),
        _left_step(run, trial, given),
        _rating_step(run, trial, given),
        _hazen_williams_step(run, trial, given),
    )


def _speed_steps(run, trial, given):
    viscosity = Value(run.viscosity, "kinematic", 4)
    re = friction.reynolds(trial.speed, trial.pipe.inside_m, run.viscosity)
    number = Value(re, "number", 4)
    factor = friction.friction_factor(re, trial.pipe.roughness_m / trial.pipe.inside_m)
    found = [
        Step(
            "Speed in the pipe",
            "v = Q / (pi / 4 * D**2)",
            {"Q": Value(run.flow, "flow"), "D": given["D"]},
            given["v"],
            note=f"{trial.pipe.label}, by its real inside diameter.",
            source=trial.pipe.source,
        ),
        Step(
            "Reynolds number",
            "Re = v * D / nu",
            {"v": given["v"], "D": given["D"], "nu": viscosity},
            number,
        ),
    ]
    if re < friction.LAMINAR_LIMIT:
        formula, inside = "f = 64 / Re", {"Re": number}
        note, source = "The flow is smooth (laminar): roughness does not count.", "Hagen-Poiseuille"
    else:
        formula = "f = 1 / (2 * log10(eps / (3.7 * D) + 2.51 / (Re * sqrt(f))))**2"
        eps = Value(trial.pipe.roughness_m, "roughness")
        inside = {"eps": eps, "D": given["D"], "Re": number, "f": Value(factor, "number", 4)}
        note, source = (
            "f stands on both sides: it is the number for which they agree.",
            "Colebrook 1939",
        )
    found.append(Step("Friction factor", formula, inside, Value(factor, "number", 4), note, source))
    return found


def _loss_steps(run, trial, given):
    bore = trial.pipe.inside_m
    re = friction.reynolds(trial.speed, bore, run.viscosity)
    factor = friction.friction_factor(re, trial.pipe.roughness_m / bore)
    names = {key: given[key] for key in ("L", "D", "v", "g")}
    straight = Step(
        "Head lost in the straight pipe",
        "h_f = f * L / D * v**2 / (2 * g)",
        {"f": Value(factor, "number", 4), **names},
        Value(run.straight_loss(trial.pipe), "head"),
        source="Darcy-Weisbach",
    )
    if not run.fittings:
        return (straight, Step("Fittings", note="None are counted."))
    added = Step(
        "Loss coefficients of the fittings",
        "K = " + " + ".join(f"{count} * K_{fitting.key}" for fitting, count in run.fittings),
        {
            f"K_{fitting.key}": Value(friction.fitting_coefficient(fitting, bore), "number")
            for fitting, _ in run.fittings
        },
        Value(run.k(trial.pipe), "number"),
        note="; ".join(f"{count} × {fitting.name}" for fitting, count in run.fittings)
        + ". K of bends and valves is their length in bores times the friction factor "
        f"f_T = {friction.turbulent_factor(bore):.4f} of rough flow in clean steel of this bore.",
        source="; ".join(dict.fromkeys(fitting.source for fitting, _ in run.fittings)),
    )
    local = Step(
        "Head lost in the fittings",
        "h_m = K * v**2 / (2 * g)",
        {"K": Value(run.k(trial.pipe), "number"), "v": given["v"], "g": given["g"]},
        Value(run.local_loss(trial.pipe), "head"),
    )
    return straight, added, local


def _left_step(run, trial, given):
    local = run.local_loss(trial.pipe)
    return Step(
        "What is left at the far end",
        "p_end = p - rho * g * (z + h_f + h_m)",
        {
            "p": Value(run.start, "pressure"),
            "rho": given["rho"],
            "g": given["g"],
            "z": Value(run.climb, "length"),
            "h_f": Value(run.straight_loss(trial.pipe), "head"),
            "h_m": Value(local, "head"),
        },
        Value(trial.left, "pressure"),
    )


def _rating_step(run, trial, given):
    rated = (
        "is within the rating"
        if trial.rating and trial.rating >= run.lowest_point
        else "is above the rating"
    )
    if trial.rating is None:
        rated = "cannot be compared: the standard gives no rating so hot"
    return Step(
        "Pressure the pipe must stand at its lowest point",
        "p_low = p_most + rho * g * max(0, -z)",
        {
            "p_most": Value(run.highest, "pressure"),
            "rho": given["rho"],
            "g": given["g"],
            "z": Value(run.climb, "length"),
        },
        Value(run.lowest_point, "pressure"),
        note=f"This {rated}. Water hammer comes on top.",
        source=trial.pipe.source,
    )


def _hazen_williams_step(run, trial, given):
    pipe = trial.pipe
    loss = friction.hazen_williams(run.flow, pipe.inside_m, run.length, pipe.hazen_williams_c)
    return Step(
        "For comparison: the straight pipe by Hazen-Williams",
        "h_HW = 10.67 * L * Q**1.852 / (C**1.852 * D**4.8704)",
        {
            "L": given["L"],
            "Q": Value(run.flow, "flow"),
            "C": Value(pipe.hazen_williams_c, "number"),
            "D": given["D"],
        },
        Value(loss, "head"),
        note="Many printed charts use it. It leaves out how thick the water is and gives one C to "
        "every "
        "speed and width, so it differs from Darcy-Weisbach, most in narrow pipe and slow water. "
        "The answer above rests on Darcy-Weisbach.",
        source="Hazen and Williams, SI form, from memory",
    )


# Tables and chart ------------------------------------------------------------


def tables(run, tries, chosen):
    return _every_size(tries, chosen), _two_formulas(run, tries)


def _every_size(tries, chosen):
    columns = (
        Column("Size"),
        Column("Inside", "diameter"),
        Column("Speed", "speed"),
        Column("Head lost", "head"),
        Column("Left at the far end", "pressure"),
        Column("Rated", "pressure"),
        Column("In or out"),
    )
    rows = tuple(
        (
            t.pipe.name,
            t.pipe.inside_m,
            t.speed,
            t.loss,
            t.left if t.left >= 0 else None,
            t.rating,
            ", ".join(t.reasons) or "fits",
        )
        for t in tries
    )
    marked = (tries.index(chosen),) if chosen else ()
    dimmed = tuple(i for i, t in enumerate(tries) if not t.fits)
    note = f"{tries[0].pipe.kind_label}: {tries[0].pipe.source}. Head lost counts the fittings."
    return Table("Every size of this pipe", columns, rows, marked, dimmed, note)


def _two_formulas(run, tries):
    columns = (
        Column("Size"),
        Column("Darcy-Weisbach", "head"),
        Column("Hazen-Williams", "head"),
        Column("Difference", "percent", 2),
    )
    rows = []
    for trial in tries:
        pipe = trial.pipe
        straight = run.straight_loss(pipe)
        other = friction.hazen_williams(run.flow, pipe.inside_m, run.length, pipe.hazen_williams_c)
        rows.append((pipe.name, straight, other, other / straight - 1))
    note = f"Straight pipe only, C = {tries[0].pipe.hazen_williams_c:.0f}."
    return Table("Head lost by the two usual formulas", columns, tuple(rows), note=note)


def chart(run, tries, trial):
    at = tries.index(trial)
    near = tries[max(0, at - 1) : at + 2]
    ordered = [trial, *(t for t in near if t is not trial)]
    end = 2 * run.flow
    flows = tuple(end * i / POINTS for i in range(POINTS + 1))
    series = tuple(Series(t.pipe.label, *_line(run, t.pipe, flows)) for t in ordered)
    marks = ((run.flow, trial.left, "yours"),) if trial.left >= 0 else ()
    return Chart(
        "flow",
        "What is left at each flow",
        "Pressure left at the far end against the flow: a falling curve for the size shown and for "
        "the "
        "next smaller and larger; the narrower the pipe, the steeper it falls.",
        "Flow",
        "flow",
        "Left at the far end",
        "pressure",
        tuple(s for s in series if s.xs),
        marks,
        ((run.wanted, "wanted"),),
    )


def _line(run, pipe, flows):
    """The points above zero, ended where the line meets zero."""
    lefts = [run.standing if q == 0 else replace(run, flow=q).left(pipe) for q in flows]
    kept = [(q, p) for q, p in zip(flows, lefts, strict=True) if p >= 0]
    if 0 < len(kept) < len(flows):
        (q, above), below = kept[-1], lefts[len(kept)]
        kept.append((q + (flows[len(kept)] - q) * above / (above - below), 0.0))
    return tuple(q for q, _ in kept), tuple(p for _, p in kept)


# What to know, and where to go on --------------------------------------------


def warnings(run, trial, reader):
    found = []
    if FAST in trial.reasons:
        speed, most = (reader.both(v, "speed") for v in (trial.speed, run.fastest))
        found.append(
            Warning(
                "care", f"Water runs at {speed}; {most} is allowed. Expect noise and water hammer."
            )
        )
    if run.standing > REDUCER:
        found.append(
            Warning(
                "care",
                f"With taps shut {reader.both(run.standing, 'pressure')} stands at the far end. "
                "Plumbing codes "
                f"commonly allow {reader.both(REDUCER, 'pressure')} at a tap: fit a pressure "
                "reducer.",
            )
        )
    re = friction.reynolds(trial.speed, trial.pipe.inside_m, run.viscosity)
    if friction.LAMINAR_LIMIT <= re < TURBULENT:
        found.append(
            Warning(
                "note",
                "This flow lies between smooth and turbulent, where it is not steady. It is "
                "counted as "
                "turbulent: the loss may be smaller, not larger.",
            )
        )
    if not HW_COLD <= run.water <= HW_WARM:
        found.append(
            Warning(
                "note",
                "The Hazen-Williams figure is for cold water; at this temperature set it aside.",
            )
        )
    if "minimum wall" in trial.pipe.source:
        found.append(
            Warning(
                "note",
                "The bore is that of the thinnest wall the standard allows. Real walls are a "
                "little thicker: "
                "friction may be a tenth higher, more in the smallest sizes. Leave some pressure "
                "to spare.",
            )
        )
    found.append(
        Warning(
            "note",
            "A coil that is kinked, an insert fitting or a clogged filter costs more than its "
            "pipe.",
        )
    )
    return tuple(found)


def links(run, trial, reader):
    shown = {
        "flow": reader.typed(run.flow, "flow"),
        "length": reader.typed(run.length, "length"),
        "kind": trial.pipe.kind,
        trial.pipe.kind: trial.pipe.size,
    }
    climb, start = reader.typed(run.climb, "length"), reader.typed(run.start, "pressure")
    return (
        Link(
            "Does the water reach, and how high",
            "reach",
            {**shown, "climb": climb, "pressure": start},
        ),
        Link("Water hammer in this pipe", "surge", {**shown, "pressure": start}),
    )
