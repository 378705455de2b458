"""How sure a whole supply's main figures are, from what was assumed: first-order propagation.

u(y)² = sum of u_i(y)², u_i(y) = (f(x_i + u(x_i)) - f(x_i - u(x_i))) / 2, the other inputs at their
best estimates: JCGM 100:2008 (GUM), 5.1.2 equation (10), with the sensitivities found numerically
as in 5.1.3 note 2.  An input that nobody gave is taken as rectangular between the careful and the
generous value that a page varies it to (``ask_back.SPREAD``): u = (high - low) / sqrt(12), GUM
4.3.7 and 4.3.8.  The band is y ± 2 u(y), about 95 % where no one input rules (GUM 6.3.3).  Inputs
are taken as independent.  Choices (a size, a kind) and counts are not in it; they are named.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc import practice
from calc.errors import InputError
from calc.page.ask_back import EITHER_WAY, OF_RANGE, SPREAD
from calc.sheets.parts import ways
from calc.sheets.parts.moments import all_open
from calc.site.facts import ASSUMED, BY_PATH, Fact, Slot
from calc.site.rows import BY_TABLE
from calc.units import QUANTITIES

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.desk.work import Work
    from calc.site.site import Site

COVER = 2.0  # standard uncertainties on each side; GUM 6.3.3
MOST = 60  # inputs varied, two solutions each; our choice
# Single facts that the flows of a network hang on: others move neither figure.
FACTS = (
    "water.level", "water.temperature", "pump.height", "pump.set", "pump.sensed", "suction.length",
    "place.altitude",
)  # fmt: skip
COLUMNS = (("sections", "length"), ("sections", "height"), ("outlets", "flow"),
           ("tanks", "level"), ("sources", "level"))  # fmt: skip


Ends = tuple[tuple[float, float], tuple[float, float]]


@dataclass(frozen=True)
class Input:
    """An assumed number: where it is, its label, best estimate and standard uncertainty in SI."""

    path: str
    label: str
    quantity: str
    value: float
    u: float


@dataclass(frozen=True)
class Band:
    """A figure with its band. value, u: in SI; low, high: value ± ``COVER`` u; shares: u_i(y) of
    each input, the largest first."""

    label: str
    quantity: str
    value: float
    u: float
    low: float
    high: float
    shares: tuple[tuple[Input, float], ...]


@dataclass(frozen=True)
class Bands:
    """The figures' bands; inputs: what was varied; aside: labels of what was assumed and is not in
    them, for it is no number."""

    bands: tuple[Band, ...]
    inputs: tuple[Input, ...]
    aside: tuple[str, ...]


def spread_u(value: float, slot: Slot, spread: tuple[float, float] = SPREAD) -> float:
    """Standard uncertainty of an assumed value, SI: rectangular between its careful and generous
    value.  Source: GUM 4.3.7, 4.3.8; the spread is our choice.

    >>> round(spread_u(10.0, BY_PATH["suction.length"]), 3)
    2.021
    """
    if slot.quantity == "temperature":
        width = 2 * EITHER_WAY
    elif value == 0 and math.isfinite(slot.high):
        width = 2 * OF_RANGE * slot.high
    else:
        width = abs(value) * (spread[1] - spread[0])
    return width / math.sqrt(12)


def inputs(site: Site, spread: tuple[float, float] = SPREAD) -> tuple[Input, ...]:
    """The assumed numbers that flows and pressures hang on."""
    return tuple(_inputs(site, spread))[:MOST]


def _inputs(site: Site, spread: tuple[float, float]) -> Iterator[Input]:
    for path in FACTS:
        slot, fact = BY_PATH[path], site.best(path)
        if fact.known and fact.standing == ASSUMED:
            value = slot.read(fact.text)
            yield Input(path, slot.label, slot.quantity, value, spread_u(value, slot, spread))
    for table, column in COLUMNS:
        for index, row in enumerate(site.rows(table)):
            value = _assumed_cell(site, table, index, column)
            if value is not None:
                slot = BY_TABLE[table].column(column)
                name = row["name"].text if "name" in row else f"{BY_TABLE[table].row} {index + 1}"
                u = spread_u(value, slot, spread)
                yield Input(f"{table}.{index}.{column}", f"{slot.label}, {name}", slot.quantity,
                            value, u)  # fmt: skip


def _assumed_cell(site: Site, table: str, index: int, column: str) -> float | None:
    """A cell that was assumed, or is taken as usual for its kind of outlet, in SI; else None."""
    row = site.rows(table)[index]
    fact = BY_TABLE[table].best(row, column)
    if fact.known:
        return site.cell(table, row, column) if fact.standing == ASSUMED else None
    if (table, column) != ("outlets", "flow") or not site.cell(table, row, "after"):
        return None
    kind = practice.OUTLET_BY_KEY.get(site.word(table, row, "kind"))
    return kind.flow if kind is not None else None


def with_value(site: Site, one: Input, value: float) -> Site:
    """The site with another value of an input, within its bounds.  Raises InputError."""
    unit = QUANTITIES[one.quantity].default("metric")
    text = f"{unit.from_si(value):.12g} {unit.symbol}".strip()
    table, _, rest = one.path.partition(".")
    if one.path in BY_PATH:
        return site.put(one.path, Fact(text))
    index, _, column = rest.partition(".")
    return site.put_cell(table, int(index), column, Fact(text))


def figures(site: Site, outlet: str) -> tuple[float, float]:
    """(pressure at an outlet in Pa, flow of everything open in m3/s) with what is open after.

    Raises InputError where it cannot be worked out.
    """
    moment = all_open(site)
    return ways.way_to_outlet(site, outlet, moment).running_pa, ways.solved(site, moment).flow


def of(work: Work, spread: tuple[float, float] = SPREAD) -> Bands | None:
    """The bands of the pressure at the weakest outlet and of the duty; None where there is no
    outlet."""
    if not work.weakest:
        return None
    best = figures(work.site, work.weakest)
    moved = []
    varied = inputs(work.site, spread)
    for one in varied:
        moved.append(_ends(work, one, best))
    labels = ((f"Pressure at {work.weakest}", "pressure"), ("Flow of everything open", "flow"))
    bands = []
    for at, (label, quantity) in enumerate(labels):
        shares = [
            (one, abs(ends[1][at] - ends[0][at]) / 2)
            for one, ends in zip(varied, moved, strict=True)
        ]
        bands.append(_band(label, quantity, best[at], shares))
    return Bands(tuple(bands), varied, aside(work.site))


def _ends(work: Work, one: Input, best: tuple[float, float]) -> Ends:
    """The figures with an input one u lower and higher; at a bound of it as far the other way."""
    low, high = (_at(work, one, one.value + way * one.u) for way in (-1, 1))
    if low is None and high is None:
        return best, best
    return low or _mirrored(best, high or best), high or _mirrored(best, low or best)


def _mirrored(best: tuple[float, float], end: tuple[float, float]) -> tuple[float, float]:
    return 2 * best[0] - end[0], 2 * best[1] - end[1]


def _at(work: Work, one: Input, value: float) -> tuple[float, float] | None:
    try:
        return figures(with_value(work.site, one, value), work.weakest)
    except InputError:
        return None


def _band(label: str, quantity: str, value: float, shares: list[tuple[Input, float]]) -> Band:
    u = math.sqrt(sum(part**2 for _, part in shares))
    low = value - COVER * u
    if quantity == "flow":  # none runs back: the band ends at none, and it is said to
        low = max(0.0, low)
    ordered = tuple(sorted(shares, key=lambda pair: -pair[1]))
    return Band(label, quantity, value, u, low, value + COVER * u, ordered)


def aside(site: Site) -> tuple[str, ...]:
    """Labels of what was assumed and is no number: sizes and kinds."""
    found = [
        BY_PATH[path].label
        for path, fact in site.facts.items()
        if fact.standing == ASSUMED and BY_PATH[path].kind in ("choice", "count")
    ]
    rows = sum(
        fact.standing == ASSUMED and BY_TABLE["sections"].column(key).kind == "choice"
        for row in site.rows("sections")
        for key, fact in row.items()
    )
    return (*found, *((f"{rows} pipe sizes or fittings",) if rows else ()))


def rounded(low: float, high: float) -> tuple[float, float, int]:
    """(low, high, decimals) of a band in the reader's unit, rounded outwards to what it bears: one
    figure of its half width, two where that begins with 1.  Source: GUM 7.2.6.

    >>> rounded(1.173, 1.628)
    (1.1, 1.7, 1)
    """
    half = (high - low) / 2
    if half <= 0 or not math.isfinite(half):
        return low, high, 3
    decimals = -math.floor(math.log10(half))
    if half * 10**decimals < 2:
        decimals += 1
    step = 10.0**-decimals
    down, up = math.floor(low / step + 1e-9) * step, math.ceil(high / step - 1e-9) * step
    return round(down, max(0, decimals)), round(up, max(0, decimals)), max(0, decimals)
