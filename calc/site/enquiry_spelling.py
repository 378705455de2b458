"""Words as they are misspelt, dictated or taken from another language, put right before reading.

What is read stays shown as it was written: every place of the corrected text is mapped back.
"""

from __future__ import annotations

import re
from functools import lru_cache

from calc.site.enquiry_misspelt import MISSPELT, PHRASES


def _set(words: str) -> frozenset[str]:
    return frozenset(words.split())


_KNOWN = _set(
    "pressure submersible cistern spring springs creek stream shower showers toilet toilets washing machine machines "
    "sprinkler sprinklers garden cattle horses gallon gallons litre litres liter liters metre metres meter meters people "
    "persons solar panels panel battery batteries house cabin buried distance height uphill pumps water level generator "
    "switch above below bucket buckets minute minutes second seconds hour hours kitchen basement poly polyethylene "
    "galvanised copper plastic altitude elevation vertical inches greenhouse vegetable vegetables orchard irrigation "
    "drilled borehole rainwater reservoir booster surface suction constant variable controller pipeline trough troughs "
    "chickens goats sheep family children adults neighbour neighbor volts system storage header bladder precharge "
    "electricity mains gravity length diameter millimetre millimeter kilometre about horse cows pipe pipes tank tanks "
    "lower higher uphill downhill underground lying laid ground trench climb hundred thousand twenty thirty forty fifty sixty seventy eighty ninety quarter"
)
_NEVER = _set(
    "string strings strong sprig sprint sprang slower showed shown flower flowers tower power powers lower harden gardens "
    "gardener warden battle rattle battered weight eight freight heights houses hoses house horse hose mouse noise noises "
    "nurses instance greek creak creep cheek married burned hurried buries bury switches stitch matter latter later eater "
    "waiter wafer patter butter better letter bitter planes planet wipes pies pines ripes bellow belong polar sonar enter "
    "meters metres liters litres little title goats coats boats steep sleep sheet sheets sheer value values halve powder "
    "frill grill though through rough tough thorough cough gallop people's purple lever never revel levels seven eleven "
    "several spine spike pike pile piles pips bank thank thanks talk tasks banks ranks tans bumps dumps jumps lumps pups "
    "sections section caption auction stage orange strange chicken cabins robin families familiar faculty forth fort "
    "fortify fifth sixth party parties bore bored lords words wolves vaults vault faults vegetable houses abound shout "
    "mount abut bout scout lengths strength lengthy booster boosted rooster roaster poster posters systems metered "
    "minuets minus mints seconded adult adulthood child plumber shallow follow hollow yellow tunnel channel funnel "
    "flannel panel's batter battery's quarters quartz hundreds thousands heater hater hours ours yours tours four pours "
    "inch inched inner french wrench bench benches stories storey story store stores stored hoarse course source "
    "coarse worse corse surfaces surfaced polo holy poll pole poles role gravel gravely main mainly rains pains gains "
    "reserve reservoirs drill drills dried filled killed skilled chilled trilled controlled controls where there these "
    "those three whose close closed noise poise raise hoist house's buckets bucked basements casement vertically heigh "
    "sight light night right tight might fight elevations relation election diameters distances plastics elastic cower "
    "shelter sheller swatch twitch pitch ditch witch sandwich twin twine fourth trout route about router rower shovel "
    "reached teacher bleacher pumped dumped jumper pumper hosed hotel motel model metal petal medal pedal total totals "
    "kitchens kitten stable table cable cables stables liver river rivers diver fever lather rather gather father mother "
    "bother other another brother either neither weather leather feather whether adapter chapter farther further "
    "watery waters watered watering watt watts waste taste paste state later's pewter easter faster master"
)
_WORDS = {
    "lowr": "lower", "highr": "higher", "sping": "spring", "shouwer": "shower", "dusch": "shower", "dush": "shower", "thumbs": "inches", "trailor": "trailer", "thru": "through", "sprng": "spring", "spirng": "spring", "pupm": "pump", "pmup": "pump", "pum": "pump",
    "tnak": "tank", "tanc": "tank", "hous": "house", "howse": "house", "showr": "shower", "shwr": "shower", "gardn": "garden",
    "sistern": "cistern", "systern": "cistern", "cysturn": "cistern", "crick": "creek", "crik": "creek", "trof": "trough", "troff": "trough",
    "abuv": "above", "abov": "above", "abot": "about", "abt": "about", "bout": "about", "hihger": "higher", "hier": "higher", "heigher": "higher",
    "uphil": "uphill", "up-hill": "uphill", "donw": "down", "ploy": "poly", "polly": "poly", "poli": "poly", "polyethelene": "poly", "burid": "buried",
    "berried": "buried", "burried": "buried", "enuf": "enough", "minit": "minute", "minits": "minutes", "mins": "minutes",
    "peple": "people", "peeple": "people", "poeple": "people", "ppl": "people", "pers": "persons", "childs": "children",
    "swich": "switch", "presher": "pressure", "prescher": "pressure", "watter": "water", "wather": "water", "wattr": "water", "solor": "solar",
    "soler": "solar", "hoss": "horse", "hosses": "horses", "cattel": "cattle", "catle": "cattle", "chikens": "chickens", "gotes": "goats",
    "goates": "goats", "mashine": "machine", "mashin": "machine", "toylet": "toilet", "toilette": "toilet", "toilettes": "toilets",
    "feets": "feet", "foots": "feet", "fut": "feet", "metrs": "metres", "mtr": "m", "mtrs": "m", "inchs": "inches", "ins": "in",
    "galon": "gallon", "galons": "gallons", "litter": "litre", "litters": "litres", "liltre": "litre", "sinc": "sink",
    "basment": "basement", "genrator": "generator", "shoer": "shower", "wel": "well", "weel": "well", "wll": "well",
    "submersable": "submersible", "submercible": "submersible", "wash": "wash", "wich": "which", "thier": "their",
    # as they are said in other languages
    "douche": "shower", "douches": "showers", "fountain": "spring", "lavabo": "sink", "lavabos": "sinks",
    "pressostat": "pressure switch", "presostat": "pressure switch", "manostat": "pressure switch", "hydrosphere": "pressure tank", "hydrofor": "pressure tank",
    "tube": "pipe", "tubes": "pipes", "tubo": "pipe", "immersed": "submersible", "submerged": "submersible", "immersion": "submersible",
    "conduct": "pipe", "conduit": "pipe", "electropump": "pump", "motorpump": "pump", "basin": "basin",
    "cubics": "m3", "cubic": "cubic", "quadrat": "square", "altura": "height", "bovines": "cattle", "ovines": "sheep", "caprines": "goats",
    "sheeps": "sheep", "hens": "hens", "accu": "battery", "accus": "batteries", "akku": "battery", "aljibe": "cistern",
    "cisterne": "cistern", "cisterna": "cistern", "balsa": "reservoir", "goteros": "drippers", "gotero": "dripper", "goutteurs": "drippers", "autoclave": "pressure tank", "furo": "borehole", "pozo": "well", "pozzo": "well", "puits": "well", "brunnen": "well", "nascente": "spring", "manantial": "spring", "sorgente": "spring", "pression": "pressure", "reservoire": "reservoir", "wc's": "wcs", "metros": "metres", "litros": "litres", "metern": "metres",
    "aspiration": "suction", "feild": "field", "shauer": "shower", "shour": "shower", "chower": "shower", "desnivel": "difference of height", "dislevel": "difference of height", "mts": "m", "lagoon": "pond", "pomp": "pump", "pumb": "pump", "punp": "pump", "pumpe": "pump", "pompe": "pump", "pmp": "pump", "tanck": "tank", "tenk": "tank", "showre": "shower", "baried": "buried", "burred": "buried", "abve": "above", "wat": "watt", "wats": "watts", "gras": "grass", "trofs": "troughs", "hores": "horses", "heighter": "higher", "acer": "acre", "acers": "acres", "akre": "acre", "zons": "zones", "shud": "should", "wud": "would", "meteres": "metres", "watering": "watering", "kilometers": "km", "hight": "height", "higth": "height", "heigth": "height", "lenght": "length",
    "lenth": "length", "distanse": "distance", "diametre": "diameter", "diametr": "diameter", "sqare": "square", "squar": "square", "shalow": "shallow", "swith": "switch", "sqm": "m2", "nr": "nr",
}  # fmt: skip
_PHRASES = tuple((re.compile(pattern, re.I), right) for pattern, right in (
    (r"\bsolar plates?\b", "solar panels"), (r"\bdeposit(?= (?:of|with|is|that|which|has|at|\d))", "tank"), (r"\ba source\b(?! of (?:income|power|energy|information))", "a spring"),
    (r"\b(?:the|our|from|this|natural) source(?= (?:gives|is|makes|lies|has|which|that|over|above|up|comes|delivers|brings|on|at|with|[,.]))", "the spring"),
    (r"\bwash mashine\b|\bwash(?:ing)? mach(?:ine)?\b|\bwm\b|\bwasher machine\b|\blaundry machine\b|\bwashmachine\b|\bclothes washing machine\b", "washing machine"),
    (r"\b(?:more high|more up|more above)\b", "higher"), (r"\b(?:more low|more deep|more down)\b", "lower"), (r"\bhigher as\b", "higher than"),
    (r"\blower as\b", "lower than"), (r"\ba way\b(?! (?:to|of|that|up|we|i))", "away"), (r"\bmore far\b", "away"),
    (r"\bpump of surface\b", "surface pump"), (r"\bcows of milk\b|\bmilk-?cows\b", "milking cows"), (r"\bmilli?meters? of water\b", "mm of water"),
    (r"\bcubic(?:s)?(?= (?:of|tank))", "m3"), (r"\bm\.(?= ?(?:above|below|from|of|long|deep|away|higher|up)\b)", "m "), (r"\bfoot valves?\b", "foot valve"),
    (r"\bmachine for (?:the )?washing\b", "washing machine"), (r"\bi b c\b", "ibc"), (r"\bin (?:the same|one) time\b", "at the same time"), (r"[Øø⌀] ?", "diameter "), (r"\b(at|to|of|is|hung|about)(?=\d)", r"\1 "), (r"(\d)(?=(?:people|persons|ppl|showers?|sinks?|toilets?|hoses?|goats|hens|cows)\b)", r"\1 "),
    (r"\b(higher|lower|more|less|deeper|further|farther|longer|bigger|older) then\b", r"\1 than"), (r"\binch an a\b", "inch and a"),
    (r"\binch[ -]and[ -]a[ -](quarter|half)\b", r"inch and a \1"), (r"\b(nine|ten|eleven|twelve|[2-9]|two|three|four|five|six|seven|eight) foot (six|\d)(?= (?:above|below|higher|lower|up|down|over)\b)", r"\1 foot \2 inches"),
    (r"\b(um|uh|erm|ehm) (?=\w)", ""), (r"\bcontactor(?= (?:is |set )*\d)", "pressure switch"), (r"\b(tank|vessel) of press(?:ion|ure)\b", r"pressure \1"), (r"\b(?:a )?(foot|metre|meter)(?= apart\b)(?<!\d foot)(?<!\d metre)(?<!\d meter)(?<!half a foot)(?<!half a metre)", r"1 \1"),
    (r"\bto gether\b", "together"), (r"\bform the\b", "from the"), (r"\bbellow(?= (?:the|our|it)\b)", "below"), (r"\bpump ?house\b", "pumphouse"), (r"\bbore well\b|\bborewell\b|\btube ?well\b", "borehole"), (r"\bhorse ?shoe\b", "horseshoe"),
    (r"\ba pair of (?=(?:(?:identical|equal|same|matching|twin|small|big) )?(?:\w+ )?pumps\b)", "two "), (r"\b(above|below|under|over) of(?= (?:the|our|my|it)\b)", r"\1"), (r"\b(?:till|until|til) (?=(?:(?:the|our|my) )?(?:house|home|cabin|hut|farm|barn|garden|trough|troughs|drinkers?|tank|kitchen|stable|field)\b)", "to "),
    (r"\b(?:water[ -]box|box of water|box(?= of \d[\d., ]* ?(?:l|lit\w*|m3|m³)\b))", "tank"), (r"\bforage(?= (?:is|of|has|gives|with|equipped|at|to|\d))", "borehole"),
    (r"(?<=\d) mil(?= (?:lit|l\b))", " thousand"), (r"\b(\d+) lakh(?= lit)", r"\g<1>00000"), (r"\b(two|three|four|five|six|eight|\d{1,2}) times (?=\d[\d.,]* ?(?:w|watts?|wp|l|lit\w+|gal\w*|m3|m³|ah)\b)", r"\1 x "),
    (r"\bin the height of\b|\bon an? (?:height|altitude) of\b", "at an altitude of"),
))  # fmt: skip
_TOKEN = re.compile(r"[A-Za-z][A-Za-z']{1,18}")


