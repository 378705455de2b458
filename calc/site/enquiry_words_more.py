"""Words of what is told more seldom: drippers, filters, roofs, protection, what fills a tank."""

from __future__ import annotations

import re

MORE = (
    ("drip.holds", "steady", 3, r"\b(?:(?:pressure|self)[ -]?compensat\w+|pc (?:drippers?|emitters?|drip ?line))\b"),
    ("drip.filter", "no", 3, r"\b(?:no|without (?:a|any)) filter\b(?! (?:problem|needed))|\bfilter (?:needed|required)\? *(?:we have )?(?:none|no)\b|\bfilter *[:=-] *(?:none|no)\b"),
    ("drip.filter", "yes", 3, r"\b(?:disc|disk|screen|mesh|sand|media) (?:type )?filter\b|\bfilter *[:=-] *(?:yes|disc|screen|mesh|disk)\b"),
    ("drip.filter", "yes", 3, r"\bfilter (?:before|ahead of|in front of|at the head of) (?:the |all )?(?:drip|lines?|laterals?|rows|valves?)\b"),
    ("pump.dry_run", "no", 4, r"\b(?:no|without(?: any)?|hasn'?t got(?: any)?|lacks) (?:dry[ -]?run(?:ning)?|low[ -]water) (?:protection|cut ?-?off|sensor|guard|switch)\b"),
    ("pump.relief", "no", 4, r"\b(?:no|without(?: an?y?)?|hasn'?t got(?: an?y?)?|lacks an?) (?:pressure )?relief valve\b(?! (?:on|at|for) the (?:\w+ )?(?:heater|boiler|cylinder))"),
    ("pump.relief", "yes", 3, r"\brelief valve (?:at|on|by) the pump\b|\bpump\b[^.;\n¤]{0,25}\brelief valve\b"),
    ("pump.works", "diaphragm", 3, r"(?:^|\n) *diaphragm\b"),
    ("rain.used", "yes", 3, r"\b(?:off|from) (?:the|our|a|my) (?:\w+ )?roof\b(?! tank)|\broof (?:catchment|water|runoff)\b"),
    ("rain.used", "yes", 3, r"\b(?:the|our|my|a) (?:\w+ )?roofs?(?: that| which)? (?:feeds?|fills?|drains? (?:in)?to) (?:it|the|our|a|two|both)\b"),
    ("store.fills", "always", 3, r"\b(?:spring|seep|stream)\b[^.;\n]{0,40}\btank\b[^.;\n]{0,12}\b(?:day and night|all day and night|round the clock|24 ?/ ?7|continuously|constantly)\b"),
    ("store.fills", "sun", 3, r"\b(?:running|runs|pumps|pumping|fills)\b[^.;\n]{0,15}\b(?:while|when|as long as) the sun (?:is out|shines|is up|is shining)\b"),
    ("power.source", "sun", 3, r"\b(?:while|when|as long as) the sun (?:is out|shines|is shining)\b|\b(?:do it|run it|pump(?: it)?) with the sun\b"),
    ("water.kind", "well", 3, r"\bbor ?hole\b|(?:^|[.\n;:] ?)bore(?= ?[\d¤:,-]|,? (?:is|was|has|gives|yields))"),
    ("water.kind", "well", 2.5, r"\b(?:we|they|i|he) (?:then |have |had it )?drilled(?=[ :,]+(?:about |down )*(?:\d|¤|a well|another|to ))"),
    ("water.kind", "cistern", 2.5, r"\b(?:caught|collected|comes?|runs?|tanks?|water) (?:\w+ )?(?:off|from) (?:the|our|a) (?:\w+ )?roof\b|\bwater is (?:trucked|hauled|delivered)\b"),
    ("pump.placement", "out", 3, r"\bpump (?:vault|pit)\b|\bpump\b[^.;,\n¤]{0,25}\b(?:right )?under (?:a|the|our) (?:bedroom|stairs|floor|house|sink|counter|deck)\b"),
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
_CROP = rf"\b(?P<crop>{'|'.join(sorted(CROP_KEYS, key=len, reverse=True))})\b"
_DRIP = r"\b(?:drip|dripline|drippers?|emitters?)\b"
CROP = re.compile(_CROP)
CROPS = (
    re.compile(rf"{_CROP}[^.;\n]{{0,45}}{_DRIP}"),
    re.compile(rf"{_DRIP}[^.;\n]{{0,45}}{_CROP}"),
    re.compile(rf"\bcrop *[:=] *{_CROP}"),
)
