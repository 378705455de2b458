"""The tables of the day: tanks, when outlets are open, the outlets themselves."""

from dataclasses import replace

from calc.page.fields import Count, Number, Rows, Text, Unknown
from calc.sheets.parts.supply_tables import NAME, TAPS

STORES = Rows(
    "stores",
    "Tanks",
    (
        Text("name", "Tank", "", longest=NAME),
        Number("up", "Full level above pump", "length", "30 m", "100 ft", -300.0, 400.0),
        Number("deep", "Depth of water when full", "length", "1.5 m", "5 ft", 0.05, 30.0,
               unknown=Unknown("1.5 m", "5 ft", "usual for a small tank; our choice")),
        Number("volume", "Volume", "volume", "1000 L", "260 gal", 0.01, 1e4),
    ),
    metric=(),
    us=(),
    row="tank",
    least=0,
    most=4,
    help="An open tank with a float valve: begin or end a pipe section at its name",
)  # fmt: skip
OUTLETS = replace(
    TAPS, columns=tuple(one for one in TAPS.columns if one.key not in ("now", "then"))
)
DRAWS = Rows(
    "draws",
    "When outlets are open",
    (
        Text("tap", "Outlet", "", longest=NAME),
        Number("from", "Opens at", "number", "7", "7", 0.0, 24.0),
        Number("hours", "Open for (hours)", "number", "1", "1", 0.01, 24.0),
        Count("open", "How many", 1, 0, 50),
    ),
    metric=(("Shower", "7"),),
    us=(("Shower", "7"),),
    row="time of use",
    least=0,
    help="By the clock: 18.5 is half past six in the evening; past midnight counts on",
)
