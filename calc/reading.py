"""Reading what people type: "40 psi", "1 1/4 in", "12,5", "about 20" into SI.

Two readings are asked about, never guessed: "1,250" may be a thousand or a decimal, "30/50" the two
pressures of a switch, "20-25" a range.
"""

from __future__ import annotations

import math
import re
from dataclasses import dataclass
from functools import lru_cache

from calc.errors import InputError
from calc.quantities import QUANTITIES, Quantity, Unit

_VULGAR = {"¼": "1/4", "½": "1/2", "¾": "3/4", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8"}
# Signs that show nothing, and those that turn the way of writing round: no part of a number.
_UNSEEN = dict.fromkeys(map(ord, "\u200b\u200c\u200d\u200e\u200f\u2060\ufeff\u202a\u202b\u202c"))
# Words of scripts written from right to left. Source: Unicode, blocks whose letters are R or AL
_RIGHT = "\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc\U00010800-\U00010fff\U0001e800-\U0001efff"
_FROM_RIGHT = re.compile(rf"[{_RIGHT}](?:[\s'’.-]*[{_RIGHT}])*")
_BREAK = re.compile(r"\d\s*[\t\n\r\v\f\x1c-\x1f\x85\u2028\u2029]\s*\d")
_ABOUT = re.compile(r"(?:~|≈|about|approx(?:\.|imately)?|circa|ca?\.|ca)\s*(?=[-+.,\d])", re.I)
_RANGE = re.compile(r"(\d[\d.,]*)\s*(?:-|–|—|\.\.+|…|to)\s*(\d[\d.,]*)\s*(?![\d./])(\D.*)?", re.I)
_COMMON = (2, 3, 4, 5, 6, 8, 10, 12, 16, 20, 32, 64)  # below the line of a fraction people write
_NUMBER = re.compile(
    r"""(?P<sign>[-+]?)
    (?: (?P<whole>\d+)[\s-]+(?P<top>\d+)/(?P<bottom>\d+)
      | (?P<top2>\d+)/(?P<bottom2>\d+)
      | (?P<plain>(?:\d+(?:[.,\s]\d+)*[.,]?|[.,]\d+)(?:e[-+]?\d+)?) )
    \s*(?P<unit>.*)$""",
    re.VERBOSE | re.IGNORECASE,
)
_FIGURES = r"[\d\s.,/+\-−–⁄~≈¼½¾⅛⅜⅝⅞]"
_TAIL = re.compile(
    rf"((?:(?:about|approx\.?|circa|ca\.?)\s+)?{_FIGURES}*?(?:\d(?:e[-+]?\d+)?|[.,¼½¾⅛⅜⅝⅞]))"
    rf"\s*((?!{_FIGURES}|e[-+]?\d).+)",
    re.IGNORECASE | re.DOTALL,
)


class ReadingError(InputError):
    """A text that is no number of the quantity asked for.

    ``kind``: "empty", "number" (it is none), "large", "unit" (none known here) or "two" (it can be
    read in two ways, or is two numbers), for whoever words it for a field.
    """

    def __init__(self, message: str, kind: str) -> None:
        super().__init__(message)
        self.kind = kind


@dataclass(frozen=True)
class Parsed:
    """What was read: the SI value, the number and unit it was typed in, a note.

    own: the unit stood in the text.
    """

    value: float
    number: float
    unit: Unit
    note: str = ""
    own: bool = False


def seen(text: str) -> str:
    """A text without the signs that show nothing or turn the way of writing round.

    Lines and tabs stay.  What is left of "\\u200b" is "".
    """
    if text.isprintable():
        return text
    return "".join(one for one in text if one.isprintable() or one in "\n\r\t" or _is_space(one))


def isolated(text: str) -> str:
    """A name as it may stand in a sentence: ``seen``, its words from right to left kept apart.

    Without the isolates (U+2068, U+2069) a number that follows such a word would be read before it.
    Source: Unicode Standard Annex 9, 2.4.
    """
    return _FROM_RIGHT.sub("\u2068\\g<0>\u2069", seen(text))


def _is_space(sign: str) -> bool:
    return sign.isspace() and sign > "\x9f"  # a no-break space, but no control character


@lru_cache(maxsize=2048)  # a form's texts are read again at every keystroke, all but one the same
def parse(text: str, quantity: str, unit_symbol: str | None = None) -> Parsed:
    """Read ``text`` as a ``quantity``; a unit in the text wins over ``unit_symbol``.

    text: what was typed: "40", "40 psi", "1 1/4 in", "¾", "12,5", "5 ft 6 in", "about 20".
    quantity: key of ``QUANTITIES``; unit_symbol: one of its units (None: metric).
    Returns ``Parsed``.  Raises ``InputError`` with a sentence for the reader
    where nothing, no finite number, an ambiguous comma, fraction or range or a unit of another
    kind was typed.

    >>> round(parse("1 1/4 in", "diameter").value, 5)
    0.03175
    """
    kind = QUANTITIES[quantity]
    unit = kind.unit(unit_symbol) if unit_symbol is not None else kind.default("metric")
    if unit is None:
        raise InputError(f"“{unit_symbol}” is not a unit of {kind.name}. {_units_of(kind)}")
    cleaned, about = _clean(text)
    if not cleaned:
        raise ReadingError("Nothing is entered here. Enter a number.", "empty")
    feet_inches = _feet_and_inches(cleaned) if kind.unit("ft") and kind.unit("in") else None
    if feet_inches is not None:
        foot = QUANTITIES["length"].words["ft"]
        return Parsed(foot.to_si(feet_inches), feet_inches, foot, own=True)
    drawn = any(sign in text for sign in _VULGAR)
    _ask_which(cleaned, kind, drawn)
    match = _NUMBER.match(cleaned)
    if match is None:
        raise ReadingError(
            f"“{_shown(text)}” is not a number. Enter a number such as 12.5.", "number"
        )
    number, note = _number(match)
    if match["unit"]:
        unit = _typed_unit(match["unit"], kind)
    if not math.isfinite(number) or abs(number) > 1e15:
        raise ReadingError(f"“{_shown(text)}” is too large to be meant. Check the number.", "large")
    if about:
        note = note or f"Read as {number:.10g}."
    return Parsed(unit.to_si(number), number, unit, note, bool(match["unit"]))


@lru_cache(maxsize=2048)
def split(text: str, quantity: str) -> tuple[str, Unit | None]:
    """(``text`` without the unit at its end, that unit); (text, None): it has none of the menu.

    The number itself need not be readable: "1,250ft" is parted too.

    >>> split("18 m", "length")[0], split("5'6\\"", "length")[1]
    ('18', None)
    """
    kind = QUANTITIES[quantity]
    found = _TAIL.fullmatch(text.strip())
    if found is None:
        return text, None
    unit = kind.unit(found[2])
    if unit is None or unit not in kind.units or not unit.symbol:
        return text, None
    return found[1].strip(), unit


def _clean(text: str) -> tuple[str, bool]:
    """(text with plain spaces, signs and fractions; whether "about" stood before it)."""
    text = text.translate(_UNSEEN)
    if _BREAK.search(text):
        shown = " ".join(text.split())
        raise InputError(f"“{shown[:40]}” is more than one number. Enter one number here.")
    text = " ".join(text.split())
    for glyph, plain in _VULGAR.items():
        text = text.replace(glyph, f" {plain}")
    text = text.replace("−", "-").replace("⁄", "/").strip()
    about = _ABOUT.match(text)
    return (text[about.end() :], True) if about else (text, False)


def _shown(text: str) -> str:
    """What was typed, as it is named in a sentence: short enough to be read."""
    text = " ".join(text[:200].split())
    return text if len(text) <= 40 else f"{text[:40]}…"


def _feet_and_inches(text: str) -> float | None:
    """Feet from "5 ft 6 in", "5'6\\"" (None if it is not of that form)."""
    found = re.fullmatch(
        r"([-+]?\d+(?:\.\d+)?)\s*(?:ft|feet|foot|'|′|’)\s*"
        r"(?:(\d+(?:\.\d+)?)|(?:(\d+)[\s-]+)?(\d+)/(\d+))\s*(in|inch|inches|\"|″|”|''|’’)?\.?",
        text,
        re.IGNORECASE,
    )
    if found is None:
        return None
    if not found[6] and re.fullmatch(r"\d{3}", found[2] or ""):
        whole = found[1] + found[2]
        raise InputError(
            f"“{text}” can mean {whole}, or feet and inches. Write {whole}, or ft and in."
        )
    feet, inches = float(found[1]), float(found[2] or 0)
    if found[5]:
        inches = float(found[3] or 0) + _ratio(float(found[4]), float(found[5]))
    return math.copysign(abs(feet) + inches / 12, feet)


def _ask_which(text: str, kind: Quantity, drawn: bool) -> None:
    """Raise ``InputError`` for a pair of pressures and for a range: which one is meant?

    drawn: a sign such as ½ stood for the fraction, which is no pair.
    """
    pair = None if drawn else re.match(r"(\d+)\s*/\s*(\d+)(?!\d)", text)
    if pair and kind.key == "pressure":
        raise InputError(
            f"“{_shown(text)}”: on at {pair[1]}, off at {pair[2]}? Enter one pressure here."
        )
    if pair and int(pair[2]) not in _COMMON and int(pair[2]):
        raise InputError(f"“{_shown(text)}” can mean two numbers. Enter one number here.")
    found = _RANGE.fullmatch(text)
    if found and "/" not in (found[1] + found[2]):
        raise InputError(
            f"“{_shown(text)}” gives two numbers. "
            f"Enter the one to work with: {found[1]} or {found[2]}."
        )


def _ratio(top: float, bottom: float) -> float:
    if bottom == 0:
        raise InputError("A fraction cannot have 0 below the line.")
    return top / bottom


def _number(match: re.Match[str]) -> tuple[float, str]:
    """The number and a note on how it was read."""
    sign = -1.0 if match["sign"] == "-" else 1.0
    if match["plain"] is None:
        whole = float(match["whole"] or 0)
        top = float(match["top"] or match["top2"])
        return sign * (whole + _ratio(top, float(match["bottom"] or match["bottom2"]))), ""
    plain = match["plain"].strip()
    return _decimal(plain, sign)


def _decimal(plain: str, sign: float) -> tuple[float, str]:
    grouped = re.fullmatch(r"(\d{1,3}(?: \d{3})+)((?:[.,]\d+)?)", plain)
    if grouped:
        plain = grouped[1].replace(" ", "") + grouped[2]
    if " " in plain:
        raise InputError(f"“{_shown(plain)}” is more than one number. Enter one number here.")
    commas, points = plain.count(","), plain.count(".")
    if commas == 0 and points <= 1:
        return sign * float(plain), ""
    if commas == 1 and points == 0:
        whole, part = plain.split(",")
        if re.fullmatch(r"\d{3}", part) and whole.strip("0"):
            raise InputError(
                f"“{plain}” can mean {whole}{part} or {whole}.{part}. "
                f"Write it without the comma: {whole}{part} or {whole}.{part}."
            )
        value = sign * float(plain.replace(",", "."))
        return value, f"Read as {value:.10g}: the comma was taken as a decimal point."
    if points == 1 and re.fullmatch(r"\d{1,3}(,\d{3})+\.\d*", plain):
        return sign * float(plain.replace(",", "")), ""
    if commas > 1 and points == 0 and re.fullmatch(r"\d{1,3}(,\d{3})+", plain):
        return sign * float(plain.replace(",", "")), ""
    raise InputError(
        f"“{_shown(plain)}” is not one number. Use a point for decimals, such as 12.5."
    )


def _typed_unit(symbol: str, kind: Quantity) -> Unit:
    symbol = symbol.strip()
    unit = kind.unit(symbol)
    if unit is not None:
        return unit
    if kind.key == "pressure" and symbol.lower().rstrip("s.") in {"lb", "pound", "psia"}:
        hint = "above vacuum" if symbol.lower() == "psia" else "a weight"
        raise ReadingError(
            f"“{_shown(symbol)}” is {hint}. Write psi for a pressure on the gauge.", "unit"
        )
    elsewhere = [q.name for q in QUANTITIES.values() if symbol and q.unit(symbol)]
    if elsewhere:
        raise ReadingError(
            f"“{symbol}” is a unit of {elsewhere[0]}, not of {kind.name}. {_units_of(kind)}", "unit"
        )
    raise ReadingError(f"“{_shown(symbol)}” cannot be read here. {_units_of(kind)}", "unit")


def _units_of(kind: Quantity) -> str:
    """The first units of its menu, to be written instead."""
    symbols = [unit.symbol for unit in kind.units if unit.symbol][:3]
    if not symbols:
        return "Enter a plain number."
    *others, last = symbols
    return f"Write {', '.join(others)} or {last}." if others else f"Write {last}."
