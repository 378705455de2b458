"""Links of version 1: read as written, never trusted where cut, short enough for a code."""

from dataclasses import replace

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from calc.page import row_text
from calc.page.fields import Choice, Count, Number, Rows, Text
from calc.page.form import work
from calc.page.state import State, filled_rows, hidden_keys
from calc.pipe import pipes
from calc.pump.invented import PUMPS
from calc.sheets import KEYS, LATER, sheet
from calc.site import fragment, frozen, link
from calc.units import QUANTITIES
from scripts.freeze_links import of_fields
from tests.parity.cases import requests
from tests.release_links import defaults
from tests.rounds import one_in, some
from tests.steps import calls

SYSTEMS = ("metric", "us")


def si(key, state):
    """What the sheet's form reads of a state: SI values and errors by field key."""
    values = {}
    whole = replace(sheet(key), solve=lambda found, _reader: values.update(found.numbers))
    errors = work(whole, replace(state, standing={})).errors
    shown = {k: plain(v) for k, v in values.items() if v is not None}
    return shown, errors


def plain(value):
    if isinstance(value, tuple):
        return [{k: plain(v) for k, v in row.numbers.items()} for row in value]
    return f"{value:.10g}" if isinstance(value, float) else value


# What is written is read ---------------------------------------------------------------------


@pytest.mark.parametrize("key", KEYS)
def test_random_numbers_come_back(key):
    for request in requests(key, some(25)):
        state = State(request["system"], request["texts"], request["units"])
        read = link.read(link.write(sheet(key), state), sheet(key))
        assert read.trusted and not read.said and not read.older
        assert si(key, read.state) == si(key, state)


def _words(quantity):
    kind = QUANTITIES[quantity]
    for unit in (*kind.units, *kind.others):
        yield from (word for word in (unit.symbol, *unit.aliases) if word)


@pytest.mark.parametrize("key", KEYS)
@pytest.mark.parametrize("system", SYSTEMS)
def test_every_word_for_a_unit_comes_back_whatever_the_menu_says(key, system):
    for place, entry in enumerate(sheet(key).fields):
        if not isinstance(entry, Number):
            continue
        more = {entry.when[0]: entry.when[1][0]} if entry.when else {}
        for at, word in one_in(enumerate(_words(entry.quantity)), place):
            units = QUANTITIES[entry.quantity].units
            menu = units[at % len(units)].symbol
            state = State(system, {**more, entry.key: f"12 {word.upper() if at % 2 else word}"},
                          {entry.key: menu})  # fmt: skip
            read = link.read(link.write(sheet(key), state), sheet(key))
            assert read.trusted
            assert si(key, read.state) == si(key, state), (entry.key, word, menu)


@pytest.mark.parametrize("key", KEYS)
def test_every_word_for_a_unit_comes_back_in_the_cells_of_a_table(key):
    for entry in (one for one in sheet(key).fields if isinstance(one, Rows)):
        some = entry.default("metric") or "a"
        for at, column in enumerate(entry.columns):
            for word in _words(column.quantity) if isinstance(column, Number) else ():
                rows = [list(row) for row in filled_rows(entry, some, "metric")]
                rows[0][at] = f"2 {word}"
                units = {f"{entry.key}.{column.key}": QUANTITIES[column.quantity].us}
                state = State("metric", {entry.key: row_text.encode(rows)}, units)
                read = link.read(link.write(sheet(key), state), sheet(key))
                assert si(key, read.state) == si(key, state), (column.key, word)


TYPED = st.one_of(
    st.sampled_from(
        ["", "12", "1,250", "30/50", "5'6\"", "12 furlongs", "1 1/4", "-3", "~20", "1e3"]
    ),
    st.text("0123456789 .,/!'\"mftabr", max_size=8),
)


