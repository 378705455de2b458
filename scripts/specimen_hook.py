"""Print the specimen page: every part of a calculator in every state, by the functions that make
the answers, so that it cannot drift from them. Only what scripts add is written out here."""

import functools
import re
from html import escape

from mkdocs.utils import get_relative_url

from calc.page import charts, render, render_form
from calc.page.answer import Answer, Figure
from calc.page.findings import Finding, Fix
from calc.page.form import Outcome, work
from calc.page.state import State
from calc.sheets import sheet
from calc.sheets.addresses import addresses
from calc.units import Reader
from scripts.site_hook import DRAWING, _svg

FENCE = re.compile(r"^```specimen\s*\n```\s*$", re.MULTILINE)
PLACE = '<div class="sl-specimen-place"></div>'
# the words before a state are those of figures.js; a test compares
STATES = {
    "example": (
        "Example.",
        "These numbers are those of Alder Terrace, not yours: change any of them.",
    ),
    "yours": ("", ""),
    "pending": ("Working it out.", ""),
    "stale": ("From before.", "The figures below belong to the numbers before."),
    "failed": (
        "Not worked out.",
        "Something went wrong on our side. Reload the page to try again.",
    ),
    "none": ("No answer yet.", ""),
}
ERRORS = {
    "known": "“3 kg/cm2” cannot be read here. Write bar, psi or kPa",
    "climb": "Enter the climb from pump to outlet",
}
FIGURE = Figure("Running pressure at the outlet", 1.42e5, "pressure", main=True, was=2.1e5)
OTHERS = (
    Figure("Water speed", 1.3, "speed"),
    Figure("Friction loss", 3.9e5, "pressure", note="at everything open"),
    Figure(
        "Starts per hour, at worst", 44.3 / 3600, "per_hour", main=True, note="when half is drawn"
    ),
    Figure("Maximum pressure in the pipe", 4.1e5, "pressure"),
    Figure("Pump speed", 0.94, "percent", 2, note="of full"),
)
FINDINGS = {
    "good": Finding("note", "fast", "Water runs at 1.3 m/s in the pipe: you may hear it."),
    "tight": Finding("care", "close", "The shower has 1.42 bar; 1.38 bar is needed."),
    "bad": Finding("stop", "short", "The shower has 1.42 bar; 2.00 bar is needed."),
}
FIXES = (Fix("Lay 40 mm PE 100 SDR 11 from pump to fork: that gives 2.31 bar."),)


def on_page_markdown(markdown, page, config, files):
    return FENCE.sub(PLACE, markdown)


def on_page_content(html, page, config, files):
    if PLACE not in html:
        return html
    base = get_relative_url("", page.url)
    return html.replace(PLACE, specimen(base.rstrip("/") + "/", not config["use_directory_urls"]))


def specimen(base, flat):
    """All parts, each below a heading that says which it is. base: way to the site's root; flat:
    pages end in .html."""
    sheets = functools.partial(_sheet, base, flat)
    shown = [_part(f"Verdict: {level}", _answer(level)) for level in FINDINGS]
    shown.append(_part("Verdict: a size was asked", sheets("demand", "top")))
    shown.append(_part("Verdict not there yet, fix awaited", _awaited()))
    for state, (word, sentence) in STATES.items():
        body = _none() if state == "none" else sheets("reach", "top")
        shown.append(_part(f"State: {state}", _status(word, sentence) + body, state))
    shown += [
        _part("Errors and their summary", _wrong(sheets), "stale"),
        *(_part(f"Figures: {count}", _figures(count)) for count in range(1, 7)),
        _part("Other picture, chart, table and working", sheets("keep_up", "more")),
        _part("What it stands on, notes, links", sheets("keep_up", "beside")),
        _part("Table of rows", f'<form class="sl-form" aria-label="Rows">{_rows()}</form>'),
        _part("Site bar, notices", _site()),
        _part("Buttons and cautions", _buttons()),
    ]
    return "".join(shown)


def _part(title, body, state="yours"):
    """No ``section``: scripts must leave it as it is."""
    return (
        f"<h2>{escape(title)}</h2>"
        f'<div class="sl sl-wide sl-scripted" data-sl-figures="{state}">{body}</div>'
    )


def _outcome(answer):
    return Outcome(answer, {}, {}, frozenset(), Reader("metric"))


def _shown(answer):
    """The answer's parts at the top and beside, without what stands for nothing here."""
    return "".join(render.parts(_outcome(answer), lambda link: "#")[:2])


