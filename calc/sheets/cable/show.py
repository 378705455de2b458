"""Figures, working and tables of the cable sheet."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from calc import practice
from calc.page.answer import Column, Figure, Step, Table, Value
from calc.power import cable
from calc.sheets.cable.case import HIGHER, METRIC_FIRST, MOST_CURRENT
from calc.sheets.cable.judge import share, size_words
from calc.units import MET

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.answer import Cells
    from calc.power.cable import Line
    from calc.sheets.cable.case import Case
    from calc.units import Reader

AROUND = 3  # sizes shown on each side of the one that is enough; our choice


def figures(case: Case, reader: Reader) -> tuple[Figure, ...]:
    """Voltage left, running and starting; power lost; current."""
    drop, line = case.found, case.line
    whole, start = (
        reader.show(line.voltage_v, "voltage"),
        reader.show(case.start_current, "current"),
    )
    found = [
        Figure("Voltage at the pump, running", drop.left, "voltage", digits=4, main=True,
               note=f"of {whole}, with {size_words(case, reader)}"),
        Figure("Voltage at the pump, at start", drop.start_left, "voltage", digits=4,
               note=f"{share(drop.start_share)} lost"),
        Figure("Running current", line.current_a, "current", note=f"{start} at start"),
    ]  # fmt: skip
    if drop.share < 1:  # else no such current flows
        lost = f"{share(case.loss / case.power)} of the power"
        found.insert(2, Figure("Power lost in the cable", case.loss, "power", note=lost))
    return tuple(found)


# Working -------------------------------------------------------------------------------------


def steps(case: Case, reader: Reader) -> tuple[Step, ...]:
    """From the pump's power to the voltage that is left."""
    return (
        *_current(case),
        _resistance(case),
        *_drops(case, reader),
        *_least(case),
        _fuse(case, reader),
    )


def _current(case: Case) -> Iterator[Step]:
    line = case.line
    given = {"P": Value(case.power, "power"), "U": Value(line.voltage_v, "voltage")}
    formula = {
        "dc": "I = P / U",
        "single": "I = P / (U * f)",
        "three": "I = P / (sqrt(3) * U * f)",
    }[line.circuit]
    if line.circuit != "dc":
        given["f"] = Value(line.power_factor, "number")
    note = "Counted at the full system voltage."
    if line.circuit != "dc":
        note += " f is the power factor."
    whole = Value(line.current_a, "current")
    yield Step("Current that the pump takes", formula, given, whole, note=note)
    if case.cables > 1:
        given = {"I": whole, "n": Value(case.cables, "number")}
        each = Value(case.each.current_a, "current")
        yield Step("Current in each cable", "I_1 = I / n", given, each)


def _resistance(case: Case) -> Step:
    found, metal = case.found.conductor, cable.METALS[case.line.metal]
    return Step(
        "Resistance of one conductor, each metre",
        "R = a * rho * (1 + alpha * (T - 293.15)) / A",
        {
            "a": Value(found.allowance, "number"),
            "rho": Value(metal.resistivity, "number"),
            "alpha": Value(metal.rise, "number"),
            "T": Value(case.line.temperature_k, "temperature"),
            "A": Value(found.area, "conductor"),
        },
        Value(case.ohm(found), "resistance"),
        note=f"{metal.key.capitalize()}, {found.name}: rho is its resistivity at 20 °C (68 °F), "
        "alpha its rise with temperature, a what the strands add.",
        source="IEC 60028, 60889 and 60228, from memory",
    )


def _drops(case: Case, reader: Reader) -> Iterator[Step]:
    line, drop = case.each, case.found
    lost, whole = Value(drop.drop, "voltage"), Value(line.voltage_v, "voltage")
    yield Step(
        "Voltage lost on the way there and back",
        f"Delta_U = {_way(line.circuit)} * L * I * {_impedance(line)}",
        {**_carried(case), "R": Value(case.ohm(drop.conductor), "resistance"), **_angle(line)},
        lost,
        note="L is one way; both conductors of the circuit are counted."
        if line.circuit != "three"
        else "L is one way; between two of the three phases.",
        source="IEC 60364-5-52 annex G, from memory",
    )
    yield Step(
        "Voltage left at the pump",
        "U_p = max(0, U - Delta_U)",
        {"U": whole, "Delta_U": lost},
        Value(drop.left, "voltage"),
    )
    yield Step(
        "Voltage left while it starts",
        "U_s = max(0, U - m * Delta_U)",
        {"U": whole, "m": Value(line.start_times, "number"), "Delta_U": lost},
        Value(drop.start_left, "voltage"),
        note="m is the start-up current over the running one.",
    )
    if drop.share >= 1:  # no such current flows
        return
    yield Step(
        "Power lost as heat",
        "P_l = n * w * L * I**2 * R",
        {
            **_carried(case),
            "n": Value(case.cables, "number"),
            "w": Value(3 if line.circuit == "three" else 2, "number"),
            "R": Value(case.ohm(drop.conductor), "resistance"),
        },
        Value(case.loss, "power"),
        note="n cables of w conductors that carry current.",
    )


