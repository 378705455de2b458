"""One run of pipe, tried in a size: what it loses, what is left, and why it is in or out."""

from dataclasses import dataclass, replace

from calc import water
from calc.errors import RangeError
from calc.pipe import friction, pipes
from calc.solve import root
from calc.units import GRAVITY

HOSES = frozenset({"hose", "layflat"})
MODEST = 0.2  # of climb and wanted pressure; our rule


@dataclass(frozen=True)
class Run:
    """What is asked of the pipe, SI: m3/s, m, Pa, m/s, K; ``fittings``: (Fitting, count) pairs."""

    flow: float
    length: float
    climb: float
    start: float
    wanted: float
    fastest: float
    highest: float
    water: float
    hottest: float
    fittings: tuple

    @property
    def weight(self):
        """Pa per metre of climb."""
        return water.density(self.water) * GRAVITY

    @property
    def viscosity(self):
        return water.kinematic_viscosity(self.water)

    def k(self, pipe):
        """Loss coefficients of the fittings together, in this bore, -."""
        bore = pipe.inside_m
        return sum(n * friction.fitting_coefficient(fitting, bore) for fitting, n in self.fittings)

    def local_loss(self, pipe):
        """Head lost in the fittings, m."""
        return friction.local_loss(self.k(pipe), self.speed(pipe))

    @property
    def lowest_point(self):
        """Pressure at the lowest point with everything shut, Pa."""
        return self.highest + self.weight * max(0.0, -self.climb)

    @property
    def standing(self):
        """Pressure at the far end with nothing running, Pa; no pipe leaves more."""
        return self.start - self.weight * self.climb

    def speed(self, pipe):
        return friction.velocity(self.flow, pipe.inside_m)

    def straight_loss(self, pipe):
        """Head lost in the straight pipe, m."""
        return friction.pipe_loss(
            self.flow, pipe.inside_m, self.length, pipe.roughness_m, self.viscosity
        )

    def loss(self, pipe):
        """Head lost in pipe and fittings, m."""
        return self.straight_loss(pipe) + self.local_loss(pipe)

    def left(self, pipe):
        """Pressure at the far end, Pa; below zero where the water does not arrive."""
        return self.standing - self.weight * self.loss(pipe)

    def rating(self, pipe):
        """Pa at the hottest the pipe gets; None where the standard gives none."""
        try:
            return pipes.rating_at(pipe, self.hottest)
        except RangeError:
            return None


@dataclass(frozen=True)
class Trial:
    """One size tried: its figures in SI and the ``reasons`` against it (none: it fits)."""

    pipe: pipes.Pipe
    speed: float
    loss: float
    left: float
    rating: float | None
    reasons: tuple

    @property
    def fits(self):
        return not self.reasons


HOT, WEAK, SHORT, DRY, FAST = (
    "not rated so hot",
    "rating too low",
    "pressure short",
    "water does not arrive",
    "too fast",
)


def tried(run, pipe):
    """``Trial`` of one pipe."""
    speed, loss, rating = run.speed(pipe), run.loss(pipe), run.rating(pipe)
    left = run.standing - run.weight * loss
    reasons = []
    if rating is None:
        reasons.append(HOT)
    elif rating < run.lowest_point:
        reasons.append(WEAK)
    if left <= 0 < run.wanted or left < 0:
        reasons.append(DRY)
    elif left < run.wanted:
        reasons.append(SHORT)
    if speed > run.fastest * (1 + 1e-9):  # a limit typed in another unit is still met
        reasons.append(FAST)
    return Trial(pipe, speed, loss, left, rating, tuple(reasons))


def trials(run, kind):
    """Every size of a kind tried, the narrowest first."""
    return tuple(tried(run, pipe) for pipe in pipes.sizes(kind))


def smallest(tries):
    """The narrowest size that fits; None if none does."""
    return next((trial for trial in tries if trial.fits), None)


def another_kind(run, like):
    """The narrowest pipe of another kind that fits: metric for metric, inch for inch if any.

    like: a ``Pipe`` of the kind that does not fit.  Hoses are left out: not for a line that
    stays under pressure.  None if there is none.
    """
    others = [kind for kind in pipes.KINDS if kind not in {like.kind, *HOSES}]
    found = [trial for kind in others if (trial := smallest(trials(run, kind)))]
    inch = _by_the_inch(like)
    return min(found, key=lambda t: (_by_the_inch(t.pipe) != inch, t.pipe.inside_m), default=None)


def _by_the_inch(pipe):
    return pipe.name.endswith(" in")


def modest(run, tries):
    """The narrowest size, not too fast, that would lose no more than a fifth to friction.

    For saying which start pressure would do; the widest size if none is so wide.
    """
    allowed = run.wanted + run.weight * max(0.0, run.climb)
    for trial in tries:
        if FAST not in trial.reasons and run.weight * trial.loss <= MODEST * allowed:
            return trial
    return tries[-1]


def start_needed(run, pipe):
    """Pressure at the start that leaves what is wanted through a pipe, Pa."""
    return run.start + run.wanted - run.left(pipe)


def largest_flow(run, pipe):
    """The most a pipe carries with the wanted pressure left and no faster than allowed, m3/s.

    0 where even standing water has less than the wanted pressure.
    """
    if run.standing <= run.wanted:
        return 0.0
    most = run.fastest * run.flow / run.speed(pipe)

    def spare(flow):
        return replace(run, flow=flow).left(pipe) - run.wanted

    return most if spare(most) >= 0 else root(spare, 0.0, most, 1e-9 * most)
