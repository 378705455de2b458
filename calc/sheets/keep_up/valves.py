"""Pressure-reducing valves near their rated flow: what they hold falls off; who then lacks it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import practice
from calc.network.findings import HAIR, Trouble
from calc.network.parts import Reducer
from calc.network.way import way_to
from calc.pipe import fittings

if TYPE_CHECKING:
    from collections.abc import Iterator
    from typing import TypeGuard

    from calc.network.parts import Link
    from calc.sheets.keep_up.case import Case, Tap
    from calc.units import Reader

FALLS = "reducer-fall"


def _falls(case: Case, link: Link) -> TypeGuard[Reducer]:
    """Whether a link is a valve that holds its pressure near its rated flow."""
    if not isinstance(link, Reducer) or link.vented:
        return False
    holds = case.after.pressure(link.end) >= link.set_pa - HAIR
    return holds and fittings.falls_off(case.after.flows[link.name], link.flow_m3s)


def falling(case: Case) -> Iterator[Trouble]:
    """For each valve near its rated flow the open outlet behind it that could lack the most.

    value: what is left there should the valve give the most less; a care where it had enough and
    then has not, else a note.
    """
    valves = [link for link in case.after.network.links if _falls(case, link)]
    behind: dict[str, list[Tap]] = {}
    for tap in case.running if valves else ():
        for name in way_to(case.after, tap.node):
            behind.setdefault(name, []).append(tap)
    for link in valves:
        if link.name in behind:
            tap = min(behind[link.name], key=lambda one: one.after.pressure_pa - one.sure_pa)
            left = tap.after.pressure_pa - practice.REDUCER_FALL[1]
            lacks = practice.enough(left, tap.after.wanted_pa, tap.best_pa) in ("stop", "care")
            level = "care" if lacks and tap.level not in ("stop", "care") else "note"
            wanted = tap.after.wanted_pa
            yield Trouble(tap.name, FALLS, level, left, wanted, "pressure", link.name)


def words(one: Trouble, reader: Reader) -> str:
    """What is found of a valve, as a sentence."""
    least, most = (reader.show(fall, "pressure") for fall in practice.REDUCER_FALL)
    start = f"Near its rated flow, the pressure-reducing valve before {one.row} may give"
    if one.level == "note":
        return f"{start} {least} to {most} less than it is set to."
    left, needed = reader.apart(max(one.value, 0.0), one.limit, "pressure")
    return f"{start} less than it is set to: {left}, where {needed} is needed."
