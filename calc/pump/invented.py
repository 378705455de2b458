"""Invented pumps, for examples only: no maker sells them.

Their curves are drawn to look like small solar pumps of today; use your own
pump's table for real work.
"""

from __future__ import annotations

from calc.pump.curve import DisplacementPump, Pump
from calc.pump.points import Point
from calc.units import LITRE, MINUTE

Rows = tuple[tuple[float, float, float, float], ...]

LPM = LITRE / MINUTE  # m3/s


def _centrifugal(name: str, rows: Rows) -> Pump:
    """Rows: flow L/min, head m, power drawn W, NPSH required m."""
    return Pump(name, tuple(_point(*row) for row in rows))


def _diaphragm(name: str, rows: Rows) -> DisplacementPump:
    return DisplacementPump(name, tuple(_point(*row) for row in rows))


def _point(flow: float, head: float, power: float, npsh: float) -> Point:
    return Point(flow=flow * LPM, head=head, power=power, npsh=npsh)


PUMPS = {
    "small": _centrifugal(
        "Invented small pump (about 450 W)",
        (
            (0, 38.0, 230, 1.6),
            (10, 37.2, 290, 1.7),
            (20, 35.5, 355, 1.9),
            (30, 32.4, 410, 2.2),
            (40, 27.5, 450, 2.7),
            (50, 20.5, 475, 3.5),
            (58, 13.0, 480, 4.3),
        ),
    ),
    "middle": _centrifugal(
        "Invented middle pump (about 900 W)",
        (
            (0, 56.0, 460, 1.7),
            (15, 55.2, 590, 1.8),
            (30, 53.0, 715, 2.0),
            (45, 49.0, 830, 2.4),
            (60, 42.8, 930, 2.9),
            (75, 34.0, 1000, 3.7),
            (90, 22.0, 1040, 4.8),
        ),
    ),
    "large": _centrifugal(
        "Invented large pump (about 1800 W)",
        (
            (0, 74.0, 880, 1.9),
            (25, 73.0, 1120, 2.0),
            (50, 70.0, 1380, 2.3),
            (75, 64.5, 1620, 2.8),
            (100, 56.0, 1830, 3.5),
            (125, 44.5, 2000, 4.4),
            (150, 29.5, 2110, 5.8),
        ),
    ),
    "diaphragm": _diaphragm(
        "Invented diaphragm pump (about 150 W)",
        (
            (8.0, 42.0, 165, 1.5),
            (10.5, 35.0, 158, 1.5),
            (12.2, 28.0, 146, 1.5),
            (13.6, 21.0, 128, 1.5),
            (14.8, 14.0, 104, 1.5),
            (15.9, 7.0, 76, 1.5),
            (17.0, 0.0, 45, 1.5),
        ),
    ),
}

# The invented small pump as a table, to show how a pasted one looks.
TABLE = """\
Flow L/min; Head m; Power W; NPSH m
0; 38.0; 230; 1.6
20; 35.5; 355; 1.9
40; 27.5; 450; 2.7
58; 13.0; 480; 4.3
"""
