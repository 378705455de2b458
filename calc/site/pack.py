"""A whole site as one compact text, for a link's fragment; and back.

``1m~name~note~words~facts~table~table...``: parts are set apart by "~", rows by ";", cells by
",".  "!" takes the sign behind it as it is, "_" is a space, "*" marks what was assumed, and
".0" stands for the first of the words that come more than once; a row's last cell "." says that
it and all behind it are as in the row above.  A number without a unit is in the usual metric one;
what is unknown is left out.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator

from calc.errors import InputError
from calc.reading import seen
from calc.site.demo import FROM_THE_EXAMPLE, alder_terrace
from calc.site.facts import ASSUMED, BY_PATH, GIVEN, SLOTS, Fact, Slot
from calc.site.file import NAME, NOTE
from calc.site.rows import MOST, TABLES, Row, Table
from calc.site.site import Site
from calc.units import QUANTITIES

VERSION = "1"
LARGEST = 60_000  # characters read from a link; our choice
SYSTEMS = {"m": "metric", "u": "us"}
_SIGNS = "~;,!_*."
AS_ABOVE = "."  # no other cell is this: a "." in front is of a word, or stands behind "!"
_DIGITS = "0123456789abcdefghijklmnopqrstuvwxyz"
FROM_A_LINK = "assumed by whoever made the link"


def pack(site: Site) -> str:
    """A site as a compact text.  ``unpack`` gives it back, all but the wording of other reasons."""
    words = _repeated(site)
    facts = (
        slot.code + _packed(slot, site.facts[slot.key], words)
        for slot in SLOTS
        if slot.key in site.facts
    )
    tables = (
        table.code + ";".join(_packed_rows(table, site.rows(table.key), words))
        for table in TABLES
        if site.rows(table.key)
    )
    listed = ",".join(map(_escaped, words))
    head = VERSION + site.system[0]
    parts = (head, _escaped(site.name), _escaped(site.note), listed, ",".join(facts), *tables)
    return "~".join(parts)


def _facts_of(site: Site) -> Iterator[tuple[Slot, Fact]]:
    for path, fact in site.facts.items():
        yield BY_PATH[path], fact
    for table in TABLES:
        for row in site.rows(table.key):
            for slot in table.columns:
                if slot.key in row:
                    yield slot, row[slot.key]


def _repeated(site: Site) -> dict[str, str]:
    """Words that come more than once, in the order they are met -> how they are written."""
    counted = Counter(
        fact.text for slot, fact in _facts_of(site) if slot.kind in ("text", "choice")
    )
    words = [word for word, times in counted.items() if times > 1 and len(word) > 3]
    return {word: f".{_number(at)}" for at, word in enumerate(words[: len(_DIGITS) ** 2])}


def _number(at: int) -> str:
    return _DIGITS[at] if at < 36 else _DIGITS[at // 36] + _DIGITS[at % 36]


def _packed_rows(table: Table, rows: tuple[Row, ...], words: dict[str, str]) -> Iterator[str]:
    above: list[str] = []
    for row in rows:
        cells = [_packed(c, row[c.key], words) if c.key in row else "" for c in table.columns]
        yield ",".join(_like_above(cells, above))
        above = cells


def _like_above(cells: list[str], above: list[str]) -> list[str]:
    """A row's cells without those at its end that are empty, or where that is shorter are as in
    the row above."""
    same = len(cells)
    while above and same and cells[same - 1] == above[same - 1]:
        same -= 1
    short, found = [*cells[:same], AS_ABOVE], _ended(cells)
    return short if same < len(_ended(above)) and _long(short) < _long(found) else found


def _ended(cells: list[str]) -> list[str]:
    """Without what is empty at the end; a last cell may itself end in a comma, which stays."""
    found = list(cells)
    while found and not found[-1]:
        found.pop()
    return found


def _long(cells: list[str]) -> int:
    return len(",".join(cells))


def _packed(slot: Slot, fact: Fact, words: dict[str, str]) -> str:
    text = words.get(fact.text) if slot.kind in ("text", "choice") else None
    if text is None:
        text = _escaped(_bare(slot, fact.text))
    return f"*{text}" if fact.standing == ASSUMED else text


def _bare(slot: Slot, text: str) -> str:
    """Without the usual metric unit, where ``tidied`` puts the same one back."""
    symbol = QUANTITIES[slot.quantity].default("metric").symbol if slot.quantity else ""
    if symbol and text.endswith(f" {symbol}"):
        bare = text[: -len(symbol) - 1]
        return bare if slot.tidied(bare) == text else text
    return text


def _escaped(text: str) -> str:
    """With spaces as "_"; the signs that mean something, and a "." in front, behind "!"."""
    found = []
    for at, sign in enumerate(text):
        if sign == " ":
            found.append("_")
        elif sign == "\n":
            found.append("!n")
        else:
            plain = sign not in _SIGNS or (sign == "." and at > 0)
            found.append(sign if plain else f"!{sign}")
    return "".join(found)


# Back -----------------------------------------------------------------------------------------


def unpack(text: str) -> Site:
    """The site of a packed text.  Raises InputError, saying what cannot be read."""
    parts = _split(text, "~")
    if len(text) > LARGEST or len(parts) < 5 or parts[0][1:] not in SYSTEMS:
        raise InputError("This is not a whole site. Ask for the link again.")
    if parts[0][0] != VERSION:
        raise InputError("This site was packed by another release, and cannot be read here.")
    name, note = seen(_plain(parts[1])), seen(_plain(parts[2]))
    if len(name) > NAME or len(note) > NOTE:
        raise InputError("The site's name or note is too long.")
    words = [_plain(word) for word in _split(parts[3], ",")]
    site = Site(name, SYSTEMS[parts[0][1:]], {}, {}, note)
    by_code = {slot.code: slot for slot in SLOTS}
    for piece in _split(parts[4], ",") if parts[4] else []:
        slot = by_code.get(piece[:2])
        if slot is None:
            raise InputError(f"“{piece[:2]}” is not a fact known here.")
        site = site.put(slot.key, _fact(slot, piece[2:], words))
    for part in parts[5:]:
        site = _with_table(site, part, words)
    return site


def _with_table(site: Site, part: str, words: list[str]) -> Site:
    table = next((one for one in TABLES if part.startswith(one.code)), None)
    rows = _split(part[1:], ";")
    if table is None or len(rows) > MOST:
        raise InputError("A table of this site cannot be read.")
    held: list[Row] = []
    above: list[str] = []
    for row in rows:
        above = _whole(_split(row, ","), above)
        held.append(_row(table, above, words))
    return site.put_rows(table.key, tuple(held))


def _whole(cells: list[str], above: list[str]) -> list[str]:
    """A row's cells, with those of the row above where it says so."""
    if cells[-1] != AS_ABOVE:
        return cells
    if len(cells) > len(above):
        raise InputError("A row of this site is like another that is missing.")
    return cells[:-1] + above[len(cells) - 1 :]


