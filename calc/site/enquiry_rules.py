"""Which fact a number with a unit is: cues before and after it, weighed.

A rule is (path, weight, pattern that the words before it end with, pattern that those after it
begin with). The heaviest path wins; two of nearly one weight make it unclear.
"""

from __future__ import annotations

import re

from calc.site import enquiry_places as places
from calc.site.enquiry_cues import RULES
from calc.site.enquiry_heights import related
from calc.site.enquiry_lengths import lengths
from calc.site.enquiry_model import Context, Token

_DRIP = re.compile(r"\b(?:drip|drippers?|emitters?|irrigat\w+)\b")
_DRIPPERS = re.compile(r"\b(?:drippers?|emitters?|drip ?lines?)\b")
_AFTER = re.compile(
    r"\b(?:after|within|took|takes|only|about every|every)(?: about| some| roughly)? $"
)
_FILLS = re.compile(r"\b(?:fill(?:s|ed|ing)?|tank|cistern|sun|daylight|solar|pumping)\b")


_BY_HAND = re.compile(r"\bhand[ -]?water\w*|\bwater(?:s|ing)? by hand\b")


def weigh(token: Token, near: Context) -> dict[str, float]:
    """{path: weight} of what a number may be, by the words beside it."""
    found: dict[str, float] = {}
    for rule in RULES.get(token.kind, ()):
        if rule.fits(near.left[-110:], near.right):
            more = 0.5 if rule.path in found else 0
            found[rule.path] = max(found.get(rule.path, 0), rule.weight) + more
    if token.kind == "time" and token.unit == "weeks":
        dry = re.search(
            r"\b(?:(?<!ran )(?<!run )(?<!went )(?<!was )(?<!were )(?<!gone )(?<!fell )dry|drought|without|no (?:rain|water|sun)|last|lasts|enough|storage|reserve)\b",
            near.before + near.after,
        )
        return {"store.days": 6} if dry else {}
    if token.kind == "time" and _AFTER.search(near.left):
        found.pop("store.hours", None)  # "after two hours of pumping"
    if token.kind == "time" and _BY_HAND.search(near.left):
        return {}
    watering = "store.hours" in found and _DRIP.search(near.mail)
    if watering and not _FILLS.search(near.before + near.after):  # or of filling a tank
        only = _DRIPPERS.search(near.mail) and not _FILLS.search(near.mail)
        return {"drip.hours": 6} if only else {"drip.hours": 5, "store.hours": 5}
    if token.kind == "rise":
        _rises(token, near, found)
    if token.kind == "length":
        lengths(token, near, found)
    return {path: weight for path, weight in found.items() if weight > 0}


def _rises(token: Token, near: Context, found: dict[str, float]) -> None:
    """ "120 vertical feet": a climb, or a height between two places that are named."""
    found["way.climb"] = 6.5
    token.sign = -1.0 if places.goes_down(near.left, near.right) else 1.0
    at = places.between(near.left, near.right, near.before, near.subject)
    if at.how and at.before and at.after:
        token.sign = -1.0 if at.how == "below" else 1.0
        related(token, at, near, found)
