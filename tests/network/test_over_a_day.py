"""A day of a supply: against equations written here and integrated by scipy, and what must hold."""

import math
import random
from dataclasses import replace

import pytest
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

from calc.errors import InputError, RangeError
from calc.network.at_levels import Flows, Tank
from calc.network.outlets import FixedFlow, Orifice, Outlet
from calc.network.over_a_day import Piece, Plan, Start, Store, filled, follow, repeated, with_tank
from calc.network.parts import Level, Network, Place, PumpSet, Run
from calc.network.solve import solve
from calc.pipe import pipes
from calc.pump.invented import PUMPS
from calc.units import HOUR
from tests.network.test_network_rest import awkward

LPM = 1e-3 / 60
G = 9.80665
PIPE = pipes.pipe("pe100-sdr11", "32")
DAY = 24 * HOUR
# of a tank: the flows between solved levels are taken as straight, which is off by some 1e-5 of
# them; our choice
CLOSE = 1e-4


def head_lost(flow, bore, length, roughness, viscosity, k):
    """m, by Darcy-Weisbach with Colebrook's equation iterated here; turbulent flows only."""
    speed = flow / (math.pi / 4 * bore**2)
    reynolds = speed * bore / viscosity
    assert reynolds > 4000
    x = 6.0  # 1 / sqrt(f)
    for _ in range(60):
        x = -2 * math.log10(roughness / (3.7 * bore) + 2.51 * x / reynolds)
    return (length / bore / x**2 + k) * speed**2 / (2 * G)


def lost_in(run, network):
    def lost(flow):
        pipe = run.pipe
        return head_lost(flow, pipe.inside_m, run.length_m, pipe.roughness_m, network.viscosity,
                         run.k)  # fmt: skip

    return lost


# Against an integration by another library --------------------------------------------------------


def draining():
    """A tank over a garden: one pipe, one opening."""
    run = Run("down", "tank", "tap", PIPE, 80.0, 3.0)
    tap = Outlet("tap", "tap", Orifice(20 * LPM, 1e5))
    return Network((Place("tap", 0.0),), (Level("tank", 10.0, True),), (run,), (tap,))


def test_a_tank_that_drains_is_as_scipy_integrates_it():
    network, tank = draining(), Tank("tank", 8.0, 2.0, 1.5)
    lost = lost_in(network.links[0], network)

    def drawn(volume):
        level = tank.floor_m + tank.depth_m * volume / tank.volume_m3

        def off(flow):
            head = level - lost(flow)
            return 20 * LPM * math.sqrt(max(head, 0.0) * network.weight / 1e5) - flow

        return brentq(off, 8 * LPM, 40 * LPM, xtol=1e-16, rtol=1e-14)

    def empty(_t, volume):
        return volume[0]

    empty.terminal = True
    known = solve_ivp(lambda _t, v: [-drawn(v[0])], (0, DAY), [1.5], rtol=1e-10, atol=1e-12,
                      events=empty, dense_output=True)  # fmt: skip
    run = follow(Flows(network, (tank,)), Plan((Piece(DAY, (("tap", 1),)),)), Start((1.5,)))
    (when,) = known.t_events[0]
    for share in (0.1, 0.3, 0.5, 0.7, 0.9, 0.99):
        volume = known.sol(share * when)[0]
        assert run.held(0, share * when) == pytest.approx(volume, abs=CLOSE * 1.5)
    (span,) = (one for one in run.spans("tap") if one.kind == "nothing")
    assert span.start == pytest.approx(when, abs=1.0) and span.end == DAY
    assert run.given == pytest.approx((1.5,), rel=1e-6)


def lifted():
    """A pump that holds one pressure, a tank above, and an opening half-way."""
    suction = Run("suction", "well", "in", pipes.pipe("pe100-sdr11", "63"), 2.0, 1.0)
    pump = PumpSet("pump", "in", "out", PUMPS["large"], 3.2e5)
    first = Run("up", "out", "fork", PIPE, 90.0, 2.0)
    second = Run("on", "fork", "tank", PIPE, 60.0, 2.0)
    tap = Outlet("tap", "fork", Orifice(15 * LPM, 1.5e5))
    places = (Place("in", 0.0), Place("out", 0.0), Place("fork", 6.0))
    levels = (Level("well", -2.0), Level("tank", 22.0, True))
    return Network(places, levels, (suction, pump, first, second), (tap,))


