"""What the pipe-sizing sheet shows: figures, working, tables, chart and cautions."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.page.answer import Chart, Column, Figure, Series, Step, Table, Value
from calc.pipe import friction
from calc.sheets.parts.line_cautions import pipe_cautions
from calc.sheets.parts.line_judge import below_zero
from calc.sheets.parts.pipe_working import line_steps, rating_step, sections_table

if TYPE_CHECKING:
    from calc.page.answer import Cells
    from calc.pipe.line import Line
    from calc.sheets.pipe.case import Case, Trial

POINTS = 20  # of each line of the chart
HW_COLD, HW_WARM = 277.15, 298.15  # K, 4-25 degC, where Hazen-Williams' C holds; common practice
RUNNING, STATIC = "Running pressure at the outlet", "Static pressure at the outlet"
FITS, CLOSE = "suitable", "borderline"


def figures(case: Case, line: Line, chosen: Trial | None, shown: Trial) -> tuple[Figure, ...]:
    """Of the line as it is where sections were given, else of the size shown."""
    flow = case.need.flow_m3s
    left = line.left(flow)
    of = "as it is" if case.counted else shown.pipe.label
    found = [
        Figure(RUNNING, left, "pressure", main=True, note=below_zero(left) or of),
        Figure("Water speed", line.speed(flow), "speed"),
        Figure("Friction loss", line.weight * line.loss(flow), "pressure"),
        Figure(STATIC, line.static, "pressure", note=below_zero(line.static)),
        Figure(
            "Maximum pressure in the pipe",
            max(one.pressure_pa for one in line.stresses()),
            "pressure",
            note="with no flow",
        ),
    ]
    if not case.counted or chosen is not None:
        label = "Inside diameter of one size throughout" if case.counted else "Inside diameter"
        found.insert(
            1, Figure(label, shown.pipe.inside_m, "diameter", main=True, note=shown.pipe.label)
        )
    if not case.counted and shown.rating is not None:
        found.append(Figure("Rating at its hottest", shown.rating, "pressure"))
    return tuple(found)


# The working ---------------------------------------------------------------------------------


def steps(case: Case, line: Line, shown: Trial) -> tuple[Step, ...]:
    """The working, from the flow to the pressure at the outlet and the rating."""
    found = (*line_steps(line, case.need.flow_m3s), rating_step(line))
    return found if case.counted else (*found, _hazen_williams_step(case, shown))


def _hazen_williams_step(case: Case, shown: Trial) -> Step:
    pipe, flow, length = shown.pipe, case.need.flow_m3s, case.line.length_m
    loss = friction.hazen_williams(flow, pipe.inside_m, length, pipe.hazen_williams_c)
    note = (
        "Many printed charts use it. It leaves out how thick the water is and gives one C to every "
        "speed and diameter, so it differs from Darcy-Weisbach, most in narrow pipe and slow "
        "water. The answer above rests on Darcy-Weisbach."
    )
    if not HW_COLD <= case.line.temperature_k <= HW_WARM:
        note += " It is for cold water; at this temperature set it aside."
    return Step(
        "For comparison: the straight pipe by Hazen-Williams",
        "h_HW = 10.67 * L * Q**1.852 / (C**1.852 * D**4.8704)",
        {
            "L": Value(length, "length"),
            "Q": Value(flow, "flow"),
            "C": Value(pipe.hazen_williams_c, "number"),
            "D": Value(pipe.inside_m, "diameter", 4),
        },
        Value(loss, "head"),
        note=note,
        source="Hazen and Williams, SI form, from memory",
    )


# Tables and chart ----------------------------------------------------------------------------


def tables(case: Case, tries: tuple[Trial, ...], chosen: Trial | None) -> tuple[Table, ...]:
    """Every size tried, and the two formulas or the sections."""
    every = _every_size(case, tries, chosen)
    if case.counted:
        return every, sections_table(case.line, case.need.flow_m3s)
    return every, _two_formulas(case, tries)


def _every_size(case: Case, tries: tuple[Trial, ...], chosen: Trial | None) -> Table:
    columns = (
        Column("Size"),
        Column("Inside diameter", "diameter"),
        Column("Water speed", "speed"),
        Column("Friction loss", "head"),
        Column("Pressure at the outlet", "pressure"),
        Column("Rating at its hottest", "pressure"),
        Column("Suitable?"),
    )
    rows = tuple(_size_row(trial) for trial in tries)
    marked = (tries.index(chosen),) if chosen else ()
    dimmed = tuple(i for i, trial in enumerate(tries) if not trial.fits)
    note = f"{tries[0].pipe.kind_label}: {tries[0].pipe.source}. The loss counts the fittings."
    title = "Every size, throughout the line" if case.counted else "Every size of this pipe"
    return Table(title, columns, rows, marked, dimmed, note)


def _size_row(trial: Trial) -> Cells:
    left = trial.left if trial.left >= 0 else None
    remark = ", ".join(trial.reasons) or (CLOSE if trial.close else FITS)
    return (
        trial.pipe.name,
        trial.pipe.inside_m,
        trial.speed,
        trial.loss,
        left,
        trial.rating,
        remark,
    )


def _two_formulas(case: Case, tries: tuple[Trial, ...]) -> Table:
    columns = (
        Column("Size"),
        Column("Darcy-Weisbach", "head"),
        Column("Hazen-Williams", "head"),
        Column("Difference", "percent", 2),
    )
    rows = []
    flow, length = case.need.flow_m3s, case.line.length_m
    for trial in tries:
        pipe = trial.pipe
        straight = trial.line.straight_loss_in(trial.line.sections[0], flow)
        other = friction.hazen_williams(flow, pipe.inside_m, length, pipe.hazen_williams_c)
        rows.append((pipe.name, straight, other, other / straight - 1))
    note = f"Straight pipe only, C = {tries[0].pipe.hazen_williams_c:.0f}."
    return Table("Friction loss by the two usual formulas", columns, tuple(rows), note=note)


def chart(case: Case, tries: tuple[Trial, ...], shown: Trial) -> Chart:
    """Pressure at the outlet against the flow, for the size shown and its neighbours."""
    at, flow = tries.index(shown), case.need.flow_m3s
    near = tries[max(0, at - 1) : at + 2]
    lines = [(t.pipe.label, t.line) for t in (shown, *(t for t in near if t is not shown))]
    own = case.line if case.counted else shown.line
    if case.counted:
        lines.insert(0, ("As it is", case.line))
    flows = tuple(2 * flow * i / POINTS for i in range(POINTS + 1))
    series = tuple(Series(name, *_line(line, flows)) for name, line in lines)
    left = own.left(flow)
    return Chart(
        "flow",
        "Pressure at the outlet at each flow",
        "Pressure at the outlet against the flow: a falling curve for the size shown and for the "
        "next smaller and larger; the narrower the pipe, the steeper it falls.",
        "Flow",
        "flow",
        "Pressure at the outlet",
        "pressure",
        tuple(s for s in series if s.xs),
        ((flow, left, "yours"),) if left >= 0 else (),
        ((case.need.works_pa, "needed"),),
    )


def _line(line: Line, flows: tuple[float, ...]) -> tuple[tuple[float, ...], tuple[float, ...]]:
    """The points above zero, ended where the line meets zero."""
    lefts = [line.left(flow) for flow in flows]
    kept = [(q, p) for q, p in zip(flows, lefts, strict=True) if p >= 0]
    if 0 < len(kept) < len(flows):
        (q, above), below = kept[-1], lefts[len(kept)]
        kept.append((q + (flows[len(kept)] - q) * above / (above - below), 0.0))
    return tuple(q for q, _ in kept), tuple(p for _, p in kept)


# What to know --------------------------------------------------------------------------------


def cautions(line: Line, flow: float) -> tuple[str, ...]:
    """What belongs to these numbers but never counts."""
    found = list(pipe_cautions((one.pipe for one in line.sections), line.temperature_k))
    section = line.sections[line.worst(flow)]
    speed, bore = line.speed_in(section, flow), section.pipe.inside_m
    re = friction.reynolds(speed, bore, line.viscosity)
    if friction.LAMINAR_LIMIT <= re < friction.TURBULENT_FROM:
        found.append(
            "This flow lies between smooth and turbulent, where it is not steady: the loss may be "
            "smaller or larger than shown."
        )
    if any("minimum wall" in one.pipe.source for one in line.sections):
        found.append(
            "The inside diameter is that of the thinnest wall the standard allows. Real walls are "
            "a little thicker: friction may be a tenth higher. Leave some pressure to spare."
        )
    return tuple(found)
