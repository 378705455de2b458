"""Links of release 0.1.0 read to the very SI values that it read: 200 a calculator."""

from dataclasses import replace
from urllib.parse import unquote

import pytest

from calc.page.fields import Rows, Sheet
from calc.page.form import work
from calc.page.state import State
from calc.sheets import sheet
from calc.site import fragment, link
from tests.release_links import defaults, readings

KEYS = tuple(defaults()["sheets"])  # those that 0.1.0 had
FRACTION = "“3/4”: on at 3, off at 4?"


def rounded(value):
    return float(f"{value:.12g}") if isinstance(value, float) else value


def alone(entry, state):
    """(value, error) of one field, read as the only one of a sheet."""
    kept = []
    one = Sheet("alone", "", (replace(entry, when=None),), lambda values, _: kept.append(values))
    errors = work(one, replace(state, standing={})).errors
    if not kept:
        return None, next(iter(errors.values()))
    value = kept[0].numbers[entry.key]
    if isinstance(entry, Rows):
        return [[rounded(row.numbers[c.key]) for c in entry.columns] for row in value], ""
    return rounded(value), ""


def understood_then(entry, line):
    """False where 0.1.0 said that it left this field's entry out: now it may be read."""
    return f"{entry.key}=" not in unquote(line["left_out"]).lower().replace(" =", "=")


def spelled_as_then(line):
    """Whether the units are named in one of the ways that 0.1.0 knew."""
    pairs, _ = fragment.part(line["fragment"])
    said = [text for key, text in pairs if key == "u"]
    others = [
        key for key, _ in pairs if key.lower() == "u" and f"&{key}=" not in f"&{line['fragment']}"
    ]
    return not others and (not said or said[-1] in {"us", "metric"})


@pytest.mark.parametrize("key", KEYS)
def test_what_0_1_0_read_is_read_to_the_same_values(key):
    compared = 0
    for line in readings(key):
        read = link.read(line["fragment"], sheet(key))
        if spelled_as_then(line):
            assert read.system == line["request"]["system"], line["fragment"]
        elif read.system != line["request"]["system"]:
            continue  # "u=US" is US now; 0.1.0 took it for metric and did not say so
        for name, value in line["values"].items():
            entry = sheet(key).field(name)
            if not understood_then(entry, line):
                continue
            now, error = alone(entry, read.state)
            if error.startswith(FRACTION):
                continue  # a pair of pressures is asked about now
            if isinstance(entry, Rows) and now is not None:
                now = [row[: len(then)] for row, then in zip(now, value, strict=True)]
            assert now == value, (line["fragment"], name, error)
            compared += 1
    assert compared > 200


@pytest.mark.parametrize("key", KEYS)
def test_what_0_1_0_left_out_is_read_or_said(key):
    for line in readings(key):
        if line["left_out"]:
            read = link.read(line["fragment"], sheet(key))
            given = "given" in read.standing.values()
            other = read.system != line["request"]["system"]
            assert read.said or given or other, line["fragment"]
            assert sum(len(one) for one in read.said) < 900


ASKED = [
    ("reach", "pressure=30+mbar", "30 m or 30 mbar"),
    ("reach", "climb=12+Mm", "12 M or 12 Mm"),
    ("reach", "pressure=50+PSIbar", "50 PSI"),
    ("reach", "flow=4+gal/minL/min", "4 gal/min"),
    ("reach", "climb=12+feetm", "12 feet"),
    ("reach", "climb=20m&climb=2m", "twice"),
    ("reach", "kind=castle", "castle"),
    ("reach", "pressure=%E0%A4%A", "damaged"),
    ("reach", "climb=50&u=imperial", "of which unit"),
    ("keep_up", "taps=Odd,cabin+1,volcano;Sink,cabin+1,sink", "rows"),
]


@pytest.mark.parametrize("key, text, words", ASKED)
def test_what_can_mean_two_things_is_asked_about_without_a_verdict(key, text, words):
    read = link.read(text, sheet(key))
    assert not read.trusted and not read.cut
    assert words in " ".join(read.said)
    assert work(sheet(key), read.state).answer is None
    name = read.asks[0][0]
    settled = {**read.standing, name: "given"}
    state = State(read.system, {**read.texts, name: sheet(key).field(name).default(read.system)},
                  read.units, settled)  # fmt: skip
    assert work(sheet(key), state).answer


