"""The words beside a number that say what it is: cues before and after it, with weights.

A rule is (path, weight, words that end what stands before, words that begin what stands after).
Between a cue and its number may stand "from the pump to the house" and such as "is about".
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from calc.site.enquiry_cues_more import MORE
from calc.site.enquiry_late import Late

FILL = (
    r"[ :=~≈(,'+-]*+(?>(?:(?<=')s|about|abt|approx\.?|approximately|around|roughly|maybe|is|are|was|be|of|at|a|an|the|some|only|just|say|over|nearly|almost|another|up to|total|in total|totals|by|to be|like"
    r"|probably|more like|isn't|is not|wasn't|was not|it's|its|it is|that's|measured(?: at| as)?|gives?(?: us| me)?|sits?|stands?|to|for|another|vertical(?:ly)?|straight|good|comes? (?:to|in at)|a (?:good|bit over|little over|little under)|never more than|works? out (?:at|to|as)|adds? up to"
    r"|between|currently|now|rated|reads?|shows?|holds?|has|have|got|we have|i have|there is|there's|i think|i guess|i reckon|somewhere|between|close to|not quite|a bit over|a little over|just over|just under|under|exactly|set|which is"
    r"|runs?|would be|should be|might be|still|then|us|me|as|from|in|on|off|with|also|each|roughly|up|down|total of|least|most|must be|being|this|that|distance|so|guess|my guess|far|away|steady|constant|stays|remains|goes|usually|typically|normally|generally|always|never|lower|deeper|than|estimated|est\.?|ca\.?|circa|in the summer|lies)(?![a-z])[ :=~≈(,'+-]*+)*+$"
)
# "from the pump to the house" between a cue and its number
_PHRASE = r"(?: between (?:[a-z'-]+ ){1,3}and(?: [a-z'-]+){1,3}| (?:from|between|to|of|for|out to|up to|down to|in|at|through)(?: (?!and\b(?! the)|but\b|with\b|which\b|then\b)[a-z'-]+){1,8}?)?"


_LABEL = re.compile(
    r"\b(?:static|standing|pumping|running|well|bore|depth|yield|height|distance|suction lift)$"
)
_LABELS = re.compile(r" ?(?:level |water )?(?:is |at |of |about )?[:=]? ?\d")
_GAP = r"(?:[^.;¤\n]|(?<=\d)\.(?=\d)){"  # the point of "0.75 kW" ends no sentence


@dataclass(frozen=True)
class Rule:
    """path, weight; cue: what must stand before at all, which is looked for first; left, right:
    how the words before end and those after begin."""

    path: str
    weight: float
    cue: Late | None
    left: Late | None
    right: Late | None

    def fits(self, left: str, right: str) -> bool:
        """Whether the words beside a number are this rule's."""
        after = self.right.match(right) if self.right is not None else None
        if self.right is not None and after is None:
            return False
        if after is not None and self.cue is None and _LABELS.match(right, after.end()):
            return not _LABEL.search(after.group())  # "90 ft static 35": the label of the next
        if self.cue is None or self.left is None:
            return True
        return bool(self.cue.search(left)) and bool(self.left.search(left))


def _rule(path: str, weight: float, left: str | None, right: str | None) -> Rule:
    left = left.replace("[^.;¤\\n]{", _GAP) if left else left
    cue = Late(rf"\b(?:{left})") if left else None
    whole = Late(rf"\b(?:{left}){_PHRASE}{FILL}") if left else None
    return Rule(path, weight, cue, whole, Late(right) if right else None)


