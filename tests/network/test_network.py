"""Whole supplies: closed forms, checks in words, and what must hold for every supply."""

import math
from dataclasses import replace

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from calc.errors import InputError
from calc.network import check as network_check
from calc.network import matrix as network_matrix
from calc.network.findings import troubles
from calc.network.links import DeviceLaw, PumpLaw, RunLaw
from calc.network.outlets import CompensatingDripper, FixedFlow, LimitedShower, Orifice, Outlet
from calc.network.parts import Device, Level, Network, Place, PumpSet, Reducer, Run
from calc.network.solve import solve
from calc.pipe import friction, pipes
from calc.pump import invented as pumps_demo
from calc.pump import sets as pump_sets
from scripts import made_supplies
from tests.steps import calls

LPM = 1e-3 / 60
BAR = 1e5
PUMP = pumps_demo.PUMPS["middle"]
HELD = 1e-9  # m, what heads settle to


def pe(size):
    return pipes.pipe("pe100-sdr11", size)


def network(places, levels, links, outlets=()):
    return Network(
        tuple(Place(*one) for one in places),
        tuple(levels),
        tuple(links),
        tuple(outlets),
    )


def tank_and_tap(level=20.0, law=None, link=None):
    link = link or Device("line", "tank", "tap", 10 * LPM, 3.0)
    outlets = (Outlet("tap", "tap", law or Orifice(12 * LPM, BAR)),)
    return network([("tap", 0.0)], [Level("tank", level)], [link], outlets)


def pumped(set_pa=3 * BAR, pump=PUMP, taps=(), check=True, suction="50"):
    places = [("in", 0.0), ("out", 0.0), ("house", 10.0)]
    links = [
        Run("suction", "well", "in", pe(suction), 6.0, 2.0),
        PumpSet("pump", "in", "out", pump, set_pa, check=check),
        Run("main", "out", "house", pe("32"), 60.0, 4.0),
    ]
    return network(places, [Level("well", -3.0)], links, taps)


# Closed forms ---------------------------------------------------------------


def test_one_orifice_behind_one_loss_is_the_root_of_its_quadratic():
    # level = h_r (Q/Q_r)^2 + p_r/(rho g) (Q/Q_o)^2
    net = tank_and_tap()
    per_flow = 3.0 / (10 * LPM) ** 2 + BAR / net.weight / (12 * LPM) ** 2
    assert math.isclose(solve(net).draws["tap"], math.sqrt(20.0 / per_flow), rel_tol=1e-10)


def test_two_parallel_pipes_share_as_their_losses_agree():
    links = [Run("a", "tank", "tap", pe("25"), 50.0, 2.0), Run("b", "tank", "tap", pe("32"), 80.0)]
    net = network(
        [("tap", 0.0)], [Level("tank", 15.0)], links, [Outlet("t", "tap", FixedFlow(30 * LPM))]
    )
    solution = solve(net)
    losses = [
        friction.total_loss(solution.flows[run.name], run.pipe.inside_m, run.length_m,
                            run.pipe.roughness_m, net.viscosity, run.k)
        for run in links
    ]  # fmt: skip
    assert math.isclose(losses[0], losses[1], rel_tol=1e-9)
    assert math.isclose(sum(solution.flows.values()), 30 * LPM, rel_tol=1e-12)


def test_two_equal_pipes_carry_half_each():
    links = [Run(name, "tank", "tap", pe("25"), 50.0) for name in "ab"]
    net = network(
        [("tap", 0.0)], [Level("tank", 15.0)], links, [Outlet("t", "tap", FixedFlow(20 * LPM))]
    )
    assert math.isclose(solve(net).flows["a"], 10 * LPM, rel_tol=1e-12)


def siphon(crest):
    links = [
        Run("up", "upper", "crest", pe("32"), 20.0, 0.5),
        Run("down", "crest", "lower", pe("32"), 30.0, 1.0),
    ]
    levels = [Level("upper", 5.0), Level("lower", 0.0, fills=True)]
    return network([("crest", crest)], levels, links)


