"""Where a place is and what its months are like: towns by name, sunshine and air by position.

The figures lie in parts, texts that a page fetches when it wants them and hands over with ``take``:
nothing here opens a file.  ``scripts/make_places.py`` writes them and says where they are from.
"""

from __future__ import annotations

import math
import re
import unicodedata
from dataclasses import dataclass
from functools import lru_cache
from typing import TYPE_CHECKING

from calc.errors import InputError, require
from calc.units import CELSIUS

if TYPE_CHECKING:
    from collections.abc import Iterator

PARTS = ("sun", "air", "towns")
VERSION = "1"  # of the parts: a place keeps it with its figures
BASE, FIRST = 89, 35  # digits of a number, the first of their signs: "#" to "{"
MIDDLE = 79  # sign of a difference of 0
ESCAPE, NEXT = "~", "!"  # a whole number follows; the next cell, without a gap
CELLS = 360  # degrees round
RISE = 300  # added to whole numbers, so that none is below 0
KWH = 3.6e6  # J
LAPSE = 5.2e-3  # K/m: the rate with the least error over the nodes of the source
NEAR = 15.0  # km added to distances, so that no node counts for all
NODES, FURTHEST = 4, 800.0  # nodes counted, km
SEA = 3  # degrees looked round about for land
ROUND = 6371.0  # km, mean radius of the Earth: IUGG
LATITUDES, LONGITUDES = (-90.0, 90.0), (-180.0, 180.0)
MOST_FOUND = 8

_TEXTS: dict[str, str] = {}


@dataclass(frozen=True)
class Town:
    """A town of the gazetteer. region: its state or province, "" where not known."""

    name: str
    region: str
    country: str
    latitude_deg: float
    longitude_deg: float
    size: int  # 0 to 7, the larger the more people

    @property
    def label(self) -> str:
        """Such as "Taos, New Mexico, United States"."""
        return ", ".join(part for part in (self.name, self.region, self.country) if part)


@dataclass(frozen=True)
class Months:
    """Twelve monthly means. away_km: from the place to what they were measured for."""

    values: tuple[float, ...]
    away_km: float


@dataclass(frozen=True)
class _Node:
    latitude_deg: float
    longitude_deg: float
    height_m: float
    means: tuple[float, ...]


def take(part: str, text: str) -> None:
    """Keep a part's text.  Raises KeyError for no such part, InputError for one of another kind."""
    if part not in PARTS:
        raise KeyError(part)
    if not text.startswith(f"{part} {VERSION}\n"):
        raise InputError("These figures are of another release: reload the page.")
    if _TEXTS.get(part) != text:
        _TEXTS[part] = text
        for kept in (_rows, _nodes, _towns):
            kept.cache_clear()


def missing(*parts: str) -> tuple[str, ...]:
    """Those of ``parts`` that are not here yet."""
    return tuple(part for part in parts if part not in _TEXTS)


def distance_km(latitude: float, longitude: float, other: float, along: float) -> float:
    """Between two points on the Earth, along its surface.

    a = sin^2(dphi/2) + cos phi_1 cos phi_2 sin^2(dlambda/2), d = 2 R asin(sqrt(a))
    latitude: degrees, of one; longitude: degrees, of one; other: degrees, latitude of the second;
    along: degrees, longitude of the second.  Returns a number of km.  Raises nothing.
    Source: R. W. Sinnott, Sky and Telescope 68 (1984) 159 (haversine).
    """
    up, across = math.radians(other - latitude), math.radians(along - longitude)
    both = math.cos(math.radians(latitude)) * math.cos(math.radians(other))
    share = math.sin(up / 2) ** 2 + both * math.sin(across / 2) ** 2
    return 2 * ROUND * math.asin(min(1.0, math.sqrt(share)))


# Sunshine and air ------------------------------------------------------------------------------


def sunshine(latitude_deg: float, longitude_deg: float) -> Months:
    """Mean daily radiation on the horizontal of each month, J/m2: that of the cell of one degree.

    latitude_deg: -90 to 90, north above 0; longitude_deg: -180 to 180, east above 0.  At sea the
    nearest land within three degrees.  Returns ``Months``.
    Raises RangeError outside, InputError where no land is near.  Source: see ``make_places``.
    """
    _position(latitude_deg, longitude_deg)
    row, cell = math.floor(latitude_deg), math.floor(longitude_deg)
    found = _cell(row, cell)
    if found is not None:
        return Months(tuple(KWH * one for one in found), 0.0)
    near = min(
        (
            (distance_km(latitude_deg, longitude_deg, row + up + 0.5, cell + on + 0.5), up, on)
            for up in range(-SEA, SEA + 1)
            for on in range(-SEA, SEA + 1)
            if _cell(row + up, cell + on) is not None
        ),
        default=None,
    )
    if near is None:
        raise InputError(
            "There is no land near this position in our figures. Enter twelve numbers of your own.",
            name="latitude_deg",
        )
    away, up, on = near
    return Months(tuple(KWH * one for one in _cell(row + up, cell + on) or ()), away)


def on_land() -> Iterator[tuple[int, int, float]]:
    """(latitude, longitude, J/m2 a day, mean of the months) of every cell of one degree on land.

    latitude, longitude: whole degrees, of the cell's southern and western edge.
    """
    for row in _rows():
        for cell, months in _row(row).items():
            yield row, cell - 180, KWH * sum(months) / 12


def _cell(row: int, cell: int) -> tuple[float, ...] | None:
    return _row(row).get((cell + 180) % CELLS)


