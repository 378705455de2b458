"""What an answer stands on: the reader's numbers in a line, what was assumed by its reason."""

import re

import pytest

from calc.page import render, render_given
from calc.page.answer import Answer
from calc.page.fields import Choice, Number, Rows, Sheet, Text, Unknown
from calc.page.form import work
from calc.page.given import EXAMPLE, Assumed, Given
from calc.page.state import State
from calc.sheets import sheet


def _sheet():
    flow = Number("flow", "Flow", "flow", "", "", 0.0, 1.0, unknown=Unknown(reason="usual"))
    columns = (Text("name", "Name", ""), flow)
    fields = (
        Number("climb", "Climb", "length", "18 m", "60 ft", -50.0, 500.0),
        Number("own", "Tank size (optional)", "volume", "", "", 0.0, 10.0, optional=True),
        Choice("kind", "Kind", (("a", "First"), ("b", "Second")), "a"),
        Text("table", "Table", "1\n2"),
        Rows("taps", "Outlets", columns, (("Hose", ""), ("Sink", "")), (("Hose", ""),), "outlet"),
    )
    return Sheet("trial", "Trial", fields, lambda v, r: Answer(told="Fine."))


def shown(found):
    return {one.key: one.shown for one in found}


def test_what_was_given_is_told_as_a_person_reads_it():
    state = State(texts={"climb": "22", "kind": "b", "table": "1\n2\n3", "taps": "Tub,;Sink,"})
    assert shown(work(_sheet(), state).given) == {
        "climb": "22 m", "kind": "Second", "table": "3 lines", "taps": "2 outlets",
    }  # fmt: skip


def test_a_unit_is_told_in_its_usual_letters():
    assert shown(work(_sheet(), State(texts={"climb": "22 FEET"})).given) == {"climb": "22 ft"}


@pytest.mark.parametrize(
    ("quantity", "typed", "on_screen", "in_text"),
    [
        ("area", "200 m2", "200 m²", "200 m2"),
        ("volume", "5 m3", "5 m³", "5 m3"),
        ("flow", "2 m3/h", "2 m³/h", "2 m3/h"),
        ("pressure", "3 kg/cm2", "3 kg/cm2", "3 kg/cm2"),
        ("length", "5'6", "5'6", "5'6"),
        ("pressure", "about 3", "about 3 bar", "about 3 bar"),
        ("diameter", "1 1/4", "1 1/4 mm", "1 1/4 mm"),
    ],
)
def test_a_unit_is_told_once_though_it_ends_in_a_digit(quantity, typed, on_screen, in_text):
    amount = Number("amount", "Amount", quantity, "", "", 0.0, 1e9)
    row = Number("each", "Each", quantity, "", "", 0.0, 1e9)
    rows = Rows("taps", "Outlets", (Text("name", "Name", ""), row), (), (), "outlet", least=0)
    made = Sheet("trial", "Trial", (amount, rows), lambda v, r: Answer(told="Fine."))
    state = State(texts={"amount": typed, "taps": f"Tub,{typed}"})
    outcome = work(made, state)
    assert shown(outcome.given)["amount"] == on_screen
    text = render.plain(made, outcome, state)
    assert f"Amount: {in_text}\n" in text and f"each {in_text}\n" in text


def test_the_examples_rows_are_assumed_where_something_else_is_given():
    outcome = work(_sheet(), State(texts={"climb": "22"}))
    assert Assumed("taps", "Outlets", "2 outlets", EXAMPLE) in outcome.assumed


def test_an_empty_field_is_neither_given_nor_assumed():
    outcome = work(_sheet(), State(texts={"climb": "22", "own": ""}))
    assert "own" not in {one.key for one in (*outcome.given, *outcome.assumed)}


@pytest.mark.parametrize("key", ["reach", "pipe", "pump_match"])
def test_rows_changed_by_a_number_typed_over_them_are_not_told_as_given(key):
    outcome = work(sheet(key), State(texts={"climb": "9 m"}))
    assert shown(outcome.given) == {"climb": "9 m"}


def test_the_line_names_six_numbers_and_counts_the_others():
    html = render_given.yours(tuple(Given(str(n), f"Number {n}", "1") for n in range(9)))
    assert "and 3 more" in html and html.split("sl-beyond")[0].count("<b>") == 6
    assert html.count("<b>") == 9  # for paper
    assert 'data-sl-change="0"' in html
    assert render_given.yours(()) == ""


def test_a_reason_is_said_once_and_cells_of_a_column_are_told_together():
    found = (
        Assumed("taps.0.flow", "Row 1 (Hose), flow", "", "usual"),
        Assumed("water", "Water temperature", "15 °C", EXAMPLE),
        Assumed("taps.1.flow", "Row 2 (Sink), flow", "", "usual"),
        Assumed("own", "Tank size (optional)", "5 L", EXAMPLE),
    )
    html = render_given.assumed(found).replace("</li>", "\n").replace("\u00a0", " ")
    told = re.sub(r"<[^>]*>", "", html)
    assert told.splitlines() == [
        "Assumed, not from youFrom the example: Water temperature 15 °C, Tank size 5 L.",
        "Not known, usual: flow in 2 rows.",
    ]
    assert 'data-sl-change="taps.0.flow"' in render_given.assumed(found)


def test_of_many_for_one_reason_the_first_stand_and_the_others_are_folded():
    found = tuple(Assumed(f"n{n}", f"Number {n}", "1", EXAMPLE) for n in range(10))
    html = render_given.assumed(found)
    first, others = html.split("<summary>and 4 more</summary>")
    assert (first.count("data-sl-change"), others.count("data-sl-change")) == (6, 4)
    assert "<details" not in render_given.assumed(found[:8])
