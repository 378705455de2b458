"""One line, tried in every size of a kind: what it loses, what is left, why a size is in or out."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from calc import practice
from calc.errors import InputError, RangeError
from calc.pipe import friction, pipes
from calc.pipe.line import Line, Section
from calc.sheets.parts.line_judge import HAIR, Need, breaks_at, too_hot
from calc.sheets.parts.line_rows import sections

if TYPE_CHECKING:
    from calc.page.form import Values

# a plain line: bends, a valve at each end, a check valve
COUNTS = {"elbow90": 6, "ball": 2, "spring": 1}
HOSES = frozenset({"hose", "layflat"})
HOT, WEAK, SHORT, DRY, FAST, VACUUM = (
    "too hot for this pipe",
    "rating too low",
    "pressure short",
    "water does not arrive",
    "too fast",
    "water column separates at the highest point",
)


@dataclass(frozen=True)
class Case:
    """What is asked of the pipe.

    line: where the reader gave sections (``counted``), as it is; else one section in the
    narrowest size of ``kind``; fastest: the reader's highest speed, m/s; kind: the kind whose
    sizes are tried.
    """

    line: Line
    need: Need
    fastest: float
    kind: str
    counted: bool

    def in_kind(self, kind: str) -> Case:
        """The same case in another kind of pipe."""
        return replace(self, kind=kind)


@dataclass(frozen=True)
class Trial:
    """One size throughout the line: its figures in SI, the ``reasons`` against it (none: in).

    close: it is in, but for something borderline that a wider size would be without.
    """

    pipe: pipes.Pipe
    line: Line
    speed: float
    loss: float
    left: float
    rating: float | None
    reasons: tuple[str, ...]
    close: bool = False

    @property
    def fits(self) -> bool:
        """Whether nothing speaks against it."""
        return not self.reasons

    @property
    def sure(self) -> bool:
        """Whether it fits with something to spare."""
        return not self.reasons and not self.close


def case_of(values: Values) -> Case:
    """The ``Case`` of a form's values.

    Raises InputError at "highest" for a highest pressure below the one while water runs.
    """
    if values.highest is not None and values.highest < values.pressure:
        raise InputError(
            "The highest pressure cannot be lower than the pressure at the start. "
            "Enter what is reached with everything closed, or leave this empty.",
            name="highest",
        )
    several = sections(values.line)
    counted = tuple((f, values.numbers[f.key]) for f in friction.FITTINGS if values.numbers[f.key])
    narrowest = pipes.sizes(values.kind)[0]
    line = Line(
        several or (Section(narrowest, values.length, values.climb, counted),),
        values.pressure,
        values.water,
        values.highest,
        values.hottest,
        values.lowest,
        values.crest,
    )
    need = Need(values.flow, values.wanted, values.wanted)
    return Case(line, need, values.fastest, values.kind, bool(several))


def tried(case: Case, pipe: pipes.Pipe) -> Trial:
    """``Trial`` of one pipe throughout the line."""
    line, flow = case.line.with_pipe(pipe), case.need.flow_m3s
    left, speed = line.left(flow), line.speed(flow)
    try:
        rating = line.rating_of(line.sections[0])
    except RangeError:
        rating = None
    reasons = []
    if too_hot(line, pipe):
        reasons.append(HOT)
    if any(stress.over and not stress.hot for stress in line.stresses()):
        reasons.append(WEAK)
    if left < 0 or left <= 0 < case.need.works_pa:
        reasons.append(DRY)
    elif practice.enough(left, case.need.works_pa, 0.0) == "stop":
        reasons.append(SHORT)
    elif line.crest(flow) < breaks_at(line):
        reasons.append(VACUUM)
    if speed > case.fastest * (1 + 1e-9):  # a limit typed in another unit is still met
        reasons.append(FAST)
    close = (
        practice.enough(left, case.need.works_pa, 0.0) == "care"
        or practice.speed_level(speed) == "care"
        or line.crest(flow) < -HAIR
    )
    return Trial(pipe, line, speed, line.loss(flow), left, rating, tuple(reasons), close)


def trials(case: Case) -> tuple[Trial, ...]:
    """Every size of the kind tried, the narrowest first."""
    return tuple(tried(case, pipe) for pipe in pipes.sizes(case.kind))


def smallest(case: Case, tries: tuple[Trial, ...]) -> Trial | None:
    """The narrowest size that fits and is not borderline, unless that is far too wide; None if
    none fits."""
    fits = [trial for trial in tries if trial.fits]
    sure = next((trial for trial in fits if trial.sure), None)
    if sure is not None and not far_too_wide(case, tries, sure):
        return sure
    return fits[0] if fits else None


def nearest(case: Case, tries: tuple[Trial, ...]) -> Trial:
    """The size to show where none fits: strength and heat apart the first that would, else
    ``modest``."""
    apart = [t for t in tries if set(t.reasons) <= {HOT, WEAK}]
    apart.sort(key=lambda trial: trial.close)  # those with something to spare first
    return next(iter(apart), None) or modest(case, tries)


def modest(case: Case, tries: tuple[Trial, ...]) -> Trial:
    """The narrowest size, not too fast, that would lose no more than a fifth to friction.

    For saying which start pressure would do; the widest size if none is so wide.
    """
    line = case.line
    allowed = case.need.works_pa + line.weight * max(0.0, line.rise_m)
    for trial in tries:
        modest_loss = line.weight * trial.loss <= practice.MODEST_LOSS * allowed
        if modest_loss and FAST not in trial.reasons:
            return trial
    return tries[-1]


def far_too_wide(case: Case, tries: tuple[Trial, ...], chosen: Trial) -> bool:
    """Whether only a pipe far wider than this flow needs is enough: the height is to blame."""
    return tries.index(chosen) > tries.index(modest(case, tries)) + practice.MOST_SIZES_UP


def largest_flow(case: Case, trial: Trial, needed_pa: float) -> float:
    """The most a size carries that leaves ``needed_pa`` (Pa), no faster than allowed, m3/s."""
    most = case.fastest * case.need.flow_m3s / trial.speed if trial.speed else 0.0
    return trial.line.largest_flow(needed_pa, most) if most > 0 else 0.0
