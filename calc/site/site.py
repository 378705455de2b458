"""A whole site as plain rows: read from a dictionary or JSON text, checked, saved.

A row is a dictionary of short words.  A number may be written with its unit ("18 m", "40 psi")
or bare, in SI; it is saved with its metric unit.
"""

import json
from dataclasses import dataclass, fields, replace

from calc.errors import InputError
from calc.network import check as network_check
from calc.network.outlets import CompensatingDripper, FixedFlow, LimitedShower, Orifice, Outlet
from calc.network.parts import Device, Level, Network, Place, PumpSet, Reducer, Run
from calc.pipe import friction, pipes
from calc.pump import invented as pumps_demo
from calc.pump.curve import Point, Pump
from calc.site.rows import (
    FORMAT,
    TABLES,
    VERSION,
    DeviceRow,
    PumpRow,
    ReducerRow,
    RunRow,
    read_row,
    read_value,
    save_row,
    save_value,
)
from tests.network.every_cure import Hill


@dataclass(frozen=True)
class Site:
    """A site: its rows by table, the water's temperature (K) and the height above the sea (m)."""

    name: str
    places: tuple = ()
    waters: tuple = ()
    runs: tuple = ()
    devices: tuple = ()
    reducers: tuple = ()
    pumps: tuple = ()
    outlets: tuple = ()
    hills: tuple = ()
    temperature_k: float = 288.15
    altitude_m: float = 0.0
    note: str = ""

    def network(self):
        """The site as a ``Network``.  Raises InputError, naming the row."""
        links = [part_of(row) for row in self.runs + self.devices + self.reducers + self.pumps]
        return Network(
            tuple(Place(row.name, row.height) for row in self.places),
            tuple(Level(row.name, row.level, row.fills) for row in self.waters),
            tuple(links),
            tuple(outlet_of(row) for row in self.outlets),
            self.temperature_k,
            self.altitude_m,
        )

    def hill_sites(self):
        """Where a cistern could stand, as ``cures_try.Hill``s.  Raises InputError."""
        return tuple(
            Hill(row.name, row.join, row.level, row.length, pipes.pipe(row.kind, row.size))
            for row in self.hills
        )

    def with_open(self, names):
        """The same site with just these outlets open.  Raises InputError for an unknown name."""
        known = {row.name for row in self.outlets}
        for name in names:
            if name not in known:
                raise InputError(f"“{name}” is no outlet of this site.", name=name)
        opened = tuple(replace(row, open=row.name in names) for row in self.outlets)
        return replace(self, outlets=opened)


def part_of(row):
    """The network part of a run, device, reducer or pump row.  Raises InputError naming it."""
    try:
        return _PARTS[type(row)](row)
    except InputError as error:
        raise InputError(f"“{row.name}”: {error.message}", name=row.name) from error


def _run(row):
    pipe = pipes.pipe(row.kind, row.size)
    loss = 0.0
    for key, count in row.fittings:
        if key not in friction.BY_KEY:
            known = ", ".join(friction.BY_KEY)
            raise InputError(f"“{key}” is not a fitting known here. Use one of {known}.")
        loss += count * friction.fitting_coefficient(friction.BY_KEY[key], pipe.inside_m)
    return Run(row.name, row.start, row.end, pipe, row.length, loss, row.check)


def _device(row):
    return Device(row.name, row.start, row.end, row.flow, row.loss, row.check)


def _reducer(row):
    return Reducer(row.name, row.start, row.end, row.set, row.flow, row.loss)


def _pump(row):
    if row.curve:
        points = tuple(Point(*one, row=i + 1) for i, one in enumerate(row.curve))
        pump = Pump(row.name, points)
    elif row.pump in pumps_demo.PUMPS:
        pump = pumps_demo.PUMPS[row.pump]
    else:
        known = ", ".join(pumps_demo.PUMPS)
        raise InputError(f"“{row.pump}” is no invented pump ({known}). Give its curve instead.")
    return PumpSet(row.name, row.start, row.end, pump, row.set, row.speed, row.check, row.npsh)


_PARTS = {RunRow: _run, DeviceRow: _device, ReducerRow: _reducer, PumpRow: _pump}


def outlet_of(row):
    """The ``Outlet`` of a row.  Raises InputError naming it."""
    try:
        law = _LAWS[row.kind](row)
    except KeyError:
        known = ", ".join(_LAWS)
        text = f"“{row.name}”: “{row.kind}” is no kind of outlet. Use one of {known}."
        raise InputError(text, name=row.name) from None
    except InputError as error:
        raise InputError(f"“{row.name}”: {error.message}", name=row.name) from error
    return Outlet(row.name, row.at, law, row.count, row.open, row.wanted)


