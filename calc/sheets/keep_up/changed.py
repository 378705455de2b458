"""What is to be done to make one supply of another, in words: several changes told as one list.

Told by what differs in the end, so that no step undoes another.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.pipe import fittings
from calc.sheets.parts import guard
from calc.sheets.parts.small_draw import charge_words, tank_fix

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Iterator

    from calc.site.supply import OutletRow, SectionRow, Source, Supply
    from calc.units import Reader

    Tell = Callable[[Source, Source, Reader], Iterator[str]]
HAIR = 1.0  # Pa, by which a pressure may differ and still be the same


def changes_told(old: Supply, new: Supply, reader: Reader) -> list[str]:
    """Sentences without their full stops, the pump's place first."""
    return [
        *_pump_side(old, new, (_place, _pump, _suction), reader),
        *_pipes(old, new),
        *_parts(old, new, reader),
        *_tanks(old, new, reader),
        *_outlets(old.outlets, new.outlets),
        *_shade(old, new),
        *_pump_side(old, new, (_guards,), reader),
    ]


def _pump_side(old: Supply, new: Supply, tell: tuple[Tell, ...], reader: Reader) -> Iterator[str]:
    if old.pumping is not None and new.pumping is not None:
        for one in tell:
            yield from one(old.pumping, new.pumping, reader)


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


def _suction(old: Source, new: Source, _reader: Reader) -> Iterator[str]:
    if new.suction_pipe != old.suction_pipe:
        yield f"Use {new.suction_pipe.label} as the suction pipe"


def _way(row: SectionRow) -> str:
    return f"from {row.start} to {row.end}"


def _pipes(old: Supply, new: Supply) -> Iterator[str]:
    pairs = zip(old.sections, new.sections, strict=False)
    laid = [f"{now.pipe.label} {_way(now)}" for was, now in pairs if now.pipe != was.pipe]
    if laid:
        yield lay_words(laid)


def lay_words(laid: Iterable[str]) -> str:
    """That pipes are to be laid, each in a sentence: two are too long for one. laid: what, where.

    >>> lay_words(["50 mm pipe from fork to house", "40 mm pipe from house to barn"])
    'Lay 50 mm pipe from fork to house. Lay 40 mm pipe from house to barn'
    """
    return ". ".join(f"Lay {one}" for one in laid)


def _parts(old: Supply, new: Supply, reader: Reader) -> Iterator[str]:
    for was, now in zip(old.sections, new.sections, strict=False):
        if now.part == was.part:
            continue
        part, before = fittings.BY_KEY[now.part], fittings.BY_KEY[was.part]
        valve = part.reducer
        if part.vented and before.reducer is not None:
            yield tank_instead_words(was)
        elif part.vented:
            count = _put_in(old, new, now)
            yield break_words(count, was, (now.height_m - was.height_m) / count, reader)
        elif valve is None:
            does = "Fit two clean filters side by side" if now.part == "twin" else (
                "Clean or change the filter")  # fmt: skip
            yield f"{does} {_way(now)}"
        elif before.vented:
            yield instead_words(valve[0], was, reader)
        elif before.reducer is not None:
            held = reader.show(valve[0], "pressure")
            yield f"Set the pressure-reducing valve {_way(now)} to {held}"
        else:
            yield valve_words(valve[0], now.end, reader)


def _put_in(old: Supply, new: Supply, first: SectionRow) -> int:
    """How many break-pressure tanks a section was parted by; first: its first piece."""
    count, end = 1, first.end
    for row in new.sections[len(old.sections) :]:
        if row.start == end:
            count, end = count + (row.part == "break"), row.end
    return count


def break_words(count: int, row: SectionRow, step_m: float, reader: Reader) -> str:
    """That break-pressure tanks are to be put on the way. row: the section; step_m: of height."""
    high = reader.show(step_m, "length")
    if count == 1:
        return f"Put a break-pressure tank {_way(row)}, {high} below where that begins"
    return f"Put {count} break-pressure tanks {_way(row)}, {high} of height apart"


def tank_instead_words(row: SectionRow) -> str:
    """That a break-pressure tank is to take the place of a valve. row: the section."""
    return f"Put a break-pressure tank in place of the pressure-reducing valve {_way(row)}"


def instead_words(held_pa: float, row: SectionRow, reader: Reader) -> str:
    """That a valve is to take the place of a break-pressure tank. held_pa: Pa; row: the section."""
    held = reader.show(held_pa, "pressure")
    return (
        f"Fit a pressure-reducing valve set to {held} in place of the break-pressure tank "
        f"{_way(row)}. Fit a relief valve after it"
    )


def valve_words(held_pa: float, where: str, reader: Reader) -> str:
    """That a pressure-reducing valve is to be fitted. held_pa: Pa; where: before which points."""
    held = reader.show(held_pa, "pressure")
    valve = f"Fit a pressure-reducing valve set to {held} before {where}"
    return f"{valve}. Fit a relief valve after it"


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


def _shade(old: Supply, new: Supply) -> Iterator[str]:
    if new.source.hottest_k != old.source.hottest_k:
        yield "Bury or shade the pipe, so that it gets no hotter than its water"


def _guards(old: Source, new: Source, reader: Reader) -> Iterator[str]:
    if new.relief and not old.relief:
        yield "Fit a relief valve at the pump that opens below the rating of every pipe"
    if new.guard != old.guard:
        yield guard.FIT
    if new.charge_pa is not None and new.charge_pa != old.charge_pa:
        yield charge_words(new.charge_pa, reader)
    if new.tank_m3 is not None and new.tank_m3 != old.tank_m3:
        yield tank_fix(new.tank_m3, reader)
