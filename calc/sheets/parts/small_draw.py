"""A steady draw below a pump's least flow: how often a speed control then starts the pump.

Below its least flow the control stops the pump and starts it again; only a pressure tank at it
spaces the starts.  The same rule and the same words in every sheet that asks.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from calc import practice, storage
from calc.network.state import SEEPING
from calc.page.findings import Finding
from calc.pump.curve import DisplacementPump
from calc.pump.laws import least_flow, restart_head
from calc.sheets.parts.line_fixes import round_down
from calc.sheets.parts.tank_sizes import round_up
from calc.units import HOUR

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping

    from calc.network.state import Solution
    from calc.pump.curve import Pump
    from calc.units import Reader

SLACK = 1e-9  # share: a limit typed in another unit is still met
MOST_SET = 20e5  # Pa, to which a tank at the pump is worked out
TANK_SIZES = (1e-4, 10.0)  # m3, least and most that a form takes; our choice
KEY = "least-flow"


@dataclass(frozen=True, kw_only=True)
class SmallDraw:
    """What a lasting draw asks of a pump whose speed control holds a pressure, SI.

    pump: at full speed; draw: m3/s; least: m3/s, from the pump's data sheet (None: by practice);
    tank: m3, the whole pressure tank (None: not known); set_pa: Pa, held; lift_m: from the water
    up to the pump; weight: Pa per metre of water; air_pa: Pa absolute; pumps: equal ones;
    sensed_pa: what the pressure at the pump is above that at its control, Pa.

    Where the pump's curve is not known (pump: None), refills: what it gives while it fills the
    tank, m3/s (None: not known, taken as filled at once, the careful side).  charge: the tank's
    pre-charge, Pa (None: the usual one); allowed: starts an hour.
    """

    pump: Pump | None
    draw: float
    least: float | None
    tank: float | None
    set_pa: float
    lift_m: float
    weight: float
    air_pa: float
    pumps: int = 1
    sensed_pa: float = 0.0
    refills: float | None = None
    charge: float | None = None
    allowed: float = practice.STARTS_AN_HOUR

    @property
    def reads_pa(self) -> float:
        """The set pressure as the control reads it, where its tank is too, Pa."""
        return self.set_pa - self.sensed_pa

    @property
    def least_known(self) -> float | None:
        """Least flow to leave the pump running at, m3/s; None where nothing tells it."""
        return self.least if self.pump is None else least_of(self.pump, self.least)

    @property
    def below(self) -> bool:
        """Whether the pump cannot run on at this draw, so that it starts again and again."""
        return self._under and not self.outdrawn

    @property
    def _under(self) -> bool:
        least = self.least_known
        return least is not None and self.draw < least * (1 - SLACK)

    @property
    def outdrawn(self) -> bool:
        """Whether as much is drawn as the pump gives, below its least flow as that was told: it
        never stops, so that it does not start again."""
        refill = self.refill
        return self._under and refill is not None and self.draw >= refill * (1 - SLACK)

    @property
    def restart_pa(self) -> float:
        """Pressure at the control at which it starts the pump again, Pa."""
        return restart_pressure(self.reads_pa)

    @property
    def refill(self) -> float | None:
        """The most the pumps give while they fill the tank, m3/s: at full speed and restart.

        None where neither the curve nor that flow is known.
        """
        if self.pump is None:
            return self.refills
        head = (self.restart_pa + self.sensed_pa) / self.weight + self.lift_m
        if self.set_pa / self.weight + self.lift_m >= self.pump.shut_off_head:
            return self.pumps * self.pump.largest_flow
        if head <= self.pump.least_head:
            return self.pumps * self.pump.largest_flow
        return self.pumps * self.pump.flow_at(min(head, self.pump.shut_off_head))

    @property
    def starts(self) -> float | None:
        """Starts an hour at this draw; None without a tank, outside its pressures, or where it is
        empty before the pump starts."""
        if self.tank is None or not 0 < self.reads_pa <= MOST_SET:
            return None
        if self.overcharged:
            return None
        given = usual_charge(self.restart_pa) if self.charge is None else self.charge
        charge = min(given, self.restart_pa)
        gives = storage.drawdown(self.tank, charge, self.restart_pa, self.reads_pa, self.air_pa)
        return HOUR * self._rate(gives)

    @property
    def overcharged(self) -> bool:
        """Whether the tank's pre-charge is above the pressure at which the pump starts."""
        return self.charge is not None and self.charge > self.restart_pa * (1 + SLACK)

    def _rate(self, gives: float) -> float:
        """Starts a second with a tank that gives so much, m3."""
        refill = self.refill
        if refill is None:  # filled at once: the cycle is the tank's emptying alone
            return self.draw / gives
        return storage.starts_rate(gives, max(refill, self.draw), self.draw)

    @property
    def drawdown_needed(self) -> float:
        """What the tank must give between restart and the set pressure, m3."""
        return self._rate(1.0) * HOUR / self.allowed  # starts go with 1 / drawdown

    @property
    def tank_needed(self) -> float | None:
        """A tank that keeps the starts within those allowed, m3; None where none does."""
        of_one = replace(self, tank=1.0).starts  # starts go with 1 / volume
        if of_one is None:
            return None
        least, most = TANK_SIZES
        needed = max(of_one / self.allowed, least)
        return needed if needed <= most else None

    @property
    def judged(self) -> tuple[str, str]:
        """(level, rank) of its finding; ("", "") where the pump can run at this draw."""
        least = self.least_known
        if least is None and self.pump is None:
            return "care", "unchecked"
        if least is None:
            # the best flow is at most the table's last: from a tenth of that on nothing is amiss
            small = self.draw < least_flow(self.pump.largest_flow)
            runs_low = isinstance(self.pump, DisplacementPump)
            return ("care", "unchecked") if small and not runs_low else ("", "")
        if not self.below:
            return ("note", "weak") if self.outdrawn else ("", "")
        if self.overcharged:
            return "care", "weak"
        rate = self.starts
        if rate is None:
            return "care", "unchecked" if self.tank_needed is not None else "weak"
        over = rate > self.allowed * (1 + SLACK)
        return "care" if over else "note", "weak"


