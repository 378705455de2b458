"""What is done with each item of a run: a job is data, so that any process can be handed one."""

from __future__ import annotations

import traceback
from collections.abc import Iterable
from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc.bulk import cells, letters, rows, sites
from calc.bulk.answers import ALL, FAILED, Data, Wanted

if TYPE_CHECKING:
    from calc.bulk.tables import Item

ROWS, SITES, LETTERS = "rows", "sites", "enquiries"
WORDS = {ROWS: "row", SITES: "site", LETTERS: "letter"}  # what one item is called
Told = tuple[Data, str]  # a record; where our own code broke down, the traceback
HANDED = 8  # items handed to a process at once, of a few ms each; our choice


@dataclass(frozen=True)
class Job:
    """kind: ``ROWS``, ``SITES`` or ``LETTERS``; wanted: of every answer; sheet: of rows; many:
    whether it is for many items, of which an empty one is no case."""

    kind: str
    wanted: Wanted
    sheet: str = ""
    many: bool = True

    @property
    def handed(self) -> int:
        """How many items a process is handed at once: one of those that take long."""
        slow = self.kind == LETTERS or ALL in self.wanted.sheets
        return 1 if slow else HANDED

    def record(self, item: Item) -> Data:
        """The record of one item, with its "number", "line" and "error".  Raises nothing on
        input; what else it raises is a fault of ours, see ``failed``."""
        head = self._head(item)
        return {**head, "error": item.error} if item.error else {**head, **self._worked(item)}

    def failed(self, item: Item) -> Data:
        """The record where working it out broke down."""
        return {**self._head(item), "error": FAILED}

    def _head(self, item: Item) -> Data:
        head: Data = {"number": item.number, "line": item.line}
        if self.kind == SITES:
            return head
        given = item.given if isinstance(item.given, dict) else {}
        left_out = cells.READ if self.kind == LETTERS else ()
        return {**head, "given": {n: cell for n, cell in given.items() if n not in left_out}}

    def _worked(self, item: Item) -> Data:
        if self.kind == SITES:
            return sites.worked(item.given, self.wanted)
        if not isinstance(item.given, dict):
            return {"error": "This must be a JSON object of texts by name"}
        if self.kind == ROWS and not item.given and self.many:
            return {"error": "There is nothing in it"}
        if self.kind == ROWS:
            return rows.worked(self.sheet, item.given, self.wanted)
        text = item.given.get("text")
        if not isinstance(text, str):
            return {"error": "There is no “text” to read"}
        return letters.worked(text, self.wanted)

    def columns(self, names: Iterable[str]) -> list[str]:
        """Names of the columns of its CSV; names: those of what was read."""
        if self.kind == SITES:
            return cells.site_columns(self.wanted)
        if self.kind == ROWS:
            return cells.row_columns(names, self.wanted)
        return cells.letter_columns(names, self.wanted)

    def cells(self, record: Data, names: Iterable[str]) -> list[list[str]]:
        """A record's rows of that CSV."""
        if self.kind == SITES:
            return cells.site_cells(record, self.wanted)
        if self.kind == ROWS:
            return cells.row_cells(record, names, self.wanted)
        return cells.letter_cells(record, names, self.wanted)

    def told(self, record: Data) -> str:
        """A bad record in a line for people: "row 3 (line 4): Enter the length of pipe"."""
        number, line = record["number"], record["line"]
        return f"{WORDS[self.kind]} {number} (line {line}): {record['error']}"


def batch(job: Job, items: list[Item]) -> list[Told]:
    """Each item's record, in whatever process this runs."""
    return [one(job, item) for item in items]


def one(job: Job, item: Item) -> Told:
    """An item's record; where our own code breaks down, what can be said without it."""
    try:
        return job.record(item), ""
    except Exception:  # whatever it is: this item has no answer, and the others have theirs
        return job.failed(item), traceback.format_exc()
