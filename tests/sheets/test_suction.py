"""Suction lift sheet: verdicts and the cures it works out."""

import pytest

from calc.sheets.form import State, work
from calc.sheets.suction import SHEET


def outcome(**texts):
    return work(SHEET, State(texts=texts))


def spare(**texts):
    return outcome(**texts).answer.figures[1].value


def test_the_example_can_draw():
    assert outcome().answer.verdict.level == "good"


def test_the_cure_it_names_really_cures():
    found = outcome(flow="60 L/min").answer
    assert found.verdict.level == "bad" and "With 40 mm" in found.verdict.sentence
    cured = work(SHEET, State(texts={"flow": "60 L/min", "pe100-sdr11": "40"})).answer
    assert cured.verdict.level == "good"


def test_lowering_the_pump_as_advised_is_just_enough():
    found = outcome(lift="6.5 m")
    allowed = found.answer.figures[0].value
    assert spare(lift=f"{allowed!r} m") == pytest.approx(0.0, abs=1e-9)


def test_boiling_is_said():
    assert "boil" in outcome(lift="9.9 m", length="12 m").answer.verdict.sentence


def test_a_lift_over_15_ft_is_only_just():
    assert outcome(lift="5 m").answer.verdict.level == "tight"


def test_a_pipe_shorter_than_the_lift_is_refused_at_its_field():
    assert "length" in outcome(lift="9 m", length="8 m").errors


@pytest.mark.parametrize("key, worse", [("altitude", "2500 m"), ("water", "60 °C"), ("foot", "3"), ("elbow90", "9")])
def test_each_burden_lowers_what_is_in_hand(key, worse):
    assert spare(**{key: worse}) < spare()


def test_a_dry_lift_at_sea_level_is_kept_at_sea_level_less_friction_and_margin():
    texts = {"figure": "lift", "rated": "5 m", "altitude": "0 m", "water": "20 °C", "margin": "0 m"}
    found = outcome(**texts).answer
    lost = next(f.value for f in found.figures if f.label == "Lost in the suction line")
    assert found.figures[0].value == pytest.approx(5.0 - lost, abs=1e-9)


def test_water_above_the_pump_needs_no_foot_valve_warning():
    texts = " ".join(w.text for w in outcome(lift="-2 m").answer.warnings)
    assert "foot valve" not in texts
