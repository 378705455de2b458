"""A well as numbers: what is known of it as a yield and a store, its levels, its pump, its use."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from functools import cached_property
from typing import TYPE_CHECKING

from calc import practice, recovery, storage, water, well_yield
from calc.errors import InputError, InputErrors
from calc.units import DAY, GRAVITY, MET

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.form import Row, Values
    from calc.units import Reader

MOST_YIELD = 1.0  # m3/s, as far as a form goes
USABLE = 0.9  # of a storage tank; common practice, no source
BACK = (0.5, 0.95)  # shares come back that a rest is told for; our choice


@dataclass(frozen=True)
class Case:
    """Levels in m below the top of the well, flows in m3/s, volumes in m3, times in s.

    known: key of what is known; yields: flow at the lowest level that is allowed; stored: from
    rest down to there, None where it is not known; tested: most that the test pumped, None where
    that says nothing; test: what a recovery bears (None: there was none); use: of a day; depth,
    casing: None where not known; sleeve: inside diameter, None for none; cistern: None for none.
    """

    values: Values
    known: str
    yields: float
    stored: float | None
    tested: float | None
    test: recovery.Recovery | None
    use: float
    pump: float
    dry: bool
    static: float
    intake: float
    depth: float | None
    casing: float | None
    submersible: bool
    cistern: float | None
    sleeve: float | None

    # Levels -----------------------------------------------------------------------------------

    @property
    def lowest(self) -> float:
        """The lowest level that is allowed."""
        return self.intake - self.values.cover

    @property
    def drawdown(self) -> float:
        """From rest to there."""
        return self.lowest - self.static

    @property
    def keeps_up(self) -> bool:
        """Whether the well gives what the pump takes for as long as it likes."""
        return self.pump <= self.yields * MET

    @property
    def level(self) -> float:
        """Where the water is while the pump runs on: at the lowest where it cannot keep up."""
        return self.static + self.drawdown * well_yield.drawn_share(self.yields, self.pump)

    @property
    def needed_intake(self) -> float | None:
        """How deep the intake must be for the pump's flow; None where the test does not say."""
        if self.known not in ("levels", "recovery"):
            return None
        return self.intake_for(self.pump)

    def intake_for(self, flow: float) -> float | None:
        """How deep the intake must be for a flow, by the flow for each metre; None without any."""
        if self.yields <= 0:
            return None
        return self.static + self.drawdown * flow / self.yields + self.values.cover

    @property
    def deepest(self) -> float | None:
        """How deep the intake may be; None where the floor is not known."""
        return None if self.depth is None else self.depth - self.values.clear

    # Times ------------------------------------------------------------------------------------

    @property
    def runs(self) -> float:
        """How long the pump may run from rest; infinite where it may run on."""
        return well_yield.time_to_empty(self.yields, self.stored or 0.0, self.pump)

    @property
    def use_run(self) -> float:
        """How long the pump takes for the water of a day."""
        return self.use / self.pump if self.pump > 0 else math.inf

    def rests(self, share: float) -> float:
        """How long until a share of what was drawn has come back."""
        return well_yield.time_to_recover(self.yields, self.stored or 0.0, share)

    # The day and its busiest time ---------------------------------------------------------------

    @property
    def steadily(self) -> float:
        """What well and pump together can give for good, m3/s."""
        return min(self.yields, self.pump)

    @property
    def day_most(self) -> float:
        """The same in a day."""
        return self.steadily * DAY

    @property
    def start(self) -> float:
        """Share of the drawdown that the use of a day comes to on average."""
        return well_yield.drawn_share(self.yields, self.use / DAY)

    @cached_property
    def peak_most(self) -> float:
        """The most that well and pump can give in the busiest time, without a storage tank."""
        flow = well_yield.most_over(
            self.yields, self.stored or 0.0, self.values.peakfor, self.start
        )
        return min(flow, self.pump) * self.values.peakfor

    @cached_property
    def swing(self) -> float:
        """What a tank must hold that is filled evenly all day, as the use is spread over it."""
        even, shares = storage.PATTERNS["even"], storage.PATTERNS[self.values.pattern]
        return storage.daily_balance(self.use, shares, self.use, even).swing

    @property
    def peak_short(self) -> float:
        """What the busiest time takes beyond what flows in evenly meanwhile."""
        return max(0.0, self.values.peak - self.use / DAY * self.values.peakfor)

    @property
    def tank(self) -> float:
        """Storage tank that evens out the day and its busiest time."""
        return max(self.swing, self.peak_short) / USABLE

    # The pump in the well -----------------------------------------------------------------------

    @property
    def about(self) -> float | None:
        """Inside diameter of what is about the motor: the sleeve, or the well."""
        return self.sleeve if self.sleeve is not None else self.casing

    @property
    def cooling(self) -> float | None:
        """Water speed past the motor; None where it is not known or not asked."""
        if not self.submersible or self.about is None:
            return None
        return well_yield.cooling_speed(self.pump, self.about, self.values.motor)

    @property
    def least_cooling(self) -> float:
        """The least speed that is enough."""
        return self.values.cooling or well_yield.least_cooling(self.values.motor)

    @property
    def drop(self) -> float:
        """Length of drop pipe."""
        return self.values.drop or self.intake

    @property
    def rise(self) -> float:
        """The sensor above the top of the well."""
        return self.values.rise if self.values.sensed == "house" else 0.0

    @property
    def weight(self) -> float:
        """Pressure of a metre of water, Pa."""
        return water.density(practice.COOL_WATER) * GRAVITY

    @property
    def head(self) -> float:
        """Head that the pump must make, without friction, from the water's level."""
        return self.level + self.rise + self.values.set / self.weight

    @property
    def pump_pressure(self) -> float:
        """Static pressure in the pipe at the pump, at the set pressure, Pa."""
        return self.values.set + self.weight * (self.intake + self.rise)


