"""A row is worked out as the page does it with the same texts typed in."""

import json

import pytest

from calc import bridge
from calc.bulk import cells, rows
from calc.bulk.answers import Wanted
from calc.errors import InputError
from calc.page.fields import Choice, Rows
from calc.page.form import work
from calc.sheets import KEYS, sheet
from tests.parity.cases import requests

SHEETS = ("reach", "keep_up", "pipe", "suction", "pump_match", "surge", "gravity")
PLAIN = str.maketrans("\u00a0\u202f", "  ")


def worked(key, given, **more):
    return rows.worked(key, given, Wanted(**more))


@pytest.mark.parametrize("key", SHEETS)
def test_fifty_random_rows_answer_as_the_page_does(key):
    for request in requests(key, 50):
        given = {
            f"{name} ({request['units'][name]})" if request["units"].get(name) else name: text
            for name, text in request["texts"].items()
        }
        if not given:
            continue
        standing = {name: "given" for name, text in request["texts"].items() if text != "?"}
        page = json.loads(bridge.handle(json.dumps({**request, "standing": standing})))
        found = worked(key, given, system=request["system"], figures=("all",))
        text = page["text"].translate(PLAIN)
        assert not page["errors"] and found["error"] == ""
        assert f"{found['verdict']}: {found['sentence']}\n" in text
        for one in found["figures"]:
            assert f"  {one['label']}: {one['shown']}" in text
        for one in (*found["fixes"], *found["findings"]):
            assert one["text"] in text
        assert found["link"] == f"{sheet(key).page}#{page['link']}"
        assert [one["label"] for one in found["assumed"]] == [
            one["label"] for one in page["assumed"]
        ]


@pytest.mark.parametrize("key", KEYS)
def test_every_field_is_found_by_its_key_and_by_its_label_or_asks_for_the_key(key):
    labels = [entry.label for entry in sheet(key).fields]
    for entry in sheet(key).fields:
        assert rows.place(key, entry.key) == rows.Place(entry.key)
        if labels.count(entry.label) == 1:
            assert rows.place(key, entry.label.upper()) == rows.Place(entry.key)
        else:
            with pytest.raises(InputError, match="label of several"):
                rows.place(key, entry.label)


@pytest.mark.parametrize("key", KEYS)
def test_no_field_is_called_like_a_column_of_the_answer(key):
    taken = {name.casefold() for name in cells.answer_columns(Wanted())}
    for entry in sheet(key).fields:
        assert not {entry.key.casefold(), entry.label.casefold()} & taken


def test_a_choice_is_taken_by_its_value_or_its_label():
    for key in SHEETS:
        for entry in sheet(key).fields:
            if isinstance(entry, Choice):
                for value, label in entry.options:
                    assert rows.text(entry, value.upper()) == value
                    known = [v for v, other in entry.options if other.lower() == label.lower()]
                    assert rows.text(entry, label) in known or label.lower() in dict(entry.options)


def test_what_nobody_knows_is_worked_with_as_on_the_page():
    found = worked("reach", {"climb": "12 m", "water": "I don’t know"})
    (water,) = [one for one in found["assumed"] if one["label"] == "Water temperature"]
    assert water["reason"] != "from the example"


def test_a_unit_in_the_name_of_a_column_counts_for_bare_numbers_alone():
    in_feet = worked("reach", {"climb (ft)": "40"})
    assert in_feet["figures"] == worked("reach", {"climb": "40 ft"})["figures"]
    assert in_feet["figures"] == worked("reach", {"Climb from pump to outlet [FT]": 40})["figures"]
    assert worked("reach", {"climb (ft)": "12 m"})["figures"] == worked(
        "reach", {"climb": "12 m"}
    )["figures"]  # fmt: skip


def test_a_table_of_json_is_typed_as_its_rows():
    taps = sheet("keep_up").field("taps")
    assert isinstance(taps, Rows)
    assert rows.text(taps, [["Sink, left", "cabin", "sink", 0, 1], ["Hose"]]) == (
        "Sink!, left,cabin,sink,0,1;Hose"
    )


@pytest.mark.parametrize(
    "given, words",
    [
        ({"climb": "12 kg"}, "Write m, ft or cm"),
        ({"climb": ""}, "Enter the climb"),
        ({"climb (kg)": "12"}, "must be one of m, ft"),
        ({"climb": "1", "Climb from pump to outlet": "2"}, "same field"),
        ({"clim": "1"}, "No column is named after a field of reach"),
        ({"climb": "9999 m"}, "or less"),
    ],
)
def test_what_cannot_be_read_is_said(given, words):
    found = worked("reach", given)
    assert words in found["error"] and "verdict" not in found


def test_a_cell_that_does_not_count_is_told():
    found = worked("reach", {"climb": "12 m", "kind": "pe100-sdr11", "pvc40": "1"})
    assert found["error"] == "" and found["unused"] == ["Size"]


def test_a_figure_is_had_by_its_label_in_its_own_columns():
    wanted = Wanted(figures=("Water speed", "Nothing such"))
    found = rows.worked("reach", {"climb": "12 m"}, wanted)
    row = dict(zip(cells.answer_columns(wanted), cells.answer_cells(found, wanted), strict=True))
    speed = next(one for one in found["figures"] if one["label"] == "Water speed")
    assert float(row["Water speed"]) == pytest.approx(speed["value"], rel=1e-5)
    assert row["Water speed, unit"] == "m/s" and row["Nothing such"] == ""
    assert float(row["main_value"]) == pytest.approx(found["figures"][0]["value"], rel=1e-5)
    assert row["main_figure"] == found["figures"][0]["label"] and row["main_unit"] == "bar"


def test_links_begin_with_the_address_that_is_asked_for():
    found = worked("reach", {"climb": "12 m"}, base="https://water.example/", flat=True)
    assert found["link"].startswith("https://water.example/head.html#v=1&climb=12m&c=")


def test_a_lift_in_a_column_of_its_own_is_worked_out_as_on_the_page():
    found = work(sheet("suction"), rows.form("suction", {"lift": "9 m"}))
    assert found.errors == {} and found.answer is not None
