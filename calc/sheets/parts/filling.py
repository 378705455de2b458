"""Fields filled from a site, and what was typed put back: for any view, by its bindings."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, replace

from calc.errors import InputError
from calc.page import row_text
from calc.page.fields import UNKNOWN as ASKED
from calc.page.fields import Choice, Count, Number, Rows, Sheet, Text
from calc.page.state import State, filled_rows, hidden_keys
from calc.pipe import pipes
from calc.sheets.parts.bindings import CALCULATED, Asked, Binding
from calc.sheets.parts.table_bindings import TableBinding
from calc.site.facts import ASSUMED, GIVEN, NOT_KNOWN, UNKNOWN, Fact
from calc.site.rows import Row
from calc.site.site import Site
from calc.units import QUANTITIES, number_text, parse

Field = Number | Count | Choice | Text | Rows
SAME = 1e-9  # share; texts closer than this say the same number
EXACT = 12  # figures at which a fact is compared with what was typed


@dataclass(frozen=True)
class PutBack:
    """site: the new one; changes: a sentence for each; what_if: for each text that stays on the
    page only, because the site works it out or it could not be read."""

    site: Site
    changes: tuple[str, ...] = ()
    what_if: tuple[str, ...] = ()


# Filling --------------------------------------------------------------------------------------


def fill(asked: Asked, bindings: Iterable[Binding | TableBinding], sheet: Sheet, system: str,
         digits: int) -> dict[str, Fact]:  # fmt: skip
    """Field key -> ``Fact`` with the text the form shows, of the fields the sheet has.

    A menu whose word is not known is left out.  Raises nothing.
    """
    found = {}
    fields = {entry.key: entry for entry in sheet.fields}
    for one in bindings:
        if one.field not in fields:
            continue
        entry = fields[one.field]
        if isinstance(one, TableBinding):
            assert isinstance(entry, Rows), entry.key
            table = _table(one.rows(asked), entry, asked.site, system, digits)
            found[one.field] = table if one.take else replace(table, reason=CALCULATED)
        elif one.pipe:
            found |= _pipe(one.fact(asked), fields)
        else:
            fact = shown(one.fact(asked), entry, asked.site, system, digits)
            if fact.known or not (isinstance(entry, Choice) or one.spare):
                found[one.field] = fact
    return found


def _pipe(fact: Fact, fields: dict[str, Field]) -> dict[str, Fact]:
    """The menu of kinds, and of the sizes of that kind where the sheet has one."""
    if not fact.known:
        return {}
    kind, _, size = fact.text.partition("/")
    both = {"kind": replace(fact, text=kind), kind: replace(fact, text=size)}
    return {key: one for key, one in both.items() if key in fields}


def shown(fact: Fact, entry: Field, site: Site, system: str, digits: int) -> Fact:
    """A fact with the text that a field shows: numbers in the reader's system.

    What was typed in the reader's own system stays as typed.
    """
    if not fact.known or (fact.text == "" and not isinstance(entry, Number)):
        return replace(NOT_KNOWN, text=ASKED if getattr(entry, "unknown", None) else "")
    if not isinstance(entry, Number) or not fact.text:
        return fact
    parsed, target = parse(fact.text, entry.quantity), QUANTITIES[entry.quantity].default(system)
    typed = fact.standing == GIVEN and not fact.reason
    if typed and (parsed.unit == target or system == site.system):
        return fact
    if fact.standing == ASSUMED and parsed.unit == target:
        target = parsed.unit
    text = f"{tidy(target.from_si(parsed.value), digits)} {target.symbol}".strip()
    return replace(fact, text=text)


def tidy(number: float, digits: int) -> str:
    """A number as a person would type it, without zeros that say nothing.

    >>> tidy(60.0, 4), tidy(-0.0, 3), tidy(1234.5, 3)
    ('60', '0', '1235')
    """
    text = number_text(number, digits).replace("\u202f", "").replace("−", "-")
    return text.rstrip("0").rstrip(".") if "." in text and "e" not in text else text


def _table(rows: tuple[Row, ...], entry: Rows, site: Site, system: str, digits: int) -> Fact:
    texts = []
    for cells in rows:
        facts = (_cell(cells, column, site, system, digits) for column in entry.columns)
        texts.append(_trimmed([fact.text for fact in facts], entry, system))
    return Fact(row_text.encode(texts))


def _cell(cells: Row, column: Field, site: Site, system: str, digits: int) -> Fact:
    if column.key not in cells:  # a column added to the sheet and not known here
        return Fact(column.default(system))
    return shown(cells[column.key], column, site, system, digits)


def _trimmed(cells: list[str], entry: Rows, system: str) -> list[str]:
    """Without what is only its column's default at the end."""
    while len(cells) > 1 and cells[-1] == entry.columns[len(cells) - 1].default(system):
        cells = cells[:-1]
    return cells


