"""Suction lift: whether the pump can draw the water up, and what to change if not."""

from dataclasses import dataclass, replace

from calc import friction, pipes, suction, water
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
from calc.errors import InputError
from calc.sheets.form import Choice, Count, Number, Sheet
from calc.sheets.pipe_choice import chosen_pipe, pipe_fields
from calc.units import GRAVITY

PLACES = ((0.0, "Sea level"), (1500.0, "1500 m (4900 ft) up"), (3000.0, "3000 m (9800 ft) up"))
FAST = 1.5  # m/s, about 5 ft/s, in suction pipes; common practice, no source
FITTINGS = "Bends, foot valve and water"

FIELDS = (
    Number(
        "lift",
        "Lift: lowest water level up to the pump",
        "length",
        "4 m",
        "13 ft",
        -50.0,
        50.0,
        help="In the driest month. Water above the pump: a minus sign.",
    ),
    Number("length", "Length of suction pipe", "length", "8 m", "26 ft", 0.1, 500.0),
    Number(
        "flow",
        "Flow",
        "flow",
        "18 L/min",
        "5 gpm",
        1e-6,
        0.05,
        help="The most the pump draws.",
    ),
    *pipe_fields(start=("pe100-sdr11", "32"), start_us=("pvc40", "1")),
    Choice(
        "figure",
        "What the pump's data sheet says",
        (("npsh", "NPSH required"), ("lift", "Largest dry lift")),
        "npsh",
        help="Centrifugal pumps give NPSH required; small self-priming pumps a dry lift.",
    ),
    Number(
        "npsh",
        "NPSH required at that flow",
        "head",
        "3 m",
        "10 ft",
        0.0,
        20.0,
        help="3 m (10 ft) is a common size of figure, not yours: read the data sheet.",
        when=("figure", ("npsh",)),
    ),
    Number(
        "rated",
        "Largest dry lift, at sea level",
        "length",
        "5.5 m",
        "18 ft",
        0.1,
        10.0,
        when=("figure", ("lift",)),
    ),
    Number(
        "altitude",
        "Altitude of the site",
        "length",
        "300 m",
        "1000 ft",
        -400.0,
        5000.0,
        group=FITTINGS,
    ),
    Number(
        "water",
        "Water temperature",
        "temperature",
        "15 °C",
        "59 °F",
        273.15,
        353.15,
        group=FITTINGS,
    ),
    Count("foot", "Foot valves with strainer", 1, 0, 3, group=FITTINGS),
    Count("elbow90", "90° elbows", 2, 0, 20, group=FITTINGS),
    Number("margin", "Margin kept in hand", "head", "0.6 m", "2 ft", 0.0, 5.0, group=FITTINGS),
)


@dataclass(frozen=True)
class Line:
    """A suction line. SI: lift, length m; flow m3/s; temperature K; k summed coefficients."""

    site: suction.Place
    lift: float
    length: float
    flow: float
    pipe: pipes.Pipe
    temperature: float
    k: float

    @property
    def speed(self):
        return friction.velocity(self.flow, self.pipe.inside_m)

    @property
    def straight_loss(self):
        viscosity = water.kinematic_viscosity(self.temperature)
        return friction.pipe_loss(
            self.flow, self.pipe.inside_m, self.length, self.pipe.roughness_m, viscosity
        )

    @property
    def loss(self):
        return self.straight_loss + friction.local_loss(self.k, self.speed)

    @property
    def available(self):
        return suction.npsh_available(self.site, self.lift, self.loss)


def solve(values, reader):
    line = Line(
        suction.place(values.altitude, values.water),
        values.lift,
        values.length,
        values.flow,
        chosen_pipe(values),
        values.water,
        _k(values),
    )
    if values.length + 1e-9 < values.lift:
        raise InputError(
            f"The pipe is shorter than the lift: it must be at least {reader.show(values.lift, 'length')} long.",
            name="length",
        )
    needed = _needed(values, line.site)
    spare = line.available - needed - values.margin
    return Answer(
        verdict=_verdict(line, needed, spare, values, reader),
        figures=_figures(line, needed, spare, values),
        steps=_steps(line, needed, values),
        tables=(_sizes(line, needed, values),),
        charts=(_chart(line, needed, values),),
        warnings=_warnings(line, reader),
        links=(Link("Now the pressure side: will it reach?", "reach", {}),),
    )


def _k(values):
    counts = {"foot": values.foot, "elbow90": values.elbow90}
    fittings = {fitting.key: fitting.k for fitting in friction.FITTINGS}
    return fittings["entrance"] * (values.foot == 0) + sum(
        n * fittings[key] for key, n in counts.items()
    )


