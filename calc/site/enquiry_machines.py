"""What is told of pumps, what drives them and what they draw from, in words of other places than the
ones ``enquiry_words`` knows: rows for it, for ``enquiry_direct`` and for ``enquiry_doubts``."""

from __future__ import annotations

import re
from dataclasses import replace

from calc.site.enquiry_model import Piece, Token
from calc.site.enquiry_numbers import NUMBER, unit_after, value

_F = r"[ ,:=~(+-]*+(?>(?:is|are|was|be|of|at|a|the|about|around|roughly|some|only|just|approx\.?|ca\.?|nearly|almost|up to|maybe|perhaps|say|it is|it's|by|over|exactly|now|required|needed|says?|reads?)(?![a-z])[ ,:=~(-]*+)*+$"
_ROOM = (
    r"(?:room|counter|store|pier|skid|milk ?house|wharf|quay|pontoon|bench|landing|stage|office|hold|galley|annexe?|kiosk|hall"
    r"|(?:creek|river|stream|lake|pond)(?:bank|side|shore)|woodshed|wood ?store|scullery|larder|pantry|laundry|outbuilding|smoke ?house|oil store)"
)
_DRAWN = r"(?:water|surface|creek|stream|lake|river|pond|sea|canal|dam|level|cistern|well)"
_BORES = r"\b(?:wells?|bore ?holes?|bores?|casing|drilled|hole|driller)\b"

