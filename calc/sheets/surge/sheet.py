"""Water hammer: what a valve that shuts does to the pipe, and what cures it."""

import math
from dataclasses import replace

from calc import surge
from calc.page.answer import Answer, Link, Verdict, Warning
from calc.page.fields import Choice, Number, Sheet
from calc.pipe import pipes
from calc.sheets.parts.fields import altitude, water_temperature
from calc.sheets.parts.pipe_choice import chosen_pipe, pipe_fields
from calc.sheets.surge.case import HELD, Limits, line_of
from calc.sheets.surge.show import chart, figures, sizes, steps

NEAR = 0.9  # of the rating: above it the verdict says "only just" (our rule)
RELIEF_SHARE = 0.05  # of the flow: a smaller relief is not worth a sentence (our rule)
FIELDS = (
    Number(
        "flow",
        "Flow that is stopped",
        "flow",
        "25 L/min",
        "6 gpm",
        1e-6,
        0.1,
        help="What runs through the pipe just before the valve shuts.",
    ),
    Number(
        "length",
        "Pipe from pump or tank to the valve",
        "length",
        "140 m",
        "450 ft",
        0.5,
        20e3,
        help="The length that moves as one column of water.",
    ),
    *pipe_fields(start=("pe100-sdr11", "25"), start_us=("pvc40", "1")),
    Number(
        "closing",
        "Time the valve takes to shut",
        "time",
        "0.1 s",
        "0.1 s",
        0.0,
        600.0,
        help="A solenoid or a float that snaps: 0.1 s or less. A ball valve by hand: 0.3 s or "
        "more.",
    ),
    Number(
        "pressure",
        "Pressure at rest at the valve",
        "pressure",
        "3.5 bar",
        "50 psi",
        1e3,
        40e5,
        help="With nothing running.",
    ),
    Number(
        "weakest",
        "Lowest-rated part in the line, if any",
        "pressure",
        "10 bar",
        "150 psi",
        1e4,
        100e5,
        help="A filter housing, a tank, a hose fitting. Leave empty to judge the pipe alone.",
        optional=True,
    ),
    Choice(
        "held",
        "How the pipe is held",
        tuple((key, label) for key, (label, _, _) in HELD.items()),
        "buried",
        help="Changes the wave's speed by a few percent.",
        group="Pipe wall, water and height",
    ),
    water_temperature(333.15, "Pipe wall, water and height"),
    altitude(
        4500.0,
        group="Pipe wall, water and height",
        help="Thinner air lets the water column part sooner.",
    ),
)


def solve(values, reader):
    line = line_of(values, chosen_pipe(values))
    limits = _limits(values, line)
    return Answer(
        given_verdict=_verdict(line, limits, reader),
        figures=figures(line, limits),
        steps=steps(line),
        tables=sizes(values, line),
        charts=(chart(line, limits),),
        warnings=_warnings(line, limits, reader),
        links=_links(values, reader),
    )


def _limits(values, line):
    rating = pipes.rating_at(line.pipe, values.water) if line.pipe.rating_pa else None
    return Limits(rating, values.weakest, line.material.recurring if line.material else 1.0)


def _verdict(line, limits, reader):
    show = reader.both
    rise, peak = line.rise(line.closing), line.peak
    happens = (
        f"shutting in {reader.show(line.closing, 'time')} adds {show(rise, 'pressure')}, "
        f"{show(peak, 'pressure')} in all"
    )
    lowest, highest = limits.lowest, limits.highest
    if lowest is None:
        return Verdict(
            "tight", f"No rating is known for this pipe: {happens}. Ask its maker what it stands."
        )
    what = _what(limits)
    if line.pressure >= highest:
        return Verdict(
            "bad",
            f"The pressure at rest, {show(line.pressure, 'pressure')}, is already as much as "
            f"{what} stands "
            f"({show(lowest, 'pressure')}). Lower it before anything else.",
        )
    if peak > highest:
        return Verdict(
            "bad",
            f"{_upper(happens)}; {what} is rated {show(lowest, 'pressure')}. "
            f"{_cures(line, limits, reader)}",
        )
    if peak > lowest:
        return Verdict(
            "tight",
            f"Only with the surge allowance of {line.material.label}: {happens}; {what} is rated "
            f"{show(lowest, 'pressure')}. {_cures(line, limits, reader)}",
        )
    if peak > NEAR * lowest:
        return Verdict(
            "tight",
            f"The line withstands it, with little to spare: {happens}; {what} is rated "
            f"{show(lowest, 'pressure')}.",
        )
    if line.parts:
        return Verdict(
            "tight",
            f"The rating holds, the water column does not: {happens}, and behind the wave the "
            "pressure falls to "
            f"boiling. Shut over {reader.show(_tenth(line.closing_for(line.gentle)), 'time', 2)} "
            "or more to avoid it.",
        )
    return Verdict(
        "good", f"The line withstands it: {happens}; {what} is rated {show(lowest, 'pressure')}."
    )


