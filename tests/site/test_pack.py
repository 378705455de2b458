"""A site packed into a link and back."""

import string
from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.errors import InputError
from calc.site import link
from calc.site.demo import alder_terrace
from calc.site.facts import ASSUMED, Fact
from calc.site.pack import FROM_A_LINK, pack, unpack
from calc.site.site import Site
from tests.site.made_sites import sites


@given(sites())
@settings(max_examples=80, deadline=None)
def test_a_site_packed_and_unpacked_is_the_same(site):
    assert unpack(pack(site)) == site


def test_alder_terrace_comes_back():
    assert unpack(pack(alder_terrace())) == alder_terrace()


def large():
    """Alder Terrace with ten outlets on its eight sections."""
    site = alder_terrace()
    more = tuple(
        {"name": Fact(f"Cabin {n} shower"), "at": Fact(f"cabin {n}"), "kind": Fact("shower"),
         "before": Fact("0"), "after": Fact("1"), "flow": Fact("9 L/min"),
         "rated": Fact("1.5 bar")} for n in (1, 2, 4))  # fmt: skip
    return site.put_rows("outlets", (*site.rows("outlets"), *more))


def test_ten_outlets_and_eight_sections_stay_under_nine_hundred_characters():
    """The supply alone: of place and power only the height, as where nobody asked about the sun,
    and as where nobody asked what a well gives, what a garden
    on drip takes or how water is heated."""
    site = large()
    facts = {
        path: fact for path, fact in site.facts.items()
        if path == "place.altitude"
        or not path.startswith(("place.", "power.", "well.", "drip.", "hot."))
    }  # fmt: skip
    assert (len(site.rows("outlets")), len(site.rows("sections"))) == (10, 8)
    assert len(pack(replace(site, facts=facts))) < 900


def test_with_its_climate_and_its_panels_a_link_still_fits_a_code():
    # 1,250 characters, of which a QR code of level L holds 1,273 with 117 squares a side
    assert len(link.of_site("metric", pack(large()), "now/Wash-house shower")) < 1250


def test_a_packed_site_hardly_grows_when_percent_encoded():
    plain = set(string.ascii_letters + string.digits + "-._~!$&'()*+,;=:@/?")
    assert set(pack(large())) <= plain | {"²", "°"}


def test_a_site_of_which_nothing_is_known_takes_a_few_characters():
    assert len(pack(Site())) < 10


def test_a_row_that_ends_as_the_one_above_says_so_in_one_sign():
    row = {"name": Fact("Hut"), "at": Fact("hut"), "kind": Fact("sink"), "before": Fact("3")}
    other = {**row, "name": Fact("Barn"), "at": Fact("barn")}
    for rows, end in (
        ((row, other), "~oHut,hut,.0,3;Barn,barn,."),
        ((row, row), "~oHut,hut,.0,3;."),
        ((row, {**other, "before": Fact("4")}), "~oHut,hut,.0,3;Barn,barn,.0,4"),
        ((row, {"name": Fact("Barn")}), "~oHut,hut,sink,3;Barn"),
        ((row, {**row, "flow": Fact("2 L/min")}), "~oHut,hut,.0,3;Hut,hut,.0,3,,2"),
        (({**row, "flow": Fact("2 L/min")}, row), "~oHut,hut,.0,3,,2;Hut,hut,.0,3"),
    ):  # fmt: skip
        site = Site("S").put_rows("outlets", rows)
        assert pack(site).endswith(end)
        assert unpack(pack(site)) == site


def test_a_table_as_an_earlier_release_packed_it_is_read_as_it_was():
    """Every cell written out, as in links of 0.5.0."""
    text = "1m~S~~pe100-sdr11/40,fork~~spump,.1,60,5,.0,2;.1,hut,60,5,.0,2~tlow,2;high,2"
    site = unpack(text)
    assert [row["pipe"].text for row in site.rows("sections")] == ["pe100-sdr11/40"] * 2
    assert [row["level"].text for row in site.rows("tanks")] == ["2 m", "2 m"]
    assert len(pack(site)) < len(text) and unpack(pack(site)) == site


def test_what_was_assumed_takes_one_character_more():
    given_one = Site().put("pump.set", Fact("3 bar"))
    assumed = Site().put("pump.set", Fact("3 bar", ASSUMED, FROM_A_LINK))
    assert len(pack(assumed)) == len(pack(given_one)) + 1
    assert unpack(pack(assumed)) == assumed


def test_a_reason_of_ones_own_becomes_that_of_a_link():
    own = Site().put("pump.set", Fact("3 bar", ASSUMED, "as the neighbour's"))
    assert unpack(pack(own)).get("pump.set").reason == FROM_A_LINK


@given(st.integers(0, 800))
@settings(max_examples=60, deadline=None)
def test_a_cut_text_is_refused_or_shorter_never_another_failure(at):
    text = pack(alder_terrace())
    try:
        assert unpack(text[: min(at, len(text) - 1)]) != alder_terrace()
    except InputError:
        pass


@pytest.mark.parametrize("text, words", [
    ("", "not a whole site"),
    ("1x~~~~", "not a whole site"),
    ("2m~~~~", "another release"),
    ("1m~~~~zz5", "not a fact"),
    ("1m~~~~usfast", "not a number"),
    ("1m~~~~~q", "table"),
    ("1m~~~~~s.7", "word of this site is missing"),
    ("1m~~~~~t1,2,3,4,5", "more cells"),
    ("1m~~~~~t.", "like another that is missing"),
    ("1m~~~~~tlow;high,1,2,.", "like another that is missing"),
])  # fmt: skip
def test_what_is_no_packed_site_is_refused(text, words):
    with pytest.raises(InputError, match=words):
        unpack(text)


@given(st.text(max_size=60))
@settings(max_examples=200, deadline=None)
def test_no_text_fails_otherwise_than_by_an_input_error(text):
    for candidate in (text, f"1m~~~~{text}", f"1m~~~~~{text}"):
        try:
            unpack(candidate)
        except InputError:
            continue


def test_hidden_signs_are_no_part_of_what_a_link_says():
    turned = Site(
        "Old\u202e mill", "metric", {"pump.id": Fact("mid\u200bdle")}, {}, "\u2066no\x00te"
    )
    found = unpack(pack(turned))
    assert (found.name, found.note, found.get("pump.id").text) == ("Old mill", "note", "middle")


def test_a_name_that_ends_in_a_comma_at_a_rows_end_comes_back():
    site = Site(name="Hill").put_rows("tanks", ({"name": Fact("Cistern,")}, {"name": Fact("Low")}))
    assert unpack(pack(site)) == site
