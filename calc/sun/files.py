"""An hourly file of a year, as text: TMY3 and EPW, or a table with such columns.

Nothing is guessed: a gap, a missing column, a leap year or a word among the numbers is said with
its row, counted as an editor counts lines, and its column.
"""

from __future__ import annotations

import math
import re
from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc.errors import InputError
from calc.sun.days import MONTH_DAYS
from calc.sun.hours import HOURS
from calc.units import CELSIUS

if TYPE_CHECKING:
    from collections.abc import Sequence

GIVEN = "text"  # the argument of ``read_hours``, whose fault a row's fault is
MOST_LIGHT = 1600.0  # W/m2 on level ground, above which a number is a fault; our choice
COLDEST, WARMEST = -90.0, 65.0  # degrees C, outside which a number is a fault; our choice
EPW_HEADING = 8  # lines before the data of an EPW file
# Columns of an EPW file from 0: EnergyPlus, Auxiliary Programs, weather file format
EPW_COLUMNS = {"month": 1, "day": 2, "hour": 3, "air": 6, "level": 13, "beam": 14, "diffuse": 15}
NEEDED = {
    "month": "month", "day": "day", "hour": "hour", "level": "global horizontal",
    "beam": "direct normal", "diffuse": "diffuse horizontal", "air": "air temperature",
}  # fmt: skip
# What a heading may say for each column, its unit in brackets left off
HEADINGS = {
    "date": ("date",),
    "time": ("time",),
    "month": ("month",),
    "day": ("day",),
    "hour": ("hour",),
    "level": ("ghi", "global horizontal", "global horizontal radiation"),
    "beam": ("dni", "direct normal", "direct normal radiation"),
    "diffuse": ("dhi", "diffuse horizontal", "diffuse horizontal radiation"),
    "air": ("t", "dry-bulb", "dry bulb", "dry bulb temperature", "air temperature"),
}


@dataclass(frozen=True)
class HourlyFile:
    """A year of hours; each row is the hour that ends at its time, in local standard time.

    ``latitude``, ``longitude``: rad; ``zone``: hours ahead of UTC; ``altitude``: m (None: the
    file does not say); ``level``, ``beam``, ``diffuse``: W/m2 on level ground, on a plane facing
    the sun, on level ground; ``air``: K.  8,760 numbers each.
    """

    latitude: float | None
    longitude: float | None
    zone: float | None
    altitude: float | None
    level: tuple[float, ...]
    beam: tuple[float, ...]
    diffuse: tuple[float, ...]
    air: tuple[float, ...]


def _wrong(row: int, words: str) -> InputError:
    return InputError(f"Row {row}: {words}", name=GIVEN)


def read_hours(text: str) -> HourlyFile:
    """The hourly year in a file's text.

    text: a TMY3 file (a line of the station, a heading, 8,760 rows), an EPW file (eight lines,
    8,760 rows), or a heading with month, day, hour, ghi, dni, dhi, t and 8,760 rows, which may
    begin with lines that start with ``#``.  Cells stand between commas.
    Returns ``HourlyFile``.  Raises InputError naming row and column.
    Source: NREL/TP-581-43156 (TMY3); EnergyPlus, Auxiliary Programs (EPW).
    """
    lines = [(at, line) for at, line in enumerate(text.lstrip("\ufeff").splitlines(), 1)]
    lines = [(at, line) for at, line in lines if line.strip() and not line.startswith("#")]
    if not lines:
        raise InputError("The file is empty.", name="text")
    if lines[0][1].upper().startswith("LOCATION,"):
        return _read(lines[EPW_HEADING:], EPW_COLUMNS, _place(lines[0], slice(6, 10)))
    place: Sequence[float | None] = (None,) * 4
    columns = _columns(lines[0])
    if not columns and len(lines) > 1:
        columns = _columns(lines[1])
        if columns:
            zone, latitude, longitude, altitude = _place(lines[0], slice(-4, None))
            place = (latitude, longitude, zone, altitude)
            lines = lines[1:]
    if not columns:
        raise _wrong(
            lines[0][0],
            "no heading of a TMY3 or EPW file is here. Its columns must have commas between them.",
        )
    return _read(lines[1:], _complete(columns, lines[0][0]), place)


def _place(line: tuple[int, str], where: slice) -> Sequence[float]:
    """Four numbers of a station's line, two of them angles in degrees."""
    cells = line[1].split(",")[where]
    if len(cells) < 4:
        raise _wrong(line[0], "the station's latitude, longitude, time zone or height is missing.")
    return [_number(cell, line[0], "the station's line") for cell in cells]


