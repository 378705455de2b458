"""The drip sheet with a manifold: a zone as a whole, findings, fixes, old answers unchanged."""

import math
import random
from functools import partial

import pytest

from calc import practice
from calc.page.form import read_values, work
from calc.page.shapes import Stroke
from calc.page.state import State
from calc.sheets.drip.case import case_of
from calc.sheets.drip.sheet import SHEET
from calc.units import Reader
from tests.page.pictures import faults, marks
from tests.sheets import asking
from tests.sheets.asking import figure
from tests.sheets.working import check_working

answer = partial(asking.answer, SHEET)
found = partial(asking.found, SHEET)
ZONE, EVEN = "Flow varies over a zone", "Emission uniformity"
# a field of tomatoes, all of it one zone
FIELD = {
    "climate": "known", "et": "6 mm", "area": "2000 m²", "rows": "1.5 m", "crop": "tomato",
    "flow": "190 L/min", "pressure": "1.4 bar", "hours": "8", "length": "30 m",
    "daily": "20000 L/day",
}  # fmt: skip
START, MIDDLE = {**FIELD, "fed": "start"}, {**FIELD, "fed": "middle"}


def case(system="metric", **texts):
    return case_of(read_values(SHEET, State(system, texts)), Reader(system))


# As today without one ---------------------------------------------------------------------------


@pytest.mark.parametrize("texts", [{}, FIELD, {"length": "60 m", "slope": "10 %"}, {"zones": "2"}])
def test_without_a_manifold_all_is_as_it_was(texts):
    """One line stands for all: the zone is so many of it."""
    one = case(**texts)
    assert one.zone is None and one.start == one.pressure
    assert one.zone_flow == min(one.lines, one.in_zone) * one.solved.flow
    labels = [figure.label for figure in answer(**texts).figures]
    assert ZONE not in labels
    titles = [table.title for table in answer(**texts).tables]
    assert "Along the manifold" not in titles


def test_a_wide_short_level_manifold_changes_next_to_nothing():
    """To 1 %: what is lost along 2 m of pipe of 97 mm is less than a millibar."""
    texts = {**FIELD, "zones": "40"}
    plain, on = case(**texts), case(**texts, fed="start", manifold="pe100-sdr17/110")
    for name in ("zone_flow", "zone_time", "emission", "time"):
        assert getattr(on, name) == pytest.approx(getattr(plain, name), rel=1e-3)


# A zone on a manifold ---------------------------------------------------------------------------


@pytest.mark.parametrize("texts", [START, MIDDLE, {**START, "across": "-3 %", "flow": "60 L/min"}])
def test_what_zones_give_in_their_time_is_the_water_needed(texts):
    one = case(**texts)
    assert one.whole_flow * one.zone_time == pytest.approx(one.water, rel=1e-9)


@pytest.mark.parametrize("across", ["0 %", "3 %", "-4 %"])
@pytest.mark.parametrize("fed", ["start", "middle"])
def test_as_many_lines_as_the_source_feeds_are_a_zone_and_one_more_is_not(fed, across):
    one = case(**{**FIELD, "flow": "70 L/min"}, fed=fed, across=across)
    fits = one.manifold.zone(one.line, one.per_zone, one.pressure).flow
    more = one.manifold.zone(one.line, one.per_zone + 1, one.pressure).flow
    assert fits <= one.flow < more
    assert one.zones == math.ceil(one.count / one.per_zone) and one.zone_flow <= one.flow


def test_the_weakest_dripper_of_the_zone_is_judged():
    one, told = case(**START), answer(**START)
    lines = [one.zone.inflow.solved(start) for start in one.zone.starts]
    flows = [flow for line in lines for flow in line.flows]
    assert figure(told, ZONE) == pytest.approx(1 - min(flows) / max(flows), rel=1e-6)
    mean = math.fsum(flows) / len(flows)
    emission = (1 - 1.27 * one.line.made) * min(flows) / mean
    assert figure(told, EVEN) == pytest.approx(emission, rel=1e-6)
    least = next(f for f in told.figures if f.label == "Least pressure at a dripper")
    pressures = [min(line.pressures) for line in lines]
    assert least.value == pytest.approx(min(pressures), rel=1e-9)
    assert least.note.startswith(f"line {pressures.index(min(pressures)) + 1} of {one.in_zone}")


@pytest.mark.parametrize("across", ["0 %", "3 %"])
def test_a_wider_manifold_is_never_less_even_on_level_ground_and_uphill(across):
    sizes = [f"pe100-sdr17/{size}" for size in (40, 50, 63, 75, 90)]
    # a choice of zones, so that each has the same lines
    evens = [case(**START, zones="1", across=across, manifold=size).emission for size in sizes]
    assert evens == sorted(evens) and evens[-1] > evens[0]


def test_more_pressure_never_gives_the_weakest_less():
    least = [
        min(case(**{**START, "pressure": f"{bar} bar"}, zones="1").solved.flows)
        for bar in (0.8, 1.0, 1.2, 1.5, 2.0, 3.0)
    ]
    assert least == sorted(least)


# Judged -----------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    "texts, finding, level",
    [
        (START, "zone-uneven", "care"),
        (MIDDLE, "zone-uneven", None),
        ({**START, "across": "5 %"}, "zone-uneven", "stop"),
        ({**START, "across": "5 %"}, "emission", "care"),
        ({**START, "zones": "1", "manifold": "hose/1"}, "emission", "stop"),
        (START, "manifold-fast", "care"),
        ({**START, "manifold": "pe100-sdr17/50"}, "manifold-fast", "note"),
        ({**START, "holds": "steady", "across": "10 %"}, "short", "stop"),
        ({**MIDDLE, "pressure": "4 bar", "manifold": "suction-hose/51"}, "over-rating", "stop"),
        ({**MIDDLE, "pressure": "3.4 bar", "across": "-10 %"}, "over-pressure", "care"),
        ({**START, "zones": "1", "flow": "100 L/min"}, "zone-flow", "stop"),
        ({**START, "flow": "2 L/min"}, "zone-flow", "stop"),
    ],
)
def test_what_is_wrong_is_found(texts, finding, level):
    assert found(**texts).get(finding) == level


