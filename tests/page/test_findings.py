"""The verdict follows from the findings: no path makes it better than the worst of them."""

import itertools

import pytest

from calc.page.answer import Answer
from calc.page.fields import Choice, Count, Number, Sheet, Unknown
from calc.page.findings import LEVELS, RANKS, Finding, unchecked, verdict
from calc.page.form import work
from calc.page.state import State

ORDER = ("good", "tight", "bad")
WORST = {"note": "good", "care": "tight", "stop": "bad"}


@pytest.mark.parametrize("levels", list(itertools.product(LEVELS, repeat=3)))
@pytest.mark.parametrize("sizing", [False, True])
def test_a_verdict_is_as_bad_as_its_worst_finding(levels, sizing):
    found = [Finding(level, "x", f"{level} {i}") for i, level in enumerate(levels)]
    worst = max((WORST[level] for level in levels), key=ORDER.index)
    said = verdict(found, "told", sizing)
    assert said.level == worst
    assert said.word == {"good": "Result" if sizing else "Works", "tight": "Borderline",
                         "bad": "Does not work"}[worst]  # fmt: skip


def test_harm_opens_the_sentence_then_what_cannot_work_then_what_is_weak():
    for first, second in itertools.combinations(RANKS, 2):
        found = [Finding("stop", "b", second, second), Finding("stop", "a", first, first)]
        assert verdict(found, "told").sentence == first


def test_what_could_not_be_checked_is_borderline():
    assert verdict([unchecked("npsh", "Not checked.")], "told").word == "Borderline"


def test_notes_leave_the_told_sentence():
    assert verdict([Finding("note", "fast", "Heard.")], "told").sentence == "told"


def test_a_level_or_rank_that_is_none_is_refused():
    with pytest.raises(ValueError, match="no such level"):
        Finding("bad", "x", "text")


def _sheet():
    fields = (
        Number("npsh", "NPSH required", "length", "3 m", "10 ft", 0.0, 20.0,
               unknown=Unknown(reason="the pump's data sheet was not at hand")),
        Number("water", "Water", "temperature", "15 °C", "59 °F", 273.15, 333.15,
               unknown=Unknown("15 °C", "59 °F", "usual for a well")),
        Number("climb", "Climb", "length", "18 m", "60 ft", -50.0, 500.0),
        Count("taps", "Taps", 2, 0, 9, unknown=Unknown("2", "2", "usual for a cabin")),
        Choice("kind", "Kind", (("a", "First"), ("b", "Second")), "a"),
    )  # fmt: skip
    return Sheet("t", "T", fields, lambda v, r: Answer(told=f"{v.npsh} {v.water} {v.taps}"))


def test_what_is_not_known_is_worked_with_its_usual_value_or_left_out():
    outcome = work(_sheet(), State(texts={"npsh": "?", "water": " ? ", "taps": "?"}))
    assert outcome.answer.told == "None 288.15 2"
    said = {one.key: (one.shown, one.reason) for one in outcome.assumed}
    assert said["npsh"] == ("", "the pump's data sheet was not at hand")
    assert said["water"] == ("15 °C", "usual for a well")
    assert said["climb"] == ("18 m", "from the example")


def test_what_must_be_known_is_asked_for():
    assert list(work(_sheet(), State(texts={"climb": "?"})).errors) == ["climb"]


def test_what_was_given_is_not_listed_as_assumed():
    state = State(texts={"climb": "20", "water": "15 °C"}, standing={"water": "given"})
    keys = [one.key for one in work(_sheet(), state).assumed]
    assert keys == ["npsh", "taps", "kind"]


def test_the_example_itself_lists_nothing():
    outcome = work(_sheet(), State())
    assert outcome.example and outcome.assumed == ()
