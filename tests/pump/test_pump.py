"""Pump curves, speed, pumps together, pasted tables: what must hold."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.errors import InputError, RangeError
from calc.pump.curve import DisplacementPump, Pump
from calc.pump.invented import LPM, PUMPS, TABLE
from calc.pump.laws import (
    GRADES,
    electrical_power,
    least_flow,
    shaft_power,
    water_power,
    wire_to_water,
)
from calc.pump.pasted import read_points
from calc.pump.points import Point
from calc.pump.sets import Parallel, Series, duty, strongest_head, weakest_head

SMALL, DIAPHRAGM = PUMPS["small"], PUMPS["diaphragm"]
CHECKED = settings(max_examples=100, deadline=None)


@st.composite
def pumps(draw, make=Pump):
    """A pump of 3 to 8 points that falls all the way, from zero flow on."""
    count = draw(st.integers(3, 8))
    steps = draw(st.lists(st.floats(0.5, 20.0), min_size=count, max_size=count))
    drops = draw(st.lists(st.floats(0.1, 12.0), min_size=count, max_size=count))
    flow, head, points = 0.0, sum(drops) + draw(st.floats(0.0, 10.0)), []
    for step, drop in zip(steps, drops, strict=True):
        points.append(Point(flow * LPM, head))
        flow, head = flow + step, head - drop
    return make("drawn", tuple(points))


@given(pumps(), st.floats(0.0, 1.0), st.floats(0.0, 1.0))
@CHECKED
def test_more_flow_never_gives_more_head(pump, a, b):
    low, high = sorted((a * pump.largest_flow, b * pump.largest_flow))
    assert pump.head_at(high) <= pump.head_at(low) + 1e-9


@given(pumps(), st.floats(-0.5, 2.0))
@CHECKED
def test_slope_is_never_above_zero_even_beyond_the_table(pump, share):
    assert pump.head_and_slope(share * pump.largest_flow)[1] <= 0


@given(pumps(), st.floats(0.01, 0.99), st.floats(0.3, 1.2))
@CHECKED
def test_slope_is_the_derivative_of_head(pump, share, speed):
    flow = share * pump.most_flow(speed)
    step = 1e-6 * pump.largest_flow
    ahead, behind = (pump.head_and_slope(flow + d, speed)[0] for d in (step, -step))
    slope = pump.head_and_slope(flow, speed)[1]
    scale = pump.shut_off_head / pump.largest_flow
    assert (ahead - behind) / (2 * step) == pytest.approx(slope, rel=1e-3, abs=1e-3 * scale)


@given(pumps(), st.integers(0, 7))
@CHECKED
def test_curve_passes_through_every_point_given(pump, index):
    point = pump.points[index % len(pump.points)]
    assert pump.head_at(point.flow) == pytest.approx(point.head, rel=1e-12, abs=1e-12)


@given(pumps(), st.floats(0.02, 1.0), st.floats(0.0, 0.999))
@CHECKED
def test_speed_for_a_point_gives_back_its_head(pump, speed, share):
    flow = share * pump.most_flow(max(speed, 0.05))
    speed = max(speed, 0.05)
    head = pump.head_at(flow, speed)
    if head <= 1e-6:
        return
    assert pump.head_at(flow, pump.speed_for(flow, head)) == pytest.approx(head, rel=1e-8)


@given(pumps(DisplacementPump), st.floats(0.2, 1.0), st.floats(0.05, 0.95))
@CHECKED
def test_a_diaphragm_pump_slowed_gives_back_its_head(pump, speed, share):
    flow = share * pump.most_flow(speed)
    head = pump.head_at(flow, speed)
    found = pump.speed_for(flow, head)
    assert pump.head_at(flow, found) == pytest.approx(head, rel=1e-8, abs=1e-8)


@given(pumps(), st.floats(0.05, 1.0), st.floats(0.0, 1.0))
@CHECKED
def test_flow_at_turns_head_at_round(pump, speed, share):
    flow = share * pump.most_flow(speed)
    head = pump.head_at(flow, speed)
    assert pump.head_at(pump.flow_at(head, speed), speed) == pytest.approx(head, rel=1e-9, abs=1e-9)


@given(pumps(), st.floats(0.3, 1.0), st.floats(0.0, 1.0))
@CHECKED
def test_slowed_curve_follows_the_affinity_laws(pump, speed, share):
    flow = share * pump.largest_flow
    slowed = pump.head_at(flow * speed, speed)
    assert slowed == pytest.approx(pump.head_at(flow) * speed**2, rel=1e-9, abs=1e-9)


@given(pumps(), st.integers(2, 4), st.floats(0.0, 1.0))
@CHECKED
def test_equal_pumps_in_series_multiply_the_head(pump, count, share):
    flow = share * pump.largest_flow
    assert Series((pump,) * count).head_at(flow) == pytest.approx(count * pump.head_at(flow))


@given(pumps(), st.integers(2, 4), st.floats(0.0, 1.0))
@CHECKED
def test_equal_pumps_in_parallel_multiply_the_flow(pump, count, share):
    flow = share * pump.largest_flow
    head = Parallel((pump,) * count).head_at(count * flow)
    assert head == pytest.approx(pump.head_at(flow), rel=1e-9, abs=1e-9)


@given(pumps(), pumps(), st.floats(0.01, 0.99))
@CHECKED
def test_unlike_pumps_in_parallel_share_one_head(one, other, share):
    both = Parallel((one, other))
    flow = share * both.largest_flow
    head = both.head_at(flow)
    parts = sum(pump.flow_at(head) for pump in (one, other) if head < pump.shut_off_head)
    assert parts == pytest.approx(flow, rel=1e-5, abs=1e-6 * both.largest_flow)


def test_parallel_slope_is_its_derivative():
    both = Parallel((SMALL, PUMPS["middle"]))
    flow, step = 90 * LPM, 0.01 * LPM
    rise = (both.head_at(flow + step) - both.head_at(flow - step)) / (2 * step)
    assert both.head_and_slope(flow)[1] == pytest.approx(rise, rel=1e-4)


def test_the_weaker_pump_stands_still_above_its_shut_off_head():
    both = Parallel((SMALL, PUMPS["middle"]))
    head = SMALL.shut_off_head + 5
    assert both.flow_at(head) == PUMPS["middle"].flow_at(head)


@given(pumps(), st.floats(0.0, 1.0), st.floats(1e-4, 1.0))
@CHECKED
def test_slowed_to_a_head_the_curve_carried_on_gives_it(pump, share, part):
    flow = share * pump.largest_flow
    head = part * pump.head_at(flow)
    if head > 1e-6:
        speed = pump.slowed_to(flow, head)
        assert pump.head_and_slope(flow, speed)[0] == pytest.approx(head, rel=1e-6, abs=1e-9)


def test_slowed_to_is_speed_for_where_the_table_reaches():
    flow = 30 * LPM
    assert SMALL.slowed_to(flow, 20.0) == pytest.approx(SMALL.speed_for(flow, 20.0), rel=1e-9)


@pytest.mark.parametrize("pump", PUMPS.values(), ids=PUMPS)
@pytest.mark.parametrize("head", [1e-3, 0.2, 5.0])
@pytest.mark.parametrize("flow", [0.0, 1e-9, 1 * LPM, 14 * LPM])
def test_a_low_head_always_has_a_speed(pump, head, flow):
    """Once "No crossing between 1e-06 and 0", or a division by zero."""
    assert 0.0 <= pump.slowed_to(flow, head) <= 1.0


@pytest.mark.parametrize("flow", [0.0, 5.0, 15.9])
def test_a_displacement_pump_moves_its_flow_at_any_low_head(flow):
    # no slip below the head at the end of the table: speed is flow over the free flow, 17 L/min
    pump = DisplacementPump("ends at 2 m", (*DIAPHRAGM.points[:-1], Point(17 * LPM, 2.0)))
    assert pump.slowed_to(flow * LPM, 1.0) == pytest.approx(flow / 17)


def test_standby_speed_at_no_flow_is_the_root_of_the_head_ratio():
    assert SMALL.speed_for(0.0, 0.81 * SMALL.shut_off_head) == pytest.approx(0.9, rel=1e-9)


def test_full_speed_head_needs_full_speed():
    assert SMALL.speed_for(30 * LPM, SMALL.head_at(30 * LPM)) == 1.0


def test_a_head_beyond_full_speed_is_refused_with_the_most_it_gives():
    with pytest.raises(RangeError) as caught:
        SMALL.speed_for(30 * LPM, 40.0)
    assert caught.value.high == SMALL.head_at(30 * LPM)


def test_a_flow_past_the_end_of_the_table_is_refused():
    with pytest.raises(RangeError, match="table ends there"):
        SMALL.head_at(59 * LPM)


def test_a_table_without_zero_flow_is_carried_back_by_a_parabola():
    exact = [Point(q * LPM, 40 - 0.01 * q * q) for q in (10, 20, 30, 40, 50)]
    assert Pump("cut", tuple(exact)).shut_off_head == pytest.approx(40.0, abs=0.6)


def test_a_table_that_starts_far_from_zero_flow_is_refused():
    with pytest.raises(InputError, match="at or near zero flow"):
        Pump("late", tuple(Point(q * LPM, 40 - q) for q in (20, 25, 30)))


def test_a_rising_curve_is_refused_with_its_rows():
    points = (Point(0.0, 30.0, row=2), Point(1 * LPM, 31.0, row=3), Point(2 * LPM, 20.0, row=4))
    with pytest.raises(InputError, match="Row 3 gives more head at a larger flow than row 2"):
        Pump("rising", points)


def test_a_flat_stretch_is_refused():
    with pytest.raises(InputError, match="the same head"):
        Pump("flat", (Point(0.0, 30.0), Point(1 * LPM, 30.0), Point(2 * LPM, 20.0)))


def test_two_equal_flows_are_refused_with_their_rows():
    with pytest.raises(InputError, match="Row 2 and row 3 have the same flow"):
        Pump("twice", (Point(0.0, 30.0), Point(1 * LPM, 28.0), Point(1 * LPM, 20.0)))


def test_two_points_are_too_few():
    with pytest.raises(InputError, match="three or more"):
        Pump("short", (Point(0.0, 30.0), Point(1 * LPM, 28.0)))


def test_points_may_come_in_any_order():
    assert Pump("turned", tuple(reversed(SMALL.points))).points == SMALL.points


# Efficiency, power, NPSH ----------------------------------------------------


def test_best_point_of_a_parabola_is_its_top():
    points = [
        Point(q * LPM, 40 - 0.3 * q, efficiency=0.6 - 0.0004 * (q - 33) ** 2)
        for q in (0, 20, 30, 50)
    ]
    best = Pump("parabola", tuple(points)).best
    assert (best.flow / LPM, best.efficiency) == pytest.approx((33.0, 0.6))


def test_best_point_at_the_end_of_the_table_is_said_so():
    points = [Point(q * LPM, 40 - 0.3 * q, efficiency=0.01 * q) for q in (0, 20, 30, 50)]
    assert Pump("rising efficiency", tuple(points)).best.at_end


def test_a_table_without_efficiency_or_power_has_no_best_point():
    assert Pump("bare", tuple(Point(q * LPM, 40 - q) for q in (0, 10, 20))).best is None


def test_power_slowed_follows_the_cube_of_speed():
    full = SMALL.power_at(30 * LPM, 1.0, 998.2)
    assert SMALL.power_at(24 * LPM, 0.8, 998.2) == pytest.approx(full * 0.512)


@pytest.mark.parametrize("speed", [0.5, 0.7, 0.8, 0.95, 1.0])
@pytest.mark.parametrize("share", [0.0, 0.4, 0.8, 1.0])
def test_a_slowed_pump_is_never_taken_to_need_less_npsh_than_at_full_speed(speed, share):
    flow = share * SMALL.most_flow(speed)
    assert SMALL.npsh_required_at(flow, speed) >= SMALL.npsh_required_at(flow)


def test_a_diaphragm_pumps_power_goes_with_speed_at_the_same_head():
    flow, head = 12.2 * LPM, DIAPHRAGM.head_at(12.2 * LPM)
    slowed = flow - 0.3 * DIAPHRAGM.largest_flow
    assert DIAPHRAGM.head_at(slowed, 0.7) == pytest.approx(head)
    assert DIAPHRAGM.power_at(slowed, 0.7, 998.2) == pytest.approx(
        0.7 * DIAPHRAGM.power_at(flow, 1.0, 998.2)
    )


def test_a_diaphragm_pump_holds_its_cut_out_head_below_its_first_flow():
    assert DIAPHRAGM.head_at(2 * LPM) == DIAPHRAGM.points[0].head


def test_shaft_power_from_efficiency_balances_water_power():
    points = tuple(Point(q * LPM, 40 - 0.3 * q, efficiency=0.012 * q) for q in (0, 20, 40))
    pump = Pump("efficient", points)
    water = water_power(20 * LPM, pump.head_at(20 * LPM), 998.2)
    assert pump.shaft_power_at(20 * LPM, 1.0, 998.2) == pytest.approx(shaft_power(water, 0.24))


def test_figures_not_in_the_table_are_none():
    pump = Pump("bare", tuple(Point(q * LPM, 40 - q) for q in (0, 10, 20)))
    asked = [
        pump.power_at(0.0, 1.0, 998.2),
        pump.shaft_power_at(0.0, 1.0, 998.2),
        pump.npsh_required_at(0.0),
    ]
    assert asked == [None] * 3


def test_wire_to_water_is_the_product_of_the_efficiencies():
    water = 120.0
    drawn = electrical_power(shaft_power(water, 0.5), 0.8, 0.95)
    assert wire_to_water(water, drawn) == pytest.approx(0.5 * 0.8 * 0.95)


def test_least_flow_is_a_tenth_of_the_best():
    assert least_flow(0.002) == pytest.approx(0.0002)


@pytest.mark.parametrize("efficiency", [0.0, 1.0, float("nan")])
def test_an_impossible_efficiency_is_refused(efficiency):
    with pytest.raises(RangeError):
        shaft_power(100.0, efficiency)


# Duty and tolerance ----------------------------------------------------------


@given(pumps(), st.floats(0.0, 0.95), st.floats(0.0, 5.0))
@CHECKED
def test_at_the_duty_point_pump_and_system_agree(pump, share, steepness):
    static = share * pump.shut_off_head
    factor = steepness * pump.shut_off_head / pump.largest_flow**2
    found = duty(pump, lambda q: static + factor * q * q)
    if not found.past_end:
        assert pump.head_at(found.flow) == pytest.approx(
            static + factor * found.flow**2, rel=1e-6, abs=1e-6
        )


def test_a_system_above_shut_off_has_no_duty_point():
    with pytest.raises(InputError, match="shut-off head"):
        duty(SMALL, lambda q: SMALL.shut_off_head)


def test_a_light_system_runs_off_the_end_of_the_table():
    assert duty(SMALL, lambda q: 1.0).past_end


@pytest.mark.parametrize("key", GRADES)
@pytest.mark.parametrize("share", [0.0, 0.3, 0.6, 0.9])
def test_the_tolerance_band_holds_the_curve(key, share):
    flow = share * SMALL.largest_flow
    assert (
        weakest_head(SMALL, flow, GRADES[key])
        < SMALL.head_at(flow)
        < strongest_head(SMALL, flow, GRADES[key])
    )


@pytest.mark.parametrize("share", [0.0, 0.3, 0.6, 0.9])
def test_a_better_grade_has_a_narrower_band(share):
    flow = share * SMALL.largest_flow
    lows = [weakest_head(SMALL, flow, GRADES[key]) for key in ("1B", "2B", "3B")]
    assert lows == sorted(lows, reverse=True)


# Pasted tables ---------------------------------------------------------------

SAME = {
    "semicolons": "Flow L/min; Head m\n0; 40\n30; 34\n60; 20",
    "tabs": "Flow (L/min)\tHead (m)\n0\t40\n30\t34\n60\t20\n",
    "commas": "Q,H\nL/min,m\n0,40\n30,34\n60,20",
    "bars": "Q [L/min] | H [m]\n0 | 40\n30 | 34\n60 | 20",
    "spaces": "Flow L/min Head m\n0 40\n30 34\n60 20",
    "aligned": "Flow (L/min)   Head (m)\n0    40\n30    34\n60    20",
    "across": "Q (L/min) 0 30 60\nH (m) 40 34 20",
    "other units": "Q m3/h; H m\n0; 40\n1.8; 34\n3.6; 20",
    "decimal commas": "Q m3/h H m\n0 40,0\n1,8 34,0\n3,6 20,0",
    "unused column": "Q L/min; amps; H m\n0; 3; 40\n30; 4; 34\n60; 5; 20",
    "empty lines": "\nFlow L/min; Head m\n\n0; 40\n30; 34\n60; 20\n\n",
}


@pytest.mark.parametrize("layout", SAME)
def test_a_table_is_read_in_every_usual_layout(layout):
    points = read_points(SAME[layout])
    assert [p.head for p in points] == [40.0, 34.0, 20.0]
    assert [p.flow / LPM for p in points] == pytest.approx([0, 30, 60])


def test_a_pressure_column_is_read_as_head_of_cold_water():
    first = read_points("gpm; psi\n2; 40\n3; 20\n4; 0")[0]
    assert first.head == pytest.approx(40 * 6894.757293 / (998.2 * 9.80665))


def test_all_columns_are_read():
    row = read_points(
        "Q L/min; H m; Eff %; P1 W; P2 W; NPSH m\n1; 2; 30; 4; 5; 6\n7; 1; -; -; -; -"
    )[0]
    assert (row.efficiency, row.power, row.shaft_power, row.npsh) == pytest.approx((0.3, 4, 5, 6))


def test_a_dash_is_no_figure():
    assert read_points("Q L/min; H m; Eff %\n0; 40; -\n10; 30; 20")[0].efficiency is None


BROKEN = [
    ("Flow gpm; Head ft\n0; 130\n5; abc", "Row 3, “Head ft”: “abc” is not a number"),
    ("Flow gpm; Head ft\n0; 130\n5", "Row 3 has 1 entries; the heading has 2"),
    ("Flow gpm\tHead ft\n0\t130\n5\t110\t3", "Row 3 has 3 entries; the heading has 2"),
    ("Flow gpm; Head ft\n0; 130\n5; -3", "Row 3, “Head ft”: -3 is below zero"),
    ("Flow gpm; Head ft\n0; 130\n-; 110", "Row 3 has no flow"),
    ("Flow; Head\n1; 2", "column “Flow” has no unit"),
    ("Flow L/min; Head m; Eff\n0; 9; 0", "column “Eff” has no unit"),
    ("Flow L/min; Head m; NPSH stones\n0; 9; 0", "column “NPSH stones” has no unit"),
    ("A; B\n1; 2", "No flow column was found"),
    ("Flow gpm; Eff %\n1; 2", "No head column was found"),
    ("Q L/min; H m; H ft\n0; 1; 3", "2 head columns"),
    ("Q L/min; H m; Eff %\n0; 9; 120", "efficiency of 120 % cannot be"),
    ("hello", "Paste the pump's table"),
    ("", "Paste the pump's table"),
    ("Flow gpm; Head ft\n" + "1; 2\n" * 61, "61 rows"),
]


@pytest.mark.parametrize("text, words", BROKEN)
def test_a_broken_table_is_refused_naming_the_row(text, words):
    with pytest.raises(InputError, match=words):
        read_points(text)


@given(st.text(max_size=200))
@CHECKED
def test_any_text_is_read_or_refused_in_words(text):
    try:
        read_points(text)
    except InputError as error:
        assert error.message.endswith((".", "”"))


def test_rows_are_named_as_pasted_when_the_curve_is_wrong():
    points = read_points("Flow L/min; Head m\n\n0; 40\n30; 44\n60; 20")
    with pytest.raises(InputError, match="Row 4 gives more head at a larger flow than row 3"):
        Pump("pasted", points)


def test_the_example_table_is_the_invented_small_pump():
    pasted = Pump("pasted", read_points(TABLE))
    assert all(
        pasted.head_at(p.flow) == pytest.approx(SMALL.head_at(p.flow)) for p in pasted.points
    )


def test_every_invented_pump_is_marked_as_invented():
    assert all(pump.name.startswith("Invented") for pump in PUMPS.values())
