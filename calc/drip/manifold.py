"""Many lines on one manifold: a pipe whose outlets are lines, each taking what its pressure gives.

Lines and manifold are solved together.  All lines are alike, so what one takes at each pressure
where it begins is worked out once, as a curve; the manifold is then a line of such outlets.
"""

from __future__ import annotations

import math
from bisect import bisect_right
from dataclasses import dataclass
from functools import cached_property
from itertools import pairwise
from typing import TYPE_CHECKING

from calc.drip import lateral
from calc.errors import InputError, require
from calc.solve import Monotone, root

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

    from calc.drip.lateral import Lateral

NODES = 48  # about so many lines are worked out for a curve; our choice
CLOSER, BEYOND = 8, 2  # so many more where an answer lies, and on either side; our choice
GROWS = 3.0  # most by which a step along a curve grows over the one before; our choice
CHECKED = 12  # lines of a manifold that its curve is checked by; our choice
CLOSE = 1e-12  # share of the pressure to which a line's start is looked for
START, MIDDLE, END = 0.0, 0.5, 1.0  # where a manifold is fed, share of its way


@dataclass(frozen=True)
class Inflow:
    """What a line takes at a pressure where it begins, as a curve through lines worked out.

    line: the ``Lateral`` for a gauge pressure at its last outlet, Pa; ends: of the lines worked
    out, Pa, rising; starts: where each begins, Pa; flows: of each, m3/s.
    """

    line: Callable[[float], Lateral]
    ends: tuple[float, ...]
    starts: tuple[float, ...]
    flows: tuple[float, ...]

    @property
    def least(self) -> float:
        """Pressure where it begins from which water comes to its end, Pa."""
        return self.starts[0]

    @cached_property
    def _curve(self) -> Monotone:
        return Monotone([math.sqrt(start - self.least) for start in self.starts], self.flows)

    def at(self, start_pa: float) -> float:
        """What it takes, never falling with the pressure.

        q(p), a curve of q over sqrt(p - p_least), which is nearly straight
        start_pa: p, Pa.  Below ``least`` and beyond the last line worked out it goes on to 0 and
        as the root of the pressure, so that a search may pass there; ``subunit`` takes no answer
        from there.
        Returns m3/s.  Raises nothing.  Source: continuity and energy; ``solve.Monotone``.
        """
        if start_pa < self.least:
            return self.flows[0] * max(0.0, start_pa) / self.least if self.least > 0 else 0.0
        if start_pa > self.starts[-1]:
            return self.flows[-1] * math.sqrt(start_pa / self.starts[-1])
        return self._curve(math.sqrt(start_pa - self.least))

    def closer(self, low_pa: float, high_pa: float) -> Inflow:
        """The same curve through more lines between two pressures.

        low_pa, high_pa: Pa, from ``least`` to the last line worked out.  Returns ``Inflow``.
        Raises RangeError outside.  Source: continuity and energy.
        """
        require("low_pa", low_pa, self.least, high_pa, "pressure")
        require("high_pa", high_pa, low_pa, self.starts[-1], "pressure")
        roots = Monotone(self.starts, [math.sqrt(end) for end in self.ends])
        first, last = roots(low_pa), roots(high_pa)
        step = max((last - first) / CLOSER, 1e-4 * last)
        # some beyond both: there the curve is least sure of its slope
        places = (first + step * (at - BEYOND) for at in range(CLOSER + 1 + 2 * BEYOND))
        between = [place**2 for place in places if 0 < place < math.sqrt(self.ends[-1])]
        nodes = [
            (end, start, flow)
            for end, start, flow in zip(self.ends, self.starts, self.flows, strict=True)
            if not between[0] <= end <= between[-1]
        ]
        for end in between:
            one = self.line(end)
            nodes.append((end, one.start_pa, one.flow))
        return Inflow(self.line, *(tuple(part) for part in zip(*sorted(nodes), strict=True)))

    def solved(self, start_pa: float) -> Lateral:
        """The line itself, outlet by outlet, that begins with a pressure.

        start_pa: Pa, from ``least`` to the last line worked out.  Returns ``Lateral``.
        Raises RangeError outside.  Source: continuity and energy.
        """
        require("start_pa", start_pa, self.least, self.starts[-1], "pressure")
        at = min(bisect_right(self.starts, start_pa), len(self.starts) - 1)

        def over(end_pa: float) -> float:
            return self.line(end_pa).start_pa - start_pa

        low, high = self.ends[at - 1], self.ends[at]
        return self.line(root(over, low, high, CLOSE * max(high, 1.0)))


