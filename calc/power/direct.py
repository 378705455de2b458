"""Pumping straight from the panels into a tank: no battery, the pump as fast as the sun allows."""

from __future__ import annotations

import math
from bisect import bisect_right
from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc import practice
from calc.errors import InputError, require
from calc.power.array import USUAL_LOSSES, Array, Losses, power, powers
from calc.power.motor import drawn_by
from calc.power.service import Day, Service, days_of, served_of, worst_fortnight
from calc.pump.sets import duty
from calc.units import HOUR

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

    from calc.power.year import Demand, Weather
    from calc.pump.curve import Pump

STEPS = 40  # speeds in the table; between two the flow is taken in a straight line
LEAST_SPEED = 0.05  # share of full speed, below which no table begins: as far as pumps' laws go
LEAST_FLOW = 1e-9  # m3/s, below which the pump turns without giving water


@dataclass(frozen=True)
class Table:
    """Power to flow: rising W, and the m3/s and share of full speed that belong to each.

    Below the first power the pump gives nothing: it is the threshold at which water starts.  Above
    the last it runs at full speed.
    """

    powers: tuple[float, ...]
    flows: tuple[float, ...]
    speeds: tuple[float, ...]

    @property
    def starts_w(self) -> float:
        """Power from which water comes, W."""
        return self.powers[0]

    def flow(self, power_w: float) -> float:
        """Flow at a power: straight lines between the table's rows.

        power_w: W, any.  Returns m3/s, 0 below the threshold.  Source: ``table``.
        """
        powers, flows = self.powers, self.flows
        place = bisect_right(powers, power_w)
        if place == 0:
            return 0.0
        if place == len(powers):
            return flows[-1]
        low, high = powers[place - 1], powers[place]
        share = (power_w - low) / (high - low)
        return flows[place - 1] + share * (flows[place] - flows[place - 1])


def system_curve(static_m: float, friction: float) -> Callable[[float], float]:
    """Head that a rising main takes, from two numbers.

    H(Q) = H_s + k Q**2
    static_m: H_s, m, from the water's surface up to where it flows into the tank, 0 to 1000;
    friction: k, s2/m5, a number, 0 to 1e12 (friction head over the square of the flow).
    Returns the function of flow (m3/s) to head (m).  Raises RangeError outside.
    Source: quadratic friction (fully rough flow).
    """
    require("static_m", static_m, 0.0, 1e3, "head", "Give the height up to the tank.")
    require("friction", friction, 0.0, 1e12, "number")
    return lambda flow: static_m + friction * flow * flow


def table(
    pump: Pump,
    system_head: Callable[[float], float],
    density: float,
    motor_efficiency: float = practice.MOTOR_EFFICIENCY,
    steps: int = STEPS,
) -> Table:
    """What a pump gives at each power: its speed, and the flow where pump and pipe meet.

    Q: s**2 H_1(Q / s) = H_sys(Q), P = P_e(Q, s), for speeds s from where water starts to full
    pump: its table, with power or efficiency; system_head: rising function, m3/s to m; density:
    kg/m3; motor_efficiency: a share, see ``drawn_by``; steps: count of speeds, 2 to 1000.
    Returns ``Table``.  Raises InputError, named "pump", where full speed gives no water.
    Source: affinity laws; the controller is taken to find the speed that uses all of the power.
    """
    require("steps", steps, 2, 1000, "number")
    first = _starts(pump, system_head)
    rows: list[tuple[float, float, float]] = []
    for step in range(steps + 1):
        # closer together at the start, where the flow rises most steeply
        speed = first + (1 - first) * (step / steps) ** 2
        flow = 0.0 if step == 0 else duty(pump, system_head, speed).flow
        watts = drawn_by(pump, flow, speed, density, motor_efficiency) if flow or not step else 0.0
        if not rows or (watts > rows[-1][0] and flow >= rows[-1][1]):
            rows.append((watts, flow, speed))
    columns = tuple(zip(*rows, strict=True))
    return Table(*columns)


def _starts(pump: Pump, system_head: Callable[[float], float]) -> float:
    """The speed at which the pump's head at a trickle reaches the system's."""
    needed = system_head(0.0)

    def spare(speed: float) -> float:
        return pump.head_and_slope(LEAST_FLOW, speed)[0] - needed

    if spare(1.0) <= 0:
        raise InputError("At full speed the pump does not lift water that high.", name="pump")
    if spare(LEAST_SPEED) >= 0:
        return LEAST_SPEED
    return max(LEAST_SPEED, pump.slowed_to(LEAST_FLOW, needed))


def flow_by_sun(
    made: Table, array: Array, module_k: float, losses: Losses = USUAL_LOSSES, steps: int = 20
) -> tuple[tuple[float, float], ...]:
    """Flow against irradiance, for a chart.

    made: ``table``; array: its panels; module_k: K, 203 to 373; losses: of the panels; steps:
    count, 1 to 200.  Returns (W/m2, m3/s) from 0 to 1000 W/m2.  Raises RangeError outside.
    """
    require("steps", steps, 1, 200, "number")
    suns = [1000.0 * step / steps for step in range(steps + 1)]
    return tuple((sun, made.flow(power(array, sun, module_k, losses))) for sun in suns)


