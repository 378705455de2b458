"""Which fault fits what was read: each is put into the supply, which is solved, and compared.

For a fault f of severity s the readings would be e(f, s).  What was read differs from that by its
own error, by what nobody knows exactly (roughness, losses of fittings, heights, ...) and by what
the model leaves out of a fault.  The likelihood is the Gaussian of all readings together, averaged
over the severities; with the weight of each fault before (its prior and what was noticed) it gives
the shares.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from calc.errors import InputError
from calc.network import faults
from calc.network.fault_kinds import BY_KEY, noticed
from calc.network.fault_readings import Expected, Reading
from calc.network.faults import NOTHING, Fault, Watched, changed, possible
from calc.network.parts import PumpSet, Run

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator, Sequence

# Standard errors of what nobody knows exactly, as shares: our choice
SPREAD = 0.05  # of roughness, losses of fittings, heights and the flow of an outlet
PUMP_SPREAD = 0.03  # of a pump's head; ISO 9906 allows small pumps more
SET_SPREAD = 0.02  # of the pressure that a speed control holds
LEAST_HEIGHT = 0.1  # m, the least that a height is uncertain by
OF_CHANGE = 0.05  # of what a fault changes: what the model of the fault leaves out
BETWEEN = 4  # steps from one severity to the next, in which readings are taken in a straight line
FAR = 5.0  # standard errors beyond which a fault is as good as ruled out
TOO_FAR = 0.01  # share of cases in which readings lie further from what fits best than these


@dataclass(frozen=True)
class Fit:
    """A fault and how it fits.

    share: of all that was thought of, given the readings; severity: the one that fits best, in its
    unit; expected: what the readings would be at it; residuals: of each reading alone, in standard
    errors; chi2: of all readings together.
    """

    fault: Fault
    share: float
    severity: float
    expected: tuple[float, ...]
    residuals: tuple[float, ...]
    chi2: float


@dataclass(frozen=True)
class Group:
    """Faults that these readings cannot tell apart, the likeliest first."""

    fits: tuple[Fit, ...]

    @property
    def share(self) -> float:
        return sum(one.share for one in self.fits)

    @property
    def first(self) -> Fit:
        return self.fits[0]

    def has(self, fault: Fault) -> bool:
        """Whether a fault is in it."""
        return any(one.fault == fault for one in self.fits)


@dataclass(frozen=True)
class Ranking:
    """groups: likeliest first; errors: standard error of each reading with what is not known."""

    readings: tuple[Reading, ...]
    errors: tuple[float, ...]
    groups: tuple[Group, ...]

    @property
    def unlike(self) -> bool:
        """Whether even the best fit lies further off than one case in a hundred would."""
        best = min(one.chi2 for group in self.groups for one in group.fits)
        return chi2_tail(best, len(self.readings)) < TOO_FAR


class Finder:
    """Everything that a supply's faults would show, worked out once for all readings of it."""

    def __init__(self, supply: Watched) -> None:
        self.supply = supply
        self.sound = Expected(supply)
        self.suspects = possible(supply)
        self._changed: dict[tuple[Fault, float], Expected] = {}
        self._values: dict[tuple[Fault, float, object], float | None] = {}
        self._moved: list[Expected] | None = None
        self._slopes: dict[object, tuple[float, ...]] = {}

    # What readings would be --------------------------------------------------------------------

    def with_fault(self, fault: Fault, severity: float) -> Expected:
        """``Expected`` of the supply with a fault in it."""
        key = (fault, severity)
        if key not in self._changed:
            supply = changed(self.supply, fault, severity)
            self._changed[key] = Expected(supply, self.sound)
        return self._changed[key]

    def expected(self, fault: Fault, severity: float, reading: Reading) -> float | None:
        """What a reading would be with a fault; None where it cannot be told."""
        key = (fault, severity, (*reading.asked, reading.span_s))
        if key not in self._values:
            try:
                self._values[key] = self.with_fault(fault, severity).of(reading)
            except InputError:  # this fault leaves nothing that can be solved
                self._values[key] = None
        return self._values[key]

    def tells(self, reading: Reading) -> bool:
        """Whether the sound supply says what this reading would be."""
        return self.expected(NOTHING, 1.0, reading) is not None

    def curve(
        self, fault: Fault, readings: Sequence[Reading]
    ) -> list[tuple[float, tuple[float, ...]]]:
        """(severity, what the readings would be) from mild to bad, with steps between."""
        marks: list[tuple[float, tuple[float, ...]]] = []
        for severity in BY_KEY[fault.kind].severities:
            told = [self.expected(fault, severity, one) for one in readings]
            values = tuple(one for one in told if one is not None)
            if len(values) == len(told):
                marks.append((severity, values))
        found = marks[:1]
        for (s, a), (t, b) in zip(marks, marks[1:], strict=False):
            for step in range(1, BETWEEN + 1):
                part = step / BETWEEN
                values = tuple(x + part * (y - x) for x, y in zip(a, b, strict=True))
                near = 0.5 <= t / s <= 2.0  # as shares are; losses and leaks go by ratios
                found.append((s + part * (t - s) if near else s * (t / s) ** part, values))
        return found

    # What is not known exactly -----------------------------------------------------------------

    def slopes(self, reading: Reading) -> tuple[float, ...]:
        """What a reading of the sound supply changes by, for one standard error of each unknown."""
        key = (*reading.asked, reading.span_s)
        if key not in self._slopes:
            if self._moved is None:
                moved = (self._try(one) for one in unknowns(self.supply))
                self._moved = [one for one in moved if one is not None]
            sound = self.sound.of(reading) or 0.0
            self._slopes[key] = tuple((one.of(reading) or 0.0) - sound for one in self._moved)
        return self._slopes[key]

    def _try(self, supply: Watched) -> Expected | None:
        found = Expected(supply, self.sound)
        try:
            found.solution(())
        except InputError:
            return None
        return found

    def covariance(self, readings: Sequence[Reading]) -> list[list[float]]:
        """Of the readings about what the right supply would show, with a sound supply's slopes."""
        slopes = [self.slopes(one) for one in readings]
        return [
            [
                sum(a * b for a, b in zip(x, y, strict=True))
                + (readings[i].error ** 2 if i == j else 0.0)
                for j, y in enumerate(slopes)
            ]
            for i, x in enumerate(slopes)
        ]

    # Ranking -----------------------------------------------------------------------------------

    def rank(self, readings: Sequence[Reading], symptoms: Sequence[str] = ()) -> Ranking:
        """Which faults fit, in groups that the readings cannot tell apart.

        readings: those that the sound supply can tell (``tells``); symptoms: keys of
        ``fault_kinds.SYMPTOMS``.
        Returns ``Ranking``; all shares add to 1.  Raises InputError for a supply that cannot be
        solved.  Source: Bayes; severities are averaged with equal weights.
        """
        taken = tuple(readings)
        sound = [self.expected(NOTHING, 1.0, one) or 0.0 for one in taken]
        spread = self.covariance(taken)
        errors = tuple(math.sqrt(spread[i][i]) for i in range(len(taken)))
        found: list[tuple[float, Fit]] = []
        for fault in self.suspects:
            curve = self.curve(fault, taken)
            if curve:
                weight = self._weight(fault) * noticed(fault.kind, tuple(symptoms))
                found.append(_fitted(fault, weight, curve, taken, sound, spread))
        top = max(score for score, _ in found)
        whole = sum(math.exp(score - top) for score, _ in found)
        fits = [replace(fit, share=math.exp(score - top) / whole) for score, fit in found]
        return Ranking(taken, errors, _groups(fits, errors))

    def _weight(self, fault: Fault) -> float:
        """Of a fault before any reading: of its kind, over all the places it may be at."""
        alike = sum(one.kind == fault.kind for one in self.suspects)
        return BY_KEY[fault.kind].prior / alike


