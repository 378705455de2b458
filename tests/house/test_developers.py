"""What DEVELOPERS.md says holds: its sheet runs, its places are there."""

import re

import pytest

import calc
from calc.page import render
from calc.page.fields import Number
from calc.page.form import work
from calc.page.state import State
from calc.sheets.addresses import addresses
from tests.house.modules import ROOT
from tests.sheets.working import check_working

TEXT = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
(CODE,) = re.findall(r"^```python\n(.*?)^```$", TEXT, re.MULTILINE | re.DOTALL)
MADE_UP = {"calc/sheets/trough/", "docs/trough.md", "tests/sheets/test_trough.py"}


@pytest.fixture(scope="module")
def sheet():
    room = {"__name__": "trough"}
    exec(compile(CODE, "DEVELOPERS.md", "exec"), room)  # noqa: S102, our own text
    return room["SHEET"]


def asked(sheet, system="metric", **texts):
    outcome = work(sheet, State(system, texts))
    assert outcome.errors == {}
    return outcome


@pytest.mark.parametrize("system", ["metric", "us"])
def test_its_sheet_works_out_and_renders(sheet, system):
    outcome = asked(sheet, system)
    assert outcome.answer.verdict.word == "Works"
    check_working(outcome.answer)
    html = render.answer(outcome, addresses(sheet, State(system), outcome.example))
    assert "Works" in html and "Static pressure at the trough" in html
    text = render.plain(sheet, outcome, State(system))
    assert outcome.answer.verdict.sentence.replace("\u00a0", " ") in text
    assert sheet.title and 'name="drop"' in render.form(sheet, "trough")


@pytest.mark.parametrize(
    "drop, word", [("2 m", "Does not work"), ("3.6 m", "Borderline"), ("4 m", "Works")]
)
def test_its_findings_decide(sheet, drop, word):
    # 5 psi is 3.5 m of water
    assert asked(sheet, drop=drop).answer.verdict.word == word


def test_its_fix_works(sheet):
    (fix,) = asked(sheet, drop="2 m").answer.fixes
    (drop,) = re.findall(r"[0-9.]+\sm\b", fix.text)
    assert asked(sheet, drop=drop).answer.verdict.word == "Works"


def test_it_may_be_asked_without_knowing(sheet):
    (assumed,) = asked(sheet, drop="8 m", water="?").assumed
    assert assumed.reason == "usual for a spring"


def test_it_can_be_read_at_one_go():
    lines = [line for line in CODE.splitlines() if line.strip() and not line.startswith("#")]
    assert len(lines) <= 60


def test_what_physics_refuses_is_said_at_its_field(sheet):
    known = {entry.key for entry in sheet.fields if isinstance(entry, Number)}
    assert set(sheet.arguments.values()) <= known


def places():
    for name in set(re.findall(r"`([\w./]+/[\w./]*)`", TEXT)) - MADE_UP:
        if "<" not in name and name.split("/")[0] in ("calc", "docs", "scripts", "tests"):
            yield name


ROOMS = ("", "page", "site", "sheets")  # whose modules are named one by one


@pytest.mark.parametrize("room", ROOMS)
def test_its_table_places_every_module(room):
    table = TEXT.split("## Where things are")[1].split("###")[0]
    named = set(re.findall(r"`(?:[\w/]+/)?(\w+\.py)`", table))
    modules = {path.name for path in (ROOT / "calc" / room).glob("[a-z]*.py")}
    assert modules - named == set()


def test_what_changed_in_this_release_is_said_with_its_day():
    said = (ROOT / "docs" / "changes.md").read_text(encoding="utf-8")
    assert re.search(
        rf"^## {re.escape(calc.__version__)} \(\d{{4}}-\d\d-\d\d\)$", said, re.MULTILINE
    )


@pytest.mark.parametrize("name", sorted(places()))
def test_what_it_names_is_there(name):
    assert (ROOT / name).exists()