def restart_pressure(set_pa: float) -> float:
    """Pressure at which a speed control that rests starts its pump again, Pa.

    set_pa: Pa, held.  Raises nothing.  Source: as ``restart_head``.
    """
    return restart_head(set_pa)  # a share: the same of a pressure as of a head


def usual_charge(restart_pa: float) -> float:
    """Pre-charge of a tank that empties down to where the pump starts (Pa), Pa."""
    return max(0.0, restart_pa - practice.PRECHARGE_GAP)


def smallest_lasting(solution: Solution, kinds: Mapping[str, str]) -> tuple[float, str] | None:
    """(m3/s, name) of the smallest draw that may last for hours; None where none is open.

    solution: the supply solved; kinds: outlet's name -> its key in ``practice.OUTLETS``.  One
    outlet of each row: all the others may be closed.
    """
    draws = [
        (solution.draws[outlet.name] / outlet.count, outlet.name)
        for outlet in solution.network.outlets
        if outlet.open and practice.OUTLET_BY_KEY[kinds[outlet.name]].lasting
    ]
    return min((one for one in draws if one[0] > SEEPING), key=lambda one: one[0], default=None)


def least_of(pump: Pump, given: float | None = None) -> float | None:
    """Least flow of a pump, m3/s: as given, else by practice; None where its table tells no best
    flow, and of a displacement pump."""
    if given is not None:
        return given
    best = None if isinstance(pump, DisplacementPump) else pump.best
    return None if best is None else least_flow(best.flow)


def tank_words(small: SmallDraw, reader: Reader) -> str:
    """The tank that is enough, rounded up; "" where none is."""
    needed = small.tank_needed
    return "" if needed is None else reader.show(round_up(needed, "volume", reader), "volume")


