"""The verdict does not wait for what takes longer: first the figures, then the fixes."""

import json

import pytest

from calc import bridge
from calc.errors import InputError
from calc.page.form import rest, work
from calc.page.state import State
from calc.sheets import KEYS, sheet
from tests.parity.cases import requests


def ask(**request):
    return json.loads(bridge.handle(json.dumps({"op": "work", "base": "../", **request})))


@pytest.mark.parametrize("key", KEYS)
def test_first_and_rest_are_what_all_at_once_is(key):
    for request in requests(key, 8):
        whole, first = ask(**request), ask(**request, phase="first")
        form = ask(**request, phase="form")
        assert form["errors"] == whole["errors"] and form["link"] == whole["link"]
        assert first["example"] == form["example"] == whole["example"]
        assert form.items() <= (whole | {"more": True}).items() and set(first) <= set(whole)
        assert ask(**request, phase="rest") == whole


def test_the_verdict_is_the_same_in_both_and_fixes_come_later():
    state = State("us")
    first = work(sheet("keep_up"), state, first=True)
    whole = work(sheet("keep_up"), state)
    assert first.answer.later is not None and whole.answer.later is None
    assert first.answer.verdict.word == whole.answer.verdict.word and not first.answer.fixes
    begun = first.answer.verdict.sentence.removesuffix(".")
    assert whole.answer.verdict.sentence.startswith(begun)  # the cause follows
    assert rest(first).answer == whole.answer and whole.answer.fixes


def test_a_fix_that_is_being_looked_for_is_said_to_be():
    assert "Looking for a fix" in ask(sheet="keep_up", phase="first")["html"]
    assert "Looking for a fix" not in ask(sheet="keep_up")["html"]


def test_the_rest_of_other_numbers_is_worked_out_anew():
    ask(sheet="keep_up", phase="first")
    other = {"sheet": "keep_up", "texts": {"set": "4 bar"}}
    assert ask(**other, phase="rest") == ask(**other)


def test_what_the_rest_refuses_is_said_beside_its_field(monkeypatch):
    """Not as a fault of the calculator, as what a sheet raises for its reader is no such fault."""

    def refused(*_args):
        raise InputError("This supply could not be worked out near “fork”.", name="runs")

    monkeypatch.setattr("calc.sheets.keep_up.sheet.tried", refused)
    first, later = (ask(sheet="keep_up", phase=phase) for phase in ("first", "rest"))
    assert first["more"] and "errors" not in first
    assert "near “fork”" in later["errors"]["runs"] and "failed" not in later