def test_a_siphon_flows_as_if_its_crest_were_not_there():
    solution = solve(siphon(8.0))
    alone = friction.flow_for_loss(
        5.0, pe("32").inside_m, 50.0, pe("32").roughness_m, solution.network.viscosity, 1.5
    )
    assert math.isclose(solution.flows["up"], alone, rel_tol=1e-9)


def test_a_siphons_crest_stands_under_suction():
    solution = solve(siphon(8.0))
    head = 5.0 - solution.loss("up") - 8.0
    assert math.isclose(solution.pressure("crest"), solution.network.weight * head, rel_tol=1e-9)


def test_a_siphon_over_ten_metres_is_said_to_break():
    kinds = {one.kind for one in troubles(solve(siphon(14.0)))}
    assert "below-vacuum" in kinds
    assert "below-vacuum" not in {one.kind for one in troubles(solve(siphon(8.0)))}


def test_standing_pressure_is_the_height_of_the_water():
    net = tank_and_tap().with_open(())
    assert math.isclose(solve(net).pressure("tap"), 20.0 * net.weight, rel_tol=1e-12)


def test_a_pump_at_full_speed_runs_at_its_duty_point():
    net = pumped(None, taps=[Outlet("t", "house", Orifice(30 * LPM, BAR))])
    solution = solve(net)

    def system(flow):
        lost = 0.0
        for name in ("suction", "main"):
            run = net.link(name)
            args = (run.pipe.inside_m, run.length_m, run.pipe.roughness_m, net.viscosity, run.k)
            lost += friction.loss_and_slope(flow, *args)[0]
        return 13.0 + lost + BAR / net.weight * (flow / (30 * LPM)) ** 2

    assert math.isclose(solution.flows["pump"], pump_sets.duty(PUMP, system).flow, rel_tol=1e-5)


# Held pressures -------------------------------------------------------------


def test_speed_control_holds_the_set_pressure():
    solution = solve(pumped(taps=[Outlet("t", "house", Orifice(20 * LPM, BAR))]))
    assert solution.pressure("out") == pytest.approx(3 * BAR, rel=1e-10)
    assert solution.pump("pump").held
    assert 0.5 < solution.pump("pump").speed < 1.0


def test_past_full_speed_the_pressure_falls_along_the_curve():
    solution = solve(pumped(5 * BAR, taps=[Outlet("t", "house", Orifice(90 * LPM, 0.5 * BAR))]))
    state = solution.pump("pump")
    assert not state.held
    assert state.head_m == pytest.approx(PUMP.head_at(state.flow_m3s), abs=HELD)


def test_with_every_tap_shut_a_pump_with_speed_control_stands_at_its_set_pressure():
    solution = solve(pumped(taps=[Outlet("t", "house", Orifice(20 * LPM, BAR))]).with_open(()))
    assert solution.pressure("out") == pytest.approx(3 * BAR, rel=1e-6)
    assert solution.pump("pump").speed is None


def reducer_net(set_pa, level=30.0):
    links = [Reducer("reducer", "tank", "bed", set_pa, 20 * LPM, 2.0)]
    outlets = [Outlet("drip", "bed", CompensatingDripper(2 * LPM, BAR, 3 * BAR))]
    return network([("bed", 0.0)], [Level("tank", level)], links, outlets)


def test_a_reducer_holds_its_set_pressure():
    assert solve(reducer_net(1.4 * BAR)).pressure("bed") == pytest.approx(1.4 * BAR, rel=1e-10)


def test_a_reducer_with_too_little_before_it_stands_wide_open():
    solution = solve(reducer_net(4 * BAR))
    assert math.isclose(solution.heads["bed"], 30.0 - 2.0 * (2 / 20) ** 2, rel_tol=1e-9)


