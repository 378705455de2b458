"""Two ways side by side: one link for both, any page's link read, what differs and what it does."""

import json
import random
from dataclasses import replace

import pytest

from calc import bridge
from calc.desk import compare, difference, pairs
from calc.desk.work import all_ways, work_out
from calc.errors import InputError
from calc.page.render import told
from calc.site import link
from calc.site.demo import alder_terrace, with_hill_tank
from calc.site.facts import NOT_KNOWN, Fact
from calc.site.pack import pack, unpack
from calc.site.site import Site
from tests.desk import made_sites


def ask(**request):
    asked = {"op": "desk", "sheet": "reach", "do": "compare", **request}
    return json.loads(bridge.handle(json.dumps(asked)))


def as_linked(site):
    return unpack(pack(site))


def a_pair(seed):
    """Two sites that may differ in anything: rows gone, cells not known, names, units."""
    r = random.Random(seed)
    a, b = made_sites.site(2 * seed), made_sites.site(2 * seed + 1)
    if r.random() < 0.3:
        b = replace(b, name=r.choice(("Ours; ~ two", "Ü_*.", "")), note=r.choice(("~", "a, b", "")))
    if r.random() < 0.3:
        b = replace(b, system="us")
    if r.random() < 0.3:
        b = b.put_rows(r.choice(("beds", "tanks", "animals", "sections")), ())
    if r.random() < 0.3:
        b = b.put_cell("sections", r.randrange(len(b.rows("sections"))), "bends", NOT_KNOWN) \
            if b.rows("sections") else b  # fmt: skip
    if r.random() < 0.1:
        b = Site("Empty")
    if r.random() < 0.1:
        b = with_hill_tank()
    return (b, a) if r.random() < 0.5 else (a, b)


# The link -------------------------------------------------------------------------------------


def test_what_differs_comes_back_from_the_link_for_200_pairs():
    for seed in range(200):
        a, b = a_pair(seed)
        opened = pairs.opened(pairs.write("metric", a, b))
        assert pack(opened.site) == pack(a), seed
        assert pack(opened.other) == pack(b), seed
        assert opened.other == as_linked(b) or _only_reasons(opened.other, as_linked(b)), seed


def _only_reasons(one, other):
    """Why an unchanged fact was assumed is the base's: a reason is not a fact."""
    return difference.differences(one, other) == () and (one.name, one.note, one.system) == (
        other.name, other.note, other.system)  # fmt: skip


def test_only_what_differs_is_in_it():
    a = alder_terrace()
    b = a.put("pump.set", Fact("3.9 bar"))
    alone, both = (
        len(text) for text in (link.of_site("metric", pack(a)), pairs.write("metric", a, b))
    )
    assert both - alone < 40


def test_a_link_that_was_changed_or_cut_is_refused():
    text = pairs.write("us", alder_terrace(), made_sites.site(1))
    for bad in (text[:-1], text[:-30], text.replace("to=", "to=x"), text + "&climb=3m", "c=1", ""):
        with pytest.raises(InputError):
            pairs.opened(bad)


@pytest.mark.parametrize(
    "text",
    ["", "2~-~~~~1m~~~~", "1~x~~~~1m~~~~", "1~-~zz~~~1m~~~~", "1~-~~~s99l~1m~~~~", "1~-~~~s"],
)
def test_changes_that_cannot_be_read_are_refused(text):
    with pytest.raises(InputError):
        difference.read(alder_terrace(), text)


def test_a_link_of_one_system_opens_in_it():
    assert pairs.opened(pairs.write("us", alder_terrace(), alder_terrace())).system == "us"


# Any page's link --------------------------------------------------------------------------------


def test_what_was_typed_on_a_page_is_put_into_its_site():
    part = work_out(alder_terrace()).part("reach")
    state = replace(
        part.state,
        texts={**part.state.texts, "pressure": "4.2 bar"},
        standing={**part.state.standing, "pressure": "given"},
    )
    packed = pack(alder_terrace())
    text = link.write(part.sheet, state, packed, part.way, part.state.kept - {"pressure"})
    for address in (f"https://site.example/x/head/#{text}", f"file:///copy/head.html#{text}"):
        opened = pairs.of_address(address)
        assert opened.site.get("pump.set").text == "4.2 bar"
        (one,) = difference.differences(as_linked(alder_terrace()), opened.site)
        assert one.path == "pump.set"


def test_a_links_folded_by_a_mail_is_read():
    text = link.of_site("metric", pack(alder_terrace()))
    folded = "\n".join(text[at : at + 60] for at in range(0, len(text), 60))
    assert pairs.of_address(f" https://site.example/whole/#{folded} ").site == alder_terrace()


def test_every_part_of_a_site_opens_as_that_site():
    for part in work_out(alder_terrace()).parts:
        address = f"https://site.example/{part.sheet.page}#{part.fragment}"
        assert difference.differences(pairs.of_address(address).site, alder_terrace()) == ()


