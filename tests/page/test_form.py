"""What a reader types becomes numbers or sentences, never an exception."""

import pytest

from calc.errors import InputError, RangeError
from calc.page import render, row_text, text_boxes
from calc.page.answer import Answer
from calc.page.fields import Choice, Count, Number, Rows, Sheet, Text
from calc.page.form import work
from calc.page.state import State
from calc.sheets import sheet


def _sheet(solve=None):
    fields = (
        Number("climb", "Climb", "length", "18 m", "60 ft", -50.0, 500.0),
        Number("spare", "Spare", "pressure", "", "", 0.0, 1e6, optional=True),
        Count("taps", "Taps open", 2, 0, 20),
        Choice("kind", "Kind", (("a", "First"), ("b", "Second")), "a", "b"),
        Number("only_b", "Only b", "flow", "9 L/min", "2 gpm", 0.0, 1.0, when=("kind", ("b",))),
    )
    return Sheet("trial", "Trial", fields, solve or (lambda v, r: _answer(v, r)))


def _answer(values, reader):
    return Answer(told=f"{reader.show(values.climb, 'length')} {values.taps}")


def test_defaults_solve_in_both_systems():
    assert work(_sheet(), State()).answer.verdict.sentence == "18.0\u00a0m 2"
    assert work(_sheet(), State("us")).answer.verdict.sentence == "60.0\u00a0ft 2"


@pytest.mark.parametrize(
    "key, text, words",
    [
        ("climb", "", "Enter the climb"),
        ("climb", "high", "Climb must be a number, such as 12.5"),
        ("climb", "40 psi", "“psi” is a unit of pressure, not of length. Write m, ft or cm"),
        ("climb", "40 furlongs", "“furlongs” cannot be read here. Write m, ft or cm"),
        ("climb", "-60", "Climb must be −50 m or more"),
        ("climb", "600", "Climb must be 500 m or less"),
        ("climb", "2000 ft", "Climb must be 1640 ft or less"),
        ("climb", "1e300", "Climb must be 500 m or less"),
        ("climb", "-1e300", "Climb must be −50 m or more"),
        ("climb", "NaN", "Climb must be a number, such as 12.5"),
        ("climb", "1,250", "“1,250” can mean 1250 or 1.250. "
                           "Write it without the comma: 1250 or 1.250"),
        ("climb", "?", "Enter the climb: without it nothing can be worked out"),
        ("spare", "x", "Spare must be a number, such as 12.5"),
        ("taps", "2.5", "Taps open must be a whole number"),
        ("taps", "", "Enter a whole number for “Taps open”"),
        ("taps", "-1", "Taps open must be 0 or more"),
        ("taps", "1e999", "Taps open must be 20 or fewer"),
        ("taps", "nan", "Taps open must be a whole number"),
        ("kind", "z", "Kind: choose one from the list"),
    ],
)  # fmt: skip
def test_bad_input_is_said_at_its_field(key, text, words):
    outcome = work(_sheet(), State(texts={key: text}))
    assert outcome.answer is None
    assert outcome.errors == {key: words}


def test_errors_say_what_is_allowed_in_the_unit_it_was_typed_in():
    said = work(_sheet(), State("us", {"climb": "9999"})).errors["climb"]
    assert said == "Climb must be 1640 ft or less"
    said = work(_sheet(), State("us", {"climb": "9999"}, {"climb": "m"})).errors["climb"]
    assert said == "Climb must be 500 m or less"


def test_hours_are_fewer_and_a_name_in_capitals_keeps_them():
    fields = (
        Number("hours", "Hours it runs a day", "number", "6", "6", 0.5, 24.0),
        Number("npsh", "NPSH required", "head", "2 m", "6 ft", 0.0, 20.0),
    )
    made = Sheet("trial", "Trial", fields, lambda v, r: Answer())
    errors = work(made, State(texts={"hours": "30", "npsh": ""})).errors
    assert errors == {
        "hours": "Hours it runs a day must be 24 or fewer", "npsh": "Enter the NPSH required",
    }  # fmt: skip


def test_a_bound_typed_in_the_other_unit_is_inside():
    assert work(_sheet(), State(texts={"climb": "1640.4199475065616 ft"})).answer


def test_every_bad_field_is_said_at_once():
    errors = work(_sheet(), State(texts={"climb": "x", "taps": "x"})).errors
    assert set(errors) == {"climb", "taps"}


def test_a_hidden_field_cannot_be_wrong():
    state = State(texts={"kind": "a", "only_b": "nonsense"})
    outcome = work(_sheet(), state)
    assert outcome.answer and "only_b" in outcome.hidden


def test_a_shown_conditional_field_is_read():
    assert "only_b" in work(_sheet(), State(texts={"kind": "b", "only_b": "x"})).errors


def test_an_optional_field_may_be_empty():
    assert work(_sheet(), State(texts={"spare": ""})).answer


