"""What the suction sheet shows of its case: the figures, the working, the sizes, the chart."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import practice, suction
from calc.page.answer import Chart, Column, Figure, Series, Step, Table, Value
from calc.pipe import pipes
from calc.sheets.parts.pipe_working import loss_steps
from calc.sheets.suction.case import RATED_AT, Case, elsewhere
from calc.units import FOOT, GRAVITY, QUANTITIES, number_text

if TYPE_CHECKING:
    from calc.units import Reader

PLACES = {"metric": (1500.0, 3000.0), "us": (5000 * FOOT, 10000 * FOOT)}  # m, drawn to compare
POINTS = 14  # a line of the chart
BELOW = "below zero: the water boils first"


def figures(case: Case) -> tuple[Figure, ...]:
    """The key figures; a vacuum gauge's reading only where the water arrives at all."""
    below = BELOW if case.available < 0 else ""
    loss = [Figure("Friction loss in suction pipe", case.loss, "head")]
    if case.pulses > 0:
        loss.append(Figure("Head that pulses take", case.pulses, "head"))
    available = Figure("NPSH available", case.available, "head", note=below)
    if case.needed is None:
        found = [*_would_pass(case), available, *loss]
    else:
        under = "below zero: the water must be above the pump"
        found = [
            Figure(
                "Maximum suction lift, by NPSH",
                case.allowed,
                "length",
                note=under if case.allowed < 0 else "",
                main=True,
            ),
            Figure("NPSH left beyond the margin", case.spare - case.margin, "head", main=True),
            available,
            Figure("NPSH required", case.needed, "head"),
            *loss,
        ]
    return (*found, _vacuum(case))


def _would_pass(case: Case) -> list[Figure]:
    """What the pump must state to pass; none where no pump would."""
    if case.would_pass <= 0:
        return []
    if case.by == "lift":
        dry = suction.dry_lift_for(case.would_pass, case.site, RATED_AT)
        return [Figure("Dry lift that would work", dry, "length", note="or more", main=True)]
    note = "or less, with the margin kept"
    return [Figure("NPSH required that would work", case.would_pass, "head", note=note, main=True)]


def _vacuum(case: Case) -> Figure:
    if case.vacuum > 0 and case.available > 0:
        mercury = number_text(QUANTITIES["pressure"].unit("inHg").from_si(case.vacuum), 3)
        note = f"{mercury} inHg; deeper on site means a clog or a longer lift"
        return Figure("Vacuum on a gauge at the pump", case.vacuum, "pressure", note=note)
    note = "by a perfect vacuum; no pump reaches it"
    return Figure("Theoretical suction limit", case.limit, "head", note=note)


# The working --------------------------------------------------------------------------------


def steps(case: Case) -> tuple[Step, ...]:
    """The working, step by step."""
    return (
        _limit_step(case),
        *loss_steps(case.line, case.section, case.flow),
        _sum_step(case),
        *_pulse_steps(case),
        *_npsh_steps(case),
        *_priming_steps(case),
    )


def _limit_step(case: Case) -> Step:
    return Step(
        "How high the air pressure can raise the water",
        "H_max = (p_air - p_v) / (rho * g)",
        {
            "p_air": Value(case.site.air_pa, "pressure", 4),
            "p_v": Value(case.site.vapour_pa, "pressure"),
            "rho": Value(case.site.density, "density", 5),
            "g": Value(GRAVITY, "number", 6),
        },
        Value(case.limit, "head"),
        note="Air pressure less the vapour pressure of the water, as a height of water.",
        source="Air: ISO 2533:1975. Vapour pressure: IAPWS R7-97(2012).",
    )


def _sum_step(case: Case) -> Step:
    line, section = case.line, case.section
    return Step(
        "Friction loss in the suction pipe",
        "h_s = h_f + h_m + h_d",
        {
            "h_f": Value(line.straight_loss_in(section, case.flow), "head"),
            "h_m": Value(line.local_loss_in(section, case.flow), "head"),
            "h_d": Value(case.strainer, "head"),
        },
        Value(case.loss, "head"),
        note="h_d is the strainer or filter at the pump, as given.",
    )


def _pulse_steps(case: Case) -> tuple[Step, ...]:
    """The acceleration head of a piston or diaphragm pump."""
    if case.pulsing is None or case.strokes is None:
        return ()
    return (
        Step(
            "Acceleration head: what the pulses take",
            "h_a = L * v * 60 * n * C / (K * g)",
            {
                "L": Value(case.pulsed, "length"),
                "v": Value(case.speed, "speed"),
                "n": Value(case.strokes, "rpm"),
                "C": Value(case.pulsing.factor, "number"),
                "K": Value(practice.PULSE_GIVES, "number"),
                "g": Value(GRAVITY, "number", 6),
            },
            Value(case.pulses, "head"),
            note=f"C is of a pump with {case.pulsing.name[0].lower()}{case.pulsing.name[1:]} and "
            "counts strokes a minute, so n, a second, is times 60. L is stiff pipe; a soft hose "
            "takes less.",
            source="Hydraulic Institute, reciprocating pumps (ANSI/HI 6.1-6.5), from memory",
        ),
    )


