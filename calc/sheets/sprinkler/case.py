"""Sprinklers as numbers: what one gives and wets, zones, the time they run."""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING

from calc import practice
from calc.drip import sprinkler
from calc.drip.sprinkler import Sprinkler
from calc.units import DAY, HOUR, MET

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.practice import OutletKind, Soil


@dataclass(frozen=True)
class Case:
    """Ground under sprinklers.

    area: m2; depth: m that plants take a day; kind, one: of sprinkler; rated: Pa, whose levels
    count; along, between: m; soil: None: not known; wind: m/s; flow: m3/s of the source; pressure:
    Pa at the last sprinkler; hours: s a day; every: days from watering to watering; daily: m3 a
    day, None: not known; reaches: share of the water.
    """

    area: float
    depth: float
    kind: OutletKind
    one: Sprinkler
    rated: float
    along: float
    between: float
    soil: Soil | None
    wind: float
    flow: float
    pressure: float
    hours: float
    every: int
    daily: float | None
    reaches: float

    # One sprinkler ----------------------------------------------------------------------------

    @property
    def each(self) -> float:
        """What one gives at this pressure, m3/s."""
        return self.one.at(self.pressure)

    @property
    def throws(self) -> float:
        """How far it throws, m."""
        return self.one.throws(self.pressure)

    @property
    def rate(self) -> float:
        """Depth given in a time, m/s."""
        return sprinkler.application_rate(self.each, self.along, self.between)

    @property
    def spread(self) -> float:
        """The greater distance, as a share of the diameter that one wets."""
        return max(self.along, self.between) / (2 * self.throws)

    @property
    def allowed(self) -> float:
        """The most of that in this wind."""
        return sprinkler.apart(self.wind)

    # All of them ------------------------------------------------------------------------------

    @property
    def count(self) -> int:
        """Sprinklers for the area."""
        return max(1, math.ceil(self.area / (self.along * self.between) / MET))

    @property
    def at_once(self) -> int:
        """Sprinklers that the source can feed; 0 where one is too many."""
        return math.floor(self.flow / self.each * MET)

    @property
    def zones(self) -> int:
        """The fewest that the source can feed."""
        return math.ceil(self.count / max(1, self.at_once))

    @property
    def in_zone(self) -> int:
        """Sprinklers of the largest zone."""
        return math.ceil(self.count / self.zones)

    @property
    def zone_flow(self) -> float:
        """Flow of the largest zone, m3/s."""
        return self.in_zone * self.each

    @property
    def given(self) -> float:
        """Depth given in a watering, m."""
        return self.depth * self.every / self.reaches

    @property
    def zone_time(self) -> float:
        """How long a zone runs in a watering, s."""
        return self.given / self.rate

    @property
    def zones_a_day(self) -> int:
        """Zones that run on the busiest day, where they are spread over the days."""
        return math.ceil(self.zones / self.every)

    @cached_property
    def time(self) -> float:
        """How long it runs on the busiest day, s."""
        return self.zones_a_day * self.zone_time

    @property
    def water(self) -> float:
        """What all sprinklers give, m3 a day as a mean."""
        return self.count * self.each * self.zone_time / self.every


def case_of(values: Values) -> Case:
    """The ``Case`` of a form.  Raises InputError by the physics' own arguments."""
    kind = practice.OUTLET_BY_KEY[values.kind]
    rated = values.rated if values.rated is not None else kind.rated
    works, _ = kind.levels(rated)
    return Case(
        area=values.area,
        depth=values.depth,
        kind=kind,
        one=Sprinkler(values.each, rated, works, values.radius),
        rated=rated,
        along=values.along,
        between=values.between,
        soil=practice.SOIL_BY_KEY.get(values.soil),
        wind=values.wind,
        flow=values.flow,
        pressure=values.pressure,
        hours=values.hours * HOUR,
        every=values.every,
        daily=None if values.daily is None else values.daily * DAY,
        reaches=values.reaches,
    )
