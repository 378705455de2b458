"""What to try where a cable is not enough: a larger one, a softer start, more volts, several."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from calc import practice
from calc.sheets.cable.case import HIGHER, MOST_CABLES
from calc.sheets.cable.judge import EQUAL, findings, share
from calc.sheets.parts.carry import exact
from calc.sheets.parts.line_fixes import round_down
from calc.sheets.parts.tries import Change

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.form import Values
    from calc.sheets.cable.case import Case
    from calc.units import Reader

LEAST_LENGTH = 0.1  # of the way, below which a shorter one is no advice; our choice
NONE = (
    "No single change we tried is enough. A higher voltage, a shorter way, a gentler start and "
    "cables side by side each help: combine them."
)
STARTS = frozenset({"start-drop", "start-half"})
DROPS = STARTS | {"too-thin", "no-size"}
ALL = DROPS | {"over-capacity", "fuse"}


def changes(values: Values, case: Case, reader: Reader) -> Iterator[Change]:
    """The likely best first."""
    yield from _larger(case, reader)
    yield from _softer(values, case, reader)
    yield from _higher(values, case, reader)
    yield from _several(case, reader)
    yield from _nearer(case, reader)


def _bad(case: Case, reader: Reader) -> set[str]:
    """Keys of what is wrong and known."""
    return {one.key for one in findings(case, reader) if one.rank != "unchecked"}


def _larger(case: Case, reader: Reader) -> Iterator[Change]:
    """In place of the cable in mind; it may carry more, and never less."""
    if case.own is None or case.best is None:
        return
    name = case.best.conductor.name
    text = f"Use {name} instead: it loses {share(case.best.share)} running."
    yield Change(text, DROPS, {case.asked: name.split()[0].replace("/", "-")})


def _softer(values: Values, case: Case, reader: Reader) -> Iterator[Change]:
    if values.start == "soft":
        return
    softer = replace(case, line=replace(case.line, start_times=practice.START_SOFT))
    left = reader.show(softer.found.start_left, "voltage")
    text = f"Fit a soft starter or a speed control: the pump then has {left} at start."
    yield Change(text, STARTS | {"no-size"}, {"start": "soft"})


def _higher(values: Values, case: Case, reader: Reader) -> Iterator[Change]:
    """The first usual voltage that is enough, with the same power."""
    for volts in HIGHER[reader.system][case.line.circuit]:
        if volts <= case.line.voltage_v:
            continue
        other = case.at_voltage(volts)
        if _bad(other, reader):
            continue
        current = reader.show(other.line.current_a, "current")
        text = f"Use a pump and a source made for {volts:g}\u00a0V: the same power takes {current}."
        texts = {"voltage": f"{volts:g} V"}
        if values.known == "current":
            texts["current"] = exact(other.line.current_a, "current", reader)
        if values.start == "own":
            texts["startup"] = exact(other.start_current, "current", reader)
        yield Change(text, ALL, texts)
        return


def _several(case: Case, reader: Reader) -> Iterator[Change]:
    for cables in range(case.cables + 1, MOST_CABLES + 1):
        other = replace(case, cables=cables)
        if not _bad(other, reader):
            each = reader.show(other.each.current_a, "current")
            text = f"Lay {EQUAL[cables]} equal cables side by side: each carries {each}."
            yield Change(text, ALL, {"cables": str(cables)})
            return


def _nearer(case: Case, reader: Reader) -> Iterator[Change]:
    """Drops grow with the length, so a share of it keeps to them."""
    drop = case.found
    if drop.share <= 0:
        return
    part = min(case.drop / drop.share, case.start_drop / drop.start_share)
    length = round_down(part * case.line.length_m, "length", reader)
    if LEAST_LENGTH * case.line.length_m <= length < case.line.length_m:
        shown = reader.show(length, "length")
        text = f"Bring the source and the pump nearer: {shown} of this cable is short enough."
        yield Change(text, DROPS, {"length": exact(length, "length", reader)})
