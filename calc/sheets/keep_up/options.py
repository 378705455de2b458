"""A change to a supply before it is tried, and the small steps that changes are made of."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Any

from calc.pipe import pipes
from calc.units import FOOT, PSI

if TYPE_CHECKING:
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


def set_up(pressure_pa: float, reader: Reader) -> float:
    """A set pressure rounded up to a step of the reader's units, Pa."""
    step = STEP[reader.system]
    return step * math.ceil(pressure_pa / step - 1e-9)


def set_down(pressure_pa: float, reader: Reader) -> float:
    """A set pressure rounded down to a step of the reader's units, Pa."""
    step = STEP[reader.system]
    return step * math.floor(pressure_pa / step + 1e-9)


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
