"""Facts that an enquiry tells in words alone: the source, where the pump is, its control, power."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import lru_cache

from calc.site import enquiry_machines as machines
from calc.site.enquiry_claims import WORDS as CLAIMED
from calc.site.enquiry_facing import facing
from calc.site.enquiry_hints import HINTS
from calc.site.enquiry_noise import negated
from calc.site.enquiry_spoken import SPOKEN
from calc.site.enquiry_sun import GROWN, WORDS
from calc.site.enquiry_supposed import out_of_reach, pulled_out, to_come
from calc.site.enquiry_taken import dry, of_such, piped
from calc.site.enquiry_ways import flat_way
from calc.site.enquiry_words_more import CROP, CROP_KEYS, CROPS, HEADS, MORE


@dataclass(frozen=True)
class Said:
    """A word fact: path, value, where; weight: of several said, the heaviest counts."""

    path: str
    value: str
    start: int
    end: int
    weight: float = 1.0


_DEFINED = tuple((path, value, weight, re.compile(pattern)) for path, value, weight, pattern in (
    ("water.kind", "well", 3, r"\b(?:(?:drilled|dug|bored|hand[ -]dug|driven|shallow|deep|old|open|artesian|stone|our|my|the|a|from|domestic|ring|brick[ -]lined)[ -])+(?:well|bore ?hole|bore|sand ?point)\b(?<!shallow well(?= (?:jet|pump)))(?<!deep well(?= (?:jet|pump)))(?! (?:above|below|over|under|enough|known|as|done|if))"),
    ("water.kind", "well", 2, r"\b(?:bore ?-?(?:holes?|wells?)|driven points?|tube ?wells?|well ?head|sand ?points?|artesian)\b|(?<!as )(?<!very )(?<!pretty )(?<!quite )(?<!so )(?<!may )(?<!works )(?<!work )(?<!fairly )(?<!too )(?<!how )(?<!run )(?<!runs )(?<!really )(?<!know )(?<!equally )(?<!good, )\bwells?\b(?<!shallow well)(?<!deep well)(?<!all's well)(?<!all is well)(?! ?,? (?:with the|above|below|over|under|enough|known|done|if|insulated|beyond|within|i|we|so|anyway|there|that|it|and truly|yes|no|the|here|my|our|you|maybe|as|sort|kind|not|actually|five|six|seven|eight|nine|ten|two|three|four|what|this|he|she|they)\b)"),
    ("water.kind", "well", 2, r"(?:^|[\n.;:,(] ?)(?:dug |drilled )?well\b(?=[ ,:;(-]+(?:\d|¤|is|about|depth|,|-|yield|static|water))"),
    ("water.kind", "spring", 3, r"(?<!last )(?<!this )(?<!next )(?<!every )(?<!early )(?<!late )(?<!in the )(?<!in )(?<!by )(?<!since )(?<!each )(?<!until )(?<!leaf )\bsprings?\b(?! (?:is (?:the best|a good|when|here|coming|the time)|of|time|break|clean|loaded|steel|rains?|melt|thaw|check|and (?:summer|fall|autumn)|we|i|comes (?:we|i))\b)(?!-(?:loaded|clean))|\bseep\b|\bhillside seep"),
    ("water.kind", "stream", 3, r"\b(?:ditch|irrigation canal|canal|creeks?|streams?|brooks?|rivers?|(?<!to )(?<!not )(?<!will )(?<!could )(?<!might )burn(?! (?:out|up|off|it|the|my|our|through|down))|beck|lake|(?<!fish )(?<!duck )(?<!koi )(?<!garden )(?<!swimming )(?<!settling )pond|dam|rill|burnie)\b(?! (?:stone|rock|gravel|cobble|road|rd|lane|street|drive|farm|valley|ranch|bed road|view))"),
    ("water.kind", "cistern", 3, r"(?<!toilet )(?<!wc )(?<!flush )(?<!flushing )(?<!loo )\b(?:cisterns?|rain ?-?water (?:tank|collection|harvest\w*|catchment|system|storage|only)|roof water|rain tank|rain ?catchment|catchment tank|rainwater|collects? rain|catch(?:es)? rain|rain (?:off|from) (?:the|our|a) (?:\w+ )?roof|rain barrels?|underground tank)\b"),
    ("pump.placement", "in", 2.5, r"\bpump\b(?: [a-z]+){0,2}? in it\b|\bpump\b[^.;\n¤]{0,25}\b(?:submerged|under ?water|in the water)\b"),
    ("pump.placement", "out", 3, r"\bpump\b[^.;\n¤]{0,30}\b(?:on|beside|next to|at|by) (?:the |its )?(?:well (?:cover|lid|cap|top|slab|head)|wellhead|lid|cover|cap|curb)\b|\bpump\b[^.;\n¤]{0,25}\b(?:up top|outside|above ground|on top)\b(?! of the hill)|\bpump\b[^.;\n¤]{0,30}\bsucks?\b(?! (?:some |only |in )?air)|\bpump\b[^.;\n¤]{0,40}(?<!spring)(?<!collection)(?<!collecting)(?<!intake) (?:wall|corner|box|cubby|mechanical room|sun ?room|carport|scullery|pantry|tool ?shed|wash ?house|dairy|woodshed|boiler house)\b"),
    ("pump.placement", "out", 3, r"\b(?:crawl ?space|basement|cellar|garage|shed|under-?sink|pump ?house|surface[ -]type|deck) pump\b|\bpump \(surface|\bpump is of surface"),
    ("pump.placement", "in", 6, r"\bpump (?:itself )?(?:is|hangs|sits) (?:right )?down the (?:hole|well|bore\w*)\b"),
    ("pump.placement", "in", 9, r"(?<!non-)(?<!non )\b(?:submers[ia]bles?|submersable|sub(?= pump|,| at| on| in| is| down| set| hung|\.|$|\n)|subm\.? pump|sub pumps|submerged pump|down ?-?(?:the ?)?-?hole pump|down-?well pump|well pump hangs|immersion pump|submercible|submersibel)\b"),
    ("pump.placement", "in", 2, r"\bpump(?:'s| is| sits| hangs| hung| set| hanging| installed| located)?(?: hung| hanging| set| down| installed| lowered| at \w+ \w+)? (?:down )?(?:in|inside|at the bottom of|down|down in) (?:the|our|a|my) (?:well|bore|borehole|casing|tank|cistern|hole|water|creek|spring box)\b"),
    ("pump.placement", "out", 3, r"\b(?:(?:shallow|deep)[ -]well )?jet pumps?\b|\b(?:surface|above[ -]ground|surface-mount(?:ed)?|self[ -]?priming|suction|transfer|rv|shurflo-type|demand|convertible jet)(?: jet| water| booster| transfer)?[ -](?:pump|set)s?\b"),
    ("pump.placement", "out", 3, r"\b(?:pump(?:'s)?|booster)\b(?:(?!\b(?:sensor|transducer|sensing|tank|vessel|panels?|switch|gauge|controller|inverter|battery|line|pipe)\b)[^.;\n¤]){0,40}? (?:in|at|on|inside|under|by|next to|beside)(?: (?:the|a|our|my|an|top of))* (?:\w+ )?(?:shed|garden shed|pump ?-?house|basement|garage|well ?-?house|cellar|hut|barn|utility room|crawl ?space|closet|laundry|pump room|pit|slab|pad|platform|dock|jetty|raft|stairs|cupboard|workshop|storeroom|store room|boathouse|engine room|attic|loft|plant room|boiler room|well pit|stable|barn|house|cabin|cottage|small house|lean-to|bank|shore|(?<!under )(?<!under the )ground|surface|creek ?bank|cabinet|box beside|lean-?to|deck|porch|top|kitchen|sink)\b(?! (?:well|bore\w*|tank|cistern|spring)\b)"),
    ("pump.placement", "out", 3, r"\bpump\b[^.;\n¤]{0,35} (?:on|along|at) (?:the|its|a) (?:\w+ )?(?:bank|shore|edge|ground|surface)\b(?! of the (?:hill|wood))"),
    ("pump.placement", "out", 3, r"\bpump\b[^.;\n¤]{0,40} above (?:the |its |our )?(?:\w+ )?(?:water|creek|stream|pond|river|lake|well water|spring|cistern)\b"),
    ("pump.placement", "out", 2, r"\bpump(?:'s| is| sits| stands| set)? (?:\w+ )?(?:by|next to|beside|near|close to|right at) (?:the |our |a |my )?(?:\w+ )?(?:well|creek|stream|tank|cistern|house|spring|pond|river|lake|door)\b"),
    ("pump.placement", "in", 2.5, r"\bpump\b[^.;\n¤]{0,35} (?:in|inside|down in|sunk in|down) (?:the |our |a |my )?(?:\w+ )?(?:well|borehole|bore|cistern|creek|stream|pond|tank|river|spring|water|lake|reservoir|sump)\b(?! (?:house|shed|box|pit|room|head))"),
    ("pump.placement", "out", 2.5, r"\bpump\b[^.;\n¤]{0,55} (?:beside|next to) (?:an?|the|our|my) (?:[\w.,]+ ){0,3}?(?:tank|cistern)\b"),
    ("pump.placement", "out", 3, r"\bpump, [^.;\n¤]{3,60}, (?:is|sits|stands|lives) (?:in|on|at|by|beside|under) (?:the|an?|our|its) [^.;\n]{0,20}\b(?:shed|hut|bank|cellar|basement|garage|pump ?house|house|barn|slab|pad|crawl ?space|deck|shore|jetty)\b"),
    ("pump.placement", "out", 3, r"\bshallow[ -]well pumps?\b|\bjet\b(?=[^.;\n]{0,25}\b(?:well|pump|shed|basement|garage|switch))|\bpump\b[^.;\n¤]{0,40} (?:in|under|inside) (?:the |our |a |my )?(?:\w+ )?(?:mud ?room|entry|vault|root cellar|milk house|house|crawl ?space|pit|outbuilding)\b"),
    ("pump.placement", "in", 2.5, r"\bdown ?hole pumps?\b|\bpump (?:is |hangs |hung |set |sits |set at )?(?:at )?[^.;\n¤]{0,25}\b(?:down (?:the|in the|our)|in the|inside the|below ground in the) (?:well|bore\w*|casing)\b"),
    ("pump.placement", "out", 1.5, r"\bpump ?-?(?:house|shed|hut)\b"),
    ("pump.placement", "out", 2, r"\bpump ?-?(?:house|shed|hut)\b(?= (?:with|has|holds)|[^.\n]{0,30} pump (?:is|sits))"),
    ("pump.control", "speed", 3, r"\b(?:variable[ -]speed|vfd|v\.f\.d\.|vsd|speed[ -]control(?:led|ler)?|inverter[ -](?:driven|pump|controlled)|constant[ -]pressure (?:system|pump|controller|drive|set|kit|unit)|variable[ -]frequency|controlled by (?:a )?frequency|frequency[ -]controlled|frequency (?:drive|converter|inverter|control|controller)s?|(?:holds?|keeps?|maintains?)(?: it| the pressure)?(?: at)? (?:a )?(?:constant|steady)|constant (?:at )?(?:pressure|\d+ ?(?:psi|bar))|holds? (?:it |the pressure |pressure )?(?:at )?(?:a )?(?:constant|steady)|soft[ -]start variable|inverter (?:drive|control)s?|(?:it's|is|has|with) a drive\b|holds? [^.;\n]{0,12}\b(?:const\b|steady)|constant[ -]pressure set)\b"),
    ("pump.control", "switch", 3, r"\b(?:(?:the|a) switch (?:brings|turns|starts|cuts|opens|closes|switches)|(?:\d|¤) ?(?:psi|bar) switch|pressostat|pressure[ -]?switch(?:es)?|(?:pump|tank|psi)\b[^.;\n¤]{0,30}\bswitch\b(?! (?:it )?(?:on|off|to|over))|(?<!light )(?<!float )(?<!flow )(?<!transfer )\bswitch (?:is |set |cuts |kicks |at |of )+(?:set |at |to |in )*\d|pres(?:s)?(?:ure)? sw\b|presure switch|(?:\d+|¤+)\s?[/-]\s?(?:\d+|¤+)(?: ?psi| ?bar)?(?:[ -]pressure)? switch)"),
        ("pump.control", "fixed", 3, r"\b(?:fixed[ -]speed|single[ -]speed|constant[ -]speed|runs at (?:one|full|a fixed) speed|straight on/off|on/off only)\b"),
    ("power.source", "sun", 3, r"\b(?:sun only|only (?:the )?sun|(?:v|volts?|power) (?:system )?from the sun|by the sun|sun[ -]power(?:ed)?|solar(?:[ -](?:power(?:ed)?|panels?|array|system|pump|setup|electric(?:ity)?|modules?|pv|direct|battery|off|kit))?|panels|a panel\b|photovoltaic\w*|sun ?panels|solar cells|(?:power|energy|current|electricity) (?:from|of|by) the sun|pv\b(?: (?:panels?|array|system))?|photovoltaics?|(?:¤|\d+ ?w(?:att)?|w|watt) panels?)\b(?! (?:hot water|water heater|thermal|lights?|shower|gain|fence|guys?|people|compan\w+|firms?|sales\w+|installers?|dealers?|shops?|quotes?))"),
    ("power.source", "grid", 3, r"\b(?<!nearest )(?<!closest )(?<!nearest electric )(?:on the utility\b|power co-?op|hydro(?:'s| is) (?:in|connected|there)|power pole\b(?!s? (?:is|are|stands?|ends?)? ?(?:about |only |some |at |over |a )?(?:\d|¤|half|too|far|miles?|couple))|(?:wall )?socket\b|plug-in pump|(?:normal|ordinary|regular|house|household|city|town|shop) (?:current|electricity|electric|power)\b|we(?:'ve| have) got (?:power|electricity)\b|(?:electricity|power) (?:is |at |on )?(?:there|in the|available|on site|at the (?:house|well|pump|yard))\b|mains(?: power| electricity| electric| supply)?|grid[ -](?:power|tied?|connected|electric(?:ity)?)|on (?:the )?(?:grid|mains)(?: power)?|utility power|(?:from|to) the grid|\bon the mains\b|\bmains (?:voltage|is|available)\b|(?<!micro )(?<!micro-)(?<!pico )(?<!own )(?:hydro|shore|utility) (?:power|electricity)(?! (?:from|of|by) (?:our|the|a) (?:stream|creek|turbine|river|brook))|line power|(?:we|i)(?:'ve)? (?:have |got |have got )(?:the )?grid\b|grid at the (?:house|cabin|barn|pump)|regular power from the (?:utility|pole)|power company|public (?:grid|network|electricity|current)|(?:electricity|current|electric|power) (?:from|of|by) the (?:public |local )?(?:network|net|grid|street|village|company))\b(?! ?(?:water|pressure|comes? in at \d|is at \d ?bar|(?:is|has|gives) (?:about )?\d[\d.]* ?(?:bar|psi)))"),
    ("power.source", "generator", 2, r"\b(?:aggregate that runs|generator|genset|genny|gennie|gen set|diesel pump|petrol pump|gas pump|(?:gas|petrol|diesel|gasoline|benzine?)[ -](?:powered |driven |engine |motor )(?:water )?pump)\b(?! (?:backup|back-?up|as (?:a )?backup|for (?:backup|winter|cloudy|emergenc\w+)))"),
    ("power.source", "none", 3, r"\b(?:no (?:mains,? )?(?:power|electricity|electric|mains(?: power)?|power at all)(?: at all| there| up[ ]there| on site| available| here| to speak of| out here)?|without (?:any )?(?:electricity|power)|there(?:'s| is) no (?:electricity|power)|(?:don'?t|do not) have (?:any )?(?:electricity|power)|(?:power|electricity|mains|current)(?: on site| there)? *[:=?-]+ *(?:none|no|nil|n/a|not yet))\b(?! (?:water|cuts?|outages?|lines?|bills?|from|company|to the|yet|tools|(?:\w+ )?pumps?|motors?|fenc\w+|heaters?|heating|showers?|kettle|cables?|wires?|gates?|cars?|stove|cooker))"),
    ("power.battery", "lfp", 3, r"\b(?:li-?fe-?po-?4|lfp|lithium(?:[ -]iron[ -]phosphate)?(?:[ -]ion)?|lifepo)\b"),
    ("power.battery", "agm", 3, r"\bagms?\b"), ("power.battery", "gel", 3, r"\bgel (?:batter(?:y|ies)|cells?|bank)\b|\b(?:batter(?:y|ies)|ah)\b[^.;\n]{0,14}\bgel\b|\bgel\b[^.;\n]{0,14}\bah\b"),
    ("power.battery", "flooded", 3, r"\b(?:flooded(?= (?:lead|batter|cells?|ones|type|golf|deep|\d))|(?<=batteries )flooded|(?<=batteries are )flooded|(?<=battery is )flooded|(?<=battery )flooded|(?<=ah )flooded|(?<=acid )flooded|(?<=volt )flooded|(?<=v )flooded|lead[ -]?acid|golf[ -]?cart batter(?:y|ies)|wet cells?|truck batter(?:y|ies)|forklift batter(?:y|ies))\b"),
    ("power.controller", "mppt", 3, r"\bmppt\b"), ("power.controller", "pwm", 3, r"\bpwm\b"),
    ("pipes.held", "buried", 3, r"\b(?:buried|burried|under (?:the )?(?:earth|soil)|in the (?:earth|soil)|dug into|in (?:a|the) trench|underground|trenched|dug in|(?:below|under) (?:the )?frost ?line|in the ground)\b"
                                r"(?! (?:his|hers|theirs|tank|cistern|cable|electric|concrete|power|water tank|poly tank|plastic tank))"),
    ("pipes.held", "buried", 3, r"\b(?:pipe|poly|hdpe|mdpe|pvc|line|laid|pe|pex)\b(?:(?!\b(?:well|bore|pond|tank|cistern|hole|lake|pit)\b)[^.;\n]){0,40}(?:feet|ft|m|cm|inches|foot|metres|meters|\d\"|') (?:deep|underground|under (?:the )?ground)\b"),
    ("pipes.held", "buried", 3, r"\b(?:dig|dug|bury|digging|burying|trench) (?:it|them|the (?:pipe|line|whole (?:thing|lot))|everything|all of it)\b(?: (?:in|down|under))?(?! (?:out|up|again|well|by hand))|\btrench (?:is|was|has been) (?:already )?(?:dug|open|ready|done)\b"),
    ("pipes.held", "laid", 3, r"\b(?:lying|lies|laid|laying) (?:just |loose |simply )?(?:on|in|over|across) (?:the |top of the )?(?:bare |open |wet |long )?(?:rocks?|grass|heather|bracken|meadow|scree|moss|gravel|sand)\b"),
    ("pipes.held", "laid", 3, r"\blay\b[^.;\n]{0,35} on (?:top of )?(?:the )?(?:ground|grass|surface|meadow)\b"),
    ("pipes.held", "laid", 3, r"\b(?:pipe|poly|hose|pvc|hdpe|pe|line)\b[^.;\n]{0,30},? (?:on (?:top of )?(?:the )?(?:ground|surface|grass|meadow)|above ?-?ground)\b(?! (?:floor|storey))"),
    ("pipes.held", "laid", 3, r"\b(?:(?:on|over|along) (?:top of )?the (?:paddock|turf|forest floor|field|bare ground|rocks?)(?= *(?:[,.;\n]|$))|(?:laid|lying|lies|laying|runs?|run|sits?|just|stays?|be|is) (?:\w+ )?(?:on|along|over|across|above) (?:top of )?(?:the )?(?:ground|surface|grass|meadow|earth|soil|forest floor)(?! (?:floor|storey|level))|on the surface|lies open|open on the|on top of the ground|above ?-?ground(?= (?:pipe|poly|line|,|\.|and))|surface[ -]laid|not buried|isn'?t buried|unburied)\b"),
    ("pump.dry_run", "yes", 3, r"\b(?:dry[ -]?run(?:ning)? (?:protection|cut ?-?off|cutout|sensor|guard|protect\w*)|low[ -]water (?:cut ?-?off|cutout|sensor|probe|protection)|run[ -]dry protection)\b"),
    ("pump.works", "diaphragm", 3, r"\b(?:diaphragm|piston|helical(?:[ -]rotor)?|progressive cavity|positive displacement|screw) pumps?\b"),
    *MORE,
    *WORDS,
    *SPOKEN,
    *HINTS,
    *CLAIMED,
    *machines.WORDS,
))  # fmt: skip
_NO_PUMP = re.compile(
    r"\b(?:(?:there(?:'s| is)|we have|i have|have|got|with|is|needs?|use|using|wants?) no pump|neither pumps? nor|nor (?:a |any )?pump|no pumps?(?= (?:wanted\b|required\b|please\b|thanks\b|(?:is|was|are) (?:planned|needed|wanted|used|involved|there|foreseen|installed|necessary|fitted|in use)|on it|at all|at present|at the moment|for now|right now|so far|in the (?:line|pipe|system)|installed|fitted|needed|here|yet|there|anywhere|in (?:it|the system))|[,.;)]| -|$|\n| and | or | just| only| so| involved|: )"
    r"|without (?:a |any |using a )?pump|pump\b *[:=?-]+ *(?:none|no\b|nil|not any|not yet|n/a|nope)|(?:isn'?t|is not|ain'?t) (?:a|any|no) pump\b(?! (?:that|for|we|i))|\bpump-?less\b|(?:never had(?: an?| any)?(?= pumps?\b(?! test))|have no|got no|use no|ain'?t got (?:no|a|any)) pump|no have (?:a )?pump|(?:do not|don'?t) own (?:a |any )?pump|(?:do not|don'?t) have a pump|no pumps? (?:of any (?:kind|sort)\b|whatever\b)|no pump (?:involved|in it|used|whatsoever)|by (?:its|it's) own (?:weight|fall|pressure)|natural (?:fall|pressure)|don'?t (?:have|want|use|need) (?:a |any )?pump\b(?! that)|do not have (?:a )?pump\b|(?:gravity|grav)[ -]?(?:fed|feed|flow|system|only|supply|line|pressure|mains?(?! (?:power|electric))|pipe|scheme)\b"
    r"|(?:water|it|which|that)\b[^.;\n]{0,25}\b(?:comes|runs|flows|falls|arrives|goes)(?: down| to us| in)? (?:all )?by (?:itself|themselves)\b|[,(] ?gravity(?= ?[.,;)\n])"
    r"|(?:all|just|only|runs?|purely|entirely|comes?|works?|everything|pure|fed|feeds?|flows?) (?:on|by|from|down by|in by|is) gravity|by gravity|gravity (?:does|only|alone|all|pressure|from)|(?:all|straight|just|only|simple|pure) gravity)"
)


def said(low: str) -> list[Said]:
    """Word facts of a masked, folded text; several values of one path may be among them."""
    found: list[Said] = []
    for path, value, weight, pattern in _DEFINED:
        for match in pattern.finditer(low):
            own = value in {"none", "laid", "no", "plain"} and re.match(
                r"no|not|isn|neither|never|without|there|don|do |did|have|un", match.group()
            )
            if own or not negated(low, match.start()):
                gone = path == "water.kind" and dry(low, match.end())
                found.append(Said(path, value, *match.span(), 0.1 if gone else weight))
    found += [Said("power.facing", *one, 3) for one in facing(low)]
    found += _crop(low)
    return [
        one
        for one in found
        if not (
            _backup(low, one)
            or _denied(low, one)
            or _loose(low, one)
            or machines.elsewhere(low, one.path, low[one.start : one.end], one.end)
        )
    ]


_BETWEEN = re.compile(
    r"(?<!next)(?<!close)(?<!fixed)(?<!bolted) (?:to|from|feeds?|and|but|yet|supplies|which(?! (?:is|stands|sits|lives|hangs|was|i have|we have))|fills?|for|pushes|delivers) "
)
_FLOAT = re.compile(r"\b(?:floats?|probes?|sensors?|electrodes?|controlled by)\b")
_HUNG = re.compile(r"\b(?:hung|hang|lowered|dropped|set) (?:the |our |my )?$")
_APART = re.compile(r" (?:theres|there's|there is|phase|power|electric\w*|it's|its) ")
_WOULD = re.compile(
    r"\b(?:would|could|should|might|may)(?: you| we| i)? (?:put|place|set|mount|install|go|hang)\b[^.;\n]{0,12}$"
)
_LINE = re.compile(
    r"\b(?:pipes?|piping|line|lines|poly\w*|hose|pe|pvc|hdpe|mdpe|pex|laid|trench\w*|run|runs|main|conduct|tube|tubing|alkathene|copper|\d+ ?mm|\d ?in(?:ch)?)\b|\d\""
)


def _elsewhere(low: str, one: Said) -> bool:
    """Whether words that place a pump are of another thing, or of a pump that is not asked about."""
    said = low[one.start : one.end]
    if re.match(r"pump (?:dealer|shop|store|man|guy|company|seller|supplier)\b", said):
        return True
    if re.match(r"bore", said) and re.search(r"\b(?:booster|surface pump|second pump)\b", low):
        return True  # two pumps: which of them is asked about?
    if re.search(r"\d ?(?:psi|bar) at\b|pump, \d+ ?(?:psi|bar) at", said) or low[
        : one.start
    ].endswith(
        (
            "psi at ",
            "bar at ",
            "psi at the ",
            "bar at the ",
            "hand ",
            "sewage ",
            "septic ",
            "heat ",
            "fire ",
            "circulation ",
            "pool ",
        )
    ):
        return True
    if pulled_out(low, one.start, one.end):
        return True
    if one.value == "out" and _HUNG.search(low[max(0, one.start - 14) : one.start]):
        return True  # "we hung the pump at 40, there's power at the shed"
    return bool(
        _FLOAT.search(said)  # "controlled by a float in the tank"
        or _BETWEEN.search(said)
        or _APART.search(said)
        or _WOULD.search(low[max(0, one.start - 35) : one.start])
    )


def _loose(low: str, one: Said) -> bool:
    """Whether the words are of another thing than they seem: a tank that is buried, a pump in one
    half of a sentence and a cellar in the other, a place where it only would be."""
    said = low[one.start : one.end]
    if one.value == "valve" and re.search(r"\b(?<!no )(?<!any )pumps?\b", low):
        return True  # a valve in a house that a pump feeds
    if one.path.startswith("drip.") and not _DRIPS.search(low):
        return True
    if one.path == "pump.guard" and not _DISPLACES.search(low):
        return True
    if one.path == "water.kind" and _TOWARDS.search(low[max(0, one.start - 30) : one.start]):
        return True  # a side of the land, as the road is
    if one.value == "grid" and _FLOWS.match(low, one.end):
        return True  # "fed by mains at 1.5 m3/h"
    if one.value == "grid" and said.endswith("mains") and piped(low, one.start):
        return True  # the town's water
    if one.value == "grid" and _TAP.search(low[max(0, one.start - 25) : one.start]):
        return True
    if one.path == "power.source" and one.value != "sun":
        return out_of_reach(low, one.start, one.end)
    if one.path == "power.source":
        return bool(re.match(r"[^.;\n]{0,3}[:,-] *(?:none|no\b(?! \w+)|not yet)", low[one.end :]))
    if one.path == "pump.placement":
        return _elsewhere(low, one)
    if one.path != "pipes.held":
        return False
    no_line = _NO_LINE.search(low[max(0, one.start - 45) : one.start] + said[:18])
    planned = to_come(low, one.start)
    if no_line or planned or one.value != "buried":
        return bool(no_line or planned)
    if re.search(r"\bwater\b[^.;,\n]{0,30}$", low[max(0, one.start - 40) : one.start]):
        return True  # how far down the water is
    begin = max(low.rfind(sign, 0, one.start) for sign in ".;\n") + 1
    ends = [at for sign in ".;\n" if (at := low.find(sign, one.end)) >= 0]
    tank = re.match(r"(?: [a-z-]+){0,2} (?:tank|cistern|reservoir)", low[one.end :])
    line = low[begin : min(ends, default=len(low))]
    alone = len(line) < 25 and not re.search(r"\b(?:tank|cable|cistern|wire|box|is)\b", line)
    its = re.match(r"\s*(?:[^.;\n]{0,25}, so )?(?:and )?(?:it|they|all of it|everything)\b", line)
    goes_on = its and _LINE.search(low[max(0, begin - 120) : begin])
    return bool(tank) or not (_LINE.search(line) or alone or goes_on)


_TOWARDS = re.compile(r"\b(?:towards?|beyond|facing|other side of) (?:the|our|a) (?:\w+ )?$")
_FLOWS = re.compile(r"[ ]*\b(?:at|with) [\d.]+ ?(?:m[3³]|l\b|l/|lit|bar\b|gpm|gal|psi)")
_TAP = re.compile(r"\b(?:tap|water|pipe|hose) (?:is |that is )?(?:on (?:the )?)?$")
_NO_LINE = re.compile(
    r"\b(?:pumps?|tanks?|cables?|wires?|wiring|drums?|barrels?|box|boxes|cisterns?|vessels?|totes?|ibcs?|reservoirs?|panels?|hose reel|septic|chamber|valves?|meter|stones?|bodies|treasure|power line)(?: itself)? (?:is|are|sits|sit|stands|stand|lies|lie|was|just)(?: just| simply| only| partly| half| fully| now| all)? ?(?:is |buried |laid |lies |lying |on |in |underground)*[a-z ]*$"
)
_DENIED = re.compile(
    r"[ ,]*(?:neither\b|(?:i|we) (?:don'?t|do not) (?:use|have|want|own)\b|(?:are|is) not (?:there|wanted|available|used)|(?:is|are)(?:n't| not) (?:mine|ours)|: *no\b"
    r"|of the net there is not|(?:batter\w+ |pumps? |ones? )?(?:would (?:be|cost|mean|last|do)\b|(?:was|were|is|are) (?:just |much |far |simply )?too (?:dear|expensive|costly|much)\b))"
)


def _denied(low: str, one: Said) -> bool:
    """Whether the words behind a thing say that there is none."""
    return one.value not in {"none"} and bool(_DENIED.match(low, one.end))


def _backup(low: str, one: Said) -> bool:
    around = low[max(0, one.start - 30) : one.end + 30]
    seldom = re.search(r"back-?up|occasional|emergenc|sometimes|winter", around)
    return one.value == "generator" and bool(seldom)


_DISPLACES = re.compile(r"\b(?:diaphragm|displacement|piston|helical|screw pump|membrane pump)")
_DRIPS = re.compile(r"\b(?:drip|dripline|drippers?|emitters?)\b")


def _crop(low: str) -> list[Said]:
    """What grows on drip, where one crop is named, or one stands in all of a letter about drip."""
    hits = [one for pattern in CROPS for one in pattern.finditer(low)]
    keys = set()
    for one in hits:
        begin = max(low.rfind(sign, 0, one.start()) for sign in ".;\n") + 1
        line = re.split(r"[.;\n]", low[begin:], maxsplit=1)[0]
        keys |= {CROP_KEYS[word["crop"]] for word in CROP.finditer(line)}
    many = len(_DRIPS.findall(low))
    if not hits and many and (many > 1 or GROWN.search(low) or HEADS.search(low)):
        hits = list(CROP.finditer(low))
        keys = {CROP_KEYS[one["crop"]] for one in hits}
    if len(keys) != 1:
        return []  # none, or several that need their own amounts
    return [Said("drip.crop", keys.pop(), *hits[0].span("crop"), 3)]


def no_pump(low: str) -> tuple[int, int] | None:
    """Where it is said that there is no pump, and none is spoken of."""
    hits = [*_NO_PUMP.finditer(low), *machines.NO_PUMP.finditer(low)]
    every = [one for one in hits if not of_such(low, one)]
    match = next((one for one in every if "pump" in one.group()), every[0] if every else None)
    if match is None:
        return None
    other = [
        one
        for one in re.finditer(r"\bpumps?\b", low)
        if not (match.start() <= one.start() < match.end())
    ]
    definite = re.compile(
        r"(?:\b(?:our|the|my|jet|submersible|surface|booster|well|solar) pumps?\b(?! (?:would|needed|that would))|\bpumps? (?:is|sits|at|in|runs|hangs|stands|down|fills)\b)"
    )
    asked = re.match(r"[^.!\n]{0,40}\?", low[match.end() :])
    if asked and re.search(
        r"need|want|maybe|perhaps|could|would", low[max(0, match.start() - 25) : match.end()]
    ):
        return None
    strong = "pump" in match.group()
    if not strong and _LIFTS.search(low):
        return None  # water out of a bore runs nowhere by itself
    own = (
        [
            one
            for one in definite.finditer(low)
            if not (match.start() <= one.end() - 4 < match.end())
        ]
        if strong
        else other
    )
    return None if own else match.span()


_LIFTS = re.compile(
    r"\b(?:submersible|sub|windmill|bore ?hole|bore|drilled well|well is|the well|our well|deep well|solar|generator|genset|engine)\b"
)
_FLAT = re.compile(
    r"\bflat as an? (?:pancake|table|board|plate)\b|(?<=, )(?:level|flat) (?:ground|going|land)\b|\b(?:dead|perfectly|completely|straight|all) (?:flat|level)\b(?! (?:roof|panels?))|\b(?:flat|level) (?:ground|terrain|land)(?= (?:between|all|from|to|the whole)|[,.;])"
    r"|\bno (?:height difference|difference (?:of|in) (?:height|level)|climb|rise|slope|fall) (?:between|from|to|at all)\b|\bno (?:climb|rise|height)(?= ?[,.;)])"
    r"|(?<=\d m)[^.;\n]{0,30}[,;] ?(?:and |all |it is |it's |everything )*(?:flat|level|on the level|on the flat|level ground|flat ground)(?= ?[,.;)\n])|(?<=\d ft)[^.;\n]{0,30}[,;] ?(?:and |all |it is |it's |everything )*(?:flat|level|on the level|on the flat|level ground|flat ground)(?= ?[,.;)\n])|\b(?:lies|is|are|all|both) on (?:the|a) level\b(?! (?:of|with|above|below))|, on the (?:level|flat)(?= ?[,.;)\n])"
    r"|\bwithout (?:any )?(?:height|climb|rise|slope)\b|\bit is even\b(?= ?[,.;])"
)
_LEVEL = re.compile(
    r"\b(?:tanks?|ibcs?|totes?|barrels?|source|spring|well|cistern|bore ?hole)\b[^.;\n]{0,60}\blevel with the (?:beds?|plots?|rows|house|cabin|caravan|cottage|barn|garden|taps?|trailer)\b|"
    r"\b(?:house|cabin|cottage|home|taps?|garden|barn|everything|shack|hut|bungalow|trailer|yurt|lodge|tents?|place|shed|farm|chalet|kitchen|ranch)\b[^.;\n¤]{0,70}\b(?:level with (?:it|the|our)\b(?! (?:ground|surface|floor|lawn|rim|top|water))|(?:on|at) (?:about |roughly )?the same (?:level|height|elevation)|(?:the )?same (?:height|level|elevation)(?= as\b| ?[,.;\n]|$))\b"
)


def level_with(low: str) -> tuple[int, int] | None:
    """Where it is said that the house is as high as its water."""
    match = _LEVEL.search(low)
    if match is None:
        flat = _FLAT.search(low) or flat_way(low)
        roof = flat and re.search(
            r"roof|panel|array", low[max(0, flat.start() - 40) : flat.end() + 20]
        )
        return flat.span() if flat and not roof else None
    begin = max(low.rfind(sign, 0, match.start()) for sign in ".;\n") + 1
    other = re.search(r"\bpump\b", low[begin : match.end()])
    return None if other and "house" not in match.group()[:6] else match.span()


# What the nouns are ------------------------------------------------------------------------------------

PRESSURE_TANK = re.compile(
    r"\b(?:(?<!break )(?<!break-)pressure[ -]?(?:tank|vessel|cylinder)s?|presure tank|press\.? tank|bladder(?: pressure)? tanks?|accumulators?(?: tank)?|expansion (?:tank|vessel)s?|vessels?|pressure bottle|captive[ -]air(?: tank)?"
    r"|hydropneumatic tank|hydrophore|diaphragm tank|bladder|pressure bladder tank|hydro ?-?tank)\b"
)
STORE = re.compile(
    r"\b(?:cisterns?|rain ?water (?:storage )?tanks?|rain (?:storage )?tanks?|underground tanks?|buried (?:\w+ )?tanks?|holding tanks?|(?:lower|bottom) tank|catchment tank|spring box|(?:spring |collecting |collection |catchment |valve |settling |silt )(?:box|chamber|basin)|chamber|sump|ground[ -]level (?:storage )?tank|(?:storage |poly |plastic |water )?tanks?(?=[^.;\n]{0,30}, (?:at )?ground level\b)|(?:storage |poly |plastic |water )?tanks? (?:at grade|at ground level|on the ground|off (?:the|our|a) (?:\w+ )?roof)|collection tank|buffer tank|break tank|intermediate tank|ground tanks?"
    r"|storage tanks?(?= (?:at|by|next to|beside|near) the (?:well|pump|spring|creek))|tanks? (?:at|by|next to|beside|near) the (?:well|pump|spring|creek))\b"
)
ABOVE = re.compile(
    r"\b(?:header (?:tank|reservoir)s?|hill ?-?tanks?|(?:top|upper|gravity|head|roof|loft|attic|hilltop|ridge|overhead|elevated|high|raised) (?:storage )?(?:tank|reservoir)s?|water tower|(?:tank|tote|ibc|barrel)s? in the (?:attic|loft|roof)|tank up (?:top|there|above|behind)|tanks? (?:[a-z]+ )?on (?:an? |its )?(?:[\d.]+ ?-?(?:m|ft|foot|metre|meter)s? )?(?:high |tall )?(?:stand|tower|stilts|legs|scaffold)|(?:tank|tote|ibc|barrel|drum)s? (?:\w+ )?(?:(?:up )?on|up|atop|at the top of) (?:the|a|our) (?:\w+ )?(?:hill|ridge|hillside|slope|knoll|rise|tower|stand|loft|roof|bank|bluff|top)|hilltop storage)\b"
)
TANK = re.compile(
    r"\b(?<!stock )(?<!tire )(?<!septic )(?<!fuel )(?<!fish )(?<!diesel )(?<!toilet )(?:tanks?|reservoirs?|totes?|ibc|ibcs|tank's|tnak|barrels?|butts?)\b"
)
_ABOVE_CLUES = re.compile(
    r"\btanks?\b[^.;\n]{0,25}\bon (?:a )?[\d.]+ ?-?(?:m|ft|foot|feet|metres?|meters?) (?:high |tall )?(?:legs|stand|tower|stilts|posts|frame|platform)|\b(?:tank|water|the) (?:stand|tower) (?:is|of)\b|\b(?:tank|reservoir|deposit|cistern)s?\b[^.;\n]{0,30}\bin (?:the )?(?:high|height|altitude)\b|\btanks?\b(?:(?!, (?:the |our |my )?(?:house|cottage|cabin|hut|home|chalet|bungalow|barn|farm|lodge|taps?|kitchen|garden|trough)\b)[^.;\n]){0,70}\b(?:above|uphill|up (?:the|on|there)|over (?:the|our)|higher|on (?:a |the )?(?:\w+ )?(?:hill|ridge|rise|stand|tower|knoll|mound|slope|blocks|stilts|legs|scaffold|roof)|higher|at the top|gravity|over the house|hillside)\b|\b(?:up(?! from)|uphill(?! (?:of|from))|hill|above(?! (?:the |our |that |it)?(?:\w+ )?tanks?\b)|hillside|ridge|gravity)\b[^.;\n¤]{0,40}\btanks?\b|\btanks? [\d.,]+ ?(?:m|ft|feet|metres|meters|') up (?:from|the|on)\b"
    r"|\b(?:below|under) (?:the |our )?tank|\bibcs?\b[^.;\n]{0,20}\b(?:(?:on|a) (?:\w+ )?stand|up(?! to)|blocks|above)|\b(?:pump(?:s|ed|ing)?(?! (?:height|level|depth|relative|next|close|is|sits|stands)\b)|elevates?|lifts?|raises?|push(?:es)?)\b[^.;\n]{0,30}\b(?:up )?(?:in)?to\b[^.;\n]{0,25}\btanks?\b|\b(?:pump|spring|well)\b[^.;\n]{0,25}\bfills\b[^.;\n]{0,25}\btank"
)
_STORE_CLUES = re.compile(
    r"\b(?:pump(?:s|ed|ing)?|draws?|drawing|sucks?|suction|fed|booster)\b[^.;\n]{0,40}\b(?:from|out of)\b[^.;\n]{0,25}\btanks?\b|\btanks?\b[^.;\n\d]{0,50}\bbelow\b|\btanks?\b[^.;\n]{0,50}\b(?:next to the|by the pump|beside|near the|buried|underground|in the (?:basement|ground|shed|garage|yard)|at ground|feeds? the pump)\b"
    r"|\b(?:tanks?|totes?|ibcs?|barrels?|drums?)\b[^.;\n]{0,30}\b(?:under|beneath) (?:the|our|a) (?:\w+ )?(?:deck|floor|house|porch|stairs|cabin|kitchen|sink|trailer)\b|\b(?:tanks?|totes?|ibcs?|barrels?)\b[^.;\n]{0,40}\bfeeds? (?:an?|the|our) (?:[\w.]+ ){0,3}pump|\b(?:pulls?|sucks?|draws?|pumps?|takes)(?: its| the)? (?:water |it )?(?:out of|from) (?:an?|the|our|my) [^.;\n]{0,20}\b(?:totes?|ibcs?|barrels?|drums?|tanks?)\b|\brain\w*\b[^.;\n]{0,30}\btanks?\b|\bpump\b[^.;\n]{0,40}\b(?:next to|beside|by|near|at) (?:the|our|a) (?:\w+ )?(?:tank|tote)\b"
    r"|\b(?:supply|source) is a [^.;\n]{0,25}\btank\b|\btanks?\b[^.;\n]{0,12}[,;] ?(?:the )?(?:house|cabin|cottage) [^.;\n]{0,20}\babove it\b|\btanks?\b[^.;\n]{0,35}[-=]> ?(?:the |a )?(?:\w+ )?pump\b|\btrickles? into the tank|\btanks?\b[^.;\n]{0,15}\b(?:the |our |my )?(?:pump|booster) (?:draws|sucks|pulls|feeds|takes)\b|\b(?:house|cabin|cottage|home|kitchen|barn|shack)\b[^.;\n¤]{0,50}\b(?:up from|above|higher than|uphill (?:of|from)) (?:the |our |that )?(?:\w+ )?tanks?\b|\b(?:house|cabin|cottage|shack)\b[^.;\n]{0,20}\blevel with (?:the |our )?tanks?\b|\bneed a booster\b"
)


def named(low: str, start: int, end: int) -> str:
    """Which tank the words from ``start`` to ``end`` name by themselves; "" only "a tank"."""
    around = low[max(0, start - 25) : end + 30]
    for pattern, role in ((PRESSURE_TANK, "pressure"), (STORE, "store"), (ABOVE, "above")):
        for match in pattern.finditer(around):
            at = match.start() + max(0, start - 25)
            if at < end and start < at + len(match.group()):
                return role
    return ""


@lru_cache(maxsize=4)
def clues(low: str) -> tuple[bool, bool]:
    """Whether a letter speaks of a tank above, and of one that a pump draws from."""
    return bool(_ABOVE_CLUES.search(low)), bool(_STORE_CLUES.search(low))


_ROOF_INTO = re.compile(
    r"\b(?:roofs?|rain|gutters?|down ?pipes?)\b(?! tank)[^.;\n]{0,60}\b(?:runs?|goes|drains?|flows?|feeds?|fills?|leads?|led|collect\w*|pours?|caught)(?: down)? (?:in(?:to)? )?(?:an?|the|our|two|three|my) [^.;\n]{0,12}$"
)


def tank_role(low: str, start: int, end: int) -> str:
    """Which tank words name: "pressure", "above", "store", "" unclear, by all of the letter."""
    role = named(low, start, end)
    if role:
        return role
    begin = max(low.rfind(sign, 0, start) for sign in ".;\n") + 1
    if _ROOF_INTO.search(low, begin, start):
        return "store"
    above, store = clues(low)
    if above and store:
        line = low[low.rfind(".", 0, start) + 1 : (low.find(".", end) + 1) or len(low)]
        near_above, near_store = _ABOVE_CLUES.search(line), _STORE_CLUES.search(line)
        return (
            "above"
            if near_above and not near_store
            else "store"
            if near_store and not near_above
            else ""
        )
    return "above" if above else "store" if store else ""


@lru_cache(maxsize=4)
def high(low: str) -> bool:
    """Whether anything of a letter speaks of water that stands high and runs down."""
    return bool(
        _ABOVE_CLUES.search(low)
        or ABOVE.search(low)
        or re.search(
            r"\b(?:gravity|hill|uphill|ridge|tower|loft|attic|above|roof tank|header)\b", low
        )
    )
