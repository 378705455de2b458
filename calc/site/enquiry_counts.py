"""What is counted in an enquiry: outlets, animals, people, panels."""

from __future__ import annotations

import re
from dataclasses import dataclass

from calc.site.enquiry_noise import negated
from calc.site.enquiry_numbers import NUMBER, value


@dataclass(frozen=True)
class Counted:
    """A thing counted: path, how many, and where; together: at one time; vague: named, not counted
    (as in "the shower"), so that a number said elsewhere counts instead."""

    path: str
    count: float
    start: int
    end: int
    together: bool = False
    vague: bool = False
    high: float = 0.0
    other: str = ""


_OUTLETS = (
    ("outlets.shower", r"shower(?:s|heads?)?|showeres|shwoers?|showrs?"),
    ("outlets.sink", r"(?:kitchen |bathroom |hand ?|utility |wash ?|bath ?)?(?:sinks?|wash(?:ing)? ?-?basins?|basins?|faucets?|lavator(?:y|ies) (?:sinks?|basins?))"
                     r"|kitchen taps?|washbasins?|lavs?"),
    ("outlets.toilet", r"(?:flush(?:ing)? )?(?:toilets?|loos?|wcs?|w\.c\.s?|lavator(?:y|ies))"),
    ("outlets.washer", r"(?:clothes |laundry )?(?:washing ?machines?|washers?|clothes ?washers?|laundry machines?)"),
    ("outlets.hose", r"(?:garden |outside |outdoor |yard )?(?:hose ?bibb?s?|hose ?cocks?|hosepipes?|hoses?|spigots?|hydrants?|outside taps?|outdoor taps?"
                     r"|garden taps?|yard taps?|standpipes?)"),
    ("use.troughs", r"(?:stock |water(?:ing)? |drinking |goat |cattle |cow |horse |sheep |animal |livestock )*(?:troughs?|waterers?|drinkers?|stock tanks?)"),
    ("outlets.sprinkler", r"(?:impact |lawn |rotor |garden |big |pasture )*sprinklers?(?: heads?)?"),
    ("outlets.drip", r"(?:drip|dripline|drip line|drip irrigation) (?:zones?|circuits?|blocks?|sections?|valves?)|zones? of drip|(?:drip zone)s?"),
)  # fmt: skip
_ANIMALS = (
    ("animals.nursing", r"(?:cow[ -]calf pairs?|cows? with (?:a |their |the |its )?(?:small |young |little )?cal(?:f|ves)(?: at foot)?|(?:mother|suckling|nurse) cows?|pairs? of cows? and cal(?:f|ves)|nursing cows?|suckler(?: cow)?s?"
                        r"|cows? and cal(?:f|ves)|cow/calf pairs?|pairs?(?! of\b))"),
    ("animals.dairy", r"(?:dairy cows?|milk(?:ing|ers?)?(?: cows?)?|milch cows?|house cows?|milkers|cows? (?:in|for|of|giving|that give|which give) milk|cows? in lactation|dairy cattle|lactating cows?)"),
    ("animals.cattle", r"(?:(?:dry |beef |highland )?(?:cows?|cattle|steers?|heifers?|bullocks?|bulls?)|horses?|ponies|pony|mares?|donkeys?|mules?"
                       r"|head(?: of (?:cattle|beef|cows|stock))?)"),
    ("animals.goats", r"(?:(?:milk |dairy |nubian |pygmy )?goats?|sheep|ewes?|lambs?|alpacas|nannies|nanny goats?)"),
    ("animals.hens", r"(?:(?:laying |free[ -]range )?(?:hens?|chickens?|chooks?|layers|pullets)|laying hens?|poultry|roosters?)"),
)  # fmt: skip
_STOP = (
    r"(?:at|in|of|for|to|from|and|or|with|is|are|on|the|by|per|than|when|while|that|which|has|have|no|not|above|below|between|if|can|could|will|would|as|a|an|one|two|our"
    r"|my|your|their|it|then|runs?|opens?|into|up|down|near|inch|mm|gallon|gallons|gal|litre|litres|liter|liters|l|ft|foot|feet|people|persons|second|third|three|four|five|six|seven|eight|nine|ten|eleven|twelve|twenty|thirty|forty|fifty|dozen|hundred|both|some|few|many)"
)
_ADJ = rf"(?:(?!{_STOP}\b)[a-z][a-z-]* |(?:of (?:my|our|the) )|(?:pieces?|pcs|units|nos?) (?:of )?|\d/\d |½ ){{0,2}}"
_N = rf"(?P<n>(?:the |a |our )?(?:second|third)|(?:a )?couple(?: of)?|{NUMBER}(?: ?(?:-|to|or) ?{NUMBER})?|an?|one|the|our|my|this|that|its|his|no|zero|both|each|single|another|main|kitchen|outdoor|outside|goat|upstairs|downstairs|second|third|1x|also|plus|and|,|&|\+|x)"
_THINGS = tuple(
    (
        path,
        re.compile(
            rf"(?<![\w¤-]){_N}(?: ?x)?[ -]{{1,2}}{_ADJ}(?P<thing>{pattern})\b(?![ -](?:head pressure|valves? box|tray|curtain))"
        ),
    )
    for path, pattern in (*_OUTLETS, *_ANIMALS)
)
BARE = {
    path: re.compile(rf"(?<![\w¤-])(?P<thing>{pattern})(?![\w])")
    for path, pattern in (*_OUTLETS, *_ANIMALS)
}
_LISTED = re.compile(
    r"(?<![\w¤-])(?P<thing>[a-z ]{3,24}?)(?:s)? ?(?::|=|x|-|\() ?(?P<n>\d{1,3})(?![\w./])"
)
_ACT = re.compile(
    r"(?:\b(?:take|takes|taking|took|have|having|has|had|quick|hot|long|good|decent|morning|nice|a proper|in|each|per|want) (?:a |an |one )?)$"
)
_TOGETHER_AFTER = re.compile(
    r"[^.;¤\n]{0,45}?\b(?:at (?:once|the same time|one time|a time)|together|simultaneously|same time|in parallel|both on|all on|running at|concurrently|going at once)\b"
)
_TOGETHER_BEFORE = re.compile(
    r"\b(?:at once|at the same time|simultaneously|at a time|together)[^.,;¤\n]{0,12}$|\bboth(?: of the| the)? $"
)
_NO_LIST = re.compile(
    r"\b(?:no|neither|without(?: an?| any)?|don'?t have(?: an?| any)?|do not have(?: an?| any)?|haven'?t got(?: an?| any)?|there(?:'s| is| are) no|not an?) ([^.;\n¤]{3,90})"
)
_DRY = re.compile(
    r"\b(?:compost(?:ing)?|dry|pit|chemical|porta|portable|camping|waterless|out ?house|earth) (?:flush )?$"
)
_SKIP_THING = re.compile(
    r"^[ -]*(?:block|tray|curtain|bib for|head is|time|water$|pump|supply|tank|room|house|bag|timer|valve|pressure|line|barb|hours?|lines?)"
)


