"""Rows for ``enquiry_direct``, and words, in the orders that people write who think in another tongue.

"Pump in well, level 22 m", "filter I have", "pipe till the house 480 m", "at the end of the dry
season at 13.5": the noun stands before its number, behind it, or in the clause before. A row is as
``enquiry_direct`` says.
"""

from __future__ import annotations

_F = r"[ ,:=~(+-]*+(?>(?:is|are|was|be|of|at|a|an|the|about|around|roughly|some|only|just|approx\.?|ca\.?|nearly|almost|up to|maybe|perhaps|say|it is|it's|by|over|exactly)(?![a-z])[ ,:=~(-]*+)*+$"
_ENDS = r" ?(?:$|[,.;)\n]|and\b|or so\b)"
_UNIT = r"(?:m|ft|feet|met(?:re|er)s?|yards?|')"
_WELL = r"\b(?:wells?|bore ?holes?|bore)\b"
_SOURCE = r"(?:wells?|bore ?holes?|bore|springs?|stream|creek|river|source|pond|lake|dam|intake)"
_STAND = r"(?:stand|tower|platform|roof|hill|ridge|stilts|pillars?|scaffold|loft|attic|slab|knoll)"
_DRIP = r"\bdrip|\bemitters?\b"
_DRY = r"(?:(?:in|at|by|during|towards?) )?(?:the )?(?:very )?(?:(?:end|height|middle) of )?(?:the )?(?:late |dry |hot )*(?:summer|autumn|dry (?:season|time|months?)|august|september|october|drought)"
_GOAL = r"(?:house|cabin|home|cottage|hut|kitchen|farm|barn|lodge|school|garden|stable|troughs?|drinkers?|clinic|field|trailer|chalet|camp)"
_WENT = r"(?:used|drawn|gone|taken|needed|consumed|drunk)"
_SPAN = r"(?:the )?(?:first |last )?(?:(?:an?|one|two|half an?|\d+|ten|fifteen|twenty|thirty|forty|sixty|ninety) ?)(?:min\w*|hours?|hrs?|h\b)"

