"""A short letter: what it says and, worked out, what to ask back in the order of its effect."""

import json
import re

import pytest

from calc import bridge
from calc.page.answer import Answer, Figure
from calc.page.ask_back import EITHER_WAY, SPREAD, questions
from calc.page.fields import Choice, Count, Number, Rows, Sheet, Text, Unknown
from calc.page.findings import Finding, Fix
from calc.page.form import work
from calc.page.letter import WORDS_MOST, letter, vital_cautions, words
from calc.page.render import beside
from calc.page.state import State
from calc.sheets import KEYS, sheet
from calc.units import Reader

FIELDS = (
    Number("climb", "Climb", "length", "10 m", "30 ft", 0.0, 100.0),
    Number("strong", "What matters", "pressure", "2 bar", "30 psi", 0.0, 1e6),
    Number("weak", "What hardly matters", "pressure", "2 bar", "30 psi", 0.0, 1e6),
    Number("turning", "What decides", "pressure", "2 bar", "30 psi", 0.0, 1e6),
    Number("warm", "Water temperature", "temperature", "15 °C", "59 °F", 273.15, 333.15),
    Count("taps", "Taps", 3, 0, 4),
    Choice("size", "Size", (("a", "Small"), ("b", "Middle"), ("c", "Large")), "b"),
    Choice("kind", "Kind", (("x", "One"), ("y", "Other")), "x"),
    Number("only_y", "Only of the other", "length", "1 m", "3 ft", 0.0, 9.0, when=("kind", ("y",))),
    Number("open", "Not known", "flow", "", "", 0.0, 1.0, optional=True,
           unknown=Unknown(reason="not checked")),
    Rows("rows", "Outlets", (Text("name", "Name", ""), Count("n", "N", 1, 0, 9)),
         (("Tap",), ("Hose",)), (("Tap",),), "outlet"),
)  # fmt: skip


def _solve(values, reader):
    """Pressure moves much with one value, little with another; a third turns the verdict."""
    main = values.strong + 0.001 * values.weak + 100 * values.taps
    found = (Finding("stop", "low", "Too low."),) if values.turning < 1.6e5 else ()
    figure = Figure("Pressure there", main, "pressure", main=True)
    fixes = (Fix("Do this."),)
    return Answer(told="Fine.", findings=found, fixes=fixes, figures=(figure,), cautions=("Mind.",))


TRIAL = Sheet("trial", "Trial", FIELDS, _solve, cautions=("Always mind.",))
GIVEN = State(texts={"climb": "12", "open": "?"})


def _asked(state=GIVEN):
    return questions(TRIAL, work(TRIAL, state), state)


def test_what_turns_the_verdict_is_asked_before_what_moves_the_main_figure():
    labels = [one.label for one in _asked()]
    assert labels == ["Outlets", "What decides", "What matters", "Not known"]


def test_the_effect_told_is_that_of_the_sheet_itself():
    (told,) = (one.told for one in _asked() if one.label == "What matters")
    reader = Reader()
    for share in SPREAD:
        state = State(texts={**GIVEN.texts, "strong": f"{2 * share:g} bar"})
        (figure,) = work(TRIAL, state).answer.figures
        assert f"with {2 * share:g} bar it is {reader.show(figure.value, 'pressure')}" in told


def test_a_choice_that_asks_for_other_fields_is_no_question():
    assert "Kind" not in {one.label for one in _asked()}


def test_what_was_given_is_not_asked():
    texts = {**GIVEN.texts, "turning": "2 bar", "strong": "2 bar"}
    state = State(texts=texts, standing={"turning": "given", "strong": "given"})
    assert {"What decides", "What matters"}.isdisjoint(one.label for one in _asked(state))


@pytest.mark.parametrize("key", KEYS)
def test_every_sheet_asks_only_for_what_it_assumed_and_the_same_each_time(key):
    made = sheet(key)
    given = next(entry for entry in made.fields if isinstance(entry, Number) and not entry.when)
    state = State(standing={given.key: "given"})
    outcome = work(made, state)
    asked = questions(made, outcome, state)
    assumed = {one.label.removesuffix(" (optional)") for one in outcome.assumed}
    assert asked and {one.label for one in asked} <= assumed
    assert asked == questions(made, outcome, state)


def test_a_temperature_is_varied_in_degrees():
    def solve(values, reader):
        return Answer(figures=(Figure("Warm", values.warm - 273.15, "number", main=True),))

    made = Sheet("trial", "Trial", FIELDS[:5], solve)
    state = State(texts={"climb": "12"})
    (warm,) = questions(made, work(made, state), state)
    assert (
        f"with {15 + EITHER_WAY:g} °C" in warm.told and f"with {15 - EITHER_WAY:g} °C" in warm.told
    )


