"""A tank over a day: conservation, what is monotone, and an independent integration."""

import itertools
import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.integrate import solve_ivp

from calc import day_tank, storage
from calc.day_tank import MORNING, Window
from calc.errors import InputError, RangeError
from calc.units import DAY, HOUR

EXACT = 1e-9
amounts = st.lists(st.floats(0, 5), min_size=1, max_size=30)
pairs = st.lists(st.tuples(st.floats(0, 5), st.floats(0, 5)), min_size=1, max_size=30)
windows = st.builds(Window, st.floats(0, 24), st.floats(0, 24), st.floats(0, 1e-3))
days = st.tuples(st.lists(windows, max_size=3), st.lists(windows, max_size=4))


def apart(both):
    return tuple(one for one, _ in both), tuple(other for _, other in both)


# Pieces of a day --------------------------------------------------------------------------------


@given(days)
@settings(max_examples=60, deadline=None)
def test_the_pieces_of_a_day_hold_all_that_its_windows_do(both):
    comes, drawn = both
    pieces = day_tank.day(comes, drawn)
    assert sum(one.long for one in pieces) == pytest.approx(DAY, rel=EXACT)
    assert all(a.start + a.long == pytest.approx(b.start) for a, b in itertools.pairwise(pieces))
    # a cut within a microsecond of another is left out
    slack = 1e-5 * (1e-3 * 7)
    for found, one in zip(day_tank.amounts(pieces), both, strict=True):
        assert sum(found) == pytest.approx(sum(w.hours * HOUR * w.flow for w in one), abs=slack)


def test_parts_of_what_is_drawn_add_up_to_it():
    use = day_tank.hourly(0.9, storage.PATTERNS["home"])
    garden = (Window(22.25, 3.5, 1e-4),)
    pieces = day_tank.day((Window(9.5, 6, 1e-4),), (*use, *garden))
    parts = [day_tank.part(pieces, one) for one in (use, garden)]
    whole = day_tank.amounts(pieces)[1]
    assert [sum(both) for both in zip(*parts, strict=True)] == pytest.approx(whole, rel=EXACT)
    assert sum(parts[0]) == pytest.approx(0.9) and sum(parts[1]) == pytest.approx(1.26)


def test_hours_past_midnight_are_the_night_of_the_same_day():
    (piece,) = (one for one in day_tank.day((), (Window(0.0, 0.1, 1.0),)) if one.drawn)
    assert piece.start == (24 - MORNING) * HOUR and piece.long == pytest.approx(360)


@pytest.mark.parametrize("begins, hours", [(-1, 2), (25, 2), (3, 25), (3, -1), (math.nan, 2)])
def test_hours_outside_a_day_are_refused(begins, hours):
    with pytest.raises(RangeError):
        day_tank.day((Window(begins, hours, 1.0),), ())


# Conservation and order -------------------------------------------------------------------------


@given(pairs, st.floats(0.1, 20), st.floats(0, 0.9), st.floats(0, 1))
@settings(max_examples=200, deadline=None)
def test_all_that_came_is_given_or_ran_over_or_is_there(both, volume, reserve, full):
    comes, asked = apart(both)
    kept = reserve * volume
    run = day_tank.follow(comes, asked, volume, kept, kept + full * (volume - kept))
    whole = volume + sum(comes) + sum(asked)
    assert abs(run.kept) <= EXACT * whole
    slack = EXACT * whole
    assert all(kept - slack <= level <= volume + slack for level in run.levels)
    assert all(not (a > 0 and b > 0) for a, b in zip(run.over, run.missing, strict=True))


@given(pairs, st.floats(0.1, 20), st.floats(0, 0.9))
@settings(max_examples=200, deadline=None)
def test_a_run_that_repeats_ends_as_it_began_from_wherever_the_tank_started(both, volume, reserve):
    comes, asked = apart(both)
    kept = reserve * volume
    run = day_tank.repeated(comes, asked, volume, kept)
    whole = volume + sum(comes) + sum(asked)
    assert run.levels[-1] == pytest.approx(run.levels[0], abs=2e-9 * whole)
    gain = abs(sum(comes) - sum(asked))
    if gain < 0.01 * volume:
        return  # it would take too many runs to try
    for start in (kept, (kept + volume) / 2, volume):
        level = start
        for _ in range(math.ceil((volume - kept) / gain) + 2):
            level = day_tank.follow(comes, asked, volume, kept, level).levels[-1]
        assert level == pytest.approx(run.levels[-1], abs=EXACT * whole * 100)


