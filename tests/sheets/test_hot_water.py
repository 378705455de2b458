"""The hot water sheet: figures by hand, what is found judged from them, fixes, bad input."""

import math
import re
from functools import partial
from pathlib import Path

import pytest

from calc import practice, water
from calc.page.form import work
from calc.page.state import State
from calc.pipe import pipes
from calc.sheets import sheet, views
from calc.sheets.hot_water.judge import burns_in
from calc.site.demo import alder_terrace
from calc.site.facts import Fact
from calc.units import LITRE, MINUTE, parse
from tests.page.pictures import named
from tests.parity.cases import requests
from tests.sheets import asking, awkward
from tests.sheets.asking import figure
from tests.sheets.working import check_working

SHEET = sheet("hot_water")
answer, found = partial(asking.answer, SHEET), partial(asking.found, SHEET)
outcome = partial(asking.outcome, SHEET)
GROWS, NEEDED, HOT = "The water grows by", "Expansion tank needed", "Pressure when hot"
LOCKED, LOWEST, TAP = "With no room and no relief", "Lowest rating", "Hottest at the tap"
WAIT, LEFT, SHARE = "Wait at the tap", "Runs off first", "Hot water in the mixed water"
CLOSED = {"altitude": "0 m", "static": "3 bar", "charge": "3 bar", "relief": "7 bar"}
AIR = 101325.0


def states():
    drawn = [State(r["system"], r["texts"], r["units"]) for r in requests("hot_water", 60)]
    return [*drawn, *awkward.states(SHEET, 120)]


def worked():
    for state in states():
        done = work(SHEET, state)
        if done.answer is not None:
            yield state, done.answer


# By hand ----------------------------------------------------------------------------------------


def test_the_water_grows_as_its_density_falls():
    one = answer(heater="200 L", water="15 °C", stored="60 °C")
    grown = 200 * LITRE * (water.density(288.15) / water.density(333.15) - 1)
    assert figure(one, GROWS) == pytest.approx(grown)
    assert figure(one, GROWS) == pytest.approx(3.24 * LITRE, rel=2e-3)  # as the guide says: 3.2 L


def test_the_tank_needed_is_boyles_to_nine_tenths_of_the_relief_valve():
    one = answer(**CLOSED)
    factor = 1 - (3e5 + AIR) / (0.9 * 7e5 + AIR)
    assert figure(one, NEEDED) == pytest.approx(figure(one, GROWS) / factor)


def test_the_tank_needed_is_enough_and_a_hundredth_less_is_not():
    need = figure(answer(**CLOSED), NEEDED) / LITRE
    assert "tank-small" not in found(**CLOSED, volume=f"{need * 1.000001:.9g} L")
    assert found(**CLOSED, volume=f"{need * 0.99:.9g} L")["tank-small"] == "care"


def test_the_pressure_when_hot_is_boyles():
    one = answer(**CLOSED, volume="5 L")
    gas = 5 * LITRE
    hot = (3e5 + AIR) * gas / (gas - figure(one, GROWS)) - AIR
    assert figure(one, HOT) == pytest.approx(hot)


def test_a_relief_valve_ends_the_rise():
    one = answer(**CLOSED, volume="1 L")
    assert figure(one, HOT) == pytest.approx(7e5)
    assert figure(one, LOCKED) > 100e5


def test_thinner_air_leaves_a_tank_more_room():
    low, high = (figure(answer(**{**CLOSED, "altitude": z}), NEEDED) for z in ("0 m", "3000 m"))
    assert high < low


def test_the_wait_is_the_pipes_water_over_the_flow():
    given = {"kind": "pex-mm", "pex-mm": "20", "length": "20 m", "flow": "6 L/min"}
    one = answer(**given)
    bore = pipes.pipe("pex-mm", "20").inside_m
    holds = math.pi / 4 * bore**2 * 20
    assert figure(one, LEFT) == pytest.approx(holds)
    assert figure(one, WAIT) == pytest.approx(holds / (6 * LITRE / MINUTE))
    assert figure(answer(**given, draws="10"), "Runs off in a day") == pytest.approx(10 * holds)


def test_mixing_takes_so_much_hot_and_the_rest_cold():
    one = answer(water="10 °C", stored="60 °C", set="40 °C")
    assert figure(one, SHARE) == pytest.approx(0.6)


def test_mixed_at_the_heater_the_pipe_loses_less_heat():
    lost = "Heat lost in the pipe in a day"
    tap, heater = (figure(answer(mix=where), lost) for where in ("tap", "heater"))
    assert heater / tap == pytest.approx(30 / 45, rel=5e-3)  # from 15 to 45, and to 60 °C