def test_a_tank_filled_by_a_constant_head_while_drawn_is_as_scipy_integrates_it():
    network, tank = lifted(), Tank("tank", 20.0, 3.0, 8.0)
    up, on = (lost_in(network.link(name), network) for name in ("up", "on"))
    held = 3.2e5 / network.weight

    def into(volume):
        level = tank.floor_m + tank.depth_m * volume / tank.volume_m3

        def off(fork):
            given = brentq(lambda q: up(q) - (held - fork), 8 * LPM, 900 * LPM, xtol=1e-16)
            stored = brentq(lambda q: on(q) - (fork - level), 8 * LPM, 900 * LPM, xtol=1e-16)
            tap = 15 * LPM * math.sqrt((fork - 6.0) * network.weight / 1.5e5)
            return given - stored - tap

        fork = brentq(off, level + 0.6, held - 0.6, xtol=1e-13)
        return brentq(lambda q: on(q) - (fork - level), 8 * LPM, 900 * LPM, xtol=1e-16)

    long = 3 * HOUR
    known = solve_ivp(lambda _t, v: [into(v[0])], (0, long), [0.4], rtol=1e-9, atol=1e-12,
                      dense_output=True)  # fmt: skip
    flows = Flows(network, (tank,), "well")
    run = follow(flows, Plan((Piece(long, (("tap", 1),)),)), Start((0.4,)))
    assert known.y[0][-1] < 8.0
    for at in range(0, int(long) + 1, 900):
        assert run.held(0, at) == pytest.approx(known.sol(at)[0], abs=CLOSE * 8.0)
    assert run.running == ((0.0, long),) and run.starts == ()  # it ran on over night


def stopping():
    """A well pumped for a steady draw of 20 L/min; no tank."""
    suction = Run("suction", "well", "in", PIPE, 2.0, 1.0)
    pump = PumpSet("pump", "in", "out", PUMPS["middle"], 3e5)
    places = (Place("in", 0.0), Place("out", 0.0), Place("tap", 3.0))
    pipe = Run("on", "out", "tap", PIPE, 20.0, 2.0)
    tap = Outlet("tap", "tap", FixedFlow(20 * LPM))
    return Network(places, (Level("well", -2.0),), (suction, pump, pipe), (tap,))


def test_a_well_that_runs_out_stops_the_pump_until_it_has_recovered():
    """By hand: it lasts S / (q - y), and recovers to half in S / (2 y)."""
    stored, comes, drawn = 0.6, 5 * LPM, 20 * LPM
    plan = Plan((Piece(DAY, (("tap", 1),)),), Store(stored, comes, 0.5))
    run = follow(Flows(stopping(), (), "well"), plan, Start((), stored))
    first, again = stored / (drawn - comes), 0.5 * stored / comes
    turn = again + 0.5 * stored / (drawn - comes)
    starts = [0.0, *(t for n in range(99) if (t := first + again + n * turn) < DAY)]
    assert [a for a, _ in run.running] == pytest.approx(starts, abs=0.01)
    assert run.running[0][1] == pytest.approx(first, abs=0.01)
    nothing = [one for one in run.spans("tap") if one.kind == "nothing"]
    assert sum(b - a for a, b, _ in nothing) == pytest.approx(DAY - run.pump_time, rel=1e-6)
    assert run.came - run.over - run.pumped == pytest.approx(run.ends[0] - stored, abs=1e-9)


# What must hold -------------------------------------------------------------------------------


def random_day(seed):
    """(flows, plan) of an awkward network with its tanks' sizes and a day drawn by lot."""
    network, rng = awkward(seed), random.Random(seed)
    tanks = []
    for level in network.levels:
        if level.fills:
            deep = rng.uniform(0.3, 4)
            tanks.append(Tank(level.name, level.level_m - deep, deep, rng.uniform(0.2, 20)))
    marks = sorted({0.0, 5.0, 13.0, 24.0, *(rng.uniform(0, 24) for _ in range(8))})
    pieces = []
    for a, b in zip(marks, marks[1:], strict=False):
        share = rng.choice((0, 0.1, 0.3, 0.7))
        counts = [(one.name, rng.randint(1, 3)) for one in network.outlets if rng.random() < share]
        pieces.append(Piece((b - a) * HOUR, tuple(counts), rng.choice((True, 5 <= a < 13))))
    well = Store(rng.uniform(0.2, 3), rng.choice((0, 1e-5, 2e-4)), rng.choice((0.3, 0.5, 1.0)))
    plan = Plan(tuple(pieces), rng.choice((Store(), well)), rng.choice((None, 0.5, 0.9)))
    return Flows(network, tuple(tanks), "well"), plan


@pytest.mark.parametrize("seed", range(40))
def test_no_water_is_lost_or_won_by_a_billionth_of_the_day(seed):
    flows, plan = random_day(seed)
    run = follow(flows, plan, filled(flows, plan))
    day = sum(run.given) + run.pumped
    assert abs(run.lost) <= 1e-9 * day + 1e-12
    if plan.store.stored_m3 is not None:
        change = run.ends[-1] - run.begins[-1]
        assert abs(run.came - run.over - run.pumped - change) <= 1e-9 * (day + run.came)
    for at, tank in enumerate(flows.tanks):
        slack = 1e-3 * tank.volume_m3  # straight lines between levels, where two tanks meet
        assert all(-slack <= one.then[at] <= tank.volume_m3 + slack for one in run.steps)
    for asked, given, missing in zip(run.asked, run.given, run.missing, strict=True):
        assert -1e-12 <= missing <= asked + 1e-9 and asked - missing <= given + 1e-9


