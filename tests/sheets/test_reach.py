"""Will it reach: against the trade's rules; findings judged from the figures; fixes followed."""

import math
import random
import re
from functools import partial

import pytest

from calc import practice, water
from calc.page.form import work
from calc.page.state import State
from calc.pipe import pipes
from calc.sheets import sheet
from calc.sheets.reach.sheet import SHEET
from calc.units import FOOT, GRAVITY, PSI
from tests.rounds import some
from tests.sheets import asking
from tests.sheets.asking import figure

answer = partial(asking.answer, SHEET)
RUNNING, STATIC = "Running pressure at the outlet", "Static pressure at the outlet"
HIGHEST = "Maximum pressure in the pipe"
UNCHECKED = {"most": "?"}


def keys(found, *levels):
    return {one.key for one in found.findings if not levels or one.level in levels}


def metres(pascal):
    return pascal / (water.density(288.15) * GRAVITY)


# Figures -------------------------------------------------------------------------------------


def test_50_ft_of_climb_on_about_100_ft_of_head_leaves_20_to_30_psi():
    # common practice, no source
    found = answer("us", pressure="45 psi", climb="50 ft", length="100 ft", flow="4 gpm")
    assert 20 * PSI <= figure(found, RUNNING) <= 30 * PSI
    assert figure(found, "Highest reach with no flow") == pytest.approx(100 * FOOT, rel=0.05)


def test_nothing_running_loses_nothing():
    found = answer(flow="0")
    assert figure(found, RUNNING) == figure(found, STATIC)


@pytest.mark.parametrize(
    "worse", [{"climb": "13 m"}, {"length": "200 m"}, {"flow": "17 L/min"}, {"extra": "50"}]
)
def test_each_burden_lowers_what_is_left(worse):
    assert figure(answer(**worse), RUNNING) < figure(answer(), RUNNING)


def test_a_drop_is_said_as_a_gain_and_in_no_uphill_words():
    found = answer(climb="-20 m")
    assert figure(found, "Gained by the drop") == pytest.approx(
        20 * water.density(288.15) * GRAVITY, rel=1e-9
    )
    said = " ".join(f.label for f in found.figures) + found.verdict.sentence
    assert "top" not in said and "climb" not in said and "up there" not in said
    assert not any("check valve" in one for one in found.cautions)


@pytest.mark.parametrize("texts", [{"flow": "3000 L/min"}, {"climb": "100 m"}])
def test_a_pressure_below_zero_is_said_not_to_be_real(texts):
    found = answer(**texts, **UNCHECKED)
    (running,) = (f for f in found.figures if f.label == RUNNING)
    assert running.value < -101325 and "not a real pressure" in running.note
    assert "not-real" in keys(found, "note")
    assert "no-water" in keys(found, "stop")


def test_the_lowest_pressure_on_the_way_is_said_not_to_be_real_either():
    found = answer(flow="3000 L/min", highest="14 m", **UNCHECKED)
    (least,) = (f for f in found.figures if f.label == "Lowest pressure on the way")
    assert least.value < -101325 and "not a real pressure" in least.note


# A stop decides ------------------------------------------------------------------------------

OVER = [
    {"pressure": "6 bar", "climb": "-20 m", "kind": "pe-sidr15"},
    {"kind": "hose", "water": "50 °C"},
    {"kind": "pvc-sdr26", "water": "60 °C"},
]


@pytest.mark.parametrize("texts", OVER)
def test_a_pipe_over_its_rating_never_works(texts):
    found = answer(**texts)
    assert found.verdict.level == "bad" and found.verdict.word == "Does not work"
    assert "over-rating" in keys(found, "stop")
    assert found.verdict.sentence in {f.text for f in found.findings if f.rank == "harm"}


@pytest.mark.parametrize("kind", ["pvc40", "pe100-sdr11", "pe-sidr7", "pvc80", "layflat"])
def test_plastic_for_cold_water_is_not_for_hot(kind):
    assert "too-hot" in keys(answer(kind=kind, water="60 °C"), "stop")


@pytest.mark.parametrize("kind", ["cpvc11", "pex-in", "pex-mm", "copper-l", "copper-en", "steel"])
def test_pipe_made_for_hot_water_carries_it_with_cautions(kind):
    found = answer(kind=kind, water="60 °C")
    assert not keys(found, "stop")
    said = " ".join(found.cautions)
    assert all(word in said for word in ("scalds", "temperature-and-pressure", "607.3"))
    assert not any("scald" in one for one in answer(kind=kind).cautions)


