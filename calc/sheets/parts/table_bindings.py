"""How the tables of a sheet stand to those of a site: rows of facts out, and back again."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace

from calc.errors import InputError
from calc.sheets.parts import ways
from calc.sheets.parts.bindings import Asked, written
from calc.site.facts import Fact
from calc.site.rows import BY_TABLE, Row, fold
from calc.site.site import Site
from calc.units import QUANTITIES, parse

Cells = Mapping[str, Fact]  # by column of the sheet's table
MILLIMETRE = QUANTITIES["rain"].default("metric")


@dataclass(frozen=True)
class TableBinding:
    """field: key of the sheet's table; give: its rows; take: the site with other rows there, by
    what each was before (None: a new one), or None where the table is not put back; asked: no rows
    are no answer, and the field is left to be asked."""

    field: str
    give: Callable[[Asked], tuple[Cells, ...]]
    take: Callable[[Asked, tuple[tuple[int | None, Cells], ...]], Site] | None = None
    asked: bool = False

    def puts_back(self, _asked: Asked) -> bool:
        """Whether what is typed here goes back into the site."""
        return self.take is not None

    def rows(self, asked: Asked) -> tuple[Cells, ...]:
        """The rows from the site; none where they cannot be worked out.  Raises nothing."""
        try:
            return self.give(asked)
        except (InputError, KeyError):
            return ()


def _every(_site: Site, _row: Row) -> bool:
    return True


def one_to_one(field: str, table: str, columns: dict[str, str], heights: str = "",
               only: Callable[[Site, Row], bool] = _every) -> TableBinding:  # fmt: skip
    """A sheet's table whose columns are those of a site's.

    columns: the sheet's -> the site's; heights: the column of heights, which a sheet counts from
    the pump; only: which rows the sheet shows.
    """

    def shown(site: Site) -> list[int]:
        return [at for at, row in enumerate(site.rows(table)) if only(site, row)]

    def give(asked: Asked) -> tuple[Cells, ...]:
        rows, base = asked.site.rows(table), ways.pump_height(asked.site)
        return tuple(
            {
                key: _moved(BY_TABLE[table].best(rows[at], column), -base if key == heights else 0)
                for key, column in columns.items()
            }
            for at in shown(asked.site)
        )

    def take(asked: Asked, rows: tuple[tuple[int | None, Cells], ...]) -> Site:
        held, places, base = asked.site.rows(table), shown(asked.site), ways.pump_height(asked.site)
        now = give(asked)
        made = []
        for before, cells in rows:
            old = {} if before is None else held[places[before]]
            was = {} if before is None else now[before]
            changed = {
                columns[key]: _moved(fact, base if key == heights else 0)
                for key, fact in cells.items()
                if before is None or fact != was[key]
            }
            made.append({**old, **changed})
        kept = [row for at, row in enumerate(held) if at not in set(places)]
        return asked.site.put_rows(table, (*made, *kept))

    return TableBinding(field, give, take)


def _moved(fact: Fact, by: float) -> Fact:
    """A height counted from elsewhere, m; the same fact where that is the same."""
    if not by or not fact.known:
        return fact
    value = BY_TABLE["sections"].column("height").read(fact.text) + by
    return replace(fact, text=written(value, "length").text)


def sections() -> TableBinding:
    """keep-up's table of pipe sections."""
    return one_to_one("runs", "sections", {
        "from": "from", "to": "to", "long": "length", "up": "height", "pipe": "pipe",
        "bends": "bends", "extra": "fitting",
    }, "up")  # fmt: skip


def outlets() -> TableBinding:
    """keep-up's table of outlets."""
    return one_to_one("taps", "outlets", {
        "name": "name", "at": "at", "kind": "kind", "now": "before", "then": "after",
        "flow": "flow", "rated": "rated", "want": "needed",
    })  # fmt: skip


def tanks() -> TableBinding:
    """keep-up's table of tanks: those that a pipe section joins."""

    def only(site: Site, row: Row) -> bool:
        return fold(site.word("tanks", row, "name")) in ways.joined(site)

    return one_to_one("tanks", "tanks", {"name": "name", "up": "level"}, "up", only)


def _line(asked: Asked) -> tuple[Cells, ...]:
    way, site = asked.way, asked.site
    if way.plain:
        return ()  # one pipe: the sheet's own fields say it
    rows = site.rows("sections")
    return tuple(
        {
            "long": BY_TABLE["sections"].best(rows[at], "length"),
            "up": written(section.rise_m, "length"),
            "pipe": BY_TABLE["sections"].best(rows[at], "pipe"),
            "bends": BY_TABLE["sections"].best(rows[at], "bends"),
            "extra": BY_TABLE["sections"].best(rows[at], "fitting"),
            "share": written(section.share, "percent"),
        }
        for at, section in zip(way.rows, way.sections, strict=True)
    )


def line() -> TableBinding:
    """The sections on the way, for the sheets of one line.  Worked out: never put back."""
    return TableBinding("line", _line)


def points(worked: Callable[[Asked], tuple[Cells, ...]]) -> TableBinding:
    """Points along a line that runs by its height.

    worked: those of the way through the site's sections, which stay with them; none where the
    sections do not say any, and the site's own table does.
    """
    own = one_to_one("profile", "profile", {"at": "at", "height": "height"})

    def give(asked: Asked) -> tuple[Cells, ...]:
        return worked(asked) or own.give(asked)

    def take(asked: Asked, rows: tuple[tuple[int | None, Cells], ...]) -> Site:
        if worked(asked) or own.take is None:
            raise InputError("the pipe sections of the site say them.", name="profile")
        return own.take(asked, rows)

    return TableBinding("profile", give, take)


def readings() -> TableBinding:
    """Readings of a well that recovers."""
    made = one_to_one("readings", "readings", {"time": "time", "level": "level"})
    return replace(made, asked=True)


def reference() -> TableBinding:
    """The reference evapotranspiration of the months that are known."""
    return replace(one_to_one("months", "reference", {"at": "month", "et": "et"}), asked=True)


def _rain(asked: Asked) -> tuple[Cells, ...]:
    depths = asked.site.value("rain.months")
    return tuple(
        {"month": Fact(str(at)), "rain": written(MILLIMETRE.to_si(depth), "rain")}
        for at, depth in enumerate(depths or (), 1)
    )


def _take_rain(asked: Asked, rows: tuple[tuple[int | None, Cells], ...]) -> Site:
    """Twelve months as numbers in mm.  Raises InputError where one is missing or stands twice."""
    depths = {
        int(cells["month"].text): MILLIMETRE.from_si(parse(cells["rain"].text, "rain").value)
        for _, cells in rows
        if cells["rain"].known
    }
    if len(rows) != 12 or len(depths) != 12:
        raise InputError("each of the twelve months is needed once.", name="months")
    texts = (f"{depths[month]:.6g}" for month in range(1, 13))
    return asked.site.put("rain.months", Fact(" ".join(texts)))


def rain() -> TableBinding:
    """Rain of the twelve months."""
    return TableBinding("months", _rain, _take_rain, asked=True)