def test_a_heater_of_2_kw_takes_its_heat_over_2_kw():
    one = answer(heater="100 L", water="10 °C", stored="60 °C", power="2 kW")
    joules = figure(one, "Heat for the whole heater")
    assert joules == pytest.approx(100 * 4.18e3 * 50, rel=2e-3)
    assert figure(one, "Time to heat it") == pytest.approx(joules / 2000)


def test_cpvc_keeps_half_of_its_rating_at_60_degrees():
    one = answer(kind="cpvc11", cpvc11="0.75", weakest="100 bar")
    full = pipes.pipe("cpvc11", "0.75").rating_pa
    assert figure(one, LOWEST) == pytest.approx(full / 2, rel=1e-3)


@pytest.mark.parametrize(
    "celsius, words",
    [(45, "more than 5 minutes"), (60, "about 5 s"), (70, "less than a second")],
)
def test_how_soon_it_burns_is_said(celsius, words):
    assert burns_in(celsius + 273.15) == words


# What never goes the wrong way ------------------------------------------------------------------


def test_hotter_or_larger_never_needs_a_smaller_tank():
    for field, texts in (
        ("stored", [f"{one} °C" for one in range(40, 95, 5)]),
        ("heater", [f"{one} L" for one in (20, 50, 100, 400, 1500)]),
        ("static", [f"{one} bar" for one in (1, 2, 3, 4, 5)]),
    ):
        needed = [figure(answer(**{**CLOSED, field: text}), NEEDED) for text in texts]
        assert needed == sorted(needed) and needed[0] < needed[-1], field


def test_a_higher_relief_valve_never_needs_a_larger_tank():
    needed = [figure(answer(**{**CLOSED, "relief": f"{bar} bar"}), NEEDED) for bar in (5, 6, 8, 10)]
    assert needed == sorted(needed, reverse=True)


def test_hotter_pipe_never_keeps_more_of_its_rating():
    ratings = [
        figure(answer(kind="cpvc11", weakest="100 bar", stored=f"{one} °C"), LOWEST)
        for one in range(30, 81, 10)
    ]
    assert ratings == sorted(ratings, reverse=True)


# What is found ----------------------------------------------------------------------------------


@pytest.mark.parametrize(
    "texts, level, key",
    [
        ({"vessel": "none", "valve": "none"}, "stop", "bursts"),
        ({"vessel": "?", "valve": "?"}, "stop", "bursts"),
        ({"valve": "none"}, "stop", "no-relief"),
        ({"closed": "open", "valve": "none"}, "stop", "no-relief"),
        ({"relief": "12 bar"}, "stop", "over-rating"),
        ({"weakest": "2 bar"}, "stop", "over-rating"),
        ({"valve": "none", "volume": "1.5 L", "charge": "2 bar"}, "stop", "over-rating"),
        ({"static": "7 bar", "charge": "2 bar"}, "stop", "relief-runs"),
        ({"static": "5.6 bar"}, "care", "relief-near"),
        ({"kind": "pe100-sdr11"}, "stop", "too-hot"),
        ({"kind": "pvc40"}, "stop", "too-hot"),
        ({"kind": "hose"}, "stop", "too-hot"),
        ({"hottest": "94 °C"}, "stop", "too-hot"),
        ({"vessel": "none"}, "care", "no-room"),
        ({"vessel": "?"}, "care", "no-room"),
        ({"closed": "?", "vessel": "none"}, "care", "no-room"),
        ({"closed": "reducer", "volume": "2 L"}, "care", "tank-small"),
        ({"charge": "0 bar", "volume": "2.6 L"}, "care", "tank-small"),
        ({"charge": "4 bar"}, "care", "tank-small"),
        ({"charge": "2.9 bar"}, "note", "charge-high"),
        ({"mix": "none"}, "care", "scald"),
        ({"mix": "?"}, "care", "scald"),
        ({"set": "55 °C"}, "care", "scald"),
        ({"stored": "45 °C"}, "care", "lukewarm"),
        ({"stored": "55 °C"}, "note", "store-cool"),
        ({"stored": "46 °C", "set": "48 °C"}, "note", "mix-idle"),
        ({"closed": "vent", "stored": "90 °C", "altitude": "4500 m"}, "stop", "boils"),
        ({"length": "100 m"}, "note", "slow"),
        ({"valve": "pressure"}, "note", "pressure-only"),
        ({"relief": "?"}, "care", "heater-relief-unchecked"),
        ({"weakest": "?"}, "care", "rating-unchecked"),
        ({"kind": "own"}, "care", "rating-unchecked"),
        ({"volume": "?"}, "care", "tank-unchecked"),
        ({"charge": "?"}, "care", "tank-unchecked"),
        ({"set": "?"}, "care", "mix-unchecked"),
    ],
)
@pytest.mark.parametrize("system", ["metric", "us"])
def test_what_is_wrong_is_found(system, texts, level, key):
    assert found(system, **texts).get(key) == level


