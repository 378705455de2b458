"""What goes along when the reader goes on to another page: the site, with what was typed in it.

The numbers travel in a copy of the site, or where there is none in one made of the example; the
site itself, and a saved copy of it, stay as they are.  What a site does not hold stays on its page.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from calc import practice
from calc.errors import InputError
from calc.page import row_text
from calc.page.fields import Choice, Number, Rows, Text
from calc.page.state import filled_rows, hidden_keys, typed_over
from calc.pipe import pipes
from calc.sheets import views
from calc.sheets.keep_up.rows import HOUSE, HOUSE_BENDS, HOUSE_OUTLETS
from calc.sheets.parts import ways
from calc.sheets.parts.bindings import written
from calc.sheets.parts.moments import THEN
from calc.sheets.parts.putting_back import close, with_unit
from calc.site.demo import FROM_THE_EXAMPLE, to_change
from calc.site.facts import ASSUMED, Fact
from calc.site.pack import pack, unpack
from calc.site.rows import PUMP
from calc.units import parse

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.fields import Field, Sheet
    from calc.page.state import State
    from calc.site.site import Site

CHANGED, YOURS = "Alder Terrace, changed", "Your line"
END, OUTLET = "the outlet", "Outlet"  # of a line of one's own: its last point, and what is there
MOST = 4  # sentences said one by one; our choice
CLOSE = 5e-3  # share: half of the last of three figures, to which an example is rounded


@dataclass(frozen=True)
class Along:
    """site: packed, "" for none; way: the way asked about; changes: a sentence for each number
    typed that goes along; only_here: one for each that does not."""

    site: str = ""
    way: str = ""
    changes: tuple[str, ...] = ()
    only_here: tuple[str, ...] = ()


def words(found: Along) -> tuple[str, ...]:
    """What is said of it beside the links that lead on, in sentences."""
    said = []
    if found.changes:
        said.append(f"What you entered goes along to the next page. {_listed(found.changes)}")
    if found.only_here:
        said.append(f"This stays on this page. {_listed(found.only_here)}")
    return tuple(said)


def _listed(sentences: tuple[str, ...]) -> str:
    rest = len(sentences) - MOST
    return " ".join(sentences[:MOST]) + (f" And {rest} more." if rest > 0 else "")


def along(sheet: Sheet, state: State, packed: str = "", way: str = "") -> Along:
    """What goes along from a form.  packed: its site, "" for none; way: asked about.

    Raises nothing.
    """
    as_it_is = Along(packed, way if packed else "")
    hidden = hidden_keys(sheet, state)
    if sheet.key not in views.VIEWS or not any(
        state.is_typed(entry) for entry in sheet.fields if entry.key not in hidden
    ):
        return as_it_is
    try:
        if _by_few_questions(sheet, state):
            known = state if packed else _unlike_the_example(sheet, state)
            return _few(unpack(packed) if packed else to_change(YOURS), sheet, known)
        if packed:
            return _from(unpack(packed), sheet, state, way)
        own = _own_line(sheet, state)
        site = replace(own or to_change(CHANGED), system=state.system)
        found = _from(site, sheet, _unlike_the_example(sheet, state), "" if own else way)
    except InputError as error:
        return replace(as_it_is, only_here=(f"What you entered stays here: {error.message}",))
    if own is not None:
        said = "Your own line stands in for the example's pipe sections and outlets."
        return replace(found, changes=(said, *found.changes))
    return found if found.changes else replace(found, site="", way="")


def _from(site: Site, sheet: Sheet, state: State, way: str) -> Along:
    put = views.back(site, sheet.key, state, way, going=True)
    return Along(pack(put.site), way, put.changes, put.what_if)


def _unlike_the_example(sheet: Sheet, state: State) -> State:
    """The state with what nobody gave, but an older link means otherwise, as assumed."""
    older = {
        entry.key: ASSUMED
        for entry in sheet.fields
        if state.standing_of(entry) == "example" and not _as_example(entry, state)
    }
    return replace(state, standing={**state.standing, **older})


def _as_example(entry: Field, state: State) -> bool:
    """Whether a field stands as today's example, to its rounding in either system."""
    text = _unit(entry, state)
    for system in ("metric", "us"):
        default = entry.default(system)
        if text == default or (isinstance(entry, Rows) and not text and not default):
            return True
        if isinstance(entry, Number) and text and default and close(text, default, entry, CLOSE):
            return True
    return isinstance(entry, Rows | Text)  # a table is the line, which ``_own_line`` looks at


def _unit(entry: Field, state: State) -> str:
    text = state.text(entry).strip()
    if not isinstance(entry, Number) or not text:
        return text
    return with_unit(text, entry, state.units.get(entry.key), state.system)


# A few questions ------------------------------------------------------------------------------


def _by_few_questions(sheet: Sheet, state: State) -> bool:
    return sheet.key == "keep_up" and state.text(sheet.field("ask")) == "few"


def _few(site: Site, sheet: Sheet, state: State) -> Along:
    """What goes along from a few questions: one pipe section to a house, and what opens there.

    The way is that to the first outlet with all open: of that the page has told.
    """
    lines = replace(site, system=state.system)
    lines = lines.put_rows("sections", (_house_section(site, sheet, state),))
    outlets = tuple(_house_outlets(sheet, state))
    if not outlets:
        raise InputError("Nothing is open. Enter at least one outlet.", name="showers")
    lines = lines.put_rows("outlets", outlets)
    tables = {entry.key: "example" for entry in sheet.fields if isinstance(entry, Rows)}
    rest = replace(state, texts={**state.texts, "ask": "rows"},
                   standing={**state.standing, **tables, "ask": "example"})  # fmt: skip
    way = f"{THEN}/{outlets[0]['name'].text}"
    found = _from(lines, sheet, rest, way)
    said = "The pipe to the house and what opens there stand in for pipe sections and outlets."
    return replace(found, changes=(said, *found.changes))


