"""Pumping straight from the panels: threshold, speed, flow, the day's water, the year's tank."""

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.errors import InputError
from calc.power import array, direct
from calc.power.array import Array
from calc.power.year import Demand, Weather
from calc.pump.invented import PUMPS
from calc.storage import PATTERNS
from tests.power.places import HOME, PANEL, weather

ROUNDS = settings(max_examples=25, deadline=None)
EXACT = 1e-9  # relative: sums of a few rounded products
DENSITY = 998.2
PUMP = PUMPS["small"]
CURVE = direct.system_curve(15.0, 4e6)
TABLE = direct.table(PUMP, CURVE, DENSITY)


@pytest.mark.parametrize("key", PUMPS)
def test_more_power_never_gives_less_water(key):
    made = direct.table(PUMPS[key], direct.system_curve(8.0, 1e6), DENSITY)
    assert list(made.powers) == sorted(set(made.powers))
    assert list(made.flows) == sorted(made.flows) and made.flows[0] == 0.0
    assert made.speeds[-1] == 1.0


def test_water_starts_where_the_slowed_pump_reaches_the_height():
    speed = math.sqrt(15.0 / PUMP.shut_off_head)  # affinity: head goes with speed squared
    assert TABLE.speeds[0] == pytest.approx(speed, rel=1e-6)  # the root's own trickle is 1e-9 m3/s
    assert TABLE.starts_w == pytest.approx(PUMP.points[0].power * speed**3, rel=1e-6)
    assert TABLE.flow(0.99 * TABLE.starts_w) == 0.0 < TABLE.flow(1.01 * TABLE.starts_w)


def test_each_row_is_where_pump_and_pipe_meet():
    for flow, speed in list(zip(TABLE.flows, TABLE.speeds, strict=True))[1:]:
        # the duty's own flow is found to 1e-10 of the largest
        assert PUMP.head_at(flow, speed) == pytest.approx(CURVE(flow), rel=1e-7)


def test_more_sun_than_the_pump_takes_gives_its_full_flow():
    assert TABLE.flow(10 * TABLE.powers[-1]) == TABLE.flows[-1]


def test_a_finer_table_gives_nearly_the_same_flow():
    fine = direct.table(PUMP, CURVE, DENSITY, steps=400)
    for share in (0.1, 0.3, 0.6, 0.9):
        watts = TABLE.starts_w + share * (TABLE.powers[-1] - TABLE.starts_w)
        # a straight line between 40 rows: under 0.5 % of a flow that bends gently there
        assert TABLE.flow(watts) == pytest.approx(fine.flow(watts), rel=5e-3)


def test_more_height_or_friction_gives_less():
    for harder in (direct.system_curve(20.0, 4e6), direct.system_curve(15.0, 2e7)):
        made = direct.table(PUMP, harder, DENSITY)
        assert made.flow(300.0) < TABLE.flow(300.0)


def test_the_water_of_a_steady_flow_is_flow_times_time():
    flat = direct.Table((1.0, 2.0), (1e-4, 1e-4), (0.9, 1.0))
    sunny = direct.day_water(flat, Array(PANEL, 1, 5), 2e7, 10.0, 300.0)
    assert sunny == pytest.approx(1e-4 * 36000, rel=EXACT)


def test_a_day_with_more_sun_gives_more_water_and_a_dark_day_none():
    panels = Array(PANEL, 1, 1)
    water = [direct.day_water(TABLE, panels, sun * 3.6e6, 11.0, 310.0) for sun in (0, 1, 3, 6)]
    assert water == sorted(water) and water[0] == 0.0 < water[2] < water[3]


def test_flow_against_sun_is_the_table_at_the_panels_power():
    panels = Array(PANEL, 1, 1)
    rows = direct.flow_by_sun(TABLE, panels, 310.0, steps=4)
    assert [sun for sun, _ in rows] == [0, 250, 500, 750, 1000]
    assert rows[3][1] == TABLE.flow(array.power(panels, 750.0, 310.0))