def _needed(values, site):
    """NPSH the pump needs, m: as given, or what its rated dry lift leaves of the air's push."""
    if values.figure == "npsh":
        return values.npsh
    rated = suction.place(0.0, 293.15)
    here = suction.altitude_derated_lift(values.rated, site, rated)
    return suction.theoretical_lift(site) - here


def _allowable(line, needed, margin):
    return suction.allowable_lift(line.site, line.loss, needed, margin)


def _verdict(line, needed, spare, values, reader):
    show = reader.both
    allowed = _allowable(line, needed, values.margin)
    facts = f"here it may stand up to {show(allowed, 'length')} above the water at {show(line.flow, 'flow')}"
    if allowed < 0:
        facts = f"here the water must stand at least {show(-allowed, 'length')} above the pump"
    if spare >= 0 and line.lift <= suction.PRACTICAL_LIFT * (1 + 1e-3):
        return Verdict("good", f"Yes: the pump can draw it; {facts}.")
    if spare >= 0:
        return Verdict(
            "tight",
            f"By the sums it can, {facts}; but a lift over {show(suction.PRACTICAL_LIFT, 'length')} "
            "leaves little for a worn valve or a small air leak (common practice).",
        )
    cure = _cure(line, needed, values, reader)
    if line.available > needed:
        return Verdict("tight", f"Only without the margin: {facts}. {cure}")
    if line.available <= 0:
        return Verdict(
            "bad", f"No: the water would boil in the pipe before it arrives; {facts}. {cure}"
        )
    return Verdict("bad", f"No: {facts}, and the lift is {show(line.lift, 'length')}. {cure}")


def _cure(line, needed, values, reader):
    if line.pipe.kind in pipes.KINDS:
        for pipe in pipes.sizes(line.pipe.kind):
            if pipe.inside_m <= line.pipe.inside_m:
                continue
            other = replace(line, pipe=pipe)
            if other.available - needed - values.margin >= 0:
                return f"With {pipe.label} it would."
    lower = line.lift - _allowable(line, needed, values.margin)
    return f"Set the pump {reader.both(lower, 'length')} lower, or use a pump that stands in the water."


def _figures(line, needed, spare, values):
    return (
        Figure("Highest the pump may stand above the water", _allowable(line, needed, values.margin), "length", main=True),
        Figure("In hand beyond need and margin", spare, "head"),
        Figure("NPSH available", line.available, "head"),
        Figure("NPSH the pump needs", needed, "head"),
        Figure("Lost in the suction line", line.loss, "head"),
        Figure("Most still water could be lifted here", suction.theoretical_lift(line.site), "head",
               note="by a perfect vacuum; no pump reaches it"),
    )  # fmt: skip


def _steps(line, needed, values):
    rho, g = Value(line.site.density, "density", 5), Value(GRAVITY, "number", 6)
    bore, speed = Value(line.pipe.inside_m, "diameter"), Value(line.speed, "speed")
    viscosity = water.kinematic_viscosity(line.temperature)
    re = friction.reynolds(line.speed, line.pipe.inside_m, viscosity)
    factor = friction.friction_factor(re, line.pipe.roughness_m / line.pipe.inside_m)
    limit = Value(suction.theoretical_lift(line.site), "head")
    steps = [
        Step(
            "What the air can push up",
            "H_max = (p_air - p_v) / (rho * g)",
            {"p_air": Value(line.site.air_pa, "pressure", 4), "p_v": Value(line.site.vapour_pa, "pressure"), "rho": rho, "g": g},
            limit,
            source="Air: ISO 2533:1975. Vapour pressure: IAPWS R7-97(2012).",
        ),
        Step("Speed in the pipe", "v = Q / (pi / 4 * D**2)", {"Q": Value(line.flow, "flow"), "D": bore}, speed,
             note=f"{line.pipe.label}.", source=line.pipe.source),
        Step(
            "Friction in the straight pipe",
            "h_p = f * L / D * v**2 / (2 * g)",
            {"f": Value(factor, "number"), "L": Value(line.length, "length"), "D": bore, "v": speed, "g": g},
            Value(line.straight_loss, "head"),
            source="Darcy-Weisbach with Colebrook's friction factor",
        ),
        Step(
            "Friction in foot valve and bends",
            "h_m = K * v**2 / (2 * g)",
            {"K": Value(line.k, "number"), "v": speed, "g": g},
            Value(friction.local_loss(line.k, line.speed), "head"),
        ),
        Step(
            "NPSH available",
            "NPSH_a = H_max - z - h_p - h_m",
            {"H_max": limit, "z": Value(line.lift, "length"), "h_p": Value(line.straight_loss, "head"),
             "h_m": Value(friction.local_loss(line.k, line.speed), "head")},
            Value(line.available, "head"),
            source="ISO 17769-1:2012",
        ),
    ]  # fmt: skip
    if values.figure == "lift":
        steps.append(_rated_step(line, needed, values))
    steps.append(
        Step(
            "Highest the pump may stand",
            "z_max = H_max - h_p - h_m - NPSH_r - m",
            {
                "H_max": limit,
                "h_p": Value(line.straight_loss, "head"),
                "h_m": Value(friction.local_loss(line.k, line.speed), "head"),
                "NPSH_r": Value(needed, "head"),
                "m": Value(values.margin, "head"),
            },
            Value(_allowable(line, needed, values.margin), "length"),
        )  # fmt: skip
    )
    return tuple(steps)


