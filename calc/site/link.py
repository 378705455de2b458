"""Links: the state of a sheet in the part of an address after "#", written and read here alone.

"v=1&u=us&climb=50ft&flow.=10gpm&c=7k2mq": the version first, then what was given with the unit it
was typed in, check characters last.  A key with "." at its end was assumed, one with "-" is an
example's that is not the frozen default; what is left out is the frozen default of the version.
Without a version it is a link of release 0.1.0 and is read as that release read it.

"site=..." before the check characters is a whole site (``pack``): what such a link leaves out is as
the site fills it.  "way=..." is the way asked about, "may=..." what its reader is asked to change.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING

from calc.page.fields import UNKNOWN, Choice, Number, Rows, Sheet
from calc.page.row_text import decode
from calc.page.state import State, hidden_keys
from calc.reading import split
from calc.site import fragment as spelled
from calc.site import frozen, link_fields, link_texts, old_link

if TYPE_CHECKING:
    from collections.abc import Mapping

    from calc.page.fields import Field


VERSION = 1
Pairs = list[tuple[str, str]]  # (key of a field, its text), as they stand in a link
MARKS = {"assumed": ".", "example": "-"}  # at the end of a key
CUT = "This link is cut off or damaged: ask for it again."
OLDER = "An older link: check your numbers."
NEWER = "This link was made by a newer release: load this page again."
CARRIED = ("site", "way", "may")  # keys of what a link carries beside a sheet's fields
SYSTEMS = {"us": "us", "metric": "metric", "": "metric"}


@dataclass(frozen=True)
class Reading:
    """What a link says.

    texts, units, standing: as in ``State``, of every field; said: sentences about what could not
    be read; cut: it is not whole; older: of release 0.1.0; asks: (key of a field, question);
    named: keys of the fields it says; site: a packed site; way: asked about; may: what its reader
    is asked to change, as codes ("": nothing said).
    """

    system: str = "metric"
    texts: dict[str, str] = field(default_factory=dict)
    units: dict[str, str] = field(default_factory=dict)
    standing: dict[str, str] = field(default_factory=dict)
    said: tuple[str, ...] = ()
    cut: bool = False
    older: bool = False
    asks: tuple[tuple[str, str], ...] = ()
    named: frozenset[str] = frozenset()
    site: str = ""
    way: str = ""
    may: str = ""

    @property
    def trusted(self) -> bool:
        """Whether a verdict may be shown: the link is whole and nothing is asked."""
        return not self.cut and not self.asks

    @property
    def state(self) -> State:
        """What a form does with it."""
        return State(self.system, dict(self.texts), dict(self.units), dict(self.standing))


# Writing -------------------------------------------------------------------------------------


def write(
    sheet: Sheet,
    state: State,
    site: str = "",
    way: str = "",
    kept: frozenset[str] = frozenset(),
    may: str = "",
) -> str:
    """The fragment that says ``state``: what does not show, or is a frozen default, is left out.

    site: a packed site that goes with it; way: which way through it is asked about; kept: keys
    of fields that stand as that site fills them, and so need not be said; may: as in ``Reading``.
    """
    pairs = _head(state.system)
    usual = frozen.table(VERSION, sheet.key, state.system)
    hidden = hidden_keys(sheet, state)
    for entry in sheet.fields:
        if entry.key in hidden or (site and entry.key in kept):
            continue
        text = _text(entry, state.text(entry), state.units, state.system, usual)
        standing, left = _standing(entry, text, state, usual), usual.get(entry.key)
        if left is not None:
            left = _text(entry, left, {}, state.system, usual)
        if standing != "example" or text != left:
            pairs.append((entry.key + MARKS.get(standing, ""), text))
    return _closed([*pairs, *_carried(site, way, may)])


def said(sheet: Sheet, entry: Field, state: State) -> str:
    """The text of one field as a link says it, whatever its standing."""
    usual = frozen.table(VERSION, sheet.key, state.system)
    return _text(entry, state.text(entry), state.units, state.system, usual)


def of_site(system: str, site: str, way: str = "", may: str = "") -> str:
    """The fragment that opens any sheet as a packed site fills it; may: as in ``Reading``."""
    return _closed([*_head(system), *_carried(site, way, may)])


def _head(system: str) -> Pairs:
    return [("v", str(VERSION))] + ([("u", "us")] if system == "us" else [])


def _carried(site: str, way: str, may: str) -> Pairs:
    return [pair for pair in zip(CARRIED, (site, way, may), strict=True) if site and pair[1]]


def _closed(pairs: Pairs) -> str:
    return spelled.join([*pairs, ("c", spelled.check(pairs))])


def _text(
    entry: Field, text: str, units: Mapping[str, str], system: str, usual: dict[str, str]
) -> str:
    columns = {c.key: usual[f"{entry.key}.{c.key}"] for c in getattr(entry, "columns", ())
               if f"{entry.key}.{c.key}" in usual}  # fmt: skip
    return link_texts.text_out(entry, text, units, system, columns)


def _standing(entry: Field, text: str, state: State, usual: dict[str, str]) -> str:
    """ "given", "assumed" or "example"; "unknown" is told by its text."""
    if text.partition("!")[0] == UNKNOWN:
        return "unknown"
    said = state.standing.get(entry.key)
    if said is None:
        default = _text(entry, entry.default(state.system), {}, state.system, usual)
        return "example" if text == default else "given"
    return "assumed" if said == "unknown" else said


# Reading -------------------------------------------------------------------------------------


def read(fragment: str, sheet: Sheet) -> Reading:
    """What the link says about ``sheet``.  Never raises: what cannot be read is said."""
    if len(fragment) > spelled.LONGEST:
        return _lost(sheet, "metric", CUT)
    pairs, damaged = spelled.part(fragment)
    keys = {key.lower() for key, _ in pairs} | {key.lower() for key, _ in damaged}
    if not {"v", "c"} & keys and fragment.strip("#").lower() != "v":
        return _Old(sheet, pairs, damaged).reading()
    for _ in range(3):
        found = _whole(pairs)
        if found:
            return _with_site(sheet, *found)
        once = spelled.again(fragment)
        if once is None:
            break
        fragment = once
        pairs, damaged = spelled.part(fragment)
    version = dict(pairs).get("v", "")
    newer = version.isascii() and version.isdigit() and int(version[:9]) > VERSION
    return _lost(sheet, _system(dict(pairs).get("u", ""))[0], NEWER if newer else CUT)


def _with_site(sheet: Sheet, pairs: Pairs, after: Pairs) -> Reading:
    carried = {key.lower(): text for key, text in pairs if key.lower() in CARRIED}
    rest = [(key, text) for key, text in pairs if key.lower() not in CARRIED]
    new = _New(sheet, rest, after)
    new.carries = "site" in carried
    reading = new.reading()
    site, way, may = (carried.get(key, "") for key in CARRIED)
    return reading if reading.cut else replace(reading, site=site, way=way, may=may)


def _whole(pairs: Pairs) -> tuple[Pairs, Pairs] | None:
    """(pairs between version and check characters, those after); None: the link is not whole."""
    lower = [key.lower() for key, _ in pairs]
    if not pairs or lower[0] != "v" or pairs[0][1].strip() != str(VERSION) or "c" not in lower:
        return None
    at = lower.index("c")
    if not spelled.same_check(pairs[at][1], pairs[:at]):
        return None
    return pairs[1:at], pairs[at + 1 :]


def _lost(sheet: Sheet, system: str, sentence: str) -> Reading:
    """A link that says nothing: the example stands in the form, and no verdict is shown."""
    texts, units = link_fields.defaults(sheet, VERSION, system)
    standing = dict.fromkeys(texts, "example")
    return Reading(system, texts, units, standing, (sentence,), cut=True)


def _system(text: str) -> tuple[str, bool]:
    """(system, whether it was said in a way that is known)."""
    plain = text.strip().rstrip(link_fields.ENDS).strip().lower()
    return SYSTEMS.get(plain, "metric"), plain in SYSTEMS


class _Link:
    """A link being read: its pairs one by one into texts, units, standing and what is said."""

    version = VERSION
    older = False
    carries = False  # a site, which says the fields that the link does not

    def __init__(self, sheet: Sheet, pairs: Pairs, unread: Pairs) -> None:
        self.sheet, self.pairs, self.unread = sheet, pairs, unread  # unread: [(key, as it stands)]
        self.fields = {entry.key: entry for entry in sheet.fields}
        said = [text for key, text in pairs if key.lower() == "u"]
        self.system, self.system_known = _system(said[-1] if said else "")
        self.texts, self.units = link_fields.defaults(sheet, self.version, self.system)
        self.standing = dict.fromkeys(self.texts, "example")
        self.usual = frozen.table(self.version, sheet.key, self.system)
        self.left: list[str] = []  # not understood
        self.asks: dict[str, str] = {}
        self.given: dict[str, str] = {}
        self.doubled = ["u"] if len({_system(text)[0] for text in said}) > 1 else []

    def reading(self) -> Reading:
        """The ``Reading``."""
        known = []
        for place, (key, text) in enumerate(self.pairs):
            entry, standing = self.entry(key)
            if entry is not None:
                known.append((entry, standing, text, place == len(self.pairs) - 1))
            elif key.lower() != "u":
                self.left.append(f"{key}={text}")
        for entry, standing, text, last in known:
            if self.given.get(entry.key, text) != text:
                self.doubled.append(entry.key)
            self.given[entry.key] = text
            self.standing[entry.key] = standing
            self.take(entry, text, last)
        for key, text in self.unread:
            self.left.append(text)
            entry, _ = self.entry(key)
            if entry is not None:
                self.ask(entry, f"{entry.label}: the link is damaged here.")
        return self.result()

    def entry(self, key: str) -> tuple[Field | None, str]:
        """(field, standing) that a key of a link means; (None, "") for none."""
        for name in (key, key.lower()):
            for standing, mark in (("given", ""), *MARKS.items()):
                if name.endswith(mark) and name[: len(name) - len(mark)] in self.fields:
                    return self.fields[name[: len(name) - len(mark)]], standing
        return None, ""

    def take(self, entry: Field, text: str, last: bool) -> None:
        """One field's text; ``last``: the link ends with it."""
        raise NotImplementedError

    def ask(self, entry: Field, question: str) -> None:
        self.asks[entry.key] = question
        self.standing[entry.key] = "asked"

    def take_choice(self, entry: Choice, text: str) -> None:
        values = {value.lower(): value for value, _ in entry.options}
        found = values.get(text.strip().lower())
        if text.strip() == UNKNOWN and entry.unknown is not None:
            found = UNKNOWN
        if found is None:
            self.left.append(f"{entry.key}={text}")
            self.ask(entry, f"{entry.label}: “{spelled.shown(text)}” is not one of the choices.")
        else:
            self.texts[entry.key] = found

    def result(self) -> Reading:
        said = [OLDER] if self.older and self.given else []
        if said and not self.unread:
            said += old_link.last(self.entry(self.pairs[-1][0])[0], self.texts, self.units)
        for key in dict.fromkeys(self.doubled):
            if key in self.fields:
                entry = self.fields[key]
                self.ask(entry, f"{entry.label} is in this link twice. Enter which is meant.")
            else:
                said.append("The units are in this link twice: the last are taken.")
        if not self.system_known:
            said.append("The units of this link are not known here: metric is taken.")
            self.ask_bare()
        if self.left:
            names = spelled.named([spelled.shown(text) for text in self.left])
            said.append(f"Not understood in this link, and left out: {names}.")
        if self.asks:
            said.append(_asking(list(self.asks.values())))
        marks = dict(self.standing)
        for key, text in self.texts.items():
            if text.strip() == UNKNOWN and marks[key] != "asked":
                marks[key] = "unknown"
        # or the example would be there as if it were this link's
        nothing = bool(self.left) and not (self.given or self.asks or self.carries)
        return Reading(
            self.system, self.texts, self.units, marks, tuple(said), nothing, self.older,
            tuple(self.asks.items()), frozenset(self.given),
        )  # fmt: skip

    def ask_bare(self) -> None:
        """Numbers without a unit, where the link's units are not known."""
        for key, text in self.given.items():
            entry = self.fields[key]
            if isinstance(entry, Number) and text.strip() and not link_fields.own_unit(entry, text):
                self.ask(entry, f"{entry.label}: {spelled.shown(text)} of which unit?")


