"""Who does not know the height above the sea gets one answer, whichever sheet is asked."""

import pytest

from calc import practice
from calc.page.fields import UNKNOWN
from calc.page.form import work
from calc.page.state import State
from calc.sheets import sheet

SUCTION = ("suction", "pump_match", "keep_up")


def judged(key, **texts):
    answer = work(sheet(key), State(texts=texts)).answer
    return {(one.level, one.key) for one in answer.findings if one.key == "lift-practice"}


@pytest.mark.parametrize("system", ["metric", "us"])
def test_every_sheet_takes_the_same_height_and_gives_the_same_reason(system):
    taken = {
        (one.unknown.text(system), one.unknown.reason)
        for key in (*SUCTION, "surge")
        for one in sheet(key).fields
        if one.key == "altitude"
    }
    assert len(taken) == 1


@pytest.mark.parametrize("lift", ["3.7 m", "4.4 m"])
def test_suction_and_the_whole_supply_agree(lift):
    # 15 ft (4.57 m) at sea level is 3.8 m at 1500 m by the air pressure of ISO 2533 (84.6 kPa)
    found = [judged(key, altitude=UNKNOWN, lift=lift) for key in SUCTION]
    assert found == [{("care", "lift-practice")} if lift == "4.4 m" else set()] * 3


@pytest.mark.parametrize("key", SUCTION)
def test_it_is_said_to_be_assumed(key):
    (told,) = [
        one
        for one in work(sheet(key), State(texts={"altitude": UNKNOWN})).assumed
        if one.key == "altitude"
    ]
    assert told.shown == f"{practice.CAREFUL_ALTITUDE:g} m"


@pytest.mark.parametrize(
    ("key", "label", "texts"),
    [
        ("pressure", "Static pressure at the outlet", {"known": "4 bar", "kind": "absolute"}),
        ("pressure_tank", "Drawdown", {}),
    ],
)
def test_where_thinner_air_would_help_none_is_taken(key, label, texts):
    def shown(altitude):
        answer = work(sheet(key), State(texts={**texts, "altitude": altitude})).answer
        return next(f.value for f in answer.figures if f.label == label)

    assert shown(UNKNOWN) == shown("0 m") < shown("1500 m")
