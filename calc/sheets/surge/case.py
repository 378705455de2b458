"""A pipe that ends in a valve, as numbers: what the closing does to it, and what it is rated."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from functools import cached_property
from typing import TYPE_CHECKING, Self

from calc import practice, surge, water
from calc.pipe import friction, pipes, wall
from calc.pipe.line import Line, Section, Stress, larger_pipes
from calc.sheets.parts.pipe_choice import chosen_pipe

if TYPE_CHECKING:
    from collections.abc import Callable

    from calc.page.form import Values

LONGEST_CLOSING = 600.0  # s, the longest closing the form takes; our choice
HOSE_WALL = 1 / 8  # of the bore; rough, common practice, no source


@dataclass(frozen=True)
class Hold:
    """How a pipe is held: words for the menu, its wall factor and the formula of that."""

    label: str
    factor: Callable[[float, float, float], float]
    formula: str


HELD = {
    "buried": Hold(
        "Buried, or clipped and glued",
        wall.restraint_buried,
        "c = 2 * e / D * (1 + nu) + D * (1 - nu**2) / (D + e)",
    ),
    "laid": Hold(
        "Laid on the ground, held at one end",
        wall.restraint_anchored_upstream,
        "c = 2 * e / D * (1 + nu) + D * (1 - nu / 2) / (D + e)",
    ),
    "joints": Hold(
        "Push-fit joints that let it stretch",
        wall.restraint_jointed,
        "c = 2 * e / D * (1 + nu) + D / (D + e)",
    ),
}
# A pipe kind's material by how its key begins (the longer beginnings first).
MATERIAL_OF = (
    ("cpvc", "cpvc"),
    ("pvc", "pvc"),
    ("pex", "pex"),
    ("pe", "pe"),
    ("copper", "copper"),
    ("galv", "steel"),
    ("steel", "steel"),
    ("hose", "hose"),
    ("layflat", "hose"),
    ("suction", "hose"),
)
MATERIALS_WITHOUT_WALL = frozenset({"own"})  # a measured bore: the wall is not known


def material_of(kind: str) -> wall.Material | None:
    """The ``wall.Material`` of a pipe kind's key; None where it is not known."""
    for start, key in MATERIAL_OF:
        if kind.startswith(start):
            return wall.MATERIALS[key]
    return None


