"""How the fields about what is used stand to a site: animals, and beds watered by drip."""

from __future__ import annotations

from calc.sheets.parts import use
from calc.sheets.parts.bindings import Asked, Binding, written
from calc.site.facts import ASSUMED, Fact
from calc.site.rows import BY_TABLE
from calc.site.site import Site


def _animals(asked: Asked, kind: str) -> tuple[int, ...]:
    """Rows of a kind that drinks as is usual: one with a figure of its own is of the others."""
    return use.stock(asked.site).usual.get(kind, ())


def animals(kind: str) -> Binding:
    """The number of a kind: one to one while one row or none is about it."""

    def give(asked: Asked) -> Fact:
        rows, found = asked.site.rows("animals"), _animals(asked, kind)
        if len(found) == 1:
            return BY_TABLE["animals"].best(rows[found[0]], "count")
        total = sum(asked.site.cell("animals", rows[at], "count") or 0 for at in found)
        return Fact(str(total), ASSUMED, "none named") if not found else Fact(str(total))

    def take(asked: Asked, fact: Fact) -> Site:
        rows, found = asked.site.rows("animals"), _animals(asked, kind)
        if found:
            return asked.site.put_cell("animals", found[0], "count", fact)
        if not fact.known or fact.text == "0":
            return asked.site
        return asked.site.put_rows("animals", (*rows, {"kind": Fact(kind), "count": fact}))

    return Binding(kind, give, take, only=lambda asked: len(_animals(asked, kind)) <= 1)


def _one_other(asked: Asked) -> bool:
    """Whether the water of other animals is a cell: of one animal, or of none yet."""
    own, rows = use.stock(asked.site).own, asked.site.rows("animals")
    single = [asked.site.cell("animals", rows[at], "count") == 1 for at in own]
    return single in ([], [True])


def others() -> Binding:
    """Water of the animals with a figure of their own, or of no kind that is known."""

    def give(asked: Asked) -> Fact:
        found = use.stock(asked.site)
        if not found.own:
            return Fact("0 L/day", ASSUMED, "none named")
        if found.open:
            return written(found.others, "daily", ASSUMED, "what some of them drink is not known")
        if _one_other(asked):
            return BY_TABLE["animals"].best(asked.site.rows("animals")[found.own[0]], "each")
        return written(found.others, "daily")

    def take(asked: Asked, fact: Fact) -> Site:
        rows, own = asked.site.rows("animals"), use.stock(asked.site).own
        if own:
            return asked.site.put_cell("animals", own[0], "each", fact)
        if not fact.known or BY_TABLE["animals"].column("each").read(fact.text) == 0:
            return asked.site
        row = {"kind": Fact("other"), "count": Fact("1"), "each": fact}
        return asked.site.put_rows("animals", (*rows, row))

    return Binding("others", give, take, only=_one_other)


def beds() -> Binding:
    """Area of the beds: one to one while there is one bed or none."""

    def give(asked: Asked) -> Fact:
        rows = asked.site.rows("beds")
        if len(rows) == 1:
            return BY_TABLE["beds"].best(rows[0], "area")
        if not rows:
            return Fact("0 m²", ASSUMED, "none named")
        return written(sum(asked.site.cell("beds", row, "area") or 0.0 for row in rows), "area")

    def take(asked: Asked, fact: Fact) -> Site:
        rows = asked.site.rows("beds")
        if rows:
            return asked.site.put_cell("beds", 0, "area", fact)
        if not fact.known or BY_TABLE["beds"].column("area").read(fact.text) == 0:
            return asked.site
        return asked.site.put_rows("beds", ({"name": Fact("beds"), "area": fact},))

    return Binding("beds", give, take, only=lambda asked: len(asked.site.rows("beds")) <= 1)
