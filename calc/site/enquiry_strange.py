"""Doubts for ``enquiry_doubts`` of pumps, what drives them, sources, tanks and pipes: whose word or
number it is, what was set anew, what is only near, left over, unwanted or taken back.

A row is (paths, words of the sentence before, words after[, path instead]), as in
``enquiry_machines``. ``near`` tells of sources that only say where something lies, and
``taken_back`` of what the very next words withdraw.
"""

from __future__ import annotations

import re

from calc.site.enquiry_model import Piece

_OWN = r"(?!pump\.height)(?:pump|power|pressure_tank|store|tank|water\.kind|pipes|way\.pipe|suction\.pipe)"
_MINE = rf"{_OWN}[\w.]*"
_KIN = r"(?:neigh?bou?rs?|next door|brother|sister|cousin|uncle|friend|man|guys?|fellow|others|(?:people|folks?|farm|farmer|couple|camp|village|house) (?:across|over|up|down|next|above|below|upstream|before)\b[^.;,]{0,14})"
_HAS = r"(?:draws?|has|have|uses?|takes?|gets?|pumps?|runs?|drinks?|bought|fitted|installed|swears by|had|got|relies on|went with)"
_NOT_OURS = r"(?:(?!\b(?:we|i|our|us|my|ours|mine)\b)[^.;])*$"
_NO_WISH = r"\b(?:(?:do not|don'?t|doesn'?t|does not|didn'?t|would not|wouldn'?t|won'?t|will not|never) (?:really )?(?:want|need|like|care for|wish|trust|fancy|hold with)|(?:would |'d |i |we )?rather not|hate|dislike|loathe)\b[^.;,]{0,30}$"
_SET = r"[^.;\n]{0,40}[,;] ?(?:but |and |so |then |now |yesterday |since )*(?:i|we|he|she|they)(?:'ve| have| had)?(?: since| now| just| then)? (?:let|set|turned|changed|raised|lowered|brought|pumped|took|put|dropped|moved|bled|reset|upped|cut)\b[^.;\d]{0,22}\bto\b"
_ROOM = r"(?:barn|shed|garage|attic|loft|cellar|workshop|yard|corner)"
_SPARE = r"\b(?:half (?:a|the)|part of (?:a|the)|(?:the )?rest of (?:a|the)|spare|left[ -]?over|surplus|unused|second-?hand)(?: (?:roll|coil|reel|drum|length|bit|piece)s?)?(?: of)?(?: [a-z]+)? $"
_OTHER_PIPE = r"(?:overflow|drain|drainage|waste|sewer|soil|vent|gutter|downpipe|downspout|septic|breather|wash ?-?out|scour|chimney|stove|flue|exhaust|sleeve|duct|conduit|casing|culvert|fuel|gas|drip ?-?(?:line|tube|pipe|tape))"
_LAID_ON = r"(?:gravel|stones?|sand|rock|chippings|pebbles|insulation|lagging|foam|rain(?:ed|fall)?|rope|string|snow|ice)"

