"""Water that runs down by its own weight: closed forms, a solution written anew, and limits."""

import math
import random
from dataclasses import replace

import pytest
from scipy.optimize import brentq, fsolve

from calc import practice
from calc.errors import InputError, InputErrors
from calc.network.parts import Level, Network, Place, PumpSet, Reducer, Run
from calc.network.solve import solve
from calc.network.state import SEEPING
from calc.network.static import highest_pressures
from calc.pipe import fittings, pipes
from calc.pump.invented import PUMPS
from calc.site.supply import OutletRow, SectionRow, Supply, TankRow
from calc.site.supply_rows import OpenWater
from calc.water import density, kinematic_viscosity
from tests.network.test_one_pipe import GRAVITY, LPM, loss_by_fluids

KELVIN = 288.15
WEIGHT, NU = density(KELVIN) * GRAVITY, kinematic_viscosity(KELVIN)
# the two Colebrook solvers and the bends' f_T agree to about 1e-9 of the loss; where nearly all
# head is lost the flow keeps half of that
CLOSE = 1e-7
SIZES = ("25", "32", "40", "50")
PARTS = ("none", "none", "none", "filter", "check", "r10", "r30", "r50", "break")


def pipe(size):
    return pipes.pipe("pe100-sdr11", size)


def water(level, **more):
    return OpenWater(level_m=level, temperature_k=KELVIN, altitude_m=0.0, **more)


def jet(name, at, flow=20 * LPM, rated=1e5, count=1):
    """An opening: its flow goes with the root of its pressure."""
    return OutletRow(name, at, "opening", count, count, flow, rated)


def solved(supply):
    built = supply.built()
    return built.solve(built.after)


def one_pipe(level, row, outlet):
    return Supply(water(level), (row,), (outlet,))


# Closed forms -------------------------------------------------------------------------------------


def runs(drop, row, outlet):
    """m3/s through one pipe to one opening, by ``fluids``: what is left drives the opening."""

    def spare(flow):
        left = WEIGHT * (drop - loss_by_fluids(row, flow, NU))
        return left - outlet.rated_pa * (flow / outlet.flow_m3s) ** 2

    return brentq(spare, 1e-9, 1.0, xtol=1e-16, rtol=1e-15)


@pytest.mark.parametrize("seed", range(40))
def test_one_pipe_brings_what_darcy_and_colebrook_say(seed):
    dice = random.Random(seed)
    drop, low = dice.uniform(2, 90), dice.uniform(-60, 5)
    long = dice.uniform(max(20.0, drop), 1500)
    row = SectionRow("pump", "house", long, low, pipe(dice.choice(SIZES)), dice.randint(0, 6))
    outlet = jet("jet", "house", dice.uniform(2, 60) * LPM, dice.uniform(0.3e5, 3e5))
    found = solved(one_pipe(low + drop, row, outlet))
    flow = runs(drop, row, outlet)
    assert found.draws["jet"] == pytest.approx(flow, rel=CLOSE)
    left = WEIGHT * (drop - loss_by_fluids(row, flow, NU))
    assert found.pressure("house") == pytest.approx(left, rel=1e-6, abs=1.0)
    assert found.supplied["source"] == pytest.approx(flow, rel=CLOSE)


@pytest.mark.parametrize("seed", range(30))
def test_two_branches_share_as_a_solution_written_anew_says(seed):
    dice = random.Random(seed)
    level = dice.uniform(10, 70)
    rows = [
        SectionRow("source", "fork", dice.uniform(50, 600), 0.0, pipe("50"), 3),
        SectionRow("fork", "low", dice.uniform(20, 200), dice.uniform(-15, 0), pipe("32"), 2),
        SectionRow("fork", "high", dice.uniform(20, 200), dice.uniform(0, 5), pipe("25"), 4),
    ]
    outlets = [jet("a", "low", dice.uniform(5, 40) * LPM), jet("b", "high", 12 * LPM, 1.5e5)]
    found = solved(Supply(water(level), tuple(rows), tuple(outlets)))

    def over(flows):
        both = [abs(flow) for flow in flows]
        fork = level - loss_by_fluids(rows[0], sum(both), NU)
        return [
            WEIGHT * (fork - loss_by_fluids(row, flow, NU) - row.height_m) / 1e5
            - one.rated_pa / 1e5 * (flow / one.flow_m3s) ** 2
            for row, one, flow in zip(rows[1:], outlets, both, strict=True)
        ]

    begin = [found.draws["a"] * 0.7, found.draws["b"] * 1.3]
    flows, _, done, _ = fsolve(over, begin, xtol=1e-13, full_output=True)
    assert done == 1 or max(map(abs, over(flows))) < 1e-9
    assert [found.draws["a"], found.draws["b"]] == pytest.approx(flows, rel=CLOSE)


# Break-pressure tanks -----------------------------------------------------------------------------