@lru_cache(maxsize=1)
def _shortened() -> dict[str, str]:
    """Every known word with one letter left out, and whose it is."""
    found: dict[str, str] = {}
    for word in sorted(_KNOWN):
        if len(word) >= 5:
            for at in range(len(word)):
                found.setdefault(word[:at] + word[at + 1 :], word)
            found.setdefault(word, word)
    return found


@lru_cache(maxsize=4096)
def right(word: str) -> str:
    """The word that is meant; the same one where it is right, or not known.

    >>> right("presure"), right("cattel"), right("string"), right("metrs")
    ('pressure', 'cattle', 'string', 'metres')
    """
    if word in _WORDS or word in MISSPELT:
        return _WORDS.get(word) or MISSPELT[word]
    if len(word) < 5 or word in _KNOWN or word in _NEVER or "'" in word:
        return word
    if f"{word}s" in _KNOWN or f"{word}s" in _NEVER:
        return word
    if word.endswith("s") and (word[:-1] in _KNOWN or word[:-1] in _NEVER):
        return word
    if word.endswith(("ing", "ed", "er", "ly")) and word not in _shortened():
        return word
    table = _shortened()
    for near in (word, *(word[:at] + word[at + 1 :] for at in range(len(word)))):
        meant = table.get(near)
        if (
            meant
            and meant[0] == word[0]
            and abs(len(meant) - len(word)) <= 1
            and _near(word, meant)
        ):
            return meant
    return word


