"""Numbers that need more than the words beside them: pressures, volumes, buckets, panels."""

from __future__ import annotations

import re

from calc.site import enquiry_words as words
from calc.site.enquiry_cues import FILL
from calc.site.enquiry_given import of_a_pump
from calc.site.enquiry_model import Context, Token
from calc.site.enquiry_places import _subject as subject_of
from calc.site.enquiry_places import noun
from calc.site.enquiry_supposed import out_of_reach

ON = r"(?:cut(?:s|ting)?[ -]?(?:in|on)|(?:comes?|turns?|kicks?|switch(?:es)?|goes|starts?|clicks?|pump) (?:back )?(?:on|in|up)|(?:comes|kicks|clicks) back(?! (?:off|out|down))|starts? (?:the |our )?pump|starts? it|starts?|(?<!off )on|kick[ -]in|low(?:er)? (?:end|setting)|restarts?|lower)"
OFF = r"(?:cut(?:s|ting)?[ -]?(?:out|off)|(?:shuts?|turns?|kicks?|switch(?:es)?|goes|stops?|cuts|clicks?) (?:back )?(?:off|out|down|of)|stops? it|stops? (?:the )?pump|stops?|off|out|kick[ -]out|high(?:er)? (?:end|setting)|upper|shut ?-?off)"
_ON_LEFT, _OFF_LEFT = (
    re.compile(rf"\b{ON}(?: pressure)?{FILL}"),
    re.compile(rf"\b(?:{OFF}(?: pressure)?|switch opens){FILL}"),
)
_ON_RIGHT = re.compile(
    r" ?(?:cut[ -]?(?:in|on)|on\b(?! (?:the|its|my|our|a) )|start\b|kick[ -]?(?:in|on)|\(on\)|in\b(?! (?:it|the|our|my|with)\b)|when it (?:starts|restarts|comes on|comes back|turns on|goes on|kicks (?:back )?in|cuts in))"
)
_OFF_RIGHT = re.compile(
    r" ?(?:cut[ -]?(?:out|off)|off\b|stop\b|kick[ -]?(?:out|off)|\(off\)|out\b|when it (?:cuts off|stops|goes off|shuts|turns off|cuts out))"
)
_AIR = re.compile(
    rf"(?:pre-?charge\b[^.;\n¤\d]{{0,45}}(?::|\bat\b|\bis\b|\bwas\b)|(?:checked|measured|tested) (?:the )?air\b[^.;\d¤]{{0,60}}?|(?:bladder|pressure tank) (?:has|up to|to)|pumped the (?:pressure )?tank(?: up)? to|pre-?charged?|pre charge|pre-?pressure|pre-?load(?:ed)?|air cushion|nitrogen|gas pressure|pumped (?:it |that |them )?(?:up )?to|charged? (?:is|at|to)|charge|\bair(?: is| at| set to| side| charge)?|bladder (?:at|is|charge)|prefill|pre-?fill|air(?: pressure)? (?:in|inside|of) the (?:vessel|bladder|pressure tank)|air[ -]charge|air pressure|air side|charged|air in (?:it|(?:the |my )?tank)(?: was| is)?|precharge pressure|pumped up with air)(?: (?:in the tank|of the tank|with air|pressure))?{FILL}"
)
_HOT = re.compile(r"\b(?:water ?heaters?|heater|boiler|hot[ -]water|geyser)\b")
_GAUGE = re.compile(r"\b(?:gauges?|manometers?|reads?|reading)\b")
_OF_AIR = re.compile(r"\b(?:air|pre-?\w*charge\w*|tank|vessel|bladder|drained|empty|emptied)\b")
_EXPANSION = re.compile(r"\bexpansion (?:tank|vessel)\b(?:[^.;\n]|(?<=\d)\.(?=\d))*$")
_AIR_RIGHT = re.compile(
    r" ?(?:of )?(?:pre-?charge|pre charge|air\b|of air|charge\b|(?:in (?:it|the (?:\w+ )?(?:tank|vessel|bladder)) )?(?:with|when) (?:the |it )?(?:water|tank|system|vessel)? ?(?:is |was )?(?:drained|empty|emptied|out\b|off\b)|(?:with|when) the pump off and the (?:water|tank) (?:drained|out|empty))"
)
_SET = re.compile(
    rf"(?:set ?-?point|set(?:ting)?(?: pressure)?|pressure (?:wanted|kept|held|required)|constant pressure(?: \w+)?|holds?(?: it)?|holding|adjusted|held|keeps?(?: it)?|frequency|maintains?|constant|controller|steady|pressure set|regulates?|vfd|speed control)(?: (?:of|at|to|pump|is|it|the pressure|pressure|set|a|us|system))*{FILL}"
)
_SET_RIGHT = re.compile(
    r" ?(?:at the pump(?! ?house)|on (?:its|the) display|constant|set ?(?:point|pressure)|steady|all the time)"
)
_SET_NOT = re.compile(r"\b(?:switch|reducer|reducing|prv|relief|valve|regulator|gauge|measured)\b")
_AT_TAP = re.compile(  # two pressures that were measured, of which none is set
    r"\d ?(?:bar|psi|kpa) at (?:the |our )?(?:\w+ )?(?:taps?|shower|house|kitchen|faucet|sink|hose|trough)\b"
)
_RATED = re.compile(
    rf"(?:rated|rating|weakest|max(?:imum)?(?: working)?(?: pressure)?|good for|pressure class|class|only for)(?: (?:part|to|for|at|of|pressure|is))*{FILL}"
)
_PARTS = re.compile(
    r"\b(?:pipes?|poly|hose|fittings?|filter|heater|boiler|line|joints?|valves?|housing|parts?)\b"
)
_SET_SWITCH = re.compile(
    r"\b(?:set|turned|put|adjusted|raised) (?:the |our |my )?(?:pressure )?switch (?:up |back |down |higher )?(?:to|at) $"
)