def _columns(line: tuple[int, str]) -> dict[str, int]:
    """Where each known column stands; empty where the line is no heading."""
    cells = [re.sub(r"[(\[].*", "", cell).strip(' "').lower() for cell in line[1].split(",")]
    found: dict[str, int] = {}
    for key, names in HEADINGS.items():
        places = [at for at, cell in enumerate(cells) if cell in names]
        if len(places) > 1:
            raise _wrong(line[0], f"the column {cells[places[0]]!r} is there twice.")
        if places:
            found[key] = places[0]
    return found if len(found) > 2 else {}


def _complete(columns: dict[str, int], row: int) -> dict[str, int]:
    dated = "date" in columns and "time" in columns
    for key, name in NEEDED.items():
        if key not in columns and not (dated and key in ("month", "day", "hour")):
            told = f" ({HEADINGS[key][0].upper()})" if key in ("level", "beam", "diffuse") else ""
            raise _wrong(row, f"the column of the {name}{told} is missing.")
    return columns


def _number(cell: str, row: int, column: str) -> float:
    try:
        value = float(cell.strip(' "'))
    except ValueError:
        value = math.nan
    if math.isfinite(value):
        return value
    said = f"{cell.strip()!r} is not a number" if cell.strip() else "the cell is empty"
    raise _wrong(row, f"{said} ({column}).")


def _when(cells: Sequence[str], columns: dict[str, int], row: int) -> tuple[int, int, int]:
    """Month, day and hour (1 to 24) of a row."""
    if "month" in columns:
        found = [_number(cells[columns[key]], row, key) for key in ("month", "day", "hour")]
        if any(one % 1 for one in found):
            raise _wrong(row, "month, day and hour must be whole numbers.")
        return int(found[0]), int(found[1]), int(found[2])
    date = re.fullmatch(r"(\d\d?)/(\d\d?)/\d{4}", cells[columns["date"]].strip())
    time = re.fullmatch(r"(\d\d?):(\d\d)", cells[columns["time"]].strip())
    if not date or not time or time[2] != "00":
        raise _wrong(row, "the date must read month/day/year and the time a whole hour.")
    return int(date[1]), int(date[2]), int(time[1])


def _expected() -> list[tuple[int, int, int]]:
    return [
        (month + 1, day + 1, hour + 1)
        for month, days in enumerate(MONTH_DAYS)
        for day in range(days)
        for hour in range(24)
    ]


def _check_when(found: tuple[int, int, int], wanted: tuple[int, int, int], row: int) -> None:
    if found != wanted:
        if found[:2] == (2, 29):
            raise _wrong(row, "29 February is here: take a year of 365 days (8,760 rows).")
        month, day, hour = wanted
        raise _wrong(
            row,
            f"a gap: month {month}, day {day}, hour {hour} must be here; the row is of month "
            f"{found[0]}, day {found[1]}, hour {found[2]}.",
        )


def _read(
    lines: Sequence[tuple[int, str]], columns: dict[str, int], place: Sequence[float | None]
) -> HourlyFile:
    last, wide = lines[-1][0] if lines else 1, max(columns.values())
    lists: dict[str, list[float]] = {"level": [], "beam": [], "diffuse": [], "air": []}
    limits = dict.fromkeys(lists, (0.0, MOST_LIGHT)) | {"air": (COLDEST, WARMEST)}
    for (row, line), wanted in zip(lines, _expected(), strict=False):
        cells = line.split(",")
        if len(cells) <= wide:
            raise _wrong(row, f"it has {len(cells)} cells; at least {wide + 1} are needed.")
        _check_when(_when(cells, columns, row), wanted, row)
        for key, kept in lists.items():
            value = _number(cells[columns[key]], row, NEEDED[key])
            low, high = limits[key]
            if not low <= value <= high:
                raise _wrong(
                    row,
                    f"{value:g} cannot be the {NEEDED[key]}; {low:g} to {high:g} can (a number "
                    "such as 9999 stands for one that is missing).",
                )
            kept.append(value)
    if len(lines) != HOURS:
        leap = " That is a leap year: leave out 29 February." if len(lines) == HOURS + 24 else ""
        raise _wrong(last, f"the file ends here with {len(lines):,} hours; a year has 8,760.{leap}")
    air = tuple(one + CELSIUS for one in lists["air"])
    latitude, longitude, zone, altitude = place
    return HourlyFile(
        None if latitude is None else math.radians(latitude),
        None if longitude is None else math.radians(longitude),
        zone, altitude,
        tuple(lists["level"]), tuple(lists["beam"]), tuple(lists["diffuse"]), air,
    )  # fmt: skip
