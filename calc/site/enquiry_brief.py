"""Rows for ``enquiry_direct``: what short notes and spoken sentences tell by one noun, in any order.

"Pump in at 150 ft", "farthest drinker 750 m out", "expansion vessel 12 litres". A row is as
``enquiry_direct`` says.
"""

from __future__ import annotations

_F = r"[ ,:=~(+-]*+(?>(?:is|are|was|be|of|at|a|the|about|around|roughly|some|only|just|approx\.?|ca\.?|nearly|almost|up to|maybe|perhaps|say|it is|it's|by|over|exactly|now|nearer)(?![a-z])[ ,:=~(-]*+)*+$"
_ENDS = r" ?(?:$|[,.;)\n]|and\b|or so\b)"
_DRIP = r"\b(?:drip|dripline|drippers?|emitters?)\b"
_HOT = r"\b(?:heater|boiler|hot[ -]water|geyser|cylinder|hot side)\b"
_WELL = r"\b(?:wells?|bore ?holes?|bore|submersible)\b"
_SOURCE = r"\b(?:wells?|bore ?holes?|bore|springs?|seep|source)\b"
_PEOPLE = r"\b(?:people|persons?|pupils|children|students|guests?|residents|family|of us|adults?|learners|staff)\b"
_UNREDUCED = r"\A(?![\s\S]*\b(?:reduc\w+|reducer|regulator|prv)\b)[\s\S]*"
_PLACE = r"(?:house|cabin|home|cottage|hut|barn|shack|lodge|farm|bungalow|trailer|trough|garden|paddock|pasture|stable)"
_FAR = r"(?:furthest|farthest|most distant|far|last)"
_POINT = r"(?:drinker|trough|waterer|tap|house|cabin|outlet|paddock|pasture|field|point|bed|hydrant|sprinkler|hut|stand)"
_LOW = (
    r"(?:starts?|kicks? (?:in|on)|comes? (?:back )?on|turns? on|cuts? in|switch(?:es)? on|goes? on)"
)