def test_what_is_right_works():
    for texts in (
        {},
        CLOSED,
        {"closed": "open"},
        {"closed": "vent", "valve": "none", "static": "0.4 bar"},
        {"kind": "copper-en", "stored": "75 °C", "volume": "8 L"},
        {"set": "49 °C"},
        {"set": "120 °F"},
    ):
        assert answer(**texts).verdict.word == "Works", texts


def test_both_systems_agree_on_the_example():
    assert found("metric") == found("us") == {}


def _figures(one):
    return {f.label: f.value for f in one.figures}


def test_every_danger_in_the_figures_is_a_finding():
    """By the figures alone: a finding that is never raised is the danger."""
    seen = set()
    for _, one in worked():
        told = _figures(one)
        levels = {(f.level, f.key) for f in one.findings}
        keys = {key for _, key in levels}
        if told.get(TAP, 0) > practice.SCALDS_ABOVE + 1e-3:
            seen.add("scald")
            assert ("care", "scald") in levels
        if told.get(HOT, 0) > told.get(LOWEST, math.inf) * 1.000001:
            seen.add("over")
            assert keys & {"over-rating", "bursts", "heater-relief-unchecked"}
        if told.get(HOT, 0) > 100e5:
            seen.add("unheld")
            assert any(level != "note" for level, _ in levels)
    assert seen == {"scald", "over", "unheld"}


def read(state, key):
    """The SI number of a field as it counts; None where not given."""
    entry = SHEET.field(key)
    text = state.text(entry)
    return None if text in ("", "?") else parse(text, entry.quantity, state.units.get(key)).value


def test_a_setting_over_the_pipes_rating_or_the_weakest_part_never_passes():
    seen = 0
    for state, one in worked():
        if state.text(SHEET.field("valve")) not in ("tp", "pressure"):
            continue
        setting, weakest = read(state, "relief"), read(state, "weakest")
        lowest = min(_figures(one).get(LOWEST, math.inf), weakest or math.inf)
        if setting is not None and setting > lowest * 1.000001:
            seen += 1
            assert one.verdict.level == "bad"
    assert seen > 5


def test_closed_in_with_nothing_is_never_better_than_does_not_work():
    for texts in (
        {"heater": "10 L"},
        {"weakest": "100 bar"},
        {"stored": "30 °C"},
        {"static": "1 bar"},
    ):
        one = answer(vessel="none", valve="none", **texts)
        assert one.verdict.level == "bad" and "bursts" in one.verdict.sentence


def test_the_verdict_of_a_missing_fact_says_what_would_pass():
    need = figure(answer(), NEEDED)
    said = answer(volume="?").verdict.sentence
    litres = float(re.search(r"enough; ([\d.]+)\u00a0L", said)[1])
    assert need <= litres * LITRE < 1.02 * need
    assert "49.0\u00a0°C" in answer(set="?").verdict.sentence


# Fixes ------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    "texts",
    [
        {"vessel": "none"}, {"vessel": "none", "valve": "none"}, {"valve": "none"},
        {"volume": "1 L"}, {"charge": "4 bar"}, {"relief": "12 bar"}, {"mix": "none"},
        {"set": "60 °C"}, {"stored": "45 °C"}, {"stored": "45 °C", "mix": "none"},
        {"kind": "pe100-sdr11"}, {"kind": "hose"}, {"static": "7 bar"},
        {"static": "11 bar", "relief": "15 bar"}, {"static": "7 bar", "volume": "2 L"},
        {"static": "7 bar", "closed": "open"}, {"stored": "80 °C", "kind": "pex-mm"},
        {"closed": "vent", "stored": "90 °C", "altitude": "4500 m", "kind": "copper-en"},
    ],
)  # fmt: skip
@pytest.mark.parametrize("system", ["metric", "us"])
def test_the_first_fix_works(system, texts):
    one = answer(system, **texts)
    assert one.verdict.level != "good"
    fix = one.fixes[0]
    assert fix.link is not None, fix
    after = asking.outcome(SHEET, system, **dict(fix.link.values))
    assert after.errors == {}
    assert after.answer.verdict.level == "good", (fix.text, after.answer.verdict)


# What cannot be ---------------------------------------------------------------------------------


@pytest.mark.parametrize(
    "texts, field, words",
    [
        ({"water": "35 °C", "stored": "30 °C"}, "stored", "must be above 35.0\u00a0°C"),
        ({"water": "35 °C", "set": "33 °C"}, "set", "must be above 35.0\u00a0°C"),
        ({"charge": "7 bar"}, "charge", "must be below 6.00\u00a0bar"),
        ({"stored": "110 °C"}, "stored", "must be 95 °C or less"),
        ({"stored": "10 °C"}, "stored", "must be 20 °C or more"),
        ({"water": "-5 °C"}, "water", "must be 0 °C or more"),
        ({"heater": "0 L"}, "heater", "or more"),
        ({"heater": ""}, "heater", "Enter the heater volume"),
        ({"relief": "1"}, "relief", None),
        ({"kind": "own", "bore": "0 mm"}, "bore", "or more"),
    ],
)
def test_bad_input_is_said_at_its_field(texts, field, words):
    done = outcome(**texts)
    if words is None:  # 1 bar is below the pre-charge, which says so
        assert set(done.errors) == {"charge"}
        return
    assert done.answer is None and words in done.errors[field], done.errors


