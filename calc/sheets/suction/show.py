"""What the suction sheet shows of its case: the working, the sizes, the chart, the warnings."""

from dataclasses import replace

from calc import suction
from calc.page.answer import Chart, Column, Figure, Series, Step, Table, Value, Warning
from calc.pipe import friction, pipes
from calc.sheets.suction.case import RATED_AT, needed
from calc.units import FOOT, GRAVITY, QUANTITIES, number_text

PLACES = {"metric": (1500.0, 3000.0), "us": (5000 * FOOT, 10000 * FOOT)}  # m, drawn to compare
FAST = 1.5  # m/s, about 5 ft/s, in suction pipes; common practice, no source
WARM = 313.15  # K (104 degF): from here on vapour takes 0.75 m and more of the air's push
POINTS = 14  # a line of the chart


def figures(case):
    """The key figures; a vacuum gauge's reading only where the water arrives at all."""
    found = [
        Figure("Highest the pump may stand above the water", case.allowed, "length", main=True),
        Figure("In hand beyond need and margin", case.allowed - case.lift, "head", main=True),
        Figure("NPSH available", case.available, "head"),
        Figure("NPSH the pump needs", case.needed, "head"),
        Figure("Lost in the suction line", case.loss, "head"),
    ]
    if case.vacuum > 0 and case.available > 0:
        mercury = number_text(QUANTITIES["pressure"].unit("inHg").from_si(case.vacuum), 3)
        note = f"{mercury} inHg; deeper on site means a clog or a longer lift"
        label = "A vacuum gauge at the pump would read"
        found.append(Figure(label, case.vacuum, "pressure", note=note))
    else:
        note = "by a perfect vacuum; no pump reaches it"
        found.append(Figure("Most still water can be lifted here", case.limit, "head", note=note))
    return tuple(found)


def steps(case, values):
    """The working, step by step."""
    return (
        _limit_step(case),
        *_flow_steps(case, values),
        *_loss_steps(case),
        *_npsh_steps(case, values),
        *_priming_steps(case),
    )


def _limit_step(case):
    return Step(
        "What the air can push up",
        "H_max = (p_air - p_v) / (rho * g)",
        {
            "p_air": Value(case.site.air_pa, "pressure", 4),
            "p_v": Value(case.site.vapour_pa, "pressure"),
            "rho": Value(case.site.density, "density", 5),
            "g": Value(GRAVITY, "number", 6),
        },
        Value(case.limit, "head"),
        note="Air pressure less the pressure at which this water boils, as a height of water.",
        source="Air: ISO 2533:1975. Vapour pressure: IAPWS R7-97(2012).",
    )


def _flow_steps(case, values):
    bore, speed = Value(case.pipe.inside_m, "diameter"), Value(case.speed, "speed")
    re = friction.reynolds(case.speed, case.pipe.inside_m, case.viscosity)
    entrance = friction.BY_KEY["entrance"].k if values.foot == 0 else 0.0
    return (
        Step(
            "Speed in the pipe",
            "v = Q / (pi / 4 * D**2)",
            {"Q": Value(case.flow, "flow"), "D": bore},
            speed,
            note=f"{case.pipe.label}: the bore is its real inside diameter.",
            source=case.pipe.source,
        ),
        Step(
            "Reynolds number",
            "Re = v * D / nu",
            {"v": speed, "D": bore, "nu": Value(case.viscosity, "kinematic", 4)},
            Value(re, "number"),
        ),
        _factor_step(case, re, bore),
        Step(
            "Loss coefficients of the fittings",
            "K = K_in + n_foot * K_foot + n_elbow * K_elbow",
            {
                "K_in": Value(entrance, "number"),
                "n_foot": Value(values.foot, "number"),
                "K_foot": Value(friction.BY_KEY["foot"].k, "number"),
                "n_elbow": Value(values.elbow90, "number"),
                "K_elbow": Value(friction.BY_KEY["elbow90"].k, "number"),
            },
            Value(case.k, "number"),
            source=friction.BY_KEY["foot"].source,
        ),
    )


def _factor_step(case, re, bore):
    factor = friction.friction_factor(re, case.pipe.roughness_m / case.pipe.inside_m)
    if re < friction.LAMINAR_LIMIT:
        return Step(
            "Friction factor, smooth slow flow",
            "f = 64 / Re",
            {"Re": Value(re, "number")},
            Value(factor, "number"),
            source="Laminar flow",
        )
    return Step(
        "Friction factor",
        "f = 1 / (2 * log10(eps / (3.7 * D) + 2.51 / (Re * sqrt(f))))**2",
        {
            "eps": Value(case.pipe.roughness_m, "roughness"),
            "D": bore,
            "Re": Value(re, "number"),
            "f": Value(factor, "number"),
        },
        Value(factor, "number"),
        note="f stands on both sides: it is the number that gives itself back.",
        source="Colebrook (1939)",
    )


