"""Rows to a network: parts where they belong, one line led out, every fault at its row."""

import pytest

from calc import practice
from calc.errors import InputErrors
from calc.network.parts import Device, PumpSet, Reducer, Run
from calc.pipe import fittings, friction, pipes
from calc.pump.invented import PUMPS
from calc.site.supply import (
    PUMP,
    SUCTION,
    OutletRow,
    SectionRow,
    Source,
    Supply,
    TankRow,
    outlet_of,
    plain,
    suction_k,
)

PIPE = pipes.pipe("pe100-sdr11", "32")
SOURCE = Source(
    pump=PUMPS["middle"],
    set_pa=3e5,
    lift_m=3.0,
    suction_length_m=6.0,
    suction_pipe=pipes.pipe("pe100-sdr11", "40"),
    temperature_k=288.15,
    altitude_m=0.0,
)
SHOWER = OutletRow("Shower", "house", "shower", 1, 1)


def supply(sections=None, outlets=(SHOWER,), tanks=(), source=SOURCE):
    sections = sections or (SectionRow(PUMP, "house", 40.0, 5.0, PIPE),)
    return Supply(source, tuple(sections), tuple(outlets), tuple(tanks))


def faults(*args, **named):
    with pytest.raises(InputErrors) as caught:
        supply(*args, **named).built()
    return {error.name: error.message for error in caught.value.errors}


def test_bends_and_a_valve_count_in_the_bore_of_their_pipe():
    built = supply((SectionRow(PUMP, "house", 40.0, 5.0, PIPE, 3, "meter"),)).built()
    (run,) = (one for one in built.links if isinstance(one, Run) and one.name != SUCTION)
    elbow, meter = (friction.BY_KEY[one] for one in ("elbow90", "meter"))
    bore = PIPE.inside_m
    wanted = 3 * friction.fitting_coefficient(elbow, bore)
    assert run.k == pytest.approx(wanted + friction.fitting_coefficient(meter, bore), rel=1e-12)


@pytest.mark.parametrize("part", fittings.PARTS)
def test_every_part_becomes_what_it_is(part):
    built = supply((SectionRow(PUMP, "house", 40.0, 5.0, PIPE, 0, part.key),)).built()
    kinds = {type(one) for one in built.links}
    assert (Device in kinds) == (part.device is not None)
    assert (Reducer in kinds) == (part.reducer is not None)
    checked = [one for one in built.links if isinstance(one, Run) and one.check]
    assert bool(checked) == (part.one_way and part.reducer is None)


def test_pumps_in_parallel_are_as_many_as_said():
    from dataclasses import replace

    built = supply(source=replace(SOURCE, pumps=3)).built()
    assert sum(isinstance(one, PumpSet) for one in built.links) == 3


def test_suction_fittings_lose_less_in_a_wider_pipe():
    # Crane TP-410: K = 450 f_T, and f_T falls with the bore
    assert suction_k(0.1) < suction_k(0.05) < suction_k(0.025)


def test_an_outlets_levels_are_those_of_practice():
    row = OutletRow("It", "house", "shower", 0, 1, rated_pa=1e5)
    outlet = outlet_of(row, "house", "outlets.0")
    kind = practice.OUTLET_BY_KEY["shower"]
    assert outlet.content_pa == pytest.approx(1e5 * kind.works / kind.rated, rel=1e-12)
    assert outlet.best_pa == pytest.approx(1e5, rel=1e-12)


def test_every_fault_is_kept_with_its_place():
    found = faults(
        (
            SectionRow(PUMP, "house", 40.0, 5.0, PIPE),
            SectionRow("barn", "shed", 5.0, 0.0, PIPE),
            SectionRow(PUMP, "house", 5.0, 9.0, PIPE),
        ),
        (OutletRow("", "house", "shower", 0, 1), OutletRow("Jet", "attic", "opening", 0, 1)),
        (TankRow("pump", 9.0),),
    )
    assert set(found) == {
        "sections.1.start", "sections.2.height", "outlets.0.name", "outlets.1.at",
        "outlets.1.flow", "tanks.0.name",
    }  # fmt: skip
    assert found["sections.1.start"].startswith("No pipe section ends at “barn” yet.")


def test_parts_that_no_water_reaches_are_each_said():
    rows = [SectionRow(PUMP, "house", 40.0, 5.0, PIPE)]
    rows += [SectionRow(a, b, 5.0, 0.0, PIPE) for a, b in (("x", "y"), ("y", "x"))]
    built = supply(rows).built()
    with pytest.raises(InputErrors) as caught:
        built.solve(built.after)
    assert all(error.name.startswith("sections.") for error in caught.value.errors)


def test_a_name_cannot_turn_a_sentence_round():
    assert plain("bar\u202e 2.27") == "bar 2.27"
    assert "outlets.0.name" in faults(outlets=(OutletRow("\u200b", "house", "shower", 0, 1),))
