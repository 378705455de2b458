"""Doubts for ``enquiry_doubts`` of ways, heights, levels, wells, yields and places.

A row is (paths, words of the sentence before the number, words after it, the path that it is
instead or "", the sign it then has).
"""

from __future__ import annotations

_WAYS = r"way\.(?:length|climb)"
_LONG = r"way\.(?:length|climb)|tank\.level|pump\.height|water\.level|well\.(?:depth|static|pumping|bore)"
_SOURCE = r"(?:spring ?-?house|spring box|spring|source|intake|weir|creek|stream|burn|brook|pond|dam|lake)"
_HOME = r"(?:house|cabin|home|cottage|hut|barn|lodge|farm|place|camp|garden|yurt|chalet|us|here)"
_FLOW = r"(?:gpm|gph|lpm|lps|l ?/ ?(?:min|s|h|m)|l/hr|m[3³]/h|lit(?:re|er)s? (?:a|per) (?:minute|hour|second)|gallons? (?:a|per) (?:minute|hour))"
_KIN = r"(?:neigh?bou?r|brother|sister|friend|cousin|uncle|aunt|father|mother|dad|mum|mom|son|daughter|parent|folk|in-law)s?(?:'s|s'|')?"
_AWAY = r"[\d.,]+ ?(?:m|ft|feet|met(?:re|er)s|yards|km|miles?)\b"
_BUT_HOME = r"(?:(?!\b(?:house|cabin|cottage|hut|tap|kitchen) (?:is|sits|stands|lies)\b)[^.;])"

