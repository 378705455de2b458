"""The reading, of those not yet taken, that best parts what is still likely."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from calc.network.fault_readings import Reading
    from calc.network.suspects import Finder, Fit, Ranking

CLEAR = (
    4.0  # standard errors from which two faults are told apart: further is no better; our choice
)
LOOKED_AT = 6  # the likeliest faults that are told apart; our choice
LEAST_SHARE = 0.01  # below which a fault is not worth a reading; our choice


@dataclass(frozen=True)
class Parting:
    """reading: its value is not known yet; gain: how much it parts, - (at most 1); error: of the
    reading with what is not known, in its unit; expected: (fit, what it would be) of the likeliest.
    """

    reading: Reading
    gain: float
    error: float
    expected: tuple[tuple[Fit, float], ...]


def best(finder: Finder, ranking: Ranking, offered: Iterable[Reading]) -> Parting | None:
    """The reading that parts the likeliest faults best, within a group too; None if none does.

    finder, ranking: of the readings so far; offered: those to choose from, with their errors.
    gain = sum of p_i p_j min(1, d_ij^2 / c^2) over pairs, of the sum of p_i p_j
    d: in standard errors of the reading with what is not known; c: ``CLEAR``.
    Raises nothing.  Source: our choice.
    """
    fits = sorted((one for group in ranking.groups for one in group.fits), key=lambda f: -f.share)
    fits = [one for one in fits[:LOOKED_AT] if one.share >= LEAST_SHARE]
    taken = {one.asked for one in ranking.readings}
    found: Parting | None = None
    for reading in offered:
        if reading.asked in taken or not finder.tells(reading):
            continue
        part = _parting(finder, reading, fits)
        if part is not None and (found is None or part.gain > found.gain + 1e-9):
            found = part
    return found if found is not None and found.gain > 0.02 else None


def _parting(finder: Finder, reading: Reading, fits: Sequence[Fit]) -> Parting | None:
    error = math.sqrt(finder.covariance((reading,))[0][0])
    values = []
    for fit in fits:
        value = finder.expected(fit.fault, fit.severity, reading)
        if value is None:
            return None
        values.append((fit, value))
    gain = whole = 0.0
    for i, (one, a) in enumerate(values):
        for other, b in values[:i]:
            pair = one.share * other.share
            whole += pair
            gain += pair * min(1.0, ((a - b) / error / CLEAR) ** 2)
    return Parting(reading, gain / whole, error, tuple(values)) if whole > 0 else None
