"""Every request put to release 0.1.0 still gets its reply, or one that may stand in its place."""

import functools
import json
from importlib import import_module

import pytest

from tests.release_0_1_0 import allowed, changes, store
from tests.release_0_1_0.frozen import Frozen, load
from tests.release_0_1_0.held import broken, reply
from tests.release_0_1_0.requests import EACH, requests

SHEETS = tuple(load()["sheets"])


@functools.cache
def compared(key):
    """(index, stored line, what is shown now) of every request of a sheet.

    A changed sheet may have other defaults now: it is asked with those of 0.1.0 written out.
    """
    found = []
    for at, line in enumerate(store.read("replies", key)):
        request = line["request"]
        if key in allowed.CHANGED:
            request = Frozen(key).completed(request, plain(key, request["system"]))
        found.append((at, line, reply(json.dumps(request))))
    return found


@functools.cache
def plain(key, system):
    """(key, text) of each field as its sheet has it, not as Alder Terrace fills it."""
    fields = import_module(f"calc.sheets.{key}.sheet").SHEET.fields
    return tuple((entry.key, entry.default(system)) for entry in fields)


@pytest.mark.parametrize("key", SHEETS)
def test_every_reply_is_that_of_0_1_0_to_the_byte(key):
    if key in allowed.CHANGED:
        pytest.skip(f"changed since: {allowed.CHANGED[key]}")
    other = [at for at, line, now in compared(key) if now.get("sha") != line["sha"]]
    assert other == []


@pytest.mark.parametrize("key", SHEETS)
def test_whatever_changed_is_answered_refused_and_judged_no_better(key):
    wrong = {}
    for at, line, now in compared(key):
        mended, better = (key, at) in allowed.MENDED, (key, at) in allowed.BETTER
        if why := broken(line, now, mended, better):
            wrong[at] = why
    assert wrong == {}


def test_a_changed_sheet_says_what_changed():
    assert changes.unsaid(allowed.CHANGED) == []


def test_a_change_that_nothing_is_said_of_is_found():
    text = "# Changes\n\n## surge\n\nSlower.\n\n## pipe\n"
    changed = {"reach": "a better formula", "surge": "a slower wave", "pipe": "another table"}
    assert changes.unsaid(changed, text) == ["reach", "pipe"]


ANSWER = {"level": "tight", "sha": "0"}
REFUSED = {"errors": ["flow"], "sha": "0"}


@pytest.mark.parametrize(
    ("stored", "now", "why"),
    [
        (ANSWER, {"failed": "KeyError: 'x'"}, "no reply: KeyError: 'x'"),
        (ANSWER, {"level": None, "errors": []}, "neither errors nor a verdict"),
        (ANSWER, {"level": "good", "errors": []}, "was tight, is good now"),
        (ANSWER, {"level": "tight", "errors": []}, ""),
        (ANSWER, {"level": "bad", "errors": []}, ""),
        (ANSWER, {"level": None, "errors": ["flow"]}, ""),
        (REFUSED, {"level": "bad", "errors": []}, "was refused at ['flow'], is answered now"),
        (REFUSED, {"level": None, "errors": ["pipe"]}, ""),
    ],
)
def test_what_no_change_may_do_is_found(stored, now, why):
    assert broken(stored, now) == why


def test_what_is_listed_may_be_better_or_mended():
    better, mended = {"level": "good", "errors": []}, {"level": "good", "errors": []}
    assert broken(ANSWER, better, better=True) == ""
    assert broken(REFUSED, mended, mended=True) == ""
    assert broken(ANSWER, better, mended=True) and broken(REFUSED, mended, better=True)


def test_an_exception_is_no_reply():
    assert reply('{"op": "work", "sheet": "nothing"}') == {"failed": "KeyError: 'nothing'"}


@pytest.mark.parametrize("key", SHEETS)
def test_every_choice_was_asked_while_it_showed(key):
    frozen, asked = Frozen(key), set()
    for line in store.read("replies", key):
        system, texts = line["request"]["system"], line["request"]["texts"]
        for entry in frozen.fields:
            if entry["kind"] == "Choice" and frozen.shown(entry, texts, system):
                asked.add((entry["key"], texts.get(entry["key"], entry[system])))
    choices = [entry for entry in frozen.fields if entry["kind"] == "Choice"]
    assert {(e["key"], value) for e in choices for value in e["values"]} <= asked


@pytest.mark.parametrize("key", SHEETS)
def test_the_stored_requests_are_those_that_are_drawn(key):
    stored = [line["request"] for line in store.read("replies", key)]
    assert stored == requests(key)
    assert [one["system"] for one in stored] == ["metric"] * EACH + ["us"] * EACH
