"""What is read in an enquiry: plain records, which the other rooms fill."""

from __future__ import annotations

from dataclasses import dataclass, field


@dataclass(frozen=True)
class Told:
    """A fact that was told.

    path: of the site, or "way.…", "outlets.…", "animals.…", "beds.area", "tank.…"; text: as it
    should stand in the site, with its unit; label: for readers; quote: as written, from ``start``
    to ``end`` of the text; low, high: ends of a range, as texts; standing: "given", or "assumed"
    with its ``reason``; words: of a pipe, size and material as they were told.
    """

    path: str
    text: str
    label: str
    quote: str
    start: int
    end: int
    low: str = ""
    high: str = ""
    standing: str = "given"
    reason: str = ""
    words: str = ""


@dataclass(frozen=True)
class Reading:
    """One thing that an unclear number may mean."""

    path: str
    text: str
    label: str


@dataclass(frozen=True)
class Unclear:
    """Words that can be read in several ways."""

    quote: str
    start: int
    end: int
    readings: tuple[Reading, ...]


@dataclass(frozen=True)
class Contradiction:
    """One thing said in two ways: ``said`` holds both."""

    path: str
    label: str
    said: tuple[Told, ...]


@dataclass(frozen=True)
class Ignored:
    """Words that are no fact of the writer's place, and why."""

    quote: str
    start: int
    end: int
    why: str


@dataclass(frozen=True)
class Enquiry:
    """All that was read in a mail; ``text`` is what spans count in."""

    text: str = ""
    told: tuple[Told, ...] = ()
    unclear: tuple[Unclear, ...] = ()
    contradictions: tuple[Contradiction, ...] = ()
    ignored: tuple[Ignored, ...] = ()
    unused: tuple[Ignored, ...] = ()
    notes: tuple[str, ...] = ()
    system: str = "metric"


@dataclass
class Token:
    """A number with what it counts, as found in the folded text.

    kind: of a unit ("length", "pressure", …), "pair" of pressures, "size" of a pipe, "bare"; low,
    high: the numbers in ``unit``; ratio: what one unit is in another where the text counts in it.
    """

    kind: str
    low: float
    high: float
    unit: str
    start: int
    end: int
    about: bool = False
    maybe: tuple[float, ...] = ()  # what else a number with a point or comma may be
    why: str = ""  # it is no fact: quoted, a neighbour's, …
    used: bool = False
    path: str = ""
    sign: float = 1.0
    extra: dict[str, float] = field(default_factory=dict)


@dataclass(frozen=True)
class Context:
    """The words round a number: ``left`` and ``right`` as far as the next number, ``before`` from
    the sentence's beginning, ``after`` to its end, ``subject`` of the sentence before, ``mail`` all
    of it."""

    left: str
    right: str
    before: str
    after: str
    subject: str
    mail: str
    next_pipe: str = ""  # path of the pipe whose size the next number is
    last_pipe: str = ""  # of the number before


@dataclass(frozen=True)
class Pipe:
    """A pipe told of: key of ``facts.PIPES`` ("" where there is none such), words, what of it is
    taken for granted."""

    key: str
    words: str
    reason: str
    start: int
    end: int


@dataclass(frozen=True)
class Piece:
    """One thing told, not yet weighed against others: numbers in ``unit``, or a ``word``."""

    path: str
    start: int
    end: int
    low: float = 0.0
    high: float = 0.0
    unit: str = ""
    word: str = ""
    weight: float = 5.0
    vague: bool = False
    about: bool = False
    supposed: bool = False  # by words that often go with it, and no rule
    pipe: Pipe | None = None
    reason: str = ""
    others: tuple[str, ...] = ()  # paths that it may be as well
    values: tuple[float, ...] = ()  # numbers that it may be as well
    thing: str = ""


@dataclass
class Found:
    """All pieces of a mail, and what was left out of it."""

    pieces: list[Piece] = field(default_factory=list)
    ignored: list[Ignored] = field(default_factory=list)
    unused: tuple[Ignored, ...] = ()
    notes: list[str] = field(default_factory=list)
    bare: int = 0
