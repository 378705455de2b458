"""What a letter tells of panels and drippers beside their names: aim, shade, zones, a pressure class."""

from __future__ import annotations

import re

from calc.site.enquiry_model import Context, Piece
from calc.site.enquiry_numbers import NUMBER, value

WORDS = (  # rows as those of ``enquiry_words``
    ("power.source", "sun", 3, r"\bstrings? of (?:\d+|two|three|four|five|six|seven|eight|ten) (?:modules|panels)\b|\b(?:runs?|fed|powered|driven|worked)(?: straight| directly| only)? (?:from|by|off|on) (?:a |the |our |one |two |three |four |six |eight )?(?:single |pair of )?(?:\d+ ?-?(?:w|watts?) )?panels?\b|\bmppt\b"),
    ("store.fills", "always", 3, r"\b(?:spring|seep|stream|source)\b[^.;\n]{0,60}\b(?:fills|feeds|runs into|goes into|trickles into)\b[^.;\n]{0,25}\b(?:day and night|round the clock|continuously|constantly|without stop(?:ping)?)\b"),
    ("store.fills", "none", 4, r"\b(?:filled|fed|lives)\b[^.;\n]{0,12}\b(?:only|solely|nothing but)\b[^.;\n]{0,12}\b(?:rain\w*|roof\w*)"),
    ("pump.placement", "out", 3, r"\bsurface[ -]type\b"),
    ("pump.grade", "1B", 3, r"\b(?:tolerance|acceptance|grade)(?: class| grade)? 1b\b"),
    ("pump.grade", "2B", 3, r"\b(?:tolerance|acceptance|grade)(?: class| grade)? 2b\b"),
    ("pump.grade", "3B", 3, r"\b(?:tolerance|acceptance|grade)(?: class| grade)? 3b\b"),
    ("pipes.held", "laid", 3, r"\b(?:pipe|hose|line|poly|hdpe|pe|it)\b[^.;\n]{0,45}\b(?:lies?|lying|laid|runs?|left) (?:just |all )?(?:loose|bare|uncovered|in the (?:full |open |hot )?sun)\b"),
    ("drip.fed", "middle", 3, r"\b(?:manifold|header|sub-?main|drip|laterals?|rows?)\b[^.;\n]{0,40}\b(?:fed|feeds?|enters?|supplied|connected|comes in|joins)\b[^.;\n]{0,15}\b(?:in|from|at) (?:the |its )?(?:middle|centre|center)\b"),
    ("drip.fed", "start", 3, r"\b(?:manifold|header|sub-?main)\b[^.;\n]{0,40}\b(?:fed|feeds?|enters?|supplied|connected|comes in|joins)\b[^.;\n]{0,12}\b(?:at|from) (?:the |one |its )(?:\w+ )?end\b"),
    ("water.kind", "well", 3, r"\b(?:have|has|got|is|use|using)(?: now| only| just)* (?:a )?well (?:with|of|that gives)(?= ?(?:\d|about))"),
)  # fmt: skip
GROWN = re.compile(
    r"\b(?:grow|grows|growing|plant|plants|planted|planting|cultivate|cultivates|raise) (?:\w+ ){0,2}?[a-z]"
)
_PANELS = re.compile(r"\b(?:panels?|solar|modules?|pv|array)\b")
_AIM = r"(?P<one>north|south|east|west)(?:[ -]?(?P<two>east|west))?"
_AIMED = (  # "tilt 35°, facing south-west", "six panels of 275 W, south, thirty degrees"
    re.compile(
        rf"\b(?:tilt(?:ed)?|inclined|inclination|pitch|angle|degrees|°)[^.;\n]{{0,25}}[, ](?:and )?(?:facing|looking|looks?|pointing|aimed|turned|oriented|orientated|to(?:wards)?)(?: due| true| to(?:wards)?| the)* {_AIM}\b(?! of\b)"
    ),
    re.compile(
        rf"\b(?:panels?|modules?|array)\b[^.;\n]{{0,40}}, ?(?:facing |looking |due |to the |towards |all )?{_AIM}(?= ?(?:[,.;\n]|and\b|at\b|$))"
    ),
    re.compile(
        rf"\b(?:panels?|modules?|array|roof)\b[^.;\n]{{0,30}}\b(?:turned|set|laid|directed|mounted|installed) (?:due |to(?:wards)? |the )*{_AIM}\b(?! of\b)"
    ),
)
_SHARES = {
    "half": 50.0, "third": 100 / 3, "two thirds": 200 / 3, "quarter": 25.0, "three quarters": 75.0,
    "fifth": 20.0, "tenth": 10.0, "sixth": 100 / 6, "eighth": 12.5,
}  # fmt: skip
_SHARE = re.compile(
    r"(?<![\w-])(?:(?:an?|one|about|around) )*(?P<f>two thirds|three quarters|half|third|quarter|fifth|tenth|sixth|eighth)(?: of)? (?:of )?(?:the |our |its |their |all )?(?:day's |daily )?(?:sun(?:light|shine)?|light|day|output|power|energy|yield|harvest|panels? output)\b"
)
_TAKEN = re.compile(
    r"\b(?:shad\w+|trees?|oaks?|walnuts?|pines?|hill|ridge|barn|roof|chimney|forest|wood)\b"
)
_LOST = re.compile(
    r"\b(?:lost|lose|loses|losing|takes?|costs?|steals?|robs?|eats?|blocks?|missing|gone|cuts?|shad\w+)\b"
)
_CLASS = re.compile(
    r"\b(?:weakest|lowest class|lowest rated|poorest)\b[^.;\n]{0,45}\bpn ?-?(?P<n>\d{1,2}(?:\.\d)?)\b|\bpn ?-?(?P<m>\d{1,2}(?:\.\d)?)\b[^.;\n]{0,25}\b(?:is )?the weakest\b"
)
_ZONES = re.compile(
    rf"(?<![\w¤-])(?P<n>{NUMBER})(?: \w+)? (?:zones?|sectors?|blocks?|sections?)\b(?! (?:valve|board|at (?:once|a time|one time)|together))|\b(?:number of )?zones ?[:=] *(?P<n2>{NUMBER})(?= *(?:$|[.,;\n]))"
)
_TURNS = re.compile(
    r"[^.;\n]{0,25}\b(?:one after (?:the other|another)|one by one|in turns?|by turns?|after each other|in sequence)\b"
)
_DRIPPERS = re.compile(r"\b(?:drippers?|emitters?|before the tape|drip tapes?|tape rows?)\b")


