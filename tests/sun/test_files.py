"""Hourly files: three layouts read, and every fault said with its row and column."""

import math

import pytest

from calc.errors import InputError
from calc.sun import files
from calc.sun.days import MONTH_DAYS, monthly_means
from tests.sun.years import hourly, text

STAMPS = [
    (month + 1, day + 1, hour + 1)
    for month, count in enumerate(MONTH_DAYS)
    for day in range(count)
    for hour in range(24)
]
PLAIN = "month,day,hour,ghi,dni,dhi,t"
TMY_HEAD = (
    "Date (MM/DD/YYYY),Time (HH:MM),ETR (W/m^2),GHI (W/m^2),GHI source,DNI (W/m^2),DHI (W/m^2),"
    "Dry-bulb (C)"
)


def plain(rows=None):
    """A file of the plain layout as a list of lines; the first row of numbers is line 2."""
    made = [f"{m},{d},{h},{100 + h},{h},{h + 1},{h - 5}" for m, d, h in STAMPS]
    return [PLAIN, *(made if rows is None else rows)]


def tmy3():
    station = '700001,"NOWHERE [TEST]",XX,-7.0,31.770,-106.500,1186'
    rows = [
        f"{m:02}/{d:02}/1999,{h:02}:00,0,{100 + h},1,{h},{h + 1},{h - 5}.0" for m, d, h in STAMPS
    ]
    return [station, TMY_HEAD, *rows]


def epw():
    head = ["LOCATION,Nowhere,-,-,TEST,000000,31.77,-106.5,-7.0,1186.0", *["OTHER,0"] * 7]
    rows = [
        f"1999,{m},{d},{h},0,?,{h - 5}.0,0,0,0,0,0,0,{100 + h},{h},{h + 1},0,0"
        for m, d, h in STAMPS
    ]
    return [*head, *rows]


def read(lines):
    return files.read_hours("\n".join(lines))


@pytest.mark.parametrize("lines", [plain(), tmy3(), epw()], ids=["plain", "tmy3", "epw"])
def test_a_layout_is_read(lines):
    found = read(lines)
    assert len(found.level) == len(found.beam) == len(found.diffuse) == len(found.air) == 8760
    assert (found.level[23], found.beam[23], found.diffuse[23]) == (124.0, 24.0, 25.0)
    assert found.air[0] == pytest.approx(269.15)


@pytest.mark.parametrize("lines", [tmy3(), epw()], ids=["tmy3", "epw"])
def test_the_station_is_read(lines):
    found = read(lines)
    assert math.degrees(found.latitude) == pytest.approx(31.77)
    assert math.degrees(found.longitude) == pytest.approx(-106.5)
    assert (found.zone, found.altitude) == (-7.0, 1186.0)


def test_the_same_year_reads_the_same_with_windows_line_ends_and_a_mark_at_its_start():
    assert files.read_hours("\ufeff" + text("tucson").replace("\n", "\r\n")) == hourly("tucson")


def test_a_months_mean_is_of_its_days():
    found = monthly_means([1000.0] * 8760)
    assert found == pytest.approx([24 * 3.6e6] * 12)


def without(lines, at):
    return lines[:at] + lines[at + 1 :]


def changed(lines, at, cell, value):
    cells = lines[at].split(",")
    cells[cell] = value
    return [*lines[:at], ",".join(cells), *lines[at + 1 :]]


PLAIN_ROWS = plain()[1:]
LEAP = [*PLAIN_ROWS[: 24 * 59], *["2,29,1,0,0,0,0"] * 24, *PLAIN_ROWS[24 * 59 :]]

FAULTS = [
    (without(plain(), 100), r"Row 101: a gap: month 1, day 5, hour 4 must be here"),
    (without(tmy3(), 100), r"Row 101: a gap: month 1, day 5, hour 3 must be here"),
    (plain()[:-1], r"Row 8760: the file ends here with 8,759 hours"),
    (plain(LEAP), r"Row 1418: 29 February is here"),
    ([*plain(), *["12,31,24,0,0,0,0"] * 24], r"8,784 hours.*leap year"),
    (["month,day,hour,ghi,dhi,t", "1,1,1,0,0,0"], r"Row 1: .*direct normal \(DNI\) is missing"),
    (["month,day,hour,ghi,dni,dhi", "1,1,1,0,0,0"], r"Row 1: .*air temperature is missing"),
    (["date,ghi,dni,dhi,t", "01/01/1999,0,0,0,0"], r"Row 1: the column of the month is missing"),
    (["ghi,ghi,month,day,hour,dni,dhi,t", "0"], r"Row 1: the column 'ghi' is there twice"),
    (changed(plain(), 5, 4, "x"), r"Row 6: 'x' is not a number \(direct normal\)"),
    (changed(plain(), 5, 3, ""), r"Row 6: the cell is empty \(global horizontal\)"),
    (changed(plain(), 5, 3, "nan"), r"Row 6: 'nan' is not a number"),
    (changed(epw(), 8, 13, "9999"), r"Row 9: 9999 cannot be the global horizontal"),
    (changed(epw(), 8, 6, "99.9"), r"Row 9: 99.9 cannot be the air temperature"),
    (changed(plain(), 5, 5, "-3"), r"Row 6: -3 cannot be the diffuse horizontal"),
    (changed(plain(), 5, 2, "4.5"), r"Row 6: month, day and hour must be whole"),
    ([*plain()[:5], "1,1,5", *plain()[6:]], r"Row 6: it has 3 cells"),
    (changed(tmy3(), 7, 0, "1999-01-01"), r"Row 8: the date must read"),
    (changed(tmy3(), 7, 1, "06:30"), r"Row 8: the date must read"),
    (changed(epw(), 0, 6, "north"), r"Row 1: 'north' is not a number"),
    (["LOCATION,Nowhere"], r"Row 1: the station's latitude"),
    (epw()[:8], r"0 hours"),
    (["a;b;c", "1;2;3"], r"Row 1: no heading of a TMY3 or EPW file"),
    ([""], r"The file is empty"),
]


@pytest.mark.parametrize("lines, words", FAULTS, ids=[words[:40] for _, words in FAULTS])
def test_a_fault_is_said_with_its_row(lines, words):
    with pytest.raises(InputError, match=words) as caught:
        read(lines)
    assert caught.value.name == "text"
