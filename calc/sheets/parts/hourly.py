"""The hourly file that the reader opened: one, in memory, for as long as the page is open.

It is too long for a link: a form holds what it says of the place and the means of its months.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from calc.sun.files import HourlyFile

_KEPT: list[HourlyFile] = []  # at most one


def kept() -> HourlyFile | None:
    """The hours of the file that was opened last; None where none is open."""
    return _KEPT[0] if _KEPT else None


def keep(text: str) -> HourlyFile:
    """Read a file's text and keep its hours in place of those before.

    Raises InputError naming row and column; what was kept before then stays.
    """
    from calc.sun.files import read_hours  # only who opens a file waits for it

    _KEPT[:] = [read_hours(text)]
    return _KEPT[0]


def forget() -> None:
    """Keep no file any more."""
    _KEPT.clear()


def station(text: str) -> str:
    """What a file of TMY3 or EPW calls its place; "" for another file.

    text: the file's.  Source: NREL/TP-581-43156 (TMY3: number, name, state); EnergyPlus, Auxiliary
    Programs (EPW: "LOCATION", city, state).
    """
    first = text.lstrip("\ufeff").partition("\n")[0]
    found = re.match(r'(?:LOCATION|\d+),\s*(?:"([^"]*)"|([^",]*)),', first)
    return (found[1] or found[2] or "").strip() if found else ""
