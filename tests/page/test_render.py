"""HTML: everything escaped, well formed, the same from page and browser."""

import json
from html.parser import HTMLParser

import pytest

from calc import bridge
from calc.page import render
from calc.page.answer import (
    Answer,
    Chart,
    Column,
    Figure,
    Link,
    Series,
    Step,
    Table,
    Value,
)
from calc.page.charts import spec
from calc.page.fields import Choice, Count, Number, Sheet, Text
from calc.page.findings import Finding, Fix
from calc.page.form import Outcome, work
from calc.page.given import Assumed
from calc.page.state import State
from calc.sheets import sheet
from calc.sheets.addresses import addresses, fragment
from calc.units import Reader

EVIL = '<img src=x onerror="alert(1)">&\'"'
VOID = {"input", "br", "img"}


class Balance(HTMLParser):
    """Collects tags and fails on one closed out of order."""

    def __init__(self):
        super().__init__()
        self.open, self.seen = [], []

    def handle_starttag(self, tag, attrs):
        self.seen.append((tag, dict(attrs)))
        if tag not in VOID:
            self.open.append(tag)

    def handle_endtag(self, tag):
        assert self.open.pop() == tag


def parsed(html):
    parser = Balance()
    parser.feed(html)
    parser.close()
    assert parser.open == []
    return parser.seen


def _answer():
    return Answer(
        EVIL,
        (Finding("stop", "evil", EVIL), Finding("care", "evil", EVIL + "!", at=EVIL)),
        (Fix(EVIL, Link(EVIL, "demand", {"people": EVIL})),),
        False,
        (Figure(EVIL, 2.8e5, "pressure", note=EVIL, main=True),),
        (
            Step(
                EVIL,
                "p = rho * g * z",
                {"rho": Value(1000.0, "density")},
                Value(1.0, "pressure"),
                EVIL,
                EVIL,
            ),
        ),
        (
            Table(
                EVIL,
                (Column(EVIL), Column("Flow", "flow")),
                ((EVIL, 1e-3), (EVIL, None)),
                (0,),
                (1,),
                EVIL,
            ),
        ),
        (Chart(EVIL, EVIL, EVIL, "x", "flow", "y", "pressure", (Series("s", (0.0,), (1.0,)),)),),
        (Link(EVIL, "demand", {"people": EVIL}),),
        (),
        (EVIL,),
    )


def _sheet():
    fields = (
        Number("n", EVIL, "pressure", "3 bar", "45 psi", 0.0, 1e6, EVIL),
        Count("c", EVIL, 1, 0, 9, EVIL, group=EVIL),
        Choice("k", EVIL, (("a", EVIL),), "a", None, EVIL),
    )
    return Sheet("t", EVIL, fields, None)


def test_nothing_in_an_answer_becomes_markup():
    assumed = (Assumed(EVIL, EVIL, EVIL, EVIL),)
    html = render.answer(Outcome(_answer(), {}, {}, frozenset(), Reader(), assumed), str)
    tags = parsed(html)
    assert "img" not in {tag for tag, _ in tags}
    assert not any(name.startswith("on") for _, attrs in tags for name in attrs)


def test_nothing_in_a_form_becomes_markup():
    assert "img" not in {tag for tag, _ in parsed(render.form(_sheet(), "t"))}


def test_every_control_has_a_label():
    tags = parsed(render.form(_sheet(), "t"))
    labelled = {attrs["for"] for tag, attrs in tags if tag == "label"}
    controls = [attrs for tag, attrs in tags if tag in ("input", "select", "textarea")]
    assert all(attrs["id"] in labelled or "aria-label" in attrs for attrs in controls)


def test_a_phone_shows_the_keys_that_a_number_needs():
    fields = (
        Number("p", "P", "pressure", "3 bar", "45 psi", 0.0, 1e6),
        Number("up", "Up", "length", "3 m", "9 ft", 0.0, 9.0),
        Number("dip", "Dip", "head", "3 m", "9 ft", -9.0, 9.0),
        Count("c", "C", 1, 0, 9),
    )
    tags = parsed(render.form(Sheet("t", "T", fields, None), "t"))
    keys = [attrs["inputmode"] for tag, attrs in tags if tag == "input"]
    assert keys == ["decimal", "text", "text", "numeric"]