def test_two_reducers_one_behind_the_other_each_hold_their_own():
    links = [
        Reducer("first", "tank", "a", 3 * BAR, 20 * LPM, 2.0),
        Run("pipe", "a", "b", pe("25"), 30.0),
        Reducer("second", "b", "c", 1 * BAR, 20 * LPM, 2.0),
    ]
    taps = [Outlet("t", "c", Orifice(15 * LPM, BAR)), Outlet("u", "a", Orifice(10 * LPM, BAR))]
    places = [("a", 0.0), ("b", 0.0), ("c", 0.0)]
    solution = solve(network(places, [Level("tank", 50.0)], links, taps))
    assert solution.pressure("a") == pytest.approx(3 * BAR, rel=1e-10)
    assert solution.pressure("c") == pytest.approx(1 * BAR, rel=1e-10)


def test_a_check_valve_lets_nothing_back():
    links = [
        Run("low line", "low", "tap", pe("25"), 10.0, check=True),
        Run("high line", "high", "tap", pe("25"), 10.0),
    ]
    levels = [Level("low", 5.0), Level("high", 20.0)]
    solution = solve(
        network([("tap", 0.0)], levels, links, [Outlet("t", "tap", FixedFlow(2 * LPM))])
    )
    assert abs(solution.flows["low line"]) < 1e-10
    assert solution.flows["high line"] == pytest.approx(2 * LPM, rel=1e-6)


# What is said in words --------------------------------------------------------


def problem_of(net):
    found = network_check.problems(net)
    assert found
    with pytest.raises(InputError):
        solve(net)
    return found[0]


def test_a_disconnected_tap_is_named():
    net = tank_and_tap()
    taps = (*net.outlets, Outlet("far tap", "far", Orifice(1e-4, BAR)))
    found = problem_of(replace(net, places=(*net.places, Place("far", 3.0)), outlets=taps))
    assert (found.row, found.kind) == ("far tap", "disconnected")
    assert "no source of water" in found.text


def test_a_loop_with_no_source_is_said_to_be_one():
    net = tank_and_tap()
    places = (*net.places, *(Place(name, 0.0) for name in "abc"))
    ring = [Run(f"{a}{b}", a, b, pe("25"), 5.0) for a, b in ("ab", "bc", "ca")]
    found = problem_of(replace(net, places=places, links=(*net.links, *ring)))
    assert found.kind == "loop"
    assert "no source of water" in found.text


def test_a_pipe_of_no_length_is_named():
    found = problem_of(tank_and_tap(link=Run("stub", "tank", "tap", pe("25"), 0.0)))
    assert (found.row, found.kind) == ("stub", "figure")
    assert "0 m long" in found.text


def test_an_unknown_place_is_named():
    found = problem_of(tank_and_tap(link=Run("line", "tank", "tpa", pe("25"), 5.0)))
    assert (found.row, found.kind) == ("line", "unknown")
    assert "tpa" in found.text


def test_two_rows_of_one_name_are_named():
    net = tank_and_tap()
    found = problem_of(replace(net, links=net.links * 2))
    assert (found.row, found.kind) == ("line", "name")


def test_a_check_valve_the_wrong_way_round_is_named():
    found = problem_of(tank_and_tap(link=Run("line", "tap", "tank", pe("25"), 5.0, check=True)))
    assert (found.row, found.kind) == ("line", "backwards")
    assert "Turn it round" in found.text


@pytest.mark.parametrize("rows, words", [
    ([(0, 20), (10, 25), (20, 5)], "must fall all the way"),
    ([(0, 20), (10, 15), (10, 12)], "same flow"),
])  # fmt: skip
def test_a_pump_curve_that_rises_or_has_two_equal_flows_is_refused(rows, words):
    from calc.pump.curve import Point, Pump

    with pytest.raises(InputError, match=words):
        Pump("odd", tuple(Point(flow * LPM, head) for flow, head in rows))


def two_tanks(check):
    links = [
        Run("low line", "low", "tap", pe("32"), 10.0, check=check),
        Run("high line", "high", "tap", pe("32"), 10.0),
    ]
    return network([("tap", 0.0)], [Level("low", 5.0), Level("high", 20.0)], links)


def test_two_tanks_that_fight_are_said_to():
    fights = [f for f in troubles(solve(two_tanks(False))) if f.kind == "fight"]
    assert [f.row for f in fights] == ["low"]
    assert fights[0].other == "high"


