"""The verdict of the pump_match sheet, and what would do where the pump does not."""

from dataclasses import replace

from calc.page.answer import Verdict
from calc.pipe import pipes
from calc.pump.invented import PUMPS
from calc.pump.sets import Parallel, weakest_head
from calc.practice import NPSH_MARGIN as LEAST_MARGIN

WEAK = 0.7  # of the wanted pressure: below it people complain; common practice, no source


def verdict(case, grade, reader):
    """Does it work, at what pressure and speed, and if not what would (``Verdict``)."""
    show, site = reader.both, case.site
    if case.duty is None:
        return Verdict("bad", _too_weak(case, reader))
    if not case.enough:
        return _short(case, reader)
    state = case.state(site.flow)
    if state.speed == 0:
        return Verdict(
            "good", "No pump is needed: the water stands high enough to run there by itself."
        )
    required = case.npsh_required(site.flow, state.speed)
    if required is not None and site.npsh_available < required:
        short = required - site.npsh_available
        return Verdict(
            "bad",
            f"The head would do, the suction does not: the pump needs {show(required, 'head')} "
            "NPSH at this flow "
            f"and has {show(max(site.npsh_available, 0.0), 'head')}. Place it "
            f"{show(short + LEAST_MARGIN, 'head')} lower, "
            "or lose less in the suction pipe.",
        )
    if state.tap < site.wanted * (1 - 1e-9):
        return Verdict(
            "tight",
            "The set pressure is too low: with everything open "
            f"{show(max(state.tap, 0.0), 'pressure')} is left at the "
            f"tap. Set {show(case.advised, 'pressure')} at the pump to have "
            f"{show(site.wanted, 'pressure')} there.",
        )
    holds = (
        f"{show(state.tap, 'pressure')} stands at the tap with {show(site.flow, 'flow')} running, "
        "the pump at "
        f"{reader.show(state.speed, 'percent', 2)} of full speed"
    )
    tight = _tight(case, grade, state, required, reader)
    if tight:
        return Verdict("tight", f"It works, with little to spare: {holds}. {tight}")
    spare = show(case.available - case.needed, "head")
    return Verdict("good", f"{holds}, with {spare} of head to spare.")


def _tight(case, grade, state, required, reader):
    """Why a working case has little to spare ("" where it has enough)."""
    if grade is not None:
        weakest = weakest_head(case.pump, case.site.flow, grade)
        if weakest < case.needed:
            return (
                f"A pump at the low end of grade {grade.key} would be "
                f"{reader.show(case.needed - weakest, 'head')} of head short."
            )
    if required is not None and case.site.npsh_available < required + LEAST_MARGIN:
        return (
            f"The suction has only {reader.show(case.site.npsh_available - required, 'head')} "
            "over the NPSH required; "
            f"{reader.show(LEAST_MARGIN, 'head')} is a usual margin (common practice)."
        )
    return ""


def _too_weak(case, reader):
    show, pump = reader.both, case.pump
    top = pump.shut_off_head - case.site.lift - case.site.climb
    stands = (
        f"with nothing running it leaves {show(top * case.site.weight, 'pressure')} at the tap"
        if top > 0
        else "the water does not reach the tap at all"
    )
    return (
        f"The pump's highest head is {show(pump.shut_off_head, 'head')} and lift, climb and "
        "wanted pressure "
        f"take {show(case.static(), 'head')}; {stands}. {_cures(case, reader)}"
    ).strip()


def _short(case, reader):
    show, site = reader.both, case.site
    reach = f"it gives {show(case.duty.flow, 'flow')} at {show(site.wanted, 'pressure')}"
    if case.duty.past_end:
        reach = f"its table ends at {show(case.pump.largest_flow, 'flow')}"
    left, level = "", "bad"
    if case.available is not None:
        tap = site.wanted + site.weight * (case.available - case.needed)
        left = f", or {show(tap, 'pressure')} with {show(site.flow, 'flow')} running"
        level = "tight" if tap > 0 and tap >= WEAK * site.wanted else "bad"
        if tap <= 0:
            left = f", and cannot push {show(site.flow, 'flow')} up to the tap"
    sentence = f"Not with everything open: {reach}{left}. {_cures(case, reader)}"
    return Verdict(level, sentence.strip())


def _cures(case, reader):
    """What would do, each worked out anew: a larger pipe, a second pump, a larger invented pump."""
    found = []
    larger = _larger_pipe(case)
    if larger is not None:
        spare = larger.available - larger.needed
        found.append(
            f"{larger.pipe.label} would do, with {reader.show(spare, 'head')} of head to spare."
        )
    if _two_would_do(case):
        found.append("Two such pumps side by side would do.")
    other = next(
        (
            c
            for c in (replace(case, pump=pump) for pump in PUMPS.values())
            if c.pump is not case.pump and c.enough
        ),
        None,
    )
    if other is not None:
        name = other.pump.name
        found.append(f"A pump like the {name[0].lower()}{name[1:]} would do.")
    if not found:
        found.append(
            f"Look for a pump that gives {reader.both(case.site.flow, 'flow')} at "
            f"{reader.both(case.needed, 'head')} or more."
        )
    return " ".join(found)


def _larger_pipe(case):
    """The case in the smallest larger size of its pipe that is enough; None without one."""
    if case.pipe.kind not in pipes.KINDS or case.available is None:
        return None
    sizes = (pipe for pipe in pipes.sizes(case.pipe.kind) if pipe.inside_m > case.pipe.inside_m)
    return next((c for c in (replace(case, pipe=pipe) for pipe in sizes) if c.enough), None)


def _two_would_do(case):
    flow = case.site.flow
    if flow / 2 > case.pump.largest_flow:
        return False
    return Parallel((case.pump, case.pump)).head_at(flow) >= case.needed
