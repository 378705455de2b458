"""A form of the fault sheet read: the supply's rows, the readings, every mistake at its field."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from calc.errors import InputError, InputErrors
from calc.network.fault_readings import (
    AMPS,
    BUCKET,
    CLOSED,
    LEVEL,
    PRESSURE,
    STANDBY,
    STARTS,
    STATIC,
    SUCTION,
    VOLTS,
    WATTS,
    Reading,
)
from calc.sheets.fault.rows import AFTER, BEFORE, BUCKETS, GAUGES, NONE, ONE, SIGNS
from calc.sheets.parts import supply_form
from calc.sheets.parts.fields import NO_PUMP
from calc.sheets.parts.pipe_choice import pipe_of
from calc.sheets.parts.pump_choice import chosen_pump
from calc.sheets.parts.supply_form import rows_of, tables_of
from calc.sheets.parts.supply_tables import RUNS, TANKS, TAPS
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
from calc.units import HOUR

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.network.fault_readings import Opened
    from calc.page.form import Row, Values
    from calc.units import Reader

OWN = ("cutin", "cutout", "table", "pump")  # fields that name themselves
# Standard errors where the reader gives none. All: our choice.
GAUGE_ERROR = 0.1e5  # Pa, a gauge of a shop, read by eye
BUCKET_ERROR = 0.05  # share: a bucket and a watch
VACUUM_ERROR = 0.05e5  # Pa
DISPLAY_ERROR = 0.05  # share of watts and amps
VOLTS_ERROR = 0.015  # share
LEVEL_ERROR = 0.1  # m
STARTS_ERROR = (2.0, 0.2)  # per hour, and share of the count
FALL_ERROR = 0.1e5  # Pa


def supply_of(values: Values) -> Supply:
    """The supply as its reader knows it.  Raises InputError."""
    if values.drive == NO_PUMP:
        water = OpenWater(
            level_m=values.fall, temperature_k=values.water, altitude_m=values.altitude
        )
        return Supply(water, *rows_of(values, "tanks"))
    source = Source(
        pump=chosen_pump(values),
        set_pa=None,
        lift_m=values.lift,
        suction_length_m=values.suctionlong,
        suction_pipe=pipe_of(values.suctionpipe),
        temperature_k=values.water,
        altitude_m=values.altitude,
        pumps=values.pumps,
        tank_m3=values.tank or None,
        sensed_m=values.sensed or 0.0,
        least_m3s=values.least,
        charge_pa=values.precharge,
    )
    if values.drive == "held":
        source = replace(source, set_pa=values.set + source.sensed_pa)
    elif switched(values):
        # between the two, a switched pump keeps the middle of them over time
        source = replace(source, set_pa=(values.cutin + values.cutout) / 2)
    return Supply(source, *rows_of(values, "tanks"))


def switched(values: Values) -> bool:
    """Whether a pressure switch drives the pump.  Raises InputError for half of one."""
    if values.cutin is None and values.cutout is None:
        return False
    if values.cutin is None or values.cutout is None:
        key = "cutin" if values.cutin is None else "cutout"
        raise InputError("Enter both pressures of the switch, or neither", name=key)
    if values.cutout <= values.cutin:
        raise InputError("“Pump stops at” must be above “Pump starts at”", name="cutout")
    return True


def check_rows(values: Values) -> None:
    """The faults of rows that were read, where something else could not be read.

    Raises InputErrors named by the form's rows and cells.
    """
    if any(values.numbers.get(key) is None for key in tables_of("tanks").values()):
        return  # one could not be read at all: what names its points may be right
    start = SOURCE if values.numbers.get("drive") == NO_PUMP else PUMP
    faults = row_faults(*rows_of(values, "tanks"), start)
    if faults:
        raise InputErrors(named(one, field_of(one.name)) for one in faults)


def renamed(error: InputError) -> InputErrors:
    """The same errors by the form's fields, rows and cells."""
    found = getattr(error, "errors", (error,))
    return InputErrors(named(one, field_of(one.name)) for one in found)


def field_of(name: str | None) -> str:
    """The form's key for a place in the rows: "sections.2.start" -> "runs.2.from"."""
    if name in OWN:
        return str(name)
    return supply_form.field_of(name, "tanks")


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
        for entry in (GAUGES, BUCKETS, RUNS, TAPS, TANKS)
    }


# Readings -----------------------------------------------------------------------------------------


def signs(values: Values) -> tuple[str, ...]:
    """Keys of the symptoms that were noticed."""
    return tuple(symptom for key, symptom, _ in SIGNS if values.numbers[key] == "yes")


