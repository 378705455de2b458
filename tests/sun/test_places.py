"""Where a place is, its sunshine and its air: the parts that a page fetches, read back."""

import gzip
import json

import pytest

from calc.errors import InputError, RangeError
from calc.sun import places
from scripts.make_places import TARGET, digits, means

KWH = 3.6e6
MOST = 500_000  # bytes, compressed, of all that power pages may fetch


def text(part):
    return json.loads((TARGET / f"{part}.js").read_text().partition(", ")[2].removesuffix(");\n"))


@pytest.fixture(autouse=True)
def here():
    for part in places.PARTS:
        places.take(part, text(part))


def test_all_parts_together_are_small():
    sizes = [len(gzip.compress(path.read_bytes(), 9)) for path in TARGET.glob("*.js")]
    assert len(sizes) == len(places.PARTS) and sum(sizes) < MOST


def test_the_gazetteer_holds_ten_thousand_towns_most_with_their_region():
    found = [town for town, *_ in places._towns()]
    assert len(found) > 10_000
    assert sum(bool(town.region) for town in found) > 0.8 * len(found)
    assert all(town.region for town in found if town.country == "United States")


@pytest.mark.parametrize(
    "asked, label, latitude, longitude",
    [  # positions to a tenth of a degree, from memory
        ("taos", "Taos, New Mexico, United States", 36.4, -105.6),
        ("Springfield, Illinois", "Springfield, Illinois, United States", 39.8, -89.6),
        ("santa fe new", "Santa Fe, New Mexico, United States", 35.7, -105.9),
        ("sao paulo", "São Paulo, São Paulo, Brazil", -23.5, -46.6),
        ("ZURICH", "Zürich, Switzerland", 47.4, 8.6),
        ("alice springs", "Alice Springs, Northern Territory, Australia", -23.7, 133.9),
    ],
)
def test_a_typed_name_finds_its_town_first(asked, label, latitude, longitude):
    first = places.towns(asked)[0]
    assert first.label == label
    assert (first.latitude_deg, first.longitude_deg) == pytest.approx(
        (latitude, longitude), abs=0.1
    )


@pytest.mark.parametrize("asked", ["", " , ", "qqzzx", "taos, france"])
def test_what_names_no_town_finds_none(asked):
    assert places.towns(asked) == ()


def test_a_name_that_many_towns_have_offers_the_larger_first():
    found = places.towns("paris")
    assert found[0].country == "France" and len(found) <= places.MOST_FOUND
    assert "Paris, Texas, United States" in [town.label for town in found]


# NASA POWER climatology 2001-2020, but Apia: NASA SSE release 6.0; temperature POWER T2M, moved to
# the airfield's height: kWh/m2 a day and degC in January and July
MEASURED = [
    ("Perth", -31.940, 115.967, 20, 8.19, 2.90, 26.1, 12.1),
    ("La Paz", -16.513, -68.192, 4071, 5.92, 5.39, 9.1, 4.2),
    ("Cairo", 30.122, 31.406, 116, 3.45, 7.78, 12.1, 29.1),
    ("Windhoek", -22.612, 17.080, 1699, 7.40, 4.96, 24.0, 11.6),
    ("Apia", -13.830, -172.008, 18, 5.71, 4.79, 27.7, 26.6),
    ("El Paso", 31.807, -106.376, 1207, 3.73, 7.28, 7.0, 28.1),
]


@pytest.mark.parametrize("name, north, east, height, sun1, sun7, air1, air7", MEASURED)
def test_the_figures_of_a_place_are_those_measured(
    name, north, east, height, sun1, sun7, air1, air7
):
    sun, air = places.sunshine(north, east), places.air(north, east, height)
    assert sun.away_km == 0.0
    # half of the last digit kept; Apia's cell is named after the place itself
    assert [sun.values[0] / KWH, sun.values[6] / KWH] == pytest.approx([sun1, sun7], abs=0.0051)
    # 0.1 is a fifth of a kelvin's half; the rest: three more nodes weigh in
    assert [air.values[0] - 273.15, air.values[6] - 273.15] == pytest.approx([air1, air7], abs=0.5)


# Annual mean, kWh/m2 a day: NREL, Typical Meteorological Year 3 (NSRDB 1991-2005)
@pytest.mark.parametrize(
    "name, north, east, year",
    [
        ("Phoenix", 33.43, -112.02, 5.74), ("Los Angeles", 33.94, -118.41, 5.00),
        ("Chicago", 41.98, -87.91, 3.85), ("Greensboro", 36.10, -79.94, 4.29),
        ("Tucson", 32.13, -110.95, 5.65), ("El Paso", 31.81, -106.38, 5.66),
    ],
)  # fmt: skip
def test_a_years_sun_agrees_with_the_typical_year_of_other_satellites(name, north, east, year):
    found = sum(places.sunshine(north, east).values) / 12 / KWH
    assert found == pytest.approx(year, rel=0.06)  # other years and other satellites


def test_higher_ground_is_colder_by_the_lapse_rate():
    low, high = (places.air(-16.5, -68.2, height).values for height in (3000.0, 4000.0))
    assert [one - other for one, other in zip(low, high, strict=True)] == pytest.approx([5.2] * 12)


def test_off_the_coast_the_nearest_land_counts_and_says_how_far_it_is():
    # 150 km west of Lisbon's cape
    assert 0 < places.sunshine(38.5, -10.9).away_km < 200


@pytest.mark.parametrize("north, east", [(-45.0, -120.0), (0.0, -130.0)])
def test_the_open_sea_is_said_to_have_no_figures(north, east):
    for ask in (places.sunshine, places.air):
        with pytest.raises(InputError, match="no land near"):
            ask(north, east)


@pytest.mark.parametrize("north, east, name", [
    (95.0, 0.0, "latitude_deg"), (-91.0, 0.0, "latitude_deg"), (0.0, 181.0, "longitude_deg"),
])  # fmt: skip
def test_a_position_off_the_earth_is_said(north, east, name):
    for ask in (places.sunshine, places.air):
        with pytest.raises(RangeError) as error:
            ask(north, east)
        assert error.value.name == name


def test_the_date_line_is_no_edge():
    fiji = places.air(-17.8, 179.9).values[0], places.air(-17.8, -179.9).values[0]
    assert fiji[0] == pytest.approx(fiji[1], abs=0.5)


def test_figures_of_another_release_are_refused():
    with pytest.raises(InputError, match="another release"):
        places.take("sun", "sun 99\n")
    with pytest.raises(KeyError):
        places.take("moon", "moon 1\n")


def test_a_distance_is_that_of_the_sphere():
    # a degree of latitude on a sphere of 6371 km
    assert places.distance_km(10, 20, 11, 20) == pytest.approx(111.195, abs=0.001)
    assert places.distance_km(0, 179.5, 0, -179.5) == pytest.approx(111.195, abs=0.001)


def test_what_is_written_is_read_back():
    before, values = [0] * 12, [-250, 0, 39, 41, -41, 700, 5, 5, 5, -300, 1, 80]
    assert places._means(means(values, before), 0, before)[0] == values
    assert places._number(digits(5_000_000, 5)) == 5_000_000