def test_a_letter_says_all_that_a_customer_needs_in_one_system_of_units():
    state = State("us", {"climb": "40", "open": "?"})
    text = letter(TRIAL, work(TRIAL, state), state, "https://example.org/#v=1")
    parts = ["Trial", "Works. Fine.", "Likely best fix: Do this.", "Climb: 40 ft",
             "Pressure there: 30.1 psi", "Assumed, not from you", "Please tell us",
             "1. Outlets", "- Mind.", "- Always mind.", "https://example.org/#v=1"]  # fmt: skip
    places = [text.index(part) for part in parts]
    assert places == sorted(places)
    assert " bar" not in text and "\u00a0" not in text


def test_the_letter_of_the_example_says_that_it_is_one():
    text = letter(TRIAL, work(TRIAL, State()), State(), "https://example.org/")
    assert "A worked example" in text and "Please tell us" not in text


def test_where_there_is_no_answer_there_is_no_letter():
    request = {"op": "letter", "sheet": "reach", "texts": {"climb": "far"}, "address": "x"}
    assert json.loads(bridge.handle(json.dumps(request))) == {"text": ""}
    request["texts"] = {"climb": "22"}
    text = json.loads(bridge.handle(json.dumps(request)))["text"]
    assert "Climb from pump to outlet: 22 m" in text and text.endswith("\nx\n")


# How long it is ---------------------------------------------------------------------------------

OVER = 20  # words; a page with many stops and cares keeps all of them
DANGERS = (
    "licensed|wiring|by day: their terminals are live", "confined space|do not enter",
    "drinking water|polluted|backflow|air gap|chlorinate|drink",
    "let the pressure out|stores energy", "relief valve|rated for|rating|burst", "scald",
)  # fmt: skip


def examples(key):
    """(state, outcome) of a sheet's example, and of it with one number as a reader gave it."""
    made = sheet(key)
    one = next(entry for entry in made.fields if isinstance(entry, Number) and not entry.when)
    for system in ("metric", "us"):
        for standing in ({}, {one.key: "given"}):
            state = State(system, standing=standing)
            yield state, work(made, state)


@pytest.mark.parametrize("key", KEYS)
def test_a_letter_is_short_enough_for_a_phone_and_leaves_out_nothing_that_can_hurt(key):
    made = sheet(key)
    for state, outcome in examples(key):
        text = letter(made, outcome, state, "https://example.org/")
        found = outcome.answer
        assert words(text) <= WORDS_MOST + OVER
        serious = [one.text for one in beside(found) if one.level != "note"]
        vital = vital_cautions(made, found)
        assert all(one.replace("\u00a0", " ") in text for one in (*serious, *vital))
        assert found.verdict.sentence.replace("\u00a0", " ") in text
        if not outcome.example:
            assert "Assumed, not from you" in text and "1. " in text


@pytest.mark.parametrize("key", KEYS)
@pytest.mark.parametrize("danger", DANGERS)
def test_of_each_danger_to_life_that_a_page_names_its_letter_keeps_a_caution(key, danger):
    made = sheet(key)
    named = {one for one in made.cautions if re.search(danger, one, re.IGNORECASE)}
    assert not named or named & vital_cautions(made, work(made, State()).answer)


def test_what_a_letter_has_no_room_for_is_counted_and_stands_on_the_page():
    many = tuple(f"Mind the {'very ' * 20}small thing {n}." for n in range(20))
    vital = "A tank is a confined space: do not enter."
    made = Sheet("trial", "Trial", FIELDS, _solve, cautions=(*many, vital))
    text = letter(made, work(made, GIVEN), GIVEN, "https://example.org/")
    shown = text.count("- Mind")
    assert vital in text and 0 < shown < 21 and words(text) <= WORDS_MOST
    assert f"read the page behind the link: it has {21 - shown} more cautions." in text


def test_every_caution_of_a_danger_that_is_advised_upon_stays():
    both = ("Fit a relief valve.", "Never exceed the rating of a part.")
    advised = Answer(told="Fine.", findings=(Finding("stop", "over", "The rating is exceeded."),))
    made = Sheet("trial", "Trial", FIELDS, _solve, cautions=both)
    assert vital_cautions(made, advised) == {*both}
    assert vital_cautions(made, Answer(told="Fine.")) == {both[0]}
