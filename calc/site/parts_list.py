"""The staff's own parts: pumps by their curves, panels, batteries, controllers; read once.

A list is kept by its owner and never sent; a link carries the curve it used, as the table that
``pump.curve`` holds, so that an old letter keeps its figures.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from calc.errors import InputError
from calc.pump.curve import DisplacementPump, Pump
from calc.pump.pasted import read_points
from calc.reading import seen
from calc.site.facts import GIVEN, Fact, Slot, choice, quantity, text
from calc.site.file import Data, loaded
from calc.site.rows import BY_TABLE, fold
from calc.site.site import Site

FORMAT, VERSION = "springline-parts", 1
LARGEST = 500_000  # characters of a list; our choice
MOST, POINTS = 200, 60  # parts of a kind, and points of a curve; our choice
NAME = 60  # characters of a part's name; our choice

_PUMP = (
    text("name", "", "Pump", NAME),
    choice("works", "", "How it works",
           (("centrifugal", "Centrifugal"), ("diaphragm", "Diaphragm")), "centrifugal"),
    quantity("least_flow", "", "Least flow", "flow", 0.0, 0.05),
    text("note", "", "Note", 200),
)  # fmt: skip
_POINT = (
    quantity("flow", "", "Flow", "flow", 0.0, 0.1),
    quantity("head", "", "Head", "head", 0.0, 1000.0),
    quantity("power", "", "Power drawn", "power", 0.0, 1e5),
    quantity("efficiency", "", "Efficiency", "percent", 0.0, 0.999),
    quantity("npsh", "", "NPSH required", "head", 0.0, 50.0),
)
_OTHERS = ("panels", "batteries", "controllers")
_HEADINGS = {
    "flow": "Flow L/min", "head": "Head m", "power": "Power W", "efficiency": "Efficiency %",
    "npsh": "NPSH m",
}  # fmt: skip
_FACTOR = {"flow": 60_000.0, "head": 1.0, "power": 1.0, "efficiency": 100.0, "npsh": 1.0}


@dataclass(frozen=True)
class PumpPart:
    """A pump of the list. points: SI by column, one a row; least_flow: m3/s, None: not told."""

    name: str
    works: str
    points: tuple[dict[str, float], ...]
    least_flow: float | None = None
    note: str = ""

    @property
    def table(self) -> str:
        """Its curve as the table a reader could paste: what a link carries.

        Raises nothing.  Source: none; twelve figures, so that it reads back the same.
        """
        columns = [key for key in _HEADINGS if any(key in point for point in self.points)]
        heading = "; ".join(_HEADINGS[key] for key in columns)
        rows = ("; ".join(_figure(point, key) for key in columns) for point in self.points)
        return "\n".join((heading, *rows))

    def pump(self) -> Pump:
        """The ``Pump`` of its curve.  Raises InputError, naming the row, for no falling curve."""
        kind = DisplacementPump if self.works == "diaphragm" else Pump
        return kind(self.name, read_points(self.table))


def _figure(point: dict[str, float], key: str) -> str:
    return f"{_FACTOR[key] * point[key]:.12g}" if key in point else "-"


@dataclass(frozen=True)
class PartsList:
    """pumps; others: rows of facts of panels, batteries and controllers, by table."""

    name: str = ""
    pumps: tuple[PumpPart, ...] = ()
    others: dict[str, tuple[dict[str, Fact], ...]] | None = None

    def pump(self, name: str) -> PumpPart:
        """The pump of that name, whatever its capitals.  Raises InputError where there is none."""
        for part in self.pumps:
            if fold(part.name) == fold(name):
                return part
        raise InputError(f"“{name}” is not a pump of this list.", name="pump")


@dataclass(frozen=True)
class ListRead:
    """A list read: None where there are errors; errors, notes: sentences."""

    parts: PartsList | None
    errors: tuple[str, ...] = ()
    notes: tuple[str, ...] = ()


def read(given: str) -> ListRead:
    """A list's text, or every fault in it.  Raises nothing."""
    try:
        data = loaded(given, "list", LARGEST)
    except InputError as error:
        return ListRead(None, (error.message,))
    if not isinstance(data, dict) or data.get("format") != FORMAT:
        return ListRead(None, (f"This is not a parts list: its “format” is not “{FORMAT}”.",))
    if data.get("version") != VERSION:
        return ListRead(None, (f"Lists of version {data.get('version')!r} cannot be read.",))
    return _Reading(data).list_read()


