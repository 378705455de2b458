"""What is kept of a reply: its hash, and facts that a person can read."""

import hashlib
import json
import re

LEVELS = ("bad", "tight", "good")  # each better than the one before
# A chart's point on its axis may be 1e-15 with one Python and -2e-15 with another.
_NOISE = re.compile(r"-?\d(?:\.\d+)?e-[1-9]\d+")
_LEVEL = re.compile(r'class="sl-verdict sl-(\w+)"')


def digest(text):
    """The hash of a reply: every byte counts, but for what is left of a zero after rounding."""
    return hashlib.sha256(_NOISE.sub("0", text).encode()).hexdigest()


def level(reply):
    """The verdict's level in a reply; None where it holds errors in place of an answer."""
    found = _LEVEL.search(reply.get("html", ""))
    return found[1] if found else None


def seen(text):
    """What any release's reply shows without looking inside: {sha, level, errors}."""
    reply = json.loads(text)
    return {"sha": digest(text), "level": level(reply), "errors": sorted(reply["errors"])}


def rounded(value):
    """A number to 12 significant digits; anything else as it is."""
    return float(f"{value:.12g}") if isinstance(value, float) else value


def of_answer(found):
    """Verdict, main figure, every figure in SI and the levels of the warnings."""
    figures = [[figure.label, rounded(figure.value)] for figure in found.figures]
    main = [label for (label, _), figure in zip(figures, found.figures, strict=True) if figure.main]
    return {
        "level": found.verdict.level,
        "word": found.verdict.word,
        "main": main,
        "figures": figures,
        "warnings": [warning.level for warning in found.warnings],
    }
