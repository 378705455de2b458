"""How much of its rating a kind of pipe keeps as it gets hotter: (K, share) points by kind.

Between the points a straight line; the last point is the hottest the kind may get.
"""

from calc.units import PSI


def fahrenheit(degrees: float) -> float:
    """A temperature as K.  degrees: degF, any number.  Source: NIST SP 811."""
    return 273.15 + (degrees - 32) * 5 / 9


# PVC 1120 service factors, 73 to 140 degF: the trade's common table as in AWWA M23, from memory.
# Printed tables give 0.50 or 0.51 at 110 degF and 0.30 or 0.31 at 130 degF: the lower is used.
PVC_HEAT = tuple(
    (fahrenheit(f), k)
    for f, k in (
        (73, 1.0),
        (80, 0.88),
        (90, 0.75),
        (100, 0.62),
        (110, 0.50),
        (120, 0.40),
        (130, 0.30),
        (140, 0.22),
    )
)
# PE factors: ISO 13761:1996 (20, 30, 40 degC)
PE_HEAT = ((293.15, 1.0), (303.15, 0.87), (313.15, 0.74))
# inch PE is rated at 73 degF (23 degC); warmer, the same factors: a little on the safe side
PE_INCH_HEAT = ((fahrenheit(73), 1.0), *PE_HEAT[1:])
# PEX ratings 160 psi at 73 degF, 100 at 180, 80 at 200: ASTM F876
PEX_HEAT = ((fahrenheit(73), 1.0), (fahrenheit(180), 100 / 160), (fahrenheit(200), 80 / 160))
# class 150 malleable threaded fittings: 300 psi up to 150 degF, 265 at 200 (ASME B16.3)
CLASS_150_HEAT = ((fahrenheit(150), 1.0), (fahrenheit(200), 265 / 300))
EN_THREAD_HEAT = ((293.15, 1.0), (373.15, 1.0))  # 25 bar from -20 to 120 degC (EN 10242)
# CPVC 4120 in SDR 11: 400 psi at 73 degF, 100 at 180: ASTM D2846, from memory; between them the
# trade's common table for CPVC, from memory
CPVC_HEAT = tuple(
    (fahrenheit(f), k)
    for f, k in (
        (73, 1.0), (90, 0.90), (100, 0.81), (120, 0.65), (140, 0.50), (160, 0.39), (180, 0.25),
    )
)  # fmt: skip
PE_INCH_NOTE = (
    "That limit is cautious: some makes of this pipe are rated hotter, so ask the manufacturer."
)
# annealed copper's allowable stress: 6000 psi at 100 degF, 5100 at 150, 4800 at 200 (ASME B31)
COPPER_STRESS = 6000 * PSI  # Pa, at 100 degF
COPPER_HEAT = (
    (fahrenheit(100), 1.0),
    (fahrenheit(150), 5100 / 6000),
    (fahrenheit(200), 4800 / 6000),
)
