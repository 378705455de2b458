"""The working of one filled line at a flow: speed, factor, losses, pressure at the outlet."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import water
from calc.page.answer import Column, Step, Table, Value
from calc.pipe import friction
from calc.units import GRAVITY

if TYPE_CHECKING:
    from calc.pipe.line import Line, Section
    from calc.pipe.pipes import Pipe


def loss_steps(line: Line, section: Section, flow_m3s: float) -> tuple[Step, ...]:
    """Steps from flow to head lost in a section of a line; none where nothing flows."""
    flow = flow_m3s * section.share
    if flow <= 0:
        return ()
    of = f" in {section.name}" if section.name else ""
    found = [*_pipe_steps(line, section, flow_m3s, of)]
    v = Value(line.speed_in(section, flow_m3s), "speed")
    if section.k:
        found.append(
            Step(
                f"Loss in fittings{of}",
                "h_m = K * v**2 / (2 * g)",
                {"K": Value(section.k, "number"), "v": v, "g": Value(GRAVITY, "number", 6)},
                Value(line.local_loss_in(section, flow_m3s), "head"),
                note=_fitting_words(section),
                source="Crane TP-410, from memory",
            )
        )
    if section.device is not None:
        rated, loss = section.device
        found.append(
            Step(
                f"Loss in the filter{of}",
                "h_d = h_r * (Q / Q_r)**2",
                {"h_r": Value(loss, "head"), "Q": Value(flow, "flow"), "Q_r": Value(rated, "flow")},
                Value(line.device_loss_in(section, flow_m3s), "head"),
                source="common practice, no source",
            )
        )
    return tuple(found)


def _pipe_steps(line: Line, section: Section, flow_m3s: float, of: str) -> tuple[Step, ...]:
    """Speed, Reynolds number, factor and loss of the straight pipe."""
    pipe, speed = section.pipe, line.speed_in(section, flow_m3s)
    bore, v = Value(pipe.inside_m, "diameter"), Value(speed, "speed")
    re = friction.reynolds(speed, pipe.inside_m, line.viscosity)
    factor = friction.design_factor(max(re, 1e-9), pipe.roughness_m / pipe.inside_m)
    length, gravity = Value(section.length_m, "length"), Value(GRAVITY, "number", 6)
    return (
        Step(
            f"Water speed{of}",
            "v = Q / (pi / 4 * D**2)",
            {"Q": Value(flow_m3s * section.share, "flow"), "D": bore},
            v,
            note=f"{pipe.label}: its real inside diameter.",
            source=pipe.source,
        ),
        Step(
            f"Reynolds number{of}",
            "Re = v * D / nu",
            {"v": v, "D": bore, "nu": Value(line.viscosity, "kinematic", 4)},
            Value(re, "number"),
        ),
        _factor_step(f"Friction factor{of}", factor, re, pipe),
        Step(
            f"Friction loss in the pipe{of}",
            "h_f = f * L / D * v**2 / (2 * g)",
            {"f": Value(factor, "number", 4), "L": length, "D": bore, "v": v, "g": gravity},
            Value(line.straight_loss_in(section, flow_m3s), "head"),
            source="Darcy-Weisbach",
        ),
    )


def _factor_step(title: str, factor: float, re: float, pipe: Pipe) -> Step:
    """By formula where one law holds, in words on the bridge between the two."""
    found = Value(factor, "number", 4)
    if re < friction.LAMINAR_LIMIT:
        note = "The flow is laminar: roughness does not count."
        return Step(title, "f = 64 / Re", {"Re": Value(re, "number")}, found, note,
                    "Hagen-Poiseuille")  # fmt: skip
    if re < friction.TURBULENT_FROM:
        note = (
            f"f = {factor:.4f}, between laminar and turbulent flow, on a straight line in f Re² "
            "from 64/Re to the Colebrook equation for a roughness of "
            f"{pipe.roughness_m * 1e3:.4g} mm (our choice)."
        )
        return Step(title, note=note, source="Colebrook 1939")
    return Step(
        title,
        "f = 1 / (2 * log10(eps / (3.7 * D) + 2.51 / (Re * sqrt(f))))**2",
        {
            "eps": Value(pipe.roughness_m, "roughness"),
            "D": Value(pipe.inside_m, "diameter", 4),
            "Re": Value(re, "number", 4),
            "f": found,
        },
        found,
        "f is on both sides: found by trial.",
        "Colebrook 1939",
    )


def _fitting_words(section: Section) -> str:
    parts = (f"{count:g} × {fitting.name}" for fitting, count in section.fittings if count)
    return f"Counted: {', '.join(parts)}."


def line_steps(line: Line, flow_m3s: float) -> tuple[Step, ...]:
    """Steps from flow to the pressure at the outlet: of the section that loses most, then all."""
    section = line.sections[line.worst(flow_m3s)]
    found = [*loss_steps(line, section, flow_m3s)]
    if line.single is None:
        losses = {
            f"h_{at}": Value(line.loss_in(one, flow_m3s), "head")
            for at, one in enumerate(line.sections, 1)
        }
        found.append(
            Step(
                "Loss of all pipe sections",
                "h = " + " + ".join(losses),
                losses,
                Value(line.loss(flow_m3s), "head"),
                note="Each is worked out as the one above, which loses the most.",
            )
        )
    return (*found, outlet_step(line, flow_m3s))


def outlet_step(line: Line, flow_m3s: float) -> Step:
    """From the pressure at the start to that at the outlet."""
    title, left = "Pressure at the outlet", Value(line.left(flow_m3s), "pressure")
    if line.reduced:
        note = (
            "From section to section: pressure less climb and loss; a pressure-reducing valve then "
            "holds its setting, or less where it is wide open. The table shows each point."
        )
        if line.vented:
            note += " Behind a break-pressure tank pressure begins again from nothing."
        return Step(title, note=note)
    single = line.single
    parts = {"h_f": Value(line.loss(flow_m3s), "head")}
    if single is not None:
        parts = {"h_f": Value(line.straight_loss_in(single, flow_m3s), "head")}
        if single.k:
            parts["h_m"] = Value(line.local_loss_in(single, flow_m3s), "head")
        if single.device is not None:
            parts["h_d"] = Value(line.device_loss_in(single, flow_m3s), "head")
    return Step(
        title,
        f"p_end = p - rho * g * (z + {' + '.join(parts)})",
        {
            "p": Value(line.start_pa, "pressure"),
            "rho": Value(water.density(line.temperature_k), "density", 4),
            "g": Value(GRAVITY, "number", 6),
            "z": Value(line.rise_m, "length"),
            **parts,
        },
        left,
    )


def rating_step(line: Line) -> Step:
    """The highest pressure in the pipe, at the lowest point of the section nearest its rating."""
    stress = max(line.stresses(), key=lambda s: (s.over, s.pressure_pa / (s.rating_pa or 1e9)))
    depth = (line.most_start - stress.pressure_pa) / line.weight
    if stress.rating_pa is None:
        rated = "cannot be compared: no rating is known for this pipe at this temperature"
    else:
        rated = "is above the rating" if stress.over else "is within the rating"
    note = f"This {rated}. Water hammer comes on top."
    title = "Maximum pressure in the pipe, with no flow"
    if line.reduced:
        return Step(title, note=note, source=stress.section.pipe.source)
    return Step(
        title,
        "p_high = p_most + rho * g * d",
        {
            "p_most": Value(line.most_start, "pressure"),
            "rho": Value(water.density(line.temperature_k), "density", 4),
            "g": Value(GRAVITY, "number", 6),
            "d": Value(-depth + 0.0, "length"),
        },
        Value(stress.pressure_pa, "pressure"),
        note=f"d: how far its lowest point is below the start. {note}",
        source=stress.section.pipe.source,
    )


def sections_table(line: Line, flow_m3s: float) -> Table:
    """Every section of a line: speed, loss, and the pressure at its far end."""
    points = line.points(flow_m3s)[1:]
    still = line.points(0.0)[1:]
    rows = tuple(
        (
            f"{at}: {one.pipe.label}",
            one.length_m,
            line.speed_in(one, flow_m3s),
            line.loss_in(one, flow_m3s),
            end.pressure_pa,
            rest.pressure_pa,
        )
        for at, (one, end, rest) in enumerate(zip(line.sections, points, still, strict=True), 1)
    )
    columns = (
        Column("Pipe section"),
        Column("Length", "length"),
        Column("Water speed", "speed"),
        Column("Friction loss", "head"),
        Column("Running pressure at its end", "pressure"),
        Column("Static pressure at its end", "pressure"),
    )
    note = "The loss counts bends, filters and valves; what a reducing valve takes is not in it."
    return Table("Every pipe section", columns, rows, (line.worst(flow_m3s),), note=note)
