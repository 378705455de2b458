"""Answer -> HTML and plain text; fields -> an HTML form. All escaping happens here.

The build prints a page with these functions and the browser calls the same
ones, so both show the same characters.
"""

from html import escape
from urllib.parse import quote

from calc import formula
from calc.sheets.form import Choice, Count, Number
from calc.units import QUANTITIES, Reader, number_text

NUMERIC = ' class="sl-number"'
VERDICT_WORDS = {"good": "Works", "tight": "Only just", "bad": "Does not work"}
WARNING_WORDS = {"stop": "Stop", "care": "Take care", "note": "Note"}


# The form ------------------------------------------------------------------


def form(sheet, prefix):
    """The form's fields with the metric defaults; ``prefix`` makes ids unique on a page."""
    groups = {}
    for entry in sheet.fields:
        groups.setdefault(entry.group, []).append(entry)
    parts = []
    for name, entries in groups.items():
        inside = "".join(_field(entry, prefix) for entry in entries)
        if not name:
            parts.append(f'<div class="sl-group">{inside}</div>')
            continue
        opened = "" if name in sheet.folded else " open"
        parts.append(
            f'<details class="sl-group"{opened}><summary>{escape(name)}</summary>{inside}</details>'
        )
    return "".join(parts)


def _field(entry, prefix):
    name = f"{prefix}-{entry.key}"
    control = _control(entry, name)
    hint = (
        f'<span class="sl-help" id="{name}-help">{escape(entry.help)}</span>' if entry.help else ""
    )
    same = '<span class="sl-same"></span>' if isinstance(entry, Number) else ""
    when = ""
    if entry.when:
        key, wanted = entry.when
        when = f' data-when="{escape(key)}" data-wanted="{escape(" ".join(wanted))}"'
    return (
        f'<div class="sl-field" data-key="{escape(entry.key)}"{when}>'
        f'<label for="{name}">{escape(entry.label)}</label>'
        f'<div class="sl-control">{control}{same}</div>{hint}'
        f'<p class="sl-note" id="{name}-note"></p><p class="sl-error" id="{name}-error"></p></div>'
    )


def _control(entry, name):
    described = (
        f'aria-describedby="{name}-error {name}-note{f" {name}-help" if entry.help else ""}"'
    )
    common = f'id="{name}" name="{escape(entry.key)}" {described} autocomplete="off"'
    if isinstance(entry, Choice):
        return _choice(entry, common)
    if isinstance(entry, Count):
        return (
            f'<input type="text" inputmode="numeric" {common} value="{entry.start}" '
            f'data-metric="{entry.start}" data-us="{entry.start}">'
        )
    if isinstance(entry, Number):
        return _number(entry, name, common)
    return (
        f'<textarea rows="8" spellcheck="false" {common} data-metric="{escape(entry.default("metric"))}" '
        f'data-us="{escape(entry.default("us"))}">{escape(entry.default("metric"))}</textarea>'
    )


def _choice(entry, common):
    start = entry.default("metric")
    options = "".join(
        f'<option value="{escape(value)}"{" selected" if value == start else ""}>{escape(label)}</option>'
        for value, label in entry.options
    )
    return (
        f'<select {common} data-metric="{escape(start)}" '
        f'data-us="{escape(entry.default("us"))}">{options}</select>'
    )


def _number(entry, name, common):
    kind = QUANTITIES[entry.quantity]
    texts = {}
    for system in ("metric", "us"):
        unit, texts[system] = split_default(entry, system)
        if system == "metric":
            shown = unit
        texts[f"{system}-unit"] = unit.symbol
    data = " ".join(f'data-{key}="{escape(value)}"' for key, value in texts.items())
    box = f'<input type="text" inputmode="text" {common} value="{escape(texts["metric"])}" {data}>'
    if len(kind.units) == 1:
        tail = (
            f'<span class="sl-unit">{escape(kind.units[0].symbol)}</span>'
            if kind.units[0].symbol
            else ""
        )
        return box + tail
    options = "".join(
        f'<option{" selected" if unit is shown else ""} value="{escape(unit.symbol)}">'
        f"{escape(unit.symbol)}</option>"
        for unit in kind.units
    )
    label = escape(f"Unit of: {entry.label}")
    return f'{box}<select class="sl-unit" id="{name}-unit" aria-label="{label}">{options}</select>'


