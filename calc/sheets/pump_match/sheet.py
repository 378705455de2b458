"""Pump and pipe together: where they meet, at what speed, with what power."""

from calc.page.answer import Answer, Link, Warning
from calc.page.fields import Choice, Number, Sheet
from calc.pipe import pipes
from calc.pump.curve import DisplacementPump
from calc.practice import PREFERRED_FLOW as PREFERRED
from calc.pump.laws import GRADES, least_flow, restart_head
from calc.sheets.parts.fields import altitude, climb, pipe_length, water_temperature
from calc.sheets.parts.pipe_choice import chosen_pipe, pipe_fields
from calc.sheets.parts.pump_choice import chosen_pump, own_pump_fields, pump_menu
from calc.sheets.pump_match.case import Case, Site
from calc.sheets.pump_match.show import chart, figures, steps, table
from calc.sheets.pump_match.verdict import verdict

SUCTION, LOSSES = "Suction, water and height", "Losses, motor and control"

FIELDS = (
    pump_menu("small"),
    *own_pump_fields(),
    Number(
        "flow",
        "Flow with everything open",
        "flow",
        "30 L/min",
        "8 gpm",
        1e-6,
        0.05,
        help="A shower or sink takes about 7.5 L/min (2 gpm), a hose about 38 L/min (10 gpm).",
    ),
    climb("12 m", "40 ft", 300.0),
    pipe_length(),
    *pipe_fields(start=("pe100-sdr11", "40"), start_us=("pvc40", "1.25")),
    Number(
        "wanted",
        "Pressure wanted at the tap",
        "pressure",
        "1 bar",
        "15 psi",
        0.0,
        20e5,
        help="Drip lines like 1.4 bar (20 psi), a house 2 to 2.8 bar (30 to 40 psi).",
    ),
    Number(
        "lift",
        "Lift from the water to the pump",
        "length",
        "4 m",
        "13 ft",
        -50.0,
        9.0,
        help="From the water's lowest level. Water above the pump: a minus sign.",
        group=SUCTION,
    ),
    Number(
        "suction",
        "Lost in suction pipe and foot valve",
        "head",
        "0.5 m",
        "2 ft",
        0.0,
        9.0,
        help="At the full flow; the sheet on suction lift works it out.",
        group=SUCTION,
    ),
    water_temperature(333.15, SUCTION),
    altitude(4500.0, "300 m", "1000 ft", SUCTION),
    Number(
        "extra",
        "Added length for bends and valves",
        "percent",
        "10 %",
        "10 %",
        0.0,
        2.0,
        help="10 % is usual for a long buried run (common practice).",
        group=LOSSES,
    ),
    Number(
        "set",
        "Set pressure at the pump",
        "pressure",
        "",
        "",
        1e3,
        20e5,
        help="Leave empty to have one worked out.",
        optional=True,
        group=LOSSES,
    ),
    Choice(
        "grade",
        "Tolerance of the pump's curve",
        (
            ("1B", "ISO 9906 grade 1B"),
            ("2B", "ISO 9906 grade 2B"),
            ("3B", "ISO 9906 grade 3B (usual for small pumps)"),
            ("none", "None: the table as it stands"),
        ),
        "3B",
        help="How far a delivered pump may fall short of its table.",
        group=LOSSES,
    ),
    Number(
        "motor",
        "Motor efficiency",
        "percent",
        "75 %",
        "75 %",
        0.2,
        1.0,
        help="Used where the table gives the pump's efficiency but not the power drawn.",
        group=LOSSES,
    ),
    Number(
        "controller", "Controller efficiency", "percent", "95 %", "95 %", 0.2, 1.0, group=LOSSES
    ),
)


def solve(values, reader):
    case = Case(chosen_pump(values), chosen_pipe(values), _site(values), values.set)
    # ISO 9906 is a standard for rotodynamic pumps.
    grade = None if isinstance(case.pump, DisplacementPump) else GRADES.get(values.grade)
    return Answer(
        given_verdict=verdict(case, grade, reader),
        figures=figures(case),
        steps=steps(case, values),
        tables=(table(case),),
        charts=(chart(case, grade),),
        warnings=_warnings(case, reader),
        links=_links(values, reader),
    )


def _site(values):
    return Site(
        values.flow,
        values.climb,
        values.length * (1 + values.extra),
        values.wanted,
        values.lift,
        values.suction,
        values.water,
        values.altitude,
        values.motor,
        values.controller,
    )


# Warnings and links -------------------------------------------------------------


