"""Rows for ``enquiry_direct`` of ways, levels, wells and tanks, asked before those of other modules.

"118 ft down after an hour of pumping", "lifts 14 ft from a dug well", "comes down 45 m into our
tank". A row is as ``enquiry_direct`` says.
"""

from __future__ import annotations

import re

from calc.site.enquiry_model import Context

_F = r"[ ,:=~(+-]*+(?>(?:is|are|was|be|of|at|a|the|about|around|roughly|some|only|just|approx\.?|ca\.?|nearly|almost|maybe|perhaps|say|it is|it's|by|exactly|now|nearer|barely|pretty much)(?![a-z])[ ,:=~(-]*+)*+$"
_ENDS = r" ?(?:$|[,.;)\n]|and\b|or so\b|with\b|but\b)"
_WELL = (
    r"\b(?:wells?|bore ?holes?|bore ?wells?|bore|tube ?well|submersible|sub\b|static|swl|casing)\b"
)
_HOLE = r"(?:well|bore ?hole|bore ?well|tube ?well|bore|perforation|drilling|drill ?hole)"
_OPEN = (
    r"(?:well|creek|stream|brook|river|lake|pond|dam|burn|beck|cistern|water|spring|canal|ditch)"
)
_HOME = r"(?:house|cabin|home|cottage|hut|barn|shack|lodge|farm|bungalow|trailer|stable|garden|field|yard|kitchen|chapel|school)"
_UNIT = r"(?:m|ft|feet|foot|met(?:re|er)s?|mtrs?|yards?|yd|km|miles?|')"
_PUMPS = r"(?:pump(?:ing|ed|s)?|drawing|running|bailing)"
_NO_JET = rf"\A(?![\s\S]*\b(?:jet|booster|surface pump|centrifugal)\b)[\s\S]*{_WELL}"
_RECOVERY = r"\brecover\w*|\brecharge test|\bcame (?:back|up)|\b(?:level|water) (?:rise|rose|come back|came up)"
_SUCKS = r"\b(?:jet|surface|centrifugal|suction|npsh\w*|foot[ -]?valve|self[ -]priming|primes?|shallow|diaphragm)\b"

_SOMEWHAT = r"(?:and |all |it is |it's |its |that's |is |which is |pretty much |mostly |nearly |almost |more or less |dead |roughly |practically )"
_FLAT = re.compile(  # a way without a climb
    rf"\bflat as an? [a-z]+\b"
    rf"|(?:\d ?{_UNIT}|\b(?:poly|hdpe|mdpe|pvc|pe|pipe|line|hose|{_HOME}))\b(?:(?!\b(?:batter|tyre|tire|panel|roof|array|pressure|yield|output|curve|long|wide)\w*)[^.;\n¤]){{0,30}}(?:[,;] ?{_SOMEWHAT}*| {_SOMEWHAT}+)(?:flat|level)(?= ?[,.;)\n]|$)"
    rf"|\b(?:away|off|distant|{_HOME}),? on the (?:flat|level)\b"
    rf"|\b{_HOME} (?:is |lies |sits |stands )?(?:about |roughly )?level with (?:the )?(?:well ?head|bore ?head|well|spring|source|intake)\b"
)
_AT_SEA = re.compile(r"\b(?:at|altitude|elevation|sea)(?: level)?(?: is|:)?(?: about)? ?$")
_LOWEST = 150.0  # m, from which on a height that is said to be above the sea is taken; our choice
_HIGH = 600.0  # m, from which on a length beside a hut is where it lies; our choice


def at_sea(metres: float, near: Context) -> bool:
    """Whether a length beside a place may be its height above the sea."""
    return metres >= (_LOWEST if _AT_SEA.search(near.left[-30:]) else _HIGH)


_EMPTY = re.compile(r"\b(?:batter|tyre|tire)\w*[^.;\n]*$")


def flat_way(low: str) -> re.Match[str] | None:
    """Where a letter says that the way is flat; a battery may be so, too."""
    found = _FLAT.search(low)
    return (
        None if found and _EMPTY.search(low, max(0, found.start() - 60), found.start()) else found
    )


