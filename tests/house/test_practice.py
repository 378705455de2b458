"""Rules of the trade: each once, in ``calc.practice``, with its unit and where it is from."""

import ast
import re

import pytest

from calc import practice
from calc.units import FOOT, PSI
from tests.house.modules import ROOT, modules

SOURCE = re.compile(
    r"common practice|our choice|from memory"
    r"|\b(?:ISO|EN|IPC|UPC|ASTM|ASME|AWWA|FAO|WHO|ANSI|NIST)\b"
)
ALIASES = {"GPM", "LPM", "MM_HOUR"}  # units under a shorter name
PRACTICE = tuple(one for one in modules() if one.name.startswith("calc.practice"))

# What a rule looks like where it is written a second time: code that no other meaning explains.
TRADE = re.compile(
    r"\b(?:80|50|40|30|20|15|5) \* PSI\b|\b15 \* FOOT\b|\b(?:2|10) \* GPM\b"
    r"|^[A-Z_]*(?:FAST|SPEED)[A-Z_]* = (?:1\.5|2\.0|2\.4)\b",
    re.MULTILINE,
)


def rules():
    """(name, what stands beside it or above it) of every constant of ``practice``."""
    for module in PRACTICE:
        for node in module.tree.body:
            if isinstance(node, ast.Assign) and node.targets[0].id not in ALIASES:
                above = node.lineno - 2
                while module.lines[above].startswith("#"):
                    above -= 1
                yield node.targets[0].id, "\n".join(module.lines[above + 1 : node.end_lineno])


@pytest.mark.parametrize("name, text", rules(), ids=lambda one: one if one.isupper() else "")
def test_a_rule_says_where_it_is_from(name, text):
    comments = " ".join(line.partition("#")[2] for line in text.splitlines())
    assert SOURCE.search(comments) or name.endswith("_BY_KEY"), text


def test_there_are_many_rules():
    assert len(list(rules())) > 40


@pytest.mark.parametrize(
    "module", [pytest.param(one, id=one.name) for one in modules() if one not in PRACTICE]
)
def test_no_rule_stands_a_second_time(module):
    code = "\n".join(line.partition("#")[0] for line in module.lines if ">>>" not in line)
    found = TRADE.findall(code)
    assert not found


def test_what_the_guides_say_is_what_practice_says():
    """The rules that everybody reads: 80 psi at an outlet, 15 ft of suction lift, 1.5 m/s."""
    texts = {path.name: path.read_text() for path in (ROOT / "docs").glob("*.md")}
    for rule, unit, words in (
        (practice.HIGHEST_AT_OUTLET, PSI, "{:.0f} psi"),
        (practice.SUCTION_LIFT, FOOT, "{:.0f} ft"),
        (practice.SPEED_NOTE, 1.0, "{:.1f} m/s"),
        (practice.SPEED_CARE, 1.0, "{:.1f} m/s"),
    ):
        said = words.format(rule / unit)
        assert any(said in text.replace("\u00a0", " ") for text in texts.values()), said


@pytest.mark.parametrize(
    "guide", [one for one in (ROOT / "docs").glob("*.md") if "## Sources" in one.read_text()],
    ids=lambda one: one.stem,
)  # fmt: skip
def test_a_guide_says_common_practice_once_below_its_sources_with_a_link(guide):
    said, _, sources = guide.read_text().partition("## Sources")
    assert "ommon practice" not in " ".join(said.split())
    once = "[common practice](about.md#how-numbers-are-treated)"
    told = " ".join(sources.split()).replace(once, "§")
    assert told.count("§") <= 1 and "ommon practice" not in told


@pytest.mark.parametrize("rule, most", [("15 ft", 1), ("30 to 40 psi", 0), ("3 to 5 gpm", 2)])
def test_no_rule_of_thumb_is_on_every_guide(rule, most):
    """What a page's own calculator computes is not said beside it as a rule of the trade."""
    texts = {path.stem: path.read_text() for path in (ROOT / "docs").glob("*.md")}
    guides = [name for name, text in texts.items() if "```calculator" in text and rule in text]
    assert len(guides) <= most, guides