_PAIRED = re.compile(
    r"(?:^|\n|\d {2,})(?:showers?|sinks?|toilets?|taps?|hoses?|people|goats|hens|cows|troughs?|washers?) +$"
)


def things(low: str) -> list[Counted]:
    """Outlets and animals of a masked text, each where it stands."""
    found: list[Counted] = []
    taken: list[tuple[int, int]] = []
    for low_start, low_end, path in _none(low):
        found.append(Counted(path, 0, low_start, low_end))
        taken.append((low_start, low_end))
    for path, pattern in _THINGS:
        for match in pattern.finditer(low):
            span = match.span("thing")
            if match["n"][0].isdigit() and _PAIRED.search(
                low[max(0, match.start() - 30) : match.start()]
            ):
                continue
            if any(start < span[1] and span[0] < end for start, end in taken):
                continue
            one = _counted(low, path, match)
            if one is not None:
                found.append(one)
                taken.append((match.start(), span[1]))
    for path, pattern in BARE.items():
        for match in pattern.finditer(low):
            if any(start < match.end() and match.start() < end for start, end in taken):
                continue
            one = _named(low, path, match)
            if one is not None:
                found.append(one)
                taken.append(match.span())
    found.sort(key=lambda one: one.start)
    return found


def _none(low: str) -> list[tuple[int, int, str]]:
    """(start, end, path) of what a list after "no" names: "no toilet, washing machine or hose"."""
    found = []
    for no in _NO_LIST.finditer(low):
        at = no.start(1)
        for number, part in enumerate(
            re.split(r"(, ?(?:or |and |nor )?| or | nor | and no )", no[1])
        ):
            if number % 2 == 0:
                hit = next(
                    (
                        (p, f)
                        for p, pattern in BARE.items()
                        if (
                            f := pattern.match(
                                re.sub(
                                    r"^(?:an?|any|the|more|other|flush(?:ing)?|indoor|separate) ",
                                    "",
                                    part,
                                )
                            )
                        )
                    ),
                    None,
                )
                if hit is None:
                    break
                if hit[0].startswith(("outlets", "use")) and not part[
                    hit[1].end() :
                ].strip().startswith(("pressure", "valve")):
                    found.append((at, at + len(part), hit[0]))
            at += len(part)
    return found


