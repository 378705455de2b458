"""The numbers of a pressure tank, worked out once for verdict, figures and working."""

from dataclasses import dataclass

from calc import storage
from calc.sheets.parts.tank_sizes import round_up
from calc.units import LITRE, PSI

GAP = 2 * PSI  # Pa, air charge below the starting pressure; common practice, no source
CUP = 0.25 * LITRE  # m3, a cup of water


@dataclass(frozen=True)
class Case:
    """Pressures in Pa, volumes in m3, rates in 1/s.

    ``gives``: water between starts; ``target``: water between starts that would do; ``need``:
    the tank for it; ``asked``: the same rounded up as it is said; ``worst``: starts at worst,
    None with speed control; ``leaks``: starts from leaks, None with a switch; ``cup``: the
    tank that gives a cup of water.
    """

    charge: float
    high: float
    air: float
    gives: float
    target: float
    need: float
    asked: float
    worst: float | None
    leaks: float | None
    cup: float

    def drawdown(self, tank_m3, cut_in_pa):
        """Water another tank would give between the same pressures, m3."""
        return storage.drawdown(tank_m3, self.charge, cut_in_pa, self.high, self.air)


def case(values, charge, high, air, reader):
    """The ``Case`` of a reader's values."""
    pressures = (charge, values.cutin, high, air)
    gives = storage.drawdown(values.tank, *pressures)
    if values.control == "speed":
        target, worst = values.leak / values.starts, None
        leaks = storage.leak_starts_rate(gives, values.leak)
    else:
        target = storage.drawdown_for_starts(values.pump, values.starts)
        worst, leaks = storage.most_starts_rate(gives, values.pump), None
    need = storage.tank_for_drawdown(target, *pressures)
    return Case(
        charge=charge,
        high=high,
        air=air,
        gives=gives,
        target=target,
        need=need,
        asked=round_up(need, "volume", reader),
        worst=worst,
        leaks=leaks,
        cup=storage.tank_for_drawdown(CUP, *pressures),
    )
