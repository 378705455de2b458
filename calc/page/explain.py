"""Hard words explained where they stand in a form: a small button that opens the meaning.

The browser's own popover opens it, so it needs no script and works before Python is there.
"""

from __future__ import annotations

from html import escape

from calc.page.terms import hard


def beside(label: str, name: str) -> str:
    """HTML to stand after a label: a button for the first hard word in it; "" where there is none.

    label: as readers meet it; name: an id of its own on the page.  Raises nothing.

    >>> beside("Climb from pump to outlet", "reach-climb")
    ''
    """
    for term in hard():
        if term.word.lower() in label.lower():
            return (
                f'<button type="button" class="sl-why" popovertarget="{name}-why" '
                f'aria-label="What is meant by {escape(term.word)}?">?</button>'
                f'<span popover id="{name}-why" class="sl-meaning"><strong>{escape(term.word)}'
                f"</strong>: {escape(term.meaning)}.</span>"
            )
    return ""
