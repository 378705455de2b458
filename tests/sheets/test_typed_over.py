"""What is typed over the sections of an example or a site changes them, and nothing else."""

import json
import math

import pytest

from calc import bridge
from calc.page import row_text
from calc.page.form import work
from calc.page.state import State, hidden_keys, typed_over
from calc.reading import split
from calc.sheets import KEYS, sheet
from calc.units import parse

ROWED = [key for key in KEYS if "line" in sheet(key).replaced]


def rows(key, state):
    """[(length m, rise m, pipe)] of the sections worked with."""
    state = typed_over(sheet(key), state, hidden_keys(sheet(key), state))
    return [
        (parse(row[0], "length", "m").value, parse(row[1], "length", "m").value, row[2])
        for row in row_text.decode(state.text(sheet(key).field("line")))
    ]


@pytest.mark.parametrize("key", ROWED)
def test_a_climb_typed_over_the_example_keeps_its_pipes(key):
    before, after = rows(key, State()), rows(key, State(texts={"climb": "20 m"}))
    assert [pipe for *_, pipe in before] == [pipe for *_, pipe in after]
    assert [one[0] for one in before] == pytest.approx([one[0] for one in after])
    assert math.fsum(rise for _, rise, _ in after) == pytest.approx(20)


@pytest.mark.parametrize("key", ROWED)
def test_a_length_typed_over_the_example_stretches_its_sections(key):
    before, after = rows(key, State("us")), rows(key, State("us", {"length": "600 ft"}))
    assert math.fsum(long for long, _, _ in after) == pytest.approx(182.88)
    assert [up for _, up, _ in after] == pytest.approx([up for _, up, _ in before])
    assert len({round(b[0] / a[0], 9) for a, b in zip(before, after, strict=True)}) == 1


@pytest.mark.parametrize("key", ["reach", "pump_match"])
def test_a_pipe_chosen_over_the_example_is_that_of_every_section(key):
    chosen = State(texts={"kind": "pe100-sdr11", "pe100-sdr11": "50"})
    assert {pipe for *_, pipe in rows(key, chosen)} == {"pe100-sdr11/50"}
    assert rows(key, State(texts={"kind": "own", "bore": "40 mm"})) == []


@pytest.mark.parametrize("key", ROWED)
def test_the_examples_own_climb_typed_again_changes_nothing(key):
    entry = sheet(key).field("climb")
    number, unit = split(entry.default("metric"), "length")
    state = State(texts={"climb": f"{number} {unit.symbol}"}, standing={"climb": "given"})
    one, two = work(sheet(key), State()), work(sheet(key), state)
    assert [f.value for f in two.answer.figures] == pytest.approx(
        [f.value for f in one.answer.figures], rel=1e-3
    )


@pytest.mark.parametrize("key", ROWED)
def test_what_cannot_be_read_is_said_at_its_field_alone(key):
    assert set(work(sheet(key), State(texts={"climb": "far"})).errors) == {"climb"}


@pytest.mark.parametrize("key", ROWED)
def test_over_sections_that_the_reader_typed_the_single_fields_do_not_count(key):
    typed = {"line": "60 m,5 m,pe100-sdr11/40;30 m,2 m,pe100-sdr11/32"}
    one = work(sheet(key), State(texts=typed))
    two = work(sheet(key), State(texts={**typed, "climb": "20 m"}))
    assert one.answer.figures == two.answer.figures
    assert "climb" in two.idle and "length" in two.idle


@pytest.mark.parametrize("key", ROWED)
def test_a_climb_typed_over_a_sites_sections_counts(key):
    def ask(**more):
        return json.loads(bridge.handle(json.dumps({"op": "site", "sheet": key, **more})))

    made = ask(do="demo")
    filled = ask(do="fill", site=made["site"])

    def worked(climb, kept):
        texts = filled["texts"] | {"climb": climb}
        standing = filled["standing"] | {"climb": "given"}
        request = {"op": "work", "sheet": key, "texts": texts, "units": filled["units"],
                   "standing": standing, "site": {"text": made["packed"], "way": filled["way"],
                   "kept": [one for one in filled["texts"] if one not in kept]}}  # fmt: skip
        return json.loads(bridge.handle(json.dumps(request)))

    low, high = worked("5", ["climb"]), worked("15", ["climb"])
    assert low["errors"] == high["errors"] == {}
    assert low["text"].split("Working")[0] != high["text"].split("Working")[0]
    assert "climb" not in low["idle"]
