"""Lines on a manifold: against all equations solved at once, how even a zone is, how fast."""

import math

import numpy
import pytest
from scipy import optimize

from calc.drip import lateral, manifold
from calc.drip.lateral import Dripper
from calc.errors import InputError, RangeError
from tests.steps import lines

WEIGHT, THIN = 9798.0, 1.1e-6  # Pa/m, m2/s
PLAIN = Dripper(2e-3 / 3600, 1e5)
STEADY = Dripper(2e-3 / 3600, 0.7e5, compensating=True)
APART, ROWS = 0.3, 1.0  # m, from dripper to dripper, from line to line


def inflow(most, outlets=60, slope=0.0, bore=13.6e-3, dripper=PLAIN):
    law = lateral.smooth_law(bore, THIN)
    parts = [APART] * outlets, [APART * slope] * outlets
    return manifold.inflow(most, *parts, WEIGHT, law, dripper.at)


def zone(start=1e5, count=10, inlet=0.0, across=0.0, wide=26e-3, **line):
    most = start + WEIGHT * abs(across) * count * ROWS
    law = lateral.smooth_law(wide, THIN)
    return manifold.subunit(start, count, ROWS, inlet, across, WEIGHT, law, inflow(most, **line))


# Against another's solution -------------------------------------------------------------------


def smooth(flow, bore, length):
    """Head lost, m, written again here."""
    flow = numpy.maximum(flow, 1e-15)
    speed = flow / (math.pi / 4 * bore**2)
    re = speed * bore / THIN
    factor = numpy.maximum.reduce([64 / re, 0.3164 * re**-0.25, 0.184 * re**-0.2])
    return factor * length / bore * speed**2 / 2 / 9.80665


def all_at_once(start, count, outlets, slope, across, middle):
    """bar at each take-off and at each dripper, all of them unknowns of scipy's root finder."""

    def unbalanced(bars):
        heads, drips = bars[:count], bars[count:].reshape(count, outlets)
        flows = 2e-3 / 3600 * numpy.sqrt(numpy.maximum(drips, 1e-9))
        carried = numpy.cumsum(flows[:, ::-1], axis=1)[:, ::-1]
        before = numpy.column_stack([heads, drips[:, :-1]])
        lost = smooth(carried, 13.6e-3, APART) + slope * APART
        rest = [(before - drips - WEIGHT / 1e5 * lost).ravel()]
        half = count // 2 if middle else 0
        lines = flows.sum(axis=1)
        for at, rise in ((range(half, count), across), (range(half - 1, -1, -1), -across)):
            places = list(at)
            if not places:
                continue
            taken = numpy.cumsum(lines[places][::-1])[::-1]
            long = numpy.full(len(places), ROWS)
            long[0] = 0.0 if middle and count % 2 and places[0] == half else ROWS / 2
            if middle and count % 2 and places[0] == half - 1:
                long[0] = ROWS
            there = numpy.concatenate([[start / 1e5], heads[places][:-1]])
            lost = smooth(taken, 26e-3, long) + rise * long
            rest.append(there - heads[places] - WEIGHT / 1e5 * lost)
        return numpy.concatenate(rest)

    solved = optimize.root(unbalanced, numpy.full(count * (outlets + 1), start / 1e5), tol=1e-12)
    assert numpy.abs(unbalanced(solved.x)).max() < 1e-11  # bar
    return solved.x[:count], solved.x[count:].reshape(count, outlets)


@pytest.mark.parametrize(
    "start, count, outlets, slope, across, middle",
    [
        (1e5, 6, 20, 0.0, 0.0, False),
        (1.2e5, 8, 15, 0.02, 0.03, False),
        (0.8e5, 8, 15, -0.03, -0.05, False),
        (1e5, 7, 15, 0.0, 0.04, True),
        (1e5, 8, 15, 0.01, 0.0, True),
    ],
)
def test_a_zone_is_that_of_all_its_equations_solved_at_once(
    start, count, outlets, slope, across, middle
):
    """To 1e-7 of each pressure: the curve through some lines is off by less than 1e-8 here."""
    heads, drips = all_at_once(start, count, outlets, slope, across, middle)
    inlet = manifold.MIDDLE if middle else manifold.START
    found = zone(start, count, inlet, across, outlets=outlets, slope=slope)
    assert numpy.array(found.starts) / 1e5 == pytest.approx(heads, rel=1e-7)
    for head, line in zip(found.starts, drips, strict=True):
        solved = found.inflow.solved(head)
        assert numpy.array(solved.pressures) / 1e5 == pytest.approx(line, rel=1e-7)
    least, most = found.range
    assert least / 1e5 == pytest.approx(drips.min(), rel=1e-7)
    assert most / 1e5 == pytest.approx(drips.max(), rel=1e-7)
    assert found.worst == numpy.unravel_index(drips.argmin(), drips.shape)
    flows = numpy.sqrt(drips)
    assert found.variation == pytest.approx(1 - flows.min() / flows.max(), abs=1e-7)
    emission = (1 - 1.27 * 0.05) * flows.min() / flows.mean()
    assert found.emission(0.05) == pytest.approx(emission, rel=1e-7)


