"""Pipe sizes, ratings and walls: printed tables, a library's tables, the standards' formulas."""

from fluids import piping

from calc.pipe import pipes, tables, wall
from calc.units import INCH, PSI
from tests.reference.checks.check import (
    INDEPENDENT,
    LIBRARY,
    MEMORY,
    PUBLISHED,
    give,
    library,
    part,
    table,
)  # fmt: skip
from tests.reference.checks.water import kelvin

SUBJECT = "Pipes"
CLASS_160 = "University irrigation table of PVC pipe of class 160"
EN_12201 = "EN 12201-2, least walls of PE 100"
F876 = "ASTM F876, sizes of PEX"
B88 = "ASTM B88, copper tube"
PVC_HEAT = "Temperature table of schedule 40 and 80 PVC pipe"
UNITS = {"in": INCH, "mm": 1e-3}


def measures(pipe):
    """(inside, wall, outside) of a pipe, m, by name."""
    thick = (pipe.outside_m - pipe.inside_m) / 2
    return {"inside": pipe.inside_m, "wall": thick, "outside": pipe.outside_m}


QUANTITIES = {"inside": "inside diameter", "wall": "wall", "outside": "outside diameter"}


def named(kind, size, quantity, *_):
    """What a check of a pipe's size is of."""
    return f"{pipes.pipe(kind, size).label}: {QUANTITIES[quantity]}"


def heated(kind, fahrenheit):
    """What a check of a pipe's rating in heat is of."""
    return f"{pipes.sizes(kind)[0].kind_label} at {fahrenheit} °F: share of its rating"


def _measure(kind, size, quantity, unit):
    return measures(pipes.pipe(kind, size))[quantity] / UNITS[unit]


def _sizes(source, kind, unit, rows, place=""):
    # half of the last digit that is printed; walls in mm are rounded by the standard itself
    near = give(0.0006 if unit == "in" else 0.01)
    return table(SUBJECT, "pipe.tables", named,
                 [(*row[:3], unit, row[3]) for row in rows], _measure, source=source, kind=kind,
                 near=near, unit=unit, place=place)  # fmt: skip


def _en(kind, walls):
    return [(kind, size, "wall", thick) for size, thick in walls]


SIZES = (
    *_sizes(CLASS_160, PUBLISHED, "in", [
        ("pvc-sdr26", "1", "inside", 1.195), ("pvc-sdr26", "2", "inside", 2.193),
        ("pvc-sdr26", "3", "inside", 3.230), ("pvc-sdr26", "4", "inside", 4.154),
    ]),
    *_sizes(EN_12201, PUBLISHED, "mm", [
        *_en("pe100-sdr11", [("20", 2.0), ("25", 2.3), ("32", 3.0), ("40", 3.7), ("50", 4.6),
                             ("63", 5.8), ("75", 6.8), ("90", 8.2), ("110", 10.0)]),
        *_en("pe100-sdr17", [("32", 2.0), ("40", 2.4), ("50", 3.0), ("63", 3.8), ("110", 6.6)]),
    ], "as printed in a table of walls"),
    *_sizes(F876, PUBLISHED, "in", [
        ("pex-in", "0.375", "inside", 0.360), ("pex-in", "0.5", "inside", 0.485),
        ("pex-in", "0.75", "inside", 0.681), ("pex-in", "1", "inside", 0.875),
    ], "as printed in a table of sizes"),
    *_sizes(B88, PUBLISHED, "in", [
        ("copper-k", "0.5", "wall", 0.049), ("copper-k", "1", "wall", 0.065),
        ("copper-k", "2", "wall", 0.083), ("copper-l", "0.5", "wall", 0.040),
        ("copper-l", "0.75", "wall", 0.045), ("copper-l", "1.25", "wall", 0.055),
    ], "table 1"),
    *_sizes("ASTM D1785, PVC pipe", MEMORY, "in", [
        ("pvc40", "1", "inside", 1.049), ("pvc40", "0.5", "inside", 0.622),
        ("pvc40", "2", "inside", 2.067), ("pvc80", "1", "inside", 0.957),
    ]),
    *_sizes("ASTM D2846, CPVC of copper tube sizes", MEMORY, "in", [
        ("cpvc11", "0.5", "outside", 0.625), ("cpvc11", "0.5", "wall", 0.068),
        ("cpvc11", "0.75", "wall", 0.080), ("cpvc11", "1", "wall", 0.102),
        ("cpvc11", "1.25", "wall", 0.125), ("cpvc11", "1.5", "wall", 0.148),
        ("cpvc11", "2", "wall", 0.193),
    ], "table 2"),
    *_sizes("ASTM D3035, PE pipe", MEMORY, "in", [
        ("pe4710-dr11", "1", "wall", 0.120), ("pe4710-dr11", "1.25", "wall", 0.151),
        ("pe4710-dr11", "2", "wall", 0.216), ("pe4710-dr9", "1", "wall", 0.146),
        ("pe4710-dr9", "2", "wall", 0.264), ("pe4710-dr9", "2", "outside", 2.375),
    ]),
    *_sizes("Copper Tube Handbook", MEMORY, "in", [
        ("copper-m", "0.5", "inside", 0.569), ("copper-m", "1", "inside", 1.055),
    ]),
    *_sizes("EN 10255, steel tube", MEMORY, "mm", [("steel-en", "25", "outside", 33.7)]),
)  # fmt: skip