STRANGE: tuple[tuple[str, ...], ...] = (
    # whose it is, and what nobody wants
    (_MINE, rf"^\W*(?:and |but |so )?(?:the |our |my |one |a |some |most )?{_KIN}(?:'s)?(?: (?:across|over|up|down|next|above|below|upstream|before|who)[^.;,]{{0,22}})? {_HAS}\b{_NOT_OURS}"),
    (r"power\.source|pump\.placement|water\.kind|pump\.control|pump\.works", _NO_WISH),
    ("power.source", "", r"[^.;\n]{0,30}\bbut\b[^.;\n]{0,30}\b(?:costs?|too (?:dear|far|much|expensive)|dear|expensive|fortune|(?:do not|don'?t|won'?t) want)\b"),
    ("power.source", "", r" (?:is |are )?(?:only |just )+(?:for|runs|drives|on) (?!(?:the |our |my |a )?(?:(?:water |bore\w* |well |little |old |new )?pump|water|well|bore))[a-z]+"),
    ("power.source", r"\b(?:too (?:shady|dark|wooded|cloudy)|no (?:good|use|place|room|sun)) for (?:the |any |solar )?$"),
    ("power.source", "", r" (?:is|are|would be|was|were) (?:quite |simply )?(?:out of the question|not (?:an option|possible|worth it)|ruled out|no (?:option|good|use))\b"),
    ("power.source", "", r",? (?:at first|at the start|in the beginning|to begin with|until (?:last|this|it|we|19|20))\b"),
    ("power.source", r"\b(?:wife|husband|son|daughter|brother|neigh?bou?r|father|he|she|they|plumber|dealer)(?: here)? says? $"),
    ("power.source=sun", "", r" (?:panels? |power |system )?(?:is |are )?(?:only |just )?(?:charges?|lights?|heats?|feeds?) (?!(?:the |our |my |a |an )?(?:[\d.]+ ?(?:v|ah) |[a-z]+ )?(?:pump|water|well|bore|batter\w+|bank|controller|tank))[a-z]+"),
    ("power.source=sun", "", r"[^.;\n]{0,40}\bgrid[ -]tied?\b"),
    (r"power\.source|pump\.(?:placement|works|control)", r"\b(?:is|are|would|will|isn'?t) (?:an? |the )?(?:\d+ ?v(?:olts?)? )?$", r" (?:pump |one |power )?(?:be |really |any )?(?:better|worse|cheaper|stronger|suitable|overkill|good enough|the (?:right|better) (?:thing|choice|way))\b"),
    (rf"{_OWN}[\w.]*", r"\b(?:show(?:ed|s)?|offer(?:ed|s)?|recommend(?:ed|s)?|quot(?:ed|es)|advis(?:ed|es)|suggest(?:ed|s)?|pushed|tried to sell|wants? to sell)(?: me| us| him)?(?: on)? (?:and?|a|the|some|one) $"),
    (rf"{_OWN}[\w.]*", "", r"[^.;\n]{0,25}\b(?:(?:wants?|tries|trying|tried|hopes) to sell\b|is what (?:the |our |my )?¤)"),
    (rf"{_OWN}[\w.]*", "", r"(?: [a-z]+){0,2} (?:would|might) (?:be (?:much |far )?(?:better|best|nicer|ideal|safer|wiser)|do better|suit)\b"),
    ("power.source=grid", "", r" (?:hose|tap|trickle|standpipe|stopcock|feed|top-?up|drinker|trough)\b"),
    ("power.source=grid", r"\b(?:top(?:s|ped)?(?: it)? up|fill(?:s|ed)?|fed|trickle\w*)(?: it)? (?:from|by|off|with) (?:the )?$"),
    ("power.source", r"\b(?:he|she|they)(?:'s| has| have|'ve| is| are)(?: got)? (?:on )?(?:the |an? )?$"),
    (r"(?:power\.source|pump\.placement|water\.kind)", "", r"\W{0,3}(?:no|but no|or no),? (?:it|that|they|this)(?:'s not| isn'?t| is not| wasn'?t| aren'?t| doesn'?t)\b"),
    (r"(?:power\.source|pump\.placement|water\.kind)", "", r"\W{0,3}no,? (?:excuse me|sorry|wait|pardon|i mean|rather|make that|hang on|i tell a lie)\b"),
    (r"(?:tank|store|pressure_tank)\.volume|pressure_tank\.precharge|pump\.(?:cut_in|cut_out|set)|power\.\w+", rf"\b(?:{_KIN}|in-law|wife|husband|plumber|driller|dealer|seller|salesman|he|she|they)\b[^.;,\d]{{0,8}} (?:swears?|says?|said|claims?|claimed|thinks?|thought|reckons?|insists?|guess(?:es|ed)|told (?:me|us)|believes?|(?:is|was) sure)\b[^.;\d]{{0,40}}$", r"[^.;]{0,25}(?:\bbut|,) (?:i|we|it|the (?:plate|label|sticker|gauge|paper|meter|tape))\b"),
    (r"(?:tank|store|pressure_tank)\.volume|pressure_tank\.precharge|pump\.(?:cut_in|cut_out|set)", r"\b(?:flyers?|leaflet|brochure|catalogue?|advert\w*|website|shop|ad)\b[^.;]{0,12} (?:shows?|has|lists?|offers?|says?|recommends?|sells?)\b(?:[^.;]|\.(?=\d))*$"),
    (_MINE, "", r"(?: (?:tank|pump|vessel|one|battery))? (?:went|goes|gone|is going|was taken) (?:to|for|in) (?:the )?(?:scrap|dump|tip|skip|neigh?bou?r\w*)\b"),
    ("store.days", "", r",? (?:and )?then (?:it'?s |it is |we'?re |goes )?(?:flat|empty|dead|dry|out)\b"),
    ("power.source=grid", "", r"(?: electricity| power| supply)? (?:is )?(?:nearby|in the (?:village|valley|town)|at the neigh\w*|ends?\b|stops?\b|finishes|(?:about )?[\d.,]+ ?(?:m|km|miles?|ft|feet|yards|met\w+)\b|starts at)"),
    ("power.source=grid", "", r" connection,? [^.;]*\b(?:wait|months|quote\w*|costs?)\b"),
    ("power.source=grid", r"\b(?:asked|applied|waiting|quoted?|price) for (?:an? |the )?$"),
    (rf"(?!power\.source){_OWN}[\w.]*", r"\bhow many (?:[a-z]+ )?$"),
    (r"power\.(?:source|panel)", r"\b(?:can|could|may) (?:get|buy|have|pick up|find|lay hands on) (?:an? |some |two |three |four |a few )?$"),
    (r"power\.(?:source|panel)", "", r"[^.;]{0,14} (?:in|on) (?:the|their|his) (?:quote|offer|ad|list|listing)\b"),
    # what was set anew, wished or only advised
    (r"pump\.(?:cut_in|cut_out|set)|pressure_tank\.precharge|power\.(?:voltage|tilt)", "", _SET),
    (r"pump\.(?:cut_in|cut_out|set)|pressure_tank\.precharge", r"\b(?:regulator|reducer|reducing valve|relief valve|safety valve|tyres?(?! ga)|tires?(?! ga)|town|city|filter|softener)\b[^.;,\d]{0,30}$"),
    (r"pump\.(?:cut_in|cut_out|set)|pressure_tank\.precharge", r"\b(?:can|could|should|may|shall|might) (?:i|we|it|one|you) (?:[a-z]+ )?(?:set|raise|turn|put|go|change|run|use|have|lower|move)\b[^.;\d]{0,20}$"),
    (r"pump\.cut_(?:in|out)", r"\b(?:starts?|comes on|goes on|on|runs)\b[^.;,\d]{0,20}$", r" ?(?:seconds|sec|minutes|min|in the (?:morning|evening)|o'?clock)\b"),
    ("pressure_tank.precharge", "", r" (?:they say|he says|it says|i'?m told|i am told|so they say|says the (?:book|label|dealer|plumber))\b"),
    ("power.voltage", "", r" ?(?:\d+ ?ah )?(?:(?!system|bank|with|panels)[a-z-]+ ){0,3}?(?:batteries|ones|blocks|units|cells|agms?)?(?: wired| connected| put| all)? ?in series\b"),
    ("power.battery", r"\b(?:new|next) (?:ones?|battery|bank|set|batteries) (?:will|shall|should|would|to) be $"),
    ("power.battery", "", r" (?:batteries |ones )?(?:is |are )?(?:can'?t|cannot|won'?t|too (?:dear|expensive)|costs?|would|next year|later|on order)\b"),
    ("power.tilt", "", r" ?(?:°|degrees|deg)? in (?:the )?(?:summer|winter)\b[^.;\d]{0,8}\d"),
    ("power.tilt", r"\bin (?:the )?(?:summer|winter)(?:,| and)+ $"),
    ("power.tilt", r"^(?!.*\bpanels?\b).*\b(?:slopes?|hill|hillside|land|ground|bank|terrain|field)\b[^.;\d]{0,20}$"),
    (rf"{_OWN}[\w.]*", "", r"(?: (?:bar|psi|v|volts))?,? (?:but |and )?(?:it'?s |is )?now (?:it'?s |at |only )*\d"),
    (rf"{_OWN}[\w.]*", "", r",? (?:says|said|claims|claimed) (?:my |the |our )?[a-z]+[,;] ?(?:but |and )?(?:i|we) (?:[a-z]+ )?(?:measured|make|made|got|count|get|found|say)\b"),
    ("power.voltage", r"\bpanels?(?: are| is| say| give| have|:)* (?:about )?$"),
    ("power.tilt", r"\b(?:roof|roof pitch|pitch of the roof)(?: is| slopes| of)? (?:about )?$", r"[^.;]{0,6}[;,] ?(?:the )?panels?\b[^.;]{0,40}\d"),
    ("power.facing", r"^\W*(?:the |our )?(?:house|cabin|door|garden|slope|window|porch)\b(?![^.;]*\b(?:roof|panels?)\b)[^.;]*$"),
    ("pump.control=speed", "", r"[^.;]{0,30}\b(?:costs? too|too (?:dear|expensive|much)|is dear|would cost)\b"),
    ("pump.control=speed", r"\b(?:i'd|we'd|would) (?:like|love|prefer|want)\b[^.;]{0,45}$"),
    # where a pump is not, is not yet, or may be
    ("pump.placement", r"\b(?:spare|broken|dead|sump|bilge|drainage|condensate|vacuum|dosing|slurry|milk|fuel|heating|beer|foot|bike|bicycle|grease) $"),
    ("pump.placement", "", r"[^.;\n]{0,30}\b(?:not (?:yet )?(?:installed|fitted|connected|plumbed|hooked up|in use|used|unpacked)|gathering dust|for (?:parts|scrap)|rusting|still in (?:its|the) box)\b"),
    ("pump.placement", "", r" ?,? or (?:(?:better|maybe|rather|perhaps|else) )?(?:in|on|at|by|above|beside|up|down|outside|under|next|near|the|a|inside)\b"),
    ("pump.placement", r"\b(?:where|whether|should|could|shall|would)\b[^.;,]{0,30}\bor (?:[a-z]+ ){0,2}$"),
    ("pump.placement", r"\b(?:told|advis\w+|urg\w+|suggest\w*|wants?|wanted)\b[^.;]{0,30}$", r"[^.;]{0,12},? but\b"),
    ("pump.placement", "", r"[^.;\n\d]{0,22}[,;(-] ?(?:no,? |er,? |well,? )?(?:sorry|i mean|i meant|no wait|wait)\b"),
    ("pump.placement", "", r"(?: pumps?)? (?:is |are |was |were )?(?:no good|no use|(?:won'?t|wouldn'?t|will not|would not|can'?t) (?:do|work|fit|go)|not (?:possible|an option|needed))\b"),
    ("pump.works", "", r" (?:clutch|filter|juicer|extractor|dryer|fan|separator|rings?)\b"),
    ("pump.placement=out", "", r" at the wall\b|[a-z ]{0,10} ?-?at the (?:wall|socket|plug)$"),
    ("water.kind", r"\b(?:(?:could|can|should|shall|might|would|may) (?:i|we|one|you)|(?:i|we|one|you) (?:could|can|might|may))\b[^.;]{0,40}$", r" or\b"),
    ("water.kind", r"\b(?:(?:could|can|should|shall|might|would|may) (?:i|we|one|you)|(?:i|we|one|you) (?:could|can|might|may))\b[^.;]{0,40}\bor (?:from |out of |use )?(?:the |an? |our )?$"),
    # sources
    ("water.kind=spring", r"\b(?:solar|panels?|live|lived|living|stay|there|open|opens|starting|start|running|again|only|diesel|here) from $"),
    ("water.kind=stream", "", r"(?:'s| is| was| has) (?:out|gone|no good|off the list|silted(?: up)?|breached|burst|empty)\b"),
    ("water.kind=stream", "", r" ?-?side (?!pump|intake|well point)"),
    ("water.kind=stream", r"\b(?:sits|stands|is|sitting|standing|perched)(?: up)? on (?:the |an? |our )?$"),
    ("water.kind", "", r"[^.;]{0,25}\bbelongs? to (?!us\b|me\b)"),
    ("water.kind=stream", r"\b(?:beaver|coffer) $"),
    ("water.kind=spring", "", r"[ -]?fed (?:pond|creek|stream|lake|dam|brook|river)\b"),
    ("water.kind=stream", "", r" (?:across|over|beyond) the (?:valley|road|hill|way|fence|border|field)\b"),
    ("water.kind=stream", "", r" ?(?:cross(?:ing)|bridge|ford)\b"),
    ("water.kind=stream", r"\b(?:pipe|line|hose|trench|it|poly|goes|runs|passes|road|track|path|bridge|main)\b[^.;\d]{0,30}\b(?:under|across|over|cross(?:es|ing)?|through) (?:the|an?|our) (?:[a-z]+ )?$"),
    ("water.kind", r"\b(?:love|like|wish for|wish we had|dream of|wished for) (?:to have )?(?:an? )?$"),
    ("water.kind=spring", "", r" water,? (?:bottled|from the (?:shop|store))\b"),
    ("water.kind=well", "", r",? (?:is|was|are)(?: only| just| now)* (?:an? )?(?:wishing well|ornament\w*|decorati\w+|flower ?bed|planter)\b"),
    ("water.kind", "", r" (?:water )?(?:nearby|around here|hereabouts|here) (?:is|are) (?:all )?(?:salty|brackish|bad|foul|hard|dry|poor|sour)\b"),
    ("water.kind", "", r" (?:is|runs|gets|looks|was) (?:too |very |so |always )*(?:dirty|filthy|muddy|polluted|salty|brackish|foul)\b"),
    ("water.kind", "", r" (?:freezes|floods|dries (?:up|out)|is frozen)\b[^.;]{0,20}, so\b"),
    ("water.kind", "", r"[^.;\n]{0,12}\bor (?:from |out of |with )?(?:the |a |our )?(?:spring|well|bore\w*|creek|stream|river|lake|pond|rain\w*|cistern|roof)\b[^.;\n]{0,40}\?"),
    ("water.kind", r"\bthere (?:was|used to be) (?:once )?(?:an? |the )?(?:[a-z]+ )?$"),
    # vessels of another kind
    (r"(?:tank|store|pressure_tank)\.volume", r"\b(?:tank(?:er)?[ -]?(?:truck|lorry)|tanker|truck|lorry|bowser|hot ?tub|pool|trough|bath(?:tub)?)(?: [a-z]+)?(?: is| holds| brings| of| takes| carries)*(?: about)? $"),
    (r"(?:tank|store)\.volume", r"\b(?:dip|wine|beer|cider|spray|fish|koi|duck|brewing|dye|village|town|council)(?:'s)? (?:tank|vat|pond|tower)\b[^.;\d]{0,16}$"),
    (r"(?:tank|store)\.volume", r"\b(?:filled|caught|gained|collected|rose|lost|gave|got)(?: about| some)? $", r"[^.;]{0,12}\b(?:in|from|after|during|over) (?:one|a|the|last|that|two|three|that one)\b"),
    (r"(?:tank|store)\.volume", r"\bone(?: tank| cistern| tote)?(?: is| holds| of| has)? (?:about )?$", r" and (?:the |an)?other\b"),
    ("store.volume", "", r"[^.;\d]{0,20}\b(?:stands?|sits?|is|standing|sitting|set)\b (?:up |about |some )*[\d.,]+ ?(?:m|ft|feet|foot|met\w+) (?:above|over|higher than) (?!(?:the |our |my )?(?:pump|water|spring|well|creek))", "tank.volume"),
    ("store.volume", "", r"[^.;\d]{0,20}\b(?:stands?|sits?|is|standing|sitting|set)\b (?:up )?(?:on|up on|atop) (?:an? |the |its )?(?:[a-z\d.]+ ){0,2}?(?:stand|tower|stilts|legs|hill|ridge)\b", "tank.volume"),
    # pipes that bring no water to the house
    (r"way\.pipe|suction\.pipe", _SPARE),
    (r"way\.pipe|suction\.pipe", "", rf"[^.;,\d]{{0,30}}\b(?:in (?:the|my|our) {_ROOM}(?= ?[.,;?!]|$)|lying (?:around|about)|left[ -]over|to spare|going spare|unused)\b(?<!is in the barn)"),
    (r"way\.pipe|suction\.pipe", "", r"[^.;,\d]{0,25}\b(?:torn|ripped|pulled|taken|dug|thrown|coming|going|cut) (?:out|up)\b"),
    (r"way\.pipe|suction\.pipe", rf"\b{_OTHER_PIPE}\b[^.;,\d]{{0,20}}$"),
    (r"way\.pipe|suction\.pipe", "", rf"(?: [a-z]+)? ?{_OTHER_PIPE}\b(?! (?:tank|valve))"),
    (r"way\.pipe|suction\.pipe", "", r"(?: [a-z]+)? for (?:the |our |a )?(?:[a-z]+ )?(?:cables?|wires?|wiring|electric\w*)\b"),
    (r"way\.pipe|suction\.pipe", rf"\b{_LAID_ON}\b[^.;,\d]{{0,15}}$"),
    (r"way\.pipe|suction\.pipe", "", rf" ?(?:of )?(?:[a-z]+ )?{_LAID_ON}\b"),
    (r"way\.pipe|suction\.pipe", "", r"(?: [a-z]+){0,2} for the (?:last|first|final) (?:bit|part|stretch|piece|few)\b"),
    (r"way\.pipe|suction\.pipe", "", r"(?: [a-z]+){0,2},? but (?:they|he|she|the (?:shop|man|plumber|builder)) (?:sent|laid|brought|delivered|gave|put|used|came)\b"),
    # what hangs in a well and is no pump
    ("pump.height", r"\b(?:foot[ -]?valve|intake|strainer|probe|float(?: switch)?|sensor|pipe|rope|bucket|electrodes?|transducer|dip ?tube|suction)\b(?:(?!\bpump\b)[^.;])*\b(?:hangs?|sits|is|hung|set|hanging|goes|reaches)\b[^.;,\d]{0,10}$"),
    # what is buried is another thing
    ("pipes.held=buried", "", r" (?:treasure|bone|money|cable|wire|bodies)\b"),
    ("pipes.held", r"\b(?:septic|drain|gas|sewer|power|phone|waste)(?: field)? (?:line|pipe|main)s?\b[^.;]{0,15}$"),
    ("pipes.held", r"\b(?:half|partly|part) $"),
    ("pipes.held", r"\b(?:was|were)(?: all)? $", r",? (?:but |and )?(?:now|until|till|before)\b"),
    ("pipes.held", "", r" (?:where|only where|for the (?:first|last)|part of|in places|except)\b"),
)  # fmt: skip

