"""A tank followed through a day, or through a year by the month: level, overflow, what is missing.

All flows are steady within a piece of time, so that the level runs straight from one of its ends to
the other and every moment is exact: no step of time is left to choose.  A tank that is full lets
what comes in run over; one that is down to its reserve gives only what comes in.
"""

from __future__ import annotations

from bisect import bisect_left
from dataclasses import dataclass
from functools import cached_property
from itertools import pairwise
from typing import TYPE_CHECKING, NamedTuple

from calc.errors import InputError, require
from calc.units import DAY, HOUR

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

MORNING = 6.0  # hour at which a day begins here, so that "by evening" is within it; our choice
STEP = HOUR  # s, the longest piece, for tables by the hour; levels do not depend on it
LEAST = 1e-6  # s, a shorter piece is rounding
MOST_TIMES = 1e6  # of an inflow that is looked for; our choice
HALVINGS = 60  # of its search: more than a number has digits
DAYS_OF = (31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31)  # of the months, no leap year


@dataclass(frozen=True)
class Window:
    """A steady flow in some hours of every day.

    begins: hour of day, 0 to 24; hours: how long, 0 to 24, past midnight too; flow: m3/s.
    Raises RangeError outside.
    """

    begins: float
    hours: float
    flow: float

    def __post_init__(self) -> None:
        require("begins", self.begins, 0.0, 24.0, "number", "A day has 24 hours.")
        require("hours", self.hours, 0.0, 24.0, "number", "A day has 24 hours.")


class Piece(NamedTuple):
    """A piece of a day.

    start, long: s from ``MORNING``, and how long; comes, drawn: m3/s, steady.
    """

    start: float
    long: float
    comes: float
    drawn: float


def hourly(use_m3: float, shares: Sequence[float]) -> tuple[Window, ...]:
    """A day's use by the hour. use_m3: m3 a day; shares: 24 adding to 1.  Raises nothing."""
    return tuple(Window(h, 1.0, use_m3 * share / HOUR) for h, share in enumerate(shares))


def day(comes: Sequence[Window], drawn: Sequence[Window]) -> tuple[Piece, ...]:
    """A day from ``MORNING`` on in pieces, cut wherever a flow changes.

    comes, drawn: ``Window``s that add up.  Raises nothing.  Source: definition.
    """
    marks = {0.0, DAY} | {STEP * at for at in range(int(DAY / STEP))}
    for one in (*comes, *drawn):
        marks |= {_since(one.begins), _since(one.begins + one.hours)}
    cuts = [0.0]
    for mark in sorted(marks):
        if mark - cuts[-1] > LEAST:
            cuts.append(mark)
    starts = cuts[:-1]
    longs = (high - low for low, high in pairwise(cuts))
    return tuple(map(Piece, starts, longs, _flows(starts, comes), _flows(starts, drawn)))


def part(pieces: Sequence[Piece], windows: Sequence[Window]) -> tuple[float, ...]:
    """m3 that windows come to in each piece, whose ends are among those of the pieces.

    pieces: of ``day``; windows: some of its ``Window``s.  Raises nothing.  Source: definition.
    """
    flows = _flows([one.start for one in pieces], windows)
    return tuple(flow * one.long for flow, one in zip(flows, pieces, strict=True))


def _since(hour: float) -> float:
    """Seconds from ``MORNING`` to an hour of day."""
    return (hour - MORNING) % 24.0 * HOUR


def _flows(starts: list[float], windows: Sequence[Window]) -> list[float]:
    """What all windows give in each piece, m3/s. starts: of the pieces, s from ``MORNING``."""
    found = [0.0] * len(starts)
    for one in windows:
        begin = _since(one.begins)
        end = begin + one.hours * HOUR
        for low, high in ((begin, min(end, DAY)), (0.0, end - DAY)):
            first, last = (bisect_left(starts, at - 2 * LEAST) for at in (low, high))
            for at in range(first, last):
                found[at] += one.flow
    return found


# Following it -------------------------------------------------------------------------------


@dataclass(frozen=True)
class Run:
    """What came of a tank over some pieces of time: m3 each.

    levels: at the start and after each piece; over: what ran over in each; missing: what was asked
    for in each and not given; comes, asked: what came in and what was asked for in each.
    """

    levels: tuple[float, ...]
    over: tuple[float, ...]
    missing: tuple[float, ...]
    comes: tuple[float, ...]
    asked: tuple[float, ...]

    @cached_property
    def served(self) -> float:
        """What was given, m3."""
        return sum(self.asked) - sum(self.missing)

    @property
    def lowest(self) -> int:
        """Index of the lowest level, the first of several."""
        return min(range(len(self.levels)), key=self.levels.__getitem__)

    @property
    def kept(self) -> float:
        """What the balance does not close by, m3: start and inflow less all that left, less the
        end."""
        given = self.levels[0] + sum(self.comes)
        return given - self.served - sum(self.over) - self.levels[-1]


