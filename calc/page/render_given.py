"""What an answer stands on, as HTML and as text: "your numbers" and what was assumed."""

from __future__ import annotations

from html import escape
from typing import TYPE_CHECKING

from calc.page.given import EXAMPLE, Assumed

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from calc.page.given import Given

MOST = 6  # of the reader's numbers named on a screen; paper has them all
SHORT = 16  # letters; fits a line of any screen
ITSELF = "Not known"  # before why a check could not be made


def yours(given: tuple[Given, ...]) -> str:
    """The reader's numbers in a line, and the way to them; "" where none was given."""
    if not given:
        return ""
    named = [f"{escape(plain(one.label))} <b>{escape(_kept(one.shown))}</b>" for one in given]
    beyond = "".join(f", {one}" for one in named[MOST:])
    more = (
        f'<span class="sl-beyond">{beyond}</span>'
        f'<span class="sl-count"> and {len(given) - MOST} more</span>'
        if beyond
        else ""
    )
    way = (
        f'<a href="#" data-sl-change="{escape(given[0].key)}">'
        'Change<span class="sl-quiet"> your numbers</span></a>'
    )
    first = ", ".join(named[:MOST])
    return f'<p class="sl-yours"><strong>Your numbers:</strong> {first}{more}. {way}</p>'


def assumed(found: tuple[Assumed, ...]) -> str:
    """What the answer used that its reader did not give, by reason; each leads to its field."""
    if not found:
        return ""
    parts = "".join(f"<li>{escape(lead)}: {_listed(group)}</li>" for lead, group in groups(found))
    return (
        '<div class="sl-assumed"><p><strong>Assumed, not from you</strong></p>'
        f"<ul>{parts}</ul></div>"
    )


def _listed(group: list[Assumed]) -> str:
    """The first of them, and the others in a fold where they are many."""
    items = [_item(one) for one in group]
    if len(items) <= MOST + 2:
        return f"{', '.join(items)}."
    return (
        f"{', '.join(items[:MOST])}"
        '<span class="sl-beyond">, </span>'
        f'<details class="sl-others"><summary>and {len(items) - MOST} more</summary>'
        f"{', '.join(items[MOST:])}.</details>"
    )


def groups(found: Iterable[Assumed]) -> Iterator[tuple[str, list[Assumed]]]:
    """(why, those assumed for that reason), the example's first; cells of one column are one."""
    merged = _merged(found)
    order = {_lead(one): None for one in sorted(merged, key=lambda one: one.reason != EXAMPLE)}
    for lead in order:
        yield lead, [one for one in merged if _lead(one) == lead]


def _lead(one: Assumed) -> str:
    reason = one.reason if one.shown else f"{ITSELF}, {one.reason}"
    return reason[:1].upper() + reason[1:]


def _merged(found: Iterable[Assumed]) -> list[Assumed]:
    """Cells of one column of a table that are alike in all but their row, as one."""
    merged: dict[tuple[str, ...], list[Assumed]] = {}
    for one in found:
        table, _, rest = one.key.partition(".")
        column = rest.partition(".")[2]
        place = (table, column, one.shown, one.reason) if column else (one.key,)
        merged.setdefault(place, []).append(one)
    return [_together(alike) for alike in merged.values()]


def _together(alike: list[Assumed]) -> Assumed:
    first = alike[0]
    if len(alike) == 1:
        return first
    column = first.label.rpartition(", ")[2]
    return Assumed(first.key, f"{column} in {len(alike)} rows", first.shown, first.reason)


def _item(one: Assumed) -> str:
    link = f'<a href="#" data-sl-change="{escape(one.key)}">{escape(plain(one.label))}</a>'
    return f"{link} {escape(_kept(one.shown))}" if one.shown else link


def _kept(text: str) -> str:
    """A short text on one line: a number stays with its unit."""
    return text.replace(" ", "\u00a0") if len(text) <= SHORT else text


def plain(label: str) -> str:
    """What something taken is called in a sentence: its label, without what is said about it."""
    return label.removesuffix(" (optional)")
