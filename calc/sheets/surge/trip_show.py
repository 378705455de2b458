"""Figures, working, table and chart of a pump that stops in a power cut."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import surge, trip
from calc.page.answer import Chart, Column, Figure, Series, Step, Table, Value
from calc.sheets.surge.show import FASTEST, in_sizes, push_step, wave_steps
from calc.sheets.surge.trip_case import LEAST_ROOM

if TYPE_CHECKING:
    from calc.sheets.surge.trip_case import Trip

CHART_POINTS = 24
SHOWN = (0.2, 3.0)  # of the vessel that is enough, or yours: the least and the most drawn


def figures(case: Trip) -> tuple[Figure, ...]:
    """Highest and lowest pressure, at the pump and at the highest point, and a vessel for both."""
    boils = case.vapour - case.air
    parted = "about, as the separated column rejoins"
    shut = "at the pump, once the check valve is closed"
    lows = [("Lowest pressure at the pump", case.low)]
    if case.crest_low is not None:
        lows.append(("Lowest pressure at the highest point", case.crest_low))
    found = [
        Figure("Maximum pressure", case.peak, "pressure", main=True,
               note=parted if case.separates else shut),
        *(
            Figure(label, case.boiled(low), "pressure", main=True,
                   note="gauge; the water boils" if low <= boils else "gauge")
            for label, low in lows
        ),
        Figure("Fall as the pump stops", case.swing.fall, "pressure"),
    ]  # fmt: skip
    needed = case.vessel_needed
    if needed is not None:
        note = "its air at rest, after the check valve"
        found.append(Figure("Air of a vessel that is enough", needed, "volume", note=note))
    found.append(Figure("Push on a right-angled bend", case.push, "force", note="at the peak"))
    return tuple(found)


# Working -------------------------------------------------------------------------------------


def steps(case: Trip) -> tuple[Step, ...]:
    """From the flow to the lowest and the highest pressure."""
    return (
        *wave_steps(case),
        Step(
            "Way of the wave, to the tank and back",
            "T_c = 2 * L / a",
            {"L": Value(case.length, "length"), "a": Value(case.speed, "speed", 4)},
            Value(case.critical, "time"),
            note="Then the water comes back and the check valve must be closed.",
        ),
        Step(
            "Fall as the pump stops at once",
            "Delta_p_J = rho * a * v",
            {
                "rho": Value(case.density, "density", 5),
                "a": Value(case.speed, "speed", 4),
                "v": Value(case.velocity, "speed"),
            },
            Value(case.sudden, "pressure"),
            note="A small pump has little to keep it turning. Friction is left out.",
            source="Joukowsky 1898",
        ),
        Step(
            "Pressure at the pump at rest",
            "p = rho * g * h",
            {"rho": Value(case.density, "density", 5), "g": Value(case.weight / case.density,
             "number", 6), "h": Value(case.lift, "length")},
            Value(case.pressure, "pressure"),
        ),
        *_vessel_steps(case),
        *_ends(case),
        push_step(case),
    )  # fmt: skip


def _ends(case: Trip) -> tuple[Step, ...]:
    static, fall = Value(case.pressure, "pressure"), Value(case.swing.fall, "pressure")
    boils = "Gauge pressure. Water cannot be pulled below its vapour pressure: it boils first."
    found = [
        Step(
            "Lowest pressure at the pump",
            "p_min = p - Delta_p_1",
            {"p": static, "Delta_p_1": fall},
            Value(case.low, "pressure"),
            note=boils,
        )
    ]
    if case.crest is not None:
        found.append(
            Step(
                "Lowest pressure at the highest point",
                "p_c = p - Delta_p_1 - rho * g * h_c",
                {
                    "p": static,
                    "Delta_p_1": fall,
                    "rho": Value(case.density, "density", 5),
                    "g": Value(case.weight / case.density, "number", 6),
                    "h_c": Value(case.crest, "length"),
                },
                Value(case.crest_low or 0.0, "pressure"),
                note="Without friction the fall runs up the pipe undiminished.",
            )
        )
    return (*found, _highest(case, static))


def _highest(case: Trip, static: Value) -> Step:
    peak = Value(case.peak, "pressure")
    if case.separates:
        return Step(
            "About the highest pressure, as the separated column rejoins",
            "p_max = p + 2 * Delta_p_J",
            {"p": static, "Delta_p_J": Value(case.sudden, "pressure")},
            peak,
            note="A bound: nobody can work it out exactly.",
            source="Bergant, Simpson and Tijsseling 2006, from memory; as a bound, our choice",
        )
    return Step(
        "Maximum pressure, on the closed check valve",
        "p_max = p + Delta_p_2",
        {"p": static, "Delta_p_2": Value(case.rise, "pressure")},
        peak,
        note="The column comes back as fast as it went, and the closed check valve stops it.",
    )


WORK = (
    "V_0 = rho * L * pi / 4 * D**2 * v**2 / 2 / (p_0 * (((p_1 / p_0)**((n - 1) / n) - 1) / "
    "(n - 1) - 1 + (p_1 / p_0)**(-1 / n)))"
)


def _vessel_steps(case: Trip) -> list[Step]:
    """Your vessel, and the one that is enough, by the pressure that asks for more of it."""
    found, start, needed = [], case.pressure + case.air, case.vessel_needed
    most = trip.MOST_SWING * case.sudden * (1 - 1e-9)
    if case.vessel is not None:
        fall = case.swing.fall
        if max(LEAST_ROOM, trip.NO_SWING * start) < fall < min(most, start * (1 - trip.EMPTY)):
            note = "p_1 was found by trial: stretched to it, the air has stopped the column. "
            found.append(_air_step(case, "Your vessel: the pressure its air falls to",
                                   start - fall, case.vessel, note))  # fmt: skip
        else:
            note = "Its air swings too little to work out, or so far that a bound is taken."
            found.append(Step("Your vessel", note=note))
    if needed is not None:
        reached = max(case.calm_pressures, key=case.vessel_for)
        note = (
            "The column's motion stretches the air as it runs on and squeezes it as it comes back; "
            "p_1 is the one of both that asks for more air. "
        )
        found.append(_air_step(case, "Air of a vessel that is enough, as it rests", reached,
                               needed, note))  # fmt: skip
    return found


def _air_step(case: Trip, title: str, reached: float, air: float, note: str) -> Step:
    """Air at rest (m3) that swings as far as an absolute pressure (Pa)."""
    return Step(
        title,
        WORK,
        {
            "rho": Value(case.density, "density", 5),
            "L": Value(case.length, "length"),
            "D": Value(case.pipe.inside_m, "diameter"),
            "v": Value(case.velocity, "speed"),
            "p_0": Value(case.pressure + case.air, "pressure"),
            "p_1": Value(reached, "pressure"),
            "n": Value(surge.POLYTROPIC, "number"),
        },
        Value(air, "volume"),
        note=f"{note}Absolute pressures.",
        source="Rigid column; n from Wylie and Streeter 1993, from memory",
    )


# Table and chart -----------------------------------------------------------------------------


def tables(case: Trip) -> tuple[Table, ...]:
    """The same power cut in the other sizes of the kind."""
    columns = (
        Column("Pipe"),
        Column("Water speed", "speed"),
        Column("Lowest pressure", "pressure"),
        Column("Maximum pressure", "pressure"),
    )
    note = "The lowest is at the pump or at the highest point, whichever is less."

    def told(other: Trip) -> tuple[float | None, ...]:
        return (other.lowest, other.peak) if other.velocity <= FASTEST else (None, None)

    return in_sizes(case, "The same power cut in other sizes", columns, told, note)


def charts(case: Trip) -> tuple[Chart, ...]:
    """Lowest and highest pressure at the pump by the air of a vessel; none where none can help."""
    around = case.vessel_needed or case.vessel
    if around is None:
        return ()
    end = SHOWN[1] * max(around, case.vessel or 0.0)
    first = SHOWN[0] * min(around, case.vessel or around)
    airs = [first * (end / first) ** (index / (CHART_POINTS - 1)) for index in range(CHART_POINTS)]
    swings = [case.with_vessel(air).swing for air in airs]
    highs = tuple(case.pressure + one.rise for one in swings)
    lows = tuple(case.boiled(case.pressure - one.fall) for one in swings)
    levels = [(case.pressure, "at rest")]
    if case.weakest is not None:
        levels.append((case.weakest[1], "lowest rating"))
    marks = () if case.vessel is None else ((case.vessel, case.pressure + case.rise, "yours"),)
    return (
        Chart(
            "vessel",
            "Pressure at the pump by the air of a vessel",
            "Highest and lowest pressure at the pump against the air of a vessel there: the more "
            "air, the nearer both are to the pressure at rest.",
            "Air in the vessel at rest",
            "volume",
            "Pressure at the pump",
            "pressure",
            (Series("Highest", tuple(airs), highs), Series("Lowest", tuple(airs), lows, "dashed")),
            marks=marks,
            levels=tuple(levels),
        ),
    )
