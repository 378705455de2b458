"""A line of several pipe sections as a table: the rows a reader fills, and the same as text.

Several sheets ask for it in the same words: one line, one set of losses, the same figures.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.errors import InputError
from calc.page import row_text
from calc.page.fields import Choice, Count, Number, Rows
from calc.pipe import fittings, friction
from calc.pipe.line import Section
from calc.sheets.parts.link_text import exact
from calc.sheets.parts.pipe_choice import pipe_of, pipe_options
from calc.units import Reader

if TYPE_CHECKING:
    from collections.abc import Iterable

    from calc.page.form import Row
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
            Choice("pipe", "Pipe", pipe_options(), "pe100-sdr11/32", "pvc40/1"),
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
