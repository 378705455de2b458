"""Whatever is asked of the three sheets of a whole supply: sentences, links and fixes hold."""

import re

import pytest

from calc.page import row_text
from calc.page.form import work
from calc.page.state import State
from calc.pipe import pipes
from calc.sheets.parts.line_judge import kind_name
from tests.rounds import some
from tests.sheets import any_supply, asking
from tests.sheets.any_supply import SHEETS, answered, sheet


@pytest.mark.parametrize("key, plain", SHEETS)
def test_enough_requests_are_answered(key, plain):
    assert len(answered(key, plain)) >= some(45) / 3


# Sentences --------------------------------------------------------------------------------------


def said_twice(text):
    """Figures that a sentence says twice, as if a thing were compared with itself."""
    found = any_supply.figures(text)
    return sorted({one for one in found if found.count(one) > 1})


def test_a_figure_said_twice_is_found():
    assert said_twice("At 1.03\u00a0bar; 1.030\u00a0bar is needed.") == [(1.03, "bar")]
    assert said_twice("At 1.03\u00a0bar; 1.034\u00a0bar is needed: 1.03\u00a0m/s.") == []


@pytest.mark.parametrize("key, plain", SHEETS)
def test_no_finding_compares_a_figure_with_itself(key, plain):
    for state, answer in answered(key, plain):
        for text in (answer.verdict.sentence, *(one.text for one in answer.findings)):
            assert said_twice(text) == [], (text, state)


TRICKLE = {
    "runs": "pump,house,10 m,8 m,pe100-sdr11/110",
    "taps": "Tap,house,shower,0,1,0.05 L/min",
}
# A share of a limit, so near to it that three figures do not tell them apart
NEAR = [
    ("keep_up", {"pump": "own", "ask": "few", "set": "3.2 bar"}, "short"),
    ("keep_up", {"lift": "4.415 m", "suctionlong": "5 m"}, "lift-practice"),
    ("keep_up", {**TRICKLE, "set": "1.2 bar"}, "short"),
    ("reach", {"flow": "18.01 L/min"}, "pump-most"),
    ("reach", {"climb": "30.621 m", "flow": "1 L/min", "use": "own", "wanted": "0.5 bar"}, "short"),
    ("pump_match", {"set": "3.333 bar"}, "runs-on"),
    ("pump_match", {"lift": "4.415 m"}, "lift-practice"),
    ("pump_match", {"flow": "58.01 L/min"}, "pump-most"),
    ("pump_match", {"draw": "3.699 L/min"}, "least-flow"),
]


@pytest.mark.parametrize("key, texts, finding", NEAR)
def test_two_figures_compared_print_different(key, texts, finding):
    answer = work(sheet(key, True), State(texts=texts)).answer
    text = next(one.text for one in answer.findings if one.key == finding)
    assert said_twice(text) == [], text


NUMBER = re.compile(r"(?<![\w.])−?\d[\d.\u202f]*")
# A pipe's nominal size or standard name counts as one number; a name of the reader's as none
PIPES = [pipe for kind in pipes.KINDS for pipe in pipes.sizes(kind)]
NAMES = {
    name for pipe in PIPES for name in (pipe.label, pipe.name, pipe.kind_label, kind_name(pipe))
}
NAMED = re.compile("|".join(re.escape(name) for name in sorted(NAMES, key=len, reverse=True)))
READERS = re.compile(r"\bTap \d|\b[Cc]abin \d|\bsection \d+")


def words(sentence):
    """How many words a sentence has, a number with its unit as one."""
    return len(sentence.split(" "))


def numbers(sentence):
    """How many numbers a sentence has."""
    return len(NUMBER.findall(NAMED.sub(" 1 ", READERS.sub(" ", sentence))))


@pytest.mark.parametrize(
    "sentence, count",
    [
        ("PVC schedule 40 is not for hot water: 6.89\u00a0bar at 82.2\u00a0°C.", 3),
        ("PE 100 SDR 11 gets 60.0\u00a0°C.", 2),
        ("32 mm PE 100 SDR 11 leaves 1.30\u00a0bar.", 2),
        ("Pressure at Tap 2 is −1.30\u00a0bar.", 1),
    ],
)
def test_a_pipes_name_counts_as_one_number(sentence, count):
    assert numbers(sentence) == count


@pytest.mark.parametrize("key, plain", SHEETS)
def test_a_verdict_has_at_most_25_words_and_4_numbers(key, plain):
    for state, answer in answered(key, plain):
        sentence = answer.verdict.sentence
        assert words(sentence) <= 25, sentence
        assert numbers(sentence) <= 4, (sentence, state)


