"""Places as the page asks about them: a town, a position, a touch on the map, an hourly file."""

import gzip
import json
import re
from pathlib import Path
from xml.etree import ElementTree

import pytest

from calc import bridge
from calc.page import row_text
from calc.page.state import State, filled_rows
from calc.sheets.parts import hourly, world_map
from calc.sheets.parts.place import FIELDS, MONTHS
from calc.sun import places
from tests.sun.test_files import epw, plain, tmy3
from tests.sun.test_places import text

TABLE = next(entry for entry in FIELDS if entry.key == "months")
TAOS = {"lat": "36.41", "lon": "-105.57"}
TUCSON = Path(__file__).parents[1] / "sun" / "data" / "tucson.csv.gz"
MOST = 40_000  # bytes of the map: a phone draws it at once


def ask(do, **more):
    request = {"op": "place", "sheet": "panels", "do": do, **more}
    return json.loads(bridge.handle(json.dumps(request)))


@pytest.fixture(autouse=True)
def here():
    for part in places.PARTS:
        assert ask("take", part=part, text=text(part)) == {"error": ""}
    hourly.forget()


def months(reply):
    """(sun, air) of the twelve months as they stand in the table, in the units of its headings."""
    rows = row_text.decode(reply["texts"]["months"])
    assert [row[0] for row in rows] == [str(at) for at in range(1, 13)]
    return [float(row[1]) for row in rows], [float(row[2]) for row in rows]


# The parts ----------------------------------------------------------------------------------------


@pytest.mark.parametrize("do, wanted", [("towns", "towns"), ("at", "sun air"), ("map", "sun")])
def test_what_is_missing_is_asked_for_before_anything_else(do, wanted, monkeypatch):
    monkeypatch.setattr(places, "_TEXTS", {})
    assert ask(do) == {"error": "", "missing": wanted.split()}
    assert ask("missing", **{"for": do})["missing"] == wanted.split()


def test_figures_of_another_release_are_refused():
    assert "another release" in ask("take", part="sun", text="sun 0\n")["error"]


# Towns --------------------------------------------------------------------------------------------


def test_a_town_is_offered_with_its_position():
    first = ask("towns", asked="taos, new")["towns"][0]
    assert first["label"] == "Taos, New Mexico, United States"
    assert (first["lat"], first["lon"]) == ("36.41", "-105.57")


@pytest.mark.parametrize("asked", ["springfield", "san", "llan", "santa"])
def test_the_name_of_a_town_fits_into_its_field(asked):
    found = ask("towns", asked=asked)["towns"]
    assert 1 < len(found) <= 8
    for town in found:
        assert 0 < len(town["name"]) <= FIELDS[0].longest
        assert town["label"].startswith(town["name"])


# A position ---------------------------------------------------------------------------------------


@pytest.mark.parametrize("system", ["metric", "us"])
def test_the_months_read_back_as_the_figures_of_the_place(system):
    reply = ask("at", **TAOS, altitude="2120", units={"altitude": "m"}, system=system)
    sun, air = places.sunshine(36.41, -105.57), places.air(36.41, -105.57, 2120.0)
    state = State(system, reply["texts"], reply["units"])
    rows = filled_rows(TABLE, state.text(TABLE), system)
    units = [reply["units"][f"months.{key}"] for key in ("sun", "air")]
    for at, row in enumerate(rows):
        for column, unit, value in zip(
            TABLE.columns[1:], units, (sun.values[at], air.values[at]), strict=True
        ):
            place = TABLE.columns.index(column)
            cell = bridge.parse(row[place], column.quantity, unit)
            assert cell.value == pytest.approx(value, rel=3e-3)
    assert len(rows) == len(MONTHS)


def test_us_readers_get_their_units():
    reply = ask("at", **TAOS, altitude="7000", system="us")
    assert reply["units"]["months.air"] == "°F" and reply["units"]["altitude"] == "ft"
    assert reply["texts"]["altitude"] == "7000"
    assert min(months(reply)[1]) > 20  # °F; the same in °C would freeze


def test_a_higher_place_is_colder_and_as_sunny():
    low, high = (months(ask("at", **TAOS, altitude=height)) for height in ("1500", "2500"))
    assert low[0] == high[0]
    # 5.2 K in 1 km; each is written to 0.1
    assert all(
        one - other == pytest.approx(5.2, abs=0.11)
        for one, other in zip(low[1], high[1], strict=True)
    )


def test_a_height_that_is_not_known_stays_as_it_stands_and_is_asked_for():
    reply = ask("at", **TAOS)
    assert "altitude" not in reply["texts"]
    assert "enter the height" in " ".join(reply["said"])
    assert "enter the height" not in " ".join(ask("at", **TAOS, altitude="2120")["said"])


def test_months_take_the_place_of_a_file():
    assert ask("at", **TAOS)["texts"]["weather"] == "months"


def test_the_form_says_where_its_figures_are_from():
    looked_up = ask("at", **TAOS)["texts"]["data"]
    assert looked_up == f"the tables of this site, edition {places.VERSION}"
    read = ask("hours", text="\n".join(plain()), name="own year.csv")["texts"]["data"]
    assert read == "the hourly file own year.csv"


@pytest.mark.parametrize(
    "lat, lon, said",
    [  # a cape, an inland town, a bay; positions from memory
        ("-33.87", "151.21", "Near a coast"),
        ("36.41", "-105.57", None),
        ("46", "-3", "at sea"),
    ],
)
def test_coast_and_sea_are_told(lat, lon, said):
    told = " ".join(ask("at", lat=lat, lon=lon, altitude="0")["said"])
    assert said in told if said else "coast" not in told and "sea" not in told


