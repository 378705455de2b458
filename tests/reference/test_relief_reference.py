"""A relief valve's coefficient against those of the trade; openings are in ``checks.pumps``."""

from calc import practice


def test_the_coefficient_is_between_those_of_the_trade():
    # a sharp edge 0.61 (handbooks of hydraulics), a certified valve 0.65 (API 520); from memory
    assert 0.61 <= practice.RELIEF_COEFFICIENT <= 0.65