def test_a_zone_wider_than_the_source_says_what_it_means():
    one = answer(**START, zones="1").whole()
    assert one.verdict.word == "Borderline"
    wide = answer(**{**START, "flow": "100 L/min"}, zones="1").whole()
    (said,) = [f.text for f in wide.findings if f.key == "zone-flow"]
    assert "the source gives 100" in said and "pressure falls" in said
    assert any(fix.text.startswith("Make 2 zones") for fix in wide.fixes)


def test_no_form_is_greener_than_its_zone():
    """Judged from the figures alone, as a reader could."""
    seen, rng = 0, random.Random(12)
    for _ in range(80):
        texts = {
            **FIELD, "fed": rng.choice(("start", "middle")), "flow": f"{rng.uniform(5, 300)} L/min",
            "across": f"{rng.uniform(-8, 8)} %", "length": f"{rng.uniform(5, 80)} m",
            "manifold": rng.choice(("hose/1", "pe100-sdr17/40", "pvc40/2", "steel/1")),
            "pressure": f"{rng.uniform(0.3, 3)} bar", "holds": rng.choice(("plain", "steady")),
        }  # fmt: skip
        state = State("metric", texts)
        one = work(SHEET, state, first=True).answer
        if one is None:
            continue
        varies, even = figure(one, ZONE), figure(one, EVEN)
        bad = varies > practice.FLOW_VARIES[0] * (1 + 1e-6) or even < practice.EMISSION[0] - 1e-6
        seen += bad
        assert not (bad and one.verdict.word == "Works"), state
        worst = varies > practice.FLOW_VARIES[1] * (1 + 1e-6)
        assert not worst or one.verdict.word == "Does not work"
    assert seen > 10


def said(**texts):
    return " ".join(fix.text for fix in answer(**texts).whole().fixes)


@pytest.mark.parametrize(
    "texts, words",
    [
        (START, "Feed the manifold in the middle"),
        (START, "Use 50 mm PE 100 SDR 17 for the manifold"),
        ({**START, "across": "5 %"}, "each with a manifold of"),
        ({**START, "across": "8 %", "pressure": "2 bar", "flow": "300 L/min",
          "manifold": "pe100-sdr17/75"}, "pressure-compensating"),
        ({**MIDDLE, "pressure": "3.2 bar", "manifold": "suction-hose/51"}, "for the manifold"),
    ],
)  # fmt: skip
def test_a_fix_that_works_is_offered(texts, words):
    assert words in said(**texts)


def test_each_fix_leaves_nothing_wrong():
    """Opened as a reader would."""
    for texts in (START, {**START, "across": "5 %"}, {**START, "zones": "1", "length": "60 m"}):
        for fix in answer(**texts).whole().fixes:
            again = answer(**fix.link.values)
            assert "Still" in fix.text or again.verdict.word == "Works", (texts, fix.text)


# Working, tables, picture -----------------------------------------------------------------------


@pytest.mark.parametrize(
    "texts", [START, MIDDLE, {**START, "zones": "3"}, {**MIDDLE, "across": "2 %"}]
)
def test_the_working_holds(texts):
    assert check_working(answer(**texts).whole()) > 8


def test_the_table_of_the_manifold_is_that_of_its_lines():
    one = case(**MIDDLE, across="2 %")
    table = next(
        t for t in answer(**MIDDLE, across="2 %").tables if t.title == "Along the manifold"
    )
    for name, along, start, flow in table.rows:
        at = int(name) - 1
        assert along == pytest.approx((at + 0.5) * 1.5)
        assert (start, flow) == (one.zone.starts[at], one.zone.flows[at])
    assert int(table.rows[table.marked[0]][0]) - 1 == one.zone.weak


@pytest.mark.parametrize(
    "texts", [START, MIDDLE, {**START, "across": "-6 %"}, {**START, "zones": "45"}]
)
def test_the_picture_shows_the_manifold_to_scale(texts):
    one, numbers = answer(**texts), case(**texts)
    (picture,) = one.drawings
    assert list(faults(picture)) == []
    shapes = {m.at: m for m in marks(picture) if isinstance(m, Stroke) and m.at}
    points, ground = shapes["manifold pressure"].points, shapes["manifold"].points[0][1]
    high = {round(ground - y, 6) for _, y in points}
    per_pa = max(high) / max(*numbers.zone.starts, numbers.pressure)
    assert min(high) == pytest.approx(min(numbers.zone.starts) * per_pa, rel=1e-4)
    assert len(points) == numbers.in_zone + 1
    bad = {"zone-uneven", "emission"} & {one.key for one in one.findings}
    assert (shapes["manifold pressure"].role == "bad") == bool(bad)


# Errors -----------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    "field, more",
    [
        ("manifold", {"across": "20 %", "zones": "1"}),  # climbs out of the pressure
        ("manifold", {"manifold": "hose/0.5", "zones": "1", "pressure": "0.02 bar"}),
        ("zones", {"area": "20000 m²", "zones": "1"}),  # more lines than are worked out
        ("across", {"across": "30 %"}),
    ],
)
def test_what_cannot_be_is_said_at_its_field(field, more):
    outcome = work(SHEET, State(texts={**START, **more}))
    assert outcome.answer is None and set(outcome.errors) == {field}
