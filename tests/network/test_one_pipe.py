"""One way from the pump to one outlet: the network and one filled line give the same figures.

Every tenth site also against a solution written here with ``fluids``.
"""

import math
import random
from dataclasses import replace

import pytest
from fluids.friction import Colebrook
from scipy.optimize import brentq

from calc import suction
from calc.network.findings import npsh_available, ratings
from calc.network.parts import Run
from calc.network.state import Solution
from calc.pipe import friction, pipes
from calc.pipe.line import Line, Section
from calc.pump.invented import PUMPS
from calc.site.supply import INLET, PUMP, SUCTION, OutletRow, SectionRow, Source, Supply, section_of
from calc.water import density, kinematic_viscosity

SITES = range(500)
CLOSE = 1e-9
GRAVITY = 9.80665  # m/s2, as the site's
LPM = 1e-3 / 60
KINDS = ("pe100-sdr11", "pvc40", "copper-l", "pe-sidr15")
PARTS = ("none", "none", "filter", "dirty", "meter", "check", "ball", "r10", "r20", "r30")


def site(seed: int) -> Supply:
    """One to four sections to one steady draw; in half of them altitude, heat, filter or dip."""
    rng = random.Random(seed)
    rows, height = [], 0.0
    plain = seed % 2
    for at in range(rng.randint(1, 4)):
        length = rng.uniform(2, 90)
        height += rng.uniform(-6, 10) if plain else rng.uniform(-20, 15)
        pipe = rng.choice(pipes.sizes(rng.choice(KINDS))[1:6])
        part = "none" if plain else rng.choice(PARTS)
        start, end = (PUMP if at == 0 else f"p{at}"), f"p{at + 1}"
        rows.append(
            SectionRow(start, end, max(length, abs(height)), height, pipe, rng.randint(0, 6), part)
        )
    source = Source(
        pump=PUMPS["large"],
        set_pa=rng.uniform(2e5, 5e5),
        lift_m=rng.uniform(-3, 2),
        suction_length_m=8.0,
        suction_pipe=pipes.pipe("pe100-sdr11", "63"),
        temperature_k=288.15 if plain else rng.uniform(275, 310),
        altitude_m=0.0 if plain else rng.uniform(0, 2500),
        hottest_k=None if plain else rng.uniform(290, 313),
    )
    outlet = OutletRow("draw", rows[-1].end, "steady", 1, 1, rng.uniform(2, 30) * LPM, 1e3)
    return Supply(source, tuple(rows), (outlet,))


def line(supply: Supply) -> Line:
    """The same as one ``Line``, from its rows alone."""
    sections, height = [], 0.0
    for row in supply.sections:
        sections.append(section_of(row, row.height_m - height, 1.0, row.end))
        height = row.height_m
    source = supply.source
    return Line(tuple(sections), source.set_pa, source.temperature_k, hottest_k=source.hottest_k)


def solved(supply: Supply) -> Solution:
    built = supply.built()
    return built.solve(built.after)


def differences(solution: Solution, one: Line) -> list[str]:
    """What the two do not agree on: pressures, speeds, ratings."""
    flow, found = solution.draws["draw"], []
    scale = max(one.start_pa, 1e5)
    for point in one.points(flow)[1:]:
        if abs(solution.pressure(point.name) - point.pressure_pa) > CLOSE * scale:
            found.append(f"pressure at {point.name}")
    runs = [one for one in solution.network.links if isinstance(one, Run) and one.name != SUCTION]
    for section, run in zip(one.sections, runs, strict=True):
        speed = friction.velocity(solution.flows[run.name], run.pipe.inside_m)
        if not math.isclose(speed, one.speed_in(section, flow), rel_tol=CLOSE):
            found.append(f"speed in {run.name}")
    theirs = {(t.kind, t.row) for t in ratings(solution.network)}
    for stress, run in zip(one.stresses(), runs, strict=True):
        over = stress.over and not stress.hot
        if over != (("over-rating", run.name) in theirs):
            found.append(f"rating of {run.name}")
    return found


def running(supply: Supply) -> bool:
    """Whether water arrives and the pump holds its pressure: what a line from a held start says."""
    solution = solved(supply)
    return solution.pump("the pump").held and solution.outlet("draw").pressure_pa > 2e3


def test_most_of_the_sites_run():
    assert sum(running(site(seed)) for seed in SITES) > 350


