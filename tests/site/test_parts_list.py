"""A parts list: the staff's own pumps, read and used by name."""

import json

import pytest

from calc.errors import InputError
from calc.pump.pasted import read_points
from calc.site import parts_list
from calc.site.site import Site

LPM = 1e-3 / 60
POINTS = [
    {"flow": "0 L/min", "head": "40 m", "power": "300 W", "npsh": "1.8 m"},
    {"flow": "30 L/min", "head": "34 m", "power": "500 W", "npsh": "2.2 m"},
    {"flow": "60 L/min", "head": "20 m", "power": "620 W"},
]


def listed(**changes):
    pump = {"name": "Shed pump", "points": POINTS, "least_flow": "5 L/min", **changes}
    return {
        "format": parts_list.FORMAT,
        "version": 1,
        "name": "Our shelf",
        "pumps": [pump],
        "panels": [{"name": "Panel", "power": "400 W", "count": "1"}],
    }


def read(data):
    return parts_list.read(json.dumps(data))


def test_a_pump_is_chosen_by_its_name_whatever_the_capitals():
    part = read(listed()).parts.pump("shed  PUMP")
    assert part.pump().head_at(30 * LPM) == pytest.approx(34.0)
    assert part.pump().npsh_required_at(0.0) == pytest.approx(1.8)
    assert part.least_flow == pytest.approx(5 * LPM)


def test_the_table_a_link_carries_gives_the_same_points():
    part = read(listed()).parts.pumps[0]
    points = read_points(part.table)
    assert [p.flow for p in points] == pytest.approx([0.0, 30 * LPM, 60 * LPM], rel=1e-11)
    assert [p.npsh for p in points] == [1.8, 2.2, None]
    assert [p.power for p in points] == [300.0, 500.0, 620.0]


def test_a_site_given_a_pump_carries_its_curve():
    site = parts_list.with_pump(Site(), read(listed()).parts.pump("Shed pump"))
    assert site.get("pump.id").text == "Shed pump"
    assert read_points(site.get("pump.curve").text)[1].head == 34.0
    assert site.value("pump.least_flow") == pytest.approx(5 * LPM)


def test_panels_batteries_and_controllers_are_kept():
    others = read(listed()).parts.others
    assert others["panels"][0]["power"].text == "400 W"
    assert others["batteries"] == ()


@pytest.mark.parametrize("data, words", [
    (listed(name=""), "“name” is missing"),
    (listed(points=POINTS[:2]), "3 to 60 points"),
    (listed(points=[*POINTS[:2], {"flow": "50 L/min"}]), "point 3: “head” is missing"),
    (listed(points=[*POINTS[:2], {"flow": "50 L/min", "head": "37 m"}]), "The curve must fall"),
    (listed(points=[*POINTS[:2], {"flow": "fast", "head": "3 m"}]), "point 3, “flow”"),
    (listed(works="magic"), "“works”: “magic” is not one of the choices"),
    (listed(least_flow=5), "“least_flow”: write text"),
    ({**listed(), "pumps": "none"}, "“pumps” must be a list"),
    ({**listed(), "pumps": [1]}, "“pumps”, part 1 must be an object"),
    ({**listed(), "pumps": listed()["pumps"] * 2}, "Two pumps are called “Shed pump”"),
    ({**listed(), "panels": [{"power": "much"}]}, "“panels”, part 1, “power”"),
    ({**listed(), "format": "x"}, "not a parts list"),
    ({**listed(), "version": 2}, "version 2"),
])  # fmt: skip
def test_what_is_wrong_with_a_list_is_named(data, words):
    found = read(data)
    assert found.parts is None
    assert words in " ".join(found.errors)


def test_what_is_not_known_is_left_out_and_said():
    found = read({**listed(colour="red"), "tools": []})
    assert found.parts is not None
    assert len(found.notes) == 2


def test_a_pump_that_is_not_listed_is_refused():
    with pytest.raises(InputError, match="not a pump of this list"):
        read(listed()).parts.pump("Other")


def test_text_that_is_no_list_is_said_to_be_none():
    assert "not JSON" in parts_list.read("{").errors[0]
    assert "are allowed" in parts_list.read(" " * 500_001).errors[0]


def test_hidden_signs_are_no_part_of_a_parts_name():
    parts = read({**listed(name="Lif\u202et\u200bwell"), "name": "Ou\x00rs"}).parts
    assert (parts.name, parts.pumps[0].name) == ("Ours", "Liftwell")
