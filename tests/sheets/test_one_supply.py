"""One site, many pages: asked the same question they give the same figure, and the same finding.

Made-up sites with one way to one outlet; half with altitude, heat, a filter or a dip.  Against
solutions written with ``fluids``: tests/network/test_one_pipe.py.
"""

import os
import random
from functools import cache

import pytest

from calc.page.form import work
from calc.page.state import State
from calc.sheets import sheet, views
from calc.sheets.parts import ways
from calc.sheets.parts.line_rows import as_text
from calc.site.demo import alder_terrace
from calc.site.facts import GIVEN, Fact
from calc.site.site import Site
from calc.site.supply import SUCTION

# more, apart from the daily run: SPRINGLINE_SUPPLIES=500
SITES = range(int(os.environ.get("SPRINGLINE_SUPPLIES", "200")))
ONE_PIPE = ("reach", "pipe", "pump_match")
CLOSE = 1e-9
OUTLET, WAY = "draw", "then/draw"
PARTS = ("none", "none", "filter", "dirty", "meter", "check", "r20")
KINDS = {"pe100-sdr11": ("25", "32", "40", "50"), "pvc40": ("0.75", "1", "1.25", "1.5")}
LEFT, STATIC, SPEED = (
    "Running pressure at the outlet",
    "Static pressure at the outlet",
    "Water speed",
)


def made(seed):
    """A site with one to four sections to one steady draw."""
    dice = random.Random(seed)
    plain = seed % 2
    given = {
        "water.level": f"{dice.uniform(-4, 1):.3g} m", "suction.length": "8 m",
        "suction.pipe": "pe100-sdr11/63", "suction.foot_valves": "1", "suction.bends": "1",
        "pump.height": "0 m", "pump.id": "large", "pump.control": "speed",
        "pump.set": f"{dice.uniform(2, 5):.4g} bar",
        "place.altitude": "0 m" if plain else f"{dice.uniform(0, 2500):.4g} m",
        "water.temperature": "15 °C" if plain else f"{dice.uniform(4, 36):.3g} °C",
    }  # fmt: skip
    if seed % 5 == 0:  # the sun heats the pipe, not its water
        given["pipes.hottest"] = f"{random.Random(f'hot {seed}').uniform(15, 60):.3g} °C"
    if seed % 7 == 0:  # the control reads the pressure at the wellhead, the pump hangs below
        given["pump.sensed"] = f"{random.Random(f'sensed {seed}').uniform(-2, 9):.3g} m"
    site = Site(f"Made {seed}", "metric")
    for path, text in given.items():
        site = site.put(path, Fact(text))
    rows, height, start = [], 0.0, "pump"
    for number in range(dice.randint(1, 4)):
        height += dice.uniform(-4, 8) if plain else dice.uniform(-20, 12)
        length = max(dice.uniform(2, 90), 2 * abs(height))
        kind = dice.choice(list(KINDS))
        rows.append({
            "from": Fact(start), "to": Fact(f"p{number}"), "length": Fact(f"{length:.4g} m"),
            "height": Fact(f"{height:.4g} m"), "pipe": Fact(f"{kind}/{dice.choice(KINDS[kind])}"),
            "bends": Fact(str(dice.randint(0, 6))),
            "fitting": Fact("none" if plain else dice.choice(PARTS)),
        })  # fmt: skip
        start = f"p{number}"
    draw = {
        "name": Fact(OUTLET), "at": Fact(start), "kind": Fact("steady"), "before": Fact("0"),
        "after": Fact("1"), "flow": Fact(f"{dice.uniform(2, 30):.3g} L/min"),
        "rated": Fact("0.1 bar"), "needed": Fact("1 bar"),
    }  # fmt: skip
    return site.put_rows("sections", tuple(rows)).put_rows("outlets", (draw,))


@cache
def answer(seed, key):
    """A sheet's answer as filled from a made site; None where it refuses it, with the errors."""
    facts = views.fill(made(seed), key, WAY, "metric", 14)
    texts = {field: fact.text for field, fact in facts.items()}
    if key in ONE_PIPE and not texts.get("line"):  # as it is, not in the size that is advised
        way = ways.way_to_outlet(made(seed), OUTLET, "then")
        texts["line"] = as_text(way.sections)
    outcome = work(sheet(key), State("metric", texts, {}, dict.fromkeys(facts, GIVEN)))
    return outcome.answer, outcome.errors


def figure(found, label):
    return next(one.value for one in found.figures if one.label == label)


def keys(found):
    return {one.key for one in found.findings}


def same(one, other, scale=1e5):
    return abs(one - other) <= CLOSE * max(abs(one), abs(other), scale)


def held(found):
    """Whether the pump holds its set pressure, so that a page of one pipe asks the same."""
    speeds = [one.value for one in found.figures if one.label == "Pump speed"]
    return bool(speeds) and 0 < speeds[0] < 1