class _Reading:
    """One reading of a list, with what was found wrong on the way."""

    def __init__(self, data: Data) -> None:
        self.data = data
        self.errors: list[str] = []
        self.notes: list[str] = []

    def list_read(self) -> ListRead:
        for key in self.data:
            if key not in ("format", "version", "name", "pumps", *_OTHERS):
                self.notes.append(f"“{key}” is not known here and was left out.")
        every = [self._pump(row, where) for row, where in self._each("pumps")]
        pumps = tuple(part for part in every if part is not None)
        others = {key: self._others(key) for key in _OTHERS}
        self._twice(part.name for part in pumps)
        if self.errors:
            return ListRead(None, tuple(self.errors), tuple(self.notes))
        name = seen(str(self.data.get("name", "")))[:NAME]
        return ListRead(PartsList(name, pumps, others), (), tuple(self.notes))

    def _each(self, key: str) -> list[tuple[Data, str]]:
        rows = self.data.get(key, [])
        if not isinstance(rows, list) or len(rows) > MOST:
            self.errors.append(f"“{key}” must be a list of up to {MOST} parts.")
            return []
        found = []
        for number, row in enumerate(rows, 1):
            where = f"“{key}”, part {number}"
            if isinstance(row, dict):
                name = seen(str(row.get("name") or ""))
                found.append((row, f"{where} (“{name}”)" if name else where))
            else:
                self.errors.append(f"{where} must be an object.")
        return found

    def _twice(self, names: Iterable[str]) -> None:
        known = set()
        for name in names:
            if fold(name) in known:
                self.errors.append(f"Two pumps are called “{name}”. Give each its own name.")
            known.add(fold(name))

    def _cells(
        self, slots: tuple[Slot, ...], row: Data, where: str, more: tuple[str, ...] = ()
    ) -> Data:
        """Values in SI by column, of those given and right; the rest is said."""
        found, known = {}, {slot.key: slot for slot in slots}
        for key, value in row.items():
            if key in more:
                continue
            if key not in known:
                self.notes.append(f"{where}: “{key}” is not known here and was left out.")
                continue
            try:
                if not isinstance(value, str):
                    raise InputError("write text such as “12 m”.")
                found[key] = known[key].read(value)
            except InputError as error:
                self.errors.append(f"{where}, “{key}”: {error.message}")
        return found

    def _pump(self, row: Data, where: str) -> PumpPart | None:
        before = len(self.errors)
        cells = self._cells(_PUMP, row, where, ("points",))
        points = row.get("points")
        if not cells.get("name"):
            self.errors.append(f"{where}: “name” is missing.")
        if not isinstance(points, list) or not 3 <= len(points) <= POINTS:
            self.errors.append(f"{where}: “points” must be a list of 3 to {POINTS} points.")
            return None
        read = tuple(self._point(one, f"{where}, point {at}") for at, one in enumerate(points, 1))
        if len(self.errors) > before:
            return None
        part = PumpPart(
            cells["name"],
            cells.get("works", "centrifugal"),
            read,
            cells.get("least_flow"),
            cells.get("note", ""),
        )
        try:
            part.pump()
        except InputError as error:
            self.errors.append(f"{where}: {error.message}")
        return part

    def _point(self, point: object, where: str) -> dict[str, float]:
        if not isinstance(point, dict):
            self.errors.append(f"{where} must be an object of “flow”, “head” and so on.")
            return {}
        for key in ("flow", "head"):
            if key not in point:
                self.errors.append(f"{where}: “{key}” is missing.")
        return self._cells(_POINT, point, where)

    def _others(self, key: str) -> tuple[dict[str, Fact], ...]:
        columns = BY_TABLE[key].columns
        found = []
        for row, where in self._each(key):
            self._cells(columns, row, where)
            kept = {c.key: Fact(c.tidied(row[c.key])) for c in columns
                    if isinstance(row.get(c.key), str)}  # fmt: skip
            found.append(kept)
        return tuple(found)


def with_pump(site: Site, part: PumpPart) -> Site:
    """The site with a pump of the list: its name, and the curve itself."""
    site = site.put("pump.id", Fact(part.name, GIVEN)).put("pump.curve", Fact(part.table))
    site = site.put("pump.works", Fact(part.works))
    if part.least_flow is None:
        return site
    return site.put("pump.least_flow", Fact(f"{part.least_flow * 60_000:.12g} L/min"))
