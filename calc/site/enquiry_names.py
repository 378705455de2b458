"""The name of the writer's place: capitals after words that say where somebody lives or builds."""

from __future__ import annotations

import re

from calc.site.enquiry_noise import MASK

_NAME = r"(?P<name>[A-ZÀ-Þ][\w'’-]+(?: (?:(?:of|the|de|la|del|am|an der|on|sur|upon|do|da) )?[A-ZÀ-Þ][\w'’-]+){0,2})"
_ON = r"on(?= (?:the )?(?:[A-Z][\w'’-]+ (?:Bank|Narrows|Island|Isle|Hill|Ridge|Mountain|Mesa|Bay|Point|Lake|Loch|Lough|Moor|Fell|Common|Heath|Creek|River|Gulch|Head|Ness|Plateau)\b|(?:Lake|Loch|Mount|Isle) ))"
_IN = rf"(?:(?:up |down |out |over |right |just |far |high |deep )?(?:in|near|outside|at|{_ON}|above|close to|not far from|north of|south of|east of|west of))"
_HOME = (
    r"(?:house|cabin|cottage|farm|place|land|property|smallholding|croft|holding|homestead|hut|chalet|plot|track|lane"
    r"|village|hamlet|school|finca|allotment|ranch|lodge|farmhouse|bungalow|acres|valley|hill|hillside|mountains|site|property|estate|steading|camp|park)"
)
_SAID = tuple(re.compile(pattern) for pattern in (
    rf"\b(?:[Ww]e|I|[Tt]hey)(?:'m|'re|’m|’re| am| are| live| lives| farm| have moved)(?: [a-z]+){{0,4}}? {_IN} {_NAME}",
    rf"\b(?i:{_HOME})(?: (?:is|lies|sits|stands|holders))?(?: (?!of\b|to\b|from\b)[a-z]+){{0,2}} {_IN} {_NAME}",
    rf"\b(?:[Oo]ff[- ]grid|[Ll]ocated|[Ss]ituated|[Bb]ased|[Ll]iving|feet|metres|meters|\dm|\d m|ft) {_IN} {_NAME}",
    rf"(?:^|\n)[ ]*(?:[A-Z][a-z]+ )?(?:[Hh]ello|[Hh]i|[Gg]reetings|[Mm]orning|[Ee]vening|[Aa]fternoon|[Dd]ay)(?: [a-z]+)?,? (?:to you )?from {_NAME}",
    rf"\b{_HOME}(?:,? (?:which|that))? is (?:called|named) {_NAME}",
    rf"\b(?:[Ww]e|I|[Pp]eople) call (?:it|the place|the farm|our [a-z]+|this place) [\"“'«]?{_NAME}",
    rf"(?:^|\n)[ ]*(?:[Ss]ite|[Pp]lace|[Pp]roperty|[Ff]arm)(?: name)?: {_NAME}",
    rf"\b(?:write|writing)(?: you| to you)? from {_NAME}",
))  # fmt: skip
_NO_NAME = re.compile(
    r"(?:january|february|march|april|may|june|july|august|september|october|november|december|monday|tuesday|wednesday|thursday|friday|saturday|sunday"
    r"|christmas|easter|english|god|north|south|east|west|i|pe|pvc|mdpe|hdpe|pex|the|our|my|a|spring|summer|autumn|winter|fall|and|but|it|well|pump|tank|plot|unit|no|number|phase|stage|level|mains|rainwater|rain|solar|grid|gravity|drip|sun|pvc|poly|sale|average|paper|time|top|request)\b",
    re.I,
)


def named(plain: str, clean: str) -> tuple[str, int, int] | None:
    """(name, start, end) of the place that a letter is written from; None where it says none.

    plain: as it was written, whose capitals tell a name; clean: the same, with what is no fact
    blotted out.

    >>> named("We live near Arvesk, up a track.", "we live near arvesk, up a track.")
    ('Arvesk', 13, 19)
    """
    for pattern in _SAID:
        for match in pattern.finditer(plain):
            start, end = match.span("name")
            if (
                clean[start] != MASK
                and not _NO_NAME.match(match["name"])
                and not match["name"].isupper()
            ):
                return match["name"], start, end
    return None
