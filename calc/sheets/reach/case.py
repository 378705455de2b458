"""One line from a held pressure to an outlet, from what a reader gave: numbers only."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc.pipe.line import Line
from calc.sheets.parts.line_judge import Need
from calc.sheets.parts.line_rows import line_of
from calc.sheets.parts.needs import levels

if TYPE_CHECKING:
    from calc.page.form import Values


@dataclass(frozen=True)
class Case:
    """A line and what is asked of it.

    most: the maximum flow of the pump at its set pressure, m3/s (None: not known, or no pump);
    extra: share of length added to the one pipe; counted: the line was given section by section.
    """

    line: Line
    need: Need
    most: float | None
    extra: float
    counted: bool

    @property
    def pumped(self) -> bool:
        """Whether a pump gives the pressure: from an open tank it is none at its water level."""
        return self.line.start_pa > 0

    @property
    def asks_too_much(self) -> bool:
        """Whether more flow is asked than the pump gives."""
        return self.most is not None and self.need.flow_m3s > self.most * (1 + 1e-9)


def case_of(values: Values) -> Case:
    """The ``Case`` of a form's values."""
    line = line_of(values, values.pressure)
    need = Need(values.flow, *levels(values.use, values.wanted))
    most = values.most if values.pressure > 0 else None
    return Case(line, need, most, values.extra, bool(values.line))
