"""A line of several pipe sections as a table: the rows a reader fills, and the same as text.

Several sheets ask for it in the same words: one line, one set of losses, the same figures.
"""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from calc.errors import InputError
from calc.page import row_text
from calc.page.entries import read
from calc.page.fields import Choice, Count, Number, Rows, WhatIf
from calc.page.state import filled_rows
from calc.pipe import fittings, friction
from calc.pipe.line import Line, Section
from calc.sheets.parts.carry import exact
from calc.sheets.parts.pipe_choice import KIND_HEADINGS, chosen_pipe, pipe_of, pipe_options
from calc.units import Reader

if TYPE_CHECKING:
    from collections.abc import Iterable

    from calc.page.fields import Sheet
    from calc.page.form import Row, Values
    from calc.page.state import State
    from calc.pipe.friction import Fitting

BEND = friction.BY_KEY["elbow90"]
LONGEST = 20e3  # m, of one row; more is no house's pipe; our choice
EXTRAS = tuple((part.key, part.name) for part in fittings.PARTS)


def line_field(group: str = "") -> Rows:
    """The table of pipe sections from the pump to the outlet: none, and the one pipe counts."""
    return Rows(
        "line",
        "Pipe sections, one by one (optional)",
        (
            Number("long", "Length", "length", "20 m", "60 ft", 0.01, LONGEST),
            Number("up", "Rise to its far end", "length", "0 m", "0 ft", -400.0, 400.0),
            Choice(
                "pipe", "Pipe", pipe_options(), "pe100-sdr11/32", "pvc40/1", groups=KIND_HEADINGS
            ),
            Count("bends", "Bends", 2, 0, 200),
            Choice("extra", "Filter or valve", EXTRAS, "none"),
            Number("share", "Share of the flow", "percent", "100 %", "100 %", 0.0, 1.0),
        ),
        metric=(),
        us=(),
        row="pipe section",
        least=0,
        most=40,
        help="From the pump to the outlet, in order. With one row or more, these replace the "
        "single pipe, its length, its climb and its bends. Downhill: a minus sign.",
        group=group,
    )


def sections(rows: Iterable[Row]) -> tuple[Section, ...]:
    """The ``Section``s of the rows of a ``line_field``; none for no rows."""
    return tuple(_section(row, f"section {at}") for at, row in enumerate(rows, 1))


def line_of(values: Values, start_pa: float) -> Line:
    """The line of a form: its sections, or where there are none the one pipe. start_pa: held, Pa.

    Raises InputError for a pipe that cannot be.
    """
    one = () if values.line else (
        Section(chosen_pipe(values), values.length * (1 + values.extra), values.climb),
    )  # fmt: skip
    return Line(
        sections(values.line) or one,
        start_pa,
        values.water,
        hottest_k=values.hottest,
        lowest_m=values.lowest,
        highest_m=values.highest,
    )


def line_texts(values: Values, reader: Reader) -> dict[str, str]:
    """What every sheet of one line asks for, as the texts of a link.

    Without sections of its own a link says so: the page it opens may have some.
    """
    return {
        "line": as_text(sections(values.line), reader),
        "flow": exact(values.flow, "flow", reader),
        "length": exact(values.length, "length", reader),
        "climb": exact(values.climb, "length", reader),
        "water": exact(values.water, "temperature", reader),
    }


# What if --------------------------------------------------------------------------------------


def what_if(*fields: str) -> WhatIf:
    """Typing the climb, the length or the pipe changes the sections that are there.

    fields: keys of those of them that the sheet's rows replace.  Source: our choice.
    """
    return WhatIf(frozenset(fields), _typed_over)


def _typed_over(sheet: Sheet, state: State, given: frozenset[str]) -> str:
    """The sections with what was given: lengths in proportion, the change in climb by length.

    Text that cannot be read leaves them as they are: its field says so.  A measured bore has no
    row, so the single pipe counts.
    """
    table = sheet.field("line")
    assert isinstance(table, Rows)
    rows = [list(row) for row in filled_rows(table, state.text(table), state.system)]
    try:
        long, up = (_column(table, rows, key, state) for key in ("long", "up"))
        length, climb = (_typed(sheet, state, key, given) for key in ("length", "climb"))
    except InputError:
        return state.text(table)
    whole = math.fsum(long)
    if climb is not None:
        more = climb - math.fsum(up)
        up = [rise + more * part / whole for rise, part in zip(up, long, strict=True)]
    if length is not None:
        long = [part * length / whole for part in long]
    pipe = ""
    if given - {"length", "climb"}:
        kind = state.text(sheet.field("kind"))
        if kind == "own":
            return ""
        pipe = f"{kind}/{state.text(sheet.field(kind))}"
    for row, part, rise in zip(rows, long, up, strict=True):
        row[:3] = exact(part, "length", METRIC), exact(rise, "length", METRIC), pipe or row[2]
    return row_text.encode(rows)


METRIC = Reader()


def _column(table: Rows, rows: list[list[str]], key: str, state: State) -> list[float]:
    """A column's numbers, SI.  Raises InputError for one that cannot be read."""
    column = table.column(key)
    at, symbol = table.columns.index(column), state.units.get(f"{table.key}.{key}")
    return [read(column, row[at], state.system, symbol)[0] for row in rows]


def _typed(sheet: Sheet, state: State, key: str, given: frozenset[str]) -> float | None:
    """What was given in a field, SI; None where nothing was.  Raises InputError."""
    if key not in given:
        return None
    entry = sheet.field(key)
    assert not isinstance(entry, Rows)
    value, _ = read(entry, state.text(entry), state.system, state.units.get(key))
    return float(value) if value is not None else None


def _section(row: Row, name: str) -> Section:
    part = fittings.BY_KEY[row.extra]
    counted: tuple[tuple[Fitting, int], ...] = ((BEND, row.bends),) if row.bends else ()
    if part.fitting is not None:
        counted += ((part.fitting, 1),)
    return Section(
        pipe_of(row.pipe), row.long, row.up, counted, row.share, part.device, part.reducer, name
    )


def as_rows(
    several: Iterable[Section], reader: Reader | None = None
) -> tuple[tuple[str, ...], ...]:
    """The cell texts of ``line_field`` that read back as these sections, to 10 figures.

    reader: whose units the lengths are written in (None: metric).
    Raises InputError for a section that the table has no words for: a measured bore, more than
    ``LONGEST``, or fittings other than 90° bends and one part.
    """
    return tuple(_cells(section, reader or Reader()) for section in several)


def as_text(several: Iterable[Section], reader: Reader | None = None) -> str:
    """``as_rows`` as the one text that stands in a field or a link."""
    return row_text.encode(as_rows(several, reader))


def _cells(section: Section, reader: Reader) -> tuple[str, ...]:
    if section.pipe.kind == "own" or section.length_m > LONGEST:
        raise InputError("A measured bore, or a length this long, has no row.", name="sections")
    long, up = (exact(v, "length", reader) for v in (section.length_m, section.rise_m))
    bends, extra = _bends_and_part(section)
    share = exact(section.share, "percent", reader)
    return long, up, f"{section.pipe.kind}/{section.pipe.size}", f"{bends:g}", extra, share


def _bends_and_part(section: Section) -> tuple[float, str]:
    counts = {fitting: count for fitting, count in section.fittings if count}
    bends = counts.pop(BEND, 0)
    for part in fittings.PARTS:
        of = {part.fitting: 1} if part.fitting is not None else {}
        same = part.device == section.device and part.reducer == section.reducer
        if same and of == counts:
            return bends, part.key
    raise InputError("A table row holds 90° bends and one other part.", name="sections")
