"""Rows for ``enquiry_direct`` of what waters a plot, heats water, is used or falls on a roof.

"8 ft lines", "22 psi at the header", "a 180 L cylinder", "the garden takes 600 litres on a hot day".
A row is as ``enquiry_direct`` says.
"""

from __future__ import annotations

_F = r"[ ,:=~(+-]*+(?>(?:is|are|was|be|of|at|a|the|about|around|roughly|some|only|just|approx\.?|ca\.?|nearly|almost|up to|maybe|perhaps|say|it is|it's|by|over|exactly|now|good|using|uses)(?![a-z])[ ,:=~(-]*+)*+$"
_ENDS = r" ?(?:$|[,.;)\n]|and\b|or so\b)"
_DRIP = r"\b(?:drip|dripline|drippers?|emitters?|dripped)\b"
_HOT = r"\b(?:heater|boiler|hot[ -]water|geyser|cylinder|hot side|calorifier|t ?& ?p|wh)\b"
_HEATS = r"\b(?:hot|heater|unvented|relief|boiler|geyser|calorifier|t ?& ?p)\b"
_RAIN = r"\b(?:roof|rain\w*|cistern)\b"
_PEOPLE = r"(?:people|persons?|pupils?|children|students?|guests?|residents?|family|of us|adults?|sisters?|girls?|boys?|men|souls|visitors?|campers?|users?|patients?|workers?|members?|heads?|child|man|woman)"
_PLOT = r"(?:block|header|head ?works|manifold|field|plot|parcel|garden(?: end)?|tunnel|beds?|rows?|lines?|laterals?|tape|zones?|valves?|inlet|head of the (?:field|lines?|rows?)|top of the (?:block|field|rows?))"
_AREA = r"(?! ?(?:of )?(?:roof|land|forest|lifestyle|farm|property|paddock|section|tin|slate))"
_GARDEN = r"(?:garden|veg(?:gie|etable)?s?(?: patch| garden| plot)?|orchard|lawns?|greenhouse|glasshouse|kitchen garden|allotment|flower beds?)"
_NO_VESSEL = r"(?! ?(?:tank|butt|barrel|drum|cistern|cube|tote|bucket|can\b|per (?:week|month|hour|minute)|a (?:week|month|minute)|an hour|/))"
_BY_DAY = r"(?=/day|[^.;\n]*\b(?:days?|daily|evenings?|nights?|mornings?)\b)"
_NO_BEASTS = (
    r"\A(?![^\n]*\b(?:cows?|cattle|goats?|sheep|hens?|horses?|pigs?|animals|stock|head|trees)\b)"
)
_BUSY = r"(?:busiest|peak|rush|mornings?|evenings?|breakfast|milking|worst)"

