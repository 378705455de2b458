"""The set pressures at which a whole supply works."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from typing import TYPE_CHECKING

from calc.desk.work import work_out
from calc.sheets.parts import ways
from calc.sheets.parts.completed import opened
from calc.site.facts import BY_PATH, Fact
from calc.site.pack import pack
from calc.units import PSI

if TYPE_CHECKING:
    from collections.abc import Callable

    from calc.site.site import Site

# what a person sets by: (Pa, symbol, that in its unit, decimals)
STEPS = {"metric": (0.1e5, "bar", 0.1, 1), "us": (PSI, "psi", 1.0, 0)}
COARSE = {"metric": 5, "us": 7}  # steps of the first look; our choice
BELOW, ABOVE = 4, 6  # coarse steps that are looked at on each side; our choice


@dataclass(frozen=True)
class SetRange:
    """The set pressures, Pa, at which no outlet has too little and nothing is over its limit.

    low, high: None: none was found from ``looked[0]`` to ``looked[1]``; now: what it is set to.
    """

    low: float | None
    high: float | None
    looked: tuple[float, float]
    now: float

    @property
    def within(self) -> bool:
        """Whether it is set in that range."""
        if self.low is None or self.high is None:
            return False
        return self.low - 1.0 <= self.now <= self.high + 1.0


def at(site: Site, pressure_pa: float, system: str) -> Site:
    """The site with another set pressure, in the reader's unit."""
    step, symbol, unit, digits = STEPS[system]
    return site.put("pump.set", Fact(f"{pressure_pa / step * unit:.{digits}f} {symbol}"))


def set_range(site: Site, system: str) -> SetRange | None:
    """The range for a pump that is held at a set pressure; None for others, or where it is not
    known.  What is wrong at every setting is no matter of the setting and does not count."""
    held = ways.has_pump(site) and site.value("pump.control") == "speed"
    if not held or site.value("pump.set") is None:
        return None
    return _found(pack(site), system)


@lru_cache(16)
def _found(packed: str, system: str) -> SetRange | None:
    site, step = opened(packed), STEPS[system][0]
    now = site.value("pump.set")
    middle, coarse = round(now / step), COARSE[system]
    slot = BY_PATH["pump.set"]
    places = [
        place
        for place in range(middle - BELOW * coarse, middle + ABOVE * coarse + 1, coarse)
        if slot.low <= place * step <= slot.high
    ]
    marks = {place: _marks(site, place * step, system) for place in places}
    known = {place: held for place, held in marks.items() if held is not None}
    if not known:
        return None
    always = frozenset.intersection(*known.values())
    looked = (min(known) * step, max(known) * step)
    good = sorted((place for place in known if known[place] <= always),
                  key=lambda place: abs(place - middle))  # fmt: skip
    if not good:
        return SetRange(None, None, looked, now)

    def works(place: int) -> bool:
        held = _marks(site, place * step, system)
        return held is not None and held <= always

    low, high = _edge(works, good[0], -1, min(known)), _edge(works, good[0], 1, max(known))
    return SetRange(low * step, high * step, looked, now)


def _edge(works: Callable[[int], bool], start: int, way: int, last: int) -> int:
    """The last setting from ``start`` on, one way, that works."""
    place = start
    while place != last and works(place + way):
        place += way
    return place


def _marks(site: Site, pressure_pa: float, system: str) -> frozenset[tuple[str, str]] | None:
    """What is wrong with the whole supply at a setting; None where it cannot be worked out."""
    made = at(site, pressure_pa, system)
    part = work_out(made, system, ("keep_up",), quick=True).part("keep_up")
    if part is None or part.answer is None:
        return None
    return frozenset((f.key, f.at) for f in part.answer.findings if f.level != "note")
