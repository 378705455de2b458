"""A site out of the fragment of a page of the desk, or the invented one where there is none."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc.errors import InputError
from calc.page.state import State
from calc.sheets import KEYS, onward, site_ops
from calc.sheets import sheet as find_sheet
from calc.sheets.parts.filling import filled_form
from calc.site import link
from calc.site.demo import alder_terrace
from calc.site.pack import unpack

if TYPE_CHECKING:
    from calc.page.fields import Sheet
    from calc.site.site import Site

NO_SITE = (
    "This link holds the numbers of one page and no site. Open that page, go on from there, and "
    "the site comes along."
)


@dataclass(frozen=True)
class Opened:
    """site: what the page works with; system: the reader's; may: codes of what may be changed;
    example: it is the invented site; said: sentences about what could not be read."""

    site: Site
    system: str
    may: str = ""
    example: bool = False
    said: tuple[str, ...] = ()


def opened(fragment: str, system: str = "", page: str = "") -> Opened:
    """The site of a fragment; what a link says of a page's form is put into it.

    system: "" for the link's own; page: last word of the address of the page it is of, "" where
    that is one of the desk's.  Raises InputError where the link is not whole or holds no site.
    """
    if not fragment.strip("#"):
        return Opened(alder_terrace(), system or "metric", example=True)
    sheet = find_sheet(_key(page))
    reading = link.read(fragment, sheet)
    if reading.cut:
        raise InputError(" ".join(reading.said))
    if not reading.site:
        raise InputError(NO_SITE)
    site = unpack(reading.site)
    if page and reading.named:
        site = unpack(onward.along(sheet, _form(reading, sheet), reading.site, reading.way).site)
    return Opened(site, system or reading.system, reading.may, said=reading.said if page else ())


def _form(reading: link.Reading, sheet: Sheet) -> State:
    """The form of a sheet as a link opens it, the rest of it as the link's site fills it."""
    filled = site_ops.linked(reading.site, sheet.key, reading.way, reading.system)
    before = State(reading.system, reading.texts, reading.units, reading.standing)
    return filled_form(filled, before, reading.named)


def _key(page: str) -> str:
    """The sheet of a page by the last word of its address; any where there is none."""
    pages = {find_sheet(key).page.strip("/"): key for key in KEYS} if page else {}
    return pages.get(page, "reach")
