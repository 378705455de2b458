"""Bottlenecks and cures: each one is what solving the changed supply gives."""

from dataclasses import replace

import pytest

from calc.errors import InputError
from calc.network.findings import troubles
from calc.network.outlets import FixedFlow, LimitedShower, Outlet
from calc.network.parts import Device, Level, Network, Place, PumpSet, Run
from calc.network.solve import solve
from calc.network.way import bottleneck, largest_loss, sufferers, way_to
from calc.pipe import pipes
from calc.pump import invented as pumps_demo
from tests.network.every_cure import Costs, Hill, cures
from tests.network.hillside import KNOLL, network

LPM = 1e-3 / 60
BAR = 1e5
SHOWER = LimitedShower(12 * LPM, 1.5 * BAR, 9 * LPM)


def supply(
    main="40",
    branch="32",
    filter_loss=0.5,
    set_pa=3.5 * BAR,
    suction="50",
    pump="middle",
    flow=30 * LPM,
    height=12.0,
):
    """A well, a pump, a main, a filter and a branch to a house; one part can be made the worst."""

    def pe(size):
        return pipes.pipe("pe100-sdr11", size)

    names = [("inlet", 0.0), ("outlet", 0.0), ("fork", 5.0), ("clean", 5.0), ("house", height)]
    links = (
        Run("suction", "well", "inlet", pe(suction), 8.0, 3.0),
        PumpSet("pump", "inlet", "outlet", pumps_demo.PUMPS[pump], set_pa),
        Run("main", "outlet", "fork", pe(main), 80.0, 2.0),
        Device("filter", "fork", "clean", 30 * LPM, filter_loss),
        Run("branch", "clean", "house", pe(branch), 40.0, 2.0),
    )
    outlets = (
        Outlet("shower", "house", SHOWER, wanted_pa=1.5 * BAR),
        Outlet("draw", "house", FixedFlow(flow)),
    )
    places = tuple(Place(*one) for one in names)
    return Network(places, (Level("well", -3.0),), links, outlets)  # fmt: skip


CASES = [
    (dict(main="25"), "main", "pipe"),
    (dict(branch="20", flow=15 * LPM), "branch", "pipe"),
    (dict(filter_loss=12.0), "filter", "device"),
    (dict(pump="small", flow=40 * LPM, main="63", branch="63", height=8.0), "pump", "pump"),
    (dict(suction="20", flow=30 * LPM), "suction", "suction"),
    (dict(set_pa=2.0 * BAR), "pump", "height"),
]


@pytest.mark.parametrize("changes, row, kind", CASES)
def test_the_part_made_worst_is_named_as_the_bottleneck(changes, row, kind):
    found = bottleneck(solve(supply(**changes)), "shower")
    assert (found.row, found.kind) == (row, kind)


@pytest.mark.parametrize("ends", [("hill", "house"), ("house", "hill")])
def test_a_pipe_drawn_against_its_water_is_as_much_the_bottleneck(ends):
    pipe = {size: pipes.pipe("pe100-sdr11", size) for size in ("20", "40")}
    links = (Run("long", *ends, pipe["20"], 1000.0), Run("short", "house", "tap", pipe["40"], 10.0))
    draw = (Outlet("shower", "tap", SHOWER, wanted_pa=1.0 * BAR),)
    places = (Place("house", 0.0), Place("tap", 0.0))
    solution = solve(Network(places, (Level("hill", 13.0),), links, draw))
    found = bottleneck(solution, "shower")
    assert (found.row, found.kind, found.enough) == ("long", "pipe", True)
    assert found.ranked[0].loss_m == pytest.approx(13.0 - solution.heads["house"])
    assert largest_loss(solution, way_to(solution, "tap")) == "long"


def test_a_bottleneck_says_whether_easing_it_is_enough():
    assert bottleneck(solve(supply(main="25")), "shower").enough


def test_the_way_to_an_outlet_leads_from_the_water():
    assert way_to(solve(supply()), "house") == ("suction", "pump", "main", "filter", "branch")


@pytest.mark.parametrize("more", ["first", "second"])
def test_of_equal_pipes_side_by_side_the_first_is_the_way_whatever_the_last_bits(more):
    pipe = pipes.pipe("pe100-sdr11", "40")
    links = tuple(Run(name, "well", "house", pipe, 50.0) for name in ("first", "second"))
    draw = (Outlet("draw", "house", FixedFlow(10 * LPM)),)
    solution = solve(Network((Place("house", 0.0),), (Level("well", 20.0),), links, draw))
    flows = {**solution.flows, more: solution.flows[more] * (1 + 1e-12)}
    assert way_to(replace(solution, flows=flows), "house") == ("first",)


def test_no_part_gains_more_when_eased_than_with_all_eased():
    solution = solve(supply(main="25", filter_loss=6.0))
    found = bottleneck(solution, "shower")
    state = solution.outlet("shower")
    assert found.height_pa == 0.0
    assert found.gain_pa < 10 * BAR
    assert found.ranked[0].gain_pa == max(one.gain_pa for one in found.ranked)
    assert state.short_pa > 0


def test_opening_a_hose_names_who_suffers_worst_first():
    found = sufferers(network(), ["Wash-house tap", "Wash-house hose"])
    assert found[0].name == "Cabin 3 shower"
    assert all(one.lost_pa > 0 for one in found)
    assert found[0].before.short_pa == 0 < found[0].after.short_pa


def test_opening_an_unknown_tap_is_refused():
    with pytest.raises(InputError, match="not an outlet"):
        sufferers(network(), ["Fountain"])


