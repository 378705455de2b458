"""A pasted track: GPX and tables, thinned to what a link holds without losing its crests."""

import json
import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc import bridge, track
from calc.errors import InputError
from calc.page.form import work
from calc.page.state import State
from calc.sheets import sheet
from calc.sun import places

DEGREE = math.pi / 180 * 1e3 * places.ROUND  # m of a great circle


def gpx(points, kind="trkpt"):
    inside = "".join(
        f'<{kind} lat="{lat}" lon="{lon}"><ele>{high}</ele><time>x</time></{kind}>'
        for lat, lon, high in points
    )
    return f'<?xml version="1.0"?><gpx><trk><trkseg>{inside}</trkseg></trk></gpx>'


def ask(text, system="metric"):
    request = {"op": "track", "sheet": "gravity", "system": system, "text": text}
    return json.loads(bridge.handle(json.dumps(request)))


def test_distances_of_a_track_go_over_the_ground_and_up_the_slope():
    one = track.read(gpx([(41.0, -7.0, 100), (41.01, -7.0, 70)]), "m")
    assert one.points[0] == (0, 100) and one.points[1][1] == 70
    assert one.points[1][0] == pytest.approx(math.hypot(0.01 * DEGREE, 30))


def test_a_degree_of_longitude_is_shorter_by_the_cosine_of_latitude():
    assert 1e3 * places.distance_km(60, 0, 60, 0.001) == pytest.approx(0.0005 * DEGREE, rel=1e-6)


def test_a_track_that_was_walked_uphill_is_turned_round():
    one = track.read(gpx([(41.0, -7.0, 70), (41.01, -7.0, 100)]), "m")
    assert one.turned and [high for _, high in one.points] == [100, 70]
    assert one.points[0][0] == 0


def test_points_nearer_than_a_metre_are_one():
    close = [(41.0, -7.0, 100), (41.000001, -7.0, 100), (41.01, -7.0, 70)]
    assert track.read(gpx(close), "m").read == 2


def test_a_route_is_read_as_a_track_is_and_the_longer_of_both_counts():
    route = gpx([(41.0, -7.0, 100), (41.01, -7.0, 70)], "rtept")
    assert len(track.read(route, "m").points) == 2
    both = gpx([(41.0, -7.0, 100)], "wpt") + route
    assert len(track.read(both, "m").points) == 2


@pytest.mark.parametrize(
    "text",
    [
        "0 100\n300 95.5\n900 70",
        "0, 100\n300, 95.5\n900, 70",
        "0,100\n300,95.5\n900,70",
        "distance\theight\n0\t100\n300\t95.5\n\n900\t70",
        "0;100\n300;95,5\n900;70",
        "0 m 100 m\n0.3 km 95,5 m\n900 m 70 m",
        "0 328.0839895 ft\n300 95.5\n900 70",
    ],
)
def test_tables_in_many_manners_are_one_way(text):
    found = [value for point in track.read(text, "m").points for value in point]
    assert found == pytest.approx([0, 100, 300, 95.5, 900, 70])


@pytest.mark.parametrize(
    "text, said",
    [
        ("", "Nothing here"),
        ("a spring, up the hill", "Nothing here"),
        ("0 100", "Only one point"),
        ("0 100\n300", "Line 2 holds one number"),
        ("0 100\n300 95\n200 90", "Line 3 must be farther"),
        ("0 100\n300 gallons", "Line 2"),
        ('<gpx><trkpt lat="41" lon="-7"></trkpt><trkpt lat="42" lon="-7"/></gpx>', "no heights"),
        ("x" * (track.LONGEST + 1), "too long"),
    ],
)
def test_what_cannot_be_read_says_why(text, said):
    with pytest.raises(InputError, match=said):
        track.read(text, "m")
    assert said in ask(text)["error"]


def test_a_crest_among_hundreds_of_points_is_kept():
    points = [(41 + at * 1e-4, -7.0, 100 - at * 0.1 + 6 * (at == 137)) for at in range(300)]
    one = track.read(gpx(points), "m")
    assert len(one.points) <= track.MOST_POINTS and one.read == 300
    assert any(high == pytest.approx(100 - 13.7 + 6) for _, high in one.points)


ways = st.lists(st.tuples(st.floats(1, 50), st.floats(-5, 5)), min_size=2, max_size=80)


@given(ways)
def test_no_point_left_out_is_farther_off_than_is_said(steps):
    lines, along, high = [], 0.0, 500.0
    for long, rise in steps:
        lines.append((along, high))
        along, high = along + long, high + rise
    text = "\n".join(f"{one:.6f} {other:.6f}" for one, other in lines)
    one = track.read(text, "m")
    given_m = [(float(f"{a:.6f}"), float(f"{b:.6f}")) for a, b in lines]
    if one.turned:
        given_m = [(given_m[-1][0] - a, b) for a, b in reversed(given_m)]
    at, told = zip(*one.points, strict=True)
    off = max(abs(np.interp(a, at, told) - b) for a, b in given_m)
    assert off == pytest.approx(one.off_m, abs=1e-5)
    assert len(one.points) <= track.MOST_POINTS
    assert len(one.points) == track.MOST_POINTS or off <= track.LEVEL + 1e-5


def test_the_bridge_answers_with_the_rows_of_the_form():
    points = [(41.0, -7.0, 100), (41.005, -7.0, 98), (41.01, -7.0, 70)]
    for system in ("metric", "us"):
        reply = ask(gpx(points), system)
        assert reply["error"] == "" and "10 m" in reply["said"][-1]
        done = work(sheet("gravity"), State(system, reply["texts"]))
        assert done.errors == {} and done.answer is not None
        figures = {one.label: one.value for one in done.answer.figures}
        assert figures["Static pressure at the outlet"] == pytest.approx(30 * 9798, rel=5e-3)