WORDS = (
    # where the pump is
    ("pump.placement", "in", 6, r"(?<!not )\bpumps?\b[^.;\n¤]{0,30}\b(?:under ?water|submerged)\b(?! (?:power|electric))"),
    ("pump.placement", "in", 3, r"\b(?:hung|lowered|suspended) (?:the|our|my|a|his) (?:[a-z]+ ){0,2}?pump (?:at|to|on|down|from)\b(?! (?:the |a )?(?:\w+ )?(?:wall|hook|brac[k]et|beam))"),
    ("pump.placement", "in", 3, r"\bpump\b[^.;\n¤]{0,12} in (?:the |a |its )?(?:drilled |bore ?)?hole\b"),
    ("pump.placement", "in", 3, r"\b(?:has|got|have) (?:the|our|my|a) (?:[a-z]+ )?pump hang(?:ing|s)\b|\bthe (?:kind|sort|type|one) that (?:goes|hangs|sits) (?:down |in )+the (?:hole|well|bore\w*)\b"),
    ("pump.placement", "in", 3, rf"{_BORES}[^;\n]{{0,50}}[.,;] ?(?:somewhere )?in it (?:is|hangs|sits) (?:a|the|our) (?:[a-z]+ )?pump\b"),
    ("pump.placement", "out", 3, rf"\b(?:pumps?|booster|machine|centrifugal)\b(?:'s| is| are| sits?| stands?| lives?| sitting| standing)*(?: (?:above|beside|next to|over|by) it)?(?: (?!planned|wanted|going|needed)[a-z]+)? (?:in|on|at|under|below|beneath|behind|beside) (?:(?:the|an?|our|my|his|her|its) )(?:[a-z]+(?:'s)? ){{0,3}}?{_ROOM}\b(?! (?:tank|pump|of the hill))"),
    ("pump.placement", "out", 3, rf"\b(?:pump|centrifugal|booster|motor|engine)\b[^.;\n¤]{{0,45}}\b(?:stands|sits|is|mounted|standing|sitting|set)\b[^.;\n¤]{{0,20}}\d[^.;\n¤]{{0,8}} (?:above|over|higher than) (?:the |its |our |that )?(?:low(?:est)? |summer |autumn |lake |river |creek |open )*{_DRAWN}\b"),
    ("pump.placement", "out", 3, r"\b(?:pumps?|jet|centrifugal|booster)\b[^.;\n¤]{0,30}\b(?:on (?:the )?ground|on dry land|above ground|out of the (?:well|water|bore\w*)|outside the well)\b"),
    ("pump.placement", "out", 3, r"\bpump\b[^.;\n¤]{0,20}\b(?:beside|next to|alongside|by) (?:the (?:water|creek|stream|pond|lake|canal|river|pit|cistern|tank|dam|spring)|it)(?:, not in it\b|(?= (?:lifts|sends|pushes|draws|pumps|takes|sucks)\b))"),
    ("pump.placement", "out", 3, r"\b(?:centrifugal|jet|booster) (?:pump )?(?:up |down |out )?(?:on|by|beside|at|near) (?:an?|the) (?:[a-z]+ ){0,2}?(?:block|blocks|skid|canal|creek|river|bank|stream|pond|lake|pier|slab|plinth|stand|base|frame)\b"),
    ("pump.placement", "out", 3, r"\bshallow[ -]well jet\b|\bpump\b[^.;\n¤]{0,8}\bright on the (?:lid|cover|cap)\b|\bpumps (?:the same|alike|of a kind)?[, a-z]{0,20} in (?:a|the|our) (?:shed|hut|cellar|barn|pump ?house|basement)\b"),
    ("pump.placement", "out", 3, rf"\bpump,? \d[\d.,]* ?(?:m|ft|feet|foot|met(?:re|er)s?|cm) (?:above|over|higher than) (?:the |its )?(?:low(?:est)? |summer )*{_DRAWN}\b|\bpump (?:is |sits |stands )(?:indoors|inside the (?:house|cabin|cottage)|outdoors|on (?:an?|the) (?:plank|pallet|crate|boulder|rock|flat stone|sleeper|trestle|table|shelf))\b"),
    ("pump.placement", "out", 2.5, r"(?:^|[.;\n] ?)it (?:stands|sits|is) (?:about |some |only )?\d[\d.]* ?(?:m|ft|feet|met(?:re|er)s) (?:above|over) (?:the )?(?:low(?:est)? )?(?:water|level|surface)\b(?=[^.;\n]{0,60}\bsuction\b)"),
    ("pump.placement", "out", 3, r"\b(?:membrane|diaphragm|diafram|12 volt|24 volt|12v|24v) (?:[a-z]+ )?pump (?:right |rite |just )?(?:next to|beside|by|under|above|on top of) (?:it|the|a|our|my)\b"),
    # the source
    ("water.kind", "well", 3, r"\bbores?(?= (?:pump|depth|flow|yield|level|log|test|casing|water|is|was|gives|makes)\b|'s (?:fine|good|ok|about|\d)|, (?:flows|gives|makes|yields)\b)(?! (?:is|was) \d[\d.]* ?(?:mm|in\b|inch))|\b(?:same|new|our|my|the) bore(?= ?[.,;\n])|\bsource ?[-:=] ?(?:an? |the )?(?:bore|well)\b"),
    ("water.kind", "well", 3, r"\b(?:drilled|bored) holes?\b(?! (?:in|into|through) the)|(?:^|[.;\n] ?)hole of (?=\d)|\bperforat(?:ion|ed well)\b(?= (?:has|have|is|of|with))"),
    ("water.kind", "well", 3, r"\b(?:we|i|they)(?:'ve| have)? (?:have |got |use |draw from |drink from )+(?:the|a|our|an old) well\b|\b(?:the|a|our) well under (?:it|the (?:windmill|pump|mill))\b"),
    ("water.kind", "cistern", 3, r"\b(?:live|living|rely|relying|depend|depending|run|running|get by|survive)s? (?:only |just |entirely |all )*(?:on|off|from) (?:the )?rain(?:water)?\b|\ball rain(?= ?[.,;\n])|(?<=, )rain only\b|\bsky[- ]fed\b|\b(?:collect|catch|harvest|gather)s? (?:all |only )?(?:the |our )?rain(?:water)?\b"),
    ("water.kind", "cistern", 2.5, r"\b(?:tank|cistern|tote|butt|barrel)\b[^.;\n]{0,25}\b(?:filled|fed|topped up) (?:off|from|by) (?:the|our|a) (?:\w+ )?roof\b"),
    ("water.kind", "spring", 3, r"\b(?:by|from|of) a (?:small |little |good )?spring of(?= \d)|\bgravity spring\b|\bcall it a spring\b|\bspring pond\b"),
    # what drives the pump
    ("power.source", "sun", 3, rf"\b(?:{NUMBER} |an? |one |single )(?:solar )?panels? of (?=\d+ ?(?:w|watts?)\b)|\b(?:{NUMBER} |one |a )?strings? of \d+ ?-?(?:w|watts?) (?:mods?|modules|panels)\b|\bpanels? \d (?:in (?:parallel|series)|of \d+ ?w)"),
    ("power.source", "sun", 3, r"\b(?:one|single|a single|a lone|two|three|four|five|six|eight) (?:\d+ ?-?(?:w|watts?) )?(?:solar )?panels?\b(?= ?[,.;:]| \d+ ?w| lying| flat| facing| on | in (?:series|parallel)| and )(?! (?:fence|door|wall|radiator))"),
    ("power.source", "sun", 3, r"\bit is the sun (?:that|which) (?:drives|runs|powers|works|does)\b|\b(?:pump|lift|run|do|work|go) (?:it |the water |this )?with (?:the )?sun\b"),
    ("power.source", "sun", 3, r"\b(?:got|has|have|had|needs) to be (?:the )?(?:sun|solar)\b"),
    ("power.source", "grid", 3, r"\bplugged in(?:to the (?:wall|mains|house))?(?= ?[.,;\n])|\b(?:pump|it) (?:is |just |simply )?plugs? in(?:to)?\b|\belectricity (?:comes|is (?:on|given|supplied)) (?:only |just )?(?:for )?\w+ hours\b|\b(?:grid|mains|utility) panel\b|\bmains (?:leccy|juice|elec)\b"),
    ("power.source", "none", 3, r"\bnothing electric(?:al)?\b|\bno electrics?\b(?! (?:fence|bill|shower|heater|pump))"),
    # how it is guarded and works
    ("pump.dry_run", "yes", 3, r"\b(?:dry[ -]?run(?:ning)?|low[ -]water|run[ -]dry)(?: (?:pump|level))? (?:cut ?-?outs?|shut ?-?offs?|cut ?-?offs?|switch|float|relay|trip|stop|electrodes?|detector|device)\b|\bprotect(?:ion|ed) against (?:dry[ -]running|running dry)\b"),
    ("pump.guard", "switch", 5, r"\b(?:pressure switch|bypass),? (?:but |and |yet )?(?:no|without an?) relief\b"),
    ("pump.works", "diaphragm", 3, r"\bpositive displacement\b|\bdisplacement pump\b|\bdiaphragm they call it\b|\b(?:membrane|flojet-type) pump\b"),
    ("pump.control", "speed", 3, r"\bspeed (?:regulation|regulator|governor|things?|drives?)\b|\b(?:held|kept|holds?|keeps?)\b[^.;\n]{0,25}\bby an? (?:\w+ )?(?:drive|inverter|converter)\b"),
    ("pump.control", "switch", 2, r"\bpump (?:is |keeps |goes on )?switching on(?:[ -](?:and[ -])?off)\b"),
    ("pump.relief", "yes", 3, r"\brelief valve,? (?:yes|fitted|is fitted|present)\b|\bpumps?\b[^.;\n]{0,60}\b(?:each )?with (?:its|an?|their) own (?:pressure )?relief valves?\b"),
    ("power.battery", "flooded", 3, r"(?<=ah, )flooded\b"),
    # what fills the tank
    ("store.fills", "always", 3, r"\b(?:filled|fed|refilled|topped up) (?:day and night|round the clock|continuously|constantly|all the time) (?:by|from)\b|\bspring[- ]fed,? (?:day and night|round the clock|all the time|constantly)\b|\b(?:trickles?|runs|drips|flows|comes|spills|gives)\b(?:[^.;\n]|\.\d){0,25}\b(?:day and night|round the clock|continuously|constantly) (?:in|into|to) (?:an?|the|our|my) [^.;\n]{0,20}\b(?:tank|cistern|reservoir|butt|tote|ibc)\b"),
    # pipes
    ("pipes.held", "buried", 3, r"\b(?:already |all |is |now )in (?:the )?trench\b|\bdug down\b(?= (?:below|under|to|deep))|\b(?:line|pipe|poly)(?:'s| is| are) \d[\d.]* ?(?:'|ft|feet|\"|cm|m) down\b"),
    ("pipes.held", "buried", 3, r"\b(?:pipe|line|poly|mdpe|hdpe|pe|pvc|hose)\b(?: (?!burst|froze|frozen|leaks?|leaking|broke)[a-z\d]+){0,3} under (?:a|the|our) (?:field|meadow|lawn|garden|yard|pasture|drive(?:way)?|track|road|turf|paddock)\b"),
)  # fmt: skip

