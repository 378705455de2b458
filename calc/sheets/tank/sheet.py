"""Storage tank: balance over the day, days to bridge, and the pressure a tank up the hill gives."""

import math

from calc import well
from calc.page.answer import Answer, Verdict
from calc.page.fields import Choice, Number, Sheet
from calc.sheets.parts.tank_sizes import at_least, round_up, span
from calc.sheets.tank import show as tank_show
from calc.sheets.tank.case import case
from calc.units import DAY

WELL = "A slow well"
TANK = "The tank itself"
HILL = "A tank up the hill"

FIELDS = (
    Number("use", "Water used a day", "daily", "930 L/day", "245 gal/day", 1e-9, 1e-2),
    Choice(
        "pattern",
        "When it is used",
        (
            ("home", "Home: morning and evening"),
            ("dawn", "Drip lines at dawn"),
            ("day", "Through the day: stock, work"),
            ("even", "Evenly, day and night"),
        ),
        "home",
    ),
    Number(
        "gives",
        "What pump or source gives",
        "flow",
        "6 L/min",
        "1.5 gpm",
        0.0,
        1.0,
        help="A well that yields less: say so below, under “A slow well”.",
    ),
    Number(
        "hours",
        "Hours it runs a day",
        "number",
        "6",
        "6",
        0.5,
        24.0,
        help="With the sun: about 5 to 7 hours of full power on a fair day (common practice).",
    ),
    Number(
        "bridge",
        "Days to bridge without it",
        "days",
        "3 days",
        "3 days",
        0.0,
        60 * DAY,
        help="Cloudy days, or days until a repair.",
    ),
    Number(
        "own",
        "The tank you have in mind",
        "volume",
        "",
        "",
        0.01,
        1e4,
        help="Leave empty to be told the size.",
        optional=True,
    ),
    Number(
        "well",
        "What flows back into the well",
        "flow",
        "",
        "",
        0.0,
        1.0,
        help="Leave empty where it yields as much as the pump takes.",
        optional=True,
        group=WELL,
    ),
    Number(
        "stored",
        "Water standing in the well",
        "volume",
        "0 L",
        "0 gal",
        0.0,
        200.0,
        help="Above the lowest level allowed. It gathers again while the pump rests.",
        group=WELL,
    ),
    Number(
        "usable",
        "Share of the tank that can be used",
        "percent",
        "90 %",
        "90 %",
        0.3,
        1.0,
        group=TANK,
    ),
    Number(
        "height",
        "Tank's water above the tap",
        "length",
        "",
        "",
        0.0,
        300.0,
        help="Its water when nearly empty. Leave empty where a pump draws from the tank.",
        optional=True,
        group=HILL,
    ),
    Number(
        "lost", "Head lost on the way to the tap", "head", "1.5 m", "5 ft", 0.0, 300.0, group=HILL
    ),
    Number(
        "wanted",
        "Pressure wanted at the tap",
        "pressure",
        "2.1 bar",
        "30 psi",
        0.0,
        10e5,
        group=HILL,
    ),
)


def solve(values, reader):
    found = case(values, reader)
    return Answer(
        given_verdict=_verdict(values, found, reader),
        figures=tank_show.figures(values, found),
        steps=tank_show.steps(values, found),
        tables=() if found.short else tank_show.tables(values, found, reader),
        charts=tank_show.charts(values, found, reader),
        warnings=tank_show.warnings(values, found, reader),
        links=tank_show.links(values, found, reader),
    )


def _verdict(values, found, reader):
    if found.short:
        return _too_little(values, found, reader)
    size = _own if values.own else _size
    return _with_height(size(values, found, reader), values, found, reader)


def _with_height(verdict, values, found, reader):
    """The verdict with what a raised tank gives at the tap by its height alone."""
    if found.raised <= 0:
        return verdict
    gets = reader.both(max(found.gravity, 0.0), "pressure")
    if found.gravity >= values.wanted * (1 - 1e-9):
        sentence = f"{verdict.sentence} By its height the tap gets {gets}."
        return Verdict(verdict.level, sentence, verdict.word)
    only = f"the tap gets only {gets}" if found.gravity > 0 else "nothing runs at the tap"
    sentence = f"{verdict.sentence} By its height {only}."
    if verdict.level == "good":
        return Verdict("tight", sentence, "Low")
    return Verdict(verdict.level, sentence, verdict.word)


