"""The tables of a site: what each row holds, and how a cell is read and saved.

Every field says its quantity; SI inside.  ``None`` stands for an empty cell.
"""

import math
from dataclasses import MISSING, dataclass, field, fields

from calc.errors import InputError
from calc.units import QUANTITIES, parse

FORMAT, VERSION = "springline-site", 1
LONGEST = 14  # characters of a number and its unit before another unit is tried


def _cell(quantity, default=MISSING):
    return field(default=default, metadata={"quantity": quantity})


@dataclass(frozen=True)
class PlaceRow:
    """A point at a height, m above the site's datum."""

    name: str = _cell("text")
    height: float = _cell("length")


@dataclass(frozen=True)
class WaterRow:
    """Open water: well, cistern or tank, at the level it stands while running, m."""

    name: str = _cell("text")
    kind: str = _cell("text")
    level: float = _cell("length")
    fills: bool = _cell("yes", False)


@dataclass(frozen=True)
class RunRow:
    """A length of pipe; fittings: (key of ``friction.BY_KEY``, count) pairs."""

    name: str = _cell("text")
    start: str = _cell("text")
    end: str = _cell("text")
    kind: str = _cell("text")
    size: str = _cell("text")
    length: float = _cell("length")
    fittings: tuple = _cell("counts", ())
    check: bool = _cell("yes", False)


@dataclass(frozen=True)
class DeviceRow:
    """A filter, meter or valve: its loss (m of head) at a flow."""

    name: str = _cell("text")
    start: str = _cell("text")
    end: str = _cell("text")
    kind: str = _cell("text")
    flow: float = _cell("flow")
    loss: float = _cell("head")
    check: bool = _cell("yes", False)


@dataclass(frozen=True)
class ReducerRow:
    """A pressure reducer: set pressure, and its loss wide open at a flow."""

    name: str = _cell("text")
    start: str = _cell("text")
    end: str = _cell("text")
    set: float = _cell("pressure")
    flow: float = _cell("flow")
    loss: float = _cell("head")


@dataclass(frozen=True)
class PumpRow:
    """A pump: a key of ``pumps_demo.PUMPS``, or a curve of (flow, head) points."""

    name: str = _cell("text")
    start: str = _cell("text")
    end: str = _cell("text")
    pump: str = _cell("text", "")
    curve: tuple = _cell("curve", ())
    set: float | None = _cell("pressure", None)
    speed: float = _cell("percent", 1.0)
    check: bool = _cell("yes", True)
    npsh: float | None = _cell("head", None)


@dataclass(frozen=True)
class OutletRow:
    """An outlet at a place; kind: tap, hose, shower, dripper or fixed.

    flow at pressure; limit: most flow of a shower; most: highest pressure of a dripper;
    wanted: running pressure its user is content with.
    """

    name: str = _cell("text")
    at: str = _cell("text")
    kind: str = _cell("text")
    flow: float = _cell("flow")
    pressure: float | None = _cell("pressure", None)
    limit: float | None = _cell("flow", None)
    most: float | None = _cell("pressure", None)
    count: int = _cell("whole", 1)
    open: bool = _cell("yes", True)
    wanted: float | None = _cell("pressure", None)


@dataclass(frozen=True)
class HillRow:
    """Where a cistern could stand: its highest level (m) and the pipe that would join it."""

    name: str = _cell("text")
    join: str = _cell("text")
    level: float = _cell("length")
    length: float = _cell("length")
    kind: str = _cell("text")
    size: str = _cell("text")


TABLES = {
    "places": PlaceRow,
    "waters": WaterRow,
    "runs": RunRow,
    "devices": DeviceRow,
    "reducers": ReducerRow,
    "pumps": PumpRow,
    "outlets": OutletRow,
    "hills": HillRow,
}


