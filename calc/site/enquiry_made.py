"""A number of a letter made a piece: its sign, its ends, its unit."""

from __future__ import annotations

from calc.site.enquiry_model import Piece, Token

_HOURS = {"store.hours", "drip.hours"}
SIGNED = {"way.climb", "tank.level", "pump.height"}
BELOW = {"water.level"}


def piece_of(token: Token, path: str, weight: float, others: tuple[str, ...]) -> Piece:
    """A number as a fact: below nothing where its path counts so, in a unit that the path takes."""
    if path in BELOW | {"pump.height"}:
        token.low, token.high = abs(token.low), abs(token.high)
    times = token.extra.get("times", 1.0)
    low, high, unit = token.low * times, token.high * times, token.unit
    sign = token.sign if path in SIGNED else 1.0
    if path in BELOW:
        sign = 1.0 if token.extra.get("over") else -1.0
    if path == "water.yield" and unit.endswith("/day"):
        low, high, unit = (
            low / 24,
            high / 24,
            {"L/day": "L/h", "gal/day": "gph", "m³/day": "m³/h"}[unit],
        )
    if path in _HOURS:
        low, high, unit = (
            low / {"min": 60, "s": 3600}.get(unit, 1),
            high / {"min": 60, "s": 3600}.get(unit, 1),
            "",
        )
    if path == "well.bore" and unit == "ft":  # diameters are told in inches
        low, high, unit = 12 * low, 12 * high, "in"
    if unit == "weeks":
        low, high, unit = 7 * low, 7 * high, "days"
    ends = sorted((sign * low, sign * high)) if low != high else (sign * low, sign * high)
    if (
        token.maybe
        and path in {"place.altitude", "way.length"}
        and (path == "place.altitude" or token.low < 3)
    ):
        return Piece(
            path, token.start, token.end, token.maybe[0], token.maybe[0], unit, weight=weight
        )
    return Piece(path, int(token.start), token.end, ends[0], ends[1], unit, weight=weight, about=token.about, others=others,
                 values=tuple(sign * one for one in token.maybe))  # fmt: skip
