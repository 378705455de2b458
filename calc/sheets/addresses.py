"""Where a link of an answer leads: the page of its sheet, opened on its texts."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.page.state import State
from calc.sheets import sheet as find_sheet
from calc.site import link as site_link

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from calc.page.answer import Link
    from calc.page.fields import Sheet


def addresses(
    system: str,
    example: bool,
    base: str = "",
    flat: bool = False,
    carried: tuple[str, str] = ("", ""),
) -> Callable[[Link], str]:
    """What gives each ``Link`` of an answer its address.

    system, example: of the answer, "metric" or "us", and whether it is all the example's; base:
    way to the site's root; flat: pages end in .html; carried: the packed site that its links take
    along, and the way asked about.
    """

    def address(link: Link) -> str:
        target = find_sheet(link.sheet)
        place = base + (target.page.rstrip("/") + ".html" if flat else target.page)
        return f"{place}#{fragment(target, link.values, system, example, carried)}"

    return address


def fragment(
    sheet: Sheet,
    texts: Mapping[str, str],
    system: str = "metric",
    example: bool = False,
    carried: tuple[str, str] = ("", ""),
) -> str:
    """The part of a link after "#" that opens ``sheet`` with ``texts``.

    They are given by the reader, or where ``example`` the example's, as the answer they are from.
    carried: a packed site that fills the other fields, and the way asked about.
    """
    standing = dict.fromkeys(texts, "example" if example else "given")
    kept = frozenset(entry.key for entry in sheet.fields if entry.key not in texts)
    return site_link.write(sheet, State(system, dict(texts), {}, standing), *carried, kept)
