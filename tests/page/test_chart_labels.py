"""Words in a chart: where Vega-Lite draws the dots, and that no word covers another or a dot."""

import json
import re

import pytest
import vl_convert

from calc.page import charts
from calc.page.chart_labels import ALONG, BESIDE, DOT, Box, Plot, along, beside, plot, scale
from calc.page.form import work
from calc.page.state import State
from calc.sheets import KEYS, sheet
from calc.units import Reader
from tests.parity.cases import replies
from tests.rounds import some

WIDTH, HEIGHT = 330, 220
DOT_DRAWN = re.compile(
    r'aria-roledescription="point"[^>]*transform="translate\(([-\d.]+),([-\d.]+)\)"'
)


def _charts():
    for key in KEYS:
        for system in ("metric", "us"):
            for chart in work(sheet(key), State(system)).answer.charts:
                yield pytest.param(chart, system, id=f"{key}-{chart.key}-{system}")


CHARTS = list(_charts())


def _plot(chart, system):
    return plot(charts.drawn(chart, Reader(system)), WIDTH, HEIGHT)


@pytest.mark.parametrize(("chart", "system"), CHARTS)
def test_dots_are_where_vega_lite_draws_them(chart, system):
    svg = vl_convert.vegalite_to_svg(json.dumps(charts.spec(chart, Reader(system))))
    drawn = [tuple(map(float, found)) for found in DOT_DRAWN.findall(svg)]
    dots = [(x, y) for x, y, _ in _plot(chart, system).dots]
    assert len(drawn) >= len(dots)
    for x, y in dots:
        # half a pixel: the drawing may be aligned to whole ones
        assert any(abs(x - left) <= 0.5 and abs(y - top) <= 0.5 for left, top in drawn)


@pytest.mark.parametrize(("chart", "system"), CHARTS)
def test_no_word_covers_another_or_a_dot(chart, system):
    found = _plot(chart, system)
    of_dots, of_rules = found.labels()
    words = [beside(*dot)[place] for dot, place in zip(found.dots, of_dots, strict=True)]
    words += [
        along(y, text, WIDTH)[place] for (y, text), place in zip(found.rules, of_rules, strict=True)
    ]
    dots = [Box(x - DOT, y - DOT, x + DOT, y + DOT) for x, y, _ in found.dots]
    for index, one in enumerate(words):
        assert not any(one.meets(other) for other in words[index + 1 :])
        assert not any(one.meets(dot) for number, dot in enumerate(dots) if number != index)


LONG = {"panels", "battery", "direct", "panel_place", "day", "fault"}  # seconds a form


@pytest.mark.parametrize("key", KEYS)
def test_whatever_is_entered_is_drawn(key):
    # parity asks the same of a sheet that takes long, with more forms
    for _, reply in replies(key, some(25 if key in LONG else 100)):
        assert reply["errors"] == {} and reply["charts"] is not None


def _only(dots=(), rules=(), lines=()):
    return Plot(WIDTH, HEIGHT, tuple(lines), tuple(dots), tuple(rules)).labels()


def test_a_lone_dot_has_its_word_right_and_above():
    assert _only([(100.0, 100.0, "yours")]) == ([BESIDE[0]], [])


def test_a_dot_at_the_right_edge_has_its_word_on_the_left():
    assert _only([(WIDTH - 5.0, 100.0, "yours")])[0][0][0] < 0


def test_a_dot_at_the_top_has_its_word_below():
    assert _only([(100.0, 2.0, "yours")])[0][0][1] > 0


def test_a_rule_has_its_word_where_no_line_runs():
    falling = ([0.0, WIDTH], [0.0, HEIGHT])
    assert _only(rules=[(HEIGHT - 15.0, "wanted")], lines=[falling])[1] == [ALONG[1]]
    rising = ([0.0, WIDTH], [HEIGHT, 0.0])
    assert _only(rules=[(HEIGHT - 15.0, "wanted")], lines=[rising])[1] == [ALONG[0]]


@pytest.mark.parametrize(
    ("values", "low", "high"),
    # d3-scale's documentation of "nice": 0.2 to 1 for 0.241079 to 0.969679, from memory; ours
    # begin at zero
    [
        ([0.241079, 0.969679], 0.0, 1.0),
        ([3.0], 0.0, 3.0),
        ([-7.3, 12.0], -8.0, 12.0),
        ([0.0], 0.0, 1.0),
        ([], 0.0, 1.0),
    ],
)
def test_scales_begin_at_zero_or_below_and_are_rounded_outwards(values, low, high):
    made = scale(values, 100.0)
    assert (made.low, made.high) == pytest.approx((low, high))
