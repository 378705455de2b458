"""The year: balances, more never serves less, the worst fortnight, backup, and what is refused."""

import dataclasses

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.errors import InputError
from calc.power import year
from calc.power.array import Array
from calc.power.motor import Draw
from calc.power.year import Backup, Demand, Weather, simulate
from calc.storage import PATTERNS
from tests.power.places import HOME, MPPT, PANEL, WH, system, weather

ROUNDS = settings(max_examples=25, deadline=None)  # two years each, about 0.1 s
CLOSED = 1e-9  # of the year's energy and water: what DECISIONS asks; rounding is about 1e-15
SAME = 1e-9  # m3: two years summed in another order

systems = st.builds(
    system,
    st.integers(1, 3),
    st.floats(300.0, 4000.0),
    st.sampled_from((0.0, 0.5, 2.0, 5.0)),
    st.sampled_from(("flooded", "agm", "gel", "lfp")),
    pump=st.builds(Draw, st.floats(80.0, 900.0), st.floats(1e-4, 1e-3), st.floats(0.0, 30.0)),
)
demands = st.builds(
    Demand,
    st.tuples(*[st.floats(0.0, 5.0)] * 12),
    st.sampled_from(sorted(PATTERNS)).map(PATTERNS.get),
)


@ROUNDS
@given(systems, demands, st.integers(1, 3), st.sampled_from((None, Backup(300.0, 2.0))))
def test_energy_and_water_balances_close(one, demand, seed, backup):
    done = simulate(weather(seed), dataclasses.replace(one, backup=backup), demand)
    assert abs(done.energy_gap) < CLOSED and abs(done.water_gap) < CLOSED
    assert done.served + done.unserved == pytest.approx(done.asked, rel=CLOSED, abs=SAME)
    assert min(done.used, done.spilled, done.lost, done.unserved) >= 0
    assert 0 <= done.lowest <= 1


@ROUNDS
@given(systems, demands, st.integers(1, 3), st.sampled_from(("panel", "battery", "tank")),
       st.floats(0.0, 1.0), st.floats(0.0, 1.0))  # fmt: skip
def test_more_of_anything_never_serves_less(one, demand, seed, what, charge, water):
    """Equal Wh and m3 at the start, the cut-out in Wh, in warm air (cold keeps back a share)."""
    warm = weather(seed, mean_k=315.0)
    reserve = 0.3 * one.battery.energy_j
    kept = dataclasses.replace(one.battery, reserve_j=reserve)
    less = dataclasses.replace(one, battery=kept)
    more = {
        "panel": dataclasses.replace(less, array=Array(PANEL, 1, one.array.parallel + 1)),
        "battery": dataclasses.replace(
            less, battery=dataclasses.replace(kept, energy_j=1.7 * kept.energy_j)
        ),
        "tank": dataclasses.replace(less, tank_m3=1.5 * one.tank_m3 + 0.7),
    }[what]
    start = charge * kept.energy_j, water * one.tank_m3
    before, after = (simulate(warm, each, demand, *start) for each in (less, more))
    assert after.served >= before.served - SAME


def test_a_cut_out_as_a_share_is_the_exception():
    """The larger battery, no fuller at the start, must not be drawn as far, and serves less."""
    dark = Weather([0.0] * 8760, [300.0] * 8760, [300.0] * 8760)
    small, large = system(wh=1200.0), system(wh=9600.0)
    served = [simulate(dark, one, HOME, 1200.0 * WH, 0.0).served for one in (small, large)]
    assert served[1] < served[0]


def test_a_larger_battery_in_the_cold_is_the_exception():
    cold = Weather([0.0] * 8760, [255.0] * 8760, [255.0] * 8760)
    small, large = (system(wh=wh, reserve_wh=100.0) for wh in (1200.0, 9600.0))
    served = [simulate(cold, one, HOME, 1200.0 * WH, 0.0).served for one in (small, large)]
    assert served[1] < served[0]


def test_a_system_with_plenty_serves_all():
    done = simulate(weather(), system(6, 9600.0, 5.0), HOME)
    assert done.unserved == 0 and done.short_days == 0 and done.dry_hours == 0
    assert done.spilled > 0


def test_without_sun_the_battery_and_the_tank_are_all_there_is():
    dark = Weather([0.0] * 8760, [300.0] * 8760, [300.0] * 8760)
    quiet = dataclasses.replace(MPPT, standby_w=0.0)
    one = system(1, 1000.0, 3.0, "lfp", pump=Draw(450.0, 6e-4, 0.0), controller=quiet)
    done = simulate(dark, one, HOME)
    most = 3.0 + 0.8 * 1000 * 0.97 * WH / one.pump.joule_per_m3
    assert 3.0 < done.served < most
    assert done.array == 0 and done.short_days >= 361


