"""The numbers of a storage tank, worked out once for findings, figures and working."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from calc import practice, storage, water, well
from calc.sheets.parts.tank_sizes import round_up
from calc.units import DAY, HOUR

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.units import Reader


@dataclass(frozen=True)
class Case:
    """Volumes in m3 (a day's for use and supply), pressures in Pa, heights in m.

    ``pumped``: what the pump alone could bring; ``short``: less comes in than is used;
    ``volume``: tank needed; ``asked``: the same rounded up as it is said; ``kept``: the tank in
    mind, else the one asked for; ``raised``: its water above the tap, 0 where a pump draws from
    it; ``gravity``: the pressure that gives; ``raised_static``: the same with no flow; ``height``:
    what the needed pressure takes; ``bridged``: time the tank in mind lasts without supply, s,
    below 0 where it does not even out the day.
    """

    values: Values
    reader: Reader
    use: float
    pumped: float
    supply: float
    shares: tuple[float, ...]
    steady: tuple[float, ...]
    balance: storage.Balance
    short: bool
    volume: float
    asked: float
    kept: float
    density: float
    raised: float
    gravity: float
    raised_static: float
    height: float
    bridged: float

    @property
    def well_limits(self) -> bool:
        """Whether the well, not the pump's hours, holds back what comes in."""
        return self.supply < self.pumped * (1 - 1e-9)

    @property
    def asks_for_hours(self) -> bool:
        """Whether the well would bring more in more hours than the pump runs."""
        values = self.values
        if values.well is None:
            return False
        all_day = well.daily(values.well, values.gives, 24.0, values.stored)
        return all_day > self.supply * (1 + 1e-9)

    def asked_at(self, hours: float) -> float | None:
        """The tank asked for with the pump running so many hours a day, m3; None: still short."""
        values = replace(self.values, numbers={**self.values.numbers, "hours": min(hours, 24.0)})
        other = case(values, self.reader)
        return None if other.short else other.asked


def case(values: Values, reader: Reader) -> Case:
    """The ``Case`` of a reader's values."""
    use, pumped = values.use * DAY, values.gives * values.hours * HOUR
    supply, steady = _source(values, pumped)
    shares = storage.PATTERNS[values.pattern]
    balance = storage.daily_balance(use, shares, supply, steady)
    volume = storage.tank_volume(balance.swing, use, values.bridge / DAY, values.usable)
    asked = round_up(volume, "volume", reader)
    density = water.density(practice.COOL_WATER)
    kept, raised = values.own or asked, values.height or 0.0
    return Case(
        values=values,
        reader=reader,
        use=use,
        pumped=pumped,
        supply=supply,
        shares=shares,
        steady=steady,
        balance=balance,
        short=balance.surplus < -1e-9 * use,
        volume=volume,
        asked=asked,
        kept=kept,
        density=density,
        raised=raised,
        gravity=storage.gravity_pressure(raised, values.lost, density),
        raised_static=storage.gravity_pressure(raised, 0.0, density),
        height=storage.height_for_pressure(values.wanted, values.lost, density),
        bridged=(kept * values.usable - balance.swing) / use * DAY,
    )


def _source(values: Values, pumped: float) -> tuple[float, tuple[float, ...]]:
    """Water of a day, m3, and its 24 shares: the pump's, or a slow well's where one is named."""
    if values.well is None or pumped <= 0:
        return pumped, storage.supply_pattern(values.hours)
    given = (values.well, values.gives, values.hours, values.stored)
    supply = well.daily(*given)
    if supply <= 0:
        return 0.0, storage.supply_pattern(values.hours)
    return supply, tuple(volume / supply for volume in well.hourly(*given))
