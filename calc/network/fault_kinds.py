"""Kinds of fault: how likely before anything is read, how bad each may be, what it is noticed by.

Shares are weights, not counts of anything: common practice, no source, put into numbers by our
choice.  A kind's ``severities`` go from barely noticed to bad; how bad is not asked but averaged.
"""

from __future__ import annotations

from dataclasses import dataclass

from calc.units import LITRE, MINUTE

LPM = LITRE / MINUTE  # m3/s
SELDOM = 0.1  # share of a kind's cases in which a symptom that does not belong to it is seen
LEAK_AT = 2e5  # Pa, the pressure at which a leak's severity is its flow; our choice


@dataclass(frozen=True)
class Kind:
    """key: of the kind; prior: weight before any reading; severities: from mild to bad.

    per_section: any pipe section may have it.
    """

    key: str
    prior: float
    severities: tuple[float, ...]
    per_section: bool = False


# What a severity is stands beside it. All: our choice.
KINDS = (
    Kind("nothing", 0.15, (1.0,)),
    # loss coefficient on the pipe's velocity head. Gate valve half open 4.5, a quarter open 24
    # (Perry's Chemical Engineers' Handbook, from memory); nearly shut: any
    Kind("valve", 0.14, (20.0, 80.0, 320.0, 1300.0, 5000.0), per_section=True),
    Kind("shut", 0.06, (9e5,), per_section=True),  # the same: next to nothing passes
    Kind("narrow", 0.04, (1.0,), per_section=True),  # sizes smaller than said
    # m3/s at ``LEAK_AT``
    Kind("leak", 0.10, (0.3 * LPM, 1.5 * LPM, 5 * LPM, 15 * LPM, 40 * LPM), per_section=True),
    Kind("filter", 0.12, (6.0, 25.0, 100.0, 400.0)),  # times the loss of a clean filter
    Kind("strainer", 0.06, (30.0, 120.0, 480.0, 2000.0)),  # loss coefficient in the suction pipe
    Kind("outlet", 0.08, (0.75, 0.5, 0.25)),  # share of its flow that a furred outlet passes
    Kind("worn", 0.05, (0.9, 0.8, 0.7, 0.6)),  # share of head and of flow that is left
    Kind("air", 0.06, (0.9, 0.8, 0.7)),  # share of head; of flow and power its square
    Kind("volts", 0.06, (0.92, 0.86, 0.8, 0.75, 0.7)),  # share of the voltage, and so of the speed
    Kind("charge", 0.08, (0.5, 0.2, 0.05)),  # share of the tank's air that is left
    Kind("check", 0.05, (0.1 * LPM, 0.5 * LPM, 3 * LPM)),  # m3/s back through the pump at rest
    Kind("level", 0.06, (1.0, 2.0, 4.0)),  # m the water stands lower
    Kind("set", 0.06, (0.9, 0.8, 0.7, 0.6, 0.5)),  # share of the set pressure
)  # fmt: skip
BY_KEY = {kind.key: kind for kind in KINDS}

# symptom -> {kind: share of its cases in which it is seen}; other kinds ``SELDOM``.
# Common practice, no source; the numbers are our choice.
SYMPTOMS: dict[str, dict[str, float]] = {
    "weak_all": {"set": 0.8, "worn": 0.7, "air": 0.6, "volts": 0.7, "filter": 0.5, "level": 0.4,
                 "strainer": 0.5, "leak": 0.4, "valve": 0.3, "narrow": 0.3, "nothing": 0.05},
    "weak_one": {"valve": 0.6, "shut": 0.6, "outlet": 0.9, "narrow": 0.5, "filter": 0.4,
                 "leak": 0.3, "nothing": 0.05},
    "cycling": {"charge": 0.9, "check": 0.5, "leak": 0.5, "filter": 0.2, "nothing": 0.05},
    "prime": {"air": 0.7, "check": 0.7, "level": 0.5, "strainer": 0.4, "nothing": 0.02},
    "bangs": {"charge": 0.4, "air": 0.3, "check": 0.4, "valve": 0.15},
    "noon": {"level": 0.6, "air": 0.3, "strainer": 0.3, "volts": 0.2, "nothing": 0.05},
    "night": {"leak": 0.8, "check": 0.5, "charge": 0.3, "nothing": 0.05},
    "air": {"air": 0.9, "level": 0.5, "strainer": 0.3, "nothing": 0.05},
}  # fmt: skip


def noticed(kind: str, symptoms: tuple[str, ...]) -> float:
    """Share of a kind's cases that show all these symptoms, each by itself.

    kind: key of ``KINDS``; symptoms: keys of ``SYMPTOMS``.  Returns a share above 0.
    Raises KeyError for an unknown symptom.  Source: the table above.
    """
    share = 1.0
    for one in symptoms:
        share *= SYMPTOMS[one].get(kind, SELDOM)
    return share