def test_a_check_valve_ends_the_fight():
    assert not [f for f in troubles(solve(two_tanks(True))) if f.kind == "fight"]


def two_pumps(check):
    places = [("in", 0.0), ("out", 0.0)]
    links = [
        Run("suction", "well", "in", pe("63"), 6.0),
        PumpSet("strong", "in", "out", PUMP, 4 * BAR, check=check),
        PumpSet("weak", "in", "out", PUMP, 2 * BAR, check=check),
    ]
    return network(places, [Level("well", -3.0)], links, [Outlet("t", "out", FixedFlow(10 * LPM))])


def test_two_pumps_whose_set_pressures_conflict_without_check_valves_are_said_to_fight():
    fights = [f for f in troubles(solve(two_pumps(False))) if f.kind == "fight"]
    assert [f.row for f in fights] == ["weak"]


def test_with_check_valves_the_weaker_pump_is_only_idle():
    found = troubles(solve(two_pumps(True)))
    assert {(f.row, f.kind) for f in found} == {("weak", "idle")}


def test_two_equal_pumps_side_by_side_share_the_flow():
    net = two_pumps(True)
    weak = replace(net.link("weak"), set_pa=4 * BAR)
    flows = solve(net.with_link(weak)).flows
    assert flows["weak"] == pytest.approx(flows["strong"], rel=1e-6)


def test_an_outlet_too_high_is_said_to_get_no_water():
    solution = solve(tank_and_tap(level=-2.0))
    assert [(f.row, f.kind) for f in troubles(solution)] == [("tap", "no-water")]
    assert solution.draws["tap"] == 0.0


def test_a_fixed_flow_that_cannot_be_had_is_said_to_be_short():
    solution = solve(tank_and_tap(level=5.0, law=FixedFlow(100 * LPM)))
    assert solution.draws["tap"] < 100 * LPM
    assert solution.short[0].name == "tap"


def test_a_pump_past_the_end_of_its_table_is_named():
    net = pumped(None, taps=[Outlet("t", "out", Orifice(300 * LPM, BAR))])
    assert ("pump", "past-curve") in {(f.row, f.kind) for f in troubles(solve(net))}


def test_a_pump_that_lacks_suction_head_is_named():
    taps = [Outlet("t", "out", Orifice(60 * LPM, BAR))]
    found = troubles(solve(pumped(taps=taps, suction="25")))
    assert ("pump", "npsh") in {(f.row, f.kind) for f in found}
    assert not troubles(solve(pumped(taps=taps, suction="63")))


def test_a_pipe_over_its_rating_is_named_even_while_taps_run():
    weak = pipes.pipe("pe100-sdr17", "32")
    net = tank_and_tap(level=120.0, link=Run("line", "tank", "tap", weak, 100.0))
    assert ("line", "over-rating") in {(f.row, f.kind) for f in troubles(solve(net))}


def test_a_dripper_above_its_highest_pressure_is_named():
    found = troubles(solve(reducer_net(4 * BAR, level=60.0)))
    assert ("drip", "over") in {(f.row, f.kind) for f in found}


# Laws and linear algebra --------------------------------------------------------


@given(
    st.floats(1e-9, 5e-3),
    st.sampled_from(("20", "32", "63")),
    st.floats(0.5, 500),
    st.floats(0, 50),
)
@settings(max_examples=100, deadline=None)
def test_the_law_of_a_run_turns_head_loss_round(flow, size, length, k):
    pipe = pe(size)
    args = (pipe.inside_m, length, pipe.roughness_m, 1.1e-6, k)
    head, slope = friction.loss_and_slope(flow, *args)
    assume(head < 1e4)
    found, by_head = RunLaw(Run("r", "a", "b", pipe, length, k), 1.1e-6).flow(head)
    assert math.isclose(found, flow, rel_tol=1e-10)
    re = 4 * flow / (math.pi * pipe.inside_m * 1.1e-6)
    if min(abs(re / bend - 1) for bend in (2040, 4000)) > 1e-6:
        assert math.isclose(by_head, 1 / slope, rel_tol=1e-6)


