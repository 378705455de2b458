"""Figures, working and tables of the pump_match sheet."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from calc.page.answer import Column, Figure, Step, Table, Value
from calc.pump.laws import water_power, wire_to_water
from calc.sheets.parts.line_judge import AIR
from calc.sheets.parts.pipe_working import line_steps, sections_table
from calc.sheets.pump_match.case import SAFE, Case, State
from calc.units import GRAVITY

if TYPE_CHECKING:
    from calc.page.answer import Cells
    from calc.page.form import Values

RUNNING, STATIC = "Running pressure at the outlet", "Static pressure at the outlet"


def below_zero(pressure_pa: float) -> str:
    """What a pressure below zero means: "" for none."""
    if pressure_pa < -AIR:
        return "not a real pressure: the water column separates before"
    return "below zero: the water does not arrive" if pressure_pa < 0 else ""


def figures(case: Case) -> tuple[Figure, ...]:
    """The key figures: at the full flow where the pump's table covers it."""
    state = case.running
    found = []
    if state is not None:
        note = below_zero(state.left)
        found.append(Figure(RUNNING, state.left, "pressure", note=note, main=True))
        if not state.stands:
            found.append(Figure("Speed of the pump", state.speed, "percent", note="of full"))
    if case.duty is not None:
        note = "end of the pump's table" if case.duty.past_end else "at full speed"
        label = "Maximum flow at needed pressure"
        found.append(Figure(label, case.duty.flow, "flow", note=note, main=not case.covers))
    advised = case.given_set is not None or (state is not None and state.held)
    if case.set_pressure > 0 and advised and not (state is not None and state.stands):
        note = "" if case.given_set is not None else "worked out"
        label = f"Set pressure at the {'sensor' if case.sensed_m else 'pump'}"
        pressure = case.as_set(case.set_pressure)
        found.append(Figure(label, pressure, "pressure", note=note, main=True))
    if math.isfinite(case.needed):
        found.append(Figure("Head needed", case.needed, "head", note="with everything open"))
    return (*found, *_rest(case, state))


def _rest(case: Case, state: State | None) -> list[Figure]:
    static = case.line_at(case.state(0.0)).most_static
    found = [
        Figure(STATIC, static, "pressure", note=below_zero(static)),
        Figure("Water speed", case.line.speed(case.flow), "speed"),
    ]
    if state is not None and state.power is not None:
        found.append(Figure("Power drawn", state.power, "power"))
    if state is not None and not state.stands:
        has = case.intake.available(case.flow)
        note = "below zero: the water boils first" if has < 0 else ""
        found.append(Figure("NPSH available", has, "head", note=note))
        required = case.npsh_required(state.flow, state.speed)
        if required is not None:
            found.append(Figure("NPSH required", required, "head"))
    if case.shut_off_pa > 0:
        most = max(stress.pressure_pa for stress in case.failed.stresses())
        note = "on the pipe, against a closed valve"
        label = "Pressure where the switch acts" if case.displaces else "Pressure if control fails"
        found.append(Figure(label, most, "pressure", note=note))
    return found


# Tables -------------------------------------------------------------------------------------


def tables(case: Case) -> tuple[Table, ...]:
    """Zero, half and full demand; every section where the line was given by sections."""
    several: tuple[Table, ...] = ()
    if case.counted:
        state = case.running or case.state(0.0)
        several = (sections_table(case.line_at(state), state.flow),)
    return (_demand(case), *several)


def _demand(case: Case) -> Table:
    """Zero, half and full demand under speed control."""
    rows: list[Cells] = []
    for name, share in (("Nothing open", 0.0), ("Half open", 0.5), ("Everything open", 1.0)):
        flow = share * case.flow
        state, system = case.state(flow), case.system(flow)
        head = system if math.isfinite(system) else None
        if state is None:
            rows.append((name, flow, head, None, None, None, None))
        else:
            start, left = (p if p >= 0 else None for p in (state.start, state.left))
            rows.append((name, flow, head, state.speed, start, left, state.power))
    columns = (
        Column("Demand"),
        Column("Flow", "flow"),
        Column("Head needed", "head"),
        Column("Pump speed", "percent", 2),
        Column("At the pump", "pressure"),
        Column("At the outlet", "pressure"),
        Column("Power drawn", "power"),
    )
    note = "A dash: past the pump's table, not known, or no pressure left."
    return Table("From nothing open to everything open", columns, tuple(rows), note=note)


