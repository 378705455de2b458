"""Which tank a volume is of: a pressure tank, one above, one that the pump draws from."""

from __future__ import annotations

import re

from calc.site import enquiry_words as words
from calc.site.enquiry_model import Context, Token
from calc.site.enquiry_numbers import NUMBER, value

_HOT = re.compile(r"\b(?:water ?heaters?|heater|boiler|hot[ -]water|geyser)\b")
_LITRES = {"gal": 3.785, "m³": 1000.0}


def litres_of(token: Token) -> float:
    """A volume in litres."""
    return token.low * _LITRES.get(token.unit, 1.0)


_TANK_AFTER = re.compile(
    r"[ -]*(?:(?!bucket|heater|drum)\w+[ -]){0,4}?((?:pressure|bladder|header|storage|holding|expansion|captive|rain\w*|gravity|water|poly|plastic|concrete|steel|buried|underground|hill)?[ -]?(?:tanks?|cisterns?|reservoirs?|totes?|ibcs?|accumulators?|vessels?|cylinders?|barrels?|bladder|deposits?|cubes?|chamber|(?:water )?trailer|(?:concrete|stone|wooden) box))\b"
)
_OTHER_VESSEL = re.compile(
    r"[ -]*(?:\w+[ -]){0,3}?(?:buckets?|pails?|drums?|jugs?|cans?|toilets?|flush|bath(?:tub)?|tub|fridge|backpack|sprayer|truck|water ?heater|heater|boiler|hot water|geyser)\b"
)
_HEATER = re.compile(
    r"[ -]*(?:\w+[ -]){0,3}?(?:water ?heater|heater|boiler|hot water (?:tank|cylinder|heater))\b"
)
_END = re.compile(
    r"[,;(]| and | but | with | that | which | to | from | for | at | near | above | up | on "
)
_NO_WATER_BEFORE = re.compile(r"(?:hot|heater|break|septic|fuel|propane|diesel|gas|fish) ?$")
_PUMPS = re.compile(r"\bpumps?\b|\bbooster")  # that draw from a tank where mains are broken
_BETWEEN = re.compile(r"\b(?:bucket|flow|use|uses|per|heater|boiler)\b")


_DAILY = re.compile(
    r"\b(?:daily|per day|each day|every day|a (?:peak |hot |busy )?(?:summer )?day|day)\b[^.;¤\d]{0,25}\b(?:needs?|uses?|use|takes?|consumes?|goes through|want)\b[^.;¤\d]{0,15}$"
)
_FIRE = re.compile(
    r" ?(?:of (?:it|that|this|them) )?(?:back |aside |always )?(?:for|in case of|as) (?:a )?fire\b"
)


_ONE_ABOVE = re.compile(
    r" ?(?:(?:one|more) )?(?:is |sits |stands )?(?:up |high )?(?:(?:on|up) (?:the|a|our) (?:hill|ridge|tower|stand|bank|mountain|knoll|koppie)|(?:in|on) (?:the|a|our) (?:\w+ )?tower|at (?:the )?(?:very )?top(?: of (?:the |my |our )?\w+)?|in the (?:loft|attic)|above the (?:house|cabin))\b"
)
_AT_HEIGHT = re.compile(
    r" ?(?:stays |stands |sits |is |placed |put )*at (?:a height of )?[\d.,]+ ?[a-z]+ (?:of |in )?(?:height|high|up|above)\b"
)
_ONE_BELOW = re.compile(
    r" ?(?:one )?(?:(?:at|by|beside|near|below|under|in) (?:the|our) (?:spring|source|well|shed|house|cellar|basement|pump|barn|creek),? ?)?(?:(?:that|which|where) (?:the|our) pump (?:draws|sucks|pulls|takes)(?: from)?|from which (?:the|our) pump|(?<=one at the spring)|(?<=one at the source)|(?<=one at the well)|(?<=one by the pump))"
)
_TANKS = re.compile(r"\b(?:tanks?|cisterns?|totes?|reservoirs?)\b")


def _another(near: Context) -> str:
    """ "a 300 gallon one at the spring", "1000 L on the hill": which of several tanks it is."""
    if not _TANKS.search(near.before):
        return ""
    if _ONE_ABOVE.match(near.right):
        return "tank.volume"
    if _AT_HEIGHT.match(near.after):
        return "tank.volume"
    return "store.volume" if _ONE_BELOW.match(near.right) else ""


