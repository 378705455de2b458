"""Water hammer against the method of characteristics; single values are in ``checks.surges``."""

import math
import random

import pytest

from calc import surge
from calc.pipe import wall
from calc.units import PSI
from tests.reference.checks.characteristics import characteristics
from tests.reference.checks.surges import closings


def test_cold_polyethylene_is_no_softer_than_the_handbooks_short_term_figure():
    # PPI handbook, short-term apparent modulus at 73 degF: 130 000 to 150 000 psi, from memory
    for celsius in (5, 15, 23):
        found = wall.modulus_at(wall.MATERIALS["pe"], 273.15 + celsius)
        assert found >= 150e3 * PSI


@pytest.mark.parametrize("case", list(closings(25)))
def test_closing_rise_is_that_of_the_method_of_characteristics(case):
    speed, length, velocity, closing, pressure = case
    exact = characteristics(speed, length, velocity, closing, pressure)
    found = surge.closing_rise(1000.0, speed, length, velocity, closing, pressure)
    assert found == pytest.approx(exact, rel=0.007)  # 100 cells and 12 chains leave about 0.5 %


def every_phase(speed, length, velocity, closing, pressure, chains=12, density=1000.0):
    """Highest rise, Allievi's chains followed from the first phase to the last."""
    number, period = density * speed * velocity / (2 * pressure), 2 * length / speed
    starts = [period * (k + 1) / chains for k in range(chains)]
    starts.append(closing - period * math.floor(closing / period))
    highest = 1.0
    for start in starts:
        zeta, eta, time = 1.0, 1.0, start
        while eta > 0:
            now = max(0.0, 1 - time / closing) if time < closing * (1 - 1e-12) else 0.0
            right = max(0.0, 2 - zeta * zeta + 2 * number * eta * zeta)
            zeta = -number * now + math.sqrt((number * now) ** 2 + right)
            eta, time, highest = now, time + period, max(highest, zeta)
    return pressure * (highest**2 - 1)


def slow_cases(count):
    rnd = random.Random(21)
    for _ in range(count):
        speed, length = rnd.uniform(200, 1400), 10 ** rnd.uniform(0, 4)
        velocity, pressure = 10 ** rnd.uniform(-2, 1.3), 10 ** rnd.uniform(3, 6.6)
        yield speed, length, velocity, 2 * length / speed * 10 ** rnd.uniform(0.01, 3), pressure


@pytest.mark.parametrize("case", list(slow_cases(150)))
def test_a_closing_of_many_phases_is_as_if_every_phase_were_followed(case):
    # strides and few chains leave 1e-5, a chain taken as arrived 1e-4 of the rise
    speed, length, velocity, closing, pressure = case
    found = surge.closing_rise(1000.0, speed, length, velocity, closing, pressure)
    assert found == pytest.approx(every_phase(*case), rel=5e-4)