# (path, kinds, words before, words after, words of the letter), as ``enquiry_direct`` says
ROWS: tuple[tuple[str, tuple[str, ...], str, str, str], ...] = (
    ("pump.npsh", ("length",), rf"\bnpsh\s?r?\b(?: (?:required|needed|by (?:the )?(?:table|sheet|curve|plate)|per (?:the )?(?:table|sheet|curve)|value|figure))*{_F}", "", ""),
    ("pump.diameter", ("length",), rf"\b(?:pump|motor|submersible|sub) (?:od|o\.d\.|diameter|dia\.?|outside diameter){_F}", "", ""),
    ("pump.diameter", ("length",), rf"\b(?:pump|submersible|sub)(?: itself)? (?:is|measures){_F}", r" ?(?:across|wide|diameter|in diameter|thick|dia\b)", ""),
    ("pump.diameter", ("length",), rf"\b(?:pump|submersible|sub)\b[^.;\n\d]{{0,12}}\d ?(?:m|ft|feet|'),{_F}", r" ?(?:diameter|across|dia\b)", ""),
    ("pump.diameter", ("length",), r"(?:^|[.;,\n] ?|\b(?:is|has|have|with) )(?:it is )?an? $", r"[ -]?(?:helical |solar |submersible |slim )*pump\b(?! (?:inlet|outlet|house))", _BORES),
    ("pump.dry_lift", ("length",), rf"\bdry (?:suction )?lift{_F}", "", ""),
    ("pump.motor", ("percent",), rf"\b(?:eta|efficiency|eff\.?)(?: of)?(?: the)? motor{_F}|\bmotor (?:eta|efficiency|eff\.?){_F}", "", ""),
    ("pump.controller", ("percent",), rf"\b(?:controller|inverter|drive) (?:eta|efficiency|eff\.?){_F}|%, ?(?:controller|inverter|drive){_F}", "", ""),
    ("pipes.hottest", ("temperature", "angle"), rf"\b(?:pipe|line|poly|hose)\b[^.;\n\d]{{0,16}}\b(?:heats?|warms?|gets|goes|reaches)(?: up)? (?:to|up to){_F}", "", ""),
    ("pipes.hottest", ("temperature", "angle"), rf"\b(?:pipe|line|poly|hose|pe)\b[^.;]{{0,40}}\b(?:on top of|on|over|along) the (?:ground|surface|rock|grass)[^.;\d]{{0,12}}\b(?:gets|goes|heats|reaches|warms)(?: up)? to{_F}", "", ""),
    ("pipes.weakest", ("pressure",), rf"\b(?:lowest|weakest|poorest)[ -]?(?:rated)? (?:fitting|piece|part|pipe|joint|coupling|thing|component)\b[^.;\n\d]{{0,35}}{_F}", "", ""),
    ("power.cable", ("length",), rf"\bcable{_F}", r" ?(?:$|[,.;)\n])", r"\bpanels?\b|\bsolar\b"),
    ("power.cable", ("length",), "", r" ?(?:away )?(?:by|of|in) (?:\d[\d.]* ?mm2? )?cable\b(?! (?:lying|left|spare|in the (?:shed|barn)))", ""),
    ("power.tilt", ("angle",), rf"\b(?:leaning|leaned|leant|propped|sloped|sloping|pitched)(?: up| back)?(?: at| to)?{_F}", "", r"\bpanels?\b|\bsolar\b|\bsun\b"),
    ("water.temperature", ("temperature", "angle"), rf"\b(?:water|what comes out|it comes out|incoming)\b(?: (?:that|in summer|in winter|in august))?(?: (?:is|has|comes|gets|comes out|arrives|comes up|at|out))*{_F}", r"(?! ?(?:n\b|s\b|north|south|tilt|panels?))", r"\A(?![\s\S]*\bdrip)[\s\S]*"),
    ("store.reserve", ("volume",), r"\b(?:keep|kept|hold|held|leave|left|reserve)s?\b[^.;\n\d]{0,20}$", r" ?(?:always |back |aside |there |in (?:it|the tank) |of it |of water )*(?:for|in case of) (?:the |a )?fires?\b", ""),
    ("store.reserve", ("volume",), "", r" ?(?:of it |always |be )*(?:kept|held|set) (?:back|aside)\b", r"\bfire\b"),
    ("store.depth", ("length",), "", r" ?(?:of water|deep|of depth|high)? ?(?:when|if) (?:it is |it's |they are )?(?:brim |quite |completely )?full\b", r"\b(?:tank|cistern|reservoir|tote|butt)\b"),
    ("store.floor", ("area",), rf"\b(?:floor|base|bottom)(?: area| surface)?{_F}", "", r"\b(?:tank|cistern|reservoir)\b"),
    ("pump.set", ("pressure",), rf"\bset pressure\b[^.;\n\d]{{0,30}}{_F}|\bpressure (?:in|at|of) (?:the )?pump{_F}", "", r"\A(?![\s\S]*\boffer)[\s\S]*"),
    ("power.voltage", ("voltage",), r"\b(?:single|one|three|1|3)[- ]phase[ ,]*$", "", r"\bpump\b"),
    ("pressure_tank.volume", ("volume",), rf"\bpt{_F}", "", r"\bswitch|\bpsi\b|\bbar\b"),
    ("pressure_tank.volume", ("volume",), r"\btank\b[^.;\n\d]{0,12}$", r",? (?:it is |it's |which is )?(?:water ?-?logged|saturated)\b", ""),
    ("store.days", ("time",), rf"\b(?:storage|store|stored|safe|safety|reserve|cistern|tank) (?:shall be |must be |should be |is |be )?for{_F}", r" ?(?:$|[.,;)\n])", ""),
)  # fmt: skip