def _rated_step(line, needed, values):
    rated = suction.place(0.0, 293.15)
    return Step(
        "The dry lift as an NPSH",
        "NPSH_r = H_max - z_dry * p_air / p_0 * rho_0 / rho",
        {"H_max": Value(suction.theoretical_lift(line.site), "head"), "z_dry": Value(values.rated, "length"),
         "p_air": Value(line.site.air_pa, "pressure", 4), "p_0": Value(rated.air_pa, "pressure", 4),
         "rho_0": Value(rated.density, "density", 5), "rho": Value(line.site.density, "density", 5)},
        Value(needed, "head"),
        note="The vacuum a pump can draw shrinks with the air pressure (common practice).",
    )  # fmt: skip


def _sizes(line, needed, values):
    kind = line.pipe.kind
    options = pipes.sizes(kind) if kind in pipes.KINDS else (line.pipe,)
    rows, marked, dimmed = [], [], []
    for index, pipe in enumerate(options):
        other = replace(line, pipe=pipe)
        allowed = _allowable(other, needed, values.margin)
        fits = allowed >= line.lift
        rows.append(
            (
                pipe.name,
                pipe.inside_m,
                other.speed,
                other.loss,
                allowed,
                "fits" if fits else "lift too high",
            )
        )
        if pipe == line.pipe:
            marked.append(index)
        if not fits:
            dimmed.append(index)
    columns = (
        Column("Size"),
        Column("Inside", "diameter"),
        Column("Speed", "speed"),
        Column("Lost", "head"),
        Column("Highest lift", "length"),
        Column(""),
    )
    return Table(
        "Every size of this suction pipe", columns, tuple(rows), tuple(marked), tuple(dimmed)
    )


def _chart(line, needed, values):
    top = 2.0 * line.flow
    flows = tuple(top * i / 24 for i in range(1, 25))
    series = []
    own = [("Your site", line.site)]
    for name, site in own + [(n, suction.place(a, line.temperature)) for a, n in PLACES]:
        need = _needed(values, site)
        lifts = tuple(
            _allowable(replace(line, site=site, flow=q), need, values.margin) for q in flows
        )
        series.append(Series(name, flows, lifts))
    return Chart(
        "lift",
        "Highest lift against flow and altitude",
        "The highest allowable lift falls as flow grows and is lower at altitude; your duty is marked.",
        "Flow",
        "flow",
        "Highest lift",
        "length",
        tuple(series),
        marks=((line.flow, line.lift, "yours"),),
        levels=((suction.PRACTICAL_LIFT, "15 ft (common practice)"),),
    )


def _warnings(line, reader):
    found = []
    if line.speed > FAST:
        found.append(
            Warning("care", f"Water runs at {reader.both(line.speed, 'speed')} in the suction pipe. Keep it below "
                    f"about {reader.both(FAST, 'speed')}: use a wider pipe (common practice).")
        )  # fmt: skip
    if line.lift > 0:
        litres = suction.air_volume_to_clear(
            line.pipe.inside_m,
            line.length,
            line.site,
            min(line.lift, suction.theoretical_lift(line.site)),
        )
        found.append(
            Warning("note", "Fit a foot valve and fill the pipe before the first start. A self-priming pump has "
                    f"{reader.both(litres, 'volume')} of air to draw out first.")
        )  # fmt: skip
        found.append(
            Warning("note", "A suction line leaks air inward where no water shows. Use as few joints as you can, "
                    "let the pipe rise all the way to the pump, and never let it run dry.")
        )  # fmt: skip
    return tuple(found)


SHEET = Sheet(
    "suction",
    "Suction lift",
    FIELDS,
    solve,
    folded=(FITTINGS,),
    cautions=(
        "A well is a confined space: bad air kills without warning. Never climb in; call trained people.",
        "Cover the well, and keep surface water and animals out of drinking water.",
        "Electricity and water: have the pump wired by a licensed person to local codes.",
        "Lift a pump by its lug or rope, never by its cable; get help with heavy parts.",
    ),
    sources=(
        "Net positive suction head: ISO 17769-1:2012. Air pressure: ISO 2533:1975.",
        "Vapour pressure: IAPWS R7-97(2012). Lift of 15 ft: common practice, no source.",
    ),
    page="suction-lift/",
)
