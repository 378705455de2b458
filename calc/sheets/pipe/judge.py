"""Which size does, what is wrong with it or with every size, and what would put it right."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from calc import practice
from calc.errors import InputError
from calc.page.answer import Link
from calc.page.findings import RANKS, Finding, Fix, ranked
from calc.pipe import friction
from calc.sheets.parts.carry import exact
from calc.sheets.parts.line_fixes import line_fixes, pressure_for, round_down
from calc.sheets.parts.line_judge import kind_name, line_findings, too_hot
from calc.sheets.parts.line_rows import as_text, line_texts
from calc.sheets.pipe import case as sizing

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.sheets.parts.line_fixes import Change
    from calc.sheets.pipe.case import Case, Trial
    from calc.units import Reader

HOTTEST = 333.15  # K, the hottest water the next sheets take
LEAST_SET = 1e3  # Pa, what the next sheets take as a pressure
LEAST_FLOW = 1e-6  # m3/s, the least the form takes
MOST_FIXES = 3  # more is a list, not advice; our choice
TRY = "Try this fix"


def findings(
    case: Case, tries: tuple[Trial, ...], chosen: Trial | None, reader: Reader
) -> tuple[Finding, ...]:
    """What is found: of the line as it is, of the size chosen, or why no size does."""
    if case.counted:
        return (*line_findings(case.line, case.need, reader), *_own_limit(case, reader))
    if chosen is not None:
        found = line_findings(chosen.line, case.need, reader)
        named = (_named(one, chosen, case, reader) for one in found)
        return (*_height(case, tries, chosen, reader), *named)
    none = _none_fits(case, tries, reader)
    shown = sizing.nearest(case, tries)
    others = line_findings(shown.line, case.need, reader)
    return (none, *(one for one in others if one.key != none.key))


def _named(one: Finding, chosen: Trial, case: Case, reader: Reader) -> Finding:
    """A finding of hardly enough pressure, with the size it is about."""
    if one.key != "short" or one.level != "care":
        return one
    left, needed = (reader.show(p, "pressure") for p in (chosen.left, case.need.works_pa))
    said = f"{chosen.pipe.label} leaves {left}, little more than the {needed} you need."
    return replace(one, text=said)


def _own_limit(case: Case, reader: Reader) -> list[Finding]:
    speed = case.line.speed(case.need.flow_m3s)
    if speed <= case.fastest * (1 + 1e-9) or case.fastest >= practice.SPEED_NOTE:
        return []
    runs, most = reader.show(speed, "speed"), reader.show(case.fastest, "speed")
    return [Finding("care", "fast", f"Water runs at {runs}; you allow {most}.")]


def _height(case: Case, tries: tuple[Trial, ...], chosen: Trial, reader: Reader) -> list[Finding]:
    if not sizing.far_too_wide(case, tries, chosen):
        return []
    static, need = (reader.show(p, "pressure") for p in (case.line.static, case.need.works_pa))
    said = (
        f"The height is the bottleneck: you need {need} of {static} static pressure, so only "
        f"{chosen.pipe.name} pipe, far too wide, is enough."
    )
    return [Finding("care", "height", said)]


def _none_fits(case: Case, tries: tuple[Trial, ...], reader: Reader) -> Finding:
    """The one finding that says why no size of the kind does."""
    show, need, line = reader.show, case.need, case.line
    name = kind_name(tries[0].pipe)
    strong = [t for t in tries if not {sizing.WEAK, sizing.HOT} & set(t.reasons)]
    if not strong:
        return next(
            one
            for one in line_findings(tries[0].line, need, reader)
            if one.key in ("too-hot", "over-rating")
        )
    best = strong[-1]
    dry = [one for one in line_findings(best.line, need, reader)
           if one.key in ("no-water", "below-vacuum")]  # fmt: skip
    if dry and line.static > 0 and sizing.DRY in best.reasons:
        said = (
            f"No size of {name} is enough: friction uses all the pressure even in {best.pipe.name}."
        )
        return Finding("stop", "no-water", said, "cannot")
    if dry:
        return dry[0]
    if line.static < need.works_pa:
        static, needed = show(line.static, "pressure"), show(need.works_pa, "pressure")
        said = f"A wider pipe cannot help: static pressure at the outlet is {static}; you need "
        return Finding("stop", "short", f"{said}{needed}.")
    if sizing.SHORT in best.reasons:
        left, needed = show(best.left, "pressure"), show(need.works_pa, "pressure")
        said = f"No size of {name} is enough: {best.pipe.name} leaves {left}; you need {needed}."
        return Finding("stop", "short", said)
    speed, most = show(best.speed, "speed"), show(case.fastest, "speed")
    said = (
        f"No size of {name} is enough: in {best.pipe.name} water runs at {speed}; you allow {most}."
    )
    return Finding("stop", "fast", said)


def told(case: Case, chosen: Trial | None, reader: Reader) -> str:
    """The facts in one sentence."""
    show, need = reader.show, case.need
    flow, needed = show(need.flow_m3s, "flow"), show(need.works_pa, "pressure")
    if case.counted or chosen is None:
        left = show(case.line.left(need.flow_m3s), "pressure")
        return f"You get {left} at the outlet with {flow} flowing; you need {needed}."
    left = show(chosen.left, "pressure")
    said = f"{chosen.pipe.label} is the smallest size that works"
    return f"{said}: it leaves {left} with {flow} flowing."


# Fixes ---------------------------------------------------------------------------------------


def fixes(case: Case, tries: tuple[Trial, ...], chosen: Trial | None,
          found: tuple[Finding, ...], values: Values,
          reader: Reader) -> tuple[Fix, ...]:  # fmt: skip
    """``Fix``es for the worst finding, each tried anew on the whole line."""
    worst = next((one for one in ranked(found) if one.level != "note"), None)
    if worst is None:
        return ()
    if case.counted or (chosen is not None and worst.key != "height"):
        line = case.line if case.counted or chosen is None else chosen.line
        fixed = line_fixes(
            line, case.need, reader, lambda change: _linked(case, values, change, reader)
        )
        harm = _spared(found, worst, ("harm",))
        return (*_throughout(case, tries, harm, reader), *fixed)[:MOST_FIXES]
    for ranks in (("harm",), RANKS):  # where nothing is enough, one that leaves it borderline
        trying = Trying(case, values, reader, _spared(found, worst, ranks))
        fixed = (
            *_cooler(trying),
            *(_other_kind(trying) if chosen is None else ()),
            *_more_pressure(trying, sizing.modest(case, tries)),
            *_less_flow(trying, tries),
        )
        if fixed:
            return fixed[:MOST_FIXES]
    return (Fix("No single change we tried is enough."),)


def _spared(found: tuple[Finding, ...], worst: Finding, ranks: tuple[str, ...]) -> frozenset[str]:
    """Keys of what is to be taken care of whatever is done about the worst."""
    care = {one.key for one in found if one.level == "care" and one.rank in ranks}
    return frozenset(care - {worst.key})


def _throughout(
    case: Case, tries: tuple[Trial, ...], spared: frozenset[str], reader: Reader
) -> list[Fix]:
    """For a line given section by section: the one size that works for all of it."""
    works = (t for t in tries if case.counted and _works(case, t, spared, reader))
    return [
        Fix(f"One size throughout: {t.pipe.label} leaves {reader.show(t.left, 'pressure')}.")
        for t in works
    ][:1]


@dataclass(frozen=True)
class Trying:
    """What every try at a fix needs; spared: keys of what is wrong with any size."""

    case: Case
    values: Values
    reader: Reader
    spared: frozenset[str]

    def first(self, case: Case) -> Trial | None:
        """The narrowest size of a case that works."""
        return next((t for t in sizing.trials(case) if self.works(case, t)), None)

    def works(self, case: Case, trial: Trial) -> bool:
        """Whether a size works, what is spared apart."""
        return _works(case, trial, self.spared, self.reader)

    def link(self, **changed: str) -> Link:
        """The sheet with these texts changed."""
        return Link(TRY, "pipe", given(self.case, self.values, self.reader) | changed)


def _works(case: Case, trial: Trial, spared: frozenset[str], reader: Reader) -> bool:
    """Whether a size fits and nothing about it is borderline, what is spared apart."""
    if not trial.fits:
        return False
    found = line_findings(trial.line, case.need, reader)
    return {one.key for one in found if one.level != "note"} <= spared


def _cooler(trying: Trying) -> list[Fix]:
    line = trying.case.line
    if line.heat_k <= line.temperature_k:
        return []
    trial = trying.first(replace(trying.case, line=replace(line, hottest_k=None)))
    if trial is None:
        return []
    shown = trying.reader.show(line.temperature_k, "temperature")
    heat = exact(line.temperature_k, "temperature", trying.reader)
    said = f"Bury or shade the pipe, so that it gets no hotter than {shown}: then "
    return [Fix(f"{said}{trial.pipe.label} works.", trying.link(hottest=heat))]


def _other_kind(trying: Trying) -> list[Fix]:
    """The narrowest pipe of another kind that works: metric for metric, inch for inch if any."""
    case = trying.case
    found = [trial for kind in sizing.others(case.kind)
             if (trial := trying.first(case.in_kind(kind)))]  # fmt: skip
    if not found:
        return []
    other = sizing.most_alike(case.kind, found)
    left = trying.reader.show(other.left, "pressure")
    return [Fix(f"Use {other.pipe.label}: it leaves {left}.", trying.link(kind=other.pipe.kind))]


def _more_pressure(trying: Trying, trial: Trial) -> list[Fix]:
    """The start pressure with which a size of modest friction works."""
    case, reader = trying.case, trying.reader
    needed = pressure_for(trial.line, case.need, reader)
    if needed is None or needed <= trial.line.start_pa:
        return []
    highest = case.line.highest_pa
    most = None if highest is None else max(highest, needed)
    raised = replace(case, line=replace(case.line, start_pa=needed, highest_pa=most))
    again = sizing.tried(raised, trial.pipe)
    if not trying.works(raised, again):
        return []
    height = case.line.static <= case.need.sure_pa
    cause = "The height is the bottleneck, not the pipe. " if height else ""
    shown, left = (reader.show(p, "pressure") for p in (needed, again.left))
    said = f"{cause}With {shown} at the start, {trial.pipe.label} leaves {left}."
    changed = {"pressure": exact(needed, "pressure", reader)}
    if most is not None:
        changed["highest"] = exact(most, "pressure", reader)
    return [Fix(said, trying.link(**changed))]


def _less_flow(trying: Trying, tries: tuple[Trial, ...]) -> list[Fix]:
    """The most that the widest size which is strong enough carries."""
    case, reader = trying.case, trying.reader
    strong = [t for t in tries if not {sizing.WEAK, sizing.HOT} & set(t.reasons)]
    if not strong:
        return []
    best = strong[-1]
    flow = round_down(sizing.largest_flow(case, best, case.need.sure_pa), "flow", reader)
    less = replace(case, need=replace(case.need, flow_m3s=flow))
    if not LEAST_FLOW < flow < case.need.flow_m3s:
        return []
    if not trying.works(less, sizing.tried(less, best.pipe)):
        return []
    said = f"Open less at once: {best.pipe.label} carries {reader.show(flow, 'flow')}."
    return [Fix(said, trying.link(flow=exact(flow, "flow", reader)))]


def _linked(case: Case, values: Values, change: Change, reader: Reader) -> Link | None:
    """The sheet with a change made; None where the form has no words for it."""
    line, need = change.line, change.need
    if not case.counted and (line.reduced or line.single is None):
        return None
    changed = {
        "pressure": exact(line.start_pa, "pressure", reader),
        "flow": exact(need.flow_m3s, "flow", reader),
        "hottest": exact(line.heat_k, "temperature", reader),
    }
    try:
        if case.counted:
            changed["line"] = as_text(line.sections, reader)
    except InputError:
        return None
    if values.highest is not None:
        changed["highest"] = exact(line.highest_pa, "pressure", reader)
    return Link(TRY, "pipe", given(case, values, reader) | changed)


# Where to go on ------------------------------------------------------------------------------


def given(case: Case, values: Values, reader: Reader) -> dict[str, str]:
    """Every text of the form as it now is, for a link to the same sheet."""
    counts = {one.key: str(values.numbers[one.key]) for one in friction.FITTINGS}
    return shared(case, values, reader) | counts | {
        "pressure": exact(values.pressure, "pressure", reader),
        "wanted": exact(values.wanted, "pressure", reader),
        "kind": values.kind,
        "fastest": exact(values.fastest, "speed", reader),
        "highest": exact(values.highest, "pressure", reader),
        "crest": exact(values.crest, "length", reader),
    }  # fmt: skip


def shared(case: Case, values: Values, reader: Reader) -> dict[str, str]:
    """The texts that other sheets of one line have too."""
    return {
        **line_texts(values, reader),
        "hottest": exact(values.hottest, "temperature", reader),
        "lowest": exact(values.lowest, "length", reader),
    }


def links(case: Case, shown: Trial, values: Values, reader: Reader) -> tuple[Link, ...]:
    """Where to go on, with every number the other sheet asks for too."""
    if values.water > HOTTEST or too_hot(shown.line, shown.pipe):
        return ()
    pipe = {"kind": shown.pipe.kind, shown.pipe.kind: shown.pipe.size}
    every = shared(case, values, reader) | pipe
    pressure = {"pressure": exact(values.pressure, "pressure", reader)}
    wanted = {"wanted": exact(values.wanted, "pressure", reader)}
    reach = {**every, **pressure, **wanted, "use": "own",
             "highest": exact(values.crest, "length", reader)}  # fmt: skip
    found = [Link("Does the water reach, and how high", "reach", reach)]
    kept = {key: every[key] for key in ("flow", "climb", "length", "water", *pipe, "line")
            if key in every}  # fmt: skip
    set_to = {"set": pressure["pressure"]} if values.pressure >= LEAST_SET else {}
    found.append(Link("Which pump suits this pipe", "pump_match", {**kept, **wanted, **set_to}))
    if values.pressure >= LEAST_SET and not case.counted:
        surge = {key: kept[key] for key in ("flow", "length", "water", *pipe)} | pressure
        found.append(Link("Water hammer in this pipe", "surge", surge))
    return tuple(found)
