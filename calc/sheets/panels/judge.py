"""What the panels sheet says where nothing is wrong, and where it leads."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.page.answer import Link
from calc.sheets.parts.solar_judge import days_served, parts

if TYPE_CHECKING:
    from calc.sheets.parts.solar_case import Case
    from calc.units import Reader


def told(case: Case, reader: Reader) -> str:
    """What the panels and the battery do, where nothing is wrong."""
    return f"{parts(case, reader)} serve {days_served(case)} of {case.years}."


def links() -> tuple[Link, ...]:
    """Where to go on."""
    return (
        Link("How big a battery", "battery", {}),
        Link("Without a battery, into a tank", "direct", {}),
        Link("Where the panels stand best", "panel_place", {}),
        Link("Which cable", "cable", {}),
        Link("How big a tank", "tank", {}),
        Link("Will the taps keep up?", "keep_up", {}),
    )
