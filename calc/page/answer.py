"""What a sheet returns: plain frozen data in SI, no HTML.

Sentences inside an answer are already in the reader's units (a sheet writes
them with ``Reader.show``/``both``); bare numbers are SI with their quantity and
are printed by ``calc.page.render``.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING, Any

from calc.page import findings as judged

if TYPE_CHECKING:
    from calc.page.findings import Finding, Fix
    from calc.page.shapes import Drawing


Pair = tuple[float | None, float | None]  # before and after, in one cell
Cell = float | str | Pair | None
Cells = tuple[Cell, ...]  # of a row of a table


@dataclass(frozen=True)
class Value:
    """An SI ``value`` of ``quantity`` (key of ``units.QUANTITIES``)."""

    value: float
    quantity: str
    digits: int = 3


@dataclass(frozen=True)
class Figure:
    """A key figure: shown in the reader's unit with the other system beside it.

    was: the same before a change, shown in front of it: "1.09 → 0.689 bar".
    """

    label: str
    value: float
    quantity: str
    digits: int = 3
    note: str = ""
    main: bool = False
    was: float | None = None


@dataclass(frozen=True)
class Step:
    """One step of the working: formula, numbers in, number out.

    formula: an assignment in Python syntax over SI base units, e.g.
    ``"h_f = f * L / D * v**2 / (2 * g)"`` (``calc.page.formula`` prints it as MathML
    and as text; a test evaluates it with ``given`` and compares ``result``).
    Names: Greek by name (rho, eps, nu, Delta_h), subscript after ``_``; allowed
    calls: sqrt, log10, log, exp, min, max, abs, sin, cos, pi.
    An empty formula makes a step in words only (``note``).
    given: name -> ``Value``; result: ``Value``.
    """

    title: str
    formula: str = ""
    given: Mapping[str, Value] = field(default_factory=dict)
    result: Value | None = None
    note: str = ""
    source: str = ""


@dataclass(frozen=True)
class Column:
    """A table column; ``quantity`` None for text cells."""

    label: str
    quantity: str | None = None
    digits: int = 3


@dataclass(frozen=True)
class Table:
    """Rows of cells: SI numbers under a quantity column, else text; None prints a dash; a pair is
    before and after: "1.09 → 0.689".

    ``marked``: indexes of rows to emphasise; ``dimmed``: rows that are out.
    """

    title: str
    columns: tuple[Column, ...]
    rows: tuple[Cells, ...]
    marked: tuple[int, ...] = ()
    dimmed: tuple[int, ...] = ()
    note: str = ""


@dataclass(frozen=True)
class Series:
    """One line, its points in SI. ``style``: "line", "dashed", "points", "area" or "bars"."""

    name: str
    xs: tuple[float, ...]
    ys: tuple[float, ...]
    style: str = "line"


@dataclass(frozen=True)
class Chart:
    """A chart of one x against one y quantity; ``alt`` says in a sentence what it shows.

    ``key`` is unique within the sheet.  ``marks``: (x, y, label) points to call out.
    ``levels``: (y, label) horizontal rules.
    """

    key: str
    title: str
    alt: str
    x_label: str
    x_quantity: str
    y_label: str
    y_quantity: str
    series: tuple[Series, ...]
    marks: tuple[tuple[float, float, str], ...] = ()
    levels: tuple[tuple[float, str], ...] = ()


TRY = "Try this fix"  # what the link of a fix says


@dataclass(frozen=True)
class Link:
    """Go on with another sheet: ``sheet`` key and its field texts ("flow": "18 L/min")."""

    text: str
    sheet: str
    values: Mapping[str, str]


@dataclass(frozen=True)
class Answer:
    """What a sheet returns.

    told: the facts in one sentence, which is the verdict's where nothing is wrong; findings:
    ``Finding``s, of which the worst decides the verdict; fixes: ``Fix``es, the likely best first;
    sizing: a size was asked, not whether something works; cautions: sentences that belong to
    these numbers but never count; later: works out the fields that the verdict does not wait for
    (fixes and what they need), {name: value}.
    """

    told: str = ""
    findings: tuple[Finding, ...] = ()
    fixes: tuple[Fix, ...] = ()
    sizing: bool = False
    figures: tuple[Figure, ...] = ()
    steps: tuple[Step, ...] = ()
    tables: tuple[Table, ...] = ()
    charts: tuple[Chart, ...] = ()
    links: tuple[Link, ...] = ()
    drawings: tuple[Drawing, ...] = ()
    cautions: tuple[str, ...] = ()
    later: Callable[[], Mapping[str, Any]] | None = None

    def whole(self) -> Answer:
        """The same with what comes ``later``, which may take longer than all the rest."""
        return self if self.later is None else replace(self, later=None, **self.later())

    @property
    def verdict(self) -> judged.Verdict:
        """The ``Verdict`` that follows from the findings."""
        return judged.verdict(self.findings, self.told, self.sizing)
