"""Will it reach: what a pump's pressure leaves at the top of a climb, standing and running."""

from dataclasses import replace

from calc.page.answer import Answer, Link, Verdict, Warning
from calc.page.fields import Choice, Number, Sheet
from calc.pipe import pipes
from calc.sheets.parts.fields import climb, pipe_length, water_temperature
from calc.sheets.parts.pipe_choice import chosen_pipe, pipe_fields
from calc.sheets.reach.case import FASTEST, TIGHT, USES, Line
from calc.sheets.reach.show import chart, figures, steps, taps

FIELDS = (
    Number(
        "pressure",
        "Pressure the pump holds",
        "pressure",
        "3.5 bar",
        "50 psi",
        0.0,
        20e5,
        help="Its set point, read at the pump while water runs.",
    ),
    climb("12 m", "40 ft", 200.0),
    pipe_length(),
    Number(
        "flow",
        "Flow with everything open",
        "flow",
        "15 L/min",
        "4 gpm",
        0.0,
        0.05,
        help="A shower or sink takes about 7.5 L/min (2 gpm), a hose about 38 L/min (10 gpm).",
    ),
    *pipe_fields(start=("pe100-sdr11", "32"), start_us=("pvc40", "1")),
    Choice(
        "use",
        "What is at the top",
        tuple((key, label) for key, label, _ in USES) + (("own", "Another pressure"),),
        "house",
        help="A house likes 2 bar (30 psi) or more, drip lines 1.4 bar (20 psi).",
    ),
    Number(
        "wanted",
        "Pressure wanted there",
        "pressure",
        "2 bar",
        "30 psi",
        0.0,
        20e5,
        when=("use", ("own",)),
    ),
    Number(
        "most",
        "Most the pump gives at that pressure",
        "flow",
        "18 L/min",
        "5 gpm",
        1e-7,
        0.05,
        help="From its data sheet; small diaphragm pumps give 11 to 19 L/min (3 to 5 gpm).",
        group="Pump, bends and water",
    ),
    Number(
        "extra",
        "Added length for bends and valves",
        "percent",
        "10 %",
        "10 %",
        0.0,
        2.0,
        help="10 % is usual for a long buried run; for every fitting see pipe sizing.",
        group="Pump, bends and water",
    ),
    water_temperature(333.15, "Pump, bends and water"),
)


def solve(values, reader):
    line = Line(
        values.pressure,
        values.climb,
        values.length * (1 + values.extra),
        chosen_pipe(values),
        values.water,
    )
    wanted = values.wanted if values.use == "own" else {key: p for key, _, p in USES}[values.use]
    left = line.left(values.flow)
    cures = _cures(line, values, wanted, reader) if left < wanted else ()
    return Answer(
        given_verdict=_verdict(line, values, wanted, cures, reader),
        figures=figures(line, values),
        steps=steps(line, values),
        tables=(taps(line, values, wanted),),
        charts=(chart(line, values, wanted),),
        warnings=_warnings(line, values, reader),
        links=_links(line, values, wanted, reader),
    )


def _verdict(line, values, wanted, cures, reader):
    show = reader.both
    left, standing = line.left(values.flow), line.left(0.0)
    cure = " " + " ".join(cures) if cures else ""
    if standing <= 0:
        top = show(line.pressure / line.weight, "head")
        return Verdict(
            "bad", f"No: this pressure lifts water {top} and no higher, even with no flow.{cure}"
        )
    if left <= 0:
        flow = show(line.largest_flow(0.0, values.flow), "flow")
        return Verdict(
            "bad", f"Not at that flow: friction uses up the pressure. At most {flow} arrives.{cure}"
        )
    arrives = f"{show(left, 'pressure')} is left at the top while {show(values.flow, 'flow')} runs"
    if values.flow > values.most * (1 + 1e-9):
        return Verdict(
            "bad",
            f"The pump cannot keep up: it gives {show(values.most, 'flow')} at that pressure and "
            f"{show(values.flow, 'flow')} is asked. Open less at once, or choose a larger pump.",
        )
    if left >= wanted:
        return Verdict("good", f"Yes: {arrives}; {show(wanted, 'pressure')} is wanted.")
    if left >= TIGHT * wanted:
        return Verdict(
            "tight",
            f"It arrives, but weakly: {arrives}; {show(wanted, 'pressure')} is wanted.{cure}",
        )
    return Verdict("bad", f"Too weak: {arrives}; {show(wanted, 'pressure')} is wanted.{cure}")