@pytest.mark.parametrize(
    "text, said",
    [
        ("nonsense", "not a link of ours"),
        ("https://site.example/head/#climb=20m", "holds no site"),
        ("https://site.example/head/#v=1&climb=20m&c=00000", "cut off"),
        ("https://site.example/whole/#v=1&site=1m~~~&c=00000", "cut off"),
    ],
)
def test_a_bad_link_is_said_beside_its_field_and_the_other_stays(text, said):
    reply = ask(fragment=link.of_site("metric", pack(alder_terrace())), b=text)
    assert said in reply["fields"]["b"] and "a" not in reply["fields"]


# Side by side ---------------------------------------------------------------------------------


@pytest.mark.parametrize("seed", range(4))
def test_both_ways_say_what_their_own_pages_say(seed):
    a, b = made_sites.site(100 + seed), made_sites.site(200 + seed)
    html = ask(fragment=pairs.write("metric", a, b))["parts"]
    for site in (a, b):
        work = work_out(site, "metric")
        assert f"</strong> {''}" in html["top"] and work.word in html["top"]
    for one in difference.differences(as_linked(a), as_linked(b)):
        assert f'data-path="{one.path}"' in html["facts"]
    for part in work_out(a, "metric").parts:
        assert f'data-part="{part.key}"' in html["verdicts"]
    for way in all_ways(a):
        assert way.outlet in html["outlets"]


def test_the_figures_of_a_part_go_from_a_to_b():
    a = alder_terrace()
    b = a.put_cell("sections", 1, "pipe", Fact("pe100-sdr11/50"))
    html = ask(fragment=pairs.write("metric", a, b))["parts"]["verdicts"]
    works = [work_out(one, "metric").part("keep_up") for one in (a, b)]
    flows = [next(f for f in one.answer.figures if f.label == "Flow of everything open")
             for one in works]  # fmt: skip
    shown = [told(flow, one.outcome.reader) for flow, one in zip(flows, works, strict=True)]
    assert f"Flow of everything open: {shown[0]} → {shown[1]}" in html


def test_better_and_worse_are_said():
    a = alder_terrace()
    b = a.put_cell("sections", 1, "pipe", Fact("pe100-sdr11/50"))
    there = compare.turned(compare.Both(*(work_out(one, "metric", quick=True) for one in (a, b))))
    back = compare.turned(compare.Both(*(work_out(one, "metric", quick=True) for one in (b, a))))
    assert there[0].startswith("Better in B: Will it keep up (Does not work → Works)")
    assert any(one.startswith("Worse in B: Will it keep up") for one in back)
    assert "more to spare" in there[-1] and "less to spare" in back[-1]


def test_a_pressure_that_cannot_be_had_is_said_and_never_shown_as_none():
    a = alder_terrace()
    b = a.put_cell("sections", 4, "height", Fact("45 m"))
    html = ask(fragment=pairs.write("metric", a, b))["parts"]
    way = next(w for w in all_ways(work_out(b).site) if w.outlet == "Cabin 3 shower")
    assert way.running_pa < 0
    short = f"{-way.running_pa / 1e5:.2f}"
    row = next(r for r in html["outlets"].split("<tr>") if "Cabin 3 shower" in r)
    cells = row.replace("\u00a0", " ")
    assert f"no water: {short} bar short" in cells
    assert ">0 bar<" not in cells and ">0.00 bar<" not in cells
    assert "bar short in A" in html["top"].replace("\u00a0", " ")
    whole = {"op": "desk", "sheet": "reach", "do": "whole", "stage": "verdict", "at": 0}
    site = link.of_site("metric", pack(b))
    reply = json.loads(bridge.handle(json.dumps({**whole, "fragment": site})))
    said = reply["parts"]["outlets"].replace("\u00a0", " ")
    assert f"no water: {short} bar short" in said


def test_the_same_twice_differs_in_nothing():
    html = ask(fragment=pairs.write("metric", alder_terrace(), alder_terrace()))["parts"]
    assert compare.SAME in html["facts"]
    assert "same to spare" in html["top"] and "Worse" not in html["top"]


def test_one_link_alone_says_that_the_other_is_missing():
    reply = ask(a=link.of_site("metric", pack(alder_terrace())))
    assert reply["said"] == [compare.ONE]
    assert link.read(reply["fragment"], work_out(alder_terrace()).parts[0].sheet).site


def test_saved_sites_are_compared():
    a, b = (pack(made_sites.site(seed)) for seed in (5, 6))
    reply = ask(a_site=a, b_site=b)
    opened = pairs.opened(reply["fragment"])
    assert (pack(opened.site), pack(opened.other)) == (a, b)


def test_a_gravity_site_beside_a_pumped_one():
    reply = ask(fragment=pairs.write("us", alder_terrace(), made_sites.gravity()))
    assert 'data-part="gravity"' in reply["parts"]["verdicts"]
    assert "not asked" in reply["parts"]["verdicts"] and "psi" in reply["parts"]["outlets"]


def test_what_a_person_typed_is_escaped():
    rows = list(alder_terrace().rows("outlets"))
    rows[0] = {**rows[0], "name": Fact("<img src=x>")}
    evil = alder_terrace().put_rows("outlets", tuple(rows)).put("place.name", Fact("<b>hello"))
    text = json.dumps(ask(fragment=pairs.write("metric", alder_terrace(), evil))["parts"])
    assert "<img" not in text and "<b>hello" not in text and "&lt;img" in text