def _counted(low: str, path: str, match: re.Match[str]) -> Counted | None:
    word, thing = match["n"], match["thing"]
    rooms = _ROOMS.search(low[max(0, match.start("thing") - 90) : match.start("thing")])
    if rooms and word in {"a", "an", "its", "own", "one", "and"}:
        return Counted(path, value(rooms["n"])[0], match.start("thing"), match.end("thing"))
    if re.search(
        r"\beach (?:with|has|have|having)\b[^.;]{0,40}$",
        low[max(0, match.start() - 60) : match.start()],
    ):
        return None
    start, end = match.start(), match.end("thing")
    plural = (
        thing.endswith("s")
        or thing in {"pair", "sheep", "cattle", "poultry"}
        or thing.startswith("head")
    )
    before, after = low[max(0, start - 40) : start], low[end : end + 70]
    if path.startswith(("outlets", "use")) and _SKIP_THING.match(after):
        return None
    if path == "outlets.toilet" and _DRY.search(low[: match.start("thing")][-20:]):
        return None
    if negated(low, start) and not word[0].isdigit():
        return Counted(path, 0, start, end) if path.startswith(("outlets", "use")) else None
    if path.startswith("animals") and re.match(
        r"['-]|s?' | (?:shed|barn|house|pen|yard|field|paddock|trough|milk|manure|shower|track)\b",
        after,
    ):
        return None
    if thing.startswith("pair") and not re.search(r"\b(?:cows?|cattle|calf|calves|bulls?)\b", low):
        return None
    if re.match(
        r",? ?(?:each(?! of\b| must| has| is| needs| runs?)|in each|per (?:cabin|house|unit|cottage|hut)|apiece)\b",
        after,
    ):
        return _each(low, path, match)
    same = _TOGETHER_AFTER.match(after)
    if same and re.search(r"\b(?:not|never|don't)\b", same.group()):
        same = None
    number_on = re.match(r" (?:are |is )(?:all )?(?:on|open|running|going|in use)\b", after)
    if same and re.search(rf"(?<![\w-]){NUMBER}\b(?! time)", same.group()):
        same = None
    if path == "outlets.hose" and (
        re.match(r" (?:is |of |from |pipe )?(?:\d|½|¾|half|three)", after)
        or re.search(
            r"suction|intake|delivery|discharge|drain|lay ?-?flat|\bof $",
            low[start - 12 : match.end()],
        )
    ):
        return None
    together = bool(
        same or _TOGETHER_BEFORE.search(before) or word == "both" or (plural and number_on)
    )
    if re.match(r"(?:the |our |a )?(?:second|third) (?!home|house)", match.group()):
        word = "third" if "third" in match.group() else "second"
        return Counted(path, 2.0 if word == "second" else 3.0, start, end)
    number, high = how_many(word)
    if word == "both":
        number = high = 2.0
    if number is None:
        if plural or word in {"each", "no", "x"}:
            return None
        if path.startswith("animals") and word not in {
            "a",
            "an",
            "one",
            "single",
            "our",
            "my",
            "the",
        }:
            return None
        act = (
            path == "outlets.shower"
            and word in {"a", "an", "one", "and", ",", "each", "the"}
            and _ACT.search(before)
        )
        if act or (path == "outlets.hose" and re.search(r"(?:with|through|by|from) $", before)):
            return None
        vague = word not in {"a", "an", "one", "single", "1x"}
        return Counted(
            path,
            1,
            start if word not in {",", "and", "&", "+", "plus", "also"} else match.start("thing"),
            end,
            False,
            vague,
        )
    if (
        re.search(r"\b(?:inch|mm|in)\b|\d/|\"", match.group()[len(word) :])
        and path == "outlets.hose"
    ):
        return None  # a hose of that size
    if (
        plural is False
        and number > 1
        and not re.match(r" ?(?:$|[,.;)&+\n]|and\b|plus\b|with\b|in\b|for\b|or\b)", after)
        and not path.startswith("animals")
    ):
        return None  # "3 shower" before another noun
    if number != int(number) or number < 0 or number > 5000:
        return None
    return Counted(path, number, start, end, together, False, high or 0.0)


_HOMES = re.compile(
    rf"(?<![\w¤-])({NUMBER}) (?:\w+ )?(?:bathrooms|cabins|houses|units|cottages|bungalows|yurts|huts|homes|apartments|flats|lodges|rooms)\b[^.;]*$"
)


def _each(low: str, path: str, match: re.Match[str]) -> Counted | None:
    """ "three cabins with one shower each" are three showers."""
    homes = _HOMES.search(low[max(0, match.start() - 80) : match.start()])
    number = 1.0 if match["n"] in {"a", "an", "one", "1"} else how_many(match["n"])[0]
    if homes is None or number is None:
        return None
    return Counted(path, value(homes[1])[0] * number, match.start(), match.end("thing"))


