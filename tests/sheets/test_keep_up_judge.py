"""What the keep_up sheet finds: each case asks for the finding that its figures call for."""

import re

import pytest

from calc import practice, water
from calc.page import row_text
from calc.page.fields import UNKNOWN
from calc.page.form import work
from calc.page.state import State
from calc.sheets import sheet
from calc.sheets.keep_up.links import links
from calc.units import GRAVITY, PSI

SHEET = sheet("keep_up")
SHOWER = ("Shower", "house", "shower", "1", "1")
WEIGHT = 999.1 * GRAVITY  # Pa/m, water at 15 degC; handbook value


def answer(runs=None, taps=(SHOWER,), tanks=(), system="metric", **texts):
    rows = {"taps": taps, "tanks": tanks}
    if runs is not None:
        rows["runs"] = runs
    state = State(system, {key: row_text.encode(value) for key, value in rows.items()} | texts)
    outcome = work(SHEET, state)
    assert outcome.errors == {}, outcome.errors
    return outcome.answer


def house(length="60 m", up="0 m", pipe="pe100-sdr11/40", extra="none"):
    return (("pump", "house", length, up, pipe, "2", extra),)


def found(one, key):
    """(level, rank) of every finding of a key."""
    return {(finding.level, finding.rank) for finding in one.findings if finding.key == key}


def opened(fix, system="metric"):
    outcome = work(SHEET, State(system, dict(fix.link.values)))
    assert outcome.errors == {}
    return outcome.answer


# Ratings ----------------------------------------------------------------------------------------


def test_a_weak_pipe_below_a_full_speed_pump_does_not_work_and_opens_the_sentence():
    # shut-off 56 m of the invented middle pump, less 4 m of lift, 20 m down: 72 m, 7.05 bar,
    # over the 100 psi (6.89 bar) of SIDR 15
    one = answer(house(up="-20 m", pipe="pe-sidr15/1"), drive="full")
    assert (56 - 4 + 20) * WEIGHT > 100 * PSI
    assert found(one, "over-rating") == {("stop", "harm")}
    assert one.verdict.word == "Does not work" and "is rated" in one.verdict.sentence


def test_a_failed_control_that_would_burst_the_pipe_asks_for_a_relief_valve():
    runs = house(up="-20 m", pipe="pe-sidr15/1")
    one = answer(runs, set="2.5 bar")
    assert 2.5e5 + 20 * WEIGHT < 100 * PSI < (56 - 4 + 20) * WEIGHT
    assert found(one, "over-rating") == set()
    assert found(one, "shut-off-over-rating") == {("care", "harm")}
    assert "7.05" in next(f.text for f in one.findings if f.key == "shut-off-over-rating")
    assert "relief valve" in one.fixes[0].text
    assert opened(one.fixes[0]).verdict.word == "Works"


def test_a_failed_reducing_valve_puts_the_pumps_pressure_on_the_pipe_behind_it():
    runs = (
        ("pump", "valve", "10 m", "-20 m", "pe100-sdr11/40", "2", "r20"),
        ("valve", "house", "30 m", "-20 m", "pe-sidr15/1"),
    )
    one = answer(runs, set="2.5 bar")
    at = {f.at for f in one.findings if f.key == "shut-off-over-rating"}
    assert at == {"valve – house"}


def test_black_pipe_in_the_sun_is_judged_at_its_own_heat_and_shade_comes_before_other_pipe():
    assert found(answer(house()), "too-hot") == set()
    one = answer(house(), hottest="60 °C")
    assert found(one, "too-hot") == {("stop", "harm")}
    assert one.fixes[0].text.startswith("Bury or shade the pipe")
    assert opened(one.fixes[0]).verdict.word == "Works"


def test_hot_water_is_said_once_a_kind_of_pipe_and_in_the_readers_units():
    one = work(SHEET, State(texts={"water": "50 °C"})).answer
    hot = [f for f in one.findings if f.key == "too-hot"]
    assert len(hot) == 1 and hot[0].level == "stop"
    text = " ".join(f.text for f in one.findings)
    assert "50.0\u00a0°C" in text and "(SI" not in text and "323" not in text


# Outlets ----------------------------------------------------------------------------------------


def test_more_than_80_psi_at_an_outlet_is_harm_and_a_reducing_valve_mends_it():
    # 2.5 bar at the pump, 55 m down: 7.9 bar static at the outlet, over 5.5 bar (80 psi)
    one = answer(house(length="80 m", up="-55 m"), set="2.5 bar")
    assert 2.5e5 + 55 * WEIGHT > 80 * PSI
    assert found(one, "outlet-over-limit") == {("care", "harm")}
    assert one.verdict.word == "Borderline" and "Static pressure at Shower" in one.verdict.sentence
    fix = next(fix for fix in one.fixes if "pressure-reducing valve" in fix.text)
    assert "relief valve" in fix.text
    assert found(opened(fix), "outlet-over-limit") == set()


