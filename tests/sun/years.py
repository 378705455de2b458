"""The three hourly years (TMY3, see ``data/README.md``), read once."""

import gzip
import math
from functools import cache
from pathlib import Path

from calc.sun.days import MONTH_DAYS, month_of_days
from calc.sun.files import read_hours

DATA = Path(__file__).parent / "data"
# latitude, longitude (degrees), hours ahead of UTC: the first line of each file
PLACES = {
    "el-paso": (31.770, -106.500, -7.0),
    "tucson": (32.133, -110.950, -7.0),
    "honolulu": (21.317, -157.933, -10.0),
}
MONTH_OF = month_of_days()


def text(name):
    return gzip.decompress((DATA / f"{name}.csv.gz").read_bytes()).decode()


@cache
def hourly(name):
    return read_hours(text(name))


def latitude(name):
    return math.radians(PLACES[name][0])


def daily(name):
    """J/m2 of each of 365 days."""
    level = hourly(name).level
    return [3600.0 * sum(level[24 * day : 24 * day + 24]) for day in range(365)]


def monthly(days):
    """The mean of each month's days."""
    sums = [0.0] * 12
    for month, light in zip(MONTH_OF, days, strict=True):
        sums[month] += light
    return [one / count for one, count in zip(sums, MONTH_DAYS, strict=True)]


def worst_week(days, means):
    """Least mean of seven days in a row, each as a share of its month's mean."""
    share = [light / means[month] for month, light in zip(MONTH_OF, days, strict=True)]
    return min(sum(share[at : at + 7]) / 7 for at in range(359))