def test_frost_keeps_lithium_from_charging():
    frost = [268.0] * 8760
    cold = Weather(weather().plane, frost, frost)
    done = simulate(cold, system(3, 2400.0, 0.0, "lfp"), HOME)
    lead = simulate(cold, system(3, 2400.0, 0.0, "agm"), HOME)
    assert done.unserved > lead.unserved
    assert done.cycles < 1.0  # it is emptied once


def test_a_backup_serves_what_the_sun_does_not_and_its_hours_are_counted():
    one = system(1, 400.0)
    alone = simulate(weather(), one, HOME)
    helped = simulate(weather(), dataclasses.replace(one, backup=Backup(600.0)), HOME)
    assert alone.unserved > 1.0 and helped.unserved < 1e-6
    assert helped.backup_hours == pytest.approx(helped.aided / WH / 600.0, rel=1e-12)
    short = simulate(weather(), dataclasses.replace(one, backup=Backup(600.0, 0.1)), HOME)
    assert helped.unserved < short.unserved < alone.unserved
    assert short.backup_hours <= 36.5 + 1e-9  # a tenth of an hour on 365 days


def test_the_worst_fortnight_is_where_the_dull_days_are():
    plane = list(weather().plane)
    plane[100 * 24 : 110 * 24] = [0.0] * 240
    dull = Weather(plane, weather().module_k, weather().air_k)
    done = simulate(dull, system(4, 1500.0), HOME)
    first = done.worst[0].day
    assert len(done.worst) == 14 and first <= 102 and first + 14 >= 108
    missed = sum(day.asked - day.served for day in done.worst)
    assert 0 < missed <= done.unserved + SAME
    assert [day.day for day in done.worst] == list(range(first, first + 14))


def test_hours_and_days_are_counted_where_less_is_given():
    one = system(1, 400.0)
    done, hours = simulate(weather(), one, HOME), year.trace(weather(), one, HOME)
    dry = [hour.served < ask * (1 - 1e-9) for hour, ask in zip(hours, HOME.hours, strict=True)]
    assert done.dry_hours == sum(dry) > 0
    assert done.short_days == sum(any(dry[at : at + 24]) for at in range(0, 8760, 24))
    assert done.short == pytest.approx(done.short_days / 3.65, rel=1e-12)


def test_the_battery_never_fills_the_tank():
    hours = year.trace(weather(), system(1, 4000.0, 5.0), HOME)
    levels = [5.0] + [hour.level for hour in hours]
    sun = weather().plane
    risen = [at for at in range(8760) if levels[at + 1] > levels[at] + 1e-12]
    assert risen and all(sun[at] > 0 for at in risen)


@pytest.mark.parametrize("name", ["plane", "module_k", "air_k"])
@pytest.mark.parametrize("fault", ["leap", "gap", "cold"])
def test_a_series_that_is_no_year_is_named(name, fault):
    whole = {"plane": [100.0] * 8760, "module_k": [300.0] * 8760, "air_k": [300.0] * 8760}
    bad = list(whole[name])
    if fault == "leap":
        bad += [300.0] * 24
    else:
        bad[4999] = float("nan") if fault == "gap" else -40.0
    with pytest.raises(InputError) as caught:
        Weather(**whole | {name: bad})
    assert caught.value.name == name
    assert ("8,784" if fault == "leap" else "hour 5,000") in caught.value.message


@pytest.mark.parametrize(
    "name, args",
    [("by_month", ((1.0,) * 11, PATTERNS["home"])), ("by_month", ((-1.0,) * 12, PATTERNS["home"])),
     ("shares", ((1.0,) * 12, (0.05,) * 24))],
)  # fmt: skip
def test_a_demand_that_cannot_be_is_named(name, args):
    with pytest.raises(InputError) as caught:
        Demand(*args)
    assert caught.value.name == name


def test_a_string_too_long_for_the_cold_is_named():
    one = dataclasses.replace(system(), array=Array(PANEL, 4, 1))
    with pytest.raises(InputError) as caught:
        simulate(weather(), one, HOME)
    assert caught.value.name == "series"


@pytest.mark.parametrize("name, start", [("start_j", (1e12, 0.0)), ("start_m3", (0.0, 6.0))])
def test_a_start_fuller_than_full_is_named(name, start):
    with pytest.raises(InputError) as caught:
        simulate(weather(), system(tank=5.0), HOME, *start)
    assert caught.value.name == name


def test_fuel_goes_with_the_energy():
    assert year.generator_fuel(3.6e6) == pytest.approx(1e-3, rel=1e-12)