_ON = r"(?:[^.;]|\.(?=\d))*$"
_LETS = r"(?:lent|loaned|borrowed|hired|rented)"
# (paths, words of the sentence before, words after[, path instead[, "-" below]]), as ``enquiry_doubts``
DOUBTS: tuple[tuple[str, ...], ...] = (
    # where the pump is
    ("pump.placement", "", r" (?:man|guy|chap|fellow|people|dealer)\b"),
    # the source
    ("water.kind=stream", r"\b(?:fill|filling|fills|into|to|want|build|dig|make|plan) (?:an? |the |our |my )?(?:[a-z]+ )?$", r" ?(?:of \d|\d|for\b|with (?:a|an) (?:sheet|liner|foil|membrane))"),
    ("water.kind=stream", "", r" (?:with|lined with) (?:an? |the )?(?:sheet|liner|foil|membrane|rubber|plastic)\b"),
    ("water.kind=stream", "", r" (?:pump|tank)(?: [a-z]+)?(?:,| is| was)? (?:gone|sold|dead|broken|of \d)|,? not (?:ours|mine)\b| tank\b"),
    ("water.kind=stream", r"\b(?:made|dug|cut|built) (?:an?|the|this) $", r" in \w+ and\b| in ¤| ¤"),
    ("water.kind", "", r",? (?:but|and|though|which|yet) (?:we|i|nobody|no one)(?: [a-z]+)? (?:don'?t|do not|never|can'?t|cannot|won'?t|may not|drinks?) (?:drink|use|draw|take|pump|touch|want)?\b"),
    ("water.kind=stream", r"\b(?:thin|steady|good|strong|weak|small|fine|constant) $", r" (?:of (?:water|it)|from|out of) (?:the |a |our |my )?(?:spout|tap|faucet|hose|nozzle|shower|pipe|end)\b"),
    ("water.kind=stream", "", r" of (?:people|visitors|guests|cars|air|bubbles|letters|complaints)\b"),
    ("water.kind=stream", "", r" (?:of water )?(?:from|out of|at) (?:the |a |our |my )?(?:spout|tap|faucet|hose|nozzle|shower)\b"),
    ("water.kind", r"\bshallow[- ]well$", r" (?:jet|pump)"),
    ("water.kind", "", r" ?\d[\d.]* ?(?:mm|in|inch|\") (?:drip|lateral|tape|hose|tub)"),
    ("water.kind", "", r" (?:is|as)(?: only| just)? (?:an? |the |our )?(?:back-?up|reserve|spare|emergency)\b"),
    ("water.kind", "", r",? (?:but |which |and )?(?:it )?(?:is|has gone|has run)(?: now| bone| completely)? dry\b(?! (?:in|by|every|for|from|most|when|each))"),
    # what drives it
    ("power.source", "", r"[^.;,¤]{0,24}\b(?:is |are )?(?:only )?for (?:the |our )?(?:house|lights|lighting|hot water|heating|radio|fridge|fence)\b"),
    ("power.panel", "", r" ?(?:(?:jet|surface|submersible|well|booster|water|centrifugal|electric|bore|sub) )?(?:pump|motor|heater|kettle|inverter)\b(?! ?(?:shed|house|hut))|/m\b|/ft\b| per (?:m|ft|met|foot)"),
    ("power.voltage", r"\bpanels? $", ""),
    ("power.source", r"\b(?:someone|somebody|some|others?|wife|husband|son|daughter|brother|neighbou?r|he|she|they)(?: else| here)? (?:wants?|would like|suggest\w*|propos\w+|prefers?|talks? (?:of|about)|dreams? of|recommend\w*|lik[e]s|thinks? (?:of|about))(?: to (?:go|have|use|try)| us to (?:go|try|use)| going| an?| the)* $", ""),
    ("power.battery|power.capacity", "", r",? (?:batter\w+ )?(?:(?:but|which|that|and|no)[, ]+)*(?:we |i |i've |we've |have |are |were |all |now |already |since )*(?:sold|scrapped|dead|gone|worn out|finished|given away|thrown out)\b|,? (?:which|that) (?:i|we)(?:'ve| have)? (?:already |since |now |all )?¤"),
    # numbers of another thing
    (r"pump\.\w+|pressure_tank\.\w+|store\.volume|tank\.volume", r"\bold (?:one |tank |pump |vessel )?(?:was|had|held|used to be) (?:an? |about )?$", ""),
    (r"pump\.\w+", rf"\bpump\b[^.;]*\b{_LETS}\b[^.;]*$|\b(?:{_LETS}|spare) pump\b[^.;]*$", ""),
    ("pump.most_flow", r"\b(?:drip ?-?lines?|drippers?|emitters?|tapes?)\b[^.;]*$", "", "drip.dripper"),
    (r"pump\.height|water\.level|way\.climb|tank\.level|way\.length", r"\d ?(?:m[3³]/h|gpm|l/min|lpm|l/h|l/s|gph|lph) (?:at|@) $", ""),
    ("pump.height", r"\bwhen (?:the )?pump (?:works|runs|is running|is working|pumps)\b[^.;\d]{0,25}$", "", "water.level", "-"),
    ("pump.cut_in|pump.cut_out", r"\b(?:one|two|three|four) $", r" (?:on|feet|ft|m\b|down|deep)"),
    ("pressure_tank.volume", "", r" ?(?:hot[ -]?water |copper |unvented |electric |storage )*(?:cylinder|geyser|boiler|heater|storage unit|calorifier)\b"),
    ("pressure_tank.volume", r"\b(?:hot[ -]water|cylinder|geyser|boiler|heater|calorifier)(?: tank)?(?:'s| is| holds| of) (?:an? |about )?$", ""),
    (r"pressure_tank\.\w+", r"\b(?:would|could|should|do i need|do we need|is|will) (?:one of (?:those|these)|such an?|a (?:little|bigger|larger|small|second|new)|another)\b[^.;]*$", ""),
    ("store.volume", r"\bswitch\b[^.;]*\btank\b[^.;]*\bpump (?:is|holds|of) (?:about )?$", "", "pressure_tank.volume"),
    ("store.volume", r"\b(?:little|small|blue|grey|wee|tiny) tank (?:by|next to|beside|at|on|above) the pump\b[^.;\d]{0,12}$", "", "pressure_tank.volume"),
    ("pump.works", "", r" (?:pressure )?(?:tank|vessel|valve|seal|accumulator|expansion)\b"),
    ("store.days", r"\b(?:had|have had|seen|been|got|is|was) (?:almost |nearly )?no rain (?:for|in|since) (?:about |some |nearly )?$", ""),
    (r"(?!water\.kind)[a-z_.]+", r"\b(?:scratch|forget|ignore|disregard|never ?mind) (?:what (?:i|we) (?:said|wrote|told you) (?:about|of)|(?:all )?that about|the bit about) (?:the |an? |that )?$", ""),
    (r"store\.\w+|tank\.\w+", "", r"[^.;\n\d]{0,25}\b(?:but )?that(?:'s| is) (?:the )?[a-z]+'s\b"),
    (r"pump\.\w+|power\.\w+|water\.kind", r"^\W*[a-z]+ (?:across|down|over|up) the (?:bay|road|valley|street|way|lane|hill|river|creek|lake) (?:has|uses|runs|got|put)\b[^.;]*$", ""),
    (r"power\.\w+", r"\b(?:my|our|his|her) (?:brother|sister|neighbou?r|cousin|friend|uncle|aunt|son|daughter|dad|father|mother|parents)s?'s? [a-z]+ (?:has|is|runs|uses|got|works|had)\b[^.;]*$", ""),
    (r"(?:pump|power|pressure_tank)\.\w+", rf"\b(?:one|pump|model|thing) in (?:your|the|their) (?:list|catalogue?|shop|store|brochure|flyer|leaflet)\b{_ON}", ""),
    (r"[a-z_.]+", rf"\bthe last (?:job|one|place|house|installation|system) (?:that )?(?:i|we) (?:did|had|built|owned|put in)\b{_ON}", ""),
    ("water.kind=stream", r"\bthat(?:'s| is) (?:the )?[a-z]+'s $", ""),
    (r"power\.capacity|(?:tank|store|pressure_tank)\.volume", r"\b(?:need|needs|want|wants|get|buy)\b[^.;]{0,12}\ban? (?:bigger|larger|second|new|stronger) (?:\w+ )?(?:battery|bank|tank|cistern|vessel) of $", ""),
    (r"(?:tank|store|pressure_tank)\.volume", r"\beach (?:tree|plant|vine|bush|cow|goat|person|one|bed)(?: \w+)? (?:wants?|needs?|gets?|takes?|drinks?|uses?|requires?)(?: about| only| some)* $", ""),
    (r"(?:pump|power|pressure_tank|store|tank)\.\w+", "", r"\W{1,4}(?:no,? (?:sorry|wait|hang on)|scratch that|correction)\b(?! (?:for|about))"),
    ("pipes.held=buried", r"\b(?:tanks?|cisterns?|reservoirs?|totes?|butts?|barrels?|vessel|chamber|septic)\b(?:(?!\b(?:pipes?|lines?|poly\w*|pvc|pex|pe|hose|it|mdpe|hdpe|main|copper|tub(?:e|ing)|alkathene|\d+ ?mm)\b)[^.;])*$", r"(?![^.;,]{0,14}\b(?:pipe|line|poly\w*|pvc|hose|pex|mdpe|hdpe|pe|main|tube)\b)"),
    ("pipes.held", r"\b(?:half|part|some|most|a third|two thirds) of (?:it|the (?:line|pipe))(?: is| was)? $", ""),
)  # fmt: skip

