"""One pump on one line: what both do at a flow. The numbers behind the pump_match sheet."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from functools import cached_property
from typing import TYPE_CHECKING

from calc import practice, suction
from calc.errors import InputError, RangeError
from calc.pipe.line import Line
from calc.pump import sets
from calc.pump.curve import DisplacementPump, Pump
from calc.pump.laws import GRADES, Grade
from calc.sheets.parts.guard import BOTH, relieved
from calc.sheets.parts.line_judge import Need
from calc.sheets.parts.line_rows import line_of
from calc.sheets.parts.pump_choice import chosen_pump
from calc.sheets.parts.small_draw import SmallDraw, least_of, restart_pressure
from calc.units import HOUR

if TYPE_CHECKING:
    from calc.page.form import Values

SAFE = 0.005  # share: half of the last of three figures, so that a figure as printed is enough
SLACK = 1e-9  # share, or m: a limit typed in another unit is still met
MOST_SET = 20e5  # Pa, the highest set pressure that the form takes
FURTHEST_UP = 4500.0  # m above sea level, to which the sheet is meant


@dataclass(frozen=True)
class Intake:
    """The suction side, SI. loss_m: head lost there at ``flow``; altitude: above the sea."""

    lift: float
    loss_m: float
    flow: float
    temperature: float
    altitude: float

    @cached_property
    def place(self) -> suction.Surroundings:
        """Air and water where the pump is."""
        return suction.place(self.altitude, self.temperature)

    @property
    def usual_lift(self) -> float:
        """The lift to keep to at this altitude by practice, m."""
        return practice.suction_lift(self.place.air_pa)

    def lost(self, flow: float) -> float:
        """Head lost on the suction side, m: with the square of the flow."""
        return self.loss_m * (flow / self.flow) ** 2

    def available(self, flow: float) -> float:
        """NPSH available, m."""
        return suction.npsh_available(self.place, self.lift, self.lost(flow))


@dataclass(frozen=True)
class State:
    """The pump at one flow: head, m, and speed; pressures at its outlet and at the outlet, Pa.

    power: W, None: not known; held: the set pressure is held; otherwise the pump is at full speed
    and falls off its curve; stands: the water runs by itself.
    """

    flow: float
    head: float
    speed: float
    start: float
    left: float
    power: float | None
    held: bool
    stands: bool = False


@dataclass(frozen=True)
class Draw:
    """The smallest steady draw, the least flow of the pump (m3/s), the small tank (m3) at the
    control and its pre-charge (Pa); None: not known.  allowed: starts an hour."""

    draw: float | None = None
    least: float | None = None
    tank: float | None = None
    charge: float | None = None
    allowed: float = practice.STARTS_AN_HOUR


@dataclass(frozen=True)
class Case:
    """A pump, or equal ones side by side, a line and what is asked of them.

    single: one pump, of which there are ``pumps``; line: from the pump's outlet (its start
    pressure does not count); given_set: Pa, None: the pressure advised; guard: of a displacement
    pump, a key of ``guard.GUARDS``; counted: the line was given section by section; motor,
    controller: efficiencies; sensed_m: height above the pump at which its control reads the
    pressure, m, friction up to there left out; relief: a centrifugal pump's line has a relief
    valve.
    """

    single: Pump
    line: Line
    need: Need
    intake: Intake
    given_set: float | None = None
    grade: Grade | None = None
    guard: str = BOTH
    motor: float = 0.75
    controller: float = 0.95
    steady: Draw = Draw()
    counted: bool = False
    sensed_m: float = 0.0
    relief: bool = False
    pumps: int = 1

    @cached_property
    def pump(self) -> Pump:
        """All of them as one."""
        return self.single.beside(self.pumps)

    def as_set(self, pressure_pa: float) -> float:
        """A pressure at the pump as its control reads it, Pa."""
        return pressure_pa - self.weight * self.sensed_m

    @property
    def band(self) -> Grade | None:
        """The grade of the pump's tolerance: ISO 9906 is a standard for rotodynamic pumps."""
        return None if self.displaces else self.grade

    @property
    def flow(self) -> float:
        return self.need.flow_m3s

    @property
    def weight(self) -> float:
        """Pa per metre of water."""
        return self.line.weight

    @property
    def density(self) -> float:
        return self.intake.place.density

    @property
    def displaces(self) -> bool:
        return isinstance(self.pump, DisplacementPump)

    @property
    def relieved(self) -> bool:
        """Whether a relief valve guards the pipe, should the control fail."""
        return relieved(self.pump, self.guard, self.relief)

    # What the system needs ------------------------------------------------------------------

    def system(self, flow: float, pressure: float | None = None) -> float:
        """Head the pump must give to leave a pressure (Pa, None: what works) at the outlet, m.

        Infinite where a pressure-reducing valve on the way holds less.
        """
        wanted = self.need.works_pa if pressure is None else pressure
        try:
            start = self.line.start_for(wanted, flow)
        except InputError:
            return math.inf
        return start / self.weight + self.intake.lift + self.intake.lost(flow)

    @cached_property
    def needed(self) -> float:
        """``system`` at the full flow, m."""
        return self.system(self.flow)

    @property
    def covers(self) -> bool:
        """Whether the pump's table covers the full flow."""
        return self.flow <= self.pump.largest_flow * (1 + SLACK)

    @cached_property
    def available(self) -> float | None:
        """Head at full speed and full flow, m; None past the end of the pump's table."""
        return self.pump.head_at(min(self.flow, self.pump.largest_flow)) if self.covers else None

    @cached_property
    def duty(self) -> sets.Duty | None:
        """Where the curve at full speed meets the system; None where it never does."""
        if self.pump.shut_off_head <= self.system(0.0):
            return None
        return sets.duty(self.pump, self.system)

    # The set pressure -----------------------------------------------------------------------

    @cached_property
    def least_set(self) -> float | None:
        """Least pressure at the pump that is enough at the outlet and leaves every crest above
        zero, Pa; None where a pressure-reducing valve on the way holds less."""
        line, need = self.line, self.need
        try:
            start = line.start_for(max(need.sure_pa, need.works_pa + 1.0), need.flow_m3s)
        except InputError:
            return None
        crest = line.start_pa - min(line.crest(0.0), line.crest(need.flow_m3s))
        return max(start, crest, 0.0)

    @property
    def advised(self) -> float:
        """Pressure to set at the pump, a little over the least, Pa."""
        if self.least_set is None:  # a valve on the way is at fault, whatever the start has
            rise = self.line.rise_m + self.line.loss(self.flow)
            return max(0.0, self.need.sure_pa + self.weight * rise)
        return self.least_set * (1 + SAFE)

    @property
    def set_pressure(self) -> float:
        return self.advised if self.given_set is None else self.given_set

    def held_head(self, flow: float) -> float:
        """Head the pump gives while its set pressure is held at its outlet, m."""
        return self.set_pressure / self.weight + self.intake.lift + self.intake.lost(flow)

    @property
    def shut_off_pa(self) -> float:
        """Pressure at the pump's outlet with everything closed and the control failed, Pa."""
        return self.weight * (self.pump.shut_off_head - self.intake.lift)

    @property
    def holds(self) -> bool:
        """Whether the pump reaches its set pressure with everything closed."""
        return self.held_head(0.0) <= self.pump.shut_off_head * (1 + SLACK)

    @property
    def runs_on(self) -> bool:
        """Whether a set pressure that was given is never reached, so that nothing stops the pump.

        One worked out is only ever advised where the pump reaches it.
        """
        return self.given_set is not None and not self.holds

    # At a flow ------------------------------------------------------------------------------

    def state(self, flow: float) -> State | None:
        """``State`` at a flow under speed control; None past the end of the pump's table."""
        if flow > self.pump.largest_flow * (1 + SLACK):
            return None
        most = self.pump.head_at(min(flow, self.pump.largest_flow))
        wanted = self.held_head(flow)
        stands, held = wanted <= 0, wanted <= most
        head = 0.0 if stands else min(wanted, most)
        speed = 0.0 if stands else self.pump.slowed_to(flow, wanted) if held else 1.0
        start = self.weight * (head - self.intake.lift - self.intake.lost(flow))
        if held and not stands:
            start = self.set_pressure  # the same number that another sheet is given
        left = self.line.points(flow, start)[-1].pressure_pa
        power = 0.0 if stands else self.power(flow, speed)
        return State(flow, head, speed, start, left, power, held, stands)

    @cached_property
    def running(self) -> State | None:
        """``State`` at the full flow."""
        return self.state(self.flow)

    def line_at(self, state: State) -> Line:
        """The line from the pump's outlet as it then is, and as it is with everything closed."""
        highest = self.state(0.0).start
        return replace(self.line, start_pa=state.start, highest_pa=highest)

    @property
    def failed(self) -> Line:
        """The line under the pump's shut-off head, its control failed."""
        return replace(self.line, start_pa=self.shut_off_pa, highest_pa=None)

    def power(self, flow: float, speed: float) -> float | None:
        """Power drawn, W; None where the table tells neither power nor efficiency."""
        try:
            return self.pump.drawn_at(flow, speed, self.density, self.motor, self.controller)
        except RangeError:
            return None

    def npsh_required(self, flow: float, speed: float) -> float | None:
        """m; None where the table does not tell."""
        try:
            return self.pump.npsh_required_at(min(flow, self.pump.largest_flow), speed)
        except RangeError:
            return None

    def best_share(self, flow: float, speed: float) -> float | None:
        """The flow as a share of the best flow at that speed; None where it is not known."""
        best = self.pump.best
        if best is None or speed == 0 or self.displaces:
            return None
        return flow / (speed * best.flow)

    # Small draws ----------------------------------------------------------------------------

    @property
    def least(self) -> float | None:
        """Least flow to leave the pump running at, m3/s: as given, else by practice."""
        return least_of(self.single, self.steady.least)

    @property
    def restart(self) -> float:
        """Pressure at the control at which it starts the pump again, Pa."""
        return restart_pressure(max(self.as_set(self.set_pressure), 0.0))

    @property
    def small(self) -> SmallDraw | None:
        """The smallest steady draw from the pump; None where none is asked about."""
        if self.steady.draw is None:
            return None
        return SmallDraw(
            pump=self.single,
            draw=self.steady.draw,
            least=self.steady.least,
            tank=self.steady.tank,
            set_pa=self.set_pressure,
            lift_m=self.intake.lift,
            weight=self.weight,
            air_pa=self.intake.place.air_pa,
            pumps=self.pumps,
            sensed_pa=self.weight * self.sensed_m,
            charge=self.steady.charge,
            allowed=self.steady.allowed,
        )


def case_of(values: Values) -> Case:
    """The ``Case`` of a form's values."""
    line, sensed = line_of(values, 0.0), values.sensed or 0.0
    given = None if values.set is None else values.set + line.weight * sensed
    return Case(
        chosen_pump(values),
        line,
        Need(values.flow, values.wanted, values.wanted),
        Intake(values.lift, values.suction, values.flow, values.water, values.altitude),
        given_set=given,
        grade=GRADES.get(values.grade),
        guard=values.guard or BOTH,
        motor=values.motor,
        controller=values.controller,
        steady=Draw(values.draw, values.least, values.tank, values.precharge, values.starts * HOUR),
        counted=bool(values.line),
        sensed_m=sensed,
        relief=values.relief == "yes",
        pumps=values.pumps,
    )
