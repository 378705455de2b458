"""Numbers whose own clause names their fact in full: "length of one line 45 m", "ET0 is 6.5 mm".

What stands here is looked for before the cues that are weighed, since a number told with the noun
that it belongs to needs no weighing. A row is (path, kinds of number, words that end what stands
before, words that begin what stands after, words that the letter must hold somewhere).
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import lru_cache

from calc.site import enquiry_claims as claims
from calc.site.enquiry_brief import BRIEF
from calc.site.enquiry_late import Late
from calc.site.enquiry_machines import ROWS as MACHINES
from calc.site.enquiry_model import Context, Token
from calc.site.enquiry_nouns import NOUNS
from calc.site.enquiry_order import ORDER
from calc.site.enquiry_plots import PLOTS
from calc.site.enquiry_rows import FIRST, ROWS
from calc.site.enquiry_ways import WAYS, at_sea

_F = (
    r"[ ,:=~(-]*+(?>(?:is|are|was|be|of|at|a|an|the|about|around|roughly|some|only|just|approx\.?|ca\.?|nearly|almost|up to|maybe|perhaps|say|long|in total|total|has|have|with|it is|it's|which is|that is"
    r"|reads?|says?|measures?|comes to|to|max|maximum|at most|by|good|over|all|each|exactly|then)(?![a-z])[ ,:=~(-]*+)*+$"
)
_DRIP = r"\bdrip|\bemitters?\b|\bdripline"
_HOT = r"\b(?:heater|boiler|hot[ -]water|geyser|cylinder)\b"
_WELL = r"\b(?:wells?|bore ?holes?|bore)\b"
_FALLS = r"\b(?:gravity|no pump|without (?:a |any )?pump|by itself|falls? down|own (?:weight|pressure))\b"
_TEMPS = ("temperature", "angle", "bare")

_DEFINED: tuple[tuple[str, tuple[str, ...], str, str, str], ...] = (
    # drip lines
    ("drip.bore", ("length",), rf"(?:drip ?-?(?:line|tape|pipe|hose|tube)|dripper line|laterals?|drip lines?)\b[^.;\n]{{0,30}}{_F}", r" ?(?:in )?(?:inside|internal|inner|inside dia\w*|i\.?d\b|bore)", _DRIP),
    ("drip.bore", ("length",), rf"(?:drip ?-?(?:line|tape|pipe|hose|tube)s?|laterals?|lines?)\b[^.;\n\d]{{0,25}}\b(?:inside|internal|inner) (?:diameter|dia|bore){_F}", r"", _DRIP),
    ("drip.length", ("length",), rf"\blengths? of (?:one|each|every|the|a|these|those|all)? ?(?:single )?(?:drip ?-?)?(?:lines?|rows?|laterals?|hoses?|tapes?|tubes?){_F}", r"", _DRIP),
    ("drip.length", ("length",), rf"\b(?:hoses?|lines?|tubes?|pipes?|tapes?) (?:with|of|for) (?:drip|drippers|emitters)\b{_F}", r"(?! ?(?:apart|between))", _DRIP),
    ("drip.length", ("length",), rf"\b(?:drip ?-?(?:lines?|tapes?|hoses?|tubes?)|laterals?|longest (?:row|line|lateral)|longest drip line)\b(?: (?:that )?(?:runs?|go|goes|measure|measures))?{_F}", r" ?(?:$|[,.;)\n]|each\b|long\b|in length|per (?:row|line|bed))", _DRIP),
    ("drip.length", ("length",), r"", r" ?(?:long )?(?:each )?(?:drip ?-?(?:lines?|tapes?|hoses?|tubes?)|laterals?)\b", _DRIP),
    ("drip.spacing", ("length",), rf"\b(?:drippers?|emitters?|drip points?|holes)(?: \w+){{0,2}}? (?:each|every|at every|spaced|spacing|sit at|one per){_F}", r"(?! ?(?:deep|long|rows?))", _DRIP),
    ("drip.spacing", ("length",), rf"\b(?:dripper|emitter)s? (?:spacing|distance|pitch){_F}", r"", _DRIP),
    ("drip.spacing", ("length",), rf"\b(?:trees?|plants?|vines?|bushes) (?:are |stand |planted )?(?:each|every){_F}", r"(?! ?(?:row|deep))", r"\b(?:drippers?|emitters?) (?:at|to|for|per|by|on) (?:each|every|the)|\bone (?:dripper|emitter)|\b(?:dripper|emitter) (?:per|each)"),
    ("drip.spacing", ("length",), r"", r" ?(?:between|from one) (?:the |two )?(?:drippers?|emitters?|holes)\b", _DRIP),
    ("drip.length", ("length",), rf"\b(?:rows?|lines?|laterals?|runs) of{_F}", r"(?! ?(?:apart|pipe|poly|\d|spacing|wide))", _DRIP),
    ("drip.rows", ("length",), rf"\b(?:rows?|lines?|laterals?)(?: are| is)?{_F}", r" ?apart\b", _DRIP),
    ("drip.rows", ("length",), rf"\b(?:between|distance (?:of|between|from)|spacing (?:of|between)) (?:the )?(?:drip )?(?:rows|beds|lines|laterals|vines){_F}", r"(?! ?(?:long|deep))", _DRIP),
    ("drip.rows", ("length",), rf"\b(?:row|line|bed)s? (?:spacing|distance|pitch){_F}", r"", _DRIP),
    ("drip.rows", ("length",), rf"\b(?:rows?|drip lines?|laterals?)(?: (?:planted|set|laid|stand|sit|lie|spaced|come))?{_F}", r" ?(?:apart|from each other|from one another|between them|distant|wide apart)", _DRIP),
    ("drip.rows", ("length",), r"", r" ?(?:in )?between (?:the |two )?(?:rows|lines|laterals)\b", _DRIP),
    ("drip.slope", ("percent",), rf"\b(?:slope|slopes|gradient|inclination|incline|grade|fall|falls|falling|fall away|drop|drops|rise|rises|climb|climbs|uphill|downhill)\b[^.;\n\d]{{0,30}}{_F}", r"", _DRIP),
    ("drip.slope", ("percent",), r"", r" ?(?:slope|downhill|uphill|fall|gradient|grade|down\b|up\b)", _DRIP),
    ("drip.least", ("pressure",), r"", r" ?(?:at least|minimum|at the least|or more)\b", _DRIP),
    ("drip.rated", ("pressure",), rf"\b(?:rated|nominal|designed|specified|made|specs?|spec'?d)(?: pressure| output| flow)?(?: is| at| for| of| to)*{_F}", r"", r"\bdrippers?|\bemitters?|\bdrip ?(?:line|tape)"),
    ("drip.rated", ("pressure",), rf"\b(?:drippers?|emitters?|drip ?lines?|tape)\b[^.;\n]{{0,45}}\b(?:at|@) ?(?:a pressure of )?{_F}", r" ?(?:$|[,.;)\n])", _DRIP),
    ("drip.least", ("pressure",), rf"\b(?:drippers?|emitters?|drip ?lines?|tape)\b[^.;\n]{{0,45}}\b(?:need|needs|require|requires|not (?:below|under|less than)|minimum|min\.?|at least)(?: (?:at least|a minimum of|minimum|no less than|not less than))*{_F}", r"", _DRIP),
    ("drip.pressure", ("pressure",), rf"\bpressures?(?: there)? (?:at|in|by|where) (?:the )?(?:begin\w*|start|head|inlet|entrance|entry|first|manifold|drip ?lines?|laterals?|lines? begin|plot|field|garden|valves?|gate|head ?works)\b[^.;\n\d]{{0,30}}{_F}", r"", _DRIP),
    ("drip.pressure", ("pressure",), r"", r" ?(?:of pressure |pressure )?(?:at|where|when) (?:the )?(?:(?:drip ?)?(?:lines?|laterals?|rows?) (?:begin|start)s?|(?:start|head|beginning|inlet) of (?:the |each |a )?(?:drip ?)?(?:lines?|laterals?|rows?)|(?:field|plot|garden|drip) (?:inlet|valve|head|gate))\b", _DRIP),
    ("drip.flow", ("flow",), r"", r" ?(?:at|to|for|in|reaches|arrives at) (?:the )?(?:garden|plot|field|gate|beds|orchard|vineyard|greenhouse|rows|drip|polytunnel|tunnel|grove|trees|patch)\b", _DRIP),
    ("drip.flow", ("flow",), rf"\b(?:drip|garden|plot|field|beds|orchard|vineyard|greenhouse|polytunnel|irrigation)(?: system| lines?| line)? (?:gets?|has|receives?|can have|can take|is given|is fed)(?: with)?{_F}", r"(?! ?(?:per|each) (?:tree|dripper|emitter|plant))", _DRIP),
    ("drip.dripper", ("flow",), rf"\b(?:drippers?|emitters?|drip points?)\b(?:(?!\b(?:pump|spring|well|bore\w*|tank)\b)[^.;\n]){{0,40}}{_F}", r" ?(?:$|[,.;)\n]|each\b|apiece|per\b|type|at \d|and\b)", _DRIP),
    ("drip.dripper", ("flow",), rf"\b(?:each one|each of them|apiece){_F}", r"", r"\bdrippers?\b|\bemitters?\b"),
    ("drip.hours", ("time",), rf"\b(?:can|may|could|must|able to|allowed to|want to|like to|we|i) (?:only |just )?(?:water|irrigate|drip|be watered|be irrigated)(?: it| them)?(?: for| during)?{_F}", r" ?(?:a|per|each|every|in a|in the|of the|of|/) ?(?:day|night|24)|daily", _DRIP),
    ("drip.hours", ("time",), rf"\b(?:it|they|drip|water|irrigation|watering|lines)(?: system)? (?:may|can|could|is allowed to|are allowed to|must|is to|has to) (?:only |just )?(?:run|go|be on|be open|work)(?: for)?{_F}", r" ?(?:a|per|each|every|in a|of the|/) ?(?:day|night)|daily", _DRIP),
    ("drip.warmest", _TEMPS, rf"\b(?:max(?:imum|imal|ima|\.)?|highs?|warmest|hottest)(?: temp\w*)?(?: (?:in|of|by|at|the|on|day|days|summer|july|august|january|february|afternoon|season|month|then|there|here))*{_F}", r"(?! ?(?:l\b|lit|bar|psi|m\b|ft|v\b|a\b|w\b|%|gpm))", _DRIP),
    ("drip.coolest", _TEMPS, rf"\b(?:min(?:imum|imal|ima|\.)?|lows?|coolest|coldest)(?: temp\w*)?(?: (?:in|of|by|at|the|on|night|nights|summer|july|august|january|season|month|then|there|here))*{_F}", r"(?! ?(?:l\b|lit|bar|psi|m\b|ft|v\b|a\b|w\b|%|gpm))", rf"(?:{_DRIP})"),
    ("drip.humidity", ("percent",), rf"\bhumidity\b[^.;\n\d]{{0,20}}{_F}", r"", _DRIP),
    ("drip.humidity", ("percent",), r"", r" ?(?:relative )?humidity", _DRIP),
    ("drip.reference", ("length",), rf"\b(?:et ?[-_]?[0o]?|eto|reference et|(?:reference )?evapo\w*(?: \(et[0o]?\))?)(?: (?:is|of|at|in|there|here|about|then|july|june|august|peaks?|reaches))*{_F}", r"", _DRIP),
    ("drip.reference", ("length",), r"", r" ?(?:(?:a|per) day |/ ?day )?(?:of )?(?:et[o0]?\b|evapo)", _DRIP),
    ("drip.daily", ("daily",), rf"\b(?:spare|left|there is|have)(?: \w+)?{_F}", r" ?for (?:the )?(?:drip|irrigation)", _DRIP),
    # a line without a pump
    ("fall.flow", ("flow",), rf"\b(?:want|need|needs|wants|require|like|wish for|wished|enough for|hope for|aim for)(?: to (?:have|get|see))?{_F}", r"(?! ?(?:per|each|apiece))", _FALLS),
    ("fall.wanted", ("pressure",), rf"\b(?:want|need|needs|wants|require|like|wish)\b[^.;\n]{{0,60}}?(?:\bat (?:a )?pressure of|\bpressure of|\bwith|\bat){_F}", r"(?! ?(?:max|rated))", _FALLS),
    ("fall.held", ("pressure",), rf"\b(?:reducing|reducer|regulat\w+|prvs?|control) ?(?:valves?)?\b[^.;\n\d]{{0,40}}\b(?:set|adjusted|holds?|gives|keeps?)(?: (?:to|at|on|for|it))*{_F}", r"", _FALLS),
    # wells that were tried
    ("well.drawn_for", ("time",), rf"\b(?:it )?(?:took|takes|needed){_F}", r" ?to (?:draw|pump|take|empty|lower)\b(?! (?:a |the )?(?:bucket|tank))", _WELL),
    ("well.drawn", ("volume",), rf"\b(?:to draw|to pump(?: out)?|drew|i drew|we drew|pumped out|took out|drawn){_F}", r" ?(?:$|[,.;)\n]|then|before|until|till|and then|in \d|in (?:twenty|thirty|forty|fifty|ten|fifteen))", _WELL),
    ("well.pumped_for", ("time",), rf"\b(?:ran|run|left|let) (?:the |our )?pump(?: run| running| on)?(?: for)?{_F}", r" ?(?:$|[,.;)\n]|at\b|and\b|then)", r"\b(?:recover|came back|rose|risen|refill|rise back|came up)"),
    ("well.tested", ("flow",), rf"\b(?:while|when|as|with|after) (?:(?:he|they|we|i|the driller|the rig) )?(?:test[ -]?)?(?:pumped|pumping|bailed|bailing|took|was pumping|were pumping)(?: it)?(?: at)?{_F}", r"", _WELL),
    ("well.tested", ("flow",), rf"\b(?:test[ -]?pump\w*|pump(?:ing)? test|pumping test)\b[^.;\n\d]{{0,30}}{_F}", r"", _WELL),
    ("well.clear", ("length",), rf"\b(?:keep|kept|leave|left|stays?){_F}", r" ?(?:free|clear|kept free|kept clear|of clearance|off the bottom|above the (?:bottom|floor|mud))", _WELL),
    ("well.cover", ("length",), rf"\b(?:never less than|at least|no less than|always|must keep|want|minimum|keep)(?: of)?{_F}", r" ?(?:of )?(?:water )?(?:over|above|on top of|covering) (?:the |its )?(?:intake|pump|inlet|suction|strainer)", _WELL),
    ("well.intake", ("length",), rf"\b(?:intake|inlet|strainer)(?: of the pump)?(?: (?:sits|hangs|set|down))?{_F}", r"(?! ?(?:above|higher|away|from|pipe|line|hose|of pipe|long|mm|in\b))", r"\b(?:submersible|hangs|hung)\b"),
    ("well.depth", ("length",), rf"\bours(?: (?:goes down|goes|is drilled|was drilled|is dug|is only|is just))?{_F}", r" ?deep\b", _WELL),
    ("well.depth", ("length",), rf"\b(?:wells?|bore ?holes?|bore|hole)(?: \w+)? total(?: depth)?{_F}", r"(?! ?(?:pipe|of pipe))", _WELL),
    ("pump.height", ("length",), rf"\b(?:hung|hangs?|hanging|set|put|lowered|installed|suspended|placed|dropped) (?:the|our|my|a|his|this) (?:\w+ ){{0,2}}?(?:pump|submersible)(?: down)?(?: at| to| down)*{_F}", r"(?! ?(?:away|from the|above|higher|long|of pipe|to the))", _WELL),
    ("pump.height", ("length",), rf"\b(?:submersible|submersible pump|bore(?:hole)? pump)(?: (?:is|sits|hangs|set|hung))?{_F}", r" ?(?:down|deep)\b(?! (?:the hill|from the (?:house|cabin)))", _WELL),
    ("pump.diameter", ("length",), r"", r"[ -]?(?:diameter )?(?:submersible|sub\b|borehole pump|bore pump|down-?hole pump)", ""),
    ("pump.dry_lift", ("length",), rf"\b(?:self[ -]?prim\w+|primes?|prime itself|dry (?:suction )?lift)\b[^.;\n\d]{{0,25}}(?:to|from|of|over){_F}", r"", ""),
    ("water.level", ("length",), rf"\bfrom (?:the )?(?:top of |eye of |centre of |inlet of )?(?:the |our )?pump (?:down )?to (?:the )?(?:lowest |low |summer )?(?:water|water level|water surface|surface of the water)(?: (?:in|of) (?:the|our) \w+)?,? ?(?:it )?{_F}", r"(?! ?(?:of pipe|of \d|pipe|hose|long))", ""),
    # stores
    ("store.depth", ("length",), rf"\bwater(?: in it| in the (?:tank|cistern))?(?: stands)?{_F}", r" ?(?:deep|high)(?: in it)? (?:when|if)(?: it is| it's| the tank is)? (?:full|filled)", ""),
    ("store.inflow", ("flow",), rf"\b(?:filled|fed|topped up|refilled|supplied) (?:slowly |up )?(?:from|by) (?:the |a |our )?(?:\w+ )?(?:well|spring|bore\w*|pump|stream|mains|creek|seep)(?: at| with)*{_F}", r"", r"\b(?:tank|cistern|reservoir)\b"),
    ("store.reserve", ("volume",), r"", r" ?(?:of |for |as )?(?:an? |the )?(?:fire|emergency|fire[ -]?fighting)(?: reserve| water| storage| supply)?\b", ""),
    ("store.reserve", ("volume",), r"", r" ?(?:of (?:it|that|the tank|water) )?(?:must |has to |should |to )?(?:be |stay |is |are )?(?:kept|held|reserved|set aside|left|locked)[^.;\n]{0,25}\bfire", ""),
    ("store.reserve", ("volume",), rf"\bfire(?:[ -]?fighting)? (?:reserve|storage|water)(?: required| wanted| kept)?{_F}", r"", ""),
    # hot water and leaks
    ("hot.relief", ("pressure",), rf"\b(?:it|that|this)(?: is|'s) an?{_F}", r" ?(?:relief |safety )?valve", rf"\A(?=[\s\S]*relief)(?:[\s\S]*{_HOT})"),
    ("hot.relief", ("pressure",), r"", r" ?(?:relief|t&p|temperature and pressure|safety) (?:relief )?valve\b", _HOT),
    ("use.leak", ("flow",), rf"\b(?:leak\w*|drip(?:s|ping)?|losing|loses?|seep\w*)\b[^.;\n]{{0,30}}\b(?:measured|timed|caught|collected|makes?|amounts to|comes to|worth|about|rate of|of){_F}", r"(?! ?(?:per|each) (?:dripper|emitter))", r"\bleak|\bdrips\b|\bdripping\b|\blos(?:es|ing)\b"),
    ("use.smallest", ("flow",), rf"\b(?:smallest|least|lowest) (?:\w+ )?(?:draw|flow|use|demand|consumer|consumption|take)\b[^.;\n\d]{{0,50}}{_F}", r"", ""),
    ("pipes.weakest", ("pressure",), rf"\b(?:coupling|fitting|joint|pipe|hose|filter|valve|heater|housing|line|part|manufacturer|its|it)s?\b[^.;\n]{{0,30}}{_F}", r" ?(?:at (?:the )?most|maximum|max\b|allowed|working pressure|max\.? (?:allowed|working))", ""),
    ("pipes.hottest", ("temperature",), rf"\b(?:pipe|line|poly|hose|it)\b[^.;\n]{{0,40}}\b(?:gets?|reach\w*|heats?|goes|warms?|hot)\b(?: up)?(?: hot)?(?: as)?{_F}", r"(?! ?(?:in the (?:tank|heater)|water))", r"\b(?:pipe|poly|hose|line)\b[^.\n]{0,60}\b(?:ground|sun|surface|roof|laid|lying)\b"),
    ("pipes.hottest", ("temperature",), r"", r" ?(?:degrees )?(?:hot )?(?:in|inside) (?:the|that|this) (?:black )?(?:pipe|line|poly|hose)\b", ""),
    ("power.shade", ("percent",), r"", r" ?of (?:the |our )?(?:panels?'?s? )?(?:output|sun|power|light|energy|harvest|day)[^.;\n]{0,14}\b(?:lost|shad\w+|gone|missing)", r"\bpanel|\bsolar"),
    ("pump.dry_lift", ("length",), r"", r" ?(?:of )?dry (?:suction )?lift", ""),
    ("drip.spacing", ("length",), rf"\b(?:drippers?|emitters?)\b(?:(?!\b(?:rows?|lines?|laterals?|beds?)\b)[^.;\n]){{0,40}}?{_F}", r" ?(?:apart|spacing|spaced|from each other|from one another|to the next)", _DRIP),
    ("drip.spacing", ("length",), rf"\b(?:drippers?|emitters?|drip)\b[^.;\n]{{0,50}}\bone (?:every|each){_F}", r"", _DRIP),
    ("drip.length", ("length",), rf"\b(?:drippers?|emitters?|drip)\b[^.;\n]{{0,60}}\blines?{_F}", r" ?(?:$|[,.;)\n]|each\b|long\b)", _DRIP),
    ("suction.length", ("length",), rf"\bsuction(?: ?-?(?:pipe|hose|line|side|run|tube))?\b(?:(?!\b(?:lift|then|delivery|house|tank|discharge)\b)[^.;\n]){{0,30}}?\b(?:long|length)\b{_F}", r"(?! ?(?:below|under|down\b|above|lift|higher))", ""),
    ("suction.length", ("length",), rf"\b(?:draws?|sucks?|pulls?|drawing|sucking|pulling)\b[^.;\n]{{0,60}}\bthrough{_F}", r" ?(?:of |long )?(?:[\w\"/.-]+ ){0,4}?(?:pipe|hose|line|tube|poly|pvc|pex|pe\b|hdpe|copper|galv)", ""),
    ("water.level", ("length",), rf"\bfrom (?:the )?pump (?:down )?to (?:the )?water(?: (?:down|level|surface))*{_F}", r"(?! ?(?:of pipe|pipe|hose|long))", ""),
    ("water.level", ("length",), rf"\b(?:pulls?|draws?|sucks?|takes?|lifts?|pulling|drawing|sucking)(?: (?:it|water|its water|the water))? (?:up )?(?:out )?(?:from|of) (?:an?|the|our|my) [^.;\n\d]{{3,25}}?{_F}", r" ?(?:below|lower|down\b|under|beneath)(?! the (?:hill|slope|road))", ""),
    ("water.level", ("length",), rf"\bwater(?: level)?(?: (?:in|of) (?:the|our|my) \w+)?(?: \w+)?{_F}", r" ?(?:below|under|lower than|beneath) (?:it|the pump|them|that)\b", ""),
    ("well.depth", ("length",), r"", r" ?deep (?:is|was|goes) (?:the|our|my) (?:\w+ )?(?:bore\w*|well)\b", ""),
    ("well.cover", ("pressure",), rf"\b(?:never less than|at least|no less than|always|must keep|want|minimum|keep)(?: of)?{_F}", r" ?(?:over|above|on top of|covering) (?:the |its )?(?:intake|pump|inlet|suction|strainer)", _WELL),
    ("well.intake", ("length", "bare"), rf"\bintake (?:is|sits|hangs|will be|comes) (?:down )?at{_F}", r"(?! ?(?:the|above))", _WELL),
    ("well.static", ("length",), rf"\b(?:water|level)(?: level)? (?:started|began|stood|was|starts|begins)(?: off)?(?: out)?(?: at)?{_F}", r"(?! ?(?:away|from the house|above))", r"\b(?:settled|levell?ed off|drew down|drawdown|went down to|fell to|dropped to|pumped)\b[^.]{0,50}\d"),
    ("well.pumping", ("length",), rf"\b(?:it |level |water )?(?:settled|levell?ed off|steadied|stabili[sz]ed|held)(?: down)?(?: at)?{_F}", r"(?! ?(?:away|from the house|above|gpm|l/))", r"\b(?:gpm|l/min|lit(?:re|er)s|gallons)\b"),
    ("well.pumping", ("length",), rf"\b(?:static|rest)\b[^.;\n]{{0,40}}\b(?:went|goes|fell|falls|dropped|drops|drew|draws|came|sank) (?:it )?(?:down )?to{_F}", r"(?=[^.;\n]{0,20}\b(?:while|when|at|with|after|under|pump))", _WELL),
    ("well.tested", ("flow",), rf"\b(?:he|they|we|i|driller|rig) (?:ran|run|pumped|drew|took)(?: it)?(?: at)?{_F}", r"(?=[^.\n]{0,60}\b(?:settled|level|fell|went down|dropped|drew|came down))", _WELL),
    ("hot.relief", ("pressure",), rf"\b(?:relief|safety|t&p)(?: valve)?(?: (?:on|at|of) (?:it|the (?!pump|well|bore)[a-z ]{{3,20}}))?{_F}", r"(?! ?(?:at the (?:house|tap)))", _HOT),
    ("pressure_tank.rating", ("pressure",), rf"\btank\b[^.;\n]{{0,30}}\brated(?: at| for| to)?{_F}", r"", r"\bpressure|\bswitch|\d0/\d0|\bprecharge"),
    ("power.shade", ("percent",), rf"\b(?:lose|loses|losing|lost){_F}", r" ?(?:of [a-z ]{3,20} )?to (?:the |an? |our |some )?(?:\w+ )?(?:oaks?|trees?|hill|shade|shadows?|pines?|barn|ridge|forest|roof|chimney|mountain)", ""),
    ("store.days", ("time",), rf"\b(?:hold|last|enough|store|keep|carry|cover)\b[^.;\n\d]{{0,30}}\bfor{_F}", r" ?(?:if|when|while|without|of (?:no|drought))\b", ""),
    ("use.each", ("daily",), rf"\b(?:each|every)(?: one)?(?: of (?:us|them))?(?: (?:person|guest|head|man|one|pupil|child|worker))? (?:uses?|needs?|takes?|consumes?|gets?|wants?){_F}", r"(?! ?(?:cow|goat|hen))", r"\b(?:people|persons?|guests?|family|we are|we're|of us|adults?|pupils|children)\b"),
    ("well.depth", ("length",), rf"\b(?:wells?|bore ?holes?|bore|hole)\b(?:(?!\b(?:pump|water|tank|cistern|house|pipe|trench|intake|pond|pit)\b)[^.;\n]){{0,45}}?{_F}", r" ?deep\b(?! (?:trench|under|in the water|to the water))", ""),
    ("well.depth", ("length",), rf"(?:^|[.;\n]) *(?:the |our |my )?(?:\w+ )?(?:well|bore ?hole)(?: is)?[:,] (?:(?!\b(?:pump|submersible|sub|water|tank|house|pipe|to|from|away|static|swl|standing|rest(?:ing)?|level|pumping|dynamic|cased|casing|diameter)\b)[^.;\n]){{0,30}}{_F}", r" ?(?:$|[,;.]|deep)(?![^.;\n]{0,25}\b(?:away|from the house|of pipe)\b)", ""),
    ("well.depth", ("length",), rf"\b(?:hole|well|bore ?hole|bore|it)(?: itself)? (?:bottoms out|ends|stops|reaches bottom|was taken)(?: down)?(?: at| to)?{_F}", r"(?! ?(?:away|from))", _WELL),
    ("water.level", ("length",), rf"\bwater(?:'s| is|'s down| is down) (?:at|down){_F}", r"(?! ?(?:away|from|of pipe|long|above|bar|psi))", _WELL),
    ("water.level", ("length",), rf"\b(?:water|level)\b[^.;\n]{{0,45}}\b(?:sinks?|falls?|drops?|goes|never|not)\b[^.;\n\d]{{0,15}}\b(?:under|below|lower than|deeper than){_F}", r"", _WELL),
    ("tank.level", ("length",), rf"\btank\b[^.;\n]{{0,50}}\bwater level is{_F}", r" ?(?:above|higher|over)", ""),
    ("tank.level", ("length",), rf"\btanks?\b[^.;\n\d]{{0,30}}\b(?:stand|tower|legs|platform|stilts|frame|scaffold)\b{_F}", r" ?(?:above|over|off|high\b|tall|up\b)(?! the (?:house|hill))", ""),
    ("way.climb", ("length",), rf"\b(?:bring|lift|raise|push|pump|get|carry|take|send)s?\b[^.;\n\d]{{0,30}}{_F}", r" ?up to (?:the |our )?(?:house|cabin|home|cottage|garden|barn|hut|place|kitchen)\b", ""),
    ("drip.rows", ("length",), rf"\brows?\b[^.;\n]{{0,40}}?{_F}", r" ?apart\b", _DRIP),
    ("drip.rated", ("pressure",), rf"\brated\b[^.;\n]{{0,25}}\bat{_F}", r"", r"\bdrippers?|\bemitters?|\bdrip ?(?:line|tape)"),
    ("use.depth", ("length",), rf"\b(?:plants?|crops?|garden|vegetables|beds|they|trees|vines)(?: \w+)? (?:takes?|needs?|uses?|drinks?|wants?|transpires?){_F}", r" ?(?:a|per|/|each|every) ?day|daily", ""),
    ("beds.area", ("area",), rf"(?:\barea|\bfield|\bplot|\bgarden|\bparcel|\borchard|\bplantation|\bvineyard|\bland under drip|\bdrip(?: irrigation)?)(?: (?:under|on|has|is|of|measures|with|covers|in total|for|to water|watered))*{_F}", r"(?! ?(?:roof|of (?:roof|land|forest|pasture)))", _DRIP),
    ("water.yield", ("flow",), rf"\bmeasured (?:were|was|are|is|it at|at){_F}", r"(?! ?(?:at the (?:tap|house|shower)))", rf"(?:{_WELL}|\bspring)"),
    ("water.yield", ("flow",), rf"\b(?:spring|stream|creek|brook|source|well|bore ?hole|bore)(?: itself)? (?:gives?|yields?|brings?|makes?|delivers?|supplies|produces?)(?: us| me)?{_F}", r"(?! ?(?:to the (?:tank|trough)))", ""),
    ("well.rate", ("flow",), rf"\bpumped (?:it )?at{_F}", r"(?=[^.\n]{0,50}\b(?:shut|stopped|off|switched))", r"\brecover"),
    ("well.pumped_for", ("time",), rf"\bpumped\b[^.;\n]{{0,25}}\bfor{_F}", r"", r"\brecover|\bcame back|\brose\b"),
    ("well.pumped_for", ("time",), rf"\b(?:he|they|we|i) (?:ran|run)\b[^.;\n]{{0,25}}\bfor{_F}", r"", r"\brecover|\bcame back|\brose\b|\bsettled"),
    ("well.cover", ("length", "pressure"), rf"\b(?:less than|at least|no less than|never under|always|minimum|keep)(?: of)?{_F}", r" ?(?:of water )?(?:over|above|on top of|covering) (?:it|the intake|the pump|its intake|the inlet)", _WELL),
    ("well.static", ("length",), rf"\b(?:water|level)(?: level)? rests?(?: at)?{_F}", r"(?=[^.;\n]{0,25}\b(?:sinks|falls|drops|goes|pump))", _WELL),
    ("well.static", ("length",), rf"\bstatic(?: (?:level|before|that|then|was|had been|at first))*{_F}", r"(?! ?(?:away|head|lift|bar|psi))", r"\bpumping level\b"),
    ("well.pumping", ("length",), rf"\bpumping(?: water)? level (?:got|went|fell|came|was|is|settled)(?: down)?(?: to| at)?{_F}", r"", _WELL),
    ("store.usable", ("percent",), r"", r" ?(?:of (?:it|the tank|that) )?(?:can be (?:used|drawn)|(?:is |are )?usable|is good water)", ""),
    ("rain.runoff", ("percent",), r"", r" ?(?:of (?:it|the rain|that|the water) )?(?:arrives?|reach(?:es)?|runs? off|gets? (?:in|to|into)|is (?:collected|caught)|makes? it)\b", r"\broof"),
    ("use.daily", ("daily",), r"", r" ?(?:is |was )?(?:measured|metered|used|in all|altogether|for everything|between us)\b(?! (?:by|for) (?:each|every))", ""),
    ("pump.most_flow", ("flow",), rf"\bpump \({_F}", r"", ""),
    ("pump.most_flow", ("flow",), rf"\bpump\b[^.;\n]{{0,30}}\b(?:label|name ?plate|plate|says|gives|does|delivers|manages) (?:says )?(?:a )?(?:max\w*|at most|up to|no more than|not more than)(?: of)?{_F}", r"", ""),
    ("rain.roof", ("area",), rf"\broof(?:'s)?\b[^;\n\d]{{0,30}}{_F}", r"", ""),
    ("pump.height", ("length",), rf"\b(?:pump|submersible)\b[^;\n\d]{{0,20}}\b(?:set|hung|hangs|placed|installed|suspended|lowered)\b(?: down)?(?: at)? a depth of{_F}", r"", ""),
    ("water.level", ("length",), rf"\bwater(?: level)? (?:stands|sits|lies|is|rests)(?: at)?{_F}", r" ?(?:below|under) (?:the )?(?:yard|ground|surface|grass|rim|top|cover|lid|floor|cap|casing|grade)\b", ""),
    ("way.length", ("length",), rf"\b(?:from|between) (?:the |our |my )?(?:\w+ )?(?:pump|well|spring|source|bore ?hole|bore|creek|stream) (?:to|until|till|and|up to|down to|over to|unto) (?:the |our |my )?(?:\w+ )?(?:house|cabin|home|cottage|garden|barn|hut|stable|olives|trees|field|farm|kitchen|trailer|yurt|trough|paddock|lodge|caravan|school|building)(?: (?:there|we|i|have|run|runs|laid|are|is|it|it's))*{_F}", r" ?(?:$|[,.;)(\n]|(?:of(?! (?:difference|fall|drop|height|rise|climb|head))|with|away|long|and|in|pipe|along|x)\b)", ""),
    ("water.level", ("length",), rf"\b(?:the )?water(?: level)?(?: in (?:it|the (?:well|bore\w*)))? (?:is |was |usually |normally )?(?:standing|sitting|resting|lying)(?: down)?(?: at)?{_F}", r"(?! ?(?:away|from the (?:house|cabin)|of pipe|long|above|deep))", _WELL),
    ("water.level", ("length",), rf"\b(?:hit|hits|reach|reached|found|find|struck|touch|touched) (?:the )?water (?:after|at|in)(?: about)?{_F}", r"", _WELL),
    ("water.level", ("length",), rf"\bfrom (?:the )?pump (?:straight )?(?:down )?to (?:the )?(?:surface of the )?(?:pond|creek|stream|river|lake|cistern|well)?(?:'s)? ?(?:water )?(?:surface|level)(?: (?:i|we) measured| it)*{_F}", r"", ""),
    ("water.level", ("length",), rf"\bsuction (?:height|head){_F}", r"(?! ?(?:of pipe|long))", ""),
    ("well.depth", ("length",), rf"\b(?:driller|drillers|rig|they)(?: \w+)? (?:went|drilled|got|bored)(?: down)?(?: to)?{_F}", r" ?(?:$|[,.;)\n]|deep|and\b|before|through)", ""),
    ("pump.height", ("length",), rf"\b(?:submersible|pump)(?: pump)? (?:sits|hangs|is|is set|is hung|lies)(?: at)?{_F}", r" ?(?:below|under) (?:the )?(?:ground|surface|top|grade|casing|cap|rim)\b", ""),
    ("way.climb", ("length",), rf"\b(?:lift|raise)(?: the)?(?: water| it)?{_F}", r" ?(?:up )?to (?:the |our )?(?:house|cabin|home|cottage|garden|barn|hut|kitchen)\b", ""),
    ("well.bore", ("length",), rf"\b(?:casing|shaft|well|bore ?hole)(?: (?:is|measures|has))?{_F}", r" ?(?:$|[.,;)]|inside|across|wide|in diameter|diameter)", r"\bcasing|\bbore ?hole|\bdug|\bshaft"),
    ("use.daily", ("daily",), rf"\b(?:house|household|family|farm|cabin|whole place|we all)(?: \w+)? (?:needs?|uses?|takes?|requires?|consumes?|wants?|goes through){_F}", r"(?! ?(?:per|each|a head|for the garden))", ""),
    ("water.yield", ("flow",), rf"\b(?:driller|well man)(?: \w+)? (?:says?|said|told (?:me|us)|reckons?|measured|estimates?|gave){_F}", r"(?! ?(?:pump|at the))", ""),
    ("well.depth", ("length",), rf"(?:^|[,;.\n]) ?(?:the |our |my )?(?:drilled |bored |dug |old )?(?:well|bore ?hole|bore){_F}", r" ?(?:$|[,;.)\n])", r"\b(?:submersible|hangs|hung|pump (?:is )?(?:at|set)|static)\b"),
    ("drip.spacing", ("length",), rf"\b(?:drippers?|emitters?)\b[^;\n]{{0,35}}\b(?:every|each){_F}", r"(?! ?(?:rows?|deep))", _DRIP),
    ("drip.flow", ("flow",), rf"\b(?:i|we) (?:have|get|can have){_F}", r" ?(?:from (?:the|our|my) pump|available|at hand|for (?:it|this|that))", _DRIP),
    ("drip.hours", ("time",), rf"\b(?:can|may|could|must|able to|allowed to|want to) (?:only )?(?:irrigate|water|drip)\b[^;\n\d]{{0,25}}\b(?:for|during|about){_F}", r" ?(?:$|[.,;)\n]|a day|a night|per|each)", _DRIP),
    ("pump.height", ("length",), rf"\bpump\b[^;\n\d]{{0,25}}\bhangs?\b[^;\n\d]{{0,25}}\b(?:at|on|in|down){_F}", r"(?! ?(?:of (?:pipe|cable)|above|higher|pipe|rope|away))", ""),
    ("power.shade", ("percent",), rf"\bshad(?:es|e|ow|ows|ing)\b(?: (?:takes?|costs?|away|off|us|them|the panels|the array))*{_F}", r"", ""),
    ("hot.stored", ("temperature",), rf"\b(?:heater|boiler|cylinder|hot water)\b[^;\n]{{0,40}}\b(?:set|kept|thermostat)(?: (?:to|at|is|of))*{_F}", r"", _HOT),
    ("hot.volume", ("volume",), rf"\b(?:water ?heater|boiler|hot[ -]water (?:tank|cylinder|heater)|geyser)\b{_F}", r"(?! ?(?:expansion|/|per))", _HOT),
    ("hot.volume", ("volume",), r"", r"[ -]?(?:electric |gas |propane |solar )?(?:water ?heater|boiler|hot[ -]water (?:tank|cylinder|heater)|geyser)\b", _HOT),
    ("way.length", ("length",), r"\b(?:up|higher|above|lower|below|down) (?:and|but)(?: about| some)? $", r" ?(?:back|away|off|distant|out)\b(?! (?:grid|to the))", ""),
    ("well.depth", ("length",), rf"\b(?:the|our|my) (?:\w+ ){{0,2}}(?:well|bore ?hole|bore) is{_F}", r" ?(?:$|[,;] ?(?:drilled|dug|bored|with|and the water|the water|water|pump))", ""),
    ("pump.height", ("length",), rf"\b(?:submersible|bore(?:hole)? pump)(?: pump)?,? (?:at|to|on|down){_F}", r"(?! ?(?:away|from the|above|higher|long|of pipe))", ""),
    ("pump.height", ("length",), rf"\bpump \d ?(?:inch|in|\"),? at{_F}", r" ?(?:$|[,;.)]|deep|down)", _WELL),
    ("well.pumping", ("length",), rf"\bstatic\b[^;\n]{{0,25}}\bpumping(?: level)?{_F}", r"", ""),
    ("drip.length", ("length",), rf"\brows?{_F}", r" ?long\b", _DRIP),
    ("drip.rows", ("length",), r"", r" ?between(?: rows| them| each)?(?= ?[.,;\n]|$)", _DRIP),
    ("store.reserve", ("volume",), rf"\breserve for (?:the )?fire\b[^;\n\d]{{0,20}}{_F}", r"", ""),
    ("pressure_tank.precharge", ("pressure",), rf"\b(?:pressure (?:tank|vessel)|accumulator|bladder tank)\b[^;\n]{{0,25}}\bwith{_F}", r"(?! ?(?:switch|at the))", ""),
    ("well.depth", ("length",), rf"\b(?:the one (?:in use|we use|that (?:works|we use))|bore(?:hole)? (?:no\.?|number|nr\.?) ?\d)[:,]{_F}", r"(?! ?(?:away|from|of pipe|up\b|above))", _WELL),
    ("well.drawn_for", ("time",), rf"\b(?:drew|drawn|pumped out|bailed(?: out)?|took out)\b[^.;\n]{{0,25}}\bin{_F}", r"", _WELL),
    ("well.pumping", ("length",), rf"\b(?:it|level|water)(?: level)? (?:drew|pulled|drawn)(?: it)? down to{_F}", r"(?! ?(?:away|above))", _WELL),
    ("water.level", ("length",), rf"\bwater(?: level)?(?: goes| gets| is)? (?:down to|lowest at|lowest|at (?:its )?lowest|at worst|at (?:the )?least){_F}", r"(?! ?(?:away|above|of pipe|long))", _WELL),
    ("pump.height", ("length",), rf"\b(?:tag|card|plate|log|slip|report)\b[^.;\n]{{0,30}}\bset(?: at)?{_F}", r"(?! ?(?:away|above|psi))", _WELL),
    ("pump.diameter", ("length",), rf"\b(?:sub|submersible|pump)\b[^.;\n]{{0,25}}\b(?:outside|outer) diameter{_F}", r"", ""),
    ("pump.set", ("pressure",), rf"\b(?:speed[- ]controlled|variable[- ]speed|constant[- ]pressure|inverter[- ]driven|vfd)(?: \w+)? (?:pump|system|set|drive|unit|booster),{_F}", r" ?(?:$|[,.;)\n])", ""),
    ("pump.motor", ("percent",), rf"\bmotor(?:'s)? efficiency(?: is)?{_F}", r"", ""),
    ("way.climb", ("length",), r"", r" ?(?:of )?lift (?:up )?to (?:the |our |my )?(?:house|cabin|cottage|home|barn|garden|hut|trough|field|kitchen)\b", ""),
    ("way.length", ("length",), rf"\b(?:box|spring ?box|intake|catchment|weir|dam|springhead|well ?head|pump ?house) to (?:the )?(?:house|cabin|cottage|home|barn|hut|trough|garden|kitchen|taps?|farm){_F}", r"(?! ?(?:up\b|higher|above|below|lower|of (?:fall|drop|rise)|drop|fall|rise))", ""),
    ("drip.pressure", ("pressure",), rf"\b(?:gpm|l/min|lpm|l/s|gph|l/h) at the (?:field|garden|plot|beds|orchard|gate|patch),?(?: and)?{_F}", r" ?(?:$|[,.;)\n])", _DRIP),
    ("drip.warmest", ("temperature",), r"", r" ?(?:highs?|in the shade|at the hottest|on (?:the )?hot(?:test)? days?)\b", _DRIP),
    ("store.reserve", ("volume", "bare"), r"", r" ?of (?:that|it|this) (?:is |must be |to be )?(?:kept|held|reserved|saved) (?:back )?for (?:a )?fire\b", ""),
    ("well.depth", ("length",), rf"\bours(?: itself)?(?: is| goes| was drilled| went)?{_F}", r" ?(?:according|by the|on paper|from the|going by|says)\b", _WELL),
    ("well.depth", ("length",), rf"\b(?:wells?|bore ?holes?|bore)\b(?:(?!\b(?:water|static|level|pump|house|pipe|tank)\b)[^.;\n]){{0,45}},{_F}", r" ?(?:according to|going by|says|per|on) (?:the |my |our |his |an? )?(?:\w+ )?(?:tag|log|papers?|report|driller|card|plate|sheet|records?|survey|deeds?|seller|file)\b", ""),
    ("well.depth", ("length",), rf"(?:^|[.;,\n] ?|\band |\bbut )(?:the |our |my )?(?:\w+ )?(?:bore|bore ?hole) (?:is|goes|was){_F}", r" ?(?:$|[,.;)\n])", ""),
    ("well.depth", ("length",), r"", r" ?(?:straight |right |down |all the way )?(?:to|from the top to) (?:the |its )?(?:bottom|floor)\b(?! (?:of the (?:hill|slope|garden|field|tank|pond|lake|cistern|valley|road)|field|garden|tank|house))", rf"(?:{_WELL}|\bwater)"),
    ("way.length", ("length",), rf"\b(?:house|cabin|cottage|barn|hut|home|trough|garden|yurt|caravan|trailer)(?: is| lies| stands| sits)?(?: right| just| quite| very)? (?:next to|close to|near|beside|by) (?:it|that|the (?:well|spring|pump|bore\w*|tank|cistern|creek|stream)),{_F}", r" ?(?:$|[,.;)\n]|away|off\b|at most)", ""),
    ("way.length", ("length",), rf"(?:^|[.;,\n] ?)(?:the |our )?(?:house|cabin|cottage|barn|trough|garden|hut)(?: is| lies)? at(?: a distance of)?{_F}", r" ?(?:$|[,.;)\n]|distance|away|from the (?:well|spring|pump|bore))", ""),
    ("well.tested", ("flow",), rf"\b(?:he|they|we|i|driller|rig) (?:test[ -]?)?(?:pumped|bailed|drew|took)(?: it)?(?: at)?{_F}", r" ?for (?:\d|an?\b|two|three|four|five|six|eight|several|half|some)", _WELL),
    ("water.level", ("length",), rf"\b(?:water|level|table)\b[^.;\n\d]{{0,40}}\b(?:from|between) [\d.,]+ ?[a-z']*[^.;\n\d]{{0,25}} (?:to|and){_F}", r"(?! ?(?:away|above|of pipe|long))(?=[^.;\n]{0,12}\b(?:in|by|at the end|late|during|when it is dry)\b)", _WELL),
    ("well.tested", ("flow",), rf"\b(?:test(?:ed)?|pump test|yield test)(?: at)?{_F}", r" ?for (?:\d|an?\b|two|three|four|five|six|eight|several|half|some)", _WELL),
    ("well.static", ("length",), rf"\b(?:water|level)(?: level)? (?:went|fell|dropped|sank|drew|goes|falls|drops|sinks|came|moved)(?: down)? from{_F}", r" ?(?:down )?(?:to|until)\b", _WELL),
    ("well.pumping", ("length",), rf"\b(?:water|level)(?: level)? (?:went|fell|dropped|sank|drew|goes|falls|drops|sinks|came|moved)(?: down)? from [\d.,]+ ?[a-z']* ?(?:down )?to{_F}", r"(?! ?(?:away|above|in (?:summer|winter|august|the dry)))", rf"(?:{_WELL})[\s\S]*\bpump(?:ed|ing|s)\b|\bpump(?:ed|ing|s)\b[\s\S]*(?:{_WELL})"),
    ("drip.flow", ("flow",), r"", r" ?(?:at|to|before|after|through|past) (?:the )?(?:filter|head ?works|manifold|header|valve box|zone valves?|start of the (?:lines?|rows?)|first (?:valve|row|line))\b", _DRIP),
    ("drip.pressure", ("pressure",), rf"\b(?:filter|manifold|header|valve box|head ?works|start of the (?:lines?|rows?))\b[^.;\n]{{0,30}},{_F}", r" ?(?:there\b|at that point)", _DRIP),
    ("drip.length", ("length",), rf"\b(?:each|every|one|a|single) (?:row|line|bed|lateral)(?: is| runs| measures)?{_F}", r"(?! ?(?:apart|between|wide|from))", _DRIP),
    ("tank.level", ("length",), rf"\b(?:tanks?|drums?|barrels?|totes?|ibcs?)\b(?:(?!\b(?:pump|pipe|line|well|house)\b)[^.;\n\d]){{0,30}}{_F}", r" ?(?:above|off) (?:the )?ground\b", ""),
    ("hot.relief", ("pressure",), rf"\brelief valve\b[^;\n]{{0,90}}\. ?(?:it|this|that)(?: valve)? (?:is|opens|lifts|blows|says)(?: set| stamped| marked| rated)?{_F}", r"", _HOT),
    ("pump.most_flow", ("flow",), rf"\bpump\b(?:(?!\b(?:well|spring|bore\w*|house|shower|need|want)\b)[^.;\n]){{0,40}}\b(?:rated|rating|max(?:imum)?|nominal)(?: (?:at|for|of|flow|output))*{_F}", r"", ""),
    ("pump.most_flow", ("flow",), rf"\bpump\b(?:(?!\b(?:well|spring|bore\w*|house|shower|need|want)\b)[^.;\n]){{0,40}}{_F}", r" ?(?:max\b|maximum|rated|at (?:the )?most|free flow|nominal)", ""),
    ("use.daily", ("daily",), r"", r" ?(?:is|are|would be|will be|should be) (?:plenty|enough|fine|sufficient|all we need|what we (?:need|use)|ample|about right)\b", ""),
    ("way.length", ("length",), rf"\bfrom (?:the |our |my )?(?:\w+ )?(?:pump|well|well ?head|spring|bore ?hole|bore|creek|stream|source) (?:up |over |on |down )?to (?:(?!\bto\b|\bfrom\b)[^.;\n]){{2,45}}(?:house|cabin|home|cottage|garden|barn|hut|tank|trough|kitchen|field)(?:,| there)? ?(?:it is|it's|is|there is|there are|we have|i have|i paced|i measured|runs?|we laid){_F}", r" ?(?:$|[,.;)(\n]|(?:of|with|away|long|and|in|pipe|along|x)\b)", ""),
)  # fmt: skip
_NO_PUMP = frozenset(["fall.flow", "fall.wanted", "fall.held"])
_PUMPED = re.compile(
    r"\b(?:our|the|a|my|jet|submersible|booster|solar) pump\b(?! (?:is|are) not| at all)"
)
_LONG = frozenset(
    ["suction.length", "water.level", "pump.height", "well.depth", "well.intake", "well.drop_pipe"]
)
_PLAIN = frozenset(["drip.need"])  # numbers without a unit
_BARE_PATHS = frozenset(["drip.warmest", "drip.coolest"])
_UPRIGHT = re.compile(
    r"\b(?:elevation|height|fall|drop|rise|rises|gain|climb|climbs|lift|lifts|vertical|head|difference|drops|falls|cable|wire|suction)\b"
)
_UPWARD = re.compile(r"\b(?:up|uphill|rise|rises|climb|climbs|upward|upwards)\b")
_DOWNWARD = re.compile(r"\b(?:down|downhill|falls?|falling|drops?|downward|downwards)\b")


@dataclass(frozen=True)
class _Direct:
    path: str
    kinds: tuple[str, ...]
    left: Late | None
    right: Late | None
    mail: Late | None


_EARLY = (*claims.FIRST, *FIRST, *WAYS, *_DEFINED, *NOUNS)
_LATE = (*ROWS, *ORDER, *BRIEF, *MACHINES, *PLOTS, *claims.LAST)
_ALL = tuple(
    _Direct(
        path,
        kinds,
        Late(left.replace("[^.;\\n]", "[^;\\n]")) if left else None,  # a sentence's own
        Late(right) if right else None,
        Late(mail) if mail else None,
    )
    for path, kinds, left, right, mail in (*_EARLY, *_LATE)
)
_BY_KIND = {
    kind: tuple(one for one in _ALL if kind in one.kinds)
    for kind in {kind for one in _ALL for kind in one.kinds}
}
_WIDE = 110  # characters before a number that may name it; our choice


@lru_cache(maxsize=512)
def _holds(pattern: Late, mail: str) -> bool:
    """Whether a letter holds what a row wants somewhere; asked again for each of its numbers."""
    return pattern.search(mail) is not None


_DELIVERED = re.compile(
    r" of [^.;\n]{0,30}\b(?:to|up to|for) (?:the |our )?(?:house|cabin|home|barn|tank|kitchen|garden|trough)\b"
)


def path_of(token: Token, near: Context, unit: str) -> str:
    """The fact that a number's own clause names; "" where it names none.  unit: the letter's, of
    lengths told without one."""
    sucks = near.next_pipe == "suction.pipe" and near.right == " of "
    sucks = sucks and not _DELIVERED.match(near.after)
    if sucks and token.kind == "length" and token.unit in {"m", "ft"}:
        return "suction.length"
    rules = _BY_KIND.get(token.kind, ())
    left = near.before.lstrip(" -*•")[-_WIDE:]
    for one in rules:
        if one.right is not None and not one.right.match(near.after):
            continue
        if one.left is not None and not one.left.search(left):
            continue
        if one.mail is not None and not _holds(one.mail, near.mail):
            continue
        path = one.path.lstrip("-")  # a row of "-way.climb" tells a fall
        if _fits(token, near, path):
            if token.kind == "bare" and path not in _PLAIN:
                if not unit:
                    continue
                token.unit = unit
            if path != one.path:
                token.sign = -1.0
            return path
    return ""


_EMITS = re.compile(r"\b(?:drippers?|emitters?)\b")
_VALVE = re.compile(r"\b(?:valves?|relief|reducer|regulator|heater|boiler|alarm|timer|switch)\b")

_TUBE, _WIDEST = 30.0, 3.0  # mm inside, and m between two, at most of drippers; our choice
_APART = 5.0  # m, up to which "3 ft rows" tells how far they are apart; our choice
_LOWER = re.compile(r" ?(?:lower|below|deeper|further down)\b")

_COMMON = frozenset(
    [
        "water.level",
        "well.depth",
        "pump.height",
        "tank.level",
        "water.yield",
        "use.daily",
        "way.climb",
    ]
)


def weight(path: str) -> float:
    """What is read by cues as well weighs as there, so that two ways of saying contradict."""
    return 5.0 if path == "way.length" else 6.0 if path in _COMMON else 9.0


def _fits(token: Token, near: Context, path: str) -> bool:
    """Whether a number can be one of that path; its unit and sign are put right."""
    small = token.unit in {"mm", "in", "cm"}
    metres = token.low * {"m": 1.0, "ft": 0.3048}.get(token.unit, 0.0)
    if path == "place.altitude":
        return at_sea(metres or 0.3048 * token.low, near)
    if path in {"pipes.hottest", "hot.stored"} and token.kind == "angle":
        token.unit = "°C" if token.low <= 95 else "°F"  # of water, "degrees" alone
    if path == "drip.spacing":
        return small or metres <= _WIDEST
    if path in {"drip.bore", "pump.diameter"}:
        return token.unit == "in" or (token.unit == "mm" and (path[0] == "p" or token.low <= _TUBE))
    if path == "drip.reference":
        return small and token.low < 20
    if path == "way.length":
        return _runs(token, near)
    if path == "well.bore":
        return (
            token.unit in {"mm", "in", "cm"}
            or token.low * {"m": 1.0, "ft": 0.3}.get(token.unit, 99) < 4
        )
    if path == "well.cover":
        token.unit = token.unit.split()[0]
    if path in _NO_PUMP:
        return not _PUMPED.search(near.mail)
    if path in _BARE_PATHS:
        return _warm(token, near)
    if path == "drip.slope":
        said = near.before[-40:] + near.right[:14]
        down, up = bool(_DOWNWARD.search(said)), bool(_UPWARD.search(said))
        if down and not up:
            token.low, token.high = -token.high, -token.low
    if path == "pump.height" or (path == "way.climb" and _LOWER.match(near.right)):
        token.sign = -1.0
    valve = _VALVE.search(near.mail[max(0, token.start - 100) : token.start])
    if (path == "pump.set" and valve) or (path == "use.leak" and _EMITS.search(near.before[-60:])):
        return False  # "it" is another thing
    if path in {"drip.length", "drip.rows"}:
        return (not small or token.unit == "cm") and not _apart(near, path, metres)
    return not (small and path in _LONG)


def _apart(near: Context, path: str, metres: float) -> bool:
    """Whether a length beside "rows" is none of theirs: "3 ft rows" tells how far they are apart."""
    narrow = 0 < metres <= _APART and re.match(r"[ -]?rows?\b", near.right)
    return path == "drip.length" and bool(narrow)


def _runs(token: Token, near: Context) -> bool:
    """Whether a length can be a way's, and is neither upright nor an altitude."""
    far = token.low * {"m": 1.0, "ft": 0.3048}.get(token.unit, 999.0)
    placed = far >= 250 and re.search(r"\bat(?: about)? $", near.left[-12:])  # an altitude
    own = near.left[-90:]
    if re.match(r" ?(?:away |off |far )?from\b", near.right):
        own = own.rsplit(",", 1)[-1]
    return not (placed or _UPRIGHT.search(own))


def _warm(token: Token, near: Context) -> bool:
    """Degrees of the air, of which "degrees" alone is told."""
    if token.kind == "angle" or token.kind == "bare":
        if not re.search(r"\bdegrees?\b|°|\btemp", near.before + near.right[:12]):
            return False
        token.unit = "°C" if token.low <= 48 else "°F"
        token.kind = "temperature"
    return bool(re.search(r"\b(?:daily|mean|average|day|night|summer|air|july|august|maxim\w+|minim\w+|highs?|lows?)\b", near.before[-70:]))  # fmt: skip
