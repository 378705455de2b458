"""What a letter or a sheet of paper is made of, and both ways to hand it over: text and HTML.

The HTML is for a mail program's clipboard: headings, lists and tables alone, no class, no style.
All escaping of a letter happens here.
"""

from __future__ import annotations

from dataclasses import dataclass
from html import escape
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterable


@dataclass(frozen=True)
class Heading:
    """A line that names what follows."""

    text: str


@dataclass(frozen=True)
class Para:
    """A paragraph. lead: words before it that carry weight."""

    text: str
    lead: str = ""


@dataclass(frozen=True)
class Items:
    """A list. numbered: in an order that counts."""

    lines: tuple[str, ...]
    numbered: bool = False


@dataclass(frozen=True)
class Grid:
    """A table of texts, the first column the name of its row."""

    heads: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]


@dataclass(frozen=True)
class Address:
    """A link: its words in HTML, its address in text."""

    words: str
    href: str


Block = Heading | Para | Items | Grid | Address


def text(blocks: Iterable[Block]) -> str:
    """Blocks as plain text, a line for each item and row; no-break spaces as spaces.

    >>> text((Para("Hello."), Heading("Asked"), Items(("a", "b"), numbered=True)))
    'Hello.\\n\\nAsked\\n1. a\\n2. b\\n'
    """
    whole, before = "", None
    for block in blocks:
        lines = "\n".join(_lines(block))
        if lines:
            gap = "" if before is None else "\n" if isinstance(before, Heading) else "\n\n"
            whole, before = whole + gap + lines, block
    return whole.replace("\u00a0", " ").replace("\u202f", " ") + "\n"


def _lines(block: Block) -> list[str]:
    match block:
        case Heading(words):
            return [words]
        case Para(words, lead):
            return [f"{lead} {words}".strip()]
        case Items(lines, numbered):
            return [
                f"{at}. {line}" if numbered else f"- {line}" for at, line in enumerate(lines, 1)
            ]
        case Grid(heads, rows):
            return [f"- {row[0]}: {_cells(heads, row)}" for row in rows]
        case Address(words, href):
            return [words, href]


def _cells(heads: tuple[str, ...], row: tuple[str, ...]) -> str:
    pairs = zip(heads[1:], row[1:], strict=True)
    return "; ".join(f"{head.lower()} {cell}" for head, cell in pairs if cell)


def html(blocks: Iterable[Block], level: int = 3) -> str:
    """Blocks as HTML, all of it escaped. level: of its headings."""
    return "".join(_html(block, level) for block in blocks)


def _html(block: Block, level: int) -> str:
    match block:
        case Heading(words):
            return f"<h{level}>{escape(words)}</h{level}>"
        case Para(words, lead):
            strong = f"<strong>{escape(lead)}</strong> " if lead else ""
            return f"<p>{strong}{escape(words)}</p>" if words or lead else ""
        case Items(lines, numbered):
            tag = "ol" if numbered else "ul"
            items = "".join(f"<li>{escape(line)}</li>" for line in lines)
            return f"<{tag}>{items}</{tag}>" if lines else ""
        case Grid():
            return _table(block)
        case Address(words, href):
            return f'<p><a href="{escape(href)}">{escape(words)}</a></p>'


def _table(grid: Grid) -> str:
    head = "".join(f'<th scope="col">{escape(one)}</th>' for one in grid.heads)
    rows = "".join(
        f'<tr><th scope="row">{escape(row[0])}</th>'
        + "".join(f"<td>{escape(cell)}</td>" for cell in row[1:])
        + "</tr>"
        for row in grid.rows
    )
    return f"<table><thead><tr>{head}</tr></thead><tbody>{rows}</tbody></table>" if rows else ""