def split_default(entry, system):
    """(Unit, number text) of a number field's default text such as "1 1/4 in"."""
    kind, text = QUANTITIES[entry.quantity], entry.default(system)
    for unit in sorted(kind.units, key=lambda unit: -len(unit.symbol)):
        if unit.symbol and text.endswith(unit.symbol):
            return unit, text[: -len(unit.symbol)].strip()
    return kind.default(system), text


# The answer ----------------------------------------------------------------


def answer(outcome, base="", flat=False):
    """HTML of a worked answer. ``base``: way to the site's root; ``flat``: pages end in .html."""
    reader, found = outcome.reader, outcome.answer
    head = [_figures(found.figures, reader)]
    head += [_warning(warning) for warning in found.warnings]
    head.append(_links(found.links, base, flat))
    more = [_chart(chart) for chart in found.charts]
    more += [_table(table, reader) for table in found.tables]
    more.append(_working(found.steps, reader))
    return (
        f"{_verdict(found.verdict)}"
        f'<div class="sl-head">{"".join(head)}</div><div class="sl-more">{"".join(more)}</div>'
    )


def _word(verdict):
    return verdict.word or VERDICT_WORDS[verdict.level]


def _verdict(verdict):
    word = escape(_word(verdict))
    return (
        f'<p class="sl-verdict sl-{verdict.level}"><strong class="sl-word">{word}</strong> '
        f"{escape(verdict.sentence)}</p>"
    )


def _figures(figures, reader):
    if not figures:
        return ""
    cells = "".join(_figure(figure, reader) for figure in figures)
    return f'<dl class="sl-figures">{cells}</dl>'


def _figure(figure, reader):
    shown = reader.show(figure.value, figure.quantity, figure.digits)
    other = _other(reader).show(figure.value, figure.quantity, figure.digits)
    second = f'<span class="sl-second">{escape(other)}</span>' if other != shown else ""
    note = f'<span class="sl-figure-note">{escape(figure.note)}</span>' if figure.note else ""
    main = ' class="sl-main"' if figure.main else ""
    return (
        f"<div{main}><dt>{escape(figure.label)}</dt>"
        f'<dd><span class="sl-first">{escape(shown)}</span>{second}{note}</dd></div>'
    )


def _other(reader):
    return Reader("metric" if reader.system == "us" else "us")


def _warning(warning):
    word = WARNING_WORDS[warning.level]
    return f'<p class="sl-warning sl-{warning.level}"><strong>{word}:</strong> {escape(warning.text)}</p>'


def _chart(chart):
    return (
        f'<figure class="sl-chart" data-chart="{escape(chart.key)}">'
        f"<figcaption>{escape(chart.title)}</figcaption>"
        f'<div class="sl-drawing" role="img" aria-label="{escape(chart.alt)}"></div></figure>'
    )


def _cell(value, column, reader):
    if value is None:
        return "–"
    if column.quantity is None or isinstance(value, str):
        return str(value)
    return reader.number(value, column.quantity, column.digits)


def _heading(column, reader):
    symbol = reader.unit(column.quantity).symbol if column.quantity else ""
    return f"{column.label} ({symbol})" if symbol else column.label


def _table(table, reader):
    head = "".join(
        f'<th scope="col"{NUMERIC if c.quantity else ""}>{escape(_heading(c, reader))}</th>'
        for c in table.columns
    )
    rows = "".join(_row(index, row, table, reader) for index, row in enumerate(table.rows))
    note = f'<p class="sl-table-note">{escape(table.note)}</p>' if table.note else ""
    return (
        f'<div class="sl-table" tabindex="0" role="region" aria-label="{escape(table.title)}">'
        f"<table><caption>{escape(table.title)}</caption>"
        f"<thead><tr>{head}</tr></thead><tbody>{rows}</tbody></table></div>{note}"
    )


def _row(index, row, table, reader):
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


def _working(steps, reader):
    if not steps:
        return ""
    items = "".join(_step(step, reader) for step in steps)
    return (
        '<details class="sl-working" open><summary>The working, step by step</summary>'
        '<p class="sl-fine">Formulas take SI base units: m, m³/s, Pa, kg/m³, s, K.</p>'
        f"<ol>{items}</ol></details>"
    )