def test_several_faults_are_said_at_once():
    done = outcome(water="38 °C", stored="30 °C", set="31 °C", charge="9 bar")
    assert set(done.errors) == {"stored", "set", "charge"}


def test_what_does_not_count_is_not_asked_for():
    done = outcome(closed="open", mix="none", valve="none")
    assert {"vessel", "volume", "charge", "relief", "set"} <= done.hidden
    assert done.errors == {}


# Cautions, site, picture, working ----------------------------------------------------------------


def test_the_cautions_of_hot_water_are_on_the_page():
    said = " ".join(SHEET.cautions)
    for words in ("scalds", "never plugged", "licensed person", "pressure vessel", "explode",
                  "Carbon monoxide"):  # fmt: skip
        assert words in said


def test_a_vent_pipe_and_lukewarm_pipes_have_their_advice():
    assert "Never close or narrow the vent pipe" in asking.warned(SHEET, closed="vent")
    assert "lukewarm water" in asking.warned(SHEET, mix="heater")
    assert "lukewarm water" not in asking.warned(SHEET, mix="tap")


def test_a_site_fills_it_and_what_is_typed_goes_back():
    site = alder_terrace()
    facts = views.fill(site, "hot_water")
    assert (facts["heater"].text, facts["relief"].text) == ("80 L", "6 bar")
    assert parse(facts["static"].text, "pressure").value == pytest.approx(
        views.asked_of(site, "hot_water").way.static_pa, rel=1e-3
    )
    typed = {"heater": "120 L", "volume": "8 L"}
    state = State("metric", typed, {}, dict.fromkeys(typed, "given"))
    put = views.back(site, "hot_water", state).site
    assert put.get("hot.volume") == Fact("120 L") and put.get("hot.tank") == Fact("8 L")


def test_the_bars_are_as_long_as_the_pressures():
    for _, one in worked():
        shapes, told = named(one.drawings[0]), _figures(one)
        pairs = [(shapes["lowest rating"], told[LOWEST])] if LOWEST in told else []
        if "when hot" in shapes:
            pairs.append((shapes["when hot"], told[HOT]))
        longest = max(float(shapes[n]["width"]) for n in shapes if n in
                      ("static", "when hot", "relief opens", "lowest rating"))  # fmt: skip
        if len(pairs) == 2:
            (bar, value), (other, its) = pairs
            each = longest / max(value, its)
            assert float(bar["width"]) / value == pytest.approx(
                float(other["width"]) / its, abs=0.5 / min(value, its)
            )
            assert float(bar["width"]) <= value * each + 0.5


def test_the_water_in_the_tank_is_as_high_as_boyle_says():
    one = answer(**CLOSED, volume="5 L")
    shapes = named(one.drawings[0])
    water_high, tank_high = (float(shapes[n]["height"]) for n in ("tank water", "tank"))
    assert water_high / tank_high == pytest.approx(figure(one, GROWS) / (5 * LITRE), abs=0.01)


def test_the_table_marks_the_store_and_burns_sooner_down_it():
    for system in ("metric", "us"):
        table = answer(system).tables[0]
        (marked,) = table.marked
        assert table.rows[marked][0] == pytest.approx(333.15, abs=0.01)
        grown = [row[1] for row in table.rows]
        assert grown == sorted(grown) and table.rows[marked][3] == "about 5 s"


def test_the_table_of_pipes_leaves_out_what_is_not_for_hot_water():
    table = answer(stored="80 °C").tables[1]
    fits = {row[0]: row[3] for row in table.rows}
    assert fits["Copper"] == "yes" and fits["CPVC SDR 11"] == "yes"
    assert {fits[name] for name in fits if name.startswith(("PE 100", "PVC", "Garden"))} == {"no"}
    assert fits["PEX series 3.2"] == "no"  # rated to 70 °C


def test_the_working_holds_whatever_is_asked():
    for _, one in worked():
        assert check_working(one) >= 4


def test_no_sentence_of_the_guide_is_beyond_what_the_page_says():
    guide = (Path(__file__).resolve().parents[2] / "docs" / "hot-water.md").read_text("utf-8")
    grows = figure(answer(), GROWS) / LITRE
    assert f"grows by {grows:.2f} L" in " ".join(guide.split())