def assumed_cells(asked: Asked, bindings: Iterable[Binding | TableBinding],
                  sheet: Sheet) -> Iterator[tuple[str, Fact]]:  # fmt: skip
    """("taps.2.now", fact) of each cell of a table that the site only assumes."""
    keys = {entry.key for entry in sheet.fields}
    for one in bindings:
        if isinstance(one, TableBinding) and one.field in keys:
            for at, cells in enumerate(one.rows(asked)):
                for key, fact in cells.items():
                    if fact.standing == ASSUMED:
                        yield f"{one.field}.{at}.{key}", fact


def with_default(entry: Field, metric: str, us: str) -> Field:
    """The field with other defaults."""
    if isinstance(entry, Number):
        return replace(entry, metric=metric, us=us)
    if isinstance(entry, Count):
        return replace(entry, start=int(metric))
    if isinstance(entry, Choice):
        return replace(entry, start=metric, start_us=us)
    if isinstance(entry, Rows):
        return replace(entry, metric=row_text.decode(metric), us=row_text.decode(us))
    return replace(entry, start=metric)


# Putting back ---------------------------------------------------------------------------------


def back(asked: Asked, bindings: Iterable[Binding | TableBinding], sheet: Sheet,
         state: State) -> PutBack:  # fmt: skip
    """``fill`` turned round, for what differs from it.  Raises nothing."""
    put = PutBack(asked.site)
    fields = {entry.key: entry for entry in sheet.fields}
    hidden = hidden_keys(sheet, state)
    for one in bindings:
        entry = fields.get(one.field)
        if entry is None or one.field in hidden or state.standing_of(entry) == "example":
            continue
        if isinstance(one, TableBinding):
            assert isinstance(entry, Rows), entry.key
            put = _back_table(put, asked, one, entry, state)
        else:
            put = _back_one(put, asked, one, entry, state, fields)
    return put


def _back_one(put: PutBack, asked: Asked, one: Binding, entry: Field, state: State,
              fields: dict[str, Field]) -> PutBack:  # fmt: skip
    held = one.fact(asked)
    if one.pipe:
        before, after = held.text, _typed_pipe(state, fields)
        if after is None:
            return put
        fact = Fact(after)
    else:
        was = shown(held, entry, asked.site, state.system, 4)
        fact = _typed(entry, state)
        before, after = was.text if was.known else "", fact.text if fact.known else ""
        confirmed = held.standing == ASSUMED and state.standing.get(entry.key) == GIVEN
        if _same(before, after, entry) and not (confirmed and fact.known):
            return put
        if confirmed and _same(before, after, entry):
            fact = replace(fact, text=held.text)
    if one.pipe and before == after:
        return put
    return _changed(put, asked, one, entry, fact, before)


def _changed(put: PutBack, asked: Asked, one: Binding, entry: Field, fact: Fact,
             before: str) -> PutBack:  # fmt: skip
    said = f"{entry.label}: {_words(entry, before)} becomes {_words(entry, fact.text)}."
    if not one.puts_back(asked):
        return _if(put, f"{entry.label} is worked out from the site; it stays a what-if here.")
    try:
        site = one.take(replace(asked, site=put.site), fact)
    except InputError as error:
        return _if(put, f"{entry.label} was not put back: {error.message}")
    if site == put.site:
        return put
    return replace(put, site=site, changes=(*put.changes, said))


def _if(put: PutBack, sentence: str) -> PutBack:
    return replace(put, what_if=(*put.what_if, sentence))


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


def _typed_pipe(state: State, fields: dict[str, Field]) -> str | None:
    """ "kind/size" of the menus; None for a bore of one's own, or a sheet without sizes."""
    kind = state.text(fields["kind"])
    if kind not in fields:
        return None
    return f"{kind}/{state.text(fields[kind])}"


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
    """What stands in a box with the unit of its menu, or of the system, where it has none."""
    symbol = symbol or QUANTITIES[entry.quantity].default(system).symbol
    bare = text[-1] in "0123456789.,¼½¾⅛⅜⅝⅞"
    return f"{text} {symbol}".strip() if bare else text


def _same(before: str, after: str, entry: Field) -> bool:
    if before == after or not isinstance(entry, Number) or not before or not after:
        return before == after
    try:
        first, second = (parse(text, entry.quantity).value for text in (before, after))
    except InputError:
        return False
    return abs(first - second) <= SAME * max(abs(first), abs(second))


# Tables ---------------------------------------------------------------------------------------


def _back_table(put: PutBack, asked: Asked, one: TableBinding, entry: Rows,
                state: State) -> PutBack:  # fmt: skip
    held = one.rows(asked)
    was = [
        [_cell(cells, c, asked.site, state.system, 4).text for c in entry.columns] for cells in held
    ]
    now = [list(row) for row in filled_rows(entry, state.text(entry), state.system)]
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
        return _if(put, f"{entry.label}: worked out from the site; they stay a what-if here.")
    try:
        site = one.take(replace(asked, site=put.site), tuple(rows))
    except InputError as error:
        return _if(put, f"{entry.label} were not put back: {error.message}")
    said = said or [f"{entry.label}: in another order."]
    return replace(put, site=site, changes=(*put.changes, *said))


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
