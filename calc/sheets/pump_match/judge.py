"""What is found of a pump on a line, and the sentence that tells of it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import TYPE_CHECKING

from calc import practice
from calc.page.findings import Finding, unchecked
from calc.pump.sets import weakest_head
from calc.sheets.parts.guard import guard_findings
from calc.sheets.parts.line_judge import line_findings, the
from calc.sheets.parts.small_draw import small_draw_finding
from calc.sheets.pump_match.case import SLACK, Case, State

if TYPE_CHECKING:
    from calc.units import Reader

# Of a line, what does not hang on the flow
STANDING = frozenset({"over-rating", "too-hot", "cautious-heat", "outlet-over-limit", "no-rating"})


def told(case: Case, reader: Reader) -> str:
    """The verdict's sentence where nothing is wrong."""
    state, show = case.running, reader.show
    if state is None:
        return "The pump's table ends below this flow."
    left, flow = show(state.left, "pressure"), show(case.flow, "flow")
    if state.stands:
        return f"No pump is needed: the water runs by itself, with {left} at the outlet at {flow}."
    which = "the pump" if case.pumps == 1 else "each pump"
    return (
        f"You get {left} at the outlet with {flow} flowing, {which} at "
        f"{show(state.speed, 'percent', 2)} of full speed."
    )


def findings(case: Case, reader: Reader) -> tuple[Finding, ...]:
    """Everything found, of the line as the pump feeds it and of the pump."""
    state = case.running
    found = [*_line(case, state, reader), *_set(case, reader), *_failed(case, reader)]
    found += [*_displacement(case, reader), *_intake(case, state, reader)]
    if state is not None and not state.stands:
        found += [*_curve(case, state, reader), *_grade(case, reader)]
        found += [*_small_draw(case, reader), *_power(state)]
    return tuple(found)


def _line(case: Case, state: State | None, reader: Reader) -> list[Finding]:
    """Of the line: at the flow, or where the pump cannot give that, with everything closed."""
    if state is not None:
        return list(line_findings(case.line_at(state), case.need, reader))
    still = case.state(0.0)
    found = line_findings(case.line_at(still), replace(case.need, flow_m3s=0.0), reader)
    most, flow = case.pump.largest_flow, case.flow
    ends, asked = reader.apart(most, flow, "flow")
    text = f"The pump's table ends at {ends}; you ask for {asked}."
    short = Finding("stop", "pump-most", text, "cannot")
    return [short, *(one for one in found if one.key in STANDING)]


# The control --------------------------------------------------------------------------------


def _set(case: Case, reader: Reader) -> Iterator[Finding]:
    over = case.sensed_m - case.line.rise_m
    if over > practice.SENSOR_OVER + SLACK:
        high = reader.show(over, "length")
        text = f"The pressure is sensed {high} above the outlet, which is odd: check both heights."
        yield Finding("note", "sensor-high", text)
    state, at_control = case.running, case.as_set(case.set_pressure)
    if at_control < practice.LEAST_CONTROL * (1 - SLACK) and not (state and state.stands):
        asked, least = reader.apart(at_control, practice.LEAST_CONTROL, "pressure")
        where = "sensor" if case.sensed_m else "pump"
        text = f"The set pressure at the {where} is {asked}: few controls hold less than {least}."
        yield Finding("note", "set-low", text)
    if case.runs_on:
        pressure, most = reader.apart(
            case.as_set(case.set_pressure), max(case.as_set(case.shut_off_pa), 0.0), "pressure"
        )
        yield Finding(
            "stop",
            "runs-on",
            f"The pump never reaches its set pressure of {pressure}: it makes {most} at most, and "
            "would run on against a closed valve.",
            "harm",
        )


def _failed(case: Case, reader: Reader) -> Iterator[Finding]:
    """What a failed control puts on the pipe: the pump's shut-off head, and the drop with it."""
    over = [s for s in case.failed.stresses() if s.over and not s.hot]
    if not over:
        return
    worst = max(over, key=lambda s: s.pressure_pa / (s.rating_pa or 1.0))
    most, rated = reader.apart(worst.pressure_pa, worst.rating_pa or 0.0, "pressure")
    if case.relieved:
        text = f"The relief valve must keep {the(worst.section).lower()} below its rating, {rated}."
        yield Finding("note", "relief-setting", text, at=worst.section.name)
        return
    more = " or more" if case.displaces else ""
    yield Finding(
        "care",
        "shut-off-over-rating",
        f"If the control fails, {the(worst.section).lower()} carries {most}{more} against a "
        f"closed valve and is rated {rated}: fit a relief valve.",
        "harm",
        worst.section.name,
    )


