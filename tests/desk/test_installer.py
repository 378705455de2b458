"""The installer's sheet: its readings worked out another way, its parts counted from the rows."""

import re
import xml.etree.ElementTree as ET
from collections import Counter, defaultdict

import pytest

from calc import practice
from calc.desk import first_start, parts_needed, sheet_drawing, start_steps
from calc.network.parts import Reducer
from calc.sheets.parts import ways
from calc.sheets.parts.moments import THEN
from calc.site import link
from calc.site.facts import Fact
from calc.site.pack import pack
from calc.units import GRAVITY, Reader, parse
from calc.water import density
from tests.desk.sites import MADE, NAMED, UNKNOWN, WORST, asked, desk, pages, site, worked
from tests.desk.test_reply import plain
from tests.house.modules import ROOT
from tests.sheets.any_supply import figures

KEYS = [*NAMED, *MADE]
SOLVED = [key for key in KEYS if key != "unknown"]
TAG = re.compile(r"<[^>]+>")


def start(key):
    return first_start.start(worked(key))


def close(share):
    return {"rel": share, "abs": 1.0}


def exact(key):
    """Share by which a form's texts, rounded into US units, may part from the site's own."""
    return 1e-6 if site(key).system == "metric" else 2e-2


# Readings ---------------------------------------------------------------------------------------


@pytest.mark.parametrize("key", SOLVED)
def test_static_pressure_is_that_at_the_start_less_rho_g_h(key):
    made, found = site(key), start(key)
    weight = density(made.value("water.temperature")) * GRAVITY
    heights = found.case.after.network.heights
    reduced = {one.end for one in found.case.after.network.links if isinstance(one, Reducer)}
    for name in found.points:
        above = _way_up(made, name) | {name}
        if above & reduced or name not in found.static:
            continue  # behind a valve that holds another pressure
        rise = heights[name] - heights[found.case.supply.start]
        first = _at_start(made, found, weight)
        others = [w for w in found.waters if w not in ("the water", "source")]
        if others:
            continue  # a tank on the hill may press more
        assert found.static[name] == pytest.approx(first - weight * rise, **close(exact(key)))


def _way_up(made, name):
    """Points on the way from a point to the start, by the rows alone."""
    above = {made.word("sections", row, "to"): made.word("sections", row, "from")
             for row in made.rows("sections")}  # fmt: skip
    found = set()
    while name in above and above[name] not in found:
        name = above[name]
        found.add(name)
    return found


def _at_start(made, found, weight):
    """Pressure at rest where the sections begin: set, cut-out or shut-off; 0 at open water."""
    if not ways.has_pump(made):
        return 0.0
    shut_off = weight * (ways.pump_of(made).head_at(0.0) - ways.suction_lift(made))
    control = made.best("pump.control").text
    held = {"speed": "pump.set", "switch": "pump.cut_out"}.get(control)
    return min(made.value(held), shut_off) if held else shut_off


@pytest.mark.parametrize("key", [one for one in SOLVED if one != "spring"])
def test_running_pressure_and_flow_are_those_of_the_sites_own_network(key):
    made, found = site(key), start(key)
    own = ways.solved(made, THEN)
    for one in found.outlets:
        state = own.moving.outlet(one.name)
        if one.together_pa is None:
            assert not state.open
        else:
            assert one.together_pa == pytest.approx(
                max(0.0, state.pressure_pa), **close(exact(key))
            )
            assert one.together_m3s == pytest.approx(state.flow_m3s, rel=exact(key), abs=1e-7)


@pytest.mark.parametrize("key", SOLVED)
def test_one_outlet_alone_has_no_less_than_with_the_others(key):
    for one in start(key).outlets:
        assert one.alone_pa is not None
        if one.together_pa is not None:
            assert one.alone_swings or one.alone_pa >= one.together_pa - 100.0
            assert one.static_pa is None or one.alone_pa <= max(0.0, one.static_pa) + 1e4


def test_a_bucket_takes_its_volume_over_the_flow():
    for system, bucket in (("metric", 0.010), ("us", 5 * 3.785411784e-3)):
        assert first_start.BUCKETS[system] == pytest.approx(bucket, rel=1e-9)
        for one in start("alder").outlets:
            seconds = one.seconds(first_start.BUCKETS[system])
            if one.kind in first_start.METERED:
                assert seconds is None
            else:
                assert seconds * one.alone_m3s == pytest.approx(bucket)


@pytest.mark.parametrize("key", SOLVED)
@pytest.mark.parametrize("system", ["metric", "us"])
def test_the_figures_of_the_paper_are_those_of_the_whole_supplys_page(key, system):
    text = plain(TAG.sub(" ", desk("installer", key, system)["html"]))
    work = worked(key, system)
    own, reader = work.part("keep_up"), Reader(system)
    for figure in own.answer.figures:
        if figure.label in ("Flow of everything open", "Pressure at the pump"):
            assert plain(reader.show(figure.value, figure.quantity)) in text
    (table,) = [one for one in own.answer.tables if one.title.startswith("Every outlet")]
    for row in table.rows:
        if row[4][1] is not None:
            assert plain(reader.show(row[2][1], "pressure")) in text
            assert plain(reader.show(row[4][1], "flow")) in text


