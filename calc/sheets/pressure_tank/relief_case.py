"""A relief valve beside a pressure tank, as numbers: what it must pass, and how far it holds."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc import practice, relief, water
from calc.units import MET

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.sheets.pressure_tank.case import Case


@dataclass(frozen=True)
class Relief:
    """opens: where it opens, Pa; high: where the pump is stopped or held, Pa; rating: lowest of
    what it guards, Pa; gives: what the pump gives then, m3/s; opening: of the valve, m; most: what
    the pump makes with no flow, Pa.  All but the first two None where they are not known.
    """

    opens: float
    high: float
    rating: float | None = None
    gives: float | None = None
    opening: float | None = None
    most: float | None = None

    @property
    def density(self) -> float:
        return water.density(practice.COOL_WATER)

    @property
    def full(self) -> float:
        """Pressure at which it is fully open, Pa."""
        return relief.full_pressure(self.opens)

    @property
    def idle(self) -> bool:
        """Whether the pump never reaches where it opens."""
        return self.most is not None and self.most <= self.opens * MET

    @property
    def passes(self) -> float | None:
        """What it must pass, m3/s; None where the pump's flow is not known."""
        return 0.0 if self.idle else self.gives

    @property
    def needed(self) -> float | None:
        """Opening that passes it fully open, m; None where the pump's flow is not known."""
        if self.passes is None:
            return None
        return relief.opening_for(self.passes, self.full, self.density)

    @property
    def small(self) -> bool:
        """Whether the opening given passes less than the pump gives, as far as both are known."""
        known = self.opening is not None and self.needed is not None
        return known and self.opening * MET < self.needed

    @property
    def reaches(self) -> float | None:
        """Pressure in front of the open valve while the pump runs, Pa; None where not known.

        No higher than the pump makes; with an opening that is enough, that of the valve fully open.
        """
        if self.passes is None:
            return None
        if self.idle:
            return self.most
        reached = self.full
        if self.small:
            reached = relief.pressure_to_pass(self.passes, self.opening, self.density)
        return reached if self.most is None else min(reached, self.most)

    # Where it may be set ----------------------------------------------------------------------

    @property
    def lowest_set(self) -> float:
        """Set so high it rests closed while the pump is controlled, Pa."""
        return practice.RELIEF_CLEAR * self.high

    @property
    def highest_set(self) -> float | None:
        """Set no higher, it is fully open at the lowest rating, Pa."""
        return None if self.rating is None else self.rating / (1 + practice.RELIEF_OVER)


def relief_of(values: Values, case: Case) -> Relief | None:
    """The ``Relief`` of a form; None where none is given."""
    if values.relief is None:
        return None
    whole = values.refill if case.speed else values.pump
    return Relief(
        opens=values.relief,
        high=case.high,
        rating=values.weakest,
        gives=whole if values.blow is None else values.blow,
        opening=values.opening,
        most=case.most,
    )
