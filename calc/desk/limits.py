"""How long a pipe may be, or how far it may climb, where a letter tells one of these and not both.

Neither is made up. What may be said instead is up to where the answer stays the same.
"""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from calc.errors import InputError
from calc.sheets.parts import completed_more, ways
from calc.sheets.parts.completed import completed
from calc.site.facts import ASSUMED, NOT_KNOWN, Fact
from calc.units import Reader, plain_number

if TYPE_CHECKING:
    from calc.desk.work import Work
    from calc.site.rows import Row
    from calc.site.site import Site

# All our choice.
LONGEST, HIGHEST = 5000.0, 200.0  # m; no further is looked
STEPS = 24  # halvings: to a millimetre
LAST = "sections"
ASKED = {"length": "Length of the pipe", "height": "How far the pipe climbs or falls"}


def told(work: Work) -> str:
    """The sentence, or "" where nothing can be said: no sections, both known, or neither.

    Solves the supply some thirty times. Raises nothing.
    """
    missing, at = _missing(work.site), len(work.site.rows(LAST)) - 1
    if len(missing) != 1:
        return ""
    held = _held(work.site)
    try:
        most = _most(held, at, missing[0])
    except InputError:  # something else is not known
        return ""
    return _said(held, Reader(work.system), missing[0], most)


def lacking(work: Work) -> list[str]:
    """What a customer is asked of the last pipe: its length, how far it climbs.  Raises nothing."""
    return [ASKED[key] for key in _missing(work.site)]


def _missing(site: Site) -> list[str]:
    rows = site.rows(LAST)
    return [key for key in ASKED if rows and not rows[-1].get(key, NOT_KNOWN).known]


def _held(site: Site) -> Site:
    """With a pump that holds what it is set to, or the pressure at which a switch starts it."""
    if not ways.has_pump(site):  # its climb is then counted from the water
        known = site.best("water.level").known or any(map(_level, site.rows("sources")))
        return site if known else site.put("water.level", Fact("0 m", ASSUMED))
    cut_in = site.get("pump.cut_in")
    if site.value("pump.control") != "speed" and cut_in.known:
        site = site.put("pump.control", Fact("speed", ASSUMED)).put("pump.set", cut_in)
    known = any(site.get(path).known for path in completed_more.TOLD_OF_PUMP)
    return site if known else completed_more.strongest(site)


def _level(row: Row) -> bool:
    return row.get("level", NOT_KNOWN).known


def _most(site: Site, at: int, key: str) -> float:
    """The largest length or height with enough at every outlet, m; NaN where none has.

    Raises InputError as the solved supply does.
    """
    low, high = (_rise(site, at), LONGEST) if key == "length" else (-HIGHEST, HIGHEST)
    if not _is_enough(site, at, key, low):
        return math.nan
    if _is_enough(site, at, key, high):
        return high
    for _ in range(STEPS):
        middle = (low + high) / 2
        low, high = (middle, high) if _is_enough(site, at, key, middle) else (low, middle)
    return low


def _rise(site: Site, at: int) -> float:
    """No pipe is shorter than its ends are apart in height, m."""
    height = site.cell(LAST, site.rows(LAST)[at], "height")
    return max(0.1, abs(height)) if isinstance(height, float) else 0.1


def _is_enough(site: Site, at: int, key: str, metres: float) -> bool:
    if key == "height":  # as long as it must be at least
        length = site.cell(LAST, site.rows(LAST)[at], "length")
        if isinstance(length, float) and length < abs(metres):
            return metres < 0.0  # steeper than it is long: far down there is enough, up there none
    return completed_more.enough(completed(site.put_cell(LAST, at, key, Fact(f"{metres!r} m"))))


def _said(site: Site, reader: Reader, key: str, most: float) -> str:
    what = "The length of the pipe" if key == "length" else "How far the pipe climbs"
    start = f" with {_pressure(site, reader)} at the pump," if ways.has_pump(site) else ""
    lead = f"{what} is not known:{start}"
    if math.isnan(most):
        return f"{lead} too little arrives however short it is."
    told = _careful(most, reader)
    if key == "length":
        return f"{lead} up to {told} of it leaves enough at every outlet."
    if most < 0.0:
        return f"{lead} it must fall {told} at least for enough at every outlet."
    return f"{lead} up to {told} leaves enough at every outlet."


def _pressure(site: Site, reader: Reader) -> str:
    value = site.value("pump.set")
    usual = " (assumed)" if site.get("pump.set").standing == ASSUMED else ""
    return f"{reader.show(value, 'pressure') if value else 'what it makes'}{usual}"


def _careful(metres: float, reader: Reader) -> str:
    """A length or climb to two figures, less than it is; of a fall more.

    >>> _careful(77.9, Reader("metric")), _careful(-77.1, Reader("metric"))
    ('77 m', '78 m')
    """
    unit = reader.unit("length")
    value = unit.from_si(abs(metres))
    step = 10.0 ** (math.floor(math.log10(value)) - 1) if value > 0 else 1.0
    steps = math.ceil(value / step - 1e-9) if metres < 0 else math.floor(value / step + 1e-9)
    return f"{plain_number(steps * step, 3)} {unit.symbol}"