def test_a_name_is_one_line_and_a_pasted_table_a_block():
    fields = Text("name", "Name", "", longest=24), Text("table", "Table", "")
    tags = parsed(render.form(Sheet("t", "T", fields, None), "t"))
    boxes = [(tag, attrs["name"]) for tag, attrs in tags if tag in ("input", "textarea")]
    assert boxes == [("input", "name"), ("textarea", "table")]


def test_what_stands_above_the_fields_of_a_group_is_inside_it():
    fields = (
        Count("c", "C", 1, 0, 9),
        Count("d", "D", 1, 0, 9, group="Where"),
    )
    html = render.form(Sheet("t", "T", fields, None), "t", {"Where": "<hr>"})
    order = [
        html.index(part) for part in ('data-key="c"', "<summary>Where", "<hr>", 'data-key="d"')
    ]
    assert order == sorted(order) and html.count("<hr>") == 1


def test_a_field_is_read_label_hint_error_control():
    html = render.form(_sheet(), "t")
    order = [html.index(part) for part in ("<label", "sl-help", "sl-error", "sl-control")]
    assert order == sorted(order)


def test_figures_show_both_systems():
    html = render.answer(Outcome(_answer(), {}, {}, frozenset(), Reader("us")), str)
    assert "40.6\u00a0psi" in html and "2.80\u00a0bar" in html


def test_a_fragment_reads_like_what_was_typed():
    made = fragment(sheet("reach"), {"climb": "50 ft", "flow": "10 gpm"}, "us")
    assert made.startswith("v=1&u=us&climb=50ft&flow=10gpm&c=")


def test_the_links_of_the_example_say_that_they_are_the_examples():
    answer = Answer(told="", links=(Link("Go on", "demand", {"people": "7"}),))
    for example, key in ((True, "people-=7"), (False, "people=7")):
        outcome = Outcome(answer, {}, {}, frozenset(), Reader(), (), example)
        where = addresses(sheet("reach"), State(), example)
        assert f"#v=1&amp;{key}&amp;c=" in render.answer(outcome, where)


def test_the_text_of_the_example_says_that_it_is_one():
    said = "A worked example"
    for texts, is_said in (({}, True), ({"climb": "9 m"}, False)):
        state = State(texts=texts)
        text = render.plain(sheet("reach"), work(sheet("reach"), state), state)
        assert (said in text) == is_said


@pytest.mark.parametrize("typed", ["12 feet", "50 PSI", "5'6\"", "12"])
def test_copied_text_gives_a_unit_once(typed):
    key = "pressure" if "PSI" in typed else "climb"
    state = State(texts={key: typed, "line": ""})  # without rows, which replace the climb
    text = render.plain(sheet("reach"), work(sheet("reach"), state), state)
    label = sheet("reach").field(key).label
    assert f"  {label}: {typed if typed != '12' else '12 m'}\n" in text


def test_chart_specifications_are_in_the_readers_units():
    drawn = spec(_answer().charts[0], Reader("us"))
    assert drawn["layer"][0]["encoding"]["x"]["title"] == "x (gpm)"
    json.dumps(drawn)


def test_an_unknown_sheet_is_an_error_not_an_answer():
    with pytest.raises(KeyError):
        bridge.handle('{"op": "work", "sheet": "../secret"}')


def test_state_defaults_are_metric():
    assert State().system == "metric"


def test_the_text_lists_no_rows_that_were_changed_by_a_number_typed_over_them():
    reach = sheet("reach")
    state = State("metric", {"climb": "5 m"}, {}, {"climb": "given"})
    text = render.plain(reach, work(reach, state), state)
    assert "Climb from pump to outlet: 5 m" in text
    assert "3, made to fit the numbers above" in text and "rise to its far end" not in text
    untouched = State("metric")
    assert "rise to its far end" in render.plain(reach, work(reach, untouched), untouched)


def test_the_text_calls_no_number_given_that_it_says_is_assumed():
    tank = sheet("pressure_tank")
    state = State("us", {"cutin": "30 psi"}, {}, {"cutin": "given"})
    text = render.plain(tank, work(tank, state), state)
    assert "Assumed, not from you" in text and "\nGiven\n" not in text
