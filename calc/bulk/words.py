"""The words of the command line: commands, options, help with examples."""

from __future__ import annotations

import argparse
from difflib import get_close_matches

from calc import __version__
from calc.bulk.answers import ALL
from calc.sheets import KEYS

FORMATS = ("csv", "json", "jsonl", "text")
OF_FILES = (  # name, what it is, its file, the usual format of the output
    ("rows", "a case of a sheet for each row of a CSV", "FILE.csv", "csv"),
    ("site", "a site file on every sheet it fills", "FILE.json", "json"),
    ("sites", "site files, one JSON object a line", "FILE.jsonl", "jsonl"),
    ("enquiries", "letters of a CSV with the columns id and text", "FILE.csv", "csv"),
)
MOST_JOBS = 1024  # our choice
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


def parser() -> argparse.ArgumentParser:
    """What reads the words after the name.  ``jobs`` is 0 where nobody said how many."""
    shape = argparse.RawDescriptionHelpFormatter
    found = argparse.ArgumentParser("python -m calc", epilog=EXAMPLES, formatter_class=shape,
        description="Off-grid pressurised water, worked out: one case or many.")  # fmt: skip
    found.add_argument("--version", action="version", version=f"springline calc {__version__}")
    commands = found.add_subparsers(dest="command", required=True, metavar="COMMAND")

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
    for name, words, file, usual in OF_FILES:
        _of_a_file(command(name, words, usual), name, file)
    return found


def _of_a_file(one: argparse.ArgumentParser, name: str, file: str) -> None:
    if name == "rows":
        one.add_argument("sheet", type=_sheet, metavar="SHEET")
    one.add_argument("file", metavar=file, help="- for standard input")
    _answering(one)
    if name != "rows":
        one.add_argument("--sheets", type=_sheets, default=(), metavar="A,B",
            help="keys of sheets, or all that are filled")  # fmt: skip
    if name != "site":
        _spreading(one, name != "sites")


def _answering(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("--system", choices=("metric", "us"), default="",
        help="units of bare numbers and of answers (usual: metric, or a site's own)")  # fmt: skip
    parser.add_argument("--fields", action="append", default=[], metavar="FIGURE",
        help="a figure to tell besides the main ones; again for more; or all")  # fmt: skip
    parser.add_argument("--base", default="", metavar="ADDRESS",
        help="of your copy of the pages, put before every link")  # fmt: skip
    parser.add_argument("--flat", action="store_true", help="pages end in .html, as in the folder")
    parser.add_argument("--quiet", action="store_true", help="no bar, no notes, no bad rows told")


def _spreading(parser: argparse.ArgumentParser, tables_too: bool) -> None:
    parser.add_argument("--jobs", type=_count, default=0, metavar="N",
        help="processes (usual: the number of cores)")  # fmt: skip
    if tables_too:
        parser.add_argument("--from", dest="read", choices=("csv", "jsonl"),
            help="what is read (usual: by the file's name, else csv)")  # fmt: skip


def _count(text: str) -> int:
    if not text.isdigit() or not 1 <= int(text) <= MOST_JOBS:
        raise argparse.ArgumentTypeError(f"“{text}” must be a whole number from 1 to {MOST_JOBS}")
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
