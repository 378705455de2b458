"""A pipe that ends in a valve, and what it stands. The numbers behind the surge sheet."""

import math
from dataclasses import dataclass
from functools import cached_property

from calc import surge, water
from calc.pipe import pipes

HELD = {
    "buried": (
        "Buried, or clipped and glued",
        surge.restraint_buried,
        "c = 2 * e / D * (1 + nu) + D * (1 - nu**2) / (D + e)",
    ),
    "laid": (
        "Laid on the ground, held at one end",
        surge.restraint_anchored_upstream,
        "c = 2 * e / D * (1 + nu) + D * (1 - nu / 2) / (D + e)",
    ),
    "joints": (
        "Push-fit joints that let it stretch",
        surge.restraint_jointed,
        "c = 2 * e / D * (1 + nu) + D / (D + e)",
    ),
}
# A pipe kind's material by how its key begins ("pex" before "pe").
HOSE_WALL = 1 / 8  # of the bore; rough, common practice, no source
MATERIALS_WITHOUT_WALL = frozenset({"own"})  # a measured bore: the wall is not known
MATERIAL_OF = (
    ("pvc", "pvc"),
    ("cpvc", "pvc"),
    ("pex", "pex"),
    ("pe", "pe"),
    ("copper", "copper"),
    ("galv", "steel"),
    ("steel", "steel"),
    ("hose", "hose"),
    ("layflat", "hose"),
)


@dataclass(frozen=True)
class Line:
    """A pipe that ends in a valve, in SI; ``material`` None: a wall taken as rigid."""

    pipe: pipes.Pipe
    material: surge.Material | None
    held: str
    flow: float
    length: float
    closing: float
    pressure: float
    temperature: float
    air: float

    @cached_property
    def density(self):
        return water.density(self.temperature)

    @cached_property
    def bulk(self):
        return water.bulk_modulus(self.temperature)

    @cached_property
    def velocity(self):
        return self.flow / (math.pi / 4 * self.pipe.inside_m**2)

    @property
    def wall(self):
        """Wall, m; a hose is sold by its bore, so its wall is a rough share of that."""
        if self.pipe.outside_m > self.pipe.inside_m:
            return (self.pipe.outside_m - self.pipe.inside_m) / 2
        return HOSE_WALL * self.pipe.inside_m

    @property
    def restraint(self):
        return HELD[self.held][1](self.pipe.inside_m, self.wall, self.material.poisson)

    @cached_property
    def speed(self):
        """Speed of the pressure wave, m/s."""
        if self.material is None:
            return math.sqrt(self.bulk / self.density)
        return surge.wave_speed(
            self.bulk,
            self.density,
            self.pipe.inside_m,
            self.wall,
            self.material.modulus,
            self.restraint,
        )

    def rise(self, closing):
        """Pressure rise for a closing time, Pa."""
        return surge.closing_rise(
            self.density, self.speed, self.length, self.velocity, closing, self.pressure
        )

    @property
    def sudden(self):
        return surge.joukowsky_rise(self.density, self.speed, self.velocity)

    @cached_property
    def peak(self):
        return self.pressure + self.rise(self.closing)

    @property
    def low(self):
        """Gauge pressure behind the wave, Pa, as if water could not boil."""
        return surge.low_side(self.pressure, self.rise(self.closing))

    @cached_property
    def vapour(self):
        return water.vapour_pressure(self.temperature)

    @property
    def parts(self):
        """Whether the water column parts behind the wave."""
        return surge.column_separates(self.low, self.air, self.vapour)

    @property
    def gentle(self):
        """Peak pressure up to which the fall behind the wave stays above boiling, Pa."""
        return 2 * self.pressure + self.air - self.vapour

    def closing_for(self, limit):
        """Shortest closing time that keeps the peak at ``limit``, s."""
        return surge.closing_time_for(
            self.density,
            self.speed,
            self.length,
            self.velocity,
            self.pressure,
            limit - self.pressure,
        )


@dataclass(frozen=True)
class Limits:
    """What the line stands, Pa: the pipe's rating (None: unknown) and the weakest part's."""

    rating: float | None
    part: float | None
    recurring: float

    @property
    def lowest(self):
        """The lower limit: the part's, or the rating; None where neither is known."""
        known = [limit for limit in (self.rating, self.part) if limit is not None]
        return min(known) if known else None

    @property
    def highest(self):
        """The most allowed again and again: the rating times its surge allowance, or the part's."""
        known = [
            limit for limit in (self.rating and self.rating * self.recurring, self.part) if limit
        ]
        return min(known) if known else None


def material_of(kind):
    """The ``surge.Material`` of a pipe kind's key; None where it is not known."""
    for start, key in MATERIAL_OF:
        if kind.startswith(start):
            return surge.MATERIALS[key]
    return None


def line_of(values, pipe):
    material = material_of(pipe.kind)
    known = pipe.outside_m > pipe.inside_m or material is surge.MATERIALS["hose"]
    return Line(
        pipe,
        material if known else None,
        values.held,
        values.flow,
        values.length,
        values.closing,
        values.pressure,
        values.water,
        water.air_pressure(values.altitude),
    )