def _loss_steps(case):
    re = friction.reynolds(case.speed, case.pipe.inside_m, case.viscosity)
    factor = friction.friction_factor(re, case.pipe.roughness_m / case.pipe.inside_m)
    speed, g = Value(case.speed, "speed"), Value(GRAVITY, "number", 6)
    return (
        Step(
            "Friction in the straight pipe",
            "h_p = f * L / D * v**2 / (2 * g)",
            {
                "f": Value(factor, "number"),
                "L": Value(case.length, "length"),
                "D": Value(case.pipe.inside_m, "diameter"),
                "v": speed,
                "g": g,
            },
            Value(case.straight_loss, "head"),
            source="Darcy-Weisbach",
        ),
        Step(
            "Friction in foot valve and elbows",
            "h_m = K * v**2 / (2 * g)",
            {"K": Value(case.k, "number"), "v": speed, "g": g},
            Value(case.local_loss, "head"),
        ),
        Step(
            "Lost in the suction line",
            "h_f = h_p + h_m + h_s",
            {
                "h_p": Value(case.straight_loss, "head"),
                "h_m": Value(case.local_loss, "head"),
                "h_s": Value(case.strainer, "head"),
            },
            Value(case.loss, "head"),
            note="h_s is the strainer or filter at the pump, as given.",
        ),
    )


def _npsh_steps(case, values):
    limit, loss = Value(case.limit, "head"), Value(case.loss, "head")
    found = [
        Step(
            "NPSH available",
            "NPSH_a = H_max - z - h_f",
            {"H_max": limit, "z": Value(case.lift, "length"), "h_f": loss},
            Value(case.available, "head"),
            source="ISO 17769-1:2012",
        )
    ]
    if values.figure == "lift":
        found.append(_dry_step(case, values))
    found.append(
        Step(
            "Highest the pump may stand above the water",
            "z_max = H_max - h_f - NPSH_r - m",
            {
                "H_max": limit,
                "h_f": loss,
                "NPSH_r": Value(case.needed, "head"),
                "m": Value(case.margin, "head"),
            },
            Value(case.allowed, "length"),
            note="m is the margin kept in hand.",
        )
    )
    return found


def _dry_step(case, values):
    rated = suction.place(*RATED_AT)
    return Step(
        "The dry lift as an NPSH",
        "NPSH_r = max(0, H_0 - z_dry, H_max - z_dry * p_air / p_0 * rho_0 / rho)",
        {
            "H_0": Value(suction.theoretical_lift(rated), "head"),
            "H_max": Value(case.limit, "head"),
            "z_dry": Value(values.rated, "length"),
            "p_air": Value(case.site.air_pa, "pressure", 4),
            "p_0": Value(rated.air_pa, "pressure", 4),
            "rho_0": Value(rated.density, "density", 5),
            "rho": Value(case.site.density, "density", 5),
        },
        Value(case.needed, "head"),
        note="What the pump leaves unused of the air's push: at sea level, where its dry lift is "
        "stated (H_0), or here, drawing air, whichever is more.",
    )


def _priming_steps(case):
    seconds = case.priming_seconds()
    if seconds is None:
        return ()
    return (
        Step(
            "Least time to draw the air out, self-priming",
            "t = pi / 4 * D**2 / Q * (z + L + (L - H_max) * log(H_max / (H_max - z)))",
            {
                "D": Value(case.pipe.inside_m, "diameter"),
                "Q": Value(case.flow, "flow"),
                "z": Value(case.lift, "length"),
                "L": Value(case.length, "length"),
                "H_max": Value(case.limit, "head"),
            },
            Value(seconds, "time"),
            note="For a pump that moves as much air as water; most move less. The pipe is taken "
            "to rise first and then run level, empty and without a leak.",
            source="Ideal gas drawn out at constant temperature; own derivation",
        ),
    )


def sizes(case):
    """Every size of this kind of pipe, what it loses and how high the pump may stand on it."""
    kind = case.pipe.kind
    options = pipes.sizes(kind) if kind in pipes.KINDS else (case.pipe,)
    tried = tuple(replace(case, pipe=pipe) for pipe in options)
    rows = tuple(
        (
            other.pipe.name,
            other.pipe.inside_m,
            other.speed,
            other.loss,
            other.allowed,
            _remark(other),
        )
        for other in tried
    )
    return Table(
        "Every size of this suction pipe",
        (
            Column("Size"),
            Column("Inside", "diameter"),
            Column("Speed", "speed"),
            Column("Lost", "head"),
            Column("Highest lift", "length"),
            Column("Result"),
        ),
        rows,
        marked=tuple(i for i, other in enumerate(tried) if other.pipe == case.pipe),
        dimmed=tuple(i for i, other in enumerate(tried) if not other.fits),
        note="A highest lift below 0 means the water must stand that much above the pump.",
    )


