"""What is found on a suction line, what puts it right, and where to go on."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import TYPE_CHECKING

from calc import practice, suction
from calc.page.answer import Link
from calc.page.findings import Finding, unchecked
from calc.sheets.parts.carry import exact
from calc.sheets.parts.line_cautions import PRIMES, hot_cautions
from calc.sheets.parts.line_judge import heat_findings, too_hot
from calc.sheets.suction.case import RATED_AT, SLACK, Case

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.units import Reader

PUMP_HOTTEST, PUMP_HIGHEST = 333.15, 4500.0  # K, m: as far as the sheet of pumps goes


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
        for part in (_npsh, _pulses, _usual_lift, _collapse, _rating, _speed, _notes)
        for found in part(case, reader)
    )


def _npsh(case: Case, reader: Reader) -> Iterator[Finding]:
    if case.available <= 0:
        yield _boils(case, reader)
    elif case.needed is None:
        yield _not_checked(case, reader)
    elif case.spare < -SLACK:
        needs, has = reader.apart(case.needed, case.available, "head")
        text = f"The pump needs {needs} NPSH at this flow and has {has}"
        fails = "it would cavitate or lose its prime"
        if case.pulses > 0:
            text += f", as its pulses take {reader.show(case.pulses, 'head')}"
            fails = "it would cavitate"
        yield Finding("stop", "npsh", f"{text}: {fails}.", "cannot")
    elif case.spare < max(case.margin, practice.NPSH_MARGIN) - SLACK:
        left, keep = reader.apart(
            max(case.spare, 0.0), max(case.margin, practice.NPSH_MARGIN), "head"
        )
        text = f"This uses up the NPSH margin: {left} is left beyond what the pump needs"
        pulsed = f", and pulses take {reader.show(case.pulses, 'head')}" if case.pulses > 0 else ""
        yield Finding("care", "npsh-margin", f"{text}; keep {keep}{pulsed}.")


def _pulses(case: Case, reader: Reader) -> Iterator[Finding]:
    """Pulses that cannot be counted, as the strokes are not known."""
    if case.pulsing is None or case.strokes is not None:
        return
    said = "The pump's strokes are not known, so its pulses are not checked"
    most = case.most_strokes
    if most is not None:
        said += f": up to {reader.show(most, 'rpm')} would work"
    yield unchecked("pulses-unchecked", f"{said}.")


def _boils(case: Case, reader: Reader) -> Finding:
    if case.lift >= case.limit:
        lift, limit = reader.apart(case.lift, case.limit, "length")
        text = (
            f"No pump can draw that high: the air pressure raises this water {limit} at most, and "
            f"the lift is {lift}."
        )
    else:
        used, limit = reader.apart(case.lift + case.taken, case.limit, "head")
        takers = "lift, friction and pulses use" if case.pulses > 0 else "lift and friction use"
        text = (
            f"The water boils before it reaches the pump: {takers} "
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
        lift, usual = reader.apart(case.lift, case.usual_lift, "length")
        yield Finding(
            "care",
            "lift-practice",
            f"The lift is {lift}: above about {usual} at this altitude, a worn valve or a small "
            "air leak can stop the pump.",
        )


def _collapse(case: Case, reader: Reader) -> Iterator[Finding]:
    if case.vacuum <= 0:
        return
    vacuum, most = reader.apart(case.vacuum, practice.HOSE_VACUUM, "pressure")
    if case.pipe.kind == "layflat":
        yield Finding(
            "stop",
            "vacuum-collapse",
            f"Lay-flat hose closes under suction: the vacuum at the pump is {vacuum}.",
            "cannot",
        )
    elif case.pipe.kind == "hose":
        text = f"Garden hose may be sucked flat: the vacuum at the pump is {vacuum}"
        if case.vacuum > practice.HOSE_VACUUM:
            text += f", and {most} is the most to ask of it"
        level = "care" if case.vacuum > practice.HOSE_VACUUM else "note"
        yield Finding(level, "vacuum-collapse", f"{text}.")


def _rating(case: Case, reader: Reader) -> Iterator[Finding]:
    (stress,) = case.line.stresses()
    if too_hot(case.line, case.pipe):
        for one in heat_findings(case.line, case.section, reader):
            # under no pressure it cannot burst: only whether it keeps its shape is open
            bursts = stress.pressure_pa > 0 or one.level != "stop"
            yield one if bursts else replace(one, level="care", rank="unchecked")
    elif stress.over:
        most, rated = reader.apart(stress.pressure_pa, stress.rating_pa, "pressure")
        text = f"The suction pipe carries {most} at the pump and is rated {rated}."
        yield Finding("stop", "over-rating", text, "harm")
    elif stress.rating_pa is None and stress.pressure_pa > 0:
        most = reader.show(stress.pressure_pa, "pressure")
        text = f"No rating is known for this pipe: the water above it presses with {most}."
        yield Finding("note", "no-rating", text)


def _speed(case: Case, reader: Reader) -> Iterator[Finding]:
    level = practice.speed_level(case.speed)
    if level:
        runs, most = reader.apart(case.speed, practice.SPEED_NOTE, "speed")
        text = f"The water speed in the suction pipe is {runs}: keep it below about {most} with a "
        yield Finding(level, "fast", f"{text}wider pipe.")


def _notes(case: Case, reader: Reader) -> Iterator[Finding]:
    if case.available < 0:
        yield Finding(
            "note",
            "below-vacuum",
            "A figure below zero cannot happen: the water boils first, and less flows.",
        )
    if case.lift <= 0 < case.vacuum:
        little = case.lift >= 0 or case.vacuum <= practice.FLOODED_VACUUM * (1 + SLACK)
        yield Finding(
            "note" if little else "care",
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


# Cautions and links -------------------------------------------------------------------------


def cautions(case: Case, reader: Reader) -> tuple[str, ...]:
    """Standing advice that belongs to these numbers."""
    found = list(hot_cautions(case.line.temperature_k))
    if case.lift > 0:
        start = "Fill pipe and pump before the first start, unless the pump primes itself"
        seconds = case.priming_seconds()
        if seconds is not None:
            time = reader.show(seconds, "time" if seconds < 120 else "minutes", 2)
            start += f": that takes at least {time}, running dry"
        found += [f"{start}.", PRIMES]
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
    flow = exact(case.flow, "flow", reader)
    pump = {"flow": flow}
    if -50.0 <= case.lift <= 9.0 and case.loss <= 9.0:
        pump["lift"] = exact(case.lift, "length", reader)
        pump["suction"] = exact(case.loss, "head", reader)
    if case.line.temperature_k <= PUMP_HOTTEST:
        pump["water"] = exact(case.line.temperature_k, "temperature", reader)
    if case.altitude <= PUMP_HIGHEST:
        pump["altitude"] = exact(case.altitude, "length", reader)
    return (
        Link("Now the pressure side: will it reach?", "reach", {"flow": flow}),
        Link("Which pump goes with the pipe?", "pump_match", pump),
    )
