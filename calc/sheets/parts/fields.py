"""Fields that several sheets ask for in the same words and with the same limits."""

from calc.page.fields import Number, Unknown
from calc.units import QUANTITIES


def water_temperature(hottest, group=""):
    """Of the water in the pipe. hottest: K, the highest at which the sheet's formulas hold."""
    return Number(
        "water",
        "Water temperature",
        "temperature",
        "15 °C",
        "59 °F",
        273.15,
        hottest,
        group=group,
    )


def altitude(highest, metric="0 m", us="0 ft", group="", help=""):
    """Of the site. highest: m, to which the sheet is meant; metric, us: as typed in the example."""
    return Number(
        "altitude",
        "Height above sea level",
        "length",
        metric,
        us,
        -400.0,
        highest,
        help=help,
        group=group,
    )


def climb(metric, us, most):
    """From the pump to the tap. metric, us: as typed in the example; most: m."""
    return Number(
        "climb",
        "Climb from pump to tap",
        "length",
        metric,
        us,
        -200.0,
        most,
        help="Height, not distance. Below the pump: a minus sign.",
    )


def pipe_length():
    """Of the pipe from the pump to the tap."""
    return Number("length", "Length of pipe", "length", "140 m", "450 ft", 0.1, 20e3)


def usual(value: float, quantity: str, reason: str, digits: int = 2) -> Unknown:
    """What follows from "I don't know": a usual value of ``practice``, in round numbers.

    value: SI; quantity: a key of ``units.QUANTITIES``; reason: why that, with its standing.

    >>> usual(6.3e-4, "flow", "common practice").us
    '10 gpm'
    """
    texts = []
    for system in ("metric", "us"):
        unit = QUANTITIES[quantity].default(system)
        texts.append(f"{float(f'{unit.from_si(value):.{digits}g}'):g} {unit.symbol}")
    return Unknown(*texts, reason)
