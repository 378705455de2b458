"""A control that reads the pressure away from the pump: held there, on every page of the site."""

import pytest

from calc.page.form import rest, work
from calc.page.state import State
from calc.sheets import sheet, views
from calc.site.demo import alder_terrace
from calc.site.facts import GIVEN, Fact

# 10 m of water at 15 °C, Pa: 999.1 kg/m3 (IAPWS SR6-08) times 9.80665 m/s2
TEN_METRES = 97_978
AT_PUMP = alder_terrace().put("pump.set", Fact("2 bar"))
WELLHEAD = AT_PUMP.put("pump.sensed", Fact("10 m"))


def filled(site, key, way="", digits=14, **typed):
    facts = views.fill(site, key, way, "metric", digits)
    texts = {field: fact.text for field, fact in facts.items()} | typed
    standing = {field: fact.standing for field, fact in facts.items()}
    return State("metric", texts, {}, standing | dict.fromkeys(typed, GIVEN))


def answered(site, key, way="", **typed):
    outcome = work(sheet(key), filled(site, key, way, **typed))
    assert outcome.errors == {}
    return rest(outcome).answer


def figure(found, label):
    return next(one.value for one in found.figures if one.label == label)


def test_the_whole_supply_has_the_pressure_of_the_sensor_and_the_water_down_to_the_pump():
    low, high = (answered(site, "keep_up", "now/") for site in (AT_PUMP, WELLHEAD))
    more = figure(high, "Pressure at the pump") - figure(low, "Pressure at the pump")
    assert more == pytest.approx(TEN_METRES, rel=1e-3)


@pytest.mark.parametrize("key, field", [("reach", "pressure"), ("pipe", "pressure"),
                                        ("pressure", "known")])  # fmt: skip
def test_a_page_of_one_line_starts_with_the_pressure_at_the_pump(key, field):
    facts = views.fill(WELLHEAD, key, "", "metric", 12)
    assert float(facts[field].text.split()[0]) * 1e5 == pytest.approx(2e5 + TEN_METRES, rel=1e-4)


def test_pump_and_pipe_shows_what_is_set_at_the_sensor_and_where_that_is():
    facts = views.fill(WELLHEAD, "pump_match")
    assert (facts["set"].text, facts["sensed"].text) == ("2 bar", "10 m")
    facts = views.fill(WELLHEAD.put("pump.height", Fact("-3 m")), "keep_up")
    assert (facts["set"].text, facts["sensed"].text) == ("2 bar", "13 m")


@pytest.mark.parametrize("key", ["reach", "pipe"])
def test_a_pressure_typed_at_the_pump_goes_back_as_what_is_set_at_the_sensor(key):
    put = views.back(WELLHEAD, key, filled(WELLHEAD, key, "", 4, pressure="3.2 bar"))
    assert len(put.changes) == 1
    text = put.site.get("pump.set").text
    assert float(text.split()[0]) * 1e5 == pytest.approx(3.2e5 - TEN_METRES, rel=1e-4)


@pytest.mark.parametrize("key", ["keep_up", "pump_match"])
def test_the_sensor_goes_back_above_the_datum(key):
    site = WELLHEAD.put("pump.height", Fact("-3 m"))
    put = views.back(site, key, filled(site, key, "", 4, sensed="5 m"))
    assert put.site.get("pump.sensed").text == "2 m"


def test_a_set_pressure_that_is_offered_is_the_one_at_the_sensor_and_works_there():
    low = WELLHEAD.put("pump.set", Fact("0.5 bar"))
    found = answered(low, "keep_up", "now/")
    assert found.verdict.word == "Does not work"
    fix = next(one for one in found.fixes if "aise the set pressure" in one.text)
    outcome = work(sheet("keep_up"), State("metric", dict(fix.link.values)))
    assert outcome.answer.verdict.word in ("Works", "Borderline")
    assert fix.link.values["sensed"] == "10 m"
    said = fix.text.partition("set pressure to ")[2].split()[0].replace("\u00a0bar", "")
    assert float(said) * 1e5 == pytest.approx(
        float(fix.link.values["set"].split()[0]) * 1e5, rel=1e-2
    )


def test_a_pump_that_never_reaches_what_is_set_is_told_of_as_the_sensor_reads_it():
    high = WELLHEAD.put("pump.set", Fact("7 bar"))
    sentence = next(one.text for one in answered(high, "keep_up").findings
                    if one.key == "set-too-high")  # fmt: skip
    assert "7.00" in sentence


def test_the_tank_at_the_sensor_works_between_the_pressures_there():
    small = {"draw": "1 L/min", "tank": "20 L", "least": "6 L/min"}

    def starts(site):
        found = answered(site, "pump_match", **small).findings
        return next(one.text for one in found if one.key == "least-flow")

    at_pump = starts(AT_PUMP)
    same_there = WELLHEAD.put("pump.height", Fact("10 m")).put("water.level", Fact("6 m"))
    assert starts(same_there) == at_pump