# kind, prefix of the library's lists; it carries the standards' tables
LISTS = {
    "pvc40": ("NPS_D1785", "S40{}_D1785"), "pvc80": ("NPS_D1785", "S80{}_D1785"),
    "pvc-sdr13": ("NPSDR135_D2241", "SDR135{}_D2241"),
    "pvc-sdr21": ("NPSDR21_D2241", "SDR21{}_D2241"),
    "pvc-sdr26": ("NPSDR26_D2241", "SDR26{}_D2241"), "steel": ("NPS40", "S40{}"),
}  # fmt: skip
LETTERS = {"inside": "i", "outside": "o", "wall": "t"}


def listed(kind, size, quantity):
    """mm, by the library."""
    sizes, names = LISTS[kind]
    at = getattr(piping, sizes).index(float(size))
    return getattr(piping, names.format(LETTERS[quantity]))[at]


def _mm(kind, size, quantity):
    return 1e3 * measures(pipes.pipe(kind, size))[quantity]


_LISTED = [(kind, size, quantity) for kind in LISTS for size in ("1", "2")
           for quantity in ("inside", "wall")]  # fmt: skip
LISTED = (
    *table(SUBJECT, "pipe.tables", named, [r for r in _LISTED if r[0] != "steel"],
           _mm, source=library("fluids"), kind=LIBRARY, near=give(0.02), unit="mm",
           against=listed, place="tables of ASTM D1785 and D2241", why="inches rounded to mm"),
    *table(SUBJECT, "pipe.tables", named, [r for r in _LISTED if r[0] == "steel"],
           _mm, source=library("fluids"), kind=LIBRARY, near=give(0.06), unit="mm",
           against=listed, place="table of ASME B36.10M", why="its mm are rounded to 0.1"),
    *table(SUBJECT, "pipe.tables", "Roughness of galvanised iron", [()],
           lambda: 1e3 * tables.GALVANISED, source=library("fluids"), kind=LIBRARY,
           near=part(0.02), unit="mm", against=lambda: 0.0005 * 304.8, place="Moody's 0.0005 ft",
           why="rounded to 0.15 mm"),
)  # fmt: skip

