"""What the page asks about places: plain dictionaries in and out, for the bridge to dispatch.

A reply is {"error": "", ...}, {"error": sentence, "key": the field it stands beside or ""}, or
{"missing": parts of the figures to be handed over with "take" before it is asked again}.
"""

from __future__ import annotations

import math
from functools import lru_cache
from typing import TYPE_CHECKING, Any

from calc.errors import InputError
from calc.page import entries, row_text
from calc.page.fields import Number, Rows
from calc.reading import split
from calc.sheets.parts import hourly, world_map
from calc.sheets.parts.place import FIELDS, rows_of
from calc.site.facts import NAME, SHORT
from calc.sun import places
from calc.sun.days import monthly_means
from calc.sun.files import HourlyFile
from calc.units import QUANTITIES, Reader, number_text, plain_number

if TYPE_CHECKING:
    from collections.abc import Callable

Data = dict[str, Any]

FIELD = {entry.key: entry for entry in FIELDS}
DAY = 86400.0  # s
TABLES = "the tables of this site, edition"  # with the number of their version
KEYS = {"latitude_deg": "lat", "longitude_deg": "lon", "height_m": "altitude"}
NEEDS = {"towns": ("towns",), "at": ("sun", "air"), "map": ("sun",)}
FAR = 60e3  # m to the next node of air above which it is said; our choice: cells are 100 km


def handle(request: Data) -> Data:
    """Answer one request: {"op": "place", "do": one of ``DO``, ...}.

    Returns a dictionary for JSON.  Raises KeyError for an unknown "do".
    """
    do = DO[request["do"]]
    wanted = places.missing(*NEEDS.get(request["do"], ()))
    if wanted:
        return {"error": "", "missing": list(wanted)}
    try:
        return {"error": "", **do(request)}
    except InputError as error:
        name = error.name or ""
        return {"error": error.message, "key": KEYS.get(name, name if name in FIELD else "")}


def _take(request: Data) -> Data:
    places.take(request["part"], request["text"])
    _land.cache_clear()
    return {}


def _missing(request: Data) -> Data:
    """The parts still wanted for the purpose "for": one of ``NEEDS``."""
    return {"missing": list(places.missing(*NEEDS[request["for"]]))}


def _towns(request: Data) -> Data:
    found = places.towns(request["asked"])
    return {
        "towns": [
            {
                "label": town.label,
                "name": _short(town.label),
                "lat": _degrees(town.latitude_deg),
                "lon": _degrees(town.longitude_deg),
            }
            for town in found
        ]
    }


def _short(label: str) -> str:
    """As many of a label's parts as fit into a name, from the first."""
    parts = label.split(", ")
    while len(parts) > 1 and len(", ".join(parts)) > NAME:
        parts.pop()
    return ", ".join(parts)[:NAME].strip()


def _degrees(value: float, digits: int = 2) -> str:
    """As a person would type it; 0.01 degrees are a kilometre."""
    text = f"{value:.{digits}f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text


# A position -----------------------------------------------------------------------------------


def _system(request: Data) -> str:
    return "us" if request.get("system") == "us" else "metric"


def _read(request: Data, key: str) -> float:
    """A field's text in SI. Raises InputError, in the field's words, for its key."""
    units, entry = request.get("units", {}), FIELD[key]
    assert isinstance(entry, Number)
    try:
        value, _ = entries.read(entry, request[key], _system(request), units.get(key))
    except InputError as error:
        raise InputError(error.message, name=key) from error
    return value


def _at(request: Data) -> Data:
    """The fields of a position: "lat", "lon", "altitude" ("" where not known) as typed."""
    latitude, longitude = (math.degrees(_read(request, key)) for key in ("lat", "lon"))
    height = _read(request, "altitude") if request.get("altitude", "").strip() else None
    sun = places.sunshine(latitude, longitude)
    air = places.air(latitude, longitude, height)
    texts, units = _texts(request, sun.values, air.values)
    texts |= {
        "place": _short(request.get("name", "")),
        "lat": _degrees(latitude),
        "lon": _degrees(longitude),
        "weather": "months",
        "data": f"{TABLES} {places.VERSION}",
    }
    if height is not None:
        _put(texts, units, "altitude", height, _system(request))
    said = [
        *_about_sun(latitude, longitude, sun.away_km, _system(request)),
        *_about_air(air.away_km, height, _system(request)),
    ]
    return {"texts": texts, "units": units, "said": said}


def _about_sun(latitude: float, longitude: float, away_km: float, system: str) -> list[str]:
    """What is known of the sunshine beside its figures."""
    if away_km:
        far = _distance(away_km * 1e3, system)
        return [f"This position is at sea: the sun is that of the nearest land, {far} away."]
    if _by_the_sea(latitude, longitude):
        return ["Near a coast the figures lean to those of the sea."]
    return []


