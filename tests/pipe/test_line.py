"""One filled line: what it must hold whatever the pipes."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.errors import InputError
from calc.pipe import friction, pipes
from calc.pipe.line import Line, Section, larger_pipes
from calc.units import GRAVITY
from calc.water import density

PE = pipes.sizes("pe100-sdr11")
ELBOW = friction.BY_KEY["elbow90"]


def line(*sections, start=3.5e5, **more):
    return Line(sections or (Section(PE[2], 100.0, 10.0),), start, 288.15, **more)


sections = st.lists(
    st.builds(
        Section,
        st.sampled_from(PE),
        st.floats(1.0, 500.0),
        st.floats(-30.0, 30.0),
        st.just(((ELBOW, 3),)),
    ),
    min_size=1,
    max_size=5,
).map(tuple)


@given(sections, st.floats(0.0, 2e-3))
@settings(max_examples=60, deadline=None)
def test_pressure_lost_is_climb_and_friction_together(several, flow):
    one = line(*several)
    lost = one.start_pa - one.left(flow)
    assert lost == pytest.approx(one.weight * (one.rise_m + one.loss(flow)), rel=1e-9, abs=1e-3)


@given(sections, st.floats(1e-5, 2e-3))
@settings(max_examples=60, deadline=None)
def test_a_section_cut_in_two_changes_nothing(several, flow):
    first, *rest = several
    bare = Section(first.pipe, first.length_m, first.rise_m)
    half = Section(first.pipe, first.length_m / 2, first.rise_m / 2)
    assert line(half, half, *rest).left(flow) == pytest.approx(
        line(bare, *rest).left(flow), rel=1e-9, abs=1e-3
    )


@given(sections, st.floats(1e-5, 2e-3), st.floats(0.0, 4e5))
@settings(max_examples=60, deadline=None)
def test_the_start_it_asks_for_leaves_what_is_needed(several, flow, needed):
    one = line(*several)
    assert one.with_start(one.start_for(needed, flow)).left(flow) == pytest.approx(needed, abs=1.0)


def test_a_reducer_holds_its_pressure_whatever_the_start():
    reduced = Section(PE[2], 10.0, 0.0, reducer=(1.5e5, 5e-4, 4.0))
    assert line(reduced, start=5e5).left(1e-4) == 1.5e5
    assert line(reduced, start=1e5).left(1e-4) < 1e5
    with pytest.raises(InputError, match="reducing valve"):
        line(reduced).start_for(2e5, 1e-4)


def test_pipes_beyond_a_reducer_are_spared_the_pressure_before_it():
    before = Section(PE[2], 10.0, -40.0, reducer=(1.5e5, 5e-4, 4.0))
    after = Section(PE[2], 10.0, 0.0)
    first, second = line(before, after).stresses()
    assert first.pressure_pa == pytest.approx(3.5e5 + density(288.15) * GRAVITY * 40, rel=1e-12)
    assert second.pressure_pa == 1.5e5


def test_a_dip_on_the_way_counts_against_the_rating():
    flat = line(Section(PE[2], 100.0, 5.0))
    assert not flat.stresses()[0].over
    dipped = line(Section(PE[2], 100.0, 5.0), lowest_m=-150.0)
    assert dipped.stresses()[0].over
    expected = 3.5e5 + density(288.15) * GRAVITY * 150
    assert dipped.stresses()[0].pressure_pa == pytest.approx(expected, rel=1e-12)


def test_the_most_the_start_ever_has_counts_against_the_rating():
    assert line(highest_pa=20e5).stresses()[0].over


def test_water_hotter_than_the_kind_may_carry_is_over():
    pvc = pipes.sizes("pvc-sdr26")[3]
    assert Line((Section(pvc, 10.0),), 1e5, 343.15).stresses()[0].hot


def test_a_crest_on_the_way_lowers_the_least_pressure():
    one = line(Section(PE[2], 100.0, 5.0), highest_m=60.0)
    assert one.crest(1e-4) < 0 < one.left(1e-4)
    assert line(Section(PE[2], 100.0, 5.0)).crest(1e-4) == pytest.approx(
        line(Section(PE[2], 100.0, 5.0)).left(1e-4)
    )


def test_the_largest_flow_leaves_just_what_is_needed():
    one = line()
    flow = one.largest_flow(1e5, 0.05)
    assert one.left(flow) == pytest.approx(1e5, abs=1.0)
    assert line(start=1e5).largest_flow(1e5, 0.05) == 0.0


def test_larger_pipes_are_the_next_sizes_of_the_kind():
    assert [p.size for p in larger_pipes(PE[1], 3)] == [p.size for p in PE[2:5]]
    assert larger_pipes(PE[-1], 3) == ()
    assert larger_pipes(pipes.own_pipe(0.03, 1e-5), 3) == ()


def test_the_pipe_is_never_counted_cooler_than_its_water():
    one = line(hottest_k=283.15)
    assert one.heat_k == 288.15


def test_a_rating_typed_in_another_unit_is_still_met():
    assert not line(start=PE[2].rating_pa * (1 + 1e-12)).stresses()[0].over
    assert line(start=PE[2].rating_pa * 1.001).stresses()[0].over


def test_static_pressure_counts_the_most_the_start_ever_has():
    one = line(highest_pa=6e5)
    assert one.most_static - one.static == pytest.approx(6e5 - 3.5e5, rel=1e-12)


@given(st.floats(1e-300, 1e-9))
@settings(max_examples=40, deadline=None)
def test_a_flow_however_small_has_a_loss_and_no_error(flow):
    """Hagen-Poiseuille: h = 32 nu L v / (g D^2)."""
    section = Section(PE[2], 100.0)
    one = line(section)
    nu, bore = one.viscosity, PE[2].inside_m
    expected = 32 * nu * 100.0 * friction.velocity(flow, bore) / (GRAVITY * bore**2)
    assert one.straight_loss_in(section, flow) == pytest.approx(expected, rel=1e-9, abs=1e-300)


def test_one_section_can_be_exchanged():
    first, second = Section(PE[2], 10.0), Section(PE[3], 20.0, 5.0)
    changed = line(first, second).with_section(1, first)
    assert changed.sections == (first, first) and changed.rise_m == 0.0


def test_the_highest_point_known_of_is_the_crest_or_an_end():
    assert line().top_m == 10.0 and line(highest_m=30.0).top_m == 30.0
    assert line(Section(PE[2], 10.0, -5.0)).top_m == 0.0