def pressure(token: Token, near: Context) -> dict[str, float]:
    """{path: weight} of a pressure."""
    found: dict[str, float] = {}
    left, right = near.left[-110:], near.right
    if re.search(r"\b(?:tyres?|tires?) (?:is|are|has|have|takes?|at)\b", left):
        return {}
    gauge = _GAUGE.search(near.before[-70:]) and not _OF_AIR.search(near.before + right[:40])
    if (_AIR.search(left) or _AIR_RIGHT.match(right)) and not gauge:
        hot = _EXPANSION.search(near.before[-90:]) and _HOT.search(near.mail)
        return {"hot.precharge" if hot else "pressure_tank.precharge": 8}
    if token.unit in {"m water", "ft water"}:
        return _head(token, near)
    if _SET_SWITCH.search(left):  # which of its two ends?
        return {"pump.cut_out": 5, "pump.cut_in": 5}
    on, off = _on_or_off(left, right)
    cycle = re.search(
        r"\b(?:switch(?:es)?|cut|cuts?|comes? on|turns? on|kicks?|shuts?|pump|cycles?|starts?|stops?)\b",
        near.before + near.after + near.subject.lower(),
    )
    if on and cycle:
        found["pump.cut_in"] = 6
    elif off and cycle:
        found["pump.cut_out"] = 6
    if (
        (_SET.search(left) or _SET_RIGHT.match(right))
        and not _SET_NOT.search(near.before[-50:])
        and not _AT_TAP.search(near.before + near.after)
        and not found
    ) and re.search(
        r"pump|constant|control|speed|vfd|inverter|drive|system|booster|set ?-?point|set pressure|pressure set",
        near.before + near.after,
    ):
        found["pump.set"] = 6
    rated = _RATED.search(left) or re.match(r" ?(?:rated|rating|max\b|pressure rating)", right)
    if rated and "pump" not in near.left[-40:]:
        if words.PRESSURE_TANK.search(near.before):
            return {"pressure_tank.rating": 6}
        if _PARTS.search(near.before + near.right):
            return {"pipes.weakest": 6}
    return found


def seldom(near: Context, weights: dict[str, float]) -> dict[str, float]:
    """Of the pressures that cues tell, those whose thing the letter speaks of at all."""
    said = near.before + near.after
    drip = re.search(r"\bdrip|\bemitters?\b|\btapes?\b", said + near.subject)
    return {
        path: weight
        for path, weight in weights.items()
        if (_HOT.search(near.mail) if path == "hot.relief" else drip or path == "drip.pressure")
    }


