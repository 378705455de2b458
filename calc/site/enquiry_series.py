"""What is counted about panels, pumps and the suction: strings, days, starts, bends."""

from __future__ import annotations

import re

from calc.site.enquiry_noise import negated
from calc.site.enquiry_numbers import FEW, value

_SERIES = tuple((path, re.compile(pattern)) for path, pattern in (
    ("power.series", rf"(?<![\w¤-])({FEW}) (?:panels|modules) per string\b"), ("power.series", rf"\bstrings? ?x ({FEW}) (?:panels|modules)\b"),
    ("power.series", r"\b(\d{1,2}) ?s ?\d{1,2} ?p\b"), ("power.strings", r"\b\d{1,2} ?s ?(\d{1,2}) ?p\b"),
    ("power.series", rf"(?<![\w¤-])({FEW}) (?:panels|modules)\b[^.;,\n\d¤]{{0,35}}\bin series\b(?! ?(?:,|and|of|or))"),
    ("power.strings", rf"(?<![\w¤-])({FEW}) ?x ?\d{{2,3}} ?w(?:att)?s?(?: \w+)?,? in parallel\b"),
    ("power.series", rf"(?<![\w¤-])({FEW}) (?:\d{{2,3}}[ -]?w(?:att)?s? )(?:\w+ )?(?:panels|modules),? (?:all |wired |connected )*in series\b"),
    ("power.series", rf"(?<![\w¤-])({FEW}) ?x ?\d{{2,3}} ?w(?:att)?s?(?: \w+)?,? in series\b"),
    ("power.series", rf"(?<![\w¤-])({FEW})(?: (?:of them|panels?|modules?|¤+))? (?:wired |connected |hooked up )?in series\b(?! and (?:in )?parallel)"),
    ("power.series", rf"(?<![\w¤-])({FEW}) (?:[a-z]+ )?(?:panels|modules)\b[^.;\n¤]{{0,30}}(?:\beach|\d ?w|watts?|wired|connected|them)\b[ ,]*(?:all |and |wired |connected )*in series\b(?!,? (?:of|and|or) )"),
    ("power.series", rf"\bin series[ ,:(]+({FEW})\b(?! ?(?:w|v|strings?|parallel))"),
    ("power.series", rf"\bstrings? of ({FEW})(?! ?(?:w|v)\b)"),
    ("power.series", rf"\ball ({FEW}) (?:\w+ ){{0,4}}in (?:one|a|a single) (?:series )?string\b"),
    ("power.series", rf"\b({FEW}) in each\b"),
    ("power.series", rf"(?<![\w¤-])({FEW}) (?:\d{{2,3}}[ -]?w(?:att)?s? )?(?:\w+ )?(?:panels|modules)(?: of \d+ ?w\w*)?,? (?:all |wired |connected |put )*(?:(?:in|as) (?:one|a|a single) (?:series )?string\b|in series\b(?! and (?:in )?parallel))"),
    ("power.strings", r"\b(one|single) (?:series )?string\b(?! lights)"),
    ("power.series", rf"(?<![\w¤-])({FEW}) (?:panels? )?(?:in (?:a|each|one|the|every)|per) string"),
    ("power.strings", rf"(?<![\w¤-])({FEW}) (?:parallel )?strings?\b(?! lights)"),
    ("power.strings", rf"(?<![\w¤-])({FEW}) (?:strings? |panels? |of them )?(?:wired |connected )?in parallel\b(?! pumps)"),
    ("rain.dry_count", rf"(?<![\w¤-])({FEW}) dry months\b"),
    ("power.strings", rf"(?<![\w¤-])({FEW}) (?:\d{{2,3}}[ -]?w(?:att)?s? )?(?:solar )?(?:panels|modules)(?: of \d+ ?w\w*)?,? (?:all |both |wired |connected )*(?:in parallel|side by side)\b"),
    ("power.strings", rf"\bpanels ({FEW}) of \d+ ?w\w*,? (?:all |wired |connected )*in parallel\b"),
    ("power.series", rf"(?<![\w¤-])({FEW}) (?:panels|modules) (?:(?:to|in|on|for) (?:the|an?|each|every|one) string|each (?:one|string)?(?= ?[,.;]))"),
    ("power.series", rf"(?<![\w¤-])({FEW}),? (?:of \d+ ?-?w\w*,? )?(?:all )?in series\b(?! and)"),
    ("pump.starts", rf"(?<![\w¤-])({FEW}) starts ?/ ?h(?:r|our)?\b"),
    ("pump.count", rf"(?<![\w¤-])({FEW}) (?:identical|equal|same|matching|twin) (?:\w+ ){{0,2}}(?:boosters|submersibles)\b"),
    ("pump.count", rf"(?<![\w¤-])({FEW}) pumps(?: that are)? (?:the same|alike|of a kind)\b"),
    ("pump.starts", rf"(?<![\w¤-])({FEW}) (?:starts|times|cycles|start-ups)(?: allowed)? (?:an|per|/|each|a) ?(?:hour|hr|h)\b"),
    ("pump.starts", rf"\bstarts?(?: allowed| permitted)(?: are| is|:)*(?: up to| max\w*)? ({FEW})(?= (?:per|an|a|in one|in an|/) ?(?:hour|h)\b|/h)"),
    ("pump.starts", rf"\bstarts?\b[^;\n]{{0,60}}\b(?:allows?|permits?|limit is|maximum is|max is|not more than|no more than|at most) ({FEW})(?= ?(?:[.,;!?\n]|$)| (?:starts|times|per|an|a)\b)"),
    ("pump.starts", rf"\bstarts? (?:per|an|a|each|in an) hour\b[^.;\n\d]{{0,12}}\b(?:no more than|not more than|at most|max\w*|up to|limited to|not over|under) ({FEW})\b"),
    ("power.fail", rf"(?:fail\w*|live with|without water|short|run dry|empty)\b[^.;\n]{{0,30}}? ({FEW}) days (?:a|per|each|every|in a|in the) year\b"),
    ("power.fail", rf"(?<![\w¤-])({FEW}) days (?:a|per|each|every|in a|in the) year\b[^.;\n]{{0,20}}(?:fail\w*|without water|short|empty|dry)"),
    ("power.strings", rf"(?<![\w¤-])({FEW}) (?:pieces|panels|modules|pcs)[^.;\n]{{0,25}}, all in parallel\b"),
    ("suction.bends", rf"\b(?:draws?|sucks?|pulls?)\b[^;\n]{{0,90}}?(?<![\w¤-])({FEW}) (?:90[ °]*(?:deg\w*)? )?(?:elbows?|bends?)\b"),
    ("fall.breaks", rf"(?<![\w¤-])({FEW}) (?:\w+ )?break[ -]?pressure (?:tanks?|box(?:es)?|chambers?)\b"),
    ("fall.breaks", rf"(?<![\w¤-])({FEW}) (?:\w+ )?pressure[ -]reduc(?:ing|tion) valves?\b"),
    ("fall.breaks", rf"\bbreak[ -]?pressure (?:tanks?|box(?:es)?|chambers?)[ :=-]+({FEW})(?= ?(?:[.,;\n]|$))"),
    ("fall.breaks", rf"(?<![\w¤-])({FEW}) (?:prvs?|pressure[ -]reducers?)\b"),
    ("pump.count", rf"(?<![\w¤-])({FEW}) (?:identical|equal|same|matching|twin) (?:\w+ ){{0,2}}(?:pumps|units (?=(?:\w+ )?(?:in parallel|side by side)))\b"),
    ("pump.count", rf"(?<![\w¤-])({FEW}) (?:\w+ ){{0,2}}pumps (?:\w+ )?(?:in parallel|side by side|of the same)"),
    ("suction.bends", rf"(?<![\w¤-])({FEW}) (?:90[ °]*(?:deg\w*)? )?(?:elbows?|bends?)(?= (?:in|on) (?:the|its) (?:suction|intake))"),
    ("suction.bends", rf"\bsuction\b[^.;\n]{{0,60}}?(?<![\w¤-])({FEW}) (?:90[ °]*(?:deg\w*)? )?(?:elbows?|bends?)\b"),
    ("suction.foot_valves", r"\b(foot[ -]?)valves?\b(?! (?:leak\w* )?\?)"),
))  # fmt: skip


