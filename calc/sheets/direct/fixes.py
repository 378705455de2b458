"""What to try without a battery: more panels, a larger tank, a wider pipe."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.power.array import RATED_SUN
from calc.sheets.direct.judge import DIM
from calc.sheets.parts.carry import exact
from calc.sheets.parts.solar_fixes import first_that, left
from calc.sheets.parts.tank_sizes import round_up
from calc.sheets.parts.tries import Change

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.sheets.direct.case import Case
    from calc.units import Reader

KEYS = frozenset({"short-days", "never-starts", "dim"})
MOST_TIMES = 8  # of the panels there are; our choice
MOST_M3 = 1e4  # the form takes no more
TANK_TIMES = (1.5, 2.0, 3.0, 4.0, 6.0, 10.0)  # of the tank there is; our choice


def meets(case: Case) -> bool:
    """Whether the year keeps to the days that may fail, and the pump starts."""
    return case.meets and case.starts_at < RATED_SUN


def changes(case: Case, reader: Reader) -> Iterator[Change]:
    """The likely best first."""
    now = case.array.parallel
    strings = tuple(range(now + 1, min(100, MOST_TIMES * now) + 1))
    made = tuple(case.with_size(n, case.tank) for n in strings)
    at = first_that(made, lambda one: meets(one) and one.starts_at <= DIM)
    if at is not None:
        text = f"Put up {made[at].array.count} panels: {left(made[at])}."
        yield Change(text, KEYS, {"strings": str(strings[at])})
    rising = (round_up(times * case.tank, "volume", reader) for times in TANK_TIMES)
    volumes = tuple(volume for volume in rising if volume <= MOST_M3)
    larger = tuple(case.with_size(now, volume) for volume in volumes)
    at = first_that(larger, meets)
    if at is not None:
        size = reader.show(volumes[at], "volume")
        text = f"Choose a tank of {size}: {left(larger[at])}."
        texts = {"tank": exact(volumes[at], "volume", reader)}
        yield Change(text, frozenset({"short-days"}), texts)
