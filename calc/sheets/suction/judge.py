"""What is found on a suction line, what puts it right, and where to go on."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import TYPE_CHECKING

from calc import practice, suction
from calc.page.answer import Link
from calc.page.findings import Finding, Fix, unchecked
from calc.pipe import pipes
from calc.pipe.line import larger_pipes
from calc.sheets.parts.carry import texts
from calc.sheets.suction.case import RATED_AT, SLACK, Case

if TYPE_CHECKING:
    from calc.page.fields import Field
    from calc.page.form import Values
    from calc.pipe.pipes import Pipe
    from calc.units import Reader

SAFE = 0.005  # share: half of the last of three figures, so that a fix as printed still holds
LAST_DIGIT = 2e-3  # m, so that the height as printed still holds
# What another pipe, less flow or a lower pump can put right; a fix leaves none of them.
FIXABLE = frozenset(
    {"npsh", "npsh-margin", "fast", "lift-practice", "vacuum-collapse", "too-hot", "over-rating"}
)
RIGID = {"metric": "pe100-sdr11", "us": "pvc40"}  # the kind of pipe to offer first
SOFT = ("hose", "layflat")  # kinds that a vacuum can flatten
SHALLOW = 0.1  # m, the least height of water above a pump worth naming


def told(case: Case, reader: Reader) -> str:
    """The verdict's sentence where nothing is wrong."""
    show = reader.show
    flow, lift = show(case.flow, "flow"), show(abs(case.lift), "length")
    if case.lift <= 0 and case.vacuum <= 0:
        return f"The water flows in by itself: it is {lift} above the pump, at {flow}."
    if case.lift <= 0:
        return f"The pump can draw {flow}: the water is {lift} above it."
    spare = "" if case.spare is None else (
        f", with {show(case.spare - case.margin, 'head')} of NPSH beyond the margin"
    )  # fmt: skip
    return f"The pump can draw {flow} from {lift} down{spare}."


# Findings -----------------------------------------------------------------------------------


def findings(case: Case, reader: Reader) -> tuple[Finding, ...]:
    """Everything found, in no order."""
    return tuple(
        found
        for part in (_npsh, _usual_lift, _collapse, _rating, _speed, _notes)
        for found in part(case, reader)
    )


def _npsh(case: Case, reader: Reader) -> Iterator[Finding]:
    show = reader.show
    if case.available <= 0:
        yield _boils(case, reader)
    elif case.needed is None:
        yield _not_checked(case, reader)
    elif case.spare < -SLACK:
        yield Finding(
            "stop",
            "npsh",
            f"The pump needs {show(case.needed, 'head')} NPSH at this flow and has "
            f"{show(case.available, 'head')}: it would cavitate or lose its prime.",
            "cannot",
        )
    elif case.spare < max(case.margin, practice.NPSH_MARGIN) - SLACK:
        keep = max(case.margin, practice.NPSH_MARGIN)
        yield Finding(
            "care",
            "npsh-margin",
            f"This uses up the NPSH margin: {show(max(case.spare, 0.0), 'head')} is left beyond "
            f"what the pump needs; keep {show(keep, 'head')}.",
        )


def _boils(case: Case, reader: Reader) -> Finding:
    limit = reader.show(case.limit, "head")
    if case.lift >= case.limit:
        text = (
            f"No pump can draw that high: the air pressure raises this water {limit} at most, and "
            f"the lift is {reader.show(case.lift, 'length')}."
        )
    else:
        used = reader.show(case.lift + case.loss, "head")
        text = (
            "The water boils before it reaches the pump: lift and friction use "
            f"{used}, and the air pressure raises it {limit} at most."
        )
    return Finding("stop", "npsh", text, "cannot")