def inflow(
    most_pa: float,
    lengths: Sequence[float],
    rises: Sequence[float],
    weight_pa_m: float,
    loss: Callable[[float, float], float],
    emitter: Callable[[float], float],
) -> Inflow:
    """What a line takes at each pressure from the least that serves its end to ``most_pa``.

    The lines worked out are about evenly apart in sqrt(p - p_least).
    most_pa: Pa, 100 to 1e7; all others as ``lateral.step_by_step``.
    Returns ``Inflow``.  Raises RangeError outside.  Source: continuity and energy.
    """
    require("most_pa", most_pa, 100.0, 1e7, "pressure")

    def line(end_pa: float) -> Lateral:
        return lateral.from_end(end_pa, lengths, rises, weight_pa_m, loss, emitter)

    ends, found = [0.0], [line(0.0)]
    least = found[0].start_pa
    apart = math.sqrt(max(most_pa - least, 1.0)) / NODES
    step = before = 0.0
    while found[-1].start_pa <= most_pa:
        step = min(apart, step * GROWS) if step else apart / GROWS
        ends.append((math.sqrt(ends[-1]) + step) ** 2)
        found.append(line(ends[-1]))
        passed = math.sqrt(found[-1].start_pa - least)
        step *= apart / max(passed - before, apart / GROWS**2)
        before = passed
    starts, flows = (one.start_pa for one in found), (one.flow for one in found)
    return Inflow(line, tuple(ends), tuple(starts), tuple(flows))


@dataclass(frozen=True)
class Subunit:
    """A manifold with its lines, worked out together, from the start of its way to the end.

    starts: Pa, where each line begins; flows: m3/s of each; outlets: drippers of a line; inflow:
    of one line.
    """

    starts: tuple[float, ...]
    flows: tuple[float, ...]
    outlets: int
    inflow: Inflow

    @property
    def flow(self) -> float:
        """All that runs in, m3/s."""
        return math.fsum(self.flows)

    @property
    def weak(self) -> int:
        """The line that begins with the least pressure, from 0."""
        return self.starts.index(min(self.starts))

    @property
    def strong(self) -> int:
        """The line that begins with the most, from 0."""
        return self.starts.index(max(self.starts))

    @cached_property
    def weakest(self) -> Lateral:
        """Outlet by outlet.  Its least outlet is that of all: less pressure gives less at each."""
        return self.inflow.solved(self.starts[self.weak])

    @cached_property
    def strongest(self) -> Lateral:
        """Outlet by outlet.  Its strongest outlet is that of all."""
        return self.inflow.solved(self.starts[self.strong])

    @property
    def worst(self) -> tuple[int, int]:
        """(line, outlet) of the least pressure of all, from 0."""
        pressures = self.weakest.pressures
        return self.weak, pressures.index(min(pressures))

    @property
    def range(self) -> tuple[float, float]:
        """(least, most) pressure at an outlet, Pa."""
        return min(self.weakest.pressures), max(self.strongest.pressures)

    @property
    def variation(self) -> float:
        """What the least outlet gives less than the most, share of the most.

        q_var = (q_max - q_min)/q_max.  Source: I. P. Wu and H. M. Gitlin (1974), from memory.
        """
        most = max(self.strongest.flows)
        return (most - min(self.weakest.flows)) / most if most > 0 else 0.0

    def emission(self, made: float, together: int = 1) -> float:
        """Emission uniformity of all drippers of the manifold.

        EU = (1 - 1.27 v/sqrt(e)) q_min/q_mean
        made: v, coefficient of variation of new drippers, share; together: e, drippers that water
        one plant, 1 or more.  Returns a share, 0 or more.  Raises RangeError outside.
        Source: J. Keller and D. Karmeli, Transactions of the ASAE 17 (1974) 678; ASAE EP405, from
        memory.
        """
        require("together", together, 1, 1000, "number")
        mean = self.flow / (len(self.flows) * self.outlets)
        good = max(0.0, 1 - 1.27 * made / math.sqrt(together))
        return good * min(self.weakest.flows) / mean if mean > 0 else 0.0

    @cached_property
    def error(self) -> float:
        """What the curve is off by where it was used: the most of ``CHECKED`` lines or fewer.

        |q(p) - q| / q, where q is that of the line worked out outlet by outlet.
        """
        every = math.ceil(len(self.starts) / CHECKED)
        pairs = list(zip(self.starts, self.flows, strict=True))[::every]
        return max(abs(took / self.inflow.solved(start).flow - 1) for start, took in pairs)


