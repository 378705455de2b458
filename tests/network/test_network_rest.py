"""Awkward supplies: loops, several sources, check valves and reducers set against each other."""

import random

import pytest

from calc.network.links import law_of, set_head
from calc.network.outlets import CompensatingDripper, FixedFlow, LimitedShower, Orifice, Outlet
from calc.network.parts import Level, Network, Place, PumpSet, Reducer, Run
from calc.network.solve import solve
from calc.network.state import STILL
from calc.pipe import pipes
from calc.pump import invented as pumps_demo

LPM = 1e-3 / 60
SIZES = pipes.sizes("pe100-sdr11")[:7]
LAWS = (
    LimitedShower(12 * LPM, 1.5e5, 8 * LPM),
    FixedFlow(4 * LPM),
    CompensatingDripper(2e-3 / 3600, 0.5e5, 4e5),
)
SEEPS = 1e-9  # m3/s, more than seeps past any shut valve here


def awkward(seed):
    """A random supply of up to 40 places with nothing kept apart that might fight."""
    rng = random.Random(seed)
    count = rng.randrange(3, 40)
    places = [Place("in", 0.0), *(Place(f"p{i}", rng.uniform(-5, 20)) for i in range(count))]
    levels, links = (
        [Level("well", rng.uniform(-6, 0))],
        [Run("s", "well", "in", SIZES[3], 5.0, 2.0)],
    )
    pump = rng.choice(list(pumps_demo.PUMPS.values()))
    links.append(PumpSet("pump", "in", "p0", pump, rng.choice((None, rng.uniform(1e5, 5e5)))))
    reduced = set(rng.sample(range(1, count), min(count - 1, rng.choice((0, 1, 3)))))
    for i in range(1, count):
        ends = (f"p{rng.randrange(max(0, i - 6), i)}", f"p{i}")
        if i in reduced:
            links.append(Reducer(f"r{i}", *ends, rng.uniform(0.3e5, 3e5), 20 * LPM, 1.0))
        else:
            links.append(Run(f"r{i}", *ends, rng.choice(SIZES), rng.uniform(0.5, 150), 2.0))
    for k in range(rng.choice((0, 1, 3, 8))):
        i, j = rng.sample(range(count), 2)
        check = rng.random() < 0.3
        links.append(Run(f"l{k}", f"p{i}", f"p{j}", rng.choice(SIZES), 20.0, 1.0, check))
    for k in range(rng.choice((0, 1, 2))):
        levels.append(Level(f"t{k}", rng.uniform(0, 40), True))
        end, check = f"p{rng.randrange(count)}", rng.random() < 0.5
        links.append(Run(f"tank{k}", f"t{k}", end, rng.choice(SIZES), 60.0, 1.0, check))
    taps = (*LAWS, Orifice(rng.uniform(2, 20) * LPM, 1e5))
    open_share = rng.choice((0.0, 0.7, 1.0))
    outlets = [
        Outlet(f"o{i}", f"p{i}", rng.choice(taps), rng.choice((1, 3)), rng.random() < open_share)
        for i in range(count)
    ]
    return Network(tuple(places), tuple(levels), tuple(links), tuple(outlets))


CASES = range(160)


def lost_or_won(solution):
    """Largest imbalance of any place, m3/s, counted anew from flows and draws."""
    over = dict.fromkeys(solution.heads, 0.0)
    for link in solution.network.links:
        over[link.start] += solution.flows[link.name]
        over[link.end] -= solution.flows[link.name]
    for outlet in solution.network.outlets:
        over[outlet.node] += solution.draws[outlet.name]
    return max(abs(over[place.name]) for place in solution.network.places)


@pytest.mark.parametrize("seed", CASES)
def test_every_awkward_supply_comes_to_rest_with_its_water_in_balance(seed):
    solution = solve(awkward(seed))
    through = sum(solution.draws.values()) + sum(map(abs, solution.supplied.values()))
    assert lost_or_won(solution) <= max(1e-9 * through, STILL)


@pytest.mark.parametrize("seed", CASES)
def test_every_part_passes_what_the_heads_at_its_ends_say(seed):
    solution = solve(awkward(seed))
    through = sum(solution.draws.values()) + sum(map(abs, solution.supplied.values()))
    for link in solution.network.links:
        start, end = solution.heads[link.start], solution.heads[link.end]
        flow, held = solution.flows[link.name], set_head(link, solution.network)
        law = law_of(link, solution.network)
        # heads carry rounding of 1e-14 m and the settling tolerance of 1e-9 m
        low, high = law.flow(start - end - 1e-8)[0], law.flow(start - end + 1e-8)[0]
        slack = 1e-7 * through + SEEPS
        if held is None or end < held - 1e-6:
            assert low - slack <= flow <= high + slack
        elif end > held + 1e-6:
            assert abs(flow) <= SEEPS
        else:
            assert -SEEPS <= flow <= high + slack


@pytest.mark.parametrize("seed", CASES)
def test_every_outlet_draws_what_its_pressure_says(seed):
    solution = solve(awkward(seed))
    for outlet in solution.network.outlets:
        pressure = solution.pressure(outlet.node)
        wanted = outlet.flow_and_slope(pressure)[0] if outlet.open else 0.0
        assert solution.draws[outlet.name] == pytest.approx(wanted, rel=1e-7, abs=1e-11)
