"""Figures, working, table and chart of the surge sheet."""

from calc import surge
from calc.page.answer import Chart, Column, Figure, Series, Step, Table, Value
from calc.pipe import pipes
from calc.sheets.surge.case import HELD, line_of

CHART_POINTS = 24
FASTEST = 20.0  # m/s, no pipe of such a line runs so fast (our rule)


def figures(line, limits):
    rise = line.rise(line.closing)
    found = [
        Figure("Highest pressure", line.pressure + rise, "pressure", main=True),
        Figure("Rise above rest", rise, "pressure"),
        Figure(
            "Lowest pressure just after",
            max(line.low, line.vapour - line.air),
            "pressure",
            note="gauge; here the water boils" if line.parts else "gauge",
        ),
        Figure("Speed of the pressure wave", line.speed, "speed"),
        Figure(
            "Sudden when shut within",
            surge.critical_time(line.length, line.speed),
            "time",
            note="the wave's way there and back",
        ),
    ]
    if limits.lowest is not None and limits.lowest > line.pressure:
        seconds = line.closing_for(limits.lowest)
        if seconds > 0:
            found.append(
                Figure(
                    "Closing time that stays within the rating", seconds, "time", note="or longer"
                )
            )
    return tuple(found)


def steps(line):
    density, bulk = Value(line.density, "density", 5), Value(line.bulk, "pressure", 4)
    bore, velocity = Value(line.pipe.inside_m, "diameter"), Value(line.velocity, "speed")
    speed, length = Value(line.speed, "speed", 4), Value(line.length, "length")
    sudden = Value(line.sudden, "pressure")
    steps = [
        Step(
            "Speed of the water",
            "v = Q / (pi / 4 * D**2)",
            {"Q": Value(line.flow, "flow"), "D": bore},
            velocity,
            note=f"{line.pipe.label}: the bore is its real inside diameter.",
            source=line.pipe.source,
        ),
        *_wave_steps(line, density, bulk, bore, speed),
        Step(
            "Way of the wave, there and back",
            "T_c = 2 * L / a",
            {"L": length, "a": speed},
            Value(surge.critical_time(line.length, line.speed), "time"),
            note="A valve that shuts within this time stops the whole column at once.",
        ),
        Step(
            "Rise of a sudden stop",
            "Delta_p_J = rho * a * v",
            {"rho": density, "a": speed, "v": velocity},
            sudden,
            source="Joukowsky 1898",
        ),
    ]
    if line.closing > surge.critical_time(line.length, line.speed):
        steps += _slow_steps(line, density, length, velocity)
    rise, rest = Value(line.rise(line.closing), "pressure"), Value(line.pressure, "pressure")
    steps += [
        Step(
            "Highest pressure",
            "p_max = p + Delta_p",
            {"p": rest, "Delta_p": rise},
            Value(line.peak, "pressure"),
        ),
        Step(
            "Lowest pressure, when the wave returns",
            "p_min = p - Delta_p",
            {"p": rest, "Delta_p": rise},
            Value(line.low, "pressure"),
            note="Gauge pressure. Water cannot be pulled below its vapour pressure: it boils "
            "first.",
        ),
    ]
    return tuple(steps)


def _wave_steps(line, density, bulk, bore, speed):
    if line.material is None:
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
    _, factor, formula = HELD[line.held]
    wall, poisson = Value(line.wall, "diameter"), Value(line.material.poisson, "number", 2)
    restraint = Value(factor(bore.value, wall.value, poisson.value), "number", 4)
    return [
        Step(
            "Wall factor",
            formula,
            {"e": wall, "D": bore, "nu": poisson},
            restraint,
            note=f"{line.material.label}: {line.material.source}.",
            source="Wylie and Streeter 1993",
        ),
        Step(
            "Speed of the pressure wave",
            "a = sqrt(K / rho) / sqrt(1 + K / E * D / e * c)",
            {
                "K": bulk,
                "rho": density,
                "E": Value(line.material.modulus, "pressure"),
                "D": bore,
                "e": wall,
                "c": restraint,
            },
            speed,
            source="Korteweg 1878",
        ),
    ]


def _slow_steps(line, density, length, velocity):
    phase = surge.allievi_phase(
        line.density, line.speed, line.length, line.velocity, line.closing, line.pressure
    )
    rest, zeta = Value(line.pressure, "pressure"), Value(phase.zeta, "number", 5)
    number = Value(phase.allievi, "number", 4)
    return [
        Step(
            "A slow closing, by the simple rule",
            "Delta_p_M = 2 * rho * L * v / T",
            {"rho": density, "L": length, "v": velocity, "T": Value(line.closing, "time")},
            Value(
                surge.michaud_rise(line.density, line.length, line.velocity, line.closing),
                "pressure",
            ),
            note="To compare: it takes the velocity to fall evenly; the next steps the opening.",
            source="Michaud 1878",
        ),
        Step(
            "Allievi's number",
            "A = rho * a * v / (2 * p)",
            {"rho": density, "a": Value(line.speed, "speed", 4), "v": velocity, "p": rest},
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
            {"p": rest, "zeta": zeta},
            Value(phase.rise, "pressure"),
        ),
    ]


def sizes(values, line):
    """Every size of the kind at this flow and closing time."""
    if line.pipe.kind not in pipes.KINDS:
        return ()
    rows, here = [], []
    for index, pipe in enumerate(pipes.sizes(line.pipe.kind)):
        other = line_of(values, pipe)
        if other.velocity > FASTEST:
            rows.append((pipe.name, other.velocity, other.speed, None))
        else:
            rows.append((pipe.name, other.velocity, other.speed, other.peak))
        if pipe.size == line.pipe.size:
            here.append(index)
    columns = (
        Column("Pipe"),
        Column("Water runs at", "speed"),
        Column("Wave runs at", "speed"),
        Column("Highest pressure", "pressure"),
    )
    return (Table("The same stop in other sizes", columns, tuple(rows), marked=tuple(here)),)


def chart(line, limits):
    critical = surge.critical_time(line.length, line.speed)
    end = max(4 * critical, 1.5 * line.closing)
    if limits.lowest is not None and limits.lowest > line.pressure:
        end = max(end, min(1.3 * line.closing_for(limits.lowest), 20 * critical))
    times = [end * (index / (CHART_POINTS - 1)) ** 1.5 for index in range(CHART_POINTS)]
    times = sorted({*times, critical})
    peaks = tuple(line.pressure + line.rise(time) for time in times)
    levels = [(line.pressure, "at rest")]
    if limits.rating is not None:
        levels.append((limits.rating, "pipe's rating"))
    if limits.part is not None:
        levels.append((limits.part, "lowest-rated part"))
    return Chart(
        "closing",
        "Highest pressure for each closing time",
        "Highest pressure against closing time: flat up to the wave's way there and back, then "
        "falling; "
        "your valve is marked.",
        "Time the valve takes to shut",
        "time",
        "Highest pressure",
        "pressure",
        (Series("Highest pressure", tuple(times), peaks),),
        marks=((line.closing, line.peak, "yours"),),
        levels=tuple(levels),
    )
