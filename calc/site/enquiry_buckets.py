"""Buckets, drums and cans that fill in a time: flows of a source, or of a tap."""

from __future__ import annotations

import re

from calc.site.enquiry_model import Token
from calc.site.enquiry_numbers import CARDINAL, NUMBER, value

_NO_HEIGHT = r"(?! ?(?:down|deep|above|below|up\b|high|higher|lower|long|away|off|of\b|from|under|over|uphill|downhill|to the|pipe|head))"
_BUCKET = re.compile(
    rf"(?P<v>{NUMBER})[ -]*(?P<u>(?:us )?gal(?:lon)?s?|lit(?:re|er)s?|ltr|l)\b[ -]*(?:\w+ ){{0,2}}?(?:buckets?|pails?|drums?|barrels?|jugs?|jerry ?cans?|containers?|canisters?|bottles?|jars?|churns?|cans?|bin|tub|totes?|watering can)\b(?P<mid>[^.;\n¤]{{0,60}}?)\b(?P<t>{NUMBER})[ -]*(?P<tu>s|secs?|seconds?|m{_NO_HEIGHT}|mins?|minutes?|h|hrs?|hours?)\b(?: (?:and )?(?P<more>\d{{1,2}}|{CARDINAL})(?: ?(?:s|secs?|seconds?)\b|(?= ?(?:[.,;)\n]|$))))?"
)
_TIMED = re.compile(
    rf"(?P<t>{NUMBER})[ -]*(?P<tu>s|secs?|seconds?|m{_NO_HEIGHT}|mins?|minutes?|h|hrs?|hours?)\b(?P<mid>[^.;\n¤]{{0,50}}?)\b(?P<v>{NUMBER})[ -]*(?P<u>(?:us )?gal(?:lon)?s?|lit(?:re|er)s?|ltr|l)\b[ -]*(?:\w+ ){{0,2}}?(?:buckets?|pails?|drums?|barrels?|jugs?|cans?|containers?|bin|tub|jerry ?cans?)\b"
)
_OF_SIZE = re.compile(
    rf"\b(?:buckets?|pails?|drums?|barrels?|jugs?|cans?|containers?|canisters?) (?:of|with|that holds) (?P<v>{NUMBER})[ -]*(?P<u>(?:us )?gal(?:lon)?s?|lit(?:re|er)s?|ltr|l)\b(?P<mid>[^.;\n¤\d]{{0,60}}?)\b(?P<t>{NUMBER})[ -]*(?P<tu>s|secs?|seconds?|mins?|minutes?)\b(?: (?:and )?(?P<more>\d{{1,2}}|{CARDINAL})(?: ?(?:s|secs?|seconds?)\b|(?= ?(?:[.,;)\n]|$))))?"
)
_UNIT_IN = re.compile(
    rf"\b(?P<v>an?|one) (?P<u>gallon|lit(?:re|er))\b(?P<mid> (?:every|takes|took|in) (?:about |around |some )?)(?P<t>{NUMBER})[ -]*(?P<tu>secs?|seconds?|mins?|minutes?)\b"
)
_FULL = re.compile(
    rf"\b(?P<v>{NUMBER})[ -]*(?P<u>(?:us )?gal(?:lon)?s?|lit(?:re|er)s?|l)\b(?P<mid>(?: of water)? (?:was|were|is|are) (?:full|there|caught|filled|collected|in it) (?:in|after) (?:about )?)(?P<t>{NUMBER})[ -]*(?P<tu>secs?|seconds?|mins?|minutes?)\b"
)
_CLOCKED = re.compile(
    rf"\b(?:timed|clocked|measured)\b[^.;\n¤\d]{{0,40}}?(?P<v>{NUMBER})[ -]*(?P<u>(?:us )?gal(?:lon)?s?|lit(?:re|er)s?|ltr|l)\b(?P<mid>(?: of water)?(?: (?:was|were|is|are) (?:full|there|caught|in it))? in (?:about )?)(?P<t>{NUMBER})[ -]*(?P<tu>secs?|seconds?|mins?|minutes?)\b"
)
_INTO = re.compile(
    rf"\bbuckets?\b[^.;\n¤\d]{{0,45}}[:,] (?P<v>{NUMBER})[ -]*(?P<u>(?:us )?gal(?:lon)?s?|lit(?:re|er)s?|ltr|l)\b(?P<mid>(?: of water)? in (?:about )?)(?P<t>{NUMBER})[ -]*(?P<tu>s|secs?|seconds?|mins?|minutes?)\b"
)
_AMOUNT = re.compile(
    rf"(?<![\w¤-])(?P<v>{NUMBER})[ -]*(?P<u>(?:us )?gal(?:lon)?s?|lit(?:re|er)s?|ltr|l)\b(?P<mid>(?: of water)? in (?:about |around )?)(?P<t>{NUMBER})[ -]*(?P<tu>s|secs?|seconds?)\b"
)
_GOT = re.compile(
    rf"\b(?:i|we|he|she) (?:get|got|collect|collected|caught|catch|filled|measured|had|drew|took)(?: about| only| just)? (?P<v>{NUMBER})[ -]*(?P<u>(?:us )?gal(?:lon)?s?|lit(?:re|er)s?|ltr|l)\b(?P<mid>(?: of water)? in (?:about )?)(?P<t>{NUMBER})[ -]*(?P<tu>secs?|seconds?|mins?|minutes?)\b(?! (?:before|until|till|and then|then))"
)
_IN_TIME = re.compile(
    rf"\bin (?P<t>{NUMBER})[ -]*(?P<tu>secs?|seconds?|mins?|minutes?)\b(?P<mid>,? (?:i|we|it|the spring) (?:get|gets|got|collect|collected|caught|catch|filled|measured|gives|gave)(?: about| only| just)? )(?P<v>{NUMBER})[ -]*(?P<u>(?:us )?gal(?:lon)?s?|lit(?:re|er)s?|ltr|l)\b"
)
_CAN_OF = re.compile(
    rf"\b(?:cans?|churn|buckets?|pails?|drums?|barrels?|jugs?), (?P<v>{NUMBER})[ -]*(?P<u>(?:us )?gal(?:lon)?s?|lit(?:re|er)s?|ltr|l)\b(?P<mid>,? in (?:about )?)(?P<t>{NUMBER})[ -]*(?P<tu>s|secs?|seconds?|mins?|minutes?)\b"
)
_ANOTHER = re.compile(rf"{NUMBER}[ -]*(?:gal(?:lon)?s?|lit(?:re|er)s?|l)\b")
_SECONDS = {"s": 1.0, "m": 60.0, "h": 3600.0}
_TAPS = re.compile(r"\b(?:tap|kitchen|hose|faucet|shower|sink|spigot|house|bathroom|outlet)\b")
_SPRINGS = re.compile(
    r"\b(?:spring|well|creek|source|overflow|seep|bore\w*|stream|pipe from the|intake|it fills|fills)\b"
)


