"""Answer -> HTML and plain text. All escaping of an answer happens here.

The build prints a page with these functions and the browser calls the same
ones, so both show the same characters.
"""

from __future__ import annotations

from html import escape
from typing import TYPE_CHECKING

from calc.page import drawing, findings, formula, render_given
from calc.page.fields import UNKNOWN, Rows
from calc.page.given import row_words, written
from calc.page.render_form import form, split_default
from calc.page.state import filled_rows, fitted, replaced_keys, typed_over
from calc.units import Reader, number_text

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

    from calc.page.answer import (
        Answer,
        Cell,
        Cells,
        Chart,
        Column,
        Figure,
        Link,
        Step,
        Table,
        Value,
    )
    from calc.page.fields import Field, Sheet
    from calc.page.findings import Finding, Fix, Verdict
    from calc.page.form import Outcome
    from calc.page.shapes import Drawing
    from calc.page.state import State

    Address = Callable[[Link], str]


__all__ = ["answer", "form", "plain", "split_default"]

NUMERIC = ' class="sl-number"'
WARNING_WORDS = {"stop": "Stop", "care": "Take care", "note": "Note"}


# The answer ----------------------------------------------------------------


def answer(outcome: Outcome, address: Address, going: Sequence[str] = ()) -> str:
    """HTML of a worked answer, its three ``parts`` one after the other.

    address: gives the address that a ``Link`` opens; going: sentences about the numbers that go
    along with the reader to another page.
    """
    return "".join(parts(outcome, address, going))


def first(outcome: Outcome, address: Address) -> str:
    """HTML of an answer's figures: its "sl-more", and what it works out ``later``, are to come."""
    fixes = [_fix(fix, address) for fix in _found(outcome).fixes]
    return "".join(_placed(*_first(outcome, fixes)))


def parts(outcome: Outcome, address: Address, going: Sequence[str] = ()) -> tuple[str, str, str]:
    """HTML of a worked answer in the three places of the page.

    "sl-top": verdict, picture and the likely best fix; "sl-beside": what it stands on, the
    figures and what to mind; "sl-more": where to go on, other pictures, charts, tables and the
    working.
    """
    reader, found = outcome.reader, _found(outcome)
    fixes = [_fix(fix, address) for fix in found.fixes]
    more = [_links(found.links, address, going)]
    more += [picture(made) for made in found.drawings[1:]]
    more += [_chart(chart) for chart in found.charts]
    more += [_table(table, reader) for table in found.tables]
    more.append(_working(found.steps, reader))
    return _placed(*_first(outcome, fixes), more)


def _first(outcome: Outcome, fixes: Sequence[str]) -> tuple[list[str], list[str]]:
    reader, found = outcome.reader, _found(outcome)
    top = [_verdict(found.verdict), *map(picture, found.drawings[:1]), *fixes[:1], _later(found)]
    beside_it = [render_given.yours(outcome.given), render_given.assumed(outcome.assumed)]
    beside_it += [_figures(found.figures, found.verdict, reader), *fixes[1:]]
    beside_it += [_warning(warning) for warning in beside(found)]
    beside_it += [_caution(caution) for caution in found.cautions]
    return top, beside_it


def _placed(
    top: Sequence[str], beside_it: Sequence[str], more: Sequence[str] = ()
) -> tuple[str, str, str]:
    places = (("top", top), ("beside", beside_it), ("more", more))
    top_html, beside_html, more_html = (
        f'<div class="sl-{name}">{"".join(inside)}</div>' for name, inside in places
    )
    return top_html, beside_html, more_html


def _found(outcome: Outcome) -> Answer:
    if outcome.answer is None:
        raise ValueError(f"there is no answer to show: {outcome.errors}")
    return outcome.answer


def _word(verdict: Verdict) -> str:
    return verdict.word or findings.WORDS[verdict.level]


def beside(found: Answer) -> list[Finding]:
    """The findings to say beside the verdict, worst first: all but the one that is its sentence."""
    sentence = found.verdict.sentence
    return [one for one in findings.ranked(found.findings) if one.text != sentence]


def _fix(fix: Fix, address: Address) -> str:
    words = escape(fix.text)
    if fix.link is not None:
        words = f'{words} <a href="{escape(address(fix.link))}">{escape(fix.link.text)}</a>'
    return f'<p class="sl-fix">{words}</p>'


def _later(found: Answer) -> str:
    """In a fix's place while it is being looked for: only where something is wrong."""
    if found.later is None or found.verdict.level == "good":
        return ""
    return '<p class="sl-fix sl-pending">Looking for a fix …</p>'


def _caution(caution: str) -> str:
    return f'<p class="sl-warning sl-note"><strong>Caution:</strong> {escape(caution)}</p>'


def _verdict(verdict: Verdict) -> str:
    word = escape(_word(verdict))
    return (
        f'<p class="sl-verdict sl-{verdict.level}"><strong class="sl-word">{word}</strong> '
        f"{escape(verdict.sentence)}</p>"
    )