def _not_checked(case: Case, reader: Reader) -> Finding:
    if case.would_pass <= SLACK:
        left = reader.show(case.available, "head")
        text = f"Only {left} NPSH is left at the pump: no pump could work with its margin kept."
        return Finding("stop", "npsh", text, "cannot")
    if case.by == "lift":
        dry = suction.dry_lift_for(case.would_pass, case.site, RATED_AT)
        return unchecked(
            "npsh-unchecked",
            "The dry lift is not known, so it is not checked: a pump that states "
            f"{reader.show(dry, 'length')} or more would work.",
        )
    return unchecked(
        "npsh-unchecked",
        "NPSH required is not known, so it is not checked: a pump that needs "
        f"{reader.show(case.would_pass, 'head')} or less at this flow would work.",
    )


def _usual_lift(case: Case, reader: Reader) -> Iterator[Finding]:
    if case.lift > case.usual_lift + SLACK:
        yield Finding(
            "care",
            "lift-practice",
            f"The lift is {reader.show(case.lift, 'length')}: above about "
            f"{reader.show(case.usual_lift, 'length', 2)} at this altitude, a worn valve or a "
            "small air leak can stop the pump.",
        )


def _collapse(case: Case, reader: Reader) -> Iterator[Finding]:
    if case.vacuum <= 0:
        return
    vacuum = reader.show(case.vacuum, "pressure")
    if case.pipe.kind == "layflat":
        yield Finding(
            "stop",
            "vacuum-collapse",
            f"Lay-flat hose closes under suction: the vacuum at the pump is {vacuum}.",
            "cannot",
        )
    elif case.pipe.kind == "hose":
        most = reader.show(practice.HOSE_VACUUM, "pressure")
        text = f"Garden hose may be sucked flat: the vacuum at the pump is {vacuum}"
        if case.vacuum > practice.HOSE_VACUUM:
            text += f", and {most} is the most to ask of it"
        level = "care" if case.vacuum > practice.HOSE_VACUUM else "note"
        yield Finding(level, "vacuum-collapse", f"{text}.")


def _rating(case: Case, reader: Reader) -> Iterator[Finding]:
    (stress,) = case.line.stresses()
    label = case.pipe.label
    if stress.hot:
        water = reader.show(case.line.temperature_k, "temperature")
        text = f"No rating is known for {label} with water at {water}: it softens"
        if stress.pressure_pa > 0:
            yield Finding("stop", "too-hot", f"{text}, and may burst.", "harm")
        else:
            yield unchecked("too-hot", f"{text}, and a vacuum may flatten it.")
    elif stress.over:
        most, rated = (reader.show(p, "pressure") for p in (stress.pressure_pa, stress.rating_pa))
        text = f"The suction pipe carries {most} at the pump and is rated {rated}."
        yield Finding("stop", "over-rating", text, "harm")
    elif stress.rating_pa is None and stress.pressure_pa > 0:
        most = reader.show(stress.pressure_pa, "pressure")
        text = f"No rating is known for this pipe: the water above it presses with {most}."
        yield Finding("note", "no-rating", text)


def _speed(case: Case, reader: Reader) -> Iterator[Finding]:
    level = practice.speed_level(case.speed)
    if level:
        yield Finding(
            level,
            "fast",
            f"The water speed in the suction pipe is {reader.show(case.speed, 'speed')}: keep it "
            f"below about {reader.show(practice.SPEED_NOTE, 'speed')} with a wider pipe.",
        )


def _notes(case: Case, reader: Reader) -> Iterator[Finding]:
    if case.available < 0:
        yield Finding(
            "note",
            "below-vacuum",
            "A figure below zero cannot happen: the water boils first, and less flows.",
        )
    if case.lift <= 0 < case.vacuum:
        yield Finding(
            "note",
            "vacuum",
            "The water is above the pump, yet friction leaves a vacuum of "
            f"{reader.show(case.vacuum, 'pressure')} there: air can leak in.",
        )
    if case.foot == 0 and case.lift > 0:
        priming = case.by == "lift"
        yield Finding(
            "note" if priming else "care",
            "no-foot-valve",
            "Without a foot valve the suction pipe empties at every stop, and the pump must be "
            + ("primed again." if priming else "filled again before it can start."),
        )
    if case.line.temperature_k > practice.WARM_SUCTION:
        vapour = reader.show(case.site.vapour_pa / case.site.weight, "head")
        yield Finding(
            "note", "warm", f"Warm water boils easily: its vapour pressure takes {vapour} of lift."
        )