def volume(token: Token, near: Context) -> dict[str, float]:
    """{path: weight} of a volume: which tank is it of?"""
    if _FIRE.match(near.right):
        return {"store.reserve": 7}
    if _DAILY.search(near.left[-70:]) and token.unit in {"L", "gal", "m³"}:
        token.unit += "/day"
        return {"use.daily": 6}
    right = _END.split(near.right)[0]
    if _OTHER_VESSEL.match(right):
        return {"hot.volume": 5} if _HEATER.match(right) else {}
    named = _another(near)
    if named:
        _several(token, near)
        return {named: 7}
    after = _TANK_AFTER.match(right)
    span = (token.end + after.start(1), token.end + after.end(1)) if after else _before(token, near)
    if span is None:
        return {}
    at, end = span
    breaks = near.mail[:at].endswith("break ") and _PUMPS.search(near.mail)
    if not breaks and _NO_WATER_BEFORE.search(near.mail[max(0, at - 10) : at]):
        return {}
    if re.match(r"(?:hot|septic|fuel|propane)", near.mail[at:end]):
        return {}
    if near.mail[at:end].startswith("expansion") and _HOT.search(near.mail):
        return {"hot.tank": 7}
    return _tank(token, near, at, end)


_FURTHER = re.compile(
    r"\b(?:tank|cistern|reservoir)\b(?:(?!\b(?:pump|pipe|line|heater|use|uses|bucket|tank|well|spring)\b)(?:[^.;\n]|(?<=\d)\.(?=\d))){0,60}(?:(?:, |\) )(?:and )?(?:it )?(?:its )?(?:holds |is |of |with |takes |has |volume |capacity |contents? |size )*|\band (?:it )?(?:holds|takes|contains) )(?:about )?$"
)


_IT_HOLDS = re.compile(
    r"\W*(?:and )?(?:it|this one|that one) (?:holds|contains|stores|takes)(?: about| some| up to| only)* $"
)


def _before(token: Token, near: Context) -> tuple[int, int] | None:
    """Where the tank stands that is named last before a volume."""
    left = near.left[-90:]
    tank: re.Match[str] | None = None
    for pattern in (words.PRESSURE_TANK, words.STORE, words.ABOVE, words.TANK):
        for match in pattern.finditer(left):
            longer = tank and match.end() == tank.end() and match.start() < tank.start()
            if tank is None or match.end() > tank.end() or longer:
                tank = match
    if tank is None and _FURTHER.search(near.before[-80:]):
        left = near.before[-80:]
        tank = next(
            reversed(list(words.TANK.finditer(left)) or list(words.STORE.finditer(left))), None
        )
    if tank is None and _IT_HOLDS.match(near.before):
        line = near.mail.rfind(near.before, 0, token.start)
        left = near.mail[max(0, line - 110) : token.start]
        tank = next(reversed(list(words.TANK.finditer(left))), None)
    if tank is None or _BETWEEN.search(left[tank.end() :]):
        return None
    begin = token.start - len(left)
    return begin + tank.start(), begin + tank.end()


_NO_PRESSURE = re.compile(r"barrel|tote|ibc|butt|cistern|reservoir|cube|deposit|chamber|box")


def _tank(token: Token, near: Context, at: int, end: int) -> dict[str, float]:
    role = _role(token, near, at, end)
    _several(token, near)
    if role == "small" and _NO_PRESSURE.search(near.mail[at:end]):
        role = "store"
    if role == "small":
        return {"pressure_tank.volume": 5, "store.volume": 5}
    paths = {"pressure": "pressure_tank.volume", "above": "tank.volume", "store": "store.volume"}
    return {paths[role]: 7} if role else {"tank.volume": 5, "store.volume": 5}


def _several(token: Token, near: Context) -> None:
    """Two tanks of one volume hold twice as much."""
    count = _SEVERAL_TANKS.search(near.left[-60:]) or re.search(
        rf"(?:^|[^\w])({NUMBER}) ?(?:x|of|nr|no)? ?$", near.left[-12:]
    )
    if (
        count
        and 2 <= value(count[1])[0] <= (24 if " x" in near.left[-4:] else 6)
        and not _IN_ALL.match(near.right)
    ):
        token.extra["times"] = value(count[1])[0]