def _displacement(case: Case, reader: Reader) -> Iterator[Finding]:
    if not case.displaces:
        return
    yield from guard_findings(case.guard, case.pump.points[0].head, reader)


def _small_draw(case: Case, reader: Reader) -> Iterator[Finding]:
    """Below its least flow the control stops and starts the pump again and again."""
    if case.small is not None and case.holds:
        found = small_draw_finding(case.small, "The smallest draw is", reader)
        if found is not None:
            yield found


# The suction side ---------------------------------------------------------------------------


def _intake(case: Case, state: State | None, reader: Reader) -> Iterator[Finding]:
    if state is not None and state.stands:
        return
    yield from _npsh(case, state, reader)
    intake = case.intake
    if intake.lift > intake.usual_lift + SLACK:
        lift, usual = reader.apart(intake.lift, intake.usual_lift, "length")
        yield Finding(
            "care",
            "lift-practice",
            f"The suction lift is {lift}: above about {usual} at this altitude, a small air leak "
            "can stop the pump.",
        )


def _npsh(case: Case, state: State | None, reader: Reader) -> Iterator[Finding]:
    has = case.intake.available(case.flow)
    if has <= 0:
        yield Finding(
            "stop",
            "npsh",
            "The water boils in the suction pipe before it reaches the pump: lift and friction "
            "use more than the air pressure can raise.",
            "cannot",
        )
        return
    if state is None:
        return
    needs, margin = case.npsh_required(state.flow, state.speed), practice.NPSH_MARGIN
    if needs is None:
        yield _not_checked(has - margin, reader)
    elif has < needs - SLACK:
        asked, given = reader.apart(needs, has, "head")
        yield Finding(
            "stop",
            "npsh",
            f"The pump needs {asked} NPSH at this flow and has {given}: it would cavitate or lose "
            "its prime.",
            "cannot",
        )
    elif has < needs + margin - SLACK:
        left, kept = reader.apart(max(has - needs, 0.0), margin, "head")
        yield Finding(
            "care",
            "npsh-margin",
            f"The NPSH margin is {left}; keep {kept} beyond what the pump needs.",
        )


def _not_checked(would_pass: float, reader: Reader) -> Finding:
    if would_pass <= 0:
        text = "So little NPSH is left at the pump that none could work with its margin kept."
        return Finding("stop", "npsh", text, "cannot")
    return unchecked(
        "npsh-unchecked",
        "NPSH required is not known at this flow, so it is not checked: a pump that needs "
        f"{reader.show(would_pass, 'head')} or less would work.",
    )


# The curve ----------------------------------------------------------------------------------


def _curve(case: Case, state: State, reader: Reader) -> Iterator[Finding]:
    low, high = practice.PREFERRED_FLOW
    share = case.best_share(state.flow, state.speed)
    at = "" if share is None else reader.show(share, "percent", 2)
    if share is not None and share > high + SLACK:
        yield Finding(
            "care",
            "past-curve",
            f"The pump runs at {at} of its best flow, far out on its curve: noisy, wasteful and "
            "hard on its seal.",
        )
    elif not case.displaces and state.flow > case.pump.most_flow(state.speed) * (1 + 1e-6):
        yield Finding(
            "care",
            "past-curve",
            "At so little head the slowed pump runs past the end of its table: its speed and "
            "power there are a guess.",
        )
    elif share is not None and share < low - SLACK:
        yield Finding(
            "note",
            "left-of-best",
            f"The pump runs at {at} of its best flow: good for short times, wasteful all day.",
        )


def _grade(case: Case, reader: Reader) -> Iterator[Finding]:
    if case.band is None or case.available is None or case.available < case.needed:
        return
    weakest = weakest_head(case.pump, min(case.flow, case.pump.largest_flow), case.band)
    if weakest < case.needed:
        missing = reader.show(case.needed - weakest, "head")
        text = f"A pump at the low end of grade {case.band.key} would be {missing} of head short."
        yield Finding("care", "grade", text)


def _power(state: State) -> Iterator[Finding]:
    if state.power is None:
        text = "The pump's table gives neither power nor efficiency here: its power is not known."
        yield Finding("note", "no-power", text)