class _New(_Link):
    """A link of version 1, found to be whole."""

    def __init__(self, sheet: Sheet, pairs: Pairs, after: Pairs) -> None:
        super().__init__(sheet, pairs, [])
        self.after = after

    def reading(self) -> Reading:
        """The ``Reading``; what stands after the check characters is not of the link."""
        for key, text in self.after:
            if self.entry(key)[0] is not None or key.lower() in {"u", "v", "c", *CARRIED}:
                return _lost(self.sheet, self.system, CUT)
            self.left.append(f"{key}={text}")
        return super().reading()

    def take(self, entry: Field, text: str, last: bool) -> None:
        """One field's text."""
        if isinstance(entry, Choice):
            self.take_choice(entry, text)
        elif isinstance(entry, Number):
            read = link_texts.number_in(entry, text, self.system)
            self.texts[entry.key], self.units[entry.key] = read
        elif isinstance(entry, Rows):
            rows = [list(row) for row in decode(text)]
            self.texts[entry.key], more = link_texts.rows_in(
                entry,
                rows,
                self.system,
                link_fields.columns_of(entry, self.usual),
                link_texts.cell_in,
            )
            self.units |= more
        else:
            self.texts[entry.key] = text


class _Old(_Link):
    """A link of release 0.1.0; what 0.1.0 refused for its spelling is read where it can be."""

    version = 0
    older = True

    def take(self, entry: Field, text: str, last: bool) -> None:
        """One field's text, of the last one without what a sentence put after the address."""
        if len(text) > old_link.LONGEST:
            text = text[: old_link.LONGEST]
            self.ask(entry, f"{entry.label}: the link holds more here than can be read.")
        text = link_fields.without_end(entry, text, self.system) if last else text
        if isinstance(entry, Choice):
            self.take_choice(entry, text)
        elif isinstance(entry, Rows):
            self.take_rows(entry, text)
        elif isinstance(entry, Number):
            self.take_number(entry, text)
        else:
            self.texts[entry.key] = text

    def take_number(self, entry: Number, text: str) -> None:
        default = self.usual.get(entry.key, entry.default(self.system))
        read = old_link.number(entry, text, default, self.system)
        two = old_link.damaged(entry, text)
        if two is None:
            if split(read[0], entry.quantity)[1] is not None:  # "12 feet": the value is the same
                read = link_texts.number_in(entry, read[0], self.system)
        elif link_fields.is_number(entry, two[1]):
            shown = " or ".join(spelled.shown(one) for one in two)
            self.ask(entry, f"{entry.label}: {shown}? Enter which is meant.")
        else:
            read = (two[0], read[1])
            self.ask(entry, f"{entry.label}: is {spelled.shown(two[0])} meant? Enter it again.")
        self.texts[entry.key], self.units[entry.key] = read

    def take_rows(self, entry: Rows, text: str) -> None:
        rows, bad = old_link.rows(entry, text)
        if rows or not bad:
            self.texts[entry.key], more = link_texts.rows_in(
                entry, rows, self.system, link_fields.columns_of(entry, self.usual), old_link.cell
            )
            self.units |= more
        if bad:
            self.left += [f"{entry.key}={one}" for one in bad]
            self.ask(entry, f"{entry.label}: some rows of the link could not be read.")


def _asking(questions: list[str]) -> str:
    rest = len(questions) - 3
    more = f" And {rest} more." if rest > 0 else ""
    return "Before there is an answer: " + " ".join(questions[:3]) + more
