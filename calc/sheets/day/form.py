"""A day's form read: the supply's rows, the day in pieces, the source, every fault at its field."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from calc.day_tank import MORNING
from calc.errors import InputError, InputErrors
from calc.network.over_a_day import Piece, Store
from calc.pipe import pipes
from calc.pump.invented import PUMPS
from calc.sheets.day.rows import DRAWS, OUTLETS, STORES
from calc.sheets.parts.fields import NO_PUMP
from calc.sheets.parts.pipe_choice import pipe_of
from calc.sheets.parts.pump_choice import chosen_pump
from calc.sheets.parts.supply_form import field_of, rows_of, tables_of
from calc.sheets.parts.supply_tables import RUNS
from calc.sheets.parts.table_texts import table_text
from calc.site.supply import (
    PUMP,
    SOURCE,
    Built,
    OpenWater,
    Source,
    Supply,
    fold,
    named,
    plain,
    row_faults,
)
from calc.units import DAY, HOUR

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.form import Values
    from calc.units import Reader

MOMENT = 1.0  # s, two moments closer than this are one


def supply_of(values: Values) -> Supply:
    if values.drive == NO_PUMP and values.fall is not None:
        water = OpenWater(
            level_m=values.fall, gives_m3s=values.gives,
            temperature_k=values.water, altitude_m=values.altitude,
        )  # fmt: skip
        return Supply(water, *rows_of(values, STORES.key))
    source = Source(
        pump=PUMPS["small"], set_pa=None, lift_m=0.0, suction_length_m=1.0,
        suction_pipe=pipes.pipe("pe100-sdr11", "32"),
        temperature_k=values.water, altitude_m=values.altitude,
    )  # fmt: skip
    if values.drive != NO_PUMP:  # without one that of the invented pump, which never runs
        source = replace(
            source, pump=chosen_pump(values), lift_m=values.lift,
            suction_length_m=values.suctionlong, suction_pipe=pipe_of(values.suctionpipe),
            pumps=values.pumps, sensed_m=values.sensed or 0.0,
        )  # fmt: skip
    if values.drive == "held":
        source = replace(source, set_pa=values.set + source.sensed_pa)
    return Supply(source, *rows_of(values, STORES.key))


def check_rows(values: Values) -> None:
    """The faults of rows that were read, where something else could not be read.

    Raises InputErrors named by the form's rows and cells.
    """
    if any(values.numbers.get(key) is None for key in (*tables_of(STORES.key).values(), "draws")):
        return  # one could not be read at all: what names its points may be right
    water = values.numbers.get("drive") == NO_PUMP and values.numbers.get("fall") is not None
    faults = row_faults(*rows_of(values, STORES.key), SOURCE if water else PUMP)
    if faults:
        raise InputErrors(named(one, field_of(one.name, STORES.key)) for one in faults)
    check_names(values)


def check_names(values: Values) -> None:
    """Tanks in no section, and times of use of outlets that there are not."""
    known = {fold(row.numbers[end]) for row in values.runs for end in ("from", "to")}
    outlets = {fold(row.name) for row in values.taps}
    faults = []
    for row in values.stores:
        if fold(row.name) not in known:
            text = f"No pipe section leads to or from “{plain(row.name)}”. Add one, or take it out."
            faults.append(InputError(text, name=row.cell("name")))
    for row in values.draws:
        if not fold(row.tap):
            faults.append(InputError("Enter the outlet that is open.", name=row.cell("tap")))
        elif fold(row.tap) not in outlets:
            text = f"There is no outlet “{plain(row.tap)}” in the table of outlets. Use its name."
            faults.append(InputError(text, name=row.cell("tap")))
    if faults:
        raise InputErrors(faults)


def renamed(error: InputError, built: Built | None = None) -> InputErrors:
    """The same errors by the form's fields, rows and cells. built: where parts stand in rows."""
    found = getattr(error, "errors", (error,))
    where = {} if built is None else built.where
    own = ("stored_m3", "plan", "table")
    return InputErrors(
        one
        if one.name in own
        else named(one, field_of(where.get(one.name or "", one.name), STORES.key))
        for one in found
    )


def store_of(values: Values) -> Store:
    """The source.  One of which something is not known never runs out here: it is not checked."""
    if values.drive == NO_PUMP or not values.stored or values.gives is None:
        return Store()
    return Store(values.stored, values.gives, values.recovers)


def again_of(values: Values) -> float | None:
    return None if values.drive == NO_PUMP else values.again


def pieces_of(values: Values, built: Built) -> Iterator[Piece]:
    """The day from ``MORNING`` on, cut at every hour and wherever something opens or closes."""
    known = {fold(name): name for name in built.outlet_rows}
    draws = [(_since(row.numbers["from"]), row.hours * HOUR, known[fold(row.tap)], row.open)
             for row in values.draws]  # fmt: skip
    power = _power(values)
    marks = {HOUR * at for at in range(25)}
    for start, long in [*((one[0], one[1]) for one in draws), *power]:
        marks |= {start, (start + long) % DAY}
    cuts = [0.0]
    for mark in sorted(marks):
        if mark - cuts[-1] > MOMENT:
            cuts.append(mark)
    cuts[-1] = DAY
    for start, end in zip(cuts, cuts[1:], strict=False):
        middle, counts = (start + end) / 2, dict[str, int]()
        for begin, long, name, number in draws:
            if _within(middle, begin, long) and number:
                counts[name] = counts.get(name, 0) + number
        powered = any(_within(middle, *one) for one in power)
        yield Piece(end - start, tuple(sorted(counts.items())), powered)


def _power(values: Values) -> list[tuple[float, float]]:
    """(start, s) of the hours with power, from ``MORNING``."""
    if values.drive == NO_PUMP:
        return []
    if values.powered == "always":
        return [(0.0, DAY)]
    return [(_since(values.pfrom), values.phours * HOUR)]


def _since(hour: float) -> float:
    """Seconds from ``MORNING`` to an hour of day."""
    return (hour - MORNING) % 24.0 * HOUR


def _within(moment: float, start: float, long: float) -> bool:
    return (moment - start) % DAY < long or long >= DAY


def table_texts(values: Values, reader: Reader) -> dict[str, str]:
    """The texts of the form's tables."""
    return {
        entry.key: table_text(
            entry,
            [
                tuple(row.numbers[column.key] for column in entry.columns)
                for row in values.numbers[entry.key]
            ],
            reader,
        )
        for entry in (STORES, DRAWS, OUTLETS, RUNS)
    }
