"""A cable from a source to a pump, as numbers: its task, the sizes that keep to the drops."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from functools import cached_property
from typing import TYPE_CHECKING

from calc import practice
from calc.errors import InputError
from calc.power import cable
from calc.units import CELSIUS, MET

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.power.cable import Conductor, Drop, Line, Protection
    from calc.units import Reader

# K, the conductor under load as it lies; our choice
LIES = {"ground": CELSIUS + 40, "shade": practice.CABLE_WARM, "sun": CELSIUS + 70}
# V, usual ones, by system of units: common practice, no source
HIGHER = {
    "metric": {"dc": (12.0, 24.0, 48.0, 96.0), "single": (120.0, 230.0), "three": (230.0, 400.0)},
    "us": {"dc": (12.0, 24.0, 48.0, 96.0), "single": (120.0, 240.0), "three": (240.0, 480.0)},
}
MOST_CABLES = 4  # beside one another; our choice
MOST_CURRENT = 1000.0  # A, as far as the physics goes
MOST_START = 10.0  # times the running current, as far as the physics goes
STRANDS = {"fine": "mm2-flexible", "coarse": "mm2"}
METRIC_FIRST = {"metric": ("mm2", "awg"), "us": ("awg", "mm2")}


@dataclass(frozen=True)
class Case:
    """A cable's task, and the cable in mind.

    line: of all cables together; cables: how many equal ones share the current; strands: a key of
    ``STRANDS``; drop, start_drop: most that is accepted, shares; own: the ``Conductor`` in mind,
    None: find it; carries: A that each cable may carry, None: not known; first: "mm2" or "awg",
    the sizes the reader meets first.
    """

    line: Line
    cables: int
    strands: str
    drop: float
    start_drop: float
    own: Conductor | None
    carries: float | None
    first: str

    # The task ---------------------------------------------------------------------------------

    @property
    def each(self) -> Line:
        """The task of one cable."""
        return replace(self.line, current_a=self.line.current_a / self.cables)

    @property
    def power(self) -> float:
        """What goes into the cables to the pump, W."""
        line = self.line
        phases = math.sqrt(3) if line.circuit == "three" else 1.0
        factor = 1.0 if line.circuit == "dc" else line.power_factor
        return phases * line.voltage_v * line.current_a * factor

    @property
    def start_current(self) -> float:
        """A of all cables together."""
        return self.line.current_a * self.line.start_times

    def at_voltage(self, volts: float) -> Case:
        """The same power at another voltage (V)."""
        current = self.line.current_a * self.line.voltage_v / volts
        return replace(self, line=replace(self.line, voltage_v=volts, current_a=current))

    # Sizes ------------------------------------------------------------------------------------

    def sizes(self, kind: str) -> tuple[Conductor, ...]:
        """All conductors by "mm2" or "awg", in rising order."""
        return cable.SERIES[self.series(kind)]

    def series(self, kind: str) -> str:
        """Key of the physics' series for "mm2" or "awg"."""
        return "awg" if kind == "awg" else STRANDS[self.strands]

    def smallest(self, kind: str) -> Drop | None:
        """The smallest size of "mm2" or "awg" that keeps to both drops; None where none does."""
        return cable.smallest(self.each, self.series(kind), self.drop, self.start_drop)

    def drop_of(self, conductor: Conductor) -> Drop:
        """What a conductor takes of each cable's line."""
        return cable.drop_of(self.each, conductor)

    @cached_property
    def asked(self) -> str:
        """ "mm2" or "awg": of the cable in mind, else what the reader meets first."""
        if self.own is None:
            return self.first
        return "awg" if self.own.name.endswith("AWG") else "mm2"

    @cached_property
    def best(self) -> Drop | None:
        """The smallest of the sizes asked about."""
        return self.smallest(self.asked)

    @cached_property
    def found(self) -> Drop:
        """That of the cable in mind; else of the smallest that will do; else of the largest."""
        if self.own is not None:
            return self.drop_of(self.own)
        return self.best or self.drop_of(self.sizes(self.asked)[-1])

    @property
    def loss(self) -> float:
        """W that all cables turn into heat while the pump runs."""
        return self.cables * self.found.loss

    def keeps(self, drop: Drop) -> bool:
        """Whether both drops are accepted; one met exactly is."""
        return drop.share <= self.drop * MET and drop.start_share <= self.start_drop * MET

    # What the drops ask for ------------------------------------------------------------------

    def ohm(self, conductor: Conductor) -> float:
        """Resistance of one metre of a conductor as it lies, ohm/m."""
        line = self.line
        return cable.resistance(conductor.area, line.temperature_k, line.metal, conductor.allowance)

    @property
    def most_share(self) -> float:
        """The share lost while running that keeps to both drops."""
        return min(self.drop, self.start_drop / self.line.start_times)

    def least(self, conductor: Conductor) -> float | None:
        """Area that keeps to both drops, m2, stranded as this one; None where none does."""
        area = cable.least_area(self.each, conductor.allowance, self.drop, self.start_drop)
        return area if math.isfinite(area) else None

    @property
    def most_ohm(self) -> float:
        """Highest resistance of one metre that keeps to both drops, ohm/m."""
        found = self.found.conductor
        area = self.least(found)
        return self.ohm(found) * found.area / area if area else math.inf

    # Protection -------------------------------------------------------------------------------

    @property
    def fuse(self) -> Protection:
        """What is usual for all of the current."""
        return cable.protection(self.line.circuit, self.line.current_a)


def case_of(values: Values, reader: Reader) -> Case:
    """The ``Case`` of a form.  Raises InputError, also by the physics' own arguments."""
    factor = 1.0 if values.circuit == "dc" else values.factor
    current = _current(values, factor, reader)
    kelvin = values.warm if values.lies == "own" else LIES[values.lies]
    line = cable.Line(
        values.circuit, values.voltage, current, values.length, _times(values, current, reader),
        factor, kelvin, values.metal,
    )  # fmt: skip
    own, carries = None, None
    if values.own != "none":
        name = f"{values.mm2} mm²" if values.own == "mm2" else f"{values.awg} AWG"
        series = "awg" if values.own == "awg" else STRANDS[values.strands]
        own = next(one for one in cable.SERIES[series] if one.name == name.replace("-", "/"))
        carries = values.carries
    return Case(
        line, values.cables, values.strands, values.drop, values.dropstart, own, carries,
        METRIC_FIRST[reader.system][0],
    )  # fmt: skip


def _current(values: Values, factor: float, reader: Reader) -> float:
    """Running current, A.  Raises InputError where a power takes more than is worked out here."""
    if values.known == "current":
        return values.current
    found = cable.current(values.circuit, values.power, values.voltage, factor)
    if found > MOST_CURRENT:
        shown, most = (reader.show(one, "current") for one in (found, MOST_CURRENT))
        raise InputError(
            f"This power would take {shown} at this voltage, and {most} is the most that is worked "
            "out here. Choose a higher voltage.",
            name="voltage",
        )
    return found


def _times(values: Values, current: float, reader: Reader) -> float:
    """Start-up current over the running one.  Raises InputError outside 1 to 10."""
    if values.start != "own":
        return practice.START_TIMES if values.start == "direct" else practice.START_SOFT
    times = values.startup / current
    if not 1 / MET <= times <= MOST_START * MET:
        low, high = (reader.show(one * current, "current") for one in (1.0, MOST_START))
        raise InputError(
            f"Start-up current must be from {low}, the running current, to ten times that, {high}.",
            name="startup",
        )
    return min(max(times, 1.0), MOST_START)
