"""Rows for ``enquiry_direct`` and ``enquiry_words``: what a number is by the noun that it hangs on.

Tests of wells, what drips, tanks on stands, shade, the way and its height. A row is as
``enquiry_direct`` says, a row of words as ``enquiry_words`` says.
"""

from __future__ import annotations

_F = r"[ ,:=~(-]*+(?>(?:is|are|was|be|of|at|a|an|the|about|around|roughly|some|only|just|approx\.?|ca\.?|nearly|almost|up to|maybe|perhaps|say|it is|it's|which is|that is|over|exactly)(?![a-z])[ ,:=~(-]*+)*+$"
_ENDS = r" ?(?:$|[,.;)\n]|and\b|or so\b)"
_WELL = r"\b(?:wells?|bore ?holes?|bore)\b"
_DRIP = r"\bdrip|\bemitters?\b|\bdripline"
_FLOW = (
    r"[\d.]+ ?(?:gpm|gph|lpm|l/s|l/min|l/h|m[3]/h|lit(?:re|er)s (?:a|per) (?:minute|second|hour))"
)
_HOME = r"(?:house|cabin|home|cottage|hut|kitchen|farm|barn|lodge|trailer|chalet|school|stable|dwelling|farmhouse)"
_GOAL = rf"(?:{_HOME}|villages?|hamlet|settlement|community|clinic|camp|mission|hospital|plots?|gardens?|fields?|troughs?|paddock|taps?|tap ?stands?|houses|huts|cottages)"
_SOURCE = r"springs?|source|creek|stream|river|brook|pond|lake|well|bore ?hole|bore|pump|intake"
_STAND = r"(?:stand|tower|platform|scaffold|stilts|frame|trestle|legs)"
_VESSEL = r"(?:drum|barrel|tank|tote|ibc|cistern|reservoir)s?"
_PEOPLE = (
    r"\b(?:people|persons?|pupils|children|students|guests?|residents|villagers|users|adults?)"
)
_DRAWN = r"\bbail\w*|\bpumped (?:it )?out|\bemptied|\bdrew\b"
_TREES = r"(?:trees?|beech(?:es)?|spruces?|firs?|pines?|oaks?|birch(?:es)?|walnuts?|poplars?|willows?|maples?|cedars?|shade|shades|shaded|shadows?|ridge|chimney)"
_CROPS = (
    r"(?:lettuces?|tomatoes|strawberr(?:y|ies)|raspberries|blueberries|currants|peppers|onions|garlic|potatoes|cabbages?|melons|cucumbers|carrots|olives|almonds|apples|pears|peaches|cherries|plums|citrus|lemons|oranges|vines"
    r"|grapes|vegetables|veg|berries|maize|corn|beans|squash|pumpkins|herbs|flowers|roses|lavender|hops|asparagus|salad|greens|saffron|hazelnuts|walnuts|avocados|kiwis)"
)
_OF_LINES = r"(?:drip ?-?lines?|drip|lines?|laterals?|rows?|tapes?)"

