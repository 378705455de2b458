"""Pressures as a picture writes them: few digits, yet too little is told from enough."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from calc.units import Reader

LEAST = 0.01  # of the reader's unit, below which a pressure is written as none; our choice
LEVELS = {"stop": "bad", "care": "tight"}
WORDS = {"stop": ("too weak", "weak"), "care": ("only just",)}
DRY = ("no water", "dry")


def short(pressure_pa: float, reader: Reader) -> str:
    """A pressure (Pa) on two digits in the reader's unit, without it.  Raises nothing."""
    shown = reader.unit("pressure").from_si(pressure_pa)
    if shown < LEAST:
        return "0"
    return reader.number(pressure_pa, "pressure", 2 if shown >= 10 * LEAST else 1)


def told_apart(left_pa: float, needed_pa: float, level: str, reader: Reader) -> str:
    """What is left (Pa), on more digits where it is too little and would read as enough."""
    shown = short(left_pa, reader)
    if level == "stop" and shown == short(needed_pa, reader):
        return reader.number(left_pa, "pressure", 3)
    return shown


def words(level: str, shown: str) -> tuple[str, ...]:
    """Ways to say over an outlet that it gets too little, the best first; none where it is fine.

    level: of a finding; shown: the pressure as written.
    """
    return DRY if level == "stop" and shown == "0" else WORDS.get(level, ())
