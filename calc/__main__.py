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
from collections import deque
from collections.abc import Iterable, Iterator
from concurrent.futures import Future, ProcessPoolExecutor
from concurrent.futures.process import BrokenProcessPool
from contextlib import contextmanager, suppress
from dataclasses import dataclass, field
from itertools import chain, islice
from pathlib import Path
from typing import Any, BinaryIO, TextIO

from calc.bulk import rows, tables, told
from calc.bulk.answers import ALL, Wanted
from calc.bulk.jobs import LETTERS, ROWS, SITES, WORDS, Job, Told, batch, one
from calc.bulk.output import Output
from calc.bulk.tables import Item
from calc.bulk.words import parser
from calc.errors import InputError

GOOD, SOME_BAD, USAGE, INTERRUPTED, NO_READER = 0, 1, 2, 130, 141  # exit codes
AHEAD = 4  # batches that wait for each process; our choice
REDRAWN = 0.1  # s between two drawings of the bar; our choice
WIDE = 30  # signs of the bar; our choice


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


# Working --------------------------------------------------------------------------------------


@dataclass
class Bar:
    """How far a run is.  shown: on a terminal alone; quiet: bad items are not told; total: items
    there are, 0 where nobody knows."""

    shown: bool
    quiet: bool
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


def _spread(job: Job, items: Iterator[Item], jobs: int) -> Iterator[Told]:
    """Every item's record in the order of the items, by so many processes."""
    batches = iter(lambda: list(islice(items, job.handed)), [])
    first = list(islice(batches, 2))
    if jobs == 1 or len(first) < 2:  # to start processes takes longer than a few items
        for some in chain(first, batches):
            for item in some:
                yield one(job, item)
        return
    started = multiprocessing.get_context("spawn")  # the same on every system
    # who interrupts means the process that hands out the work
    pool = ProcessPoolExecutor(jobs, started, signal.signal, (signal.SIGINT, signal.SIG_IGN))
    waiting: deque[Future[list[Told]]] = deque()
    whole = False
    try:
        for some in chain(first, batches):
            waiting.append(pool.submit(batch, job, some))
            if len(waiting) >= AHEAD * jobs:
                yield from waiting.popleft().result()
        while waiting:
            yield from waiting.popleft().result()
        whole = True
    finally:
        pool.shutdown(wait=whole, cancel_futures=True)
        for child in () if whole else multiprocessing.active_children():
            child.terminate()


def _run(job: Job, read: Read, output: Output, stream: TextIO, jobs: int, bar: Bar) -> int:
    """Work out and write everything; returns the exit code."""
    code = GOOD
    stream.write(output.begin())
    try:
        for record, broken in _spread(job, read.items, jobs):
            stream.write(output.put(record))
            stream.flush()  # whatever ends this run, what is done is there
            bar.step(bool(record["error"]))
            if (record["error"] or broken) and not bar.quiet:
                bar.clear()
                print((broken + job.told(record)).rstrip(), file=sys.stderr)
    except KeyboardInterrupt:
        bar.clear()
        print(f"Interrupted: {output.count} done and written.", file=sys.stderr)
        code = INTERRUPTED
    except (UnicodeDecodeError, OSError, csv.Error) as error:
        if isinstance(error, BrokenPipeError):
            raise
        bar.clear()
        print(f"{_unread(error)} {output.count} done and written.", file=sys.stderr)
        code = USAGE
    except BrokenProcessPool:
        print(
            f"A process was ended from outside. {output.count} done and written.", file=sys.stderr
        )
        code = SOME_BAD
    bar.clear()
    stream.write(output.end())
    if not bar.quiet and not output.alone and code == GOOD:
        word = WORDS[job.kind] + ("" if output.count == 1 else "s")
        print(f"{output.count} {word}, {bar.bad or 'none'} bad", file=sys.stderr)
    return code or (SOME_BAD if bar.bad else GOOD)


