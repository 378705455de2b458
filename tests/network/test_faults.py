"""The finder of faults: by hand, against scipy, and tried with faults put into many supplies."""

import collections
import functools
import math
import os
from dataclasses import replace

import pytest
from scipy import stats

from calc import storage
from calc.network import faults, next_reading
from calc.network.fault_kinds import BY_KEY, KINDS, SYMPTOMS, noticed
from calc.network.fault_readings import Expected, Reading
from calc.network.faults import NOTHING, Fault
from calc.network.suspects import Finder, chi2_tail, log_likelihood
from calc.units import LITRE, MINUTE
from tests.network import faulty

MORE = int(os.environ.get("SPRINGLINE_SUPPLIES", "0"))
TRIALS = 12 if not MORE else min(100, 12 + MORE // 40)
EACH = 20
BAR, LPM = 1e5, LITRE / MINUTE
CABIN = "upper fork – cabin 3"


@functools.cache
def alder():
    return faulty.trials(1)[0]


def sound(kind, at="", opened=(), **more):
    """A reading as the sound Alder Terrace would give it."""
    reading = replace(Reading(kind, 0.0, 1.0, at, opened), **more)
    value = alder().finder.sound.of(reading)
    error = faulty.ERRORS.get(kind) or faulty.SHARES[kind] * abs(value)
    return replace(reading, value=value, error=error)


# Put in and found again ---------------------------------------------------------------------------


@functools.cache
def outcomes():
    """(truths, place of the first true one's group from 0, its ranking) of every case."""
    found = []
    for at, trial in enumerate(faulty.trials(TRIALS)):
        for seed in range(EACH):
            truths, readings = faulty.case(trial, 1000 * at + seed)
            ranking = trial.finder.rank(readings)
            places = [
                place
                for place, group in enumerate(ranking.groups)
                if any(group.has(truth) for truth in truths)
            ]
            found.append((truths, min(places, default=99), ranking))
    return found


def test_the_fault_put_in_is_ranked_first_in_eight_of_ten_and_among_three_in_nineteen_of_twenty():
    by_kind, places = collections.defaultdict(list), []
    for truths, place, _ in outcomes():
        by_kind["two faults" if len(truths) > 1 else truths[0].kind].append(place)
        places.append(place)
    for kind, own in sorted(by_kind.items()):
        first, three = (sum(one < most for one in own) / len(own) for most in (1, 3))
        print(f"{kind:12} {len(own):4} cases, first {first:4.0%}, among three {three:4.0%}")
    first, three = (sum(one < most for one in places) / len(places) for most in (1, 3))
    print(f"{'all':12} {len(places):4} cases, first {first:4.1%}, among three {three:4.1%}")
    assert len(places) >= 200
    assert {kind.key for kind in KINDS} | {"two faults"} == set(by_kind)  # none was left out
    assert first >= 0.8
    assert three >= 0.95


def test_groups_are_small_so_that_to_name_one_says_something():
    sizes = sorted(len(ranking.groups[0].fits) for _, _, ranking in outcomes())
    assert sizes[len(sizes) // 2] <= 2
    named = [t[0].kind for t, place, r in outcomes() if place == 0 and len(r.groups[0].fits) <= 3]
    assert len(named) >= 0.6 * len(outcomes())


def test_a_group_is_alike_in_every_reading_and_another_group_s_first_is_not():
    for _, _, ranking in outcomes()[:60]:
        for group in ranking.groups[:3]:
            for fit in group.fits:
                far = [
                    abs(a - b) / error
                    for a, b, error in zip(
                        fit.expected, group.first.expected, ranking.errors, strict=True
                    )
                ]
                assert max(far, default=0.0) <= 1.0
        assert sum(group.share for group in ranking.groups) == pytest.approx(1.0)


def test_shares_mean_what_they_say():
    """Of the groups given 90 % or more, at least four of five hold the truth."""
    sure = [place == 0 for _, place, ranking in outcomes() if ranking.groups[0].share >= 0.9]
    assert len(sure) >= 50
    assert sum(sure) >= 0.8 * len(sure)


# By hand ------------------------------------------------------------------------------------------


def test_the_likelihood_of_one_reading_is_the_normal_distribution_s():
    """One static pressure, two faults: the shares by scipy.stats.norm, step by step."""
    finder = alder().finder
    reading = replace(sound("pressure", "pump"), value=2.9 * BAR, error=0.1 * BAR)
    ranking = finder.rank((reading,))
    slopes = finder.slopes(reading)
    error = math.sqrt(reading.error**2 + sum(one**2 for one in slopes))
    assert ranking.errors == pytest.approx((error,))
    healthy = finder.expected(NOTHING, 1.0, reading)
    assert healthy == pytest.approx(3.5 * BAR)
    nothing = BY_KEY["nothing"].prior * stats.norm.pdf(2.9 * BAR, healthy, error)
    marks = BY_KEY["set"].severities  # 0.9 to 0.5, and three points between each two
    grid = [marks[0] * 3.5 * BAR]
    for low, high in zip(marks, marks[1:], strict=False):
        grid += [(low + (high - low) * step / 4) * 3.5 * BAR for step in range(1, 5)]
    wide = [math.hypot(error, 0.05 * (one - healthy)) for one in grid]
    mean = sum(stats.norm.pdf(2.9 * BAR, e, s) for e, s in zip(grid, wide, strict=True)) / len(grid)
    low_set = BY_KEY["set"].prior * mean
    fits = {fit.fault.kind: fit for group in ranking.groups for fit in group.fits}
    assert fits["set"].share / fits["nothing"].share == pytest.approx(low_set / nothing, rel=1e-6)
    # a weak pump and a leak lower it too
    assert max(fits.values(), key=lambda fit: fit.share).fault == Fault("set")


def test_the_likelihood_of_several_readings_is_that_of_scipy():
    spread = [[4.0, 1.0, 0.5], [1.0, 3.0, -0.2], [0.5, -0.2, 2.0]]
    apart = [1.0, -2.0, 0.7]
    log, chi2 = log_likelihood(apart, spread)
    assert log == pytest.approx(stats.multivariate_normal(cov=spread).logpdf(apart), rel=1e-12)
    assert 0 < chi2 < 10


@pytest.mark.parametrize(("chi2", "count"), [(0.0, 1), (3.84, 1), (5.99, 2), (20.0, 7), (11.0, 12)])
def test_how_far_off_is_that_of_scipy(chi2, count):
    assert chi2_tail(chi2, count) == pytest.approx(stats.chi2.sf(chi2, count), rel=1e-10)


# What each fault changes --------------------------------------------------------------------------


def reads(fault, severity, reading):
    return alder().finder.expected(fault, severity, reading)


EVERY = (("Cabin 3 shower", 1), ("Wash-house hose", 1), ("Wash-house shower", 2))


def test_a_part_shut_valve_leaves_the_static_pressure_and_takes_the_running_one():
    fault = Fault("valve", CABIN)
    static, running = sound("pressure", "cabin 3"), sound("pressure", "cabin 3", EVERY)
    assert reads(fault, 1300.0, static) == pytest.approx(static.value, abs=100)
    assert reads(fault, 1300.0, running) < running.value - 0.2 * BAR


def test_a_shut_valve_leaves_nothing_behind_it_and_the_rest_as_it_was():
    fault = Fault("shut", CABIN)
    assert reads(fault, 9e5, sound("pressure", "cabin 3")) == 0.0
    assert reads(fault, 9e5, sound("bucket", "Cabin 3 shower", (("Cabin 3 shower", 1),))) == 0.0
    other = sound("pressure", "cabin 1")
    assert reads(fault, 9e5, other) == pytest.approx(other.value, abs=100)


def test_a_narrower_pipe_is_one_size_smaller_and_loses_more():
    sections = alder().finder.supply.network
    assert faults.smaller(sections.run(CABIN).pipe).size == "20"
    running = sound("pressure", "cabin 3", EVERY)
    assert reads(Fault("narrow", CABIN), 1.0, running) < running.value


def test_a_leak_draws_at_rest_and_empties_the_tank():
    fault = Fault("leak", CABIN)
    closed, standby = sound("closed"), sound("standby")
    assert standby.value == 0.0 == closed.value
    assert reads(fault, 1.5 * LPM, closed) == 0.0
    # by hand: Boyle's law for what the leak takes in ten minutes at its static pressure
    supply = alder().finder.supply
    changed = Expected(faults.changed(supply, fault, 1.5 * LPM))
    static = changed.solution(()).pressure("cabin 3")
    flow = 1.5 * LPM * math.sqrt(static / 2e5)
    high = changed.solution(()).pressure("pump")
    end = high - reads(fault, 1.5 * LPM, standby)
    air = 101325.0 * (1 - 2.25577e-5 * 300.0) ** 5.25588  # US Standard Atmosphere 1976, from memory
    if end > supply.charge_pa:
        gives = storage.drawdown(supply.tank_m3, supply.charge_pa, end, high, air)
        assert gives == pytest.approx(flow * 600, rel=1e-3)
    else:
        assert end == 0.0  # below its pre-charge the tank holds no water


def test_a_check_valve_that_stays_open_loses_pressure_with_the_valve_behind_the_tank_shut():
    fault = Fault("check")
    assert reads(fault, 0.5 * LPM, sound("closed")) > 0.1 * BAR
    assert reads(fault, 0.5 * LPM, sound("standby")) == reads(fault, 0.5 * LPM, sound("closed"))


def test_low_voltage_slows_the_pump_by_the_affinity_laws():
    supply = alder().finder.supply
    slow = faults.changed(supply, Fault("volts"), 0.8).pumps[0]
    whole = supply.pumps[0].pump
    flow = 30 * LPM
    assert slow.pump.head_and_slope(0.8 * flow, slow.speed)[0] == pytest.approx(
        0.64 * whole.head_at(flow)
    )
    assert reads(Fault("volts"), 0.8, sound("volts")) == pytest.approx(0.8 * 24.0)


@pytest.mark.parametrize(("kind", "flow_share"), [("worn", 0.7), ("air", 0.49)])
def test_a_weaker_pump_gives_less_head_and_flow(kind, flow_share):
    supply = alder().finder.supply
    weak = faults.changed(supply, Fault(kind), 0.7).pumps[0].pump
    whole = supply.pumps[0].pump
    flow = 40 * LPM
    assert weak.head_at(flow_share * flow) == pytest.approx(0.7 * whole.head_at(flow))


def test_a_worn_pump_draws_what_it_drew_and_one_with_air_draws_less():
    supply = alder().finder.supply
    for kind, share in (("worn", 1.0), ("air", 0.49)):
        weak = faults.changed(supply, Fault(kind), 0.7).pumps[0].pump
        power = weak.power_at(weak.largest_flow, 1.0, 1000.0)
        whole = supply.pumps[0].pump
        assert power == pytest.approx(share * whole.power_at(whole.largest_flow, 1.0, 1000.0))


def test_water_that_stands_lower_is_read_at_the_suction_gauge_and_by_the_line():
    level, suction = sound("level"), sound("suction", "", EVERY)
    assert reads(Fault("level"), 2.0, level) == pytest.approx(level.value + 2.0)
    weight = alder().finder.supply.network.weight
    lower = reads(Fault("level"), 2.0, suction)
    assert lower == pytest.approx(suction.value - 2.0 * weight, abs=0.02 * BAR)


def test_a_blocked_strainer_is_read_at_the_suction_gauge_only_while_water_flows():
    still, running = sound("suction"), sound("suction", "", EVERY)
    fault = Fault("strainer")
    assert reads(fault, 480.0, still) == pytest.approx(still.value, abs=100)
    assert reads(fault, 480.0, running) < running.value - 0.05 * BAR


def test_a_tank_without_its_air_starts_the_pump_the_more_often():
    trickle = sound("starts", "", (("Goat trough", 1),))
    if trickle.value:
        assert reads(Fault("charge"), 0.2, trickle) == pytest.approx(5 * trickle.value, rel=1e-6)
    supply = replace(alder().finder.supply, least_m3s=math.inf)
    whole, lost = (
        Expected(faults.changed(supply, Fault("charge"), share)).drawdown() for share in (1.0, 0.2)
    )
    assert lost == pytest.approx(0.2 * whole)


def test_a_furred_outlet_gives_less_by_the_bucket_alone():
    own = (("Cabin 3 shower", 1),)
    bucket, other = sound("bucket", "Cabin 3 shower", own), sound("pressure", "cabin 1", own)
    fault = Fault("outlet", "Cabin 3 shower")
    assert reads(fault, 0.5, bucket) < 0.6 * bucket.value
    assert reads(fault, 0.5, other) >= other.value - 100


def test_a_blocked_filter_loses_more_with_the_square_of_the_flow():
    trial = next(
        one
        for one in faulty.trials(TRIALS)
        if any(suspect.kind == "filter" for suspect in one.finder.suspects)
    )
    fault = next(one for one in trial.finder.suspects if one.kind == "filter")
    supply = trial.finder.supply
    clean, blocked = (one.network.link(fault.where) for one in (
        supply, faults.changed(supply, fault, 25.0)
    ))  # fmt: skip
    assert blocked.loss_m == pytest.approx(25 * clean.loss_m)
    assert blocked.flow_m3s == clean.flow_m3s


def test_every_fault_is_possible_once_and_only_where_it_can_be():
    for trial in faulty.trials(4):
        suspects = trial.finder.suspects
        assert len(set(suspects)) == len(suspects)
        assert suspects[0] == NOTHING


def test_two_faults_may_be_put_in_one_after_the_other():
    supply = alder().finder.supply
    both = faults.changed(supply, Fault("leak", CABIN), 5 * LPM)
    both = faults.changed(both, Fault("leak", "pump – lower fork"), 5 * LPM)
    draws = Expected(both).solution(()).draws
    assert sum(flow > 0 for flow in draws.values()) == 2


# Symptoms, next reading ---------------------------------------------------------------------------


def test_what_was_noticed_shifts_the_shares_and_never_rules_out():
    finder = alder().finder
    readings = (sound("pressure", "pump", EVERY),)

    def share(kind, symptoms):
        fits = [f for g in finder.rank(readings, symptoms).groups for f in g.fits]
        return sum(fit.share for fit in fits if fit.fault.kind == kind)

    assert share("charge", ("cycling",)) > share("charge", ())
    assert share("outlet", ("weak_one",)) > share("outlet", ())
    assert share("worn", tuple(SYMPTOMS)) > 0
    assert noticed("air", ("air", "prime")) == pytest.approx(0.9 * 0.7)


def test_the_next_reading_parts_what_is_likely_and_was_not_taken_yet():
    trial = alder()
    finder = trial.finder
    truth = Fault("check")
    taken = tuple(one for one in trial.design if one.kind in ("pressure", "standby"))
    readings = [replace(one, value=finder.expected(truth, 0.1 * LPM, one)) for one in taken]
    ranking = finder.rank(readings)
    found = next_reading.best(finder, ranking, trial.design)
    assert found is not None
    assert found.reading.asked not in {one.asked for one in readings}
    told = replace(found.reading, value=finder.expected(truth, 0.1 * LPM, found.reading))
    after = finder.rank([*readings, told])

    def share(ranking):
        return sum(f.share for g in ranking.groups for f in g.fits if f.fault == truth)

    assert share(after) > share(ranking)


def test_readings_that_no_single_fault_explains_are_said_to():
    finder = alder().finder
    readings = (
        replace(sound("pressure", "pump"), value=9 * BAR),
        replace(sound("pressure", "cabin 3"), value=0.1 * BAR),
        replace(sound("level"), value=0.5),
    )
    assert finder.rank(readings).unlike
    assert not finder.rank((sound("pressure", "pump"), sound("level"))).unlike


def test_readings_that_fit_the_sound_supply_name_no_fault():
    trial = alder()
    ranking = trial.finder.rank(trial.design)
    assert ranking.groups[0].has(NOTHING)


def test_a_supply_s_finder_is_quick():
    """A page waits for one: fewer than 2,000 solutions of the network."""
    finder = Finder(alder().finder.supply)
    finder.rank(alder().design)
    solved = sum(len(one._solved) for one in finder._changed.values()) + len(finder.sound._solved)
    assert solved < 2000