def _on_or_off(left: str, right: str) -> tuple[bool, bool]:
    """Whether a pump comes on, or goes off, at a pressure."""
    on = bool(_ON_LEFT.search(left) or _ON_RIGHT.match(right))
    off = bool(_OFF_LEFT.search(left) or _OFF_RIGHT.match(right))
    beside = _BESIDE.search(left)
    first = re.fullmatch(r" ?(?:on|off|in|out) ", left) and (
        _ON_RIGHT.match(right) or _OFF_RIGHT.match(right)
    )  # "20 on 40 off": each label behind its number
    if beside and not first:  # "cut out 50 psi cut in 35": each label before its own number
        return beside["how"] in {"in", "on"}, beside["how"] in {"out", "off"}
    if _OFF_RIGHT.match(right) and not _OFF_LEFT.search(left):
        on = False
    elif _ON_RIGHT.match(right) and not _ON_LEFT.search(left):
        off = False
    if on and off:
        on = _last(_ON_LEFT, left) > _last(_OFF_LEFT, left)
        off = not on
    return on, off


_BESIDE = re.compile(
    r"\b(?:cuts?[ -]?|kicks? |comes? |turns? |goes )(?P<how>in|on|out|off)(?: (?:pressure|at|is|of|about))*[ :=]*$"
)


def _last(pattern: re.Pattern[str], said: str) -> int:
    return max((one.start() for one in pattern.finditer(said)), default=-1)


def _head(token: Token, near: Context) -> dict[str, float]:
    """Metres or feet of head: of a fall where water runs by gravity, of a pump none of ours."""
    if re.search(r"\bpump\b|rated|max|shut|lift", near.before[-60:]):
        return {}
    if re.search(r"gravity|spring|fall|drop|tank", near.before + near.after + near.subject):
        token.unit = token.unit.split()[0]
        token.sign = -1.0
        return {"way.climb": 5}
    return {}


_SHARE_OF = re.compile(
    r"\b(?:third|half|quarter|fifth|tenth|fraction) of (?:its|the|that|those)(?: \w+)? $"
)


_ARRIVES = re.compile(
    r" ?(?:gets?|reach(?:es)?|arrives?|makes it) (?:to |at |into )?(?:the|our|my)\b"
)


def _of_it(near: Context) -> bool:
    """Whether a flow is a whole of which a share is told, or what of it arrives somewhere."""
    return bool(_SHARE_OF.search(near.left[-30:]) or _ARRIVES.match(near.right))


def _pressed(token: Token, near: Context, found: dict[str, float]) -> dict[str, float] | None:
    """What a pump gives, by its words or by a pressure beside it; None where it may be a source's."""
    pumped = _pumped(token, near)
    if pumped is None and of_a_pump(near):
        return {path: weight for path, weight in found.items() if path != "water.yield"}
    return pumped


def flow(token: Token, near: Context, found: dict[str, float]) -> dict[str, float]:
    """A yield only where the words are of a source; what drips is of a dripper."""
    litres = token.low * {"gph": 3.785, "L/h": 1.0}.get(token.unit, 1000.0)
    if litres <= _DRIPS and _DRIPPERS.search(near.before[-90:]):
        return {"drip.dripper": 9}
    pumped = _pressed(token, near, found)
    if pumped is not None:
        return pumped
    ours = near.subject in {"WELL", "SPRING", "CREEK"} and _IT_GIVES.search(near.before)
    if (ours or _WE_GET.search(near.before)) and not _USED.match(near.right):
        return {**found, "water.yield": 5}
    if _UP_THERE.match(near.right) or _of_it(near):
        return {}
    if "water.yield" not in found:
        who = subject_of(near.left) or noun(near.left) or subject_of(near.before)
        if who in {"WELL", "SPRING", "CREEK"} and not re.search(
            r"\bpump\b", near.left[-30:] + near.right[:12]
        ):
            return {**found, "water.yield": 4}
        return found
    if _NO_SOURCE.search(near.before[-60:]) or _TAP_FLOW.search(near.before[-60:]):
        return {}
    if re.search(r"\byield|\brecharge|\brecover", near.left[-45:] + near.right[:12]):
        return found
    if (
        re.search(r"\b(?:flow|output|supply|gives)\b[^.;\n]{0,12}$|\bit\b[^.;]{0,20}$", near.before)
        and re.search(r"\b(?:spring|well|bore)", near.mail)
        and _subject(token, near) != "PUMP"
        and not re.search(r"pump|hose|shower|tap", near.before)
    ):
        return found
    own = subject_of(near.left)
    who = own or subject_of(near.before) or _subject(token, near)
    close = noun(near.right.split(",")[0][:30], last=False)
    users = {"PUMP", "HOUSE", "PANELS", "PTANK"}
    if (own in {*users, "TANK"} or who in users) and close not in {"WELL", "SPRING", "CREEK"}:
        return {}
    if _USED.match(near.right):
        return {}
    return found if who or close else {}


