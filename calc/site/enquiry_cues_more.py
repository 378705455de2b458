"""Cues of what is told more seldom: a well's test, drip lines, rain, hot water, leaks, reserves."""

from __future__ import annotations

_WORD = r"(?: [a-z'-]+)"

MORE: dict[str, tuple[tuple[str, float, str | None, str | None], ...]] = {
    "length": (
        ("well.static", 8, r"(?:static(?: water)?(?: level)?|standing (?:water(?: level)?|level)|rest(?:ing)? (?:water )?level|rest level|swl)(?: in (?:it|the (?:well|bore\w*)))?", None),
        ("well.static", 8, None, r" ?(?:static|standing)\b"),
        ("well.pumping", 8, r"(?:pumping level|level when (?:it )?(?:runs|pumps|is running)|level while pumping|dynamic(?: water)?(?: level)?|(?:when|while|with the pump) (?:pumping|running)|drawn down(?: to)?|dwl|pwl)", None),
        ("well.pumping", 8, None, r" ?(?:when |while )?(?:pumping|running)\b(?! (?:it|water|time))"),
        ("water.level", 6.5, r"(?:when|while|with|after) (?:the )?pump(?:ing)?(?: is)?(?: runs| running| on)?,? it (?:goes|drops|falls|sinks|is|stands)(?: down)?(?: to| at)?", r"(?! ?(?:away|long|from the house))"),
        ("water.level", 6, r"(?:surface|water)(?: is| was| has)? never (?:been )?(?:lower|deeper|further down) than", None),
        ("drip.length", 10, r"(?:\n|^|[-*,;] ?)(?:drip )?line length", None),
        ("well.depth", 7, r"(?:wells?|bore ?holes?|bore)(?: log)?\b[^.;¤\n]{0,45}(?:sheet|log|report|drilled|depth|deep)(?: (?:gives|says|states|shows))?", r"(?! ?(?:to (?:the )?water|of pipe|down to water|above|below|higher|lower|away|from))"),
        ("well.depth", 7, r"(?:wells?|bore ?holes?|bore)(?: itself)? (?:reaches|measures|extends|penetrates|was sunk|was taken)(?: (?:down|to|a depth of))*", r"(?! ?(?:across|wide|in diameter|away|from (?:the )?(?:house|pump)|above|below))"),
        ("well.depth", 6.5, r"(?:drilled|dug|bored|driven|deep|artesian) (?:well|bore ?hole|bore),", r" ?(?:$|[,.;)\n]|and\b|on\b|with\b)"),
        ("well.depth", 7, None, r" ?from (?:the )?(?:rim|top|lip|surface|collar|curb|grade) to (?:the )?bottom\b"),
        ("water.level", 7, None, r" ?(?:between|from) (?:the )?(?:rim|top|lip|cover|lid|collar|curb|ground|grade|surface) (?:and|to|down to) (?:the )?(?:water|water level|water surface)\b"),
        ("water.level", 7, r"water (?:comes|rises|stands|gets)(?: up)? to within", r" ?(?:of|from) (?:the )?(?:surface|top|rim|ground|grade)"),
        ("water.level", 6, r"water(?: level)?(?: in (?:it|the (?:well|bore\w*)))? (?:rests|lies|is resting|settles|hovers|shows up|begins)(?: down)?(?: at| to)?", r"(?! ?(?:away|from the (?:house|pump)|of pipe|long|above))"),
        ("water.level", 6, r"water (?:is|stands|sits|lies|was) down", r"(?! ?(?:the|of pipe|away))"),
        ("way.length", 5, r"(?:pipe|line|poly|copper|pvc|hose|pex|hdpe|mdpe)\b[^.;¤\n]{0,25},(?: maybe| about| perhaps| some| roughly)?", r" ?of it\b"),
        ("well.depth", 6, None, r"[ -](?:drilled |dug |deep )*(?:hole|well|bore ?hole)\b(?! (?:away|to|from|is|has|was|goes|makes|gives|yields|water|depth))"),
        ("well.depth", 6, r"(?:\bit|thing|hole|which|that|well)(?: is| was| goes|'s)?(?: [a-z]+){0,2}?", r"(?: |-)?(?:deep\b(?! (?:trench|under)))"),
        ("well.drop_pipe", 9, r"(?:drop (?:pipe|line)|riser(?: pipe)?|rising pipe in the well)", r"(?! ?(?:off|above|from|over) (?:the )?bottom)"),
        ("well.drop_pipe", 9, None, r" ?(?:of |long )?(?:[\w\"/]+ ){0,4}?(?:drop (?:pipe|line)|riser)\b"),
        ("drip.length", 9, r"(?:(?:each|every) (?:drip ?)?(?:line|row|lateral)|(?:drip ?lines?|laterals?)(?: (?:are|is|run|each|of|about))*|rows? (?:are|is))", r"(?! ?(?:apart|between|spacing))"),
        ("drip.length", 9, None, r" ?(?:long )?(?:drip ?lines?|laterals?|runs? of drip)\b"),
        ("drip.length", 8, r"\brows?,? drip,? each line", None),
        ("drip.spacing", 9, r"(?:drippers?|emitters?|holes|outlets)(?: (?:are|is|sit|spaced|spacing|every|each|come|at))*", r"(?! ?(?:deep|long|away from the (?:house|pump|well)))"),
        ("drip.spacing", 9, r"(?:drippers?|emitters?)\b[^.;\n]{0,40}\bspac(?:ing|ed)", None),
        ("drip.spacing", 9, None, r" ?(?:between (?:the )?(?:drippers|emitters)|(?:dripper|emitter) spacing|between emitters)"),
        ("drip.rows", 9, r"(?:rows?(?: spacing| are| is)?|row distance|between (?:the )?rows)(?: (?:are|is|of|spaced|at|apart))*", r" ?(?:$|[,.;)\n]|apart|between|from)"),
        ("drip.rows", 9, None, r" ?(?:between (?:the )?rows|row spacing|apart in the rows)"),
        ("pump.dry_lift", 9, r"(?:dry (?:suction )?lift|self[ -]?prim\w+(?: lift| height)?(?: up)?(?: to)?|primes?(?: itself)? (?:dry )?(?:from|to|up to))", None),
        ("pump.npsh", 9, r"npsh ?r?(?:equired)?", None), ("pump.npsh", 9, None, r" ?npsh"),
        ("suction.length", 9, r"(?:sucks?|sucking|draws?|drawing|pulls?)\b[^.;¤\d]{0,30}\b(?:through|via|along)(?: an?)?", r" ?(?:of |long )?(?:[\w\"/-]+ ){0,3}?(?:pipe|hose|line|tube|poly)"),
        ("suction.length", 8, r"suction side\b[^.;¤\d]{0,30}", r" ?(?:of )?(?:pipe|hose|line)"),
        ("pump.height", 7, r"(?:hung|hangs?|hanging|suspended|lowered|dangles)(?: down)?(?: on (?:a |the )?(?:rope|cable|pipe))?(?: at| to)", r"(?! ?(?:away|from the|above|higher|of pipe|long))"),
        ("water.level", 7, r"(?:(?:pumping|dynamic|drawdown)(?: water)? level|level (?:when|while) pumping|drawdown(?: to)?|draws down to)", None),
    ),
    "flow": (
        ("pump.most_flow", 8, r"pump\b[^.;¤\n]{0,30}\b(?:delivers|gives|makes|does|manages|puts out|moves|provides)(?: about| up to| roughly)?", r" ?(?:at|@) (?:its |the |a )?(?:set pressure|set ?point)"),
        ("water.yield", 5.5, r"(?:spring|well|bore ?hole|bore|seep|source)\b[^.;¤\n]{0,45}\b(?:and|where|which) (?:i|we) (?:get|have|collect|measure|measured|catch)(?: about| around| only| some)?", None),
        ("water.yield", 5.5, r"(?:driller|well log|log|report)(?:'s)?(?: \w+)? (?:wrote|noted|notes|puts it at|put it at|logged|states|stated|claimed|says|said)", None),
        ("water.yield", 5, r"(?:driller|well ?man|we|i)(?: \w+)? (?:measured|timed|clocked|recorded|got|bailed|tested)(?: (?:it|the (?:spring|well|flow)))?(?: at)?", None),
        ("well.steady", 7, r"(?:held(?: steady)?|steady(?: flow| state)?|settled|levell?ed off|trickle)(?: (?:at|of|to|that|held))*", None),
        ("use.leak", 9, r"(?:leaks?|leaking|leakage|loses?|losing|drips?|dripping|seeps?)(?: (?:about|maybe|of|at|away))*", None),
        ("store.inflow", 7, r"(?:into|in|to|fills?|feeds?|tops? up) (?:the |our |a |this |my )?(?:storage |holding |buffer )?(?:tank|cistern|reservoir)\b(?: day and night| slowly| all day| constantly)?,?", None),
        ("store.inflow", 7, None, r" ?(?:into|to fill|filling) (?:the |our |a )?(?:tank|cistern|reservoir)"),
        ("drip.dripper", 9, r"(?:drippers?|emitters?)\b[^.;\n]{0,40}", r",? ?(?:each|apiece|per (?:dripper|emitter))?\b"),
        ("drip.dripper", 9, r"(?:drippers?|emitters?|emitting)\b[^.;\n]{0,40}", r" ?(?:each|apiece)?(?: ?[,.;)\n]|$)"),
        ("drip.dripper", 9, None, r" ?(?:drippers?|emitters?|per (?:dripper|emitter)|pressure[- ]compensating)"),
    ),
    "daily": (
        ("use.garden", 8, r"(?:garden|plot|beds?|vegetables?|orchard|veg(?:gies)?|plants|greenhouse|irrigation|trees|watering)\b(?: (?:that|which|it|also|alone|then|in \w+))*(?: (?:drinks?|needs?|takes?|wants?|uses?|gets?|is|about|requires?|somewhere))*", None),
        ("use.garden", 8, None, r" ?(?:for|on|to) (?:the |our )?(?:garden|plants|beds|vegetables|orchard|irrigation|plot|greenhouse)"),
        ("use.daily", 5, r"(?:they|we|us|house|household|everyone|family)(?: all| together)? (?:use|need|go through|get through)\b[^.;¤\d]{0,60}", None),
        ("use.daily", 6, r"(?:metered|meter reading\b[^.;¤\d]{0,30}|consumption\b[^.;¤\d]{0,40})(?: is| was| of)?", None),
    ),
    "pressure": (
        ("drip.pressure", 9, None, r" ?(?:where|when) (?:the )?(?:drip ?)?(?:lines?|laterals?|rows) (?:begin|start)s?\b|at the (?:start|head|beginning) of the (?:drip ?)?(?:lines?|laterals?|rows?)\b"),
        ("hot.relief", 9, r"(?:relief|safety|t&p|pressure[ -]relief)(?: valve)?(?: on the heater)?(?: (?:is|set|rated|opens|lifts|at|to|says|reads|stamped|marked))*", None),
        ("drip.least", 9, r"(?:minimum|at least|no less than)", r" ?(?:$|[,.;)\n])"),
        ("drip.rated", 9, r"(?:tape|drippers?|emitters?|drip ?lines?)(?: (?:wants?|needs?|is|are|rated|at|for|works?|run|runs))*", None),
    ),
    "time": (
        ("store.days", 6, None, r"'? (?:reserve|storage|supply|worth|in (?:store|the tank|reserve)|without (?:the )?(?:pump|power|rain|sun|supply))"),
        ("drip.hours", 9, r"(?:can water|watering|(?:we|i|to|they|must|may|you) water|irrigat\w+|drip\w*)\b[^.;\n]{0,45}", r" ?(?:a|per|each|every) (?:day|night|morning)"),
    ),
    "percent": (
        ("power.shade", 7, r"(?:trees?|oak|hill|barn|shade|shadow|neighbou?r|pine|ridge)(?: (?:takes?|costs?|eats?|steals?|robs?|blocks?|cuts?))(?: off| away| us)?", None),
    ),
    "area": (
        ("rain.roof", 9, r"roof(?:'s| is| area| of| catchment| surface)?(?: (?:that|which) (?:feeds|fills) (?:it|the [a-z]+))?(?: (?:is|of|has|about|area|measures|comes to))*", None),
        ("rain.roof", 9, None, r" ?(?:of |in )?(?:tin |metal |barn |shed |house )?(?:roof|catchment)"),
    ),
    "temperature": (
        ("hot.stored", 8, r"(?:stored|kept|heater|thermostat|hot water|boiler|cylinder)(?: [a-z']+){0,3}?(?: (?:at|to|is|set))*", None),
    ),
    "angle": (
        ("power.tilt", 7, r"(?:panels?|modules?|array)(?: [a-z]+){0,4} at(?: an?)?", r"(?! ?(?:n\b|s\b|north|south|lat))"),
    ),
}  # fmt: skip
