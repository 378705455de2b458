"""The words of these pages: one for each thing, in the trade's terms, with a plain meaning.

The glossary is printed from this table, hard words are explained from it where they stand, and a
test holds that no page uses a word that a term ``replaces``.
"""

from __future__ import annotations

import re
from dataclasses import dataclass


@dataclass(frozen=True)
class Term:
    """word: as readers meet it; meaning: one plain sentence or less, without a full stop.

    also: other words people use for it, which the glossary and the search find; replaces: words
    that these pages do not use for it; hard: it is explained where it first stands on a page.
    """

    word: str
    meaning: str
    also: tuple[str, ...] = ()
    replaces: tuple[str, ...] = ()
    hard: bool = False

    @property
    def anchor(self) -> str:
        """Its place in the glossary: "npsh-available"."""
        return re.sub(r"[^a-z0-9]+", "-", self.word.lower()).strip("-")


# Meanings: the trade's usual ones, in our words; no source.
TERMS = (
    Term(
        "absolute pressure",
        "pressure counted from a vacuum, not from the air outside",
        replaces=("empty space",),
    ),
    Term("application rate", "depth of water that sprinklers give in an hour"),
    Term("air vessel", "holds shut-in air beside a pipe, which takes up and gives back water"),
    Term("backflow preventer", "keeps used water out of drinking water", hard=True),
    Term(
        "break-pressure tank",
        "small open tank on a way down: below it the pressure begins again from nothing",
        hard=True,
    ),
    Term(
        "cavitation",
        "harmful vapour bubbles in a pump: it rattles, loses flow and wears",
        replaces=("boils inside",),
        hard=True,
    ),
    Term("check valve", "lets water through one way only", ("non-return valve",), hard=True),
    Term(
        "climb",
        "how far an outlet is above the pump; a drop is how far below",
        ("rise", "elevation"),
        ("lift to the outlet",),
    ),
    Term(
        "column separation",
        "low pressure boils a gap in the water, which then slams shut",
        replaces=("column parts", "column breaks"),
        hard=True,
    ),
    Term(
        "cut-in and cut-out",
        "pressures at which a switch starts and stops the pump",
        ("start and stop pressure",),
        hard=True,
    ),
    Term("dampener", "takes the pulses of a pump, with air or a soft wall", hard=True),
    Term(
        "drawdown",
        "water a pressure tank gives from cut-out to cut-in; of a well, how far its level falls",
        hard=True,
    ),
    Term(
        "dry lift",
        "height a pump can draw from an empty pipe",
        replaces=("largest dry lift",),
        hard=True,
    ),
    Term("dripper", "gives a plant its few litres an hour", ("emitter",)),
    Term(
        "duty point",
        "flow and head at which the pump curve and the system curve cross",
        replaces=("where they meet",),
        hard=True,
    ),
    Term(
        "ET0",
        "reference evapotranspiration: water that short grass uses a day in that weather",
        hard=True,
    ),
    Term(
        "expansion tank",
        "small sealed tank with air that takes up water as it grows with heat",
        ("expansion vessel",),
        hard=True,
    ),
    Term("fixed speed", "the pump is on or off, and runs at full speed"),
    Term("flow", "water passing each minute", ("discharge",)),
    Term(
        "foot valve",
        "check valve at the foot of the suction pipe: it keeps the pipe full",
        hard=True,
    ),
    Term("friction loss", "pressure used up by flow in pipes", ("pressure drop",)),
    Term("garden beds", "planted ground that you water"),
    Term(
        "gauge pressure",
        "pressure counted from the air outside, as a gauge shows it",
    ),
    Term(
        "head",
        "a pressure told as the height of water it holds up",
        hard=True,
    ),
    Term("inside diameter", "width of the pipe's hole", ("bore",)),
    Term("intake rate", "depth of water that wet soil takes in an hour", ("infiltration rate",)),
    Term(
        "lock off",
        "keep a switch off with a lock of your own, so that nobody can turn it on meanwhile",
        ("lock out",),
    ),
    Term("manifold", "pipe from which drip lines branch off", ("header", "submain"), hard=True),
    Term("mixing valve", "mixes cold into hot water and holds the temperature", hard=True),
    Term(
        "needed pressure",
        "running pressure that an outlet needs to be useful",
        replaces=("wanted pressure",),
    ),
    Term("nominal size", "a pipe's trade name, not a measurement", hard=True),
    Term(
        "NPSH available",
        "net positive suction head: how far the water at the pump's inlet is "
        "from boiling, as a height",
        ("net positive suction head",),
        hard=True,
    ),
    Term("NPSH margin", "NPSH available less NPSH required", replaces=("in hand",)),
    Term("NPSH required", "the NPSH a pump must have, from its data sheet", hard=True),
    Term(
        "outlet",
        "where water comes out: a tap (faucet), shower, hose or valve",
        ("tap", "faucet", "fixture"),
    ),
    Term("pipe section", "length of one pipe between two points"),
    Term(
        "point",
        "where pipe sections end or meet",
    ),
    Term("pre-charge", "air pressure in an empty pressure tank", ("air charge",), hard=True),
    Term(
        "pressure line",
        "how high water would rise in a tube at each point of a pipe",
        ("hydraulic grade line",),
        hard=True,
    ),
    Term("pressure rating", "most pressure a part is made for; less when it is hot"),
    Term("pressure-reducing valve", "keeps the pressure beyond it lower", hard=True),
    Term(
        "pressure tank",
        "sealed tank of water and squeezed air",
        ("bladder tank", "hydropneumatic tank"),
    ),
    Term("pumping level", "depth of the water in a well while its pump runs", hard=True),
    Term("priming", "filling pump and suction pipe with water before the start", hard=True),
    Term("pump curve", "head a pump gives at each flow", hard=True),
    Term("relief valve", "opens to let out excess pressure"),
    Term("running pressure", "pressure while water flows", ("dynamic pressure",)),
    Term(
        "SDR",
        "outside diameter over wall thickness; a lower SDR is a stronger pipe",
        ("standard dimension ratio",),
        hard=True,
    ),
    Term(
        "set pressure", "pressure that a speed control keeps at the pump", replaces=("set point",)
    ),
    Term("short cycling", "starting and stopping again and again", hard=True),
    Term("shut-off head", "head of a pump with no flow, against a closed valve", hard=True),
    Term(
        "specific capacity",
        "flow that a well gives for each metre that its level falls",
        hard=True,
    ),
    Term(
        "speed control",
        "changes the pump's speed to hold the set pressure",
        ("variable speed drive",),
    ),
    Term("static level", "depth of the water in a well that rests"),
    Term("static pressure", "pressure with no water flowing", ("standing pressure",)),
    Term(
        "storage tank",
        "open tank with water for hours or days; uphill it is a hill tank",
        ("cistern", "hill tank"),
    ),
    Term("submersible pump", "a pump that works under water"),
    Term("suction lift", "height from the lowest water up to the pump", hard=True),
    Term(
        "system curve",
        "head that climb and pipes need at each flow",
        replaces=("what the system takes",),
        hard=True,
    ),
    Term("vapour pressure", "below this pressure, water boils", hard=True),
    Term(
        "water hammer",
        "a pressure jump when flow stops suddenly; also called surge",
        ("surge", "knock"),
    ),
    Term("water speed", "how fast water moves in the pipe", ("velocity",)),
    Term("well yield", "flow that a well can keep giving", ("recovery",)),
)
BY_WORD = {term.word: term for term in TERMS}


def ours(word: str) -> str:
    """Our word for what people also call ``word``; the same where there is none."""
    return next((term.word for term in TERMS if word in term.also), word)


def hard() -> tuple[Term, ...]:
    """The terms to be explained where they first stand, the longest first."""
    return tuple(sorted((t for t in TERMS if t.hard), key=lambda t: -len(t.word)))
