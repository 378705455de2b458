"""The pictures of one way: what a pressure leaves at the outlet, running and at rest."""

import re

import pytest

from calc import practice
from calc.page.form import work
from calc.page.shapes import Press, Words
from calc.page.state import State
from calc.sheets import sheet
from calc.sheets.pressure import sheet as pressure
from calc.sheets.reach import sheet as reach
from calc.units import Reader
from tests.page.pictures import HALF, faults, marks, named, off_scale, texts
from tests.sheets import drawn

PIPE = "pe100-sdr11/"
TWO = f"60 m,5 m,{PIPE}40;{{}} m,{{}} m,{PIPE}{{}}"
WAYS = {
    "example": State(),
    "example in us": State("us"),
    "too high": State("metric", {"climb": "26 m"}),
    "thin": State("metric", {"line": TWO.format(200, "6.5", 20)}),
    "dips": State("metric", {"line": "", "lowest": "-6 m", "highest": "16 m"}),
    "tank": State("metric", {"line": "", "pressure": "0 bar", "climb": "-25 m"}),
    "too much": State("metric", {"line": "", "flow": "60 L/min", "most": "18 L/min"}),
    "valve": State("metric", {"line": f"60 m,5 m,{PIPE}40;70 m,14 m,{PIPE}40,2,r10"}),
    "filter": State("metric", {"line": f"20 m,19 m,{PIPE}50,2,dirty", "flow": "45 L/min"}),
    "many": State("metric", {"line": ";".join([f"40 m,1 m,{PIPE}32"] * 12)}),
    "down": State("us", {"line": "", "climb": "-60 ft"}),
}
SLOPES = {
    "example": State(),
    "example in us": State("us"),
    "too high": State("metric", {"climb": "26 m"}),
    "dry": State("metric", {"climb": "60 m"}),
    "down": State("metric", {"climb": "-40 m"}),
    "flat": State("metric", {"climb": "0 m"}),
    "none": State("us", {"known": "0 psi", "climb": "-30 ft"}),
}
ALL = [
    *(pytest.param("reach", state, id=f"reach {name}") for name, state in WAYS.items()),
    *(pytest.param("pressure", state, id=f"pressure {name}") for name, state in SLOPES.items()),
]


@pytest.fixture
def way(monkeypatch):
    """A state of the reach sheet -> (case, drawing)."""
    return lambda state: _seen(reach, "reach", state, monkeypatch)


@pytest.fixture
def slope(monkeypatch):
    """A state of the pressure sheet -> (standing water, drawing)."""
    return lambda state: _seen(pressure, "pressure", state, monkeypatch)


def _seen(module, key, state, monkeypatch):
    draw, seen = module.draw, []

    def watched(case, reader):
        seen.append((case, draw(case, reader)))
        return seen[0][1]

    monkeypatch.setattr(module, "draw", watched)
    assert work(sheet(key), state).errors == {}
    monkeypatch.undo()
    return seen[0]


def _drawing(key, state):
    (drawing,) = work(sheet(key), state).answer.drawings
    return drawing


def _said(drawing):
    return " ".join(
        one.text for one in marks(drawing) if isinstance(one, Words) and one.role == "bad"
    )


# To scale and legible -------------------------------------------------------------------------


@pytest.mark.parametrize("name", WAYS)
def test_the_way_is_to_scale(way, name):
    case, drawing = way(WAYS[name])
    found, line = named(drawing), case.line
    known = []
    points, still = line.points(case.need.flow_m3s), line.points(0.0)
    for at, (running, static) in enumerate(zip(points, still, strict=True)):
        if f"outlet line.{at}" in found:
            known.append((running.height_m, float(found[f"outlet line.{at}"]["cy"])))
        for which, point in (("before", static), ("after", running)):
            if f"{which} line.{at}" in found:
                water = point.height_m + max(0.0, point.pressure_pa) / line.weight
                known.append((water, float(found[f"{which} line.{at}"]["y"])))
    if "pump" in found:
        known.append((0.0, float(found["pump"]["y"]) + float(found["pump"]["height"])))
    else:
        known.append((0.0, float(found["water"]["y"])))
    assert len(known) >= 3 and off_scale(known) <= HALF