def hillside(pipe="32", up=26.0, deep=1.5, set_pa=None, through=False):
    """Three houses, a pump and a tank up the hill. through: all the water goes by the tank."""
    size = pipes.pipe("pe100-sdr11", pipe)
    places = [
        Place("in", 0.0),
        Place("out", 0.0),
        Place("fork", 8.0),
        Place("a", 5.0),
        Place("b", 12.0),
        Place("c", 17.0),
    ]
    links = [
        Run("suction", "well", "in", PIPE, 7.0, 2.0),
        PumpSet("pump", "in", "out", PUMPS["middle"], set_pa),
        Run("a", "fork", "a", pipes.pipe("pe100-sdr11", "25"), 30.0, 2.0),
        Run("b", "fork", "b", pipes.pipe("pe100-sdr11", "25"), 40.0, 2.0),
        Run("c", "fork", "c", pipes.pipe("pe100-sdr11", "25"), 70.0, 2.0),
    ]
    if through:
        links += [
            Run("up", "out", "tank", size, 150.0, 3.0),
            Run("down", "tank", "fork", size, 80.0, 3.0),
        ]
    else:
        links += [
            Run("main", "out", "fork", size, 90.0, 3.0),
            Run("up", "fork", "tank", size, 80.0, 3.0),
        ]
    outlets = tuple(
        Outlet(name, name, law, wanted_pa=0.7e5)
        for name, law in (
            ("a", Orifice(8 * LPM, 2e5)),
            ("b", FixedFlow(9 * LPM)),
            ("c", Orifice(12 * LPM, 2e5)),
        )
    )
    levels = (Level("well", -4.0), Level("tank", up, True))
    network = Network(tuple(places), levels, tuple(links), outlets)
    return network, Tank("tank", up - deep, deep, 1.0)


def drawn_by_lot(seed, power):
    """A day of nine draws; power: hours from to."""
    rng = random.Random(seed)
    draws = [(rng.choice("abc"), rng.uniform(0, 22), rng.uniform(0.2, 2)) for _ in range(9)]
    marks = {0.0, 24.0, *power} | {m for _, start, long in draws for m in (start, start + long)}
    marks = sorted(mark for mark in marks if mark <= 24)
    pieces = []
    for a, b in zip(marks, marks[1:], strict=False):
        names = {name for name, start, long in draws if start <= a < start + long}
        counts = tuple((name, 1) for name in sorted(names))
        pieces.append(Piece((b - a) * HOUR, counts, power[0] <= a < power[1]))
    return tuple(pieces)


def hills(seed):
    rng = random.Random(seed)
    return hillside(rng.choice(("25", "32", "40")), rng.uniform(20, 32), rng.uniform(0.8, 2.5),
                    rng.choice((None, 3e5, 3.5e5)), rng.random() < 0.4)  # fmt: skip


@pytest.mark.parametrize("seed", range(12))
def test_a_larger_tank_never_leaves_more_missing(seed):
    """With no switch in the tank and a source that never runs out.

    With a switch a larger tank starts its pump later, and at a source that runs out it takes water
    that taps at the pump would have had: there it may leave more missing.
    """
    network, tank = hills(seed)
    flows, missing = Flows(network, (tank,), "well"), []
    for volume in (0.3, 0.6, 1.2, 2.4, 4.8):
        other = with_tank(flows, 0, replace(tank, volume_m3=volume))
        day = repeated(other, Plan(drawn_by_lot(seed, (3, 9))))
        missing.append(sum(day.run.missing))
    for one, other in zip(missing, missing[1:], strict=False):
        assert other <= one + 2e-3 * (one + 0.1)  # days repeat to 0.2 %


@pytest.mark.parametrize("seed", range(12))
def test_longer_power_never_leaves_more_missing(seed):
    """As above: with a switch the pump may stand full just before the evening, and not come on."""
    network, tank = hills(seed)
    flows, missing = Flows(network, (tank,), "well"), []
    for hours in (2, 4, 6, 9, 14, 21):
        day = repeated(flows, Plan(drawn_by_lot(seed, (3, 3 + hours))))
        missing.append(sum(day.run.missing))
    for one, other in zip(missing, missing[1:], strict=False):
        assert other <= one + 2e-3 * (one + 0.1)


