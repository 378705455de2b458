"""What was typed over a site put back into it: for any view, by its bindings.

Every field that was typed is put back, or said to stay a what-if: none is lost in silence.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace

from calc.errors import InputError
from calc.page import row_text
from calc.page.fields import UNKNOWN as ASKED
from calc.page.fields import Choice, Number, Rows, Sheet, Text
from calc.page.state import State, filled_rows, hidden_keys
from calc.pipe import pipes
from calc.reading import split
from calc.sheets.parts.bindings import Asked, Binding
from calc.sheets.parts.filling import Field, cell, shown
from calc.sheets.parts.table_bindings import TableBinding
from calc.site.facts import ASSUMED, GIVEN, NOT_KNOWN, UNKNOWN, Fact
from calc.site.rows import Row
from calc.site.site import Site
from calc.units import QUANTITIES, parse

FIGURES = (4, 3)  # to which a form and an example's form round what a site says
_DIGITS = "0123456789.,¼½¾⅛⅜⅝⅞"
SAME = 1e-9  # share; texts closer than this say the same number


@dataclass(frozen=True)
class PutBack:
    """site: the new one; changes: a sentence for each; what_if: for each text that stays on the
    page only, because the site works it out, does not hold it or could not read it; stays: keys
    of the fields with those."""

    site: Site
    changes: tuple[str, ...] = ()
    what_if: tuple[str, ...] = ()
    stays: tuple[str, ...] = ()

    def what_if_only(self, sentence: str, *keys: str) -> PutBack:
        """The same with one more text that stays on the page."""
        return replace(self, what_if=(*self.what_if, sentence), stays=(*self.stays, *keys))


def back(asked: Asked, bindings: Iterable[Binding | TableBinding], sheet: Sheet,
         state: State) -> PutBack:  # fmt: skip
    """``fill`` turned round, for what differs from it.  Raises nothing."""
    put, state = PutBack(asked.site), _units_in_cells(sheet, state)
    fields = {entry.key: entry for entry in sheet.fields}
    bound = {one.field: one for one in bindings if one.field in fields}
    skipped = set(hidden_keys(sheet, state))
    for key, one in bound.items():  # tables first: their rows may replace single fields
        entry = fields[key]
        if key in skipped or state.standing_of(entry) == "example":
            continue
        if isinstance(entry, Rows) and isinstance(one, TableBinding):
            before = put
            put = _back_table(put, asked, one, entry, state)
            if put != before:
                skipped |= set(sheet.replaced.get(key, ()))
    for key, entry in fields.items():
        if key in skipped or isinstance(entry, Rows) or state.standing_of(entry) == "example":
            continue
        one = bound.get(key)
        if isinstance(one, Binding):
            put = _back_one(put, asked, one, entry, state, fields)
        elif not _of_a_pipe(key, bound) and _is_typed(entry, state):
            said = f"{entry.label}: a site does not hold it; it stays a what-if here."
            put = put.what_if_only(said, key)
    return put


def _of_a_pipe(key: str, bound: dict[str, Binding | TableBinding]) -> bool:
    """Whether a field goes with the menu of kinds of pipe, which speaks for it."""
    one = bound.get("kind")
    return isinstance(one, Binding) and one.pipe and key in (*pipes.KINDS, "bore", "inside")


def _is_typed(entry: Field, state: State) -> bool:
    return state.text(entry).strip() != entry.default(state.system).strip()


def _back_one(put: PutBack, asked: Asked, one: Binding, entry: Field, state: State,
              fields: dict[str, Field]) -> PutBack:  # fmt: skip
    held = one.fact(asked)
    if one.pipe:
        return _back_pipe(put, asked, one, held, state, fields)
    was = shown(held, entry, asked.site, state.system, 4)
    fact = _typed(entry, state)
    before, after = was.text if was.known else "", fact.text if fact.known else ""
    confirmed = held.standing == ASSUMED and state.standing.get(entry.key) == GIVEN
    if _same(before, after, entry):
        if not (confirmed and fact.known):
            return put
        fact = replace(fact, text=held.text)
    return _changed(put, asked, one, entry, fact, before)


def _back_pipe(put: PutBack, asked: Asked, one: Binding, held: Fact, state: State,
               fields: dict[str, Field]) -> PutBack:  # fmt: skip
    """The menus of kinds and sizes; a kind alone, or a bore of one's own, stays a what-if."""
    entry, kind = fields["kind"], state.text(fields["kind"])
    keys = ["kind", *(key for key in (kind, "bore", "inside") if key in fields)]
    if kind in fields:
        after = f"{kind}/{state.text(fields[kind])}"
        if held.text == after:
            return put
        return _changed(put, asked, one, entry, Fact(after), held.text, *keys)
    if kind == held.text.partition("/")[0]:
        return put
    what = "a measured bore" if kind == "own" else "a kind without its size"
    return put.what_if_only(
        f"{entry.label}: a site does not hold {what}; it stays a what-if here.", *keys
    )