def _answer(level):
    fixes = () if level == "good" else FIXES
    told = "The shower has 1.42 bar with 18.0 L/min flowing."
    return _shown(Answer(told, (FINDINGS[level],), fixes, figures=(FIGURE, *OTHERS[:3])))


def _awaited():
    return _shown(Answer("", (FINDINGS["bad"],), figures=(FIGURE,), later=dict))


def _figures(count):
    return _shown(Answer("Figures alone.", figures=(FIGURE, *OTHERS)[:count]))


def _sheet(base, flat, key, name):
    """One part of the printed example of a sheet, its charts drawn."""
    found = sheet(key)
    outcome = work(found, State("metric"))
    ways = addresses(found, State("metric"), outcome.example, base, flat)
    html = render.parts(outcome, ways)
    part = html[("top", "beside", "more").index(name)]
    drawings = {c.key: _svg(charts.spec(c, outcome.reader)) for c in outcome.answer.charts}
    return DRAWING.sub(lambda one: one[1] + drawings[one[2]] + one[3], part)


def _status(word, sentence):
    strong = f"<strong>{word}</strong> " if word else ""
    return f'<div class="sl-status">{strong}{escape(sentence)}</div>'


def _none():
    return '<div class="sl-top"><p class="sl-none">No answer to these numbers yet.</p></div>'


def _wrong(sheets):
    """A form with two faults, and the list of them above the answer as faults.js makes it."""
    form = render_form.form(sheet("pressure"), "specimen")
    for key, sentence in ERRORS.items():
        place = f'<p class="sl-error" id="specimen-{key}-error">'
        form = form.replace(
            place, f'{place}<span class="sl-quiet">Error: </span>{escape(sentence)}'
        )
        form = form.replace(
            f'class="sl-field" data-key="{key}"', f'class="sl-field sl-wrong" data-key="{key}"'
        )
        form = form.replace(
            f' id="specimen-{key}" name', f' aria-invalid="true" id="specimen-{key}" name'
        )
    links = "".join(
        f'<li><a href="#specimen-{key}">{escape(sentence)}</a></li>'
        for key, sentence in ERRORS.items()
    )
    return (
        '<div class="sl-status sl-alarm"><strong>No answer yet.</strong> See to:'
        f'<ul class="sl-faults">{links}</ul></div>'
        '<p class="sl-glance" aria-hidden="true"><strong>From before.</strong></p>'
        f'{sheets("pressure", "top")}<form class="sl-form" aria-label="With errors">{form}</form>'
    )


def _rows():
    """keep_up's outlets, with a mark and an error at a cell."""
    form = render_form.form(sheet("keep_up"), "rows")
    taps = re.search(
        r'<div class="sl-field sl-rows" data-key="taps".*?</template>.*?</div>', form, re.S
    )[0]
    where = 'id="rows-taps-0-at-error">'
    return taps.replace(where, f"{where}No pipe section ends at “barn” yet", 1) + "</div>"


def _site():
    return (
        '<div class="sl-site"><p class="sl-site-whose"><strong>Alder Terrace</strong>, our example '
        '<span class="sl-site-about">3 cabins, 7 outlets</span></p>'
        '<button type="button" aria-expanded="true">Sites</button>'
        '<label class="sl-site-way">for <select><option>Wash-house shower, all open</option>'
        '</select></label><button type="button">Save changes</button>'
        '<div class="sl-site-menu"><p class="sl-site-told">Saved in this browser</p>'
        '<ul class="sl-site-list"><li><button type="button">A very long name of a site, as people '
        "write them into one word: Oberunterobermühlbachhausenwasserwerk</button>"
        '<button type="button">Rename</button><button type="button">Forget</button></li></ul></div>'
        '<div class="sl-site-said sl-alarm">This link was cut off on its way.</div>'
        '<div class="sl-site-said">“Lower cabin” is exported.</div></div>'
    )


def _buttons():
    return (
        '<div class="sl-system" role="group" aria-label="Units"><button type="button" '
        'aria-pressed="true">Metric</button><button type="button" aria-pressed="false">US</button>'
        '</div><div class="sl-share"><button type="button" data-action="link">Copy link</button>'
        '<button type="button">Print</button><span class="sl-said">The link is copied.</span></div>'
        '<div class="sl-cautions"><p><strong>Before you work on it</strong></p>'
        "<ul><li>Let the pressure out before you open a joint.</li></ul></div>"
    )