READ = [
    ("climb=20m&amp;length=100m", {"climb": "20", "length": "100"}),
    ("u%3Dus%26climb%3D50ft", {"climb": "50"}),
    ("CLIMB=20m", {"climb": "20"}),
    ("cl%69mb=20m", {"climb": "20"}),
    ("#climb=20m", {"climb": "20"}),
    ("%23climb=20m", {"climb": "20"}),
    ("climb=20m.", {"climb": "20"}),
    ("climb=20m)", {"climb": "20"}),
    ("climb=20m>,", {"climb": "20"}),
    ("climb=20”", {"climb": "20"}),
    ("climb=60'", {"climb": "60"}),
    ("kind=pvc40).", {"kind": "pvc40"}),
    ("climb=20m&climb=20m", {"climb": "20"}),
    ("climb=12+feet", {"climb": "12"}),
]


@pytest.mark.parametrize("text, texts", READ)
def test_what_can_safely_be_read_is_read(text, texts):
    read = link.read(text, sheet("reach"))
    assert read.trusted and read.older and link.OLDER in read.said
    assert {name: read.texts[name] for name in texts} == texts


@pytest.mark.parametrize(
    ("text", "asked"),
    [
        ("climb=18m&pressure=8", "is “Set pressure” really 8 bar?"),
        ("climb=18m&pressure=80psi", "is “Set pressure” really 80 psi?"),
        ("climb=1", "is “Climb from pump to outlet” really 1 m?"),
        ("climb=18m&pressure=80psi&u=us", ""),  # what ends in a word was cut in no number
        ("climb=18m&kind=hose", ""),
        ("climb=18m&other=1", ""),
        ("climb=?", ""),
    ],
)
def test_an_older_link_that_ends_with_a_number_asks_to_check_it(text, asked):
    said = link.read(text, sheet("reach")).said
    assert [one.partition("cut: ")[2] for one in said if "may have been cut" in one] == (
        [asked] if asked else []
    )


def test_a_link_with_an_end_mark_asks_for_no_such_check():
    whole = link.write(sheet("reach"), State(texts={"climb": "18 m"}))
    assert link.read(whole, sheet("reach")).said == ()


@pytest.mark.parametrize(
    "text, unit", [("climb=60'", "ft"), ("climb=20m.", "m"), ("climb=12 feet", "ft")]
)
def test_a_sign_for_feet_is_no_sign_of_a_sentence(text, unit):
    assert link.read(text, sheet("reach")).units["climb"] == unit


@pytest.mark.parametrize(
    "text", ["u=US&climb=50", "climb=50&u=us.", "U=us&climb=50", "u=us)&climb=50"]
)
def test_us_units_are_told_however_they_are_spelled(text):
    read = link.read(text, sheet("reach"))
    assert (read.system, read.units["climb"]) == ("us", "ft") and read.trusted


def test_an_empty_box_that_0_1_0_wrote_as_a_bare_unit_is_empty():
    read = link.read("own=L&well=L/min", sheet("tank"))
    assert read.trusted
    assert (read.texts["own"], read.units["own"]) == ("", "L")
    assert (read.texts["well"], read.units["well"]) == ("", "L/min")


def test_what_is_said_of_many_unknown_keys_names_three():
    text = "climb=20m&" + "&".join(f"other{n}={n}" for n in range(1000))
    read = link.read(text, sheet("reach"))
    assert read.said[-1].endswith("other0=0, other1=1, other2=2 and 997 more.") and read.trusted


def test_a_link_of_which_nothing_is_understood_gives_no_verdict():
    read = link.read("foo=3", sheet("reach"))
    assert not read.trusted and "foo=3" in read.said[0]


def test_signs_that_turn_the_writing_round_are_not_repeated():
    read = link.read("climb=20m&%E2%80%AEx=1", sheet("reach"))
    assert "\u202e" not in " ".join(read.said)


@pytest.mark.parametrize("key", KEYS)
def test_what_came_after_0_1_0_leaves_its_links_as_they_were(key):
    """A field that 0.1.0 did not have stays as the sheet has it, not as the example fills it."""
    then = {name for line in readings(key) for name in line["values"]}
    plain = sheet(key).plain
    later = [entry for entry in plain.fields if entry.key not in then]
    for system in ("metric", "us"):
        read, before = (link.read(f"#u={system}", one) for one in (sheet(key), plain))
        assert [read.texts[e.key] for e in later] == [before.texts[e.key] for e in later]
        assert not any(read.texts[e.key] for e in later if isinstance(e, Rows))