_NEEDED = {
    "power.strings": ("string", "parallel", "side by side", "s1p", "s2p", "s3p", "s4p"),
    "power.series": ("string", "series", "in each", "s1p", "s2p", "s3p", "s4p"),
    "rain.dry_count": ("dry month",),
    "pump.starts": ("start", "times", "cycles"),
    "power.fail": ("days",),
    "suction.bends": ("elbow", "bend"),
    "fall.breaks": ("break", "reduc", "prv"),
    "pump.count": ("pumps", "boosters", "submersibles"),
    "suction.foot_valves": ("foot",),
}
_ALLOWED = re.compile(
    r"\b(?:allow\w*|permit\w*|max\w*|at most|no more|not more|limit\w*|rated|sheet|manual|plate|says?|up to|good for)\b"
)


_OBSERVED = re.compile(
    r"\b(?:it|pump|motor|which|that) (?:now |still )?(?:starts|cycles|comes on|kicks in|switches on|goes on)(?: up)? (?:about |around |some |maybe |over )*$"
)


def _sentence(low: str, at: int) -> str:
    begin = max(low.rfind(sign, 0, at) for sign in ".;!\n") + 1
    return re.split(r"[.;!\n]", low[begin:], maxsplit=1)[0]


def counted(low: str) -> list[tuple[str, float, int, int]]:
    """(path, number, start, end) of what is counted about panels, pumps, the suction."""
    found = []
    for path, pattern in _SERIES:
        if not any(word in low for word in _NEEDED[path]):
            continue  # looked for only where the letter has its word
        for match in pattern.finditer(low):
            if path == "suction.foot_valves" and negated(low, match.start()):
                found.append((path, 0.0, *match.span()))
                continue
            if path == "fall.breaks" and re.search(r"\b(?<!no )(?<!any )pumps?\b", low):
                continue
            if path == "pump.starts" and (
                not _ALLOWED.search(_sentence(low, match.start()))
                or _OBSERVED.search(low, max(0, match.start(1) - 40), match.start(1))
            ):
                continue
            number = 1.0 if path == "suction.foot_valves" else value(match[1])[0] or 1.0
            around = low[max(0, match.start() - 120) : match.end() + 120]
            if path.startswith("power.s") and not re.search(
                r"panel|solar|pv|array|module|\bmods\b", around
            ):
                continue
            if path.startswith("power") and re.search(
                r"(?<!no )batter(?:y|ies)\b(?!.*\b(?:panels?|modules?)\b)|cells",
                low[
                    max(low.rfind(".", 0, match.start()), match.start() - 30, 0) : match.end() + 12
                ],
            ):
                continue
            if number == int(number) and 0 < number <= 100:
                span = match.span() if path == "suction.foot_valves" else match.span(1)
                found.append((path, number, *span))
    return found
