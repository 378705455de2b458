"""The keep_up sheet's picture: its hillside, and the pressure before and after as water."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.network.parts import Device, Reducer
from calc.page.hill.draw import drawn
from calc.page.hill.scene import Cause, Column, Pipe, Scene, Source, Stop
from calc.sheets.keep_up.cause import between
from calc.sheets.keep_up.falls import tanks
from calc.sheets.keep_up.judge import beginnings, blamed
from calc.sheets.keep_up.options import pump_side
from calc.sheets.parts import pressures
from calc.site.supply import PUMP, SOURCE

if TYPE_CHECKING:
    from calc.page.shapes import Drawing
    from calc.sheets.keep_up.case import Case, Tap
    from calc.units import Reader

SHORT, VALVES = ("stop", "care"), ("reducer", "valve", "break")
KEY = "Heights are to scale. Columns: pressure before (dashed) and after; bars: needed."


def draw(case: Case, reader: Reader) -> Drawing:
    """The ``Drawing`` of a case."""
    return drawn(scene(case, reader), "site", "Pressure at every outlet", alt(case, reader), KEY)


def scene(case: Case, reader: Reader) -> Scene:
    """The ``Scene`` of a case."""
    causes = _causes(case, reader)
    network = case.after.network
    start = case.supply.start
    open_water = {level.name for level in case.built.levels} | {one.end for one in tanks(case)}
    stops = tuple(
        Stop(
            name,
            name,
            network.heights[name] - network.heights[start],
            name in open_water and name != start,
            causes.get(f"stop {name}"),
        )
        for name in case.built.shown
        if name in network.heights
    )
    source = case.supply.pumping
    reduced = any(isinstance(link, Reducer) for link in network.links)
    alone = source is None and not reduced and len(case.built.levels) == 1
    return Scene(
        start,
        _open_water(case, causes, reader) if source is None else _pump(case, causes, reader),
        stops,
        tuple(_pipes(case, causes)),
        tuple(_column(case, tap, reader) for tap in case.taps),
        reader.unit("pressure").symbol,
        0.0 if alone else None,
    )


def _pump(case: Case, causes: dict[str, Cause], reader: Reader) -> Source:
    source = pump_side(case.supply)
    return Source(
        level_m=-source.lift_m,
        bore_m=source.suction_pipe.inside_m,
        water=("water", _level(source.lift_m, reader)),
        pump=("pump", reader.show(case.after.pressure(PUMP), "pressure", 2)),
        water_cause=causes.get("suction"),
        pump_cause=causes.get("pump"),
    )


def _open_water(case: Case, causes: dict[str, Cause], reader: Reader) -> Source:
    taken = reader.show(max(0.0, case.after.supplied[SOURCE]), "flow", 2)
    return Source("tank", pump=("source", taken), pump_cause=causes.get("pump"))


def _level(lift_m: float, reader: Reader) -> str:
    if abs(lift_m) < 0.05:
        return "level with it"
    return f"{reader.show(abs(lift_m), 'length', 2)} {'down' if lift_m > 0 else 'up'}"


def _pipes(case: Case, causes: dict[str, Cause]) -> list[Pipe]:
    """The pipe sections between points that have names, each with what is at its end."""
    network, found = case.after.network, []
    ends = {link.start: link for link in network.links if isinstance(link, Device | Reducer)}
    for name, at in case.built.section_rows.items():
        run = network.run(name)
        device = ends.get(run.end)
        end = device.end if device else run.end
        if isinstance(device, Reducer) and device.vented:  # drawn as the tank it is
            device = None
        inside = causes.get(device.name) if device else None
        found.append(
            Pipe(
                f"pipe runs.{at}",
                run.start,
                end,
                run.pipe.inside_m,
                device is not None,
                causes.get(name) or inside,
                inside is not None,
            )
        )
    return found


# The outlets ----------------------------------------------------------------------------------


def _column(case: Case, tap: Tap, reader: Reader) -> Column:
    before, after = (max(0.0, one.pressure_pa) for one in (tap.before, tap.after))
    needed, unit = tap.after.wanted_pa, reader.unit("pressure")
    texts = [pressures.short(one, reader) for one in (before, after)]
    changed = tap.after.open and texts[0] != texts[1]
    texts[1] = pressures.told_apart(after, needed, tap.level, reader)
    words = pressures.words(tap.level, texts[1])
    said = "closed"
    if tap.after.open:
        needs = f"needs {pressures.short(needed, reader)}\u00a0{unit.symbol}"
        said = f"{needs}, {words[0] if words else 'enough'}"
    return Column(
        at=f"taps.{case.built.outlet_rows[tap.name]}",
        name=tap.name,
        stop=tap.node,
        before_m=before / case.weight if changed else None,
        after_m=after / case.weight,
        needs_m=(needed / case.weight,) if tap.after.open else (),
        level=pressures.LEVELS.get(tap.level, "good") if tap.after.open else "shut",
        before=texts[0],
        after=texts[1],
        words=words,
        change=_key(case, tap),
        said=said,
        opens=tap.row.after > tap.row.before,
        shown=f"{tap.name} opens" if tap.row.after > tap.row.before else "",
    )


def _key(case: Case, tap: Tap) -> str:
    """The form's key of an outlet."""
    if case.ask == "few":
        return {"Showers": "showers", "Sinks": "sinks", "Hoses": "hoses"}[tap.name]
    return f"taps.{case.built.outlet_rows[tap.name]}"