# Fixes --------------------------------------------------------------------------------------


def left_over(case: Case, reader: Reader) -> set[str]:
    """Keys of what is still wrong with a case that a fix could put right."""
    found = findings(case, reader)
    return {one.key for one in found if one.level != "note" and one.key in FIXABLE}


def fixes(case: Case, fields: tuple[Field, ...], values: Values, reader: Reader) -> tuple[Fix, ...]:
    """What puts it right, each worked out anew; the likely best first."""

    def fix(text: str, **changed: str) -> Fix:
        link = Link("Try this fix", "suction", texts(fields, values, **changed))
        return Fix(text, link)

    foot = tuple(_foot_valve(case, reader, fix))
    if not left_over(case, reader):
        return foot
    found = [*_pipe(case, reader, fix), *_strainer(case, reader, fix), *_less(case, reader, fix)]
    found += _lower(case, reader, fix)
    if case.lift >= case.limit - case.margin:
        found.append(Fix("Or use a submersible pump, which has no suction lift."))
    return (*(found or _no_fix(case, reader)), *foot)


def _no_fix(case: Case, reader: Reader) -> Iterator[Fix]:
    most = case.largest_flow()
    if most > 0:
        yield Fix(
            "This pipe is the bottleneck: three sizes up are not enough. With the NPSH margin kept "
            f"it passes {reader.show(most, 'flow')}."
        )
    else:
        yield Fix("Use a pump with a lower NPSH required, or a submersible pump.")


def _foot_valve(case: Case, reader: Reader, fix: Callable[..., Fix]) -> Iterator[Fix]:
    """A foot valve where the pump needs one; its own loss must leave nothing newly wrong."""
    if not any(one.key == "no-foot-valve" and one.level == "care" for one in _notes(case, reader)):
        return
    if left_over(case.with_foot_valve(), reader) <= left_over(case, reader):
        yield fix("Fit a foot valve with a strainer at the foot of the suction pipe.", foot="1")


def _candidates(case: Case, reader: Reader) -> Iterator[Pipe]:
    """Pipes to try: the next sizes of its kind, or of firmer kinds where the kind is at fault."""
    found = findings(case, reader)
    wrong = {one.key for one in found if one.level != "note"}
    if not wrong & {"vacuum-collapse", "too-hot", "over-rating"}:
        yield from larger_pipes(case.pipe, practice.MOST_SIZES_UP)
        return
    first = RIGID[reader.system]
    for kind in (first, *(kind for kind in pipes.KINDS if kind not in (first, *SOFT))):
        wide = [pipe for pipe in pipes.sizes(kind) if pipe.inside_m >= case.pipe.inside_m]
        yield from wide[: practice.MOST_SIZES_UP]


def _pipe(case: Case, reader: Reader, fix: Callable[..., Fix]) -> Iterator[Fix]:
    for pipe in _candidates(case, reader):
        other = case.with_pipe(pipe)
        if not left_over(other, reader):
            most = ""
            if other.allowed is not None:
                up = reader.show(min(other.allowed, other.usual_lift), "length")
                most = f": the pump may then be up to {up} above the water"
            yield fix(f"Use {pipe.label} as the suction pipe{most}.", **_chosen(pipe))
            return


def _chosen(pipe: Pipe) -> dict[str, str]:
    return {"kind": pipe.kind, pipe.kind: pipe.size}


def _strainer(case: Case, reader: Reader, fix: Callable[..., Fix]) -> Iterator[Fix]:
    """A strainer that loses less, where it takes more than pipe and fittings do."""
    if case.spare is None or case.strainer <= case.loss - case.strainer:
        return
    loss = (case.strainer - (case.margin - case.spare)) * (1 - SAFE)
    if loss > 0 and not left_over(case.with_strainer(loss), reader):
        shown = reader.show(loss, "head")
        yield fix(
            f"The strainer is the bottleneck: clean it, or use one that loses {shown} at most.",
            strainer=reader.typed(loss, "head"),
        )