def _cures(line, values, wanted, reader):
    """Sentences saying what would leave the wanted pressure, each worked out anew."""
    found = []
    larger = (
        [p for p in pipes.sizes(line.pipe.kind) if p.inside_m > line.pipe.inside_m]
        if (line.pipe.kind in pipes.KINDS)
        else []
    )
    for pipe in larger:
        left = replace(line, pipe=pipe).left(values.flow)
        if left >= wanted:
            found.append(f"{pipe.label} would leave {reader.show(left, 'pressure')}.")
            break
    needed = line.pressure + wanted - line.left(values.flow)
    sentence = f"With this pipe the pump would have to hold {reader.both(needed, 'pressure')}."
    rating = line.rating
    if rating is not None and needed > rating:
        sentence += f" That is more than the pipe's rating of {reader.show(rating, 'pressure')}."
    return (*found, sentence)


def _warnings(line, values, reader):
    found = []
    rating = line.rating
    lowest = line.pressure + line.weight * max(0.0, -line.climb)
    if rating is not None and lowest > rating:
        found.append(
            Warning(
                "stop",
                f"The pipe is rated {reader.both(rating, 'pressure')} at this temperature and stands under "
                f"{reader.both(lowest, 'pressure')} at its lowest point.",
            )
        )
    speed = line.speed(values.flow)
    if speed > FASTEST:
        found.append(
            Warning(
                "care",
                f"Water runs at {reader.both(speed, 'speed')}. Above about {reader.both(FASTEST, 'speed')} "
                "expect noise and water hammer (common practice).",
            )
        )
    if (
        line.left(0.0) > 5.5e5
    ):  # 80 psi, the usual limit at a fixture (IPC 604.8, UPC 608.2, from memory)
        found.append(
            Warning(
                "care",
                f"Standing pressure at the tap is {reader.both(line.left(0.0), 'pressure')}: fit a pressure "
                "reducer. Plumbing codes commonly allow 80 psi (5.5 bar) at a tap.",
            )
        )
    found.append(
        Warning(
            "note",
            "A check valve after the pump keeps the line full and under pressure while it rests; "
            "with speed control the pressure is held without a pressure tank (common practice).",
        )
    )
    return tuple(found)


def _links(line, values, wanted, reader):
    shown = {
        "flow": reader.typed(values.flow, "flow"),
        "length": reader.typed(values.length, "length"),
        "climb": reader.typed(values.climb, "length"),
    }
    every = {
        **shown,
        "pressure": reader.typed(values.pressure, "pressure"),
        "wanted": reader.typed(wanted, "pressure"),
    }
    if line.pipe.kind in pipes.KINDS:
        every["kind"] = line.pipe.kind
    return (
        Link("Every pipe size for this run", "pipe", every),
        Link("Which pump goes with this pipe", "pump_match", shown),
        Link("Count the flow from showers, hoses and people", "demand", {}),
    )


SHEET = Sheet(
    "reach",
    "Will it reach?",
    FIELDS,
    solve,
    folded=("Pump, bends and water",),
    cautions=(
        "Let the pressure out before you open any joint; a pressurised line can whip and cut.",
        "Pipe, fittings and hoses must be rated for the highest pressure at the lowest point.",
        "Have buried services located before you dig, and never work alone in a deep trench.",
        "Wiring near water is for licensed hands and local codes.",
    ),
    sources=(
        "Darcy-Weisbach with the friction factor of Colebrook (1939).",
        "Tap pressures and flows: common practice, no source.",
    ),
    page="head/",
)
