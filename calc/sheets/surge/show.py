"""Figures, working, tables and chart of the surge sheet."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Any, TypeVar

from calc import practice, surge
from calc.page.answer import Chart, Column, Figure, Series, Step, Table, Value
from calc.pipe import pipes
from calc.sheets.surge.case import HELD, LONGEST_CLOSING, Case

if TYPE_CHECKING:
    from collections.abc import Callable

OfAPipe = TypeVar("OfAPipe", bound=Case)
CHART_POINTS = 24
FASTEST = 20.0  # m/s, no pipe of such a line runs so fast; our choice


def figures(case: Case) -> tuple[Figure, ...]:
    """Peak, knock, lowest pressure, and the closing time from which nothing is wrong."""
    heard = case.rise * (1 + 1e-9) >= practice.KNOCK_HEARD
    found = [
        Figure("Maximum pressure", case.peak, "pressure", main=True),
        Figure(
            "Knock on closing",
            case.rise,
            "pressure",
            note="you will hear it" if heard else "too little to hear",
        ),
        Figure(
            "Lowest pressure just after",
            case.lowest,
            "pressure",
            note="gauge; the water boils" if case.separates else "gauge",
        ),
    ]
    if 0 < case.calm_rise < case.rise:
        found.append(
            Figure("Air of an arrester that is enough", case.arrester, "volume",
                   note="beside the valve, at rest")
        )  # fmt: skip
    found.append(Figure("Push on a right-angled bend", case.push, "force", note="at the peak"))
    gentle = case.closing_for(case.calm_rise)
    if gentle <= LONGEST_CLOSING:
        note = "or longer" if gentle > 0 else "even a sudden stop is harmless"
        found.append(Figure("Closing time that is gentle", gentle, "time", note=note))
    return tuple(found)


# Working -------------------------------------------------------------------------------------


def steps(case: Case) -> tuple[Step, ...]:
    """From the flow to the highest and the lowest pressure."""
    density, velocity = Value(case.density, "density", 5), Value(case.velocity, "speed")
    speed, length = Value(case.speed, "speed", 4), Value(case.length, "length")
    found = [
        *wave_steps(case),
        Step(
            "Way of the wave, there and back",
            "T_c = 2 * L / a",
            {"L": length, "a": speed},
            Value(case.critical, "time"),
            note="A valve that closes within this time stops the whole column at once.",
        ),
        Step(
            "Rise of a sudden stop",
            "Delta_p_J = rho * a * v",
            {"rho": density, "a": speed, "v": velocity},
            Value(case.sudden, "pressure"),
            source="Joukowsky 1898",
        ),
    ]
    if case.closing > case.critical:
        found += _slow_steps(case, density, length, velocity)
    return (*found, *_ends(case), *_air(case), push_step(case))


def wave_steps(case: Case) -> list[Step]:
    """The water speed, and how fast its wave runs in this pipe."""
    return [
        Step(
            "Water speed",
            "v = Q / (pi / 4 * D**2)",
            {"Q": Value(case.flow, "flow"), "D": Value(case.pipe.inside_m, "diameter")},
            Value(case.velocity, "speed"),
            note=f"{case.pipe.label}: its real inside diameter.",
            source=case.pipe.source,
        ),
        *_wave_steps(case, Value(case.density, "density", 5), Value(case.speed, "speed", 4)),
    ]


def _air(case: Case) -> tuple[Step, ...]:
    """Air of an arrester, where the knock asks for one."""
    if not 0 < case.calm_rise < case.rise:
        return ()
    start, most = case.pressure + case.air, case.pressure + case.calm_rise + case.air
    return (
        Step(
            "Air of an arrester, as it rests",
            "V_0 = rho * L * pi / 4 * D**2 * v**2 / 2 / (p_0 * (((p_2 / p_0)**((n - 1) / n) - 1) / "
            "(n - 1) - 1 + (p_2 / p_0)**(-1 / n)))",
            {
                "rho": Value(case.density, "density", 5),
                "L": Value(case.length, "length"),
                "D": Value(case.pipe.inside_m, "diameter"),
                "v": Value(case.velocity, "speed"),
                "p_0": Value(start, "pressure"),
                "p_2": Value(most, "pressure"),
                "n": Value(surge.POLYTROPIC, "number"),
            },
            Value(case.arrester, "volume"),
            note="Absolute pressures. The moving column and the supply squeeze the air until it is "
            "at the peak that nothing minds. The manufacturer's data go first.",
            source="Rigid column; n from Wylie and Streeter 1993, from memory",
        ),
    )


def push_step(case: Case) -> Step:
    """Thrust on a bend."""
    return Step(
        "Push on a right-angled bend at the peak",
        "F = 2 * p_max * pi / 4 * D_o**2 * sin(pi / 4)",
        {
            "p_max": Value(case.peak, "pressure"),
            "D_o": Value(case.outside, "diameter"),
        },
        Value(case.push, "force"),
        note="An end or a closed valve bears 0.71 of it. Anchor or block it where joints can slip.",
        source="AWWA M23, from memory",
    )


def _ends(case: Case) -> tuple[Step, ...]:
    rise, static = Value(case.rise, "pressure"), Value(case.pressure, "pressure")
    return (
        Step(
            "Maximum pressure",
            "p_max = p + Delta_p",
            {"p": static, "Delta_p": rise},
            Value(case.peak, "pressure"),
        ),
        Step(
            "Lowest pressure, when the wave returns",
            "p_min = p - Delta_p",
            {"p": static, "Delta_p": rise},
            Value(case.low, "pressure"),
            note="Gauge pressure. Water cannot be pulled below its vapour pressure: it boils "
            "first.",
        ),
    )


def _wave_steps(case: Case, density: Value, speed: Value) -> list[Step]:
    bulk, bore = Value(case.bulk, "pressure", 4), Value(case.pipe.inside_m, "diameter")
    if case.material is None:
        return [
            Step(
                "Speed of the pressure wave",
                "a = sqrt(K / rho)",
                {"K": bulk, "rho": density},
                speed,
                note="The wall is not known, so it is taken as rigid: the highest speed and rise "
                "there can be.",
            )
        ]
    hold, wall = HELD[case.held], Value(case.thickness, "diameter")
    poisson, restraint = Value(case.material.poisson, "number", 2), Value(case.restraint, "number")
    return [
        *_stiffness(case),
        Step(
            "Wall factor",
            hold.formula,
            {"e": wall, "D": bore, "nu": poisson},
            restraint,
            source="Wylie and Streeter 1993",
        ),
        Step(
            "Speed of the pressure wave",
            "a = sqrt(K / rho) / sqrt(1 + K / E * D / e * c)",
            {
                "K": bulk,
                "rho": density,
                "E": Value(case.modulus, "pressure"),
                "D": bore,
                "e": wall,
                "c": restraint,
            },
            speed,
            source="Korteweg 1878",
        ),
    ]


def _stiffness(case: Case) -> list[Step]:
    material = case.material
    assert material is not None  # only asked where the wall is known
    if not material.heat:
        note = f"{material.label}: Young's modulus, the same at every water temperature."
        return [Step("Stiffness of the wall", note=note, source=material.source)]
    return [
        Step(
            "Stiffness of the wall at this water temperature",
            "E = E_20 * s",
            {
                "E_20": Value(material.modulus, "pressure"),
                "s": Value(case.modulus / material.modulus, "percent"),
            },
            Value(case.modulus, "pressure"),
            note=f"{material.label}, {material.heat_source}.",
            source=material.source,
        )
    ]


def _simple_step(case: Case, density: Value, length: Value, velocity: Value) -> Step:
    simple = surge.michaud_rise(case.density, case.length, case.velocity, case.closing)
    return Step(
        "A slow closing, by the simple rule",
        "Delta_p_M = 2 * rho * L * v / T",
        {"rho": density, "L": length, "v": velocity, "T": Value(case.closing, "time")},
        Value(simple, "pressure"),
        note="To compare: it takes the water speed to fall evenly; the next steps the opening.",
        source="Michaud 1878",
    )


def _slow_steps(case: Case, density: Value, length: Value, velocity: Value) -> list[Step]:
    phase = surge.allievi_phase(
        case.density, case.speed, case.length, case.velocity, case.closing, case.pressure
    )
    static, zeta = Value(case.pressure, "pressure"), Value(phase.zeta, "number", 5)
    number = Value(phase.allievi, "number", 4)
    return [
        _simple_step(case, density, length, velocity),
        Step(
            "Allievi's number",
            "A = rho * a * v / (2 * p)",
            {"rho": density, "a": Value(case.speed, "speed", 4), "v": velocity, "p": static},
            number,
        ),
        Step(
            "The highest phase of the closing",
            "zeta = sqrt((A * eta)**2 + 2 - zeta_0**2 + 2 * A * eta_0 * zeta_0) - A * eta",
            {
                "A": number,
                "eta": Value(phase.opening, "percent"),
                "eta_0": Value(phase.opening_before, "percent"),
                "zeta_0": Value(phase.zeta_before, "number", 5),
            },
            zeta,
            note="Followed from the start in steps of T_c; openings at this step and the one "
            "before.",
            source="Allievi 1913",
        ),
        Step(
            "Rise of the slow closing",
            "Delta_p = p * (zeta**2 - 1)",
            {"p": static, "zeta": zeta},
            Value(phase.rise, "pressure"),
        ),
    ]


# Tables and chart ----------------------------------------------------------------------------


def tables(case: Case) -> tuple[Table, ...]:
    """What a slower valve does, and the same stop in other sizes of the kind."""
    return (_times(case), *_sizes(case))


def _times(case: Case) -> Table:
    asked = [("Half the knock of this valve", case.rise / 2)]
    if case.sudden > practice.KNOCK_HEARD:
        asked.append(("A knock hardly heard", practice.KNOCK_HEARD))
    for what, rating, _ in case.limits:
        asked.append((f"Within nine tenths of the rating of {what}",
                      practice.NEAR_RATING * rating - case.pressure))  # fmt: skip
    asked.append(("No pressure below zero", case.pressure))
    rows = [("Sudden: this time or less", case.critical, case.sudden, case.pressure + case.sudden)]
    for words, rise in asked:
        seconds = case.closing_for(rise)
        if rise > 0 and math.isfinite(seconds):
            reached = min(rise, case.sudden)
            rows.append((words, seconds, reached, case.pressure + reached))
    columns = (
        Column("For"),
        Column("Closing time", "time"),
        Column("Knock", "pressure"),
        Column("Maximum pressure", "pressure"),
    )
    note = "A time of 0 means that even a sudden stop is enough. Longer is gentler."
    return Table("What a slower valve does", columns, tuple(rows), note=note)


def _sizes(case: Case) -> tuple[Table, ...]:
    columns = (
        Column("Pipe"),
        Column("Water speed", "speed"),
        Column("Wave speed", "speed"),
        Column("Maximum pressure", "pressure"),
    )

    def told(other: Case) -> tuple[float | None, ...]:
        return other.speed, other.peak if other.velocity <= FASTEST else None

    return in_sizes(case, "The same stop in other sizes", columns, told)


def in_sizes(
    case: OfAPipe,
    title: str,
    columns: tuple[Column, ...],
    told: Callable[[OfAPipe], tuple[float | None, ...]],
    note: str = "",
) -> tuple[Table, ...]:
    """The same in the other sizes of the pipe's kind; none for a pipe of no kind.

    told: of a case with another pipe, what stands behind the water's speed.
    """
    if case.pipe.kind not in pipes.KINDS:
        return ()
    sizes = pipes.sizes(case.pipe.kind)
    others = [case.with_pipe(pipe) for pipe in sizes]
    rows: tuple[tuple[Any, ...], ...] = tuple(
        (pipe.name, other.velocity, *told(other)) for pipe, other in zip(sizes, others, strict=True)
    )
    here = tuple(at for at, pipe in enumerate(sizes) if pipe.size == case.pipe.size)
    return (Table(title, columns, rows, marked=here, note=note),)


def chart(case: Case) -> Chart:
    """The highest pressure for each closing time, your valve marked."""
    critical = case.critical
    end = max(4 * critical, 1.5 * case.closing)
    within = case.closing_for(case.calm_rise)
    if math.isfinite(within):
        end = max(end, min(1.3 * within, 20 * critical))
    times = [end * (index / (CHART_POINTS - 1)) ** 1.5 for index in range(CHART_POINTS)]
    times = sorted({*times, critical})
    peaks = tuple(case.pressure + case.rise_for(time) for time in times)
    levels = [(case.pressure, "static")]
    if case.rating is not None:
        levels.append((case.rating, "pipe's rating"))
    if case.part is not None:
        levels.append((case.part, "lowest-rated part"))
    return Chart(
        "closing",
        "Maximum pressure for each closing time",
        "Maximum pressure against closing time: flat up to the wave's way there and back, then "
        "falling; your valve is marked.",
        "Closing time of the valve",
        "time",
        "Maximum pressure",
        "pressure",
        (Series("Maximum pressure", tuple(times), peaks),),
        marks=((case.closing, case.peak, "yours"),),
        levels=tuple(levels),
    )
