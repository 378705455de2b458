"""The letter of a whole site: its numbers are the pages' own, and it is never greener than they."""

import json
import re

import pytest

from calc import bridge
from calc.desk import blocks, may_change, pairs, site_letter, verdict
from calc.desk.work import work_out
from calc.page.state import State
from calc.sheets import KEYS as KEYS_OF_SHEETS
from calc.sheets import sheet as find_sheet
from calc.site import link
from calc.site.facts import Fact
from calc.site.pack import pack, unpack
from calc.units import Reader
from tests.desk.sites import MADE, NAMED, WORST, asked, desk, fragment, pages, site, worked
from tests.desk.six_sites import LETTERS, six
from tests.sheets.any_supply import figures

KEYS = [(key, system) for key in NAMED for system in ("metric", "us")] + [
    (seed, "") for seed in MADE
]
LEADS = ("Works", "Borderline", "Does not work", "Worked out", "Not worked out")
TAG = re.compile(r"<[^>]+>")


def plain(text):
    return text.replace("\u00a0", " ").replace("\u202f", " ")


def shown(reply):
    """All that a sheet's page shows, as text."""
    return plain(f"{reply.get('text', '')} {TAG.sub(' ', reply.get('html', ''))}")


def part(text, heading):
    """The lines under a heading of the letter."""
    after = text.split(f"\n{heading}\n", 1)
    return after[1].split("\n\n")[0] if len(after) == 2 else ""


def names_of(line):
    """Titles of pages that a line of the letter names."""
    words = line.removeprefix("- ")
    if words.startswith(LEADS):
        return words.partition(": ")[2].removesuffix(".").split(", ")
    return [re.split(r"[?:]", words)[0]]


@pytest.mark.parametrize(("key", "system"), KEYS)
def test_every_verdict_of_the_letter_is_that_of_its_own_page(key, system):
    letter = desk("reply", key, system)["text"]
    lines = part(letter, "What we looked at").splitlines()
    for one in worked(key, system).parts:
        own, title = pages(key, system)[one.key], one.sheet.title.rstrip("?")
        (line,) = [line for line in lines if title in names_of(line)]
        if one.verdict is None:
            assert own["errors"]
            assert "Not worked out" in line
            continue
        page = shown(own).replace("&#x27;", "'").replace("&amp;", "&") + plain(own["text"])
        word = re.search(r'sl-word">([^<]*)<', own["html"])[1]
        assert (
            f"{word}: " in line
            or f"{word}. " in line
            or f"{word}, if" in line
            or (word == "Result" and line.startswith("- Worked out"))
        )
        if line.startswith(f"- {title}"):  # it has a sentence of its own
            assert plain(one.verdict.sentence) in plain(line)
            assert plain(one.verdict.sentence) in page


@pytest.mark.parametrize(("key", "system"), KEYS)
def test_pressure_and_flow_of_every_outlet_are_those_of_the_whole_supply(key, system):
    lines = part(desk("reply", key, system)["text"], "At the outlets")
    work = worked(key, system)
    keep_up = work.part("keep_up")
    if keep_up is None or keep_up.answer is None:
        assert lines.startswith("Not worked out")
        return
    own, reader = pages(key, system)["keep_up"], Reader(work.system)
    (table,) = [one for one in keep_up.answer.tables if one.title.startswith("Every outlet")]
    cells = shown(own)
    if lines.startswith("None can be had"):
        assert any(one.verdict and one.verdict.level == "bad" for one in work.parts)
        return
    rest = desk("reply", key, system)["text"].partition("At the outlets")[2]
    for row in table.rows:
        many = re.escape(str(row[0])) + r"( \(\d+ open\))?: "
        line = next((one for one in lines.splitlines() if re.match("- " + many, one)), None)
        if line is None:  # closed, or there was no room: it is named by its result
            named = next(one for one in rest.splitlines() if f"{row[1].capitalize()}: " in one)
            assert row[0] in named
            continue
        assert line.endswith(f"result {row[1]}")
        if row[2][1] <= 0:
            assert "pressure no water;" in line
            continue
        pressure = reader.number(row[2][1], "pressure")
        assert f"pressure {plain(reader.show(row[2][1], 'pressure'))};" in line
        assert pressure in cells
        assert f"flow {plain(reader.show(row[4][1], 'flow'))};" in line
        assert plain(reader.number(row[4][1], "flow")) in cells