Row = tuple[str, tuple[str, ...], str, str, str]
FIRST: tuple[Row, ...] = (  # before all others
    # wells that were tried, and what hangs in them
    ("well.pumping", ("length",), rf"\b(?:pulls?|draws?|drops?|goes|falls?|sinks?)(?: it)?(?: down)? to{_F}", r" ?(?:when|while|as) (?:(?:we|i|they|it|you|the pump)(?:'re| is| are)? (?:pump|run|draw)\w*|pumping)", _WELL),
    ("well.static", ("length",), rf"\b(?:water|level)(?: level)? (?:stands|sits|rests|lies|is)(?: at)?{_F}", r"(?=[^.;\n]{0,18}\b(?:pulls|draws|drops|goes|falls|sinks)(?: it)?(?: down)? to [\d.]+ ?[a-z']* (?:when|while|as) (?:we|i|they|it|the pump|pumping))", _WELL),
    ("well.tested", ("flow",), rf"\b(?:when|while|as) (?:we|i|they|he|the driller) (?:pumps?|draws?|takes?)(?: it)?(?: at)?{_F}", "", _WELL),
    ("well.tested", ("flow",), rf"\btest\b[^;\n]{{0,30}}\b(?:gave|made|yielded|delivered|did){_F}", r" ?(?:with|and) (?:the )?(?:water|level)\b[^.;\n]{0,14}\d", _WELL),
    ("well.pumping", ("length",), rf"\b{_FLOW},? with(?: the)? (?:water|level)(?: level| standing| then)*(?: at)?{_F}", r"(?! ?(?:away|above|long))", _WELL),
    ("well.pumping", ("length",), rf"\bat {_FLOW},?(?: the)?(?: water)? level(?: (?:drops|goes|falls|stands|sits|is))?(?: to| at)?{_F}", r"(?! ?(?:away|above|long))", _WELL),
    ("well.static", ("length",), rf"\b(?:water|level)(?: level)? at rest{_F}|\bat rest,? (?:the )?(?:water|level)(?: level)?(?: stands| sits)?{_F}", r"(?! ?(?:away|above|long))", _WELL),
    ("pump.height", ("length",), rf"\bpump (?:(?:is|sits|hangs|set|hung|lies) )*(?:in|down) (?:the|our|a|my) (?:\w+ )?(?:well|bore ?hole|bore)(?: (?:at|to|on)){_F}", r" ?(?:$|[.,;)]|depth\b|deep\b|down\b|and\b)", ""),
    ("pump.height", ("length",), rf"\bsubmersible\b(?:(?!\b(?:house|tank|cable|switch)\b)[^;\n]){{0,40}}, (?:set|hung|hanging)(?: at| to)?{_F}", r" ?(?:below|under|down|deep|$|[,.;)])(?! ?(?:psi|bar))", ""),
    ("well.bore", ("length",), rf"\b(?:case|casing|rings?|shaft|dug|dug well|deep)\b(?:(?!\b(?:pipe|pump|line|tank)\b)[^;\n]){{0,30}}{_F}", r" ?inside\b(?! (?:the|an?|it|our|dia))", _WELL),
    ("well.bore", ("length",), rf"\b(?:rings?|shaft|well|bore|bore ?hole|casing|case)(?:'s)? (?:(?:inner|inside|internal) )?diameter{_F}", "", _WELL),
    ("well.depth", ("length",), rf"\b(?:wells?|bore ?holes?|bore)(?: itself)? (?:isn't|is not|wasn't|was not){_F}", r" ?(?:$|[,.;)\n]|deep\b)", ""),
    ("well.bore", ("length",), rf"\bcased (?:in|with|to){_F}", r"(?! ?(?:deep|down|depth))", ""),
    ("well.drawn", ("volume",), rf"\b(?:bailing|bailed(?: out)?|pumped out,?(?: it was)?|drawing off){_F}", r"(?! ?(?:a|per) )", _WELL),
    ("well.drawn_for", ("time",), rf"\b(?:bailing|drawing|pumping out)\b[^;\n]{{0,30}}\b(?:took|takes|lasted){_F}", "", _WELL),
    ("well.drawn_for", ("time",), rf"\bafter{_F}", r" ?(?:(?:it|the pump|she) (?:sucks?|draws?|pulls?) air|(?:it|the well) (?:runs|is|was|ran) (?:dry|empty))", rf"\A(?=[\s\S]*(?:{_DRAWN}))[\s\S]*{_WELL}"),
    ("well.steady", ("flow",), rf"\b(?:comes?|came|runs?|ran|flows?|flowed) back(?: in)?(?: again)?(?: at| with){_F}", "", rf"\A(?=[\s\S]*(?:{_DRAWN}))[\s\S]*{_WELL}"),
    ("well.steady", ("flow",), rf"\b(?:then|afterwards?|after that){_F}", r" ?(?:came|comes|ran|runs|flowed|flows) (?:back )?in\b", rf"\A(?=[\s\S]*(?:{_DRAWN}))[\s\S]*{_WELL}"),
    ("well.static", ("length",), rf"\b(?:wells?|bore ?hole|bore)[ ,:-]+static(?: (?:water )?level)?{_F}", r"(?! ?(?:away|above|long|head))", ""),
    ("water.level", ("length",), rf"\b(?:wells?|bore ?hole|bore)[ ,:-]+(?:standing|rest(?:ing)?)(?: (?:water )?level)?{_F}", r"(?! ?(?:away|above|long|head))", ""),
    # levels of water
    ("water.level", ("length",), rf"(?:^|[.;\n] ?)(?:the |our )?(?:river|creek|stream|pond|lake|water|brook)(?: is| lies| sits)?{_F}", r" ?(?:under|below|lower than|beneath) (?:the |our |my )?pump\b(?! ?house)", ""),
    ("water.level", ("length",), rf"\bwater\b[^.;\n]{{0,25}}\d ?(?:m|ft|feet|met(?:re|er)s)\b[, ]+(?:(?:and|but|at|the|its) )*(?:lowest|low|minimum|min|worst){_F}", r"(?! ?(?:\w+ )?(?:pressure|temperature))", ""),
    ("water.level", ("length",), "", r" ?(?:straight |right )?down to (?:the )?water\b(?! (?:tank|trough|meter|main|line|heater))", rf"\A(?![\s\S]*\b(?:lake|river|creek|stream|brook|pond)\b)[\s\S]*(?:{_WELL}|\bjet\b|\bsuction\b|\bhole\b)"),
    ("water.level", ("length",), rf"(?:^|[,;.:(] ?|\b(?:with|has|is|and|the|its|find|found) )water(?: level)?(?: is| stands| sits)? down{_F}", r"(?! ?(?:the (?:hill|slope|road)|from the (?:house|cabin)|away|pipe))", ""),
    ("water.level", ("length",), r"\bpump\b(?:(?!\b(?:house|tank|line)\b)[^;\n]){0,40}$", r" ?(?:over|above) (?:the )?(?:low|lowest|summer|normal) water\b(?! (?:tank|heater))", ""),
    # what drips
    ("drip.hours", ("time",), rf"(?:^|[.;\n] ?)(?:i|we) (?:water|irrigate|drip)(?: it| them)?(?: for)?{_F}", r" ?(?:$|[.,;\n])", _DRIP),
    ("drip.warmest", ("temperature",), rf"\b(?:heat|temperature|air|july|august|summer)\b[^.;\n\d]{{0,20}}{_F}", r" ?(?:of |at |the )*max", _DRIP),
    ("drip.length", ("length",), rf"(?:^|[.;\n] ?)(?:the|each|every|one|my|our)(?: drip)? (?:lines?|laterals?)(?: (?:has|have|measures?|goes|is|are))+{_F}", r" ?(?:$|[.;\n]|long\b)", r"\bdrip\w*\b[^\n]{0,120}\brows\b[^.;\n]{0,30}[.;\n] ?(?:the|each|every|one|my|our)(?: drip)? (?:lines?|laterals?)\b"),
    ("drip.pressure", ("pressure",), rf"\b{_OF_LINES} (?:starts?|begins?)(?: off)?(?: at| with){_F}", "", _DRIP),
    ("drip.pressure", ("pressure",), rf"\b(?:at|in) the (?:garden|field|plot|beds|orchard|vineyard|greenhouse|tunnel|patch|manifold),?(?: and| at| with)*{_F}", r" ?(?:$|[.,;)\n])", _DRIP),
    ("drip.pressure", ("pressure",), "", rf" ?(?:pressure )?(?:regulator|reducer|prv)\b[^.;\n]{{0,20}}\b(?:before|ahead of|in front of|for|on|to) (?:the )?(?:{_OF_LINES}|beds|manifold|zones?)\b", r"\bdrip|\bemitters?\b|\btapes?\b"),
    ("drip.hours", ("time",), rf"\b(?:drip|irrigate)(?: it| them| everything)?(?: [a-z]+){{0,3}}? for{_F}", r"(?! ?(?:ago|to fill|now))", ""),
    ("drip.daily", ("daily",), rf"\bwater (?:for|to) (?:it|them|this|that|irrigation|(?:the )?(?:drip|beds|plot|field|crop))\b[^.;\n\d]{{0,12}}{_F}", "", _DRIP),
    ("beds.area", ("area",), rf"(?:^|[.;\n] ?)(?:my |our |the |some )?{_CROPS}(?: on| over)?{_F}", r"(?! ?(?:roof|of (?:roof|land|forest)))", _DRIP),
    ("beds.area", ("area",), "", rf",? ?of (?:[a-z]+ ){{0,2}}?{_CROPS}\b", rf"{_DRIP}|\birrigat|\bwater (?:the|my|our|them)\b"),
    ("beds.area", ("area",), "", r" ?(?:in all|in total|altogether|all told)(?= ?[.,;\n]|$)", rf"\A(?![\s\S]*\b(?:roof|barn|hall)\b)[\s\S]*(?:{_DRIP})"),
    ("beds.area", ("area",), "", r",? ?(?:all (?:of it |of this )?|every bit |the whole (?:lot|thing) )(?:is |are )?(?:on|under|with|by) drip\b", ""),
    ("drip.dripper", ("flow",), "", r"[ -]*(?:drip )?(?:emitters?|drippers?)\b", ""),
    ("beds.area", ("area",), r"(?:^|[.;\n] ?)(?:we(?:'re| are| have| run| farm| grow| work)|it's|it is|i (?:have|run|farm|grow))(?: on)?(?: an?)? ?$", r"[ -]?(?:csa|market garden|farm|garden|plot|orchard|vineyard|field|of )", r"\bdrip (?:everywhere|throughout|all over|on (?:all|everything))\b|\b(?:everything|all)(?: is)? on drip\b"),
    # tanks
    ("tank.volume", ("volume",), rf"(?:^|[.;\n] ?)(?:the )?reservoir(?: is| holds| has| of)?{_F}", _ENDS, r"\b(?:up|m|ft|feet|met(?:re|er)s) to (?:the |a |our )?reservoir\b"),
    ("store.inflow", ("flow",), rf"\b(?:spring|stream|seep|ram|brook) (?:fills|feeds|tops(?: up)?)\b[^.;\n\d]{{0,30}}\bwith{_F}", "", r"\b(?:cistern|tank|reservoir)\b[^.;\n]{0,50}\b(?:spring|stream|seep|ram|brook) (?:fills|feeds|tops)"),
    ("tank.level", ("length",), rf"(?:^|[.;\n] ?)(?:it|the (?:tank|barrel|tote|ibc))(?: itself)? (?:stands|sits|is|lies){_F}", r" ?(?:above|higher than) (?:the |our )?(?:lowest |highest |top |first |last )?(?:plots?|beds?|gardens?|taps?|rows|field|house|cabin)\b", r"\btank\b(?:(?!\bpump\b)[^.\n])*\. ?(?:it|the tank) (?:stands|sits|is|lies)\b"),
    ("tank.level", ("length",), rf"\b{_VESSEL} (?:(?:is|sits|stands|set|put|up) )*(?:on|atop)(?: (?:an?|its|the))?{_F}", rf"[ -]?(?:high |tall )?{_STAND}\b", ""),
    ("tank.level", ("length",), rf"\b{_STAND} (?:of|that is|about){_F}", r" ?(?:$|[.,;)]|high\b|tall\b)", rf"\b{_VESSEL}\b[^.;\n]{{0,50}}\bon (?:an?|the|its) (?:\w+ )?{_STAND}\b"),
    ("tank.level", ("length",), rf"\b{_STAND},?{_F}", r" ?(?:high|tall)\b", rf"\b{_VESSEL}\b[^.;\n]{{0,50}}\bon (?:an?|the|its) (?:\w+ )?{_STAND}\b"),
    ("tank.volume", ("volume",), "", rf"[ -]?(?:\w+ )?{_VESSEL} (?:(?:is|sits|stands|set|up) )*(?:on|atop)(?: (?:an?|the|its))? [^.;,\n]{{0,20}}{_STAND}\b", ""),
    ("tank.volume", ("volume",), rf"\b(?:push|pump|lift|raise|send)(?:es|s|ing)?\b[^;\n]{{0,60}}\bup\b[^;\n]{{0,30}}\binto{_F}", r"[ -]?(?:\w+ )?(?:tank|reservoir|tote)\b", ""),
    ("store.volume", ("volume",), "", r"[ -]?(?:\w+ )?tank in (?:the|our|a) (?:cellar|basement|garage|crawl ?space)\b", r"\bfrom (?:there|it|which|that)\b[^.;\n]{0,25}\b(?:pump|pressure set|booster|set)\b"),
    ("store.volume", ("volume",), "", rf"[ -]?(?:\w+ )?(?:{_VESSEL})?,? ?(?:with |and )?(?:the|an?|our) pump (?:alongside|(?:is |stands |sits )?(?:beside|next to|by|near) it)\b", r"\b(?:tank|cistern|reservoir|pond|basin)\b"),
    # pressures
    ("pressure_tank.precharge", ("pressure",), rf"\b(?:pressure (?:tank|vessel)|vessel|accumulator|bladder)\b[^;\n]{{0,50}}\bpre-?set(?: to| at)?{_F}", "", ""),
    ("pressure_tank.precharge", ("pressure",), rf"\bswitch\b[^;\n]{{0,60}}\btank(?: at| with){_F}", r" ?(?:$|[.,;)\n]|pre-?charge|of air)", ""),
    ("pump.set", ("pressure",), "", r" ?(?:is |was )?set (?:on|at) (?:the|our|my) pump\b(?! ?house)", ""),
    # what is used, and power
    ("use.daily", ("daily",), "", r",? ?\(?(?:metered|by (?:the|our|my) (?:water )?meter|on the meter|according to the meter)\b", ""),
    ("use.each", ("daily",), rf"{_PEOPLE},?(?: each)? at{_F}", r"(?! ?(?:in all|in total|total|altogether|together))", ""),
    ("hot.volume", ("volume",), rf"\b(?:water ?heater|boiler|hot[ -]water (?:tank|cylinder|heater)|geyser){_F}", r" ?(?:per|in each|for each|each) (?:tent|cabin|house|unit|hut|cottage|room|flat)\b", ""),
    ("power.cable", ("length",), "", r" ?of (?:\d+[ -]?(?:gauge|awg|ga|mm2)\b )?(?:(?!heat)[a-z]+ ){0,2}?(?:wire|cable|flex)\b(?! (?:fenc\w+|mesh))", ""),
    ("power.shade", ("percent",), rf"(?:^|[.;\n])(?:(?!\b(?:inverter|controller|batter\w+|cables?|wires?|pumps?|pipes?|line|filter|leak\w*)\b)[^.;\n])*\b(?:los[et]|loses|losing|costs? (?:us|me)|takes?)(?: us| me)?{_F}", r"(?! ?(?:of (?:the |our |its )?(?:pressure|water|flow|head)|pressure|water|to (?:leak|friction|evapor)\w*))", rf"\A(?=[\s\S]*\b(?:panels?|solar|pv|array|modules?)\b)[\s\S]*\b{_TREES}\b"),
    ("pipes.hottest", ("temperature",), rf"\b(?:pipe|line|poly|hose|it)\b[^;\n]{{0,80}}\b(?:hot|warm|baking|burning)\b[^.;\n\d]{{0,20}}{_F}", r"(?! ?water)", r"\b(?:laid|lying|lies|on top|black|sun|surface)\b"),
    ("water.temperature", ("temperature",), rf"(?:^|[.;\n] ?)(?:the |our )?(?:brook|stream|creek|spring|lake|river|pond|well)(?: water)?(?: is|'s)(?:\b(?:(?!\b(?:heater|air|tank|pipe)\b)[^.;\n]){{0,30}}(?:\band|,))?{_F}", r" ?(?:now|in|at|all year|$|[.,;])", ""),
    ("place.altitude", ("length",), rf"(?:^|[.;\n] ?)(?:our |the |a |my )?(?:cabin|hut|lodge|house|place|farm|chalet) (?:at|in|on|near) [a-z][\w' -]{{2,25}},{_F}", _ENDS, ""),
    # the way
    ("way.length", ("length",), rf"(?:^|[.;,\n] ?|\band )(?:the |our )?way(?: is|:)?{_F}", r" ?(?:$|[,.;)\n]|long\b)", ""),
    ("way.length", ("length",), rf"\b(?:up|down|rise|climb) (?:and|then|but){_F}", r" ?(?:over|across)(?= ?[,.;)\n]|$)", ""),
    ("way.length", ("length",), rf"(?:^|\d ?(?:m|ft|feet|met(?:re|er)s)[ ,]) ?(?:over|along|through|across){_F}", r" ?of [^.;\n]{0,18}\b(?:poly|pipe|pe|pvc|hdpe|mdpe|line|hose|pex)\b", ""),
    ("way.length", ("length",), rf"\b{_HOME}\b(?:(?!\b(?:tank|road|neighbou?r)\b)[^;\n]){{0,40}}(?:\bup|\bhigher|\blower|\bdown|\buphill|\b(?:above|below|(?:higher|lower) than)(?: the| our| my| it)?(?: [a-z]+)?),{_F}", r" ?(?:$|[.;)\n])", r"\bpump|\bwell|\bspring|\bbore|\bcreek|\bstream"),
    ("way.length", ("length",), rf"(?:^|[.;\n] ?)(?:the |our )?(?:shop|workshop|office|studio|packing shed|wash ?house|bunk ?house|club ?house|parlou?r|hall|main building){_F}", r" ?(?:away )?from (?:the |our )?(?:well ?head|well|spring|pump|bore\w*)\b", ""),
    ("way.length", ("length",), rf"\b(?:well|spring|bore\w*)\b[^;\n]{{0,50}}\band (?:is|lies){_F}", rf" ?(?:away )?from (?:the|our|my) {_HOME}\b", ""),
    ("way.climb", ("length",), rf"\b{_HOME} (?:is |lies |stands )?(?:up|higher){_F}", r" ?(?:$|[,.;)\n])", ""),
    ("way.climb", ("length",), rf"\b(?:arrives?|comes? out|ends(?: up)?|gets (?:here|to us)|reaches us)\b[^.;\n\d]{{0,12}}{_F}", rf" ?(?:lower|higher|further down)(?: (?:in|at) (?:the|our|my) {_HOME}\b)?(?= ?[,.;)\n]|$)", ""),
    ("way.climb", ("length",), rf"\b(?:to|at|for) (?:the|our|my) (?:[a-z]+ )?{_GOAL},? ?(?:(?:which|that|and it) )?(?:lies|stands|sits|is|being){_F}", r" ?(?:lower|further down|below|higher)(?: down| up)?(?= ?[,.;)\n]|$)", r"\bspring|\bsource|\bintake|\bstream|\bcreek|\btank|\bbox|\breservoir"),
    ("way.climb", ("length",), rf"(?:^|[.;,\n] ?){_HOME} ?\+ ?$", _ENDS, r"\bpump|\bwell|\bspring|\bbore"),
    ("way.climb", ("length",), rf"\b(?:lift|rise|climb)(?: is| of|:)?{_F}", rf" ?from (?:the|our|my) (?:{_SOURCE}) (?:up )?to (?:the|our|my) {_GOAL}\b", ""),
    ("way.climb", ("length",), rf"\bfrom (?:the |our )?(?:{_SOURCE}) (?:until|to|till|up to) (?:the |our |my )?{_GOAL}\b[^.;\n\d]{{0,20}}{_F}", r" ?(?:upwards?|uphill)\b", ""),
    ("way.climb", ("length",), r"[,;] ?\+ ?$", _ENDS, r"\b(?:pipe|line|poly|pe|pvc)\b"),
    ("way.climb", ("length",), "", r" ?up (?:the|an?) (?:steep )?(?:bank|cliff|slope|hillside|hill|rise)\b(?=[^.;\n\d]{0,12}[, ][\d.]+ ?(?:m|ft|feet|yards?|yd|met\w+) (?:of|away|along|from|back|long)\b)", ""),
)  # fmt: skip
LAST: tuple[Row, ...] = (  # after all others
    ("drip.rows", ("length",), "", r"[ -]rows?\b(?! (?:long|of|in length))", _DRIP),
    ("water.yield", ("flow",), rf"\b(?:log|tag|well report|driller's (?:paper|report|log)) (?:only )?(?:says|shows|gives|reads){_F}", "", ""),
)  # fmt: skip

