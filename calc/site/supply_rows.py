"""The rows of a whole supply in SI, and where its water comes from: what a network is made of."""

from __future__ import annotations

from dataclasses import dataclass

from calc import practice
from calc.pipe import pipes
from calc.pump.curve import Pump
from calc.water import AtTemperature


@dataclass(frozen=True)
class SectionRow:
    """A length of pipe: m; height_m: its far end above the pump; part: ``fittings`` key at it.

    Without a pump heights are above any one level, as that of the open water is.
    """

    start: str
    end: str
    length_m: float
    height_m: float
    pipe: pipes.Pipe
    bends: float = 2
    part: str = "none"


@dataclass(frozen=True)
class OutletRow:
    """Equal outlets at a point. kind: key of ``practice.OUTLETS``; before, after: how many open.

    flow_m3s, rated_pa, needed_pa: of one (None: usual for the kind).
    """

    name: str
    at: str
    kind: str
    before: int
    after: int
    flow_m3s: float | None = None
    rated_pa: float | None = None
    needed_pa: float | None = None


@dataclass(frozen=True)
class TankRow:
    """Open water up the hill, m above the pump: it feeds the pipes or is filled by them."""

    name: str
    level_m: float


@dataclass(frozen=True, kw_only=True)
class Origin(AtTemperature):
    """Water and place of any supply. temperature_k: of the water, K; altitude_m: above the sea;
    hottest_k: most the pipes get (None: the water's)."""

    temperature_k: float
    altitude_m: float
    hottest_k: float | None = None


@dataclass(frozen=True, kw_only=True)
class OpenWater(Origin):
    """No pump: the sections begin in open water, and it runs down by its own weight.

    level_m: of its surface above the level that heights are counted from; gives_m3s: the most it
    gives for long, as a spring in the driest weeks (None: not known).
    """

    level_m: float = 0.0
    gives_m3s: float | None = None


@dataclass(frozen=True, kw_only=True)
class Source(Origin):
    """Pump, water and place. set_pa: pressure held at the pump (None: runs at full speed).

    lift_m: from the water up to the pump; pumps: equal ones in parallel, each behind its check
    valve; relief: a relief valve guards the pipes; tank_m3: the pressure tank (None: not known);
    sensed_m: height above the pump at which its control reads the pressure; least_m3s: least flow
    of the pump (None: not known); guard: what a displacement pump has, "both", "switch" (or a
    bypass), "relief" or "none"; charge_pa: pre-charge of the pressure tank (None: the usual);
    allowed: starts an hour; smallest_m3s: the least drawn for hours (None: by the outlets).
    """

    pump: Pump
    set_pa: float | None
    lift_m: float
    suction_length_m: float
    suction_pipe: pipes.Pipe
    pumps: int = 1
    relief: bool = False
    tank_m3: float | None = None
    sensed_m: float = 0.0
    least_m3s: float | None = None
    guard: str = "both"
    charge_pa: float | None = None
    allowed: float = practice.STARTS_AN_HOUR
    smallest_m3s: float | None = None

    @property
    def sensed_pa(self) -> float:
        """What the pressure at the pump is above that which its control reads, Pa."""
        return self.weight * self.sensed_m

    @property
    def reads_pa(self) -> float | None:
        """The set pressure as the control reads it, Pa; None where it holds none."""
        return None if self.set_pa is None else self.set_pa - self.sensed_pa
