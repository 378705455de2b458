"""A plain-English enquiry read into facts of a site, by rules.

``read`` takes a mail and says what it tells of the writer's place, what is unclear or told in two
ways, and what was left alone and why. Nothing is guessed that the words do not say: a number with
no word beside it that says what it is stays unread, and is shown as such.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import replace
from typing import TypeVar

from calc.site import enquiry_noise as noise
from calc.site import enquiry_text as texts
from calc.site.enquiry_facts import facts
from calc.site.enquiry_merge import merged
from calc.site.enquiry_model import Contradiction, Enquiry, Ignored, Reading, Told, Unclear
from calc.site.enquiry_site import to_site
from calc.site.enquiry_spelling import corrected

__all__ = ["Contradiction", "Enquiry", "Ignored", "Reading", "Told", "Unclear", "read", "to_site"]

Span = TypeVar("Span", Told, Unclear, Ignored)
_TWO = re.compile(
    r"\b(?:(?:second|another|the other) (?:enquiry|question|place|property|site|customer|system)"
    r"|(?:place|site|property|customer|enquiry) (?:2|two|b)\b"
    r"|two (?:places|properties|sites|enquiries))"
)
_US = re.compile(
    r"\b(?:ft|feet|foot|gal(?:lon)?s?|gpm|psi|inch(?:es)?|acres?|miles?|yards?)\b|\d['\"]"
)
_METRIC = re.compile(
    r"(?<=\d)\s?(?:m|mm|km|l|m2|m3|bar|kpa|ha)\b|\b(?:lit(?:re|er)s?|met(?:re|er)s?|lpm)\b"
)


def read(text: str) -> Enquiry:
    """The facts of a mail.  text: as pasted, plain or HTML.  Raises nothing.

    >>> [one.text for one in read("The house is 40 ft above the well.").told]
    ['40 ft', 'well']
    """
    plain = texts.plain(text)
    notes = []
    if len(plain) > texts.MOST:
        notes.append(f"Only the first {texts.MOST:,} characters were read; the rest was cut off.")
        plain = plain[: texts.MOST]
    if not plain.strip():
        return Enquiry(plain, notes=(*notes, "There is nothing to read yet."))
    written = plain
    plain, places = corrected(written)
    low = texts.folded(plain)
    system = "us" if len(_US.findall(low)) > len(_METRIC.findall(low)) else "metric"
    left_out = noise.noise(low, plain)
    masked = noise.masked(low, left_out)
    sentences = texts.sentences(masked, plain)
    clauses = [
        Ignored(plain[start:end], start, end, why)
        for start, end, why in noise.apart(masked, sentences)
    ]
    found = facts(plain, low, masked, noise.masked(masked, clauses), sentences, clauses, system)
    result = merged(plain, low, found, sentences)
    ignored = sorted(
        [*left_out, *clauses, *found.ignored, *result.withdrawn], key=lambda one: one.start
    )
    notes += _notes(low, result.told, found.bare)
    back = _Back(written, places)
    said = tuple(
        Contradiction(one.path, one.label, back.all(one.said)) for one in result.contradictions
    )
    told, unclear = back.all(result.told), back.all(result.unclear)
    left, unused = back.all(ignored), back.all(found.unused)
    notes = [*notes, *found.notes]
    return Enquiry(written, told, unclear, said, left, unused, tuple(notes), system)


class _Back:
    """Spans of the corrected text, as they stand in the written one."""

    def __init__(self, written: str, places: list[int]) -> None:
        self.written, self.places = written, places

    def all(self, ones: Iterable[Span]) -> tuple[Span, ...]:
        return tuple(self._one(one) for one in ones)

    def _one(self, one: Span) -> Span:
        start, end = self.places[one.start], self.places[one.end]
        return replace(one, start=start, end=end, quote=self.written[start:end])


def _notes(low: str, told: tuple[Told, ...], bare: int) -> list[str]:
    notes = []
    if _TWO.search(low):
        notes.append("This may be about two places: read each part by itself.")
    if bare >= 2:
        notes.append("Some numbers have no unit, so they were not taken as facts.")
    if not told:
        notes.append("No fact of a water supply was found in it.")
    return notes