_STANDS = (
    r"(?:cellar|basement|shed|garage|pump ?-?house|hut|barn|utility room|crawl ?space|workshop)"
)
WORDS = (
    ("power.source", "sun", 3, r"\b(?:shall|will|must|has to|is to|it'?s to|should) be the sun\b|\bthe sun (?:must|will|shall|has to|is to|should) (?:make|give|do|drive|supply|power|deliver|run|bring)\b(?! (?:it )?(?:hot|warm))|\b(?:i|we)(?:'ve)? (?:only|just) (?:got |have )?the sun\b(?! (?:is|in|on|at|for|sets|comes))|\b(?:i|we)(?:'ve got| have| got) (?:only|just|nothing but) the sun\b(?! (?:in|on|at|for))"),
    ("power.source", "none", 3, r"\b(?:no|isn'?t any|aren'?t any|is not any|without|neither) pumps?(?:,| or| nor| and)+ (?:no |any )?(?:power|electricity|electric|mains|current)\b(?! (?:tools|line))"),
    ("pump.relief", "yes", 3, r"\brelief valve (?:is |was )?(?:fitted|present|installed|in place|built in|mounted)\b(?! (?:on|at|to|in) (?:the|our|my) (?:\w+ )?(?:heater|boiler|cylinder|tank|geyser))"),
    ("drip.holds", "steady", 3, r"(?:^|[.;,\n] ?)compensating(?= ?[,.;\n])"),
    ("store.fills", "always", 3, r"\b(?:tank|cistern|reservoir)\b[^.;\n]{0,12}\b(?:filled|fed) by (?:an?|the|our) (?:\w+ )?(?:spring|stream|seep|brook),? (?:always|constantly|all the time|day and night|round the clock|without a? ?stop)\b"),
    ("pipes.held", "buried", 3, r"\b(?:pipe|poly|line|hose|pe|pvc|hdpe|mdpe|pex|copper|galvani[sz]ed)\b(?:,| is| lies| all| goes)* (?:under the ground|in the (?:ditch|trench) (?:that |which )?(?:we|i|he|they)\b[^.;\n]{0,12}\bdug)\b"),
    ("pump.control", "switch", 3, r"\b(?:an?|the|its)(?: own)? switch,? (?:that|which) (?:starts|stops|turns|brings|cuts|kicks|switches|comes)\b"),
    ("pump.placement", "out", 3, r"\bpump (?:is |stands |sits )?(?:alongside|beside (?:it|them))(?= ?(?:[,.;)\n]|$)| (?:holds|keeps|gives|runs|pushes|sends|takes|draws)\b)"),
    ("pump.placement", "out", 3, rf"\b(?:multi-?stage|centrifugal)(?: pump| set| one| unit)? (?:is |sits |stands )?(?:in|under) (?:the|our|a|my) {_STANDS}\b"),
    ("pump.works", "centrifugal", 3, r"\bpump (?:with|has) an? (?:\w+ )?impeller\b|\bimpeller[ -](?:type )?pump\b"),
    ("pipes.held", "laid", 3, r"\b(?:laid|lying|lies|strung|stretched|pulled|thrown|dragged|snaked|rolled)(?: out| just)?(?: on top(?= ?[,.;\n]|$)| (?:along|across|over) the (?:bare )?ground\b)"),
    ("power.source", "none", 3, r"\bno (?:mains|grid|gas|road|phone|water|mains water)(?:,| and| or| nor)+ (?:no )?(?:electricity|power|electric)\b"),
    ("power.source", "grid", 3, r"\b(?:power|electricity) (?:is|comes from|is from) (?:the )?(?:grid|mains)\b(?! (?:too|not))"),
    ("drip.filter", "yes", 3, r"\bfilter(?: is|'s) (?:already )?(?:in|in place|in there|fitted|installed)(?= ?[.,;\n]|$)"),
)  # fmt: skip
