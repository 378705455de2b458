"""Will it run by gravity: a spring or tank above, a long pipe, no pump."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from calc.page.fields import Choice, Count, Number, Rows, Sheet, Unknown
from calc.sheets.parts.fields import (
    everything_open,
    extra_length,
    hottest_pipe,
    pipe_length,
    water_temperature,
)
from calc.sheets.parts.line_cautions import BACKFLOW, DRAWN_IN
from calc.sheets.parts.needs import use_field, wanted_field
from calc.sheets.parts.pipe_choice import pipe_fields

if TYPE_CHECKING:
    from calc.page.answer import Answer
    from calc.page.form import Values
    from calc.units import Reader

REST, WAY = "Bends and water", "The pipe's way, and pressure taken away"
BROKEN = (
    ("none", "Nothing"),
    ("tank", "Tanks open to the air (break-pressure tanks)"),
    ("valve", "Pressure-reducing valves"),
)

FIELDS = (
    Number(
        "drop",
        "Drop from the water's level to the outlet",
        "length",
        "30 m",
        "100 ft",
        -200.0,
        400.0,
        help="Height, not distance, from the water in the spring box or tank. An outlet above it: "
        "a minus sign.",
    ),
    replace(pipe_length(), metric="900 m", us="3000 ft"),
    everything_open("15 L/min", "4 gpm", 1e-7),
    *pipe_fields(start=("pe100-sdr11", "40"), start_us=("pvc40", "1.25")),
    use_field(),
    wanted_field(),
    Number(
        "spring",
        "Least flow of the spring",
        "flow",
        "20 L/min",
        "5 gpm",
        0.0,
        1.0,
        help="In the driest weeks: time how long it takes to fill a bucket. A tank that is filled "
        "some other way: what fills it.",
        unknown=Unknown("", "", "the spring's flow is not checked"),
    ),
    extra_length(REST),
    water_temperature(333.15, REST),
    hottest_pipe(group=REST),
    Rows(
        "profile",
        "Points along the pipe (optional)",
        (
            Number("at", "Distance along the pipe", "length", "0 m", "0 ft", 0.0, 20e3),
            Number("height", "Height", "length", "0 m", "0 ft", -500.0, 6000.0),
        ),
        metric=(),
        us=(),
        row="point",
        least=0,
        most=60,
        help="From the water's level in the first row to the outlet in the last. Heights above "
        "any one level, such as the sea. With two rows or more, these replace drop and length.",
        group=WAY,
    ),
    Choice(
        "broken",
        "What takes pressure away on the way",
        BROKEN,
        "none",
        help="Where the pipe would carry more with everything closed than it is rated for.",
        group=WAY,
    ),
    Count("breaks", "How many, at equal steps of height", 1, 1, 20,
          when=("broken", ("tank", "valve")), group=WAY),
    Number(
        "held",
        "Pressure after each valve",
        "pressure",
        "1 bar",
        "15 psi",
        0.1e5,
        10e5,
        when=("broken", ("valve",)),
        group=WAY,
    ),
)  # fmt: skip


def solve(values: Values, reader: Reader) -> Answer:
    """The ``Answer``: imported with what it works with only when it is asked."""
    from calc.sheets.gravity.answer import answer

    return answer(values, reader)


SHEET = Sheet(
    "gravity",
    "Will it run by gravity?",
    FIELDS,
    solve,
    folded=(REST, WAY),
    replaced={"profile": ("drop", "length")},
    arguments={"temperature_k": "water", "length_m": "length"},
    cautions=(
        "A spring box, a tank and a break-pressure tank are confined spaces: bad air kills. Do "
        "not climb in.",
        "Spring water can be polluted by animals and surface water. Fence the spring, and have "
        "the water tested before anybody drinks it.",
        "Before you dig a trench, have buried cables and pipes located. Never work alone in a "
        "deep one. Lay the pipe below the depth of frost, or so that it drains.",
        "Let the pressure out before you open a joint; a pressurised pipe can whip and cut.",
        BACKFLOW,
        DRAWN_IN,
    ),
    sources=(
        "Darcy-Weisbach with the friction factor of Colebrook (1939).",
        "Pressures that outlets need, water speed: common practice, no source.",
    ),
    page="gravity/",
)
