"""Levels of water that a letter tells by season, or as what they went down to."""

from __future__ import annotations

import re

from calc.site.enquiry_model import Context

_SEASON = re.compile(
    r"\bin (?:the )?(?:winter|spring|wet season|rains?|wet)[ ,;]*(?:and |but )?(?:about |maybe |down to |at )*$"
)
_IN_AUTUMN = re.compile(
    r"[ ,;(]*(?:but |and |or |going )*in (?:the |late |a |very )*(?:dry )?(?:summer|autumn|fall|august|september|october|drought|dry|years?|times?|season|months?)+(?: (?:season|years?|times?|months?))?(?: (?:at|it is|it's|only|about|to|down))*[ ,]*"
)
_WENT_DOWN = re.compile(
    r"\b(?:went|goes|drops?|dropped|fell|falls|drew|draws|pulled|pulls|came|sank|sinks) (?:it )?(?:down )?to (?:about )?$"
)
_LEVEL = re.compile(r"\b(?:water|static|rest level|level)\b(?:[^.;\n]|(?<=\d)\.(?=\d))*$")


def levels(near: Context, found: dict[str, float]) -> None:
    """ "6 m down in winter, 9 m in summer", "static 22 m, it went down to 31 m": levels of water."""
    if not _LEVEL.search(near.before[-110:]):
        return
    if (
        _SEASON.search(near.left)
        and re.match(
            r" ?(?:down |deep )?in (?:late |the |a |dry )*(?:summer|august|september|autumn|fall|drought)",
            near.right,
        )
        or _IN_AUTUMN.fullmatch(near.left)
    ):
        found["water.level"] = max(found.get("water.level", 0), 6)
    elif _WENT_DOWN.search(near.left) and not found.get("tank.level"):
        found.pop("way.climb", None)
        found["water.level"] = max(found.get("water.level", 0), 6.5)
