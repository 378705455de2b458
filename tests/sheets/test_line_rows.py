"""The table of pipe sections: read, written back, and refused in words."""

import random

import pytest

from calc.errors import InputError
from calc.page.fields import Sheet
from calc.page.form import work
from calc.page.state import State
from calc.pipe import fittings, friction, pipes
from calc.pipe.line import Section
from calc.sheets.parts.line_rows import as_text, line_field, sections
from calc.units import Reader

TABLE = Sheet("table", "Table", (line_field(),), lambda values, reader: sections(values.line))


def read(text, system="metric"):
    outcome = work(TABLE, State(system, {"line": text}))
    assert outcome.errors == {}
    return outcome.answer


def test_no_rows_are_no_sections():
    assert work(TABLE, State()).answer == ()


def test_a_row_is_a_section():
    one, two = read("60 m,5 m,pe100-sdr11/40;30 m,-2 m,pvc40/1,0,dirty,50 %")
    assert one == Section(
        pipes.pipe("pe100-sdr11", "40"), 60.0, 5.0, ((friction.BY_KEY["elbow90"], 2),),
        name="section 1",
    )  # fmt: skip
    assert (two.length_m, two.rise_m, two.fittings, two.share) == (30.0, -2.0, (), 0.5)
    assert two.device == fittings.BY_KEY["dirty"].device and two.name == "section 2"


@pytest.mark.parametrize("system", ["metric", "us"])
def test_sections_written_and_read_again_are_the_same(system):
    rng = random.Random(7)
    pipe = [p for kind in pipes.KINDS for p in pipes.sizes(kind)]
    for part in fittings.PARTS:
        counted = ((friction.BY_KEY["elbow90"], rng.randint(1, 9)),)
        if part.fitting is not None:
            counted += ((part.fitting, 1),)
        made = Section(
            rng.choice(pipe), rng.uniform(1, 500), rng.uniform(-50, 50), counted,
            rng.uniform(0.1, 1), part.device, part.reducer, "section 1",
        )  # fmt: skip
        (found,) = read(as_text((made,), Reader(system)), system)
        for key in ("pipe", "fittings", "device", "reducer"):
            assert getattr(found, key) == getattr(made, key)
        for key in ("length_m", "rise_m", "share"):
            assert getattr(found, key) == pytest.approx(getattr(made, key), rel=1e-9)


@pytest.mark.parametrize(
    "section",
    [
        Section(pipes.own_pipe(0.03, 1e-5), 10.0),
        Section(pipes.pipe("pvc40", "1"), 10.0, 0.0, ((friction.BY_KEY["foot"], 1),)),
        Section(pipes.pipe("pvc40", "1"), 10.0, 0.0, ((friction.BY_KEY["globe"], 2),)),
    ],
)
def test_what_a_row_has_no_words_for_is_refused(section):
    with pytest.raises(InputError):
        as_text((section,))