def _role(token: Token, near: Context, at: int, end: int) -> str:
    """Which tank it is; "small" where it may be a pressure tank as well, "" where nothing tells."""
    role, litres = words.tank_role(near.mail, at, end), litres_of(token)
    if _DRAWN_NEXT.match(near.mail, max(token.end, end)) and not words.named(near.mail, at, end):
        return "store"
    said, named = near.before + near.after, words.named(near.mail, at, end)
    beside = near.right + near.after[len(near.right) : 60]
    if role == "store" and _CYCLE_BESIDE.match(beside) and _cycles(near.mail, litres / 1.5):
        return "pressure"
    if litres <= 450 and not named and re.search(r"switch|\d0/\d0", said):
        return "pressure"
    if litres <= _LITTLE and not named and re.search(r"\bcuts?[ -]?(?:in|out)\b", said):
        return "pressure"
    if (
        not named
        and litres <= _CYCLED
        and _ONLY_PRESSURE.search(near.mail)
        and not (words.STORE.search(near.mail) or words.ABOVE.search(near.mail))
    ):
        return "pressure"
    if role == "store" and not named and _cycles(near.mail, 2 * litres):
        return "small"
    if role == "" and litres <= 450 and _PRESSED.search(said):
        return "pressure"
    if (
        role == ""
        and not words.high(near.mail)
        and re.search(
            r"\b(?<!no )(?<!without )(?<!without a )(?<!without any )(?:pump|booster)", near.mail
        )
    ):
        feeds = _feeds(near.mail, at, end, litres)
        return "store" if feeds else "small" if litres <= _CYCLED else ""
    return role


_DRAWN_NEXT = re.compile(  # what the next words say of "this tank", or put behind it
    r"[^.;\n]{0,40}[.;\n] ?(?:the |our |a |and )*pump(?: that)? (?:draws|takes|sucks|pulls|drinks|is fed)\b[^.;\n]{0,14}\b(?:from|out of) (?:this|that|the|it)\b"
    r"|[^.;\n]{0,20}[.;,\n] ?(?:and |then |the |our |a )*(?:booster|second pump|another pump|pressure pump)(?: pump| set)? (?:behind|after|from|beside|next to) (?:it|this|that)\b"
)
_ONLY_PRESSURE = re.compile(r"\bpressure tanks?\b[^.;\n]{0,40}|\bcut[ -]?in\b")
_PRESSED = re.compile(r"pressure|switch|psi|bar\b|pre-?charge")
_LITTLE = 100.0  # L, below which a tank where a pump cuts in is its pressure tank; our choice


_CYCLED = 330.0  # L, the largest pressure tank of a house, 86 gal; common practice, no source


_IN_ALL = re.compile(
    r"[ ,(]*(?:of \w+ )?(?:between them|in total|total|altogether|all told|combined|together|in all)\b"
)
_SEVERAL_TANKS = re.compile(
    rf"(?:^|[^\w])({NUMBER}) (?:[a-z-]+ ){{0,2}}(?:tanks|totes|ibcs|cisterns|barrels|butts)(?: [a-z]+){{0,4}},? (?:of |each |at |with |holding )*(?:about )?$"
)


_FRESH = re.compile(r"fresh|\bdraws?\b|\bfrom (?:a|the|our)\b|\bcaravan\b")


def _feeds(mail: str, at: int, end: int, litres: float) -> bool:
    """Whether a tank of which no more is said can be the one that the pump draws from: no small one
    unless it is said to be drawn from, and no reservoir."""
    if litres <= _CYCLED and not _FRESH.search(mail[max(0, at - 40) : end + 30]):
        return False
    return not _cycles(mail, litres) and "reservoir" not in mail[at:end]


_CYCLE_BESIDE = re.compile(r"[^.;\n]{0,45}\b\d0 ?[/-] ?\d0\b")


def _cycles(mail: str, litres: float) -> bool:
    said = re.search(
        r"\bswitch\b|\d0/\d0|\bcycl|\bon and off\b|\bcuts? in\b|\bkicks (?:in|on)\b", mail
    )
    return litres <= _CYCLED and said is not None
