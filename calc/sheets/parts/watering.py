"""What all watering has in common, by drip or sprinklers: enough water, hours enough."""

from __future__ import annotations

from typing import TYPE_CHECKING, Protocol

from calc.page.findings import Finding, unchecked
from calc.sheets.parts.carry import exact
from calc.sheets.parts.tank_sizes import at_least, round_up
from calc.sheets.parts.tries import Change
from calc.units import DAY, HOUR, MET, numbers_apart, plain_number

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.units import Reader

FLOW, TIME, WATER = frozenset({"zone-flow"}), frozenset({"too-long"}), frozenset({"too-little"})
SPARE = 1 + 1e-6  # so that a number rounded for a link is still enough
LEAST_SHARE = 0.1  # of an area, below which to water less is no advice; our choice


class Watered(Protocol):
    """A garden: water it needs and there is a day, m3 (None: not known), and hours, s."""

    @property
    def water(self) -> float: ...
    @property
    def daily(self) -> float | None: ...
    @property
    def time(self) -> float: ...
    @property
    def hours(self) -> float: ...


def share(value: float) -> str:
    """A share in percent, as it is said."""
    return f"{plain_number(100 * value, 2)}\u00a0%"


def enough_water(case: Watered, who: str, reader: Reader) -> Iterator[Finding]:
    """Whether there is as much water in a day as is needed.

    who: needs it, as a sentence begins: "The plants need".
    """
    if case.daily is None:
        needs = reader.show(case.water, "volume")
        yield unchecked("daily", f"Not checked: whether there is enough water, {needs} a day.")
    elif case.water > case.daily * MET:
        needs, gives = reader.apart(case.water, case.daily, "volume")
        text = f"{who} {needs} a day, and the source gives {gives}."
        yield Finding("stop", "too-little", text, "cannot")


def enough_time(case: Watered, when: str) -> Iterator[Finding]:
    """Whether the hours are enough. when: "a day", or on which."""
    if case.time > case.hours * MET:
        takes, has = numbers_apart(case.time / HOUR, case.hours / HOUR)
        text = f"Watering takes {takes} hours {when}, and you have {has}."
        yield Finding("stop", "too-long", text)


def longer(case: Watered) -> Iterator[Change]:
    """More hours a day, where a day has them."""
    hours = case.time / HOUR * SPARE
    if hours <= 24:
        text = f"Let it run {at_least(hours)} hours a day."
        yield Change(text, TIME, {"hours": f"{min(24.0, float(at_least(hours))):g}"})


def more_water(case: Watered, reader: Reader) -> Iterator[Change]:
    """As much water as is needed, where it is known how much there is."""
    if case.daily is not None:
        needed = round_up(case.water * SPARE / DAY, "daily", reader)
        text = f"Find {reader.show(needed, 'daily')}: a second source, or rain stored in a tank."
        yield Change(text, WATER, {"daily": exact(needed, "daily", reader)})
