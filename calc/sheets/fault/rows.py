"""What the fault sheet asks of readings: tables of gauges and buckets, and what was noticed."""

from calc.page.fields import Choice, Number, Rows, Text
from calc.sheets.parts.supply_tables import NAME

NONE, ONE, BEFORE, AFTER = "none", "one", "before", "after"
OPEN = (
    (NONE, "Everything closed"),
    (ONE, "Only the outlet named"),
    (BEFORE, "Those open before"),
    (AFTER, "Those open after"),
)
GAUGE_PA = (0.0, 40e5)  # Pa, least and most that the form takes

GAUGES = Rows(
    "gauges",
    "Pressure readings",
    (
        Text("at", "At point", "pump", longest=NAME, points=True),
        Number("got", "Pressure read", "pressure", "3.5 bar", "50 psi", *GAUGE_PA),
        Choice("open", "Outlets open", OPEN, NONE),
        Text("tap", "Outlet named", "", longest=NAME),
        Number("error", "Read to within", "pressure", "", "", 1e3, 5e5, optional=True),
    ),
    metric=(("pump", "3.5 bar"), ("house", "3.3 bar", AFTER)),
    us=(("pump", "50 psi"), ("house", "47 psi", AFTER)),
    row="reading",
    least=0,
    most=20,
    rare=("error",),
    help="At the pump, and at an outlet by a gauge on a hose thread. All closed: static",
)
BUCKETS = Rows(
    "buckets",
    "Buckets filled",
    (
        Text("tap", "Outlet", "", longest=NAME),
        Number("volume", "Volume", "volume", "10 L", "2.5 gal", 1e-5, 10.0),
        Number("time", "Time it took", "time", "60 s", "60 s", 1.0, 86400.0),
        Choice("open", "Outlets open", OPEN[1:], ONE),
        Number("error", "Known to within", "percent", "", "", 0.005, 0.5, optional=True),
    ),
    metric=(),
    us=(),
    row="bucket",
    least=0,
    most=20,
    rare=("error",),
    help="Fully open, into a bucket of a known size, by a watch",
)

# key of the field, key of ``fault_kinds.SYMPTOMS``, label
SIGNS = (
    ("weakall", "weak_all", "Weak everywhere"),
    ("weakone", "weak_one", "Weak at one outlet"),
    ("cycling", "cycling", "Pump starts often"),
    ("prime", "prime", "Pump loses its prime"),
    ("bangs", "bangs", "Pipes bang"),
    ("noon", "noon", "No water at noon"),
    ("night", "night", "Pump runs at night, all closed"),
    ("spits", "air", "Outlets spit air"),
)
