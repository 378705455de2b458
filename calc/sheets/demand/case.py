"""One count of the water needed: from what was typed to flows and amounts a day."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING

from calc import demand

if TYPE_CHECKING:
    from calc.page.form import Values

OPEN = {"shower": "showers_open", "sink": "sinks_open", "hose": "hoses_open"}
OTHERS = "Other animals"
SAME = 1e-2  # flows closer than this are one: 7.5 L/min is 2 gpm to a hundredth; our choice


@dataclass(frozen=True)
class Case:
    """One count.

    taps: kind -> (number, flow m3/s, chance that one is open); there: kind -> number typed; named:
    kind -> number named as open; drip: m3/s; parts: what for -> m3/s over the day; people, each
    (m3/s), animals: key -> number, others (m3/s), beds (m2), depth (m a day), reach (share): what
    the day is for.
    """

    taps: dict[str, tuple[int, float, float]]
    there: dict[str, int]
    named: dict[str, int]
    drip: float
    people: int
    each: float
    animals: dict[str, int]
    others: float
    beds: float
    depth: float
    reach: float

    # The flow at once -------------------------------------------------------------------------

    @cached_property
    def chances(self) -> demand.Chances:
        return demand.flow_chances(tuple(self.taps.values()))

    @property
    def listed(self) -> float:
        """All that is named as open, m3/s."""
        return self.drip + demand.together((n, self.taps[key][1]) for key, n in self.named.items())

    @property
    def moments(self) -> float:
        """Enough in 99 of 100 moments of the busiest hour, m3/s."""
        return demand.quantile(self.chances, demand.CONFIDENCE) + self.drip

    @cached_property
    def alone(self) -> tuple[str, float]:
        """The kind that by itself asks for the most in the moments when it runs, and that, m3/s."""
        flows = {key: demand.enough_for_one(tap) for key, tap in self.taps.items()}
        kind = max(flows, key=flows.__getitem__)
        return kind, flows[kind] + self.drip

    @property
    def likely(self) -> float:
        """By chance, m3/s: ``demand.by_chance`` and the drip lines."""
        return max(self.moments, self.alone[1])

    @property
    def study(self) -> float:
        """By the Peak Water Demand Study: 99 of 100 moments when water runs, m3/s."""
        return demand.quantile(demand.running(self.chances), demand.CONFIDENCE) + self.drip

    @property
    def units(self) -> float:
        """Load in fixture units."""
        return sum(self.taps[f.key][0] * f.units for f in demand.FIXTURES if f.units is not None)

    @property
    def coded(self) -> float:
        """By fixture units, what has none added as it is, m3/s."""
        steady = demand.together(self.taps[f.key][:2] for f in demand.FIXTURES if f.units is None)
        return demand.fixture_unit_flow(self.units) + steady + self.drip

    @property
    def everything(self) -> float:
        return demand.together((n, q) for n, q, _ in self.taps.values()) + self.drip

    @property
    def plan(self) -> float:
        """The flow to plan for, m3/s; more outlets, open or not, never lower it."""
        return max(self.listed, self.likely)

    @property
    def list_decides(self) -> bool:
        return self.listed >= self.likely * (1 - SAME)

    @property
    def dry(self) -> float:
        """Chance that no outlet is open."""
        return self.chances[0][1] if self.chances[0][0] == 0 else 0.0

    def more(self, flow: float) -> float:
        """Chance that more than ``flow`` (m3/s) is drawn at a moment of the busiest hour."""
        return demand.exceeded(self.chances, (flow - self.drip) * (1 + SAME))

    @property
    def combination(self) -> float:
        """Chance that all on the list, or more, is open by chance."""
        return demand.combination_chance(
            (n, p, self.named[key]) for key, (n, _, p) in self.taps.items() if key in self.named
        )

    # The day ----------------------------------------------------------------------------------

    @property
    def parts(self) -> dict[str, float]:
        """What the water of a day is for -> m3/s over the day."""
        animals = {a.name: self.animals[a.key] * a.daily for a in demand.ANIMALS}
        beds = demand.irrigation(self.beds, self.depth, self.reach)
        animals[OTHERS] = self.others
        return {"People": self.people * self.each, **animals, "Garden beds": beds}

    @property
    def daily(self) -> float:
        return sum(self.parts.values())


def count(values: Values) -> Case:
    """The ``Case`` of a sheet's values; an outlet named as open is counted as there."""
    flows = {"shower": values.showerflow, "sink": values.sinkflow, "hose": values.hoseflow}
    named = {key: values.numbers[field] for key, field in OPEN.items()}
    there = {f.key: values.numbers[f.key] for f in demand.FIXTURES}
    taps = {
        f.key: (
            max(there[f.key], named.get(f.key, 0)),
            flows.get(f.key, f.flow),
            min(1.0, f.p * values.busy),
        )
        for f in demand.FIXTURES
    }
    return Case(
        taps=taps,
        there=there,
        named=named,
        drip=values.drip,
        people=values.people,
        each=values.each,
        animals={a.key: values.numbers[a.key] for a in demand.ANIMALS},
        others=values.others,
        beds=values.beds,
        depth=values.depth,
        reach=values.reach,
    )