def _need(row, *columns):
    for column in columns:
        if getattr(row, column) is None:
            raise InputError(f"a {row.kind} needs its {column}. Give it.")


def _tap(row):
    _need(row, "pressure")
    return Orifice(row.flow, row.pressure)


def _shower(row):
    _need(row, "pressure", "limit")
    return LimitedShower(row.flow, row.pressure, row.limit)


def _dripper(row):
    _need(row, "pressure", "most")
    return CompensatingDripper(row.flow, row.pressure, row.most)


def _fixed(row):
    return FixedFlow(row.flow) if row.pressure is None else FixedFlow(row.flow, row.pressure)


_LAWS = {"tap": _tap, "hose": _tap, "shower": _shower, "dripper": _dripper, "fixed": _fixed}


def check(site):
    """What is wrong with a site's rows: a tuple of ``network_check.Problem``.

    Every row that cannot be made a part is named; if all can, the network's own checks follow.
    """
    found = []
    for row in site.runs + site.devices + site.reducers + site.pumps:
        found += _tried(part_of, row)
    for row in site.outlets:
        found += _tried(outlet_of, row)
    if found:
        return tuple(found)
    network = site.network()
    known = set(network.heights)
    for hill in site.hills:
        if hill.join not in known:
            text = f"“{hill.name}” would join at “{hill.join}”, which is no place here. Mend it."
            found.append(network_check.Problem(hill.name, "unknown", text))
        found += _tried(lambda row: pipes.pipe(row.kind, row.size), hill)
    return (*network_check.problems(network), *found)


def _tried(make, row):
    try:
        make(row)
    except InputError as error:
        return [network_check.Problem(row.name, "row", error.message)]
    return []


def read(data):
    """A ``Site`` from a dictionary, as ``save`` gives it.

    Raises InputError, naming table, row and column, for what cannot be read.
    """
    if not isinstance(data, dict) or data.get("format") != FORMAT:
        raise InputError(f"This is not a site: it has no “format” of “{FORMAT}”.")
    if data.get("version") != VERSION:
        raise InputError(f"This site is of version {data.get('version')!r}; {VERSION} is known.")
    allowed = {"format", "version", "name", "water", "altitude", "note", *TABLES}
    for key in data:
        if key not in allowed:
            raise InputError(f"“{key}” is no part of a site. Leave it out.", name=key)
    tables = {}
    for key in TABLES:
        rows = data.get(key, [])
        if not isinstance(rows, list):
            raise InputError(f"“{key}” must be a list of rows.", name=key)
        tables[key] = tuple(read_row(key, i, row) for i, row in enumerate(rows))
    water = read_value(data.get("water", 288.15), "temperature", "water")
    altitude = read_value(data.get("altitude", 0.0), "length", "altitude")
    name, note = str(data.get("name", "Site")), str(data.get("note", ""))
    return Site(name, **tables, temperature_k=water, altitude_m=altitude, note=note)


def save(site):
    """A ``Site`` as a dictionary of plain rows: ``read`` turned round."""
    data = {
        "format": FORMAT,
        "version": VERSION,
        "name": site.name,
        "water": save_value(site.temperature_k, "temperature"),
        "altitude": save_value(site.altitude_m, "length"),
    }
    if site.note:
        data["note"] = site.note
    for key in TABLES:
        rows = getattr(site, key)
        if rows:
            data[key] = [save_row(key, row) for row in rows]
    return data


def read_json(text):
    """A ``Site`` from JSON text.  Raises InputError where it is not JSON or no site."""
    try:
        data = json.loads(text)
    except json.JSONDecodeError as error:
        where = f"line {error.lineno}, column {error.colno}"
        raise InputError(f"This is not JSON: {error.msg} at {where}.") from error
    return read(data)


def save_json(site):
    """JSON text of a ``Site``, one row a line."""
    data, lines = save(site), []
    for key, value in data.items():
        if key in TABLES:
            rows = ",\n".join("    " + json.dumps(row, ensure_ascii=False) for row in value)
            lines.append(f"  {json.dumps(key)}: [\n{rows}\n  ]")
        else:
            lines.append(f"  {json.dumps(key)}: {json.dumps(value, ensure_ascii=False)}")
    return "{\n" + ",\n".join(lines) + "\n}\n"


def columns(table):
    """Names of a table's columns, in order."""
    return tuple(field.name for field in fields(TABLES[table]))
