"""One filled line of pipe sections end to end: speed, loss, pressure along its profile.

Every sheet of one pipe asks this; the solved network gives the same figures, since both use
``friction.total_loss``.  Heights are above the line's start (the pump's outlet).
"""

from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import cached_property

from calc import water
from calc.errors import InputError, RangeError
from calc.pipe import friction, pipes
from calc.solve import root


@dataclass(frozen=True)
class Section:
    """One length of one pipe, filled.

    length_m: m, above 0; rise_m: height of its far end above its near end, m; fittings:
    (``friction.Fitting``, count) pairs; share: of the line's flow that runs in it (-);
    device: (flow m3/s, loss m) of a filter at its end, or None; reducer: (pressure held Pa,
    flow m3/s, loss m wide open at that flow) at its end, or None, 0 Pa at a break-pressure tank,
    which is open to the air; name: for readers.
    """

    pipe: pipes.Pipe
    length_m: float
    rise_m: float = 0.0
    fittings: tuple[tuple[friction.Fitting, float], ...] = ()
    share: float = 1.0
    device: tuple[float, float] | None = None
    reducer: tuple[float, float, float] | None = None
    name: str = ""

    @cached_property
    def k(self) -> float:
        """Loss coefficients of the fittings together, in this bore, -."""
        bore = self.pipe.inside_m
        return sum(n * friction.fitting_coefficient(one, bore) for one, n in self.fittings)

    @property
    def vented(self) -> bool:
        """Whether a break-pressure tank stands at its end."""
        return self.reducer is not None and self.reducer[0] <= 0.0


@dataclass(frozen=True)
class Point:
    """A point of a line: distance along it and height above its start, m; gauge pressure, Pa."""

    distance_m: float
    height_m: float
    pressure_pa: float
    name: str = ""


@dataclass(frozen=True)
class Stress:
    """A section's highest pressure against its rating, Pa; ``rating_pa`` None: none known,
    ``hot``: because the water is hotter than the kind may carry."""

    section: Section
    pressure_pa: float
    rating_pa: float | None
    hot: bool = False

    @property
    def over(self) -> bool:
        """A rating typed in another unit is still met."""
        if self.hot:
            return True
        return self.rating_pa is not None and self.pressure_pa > self.rating_pa * (1 + 1e-9)