def read_row(table, index, row):
    """A row of a table from a dictionary.  Raises InputError naming table, row and column."""
    kind = TABLES[table]
    if not isinstance(row, dict):
        raise InputError(f"Row {index + 1} of “{table}” is not a row of named cells.", name=table)
    where = f"Row {index + 1} of “{table}” (“{row.get('name', '')}”)"
    known = {one.name: one for one in fields(kind)}
    for key in row:
        if key not in known:
            names = ", ".join(known)
            raise InputError(f"{where}: “{key}” is no column here. Use {names}.", name=table)
    cells = {}
    for name, one in known.items():
        if row.get(name) is not None:
            cells[name] = read_value(row[name], one.metadata["quantity"], f"{where}, {name}")
        elif one.default is MISSING:
            raise InputError(f"{where}: “{name}” is missing. Give it.", name=table)
    return kind(**cells)


def read_value(value, quantity, where):
    """A cell as SI number, text, yes or no, whole number, counts or curve.

    value: as in JSON; quantity: a key of ``units.QUANTITIES`` or "text", "yes", "whole",
    "counts", "curve"; where: words for the error.  Raises InputError starting with them.
    """
    if quantity in _READERS:
        return _READERS[quantity](value, where)
    if isinstance(value, bool) or not isinstance(value, (int, float, str)):
        raise InputError(f"{where}: {value!r} is not a number. Write one, such as “12 m”.")
    if isinstance(value, str):
        try:
            return parse(value, quantity).value
        except InputError as error:
            raise InputError(f"{where}: {error.message}", name=error.name) from error
    if not math.isfinite(value):
        raise InputError(f"{where}: {value!r} is not a number. Write one, such as “12 m”.")
    return float(value)


def _text(value, where):
    if not isinstance(value, str) or (not value.strip() and not where.endswith("pump")):
        raise InputError(f"{where}: {value!r} is not a word. Write one.")
    return value.strip()


def _yes(value, where):
    if not isinstance(value, bool):
        raise InputError(f"{where}: {value!r} is neither true nor false. Write one of them.")
    return value


def _whole(value, where):
    if isinstance(value, bool) or not isinstance(value, int):
        raise InputError(f"{where}: {value!r} is not a whole number. Write one.")
    return value


def _counts(value, where):
    if not isinstance(value, dict):
        raise InputError(f"{where}: write fittings by name and number, as {{'elbow90': 4}}.")
    pairs = tuple((key, _whole(count, f"{where}, {key}")) for key, count in value.items())
    if any(count < 0 for _, count in pairs):
        raise InputError(f"{where}: a number of fittings is below zero. Mend it.")
    return pairs


def _curve(value, where):
    if not isinstance(value, list):
        raise InputError(f"{where}: write a list of [flow, head] pairs.")
    points = []
    for i, pair in enumerate(value):
        if not isinstance(pair, list) or len(pair) != 2:
            raise InputError(f"{where}, point {i + 1}: write a pair [flow, head].")
        here = f"{where}, point {i + 1}"
        points.append((read_value(pair[0], "flow", here), read_value(pair[1], "head", here)))
    return tuple(points)


_READERS = {"text": _text, "yes": _yes, "whole": _whole, "counts": _counts, "curve": _curve}


def save_row(table, row):
    """A row as a dictionary of plain cells; those at their default are left out."""
    cells = {}
    for one in fields(TABLES[table]):
        value = getattr(row, one.name)
        if one.default is MISSING or value != one.default:
            cells[one.name] = save_value(value, one.metadata["quantity"])
    return cells


def save_value(value, quantity):
    """A cell as it is written: numbers with their metric unit, or another that writes shorter."""
    if quantity in ("text", "yes", "whole") or value is None:
        return value
    if quantity == "counts":
        return dict(value)
    if quantity == "curve":
        return [[save_value(flow, "flow"), save_value(head, "head")] for flow, head in value]
    kind = QUANTITIES[quantity]
    text = _written(value, kind.default("metric"))
    if len(text) > LONGEST:
        text = min((text, *(_written(value, unit) for unit in kind.units)), key=len)
    return text


def _written(value, unit):
    """The shortest decimals that read back as the same number, and the unit."""
    number = unit.from_si(value)
    for digits in range(1, 18):
        text = f"{number:.{digits}g}"
        if unit.to_si(float(text)) == value:
            break
    plain = f"{float(text):.15g}"  # 60, where fewer digits are written 6e+01
    if float(plain) == float(text):
        text = min(plain, text, key=len)
    return f"{text} {unit.symbol}".strip()