PLOTS: tuple[tuple[str, tuple[str, ...], str, str, str], ...] = (
    # drip lines
    ("drip.bore", ("length",), rf"\b(?:inside|inner|internal|int\.?)(?: diameter| dia\.?| hole| bore)?{_F}", r"(?! ?(?:casing|well|pipe))", _DRIP),
    ("drip.bore", ("length",), rf"\bbore{_F}", r" ?(?:drip|tape|lines?\b|tub)", ""),
    ("drip.length", ("length",), rf"\b(?:each|every|longest|shortest|one|single) (?:run|line|row|lateral|tape|drip ?line)(?: (?:is|would be|will be|runs|measures|being|of|about))*{_F}", r"(?! ?(?:apart|between|wide|from|above|below|away))", _DRIP),
    ("drip.length", ("length",), rf"\blaterals?(?: (?:run|are|of|go|runs|is))*{_F}", r"(?! ?(?:apart|between|spacing|wide))", _DRIP),
    ("drip.length", ("length",), rf"(?:^|[.,;\n] ?|\bwith ){_F}", r"[ -]?(?:long )?(?:runs|lines|laterals|tapes)\b(?! (?:apart|to|from|for|of pipe))", _DRIP),
    ("drip.length", ("length",), rf"\blines?, (?:\d+|[a-z]+),? of{_F}", _ENDS, _DRIP),
    ("drip.length", ("length",), rf"\b(?:\d+|two|three|four|five|six|seven|eight|nine|ten|twelve|fifteen|twenty) (?:drip ?)?(?:lines|rows|laterals),?{_F}", r" ?(?:each|long|apiece)\b", _DRIP),
    ("drip.rows", ("length",), "", r" ?(?:spacing )?between (?:the )?(?:rows|lines|laterals)\b|(?: ft| m)? ?row spacing\b", _DRIP),
    ("drip.rows", ("length",), rf"\b(?:lateral|row|line)s? spacing{_F}", r"(?! ?(?:long|in the row))", _DRIP),
    ("drip.rows", ("length",), rf"\b(?:one|a) (?:line|lateral|row|tape) (?:every|each|per){_F}", r"(?! ?(?:long))", _DRIP),
    ("drip.spacing", ("length",), rf"\b(?:drippers?|emitters?|tubing|tape|tape drips|drip ?line|drip hose)\b(?:(?!\b(?:rows?|lines?|apart)\b)[^;\n]){{0,45}}\b(?:at|every|each)(?<!each line at)(?<!rated at){_F}", r"(?! ?(?:rows?|lines?|between (?:rows|lines)|long|above|below|deep))", _DRIP),
    ("drip.spacing", ("length",), "", r" ?(?:emitter to emitter|dripper to dripper|between (?:the )?(?:emitters|drippers|holes))\b", _DRIP),
    ("drip.dripper", ("flow",), rf"\b(?:one|each|every|a|per) (?:dripper|emitter|hole)(?: gives| is| makes| of| drips)?{_F}", r"(?! ?(?:in total|altogether))", _DRIP),
    ("drip.dripper", ("flow",), rf"\b(?:drip ?line|tubing|tape|drip hose)(?: (?:says|is|gives|rated|of|with))*{_F}", r"(?! ?(?:in total|altogether|per (?:line|row|zone)))", _DRIP),
    ("drip.dripper", ("flow",), rf"\b(?:holes?|drippers?|emitters?)\b(?:(?!\b(?:pump|well|bore\w*|supply|lines?|spring)\b)[^;\n]){{0,60}}[,;](?: (?:each|they|these|every one))?(?: (?:gives?|of|rated))*{_F}", _ENDS, rf"{_DRIP}|\blines\b[^.;\n]{{0,20}}\bholes\b"),
    ("drip.dripper", ("flow",), "", r"[ -]?ones\b", _DRIP),
    ("drip.rated", ("pressure",), r"(?:\bgph|\bl/h|\blph|\bl / h|(?:litres?|liters?|gallons?) (?:an|per) hour|\bgal/h)(?: rated)? at (?:about )?$", r"(?! ?at the)", _DRIP),
    ("drip.pressure", ("pressure",), rf"\bpressure (?:is |there is )?(?:at|where|in|on|to) (?:the )?(?:[a-z]+ ){{0,3}}?{_PLOT}(?: (?:starts?|begins?|of|the|block|field|rows?))*{_F}", "", _DRIP),
    ("drip.pressure", ("pressure",), rf"\bpressure where (?:the )?(?:tape|lines?|drip ?lines?|laterals?|rows?) (?:starts?|begins?){_F}", "", ""),
    ("drip.pressure", ("pressure",), "", rf" ?at the (?:{_PLOT}|start of|beginning of|beginning|entry)\b(?! (?:pump|house))", _DRIP),
    ("drip.pressure", ("pressure",), rf"\binto the (?:lines|drip|tape|laterals|drip ?lines)(?: at| with)?{_F}", "", ""),
    ("drip.pressure", ("pressure",), rf"(?:^|[.,;\n] ?)inlet(?: pressure)?{_F}", "", _DRIP),
    ("drip.least", ("pressure",), rf"\b(?:drippers?|emitters?|tape|they)\b(?:(?!\bpump\b)[^.;\n]){{0,30}}\b(?:need|needs|want|wants|require|work|works|working)(?: (?:at|least|a minimum|minimum|min\.?|from|of|at least))+{_F}", "", _DRIP),
    ("drip.hours", ("time",), rf"\b(?:water|irrigate|run(?: water| it| the drip)?|open(?: it)?)(?: (?:only|for|about|it|them))*{_F}", r" ?(?:in|of|the|a|per|each|every) (?:the )?(?:day|morning|night|evening)\b", r"\b(?:drippers?|emitters?|drip ?lines?)\b"),
    ("drip.hours", ("time",), rf"\bi water\b[^.;\n\d]{{0,25}},{_F}", _ENDS, _DRIP),
    ("drip.hours", ("time",), rf"\b(?:one|a|the) (?:night|day|shift) of{_F}", _ENDS, r"\b(?:drippers?|emitters?|drip ?lines?)\b"),
    ("drip.flow", ("flow",), rf"\b(?:supply|flow) (?:at|in|to) the {_PLOT}(?: is)?{_F}", "", _DRIP),
    ("drip.flow", ("flow",), rf"\bat the {_PLOT},? (?:i|we) (?:measured|get|have|timed|got){_F}", "", _DRIP),
    ("drip.need", ("bare",), rf"\bcoefficient(?: is| of)?{_F}", r"(?! ?(?:mm|m\b|%|l\b|ha|bar))", _DRIP),
    ("beds.area", ("area",), rf"(?:^|[.\n;] ?)(?:total |net |drip |irrigated )?area{_F}", _AREA, _DRIP),
    ("beds.area", ("area",), rf"\bon drip,?{_F}", _ENDS, ""),
    ("beds.area", ("area",), rf"\b(?:poly ?tunnels?|tunnels|beds?|greenhouses?|plots?),?{_F}", r" ?(?:$|[,.;)\n]|together\b|altogether\b|in all\b|in total\b)", _DRIP),
    ("beds.area", ("area",), "", r" ?(?:\w+ )?(?:patch|vegetable garden|veg plot|market garden)\b", _DRIP),
    # hot water
    ("hot.volume", ("volume",), rf"\b(?:hot[ -]water|(?:un)?vented cylinder|(?<!pressure )(?<!air )(?<!gas )cylinder|geyser|calorifier|water heater)(?:'s)?(?: (?:is|unit|tank|heater|holds|of|store))*(?: an?)?{_F}", r"(?! ?(?:expansion|pressure|per\b|/|a day|gas|an? (?:hour|minute)))", _HEATS),
    ("hot.volume", ("volume",), "", r"[ -]?(?:hot[ -]water |unvented |vented |electric |copper |indirect |solar )*(?:cylinder|geyser|calorifier|(?:hot[ -]water )?storage unit)\b(?! of (?:gas|propane|butane|oxygen))", _HEATS),
    ("hot.volume", ("volume",), rf"\bwh{_F}", _ENDS, _HOT),
    ("hot.relief", ("pressure",), rf"\b(?:relief|relief valve|t ?& ?p|tpr|safety valve|t&p valve)(?: (?:is|says|rated|set|opens|at|on|reads|stamped|marked))*{_F}", "", _HOT),
    ("hot.relief", ("pressure",), rf"\bvalve (?:opens|lifts|blows|pops)(?: (?:at|on|by))?{_F}", "", rf"(?:{_HOT})[\s\S]*\bvalve|\b(?:relief|safety) valve[\s\S]*(?:{_HOT})"),
    ("hot.stored", ("temperature",), rf"\b(?:boiler|heater|cylinder|geyser)\b(?:(?!\b(?:panels?|inlet|cold)\b)[^.;\n]){{0,30}}\b(?:on|at|set to|kept at){_F}", "", _HOT),
    ("hot.tank", ("volume",), rf"\bexp(?:ansion|\.)? (?:tank|vessel)(?: (?:is|of|holds))*{_F}", "", _HOT),
    # rain
    ("rain.roof", ("area",), "", r" ?of (?:the )?(?:\w+ )?(?:roof|slates?|tiles?|tin|corrugated|sheeting|iron roof|thatch|shingles|roofing)\b(?! (?:to|for|in)\b)", _RAIN),
    ("rain.roof", ("area",), rf"\b(?:filled|fed|caught|collected|comes?|collects?)(?: \w+)? (?:by|from|off) (?:the |a |an |our )?(?:\w+ )?roof(?: of| which is)?{_F}", "", ""),
    ("rain.runoff", ("percent",), rf"\b(?:run-?off|catch(?:es)?|collects?|captures?|coefficient|reaches|arrives)\b[^.;\n\d]{{0,18}}{_F}", r"(?! ?(?:slope|full|of the (?:time|year|day|sun\w*)))", _RAIN),
    # use
    ("use.each", ("daily",), _NO_BEASTS, r" ?(?:apiece|each|per head|a head|per person|per man|for each)\b", _PEOPLE),
    ("use.each", ("volume",), rf"\b(?:we|people|souls|they|persons|guests|of us)\b[^.;\n]{{0,25}}\b(?:use|need|take|spend)s?{_F}", r" ?(?:each|apiece|per head|a head)\b(?! (?:time|shower|flush|of))", ""),
    ("use.each", ("volume", "daily"), rf"\b(?:one|each|every|per) (?:[a-z]+ and )?{_PEOPLE}(?: (?:we|they|i))?(?: (?:needs?|uses?|takes?|calculate|wants?|gets?|reckon|count|spends?|with|at|then))*{_F}", r"(?! ?(?:tank|tote|shower|heater))", r"\b(?:days?|daily)\b"),
    ("use.each", ("volume",), rf"\b{_PEOPLE}(?: (?:a|per|each) day)?, each (?:using|needing|taking|with){_F}", _ENDS, ""),
    ("use.daily", ("daily",), rf"\b(?:water )?meter\b[^.;\n\d]{{0,30}}\b(?:reads?|says|shows|gives|counts){_F}", "", ""),
    ("use.garden", ("volume",), rf"\b{_GARDEN}(?: (?:then|alone|also|itself|takes?|drinks?|needs?|uses?|gets?|wants?|swallows?|drank)){{1,3}}{_F}", _NO_VESSEL + _BY_DAY, ""),
    ("use.garden", ("volume",), rf"\bdays?\b[^.;\n]*\b{_GARDEN}(?: (?:then|alone|also|itself|takes?|drinks?|needs?|uses?|gets?|wants?|swallows?|drank)){{1,3}}{_F}", _NO_VESSEL, ""),
    ("use.garden", ("daily",), rf"\b(?:for )?(?:the|our|my) {_GARDEN},?(?: (?:then|alone|also|itself|takes?|drinks?|needs?|uses?|gets?|wants?|swallows?|drank|we|i|spend|use|need|take|give|want)){{1,3}}{_F}", _NO_VESSEL, ""),
    ("use.garden", ("volume",), rf"\bfor (?:the|our|my) {_GARDEN},? (?:we|i) (?:spend|use|need|take|give|want){_F}", _NO_VESSEL + _BY_DAY, ""),
    ("use.peak", ("volume",), rf"\b{_BUSY}\b(?:(?!\b(?:tank|cistern|pump)\b)[^.;\n]){{0,50}}\b(?:use|uses|pull|pulls|draw|draws|take|takes|go through|run|goes|need){_F}", r" ?(?:over|in|within|during) (?:(?:about|the|some) )?(?:\d|¤|one|two|three|an|half|first|space)", ""),
    ("use.peak", ("volume",), rf"\b{_BUSY},?{_F}", r" ?(?:go|goes|are used|is used|run|runs)(?: off| out)? (?:in|over|within) (?:\d|¤|one|two|three|an|half)", ""),
    ("use.peak_time", ("time",), rf"\b{_BUSY}\b(?:(?!\btank\b)[^;\n]){{0,70}}\d ?(?:l|lit\w+|gal\w*|m[3])(?: go(?:es)?| are used| of water)? (?:over|in|within|during){_F}", _ENDS, ""),
    ("use.leak", ("flow",), "", r" ?(?:is |are |was )?(?:leaking|leaks?|dripping|lost|going somewhere|running to waste)\b", ""),
    ("use.leak", ("flow",), rf"\b(?:tap|toilet|float|valve|joint|something|somewhere)\b[^.;\n\d]{{0,25}}\b(?:leaks?|leaking|drips|loses)(?: (?:more or less|maybe|about|some))*{_F}", "", ""),
)  # fmt: skip
