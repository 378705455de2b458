"""The command line: the only module of calc that reads files, starts processes and writes.

``python -m calc --help`` says what there is; the guide is ``docs/bulk.md``.
"""

from __future__ import annotations

import argparse
import csv
import io
import json
import multiprocessing
import os
import signal
import sys
import time
import traceback
from collections import deque
from collections.abc import Iterable, Iterator
from concurrent.futures import Future, ProcessPoolExecutor
from concurrent.futures.process import BrokenProcessPool
from contextlib import suppress
from dataclasses import dataclass, field
from difflib import get_close_matches
from itertools import chain, islice
from pathlib import Path
from typing import Any, BinaryIO, TextIO

from calc import __version__
from calc.bulk import rows, tables, told
from calc.bulk.answers import ALL, Data, Wanted
from calc.bulk.jobs import LETTERS, ROWS, SITES, WORDS, Job
from calc.bulk.tables import Item
from calc.errors import InputError
from calc.sheets import KEYS

GOOD, SOME_BAD, USAGE, INTERRUPTED, NO_READER = 0, 1, 2, 130, 141  # exit codes
AHEAD = 4  # batches that wait for each process; our choice
REDRAWN = 0.1  # s between two drawings of the bar; our choice
WIDE = 30  # signs of the bar; our choice
EXAMPLES = """examples:
  python -m calc sheets
  python -m calc fields reach
  python -m calc work reach climb=12m length=150m
  python -m calc rows reach houses.csv --out answers.csv
  python -m calc site alder-terrace.json --format text
  python -m calc sites sites.jsonl --jobs 4 > answers.jsonl
  python -m calc enquiries mails.csv --out read.csv

exit codes: 0 all is worked out, 1 some of it could not be, 2 wrong use or a file that cannot be
read, 130 interrupted (what was done is written), 141 nobody reads the output any more
"""
FORMATS = ("csv", "json", "jsonl", "text")
Told = tuple[Data, str]  # a record; where our own code broke down, the traceback


# Words ----------------------------------------------------------------------------------------


def _parser() -> argparse.ArgumentParser:
    shape = argparse.RawDescriptionHelpFormatter
    parser = argparse.ArgumentParser("python -m calc", epilog=EXAMPLES, formatter_class=shape,
        description="Off-grid pressurised water, worked out: one case or many.")  # fmt: skip
    parser.add_argument("--version", action="version", version=f"springline calc {__version__}")
    commands = parser.add_subparsers(dest="command", required=True, metavar="COMMAND")

    def command(name: str, words: str, usual: str) -> argparse.ArgumentParser:
        one = commands.add_parser(name, help=words, description=f"{words}.", epilog=EXAMPLES,
                                  formatter_class=shape)  # fmt: skip
        one.add_argument("--format", choices=FORMATS, help=f"of the output (usual: {usual})")
        one.add_argument("--out", metavar="FILE", help="write there (usual: the terminal)")
        one.set_defaults(usual=usual)
        return one

    command("sheets", "the sheets there are", "text")
    one = command("fields", "what a sheet asks", "text")
    one.add_argument("sheet", type=_sheet, metavar="SHEET")
    one.add_argument("--system", choices=("metric", "us"), default="metric", help="units")
    one = command("work", "one case of a sheet", "text")
    one.add_argument("sheet", type=_sheet, metavar="SHEET")
    one.add_argument("given", nargs="*", metavar="field=value")
    _answering(one)
    for name, words, file, usual in (
        ("rows", "a case of a sheet for each row of a CSV", "FILE.csv", "csv"),
        ("site", "a site file on every sheet it fills", "FILE.json", "json"),
        ("sites", "site files, one JSON object a line", "FILE.jsonl", "jsonl"),
        ("enquiries", "letters of a CSV with the columns id and text", "FILE.csv", "csv"),
    ):
        one = command(name, words, usual)
        if name == "rows":
            one.add_argument("sheet", type=_sheet, metavar="SHEET")
        one.add_argument("file", metavar=file, help="- for standard input")
        _answering(one)
        if name != "rows":
            one.add_argument("--sheets", type=_sheets, default=(), metavar="A,B",
                help="keys of sheets, or all that are filled")  # fmt: skip
        if name != "site":
            _spreading(one, name != "sites")
    return parser