def two_falls(level=60.0, at=25.0, size="40"):
    upper = SectionRow("source", "tank", 300.0, at, pipe(size), 2, "break")
    lower = SectionRow("tank", "house", 200.0, -10.0, pipe("32"), 2)
    return Supply(water(level), (upper, lower), (jet("jet", "house"),))


def test_a_break_pressure_tank_parts_the_line_in_two_falls():
    found = solved(two_falls())
    lower = two_falls().sections[1]
    flow = runs(35.0, lower, jet("jet", "house"))  # from the tank's own water down
    assert found.draws["jet"] == pytest.approx(flow, rel=CLOSE)
    assert found.pressure("tank") == pytest.approx(0.0, abs=1e-3)
    # the upper fall ends before its float valve, which takes whatever is left
    before = next(p.name for p in found.network.places if p.name.startswith("tank, before"))
    left = WEIGHT * (35.0 - loss_by_fluids(two_falls().sections[0], flow, NU))
    assert found.pressure(before) == pytest.approx(left, rel=1e-6)


def test_below_it_nothing_is_felt_of_the_source():
    low, high = (solved(two_falls(level)) for level in (50.0, 150.0))
    assert low.draws["jet"] == pytest.approx(high.draws["jet"], rel=1e-9)
    static = highest_pressures(solved(two_falls(150.0)).network)
    assert static["house"] == pytest.approx(35 * WEIGHT, rel=1e-12)


def test_a_float_valve_that_fails_puts_no_pressure_behind_its_tank_and_a_reducer_does():
    supply = two_falls(150.0)
    failed = highest_pressures(solved(supply).network, controlled=False)
    assert failed["house"] == pytest.approx(35 * WEIGHT, rel=1e-12)
    valve = replace(supply.sections[0], part="r10")
    failed = highest_pressures(
        solved(replace(supply, sections=(valve, supply.sections[1]))).network, controlled=False
    )
    assert failed["house"] == pytest.approx(160 * WEIGHT, rel=1e-12)


def test_the_upper_fall_with_its_float_valve_wide_open_brings_its_closed_form():
    """An opening far too large below: the tank would be sucked empty, and says so."""
    supply = two_falls(40.0, 25.0, "25")
    supply = replace(supply, outlets=(jet("jet", "house", 200 * LPM),))
    found = solved(supply)
    assert found.pressure("tank") < -1e3
    part = fittings.BY_KEY["break"].reducer
    assert part == (0.0, practice.FLOAT_FLOW, practice.FLOAT_LOSS)
    loss = found.loss("the break-pressure tank from source to tank")
    flow = found.draws["jet"]
    assert loss == pytest.approx(part[2] * (flow / part[1]) ** 2, rel=1e-6)


PLACES = (Place("a", 0.0), Place("b", -5.0))


def valve(set_pa):
    links = (Run("pipe", "tank", "a", pipe("32"), 10.0), Reducer("it", "a", "b", set_pa, 5e-4, 4.0))
    return Network(PLACES, (Level("tank", 40.0),), links, ())


def test_a_reducer_may_be_set_to_nothing_and_a_pump_may_not():
    assert solve(valve(0.0)).pressure("b") == pytest.approx(0.0, abs=1e-3)
    with pytest.raises(InputErrors, match="Give one above zero"):
        solve(valve(-1.0))
    pump = PumpSet("pump", "tank", "a", PUMPS["small"], 0.0)
    with pytest.raises(InputErrors, match="Give one above zero"):
        solve(Network(PLACES[:1], (Level("tank", 0.0),), (pump,), ()))


@pytest.mark.parametrize("set_pa", [1e5, 1e3, 10.0, 0.1, 1e-3, 0.0])
def test_what_is_held_goes_evenly_to_nothing(set_pa):
    assert solve(valve(set_pa)).pressure("b") == pytest.approx(set_pa, abs=1e-3)


# Zones --------------------------------------------------------------------------------------------


@pytest.mark.parametrize("key", ["r10", "r15", "r20", "r30", "r40", "r50"])
@pytest.mark.parametrize("climb", [-18.0, -3.0, 0.0, 6.0])
def test_static_pressure_in_a_zone_is_the_setting_less_the_climb(key, climb):
    rows = (
        SectionRow("source", "zone", 300.0, 0.0, pipe("50"), 2, key),
        SectionRow("zone", "house", 80.0, climb, pipe("32"), 2),
    )
    outlet = OutletRow("tap", "house", "sink", 0, 0)
    held = fittings.BY_KEY[key].reducer[0]
    built = Supply(water(90.0), rows, (outlet,)).built()
    static = held - WEIGHT * climb
    assert highest_pressures(built.after)["house"] == pytest.approx(static, rel=1e-12)
    # and solved with nothing open, to the pressure that the solver's last step of 1e-9 m leaves
    assert built.solve(built.after).pressure("house") == pytest.approx(static, abs=1e-3)


# Limits -------------------------------------------------------------------------------------------