WAYS: tuple[tuple[str, tuple[str, ...], str, str, str], ...] = (
    # levels of water
    ("well.pumping", ("length",), rf"\b(?:water|level|static|rest)\b(?:(?!\b(?:los[et]|loses|losing|by|tank|cistern|reservoir)\b)[^;\n]){{0,60}}{_F}", rf" ?(?:down |deep )?(?:after|when|while|during) [^.;\n\d]{{0,25}}\b{_PUMPS}\b(?! (?:house|shed))", _WELL),
    ("well.pumping", ("length", "bare"), rf"\b(?:water|level|static|rest\w*)\b[^.;\n]{{0,60}}\b(?:falls?|falling|drops?|dropping|sinks?|sinking|goes|going|comes|coming|draws?)(?: down)? to{_F}", rf" ?(?:when|while|after|with|once) [^.;\n\d]{{0,25}}\b{_PUMPS}\b", _WELL),
    ("well.pumping", ("length", "bare"), rf"\b(?:when|while|once|after) (?:the |our |my )?pump (?:works?|runs?|is (?:on|running|working)|goes|pumps|has run|draws)[^.;\n\d]{{0,30}}\b(?:down|falls?|drops?|sinks?|goes)(?: down)? to{_F}", "", ""),
    ("well.pumping", ("length", "bare"), rf"\b(?:static|rest\w*|swl)\b[^.;\n]{{0,30}}, ?(?:it |and )?(?:pulls?|pulled|pumps?|pumped|draws?|drew|drops?|dropped|fell|falls?|goes|went)(?: it)? down to{_F}", "", ""),
    ("well.pumping", ("length",), rf"\bstatic\b[^.;\n]{{0,50}}\btest\b[^.;\n]{{0,40}}\b(?:it|level|water) (?:fell|dropped|went down|sank|drew down|came down)(?: down)? to{_F}", "", ""),
    ("well.pumping", ("length",), rf"\bpumped (?:it|the well|her)\b[^.;\n]{{0,60}}\b(?:drew|pulled|brought|took|got) (?:it|her|the (?:level|water)) (?:down )?to{_F}", "", _WELL),
    ("water.level", ("length",), rf"\bwater (?:to|till|until|in){_F}", _ENDS, rf"{_WELL}|\bperforation\b"),
    ("well.static", ("length",), rf"\b(?:water|level)\b[^.;\n\d]{{0,25}}{_F}", r" ?(?:down |deep )?(?:at rest|undisturbed|before pumping|before the test)\b", _WELL),
    ("water.level", ("length", "bare"), rf"(?:^|[,;.\n] ?|\band |\d ?(?:m|ft|feet|')? )(?:the )?water(?: sits| stands| is)? at{_F}", rf" ?(?:{_UNIT}\b ?)?(?:$|[.,;)\n]|and it\b|down\b|in the dry)(?! ?(?:psi|bar|\d))", _NO_JET),
    ("water.level", ("length", "bare"), rf"\b(?:dropped|lowered|let down|let|lower|drop) (?:a|the|my) (?:weighted )?(?:string|line|tape|weight|rope|stone|plumb\w*|bottle)\b[^.;\n\d]{{0,40}}\b(?:hit|found|touched|reached|met|struck|wet)(?: it| water| the water)?(?: at)?{_F}", r"(?! ?(?:bottom|mud))", ""),
    ("water.level", ("length", "bare"), rf"\bwater\b[^.;\n]{{0,60}}\d ?{_UNIT}[^.;\n\d]{{0,40}}\bin (?:late |dry )?(?:summer|august|september|october|autumn|fall|the dry \w+)(?: it| the level)?(?: is| goes| falls| drops| sinks)?(?: down)?(?: to| until| till)?{_F}", rf" ?(?:$|[.,;)\n]|{_UNIT}\b)", _WELL),
    ("water.level", ("length",), rf"\b(?:lifts?|lift is|lifting|draws?|drawing|sucks?|sucking)(?: it| water| up)?{_F}", rf" ?(?:up )?(?:from|out of) (?:an?|the|our|my) (?:[a-z-]+ ){{0,2}}{_OPEN}\b(?! (?:up )?to (?:the|our|my) {_HOME})", _SUCKS),
    ("water.level", ("length",), rf"\b(?:hut|shed|deck|boathouse|floor)(?: floor)?(?: is| sits)?{_F}", r" ?(?:above|over) (?:the )?(?:water|lake|creek|river|stream|pond)\b", r"\bpump\b[^.\n]{0,30}\b(?:in|inside|on) (?:an?|the|our) (?:\w+ )?(?:hut|shed|deck|boathouse)"),
    ("water.level", ("length", "bare"), rf"\bwater\b[^.;\n\d]{{0,20}}\bin (?:late |dry )?(?:summer|august|september|october|autumn|the dry \w+)(?: it| the level)?(?: goes| falls| drops| sinks| is)(?: down)?(?: to| until| till| at)?{_F}", _ENDS, _WELL),
    ("water.level", ("length",), rf"\b{_OPEN},{_F}", r" ?(?:of )?(?:suction )?lift\b", rf"{_SUCKS}|\bpump in the\b"),
    ("water.level", ("length",), rf"\bpump\b(?:(?!\b(?:house is|tank is)\b)[^.;\n\d]){{0,50}}{_F}", r" ?(?:above|over|higher than|up from) (?:the )?(?:(?:tank|cistern|creek|stream|pond|well|river|dam)'s )?(?:lowest|low|summer|normal|bottom|surface of the) ?(?:water|level|pond|lake|stage)?\b", ""),
    ("water.level", ("length",), rf"\bpump (?:is |sits |stands |lives )?(?:in|inside|on|by|under) (?:the |an? |our |my )?(?:\w+ )?(?:shed|hut|garage|barn|slab|platform|bank|dock|jetty|box|lean-to|cellar|pad|scullery)(?:,| and| is| sits)*{_F}", r" ?(?:over|above|higher than|up from) (?:the |our )?(?:creek|stream|river|lake|pond|water|brook|dam|burn)\b(?! (?:to|house))", ""),
    ("water.level", ("length", "bare"), rf"\bwater (?:itself )?(?:is|stands|sits|lies|stays|rests)(?: always)?(?: at)?{_F}", rf" ?(?:{_UNIT}\b ?)?(?:$|[.,;)\n]|down\b)(?! ?(?:away|from|psi|\d))", _NO_JET),
    ("water.level", ("length", "bare"), rf"\bwater (?:level )?never (?:gets|goes|falls|drops|sinks|is|went) (?:under|below|beneath|lower than|deeper than){_F}", r"(?! ?(?:the|psi|bar|l\b|%))", _WELL),
    ("water.level", ("length",), rf"\b(?:static|rest\w*)(?: water)? level (?:stood|stands|sits|lies){_F}", r" ?(?:$|[.,;)]|when\b|down\b|below\b|as\b)", ""),
    ("water.level", ("length",), rf"\b(?:stream|creek|river|lake|pond|water|brook)(?: level)?(?: never)?(?: goes| gets| falls| drops| is| lies| stands)?(?: lower than| under)?{_F}", r" ?(?:below|under|beneath) (?:the |our )?pump\b(?! ?house)", ""),
    ("water.level", ("length",), rf"(?:^|[.;\n] ?)(?:suction )?lift(?: is| of|:)?{_F}", rf" ?from (?:the |an? )?{_OPEN}\b(?! to)", ""),
    # yields
    ("water.yield", ("daily",), rf"\b(?:spring|well|seep|bore\w*|source)\b[^.;\n\d]{{0,20}}\b(?:giving|gives|yields|yielding|makes|making|brings|runs|produces|delivers){_F}", r"(?! ?(?:for|to) )", ""),
    ("water.yield", ("flow",), rf"(?:^|[.;\n] ?)(?:the )?flow (?:there|at the (?:spring|intake|source|weir))(?: is)?{_F}", "", ""),
    ("water.yield", ("flow",), rf"\b(?:you|we|i|they) (?:can|could) (?:pump|draw|take){_F}", r" ?(?:all day|day and night|for ever|forever|without|and never)", _WELL),
    ("water.yield", ("flow",), rf"\b(?:test|pumped|driller)\b[^;\n]{{0,80}}\bheld{_F}", r" ?(?:for|all|over)\b", ""),
    ("water.yield", ("flow",), rf"\b(?:count on|reckon on|figure on|go with|bank on|rely on|plan on|call it){_F}", r"(?! ?(?:a day|per day|each))", r"\b(?:well|bore\w*|spring|seep|creek|stream|source)\b"),
    ("water.yield", ("flow",), r"\b(?:well|bore|bore ?hole)\b(?:(?!\b(?:needs?|wants?|use|uses|shower|tank|meter|drip|delivers|rated|hp|valve|at)\b)[^;\n]){0,70}, ?(?:yields? |makes |gives )?$", r" ?(?:$|[.;\n])", r"\b(?:static|swl|water \d)"),
    ("water.yield", ("flow",), r"(?:^|[^a-z])q ?[:=]? ?$", r" ?(?:$|[.,;)'\n])", _WELL),
    # wells
    ("well.depth", ("length", "bare"), rf"\b{_HOLE}(?: is| was|'s)?,? \d[\d.\/ ]* ?(?:inch(?:es)?|in|\"|''|mm|cm)(?: wide| across| casing| bore| dia\w*)?,{_F}", rf" ?(?:{_UNIT}\b ?)?(?:$|[,.;)\n]|deep\b)", ""),
    ("well.depth", ("length",), rf"(?:^|[.;,\n] ?)(?:[a-z]+ )?(?:drilled |dug |old |deep )?{_HOLE} (?:is|has|measures){_F}", r" ?(?:$|[.;)\n]|with (?:the |a )?(?:pump|water)\b|(?:and|,) (?:the )?(?:pump|water|static)\b)", ""),
    ("well.depth", ("length",), rf"(?:^|[.;:,\n] ?|\bhas |\bin an? )(?:the |our |my |new )*(?:hole|{_HOLE})(?:'s)?(?: of)?{_F}", r" ?(?:$|[.;,)\n])(?! ?(?:away|from|to|static \d|(?:up|down|off)\b))", r"\b(?:submersible|pump(?:'s)? (?:hangs|is hung|hung|at|down|set|hanging)|pump (?:of [^.;\n]{0,12} )?hanging|static|water sits|casing|recovery|panels?)\b"),
    ("well.depth", ("length",), "", r" ?(?:dug|drilled|bored|deep dug|hand[ -]dug)\b(?=[^.;\n]{0,12}(?:[,.;\n]|$| with\b))", rf"{_WELL}"),
    ("well.depth", ("length",), r"\b(?:an?|our|the|my|for|have|has|old|deep|this|of) $", rf"[ -]?(?:deep |dug |drilled |bored |hand[ -]dug )*{_HOLE}\b(?! (?:line|pipe|cable|house|shed|pump|casing|head))", ""),
    ("well.depth", ("bare",), rf"\b{_HOLE}\b(?:(?!\b(?:pump|water|static)\b)[^;\n\d]){{0,20}}{_F}", r" deep\b", ""),
    ("well.depth", ("length",), rf"\b(?:hole|drilled|bored)\b[^.;\n]{{0,50}}\d ?(?:cm|mm|in(?:ch(?:es)?)?|\") (?:wide|across|dia\w*),{_F}", r" ?(?:$|[.;\n]|deep\b)", ""),
    ("well.bore", ("length",), "", r"[ -](?:steel |pvc |inch )?casing\b(?! (?:depth|length|to|down|deep))", _WELL),
    ("well.intake", ("length",), rf"(?:^|[.;,:\n] ?|\bthe )intake(?: is| sits| set| at| hangs)*{_F}", r" ?(?:$|[.,;)\n]|deep\b|down\b)", rf"\A(?![\s\S]*\b(?:spring|creek|stream|weir|river)\b)[\s\S]*{_WELL}"),
    ("well.intake", ("length",), rf"\bput the intake(?: at| down at){_F}", _ENDS, _WELL),
    ("well.depth", ("length",), rf"\bours (?:came in|turned out|is|went)(?: at| to)?(?: better| worse| deeper| shallower)?{_F}", r" ?(?:$|[,.;)\n]|deep\b|and\b)", _WELL),
    ("well.depth", ("length", "bare"), rf"(?:^|[.;\n] ?)(?:the |our )?{_HOLE}{_F}", rf" ?(?:{_UNIT}\b ?)?,? ?(?:water|static|swl|pump)\b(?! ?(?:is|sits|house) )", ""),
    ("water.level", ("length", "bare"), rf"(?:^|[.,;\n] ?|\d ?{_UNIT}? )water{_F}", rf" ?(?:{_UNIT}\b ?)?(?:$|[.,;\n]|pump\b|static\b)(?! ?(?:psi|bar|\d))", _NO_JET),
    ("water.level", ("length",), rf"\b(?:suck|draw|pull|lift)\w*\b[^.;\n\d]{{0,25}}\b(?:pond|creek|stream|river|lake|well|dam|cistern|water|canal){_F}", r" ?(?:down|below|lower)\b(?! (?:the (?:hill|slope|house)))", ""),
    ("well.pumping", ("length",), rf"\bdraw[ -]?down (?:is )?to{_F}", "", _WELL),
    ("well.tested", ("flow",), rf"\btested(?: at)?{_F}", r" ?(?:with|,)? ?(?:a )?(?:draw[ -]?down|dropping|falling|lowering)\b", _WELL),
    ("well.depth", ("length",), rf"(?:^|[.;\n] ?)(?:the )?new one (?:is|goes|went)(?: down)?(?: to)?{_F}", _ENDS, _WELL),
    ("well.depth", ("length", "bare"), rf"\b{_HOLE} (?:itself|alone) (?:is|goes)(?: down to)?{_F}", _ENDS, ""),
    ("well.bore", ("length",), rf"(?:^|[.;:\n] ?)(?:the |our |my )?{_HOLE},{_F}", r" ?(?:$|[,.;)\n])(?! ?(?:away|from|m\b|l\b))", r"\b(?:pump|water)\b"),
    ("well.bore", ("length",), rf"\b(?:id|inside diameter|inner diameter){_F}", r"(?! ?(?:pipe|poly|pvc))", r"\b(?:recovery|depth|static|swl|td)\b"),
    ("well.bore", ("length",), rf"\d ?{_UNIT}(?: deep)? (?:by|x){_F}", _ENDS, _WELL),
    ("well.bore", ("length",), rf"\d ?{_UNIT} deep,?{_F}", r" ?(?:dia\w*|wide|across|bore|casing)\b", _WELL),
    ("well.bore", ("length",), rf"\b{_HOLE}\b[^.;\n\d]{{0,30}}(?:,|\bis){_F}", r" ?(?:wide|across|inside|diameter)\b(?! (?:the|our))", ""),
    # wells that were tried
    ("well.rate", ("flow",), rf"\bpumped\b[^.;\n]{{0,30}}\bat{_F}", "", _RECOVERY),
    ("well.pumped_for", ("time",), rf"\bpumped(?: it| the well)?(?: at [^.;\n]{{3,18}})?(?: for)?{_F}", r"(?! ?(?:a|per) )", _RECOVERY),
    ("well.steady", ("flow",), rf"\b(?:bailed|drew|drawn|pumped out|took)\b[^\n]{{0,90}}\b(?:then|after that|thereafter)(?: a| it ran| it was)? steady{_F}", "", ""),
    ("well.drawn", ("volume",), rf"\bbailed(?: out)?{_F}", r" ?(?:in|over|within) (?:about )?\d", ""),
    ("well.drawn", ("volume",), "", r" ?(?:of water )?(?:out )?before (?:the |it |she )?(?:flow |water |well |pump )?(?:collapsed|slowed|dropped|fell|ran dry|failed|stopped|sucked|gave out|went dry)\b", rf"{_WELL}|\bhole\b"),
    ("well.drawn_for", ("time",), rf"\bbefore (?:the |it |she )?(?:flow |water |well |pump )?(?:collapsed|slowed|dropped|fell|ran dry|failed|stopped)\b[^.;\n\d]{{0,6}}(?:which|that) (?:needed|took|lasted|was){_F}", "", rf"{_WELL}|\bhole\b"),
    ("well.drawn_for", ("time",), rf"\b(?:bailed|pumped|drew|got|took|lit(?:re|er)s|gallons)\b[^.;\n]{{0,50}}\d ?(?:gal\w*|l|lit(?:re|er)s?)(?: out)? in{_F}", r" ?(?:before|until|till) (?:it|she|the (?:well|flow|water|pump))\b", ""),
    ("well.tested", ("flow",), rf"\bstatic\b[^.;\n]{{0,40}}\b(?:pumps?|pulls?|draws?|drops?|goes)(?: it)? down to [^.;\n]{{1,9}} at{_F}", "", ""),
    ("well.cover", ("length", "pressure"), rf"\b(?:want|like|keep|have|leave|left)\b[^.;\n\d]{{0,25}}{_F}", r" ?(?:of )?(?:water )?(?:left |kept |always )*(?:over|above|on top of|covering) (?:the |its )?(?:intake|pump|inlet|suction|strainer|it)\b", _WELL),
    ("well.clear", ("length",), rf"\b(?:keep|kept|leave|left|stays?)\b[^.;\n]{{0,60}}{_F}", r" ?(?:free |clear )?(?:off|of|from|above) (?:the )?(?:bottom|floor|mud)\b", _WELL),
    ("well.drop_pipe", ("length",), rf"\bdrop pipe(?: is| of|:)?(?: \d[\d./-]* ?(?:mm|in|inch|\")(?: [a-z]+)?,)?{_F}", r"(?! ?(?:mm|in\b|inch|\"|from|to))", ""),
    ("pump.diameter", ("length",), rf"\b(?:submersible|pump)(?:'s)? (?:is|measures){_F}", r" ?(?:across|wide|in diameter|diameter|thick)\b", ""),
    ("pump.height", ("length", "bare"), rf"(?:^|[.,;:\n] ?|\band |\bwith (?:the |a )?|\d ?(?:m|ft|feet|')? )(?:the |our |my )?(?:pump|sub|submersible)(?:'s)?(?: itself)?(?: is| was| will be| will)?(?: set| hung| hang| hanging| hangs| sits| lowered| down)*(?: at| @| to)?{_F}", rf" ?(?:{_UNIT}\b ?)?(?:$|[.,;)\n]|with\b|w/|no\b|and\b|on\b|deep\b|down\b)(?! ?(?:psi|bar|lit|l\b|gpm|hp|v\b|w\b|away|from|\d+ ?(?:psi|bar)|/|to \d))", _NO_JET),
    ("pump.height", ("length", "bare"), rf"\b(?:hung|hangs?|put|set|lowered|dropped|placed) (?:the|our|my|a|his) (?:\w+ )?(?:pump|sub|submersible)(?: down)?(?: at| to){_F}", rf" ?(?:{_UNIT}\b ?)?(?:$|[.,;)\n]|deep\b|down\b)(?! ?(?:psi|bar))", _NO_JET),
    # tanks
    ("tank.level", ("length", "rise"), rf"\btank\b(?! (?:down )?to\b)(?:(?!\b(?:pump|spring|well|bore\w*|trough|pressure)\b)[^.;\n]){{0,60}}\b(?:uphill|higher|up the hill|above)(?: of)?(?: the| our)?(?: {_HOME})?(?: by)?,?{_F}", rf" ?(?:$|[,.;)\n]|(?:above|from|over|up from) (?:the |our )?{_HOME})", ""),
    ("tank.level", ("length",), rf"\b(?:lift|rise|climb|pumps?(?: it)?|push(?:es)?|head)(?: is| of| up)?{_F}", r" ?(?:up )?(?:in)?to (?:header|hill|high|storage|top|concrete)? ?(?:tank|reservoir)\b", ""),
    ("tank.level", ("length", "rise"), rf"\btank\b[^.;\n]{{0,60}},{_F}", r" ?(?:above|higher than|up from|over) (?:the |our |my |its )?(?:lowest |highest |top |main )?(?:bore ?head|well ?head|well|bore\w*|steading|van|caravan|pitch|dining hall|hall|beds|drinker)\b", ""),
    ("tank.level", ("length",), rf"(?:^|[.;,\n] ?)(?:the |our )?(?:house |water |main |storage |stock |header |big |concrete |steel |plastic )*(?:tank|reservoir)(?: is| sits| stands| will be| would be| at)*{_F}", r" ?(?:above|higher than|up from|over) (?:the |our )?(?:well|bore\w*|spring|creek|river|stream)\b(?! (?:house is|which))", r"\A(?![\s\S]*\bpressure tank)[\s\S]*"),
    ("tank.level", ("length",), rf"\b(?:tank|reservoir|deposit|tote|cistern)\b(?:(?!\b(?:pump\w*|pressure|draws?)\b)[^.;\n]){{0,40}}, (?:its )?(?:water |water level |outlet |bottom )*{_F}", rf" ?(?:above|higher than|over|up from) (?:the |our |my )?(?:lowest |highest |top |back )?(?:{_HOME}|dining hall|hall|beds|steading|bore ?head|well ?head|taps?|troughs?)\b", r"\A(?![\s\S]*\bpressure tank)[\s\S]*"),
    ("tank.level", ("length",), rf"^its (?:outlet|bottom|base|floor|foot|water|water level)(?: is| lies| sits| stands)*{_F}", rf" ?(?:above|higher than|over) (?:the |our |my )?(?:back |top |lowest |highest )?(?:{_HOME}|taps?)\b", r"\b(?:tank|reservoir)\b"),
    ("tank.level", ("length",), rf"\b(?:tank|tote|ibc|barrel|trailer)\b[^.;\n]{{0,40}}\b(?:its bottom|its base|its foot|the bottom|outlet){_F}", r" ?(?:off|above|over) the ground\b", ""),
    ("tank.level", ("length",), rf"\b(?:tank|box|reservoir|tote)\b[^.;\n]{{0,60}}\b(?:above|over|on top of) the (?:house|roof|bathroom|kitchen|shed),{_F}", r" ?high\b", ""),
    ("tank.level", ("length",), rf"\bfills? (?:an?|the|our) [^.;\n]{{0,25}}\btank{_F}", r" ?up (?:the|a) (?:bank|hill|slope|hillside)\b", ""),
    ("store.depth", ("length",), rf"\bwater(?: in it)?{_F}", r" ?deep (?:when|if)(?: it's| it is)? (?:brim ?-?ful?l?|brimming|full|filled)", ""),
    # the suction
    ("suction.length", ("length",), rf"\b(?:pipe|hose|line|tube) (?:that|which) (?:sucks|draws|pulls)(?: it| the water)?(?: up)?{_F}", r" ?(?:$|[,.;)\n]|long\b)", ""),
    ("suction.length", ("length",), rf"\bsuction (?:hose|pipe|line)(?: is| measures| has){_F}", _ENDS, ""),
    # the way
    ("-way.climb", ("length",), rf"\d ?{_UNIT}(?: long| of (?:pipe|line))?,?(?: and)?(?: it| which| that)? (?:comes|goes|runs|falls|drops) down{_F}", r" ?(?:$|[,.;)\n]|in?to (?:the|our|two|three|a|an|\d))", ""),
    ("-way.climb", ("length",), rf"\bdifference (?:of|in) (?:height|level|elevation)(?: is| of)?{_F}", r" ?(?:only)?,? (?:(?:and|with) )?the (?:house|cabin|trough|garden|tap|farm) (?:being |is |lies )?(?:lower|below)", ""),
    ("way.climb", ("length",), rf"\d ?{_UNIT}(?: away| off| of [^.;\n,]{{3,18}})? and{_F}", rf" ?(?:upwards|uphill|up to (?:the|our) {_HOME})\b", ""),
    ("way.climb", ("length",), rf"\d ?{_UNIT}\b[^.;\n]{{0,45}}\b(?:poly|pvc|hose|inch|mm|pe|cottage|barn|house|cabin),? (?:which is |and )?(?:up|climbing|rising){_F}", r" ?(?:$|[.;)\n]|of steps)", r"\bpump|\bwell|\bbore|\bpush"),
    ("way.climb", ("length",), rf"\b(?:must|has to|needs to|have to) (?:climb|rise|go up|be lifted|be raised){_F}", rf" ?(?:up )?to (?:the|our|my) {_HOME}\b", ""),
    ("way.climb", ("length",), rf"\b(?:door|tap|kitchen|fence|shower|house|cabin|trough|barn|bathroom|sill)(?: is| sits| stands| lies)*{_F}", r" ?(?:above|higher than|up from) (?:the |our )?(?:pump|well ?head|well|bore\w*)\b", r"\A(?![\s\S]*\btank\b)[\s\S]*"),
    ("way.climb", ("length",), rf"\bto (?:the|our|my) {_HOME},? (?:which is|that is|it is)?{_F}", r" ?up the (?:slope|hill|bank|hillside)\b", r"\d ?(?:m|ft|feet|met\w+|yards)(?: of [^.;\n]{2,25})? (?:up )?to (?:the|our|my) "),
    ("water.level", ("length",), rf"\bwater(?: level| surface)?{_F}", r" ?(?:above|over|higher than) the pump\b", ""),
    ("-way.climb", ("length",), rf"\b(?:spring|weir|intake)\b(?:(?!\b(?:{_HOME}|tank|pump)\b)[^.;\n]){{0,40}}? and{_F}", rf" ?(?:higher than|above) (?:the|our|my) {_HOME}\b", ""),
    ("-way.climb", ("length",), rf"\bfrom (?:an?|the|our) spring{_F}", r" ?(?:higher(?: up)?|further up)(?=[,.;)\n]|$)", ""),
    ("way.climb", ("length",), rf"\b(?:climbing|rising){_F}", r" ?(?:up )?to the (?:ridge|top|house|crest|saddle)\b", ""),
    ("-way.climb", ("length",), rf"\b(?:spring|source|creek|stream|intake)\b[^.;\n]{{0,40}}\d ?(?:mm|in|inch|\")[^.;\n,]{{0,14}},{_F}", r" ?(?:of )?(?:fall|drop)\b(?! ?(?:pipe))", ""),
    ("way.climb", ("length",), rf"\bfrom (?:an?|the|our) (?:spring|stream|creek|well|source|intake|lake|pond){_F}", r" ?(?:lower|further down|down)(?: down)?(?: (?:the|our) (?:slope|hill|mountain|valley))?(?= ?[,.;)\n]|$| and\b)", r"\bpump|\blift|\braise"),
    ("way.length", ("length",), rf"\bfrom (?:the |our |my )?(?:hole|well|bore\w*|pump|spring|well ?head|source) to (?:the |our |my )?{_HOME}(?: it| there)?{_F}", r" ?(?:$|[,.;)\n])(?! ?(?:higher|up\b(?! (?:maybe|about|to))|above|below|lower))", ""),
    ("way.length", ("length",), rf"(?:^|[.;,\n] ?)(?:the )?distance (?:is |of |: ?)?{_F}", r" ?(?:$|[,.;)\n])", r"\b(?:spring|well|bore\w*|source|pump|stream)\b"),
    ("drip.length", ("length",), rf"\blongest (?:line|row|lateral|run) (?:would be|will be|may be|measures){_F}", r" ?(?:$|[,.;)\n]|long\b)", r"\b(?:drip|emitters?|drippers?)\b"),
    ("fall.held", ("pressure",), rf"\b(?:reducing|reducer|regulat\w+|prvs?|reduce)(?: valves?)?\b[^;\n]{{0,50}}\b(?:holding|keeping|giving|set on|on){_F}", "", ""),
    ("drip.length", ("length",), rf"\b(?:each|every) (?:run|row|bed|tape|length)(?: is| measures| has| of){_F}", r" ?(?:$|[.,;)\n]|long\b)", r"\b(?:drip|emitters?|drippers?)\b"),
    ("pump.sensed", ("length",), rf"\b(?:pressure )?(?:is )?(?:sensed|sensor|transducer|gauged)(?: sits| sitting| mounted)?{_F}", r" ?(?:above|over|higher than) (?:the )?pumps\b", ""),
    # heights above the sea
    ("place.altitude", ("length",), rf"(?<!to )(?<!to the )(?<!to our )(?<!to my )(?<!from )(?<!from the )\b(?:hut|lodge|refuge|cabin|chalet|bothy|hytte|hostel|restaurant|inn|shelter|monastery|homestead|rifugio)(?:,| is| lies| sits| stands|,? at| \()* ?{_F}", r" ?(?:$|[,.;)\n]|up\b(?! (?:the|from|to))|moh\b|high\b)", ""),
    ("place.altitude", ("length",), rf"\b(?:north|south|latitude),? and{_F}", r" ?(?:up|high|above)\b(?! the (?!sea))", ""),
    ("place.altitude", ("length", "bare"), rf"\b(?:altitude|elevation|height above sea level)(?: is|:)?{_F}", r" ?(?:$|[.,;\n])", r"\A(?![\s\S]*\b(?:gain|difference|change) (?:in|of) (?:altitude|elevation))[\s\S]*"),
    ("place.altitude", ("length",), rf"\b(?:land|plot|parcel|farm|place|site)\b[^.;\n\d]{{0,25}}\b(?:hill ?side|mountain|hills|height of)(?: at| in)?{_F}", r" ?(?:$|[,.;)\n]|height\b|high\b|altitude\b|elevation\b)", ""),
    ("place.altitude", ("length",), rf"\b(?:sea level|height over sea){_F}", _ENDS, ""),
    ("place.altitude", ("length",), "", r" ?(?:moh|m\.?o\.?h\.?|[uü]\.? ?(?:d\.? ?)?m|msnm|m\.?s\.?n\.?m)\b", ""),
)  # fmt: skip