def _warnings(case, reader):
    found = []
    if case.enough and case.state(case.site.flow).speed > 0:
        found += _curve_warnings(case, case.state(case.site.flow), reader)
    if case.site.npsh_available <= 0:
        found.append(
            Warning(
                "stop",
                "No pump can lift water from so far down: it boils in the suction pipe first.",
            )
        )
    found += _standing_warnings(case, reader)
    if case.pump.best is not None and not isinstance(case.pump, DisplacementPump):
        least = least_flow(case.pump.best.flow)
        found.append(
            Warning(
                "note",
                f"Below about {reader.both(least, 'flow')} a small centrifugal pump churns and "
                "warms its water; "
                "the controller should stop it there (common practice; the maker's figure goes "
                "first).",
            )
        )
    return tuple(found)


def _standing_warnings(case, reader):
    """What happens with every tap shut."""
    found = []
    most = case.site.weight * (case.pump.shut_off_head - case.site.lift)
    rating = pipes.rating_at(case.pipe, case.site.temperature) if case.pipe.rating_pa else None
    if rating is not None and most > rating:
        found.append(
            Warning(
                "stop",
                f"Against a shut line this pump can make {reader.both(most, 'pressure')}; the "
                "pipe is rated "
                f"{reader.both(rating, 'pressure')}. Fit a relief valve or a pipe of a higher "
                "class.",
            )
        )
    if case.held_head(0.0) > case.pump.shut_off_head:
        found.append(
            Warning(
                "stop",
                "The pump cannot reach this set pressure even with every tap shut: it would run "
                "on against a "
                "shut line and heat up. Set it lower.",
            )
        )
    if case.set_pressure > 0:
        restart = restart_head(case.set_pressure / case.site.weight) * case.site.weight
        found.append(
            Warning(
                "note",
                "Standby: with every tap shut the pump stops and a check valve holds the "
                "pressure; a controller "
                f"commonly starts it again near {reader.both(restart, 'pressure')} (common "
                "practice).",
            )
        )
    return found


def _curve_warnings(case, state, reader):
    found = []
    share = case.best_share(state.flow, state.speed)
    if share is not None and not isinstance(case.pump, DisplacementPump):
        low, high = PREFERRED
        at = reader.show(share, "percent", 2)
        if share > high:
            found.append(
                Warning(
                    "care",
                    f"It runs at {at} of its best flow, far out on its curve: noisy, thirsty, "
                    "hard on the seal. A larger pump would last longer.",
                )
            )
        elif share < low:
            found.append(
                Warning(
                    "note",
                    f"It runs at {at} of its best flow, left of the 70 to 120% makers prefer: "
                    "fine for short whiles, wasteful all day.",
                )
            )
    if case.npsh_required(state.flow, state.speed) is None:
        found.append(
            Warning(
                "note",
                "The table gives no NPSH here, so the suction side is not checked: use the sheet "
                "on suction lift.",
            )
        )
    if state.power is None:
        found.append(
            Warning(
                "note",
                "The table gives neither power nor efficiency here, so the power drawn is not "
                "known.",
            )
        )
    return found


def _links(values, reader):
    shown = {
        "flow": reader.typed(values.flow, "flow"),
        "length": reader.typed(values.length, "length"),
        "climb": reader.typed(values.climb, "length"),
    }
    lift = {"flow": shown["flow"], "lift": reader.typed(values.lift, "length")}
    return (
        Link("Every pipe size for this run", "pipe", shown),
        Link("Check the suction lift", "suction", lift),
        Link("Count the flow from showers, hoses and people", "demand", {}),
    )


SHEET = Sheet(
    "pump_match",
    "Pump and pipe together",
    FIELDS,
    solve,
    folded=(SUCTION, LOSSES),
    cautions=(
        "A pump run dry or against a shut valve overheats and can burst: fit dry-run and "
        "over-temperature protection.",
        "Switch off, lock off and let the pressure out before you open a pump or pipe.",
        "Wiring near water, batteries and inverters are for licensed hands and local codes.",
        "Wells and cisterns are confined spaces: do not climb in; bad air kills without warning.",
        "Parts that touch drinking water must be approved for it where you are.",
    ),
    sources=(
        "Affinity laws: Karassik, Pump Handbook; definitions as in ISO 17769-1.",
        "Tolerances: ISO 9906:2012 grades 1B, 2B and 3B, from memory.",
        "Preferred flow, 70 to 120% of the best: ANSI/HI 9.6.3, from memory.",
        "Friction: Darcy-Weisbach with Colebrook (1939).",
        "NPSH margin, least flow and restart pressure: common practice, no source.",
    ),
    page="pump-match/",
)