def _changed(put: PutBack, asked: Asked, one: Binding, entry: Field, fact: Fact, before: str,
             *keys: str) -> PutBack:  # fmt: skip
    keys = keys or (entry.key,)
    if not one.puts_back(asked):
        said = f"{entry.label} is worked out from the site; it stays a what-if here."
        return put.what_if_only(said, *keys)
    try:
        site = one.take(replace(asked, site=put.site), fact) if one.take else put.site
    except InputError as error:
        return put.what_if_only(f"{entry.label} was not put back: {error.message}", *keys)
    if site == put.site:
        return put
    said = f"{entry.label}: {_words(entry, before)} becomes {_words(entry, fact.text)}."
    return replace(put, site=site, changes=(*put.changes, said))


def _words(entry: Field, text: str) -> str:
    if not text:
        return "not known"
    if isinstance(entry, Text):
        lines = len(text.splitlines())
        return f"“{text}”" if lines == 1 else f"a table of {lines} lines"
    if "/" in text and isinstance(entry, Choice):
        try:
            return pipes.pipe(*text.split("/", 1)).label
        except InputError:
            return text
    return dict(entry.options).get(text, text) if isinstance(entry, Choice) else text


def _typed(entry: Field, state: State) -> Fact:
    """What stands in a field, with its unit; unknown where it is empty or asked."""
    text = state.text(entry).strip()
    if text in ("", ASKED):
        return NOT_KNOWN
    standing = state.standing.get(entry.key, GIVEN)
    if standing == UNKNOWN:
        return NOT_KNOWN
    if isinstance(entry, Number):
        text = with_unit(text, entry, state.units.get(entry.key), state.system)
    return Fact(text, ASSUMED if standing == ASSUMED else GIVEN)


def with_unit(text: str, entry: Number, symbol: str | None, system: str) -> str:
    """What stands in a box with its unit as we write it: "900 inches" as "900 in", as in a link.

    The unit of its menu, or of the system, where none was typed; what cannot be read stays.
    """
    number, unit = split(text, entry.quantity)
    if unit is None and (not text or text[-1] not in _DIGITS or _has_unit(text, entry.quantity)):
        return text  # feet and inches, or a unit that no menu has: "3 kg/cm2" ends in a digit
    symbol = unit.symbol if unit else symbol or QUANTITIES[entry.quantity].default(system).symbol
    return f"{number} {symbol}".strip()


def _has_unit(text: str, quantity: str) -> bool:
    try:
        return parse(text, quantity).own
    except InputError:
        return False


def _same(before: str, after: str, entry: Field) -> bool:
    if before == after or not isinstance(entry, Number) or not before or not after:
        return before == after
    return close(before, after, entry, SAME)


def close(one: str, other: str, entry: Number, share: float) -> bool:
    """Whether two texts of a number differ by ``share`` of the larger at most; False where one
    cannot be read."""
    try:
        first, second = (parse(text, entry.quantity).value for text in (one, other))
    except InputError:
        return False
    return abs(first - second) <= share * max(abs(first), abs(second))


def _units_in_cells(sheet: Sheet, state: State) -> State:
    """The same, with the unit of its column behind every bare number of a table."""
    texts = dict(state.texts)
    for entry in sheet.fields:
        if isinstance(entry, Rows) and entry.key in texts:
            rows = row_text.decode(texts[entry.key])
            texts[entry.key] = row_text.encode([_row(entry, row, state) for row in rows])
    return replace(state, texts=texts)


def _row(entry: Rows, row: tuple[str, ...], state: State) -> list[str]:
    cells = list(row)
    for at, (column, text) in enumerate(zip(entry.columns, row, strict=False)):
        if isinstance(column, Number) and text.strip() not in ("", ASKED):
            symbol = state.units.get(f"{entry.key}.{column.key}")
            cells[at] = with_unit(text.strip(), column, symbol, state.system)
    return cells