def _step(step, reader):
    parts = [f'<p class="sl-step-title">{escape(step.title)}</p>']
    if step.formula:
        parts.append(formula.mathml(step.formula))
        givens = ", ".join(
            f"{escape(formula.text(f'{name} = 0')[:-4])} = {escape(reader.both(v.value, v.quantity, v.digits))}"
            for name, v in step.given.items()
        )
        parts.append(f'<p class="sl-given">with {givens}</p>' if givens else "")
        put_in = escape(_put_in(step))
        parts.append(f'<p class="sl-put-in">= {put_in}</p>')
    if step.result is not None:
        value = step.result
        parts.append(
            f'<p class="sl-result">= {escape(reader.both(value.value, value.quantity, value.digits))}</p>'
        )
    if step.note:
        parts.append(f'<p class="sl-step-note">{escape(step.note)}</p>')
    if step.source:
        parts.append(f'<p class="sl-source">Source: {escape(step.source)}</p>')
    return f"<li>{''.join(parts)}</li>"


def _put_in(step):
    numbers = {name: number_text(v.value, max(4, v.digits)) for name, v in step.given.items()}
    return formula.put_in(step.formula, numbers)


def _links(links, base, flat):
    if not links:
        return ""
    items = "".join(
        f'<li><a href="{escape(_address(link, base, flat))}">{escape(link.text)}</a></li>'
        for link in links
    )
    return f'<nav class="sl-next" aria-label="Go on with these numbers"><ul>{items}</ul></nav>'


def _address(link, base, flat):
    from calc.sheets import sheet  # late: sheets import answer, not render

    page = sheet(link.sheet).page
    place = base + (page.rstrip("/") + ".html" if flat else page)
    return f"{place}#{fragment(link.values)}"


def fragment(texts, system="metric"):
    """The part of a link after "#": "u=us&climb=50ft"; units without superscripts or spaces."""
    pairs = [("u", "us")] if system == "us" else []
    pairs += list(texts.items())
    return "&".join(
        f"{key}={quote(link_text(text), safe='/.,-:;')}".replace("%20", "+") for key, text in pairs
    )


def link_text(text):
    """A field's text as it stands in a link: "1.5 m³/h" -> "1.5m3/h", "15 °C" -> "15C"."""
    folded = text.replace("³", "3").replace("²", "2").replace("°", "").replace("·", "")
    number, gap, unit = folded.rpartition(" ")
    return (
        number + unit
        if gap and unit and not unit[0].isdigit() and number[-1:].isdigit()
        else folded
    )


# Plain text ------------------------------------------------------------------


def plain(sheet, outcome, state):
    """The answer as plain text for an e-mail: inputs, verdict, figures, warnings, working."""
    reader, found = outcome.reader, outcome.answer
    lines = [sheet.title.upper(), ""]
    lines += [f"{_word(found.verdict)}: {found.verdict.sentence}", "", "Given"]
    for entry in sheet.fields:
        if entry.key not in outcome.hidden:
            lines.append(f"  {entry.label}: {_given(entry, state)}")
    lines += ["", "Figures"]
    for figure in found.figures:
        lines.append(
            f"  {figure.label}: {reader.both(figure.value, figure.quantity, figure.digits)}"
        )
    if found.warnings:
        lines += ["", *(f"{WARNING_WORDS[w.level]}: {w.text}" for w in found.warnings)]
    lines += ["", "Working (SI base units)"]
    for number, step in enumerate(found.steps, 1):
        lines += _plain_step(number, step, reader)
    return "\n".join(lines).replace("\u00a0", " ") + "\n"


def _given(entry, state):
    text = state.texts.get(entry.key, entry.default(state.system)).strip()
    if isinstance(entry, Choice):
        return dict(entry.options).get(text, text)
    symbol = state.units.get(entry.key, "")
    if entry.key in state.texts and symbol and symbol not in text:
        return f"{text} {symbol}"
    return text or "–"


def _plain_step(number, step, reader):
    lines = [f"  {number}. {step.title}"]
    if step.formula:
        lines += [f"     {formula.text(step.formula)}", f"     = {_put_in(step)}"]
    if step.result is not None:
        value = step.result
        lines.append(f"     = {reader.both(value.value, value.quantity, value.digits)}")
    if step.note:
        lines.append(f"     {step.note}")
    return lines