_HANGS = r"(?:'s| is| will| to be| was| it)?(?: (?:now|just|be|set|hung|hangs?|hanging|down|sits|sitting|dangl\w+|goes|going|in))*"
_AT = re.compile(
    rf"\bpump(?:{_HANGS} (?:at|on|down) |(?: set| hung| goes| down)? to (?=[\d.,]+ ?(?:m|ft|feet|met(?:re|er)s?)\b)| (?=\d+(?: ?(?:m|ft|feet|'))?(?: ?[,.;\n]|$)))(?P<n>{NUMBER})(?![.,]?\d)(?: ?(?P<u>m|ft|feet|foot|met(?:re|er)s?|mtrs?|'))?+(?![\w'/°%\"³²])(?! ?(?:above|higher|over|from|away|off|up|long|psi|bar|kpa|pounds|gpm|gph|l\b|l/|lpm|lph|lit|m[3]|v\b|volt|w\b|watt|hp|horse|amp|am\b|pm\b|in\b|inch|mm|cm|hours?|hrs?|h\b|times|years?|days?|min|sec|kw|phase|gal|acre|x\b|by\b|of\b|downhill|uphill|o'?clock))"
)
_TOWARDS = re.compile(
    r"\b(?:from|to|by|of|off|past|than|with|we|they|i|and|you) (?:the |our |my )?$"
)
_DRY = re.compile(
    r"\b(?:jet|surface|booster|suction|sucks?|self[ -]?priming|foot[ -]?valve|hand pump|cistern|pressure pump)\b"
)
_WELLS = re.compile(_BORES)