_BEASTS = re.compile(
    r"\b(?:cows?|cattle|goats?|sheep|horses?|hens|chickens|heifers?|steers?|ewes|pigs|animals|livestock|trees?|plants?|vines)\b"
)
_PERSONS = re.compile(
    r"\b(?:people|persons?|guests?|family|us|we|pupils|children|patients|household|person|capita)\b"
)


def each(near: Context) -> dict[str, float]:
    """{path: weight} of an amount "each a day", which is a person's unless beasts are named."""
    said = near.before[-60:]
    beasts = _BEASTS.search(said) and not _PERSONS.search(said.split(",")[-1])
    return {} if beasts else {"use.each": 7.0}


def _sentence(low: str, at: int) -> tuple[int, int]:
    begin = max(low.rfind(sign, 0, at) for sign in ".;?!\n") + 1
    end = re.compile(r"[.;?!\n]").search(low, at)
    return begin, end.start() if end else len(low)


def told(low: str) -> list[Piece]:
    """All that stands in a masked, folded text."""
    found = [*_aims(low), *_shades(low)] if _PANELS.search(low) else []
    for one in _CLASS.finditer(low):
        number = float(one["n"] or one["m"])
        found.append(Piece("pipes.weakest", *one.span(), number, number, "bar"))
    return found


def _aims(low: str) -> list[Piece]:
    found = []
    for pattern in _AIMED:
        for one in pattern.finditer(low):
            key = one["one"][0] + (one["two"] or "")[:1]
            begin, end = _sentence(low, one.start())
            if not re.search(r"\b(?:if|would|could|should)\b|¤", low[begin : one.end()]):
                span = one.start("one"), one.end("two" if one["two"] else "one")
                found.append(Piece("power.facing", *span, word=key, weight=3))
    return found


def _shades(low: str) -> list[Piece]:
    """ "a walnut tree takes a third of the light"."""
    found = []
    for one in _SHARE.finditer(low):
        begin, end = _sentence(low, one.start())
        said = low[begin:end]
        if _TAKEN.search(said) and _LOST.search(said) and not re.search(r"\bif\b|\bwould\b", said):
            share = _SHARES[one["f"]]
            found.append(Piece("power.shade", *one.span(), share, share, "%"))
    return found


def zoned(low: str, pieces: list[Piece]) -> list[Piece]:
    """Zones of a letter about drippers are those of its drip lines, and no outlets of the house."""
    zones = _zones(low)
    kept = [one for one in pieces if not (zones and one.path.startswith("outlets.drip"))]
    return [*kept, *zones]


def _zones(low: str) -> list[Piece]:
    """Zones of a letter about drippers, or ones that are watered by turns."""
    if "drip" not in low and not _DRIPPERS.search(low):
        return []
    found = []
    for one in _ZONES.finditer(low):
        number = value(one["n"] or one["n2"])[0]
        turns = _TURNS.match(low, one.end())
        if (turns or _DRIPPERS.search(low)) and number == int(number) and 1 <= number <= 100:
            found.append(Piece("drip.zones", *one.span(), number, number))
    return found
