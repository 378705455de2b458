"""Rows for ``enquiry_direct``: short labels of sheets and notes, "Minimum flow 4 L/min", "Heater 150 L".

A row is as ``enquiry_direct`` says.
"""

from __future__ import annotations

_F = r"[ ,:=~(+-]*+(?>(?:is|are|was|be|of|at|the|about|around|roughly|some|only|just|approx\.?|ca\.?|nearly|almost|up to|maybe|perhaps|say|it is|it's|by|over|exactly)(?![a-z])[ ,:=~(-]*+)*+$"
_ENDS = r" ?(?:$|[,.;)\n]|and\b|or so\b)"
_TEMPS = ("temperature", "angle")
_SUNNY = r"\b(?:pipe|poly|hdpe|mdpe|pe|hose|line)\b"
_PEOPLE = r"\b(?:people|persons?|pupils|children|students|guests?|residents|beds|family|of us|adults?|learners|monks|nuns|staff)\b"

ROWS: tuple[tuple[str, tuple[str, ...], str, str, str], ...] = (
    ("way.climb", ("length",), rf"(?:^|[.;\n] ?)ours (?:is|sits|lies|stands){_F}", r" ?(?:above|higher|up)\b(?! the (?:sea|ground))", r"\b(?:well|spring|bore\w*|creek|pump)\b"),
    ("way.climb", ("length",), r", (?:and )?(?:about |some )?$", r" ?(?:up|higher|uphill) to (?:the|our|my) (?:yard|house|cabin|barn|farm|garden|hut|kitchen|stable|field|trough)\b", ""),
    ("drip.pressure", ("pressure",), rf"\b(?:at|where) (?:the )?(?:start|head|beginning|inlet) of (?:the |each )?(?:drip )?(?:lines?|laterals?|rows?|tape)\b[^.;\n\d]{{0,30}}{_F}", "", ""),
    ("drip.pressure", ("pressure",), rf"\bpressure (?:at|in|on) the (?:drip )?(?:lines?|laterals?|rows|tape|manifold){_F}", "", r"\b(?:drip|emitters?|drippers?)\b"),
    ("water.level", ("length",), rf"\b(?:lowest|deepest) (?:that )?(?:the )?water (?:level )?(?:has )?(?:ever )?(?:been|gone|got|gets|goes|was|falls)(?: down)?(?: to)?{_F}", r"(?! ?(?:away|wide|from the house))", ""),
    ("water.level", ("length",), rf"\bwater(?: level)?(?: in (?:it|the (?:well|bore\w*)))? (?:stands|is|stays|goes|falls|sinks|sits|gets|drops)(?: never)? (?:no|not|never) (?:lower|deeper|further(?: down)?) than{_F}", r"(?! ?(?:the|away))", ""),
    ("water.level", ("length",), rf"\b(?:suck\w*|draw\w*|pull\w*) [^.;\n]{{0,60}}\bwith{_F}", r" ?(?:of )?(?:suction )?lift\b", ""),
    ("well.static", ("length",), rf"\bat rest(?: it(?:'s| is)| is)?{_F}", r"(?! ?(?:away|above|psi))", r"\b(?:settled|pumped|pumping)\b"),
    ("well.depth", ("length",), rf"\b(?:well|bore ?hole|bore) (?:that's|that is|which is){_F}", r" ?(?:$|[.,;)]|deep\b)(?! ?(?:away|from))", ""),
    ("pump.height", ("length",), rf"\bdown{_F}", r" ?(?:deep )?in (?:an?|the|our|my) (?:\w+ )?(?:well|bore ?hole|bore)\b", r"\b(?:pump|submersible)\b"),
    ("pump.height", ("length",), rf"\bpump(?:'s| is) an? (?:sub|submersible)(?: pump)?,{_F}", _ENDS, ""),
    ("pump.height", ("length",), rf"\bit (?:sits|hangs|is) in the (?:well|bore ?hole|bore),{_F}", r" ?(?:down|deep)\b", r"\bpump\b"),
    ("pump.set", ("pressure",), rf"(?:^|[.;\n] ?|, ?)(?:the |our )?(?:house |system |pump )?pressure (?:is )?set (?:at|to){_F}", r"(?! ?(?:-|/|to \d))", r"\A(?![\s\S]*\b(?:reduc\w+|reducer|regulator|prv|switch)\b)[\s\S]*"),
    ("water.temperature", _TEMPS, rf"(?<!hot )\bwater(?:'s| is)(?: [a-z]+)?,{_F}", _ENDS, ""),
    ("power.tilt", ("angle",), rf"\b(?:panels?|modules?|array)\b[^.;\n]{{0,40}}\bat{_F}", r",? facing\b", ""),
    ("water.yield", ("flow",), rf"\b(?:well|bore ?hole|bore|spring)\b(?:(?!\b(?:pump\w*|needs?|wants?|shower|tank|meter|use|drip)\b)[^.;\n]){{0,60}},{_F}", r" ?(?:$|[,.;)\n])(?! ?(?:at|from the pump))", ""),
    ("pump.least_flow", ("flow",), rf"(?:^|[.;\n,] ?)(?:the )?(?:minimum|min\.?|least) (?:pump )?flow(?: rate)?{_F}", _ENDS, r"\bpump|\bnpsh"),
    ("pump.controller", ("percent",), rf"\b(?:controller|drive|inverter|vfd)(?:'s)? efficiency{_F}", "", ""),
    ("pump.sensed", ("length",), rf"\b(?:pressure )?(?:is )?(?:sensed|sensor|transducer|gauged)(?: sits| sitting| mounted)?{_F}", r" ?(?:above|over|higher than) (?:the )?(?:pump|floor|it)\b", r"\bpump"),
    ("well.bore", ("length",), rf"(?:\b(?:well|bore ?hole|bore|bore ?well)|\bcasing)[ :,]*{_F}", r" ?(?:x|by|bore|casing|cased|diameter|dia\b)(?! ?(?:pipe|poly))", ""),
    ("well.bore", ("length",), rf"\b(?:dug|ring|open|concrete|hand[ -]dug) well\b[^;\n]{{0,60}}{_F}", r" ?(?:inside|across|wide|in diameter|diameter)\b(?! (?:the house|pipe))", ""),
    ("well.depth", ("length",), rf"\b(?:well|bore ?hole|bore|bore ?well)[ :]*\d+(?:\.\d+)? ?(?:\"|''|in(?:ch(?:es)?)?|mm|cm)? ?(?:x|by){_F}", _ENDS, ""),
    ("well.depth", ("length",), rf"(?:^|[.;\n] ?)(?:the )?(?:good|deep|working|other|main|new|old|first|second|drilled) one(?: is| goes(?: down)?(?: to)?)?{_F}", r" ?(?:$|[,.;)\n]|deep\b|with (?:the |a )?pump\b)", r"\b(?:two|2|three|3|our|the) (?:\w+ )?(?:wells|bore ?holes)\b"),
    ("well.depth", ("length",), rf"(?:^|[.;\n] ?)(?:the |our |my )?(?:well|bore ?hole)(?:'s| is| goes)(?! (?:at|away)){_F}", r" ?(?:$|[.;)]|and (?:i|we|the pump|it|the water)\b|deep\b|, (?:with|and) )(?! ?(?:from|away))", r"\b(?:bottom|pump is|submersible|driller|static)\b"),
    ("well.depth", ("length",), rf"\b(?:open well|dug well|well|bore ?hole|bore ?well)\b[^.;\n]{{0,45}}(?:\band|,){_F}", r" ?(?:of )?depth\b", ""),
    ("pump.height", ("length",), rf"(?:^|[.;,\n] ?)(?:the |our )?(?:pump|motor|submersible|sub|bore pump)(?: is)?(?: set| hung| hangs| sits)?(?: at)?{_F}", r" ?(?:$|[.,;)\n]|deep\b|down\b|in the bore\w*)(?! ?(?:away|from|of))", r"\b(?:bore ?well|bore ?hole|submersible|drilled|casing|static|well \d+ ?(?:gpm|\"|in\b|x)|drop pipe)"),
    ("pipes.hottest", _TEMPS, rf"\b(?:pipe|line|poly|hose|hdpe|it)\b[^;\n]{{0,120}}{_F}", r" ?(?:c\b|f\b)? ?(?:in|under) (?:the )?(?:full |july |summer |hot |midday |afternoon )?sun\b", _SUNNY),
    ("pipes.hottest", _TEMPS, rf"\b(?:in|on|by) (?:july|august|summer|january|the sun|hot days)\b[^\n]{{0,80}}\b(?:guess|reckon|say|measured|read|reads|reaches){_F}", _ENDS, r"\b(?:lying|laid|lies|on top of|above ground)\b[^\n]{0,200}\b(?:hand|hot|burn\w*|sun)\b"),
    ("hot.volume", ("volume",), rf"(?:^|[.;,\n] ?)(?:the |our |an? |electric |gas |solar )*(?:hot[ -]water )?(?:heater|boiler|cylinder|geyser|hot[ -]water tank)(?: has| holds)?{_F}", r"(?! ?(?:a day|per|/|each|daily|pressure tank))", ""),
    ("hot.precharge", ("pressure",), rf"\bexpansion (?:vessel|tank)\b[^.;\n]{{0,25}}\bat{_F}", _ENDS, ""),
    ("use.peak", ("volume",), rf"\b(?:breakfast|peak|busiest|worst|morning|evening|milking|wash ?-?down|rush|washing) hour(?: takes| uses| needs| wants| draws| is)?{_F}", "", ""),
    ("use.each", ("daily",), rf"\b(?:each|every one|everybody|everyone|every (?:child|pupil|person|guest|head|resident))(?: of (?:us|them))? (?:taking|using|drinking|needing|takes|uses|drinks|needs|gets|with){_F}", r"(?! ?(?:cow|goat|hen))", _PEOPLE),
    ("use.each", ("volume",), rf"{_PEOPLE},{_F}", r" ?(?:each|apiece|per (?:person|head))\b(?! (?:week|month|tank|shower))", ""),
    ("use.daily", ("volume",), rf"(?:^|[.;,\n] ?)(?:we use |use |using |uses )?{_F}", r" daily\b(?! (?:for|to) (?:the )?(?:garden|cows?|stock|animals))", _PEOPLE),
    ("use.daily", ("daily",), rf"(?:^|\bpeople,|\bpersons,|\bof us,|\badults,|\bguests,){_F}", _ENDS, _PEOPLE),
    ("way.length", ("length",), "", r" ?(?:of pipe )?(?:by|along|following) (?:the |our )?(?:track|road|path|lane|fence|drive)\b", ""),
    ("beds.area", ("area",), "", r" (?:of )?(?:(?!and\b|roof)[a-z]+ ){1,2}?(?:and [a-z]+ )?(?:plot|orchard|vineyard|grove|plantation)\b", r"\bdrip|\bemitters?\b|\birrigat"),
    ("place.altitude", ("length",), r"(?:^|[.\n] ?)(?:an? |the |our )?(?:alp|alpine|mountain|high)\b[^.;\n\d]{0,40}, (?:at )?$", _ENDS, ""),
    ("power.panel", ("power",), rf"\b(?:panels?|modules?|series|strings?)\b[^;\n]{{0,60}}{_F}", r" ?(?:each|apiece)\b", r"\b(?:panels?|modules?)\b"),
    ("power.limit", ("voltage",), rf"\b(?:controller|inverter|drive)(?:'s)? (?:limit|maximum|max\.?)(?: input| voltage)*{_F}", "", ""),
    ("power.tilt", ("angle",), rf"\bfacing (?:due )?(?:north|south|east|west|[ns][ew]?|[a-z]+-[a-z]+),?(?: at| tilted| tilt| and)*{_F}", r"(?! ?(?:n\b|s\b|north|south|lat|c\b|f\b))", r"\bpanels?|\bmodules?|\barray"),
    ("tank.level", ("length",), r"\b(?:hill|header|high|top|upper) tank(?:'s)?(?: outlet| floor| base| bottom)? ?\+ ?$", _ENDS, ""),
    ("tank.volume", ("volume",), rf"(?:^|[.;,\n] ?)(?:the |our |a |header )*tank(?: is| holds| of)?{_F}", r" ?(?:in the (?:loft|attic|roof space|gable)|on the roof|up the hill|on the hill|on (?:a|the) (?:stand|tower))\b", ""),
    ("drip.spacing", ("length",), "", r" (?:emitter |dripper )?spacing\b(?! (?:of|between) (?:the )?rows)", r"\b(?:tape|drip|emitters?|drippers?)\b"),
    ("drip.rows", ("length",), rf"(?:^|[,;.] ?)rows{_F}", _ENDS, r"\b(?:tape|drip|emitters?|drippers?)\b"),
    ("drip.length", ("length",), r"", r" (?:long )?(?:rows|drip lines|laterals)\b(?! (?:apart|spacing))", r"\b(?:tape|drip|emitters?|drippers?)\b"),
)  # fmt: skip

