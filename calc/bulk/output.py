"""Records one after the other as the text of a CSV, of JSON, of JSON lines or for a terminal."""

from __future__ import annotations

import json
from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc.bulk import tables, told
from calc.bulk.jobs import SITES

if TYPE_CHECKING:
    from calc.bulk.answers import Data
    from calc.bulk.jobs import Job

MARK = "\ufeff"  # byte order mark


@dataclass
class Output:
    """The text of a run, piece by piece.

    form: "csv", "json", "jsonl" or "text"; names: of the cells that were read; separator, marked:
    of the CSV that was read; alone: one record, which JSON holds without a list.
    """

    form: str
    job: Job
    names: tuple[str, ...] = ()
    separator: str = ","
    marked: bool = False
    alone: bool = False
    count: int = 0

    def begin(self) -> str:
        """What comes before the first record."""
        if self.form == "csv":
            columns = tables.csv_line(self.job.columns(self.names), self.separator)
            return MARK + columns if self.marked else columns
        return "[\n" if self.form == "json" and not self.alone else ""

    def put(self, record: Data) -> str:
        """The next record."""
        self.count += 1
        if self.form == "csv":
            cells = self.job.cells(record, self.names)
            return "".join(tables.csv_line(row, self.separator) for row in cells)
        if self.form == "jsonl":
            return tables.json_line(record)
        if self.form == "text":
            words = told.site(record) if self.job.kind == SITES else told.answer(record)
            return "\n" + words if self.count > 1 else words
        if self.alone:
            return json.dumps(record, ensure_ascii=False, indent=1) + "\n"
        line = tables.json_line(record).rstrip("\n")
        return f",\n{line}" if self.count > 1 else line

    def end(self) -> str:
        """What comes after the last one."""
        if self.form != "json" or self.alone:
            return ""
        return "\n]\n" if self.count else "]\n"