def hung(low: str) -> tuple[int, int] | None:
    """Where a pump is told to hang at a depth in a letter of a well: "well 165 deep, pump at 145"."""
    if _DRY.search(low) or not _WELLS.search(low):
        return None
    for match in _AT.finditer(low):
        if not _TOWARDS.search(low[max(0, match.start() - 12) : match.start()]):
            return match.span()
    return None


_PANEL = re.compile(
    r"\b(?:grid|breaker|service|electric(?:al)?|main|meter|fuse|distribution|sub|load|power|house)[ -]?panel\b"
)


def elsewhere(low: str, path: str, said: str, end: int) -> bool:
    """Whether words are of another thing than they seem: a panel of fuses, a jet pump that is called
    after shallow wells, the bore of a drip line, half of a pipe, a pump house that is only named."""
    after = low[end:]
    if path == "power.source":
        of_fuses = re.match(r"(?:off|from|on) [a-z ]*\bpanel$", said) and _PANEL.search(low)
        return bool(of_fuses) and "solar" not in low
    if path == "water.kind":
        jet = "shallow" in said and re.match(r" (?:jet|pump)", after)
        drip = said.endswith("bore") and re.match(r" ?(?:of )?\d[\d.]* ?mm", after)
        return bool(jet or (drip and re.search(r"\bdrip|\bemitter", low)))
    if path == "pipes.held":
        return bool(re.search(r"\b(?:half|part|some|most) of (?:it|the)\b", said))
    if path != "pump.placement":
        return False
    return bool(re.search(r", (?:we|i|they|there|you) ", said)) or not _housed(low, said, end)


