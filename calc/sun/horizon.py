"""A skyline of hills, trees and roofs: what it hides of the sun and of the sky."""

from __future__ import annotations

import math
from bisect import bisect_right
from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING

from calc.errors import InputError, require

if TYPE_CHECKING:
    from collections.abc import Sequence

ROUND = 2 * math.pi
SLICES = 360  # of the sky, for its share; our choice: within 0.001 of the exact share


@dataclass(frozen=True)
class Skyline:
    """How high the land reaches all round. ``points``: (azimuth, elevation), rad, by azimuth."""

    points: tuple[tuple[float, float], ...]

    @cached_property
    def _azimuths(self) -> list[float]:
        return [azimuth for azimuth, _ in self.points]

    def elevation(self, azimuth: float) -> float:
        """How high the skyline is there, on the straight line between its neighbours.

        azimuth: rad from north, clockwise, any number of turns.  Returns rad, 0 without points.
        Raises nothing.  Source: linear interpolation (our choice).
        """
        if not self.points:
            return 0.0
        azimuth %= ROUND
        at = bisect_right(self._azimuths, azimuth)
        left, low = self.points[at - 1]
        right, high = self.points[at % len(self.points)]
        width = (right - left) % ROUND or ROUND
        return low + (high - low) * ((azimuth - left) % ROUND) / width


FLAT = Skyline(())


def skyline(points: Sequence[tuple[float, float]]) -> Skyline:
    """A skyline by a few points, joined by straight lines all round.

    points: (azimuth, elevation), rad, azimuth -pi to 2 pi from north, clockwise, elevation 0 to
    1.5, in any order; one point is the same height all round, none is open land.
    Returns ``Skyline``.  Raises RangeError outside, InputError for two heights at one azimuth.
    Source: geometry.

    >>> round(skyline([(0.0, 0.0), (1.0, 0.2)]).elevation(0.5), 3)
    0.1
    """
    kept: dict[float, float] = {}
    for azimuth, elevation in points:
        if not -math.pi <= azimuth <= ROUND:
            raise InputError("Give directions of the skyline from 0 to 360 degrees.", name="points")
        if not 0 <= elevation <= 1.5:
            raise InputError(
                "Give heights of the skyline from 0 (level) to 85 degrees.", name="points"
            )
        azimuth %= ROUND
        if kept.setdefault(azimuth, elevation) != elevation:
            told = f"{math.degrees(azimuth):.0f} degrees"
            raise InputError(f"The skyline has two heights at {told}.", name="points")
    return Skyline(tuple(sorted(kept.items())))


def sky_share(line: Skyline, slope: float, azimuth: float) -> float:
    """The sky's share of what a plane sees, evenly bright, with the skyline before it.

    F = 1/pi int int cos theta cos e de dpsi, from the skyline or the plane's own edge upwards
    line: skyline; slope: the plane's slope, rad, 0 to pi/2; azimuth: it faces, rad from north.
    Returns a share; (1 + cos slope) / 2 without a skyline.  Raises RangeError outside.
    Source: view factor of an even sky, Liu and Jordan (1963) with a skyline.

    >>> round(sky_share(FLAT, math.pi / 2, 0.0), 3)
    0.5
    """
    require("slope", slope, 0.0, math.pi / 2, "angle")
    if not line.points:
        return (1 + math.cos(slope)) / 2
    cosine, sine, total = math.cos(slope), math.sin(slope), 0.0
    for one in range(SLICES):
        towards = ROUND * (one + 0.5) / SLICES
        lean = sine * math.cos(towards - azimuth)
        low = line.elevation(towards)
        if lean < 0:
            low = max(low, math.atan2(-lean, cosine))
        total += cosine * math.cos(low) ** 2 / 2
        total += lean * (math.pi / 4 - low / 2 - math.sin(2 * low) / 4)
    return total * (ROUND / SLICES) / math.pi