@ROUNDS
@given(st.integers(1, 3), st.floats(0.2, 10.0), st.floats(1.1, 3.0), st.integers(1, 3))
def test_more_panels_or_tank_never_serve_less_and_the_water_balances(count, tank, times, seed):
    demand = Demand((1.0, 2.0, 3.0) * 4, PATTERNS["dawn"])
    years = [
        direct.simulate(weather(seed), Array(PANEL, 1, panels), TABLE, volume, demand, start_m3=0.1)
        for panels, volume in ((count, tank), (count + 1, tank), (count, tank * times))
    ]
    for one in years:
        assert abs(one.water_gap) < EXACT
        assert one.pumped + one.overflow >= one.served - 0.1 - EXACT
        # m3: two years summed in another order
        assert one.served >= years[0].served - 1e-9


def test_without_sun_the_tank_runs_out():
    dark = Weather([0.0] * 8760, [300.0] * 8760, [300.0] * 8760)
    done = direct.simulate(dark, Array(PANEL, 1, 1), TABLE, 5.0, HOME)
    assert done.served == pytest.approx(5.0, rel=EXACT)
    assert done.running_hours == 0 and done.worst[-1].lowest == 0.0


def test_a_tank_that_is_full_stops_the_pump():
    idle = Demand((0.0,) * 12, PATTERNS["home"])
    done = direct.simulate(weather(), Array(PANEL, 1, 1), TABLE, 5.0, idle)
    assert done.pumped == 0 and done.overflow > 100 and done.short_days == 0


def test_a_height_out_of_reach_is_refused():
    with pytest.raises(InputError) as caught:
        direct.table(PUMP, direct.system_curve(60.0, 0.0), DENSITY)
    assert caught.value.name == "pump"


@pytest.mark.parametrize("tank", [0.0, -1.0, math.nan])
def test_without_a_battery_there_must_be_a_tank(tank):
    with pytest.raises(InputError) as caught:
        direct.simulate(weather(), Array(PANEL, 1, 1), TABLE, tank, HOME)
    assert caught.value.name == "tank_m3"


def test_a_steady_year_is_the_sum_of_its_hours():
    """Sun day and night but for the last ten hours, in which the tank gives what is asked."""
    flat = direct.Table((1.0, 2.0), (1e-4, 1e-4), (0.9, 1.0))
    sunny = Weather([500.0] * 8750 + [0.0] * 10, [298.15] * 8760, [298.15] * 8760)
    demand = Demand((2.4,) * 12, PATTERNS["even"])
    done = direct.simulate(sunny, Array(PANEL, 1, 1), flat, 5.0, demand, start_m3=4.0)
    # 0.36 m3 an hour offered, 0.1 asked; a metre cubed short of full at the start
    assert done.pumped == pytest.approx(875.0 + 1.0, rel=EXACT)
    assert done.overflow == pytest.approx(8750 * 0.36 - 876.0, rel=EXACT)
    assert done.served == pytest.approx(876.0, rel=EXACT) and done.unserved == 0
    assert done.running_hours == 8750 and abs(done.water_gap) < EXACT
    assert done.array == pytest.approx(3600 * 8750 * 200 * array.USUAL_LOSSES.left, rel=EXACT)
    lost = direct.simulate(sunny, Array(PANEL, 1, 1), flat, 0.5, demand)
    assert lost.unserved == pytest.approx(0.5, rel=EXACT) and lost.dry_hours == 5


def test_the_lowest_of_a_day_is_the_tank_s_share():
    sunny = Weather([0.0] * 8760, [298.15] * 8760, [298.15] * 8760)
    demand = Demand((0.01,) * 12, PATTERNS["even"])
    done = direct.simulate(sunny, Array(PANEL, 1, 1), TABLE, 5.0, demand)
    last = done.worst[-1]
    assert last.lowest == pytest.approx((5.0 - 0.01 * (last.day + 1)) / 5.0, rel=EXACT)