@pytest.mark.parametrize("kind", practice.OUTLETS)
def test_each_kind_of_outlet_is_judged_by_its_own_levels(kind):
    if kind.works is None:
        pytest.skip("the reader gives its pressure")
    for over, level in ((0.97, "stop"), (1.05, "care"), (1.13, "note or none")):
        set_bar = over * kind.works / 1e5
        # a pipe wide enough to lose nothing to speak of
        one = answer(
            (("pump", "house", "1 m", "0 m", "pe100-sdr11/110", "0"),),
            (("It", "house", kind.key, "1", "1"),),
            pump="large", set=f"{set_bar:.6f} bar", lift="0 m", suctionpipe="pe100-sdr11/110",
        )  # fmt: skip
        levels = {f.level for f in one.findings if f.key == "short"}
        assert levels == {level} if level in ("stop", "care") else levels <= {"note"}


def test_an_outlets_own_rated_pressure_scales_what_it_needs():
    # a shower rated at 1 bar instead of 30 psi (2.07 bar) works at half of that
    taps = (("Shower", "house", "shower", "1", "1", "7 L/min", "1 bar"),)
    one = answer(house(), taps, set="0.6 bar")
    assert found(one, "short") <= {("note", "weak")}
    assert ("stop", "weak") in found(answer(house(), set="0.6 bar"), "short")


def test_a_drip_zone_works_at_its_own_rated_pressure():
    taps = (("Beds", "house", "drip", "1", "1", "10 L/min", "1 bar"),)
    assert found(answer(house(), taps, set="1.3 bar"), "short") == set()


def test_a_shower_with_15_psi_works_and_with_30_is_comfortable():
    plain = (("pump", "house", "1 m", "0 m", "pe100-sdr11/63", "0"),)
    assert found(answer(plain, set="20 psi", lift="0 m"), "short") == {("note", "weak")}
    assert found(answer(plain, set="31 psi", lift="0 m"), "short") == set()


FEW = {"ask": "few", "climb": "60 m"}  # the middle pump raises water 52 m


def sentence(**texts):
    return work(SHEET, State(texts={**FEW, **texts})).answer.verdict.sentence


def test_a_hose_is_not_blamed_for_water_that_does_not_arrive_without_it_either():
    assert "Hose" not in sentence() and "too weak for this height" in sentence()
    low = sentence(climb="30 m", set="1 bar")
    assert "Hose" not in low and "set pressure is too low" in low


def test_a_hose_is_blamed_for_what_was_enough_before_it_opened():
    assert sentence(climb="8 m", set="2.3 bar").startswith("With Hoses open, ")


def test_a_hose_is_not_blamed_for_a_pressure_that_was_too_low_before():
    before = work(SHEET, State(texts={**FEW, "climb": "26 m"})).answer.tables[0].rows[0][2][0]
    assert before < 15 * PSI
    assert "Hose" not in sentence(climb="26 m")


# Suction ----------------------------------------------------------------------------------------


def npsh_at(altitude, lift):
    """NPSH at the inlet with no friction, m: hydrostatics."""
    free = water.air_pressure(altitude) - water.vapour_pressure(288.15)
    return free / WEIGHT - lift


def test_npsh_below_the_margin_is_borderline_and_a_fix_restores_it():
    # 2.65 m less friction; the pump needs 2.0 m at 30 and 2.4 m at 45 L/min, and 0.6 m to spare
    texts = {"altitude": "2500 m", "lift": "4.8 m", "suctionpipe": "pe100-sdr11/50"}
    one = answer(house(), (("Urn", "house", "steady", "1", "1", "40 L/min"),), **texts)
    assert 2.4 < npsh_at(2500, 4.8) < 2.0 + practice.NPSH_MARGIN + 0.1
    assert found(one, "npsh-margin") == {("care", "weak")}
    assert one.verdict.level == "tight"
    assert found(opened(one.fixes[0]), "npsh-margin") == set()
    assert found(opened(one.fixes[0]), "npsh") == set()