@st.composite
def states(draw):
    """A tidy state of some sheet: as a form holds it, every standing said."""
    key, system = draw(st.sampled_from(KEYS)), draw(st.sampled_from(SYSTEMS))
    plainly = link.read(link.write(sheet(key), State(system)), sheet(key))
    texts, units, standing = dict(plainly.texts), dict(plainly.units), dict(plainly.standing)
    for entry in draw(st.lists(st.sampled_from(sheet(key).fields), max_size=6)):
        if isinstance(entry, Choice):
            texts[entry.key] = draw(st.sampled_from([value for value, _ in entry.options]))
        elif isinstance(entry, Number):
            texts[entry.key] = " ".join(draw(TYPED).split())
            units[entry.key] = draw(st.sampled_from(QUANTITIES[entry.quantity].units)).symbol
        elif isinstance(entry, Count):
            texts[entry.key] = str(draw(st.integers(0, 99)))
        elif isinstance(entry, Text):
            texts[entry.key] = draw(st.text(max_size=30))
        standing[entry.key] = draw(st.sampled_from(["given", "assumed", "example"]))
    return key, State(system, texts, units, standing)


@settings(max_examples=400, deadline=None)
@given(states())
def test_what_is_read_was_written(drawn):
    key, state = drawn
    assume(not any(0xD800 <= ord(sign) < 0xE000 for t in state.texts.values() for sign in t))
    written = link.write(sheet(key), state)
    read = link.read(written, sheet(key))
    assert read.trusted and not read.said
    assert link.write(sheet(key), read.state) == written
    again, hidden = read.state, hidden_keys(sheet(key), state)
    for entry in sheet(key).fields:
        if entry.key in hidden:
            continue
        assert again.standing_of(entry) == state.standing_of(entry)
        if isinstance(entry, Number) and "!" not in state.texts[entry.key]:
            text, unit = state.texts[entry.key], state.units[entry.key]
            one = State(state.system, {entry.key: text}, {entry.key: unit})
            two = State(state.system, {entry.key: again.texts[entry.key]},
                        {entry.key: again.units[entry.key]})  # fmt: skip
            alone = replace(sheet(key), fields=(replace(entry, when=None),),
                            arguments={}, replaced={}, over={})  # fmt: skip
            assert _read_alone(alone, one) == _read_alone(alone, two)
        elif not isinstance(entry, Rows):
            assert again.texts[entry.key] == state.texts[entry.key]


def _read_alone(alone, state):
    found = {}
    errors = work(replace(alone, solve=lambda v, _: found.update(v.numbers)), state).errors
    return found, bool(errors)


@pytest.mark.parametrize("key", KEYS)
@pytest.mark.parametrize("system", SYSTEMS)
def test_the_example_is_a_short_link_and_comes_back_as_the_example(key, system):
    written = link.write(sheet(key), State(system))
    assert len(written) < 25
    read = link.read(written, sheet(key))
    assert set(read.standing.values()) == {"example"}
    outcome = work(sheet(key), read.state)
    assert outcome.example and si(key, read.state) == si(key, State(system))


def test_a_given_number_is_written_though_it_is_the_default():
    state = State(texts={"climb": "12"}, units={"climb": "m"}, standing={"climb": "given"})
    written = link.write(sheet("reach"), state)
    assert "climb=12m" in written
    assert link.read(written, sheet("reach")).standing["climb"] == "given"


def test_an_assumed_and_an_unknown_number_are_marked_and_come_back_so():
    state = State(texts={"climb": "18", "flow": "?"}, standing={"climb": "assumed"})
    written = link.write(sheet("reach"), state)
    assert "climb.=18m" in written and "flow=?" in written
    read = link.read(written, sheet("reach"))
    assert (read.standing["climb"], read.standing["flow"]) == ("assumed", "unknown")


def test_an_example_that_is_no_frozen_default_is_marked():
    state = State(texts={"climb": "18"}, standing={"climb": "example"})
    read = link.read(link.write(sheet("reach"), state), sheet("reach"))
    assert (read.texts["climb"], read.standing["climb"]) == ("18", "example")


def test_an_empty_row_that_is_being_filled_in_is_kept():
    state = State(texts={"taps": "Sink,cabin 1,sink,0,1;,"})
    read = link.read(link.write(sheet("keep_up"), state), sheet("keep_up"))
    assert len(row_text.decode(read.texts["taps"])) == 2


# Frozen --------------------------------------------------------------------------------------


