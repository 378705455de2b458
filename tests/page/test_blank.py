"""The blank form: every question once, with its unit and room to write, and the cautions."""

import re
from html import escape

import pytest

from calc.page import blank
from calc.page.entries import name
from calc.page.fields import Number, Rows
from calc.sheets import KEYS, sheet
from tests.page.test_render import EVIL, _sheet, parsed


@pytest.mark.parametrize("key", KEYS)
def test_every_label_stands_once_and_every_caution(key):
    made, html = sheet(key), blank.form(sheet(key))
    parsed(html.replace("<br>", ""))
    for entry in made.fields:
        label = re.escape(escape(name(entry)))
        found = re.findall(rf'(?:sl-line"|sl-boxes"|<caption)>{label}(?= \(|: |<)', html)
        assert len(found) == 1, entry.label
    assert all(escape(caution) in html for caution in made.cautions)


def test_a_number_has_the_units_of_both_systems():
    html = blank.form(sheet("reach"))
    climb = sheet("reach").field("climb")
    assert isinstance(climb, Number)
    assert f"{climb.label} (m or ft)" in html


@pytest.mark.parametrize("key", KEYS)
def test_a_table_has_rows_to_write_in(key):
    tables = [entry for entry in sheet(key).fields if isinstance(entry, Rows)]
    html = blank.form(sheet(key))
    cells = sum(len(table.columns) * blank.EMPTY_ROWS for table in tables)
    assert html.count("<td></td>") == cells


def test_nothing_in_a_blank_form_becomes_markup():
    assert EVIL not in blank.form(_sheet())