def of_wells(near: Context, found: dict[str, float]) -> dict[str, float]:
    """Without the steady flow of a well's test where the letter has no well."""
    if _WELLS.search(near.mail):
        return found
    return {path: weight for path, weight in found.items() if path != "well.steady"}


def _pumped(token: Token, near: Context) -> dict[str, float] | None:
    """Of a pump, its curve, a tap or a test of a well; None where it is none of these."""
    if _AT_HEAD.match(near.after) and re.search(r"\b(?:curve|pump)\b", near.mail):
        return {}  # a point of a pump's curve
    if _SPRAYS.search(near.before[-60:]) or _VALVE.match(near.right):
        return {}
    if _DREW.match(near.after) or _DRAWN.search(near.before):
        return {"well.tested": 8}
    if _pump_gives(token, near) or _AT_TAP_FLOW.match(near.right):
        return {}
    pumped = re.search(r"\b(?:pumps?|boosters?|label)\b", near.before + near.subject.lower())
    if pumped and (_AT_PRESSURE.match(near.after) or _MOST.search(near.left)):
        return {"pump.most_flow": 6}
    return None


_SPRAYS = re.compile(r"\b(?:sprinklers?|micro ?-?(?:sprays?|jets?)|nozzles?)\b[^.;\n]{0,20}$")
_VALVE = re.compile(r" ?(?:float|ball)[ -]?(?:valves?|cocks?)\b")
_WELLS = re.compile(r"\b(?:wells?|bore|bore ?holes?|hole)\b")
_AT_HEAD = re.compile(
    r" ?(?:at|@|against) \d[\d.,]* ?(?:m|ft|feet|met(?:re|er)s?|')(?: |\b)(?!deep)"
)
_DREW = re.compile(
    r",? (?:it|the level|the water|level|water)(?: level)? (?:drew|draws|dropped|drops|fell|went|goes|settled|pulled|came|sank|stood) (?:down|to|at)\b"
)
_DRAWN = re.compile(
    r"\b(?:pumping(?: level)?|drew down|drawn down|dynamic(?: level)?|dwl|pwl)\b[^.;]{0,30}\d ?[a-z']+ (?:at|while pumping|with) $"
)
_DRIPS = 12.0  # L/h, the most that one dripper gives; common practice, no source
_DRIPPERS = re.compile(r"\b(?:drippers?|emitters?)\b[^.;\n]*$")
_AT_PRESSURE = re.compile(
    r" ?(?:at|@) (?:(?:its |the |a )?set (?:pressure|point)|(?:¤|\d+(?:\.\d)?) ?(?:psi|bar|kpa))"
)
_IT_GIVES = re.compile(
    r"\bit (?:only |then |still |now )?(?:gives|gave|yields|yielded|makes|made|delivers|brings|brought|runs at|ran at)\b(?:(?!\b(?:pump|tap|hose|tank|shower|house|needs?|uses?)\b)[^.;\n]){0,70}$"
)
_WE_GET = re.compile(
    r"\b(?:spring|well|bore ?hole|bore|seep)\b[^.;]*\b(?:i|we) (?:get|have|measure|collect|catch)(?: about| some| only| around)? $"
)
_NO_SOURCE = re.compile(  # what a pump is rated for, or must give
    r"\bmax(?:imum)?\.? (?:flow|output|delivery)\b[^.;]{0,12}$|\b(?:(?<!driller )rated|rating|name ?plate|label|must|has to|have to|should|need(?:s|ed)? to|ought to|required|demand|peak|wants?)\b[^.;\n]{0,25}$"
)


