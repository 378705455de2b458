"""Units: exact factors, what people type, and what is printed."""

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.errors import InputError
from calc.units import QUANTITIES, Reader, number_text, parse

TYPED = [
    ("40 psi", "pressure", 275790.291726734),
    ("1 1/4 in", "diameter", 0.03175),
    ("1¼ in", "diameter", 0.03175),
    ("1-1/2 in", "diameter", 0.0381),
    ("¾ in", "diameter", 0.01905),
    ("5 ft 6 in", "length", 1.6764),
    ("5'6\"", "length", 1.6764),
    ("-3", "length", -3.0),
    ("−3", "length", -3.0),
    (".5", "length", 0.5),
    ("5.", "length", 5.0),
    ("1e3", "length", 1000.0),
    ("1 250", "length", 1250.0),
    ("1\u202f250.5 m", "length", 1250.5),
    ("1,250.5", "length", 1250.5),
    ("12,5", "length", 12.5),
    ("0,125", "length", 0.125),
    ("50 °F", "temperature", 283.15),
    ("10 gpm", "flow", 10 * 3.785411784e-3 / 60),
    ("1.5 m3/h", "flow", 1.5 / 3600),
    ("250", "daily", 250e-3 / 86400),
]


@pytest.mark.parametrize("text, quantity, value", TYPED)
def test_what_is_typed_is_read(text, quantity, value):
    assert math.isclose(parse(text, quantity).value, value, rel_tol=1e-12)


REFUSED = [
    ("", "Nothing is entered"),
    ("   ", "Nothing is entered"),
    ("abc", "not a number"),
    ("nan", "not a number"),
    ("inf", "not a number"),
    ("1e300", "too large"),
    ("1e999", "too large"),
    ("40 psi", "a unit of pressure, not of length"),
    ("40 furlongs", "“furlongs” cannot be read here. Write m, ft or cm."),
    ("1,250", "1250 or 1.250"),
    ("3 4", "more than one number"),
    ("1.2.3", "not one number"),
    ("1/0", "cannot have 0 below the line"),
    ("<script>", "not a number"),
]


@pytest.mark.parametrize("text, words", REFUSED)
def test_what_cannot_be_read_is_refused_in_words(text, words):
    with pytest.raises(InputError) as caught:
        parse(text, "length")
    assert words in caught.value.message


def test_a_decimal_comma_is_said():
    assert "decimal point" in parse("12,5", "length").note
    assert "12.5: the" in parse("12,5", "length").note


def test_a_unit_in_the_text_wins_over_the_menu():
    assert parse("40 psi", "pressure", "bar").unit.symbol == "psi"


def test_a_unit_menu_of_another_kind_is_refused():
    with pytest.raises(InputError):
        parse("40", "pressure", "gpm")


PRINTED = [
    (0.0, "0"),
    (2.75, "2.75"),
    (99.95, "100"),
    (9.995, "10.0"),
    (1234.56, "1235"),
    (123456.0, "123\u202f456"),
    (-3.456, "−3.46"),
    (-0.0, "0"),
    (0.00123, "0.00123"),
    (0.098, "0.0980"),
    (math.inf, "–"),
    (math.nan, "–"),
]


@pytest.mark.parametrize("value, text", PRINTED)
def test_numbers_print_to_three_figures(value, text):
    assert number_text(value) == text


@given(st.integers(0, 99999), st.sampled_from([-1, 1]))
@settings(max_examples=300, deadline=None)
def test_the_last_bit_of_a_tie_does_not_change_the_print(whole, way):
    tie = whole + 0.5
    digits = len(str(whole))
    beside = math.nextafter(tie, way * math.inf)
    assert number_text(tie, digits) == number_text(beside, digits)


@given(st.sampled_from(sorted(QUANTITIES)), st.data())
@settings(max_examples=300, deadline=None)
def test_every_unit_is_read_back(quantity, data):
    unit = data.draw(st.sampled_from(QUANTITIES[quantity].units))
    number = data.draw(st.floats(0.01, 9999).map(lambda x: round(x, 3)))
    parsed = parse(f"{number} {unit.symbol}", quantity)
    assert parsed.unit == unit
    assert math.isclose(unit.from_si(parsed.value), number, rel_tol=1e-9, abs_tol=1e-9)


@given(st.floats(allow_nan=False, allow_infinity=False), st.sampled_from(sorted(QUANTITIES)))
@settings(max_examples=200, deadline=None)
def test_showing_never_fails(value, quantity):
    for system in ("metric", "us"):
        assert Reader(system).both(value, quantity)


@given(st.text(max_size=30))
@settings(max_examples=500, deadline=None)
def test_any_text_is_read_or_refused_never_crashes(text):
    try:
        parsed = parse(text, "pressure")
    except InputError as error:
        assert error.message
    else:
        assert math.isfinite(parsed.value)


def test_both_systems_are_shown_once_when_they_agree():
    assert Reader().both(10.0, "percent") == Reader().show(10.0, "percent")
    assert Reader("us").both(280000.0, "pressure") == "40.6\u00a0psi (2.80\u00a0bar)"