def test_the_vacuum_and_the_current_are_their_own_pages():
    text = plain(TAG.sub(" ", desk("installer", "alder")["html"]))
    for sheet, label in (("suction", "Vacuum on a gauge"), ("cable", "Running current")):
        (figure,) = [one for one in worked("alder").part(sheet).answer.figures
                     if one.label.startswith(label)]  # fmt: skip
        told = plain(Reader().show(figure.value, figure.quantity, figure.digits))
        assert told in text
        assert told in plain(pages("alder")[sheet]["text"])


def test_a_switch_stops_at_cut_out_and_starts_at_cut_in():
    made = start("switch")
    assert made.control == "switch"
    assert made.static["pump"] == pytest.approx(3.5e5)
    text = plain(TAG.sub(" ", desk("installer", "switch")["html"]))
    assert "Off at 3.50 bar, on again at 2.00 bar" in text
    for one in made.outlets:  # at full speed the pump would go over cut-out, so it stops
        assert one.alone_pa <= one.static_pa
    assert any(one.alone_swings for one in made.outlets)
    unknown = first_start.Start(site("switch").put("pump.cut_out", UNKNOWN), made.case)
    assert unknown.static == {}


@pytest.mark.parametrize("key", KEYS)
def test_the_paper_is_never_greener_than_the_worst_page(key):
    reply = desk("installer", key)
    levels = [one.verdict.level if one.verdict else "tight" for one in worked(key).parts]
    assert WORST.index(reply["level"]) <= min(map(WORST.index, levels))
    assert (
        f'sl-verdict sl-{reply["level"]}"><strong class="sl-word">{reply["word"]}' in reply["html"]
    )


def test_what_nobody_told_is_not_known():
    made = site("alder")
    for path in ("pump.id", "pump.set", "pressure_tank.volume", "power.voltage"):
        made = made.put(path, UNKNOWN)
    reply = asked("installer", fragment=link.of_site("metric", pack(made)))
    text = plain(TAG.sub(" ", reply["html"]))
    assert reply["svg"] == ""
    assert "Readings at the outlets: not known" in text
    for line in ("pump: not known", "pressure tank, not known", "cable, size not known",
                 "Current not known"):  # fmt: skip
        assert line in text
    assert "before the pump, with water running. not known" in " ".join(text.split())
    assert not [one for one in figures(text) if one[1] in ("L/min", "gpm")]
    assert "21.7 A" not in text


def test_an_outlet_that_no_water_reaches_is_said_to_have_none():
    made = site("alder").put_cell("sections", 4, "height", Fact("45 m"))
    html = asked("installer", fragment=link.of_site("metric", pack(made)))["html"]
    row = next(r for r in html.split("<tr>") if r.startswith('<th scope="row">Cabin 3 shower'))
    cells = re.findall(r"<td>(.*?)</td>", plain(row))
    assert cells[0] == "no water"
    assert re.fullmatch(r"no water: [\d.]+ bar short", cells[1])
    assert re.fullmatch(r"no water: [\d.]+ bar short", cells[4])
    assert cells[2] == cells[5] == "0 L/min"


def test_a_pump_that_nobody_named_gives_no_reading():
    made = site("alder").put("pump.id", UNKNOWN)
    reply = asked("installer", fragment=link.of_site("metric", pack(made)))
    assert "Readings at the outlets: not known" in reply["html"]


# Parts ------------------------------------------------------------------------------------------


@pytest.mark.parametrize("key", KEYS)
def test_lengths_of_pipe_are_the_sections_and_the_stated_allowance_by_size(key):
    made, found = site(key), worked(key)
    listed = parts_needed.parts(found, first_start.start(found))
    lengths = defaultdict(float)
    for row in made.rows("sections"):
        label = ways.pipe_named(row["pipe"].text).label
        lengths[label] += parse(row["length"].text, "length").value
    pipes = {
        one.name.removeprefix("pipe, "): one for one in listed if one.name.startswith("pipe, ")
    }
    assert set(pipes) == set(lengths)
    reader = Reader(made.system)
    for label, length in lengths.items():
        assert pipes[label].count == reader.show(1.10 * length, "length")
        assert f"{reader.show(length, 'length')} and 10 % over" in pipes[label].note
    assert practice.PIPE_SPARE == 0.10


@pytest.mark.parametrize("key", KEYS)
def test_bends_and_parts_in_pipes_are_counted_from_the_rows(key):
    made, found = site(key), worked(key)
    listed = parts_needed.parts(found, first_start.start(found))
    bends = Counter()
    for row in made.rows("sections"):
        bends[ways.pipe_named(row["pipe"].text).label] += (
            int(row["bends"].text) if "bends" in row else 2
        )
    for label, count in bends.items():
        told = [one.count for one in listed if one.name == f"90° elbow or bend, {label}"]
        assert told == ([str(count)] if count else [])
    fitted = [row for row in made.rows("sections")
              if made.word("sections", row, "fitting") not in ("none", "")]  # fmt: skip
    assert sum(one.note.startswith("before ") and one.count == "1" for one in listed) - (
        sum(one.name == "vacuum gauge" for one in listed)
    ) == len(fitted)