def _housed(low: str, said: str, end: int) -> bool:
    """Whether a pump house that is only named tells where the pump is: it hangs in a well, where
    there is one, and the house may be burnt, or a man's."""
    if not re.fullmatch(r"pump ?-?(?:house|shed|hut)", said):
        return True
    if re.match(
        r" (?:man|guy|chap|fellow|people|roof|door|wall|floor|burn)|, the pump\b", low[end:]
    ):
        return False
    return bool(_DRY.search(low)) or not _WELLS.search(low)


NO_PUMP = re.compile(
    r"\bno pumps?(?=[!?]+|,? (?:no|dont|don't|exists?|between|from|on this|wanted)\b)|\b(?:have|has) not (?:an? |any )?pump\b"
    r"|\bthere (?:has |had |was |is )?(?:never|no|not)(?: been| was)? (?:an? |any )?pump\b(?! ?-?(?:house|room|shed|test))"
    r"|\bwithout (?:a |any )?motor of any\b|\bnothing but its own (?:weight|fall|pressure)\b|\b(?:water|it) (?:comes|runs|flows|falls|goes)(?: \w+){0,4} (?:on its own|by itself)(?= ?[.,;)\n])"
)  # as those of ``enquiry_words``
_PARALLEL = re.compile(r"[^.;\n]{0,30}\bin parallel\b")
_TIMES = re.compile(rf"(?<![\w¤-])(?P<n>{NUMBER})(?: ?x)?(?: batteries of)? $")
_MANY = 12  # batteries side by side; our choice