def _subject(token: Token, near: Context) -> str:
    """What the sentences before speak of; a pump that there is none of gives nothing."""
    before = near.mail[max(0, token.start - 90) : token.start]
    none = near.subject == "PUMP" and _NO_PUMP.search(before)
    return "" if none else near.subject


_NO_PUMP = re.compile(r"\b(?:no|without(?: an?| any)?) pumps?\b[^.;]{0,10}[.;\n][^.;]*$")


def _pump_gives(token: Token, near: Context) -> bool:
    """Whether "it delivers" is said of the pump of the sentence before."""
    begin = token.start - len(near.before)
    before = near.mail[max(0, begin - 70) : begin]
    if _IT_DOES.match(near.before):
        before = re.split(r"[.;!?\n] ", near.mail[max(0, begin - 130) : begin].rstrip(" .\n"))[-1]
        return "pump" in before and not re.search(r"\b(?:well|bore\w*|spring|seep)\b", before)
    return bool(_IT_PUMPS.match(near.before)) and "pump" in before


_IT_DOES = re.compile(r"\s*it (?:does|gives|makes|manages|puts out|is good for)\b")
_IT_PUMPS = re.compile(r"\s*it (?:delivers|pumps|lifts|moves)\b")
_UP_THERE = re.compile(r" ?(?:up|down|out) (?:there|here)\b")
_AT_TAP_FLOW = re.compile(
    r" ?(?:at|in) (?:the |our |my )?(?:kitchen |bathroom |top |bath )?(?:tap|faucet|sink|shower|hose|kitchen|house|bathroom|barn|trough|top|far end|outlet)\b| ?(?:up|down|out) (?:there|here)\b| ?(?:upstairs|indoors|inside)\b"
)
_TAP_FLOW = re.compile(
    r"\bflow(?: \w+)? (?:at|in|from|out of) (?:the |our |my )?(?:\w+ )?(?:taps?|faucets?|sink|shower|hose|kitchen|house|bathroom|trough)\b[^.;]{0,12}$"
)
_MOST = re.compile(
    r"\b(?:never|not|no) more than (?:about )?$|\bat most $|\bmax(?:imum)?(?: of)? $"
)
_USED = re.compile(
    r" ?(?:(?:float|ball)[ -]?(?:valve|cock)|micro|shower|hose|pump|head|sprinkler|tap|faucet|at (?:the )?(?:tap|house|shower|hose|sink|\d|¤)|each|dripper|emitter|nozzle|per )"
)


_SYSTEMS = {12, 24, 36, 48, 110, 115, 120, 220, 230, 240, 380, 400}  # V; common practice, no source
_AT_MOST = re.compile(
    r"\b(?:at most|up to|maximum(?: of)?|max\.?|no more than|limit(?: is| of)?) $"
)
_CELLS = {2, 4, 6, 8}  # V of one battery of several; common practice, no source
_SOME = re.compile(r"\d ?(?:x|pcs|pieces)(?: of)? ?$")


_MOST_OF_LAST = re.compile(  # "10 gpm max 230 v": the most of the number before
    r"\d ?(?:gpm|l/min|lpm|psi|bar|ft|m|hp|kw|w|a|amps?) max(?:imum)?,? ?$"
)


def voltage(token: Token, near: Context, weights: dict[str, float]) -> dict[str, float]:
    """A system's voltage that no word tells; that of one of several batteries is none."""
    if _SOME.search(near.left[-10:]):
        return {}
    if _MOST_OF_LAST.search(near.before[-30:]):
        weights.pop("power.limit", None)
    if re.match(r" ?(?:mains|grid|supply)\b", near.right) and out_of_reach(
        near.mail, token.end, token.end + 6
    ):
        return {}
    said = near.left[-12:] + near.right[:6]
    if _AT_MOST.search(near.left[-20:]):
        return {path: weight for path, weight in weights.items() if path != "power.voltage"}
    if token.low in _CELLS and re.match(r"[ -](?:[a-z-]+ ){0,3}batteries\b", near.right):
        return {}  # "two 6 volt batteries": of one of them
    known = token.low in _SYSTEMS and not re.search(
        r"voc|at most|up to|max|open|limit|pv |^ ?panel", said
    )
    return {"power.voltage": 4} if known and not weights else weights