# Why it is weak -------------------------------------------------------------------------------


def _causes(case: Case, reader: Reader) -> dict[str, Cause]:
    """{where: the cause} that the main outlet gets too little: one place, or none."""
    main = case.main
    if main is None or main.level not in SHORT:
        return {}
    cause = case.cause
    value = reader.show(max(cause.value, 0.0), "pressure", 2)
    if cause.kind == "pipe":
        return {cause.row: Cause(f"{_thin(case, cause.row)} loses {value}")}
    if cause.kind == "suction":
        return {"suction": Cause(f"suction pipe loses {value}")}
    if cause.kind == "device":
        return {cause.row: Cause(f"filter loses {value}")}
    link = case.after.network.link(cause.row) if cause.kind in VALVES else None
    if isinstance(link, Reducer) and link.vented:
        small = cause.kind == "reducer"
        said = f"float valve loses {value}" if small else "too low"
        return {f"stop {link.end}": Cause(said)}
    if cause.kind in VALVES:
        return {cause.row: Cause("valve is set too low")}
    if case.supply.pumping is None and cause.kind in ("tank", "height"):
        return {"pump" if cause.row in (SOURCE, main.node) else f"stop {cause.row}": Cause(
            f"{SOURCE} is too low" if cause.row in (SOURCE, main.node) else "too low")}  # fmt: skip
    if cause.kind == "tank":
        return {f"stop {cause.row}": Cause("too low")}
    height = case.after.network.heights[main.node]
    if cause.kind == "pump" or height <= 0:
        short = "pump is too weak"
        if cause.kind == "pump" and cause.value > 0:
            short = f"pump is {value} short"
        if cause.kind == "set":
            short = "set pressure is too low"
        return {"pump": Cause(short)}
    used = reader.show(height * case.weight, "pressure", 2)
    climb = reader.show(height, "length", 2)
    return {f"stop {main.node}": Cause(f"climb of {climb} uses {used}", height)}


def _thin(case: Case, name: str) -> str:
    """The pipe as it is beside the others on the way: thin, or long."""
    run = case.after.network.run(name)
    others = [one.pipe.inside_m for one in case.sections_on_way if one.name != name]
    if others and run.pipe.inside_m < max(others) * (1 - 1e-6):
        return "thin pipe here"
    return "this pipe"


# For screen readers ---------------------------------------------------------------------------


def alt(case: Case, reader: Reader) -> str:
    """What the picture shows, in sentences."""
    heights = case.after.network.heights
    top = max(case.built.shown, key=lambda name: heights.get(name, 0.0), default=PUMP)
    told = ["The site as a hillside, with the pressure at every outlet."]
    if case.supply.pumping is None:
        told.append(_drop(case, reader))
    elif heights.get(top, 0.0) > 0:
        high = reader.show(heights[top], "length", 2)
        told.append(f"The highest point, {top}, is {high} above the pump.")
    weak = [tap for tap in case.running if tap.level == "stop"]
    if case.main is None:
        told.append("No outlet is open.")
    elif not weak:
        told.append("Every open outlet gets enough.")
    else:
        told.append(_weak(case, reader))
        others = [tap.name for tap in weak if tap is not case.main]
        if others:
            told.append(f"Also too weak: {', '.join(others)}.")
    return " ".join(told)


def _drop(case: Case, reader: Reader) -> str:
    heights = case.after.network.heights
    low = min(case.built.shown, key=lambda name: heights.get(name, 0.0))
    drop = reader.show(heights[SOURCE] - heights[low], "length", 2)
    if low == SOURCE:
        return "The source is the lowest point."
    return f"The lowest point, {low}, is {drop} below the water of the source."


def _weak(case: Case, reader: Reader) -> str:
    tap = case.main
    needs = reader.show(tap.after.wanted_pa, "pressure", 2)
    after = reader.show(max(0.0, tap.after.pressure_pa), "pressure", 2)
    why = next(iter(_causes(case, reader).items()), None)
    others = beginnings(case, tap)[0] if blamed(case, tap) else ""
    told = f"{others}{tap.name} is too weak: {after}, and it needs {needs}"
    if why is not None:
        where, cause = why
        place = f" ({between(where)})" if where in case.built.section_rows else ""
        told += f"; {cause.text.replace(' here', '')}{place}"
    return f"{told[0].upper()}{told[1:]}."
