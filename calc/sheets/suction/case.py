"""A suction pipe and its pump: what is lost, what is left, and how high the pump may be."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cached_property
from typing import TYPE_CHECKING

from calc import practice, suction
from calc.errors import InputError
from calc.pipe import friction
from calc.pipe.line import Line, Section, largest
from calc.sheets.parts.pipe_choice import chosen_pipe
from calc.units import FOOT, Reader, parse, plain_number

if TYPE_CHECKING:
    from calc.page.fields import Sheet
    from calc.page.form import Values
    from calc.page.state import State
    from calc.pipe.pipes import Pipe
    from calc.units import Parsed

RATED_AT = suction.place(0.0, 293.15)  # sea level and cool water, where dry lifts are stated
FURTHEST_UP = 5000.0  # m above sea level, to which the sheet is meant
RUN, RUN_US = 3.0, 10 * FOOT  # m; of pipe that runs level or hangs under water; our choice
SLACK = 1e-9  # m; a lift set to the limit itself, or typed in another unit, is in


@dataclass(frozen=True)
class Case:
    """From the water's surface to the pump's inlet; SI.

    line: rises by the lift; its one section ends in the strainer; margin: NPSH to keep, m; by:
    "npsh" or "lift", what the data sheet says of the pump; npsh: NPSH required, m; dry_lift:
    stated at sea level, m (both None: not known); altitude: m; foot: foot valves; pulsing: how a
    piston or diaphragm pump draws, None for a steady flow; strokes: 1/s, None: not known; stub: m
    of pipe between a dampener and the pump, None: there is no dampener.
    """

    line: Line
    flow: float
    site: suction.Surroundings
    margin: float
    by: str = "npsh"
    npsh: float | None = None
    dry_lift: float | None = None
    altitude: float = 0.0
    foot: int = 1
    pulsing: practice.Pulsing | None = None
    strokes: float | None = None
    stub: float | None = None

    @property
    def section(self) -> Section:
        return self.line.sections[0]

    @property
    def pipe(self) -> Pipe:
        return self.section.pipe

    @property
    def lift(self) -> float:
        """Of the pump above the water, m; below 0 the water is above the pump."""
        return self.line.rise_m

    @property
    def strainer(self) -> float:
        """Head lost in a strainer or filter at the pump, m."""
        return self.line.device_loss_in(self.section, self.flow)

    @property
    def speed(self) -> float:
        return self.line.speed(self.flow)

    @cached_property
    def loss(self) -> float:
        """Head lost in pipe, fittings and strainer, m."""
        return self.line.loss(self.flow)

    @property
    def pulsed(self) -> float:
        """Pipe whose water moves in pulses, m: all of it, or what is after a dampener."""
        length = self.line.length_m
        return length if self.stub is None else min(self.stub, length)

    @property
    def pulses(self) -> float:
        """Head that the pulses take, m; 0 for a steady flow and where it is not known."""
        return self.pulses_at(self.flow)

    def pulses_at(self, flow: float) -> float:
        """The same at another flow (m3/s) with as many strokes."""
        if self.pulsing is None or self.strokes is None:
            return 0.0
        return suction.acceleration_head(
            self.pulsed, self.line.speed(flow), self.strokes, self.pulsing.factor,
            practice.PULSE_GIVES,
        )  # fmt: skip

    def taken_at(self, flow: float) -> float:
        """Head that friction and pulses take at a flow (m3/s), m."""
        return self.line.loss(flow) + self.pulses_at(flow)

    @property
    def taken(self) -> float:
        """Head that friction and pulses take, m."""
        return self.loss + self.pulses

    @cached_property
    def limit(self) -> float:
        """The lift of a perfect vacuum at this site, m."""
        return suction.theoretical_lift(self.site)

    @property
    def usual_lift(self) -> float:
        """The lift to keep to at this site by practice, m."""
        return practice.suction_lift(self.site.air_pa)

    @property
    def available(self) -> float:
        return suction.npsh_available(self.site, self.lift, self.taken)

    @cached_property
    def needed(self) -> float | None:
        """NPSH the pump needs at this site, m: as given, or by its dry lift; None: not known."""
        if self.by == "npsh":
            return self.npsh
        if self.dry_lift is None:
            return None
        return suction.npsh_of_dry_lift(self.dry_lift, self.site, RATED_AT)

    @property
    def would_pass(self) -> float:
        """The most NPSH a pump may need here so that the margin is kept, m."""
        return self.available - self.margin

    @property
    def spare(self) -> float | None:
        """NPSH beyond what the pump needs, m; None: not known."""
        return None if self.needed is None else self.available - self.needed

    @property
    def allowed(self) -> float | None:
        """The highest the pump may be above the water, m; below 0: so far under it."""
        if self.needed is None:
            return None
        return suction.allowable_lift(self.site, self.taken, self.needed, self.margin)

    @property
    def most_strokes(self) -> float | None:
        """Most strokes (1/s) of each chamber that leave what is to be kept; None: not known."""
        if self.needed is None or self.pulsing is None:
            return None
        steady = self.limit - self.lift - self.loss - self.needed
        one = replace(self, strokes=1.0).pulses
        left = steady - max(self.margin, practice.NPSH_MARGIN)
        return left / one if left > 0 and one > 0 else None

    @property
    def vacuum(self) -> float:
        """Pa below the air's pressure at the pump's inlet; negative where water presses in."""
        return -self.line.left(self.flow)

    @property
    def fits(self) -> bool:
        """Whether the pump keeps its margin, as far as that is known."""
        return self.spare is not None and self.spare >= self.margin - SLACK

    # The same with one thing changed --------------------------------------------------------

    def with_pipe(self, pipe: Pipe) -> Case:
        """In another pipe."""
        return replace(self, line=self.line.with_pipe(pipe))

    def with_flow(self, flow: float) -> Case:
        """At another flow (m3/s); the strainer loses with its square."""
        return replace(self, flow=flow)

    def with_lift(self, lift: float) -> Case:
        """With the pump at another height above the water, m."""
        section = replace(self.section, rise_m=lift)
        return replace(self, line=replace(self.line, sections=(section,)))

    def with_stub(self, stub: float) -> Case:
        """With a dampener, and so much pipe (m) between it and the pump."""
        return replace(self, stub=stub)

    def at_altitude(self, altitude: float) -> Case:
        """At another height above sea level (m)."""
        place = suction.place(altitude, self.line.temperature_k)
        return replace(self, site=place, altitude=altitude)

    # What it bears --------------------------------------------------------------------------

    def largest_flow(self, margin: float | None = None) -> float:
        """The largest flow (m3/s), up to the one asked for, that keeps the margin; 0: none.

        margin: another to keep, m.
        """
        if self.needed is None:
            return 0.0
        most = self.limit - self.lift - self.needed - (self.margin if margin is None else margin)
        return largest(lambda flow: most - self.taken_at(flow), self.flow)

    def priming_seconds(self) -> float | None:
        """Least time to draw the air out at the flow given, s; None where that cannot be done."""
        if not 0 < self.lift < self.limit * (1 - 1e-6):
            return None
        return suction.priming_time(
            self.pipe.inside_m, self.line.length_m, self.site, self.lift, self.flow
        )


def _fittings(values: Values) -> tuple[tuple[friction.Fitting, float], ...]:
    """Foot valves and elbows; a bare end counts as a sharp entrance."""
    first = ("foot", values.foot) if values.foot else ("entrance", 1)
    return tuple((friction.BY_KEY[key], n) for key, n in (first, ("elbow90", values.elbow90)) if n)


def fitted(sheet: Sheet, state: State) -> State:
    """The example's pipe as long as a lift given without one asks for.

    A pipe shorter than its lift cannot be, and who gives a lift alone asks about the lift.  Only
    where page or link say that the length is the example's: a text alone may have been typed.
    Raises nothing.
    """
    if state.standing.get("length") != "example" or state.standing.get("lift") == "example":
        return state
    has, needs = (_length(sheet, key, state) for key in ("length", "lift"))
    if has is None or needs is None or has.value >= needs.value:
        return state
    run = RUN_US if state.system == "us" else RUN
    long = plain_number(needs.unit.from_si(needs.value + run), 3)
    reason = f"the lift and a usual {Reader(state.system).show(run, 'length', 1)} more"
    return replace(
        state,
        texts={**state.texts, "length": f"{long} {needs.unit.symbol}"},
        standing={**state.standing, "length": "assumed"},
        reasons={**state.reasons, "length": reason},
    )


def _length(sheet: Sheet, key: str, state: State) -> Parsed | None:
    """What a field of a length holds; None where that is said beside it, or there is none."""
    usual = Reader(state.system).unit("length").symbol
    try:
        return parse(state.text(sheet.field(key)), "length", state.units.get(key) or usual)
    except (InputError, KeyError):
        return None


def read(values: Values, reader: Reader) -> Case:
    """The ``Case`` the form describes.  Raises InputError for a pipe shorter than the lift."""
    if values.length < values.lift * (1 - 1e-9):
        lift = reader.show(values.lift, "length")
        raise InputError(
            f"The pipe must be at least as long as the lift, {lift}. Add what runs level and what "
            "hangs under water.",
            name="length",
        )
    strainer = (values.flow, values.strainer) if values.strainer else None
    length = max(values.length, values.lift)
    section = Section(chosen_pipe(values), length, values.lift, _fittings(values), device=strainer)
    return Case(
        line=Line((section,), 0.0, values.water, hottest_k=values.hottest),
        flow=values.flow,
        site=suction.place(values.altitude, values.water),
        margin=values.margin,
        by=values.figure,
        npsh=values.npsh,
        dry_lift=values.rated,
        altitude=values.altitude,
        foot=values.foot,
        pulsing=practice.PULSING_BY_KEY.get(values.chambers),
        strokes=values.strokes,
        stub=values.stub,
    )


def elsewhere(case: Case, altitudes: tuple[float, ...]) -> tuple[tuple[float, Case], ...]:
    """(altitude, case) at altitudes (m) that differ from the case's own by over 100 m."""
    return tuple((z, case.at_altitude(z)) for z in altitudes if abs(z - case.altitude) > 100)
