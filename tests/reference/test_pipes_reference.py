"""Pipe dimensions and ratings of every size against a library and the standards' formulas."""

import math

import pytest

from calc.pipe import pipes
from calc.units import INCH, PSI
from tests.reference.checks.pipes import HEAT_READ, HEAT_RECALLED, LISTS, listed, measures

# annealed tube, psi: tolerances of outside diameter and wall of ASTM B88 table 1, in (K and L
# printed, M from memory)
COPPER_TOLERANCES = {
    "copper-k": {"0.5": (0.0025, 0.005), "0.75": (0.003, 0.006), "1": (0.0035, 0.006),
                 "1.25": (0.004, 0.006), "1.5": (0.0045, 0.007), "2": (0.005, 0.008)},
    "copper-l": {"0.5": (0.0025, 0.004), "0.75": (0.003, 0.004), "1": (0.0035, 0.005),
                 "1.25": (0.004, 0.006), "1.5": (0.0045, 0.006), "2": (0.005, 0.007)},
    "copper-m": {"0.5": (0.0025, 0.003), "0.75": (0.003, 0.003), "1": (0.0035, 0.004),
                 "1.25": (0.004, 0.004), "1.5": (0.0045, 0.005), "2": (0.005, 0.006)},
}  # fmt: skip


@pytest.mark.parametrize("kind", LISTS)
def test_inch_dimensions_match_the_librarys_tables(kind):
    slack = 0.06e-3 if kind == "steel" else 0.02e-3  # m: B36.10M's mm are rounded to 0.1
    for pipe in pipes.sizes(kind):
        for quantity in ("inside", "outside", "wall"):
            theirs = listed(kind, pipe.size, quantity) * 1e-3
            assert abs(measures(pipe)[quantity] - theirs) <= slack, (pipe.label, quantity)


@pytest.mark.parametrize("kind", ["pvc40", "pvc80"])
def test_pvc_ratings_are_those_of_the_hoop_formula_rounded_to_10_psi(kind):
    # ASTM D1785 appendix X1: S = 2000 psi, rounded to the nearest 10 psi
    for pipe in pipes.sizes(kind):
        wall = measures(pipe)["wall"]
        exact = 2 * 2000 * PSI * wall / (pipe.outside_m - wall)  # p = 2 S t / (D - t)
        assert abs(pipe.rating_pa - exact) <= 6 * PSI, pipe.label


@pytest.mark.parametrize("kind, ratio, stress", [
    ("pvc-sdr21", 21, 2000), ("pvc-sdr26", 26, 2000), ("pex-in", 9, 640), ("cpvc11", 11, 2000),
    ("pvc-sdr13", 13.5, 2000), ("pe4710-dr11", 11, 1000), ("pe4710-dr9", 9, 1000),
])  # fmt: skip
def test_ratings_follow_the_dimension_ratio(kind, ratio, stress):
    # ISO 161-1: p = 2 S / (SDR - 1); S 2000 psi for PVC 1120 and CPVC 4120, 630-640 psi for PEX at
    # 73 degF (F876), 1000 psi for PE 4710 (PPI TR-4, from memory)
    for pipe in pipes.sizes(kind):
        assert math.isclose(pipe.rating_pa, 2 * stress * PSI / (ratio - 1), rel_tol=0.02)


@pytest.mark.parametrize("kind, ratio", [("pe-sidr15", 15), ("pe-sidr7", 7)])
def test_inside_ratio_ratings_follow_their_formula(kind, ratio):
    # ASTM D2239: p = 2 S / (SIDR + 1), S = 800 psi for PE 3408/3608
    for pipe in pipes.sizes(kind):
        assert math.isclose(pipe.rating_pa, 2 * 800 * PSI / (ratio + 1), rel_tol=1e-9)


@pytest.mark.parametrize("kind, ratio", [("pe100-sdr11", 11), ("pe100-sdr17", 17)])
def test_pe100_ratings_follow_their_formula(kind, ratio):
    # ISO 4427-1: PN = 20 MRS / (C (SDR - 1)), MRS 10 MPa, C 1.25
    for pipe in pipes.sizes(kind):
        assert math.isclose(pipe.rating_pa, 20 * 10 / (1.25 * (ratio - 1)) * 1e5, rel_tol=1e-9)


@pytest.mark.parametrize("kind", COPPER_TOLERANCES)
def test_copper_ratings_are_those_of_the_handbooks_formula(kind):
    # Copper Tube Handbook: p = 2 S t_min / (D_max - 0.8 t_min), S 6000 psi (annealed, 100 degF)
    for pipe in pipes.sizes(kind):
        grown, thinned = COPPER_TOLERANCES[kind][pipe.size]
        least = measures(pipe)["wall"] - thinned * INCH
        exact = 2 * 6000 * PSI * least / (pipe.outside_m + grown * INCH - 0.8 * least)
        assert abs(pipe.rating_pa - exact) <= 1.5 * PSI, (pipe.label, exact / PSI)


@pytest.mark.parametrize("kind, degrees, factor", HEAT_READ + HEAT_RECALLED)
def test_rating_of_every_size_falls_with_heat_as_published(kind, degrees, factor):
    for pipe in pipes.sizes(kind):
        share = pipes.rating_at(pipe, 273.15 + (degrees - 32) * 5 / 9) / pipe.rating_pa
        assert math.isclose(share, factor, rel_tol=1e-9)


HOT = 273.15 + (180 - 32) * 5 / 9  # K


@pytest.mark.parametrize("kind", ["cpvc11", "pex-in", "copper-k", "copper-l", "copper-m", "steel"])
def test_pipe_for_hot_water_is_rated_100_psi_at_180_degrees_fahrenheit(kind):
    # IPC 605.4 and UPC 604 ask that of hot distribution pipe, from memory
    for pipe in pipes.sizes(kind):
        assert pipe.hot and pipes.rating_at(pipe, HOT) >= 100 * PSI * (1 - 1e-9)


def test_no_other_inch_pipe_is_rated_so_hot():
    for kind in ("pe-sidr15", "pe-sidr7", "pvc40", "pvc80", "pvc-sdr13", "pvc-sdr21", "pvc-sdr26",
                 "pe4710-dr11", "pe4710-dr9"):  # fmt: skip
        for pipe in pipes.sizes(kind):
            assert not pipe.hot
            assert pipes.hottest_k(pipe) < HOT


def test_walls_of_cpvc_are_a_share_of_the_outside_to_a_thousandth_of_an_inch():
    # ASTM D2846: outside / 11, at least 0.068 in
    for pipe in pipes.sizes("cpvc11"):
        least = max(pipe.outside_m / 11, 0.068 * INCH)
        assert abs(measures(pipe)["wall"] - least) <= 0.0006 * INCH, pipe.label