# The working --------------------------------------------------------------------------------


def steps(case: Case, values: Values) -> tuple[Step, ...]:
    """The working at the full flow."""
    state = case.running
    found = []
    if not case.counted:
        found.append(
            Step(
                "Length with bends and valves",
                "L = L_pipe * (1 + a)",
                {"L_pipe": Value(values.length, "length"), "a": Value(values.extra, "percent")},
                Value(case.line.length_m, "length"),
            )
        )
    found += _needed_steps(case)
    if state is not None:
        found += line_steps(case.line_at(state), case.flow)
    found += _meeting_step(case)
    if state is not None and not state.stands:
        found += _running_steps(case, state)
    found.append(_npsh_step(case))
    return tuple(found)


def _weighed(case: Case) -> dict[str, Value]:
    return {"rho": Value(case.density, "density", 5), "g": Value(GRAVITY, "number", 6)}


def _needed_steps(case: Case) -> list[Step]:
    """From the pressure needed to the head of the pump and the pressure to set."""
    if case.line.reduced:
        note = (
            "From the outlet back to the pump: climb and loss are added from section to section, "
            "and what a pressure-reducing valve takes wide open."
        )
        return [Step("Head the pump must give", note=note)]
    intake = case.intake
    pressure = Value(case.need.works_pa / case.weight, "head")
    loss = Value(case.line.loss(case.flow), "head")
    rise = Value(case.line.rise_m, "length")
    return [
        Step(
            "Pressure needed, as a height of water",
            "H_w = p_w / (rho * g)",
            {"p_w": Value(case.need.works_pa, "pressure"), **_weighed(case)},
            pressure,
        ),
        Step(
            "Head the pump must give",
            "H = h_lift + h_s + z + h_l + H_w",
            {
                "h_lift": Value(intake.lift, "length"),
                "h_s": Value(intake.lost(case.flow), "head"),
                "z": rise,
                "h_l": loss,
                "H_w": pressure,
            },
            Value(case.needed, "head"),
            note="h_s is lost in the suction pipe, h_l on the way to the outlet.",
        ),
        *_set_step(case, rise, loss),
    ]


def _set_step(case: Case, rise: Value, loss: Value) -> list[Step]:
    """The set pressure worked out, where the outlet and no crest decides it."""
    wanted = max(case.need.sure_pa, case.need.works_pa + 1.0)
    start = wanted + case.weight * (rise.value + loss.value)
    title = "Pressure to set at the pump"
    if case.least_set is None or abs(case.least_set - start) > 1.0:
        return [
            Step(title, note="The least that leaves no point of the pipe below zero, and a little.")
        ]
    sensed = [_sensed_step(case)] if case.sensed_m else []
    return [
        Step(
            title,
            "p_set = (1 + b) * (p_sure + rho * g * (z + h_l))",
            {
                "b": Value(SAFE, "percent", 2),
                "p_sure": Value(wanted, "pressure"),
                **_weighed(case),
                "z": rise,
                "h_l": loss,
            },
            Value(case.advised, "pressure"),
            note="p_sure is a tenth more than the pressure needed, so that it is not borderline; "
            "b covers the rounding. The controller holds it at the pump.",
        ),
        *sensed,
    ]


def _sensed_step(case: Case) -> Step:
    """From the pressure at the pump to that at the control's sensor."""
    return Step(
        "The same at the sensor",
        "p_sensor = p_set - rho * g * z_s",
        {
            "p_set": Value(case.advised, "pressure"),
            **_weighed(case),
            "z_s": Value(case.sensed_m, "length"),
        },
        Value(case.as_set(case.advised), "pressure"),
        note="Friction between pump and sensor is left out: with long drop pipe set it a little "
        "higher.",
    )