@pytest.mark.parametrize(("key", "system"), KEYS)
def test_every_figure_stands_on_a_page_or_is_a_fact_of_the_site(key, system):
    work = worked(key, system)
    letter = desk("reply", key, system)["text"].partition("\nThese numbers\n")[0]
    known = {one for own in pages(key, system).values() for one in figures(shown(own))}
    reader = Reader(work.system)
    sums = {}
    for row in site(key).rows("sections"):
        size, length = row["pipe"].text, site(key).cell("sections", row, "length")
        sums[size] = sums.get(size, 0.0) + length
    known |= {one for value in sums.values() for one in figures(reader.show(value, "length"))}
    for path, kind in (("pressure_tank.volume", "volume"), ("pump.set", "pressure"),
                       ("pump.cut_in", "pressure"), ("pump.cut_out", "pressure")):  # fmt: skip
        if site(key).get(path).known:
            known |= set(figures(reader.show(site(key).value(path), kind)))
    first, _, rest = letter.partition("Assumed, not from you")[0].partition("\nAt the outlets")
    main = first + rest.partition("\n\n")[2]  # the outlets' own lines are compared above
    assert set(figures(plain(main))) <= known


@pytest.mark.parametrize(("key", "system"), KEYS)
def test_the_letter_is_never_greener_than_its_worst_page(key, system):
    reply = desk("reply", key, system)
    levels = [one.verdict.level if one.verdict else "tight" for one in worked(key, system).parts]
    assert WORST.index(reply["level"]) <= min(WORST.index(one) for one in levels)
    for own in pages(key, system).values():
        for level in re.findall(r'class="sl-verdict sl-(\w+)"', own.get("html", "")):
            assert WORST.index(reply["level"]) <= WORST.index(level)
    assert reply["word"] + "." in reply["text"]


def test_what_nobody_told_is_said_to_be_assumed_and_asked_for():
    reply = asked("reply", fragment=fragment("unknown"), asks=True)
    assert "- Set pressure: 3.50 bar (assumed)" in reply["text"]
    assert "From the example" not in reply["text"]
    first = part(reply["text"], "Please tell us, what matters most first").splitlines()[0]
    assert first.startswith("1. Set pressure: we used 3.5 bar")


@pytest.mark.parametrize("key", LETTERS)
def test_a_letter_is_short_and_says_nothing_twice(key):
    made = six(key)
    reply = asked("reply", fragment=link.of_site(made.system, pack(made)))
    text = reply["text"].partition("\nhttps")[0]
    said = [word for word in text.split() if any(sign.isalnum() for sign in word)]
    assert len(said) <= 250
    lines = [line for line in text.splitlines() if line.strip()]
    assert len(set(lines)) == len(lines)
    for noise in (" 0 L", ": 0", "Goats 0", "None named", "whoever made the link", "Enter "):
        assert noise not in text
    for deadly in ("Switch off, lock off", "Do not enter a well", "licensed person"):
        assert text.count(deadly) == 1


@pytest.mark.parametrize("key", LETTERS)
def test_a_letter_is_never_greener_than_what_is_found(key):
    made = six(key)
    reply = asked("reply", fragment=link.of_site(made.system, pack(made)))
    work = work_out(made)
    levels = [one.verdict.level if one.verdict else "tight" for one in work.parts]
    assert WORST.index(reply["level"]) <= min(map(WORST.index, levels))
    found = [one.finding for one in verdict.found(work) if one.finding.level == "stop"]
    if any(one.key in site_letter.UNDRAWN for one in found):
        found = [one for one in found if one.key not in site_letter.UNDRAWN]
        assert "No pump can draw that high" in reply["text"]
    for one in found:
        told = plain(one.text) in plain(reply["text"])
        assert told or any(p.key in site_letter.ARRIVES for p in work.parts if p.answer
                           and one in p.answer.findings)  # fmt: skip


def test_a_pump_that_cannot_draw_its_water_is_promised_no_pressure():
    made = six("impossible")
    text = asked("reply", fragment=link.of_site(made.system, pack(made)))["text"]
    assert "None can be had: the pump cannot draw the water for it." in text
    assert "Pump duty" not in text
    assert "\n- Works: " not in text
    assert "Works, if the pump could draw: " in text


def test_a_well_that_gives_less_than_is_taken_is_said():
    made = six("deep well")
    text = plain(asked("reply", fragment=link.of_site(made.system, pack(made)))["text"])
    assert "Take care: The well gives 15.0 L/min; everything open takes 54.1 L/min" in text
    enough = made.put("water.yield", Fact("60 L/min")).put("pressure_tank.volume", Fact("300 L"))
    assert "The well gives" not in asked(
        "reply", fragment=link.of_site("metric", pack(enough)))["text"]  # fmt: skip


