"""Air-charged pressure tank: drawdown, starts an hour, and what speed control does instead."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, Any

from calc.page.answer import Answer
from calc.page.fields import Choice, Number, Sheet, Unknown
from calc.sheets.parts.fields import SEA_LEVEL, altitude, precharge, starts_allowed
from calc.sheets.parts.tries import Form
from calc.sheets.pressure_tank import drawing, judge, show
from calc.sheets.pressure_tank.case import Case, case

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.units import Reader

MORE = "Pre-charge, starts and site"

FIELDS = (
    Choice(
        "control",
        "How the pump is controlled",
        (("switch", "Pressure switch: on and off"), ("speed", "Speed control: holds the pressure")),
        "switch",
    ),
    Number("cutin", "Cut-in pressure", "pressure", "2 bar", "30 psi", 0.1e5, 15e5,
           when=("control", ("switch",))),
    Number("cutout", "Cut-out pressure", "pressure", "3.5 bar", "50 psi", 0.1e5, 20e5,
           when=("control", ("switch",))),
    Number("set", "Set pressure", "pressure", "3.5 bar", "50 psi", 0.1e5, 20e5,
           help="It rests at this pressure and starts again a little below",
           when=("control", ("speed",))),
    Number("pump", "Flow of the pump", "flow", "18 L/min", "5 gpm", 1e-7, 0.05,
           when=("control", ("switch",))),
    Choice("has", "Pressure tank", (("tank", "There is one"), ("none", "There is none")), "tank"),
    Number("tank", "Tank volume", "volume", "100 L", "26 gal", 1e-4, judge.LARGEST,
           help="The size on its label, not its drawdown", when=("has", ("tank",))),
    Number("draw", "Flow drawn steadily", "flow", "7.5 L/min", "2 gpm", 0.0, 0.05,
           when=("control", ("switch",))),
    precharge(MORE),
    starts_allowed(MORE),
    Number("shutoff", "Head of the pump with no flow (optional)", "head", "", "", 0.0, 500.0,
           help="The highest point of its curve. It says whether the pump can reach cut-out",
           optional=True, when=("control", ("switch",)), group=MORE),
    Number("lift", "Lift from the water to the switch", "length", "0 m", "0 ft", -50.0, 400.0,
           help="Up from the lowest water level in the well. It counts with the pump's head",
           when=("control", ("switch",)), group=MORE),
    Number("leak", "Leaks and drips", "flow", "0.05 L/min", "0.013 gpm", 0.0, 0.01,
           help="A dripping tap loses about this", when=("control", ("speed",)), group=MORE,
           unknown=Unknown("0.05 L/min", "0.013 gpm", "usual for a dripping tap")),
    replace(altitude(5000.0, group=MORE), unknown=SEA_LEVEL),
    Number("smallest", "Smallest steady draw (optional)", "flow", "", "", 0.0, 0.05,
           help="Such as one drip zone", optional=True, when=("control", ("speed",)), group=MORE),
    Number("least", "Least flow of the pump (optional)", "flow", "", "", 0.0, 0.05,
           help="Below it a speed control stops and starts", optional=True,
           when=("control", ("speed",)), group=MORE),
    Number("refill", "Flow of the pump on refilling (optional)", "flow", "", "", 1e-7, 0.05,
           help="At full speed, just below the set pressure. If blank: the tank is taken as filled "
           "at once", optional=True, when=("control", ("speed",)), group=MORE),
)  # fmt: skip


def solve(values: Values, reader: Reader) -> Answer:
    """The answer to a form.  Raises InputError for what cannot be worked with."""
    found = case(values, reader)
    form = Form(
        SHEET,
        values,
        reader,
        lambda changed: judge.findings(changed, case(changed, reader), reader),
        lambda changed: judge.changes(changed, case(changed, reader), reader),
    )
    parts = _with_speed_control if found.speed else _with_switch
    return Answer(
        told=judge.told(values, found, reader),
        findings=tuple(judge.findings(values, found, reader)),
        fixes=form.fixes(),
        cautions=judge.cautions(values, found, reader),
        links=judge.links(values, found, reader),
        drawings=drawing.draw(values, found, reader),
        **parts(values, found, reader),
    )


def _with_switch(values: Values, found: Case, reader: Reader) -> dict[str, Any]:
    return {
        "figures": show.switch_figures(values, found),
        "steps": show.switch_steps(values, found),
        "tables": (show.size_table(values, found, reader),),
        "charts": (show.switch_chart(values, found),) if found.gives else (),
    }


def _with_speed_control(values: Values, found: Case, reader: Reader) -> dict[str, Any]:
    return {
        "figures": show.speed_figures(found),
        "steps": show.speed_steps(values, found),
        "tables": (show.leak_table(values, found, reader),),
        "charts": (show.leak_chart(values, found),) if values.leak > 0 else (),
    }


SHEET = Sheet(
    "pressure_tank",
    "Pressure tank",
    FIELDS,
    solve,
    folded=(MORE,),
    cautions=(
        "A pressure tank stores energy: shut off the pump and drain it before you loosen anything.",
        "Fit a relief valve set no higher than the weakest rating; never charge past the label.",
        "Pressure vessels and their inspection are under local law. A licensed person must do the "
        "wiring, to local codes.",
        "Keep tank, switch, gauge and relief valve free of frost, or drain them.",
    ),
    sources=(
        "Boyle's law with absolute pressures; air pressure by altitude: ISO 2533:1975.",
        "Pre-charge 2 psi below cut-in, a minute's run: common practice, no source.",
    ),
    arguments={
        "tank_m3": "tank",
        "precharge_pa": "precharge",
        "cut_in_pa": "cutin",
        "cut_out_pa": "cutout",
        "pump_m3s": "pump",
        "demand_m3s": "draw",
        "leak_m3s": "leak",
        "rate": "starts",
    },
    page="pressure-tank/",
)
