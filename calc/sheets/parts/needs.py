"""What the water of one pipe is for, and the pressure that asks: several sheets ask it alike."""

from __future__ import annotations

from calc import practice
from calc.page.fields import Choice, Number

USES = (
    ("house", "House: showers and sinks"),
    ("drip", "Drip lines"),
    ("trough", "Open trough or tank"),
    ("own", "Another pressure"),
)


def use_field() -> Choice:
    """What the water is for."""
    return Choice(
        "use",
        "What the water is for",
        USES,
        "house",
        help="A shower works from 1 bar (15 psi) and is comfortable from 2 bar (30 psi); drip "
        "lines need 1.4 bar (20 psi).",
    )


def wanted_field() -> Number:
    """The pressure of a use of one's own."""
    return Number(
        "wanted",
        "Needed pressure",
        "pressure",
        "2 bar",
        "30 psi",
        0.0,
        20e5,
        when=("use", ("own",)),
    )


def levels(use: str, own_pa: float | None) -> tuple[float, float]:
    """(works, comfortable) of a use in Pa. own_pa: the pressure given for the use "own"."""
    if use == "house":
        return practice.SHOWER_WORKS, practice.SHOWER_COMFORTABLE
    if use == "own":
        return own_pa or 0.0, own_pa or 0.0
    works = practice.DRIP_PRESSURE if use == "drip" else practice.TROUGH_WORKS
    return works, works
