"""Rows for ``enquiry_direct``: numbers that a noun of their sentence claims, by what only it can have.

A sentence names one thing and goes on about it: "the borehole …, and the paper says 74 m deep", "the
tank, 12 m above ground", "the vessel has 2.8 bar". A row is as ``enquiry_direct`` says.
"""

from __future__ import annotations

_F = (
    r"[ ,:=~(+-]*+(?>(?:is|are|was|be|of|at|a|an|the|about|around|roughly|some|only|just|approx\.?|ca\.?|nearly|almost|up to|maybe|perhaps|say|even|in total|total|it is|it's|which is|that is"
    r"|by|good|over|all|exactly|then|down|we have|there are)(?![a-z])[ ,:=~(-]*+)*+$"
)
_DRIP = r"\bdrip|\bemitters?\b|\bdripline"
_WELL = r"\b(?:wells?|bore ?holes?|bore)\b"
_HOT = r"\b(?:heater|boiler|hot[ -]water|geyser|cylinder)\b"
_HOME = r"(?:house|cabin|home|cottage|hut|kitchen|farm|barn|lodge|trailer|chalet|school|building|garden|stable|trough)"
_DRY = r"(?:late |the |a |very |dry )*(?:summer|autumn|fall|july|august|september|october|drought|dry (?:season|time|months?))"
_ENDS = r" ?(?:$|[.,;)\n]|or so\b|and\b|but\b|in\b)"
_NO_REDUCER = r"\A(?![\s\S]*\b(?:reduc\w+ valve|reducer|regulator|prv)\b)[\s\S]*\bpump"
_UNPUMPED = r"(?:(?!\b(?:pump|intake|water|tank|cistern|pipe|trench|pond|level)\b)[^;\n])"
CROPS = r"(?:lettuces?|tomatoes|tomato|strawberr(?:y|ies)|peppers?|onions?|potatoes|cabbages?|melons?|cucumbers?|carrots?|olives?|almonds?|apples?|vines|grapes|vegetables?|orchard|berries|maize|corn|beans|fruit trees)"