def unknowns(supply: Watched) -> Iterator[Watched]:
    """The supply with one thing moved by one standard error at a time.

    Roughness of all pipes, losses of all fittings, each height, the water's level, the set
    pressure, the pumps' head, each outlet's flow.  Raises nothing.  Source: our choice, above.
    """
    network = supply.network
    yield _links(supply, lambda link: _rough(link, 1 + SPREAD, 1.0))
    yield _links(supply, lambda link: _rough(link, 1.0, 1 + SPREAD))
    start = network.heights[supply.start]
    for place in network.places:
        if place.name not in (supply.start, supply.inlet):
            more = max(LEAST_HEIGHT, SPREAD * abs(place.height_m - start))
            moved = replace(place, height_m=place.height_m + more)
            places = tuple(moved if one is place else one for one in network.places)
            yield replace(supply, network=replace(network, places=places))
    yield faults.changed(
        supply,
        Fault("level"),
        max(LEAST_HEIGHT, SPREAD * abs(start - network.heights[supply.water])),
    )
    if supply.set_pa is not None:
        share = SET_SPREAD
        if supply.cut_in is not None and supply.cut_out is not None:
            # anywhere between the two: the spread of what is equally likely over that width
            share = (supply.cut_out - supply.cut_in) / math.sqrt(12.0) / supply.set_pa
        yield _links(supply, lambda link: _set(link, 1 - share))
    if supply.pumps:
        yield _links(supply, _weaker)
    for outlet in network.outlets:
        yield faults.changed(supply, Fault("outlet", outlet.name), 1 - SPREAD)


