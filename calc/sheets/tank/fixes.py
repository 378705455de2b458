"""What to try with a storage tank: more water, less use, a larger tank, a higher one."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from calc import practice, storage
from calc.sheets.parts.carry import exact
from calc.sheets.parts.line_fixes import round_down
from calc.sheets.parts.tank_sizes import at_least, round_up
from calc.sheets.parts.tries import Change
from calc.sheets.tank.judge import SLOW, findings, hours_needed
from calc.units import DAY, GRAVITY, HOUR, number_text

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.form import Values
    from calc.sheets.tank.case import Case
    from calc.units import Reader

SUPPLY = frozenset({"no-source", "too-little", "never-refills", "slow-refill"})
SIZE = frozenset({"too-small", "short-of-days"})
HEIGHT = frozenset({"no-water", "short"})
OVER = frozenset({"outlet-over-limit"})
LEAST_DAYS = 0.5  # without supply, below which to plan for fewer is no advice; our choice


def changes(values: Values, case: Case, reader: Reader) -> Iterator[Change]:
    """The likely best first."""
    yield from _more_in(values, case, reader)
    yield from _fewer_days(values, case)
    yield Change(f"Choose a tank of {reader.show(case.asked, 'volume')}.", SIZE,
                 {"own": exact(case.asked, "volume", reader)})  # fmt: skip
    if case.raised > 0:
        yield from _reduced(values, case, reader)
        yield from _raised(values, case, reader)


def _more_in(values: Values, case: Case, reader: Reader) -> Iterator[Change]:
    """More water a day, enough to fill the tank again within ``SLOW`` after days without."""
    share = (1 + values.bridge / SLOW) * (1 + 1e-6)
    wanted = case.use * share
    hours = hours_needed(values, wanted)
    if values.gives > 0 and hours <= 24:
        size = None if values.own else case.asked_at(math.ceil(hours * 10 - 1e-9) / 10)
        tank = f"; a tank of {reader.show(size, 'volume')} is then enough" if size else ""
        text = f"Run the pump {at_least(hours)} hours a day or more{tank}."
        yield Change(text, SUPPLY, {"hours": f"{min(24.0, float(at_least(hours))):g}"})
    elif case.well_limits:
        yield _day_and_night(values, wanted, reader)
    if not case.well_limits:
        flow = round_up(wanted / (values.hours * HOUR), "flow", reader)
        each = f"{reader.show(flow, 'flow')} for {number_text(values.hours)} hours a day"
        yield Change(f"Find a source of {each}.", SUPPLY, {"gives": exact(flow, "flow", reader)})
    if case.supply > 0:
        most = round_down(case.supply / share / DAY, "daily", reader)
        text = f"Use no more than {reader.show(most, 'daily')}."
        yield Change(text, SUPPLY, {"use": exact(most, "daily", reader)})


def _day_and_night(values: Values, wanted: float, reader: Reader) -> Change:
    """What a well and a pump too weak even without a pause would have to give."""
    flow = round_up(wanted / DAY, "flow", reader)
    both = (("well", values.well), ("pump", values.gives))
    weak = [name for name, gives in both if gives < flow]
    texts = {{"well": "well", "pump": "gives"}[name]: exact(flow, "flow", reader) for name in weak}
    shown = reader.show(flow, "flow")
    text = f"Find a {' and a '.join(weak)} that can give {shown} day and night."
    return Change(text, SUPPLY, {"hours": "24", **texts})


def _fewer_days(values: Values, case: Case) -> Iterator[Change]:
    """As many days without supply as are made up for in good time."""
    days = math.floor(SLOW / DAY * (case.supply / case.use - 1) * 10 - 1e-6) / 10
    if LEAST_DAYS <= days < values.bridge / DAY:
        text = f"Plan for {days:g} days without supply at most."
        yield Change(text, frozenset({"slow-refill"}), {"bridge": f"{days:g} days"})


def _reduced(values: Values, case: Case, reader: Reader) -> Iterator[Change]:
    """Too high a tank: a reducing valve, or a lower place."""
    if practice.BORDERLINE * values.wanted <= practice.HIGHEST_AT_OUTLET:
        left = (one for one in findings(values, case, reader) if one.key not in OVER)
        text = "Fit a pressure-reducing valve at the house, and a relief valve after it."
        yield Change(text, OVER, left=tuple(one for one in left if one.level != "note"))
    high = round_down(practice.HIGHEST_AT_OUTLET / (case.density * GRAVITY), "length", reader)
    text = f"Place the tank no more than {reader.show(high, 'length')} above the outlet."
    yield Change(text, OVER, {"height": exact(high, "length", reader)})


def _raised(values: Values, case: Case, reader: Reader) -> Iterator[Change]:
    """Too low a tank: higher, less friction on the way, or a pump."""
    sure = practice.BORDERLINE * values.wanted * (1 + 1e-6)
    height = storage.height_for_pressure(sure, values.lost, case.density)
    high = round_up(height, "length", reader)
    text = f"Raise the water to {reader.show(high, 'length')} above the outlet."
    yield Change(text, HEIGHT, {"height": exact(high, "length", reader)})
    lost = values.lost - (height - case.raised)
    if lost > 0:
        lost = round_down(lost, "head", reader)
        text = f"Lose no more than {reader.show(lost, 'head')} to friction, with a wider pipe."
        yield Change(text, HEIGHT, {"lost": exact(lost, "head", reader)})
    yield Change("Let a small pump draw from the tank instead.", HEIGHT, {"height": ""})
