"""Batteries and the pump's draw: cold, rate, life, part load."""

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.errors import InputError
from calc.power import battery, motor
from calc.power.battery import Battery
from calc.practice import BATTERIES
from calc.pump.curve import Pump
from calc.pump.invented import PUMPS
from calc.pump.points import Point

ROUNDS = settings(max_examples=60, deadline=None)
EXACT = 1e-9  # relative: sums of a few rounded products
KINDS = [kind.key for kind in BATTERIES]
kinds = st.sampled_from(KINDS)


def of(kind, wh=2400.0, **more):
    return Battery(kind, 24.0, wh * 3600.0, **more)


@ROUNDS
@given(kinds, st.floats(203.0, 343.0), st.floats(0.0, 20.0))
def test_warmth_never_takes_energy_away(kind, kelvin, more):
    warmer = min(343.0, kelvin + more)
    assert battery.cold_share(kind, warmer) >= battery.cold_share(kind, kelvin)
    assert battery.floor(of(kind), warmer) <= battery.floor(of(kind), kelvin)


def test_usual_points_are_met_and_lines_run_between():
    assert battery.cold_share("flooded", 263.15) == 0.75
    assert battery.cold_share("flooded", 268.15) == pytest.approx(0.80, rel=EXACT)
    assert battery.cold_share("lfp", 210.0) == 0.65


def test_lithium_is_not_charged_in_frost_and_lead_is():
    assert battery.charge_limit(of("lfp"), 273.0) == 0.0
    assert battery.charge_limit(of("lfp"), 273.15) > 0.0
    assert battery.charge_limit(of("agm"), 263.0) > 0.0


def test_the_cut_out_is_the_readers_where_given():
    assert of("agm", reserve_j=1e6).reserve == 1e6
    assert of("agm").reserve == pytest.approx(0.5 * 2400 * 3600, rel=EXACT)


@ROUNDS
@given(kinds, st.floats(1.0, 2000.0), st.floats(1.0, 3.0))
def test_a_faster_discharge_never_gives_more(kind, watts, times):
    slow, fast = (battery.rate_share(of(kind), one) for one in (watts, watts * times))
    assert fast <= slow <= 1.0
    assert battery.discharge_efficiency(of(kind, 4800.0), watts) >= (
        battery.discharge_efficiency(of(kind), watts)
    )


def test_lead_suffers_most_from_a_fast_discharge():
    shares = {kind: battery.rate_share(of(kind), 480.0) for kind in KINDS}
    assert min(shares, key=shares.get) == "flooded" and max(shares, key=shares.get) == "lfp"


def test_a_month_at_rest_takes_the_months_share():
    left = (1 - battery.fading_share(of("flooded"))) ** (365 / 12 * 24)
    assert left == pytest.approx(0.95, rel=EXACT)


@ROUNDS
@given(kinds, st.floats(0.001, 1.5), st.floats(1.0, 1.3))
def test_deeper_cycles_are_fewer(kind, depth, times):
    assert battery.cycle_life(kind, depth * times) <= battery.cycle_life(kind, depth) * (1 + EXACT)


def test_a_battery_used_to_its_rated_depth_each_day_lasts_its_cycles():
    one = of("agm")
    lasts = battery.replacement(one, [0.5 * one.energy_j] * 365)
    assert lasts == pytest.approx(900 / 365 * 365 * 86400, rel=EXACT)


def test_a_battery_hardly_used_lasts_its_years():
    one = of("gel")
    assert battery.replacement(one, [0.0] * 365) == 10 * 365 * 86400
    assert battery.replacement(one, [1.0] * 365) == 10 * 365 * 86400


@pytest.mark.parametrize(
    "name, args",
    [("kind", ("nickel", 24.0, 1e6)), ("nominal_v", ("agm", 36.0, 1e6)),
     ("energy_j", ("agm", 24.0, 0.0)), ("energy_j", ("agm", 24.0, math.nan)),
     ("reserve_j", ("agm", 24.0, 1e6, 2e6))],
)  # fmt: skip
def test_a_battery_that_cannot_be_is_named(name, args):
    with pytest.raises(InputError) as caught:
        Battery(*args)
    assert caught.value.name == name


# The pump's draw ----------------------------------------------------------------------------


def test_a_part_load_costs_efficiency():
    assert motor.load_efficiency(0.05) < motor.load_efficiency(0.15) < motor.load_efficiency(0.4)
    assert motor.through_controller(100.0, 2000.0) > motor.through_controller(100.0, 200.0)


def test_a_duty_by_efficiencies_gives_its_power_back():
    drawn = motor.draw_by_efficiency(6e-4, 25.0, 998.0, 0.5, 0.7, controller_w=500.0)
    water = 998.0 * 9.80665 * 6e-4 * 25.0
    needed = water / 0.35
    assert drawn.power_w * motor.load_efficiency(needed / 500.0) == pytest.approx(needed, rel=EXACT)
    assert drawn.joule_per_m3 == pytest.approx(drawn.power_w / 6e-4, rel=EXACT)


def test_a_pump_with_a_power_column_draws_what_it_says():
    one = PUMPS["small"]
    point = one.points[3]
    assert motor.drawn_by(one, point.flow, 1.0, 998.2) == pytest.approx(point.power, rel=EXACT)
    through = motor.draw_of_pump(one, point.flow, 1.0, 998.2, inverter_w=1000.0)
    assert through.power_w > point.power


def test_a_pump_with_an_efficiency_goes_through_motor_and_controller():
    rows = ((0.0, 30.0, 0.0), (5e-4, 25.0, 0.5), (1e-3, 10.0, 0.3))
    one = Pump("by efficiency", tuple(Point(*row) for row in rows))
    drawn = motor.drawn_by(one, 5e-4, 1.0, 1000.0, motor_efficiency=0.8)
    assert drawn == pytest.approx(1000 * 9.80665 * 5e-4 * 25 / 0.5 / 0.8 / 0.9, rel=EXACT)


def test_a_pump_without_either_is_named():
    one = Pump("bare", tuple(Point(*row) for row in ((0.0, 30.0), (5e-4, 25.0), (1e-3, 10.0))))
    with pytest.raises(InputError) as caught:
        motor.draw_of_pump(one, 5e-4, 1.0, 1000.0)
    assert caught.value.name == "pump"
