"""A pump that stops in a power cut while it lifts water: ``Case`` with another event."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cached_property
from typing import TYPE_CHECKING

from calc import practice, surge, trip, water
from calc.errors import InputError
from calc.sheets.surge.case import Case, stopped
from calc.units import GRAVITY

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.units import Reader

PUMP, CREST = "the pump", "the highest point"
LEAST_ROOM = 1e3  # Pa: a vessel is worked out for a swing of at least that; our choice


@dataclass(frozen=True)
class Trip(Case):
    """A pump at the foot of a rising pipe that stops at once; ``pressure`` is that of the lift.

    lift: from the pump up to the tank's water, m; crest: highest point on the way above the pump,
    m, or None; vessel: air of a vessel at the pump at rest, m3, or None.
    """

    lift: float = 0.0
    crest: float | None = None
    vessel: float | None = None

    @property
    def weight(self) -> float:
        """Pa for each metre of water."""
        return self.density * GRAVITY

    @cached_property
    def swing(self) -> trip.Swing:
        """Fall and rise at the pump, Pa."""
        if self.vessel is None:
            return trip.Swing(self.sudden, self.sudden)
        return trip.swing(
            self.density, self.speed, self.length, self.pipe.inside_m, self.velocity,
            self.pressure + self.air, self.vessel,
        )  # fmt: skip

    @cached_property
    def rise(self) -> float:
        """Above the pressure at rest, as the check valve holds the column that comes back, Pa."""
        return self.swing.rise

    @property
    def low(self) -> float:
        """Gauge pressure at the pump after the fall, Pa, as if water could not boil."""
        return self._after(0.0)

    @property
    def crest_low(self) -> float | None:
        """The same at the highest point; None where none is given."""
        return None if self.crest is None else self._after(self.crest)

    def _after(self, height: float) -> float:
        return trip.pressure_after(self.pressure, -self.swing.fall, height, self.weight)

    def boiled(self, pressure: float) -> float:
        """A gauge pressure (Pa) as low as it can be: water boils first."""
        return max(pressure, self.vapour - self.air)

    @property
    def worst(self) -> tuple[str, float]:
        """(where, gauge pressure in Pa as if water could not boil) of the lowest pressure."""
        crest = self.crest_low
        return (PUMP, self.low) if crest is None or crest >= self.low else (CREST, crest)

    @property
    def lowest(self) -> float:
        """Lowest gauge pressure there can be, at the pump or the highest point, Pa."""
        return self.boiled(self.worst[1])

    @property
    def separates(self) -> bool:
        """Whether the water column parts, at the pump or at the highest point."""
        return surge.column_separates(self.worst[1], self.air, self.vapour)

    @property
    def rejoining(self) -> float:
        """About the highest pressure when a parted column closes again, Pa."""
        return surge.rejoining_peak(self.pressure, self.sudden)

    @property
    def peak(self) -> float:
        """Highest pressure at the pump, Pa: on the closed check valve, or of a column rejoining."""
        return self.rejoining if self.separates else self.pressure + self.rise

    @property
    def dry_from(self) -> float:
        """Height above the pump from which the pressure falls below zero, m."""
        return self.low / self.weight

    # What would be calm -----------------------------------------------------------------------

    @property
    def calm_fall(self) -> float:
        """Fall up to which no pressure at the pump or the highest point is below 0, Pa."""
        return self.pressure - self.weight * max(self.crest or 0.0, 0.0)

    @property
    def calm_rise(self) -> float:
        """Swing up to which nothing is near its rating and no pressure falls below 0, Pa."""
        return min(self.calm_fall, *self._rooms()) if self.limits else self.calm_fall

    def _rooms(self) -> tuple[float, ...]:
        return tuple(practice.NEAR_RATING * rating - self.pressure for _, rating, _ in self.limits)

    @property
    def vessel_needed(self) -> float | None:
        """Air at rest of a vessel that leaves nothing to mind, m3; None: none needed, or none can.

        The larger of that for the fall and that for the rise.
        """
        if not LEAST_ROOM < self.calm_rise < self.sudden:
            return None
        return max(self.vessel_for(reached) for reached in self.calm_pressures)

    @property
    def calm_pressures(self) -> tuple[float, ...]:
        """Absolute pressures at the pump that the air may fall to and rise to, Pa."""
        start, rooms = self.pressure + self.air, self._rooms()
        return (start - self.calm_fall, *(start + room for room in rooms))

    def vessel_for(self, reached: float) -> float:
        """Air at rest of a vessel that swings as far as an absolute pressure (Pa), m3."""
        return trip.vessel_air(
            self.density, self.length, self.pipe.inside_m, self.velocity, self.pressure + self.air,
            reached,
        )  # fmt: skip

    def with_vessel(self, air: float | None) -> Trip:
        """With another vessel (m3 of air at rest), or None."""
        return replace(self, vessel=air)


def trip_of(values: Values, reader: Reader) -> Trip:
    """The ``Trip`` of a sheet's values.

    Raises InputError for a pipe shorter than it rises, and by the physics' own arguments.
    """
    rises = max(values.lift, values.crest or 0.0)
    if values.length < rises * (1 - 1e-9):
        raise InputError(
            f"The pipe must be at least as long as it rises, {reader.show(rises, 'length')}",
            name="length",
        )
    pressure = water.pressure_from_head(values.lift, water.density(values.water))
    plain = stopped(values, 0.0, pressure)
    return Trip(**vars(plain), lift=values.lift, crest=values.crest, vessel=values.vessel)
