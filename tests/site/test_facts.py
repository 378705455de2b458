"""Facts: what may be known of a site, and how what is known stands."""

import re

import pytest

from calc.errors import InputError
from calc.pipe import fittings
from calc.site.facts import ASSUMED, BY_PATH, NOT_KNOWN, SLOTS, Fact
from calc.site.rows import TABLES
from calc.site.site import Site

COLUMNS = [(table.key, slot) for table in TABLES for slot in table.columns]


def test_an_unknown_fact_with_a_usual_value_is_assumed_and_says_why():
    fact = Site().best("water.temperature")
    assert (fact.text, fact.standing) == ("15 °C", ASSUMED)
    assert "common practice" in fact.reason


def test_an_unknown_fact_without_a_usual_value_stays_unknown():
    assert Site().best("water.level") == NOT_KNOWN
    assert Site().value("water.level") is None


@pytest.mark.parametrize("slot", [s for s in SLOTS if s.usual], ids=lambda s: s.key)
def test_every_usual_value_can_be_read_and_has_its_reason(slot):
    slot.read(slot.usual)
    assert slot.reason
    assert slot.tidied(slot.usual) == slot.usual


@pytest.mark.parametrize("slot", SLOTS, ids=lambda s: s.key)
def test_a_label_is_short_enough_for_a_form(slot):
    assert 0 < len(slot.label) <= 32


def test_codes_in_links_are_unique_and_of_two_letters():
    codes = [slot.code for slot in SLOTS]
    assert len(set(codes)) == len(codes)
    assert all(re.fullmatch("[a-z]{2}", code) for code in codes)


def test_codes_of_tables_are_unique_and_of_one_letter():
    assert all(re.fullmatch("[a-z]", table.code) for table in TABLES)
    assert len({table.code for table in TABLES}) == len(TABLES)


def test_a_number_without_a_unit_gets_the_usual_metric_one():
    assert Site().put("pump.set", Fact("3.5")).get("pump.set").text == "3.5 bar"


def test_a_number_keeps_the_unit_it_was_typed_in():
    site = Site().put("pump.set", Fact("50 psi"))
    assert site.get("pump.set").text == "50 psi"
    assert site.value("pump.set") == pytest.approx(50 * 6894.757293)


@pytest.mark.parametrize("path, text, words", [
    ("pump.set", "4 m/s", "unit of speed"),
    ("pump.set", "99 bar", "0.100 to 16.0 bar"),
    ("pump.set", "much", "not a number"),
    ("use.people", "2.5", "whole number from 0 to 500"),
    ("water.kind", "river", "well, spring, cistern, stream"),
    ("place.climate", "1 2 3", "24 numbers"),
    ("place.name", "x" * 25, "25 characters"),
])  # fmt: skip
def test_what_cannot_be_read_is_refused_with_the_reason(path, text, words):
    with pytest.raises(InputError, match=words):
        Site().put(path, Fact(text))


def test_putting_an_unknown_fact_takes_it_out():
    site = Site().put("pump.set", Fact("3 bar")).put("pump.set", NOT_KNOWN)
    assert site == Site()


def test_the_old_site_is_kept_when_a_fact_is_put():
    before = Site().put("pump.set", Fact("3 bar"))
    before.put("pump.set", Fact("4 bar"))
    assert before.get("pump.set").text == "3 bar"


def test_an_unknown_path_is_no_fact():
    with pytest.raises(KeyError):
        Site().get("pump.colour")


def test_every_part_of_a_pipe_is_a_choice_of_the_sections():
    column = next(slot for key, slot in COLUMNS if (key, slot.key) == ("sections", "fitting"))
    assert [value for value, _ in column.options] == [part.key for part in fittings.PARTS]


def test_everything_promised_has_its_place_in_the_first_version():
    promised = """place.name place.latitude place.longitude place.altitude place.data place.climate
    water.kind water.level water.yield water.temperature suction.length suction.pipe pump.present
    pump.height pump.placement pump.id pump.curve pump.control pump.set pump.sensed pump.cut_in
    pump.cut_out pump.count pump.least_flow pressure_tank.volume pressure_tank.precharge
    store.volume store.days use.people power.source power.voltage"""
    assert set(promised.split()) <= set(BY_PATH)
    tables = "sections outlets tanks sources animals beds panels batteries controllers"
    assert [table.key for table in TABLES][:9] == tables.split()
