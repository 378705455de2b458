"""A formula prints as text and MathML from one source."""

from xml.etree import ElementTree

import pytest

from calc.page import formula

SHOWN = [
    ("h_f = f * L / D * v**2 / (2 * g)", "h_f = f × L / D × v^2 / (2 × g)"),
    ("x = (a - b) - (c - d)", "x = a − b − (c − d)"),
    ("x = a / (b / c)", "x = a / (b / c)"),
    ("Delta_p = rho * g * (z_1 - z_2)", "Δp = ρ × g × (z_1 − z_2)"),
    ("x = -(a + b)**2", "x = −(a + b)^2"),
    ("f = 1 / (2 * log10(eps / 3.7))**2", "f = 1 / (2 × lg(ε / 3.7))^2"),
]


@pytest.mark.parametrize("source, text", SHOWN)
def test_text_keeps_the_meaning(source, text):
    assert formula.text(source) == text


def test_negative_numbers_put_in_get_brackets():
    assert formula.put_in("x = a - z", {"a": "2", "z": "−4"}) == "2 − (−4)"


@pytest.mark.parametrize("source", [source for source, _ in SHOWN])
def test_mathml_is_well_formed(source):
    root = ElementTree.fromstring(formula.mathml(source))
    assert root.tag.endswith("math")


@pytest.mark.parametrize(
    "source", ["x", "x = __import__('os')", "x = a if b else c", "x = [1]", "x = a; y = b == c"]
)
def test_only_plain_relations_are_printed(source):
    with pytest.raises((ValueError, AttributeError)):
        formula.mathml(source)
        formula.text(source.split(";")[-1])