def _unread(error: Exception) -> str:
    if isinstance(error, UnicodeDecodeError):
        return "This file is not in UTF-8. Save it as “CSV UTF-8” or as UTF-8 text."
    return f"{error}."


# Commands -------------------------------------------------------------------------------------


def _wanted(asked: argparse.Namespace) -> Wanted:
    sheets = getattr(asked, "sheets", ()) or ((ALL,) if asked.command == "site" else ())
    base = asked.base if not asked.base or asked.base.endswith("/") else f"{asked.base}/"
    return Wanted(asked.system, base, asked.flat, tuple(asked.fields), sheets)


def _listed(asked: argparse.Namespace) -> int:
    names = told.SHEETS if asked.command == "sheets" else told.FIELDS
    found = told.sheets() if asked.command == "sheets" else told.fields(asked.sheet, asked.system)
    each: list[Any] = [dict(zip(names, row, strict=True)) for row in found]
    if asked.format == "csv":
        pieces = [tables.csv_line(row) for row in (names, *found)]
    elif asked.format in {"json", "jsonl"}:
        pieces = [tables.json_line(one) for one in (each if asked.format == "jsonl" else [each])]
    else:
        pieces = [told.lines(found) if asked.command == "sheets" else told.field_lines(found)]
    with _stream(asked) as stream:
        stream.writelines(pieces)
    return GOOD


def _one_item(asked: argparse.Namespace) -> tuple[Job, Read]:
    """``work`` and ``site``: the one item they are about.  Raises InputError for wrong use."""
    if asked.command == "work":
        given: Any = rows.pairs(asked.sheet, asked.given)
        job = Job(ROWS, _wanted(asked), asked.sheet, many=False)
        return job, Read(iter([Item(1, 1, given)]), (*given,))
    text = "".join(_lines(asked.file)).removeprefix("\ufeff")
    try:
        given = json.loads(text)
    except (ValueError, RecursionError) as error:
        raise InputError(f"{asked.file} is not JSON: {error}") from error
    return Job(SITES, _wanted(asked), many=False), Read(iter([Item(1, 1, given)]))


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


def _worked(asked: argparse.Namespace) -> int:
    alone = asked.command in {"work", "site"}
    if asked.format == "text" and not alone:
        raise InputError("--format text is for work and site. Choose csv, json or jsonl")
    job, read = _one_item(asked) if alone else _many(asked)
    quiet = asked.quiet or (alone and asked.format == "text")  # which tells it
    bar = Bar(not alone and not quiet and sys.stderr.isatty(), quiet)
    if bar.shown and asked.file != "-" and Path(asked.file).is_file():
        bar.total = sum(1 for _ in _read(asked.file, _as_json(asked)).items)
    output = Output(asked.format, job, read.names, read.separator, read.marked, alone)
    jobs = getattr(asked, "jobs", 1) or os.cpu_count() or 1
    with _stream(asked) as stream:  # once what is read can be read
        return _run(job, read, output, stream, jobs, bar)


@contextmanager
def _stream(asked: argparse.Namespace) -> Iterator[TextIO]:
    if asked.out:
        read = getattr(asked, "file", "-")
        if read != "-" and Path(asked.out).exists() and os.path.samefile(read, asked.out):
            raise InputError(f"{asked.out} is what is read. Write to another file")
        with open(asked.out, "w", encoding="utf-8", errors="replace", newline="") as stream:
            yield stream
        return
    if isinstance(sys.stdout, io.TextIOWrapper):
        sys.stdout.reconfigure(encoding="utf-8", errors="replace", newline="")
    yield sys.stdout
    sys.stdout.flush()


def main(words: Iterable[str] | None = None) -> int:
    """Run the command line.  words: after the name (None: those of this process).  Returns the
    exit code; raises SystemExit where argparse ends it."""
    asked = parser().parse_args(None if words is None else list(words))
    asked.format = asked.format or asked.usual
    try:
        return _listed(asked) if asked.command in {"sheets", "fields"} else _worked(asked)
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
