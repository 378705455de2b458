"""Which size does, what is wrong with it or with every size, and where to go on."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from calc import practice
from calc.page.answer import Link
from calc.page.findings import Finding
from calc.pipe import friction
from calc.sheets.parts.carry import exact
from calc.sheets.parts.line_judge import line_findings, too_hot
from calc.sheets.parts.line_rows import as_text, line_texts
from calc.sheets.pipe import case as sizing
from calc.sheets.pipe.case import HOSES

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.pipe.pipes import Pipe
    from calc.sheets.pipe.case import Case, Trial
    from calc.units import Reader

HOTTEST = 333.15  # K, the hottest water the next sheets take
LEAST_SET = 1e3  # Pa, what the next sheets take as a pressure


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
    left, needed = reader.apart(chosen.left, case.need.works_pa, "pressure")
    more = "just what" if left == needed else f"little more than the {needed}"
    return replace(one, text=f"{size_words(chosen.pipe)} leaves {left}, {more} you need.")


def size_words(pipe: Pipe) -> str:
    """A size in a sentence about one kind: "32 mm pipe"."""
    return f"{pipe.name} {'hose' if pipe.kind in HOSES else 'pipe'}"


def _own_limit(case: Case, reader: Reader) -> list[Finding]:
    speed = case.line.speed(case.need.flow_m3s)
    # a limit is shown with four digits: the usual one in another unit is no stricter one
    if speed <= case.fastest * (1 + 1e-9) or case.fastest >= practice.SPEED_NOTE * (1 - 1e-3):
        return []
    runs, most = reader.apart(speed, case.fastest, "speed")
    return [Finding("care", "fast", f"Water runs at {runs}; you allow {most}.")]


def _height(case: Case, tries: tuple[Trial, ...], chosen: Trial, reader: Reader) -> list[Finding]:
    if not sizing.far_too_wide(case, tries, chosen):
        return []
    static, need = reader.apart(case.line.static, case.need.works_pa, "pressure")
    said = (
        f"The height is the bottleneck: you need {need} of {static} static pressure, so only "
        f"{size_words(chosen.pipe)}, far too wide, is enough."
    )
    return [Finding("care", "height", said)]


def _none_fits(case: Case, tries: tuple[Trial, ...], reader: Reader) -> Finding:
    """The one finding that says why no size of the kind does."""
    need, line = case.need, case.line
    strong = [t for t in tries if not {sizing.WEAK, sizing.HOT} & set(t.reasons)]
    if not strong:
        return next(
            one
            for one in line_findings(tries[0].line, need, reader)
            if one.key in ("too-hot", "over-rating")
        )
    best = strong[-1]
    size = best.pipe.name
    dry = [one for one in line_findings(best.line, need, reader)
           if one.key in ("no-water", "below-vacuum")]  # fmt: skip
    if dry and line.static > 0 and sizing.DRY in best.reasons:
        said = f"No size of this pipe is enough: friction uses all the pressure even in {size}."
        return Finding("stop", "no-water", said, "cannot")
    if dry:
        return dry[0]
    if line.static < need.works_pa:
        static, needed = reader.apart(line.static, need.works_pa, "pressure")
        said = f"A wider pipe cannot help: static pressure at the outlet is {static}; you need "
        return Finding("stop", "short", f"{said}{needed}.")
    if sizing.SHORT in best.reasons:
        left, needed = reader.apart(best.left, need.works_pa, "pressure")
        said = f"No size of this pipe is enough: even {size} leaves {left}; you need {needed}."
        return Finding("stop", "short", said)
    speed, most = reader.apart(best.speed, case.fastest, "speed")
    said = f"No size of this pipe is enough: even in {size} water runs at {speed}; you allow "
    return Finding("stop", "fast", f"{said}{most}.")


def told(case: Case, chosen: Trial | None, reader: Reader) -> str:
    """The facts in one sentence."""
    need = case.need
    flow = reader.show(need.flow_m3s, "flow")
    if case.counted or chosen is None:
        left, needed = reader.apart(case.line.left(need.flow_m3s), need.works_pa, "pressure")
        return f"You get {left} at the outlet with {flow} flowing; you need {needed}."
    left = reader.show(chosen.left, "pressure")
    said = f"{size_words(chosen.pipe)} is the smallest size that works"
    return f"{said}: it leaves {left} with {flow} flowing."


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
        "line": as_text(case.line.sections, reader) if case.counted else "",
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