@dataclass(frozen=True)
class Case:
    """A pipe that ends in a valve.

    held: key of ``HELD``; flow: m3/s, stopped; length: m; closing: s; pressure: static gauge
    pressure at the valve, Pa; part: rating of the lowest-rated part, Pa, or None; temperature:
    of the water, K; hottest: most the pipe gets, K; air: air pressure, Pa absolute; own_rating:
    of a pipe known by its bore only, Pa, or None; relief: m3/s that a relief valve or an arrester
    beside the valve takes.
    """

    pipe: pipes.Pipe
    held: str
    flow: float
    length: float
    closing: float
    pressure: float
    part: float | None
    temperature: float
    hottest: float
    air: float
    own_rating: float | None = None
    relief: float = 0.0

    # The wave ---------------------------------------------------------------------------------

    @property
    def density(self) -> float:
        return water.density(self.temperature)

    @property
    def bulk(self) -> float:
        return water.bulk_modulus(self.temperature)

    @cached_property
    def velocity(self) -> float:
        """Speed of the water in the pipe, m/s."""
        return friction.velocity(self.flow, self.pipe.inside_m)

    @property
    def stopped(self) -> float:
        """The speed that is stopped: all but what a relief valve lets through, m/s."""
        return friction.velocity(self.flow - self.relief, self.pipe.inside_m)

    @property
    def material(self) -> wall.Material | None:
        """None: the wall is not known and taken as rigid."""
        material = material_of(self.pipe.kind)
        walled = self.pipe.outside_m > self.pipe.inside_m
        return material if walled or material is wall.MATERIALS["hose"] else None

    @property
    def modulus(self) -> float:
        """Of the wall at the water's temperature, Pa."""
        return wall.modulus_at(self.material, self.temperature)

    @property
    def thickness(self) -> float:
        """Wall, m; a hose is sold by its bore, so its wall is a rough share of that."""
        if self.pipe.outside_m > self.pipe.inside_m:
            return (self.pipe.outside_m - self.pipe.inside_m) / 2
        return HOSE_WALL * self.pipe.inside_m

    @property
    def restraint(self) -> float:
        return HELD[self.held].factor(self.pipe.inside_m, self.thickness, self.material.poisson)

    @cached_property
    def speed(self) -> float:
        """Speed of the pressure wave, m/s."""
        if self.material is None:
            return math.sqrt(self.bulk / self.density)
        return surge.wave_speed(
            self.bulk,
            self.density,
            self.pipe.inside_m,
            self.thickness,
            self.modulus,
            self.restraint,
        )

    @property
    def critical(self) -> float:
        """Closing time up to which a stop is sudden, s."""
        return surge.critical_time(self.length, self.speed)

    # The pressures ----------------------------------------------------------------------------

    def rise_for(self, closing: float) -> float:
        """Pressure rise for a closing time (s), Pa."""
        return surge.closing_rise(
            self.density, self.speed, self.length, self.stopped, closing, self.pressure
        )

    @cached_property
    def rise(self) -> float:
        return self.rise_for(self.closing)

    @property
    def sudden(self) -> float:
        """Rise of a sudden stop, Pa."""
        return surge.joukowsky_rise(self.density, self.speed, self.stopped)

    @property
    def peak(self) -> float:
        return self.pressure + self.rise

    @property
    def low(self) -> float:
        """Gauge pressure behind the wave, Pa, as if water could not boil."""
        return surge.low_side(self.pressure, self.rise)

    @property
    def vapour(self) -> float:
        return water.vapour_pressure(self.temperature)

    @property
    def lowest(self) -> float:
        """Lowest gauge pressure there can be, Pa: water boils first."""
        return max(self.low, self.vapour - self.air)

    @property
    def separates(self) -> bool:
        """Whether the water column separates behind the wave."""
        return surge.column_separates(self.low, self.air, self.vapour)

    @property
    def rejoining(self) -> float:
        """About the highest pressure when a separated column rejoins, Pa."""
        return surge.rejoining_peak(self.pressure, self.rise)

    def closing_for(self, rise: float) -> float:
        """Shortest closing time (s) that keeps the rise at ``rise`` (Pa); infinity: none."""
        if rise <= 0:
            return math.inf
        return surge.closing_time_for(
            self.density, self.speed, self.length, self.stopped, self.pressure, rise
        )

    # What the line is rated -------------------------------------------------------------------

    @cached_property
    def line(self) -> Line:
        """The pipe as a line at rest, whose heat and rating every sheet judges alike."""
        section = Section(self.pipe, self.length)
        return Line((section,), self.pressure, self.temperature, hottest_k=self.hottest)

    @cached_property
    def stress(self) -> Stress:
        """Static pressure against the pipe's rating at its hottest, by ``Line.stresses``."""
        if self.pipe.kind not in pipes.KINDS:
            return Stress(self.line.sections[0], self.pressure, self.own_rating)
        return self.line.stresses()[0]

    @property
    def too_hot(self) -> bool:
        """Whether the pipe gets hotter than its kind may, or is not made for hot water."""
        return pipes.too_hot(self.pipe, self.hottest, self.temperature)

    @property
    def rating(self) -> float | None:
        """The pipe's, Pa; None where it is not known or the pipe is too hot."""
        return self.stress.rating_pa

    @property
    def allowance(self) -> float:
        """Peak over rating that the pipe's standard allows for surges (-), 1 for none."""
        return practice.SURGE_ALLOWANCE.get(self.pipe.kind, 1.0)

    @property
    def limits(self) -> tuple[tuple[str, float, float], ...]:
        """(what, rating Pa, highest peak allowed Pa) of all whose rating is known."""
        found = []
        if self.rating is not None:
            found.append(("the pipe", self.rating, self.rating * self.allowance))
        if self.part is not None:
            found.append(("the lowest-rated part", self.part, self.part))
        return tuple(found)

    @property
    def weakest(self) -> tuple[str, float, float] | None:
        """The one of ``limits`` with the lowest rating; None where none is known."""
        return min(self.limits, key=lambda one: one[1], default=None)

    @property
    def calm_rise(self) -> float:
        """Rise up to which nothing is near its rating and no pressure falls below 0, Pa."""
        room = [practice.NEAR_RATING * rating - self.pressure for _, rating, _ in self.limits]
        return min(self.pressure, *room) if room else self.pressure

    @property
    def arrester(self) -> float:
        """Air at rest that keeps the peak at what nothing minds, m3."""
        start = self.pressure + self.air
        return surge.arrester_air(
            self.density, self.length, self.pipe.inside_m, self.velocity, start,
            start + self.calm_rise,
        )  # fmt: skip

    @property
    def outside(self) -> float:
        """Outside diameter, m; of a hose or a measured bore, that of its bore and wall."""
        return max(self.pipe.outside_m, self.pipe.inside_m)

    @property
    def push(self) -> float:
        """Thrust on a right-angled bend at the peak, N."""
        return surge.thrust(self.peak, self.outside)

    # What would change it ---------------------------------------------------------------------

    def with_pipe(self, pipe: pipes.Pipe) -> Self:
        return replace(self, pipe=pipe)

    def wider(self) -> tuple[Case, ...]:
        """The same closing in the next sizes of the kind that a fix may take."""
        return tuple(map(self.with_pipe, larger_pipes(self.pipe, practice.MOST_SIZES_UP)))


def case_of(values: Values) -> Case:
    """The ``Case`` of a sheet's values.  Raises InputError by the physics' own arguments."""
    return stopped(values, values.closing, values.pressure)


def stopped(values: Values, closing: float, pressure: float) -> Case:
    """The ``Case`` of a pipe whose flow is stopped in a time. closing: s; pressure: at rest, Pa."""
    hottest = values.water if values.hottest is None else max(values.hottest, values.water)
    return Case(
        pipe=chosen_pipe(values),
        held=values.held,
        flow=values.flow,
        length=values.length,
        closing=closing,
        pressure=pressure,
        part=values.weakest,
        temperature=values.water,
        hottest=hottest,
        air=water.air_pressure(values.altitude),
        own_rating=values.rating,
    )