def _figures(figures: tuple[Figure, ...], verdict: Verdict, reader: Reader) -> str:
    """The main figures first, in the verdict's colour; from the fifth on they are lines."""
    if not figures:
        return ""
    ranked = sorted(figures, key=lambda one: not one.main)
    cells = "".join(_figure(figure, reader) for figure in ranked)
    three = " sl-three" if len(ranked) == 3 else ""
    return f'<dl class="sl-figures sl-{verdict.level}{three}">{cells}</dl>'


def _figure(figure: Figure, reader: Reader) -> str:
    shown, other = told(figure, reader), told(figure, _other(reader))
    second = f'<span class="sl-second">{escape(other)}</span>' if other != shown else ""
    note = f'<span class="sl-figure-note">{escape(figure.note)}</span>' if figure.note else ""
    main = ' class="sl-main"' if figure.main else ""
    return (
        f"<div{main}><dt>{escape(figure.label)}</dt>"
        f'<dd><span class="sl-first">{escape(shown)}</span>{second}{note}</dd></div>'
    )


def told(figure: Figure, reader: Reader) -> str:
    """A figure in the reader's unit, with what it was before where that is known."""
    shown = reader.show(figure.value, figure.quantity, figure.digits)
    if figure.was is None:
        return shown
    return f"{reader.number(figure.was, figure.quantity, figure.digits)}\u00a0→\u00a0{shown}"


def _other(reader: Reader) -> Reader:
    return Reader("metric" if reader.system == "us" else "us")


def _warning(warning: Finding) -> str:
    word = WARNING_WORDS[warning.level]
    return (
        f'<p class="sl-warning sl-{warning.level}"><strong>{word}:</strong> '
        f"{escape(warning.text)}</p>"
    )


def _chart(chart: Chart) -> str:
    return (
        f'<figure class="sl-chart" data-chart="{escape(chart.key)}">'
        f"<figcaption>{escape(chart.title)}</figcaption>"
        f'<div class="sl-plot" role="img" aria-label="{escape(chart.alt)}"></div></figure>'
    )


def picture(made: Drawing) -> str:
    """A drawing that Python made, as HTML: it stands in the page as it is."""
    scale = f'<p class="sl-scale">{escape(made.scale)}</p>' if made.scale else ""
    return (
        f'<figure class="sl-picture" data-picture="{escape(made.key)}">'
        f"<figcaption>{escape(made.title)}</figcaption>{drawing.svg(made)}{scale}</figure>"
    )


def _cell(value: Cell, column: Column, reader: Reader) -> str:
    if value is None:
        return "–"
    if isinstance(value, tuple):
        return " → ".join(_cell(one, column, reader) for one in value)
    if column.quantity is None or isinstance(value, str):
        return str(value)
    return reader.number(value, column.quantity, column.digits)


def _heading(column: Column, reader: Reader) -> str:
    symbol = reader.unit(column.quantity).symbol if column.quantity else ""
    return f"{column.label} ({symbol})" if symbol else column.label


def _table(table: Table, reader: Reader) -> str:
    head = "".join(
        f'<th scope="col"{NUMERIC if c.quantity else ""}>{escape(_heading(c, reader))}</th>'
        for c in table.columns
    )
    rows = "".join(_row(index, row, table, reader) for index, row in enumerate(table.rows))
    note = f'<p class="sl-table-note">{escape(table.note)}</p>' if table.note else ""
    return (
        f'<div class="sl-table" tabindex="0" role="region" aria-label="{escape(table.title)}">'
        f'<table class="sl-cells"><caption>{escape(table.title)}</caption>'
        f"<thead><tr>{head}</tr></thead><tbody>{rows}</tbody></table></div>{note}"
    )


def _row(index: int, row: Cells, table: Table, reader: Reader) -> str:
    kinds = [
        name
        for name, picked in (("sl-marked", table.marked), ("sl-dimmed", table.dimmed))
        if index in picked
    ]
    cells = []
    for place, (value, column) in enumerate(zip(row, table.columns, strict=True)):
        tag = 'th scope="row"' if place == 0 else "td"
        numeric = column.quantity is not None and not isinstance(value, str)
        css = NUMERIC if numeric else ""
        cells.append(f"<{tag}{css}>{escape(_cell(value, column, reader))}</{tag.split()[0]}>")
    css = f' class="{" ".join(kinds)}"' if kinds else ""
    return f"<tr{css}>{''.join(cells)}</tr>"


def _working(steps: tuple[Step, ...], reader: Reader) -> str:
    if not steps:
        return ""
    items = "".join(_step(step, reader) for step in steps)
    return (
        '<details class="sl-working"><summary>The working, step by step</summary>'
        '<p class="sl-fine">Formulas take SI base units: m, m³/s, Pa, kg/m³, s, K.</p>'
        '<div class="sl-steps" tabindex="0" role="region" aria-label="The working">'
        f"<ol>{items}</ol></div></details>"
    )