def test_a_pump_without_npsh_figures_is_said_not_to_be_checked_with_what_would_pass():
    table = "Flow L/min; Head m\n0; 50\n30; 45\n60; 35\n90; 20"
    one = answer(house(), pump="own", table=table)
    assert found(one, "npsh-unchecked") == {("care", "unchecked")}
    text = next(f.text for f in one.findings if f.key == "npsh-unchecked")
    # about 9.8 m less 4 m of lift, friction and the margin
    most = float(text.split("up to ")[1].split("\u00a0")[0])
    assert npsh_at(300, 4.0) - practice.NPSH_MARGIN - 0.5 < most
    assert most < npsh_at(300, 4.0) - practice.NPSH_MARGIN


def test_the_lift_to_keep_to_falls_with_the_air_pressure():
    # 15 ft (4.57 m) at sea level, 3.2 m at 3000 m by the air pressure of ISO 2533 (70.1 kPa)
    low = answer(house(), lift="4.4 m", altitude="0 m")
    high = answer(house(), lift="4.4 m", altitude="3000 m")
    assert found(low, "lift-practice") == set()
    assert found(high, "lift-practice") == {("care", "weak")}


def test_layflat_hose_as_a_suction_pipe_does_not_work():
    layflat = next(v for v, _ in SHEET.field("suctionpipe").options if v.startswith("layflat/"))
    one = answer(house(), suctionpipe=layflat)
    assert found(one, "vacuum-collapse") == {("stop", "cannot")}
    assert found(answer(house(), suctionpipe=layflat, lift="-10 m"), "vacuum-collapse") == set()


def test_water_below_a_vacuum_does_not_work_however_good_the_outlets():
    texts = {"ask": "few", "climb": "-300 m", "suctionpipe": "pvc-sdr21/2.5"}
    one = work(SHEET, State(texts=texts)).answer
    assert found(one, "below-vacuum") == {("stop", "cannot")}
    assert one.verdict.word == "Does not work"


# Pump and sources -------------------------------------------------------------------------------


def test_a_set_pressure_the_pump_cannot_reach_does_not_work():
    one = work(SHEET, State(texts={"set": "16 bar"})).answer
    assert found(one, "set-too-high") == {("stop", "cannot")}
    assert one.verdict.word == "Does not work"


HILL = (("pump", "house", "60 m", "8 m", "pe100-sdr11/25"), ("house", "Tank", "30 m", "25 m"))


def test_where_a_hill_tank_feeds_the_set_pressure_is_not_the_cause():
    taps = (("Shower", "house", "shower", "1", "8"),)
    one = answer(HILL, taps, (("Tank", "20 m"),), set="1.2 bar")
    assert found(one, "idle") == {("note", "weak")}
    text = " ".join(f.text for f in one.findings)
    assert "set pressure is too low" not in text and "bottleneck: leaves" not in text
    assert found(one, "tank-flow") == {("note", "weak")}


def test_a_tank_that_is_too_low_is_the_cause():
    one = answer(HILL, tanks=(("Tank", "12 m"),), set="0.5 bar")
    assert "Tank is too low" in one.verdict.sentence


def test_an_idle_pump_is_not_told_of_by_two_equal_figures():
    one = answer(HILL, tanks=(("Tank", "25 m"),), set="1.2 bar")
    (idle,) = (f for f in one.findings if f.key == "idle")
    assert not any(letter.isdigit() for letter in idle.text)


def test_a_trickle_below_the_pumps_least_flow_is_not_checked_until_the_tank_is_known():
    taps = (("Trickle", "house", "drip", "1", "1", "1 L/min"),)
    bare = answer(house(), taps, set="3 bar", tank="")
    assert found(bare, "least-flow") == {("care", "unchecked")}
    assert bare.verdict.word == "Borderline" and "not checked" in bare.verdict.sentence
    assert opened(bare.fixes[0]).verdict.word == "Works"
    for tank, level in (("5 L", "care"), ("300 L", "note")):
        with_tank = answer(house(), taps, set="3 bar", tank=tank)
        assert found(with_tank, "least-flow") == {(level, "weak")}
    assert found(answer(house(), taps, drive="full"), "least-flow") == set()
    assert found(answer(house(), (("Beds", "house", "drip", "1", "1"),)), "least-flow") == set()


@pytest.mark.parametrize("speed, level", [(1.4, set()), (1.7, {"note"}), (2.6, {"care"})])
def test_fast_water_is_noted_and_too_fast_water_is_borderline(speed, level):
    area = 0.7853981634 * 0.0326**2  # m2, 40 mm SDR 11: wall 3.7 mm (ISO 4427)
    draw = f"{speed * area * 6e4:.4f} L/min"
    taps = (("Urn", "house", "steady", "1", "1", draw),)
    one = answer(house(length="5 m"), taps, pump="large", suctionpipe="pe100-sdr11/110")
    assert {f.level for f in one.findings if f.key == "fast"} == level


