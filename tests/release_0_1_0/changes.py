"""Reads ``changes.md``: what is said there of each changed sheet."""

import re
from pathlib import Path

FILE = Path(__file__).with_name("changes.md")


def unsaid(changed, text=None):
    """The keys in ``changed`` without a heading, and words under it, in ``changes.md``."""
    text = FILE.read_text(encoding="utf-8") if text is None else text
    parts = re.split(r"^## +(\S+) *$", text, flags=re.MULTILINE)
    said = {key for key, words in zip(parts[1::2], parts[2::2], strict=True) if words.strip()}
    return [key for key in changed if key not in said]
