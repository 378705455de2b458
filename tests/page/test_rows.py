"""A table of rows: its text, its reading, its form, its errors beside their cells."""

import json

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc import bridge
from calc.errors import InputError, RangeError
from calc.page import render, row_text
from calc.page.answer import Answer
from calc.page.fields import Choice, Count, Number, Rows, Sheet, Text
from calc.page.form import Outcome, work
from calc.page.state import State
from calc.sheets import sheet
from calc.sheets.addresses import fragment
from calc.units import Reader
from tests.page.test_render import EVIL, parsed

COLUMNS = (
    Text("name", "Name", "", longest=20),
    Number("long", "Length", "length", "10 m", "30 ft", 0.1, 1000.0),
    Number("want", "Wanted", "pressure", "", "", 0.0, 1e6, optional=True),
    Choice("kind", "Kind", (("tap", "Tap"), ("hose", "Hose")), "tap"),
    Count("open", "Open", 1, 0, 9),
)
RUNS = Rows(
    "runs",
    "Runs",
    COLUMNS,
    metric=(("House", "140 m", "2 bar", "hose", "2"), ("Hut", "12,5 m")),
    us=(("House", "450 ft"),),
    row="run",
    most=4,
)


def _sheet(solve=None):
    def told(values, _reader):
        text = "; ".join(f"{r.name} {r.long:.4f} {r.want} {r.kind} {r.open}" for r in values.runs)
        return Answer(told=text)

    return Sheet("trial", "Trial", (RUNS,), solve or told)


def _told(text=None, system="metric"):
    texts = {} if text is None else {"runs": text}
    return work(_sheet(), State(system, texts)).answer.verdict.sentence


def _errors(text, solve=None, system="metric"):
    outcome = work(_sheet(solve), State(system, {"runs": text}))
    assert outcome.answer is None
    return outcome.errors


def test_rows_read_into_si_by_column():
    assert _told() == "House 140.0000 200000.0 hose 2; Hut 12.5000 None tap 1"


def test_us_readers_have_their_own_rows_and_column_defaults():
    assert _told(system="us") == "House 137.1600 None tap 1"
    assert _told("Hut", system="us") == "Hut 9.1440 None tap 1"


def test_a_cell_without_a_unit_is_in_the_readers_usual_one():
    assert _told("Hut,10", system="us").startswith("Hut 3.0480")


def test_cells_left_out_take_their_columns_default():
    assert _told("Hut") == "Hut 10.0000 None tap 1"


def test_spaces_and_empty_rows_are_passed_over():
    assert _told(" Hut , 3 m ;; ;Shed") == "Hut 3.0000 None tap 1; Shed 10.0000 None tap 1"


@settings(max_examples=100, deadline=None)
@given(st.lists(st.lists(st.text("ab,;! é"), min_size=2, max_size=4), max_size=5))
def test_any_rows_come_back_from_their_text(rows):
    trimmed = tuple(tuple(cell.strip() for cell in row) for row in rows)
    assert row_text.decode(row_text.encode(trimmed)) == trimmed


def test_a_text_stays_short_and_readable():
    assert row_text.encode((("Cabin 1", "12m"), ("Hose", "3m"))) == "Cabin 1,12m;Hose,3m"


@pytest.mark.parametrize(
    "text, key, words",
    [
        ("House,far", "runs.0.long", "Row 1 (House): Length must be a number, such as 12.5"),
        ("House;Hut,-3 m", "runs.1.long", "Row 2 (Hut): Length must be 0.1 m or more"),
        ("House,3m,,pond", "runs.0.kind", "Row 1 (House): Kind: choose one from the list"),
        ("House,3m,,tap,2.5", "runs.0.open", "Row 1 (House): Open must be a whole number"),
        ("House,", "runs.0.long", "Row 1 (House): Enter the length"),
        ("House,3 psi", "runs.0.long", "Row 1 (House): “psi” is a unit of pressure, not of length. "
                                       "Write m, ft or cm"),
        (",3 psi", "runs.0.long", "Row 1: “psi” is a unit of pressure, not of length. "
                                  "Write m, ft or cm"),
        ("House,3m,,tap,1,9,9", "runs.0",
         "Row 1 (House): 7 cells are given; there are 5 columns"),
        ("", "runs", "Add a run"),
        ("a;b;c;d;e", "runs", "Runs must be 4 rows or fewer"),
        ("a" * 30, "runs.0.name",
         f"Row 1 ({'a' * 30}): Name must be 20 characters or fewer"),
    ],
)  # fmt: skip
def test_what_is_wrong_is_said_at_its_cell(text, key, words):
    errors = _errors(text)
    assert errors == {key: words}


