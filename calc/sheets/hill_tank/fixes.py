"""What to try where a hill tank runs dry: a larger one, more or other hours, less, a higher one."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import practice
from calc.day_tank import HALVINGS
from calc.pipe.line import larger_pipes
from calc.sheets.hill_tank.case import DRY, HAIR, year_of
from calc.sheets.parts.carry import exact
from calc.sheets.parts.clock import clock
from calc.sheets.parts.line_fixes import round_down
from calc.sheets.parts.tank_sizes import round_up
from calc.sheets.parts.tries import Change
from calc.units import DAY, HOUR

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from calc.sheets.hill_tank.case import Case
    from calc.units import Reader

NONE = (
    "No single change we tried is enough. A larger tank, more water, less use and a higher place "
    "each help: combine them."
)
SIZE = frozenset({"tank-dry", "nearly-empty"})
SUPPLY = SIZE | {"too-little", "no-source"}
SPELL = frozenset({"dry-spell"})
YEAR = frozenset({"season", "year-short"})
HEIGHT = frozenset({"short", "no-water"})
WEAK = HEIGHT | {"fast"}
OVER = frozenset({"outlet-over-limit", "over-rating"})
LEAST_SHARE = 0.1  # of the use, below which "use less" is no advice; our choice
LONG_SUN = 9.0  # hours a day, more than a pump runs on the sun; our choice
MOST_TANKS = 20  # times the tank, above which a larger one is another plan; our choice
MOST_ROOFS = 1024.0  # times the roof, up to which one is looked for; our choice
PLENTY = 1.1  # of the use, what a source should bring; our choice
SURE = 1 + 1e-6


def changes(case: Case, reader: Reader) -> Iterator[Change]:
    """The likely best first."""
    yield from _larger(case, reader)
    yield from _moved(case)
    yield from _longer(case)
    yield from _earlier(case)
    yield from _more(case, reader)
    yield from _less(case, reader)
    if case.year is not None:
        yield from _of_the_year(case, reader)
    if case.raised > 0:
        yield from _pressed(case, reader)


def _well(case: Case) -> bool:
    """Whether the days go well, each that is judged."""
    return case.judged is None or case.judged.lasts


def _hour(hour: float) -> str:
    """An hour of day as a clock shows it."""
    return clock((hour - 6.0) * HOUR)


# The day --------------------------------------------------------------------------------------


def _larger(case: Case, reader: Reader) -> Iterator[Change]:
    """Where a tank is what is missing."""
    needed = case.tank_needed
    if needed is None or not 0 < needed <= max(MOST_TANKS * case.values.volume, case.dry.use):
        return
    size = round_up(needed * SURE, "volume", reader)
    text = f"Choose a tank of {reader.show(size, 'volume')}."
    yield Change(text, SIZE | SPELL | {"season"}, {"volume": exact(size, "volume", reader)})


def _moved(case: Case) -> Iterator[Change]:
    """The garden watered at another hour, the nearest that is enough."""
    begins = case.values.gfrom
    if case.values.garden <= 0:
        return
    for hour in sorted(range(24), key=lambda one: (_apart(one, begins), one)):
        if _apart(hour, begins) > HAIR and _well(case.changed(gfrom=float(hour))):
            text = f"Begin watering at {_hour(hour)}, not at {_hour(begins)}."
            yield Change(text, SIZE, {"gfrom": str(hour)})
            return


def _apart(one: float, other: float) -> float:
    """Hours between two hours of day, the shorter way."""
    between = abs(one - other) % 24
    return min(between, 24 - between)


def _longer(case: Case) -> Iterator[Change]:
    """Filling in more hours, the fewest that are enough."""
    values = case.values
    if values.fills not in ("sun", "hours") or case.worst.supply <= 0:
        return
    hours, most = int(values.hours * 2) / 2, 24.0 if values.fills == "hours" else LONG_SUN
    while hours < most:
        hours += 0.5
        if hours > values.hours and _well(case.changed(hours=hours)):
            text = f"Let the tank fill for {hours:g} hours a day."
            yield Change(text, SUPPLY, {"hours": f"{hours:g}"})
            return


def _earlier(case: Case) -> Iterator[Change]:
    """Filling that begins at another hour, the nearest that is enough."""
    if case.values.fills != "hours":
        return
    begins = case.values.begins
    for hour in sorted(range(24), key=lambda one: (_apart(one, begins), one)):
        if _apart(hour, begins) > HAIR and _well(case.changed(begins=float(hour))):
            text = f"Begin filling at {_hour(hour)}, not at {_hour(begins)}."
            yield Change(text, SIZE, {"begins": str(hour)})
            return


def _more(case: Case, reader: Reader) -> Iterator[Change]:
    """A stronger pump or source in the same hours."""
    day, values = case.worst, case.values
    if values.fills == "none" or day.supply <= 0:
        yield from _any_source(case, reader)
        return
    if day.times is None:
        yield from _both(case, reader)
        return
    own = values.gives if day.key != DRY or values.dryflow is None else values.dryflow
    flow = round_up(own * day.times * SURE, "flow", reader)
    shown, typed = reader.show(flow, "flow"), exact(flow, "flow", reader)
    texts = {"gives": typed} if flow > values.gives or values.dryflow is None else {}
    if values.dryflow is not None:
        texts["dryflow"] = typed
    dry = " in the dry month too" if values.dryflow is not None else ""
    yield Change(f"Fill it with {shown}{dry}, in the same hours.", SUPPLY, texts)


def _both(case: Case, reader: Reader) -> Iterator[Change]:
    """More water and a larger tank, where neither is enough alone."""
    day, values = case.worst, case.values
    if not day.short:
        return
    key = "gives" if day.key != DRY or values.dryflow is None else "dryflow"
    flow = values.numbers[key] * day.use / day.supply * PLENTY
    flow = round_up(flow, "flow", reader)
    needed = case.changed(**{key: flow, "rain": "no"}).tank_needed
    if needed is None:
        return
    size = round_up(needed * SURE, "volume", reader)
    shown = reader.show(flow, "flow"), reader.show(size, "volume")
    text = f"Fill it with {shown[0]} in the same hours, and choose a tank of {shown[1]}."
    texts = {key: exact(flow, "flow", reader), "volume": exact(size, "volume", reader)}
    yield Change(text, SUPPLY, texts)


def _any_source(case: Case, reader: Reader) -> Iterator[Change]:
    """A source where there is none: day and night it must give no more than is used."""
    flow = round_up(2 * case.dry.use / DAY, "flow", reader)
    text = f"Find a source that gives {reader.show(flow, 'flow')} day and night."
    texts = {"fills": "always", "gives": exact(flow, "flow", reader), "dryflow": ""}
    yield Change(text, SUPPLY | YEAR | SPELL, texts)


def _less(case: Case, reader: Reader) -> Iterator[Change]:
    """Less for the garden, else less of all."""
    values, day = case.values, case.worst
    if day.key == DRY and values.garden > 0:
        share = _most(lambda part: day.carries(watered=part))
        garden = round_down(share * values.garden / SURE, "daily", reader)
        if garden > LEAST_SHARE * values.garden:
            text = f"Give the garden no more than {reader.show(garden, 'daily')}."
            yield Change(text, SUPPLY, {"garden": exact(garden, "daily", reader)})
    share = _most(lambda part: day.carries(used=part))
    use = round_down(share * values.use / SURE, "daily", reader)
    if use > LEAST_SHARE * values.use:
        text = f"Use no more than {reader.show(use, 'daily')} on a usual day."
        yield Change(text, SUPPLY, {"use": exact(use, "daily", reader)})


def _most(enough: Callable[[float], bool]) -> float:
    """The largest share, 0 to 1, that is enough; 0 where none is."""
    if enough(1.0):
        return 1.0
    low, high = 0.0, 1.0
    for _ in range(HALVINGS):
        middle = (low + high) / 2
        low, high = (middle, high) if enough(middle) else (low, middle)
    return low


# The year -------------------------------------------------------------------------------------


def _of_the_year(case: Case, reader: Reader) -> Iterator[Change]:
    """A larger roof, or less use, where the year runs dry."""
    roof = case.values.roof

    def dry(times: float) -> bool:
        year = year_of(case, roof * times)
        return year.short or bool(year.dry)

    if dry(1.0) and not dry(MOST_ROOFS):
        share = _most(lambda part: dry(1 + part * (MOST_ROOFS - 1)))
        area = round_up(roof * (1 + share * (MOST_ROOFS - 1)) * SURE, "area", reader)
        text = f"Collect from {reader.show(area, 'area')} of roof."
        yield Change(text, YEAR, {"roof": exact(area, "area", reader)})
    yield from _less_in_the_year(case, reader)


def _less_in_the_year(case: Case, reader: Reader) -> Iterator[Change]:
    values = case.values
    for tenths in range(9, 0, -1):
        use = round_down(values.use * tenths / 10, "daily", reader)
        garden = round_down(values.garden * tenths / 10, "daily", reader)
        other = case.changed(use=use, garden=garden)
        lasts = values.volume >= other.between_rains
        if lasts and not other.year.short and not other.year.dry and _well(other):
            text = f"Use no more than {reader.show(use, 'daily')} on a usual day"
            texts = {"use": exact(use, "daily", reader)}
            if values.garden > 0:
                text += f", and {reader.show(garden, 'daily')} more in dry months"
                texts["garden"] = exact(garden, "daily", reader)
            yield Change(f"{text}.", YEAR | SUPPLY | SPELL, texts)
            return


# The pressure ---------------------------------------------------------------------------------


def _pressed(case: Case, reader: Reader) -> Iterator[Change]:
    """A wider pipe, a higher place; where there is too much, a valve or a lower one."""
    line, values = case.line, case.values
    for pipe in larger_pipes(line.sections[0].pipe, practice.MOST_SIZES_UP):
        left = reader.show(max(0.0, line.with_pipe(pipe).left(case.flow)), "pressure")
        text = f"Use {pipe.label}: the outlet then gets {left}."
        yield Change(text, WEAK, {"kind": pipe.kind, pipe.kind: pipe.size})
    sure = max(practice.BORDERLINE * values.wanted * SURE, 1.0)
    more = (sure - line.left(case.flow)) / line.weight
    if more > 0:
        high = round_up(case.raised + more, "length", reader)
        text = f"Place the tank {reader.show(high, 'length')} above the outlet."
        yield Change(text, HEIGHT, {"height": exact(high, "length", reader)})
    yield Change("Let a small pump draw from the tank instead.", HEIGHT | OVER, {"height": ""})
    high = practice.HIGHEST_AT_OUTLET / line.weight - case.deep
    if high > 0:
        high = round_down(high, "length", reader)
        text = f"Place the tank no more than {reader.show(high, 'length')} above the outlet."
        yield Change(text, OVER, {"height": exact(high, "length", reader)})
