"""Tests of a well: what a pumped or recovering level says of the ground and of the yield.

A well's level falls while it is pumped and comes back after.  Where the fall or the recovery is a
straight line against the logarithm of time, the ground's transmissivity follows from its slope;
where it is not, only what came in is told.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc.errors import InputError, require

if TYPE_CHECKING:
    from collections.abc import Sequence

EULER = 0.5772156649015329
SMALL = 0.05  # u, up to which the logarithm stands for the well function: within 2 %
LEAST_POINTS = 4  # on a line, for it to be told; our choice
STRAIGHT = 0.98  # share of the scatter that the line explains, for it to be told; our choice


def well_function(u: float) -> float:
    """W(u), the exponential integral of Theis.

    W = -gamma - ln u + u - u**2/(2 2!) + u**3/(3 3!) - ...; beyond 1 a continued fraction
    u: a number, 1e-15 to 50.  Returns a number.  Raises RangeError outside.
    Source: C. V. Theis, Transactions AGU 16 (1935) 519-524; series: definition.

    >>> round(well_function(0.01), 4), round(well_function(1.0), 4)
    (4.0379, 0.2194)
    """
    require("u", u, 1e-15, 50.0, "number")
    if u <= 1:
        total, part = -EULER - math.log(u), -1.0
        for n in range(1, 40):
            part *= -u / n
            total += part / n
        return total
    fraction = 0.0
    for n in range(60, 0, -1):
        fraction = n / (1 + n / (u + fraction))
    return math.exp(-u) / (u + fraction)


def drawdown(
    flow_m3s: float, transmissivity: float, storage: float, away_m: float, time_s: float
) -> float:
    """How far the water stands below its rest while a well is pumped.

    s = Q / (4 pi T) W(u), u = r**2 S / (4 T t)
    flow_m3s: Q, m3/s, 0 to 10; transmissivity: T, m2/s, 1e-9 to 10; storage: S, share, 1e-7 to
    0.5; away_m: r, m from the well's middle, 0.01 to 1e4; time_s: t, s, 1 to 1e10.
    Returns m.  Raises RangeError outside.  Source: Theis (1935).
    """
    require("flow_m3s", flow_m3s, 0.0, 10.0, "flow")
    require("transmissivity", transmissivity, 1e-9, 10.0, "number")
    require("storage", storage, 1e-7, 0.5, "percent")
    require("away_m", away_m, 0.01, 1e4, "length")
    require("time_s", time_s, 1.0, 1e10, "time")
    u = away_m * away_m * storage / (4 * transmissivity * time_s)
    if u > 50:
        return 0.0
    return flow_m3s / (4 * math.pi * transmissivity) * well_function(max(u, 1e-15))


@dataclass(frozen=True)
class Line:
    """A straight line through levels against the logarithm of time.

    slope: m a factor of ten; at_one: m where the time is 1; explained: share of the scatter;
    count: points.
    """

    slope: float
    at_one: float
    explained: float
    count: int

    @property
    def bears(self) -> bool:
        """Whether the points bear a line: enough of them, straight and rising."""
        return self.count >= LEAST_POINTS and self.explained >= STRAIGHT and self.slope > 0


def line_through(times: Sequence[float], levels: Sequence[float]) -> Line:
    """The line of least squares through levels, m, against the logarithm of times.

    times: above 0, at least two that differ; levels: as many.
    Returns ``Line``.  Raises InputError, named "times".  Source: least squares.
    """
    if len(times) != len(levels) or len(set(times)) < 2 or min(times) <= 0:
        raise InputError("Give two readings or more, each with its time above 0.", name="times")
    xs = [math.log10(time) for time in times]
    x, y = math.fsum(xs) / len(xs), math.fsum(levels) / len(levels)
    spread = math.fsum((one - x) ** 2 for one in xs)
    both = math.fsum((one - x) * (level - y) for one, level in zip(xs, levels, strict=True))
    whole = math.fsum((level - y) ** 2 for level in levels)
    slope = both / spread
    explained = slope * both / whole if whole > 0 else 0.0
    return Line(slope, y - slope * x, explained, len(xs))


def transmissivity(flow_m3s: float, line: Line) -> float:
    """The ground's transmissivity from a line of drawdown or of recovery.

    T = ln(10) Q / (4 pi ds), ds: the slope, m a factor of ten
    flow_m3s: Q, m3/s that was pumped, 1e-7 to 10; line: ``line_through`` of drawdown against time,
    or of what is left of it against t/t', the time since the pump started over that since it
    stopped.
    Returns m2/s.  Raises RangeError outside, InputError for a line that does not rise.
    Source: H. H. Cooper and C. E. Jacob, Transactions AGU 27 (1946) 526-534; recovery: Theis
    (1935).
    """
    require("flow_m3s", flow_m3s, 1e-7, 10.0, "flow", "Give the flow that was pumped.")
    if line.slope <= 0:
        raise InputError("These levels do not rise with the logarithm of time.", name="line")
    return math.log(10) * flow_m3s / (4 * math.pi * line.slope)


def storage(transmissivity_m2s: float, line: Line, away_m: float) -> float:
    """Storage of the ground, from the line's start and the way to the well.

    S = 2.25 T t_0 / r**2, t_0: s where the line meets no drawdown
    transmissivity_m2s: T, m2/s; line: of drawdown against s; away_m: r, m, 0.01 to 1e4: in the
    pumped well itself it is not to be had.
    Returns a share.  Raises RangeError outside.  Source: Cooper and Jacob (1946).
    """
    require("away_m", away_m, 0.01, 1e4, "length")
    start = 10 ** (-line.at_one / line.slope)
    return 2.25 * transmissivity_m2s * start / away_m**2


def specific_capacity(flow_m3s: float, drawn_m: float) -> float:
    """Flow for each metre that the level is drawn down.

    C = Q / s
    flow_m3s: Q, m3/s, 0 to 10; drawn_m: s, m, 0.001 to 500, at a level that stays.
    Returns m2/s.  Raises RangeError outside.  Source: definition.

    >>> specific_capacity(1e-3, 2.0)
    0.0005
    """
    require("flow_m3s", flow_m3s, 0.0, 10.0, "flow")
    require("drawn_m", drawn_m, 1e-3, 500.0, "length", "Give the pumping level below rest.")
    return flow_m3s / drawn_m


def coming_in(bore_m: float, times: Sequence[float], depths: Sequence[float]) -> float:
    """What flows into a well while its level rises, the simple way.

    Q = pi/4 d**2 dh/dt, over all of the readings
    bore_m: d, m, inside diameter of the well, 0.03 to 10; times: s, rising; depths: m down to the
    water, falling, as many.
    Returns m3/s: at the mean level of the readings; nearer to rest less comes.
    Raises RangeError outside; InputError, named "depths.2" and so on, where the level falls.
    Source: volume balance.
    """
    require("bore_m", bore_m, 0.03, 10.0, "length")
    if len(times) != len(depths) or len(times) < 2:
        raise InputError("Give two readings or more.", name="times")
    for at in range(1, len(times)):
        if times[at] <= times[at - 1]:
            raise InputError("Each reading is later than the one before.", name=f"times.{at}")
        if depths[at] > depths[at - 1]:
            text = "The water falls here: a recovery test begins when the pump has stopped."
            raise InputError(text, name=f"depths.{at}")
    risen = depths[0] - depths[-1]
    return math.pi / 4 * bore_m**2 * risen / (times[-1] - times[0])


# A recovery test, whichever way it bears --------------------------------------------------------

WELL_STORE = 25.0  # times r**2 / T, until which the well's own water hides the ground's
LEFT_AT_LEAST = 0.05  # of the drawdown: a smaller rest is no measure of time; our choice
FLAT = 1e-6  # m a factor of ten: less is a level that stays; our choice
OFF_REST = 0.1  # of the drawdown, that a line may miss the static level by; our choice
BORNE, FEW, SCATTER, FALLS = "", "few", "scatter", "falls"  # why a line is not told


@dataclass(frozen=True)
class Recovery:
    """What a recovery test says.

    capacity: flow for each metre of drawdown, m2/s; why: ``BORNE`` where Theis' line is told, else
    why not; kept: indices of the readings on the line; line: through them, against t/t' (None:
    fewer than two); transmissivity: m2/s, None where the line is not told.
    """

    capacity: float
    why: str
    kept: tuple[int, ...]
    line: Line | None
    transmissivity: float | None

    def misses_rest(self, drawn_m: float) -> bool:
        """Whether the line ends well below the static level: the ground does not fill again.

        drawn_m: m, as the pump stopped.
        """
        if self.transmissivity is None or self.line is None:
            return False
        return self.line.at_one > OFF_REST * drawn_m


def well_store_ends(bore_m: float, transmissivity_m2s: float) -> float:
    """How long the water in the well itself hides what the ground does.

    t = 25 r**2 / T
    bore_m: 2 r, m, inside diameter of the well, 0.03 to 10; transmissivity_m2s: T, m2/s, above 0.
    Returns s.  Raises RangeError outside.
    Source: I. S. Papadopulos (1967), as in G. P. Kruseman and N. A. de Ridder, Analysis and
    Evaluation of Pumping Test Data (1990), chapter 15; from memory.
    """
    require("bore_m", bore_m, 0.03, 10.0, "length")
    require("transmissivity_m2s", transmissivity_m2s, 1e-15, 1e6, "number")
    return WELL_STORE * (bore_m / 2) ** 2 / transmissivity_m2s


def simple_capacity(bore_m: float, times: Sequence[float], drawn: Sequence[float]) -> float:
    """Inflow for each metre of drawdown from a recovery, the simple way.

    C = A ln(s_0 / s) / t, A = pi/4 d**2: what flows in is taken as in step with the drawdown
    bore_m: d, m, 0.03 to 10; times: s since the pump stopped, rising from 0; drawn: s_0 and s, m
    below rest, the first above 0.  The last reading counts, or the first at which no more than a
    twentieth of the drawdown is left.
    Returns m2/s.  Raises RangeError outside.  Source: volume balance of the well.
    """
    require("bore_m", bore_m, 0.03, 10.0, "length")
    least = LEFT_AT_LEAST * drawn[0]
    nearly = [at for at in range(1, len(drawn)) if drawn[at] <= least]
    last = nearly[0] if nearly else len(drawn) - 1
    area = math.pi / 4 * bore_m**2
    return area * math.log(drawn[0] / max(drawn[last], least)) / (times[last] - times[0])


def lasting_capacity(
    flow_m3s: float, drawn_m: float, slope: float, pumped_s: float, lasting_s: float
) -> float:
    """Flow for each metre of drawdown after a long time of pumping without rain.

    C = Q / (s + ds log10(t / t_p)): the drawdown goes on along the line of the recovery
    flow_m3s: Q, m3/s that was pumped; drawn_m: s, m as the pump stopped; slope: ds, m a factor of
    ten in time; pumped_s: t_p, s that it ran; lasting_s: t, s, at least that.
    Returns m2/s.  Raises RangeError outside.  Source: Cooper and Jacob (1946), carried on.
    """
    require("flow_m3s", flow_m3s, 1e-9, 10.0, "flow")
    require("drawn_m", drawn_m, 1e-6, 500.0, "length")
    require("lasting_s", lasting_s, pumped_s, 1e10, "time")
    return flow_m3s / (drawn_m + slope * math.log10(lasting_s / pumped_s))


def recovered(
    flow_m3s: float,
    pumped_s: float,
    bore_m: float,
    times: Sequence[float],
    drawn: Sequence[float],
    lasting_s: float,
) -> Recovery:
    """What a recovery test bears: Theis' line where it is one, else the simple way.

    flow_m3s: m3/s that was pumped; pumped_s: s that it was; bore_m: m, inside diameter of the
    well; times: s since the pump stopped, rising from 0; drawn: m below rest, as many, not rising,
    the first above 0; lasting_s: s of pumping that the capacity is to last.
    Readings taken while the well's own water hides the ground's are left out of the line.
    Returns ``Recovery``.  Raises RangeError outside.
    Source: Theis (1935); Papadopulos (1967); volume balance of the well.
    """
    simple = simple_capacity(bore_m, times, drawn)
    kept, line = _on_the_line(flow_m3s, pumped_s, bore_m, times, drawn)
    if line is None or len(kept) < LEAST_POINTS:
        return Recovery(simple, FEW, kept, line, None)
    if not line.bears or line.slope <= FLAT:
        return Recovery(simple, SCATTER if line.slope > FLAT else FALLS, kept, line, None)
    lasting = lasting_capacity(flow_m3s, drawn[0], line.slope, pumped_s, lasting_s)
    return Recovery(lasting, BORNE, kept, line, transmissivity(flow_m3s, line))


def _on_the_line(
    flow_m3s: float, pumped_s: float, bore_m: float, times: Sequence[float], drawn: Sequence[float]
) -> tuple[tuple[int, ...], Line | None]:
    """The readings after the well's own water has its say, and the line through them."""
    kept = tuple(at for at, time in enumerate(times) if time > 0)
    while len(kept) >= 2:
        ratios = [(pumped_s + times[at]) / times[at] for at in kept]
        line = line_through(ratios, [drawn[at] for at in kept])
        if line.slope <= FLAT:
            return kept, line
        ends = well_store_ends(bore_m, transmissivity(flow_m3s, line))
        later = tuple(at for at in kept if times[at] >= ends)
        if later == kept:
            return kept, line
        kept = later
    return kept, None
