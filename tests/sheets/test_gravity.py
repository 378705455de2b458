"""The gravity sheet: the spring above the house, crests, tanks on the way, what is said of rows."""

from functools import partial
from pathlib import Path

import pytest

from calc import practice
from calc.page.form import work
from calc.page.shapes import Dot, Stroke
from calc.page.state import State
from calc.pipe import friction, pipes
from calc.sheets import views
from calc.sheets.gravity.sheet import SHEET
from calc.site.demo import alder_terrace
from calc.site.facts import Fact
from calc.units import LITRE, MINUTE
from tests.page.pictures import faults
from tests.sheets import asking, awkward
from tests.sheets.asking import figure
from tests.sheets.working import check_working

answer = partial(asking.answer, SHEET)
found = partial(asking.found, SHEET)
LEFT, MOST, OPEN = (
    "Running pressure at the outlet",
    "Maximum flow it brings",
    "With its end wide open",
)
STATIC, STRESS = "Static pressure at the outlet", "Maximum pressure in the pipe"
LOWEST, PART = "Lowest pressure on the way", "Pipe that runs part full, wide open"
LPM = LITRE / MINUTE
CREST = "0m,100m;300m,95m;500m,98m;900m,70m"
MANY = [(state, work(SHEET, state)) for state in awkward.states(SHEET, 250)]
WORKED = [(state, outcome.answer) for state, outcome in MANY if outcome.answer]


def wrong(**texts):
    return {key: level for key, level in found(**texts).items() if level != "note"}


def opened(fix):
    return work(SHEET, State("metric", dict(fix.link.values))).answer


# The customer's question ------------------------------------------------------------------------


def test_a_spring_30_m_above_and_900_m_away_is_answered():
    one = answer(drop="30 m", length="900 m", **{"pe100-sdr11": "32"})
    assert one.verdict.word == "Works"
    pipe = pipes.pipe("pe100-sdr11", "32")
    lost = friction.pipe_loss(15 * LPM, pipe.inside_m, 990, pipe.roughness_m, 1.139e-6)
    weight = 999.1 * 9.80665  # kg/m3 at 15 degrees and standard gravity
    assert figure(one, LEFT) == pytest.approx(weight * (30 - lost), rel=1e-3)
    assert figure(one, STATIC) == pytest.approx(weight * 30, rel=1e-4)


def test_the_most_it_brings_leaves_just_what_is_needed():
    most = figure(answer(), MOST)
    at = answer(flow=f"{most / LPM:.9g} L/min", spring="40 L/min")
    assert figure(at, LEFT) == pytest.approx(practice.SHOWER_WORKS, rel=1e-5)
    assert at.verdict.word == "Borderline"


def test_an_outlet_above_the_source_gets_none():
    for drop in ("-3 m", "0 m"):
        one = answer(drop=drop)
        assert one.verdict.word == "Does not work" and figure(one, MOST) == 0
        assert "pump" in one.verdict.sentence
        assert any(link.sheet == "reach" for link in one.links) or drop == "0 m"


# The way ----------------------------------------------------------------------------------------


def test_a_profile_of_two_points_is_drop_and_length():
    plain, counted = answer(), answer(profile="0m,530m;900m,500m")
    for label in (LEFT, MOST, STATIC, STRESS):
        assert figure(counted, label) == pytest.approx(figure(plain, label), rel=1e-9)


def test_a_crest_above_the_pressure_line_stops_what_it_holds_down():
    assert wrong(profile=CREST)["sucks"] == "stop"
    one = answer(profile=CREST)
    assert figure(one, LOWEST) < 0
    less = answer(profile=CREST, flow=f"{0.999 * figure(one, OPEN) / LPM:.6g} L/min")
    assert less.verdict.word == "Works" and figure(less, LOWEST) > 0


def test_a_crest_that_only_sucks_is_borderline_and_a_deep_one_breaks_the_column():
    # one pressure all the way to the open end, a hair more than the crest allows
    assert wrong(profile="0m,100m;300m,80m;400m,91m;900m,70m", use="own", wanted="0 bar",
                 flow="44 L/min", spring="50 L/min")["sucks"] == "stop"  # fmt: skip
    deep = "0m,100m;100m,99m;800m,98m;900m,40m"
    assert "below-vacuum" in wrong(profile=deep, flow="45 L/min", spring="60 L/min")


def test_no_water_passes_a_crest_above_the_spring():
    one = answer(profile="0m,100m;300m,101m;900m,70m")
    assert "1.00\u00a0m above" in one.verdict.sentence and one.verdict.word == "Does not work"


@pytest.mark.parametrize(
    "rows, place",
    [
        ("0m,100m;300m,90m;200m,80m", "profile.2.at"),
        ("0m,100m;0m,90m", "profile.1.at"),
        ("0m,100m", "profile.0.at"),
    ],
)
def test_a_profile_that_runs_backwards_is_said_beside_its_row(rows, place):
    assert list(asking.outcome(SHEET, profile=rows).errors) == [place]


def test_every_row_that_runs_backwards_is_said():
    rows = "0m,100m;300m,90m;200m,80m;100m,70m"
    assert list(asking.outcome(SHEET, profile=rows).errors) == ["profile.2.at", "profile.3.at"]


def test_crests_and_dips_are_named_with_what_belongs_there():
    table = answer(profile=CREST).tables[-1]
    assert [row[0] for row in table.rows] == [
        "source", "dip: drain", "crest: air valve", "outlet"
    ]  # fmt: skip
    assert [row[2] for row in table.rows] == [100, 95, 98, 70]


# Pressure taken away ----------------------------------------------------------------------------


