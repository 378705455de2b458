"""What the battery sheet says: how long it carries, and how it is treated."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.page.answer import Link
from calc.page.findings import Finding
from calc.power.battery import discharge_limit
from calc.power.controller import most_power
from calc.sheets.parts import solar_judge
from calc.sheets.parts.solar_judge import days_served, lasts
from calc.units import DAY, HOUR

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.sheets.parts.solar_case import Case
    from calc.units import Reader

DULL_DAYS = 1.0  # a battery that carries less is worth saying; our choice
EASY = 1.001  # share by which a limit may be passed before it is said: rounding


def told(case: Case, reader: Reader) -> str:
    """How long it carries and lasts, where nothing is wrong."""
    carries = reader.show(case.autonomy * DAY, "days", 2)
    years = f"{lasts(case):.2g}"
    return (
        f"The battery carries {carries} without sun, serves {days_served(case)} of {case.years} "
        f"and lasts about {years} years."
    )


def findings(case: Case, reader: Reader) -> tuple[Finding, ...]:
    """Everything found: of the year, and of how the battery is charged and drawn."""
    return (*solar_judge.findings(case, reader), *_drawn(case, reader), *_charged(case, reader),
            *_dull(case, reader))  # fmt: skip


def _drawn(case: Case, reader: Reader) -> Iterator[Finding]:
    """A pump that draws more than the battery gives."""
    one, pump = case.system.battery, case.system.pump
    most = discharge_limit(one)
    if pump.power_w + pump.standby_w > most * EASY:
        given, asked = reader.apart(most, pump.power_w + pump.standby_w, "power")
        text = f"This battery may give {given}; the pump draws {asked}: take a larger one."
        yield Finding("care", "rate", text)


def _charged(case: Case, reader: Reader) -> Iterator[Finding]:
    """Panels that could charge it faster than its kind bears: the controller must be set."""
    one = case.system.battery
    most = one.of.charge_rate * one.energy_j / HOUR
    could = min(
        case.system.array.rated_w * case.system.controller.gives,
        most_power(case.system.controller, one.nominal_v),
    )
    if could > most * EASY:
        amps = reader.show(most / one.nominal_v, "current", 2)
        text = f"Set the charge controller to at most {amps}: the panels could charge faster."
        yield Finding("note", "charge-rate", text)


def _dull(case: Case, reader: Reader) -> Iterator[Finding]:
    if case.autonomy < DULL_DAYS:
        carries = reader.show(case.autonomy * DAY, "days", 2)
        text = f"Without sun the battery carries only {carries}; two to five are usual."
        yield Finding("care", "autonomy", text)


def links() -> tuple[Link, ...]:
    """Where to go on."""
    return (
        Link("How many panels", "panels", {}),
        Link("Without a battery, into a tank", "direct", {}),
        Link("Which cable", "cable", {}),
        Link("A storage tank instead", "tank", {}),
        Link("Will the taps keep up?", "keep_up", {}),
    )
