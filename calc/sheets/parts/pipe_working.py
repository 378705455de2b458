"""The working of one filled pipe at a flow: speed, Reynolds number, factor, losses."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.page.answer import Step, Value
from calc.pipe import friction
from calc.units import GRAVITY

if TYPE_CHECKING:
    from calc.pipe.line import Line, Section


def loss_steps(line: Line, section: Section, flow_m3s: float) -> tuple[Step, ...]:
    """Steps from flow to head lost in a section of a line; none where nothing flows."""
    flow = flow_m3s * section.share
    if flow <= 0:
        return ()
    pipe, speed = section.pipe, line.speed_in(section, flow_m3s)
    bore, v = Value(pipe.inside_m, "diameter"), Value(speed, "speed")
    gravity = Value(GRAVITY, "number", 6)
    re = friction.reynolds(speed, pipe.inside_m, line.viscosity)
    factor = friction.design_factor(re, pipe.roughness_m / pipe.inside_m)
    of = f" in {section.name}" if section.name else ""
    found = [
        Step(
            f"Water speed{of}",
            "v = Q / (pi / 4 * D**2)",
            {"Q": Value(flow, "flow"), "D": bore},
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
        Step(f"Friction factor{of}", note=_factor_words(factor, re, pipe.roughness_m),
             source="Colebrook 1939"),
        Step(
            f"Friction loss in the pipe{of}",
            "h_f = f * L / D * v**2 / (2 * g)",
            {"f": Value(factor, "number", 4), "L": Value(section.length_m, "length"), "D": bore,
             "v": v, "g": gravity},
            Value(line.straight_loss_in(section, flow_m3s), "head"),
            source="Darcy-Weisbach",
        ),
    ]  # fmt: skip
    if section.k:
        found.append(
            Step(
                f"Loss in fittings{of}",
                "h_m = K * v**2 / (2 * g)",
                {"K": Value(section.k, "number"), "v": v, "g": gravity},
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


def _factor_words(factor: float, re: float, roughness_m: float) -> str:
    rough = f"for a roughness of {roughness_m * 1e3:.4g} mm"
    if re < friction.LAMINAR_LIMIT:
        return f"f = 64/Re = {factor:.4f}: the flow is laminar."
    if re < friction.TURBULENT_FROM:
        return (
            f"f = {factor:.4f}, between laminar and turbulent flow, on a straight line in f Re² "
            f"from 64/Re to the Colebrook equation {rough} (our choice)."
        )
    return f"f = {factor:.4f}, from the Colebrook equation {rough}."


def _fitting_words(section: Section) -> str:
    parts = (f"{count:g} × {fitting.name}" for fitting, count in section.fittings if count)
    return f"Counted: {', '.join(parts)}."
