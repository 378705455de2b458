"""CSV and JSON lines: read whoever wrote them, written so that no spreadsheet works them out."""

import csv
import io

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from calc.bulk import tables
from calc.errors import InputError


def read(text):
    found = tables.csv_of(io.StringIO(text, newline=None))
    return found, list(found.items)


@pytest.mark.parametrize("sign", tables.SEPARATORS)
@pytest.mark.parametrize("end", ["\n", "\r\n", "\r"])
@pytest.mark.parametrize("mark", ["", "\ufeff"])
def test_whatever_parts_the_cells_and_ends_the_lines_the_rows_are_the_same(sign, end, mark):
    rows = [("id", "climb"), ("1", "12 m"), ("", ""), ("2", "40 ft")]
    text = mark + end.join(sign.join(row) for row in rows) + end
    found, items = read(text)
    assert (found.names, found.separator, found.marked) == (("id", "climb"), sign, bool(mark))
    assert [one.given for one in items] == [
        {"id": "1", "climb": "12 m"},
        {"id": "2", "climb": "40 ft"},
    ]
    assert [one.number for one in items] == [1, 2] and not any(one.error for one in items)


def test_a_row_says_the_line_it_begins_in_also_after_a_cell_of_many_lines():
    _, items = read('id,text\n1,"a\nb\nc"\n2,d\n')
    assert [(one.number, one.line, one.given["text"]) for one in items] == [
        (1, 2, "a\nb\nc"),
        (2, 5, "d"),
    ]


@pytest.mark.parametrize(
    "row, words",
    [
        ('1,"12" m', "around a whole cell"),
        ("1,2,3", "3 cells, where the header names 2"),
    ],
)
def test_a_row_that_cannot_be_read_says_why_and_the_next_is_read(row, words):
    _, items = read(f"id,climb\n{row}\n2,5\n")
    assert words in items[0].error
    assert (items[1].number, items[1].given, items[1].error) == (2, {"id": "2", "climb": "5"}, "")


def test_a_quotation_mark_that_is_never_closed_swallows_no_row_in_silence():
    _, items = read('id,climb\n1,2\n2,"3\n3,4\n')
    assert items[0].error == "" and "never closed" in items[1].error


def test_a_row_that_ends_early_has_empty_cells():
    _, items = read("id,climb,length\n1,2\n")
    assert items[0].given == {"id": "1", "climb": "2", "length": ""} and not items[0].error


@pytest.mark.parametrize(
    "text, words", [("", "no header"), ("\n\n", "no header"), ("a,a\n", "twice")]
)
def test_a_header_that_names_nothing_or_one_name_twice_is_refused(text, words):
    with pytest.raises(InputError, match=words):
        tables.csv_of(io.StringIO(text))


@pytest.mark.parametrize("begin", ["=", "+", "-", "@", "\t", "\r", "\n", " =", "＝"])
def test_a_cell_that_begins_like_a_formula_is_guarded(begin):
    assert tables.guarded(f"{begin}cmd()") == f"'{begin}cmd()"


@pytest.mark.parametrize("number", ["-3.5", "+4", "-1e-05", "-2,5", "12", ""])
def test_a_plain_number_stays_a_number(number):
    assert tables.guarded(number) == number


@settings(suppress_health_check=[HealthCheck.too_slow])  # the first draw is slow
@given(st.lists(st.text(), min_size=2, max_size=4), st.sampled_from(tables.SEPARATORS))
def test_any_cell_is_read_back_as_it_was_and_begins_no_formula(cells, sign):
    line = tables.csv_line(cells, sign)
    (found,) = csv.reader(io.StringIO(line, newline=""), delimiter=sign, strict=True)
    assert found == [tables.guarded(cell) for cell in cells]
    for cell, written in zip(cells, found, strict=True):
        number = written.lstrip("+-").replace(",", ".").replace(".", "", 1)[:1].isdigit()
        assert number or not written.startswith(("=", "+", "-", "@", "\t", "\r"))
        if not cell.startswith("'"):
            assert tables.unguarded(written) == cell


def test_no_spreadsheet_parts_a_cell_at_another_sign():
    assert tables.csv_line(["a;=1", "b\tc"]) == '"a;=1","b\tc"\r\n'


def test_lines_of_json_that_cannot_be_read_are_told_by_number_and_line():
    items = list(tables.json_items(['\ufeff{"a": 1}\n', "\n", "{oops\n", '{"a": NaN}\n', "[2]"]))
    assert [(one.number, one.line, bool(one.error)) for one in items] == [
        (1, 1, False), (2, 3, True), (3, 4, True), (4, 5, False),
    ]  # fmt: skip
    assert items[0].given == {"a": 1} and items[3].given == [2]
