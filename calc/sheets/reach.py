"""Will it reach: what a pump's pressure leaves at the top of a climb, standing and running."""

import math
from dataclasses import dataclass, replace

from calc import friction, pipes, water
from calc.answer import (
    Answer,
    Chart,
    Column,
    Figure,
    Link,
    Series,
    Step,
    Table,
    Value,
    Verdict,
    Warning,
)
from calc.sheets.form import Choice, Number, Sheet
from calc.sheets.pipe_choice import chosen_pipe, pipe_fields
from calc.units import GALLON_US, GRAVITY, MINUTE, PSI

HOUSE = 30 * PSI  # Pa, low end of 30-40 psi for a house; common practice, no source
DRIP = 20 * PSI  # Pa, suits drip lines; common practice, no source
TROUGH = 5 * PSI  # Pa, enough to fill through an open float valve; common practice, no source
SHOWER = 2 * GALLON_US / MINUTE  # m3/s, a shower or sink; common practice, no source
HOSE = 10 * GALLON_US / MINUTE  # m3/s, a garden hose; common practice, no source
FASTEST = 1.5  # m/s, about 5 ft/s, for supply lines; common practice, no source
TIGHT = 0.7  # of the wanted pressure: below it people complain; common practice, no source

USES = (
    ("house", "House: showers and sinks", HOUSE),
    ("drip", "Drip lines", DRIP),
    ("trough", "Trough or tank, filled openly", TROUGH),
)

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
    Number(
        "climb",
        "Climb from pump to tap",
        "length",
        "12 m",
        "40 ft",
        -200.0,
        200.0,
        help="Height, not distance. Below the pump: a minus sign.",
    ),
    Number("length", "Length of pipe", "length", "140 m", "450 ft", 0.1, 20e3),
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
    Number(
        "water",
        "Water temperature",
        "temperature",
        "15 °C",
        "59 °F",
        273.15,
        333.15,
        group="Pump, bends and water",
    ),
)


@dataclass(frozen=True)
class Line:
    """One pipe to one tap; SI: pressure Pa, climb and length m, temperature K."""

    pressure: float
    climb: float
    length: float
    pipe: pipes.Pipe
    temperature: float

    @property
    def weight(self):
        """Pa per metre of climb."""
        return water.density(self.temperature) * GRAVITY

    def loss(self, flow):
        """Head lost to friction at ``flow`` (m3/s), m."""
        if flow == 0:
            return 0.0
        viscosity = water.kinematic_viscosity(self.temperature)
        speed = self.speed(flow)
        bore = self.pipe.inside_m
        factor = friction.friction_factor(speed * bore / viscosity, self.pipe.roughness_m / bore)
        return factor * self.length / bore * speed**2 / (2 * GRAVITY)

    def speed(self, flow):
        """Mean speed in the pipe, m/s."""
        return flow / (math.pi / 4 * self.pipe.inside_m**2)

    def left(self, flow):
        """Pressure at the tap at ``flow``, Pa; negative where the water does not arrive."""
        return self.pressure - self.weight * (self.climb + self.loss(flow))

    def largest_flow(self, wanted, most):
        """The largest flow up to ``most`` (m3/s) that leaves ``wanted`` Pa; 0 where none does."""
        if self.left(0.0) <= wanted:
            return 0.0
        if self.left(most) >= wanted:
            return most
        low, high = 0.0, most
        for _ in range(60):
            middle = (low + high) / 2
            low, high = (middle, high) if self.left(middle) >= wanted else (low, middle)
        return low


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
        verdict=_verdict(line, values, wanted, cures, reader),
        figures=_figures(line, values),
        steps=_steps(line, values),
        tables=(_taps(line, values, wanted),),
        charts=(_chart(line, values, wanted),),
        warnings=_warnings(line, values, reader),
        links=_links(line, values, reader),
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
    rating = _rating(line)
    if rating is not None and needed > rating:
        sentence += f" That is more than the pipe's rating of {reader.show(rating, 'pressure')}."
    return (*found, sentence)


def _rating(line):
    return pipes.rating_at(line.pipe, line.temperature) if line.pipe.rating_pa else None


def _figures(line, values):
    running, standing = line.left(values.flow), line.left(0.0)
    return (
        Figure("Pressure at the top, running", running, "pressure", main=True),
        Figure("Standing, all taps shut", standing, "pressure"),
        Figure("Taken by the climb", line.climb * line.weight, "pressure"),
        Figure("Taken by friction", line.loss(values.flow) * line.weight, "pressure"),
        Figure(
            "Highest this pressure lifts", line.pressure / line.weight, "head", note="with no flow"
        ),
        Figure("Speed in the pipe", line.speed(values.flow), "speed"),
    )


def _steps(line, values):
    density = Value(water.density(line.temperature), "density", 4)
    gravity = Value(GRAVITY, "number", 6)
    steps = [
        Step(
            "The pump's pressure as a height of water",
            "H = p / (rho * g)",
            {"p": Value(line.pressure, "pressure"), "rho": density, "g": gravity},
            Value(line.pressure / line.weight, "head"),
        )
    ]
    if values.flow > 0:
        steps += _friction_steps(line, values, gravity)
    loss = line.loss(values.flow)
    steps.append(
        Step(
            "What is left at the top",
            "p_top = p - rho * g * (z + h_f)",
            {
                "p": Value(line.pressure, "pressure"),
                "rho": density,
                "g": gravity,
                "z": Value(line.climb, "length"),
                "h_f": Value(loss, "head"),
            },
            Value(line.left(values.flow), "pressure"),
        )
    )
    return tuple(steps)