def test_tees_of_alder_terrace():
    listed = parts_needed.parts(worked("alder"), start("alder"))
    tees = {one.name: one.count for one in listed if one.name.startswith("tee")}
    assert tees == {
        "tee, 40 mm": "3",
        "tee, 32 mm": "2",
    }  # four branches leave one fork, three another


def test_without_a_pump_nothing_of_a_pump_is_listed():
    names = " ".join(one.name for one in parts_needed.parts(worked("spring"), start("spring")))
    assert not re.search(r"pump|foot valve|suction|cable|fuse|panel", names)
    steps = " ".join(do for do, _ in start_steps.steps(worked("spring"), start("spring"), Reader()))
    assert not re.search(r"[Pp]rime|pump|current", steps)


def test_an_air_valve_stands_at_a_crest_and_a_drain_at_a_low_point():
    made = site("alder")
    rows = ({"from": Fact("pump"), "to": Fact("crest"), "length": Fact("50 m"),
             "height": Fact("10 m"), "pipe": Fact("pe100-sdr11/40")},
            {"from": Fact("crest"), "to": Fact("house"), "length": Fact("50 m"),
             "height": Fact("4 m"), "pipe": Fact("pe100-sdr11/40")})  # fmt: skip
    tap = {"name": Fact("Tap"), "at": Fact("house"), "kind": Fact("sink"), "after": Fact("1")}
    made = made.put_rows("sections", rows).put_rows("outlets", (tap,))
    work = parts_needed_of(made)
    notes = {one.name: one.note for one in work}
    assert notes["air valve"] == "crest: crest"
    assert notes["drain valve"] == "lowest: pump, house"


def parts_needed_of(made):
    from calc.desk.work import work_out

    work = work_out(made, only=("keep_up", "cable"))
    return parts_needed.parts(work, first_start.start(work))


def test_a_relief_valve_is_listed_where_a_failed_control_goes_over_the_lowest_rating():
    weak = parts_needed_of(site("alder").put("pipes.weakest", Fact("5 bar")))
    (valve,) = [one for one in weak if one.name == "relief valve"]
    assert "5.00" in valve.note
    strong = parts_needed_of(site("alder"))
    assert not [one for one in strong if one.name == "relief valve"]


# The drawing ------------------------------------------------------------------------------------


@pytest.mark.parametrize("key", SOLVED)
def test_the_downloaded_drawing_is_whole_and_has_its_colours_inline(key):
    svg = desk("installer", key)["svg"]
    tree = ET.fromstring(svg.encode())
    assert tree.tag == "{http://www.w3.org/2000/svg}svg"
    assert "var(" not in svg
    assert "<a " not in svg
    assert tree.find("{http://www.w3.org/2000/svg}desc").text


def test_its_palette_is_the_light_one_of_the_pages():
    tokens = (ROOT / "docs" / "assets" / "tokens.css").read_text(encoding="utf-8")
    (block,) = re.findall(r'\[data-md-color-scheme="default"\] \{(.*?)\}', tokens, re.DOTALL)
    light = dict(re.findall(r"(--[\w-]+): (#[0-9a-f]{6});", block))
    assert {key: light[key] for key in sheet_drawing.PALETTE} == sheet_drawing.PALETTE


# Paper ------------------------------------------------------------------------------------------


@pytest.mark.parametrize("key", KEYS)
def test_it_has_two_pages_and_no_more_rows_than_they_hold(key):
    from calc.desk import installer

    html = desk("installer", key)["html"]
    assert html.count('class="sl-sheet-page"') == 2
    assert html.count("<tr>") <= installer.MOST_SECTIONS + installer.MOST_OUTLETS + 2
    assert "style=" not in html
    ET.fromstring(f"<div>{html.replace('&nbsp;', ' ')}</div>")  # every tag is closed


def test_a_supply_of_many_sections_says_how_many_are_left_out():
    made = site("alder")
    first = made.rows("sections")[0]
    rows = tuple({**first, "to": Fact(f"point {at}"), "height": Fact("5 m")} for at in range(30))
    tap = {"name": Fact("Tap"), "at": Fact("point 3"), "kind": Fact("sink"), "after": Fact("1")}
    made = made.put_rows("sections", rows).put_rows("outlets", (tap,))
    html = asked("installer", fragment=link.of_site("metric", pack(made)))["html"]
    assert "And 16 more on the page behind the link." in html


def test_without_a_fragment_it_is_the_invented_example_and_says_so():
    reply = asked("installer", fragment="")
    assert reply["example"]
    assert "A worked example with invented numbers, not yours." in reply["html"]


def test_electrical_values_come_from_a_display_only():
    text = TAG.sub(" ", desk("installer", "alder")["html"])
    assert start_steps.DISPLAY in text
    assert "A licensed person connects the power" in text
