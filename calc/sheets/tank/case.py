"""The numbers of a storage tank, worked out once for verdict, figures and working."""

from dataclasses import dataclass

from calc import storage, water, well
from calc.sheets.parts.tank_sizes import round_up
from calc.units import DAY

COOL = 288.15  # K; between 5 and 30 degC the density differs by less than 0.5 %


@dataclass(frozen=True)
class Case:
    """Volumes in m3 (a day's for use and supply), pressures in Pa, heights in m.

    ``pumped``: what the pump alone could bring; ``short``: less comes in than is used;
    ``volume``: tank needed; ``asked``: the same rounded up as it is said; ``kept``: the tank in
    mind, else the one asked for; ``raised``: its water above the tap, 0 where a pump draws from
    it; ``gravity``: the pressure that gives; ``height``: what the pressure wanted takes.
    """

    use: float
    pumped: float
    supply: float
    shares: tuple
    steady: tuple
    balance: storage.Balance
    short: bool
    volume: float
    asked: float
    kept: float
    density: float
    raised: float
    gravity: float
    height: float


def case(values, reader):
    """The ``Case`` of a reader's values."""
    use, pumped = values.use * DAY, values.gives * values.hours * 3600
    supply, steady = _source(values, pumped)
    shares = storage.PATTERNS[values.pattern]
    balance = storage.daily_balance(use, shares, supply, steady)
    volume = storage.tank_volume(balance.swing, use, values.bridge / DAY, values.usable)
    asked = round_up(volume, "volume", reader)
    density = water.density(COOL)
    return Case(
        use=use,
        pumped=pumped,
        supply=supply,
        shares=shares,
        steady=steady,
        balance=balance,
        short=balance.surplus < -1e-9 * use,
        volume=volume,
        asked=asked,
        kept=values.own if values.own else asked,
        density=density,
        raised=values.height or 0.0,
        gravity=storage.gravity_pressure(values.height or 0.0, values.lost, density),
        height=storage.height_for_pressure(values.wanted, values.lost, density),
    )


def _source(values, pumped):
    """Water of a day, m3, and its 24 shares: the pump's, or a slow well's where one is named."""
    if values.well is None or pumped <= 0:
        return pumped, storage.supply_pattern(values.hours)
    given = (values.well, values.gives, values.hours, values.stored)
    supply = well.daily(*given)
    if supply <= 0:
        return 0.0, storage.supply_pattern(values.hours)
    return supply, tuple(volume / supply for volume in well.hourly(*given))
