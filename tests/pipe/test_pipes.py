"""Pipe: what holds for every kind and size, and what is refused."""

import itertools

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.errors import InputError, RangeError
from calc.page.fields import Sheet
from calc.page.form import work
from calc.page.state import State
from calc.pipe import pipes
from calc.sheets.parts.pipe_choice import chosen_pipe, pipe_fields

EVERY = [pipe for kind in pipes.KINDS for pipe in pipes.sizes(kind)]


@pytest.mark.parametrize("kind", pipes.KINDS)
def test_sizes_ascend_by_bore(kind):
    bores = [pipe.inside_m for pipe in pipes.sizes(kind)]
    assert all(a < b for a, b in itertools.pairwise(bores))


@pytest.mark.parametrize("pipe", EVERY, ids=lambda p: f"{p.kind} {p.size}")
def test_a_pipe_is_found_by_its_kind_and_size(pipe):
    assert pipes.pipe(pipe.kind, pipe.size) is pipe


@pytest.mark.parametrize("pipe", EVERY, ids=lambda p: f"{p.kind} {p.size}")
def test_a_wall_is_thinner_than_a_fifth_of_the_outside(pipe):
    assert 0 <= (pipe.outside_m - pipe.inside_m) / 2 < pipe.outside_m / 5


@pytest.mark.parametrize("kind", pipes.KINDS)
def test_kinds_and_sizes_can_stand_in_a_link(kind):
    words = [kind, *(pipe.size for pipe in pipes.sizes(kind))]
    assert all(
        word.isascii() and word.replace("-", "").replace(".", "").isalnum() for word in words
    )


@pytest.mark.parametrize("kind", pipes.KINDS)
def test_every_kind_names_its_source(kind):
    assert all(len(pipe.source) > 10 for pipe in pipes.sizes(kind))


@pytest.mark.parametrize("pipe", EVERY, ids=lambda p: f"{p.kind} {p.size}")
def test_the_rating_is_whole_at_its_own_temperature(pipe):
    assert pipes.rating_at(pipe, pipe.rating_at_k) == pytest.approx(pipe.rating_pa, rel=1e-12)


@settings(max_examples=100, deadline=None)
@given(st.sampled_from(EVERY), st.floats(273.15, 313.0), st.floats(0.01, 10.0))
def test_warmer_water_never_raises_the_rating(pipe, temperature, warmer):
    cool = pipes.rating_at(pipe, temperature)
    try:
        assert pipes.rating_at(pipe, temperature + warmer) <= cool
    except RangeError:
        assert temperature + warmer > 313.15


def test_water_too_hot_for_the_kind_is_refused_in_words():
    with pytest.raises(RangeError, match="may not carry water hotter") as caught:
        pipes.rating_at(pipes.pipe("pvc40", "1"), 273.15 + 61)
    assert caught.value.name == "temperature_k"


def test_a_measured_bore_has_no_rating():
    with pytest.raises(InputError, match="No rating is known"):
        pipes.rating_at(pipes.own_pipe(0.02, 1e-5), 293.15)


@pytest.mark.parametrize("kind, size, name", [("wood", "1", "kind"), ("pvc40", "7", "size")])
def test_unknown_pipe_is_refused_by_the_arguments_own_name(kind, size, name):
    with pytest.raises(InputError) as caught:
        pipes.pipe(kind, size)
    assert caught.value.name == name


@pytest.mark.parametrize("bore, roughness", [(0.0, 0.0), (2.0, 0.0), (0.02, 0.002), (0.02, -1e-6)])
def test_a_measured_bore_off_the_scale_is_refused(bore, roughness):
    with pytest.raises(RangeError):
        pipes.own_pipe(bore, roughness)


MENUS = Sheet("menus", "Menus", pipe_fields(), lambda values, reader: chosen_pipe(values))


@pytest.mark.parametrize(
    "system, label", [("metric", "32 mm PE 100 SDR 11"), ("us", "1 in PVC schedule 40")]
)
def test_the_menus_open_on_the_start_named(system, label):
    assert work(MENUS, State(system)).answer.label == label


@pytest.mark.parametrize("pipe", EVERY, ids=lambda p: f"{p.kind} {p.size}")
def test_the_menus_reach_every_pipe(pipe):
    texts = {"kind": pipe.kind, pipe.kind: pipe.size}
    assert work(MENUS, State(texts=texts)).answer is pipe


def test_only_the_chosen_kinds_sizes_show():
    hidden = work(MENUS, State(texts={"kind": "hose"})).hidden
    assert "hose" not in hidden and hidden >= set(pipes.KINDS) - {"hose"} and "bore" in hidden


def test_a_bore_of_ones_own_is_taken():
    texts = {"kind": "own", "bore": "22 mm", "inside": "rusty"}
    own = work(MENUS, State(texts=texts)).answer
    assert own.inside_m == pytest.approx(0.022) and own.roughness_m == 1e-3


@pytest.mark.parametrize(
    "bore, roughness, name", [(0.0, 0.0, "bore_m"), (0.015, 1e-3, "roughness_m")]
)
def test_a_measured_bore_is_refused_by_the_arguments_own_name(bore, roughness, name):
    with pytest.raises(RangeError) as caught:
        pipes.own_pipe(bore, roughness)
    assert caught.value.name == name and caught.value.remedy


def test_a_surface_too_rough_for_the_bore_is_said_at_its_field():
    errors = work(MENUS, State(texts={"kind": "own", "bore": "15 mm", "inside": "rusty"})).errors
    assert set(errors) == {"inside"} and "smoother" in errors["inside"]


def test_a_limit_typed_in_fahrenheit_is_still_met():
    pipe = pipes.pipe("pe-sidr15", "1")
    assert pipes.rating_at(pipe, (104 - 32) * 5 / 9 + 273.15) == pytest.approx(
        0.74 * pipe.rating_pa
    )