@given(st.floats(0.0, 1.0), st.sampled_from(sorted(pumps_demo.PUMPS)))
@settings(max_examples=60, deadline=None)
def test_the_law_of_a_pump_turns_its_curve_round(share, key):
    pump = pumps_demo.PUMPS[key]
    law = PumpLaw(PumpSet("p", "a", "b", pump))
    gain = pump.head_at(0.0) * share if share < 1 else pump.head_at(0.0) * 0.999
    flow, _ = law.flow(-gain)
    if gain > pump.least_head:
        # 1e-3 m per m3/s of tilt where a diaphragm pump's curve is flat
        assert pump.head_at(flow) == pytest.approx(gain, abs=1e-6)


def test_a_device_loses_its_rated_head_at_its_rated_flow():
    assert DeviceLaw(Device("d", "a", "b", 10 * LPM, 2.0)).flow(2.0)[0] == 10 * LPM


@given(st.floats(0.01, 50.0), st.sampled_from((1, -1)))
@settings(max_examples=60, deadline=None)
def test_the_slope_of_a_device_is_that_of_finite_differences(head, sign):
    law, step = DeviceLaw(Device("d", "a", "b", 10 * LPM, 2.0)), 1e-5 * head
    rise = law.flow(sign * head + step)[0] - law.flow(sign * head - step)[0]
    assert math.isclose(law.flow(sign * head)[1], rise / (2 * step), rel_tol=1e-6)


@given(st.floats(0.05, 0.95), st.sampled_from(sorted(pumps_demo.PUMPS)))
@settings(max_examples=60, deadline=None)
def test_the_slope_of_a_pump_is_that_of_finite_differences(share, key):
    pump = pumps_demo.PUMPS[key]
    flow, step = share * pump.largest_flow, 1e-6
    law = PumpLaw(PumpSet("p", "a", "b", pump))
    head = -law._curve(flow)[0]
    low, high = law.flow(head - step)[0], law.flow(head + step)[0]
    points = [point.flow for point in pump.points]
    assume(not any(low <= one <= high for one in points))  # the curve bends there
    assume(low > points[0])
    assert math.isclose(law.flow(head)[1], (high - low) / (2 * step), rel_tol=1e-4)


def test_newtons_steps_are_few():
    assert solve(made_supplies.supply(100, loops=True)).steps <= 25


@given(st.integers(0, 10**6))
@settings(max_examples=50, deadline=None)
def test_elimination_solves_the_equations(seed):
    import random

    rng = random.Random(seed)
    count = rng.randrange(1, 15)
    pairs = [(i, rng.randrange(i)) for i in range(1, count)]
    pairs += [tuple(rng.sample(range(count), 2)) for _ in range(3)] if count > 2 else []
    pairs = list({tuple(sorted(pair)) for pair in pairs})
    plan = network_matrix.eliminate(count, tuple(pairs))
    matrix = [[0.0] * count for _ in range(count)]
    diagonal, upper = [rng.uniform(0.1, 1) for _ in range(count)], [0.0] * plan.size
    for i, j in pairs:
        slope = rng.uniform(0.1, 2)
        upper[plan.slot_of.get((i, j), plan.slot_of.get((j, i)))] -= slope
        diagonal[i] += slope
        diagonal[j] += slope
        matrix[i][j] = matrix[j][i] = -slope
    right = [rng.uniform(-1, 1) for _ in range(count)]
    found = network_matrix.solve(plan, diagonal[:], upper, right[:])
    for i in range(count):
        row = sum(matrix[i][j] * found[j] for j in range(count)) + diagonal[i] * found[i]
        assert math.isclose(row, right[i], abs_tol=1e-9)