_ROOMS = re.compile(
    rf"(?<![\w¤-])(?P<n>{NUMBER}) (?:\w+ )?(?:bathrooms|rooms|cabins|bungalows|cottages|flats|apartments|huts|units|houses),? ?(?:each )?(?:with|having|has|have)(?: each)? "
    r"(?:(?:its|their) own |own |an? |one )?(?:[a-z]+,? (?:a )?){0,2}(?:and (?:an? |its own )?)?$"
)


def how_many(word: str) -> tuple[float | None, float | None]:
    word = "two" if "couple" in word and "hundred" not in word else word
    parts = (
        re.split(r"(?<=[\da-z]) ?(?:-|to|or) ?(?=\d|[a-z]{3})", word)
        if re.search(r"\d ?(?:-|to|or) ?\d|[a-z] (?:to|or) [a-z]", word)
        else [word]
    )
    if not re.fullmatch(NUMBER, parts[0]):
        return None, None
    first = value(parts[0])[0]
    if len(parts) == 2 and re.fullmatch(NUMBER, parts[1]):
        return first, value(parts[1])[0]
    return first, first


def _named(low: str, path: str, match: re.Match[str]) -> Counted | None:
    """A thing in a list or on its own: "shower x 2", "toilet: 1", "shower, sink and toilet"."""
    rooms = _ROOMS.search(low[max(0, match.start() - 90) : match.start()])
    if rooms and not match["thing"].endswith("s"):
        return Counted(path, value(rooms["n"])[0], match.start(), match.end())
    after, before = (
        low[match.end() : match.end() + 30],
        low[max(0, match.start() - 40) : match.start()],
    )
    many = (
        re.match(rf"[^.;,\n]{{0,30}}, ({NUMBER}) of them\b", after)
        or re.match(
            rf",? (?:there are|we have|i have|about|some|around|maybe)? ?({NUMBER})(?: of them| in all| or so| head)(?![\w])",
            after,
        )
        or re.match(rf", (?:there are|we have|i have) ({NUMBER})\b(?! ?(?:m|ft|psi|gpm))", after)
    )
    if many and match["thing"].endswith("s"):
        return Counted(path, value(many[1])[0], match.start(), match.end() + many.end())
    head = (
        bool(re.search(r"\d {2,}$", before))
        or not before.rstrip(" -*•").strip()
        or before.rstrip(" -*•")[-1:] in "\n,;:("
    )
    plain = re.match(
        r"s? +(?:about |ca\.? )?(\d{1,3})\b(?! ?(?:m|ft|psi|gpm|l|lpm|bar|gal|mm|in|inch|w|v|hp|gallon|litre|liter|head)\b|[./\"'])",
        after,
    )
    if head and plain:
        return Counted(path, float(plain[1]), match.start(), match.end() + plain.end())
    number = re.match(
        r"(?:s)?(?: (?:on|in|at) [a-z]+(?: [a-z])?)? *(?:x|:|=|-|\() *(?:about |ca\.? |approx\.? |~ ?|maybe )?(\d{1,4}|(?:one|two|three|four|five|six|seven|eight|nine|ten|twelve)\b)\b(?! ?(?:m|ft|psi|gpm|l|lpm|bar|gal|mm|/|kpa|h|litre|in)\b|[./])",
        after,
    )
    if number:
        return Counted(path, value(number[1])[0], match.start(), match.end() + number.end())
    if path.startswith("animals"):
        return None
    if re.match(r"s? ?(?::|=|-) ?(?:none|no|nil|0)\b(?! idea)", after):
        return Counted(path, 0, match.start(), match.end())
    if path == "outlets.toilet" and _DRY.search(before[-20:]):
        return None
    if match["thing"].endswith("s") or _SKIP_THING.match(after) or _ACT.search(before):
        return None
    if negated(low, match.start()):
        return Counted(path, 0, match.start(), match.end())
    if (
        path in {"outlets.hose", "use.troughs", "outlets.drip"}
        and not re.search(r"(?:,|and|plus|&|\+|:|/|one)\s*(?:\w+ )?$", before)
        and (
            path != "outlets.hose"
            or not re.match(
                r" (?:is |is turned |comes |gets )?(?:on|open|running|runs|opens|opened)\b", after
            )
        )
    ):
        return None
    return Counted(path, 1, match.start(), match.end(), False, True)


def named_in(question: str) -> str:
    """The path of what a question asks the number of; "" where it is none of these."""
    if re.search(r"\b(?:people|persons|live|of you|household|residents|occupants)\b", question):
        return "use.people"
    return next((path for path, pattern in BARE.items() if pattern.search(question)), "")


# People ------------------------------------------------------------------------------------------
