"""What is to be done to make one supply of another, in words: several changes told as one list.

Told by what differs in the end, so that no step undoes another.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.pipe import fittings
from calc.sheets.parts import guard
from calc.sheets.parts.small_draw import charge_words, tank_fix

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.site.supply import OutletRow, SectionRow, Source, Supply
    from calc.units import Reader
HAIR = 1.0  # Pa, by which a pressure may differ and still be the same


def changes_told(old: Supply, new: Supply, reader: Reader) -> list[str]:
    """Sentences without their full stops, the pump's place first."""
    return [
        *_place(old.source, new.source, reader),
        *_pump(old.source, new.source, reader),
        *_suction(old.source, new.source),
        *_pipes(old, new),
        *_parts(old, new, reader),
        *_tanks(old, new, reader),
        *_outlets(old.outlets, new.outlets),
        *_guards(old.source, new.source, reader),
    ]


def _place(old: Source, new: Source, reader: Reader) -> Iterator[str]:
    if new.lift_m < old.lift_m:
        yield f"Place the pump {reader.show(old.lift_m - new.lift_m, 'length')} lower"
    if new.suction_length_m < old.suction_length_m:
        nearer = reader.show(old.suction_length_m - new.suction_length_m, "length")
        yield f"Place the pump {nearer} nearer to the water, at its own height"


def _pump(old: Source, new: Source, reader: Reader) -> Iterator[str]:
    if new.pump is not old.pump:
        yield f"Use a pump like the {new.pump.name[0].lower()}{new.pump.name[1:]}"
    if new.pumps > old.pumps:
        kind = "of this kind" if new.pump is old.pump else "like it"
        yield f"Fit one more pump {kind} in parallel"
    now, was = new.reads_pa, old.reads_pa
    if now is not None and was is not None and abs(now - was) > HAIR:
        verb = "Raise" if now > was else "Lower"
        yield f"{verb} the set pressure to {reader.show(now, 'pressure')}"


def _suction(old: Source, new: Source) -> Iterator[str]:
    if new.suction_pipe != old.suction_pipe:
        yield f"Use {new.suction_pipe.label} as the suction pipe"


def _way(row: SectionRow) -> str:
    return f"from {row.start} to {row.end}"


def _pipes(old: Supply, new: Supply) -> Iterator[str]:
    pairs = zip(old.sections, new.sections, strict=False)
    laid = [f"{now.pipe.label} {_way(now)}" for was, now in pairs if now.pipe != was.pipe]
    if laid:
        yield f"Lay {' and '.join(laid)}"


def _parts(old: Supply, new: Supply, reader: Reader) -> Iterator[str]:
    for was, now in zip(old.sections, new.sections, strict=False):
        if now.part == was.part:
            continue
        valve = fittings.BY_KEY[now.part].reducer
        if valve is None:
            does = "Fit two clean filters side by side" if now.part == "twin" else (
                "Clean or change the filter")  # fmt: skip
            yield f"{does} {_way(now)}"
        elif fittings.BY_KEY[was.part].reducer is not None:
            held = reader.show(valve[0], "pressure")
            yield f"Set the pressure-reducing valve {_way(now)} to {held}"
        else:
            yield valve_words(valve[0], now.end, reader)


def valve_words(held_pa: float, where: str, reader: Reader) -> str:
    """That a pressure-reducing valve is to be fitted. held_pa: Pa; where: before which points."""
    held = reader.show(held_pa, "pressure")
    return (
        f"Fit a pressure-reducing valve set to {held} before {where}, and a relief valve after it"
    )


def _tanks(old: Supply, new: Supply, reader: Reader) -> Iterator[str]:
    for tank in new.tanks[len(old.tanks) :]:
        way = next((row for row in new.sections if row.end == tank.name), None)
        if way is not None:
            yield tank_words(tank.level_m, way.length_m, way.start, reader)


def tank_words(level_m: float, way_m: float, node: str, reader: Reader) -> str:
    """That a tank is to be placed. level_m: of its water above the pump; way_m: of pipe; node:
    the point that the pipe begins at."""
    high, far = reader.show(level_m, "length"), reader.show(way_m, "length")
    return f"Place a tank with its water {high} above the pump, {far} of pipe from {node}"


def _outlets(old: tuple[OutletRow, ...], new: tuple[OutletRow, ...]) -> Iterator[str]:
    for was, now in zip(old, new, strict=True):
        if now.after < was.after:
            yield f"Open {now.after} of {now.name} at once, not {was.after}"


def _guards(old: Source, new: Source, reader: Reader) -> Iterator[str]:
    if new.hottest_k != old.hottest_k:
        yield "Bury or shade the pipe, so that it gets no hotter than its water"
    if new.relief and not old.relief:
        yield "Fit a relief valve at the pump that opens below the rating of every pipe"
    if new.guard != old.guard:
        yield guard.FIT
    if new.charge_pa is not None and new.charge_pa != old.charge_pa:
        yield charge_words(new.charge_pa, reader)
    if new.tank_m3 is not None and new.tank_m3 != old.tank_m3:
        yield tank_fix(new.tank_m3, reader)
