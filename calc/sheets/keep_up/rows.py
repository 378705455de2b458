"""What the keep_up sheet asks by rows and by a few questions, and how far its numbers go."""

from calc.sheets.parts.fields import MOST_LIFT
from calc.sheets.parts.supply_tables import PIPES, RUNS, TANKS, TAPS

__all__ = [
    "HOUSE", "HOUSE_BENDS", "HOUSE_OUTLETS", "LIFT_M", "PIPES", "RUNS", "SET_PA", "SUCTION_M",
    "TANKS", "TAPS",
]  # fmt: skip

SET_PA, LIFT_M = (0.1e5, 16e5), (-50.0, MOST_LIFT)  # least and most that the form takes
SUCTION_M = (0.1, 200.0)  # the same of the suction pipe's length
LEVEL_M = (-300.0, 400.0)  # the same of the water that the line begins in, without a pump

HOUSE, HOUSE_BENDS = "house", 4  # of the few questions: the point at the far end; our choice
# name, kind, field that counts it; whether it opens only after
HOUSE_OUTLETS = (
    ("Showers", "shower", "showers", False),
    ("Sinks", "sink", "sinks", False),
    ("Hoses", "hose", "hoses", True),
)