def test_inch_polyethylene_past_40_degrees_is_said_to_be_refused_cautiously():
    assert "cautious-heat" in keys(answer(kind="pe-sidr7", hottest="45 °C"), "note")


def test_80_psi_with_taps_closed_is_taken_care_of_by_a_valve_and_a_relief_valve():
    found = answer(climb="-40 m")
    assert figure(found, STATIC) > practice.HIGHEST_AT_OUTLET
    assert found.verdict.level == "tight" and "outlet-over-limit" in keys(found, "care")
    valve = found.fixes[0]
    assert "pressure-reducing valve" in valve.text and "relief valve" in valve.text
    fixed = answer(**valve.link.values)
    assert figure(fixed, STATIC) <= practice.HIGHEST_AT_OUTLET and fixed.verdict.level == "good"


def test_a_pipe_in_the_sun_is_buried_before_it_is_bought_anew():
    found = answer(hottest="55 °C")
    assert "too-hot" in keys(found, "stop")
    assert found.fixes[0].text.startswith("Bury or shade")
    assert answer(**found.fixes[0].link.values).verdict.level == "good"


def test_a_dip_counts_against_the_rating():
    assert "over-rating" not in keys(answer())
    found = answer(lowest="-150 m")
    assert "over-rating" in keys(found, "stop")
    expected = 3.5e5 + 150 * water.density(288.15) * GRAVITY
    assert figure(found, HIGHEST) == pytest.approx(expected, rel=1e-9)


def test_a_crest_that_draws_in_water_is_taken_care_of():
    found = answer(climb="-10 m", highest="34 m")
    assert "negative-pressure" in keys(found, "care")
    assert figure(found, "Lowest pressure on the way") < 0


def test_a_crest_higher_than_the_pressure_lifts_is_not_passed():
    found = answer(climb="-10 m", highest="36 m")
    assert "no-water" in keys(found, "stop") and "highest point" in found.verdict.sentence


def test_below_a_vacuum_at_a_crest_the_water_column_breaks():
    found = answer(
        climb="-60 m", highest="2 m", pressure="0.25 bar", flow="40 L/min", length="400 m",
        use="trough", **UNCHECKED,
    )  # fmt: skip
    assert figure(found, RUNNING) > 0 > -0.9e5 > figure(found, "Lowest pressure on the way")
    assert "below-vacuum" in keys(found, "stop") and "separates" in found.verdict.sentence


# Enough --------------------------------------------------------------------------------------


def left_at(psi, **texts):
    """The answer where so many psi are left: the set pressure made for it."""
    loss = 3.5e5 - figure(answer(**texts), RUNNING)
    return answer(pressure=f"{loss + psi * PSI!r} Pa", **texts)


@pytest.mark.parametrize(
    "use, psi, level",
    [
        ("house", 14, "stop"), ("house", 16, "care"), ("house", 20, "note"), ("house", 31, None),
        ("drip", 19, "stop"), ("drip", 21, "care"), ("drip", 23, None),
        ("trough", 4, "stop"), ("trough", 6, None),
    ],
)  # fmt: skip
def test_enough_is_by_the_trades_levels(use, psi, level):
    # common practice, no source: a shower 15 and 30 psi, drip 20 psi, a trough 5 psi
    found = left_at(psi, use=use)
    levels = [f.level for f in found.findings if f.key == "short"]
    assert levels == ([level] if level else [])


def test_a_pressure_of_ones_own_is_what_is_needed():
    assert "short" in keys(answer(use="own", wanted="3 bar"), "stop")
    assert "short" not in keys(answer(use="own", wanted="1 bar"))


# The pump ------------------------------------------------------------------------------------


def test_a_pump_asked_for_too_much_is_said():
    found = answer(flow="53 L/min")
    assert "pump-most" in keys(found, "stop") and "18.0" in found.verdict.sentence
    assert answer(**found.fixes[0].link.values).verdict.level == "good"


def test_a_pump_of_which_nothing_is_known_is_not_checked():
    found = answer(flow="20 L/min", **UNCHECKED)
    assert keys(found, "care") == {"unchecked-pump-most"} and found.verdict.level == "tight"
    assert "20.0" in found.verdict.sentence


@pytest.mark.parametrize("most", ["?", "18 L/min"])
@pytest.mark.parametrize("one", [SHEET, sheet("reach")], ids=["plain", "page"])
def test_a_line_from_an_open_tank_has_no_pump_to_check(one, most):
    found = asking.answer(one, climb="-40 m", pressure="0 bar", flow="66 L/min", most=most)
    assert not keys(found) & {"pump-most", "unchecked-pump-most"}
    assert "pump" not in " ".join(f.text for f in found.findings)
    assert found.verdict.word == "Works"