def _near(one: str, other: str) -> bool:
    """Whether two words differ by one letter, or by two that changed places."""
    if len(one) == len(other):
        off = [at for at in range(len(one)) if one[at] != other[at]]
        swapped = (
            len(off) == 2
            and off[1] == off[0] + 1
            and one[off[0]] == other[off[1]]
            and one[off[1]] == other[off[0]]
        )
        return len(off) == 1 or swapped
    short, long = sorted((one, other), key=len)
    return any(long[:at] + long[at + 1 :] == short for at in range(len(long)))


def corrected(text: str) -> tuple[str, list[int]]:
    """(the text put right, place in the written text of each of its signs, and of its end)."""
    spans: list[tuple[int, int, str]] = []
    for pattern, instead in (*_PHRASES, *PHRASES):
        for match in pattern.finditer(text):
            if not any(start < match.end() and match.start() < end for start, end, _ in spans):
                spans.append((match.start(), match.end(), match.expand(instead)))
    covered = {at for start, end, _ in spans for at in range(start, end)}
    for match in _TOKEN.finditer(text):
        if match.start() in covered or match.end() - 1 in covered:
            continue
        word = match.group().lower()
        meant = right(word)
        if meant != word:
            spans.append((match.start(), match.end(), meant))
    spans.sort()
    parts: list[str] = []
    places: list[int] = []
    at = 0
    for start, end, instead in spans:
        parts += [text[at:start], instead]
        places += range(at, start)
        places += [start + min(i, max(0, end - start - 1)) for i in range(len(instead))]
        at = end
    parts.append(text[at:])
    places += range(at, len(text) + 1)
    return "".join(parts), places
