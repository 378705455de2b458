"""Water that does not run: the numbers behind the pressure sheet."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc import water
from calc.errors import InputError
from calc.units import GRAVITY, METRE_OF_WATER

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.units import Reader

COLUMNS = {"m water", "ft water"}  # units of pressure that are a column of water


@dataclass(frozen=True)
class Standing:
    """Water at rest. SI: density kg/m3; air, known (as typed, in Pa), gauge, needed Pa; climb m;
    temperature K; column: the pressure was typed as a column of water; absolute: from a vacuum."""

    density: float
    air: float
    known: float
    gauge: float
    needed: float
    climb: float
    temperature: float
    column: bool
    absolute: bool

    @property
    def weight(self) -> float:
        """Pa per metre of height."""
        return self.density * GRAVITY

    @property
    def head(self) -> float:
        return water.head_from_pressure(self.gauge, self.density)

    @property
    def left(self) -> float:
        return self.at(self.climb)

    def at(self, height: float) -> float:
        """Gauge pressure at a height above the place of the known one, Pa; below 0: no water."""
        return self.gauge - self.weight * height

    def highest(self, needed: float) -> float:
        """Height (m) at which ``needed`` Pa is left; negative: so far below."""
        return (self.gauge - needed) / self.weight


def read(values: Values, reader: Reader) -> Standing:
    """The ``Standing`` the form describes.  Raises InputError for an absolute vacuum."""
    density, air = water.density(values.water), water.air_pressure(values.altitude)
    known, column = values.known, values.typed["known"].unit.symbol in COLUMNS
    if column:  # of the reader's water, not of the conventional one
        known = water.pressure_from_head(values.known / METRE_OF_WATER, density)
    absolute = values.kind == "absolute"
    gauge = known - air if absolute else known
    if gauge < 0:
        raise InputError(
            f"This is a vacuum: the air itself has {reader.show(air, 'pressure')} at this "
            "altitude. Enter more, or choose “the air outside”.",
            name="known",
        )
    return Standing(
        density, air, known, gauge, values.wanted, values.climb, values.water, column, absolute
    )
