"""Air-charged pressure tank: drawdown, starts an hour, and what speed control does instead."""

from calc import water
from calc.errors import InputError
from calc.page.answer import Answer, Verdict
from calc.page.fields import Choice, Number, Sheet
from calc.sheets.parts.fields import altitude
from calc.sheets.parts.tank_sizes import gap_words, round_up
from calc.sheets.pressure_tank import show
from calc.sheets.pressure_tank.case import GAP, case
from calc.units import HOUR, number_text

MORE = "Air charge, starts and site"

FIELDS = (
    Choice(
        "control",
        "How the pump is controlled",
        (("switch", "Pressure switch: on and off"), ("speed", "Speed control: holds the pressure")),
        "switch",
    ),
    Number("cutin", "Pump starts at", "pressure", "2 bar", "30 psi", 0.1e5, 15e5),
    Number("cutout", "Pump stops at", "pressure", "3.5 bar", "50 psi", 0.1e5, 20e5,
           when=("control", ("switch",))),
    Number("set", "Pressure it holds", "pressure", "3.5 bar", "50 psi", 0.1e5, 20e5,
           help="It rests at this pressure and starts again at the one above.",
           when=("control", ("speed",))),
    Number("pump", "Flow of the pump", "flow", "18 L/min", "5 gpm", 1e-7, 0.05,
           when=("control", ("switch",))),
    Number("tank", "Tank, whole volume", "volume", "100 L", "26 gal", 1e-4, 10.0,
           help="The size on its label, not what it gives."),
    Number("draw", "Water drawn steadily", "flow", "7.5 L/min", "2 gpm", 0.0, 0.05,
           when=("control", ("switch",))),
    Number("precharge", "Air charge of the empty tank", "pressure", "", "", 0.0, 15e5,
           help="Empty: 0.14 bar (2 psi) below the starting pressure (common practice).",
           optional=True, group=MORE),
    Number("starts", "Most starts an hour", "per_hour", "20 per hour", "20 per hour", 1 / HOUR,
           300 / HOUR, help="From the motor's data sheet.", group=MORE),
    Number("leak", "Leaks and drips", "flow", "0.05 L/min", "0.013 gpm", 0.0, 0.01,
           help="A dripping tap loses about this.", when=("control", ("speed",)), group=MORE),
    altitude(5000.0, group=MORE),
)  # fmt: skip


def solve(values, reader):
    speed = values.control == "speed"
    high = values.set if speed else values.cutout
    if high <= values.cutin:
        raise InputError(
            "This must be above the pressure at which the pump starts "
            f"({reader.show(values.cutin, 'pressure')}).",
            name="set" if speed else "cutout",
        )
    charge = max(values.cutin - GAP, 0.0) if values.precharge is None else values.precharge
    if charge > values.cutin:
        raise InputError(
            "The air charge must not be above the pressure at which the pump starts "
            f"({reader.show(values.cutin, 'pressure')}): the tank would be empty before it does. "
            f"Usual: {reader.show(max(values.cutin - GAP, 0.0), 'pressure')}.",
            name="precharge",
        )
    found = case(values, charge, high, water.air_pressure(values.altitude), reader)
    build = _with_speed_control if speed else _with_switch
    return build(values, found, reader)


def _with_switch(values, found, reader):
    return Answer(
        given_verdict=_switch_verdict(values, found, reader),
        figures=show.switch_figures(values, found),
        steps=show.switch_steps(values, found),
        tables=(show.size_table(values, found, reader),),
        charts=(show.switch_chart(values, found),),
        warnings=show.warnings(values, found, reader),
        links=show.links(values, reader),
    )


def _switch_verdict(values, found, reader):
    worst = number_text(found.worst * HOUR)
    facts = (
        f"It gives {reader.both(found.gives, 'volume')} between starts: at worst, with half the "
        f"pump's flow drawn, {worst} starts an hour"
    )
    allowed = f"{values.starts * HOUR:.3g}"
    if found.worst <= values.starts * (1 + 1e-9):
        return Verdict("good", f"{facts}, where {allowed} are allowed.", "Large enough")
    return Verdict(
        "tight" if found.worst <= 1.5 * values.starts else "bad",
        f"{facts}, where {allowed} are allowed. A tank of {reader.both(found.asked, 'volume')} "
        "would do, or a pump with speed control.",
        "Too small",
    )


def _with_speed_control(values, found, reader):
    return Answer(
        given_verdict=_speed_verdict(values, found, reader),
        figures=show.speed_figures(found),
        steps=show.speed_steps(values, found),
        tables=(show.leak_table(values, found, reader),),
        charts=(show.leak_chart(values, found),) if values.leak > 0 else (),
        warnings=show.warnings(values, found, reader),
        links=show.links(values, reader),
    )


def _speed_verdict(values, found, reader):
    facts = (
        "Speed control matches the draw while water runs, so the pump does not cycle; a check "
        "valve holds the pressure while it rests (common practice). This tank gives "
        f"{reader.both(found.gives, 'volume')} before a start"
    )
    least = max(found.asked, round_up(found.cup, "volume", reader))
    least = f" A tank of {reader.both(least, 'volume')} would do." if least < values.tank else ""
    if values.leak <= 0:
        sentence = f"{facts}; with no leak nothing else starts the pump.{least}"
        return Verdict("good", sentence, "Enough")
    rate = found.leaks
    if rate <= values.starts * (1 + 1e-9):
        sentence = f"{facts}; leaks alone start the pump every {gap_words(1 / rate)}.{least}"
        return Verdict("good", sentence, "Enough")
    return Verdict(
        "tight",
        f"{facts}, but leaks alone start it {number_text(rate * HOUR)} times an hour, where "
        f"{values.starts * HOUR:.3g} are allowed. Mend the leak, or use a tank of "
        f"{reader.both(found.asked, 'volume')}.",
        "It starts too often",
    )


SHEET = Sheet(
    "pressure_tank",
    "Pressure tank",
    FIELDS,
    solve,
    folded=(MORE,),
    cautions=(
        "A pressure tank stores energy: shut off the pump and drain it before you loosen anything.",
        "Fit a relief valve set no higher than the weakest rating; never charge past the label.",
        "Pressure vessels and their inspection are under local law. Wiring is for licensed hands.",
    ),
    sources=(
        "Boyle's law with absolute pressures; air pressure by altitude: ISO 2533:1975.",
        "Air charge 2 psi below the starting pressure, a minute's run: common practice, no source.",
    ),
    page="pressure-tank/",
)