def test_in_the_row_itself_its_name_is_left_out(monkeypatch):
    monkeypatch.setattr(bridge, "find_sheet", lambda _key: _sheet())
    request = {"op": "work", "sheet": "trial", "texts": {"runs": "House,far"}}
    reply = json.loads(bridge.handle(json.dumps(request)))
    assert reply["cells"] == {"runs.0.long": "Length must be a number, such as 12.5"}
    assert reply["errors"] == {"runs.0.long": "Row 1 (House): " + reply["cells"]["runs.0.long"]}


def test_every_bad_cell_is_said_at_once():
    assert set(_errors("a,x;b,1m,y")) == {"runs.0.long", "runs.1.want"}


def test_a_decimal_comma_is_noted_at_its_cell():
    assert "12.5" in work(_sheet(), State()).notes["runs.1.long"]


def _raises(error):
    def solve(values, _reader):
        raise error(values.runs[1])

    return solve


def test_an_error_of_physics_is_said_at_its_row():
    solve = _raises(lambda row: InputError("Nothing feeds it.", name=row.place))
    assert _errors("House;Hut", solve) == {"runs.1": "Row 2 (Hut): Nothing feeds it"}


def test_a_range_error_of_a_cell_is_said_in_the_readers_units():
    solve = _raises(lambda row: RangeError(row.cell("long"), 30.0, 0.0, 20.0, "length", "Cut it."))
    assert _errors("House;Hut", solve, "us") == {
        "runs.1.long": "Row 2 (Hut): Length must be 65.62 ft or less. Cut it"
    }


def test_an_error_of_a_row_that_is_not_there_is_said_for_the_table():
    def solve(_values, _reader):
        raise InputError("Odd.", name="runs.9.long")

    assert _errors("House", solve) == {"runs": "Odd"}


def test_the_form_holds_every_row_and_a_template():
    tags = parsed(render.form(_sheet(), "t"))
    assert sum(tag == "tr" for tag, _ in tags) == 1 + 2 + 1
    assert sum(tag == "template" for tag, _ in tags) == 1


def test_every_control_of_a_row_has_its_own_name_and_id():
    tags = parsed(render.form(_sheet(), "t").split("<template>")[0] + "</div></div>")
    controls = [attrs for tag, attrs in tags if tag in ("input", "select", "button")]
    names = [attrs["aria-label"] for attrs in controls]
    assert len(names) == len(set(names)) == 2 + 2 * (5 + 4)
    ids = [attrs["id"] for attrs in controls if "id" in attrs]
    assert len(ids) == len(set(ids))


def test_nothing_in_a_table_becomes_markup():
    columns = (Text("name", EVIL, EVIL), Choice("k", EVIL, (("a", EVIL),), "a", help=EVIL))
    rows = Rows("r", EVIL, columns, ((EVIL, "a"),), ((EVIL, "a"),), EVIL, help=EVIL)
    html = render.form(Sheet("t", EVIL, (rows,), None), "t")
    assert {tag for tag, _ in parsed(html)}.isdisjoint({"img", "script"})
    assert not any(name.startswith("on") for _, attrs in parsed(html) for name in attrs)


def test_the_text_for_an_email_lists_the_rows():
    outcome = Outcome(work(_sheet(), State()).answer, {}, {}, frozenset(), Reader())
    text = render.plain(_sheet(), outcome, State())
    assert "Row 1 (House): length 140 m; wanted 2 bar; kind Hose; open 2" in text


def test_a_link_to_rows_reads_like_what_was_typed():
    made = fragment(sheet("keep_up"), {"taps": "Wash house 2,hut,sink"})
    assert made.startswith("v=1&taps=Wash+house+2,hut,sink&c=")


def test_rows_convert_to_the_other_system(monkeypatch):
    monkeypatch.setattr(bridge, "find_sheet", lambda _key: _sheet())
    request = {"op": "convert", "sheet": "trial", "system": "metric", "to": "us"}
    reply = json.loads(bridge.handle(json.dumps(request)))
    assert reply["texts"]["runs"] == "House,459.3,29.01,hose,2;Hut,41.01,,tap,1"
    assert reply["units"] == {"runs.long": "ft", "runs.want": "psi"}


def test_a_cell_without_a_unit_is_in_that_of_its_column():
    state = State(texts={"runs": "House,10;Hut,10 m"}, units={"runs.long": "ft"})
    told = work(_sheet(), state).answer.verdict.sentence
    assert told.startswith("House 3.0480") and "Hut 10.0000" in told


def test_a_cell_that_cannot_be_read_converts_to_itself(monkeypatch):
    monkeypatch.setattr(bridge, "find_sheet", lambda _key: _sheet())
    request = {
        "op": "convert",
        "sheet": "trial",
        "texts": {"runs": "Hut,far;Den,1!,250"},
        "to": "us",
    }
    text = json.loads(bridge.handle(json.dumps(request)))["texts"]["runs"]
    assert text.startswith("Hut,far,") and ";Den,1!,250 m," in text  # or 1250 m would be feet