# A sentence can open the verdict wherever its finding is the worst
@pytest.mark.parametrize("key, plain", SHEETS)
def test_a_finding_that_could_be_the_verdict_is_as_short(key, plain):
    for _, answer in answered(key, plain):
        for one in answer.findings:
            if one.level != "note":
                assert words(one.text) <= 25, one.text
                assert numbers(one.text) <= 4, one.text


LONG = "Old upper cabin 3 shower"  # as long as a name may be, five words
FAR = (("pump", "the upper fork of it all", "140 m", "8 m", "pe100-sdr11/25"),)
TAPS = (
    (LONG, FAR[0][1], "shower", "1", "1"),
    ("The wash-house hose 2 of", FAR[0][1], "hose", "0", "1"),
    ("A hose for the top bed 4", FAR[0][1], "hose", "0", "1"),
)
SITES = [{}, {"pump": "small", "set": "3 bar"}, {"set": "0.5 bar"}, {"set": "1.2 bar"}]


@pytest.mark.parametrize("taps", [TAPS, TAPS[:2], (*TAPS, ("Bed 5", *TAPS[1][1:]))])
@pytest.mark.parametrize("texts", SITES)
def test_a_verdict_is_as_short_where_names_are_long(texts, taps):
    rows = {"runs": row_text.encode(FAR), "taps": row_text.encode(taps)}
    answer = asking.answer(sheet("keep_up", True), **rows, **texts)
    assert words(answer.verdict.sentence) <= 25, answer.verdict.sentence


# Links ------------------------------------------------------------------------------------------


@pytest.mark.parametrize("key, plain", SHEETS)
def test_every_link_opens_without_an_error(key, plain):
    for state, answer in answered(key, plain):
        fixes = (fix.link for fix in answer.fixes if fix.link is not None)
        for link in (*answer.links, *fixes):
            for opened in any_supply.ways_to_open(link, state.system, plain):
                target = sheet(link.sheet, plain and link.sheet == key)
                assert work(target, opened).errors == {}, (link, state)


# (sheet, system, texts of which some are the plain sheet's defaults and not the example's, the
# field that the fix leaves as it is)
ASKED = [
    ("reach", "metric", {"line": "", "flow": "60 L/min", "most": "100 L/min"}, "line"),
    ("pump_match", "metric", {"line": "", "set": "", "flow": "45 L/min"}, "line"),
    (
        "pump_match",
        "metric",
        {"pump": "small", "set": "3 bar", "flow": "15 L/min", "draw": "3 L/min"},
        "pump",
    ),
    ("keep_up", "us", {"set": "50 psi", "taps": "Shower,cabin 3,shower,1,4"}, "set"),
    ("keep_up", "us", {"lift": "13 ft", "taps": "Shower,cabin 3,shower,1,4"}, "lift"),
    ("suction", "us", {"lift": "22 ft", "altitude": "1000 ft"}, "altitude"),
]


@pytest.mark.parametrize("key, system, texts, kept", ASKED)
def test_a_fix_opens_on_what_was_asked_and_not_on_the_example(key, system, texts, kept):
    answer = work(sheet(key, False), State(system, texts)).answer
    links = [fix.link for fix in answer.fixes if fix.link is not None]
    for link in links:
        for state in any_supply.ways_to_open(link, system, False):
            text = state.text(sheet(key, False).field(kept)) + state.units.get(kept, "")
            if "set pressure" not in _text_of(answer, link):
                assert text.replace(" ", "") == texts[kept].replace(" ", "")
    assert links


def _text_of(answer, link):
    return next(fix.text for fix in answer.fixes if fix.link is link)


# Fixes ------------------------------------------------------------------------------------------


def bad(answer, *ranks):
    """{(key, place)} of what is wrong or only just right; of some ranks alone."""
    found = (one for one in answer.findings if one.level != "note")
    return {(one.key, one.at) for one in found if not ranks or one.rank in ranks}


KNOWN = ("harm", "cannot", "weak")


