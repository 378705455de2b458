"""One line, two sheets: the same pressure, speed and findings; every tenth against a solution
written here with another library."""

import math
import random

import fluids.friction
import pytest

from calc import practice, water
from calc.pipe import fittings, pipes
from calc.sheets.pipe.sheet import SHEET as PIPE
from calc.sheets.reach.sheet import SHEET as REACH
from calc.units import GRAVITY
from tests.rounds import some
from tests.sheets import asking
from tests.sheets.asking import figure

SHARED = ("Running pressure at the outlet", "Static pressure at the outlet", "Water speed",
          "Friction loss", "Maximum pressure in the pipe")  # fmt: skip
FOUND = ("over-rating", "too-hot", "outlet-over-limit", "no-water", "below-vacuum",
         "negative-pressure", "short", "fast")  # fmt: skip
KINDS = ("pe100-sdr11", "pe-sidr15", "pvc40", "pvc-sdr26", "cpvc11", "pex-in", "copper-l", "steel")
NO_VALVE = [part.key for part in fittings.PARTS if part.reducer is None]
# Pa at 40 L/min: common practice
FILTERS = {"filter": 0.15e5, "dirty": 0.7e5, "twin": 0.15e5 / 4, "strainer": 0.07e5}


def random_case(seed):
    """A line of 1 to 6 sections, half of them hot, with a filter or with a dip."""
    rng = random.Random(f"line {seed}")
    rows = []
    for _ in range(rng.randint(1, 6)):
        size = rng.choice(pipes.sizes(rng.choice(KINDS))[1:5])
        extra = rng.choice(list(FILTERS) if seed % 6 == 0 else NO_VALVE)
        rows.append((rng.uniform(2, 150), rng.uniform(-15, 15), size, rng.randint(0, 6), extra,
                     rng.choice([1.0, 1.0, rng.uniform(0.1, 1.0)])))  # fmt: skip
    texts = {
        "line": ";".join(
            f"{long!r} m,{up!r} m,{p.kind}/{p.size},{bends},{extra},{100 * share!r} %"
            for long, up, p, bends, extra, share in rows
        ),
        "pressure": f"{rng.uniform(1.0, 9.0)!r} bar",
        "flow": f"{rng.uniform(3.0, 60.0)!r} L/min",
        "wanted": f"{rng.uniform(0.2, 3.0)!r} bar",
        "water": f"{(rng.uniform(41, 60) if seed % 6 == 2 else rng.uniform(1, 25))!r} °C",
        "hottest": f"{(rng.uniform(20, 60) if seed % 6 == 2 else 20)!r} °C",
        "lowest": f"{rng.uniform(-60, 0)!r} m" if seed % 6 == 4 else "",
    }
    return texts, rows


def both(texts):
    return (
        asking.answer(REACH, **texts, use="own", most="?"),
        asking.answer(PIPE, **texts),
    )


@pytest.mark.parametrize("at", range(0, some(200), 10))
def test_two_sheets_of_one_line_give_the_same_figures_and_findings(at):
    for seed in range(at, at + 10):
        texts, _ = random_case(seed)
        reach, pipe = both(texts)
        for label in SHARED:
            assert figure(reach, label) == pytest.approx(figure(pipe, label), rel=1e-9), label
        said = [
            {(f.level, f.key, f.text, f.at) for f in found.findings if f.key in FOUND}
            for found in (reach, pipe)
        ]
        assert said[0] == said[1]


def solved(texts, rows):
    """Pressure at the end, Pa, by sections; None between Re 2040 and 4000, where no law holds."""
    flow, kelvin = (float(texts[key].split()[0]) for key in ("flow", "water"))
    flow, kelvin = flow / 60000, kelvin + 273.15
    weight, nu = water.density(kelvin) * GRAVITY, water.kinematic_viscosity(kelvin)
    head = 0.0
    for long, up, pipe, bends, extra, share in rows:
        bore, here = pipe.inside_m, flow * share
        speed = here / (math.pi / 4 * bore**2)
        re = speed * bore / nu
        if 2040 <= re < 4000:
            return None
        rough = pipe.roughness_m / bore
        factor = 64 / re if re < 2040 else fluids.friction.Colebrook(re, rough)
        rough_steel = 0.25 / math.log10(4.6e-5 / bore / 3.7) ** 2  # Crane TP-410, from memory
        lengths = {"stop": 340, "swing": 100, "gate": 8, "ball": 3}  # bores, Crane TP-410
        k = (30 * bends + lengths.get(extra, 0)) * rough_steel
        k += {"check": 5.0, "meter": 10.0}.get(extra, 0.0)  # spring check valve, water meter
        head += up + (factor * long / bore + k) * speed**2 / (2 * GRAVITY)
        head += FILTERS.get(extra, 0.0) / 9806.65 * (here / (40 / 60000)) ** 2
    return float(texts["pressure"].split()[0]) * 1e5 - weight * head


def test_every_tenth_is_that_of_a_solution_with_another_library():
    checked = 0
    for seed in range(0, 200, 5):
        texts, rows = random_case(seed)
        expected = solved(texts, rows)
        if expected is None:
            continue
        for found in both(texts):
            left = figure(found, "Running pressure at the outlet")
            # 0.01 Pa: the two add up the same terms in another order
            assert left == pytest.approx(expected, rel=1e-9, abs=0.01)
        checked += 1
    assert checked >= 20
    assert pytest.approx(40 / 60000, rel=1e-12) == practice.FILTER_FLOW


def test_one_pipe_by_length_is_the_same_line_as_one_row():
    texts = {"pressure": "4 bar", "flow": "20 L/min", "wanted": "1 bar", "hottest": "20 °C"}
    row = {"line": "140 m,12 m,pe100-sdr11/32,6,check"}
    reach, pipe = both({**texts, **row})
    asked = asking.answer(PIPE, **texts, elbow90="6", ball="0", spring="1")
    at = [p.size for p in pipes.sizes("pe100-sdr11")].index("32")
    left = asked.tables[0].rows[at][4]
    for found in (reach, pipe):
        assert figure(found, SHARED[0]) == pytest.approx(left, rel=1e-12)
