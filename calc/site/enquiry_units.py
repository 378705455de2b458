"""Units of a letter, by the ways in which they are written and said."""

from __future__ import annotations

import re

# (kind, unit as ``calc.units`` reads it, pattern); the first that fits is taken
_WATER = r"(?: of ?(?:head|water(?! level| line| table| tank| is| was)|h2o)| ?(?:head|h2o|water(?= ?(?:column|gauge|pressure|head|[,.;)\n]|$))))\b"
_PER = r"(?: ?/ ?| per | an? | the | each | every |per |[ -]per[ -])"
_WHO = r"(?:person|head|capita|pupil|student|child|guest|resident|patient|bed|user|learner|boarder|employee|worker|member|visitor|inhabitant|soul)\b"
_GAL, _L = r"(?:(?:us )?gal(?:lon|on|l?an)?s?\b)", r"(?:lit(?:re|er)s?|ltrs?|lts?|l)"
_M3, _DAY = r"(?:m3|cubic met(?:re|er)s?|cbm|cu\.? ?m)", r"(?:day|d|24 ?h(?:ours|rs)?)\b"
_MIN, _H = r"(?:min(?:ute)?s?|m)\b", r"(?:h(?:ou)?rs?|h)\b"
_DEFINED = (
    ("pressure", "m water", rf"(?:met(?:re|er)s?|mtrs?|m){_WATER}"),
    ("pressure", "ft water", rf"(?:feet|foot|ft|'){_WATER}"),
    ("pressure", "psi", r"(?:psi|psig|p\.s\.i\.?|lbs?/sq ?in|pounds per square inch|(?:lbs?|pounds?)(?: of)? pressure|lbs? per sq(?:uare)?"
                        r"[ .]*in(?:ch)?)\b"),
    ("pressure", "psi", r"(?:lbs?|pounds?)\b(?! (?:of )?(?:chlorine|salt|feed|weight|hay|concrete))"),
    ("pressure", "bar", r"(?:bars?|barg)\b"), ("pressure", "kPa", r"(?:kpa|kilopascals?)\b"),
    ("pressure", "kgf/cm²", r"kg/cm2\b"),
    ("flow", "gpm", rf"{_GAL} (?:in|every|each|by|on|for|at) (?:(?:a|one|1|the|each) )?{_MIN}|"
                    rf"(?:(?:us )?g\.?p\.?m\.?\b|{_GAL}{_PER}{_MIN})"),
    ("flow", "qt gpm", rf"(?:quarts?|qts?){_PER}{_MIN}"),
    ("flow", "L/min", rf"{_L} (?:in|every|each|by|on|for|at) (?:(?:a|one|1|the|each) )?{_MIN}|"
                      rf"(?:l\.?p\.?m\b|{_L}{_PER}{_MIN}|l/m\b)"),
    ("flow", "L/s", rf"(?:lps\b|{_L}{_PER}s(?:ec(?:ond)?)?\b)"),
    ("flow", "gph", rf"(?:{_GAL} (?:in|by|on|at) (?:an|one|1|the) {_H}|gph\b|{_GAL}{_PER}{_H})"), ("flow", "L/h", rf"(?:{_L} (?:by|(?:in|by|on|at) (?:an|one|1|the)) {_H}|lph\b|{_L}{_PER}{_H})"),
    ("flow", "m³/h", rf"(?:cmh\b|{_M3}{_PER}{_H})"),
    ("each", "gal/day", rf"{_GAL}(?: of water)?,? (?:each|apiece)(?: one)?,?(?:{_PER}{_DAY}| daily\b)|{_GAL}{_PER}{_WHO}|"
                         rf"{_GAL}{_PER}{_WHO}(?: and |{_PER}| ?, ?){_DAY}|{_GAL}{_PER}{_DAY}(?:{_PER}| and )(?:per )?{_WHO}"),
    ("each", "L/day", rf"{_L}(?: of water)?,? (?:each|apiece)(?: one)?,?(?:{_PER}{_DAY}| daily\b)|{_L}{_PER}{_WHO} (?:daily|every day)\b|"
                       rf"{_L}{_PER}{_WHO}(?: and |{_PER}| ?, ?){_DAY}|{_L}{_PER}{_DAY}(?:{_PER}| and )(?:per )?{_WHO}"),
    ("daily", "gal/day", rf"(?:gpd\b|{_GAL}(?: of water)?{_PER}{_DAY}|{_GAL}(?: of water)? (?:daily|(?:in|by|at) (?:(?:a|one|the|every) )?day)\b)"),
    ("daily", "L/day", rf"(?:lpd\b|{_L} the day\b|{_L}(?: of water)?{_PER}{_DAY}|{_L}(?: of water)? (?:daily|(?:in|by|at) (?:(?:a|one|the|every) )?day)\b)"),
    ("daily", "m³/day", rf"{_M3}(?: of water)?{_PER}{_DAY}|{_M3}(?: of water)? (?:daily|in (?:a|one) day)\b"),
    ("area", "acre", r"acres?\b"), ("area", "ha", r"(?:ha|hectares?|hectars?)\b"),
    ("area", "m²", r"(?:m2|sqm|sq\.? ?m(?:et(?:re|er)s?|trs?)?|square met(?:re|er)s?|m\^2)\b"),
    ("area", "ft²", r"(?:ft2|sqft|sq\.? ?f(?:ee|oo)?t|square f(?:ee|oo)t|ft\^2|sf)\b"),
    ("flow", "imp gph", rf"(?:imp(?:erial)?|uk)\.? {_GAL}(?:{_PER}| (?:in|every|each) (?:a |one |an )?){_H}"),
    ("flow", "imp gpm", rf"(?:imp(?:erial)?|uk)\.? {_GAL}(?:{_PER}| (?:in|every|each) (?:a |one )?){_MIN}"),
    ("volume", "imp gal", rf"(?:imp(?:erial)?|uk)\.? {_GAL}"),
    ("volume", "m³", rf"(?:{_M3}\b|m\^3|kl\b|cubes\b)"), ("volume", "gal", _GAL),
    ("volume", "L", rf"{_L}\b(?!/)"),
    ("energy", "kWh", r"kwh\b"), ("energy", "Wh", r"(?:wh|watt[ -]?hours?)\b"),
    ("charge", "Ah", r"(?:ah|a\.h\.|amp[ -]?hours?|amphrs?)\b"),
    ("charge", "Ah", r"amp(?:ere)?s?[ -]hours?\b"),
    ("power", "kW", r"(?:kw|kilowatts?)p?\b"), ("power", "hp", r"(?:hp|horse ?power)\b"),
    ("power", "W", r"(?:w(?!/)|watts?|wp|watters?)\b"), ("voltage", "V", r"(?:v|vdc|volts?)\b(?:\.| ?dc\b)?"),
    ("current", "A", r"(?:(?<=\d)a\b|a\b(?= ?(?:mppt|pwm|charge|controller|max|solar|[,.;)\n]|$))|amps?\b)"),
    ("length", "mm", r"(?:mm|mil|mills?|millimet(?:re|er)s?)\b"), ("length", "cm", r"(?:cms?|centimet(?:re|er)s?)\b"),
    ("length", "km", r"(?:kms?|kilomet(?:re|er)s?|klicks?)\b"),
    ("length", "mi", r"miles?\b"), ("length", "yd", r"(?:yards?|yds?)\b"),
    ("length", "m", r"(?:met(?:re|er)s?|mters?|metr?es|mtrs?|m)\b(?![²³/]|2|3)"),
    ("length", "ft", r"(?:ft|feet|foot(?![ -]?valve)|foots|feets|fet)\b|'(?![\w'])"),
    ("length", "in", r"(?:inch(?:es)?|zoll|pouces?|pulgadas?|inchs|in\b\.(?! (?!sch|poly|pvc|cpvc|pipe|pex|copper|hdpe|mdpe|black|steel|dia|galv|line|hose|pe\b|plastic|blue|well|bore|casing|suction|inside|outside|id\b|od\b)[a-z])|in\b(?! the| a | my| our| height| elevation| level| depth| total| all| and| about| winter| summer"
                     r"| series| parallel| case| each| \d)|\"|''(?!'))"),
    ("time", "s", r"(?:s|secs?|seconds?)\b"), ("time", "min", r"(?:mins?|minutes?)\b"),
    ("time", "h", r"(?:h|hrs?|hours?)\b"), ("time", "days", r"days?\b"),
    ("time", "weeks", r"weeks?\b"), ("rise", "m", r"(?:vertical|height|altitude) (?:met(?:re|er)s?|m)\b"), ("rise", "ft", r"vertical (?:feet|ft)\b"),
    ("long", "", r"(?:months?|years?|yrs?|yr)\b"),
    ("percent", "%", r"(?:%|per ?cent\b)"),
    ("temperature", "°C", r"(?:°|deg(?:rees?)?) ?c(?:elsius)?\b|celsius\b|(?<=\d )c\b(?!['-])|(?<=\d)c\b(?!['-])"),
    ("temperature", "°F", r"(?:°|deg(?:rees?)?) ?f(?:ahrenheit)?\b|fahrenheit\b|(?<=\d )f\b(?!['-])|(?<=\d)f\b(?!['-])"),
    ("angle", "°", r"(?:°|deg(?:rees?)?\b)"),
)  # fmt: skip
UNITS = tuple((kind, unit, re.compile(pattern)) for kind, unit, pattern in _DEFINED)
