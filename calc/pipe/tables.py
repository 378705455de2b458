"""The standards' tables behind ``calc.pipe.pipes``: outside diameters, walls, ratings, heat.

The numbers were recalled, then checked in ``tests/reference`` against a library's tables, printed
tables and the rating formula of each standard; what is only recalled says "from memory".
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc.pipe import dimensions as inch
from calc.pipe import heat
from calc.units import INCH, PSI

if TYPE_CHECKING:
    from collections.abc import Mapping

    Inches = Mapping[str, float]  # by key of the size
    Row = tuple[str, str, float, float, float | None]  # key, name, outside m, wall m, rating Pa


@dataclass(frozen=True)
class PipeTable:
    """A kind: rows of (size key, name, outside m, wall m, rating Pa or None).

    derating: (K, share of the rating) points, of which the last is the hottest it may get.
    """

    key: str
    label: str
    short: str
    rows: tuple[Row, ...]
    rating_at_k: float
    derating: tuple[tuple[float, float], ...]
    roughness_m: float
    hazen_williams_c: float
    source: str
    hot: bool = False  # for hot distribution pipe: 100 psi at 180 degF, or its own hot class
    heat_note: str = ""  # what to know of its highest temperature


# m, drawn tubing, and plastic as smooth: Moody, Trans. ASME 66 (1944) 671
PLASTIC = COPPER = 1.5e-6
GALVANISED = 0.15e-3  # m, galvanised iron: Moody (1944)
RUBBER = 0.03e-3  # m, smooth rubber or lined hose: handbook range 0.006-0.07 mm, from memory
_NAMES = {
    "0.375": "3/8 in", "0.5": "1/2 in", "0.625": "5/8 in", "0.75": "3/4 in", "1": "1 in",
    "1.25": "1 1/4 in", "1.5": "1 1/2 in", "2": "2 in", "2.5": "2 1/2 in", "3": "3 in",
    "4": "4 in",
}  # fmt: skip


def _inch_rows(outside: Inches, wall: Inches, rating: Mapping[str, float]) -> tuple[Row, ...]:
    return tuple(
        (
            s,
            _NAMES[s],
            outside[s] * INCH,
            wall[s] * INCH,
            None if rating is None else rating[s] * PSI,
        )
        for s in wall
    )


def _copper_bar(outside: float, wall: float) -> float:
    """Rated pressure (bar) of annealed tube whose wall is 10 % under: 2 S t / (D - 0.8 t)."""
    least = 0.9 * wall
    return 2 * heat.COPPER_STRESS * least / (outside - 0.8 * least) / 1e5


def _metric_rows(walls: Mapping[int, float], bar: float) -> tuple[Row, ...]:
    return tuple((str(d), f"{d} mm", d * 1e-3, wall * 1e-3, bar * 1e5) for d, wall in walls.items())


def _bore_rows(bores: tuple[tuple[str, str, float], ...], bar: float) -> tuple[Row, ...]:
    """Rows by bore: (key, name, bore m); outside is the bore, wall nothing."""
    return tuple((key, name, bore, 0.0, bar * 1e5) for key, name, bore in bores)


def _sidr_rows(ratio: float, psi: float) -> tuple[Row, ...]:
    """Insert-fit PE by controlled inside diameter: ASTM D2239, IDs of iron-pipe sizes."""
    inside = {"0.5": 0.622, "0.75": 0.824, "1": 1.049, "1.25": 1.380, "1.5": 1.610, "2": 2.067}
    walls = {s: max(d / ratio, 0.060) for s, d in inside.items()}
    outside = {s: inside[s] + 2 * walls[s] for s in inside}
    return _inch_rows(outside, walls, dict.fromkeys(inside, psi))


def _ratio_rows(ratio: float, psi: float) -> tuple[Row, ...]:
    """PE by outside diameter: ASTM D3035, least wall outside / ratio, at least 0.062 in."""
    sizes = ("0.75", "1", "1.25", "1.5", "2", "3", "4")
    walls = {s: max(math.ceil(inch.IPS[s] / ratio * 1e3 - 0.5) / 1e3, 0.062) for s in sizes}
    return _inch_rows(inch.IPS, walls, dict.fromkeys(sizes, psi))


D1785 = "ASTM D1785 tables 1, 2 and X1.1 (minimum wall), from memory"
D2241 = "ASTM D2241 (minimum wall), from memory"
D2239 = "ASTM D2239 (controlled inside diameter), from memory"
D3035 = "ASTM D3035 (iron-pipe sizes, minimum wall), from memory"


def _pe_inch(key: str, label: str, short: str, rows: tuple[Row, ...], source: str) -> PipeTable:
    """Polyethylene by the inch."""
    return PipeTable(
        key, label, short, rows, heat.fahrenheit(73), heat.PE_INCH_HEAT, PLASTIC, 150.0, source,
        heat_note=heat.PE_INCH_NOTE,
    )  # fmt: skip


def _pvc(key: str, label: str, short: str, rows: tuple[Row, ...], source: str) -> PipeTable:
    return PipeTable(
        key, label, short, rows, heat.fahrenheit(73), heat.PVC_HEAT, PLASTIC, 150.0, source
    )


TABLES = (
    PipeTable(
        "pe100-sdr11",
        "PE 100 SDR 11 (metric, PN 16)",
        "PE 100 SDR 11",
        _metric_rows(
            {20: 2.0, 25: 2.3, 32: 3.0, 40: 3.7, 50: 4.6, 63: 5.8, 75: 6.8, 90: 8.2, 110: 10.0}, 16
        ),
        293.15,
        heat.PE_HEAT,
        PLASTIC,
        150.0,
        "EN 12201-2 table 2 (minimum wall), ISO 13761 for heat, from memory",
    ),
    PipeTable(
        "pe100-sdr17",
        "PE 100 SDR 17 (metric, PN 10)",
        "PE 100 SDR 17",
        _metric_rows({32: 2.0, 40: 2.4, 50: 3.0, 63: 3.8, 75: 4.5, 90: 5.4, 110: 6.6}, 10),
        293.15,
        heat.PE_HEAT,
        PLASTIC,
        150.0,
        "EN 12201-2 table 2 (minimum wall), ISO 13761 for heat, from memory",
    ),
    _pe_inch(
        "pe-sidr15",
        "PE 3408/3608 SIDR 15 (inch, 100 psi)",
        "PE SIDR 15",
        _sidr_rows(15, 100),
        D2239,
    ),
    _pe_inch(
        "pe-sidr7", "PE 3408/3608 SIDR 7 (inch, 200 psi)", "PE SIDR 7", _sidr_rows(7, 200), D2239
    ),
    _pe_inch(
        "pe4710-dr11", "PE 4710 DR 11 (inch, 200 psi)", "PE 4710 DR 11", _ratio_rows(11, 200), D3035
    ),
    _pe_inch(
        "pe4710-dr9", "PE 4710 DR 9 (inch, 250 psi)", "PE 4710 DR 9", _ratio_rows(9, 250), D3035
    ),
    _pvc(
        "pvc40",
        "PVC schedule 40",
        "PVC schedule 40",
        _inch_rows(inch.IPS, inch.SCH40, inch.SCH40_PSI),
        D1785,
    ),
    _pvc(
        "pvc80",
        "PVC schedule 80",
        "PVC schedule 80",
        _inch_rows(inch.IPS, inch.SCH80, inch.SCH80_PSI),
        D1785,
    ),
    _pvc(
        "pvc-sdr13",
        "PVC SDR 13.5 (315 psi)",
        "PVC SDR 13.5",
        _inch_rows(inch.IPS, inch.SDR13, dict.fromkeys(inch.SDR13, 315)),
        D2241,
    ),
    _pvc(
        "pvc-sdr21",
        "PVC SDR 21 (200 psi)",
        "PVC SDR 21",
        _inch_rows(inch.IPS, inch.SDR21, dict.fromkeys(inch.SDR21, 200)),
        D2241,
    ),
    _pvc(
        "pvc-sdr26",
        "PVC SDR 26 (160 psi)",
        "PVC SDR 26",
        _inch_rows(inch.IPS, inch.SDR26, dict.fromkeys(inch.SDR26, 160)),
        D2241,
    ),
    PipeTable(
        "cpvc11",
        "CPVC SDR 11 (inch)",
        "CPVC SDR 11",
        _inch_rows(inch.CU_OD, inch.CPVC_WALL, dict.fromkeys(inch.CPVC_WALL, 400)),
        heat.fahrenheit(73),
        heat.CPVC_HEAT,
        PLASTIC,
        150.0,
        "ASTM D2846 (copper tube sizes, minimum wall), from memory",
        hot=True,
    ),
    PipeTable(
        "pex-in",
        "PEX SDR 9 (inch)",
        "PEX SDR 9",
        _inch_rows(inch.PEX_OD, inch.PEX_WALL, dict.fromkeys(inch.PEX_WALL, 160)),
        heat.fahrenheit(73),
        heat.PEX_HEAT,
        PLASTIC,
        150.0,
        "ASTM F876 (minimum wall), from memory",
        hot=True,
    ),
    PipeTable(
        "pex-mm",
        "PEX series 3.2 (metric)",
        "PEX S 3.2",
        _metric_rows({16: 2.2, 20: 2.8, 25: 3.5, 32: 4.4, 40: 5.5, 50: 6.9, 63: 8.6}, 10),
        293.15,
        ((293.15, 1.0), (343.15, 1.0)),
        PLASTIC,
        150.0,
        "EN ISO 15875-2 series S 3.2, class 2 at 10 bar and 70 °C, from memory",
        hot=True,
    ),
    PipeTable(
        "copper-l",
        "Copper type L",
        "copper type L",
        _inch_rows(inch.CU_OD, inch.CU_L, inch.CU_L_PSI),
        heat.fahrenheit(100),
        heat.COPPER_HEAT,
        COPPER,
        140.0,
        "ASTM B88 table 1; ratings of annealed tube, Copper Tube Handbook, from memory",
        hot=True,
    ),
    PipeTable(
        "copper-k",
        "Copper type K",
        "copper type K",
        _inch_rows(inch.CU_OD, inch.CU_K, inch.CU_K_PSI),
        heat.fahrenheit(100),
        heat.COPPER_HEAT,
        COPPER,
        140.0,
        "ASTM B88 table 1; ratings of annealed tube, Copper Tube Handbook, from memory",
        hot=True,
    ),
    PipeTable(
        "copper-m",
        "Copper type M",
        "copper type M",
        _inch_rows(inch.CU_OD, inch.CU_M, inch.CU_M_PSI),
        heat.fahrenheit(100),
        heat.COPPER_HEAT,
        COPPER,
        140.0,
        "ASTM B88 table 1; ratings of annealed tube, Copper Tube Handbook, from memory",
        hot=True,
    ),
    PipeTable(
        "copper-en",
        "Copper (metric)",
        "copper",
        tuple(
            (f"{d}x{w}".replace(".", "p"), f"{d} × {w} mm", d * 1e-3, w * 1e-3, bar * 1e5)
            for d, w, bar in (
                (d, w, _copper_bar(d, w))
                for d, w in (
                    (15, 1.0),
                    (18, 1.0),
                    (22, 1.0),
                    (28, 1.0),
                    (35, 1.2),
                    (42, 1.2),
                    (54, 1.5),
                )
            )
        ),
        heat.fahrenheit(100),
        heat.COPPER_HEAT,
        COPPER,
        140.0,
        "EN 1057 (nominal wall), from memory; rated as annealed tube, wall 10 % under (ASME B31)",
        hot=True,
    ),
    PipeTable(
        "steel",
        "Galvanised steel schedule 40",
        "galvanised steel",
        _inch_rows(inch.IPS, inch.SCH40, dict.fromkeys(inch.SCH40, 300)),
        heat.fahrenheit(150),
        heat.CLASS_150_HEAT,
        GALVANISED,
        120.0,
        "ASME B36.10M walls; rated by its class 150 malleable fittings (ASME B16.3), from memory",
        hot=True,
    ),
    PipeTable(
        "steel-en",
        "Galvanised steel, medium (metric)",
        "galvanised steel",
        tuple(
            (k, n, od * 1e-3, w * 1e-3, 25e5)
            for k, n, od, w in (
                ("15", "DN 15", 21.3, 2.6),
                ("20", "DN 20", 26.9, 2.6),
                ("25", "DN 25", 33.7, 3.2),
                ("32", "DN 32", 42.4, 3.2),
                ("40", "DN 40", 48.3, 3.2),
                ("50", "DN 50", 60.3, 3.6),
                ("65", "DN 65", 76.1, 3.6),
                ("80", "DN 80", 88.9, 4.0),
                ("100", "DN 100", 114.3, 4.5),
            )
        ),
        293.15,
        heat.EN_THREAD_HEAT,
        GALVANISED,
        120.0,
        "EN 10255 medium series; rated by threaded fittings (EN 10242, 25 bar), from memory",
        hot=True,
    ),
    PipeTable(
        "layflat",
        "Lay-flat hose",
        "lay-flat",
        _bore_rows(
            (
                ("25", "25 mm (1 in)", 25e-3),
                ("32", "32 mm (1 1/4 in)", 32e-3),
                ("38", "38 mm (1 1/2 in)", 38e-3),
                ("51", "51 mm (2 in)", 51e-3),
                ("76", "76 mm (3 in)", 76e-3),
            ),
            4,
        ),
        293.15,
        ((293.15, 1.0), (323.15, 0.5)),
        RUBBER,
        140.0,
        "common bores and a light-duty rating of 4 bar: common practice, no source",
    ),
    PipeTable(
        "suction-hose",
        "Suction hose, reinforced",
        "suction hose",
        _bore_rows(
            (
                ("20", "20 mm (3/4 in)", 20e-3),
                ("25", "25 mm (1 in)", 25e-3),
                ("32", "32 mm (1 1/4 in)", 32e-3),
                ("38", "38 mm (1 1/2 in)", 38e-3),
                ("51", "51 mm (2 in)", 51e-3),
                ("76", "76 mm (3 in)", 76e-3),
            ),
            3,
        ),  # fmt: skip
        293.15,
        ((293.15, 1.0), (323.15, 0.5)),
        RUBBER,
        140.0,
        "common bores and a light-duty rating of 3 bar: common practice, no source",
    ),
    PipeTable(
        "hose",
        "Garden hose",
        "garden hose",
        _bore_rows(
            (
                ("0.5", "13 mm (1/2 in)", 0.5 * INCH),
                ("0.625", "16 mm (5/8 in)", 0.625 * INCH),
                ("0.75", "19 mm (3/4 in)", 0.75 * INCH),
                ("1", "25 mm (1 in)", INCH),
            ),
            6,
        ),
        293.15,
        ((293.15, 1.0), (323.15, 0.5)),
        RUBBER,
        140.0,
        "nominal bores and a common rating of 6 bar: common practice, no source",
    ),
)