def test_a_range_error_from_physics_is_said_in_the_readers_units():
    def solve(values, reader):
        raise RangeError("climb", 30.0, 0.0, 20.0, "length", "Use a lower outlet.")

    errors = work(_sheet(solve), State("us")).errors
    assert errors["climb"] == "Climb must be 65.62 ft or less. Use a lower outlet"


def test_a_range_of_another_quantity_than_its_fields_says_which():
    def solve(values, reader):
        raise RangeError("climb", 9.0, 0.1, 5.0, "speed")

    errors = work(_sheet(solve), State()).errors
    assert errors["climb"] == "Climb: climb must be 5 m/s or less"


def test_an_error_of_no_field_is_said_for_the_sheet():
    def solve(values, reader):
        raise InputError("Nothing is open.", name="outlets")

    assert work(_sheet(solve), State()).errors == {"": "Nothing is open"}


@pytest.mark.parametrize("text, unit", [("1640", "ft"), ("1640 ft", "m"), ("-164", "ft")])
def test_a_bound_as_it_is_printed_is_inside(text, unit):
    assert work(_sheet(), State(texts={"climb": text}, units={"climb": unit})).answer


def test_a_number_just_outside_what_is_printed_is_outside():
    assert work(_sheet(), State(texts={"climb": "1641"}, units={"climb": "ft"})).errors


@pytest.mark.parametrize(
    "texts, units", [({"climb": "18"}, {"climb": "m"}), ({"climb": "18 m"}, {})]
)
def test_the_examples_number_is_the_examples_whether_its_unit_is_typed_or_in_the_menu(texts, units):
    assert State("metric", texts, units).standing_of(_sheet().field("climb")) == "example"
    assert State("metric", texts, {"climb": "ft"}).standing_of(_sheet().field("climb")) == (
        "given" if units else "example"
    )


def test_what_a_link_asks_about_has_no_answer_until_it_is_typed():
    state = State(texts={"climb": "18 m"}, standing={"climb": "asked"})
    outcome = work(_sheet(), state)
    assert outcome.answer is None and list(outcome.errors) == ["climb"]
    assert work(_sheet(), State(texts={"climb": "18 m"}, standing={"climb": "given"})).answer


# Names and rows ------------------------------------------------------------------------------


def _named(text):
    table = Rows("taps", "Taps", (Text("name", "Name", ""), Count("open", "Open", 1, 0, 9)), (), ())
    seen = []

    def solve(values, reader):
        seen.append(values.taps[0].name)
        raise InputError("It is too far.", name="taps.0.open")

    made = Sheet("t", "T", (table,), solve)
    told = work(made, State(texts={"taps": row_text.encode([(text, "1")])})).errors["taps.0.open"]
    return seen[0], told


@pytest.mark.parametrize("sign", list("\u202a\u202b\u202d\u202e\u2066\u2067\u2068\u2069\u200e\u200f"
                                      "\u200b\ufeff\x00\x07"))  # fmt: skip
def test_a_sign_that_hides_or_turns_text_is_no_part_of_a_name(sign):
    name, told = _named(f"Cab{sign}in")
    assert name == "Cabin" and told == "Row 1 (Cabin): It is too far"


def test_a_name_of_signs_that_show_nothing_is_no_name():
    name, told = _named("\u200b\u2060")
    assert name == "" and told == "Row 1: It is too far"


def test_a_name_of_letters_is_kept_as_it_is():
    assert _named("Wäsche\u00a0haus 水")[0] == "Wäsche\u00a0haus 水"


def test_a_name_from_right_to_left_is_kept_apart_from_the_numbers_after_it():
    name, told = _named("خزان الماء 2")
    assert name == "\u2068خزان الماء\u2069 2" and told == f"Row 1 ({name}): It is too far"
    assert text_boxes.text_width(name) == text_boxes.text_width("خزان الماء 2")


@pytest.mark.parametrize("key", ["reach", "pipe", "pump_match"])
def test_what_rows_replace_is_not_assumed(key):
    made = sheet(key)
    texts = {"line": "20 m,3 m,pe100-sdr11/32,1"}
    state = State(texts=texts, standing=dict.fromkeys(("climb", "length"), "assumed"))
    outcome = work(made, state)
    assert outcome.answer is not None
    assert not {one.key for one in outcome.assumed} & set(made.replaced["line"])
    text = render.plain(made, outcome, state).split("Figures")[0]
    assert made.field("length").label + ":" not in text
    without = work(made, State(texts={"line": ""}, standing=state.standing)).assumed
    assert {"climb", "length"} <= {one.key for one in without}


@pytest.mark.parametrize("key", ["reach", "pipe", "pump_match"])
def test_what_rows_replace_changes_nothing(key):
    rows = {"line": "20 m,3 m,pe100-sdr11/32,1"}
    told = [
        work(sheet(key), State(texts={**rows, "climb": climb, "length": "99 m"})).answer.figures
        for climb in ("1 m", "7 m")
    ]
    assert told[0] == told[1]