def test_a_spring_that_gives_too_little_qualifies_the_pressures():
    made = six("spring")
    text = asked("reply", fragment=link.of_site(made.system, pack(made)))["text"]
    assert "These hold only while the source has so much to give." in text
    assert "Suction" not in text and "Pump" not in text


def test_an_empty_site_is_answered_without_a_number():
    made = site("alder")
    for path in list(made.facts):
        made = made.put(path, Fact("", "unknown"))
    for table in list(made.tables):
        made = made.put_rows(table, ())
    reply = asked("reply", fragment=link.of_site("metric", pack(made)), asks=True)
    assert reply["word"] == "Borderline"
    assert "Pipe: not known" in reply["text"]
    assert not figures(reply["text"].partition("\nhttps")[0])


def test_without_a_pump_the_letter_names_none():
    sizes = part(desk("reply", "spring")["text"], "Main sizes")
    assert "Pump" not in sizes
    assert "Pipe, 40 mm PE 100 SDR 11: 60.0 m" in sizes


def test_questions_come_in_the_order_of_their_effect():
    made = six("spring")
    text = asked("reply", fragment=link.of_site(made.system, pack(made)), asks=True)["text"]
    lines = part(text, "Please tell us, what matters most first").splitlines()
    assert [int(line.split(".")[0]) for line in lines] == list(range(1, len(lines) + 1))
    turns = ["the verdict is" in line for line in lines if "we used" in line]
    assert turns == sorted(turns, reverse=True) and turns[0]
    assert "the running pressure at the outlet is" in plain(lines[-1])


def test_without_a_fragment_it_is_the_invented_example_and_says_so():
    reply = asked("reply", fragment="")
    assert reply["example"]
    assert "A worked example with invented numbers, not yours." in reply["text"]
    assert not desk("reply", "alder")["example"]


@pytest.mark.parametrize("bad", ["v=1&site=1m~x~~~&c=aaaaa", "v=1&climb=20m&c=00000", "zz=1"])
def test_a_link_that_is_not_whole_or_holds_no_site_gives_no_letter(bad):
    reply = asked("reply", fragment=bad)
    assert reply["errors"]
    assert "text" not in reply


def test_names_are_escaped():
    evil = "<img src=x onerror=1>"
    made = site("alder").put_cell("outlets", 0, "name", Fact(evil))
    made = type(made)(evil, made.system, made.facts, made.tables, made.note)
    where = link.of_site("metric", pack(made))
    for do in ("reply", "installer"):
        reply = asked(do, fragment=where)
        assert "<img" not in reply["html"] + reply.get("svg", "")
        assert "&lt;img" in reply["html"]


def test_text_and_html_say_the_same_words():
    reply = desk("reply", "alder")
    words = re.sub(r"\W+", " ", TAG.sub(" ", reply["html"]))
    for line in reply["text"].splitlines():
        if line.startswith("- ") and ": pressure" not in line:
            assert re.sub(r"\W+", " ", blocks.escape(line[2:])).strip() in words


# The link, and what the customer may change -----------------------------------------------------


def test_the_letters_link_opens_the_site_as_it_was_sent():
    reply = asked("reply", fragment=fragment("alder"), may=["o", "us", "nonsense"])
    assert reply["address"].startswith("https://water.example/keep-up/#v=1&")
    assert reply["text"].rstrip().endswith(reply["address"])
    read = link.read(reply["fragment"], find_sheet("keep_up"))
    assert (read.cut, read.said, read.may) == (False, (), "o.us")
    assert unpack(read.site) == unpack(pack(site("alder")))
    assert "Please check and change: Outlets, and how many are open; Set pressure." in reply["text"]
    assert may_change.COURTESY in reply["text"]


def test_a_link_without_a_choice_is_byte_for_byte_as_before():
    packed = pack(site("alder"))
    assert "may=" not in link.of_site("metric", packed)
    assert link.of_site("metric", packed) == link.of_site("metric", packed, "", "")
    assert "may=" not in desk("reply", "alder")["fragment"]


def test_a_page_marks_what_its_reader_is_asked_to_change_and_keeps_the_choice():
    where = asked("reply", fragment=fragment("alder"), may=["o", "us"])["fragment"]
    read = json.loads(bridge.handle(json.dumps(
        {"op": "read", "sheet": "keep_up", "fragment": where})))  # fmt: skip
    told = read["site"]["may"]
    assert set(told["fields"]) == {"taps", "set"}
    assert told["words"].endswith("Nothing is locked: every other number can be changed too.")
    held = read["site"]
    request = {"op": "work", "sheet": "keep_up", "system": "metric",
               "texts": {**read["texts"], "set": "4"}, "units": read["units"],
               "standing": {**read["standing"], "set": "given"},
               "site": {"text": held["packed"], "way": held["way"], "may": told["code"],
                        "kept": [key for key in held["filled"] if key != "set"]}}  # fmt: skip
    returned = json.loads(bridge.handle(json.dumps(request)))
    assert "&may=o.us&c=" in returned["link"]
    assert "&may=o.us&c=" in returned["onward"]
    again = link.read(returned["link"], find_sheet("keep_up"))
    assert again.named == {"set"}  # what they changed, beside the site as it was sent
    assert again.site == pack(site("alder"))