BRIEF: tuple[tuple[str, tuple[str, ...], str, str, str], ...] = (
    # what a source gives
    ("water.yield", ("flow",), rf"\b(?:pump(?:ed|ing)|ran|bail(?:ed|ing)|test(?:ed|ing)|measur\w+)\b[^.;\n]{{0,50}}\b(?:it|well|spring|bore\w*)(?: only| just)? (?:gave|made|yielded|delivered|managed|brought|produced|kept up|came to){_F}", r"(?! ?(?:at the (?:tap|house|shower)))", _SOURCE),
    ("water.yield", ("flow",), rf"\b(?:drilled|dug|bored|bailed|tested|drillers?)\b[^.;\n]{{0,40}}\b(?:wrote|noted|logged|recorded|marked)(?: down| it)*{_F}", "", _SOURCE),
    ("water.yield", ("flow",), rf"\b(?:low|poor|weak|slow|good|strong|modest|fair) (?:producer|yielder|yield){_F}", "", _SOURCE),
    ("water.yield", ("flow",), rf"\b(?:seep|spring|source)\b(?:(?!\b(?:pump|tank|tap|shower)\b)[^.;\n]){{0,50}}\b(?:drips?|trickles?|dribbles?|seeps?)(?: out| in)?{_F}", "", ""),
    # wells and the pumps in them
    ("well.depth", ("length",), rf"(?:^|[.;\n] ?)(?:the |our |my |drilled |a )*(?:well|bore ?hole|bore)[ :,]*\d[\d.]* ?(?:in(?:ch)?|\"|mm|cm)(?: casing| bore| wide| diameter)?,{_F}", _ENDS, ""),
    ("well.depth", ("length",), rf"(?:^|[.;\n] ?)(?:bore|bore ?hole|well)'s{_F}", _ENDS, ""),
    ("well.depth", ("length", "bare"), rf"\b(?:wells?|bore ?hole|bore|hole|shaft)\b[^;\n]{{0,60}}\b(?:wide|across|diameter),? (?:and|by|x){_F}", r" ?deep\b", ""),
    ("well.bore", ("length",), rf"\b(?:wells?|bore ?hole|bore|casing)\b[^;\n]{{0,60}}{_F}", r" ?(?:inside |internal |inner |clear )?(?:diameter|dia\b|wide\b|across\b(?! the))", ""),
    ("well.bore", ("length",), rf"\b(?:well|bore ?hole|bore)\b[^.;\n]{{0,25}}\d ?(?:m|ft|feet|met(?:re|er)s|')(?: deep)?,{_F}", r" ?(?:$|[,.;)\n]|casing|cased|bore)(?! ?(?:poly|pvc|pipe|pex))", ""),
    ("well.depth", ("length",), rf"\b(?:our|the|my|this) (?:\w+ )?(?:well|bore ?hole|bore) is{_F}", r" ?(?:deep )?and (?:the |its )?(?:static|water|pump|level)\b", ""),
    ("well.depth", ("length",), rf"(?:^|[.;\n] ?)(?:the |our )?(?:bore ?hole|bore|well){_F}", r" ?(?:deep )?with (?:a |an |the )?(?:old )?(?:hand ?pump|pump|submersible|windmill)\b", ""),
    ("well.drop_pipe", ("length",), rf"\b(?:submersible|pump|sub) (?:is |hangs |hung |is hung )?on{_F}", r" ?of (?:[\w\"/.-]+ ){0,3}?(?:pipe|poly|pvc|hose|line|steel|galv\w*)\b", _WELL),
    ("well.bore", ("length",), rf"\b(?:well|bore ?hole|bore)\b[^;\n]{{0,45}}\b(?:diameter|dia\.?){_F}", r"(?! ?(?:pipe|poly|pvc))", r"\A(?![\s\S]*\bpipe (?:of )?diameter)[\s\S]*"),
    ("well.depth", ("length",), rf"\b(?:well|bore ?hole|bore)\b(?:(?!\b(?:pump|water|house|tank)\b)[^.;\n\d]){{0,20}},{_F}", r" ?(?:deep)?,? ?(?:diameter|dia\b|cased|\d+ ?(?:mm|in(?:ch)?\b|\") (?:casing|bore|diameter))", ""),
    ("pump.diameter", ("length",), rf"\b(?:pump|submersible)(?:'s)? (?:of )?(?:outside )?(?:diameter|dia\.?){_F}", "", ""),
    ("well.bore", ("length",), rf"\bin an?{_F}", r"[ -]?(?:\w+ )?(?:bore ?hole|bore|well|casing)\b", r"\b(?:pump|submersible)\b"),
    ("pump.height", ("length",), rf"\b(?:pump|submersible)\b[^;\n]{{0,60}}\b(?:bore ?hole|bore|well|casing),{_F}", r" ?(?:down|deep)\b(?! (?:the|from|to))", ""),
    ("pump.height", ("length",), rf"(?:^|[.;,\n] ?)(?:the |our )?(?:pump|submersible|sub) (?:goes|will (?:hang|go|sit)|went)(?: in| down)*(?: at| to)?{_F}", r" ?(?:$|[.,;)\n]|deep|down\b)(?! ?(?:the|from))", _WELL),
    ("pump.height", ("length", "bare"), rf"\b(?:he|they|we|i|driller|guy|man) (?:put|hung|set|placed|dropped) (?:the|our|my) (?:pump|submersible)(?: in| down)* (?:at|to){_F}", r" ?(?:$|[.,;)\n]|deep|down\b)", _WELL),
    ("pump.height", ("length", "bare"), rf"\b(?:we|i|it|pump) (?:pulls?|pumps?|draws?|lifts?|pumping)(?: it| water)? from{_F}", r" ?(?:$|[.,;)\n]|deep|down\b)(?! ?(?:the|away))", _WELL),
    ("pump.height", ("length",), rf"(?:^|[.;\n] ?)(?:it |which )?(?:sits|hangs|is hung|hung|is set|set|hanging|sitting)(?: down)? at{_F}", r" ?(?:$|[.,;)\n]|deep|down\b)", r"\b(?:sub|submersible|bore|down-?hole)(?: pump)?\b"),
    ("well.pumping", ("length", "bare"), rf"\b(?:pumping|dynamic) (?:water )?level{_F}", r"(?! ?(?:l/|l\b|lit|gpm|%|psi|bar|away))", ""),
    ("well.pumping", ("length",), rf"\b(?:level|static|water)\b[^;\n]{{0,40}}\b(?:dropping|falling|drawing down|sinking|going down|drawn down|pulled down)(?: down)? to{_F}", r"(?=[^.;\n]{0,40}\bpump)", ""),
    ("water.level", ("length",), rf"\b(?:level|static|water)\b[^;\n]{{0,40}}\b(?:dropping|falling|sinking|going down)(?: down)? to{_F}", r"(?! ?(?:in the tank|away))", _WELL),
    ("water.level", ("length", "bare"), rf"(?:^|[.;\n,] ?)(?:the )?water(?: ?level| lvl|s)? (?:is |sits |stands )?(?:at )?{_F}", r" ?(?:(?:deep |down )?in (?:my|our|the) (?:\w+ ){0,2}(?:well|sand ?point|bore\w*)|down\b|$|[.,;])(?! ?(?:a day|per|/|from|away|gpm|l\b|psi))", rf"{_WELL}|\bsand ?point\b|\bcasing\b"),
    ("well.drop_pipe", ("length",), "", r" ?of (?:[\w\"/.-]+ ){0,4}?(?:drop (?:pipe|line)|riser(?: pipe)?|rising (?:main|pipe))\b", ""),
    ("water.level", ("length",), rf"\b(?:totes?|tanks?|cisterns?|barrels?|drums?|ibcs?)\b[^;\n]{{0,60}}\bpump(?: is| sits| stands)*{_F}", r" ?(?:above|over|higher than) (?:it|that)\b", ""),
    ("water.level", ("length",), rf"\b(?:lift|height|rise|vertical)(?: \w+)? from (?:the )?(?:creek|water|stream|pond|river|lake|well|spring|cistern|dam)(?: \w+)? (?:up )?to (?:the )?pump{_F}", "", ""),
    ("well.pumping", ("length", "bare"), rf"\b(?:rest|static|resting)\b[^.;\n]{{0,30}}\band (?:went|fell|dropped|drew|came)(?: down)? to{_F}", r" ?(?:$|[,.;)\n]|while|when|at|under|with)", ""),
    ("water.level", ("length",), rf"\b(?:jet|pump|booster)\b(?:(?!\b(?:tank|reservoir|to|from)\b)[^.;\n]){{0,50}},{_F}", r" ?(?:above|over|higher than) (?:the )?(?:lowest |low )?(?:water|creek|stream|lake|river|pond|surface)\b", ""),
    ("well.pumping", ("length",), rf"\b(?:drew|pulled|brought|took) (?:it|the (?:water|level|well)) down to{_F}", "", _WELL),
    ("well.tested", ("flow",), rf"\btest(?:ed)?:? [^.;\n]{{0,20}}\bat{_F}", r"(?=[^.;\n]{0,30}\b(?:drew|drop\w*|pull\w*|lower\w*|level))", _WELL),
    # the way
    ("power.tilt", ("angle",), rf"\b(?:north|south|east|west)(?:[ -](?:east|west))?[ -]facing(?:,? at| at|,)?{_F}", r"(?! ?(?:n\b|s\b|north|south|lat|c\b|f\b))", r"\bpanels?|\bmodules?|\barray"),
    ("way.length", ("length",), "", r" ?(?:through|thru|across|over) (?:the |a |some )?(?:woods?|trees|forest|bush|scrub|fields?|pasture|meadow|paddock)\b", r"\b(?:pipe|spring|well|creek|house|cabin|yurt|pump|poly)\b"),
    ("way.length", ("length",), rf"\b(?:spring|source|intake|dam|weir|box|catchment)(?: is| lies| sits| that is)?{_F}", r" ?(?:upstream|up stream|up the (?:burn|creek|stream|glen|valley|gully))\b", ""),
    ("way.length", ("length",), rf"\b(?:spring|source|creek|stream|well|intake|dam|bore|bore ?hole)(?: is| lies| sits| that is)?{_F}", r" ?(?:up|down|along) (?:the|a|our) (?:lane|track|road|drive|driveway|path|trail|valley|canyon|hedge|field)\b", ""),
    ("way.length", ("length",), rf"\b{_FAR}(?: {_POINT})(?: of them)?{_F}", r" ?(?:$|[,.;)\n]|and\b|n\b|with\b|out\b|off\b|away\b|from\b|in \d)(?! ?(?:up\b|higher|above|below|lower))", ""),
    ("way.length", ("length",), rf"\b(?:furthest|farthest)(?: one| of them)?{_F}", r" ?(?:off|out|away)\b", ""),
    ("way.length", ("length",), rf"\b(?:track|path|road|line|distance|run|trench|fence line|pipe)(?: in)? between(?: them| the two| both)?{_F}", r"(?! ?(?:high|up\b|above|wide|rows))", ""),
    ("way.length", ("length",), "", r" ?(?:up |over |out |down )?to (?:the |our |my )?(?:\w+ )?" + _PLACE + r" (?:along|by|following|on) (?:the |a )?(?:\w+ )?(?:trail|track|path|road|lane)\b", ""),
    ("way.length", ("length",), rf"\b{_PLACE}\b[^;\n]{{0,30}}\d ?[a-z']+ (?:up|higher|above|down|lower|uphill|downhill),? (?:and |but ){_F}", r" ?(?:back|away|off|out|in (?:the|from)|through|along|over|across)\b", ""),
    ("way.length", ("length",), rf"(?<!intake )(?<!suction )\b(?:pipe|line|hose|poly|pvc|pex|hdpe|mdpe|copper)\b(?: that)? (?:(?:coming|comes|running) down|(?:coming|running|runs|leading)(?: (?:over|across|out|along|for|back))*){_F}", r"(?! ?(?:above|below|higher|lower|deep|up\b|under|of (?:fall|drop|rise)|(?:of \w+ )?(?:down|inside|in) (?:the|our) (?:well|bore\w*|hole)))", ""),
    ("way.length", ("length",), rf"(?:^|[.;\n] ?)(?:the |our )?(?:\w+ )?tank(?: is| sits| stands)?{_F}", r" ?(?:away )?from the (?:bore ?hole|bore|well|pump|spring|creek|river|dam)\b", r"\A(?![\s\S]*\b(?:house|cabin|home|cottage|hut)\b)[\s\S]*"),
    ("way.length", ("length",), rf"(?:^|[.;,\n] ?)(?:the |our )?(?:tank|cistern|well|spring|pump|bore|bore ?hole|dam|creek|stream|river|lake|pond|weir|source|intake|burn) to (?:the |our )?(?:\w+ )?{_PLACE}(?: it)?{_F}", r" ?(?:$|[,.;)\n]|and\b|away\b|of (?:pipe|poly|hose))(?! ?(?:higher|up\b|above|below|lower)\b(?! \d))", ""),
    ("way.climb", ("length",), rf"\b(?:going|goes|go|climbs?|rising|rises|climbing|runs?) up{_F}", r" ?(?:over|in|within|across|along) (?:about |some )?(?:\d|¤)", ""),
    ("way.climb", ("length",), rf"\A(?![\s\S]*\b(?:tank|reservoir|cistern)\b)[\s\S]*\d ?(?:km|m|ft|feet|miles?|met(?:re|er)s|yards) (?:away|off|distant|on) and{_F}", r" ?(?:higher|up\b|uphill)(?! (?:than|to))", ""),
    ("way.climb", ("length",), rf"\b{_PLACE}\b[^;\n]{{0,25}}\d ?[a-z']+ (?:away|off|out|on|distant),(?: and)?{_F}", r" ?up from the (?:shed|pump|well|spring|tank|bore\w*|creek)\b", ""),
    ("tank.level", ("length",), rf"\b(?:tank|reservoir) (?:that's|that stands|that sits|which stands|which sits){_F}", r" ?(?:higher|above|up\b|uphill)", ""),
    ("tank.level", ("length",), rf"\btanks?\b[^.;\n]{{0,30}}\bon (?:a|an|the|its) (?:\w+ )?(?:tower|stand|platform|legs|stilts|frame)\b,{_F}", r" ?(?:$|[,.;)\n]|high|tall|up\b)", ""),
    ("tank.level", ("length",), rf"\btanks?\b[^;\n]{{0,50}}\bon (?:a|an|the|its) (?:\w+ )?(?:tower|stand|platform|legs|stilts|frame|scaffold){_F}", r" ?(?:high|tall|up\b|above (?:the )?ground)", ""),
    ("tank.level", ("length",), rf"\b(?:tanks?|totes?|barrels?|butts?|drums?|ibcs?)\b[^.;\n]{{0,45}}\b(?:raised|lifted|propped up|jacked up|up on blocks){_F}", r" ?(?:$|[,.;)\n]|off|above|up\b|high)", ""),
    ("tank.level", ("length",), rf"\btanks?\b[^;\n]{{0,50}}\bon (?:a|an|the|its) (?:\w+ )?(?:tower|stand|platform|legs|stilts|scaffold) of{_F}", "", ""),
    ("-way.climb", ("length",), rf"\b(?:weir|intake|spring|box|source|dam|catchment)\b[^.;\n]{{0,25}}\d ?(?:m|ft|feet|met(?:re|er)s|yards|km|miles?) (?:upstream|away|off|back|up the [a-z]+),? (?:and )?{_F}", r" ?(?:higher|above|up\b)(?! (?:the (?:sea|intake|spring|weir)|than))", ""),
    ("-way.climb", ("length",), rf"\b{_PLACE}(?:'s| is)? (?:downhill|below|down)(?: by| about)*{_F}", r" ?(?:from|of|below) (?:the )?(?:well|pump|spring|tank|bore\w*)\b", ""),
    ("-way.climb", ("length",), rf"\A(?![\s\S]*\b(?:water|level|static|tank)\b)[\s\S]*\b(?:yards|feet|ft|m|met(?:re|er)s),? (?:and )?(?:falling|dropping|descending){_F}", _ENDS, ""),
    # pumps
    ("pump.most_flow", ("flow",), rf"(?:^|[.;\n] ?|\band )(?:the |our |my )?(?:[a-z]+ )?pump(?:'s| is| was)(?: an?)? (?:(?!\b(?:well|spring|bore\w*|set|at)\b)[^.;\n]){{0,40}},{_F}", r" ?(?:$|[,.;)\n])", ""),
    ("pump.most_flow", ("flow",), rf"\b(?:rv|12 ?-?v|24 ?-?v|diaphragm|surface|jet|booster|solar|submersible|sub|transfer)(?: [a-z]+)? pump,?{_F}", _ENDS, ""),
    ("pump.set", ("pressure",), rf"\bpump with (?:an? )?(?:inverter|vfd|drive|variable[ -](?:speed|frequency)(?: drive)?)(?: set)?{_F}", r"(?! ?(?:-|/|to \d))", _UNREDUCED),
    ("pump.cut_in", ("pressure",), rf"\b(?:pump|switch|it|set)\b(?:(?!\bheater\b)[^;\n]){{0,70}}\b(?:and|then|,)(?: (?:to|then|it))* {_LOW}(?: (?:up|again|back))* (?:at|around){_F}", r"(?! ?(?:-|/|to \d))", r"\bpump|\bswitch"),
    ("pump.set", ("pressure",), rf"\b(?:variable[- ]speed|constant[- ]pressure|vsd|vfd|inverter)\b[^.;\n\d]{{0,30}}{_F}", r" ?(?:set\b|set ?point|const|$|[,.;)\n])(?! ?(?:-|/|to \d))", _UNREDUCED),
    ("pump.set", ("pressure",), rf"\bset(?: at| to| for)?{_F}", r" ?(?:const(?:ant)?\b|steady\b)", _UNREDUCED),
    ("pump.set", ("pressure",), rf"\bbooster(?: pump)?(?: after that| set| then| running| giving| holding)*(?: at| to)?{_F}", _ENDS + r"(?! ?(?:-|/|to \d))", _UNREDUCED),
    ("pump.motor", ("percent",), rf"\bmotor(?:'s)? efficiency\b[^;\n\d]{{0,20}}{_F}", "", ""),
    ("suction.strainer", ("length",), rf"\b(?:lost|loss|losses)(?: of head)? (?:in|at|through|over) (?:a |the |its )?(?:suction )?(?:strainer|foot valve and strainer)\b[^.;\n\d]{{0,20}}{_F}", "", ""),
    # hot water
    ("hot.volume", ("volume",), rf"\bhot[ -]water(?: tank| cylinder| store)?{_F}", r" ?(?:at|kept at|stored at) \d", ""),
    ("hot.tank", ("volume",), rf"\bexpansion (?:vessel|tank){_F}", "", _HOT),
    ("hot.precharge", ("pressure",), rf"\bexpansion (?:vessel|tank)\b(?:(?!\bpump\b)[^;\n]){{0,40}}\b(?:charged|pumped|set|inflated|filled)(?: up)? to{_F}", "", _HOT),
    # pipes
    ("pipes.hottest", ("temperature", "angle"), rf"\bwater (?:that|which) (?:comes|runs)(?: out)?(?: first)? (?:is|at|has){_F}", r"(?! ?(?:n\b|s\b|tilt))", r"\b(?:pipe|poly|hose|line)\b[^.\n]{0,60}\bsun\b"),
    ("pipes.hottest", ("temperature",), rf"\b(?:pipe|poly|line|hose|water|it)\b[^;\n]{{0,60}}\bcomes out(?: of it)?{_F}", "", r"\b(?:poly|pipe|hose|line)\b[^.\n]{0,40}\b(?:on (?:the|top)|above ?ground|in the sun)\b"),
    ("pipes.weakest", ("pressure",), rf"\bweakest (?:bit|part|point|link|piece|thing|fitting|item)\b[^.;\n]{{0,40}}{_F}", "", ""),
    # drip
    ("drip.dripper", ("flow",), rf"^(?:they|these|each|those)\b[^;\n]{{0,90}}{_F}", _ENDS, r"\b(?:drippers?|emitters?)\b[^\n]{0,120}\. *(?:they|these|each|those)\b"),
    ("drip.pressure", ("pressure",), rf"\b(?:pressure|supply)(?: is)? (?:at|in|on|to) the (?:first row|blocks?|zones?|plot|orchard|vineyard|field|rows?|laterals?|valves?){_F}", "", _DRIP),
    ("drip.pressure", ("pressure",), rf"\bsupply{_F}", r" ?at the (?:first|start|head|block|field|zone|row)", _DRIP),
    ("drip.flow", ("flow",), rf"(?:\bblock|\bfield|\bplot|\bzone|\bpressure)\b[^;\n]{{0,30}},? (?:and )?(?:a |the )?flow{_F}", "", _DRIP),
    ("drip.flow", ("flow",), "", r" ?at the (?:head|start|inlet|beginning|top) of (?:the |each )?(?:drip|orchard|block|field|plot|rows?|laterals?|lines?|garden)\b", _DRIP),
    ("drip.length", ("length",), rf"\blaterals?(?: hoses?| lines?| pipes?)?\b[^.;\n]{{0,30}}{_F}", r" ?(?:$|[,.;)\n]|long\b|each\b)", _DRIP),
    ("drip.pressure", ("pressure",), rf"^(?:the )?pressure (?:there|at that point){_F}", "", r"\b(?:drippers?|emitters?)\b"),
    ("drip.hours", ("time",), rf"\b(?:i|we) (?:can|may|could) run(?: it| them)?(?: for)?{_F}", r" ?(?:(?:a|per|each|every) (?:day|night)|daily)", r"\b(?:drippers?|emitters?)\b"),
    ("drip.length", ("length",), rf"\b(?:lines?|rows?|laterals?)\b[^.;\n]{{0,25}}\bapart(?:,| and)+{_F}", r" ?long\b", _DRIP),
    ("drip.pressure", ("pressure",), rf"\bat the (?:field|plot|garden|orchard|block|grove|vineyard)(?:'s)?(?: gate| valve| edge| inlet)?(?: i have| we have| there is| it is)?{_F}", "", _DRIP),
    ("drip.daily", ("daily",), rf"\b(?:allowed|permitted|licen[cs]ed?|entitled|quota|allowance|water right|may (?:take|use|draw))\b[^;\n\d]{{0,25}}{_F}", "", _DRIP),
    ("drip.hours", ("time",), rf"\b(?:let|leave|keep) (?:it|them|the (?:drip|water|system|lines)) (?:run|on|running|open)(?: for)?{_F}", r" ?(?:a|per|each|every) (?:day|night)|daily", r"\b(?:drippers?|emitters?)\b"),
    # stores and use
    ("store.depth", ("length",), rf"\b(?:tank|cistern|reservoir)\b[^;\n]{{0,60}}{_F}", r" ?(?:deep )?(?:of )?water when (?:it's |it is )?full\b", ""),
    ("store.reserve", ("volume",), rf"\bfire (?!needs)[^.;\n]{{0,40}}\b(?:wants?|requires?|needs?|asks?(?: for)?|demands?|insists? on){_F}", r"(?! ?to put)", r"\b(?:tanks?|cistern|reservoir|kept|reserve)\b"),
    ("store.reserve", ("volume",), rf"\bkeep{_F}", r" ?(?:in|of)[^.;\n]{0,25} for (?:a )?fire\b", ""),
    ("use.each", ("volume",), rf"{_PEOPLE} (?:at|x|by|times|@|using|each using){_F}", r"(?! ?(?:tank|pressure|drum))", ""),
    ("use.garden", ("volume",), rf"\b(?:garden|veg\w*|plot|beds|irrigation)(?: takes| needs| uses| gets)?{_F}", r" ?(?:in|during|when it is|when it's) (?:the )?(?:dry|summer|hot)", r"\ba day\b|\bper day\b|\bdaily\b"),
    ("use.daily", ("daily",), "", r" ?(?:covers|does|will do|suffices for|would cover|should cover) (?:it|us|them|that|everything)\b(?![^.;\n]{0,30}\b(?:seller|shop|brochure|box|ad)\b)", ""),
    ("use.daily", ("volume",), rf"\bbut we(?: use| need| take)?(?: only| just){_F}", _ENDS, r"\ba day\b|\bper day\b|\bdaily\b"),
)  # fmt: skip