def _less(case: Case, reader: Reader, fix: Callable[..., Fix]) -> Iterator[Fix]:
    """Less flow, where enough is left to be worth it."""
    slow = case.flow * practice.SPEED_CARE / case.speed
    flow = min(case.largest_flow(), slow) * (1 - SAFE)
    if flow < practice.LEAST_FLOW_KEPT * case.flow or left_over(case.with_flow(flow), reader):
        return
    text = f"Draw {reader.show(flow, 'flow')} at most through this pipe: open less at once."
    # the strainer's loss is entered at the flow
    lost = case.line.device_loss_in(case.section, flow)
    changed = {"strainer": reader.typed(lost, "head")} if case.strainer else {}
    yield fix(text, flow=reader.typed(flow, "flow"), **changed)


def _lower(case: Case, reader: Reader, fix: Callable[..., Fix]) -> Iterator[Fix]:
    """The pump lower, in another pipe where that alone is not enough."""
    for pipe in (case.pipe, *_candidates(case, reader)):
        other = case.with_pipe(pipe)
        target = min(other.usual_lift, other.lift if other.allowed is None else other.allowed)
        lower = (case.lift - target) * (1 + SAFE) + LAST_DIGIT
        new = case.lift - lower
        new = -SHALLOW if -SHALLOW < new < SHALLOW else new
        if target >= case.lift or new < -50.0 or left_over(other.with_lift(new), reader):
            continue
        where = (
            f"at most {reader.show(new, 'length')} above the water"
            if new >= 0
            else f"with the water at least {reader.show(-new, 'length')} above it"
        )
        changed = {"lift": reader.typed(new, "length")}
        start = "Place"
        if pipe != case.pipe:
            start, changed = f"Use {pipe.label} and place", changed | _chosen(pipe)
        elif _too_high(case):
            start = "Height is the bottleneck, a wider pipe cannot help: place"
        yield fix(f"{start} the pump {reader.show(case.lift - new, 'length')} lower, {where}.",
                  **changed)  # fmt: skip
        return


def _too_high(case: Case) -> bool:
    """Whether even a pipe without friction would not do."""
    still = case.limit - (case.needed or 0.0) - case.margin
    return case.lift > min(still, case.usual_lift) + SLACK


# Cautions and links -------------------------------------------------------------------------


def cautions(case: Case, reader: Reader) -> tuple[str, ...]:
    """Standing advice that belongs to these numbers."""
    found = []
    if case.lift > 0:
        start = "Fill pipe and pump before the first start, unless the pump primes itself"
        seconds = case.priming_seconds()
        if seconds is not None:
            time = reader.show(seconds, "time" if seconds < 120 else "minutes", 2)
            start += f": that takes at least {time}, running dry"
        found.append(f"{start}.")
    else:
        found.append(
            "Fit an isolating valve between the water and the pump, so that it can be opened "
            "safely."
        )
    if case.vacuum > 0:
        found.append(
            "A suction pipe leaks air inward, where no water shows. Use few joints, and let the "
            "pipe rise all the way to the pump."
        )
    return tuple(found)


def links(case: Case, values: Values, reader: Reader) -> tuple[Link, ...]:
    """Go on to the pressure side, with what is known."""
    flow = reader.typed(case.flow, "flow")
    pump = {"flow": flow}
    if -50.0 <= case.lift <= 9.0 and case.loss <= 9.0:
        pump["lift"] = reader.typed(case.lift, "length")
        pump["suction"] = reader.typed(case.loss, "head")
    if case.line.temperature_k <= 333.15:
        pump["water"] = reader.typed(case.line.temperature_k, "temperature")
    if case.altitude <= 4500.0:
        pump["altitude"] = reader.typed(case.altitude, "length")
    return (
        Link("Now the pressure side: will it reach?", "reach", {"flow": flow}),
        Link("Which pump goes with the pipe?", "pump_match", pump),
    )
