"""The figures, working and tables of where panels stand."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import TYPE_CHECKING

from calc.page import row_text
from calc.page.answer import Column, Figure, Step, Table, Value
from calc.sheets.panel_place.case import monthly
from calc.units import MONTHS

if TYPE_CHECKING:
    from calc.page.answer import Cells
    from calc.page.form import Values
    from calc.sheets.panel_place.case import Case

TILTS = (0, 15, 30, 45, 60, 75, 90)  # degrees
TURNS = ((-90, "a quarter turn east"), (-45, "an eighth turn east"), (0, "the midday sun"),
         (45, "an eighth turn west"), (90, "a quarter turn west"))  # fmt: skip


def skyline_text(values: Values) -> str:
    """The table of the skyline as a link's text."""
    return row_text.encode(
        (f"{math.degrees(row.from_north):.6g}°", f"{math.degrees(row.high):.6g}°")
        for row in values.skyline
    )


def figures(case: Case) -> tuple[Figure, ...]:
    """Key figures."""
    return (
        Figure("On the panels, as they are needed", case.worth(case.daily), "irradiation",
               main=True),
        Figure("Taken by what stands before the sun", case.hidden, "percent"),
        Figure("Lost by tilt and facing", case.turned, "percent"),
        Figure("Best tilt for what is needed", case.best.slope, "angle", 2),
        Figure("Least month on the panels", min(case.daily), "irradiation"),
    )  # fmt: skip


def steps(case: Case) -> tuple[Step, ...]:
    """The working, in words and shares."""
    now, free, best = (case.worth(one) for one in (case.daily, case.open, case.ideal))
    return (
        Step(
            "Light on the panels",
            note="The place’s months become a year of days with the same means, and the days "
            "hours. In each hour the sun’s beam falls on the panels by its angle; the sky’s light "
            "by how much sky they see, more of it about the sun; the ground throws some back.",
            result=Value(free, "irradiation"),
            source="Spencer (1971); Hay and Davies (1980); without what stands before the sun",
        ),
        Step(
            "Share hidden",
            "s = 1 - H / H_open",
            {"H": Value(now, "irradiation"), "H_open": Value(free, "irradiation")},
            Value(case.hidden, "percent"),
            note="Where the sun stands below the skyline its beam counts for nothing, and so does "
            "that part of the sky.",
        ),
        Step(
            "Share lost by tilt and facing",
            "s = max(0, 1 - H_open / H_best)",
            {"H_open": Value(free, "irradiation"), "H_best": Value(best, "irradiation")},
            Value(case.turned, "percent"),
            note="The best tilt is found on the mean day of each month, facing the midday sun.",
            source="S. A. Klein, Solar Energy 19 (1977)",
        ),
    )


def tables(case: Case) -> tuple[Table, ...]:
    """Month by month; tilts; facings."""
    return (_months(case), _tilts(case), _facings(case))


def _months(case: Case) -> Table:
    rows: tuple[Cells, ...] = tuple(
        (name, level, now, free)
        for name, level, now, free in zip(
            MONTHS, case.place.sun, case.daily, case.ideal, strict=True
        )
    )
    columns = (Column("Month"), Column("Level ground", "irradiation"),
               Column("These panels", "irradiation"),
               Column("Best tilt, open sky", "irradiation"))  # fmt: skip
    return Table("Light on a mean day", columns, rows)


def _tilts(case: Case) -> Table:
    rows: list[Cells] = []
    for degrees in TILTS:
        daily = monthly(case.place, replace(case.stand, slope=math.radians(degrees)))
        rows.append((f"{degrees}°", case.worth(daily), min(daily), sum(daily) / 12))
    columns = (Column("Tilt, facing as now"), Column("As needed", "irradiation"),
               Column("Least month", "irradiation"), Column("Year", "irradiation"))  # fmt: skip
    return Table("Other tilts", columns, tuple(rows))


def _facings(case: Case) -> Table:
    rows: list[Cells] = []
    side = 1 if case.equator > 1 else -1  # in the south east lies to the right of the sun
    for turn, name in TURNS:
        azimuth = (case.equator + side * math.radians(turn)) % (2 * math.pi)
        daily = monthly(case.place, replace(case.stand, azimuth=azimuth))
        rows.append((name, case.worth(daily), min(daily), sum(daily) / 12))
    columns = (Column("Facing, tilt as now"), Column("As needed", "irradiation"),
               Column("Least month", "irradiation"), Column("Year", "irradiation"))  # fmt: skip
    return Table("Other facings", columns, tuple(rows))