# Tables ---------------------------------------------------------------------------------------


def _back_table(put: PutBack, asked: Asked, one: TableBinding, entry: Rows,
                state: State) -> PutBack:  # fmt: skip
    held = one.rows(asked)
    was, roughly = (
        [[cell(cells, c, asked.site, state.system, digits).text for c in entry.columns]
         for cells in held]
        for digits in FIGURES
    )  # fmt: skip
    now = [list(row) for row in filled_rows(entry, state.text(entry), state.system)]
    now = _as_filled(now, was, roughly)
    pairs = _paired(was, now, entry)
    rows, said = [], []
    for number, (before, row) in enumerate(pairs, 1):
        cells = _cells(row, None if before is None else was[before],
                       {} if before is None else held[before], entry, state)  # fmt: skip
        rows.append((before, cells))
        said += _said(entry, number, row, None if before is None else was[before])
    gone = sorted(set(range(len(was))) - {before for before, _ in rows if before is not None})
    said += [f"{entry.label}: {_named(was[at], entry)} was taken out." for at in gone]
    moved = [before for before, _ in rows if before is not None]
    if not said and moved == sorted(moved):
        return put
    if one.take is None:
        return put.what_if_only(
            f"{entry.label}: worked out from the site; they stay a what-if here.", entry.key
        )
    try:
        site = one.take(replace(asked, site=put.site), tuple(rows))
    except InputError as error:
        return put.what_if_only(f"{entry.label} were not put back: {error.message}", entry.key)
    said = said or [f"{entry.label}: in another order."]
    return replace(put, site=site, changes=(*put.changes, *said))


def _as_filled(now: list[list[str]], was: list[list[str]],
               roughly: list[list[str]]) -> list[list[str]]:  # fmt: skip
    """Rows with each cell that stands as an example rounds it as a site's form rounds it."""
    columns = list(zip(*roughly, strict=True)), list(zip(*was, strict=True))
    finer = [dict(zip(*pair, strict=True)) for pair in zip(*columns, strict=True)]
    exact = [set(texts) for texts in columns[1]]
    return [
        [text if at >= len(finer) or text in exact[at] else finer[at].get(text, text)
         for at, text in enumerate(row)]
        for row in now
    ]  # fmt: skip


def _paired(
    was: list[list[str]], now: list[list[str]], entry: Rows
) -> list[tuple[int | None, list[str]]]:
    """Each row with the one it was: the same in all, else of the same name, else in its place
    with one of its first two cells as it was."""
    left = set(range(len(was)))
    found: list[int | None] = [None] * len(now)

    def match(rule: Callable[[int, int, list[str]], bool]) -> None:
        for at, row in enumerate(now):
            if found[at] is None:
                same = next((i for i in sorted(left) if rule(i, at, row)), None)
                if same is not None:
                    found[at] = same
                    left.discard(same)

    match(lambda i, at, row: was[i] == row)
    match(lambda i, at, row: _named(was[i], entry) == _named(row, entry))
    if len(was) == len(now):
        match(lambda i, at, row: i == at and any(map(str.__eq__, was[i][:2], row[:2])))
    return list(zip(found, now, strict=True))


def _named(row: list[str], entry: Rows) -> str:
    """What a row is called: its texts, such as “lower fork, upper fork”."""
    texts = [text for c, text in zip(entry.columns, row, strict=False) if isinstance(c, Text)]
    return "“" + ", ".join(texts[:2] if entry.columns[1].key == "to" else texts[:1]) + "”"


def _cells(row: list[str], was: list[str] | None, held: Row, entry: Rows,
           state: State) -> dict[str, Fact]:  # fmt: skip
    """The row's facts: as they were where nothing was typed over."""
    cells = {}
    for at, (column, text) in enumerate(zip(entry.columns, row, strict=False)):
        if was is not None and column.key not in held:
            continue
        if was is not None and _same(was[at], text, column):
            cells[column.key] = held[column.key]
        else:
            cells[column.key] = _typed(column, State(state.system, {column.key: text}))
    return cells


def _said(entry: Rows, number: int, row: list[str], was: list[str] | None) -> list[str]:
    if was is None:
        return [f"{entry.label}: {_named(row, entry)} is new."]
    return [
        f"{entry.label}, row {number}, {column.label.lower()}: {_words(column, before)} "
        f"becomes {_words(column, after)}."
        for column, before, after in zip(entry.columns, was, row, strict=False)
        if not _same(before, after, column)
    ]