@pytest.mark.parametrize("count", [10, 1000])
def test_a_tree_fills_in_nothing(count):
    plan = network_matrix.eliminate(count, tuple((i, i // 3) for i in range(1, count)))
    assert plan.size == count - 1


def test_a_thousand_outlets_take_no_more_than_in_step_with_a_hundred():
    """Ten times the outlets, some ten times the work: the matrix of a long supply stays thin."""
    hundred, thousand = (made_supplies.supply(count, loops=True) for count in (100, 1000))
    solution, taken = calls(lambda: solve(thousand))
    assert solution.imbalance < 1e-9
    assert taken < 12 * calls(lambda: solve(hundred))[1]


# What must hold for every supply -----------------------------------------------

LAWS = (
    Orifice(12 * LPM, BAR),
    LimitedShower(12 * LPM, 1.5 * BAR, 9 * LPM),
    FixedFlow(4 * LPM),
    CompensatingDripper(0.5 * LPM, BAR, 4 * BAR),
)


@st.composite
def trees(draw):
    """A branching supply with one source: a tank, a pump at full speed, or a held pump."""
    count = draw(st.integers(2, 8))
    heights = [draw(st.floats(0, 15)) for _ in range(count)]
    places = [("in", 0.0), *((f"p{i}", z) for i, z in enumerate(heights))]
    source = draw(st.sampled_from((None, 2 * BAR, 4 * BAR, "tank")))
    if source == "tank":
        levels = [Level("well", draw(st.floats(5, 40)))]
        links = [Run("s", "well", "in", pe("40"), 5.0), Run("t", "in", "p0", pe("40"), 5.0)]
    else:
        levels = [Level("well", -3.0)]
        links = [Run("s", "well", "in", pe("50"), 5.0), PumpSet("pump", "in", "p0", PUMP, source)]
    for i in range(1, count):
        size, parent = draw(st.sampled_from(("20", "25", "32"))), draw(st.integers(0, i - 1))
        links.append(Run(f"r{i}", f"p{parent}", f"p{i}", pe(size), draw(st.floats(2, 120))))
    laws = [draw(st.sampled_from(LAWS)) for _ in range(count)]
    opened = [draw(st.booleans()) for _ in range(count)]
    outlets = [Outlet(f"o{i}", f"p{i}", laws[i], open=opened[i]) for i in range(count)]
    return network(places, levels, links, outlets)


@given(trees(), st.data())
@settings(max_examples=100, deadline=None)
def test_more_open_taps_never_raise_any_pressure_in_a_tree_with_one_source(net, data):
    extra = data.draw(st.sampled_from([outlet.name for outlet in net.outlets]))
    opened = {outlet.name for outlet in net.outlets if outlet.open}
    before, after = solve(net), solve(net.with_open(opened | {extra}))
    for place in net.places:
        # 1e-6 m: heads are settled to 1e-9 m each and flows rounded
        assert after.heads[place.name] <= before.heads[place.name] + 1e-6


@given(trees(), st.data())
@settings(max_examples=100, deadline=None)
def test_a_larger_pipe_never_lowers_the_far_flow_in_a_tree(net, data):
    far = net.outlets[-1].name
    net = net.with_open({*(o.name for o in net.outlets if o.open), far})
    way, place = [], net.outlets[-1].node
    parents = {link.end: link for link in net.links}
    while place in parents:
        way.append(parents[place])
        place = parents[place].start
    run = data.draw(st.sampled_from([link for link in way if isinstance(link, Run)]))
    wide = replace(run, pipe=pe("63"))
    before, after = solve(net), solve(net.with_link(wide))
    assert after.draws[far] >= before.draws[far] - 1e-9 * max(before.draws[far], LPM)


@given(trees())
@settings(max_examples=60, deadline=None)
def test_water_is_neither_lost_nor_won(net):
    solution = solve(net)
    drawn, given_out = sum(solution.draws.values()), sum(solution.supplied.values())
    assert solution.imbalance < 1e-9 or drawn < 1e-8
    assert math.isclose(drawn, given_out, rel_tol=1e-9, abs_tol=1e-15)


@given(trees())
@settings(max_examples=40, deadline=None)
def test_a_solution_begun_from_another_is_the_same(net):
    shut = solve(net.with_open(()))
    cold, warm = solve(net), solve(net, shut)
    for place in net.places:
        assert warm.heads[place.name] == pytest.approx(cold.heads[place.name], abs=1e-6)
