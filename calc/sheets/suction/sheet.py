"""Suction lift: whether the pump can draw the water up, and what to change if not."""

from calc import suction
from calc.page.answer import Answer, Link, Verdict
from calc.page.fields import Choice, Count, Number, Sheet
from calc.sheets.parts.fields import altitude, water_temperature
from calc.sheets.parts.pipe_choice import chosen_pipe, pipe_fields
from calc.sheets.suction import case as suction_case
from calc.sheets.suction import show as suction_show

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
    Number(
        "length",
        "Length of suction pipe",
        "length",
        "7 m",
        "23 ft",
        0.1,
        500.0,
        help="From the foot valve to the pump, along the pipe.",
    ),
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
        help="How high it draws water with the pipe empty; also called self-priming lift.",
        when=("figure", ("lift",)),
    ),
    altitude(5000.0, "300 m", "1000 ft", FITTINGS),
    water_temperature(353.15, FITTINGS),
    Count("foot", "Foot valves with strainer", 1, 0, 3, group=FITTINGS),
    Count("elbow90", "90° elbows", 2, 0, 20, group=FITTINGS),
    Number(
        "strainer",
        "Lost in a strainer or filter at the pump",
        "head",
        "0.2 m",
        "0.5 ft",
        0.0,
        5.0,
        help="Clean, at your flow, from its data sheet. A dirty one loses several times as much.",
        group=FITTINGS,
    ),
    Number(
        "margin",
        "Margin kept in hand",
        "head",
        "0.6 m",
        "2 ft",
        0.0,
        5.0,
        help="NPSH beyond what the pump needs: for wear, warm days and a falling level.",
        group=FITTINGS,
    ),
)


def solve(values, reader):
    case = suction_case.read(values, chosen_pipe(values), reader)
    return Answer(
        given_verdict=_verdict(case, reader),
        figures=suction_show.figures(case),
        steps=suction_show.steps(case, values),
        tables=(suction_show.sizes(case),),
        charts=(suction_show.chart(case, values, reader),),
        warnings=suction_show.warnings(case, values, reader),
        links=(
            Link(
                "Now the pressure side: will it reach?",
                "reach",
                {"flow": reader.typed(case.flow, "flow")},
            ),
        ),
    )


def _verdict(case, reader):
    show = reader.both
    stands = f"it stands {show(case.lift, 'length')} up"
    if case.lift <= 0:
        stands = f"the water stands {show(-case.lift, 'length')} above it"
    allowed = f"may stand up to {show(case.allowed, 'length')} above the water"
    if case.allowed < 0:
        allowed = f"needs the water at least {show(-case.allowed, 'length')} above it"
    allowed = f"at {show(case.flow, 'flow')} the pump {allowed}"
    if case.flattens:
        return Verdict(
            "bad",
            f"No: lay-flat hose closes under suction. In a pipe that keeps its shape, {allowed}.",
        )
    if case.fits:
        return _fits(case, reader, f"{allowed}; {stands}")
    cure = suction_case.cures(case, reader)
    if case.lift > case.limit:
        most = show(case.limit, "head")
        return Verdict(
            "bad", f"No pump up there can: the air pushes water up {most} here at most. {cure}"
        )
    if case.available <= 0:
        return Verdict("bad", f"No: the water would boil before it arrives; {allowed}. {cure}")
    if case.available < case.needed:
        return Verdict("bad", f"No: {allowed}; {stands}. {cure}")
    return Verdict("tight", f"Only by using up the margin: {allowed}; {stands}. {cure}")


def _fits(case, reader, facts):
    if case.lift <= 0:
        return Verdict("good", f"Yes, the water flows in by itself: {facts}.")
    if case.lift <= suction.PRACTICAL_LIFT + 0.01:  # m; 4.6 m typed for 15 ft is still in
        return Verdict("good", f"Yes, the pump can draw it: {facts}.")
    usual = reader.show(suction.PRACTICAL_LIFT, "length", 2)
    return Verdict(
        "tight",
        f"By the sums it can: {facts}. But over about {usual} a worn valve or a small air leak "
        "is enough to stop it (common practice).",
    )


SHEET = Sheet(
    "suction",
    "Suction lift",
    FIELDS,
    solve,
    folded=(FITTINGS,),
    cautions=(
        "A well is a confined space: bad air kills without warning. Never climb in; call people "
        "who are trained and equipped.",
        "Cover the well, and keep surface water and animals out of drinking water.",
        "Electricity and water: have the pump wired by a licensed person to local codes.",
        "Lift a pump by its lug or rope, never by its cable; get help with heavy parts.",
    ),
    sources=(
        "Net positive suction head: ISO 17769-1:2012. Air pressure: ISO 2533:1975.",
        "Vapour pressure: IAPWS R7-97(2012). Density and viscosity: IAPWS SR6-08(2011).",
        "Friction: Darcy-Weisbach with Colebrook (1939). Fittings: Crane TP-410, from memory.",
        "Margin of 0.6 m (2 ft): after ANSI/HI 9.6.1, from memory. Lift of 15 ft: common practice.",
    ),
    page="suction-lift/",
)
