"""Places and beds in an enquiry that are told by figures alone: latitudes, areas by two sides."""

from __future__ import annotations

import re

from calc.site.enquiry_model import Context, Token
from calc.site.enquiry_numbers import CARDINAL, NUMBER, value

_LATITUDE = re.compile(
    r"\blat(?:itude|\.)?(?: of| is|:|=)? ?(?:about |around |roughly )?(?P<a>-?\d{1,2}(?:[.,]\d+)?) ?(?:°|deg(?:rees)?)? ?(?P<s>north|south|n|s)?\b|(?<![\w.,])(?P<b>\d{1,2}(?:[.,]\d+)?) ?(?:°|deg(?:rees)?) ?(?P<t>north|south|n|s)\b|(?<![\w.,])(?P<c>\d{1,2}\.\d{1,4}) (?P<v>n|s)\b(?= ?[.,;)\n]|$)"
)


def latitudes(low: str) -> list[tuple[float, int, int]]:
    """(degrees, start, end) of latitudes; south is negative."""
    found = []
    for match in _LATITUDE.finditer(low):
        side = match["s"] or match["t"] or match["v"] or "n"
        degrees = float((match["a"] or match["b"] or match["c"]).replace(",", "."))
        found.append(
            (
                -abs(degrees) if side.startswith("s") else degrees,
                match.start("a" if match["a"] else "b" if match["b"] else "c"),
                match.end(),
            )
        )
    return found


_BY = re.compile(
    rf"(?:(?<![\w¤-])(?P<n>{NUMBER}) (?:\w+ ){{0,3}}?(?:of |beds?,? |each |at |@ |measuring |rows? )*(?:of )?)?(?<![\w.,/-])(?P<a>\d+(?:[.,]\d+)?|{CARDINAL}) ?(?P<u1>m|ft|feet|'|metres?|meters?)? ?(?:x|by|\*) ?(?P<b>\d+(?:[.,]\d+)?|{CARDINAL}) ?(?P<u2>m\b|ft\b|feet|foot|'|metres?|meters?)"
)
_GROWN = re.compile(
    r"\b(?:gardens?|beds?|greenhouse|poly ?tunnel|tunnel|plot|orchard|veg\w*|vines|crops?|allotment|drip|raised)\b"
)


_OFF_BOTTOM = re.compile(
    r" ?(?:off|above|from|over|clear of) (?:the |its )?bottom\b(?! (?:of the )?(?:hill|garden|field|slope|track))"
)
_ACROSS = re.compile(r" ?(?:across|wide|in diameter|diameter)\b(?! (?:the|our|a)\b)")


def its_own(token: Token, near: Context, found: dict[str, float]) -> None:
    """What a thing measures across, or hangs above a bottom, is no way and no height of water."""
    if _ACROSS.match(near.right):
        found.pop("way.length", None)
        found.pop("way.climb", None)
    if _OFF_BOTTOM.match(near.right):
        token.extra["other"] = 1.0
        for path in ("way.length", "way.climb", "water.level", "well.depth"):
            found.pop(path, None)


_ROOF = re.compile(
    r"\broof(?:'s)?\b(?: (?:over|above|on) (?:it|them|that|the [a-z]+)| is| of| area| measures| has|,|:)* (?:about )?$"
)


def is_roof(low: str, at: int) -> bool:
    """Whether two sides are those of a roof."""
    return bool(_ROOF.search(low[max(0, at - 30) : at]))


def by_sides(low: str) -> list[tuple[float, str, int, int]]:
    """(area, unit, start, end) of beds told by their two sides."""
    found = []
    for match in _BY.finditer(low):
        unit = "m²" if match["u2"].startswith("m") else "ft²"
        around = low[max(0, match.start() - 45) : match.end() + 25]
        roof = is_roof(low, match.start())
        if roof and not match["n"]:
            area = value(match["a"])[0] * value(match["b"])[0]
            found.append((area, unit, match.start("a"), match.end()))
            continue
        line = (
            around[: 45 + match.end() - match.start()].split("\n")[-1] + around[-25:].split("\n")[0]
        )
        if not _GROWN.search(around) or re.search(
            r"tank|panel|room|house is|x ?\d+ ?w\b", line.replace("greenhouse", "")
        ):
            continue
        area = value(match["a"])[0] * value(match["b"])[0]
        times = value(match["n"])[0] if match["n"] else 1.0
        if match["n"] and not re.search(r"\bbeds?|rows?|tunnels?|plots?", match.group()):
            times = 1.0
        if times == int(times) and area > 0:
            found.append(
                (
                    area * times,
                    unit,
                    match.start("n") if times > 1 else match.start("a"),
                    match.end(),
                )
            )
    return found


_LAND = re.compile(
    r"[ -]?(?:of )?(?:[a-z]+ ){0,2}?(?:lifestyle|propert(?:y|ies)|farm|land|section|ranch|homestead|small ?holding|holding|estate|wood(?:s|land)?|forest|bush|croft|off[ -]grid|parcel of land|lot|timber|hillside|pasture|grazing)\b"
)
_LIVES_ON = re.compile(
    r"\b(?:moved|live|lives|living|settled|sit|sits|retired|bought|own|owns|people|humans|goats|hens|family|us|farm|homestead|place|property)(?: out| here| up)? (?:on|onto|of|is|to)?(?: about| some| around| our| these)* ?$"
)
_WATERED = re.compile(r"\b(?:drip|irrigat\w*|water(?:ed|ing)?|sprinkl\w*|emitters?)\b")
_NO_LAND = re.compile(r"\b(?:drip|irrigat\w*|water(?:s|ed|ing)?|plant(?:ed)?|crop)\b")


def lands(low: str, numbers: list[Token], why: str) -> None:
    """How large the land is that somebody lives on, which is no area that is watered."""
    for one in numbers:
        if one.kind != "area" or one.unit not in {"acre", "ha"} or one.why:
            continue
        line = low[max(low.rfind(sign, 0, one.start) for sign in ".;\n") + 1 : one.start]
        after = low[one.end : one.end + 45]
        if _NO_LAND.search(line) or _WATERED.search(re.split(r"[.;\n]", after)[0]):
            continue
        if _LAND.match(after) or _LIVES_ON.search(line):
            one.why = why