@given(pairs, st.floats(0.1, 20), st.floats(1, 3), st.floats(1, 3))
@settings(max_examples=200, deadline=None)
def test_a_bigger_tank_and_more_inflow_never_serve_less(both, volume, bigger, more):
    comes, asked = apart(both)
    served = day_tank.repeated(comes, asked, volume, 0.0).served
    slack = EXACT * (sum(comes) + sum(asked) + volume)
    assert day_tank.repeated(comes, asked, bigger * volume, 0.0).served >= served - slack
    rich = [more * one for one in comes]
    # with as much in as out the run that repeats is that from a full tank
    assert day_tank.repeated(rich, asked, volume, 0.0).served >= served - slack
    kept = 0.5 * volume
    assert day_tank.repeated(comes, asked, volume, kept).served <= served + slack


@given(pairs)
@settings(max_examples=200, deadline=None)
def test_the_tank_it_asks_for_is_just_enough(both):
    comes, asked = apart(both)
    least = day_tank.swing(comes, asked)
    if least is None:
        assert sum(day_tank.repeated(comes, asked, 1e5, 0.0).missing) > 0
        return
    if least < 1e-6:
        return
    whole = sum(comes) + sum(asked)
    assert sum(day_tank.repeated(comes, asked, least, 0.0).missing) <= EXACT * whole
    assert sum(day_tank.repeated(comes, asked, 0.99 * least, 0.0).missing) > 0.005 * least


def test_the_tank_it_asks_for_is_that_of_the_storage_tanks_balance():
    """Both count the same day by the hour: the pump's hours are whole here."""
    for pattern, shares in storage.PATTERNS.items():
        steady = storage.supply_pattern(6.0, 12.0)
        balance = storage.daily_balance(0.93, shares, 2.16, steady)
        use = day_tank.hourly(0.93, shares)
        pieces = day_tank.day((Window(9.0, 6.0, 1e-4),), use)
        assert day_tank.swing(*day_tank.amounts(pieces)) == pytest.approx(balance.swing), pattern


@given(pairs, st.floats(0.1, 5))
@settings(max_examples=100, deadline=None)
def test_the_inflow_it_asks_for_is_just_enough(both, volume):
    comes, asked = apart(both)
    if sum(comes) < 0.1 or sum(asked) < 0.1:
        return
    times = day_tank.least_times(comes, asked, volume, 0.0)
    if times is None:
        rich = [1e6 * one for one in comes]
        least = day_tank.swing(rich, asked)
        assert least is None or least > volume * (1 - EXACT)
        return
    enough = [times * one for one in comes]
    assert sum(day_tank.repeated(enough, asked, volume, 0.0).missing) <= 1e-8 * sum(asked)
    less = [0.98 * one for one in enough]
    assert sum(day_tank.repeated(less, asked, volume, 0.0).missing) > 0 or sum(asked) == 0


@pytest.mark.parametrize(
    "volume, kept, start, name",
    [(0.0, 0.0, 0.0, "volume"), (1.0, 1.0, 1.0, "kept"), (1.0, -0.1, 1.0, "kept"),
     (1.0, 0.2, 0.1, "start"), (1.0, 0.2, 1.1, "start")],
)  # fmt: skip
def test_a_tank_that_cannot_be_is_refused_by_name(volume, kept, start, name):
    with pytest.raises(InputError) as caught:
        day_tank.follow((1.0,), (1.0,), volume, kept, start)
    assert caught.value.name == name


# Moments ----------------------------------------------------------------------------------------


def evening(volume=0.9, kept=0.0):
    """Alder Terrace's August: six hours of sun, a garden from six to eight."""
    use = day_tank.hourly(0.934, storage.PATTERNS["home"])
    pieces = day_tank.day((Window(9.5, 6.0, 1e-4),), (*use, Window(18.0, 2.0, 0.8 / 7200)))
    return pieces, day_tank.repeated(*day_tank.amounts(pieces), volume, kept)


def test_the_moment_a_tank_is_empty_is_exact():
    """By hand: from full at 15:30 the use of the afternoon is gone, then the garden's flow."""
    (span,) = day_tank.empty_spans(*evening())
    shares = storage.PATTERNS["home"]
    left = 0.9 - 0.934 * (shares[15] / 2 + shares[16] + shares[17])
    first = 0.934 * shares[18] + 0.4
    rate = (0.934 * shares[19] + 0.4) / HOUR
    wanted = (19 - MORNING) * HOUR + (left - first) / rate
    assert span[0] == pytest.approx(wanted)
    assert span[1] == pytest.approx(DAY + (9.5 - MORNING) * HOUR)


