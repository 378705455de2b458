"""Where a link of an answer leads: the page of its sheet, opened on its texts."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.page.fields import UNKNOWN, Rows, Text
from calc.page.state import State
from calc.sheets import sheet as find_sheet
from calc.site import link as site_link

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from calc.page.answer import Link
    from calc.page.fields import Field, Sheet


def addresses(
    sheet: Sheet,
    state: State,
    example: bool,
    base: str = "",
    flat: bool = False,
    carried: tuple[str, str] = ("", ""),
    going: tuple[str, str] | None = None,
    may: str = "",
) -> Callable[[Link], str]:
    """What gives each ``Link`` of an answer its address.

    sheet, state: what was asked; example: whether all of it is the example's; base: way to the
    site's root; flat: pages end in .html; carried: the packed site that its links take along, and
    the way asked about; going: those that links to other sheets take along, with what was typed
    here in the site (None: the same); may: what the maker of this page's link asks its reader to
    change, which stays said wherever the site goes along.
    """

    def address(link: Link) -> str:
        target = find_sheet(link.sheet)
        place = base + (target.page.rstrip("/") + ".html" if flat else target.page)
        same = link.sheet == sheet.key
        taken = carried if same or going is None else going
        before = state if same else None
        made = fragment(target, link.values, state.system, example, taken, before, may)
        return f"{place}#{made}"

    return address


def fragment(
    sheet: Sheet,
    texts: Mapping[str, str],
    system: str = "metric",
    example: bool = False,
    carried: tuple[str, str] = ("", ""),
    before: State | None = None,
    may: str = "",
) -> str:
    """The part of a link after "#" that opens ``sheet`` with ``texts``.

    They are given by the reader, or where ``example`` the example's, as the answer they are from.
    carried: a packed site that fills the other fields, and the way asked about; before: the form
    of this sheet that the link changes (None: of another): what is as it was there keeps its
    standing, so that what nobody gave does not become the reader's own; may: as in
    ``link.Reading``, written beside a site alone.
    """
    texts, kept = dict(texts), {entry.key for entry in sheet.fields if entry.key not in texts}
    standing = dict.fromkeys(texts, "example" if example else "given")
    for entry in sheet.fields if before else ():
        if before and entry.key in texts and _unchanged(sheet, entry, texts, before):
            standing[entry.key] = before.standing_of(entry)
            if standing[entry.key] == "unknown":
                texts[entry.key] = UNKNOWN
            kept |= {entry.key} & before.kept
    state = State(system, texts, {}, standing)
    return site_link.write(sheet, state, *carried, frozenset(kept), may)


def _unchanged(sheet: Sheet, entry: Field, texts: Mapping[str, str], before: State) -> bool:
    """Whether a link's text of a field says what ``before`` says, or works with."""
    if before.standing_of(entry) == "unknown":
        unknown = None if isinstance(entry, Rows | Text) else entry.unknown
        taken = State(before.system, {entry.key: unknown.text(before.system) if unknown else ""})
    else:
        taken = before
    now = State(before.system, texts)
    return site_link.said(sheet, entry, now) == site_link.said(sheet, entry, taken)