def _npsh_steps(case: Case) -> list[Step]:
    limit, taken = Value(case.limit, "head"), {"h_s": Value(case.loss, "head")}
    less = "h_s"
    if case.pulses > 0:
        taken["h_a"], less = Value(case.pulses, "head"), "h_s - h_a"
    found = [
        Step(
            "NPSH available",
            f"NPSH_a = H_max - z - {less}",
            {"H_max": limit, "z": Value(case.lift, "length"), **taken},
            Value(case.available, "head"),
            source="ISO 17769-1:2012",
        )
    ]
    if case.needed is None:
        return found
    if case.by == "lift":
        found.append(_dry_step(case))
    found.append(
        Step(
            "Maximum suction lift, by NPSH",
            f"z_max = H_max - {less} - NPSH_r - m",
            {
                "H_max": limit,
                **taken,
                "NPSH_r": Value(case.needed, "head"),
                "m": Value(case.margin, "head"),
            },
            Value(case.allowed, "length"),
            note="m is the NPSH margin.",
        )
    )
    return found


def _dry_step(case: Case) -> Step:
    return Step(
        "The dry lift as an NPSH required",
        "NPSH_r = max(0, H_0 - z_dry, H_max - z_dry * p_air / p_0 * rho_0 / rho)",
        {
            "H_0": Value(suction.theoretical_lift(RATED_AT), "head"),
            "H_max": Value(case.limit, "head"),
            "z_dry": Value(case.dry_lift, "length"),
            "p_air": Value(case.site.air_pa, "pressure", 4),
            "p_0": Value(RATED_AT.air_pa, "pressure", 4),
            "rho_0": Value(RATED_AT.density, "density", 5),
            "rho": Value(case.site.density, "density", 5),
        },
        Value(case.needed, "head"),
        note="What the pump leaves unused of the air pressure: at sea level, where its dry lift "
        "is stated (H_0), or at this altitude, drawing air, whichever is more.",
    )


def _priming_steps(case: Case) -> tuple[Step, ...]:
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
                "L": Value(case.line.length_m, "length"),
                "H_max": Value(case.limit, "head"),
            },
            Value(seconds, "time"),
            note="For a pump that moves as much air as water; most move less. The pipe is taken "
            "to rise first and then run level, empty and without a leak.",
            source="Ideal gas drawn out at constant temperature; own derivation",
        ),
    )


# The sizes ----------------------------------------------------------------------------------


def sizes(case: Case) -> Table:
    """Every size of this kind of pipe, what it loses and how high the pump may be on it."""
    kind = case.pipe.kind
    options = pipes.sizes(kind) if kind in pipes.KINDS else (case.pipe,)
    tried = tuple(case.with_pipe(pipe) for pipe in options)
    known = case.needed is not None
    rows = tuple(
        (
            other.pipe.name,
            other.pipe.inside_m,
            other.speed,
            other.loss,
            other.allowed if known else other.available,
            _remark(other),
        )
        for other in tried
    )
    return Table(
        "Every size of this suction pipe",
        (
            Column("Size"),
            Column("Inside diameter", "diameter"),
            Column("Water speed", "speed"),
            Column("Friction loss", "head"),
            Column("Maximum lift", "length") if known else Column("NPSH available", "head"),
            Column("Suitable?"),
        ),
        rows,
        marked=tuple(i for i, other in enumerate(tried) if other.pipe == case.pipe),
        dimmed=tuple(i for i, other in enumerate(tried) if known and not other.fits),
        note="A maximum lift below 0 means that the water must be that much above the pump."
        if known
        else "A figure below 0 cannot happen: the water boils first.",
    )


def _remark(case: Case) -> str:
    if case.needed is None:
        return "not checked"
    if not case.fits:
        return "lift too high"
    return "fits, but fast" if practice.speed_level(case.speed) else "fits"


# The chart ----------------------------------------------------------------------------------


def chart(case: Case, reader: Reader) -> Chart:
    """Highest lift (or NPSH, where no need is known) against flow, by altitude."""
    known = case.needed is not None
    flows = _flows(case)
    losses = tuple(case.taken_at(flow) for flow in flows)
    others = elsewhere(case, (0.0, *PLACES[reader.system]))
    here = f"Here, {reader.show(case.altitude, 'length')} up"
    series = [_series(case, losses, flows, here, "line")]
    for altitude, other in others:
        name = f"{reader.show(altitude, 'length')} up" if altitude else "Sea level"
        series.append(_series(other, losses, flows, name, "dashed"))
    what = "Maximum suction lift by NPSH" if known else "NPSH available"
    value, quantity = (case.allowed, "length") if known else (case.available, "head")
    usual = reader.show(case.usual_lift, "length", 2)
    marked = ", and your lift is marked" if known else ""
    return Chart(
        "lift",
        f"{what} against flow and altitude",
        f"{what} falls as the flow grows and is lower at altitude; at your flow it is "
        f"{reader.show(value, quantity)}{marked}.",
        "Flow",
        "flow",
        what,
        quantity,
        tuple(series),
        marks=((case.flow, case.lift if known else case.available, "yours"),),
        levels=((case.usual_lift, f"{usual}, usual at this altitude"),) if known else (),
    )


def _flows(case: Case) -> tuple[float, ...]:
    """Flows from none to twice the duty, ended where even at sea level nothing may be lifted."""
    sea = case.at_altitude(0.0)
    floor = min(0.0, case.lift)
    left = sea.limit - (sea.needed or 0.0) - case.margin - floor
    top = 2 * case.flow
    if left > 0:
        most = sea.with_lift(floor).with_flow(top).largest_flow() if sea.needed is not None else top
        top = min(top, max(1.05 * case.flow, most))
    return tuple(top * i / (POINTS - 1) for i in range(POINTS))


def _series(
    case: Case, losses: tuple[float, ...], flows: tuple[float, ...], name: str, style: str
) -> Series:
    if case.needed is None:
        ys = tuple(suction.npsh_available(case.site, case.lift, loss) for loss in losses)
    else:
        ys = tuple(
            suction.allowable_lift(case.site, loss, case.needed, case.margin) for loss in losses
        )
    return Series(name, flows, ys, style)