def test_a_diaphragm_pump_brings_its_caution():
    text = " ".join(answer(house(), pump="diaphragm").cautions)
    assert "must never face a closed valve" in text


# Words and what is not known --------------------------------------------------------------------


def test_plural_names_read_as_well_as_single_ones():
    texts = {"ask": "few", "hoses": "6"}
    told = work(SHEET, State(texts=texts)).answer.verdict.sentence
    for wrong in ("Hoses opens", "Showers falls", "Showers gets", "Showers works"):
        assert wrong not in told


def test_a_verdict_has_one_system_of_units_and_at_most_25_words():
    for system in ("metric", "us"):
        told = work(SHEET, State(system)).answer.verdict.sentence
        assert len(told.split(" ")) <= 25 and "(" not in told


NOT_KNOWN = ("water", "altitude", "suctionlong", "hottest")


@pytest.mark.parametrize("key", NOT_KNOWN)
def test_i_dont_know_is_an_answer(key):
    outcome = work(SHEET, State(texts={key: UNKNOWN}))
    assert outcome.errors == {}
    assert key in {one.key for one in outcome.assumed}


def test_i_dont_know_the_bends_or_the_flow_means_what_is_usual():
    row = ("pump", "house", "60 m", "5 m", "pe100-sdr11/32")
    tap = ("Shower", "house", "shower", "1", "1")
    usual = answer((row,), (tap,))
    asked = answer(((*row, UNKNOWN),), ((*tap, UNKNOWN, UNKNOWN, UNKNOWN),))
    assert [f.value for f in asked.figures] == [f.value for f in usual.figures]


def test_a_cell_not_known_is_told_of_with_what_was_taken_for_it():
    rows = {
        "runs": (("pump", "house", "60 m", "5 m", "pe100-sdr11/32", "?"),),
        "taps": (("Shower", "house", "shower", "1", "1", "?"),),
    }
    texts = {key: row_text.encode(value) for key, value in rows.items()}
    told = {one.key: one.shown for one in work(SHEET, State(texts=texts)).assumed}
    assert told["runs.0.bends"] == "2" and told["taps.0.flow"] == ""


def test_an_unknown_altitude_is_taken_on_the_careful_side():
    known = answer(house(), lift="4.4 m", altitude="300 m")
    unknown = answer(house(), lift="4.4 m", altitude=UNKNOWN)
    assert found(known, "lift-practice") == set()
    assert found(unknown, "lift-practice") == {("care", "weak")}


def test_the_link_to_the_suction_sheet_opens_without_an_error():
    assert callable(links)
    for lift in ("4 m", "8 m", "-10 m"):
        one = answer(house(), lift=lift, suctionlong="4 m")
        link = next(link for link in one.links if link.sheet == "suction")
        assert work(sheet("suction"), State(texts=dict(link.values))).errors == {}


# Draws that nobody told of ---------------------------------------------------------------------

BOTH = {"ask": "rows", "taps": "Shower,house,shower,0,2", "runs": "pump,house,30,12"}


def cycling(**texts):
    found = work(SHEET, State(texts=BOTH | texts)).answer
    return [one for one in found.cautions if "cannot run on" in one]


@pytest.mark.parametrize("tank", ["2 L", "50 L"])
def test_a_small_tank_is_said_to_let_the_pump_cycle_at_a_draw_nobody_told_of(tank):
    (said,) = cycling(tank=tank)
    assert "more than 20 times an hour with this pressure tank" in said
    assert "L/min" not in said  # the pump, and so its least flow, may be assumed
    close = work(SHEET, State(texts=BOTH | {"tank": tank, "least": "6 L/min", "draw": "5.9 L/min"}))
    (found,) = (one for one in close.answer.findings if one.key == "least-flow")
    rate = re.search(r"up to ([\d\u202f]+) times an hour", found.text)[1].replace("\u202f", "")
    assert float(rate) > 20
    assert len(cycling(tank=tank, taps="Shower,house,shower,0,2;Hose,house,hose,0,1")) == 1


def test_no_cycling_is_said_where_the_draw_is_told_or_the_tank_spaces_the_starts():
    assert cycling(tank="2 L", draw="3 L/min") == []
    assert cycling(tank="2 L", taps="Shower,house,shower,0,2;Drops,house,steady,0,1,3 L/min") == []
    assert cycling(tank="500 L") == []
    assert cycling(tank="2 L", drive="full") == []
    (said,) = cycling(tank="?")
    assert "again and again" in said