ORDER: tuple[tuple[str, tuple[str, ...], str, str, str], ...] = (
    # wells
    ("water.level", ("length",), rf"(?:^|[.;:,\n] ?|\bwith (?:the )?)(?:the |its )?(?:water )?level(?: is| stands)?{_F}", r" ?(?:$|[,.;)\n]|and\b|in (?:the )?(?:dry|summer|august))", rf"\A(?![\s\S]*\b(?:pumping|dynamic|static) )[\s\S]*{_WELL}"),
    ("water.level", ("length", "bare"), rf"\b(?:water|level)\b[^;\n]{{0,60}}(?:,|\band|\bbut|\() ?{_DRY}(?: (?:only|falls to|it falls to|it is|drops to|goes to|it goes to))*{_F}", rf"{_ENDS}|down\b|deep\b", _WELL),
    ("water.level", ("length",), rf"\b(?:water|level)\b[^;\n]{{0,60}}(?:,|\band|\bbut) ?{_F}", rf" ?{_DRY}\b(?! (?:we|i|they|it))", _WELL),
    ("water.level", ("length",), rf"\b(?:has|with) (?:its|the|a) (?:water )?level{_F}", rf"{_ENDS}", _WELL),
    ("water.level", ("length",), rf"\b(?:water|level)\b[^;\n]{{0,60}}(?:,|\band|\bbut|[;.]) ?(?:in|during|after) (?:the )?(?:rains?|wet season|rainy season|winter|spring|wet)(?: (?:it is|it's|it stands|at|only|about))*{_F}", rf"{_ENDS}|down\b|deep\b", _WELL),
    ("well.static", ("length",), rf"\bwater(?: level)?(?: is| stands| sits)?{_F}", r" ?(?:when|while|if) (?:it|the (?:pump|well|bore\w*)) (?:rests|is at rest|is resting|is off|stands still|is not running|does not run)\b", _WELL),
    ("well.bore", ("length",), rf"(?:{_WELL}|\bhole\b)[^;\n]{{0,70}}\b(?:dia(?:m(?:eter)?)?|width)[ .:]*(?:of |is )*{_F}", "", ""),
    ("well.bore", ("length",), rf"{_WELL}[^.;\n]{{0,30}}\b(?:deep|depth),{_F}", r" ?(?:$|[,.;)\n]|(?:bore|casing|wide|across|in diameter|diameter|dia)\b)", ""),
    ("well.depth", ("length",), rf"{_WELL}[ ,:]*\d[\d.]* ?(?:in(?:ch(?:es)?)?|mm|cm|\"|'')[ -]*(?:dia\w*\.?|bore|wide|across|casing|cased)?[ ,]+{_F}", r" ?(?:$|[,.;)\n]|deep\b)", ""),
    ("well.depth", ("length",), rf"\bwells? (?:was|is|has been) (?:drilled|dug|bored|sunk)\b[^\n]{{0,60}}, ?{_F}", r" ?(?:deep|in depth|of depth)\b", ""),
    ("well.depth", ("length", "bare"), rf"{_WELL}[^.;\n]{{0,50}}[,;] ?(?:the |its |in )?(?:total|bottom|whole|altogether|in all)(?: depth)?{_F}", _ENDS, ""),
    ("well.depth", ("bare",), rf"\b(?:pump|submersible|sub)\b[^.;\n]{{0,40}}\d ?{_UNIT}?,? ?(?:in (?:the |a )?)?(?:the |our )?(?:well|bore ?hole|bore|hole){_F}", _ENDS, ""),
    ("well.tested", ("flow",), r"\b(?:pwl|dwl)\b[^;\n]{0,20}(?:@|\bat) ?$", "", ""),
    ("well.tested", ("flow",), rf"\b(?:falls?|drops?|sinks?|goes|draws|settles|stands|comes)\b[^.;\n]{{0,30}}\b(?:when|while|as|if|once) (?:they|we|i|he|you|it|the driller)(?: \w+)? (?:pumps?|pumped|draws?|takes?)(?: out)?{_F}", "", rf"{_WELL}|\bstatic\b"),
    ("well.tested", ("flow",), rf"\bpumped(?: at| with)?{_F}", r"(?=[^.\n]{0,25}\b(?:level|water) (?:went|goes|fell|sank|came|dropped|drew)\b)", rf"{_WELL}"),
    # tanks
    ("tank.level", ("length",), rf"\b(?:tank|reservoir|tote|storage)\b(?:(?!\bpump)[^.;\n]){{0,60}}\bon{_F}", rf" ?(?:high |tall )?{_STAND}\b", ""),
    ("tank.level", ("length",), rf"\b(?:tank|reservoir|tote|storage|cistern)\b(?:(?!\bpump)[^.;\n]){{0,60}}\b(?:on|in) (?:an?|the|its|our) (?:[a-z]+ )?{_STAND},?{_F}", r" ?(?:above|over|off|high|up|tall)\b", ""),
    ("tank.level", ("length",), rf"\b(?:tank|reservoir|tote)\b(?:(?!\bpump)[^.;\n]){{0,40}}\bon (?:an?|the|its) (?:[a-z]+ )?{_STAND} (?:of|with){_F}", rf"{_ENDS}|height\b|high\b", ""),
    ("tank.level", ("length",), rf"(?:^|[.;\n] ?)(?:the |our )?(?:\w+ )?tank\b(?:(?!\bpump)[^.;\n]){{0,80}}, ?{_F}", rf" ?(?:above|higher than|over) (?:the|our|my) {_GOAL}\b", ""),
    ("store.volume", ("volume",), rf"\b(?:farm pond|pond|lagoon|earth basin|lined basin)(?: is| of| holds| has| with)*{_F}", "", r"\bpump"),
    ("use.daily", ("daily",), rf"\b(?:they|we|it all|all|everyone|everything|animals|cows|stock)(?: all)? (?:drinks?|uses?|takes?|needs?|gets? through|wants?){_F}", r" ?(?:all told|in all|altogether|in total|all together|together)\b", ""),
    ("way.climb", ("length",), "", r" ?(?:up|higher) from (?:the |our )?(?:water|creek|stream|river|well|spring|pump|pond|source) (?:up )?to (?:the|our|my) (?!tank|reservoir)", ""),
    ("tank.level", ("length",), rf"\btank\b(?:(?!\bpump)[^.;\n]){{0,60}}\b(?:its|the) (?:water(?: level| surface)?|outlet|bottom|base|floor|foot)(?: is| stands| sits| lies)?{_F}", rf" ?(?:above|higher than|over) (?:the |our |my )?{_GOAL}\b", ""),
    ("tank.volume", ("volume",), rf"(?:^|[.;,\n] ?)(?:the |our |a )?(?:water )?(?:storage|store)(?: is| holds| volume| capacity)*{_F}", rf",? ?(?:up )?(?:on (?:an?|the|our) (?:\w+ )?{_STAND}|at the top|up the hill)\b", ""),
    ("store.volume", ("volume",), rf"(?:^|[.;,\n] ?)(?:the |our |a )?(?:water )?(?:storage|store)(?: is| holds| volume| capacity)*{_F}", rf" ?(?:at|by|beside|near|next to) (?:the|our) (?:\w+ )?(?:{_SOURCE}|pump)\b", ""),
    # the way
    ("way.length", ("length",), rf"\b(?:pipe|line|hose|distance|way)(?: up| down)? to (?:the |our |my )?{_GOAL}{_F}", r" ?(?:$|[,;.)\n])", ""),
    ("way.length", ("length",), rf"(?:^|[.;\n] ?)(?:up |over |out )?to (?:the |our |my )?(?:\w+ )?{_GOAL}{_F}", r" ?(?:$|[,;.)\n]|and (?:another |more )?\d)", ""),
    ("way.length", ("length",), rf"\bfrom (?:the |our )?{_SOURCE} to (?:the |our )?[a-z]+(?: \([^)]{{3,25}}\)|,)?{_F}", r" ?(?:$|[,;.)\n])", ""),
    ("way.length", ("length",), rf"(?:^|[.;,\n] ?)(?:the |our )?{_SOURCE}(?: is| lies)?{_F}", rf" ?(?:away |far |off |distant )?from (?:the |our |my )?{_GOAL}\b", ""),
    ("way.length", ("length",), rf"\b(?:tank|roof|tower|reservoir|house|trough|barn)\b(?:(?!\b(?:pump|pipe|panels?)\b)[^.;\n]){{0,60}}{_F}", rf" ?(?:away |far |off |distant )?from (?:the |our |my )?{_SOURCE}\b", ""),
    ("way.climb", ("length",), rf"\bto (?:the |our |my )?(?!tank|reservoir|cistern)[a-zéèî]+,?(?: it is| which is)? \d[\d.,]* ?{_UNIT} (?:far|away|off|long|distant)(?:,| and)*{_F}", r" ?(?:above|up|higher|uphill)(?= ?[,.;)\n]|$)", ""),
    ("way.climb", ("length",), rf"\bto (?:the |our |my )?(?:\w+ )?{_GOAL}[ ,]*(?:that is |which is |it is )?{_F}", r" ?(?:above|higher)(?= ?[,.;)\n]|$)", ""),
    ("way.climb", ("length",), rf"\d ?{_UNIT}(?: of)?(?: \w+)? (?:line|pipe|hose|run|poly)(?: long)?,? (?:and )?(?:the )?(?:height|climb|rise|lift)(?: is| of)*{_F}", r" ?(?:$|[,;.)\n])", ""),
    ("place.altitude", ("length",), r"", r" ?(?:above|over) (?:the )?(?:mean )?sea\b", ""),
    ("place.altitude", ("length",), r"\b(?:lodge|house|hut|farm|school|place|site|cabin|clinic|mission)\b[^.;\n]{0,60}\b(?:sits|lies|stands|is)(?: located| situated)? (?:at|on) $", _ENDS, ""),
    # suctions
    ("suction.length", ("length",), rf"\b(?:draws?|sucks?|pulls?|takes?) (?:it |water )?from (?:the |our |an? )?(?:\w+ )?(?:tote|tank|cistern|pond|creek|stream|river|well|barrel|drum|sump|lake|pool|ibc)(?: that is| which is)?,?{_F}", r" ?(?:away|off|distant),? (?:through|via|with)\b", ""),
    ("water.level", ("length",), rf"(?:^|[.;\n] ?|\bpump(?: that| which)? |\bit )(?:it |the pump |pump )?(?:sits|stands|is(?: mounted)?){_F}", r" ?(?:above|over|higher than) (?:the )?(?:lowest |low |summer |highest |normal )?(?:water|surface)\b", r"\bsuction|\bsucks?\b|\bnpsh\b|\bprim"),
    # flows, uses, pressures
    ("water.yield", ("flow",), rf"\b{_SOURCE}\b(?:(?!\bpump)[^.;\n]){{0,40}}\((?:at least |about |some |min\.? |around )*$", r" ?\)", ""),
    ("water.yield", ("flow",), rf"(?:^|[.;\n] ?)(?:the |our |my )?(?:\w+ )?{_SOURCE}:{_F}", r" ?(?:$|[,.;\n])", ""),
    ("use.peak", ("volume",), rf"{_F}", rf" (?:of water )?(?:is |are |was |were |get )?{_WENT} (?:with)?(?:in|over|during) {_SPAN}", ""),
    ("use.peak_time", ("time",), rf"\d ?(?:l|lit\w+|gal\w*|m[3])(?: of water)? (?:is |are |was |were |get )?{_WENT} (?:within|in|over|during) (?:the )?(?:first |last )?$", "", ""),
    ("use.peak_time", ("time",), rf"\d ?(?:l|lit\w+|gal\w*|m[3])(?: of water)? (?:is |are |was |were |get )?{_WENT} (?:within|in|over|during) (?:about )?$", "", ""),
    ("pump.set", ("pressure",), rf"\b(?:pump|booster)\b[^.;\n]{{0,40}},{_F}", r"[ ,]*(?:speed[ -]?controll\w+|variable[ -]speed|frequency|inverter[ -]\w+|constant pressure)", ""),
    ("drip.pressure", ("pressure",), rf"\b(?:lines?|laterals?|rows|tapes?)\b[^.;\n\d]{{0,12}}\b(?:starts?|begins?) (?:with|at|on){_F}", "", _DRIP),
    ("drip.pressure", ("pressure",), "", r" ?(?:at|in|on) (?:the |each )?(?:drip ?)?(?:lines?|laterals|rows|drippers|emitters)\b", _DRIP),
    ("drip.hours", ("time",), rf"\b(?:water|irrigate|drip)(?: it| them)?(?: for)?{_F}", r" ?(?:at (?:the )?most|maximum|max\b|and no more)", _DRIP),
    ("drip.hours", ("time",), rf"\b(?:we|i|you|one) (?:can|could|may) run (?:it|them|the \w+)(?: for)?{_F}", r" ?(?:a|per|each|every|/) ?(?:day|night)\b", _DRIP),
    ("drip.hours", ("time",), rf"\bwater(?:ing)? (?:works|runs|goes|flows|is given)\b[^.;\n\d]{{0,20}}{_F}", r" ?(?:$|[,.;)\n])", _DRIP),
    ("drip.rows", ("length",), "", r" ?(?:wide )?rows\b(?! (?:long|of \d))", _DRIP),
    ("drip.rows", ("length",), rf"\blines?\b[^.;\n]{{0,30}}\b(?:distance|space|spacing) between(?: them)?{_F}", "", _DRIP),
    ("pipes.hottest", ("temperature", "angle"), rf"\b(?:pipe|line|poly|hose)\b[^;\n]{{0,40}}\b(?:on the (?:ground|surface|grass|rock)|above ?ground|in the open)\b[^;\n]{{0,50}}{_F}", r" ?(?:c\b|f\b)? ?(?:in|during|on) (?:the )?(?:\w+ )?(?:summer|july|august|january|afternoons?|hot|sun|noon)\b", ""),
    ("store.days", ("time",), "", r" ?(?:in (?:hand)|of (?:water )?in (?:store|reserve|the tank))\b", ""),
)  # fmt: skip

