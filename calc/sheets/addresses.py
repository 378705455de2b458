"""Where a link of an answer leads: the page of its sheet, opened on its texts."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.errors import InputError
from calc.page.entries import read
from calc.page.fields import Rows
from calc.page.state import State, filled_rows
from calc.sheets import sheet as find_sheet
from calc.site import link as site_link

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from calc.page.answer import Link
    from calc.page.fields import Cell, Field, Sheet

SAME = 1e-9  # share; numbers closer than this are one


def addresses(
    system: str,
    example: bool,
    base: str = "",
    flat: bool = False,
    carried: tuple[str, str] = ("", ""),
    origin: tuple[str, State] | None = None,
) -> Callable[[Link], str]:
    """What gives each ``Link`` of an answer its address.

    system, example: of the answer, "metric" or "us", and whether it is all the example's; base:
    way to the site's root; flat: pages end in .html; carried: the packed site that its links take
    along, and the way asked about; origin: key of the answer's sheet, and the form as it stands.
    """

    def address(link: Link) -> str:
        target = find_sheet(link.sheet)
        place = base + (target.page.rstrip("/") + ".html" if flat else target.page)
        form = origin[1] if origin and origin[0] == link.sheet else None
        return f"{place}#{fragment(target, link.values, system, example, carried, form)}"

    return address


def fragment(
    sheet: Sheet,
    texts: Mapping[str, str],
    system: str = "metric",
    example: bool = False,
    carried: tuple[str, str] = ("", ""),
    form: State | None = None,
) -> str:
    """The part of a link after "#" that opens ``sheet`` with ``texts``.

    They are given by the reader, or where ``example`` the example's, as the answer they are from.
    carried: a packed site that fills the other fields, and the way asked about; form: the sheet's
    own form, of which a text that says the same number stays as typed and as well known as it is.
    """
    standing = dict.fromkeys(texts, "example" if example else "given")
    state = State(system, dict(texts), {}, standing)
    kept = {entry.key for entry in sheet.fields if entry.key not in texts}
    for entry in sheet.fields if form is not None else ():
        if entry.key in texts and _same(entry, state, form):
            state = _as_it_stands(entry, state, form)
            kept |= {entry.key} & form.kept
    return site_link.write(sheet, state, *carried, frozenset(kept))


def _as_it_stands(entry: Field, state: State, form: State) -> State:
    """``state`` with one field as another form has it."""
    units = {key: unit for key, unit in form.units.items() if key.split(".")[0] == entry.key}
    standing = form.standing_of(entry)
    return State(
        state.system,
        {**state.texts, entry.key: form.text(entry)},
        {**state.units, **units},
        {**state.standing, entry.key: "given" if standing == "asked" else standing},
    )


def _same(entry: Field, state: State, other: State) -> bool:
    """Whether a field reads the same in two forms of the same system."""
    if not isinstance(entry, Rows):
        return _reads_same(entry, state, other)
    rows, others = (filled_rows(entry, one.text(entry), one.system) for one in (state, other))
    return [len(row) for row in rows] == [len(row) for row in others] and all(
        _reads_same(column, state.cell(entry, column, cell), other.cell(entry, column, another))
        for row, like in zip(rows, others, strict=True)
        for column, cell, another in zip(entry.columns, row, like, strict=False)
    )


def _reads_same(entry: Cell, state: State, other: State) -> bool:
    texts = [one.text(entry) for one in (state, other)]
    if texts[0] == texts[1] and state.units.get(entry.key) == other.units.get(entry.key):
        return True
    try:
        value, another = (
            read(entry, one.text(entry), one.system, one.units.get(entry.key))[0]
            for one in (state, other)
        )
    except InputError:
        return False
    if isinstance(value, float) and isinstance(another, float):
        return abs(value - another) <= SAME * max(abs(value), abs(another))
    return bool(value == another) and (value is not None or texts[0].strip() == texts[1].strip())
