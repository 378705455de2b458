"""What release 0.1.0 read from links: the texts it took from them still read to the same values."""

import functools

import pytest

from tests.release_0_1_0 import store
from tests.release_0_1_0.frozen import Frozen, load
from tests.release_0_1_0.readings import read

SHEETS = tuple(load()["sheets"])
ASKED_NOW = ("3/4",)  # a pair of pressures, or a fraction of one
READ_NOW = ("about 5", "about5")
# a pump with speed control starts again below its set pressure: its cut-in is not asked
HIDDEN_NOW = {("pressure_tank", "cutin"): ("control", "speed")}


@functools.cache
def lines(key):
    return store.read("readings", key)


@pytest.mark.parametrize("key", SHEETS)
def test_the_texts_of_a_link_still_read_to_the_values_of_0_1_0(key):
    other = {}
    for line in lines(key):
        now = read({"sheet": key, **line["request"]})
        texts = line["request"]["texts"]
        for name, value in line["values"].items():
            if _hidden(key, name, now):
                continue
            asked = texts[name] in ASKED_NOW and name in now["errors"]
            if not asked and as_then(now["values"].get(name), value) != value:
                other[line["fragment"], name] = now
        for name in line["errors"]:
            read_now = texts.get(name) in READ_NOW or _hidden(key, name, now)
            if name not in now["errors"] and not read_now:
                other[line["fragment"], name] = now
    assert other == {}


def _hidden(key, name, now):
    decides, value = HIDDEN_NOW.get((key, name), ("", None))
    return bool(decides) and now["values"].get(decides) == value


def as_then(now, then):
    """A table without the columns that came later."""
    same = isinstance(then, list) and isinstance(now, list) and len(now) == len(then)
    return [row[: len(old)] for row, old in zip(now, then, strict=True)] if same else now


@pytest.mark.parametrize("key", SHEETS)
def test_every_field_that_is_typed_was_read_from_some_link(key):
    frozen = Frozen(key)
    usual = {s: {e["key"]: standard(e, s) for e in frozen.fields} for s in ("metric", "us")}
    typed = set()
    for line in lines(key):
        request = line["request"]
        for name, text in request["texts"].items():
            if text != usual[request["system"]][name]:
                typed.add(name)
    assert typed >= {entry["key"] for entry in frozen.fields if entry["kind"] != "Choice"}


def standard(entry, system):
    """The text that stands in a field's box at the start: the number without its menu's unit."""
    text = entry[system]
    return text.split(" ")[0] if entry["kind"] == "Number" else text


@pytest.mark.parametrize("key", SHEETS)
def test_links_of_every_source_are_kept_and_no_two_are_the_same(key):
    kept = lines(key)
    given = [line.get("typed", line["fragment"]) for line in kept]
    assert len(kept) == len(set(given)) == 200
    assert {line["source"] for line in kept} >= {"form", "answer", "hand"}
    assert any(line["left_out"] for line in kept) and any(line["errors"] for line in kept)