# The curve of what a line takes ---------------------------------------------------------------

LINES = [
    {}, {"outlets": 300}, {"slope": 0.05}, {"slope": -0.05}, {"outlets": 1}, {"bore": 0.008},
    {"dripper": STEADY}, {"dripper": STEADY, "outlets": 300}, {"dripper": STEADY, "slope": 0.04},
]  # fmt: skip


@pytest.mark.parametrize("line", LINES)
def test_the_curve_is_near_the_line_worked_out(line):
    """To 1e-3 anywhere: friction has corners where flow turns rough.  To 1e-2 with compensating
    drippers, all of which may begin to hold their flow between two lines worked out."""
    allowed = 1e-2 if "dripper" in line else 1e-3
    curve = inflow(2e5, **line)
    low = max(curve.least * 1.01, 2e3)
    for at in range(101):
        start = low + (1.99e5 - low) * at / 100
        assert curve.at(start) == pytest.approx(curve.solved(start).flow, rel=allowed)


@pytest.mark.parametrize("line", LINES)
def test_it_is_far_nearer_where_more_lines_are_worked_out(line):
    """To 1e-6 over a fifth of the pressure; to 1e-5 where compensating drippers begin to hold."""
    curve = inflow(2e5, **line).closer(0.9e5, 1.1e5)
    allowed = 1e-5 if "dripper" in line else 1e-6
    for at in range(41):
        start = 0.9e5 + 500 * at
        assert curve.at(start) == pytest.approx(curve.solved(start).flow, rel=allowed)


@pytest.mark.parametrize("line", LINES)
def test_more_pressure_never_gives_a_line_less(line):
    curve = inflow(2e5, **line)
    flows = [curve.at(start) for start in range(0, 250_000, 250)]
    assert flows == sorted(flows) and flows[-1] > flows[0] >= 0.0


def test_a_line_begins_with_the_pressure_asked_for():
    for start in (5e3, 4e4, 1.9e5):
        assert inflow(2e5).solved(start).start_pa == pytest.approx(start, rel=1e-10)


def test_a_line_beyond_those_worked_out_is_refused():
    curve = inflow(1e5)
    with pytest.raises(RangeError):
        curve.solved(3e5)
    with pytest.raises(RangeError):
        curve.closer(0.9e5, 3e5)
    with pytest.raises(RangeError):
        manifold.subunit(5e5, 4, ROWS, 0.0, 0.0, WEIGHT, lateral.smooth_law(0.05, THIN), curve)


def test_the_error_is_that_of_the_curve_where_it_was_used():
    found = zone(outlets=300, dripper=STEADY, count=6)
    pairs = zip(found.starts, found.flows, strict=True)
    off = [abs(flow / found.inflow.solved(start).flow - 1) for start, flow in pairs]
    assert 0 < found.error == max(off) < 1e-5


# Closed forms and limits ----------------------------------------------------------------------


def test_one_line_on_a_wide_manifold_is_the_line_alone():
    found = zone(count=1, wide=0.5)
    alone = lateral.step_by_step(
        1e5, [APART] * 60, [0.0] * 60, WEIGHT, lateral.smooth_law(13.6e-3, THIN), PLAIN.at
    )
    assert found.flow == pytest.approx(alone.flow, rel=1e-7)
    assert found.weakest.flows == pytest.approx(alone.flows, rel=1e-6)
    assert found.variation == pytest.approx(alone.variation, abs=1e-6)


def test_water_and_energy_balance_along_the_manifold():
    found, law = zone(across=0.02, inlet=0.5, count=9), lateral.smooth_law(26e-3, THIN)
    for way, rise in ((range(4, 9), 0.02), (range(3, -1, -1), -0.02)):
        pressure, left = 1e5, math.fsum(found.flows[at] for at in way)
        for at in way:
            length = 0.0 if at == 4 else ROWS
            pressure -= WEIGHT * (law(left, length) + rise * length)
            assert found.starts[at] == pytest.approx(pressure, rel=1e-9)
            left -= found.flows[at]


def test_a_level_manifold_fed_in_the_middle_is_the_same_both_ways():
    found = zone(inlet=manifold.MIDDLE, count=11)
    assert found.starts == pytest.approx(found.starts[::-1], rel=1e-10)
    assert found.strong == 5


def test_fed_at_the_far_end_is_the_mirror_of_the_near_one():
    near, far = zone(across=0.03), zone(inlet=manifold.END, across=-0.03)
    assert far.starts == pytest.approx(near.starts[::-1], rel=1e-10)


