"""Friction against a library, all over; tables and charts are in ``checks.friction``."""

import itertools
import math

import pytest
from fluids.friction import Clamond, Colebrook

from calc import water
from calc.pipe import friction, pipes
from calc.units import FOOT
from tests.reference.checks.friction import GPM, SCHEDULE_40_C_150

REYNOLDS = [2041.0, 2500.0, 4000.0, 1e4, 3.3e4, 1e5, 1e6, 1e7, 1e8]
RELATIVE = [0.0, 1e-7, 1e-6, 5e-5, 1e-4, 1e-3, 0.01, 0.05]
COLD = water.kinematic_viscosity(288.7)  # m2/s at 60 degF, the temperature of the charts


@pytest.mark.parametrize("re, relative", list(itertools.product(REYNOLDS, RELATIVE)))
def test_friction_matches_colebrook_to_1e_10(re, relative):
    # two solutions of the same equation in fluids: Clamond's iteration and the Lambert W form
    ours = friction.friction_factor(re, relative)
    assert math.isclose(ours, Clamond(re, relative), rel_tol=1e-10)
    assert math.isclose(ours, Colebrook(re, relative), rel_tol=1e-10)


@pytest.mark.parametrize("size, gpm, feet", [row for row in SCHEDULE_40_C_150 if row[1] > 2])
def test_darcy_weisbach_is_near_the_same_table(size, gpm, feet):
    # C is a fixed number where the true one falls at small sizes and slow flows: a band, not an
    # equality; at 2 gpm in 1 in pipe (0.2 m/s) it is 28 % off and no band is claimed
    pipe = pipes.pipe("pvc40", size)
    ours = friction.pipe_loss(gpm * GPM, pipe.inside_m, 100 * FOOT, pipe.roughness_m, COLD) / FOOT
    assert -0.08 < ours / feet - 1 < 0.25