@lru_cache(maxsize=16)
def _row(row: int) -> dict[int, tuple[float, ...]]:
    """{degrees east of -180: twelve kWh/m2 a day} of the cells of one latitude."""
    text, at, cell, before = _rows().get(row, ""), 0, -1, [0] * 12
    found: dict[int, tuple[float, ...]] = {}
    while at < len(text):
        if text[at] == NEXT:
            cell, at = cell + 1, at + 1
        else:
            cell, at = cell + 1 + _number(text[at : at + 2]), at + 2
        before, at = _means(text, at, before)
        found[cell] = tuple(one / 100 for one in before)
    return found


@lru_cache(maxsize=1)
def _rows() -> dict[int, str]:
    _row.cache_clear()
    parted = (line.partition(" ") for line in _lines("sun"))
    return {int(row): cells for row, _, cells in parted}


def air(latitude_deg: float, longitude_deg: float, height_m: float | None = None) -> Months:
    """Mean air temperature of each month, K, of the nearest nodes, moved to the place's height.

    T = sum w_i (T_i + 0.0052 (z_i - z)) / sum w_i, w_i = 1 / (d_i + 15 km)^2
    latitude_deg, longitude_deg: as ``sunshine``; height_m: z, m above the sea, -500 to 6000; None:
    the nodes' own.  Returns ``Months``; away_km: to the nearest node.
    Raises RangeError outside, InputError where no node is within 800 km.
    Source: inverse-distance weights (our choice); lapse rate fitted to the nodes.
    """
    _position(latitude_deg, longitude_deg)
    if height_m is not None:
        require("height_m", height_m, -500.0, 6000.0, "length")
    near = sorted(
        (distance_km(latitude_deg, longitude_deg, node.latitude_deg, node.longitude_deg), at)
        for at, node in enumerate(_nodes())
        if abs(node.latitude_deg - latitude_deg) < 7.5
    )[:NODES]
    if not near or near[0][0] > FURTHEST:
        raise InputError(
            "There is no land near this position in our figures. Enter twelve numbers of your own.",
            name="latitude_deg",
        )
    weights = [1 / (away + NEAR) ** 2 for away, _ in near]
    nodes = [_nodes()[at] for _, at in near]
    means = []
    for month in range(12):
        whole = 0.0
        for weight, node in zip(weights, nodes, strict=True):
            moved = 0.0 if height_m is None else LAPSE * (node.height_m - height_m)
            whole += weight * (node.means[month] + moved)
        means.append(whole / sum(weights) + CELSIUS)
    return Months(tuple(means), near[0][0])


@lru_cache(maxsize=1)
def _nodes() -> tuple[_Node, ...]:
    found, before = [], [0] * 12
    for line in _lines("air"):
        latitude, longitude, height, means = line.split(" ", 3)
        before, _ = _means(means, 0, before)
        values = tuple(one / 5 for one in before)
        found.append(_Node(float(latitude), float(longitude), float(height), values))
    return tuple(found)


def _position(latitude_deg: float, longitude_deg: float) -> None:
    remedy = "North is above 0, south below."
    require("latitude_deg", latitude_deg, *LATITUDES, "number", remedy)
    require("longitude_deg", longitude_deg, *LONGITUDES, "number", "East is above 0, west below.")


# Towns -----------------------------------------------------------------------------------------


def towns(asked: str) -> tuple[Town, ...]:
    """The towns that a text may mean, the likeliest first: "taos", "Springfield, Illinois".

    Each word begins a word of the town, its region or country, the first one of its name; accents
    and capitals do not count.  Returns up to eight ``Town``, none of an empty text.
    Raises nothing.
    """
    words = re.findall(r"[^\s,;]+", _plain(asked))
    if not words:
        return ()
    whole = _plain(asked.partition(",")[0]).strip()
    found = []
    for town, name, place in _towns():
        if not _begins(words[0], name) or not all(_begins(word, place) for word in words[1:]):
            continue
        rank = 0 if name == whole else 1 if name.startswith(whole) else 2
        found.append((rank, -town.size, town.label, town))
    found.sort(key=lambda one: one[:3])
    return tuple(town for *_, town in found[:MOST_FOUND])


def _begins(word: str, text: str) -> bool:
    return text.startswith(word) or f" {word}" in text


def _plain(text: str) -> str:
    parted = unicodedata.normalize("NFKD", text)
    return "".join(one for one in parted if not unicodedata.combining(one)).casefold()


@lru_cache(maxsize=1)
def _towns() -> tuple[tuple[Town, str, str], ...]:
    """(town, its name made plain, name, region and country made plain)."""
    found = []
    for line in _lines("towns"):
        country, region, codes, *names = line.split("|")
        rest = f"{_plain(region)} {_plain(country)}"
        for at, name in enumerate(names):
            number, size = divmod(_number(codes[5 * at : 5 * at + 5]), 8)
            north, east = divmod(number, 36001)
            town = Town(name, region, country, round(north / 100 - 90, 2),
                        round(east / 100 - 180, 2), size)  # fmt: skip
            plain = _plain(name)
            found.append((town, plain, f"{plain} {rest}"))
    return tuple(found)


# The texts -------------------------------------------------------------------------------------


def _lines(part: str) -> Iterator[str]:
    """A part's lines without its head.  Raises KeyError where it is not here."""
    yield from _TEXTS[part].split("\n")[1:]


def _number(digits: str) -> int:
    """A whole number of 0 or more, its lowest digit first."""
    return sum((ord(sign) - FIRST) * BASE**at for at, sign in enumerate(digits))


def _means(text: str, at: int, before: list[int]) -> tuple[list[int], int]:
    """(twelve whole numbers, where the text goes on), each the difference from one before."""
    found = []
    for last in before:
        if text[at] == ESCAPE:
            found.append(_number(text[at + 1 : at + 3]) - RISE)
            at += 3
        else:
            found.append(last + ord(text[at]) - MIDDLE)
            at += 1
    return found, at
