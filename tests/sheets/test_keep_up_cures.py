"""Cures that change the supply itself: suction, a second pump, a cistern; each solved again."""

import pytest

from calc.page import row_text
from calc.page.form import Reader, State, work
from calc.sheets import sheet
from calc.sheets.keep_up.cures import CISTERN, _cistern, _second_pump, _suction, tried
from calc.sheets.keep_up.sheet import rows_of
from tests.network import every_cure as cures_try

SHEET = sheet("keep_up")
READER = Reader()
HOUSE = (("pump", "house", "30 m", "8 m", "pe100-sdr11/40"),)


def rows(taps, runs=HOUSE, **texts):
    """(rows, case) of a state, as the sheet reads it."""
    kept = {}

    def keep(values, _reader):
        kept["rows"] = rows_of(values)
        return SHEET.solve(values, READER)

    state = State(texts={"runs": row_text.encode(runs), "taps": row_text.encode(taps)} | texts)
    outcome = work(type(SHEET)(**{**vars(SHEET), "solve": keep}), state)
    assert outcome.errors == {}, outcome.errors
    return kept["rows"], kept["rows"].case(), outcome.answer


def showers(count):
    return (("Showers", "house", "shower", "1", str(count)),)


# A shower at 15 psi wanted; the small pump cannot feed many at once
MANY = showers(10)
SOME = showers(5)


def test_a_second_pump_cures_what_one_is_too_small_for():
    given, case, _ = rows(MANY, pump="small", set="2.5 bar")
    assert case.short
    change = next(iter(_second_pump(given, case, READER)))
    assert change.cures and change.rows.supply.beside == 2
    assert change.pressure("Showers") > case.after.outlet("Showers").pressure_pa


def test_the_second_pump_agrees_with_the_full_search():
    given, case, _ = rows(MANY, pump="small", set="2.5 bar")
    ours = next(iter(_second_pump(given, case, READER)))
    theirs = next(
        one for one in cures_try.cures(case.after, "Showers") if one.kind == "pump" and one.cured
    )
    assert ours.cures
    if ours.rows.supply.set_pa == given.supply.set_pa:
        assert ours.pressure("Showers") == pytest.approx(theirs.after.pressure_pa, rel=1e-6)


def test_two_pumps_side_by_side_share_the_flow():
    given, _, _ = rows(MANY, pump="small", set="2.5 bar", pumps="2")
    flows = [f for name, f in given.case().after.flows.items() if name.startswith("the pump")]
    assert len(flows) == 2
    assert flows[0] == pytest.approx(flows[1], rel=1e-6)


def test_no_third_pump_is_advised():
    given, case, _ = rows(showers(30), pump="small", set="2.5 bar", pumps="2")
    assert case.short and not list(_second_pump(given, case, READER))


def test_a_cistern_cures_by_its_height_and_the_pump_can_fill_it():
    given, case, _ = rows(MANY, pump="small", set="2.5 bar")
    change = next(iter(_cistern(given, case, READER)))
    assert change.cures
    level = change.rows.tanks[-1].up
    assert level * case.weight < given.supply.set_pa
    assert change.case.after.flows[f"house – {CISTERN}"] < 0  # it feeds the house


def test_a_cistern_higher_than_the_pump_reaches_is_not_advised():
    given, case, _ = rows(MANY, pump="small", set="1.2 bar")
    assert case.short and not list(_cistern(given, case, READER))


STARVED = {"suctionlong": "60 m", "suctionpipe": "pe100-sdr11/25"}


def test_the_suction_pipe_named_gives_the_pump_enough():
    given, case, answer = rows(SOME, **STARVED)
    assert case.starved
    best = next(one for one in tried(given, case, READER) if one.cures)
    assert best.text in answer.verdict.sentence
    assert not best.rows.case().starved


def test_suction_advice_is_the_first_that_is_enough():
    given, case, _ = rows(SOME, **STARVED)
    for change in tried(given, case, READER)[:-1]:
        assert change.case.starved


def test_a_pump_nearer_to_the_water_keeps_the_whole_way_as_long():
    given, case, _ = rows(SOME, **STARVED)
    nearer = list(_suction(given, case, READER))[-1]
    before = given.supply.suction_length + given.runs[0].long
    after = nearer.rows.supply.suction_length + nearer.rows.runs[0].long
    assert after == pytest.approx(before, rel=1e-12)


def test_a_lift_no_pipe_can_help_is_said_so():
    _, case, answer = rows(showers(2), lift="8.5 m", suctionlong="9 m")
    assert case.starved
    assert "Set the pump lower" in answer.verdict.sentence


@pytest.mark.parametrize(
    "texts", [{"pump": "small", "set": "2.5 bar"}, {"pump": "small", **STARVED}]
)
def test_the_link_to_the_mended_site_opens_on_a_cure(texts):
    given, case, answer = rows(MANY, **texts)
    mended = next((one for one in answer.links if one.text.startswith("See it mended")), None)
    assert mended is not None
    outcome = work(SHEET, State(texts=dict(mended.values)))
    assert outcome.errors == {}
    best = next(one for one in tried(given, case, READER) if one.cures)
    shown = outcome.answer.tables[0].rows[0][5]
    assert shown == pytest.approx(best.pressure("Showers"), rel=2e-3)