def _remark(case):
    if not case.fits:
        return "lift too high"
    return "fits, but fast" if case.speed > FAST else "fits"


def chart(case, values, reader):
    """Highest lift against flow, here and at other altitudes, with the duty marked."""
    flows = _flows(case, values)
    losses = tuple(replace(case, flow=flow).loss for flow in flows)
    here = f"Here, {reader.show(values.altitude, 'length')} up"
    series = [_line(case, values, case.site, losses, flows, here, "line")]
    for altitude in (0.0, *PLACES[reader.system]):
        if abs(altitude - values.altitude) > 100:
            place = suction.place(altitude, case.temperature)
            name = f"{reader.show(altitude, 'length')} up" if altitude else "Sea level"
            series.append(_line(case, values, place, losses, flows, name, "dashed"))
    return Chart(
        "lift",
        "Highest lift against flow and altitude",
        "The highest lift falls as the flow grows and lies lower at altitude; here it is "
        f"{reader.both(case.allowed, 'length')} at your flow, and your lift is marked.",
        "Flow",
        "flow",
        "Highest lift",
        "length",
        tuple(series),
        marks=((case.flow, case.lift, "yours"),),
        levels=((suction.PRACTICAL_LIFT, "about 4.5 m (15 ft), common practice"),),
    )


def _flows(case, values):
    """Flows from none to twice the duty, ended where even at sea level nothing may be lifted."""
    sea = suction.place(0.0, case.temperature)
    floor = min(0.0, case.lift)
    still = suction.allowable_lift(sea, case.strainer, needed(values, sea), case.margin)
    top = 2 * case.flow
    if still > floor:
        bore, rough = case.pipe.inside_m, case.pipe.roughness_m
        most = friction.flow_for_loss(
            still - floor, bore, case.length, rough, case.viscosity, case.k
        )
        top = min(top, max(1.05 * case.flow, most))
    return tuple(top * i / (POINTS - 1) for i in range(POINTS))


def _line(case, values, place, losses, flows, name, style):
    need = needed(values, place)
    lifts = tuple(suction.allowable_lift(place, loss, need, case.margin) for loss in losses)
    return Series(name, flows, lifts, style)


def warnings(case, values, reader):
    """What to know or do, the gravest first."""
    found = [*_stops(case), *_cares(case, values, reader)]
    if case.lift > 0:
        seconds = case.priming_seconds()
        start = "Fill pipe and pump before the first start, unless the pump primes itself"
        if seconds is not None:
            time = reader.show(seconds, "time" if seconds < 120 else "minutes", 2)
            start += f": that takes it at least {time}, running dry"
        found.append(Warning("note", f"{start}."))
        found.append(
            Warning(
                "note",
                "A suction line leaks air inward, where no water shows. Use few joints, and let "
                "the pipe rise all the way to the pump so that no air collects.",
            )
        )
    found.append(
        Warning(
            "note",
            "Protect the pump against running dry, and measure the lift to the lowest level the "
            "water falls to while the pump runs. A diaphragm pump draws in pulses: a short, stiff "
            "but flexible hose at its inlet evens them out (common practice; not counted here).",
        )
    )
    return tuple(found)


def _stops(case):
    if case.available <= 0:
        yield Warning("stop", "The water boils before it arrives: the pump runs on vapour, dry.")
    if case.flattens:
        yield Warning("stop", "Lay-flat hose closes under suction. Use rigid pipe or suction hose.")


def _cares(case, values, reader):
    if case.pipe.kind == "hose" and case.vacuum > 0:
        yield Warning(
            "care",
            "Garden hose can be sucked flat, most of all warm. Use rigid pipe or suction hose.",
        )
    if case.speed > FAST:
        yield Warning(
            "care",
            f"Water runs at {reader.both(case.speed, 'speed')} in the suction pipe. Stay below "
            f"about {reader.both(FAST, 'speed')} with a wider pipe (common practice).",
        )
    if values.foot == 0 and case.lift > 0:
        yield Warning(
            "care",
            "Without a foot valve the pipe runs empty at every stop, and the pump must prime anew.",
        )
    if case.temperature > WARM:
        vapour = reader.both(case.site.vapour_pa / case.site.weight, "head")
        yield Warning("care", f"Water so warm boils easily: its vapour takes {vapour} of the lift.")
