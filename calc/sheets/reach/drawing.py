"""The picture of the sheet that asks if the water reaches: the way in section."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import practice
from calc.page.hill.draw import drawn
from calc.page.hill.scene import Cause, Column, Pipe, Scene, Source, Stop
from calc.sheets.parts import pressures

if TYPE_CHECKING:
    from calc.page.shapes import Drawing
    from calc.pipe.line import Point, Section
    from calc.sheets.reach.case import Case
    from calc.units import Reader

MOST = 5  # sections, each with its pressure at its end; our choice
HIGHER = 0.5  # m, that a dip or a crest must be beyond the ends to be drawn; our choice
START, OUTLET = "start", "outlet"


def draw(case: Case, reader: Reader) -> Drawing:
    """The ``Drawing`` of a case."""
    flow = reader.show(case.need.flow_m3s, "flow", 2)
    key = (
        "Heights are to scale. Water is as high as its pressure lifts it: dashed with no flow, "
        f"full with {flow}. The bar is what you need."
    )
    return drawn(scene(case, reader), "way", "Pressure on the way up", alt(case, reader), key)


def scene(case: Case, reader: Reader) -> Scene:
    """The ``Scene`` of a case."""
    points = case.line.points(case.need.flow_m3s)
    causes = _causes(case, reader)
    stops = [Stop(START, "", 0.0)]
    stops += [
        Stop(_name(at, points), "", point.height_m, cause=causes.get(_name(at, points)))
        for at, point in enumerate(points)
        if at
    ]
    pipes = [
        _pipe(at, section, points, causes, reader) for at, section in enumerate(case.line.sections)
    ]
    _put_in(case, stops, pipes)
    start = reader.show(case.line.start_pa, "pressure", 2)
    source = Source(
        "pump" if case.pumped else "tank",
        pump=("pump", start) if case.pumped else ("open tank",),
        pump_cause=causes.get("pump"),
    )
    columns = tuple(_columns(case, points, reader))
    return Scene(START, source, tuple(stops), tuple(pipes), columns, reader.unit("pressure").symbol)


def _name(at: int, points: tuple[Point, ...]) -> str:
    if at == 0:
        return START
    return OUTLET if at == len(points) - 1 else f"section {at}"


def _pipe(
    at: int, section: Section, points: tuple[Point, ...], causes: dict[str, Cause], reader: Reader
) -> Pipe:
    device = section.device is not None or section.reducer is not None
    name = f"pipe line.{at}"
    cause, inside = causes.get(name), causes.get(f"device line.{at}")
    label = (
        ""
        if cause or inside or len(points) - 1 > MOST
        else reader.show(section.length_m, "length", 2)
    )
    ends = _name(at, points), _name(at + 1, points)
    bore = section.pipe.inside_m
    return Pipe(name, *ends, bore, device, cause or inside, inside is not None, label)


def _put_in(case: Case, stops: list[Stop], pipes: list[Pipe]) -> None:
    """A dip and a crest on the way, before the outlet: where they are is not known."""
    heights = [stop.height_m for stop in stops]
    found = []
    low, high = case.line.lowest_m, case.line.highest_m
    if low is not None and low < min(heights) - HIGHER:
        found.append(Stop("dip", "lowest point", low))
    if high is not None and high > max(heights) + HIGHER:
        found.append(Stop("crest", "highest point", high))
    if not found:
        return
    last = pipes.pop()
    chain = [last.start, *(stop.key for stop in found), last.end]
    stops += found
    for at, (start, end) in enumerate(zip(chain, chain[1:], strict=False)):
        final = at == len(found)
        pipes.append(
            Pipe(
                last.at if final else f"{last.at} {at + 1}", start, end, last.bore_m,
                last.device and final, last.cause if final else None, last.in_device,
                last.label if final else "",
            )
        )  # fmt: skip


def _columns(case: Case, points: tuple[Point, ...], reader: Reader) -> list[Column]:
    """The pressure at the outlet, and at the end of every section where they are few."""
    still = case.line.points(0.0)
    found = []
    for at, (running, static) in enumerate(zip(points, still, strict=True)):
        last = at == len(points) - 1
        if at and (last or len(points) - 1 <= MOST):
            found.append(_column(case, at, running, static, last, reader))
    return found


def _column(
    case: Case, at: int, running: Point, static: Point, last: bool, reader: Reader
) -> Column:
    need, weight = case.need, case.line.weight
    before, after = (max(0.0, point.pressure_pa) for point in (static, running))
    level = practice.enough(after, need.works_pa, need.comfortable_pa) if last else ""
    texts = [pressures.short(before, reader), pressures.short(after, reader)]
    changed = texts[0] != texts[1]
    texts[1] = pressures.told_apart(after, need.works_pa, level, reader)
    unit = reader.unit("pressure").symbol
    said = ""
    words = pressures.words(level, texts[1])
    if last:
        said = f"needs {pressures.short(need.works_pa, reader)}\u00a0{unit}"
        said += f", {words[0] if words else 'enough'}"
    return Column(
        at=f"line.{at}",
        name="outlet" if last else "",
        stop=OUTLET if last else f"section {at}",
        before_m=before / weight if changed else None,
        after_m=after / weight,
        needs_m=(need.works_pa / weight,) if last and need.works_pa > 0 else (),
        level=pressures.LEVELS.get(level, "good"),
        before=texts[0],
        after=texts[1],
        words=words,
        change=("line" if case.counted else "climb") if last else "",
        said=said,
    )


# Why it is weak -------------------------------------------------------------------------------


def _causes(case: Case, reader: Reader) -> dict[str, Cause]:
    """{where: why the outlet gets too little}: one place, or none."""
    line, need = case.line, case.need
    if case.asks_too_much:
        most = reader.show(case.most or 0.0, "flow", 2)
        return {"pump": Cause(f"pump gives {most} at most")}
    left = line.left(need.flow_m3s)
    if practice.enough(left, need.works_pa, need.comfortable_pa) not in ("stop", "care"):
        return {}
    if line.static <= need.sure_pa:
        return _too_high(case, reader)
    at = line.worst(need.flow_m3s)
    section = line.sections[at]
    lost = line.weight * line.loss_in(section, need.flow_m3s)
    device = line.weight * line.device_loss_in(section, need.flow_m3s)
    if device > lost / 2:
        return {f"device line.{at}": Cause(f"filter loses {reader.show(device, 'pressure', 2)}")}
    total = line.weight * line.loss(need.flow_m3s)
    if lost < total / 2:
        every = f"pipes lose {reader.show(total, 'pressure', 2)} together"
        return {f"pipe line.{at}": Cause(every)}
    thin = any(one.pipe.inside_m > section.pipe.inside_m * (1 + 1e-6) for one in line.sections)
    pipe = "thin pipe here" if thin else "this pipe"
    return {f"pipe line.{at}": Cause(f"{pipe} loses {reader.show(lost, 'pressure', 2)}")}


def _too_high(case: Case, reader: Reader) -> dict[str, Cause]:
    """Where still water leaves too little."""
    line = case.line
    climb = line.weight * line.rise_m
    reducers = [at for at, one in enumerate(line.sections) if one.reducer is not None]
    if reducers and line.start_pa - climb > case.need.sure_pa:
        vented = line.sections[reducers[-1]].vented
        low = "break tank is too low" if vented else "valve is set too low"
        return {f"device line.{reducers[-1]}": Cause(low)}
    if line.rise_m > 0:
        high, used = reader.show(line.rise_m, "length", 2), reader.show(climb, "pressure", 2)
        return {OUTLET: Cause(f"climb of {high} uses {used}", line.rise_m)}
    low = "set pressure is too low" if case.pumped else "open tank is too low"
    return {"pump": Cause(low)}


def alt(case: Case, reader: Reader) -> str:
    """What the picture shows, in sentences."""
    line, need = case.line, case.need
    rise = line.rise_m
    way = f"{reader.show(abs(rise), 'length', 2)} {'above' if rise >= 0 else 'below'} the start"
    still, left = (max(0.0, one) for one in (line.static, line.left(need.flow_m3s)))
    static, running = (reader.show(one, "pressure", 2) for one in (still, left))
    told = [f"The pipe in section, up to an outlet {way}."]
    told.append(f"There the pressure is {static} with no flow and {running} with water flowing.")
    works = reader.show(need.works_pa, "pressure", 2)
    why = next(iter(_causes(case, reader).values()), None)
    if why is None:
        told.append(f"It needs {works}, and gets enough.")
    else:
        told.append(f"It needs {works}. Marked: {why.text.replace(' here', '')}.")
    return " ".join(told)