def _carried(case: Case) -> dict[str, Value]:
    return {"L": Value(case.line.length_m, "length"), "I": Value(case.each.current_a, "current")}


def _way(circuit: str) -> str:
    return "sqrt(3)" if circuit == "three" else "2"


def _impedance(line: Line) -> str:
    return "R" if line.circuit == "dc" else "(R * f + X * sqrt(1 - f**2))"


def _angle(line: Line) -> dict[str, Value]:
    """Power factor and reactance, of AC."""
    if line.circuit == "dc":
        return {}
    reactance = Value(practice.CABLE_REACTANCE, "resistance")
    return {"f": Value(line.power_factor, "number"), "X": reactance}


def _least(case: Case) -> Iterator[Step]:
    """The area that the drops ask for."""
    line, found = case.each, case.found.conductor
    most, area = case.most_ohm, case.least(found)
    if area is None:
        return
    angle = _angle(line)
    formula = f"R_most = u * U / ({_way(line.circuit)} * L * I)"
    if angle:
        formula = f"R_most = (u * U / ({_way(line.circuit)} * L * I) - X * sqrt(1 - f**2)) / f"
    yield Step(
        "Highest resistance that keeps to both drops",
        formula,
        {
            "u": Value(case.most_share, "percent"),
            "U": Value(line.voltage_v, "voltage"),
            **_carried(case),
            **angle,
        },
        Value(most, "resistance"),
        note="u is the accepted drop while running, or that at start over m where it is less.",
    )
    yield Step(
        "Least area of the conductor",
        "A_least = A * R / R_most",
        {
            "A": Value(found.area, "conductor"),
            "R": Value(case.ohm(found), "resistance"),
            "R_most": Value(most, "resistance"),
        },
        Value(area, "conductor"),
        note="The next size that is sold is taken. Whether it may carry the current is not part "
        "of this.",
    )


def _fuse(case: Case, reader: Reader) -> Step:
    fuse = case.fuse
    sold = "none listed" if fuse.rating is None else reader.show(fuse.rating, "current")
    return Step(
        "Fuse or breaker, as advice",
        "I_f = k * I",
        {"k": Value(fuse.times, "number"), "I": Value(case.line.current_a, "current")},
        Value(fuse.least, "current"),
        note=f"The next rating that is sold: {sold}. The local code and a licensed electrician "
        "decide.",
        source="Common practice, no source",
    )


# Tables --------------------------------------------------------------------------------------


def tables(case: Case, reader: Reader) -> tuple[Table, ...]:
    """Sizes around the one found, the reader's first."""
    kinds = METRIC_FIRST[reader.system]
    return (*(_sizes(case, kind) for kind in kinds), _voltages(case, reader))


def _sizes(case: Case, kind: str) -> Table:
    sizes, best = case.sizes(kind), case.smallest(kind)
    drops = [case.drop_of(one) for one in sizes]
    at = sizes.index(best.conductor) if best else len(sizes) - 1
    shown = {index for index in range(at - AROUND, at + AROUND + 1) if 0 <= index < len(sizes)}
    if case.own in sizes:
        shown.add(sizes.index(case.own))
    rows: list[Cells] = []
    marked, dimmed = [], []
    for index in sorted(shown):
        drop = drops[index]
        if sizes[index] == case.found.conductor or (case.own is None and drop == best):
            marked.append(len(rows))
        if not case.keeps(drop):
            dimmed.append(len(rows))
        heat = case.cables * drop.loss if drop.share < 1 else None
        rows.append((drop.conductor.name, min(drop.share, 1), min(drop.start_share, 1), heat))
    columns = (
        Column("Size"),
        Column("Lost, running", "percent", 2),
        Column("Lost at start", "percent", 2),
        Column("Power lost", "power"),
    )
    title = "Sizes in AWG" if kind == "awg" else "Sizes in mm²"
    note = "By the voltage drop alone. Which of them may carry the current is not checked."
    return Table(title, columns, tuple(rows), tuple(marked), tuple(dimmed), note)


def _voltages(case: Case, reader: Reader) -> Table:
    """What a higher system voltage would do to the size."""
    now = case.line.voltage_v
    rows: list[Cells] = []
    marked = []
    for volts in sorted({*HIGHER[reader.system][case.line.circuit], now}):
        if case.line.current_a * now > MOST_CURRENT * volts * MET:
            continue
        other = replace(case.at_voltage(volts), own=None, carries=None)
        if volts == now:
            marked.append(len(rows))
        size = size_words(other, reader) if other.best else "none listed"
        rows.append((volts, other.line.current_a, size, other.loss if other.best else None))
    columns = (
        Column("System voltage", "voltage", 2),
        Column("Current", "current"),
        Column("Smallest size"),
        Column("Power lost", "power"),
    )
    note = "Twice the voltage needs a quarter of the metal. The pump, its controller and the "
    note += "source must be made for that voltage."
    return Table("The same power at another voltage", columns, tuple(rows), tuple(marked), (), note)
