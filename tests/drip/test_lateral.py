"""Lines of many outlets: Christiansen's factor, and step by step."""

import math

import pytest

from calc.drip import lateral
from calc.errors import InputError

WEIGHT = 9790.0
ALL = 40


def hazen(flow, length):
    """Head lost, m, in a plastic line of 13.6 mm by Hazen and Williams, C = 150."""
    return 10.67 * length * (flow / 150) ** 1.852 / 0.0136**4.87


def equal(_pressure):
    return 1e-6 / 3.6 * 4  # 4 L/h whatever the pressure


def orifice(pressure):
    return 4e-6 / 3.6 * math.sqrt(pressure / 1e5) if pressure > 0 else 0.0


def level(start=1.0e5, outlets=ALL, spacing=0.5, rise=0.0, emitter=orifice):
    return lateral.step_by_step(
        start, [spacing] * outlets, [rise] * outlets, WEIGHT, hazen, emitter
    )


def test_the_factor_is_that_of_a_line_summed_up():
    exact = sum((one / ALL) ** 1.852 for one in range(1, ALL + 1)) / ALL
    assert lateral.christiansen(ALL) == pytest.approx(exact, rel=2e-4)


def test_a_nearer_first_outlet_is_that_of_a_line_summed_up():
    lost = sum((one / ALL) ** 1.852 for one in range(1, ALL)) + 0.5
    exact = lost / (ALL - 0.5)
    assert lateral.christiansen(ALL, first=0.5) == pytest.approx(exact, rel=2e-4)


def test_equal_outlets_lose_what_the_factor_says():
    found = level(emitter=equal)
    whole = hazen(ALL * equal(0), 0.5 * ALL) * lateral.christiansen(ALL)
    lost = (1e5 - found.pressures[-1]) / WEIGHT
    assert lost == pytest.approx(whole, rel=5e-4)


def test_water_and_energy_balance():
    found = level(rise=0.01)
    carried = found.flow
    pressure = 1e5
    for at, flow in enumerate(found.flows):
        pressure -= WEIGHT * (hazen(carried, 0.5) + 0.01)
        assert found.pressures[at] == pytest.approx(pressure, rel=1e-8)
        assert flow == pytest.approx(orifice(pressure), rel=1e-8)
        carried -= flow
    assert carried == pytest.approx(0.0, abs=1e-18)
    assert found.start_pa == pytest.approx(1e5, rel=1e-9)


def test_a_wider_line_is_never_less_even():
    def wider(flow, length):
        return hazen(flow, length) / 4

    narrow = level()
    wide = lateral.step_by_step(1e5, [0.5] * ALL, [0.0] * ALL, WEIGHT, wider, orifice)
    assert narrow.uniformity < wide.uniformity <= 1.0


def test_downhill_helps_and_uphill_hinders():
    down, flat, up = (level(rise=rise).flow for rise in (-0.02, 0.0, 0.02))
    assert down > flat > up


def test_an_end_too_high_for_the_pressure_is_said():
    with pytest.raises(InputError, match="does not carry water"):
        level(start=1000.0, rise=0.05)


def test_a_length_without_a_rise_is_refused():
    with pytest.raises(InputError, match="for each outlet"):
        lateral.step_by_step(1e5, [1.0, 1.0], [0.0], WEIGHT, hazen, orifice)
