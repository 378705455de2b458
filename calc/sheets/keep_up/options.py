"""A change to a supply before it is tried, and the small steps that changes are made of."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Any

from calc import practice
from calc.page.fields import Number
from calc.pipe import pipes
from calc.sheets.keep_up.rows import LEVEL_M, LIFT_M, RUNS, SET_PA, SUCTION_M, TANKS
from calc.sheets.parts.fields import SENSED_M
from calc.site.supply_rows import OpenWater, Source
from calc.units import FOOT, PSI

if TYPE_CHECKING:
    from calc.page.fields import Rows
    from calc.pipe.pipes import Pipe
    from calc.sheets.keep_up.case import Case
    from calc.site.supply import SectionRow, Supply
    from calc.units import Reader

STEP = {"metric": 0.1e5, "us": 1.0 * PSI}  # Pa, to which a set pressure is rounded; our choice
LENGTH_STEP = {"metric": 0.1, "us": 0.5 * FOOT}  # m, to which a height is rounded up; our choice


@dataclass(frozen=True)
class Option:
    """A change to try.

    text: what to do, without a full stop; case: where it has been solved already.
    """

    text: str
    supply: Supply
    case: Case | None = None


def fits(supply: Supply) -> bool:
    """Whether the form takes every figure of a supply, so that its link can be opened."""
    source = supply.source
    if isinstance(source, OpenWater):
        asked = [(source.level_m, LEVEL_M)]
    else:
        asked = [(source.lift_m, LIFT_M), (source.suction_length_m, SUCTION_M)]
    if isinstance(source, Source) and source.reads_pa is not None:
        asked += [(source.reads_pa, SET_PA), (source.sensed_m, SENSED_M)]
    asked += [(row.length_m, _span(RUNS, "long")) for row in supply.sections]
    asked += [(row.height_m, _span(RUNS, "up")) for row in supply.sections]
    asked += [(row.level_m, _span(TANKS, "up")) for row in supply.tanks]
    return all(low <= value <= high for value, (low, high) in asked)


def pump_side(supply: Supply) -> Source:
    """The pump's side of a supply that has one: what only a pump can lack is asked there."""
    assert supply.pumping is not None
    return supply.pumping


def _span(table: Rows, key: str) -> tuple[float, float]:
    column = table.column(key)
    assert isinstance(column, Number)
    return column.low, column.high


def repair(old: Supply, new: Supply) -> bool:
    """Whether no pipe section went up more sizes than a repair does."""
    pairs = zip(old.sections, new.sections, strict=False)
    return all(_sizes_up(one.pipe, other.pipe) <= practice.MOST_SIZES_UP for one, other in pairs)


def _sizes_up(old: Pipe, new: Pipe) -> int:
    if old.kind != new.kind:
        return 0
    sizes = [one.size for one in pipes.sizes(old.kind)]
    return sizes.index(new.size) - sizes.index(old.size)


def with_sections(supply: Supply, changed: dict[int, dict[str, Any]]) -> Supply:
    """The supply with columns of some sections (by index) exchanged."""
    sections = tuple(replace(row, **changed.get(at, {})) for at, row in enumerate(supply.sections))
    return replace(supply, sections=sections)


def with_source(supply: Supply, **changed: Any) -> Supply:
    """The supply with facts of its source exchanged."""
    return replace(supply, source=replace(supply.source, **changed))


def larger(pipe: Pipe, up: int) -> Pipe | None:
    """The pipe so many sizes up in its kind, or the largest; None where it is that already."""
    sizes = pipes.sizes(pipe.kind)
    index = next(i for i, one in enumerate(sizes) if one.size == pipe.size)
    return sizes[min(index + up, len(sizes) - 1)] if index < len(sizes) - 1 else None


def set_up(pressure_pa: float, reader: Reader, sensed_pa: float = 0.0) -> float:
    """A set pressure, Pa at the pump, rounded up to a step of the reader's units at its control.

    sensed_pa: what the pressure at the pump is above that which the control reads.
    """
    step = STEP[reader.system]
    return step * math.ceil((pressure_pa - sensed_pa) / step - 1e-9) + sensed_pa


def set_down(pressure_pa: float, reader: Reader, sensed_pa: float = 0.0) -> float:
    """A set pressure rounded down, as ``set_up``."""
    step = STEP[reader.system]
    return step * math.floor((pressure_pa - sensed_pa) / step + 1e-9) + sensed_pa


def section_of(case: Case, name: str) -> tuple[int, SectionRow] | None:
    """(index, row) of a link that is a pipe section or a device in one; None for another."""
    if name in case.built.section_rows:
        at = case.built.section_rows[name]
    else:
        table, _, rest = case.built.where.get(name, "").partition(".")
        if table != "sections":
            return None
        at = int(rest.partition(".")[0])
    return at, case.supply.sections[at]