def put_right(low: str, pieces: list[Piece]) -> list[Piece]:
    """Batteries side by side as one; no mains, where there is a generator; the tank of a letter
    without a pump stands above."""
    named = {(one.path, one.word) for one in pieces if one.path == "power.source"}
    driven = named & {("power.source", "generator"), ("power.source", "sun")}
    falls = any(one.path == "way.climb" and one.low < 0 and not one.word for one in pieces)
    levels = any(one.path == "tank.level" for one in pieces)
    unpumped = any(one.path == "pump.present" and one.word == "no" for one in pieces)
    found = []
    for one in pieces:
        said = low[one.start : one.end]
        if one.path == "power.source" and one.word == "none" and driven and _MAINS.search(said):
            continue
        if one.path == "power.capacity" and _PARALLEL.match(low, one.end):
            times = _TIMES.search(low, max(0, one.start - 20), one.start)
            number = value(times["n"])[0] if times else 1.0
            if 1 < number <= _MANY:
                one = replace(one, low=one.low * number, high=one.high * number)
        sure = _NAMED.get(one.path) if one.others else None
        if sure and sure.search(low[max(0, one.start - 30) : one.end + 14]):
            one = replace(one, others=())  # noqa: PLW2901
        if one.path in _TANKS and one.others:
            one = _which(low, one, pieces)
        if one.path in _TANKS and unpumped and (levels or (falls and one.others)):
            one = replace(one, path="tank.volume", others=())
        found.append(one)
    return found


_RISES = re.compile(
    r"\b(?:climb(?:s|ing)?|lift(?:s|ed|ing)?|rises?|delivery|push(?:es|ed)?|up)\b[^.;]{0,40}\b(?:in)?to (?:an?|the|our|my|its)? ?(?:[a-z]+ ){0,3}(?:of )?$"
)
_ON_LEGS = re.compile(
    r"[^.;]{0,22}\b(?:stands?|sits?|is|set|standing|sitting)\b[^.;]{0,14}\b(?:on|up on) (?:an?|the|its) (?:\w+ )?(?:frame|stand|tower|roof|blocks|stilts|legs|hill|platform|deck|scaffold|terrace)\b"
)


def _which(low: str, one: Piece, pieces: list[Piece]) -> Piece:
    """A tank that may be one above or one drawn from: by what the water does, and by its roof."""
    begin = max(low.rfind(sign, 0, one.start) for sign in ";?!\n") + 1
    begin = max(begin, low.rfind(". ", 0, one.start) + 1)
    if _RISES.search(low, begin, one.start) or _ON_LEGS.match(low, one.end):
        return replace(one, path="tank.volume", others=())
    paths = {each.path for each in pieces}
    rain = ("rain.roof" in paths or _HAULED.search(low)) and "tank.level" not in paths
    return replace(one, path="store.volume", others=()) if rain else one


_HAULED = re.compile(
    r"\bwe haul\b|\bhaul(?:ed|ing)? (?:our |the |all )*water\b|\bwater is (?:hauled|trucked|delivered)\b|\bwater (?:truck|delivery)\b"
)
_NAMED = {  # words beside a number that leave nothing open
    "pump.npsh": re.compile(r"\bnpsh"),
    "pump.dry_lift": re.compile(r"\bdry (?:suction )?lift\b"),
    "pump.diameter": re.compile(r"\b(?:pump|motor) (?:od|diameter|dia)\b"),
    "pressure_tank.precharge": re.compile(r"\b(?:vessel|tank)'?s air\b|\bpre-?charge"),
}
_MAINS = re.compile(r"\b(?:mains|grid)\b")
_TANKS = {"store.volume", "tank.volume"}
_UNIT_SAID = re.compile(
    r",? (?:no,? )*(?:sorry|i mean|er|rather|wait|oops)[, ]+(?:i mean,? |that's |it's |in )?(?=[a-z])"
)


def renamed(low: str, numbers: list[Token]) -> None:
    """ "5,000 gal, no sorry litres": another unit than the one first said."""
    for token in numbers:
        said = _UNIT_SAID.match(low, token.end) if token.kind != "bare" else None
        unit = unit_after(low, said.end()) if said else None
        if said and unit is not None and unit[0] == token.kind and unit[1] != token.unit:
            token.unit, token.end = unit[1], unit[2]
