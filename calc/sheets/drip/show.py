"""Figures, working and tables of the drip sheet."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from calc import practice
from calc.drip import lateral, manifold
from calc.page.answer import Column, Figure, Step, Table, Value
from calc.sheets.drip.case import MOST_DRIPPERS
from calc.sheets.drip.climate import NAMES
from calc.sheets.drip.judge import share
from calc.units import CELSIUS, HOUR, number_text

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.answer import Cells
    from calc.sheets.drip.case import Case
    from calc.units import Reader

ALONG = 8  # drippers of a line that its table shows; our choice


def figures(case: Case, reader: Reader) -> tuple[Figure, ...]:
    """Water, hours, zones, how even it is."""
    line = case.line
    whole = reader.show(case.whole_flow, "flow")
    rows = [
        Figure("Hours of watering a day", case.time / HOUR, "number", main=True,
               note=f"of {number_text(case.hours / HOUR)} you have"),
        Figure("Water needed a day", case.water, "volume",
               note=f"{reader.show(case.depth, 'rain')} over the area"),
        Figure("Zones, one after another", case.zones, "number", digits=1,
               note=f"the largest takes {reader.show(case.zone_flow, 'flow')}"),
        Figure("Each zone runs a day", case.zone_time, "minutes"),
        Figure("Drippers, all lines", round(case.drippers), "number", digits=1,
               note=f"in {case.count} lines, {whole} all at once"),
        *_varies(case, reader),
        Figure("Emission uniformity", case.emission, "percent", digits=2,
               note=f"{share(practice.EMISSION[0])} and more is good"),
    ]  # fmt: skip
    needed = line.needs()
    if needed is not None:
        for_ = "for the weakest dripper" if line.dripper.compensating else "for the nominal flow"
        rows.append(Figure("Pressure needed where it begins", needed, "pressure", note=for_))
    return tuple(rows)


def _varies(case: Case, reader: Reader) -> Iterator[Figure]:
    """Along a line, over a zone, and where the weakest dripper is."""
    good = f"up to {share(practice.FLOW_VARIES[0])} is good"
    yield Figure("Flow varies along a line", case.solved.variation, "percent", digits=2, note=good)
    if case.zone is None:
        return
    yield Figure("Flow varies over a zone", case.zone.variation, "percent", digits=2, note=good)
    line, outlet = case.zone.worst
    along = reader.show((outlet + 1) * case.line.spacing, "length")
    yield Figure("Least pressure at a dripper", case.least, "pressure",
                 note=f"line {line + 1} of {case.in_zone}, {along} along it")  # fmt: skip
    yield Figure("Maximum pressure at a dripper", case.most, "pressure")
    yield Figure("Manifold of the largest zone", case.in_zone * case.rows, "length",
                 note=f"{case.in_zone} lines")  # fmt: skip


# Working -------------------------------------------------------------------------------------


def steps(case: Case, reader: Reader) -> tuple[Step, ...]:
    """From the climate to the hours, then along a line."""
    return (
        *_reference(case),
        *_water(case),
        *_line(case, reader),
        *_zone(case, reader),
        *_hours(case),
        *_even(case),
    )


def _reference(case: Case) -> Iterator[Step]:
    climate = case.climate
    if climate.way in ("known", "months"):
        return
    title, result = "Reference evapotranspiration a day", Value(climate.reference, "rain")
    mean = (climate.warmest + climate.coolest) / 2 - CELSIUS
    if climate.way == "full":
        yield Step(
            title,
            note="By Penman and Monteith: grass that lacks no water, from temperature, humidity, "
            "wind and sun. The heat that goes into the ground is left out.",
            result=result,
            source="FAO-56 equation 6",
        )
        return
    yield Step(
        title,
        "ET_0 = 0.0023 * (T + 17.8) * sqrt(Delta_T) * 0.408 * R_a / 10**9",
        {
            "T": Value(mean, "number"),
            "Delta_T": Value(climate.warmest - climate.coolest, "number"),
            "R_a": Value(climate.outside, "irradiation"),
        },
        result,
        note="By Hargreaves. T is the mean of the two temperatures in °C, R_a the sun above the "
        "air at this latitude in the middle of the month, in J/m². A place by the sea needs less, "
        "a windy one more.",
        source="FAO-56 equation 52",
    )


def _water(case: Case) -> Iterator[Step]:
    depth = Value(case.depth, "rain")
    yield Step(
        "Water to be given a day, as a depth",
        "d = ET_0 * K_c / e",
        {
            "ET_0": Value(case.climate.reference, "rain"),
            "K_c": Value(case.need, "number"),
            "e": Value(case.reaches, "percent"),
        },
        depth,
        note="K_c is the crop coefficient in mid-season, when plants cover the ground. Young "
        "plants need less. Rain is not counted.",
        source="FAO-56 equation 58 and table 12",
    )
    yield Step(
        "Water to be given a day",
        "V = A * d",
        {"A": Value(case.area, "area"), "d": depth},
        Value(case.water, "volume"),
    )


def _line(case: Case, reader: Reader) -> Iterator[Step]:
    line, found = case.line, case.solved
    whole = line.loss(found.flow, line.length)
    share_lost = lateral.christiansen(line.outlets, lateral.BLASIUS)
    weakest = "" if case.zone is None else ", the weakest of its zone"
    yield Step(
        f"Flow of one drip line{weakest}",
        note=f"Worked out dripper by dripper from the far end, {line.outlets} of them. At each the "
        "flow grows by what the dripper gives at its pressure. Friction and slope to the next are "
        "added, until the start has its pressure.",
        result=Value(found.flow, "flow"),
        source="Continuity and energy; friction of smooth pipe: Blasius (1913)",
    )
    yield Step(
        "Share of the friction that a line of equal drippers loses",
        "F = 1 / (m + 1) + 1 / (2 * N) + sqrt(m - 1) / (6 * N**2)",
        {"m": Value(lateral.BLASIUS, "number"), "N": Value(line.outlets, "number", 1)},
        Value(share_lost, "number"),
        source="J. E. Christiansen (1942)",
    )
    yield Step(
        "Friction along the line, as a check",
        "h_f = F * h",
        {"F": Value(share_lost, "number"), "h": Value(whole, "head")},
        Value(share_lost * whole, "head"),
        note="h is what the line would lose with all its flow to its end. Dripper by dripper it is "
        f"{reader.show(_friction(case), 'head')}.",
    )


def _friction(case: Case) -> float:
    """Head lost along the line by its own balance, m."""
    left, lost = case.solved.flow, 0.0
    for flow in case.solved.flows:
        lost += case.line.loss(max(0.0, left), case.line.spacing)
        left -= flow
    return lost


def _zone(case: Case, reader: Reader) -> Iterator[Step]:
    """The manifold and its lines."""
    if case.zone is None:
        return
    off = case.zone.error
    said = "less than a millionth" if off < 1e-6 else f"{100 * off:.1g}\u00a0%"
    yield Step(
        "Flow of a zone on its manifold",
        note="What a line takes at each pressure is worked out dripper by dripper for about "
        f"{manifold.NODES} pressures, and a curve laid through. The manifold is then worked out "
        f"line by line from its far end, {case.in_zone} of them. Where lines were worked out "
        f"again, the curve is off by {said}.",
        result=Value(case.zone.flow, "flow"),
        source="Continuity and energy; friction: Darcy and Weisbach, Colebrook (1939)",
    )
    yield Step(
        "Flow of a line, the mean of its zone",
        "q_l = q_z / n",
        {"q_z": Value(case.zone.flow, "flow"), "n": Value(case.in_zone, "number", 1)},
        Value(case.line_flow, "flow"),
    )


def _hours(case: Case) -> Iterator[Step]:
    flow = Value(case.line_flow, "flow")
    rows, long = Value(case.rows, "length"), Value(case.laid, "length")
    yield Step(
        "Lines in the area",
        "n = A / (r * L)",
        {"A": Value(case.area, "area"), "r": rows, "L": long},
        Value(case.lines, "number"),
        note="L is the length of one line. A part of a line is laid as a shorter one.",
    )
    if case.asked is None and case.per_zone > 0:
        yield _fed(case, flow)
    time = Value(case.zone_time, "minutes")
    yield Step(
        "Time that a zone runs a day",
        "t = d * r * L / q_l",
        {"d": Value(case.depth, "rain"), "r": rows, "L": long, "q_l": flow},
        time,
        note="What the plants along one line need, over what the line gives.",
    )
    yield Step(
        "Hours of watering a day",
        "t_d = Z * t / 3600",
        {"Z": Value(case.zones, "number", 1), "t": time},
        Value(case.time / HOUR, "number"),
        note="3600 s in an hour.",
    )


def _fed(case: Case, flow: Value) -> Step:
    """Zones that the source can feed."""
    title, zones = "Zones that the source can feed", Value(case.zones, "number", 1)
    count = Value(case.count, "number", 1)
    if case.zone is not None:
        return Step(
            title,
            "Z = ceil(n_l / n_s)",
            {"n_l": count, "n_s": Value(case.per_zone, "number", 1)},
            zones,
            note="n_s are the lines on one manifold, of those there are, that the source can "
            "feed at once; found by trial.",
        )
    return Step(
        title,
        "Z = ceil(n_l / floor(q_s / q_l))",
        {"n_l": count, "q_s": Value(case.flow * (1 + 1e-9), "flow"), "q_l": flow},
        zones,
        note="Whole lines only: so many as the source's flow allows run at once.",
    )


def _even(case: Case) -> Iterator[Step]:
    flows, zone = case.solved.flows, case.zone
    strong = max(flows) if zone is None else max(zone.strongest.flows)
    least, most = Value(min(flows), "dripper"), Value(strong, "dripper")
    mean = Value(case.line_flow / len(flows), "dripper")
    yield Step(
        f"How much the flow varies{'' if zone is None else ' over a zone'}",
        "q_v = (q_max - q_min) / q_max",
        {"q_max": most, "q_min": least},
        Value((case.solved if zone is None else zone).variation, "percent"),
        source="Wu and Gitlin (1974), from memory",
    )
    yield Step(
        "Emission uniformity",
        "E_u = max(0, 1 - 1.27 * v) * q_min / q_m",
        {"v": Value(case.line.made, "percent"), "q_min": least, "q_m": mean},
        Value(case.emission, "percent"),
        note="v is how new drippers differ from one another, q_m their mean flow.",
        source="Keller and Karmeli (1974); ASAE EP405, both from memory",
    )


# Tables --------------------------------------------------------------------------------------


def tables(case: Case, reader: Reader) -> tuple[Table, ...]:
    """By month, where that is known; along one line; how long a line may be."""
    return *_months(case), _along(case), _longest(case), *_manifold(case)


def _months(case: Case) -> Iterator[Table]:
    """How long each zone and all of them run in each month."""
    if not case.climate.months:
        return
    rows: list[Cells] = []
    for key, reference in case.climate.months:
        time = case.zone_time_of(reference)
        water = case.water * reference / case.climate.reference
        rows.append((NAMES[key], time, case.zones * time / HOUR, water))
    most = [at for at, (_, one) in enumerate(case.climate.months) if one == case.climate.reference]
    columns = (
        Column("Month"),
        Column("Each zone runs a day", "minutes"),
        Column("All zones, hours a day", "number"),
        Column("Water a day", "volume"),
    )
    note = "With the crop in mid-season throughout and no rain: young plants need less."
    yield Table("Month by month", columns, tuple(rows), tuple(most[:1]), (), note)


def shown(outlets: int) -> list[int]:
    """Indices of drippers that stand for a line: the first, the last, some between."""
    steps_of = max(1, min(ALONG, outlets) - 1)
    return sorted({round(at * (outlets - 1) / steps_of) for at in range(steps_of + 1)})


def _along(case: Case) -> Table:
    found, places = case.solved, shown(case.line.outlets)
    rows: list[Cells] = [
        ((at + 1) * case.line.spacing, found.pressures[at], found.flows[at]) for at in places
    ]
    columns = (
        Column("Along the line", "length"),
        Column("Pressure", "pressure"),
        Column("Dripper gives", "dripper"),
    )
    weakest = "" if case.zone is None else ", the weakest of its zone"
    return Table(f"Along one drip line{weakest}", columns, tuple(rows))


def _manifold(case: Case) -> Iterator[Table]:
    """Some lines of the largest zone, from one end of the manifold."""
    if case.zone is None:
        return
    weak, rows = case.zone.weak, []
    places = sorted({*shown(case.in_zone), weak})
    for at in places:
        along = (at + 0.5) * case.rows
        rows.append((str(at + 1), along, case.zone.starts[at], case.zone.flows[at]))
    columns = (
        Column("Line"),
        Column("Along the manifold", "length"),
        Column("Pressure where it begins", "pressure"),
        Column("Line takes", "flow"),
    )
    fed = "in the middle" if case.manifold.middle else "where the first line is"
    note = f"The manifold is fed {fed}. Its weakest line is marked."
    yield Table("Along the manifold", columns, tuple(rows), (places.index(weak),), (), note)


def _longest(case: Case) -> Table:
    """By inside diameter, with this dripper, pressure and slope."""
    rows: list[Cells] = []
    marked, dimmed = [], []
    for bore in sorted({*practice.DRIP_BORES, case.line.bore}):
        longest = replace(case.line, bore=bore).longest(case.start)
        if bore == case.line.bore:
            marked.append(len(rows))
        if longest < case.line.outlets:
            dimmed.append(len(rows))
        long = longest * case.line.spacing
        if longest == 0:
            rows.append((bore, None, "too uneven at any length"))
        else:
            rest = "or more" if longest == MOST_DRIPPERS else ""
            rows.append((bore, long, rest))
    columns = (
        Column("Inside diameter", "diameter"),
        Column("Longest line", "length"),
        Column("Result"),
    )
    note = f"To keep the flow within {share(practice.FLOW_VARIES[0])} along the line, with this "
    note += "dripper, pressure and slope."
    if case.zone is not None:
        note += " The pressure is that of the weakest line of the zone."
    title = "How long a line may be"
    return Table(title, columns, tuple(rows), tuple(marked), tuple(dimmed), note)