NOUNS: tuple[tuple[str, tuple[str, ...], str, str, str], ...] = (
    # beside others of their kind
    ("pump.height", ("length",), rf"\bdepth of (?:the |our )?pump[:,]?{_F}", r"", _WELL),
    ("water.level", ("length",), rf"\brest water(?: is)?(?: at)?{_F}", r"(?! ?(?:away|above))", ""),
    ("water.level", ("length",), rf"\bwater\b[^.;\n]{{0,50}}\bours (?:stands|is|sits|rests)(?: at)?{_F}", r" ?(?:$|[.,;)]|down\b|deep\b)", ""),
    ("well.depth", ("length",), rf"\bbottom(?: of (?:the |our )?(?:well|bore\w*|hole))?(?: is)?(?: at)?{_F}", r" ?(?:$|[.,;)\n]|down\b)", rf"\A(?=[\s\S]*\bwater)[\s\S]*{_WELL}"),
    ("well.depth", ("length",), rf"\bcased\b[^;\n]{{0,60}}\b(?:is|goes){_F}", r" ?deep\b", ""),
    ("well.depth", ("length",), rf"(?:^|[.;\n] ?)(?:total )?depth[:=]?{_F}", r" ?(?:$|[,;.])", r"\bstatic\b|\bswl\b"),
    ("tank.level", ("length",), rf"\d ?(?:m|ft|feet|met(?:re|er)s)(?: of [a-z ]{{3,12}})? and{_F}", r" ?(?:straight )?up to (?:the|our|my|a) (?:\w+ )?tank\b", ""),
    ("tank.level", ("length",), rf"\b(?:one|another)(?: more)? (?:\w+ )?on (?:a|the) (?:platform|stand|tower|roof|hill|ridge)\b[^.;\n\d]{{0,10}}{_F}", r" ?(?:above|high|up)\b", r"\b(?:tanks?|totes?|ibcs?)\b"),
    ("way.length", ("length",), rf"\bunderground(?: for)?{_F}", r" ?(?:$|[,.;)])", r"\b(?:pipe|line|hose|poly|house)\b"),
    # wells
    ("well.depth", ("length",), rf"{_WELL} of{_F}", r"(?! ?(?:pipe|diameter|across|wide|away|from|in diameter|inside|water|casing))", ""),
    ("well.depth", ("length", "bare"), rf"(?:\bwell'?s?|\bbore ?holes?|\bbore|\bshaft|\bhole)\b{_UNPUMPED}{{0,60}}{_F}", r" ?(?:down )?to (?:the |its )?bottom\b(?! of (?:the )?(?:hill|garden|field|slope|tank|cistern|valley|track))", _WELL),
    ("well.depth", ("length",), rf"\b(?:well|bore ?hole)\b{_UNPUMPED}{{0,90}}\bsays?{_F}", r" ?deep\b", ""),
    ("well.depth", ("length",), rf"(?:(?:^|[.;:\n]) *(?:one |1 |a |the |our )?|, (?:one|a|the|our) )(?:\w+ )?(?:well|bore ?hole|bore)[:,]{_F}", r" ?(?:$|[,;.])(?![^.;\n]{0,25}\b(?:away|from the house|of pipe)\b)", ""),
    ("well.depth", ("length",), rf"(?:^|[.;\n]) *(?:the |our |my )?(?:\w+ )?(?:hole|bore|shaft|bore ?hole)(?: itself)?{_F}", r" ?(?:$|[,;.)])(?![^.;\n]{0,25}\b(?:away|from the house|of pipe)\b)", ""),
    ("well.depth", ("length", "bare"), rf"\bbottom(?: of (?:it|(?:the|our|my) (?:well|bore\w*|hole|shaft)))(?: lies| sits)?{_F}", r"(?! ?(?:above|below|higher|lower|away))", _WELL),
    ("well.depth", ("length",), rf"\b(?:bore ?hole|bore|hole|well|shaft)(?: (?:has|have|with))?{_F}", r" ?(?:$|[.;)]|, (?:the )?(?:pump|water|static|level)\b|deep\b|of depth\b)(?! trench)", r"\b(?:(?:bore ?hole|bore|hole|well|shaft) has|from (?:a |the )?hole)\b"),
    ("well.depth", ("length",), rf"\b(?:bore ?hole|bore|well|shaft) has{_F}", r" ?(?:$|[.,;)]|and\b)", ""),
    ("water.level", ("length",), rf"\bwater (?:stays?|remains|keeps) (?:in|at|on){_F}", r"(?! ?(?:away|long|from|pipe|of pipe))", r"\b(?:wells?|bore ?holes?|bore|hole|shaft)\b"),
    ("well.tested", ("flow",), rf"\b(?:(?:pumping|dynamic)(?: water)?(?: level)?|drawdown)\b[^;\n]{{0,25}}(?:\bat|@){_F}", r"", ""),
    ("well.tested", ("flow",), rf"(?:^|[,;.:] ?|\band |\bwas |\bthen )(?:test[ -]?)?pumped(?: at| with)?{_F}", r"(?=[^.\n]{0,60}\b(?:settled|levell?ed|fell|went down|dropped|drew|came down|stood|steady)\b)", rf"{_WELL}|\bwell|\bcasing|\bdriller"),
    ("well.tested", ("flow",), rf"\b(?:pulls|draws|drew|pulled|drops|dropped|falls|fell|goes|went|sinks|sank|settles|settled|stays|holds)\b[^.;\n]{{0,30}}\b(?:at|with|under){_F}", r"", rf"\b(?:static|rest level)\b[\s\S]*{_WELL}|{_WELL}[\s\S]*\b(?:static|rest level)\b"),
    ("well.rate", ("flow",), rf"\b(?:i|we|he|they) pumped(?: it| out)?(?: at| with)?{_F}", r"", r"\brecover|\brose\b|\bcame back|\b(?:measured|took|read) the (?:water|level)\b|\bwith a stick\b"),
    ("well.pumped_for", ("time",), rf"\bpumped\b[^.;\n]{{0,25}}\bfor{_F}", r"", r"\b(?:measured|took|read) the (?:water|level)\b|\bwith a stick\b"),
    ("well.static", ("length",), rf"\b(?:before|at first|to begin with)\b[^.;\n]{{0,30}}\b(?:it|water|level) (?:stood|was|sat|lay|had been)(?: at)?{_F}", r"(?! ?(?:away|from the house|above|long))", r"\bpumped\b"),
    ("well.intake", ("length",), rf"\bintake\b[^.;\n\d]{{0,25}}\b(?:hang|hangs|hung|sits|sit|set|put|be)(?: down)? (?:at|to){_F}", r"(?! ?(?:above|away|from))", _WELL),
    ("well.static", ("bare",), rf"\b(?:static(?: (?:water )?level)?|rest level)(?: at)?{_F}", r" ?(?:$|[.,;)\n])(?! ?(?:psi|bar))", rf"{_WELL}|\bhung\b"),
    ("well.depth", ("length",), rf"\b(?:wells?|bore ?hole|bore|hole)(?: itself)? goes to{_F}", r"(?! ?(?:in (?:summer|dry)|the|long|away))", ""),
    ("well.depth", ("length",), rf"(?:^|[.;\n] ?)(?:a |the |our |my )?(?:shallow|dug|drilled|bored) (?:well|bore ?hole|bore)[:,]?{_F}", r" ?(?:$|[.,;])(?! ?(?:away|from the house|of pipe)\b)", ""),
    ("well.depth", ("length",), rf"\bold (?:well|bore ?hole|bore)\b[^\n]{{0,80}}\bthe new one(?: is| goes| was drilled| went)?(?: down)?(?: to)?{_F}", r" ?(?:$|[.,;)]|deep\b|and\b)(?! ?(?:away|from the house))", ""),
    ("well.depth", ("length",), rf"\b(?:hit|struck|found) water\b[^.;\n]{{0,40}}\b(?:went|drilled|carried|continued|kept)(?: on| going)?(?: down)?(?: to)?{_F}", r"", ""),
    ("well.depth", ("length",), rf"\b(?:log|well log|driller'?s (?:log|report)|tag)\b(?:(?!\b(?:water|static|level|pump|set|casing)\b)[^.;\n]){{0,25}}\b(?:says?|gives|shows|reads){_F}", r" ?(?:$|[.,;)]|deep\b|so\b)", _WELL),
    ("water.level", ("length",), rf"\b(?:hit|struck|found|reached) water\b[^.;\n]{{0,40}}\b(?:it|which|the water|water)(?: then)? (?:rose|came(?: back)? up|comes up|rises|climbed)(?: back)?(?: up)?(?: again)? to{_F}", r"", ""),
    ("water.level", ("length",), rf"\bwater(?: level)?(?: is| stands| lies| sits)?{_F}", r" ?(?:below|under) (?:the )?(?:cellar|basement|shed|pump ?house|garage) ?(?:floor|level)?\b", ""),
    ("well.static", ("length",), rf"\b(?:drew|draws|pulled|pulls|pumped)(?: it)? down from{_F}", r" ?(?:down )?(?:to|until)\b", _WELL),
    ("well.pumping", ("length",), rf"\b(?:drew|draws|pulled|pulls|pumped)(?: it)? down from [\d.,]+ ?[a-z']* ?(?:down )?(?:to|until){_F}", r"", _WELL),
    ("pump.height", ("length",), rf"(?:^|[.;,\n] ?)pump(?: depth| setting| set| hangs)?:{_F}", r" ?(?:$|[.;,\n)])(?! ?(?:from|away|above))", _WELL),
    ("well.depth", ("length",), rf"\bours(?: is| goes| was){_F}", r" ?with (?:the |its )?(?:water|static)\b", ""),
    ("well.depth", ("length",), rf"\b(?:wells?|bore ?hole|bore) itself(?: is| goes| has| was)(?: down)?(?: to)?{_F}", r" ?(?:$|[.,;)]|deep\b|and\b)(?! ?(?:away|from the house))", ""),
    ("well.depth", ("length",), r"", r" ?(?:in |of )?total depth\b", _WELL),
    ("well.pumping", ("length",), rf"\bafter [^.;\n\d]{{0,25}}\bpumping,? (?:it|the level|level|the water|water)(?: level)? (?:is|stands|was|goes|drops|dropped|fell|sits)(?: down)?(?: to| at)?{_F}", r"(?! ?(?:away|above))", ""),
    ("tank.level", ("length",), rf"\b(?:to|into) (?:a|an|the|our|my) (?:[a-z]+ ){{0,2}}(?:tank|reservoir)(?: that is| which is| sitting| standing)?{_F}", r" ?(?:higher|above|up\b|uphill|further up)", ""),
    ("well.depth", ("length",), rf"\b(?:the|our|my) (?:\w+ )?(?:well|bore ?hole|bore)'s{_F}", r" ?(?:$|[.,;)])", ""),
    ("well.depth", ("length",), r"", r" ?(?:in total |total |altogether )?for (?:the|our|my) (?:whole )?(?:well|bore ?hole|bore)\b", ""),
    ("well.depth", ("length",), rf"[,;] ?(?:the |our )?(?:well|bore ?hole|bore){_F}", r" ?(?:$|[,;.)\n])", r"\b(?:rise|climb|run|length)\b[^.;\n\d]{0,10}\d"),
    ("well.bore", ("length",), rf"\brings?(?: are| is| of| have| with| measure)*{_F}", r" ?(?:in |of )?(?:diameter|across|wide|inside)\b", _WELL),
    ("pump.height", ("length",), rf"\b(?:static|swl|water|level|depth)[^.;\n]{{0,14}}[,;] ?pump{_F}", r" ?(?:$|[.;,\n)])", _WELL),
    ("water.level", ("length",), rf"\bwater(?: comes| rises| stands| is)?(?: up)?(?: to)? within{_F}", r" ?of (?:the )?(?:top|surface|ground|rim)\b", ""),
    ("water.yield", ("flow",), rf"\b(?:i|we|last|now|lately|recently)(?: have| had| was)? (?:re-?)?measured(?: it)?(?: at)?{_F}", r"(?! ?(?:at (?!the (?:spring|well|box|source))|from the pump))", rf"(?:{_WELL}|\bspring|\byield)"),
    ("water.yield", ("flow",), rf"\b(?:sustainable|safe|long[- ]term|steady) yield\b[^.;\n\d]{{0,25}}{_F}", r"", ""),
    ("tank.level", ("length",), rf"\b(?:overhead|elevated|header|hill|high) tank\b[^.;\n]{{0,25}}\bat(?: a height of)?{_F}", r" ?(?:$|[,;.)\n]|height\b|high\b|up\b)", ""),
    ("tank.level", ("length",), rf"\b(?:tower|stand|platform)(?: is| of)?{_F}", r" ?(?:$|[.,;)]|high\b|tall\b)", r"\btank (?:stands |sits |is )?on (?:it|top|that|the (?:tower|stand|platform))\b"),
    ("way.length", ("length",), rf"\b(?:for|to|until|till) (?:the|our|my) {_HOME}(?: we| i| it)? (?:must|need|needs|has|have)(?: to)? (?:go|run|travel|make|do){_F}", r"(?! ?(?:up|high|of (?:height|rise)))", ""),
    # levels of water
    ("water.level", ("length", "bare"), rf"\b(?:water|level)\b[^;\n]{{0,60}}(?:\bbut|\band|\bor|,)(?: \w+)?{_F}", rf" ?(?:down |deep |below \w+ )?(?:in|by|at the end of|during) {_DRY}\b(?! (?:we|i|they|it needs))", _WELL),
    ("water.level", ("length", "bare"), rf"\bwater(?: level)?\b[^;\n]{{0,55}}\b(?:maximum|max\.?|at worst|worst|deepest){_F}", rf"(?= ?(?:m\b|down\b|in {_DRY}|[.,;)\n]|$))", _WELL),
    ("water.level", ("length", "bare"), rf"\bwater(?: level)?(?: is| was| sits| stands| lies|'s)? at{_F}", r" ?(?:or so\b|down\b|below (?:ground|grade|the (?:surface|top|rim)))", _WELL),
    ("water.level", ("length", "bare"), rf"(?:^|[,;.] ?)(?:the )?water (?:is |sits |stands )?at{_F}", r" ?(?:$|[.,;)\n])", rf"{_WELL}[\s\S]{{0,60}}\bwater (?:is |sits |stands )?at\b"),
    ("water.level", ("length",), rf"\bwater(?: level)? (?:in|of|inside) (?:the|our|my|this) (?:\w+ )?(?:well|bore ?hole|bore|shaft) (?:stands|sits|lies|is|rests|was|falls|drops|goes|sinks)(?: down)?(?: to| at)?{_F}", r" ?(?:below|under|beneath) (?:the )?(?:yard|ground|surface|grass|lawn|rim|top|cover|lid|floor|cap|casing|grade|terrace)\b", ""),
    ("water.level", ("length", "bare"), rf"\b(?:water|level)\b[^;\n]{{0,60}}\bin {_DRY}(?: (?:only|falls to|it falls to|drops to|it drops to|goes to|sinks to|it sinks to))*{_F}", r" ?(?:$|[.,;)\n]|down\b|deep\b|below\b)(?! (?:the (?:house|pump)))", _WELL),
    ("water.level", ("bare",), rf"\b(?:static|water|level)\b[^.;\n]{{0,50}}\b(?:pulls|draws|goes|drops|falls|sinks|went|pulled|drew|dropped)(?: it)?(?: down)? to{_F}", r" ?(?:$|[.,;)\n]|at\b|when\b|while\b|in\b|after\b|by\b)", _WELL),
    ("pump.height", ("length",), rf"\b(?:it|pump|submersible)(?: now)? (?:hangs|is hung|hung|is hanging|is suspended)(?: down| at)?{_F}", r" ?(?:below|under|beneath) (?:the )?(?:ground|surface|top|grade|casing|cap|rim)\b", r"\b(?:pump|submersible)\b"),
    ("pump.height", ("bare",), rf"\b(?:submersible|pump)(?: is| sits| hangs| set)? at{_F}", r" ?in (?:an?|the|our) (?:\d|¤|well|bore)", _WELL),
    ("pump.height", ("length",), rf"\b(?:bore(?:hole)? pump|submersible)\b[^;,\n]{{0,20}}\bat{_F}", r" ?(?:$|[,.;)\n]|deep\b|down\b)(?! (?:the (?:hill|road)|from))", ""),
    ("pump.height", ("length",), rf"\b(?:well|bore ?hole|bore|depth)[ :]*\d+ ?(?:m|ft|'|feet|met(?:re|er)s)?,? pump{_F}", r" ?(?:$|[,;.)])", ""),
    # tanks
    ("tank.level", ("length",), rf"\btank\b(?:(?!\b(?:pumps?|house|panels?|draws?)\b)[^.;\n]){{0,60}}{_F}", r" ?(?:above|over|off) (?:the )?ground\b", ""),
    ("tank.level", ("length",), rf"\b(?:elevated|raised|overhead|tower|high|upper) (?:\w+ )?tank\b(?:(?!\b(?:pump|house|panels?)\b)[^.;\n]){{0,60}}{_F}", r" ?(?:high|up|tall)\b(?! (?:the|to|from))", ""),
    ("store.inflow", ("flow",), rf"\b(?:tank|cistern|reservoir)\b[^.;\n]{{0,45}}\b(?:gets|receives|takes in|is fed(?: with)?|fills at|is (?:re)?filled (?:at|with)){_F}", r"(?! ?(?:pump|per))", ""),
    ("store.volume", ("volume",), rf"\b(?:concrete|brick|stone|masonry|underground|collecting|collection|holding) (?:chamber|pit|basin|vault)\b[^.;\n\d]{{0,40}}{_F}", r"", r"\bpump"),
    ("store.floor", ("area",), rf"\b(?:floor|base|plan|footprint|bottom)(?: area)? (?:of|in) (?:the )?(?:cistern|tank|reservoir){_F}", r"", ""),
    ("store.floor", ("area",), rf"\b(?:cistern|tank|reservoir)(?:'s)? (?:floor|base|plan|footprint|bottom)(?: area| measures)?{_F}", r"", ""),
    ("store.depth", ("length",), rf"\bwater(?: in it| in the (?:tank|cistern)| stands)?{_F}", r" ?(?:deep |high )?(?:in it )?(?:when|if)(?: it is| it's| the (?:tank|cistern) is)? (?:full|filled)", r"\b(?:tank|cistern|reservoir)\b"),
    # pressures
    ("pump.set", ("pressure",), rf"(?:^|[.;\n] ?|, ?| and )(?:it|the pump|pump|which)(?: is|'s| was| runs)? (?:set|adjusted|programmed) (?:to|at|for|on){_F}", r"(?! ?(?:pre-?charge|air|-|/|and \d))", _NO_REDUCER),
    ("pressure_tank.precharge", ("pressure",), rf"(?<!expansion )\b(?:pressure (?:tank|vessel)|vessel|accumulator|(?:bladder|membrane|captive air) tank|tank membrane)\b(?:(?!\b(?:pump|switch|set|max\w*|rated|cut)\b)[^.;\n]){{0,25}}\b(?:has|with|filled to|inflated to|is at|at){_F}", r"(?! ?(?:switch|max|rated|rating|test|line\b|water pressure|at the|cut|on\b|off\b|-|/))", ""),
    ("pressure_tank.precharge", ("pressure",), rf"\b(?:i|we|he|they) (?:put|pumped|blew|have|keep|gave it){_F}", r" ?(?:in\b(?! (?:the|our) (?:house|pipe|line|kitchen|shower))|of air\b|air\b)", r"\b(?:pressure|captive|bladder|air)[ a-z]* tank|\bvessel|\bswitch\b|\d0[-/]\d0"),
    ("drip.least", ("pressure",), r"", r" ?(?:is|are) (?:the )?(?:least|minimum|lowest|smallest)\b", _DRIP),
    # use and leaks
    ("use.leak", ("flow",), rf"\b(?:taps?|valves?|everything|all|outlets?) (?:is |are )?(?:closed|shut|turned off|off)\b[^;\n]{{0,70}}{_F}", r"", r"\bmeter\b|\bleak"),
    ("use.leak", ("flow",), rf"\bmeter (?:still |yet )?(?:turns|moves|creeps|runs|counts|shows)\b[^;\n]{{0,40}}{_F}", r"", r"\b(?:night|closed|shut|off|leak\w*)\b"),
    ("use.each", ("daily",), rf"\b(?:each|every one|everybody|everyone)(?: of (?:us|them))? (?:drinks?|washes|uses?|needs?|takes?|consumes?)(?: and \w+)?{_F}", r"(?! ?(?:cow|goat|hen))", r"\b(?:people|persons?|guests?|family|we are|we're|of us|adults?|pupils|children|brothers|sisters|monks)\b"),
    ("use.garden", ("daily",), rf"\b(?:i|we) (?:water|irrigate)\b[^;\n]{{0,60}}{_F}", r"(?! ?(?:per|each))", r"\b(?:garden|beds?|vegetables?|drip)\b"),
    ("hot.stored", ("temperature", "angle"), rf"\b(?:boiler|heater|cylinder|geyser|(?:hot|warm)[ -]water(?: tank)?)\b(?:(?!\b(?:tilt|panels?|south|roof)\b)[^.;\n]){{0,25}}(?:\bat|\bkept|\bof|,|\bwater){_F}", r"(?! ?(?:max|inlet|cold|tilt|pitch|angle|slope|south|north|n\b|s\b))", _HOT),
    ("pipes.hottest", ("temperature", "angle"), rf"\b(?:pipe|line|poly|hose|it)\b[^;\n]{{0,40}}\bsun\b[^;\n\d]{{0,20}}\b(?:has|have|gets|get|reaches|goes to|is|to){_F}", r"(?! ?(?:tilt|south|north|n\b|s\b|slope))", r"\b(?:pipe|poly|hose|line|pe|hdpe)\b"),
    # pumps
    ("pump.least_flow", ("flow",), rf"\bpump\b[^.;\n]{{0,40}}\b(?:at least|minimum(?: flow)?|not (?:less|under|below)(?: than)?|min\.?){_F}", r" ?(?:for|to|of) (?:its |the )?(?:motor |own )?(?:cool\w*|motor)", ""),
    ("pump.least_flow", ("flow",), rf"\b(?:minimum|least|lowest) flow (?:of|through|for) the pump{_F}", r"", ""),
    ("pump.diameter", ("length",), rf"\b(?:outside|outer|pump) diameter{_F}", r" ?(?=[,.;)\n]|$)", r"\b(?:submersible|bore ?hole pump)\b[^\n]{0,200}\b(?:outside|outer|pump) diameter"),
    ("power.tilt", ("angle",), rf"\b(?:panels?|modules?|array)\b[^;\n]{{0,70}}\b(?:north|south|east|west|[ns][ew])(?: and| with| at|,)*{_F}", r"(?! ?(?:n\b|s\b|north|south|lat|c\b|f\b))", ""),
    # the way
    ("way.length", ("length",), rf"(?:^|[.;\n] ?)(?:up |over |out |down |across )?to (?:the |our |my )?(?:\w+ )?{_HOME}(?: it)?{_F}", r" ?(?:$|[,.;)\n]|and\b|away\b|far\b|of (?:pipe|poly|hose)\b)", ""),
    ("way.length", ("length",), rf"\b(?:way|distance|route|path|run|line) to (?:the |our |my )?(?:\w+ )?{_HOME}{_F}", r" ?(?:$|[,.;)\n]|and\b|away\b|long\b)", ""),
    ("way.length", ("length",), rf"(?:^|[.;\n] ?)(?:the |our )(?:way|distance|pipe run|route)(?: is| are){_F}", r" ?(?:$|[,.;)\n]|long\b|and\b)", ""),
    ("way.climb", ("length",), rf"\b(?:height|level|elevation) difference\b(?: (?:between|from|of|pump|well|bore\w*|spring|source|to|and|the|our|-)| (?:house|cabin|garden|barn|kitchen|hut|farm|trough))+{_F}", r"", ""),
    ("way.climb", ("length",), rf"\b(?:another|then|plus|a further){_F}", rf" ?(?:up|higher|uphill) to (?:the |our |my )?(?:\w+ )?{_HOME}\b", ""),
    ("way.length", ("length",), rf"\b{_HOME}(?: is| lies)?{_F}", r" ?(?:further|farther)(?: on| away| off)?\b(?! (?:up|down))", ""),
    ("way.climb", ("length",), rf"(?:^|[.;\n] ?)(?:up |over |out )?to (?:the |our |my )?(?:\w+ )?{_HOME}[^.;\n]{{0,30}}(?:\band|,){_F}", r" ?(?:high|up|uphill|higher|in height|of (?:height|climb|rise))\b(?! (?:to|than))", ""),
    ("way.climb", ("length",), rf"\bup to (?:the |our )?(?:roof|attic|top|upper|second|third|first|highest) (?:floor|storey|story|tap|flat|apartment|bathroom|shower|outlet){_F}", r" ?(?:$|[,.;)\n]|in height|high\b)", ""),
    ("place.altitude", ("length",), rf"(?:^|[.;\n]) *(?:our |the |a |an |small |mountain |old |little |alpine |stone |wooden )*(?:hut|refuge|cabin|chalet|lodge|village|hospital|hamlet|monastery|farm),{_F}", r" ?(?=[,.;]|$)", ""),
    # drip
    ("drip.length", ("length",), rf"(?:^|[.;\n,] ?)(?:the |our |each |every |all )?(?:drip ?)?(?:lines?|laterals?)(?: each)?(?! at\b){_F}", r" ?(?:$|[,.;)\n]|long\b|each\b)", _DRIP),
    ("drip.length", ("length",), rf"\b(?:row|line|lateral)s?'? lengths?{_F}", r"", _DRIP),
    ("drip.hours", ("time",), rf"\b(?:may|can|could) (?:run|work|drip|water|irrigate)(?: only| at most| for| up to)*{_F}", r" ?(?:$|[.,;)\n]|a day\b|daily|per day)", _DRIP),
    ("drip.need", ("bare",), rf"\b(?:crop (?:coefficient|factor)|kc){_F}", r"(?! ?(?:mm|m\b|%|l\b|ha|bar))", _DRIP),
    ("beds.area", ("area",), rf"\A(?![\s\S]*\b(?:house|roof|barn|hall|cabin|hangar|shed)\b)[\s\S]*{_F}", r",? ?(?:all |on |with |under |by |of )*drip(?:ped|pers?| ?lines?| irrigat\w+)?\b", ""),
    ("beds.area", ("area",), rf"(?:^|[.;\n]) *(?:\w+ )?{CROPS}(?: on)?{_F}", r"(?! ?(?:roof|of (?:roof|land|forest)))", _DRIP),
    ("water.yield", ("flow",), rf"\b(?:i|we|you) (?:get|have|collect|catch|measure|measured|timed){_F}", r" ?(?:out of|off) (?:the|our) (?:spring|well|bore\w*|seep|source|hillside)\b", ""),
    ("water.yield", ("flow",), rf"\b(?:ours|mine) (?:only |just )?(?:gives|makes|yields|has|delivers|runs){_F}", r"", ""),
    ("water.yield", ("flow",), rf"\b(?:but|though|and) (?:i|we) (?:only |myself |just )?(?:measured|timed|got|counted){_F}", r" ?(?:$|[.,;)\n]|in \w+)", r"\b(?:springs?|wells?|bore\w*)\b"),
    ("water.yield", ("flow",), rf"\b(?:well|bore ?hole|bore|spring) with{_F}", r"(?! ?(?:pump|at the))", ""),
)  # fmt: skip
