"""The figures, working and tables of the gravity sheet."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import practice, water
from calc.gravity import Break, crests, dips
from calc.page.answer import Column, Figure, Step, Table, Value
from calc.pipe import pipes
from calc.sheets.parts.line_judge import below_zero
from calc.sheets.parts.pipe_working import loss_steps
from calc.units import GRAVITY

if TYPE_CHECKING:
    from calc.gravity import State
    from calc.page.answer import Cells
    from calc.sheets.gravity.case import Case
    from calc.units import Reader

WORDS = {"stop": "too weak", "care": "borderline", "note": "works", "": "comfortable"}
MOST_SIZES = 8  # in the table of pipes; our choice


def figures(case: Case, reader: Reader) -> tuple[Figure, ...]:
    """Pressure at the outlet, the flow that comes, pressures along the pipe."""
    fall, most = case.fall, case.fall.most
    needed = reader.show(case.need.works_pa, "pressure")
    found = [
        Figure("Running pressure at the outlet", case.left, "pressure", main=True,
               note=below_zero(case.left)),
        Figure("Maximum flow it brings", case.comes, "flow", note=f"with {needed} left"),
        Figure("With its end wide open", case.open_flow, "flow"),
        Figure("Static pressure at the outlet", case.static, "pressure",
               note=below_zero(case.static)),
        Figure("Maximum pressure in the pipe", most.pressure_pa, "pressure",
               note=f"with no flow, {_at(most, case, reader)}"),
        Figure("Water speed", case.section.speed(case.flow), "speed"),
    ]  # fmt: skip
    if case.counted:
        least = fall.least(case.flow)
        found.append(
            Figure("Lowest pressure on the way", least.before_pa, "pressure",
                   note=_at(least, case, reader))
        )  # fmt: skip
    if case.counted and case.starved and case.spring is not None and case.drop_m > 0:
        full = fall.full_from(case.spring)
        found.append(
            Figure("Pipe that runs part full, wide open", full, "length", note="from the source")
        )
    return tuple(found)


def _at(state: State, case: Case, reader: Reader) -> str:
    if state.spot == case.fall.end:
        return "at the outlet"
    return f"{reader.show(state.spot.distance_m, 'length')} along"


# Working -------------------------------------------------------------------------------------


def steps(case: Case, reader: Reader) -> tuple[Step, ...]:
    """From the drop to the pressure at the outlet, and the flow that comes."""
    fall, line = case.fall, case.section
    section = line.sections[0]
    weight = {
        "rho": Value(water.density(fall.temperature_k), "density", 4),
        "g": Value(GRAVITY, "number", 6),
    }
    drop = Value(case.drop_m, "length")
    found = [
        Step(
            "The drop as pressure, with no flow",
            "p_s = rho * g * H",
            {"H": drop, **weight},
            Value(fall.weight * case.drop_m, "pressure"),
            note="" if not fall.breaks else "Without what takes pressure away on the way.",
            source="Hydrostatics",
        ),
        Step(
            "Length with bends and valves",
            "L = L_pipe * (1 + a)",
            {"L_pipe": Value(fall.length_m, "length"), "a": Value(fall.extra, "percent")},
            Value(section.length_m, "length"),
        ),
        *loss_steps(line, section, case.flow),
    ]
    if not fall.breaks:
        found.append(
            Step(
                "Pressure left at the outlet",
                "p = rho * g * (H - h_f)",
                {"H": drop, "h_f": Value(line.loss(case.flow), "head"), **weight},
                Value(case.left, "pressure"),
            )
        )
    found.append(_most(case, reader))
    return tuple(found)


def _most(case: Case, reader: Reader) -> Step:
    """The flow at which the first pressure is used up."""
    fall = case.fall
    spot = fall.limit(case.need.works_pa) if case.comes else fall.end
    at = "the outlet"
    if spot != fall.end:
        at = "a tank or valve" if isinstance(spot, Break) else "a crest"
    flow = reader.show(case.comes, "flow")
    note = (
        f"Found by trial: {flow}. With more, the pressure line would fall below what is needed at "
        f"{at}, {reader.show(spot.distance_m, 'length')} from the source."
    )
    return Step("The maximum flow it brings", note=note)


# Tables --------------------------------------------------------------------------------------


def tables(case: Case, reader: Reader) -> tuple[Table, ...]:
    """What each size would bring, and the pressures along the pipe."""
    sizes = (_sizes(case, reader),) if case.fall.pipe.kind in pipes.KINDS else ()
    return (*sizes, _along(case, reader))


def _sizes(case: Case, reader: Reader) -> Table:
    every = [one for one in pipes.sizes(case.fall.pipe.kind) if one.inside_m > 0.01]
    at = next((i for i, one in enumerate(every) if one == case.fall.pipe), 0)
    first = max(0, min(at - MOST_SIZES // 2, len(every) - MOST_SIZES))
    rows: list[Cells] = []
    marked = []
    for pipe in every[first : first + MOST_SIZES]:
        one = case.with_pipe(pipe)
        if pipe == case.fall.pipe:
            marked.append(len(rows))
        level = practice.enough(one.left, case.need.works_pa, case.need.comfortable_pa)
        left = one.left if one.left > 0 and one.open_flow >= case.flow else None
        result = WORDS[level] if left is not None else "does not arrive"
        rows.append((pipe.name, one.comes, left, result))
    flow, needed = (
        reader.show(case.flow, "flow"),
        reader.show(case.need.works_pa, "pressure"),
    )
    columns = (
        Column("Size"),
        Column("Maximum flow", "flow"),
        Column(f"Left with {flow}", "pressure"),
        Column("Result"),
    )
    note = f"The most leaves {needed} at the outlet. What the spring gives is another matter."
    return Table("Every size of this pipe", columns, tuple(rows), tuple(marked), (), note)


def _along(case: Case, reader: Reader) -> Table:
    fall = case.fall
    high, low = crests(fall.spots), dips(fall.spots)
    rows: list[Cells] = []
    for still, running in zip(fall.standing, case.states, strict=True):
        spot = still.spot
        name = "outlet" if spot == fall.end else "source" if spot == fall.spots[0] else ""
        if isinstance(spot, Break):
            name = case.kept
        elif spot in high:
            name = "crest: air valve"
        elif spot in low:
            name = "dip: drain"
        rows.append(
            (
                name,
                spot.distance_m,
                spot.height_m + case.datum_m,
                still.pressure_pa,
                running.before_pa,
            )
        )
    columns = (
        Column("Point"),
        Column("Distance", "length"),
        Column("Height", "length"),
        Column("With no flow", "pressure"),
        Column("Running", "pressure"),
    )
    rating = case.section.sections[0].pipe.rating_pa
    note = "" if rating is None else f"The pipe is rated {reader.show(rating, 'pressure')}, cold."
    if not case.counted:
        note += " Heights are above the source's water."
    return Table("Along the pipe", columns, tuple(rows), note=note.strip())