def day_water(
    made: Table,
    array: Array,
    sun_j: float,
    daylight_h: float,
    module_k: float,
    losses: Losses = USUAL_LOSSES,
) -> float:
    """Water of a clear day that brings a sum of sun.

    G(t) = (pi / 2) (H / D) sin(pi t / D), V = sum of Q(P(G)) over quarters of an hour
    made: ``table``; array: its panels; sun_j: H, J/m2 on the panels in the day, 0 to 5e7, a number;
    daylight_h: D, hours, 1 to 24; module_k: K, 203 to 373; losses: of the panels.
    Returns m3.  Raises RangeError outside.
    Source: a half sine for the sun's path, common practice; clouds that come and go give less.
    """
    require("sun_j", sun_j, 0.0, 5e7, "number")
    require("daylight_h", daylight_h, 1.0, 24.0, "number", "A day has 24 hours.")
    top = math.pi / 2 * sun_j / (daylight_h * HOUR)
    count = math.ceil(4 * daylight_h)
    quarter = daylight_h * HOUR / count
    suns = (top * math.sin(math.pi * (at + 0.5) / count) for at in range(count))
    return quarter * sum(
        made.flow(power(array, min(sun, 2000.0), module_k, losses)) for sun in suns
    )


@dataclass(frozen=True)
class DirectYear(Service):
    """A year without a battery: what ``Service`` says; pumped m3; overflow m3 that found no room.

    array: J the panels offer; running_hours: h with water coming; water_gap: what the balance does
    not close by, a share (rounding); worst: the worst fortnight, its ``lowest`` the tank's share.
    """

    pumped: float
    overflow: float
    array: float
    running_hours: int
    water_gap: float
    worst: tuple[Day, ...]


def simulate(
    weather: Weather,
    array: Array,
    made: Table,
    tank_m3: float,
    demand: Demand,
    losses: Losses = USUAL_LOSSES,
    start_m3: float | None = None,
) -> DirectYear:
    """A year of pumping straight from the panels into a tank that feeds the taps.

    V_t = min(V, V_t-1 + Q(P_t) 1 h - asked), not below 0; the pump stops where the tank is full.
    weather, demand: as for ``year.simulate``; array: its panels, on the pump's own controller;
    made: ``table``; tank_m3: V, m3, 0.001 to 1e5; losses: of the panels; start_m3: m3 (None: full).
    Returns ``DirectYear``.  Raises RangeError outside.
    Source: conservation; in an hour the water comes before it is used.
    """
    start = tank_m3 if start_m3 is None else start_m3
    watts = powers(array, weather.plane, weather.module_k, losses)
    offers = [HOUR * made.flow(one) for one in watts]
    levels, served, pumped = _tank(demand.hours, offers, start, tank_m3)
    had, water = start + sum(pumped), sum(served)
    held = [one / tank_m3 for one in levels]
    days = days_of(demand.hours, served, held, [HOUR * one for one in watts])
    return DirectYear(
        **vars(served_of(demand.hours, served)),
        pumped=sum(pumped),
        overflow=sum(offers) - sum(pumped),
        array=HOUR * sum(watts),
        running_hours=sum(one > 0 for one in pumped),
        water_gap=(had - water - levels[-1]) / max(had, LEAST_FLOW),
        worst=worst_fortnight(days),
    )


def trace(
    weather: Weather, array: Array, made: Table, tank_m3: float, demand: Demand
) -> list[float]:
    """The tank behind ``simulate``, for a picture: m3 in it at the end of each hour.

    Arguments and errors as for ``simulate``, with its usual losses and a full tank to begin with.
    """
    watts = powers(array, weather.plane, weather.module_k, USUAL_LOSSES)
    return _tank(demand.hours, [HOUR * made.flow(one) for one in watts], tank_m3, tank_m3)[0]


def _tank(
    asked: Sequence[float], offers: Sequence[float], start_m3: float, tank_m3: float
) -> tuple[list[float], list[float], list[float]]:
    """(level at the end, served, pumped) of each hour, m3."""
    require("tank_m3", tank_m3, 1e-3, 1e5, "volume", "Without a battery there must be a tank.")
    require("start_m3", start_m3, 0.0, tank_m3, "volume", "The tank holds no more.")
    level = start_m3
    levels, served, pumped = [], [], []
    for ask, offer in zip(asked, offers, strict=True):
        taken = min(offer, max(0.0, tank_m3 + ask - level))
        given = min(ask, level + taken)
        level += taken - given
        served.append(given)
        levels.append(level)
        pumped.append(taken)
    return levels, served, pumped
