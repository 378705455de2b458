"""The battery sheet: days without sun, kinds and sizes side by side, rates, life."""

import math
import re
from functools import partial

import pytest

from calc import practice
from calc.page.state import State
from calc.power.year import Weather, trace
from calc.sheets import sheet
from calc.units import HOUR
from tests.sheets import asking, few, solar
from tests.sheets.solar import NORTH
from tests.sheets.working import check_working

BATTERY = sheet("battery")
answer = partial(asking.answer, BATTERY)
figures = partial(solar.figures, BATTERY)
case = partial(solar.case, BATTERY)
found = partial(solar.found, BATTERY)
KINDS = {kind.key: kind for kind in practice.BATTERIES}
BASE = {
    **NORTH, "use": "1000 L/day", "flow": "15 L/min", "watts": "300 W", "standby": "5 W",
    "rated": "250 W", "series": "1", "strings": "3", "kind": "lfp", "volts": "24", "ah": "100 Ah",
    "tank": "0 L", "fail": "5", "tilt": "55°", "shade": "0 %", "limit": "100 V", "amps": "40 A",
    "pattern": "home",
}  # fmt: skip
CARRIES, LASTS, SHORT = (
    "Lasts without any sun",
    "Battery lasts, in years",
    "Days short in that year",
)
IDLE = 24 * (5 + practice.CONTROLLER_STANDBY)  # Wh a day
PUMPING = 1000 / 15 / 60 * 300  # Wh a day


@pytest.mark.parametrize("kind, usable", [("lfp", 0.8), ("agm", 0.5), ("flooded", 0.5)])
def test_days_without_sun_are_what_may_be_drawn_over_what_a_day_takes(kind, usable):
    drawn = 2400 * usable * KINDS[kind].discharging
    days = figures(**{**BASE, "kind": kind})[CARRIES] / 86400
    assert days == pytest.approx(drawn / (PUMPING + IDLE))


@pytest.mark.parametrize("tank", [0.5, 1.0, 3.0])
def test_a_full_tank_carries_first_while_only_the_standby_is_drawn(tank):
    drawn = 2400 * 0.8 * 0.97
    days = figures(**{**BASE, "tank": f"{tank} m³"})[CARRIES] / 86400
    assert days == pytest.approx(tank + (drawn - tank * IDLE) / (PUMPING + IDLE))


def test_a_tank_that_lasts_longer_than_the_standby_can_be_met_carries_alone():
    days = figures(**{**BASE, "tank": "30 m³", "ah": "20 Ah"})[CARRIES] / 86400
    assert days == pytest.approx(30)


def test_days_without_sun_are_the_busiest_month_s():
    busy = {"season": "north", "off": "10 %"}
    assert figures(**{**BASE, **busy})[CARRIES] == figures(**BASE)[CARRIES]


@pytest.mark.parametrize("tank", ["0 L", "2000 L"])
def test_a_year_without_sun_runs_dry_about_when_it_says(tank):
    one = case(**{**BASE, "tank": tank, "pattern": "even", "flow": "5 L/min", "watts": "60 W"})
    dark = Weather([0.0] * 8760, [298.15] * 8760, [298.15] * 8760)
    hours = trace(dark, one.system, one.demand)
    dry = next(at for at, hour in enumerate(hours)
               if hour.served < one.demand.hours[at] * (1 - 1e-9))  # fmt: skip
    # what fades at rest and what an hour's rate costs are not in the figure: a few per cent
    assert dry / 24 == pytest.approx(one.autonomy, rel=0.06)


def test_kinds_side_by_side_are_four_forms():
    table = answer(**BASE).tables[0]
    assert len(table.rows) == 4 and table.marked == (list(KINDS).index("lfp"),)
    for row, (key, kind) in zip(table.rows, KINDS.items(), strict=True):
        alone = figures(**{**BASE, "kind": key})
        assert row[0] == kind.name and row[2] == f"{alone[SHORT]:.0f}"
        assert row[1] == pytest.approx(alone[CARRIES]) and row[3] == pytest.approx(alone[LASTS])


def test_sizes_side_by_side_are_forms_and_those_that_fall_short_are_dimmed():
    texts = {**BASE, "ah": "30 Ah"}
    table = answer(**texts).tables[1]
    for at, row in enumerate(table.rows):
        amp_hours = row[0] / HOUR
        alone = figures(**{**texts, "ah": f"{amp_hours} Ah"})
        assert row[2] == f"{alone[SHORT]:.0f}" and row[1] == pytest.approx(alone[CARRIES])
        assert row[3] == pytest.approx(alone[LASTS])
        assert (at in table.dimmed) == (alone[SHORT] > 5)
        assert (at in table.marked) == (amp_hours == pytest.approx(30))
    assert 0 < len(table.dimmed) < len(table.rows)


def test_the_smallest_battery_the_form_takes_is_worked_out():
    assert answer(**{**BASE, "ah": "0.1 Ah", "volts": "12"}).tables[1].rows


@pytest.mark.parametrize("kind", sorted(KINDS))
def test_a_pump_that_draws_more_than_the_battery_may_give_is_said(kind):
    gives = KINDS[kind].discharge_rate * 24 * 50
    most, more = (f"{share * gives - 5} W" for share in (1.0, 1.01))
    texts = {**BASE, "kind": kind, "ah": "50 Ah", "fail": "365"}
    assert "rate" not in found(**{**texts, "watts": most})
    assert found(**{**texts, "watts": more})["rate"] == "care"
    text = next(
        one.text for one in answer(**{**texts, "watts": more}).findings if one.key == "rate"
    )
    assert f"may give {gives:.0f}\u00a0W" in text


