"""A heater as numbers: how its water grows, what takes that up, what its parts are rated for."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cached_property
from typing import TYPE_CHECKING

from calc import hot_water, practice, water
from calc.errors import InputError, InputErrors
from calc.pipe import pipes
from calc.sheets.parts.pipe_choice import chosen_pipe

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.form import Values
    from calc.pipe.pipes import Pipe
    from calc.units import Reader

HAIR = 1e-6  # K, the same of temperatures


@dataclass(frozen=True)
class Case:
    """Temperatures in K, pressures in Pa gauge, volumes in m3.

    air: of the site; setting: of the relief valve, None where there is none or it is not known;
    tank, charge: of the expansion tank, None where not known, tank 0 where there is none.
    """

    values: Values
    pipe: Pipe
    air: float
    cold: float
    stored: float
    static: float
    setting: float | None
    tank: float | None
    charge: float | None

    # What grows, and where it goes --------------------------------------------------------------

    @property
    def closed(self) -> bool:
        """Whether the grown water cannot go back where it came from."""
        return _closed(self.values)

    @property
    def vented(self) -> bool:
        """Whether an open tank and a vent pipe keep the pressure down."""
        return self.values.closed == "vent"

    @property
    def relieved(self) -> bool:
        """Whether there is a relief valve."""
        return self.values.valve != "none"

    @property
    def growth(self) -> float:
        """Water that no longer fits in once it is hot, m3."""
        return self.growth_at(self.stored)

    def growth_at(self, hot: float) -> float:
        """The same at another temperature of the store."""
        return hot_water.growth(self.values.heater, self.cold, hot)

    @property
    def limit(self) -> float | None:
        """Pressure to stay below: the relief valve drips, or a part is over its rating."""
        seeps = None if self.setting is None else practice.RELIEF_SEEPS * self.setting
        return min((one for one in (seeps, self.lowest) if one is not None), default=None)

    @cached_property
    def needed(self) -> float | None:
        """Expansion tank that is enough, charged to the static pressure; None: not known."""
        return self.needed_at(self.stored)

    def needed_at(self, hot: float) -> float | None:
        """The same at another temperature of the store; infinite where no tank is enough."""
        if self.limit is None:
            return None
        growth = self.growth_at(hot)
        return hot_water.tank_needed(growth, self.static, self.static, self.limit, self.air)

    @property
    def locked(self) -> float:
        """Pressure with no room, no relief and nothing that bursts."""
        grown = max(self.growth / self.values.heater, 0.0)
        return self.static + hot_water.locked_rise(grown, self.stored)

    @cached_property
    def reached(self) -> float | None:
        """Pressure when hot, were there no relief valve; None: not known."""
        if not self.closed:
            return self.static
        if self.tank is None or (self.tank and self.charge is None):
            return None
        if not self.tank or self.charge is None:
            return self.locked
        found = hot_water.pressure_reached(
            self.growth, self.tank, self.charge, self.static, self.air
        )
        return min(found, self.locked)

    @property
    def highest(self) -> float | None:
        """The highest pressure that is really met: a relief valve opens at its setting."""
        if self.reached is None:
            return None
        if self.setting is None:
            return self.reached
        return min(self.reached, max(self.setting, self.static))

    # Ratings ------------------------------------------------------------------------------------

    @property
    def heat(self) -> float:
        """The hottest the pipe gets."""
        return max(self.stored, self.values.hottest or 0.0)

    @property
    def too_hot(self) -> bool:
        """Whether the pipe is not made for this heat."""
        return pipes.too_hot(self.pipe, self.heat, self.stored)

    @property
    def pipe_rating(self) -> float | None:
        """What the pipe is rated at this heat; None where that is not known."""
        limit = pipes.hottest_k(self.pipe)
        if limit is None or self.heat > limit + HAIR:
            return None
        return pipes.rating_at(self.pipe, self.heat)

    @property
    def lowest(self) -> float | None:
        """The lowest rating that is known."""
        ratings = (self.values.weakest, self.pipe_rating)
        return min((one for one in ratings if one is not None), default=None)

    @property
    def pipe_is_lowest(self) -> bool:
        """Whether the pipe is the lowest-rated part."""
        return self.pipe_rating is not None and self.pipe_rating == self.lowest

    # The tap ------------------------------------------------------------------------------------

    @property
    def mixed(self) -> bool:
        """Whether there is a mixing valve."""
        return self.values.mix != "none"

    @property
    def at_tap(self) -> float | None:
        """The hottest water at the tap; None where the mixing valve's setting is not known."""
        if not self.mixed:
            return self.stored
        return None if self.values.set is None else min(self.values.set, self.stored)

    @property
    def share(self) -> float | None:
        """Share of hot water in what the mixing valve gives; None where that is not known."""
        if not self.mixed or self.at_tap is None:
            return None
        return hot_water.hot_share(self.cold, self.stored, self.at_tap)

    @property
    def in_pipe(self) -> float:
        """Temperature of the water that comes through the pipe, K."""
        if self.values.mix == "heater" and self.at_tap is not None:
            return self.at_tap
        return self.stored

    @property
    def left(self) -> float:
        """Water that stays in the pipe after each draw, m3."""
        return hot_water.pipe_holds(self.pipe.inside_m, self.values.length)

    @property
    def wait(self) -> float:
        """How long the tap runs before it is hot, s."""
        return self.left / self.values.flow

    @property
    def lost(self) -> float:
        """Heat of the water that cools in the pipe after each draw, J."""
        return hot_water.heat(self.left, self.cold, self.in_pipe)

    @property
    def warming(self) -> float:
        """Heat for the whole heater, J."""
        return hot_water.heat(self.values.heater, self.cold, self.stored)

    def with_setting(self, setting: float) -> Case:
        """The same with another relief valve."""
        return replace(self, setting=setting)

    def with_static(self, static: float) -> Case:
        """The same at another static pressure."""
        return replace(self, static=static)


def _closed(values: Values) -> bool:
    """Whether something closes the cold pipe: only then the form asks for an expansion tank."""
    return values.vessel is not None


def case_of(values: Values, reader: Reader) -> Case:
    """The ``Case`` of a form.  Raises InputErrors for numbers that contradict one another."""
    faults = list(_wrong(values, reader))
    if faults:
        raise InputErrors(faults)
    has = _closed(values) and values.vessel == "yes"
    return Case(
        values,
        chosen_pipe(values),
        water.air_pressure(values.altitude),
        values.water,
        values.stored,
        values.static,
        values.relief,
        values.volume if has else 0.0,
        values.charge if has else None,
    )


def _wrong(values: Values, reader: Reader) -> Iterator[InputError]:
    """Numbers that contradict one another, each said at its field."""
    cold = reader.show(values.water, "temperature")
    if values.stored < values.water + 1:
        yield InputError(
            f"The stored temperature must be above {cold}, at which water comes in", name="stored"
        )
    if values.set is not None and values.set <= values.water:
        yield InputError(
            f"The mixing valve’s setting must be above {cold}, the cold water", name="set"
        )
    if None not in (values.charge, values.relief) and values.charge >= values.relief:
        opens = reader.show(values.relief, "pressure")
        yield InputError(
            f"The pre-charge must be below {opens}, at which the relief valve opens", name="charge"
        )
