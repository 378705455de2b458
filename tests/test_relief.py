"""What a relief valve passes: limits, directions, round trips."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc import practice, relief
from calc.errors import RangeError

CHECKED = settings(max_examples=100, deadline=None)
FLOWS, PRESSURES = st.floats(1e-6, 0.05), st.floats(1e4, 6e6)
RHO = 999.0


@given(FLOWS, PRESSURES)
@CHECKED
def test_the_opening_found_passes_the_flow_at_the_pressure(flow, pressure):
    opening = relief.opening_for(flow, pressure, RHO)
    assert relief.pressure_to_pass(flow, opening, RHO) == pytest.approx(pressure, rel=1e-9)


@given(FLOWS, PRESSURES, st.floats(1.01, 5.0))
@CHECKED
def test_more_flow_needs_a_wider_opening_and_more_pressure_a_narrower_one(flow, pressure, more):
    opening = relief.opening_for(flow, pressure, RHO)
    assert relief.opening_for(more * flow, pressure, RHO) > opening
    assert relief.opening_for(flow, more * pressure, RHO) < opening


@given(FLOWS, st.floats(1e-3, 0.1), st.floats(1.01, 5.0))
@CHECKED
def test_a_wider_opening_never_needs_more_pressure(flow, opening, more):
    narrow = relief.pressure_to_pass(flow, opening, RHO)
    assert relief.pressure_to_pass(flow, more * opening, RHO) < narrow


def test_nothing_to_pass_needs_no_opening():
    assert relief.opening_for(0.0, 5e5, RHO) == 0.0


def test_a_valve_is_fully_open_a_tenth_over_where_it_opens():
    assert relief.full_pressure(5e5) == pytest.approx(5.5e5)


@given(st.floats(0.0, 0.05))
@CHECKED
def test_a_connection_is_the_smallest_that_is_no_narrower(opening):
    bores = {name: bore for bore, name in practice.RELIEF_CONNECTIONS}
    chosen = bores[relief.connection(opening)]
    assert chosen >= opening * (1 - 1e-9)
    assert all(bore >= chosen or bore < opening for bore in bores.values())


@pytest.mark.parametrize("call", [
    lambda: relief.full_pressure(-1.0),
    lambda: relief.opening_for(-1e-4, 5e5, RHO),
    lambda: relief.opening_for(1e-4, 0.0, RHO),
    lambda: relief.pressure_to_pass(1e-4, 0.0, RHO),
])  # fmt: skip
def test_out_of_range_is_refused(call):
    with pytest.raises(RangeError):
        call()