def test_how_far_off_the_air_was_measured_is_told_in_the_readers_units():
    told = [" ".join(ask("at", **TAOS, system=one)["said"]) for one in ("metric", "us")]
    km = float(re.search(r"([\d.]+)\u00a0km", told[0])[1])
    miles = float(re.search(r"([\d.]+)\u00a0mi", told[1])[1])
    assert km == pytest.approx(places.air(36.41, -105.57).away_km, rel=0.05)
    assert miles == pytest.approx(km / 1.609, rel=0.05)


@pytest.mark.parametrize(
    "given, key, word",
    [
        ({"lat": "95", "lon": "0"}, "lat", "Latitude"),
        ({"lat": "-90.5", "lon": "0"}, "lat", "more"),
        ({"lat": "0", "lon": "181"}, "lon", "Longitude"),
        ({"lat": "north", "lon": "0"}, "lat", "number"),
        ({"lat": "", "lon": "0"}, "lat", "Enter"),
        ({**TAOS, "altitude": "9000"}, "altitude", "Height"),
        ({"lat": "0", "lon": "-30"}, "lat", "no land"),
    ],
)
def test_what_cannot_be_used_is_said_beside_its_field(given, key, word):
    reply = ask("at", **given)
    assert reply["key"] == key and word in reply["error"]


# The map ------------------------------------------------------------------------------------------


def world(**more):
    svg = ask("map", **more)["svg"]
    return ElementTree.fromstring(svg), svg


def covered(paths):
    """{(latitude, longitude): class} of the cells that the paths of the map draw."""
    found = {}
    for at, path in enumerate(paths):
        for x, y, long in re.findall(r"M(\d+) ([\d.]+)h(\d+)", path):
            north, east = world_map.position(int(x), float(y) + 0.5)
            for step in range(int(long)):
                assert (north, east + step) not in found
                found[round(north), round(east + step)] = at
    return found


def test_the_map_draws_every_cell_of_land_once_and_more_sun_in_no_lower_class():
    cells = {(north, east): sun for north, east, sun in places.on_land()}
    drawn = covered(world_map.land(places.on_land()))
    assert drawn.keys() == cells.keys()
    by_sun = [drawn[where] for where in sorted(cells, key=cells.get)]
    assert by_sun == sorted(by_sun) and set(by_sun) == set(range(6))


def test_the_map_is_small_and_has_no_style_of_its_own():
    root, svg = world(**TAOS)
    assert len(svg.encode()) < MOST
    ElementTree.fromstring(ask("map")["key"])
    assert all("style" not in one.attrib and "fill" not in one.attrib for one in root.iter())


@pytest.mark.parametrize("lat, lon", [(36.4, -105.6), (-41.3, 174.8), (0.0, 0.0), (71.2, -179.9)])
def test_what_is_touched_is_marked_where_it_was_touched(lat, lon):
    root, _ = world(lat=str(lat), lon=str(lon))
    mark = next(one for one in root.iter() if one.get("class") == "sl-world-mark")
    found = ask("touched", x=float(mark.get("cx")), y=float(mark.get("cy")))
    assert (float(found["lat"]), float(found["lon"])) == pytest.approx((lat, lon), abs=0.06)


@pytest.mark.parametrize("x, y", [(-1, 50), (361, 50), (100, -2), (100, 145)])
def test_a_touch_beside_the_map_is_no_position(x, y):
    assert ask("touched", x=x, y=y) == {"error": "Touch the land on the map.", "key": ""}


@pytest.mark.parametrize("where", [{}, {"lat": "95", "lon": "0"}, {"lat": "", "lon": ""}])
def test_the_map_comes_without_a_mark_where_no_position_can_be_read(where):
    assert "sl-world-mark" not in world(**where)[1]


# A file -------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    "lines, name", [(epw(), "Nowhere"), (tmy3(), "NOWHERE [TEST]")], ids=["epw", "tmy3"]
)
def test_a_file_says_where_it_is(lines, name):
    reply = ask("hours", text="\n".join(lines), name="year.csv")
    found = {key: reply["texts"][key] for key in ("place", "lat", "lon", "altitude", "weather")}
    assert found == {
        "place": name,
        "lat": "31.77",
        "lon": "-106.5",
        "altitude": "1186",
        "weather": "file",
    }
    assert reply["units"]["altitude"] == "m"


def test_the_months_of_a_file_are_the_means_of_its_hours():
    year = gzip.decompress(TUCSON.read_bytes()).decode()
    sun, air = months(ask("hours", text=year, name="tucson.csv"))
    january = [line.split(",") for line in year.splitlines()[2:] if line.startswith("1,")]
    assert len(january) == 31 * 24
    assert sun[0] == pytest.approx(sum(float(row[3]) for row in january) / 31e3, abs=0.006)
    assert air[0] == pytest.approx(sum(float(row[6]) for row in january) / len(january), abs=0.06)


def test_the_hours_are_kept_and_a_file_with_a_fault_leaves_those_before():
    assert hourly.kept() is None
    ask("hours", text="\n".join(plain()), name="own year.csv")
    kept = hourly.kept()
    assert len(kept.level) == 8760
    lines = plain()
    del lines[100]
    reply = ask("hours", text="\n".join(lines), name="gap.csv")
    assert re.match(r"Row 101: a gap", reply["error"]) and reply["key"] == ""
    assert hourly.kept() is kept


def test_what_a_file_does_not_say_is_left_alone_and_asked_for():
    reply = ask("hours", text="\n".join(plain()), name="own year.csv")
    assert reply["texts"].keys() == {"place", "weather", "months", "data"}
    assert reply["texts"]["place"] == "own year"
    assert "where it is" in " ".join(reply["said"])