# kind, degF, factor
HEAT_READ = [
    ("pvc40", 80, 0.88),
    ("pvc40", 90, 0.75),
    ("pvc40", 100, 0.62),
    ("pvc40", 120, 0.40),
    ("pvc40", 140, 0.22),
]
HEAT_RECALLED = [
    ("pex-in", 180, 100 / 160),
    ("pex-in", 200, 80 / 160),
    ("cpvc11", 180, 100 / 400),
    ("cpvc11", 140, 0.50),
    ("cpvc11", 100, 0.81),
    ("pe100-sdr11", 104, 0.74),
]
HEAT = (
    *table(SUBJECT, "pipe.pipes", heated,
           HEAT_READ,
           lambda kind, f: _derated(kind, f), source=PVC_HEAT, kind=PUBLISHED, near=part(1e-9)),
    *table(SUBJECT, "pipe.pipes", heated,
           HEAT_RECALLED,
           lambda kind, f: _derated(kind, f), source="ASTM F876, ASTM D2846, ISO 13761",
           kind=MEMORY, near=part(1e-9)),
)  # fmt: skip


def _derated(kind, fahrenheit):
    pipe = pipes.pipe(kind, "32" if kind.startswith("pe100") else "1")
    return pipes.rating_at(pipe, kelvin(fahrenheit)) / pipe.rating_pa


def lame(share, poisson, held):
    """Growth of a tube's bore over that of the pressure and modulus, times two for the area.

    Lame's ring, (r_o2 + r_i2)/(r_o2 - r_i2) + nu; its length held: E/(1 - nu2) and nu/(1 - nu)
    for E and nu.  Timoshenko, Strength of Materials part II.
    """
    inner, outer = 0.5, 0.5 + share
    ring = (outer**2 + inner**2) / (outer**2 - inner**2)
    if held:
        return 2 * (ring + poisson / (1 - poisson)) * (1 - poisson**2)
    return 2 * (ring + poisson)


def _restraint(share, poisson, held):
    law = wall.restraint_buried if held else wall.restraint_jointed
    return law(1.0, share, poisson) / share


LAME = "Lamé's thick tube, written out in the tests"
WALLS = (
    *table(SUBJECT, "pipe.wall", "Give of a jointed tube, wall {0} of the bore, Poisson {1}",
           [(s, n, False) for s in (0.02, 0.1, 0.3) for n in (0.3, 0.45)], _restraint, source=LAME,
           kind=INDEPENDENT, near=part(1e-6), against=lame),
    *table(SUBJECT, "pipe.wall", "Give of a buried tube, wall {0} of the bore, Poisson {1}",
           [(s, n, True) for s in (0.02, 0.1, 0.3) for n in (0.3, 0.45)], _restraint, source=LAME,
           kind=INDEPENDENT, near=part(1e-6), against=lame),
    # modulus over that at 73 degF
    *table(SUBJECT, "pipe.wall", "Stiffness of polyethylene at {0} °F over that at 73 °F",
           [(40, 1.49), (60, 1.18), (100, 0.73), (140, 0.43)], lambda f: _stiffness(f),
           source="PPI, Handbook of PE Pipe", kind=MEMORY, near=part(1e-9), place="table B.1.2"),
)  # fmt: skip


def _stiffness(fahrenheit):
    here, at_73 = (wall.modulus_at(wall.MATERIALS["pe"], kelvin(f)) for f in (fahrenheit, 73.4))
    return here / at_73


def _psi(kind, size):
    return pipes.pipe(kind, size).rating_pa / PSI


# Ratings by the formulas of the standards, with the stress that they give the material; the
# formulas are held for every size by test_pipes_reference.py
RATINGS = (
    *table(SUBJECT, "pipe.tables", lambda kind, size: f"Rating of {pipes.pipe(kind, size).label}",
           [("pvc40", "1", 450.0), ("pvc40", "2", 280.0), ("pvc80", "1", 630.0)], _psi,
           source="ASTM D1785, PVC pipe", kind=MEMORY, near=give(0.5), unit="psi"),
)  # fmt: skip

CHECKS = (*SIZES, *LISTED, *HEAT, *WALLS, *RATINGS)