@pytest.mark.parametrize("key", KEYS)
def test_the_frozen_table_covers_every_field_and_column(key):
    for at, system in enumerate(SYSTEMS):
        now = {name: texts[at] for name, texts in of_fields(sheet(key).fields).items()}
        assert frozen.table(link.VERSION, key, system) == now, "run: python -m scripts.freeze_links"


@pytest.mark.parametrize("key", KEYS)
def test_no_field_takes_a_name_that_links_keep_for_themselves(key):
    for entry in sheet(key).fields:
        assert entry.key not in {"u", "v", "c"}
        assert entry.key == entry.key.lower() and entry.key[-1] not in ".-"


def test_a_link_keeps_its_version_s_default_when_the_field_s_changes():
    entry = replace(sheet("reach").field("climb"), metric="99 m", us="300 ft")
    later = replace(sheet("reach"), fields=(entry, *sheet("reach").fields[2:]))
    read = link.read(link.write(sheet("reach"), State()), later)
    assert (read.texts["climb"], read.units["climb"]) == ("12", "m")


def test_the_ids_of_pipes_and_pumps_of_release_0_1_0_are_all_there():
    then = defaults()
    for kind, found in then["pipes"].items():
        for one in found["sizes"]:
            assert pipes.pipe(kind, one["size"])
    assert set(then["pumps"]) <= set(PUMPS)


# Cut and damaged -----------------------------------------------------------------------------

WHOLE = link.write(
    sheet("reach"),
    State("us", {"climb": "22", "pressure": "4 bar", "flow": "10", "kind": "pe100-sdr11"}),
)


def _no_verdict(text):
    read = link.read(text, sheet("reach"))
    assert not read.trusted, text
    assert read.said
    return read


@pytest.mark.parametrize("end", range(1, len(WHOLE)))
def test_a_link_cut_at_its_end_gives_no_verdict(end):
    assert _no_verdict(WHOLE[:end]).cut


@pytest.mark.parametrize("at", range(len(WHOLE)))
def test_a_link_with_one_sign_lost_gives_no_verdict(at):
    assert _no_verdict(WHOLE[:at] + WHOLE[at + 1 :]).cut


@pytest.mark.parametrize("at", range(len(WHOLE)))
def test_a_link_with_one_sign_changed_gives_no_verdict_or_is_the_same(at):
    for sign in "0x&=":
        other = WHOLE[:at] + sign + WHOLE[at + 1 :]
        if other != WHOLE and fragment.part(other) != fragment.part(WHOLE):
            _no_verdict(other)


@pytest.mark.parametrize("start", range(1, len(WHOLE)))
def test_a_link_cut_at_its_start_gives_no_verdict(start):
    if "=" in WHOLE[start:] and not WHOLE[start:].startswith("c="):
        assert _no_verdict(WHOLE[start:]).cut


def test_nothing_of_a_cut_link_is_in_the_form():
    read = link.read(WHOLE[:-9], sheet("reach"))
    assert set(read.standing.values()) == {"example"} and read.said == (link.CUT,)


def test_a_newer_link_is_not_read_as_if_it_were_ours():
    read = link.read("v=2&climb=3m&c=00000", sheet("reach"))
    assert not read.trusted and "newer release" in read.said[0]


MANGLED = [
    WHOLE.replace("&", "&amp;"),
    WHOLE.replace("&", "&AMP;").replace("=", "=", 1),
    WHOLE.replace("climb", "cl%69mb"),
    WHOLE.replace("climb", "CLIMB"),
    WHOLE.upper(),
    WHOLE.replace("=", "%3D").replace("&", "%26"),
    f"#{WHOLE}",
    f"%23{WHOLE}",
    f"{WHOLE}.",
    f"{WHOLE})",
    f"{WHOLE}>,",
    f"{WHOLE}&utm_source=mail",
]


@pytest.mark.parametrize("text", MANGLED)
def test_what_mail_programs_do_to_a_link_is_undone(text):
    read, plainly = (link.read(one, sheet("reach")) for one in (text, WHOLE))
    assert read.trusted
    assert replace(read, said=()) == replace(plainly, said=())


