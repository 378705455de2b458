"""Pump curves against scipy, all along; single values are in ``checks.pumps``."""

import numpy as np
import pytest
from scipy.interpolate import PchipInterpolator

from calc.pump.invented import PUMPS


@pytest.mark.parametrize("key", PUMPS)
def test_curve_is_scipys_monotone_cubic(key):
    pump = PUMPS[key]
    curve = PchipInterpolator([p.flow for p in pump.points], [p.head for p in pump.points])
    for flow in np.linspace(pump.points[0].flow, pump.largest_flow, 41):
        assert pump.head_at(flow) == pytest.approx(float(curve(flow)), rel=1e-12, abs=1e-12)
