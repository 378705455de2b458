"""The numbers of a pressure tank, worked out once for findings, figures and working."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc import practice, storage, water
from calc.errors import InputError
from calc.sheets.parts.small_draw import SmallDraw, restart_pressure, usual_charge
from calc.sheets.parts.tank_sizes import round_up
from calc.units import HOUR, LITRE

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
    switch; ``cup``: the tank that gives a cup of water; ``small``: the smallest steady draw, of
    speed control alone; ``most``: the most the pump makes at the switch, None where its head is not
    known.
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
    small: SmallDraw | None = None
    most: float | None = None

    def drawdown(self, tank_m3: float) -> float:
        """Water another tank gives between the same pressures, m3."""
        return storage.drawdown(tank_m3, self.charge, self.cut_in, self.high, self.air)


def case(values: Values, reader: Reader) -> Case:
    """The ``Case`` of a reader's values.  Raises InputError for pressures in the wrong order."""
    speed = values.control == "speed"
    high = values.set if speed else values.cutout
    cut_in = restart_pressure(high) if speed else values.cutin
    usual = usual_charge(cut_in)
    charge = usual if values.precharge is None else values.precharge
    _check(cut_in, charge, usual, high, reader)
    pressures = (charge, cut_in, high, water.air_pressure(values.altitude))
    gives = storage.drawdown(values.tank, *pressures) if values.tank else 0.0
    small = _small(values, charge, pressures[-1]) if speed else None
    target, worst, leaks = _starts(values, small, gives)
    need = storage.tank_for_drawdown(target, *pressures)
    return Case(
        speed=speed,
        charge=charge,
        usual_charge=usual,
        cut_in=cut_in,
        high=high,
        air=pressures[-1],
        gives=gives,
        target=target,
        need=need,
        asked=round_up(need, "volume", reader),
        worst=worst,
        leaks=leaks,
        cup=storage.tank_for_drawdown(CUP, *pressures),
        small=small,
        most=_most(values),
    )


def _most(values: Values) -> float | None:
    """What the pump makes at the switch with no flow, Pa: its head less the lift, never below 0."""
    if values.control == "speed" or values.shutoff is None:
        return None
    head = max(0.0, values.shutoff - values.lift)
    return water.pressure_from_head(head, water.density(practice.COOL_WATER))


def _small(values: Values, charge: float, air: float) -> SmallDraw | None:
    """The smallest steady draw as every sheet judges it; its pump's curve is not known here."""
    if not values.smallest:
        return None
    no_lift, weight = 0.0, 1.0  # asked for with a curve only
    return SmallDraw(
        pump=None,
        draw=values.smallest,
        least=values.least,
        tank=values.tank,
        set_pa=values.set,
        lift_m=no_lift,
        weight=weight,
        air_pa=air,
        refills=values.refill,
        charge=charge,
        allowed=values.starts * HOUR,
    )


def _check(starts_at: float, charge: float, usual: float, high: float, reader: Reader) -> None:
    cut_in = reader.show(starts_at, "pressure")
    if high <= starts_at:
        raise InputError(
            f"Cut-out pressure must be above {cut_in}, where the pump starts", name="cutout"
        )
    if charge > starts_at:
        usual_text = reader.show(usual, "pressure")
        raise InputError(
            f"Pre-charge must be {cut_in} or less, where the pump starts. Usual: {usual_text}",
            name="precharge",
        )


def _starts(values: Values, small: SmallDraw | None, gives: float) -> tuple[float, float, float]:
    """(drawdown that is enough, starts at worst, starts from leaks)."""
    if values.control != "speed":
        worst = storage.most_starts_rate(gives, values.pump) if gives else 0.0
        return storage.drawdown_for_starts(values.pump, values.starts), worst, 0.0
    target = values.leak / values.starts
    if small is not None and small.below:
        target = max(target, small.drawdown_needed)
    leaks = storage.leak_starts_rate(gives, values.leak) if gives else 0.0
    return target, 0.0, leaks
