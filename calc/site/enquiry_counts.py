"""What is counted in an enquiry: outlets, animals, people, panels."""

from __future__ import annotations

import re
from dataclasses import dataclass, replace

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
    ("outlets.saver", r"(?:low[ -]?flow|water[ -]?sav(?:ing|er)|flow[ -]limited|economy|saver) shower(?:s|heads?)?|shower(?:s|heads?)?(?=(?: limited)? \(?(?:with|w/?) (?:an? |the )?(?:(?:flow|water)[ -]?(?:limit|restrict|sav)|low[ -]?flow))"),
    ("outlets.shower", r"(?<!flow )(?<!saving )(?<!limited )(?<!saver )shower(?:s|heads?)?(?!(?: limited)? \(?(?:with|w/?) (?:an? |the )?(?:(?:flow|water)[ -]?(?:limit|restrict|sav)|low[ -]?flow))|showeres|shwoers?|showrs?"),
    ("outlets.sink", r"(?:kitchen |bathroom |hand ?|utility |wash ?|bath ?)?(?:sinks?|wash(?:ing)? ?-?basins?|(?<!intake )(?<!settling )(?<!catch )(?<!collecting )(?<!stilling )(?<!over the )(?<!above the )(?<!below the )basins?|faucets?|lavator(?:y|ies) (?:sinks?|basins?))"
                     r"|kitchen taps?|taps? (?:at|over) (?:the )?(?:sinks?|basins?)|washbasins?|lavs?"),
    ("outlets.toilet", r"(?:flush(?:ing)? )?(?:toilets?|loos?|dunn(?:y|ies|ys)|commodes?|wcs?|w\.c\.s?|lavator(?:y|ies))"),
    ("outlets.washer", r"(?:clothes |laundry )?(?:washing ?machines?|washers?|clothes ?washers?|laundry machines?)"),
    ("outlets.hose", r"(?:garden |outside |outdoor |yard |wash ?-?down )?(?:hose ?bibb?s?|hose ?cocks?|hose points?|hosepipes?|hoses?|spigots?|hydrants?|outside taps?|outdoor taps?"
                     r"|garden taps?|yard taps?|standpipes?|taps? (?:outside|outdoors|in the (?:garden|yard))(?! with (?:an?|the|one|garden) ))"),
    ("use.troughs", r"(?:stock |float |water(?:ing)? |drinking |goat |cattle |cow |horse |sheep |animal |livestock )*(?:troughs?|waterers?|drinkers?|stock tanks?)|(?:drinking|water|float) bowls?|tire tanks?|tyre tanks?"),
    ("outlets.micro", r"micro[ -]?(?:sprinklers?|sprays?|jets?)"),
    ("outlets.micro", r"micro[ -]?(?:sprinklers?|sprays?|jets?)(?: heads?)?|micros"),
    ("outlets.sprinkler", r"(?<!micro )(?<!micro-)(?:impact |lawn |rotor |garden |big |pasture )*sprinklers?(?: heads?)?"),
    ("outlets.drip", r"(?:drip|dripline|drip line|drip irrigation) (?:zones?|circuits?|blocks?|sections?|valves?)|zones? of drip|(?:drip zone)s?"),
)  # fmt: skip
_ANIMALS = (
    ("animals.nursing", r"(?:cow[ -]calf pairs?|cows? (?:with|wi|w/) (?:a |their |the |its )?(?:small |young |little )?cal(?:f|ves)(?: at foot)?|(?:mother|suckling|nurse) cows?|pairs? of cows? and cal(?:f|ves)|nursing cows?|suckler(?: cow)?s?"
                        r"|cows? and cal(?:f|ves)|cow/calf pairs?|pairs?(?! of\b))"),
    ("animals.dairy", r"(?:dairy cows?|milk(?:ing|ers?)?(?: cows?)?(?! (?:goats?|sheep|ewes?|nann))|milch cows?|house cows?|milkers|cows? (?:in|for|of|giving|that give|which give) milk|cows? in lactation|dairy cattle|lactating cows?)"),
    ("animals.cattle", r"(?:(?:dry |beef |highland )?(?:cows?|cobs?|cattle|steers?|(?<=dry )stock|heifers?|young ?stock|yearlings|bullocks?|bulls?|geldings?|stallions?|foals?)|(?<=\d )beef(?= ?(?:[,.;\n]|$)| and\b)|horses?|ponies|pony|mares?|donkeys?|mules?"
                       r"|head(?! of (?:sheep|goats))(?: of (?:cattle|beef|cows|stock))?)"),
    ("animals.goats", r"(?:(?:milk |dairy |nubian |pygmy )?goats?|sheep|ewes?|merinos|lambs?|rams|(?<=ewes and a )ram|(?<=ewes plus a )ram|(?<=ewes, a )ram|(?<=ewes and one )ram|(?<=does and a )buck|wethers?|hoggets?|tups?|billy goats?|(?<=\d )does(?= and an? buck|,| and \d| &|\.)|(?<=\d )bucks|nannies|nanny goats?|head of (?:sheep|goats))"),
    ("animals.hens", r"(?:(?:laying |free[ -]range )?(?:hens?|chickens?|chooks?|layers|pullets)|laying hens?|poultry|roosters?)"),
)  # fmt: skip
_STOP = (
    r"(?:at|in|of|for|to|from|and|or|with|is|are|on|the|by|per|than|when|while|that|which|has|have|no|not|above|below|between|if|can|could|will|would|as|a|an|one|two|our"
    r"|my|your|their|it|then|runs?|opens?|into|up|down|near|inch|mm|cm|m|km|bar|psi|kpa|kw|w|v|hp|kg|metres?|meters?|gallon|gallons|gal|litre|litres|liter|liters|l|ft|foot|feet|people|persons|second|third|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|eighteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|dozen|hundred|both|some|few|many)"
)
_ADJ = rf"(?:(?!{_STOP}\b)[a-z][a-z-]* |(?:of (?:my|our|the) )|(?:pieces?|pcs|units|nos?) (?:of )?|\d/\d |½ ){{0,2}}"
_N = rf"(?P<n>(?:the |a |our )?(?:second|third)|(?:a )?(?:couple|pair)(?: of)?|{NUMBER}(?: ?(?:-|to|or) ?{NUMBER})?|an?|one|the|our|my|this|that|its|his|no|zero|both|each|single|another|main|kitchen|outdoor|outside|goat|upstairs|downstairs|second|third|1x|also|plus|and|,|&|\+|x)"
THINGS = tuple(
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
ACT = re.compile(
    r"(?:\b(?:take|takes|taking|took|have|having|has|had|quick|hot|long|good|decent|morning|nice|a proper|in|each|per|want) (?:a |an |one )?)$"
)
TOGETHER_AFTER = re.compile(
    r"[^.;¤\n]{0,45}?\b(?:at (?:once|the same time|one time|a time)|together|simultaneously|same time|in parallel|at same time|both on|all on|running at|concurrently|going at once)\b"
)
TOGETHER_BEFORE = re.compile(
    r"\b(?:at once|at the same time|simultaneously|at a time)[^.,;+&¤\n]{0,12}$|\bboth(?: of the| the)? $"
)
NO_LIST = re.compile(
    r"\b(?:no|neither|without(?: an?| any)?|don'?t have(?: an?| any)?|do not have(?: an?| any)?|haven'?t got(?: an?| any)?|there(?:'s| is| are) no|not an?) ([^.;)\n¤]{3,90})"
)
DRY = re.compile(
    r"\b(?:compost(?:ing)?|dry|pit|bucket|chemical|porta|portable|camping|waterless|out ?house|earth) (?:flush )?$"
)
SKIP_THING = re.compile(
    r"^[ -]*(?:at the (?:road\w*|spring|source|gate)|fills\b|overflows?\b|(?:within|in (?:an|one|two|three|\d+)|per|every|each|a) (?:hours?|guest|person|head|day|morning|evening|week|the (?:first|last)|two hours)|bloc?k|tray|curtain|bib for|head is|time|water$|pump|supply|tank|room|house|bag|timer|valve|pressure|line|barb|hours?|lines?|clamp|reel|fitting|connector|head costs?|of rain|rail|door|screen|stall|pan)"
)


_AMENDED = re.compile(
    rf"(?: (?!and\b)[a-z]+){{0,3}}[,.;:!?( -]+(?:(?:no|oh|ah|er|erm|um|uh|hm+|wait|well|or)\b[,.]? )*(?:sorry|correction|wait|make (?:that|it)|i mean|i tell a lie|my mistake|scratch that|strike that|hang on|hold on|rather|actually|no|well)\b[,.: -]*(?:no,? |sorry,? |wait,? |make (?:that|it) |it's |it is |they're |we're |we are |there are |that's |now |actually |rather |i mean )*({NUMBER})(?= ?(?:[.,;:!)\n]|$|since|live|living|on the|now|of (?:us|them)|in all|counting|with|if|at the|really|actually|in truth)| and\b| (?:[a-z]+ )?(?:showers?|sinks?|toilets?|taps?|hoses?|washers?|basins?|people|goats|sheep|hens|cows|cattle|horses|troughs?|guests|adults)\b)"
)


def amended(low: str, one: Counted) -> Counted:
    """What is put right at once: "6 people, sorry, it's 8"."""
    if one.vague or not one.count:
        return one
    match = _AMENDED.match(low, one.end)
    number = value(match[1])[0] if match else 0.0
    if match is None or number != int(number) or not number:
        return one
    return replace(one, count=number, high=number, end=match.end())


def put_right(low: str, counted: list[Counted]) -> list[Counted]:
    """All that is counted, without what only says again, put right: "4 showers, no wait, 3 showers"."""
    mended = [amended(low, one) for one in counted]
    fixes = [new for old, new in zip(counted, mended, strict=True) if new is not old]
    return [
        one
        for one in mended
        if not any(
            fix is not one and fix.path == one.path and fix.start < one.start < fix.end
            for fix in fixes
        )
    ]


def how_many(word: str) -> tuple[float | None, float | None]:
    word = "two" if ("couple" in word or "pair" in word) and "hundred" not in word else word
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


def named_in(question: str) -> str:
    """The path of what a question asks the number of; "" where it is none of these."""
    if re.search(
        r"\b(?:people|persons|live|of you|are you|household|residents|occupants)\b", question
    ):
        return "use.people"
    return next((path for path, pattern in BARE.items() if pattern.search(question)), "")


# People ------------------------------------------------------------------------------------------