def _meeting_step(case: Case) -> list[Step]:
    title = "Where pump and system meet"
    if case.duty is None:
        note = "The pump's shut-off head is below the head needed with no flow: they never meet."
        return [Step(title, note=note)]
    if case.duty.past_end:
        note = "At the last flow of its table the pump still has head left: they meet beyond it."
        return [Step(title, note=note)]
    if case.line.reduced:
        note = "The flow at which the pump's curve gives the head needed at that flow."
        return [Step(title, note=note)]
    return [
        Step(
            "Where pump and system meet at full speed",
            "H_meet = h_0 + h_l + h_s",
            {
                "h_0": Value(case.system(0.0), "head"),
                "h_l": Value(case.line.loss(case.duty.flow), "head"),
                "h_s": Value(case.intake.lost(case.duty.flow), "head"),
            },
            Value(case.duty.head, "head"),
            note="The flow at which the pump's curve gives as much as lift, climb and needed "
            "pressure (h_0) and all friction (h_l, h_s) use at that flow.",
        )
    ]


def _running_steps(case: Case, state: State) -> list[Step]:
    flow, head = Value(state.flow, "flow"), Value(state.head, "head")
    speed = Value(state.speed, "percent")
    power = Value(water_power(flow.value, state.head, case.density), "power")
    found = [
        *_shared_step(case, flow),
        *_speed_step(case, flow, head, speed),
        Step(
            "Power in the water",
            "P_w = rho * g * Q * H",
            {**_weighed(case), "Q": flow, "H": head},
            power,
        ),
    ]
    if state.power:
        found.append(
            Step(
                "Share of the electricity that ends in the water",
                "eta = P_w / P_e",
                {"P_w": power, "P_e": Value(state.power, "power")},
                Value(wire_to_water(power.value, state.power), "percent"),
                note="P_e is read from the pump's table at the similar flow and scaled with its "
                "speed.",
            )
        )
    share = case.best_share(state.flow, state.speed)
    if share is not None:
        found.append(
            Step(
                "Where on the curve",
                "b = Q / (s * Q_best)",
                {"Q": flow, "s": speed, "Q_best": Value(case.pump.best.flow, "flow")},
                Value(share, "percent"),
                note="Against the best-efficiency flow at this speed; 70 to 120% is preferred.",
                source="ANSI/HI 9.6.3, from memory",
            )
        )
    return found


def _shared_step(case: Case, flow: Value) -> list[Step]:
    """What each of several pumps gives."""
    if case.pumps == 1:
        return []
    return [
        Step(
            "Flow of each pump",
            "Q_1 = Q / n",
            {"Q": flow, "n": Value(case.pumps, "number")},
            Value(flow.value / case.pumps, "flow"),
            note="Equal pumps side by side share the flow; the curve is of all together.",
        )
    ]


def _speed_step(case: Case, flow: Value, head: Value, speed: Value) -> list[Step]:
    title = "Speed that gives this head"
    if case.displaces:
        full = Value(case.pump.largest_flow, "flow")
        similar = Value(flow.value + (1 - speed.value) * full.value, "flow")
        return [
            Step(
                title,
                "Q_1 = Q + (1 - s) * Q_free",
                {"Q": flow, "s": speed, "Q_free": full},
                similar,
                note="The speed at which the full-speed curve, moved by the flow that slowing "
                "takes off, gives the head; below its table the pump moves its flow at any head.",
            )
        ]
    full_head = case.pump.head_and_slope(flow.value / speed.value)[0]
    return [
        Step(
            title,
            "H = s**2 * H_1",
            {"s": speed, "H_1": Value(full_head, "head")},
            head,
            note="H_1 is the full-speed curve's head at the flow Q / s; s is found by trial.",
            source="affinity laws",
        )
    ]


def _npsh_step(case: Case) -> Step:
    intake = case.intake
    return Step(
        "NPSH available",
        "NPSH = (p_air - p_v) / (rho * g) - h_lift - h_s",
        {
            "p_air": Value(intake.place.air_pa, "pressure", 4),
            "p_v": Value(intake.place.vapour_pa, "pressure"),
            **_weighed(case),
            "h_lift": Value(intake.lift, "length"),
            "h_s": Value(intake.lost(case.flow), "head"),
        },
        Value(intake.available(case.flow), "head"),
        note="Absolute pressures; compare with the NPSH the pump needs at this flow.",
    )