@dataclass(frozen=True)
class Line(water.AtTemperature):
    """Sections end to end from a held pressure.

    start_pa: gauge pressure at the start while water runs, Pa; temperature_k: of the water, K,
    273.15 to 373.15; highest_pa: most the start ever has, Pa (None: ``start_pa``); hottest_k:
    most the pipe gets, K (None: the water's; never less than it); lowest_m, highest_m: lowest and
    highest point on the way, m above the start, where the reader knows of a dip or a crest (None:
    the ends).
    """

    sections: tuple[Section, ...]
    start_pa: float
    temperature_k: float
    highest_pa: float | None = None
    hottest_k: float | None = None
    lowest_m: float | None = None
    highest_m: float | None = None

    # Its length, and how the water runs -----------------------------------------------------

    @property
    def length_m(self) -> float:
        """Length of all sections, m."""
        return sum(section.length_m for section in self.sections)

    @property
    def rise_m(self) -> float:
        """Height of the far end above the start, m."""
        return sum(section.rise_m for section in self.sections)

    @property
    def single(self) -> Section | None:
        """The section where there is only one."""
        return self.sections[0] if len(self.sections) == 1 else None

    def speed_in(self, section: Section, flow_m3s: float) -> float:
        """Mean water speed in a section at the line's flow (m3/s), m/s."""
        return friction.velocity(flow_m3s * section.share, section.pipe.inside_m)

    def speed(self, flow_m3s: float) -> float:
        """Highest mean speed anywhere on the line, m/s."""
        return max(self.speed_in(section, flow_m3s) for section in self.sections)

    def straight_loss_in(self, section: Section, flow_m3s: float) -> float:
        """Head lost in the straight pipe of a section, m."""
        pipe = section.pipe
        return friction.pipe_loss(
            flow_m3s * section.share,
            pipe.inside_m,
            section.length_m,
            pipe.roughness_m,
            self.viscosity,
        )

    def local_loss_in(self, section: Section, flow_m3s: float) -> float:
        """Head lost in the fittings of a section, m."""
        return friction.local_loss(section.k, self.speed_in(section, flow_m3s))

    def device_loss_in(self, section: Section, flow_m3s: float) -> float:
        """Head lost in the filter at a section's end, m: with the square of the flow."""
        if section.device is None:
            return 0.0
        rated, loss = section.device
        return loss * (flow_m3s * section.share / rated) ** 2

    def loss_in(self, section: Section, flow_m3s: float) -> float:
        """Head lost in a section, its fittings and its filter, m; a reducer apart."""
        return (
            self.straight_loss_in(section, flow_m3s)
            + self.local_loss_in(section, flow_m3s)
            + self.device_loss_in(section, flow_m3s)
        )

    def loss(self, flow_m3s: float) -> float:
        """Head lost on the whole line, m; what a reducer takes is not counted."""
        return sum(self.loss_in(section, flow_m3s) for section in self.sections)

    # Pressure along the way -----------------------------------------------------------------

    def _reduced(self, section: Section, flow_m3s: float, pressure_pa: float) -> float:
        """Pressure after a section's reducer: held, or less where it is wide open, Pa."""
        if section.reducer is None:
            return pressure_pa
        held, rated, loss = section.reducer
        wide_open = pressure_pa - self.weight * loss * (flow_m3s * section.share / rated) ** 2
        return min(held, wide_open)

    def points(self, flow_m3s: float, start_pa: float | None = None) -> tuple[Point, ...]:
        """The start and every section's end at a flow (m3/s), with the pressure there.

        start_pa: Pa at the start (None: ``self.start_pa``).
        """
        pressure = self.start_pa if start_pa is None else start_pa
        distance = height = 0.0
        found = [Point(0.0, 0.0, pressure)]
        for section in self.sections:
            distance += section.length_m
            height += section.rise_m
            pressure -= self.weight * (section.rise_m + self.loss_in(section, flow_m3s))
            pressure = self._reduced(section, flow_m3s, pressure)
            found.append(Point(distance, height, pressure, section.name))
        return tuple(found)

    def left(self, flow_m3s: float) -> float:
        """Gauge pressure at the far end at a flow (m3/s), Pa; below 0 the water does not arrive."""
        return self.points(flow_m3s)[-1].pressure_pa

    @property
    def static(self) -> float:
        """Static pressure at the far end, Pa; no pipe leaves more."""
        return self.left(0.0)

    @property
    def most_start(self) -> float:
        """The highest pressure the start ever has, Pa."""
        return max(self.start_pa, self.highest_pa or self.start_pa)

    @property
    def most_static(self) -> float:
        """Static pressure at the far end while the start has its highest, Pa."""
        return self.points(0.0, self.most_start)[-1].pressure_pa

    @property
    def reach_m(self) -> float:
        """Height above the start to which it lifts water with no flow, m; a reducer apart."""
        return self.start_pa / self.weight

    @property
    def reduced(self) -> bool:
        """Whether a reducer sits on the way."""
        return any(section.reducer is not None for section in self.sections)

    @property
    def vented(self) -> bool:
        """Whether a break-pressure tank stands on the way."""
        return any(section.vented for section in self.sections)

    @property
    def top_m(self) -> float:
        """Height of the highest point known of, m above the start."""
        heights = [point.height_m for point in self.points(0.0)]
        return max(heights) if self.highest_m is None else max(*heights, self.highest_m)

    def crest(self, flow_m3s: float) -> float:
        """Lowest gauge pressure anywhere on the line at a flow (m3/s), Pa.

        A highest point of which only the height is known is taken at the far end of the line,
        behind all friction: the careful side.
        """
        points = self.points(flow_m3s)
        lowest = min(point.pressure_pa for point in points)
        if self.highest_m is None or self.highest_m <= max(point.height_m for point in points):
            return lowest
        end = points[-1]
        return min(lowest, end.pressure_pa - self.weight * (self.highest_m - end.height_m))

    # Ratings --------------------------------------------------------------------------------

    def rating_of(self, section: Section) -> float | None:
        """Rating of a section's pipe at its hottest, Pa; None where none is known.

        Raises RangeError where the kind may not get so hot.
        """
        return (
            None if section.pipe.rating_pa is None else pipes.rating_at(section.pipe, self.heat_k)
        )

    @property
    def heat_k(self) -> float:
        """The hottest the pipe gets, K: never less than its water."""
        return max(self.temperature_k, self.hottest_k or self.temperature_k)

    def stresses(self) -> tuple[Stress, ...]:
        """Each section's highest pressure, with everything shut, against its rating.

        A dip of which only the height is known is taken to lie in every section before a
        reducer.  Source: hydrostatics.
        """
        start = self.most_start
        points, found, reduced = self.points(0.0, start), [], False
        for section, near in zip(self.sections, points, strict=False):
            inlet = near.pressure_pa
            before = inlet - self.weight * section.rise_m  # ahead of its reducer
            most = max(inlet, before)
            if self.lowest_m is not None and not reduced:
                most = max(most, start - self.weight * self.lowest_m)
            reduced = reduced or section.reducer is not None
            try:
                found.append(Stress(section, most, self.rating_of(section)))
            except RangeError:
                found.append(Stress(section, most, None, hot=True))
        return tuple(found)

    # What would change it -------------------------------------------------------------------

    def with_pipe(self, pipe: pipes.Pipe, index: int | None = None) -> "Line":
        """The same line in another pipe throughout, or in one section (by index)."""
        sections = tuple(
            replace(section, pipe=pipe) if index is None or index == i else section
            for i, section in enumerate(self.sections)
        )
        return replace(self, sections=sections)

    def with_section(self, index: int, section: Section) -> "Line":
        """The same line with one section, by its index, exchanged."""
        changed = (*self.sections[:index], section, *self.sections[index + 1 :])
        return replace(self, sections=changed)

    def with_start(self, start_pa: float) -> "Line":
        """The same line from another pressure at its start (Pa)."""
        return replace(self, start_pa=start_pa)

    def start_for(self, needed_pa: float, flow_m3s: float) -> float:
        """Pressure at the start that leaves ``needed_pa`` at the end at a flow (m3/s), Pa.

        A break-pressure tank must get its water, whatever the pipe behind it would draw.
        Raises InputError where a reducer on the way holds less than that.
        """
        pressure = needed_pa
        for section in reversed(self.sections):
            if section.reducer is not None:
                held, rated, loss = section.reducer
                if pressure > held * (1 + 1e-12):
                    raise InputError(_LESS[section.vented])
                pressure = max(pressure, 0.0) if section.vented else pressure
                pressure += self.weight * loss * (flow_m3s * section.share / rated) ** 2
            pressure += self.weight * (section.rise_m + self.loss_in(section, flow_m3s))
        return pressure

    def largest_flow(self, needed_pa: float, most_m3s: float) -> float:
        """Largest flow up to ``most_m3s`` (m3/s) that leaves ``needed_pa`` (Pa); 0 where none."""
        return largest(lambda flow: self.left(flow) - needed_pa, most_m3s)

    def worst(self, flow_m3s: float) -> int:
        """Index of the section that loses the most head at a flow (m3/s)."""
        losses = [self.loss_in(section, flow_m3s) for section in self.sections]
        return max(range(len(losses)), key=losses.__getitem__)


_LESS = {
    False: "A pressure-reducing valve on the way holds less than that.",
    True: "A break-pressure tank on the way stands too low for that.",
}


def largest(spare: Callable[[float], float], most: float) -> float:
    """Largest x in 0 to ``most`` with a falling ``spare(x)`` at 0 or above; 0 where none.

    Raises nothing.  Source: bracketing (``solve.root``).
    """
    if spare(0.0) <= 0:
        return 0.0
    return most if spare(most) >= 0 else root(spare, 0.0, most, 1e-12 * most)


def larger_pipes(pipe: pipes.Pipe, sizes_up: int) -> tuple[pipes.Pipe, ...]:
    """The next sizes of the same kind with a wider bore, narrowest first; none for an own pipe.

    sizes_up: how many, 0 or more.
    """
    if pipe.kind not in pipes.KINDS:
        return ()
    wider = [one for one in pipes.sizes(pipe.kind) if one.inside_m > pipe.inside_m]
    return tuple(wider[:sizes_up])
