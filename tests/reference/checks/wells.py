"""Wells: a published pumping test, the exponential integral, wells integrated and simulated."""

import numpy as np
from scipy.integrate import solve_ivp
from scipy.special import exp1

from calc import recovery, well, well_yield
from calc.units import DAY, HOUR, LITRE
from tests.reference.checks.check import (
    INDEPENDENT,
    LIBRARY,
    MEMORY,
    PUBLISHED,
    give,
    library,
    part,
    table,
)  # fmt: skip

SUBJECT = "Wells"
SCIPY = library("scipy")
KORENDIJK_TEST = "Kruseman and de Ridder, pumping test of Oude Korendijk"
INTEGRATED = "A well's balance of volume, integrated in the tests with scipy"

# minutes, m: table 3.1 of Kruseman and de Ridder (1990), the piezometer 30 m away, 788 m3 a day;
# read in the data of the ttim library
KORENDIJK = (
    (1.0, 0.23), (1.4, 0.28), (1.9, 0.33), (2.33, 0.36), (2.8, 0.39), (3.36, 0.42), (4.0, 0.45),
    (5.35, 0.50), (6.8, 0.54), (8.3, 0.57), (8.7, 0.58), (10.0, 0.60),
)  # fmt: skip
FLOW = 788 / DAY


def _line():
    times, levels = zip(*KORENDIJK, strict=True)
    return recovery.line_through([60 * one for one in times], levels)


def _metres_a_decade():
    """By numpy, m for each factor of ten in time."""
    times, levels = (np.array(one) for one in zip(*KORENDIJK, strict=True))
    return np.polyfit(np.log10(times), levels, 1)[0]


def _drawn(minutes):
    """m by Theis, from the transmissivity and storage that the test's own line gives."""
    made = recovery.transmissivity(FLOW, _line())
    return recovery.drawdown(FLOW, made, recovery.storage(made, _line(), 30.0), 30.0, 60 * minutes)


PUMPED = (
    *table(SUBJECT, "recovery", "Oude Korendijk: drawdown after {0} minutes", KORENDIJK[5:], _drawn,
           source=KORENDIJK_TEST, kind=PUBLISHED, near=give(0.02), unit="m", place="table 3.1",
           why="a straight line through readings to 1 cm, drawn before the ground above leaks"),
    *table(SUBJECT, "recovery", "Oude Korendijk: fall of the line for a factor of ten", [()],
           lambda: _line().slope, source=library("numpy"), kind=LIBRARY, near=part(1e-9), unit="m",
           against=_metres_a_decade, place="polyfit"),
    # their line was drawn by eye: 5 % for its slope, and what follows for its start
    *table(SUBJECT, "recovery", "Oude Korendijk: transmissivity by the straight line", [(385.0,)],
           lambda: recovery.transmissivity(FLOW, _line()) * DAY, source=KORENDIJK_TEST,
           kind=MEMORY, near=part(0.05), unit="m²/day", why="their line was drawn by eye"),
    *table(SUBJECT, "recovery", "Oude Korendijk: storage by the straight line", [(1.7e-4,)],
           lambda: recovery.storage(recovery.transmissivity(FLOW, _line()), _line(), 30.0),
           source=KORENDIJK_TEST, kind=MEMORY, near=part(0.2), why="their line was drawn by eye"),
    *table(SUBJECT, "recovery", "Well function at u = {0:g}",
           [(u,) for u in (1e-12, 1e-8, 1e-4, 0.01, 0.3, 1.0, 4.0)], recovery.well_function,
           source=SCIPY, kind=LIBRARY, near=part(1e-9), against=exp1, place="exponential integral"),
)  # fmt: skip

# A well as a store ------------------------------------------------------------------------------

YIELD, STORED = 5e-5, 0.15  # m3/s, m3


def emptied(times, start):
    """s until a pump of so many times the yield has drawn the level down, integrated."""

    def lowest(_time, drawn):
        return drawn[0] - 1

    lowest.terminal = True
    run = solve_ivp(lambda _t, y: (times - y) * YIELD / STORED, (0.0, 1e6), [start], rtol=1e-11,
                    atol=1e-13, events=lowest)  # fmt: skip
    return run.t_events[0][0]


def recovered(share):
    """s until so much of the drawdown has come back, integrated."""

    def back(_time, drawn):
        return drawn[0] - (1 - share)

    back.terminal = True
    run = solve_ivp(lambda _t, y: -y * YIELD / STORED, (0.0, 1e6), [1.0], rtol=1e-11, atol=1e-13,
                    events=back)  # fmt: skip
    return run.t_events[0][0]


def _bucket(times, _start):
    """The store found by a bucket test that empties the integrated well, L."""
    time = emptied(times, 0.0)
    return well_yield.bucket_store(times * YIELD * time, time, YIELD) / LITRE


_RUNS = [(1.05, 0.0), (1.2, 0.4), (2.0, 0.0), (30.0, 0.4)]
STORES = (
    *table(SUBJECT, "well_yield", "Run of a pump of {0} times the yield, well {1:g} drawn down",
           _RUNS,
           lambda times, start: well_yield.time_to_empty(YIELD, STORED, times * YIELD, start),
           source=INTEGRATED, kind=INDEPENDENT, near=part(1e-6), unit="s", against=emptied),
    *table(SUBJECT, "well_yield", "Rest until {0:g} of the drawdown has come back",
           [(0.1,), (0.5,), (0.95,)],
           lambda share: well_yield.time_to_recover(YIELD, STORED, share), source=INTEGRATED,
           kind=INDEPENDENT, near=part(1e-6), unit="s", against=recovered),
    *table(SUBJECT, "well_yield", "Store by a bucket test with {0} times the yield",
           [(1.05, 150.0), (2.2, 150.0), (40.0, 150.0)], lambda times: _bucket(times, 0.0),
           source=INTEGRATED, kind=INDEPENDENT, near=part(1e-6), unit="L"),
)  # fmt: skip

# A well and its pump by the day -----------------------------------------------------------------


def by_seconds(flow_in, pump, hours, stored):
    """m3 a day of a well followed in steps of 10 s until the days repeat."""
    step, held, given = 10.0, stored, 0.0
    for _day in range(3):
        given = 0.0
        for at in range(int(24 * HOUR / step)):
            drawn = min(pump * step, held + flow_in * step) if at * step < hours * HOUR else 0.0
            given += drawn
            held = min(stored, held + flow_in * step - drawn)
    return given


BY_DAY = table(
    SUBJECT, "well",
    "Water a day: {0:g} m³/s come in, pump of {1:g} m³/s for {2:g} h, {3:g} m³ kept",
    [(1e-4, 5e-4, 6.0, 0.5), (1e-4, 5e-4, 2.0, 0.5), (3e-5, 4e-4, 10.0, 2.0),
     (2e-4, 1e-4, 8.0, 0.3), (1e-4, 5e-4, 24.0, 1.0)],
    well.daily, source="A well followed step by step in the tests", kind=INDEPENDENT,
    near=part(1e-9), unit="m³", against=by_seconds,
)  # fmt: skip

CHECKS = (*PUMPED, *STORES, *BY_DAY)