_D = {
    "length": (
        ("way.length", 4, r"(?:run|distance|length|pipe ?run|line|pipe(?:line)?|trench|poly|far|main|hose|haul|route|horizontal(?:ly)?|dist|stretch|pipework|long)(?: (?:has|have|measures|with|a|length|long|goes))*", r"(?! ?(?:above|higher|lower|below|up\b|uphill|deep|over (?:the|our)|of (?:elevation|altitude)))"),
        ("way.length", 6, None, r"(?: |-)?(?:of (?:the |this )?|run of |worth of |long )*(?:(?:black|blue|buried|old|new|straight|plastic|rigid|flexible|main|water|supply|galvani[sz]ed|galv\.?|steel|iron|soft|thick|narrow) )*(?:pipe|line|poly\w*|hose|tubing|pvc|hdpe|mdpe|pex|alkathene|copper|pe|piping|tube)\b(?! (?:below|above))"),
        ("way.length", 4.2, r"(?:paced(?: it)?(?: out| off)?|measured(?: it)?(?: out)?|goes|travels?|carry(?: it)?|carries|covers|crosses|over)", r"(?! ?(?:up\b|higher|above|below|lower|deep|high|tall|of (?:head|rise|elevation)|(?:the|our) (?:house|hut)))"),
        ("way.length", 5, None, r" ?(?:away|distant|far\b|in length|off\b(?! grid)(?! the (?:bottom|floor|ground))|long\b|run\b|along|down the (?:road|hill|slope|valley|track|drive)|horizontally|horizontal|across(?= (?:the|our|an?|my|open|that)\b)|apart|between|of trench|as the crow|further on|distance|total run|total length|one way|of run)"),
        ("way.length", 4.5, r"(?:pump|well|spring|creek|source|tank|well ?head|bore ?hole|bore|cistern|river|pond) (?:up |down |over |back )?to (?:the |our |my )?(?:\w+ )?(?:house|cabin|tank|home|barn|garden|cottage|trough|taps?|kitchen|place|building|camp|yurt|lodge|cottages|cabins|paddock|field)", r"(?! ?(?:up\b|down\b|higher|above|below|lower|climb|rise|drop|fall|vertical|in height|of (?:head|rise|fall)))"),
        ("way.length", 5, None, r" ?(?:all the way |straight |away |back |off |out |on |down |further |along |over )?(?:from|between) (?:the |our |my |that |where |this )?(?:\w+ )?(?:pump|well|spring|creek|house|cabin|source|tank|stream|pond|bore\w*|river|cistern|wellhead|barn|trough|garden|field|orchard|lake|greenhouse|home|stable|it\b)"),
        ("way.length", 5, r"(?:^|[\n,;(-] ?|and )(?:up |over |out |down )?to (?:the |our )?(?:house|cabin|barn|garden|cottage|trough|stable|hut|field|camp|yurt|home|kitchen|tank)(?: is| are)? ?[:=-]*", r"(?! ?(?:up\b|down\b|higher|above|below|lower|climb|rise|drop|fall|vertical|of (?:head|rise|fall)))"),
        ("way.length", 4, None, r" ?(?:(?:of )?(?:pipe|line) )?(?:to|into|over to|through to|back to) (?:the |our |my |a )?(?:\w+ )?(?:house|cabin|barn|garden|trough|cottage|orchard|home|kitchen|building|paddock|yurt|greenhouse|camp|field|farm|shed|lodge|place|taps?|homestead|shop|trailer)"),
        ("way.climb", 6, None, r" ?(?:of )?(?:difference (?:of|in) (?:height|level|altitude)|height\b|level difference|altitude difference|difference\b)"),
        ("way.climb", 6, None, r" ?(?:of )?(?:vertical(?:ly)?|elevation|height|uphill|in height|in elevation)? ?(?:rise|climb|lift|elevation(?: gain| difference| change| rise| drop)?|height difference|difference in (?:height|elevation)|gain|fall|drop|ascent|of vertical|vertical(?:ly)?)\b"),
        ("way.climb", 6, None, r" ?(?:(?:straight |further |more )?up\b(?! to\b)|more (?:height|high)\b|uphill|higher|in height|in elevation|downhill|lower\b|deeper\b|of head)"),
        ("way.climb", 6, r"(?:(?<=[,;:(-] )up|(?<=[,;:(-])up|(?<=and )up|(?<=then )up|(?<=and )down|(?<=[,;] )down)", r"(?! ?(?:of pipe|deep|long|the))"),
        ("way.climb", 6, r"(?:climb(?:s|ing|ed)?|rises?|rising|uphill|elevation(?: gain| difference| change| rise| diff)?|height(?: difference| diff| gain)?|vertical(?: rise| lift| drop| distance| height| climb)?|drop(?:s|ping)?|falls?|falling|higher(?: by)?|lower(?: by)?|gains?|difference (?:in|of) (?:the )?(?:height|elevation|level|altitude)|level difference|denivelation|ascends?|ascent|static head|(?<!well )(?<!well)head|level difference|goes up|going up|comes up|up hill|vert|downhill|hgt|ht diff)", None),
        ("way.climb", 5, r"(?:lift|raise|pump|bring)\b[^.;¤]{0,45}\bby", None),
        ("way.climb", 4, r"(?:lift(?:s|ing|ed)?|raise[sd]?|raising|(?:push(?:es|ing)?|pump(?:s|ed|ing)?)(?: it| water| the water)? (?:up|uphill))(?: it| water| the water)?(?: up| uphill)?", None),
        ("water.level", 6, r"(?:water(?:'s)? (?:level|table|surface|line)|static(?: water)?(?: level)?|standing (?:water )?level|swl|suction lift|depth to (?:the )?water|water depth from the top|level in the well)(?: in (?:it|the (?:well|bore\w*|cistern)))?(?: (?:drops?|falls?|goes|sinks|is down|gets|went)(?: down)?)?", None),
        ("water.level", 5, r"(?:water|it)(?: in (?:it|the (?:well|bore\w*|cistern)))? (?:stands|stood|sits|sat|is found|comes up to|rises to|starts|stays|levels off|drops|draws down|falls|sinks)(?: down)?(?: to| at)?", r"(?! ?(?:long|of pipe|away|pipe|to (?:the|our|my|a)|from|between|over|in height|before|uphill|higher|more|lower than))"),
        ("water.level", 6, r"water(?: level)?(?: in (?:it|the (?:well|bore\w*|cistern)))?", r" ?(?:down|deep|below|bgl|under|from the (?:top|surface|rim)|beneath)"),
        ("water.level", 5, r"\bwater(?: level)?", r" ?(?:$|[,.;)\n])"),
        ("water.level", 5, r"(?:draws?|sucks?)(?: it| water)? up", r" ?(?:$|[,.;)])"),
        ("water.level", 5.5, r"water(?: level)?(?: is| was| stands| sits| in it)?(?: usually| normally| typically| generally| mostly| always)? at", r"(?! ?(?:away|from the (?:house|pump)|of pipe|long|above|altitude|psi))"),
        ("water.level", 6, r"water(?: level)?(?: has| is| was)?(?: never| not)?(?: been| gone| dropped| fallen)? (?:lower|deeper|further down) than", None),
        ("water.level", 6, None, r" ?(?:down |deep )?(?:to (?:the )?(?:water(?! (?:main|tank|trough|meter|line|heater))|static|surface of the water)|suction lift|static|of (?:suction )?lift (?:to|from)|below (?:ground|grade|the (?:surface|top|ground|rim|cap|casing)|surface|top of))"),
        ("water.level", 5, r"(?:suck(?:s|ing)?|draw(?:s|ing)?|lift(?:s|ing)?|suction)(?: it| water| the water)?(?: up)? ?(?:from|out of)?", r" ?(?:down|below|deep|from (?:the )?(?:water|creek|well|pond|lake|river|stream)|up from)"),
        ("water.level", 6.5, None, r" ?(?:deep |of )?(?:static |rest )?water (?:level|table)\b(?! (?:to|in the tank|of the tank))"),
        ("well.depth", 6, r"(?:wells?|bore ?holes?|bore|hole|sand ?point|driven point)(?: (?:is|was|goes|drilled|dug|bored|about|went|down|of|depth|that's|thats|about|at|only|it's))*", r"(?: |-)?(?:deep|in depth|total depth|of depth)"),
        ("well.depth", 5, r"(?:drilled|bored|dug|well depth|depth of (?:the |our )?well|total depth|goes down|sunk|td|(?<!water )depth(?! of (?:the |our )?(?:pond|lake|river|tank|cistern|stream|trench|water|pipe)))(?: (?:down )?to| is)?", r"(?! ?(?:to water|of pipe))"),
        ("well.depth", 6, None, r"[ -]?(?:foot |m |metre )?deep (?:drilled |dug |bored |hand-dug |domestic |old |stone )*(?:well|bore\w*|borehole)"),
        ("well.depth", 5, None, r"[ -](?:drilled |dug |bored |hand-dug |deep )*(?:well|bore ?hole|bore)\b(?! (?:is|has|was|goes|makes|gives|yields|water|depth))"),
        ("suction.length", 8, r"(?:suction(?: (?:line|pipe|hose|side|run))?|intake (?:pipe|line|hose)|foot valve)(?: (?:is|of|runs?|about|line))*", r"(?! ?(?:lift|below|down|above))"),
        ("suction.length", 8, None, r" ?(?:of |long )?(?:suction (?:line|pipe|hose)|of suction\b(?! lift| head)|intake (?:pipe|hose|line)|suction\b(?! lift)|from (?:the )?pump to (?:the )?(?:foot valve|water|strainer))"),
        ("pump.height", 7, r"pump (?:is |was )?(?:hangs?|hung|hanging|set|sits|suspended|lowered|placed|installed|down|at a depth of|depth|setting|is down)(?: down)?(?: in (?:it|the (?:well|bore\w*)))?(?: at| to)?", r"(?! ?(?:away|from the|above|higher|of pipe|long))"),
        ("pump.height", 6, r"(?:pump|submersible)\b[^.;¤\n]{0,40}\b(?:hung|hangs?|hanging|set|suspended|lowered|sits|placed|down|submersible|installed|put)(?: down)?(?: in (?:it|the (?:well|bore\w*)))?(?: at| to| in| on)?(?: a)?(?: depth)?(?: of)?", r"(?! ?(?:away|from the|above|higher|of pipe|long|up|psi|over|to the))"),
        ("pump.height", 5, r"(?:pump|submersible|sub)\b[^.;¤\n]{0,25}?(?: is)?(?: down)?,? at", r"(?! ?(?:away|from the|above|higher|of pipe|long|up))"),
        ("pump.height", 6, r"pump(?: depth| setting| intake)?(?: is)?(?: at| down)?", r" ?(?:down\b(?! (?:the hill|from))|deep|below (?:ground|the (?:surface|top|ground))|down the (?:well|bore\w*))"),
        ("place.altitude", 8, r"(?:altitude|elevation|elev\.?|height above sea(?: level)?|m\.?a\.?s\.?l\.?|above sea level|alt\.?)(?! (?:gain|diff|change|rise|drop))(?: here| of (?:the )?(?:place|site|house|cabin|property))?(?: is)?", None),
        ("place.altitude", 8, None, r" ?(?:(?:above|over) (?:the )?sea(?: level)?|m?s\.?l\.?m|msnm|\.?a\.?s\.l|asl|a\.s\.l|amsl|(?:of )?(?:elevation|altitude)\b(?! (?:gain|diff|change|rise|above|between|drop))|above mean sea|in altitude)"),
        ("power.cable", 8, r"(?:cable(?: run| length)?\b[^,;.¤\d\n]{0,45}|wire run|wires?|wiring)(?: (?:is|of|runs?|length))*", None),
        ("power.cable", 8, None, r" ?(?:of |long |run of )*(?:\d+ ?mm2 )?(?:(?:\w+ )?cable|wire|wiring)\b"),
        ("tank.level", 8, r"tanks?(?: [a-z]+)? (?:up )?(?:on|atop)(?: an?| its)?", r"[ -]?(?:high |tall )?(?:stand|tower|scaffold|stilts)\b"),
        ("well.depth", 7, r"(?:wells?|bore ?hole|bore)(?: (?:at|of|with|to|about))*", r" ?(?:of |in )?depth\b"),
        ("well.depth", 5.5, r"(?:a|the|our|my) (?:\w+ )?(?:well|bore ?hole|bore) of", r"(?! ?(?:pipe|diameter|across|wide|away|from))"),
        ("well.bore", 7, None, r"[ -]*(?:steel |pvc |plastic )*(?:casing|cased|lining|liner|lined|diameter well|bore ?hole|drilled well|across|in diameter|diameter|wide)"),
        ("well.bore", 7, r"(?:casing|cased|lined|lining|liner|inside diameter|well diameter|bore diameter)(?: (?:is|of|diameter|size))*", None),
    ),
    "flow": (
        ("water.yield", 5, r"(?:it|well|bore|spring|she|they)(?:'ll| will| can| should) (?:give|make|do|yield|run|supply|deliver)(?: us)?", r" ?(?:$|[,.;)]|all day|day and night|for ever|forever|steady|without|year round|all year)"),
        ("water.yield", 5, r"(?:yields?|yielding|recovers?(?: at)?|recovery(?: rate)?|produces?|producing|makes?|making|gives?(?: us| me)?|giving|delivers?|flows?(?: at)?|tested(?: at)?|supplies|supply|output|runs?(?: at)?|puts out|flow(?: rate)?|good for|does|drops to|down to|inflow|overflow|trickles?|refills?|comes?|brings?)", None),
        ("water.yield", 5, None, r" ?(?:well|spring|yield|bore|recovery|of recovery|from the (?:well|spring|creek)|in (?:summer|winter|august|the dry))"),
        ("pump.most_flow", 0, None, None),
    ),
    "daily": (
        ("use.each", 7, None, r" ?(?:per|a|each|/|for each|for every) ?(?:person|head|capita|pers|body|one)"),
        ("use.each", 6, r"(?:each|per person|a person|everyone|per head)(?: of us)?(?: uses?)?", None),
        ("use.daily", 6, r"(?:use|uses|using|used|consume[sd]?|consumption|need|demand|usage|go through|goes through|meter(?: says)?|average|get through|requirement|total use)(?: all together| altogether| overall| in all| daily)?", None),
        ("use.daily", 6, None, r" ?(?:by|on|from|according to) (?:the |our )?(?:water )?meter"),
        ("use.daily", 5, None, r" ?(?:total|in total|altogether|use|usage|consumption|for the (?:house|household|family)|for (?:us|everything|the lot)|demand|all in)"),
        ("water.yield", 5, r"(?:yields?|produces?|gives?|makes?|delivers?|recovers?|spring|well)(?: us| about| only)?", None),
    ),
    "area": (
        ("beds.area", 6, None, r" ?(?:of |in )?(?:\w+ ){0,2}(?:drip|garden|beds?|vegetables?|veg\w*|veggies|orchard|vines|vineyard|raised beds?|tomatoes|trees|crops?|market garden|greenhouse|poly ?tunnel|berries|fruit|plants|herbs?|olives?|lavender|apples|pears|grapes|cherries|nuts|hops|maize|corn|hay|irrigat\w+|tunnel|plot|allotment|flowers|rows|patch|lawn)\b"),
        ("beds.area", 6, None, r"[^.;,\n]{0,30}\b(?:drip|irrigat\w+)"),
        ("beds.area", 6, r"(?:drip|garden|beds?|vegetable\w*|veg\w*|veggies|orchard|vines|vineyard|raised beds?|irrigat\w+|watering|greenhouse|poly ?tunnel|tunnel|plots?|crops?|market garden|berries|patch|allotment|rows|water)(?: (?:beds?|garden|patch|area|plot|on drip|under drip|which is|that is|total\w*|all|covers|measures|irrigation|on|covering|over|cover|come to|comes to|measure|take up))*", None),
    ),
    "voltage": (
        ("power.limit", 8, r"(?:max(?:imum)?(?: pv| input| panel)?(?: voltage)?|up to|pv input|input (?:limit|max)|limit|mppt)(?: of)?", r" ?(?:max|input|limit|pv|on the (?:panel|pv) side|panel)"),
        ("power.limit", 8, None, r" ?(?:max(?:imum)?|input|pv)\b|^/\d"),
        ("power.limit", 6, r"(?:mppt|pwm|controller)(?: \d+ ?a ?/?)?", r"(?! ?(?:system|battery|bank))"),
        ("power.limit", 7, r"(?:max(?:imum)? (?:pv|input|panel)?(?: ?voltage)?|pv (?:max|limit)|max pv)", None),
        ("power.open_voltage", 8, r"(?:voc|v\.?oc|open[ -](?:circuit(?: voltage)?|voltage))(?: (?:per|of (?:each|one|a)) (?:panel|module))?(?: of)?", None),
        ("power.open_voltage", 8, None, r" ?(?:voc|open[ -]circuit|oc\b|open(?=[,.;)\n]|$))"),
        ("power.voltage", 5, None, r"[ -]?(?:dc |ac )?(?:\w+ ){0,2}?(?:system|battery|batteries|bank|solar|pump|lithium|lifepo4|lfp|agm|submersible|lead|setup|surface|diaphragm|inverter|motor|supply|dc\b|off[ -]grid|\d+ ?ah|house bank|single phase|ac\b|mains)"),
        ("power.voltage", 4, r"(?:battery(?: bank)?|batteries|bank|system|solar|voltage|runs? on|running on|works on|at|volt\w*|inverter|power|mains|supply|everything|pump)(?: (?:is|voltage|are|of|a|an|all|on|runs|system))*", None),
    ),
    "current": (
        ("power.amps", 7, None, r" ?(?:mppt|pwm|charge|controller|solar|max|charging|charger)"),
        ("power.amps", 7, r"(?:controller|mppt|pwm|charg\w+(?: current)?|max(?:imum)? (?:charge|charging) current)(?: (?:is|of|rated|max))*", None),
    ),
    "charge": (("power.capacity", 6, None, r"(?! ?(?:per|a) day)"),),
    "power": (
        ("power.panel", 4.5, r"\b(?:panels?|modules?|pv|solar|array)\b(?:(?!\b(?:makes?|gives?|delivers?|produces?|output|reads?|shows?|measured|brings?)\b)[^.;\n]){0,40}", r"(?! ?(?:array|total|in total|altogether|pump|motor|submersible|surface|of solar|system|controller|inverter))"),
        ("power.panel", 7, None, r"[ -]?(?:solar |mono\w* |poly\w* |pv |rated |used |each )*(?:panels?|modules?)"),
        ("power.panel", 5, r"(?:solar|pv|array|photovoltaics?) ?[:=-]* ?(?:\d+|\w+) ?(?:x|of)", None),
        ("power.panel", 6, r"(?:panels?|modules?)(?: (?!(?:makes?|gives?|delivers?|produces?|output|reads?|shows?|brings?)\b)\w+){0,4}?(?: (?:are|of|is|rated|each))?", r"(?! ?(?:total|in total|altogether|array|of (?:solar|panels)|pump|motor))"),
    ),
    "percent": (
        ("power.shade", 7, r"(?:shad(?:e|ed|ing)|lost to shade|trees (?:take|cost|shade))(?: \w+){0,3}", None),
        ("power.shade", 7, None, r" ?(?:of the (?:sun|day|time|light|power|output) )?(?:is |are |gets )?(?:shad(?:e|ed|ing)|lost to|(?:is )?in (?:the )?shade)"),
        ("store.usable", 5, None, r" ?(?:usable|of (?:the tank|it) (?:is )?usable)"),
    ),
    "angle": (
        ("power.tilt", 7, r"(?:tilt(?:ed)?|facing (?:due )?(?:south|north|east|west)(?:[ -]?(?:east|west))? at|angled?|pitch(?:ed)?|slope|inclined|inclination)(?: (?:at|of|is|to|angle|about))*", None),
        ("power.tilt", 7, None, r" ?(?:tilt|pitch|slope|from (?:the )?horizontal|inclination)"),
        ("place.latitude", 7, r"(?:lat(?:itude)?\.?|we(?:'re| are) at|located at|parallel|coordinates)(?: is| of)?", r"(?! ?(?:c|f)\b)"),
        ("place.latitude", 7, None, r" ?(?:n(?:orth)?\b|s(?:outh)?\b|(?:north |south )?latitude|lat\b)"),
    ),
    "time": (
        ("store.hours", 5, None, r" ?(?:of (?:good |full )?(?:sun|pumping|filling|daylight)|(?:a|per|each|every|/) ?day\b|daily|pumping)"),
        ("store.days", 6, None, r" ?(?:of (?:storage|water|reserve|supply|autonomy|back-?up|bad weather|cloud\w*|no sun)|(?:without|with no) (?:sun|rain|supply|water|pumping|power)|(?:reserve|storage|autonomy|backup|supply)\b|worth of (?:water|storage))"),
        ("store.days", 6, r"(?:enough (?:water )?for|lasts?(?: us)?|reserve of|storage (?:for|of)|autonomy(?: of)?|tide us over(?: for)?|get (?:us )?through|carry us(?: for| through)?|store|ride out|bridge|cover)", None),
        ("pump.starts", 0, None, None),
    ),
    "temperature": (("water.temperature", 5, r"water(?: (?:temp\w*|is|comes|comes up|comes out|at|out|in|the|well|of|about))*", None),
                    ("water.temperature", 5, None, r" ?water"),),
}  # fmt: skip
RULES = {
    kind: tuple(_rule(*one) for one in (*_D.get(kind, ()), *MORE.get(kind, ())) if one[1])
    for kind in {**_D, **MORE}
}
