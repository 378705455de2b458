"""Which fact a number with a unit is: cues before and after it, weighed.

A rule is (path, weight, pattern that the words before it end with, pattern that those after it
begin with). The heaviest path wins; two of nearly one weight make it unclear.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from calc.site import enquiry_places as places
from calc.site.enquiry_model import Token

FILL = (
    r"[ :=~≈(,'-]*+(?>(?:about|abt|approx\.?|approximately|around|roughly|maybe|is|are|was|be|of|at|a|an|the|some|only|just|say|over|nearly|almost|another|up to|total|in total|totals|by|to be|like"
    r"|probably|more like|it's|its|it is|that's|measured(?: at| as)?|gives?(?: us| me)?|sits?|stands?|to|for|another|vertical(?:ly)?|straight|good|comes? (?:to|in at)|works? out (?:at|to|as)|adds? up to"
    r"|between|currently|now|rated|reads?|shows?|holds?|has|have|got|we have|i have|there is|there's|i think|i guess|i reckon|somewhere|between|close to|not quite|a bit over|a little over|just over|just under|under|exactly|set|which is"
    r"|runs?|would be|should be|might be|still|then|us|me|as|from|in|on|off|with|also|each|roughly|up|down|total of|least|most|must be|being|this|that|distance|so|guess|my guess|far|away|steady|constant|stays|remains|goes|estimated|est\.?|ca\.?|circa|in the summer|lies)(?![a-z])[ :=~≈(,'-]*+)*+$"
)


# "from the pump to the house" between a cue and its number
_PHRASE = r"(?: (?:from|between|to|of|for|out to|up to|down to|in|at|through)(?: (?!and\b(?! the)|but\b|with\b|which\b|then\b)[a-z'-]+){1,8}?)?"


_AFTER_PIPE = re.compile(
    r"[ ,;x@(/:=-]*+(?>(?:and|it|which|that|is|are|measures|runs|has|of|with|a|length|long|about|roughly|approx\.?|ca\.?|over|for|total|in|all|the|way|around|some|pipe|line|poly|buried|distance|then)(?![a-z])[ ,:]*+)*+"
)
_LABEL = re.compile(
    r"(?:(?P<one>[a-z ]{3,25}?) )?(?P<how>above|over|below|under|higher than|lower than) (?:the |our |my )?(?P<other>[a-z-]+(?: (?!and)[a-z-]+)?)[ ]*(?:\(?(?:in )?(?:m|ft|feet|metres)\)?)? ?(?::|=| is| - )[ ~-]*(?:about |approx\.? |ca\.? |roughly )*$"
)


@dataclass(frozen=True)
class Context:
    """The words round a number: ``left`` and ``right`` as far as the next number, ``before`` from
    the sentence's beginning, ``after`` to its end, ``subject`` of the sentence before, ``mail`` all
    of it."""

    left: str
    right: str
    before: str
    after: str
    subject: str
    mail: str
    next_pipe: str = ""  # path of the pipe whose size the next number is
    last_pipe: str = ""  # of the number before


_D = {
    "length": (
        ("way.length", 4, r"(?:run|distance|length|pipe ?run|line|pipe(?:line)?|trench|poly|far|main|hose|haul|route|horizontal(?:ly)?|dist|stretch|pipework|long)(?: (?:has|have|measures|with|a|length|long|goes))*", r"(?! ?(?:above|higher|lower|below|up\b|uphill|deep|over (?:the|our)|of (?:elevation|altitude)))"),
        ("way.length", 6, None, r"(?: |-)?(?:of (?:the |this )?|run of |worth of |long )*(?:(?:black|blue|buried|old|new|straight|plastic|rigid|flexible|main|water|supply) )*(?:pipe|line|poly\w*|hose|tubing|pvc|hdpe|mdpe|pex|alkathene|copper|pe|piping|tube)\b(?! (?:below|above))"),
        ("way.length", 4.2, r"(?:paced(?: it)?(?: out| off)?|measured(?: it)?(?: out)?|goes|travels?|carry(?: it)?|carries|covers|crosses|over)", r"(?! ?(?:up\b|higher|above|below|lower|deep|high|tall|of (?:head|rise|elevation)|(?:the|our) (?:house|hut)))"),
        ("way.length", 5, None, r" ?(?:away|distant|far\b|in length|off\b(?! grid)|long\b|run\b|along|down the (?:road|hill|slope|valley|track|drive)|horizontally|horizontal|across|apart|between|of trench|as the crow|further on|distance|total run|total length|one way|of run)"),
        ("way.length", 4.5, r"(?:pump|well|spring|creek|source|tank|well ?head|bore ?hole|cistern|river|pond) (?:up |down |over |back )?to (?:the |our |my )?(?:\w+ )?(?:house|cabin|tank|home|barn|garden|cottage|trough|taps?|kitchen|place|building|camp|yurt|lodge|cottages|cabins|paddock|field)", r"(?! ?(?:up\b|higher|above|below|lower|climb|rise|drop|fall|vertical|in height|of (?:head|rise)))"),
        ("way.length", 5, None, r" ?(?:all the way |straight |away |back |off |out |on |down |further |along |over )?(?:from|between) (?:the |our |my |that |where |this )?(?:\w+ )?(?:pump|well|spring|creek|house|cabin|source|tank|stream|pond|bore\w*|river|cistern|wellhead|barn|trough|garden|field|orchard|lake|greenhouse|home|stable|it\b)"),
        ("way.length", 5, r"(?:^|[\n,;(-] ?|and )(?:up |over |out |down )?to (?:the |our )?(?:house|cabin|barn|garden|cottage|trough|stable|hut|field|camp|yurt|home|kitchen|tank)(?: is| are)? ?[:=-]*", r"(?! ?(?:up\b|higher|above|below|lower|climb|rise|drop|vertical|of (?:head|rise)))"),
        ("way.length", 4, None, r" ?(?:(?:of )?(?:pipe|line) )?(?:to|into|over to|through to|back to) (?:the |our |my |a )?(?:\w+ )?(?:house|cabin|barn|garden|trough|cottage|orchard|home|kitchen|building|paddock|yurt|greenhouse|camp|field|farm|shed|lodge|place|taps?|homestead|shop|trailer)"),
        ("way.climb", 6, None, r" ?(?:of )?(?:difference (?:of|in) (?:height|level|altitude)|height\b|level difference|altitude difference|difference\b)"),
        ("way.climb", 6, None, r" ?(?:of )?(?:vertical(?:ly)?|elevation|height|uphill|in height|in elevation)? ?(?:rise|climb|lift|elevation(?: gain| difference| change| rise| drop)?|height difference|difference in (?:height|elevation)|gain|fall|drop|ascent|of vertical|vertical(?:ly)?)\b"),
        ("way.climb", 6, None, r" ?(?:(?:straight |further )?up\b(?! to\b)|uphill|higher|in height|in elevation|downhill|lower\b|deeper\b|of head)"),
        ("way.climb", 6, r"(?:(?<=[,;:(-] )up|(?<=[,;:(-])up|(?<=and )up|(?<=then )up|(?<=and )down|(?<=[,;] )down)", r"(?! ?(?:of pipe|deep|long|the))"),
        ("way.climb", 6, r"(?:climb(?:s|ing|ed)?|rises?|rising|uphill|elevation(?: gain| difference| change| rise| diff)?|height(?: difference| diff| gain)?|vertical(?: rise| lift| drop| distance| height| climb)?|drop(?:s|ping)?|falls?|falling|higher(?: by)?|lower(?: by)?|gains?|difference (?:in|of) (?:the )?(?:height|elevation|level|altitude)|level difference|denivelation|ascends?|ascent|static head|(?<!well )(?<!well)head|level difference|goes up|going up|comes up|up hill|vert|downhill|hgt|ht diff)", None),
        ("way.climb", 5, r"(?:lift|raise|pump|bring)\b[^.;¤]{0,45}\bby", None),
        ("way.climb", 4, r"(?:lift(?:s|ing|ed)?|raise[sd]?|raising|(?:push(?:es|ing)?|pump(?:s|ed|ing)?)(?: it| water| the water)? (?:up|uphill))(?: it| water| the water)?(?: up| uphill)?", None),
        ("water.level", 6, r"(?:water(?:'s)? (?:level|table|surface|line)|static(?: water)?(?: level)?|standing (?:water )?level|swl|suction lift|depth to (?:the )?water|water depth from the top|level in the well)(?: in (?:it|the (?:well|bore\w*|cistern)))?(?: (?:drops?|falls?|goes|sinks|is down|gets|went)(?: down)?)?", None),
        ("water.level", 5, r"(?:water|it)(?: in (?:it|the (?:well|bore\w*|cistern)))? (?:stands|sits|is found|comes up to|rises to|starts|stays|levels off|drops|draws down|falls|sinks)(?: down)?(?: to| at)?", r"(?! ?(?:long|of pipe|away|pipe))"),
        ("water.level", 6, r"water(?: level)?(?: in (?:it|the (?:well|bore\w*|cistern)))?", r" ?(?:down|deep|below|bgl|under|from the (?:top|surface|rim)|beneath)"),
        ("water.level", 5, r"\bwater(?: level)?", r" ?(?:$|[,.;)\n])"),
        ("water.level", 5.5, r"water(?: level)?(?: is| was| stands| sits| in it)? at", r"(?! ?(?:away|from the (?:house|pump)|of pipe|long|above|altitude|psi))"),
        ("water.level", 6, r"water(?: level)?(?: has| is| was)?(?: never| not)?(?: been| gone| dropped| fallen)? (?:lower|deeper|further down) than", None),
        ("water.level", 6, None, r" ?(?:down |deep )?(?:to (?:the )?(?:water|static|surface of the water)|suction lift|static|of (?:suction )?lift (?:to|from)|below (?:ground|grade|the (?:surface|top|ground|rim|cap|casing)|surface|top of))"),
        ("water.level", 5, r"(?:suck(?:s|ing)?|draw(?:s|ing)?|lift(?:s|ing)?|suction)(?: it| water| the water)?(?: up)? ?(?:from|out of)?", r" ?(?:down|below|deep|from (?:the )?(?:water|creek|well|pond|lake|river|stream)|up from)"),
        ("well.depth", 6, r"(?:wells?|bore ?holes?|bore|hole|sand ?point|driven point)(?: (?:is|was|goes|drilled|dug|bored|about|went|down|of|depth|that's|thats|about|at|only|it's))*", r"(?: |-)?(?:deep|in depth|total depth|of depth)"),
        ("well.depth", 5, r"(?:drilled|bored|dug|well depth|depth of (?:the |our )?well|total depth|goes down|sunk|td|depth)(?: (?:down )?to| is)?", r"(?! ?(?:to water|of pipe))"),
        ("well.depth", 6, None, r"[ -]?(?:foot |m |metre )?deep (?:drilled |dug |bored |hand-dug |domestic |old |stone )*(?:well|bore\w*|borehole)"),
        ("well.depth", 5, None, r"[ -](?:drilled |dug |bored |hand-dug |deep )*(?:well|bore ?hole|bore)\b"),
        ("suction.length", 8, r"(?:suction(?: (?:line|pipe|hose|side|run))?|intake (?:pipe|line|hose)|foot valve)(?: (?:is|of|runs?|about|line))*", r"(?! ?(?:lift|below|down|above))"),
        ("suction.length", 8, None, r" ?(?:of |long )?(?:suction (?:line|pipe|hose)|of suction\b(?! lift| head)|intake (?:pipe|hose|line)|suction\b(?! lift)|from (?:the )?pump to (?:the )?(?:foot valve|water|strainer))"),
        ("pump.height", 7, r"pump (?:is |was )?(?:hangs?|hung|hanging|set|sits|suspended|lowered|placed|installed|down|at a depth of|depth|setting|is down)(?: down)?(?: in (?:it|the (?:well|bore\w*)))?(?: at| to)?", r"(?! ?(?:away|from the|above|higher|of pipe|long))"),
        ("pump.height", 6, r"(?:pump|submersible)\b[^.;¤\n]{0,40}\b(?:hung|hangs?|hanging|set|suspended|lowered|sits|placed|down|submersible|installed|put)(?: down)?(?: in (?:it|the (?:well|bore\w*)))?(?: at| to| in| on)?(?: a)?(?: depth)?(?: of)?", r"(?! ?(?:away|from the|above|higher|of pipe|long|up|psi|over|to the))"),
        ("pump.height", 5, r"(?:pump|submersible|sub)\b[^.;¤\n]{0,25}?(?: is)?(?: down)?,? at", r"(?! ?(?:away|from the|above|higher|of pipe|long|up))"),
        ("pump.height", 6, r"pump(?: depth| setting| intake)?(?: is)?(?: at| down)?", r" ?(?:down\b(?! (?:the hill|from))|deep|below (?:ground|the (?:surface|top|ground))|down the (?:well|bore\w*))"),
        ("place.altitude", 8, r"(?:altitude|elevation|elev\.?|height above sea(?: level)?|m\.?a\.?s\.?l\.?|above sea level|alt\.?)(?! (?:gain|diff|change|rise|drop))(?: here| of (?:the )?(?:place|site|house|cabin|property))?(?: is)?", None),
        ("place.altitude", 8, None, r" ?(?:(?:above|over) (?:the )?sea(?: level)?|m?s\.?l\.?m|msnm|asl|a\.s\.l|amsl|(?:of )?(?:elevation|altitude)\b(?! (?:gain|diff|change|rise|above|between|drop))|above mean sea|in altitude)"),
        ("power.cable", 8, r"(?:cable(?: run| length)?\b[^,;.¤\d\n]{0,45}|wire run|wires?|wiring)(?: (?:is|of|runs?|length))*", None),
        ("power.cable", 8, None, r" ?(?:of |long |run of )*(?:\d+ ?mm2 )?(?:(?:\w+ )?cable|wire|wiring)\b"),
        ("well.bore", 7, None, r"[ -]*(?:steel |pvc |plastic )*(?:casing|cased|diameter well|bore ?hole|drilled well|across|in diameter|diameter|wide)"),
        ("well.bore", 7, r"(?:casing|well diameter|bore diameter)(?: (?:is|of|diameter|size))*", None),
    ),
    "flow": (
        ("water.yield", 5, r"(?:yields?|yielding|recovers?(?: at)?|recovery(?: rate)?|produces?|producing|makes?|making|gives?(?: us| me)?|giving|delivers?|flows?(?: at)?|tested(?: at)?|supplies|supply|output|runs?(?: at)?|puts out|flow(?: rate)?|good for|does|drops to|down to|inflow|overflow|trickles?|refills?|comes?|brings?)", None),
        ("water.yield", 5, None, r" ?(?:well|spring|yield|bore|recovery|of recovery|from the (?:well|spring|creek)|in (?:summer|winter|august|the dry))"),
        ("pump.most_flow", 0, None, None),
    ),
    "daily": (
        ("use.each", 7, None, r" ?(?:per|a|each|/|for each|for every) ?(?:person|head|capita|pers|body|one)"),
        ("use.each", 6, r"(?:each|per person|a person|everyone|per head)(?: of us)?(?: uses?)?", None),
        ("use.daily", 6, r"(?:use|uses|using|used|consume[sd]?|consumption|need|demand|usage|go through|goes through|meter(?: says)?|average|get through|requirement|total use)(?: all together| altogether| overall| in all| daily)?", None),
        ("use.daily", 5, None, r" ?(?:total|in total|altogether|use|usage|consumption|for the (?:house|household|family)|for (?:us|everything|the lot)|demand|all in)"),
        ("water.yield", 5, r"(?:yields?|produces?|gives?|makes?|delivers?|recovers?|spring|well)(?: us| about| only)?", None),
    ),
    "area": (
        ("beds.area", 6, None, r" ?(?:of |in )?(?:\w+ ){0,2}(?:drip|garden|beds?|vegetables?|veg\w*|veggies|orchard|vines|vineyard|raised beds?|tomatoes|trees|crops?|market garden|greenhouse|poly ?tunnel|berries|fruit|plants|herbs?|olives?|lavender|apples|pears|grapes|cherries|nuts|hops|maize|corn|hay|irrigat\w+|tunnel|plot|allotment|flowers|rows|patch|lawn)\b"),
        ("beds.area", 6, None, r"[^.;,\n]{0,30}\b(?:drip|irrigat\w+)"),
        ("beds.area", 6, r"(?:drip|garden|beds?|vegetable\w*|veg\w*|veggies|orchard|vines|vineyard|raised beds?|irrigat\w+|watering|greenhouse|poly ?tunnel|tunnel|plot|crops?|market garden|berries|patch|allotment|rows|water)(?: (?:beds?|garden|patch|area|plot|on drip|under drip|which is|that is|total\w*|all|covers|measures|irrigation|on|covering|over))*", None),
    ),
    "voltage": (
        ("power.limit", 8, r"(?:max(?:imum)?(?: pv| input| panel)?(?: voltage)?|up to|pv input|input (?:limit|max)|limit|mppt)(?: of)?", r" ?(?:max|input|limit|pv|on the (?:panel|pv) side|panel)"),
        ("power.limit", 8, None, r" ?(?:max(?:imum)?|input|pv)\b|^/\d"),
        ("power.limit", 6, r"(?:mppt|pwm|controller)(?: \d+ ?a ?/?)?", r"(?! ?(?:system|battery|bank))"),
        ("power.limit", 7, r"(?:max(?:imum)? (?:pv|input|panel)?(?: ?voltage)?|pv (?:max|limit)|max pv)", None),
        ("power.open_voltage", 8, r"(?:voc|v\.?oc|open[ -]circuit(?: voltage)?)(?: of)?", None),
        ("power.open_voltage", 8, None, r" ?(?:voc|open[ -]circuit|oc\b)"),
        ("power.voltage", 5, None, r"[ -]?(?:dc |ac )?(?:\w+ ){0,2}?(?:system|battery|batteries|bank|solar|pump|lithium|lifepo4|lfp|agm|submersible|lead|setup|surface|diaphragm|inverter|motor|supply|dc\b|off[ -]grid|\d+ ?ah|house bank|single phase|ac\b|mains)"),
        ("power.voltage", 4, r"(?:battery(?: bank)?|batteries|bank|system|solar|voltage|runs? on|running on|works on|at|volt\w*|inverter|power|mains|supply|everything|pump)(?: (?:is|voltage|are|of|a|an|all|on|runs|system))*", None),
    ),
    "current": (
        ("power.amps", 7, None, r" ?(?:mppt|pwm|charge|controller|solar|max|charging|charger)"),
        ("power.amps", 7, r"(?:controller|mppt|pwm|charg\w+(?: current)?|max(?:imum)? (?:charge|charging) current)(?: (?:is|of|rated|max))*", None),
    ),
    "charge": (("power.capacity", 6, None, r"(?! ?(?:per|a) day)"),),
    "power": (
        ("power.panel", 4.5, r"\b(?:panels?|modules?|pv|solar|array)\b[^.;\n]{0,40}", r"(?! ?(?:array|total|in total|altogether|pump|motor|submersible|surface|of solar|system|controller|inverter))"),
        ("power.panel", 7, None, r"[ -]?(?:solar |mono\w* |poly\w* |pv |rated |used |each )*(?:panels?|modules?)"),
        ("power.panel", 5, r"(?:solar|pv|array|photovoltaics?) ?[:=-]* ?(?:\d+|\w+) ?(?:x|of)", None),
        ("power.panel", 6, r"(?:panels?|modules?)(?: \w+){0,4}?(?: (?:are|of|is|rated|each))?", r"(?! ?(?:total|in total|altogether|array|of (?:solar|panels)|pump|motor))"),
    ),
    "percent": (
        ("power.shade", 7, r"(?:shad(?:e|ed|ing)|lost to shade|trees (?:take|cost|shade))(?: \w+){0,3}", None),
        ("power.shade", 7, None, r" ?(?:of the (?:sun|day|time|light|power|output) )?(?:is |are |gets )?(?:shad(?:e|ed|ing)|lost to|(?:is )?in (?:the )?shade)"),
        ("store.usable", 5, None, r" ?(?:usable|of (?:the tank|it) (?:is )?usable)"),
    ),
    "angle": (
        ("power.tilt", 7, r"(?:tilt(?:ed)?|angled?|pitch(?:ed)?|slope|inclined|inclination)(?: (?:at|of|is|to|angle|about))*", None),
        ("power.tilt", 7, None, r" ?(?:tilt|pitch|slope|from (?:the )?horizontal|inclination)"),
        ("place.latitude", 7, r"(?:lat(?:itude)?\.?|we(?:'re| are) at|located at|parallel|coordinates)(?: is| of)?", r"(?! ?(?:c|f)\b)"),
        ("place.latitude", 7, None, r" ?(?:n(?:orth)?\b|s(?:outh)?\b|(?:north |south )?latitude|lat\b)"),
    ),
    "time": (
        ("store.hours", 5, None, r" ?(?:of (?:good |full )?(?:sun|pumping|filling|daylight)|(?:a|per|each|every|/) ?day\b|daily|pumping)"),
        ("store.days", 6, None, r" ?(?:of (?:storage|water|reserve|supply|autonomy|back-?up|bad weather|cloud\w*|no sun)|(?:without|with no) (?:sun|rain|supply|water|pumping|power)|(?:reserve|storage|autonomy|backup|supply)\b|worth of (?:water|storage))"),
        ("store.days", 6, r"(?:enough (?:water )?for|lasts?(?: us)?|reserve of|storage (?:for|of)|autonomy(?: of)?|tide us over(?: for)?|get (?:us )?through|store|ride out|bridge|cover)", None),
        ("pump.starts", 0, None, None),
    ),
    "temperature": (("water.temperature", 5, r"water(?: (?:temp\w*|is|comes|at|out|in|the|well|of|about))*", None),
                    ("water.temperature", 5, None, r" ?water"),),
}  # fmt: skip
RULES = {
    kind: tuple(
        (path, weight, re.compile(rf"\b(?:{left}){_PHRASE}{FILL}") if left else None,
         re.compile(right) if right else None) for path, weight, left, right in rules)
    for kind, rules in _D.items()
}  # fmt: skip


def weigh(token: Token, near: Context) -> dict[str, float]:
    """{path: weight} of what a number may be, by the words beside it."""
    found: dict[str, float] = {}
    for path, weight, left, right in RULES.get(token.kind, ()):
        if weight and (left is None or left.search(near.left[-110:])) and (
                right is None or right.match(near.right)):  # fmt: skip
            found[path] = max(found.get(path, 0), weight) + (0.5 if path in found else 0)
    if token.kind == "time" and token.unit == "weeks":
        dry = re.search(
            r"\b(?:dry|drought|without|no (?:rain|water|sun)|last|lasts|enough|storage|reserve)\b",
            near.before + near.after,
        )
        return {"store.days": 6} if dry else {}
    if token.kind == "rise":
        found["way.climb"] = 6.5
        token.sign = -1.0 if places.goes_down(near.left, near.right) else 1.0
    if token.kind == "length":
        _lengths(token, near, found)
    return {path: weight for path, weight in found.items() if weight > 0}


def _lengths(token: Token, near: Context, found: dict[str, float]) -> None:
    """Heights between two places, and what only their nouns say."""
    at = places.between(near.left, near.right, near.before, near.subject)
    token.sign = -1.0 if at.how == "below" else 1.0
    if near.next_pipe and re.fullmatch(
        r" ?(?:of|of the|run of|long|in|-|,|x|/|worth of|of old|of new|of buried|of black|@|on|down|using|through)? ?\(?",
        near.right,
    ):
        path = near.next_pipe.replace(".pipe", ".length")
        found.pop("way.length" if path != "way.length" else "", None)
        found[path] = max(found.get(path, 0), 6.5)
    if near.last_pipe and _AFTER_PIPE.fullmatch(near.left) and token.unit in {"m", "ft", "yd", "km", "mi"} and not found and (
            not re.match(r" ?(?:deep|down|under|below|of cover)", near.right)):  # fmt: skip
        found[near.last_pipe.replace(".pipe", ".length")] = 4.5
    hill = re.match(
        r" ?(?:further )?(up|down) (?:the|a|our) (?:\w+ )?(?:hill|slope|mountain|ridge|hillside|bank|knoll)\b",
        near.right,
    )
    if hill:
        who = places.between(near.left, near.right, near.before, near.subject).before
        token.sign = (1.0 if hill[1] == "up" else -1.0) * (
            -1.0 if who in {*places.SOURCES, "PUMP"} else 1.0
        )
        found.clear()
        found["way.length"], found["way.climb"] = 5, 5
        return
    if at.how and re.match(r"[ ,]*(?:sea|mean sea)", near.right.split("above", 1)[-1]):
        return
    if token.kind == "rise":
        return
    if re.search(r"\b(?:lift|raise|pump|bring)\b[^.;¤]{0,50}\bby (?:about )?$", near.before):
        found["way.climb"] = 6
    rise = _FROM_TO.search(near.left[-100:]) or _RISES.search(near.left[-100:])
    if rise:
        found.pop("way.length", None)
        _climbs(
            token,
            places.noun(rise["one"]),
            places.noun(rise["other"]),
            found,
            -1.0 if rise["how"] in {"down", "fall", "drop"} else 1.0,
        )
        return
    label = _LABEL.search(near.left[-70:])
    if label and not at.how:
        how = "below" if label["how"] in {"below", "under", "lower than"} else "above"
        one = places.noun(label["one"] or "") or places.noun(near.before)
        other = places.noun(label["other"])
        if one == other:
            one = ""
        at = places.Between(one or _from_mail(near.mail, other), other, how)
        token.sign = -1.0 if how == "below" else 1.0
    if at.how:
        _related(token, at, near, found)
    elif "pump.height" in found:
        token.sign = -1.0  # hung in a well
    elif at.before == "PUMP" and re.match(
        r" ?(?:down\b(?! the (?:hill|slope|road))|lower|deeper|below)", near.right
    ):
        found["pump.height"], token.sign = 7, -1.0
    elif "way.climb" in found:
        _unrelated(token, at, near, found)
    if (
        "suction.length" in found
        and "suction" not in near.before + near.after
        and "intake" not in near.before + near.after
    ):
        if "foot valve" not in near.left[-30:]:
            del found["suction.length"]
    if found.get("way.length") and at.before == "PANELS" and not near.next_pipe:
        found["way.length"] = 0
    high = max(token.low, *token.maybe, 0.0) * {"m": 1, "ft": 0.3048}.get(token.unit, 0)
    if high >= 250 and re.search(
        r"\b(?:we(?:'re| are| live| sit)|cabin is|place is|house is|located|situated|up)(?: \w+){0,3} (?:at|up)(?: about| around| roughly| nearly)? ?$",
        near.left[-50:],
    ):
        found["place.altitude"] = max(found.get("place.altitude", 0), 8)
    elif (
        high >= 900
        and re.search(r"\b(?:at|@)(?: about| around| roughly| nearly)? ?$", near.left)
        and not at.how
    ):
        found["place.altitude"] = max(found.get("place.altitude", 0), 5.5)
    if (
        "place.altitude" in found
        and high < 60
        and "sea" not in near.right
        and "altitude" not in near.left
    ):
        found["place.altitude"] = 0
        found["way.climb"] = max(found.get("way.climb", 0), 4)


def _related(token: Token, at: places.Between, near: Context, found: dict[str, float]) -> None:
    """A height above or below something: which of the two is a tank, the source, the house?"""
    for path in ("way.climb", "way.length", "water.level"):
        if path != "water.level" or at.after:
            found.pop(path, None)
    one, other, down = at.before, at.after, at.how == "below"
    sources = {*places.SOURCES, "STORE", "WATER"}
    if one in {"TANK", "ABOVE"} and other != one:
        found["tank.level"] = 8
    elif one == "STORE" and other in {"HOUSE", ""}:
        found["way.climb"], token.sign = 7, 1.0 if down else -1.0
    elif one in {"WATER"} and other in {"PUMP", "", *places.SOURCES}:
        if down:
            found["water.level"], token.sign = 8, -1.0
    elif one == "PUMP" and other in sources:
        # heights are counted from the pump, unless it hangs in the water
        found["water.level"], token.sign = 7, 1.0 if down else -1.0
    elif one in sources and other == "PUMP":
        found["water.level"], token.sign = 6.5, -1.0 if down else 1.0
    elif one == "PUMP":
        found["pump.height"] = 7
    elif one in {*sources, "PUMP"} and other in {"HOUSE", ""}:
        found["way.climb"], token.sign = (7 if other else 4), 1.0 if down else -1.0
        if (
            not other
            and one in {"WELL", "PUMP"}
            and re.match(r" ?(?:below|above|under|over)", near.right)
        ):
            found["way.climb"] = 0
    elif one == "HOUSE" and other in {*sources, "PUMP", "TANK", "ABOVE", ""}:
        found["way.climb"] = 7 if other else 4
    elif one == "HOUSE" and other == "HOUSE" or not one and other == "HOUSE":
        _by_mail(down, near, found, token)
    elif not one and other in {*sources, "PUMP"}:
        found["way.climb"] = 5
    elif one in {"PTANK", "PANELS", "SUCTION"}:
        found.clear()


def _climbs(token: Token, one: str, other: str, found: dict[str, float], sign: float) -> None:
    """ "from the creek up to the shed is 4 m": a height from the first place to the second."""
    token.sign = sign
    if other in {"TANK", "ABOVE"}:
        found["tank.level"] = 7
    elif other == "PUMP" and one in {*places.SOURCES, "WATER", "STORE"}:
        found["water.level"] = 7
    elif other == "HOUSE" and one:
        found["way.climb"] = 7


_RISES = re.compile(
    r"\b(?P<how>lift|rise|climb|height|vertical|fall|drop)\b (?:is )?from (?:the |our |my )?(?P<one>[a-z' -]{3,25}?) to (?:the |our |my )?(?P<other>[a-z-]+(?: (?!is|are)[a-z-]+)?),?(?: (?:is|are|about|roughly|around))*[ :=]+$"
)
_FROM_TO = re.compile(
    r"\bfrom (?:the |our |my )?(?P<one>[a-z' -]{3,30}?),? (?:it (?:is|climbs|goes) )?(?P<how>up|down) to (?:the |our |my )?(?P<other>[a-z-]+(?: [a-z-]+)?),?(?: (?:it's|it is|it climbs|is|there are|there is|are|about|roughly|around|goes|climbs))*[ :=]+$"
)


def _from_mail(mail: str, other: str) -> str:
    """What stands above or below the ``other`` where a list does not say it."""
    if other == "HOUSE":
        return next(
            (key for key in ("ABOVE", "SPRING", "WELL", "CREEK") if re.search(_FIRST[key], mail)),
            "",
        )
    return "HOUSE"


_FIRST = {
    "ABOVE": r"\b(?:hill|header|upper) ?-?tank",
    "SPRING": r"\bspring",
    "WELL": r"\bwell|\bbore",
    "CREEK": r"\b(?:creek|stream|river|pond|lake)",
}


def _by_mail(down: bool, near: Context, found: dict[str, float], token: Token) -> None:
    """ "40 ft above the house" with nobody named: the tank of the sentence, else the source."""
    if re.search(r"\btank", near.before + near.after):
        found["tank.level"] = 5
    elif re.search(r"\b(?:spring|creek|stream|source|well|pump)\b", near.before):
        found["way.climb"], token.sign = 5, 1.0 if down else -1.0


def _unrelated(token: Token, at: places.Between, near: Context, found: dict[str, float]) -> None:
    """ "up 40 ft", "a fall of 20 m": the way's, unless a tank is named where it ends."""
    if places.goes_down(near.left.rsplit(",", 1)[-1], near.right.split(",", 1)[0]):
        token.sign = -1.0
    to = re.match(
        r" ?(?:of )?(?:vertical(?:ly)?|rise|climb|lift|elevation(?: gain)?|up|uphill|higher|straight up|height|head)?,? ?(?:up )?(?:in)?to (?:a|an|the|our|my)\b([^.,;]{0,40})",
        near.right,
    )
    goal = places.noun(to[1], last=False) if to else ""
    tank = goal in {"TANK", "ABOVE"} or (not goal and at.before in {"TANK", "ABOVE"} and not re.search(
        r"\b(?:from|between) [^.,;]{0,20}tanks?[^.,;]*$", near.left))  # fmt: skip
    if tank:
        found["tank.level"], found["way.climb"] = 6.5, 0
    if at.before == "PUMP" and re.search(
        r"(?:max|total|rated|shut)\W?(?:imum)? ?(?:head|lift|height)", near.left[-40:]
    ):
        found["way.climb"] = 0
    if at.before in {"WATER", "SUCTION"} and "suction" in near.before[-40:]:
        found["way.climb"] = 0
