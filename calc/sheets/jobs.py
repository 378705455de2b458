"""Work that takes seconds, a slice at a time, so that other questions are answered in between."""

from __future__ import annotations

import time
from collections.abc import Generator, Mapping
from dataclasses import replace
from typing import TYPE_CHECKING, Any

from calc.errors import InputError
from calc.page.form import read_values
from calc.page.state import State
from calc.sheets import sheet as find_sheet
from calc.site import link
from calc.units import Reader

if TYPE_CHECKING:
    from calc.page.fields import Sheet
    from calc.page.form import Values
    from calc.sheets.parts.solar_job import Change, Progress

SLICE = 0.05  # s, longest without looking up; our choice
KEYS = ("panels", "battery")  # sheets that have such work
FAULTY = "Put the marked fields right first."
_RUNNING: list[Generator[Progress, None, str]] = []  # at most one


def handle(request: Mapping[str, Any], state: State, carried: tuple[str, str]) -> dict[str, Any]:
    """Start, go on with or stop the work of a sheet ("do": "start", "step", "stop").

    Returns {"done", "of", "said"}, with "html" once it is done; {"error"} where it cannot start;
    {} where nothing runs.
    """
    if request["do"] == "start":
        _RUNNING.clear()
        try:
            _RUNNING.append(_started(find_sheet(request["sheet"]), state, carried))
        except InputError as error:
            return {"error": error.message}
    if request["do"] == "stop":
        _RUNNING.clear()
    return _slice() if _RUNNING else {}


def _slice() -> dict[str, Any]:
    """Work on for a moment."""
    until, last = time.perf_counter() + SLICE, None
    while last is None or time.perf_counter() < until:
        try:
            last = next(_RUNNING[0])
        except StopIteration as end:
            _RUNNING.clear()
            return {"html": end.value, "done": 1, "of": 1, "said": ""}
    return {"done": last.done, "of": last.of, "said": last.said}


def _started(
    sheet: Sheet, state: State, carried: tuple[str, str]
) -> Generator[Progress, None, str]:
    values = read_values(sheet, state) if sheet.key in KEYS else None
    if values is None:
        raise InputError(FAULTY)
    return _designs(values, Reader(state.system), _changes(sheet, state, carried))


def _designs(values: Values, reader: Reader, change: Change) -> Generator[Progress, None, str]:
    from calc.sheets.parts.solar_case import case_of  # only who asks waits for them
    from calc.sheets.parts.solar_job import designs

    return designs(case_of(values), reader, change)


def _changes(sheet: Sheet, state: State, carried: tuple[str, str]) -> Change:
    """What gives the address of this page with some fields changed."""

    def change(texts: Mapping[str, str]) -> str:
        given = dict.fromkeys(texts, "given")
        units = {key: unit for key, unit in state.units.items() if key not in texts}
        changed = replace(
            state, texts={**state.texts, **texts}, units=units,
            standing={**state.standing, **given}, kept=state.kept - set(texts),
        )  # fmt: skip
        return "#" + link.write(sheet, changed, *carried, changed.kept)

    return change
