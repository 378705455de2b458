"""Pieces that were taken for a fact and are of another thing by the words beside them.

The last look before all is put together: a rule here takes away, or says what it is instead; it
never adds a number.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from itertools import pairwise

from calc.site.enquiry_late import Late
from calc.site.enquiry_machines import DOUBTS as MACHINES
from calc.site.enquiry_mistaken import MISTAKEN
from calc.site.enquiry_model import Piece
from calc.site.enquiry_recount import MISCOUNTED, recounted
from calc.site.enquiry_signs import signed
from calc.site.enquiry_strange import STRANGE, near, taken_back

_ENDS = re.compile(r"[.;?!\n](?!\d)")


@dataclass(frozen=True)
class Doubt:
    """A number of ``paths`` (or a word, "path=word") is none of them where the words of its sentence before it, and those
    after it, fit; it is ``path`` instead, if one is named."""

    paths: Late
    left: Late
    right: Late
    path: str = ""
    sign: float = 1.0

    def fits(self, piece: Piece, left: str, right: str) -> bool:
        named = self.paths.match(piece.path) or (
            piece.word and self.paths.match(f"{piece.path}={piece.word}")
        )
        return bool(named and self.left.search(left) and self.right.match(right))


def _doubt(paths: str, left: str, right: str = "", path: str = "", sign: float = 1.0) -> Doubt:
    return Doubt(Late(rf"(?:{paths})$"), Late(left), Late(right), path, sign)


def _row(paths: str, left: str, right: str = "", path: str = "", sign: str = "") -> Doubt:
    return _doubt(paths, left, right, path, -1.0 if sign else 1.0)


_WAYS = r"way\.(?:length|climb)"
_HEIGHTS = r"way\.(?:length|climb)|tank\.level"
_TANKS = r"(?:tank|store|pressure_tank)\.volume"
_NO_PIPE = r"(?:driveway|drive|access road|road|track|lane|fence|hedge|generator(?: shed)?|panels?|bridge|transformer|septic(?: tank)?)"
_AT = r"(?:spring|source|tank|weir|creek|intake|house|cabin|home|cottage) (?:is |lies |sits )?at (?:about |around )?"
_DRAWS = r"(?:hose|shower|washing machine|dishwasher|float valve|ball valve|filter|softener|uv lamp|sprinklers?|toilet|tap|faucet|spigot)"
_DOUBTS = (
    # a height above the sea, and the size of a thing that is no pipe
    _doubt("way.length", rf"\b{_AT}[\d.,]+ ?\w+\b[^.;]*\b{_AT}$"),
    _doubt("way.length", rf"\b{_AT}$", rf"[^.;]*\b{_AT}\d"),
    _doubt(_HEIGHTS, "", r" ?(?:tall|wide|across(?! (?:the|a|an|our|my|to)\b)|thick|high (?:walls?|sides?|rings?))\b"),
    _doubt("way.length", r"\b(?:dam|pond|lake|reservoir|pool) (?:is |measures )(?:about )?$", r" ?long\b"),
    _doubt("way.length", "", r" ?(?:long )?(?:drive|driveway|road|track|lane|fence)\b"),
    _doubt("way.length", rf"\b{_NO_PIPE} (?:is|are|stands?|lies|sits?|runs?) (?:about |some )?$"),
    _doubt("way.length", r"\bpanels? (?:is|are|stand|stands|sit) (?:on|at|by)\b[^.;\d]{0,25}, $"),
    _doubt("way.length", "", r" ?(?:beyond|past|behind) (?:the |our )?(?:shed|barn|garage|fence|gate|road)\b"),
    _doubt("way.length", r"\bfrom (?:the |our )?(?:house|cabin|home) to (?:the |our )?(?:barn|stables?|road|gate|garage|shed)\b[^.;\d]{0,16}$"),
    _doubt("way.length", "", r"[^.;\d]{0,28}\b(?:as the crow flies|in a straight line|bee ?line)\b"),
    _doubt("way.length", r"\bhose (?:is|has|measures) (?:about )?$", r"[^.;]{0,40}\bgarden\b"),
    _doubt("way.length", r"\b(?:creek|stream|river|brook)\b[^.;]{0,20}\b(?:falls|drops)\b[^.;]{0,15} (?:over|in|on|along) $"),
    _doubt("way.length", r"\bfalls(?: by itself| on its own| by gravity) (?:about )?$"),
    _doubt("way.length", r"\b(?:lowered|dropped|moved|hung|raised) (?:it|the pump) (?:down )?(?:to|at) $",
           "", "pump.height", -1.0),
    _doubt("well.depth", "", r" ?(?:from|away from|off) (?:us|here|me|our|the (?:house|cabin))\b"),
    # climbs that are none
    _doubt("way.climb", "", r" ?(?:further|farther|more) (?:up|down)(?:stream| the (?:creek|stream|river|valley))?\b"),
    _doubt("way.climb", "", r"[^.;\d]{0,25} along the (?:track|path|road|line|pipe)\b"),
    _doubt("way.climb", "", r" ?(?:below|under) (?:the |its )?(?:bank|terrace|bridge)\b"),
    _doubt("way.climb", r"\bdown(?:hill)? from (?:the |our )?(?:\w+ )?tank to\b[^.;\d]{0,20}$"),
    _doubt("way.climb", r"\b(?:creek|stream|river|pond|lake|dam|water)(?: is| lies| stands)? $",
           r" ?(?:below|under|lower than) it\b(?=.{0,5}$)", "water.level", -1.0),
    _doubt(_HEIGHTS, r"\d ?(?:m|ft|metres|feet)? (?:by|x) $"),
    _doubt(_HEIGHTS, "", r" ?(?:by|x) \d+(?:\.\d+)?(?! ?(?:mm|in\b|inch|\"|\.\d|\d))"),
    _doubt("way.climb", r"^(?!.*\b(?:climb\w*|ris\w+|raise\w*|lift\w*|up\w*|falls?|drops?|head|high\w*|lower|heights?|vertical\w*|elevation|above|below|down\w*)\b)",
           r" ?(?:away )?from (?:the |our )?(?:house|cabin|well|home|spring|creek)\b(?![^.;]{0,40}\b(?:up|down|above|below|higher|lower|climb\w*|rise|fall)\b)"),
    _doubt("way.climb", r"\b(?:road|track|driveway|path) (?:rises|climbs|drops|falls) (?:about )?$"),
    _doubt("way.climb", r"\bthat to the (?:house|cabin|cottage)(?: is)? $", "", "way.length"),
    _doubt("tank.level", "", r" ?(?:lower|below|deeper) (?:than )?(?:the |its )?(?:full|top|overflow|lid|rim)\b"),
    _doubt("way.length", r"\b(?:penstock|casing|liner)\b[^.;]{0,25}$"),
    _doubt("way.length", "", r" ?(?:away )?from (?:the |our )?pressure tank\b"),
    _doubt("way.length", r"\bthe first $", r"[^.;]{0,40}\b(?:remaining|rest|last|next|other)\b"),
    _doubt("way.length", r"\b(?:hang|hung|set|lower) (?:it|the pump) (?:at|to) $"),
    _doubt("way.length", r"\bhouse (?:is |lies |stands )?another $", r"\W*$"),
    _doubt("way.climb", "", r"[^.;]*\bhouse another \d"),
    _doubt("way.length", r"^(?!.*\b(?:pipe|line|hose|run)\b).*\b(?:garden|field|orchard|plot|bed|paddock|greenhouse)\b[^.;]*$", r" ?long\b"),
    _doubt("way.length", "", r" ?between (?:the |our )?panels?\b"),
    _doubt("way.length", r"\b(?:one each|one every|every|(?:two|three|four|five|six|[2-9]) (?:coils?|rolls?|reels?) of) $"),
    _doubt(r"way\.length|well\.depth", "", r" ?of (?:the )?(?:rope|chain|string)\b"),
    # levels
    _doubt("pump.height", r"\bwater(?: level)? (?:is|stands|lies|sits) (?:at |about |around |only )*$"),
    _doubt("water.level", r"^(?!.*\bpump\b).*\b(?:cellar|basement|pit|trench|septic|floor) (?:is|lies|sits) (?:about )?$"),
    # what flows at a thing that draws, and what a machine could do
    _doubt("water.yield", rf"^(?!.*\b(?:spring|well|bore\w*|source|creek|stream)\b).*\b{_DRAWS}\b[^.;]{{0,40}}$"),
    _doubt("water.yield", r"\b(?:plate|label|sticker|catalogue|leaflet|brochure)\b[^.;]{0,50}$"),
    _doubt(r"water\.yield|well\.\w+|pump\.\w+", r"\b(?:far from|nowhere near|nothing like|nothing near) (?:the )?$"),
    _doubt("pump.cut_out", r"\bputs? out (?:about )?$"),
    _doubt("pressure_tank.precharge", "", r" ?(?:psi |bar )?(?:below|under|less than|lower than) "),
    # volumes of what is no water tank
    _doubt(_TANKS, r"\b(?:diesel|fuel|oil|septic|brine|milk|gr[ae]y ?water|gas|propane|petrol|sprayer|slurry)(?: storage)? (?:tank|vat|pit|drum|barrel)?\b(?:, |[^.;,\d]{0,25})$"),
    _doubt(_TANKS, "", r" ?(?:spray|slurry|diesel|fuel|oil|septic|milk|brine)(?:er)? "),
    _doubt(_TANKS, "", r"[^.;\d]{0,12}\b(?:every|per|each) (?:week|month|fortnight|year)\b"),
    _doubt("store.reserve", r"\b(?:half|a third|a quarter) (?:of )?(?:the |our |its )?$"),
    _doubt("power.cable", "", r" ?(?:of )?(?:\w+ )?cable (?:lying |left )?(?:in the (?:shed|barn|garage)|left over|over|spare|on a (?:drum|reel))\b"),
    _doubt("power.voltage", "", r" ?(?:battery )?(?:bank|battery|batteries) (?:is|are|went) (?:dead|finished|shot|gone|ruined)\b"),
    _doubt("way.pipe", r"\b(?:spring|it|water) (?:comes|flows|runs|pours|issues|spills) (?:out )?(?:of|from) an? $"),
    # people and outlets
    _doubt("use.people", "", r",? or (?:rather )?(?:were|used to be)\b"),
    _doubt("use.people", r"\b(?:each|every|either) (?:one )?(?:of (?:the |our )?(?:\w+ )?)?(?:houses?|cabins?|huts?|flats?|rooms?|cottages?)\b[^.;\d]{0,20}$"),
    _doubt(r"outlets\.\w+|use\.\w+", r"\b(?:lacks?|lacking|is missing|does without|do without) (?:an? |any )?$"),
    _doubt(r"animals\.\w+", "", r" ?(?:vat|tank|room|cooler|churn|money|shed)\b"),
    _doubt(r"outlets\.\w+|animals\.\w+", r"\b(?:half|most|some|two thirds|a third) of (?:the |our |my )?$"),
    _doubt(r"outlets\.\w+", r"\bthe same as\b"),
    _doubt(r"outlets\.\w+", "", r"[^.;]*\bthe same (?:again|once more|upstairs|downstairs)\b"),
    _doubt(r"outlets\.\w+", "", r" (?:is|are) (?:on order|ordered|still to come|to come|on (?:its|the) way)\b"),
    _doubt(r"outlets\.\w+", "", r" (?:went|was given|was sold) to\b| (?:was|were) never (?:plumbed|connected|finished|built|installed)\b"),
    _doubt(r"outlets\.\w+", r"\bnever got (?:a?round to|to) (?:the |an? )?$"),
    _doubt("use.troughs", r"\b(?:tub|bath|sink) is an? (?:old )?$"),
    # power
    _doubt("power.tilt", r"\broof\b", r"[^.;]{0,12}\bpanels? (?:lie |lying |are )?flat\b"),
    _doubt("power.voltage", r"\bpanel voltage (?:is )?$"),
    _doubt("power.voltage", "", r" ?open\b", "power.open_voltage"),
    _doubt("power.source", "", r" (?:comes|is coming|will come|arrives|should come)\b(?! (?:from|in(?:to)? (?:the|at)|on))"),
    # the source
    _doubt("water.kind", "", r"[^.;]{0,30}\bnever found (?:it|any)\b|[^.;]{0,30} (?:has|holds) (?:newts|ducks|frogs|fish|carp)\b"),
    _doubt("water.kind", "", r" (?:is|are) only for (?:the )?(?:sheep|cattle|cows|stock|animals|garden|horses|goats)\b"),
    _doubt("water.kind", r"\b(?:anything but|far from being|nothing like) (?:an? |the )?$"),
    _doubt("water.kind", "", r"(?: [a-z]+)? (?:road|rd|lane|street|avenue|hill road|family)\b"),
    _doubt("water.kind", "", r"[^.;,]{0,25} (?:is|was) (?:now )?(?:filled with|full of (?:rubble|stones|earth))"),
    _doubt("water.kind", "", r" (?:is|are) (?:only |just )?for (?:the )?(?:ducks|geese|fish|frogs|swimming|looks|fun)\b"),
    _doubt(rf"water\.kind|{_WAYS}", "", r"[^.;]{0,45}\b(?:permit|licen[cs]e|permission)\b[^.;]{0,25}\b(?:refused|denied|turned down)|[^.;]{0,40}\b(?:we|i) (?:may not|are not allowed to|aren'?t allowed to|must not) (?:pump|draw|take|use)\b"),
    *(_row(*row) for row in (*MACHINES, *STRANGE)),
    *(_doubt(*row) for row in (*MISTAKEN, *MISCOUNTED)),
)  # fmt: skip
_PERSON = re.compile(
    r" plus (?:a |the |my |our )?(?:grandma|grandpa|granny|gran|nan|grandmother|grandfather|mother|father|lodger|au pair)\b(?!-)"
)
_BOTH = re.compile(
    r"\b(?:both|each of the two) (?:bath|shower|wash)[ -]?rooms? (?:have|has|come with|contains?)\b"
)
_LOST = re.compile(
    r"(?:'s| is| was| are| has| have| ran| run| went| turned| gone)+ (?:gone |turned |run |all |again )*(?:dry|salty|brackish|sour|only a ditch)\b"
)
_MADE = re.compile(
    r"[^.;\n]{0,60}[.;] [^.;\n]{0,60}\b(?:make|makes|made) it (?:more like |nearer |closer to |about |to be )?\d[\d.]*(?= ?(?:[.;,!\n]|$))"
)
_DID = re.compile(r"[^.;\n\d]{0,30}[.;,] ?(?:or )?(?:at least|well,) (?:it|they|that) (?:did|was|were)\b")  # fmt: skip
_LATER = re.compile(
    r"[^.;\n\d]{0,25}[;,] (?:but )?(?:by|in) [a-z]+ (?:it|this) (?:is|has) [^.;\n\d]{0,20}\d"
)
_DOWN = re.compile(r"\b(?:down|drops?|falls?|descends?|dips?)\b[^.;\d]{0,30}$")
_UP = re.compile(r"\b(?:up|climbs?|rises?)(?: again)?\b[^.;,\d]{0,20}$")


def kept(low: str, pieces: list[Piece]) -> list[Piece]:
    """The pieces without what is of another thing; those put right that the words put right."""
    left = []
    for one in recounted(low, pieces):
        put = _looked_at(low, one)
        if put is not None:
            left.append(put)
    left = signed(low, left, [_bounds(low, one) for one in left])
    return near(low, _lost(low, _parts(low, _up_and_down(low, _facing(low, left)))))


def _bounds(low: str, piece: Piece) -> tuple[int, int]:
    """Where the sentence of a piece begins and ends."""
    before = [one.end() for one in _ENDS.finditer(low, max(0, piece.start - 200), piece.start)]
    last = min(len(low), piece.end + 200)
    after = _ENDS.search(low, piece.end, last)
    return before[-1] if before else max(0, piece.start - 200), after.start() if after else last


def _looked_at(low: str, piece: Piece) -> Piece | None:
    start, end = _bounds(low, piece)
    left, right = low[start : piece.start], low[piece.end : end]
    none = piece.path.startswith("outlets.") and not piece.low  # "we do without a shower"
    for doubt in () if none else _DOUBTS:
        if doubt.fits(piece, left, right):
            if not doubt.path:
                return None
            low_end, high_end = doubt.sign * abs(piece.low), doubt.sign * abs(piece.high)
            return replace(piece, path=doubt.path, low=low_end, high=high_end, others=())
    if not piece.word and not piece.pipe and (_MADE.match(low, piece.end) or _DID.match(low, piece.end)):  # fmt: skip
        return None
    if _too_small(piece) or _NEVER.match(low, piece.end) or taken_back(low, piece):
        return None
    if piece.path == "water.level" and left.endswith("was at ") and _LATER.match(low, piece.end):
        return None
    if (
        piece.path == "use.people"
        and "family of" in low[piece.start : piece.end]
        and _PERSON.match(right)
    ):
        return replace(piece, low=piece.low + 1, high=piece.high + 1)
    if (
        piece.path.startswith("outlets.")
        and piece.low == 1
        and _BOTH.search(left)
        and "only " not in left
    ):
        return replace(piece, low=2.0, high=2.0)
    return piece


_NEVER = re.compile(
    r"(?! ?\?)[^.;\n\d]{0,30}[.;,] (?:well,? )?(?:it never (?:did|has|was|came near)|[^.;\n\d]{0,50}\b(?:says?|said|told us|reckons?) (?:no way|nothing like it|not even close|never))\b"
)
_THIN = frozenset(["in", "mm"])
_LONG = frozenset(["water.level", "way.length", "way.climb", "well.depth", "tank.level"])
_SHORT = {"m": 1.5, "ft": 5.0}  # below which no way of water is as short; our choice


def _too_small(piece: Piece) -> bool:
    """Whether a length is told in a unit of sizes, or shorter than a way of water can be."""
    if piece.path == "pump.height" and piece.low < 0:
        return piece.unit in _THIN
    short = piece.path == "way.length" and piece.low < _SHORT.get(piece.unit, 0.0)
    short = short or (piece.path == "way.length" and piece.unit == "cm")
    return short or (piece.path in _LONG and piece.unit in _THIN)


def _facing(low: str, pieces: list[Piece]) -> list[Piece]:
    """Without the way a roof faces, where the panels stand on the ground."""
    return [
        one for one in pieces
        if one.path != "power.facing" or not re.match(
            r"[^.;\n]*\bpanels?\b[^.;\n]{0,30}\b(?:on the ground|on a (?:frame|rack|pole|mast|post))\b", low[one.end : one.end + 200]
        ) or "panel" in low[slice(*_bounds(low, one))][: one.start - _bounds(low, one)[0]]
    ]  # fmt: skip


def _up_and_down(low: str, pieces: list[Piece]) -> list[Piece]:
    """Without the two heights of a line that goes down and then up: neither is the climb."""
    heights = [
        (one, bool(_DOWN.search(low[_bounds(low, one)[0] : one.start])),
         bool(_UP.search(low[_bounds(low, one)[0] : one.start])))
        for one in pieces
        if one.path in {"way.climb", "way.length", "tank.level"} and not one.word
    ]  # fmt: skip
    heights.sort(key=lambda one: one[0].start)
    out: set[int] = set()
    for (first, falls, first_climbs), (second, sinks, climbs) in pairwise(heights):
        over = first_climbs and sinks and _OVER.fullmatch(low, first.end, second.start)
        if over or (falls and climbs and _ON.fullmatch(low, first.end, second.start)):
            out |= {id(first), id(second)}
    return [one for one in pieces if id(one) not in out]


_ON = re.compile(
    r"[^.;\d]{0,30}(?:,| and|, then| then)+ (?:then )?(?:comes |goes |back |it )?(?:up|climbs|rises)[^.;,\d]{0,12}"
)


_OVER = re.compile(
    r"[^.;\d]{0,30}(?:,| and|, then| then)+ (?:then )?(?:comes |goes |back |it )?(?:down|falls|drops|descends)[^.;,\d]{0,12}"
)


def _parts(low: str, pieces: list[Piece]) -> list[Piece]:
    """Without a total of animals that its parts follow: "30 head, 22 cows and 8 calves"."""
    out: set[int] = set()
    stock = sorted((p for p in pieces if p.path.startswith("animals.")), key=lambda p: p.start)
    for at, one in enumerate(stock):
        _, end = _bounds(low, one)
        rest = [p for p in stock[at + 1 : at + 9] if one.end <= p.start < end and one.low]
        if len(rest) > 1 and sum(p.low for p in rest) == one.low:
            out.add(id(one))
    return [one for one in pieces if id(one) not in out]


def _lost(low: str, pieces: list[Piece]) -> list[Piece]:
    """Without a source that is dry or salt, where another one is told of after it."""
    kinds = [one for one in pieces if one.path == "water.kind"]
    out = {
        id(one) for one in kinds
        if _LOST.match(low, one.end) and any(p.start > one.end and p.word != one.word for p in kinds)
    }  # fmt: skip
    return [one for one in pieces if id(one) not in out]