def test_a_larger_battery_is_offered_for_a_rate_and_clears_it():
    texts = {**BASE, "ah": "25 Ah", "strings": "8", "watts": "400 W", "flow": "30 L/min"}
    one = answer(**texts)
    assert "rate" in found(**texts)
    fix = next(fix for fix in one.fixes if fix.link)
    after = few.opened(fix.link, BATTERY, State("metric", texts)).answer
    assert not few.wrong(after)[0] and "Choose a battery" in fix.text


@pytest.mark.parametrize("amps, said", [("40 A", True), ("12 A", False)])
def test_panels_that_could_charge_faster_than_the_kind_bears_are_a_note(amps, said):
    texts = {**BASE, "kind": "agm", "ah": "60 Ah", "strings": "4", "amps": amps}
    assert (found(**texts).get("charge-rate") == "note") == said
    if said:
        text = next(one.text for one in answer(**texts).findings if one.key == "charge-rate")
        assert re.search(r"at most 15\u00a0A", text)  # a quarter of its amp-hours, for AGM


def test_few_panels_cannot_charge_too_fast_whatever_the_controller_gives():
    texts = {**BASE, "kind": "agm", "ah": "60 Ah", "amps": "40 A", "strings": "1"}
    # 0.95 of 250 W against a quarter of 1440 Wh
    assert "charge-rate" not in found(**texts)


def test_a_battery_that_carries_less_than_a_day_is_borderline():
    day = (PUMPING + IDLE) / (24 * 0.8 * 0.97)
    under, over = ({**BASE, "ah": f"{share * day} Ah", "strings": "40", "fail": "365",
                    "amps": "400 A"} for share in (0.98, 1.02))  # fmt: skip
    assert found(**under)["autonomy"] == "care" and "autonomy" not in found(**over)
    assert answer(**under).verdict.level == "tight"


@pytest.mark.parametrize("kind", sorted(KINDS))
@pytest.mark.parametrize("ah, use", [("20 Ah", "1500 L/day"), ("100 Ah", "1000 L/day"),
                                     ("900 Ah", "200 L/day")])  # fmt: skip
def test_no_battery_lasts_longer_than_its_kind(kind, ah, use):
    years = figures(**{**BASE, "kind": kind, "ah": ah, "use": use})[LASTS]
    assert 0 < years <= KINDS[kind].years
    assert ah != "900 Ah" or years == KINDS[kind].years


def cycles(points, depth):
    """How many a battery lasts: straight lines in the logarithms of both."""
    if depth <= points[0][0]:
        return points[0][1] * points[0][0] / depth
    pairs = zip(points, points[1:], strict=False)
    (low, many), (high, few_) = next(two for two in pairs if depth <= two[1][0])
    share = math.log(depth / low) / math.log(high / low)
    return many ** (1 - share) * few_**share


def test_the_lasting_years_are_the_cycles_of_its_days_added_up():
    texts = {**BASE, "kind": "agm", "ah": "30 Ah", "pattern": "dawn"}
    one = case(**texts)
    depths = [
        sum(hour.drawn for hour in one.hours[24 * day : 24 * day + 24]) / 720 for day in range(365)
    ]
    worn = sum(1 / cycles(KINDS["agm"].cycles, depth) for depth in depths if depth > 0)
    assert figures(**texts)[LASTS] == pytest.approx(1 / worn) and 1 / worn < 7


def test_the_verdict_says_days_short_days_and_years():
    one = answer(**{**BASE, "strings": "8", "ah": "200 Ah"})
    days = figures(**{**BASE, "strings": "8", "ah": "200 Ah"})[CARRIES] / 86400
    assert one.verdict.level == "good" and f"carries {days:.2g}\u00a0days" in one.verdict.sentence
    assert "serves every day" in one.verdict.sentence and "about 12 years" in one.verdict.sentence


def test_the_energy_that_may_be_drawn_and_the_cycles_are_the_year_s():
    one = case(**BASE)
    assert figures(**BASE)["Energy that may be drawn"] == pytest.approx(0.8 * 2400 * HOUR)
    drawn = sum(hour.drawn for hour in one.hours)
    assert figures(**BASE)["Full cycles a year"] == pytest.approx(drawn / 2400)
    assert figures(**BASE)["Lowest charge in it"] == pytest.approx(
        min(hour.stored for hour in one.hours) / 2400
    )


@pytest.mark.parametrize("texts", [BASE, {**BASE, "tank": "3000 L"}, {**BASE, "kind": "flooded"}])
def test_the_working_gives_what_it_says(texts):
    assert check_working(answer(**texts)) >= 5


@pytest.mark.parametrize("kind, share", [("lfp", 0.03), ("agm", 0.12), ("flooded", 0.25)])
def test_what_a_fast_discharge_leaves_is_peukert_s(kind, share):
    one = answer(**{**BASE, "kind": kind})
    step = next(each for each in one.steps if "leaves of it" in each.title)
    assert step.result.value == pytest.approx((2400 / 20 / 300) ** share)


def test_it_is_the_same_year_as_the_panels_sheet_s():
    panels = solar.figures(sheet("panels"), **BASE)
    assert panels[SHORT] == figures(**BASE)[SHORT] and panels[CARRIES] == figures(**BASE)[CARRIES]
