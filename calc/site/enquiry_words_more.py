"""Words of what is told more seldom: drippers, filters, roofs, protection, what fills a tank."""

from __future__ import annotations

import re

from calc.site.enquiry_order import SPOKEN_ORDER
from calc.site.enquiry_spoken import MORE_CROPS

MORE = (
    ("drip.holds", "steady", 3, r"(?<!non-)(?<!non )(?<!nothing )\b(?:(?:pressure|self)[ -]?compensat\w+|pc (?:drippers?|emitters?|drip ?line))\b"),
    ("drip.filter", "no", 3, r"\b(?:no|without (?:a|any)) filter\b(?! (?:problem|needed))|\bfilter (?:needed|required)\? *(?:we have )?(?:none|no)\b|\bfilter *[:=-] *(?:none|no)\b"),
    ("drip.filter", "yes", 3, r"\b(?:disc|disk|screen|mesh|sand|media) (?:type )?filter\b|\bfilter *[:=-] *(?:yes|disc|screen|mesh|disk)\b"),
    ("drip.filter", "yes", 3, r"\bfilter (?:before|ahead of|in front of|at the head of) (?:the |all )?(?:them|it|drip|lines?|laterals?|rows|valves?)\b"),
    ("pump.dry_run", "no", 4, r"\b(?:no|without(?: any)?|hasn'?t got(?: any)?|lacks) (?:dry[ -]?run(?:ning)?|low[ -]water) (?:protection|cut ?-?off|sensor|guard|switch)\b"),
    ("pump.dry_run", "no", 5, r"\b(?:dry[ -]?run(?:ning)?|low[ -]water|run[ -]dry)(?: (?:protection|cut ?-?off|sensor|guard|switch))? ?[:=] *(?:none|no\b|nil|not fitted)"),
    ("pump.relief", "no", 5, r"\brelief valve ?[:=] *(?:none|no\b|nil|not fitted)"),
    ("pump.works", "diaphragm", 3, r"\b\d\d ?-?v(?:olts?)?,? diaphragm\b"),
    ("drip.filter", "yes", 3, r"\bfilter (?:is )?(?:already )?(?:fitted|installed|in place)\b"),
    ("power.source", "grid", 3, r"\bgrid(?:'s| is) (?:available|there|at the|close|connected)\b|(?:^|[.,;\n] ?)yes,? grid\b|\belectric(?:ity)? (?:from|of) (?:the )?net\b"),
    ("pump.placement", "in", 3, r"\bit (?:sits|hangs|is) (?:down )?in the (?:well|bore ?hole|bore), [^.;\n]{1,12} (?:down|deep)\b"),
    ("pump.relief", "yes", 4, r"\brelief valve ?[:=] *(?:yes|fitted|present)\b"),
    ("pump.relief", "no", 4, r"\b(?:no|without(?: an?y?)?|hasn'?t got(?: an?y?)?|lacks an?) (?:pressure )?relief valve\b(?! (?:on|at|for) the (?:\w+ )?(?:heater|boiler|cylinder))"),
    ("pump.relief", "yes", 3, r"\brelief valve (?:at|on|by|of|in) (?:the|my|our) (?:\w+ )?pump\b|\bpump (?:with|has|and) (?:(?:a|an|its|own|the|built-in|internal|pressure) )*relief valve\b(?! (?:of|on|at|for|in) (?:the|our|my) (?:[\w.]+ ){0,3}(?:heater|boiler|cylinder|tank|geyser))"),
    ("pump.works", "diaphragm", 3, r"(?:^|\n) *diaphragm\b"),
    ("rain.used", "yes", 3, r"\b(?:off|from) (?:the|our|a|my) (?:\w+ )?roof\b(?! (?:tank|cistern|reservoir))|\broof (?:catchment|water|runoff)\b"),
    ("rain.used", "yes", 3, r"\b(?:the|our|my|a) (?:\w+ )?roofs?(?: that| which)? (?:feeds?|fills?|drains? (?:in)?to) (?:it|the|our|a|two|both)\b"),
    ("store.fills", "always", 3, r"\b(?:spring|seep|stream)\b[^.;\n]{0,40}\btank\b[^.;\n]{0,12}\b(?:day and night|all day and night|round the clock|24 ?/ ?7|continuously|constantly)\b"),
    ("store.fills", "always", 3, r"\b(?:runs|flows|trickles|comes|fills|feeds)\b[^.;\n]{0,20}\b(?:day and night|round the clock|24 ?/ ?7|continuously|constantly|all day and (?:all )?night)\b[^.;\n]{0,25}\b(?:tank|cistern|reservoir)\b"),
    ("power.source", "sun", 3, r"\bso (?:it has to be |it's |it is )?(?:sun|solar)\b"),
    ("store.fills", "sun", 3, r"\b(?:running|runs|pumps|pumping|fills)\b[^.;\n]{0,15}\b(?:while|when|as long as) the sun (?:is out|shines|is up|is shining)\b"),
    ("power.source", "sun", 3, r"\b(?:while|when|as long as) the sun (?:is out|shines|is shining)\b|\b(?:do it|run it|pump(?: it)?) with the sun\b"),
    ("water.kind", "well", 3, r"\bbor ?hole\b|(?:^|[.\n;:] ?)bore(?= ?[\d¤:,-]|,? (?:is|was|has|gives|yields))"),
    ("water.kind", "well", 2.5, r"\b(?:we|they|i|he) (?:then |have |had it )?drilled(?=[ :,]+(?:about |down )*(?:\d|¤|a well|another|to ))"),
    ("water.kind", "cistern", 2.5, r"\b(?:caught|collected|comes?|runs?|tanks?|water) (?:\w+ )?(?:off|from) (?:the|our|a) (?:\w+ )?roof\b|\bwater is (?:trucked|hauled|delivered)\b"),
    ("pump.placement", "out", 3, r"\bpump (?:vault|pit)\b|\bpump\b[^.;,\n¤]{0,25}\b(?:right )?under (?:a|the|our) (?:bedroom|stairs|floor|house|sink|counter|deck)\b"),
    ("pump.works", "diaphragm", 3, r"\bdiaphra?g?m (?:submersible|type|one|pump)\b|\bpump\b[^.;,\n¤]{0,25}\bdiaphragm\b|(?:^|[.\n;:,] ?)diaphragm(?= ?[,.;\n])"),
    ("pump.works", "centrifugal", 3, r"\bcentrifugal\b"),
    ("pump.sensed_at", "house", 4, r"\b(?:sensor|transducer|transmitter|sensing|pressure is (?:sensed|measured)|sensed)\b[^.;\n]{0,30}\b(?:at|in|inside|up at|by) (?:the |our )?(?:house|lodge|cabin|home|cottage|kitchen|main house|basement|utility room)\b"),
    ("pump.sensed_at", "top", 4, r"\b(?:sensor|transducer|transmitter|sensing|pressure is (?:sensed|measured)|sensed)\b[^.;\n]{0,30}\b(?:at|on|in|by) (?:the |our )?(?:top of the well|well ?head|well (?:cap|top|head))\b"),
    ("pump.dry_run", "yes", 3, r"\bfloat (?:switch )?[^.;\n]{0,25}\b(?:cuts?|stops?|shuts?|switches|kills|turns)\b[^.;\n]{0,25}\b(?:low|dry|empty|drops|falls)\b"),
    ("store.fills", "none", 4, r"\bnothing else (?:fills|feeds|goes into)\b|\b(?:rain ?(?:water)? only|only (?:the )?rain(?: ?water)?|nothing but (?:the )?rain|rain and nothing else|filled only by rain|rain is (?:all|the only))\b"),
    ("store.fills", "sun", 3, r"\bsolar pump\b[^.;\n]{0,20}\bfills\b"),
    ("fall.broken", "tank", 4, r"\bbreak[ -]?pressure (?:tanks?|box(?:es)?|chambers?)\b|\bpressure[ -]break(?:er|ing)? (?:tanks?|box(?:es)?|chambers?)\b"),
    ("drip.holds", "steady", 3, r"(?<!non-)(?<!non )\bcompensating (?:drippers?|emitters?)\b"),
    ("drip.filter", "no", 4, r"\bfilter (?:we|i) (?:have|'ve|haven't|do)(?: not| n't)? (?:not )?(?:got|have)\b|\b(?:there is|we have|i have|have|has|with) no filter\b|\bno filter\b(?! (?:problem|needed))"),
    ("power.source", "grid", 3, r"\b(?:electricity|power|current) is (?:from|of) (?:the )?(?:city|town|village|network|grid|mains)\b|\bmains power\b"),
    ("power.source", "sun", 3, r"\b(?:off|from|on) (?:one|two|three|four|a single|our|the|my) (?:solar )?panels?\b"),
    ("power.season", "north", 3, r"\b(?:use|need|used|uses|water) (?:more|most(?:ly)?)(?: water)? (?:from |between )?april (?:to|till|until|and|through) september\b"),
    ("power.season", "south", 3, r"\b(?:use|need|used|uses|water) (?:more|most(?:ly)?)(?: water)? (?:from |between )?october (?:to|till|until|and|through) march\b"),
    ("pump.placement", "out", 3, r"\b(?:our|my) booster\b(?! (?:stage|station))"),
    ("pump.placement", "out", 3, r"\b(?:pump|booster)\b[^.;\n]{0,60}[.;] ?it (?:sits|stands|is|lives) (?:on|in|under|at) (?:a|the|our) (?:slab|shed|cellar|basement|garage|crawl ?space|pad|pump ?house|utility room|closet|barn|cabin|house)\b"),
    ("power.source", "sun", 3, r"\bon sunny days\b|\b(?:run|runs|running|works?|driven|powered|fed) (?:off|on|by|from|with) (?:the )?sun\b"),
    ("power.source", "grid", 3, r"\bpower company'?s (?:line|pole|wire)|\bpower from the (?:utility|company|pole|village|road)\b|\bmains three[ -]phase\b|\bmains electric we have\b"),
    ("well.known", "recovery", 3, r"\brecovery test\b"),
    ("drip.filter", "yes", 3, r"\ba (?:\w+ )?filter (?:is|sits|stands)\b|\b(?:we have|i have|there is|there's|got) (?:got )?a (?:\w+ )?filter\b(?! (?:in the (?:house|kitchen)|for drinking))"),
    ("rain.used", "yes", 3, r"\b(?:filled|fed|supplied) (?:by|from|off) (?:the|our|a) (?:\w+ )?roof\b"),
    ("fall.broken", "valve", 3, r"\bpressure[ -]reduc(?:ing|tion) valves?\b|\bpressure reducers?\b|\bprvs?\b"),
    ("drip.filter", "yes", 3, r"\bfilter (?:is |was )?(?:already )?(?:placed|there|mounted|put in)\b|\bfilter\? *(?:yes|yep|yeah|aye|fitted|got one)\b|\bfilter:? ?\d+[ -]mesh\b|\b\d+[ -]mesh filter"),
    ("drip.filter", "no", 4, r"\bfilter (?:i|we) have not (?:yet )?(?:put|bought|fitted|got|installed)\b|\bfilter[^.;\n?]{0,12}[,?] ?(?:i|we) have none\b"),
    ("drip.holds", "plain", 5, r"(?:^|[.;,\n] ?)(?:the )?(?:plain|ordinary|simple|cheap) ones\b(?!, compens)"),
    ("drip.holds", "steady", 3, r"\bpc type\b|\bkeeps? (?:the|a|its|their) (?:same )?flow whatever the pressure\b|\b(?:drippers?|emitters?)\b[^.;\n]{0,45}(?<!non-)(?<!non )(?<!not )\bcompensating\b"),
    *SPOKEN_ORDER,
)  # fmt: skip