def _by_the_sea(latitude: float, longitude: float) -> bool:
    """Whether one of the eight cells round about has no land."""
    for up in (-1, 0, 1):
        for on in (-1, 0, 1):
            north, east = latitude + up, (longitude + on + 180.0) % 360.0 - 180.0
            try:
                if places.sunshine(max(-90.0, min(90.0, north)), east).away_km:
                    return True
            except InputError:  # no land within three degrees of it
                return True
    return False


def _about_air(away_km: float, height: float | None, system: str) -> list[str]:
    said = []
    if away_km * 1e3 > FAR:
        far = _distance(away_km * 1e3, system)
        said.append(f"The nearest place whose air temperature we have is {far} away.")
    if height is None:
        said.append(
            "Its height is not in our figures: enter the height above sea level, then press "
            "“Use the position below”, and the air is that of its height."
        )
    return said


def _distance(metres: float, system: str) -> str:
    unit = QUANTITIES["length"].unit("mi" if system == "us" else "km")
    assert unit is not None
    return f"{number_text(unit.from_si(metres), 2)}\u00a0{unit.symbol}"


def _texts(
    request: Data, sun: tuple[float, ...], air: tuple[float, ...]
) -> tuple[dict[str, str], dict[str, str]]:
    """(texts, units) of the table of months, units in its headings. sun: J/m2 a day; air: K."""
    table, system = FIELD["months"], _system(request)
    assert isinstance(table, Rows)
    numbers = {at: one for at, one in enumerate(table.columns) if isinstance(one, Number)}
    rows = [list(row) for row in rows_of(sun, air, system)]
    for row in rows:
        for at, column in numbers.items():
            row[at] = split(row[at], column.quantity)[0]
    units = {
        f"months.{one.key}": Reader(system).unit(one.quantity).symbol for one in numbers.values()
    }
    return {"months": row_text.encode(rows)}, units


def _put(texts: dict[str, str], units: dict[str, str], key: str, value: float, system: str) -> None:
    """A number in SI as its field shows it, in the reader's usual unit."""
    entry = FIELD[key]
    assert isinstance(entry, Number)
    unit = Reader(system).unit(entry.quantity)
    texts[key], units[key] = plain_number(unit.from_si(value)), unit.symbol


# The map --------------------------------------------------------------------------------------


@lru_cache(maxsize=1)
def _land() -> tuple[str, ...]:
    return world_map.land(places.on_land())


def _map(request: Data) -> Data:
    """The map, with a mark where "lat" and "lon" can be read, and what its classes mean."""
    place: tuple[float, float] | None
    try:
        place = math.degrees(_read(request, "lat")), math.degrees(_read(request, "lon"))
    except (InputError, KeyError):
        place = None
    return {"svg": world_map.svg(_land(), place), "key": world_map.key(_system(request))}


def _touched(request: Data) -> Data:
    found = world_map.position(float(request["x"]), float(request["y"]))
    if found is None:
        raise InputError("Touch the land on the map.")
    return {"lat": _degrees(found[0], 1), "lon": _degrees(found[1], 1)}


# A file ---------------------------------------------------------------------------------------


def _hours(request: Data) -> Data:
    """Keep a file's hours; what it says of its place and months. "name": the file's own name."""
    hours = hourly.keep(request["text"])
    air = tuple(mean / DAY for mean in monthly_means(hours.air))
    texts, units = _texts(request, monthly_means(hours.level), air)
    called = hourly.station(request["text"]) or request.get("name", "").rpartition(".")[0]
    texts |= {"weather": "file", "place": called[:NAME].strip()}
    texts["data"] = f"the hourly file {request.get('name', '')}".strip()[:SHORT]
    _put_station(hours, texts, units, _system(request))
    said = ["The 8,760 hours of the file are in use until this page is closed."]
    said.append("A link holds only the means of its months.")
    if "lat" not in texts:
        said.append("It does not say where it is: enter the latitude, longitude and height below.")
    elif "altitude" not in texts:
        said.append("It does not say how high it is: enter the height above sea level below.")
    return {"texts": texts, "units": units, "said": said}


def _put_station(
    hours: HourlyFile, texts: dict[str, str], units: dict[str, str], system: str
) -> None:
    if hours.latitude is not None and hours.longitude is not None:
        texts["lat"] = _degrees(math.degrees(hours.latitude))
        texts["lon"] = _degrees(math.degrees(hours.longitude))
    if hours.altitude is not None:
        _put(texts, units, "altitude", hours.altitude, system)


DO: dict[str, Callable[[Data], Data]] = {
    "take": _take,
    "missing": _missing,
    "towns": _towns,
    "at": _at,
    "map": _map,
    "touched": _touched,
    "hours": _hours,
}
