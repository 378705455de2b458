"""The style sheets are made of tokens: no size of text or space, and no colour, beside them."""

import re

import pytest

from tests.house.modules import ROOT

SHEETS = sorted((ROOT / "docs" / "assets").glob("*.css"))
TOKENS = (ROOT / "docs" / "assets" / "tokens.css").read_text(encoding="utf-8")
SIZED = re.compile(
    r"(?<![\w-])((?:font-size|(?:row-|column-)?gap|(?:margin|padding)(?:-[a-z]+)*)\s*:\s*([^;{}]+))"
)
TOKEN = re.compile(r"calc\(-1 \* var\(--sl-space-[1-6]\)\)|var\(--sl-(?:space-[1-6]|text-[1-5])\)")
PLAIN = {"0", "auto", "inherit", "!important"}
COLOUR = re.compile(r"#[0-9a-fA-F]{3,8}\b|\b(?:rgb|hsl)a?\(")
LISTED = {
    "font-size: 16px": "on paper 1rem is 12 pt: the theme's 20 px would waste it",
    "margin: 10mm": "of the sheet of paper, where tokens are not known",
}


def rules(text):
    """The text without its comments."""
    return re.sub(r"/\*.*?\*/", "", text, flags=re.DOTALL)


def own_sizes(text):
    """What sizes text or space by something that is no token."""
    found = []
    for whole, value in SIZED.findall(rules(text)):
        if set(TOKEN.sub("", value).split()) - PLAIN and whole.strip() not in LISTED:
            found.append(whole.strip())
    return found


@pytest.mark.parametrize("sheet", SHEETS, ids=lambda sheet: sheet.name)
def test_text_and_space_have_the_sizes_of_the_tokens(sheet):
    assert own_sizes(sheet.read_text(encoding="utf-8")) == []


@pytest.mark.parametrize(
    "planted", ["a { font-size: 13px; }", "a { margin: 0 0.5rem }", "a { row-gap: 3px; }"]
)
def test_another_size_is_found(planted):
    assert len(own_sizes(planted)) == 1


@pytest.mark.parametrize(
    "sheet", [one for one in SHEETS if one.name != "tokens.css"], ids=lambda sheet: sheet.name
)
def test_colours_have_names(sheet):
    assert COLOUR.findall(rules(sheet.read_text(encoding="utf-8"))) == []


@pytest.mark.parametrize("sheet", SHEETS, ids=lambda sheet: sheet.name)
def test_what_is_listed_and_used_is_there(sheet):
    used = set(re.findall(r"var\((--sl-[\w-]+)\)", sheet.read_text(encoding="utf-8")))
    assert used <= set(re.findall(r"(--sl-[\w-]+):", TOKENS))
    every = "".join(one.read_text(encoding="utf-8") for one in SHEETS)
    assert all(size in every for size in LISTED)


# Contrast, by the formula of WCAG 2.2 ------------------------------------------------------------


def palette(scheme):
    """{name: "#rrggbb"} of one of the two schemes."""
    (block,) = re.findall(rf'\[data-md-color-scheme="{scheme}"\] \{{(.*?)\}}', TOKENS, re.DOTALL)
    return dict(re.findall(r"(--[\w-]+): (#[0-9a-f]{6});", block))


def light(colour):
    parts = [int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5)]
    linear = [p / 12.92 if p <= 0.04045 else ((p + 0.055) / 1.055) ** 2.4 for p in parts]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def contrast(one, other):
    darker, lighter = sorted((light(one), light(other)))
    return (lighter + 0.05) / (darker + 0.05)


TEXT = ("ink", "soft", "accent", "good", "tight", "bad", "stale")
LINES = tuple(f"line-{number}" for number in (1, 2, 3, 4, 5))  # their names stand in their colour


@pytest.mark.parametrize("scheme", ["default", "slate"])
@pytest.mark.parametrize("ground", ["paper", "panel"])
@pytest.mark.parametrize("name", [*TEXT, *LINES])
def test_text_can_be_read_on_paper_and_on_a_panel(scheme, ground, name):
    colours = palette(scheme)
    assert contrast(colours[f"--sl-{name}"], colours[f"--sl-{ground}"]) >= 4.5


@pytest.mark.parametrize("scheme", ["default", "slate"])
@pytest.mark.parametrize("ground", ["paper", "panel"])
def test_the_edge_of_a_control_is_seen(scheme, ground):
    colours = palette(scheme)
    assert contrast(colours["--sl-edge"], colours[f"--sl-{ground}"]) >= 3.0


@pytest.mark.parametrize("scheme", ["default", "slate"])
def test_the_three_lines_of_a_chart_differ_in_grey(scheme):
    colours = palette(scheme)
    first, second, third = sorted(light(colours[f"--sl-{name}"]) for name in LINES[:3])
    assert (second + 0.05) / (first + 0.05) >= 1.2
    assert (third + 0.05) / (second + 0.05) >= 1.2
