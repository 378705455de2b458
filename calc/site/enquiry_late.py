"""Patterns that are compiled when they are first asked: a letter needs few of the thousands there are,
and compiling all of them takes longer than reading it."""

from __future__ import annotations

import re
from functools import cache


@cache
def _compiled(text: str) -> re.Pattern[str]:
    """The pattern of a text, one for all who ask; the standard cache forgets the first of many."""
    return re.compile(text)


class Late:
    """A pattern that is asked as a compiled one is."""

    __slots__ = ("_text",)

    def __init__(self, text: str) -> None:
        self._text = text

    def search(self, words: str) -> re.Match[str] | None:
        """The first place where it fits."""
        return _compiled(self._text).search(words)

    def match(self, words: str) -> re.Match[str] | None:
        """Whether it fits at the beginning."""
        return _compiled(self._text).match(words)
