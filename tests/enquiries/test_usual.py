"""What words near a number usually mean: the table is whole, helps, and is said to be a guess."""

import json
import math
from pathlib import Path

import pytest

from calc.site import enquiry_usual
from calc.site.enquiry import read
from calc.site.enquiry_model import Token
from calc.site.enquiry_slots import slot
from calc.site.enquiry_usual_table import CLASSES
from tests.enquiries import weights
from tests.enquiries.score import score

OWN = Path(__file__).parent
SOME = json.loads((OWN / "own_14.json").read_text("utf-8"))


def test_every_class_is_a_fact_that_a_site_can_have():
    assert CLASSES[0] == enquiry_usual.NONE
    assert all(slot(one.rstrip("-")) for one in CLASSES[1:])
    assert len(set(CLASSES)) == len(CLASSES) > 40


def test_every_weight_is_of_a_class():
    table = enquiry_usual._table()
    assert len(table) > 1000
    assert all(0 <= at < len(CLASSES) and weight for row in table.values() for at, weight in row)


@pytest.mark.parametrize("low", ["the well is 30 ft deep", "30 ft", ""])
def test_likelihoods_sum_to_one(low):
    token = Token("length", 30, 30, "ft", 0, len(low))
    shares = enquiry_usual.likely(low, token, [])
    assert math.isclose(sum(shares.values()), 1, rel_tol=1e-12)


def test_the_weights_are_those_that_fit_letters_of_which_the_sums_are_known():
    """With one feature for each of two classes, the regression's optimum is solved by hand: at it
    the penalty on a weight equals the sum of what its class is short of over all its numbers."""
    letters = [
        {"text": f"The {word} is {n} m.", "readings": (), "facts": [fact]}
        for n in range(20, 60)
        for word, path in (("pipe", "way.length"), ("peak", "place.altitude"))
        for fact in [{"path": path, "value": n, "unit": "m", "quote": f"{n} m"}]
    ]
    classes, table = weights.trained(letters)
    assert classes == ["none", "place.altitude", "way.length"]
    pipe, peak = table["lengthL0=pipe"], table["lengthL0=peak"]
    assert pipe[2] > 10 > -10 > pipe[1] and peak[1] > 10 > -10 > peak[2]
    # nothing but the word tells them apart, so what one gains the other loses
    assert abs(pipe[2] - peak[1]) <= 2 and abs(pipe[1] - peak[2]) <= 2


def test_what_is_told_by_its_words_alone_is_marked_as_assumed():
    marked = [one for mail in SOME for one in read(mail["text"]).told
              if one.reason == enquiry_usual.REASON]  # fmt: skip
    assert all(one.standing == "assumed" for one in marked)


def test_more_is_found_with_it_than_without(monkeypatch):
    sets = [json.loads(file.read_text("utf-8")) for file in sorted(OWN.glob("own*.json"))]
    mails = [mail for one in sets for mail in one[::4]]
    with_it = score(mails)
    monkeypatch.setattr(enquiry_usual, "settle", lambda *_: None)
    without = score(mails)
    assert with_it.found > without.found
    assert with_it.wrong_share <= without.wrong_share + 0.001


def test_a_number_that_another_fact_has_taken_is_not_told_twice():
    for mail in SOME:
        paths = [one.path for one in read(mail["text"]).told]
        assert len(set(paths)) == len(paths)