def _friction_steps(line, values, gravity):
    bore, speed = Value(line.pipe.inside_m, "diameter"), Value(line.speed(values.flow), "speed")
    viscosity = water.kinematic_viscosity(line.temperature)
    reynolds = speed.value * bore.value / viscosity
    factor = friction.friction_factor(reynolds, line.pipe.roughness_m / bore.value)
    return [
        Step(
            "Speed in the pipe",
            "v = Q / (pi / 4 * D**2)",
            {"Q": Value(values.flow, "flow"), "D": bore},
            speed,
            note=f"{line.pipe.label}: the bore is its real inside diameter.",
            source=line.pipe.source,
        ),
        Step(
            "Reynolds number",
            "Re = v * D / nu",
            {"v": speed, "D": bore, "nu": Value(viscosity, "kinematic", 4)},
            Value(reynolds, "number"),
        ),
        Step(
            "Friction factor",
            note=f"f = {factor:.4f}, from the Colebrook equation (64/Re in smooth, slow flow) for a "
            f"roughness of {line.pipe.roughness_m * 1e3:.4g} mm.",
            source="Colebrook 1939",
        ),
        Step(
            "Length with bends and valves",
            "L = L_pipe * (1 + a)",
            {"L_pipe": Value(values.length, "length"), "a": Value(values.extra, "percent")},
            Value(line.length, "length"),
        ),
        Step(
            "Head lost to friction",
            "h_f = f * L / D * v**2 / (2 * g)",
            {
                "f": Value(factor, "number"),
                "L": Value(line.length, "length"),
                "D": bore,
                "v": speed,
                "g": gravity,
            },
            Value(line.loss(values.flow), "head"),
            source="Darcy-Weisbach",
        ),
    ]


def _taps(line, values, wanted):
    """What is left for the usual things open together."""
    cases = [
        ("Nothing: standing", 0.0),
        ("1 shower", SHOWER),
        ("2 showers", 2 * SHOWER),
        ("3 showers", 3 * SHOWER),
        ("1 hose", HOSE),
        ("2 showers and a hose", 2 * SHOWER + HOSE),
    ]
    rows = []
    for name, flow in cases:
        left = line.left(flow)
        if flow > values.most * (1 + 1e-9):
            remark = "more than the pump gives"
        elif left <= 0:
            remark = "does not arrive"
        else:
            remark = "enough" if left >= wanted else "weak"
        rows.append(
            (name, flow, max(left, 0.0) if remark != "more than the pump gives" else None, remark)
        )
    out = tuple(i for i, row in enumerate(rows) if row[3] not in ("enough", "weak"))
    columns = (
        Column("Open together"),
        Column("Flow", "flow"),
        Column("Left at the top", "pressure"),
        Column(""),
    )
    note = "A shower at 7.5 L/min (2 gpm), a hose at 38 L/min (10 gpm): common practice."
    return Table(
        "What opens together, and what that leaves", columns, tuple(rows), dimmed=out, note=note
    )


def _chart(line, values, wanted):
    top = max(line.pressure / line.weight, line.climb, 1.0) * 1.05
    bottom = min(0.0, line.climb)
    heights = tuple(bottom + (top - bottom) * i / 20 for i in range(21))
    loss = line.loss(values.flow)
    standing = tuple(line.pressure - line.weight * z for z in heights)
    running = tuple(line.pressure - line.weight * (z + loss) for z in heights)
    return Chart(
        "climb",
        "What is left at each height",
        "Pressure left against the climb: two straight falling lines, standing and running; "
        "yours is marked on the running one.",
        "Climb from pump to tap",
        "length",
        "Pressure left",
        "pressure",
        (
            Series("Running, at your flow and length", *_above_zero(heights, running)),
            Series("Standing, all taps shut", *_above_zero(heights, standing)),
        ),
        marks=((line.climb, max(line.left(values.flow), 0.0), "yours"),),
        levels=((wanted, "wanted"),),
    )


def _above_zero(heights, pressures):
    """The points above zero, ended on the height where the line meets zero."""
    kept = [(z, p) for z, p in zip(heights, pressures, strict=True) if p >= 0]
    if kept and len(kept) < len(heights):
        after, below = heights[len(kept)], pressures[len(kept)]
        last, above = kept[-1]
        kept.append((last + (after - last) * above / (above - below), 0.0))
    return tuple(z for z, _ in kept), tuple(p for _, p in kept)


def _warnings(line, values, reader):
    found = []
    rating = _rating(line)
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


def _links(line, values, reader):
    shown = {
        "flow": reader.typed(values.flow, "flow"),
        "length": reader.typed(values.length, "length"),
        "climb": reader.typed(values.climb, "length"),
    }
    return (
        Link("Every pipe size for this run", "pipe", shown),
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