def test_the_time_below_a_level_is_counted_to_the_second_while_water_is_drawn():
    pieces = day_tank.day((Window(0.0, 24.0, 1.0),), (Window(6.0, 12.0, 3.0),))
    run = day_tank.follow(*day_tank.amounts(pieces), 100000.0, 0.0, 90000.0)
    # falls at 2 m3/s from 90 000 and is below 30 000 after 30 000 s, of 43 200
    assert day_tank.time_below(pieces, run, lambda flow: 30000.0) == pytest.approx(13200)
    assert day_tank.time_below(pieces, run, lambda flow: 0.0) == 0
    assert day_tank.time_below(pieces, run, lambda flow: 1e6) == pytest.approx(43200)


def test_an_empty_tank_does_not_count_as_one_with_too_little_pressure():
    pieces = day_tank.day((), (Window(6.0, 24.0, 1.0),))
    run = day_tank.follow(*day_tank.amounts(pieces), 10000.0, 0.0, 10000.0)
    assert day_tank.time_below(pieces, run, lambda flow: 1e6) == pytest.approx(10000)


# Against an independent integration -------------------------------------------------------------


def integrated(pieces, volume, kept, start):
    """(level, given, over, first moment it is empty) after a day: flows of an ODE solver.

    The level is free between its bounds, and at a bound it is held: the solver stops at each by
    an event and goes on, from one change of the flows to the next.
    """
    level, given_, over, empty = start, 0.0, 0.0, None
    for piece in pieces:
        at, end = piece.start, piece.start + piece.long
        net = piece.comes - piece.drawn
        while end - at > 1e-9:
            if (level >= volume - 1e-12 and net > 0) or (level <= kept + 1e-12 and net < 0):
                over += max(0.0, net) * (end - at)
                given_ += min(piece.drawn, piece.comes if net < 0 else piece.drawn) * (end - at)
                if net < 0 and empty is None:
                    empty = at
                break

            def full(_, y):
                return y[0] - volume

            def out(_, y):
                return y[0] - kept

            full.terminal = out.terminal = True
            full.direction, out.direction = 1, -1
            found = solve_ivp(
                lambda _t, _y, one=piece: [one.comes - one.drawn, one.drawn],
                (at, end), [level, 0.0], events=(full, out), rtol=1e-11, atol=1e-14,
            )  # fmt: skip
            level, drawn = found.y[:, -1]
            level = float(np.clip(level, kept, volume))
            given_ += float(drawn)
            at = float(found.t[-1])
            if found.status == 1 and len(found.t_events[1]):
                level, empty = kept, at if empty is None else empty
            elif found.status == 1:
                level = volume
    return level, given_, over, empty


@pytest.mark.parametrize(
    "volume, kept, full", [(0.9, 0.0, 1.0), (0.9, 0.0, 0.3), (2.7, 1.5, 0.7), (5.0, 0.0, 0.0)]
)
def test_a_day_is_that_of_a_general_solver_of_differential_equations(volume, kept, full):
    pieces, _ = evening()
    start = kept + full * (volume - kept)
    run = day_tank.follow(*day_tank.amounts(pieces), volume, kept, start)
    level, served, over, empty = integrated(pieces, volume, kept, start)
    assert run.levels[-1] == pytest.approx(level, abs=1e-8)
    assert run.served == pytest.approx(served, abs=1e-8)
    assert sum(run.over) == pytest.approx(over, abs=1e-8)
    spans = day_tank.empty_spans(pieces, run)
    assert (empty is None) == (not spans)
    if spans:
        assert min(start for start, _ in spans) == pytest.approx(empty, abs=0.01)


def test_a_long_piece_cut_into_short_ones_changes_nothing():
    pieces, run = evening()
    comes, asked = day_tank.amounts(pieces)
    fine = [[one / 7 for one in each for _ in range(7)] for each in (comes, asked)]
    again = day_tank.repeated(*fine, 0.9, 0.0)
    assert again.served == pytest.approx(run.served, rel=EXACT)
    assert again.levels[::7] == pytest.approx(run.levels, abs=EXACT)