def test_a_shut_outlet_has_no_bottleneck():
    solution = solve(network())
    with pytest.raises(InputError, match="shut"):
        bottleneck(solution, "Cabin 3 tap")


def hillside_short():
    """(the hillside with a tap and a hose open too, where a cistern could stand)"""
    made = network()
    names = [outlet.name for outlet in made.outlets if outlet.open]
    opened = made.with_open([*names, "Wash-house tap", "Wash-house hose"])
    return solve(opened), (KNOLL,)


def all_cures():
    """Every cure of every case, with its case for the name."""
    found = []
    for changes, row, kind in CASES:
        solution = solve(supply(**changes))
        hill = Hill("knoll", "house", 35.0, 50.0, pipes.pipe("pe100-sdr11", "40"))
        for cure in cures(solution, "shower", hills=(hill,)):
            name = f"{row}-{kind}-{cure.kind}-{cure.row}-{cure.cost:.0f}"
            found.append(pytest.param(cure, id=name))
    return found


@pytest.mark.parametrize("cure", all_cures())
def test_a_cure_is_what_solving_the_changed_supply_gives(cure):
    again = solve(cure.solution.network)
    assert again.pressure("house") == pytest.approx(cure.after.pressure_pa, abs=1.0)
    assert cure.changes
    served = again.outlet("shower").short_pa == 0
    harm = {one.kind for one in troubles(again)} & {
        "over-rating",
        "npsh",
        "below-vacuum",
        "fight",
        "no-water",
    }
    assert cure.cured == (served and not harm)
    assert bool(cure.why) == (not cure.cured)


@pytest.mark.parametrize("changes, row, kind", CASES)
def test_every_case_is_cured_by_something(changes, row, kind):
    hill = Hill("knoll", "house", 35.0, 50.0, pipes.pipe("pe100-sdr11", "40"))
    assert cures(solve(supply(**changes)), "shower", hills=(hill,))[0].cured


def test_the_cheapest_cure_comes_first():
    solution, hills = hillside_short()
    found = [cure for cure in cures(solution, "Cabin 3 shower", hills=hills) if cure.cured]
    assert len(found) >= 2
    assert [cure.cost for cure in found] == sorted(cure.cost for cure in found)


def test_other_prices_can_make_another_cure_the_cheapest():
    solution, hills = hillside_short()
    usual = cures(solution, "Cabin 3 shower", hills=hills)[0]
    dear = cures(solution, "Cabin 3 shower", Costs(0.0, 10.0, cistern=1.0, pump=5e3), hills)[0]
    assert usual.kind == "widen"
    assert dear.kind == "cistern"


def test_a_higher_set_pressure_is_the_least_that_serves():
    solution = solve(supply(set_pa=2.5 * BAR))
    cure = next(c for c in cures(solution, "shower") if c.kind == "set" and c.cured)
    pump = cure.solution.network.link("pump")
    less = solve(cure.solution.network.with_link(replace(pump, set_pa=pump.set_pa - 1e4)))
    assert less.outlet("shower").short_pa > 0


def test_a_set_pressure_is_not_raised_over_a_pipes_rating():
    net = supply(set_pa=2.4 * BAR, height=10.0)
    weak = replace(net.link("main").pipe, rating_pa=2.7 * BAR)
    solution = solve(net.with_link(replace(net.link("main"), pipe=weak)))
    found = [cure for cure in cures(solution, "shower") if cure.kind == "set"]
    assert not any(cure.cured for cure in found)
    assert "not rated" in found[0].why


def test_a_cistern_stands_no_higher_than_it_must():
    solution, hills = hillside_short()
    cure = next(c for c in cures(solution, "Cabin 3 shower", hills=hills) if c.kind == "cistern")
    level = cure.changes[0].after
    levels = cure.solution.network.levels
    lower = tuple(
        replace(one, level_m=level - 0.5) if one.name == "Knoll" else one for one in levels
    )
    assert solve(replace(cure.solution.network, levels=lower)).outlet("Cabin 3 shower").short_pa > 0


def test_the_worst_run_is_laid_in_the_next_size_that_serves():
    solution, hills = hillside_short()
    cure = next(c for c in cures(solution, "Cabin 3 shower", hills=hills) if c.kind == "widen")
    assert [change.row for change in cure.changes] == ["Upper main"]
    assert cure.solution.network.link("Upper main").pipe.size == "40"


def test_a_second_pump_cures_where_the_pump_is_the_bottleneck():
    solution = solve(supply(pump="small", flow=40 * LPM, main="63", branch="63", height=8.0))
    found = [cure for cure in cures(solution, "shower") if cure.kind == "pump"]
    assert any(cure.cured for cure in found)
    assert {"pump", "pump 2"} <= {link.name for link in found[0].solution.network.links}


def test_a_pump_brought_nearer_to_the_water_has_a_longer_line_to_the_house():
    solution = solve(supply(suction="20", flow=30 * LPM))
    cure = next(c for c in cures(solution, "shower") if c.changes[0].what == "length")
    before, after = solution.network, cure.solution.network
    lengths = [
        sum(net.link(name).length_m for name in ("suction", "main")) for net in (before, after)
    ]
    assert lengths[0] == pytest.approx(lengths[1])


def test_a_wider_suction_line_cures_a_pump_that_lacks_suction_head():
    solution = solve(supply(suction="20", flow=30 * LPM))
    found = [cure for cure in cures(solution, "shower") if cure.kind == "suction"]
    assert any(cure.cured for cure in found)
