"""Links of the desk's pages: a site, two ways of it in one, and the site of any page's link."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc.desk import difference, may_change
from calc.errors import InputError
from calc.page.state import State
from calc.sheets import KEYS, site_ops, views
from calc.sheets import sheet as find_sheet
from calc.sheets.parts.filling import filled_form
from calc.site import fragment as spelled
from calc.site import link
from calc.site.pack import pack, unpack

if TYPE_CHECKING:
    from calc.page.fields import Sheet
    from calc.site.site import Site

OTHER = "to"  # key of the second way: what is other there than in the site before it
NO_SITE = (
    "This link holds no site. On its page choose “Save as” under Sites, and copy the link again."
)
NO_LINK = "This is not a link of ours. Copy the whole address, from http to its end."
MORE = "This link holds more than is understood here, after its end. Copy it again."


@dataclass(frozen=True)
class Opened:
    """What a link holds: system of units, the site, and its second way (None: only one).

    said: what of it could not be taken over, in sentences; may: codes of what its maker asks its
    reader to change.
    """

    system: str
    site: Site
    other: Site | None = None
    said: tuple[str, ...] = ()
    may: str = ""


def write(system: str, site: Site, other: Site) -> str:
    """The fragment that opens two ways side by side: a site, and what is other in the second."""
    pairs = [("v", str(link.VERSION))] + ([("u", "us")] if system == "us" else [])
    base = unpack(pack(site))  # as its reader will have it
    pairs += [("site", pack(site)), (OTHER, difference.write(base, other))]
    return spelled.join([*pairs, ("c", spelled.check(pairs))])


def opened(fragment: str) -> Opened:
    """What a fragment holds, by its site alone.  Raises InputError, saying what is wrong."""
    pairs = _whole(fragment)
    held = {key.lower(): text for key, text in pairs}
    if not held.get("site"):
        raise InputError(NO_SITE)
    site = unpack(held["site"])
    other = difference.read(site, held[OTHER]) if OTHER in held else None
    system = "us" if held.get("u", "").lower() == "us" else "metric"
    return Opened(system, site, other, may=_may(held.get("may", "")))


def _may(text: str) -> str:
    """The codes that are known here, as a link carries them."""
    return may_change.written(may_change.read(text))


def _whole(fragment: str) -> list[tuple[str, str]]:
    """Its pairs before the check characters.  Raises InputError where it is not whole."""
    if len(fragment) > spelled.LONGEST:
        raise InputError(link.CUT)
    for _ in range(3):
        pairs, damaged = spelled.part(fragment)
        keys = [key.lower() for key, _ in pairs]
        at = keys.index("c") if "c" in keys else -1
        if keys[:1] == ["v"] and not damaged and at > 0:
            if pairs[0][1] != str(link.VERSION):
                raise InputError(link.NEWER)
            if spelled.same_check(pairs[at][1], pairs[:at]):
                if at + 1 < len(pairs):
                    raise InputError(MORE)
                return pairs[1:at]
        once = spelled.again(fragment)
        if once is None:
            break
        fragment = once
    raise InputError(link.CUT)


# Any page's address ---------------------------------------------------------------------------


def of_address(text: str) -> Opened:
    """The site of an address as it was pasted, or of its part after "#".

    What its reader typed on a sheet is put into the site where that is one to one; what stays a
    what-if of that page is said.  Raises InputError, saying what is wrong with it.
    """
    text = "".join(text.split())  # a mail program folds a long address
    place, sign, fragment = text.partition("#")
    if not sign:
        place, sign, fragment = text.partition("%23")
    if not sign:
        place, fragment = "", text
    if "=" not in fragment and "%3d" not in fragment.lower():
        raise InputError(NO_LINK)
    sheet = _sheet_of(place)
    if sheet is None:
        return opened(fragment)
    reading = link.read(fragment, sheet)
    if not reading.trusted:
        raise InputError(" ".join(reading.said))
    if not reading.site:
        raise InputError(NO_SITE)
    return of_sheet(sheet, reading)


def _sheet_of(place: str) -> Sheet | None:
    """The sheet whose page an address is of."""
    name = re.sub(r"(/index)?(\.html)?/*(\?.*)?$", "", place).rpartition("/")[2]
    pages = {find_sheet(key).page.rstrip("/"): key for key in KEYS}
    return find_sheet(pages[name]) if name in pages else None


def of_sheet(sheet: Sheet, reading: link.Reading) -> Opened:
    """The site of a sheet's link, with what is typed in it put back.  Raises InputError."""
    site, filled = (
        unpack(reading.site),
        site_ops.linked(reading.site, sheet.key, reading.way, reading.system),
    )
    if not reading.named:
        return Opened(reading.system, site, may=_may(reading.may))
    before = State(reading.system, reading.texts, reading.units, reading.standing)
    state = filled_form(filled, before, reading.named)
    put = views.back(site, sheet.key, state, filled["way"])
    return Opened(reading.system, put.site, None, put.what_if, _may(reading.may))
