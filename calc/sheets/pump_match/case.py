"""One pump on one pipe: what both do at a flow. The numbers behind the pump_match sheet."""

from dataclasses import dataclass
from functools import cached_property

from calc import suction, water
from calc.errors import InputError, RangeError
from calc.pipe import friction, pipes
from calc.pump.curve import Pump
from calc.pump.laws import electrical_power
from calc.pump.sets import duty
from calc.solve import root


@dataclass(frozen=True)
class Site:
    """What the water has to do, in SI; ``suction_loss`` is at the full flow."""

    flow: float
    climb: float
    length: float
    wanted: float
    lift: float
    suction_loss: float
    temperature: float
    altitude: float
    motor: float
    controller: float

    @property
    def density(self):
        return self.place.density

    @cached_property
    def weight(self):
        """Pa per metre of water."""
        return self.place.weight

    @cached_property
    def viscosity(self):
        return water.kinematic_viscosity(self.temperature)

    def suction_at(self, flow):
        """Head lost on the suction side, m: with the square of the flow."""
        return self.suction_loss * (flow / self.flow) ** 2

    @cached_property
    def place(self):
        """Air and water where the pump stands (``suction.Place``)."""
        return suction.place(self.altitude, self.temperature)

    @cached_property
    def npsh_available(self):
        """At the full flow, m."""
        return suction.npsh_available(self.place, self.lift, self.suction_loss)


@dataclass(frozen=True)
class State:
    """The pump at one flow: head and speed, pressures at its outlet and at the tap, power.

    ``power`` None: not known.
    ``held``: the set pressure is held; otherwise the pump is at full speed and
    falls off its curve.
    """

    flow: float
    head: float
    speed: float
    outlet: float
    tap: float
    power: float | None
    held: bool


@dataclass(frozen=True)
class Case:
    """A pump, a pipe and a site; ``set_pressure`` None: the pressure advised."""

    pump: Pump
    pipe: pipes.Pipe
    site: Site
    given_set: float | None = None

    def velocity(self, flow):
        return friction.velocity(flow, self.pipe.inside_m)

    def reynolds(self, flow):
        return friction.reynolds(self.velocity(flow), self.pipe.inside_m, self.site.viscosity)

    def factor(self, flow):
        """Friction factor at a flow above zero."""
        return friction.friction_factor(
            self.reynolds(flow), self.pipe.roughness_m / self.pipe.inside_m
        )

    def loss(self, flow):
        """Head lost in the pipe, m."""
        if flow <= 0:
            return 0.0
        pipe, site = self.pipe, self.site
        return friction.pipe_loss(
            flow, pipe.inside_m, site.length, pipe.roughness_m, site.viscosity
        )

    def static(self):
        """Head that stands even with no flow: lift, climb and the pressure wanted, m."""
        return self.site.lift + self.site.climb + self.site.wanted / self.site.weight

    def system(self, flow):
        """Head the pump must give to hold the wanted pressure at the tap, m."""
        return self.static() + self.loss(flow) + self.site.suction_at(flow)

    @cached_property
    def needed(self):
        """``system`` at the full flow, m."""
        return self.system(self.site.flow)

    @cached_property
    def available(self):
        """Head at full speed and full flow, m; None past the end of the pump's table."""
        if self.site.flow > self.pump.largest_flow:
            return None
        return self.pump.head_at(self.site.flow)

    @property
    def enough(self):
        return self.available is not None and self.available >= self.needed

    @cached_property
    def advised(self):
        """Pressure to set at the pump: the tap's, the climb, the friction at full flow, Pa."""
        site = self.site
        return site.wanted + site.weight * (site.climb + self.loss(site.flow))

    @property
    def set_pressure(self):
        return self.advised if self.given_set is None else self.given_set

    def held_head(self, flow):
        """Head the pump gives while the set pressure stands at its outlet, m."""
        return self.set_pressure / self.site.weight + self.site.lift + self.site.suction_at(flow)

    @cached_property
    def duty(self):
        """Where the curve at full speed meets the system (``Duty``); None where it never does."""
        try:
            return duty(self.pump, self.system)
        except RangeError:
            raise
        except InputError:
            return None

    def state(self, flow):
        """``State`` at a flow under speed control; None past the end of the pump's table."""
        if flow > self.pump.largest_flow:
            return None
        most, wanted = self.pump.head_at(flow), self.held_head(flow)
        held = wanted <= most
        if wanted <= 0:  # the water runs by itself; the pump stands
            head, speed = 0.0, 0.0
        else:
            head, speed = (wanted, self._speed(flow, wanted)) if held else (most, 1.0)
        site = self.site
        outlet = site.weight * (head - site.lift - site.suction_at(flow))
        tap = outlet - site.weight * (site.climb + self.loss(flow))
        return State(flow, head, speed, outlet, tap, self.power(flow, speed), held)

    def _speed(self, flow, head):
        """Speed for a head above zero."""
        try:
            return self.pump.speed_for(flow, head)
        except RangeError:
            # A head so low that the slowed table ends before this flow: the
            # curve is carried on in a straight line, as a network solver would.
            slowest = flow / self.pump.largest_flow
            return root(lambda s: self.pump.head_and_slope(flow, s)[0] - head, 1e-6, slowest, 1e-9)

    def power(self, flow, speed):
        """Power drawn, W; None where the table tells neither power nor efficiency."""
        if speed == 0:
            return 0.0
        try:
            drawn = self.pump.power_at(flow, speed, self.site.density)
            if drawn is not None:
                return drawn
            shaft = self.pump.shaft_power_at(flow, speed, self.site.density)
        except RangeError:
            return None
        return (
            None
            if shaft is None
            else electrical_power(shaft, self.site.motor, self.site.controller)
        )

    def npsh_required(self, flow, speed):
        """m; None where the table does not tell, or the pump stands still."""
        if speed == 0:
            return None
        try:
            return self.pump.npsh_required_at(flow, speed)
        except RangeError:
            return None

    def best_share(self, flow, speed):
        """The flow as a share of the best flow at that speed; None where it is not known."""
        best = self.pump.best
        return None if best is None or speed == 0 else flow / (speed * best.flow)