def _links(supply: Watched, change: Callable[[object], object]) -> Watched:
    links = tuple(change(link) for link in supply.network.links)
    return replace(supply, network=replace(supply.network, links=links))  # type: ignore[arg-type]


def _rough(link: object, roughness: float, k: float) -> object:
    return faults.roughly(link, roughness, k) if isinstance(link, Run) else link


def _set(link: object, share: float) -> object:
    return faults.set_to(link, share) if isinstance(link, PumpSet) else link


def _weaker(link: object) -> object:
    if not isinstance(link, PumpSet):
        return link
    points = tuple(replace(one, head=one.head * (1 - PUMP_SPREAD)) for one in link.pump.points)
    return replace(link, pump=replace(link.pump, points=points, _cache={}))


# Likelihood ---------------------------------------------------------------------------------------


def log_likelihood(
    differences: Sequence[float], covariance: Sequence[Sequence[float]]
) -> tuple[float, float]:
    """Of differences that are Gaussian about nothing with a covariance.

    ln L = -(d' C^-1 d + ln det C + n ln 2 pi) / 2
    differences: d, any units; covariance: C, of those, symmetric and positive.
    Returns (ln L, d' C^-1 d).  Raises ValueError where C is not positive.
    Source: normal distribution of several variables, by Cholesky's factors.
    """
    size = len(differences)
    lower = [[0.0] * size for _ in range(size)]
    solved: list[float] = []
    log_det = 0.0
    for i in range(size):
        for j in range(i + 1):
            rest = covariance[i][j] - sum(lower[i][k] * lower[j][k] for k in range(j))
            lower[i][j] = math.sqrt(rest) if i == j else rest / lower[j][j]
        log_det += 2.0 * math.log(lower[i][i])
        before = sum(lower[i][k] * solved[k] for k in range(i))
        solved.append((differences[i] - before) / lower[i][i])
    chi2 = sum(one * one for one in solved)
    return -0.5 * (chi2 + log_det + size * math.log(2.0 * math.pi)), chi2


def _fitted(
    fault: Fault,
    weight: float,
    curve: Sequence[tuple[float, tuple[float, ...]]],
    readings: Sequence[Reading],
    sound: Sequence[float],
    spread: Sequence[Sequence[float]],
) -> tuple[float, Fit]:
    """(ln of weight times likelihood, averaged over severities; the ``Fit`` at the best)."""
    best: tuple[float, Fit] | None = None
    logs = []
    for severity, expected in curve:
        own = [list(row) for row in spread]
        for i, (one, was) in enumerate(zip(expected, sound, strict=True)):
            own[i][i] += (OF_CHANGE * (one - was)) ** 2
        apart = [one.value - value for one, value in zip(readings, expected, strict=True)]
        log, chi2 = log_likelihood(apart, own)
        logs.append(log)
        if best is None or log > best[0]:
            alone = tuple(d / math.sqrt(own[i][i]) for i, d in enumerate(apart))
            best = log, Fit(fault, 0.0, severity, expected, alone, chi2)
    assert best is not None
    top = best[0]
    mean = top + math.log(sum(math.exp(one - top) for one in logs) / len(logs))
    return math.log(weight) + mean, best[1]


def _groups(fits: Sequence[Fit], errors: Sequence[float]) -> tuple[Group, ...]:
    """The likeliest fault with all that none of the readings parts from it; then of the rest."""
    left = sorted(fits, key=lambda one: -one.share)
    found = []
    while left:
        first = left[0]
        same = [one for one in left if _alike(first, one, errors)]
        found.append(Group(tuple(same)))
        left = [one for one in left if one not in same]
    return tuple(sorted(found, key=lambda one: -one.share))


def _alike(one: Fit, other: Fit, errors: Sequence[float]) -> bool:
    pairs = zip(one.expected, other.expected, errors, strict=True)
    return all(abs(a - b) <= error for a, b, error in pairs)


def chi2_tail(chi2: float, count: int) -> float:
    """Share of cases in which a sum of squares of ``count`` standard normal numbers is above chi2.

    Q(a, x) = G(a, x) / G(a), a = count / 2, x = chi2 / 2
    chi2: 0 or more; count: 0 or more.  Returns a share.  Raises nothing.
    Source: regularised incomplete gamma function, by its recurrence from a = 1/2 or 1.
    """
    if count <= 0:
        return 1.0
    x = chi2 / 2.0
    a = 0.5 if count % 2 else 1.0
    share = math.erfc(math.sqrt(x)) if count % 2 else math.exp(-x)
    while a < count / 2.0 - 1e-9:
        if x > 0:
            share += math.exp(a * math.log(x) - x - math.lgamma(a + 1.0))
        a += 1.0
    return min(share, 1.0)