SPOKEN_ORDER = (
    ("drip.filter", "yes", 3, r"\bfilter (?:is|are) (?:there|present|on site|available|already there)\b|\bfilter (?:i|we) (?:have|already have|own|bought)\b(?! no)|\bfilter ?:[ -]*yes\b"),
    ("pump.dry_run", "no", 4, r"\b(?:nothing|no (?:protection|guard|switch|sensor|device|float)) (?:for|against) (?:dry[ -]?run\w*|running dry|run dry|low water)\b"),
    ("pump.works", "diaphragm", 3, r"\bmembrane pump|\bpump\b[^.;,\n¤]{0,14}\bmembrane\b(?! tank)"),
    ("drip.holds", "steady", 3, r"\bself[ -]?regulat\w+\b|\bpressure[ -]regulat(?:ed|ing) (?:drippers?|emitters?)\b"),
    ("pump.placement", "in", 3, r"\bpump (?:is )?(?:inside|down in)(?: of)? (?:it|the (?:well|bore\w*|shaft|hole))\b"),
    ("water.kind", "well", 3, r"\bdeep[ -]well pump(?= (?:is |hangs |set |sits |hung )?(?:at|down|in the)\b)|(?:^|[.?!\n;:,] ?|\bnow )(?:new )?bore(?= ?[:\d¤])"),
    ("power.source", "sun", 3, r"\b(?:solar )?panel,? (?:of )?\d{2,3} ?w(?:p|atts?)?\b|\b\d{2,3} ?w(?:att)?s? (?:solar )?panel\b(?! heater)"),
)  # fmt: skip