def _house_section(site: Site, sheet: Sheet, state: State) -> dict[str, Fact]:
    climb, base = _answered("climb", sheet, state), ways.pump_height(site)
    if base and climb.known:
        height = base + parse(climb.text, "length").value
        climb = replace(climb, text=written(height, "length").text)
    return {
        "from": Fact(PUMP), "to": Fact(HOUSE), "length": _answered("away", sheet, state),
        "height": climb, "pipe": _answered("main", sheet, state),
        "bends": Fact(str(HOUSE_BENDS), ASSUMED, "usual for one pipe to a house"),
        "fitting": Fact("none"),
    }  # fmt: skip


def _house_outlets(sheet: Sheet, state: State) -> Iterator[dict[str, Fact]]:
    for name, kind, key, later in HOUSE_OUTLETS:
        count = _answered(key, sheet, state)
        if count.text.strip() not in ("", "0"):
            before = replace(count, text="0") if later else count
            yield {"name": Fact(name), "at": Fact(HOUSE), "kind": Fact(kind), "before": before,
                   "after": count}  # fmt: skip


def _answered(key: str, sheet: Sheet, state: State) -> Fact:
    """A few questions' answer as a fact: what its reader left is assumed, from the example."""
    entry = sheet.field(key)
    if state.standing_of(entry) == "example":
        return Fact(_unit(entry, state), ASSUMED, FROM_THE_EXAMPLE)
    return Fact(_unit(entry, state))


# A line of one's own --------------------------------------------------------------------------


def _own_line(sheet: Sheet, state: State) -> Site | None:
    """The example's pump and people with the form's own line to one outlet; None where the form
    has the example's sections, if with another length, climb or pipe, or no line at all."""
    table = next((entry for entry in sheet.fields if entry.key == "line"), None)
    if not isinstance(table, Rows) or _from_the_example(table, state):
        return None
    worked = typed_over(sheet, state, hidden_keys(sheet, state))
    rows = [_cells(table, row, worked) for row in filled_rows(table, worked.text(table),
                                                              worked.system)]  # fmt: skip
    rows = rows or _single(sheet, state)
    height, sections = 0.0, []
    for number, (long, up, pipe, bends, part) in enumerate(rows, 1):
        height += parse(up, "length").value
        sections.append({
            "from": Fact(PUMP if number == 1 else f"point {number - 1}"),
            "to": Fact(END if number == len(rows) else f"point {number}"), "length": Fact(long),
            "height": Fact(up if number == 1 else written(height, "length").text),
            "pipe": Fact(pipe), "bends": Fact(bends), "fitting": Fact(part),
        })  # fmt: skip
    site = to_change(YOURS).put_rows("sections", tuple(sections))
    return site.put_rows("outlets", (_outlet(sheet, state),))


def _from_the_example(table: Rows, state: State) -> bool:
    if state.standing_of(table) != "example":
        return False
    systems = ("metric", "us")
    rows = row_text.decode(state.text(table))
    return any(len(rows) == len(row_text.decode(table.default(one))) for one in systems)


def _cells(table: Rows, row: tuple[str, ...], state: State) -> list[str]:
    """Length, rise, pipe, bends and part of a row, numbers with their units."""
    cells = []
    for column, text in zip(table.columns, row, strict=False):
        if isinstance(column, Number):
            symbol = state.units.get(f"{table.key}.{column.key}")
            text = with_unit(text.strip(), column, symbol, state.system)
        cells.append(text)
    return cells[:5]


def _single(sheet: Sheet, state: State) -> list[list[str]]:
    """The one pipe of the form.  Raises InputError where it has no size that a site holds."""
    entries = {entry.key: entry for entry in sheet.fields}
    kind = state.text(entries["kind"])
    if kind not in entries or kind not in pipes.KINDS:
        raise InputError("A site holds pipes by their size.", name="kind")
    pipe = f"{kind}/{state.text(entries[kind])}"
    long, climb = (_unit(entries[key], state) for key in ("length", "climb"))
    return [[long, climb, pipe, _bends(entries, state), "none"]]


def _bends(entries: dict[str, Field], state: State) -> str:
    """As counted; none where no length is added for them; else "", as many as is usual."""
    if "elbow90" in entries:
        return state.text(entries["elbow90"])
    extra = _unit(entries["extra"], state)
    return "0" if extra and parse(extra, "percent").value == 0 else ""


def _outlet(sheet: Sheet, state: State) -> dict[str, Fact]:
    """One steady draw of the form's flow, which needs the form's pressure."""
    entries = {entry.key: entry for entry in sheet.fields}
    needed = _unit(entries["wanted"], state)
    use = entries.get("use")
    if isinstance(use, Choice) and state.text(use) != "own":
        kind = {"house": "shower", "drip": "drip", "trough": "float"}.get(state.text(use), "shower")
        works = practice.OUTLET_BY_KEY[kind].works
        needed = written(works or 0.0, "pressure").text
    return {
        "name": Fact(OUTLET), "at": Fact(END), "kind": Fact("steady"), "before": Fact("1"),
        "after": Fact("1"), "flow": Fact(_unit(entries["flow"], state)), "needed": Fact(needed),
    }  # fmt: skip
