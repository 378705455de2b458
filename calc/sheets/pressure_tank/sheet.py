"""Air-charged pressure tank: drawdown, starts an hour, and what speed control does instead."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, Any

from calc import practice
from calc.page.answer import Answer
from calc.page.fields import Choice, Number, Sheet, Unknown
from calc.sheets.parts.fields import SEA_LEVEL, altitude, precharge, starts_allowed, usual
from calc.sheets.parts.tries import Form
from calc.sheets.pressure_tank import drawing, judge, show
from calc.sheets.pressure_tank.case import Case, case

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.units import Reader

MORE = "Pre-charge, starts and site"
RELIEF = "Relief valve"

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
    Number("relief", "Relief valve opens at (optional)", "pressure", "", "", 0.1e5, 60e5,
           help="As stamped on it; if blank, it is not checked", optional=True, group=RELIEF,
           unknown=Unknown(reason="what is stamped on it is not known")),
    Number("weakest", "Lowest rating it guards (optional)", "pressure", "", "", 0.1e5, 100e5,
           help="Of tank, pipe, filter and pump, whichever is least", optional=True, group=RELIEF,
           unknown=usual(practice.TANK_RATING, "pressure",
                         "usual for small tanks; common practice")),
    Number("blow", "Pump's flow at that pressure (optional)", "flow", "", "", 0.0, 0.05,
           help="With every outlet closed; if blank, its whole flow, the careful side",
           optional=True, group=RELIEF, unknown=Unknown(reason="its whole flow is taken")),
    Number("opening", "Relief valve's opening (optional)", "diameter", "", "", 1e-3, 0.1,
           help="The bore of its seat, from its data sheet, and not its thread", optional=True,
           group=RELIEF, unknown=Unknown(reason="the answer says how wide it must be")),
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
        standing=values.standing,
    )
    parts = _with_speed_control if found.speed else _with_switch
    shown = _with_relief(values, found, parts(values, found, reader))
    return Answer(
        told=judge.told(values, found, reader),
        findings=tuple(judge.findings(values, found, reader)),
        fixes=form.fixes(),
        cautions=judge.cautions(values, found, reader),
        links=judge.links(values, found, reader),
        drawings=drawing.draw(values, found, reader),
        **shown,
    )


def _with_relief(values: Values, found: Case, parts: dict[str, Any]) -> dict[str, Any]:
    """Figures and working, with those of a relief valve where one is given."""
    if values.relief is None:
        return parts
    from calc.sheets.pressure_tank import relief_show  # asked by few: not in what a start is sent

    return {
        **parts,
        "figures": (*parts["figures"], *relief_show.figures(values, found)),
        "steps": (*parts["steps"], *relief_show.steps(values, found)),
    }


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
    folded=(MORE, RELIEF),
    cautions=(
        "A pressure tank stores energy: shut off the pump and drain it before you loosen anything.",
        "Fit a relief valve set no higher than the weakest rating; never charge past the label.",
        "Pressure vessels and their inspection are under local law. A licensed person must do the "
        "wiring, to local codes.",
        "Keep tank, switch, gauge and relief valve free of frost, or drain them.",
    ),
    sources=(
        "Boyle's law with absolute pressures; air pressure by altitude: ISO 2533:1975.",
        "Pre-charge 2 psi below cut-in, a minute's run, a relief valve a tenth over cut-out: "
        "common practice, no source.",
        "What a relief valve passes: orifice equation, after API 520 for liquid, from memory; its "
        "coefficient 0.62: our choice.",
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
        "flow_m3s": "blow",
    },
    page="pressure-tank/",
)