def tree(seed, level=None):
    """Up to six sections down a hill, valves and tanks in some, openings at every end."""
    dice = random.Random(seed)
    rows, points, heights = [], ["pump"], {"pump": dice.uniform(40, 90)}
    if level is not None:
        heights["pump"] = level
    for number in range(dice.randint(1, 6)):
        start, end = dice.choice(points), f"p{number}"
        low = dice.uniform(-20, 35)
        long = max(dice.uniform(20, 400), 2 * abs(low - 90))
        part = dice.choice(PARTS)
        rows.append(SectionRow(start, end, long, low, pipe(dice.choice(SIZES)), 2, part))
        points.append(end)
    outlets = []
    for number, at in enumerate(points[1:]):
        kind = dice.choice(("shower", "saver", "hose", "drip"))
        outlets.append(OutletRow(f"o{number}", at, kind, 1, dice.randint(1, 2)))
    return Supply(water(heights["pump"]), tuple(rows), tuple(outlets))


SEEDS = range(120)


def test_as_much_runs_out_of_every_point_as_comes_to_it():
    wet = 0
    for seed in SEEDS:
        found = solved(tree(seed))
        over = dict.fromkeys(found.heads, 0.0)
        for link in found.network.links:
            over[link.start] += found.flows[link.name]
            over[link.end] -= found.flows[link.name]
        for outlet in found.network.outlets:
            over[outlet.node] += found.draws[outlet.name]
        whole = sum(found.draws.values())
        if whole == 0.0:  # every outlet lies above a tank on its way: a drop an hour may seep
            assert max(map(abs, found.flows.values())) < SEEPING
            continue
        wet += 1
        places = {place.name for place in found.network.places}
        assert max(abs(over[name]) for name in places) <= 1e-9 * whole, seed
        # all of it comes from the one source
        assert found.supplied["source"] == pytest.approx(whole, rel=1e-9)
    assert wet > 0.9 * len(SEEDS)


def test_a_higher_source_never_lowers_a_flow():
    higher = 0
    for seed in SEEDS:
        before = solved(tree(seed))
        level = tree(seed).source.level_m
        for more in (0.01, 1.0, 15.0):
            after = solved(tree(seed, level + more))
            for name, flow in before.draws.items():
                # the solver's flows are right to 1e-9 of the whole
                assert after.draws[name] >= flow - 1e-9 * sum(before.draws.values()), (seed, name)
            higher += sum(after.draws.values()) > sum(before.draws.values()) * 1.001
    assert higher > len(SEEDS)


def test_a_lower_crest_never_lowers_a_flow():
    """A point that nothing is drawn at, anywhere between source and outlet."""
    for seed in SEEDS[:40]:
        dice = random.Random(seed)
        crest, down = dice.uniform(0, 45), dice.uniform(0.1, 20)
        found = []
        for high in (crest, crest - down):
            rows = (
                SectionRow("source", "crest", 200.0, high, pipe("40"), 2),
                SectionRow("crest", "house", 300.0, -10.0, pipe("32"), 2),
            )
            found.append(solved(Supply(water(50.0), rows, (jet("jet", "house"),))))
        assert found[1].draws["jet"] >= found[0].draws["jet"] * (1 - 1e-9)
        assert found[1].pressure("crest") > found[0].pressure("crest")


# Rows ---------------------------------------------------------------------------------------------


def test_rows_may_call_it_the_pump_or_the_source():
    supplies = [
        Supply(water(30.0), (SectionRow(name, "house", 100.0, 0.0, pipe("32")),),
               (jet("jet", "house"),))
        for name in ("pump", "source", " Source ", "PUMP")
    ]  # fmt: skip
    draws = {solved(one).draws["jet"] for one in supplies}
    assert len(draws) == 1
    assert all(one.built().shown == ("source", "house") for one in supplies)


@pytest.mark.parametrize("name", ["source", "Pump"])
def test_a_tank_may_not_have_its_name(name):
    row = SectionRow("pump", "house", 100.0, 0.0, pipe("32"))
    with pytest.raises(InputErrors) as caught:
        Supply(water(30.0), (row,), (jet("jet", "house"),), (TankRow(name, 9.0),)).built()
    assert [one.name for one in caught.value.errors] == ["tanks.0.name"]


def test_nothing_may_be_drawn_from_the_open_water_itself():
    row = SectionRow("pump", "house", 100.0, 0.0, pipe("32"))
    with pytest.raises(InputError, match="is open water"):
        Supply(water(30.0), (row,), (jet("jet", "source"),)).built()


def test_there_is_no_pump_in_it():
    built = one_pipe(9.0, SectionRow("pump", "a", 50.0, 0.0, pipe("32")), jet("j", "a")).built()
    assert not [link for link in built.links if isinstance(link, PumpSet)]
    assert built.supply.pumping is None
    assert math.isclose(built.after.heights["source"], 9.0)
