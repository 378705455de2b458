"""What people type is read, asked about where it can mean two things, or refused in words."""

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.errors import InputError
from calc.reading import parse, split
from calc.units import FOOT, GALLON_US, GRAVITY, INCH, MINUTE, PSI, QUANTITIES, plain_number

MORE = [
    ("30 m", "pressure", 30 * 9806.65),
    ("50 PSI", "pressure", 50 * PSI),
    ("50 psig", "pressure", 50 * PSI),
    ("4 gal/min", "flow", 4 * GALLON_US / MINUTE),
    ("4 GPH", "flow", 4 * GALLON_US / 3600),
    ("10 gallons per minute", "flow", 10 * GALLON_US / MINUTE),
    ("10 litres a minute", "flow", 0.01 / 60),
    ("60'", "length", 60 * FOOT),
    ("60’", "length", 60 * FOOT),
    ("5'6\"", "length", 66 * INCH),
    ("5' 6 1/2\"", "length", 66.5 * INCH),
    ("12 feet", "length", 12 * FOOT),
    ("12 inches", "diameter", 12 * INCH),
    ("3 CM", "diameter", 0.03),
    ("½ bar", "pressure", 5e4),
    ("1 1/2 bar", "pressure", 1.5e5),
    ("3/4 gpm", "flow", 0.75 * GALLON_US / MINUTE),
    ("~20", "length", 20.0),
    ("about 20 m", "length", 20.0),
    ("approx. 20", "length", 20.0),
    ("1 atm", "pressure", 101325.0),  # NIST SP 811 B.8
    ("3 kg/cm2", "pressure", 3 * GRAVITY * 1e4),  # technical atmosphere, NIST SP 811 B.8
    ("20 feet of water", "pressure", 20 * FOOT * 9806.65),
    ("12\u2003345", "length", 12345.0),
    ("12\u3000345", "length", 12345.0),
    ("\u200e12\u200b", "length", 12.0),
]


@pytest.mark.parametrize("text, quantity, value", MORE)
def test_what_people_write_is_read(text, quantity, value):
    assert math.isclose(parse(text, quantity).value, value, rel_tol=1e-12)


ASKED = [
    ("30/50", "pressure", "on at 30, off at 50?"),
    ("30/50 psi", "pressure", "on at 30, off at 50?"),
    ("30/50", "length", "two numbers"),
    ("20-25", "length", "20 or 25"),
    ("20–25 m", "length", "20 or 25"),
    ("20 to 25 ft", "length", "20 or 25"),
    ("2,400 m", "length", "2400 or 2.400"),
    ("1'250", "length", "1250"),
    ("5\t912", "daily", "more than one number"),
    ("5\n912", "daily", "more than one number"),
    ("5\u2028912", "daily", "more than one number"),
    ("45 lbs", "pressure", "Write psi"),
    ("45 psia", "pressure", "Write psi"),
]


@pytest.mark.parametrize("text, quantity, words", ASKED)
def test_what_can_mean_two_things_is_asked_about(text, quantity, words):
    with pytest.raises(InputError) as caught:
        parse(text, quantity)
    assert words in caught.value.message


def test_about_is_said():
    assert parse("about 20", "length").note == "Read as 20."


@pytest.mark.parametrize(
    "text, quantity, parts",
    [
        ("18 m", "length", ("18", "m")),
        ("1 1/4in", "diameter", ("1 1/4", "in")),
        ("1.5m3/h", "flow", ("1.5", "m³/h")),
        ("1e3 PSI", "pressure", ("1e3", "psi")),
        ("1,250ft", "length", ("1,250", "ft")),
        ("30/50 psi", "pressure", ("30/50", "psi")),
    ],
)
def test_a_unit_is_parted_from_its_number(text, quantity, parts):
    number, unit = split(text, quantity)
    assert (number, unit.symbol) == parts


@pytest.mark.parametrize("text", ["18", "5'6\"", "high", "", "18 psi", "m"])
def test_a_text_without_a_unit_of_the_menu_is_left_whole(text):
    assert split(text, "length") == (text, None)


WORDS = [
    (key, unit, word)
    for key, kind in QUANTITIES.items()
    for unit in (*kind.units, *kind.others)
    for word in (unit.symbol, *unit.aliases)
    if word
]


@pytest.mark.parametrize("key, unit, word", WORDS)
def test_every_word_for_a_unit_is_read_in_any_case_and_with_or_without_a_space(key, unit, word):
    for text in (f"12 {word}", f"12{word}", f"12 {word.upper()}", f"12 {word}."):
        if text.isupper() and key in {"pressure", "viscosity"} and unit.symbol in {"MPa", "mPa·s"}:
            continue  # MPa and mPa·s differ from others by their case alone
        assert parse(text, key).unit is unit


@settings(max_examples=1000, deadline=None)
@given(st.text(alphabet="0123456789 \t\n\u2003\u200b.,-/½'\"~mftpsi", max_size=12))
def test_no_text_of_digits_and_spaces_crashes(text):
    for quantity in ("length", "pressure", "diameter"):
        split(text, quantity)
        try:
            assert math.isfinite(parse(text, quantity).value)
        except InputError as error:
            assert error.message and "\n" not in error.message


@pytest.mark.parametrize(
    "value, text",
    [(3.785e-10, "3.785e-10"), (1e-20, "1e-20"), (2.5, "2.5"), (10.0, "10"), (-12345.6, "-12346")],
)
def test_a_number_is_written_as_a_person_types_it(value, text):
    assert plain_number(value) == text
    assert math.isclose(parse(text, "length").value, value, rel_tol=1e-4)
