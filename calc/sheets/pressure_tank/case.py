"""The numbers of a pressure tank, worked out once for findings, figures and working."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc import practice, storage, water
from calc.errors import InputError
from calc.sheets.parts.tank_sizes import round_up
from calc.units import LITRE

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.units import Reader

CUP = 0.25 * LITRE  # m3, a cup of water; our choice


@dataclass(frozen=True)
class Case:
    """Pressures in Pa, volumes in m3, rates in 1/s.

    ``speed``: the pump has speed control; ``gives``: drawdown, 0 without a tank; ``target``:
    drawdown that is enough; ``need``: the tank for it; ``asked``: the same rounded up as it is
    said; ``worst``: starts at worst, 0 with speed control; ``leaks``: starts from leaks, 0 with a
    switch; ``cup``: the tank that gives a cup of water.
    """

    speed: bool
    charge: float
    usual_charge: float
    cut_in: float
    high: float
    air: float
    gives: float
    target: float
    need: float
    asked: float
    worst: float
    leaks: float
    cup: float

    def drawdown(self, tank_m3: float) -> float:
        """Water another tank gives between the same pressures, m3."""
        return storage.drawdown(tank_m3, self.charge, self.cut_in, self.high, self.air)


def case(values: Values, reader: Reader) -> Case:
    """The ``Case`` of a reader's values.  Raises InputError for pressures in the wrong order."""
    speed = values.control == "speed"
    high = values.set if speed else values.cutout
    usual = max(values.cutin - practice.PRECHARGE_GAP, 0.0)
    charge = usual if values.precharge is None else values.precharge
    _check(values, charge, usual, high, reader)
    pressures = (charge, values.cutin, high, water.air_pressure(values.altitude))
    gives = storage.drawdown(values.tank, *pressures) if values.tank else 0.0
    target, worst, leaks = _starts(values, speed, gives)
    need = storage.tank_for_drawdown(target, *pressures)
    return Case(
        speed=speed,
        charge=charge,
        usual_charge=usual,
        cut_in=values.cutin,
        high=high,
        air=pressures[-1],
        gives=gives,
        target=target,
        need=need,
        asked=round_up(need, "volume", reader),
        worst=worst,
        leaks=leaks,
        cup=storage.tank_for_drawdown(CUP, *pressures),
    )


def _check(values: Values, charge: float, usual: float, high: float, reader: Reader) -> None:
    cut_in = reader.show(values.cutin, "pressure")
    if high <= values.cutin:
        key, label = (
            ("set", "Set pressure") if values.control == "speed" else ("cutout", "Cut-out pressure")
        )
        raise InputError(f"{label} must be above {cut_in}, where the pump starts", name=key)
    if charge > values.cutin:
        usual_text = reader.show(usual, "pressure")
        raise InputError(
            f"Pre-charge must be {cut_in} or less, where the pump starts. Usual: {usual_text}",
            name="precharge",
        )


def _starts(values: Values, speed: bool, gives: float) -> tuple[float, float, float]:
    """(drawdown that is enough, starts at worst, starts from leaks)."""
    if not speed:
        worst = storage.most_starts_rate(gives, values.pump) if gives else 0.0
        return storage.drawdown_for_starts(values.pump, values.starts), worst, 0.0
    target = values.leak / values.starts
    if values.least and values.smallest and values.smallest < values.least:
        once = storage.starts_rate(1.0, values.least, values.smallest)
        target = max(target, once / values.starts)
    leaks = storage.leak_starts_rate(gives, values.leak) if gives else 0.0
    return target, 0.0, leaks
