"""A pasted letter asked about through the bridge: marks, choices, a site for the other pages."""

import json

import pytest

from calc import bridge
from calc.sheets import enquiry_ops, sheet
from calc.site import link
from calc.site.pack import unpack

LETTER = (
    "Our drilled well has water at 40 ft. The house is 200 ft from the well and 35 ft above it. "
    "1 inch poly. A jet pump on a 40/60 switch with a 44 gal pressure tank. Two showers. "
    "<b>Bold</b> & Co, order no. 48812."
)


def ask(text, **more):
    request = {"op": "enquiry", "sheet": "reach", "text": text, **more}
    return json.loads(bridge.handle(json.dumps(request)))


def fact(reply, path):
    return next(one for one in reply["facts"] if one["path"] == path)


def test_facts_come_with_their_words():
    reply = ask(LETTER)
    climb = fact(reply, "way.climb")
    assert (climb["text"], climb["quote"], climb["kept"]) == ("35 ft", "35 ft", True)
    assert fact(reply, "water.kind")["options"][0] == ["well", "Well"]
    assert fact(reply, "way.pipe")["reason"] and len(fact(reply, "way.pipe")["options"]) > 3
    assert {"quote": "order no. 48812", "why": "an order or model number"} in reply["left"]


def test_the_text_is_escaped_and_marked():
    html = ask('House <i 30 m above the pump & "it\'s" <script>alert(1)</script>')["html"]
    assert "<script" not in html and "<i " not in html and "&amp;" in html
    assert '<mark class="sl-read-told" title="Climb to where water is wanted">30 m</mark>' in html


def test_a_correction_and_an_unticked_fact_reach_the_site():
    reply = ask(LETTER, chosen={"way.climb": "50 ft", "water.level": ""})
    site = unpack(reply["packed"])
    assert site.rows("sections")[0]["height"].text == "50 ft"
    assert site.get("water.level").standing == "assumed"  # as usual, and no longer as told
    assert not fact(reply, "water.level")["kept"] and fact(reply, "way.climb")["changed"]


@pytest.mark.parametrize("text", ["x", "1,250 ft", "9000 m"])
def test_a_correction_that_cannot_be_read_is_said_beside_it_and_not_used(text):
    reply = ask(LETTER, chosen={"way.climb": text})
    assert reply["errors"]["way.climb"] and reply["packed"]
    assert unpack(reply["packed"]).rows("sections")[0]["height"].text == "35 ft"


def test_what_is_no_path_is_refused():
    assert ask(LETTER, chosen={"no.such": "1"})["errors"] == {"no.such": "There is no such fact."}


def test_the_links_open_other_pages_with_the_site():
    reply = ask(LETTER, base="../", flat=False)
    first = reply["goes"][0]["address"]
    assert first.startswith("../keep-up/#v=1&u=us&site=")
    read = link.read(first.partition("#")[2], sheet("keep_up"))
    assert read.site == reply["packed"] and not read.cut
    assert ask(LETTER, base="", flat=True)["goes"][1]["address"].startswith("suction-lift.html#")


def test_a_house_below_its_spring_goes_to_gravity():
    reply = ask("Our spring is 20 m above the house, 300 m of 32 mm PE.")
    assert reply["goes"][0]["text"] == sheet("gravity").title


def test_contradictions_and_unclear_numbers_are_offered():
    twice = ask("The house is 20 m above the pump. The house is 30 m above the pump.")
    (both,) = twice["contradictions"]
    assert [one["text"] for one in both["choices"]] == ["20 m", "30 m"]
    two = ask("The spring is 60 ft up the hill from our house.")
    (one,) = two["unclear"]
    assert {each["path"] for each in one["choices"]} == {"way.length", "way.climb"}
    chosen = ask("The spring is 60 ft up the hill.", chosen={"way.length": "60 ft"})
    assert unpack(chosen["packed"]).rows("sections")[0]["length"].text == "60 ft"


def test_what_is_asked_is_what_is_not_known_and_the_strongest_comes_first():
    reply = ask(LETTER, ask=True)
    assert reply["asks"] and all(one["label"] and one["told"] for one in reply["asks"])
    turns = ["verdict" in one["told"] for one in reply["asks"]]
    assert turns == sorted(turns, reverse=True) or len(turns) > enquiry_ops.MOST_ASKED
    assert not any(one["label"] == "Cut-in pressure" for one in reply["asks"])
    assert len(reply["asks"]) <= enquiry_ops.MOST_ASKED


@pytest.mark.parametrize("text", ["", "   ", "hello there", "\x00", "1", "<p></p>"])
def test_letters_without_facts_are_answered(text):
    reply = ask(text, ask=True)
    assert reply["facts"] == [] and reply["packed"] == "" and reply["notes"]
    assert reply["goes"] == [] and reply["asks"] == []


def test_every_page_it_names_is_one():
    for text in (LETTER, "A spring 20 m above the house. 4 people. 100 m2 of drip. A 400 W panel."):
        for one in ask(text)["goes"]:
            assert one["text"] and "#" in one["address"]