def _upper(sentence):
    return sentence[0].upper() + sentence[1:]


def _tenth(seconds):
    """Rounded up to a tenth of a second, so that what is said is on the safe side."""
    return math.ceil(seconds * 10 - 1e-9) / 10


def _what(limits):
    if limits.part is not None and (limits.rating is None or limits.part <= limits.rating):
        return "the lowest-rated part"
    return "the pipe"


def _cures(line, limits, reader):
    """What would keep the peak within the limit: a slower valve, a larger pipe, relief."""
    limit = limits.lowest
    if limit <= line.pressure:
        return ""
    seconds = line.closing_for(limit)
    found = [f"Shut over {reader.show(_tenth(seconds), 'time', 2)} or more it stays within that."]
    larger = _larger(line, limit)
    if larger is not None:
        found.append(f"{larger.pipe.label} would see {reader.show(larger.peak, 'pressure')}.")
    passing = surge.relief_flow(line.flow, line.sudden, limit - line.pressure)
    if passing > RELIEF_SHARE * line.flow and line.closing <= surge.critical_time(
        line.length, line.speed
    ):
        found.append(
            f"A quick relief valve or surge arrester beside the valve would have to take "
            f"{reader.show(passing, 'flow')}."
        )
    return " ".join(found)


def _larger(line, limit):
    """The line in the next larger size whose peak stays within ``limit``; None without one."""
    if line.pipe.kind not in pipes.KINDS:
        return None
    for pipe in pipes.sizes(line.pipe.kind):
        if pipe.inside_m > line.pipe.inside_m:
            larger = replace(line, pipe=pipe)
            if larger.peak <= limit:
                return larger
    return None


def _warnings(line, limits, reader):
    found = []
    if line.parts:
        found.append(
            Warning(
                "care",
                "When the wave comes back the pressure falls to boiling and the water column "
                "parts. "
                "When it closes again the knock can be harder than worked out here. Shut more "
                "slowly.",
            )
        )
    if line.material is not None and line.material.key == "hose":
        found.append(
            Warning(
                "care",
                "How stiff a hose is differs widely; the figures for it are rough (common "
                "practice).",
            )
        )
    if line.material is None:
        found.append(
            Warning(
                "note",
                "The pipe's wall is not known: it is taken as rigid, which gives the highest rise.",
            )
        )
    if limits.recurring > 1 and limits.rating is not None:
        most = reader.both(limits.rating * limits.recurring, "pressure")
        found.append(
            Warning(
                "note",
                f"Polyethylene is allowed {limits.recurring:.1f} times its rating for surges that "
                "come again "
                f"and again, here {most} (AWWA M55, from memory). Fittings and filters are not.",
            )
        )
    found += [
        Warning(
            "note",
            "A pump that stops at once, as in a power cut, sends the same "
            f"{reader.both(line.sudden, 'pressure')} "
            "the other way: the pressure falls, the check valve slams. Speed control that ramps "
            "down avoids it.",
        ),
        Warning(
            "note",
            "Most valves stop most of the flow in the last part of their travel. Give the time in "
            "which the flow "
            "really stops, for a hand valve about half its travel (common practice).",
        ),
    ]
    return tuple(found)


def _links(values, reader):
    shown = {
        "flow": reader.typed(values.flow, "flow"),
        "length": reader.typed(values.length, "length"),
    }
    return (Link("Every pipe size for this run", "pipe", shown),)


SHEET = Sheet(
    "surge",
    "Water hammer",
    FIELDS,
    solve,
    folded=("Pipe wall, water and height",),
    cautions=(
        "A burst pipe or housing throws parts and water: never test a suspect line by slamming a "
        "valve.",
        "Let the pressure out before you open a joint, a filter or a tank.",
        "A relief valve must be sized and set by its maker's data, discharge to a safe place, "
        "never be plugged.",
        "Anchor bends, tees and ends: a surge pushes on them with the full peak pressure.",
    ),
    sources=(
        "Wave speed: Korteweg (1878) with wall restraint after Wylie and Streeter, Fluid "
        "Transients in "
        "Systems (1993).",
        "Sudden stop: Joukowsky (1898). Slow closing: Michaud (1878) and Allievi (1913); friction "
        "left out.",
        "Surge allowance of polyethylene: AWWA Manual M55, from memory.",
    ),
    page="water-hammer/",
)
