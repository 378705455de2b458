"""Figures and tables of the hot water sheet."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from calc.page.answer import Column, Figure, Table
from calc.pipe import pipes
from calc.sheets.hot_water.judge import burns_in

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.answer import Cells
    from calc.sheets.hot_water.case import Case
    from calc.units import Reader

# Temperatures of the table of the store, in the reader's unit; our choice
STORES = {
    "metric": (40, 45, 49, 55, 60, 65, 70, 80),
    "us": (105, 115, 120, 130, 140, 150, 160, 180),
}
# Kinds of pipe set side by side, by system of units; our choice
KINDS = {
    "metric": ("pe100-sdr11", "pvc40", "hose", "pex-mm", "cpvc11", "copper-en", "steel-en"),
    "us": ("pe4710-dr11", "pvc40", "hose", "pex-in", "cpvc11", "copper-l", "steel"),
}


def figures(case: Case) -> tuple[Figure, ...]:
    """Growth and what takes it up, pressures, ratings, the tap, the wait, the heat."""
    return (*_pressures(case), *_tap(case), *_heat(case))


def _pressures(case: Case) -> Iterator[Figure]:
    share = case.growth / case.values.heater
    yield Figure("The water grows by", case.growth, "volume", main=True,
                 note=f"{100 * share:.2g} % of the heater, each time it is heated")  # fmt: skip
    if case.closed:
        if case.needed is not None and math.isfinite(case.needed):
            yield Figure("Expansion tank needed", case.needed, "volume",
                         note="pre-charged to the static pressure")  # fmt: skip
        if case.highest is not None:
            yield Figure("Pressure when hot", case.highest, "pressure", note=_why(case))
        yield Figure("With no room and no relief", case.locked, "pressure",
                     note="if nothing gave way; something always does")  # fmt: skip
    if case.lowest is not None:
        note = "of the pipe at this heat" if case.pipe_is_lowest else "of the parts you named"
        yield Figure("Lowest rating", case.lowest, "pressure", note=note)


def _why(case: Case) -> str:
    if case.setting is not None and case.highest == case.setting:
        return "the relief valve opens and drips"
    return "with the expansion tank that is there" if case.tank else "nothing takes it up"


def _tap(case: Case) -> Iterator[Figure]:
    if case.at_tap is not None:
        yield Figure("Hottest at the tap", case.at_tap, "temperature",
                     note=f"burns skin in {burns_in(case.at_tap)}")  # fmt: skip
    if case.share is not None:
        yield Figure("Hot water in the mixed water", case.share, "percent", note="the rest is cold")
    yield Figure("Wait at the tap", case.wait, "time",
                 note="at the tap's full flow; a metal pipe takes somewhat longer")  # fmt: skip
    yield Figure("Runs off first", case.left, "volume", note="the water that cooled in the pipe")
    if case.values.draws:
        yield Figure("Runs off in a day", case.values.draws * case.left, "volume")


def _heat(case: Case) -> Iterator[Figure]:
    if case.values.draws:
        yield Figure("Heat lost in the pipe in a day", case.values.draws * case.lost, "energy",
                     note="if it cools between the draws")  # fmt: skip
    yield Figure("Heat for the whole heater", case.warming, "energy", note="losses not counted")
    if case.values.power is not None:
        yield Figure("Time to heat it", case.warming / case.values.power, "minutes")


# Tables --------------------------------------------------------------------------------------


def tables(case: Case, reader: Reader) -> tuple[Table, ...]:
    """What another temperature of the store does; what each kind of pipe keeps at this one."""
    return (_stores(case, reader), _pipes(case, reader))


def _stores(case: Case, reader: Reader) -> Table:
    unit = reader.unit("temperature")
    round_ones = [unit.to_si(float(one)) for one in STORES[reader.system]]
    apart = [one for one in round_ones if one > case.cold and abs(one - case.stored) > 0.3]
    every = sorted((*apart, case.stored))
    rows: list[Cells] = []
    for hot in every:
        needed = case.needed_at(hot) if case.closed else None
        tank = needed if needed is not None and math.isfinite(needed) else None
        rows.append((hot, case.growth_at(hot), tank, burns_in(hot)))
    columns = (
        Column("Stored at", "temperature"),
        Column("The water grows by", "volume"),
        Column("Expansion tank needed", "volume"),
        Column("Burns skin in"),
    )
    note = "The times are an adult's; a child's skin burns sooner. Marked: as you store it now."
    title = "What another temperature does"
    return Table(title, columns, tuple(rows), (every.index(case.stored),), note=note)


def _pipes(case: Case, reader: Reader) -> Table:
    rows: list[Cells] = []
    dimmed, marked = [], []
    for kind in KINDS[reader.system]:
        one = pipes.sizes(kind)[0]
        fits = not pipes.too_hot(one, case.heat, case.stored)
        keeps = pipes.rating_at(one, case.heat) / one.rating_pa if fits and one.rating_pa else None
        if kind == case.pipe.kind:
            marked.append(len(rows))
        if not fits:
            dimmed.append(len(rows))
        rows.append((one.kind_label.partition(" (")[0], pipes.hottest_k(one), keeps,
                     "yes" if fits else "no"))  # fmt: skip
    columns = (
        Column("Pipe"),
        Column("Rated up to", "temperature"),
        Column("Keeps of its rating", "percent"),
        Column("For this heat"),
    )
    heat = reader.show(case.heat, "temperature")
    note = "Rated up to a heat does not make a pipe fit for hot water: PVC is not made for it."
    return Table(f"Pipe at {heat}", columns, tuple(rows), tuple(marked), tuple(dimmed), note)