_BACK = re.compile(
    r"[^.;\n\d]{0,25}?(?:\.{2,}|[.;,(–…-])[.\s]*(?:(?:no|wait|hmm|oops|sorry|hang on|hold on|actually|er)[,. ]+){0,3}"
    r"(?:(?:that|this|it)(?:'s| is| was| one is| number is| figure is| can'?t be)(?: all| quite| plain)? (?:wrong|not right|not true|nonsense|rubbish|a (?:mistake|typo|slip)|from the old|the old)"
    r"|(?:skip|ignore|forget|scratch|strike|disregard|never ?mind) (?:that|it\b|the (?:voltage|number|figure|last|volts|pressure)))"
)
_SKIP = re.compile(
    r"\b(?:forget|ignore|skip|scratch|disregard|never ?mind|strike) (?:the|that|my) (?:[a-z]+ ){1,2}(?:that )?(?:i|we)(?: [a-z]+)? (?:gave|said|wrote|told|mentioned|put)\b[^.;\d]{0,25}$"
)

_AT_PRESSURE = {"pump.cut_in", "pump.cut_out", "pump.set"}
_WITHOUT = re.compile(
    r"\b(?:no|without|has not|hasn't|lacks|isn'?t|aren'?t|don'?t have|haven'?t) (?:an? |any )?(?:[a-z]+ )?switch\b"
)
_PRESSURE = re.compile(r"\b(?:bars?|psi|kpa|pounds|lbs|pressure|switch|cut[ -]?(?:in|out|off))\b")
_DAY = re.compile(r"\b(?:dawn|sunrise|dusk|sunset|noon|midday|morning|evening|night)\b")
_WAS = re.compile(r"\b(?:was|used to|had been|hung)\b")
_NOW = re.compile(r"[^.;\n]{0,25}[,;.] ?(?:but |and )?now\b")
_GIVES = re.compile(
    r"\bpumps?\b[^.;]*\b(?:gives?|makes?|delivers?|puts out|yields?|lifts?|sends?)\b"
)
_LEAST_VOLTS = 9  # below which a battery is one of several; common practice, no source
_HOURS = 12  # up to which a number without a unit may be one of the clock


