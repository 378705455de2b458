"""Records as rows of cells, under columns that are the same for every run and every machine."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from calc.bulk.answers import ALL, Data, Wanted
from calc.units import plain_number

DIGITS = 6  # figures of a number in a cell; our choice
LIST = "; "  # between the pieces of a cell


def answer_columns(wanted: Wanted) -> list[str]:
    """Names of the columns of an answer; two for each figure that is asked for by name."""
    named = [part for name in wanted.figures if name != ALL for part in (name, f"{name}, unit")]
    return [
        "verdict", "sentence", "fix", "main_figure", "main_value", "main_unit", *named, "figures",
        "also", "assumed", "unused", "link", "error",
    ]  # fmt: skip


def answer_cells(record: Data, wanted: Wanted) -> list[str]:
    """The cells of an answer, empty where it has nothing to say."""
    figures = record.get("figures", [])
    main = next(iter(figures), None)
    by_label = {one["label"].casefold(): one for one in figures}
    named: list[str] = []
    for name in wanted.figures:
        if name != ALL:
            named += _number(by_label.get(name.casefold()))
    shown = (one for one in figures if one["main"] or ALL in wanted.figures)
    return [
        record.get("verdict", ""),
        record.get("sentence", ""),
        LIST.join(one["text"] for one in record.get("fixes", [])),
        main["label"] if main else "",
        *_number(main),
        *named,
        LIST.join(f"{one['label']}: {one['shown']}" for one in shown),
        LIST.join(one["text"] for one in record.get("findings", [])),
        LIST.join(_assumed(one) for one in record.get("assumed", [])),
        LIST.join(record.get("unused", [])),
        record.get("link", ""),
        record.get("error", ""),
    ]


def _number(figure: Data | None) -> list[str]:
    if figure is None or figure["value"] is None:
        return ["", ""]
    return [plain_number(figure["value"], DIGITS), figure["unit"]]


def _assumed(one: Data) -> str:
    return f"{one['label']} {one['shown'] or 'not known'} ({one['reason']})"


def row_columns(names: Iterable[str], wanted: Wanted) -> list[str]:
    """Columns of ``rows``: those given, but for names that the answer's own columns have."""
    own = answer_columns(wanted)
    return [*(name for name in names if name and name not in own), *own]


def row_cells(record: Data, names: Iterable[str], wanted: Wanted) -> list[list[str]]:
    """The one row of a record of ``rows``."""
    own = answer_columns(wanted)
    given = record.get("given") or {}
    kept = [_text(given.get(name)) for name in names if name and name not in own]
    return [[*kept, *answer_cells(record, wanted)]]


def site_columns(wanted: Wanted) -> list[str]:
    """Columns of ``site`` and ``sites``."""
    return ["number", "id", "name", "sheet", *answer_columns(wanted)]


def site_cells(record: Data, wanted: Wanted) -> list[list[str]]:
    """A row for each sheet that a site was worked out on; one with its error where none was."""
    head = [str(record["number"]), _text(record.get("id")), record.get("name", "")]
    answers = record.get("answers") or [{"sheet": "", "error": record["error"]}]
    return [[*head, one["sheet"], *answer_cells(one, wanted)] for one in answers]


LETTER = ("facts", "unclear", "ask", "sheet")
READ = ("text",)  # not written again: a letter is long, and stands in what was read


def letter_columns(names: Iterable[str], wanted: Wanted) -> list[str]:
    """Columns of ``enquiries``."""
    own = [*LETTER, *answer_columns(wanted), "links"]
    return [*(name for name in names if name and name not in {*own, *READ}), *own]


def letter_cells(record: Data, names: Iterable[str], wanted: Wanted) -> list[list[str]]:
    """The one row of a record of ``enquiries``."""
    own = {*LETTER, *answer_columns(wanted), "links", *READ}
    given = record.get("given") or {}
    unclear = [
        f"“{one['quote']}”: {' or '.join(one['readings'])}" for one in record.get("unclear", [])
    ]
    unclear += [
        f"{one['label']}, said in two ways: {' / '.join(one['said'])}"
        for one in record.get("contradictions", [])
    ]
    return [[
        *(_text(given.get(name)) for name in names if name and name not in own),
        LIST.join(f"{one['label']}: {one['text']}" for one in record.get("facts", [])),
        LIST.join(unclear),
        LIST.join(record.get("ask", [])),
        record.get("sheet", ""),
        *answer_cells(record, wanted),
        " ".join(record.get("links", [])),
    ]]  # fmt: skip


def _text(value: Any) -> str:
    return "" if value is None else str(value)
