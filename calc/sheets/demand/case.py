"""One count of the water needed: from what was typed to flows and amounts a day."""

from dataclasses import dataclass

from calc import demand

OPEN = {"shower": "showers_open", "sink": "sinks_open", "hose": "hoses_open"}
SAME = 2e-3  # flows closer than this are one flow: figures are typed to three digits


@dataclass(frozen=True)
class Case:
    """One count: ``taps`` are (number, flow, p) by kind, flows in m3/s, volumes a day in m3/s."""

    taps: dict
    named: dict
    drip: float
    chances: tuple
    listed: float
    moments: float
    likely: float
    units: float
    coded: float
    everything: float
    parts: dict

    @property
    def list_decides(self):
        return self.listed >= self.likely * (1 - SAME)

    @property
    def plan(self):
        return self.listed if self.list_decides else self.likely

    @property
    def dry(self):
        """Chance that no tap is open."""
        return self.chances[0][1] if self.chances[0][0] == 0 else 0.0

    @property
    def daily(self):
        return sum(self.parts.values())

    def more(self, flow):
        """Chance that more than ``flow`` is drawn at a moment of the busiest hour."""
        return demand.exceeded(self.chances, (flow - self.drip) * (1 + SAME))

    @property
    def combination(self):
        return demand.combination_chance(
            (n, p, self.named[key]) for key, (n, _, p) in self.taps.items() if key in self.named
        )


def count(values):
    """The ``Case`` of a sheet's values; a tap named as open is counted as there."""
    flows = {"shower": values.showerflow, "sink": values.sinkflow, "hose": values.hoseflow}
    flows["trough"] = values.sinkflow  # a float valve passes about what a sink does
    named = {key: values.numbers[field] for key, field in OPEN.items()}
    taps = {
        f.key: (
            max(values.numbers[f.key], named.get(f.key, 0)),
            flows.get(f.key, f.flow),
            min(1.0, f.p * values.busy),
        )
        for f in demand.FIXTURES
    }
    chances = demand.flow_chances(tuple(taps.values()))
    units = {f.key: f.units for f in demand.FIXTURES}
    load = sum(n * units[key] for key, (n, _, _) in taps.items() if units[key] is not None)
    steady = demand.together(taps[key][:2] for key in taps if units[key] is None)
    return Case(
        taps=taps,
        named=named,
        drip=values.drip,
        chances=chances,
        listed=demand.together((n, flows[key]) for key, n in named.items()) + values.drip,
        moments=demand.quantile(chances, demand.CONFIDENCE) + values.drip,
        likely=demand.quantile(demand.running(chances), demand.CONFIDENCE) + values.drip,
        units=load,
        coded=demand.fixture_unit_flow(load) + steady + values.drip,
        everything=demand.together((n, q) for n, q, _ in taps.values()) + values.drip,
        parts=_daily_parts(values),
    )


def _daily_parts(values):
    animals = {a.name: values.numbers[a.key] * a.daily for a in demand.ANIMALS}
    beds = demand.irrigation(values.beds, values.depth, values.reach)
    return {"People": values.people * values.each, **animals, "Drip beds": beds}