_AND = re.compile(rf"(?<![\w-])(?P<n>a|{NUMBER}) (?:mins?|minutes?),? and (?:about )?$")


def _seconds(match: re.Match[str]) -> float:
    """The time that filling took: "75 seconds", "a minute and fifteen seconds"."""
    seconds = value(match["t"])[0] * _SECONDS[match["tu"][0]]
    seconds += value(match.groupdict().get("more") or "0")[0]
    minutes = _AND.search(match["mid"]) if match["tu"][0] == "s" else None
    if minutes:
        seconds += 60 * (1.0 if minutes["n"] == "a" else value(minutes["n"])[0])
    return seconds


def _last_named(pattern: re.Pattern[str], low: str, match: re.Match[str]) -> re.Match[str]:
    """ "a two-gallon pail, no, a twenty litre can, in a minute": the vessel named last."""
    if not _ANOTHER.search(match["mid"]):
        return match
    return pattern.search(low, match.start("mid"), match.end()) or match


_WAYS_OF_SAYING = (
    _BUCKET, _OF_SIZE, _TIMED, _CLOCKED, _UNIT_IN, _FULL, _INTO, _AMOUNT, _GOT, _IN_TIME, _CAN_OF,
)  # fmt: skip
_FILLS = re.compile(
    r"\b(?:in|takes?|took|fills?|every|per|is|after|full|=|@|for|about|needs|-)\b|[:=@(,-]"
)
_AT_SOURCE = re.compile(r"spring|well|creek|overflow|source|\b(?:went|walked|climbed) up\b")


def buckets(low: str, whole: str) -> list[tuple[Token, str]]:
    """Buckets that fill in a time, as flows, with why one is no yield ("" where it is)."""
    found: list[tuple[Token, str]] = []
    for pattern in _WAYS_OF_SAYING:
        for first in pattern.finditer(low):
            match = _last_named(pattern, low, first)
            fill = pattern is _IN_TIME or _FILLS.search(match["mid"])
            unsaid = pattern in {_UNIT_IN, _AMOUNT, _GOT, _IN_TIME} and not _SPRINGS.search(
                whole, max(0, match.start() - 150), match.end() + 40
            )
            token = _flow(match)
            again = any(one.start < match.end() and match.start() < one.end for one, _ in found)
            if fill and not unsaid and not again and token:
                found.append((token, "measured at a tap" if _at_tap(low, match) else ""))
    return found


def _flow(match: re.Match[str]) -> Token | None:
    """What fills a vessel in a time, as a flow; None where either is nothing."""
    seconds = _seconds(match)
    amount = 1.0 if match["v"] in {"a", "an"} else value(match["v"])[0]
    if seconds <= 0 or amount <= 0:
        return None
    rate = amount / seconds * 60
    unit = "gpm" if match["u"].lstrip("us ").startswith("g") else "L/min"
    return Token("flow", rate, rate, unit, match.start(), match.end())


def _at_tap(low: str, match: re.Match[str]) -> bool:
    """Whether the sentence of a bucket names a tap, and no source."""
    begin = max(low.rfind(".", 0, match.start()), low.rfind("\n\n", 0, match.start()), 0)
    line = low[begin : low.find(".", match.end()) if "." in low[match.end() :] else len(low)]
    return bool(_TAPS.search(line)) and not _AT_SOURCE.search(line)
