"""Storage against brute force and ideal gas; printed values are in ``checks.storage``."""

import math

import numpy as np
import pytest

from calc import storage
from calc.units import FOOT, GALLON_US, HOUR, MINUTE, PSI

AIR = 101325.0  # Pa, standard atmosphere, ISO 2533:1975
NO_CHARGE = 0.0


def runs_dry(volume, use, shares, supply, steady, days=20):
    """Does a tank that starts full, simulated with numpy arrays, ever lack water?"""
    need = np.tile(np.asarray(shares) * use, days)
    come = np.tile(np.asarray(steady) * supply, days)
    level = volume
    for drawn, given in zip(need, come, strict=True):
        level = level + given - drawn
        if level < -1e-9:
            return True
        level = min(level, volume)
    return False


# use m3 a day, pattern, supply m3 a day, hours it runs
DAYS = [
    (0.93, "home", 2.16, 6.0),
    (0.93, "home", 0.93, 6.0),
    (0.93, "home", 8.64, 24.0),
    (0.93, "home", 1.2, 24.0),
    (2.0, "dawn", 3.0, 8.0),
    (2.0, "dawn", 3.0, 24.0),
    (5.0, "day", 6.0, 3.5),
    (5.0, "even", 5.0, 1.0),
]


@pytest.mark.parametrize("use, pattern, supply, hours", DAYS)
def test_the_least_tank_is_enough_and_a_little_less_runs_dry(use, pattern, supply, hours):
    shares, steady = storage.PATTERNS[pattern], storage.supply_pattern(hours)
    least = storage.daily_balance(use, shares, supply, steady).swing
    assert not runs_dry(least, use, shares, supply, steady)
    if least > 0:
        assert runs_dry(0.999 * least, use, shares, supply, steady)


@pytest.mark.parametrize("seed", range(20))
def test_the_least_tank_is_the_largest_shortfall_of_any_stretch_of_hours(seed):
    rng = np.random.default_rng(seed)
    use, steady = rng.dirichlet(np.full(24, 0.5)), rng.dirichlet(np.full(24, 0.5))
    supply = float(rng.uniform(1.0, 4.0))
    net = np.tile(use - supply * steady, 2)
    worst = max(net[i:j].sum() for i in range(24) for j in range(i, i + 25))
    found = storage.daily_balance(1.0, tuple(use), supply, tuple(steady)).swing
    assert math.isclose(found, max(worst, 0.0), rel_tol=1e-9, abs_tol=1e-12)


@pytest.mark.parametrize("use, pattern, supply, hours", DAYS)
def test_at_no_surplus_the_least_tank_is_the_span_of_the_mass_curve(use, pattern, supply, hours):
    """Rippl's construction, which throws no water away."""
    shares, steady = storage.PATTERNS[pattern], storage.supply_pattern(hours)
    curve = np.cumsum(use * (np.asarray(steady) - np.asarray(shares)))
    span = max(curve.max(), 0.0) - min(curve.min(), 0.0)
    found = storage.daily_balance(use, shares, use, steady).swing
    assert math.isclose(found, span, rel_tol=1e-9, abs_tol=1e-12)


@pytest.mark.parametrize("use, pattern, supply, hours", DAYS)
def test_the_tank_for_three_dry_days_just_lasts_at_the_worst_moment(use, pattern, supply, hours):
    shares, steady = storage.PATTERNS[pattern], storage.supply_pattern(hours)
    swing = storage.daily_balance(use, shares, supply, steady).swing
    volume = storage.tank_volume(swing, use, 3.0, 1.0)

    def lacks(size):
        """Any failure of 72 hours, whichever hour of the day it begins."""
        for begins in range(24):
            need = np.tile(np.asarray(shares) * use, 7)
            come = np.tile(np.asarray(steady) * supply, 7)
            come[48 + begins : 48 + begins + 72] = 0.0
            level, least = size, size
            for drawn, given in zip(need, come, strict=True):
                level = min(level + given - drawn, size)
                least = min(least, level)
            if least < -1e-9:
                return True
        return False

    assert not lacks(volume)
    assert lacks(0.999 * volume)


# Rule of thumb in the trade: a precharged tank on a 30/50 or 40/60 switch gives about a quarter to
# a third of its volume (common practice, no source)
@pytest.mark.parametrize("low, high", [(30, 50), (40, 60), (20, 40)])
def test_a_tank_gives_a_quarter_to_about_a_third(low, high):
    ours = storage.drawdown(1.0, (low - 2) * PSI, low * PSI, high * PSI, AIR)
    assert 0.25 <= ours <= 0.36


def test_an_uncharged_tank_gives_the_ideal_gas_closed_form():
    """n R T is the air that filled the tank at rest: V (p_a/p_1 - p_a/p_2), absolute."""
    moles = AIR * 0.2 / (8.314462618 * 288.15)  # R: CODATA 2018
    volumes = [moles * 8.314462618 * 288.15 / p for p in (3e5, 4e5)]
    ours = storage.drawdown(0.2, NO_CHARGE, 3e5 - AIR, 4e5 - AIR, AIR)
    assert math.isclose(ours, volumes[0] - volumes[1], rel_tol=1e-12)


# Trade rule: drawdown of about the pump's flow in a minute, for a minute's run (common practice, no
# source); by balance that is 15 starts an hour at worst
def test_a_minutes_drawdown_gives_15_starts_an_hour():
    pump = 10 * GALLON_US / MINUTE
    assert math.isclose(storage.most_starts_rate(pump * 60, pump) * HOUR, 15.0)
    assert math.isclose(storage.run_time(pump * 60, pump, 0.0), 60.0)


# Common practice, no source: about 45 psi is about 100 ft of head
def test_a_hundred_feet_of_height_are_about_45_psi():
    height = storage.height_for_pressure(45 * PSI, 0.0, 999.0) / FOOT
    assert 100 <= height <= 106
