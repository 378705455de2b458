"""Places, forms and cases of the sheets that run on the sun, for their tests."""

import functools
import random

from calc.page.fields import Choice, Count, Number
from calc.page.form import read_values, work
from calc.page.state import State
from calc.sheets import sheet as find_sheet
from calc.sheets.parts import solar_case
from tests.sheets import few

NORTH_SUN = (1.75, 2.84, 3.91, 5.07, 6.32, 7.09, 7.5, 6.61, 5.05, 3.14, 2.01, 1.58)
NORTH_AIR = (7.0, 7.5, 9.9, 12.5, 15.9, 20.5, 23.4, 23.7, 20.7, 15.7, 10.1, 7.3)
POLAR_SUN = (0.0, 0.4, 1.6, 3.6, 5.0, 5.6, 5.0, 3.6, 2.0, 0.7, 0.05, 0.0)
POLAR_AIR = (-8.0, -8.0, -5.0, 0.0, 5.0, 9.0, 12.0, 11.0, 7.0, 2.0, -3.0, -6.0)


def months(sun, air):
    """The table of months as typed. sun: kWh/m2 a day; air: degC."""
    rows = enumerate(zip(sun, air, strict=True), 1)
    return ";".join(f"{at},{light} kWh/m²,{warm} °C" for at, (light, warm) in rows)


def turned(twelve):
    """The same half a year later."""
    return (*twelve[6:], *twelve[:6])


def place(lat, sun, air):
    return {"lat": f"{lat}°", "months": months(sun, air)}


NORTH = place(41.25, NORTH_SUN, NORTH_AIR)
SOUTH = place(-41.25, turned(NORTH_SUN), turned(NORTH_AIR))
POLAR = place(69.6, POLAR_SUN, POLAR_AIR)
TROPIC = place(4, (4.4, 4.9, 5.1, 5.0, 4.6, 4.4, 4.3, 4.5, 4.8, 4.9, 4.6, 4.3), (26.0,) * 12)
FROSTY = place(47, (1.4, 2.3, 3.4, 4.6, 5.4, 6.0, 6.1, 5.2, 3.9, 2.5, 1.5, 1.1),
               (-6.0, -4.0, 1.0, 6.0, 11.0, 15.0, 17.0, 16.0, 12.0, 7.0, 1.0, -4.0))  # fmt: skip
PLACES = {"north": NORTH, "south": SOUTH, "polar": POLAR, "tropic": TROPIC, "frosty": FROSTY}
KINDS = Choice, Count, Number
KEPT = ("lat", "months", "altitude", "weather", "lon", "place")  # not drawn: they say the place


def values(sheet, system="metric", **texts):
    return read_values(sheet, State(system, texts))


def case(sheet, system="metric", **texts):
    """The case behind a form of panels and battery."""
    return solar_case.case_of(values(sheet, system, **texts))


def first(sheet, system="metric", **texts):
    """What an answer shows at once: figures and findings, without drawings, tables and fixes."""
    outcome = work(sheet, State(system, texts), first=True)
    assert outcome.errors == {}, outcome.errors
    return outcome.answer


def figures(sheet, system="metric", **texts):
    """{label: value in SI}."""
    return {one.label: one.value for one in first(sheet, system, **texts).figures}


def found(sheet, system="metric", **texts):
    """{key: level} of the findings."""
    return {one.key: one.level for one in first(sheet, system, **texts).findings}


def states(sheet, count, seed=10):
    """``count`` forms of a sheet at the places above, one place after the other."""
    rng = random.Random(f"{seed} {sheet.key}")
    drawn = [one for one in sheet.fields if one.key not in KEPT and isinstance(one, KINDS)]
    for at in range(count):
        name = list(PLACES)[at * len(PLACES) // count]
        system, texts, units = rng.choice(("metric", "us")), dict(PLACES[name]), {}
        for entry in rng.sample(drawn, rng.randint(1, min(6, len(drawn)))):
            texts[entry.key], unit = few._text(rng, entry, system)
            if unit:
                units[entry.key] = unit
        yield State(system, texts, units)


@functools.cache
def outcomes(key, count, first=False):
    """(state, outcome) of every form of ``states``."""
    one = find_sheet(key)
    return [(state, work(one, state, first=first)) for state in states(one, count)]