@pytest.mark.parametrize("seed", range(6))
def test_a_tank_that_never_empties_gives_the_pressure_of_the_plain_solution_at_its_level(seed):
    network, tank = hills(seed)
    flows = Flows(network, (replace(tank, volume_m3=50.0),), "well")
    plan = Plan(drawn_by_lot(seed, (3, 9)))
    run = repeated(flows, plan).run
    seen = 0
    for step in run.steps:
        if step.state.stands != ("free",) or not step.state.counts:
            continue
        solution = solve(plainly(network, flows.tanks[0].level_m(step.held[0]), step.state))
        for at, name in enumerate(run.outlets):
            if name in dict(step.state.counts):
                there = solution.outlet(name)
                assert step.rates.pressures[at] == pytest.approx(there.pressure_pa, abs=100.0)
                seen += 1
    assert seen


def plainly(network, level, state):
    """The network at a level of its tank; without its pump while that stands."""
    levels = tuple(replace(one, level_m=level) if one.name == "tank" else one
                   for one in network.levels)  # fmt: skip
    plain = replace(network, levels=levels).with_open([name for name, _ in state.counts])
    if state.pumping:
        return plain
    dry = {"well", "in"}
    return replace(
        plain,
        levels=levels[1:],
        places=tuple(one for one in plain.places if one.name not in dry | {"out"}),
        links=tuple(one for one in plain.links if not {one.start, one.end} & (dry | {"out"})),
    )


def test_an_empty_tank_gives_just_what_comes_in_and_the_highest_outlet_goes_dry_first():
    network, tank = hillside("25", through=True, up=26.0, set_pa=3e5)
    plan = Plan((Piece(DAY, (("a", 3), ("b", 1), ("c", 3))),))
    run = follow(Flows(network, (tank,), "well"), plan, Start((0.3,)))
    last = run.steps[-1]
    assert last.state.stands == ("empty",)
    assert sum(last.rates.drawn) == pytest.approx(last.rates.pumped, rel=1e-6)
    a, _, c = last.rates.drawn
    assert c < 0.5 * a  # though it asks for more


def test_the_switch_of_a_full_tank_stops_the_pump_until_it_has_fallen_to_its_share():
    network, tank = hillside("40", through=True)
    flows = Flows(network, (tank,), "well")
    plan = Plan((Piece(DAY, (("a", 1),)),), again=0.6)
    run = follow(flows, plan, filled(flows, plan))
    stops = [end for _, end in run.running]
    assert len(stops) > 3
    for start, end in run.running:
        assert run.held(0, start) == pytest.approx(0.6, abs=1e-6)
        if end < DAY:
            assert run.held(0, end) == pytest.approx(1.0, abs=1e-6)
    without = follow(flows, replace(plan, again=None), filled(flows, plan))
    assert without.pump_time == DAY and without.lowest(0)[0] == pytest.approx(1.0)


def test_a_full_tank_takes_no_more_and_an_outlet_shut_asks_for_nothing():
    network, tank = hillside("40", set_pa=None)
    flows = Flows(network, (tank,), "well")
    plan = Plan((Piece(DAY / 2, power=True), Piece(DAY / 2, (("b", 1),), False)))
    run = follow(flows, plan, Start((0.2,)))
    assert max(one.then[0] for one in run.steps) <= 1.0 + 1e-5
    assert run.asked == pytest.approx((0.0, 9 * LPM * DAY / 2, 0.0))
    assert run.spans("a") == () and run.least("a") is None


def test_days_that_lose_water_each_day_are_said_not_to_repeat():
    network, tank = hillside()
    flows = Flows(network, (replace(tank, volume_m3=100.0),), "well")
    plan = Plan((Piece(DAY, (("b", 1),), False),))
    day = repeated(flows, plan)
    assert not day.repeats and day.days == 5
    assert day.lower == pytest.approx((9 * LPM * DAY, 0.0), rel=1e-6)


def test_a_day_takes_few_solutions():
    network, tank = hillside(through=True)
    flows = Flows(network, (tank,), "well")
    repeated(flows, Plan(drawn_by_lot(1, (3, 9)), again=0.8))
    assert flows.solves <= 150


def test_what_cannot_be_a_day_is_refused():
    network, tank = hillside()
    flows = Flows(network, (tank,), "well")
    plan = Plan((Piece(DAY),))
    with pytest.raises(RangeError) as error:
        follow(flows, plan, Start((1.5,)))
    assert error.value.name == "start"
    with pytest.raises(RangeError):
        replace(plan, again=1.2)
    with pytest.raises(RangeError):
        Store(1.0, 0.0, 0.0)
    with pytest.raises(InputError):
        with_tank(flows, 0, replace(tank, depth_m=3.0))
    tiny = Plan((Piece(DAY, (("tap", 1),)),), Store(2e-4, 5 * LPM, 0.1))
    with pytest.raises(InputError) as error:
        follow(Flows(stopping(), (), "well"), tiny, Start((), 2e-4))
    assert error.value.name == "stored_m3"
