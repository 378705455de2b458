"""The filled calculators a guide links to: each opens without an error."""

import re
from pathlib import Path
from urllib.parse import unquote

import pytest

from calc.page.form import work
from calc.page.state import State
from calc.sheets import sheet

DOCS = Path(__file__).resolve().parents[2] / "docs"
BLOCK = re.compile(r"^```calculator\n(\w+)\n```$", re.MULTILINE)
LINK = re.compile(r"\]\(#([^)\s]*=[^)\s]*)\)")


def examples():
    for guide in sorted(DOCS.glob("*.md")):
        text = guide.read_text(encoding="utf-8")
        keys = BLOCK.findall(text)
        if len(keys) == 1:  # a link within a page is for its one calculator
            yield from ((guide.name, keys[0], link) for link in LINK.findall(text))


EXAMPLES = list(examples())
# what each guide says of the case that its calculator opens on
OPENS = {
    "head": ("climb", "length", "flow"),
    "pipe-sizing": ("climb", "length", "flow"),
    "pump-match": ("climb", "length", "flow", "lift"),
    "suction-lift": ("lift", "length", "flow"),
    "pressure-tank": ("pump", "cutin", "cutout", "tank"),
    "storage": ("use", "gives"),
    "demand": ("showers_open",),
    "water-hammer": ("flow", "length", "weakest"),
    "pressure": ("known", "climb"),
    "cable": ("length", "voltage", "power"),
    "gravity": ("drop", "length", "spring"),
    "well": ("drawn", "minutes", "steady", "use", "static"),
    "hill-tank": ("volume", "use", "gives", "height"),
    "hot-water": ("heater", "stored", "static", "length", "volume", "relief"),
    "drip": ("area", "flow", "pressure", "length"),
    "day": ("gives", "stored"),
    "sprinkler": ("area", "flow", "pressure", "each", "along"),
}
OURS = (
    "demand.md", "storage.md", "pressure-tank.md", "cable.md", "gravity.md", "well.md",
    "hill-tank.md", "drip.md", "day.md", "sprinkler.md", "hot-water.md",
)  # fmt: skip


def read(fragment):
    parts = dict(part.split("=", 1) for part in fragment.split("&"))
    system = parts.pop("u", "metric")
    return State(system, {key: unquote(text.replace("+", " ")) for key, text in parts.items()})


@pytest.mark.parametrize("guide, key, fragment", EXAMPLES)
def test_an_example_is_read_without_an_error(guide, key, fragment):
    state = read(fragment)
    assert set(state.texts) <= {entry.key for entry in sheet(key).fields}, guide
    assert work(sheet(key), state).errors == {}, guide


@pytest.mark.parametrize("guide, key, fragment", [e for e in EXAMPLES if e[0] in OURS])
def test_an_example_differs_from_the_one_the_guide_opens_on(guide, key, fragment):
    state = read(fragment)
    plain = work(sheet(key), State(state.system)).answer
    assert work(sheet(key), state).answer != plain, guide


@pytest.mark.parametrize("system", ["metric", "us"])
@pytest.mark.parametrize("guide", OPENS)
def test_a_guide_tells_the_example_that_its_calculator_opens_on(guide, system):
    text = (DOCS / f"{guide}.md").read_text(encoding="utf-8")
    told = text.partition("## A worked example")[2].partition("](#")[0]
    (key,) = BLOCK.findall(text)
    for name in OPENS[guide]:
        entry = sheet(key).field(name)
        number, _, unit = entry.default(system).partition(" ")
        said = f"{number} {unit.removesuffix('/day')}".strip()
        assert re.search(rf"(?<![\d.]){re.escape(said)}\b", " ".join(told.split())), (name, said)


@pytest.mark.parametrize("guide", OURS)
def test_these_guides_have_examples(guide):
    assert sum(name == guide for name, _, _ in EXAMPLES) >= 4


@pytest.mark.parametrize("guide", ["head", "pressure"])
def test_short_answers_say_what_the_page_computes_of_45_psi_and_50_ft(guide):
    """Not the rule of thumb of 20 to 30 psi, which the calculator below it narrows down."""
    text = (DOCS / f"{guide}.md").read_text()
    outcome = work(sheet("pressure"), State("us", {"known": "45 psi", "climb": "50 ft"}))
    left = outcome.reader.unit("pressure").from_si(outcome.answer.figures[1].value)
    assert f"{left:.0f} psi" in text or f"{left:.1f} psi" in text
    assert "20 to 30 psi" not in text