def _step(step: Step, reader: Reader) -> str:
    parts = [f'<p class="sl-step-title">{escape(step.title)}</p>']
    if step.formula:
        parts.append(formula.mathml(step.formula))
        givens = ", ".join(
            f"{escape(formula.text(f'{name} = 0')[:-4])} = {_both(value, reader)}"
            for name, value in step.given.items()
        )
        parts.append(f'<p class="sl-given">with {givens}</p>' if givens else "")
        put_in = escape(_put_in(step))
        parts.append(f'<p class="sl-put-in">= {put_in}</p>')
    if step.result is not None:
        parts.append(f'<p class="sl-result">= {_both(step.result, reader)}</p>')
    if step.note:
        parts.append(f'<p class="sl-step-note">{escape(step.note)}</p>')
    if step.source:
        parts.append(f'<p class="sl-source">Source: {escape(step.source)}</p>')
    return f"<li>{''.join(parts)}</li>"


def _both(value: Value, reader: Reader) -> str:
    return escape(reader.both(value.value, value.quantity, value.digits))


def _put_in(step: Step) -> str:
    numbers = {name: number_text(v.value, max(4, v.digits)) for name, v in step.given.items()}
    return formula.put_in(step.formula, numbers)


def _links(links: tuple[Link, ...], address: Address, going: Sequence[str] = ()) -> str:
    if not links:
        return ""
    items = "".join(
        f'<li><a href="{escape(address(link))}">{escape(link.text)}</a></li>' for link in links
    )
    said = "".join(f'<p class="sl-going">{escape(sentence)}</p>' for sentence in going)
    return (
        f'<nav class="sl-next" aria-label="Go on with these numbers"><ul>{items}</ul>{said}</nav>'
    )


# Plain text ------------------------------------------------------------------


def plain(sheet: Sheet, outcome: Outcome, state: State) -> str:
    """The answer as plain text for an e-mail: inputs, verdict, figures, warnings, working."""
    reader, found = outcome.reader, _found(outcome)
    lines = [sheet.title.upper(), ""]
    if outcome.example:
        lines += ["A worked example with invented numbers, not yours.", ""]
    lines += [f"{_word(found.verdict)}: {found.verdict.sentence}"]
    lines += [fix.text for fix in found.fixes]
    lines += ["", "Numbers"]  # given and assumed: which are which is said below the figures
    state = fitted(sheet, state)
    used = typed_over(sheet, state, outcome.hidden)
    gone = outcome.hidden | replaced_keys(sheet, state, outcome.hidden)
    for entry in sheet.fields:
        if entry.key in gone:
            continue
        if isinstance(entry, Rows):
            lines += _given_rows(entry, state, used.text(entry) != state.text(entry))
        else:
            lines.append(f"  {entry.label}: {_given(entry, state)}")
    lines += ["", "Figures"]
    for figure in found.figures:
        lines.append(f"  {figure.label}: {_told_both(figure, reader)}")
    if outcome.assumed:
        parts = (f"{a.label} {a.shown or 'not known'} ({a.reason})" for a in outcome.assumed)
        lines += ["", f"Assumed, not from you: {'; '.join(parts)}."]
    said = beside(found)
    if said:
        lines += ["", *(f"{WARNING_WORDS[w.level]}: {w.text}" for w in said)]
    lines += ["", *(f"Caution: {c}" for c in (*found.cautions, *sheet.cautions))]
    lines += ["", "Working (SI base units)"]
    for number, step in enumerate(found.steps, 1):
        lines += _plain_step(number, step, reader)
    return "\n".join(lines).replace("\u00a0", " ") + "\n"


def _told_both(figure: Figure, reader: Reader) -> str:
    shown, other = told(figure, reader), told(figure, _other(reader))
    return shown if shown == other else f"{shown} ({other})"


def _given(entry: Field, state: State) -> str:
    text = state.text(entry).strip()
    return "not known" if text == UNKNOWN else written(entry, text, state) or "–"


def _given_rows(entry: Rows, state: State, changed: bool) -> list[str]:
    """A table row by row; ``changed``: by what was typed over it, and so not as it stands."""
    text = state.text(entry)
    if changed:
        count = len(filled_rows(entry, text, state.system))
        return [f"  {entry.label}: {count}, made to fit the numbers above"]
    lines = [f"  {entry.label}"]
    for index, row in enumerate(filled_rows(entry, text, state.system)):
        given = (
            f"{column.label.lower()} {_given(column, state.cell(entry, column, cell))}"
            for column, cell in zip(entry.columns, row, strict=False)
            if cell and column is not entry.columns[0]
        )
        lines.append(f"    {row_words(entry, index, row)}: {'; '.join(given)}")
    return lines if len(lines) > 1 else [f"  {entry.label}: none"]


def _plain_step(number: int, step: Step, reader: Reader) -> list[str]:
    lines = [f"  {number}. {step.title}"]
    if step.formula:
        lines += [f"     {formula.text(step.formula)}", f"     = {_put_in(step)}"]
    if step.result is not None:
        value = step.result
        lines.append(f"     = {reader.both(value.value, value.quantity, value.digits)}")
    if step.note:
        lines.append(f"     {step.note}")
    return lines
