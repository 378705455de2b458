"""What is found of a supply's pump, its suction line and its control, as figures."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import practice, water
from calc.network.findings import Trouble
from calc.network.state import SEEPING
from calc.pump.curve import DisplacementPump
from calc.sheets.parts import guard
from calc.sheets.parts.small_draw import KEY, SmallDraw, least_of, smallest_lasting
from calc.site.supply import INLET, PUMP_PART, SUCTION

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.sheets.keep_up.case import Case
    from calc.site.supply_rows import Source

SOFT = ("hose", "layflat")  # kinds that a vacuum can flatten


def signs(case: Case) -> Iterator[Trouble]:
    """Everything found of the pump's side; nothing where there is no pump."""
    source = case.supply.pumping
    if source is not None:
        yield from _suction(case, source)
        yield from _setting(case, source)
        yield from _least_flow(case)


def guards(case: Case) -> Iterator[Trouble]:
    """What guards a displacement pump, or lacks."""
    source = case.supply.pumping
    if source is None or not isinstance(source.pump, DisplacementPump):
        return
    level = guard.guard_level(source.guard)
    if level:
        yield Trouble(PUMP_PART, guard.KEY, level)
    top = source.pump.points[0].head
    yield Trouble(PUMP_PART, guard.SWITCH_AT_TOP, "note", top, None, "head")


def relieved(case: Case) -> bool:
    """Whether a relief valve guards the pipes, should the pump's control fail."""
    source = case.supply.pumping
    return source is not None and guard.relieved(source.pump, source.guard, source.relief)


def _suction(case: Case, source: Source) -> Iterator[Trouble]:
    usual = practice.suction_lift(water.air_pressure(source.altitude_m))
    if source.lift_m > usual + 1e-9:
        yield Trouble(INLET, "lift-practice", "care", source.lift_m, usual, "length")
    # below its water a pump needs no pipe: it may hang in it, or stand at the foot of a tank
    if source.suction_length_m < source.lift_m * (1 - 1e-9):
        yield Trouble(
            SUCTION, "suction-too-short", "care", source.suction_length_m, source.lift_m, "length"
        )
    vacuum, kind = -case.after.pressure(INLET), source.suction_pipe.kind
    if kind not in SOFT or vacuum <= 1.0 or case.after.flows[SUCTION] <= SEEPING:
        return
    firm = kind == "hose" and vacuum <= practice.HOSE_VACUUM
    level = "stop" if kind == "layflat" else "note" if firm else "care"
    yield Trouble(SUCTION, "vacuum-collapse", level, vacuum, practice.HOSE_VACUUM, "pressure")


def most_at_pump(case: Case, source: Source) -> float:
    """The highest pressure the pump can make at its outlet, with no flow, Pa."""
    return case.weight * (source.pump.head_and_slope(0.0)[0] - source.lift_m)


def _setting(case: Case, source: Source) -> Iterator[Trouble]:
    """A set pressure that the pump never reaches."""
    most = most_at_pump(case, source)
    if source.set_pa is not None and source.set_pa > most * (1 + 1e-9):
        reads, most = source.reads_pa, most - source.sensed_pa
        yield Trouble(PUMP_PART, "set-too-high", "stop", reads, most, "pressure")


def _least_flow(case: Case) -> Iterator[Trouble]:
    """A lasting draw below the pump's least flow, by how often it then starts."""
    for small, name in small_draws(case):
        level, _ = small.judged
        if level:
            yield Trouble(name, KEY, level, small.draw, small.least_known, "flow")


def small_draws(case: Case) -> list[tuple[SmallDraw, str]]:
    """(a lasting draw, the outlet's name), the smallest alone, as given or by the outlets, where
    speed control holds the pressure: should all else close, the pump starts and stops if it is
    below its least flow."""
    source, network = case.supply.pumping, case.after.network
    if source is None or source.set_pa is None or case.after.flows[PUMP_PART] <= SEEPING:
        return []
    if source.set_pa > most_at_pump(case, source) * (1 + 1e-9):  # it never stops
        return []
    if source.smallest_m3s is not None:
        draw, name = source.smallest_m3s, PUMP_PART
    else:
        rows = zip(network.outlets, case.supply.outlets, strict=True)
        found = smallest_lasting(case.after, {outlet.name: row.kind for outlet, row in rows})
        if found is None:
            return []
        draw, name = found
    return [(_drawn(case, source, source.set_pa, draw), name)]


def _drawn(case: Case, source: Source, set_pa: float, draw_m3s: float) -> SmallDraw:
    """What a lasting draw asks of the pump and its tank."""
    air = water.air_pressure(source.altitude_m)
    return SmallDraw(
        pump=source.pump, draw=draw_m3s, least=source.least_m3s, tank=source.tank_m3,
        set_pa=set_pa, lift_m=source.lift_m, weight=case.weight, air_pa=air,
        pumps=source.pumps, sensed_pa=source.sensed_pa, charge=source.charge_pa,
        allowed=source.allowed,
    )  # fmt: skip


def unasked_draw(case: Case) -> SmallDraw | None:
    """The worst that a lasting draw nobody told of could ask: one just below the pump's least flow.

    None where one is told, or an outlet's is found to be too small; where the pump has no least
    flow, or never stops; where the tank spaces the starts of any draw.
    """
    source = case.supply.pumping
    if source is None or source.set_pa is None or source.smallest_m3s is not None:
        return None
    if any(small.judged[0] for small, _ in small_draws(case)):
        return None
    least = least_of(source.pump, source.least_m3s)
    if least is None or source.set_pa > most_at_pump(case, source) * (1 + 1e-9):
        return None
    worst = _drawn(case, source, source.set_pa, 0.999 * least)
    return None if worst.judged[0] in ("", "note") else worst


def settled_by_tank(case: Case) -> bool:
    """Whether a pressure tank would settle what is found of a small draw."""
    return any(small.least_known is not None for small, _ in small_draws(case))
