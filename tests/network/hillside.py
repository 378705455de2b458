"""A made hillside for the tests of cures: three cabins, a cistern, one pump, ten outlets."""

from calc.network.outlets import CompensatingDripper, LimitedShower, Orifice, Outlet
from calc.network.parts import Device, Level, Network, Place, PumpSet, Reducer, Run
from calc.pipe import friction, pipes
from calc.pump import invented
from calc.units import HOUR, LITRE, MINUTE
from tests.network.every_cure import Hill

L = LITRE / MINUTE  # m3/s
BAR = 1e5  # Pa
PLACES = {
    "Pump inlet": 0.0, "Pump outlet": 0.0, "Lower fork": 5.0, "Upper fork": 11.5, "Cabin 1": 6.0,
    "Cabin 2": 12.0, "Cabin 3": 18.0, "Wash-house": 12.0, "Goat trough": 3.0, "Terrace head": 8.5,
    "Terrace filter": 8.5, "Herb terraces": 9.0,
}  # fmt: skip
BRANCH = {"teebranch": 1, "ball": 1}
RUNS = (
    ("Suction line", "Shallow well", "Pump inlet", "40", 7.0, {"foot": 1, "elbow90": 2}),
    ("Main line", "Pump outlet", "Lower fork", "40", 60.0, {"elbow90": 2}),
    ("Upper main", "Lower fork", "Upper fork", "32", 70.0, {"teerun": 1, "elbow45": 2}),
    ("To cabin 1", "Lower fork", "Cabin 1", "25", 20.0, BRANCH),
    ("To cabin 2", "Upper fork", "Cabin 2", "25", 35.0, BRANCH),
    ("To cabin 3", "Upper fork", "Cabin 3", "25", 80.0, {"teerun": 1, "ball": 1}),
    ("To the wash-house", "Upper fork", "Wash-house", "25", 25.0, BRANCH),
    ("To the trough", "Lower fork", "Goat trough", "20", 50.0, BRANCH),
    ("To the terraces", "Lower fork", "Terrace head", "25", 40.0, BRANCH),
    ("Cistern line", "Cistern", "Upper fork", "32", 45.0, {"entrance": 1, "ball": 1}),
)
KNOLL = Hill("Knoll", "Cabin 3", 32.0, 60.0, pipes.pipe("pe100-sdr11", "32"))


def network():
    """The supply with the three showers open, in SI."""
    return Network(
        tuple(Place(name, height) for name, height in PLACES.items()),
        (Level("Shallow well", -4.0), Level("Cistern", 24.0)),
        (*(_run(*row) for row in RUNS), *_others()),
        tuple(_outlets()),
        285.15,
        300.0,
    )


def _run(name, start, end, size, length, fittings):
    pipe = pipes.pipe("pe100-sdr11", size)
    k = sum(n * friction.fitting_coefficient(friction.BY_KEY[f], pipe.inside_m)
            for f, n in fittings.items())  # fmt: skip
    return Run(name, start, end, pipe, length, k, check=name == "Cistern line")


def _others():
    yield Device("Filter", "Terrace head", "Terrace filter", 20 * L, 2.0)
    yield Reducer("Reducer", "Terrace filter", "Herb terraces", 1.4 * BAR, 20 * L, 3.0)
    pump = invented.PUMPS["middle"]
    yield PumpSet("House pump", "Pump inlet", "Pump outlet", pump, 3.6 * BAR)


def _outlets():
    for cabin in ("Cabin 1", "Cabin 2", "Cabin 3"):
        shower = LimitedShower(12 * L, 1.5 * BAR, 9 * L)
        yield Outlet(f"{cabin} shower", cabin, shower, wanted_pa=1.0 * BAR)
        yield Outlet(f"{cabin} tap", cabin, Orifice(8 * L, 1.0 * BAR), open=False)
    yield Outlet("Wash-house tap", "Wash-house", Orifice(12 * L, 1.0 * BAR), open=False)
    yield Outlet("Wash-house hose", "Wash-house", Orifice(18 * L, 1.0 * BAR), open=False)
    yield Outlet("Trough valve", "Goat trough", Orifice(6 * L, 0.5 * BAR), open=False)
    drip = CompensatingDripper(2 * LITRE / HOUR, 1.0 * BAR, 4.0 * BAR)
    yield Outlet("Herb drip", "Herb terraces", drip, 300, open=False)