@pytest.mark.parametrize("key, plain", SHEETS)
def test_a_fix_followed_reaches_works_or_says_what_it_leaves(key, plain):
    for state, answer in answered(key, plain):
        single = len({kind for kind, _ in bad(answer, *KNOWN)}) == 1
        for fix in answer.fixes:
            if fix.link is None:
                continue
            for opened in any_supply.ways_to_open(fix.link, state.system, plain):
                after = work(sheet(key, plain), opened).answer
                said = ("Still to put right" in fix.text, "Still not checked" in fix.text)
                left = (bool(bad(after, *KNOWN)), bool(bad(after, "unchecked")))
                assert said == left, (fix.text, bad(after), state)
                assert after.verdict.word == "Works" or left != (False, False)
                assert not (single and left[0]), (fix.text, state)
                assert len(bad(after, *KNOWN)) < len(bad(answer, *KNOWN) or {1}), fix.text


@pytest.mark.parametrize("key, plain", SHEETS)
def test_whatever_is_wrong_has_a_fix_or_a_sentence_that_says_there_is_none(key, plain):
    for state, answer in answered(key, plain):
        assert bool(answer.fixes) or not bad(answer, *KNOWN), state


# Heat -------------------------------------------------------------------------------------------

HOT = {
    "reach": {"kind": "cpvc11"},
    "pump_match": {"kind": "cpvc11"},
    "keep_up": {"ask": "few", "main": "cpvc11/1"},
    "pipe": {"kind": "cpvc11"},
}


@pytest.mark.parametrize("key", HOT)
def test_hot_water_brings_the_same_cautions_to_every_sheet_and_cold_water_none(key):
    hot = " ".join(asking.answer(sheet(key, True), water="60 °C", **HOT[key]).cautions)
    assert all(word in hot for word in ("scalds", "temperature-and-pressure", "expansion"))
    assert "scalds" not in " ".join(asking.answer(sheet(key, True), **HOT[key]).cautions)


IN_THE_SUN = {
    "reach": {"kind": "pe-sidr7"},
    "pump_match": {"kind": "pe-sidr7"},
    "keep_up": {"ask": "few", "main": "pe-sidr7/1", "suctionpipe": "pvc40/1.5"},
}


@pytest.mark.parametrize("key", IN_THE_SUN)
def test_pipe_refused_for_its_heat_on_the_careful_side_says_so(key):
    found = asking.found(sheet(key, True), hottest="45 °C", **IN_THE_SUN[key])
    assert (found.get("too-hot"), found.get("cautious-heat")) == ("stop", "note")


HOSE = {"reach": {"kind": "hose"}, "pump_match": {"kind": "hose"},
        "keep_up": {"ask": "few", "main": "hose/1"}}  # fmt: skip


@pytest.mark.parametrize("key", HOSE)
def test_a_garden_hose_brings_its_caution_to_every_sheet(key):
    said = " ".join(asking.answer(sheet(key, True), **HOSE[key]).cautions)
    assert "garden hose is not made to stay under pressure" in said


# A small draw -----------------------------------------------------------------------------------

# keep_up from the drip zone itself, pump_match from what its reader says
DRIP = {"pump": "middle", "set": "3 bar", "lift": "3 m", "altitude": "500 m"}
LINE = {**DRIP, "length": "30 m", "climb": "8 m", "flow": "3 L/min", "suction": "0.1 m"}
HILL = {"runs": "pump,house,30 m,8 m,pe100-sdr11/40", "taps": "Drip,house,drip,0,1,3 L/min"}
BARE = "Flow L/min; Head m\n0; 50\n30; 45\n60; 35\n90; 20"  # its best flow is not known
TANKS = [{}, {"tank": "3 L"}, {"tank": "100 L"}, {"tank": "500 L"}, {"pump": "own", "table": BARE}]


@pytest.mark.parametrize("texts", TANKS)
def test_a_small_draw_is_judged_by_one_rule_in_the_same_words(texts):
    asked = [("keep_up", {**DRIP, **HILL}), ("pump_match", {**LINE, "draw": "3 L/min"})]
    said = []
    for key, given in asked:
        answer = asking.answer(sheet(key, True), **{**given, **texts})
        one = next(one for one in answer.findings if one.key == "least-flow")
        said.append((one.level, one.rank, one.text.partition("3.00")[2]))
    assert said[0] == said[1]
    assert ("not checked" in said[0][2] or "is not known" in one.text) == ("tank" not in texts)


@pytest.mark.parametrize("flow, level", [("8.9 L/min", "care"), ("9.1 L/min", None)])
def test_a_draw_that_no_pump_of_this_table_could_call_small_is_not_asked_about(flow, level):
    # a tenth of the best flow at most: that lies within the table, which ends at 90 L/min
    found = asking.found(sheet("pump_match", True), pump="own", table=BARE, draw=flow)
    assert found.get("least-flow") == level