def test_equal_lines_lose_christiansens_share_along_the_manifold():
    """To 3 %: his formula against the sum, lines that give within 1 % of one another."""
    found = zone(dripper=STEADY, start=2e5, count=30, wide=0.04)
    law = lateral.smooth_law(0.04, THIN)
    # the first line is half a step from the feed
    share = lateral.christiansen(30, 1.75, 0.5)
    whole = law(found.flow, 29.5 * ROWS)
    assert (2e5 - found.starts[-1]) / WEIGHT == pytest.approx(share * whole, rel=0.03)


def test_many_drippers_at_a_plant_even_out_how_they_differ():
    found = zone()
    assert found.emission(0.1, together=4) == pytest.approx(
        found.emission(0.0) * (1 - 1.27 * 0.1 / 2)
    )
    assert found.emission(0.9) == 0.0


# What must never fall -------------------------------------------------------------------------

BORES = (0.016, 0.0204, 0.026, 0.0326, 0.0408, 0.0514)


@pytest.mark.parametrize("inlet", [manifold.START, manifold.MIDDLE])
@pytest.mark.parametrize("dripper", [PLAIN, STEADY], ids=["plain", "compensating"])
def test_a_wider_manifold_is_never_less_even_on_level_ground(inlet, dripper):
    # so long that compensating drippers lack pressure on the narrow ones
    found = [zone(inlet=inlet, wide=bore, dripper=dripper, count=50) for bore in BORES]
    evens = [one.emission(0.05) for one in found]
    assert all(more >= less - 1e-9 for less, more in zip(evens, evens[1:], strict=False))
    assert evens[-1] > evens[0] + 0.01


def test_a_wider_manifold_is_never_less_even_uphill():
    evens = [zone(wide=bore, across=0.03, start=1.5e5).emission(0.05) for bore in BORES]
    assert evens == sorted(evens)


def test_downhill_a_narrow_manifold_can_be_more_even():
    """The exception: its friction balances the fall."""
    narrow, wide = (zone(wide=bore, across=-0.06, count=16) for bore in (0.026, 0.06))
    assert narrow.emission(0.05) > wide.emission(0.05)


@pytest.mark.parametrize("slope", [0.0, 0.03])
def test_wider_lines_are_never_less_even_on_level_ground_and_uphill(slope):
    """On a manifold that is wide enough: wider lines also draw more from it."""
    bores = (0.010, 0.0136, 0.0176, 0.0212, 0.028)
    found = [zone(bore=b, slope=slope, start=1.5e5, wide=0.1, outlets=90) for b in bores]
    evens = [one.emission(0.05) for one in found]
    assert evens == sorted(evens) and evens[-1] > evens[0]


def test_downhill_narrow_lines_can_be_more_even():
    """The exception: their friction balances the fall."""
    narrow, wide = (
        zone(bore=b, slope=-0.05, wide=0.1, outlets=120).emission(0.05) for b in (0.0136, 0.028)
    )
    assert narrow > wide


@pytest.mark.parametrize("across", [-0.04, 0.0, 0.03])
@pytest.mark.parametrize("dripper", [PLAIN, STEADY], ids=["plain", "compensating"])
def test_more_pressure_never_lowers_the_least_flow(across, dripper):
    starts = [0.6e5 + 0.1e5 * at for at in range(15)]
    least = [min(zone(start=p, across=across, dripper=dripper).weakest.flows) for p in starts]
    # to the curve's own error
    assert all(more >= less * (1 - 1e-7) for less, more in zip(least, least[1:], strict=False))
    assert least[-1] > least[0]


def test_more_lines_on_a_manifold_never_give_the_last_more():
    least = [min(zone(count=count).weakest.flows) for count in (2, 5, 10, 20, 40)]
    assert least == sorted(least, reverse=True)


# Refused --------------------------------------------------------------------------------------


def test_a_manifold_that_climbs_out_of_its_pressure_is_said():
    with pytest.raises(InputError, match="does not carry water"):
        zone(start=2e4, across=0.2, count=20)


def test_lines_that_climb_out_of_their_pressure_are_said():
    with pytest.raises(InputError, match="each line's end"):
        zone(start=2e4, slope=0.1, across=0.05, count=10)


@pytest.mark.parametrize("changed", [{"count": 0}, {"inlet": 1.5}, {"inlet": -0.1}])
def test_what_cannot_be_is_refused(changed):
    with pytest.raises(RangeError):
        zone(**changed)


# How fast -------------------------------------------------------------------------------------


def test_ten_lines_of_a_hundred_drippers_take_little_more_than_one():
    def judged(count):
        found = zone(outlets=100, count=count, across=0.01)
        return found.emission(0.05) > 0.5 and found.range[0] > 0

    well, taken = lines(lambda: judged(10))
    assert well
    assert taken < 1.5 * lines(lambda: judged(1))[1]