def _own(values, found, reader):
    asked = reader.both(found.asked, "volume")
    bridged = (values.own * values.usable - found.balance.swing) / found.use * DAY
    if bridged < -1e-9 * DAY:
        return Verdict("bad", f"It runs dry on an ordinary day. {asked} is needed.", "Too small")
    if values.own < found.volume * (1 - 1e-9):
        return Verdict(
            "tight",
            f"It evens out the day but bridges {span(bridged)}, not {span(values.bridge)}. "
            f"{asked} would.",
            "Short of what you want",
        )
    enough = f" {asked} would do." if found.asked < values.own * (1 - 1e-9) else ""
    return Verdict(
        "good",
        f"It evens out the day and bridges {span(bridged)} without the source.{enough}",
        "Large enough",
    )


def _size(values, found, reader):
    if found.volume < 1e-9:
        return Verdict(
            "good",
            "The source keeps up with the use in every hour of the day. A tank would serve only "
            "draws faster than the source gives, or days without it.",
            "No tank is needed for the day",
        )
    asked = reader.both(found.asked, "volume")
    if values.bridge <= 0:
        return Verdict("good", f"A tank of {asked} evens out the day.", "Size")
    if found.balance.swing < 1e-9:
        return Verdict("good", f"A tank of {asked} bridges {span(values.bridge)}.", "Size")
    return Verdict(
        "good", f"A tank of {asked} evens out the day and bridges {span(values.bridge)}.", "Size"
    )


def _too_little(values, found, reader):
    show = reader.both
    if values.well is not None and found.supply < found.pumped * (1 - 1e-9):
        return _slow_well(values, found, reader)
    flow = show(round_up(found.use / (values.hours * 3600), "flow", reader), "flow")
    if values.gives <= 0:
        return Verdict(
            "bad",
            f"No tank helps for long: nothing comes in. A source of {flow} for "
            f"{values.hours:g} hours a day would keep up.",
            "There is no source",
        )
    hours = found.use / (values.gives * 3600)
    longer = f"Let it run {at_least(hours)} hours a day, find" if hours <= 24 else "Find"
    return Verdict(
        "bad",
        f"No tank helps: {show(found.use, 'volume')} a day is used and only "
        f"{show(found.supply, 'volume')} comes in. {longer} a source of {flow}, or use "
        f"no more than {show(found.supply, 'volume')} a day.",
        "The source is too small",
    )


def _slow_well(values, found, reader):
    """Less comes in than is used, and the well is what holds it back."""
    show = reader.both
    start = (
        f"No tank helps: {show(found.use, 'volume')} a day is used and the well lets "
        f"{show(found.supply, 'volume')} be pumped."
    )
    hours = well.hours_for(found.use, values.well, values.gives, values.stored)
    if math.isfinite(hours):
        end = f"Pumped for {at_least(hours)} hours a day it would do."
    else:
        most = round_up(found.use / DAY, "flow", reader)
        both = ((values.well, "the well"), (values.gives, "the pump"))
        weak = " and ".join(name for flow, name in both if flow < found.use / DAY)
        end = (
            f"Pumping longer is no cure: {weak} would have to give {show(most, 'flow')}, day and "
            "night. Use less, or find a second source."
        )
    return Verdict("bad", f"{start} {end}", "The well is too slow")


SHEET = Sheet(
    "tank",
    "Storage tank",
    FIELDS,
    solve,
    folded=(WELL, TANK, HILL),
    cautions=(
        "A tank is a confined space: never enter one alone or untested; call trained people.",
        "Water for people: a closed, dark, clean tank approved for it, its vents screened.",
        "Keep children out: lock hatches and lids. An open cistern drowns.",
        "A full tank is heavy; stands, roofs and slopes need a structural design and permits.",
    ),
    sources=(
        "Mass curve: W. Rippl, Proceedings of the Institution of Civil Engineers 71 (1883).",
        "With the overflow counted: H. A. Thomas and R. P. Burden (1963), from memory.",
        "Patterns of use over the day and hours of sun: common practice, no source.",
    ),
    page="storage/",
)