def test_what_is_not_known_is_worked_with_as_usual_and_said():
    outcome = work(SHEET, State(texts={"water": "?", "extra": "?", "hottest": "?"}))
    assert figure(outcome.answer, RUNNING) == figure(answer(), RUNNING)
    said = {one.key: one for one in outcome.assumed}
    assert "usual" in said["water"].reason and "buried" in said["hottest"].reason


# Speed ---------------------------------------------------------------------------------------


@pytest.mark.parametrize("speed, level", [(1.4, None), (1.6, "note"), (2.3, "note"), (2.5, "care")])
def test_speed_is_a_note_from_1_5_and_care_from_2_4(speed, level):
    flow = speed * math.pi / 4 * 0.026**2  # 32 mm PE: 26 mm inside (EN 12201-2)
    found = answer(flow=f"{flow!r} m3/s", length="5 m", climb="0 m", **UNCHECKED)
    assert [f.level for f in found.findings if f.key == "fast"] == ([level] if level else [])


# Fixes ---------------------------------------------------------------------------------------


def test_where_the_height_uses_the_pressure_no_pipe_is_offered():
    texts = {"pressure": "6 bar", "climb": "40 m", "length": "1.2 km", "flow": "12 L/min"}
    found = answer(**texts, use="own", wanted="2 bar")
    assert figure(found, STATIC) < 1.1 * 2e5
    said = " ".join(fix.text for fix in found.fixes)
    assert "height is the bottleneck" in said and "PE 100" not in said


@pytest.mark.parametrize("one", [SHEET, sheet("reach")], ids=["plain", "page"])
def test_more_pressure_asks_the_pump_for_the_flow_at_that_pressure(one):
    """Once the fix left a pump that gives less than the flow."""
    found = asking.answer(one, pressure="1.4 bar", flow="70 L/min")
    assert keys(found, "stop") == {"no-water", "pump-most"}
    assert "The pump must give 70.0\u00a0L/min at that pressure." in found.fixes[0].text
    for fix in found.fixes:
        assert asking.answer(one, **fix.link.values).verdict.level == "good"


def test_several_faults_are_put_right_together():
    texts = {"hottest": "55 °C", "flow": "19 L/min"}  # a pipe in the sun, more than the pump gives
    found = answer(**texts)
    assert {"too-hot", "pump-most"} <= keys(found, "stop")
    assert found.fixes[0].text.startswith("Do all of this. ")
    assert answer(**found.fixes[0].link.values).verdict.level == "good"


def test_what_no_change_puts_right_is_said_to_be_left():
    texts = {"hottest": "55 °C", "climb": "200 m", "use": "own", "wanted": "4 bar"}
    (only,) = answer(**texts).fixes
    assert only.text.startswith("No change we tried puts everything right. Do this first. Bury")
    assert only.text.endswith("Still to put right: no water.")
    assert keys(answer(**only.link.values), "stop", "care") == {"no-water"}


def test_a_wider_pipe_named_is_within_three_sizes_and_the_first_that_is_enough():
    texts = {"flow": "40 L/min", "length": "200 m", "most": "60 L/min"}
    found = answer(**texts)
    assert found.verdict.level == "bad"
    named = re.match(r"(\d+) mm PE 100 SDR 11 leaves", found.fixes[0].text)[1]
    assert named in ("40", "50", "63")
    smaller = {"40": "32", "50": "40", "63": "50"}[named]
    assert answer(**texts, **{"pe100-sdr11": smaller}).verdict.level != "good"


def random_texts(rng):
    """A case of any sort: bounds, zeros, signs, every kind of pipe, known or not."""
    kinds = [value for value, _ in SHEET.field("kind").options if value != "own"]
    texts = {
        "pressure": f"{rng.choice([0, 0.5, 2, 3.5, 6, 12, 20])} bar",
        "climb": f"{rng.choice([-200, -60, -20, 0, 5, 12, 30, 80, 200])} m",
        "length": f"{rng.choice([0.1, 5, 140, 1200, 20000])} m",
        "flow": f"{rng.choice([0, 1, 8, 15, 40, 120, 3000])} L/min",
        "kind": rng.choice(kinds),
        "use": rng.choice(["house", "drip", "trough", "own"]),
        "wanted": f"{rng.choice([0, 1, 4])} bar",
        "most": rng.choice(["?", "18 L/min", "100 L/min"]),
        "water": rng.choice(["0 °C", "15 °C", "40 °C", "45 °C", "60 °C", "?"]),
        "hottest": rng.choice(["", "30 °C", "60 °C", "100 °C", "?"]),
        "lowest": rng.choice(["", "", "-30 m", "-150 m"]),
        "highest": rng.choice(["", "", "10 m", "60 m"]),
    }
    if rng.random() < 0.4:
        rows = rng.randint(1, 4)
        texts["line"] = ";".join(random_row(rng) for _ in range(rows))
    return texts