def _clock(low: str, piece: Piece) -> bool:
    """Whether a pump's pressure without a unit may be an hour: "starts at 6 and stops at 8"."""
    bare = not re.search(r"[a-z]", low[piece.start : piece.end]) and piece.low <= _HOURS
    begin = max(low.rfind(sign, 0, piece.start) for sign in ".;\n") + 1
    return bare and bool(not _PRESSURE.search(low) or _DAY.search(low, begin, piece.end + 20))


def taken_back(low: str, piece: Piece) -> bool:
    """Whether the next words say that what was said is wrong: "96 V ... wait, that's wrong"."""
    if not re.match(_OWN, piece.path):
        return False
    if piece.path in _AT_PRESSURE and _clock(low, piece):
        return True
    if piece.path == "way.pipe" and low[piece.start : piece.end] == "half":
        return True  # "the pipe is half buried"
    if piece.path == "pump.placement" and _GIVES.search(low[piece.start : piece.end]):
        return True
    if piece.path == "power.voltage" and 0 < piece.low < _LEAST_VOLTS:
        return True  # of one battery of several
    if piece.path == "pump.control" and _WITHOUT.search(low[piece.start : piece.end]):
        return True
    was = piece.path == "pump.placement" and _WAS.search(low[piece.start : piece.end])
    if was and _NOW.match(low, piece.end):
        return True
    return bool(
        _BACK.match(low, piece.end) or _SKIP.search(low[max(0, piece.start - 70) : piece.start])
    )


