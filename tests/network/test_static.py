"""The highest static pressures: hydrostatics, set pressures, shut-off heads."""

import pytest

from calc.network.parts import Level, Network, Place, PumpSet, Reducer, Run
from calc.network.solve import solve
from calc.network.static import NONE, highest_heads, highest_pressures
from calc.pipe import pipes
from calc.pump.invented import PUMPS

PIPE = pipes.pipe("pe100-sdr11", "32")
PUMP = PUMPS["middle"]  # 56 m at shut-off


def supply(set_pa=3e5, extra=(), levels=()):
    places = tuple(Place(n, z) for n, z in (("in", 0.0), ("out", 0.0), ("low", -20.0)))
    links = (
        Run("suction", "well", "in", PIPE, 5.0),
        PumpSet("pump", "in", "out", PUMP, set_pa),
        Run("main", "out", "low", PIPE, 60.0),
        *extra,
    )
    return Network(places, (Level("well", -3.0), *levels), links, ())


def test_controlled_the_set_pressure_stands_on_every_pipe_behind_the_pump():
    net = supply()
    assert highest_pressures(net)["low"] == pytest.approx(3e5 + 20 * net.weight, rel=1e-12)


def test_uncontrolled_the_shut_off_head_stands_on_them():
    heads = highest_heads(supply(), controlled=False)
    assert heads["low"] == pytest.approx(56.0 - 3.0, rel=1e-12)


def test_a_set_pressure_beyond_the_pump_is_never_reached():
    assert highest_heads(supply(9e5))["out"] == pytest.approx(53.0, rel=1e-12)


def test_a_tank_with_its_float_valve_closed_leaves_the_set_pressure_on_the_pipe():
    tank = (Run("up", "out", "tank", PIPE, 30.0),)
    net = supply(3e5, tank, (Level("tank", 10.0, fills=True),))
    assert highest_pressures(net)["out"] == pytest.approx(3e5, rel=1e-12)
    assert solve(net).pressure("out") < 3e5  # it fills: the solved pressure alone would be blind


def test_a_higher_tank_decides_and_a_check_valve_keeps_it_out():
    free = (Run("up", "out", "tank", PIPE, 30.0),)
    checked = (Run("up", "out", "tank", PIPE, 30.0, check=True),)
    levels = (Level("tank", 50.0, fills=True),)
    assert highest_heads(supply(3e5, free, levels))["out"] == 50.0
    assert highest_heads(supply(3e5, checked, levels))["out"] < 50.0


def test_a_reducer_holds_until_it_fails():
    places = (Place("a", 0.0), Place("b", -5.0))
    links = (
        Run("pipe", "tank", "a", PIPE, 10.0),
        Reducer("valve", "a", "b", 1e5, 5e-4, 4.0),
    )
    net = Network(places, (Level("tank", 40.0),), links, ())
    assert highest_pressures(net)["b"] == pytest.approx(1e5, rel=1e-12)
    assert highest_pressures(net, controlled=False)["b"] == pytest.approx(45 * net.weight)


def test_where_no_water_gets_to_there_is_no_pressure():
    net = Network((Place("alone", 0.0),), (Level("tank", 5.0),), (), ())
    assert highest_heads(net)["alone"] == NONE