def follow(
    comes: Sequence[float], asked: Sequence[float], volume: float, kept: float, start: float
) -> Run:
    """A tank's water over pieces of time.

    v' = min(V, max(V_r, v + in - out)); over: what is above V, missing: what is below V_r
    comes, asked: m3 of each piece, 0 or more; volume: V, m3, above 0; kept: V_r, m3, 0 to V;
    start: m3, V_r to V.  Returns ``Run``.  Raises InputError for a reserve above the volume,
    RangeError outside.  Source: conservation.

    >>> follow((3.0, 0.0), (0.0, 4.0), 5.0, 1.0, 4.0).missing
    (0.0, 0.0)
    >>> follow((3.0, 0.0), (0.0, 4.5), 5.0, 1.0, 4.0).missing
    (0.0, 0.5)
    """
    require("volume", volume, 1e-9, 1e6, "volume")
    if not 0 <= kept < volume:
        raise InputError("The reserve must be less than the tank holds.", name="kept")
    require("start", start, kept, volume, "volume")
    levels, over, missing = [start], [], []
    for more, less in zip(comes, asked, strict=True):
        level = levels[-1] + more - less
        over.append(max(0.0, level - volume))
        missing.append(max(0.0, kept - level))
        levels.append(min(max(level, kept), volume))
    return Run(tuple(levels), tuple(over), tuple(missing), tuple(comes), tuple(asked))


def repeated(comes: Sequence[float], asked: Sequence[float], volume: float, kept: float) -> Run:
    """The run that repeats, after as many as it takes.

    Arguments as ``follow``.  With more in than out it is reached from a full tank, with less from
    one down to its reserve, in one run: what a run does to a level is to add the difference and to
    hold the sum between two levels.  Returns ``Run``, whose end is its start.
    Raises as ``follow``.  Source: composition of such steps, our derivation.
    """
    start = volume if sum(comes) >= sum(asked) else kept
    return follow(comes, asked, volume, kept, follow(comes, asked, volume, kept, start).levels[-1])


def swing(comes: Sequence[float], asked: Sequence[float]) -> float | None:
    """The least water above the reserve that carries a run that repeats, m3; None: no tank does.

    K_t = max(0, K_t-1 + out - in), V = max K over a run that repeats
    comes, asked: m3 of each piece.  Raises nothing.
    Source: W. Rippl, Proc. Inst. Civ. Eng. 71 (1883) 270-278 (mass curve), with the overflow
    counted as by H. A. Thomas and R. P. Burden (sequent peak, 1963, from memory).

    >>> swing((2.0, 0.0), (0.5, 1.5)), swing((1.0,), (2.0,))
    (1.5, None)
    """
    if sum(comes) < sum(asked) * (1 - 1e-9):
        return None
    missing = most = 0.0
    for _ in range(2):  # the first reaches the state that repeats
        for more, less in zip(comes, asked, strict=True):
            missing = max(0.0, missing + less - more)
            most = max(most, missing)
    return most


def least_times(
    comes: Sequence[float], asked: Sequence[float], volume: float, kept: float
) -> float | None:
    """How many times the inflow a tank needs so that nothing is missing on a run that repeats.

    Arguments as ``follow``.  Returns a number, on the safe side by 1e-12 of it; None: however much
    comes in, the tank does not last until it comes.  Raises as ``follow``.
    Source: bisection: more inflow never serves less.
    """

    def enough(times: float) -> bool:
        more = [times * one for one in comes]
        least = swing(more, asked)
        return least is not None and least <= (volume - kept) * (1 + 1e-12)

    high = 1.0
    while not enough(high):
        high *= 2
        if high > MOST_TIMES:
            return None
    low = 0.0
    for _ in range(HALVINGS):
        middle = (low + high) / 2
        low, high = (low, middle) if enough(middle) else (middle, high)
    return high


# A day's moments ----------------------------------------------------------------------------


def amounts(pieces: Sequence[Piece]) -> tuple[tuple[float, ...], tuple[float, ...]]:
    """(m3 that come in, m3 asked for) of each piece."""
    return tuple(p.comes * p.long for p in pieces), tuple(p.drawn * p.long for p in pieces)


def empty_spans(pieces: Sequence[Piece], run: Run) -> tuple[tuple[float, float], ...]:
    """(from, to) in which water is asked for in vain, s from ``MORNING``; exact.

    A span past the day's end goes on at its start: its end is then above ``DAY``.
    """
    found: list[tuple[float, float]] = []
    for piece, missing in zip(pieces, run.missing, strict=True):
        if missing <= 0:
            continue
        end = piece.start + piece.long
        start = end - min(piece.long, missing / (piece.drawn - piece.comes))
        if found and start - found[-1][1] < 1e-6:
            found[-1] = found[-1][0], end
        else:
            found.append((start, end))
    if len(found) > 1 and found[0][0] < 1e-6 and DAY - found[-1][1] < 1e-6:
        found = [*found[1:-1], (found[-1][0], DAY + found[0][1])]
    return tuple(found)


def time_below(pieces: Sequence[Piece], run: Run, needed: Callable[[float], float]) -> float:
    """How long in a day water runs from a level below the one its flow needs, s; exact.

    needed: m3/s drawn -> m3, the level it needs.  Moments without a draw, and those in which
    nothing is left, do not count.  Source: the level runs straight within a piece.
    """
    total = 0.0
    for at, piece in enumerate(pieces):
        net = piece.comes - piece.drawn
        begin, end = run.levels[at], run.levels[at + 1]
        if piece.drawn <= 0:
            continue
        moving = piece.long if net == 0 else min(piece.long, (end - begin) / net)
        need = needed(piece.drawn)
        rest = piece.long - moving
        if net > 0 and need > end:
            total += rest  # full, and even that is too low
        if max(begin, end) < need:
            total += moving
        elif min(begin, end) < need:
            total += moving * (need - min(begin, end)) / abs(end - begin)
    return total
