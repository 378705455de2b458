"""What a year of hours comes to in days: short days, what is held, the worst fortnight."""

import pytest

from calc.power.service import days_of, served_of, worst_fortnight

ASKED = [1.0] * 8760


def missing(*hours):
    given = list(ASKED)
    for hour in hours:
        given[hour] = 0.25
    return given


def test_a_day_is_short_once_however_many_of_its_hours_are():
    done = served_of(ASKED, missing(0, 23, 24, 8759))
    assert (done.dry_hours, done.short_days) == (4, 3)
    assert done.unserved == pytest.approx(3.0) and done.served == pytest.approx(8757.0)
    assert done.asked == 8760 and done.short == pytest.approx(300 / 365)


def test_what_rounding_leaves_is_no_missing_water():
    given = [1 - 1e-12] * 8760
    assert served_of(ASKED, given).short_days == 0 and served_of(ASKED, given).unserved == 0
    assert served_of(ASKED, [1 - 1e-8] * 8760).short_days == 365


def test_days_are_sums_of_their_hours_and_the_least_that_was_held():
    asked = [float(hour) for hour in range(72)]
    held = [1.0 - 0.01 * (hour % 24) for hour in range(72)]
    days = days_of(asked, [ask / 2 for ask in asked], held, [2.0] * 72)
    assert [day.day for day in days] == [0, 1, 2]
    assert [day.asked for day in days] == [sum(range(at, at + 24)) for at in (0, 24, 48)]
    for day in days:
        assert day.served == pytest.approx(day.asked / 2) and day.array == 48.0
        assert day.lowest == pytest.approx(0.77)


@pytest.mark.parametrize("day", [0, 180, 364])
def test_the_worst_fortnight_holds_the_only_day_that_lacks(day):
    days = days_of(ASKED, missing(24 * day + 5), [0.5] * 8760, ASKED)
    worst = worst_fortnight(days)
    assert len(worst) == 14 and day in [one.day for one in worst]


def test_where_nothing_lacks_the_worst_fortnight_holds_least():
    held = [0.9] * 8760
    held[24 * 200 : 24 * 214] = [0.4] * 24 * 14
    worst = worst_fortnight(days_of(ASKED, ASKED, held, ASKED))
    assert [one.day for one in worst] == list(range(200, 214))


def test_more_missing_water_is_worse_than_less_held():
    held = [0.9] * 8760
    held[24 * 200 : 24 * 214] = [0.1] * 24 * 14
    worst = worst_fortnight(days_of(ASKED, missing(24 * 50), held, ASKED))
    assert 50 in [one.day for one in worst]


def test_of_fortnights_equal_but_for_rounding_the_first_is_the_worst():
    held, given = [0.9] * 8760, list(ASKED)
    for day in (100, 300):
        given[24 * day] = 0.25
    given[24 * 300] -= 1e-13
    assert worst_fortnight(days_of(ASKED, given, held, ASKED))[-1].day == 100
    held[24 * 40] = 0.3
    held[24 * 250] = 0.3 - 1e-13
    assert worst_fortnight(days_of(ASKED, ASKED, held, ASKED))[-1].day == 40
