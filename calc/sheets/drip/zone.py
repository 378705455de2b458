"""A zone of drip lines on one manifold, worked out together with it."""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import lru_cache
from typing import TYPE_CHECKING

from calc import practice, water
from calc.drip import manifold
from calc.errors import InputError
from calc.pipe import friction
from calc.units import GRAVITY

if TYPE_CHECKING:
    from collections.abc import Callable

    from calc.drip.manifold import Inflow, Subunit
    from calc.pipe.pipes import Pipe
    from calc.sheets.drip.case import Line

WEIGHT = water.density(practice.COOL_WATER) * GRAVITY  # Pa/m
KINEMATIC = water.kinematic_viscosity(practice.COOL_WATER)  # m2/s
MOST_LINES = 200  # on one manifold, that are worked out; our choice
FEW = 6  # trials by what is likely, before halving; our choice
MET = 1 + 1e-9  # a number typed in another unit is still met


@dataclass(frozen=True)
class Manifold:
    """The pipe that feeds the lines of a zone.

    pipe: what it is of; middle: fed in its middle, else at its start; slope: rise over way, from
    the start; apart: m from line to line.
    """

    pipe: Pipe
    middle: bool
    slope: float
    apart: float

    def zone(self, line: Line, count: int, pressure_pa: float) -> Subunit:
        """So many lines on it.  Raises InputError where no water comes to the end of one."""
        return _zone(self, line, count, pressure_pa)

    def even(self, line: Line, count: int, pressure_pa: float) -> bool:
        """Whether so many lines are watered as evenly as is good, each dripper with enough."""
        try:
            found = self.zone(line, count, pressure_pa)
        except InputError:
            return False
        good = found.variation <= practice.FLOW_VARIES[0] * MET
        emits = found.emission(line.made) * MET >= practice.EMISSION[0]
        return good and emits and not line.short(found.weakest)

    def fed_by(self, line: Line, pressure_pa: float, flow_m3s: float, most: int) -> int:
        """The most lines that a flow feeds at once, up to ``most``."""

        def used(count: int) -> float | None:
            try:
                return self.zone(line, count, pressure_pa).flow / flow_m3s
            except InputError:
                return None

        # as if each took what one at the feed does
        likely = flow_m3s / line.solved(pressure_pa).flow
        return _most(used, most, likely)

    def longest(self, line: Line, pressure_pa: float, most: int) -> int:
        """The most lines that are watered evenly, up to ``most``."""

        def uneven(count: int) -> float | None:
            return 0.0 if self.even(line, count, pressure_pa) else None

        return _most(uneven, most, most / 2)

    def loss(self, flow_m3s: float, length_m: float) -> float:
        """Head lost, m, with what tees and joins add."""
        pipe, long = self.pipe, length_m * (1 + practice.EXTRA_LENGTH)
        return friction.pipe_loss(flow_m3s, pipe.inside_m, long, pipe.roughness_m, KINEMATIC)

    def enters(self, found: Subunit) -> float:
        """Speed of the water where the manifold is fed, the faster way of two, m/s."""
        half = len(found.flows) // 2
        ways = (sum(found.flows[:half]), sum(found.flows[half:]))
        flow = max(ways) if self.middle else found.flow
        return friction.velocity(flow, self.pipe.inside_m)


def _most(part: Callable[[int], float | None], most: int, likely: float) -> int:
    """The most lines, 0 to ``most``, of which ``part`` is 1 or less.

    part: of a number of lines, rising with it, about in step; None: more than can be; likely:
    where to begin.
    """
    low, high = 0, most + 1
    trial = min(max(math.floor(likely), 1), most)
    for at in range(2 * most):
        found = part(trial)
        if found is not None and found <= MET:
            low = trial
        else:
            high = trial
        if high - low <= 1:
            break
        guess = math.floor(trial / found * MET) if found and at < FEW else (low + high) // 2
        trial = min(max(guess, low + 1), high - 1)
    return low


@lru_cache(16)
def _inflow(line: Line, most_pa: float) -> Inflow:
    lengths, rises = line.parts
    return manifold.inflow(most_pa, lengths, rises, WEIGHT, line.loss, line.dripper.at)


@lru_cache(256)
def _zone(one: Manifold, line: Line, count: int, pressure_pa: float) -> Subunit:
    fall = WEIGHT * abs(one.slope) * one.apart * count
    # rounded up, so that a search asks for the same curve again
    most = 2.0 ** (math.ceil(2 * math.log2(pressure_pa + fall)) / 2)
    fed = manifold.MIDDLE if one.middle else manifold.START
    return manifold.subunit(
        pressure_pa, count, one.apart, fed, one.slope, WEIGHT, one.loss, _inflow(line, most)
    )