def random_row(rng):
    pipe = rng.choice([value for value, _ in SHEET.field("line").column("pipe").options])
    extra = rng.choice([value for value, _ in SHEET.field("line").column("extra").options])
    long, up = rng.choice([1, 30, 200]), rng.choice([-40, -5, 0, 4, 15])
    return f"{long} m,{up} m,{pipe},{rng.randint(0, 5)},{extra},{rng.choice([5, 50, 100])} %"


CASES = [random_texts(random.Random(f"reach {n}")) for n in range(300)]


@pytest.mark.parametrize("at", range(0, some(300), 20))
def test_what_the_figures_show_wrong_is_always_found(at):
    for texts in CASES[at : at + 20]:
        found = answer(**texts)
        running, static = figure(found, RUNNING), figure(found, STATIC)
        bad = keys(found, "stop", "care")
        if static > practice.HIGHEST_AT_OUTLET * 1.001:
            assert "outlet-over-limit" in bad, texts
        if running < -1.0:
            assert "no-water" in keys(found, "stop"), texts
        if figure(found, "Water speed") > practice.SPEED_CARE:
            assert "fast" in bad, texts
        if bad:
            assert found.verdict.level != "good", texts
        if keys(found, "stop"):
            assert found.verdict.level == "bad", texts


@pytest.mark.parametrize("at", range(0, some(300), 20))
def test_every_fix_followed_works_or_says_what_it_leaves(at):
    for texts in CASES[at : at + 20]:
        found = answer(**texts)
        before = keys(found, "stop", "care")
        for fix in found.fixes:
            if fix.link is None:
                continue
            after = answer(**fix.link.values)
            left = keys(after, "stop", "care")
            if "Still to put right" in fix.text:
                assert left < before, (texts, fix, left)
            else:
                assert left <= {"unchecked-pump-most", "no-rating"} & before, (texts, fix, left)
                assert ("Still not checked" in fix.text) == bool(left), (texts, fix)


@pytest.mark.parametrize("at", range(0, some(300), 20))
def test_sentences_are_short_and_in_one_system_of_units(at):
    for texts in CASES[at : at + 20]:
        found = answer(**texts)
        for one in (*found.findings, *found.fixes):
            for sentence in one.text.split(". "):
                assert len(sentence.split()) <= 25, one.text
            assert not re.search(r"\d\s(psi|gpm|ft|K|°F)\b|m3/s|\(SI", one.text), one.text
        assert len(found.verdict.sentence.split()) <= 25, found.verdict.sentence


@pytest.mark.parametrize("at", range(0, some(300), 20))
@pytest.mark.parametrize("system", ["metric", "us"])
def test_links_open_without_an_error_and_carry_the_numbers(system, at):
    for texts in CASES[at : at + 20]:
        for link in answer(system, **texts).links:
            if "line" in link.values and "line" not in {f.key for f in sheet(link.sheet).fields}:
                continue  # a sheet that has no table of pipe sections yet
            target = sheet(link.sheet)
            assert work(target, State(system, dict(link.values))).errors == {}, (link, texts)
            if link.sheet == "pipe":
                assert {"flow", "length", "climb", "pressure", "wanted", "water"} <= set(
                    link.values
                )


# Pipe sections -------------------------------------------------------------------------------


def test_pipe_sections_replace_the_one_pipe_its_length_climb_and_added_length():
    line = "154 m,12 m,pe100-sdr11/32,0"
    expected = figure(answer(), RUNNING)  # 140 m and 10 %
    for other in ({}, {"climb": "50 m", "length": "1 m", "extra": "80 %", "kind": "hose"}):
        assert figure(answer(line=line, **other), RUNNING) == pytest.approx(expected, rel=1e-12)