def remedies(small: SmallDraw, reader: Reader) -> Iterator[tuple[str, float | None, float | None]]:
    """(what to do, the pre-charge in Pa, the tank in m3) where a tank can space the starts."""
    if not small.below:
        return
    usual = round_down(usual_charge(small.restart_pa), "pressure", reader)
    recharge = small.overcharged or (small.charge is not None and small.charge < usual)
    if recharge and small.tank is not None:
        yield charge_words(usual, reader), usual, small.tank
    if small.overcharged:
        small = replace(small, charge=usual)
    needed = small.tank_needed
    if needed is None:
        return
    tank = round_up(needed, "volume", reader)
    if small.tank is not None and small.tank >= tank:
        return
    text = tank_fix(tank, reader)
    if small.charge == usual:
        text += f", with a pre-charge of {reader.show(usual, 'pressure')}"
    yield text, small.charge, tank


def charge_words(charge_pa: float, reader: Reader) -> str:
    """That the tank's pre-charge is to be set. charge_pa: Pa."""
    return f"Set the pre-charge of the pressure tank to {reader.show(charge_pa, 'pressure')}"


def tank_fix(tank_m3: float, reader: Reader) -> str:
    """That a pressure tank is to be fitted. tank_m3: m3."""
    return f"Fit a pressure tank of {reader.show(tank_m3, 'volume')} or more at the pump"


def runs_low(least_m3s: float, reader: Reader) -> str:
    """A caution where no small draw is told: what one below the pump's least flow (m3/s) does."""
    return (
        f"Below about {reader.show(least_m3s, 'flow')} the pump cannot run on: a smaller steady "
        "draw, such as one drip zone, starts and stops it again and again. Enter your smallest to "
        "see how often."
    )


def cycles(worst: SmallDraw, reader: Reader) -> str:
    """The same for a supply whose pump may be assumed: no figure of the pump stands in it.

    worst: the draw below the pump's least flow that starts it most often.
    """
    begins = "Below its least flow the pump cannot run on: a small steady draw, such as one drip"
    if worst.starts is None:
        return f"{begins} zone, starts and stops it again and again."
    most = reader.show(worst.allowed, "number", 2)
    return f"{begins} zone, starts it more than {most} times an hour with this pressure tank."


def small_draw_finding(
    small: SmallDraw, draws: str, reader: Reader, at: str = ""
) -> Finding | None:
    """What is found of a draw; None where the pump can run at it.

    draws: how the sentence begins, up to the figure ("The smallest draw is"); at: outlet's name.
    """
    level, rank = small.judged
    if not level:
        return None
    return Finding(level, KEY, _sentence(small, draws, reader), rank, at)


def _sentence(small: SmallDraw, draws: str, reader: Reader) -> str:
    least, rate = small.least_known, small.starts
    if least is None:
        passes = reader.show(small.draw, "flow")
        return f"The pump's least flow is not known, so it is not checked: {passes} or less passes."
    if small.outdrawn:
        draw, gives = reader.apart(small.draw, small.refill, "flow")
        return (
            f"{draws} {draw} and the pump gives {gives}: it never stops. Check its least flow, "
            f"{reader.show(least, 'flow')}."
        )
    draw, lowest = reader.apart(small.draw, least, "flow")
    below = f"{draws} {draw}, below the pump's least flow, {lowest}"
    if small.overcharged:
        charge, restart = reader.apart(small.charge, small.restart_pa, "pressure")
        return (
            f"{below}; the tank's pre-charge, {charge}, is above {restart}, where the pump starts."
        )
    if rate is not None:
        number, most = reader.apart(rate, small.allowed, "number", 2)
        return f"{below}: it starts up to {number} times an hour; {most} are allowed."
    passes = tank_words(small, reader)
    if passes:
        return f"{below}; not checked: a {passes} pressure tank would pass."
    return f"{below}: it starts again and again."