MISTAKEN: tuple[tuple[str, str, str, str, float], ...] = (
    # what is somebody else's, withdrawn or denied
    (r"(?:way|well|water|tank|pump|suction)\.\w+", rf"\b{_KIN}(?:'s|s'|')? (?:hole|bore ?well|tube ?well|windmill|dam|pond|intake|supply|source)\b[^.;]*$", "", "", 1),
    (r"(?:way|well|water|tank)\.\w+", rf"\b{_KIN}\b[^.;]{{0,25}}\bwhose (?:house|place|cabin|farm|well|spring|land) [^.;]{{0,20}}$", "", "", 1),
    (r"(?:well|water|tank|pump|way)\.\w+", r"\b(?:its|their) own (?:one )?(?:done|drilled|dug|put in|made|bored|sunk)\b[^.;]*$", "", "", 1),
    (r"(?:way|well|water\.(?!kind)|tank|pump|suction|fall)[\w.]+", r"\b(?:ignore|forget|disregard|scrap|scratch|never mind|strike) (?:(?:what (?:i|we) (?:wrote|said|told you)(?: before| earlier| last time)? about|everything about|all about|the bit about|my) )?(?:the |that |our |an? )*$", "", "", 1),
    (r"water\.yield|well\.\w+", r"\bold (?:well|bore ?hole|bore|spring)\b[^.;]{0,40}$", r"[^.;]{0,60}\b(?:capped|filled in|abandoned|gone dry|went dry|caved in|closed (?:up|off)|collapsed|sealed|forget (?:that|it))\b", "", 1),
    (r"water\.yield|water\.level|well\.\w+", r"\b(?:report|survey|hydrologist|map|log) [^.;]{0,25}\b(?:subdivision|area|region|county|valley|district|development|estate|neighbou?rhood)\b[^.;]{0,30}$", "", "", 1),
    (r"(?:way|well|water|tank|pump)\.\w+", "", r"[ -]*(?:something|odd|and something)\b", "", 1),
    # yields
    (r"water\.yield", "", r" ?(?:(?:is|are|was) )?(?:leaking|of leak\w*|lost|missing|dripping|running away)\b", "", 1),
    (r"water\.yield", r"\bleak\w*\b[^.;]{0,20}$", "", "", 1),
    (r"water\.yield", r"^(?:(?!\b(?:spring|well|bore\w*|source|stream|creek|gives|makes)\b)[^.;])*\b(?:comes|arrives|getting|get|reaches)(?: now)?(?: only| just| about)+ $", r",? (?:(?:and|but) )?(?:i |we )?(?:want|need|wants|needs)(?: about| at least)? \d", "", 1),
    (r"water\.yield", r"¤+,? (?:it|the spring|she|the well|the source)(?: still)? (?:ran|gave|made|was|did|yielded|had|flowed)[^.;\d]{0,12}$", "", "", 1),
    (r"water\.yield", "", r"(?: (?:well|spring|bore\w*))?,? (?:on a good day|in a (?:good|wet) (?:year|season|spell)|at (?:its|the) (?:very )?best)\b(?=[^.;]{0,3}[,;.] ?[^.;]{0,60}\b(?:dry|drought|summer|figure|count))", "", 1),
    (r"water\.yield|pump\.most_flow", "", rf" ?(?:@|at) ?\d[\d.]* ?(?:'|ft|m|feet|psi|bar|met\w+)?[ ,;]+\d[\d.]* ?{_FLOW}? ?(?:@|at) ?\d", "", 1),
    (r"water\.yield", r"\bbefore (?:i|we|he|they) (?:changed|replaced|cleaned|cleared|moved|fixed|rebuilt|dug)\b[^.;]*\bgave\b[^.;]{0,8}$", "", "", 1),
    (r"water\.yield", r"\b(?:was|gave|ran|made|used to (?:be|give|run|make))(?: me| us)? (?:about )?$", r" ?when (?:it was |we |i )?(?:laid|new|built|installed|first|put in|dug|drilled|moved|bought|came)\b", "", 1),
    (r"way\.climb", r"\b(?:climbs|rises|goes up) $", r" ?(?:up )?(?:first )?and then (?:falls|drops|goes down|comes down)\b", "", 1),
    # points of a curve, sizes of things, what a pressure is
    (_LONG, rf"\b(?:curve|label|plate|sticker|table|chart|catalogue|leaflet|paper|brochure|rated|marked|stamped)\b[^\n]*?\d ?{_FLOW}[ ,:=-]*(?:@|at|against|to|for)? ?$", "", "", 1),
    (_LONG, rf"\d ?{_FLOW}[ :=@-]+(?:at )?\d[\d.]* ?(?:m|ft|feet|'), ?\d[\d.]* ?(?:{_FLOW})?[ :=@-]+(?:at )?$", "", "", 1),
    (_LONG, "", r",? ?(?:which )?(?:is|gives|makes|equals|means|=) (?:about |only )?[\d.]+ ?(?:psi|bar|kpa|pounds)\b", "", 1),
    (r"pump\.height", r"\b(?:shuts?|cuts?|turns?|switch\w*|kicks?|comes?|goes) (?:it )?(?:back |up )?(?:on|off|in|out|back|up)(?: again)? (?:at|to|around) $", "", "", 1),
    (r"pump\.height", r"(?:^|[.,;] ?)(?:the |our |my )?(?:well|bore ?hole|bore)(?: is| itself is)? (?:about |only )?$", r" ?(?:$|[,.;)])", "well.depth", 1),
    (r"pump\.height", r"\b(?:psi|pressure (?:is|set)|switch(?:es)?|cut[ -]?(?:in|out)s?)\b[^.;,\n]{0,25}$|\bcut[ -]?(?:in|out)s?\b[^.;\n]{0,35}$", "", "", 1),
    (r"well\.bore", r"\b(?:submersible|pump|motor)(?:'s)? (?:is|measures) (?:about )?$", "", "pump.diameter", 1),
    (r"water\.level", r"\b(?:psi|bar|gauge|pressure|shower|hoses?|taps?)\b[^.;]*\b(?:drops|falls|goes|sinks)(?: down)? to (?:about )?$", r"(?! ?(?:m|ft|feet|met\w+)\b)", "", 1),
    (r"water\.level", r"\b(?:bath|bathroom|shower|sink|kitchen|tap)(?: is| sits)?,? (?:about )?$", r" ?(?:above|higher than|over) (?:the )?pump\b", "way.climb", 1),
    (r"water\.level", r"\bwater(?: level| surface)?(?: is| stands| sits)? (?:about |always |at least )*$", r" ?(?:above|over|higher than) (?:the |its |our )?pump\b", "water.level", 1),
    (r"water\.level", r"\b(?:keep|set|heat\w*|hold|have) (?:the )?(?:hot )?water (?:at|to) (?:about )?$", "", "", 1),
    (r"water\.level|way\.\w+", r"\b(?:free|clear)? ?$", r" ?(?:free|clear) (?:off|of|from) (?:the )?bottom\b", "well.clear", 1),
    # heights
    (r"way\.climb", rf"\btank\b(?! (?:down )?to\b){_BUT_HOME}*\b(?:uphill|higher|up the hill)(?: of (?:the |our )?{_HOME}| than (?:the |our )?{_HOME})?(?: by)? (?:about )?$", "", "tank.level", 1),
    (r"way\.climb", r"\d ?(?:m[3³]|cubic met\w+|lit\w+|l|gal\w*)(?: \w+)? (?:chamber|basin|vat|container|cistern|tote|ibc|drum)\b[^.;]{0,30}$", rf" ?(?:above|higher than|over) (?:the |our |my )?{_HOME}\b", "tank.level", 1),
    (r"way\.climb", rf"\b{_SOURCE}(?: is| lies| sits| about| some)* {_AWAY}(?: off| away| distant| back| out| from (?:the |our )?{_HOME})*,? (?:and|but)\b[^.;\d]{{0,30}}$", rf" ?(?:higher|up|above|uphill)(?: up)?(?: (?:than )?(?:the |our )?{_HOME})?(?= ?[,.;)\n]|$)", "way.climb", -1),
    (r"way\.climb", rf"^[^.;\d]{{0,25}}\b{_SOURCE}\b(?:(?!\b{_HOME}\b)[^.;\d]){{0,20}}$", rf" ?(?:vertical feet |vertical )?(?:above|over|higher than|up from) (?:the |our |my |[a-z]+'s )?{_HOME}\b", "way.climb", -1),
    (r"way\.climb", rf"\bfrom (?:an?|the|our) {_SOURCE} (?:about |some |only )?$", r" ?(?:lower|further down|deeper)\b(?! than)", "way.climb", 1),
    (r"way\.climb", "", r" ?of (?:difference|fall)\b[^.;]{0,30}\b(?:goes down|in (?:our )?favou?r|downhill|downwards?)\b", "way.climb", -1),
    (r"way\.(?:climb|length)", r"\bpump (?:in|inside|on) (?:the |a |an |our |my )?(?:\w+ )?(?:shed|hut|garage|slab|bank|dock|jetty)(?: is| sits)? (?:about )?$", r" ?(?:over|above|higher than) (?:the |our )?(?:creek|stream|river|lake|pond|water|brook|dam)\b", "water.level", -1),
    (r"way\.climb|tank\.level", "", r" ?(?:hump|bump|high point|dip|rise) in (?:the|it)\b", "", 1),
    (r"way\.climb", "", r" ?(?:patio|terrace|lawn|deck|path)\b", "", 1),
    (_WAYS, r"\bno\b[^.;]{0,45}\bwithin (?:about )?$", "", "", 1),
    (r"way\.pipe", r"\b(?:sleeve|duct|conduit|culvert)\b[^.;,]{0,20}$", "", "", 1),
    (r"way\.(?:pipe|length)", r"\b(?:swears? by|says? to use|recommends?|goes? for|prefers?|favou?rs?|suggests?)(?: an?| the)? $", "", "", 1),
    (r"water\.level", r"\b(?:brings?|carr(?:y|ies)|pushes|pumps?|sends|moves|takes|delivers)(?: the)? water (?:for |over )?(?:about )?$", "", "way.length", 1),
    (r"way\.pipe", "", r" ?(?:sleeve|duct|conduit|culvert)\b", "", 1),
    # tanks that fill by a float at the end of a line are troughs; a tank on a stand
    (r"tank\.level", r"^(?!.*\b(?:storage|header|hill|holding|main|big) tank\b).*\b(?:float(?:ed)? tanks?|tanks? with (?:an? |its )?(?:float|ball)s?(?: valves?)?|trough tanks?)\b[^.;]*$", r"(?! ?(?:below|lower|down))", "way.climb", 1),
    (r"water\.level", r"\btank\b[^.;]{0,20}\b(?:stand|tower|stilts|platform|scaffold|legs)\b[^.;\d]{0,20}$", r" ?to (?:the )?water\b", "tank.level", 1),
    (r"way\.climb", r"\b(?:higher|lower|upper|highest|lowest)(?: one)? of the $", "", "", 1),
    # what is deep is a pond; floods; what a pump can; what a gauge of a house draws
    (r"water\.level", "", r" ?deep (?:in|at|when|over|behind) (?:the |our |its |my )?(?:\w+ )?(?:pond|tank|cistern|creek|stream|river|lake|dam|reservoir|pool|trough)\b", "", 1),
    (r"water\.level", r"\bfloods?\b[^.;]*$", "", "", 1),
    (r"water\.level", r"\b(?:max(?:imum|\.)?|greatest|permitted|allowed) (?:suction|lift)\b[^.;]{0,25}$", "", "", 1),
    (r"water\.level", r"\b(?:suction|lift)\b[^.;\d]{0,20}$", r" ?(?:max\b|maximum\b|at (?:the )?most\b|is (?:the|its) (?:limit|most|maximum))", "", 1),
    (r"pump\.height", r"\b(?:can|could|may) (?:\w+ )?(?:hang|be hung|be set|go|be lowered)\b[^.;]*$|\bat most $", "", "", 1),
    (r"well\.depth", r"\b(?:poly|pipe|line|hose|pvc|hdpe|pe|tubing)(?: that| which)?(?: comes| runs| goes| leads)?(?: in)? from (?:the|our|my) (?:\w+ )?(?:well|bore\w*)(?: is| to (?:the )?[a-z]+(?: is)?)?(?: about)? $", "", "", 1),
    (r"well\.bore", r"\b(?:submersible|pump)\b(?:(?!\b(?:well|casing|bore\w*|hole|drilled|lined)\b)[^.;\n])*, $|(?:^|[.;,\n]) ?(?:the |our )?(?:submersible |4[ -]?inch )*(?:pump|submersible|sub)(?: is|:|'s)? $", r" ?(?:across|wide|in diameter|diameter|dia\b|thick|outside)", "pump.diameter", 1),
    (r"water\.yield", r"\b(?:max(?:imum)?|peak|highest|largest|greatest|total|most|design|daily|average|simultaneous) (?:draw|demand|use|usage|consumption|flow|rate|withdrawal|need|take)(?: (?:is|of|would be|at))*[ :=-]+$", "", "", 1),
    (r"water\.yield", r"^(?:(?!\bpumps? (?:and|but)\b)[^.;])*\b(?:it|pump) pumps(?: up| out)? $", r" ?from (?:the|our|a)\b", "", 1),
    (r"water\.yield", r"(?:^|[.;,] ?)if (?:the|our|my|a|this) (?:\w+ )?(?:well|spring|bore\w*|creek|source|stream|it)\b[^.;,]{0,20}$", r"[^.;?\n]*\?|,? (?:can|could|would|will|should|is|does)\b", "", 1),
    (r"water\.yield|well\.\w+", r"\b(?:another|a second|the (?:other|second)|one more) (?:well|spring|bore\w*|source)\b[^.;]{0,25}$", "", "", 1),
    # pipes that lie about, that are left over, parts of one
    (r"way\.pipe", "", r" ?(?:roll|coil|reel|drum)\b", "", 1),
    (r"way\.(?:pipe|length)", r"\bhalf an? (?:roll|coil|reel|drum|length) of (?:the |that )?$", "", "", 1),
    (r"way\.(?:pipe|length)", "", r"[^.;,]{0,30} (?:lying|left|stored|sitting|kept|waiting) (?:about |around |over )?(?:in|at|behind|under|on) (?:the|our|my|a) (?:barn|shed|garage|yard|store|workshop|attic|loft)\b", "", 1),
    (r"way\.(?:pipe|length)", "", r"[^.;]{0,40}\b(?:which|that) (?:we|i) (?:won't|will not|don't|do not|can't|cannot|shan't|no longer) (?:be )?(?:us|want|trust|need)", "", 1),
    (r"suction\.length", r"\b(?:goes|reaches|hangs|leads|drops|dips) down (?:about )?$", r"(?! ?(?:long|of (?:pipe|hose)))", "water.level", -1),
    (r"way\.pipe", r"\b(?:intake|inlet|outlet|suction|ports?|connections?|unions?)(?: hose| pipe)?(?: is| are)? (?:about )?$", "", "", 1),
    # heights above the sea of two ends, of snow
    (r"place\.altitude", r"\b(?:snow|tree|frost|cloud) ?-?line\b[^.;]*$", "", "", 1),
    (r"way\.(?:length|pipe)", r"\bfirst (?:\d[\d.]* ?(?:m|ft|feet|met\w+)|half|part|stretch)\b[^.;]*\b(?:then|next|remaining|rest|last)\b[^.;]*$", "", "", 1),
    (r"way\.(?:length|pipe)", r"\bfirst [^.;\d]{0,12}$", r"[^.;]{0,40}\b(?:then|next|remaining|rest|last)\b[^.;]{0,20}\d", "", 1),
    (r"way\.length", "", r"[^.;\d]{0,40}\b(?:and|then|plus) (?:another |a further )?\d[\d.]* ?(?:m|ft|feet|met\w+|yards)? (?:more |further )?(?:on|onwards?|further|beyond|more) (?:to|from|for)\b", "", 1),
    (r"water\.level", r"\bfoot ?-?valve\b[^.;\d]*$", r" ?(?:under|below|beneath|in) (?:the )?(?:water|surface|lowest)\b", "", 1),
    # pipes of other things, and those inside a house
    (r"way\.pipe", r"\b(?:drain\w*|septic|sewer|sewage|waste|gutters?|downpipes?|down ?spouts?|casing|overflow|spillway|drip ?lines?|laterals?(?! to)|vent|gas)\b[^.;,\d]{0,30}$", "", "", 1),
    (r"way\.pipe", "", r" ?(?:\w+ )?(?:drain|drainage|sewer|waste|overflow|casing|gutter|downpipe|conduit|vent)\b", "", 1),
    (r"way\.pipe", r"\b(?:rising main|riser|drop pipe|pipe) (?:in|down|inside) (?:the|our) (?:well|bore\w*|hole)(?: is|:| of)? $", "", "", 1),
    (r"way\.pipe", r"\b(?:plumbing|indoors|inside the house|in the house|in the walls|at the house it (?:goes|changes|turns|becomes))\b[^.;,\d]{0,30}$", r"(?! ?(?:from|to) )", "", 1),
    # one of several houses, lines or places
    (r"way\.length", r"\b(?:house|cabin|line|trough|lot|branch|leg|section) (?:1|2|3|one|two|three|b|c)(?: (?:is|lies|at|has|runs|gets|goes)\b|[:,=])[^.;]*$", "", "", 1),
    (r"way\.length", r"\bone (?:is |at |lies )?\d[\d.]* ?(?:m|ft|feet|met\w+|yards)?\b[^.;]*\b(?:and|,) (?:one|another|the other|the second) (?:is |at |lies )?$", "", "", 1),
    (r"way\.length", r"\bone (?:is |at |lies )?$", r"[^.;\d]{0,25}(?:\band|,) (?:one|another|the other|the second) [^.;\d]{0,12}\d", "", 1),
    # what a level changes by; what is counted from the water; what is drawn
    (r"water\.level|well\.pumping", r"\b(?:sinks?|falls?|drops?|goes down|draws? down|lowers?|varies|changes|rises?|comes? up|goes up)(?: and down| or falls)? by (?:about |up to |some )?$", "", "", 1),
    (r"water\.level", r"\b(?:water|level|lake|pond|river|creek|table)(?: level)?(?: in (?:it|the (?:well|lake|pond|creek|river)))? (?:always |only |then )*(?:falls?|drops?|sinks?|varies|changes|goes up and down|rises?|swings?) (?:about |only |some |up to |by )*$", r"(?! ?(?:below|down|under|deep|from|beneath|lower))", "", 1),
    (r"pump\.height", r"^[^.;]{0,40}$", r" ?(?:under|below|beneath|deep in|into) (?:the )?(?:static|water|lowest|pumping|dynamic|standing|rest)\b", "", 1),
    (r"way\.climb", r"\bpump\b[^.;]*\b(?:draws?|sucks?|pulls?)\b[^.;]*\band $", r" ?(?:straight )?up(?= ?[.,;]|$)", "water.level", -1),
    (r"way\.length", r"\bpump\b[^.;]*\b(?:above|over|higher than) (?:the |our )?(?:\w+ )?(?:creek|stream|river|lake|pond|water|dam|well)\b[^.;]*$", r" ?(?:away |back |off )?from (?:it|the (?:creek|stream|river|lake|pond|water|dam))\b", "", 1),
    # heights over what is neither end; tanks that only could stand there
    (r"way\.climb", "", r"(?![^.;]*\b(?:well|pump|spring|bore\w*|source)\b[^.;]* (?:by|beside|at|near|on|in|inside|next to) the [a-z]+\b) ?(?:above|below|higher than|lower than|over|under) (?:the |a |our )?(?:ridge|road|track|crest|hump|saddle|gate|fence|pass|wall|path|driveway|bridge|meadow's edge|tree|trees|floor(?! of))\b", "", 1),
    (r"tank\.level", "", r"[^.;]{0,40}\bwhere (?:an?|the|our) (?:¤|(?:\w+ )?(?:tank|reservoir) (?:¤|(?:could|might|can|may|would)\b))", "", 1),
    (r"tank\.level|way\.\w+", "", r"[^.;]{0,30}, ?(?:whichever|wherever)\b", "", 1),
    (r"tank\.level", r"^(?:(?!\b(?:header|hill|storage|water|big|main|holding|break) tank)[^.;])*\bpressure (?:tank|vessel)(?: is| sits| stands| hangs)? (?:about )?$", "", "", 1),
    # a basin above, told behind its height; the first of two goals; what was only asked, offered, or is another's
    (r"way\.(?:climb|length)", r"\babove (?:it|us|them|the \w+)\b[^.;]*, $", r" ?(?:over|above|higher than) [^.;]{3,25}, (?:i have|we have|there is|there's|stands|lies|sits) (?:an?|the|our|my) (?:\w+ )?(?:basin|tank|reservoir|cistern)\b", "tank.level", 1),
    (r"way\.(?:climb|length)", r"\b(?:first|second|third|nearer|lower|upper|further)(?: one| house| trailer| cabin| hut| trough)? (?:is|lies|sits|stands)(?: about| at)? $", r"[^.;]{0,30}(?:,| and| but) (?:the )?(?:second|other|third|next|further|upper|lower)\b", "", 1),
    (r"way\.(?:climb|length)", r"\d[^.;]*(?:,| and| but) (?:the )?(?:second|other|third|next)(?: one| house| trailer| cabin| hut| trough)?(?: is| lies| sits| stands)? (?:about |at )?$", "", "", 1),
    (r"water\.yield", r"\b(?:outside|in the (?:yard|garden|village|square|courtyard)),? (?:that|which) (?:always )?(?:runs|flows)\b[^.;]*$", "", "", 1),
    (r"water\.yield", r"\b(?:fountain|overflow|tap|trough|faucet)\b[^.;]*\b(?:runs?|running|flows?|drips?)\b[^.;]{0,25}$", "", "", 1),
    (r"water\.yield", r"\b(?:windmill|old (?:pump|ram|engine)|hand ?pump|hydram|ram)\b[^.;]{0,40}$", "", "", 1),
    (r"water\.yield", r"\b(?:flyer|advert\w*|ad|offer|quote|website|booster|shop|store)\b[^.;]{0,30}$", "", "", 1),
    (r"water\.yield|way\.\w+|well\.\w+", rf"\b{_KIN}\b[^.;,]{{0,30}}\b(?:pumps|gets|has|runs|draws|irrigates|pulls|uses|gave up)\b[^.;]{{0,30}}$", r"(?![^.;]*\bour\b)", "", 1),
    (r"tank\.level|way\.\w+", r"(?:^|[.;?!,]) ?(?:so )?(?:would|should|could) (?:you|i|we|one) (?:rather |better |also )?(?:set|put|place|build|raise|mount|have|buy|use|lay|take)\b[^.;]*$", r"[^.;\n]*(?:\?|$)", "", 1),
    (r"way\.(?:climb|length)", "", r",? (?:no|sorry|wait|rather|or rather|i mean)\b,? [^.;]{0,25}\b(?:up|down|above|below|higher|lower|actually)\b", "", 1),
    # what was once; what comes to less; points of a curve; what is still to lay
    (r"water\.level|water\.yield", r"\b(?:in|back in|around) (?:¤+|(?:19|20)\d\d)\b[^.;]*$", r"[^.;\d]{0,12}[,;] ?(?:but |and )?(?:now|last (?:month|week|year|summer)|today|this (?:year|summer)|lately|recently|i measured|these days)\b", "", 1),
    (r"water\.level|water\.yield|well\.\w+", "", r",? or (?:at least )?(?:did|was|were|so it did|used to|made|gave|ran|had)(?: that| so| it)? (?:when|in|back|before|at)\b", "", 1),
    (r"water\.yield", "", r"[^.;\d]{0,22}\b(?:and|but) (?:only |about )?(?:half|a third|a quarter|a fraction|a tenth|a fifth|two thirds|much less|far less|less|next to nothing|a dribble|a trickle)\b", "", 1),
    (r"water\.yield", rf"(?:\bat \d[\d.]* ?(?:ft|feet|m|met\w+) of (?:head|lift)|\bat \d[\d.]* ?(?:psi|bar)|\d ?{_FLOW}[^.;]*\bat \d[\d.]* ?(?:ft|feet|m)),?(?: (?:it|she) (?:gives|does|makes))? $", "", "", 1),
    (r"way\.length", r"\bstill (?:have |got |need |has )*(?:about |some )?$", r"[^.;]{0,25}\b(?:to (?:lay|dig|bury|go|do|trench|buy)|missing|left)\b", "", 1),
    (r"way\.length", r"\bfrom (?:the |our )?(?:house|cabin|home) to (?:the |our )?(?:mail ?box|street|fence|neighbou?r\w*|outbuilding|village|highway|town|septic|letter ?box|drive|track|bus stop|grid|pole|transformer)\b[^.;\d]{0,16}$", "", "", 1),
    (r"way\.length", r"^(?!.*\b(?:well|spring|pump|bore\w*|creek|tank|source|stream|pond|dam|river|lake|cistern|intake)\b)[^.;]*$", r" ?apart\b", "", 1),
    (r"way\.length", r"\b(?:tanks|wells|springs|panels|troughs|hydrants|houses|cabins)(?: are| stand| lie)? (?:about )?$", r" ?apart\b", "", 1),
    (r"way\.climb", r"\bfrom (?:the |our )?(?:\w+ )?(?:tank|reservoir)(?: \w+)? (?:down )?to (?:the |our )?[a-z ]{3,20}(?:,|there)? (?:is|it is|we have) (?:an? )?(?:fall|drop|height|head|difference)(?: of)? (?:about )?$", "", "tank.level", 1),
    (r"suction\.length|water\.level", "", r" ?(?:is |are |would be )?(?:allowed|permitted|possible|is the limit|the limit)\b", "", 1),
    (r"pump\.height", "", r" ?(?:under|below|beneath) (?:the |a |its |our )?(?:float|raft|buoy|boat|dock|jetty|ice)\b", "", 1),
    (r"way\.climb", "", r" ?(?:up|down)hill,? (?:and |with )?\d[\d.]* ?(?:m|ft|feet|met\w+) (?:of )?(?:height|rise|drop|fall|vertical|elevation|difference|higher|lower)\b", "way.length", 1),
    (r"way\.length", r"\+ ?$", "", "way.climb", 1),
    (r"water\.level", r"^(?!.*\b(?:pump|suck|draw|pull|suction|jet|lift)).*\bfrom (?:an?|the|our) (?:creek|stream|river|pond|lake|brook|dam),? $", r" ?(?:further |farther )?(?:down|lower|below)\b", "way.climb", 1),
    (r"water\.level", rf"\b(?:to|into) (?:an?|the|our|my) (?:\w+ )?(?:{_HOME}|trough|tap|field|barn|plot|yard),? $", r" ?(?:below|lower|down|further down)\b(?! (?:the )?(?:ground|surface))", "way.climb", -1),
    (r"tank\.level|way\.\w+", r"\bor (?:else )?(?:on )?(?:the|a) (?:hill|ridge|knoll|slope|bank|rise|mound)\b[^.;]*$", "", "", 1),
    (r"well\.bore", "", r"[^.;]{0,30}\b(?:sleeved|re-?lined)\b", "", 1),
    (r"well\.bore", "", r" ?(?:down )?(?:to|for the first) \d[\d.]* ?(?:m|ft|feet)?,? (?:and|then|below) ", "", 1),
    (r"water\.yield", "", r"[^.;\d]{0,12}\b(?:at|from|out of|over) the (?:overflow|spill\w*)\b", "", 1),
    # shares, of a source that is not used, at a tap; what somebody else makes of it
    (r"water\.yield", r"\b(?:half|a third|two thirds|a quarter|part|a share) of (?:the |that |its |this )?$", "", "", 1),
    (r"water\.yield", "", r",? of which\b[^.;]*\b(?:takes?|has|gets?|goes|belongs?|is (?:theirs|ours|mine))\b", "", 1),
    (r"water\.yield", "", r",? but (?:we|i) (?:use|draw from|take|pump from|want) (?:the (?:one|other|upper|lower|second)|another)\b", "", 1),
    (r"water\.yield", "", r" ?(?:out of|at|from) (?:the |our )?(?:\w+ )?(?:taps?|shower|faucet|kitchen|hydrant)\b", "", 1),
    (r"water\.yield", r"\bcould (?:\w+ )?(?:take|draw|use|have)\b[^.;]{0,20}$", "", "", 1),
    (r"water\.yield", "", r" ?(?:must|has to|have to|should|needs to) (?:always )?(?:stay|remain|be left|keep)\b", "", 1),
    (r"(?:way|well|water)\.\w+", "", r"[^.;,\d]{0,12},? according to [^.;,\d]{2,15}, (?:but |and )?(?:only )?\d", "", 1),
    (r"(?:way|well|water)\.\w+", "", r"(?![^.;]*\b(?:go with|trust|believe|use|take) \d)[^.;,\d]{0,20}[,;] (?:but )?(?:my |the |our )?(?:husband|wife|son|daughter|father|mother|brother|sister|partner|neighbou?r|driller|plumber) (?:reckons|says|thinks|makes it|swears|measured|claims)(?: it's| it is)?(?: about)? \d[\d.]*(?! ?(?:and|,|so|which)? ?(?:is|was) wrong)", "", 1),
    (r"well\.depth", "", r"[^.;\d]{0,25}\b(?:back-?filled|caved|collapsed|silted|filled (?:it )?in)\b", "", 1),
    (r"pump\.height", "", r" ?(?:further|more|deeper)\b", "", 1),
    (r"pump\.height", r"\bbottom,? (?:which |that |itself )?(?:is|lies)[^.;\d]*$", "", "well.depth", 1),
    (r"way\.\w+", r"\bof which (?:about |some )?$", "", "", 1),
    (r"way\.length", r"\b(?:lake|pond|creek|stream|river|well|water|cistern)\b[^.;\d]*$", r" ?(?:away |back |off )?from the pump\b(?! ?-?(?:house|shed|hut))", "", 1),
    # words
    (r"fall\.broken", "", r"s? ?[:=-]+ ?(?:none|no|nil|0|zero)\b", "", 1),
    (r"fall\.broken", r"\b(?:no|without|not any|never|needs?|want) (?:an? |any )?$", "", "", 1),
    (r"place\.name", r"\b(?:lies|located|somewhere|far|way) (?:up |down |out )?in (?:the )?$", r"(?! ?-)", "", 1),
    (r"place\.name", r"\b(?:village|town|country|people|family|friends|life|years) in $", "", "", 1),
)  # fmt: skip