_RECOVERED = (
    r"\brecover\w*|\bcame (?:back|up)|\b(?:level|water) (?:rise|rose|come back|came up)|\brise back"
)
_TAKES = r"(?: (?:takes?|uses?|needs?|wants?|draws?|is|are|goes through))?"
_BUSY = r"(?:peak|rush|busiest|worst|heaviest|busy)"
_SPAN = r"(?:an?|one|two|half|the|\d+|thirty|forty|twenty|ninety) "
FIRST: tuple[tuple[str, tuple[str, ...], str, str, str], ...] = (  # before all others
    ("well.rate", ("flow",), rf"\b(?:after|i was|we were) pumping(?: it| out)?(?: at)?{_F}", "", _RECOVERED),
    ("well.rate", ("flow",), rf"\b(?:ran|run) (?:the|our|my) pump\b[^.;\n]{{0,25}}(?:\bat|,){_F}", "", _RECOVERED),
    ("well.rate", ("flow",), rf"\brecovery(?: test)?\b[^.;\n\d]{{0,25}}{_F}", r"(?=[^.\n]{0,30}\b(?:for|drawn|pumped|during)\b)", ""),
    ("well.pumped_for", ("time",), rf"\b(?:after|i was|we were) pumping\b[^.;\n]{{0,25}}\bfor{_F}", "", _RECOVERED),
    ("well.pumped_for", ("time",), rf"\brecovery test\b[^.;\n]{{0,40}}\b(?:for|during){_F}", "", ""),
    ("use.peak", ("volume",), rf"\b(?:in|during|for|at) (?:the |our )?{_BUSY} (?:hour|half[ -]hour|time|hours|period|two hours|spell)\b[^.;\n\d]{{0,25}}{_F}", r"(?! ?(?:a|per) (?:day|min))", ""),
    ("use.peak", ("volume",), rf"(?:^|[.;,\n] ?)(?:the |our )?(?:morning |evening |milking |breakfast )?(?:{_BUSY}|milking|wash ?-?down)(?: use| demand| draw| time)?{_TAKES}{_F}", rf" ?(?:go |gone |used )?(?:in|over|within|during) {_SPAN}", ""),
    ("use.peak", ("volume",), rf"\b(?:we|they|it all)(?: \w+)?{_TAKES}{_F}", r" (?:(?:of water )?in|over|within|during) (?:the (?:busiest|worst|peak|two|half|first)|one|an|half an|\d+) ?(?:hours?|half[ -]hour|hour|minutes|min|hrs?)\b(?=[^.;\n]{0,12}\b(?:after|before|at|of (?:milking|breakfast)|when|in the (?:morning|evening))\b|-?hour rush)", r"\b(?:milking|breakfast|washdown|wash-?down|rush|busiest|peak)\b"),
    ("use.peak_time", ("time",), rf"\b(?:{_BUSY}|milking|wash ?-?down|morning rush)\b[^.;\n]{{0,40}}\b(?:in|over|within|lasts|lasting|during){_F}", r"(?! ?(?:a day|per day|ago))", r"\d ?(?:l|lit\w+|gal\w*|m[3³])\b"),
    ("use.peak_time", ("time",), rf"\d ?(?:l|lit(?:re|er)s|gal|gallons)(?: of water)? (?:in|over|within|during) (?:the )?{_F}", r" ?(?:after|before) (?:milking|breakfast|work|school)", ""),
    ("use.each", ("daily",), rf"\bper (?:capita|head|person){_F}", r"(?! ?(?:of (?:cattle|stock)|cow))", ""),
    ("use.each", ("daily",), rf"{_PEOPLE},? (?:and |at |with |using )?{_F}", r" ?(?:each|apiece|per (?:person|head|capita))\b(?! (?:cow|goat|animal|tree|week))", ""),
    ("store.inflow", ("flow",), rf"\bgives? (?:the|our) (?:[a-z]+ )?(?:tank|cistern|reservoir){_F}", "", ""),
    ("store.inflow", ("flow",), rf"\binflow(?: (?:to|into|of|in) (?:the |our )?(?:[a-z]+ )?(?:tank|cistern|reservoir))?{_F}", "", r"\b(?:tank|cistern|reservoir)\b"),
    ("store.inflow", ("flow",), rf"\b(?:water|it) (?:runs|flows|trickles|comes|goes) in(?:to)? (?:the|our) (?:tank|cistern|reservoir)\b[^.;\n\d]{{0,25}}\bat{_F}", "", ""),
    ("store.hours", ("time",), rf"\b(?:pump|pumps|fill|fills|filled|topped up|pumped)\b[^.;\n]{{0,30}}\b(?:tank|cistern|reservoir)\b[^.;\n\d]{{0,20}}{_F}(?<!last )", r" ?(?:(?:a|per|each|every|of the) (?:day|night|evening|morning)|daily|at night)\b", ""),
    ("store.hours", ("time",), rf"\b(?:pump|timer)\b[^.;\n\d]{{0,25}}{_F}", r" ?(?:(?:a|per|each|every) (?:day|night|evening|morning)|daily|at night)? (?:in)?to (?:fill |top up )?(?:the|our) (?:\w+ )?(?:tank|cistern|reservoir)\b", ""),
    ("drip.hours", ("time",), rf"\bdrip(?: ?lines?| system| irrigation)? (?:runs?|goes|is on|are on|works)(?: for)?{_F}", r" ?(?:(?:a|per|each|every) (?:day|night|evening|morning)|daily)", ""),
    ("power.cable", ("length",), rf"\b(?:electric(?:al)?|power|supply|extension) (?:lead|cord|flex)\b[^.;\n\d]{{0,40}}{_F}", r"(?! ?(?:mm|high|above|deep))", ""),
)  # fmt: skip