def test_a_filter_due_for_a_change_loses_more_than_a_clean_one():
    lefts = [
        figure(answer(line=f"140 m,12 m,pe100-sdr11/32,0,{part}"), RUNNING)
        for part in ("none", "filter", "dirty")
    ]
    assert lefts[0] > lefts[1] > lefts[2]
    # common practice, no source: 0.7 bar at 40 L/min, with the square of the flow
    lost = 0.7e5 * (15 / 40) ** 2 * water.density(288.15) / 1000
    assert lefts[0] - lefts[2] == pytest.approx(lost, rel=1e-9)


def test_a_section_is_named_in_what_is_found_and_widened_alone():
    line = "60 m,5 m,pe100-sdr11/40;80 m,7 m,pe100-sdr11/20"
    found = answer(line=line, flow="20 L/min", **UNCHECKED)
    assert any("section 2" in fix.text for fix in found.fixes)


# Refusals ------------------------------------------------------------------------------------


def test_a_pipe_of_ones_own_too_rough_names_its_field_and_a_remedy():
    errors = work(SHEET, State(texts={"kind": "own", "bore": "15 mm", "inside": "rusty"})).errors
    assert set(errors) == {"inside"} and "smoother" in errors["inside"]


def test_a_pipe_of_ones_own_has_no_rating_to_check():
    found = answer(kind="own", bore="30 mm")
    assert "no-rating" in keys(found, "care") and found.verdict.level == "tight"


# The height, and a pipe laid twice -----------------------------------------------------------

HIGH = {"pressure": "6 bar", "climb": "40 m", "length": "1.2 km", "use": "own", "wanted": "2 bar"}
ONE = {"line": "", "kind": "pe100-sdr11", "pe100-sdr11": "25", "extra": "0", "most": "60 L/min"}


def opened(fix):
    outcome = work(SHEET, State("metric", dict(fix.link.values)))
    assert outcome.errors == {}
    return outcome.answer


@pytest.mark.parametrize(
    "texts",
    [{**HIGH, "flow": "12 L/min"}, {"climb": "5 m", "highest": "40 m", "flow": "41.9 L/min"}],
)
def test_where_height_and_pipe_both_take_too_much_both_are_put_right_together(texts):
    found = answer(**ONE, **texts)
    assert found.verdict.level == "bad"
    (fix,) = found.fixes
    assert fix.text.startswith("The height is the bottleneck, and the pipe is narrow for it. With ")
    assert "at the start, 32 mm PE 100 SDR 11 leaves" in fix.text
    assert not keys(opened(fix), "stop", "care")


@pytest.mark.parametrize(
    "texts, named",
    [
        ({"pressure": "5 bar", "climb": "200 m"}, "the highest point takes 19.6 bar"),
        ({"pressure": "5 bar", "climb": "20 m", "highest": "200 m"}, "takes 19.6 bar"),
        (
            {"pressure": "19.9 bar", "climb": "200 m", "kind": "copper-en", "copper-en": "28x1p0"},
            "with no flow 0.304 bar is left at the outlet; 2.20 bar would be enough.",
        ),
    ],
)
def test_where_no_fix_is_found_the_height_is_named_if_it_takes_the_pressure(texts, named):
    found = answer(**ONE | {"use": "own", "wanted": "2 bar", "flow": "12 L/min"} | texts)
    (fix,) = found.fixes
    assert fix.text.startswith("No change we tried is enough. The height is the bottleneck: ")
    assert named in fix.text.replace("\u00a0", " ")


def test_of_two_pipes_laid_one_after_the_other_the_last_alone_is_named():
    deep = {"climb": "5 m", "lowest": "-150 m", "highest": "30 m", "flow": "41.9 L/min"}
    found = answer(**ONE, **deep)
    (fix,) = found.fixes
    assert fix.text.startswith("Do all of this. ")
    assert fix.text.count("Use ") == 1
    after = opened(fix)
    assert not keys(after, "stop", "care")
    kind = fix.link.values["kind"]
    assert f"Use {pipes.pipe(kind, fix.link.values[kind]).label}." in fix.text


def test_a_line_from_open_water_is_told_of_no_pump_that_it_has():
    fall = {"pressure": "0", "climb": "-20 m", "length": "300 m", "flow": "15 L/min"}
    found = answer(**ONE, **fall)
    (fix,) = [one for one in found.fixes if "at the start" in one.text]
    assert "The pump must" not in fix.text
    said = re.search(r"L/min, or a water level ([\d.]+)\u00a0m higher\.$", fix.text)
    after = opened(fix)
    lower = answer(**ONE, **fall | {"climb": f"{-20 - float(said[1])} m"})
    assert figure(after, RUNNING) == pytest.approx(figure(lower, RUNNING), rel=2e-3)