def case_of(values: Values, reader: Reader) -> Case:
    """The ``Case`` of a form.  Raises InputError, also by the physics' own arguments."""
    faults = [*_levels_wrong(values, reader), *_readings_wrong(values, reader)]
    if faults:
        raise InputErrors(faults)
    case = Case(
        values, values.known, 0.0, None, None, None, values.use * DAY, values.pump,
        values.dry == "yes", values.static, values.intake, values.depth, values.casing,
        values.kind == "in", values.cistern, values.sleeve,
    )  # fmt: skip
    case = _KNOWN[values.known](case)
    if case.submersible:
        _fits(case, reader)
    return case


# What is known ---------------------------------------------------------------------------------


def _in_well(case: Case) -> float | None:
    if case.casing is None:
        return None
    return well_yield.standing(case.casing, case.drawdown)


def _yield(case: Case, capacity: float) -> float:
    """What flows in at the lowest level, by the flow for each metre of drawdown (m2/s)."""
    return min(capacity * case.drawdown, MOST_YIELD)


def _bucket(case: Case) -> Case:
    """The test tells what was stored; no more than the well holds is counted."""
    values = case.values
    stored = well_yield.bucket_store(values.drawn, values.minutes, values.steady)
    holds = _in_well(case)
    return replace(
        case, yields=values.steady, stored=stored if holds is None else min(stored, holds)
    )


def _levels(case: Case) -> Case:
    values = case.values
    capacity = recovery.specific_capacity(values.tested, values.pumping - values.static)
    return replace(case, yields=_yield(case, capacity), stored=_in_well(case), tested=values.tested)


def _recovery(case: Case) -> Case:
    values = case.values
    if case.casing is None:
        text = "Enter the inside diameter of the well: a recovery test cannot be read without it"
        raise InputError(text, name="casing")
    times = [row.time for row in values.readings]
    drawn = [max(row.level - values.static, 0.0) for row in values.readings]
    test = recovery.recovered(
        values.rate, values.pumped, case.casing, times, drawn, practice.LASTING
    )
    return replace(
        case, yields=_yield(case, test.capacity), stored=_in_well(case), tested=values.rate,
        test=test,
    )  # fmt: skip


def _told(case: Case) -> Case:
    return replace(case, yields=case.values.told, stored=_in_well(case))


_KNOWN = {"bucket": _bucket, "levels": _levels, "recovery": _recovery, "told": _told}


# What cannot be --------------------------------------------------------------------------------


def _levels_wrong(values: Values, reader: Reader) -> Iterator[InputError]:
    """Levels that contradict one another, each said at its field."""
    rest = reader.show(values.static, "length")
    if values.depth is not None and values.static >= values.depth:
        floor = reader.show(values.depth, "length")
        text = f"The static level must be above the floor of the well, at {floor}"
        yield InputError(text, name="static")
        return
    if values.depth is not None and values.intake > values.depth:
        floor = reader.show(values.depth, "length")
        text = f"The intake would be below the floor of the well, at {floor}"
        yield InputError(text, name="intake")
    elif values.intake - values.cover - values.static < 1e-3:
        text = f"The intake must be deeper, with its cover below the static level of {rest}"
        yield InputError(text, name="intake")
    if values.known != "levels":
        return
    if values.pumping - values.static < 1e-3:
        text = (
            f"The pumping level is above the static one, {rest}. Levels are counted down from the "
            "top, so it is the larger number"
        )
        yield InputError(text, name="pumping")
    elif values.depth is not None and values.pumping > values.depth:
        floor = reader.show(values.depth, "length")
        text = f"The pumping level would be below the floor of the well, at {floor}"
        yield InputError(text, name="pumping")


def _readings_wrong(values: Values, reader: Reader) -> Iterator[InputError]:
    """Readings that are no recovery, each said at its cell."""
    rows = values.readings if values.known == "recovery" else ()
    for before, row in zip((None, *rows), rows, strict=False):
        text, column = _reading_wrong(values, before, row, reader)
        if text:
            yield InputError(text, name=row.cell(column))


def _reading_wrong(values: Values, before: Row | None, row: Row, reader: Reader) -> tuple[str, str]:
    """(what is wrong, column); "" for nothing."""
    rest = reader.show(values.static, "length")
    if before is None:
        if row.time > 0:
            return "The first reading is the level as the pump stops, at 0", "time"
        if row.level - values.static < 1e-3:
            return f"The water must begin below the static level, {rest}", "level"
        return "", ""
    if row.time <= before.time:
        return "Each reading must be later than the one before", "time"
    if row.level > before.level + 1e-9:
        said = "The water falls here: was a pump still on? A recovery begins when it has stopped"
        return said, "level"
    if row.level < values.static - 1e-9:
        said = f"The water is above the static level, {rest}: correct one of the two"
        return said, "level"
    return "", ""


def _fits(case: Case, reader: Reader) -> None:
    """Raises InputError where a pump or its sleeve does not fit."""
    motor = reader.show(case.values.motor, "diameter")
    if case.casing is not None and case.values.motor >= case.casing:
        wide = reader.show(case.casing, "diameter")
        raise InputError(f"The pump does not fit into a well of {wide}", name="motor")
    if case.sleeve is None:
        return
    if case.sleeve <= case.values.motor:
        raise InputError(f"The sleeve must be wider than the pump, {motor}", name="sleeve")
    if case.casing is not None and case.sleeve >= case.casing:
        wide = reader.show(case.casing, "diameter")
        raise InputError(f"The sleeve does not fit into a well of {wide}", name="sleeve")