def test_what_may_be_changed_goes_along_to_every_page_of_the_same_site():
    where = asked("reply", fragment=fragment("alder"), may=["o", "us"])["fragment"]
    read = json.loads(bridge.handle(json.dumps(
        {"op": "read", "sheet": "keep_up", "fragment": where})))  # fmt: skip
    held = read["site"]
    request = {"op": "work", "sheet": "keep_up", "system": "metric", "texts": read["texts"],
               "units": read["units"], "standing": read["standing"], "base": "", "flat": False,
               "site": {"text": held["packed"], "way": held["way"], "may": held["may"]["code"],
                        "kept": held["filled"]}}  # fmt: skip
    html = json.loads(bridge.handle(json.dumps(request)))["html"]
    found = re.findall(r'href="([^"#]*)#(v=[^"]*)"', html.replace("&amp;", "&"))
    assert any(page.startswith("keep-up") for page, _ in found)  # a fix of this page
    assert any(page and not page.startswith("keep-up") for page, _ in found)
    for page, one in found:
        key = next(k for k in KEYS_OF_SHEETS if find_sheet(k).page.strip("/") == page.strip("/"))
        opened = link.read(one, find_sheet(key))
        assert (opened.cut, opened.may) == (False, "o.us"), page
    made = asked("whole", fragment=where, stage="parts", at=0)["parts"]
    ways = re.findall(r'href="[^"#]*#(v=[^"]*)"', "".join(made.values()).replace("&amp;", "&"))
    assert ways and all(pairs.opened(one).may == "o.us" for one in ways)
    both = pairs.write("metric", site("alder"), site("switch"))
    aside = asked("compare", fragment=may_change.along(both, "us"))
    assert pairs.opened(aside["fragment"]).may == pairs.opened(aside["a"]).may == "us"
    assert (
        "may=us"
        in asked("installer", fragment=may_change.along(fragment("alder"), "us"))["address"]
    )
    plain_page = {**request, "site": {**request["site"], "may": ""}}
    assert "may=" not in json.dumps(json.loads(bridge.handle(json.dumps(plain_page))))


def test_a_returned_link_found_in_a_mail_brings_what_was_changed():
    sent = asked("reply", fragment=fragment("alder"), may=["us"])["fragment"]
    read = link.read(sent, find_sheet("keep_up"))
    filled = {**read.texts, "set": "4"}
    state = State("metric", filled, {**read.units, "set": "bar"}, {"set": "given"})
    kept = frozenset(read.texts) - {"set"}
    typed = link.write(find_sheet("keep_up"), state, read.site, "", kept, read.may)
    assert "&set=" in typed or "set=4" in typed
    address = f"https://water.example/keep-up/#{typed}"
    wrapped = "\n".join(f"> {address[at : at + 70]}" for at in range(0, len(address), 70))
    found = asked("reply", mail=f"Hello,\n\n{wrapped}\n\nThank you")
    assert (len(found["found"]), found["said"]) == (1, [])
    back = unpack(link.read(found["found"][0]["fragment"], find_sheet("keep_up")).site)
    assert back.value("pump.set") == 4e5
    assert back.put("pump.set", site("alder").get("pump.set")) == unpack(pack(site("alder")))
    assert found["found"][0]["both"] == ""  # a letter of our example has none that was sent
    beside = asked("reply", fragment=sent, mail=address)["found"][0]["both"]
    both = pairs.opened(beside)
    assert both.site == unpack(pack(site("alder"))) and both.other == back
    same = asked("reply", fragment=sent, mail=f"https://water.example/keep-up/#{sent}")
    assert same["found"][0]["both"] == ""


def test_codes_are_of_known_groups_and_facts_each_once():
    codes = [group.code for group in may_change.GROUPS]
    assert len(set(codes)) == len(codes)
    assert all(len(code) == 1 for code in codes)
    assert may_change.read("o.o.us.zz.x9..") == ("o", "us")
    assert may_change.labels("") == ()


def test_a_fall_with_points_on_the_way_is_answered_as_its_page_opens_it():
    own = pages("spring")["gravity"]
    assert "failed" not in own
    assert "text" in own