@pytest.mark.parametrize("name", SLOPES)
def test_the_slope_is_to_scale(slope, name):
    state, drawing = slope(SLOPES[name])
    found = named(drawing)
    known = []
    for key, height in (("gauge", 0.0), ("outlet", state.climb)):
        known.append((height, float(found[f"outlet {key}"]["cy"])))
        water = height + max(0.0, state.at(height)) / state.weight
        known.append((water, float(found[f"after {key}"]["y"])))
    assert len(known) == 4 and off_scale(known) <= HALF


@pytest.mark.parametrize("name", [name for name in SLOPES if name != "dry"])
def test_still_water_is_as_high_everywhere(slope, name):
    state, drawing = slope(SLOPES[name])
    if state.left <= 0:
        return
    tops = [float(one["y"]) for name, one in named(drawing).items() if name.startswith("after ")]
    assert max(tops) - min(tops) <= HALF and len(tops) >= 2


@pytest.mark.parametrize("key, state", ALL)
def test_an_awkward_way_is_legible(key, state):
    assert list(faults(_drawing(key, state))) == []


@pytest.mark.parametrize("key", ["reach", "pressure"])
def test_ways_at_random_are_legible(key):
    asked = drawn.states(sheet(key), 400)
    answered = [one.answer for one in (work(sheet(key), state) for state in asked) if one.answer]
    assert len(answered) > 40
    for answer in answered:
        (drawing,) = answer.drawings
        assert list(faults(drawing)) == []


# What it says ---------------------------------------------------------------------------------


@pytest.mark.parametrize(
    "name, said",
    [
        ("too high", "climb of 26 m uses"), ("thin", "thin pipe here loses"),
        ("tank", "this pipe loses"), ("too much", "pump gives 18 L/min at most"),
        ("valve", "valve is set too low"), ("filter", "filter loses"),
        ("many", "pipes lose"),
    ],
)  # fmt: skip
def test_the_cause_is_marked(way, name, said):
    _, drawing = way(WAYS[name])
    assert said in _said(drawing).replace("\u00a0", " ")
    assert said.replace(" here", "") in drawing.alt.replace("\u00a0", " ")


@pytest.mark.parametrize("name", ["example", "example in us", "down"])
def test_where_it_reaches_nothing_is_marked(way, name):
    assert _said(way(WAYS[name])[1]) == ""


@pytest.mark.parametrize("name", WAYS)
def test_an_outlet_is_weak_in_the_picture_as_in_the_figures(way, name):
    case, drawing = way(WAYS[name])
    need = case.need
    level = practice.enough(case.line.left(need.flow_m3s), need.works_pa, need.comfortable_pa)
    (outlet,) = [one for one in drawing.shapes if isinstance(one, Press)]
    weak = any(word in outlet.name for word in ("too weak", "no water"))
    assert weak == (level == "stop")


@pytest.mark.parametrize("system", ["metric", "us"])
def test_the_outlet_says_its_pressure_at_rest_and_running(way, system):
    case, drawing = way(State(system))
    reader = Reader(system)
    said = " ".join(f"{one.lead} {one.text}" for one in marks(drawing) if isinstance(one, Words))
    for flow in (0.0, case.need.flow_m3s):
        assert reader.number(case.line.left(flow), "pressure", 2) in said


@pytest.mark.parametrize("name", SLOPES)
def test_the_heights_between_are_round_and_in_order(slope, name):
    state, drawing = slope(SLOPES[name])
    said = " ".join(texts(drawing)).replace("\u00a0", " ")
    between = re.findall(r"(?<!of )(?<!\S)(−?[\d.]+) (?:m|ft)(?!\S)", said)
    numbers = [float(one.replace("−", "-")) for one in between]
    assert numbers == sorted(numbers, key=abs)
    climb = (
        Reader("us" if name in ("none", "example in us") else "metric")
        .unit("length")
        .from_si(state.climb)
    )
    assert all(abs(one) < abs(climb) for one in numbers)
    assert numbers or state.climb == 0