def opened_of(built: Built, which: str) -> Opened:
    """The outlets open before or after, with how many of each."""
    if which == NONE:
        return STATIC
    rows = built.supply.outlets
    pairs = ((n, rows[at].before if which == BEFORE else rows[at].after)
             for n, at in built.outlet_rows.items())  # fmt: skip
    return tuple(sorted((name, count) for name, count in pairs if count))


def readings_of(values: Values, built: Built) -> tuple[tuple[Reading, str], ...]:
    """(reading, place in the form) of each.  Raises InputErrors at the cells that name nothing."""
    faults: list[InputError] = []
    found: list[tuple[Reading, str]] = []
    for row in values.gauges:
        try:
            found.append((_gauge(row, built), row.cell("got")))
        except InputError as error:
            faults.append(error)
    for row in values.buckets:
        try:
            found.append((_bucket(row, built), row.cell("time")))
        except InputError as error:
            faults.append(error)
    if faults:
        raise InputErrors(faults)
    if values.drive != NO_PUMP:
        found += _at_pump(values, built)
    return tuple(found)


def _gauge(row: Row, built: Built) -> Reading:
    return Reading(
        PRESSURE,
        row.got,
        row.error or GAUGE_ERROR,
        _point(row, built),
        _opened(row, built, needs_tap=row.open == ONE),
    )


def _bucket(row: Row, built: Built) -> Reading:
    name, flow = _outlet(row, built), row.volume / row.time
    opened = ((name, 1),) if row.open == ONE else opened_of(built, row.open)
    if name not in dict(opened):
        when = "before" if row.open == BEFORE else "after"
        text = f"“{plain(name)}” is closed {when}. Choose “Only the outlet named”."
        raise InputError(text, name=row.cell("open"))
    return Reading(BUCKET, flow, max(1e-9, (row.error or BUCKET_ERROR) * flow), name, opened)


def _point(row: Row, built: Built) -> str:
    known = {fold(name): name for name in built.shown}
    known[fold(PUMP)] = built.supply.start  # rows may call it so without a pump too
    if not fold(row.at):
        raise InputError("Choose the point at which it was read.", name=row.cell("at"))
    if fold(row.at) not in known:
        text = f"“{plain(row.at)}” is not a point of this supply. Choose where a section ends."
        raise InputError(text, name=row.cell("at"))
    point = known[fold(row.at)]
    if point in {level.name for level in built.levels}:
        text = f"“{point}” is open water. Choose a point on a pipe."
        raise InputError(text, name=row.cell("at"))
    return point


def _outlet(row: Row, built: Built) -> str:
    known = {fold(name): name for name in built.outlet_rows}
    if not fold(row.tap):
        raise InputError("Enter the outlet’s name.", name=row.cell("tap"))
    if fold(row.tap) not in known:
        text = f"There is no outlet “{plain(row.tap)}” in the table of outlets. Use its name."
        raise InputError(text, name=row.cell("tap"))
    return known[fold(row.tap)]


def _opened(row: Row, built: Built, needs_tap: bool) -> Opened:
    if needs_tap:
        return ((_outlet(row, built), 1),)
    return opened_of(built, row.open)


def _at_pump(values: Values, built: Built) -> Iterator[tuple[Reading, str]]:
    """Readings by gauge, display, line and watch at the pump."""
    opened = opened_of(built, values.during or AFTER)
    if values.vacuum is not None:
        yield Reading(SUCTION, -values.vacuum, VACUUM_ERROR, "", opened), "vacuum"
    for key, kind, share in (
        ("watts", WATTS, DISPLAY_ERROR),
        ("volts", VOLTS, VOLTS_ERROR),
        ("amps", AMPS, DISPLAY_ERROR),
    ):
        value = values.numbers[key]
        if value is not None:
            at = STATIC if kind == VOLTS else opened
            yield Reading(kind, value, max(0.05, share * value), "", at), key
    if values.deep is not None:
        yield Reading(LEVEL, values.deep, LEVEL_ERROR), "deep"
    if values.cycles is not None:
        count = values.cycles * HOUR
        error = max(STARTS_ERROR[0], STARTS_ERROR[1] * count)
        yield Reading(STARTS, count, error, "", opened), "cycles"
    for key, kind in (("fell", STANDBY), ("kept", CLOSED)):
        value = values.numbers[key]
        if value is not None:
            yield Reading(kind, value, FALL_ERROR, "", STATIC, values.wait), key