@pytest.mark.parametrize("block", range(10))
def test_network_and_line_agree_on_pressure_speed_and_rating(block):
    for seed in SITES[50 * block : 50 * block + 50]:
        supply = site(seed)
        solution = solved(supply)
        if solution.pump("the pump").held and solution.draws["draw"] > 0:
            assert differences(solution, line(supply)) == [], seed


@pytest.mark.parametrize("extra", [0.5])
def test_a_line_with_a_k_of_its_own_is_found_out(extra):
    more = replace(friction.BY_KEY["exit"], k=extra)
    found = 0
    for seed in SITES[:40]:
        supply = site(seed)
        if not running(supply):
            continue
        one = line(supply)
        first = replace(one.sections[0], fittings=(*one.sections[0].fittings, (more, 1)))
        reduced = any(section.reducer for section in one.sections)
        other = replace(one, sections=(first, *one.sections[1:]))
        found += bool(differences(solved(supply), other)) or reduced
        assert reduced or differences(solved(supply), other), seed
    assert found > 20


# Against fluids -----------------------------------------------------------------------------------


def elbow_k(bore_m: float) -> float:
    """30 f_T, f_T of fully rough flow in clean steel: Crane TP-410, written anew."""
    return 30 * (2 * math.log10(3.7 * bore_m / 4.6e-5)) ** -2


def loss_by_fluids(row: SectionRow, flow: float, nu: float) -> float:
    """Head lost in a section's pipe and bends, m."""
    bore = row.pipe.inside_m
    speed = flow / (math.pi / 4 * bore**2)
    re = speed * bore / nu
    rel = row.pipe.roughness_m / bore

    def f_re2(at):
        return 64 * at if at <= 2040 else Colebrook(at, rel) * at * at

    value = f_re2(re)
    if 2040 < re < 4000:  # the straight bridge of ``friction.design_factor``
        value = f_re2(2040) + (f_re2(4000) - f_re2(2040)) * (re - 2040) / (4000 - 2040)
    factor = value / re**2
    k = row.bends * elbow_k(bore)
    return (factor * row.length_m / bore + k) * speed**2 / (2 * GRAVITY)


@pytest.mark.parametrize("seed", [seed for seed in SITES if seed % 10 == 1])
def test_every_tenth_agrees_with_fluids(seed):
    supply = site(seed)  # odd seeds are plain pipe and bends
    if not running(supply):
        pytest.skip("no water arrives")
    kelvin = supply.source.temperature_k
    weight, nu = density(kelvin) * GRAVITY, kinematic_viscosity(kelvin)

    def left(flow):
        lost = sum(loss_by_fluids(row, flow, nu) for row in supply.sections)
        return supply.source.set_pa - weight * (supply.sections[-1].height_m + lost)

    wanted = supply.outlets[0].flow_m3s

    def spare(flow):  # a steady draw takes its flow from 1 kPa up
        return left(flow) - 1e3 * (flow / wanted) ** 2

    flow = wanted if left(wanted) >= 1e3 else brentq(spare, 1e-9, wanted, xtol=1e-16)
    solution = solved(supply)
    assert solution.draws["draw"] == pytest.approx(flow, rel=1e-7)
    # 1e-7: the two Colebrook solvers and fittings' f_T agree to about 1e-9 of the loss
    assert solution.outlet("draw").pressure_pa == pytest.approx(left(flow), rel=1e-6, abs=1.0)


# The suction side ---------------------------------------------------------------------------------


def test_npsh_at_the_pump_is_that_of_a_suction_line_with_its_foot_valve_and_bend():
    for seed in SITES[:60]:
        supply = site(seed)
        solution, source = solved(supply), supply.source
        flow = solution.flows["the pump"]
        if flow <= 1e-6:
            continue
        counted = tuple((friction.BY_KEY[key], 1) for key in ("foot", "elbow90"))
        pipe = Section(source.suction_pipe, source.suction_length_m, source.lift_m, counted)
        drawn = Line((pipe,), 0.0, source.temperature_k)
        place = suction.place(source.altitude_m, source.temperature_k)
        wanted = suction.npsh_available(place, source.lift_m, drawn.loss(flow))
        assert npsh_available(solution, INLET) == pytest.approx(wanted, rel=CLOSE, abs=1e-8)