_PLURALS = {
    "tomato": "tomatoes", "potato": "potatoes", "cabbage": "cabbages", "squash": "squashes",
    "strawberry": "strawberries", "berry": "berries", "lettuce": "lettuces",
}  # fmt: skip
_ALONE = (
    "tomato pepper potato onion carrot cabbage lettuce cucumber melon strawberry grape apple olive"
)
CROP_KEYS = {
    word: key for key in _ALONE.split() for word in (key, _PLURALS.get(key, f"{key}s"))
} | {"vines": "grape", "vineyard": "grape", "blueberries": "berry", "raspberries": "berry"}
CROP_KEYS |= MORE_CROPS
_CROP = rf"\b(?P<crop>{'|'.join(sorted(CROP_KEYS, key=len, reverse=True))})\b"
_DRIP = r"\b(?:drip|dripped|dripline|drippers?|emitters?)\b"
_CROP2 = _CROP.replace("?P<crop>", "?:")
CROP = re.compile(_CROP)
HEADS = re.compile(
    rf"(?:^|[.;\n] ?){_CROP}(?= mostly| only|,| on | over |: |\.| block| field| patch| rows)"
    rf"|\b(?:ha|hectares?|acres?|m2|square met(?:re|er)s?|sq ft|trees|rows|irrigate|watering) (?:of )?(?:[\d.]+ )?(?:young |old |table )?{_CROP2}"
)
CROPS = (
    re.compile(rf"{_CROP}[^.;\n]{{0,45}}{_DRIP}"),
    re.compile(rf"{_DRIP}[^.;\n]{{0,45}}{_CROP}"),
    re.compile(rf"\bcrop *[:=] *{_CROP}"),
)
