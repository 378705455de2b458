"""Alder Terrace, the invented site of the guides: three cabins, a wash-house, goats and herbs."""

from calc.site.rows import (
    DeviceRow,
    HillRow,
    OutletRow,
    PlaceRow,
    PumpRow,
    ReducerRow,
    RunRow,
    WaterRow,
)
from calc.site.site import Site
from calc.units import HOUR, LITRE, MINUTE

L = LITRE / MINUTE  # m3/s
BAR = 1e5  # Pa
PE = "pe100-sdr11"
_FOOT = (("foot", 1), ("elbow90", 2))
_ALONG = (("teerun", 1), ("elbow45", 2))
_TANK = (("entrance", 1), ("ball", 1))
_BRANCH = (("teebranch", 1), ("ball", 1))
_SHOWER = ("shower", 12 * L, 1.5 * BAR, 9 * L)  # 9 L/min from 0.84 bar up: invented
_TAP = ("tap", 8 * L, 1.0 * BAR)  # invented

PLACES = (
    ("Pump inlet", 0.0), ("Pump outlet", 0.0), ("Lower fork", 5.0), ("Upper fork", 11.5),
    ("Cabin 1", 6.0), ("Cabin 2", 12.0), ("Cabin 3", 18.0), ("Wash-house", 12.0),
    ("Goat trough", 3.0), ("Terrace head", 8.5), ("Terrace filter", 8.5), ("Herb terraces", 9.0),
)  # fmt: skip
RUNS = (
    RunRow("Suction line", "Shallow well", "Pump inlet", PE, "40", 7.0, _FOOT),
    RunRow("Main line", "Pump outlet", "Lower fork", PE, "40", 60.0, (("elbow90", 2),)),
    RunRow("Upper main", "Lower fork", "Upper fork", PE, "32", 70.0, _ALONG),
    RunRow("To cabin 1", "Lower fork", "Cabin 1", PE, "25", 20.0, _BRANCH),
    RunRow("To cabin 2", "Upper fork", "Cabin 2", PE, "25", 35.0, _BRANCH),
    RunRow("To cabin 3", "Upper fork", "Cabin 3", PE, "25", 80.0, (("teerun", 1), ("ball", 1))),
    RunRow("To the wash-house", "Upper fork", "Wash-house", PE, "25", 25.0, _BRANCH),
    RunRow("To the trough", "Lower fork", "Goat trough", PE, "20", 50.0, _BRANCH),
    RunRow("To the terraces", "Lower fork", "Terrace head", PE, "25", 40.0, _BRANCH),
    RunRow("Cistern line", "Cistern", "Upper fork", PE, "32", 45.0, _TANK, True),
)  # fmt: skip
OUTLETS = (
    OutletRow("Cabin 1 shower", "Cabin 1", *_SHOWER, wanted=1.0 * BAR),
    OutletRow("Cabin 1 tap", "Cabin 1", *_TAP, open=False),
    OutletRow("Cabin 2 shower", "Cabin 2", *_SHOWER, wanted=1.0 * BAR),
    OutletRow("Cabin 2 tap", "Cabin 2", *_TAP, open=False),
    OutletRow("Cabin 3 shower", "Cabin 3", *_SHOWER, wanted=1.0 * BAR),
    OutletRow("Cabin 3 tap", "Cabin 3", *_TAP, open=False),
    OutletRow("Wash-house tap", "Wash-house", "tap", 12 * L, 1.0 * BAR, open=False),
    OutletRow("Wash-house hose", "Wash-house", "hose", 18 * L, 1.0 * BAR, open=False),
    OutletRow("Trough valve", "Goat trough", "tap", 6 * L, 0.5 * BAR, open=False),
    OutletRow(
        "Herb drip", "Herb terraces", "dripper", 2 * LITRE / HOUR, 1.0 * BAR,
        most=4.0 * BAR, count=300, open=False,
    ),
)  # fmt: skip
NOTE = "An invented site; its pump is invented too. Levels are above the floor of the pump house."


def alder_terrace():
    """The invented site.  Returns a ``Site``.  Raises nothing.  Source: invented."""
    return Site(
        "Alder Terrace",
        places=tuple(PlaceRow(name, height) for name, height in PLACES),
        waters=(
            WaterRow("Shallow well", "well", -4.0),
            WaterRow("Cistern", "cistern", 24.0),
        ),
        runs=RUNS,
        devices=(DeviceRow("Filter", "Terrace head", "Terrace filter", "filter", 20 * L, 2.0),),
        reducers=(
            ReducerRow("Reducer", "Terrace filter", "Herb terraces", 1.4 * BAR, 20 * L, 3.0),
        ),
        pumps=(PumpRow("House pump", "Pump inlet", "Pump outlet", "middle", set=3.6 * BAR),),
        outlets=OUTLETS,
        hills=(HillRow("Knoll", "Cabin 3", 32.0, 60.0, PE, "32"),),
        temperature_k=285.15,
        altitude_m=300.0,
        note=NOTE,
    )