_LYING = re.compile(
    r"\b(?:on|by|beside|near|along|across|over|under|cross(?:es|ing)?|past|behind|below|above|overlooking|facing|down to|next to|close to|opposite|swim in|play in|fish in|bathe in) (?:the|our|an?) (?:[a-z]+ )?$"
)
_BANK = re.compile(
    r"(?:'s)? (?:bank|bluff|shore|side|front|house|cabin|cottage|level|lot|property|land|valley|bed|to cross|cross(?:ing)|view)\b|side\b|front\b|shore\b"
)
_DRAWN = re.compile(
    r"\b(?:pump\w*|draw\w*|suck\w*|suction|lift\w*|intake|foot[ -]?valve|suction hose|strainer|weir|takes?|taking|took|water from)\b"
)


def near(low: str, pieces: list[Piece]) -> list[Piece]:
    """Without the creek or lake that only says where a house, a line or a spring lies, where a
    spring or a well is told of as well."""
    pieces = _driven(low, pieces)
    kinds = [one for one in pieces if one.path == "water.kind"]
    own = {one.word for one in kinds if _ours(low, one)}
    if len(own) == 1:
        return [one for one in pieces if one.path != "water.kind" or one.word in own | {"cistern"}]
    sure = [one for one in kinds if one.word in {"spring", "well"} and one.weight >= 2]
    if not sure:
        return pieces
    out = {id(one) for one in kinds if one.word == "stream" and _lies(low, one)}
    return [one for one in pieces if id(one) not in out]