@pytest.mark.parametrize("block", range(0, len(SITES), 50))
def test_pages_of_one_pipe_agree_with_the_whole_supply(block):
    compared = 0
    for seed in SITES[block : block + 50]:
        whole, errors = answer(seed, "keep_up")
        if whole is None:
            assert errors
            continue
        if not held(whole):
            continue
        compared += 1
        pressure = figure(whole, f"Pressure at {OUTLET}")
        for key in ONE_PIPE:
            found, wrong = answer(seed, key)
            assert found is not None, (seed, key, wrong)
            assert same(figure(found, LEFT), pressure), (seed, key)
    assert compared > 20


SHARED = {"over-rating", "too-hot", "no-rating", "outlet-over-limit", "fast", "reducer-fall"}


@pytest.mark.parametrize("block", range(0, len(SITES), 50))
def test_pages_of_one_pipe_find_the_same(block):
    for seed in SITES[block : block + 50]:
        found = {key: answer(seed, key)[0] for key in ONE_PIPE}
        if any(one is None for one in found.values()):
            continue
        speeds = [figure(one, SPEED) for one in found.values()]
        assert all(same(speeds[0], speed, 0.1) for speed in speeds), seed
        statics = [figure(one, STATIC) for one in found.values()]
        assert all(same(statics[0], static) for static in statics), seed
        kept = [keys(one) & SHARED for one in found.values()]
        assert kept[0] == kept[1] == kept[2], (seed, kept)


@pytest.mark.parametrize("block", range(0, len(SITES), 50))
def test_the_whole_supply_finds_what_one_pipe_finds(block):
    for seed in SITES[block : block + 50]:
        whole, reach = answer(seed, "keep_up")[0], answer(seed, "reach")[0]
        if whole is None or reach is None or not held(whole):
            continue
        beyond = {one.key for one in whole.findings if one.at != SUCTION}
        for key in ("over-rating", "too-hot", "outlet-over-limit", "reducer-fall"):
            assert (key in beyond) == (key in keys(reach)), (seed, key)


@pytest.mark.parametrize("block", range(0, len(SITES), 50))
def test_the_suction_page_agrees_with_the_whole_supply(block):
    for seed in SITES[block : block + 50]:
        whole, suction = answer(seed, "keep_up")[0], answer(seed, "suction")[0]
        if whole is None or suction is None:
            continue
        for key in ("npsh", "npsh-margin"):
            assert (key in keys(whole)) == (key in keys(suction)), (seed, key)
        if "too-hot" in keys(suction):  # said once for each kind of pipe
            assert "too-hot" in keys(whole), seed
        if ("too-hot", SUCTION) in {(one.key, one.at) for one in whole.findings}:
            assert "too-hot" in keys(suction), seed


@pytest.mark.parametrize("key", ["reach", "pipe", "pump_match", "surge", "keep_up"])
def test_a_pipe_heated_by_the_sun_is_too_hot_on_every_page(key):
    site = alder_terrace().put("pipes.hottest", Fact("50 °C"))  # polyethylene is rated to 40 °C
    facts = views.fill(site, key)
    texts = {field: fact.text for field, fact in facts.items()}
    found = work(sheet(key), State("metric", texts, {}, dict.fromkeys(facts, GIVEN))).answer
    assert "too-hot" in keys(found)
    assert found.verdict.word == "Does not work"


def test_a_suction_pipe_heated_by_the_sun_is_not_checked_under_vacuum_in_either():
    site = alder_terrace().put("pipes.hottest", Fact("50 °C"))
    for index, _ in enumerate(site.rows("sections")):
        site = site.put_cell("sections", index, "pipe", Fact("pex-mm/50"))  # to 95 °C
    for key in ("suction", "keep_up"):
        facts = views.fill(site, key)
        texts = {field: fact.text for field, fact in facts.items()}
        found = work(sheet(key), State("metric", texts, {}, dict.fromkeys(facts, GIVEN))).answer
        (hot,) = (one for one in found.findings if one.key == "too-hot")
        assert (hot.level, hot.rank) == ("care", "unchecked"), key
        assert any("shade" in fix.text for fix in found.fixes), key


def test_some_made_sites_have_pipe_too_hot_for_its_kind():
    hot = [seed for seed in SITES[::5] if "too-hot" in keys(answer(seed, "reach")[0])]
    assert len(hot) > 10


def test_a_coefficient_of_its_own_in_one_sheet_is_noticed(monkeypatch):
    from calc.pipe.line import Section

    seed = next(s for s in SITES if answer(s, "keep_up")[0] and held(answer(s, "keep_up")[0]))
    pressure = figure(answer(seed, "keep_up")[0], f"Pressure at {OUTLET}")
    answer.cache_clear()
    kept = Section.k.func
    monkeypatch.setattr(Section, "k", property(lambda section: kept(section) + 0.1))
    assert not same(figure(answer(seed, "reach")[0], LEFT), pressure)
    answer.cache_clear()
