"""Why an outlet gets nothing: which tank is empty, and what keeps the pump."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.network.parted import EMPTY

if TYPE_CHECKING:
    from calc.network.day_run import Span
    from calc.sheets.day.case import Case

_PUMP = {
    "power": "the pump has no power",
    "dry": "the source has run out",
    "full": "the pump waits for its level switch",
}


def why(case: Case, span: Span) -> str:
    """The reason that holds in the middle of a span, as the end of a sentence."""
    step = case.run.step((span.start + span.end) / 2 % case.run.long)
    empty = [
        tank.name for tank, how in zip(case.tanks, step.state.stands, strict=True) if how == EMPTY
    ]
    told = []
    if empty:
        told.append(f"{' and '.join(empty[:2])} {'is' if len(empty) == 1 else 'are'} empty")
    pump = _PUMP.get(case.stands(step), "")
    if pump and not (empty and pump == _PUMP["full"]):
        told.append(pump)
    if not told:
        return "it is too high for the water there is"
    if not empty and case.tanks:
        return f"{told[0]} and it is too high for the tank"
    return " and ".join(told)


def waits_for(case: Case, span: Span) -> str:
    """What keeps the pump in the middle of a span: "power", "dry", "full"; "" for nothing."""
    return case.stands(case.run.step((span.start + span.end) / 2 % case.run.long))
