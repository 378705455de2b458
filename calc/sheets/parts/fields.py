"""Fields that several sheets ask for in the same words and with the same limits."""

from calc.page.fields import Number


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