def _row(table: Table, cells: list[str], words: list[str]) -> Row:
    if len(cells) > len(table.columns):
        raise InputError("A row of this site has more cells than there are columns.")
    pairs = zip(table.columns, cells, strict=False)
    return {slot.key: _fact(slot, cell, words, table.key) for slot, cell in pairs if cell}


def _fact(slot: Slot, cell: str, words: list[str], table: str = "") -> Fact:
    standing = GIVEN
    if cell.startswith("*"):
        cell, standing = cell[1:], ASSUMED
    if cell.startswith("."):
        text = _word(cell[1:], words)
    else:
        text = _plain(cell)
    return Fact(text, standing, _reason(slot, text, table) if standing == ASSUMED else "")


def _reason(slot: Slot, text: str, table: str) -> str:
    """Why a fact was assumed: a link has no room for it, but two reasons can be told."""
    text = slot.tidied(text)
    if slot.usual and text == slot.usual:
        return slot.reason
    example = alder_terrace()
    held = [row.get(slot.key) for row in example.rows(table)] if table else [example.get(slot.key)]
    return FROM_THE_EXAMPLE if any(one and one.text == text for one in held) else FROM_A_LINK


def _word(digits: str, words: list[str]) -> str:
    at = int(digits, 36) if digits and all(sign in _DIGITS for sign in digits) else -1
    if not 0 <= at < len(words):
        raise InputError("A word of this site is missing. Ask for the link again.")
    return words[at]


def _split(text: str, mark: str) -> list[str]:
    """Pieces of a text between marks that no "!" stands before, still escaped."""
    pieces: list[str] = []
    piece: list[str] = []
    kept = False
    for sign in text:
        if sign == mark and not kept:
            pieces.append("".join(piece))
            piece = []
            continue
        kept = sign == "!" and not kept
        piece.append(sign)
    return [*pieces, "".join(piece)]


def _plain(text: str) -> str:
    found, signs = [], iter(text)
    for sign in signs:
        if sign == "!":
            sign = next(signs, "!")
            found.append("\n" if sign == "n" else sign)
        else:
            found.append(" " if sign == "_" else sign)
    return "".join(found)
