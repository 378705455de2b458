"""More words as they are misspelt or spoken, and more phrases put right; of ``enquiry_spelling``."""

from __future__ import annotations

import re

MISSPELT = {
    "emiter": "emitter", "emiters": "emitters", "emmiter": "emitter", "emmiters": "emitters", "emmitter": "emitter",
    "emmitters": "emitters", "dripers": "drippers", "driper": "dripper", "tomatos": "tomatoes", "potatos": "potatoes",
    "tomatoe": "tomato", "allready": "already", "alredy": "already", "layed": "laid", "layd": "laid", "goin": "going",
    "wen": "when", "whn": "when", "terlet": "toilet", "terlets": "toilets", "toliet": "toilet", "toliets": "toilets",
    "sed": "said", "agian": "again", "heffers": "heifers", "heffer": "heifer", "heiffers": "heifers", "calfs": "calves",
    "faucit": "faucet", "fawcet": "faucet", "submersable": "submersible", "elavation": "elevation", "elevaton": "elevation",
    "diaphram": "diaphragm", "diafram": "diaphragm", "consrete": "concrete", "upstars": "upstairs", "livin": "living",
    "runnin": "running", "usin": "using", "pumpin": "pumping", "comin": "coming", "hangin": "hanging", "sittin": "sitting",
    "puttin": "putting", "gettin": "getting", "drinkin": "drinking", "waterin": "watering", "thinkin": "thinking",
    "suckshun": "suction", "sucktion": "suction", "suctoin": "suction", "strait": "straight", "strate": "straight",
    "gravaty": "gravity", "gravitty": "gravity", "filtr": "filter", "filtar": "filter", "sprinklr": "sprinkler",
}  # fmt: skip
PHRASES = tuple((re.compile(pattern, re.I), instead) for pattern, instead in (
    (r"\b(lit(?:re|er)s?|gallons?) for (?:the |each |every |an? )?(hour|minute)\b", r"\1 per \2"),
    (r"\b(?:an?|one) (foot|met(?:re|er)|yard) an(?:d)? an? half\b", r"1.5 \1"),
    (r"\b(spacing(?: is| of)?|every|spaced) (?:a|one) (foot|met(?:re|er))\b(?!-| and\b)", r"\1 1 \2"),
    (r"\b(gal(?:lon)?s?) \((imperial|imp|uk)\.?\)", r"\2 \1"),
    (r"(?<![\w.])([1-9]) (\d{3}) ?(?:w|watts?)\b(?= (?:solar )?(?:panels?|modules?))", r"\1 x \2w"),
    (r"(?<![\w.])([1-9]) (\d{2,3}) ?(?:w|watts?)\b(?= (?:solar )?(?:panels?|modules?))", r"\1 x \2w"),
    (r"\b(up|down)[ -]hill\b", r"\1hill"),
    (r"\b(?:an?|one) (gallon|litre|liter) and an? half(?= (?:a|an|per|every|each)\b)", r"1.5 \1s"),
    (r"\b(?:an?|one) (gallon|litre|liter) and an? quarter(?= (?:a|an|per|every|each)\b)", r"1.25 \1s"),
    (r"\b(lit(?:re|er)s?) in (?:a |one |the )?second\b", r"\1 per second"),
    (r"\bpoli?[ey]?tilene?\b", "polyethylene"),
    (r"\bmoh\b", "m above sea level"),
    (r"\b(\d{1,3})\.(\d{3}),00\b", r"\1\2"),
    (r"\bN\.[SE]\.(?= ?:?\d)", "static level"),
    (r"\bN\.D\.(?= ?:?\d)", "pumping level"),
    (r"(?<=\d)( ?(?:in|inch|mm|\")) cu\b(?=[ ,.;])", r"\1 copper"),
    (r"\bpressure reduce valve\b", "pressure reducing valve"),
    (r"\bunlevel(?= (?:of|in|is|from)\b)", "difference of height"),
    (r"\b(me|house|up|down|ft|feet|m|meters|metres|sinks?|showers?|toilets?) an (?=my\b|\d|one\b|two\b|three\b|the\b)", r"\1 and "),
))  # fmt: skip
