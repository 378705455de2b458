"""Facts told in words, in more ways: rows as those of ``enquiry_words``."""

from __future__ import annotations

_NUMBER = r"(?:\d+|an?|one|two|three|four|five|six|eight|ten|twelve)"

HINTS = (
    # the source
    ("water.kind", "spring", 3, r"\b(?:have|got|has|use|using|found|from|off|at|of|there's|with) this (?:little |small |nice |good )?spring\b(?! (?:we|i|it|has been|was|the|and (?:summer|fall)))"),
    ("water.kind", "well", 2, r"\b\d[\d./]*[ -]?(?:inch|in|\"|mm)[ -](?:drilled |cased |steel )?(?:bore|well)\b(?! of)|\b\d[\d./]* ?(?:\"|inch|in|mm) (?:steel |pvc )?casing\b"),
    # power
    ("power.source", "sun", 2.5, rf"\b{_NUMBER} (?:solar )?panels?(?:,| of| at| rated| is)* (?:about )?\d+ ?(?:w|watts?)\b|\b{_NUMBER} \d+ ?-?(?:w|watts?) panels?\b|(?:^|[.;\n] ?)panels? (?:tilt|tilted|facing|at \d+ ?°)"),
    ("power.source", "grid", 3, r"\b(?:power|electricity|current|supply)(?: here| there)?(?:'s| is) (?:the |from the |off the |by |on )?(?:grid|mains|utility)\b(?! (?:down|out|off|far|no|not|\d|too|at the road))"),
    ("power.source", "grid", 3, r"\b(?:\d+ ?(?:v|volts?)|power|juice|electric(?:ity)?|current|service) (?:is |comes )?(?:from|off|by) the (?:co-?op|rec|utility|power company|electric company)\b"),
    ("power.source", "grid", 3, r"\b(?:single|three|3|one|two|split)[ -]phase (?:grid|mains|utility)\b(?! (?:is|isn't|not|no)\b)"),
    ("power.source", "grid", 2.5, r"(?:^|[.;\n] ?)(?:on )?(?:grid|mains|grid power|mains power)(?= ?(?:[.;\n]|$))"),
    ("power.source", "grid", 3, r"\b(?:110|115|120|220|230|240|380|400|415) ?(?:v|volts?)(?: ac)? (?:from the )?(?:grid|mains|utility)\b"),
    ("power.source", "grid", 2.5, r"\b(?:she|he|they|client|customer)(?:'s| has|'ve| have)(?: got)? (?:the )?mains(?: power| electricity| electric)\b"),
    ("power.source", "sun", 3, r"\b(?:power|electricity|current|supply)(?: here| there)?(?:'s| is) (?:the |from the |off the |by the |all )?(?:solar|sun)\b"),
    # the pump
    ("pump.placement", "out", 3, r"\bpump(?:'s| is| was)? an? surface (?:one|type|model|job|unit|set|pump)\b"),
    ("pump.control", "speed", 3, r"\b(?:variable|frequency|speed|vari) ?-?drive\b(?! (?:way|shaft))"),
    ("pump.control", "switch", 2.5, r"\b(?:the|our|its|my|pump) switch (?:clicks|chatters|clatters|rattles|trips|flicks|snaps)\b"),
    # pipes
    ("pipes.held", "laid", 3, r"\b(?:pipe|poly|hose|stuff|line|it|pvc|hdpe)\b[^.;\n]{0,30}\b(?:already |just |all )?laid (?:out )?(?:on|along|over) (?:the |top of the )?(?:ground|grass|surface)\b"),
    ("pipes.held", "buried", 3, r"\b(?:so|it|it's|its|pipe|line|all)(?: is| was|'s)? (?:all )?buried (?:about |some )?(?:an?|one|two|three|1|2|half|[\d.]+) ?(?:foot|feet|met(?:re|er)s?|ft|m|cm|inches)\b"),
    # stores
    ("store.fills", "none", 4, r"\b(?:filled|fed|supplied) (?:only |solely )?(?:by|from|off) (?:the|our) (?:\w+ )?roof (?:alone|only|and nothing else)\b"),
    # drip
    ("drip.filter", "yes", 3, r"\bfilter(?:'s| is| was)? (?:already )?(?:on (?:it|there|the line|them)|in (?:there|line|it))\b"),
    ("drip.filter", "yes", 3, r"\bthere(?:'s| is) (?:already )?an? (?:\w+ )?filter (?:on|before|ahead|in front)\b"),
)  # fmt: skip
