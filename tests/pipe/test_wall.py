"""The wall of a pipe: bounds and limits that must hold."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.errors import RangeError
from calc.pipe import wall

CHECKED = settings(max_examples=100, deadline=None)
WARMTH = st.floats(273.15, 373.15)


@given(st.floats(0.001, 0.3), st.floats(0.0, 0.5))
@CHECKED
def test_a_buried_pipe_is_stiffer_than_a_jointed_one(share, poisson):
    assert wall.restraint_buried(1.0, share, poisson) <= wall.restraint_jointed(1.0, share, poisson)


def test_a_thin_wall_has_the_plain_factors():
    factors = [
        f(1.0, 1e-9, 0.3)
        for f in (
            wall.restraint_anchored_upstream,
            wall.restraint_buried,
            wall.restraint_jointed,
        )
    ]
    assert factors == pytest.approx([1 - 0.15, 1 - 0.09, 1.0])


@pytest.mark.parametrize("key", wall.MATERIALS)
@given(WARMTH, WARMTH)
@CHECKED
def test_a_warmer_wall_is_never_stiffer(key, one, other):
    cold, warm = sorted((one, other))
    material = wall.MATERIALS[key]
    assert wall.modulus_at(material, warm) <= wall.modulus_at(material, cold) * (1 + 1e-12)


@pytest.mark.parametrize("key", wall.MATERIALS)
def test_a_walls_modulus_is_the_stated_one_at_20_degrees(key):
    material = wall.MATERIALS[key]
    assert wall.modulus_at(material, 293.15) == pytest.approx(material.modulus, rel=1e-3)


@pytest.mark.parametrize("key", ["pe", "pex", "pvc", "cpvc"])
def test_plastic_softens_where_it_is_warm(key):
    material = wall.MATERIALS[key]
    assert wall.modulus_at(material, 333.15) < 0.8 * wall.modulus_at(material, 278.15)


@pytest.mark.parametrize(
    "call",
    [
        lambda: wall.restraint_buried(0.05, 0.0, 0.3),
        lambda: wall.restraint_jointed(0.05, 0.003, 0.6),
        lambda: wall.modulus_at(wall.MATERIALS["pe"], 400.0),
    ],
)
def test_numbers_out_of_range_are_refused(call):
    with pytest.raises(RangeError):
        call()