def test_a_name_with_signs_survives_being_spelled_twice():
    state = State(
        texts={
            "taps": "Bath, tub; & all 100 %,cabin 1,sink".replace(", ", "!, ").replace("; ", "!; ")
        }
    )
    written = link.write(sheet("keep_up"), state)
    twice = written.replace("%", "%25")
    assert link.read(twice, sheet("keep_up")) == link.read(written, sheet("keep_up"))


def test_a_choice_that_is_no_more_is_asked_about():
    pairs = [("v", "1"), ("kind", "castle")]
    read = link.read(fragment.join([*pairs, ("c", fragment.check(pairs))]), sheet("reach"))
    assert not read.trusted and "castle" in read.said[0]
    assert work(sheet("reach"), read.state).answer is None


@pytest.mark.parametrize(
    "piece", ["a=1&", "climb=1&", "x", "%25", "&amp;", "%", "=&", "v=1&", "; ,"]
)
def test_a_link_of_a_megabyte_takes_no_more_steps_and_what_is_said_of_it_is_short(piece):
    steps = {}
    for size in (9_000, 9_000, 90_000, 1_000_000):  # the first run fills what is kept
        read, steps[size] = calls(lambda n=size: link.read((piece * n)[:n], sheet("keep_up")))
        assert len(" ".join(read.said)) < 700
    assert steps[90_000] < 12 * steps[9_000]  # ten times as long: no more than in step with it
    assert steps[1_000_000] < steps[90_000] + 1_000


WORKED = set()  # forms


@settings(max_examples=500, deadline=None)
@given(st.text(max_size=60), st.sampled_from(KEYS))
def test_any_text_is_read_or_said_never_a_crash(text, key):
    state = link.read(text, sheet(key)).state
    if (key, repr(state)) not in WORKED:  # most texts hold nothing, and leave the example
        work(sheet(key), state)
        WORKED.add((key, repr(state)))


# Length --------------------------------------------------------------------------------------

NAMES = ("Kitchen sink", "Upstairs shower", "Wash-house hose", "Goat trough", "Bunk-house shower",
         "Garden hose", "Laundry", "Workshop sink", "Herb terraces", "Guest shower")  # fmt: skip
PLACES = ("lower fork", "upper fork", "wash-house", "bunk-house", "workshop", "goat yard",
          "cabin 2", "herb terraces")  # fmt: skip
SITE = "https://support.example.org/springline/keep-up/#"


def ten_outlets():
    """A site of ten outlets and eight sections, every number given."""
    runs = [
        (("pump", *PLACES)[at // 2], place, f"{35 + 12.5 * at:g} m", f"{2 + 1.5 * at:g} m",
         "pe100-sdr11/32", "3", "filter" if at == 0 else "none")
        for at, place in enumerate(PLACES)
    ]  # fmt: skip
    kinds = ("sink", "shower", "hose", "float", "saver")
    taps = [
        (name, PLACES[at % 8], kinds[at % 5], "1", "2", "9.5 L/min" if at % 3 == 0 else "", "", "")
        for at, name in enumerate(NAMES)
    ]
    texts = {"runs": row_text.encode(runs), "taps": row_text.encode(taps), "set": "3.8",
             "lift": "4.5", "suctionlong": "9", "water": "12", "altitude": "1450"}  # fmt: skip
    return State("metric", texts, {}, dict.fromkeys(texts, "given"))


def test_ten_outlets_stay_short_enough_for_a_code():
    written = SITE + link.write(sheet("keep_up"), ten_outlets())
    assert work(sheet("keep_up"), ten_outlets()).errors == {}
    assert len(written) <= 1250, len(written)


@pytest.mark.parametrize("key", LATER)
def test_a_short_link_to_a_sheet_that_is_newer_than_links_without_a_version_opens_its_example(key):
    read = link.read("#u=metric", sheet(key))
    example = {entry.key: entry.default("metric") for entry in sheet(key).fields}
    state = State("metric", example)
    assert all(
        link.said(sheet(key), entry, read.state) == link.said(sheet(key), entry, state)
        for entry in sheet(key).fields
    )