def subunit(
    inlet_pa: float,
    count: int,
    spacing_m: float,
    inlet: float,
    slope: float,
    weight_pa_m: float,
    loss: Callable[[float, float], float],
    lines: Inflow,
) -> Subunit:
    """A manifold and its lines, each in the middle of its strip, solved together.

    Line i of N begins at (i - 0.5) s of a way N s.  From the inlet both ways, as
    ``lateral.step_by_step``: p_i = p_i+1 + w (h_f + rise), with q_i of a whole line.
    inlet_pa: gauge pressure where the manifold is fed, Pa, 100 to 2e6; count: N, 1 to 10,000;
    spacing_m: s, m, from line to line; inlet: share of the way, 0 (start) to 1 (end); slope: share,
    rise over way, from start to end; weight_pa_m: Pa/m; loss: head in m lost by a flow (m3/s) in a
    length (m) of the manifold, rising with both; lines: of each line, up to the most pressure.
    Returns ``Subunit``.  Raises RangeError outside, InputError where the pressure does not carry
    water to the end of each line, named "rises" or "slope".
    Source: continuity and energy.
    """
    require("count", count, 1, 10_000, "number")
    require("inlet", inlet, 0.0, 1.0, "percent")
    ways = _ways([(at + 0.5 - inlet * count) * spacing_m for at in range(count)], slope)

    def solved() -> tuple[list[float], list[float]]:
        """Pressures and flows of the lines, by the curve as it is now."""
        parts = (
            lateral.step_by_step(inlet_pa, *way, weight_pa_m, loss, lines.at) if way[0] else None
            for way in ways
        )
        return _in_order(*parts)

    starts, _ = solved()
    if min(starts) < max(lines.least, 0.0):
        raise InputError("The pressure does not carry water to each line's end.", name="slope")
    lines = lines.closer(min(starts), max(starts))
    pressures, flows = solved()
    return Subunit(tuple(pressures), tuple(flows), len(lines.line(0.0).flows), lines)


Way = tuple[list[float], list[float]]  # lengths and rises, m, from the inlet on


def _ways(places: Sequence[float], slope: float) -> tuple[Way, Way]:
    """Towards the start and towards the end; places: m from the inlet, rising."""
    found = []
    for turn in (-1, 1):
        way = [turn * place for place in places[::turn] if (place < 0) == (turn < 0)]
        lengths = [far - near for near, far in pairwise([0.0, *way])]
        found.append((lengths, [turn * slope * length for length in lengths]))
    return found[0], found[1]


def _in_order(before: Lateral | None, after: Lateral | None) -> tuple[list[float], list[float]]:
    """Pressures and flows of both ways from the inlet as one, from the start."""
    pressures: list[float] = []
    flows: list[float] = []
    for part, turn in ((before, -1), (after, 1)):
        if part is not None:
            pressures += part.pressures[::turn]
            flows += part.flows[::turn]
    return pressures, flows