def _lies(low: str, one: Piece) -> bool:
    begin = max(low.rfind(sign, 0, one.start) for sign in ".;\n") + 1
    ends = [at for sign in ".;\n" if (at := low.find(sign, one.end)) >= 0]
    left, right = low[begin : one.start], low[one.end : min(ends, default=len(low))]
    if _DRAWN.search(left) or _DRAWN.search(right):
        return False
    return bool(_LYING.search(left[-40:]) or _BANK.match(right))


_IS_OURS = re.compile(
    r" (?:is|are) (?:our|my|the) (?:only )?(?:water|source|supply)\b(?! (?:board|line|pipe|tank|level))"
)
_OURS_IS = re.compile(
    r"\b(?:our|my|the|all) (?:drinking |house |only |own )?(?:water|source|supply)(?: here)?(?:'s| is| comes| come| source| supply| from| out of| off)+ (?:an? |the |our )?(?:drilled |dug |deep |old |little |small )?$"
)


def _ours(low: str, one: Piece) -> bool:
    """Whether it is said that all the water is of this source."""
    return bool(
        _IS_OURS.match(low, one.end) or _OURS_IS.search(low[max(0, one.start - 60) : one.start])
    )


_RUNS_ON = re.compile(
    r"\bpump(?:'s| is| runs| works| goes| hangs| plugs)?(?: now| only| just)? (?:on|off|from|in|into|by|with) (?:the |our |a )?$"
)


def _driven(low: str, pieces: list[Piece]) -> list[Piece]:
    """Without panels, where it is said that the pump itself is on the mains or a generator."""
    powers = [one for one in pieces if one.path == "power.source"]
    own = {one.word for one in powers if _RUNS_ON.search(low[max(0, one.start - 40) : one.start])}
    if len(own) != 1 or "none" in own:
        return pieces
    return [one for one in pieces if one.path != "power.source" or one.word in own]