def _answering(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("--system", choices=("metric", "us"), default="",
        help="units of bare numbers and of answers (usual: metric, or a site's own)")  # fmt: skip
    parser.add_argument("--fields", action="append", default=[], metavar="FIGURE",
        help="a figure to tell besides the main ones, by its label; again for more; or all")  # fmt: skip
    parser.add_argument("--base", default="", metavar="ADDRESS",
        help="of your copy of the pages, put before every link")  # fmt: skip
    parser.add_argument("--flat", action="store_true", help="pages end in .html, as in the folder")
    parser.add_argument("--fix", action="store_true", help="work out the fixes too, which is slow")
    parser.add_argument("--quiet", action="store_true", help="no bar, no notes, no bad rows told")


def _spreading(parser: argparse.ArgumentParser, tables_too: bool) -> None:
    parser.add_argument("--jobs", type=_count, default=os.cpu_count() or 1, metavar="N",
        help="processes (usual: the number of cores)")  # fmt: skip
    if tables_too:
        parser.add_argument("--from", dest="read", choices=("csv", "jsonl"),
            help="what is read (usual: by the file's name, else csv)")  # fmt: skip


def _count(text: str) -> int:
    if not text.isdigit() or not 1 <= int(text) <= 1024:
        raise argparse.ArgumentTypeError(f"“{text}” must be a whole number from 1 to 1024")
    return int(text)


def _sheet(key: str) -> str:
    if key not in KEYS:
        near = get_close_matches(key, KEYS, 1)
        hint = f"Did you mean {near[0]}?" if near else f"There are {', '.join(KEYS)}."
        raise argparse.ArgumentTypeError(f"There is no sheet “{key}”. {hint}")
    return key


def _sheets(text: str) -> tuple[str, ...]:
    keys = [key.strip() for key in text.split(",") if key.strip()]
    return (ALL,) if keys == [ALL] else tuple(_sheet(key) for key in keys)


# Reading --------------------------------------------------------------------------------------


def _lines(file: str) -> TextIO:
    """A file's lines, whatever ends them, as text; a byte order mark stays at its beginning."""
    raw: BinaryIO = sys.stdin.buffer if file == "-" else open(file, "rb")  # noqa: SIM115
    buffer = io.BufferedReader(raw) if isinstance(raw, io.RawIOBase) else raw
    begins = buffer.peek(2)[:2] if isinstance(buffer, io.BufferedReader) else b""
    wide = begins in (b"\xff\xfe", b"\xfe\xff")
    return io.TextIOWrapper(buffer, "utf-16" if wide else "utf-8", newline=None)


@dataclass
class Read:
    """What a file holds: its items, the names of their cells, and how a CSV was written."""

    items: Iterator[Item]
    names: tuple[str, ...] = ()
    separator: str = ","
    marked: bool = False


def _read(file: str, as_json: bool) -> Read:
    lines = _lines(file)
    if not as_json:
        found = tables.csv_of(lines)
        return Read(found.items, found.names, found.separator, found.marked)
    items = tables.json_items(lines)
    first = next(items, None)
    names = tuple(first.given) if first and isinstance(first.given, dict) else ()
    return Read(chain([first] if first else [], items), names)


def _as_json(asked: argparse.Namespace) -> bool:
    said = getattr(asked, "read", None)
    by_name = Path(asked.file).suffix.lower() in {".jsonl", ".ndjson"}
    return asked.command == SITES or said == "jsonl" or (said is None and by_name)


# Writing --------------------------------------------------------------------------------------


@dataclass
class Sink:
    """Where records go, each as soon as it is there. form: one of ``FORMATS``; alone: one record,
    that JSON holds without a list."""

    stream: TextIO
    form: str
    job: Job
    read: Read
    alone: bool = False
    count: int = 0

    def begin(self) -> None:
        if self.form == "csv":
            mark = "\ufeff" if self.read.marked else ""
            columns = self.job.columns(self.read.names)
            self.stream.write(mark + tables.csv_line(columns, self.read.separator))
        elif self.form == "json" and not self.alone:
            self.stream.write("[\n")

    def put(self, record: Data) -> None:
        self.stream.write(self._written(record))
        self.stream.flush()  # whatever ends this run, what is done is there
        self.count += 1

    def _written(self, record: Data) -> str:
        if self.form == "csv":
            cells = self.job.cells(record, self.read.names)
            return "".join(tables.csv_line(row, self.read.separator) for row in cells)
        if self.form == "jsonl":
            return tables.json_line(record)
        between = self.count > 0
        if self.form == "text":
            words = told.site(record) if self.job.kind == SITES else told.answer(record)
            return ("\n" if between else "") + words
        if self.alone:
            return json.dumps(record, ensure_ascii=False, indent=1) + "\n"
        return (",\n" if between else "") + tables.json_line(record).rstrip("\n")

    def end(self) -> None:
        if self.form == "json" and not self.alone:
            self.stream.write("\n]\n" if self.count else "]\n")
        self.stream.flush()


@dataclass
class Bar:
    """How far a run is, on a terminal alone.  total: items there are, 0 where nobody knows."""

    shown: bool
    total: int = 0
    done: int = 0
    bad: int = 0
    drawn: float = field(default=0.0, repr=False)

    def step(self, bad: bool) -> None:
        self.done, self.bad = self.done + 1, self.bad + bad
        if self.shown and time.monotonic() - self.drawn > REDRAWN:
            self.drawn = time.monotonic()
            print(f"\r{self._text()}", end="", file=sys.stderr, flush=True)

    def _text(self) -> str:
        bad = f", {self.bad} bad" if self.bad else ""
        if not self.total:
            return f"{self.done} done{bad}"
        full = WIDE * self.done // self.total
        return f"[{'#' * full}{'.' * (WIDE - full)}] {self.done} of {self.total}{bad}"

    def clear(self) -> None:
        if self.shown and self.drawn:
            print("\r\033[K", end="", file=sys.stderr, flush=True)


# Working --------------------------------------------------------------------------------------


def _batch(job: Job, items: list[Item]) -> list[Told]:
    """Each item's record; in whatever process this runs."""
    return [_one(job, item) for item in items]


def _one(job: Job, item: Item) -> Told:
    try:
        return job.record(item), ""
    except Exception:  # whatever it is: this item has no answer, and the others have theirs
        return job.failed(item), traceback.format_exc()


def _alone() -> None:
    """In a process of ours: who interrupts, interrupts the one that hands out the work."""
    signal.signal(signal.SIGINT, signal.SIG_IGN)


def _spread(job: Job, items: Iterator[Item], jobs: int) -> Iterator[Told]:
    """Every item's record in the order of the items, by so many processes."""
    batches = iter(lambda: list(islice(items, job.handed)), [])
    first = list(islice(batches, 2))
    if jobs == 1 or len(first) < 2:  # to start processes takes longer than a few items
        for batch in chain(first, batches):
            for item in batch:
                yield _one(job, item)
        return
    started = multiprocessing.get_context("spawn")  # the same on every system
    pool = ProcessPoolExecutor(jobs, started, _alone)
    waiting: deque[Future[list[Told]]] = deque()
    whole = False
    try:
        for batch in chain(first, batches):
            waiting.append(pool.submit(_batch, job, batch))
            if len(waiting) >= AHEAD * jobs:
                yield from waiting.popleft().result()
        while waiting:
            yield from waiting.popleft().result()
        whole = True
    finally:
        pool.shutdown(wait=whole, cancel_futures=True)
        for child in () if whole else multiprocessing.active_children():
            child.terminate()


def _run(job: Job, read: Read, sink: Sink, jobs: int, bar: Bar, quiet: bool) -> int:
    """Work out and write everything; returns the exit code."""
    code = GOOD
    sink.begin()
    try:
        for record, broken in _spread(job, read.items, jobs):
            sink.put(record)
            bar.step(bool(record["error"]))
            if (record["error"] or broken) and not quiet:
                bar.clear()
                print((broken + job.told(record)).rstrip(), file=sys.stderr)
    except KeyboardInterrupt:
        bar.clear()
        print(f"Interrupted: {sink.count} done and written.", file=sys.stderr)
        code = INTERRUPTED
    except (UnicodeDecodeError, OSError, csv.Error) as error:
        if isinstance(error, BrokenPipeError):
            raise
        bar.clear()
        print(f"{_unread(error)} {sink.count} done and written.", file=sys.stderr)
        code = USAGE
    except BrokenProcessPool:
        print(f"A process was ended from outside. {sink.count} done and written.", file=sys.stderr)
        code = SOME_BAD
    bar.clear()
    sink.end()
    if not quiet and not sink.alone and code == GOOD:
        word = WORDS[job.kind] + ("" if sink.count == 1 else "s")
        print(f"{sink.count} {word}, {bar.bad or 'none'} bad", file=sys.stderr)
    return code or (SOME_BAD if bar.bad else GOOD)


def _unread(error: Exception) -> str:
    if isinstance(error, UnicodeDecodeError):
        return "This file is not in UTF-8. Save it as “CSV UTF-8” or as UTF-8 text."
    return f"{error}."


# Commands -------------------------------------------------------------------------------------


def _wanted(asked: argparse.Namespace) -> Wanted:
    alone = asked.command in {"work", "site"}
    sheets = getattr(asked, "sheets", ()) or ((ALL,) if asked.command == "site" else ())
    base = asked.base if not asked.base or asked.base.endswith("/") else f"{asked.base}/"
    return Wanted(asked.system, base, asked.flat, tuple(asked.fields), sheets, alone or asked.fix)


def _listed(asked: argparse.Namespace, stream: TextIO) -> int:
    names = told.SHEETS if asked.command == "sheets" else told.FIELDS
    found = told.sheets() if asked.command == "sheets" else told.fields(asked.sheet, asked.system)
    if asked.format == "csv":
        stream.writelines(tables.csv_line(row) for row in (names, *found))
    elif asked.format in {"json", "jsonl"}:
        each: list[Any] = [dict(zip(names, row, strict=True)) for row in found]
        stream.writelines(map(tables.json_line, each if asked.format == "jsonl" else [each]))
    else:
        stream.write(told.lines(found) if asked.command == "sheets" else told.field_lines(found))
    return GOOD


def _one_item(asked: argparse.Namespace) -> tuple[Job, Read]:
    """``work`` and ``site``: the one item they are about.  Raises InputError for wrong use."""
    if asked.command == "work":
        pairs = [pair.partition("=") for pair in asked.given]
        bare = [name for name, sign, _ in pairs if not sign]
        if bare:
            raise InputError(f"“{bare[0]}”: write field=value, such as climb=12m")
        given: Any = {name: value for name, _, value in pairs}
        for name in given:
            rows.places(asked.sheet, [name])
        rows.places(asked.sheet, given) if given else None
        return Job(ROWS, _wanted(asked), asked.sheet), Read(iter([Item(1, 1, given)]), (*given,))
    text = "".join(_lines(asked.file)).removeprefix("\ufeff")
    try:
        given = json.loads(text)
    except (ValueError, RecursionError) as error:
        raise InputError(f"{asked.file} is not JSON: {error}") from error
    return Job(SITES, _wanted(asked)), Read(iter([Item(1, 1, given)]))


def _many(asked: argparse.Namespace) -> tuple[Job, Read]:
    """``rows``, ``sites`` and ``enquiries``.  Raises InputError for a header that does not do."""
    read = _read(asked.file, _as_json(asked))
    job = Job(asked.command, _wanted(asked), getattr(asked, "sheet", ""))
    if job.kind == LETTERS and not _as_json(asked) and "text" not in read.names:
        raise InputError(f"{asked.file}: the header must name a column “text”")
    if job.kind == ROWS and not _as_json(asked):
        known = rows.places(asked.sheet, read.names)
        more = [name for name in read.names if name and name not in known]
        if more and not asked.quiet:
            print(f"Passed along, not read: {', '.join(more)}", file=sys.stderr)
    return job, read


def _worked(asked: argparse.Namespace, stream: TextIO) -> int:
    alone = asked.command in {"work", "site"}
    job, read = _one_item(asked) if alone else _many(asked)
    if asked.format == "text" and not alone:
        raise InputError("--format text is for work and site; write csv, json or jsonl")
    bar = Bar(not alone and not asked.quiet and sys.stderr.isatty())
    if bar.shown and asked.file != "-" and Path(asked.file).is_file():
        bar.total = sum(1 for _ in _read(asked.file, _as_json(asked)).items)
    quiet = asked.quiet or (alone and asked.format == "text")  # which tells it
    sink = Sink(stream, asked.format, job, read, alone)
    return _run(job, read, sink, getattr(asked, "jobs", 1), bar, quiet)


def _stream(asked: argparse.Namespace) -> TextIO:
    if asked.out:
        read = getattr(asked, "file", "-")
        if read != "-" and Path(asked.out).exists() and os.path.samefile(read, asked.out):
            raise InputError(f"{asked.out} is what is read. Write to another file")
        return open(asked.out, "w", encoding="utf-8", newline="")
    if isinstance(sys.stdout, io.TextIOWrapper):
        sys.stdout.reconfigure(encoding="utf-8", newline="")
    return sys.stdout


def main(words: Iterable[str] | None = None) -> int:
    """Run the command line.  words: after the name (None: those of this process).  Returns the
    exit code; raises SystemExit where argparse ends it."""
    asked = _parser().parse_args(None if words is None else list(words))
    asked.format = asked.format or asked.usual
    try:
        stream = _stream(asked)
        listed = asked.command in {"sheets", "fields"}
        code = _listed(asked, stream) if listed else _worked(asked, stream)
        stream.flush()
        if asked.out:
            stream.close()
        return code
    except BrokenPipeError:  # who read has gone: nothing is left to tell anybody
        with suppress(OSError):
            os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return NO_READER
    except KeyboardInterrupt:
        return INTERRUPTED
    except (InputError, OSError, UnicodeDecodeError) as error:
        words_of = error.message if isinstance(error, InputError) else _unread(error)
        print(f"python -m calc {asked.command}: {words_of}", file=sys.stderr)
        return USAGE


if __name__ == "__main__":
    with suppress(AttributeError, ValueError):  # a system without it, or not the main thread
        signal.signal(signal.SIGTERM, lambda *_: sys.exit(143))
    sys.exit(main())