def test_a_long_drop_is_over_the_rating_and_tanks_put_it_right():
    assert wrong(drop="180 m")["over-rating"] == "stop"
    fix = answer(drop="180 m").fixes[0]
    after = opened(fix)
    assert "tanks" in fix.text and after.verdict.word == "Works"
    assert figure(after, STRESS) == pytest.approx(figure(answer(drop="180 m"), STRESS) / 4)


def test_with_valves_it_is_more_valves_that_are_offered():
    one = answer(drop="180 m", broken="valve", breaks="2")
    assert wrong(drop="180 m", broken="valve", breaks="2") == {"outlet-over-limit": "care"}
    assert "valves" in one.fixes[0].text and opened(one.fixes[0]).verdict.word == "Works"


def test_tanks_and_valves_have_their_cautions():
    def said(**texts):
        return " ".join(answer(**texts).cautions)

    assert "float valve" in said(broken="tank") and "float valve" not in said()
    assert "fail open" in said(broken="valve")


# The spring -------------------------------------------------------------------------------------


def test_a_spring_that_gives_less_is_gathered_in_a_tank():
    one = answer(spring="6 L/min")
    assert wrong(spring="6 L/min") == {"spring-short": "stop"}
    assert "8640" in one.fixes[0].text and opened(one.fixes[0]).verdict.word == "Works"


def test_an_unknown_spring_is_not_checked():
    assert wrong(spring="?") == {"unchecked-spring": "care"}
    assert answer(spring="?").verdict.word == "Borderline"


def test_a_pipe_that_takes_more_than_the_spring_gives_is_to_be_throttled():
    assert found()["not-full"] == "note" and "not-full" not in found(spring="60 L/min")
    assert figure(answer(profile=CREST, flow="5 L/min", spring="6 L/min"), PART) > 0


# Every answer -----------------------------------------------------------------------------------


def test_every_fault_of_the_figures_has_its_finding():
    """By the figures alone: over the rating, over 80 psi, below zero, too little."""
    assert len(WORKED) > 100
    for state, one in WORKED:
        keys = {each.key for each in one.findings if each.level != "note"}
        if figure(one, STATIC) > practice.HIGHEST_AT_OUTLET * 1.001:
            assert "outlet-over-limit" in keys, state
        if figure(one, LEFT) < 0 or figure(one, OPEN) == 0:
            assert keys & {"no-water", "below-vacuum"}, state


def test_the_working_holds_however_awkward_the_form():
    for _, one in WORKED:
        check_working(one)


def test_every_answer_has_a_picture_that_can_be_read():
    for state, one in WORKED:
        (picture,) = one.drawings
        assert list(faults(picture)) == [], state


def test_the_picture_is_to_scale():
    one = answer(profile=CREST, broken="tank", breaks="1")
    (picture,) = one.drawings
    lines = {s.at: s.points for s in picture.shapes if isinstance(s, Stroke) and s.at}
    heights = [point[1] for point in lines["pipe"]]
    metre = (heights[3] - heights[0]) / 30
    assert heights[1] - heights[0] == pytest.approx(5 * metre)
    assert lines["pipe"][2][0] - lines["pipe"][0][0] == pytest.approx(
        5 / 9 * (lines["pipe"][3][0] - lines["pipe"][0][0])
    )
    still = lines["still"]
    assert still[0][1] == pytest.approx(heights[0])
    assert still[-1][1] - heights[0] == pytest.approx(15 * metre)  # the tank halves the drop
    assert [s.at for s in picture.shapes if isinstance(s, Dot)].count(
        "break"
    ) == 1  # its name has a mark too, elsewhere


def test_the_table_of_sizes_says_what_each_brings():
    for name, most, left, result in answer().tables[0].rows:
        one = answer(**{"pe100-sdr11": name.split()[0]})
        assert most == pytest.approx(figure(one, MOST), rel=1e-6)
        if left is None:
            assert result == "does not arrive" and figure(one, OPEN) < 15 * LPM
        else:
            assert left == pytest.approx(figure(one, LEFT), rel=1e-6)


def test_the_guide_says_what_the_page_computes():
    text = (Path(__file__).resolve().parents[2] / "docs" / "gravity.md").read_text("utf-8")
    assert "30 m (98.4 ft) of drop" in text and "900 m (2953 ft) of 40 mm" in text
    assert answer().verdict.word == "Works"
    assert answer(use="trough", flow="6 L/min", spring="6 L/min",
                  **{"pe100-sdr11": "25"}).verdict.word == "Works"  # fmt: skip
    assert answer(drop="180 m", broken="tank", breaks="3").verdict.word == "Works"


def test_both_systems_of_units_come_to_one_verdict():
    same = {"kind": "pe100-sdr11", "pe100-sdr11": "40", "length": "900 m", "flow": "15 L/min"}
    for texts in ({}, {"profile": CREST}, {"drop": "180 m"}):
        one, other = (
            answer(system, **same, spring="20 L/min", **texts) for system in ("metric", "us")
        )
        assert one.verdict.word == other.verdict.word


def test_the_points_of_a_site_on_its_way_are_worked_with_on_the_page():
    """The page failed: no field of this sheet changes the rows when typed over them."""
    site = alder_terrace().put("pump.present", Fact("no"))
    facts = views.fill(site, "gravity")
    assert ";" in facts["profile"].text
    texts = {key: fact.text for key, fact in facts.items()}
    standing = {key: fact.standing for key, fact in facts.items()}
    outcome = work(SHEET, State("metric", texts, {}, standing, {}, frozenset(texts)))
    assert outcome.answer or outcome.errors
    assert {"drop", "length"} <= outcome.idle
