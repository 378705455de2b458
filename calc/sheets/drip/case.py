"""A garden on drip as numbers: water a day, lines and zones, one line outlet by outlet."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from functools import cached_property, lru_cache
from typing import TYPE_CHECKING

from calc import practice
from calc.drip import crop, lateral
from calc.drip.lateral import Dripper, Lateral
from calc.errors import InputError
from calc.sheets.drip.climate import Climate, climate_of
from calc.sheets.drip.zone import FEW, KINEMATIC, MET, MOST_LINES, WEIGHT, Manifold
from calc.sheets.parts.pipe_choice import pipe_of
from calc.units import DAY, HOUR

if TYPE_CHECKING:
    from collections.abc import Callable

    from calc.drip.manifold import Subunit
    from calc.page.form import Values
    from calc.units import Reader

MOST_DRIPPERS = 600  # of one line, that are worked out; our choice


@dataclass(frozen=True)
class Line:
    """One drip line, fed at one end.

    outlets: drippers; spacing: m; bore: m; slope: rise over way; dripper: each of them; made:
    variation of new ones, share.
    """

    outlets: int
    spacing: float
    bore: float
    slope: float
    dripper: Dripper
    made: float

    @property
    def length(self) -> float:
        """To the last dripper, m."""
        return self.outlets * self.spacing

    def solved(self, start_pa: float) -> Lateral:
        """Outlet by outlet.  Raises InputError where no water comes to the end."""
        return _solved(self, start_pa)

    def needs(self) -> float | None:
        """Pressure at its start that gives the nominal flow, Pa; None where none does."""
        return _needs(self)

    def even(self, start_pa: float) -> bool:
        """Whether it waters as evenly as is good, with each dripper at a pressure it can use."""
        try:
            found = self.solved(start_pa)
        except InputError:
            return False
        good = found.variation <= practice.FLOW_VARIES[0] * MET
        enough = not self.short(found)
        return good and enough

    def short(self, found: Lateral) -> bool:
        """Whether a compensating dripper has less than it needs."""
        return self.dripper.compensating and min(found.pressures) * MET < self.dripper.pressure_pa

    def longest(self, start_pa: float) -> int:
        """Drippers of the longest such line that waters evenly, 0 to ``MOST_DRIPPERS``."""
        return _longest(replace(self, outlets=1), start_pa)

    @property
    def parts(self) -> tuple[list[float], list[float]]:
        """(lengths, rises) from dripper to dripper, m."""
        return [self.spacing] * self.outlets, [self.spacing * self.slope] * self.outlets

    @cached_property
    def loss(self) -> Callable[[float, float], float]:
        """Head lost, m, by a flow (m3/s) in a length (m), with what barbs and joins add."""
        return lateral.smooth_law(self.bore, KINEMATIC, practice.EXTRA_LENGTH)


@lru_cache(256)
def _solved(line: Line, start_pa: float) -> Lateral:
    lengths, rises = line.parts
    return lateral.step_by_step(start_pa, lengths, rises, WEIGHT, line.loss, line.dripper.at)


@lru_cache(64)
def _needs(line: Line) -> float | None:
    nominal, least = line.outlets * line.dripper.flow_m3s, line.dripper.pressure_pa

    def enough(found: Lateral) -> float:
        if line.dripper.compensating:
            return min(found.pressures) - least
        return found.flow - nominal

    lengths, rises = line.parts
    found = lateral.start_for(enough, lengths, rises, WEIGHT, line.loss, line.dripper.at)
    return None if found is None else max(0.0, found.start_pa)


@lru_cache(64)
def _longest(line: Line, start_pa: float) -> int:
    """Found by trial: the variation grows about as the power 2.75 of the number, on level ground.

    After a few trials, where that leads nowhere, by halving.
    """
    low, high, trial = 0, MOST_DRIPPERS + 1, 60
    for at in range(2 * MOST_DRIPPERS):
        one = replace(line, outlets=trial)
        if one.even(start_pa):
            low = trial
        else:
            high = trial
        if high - low <= 1:
            break
        likely = _likely(one, start_pa) if at < FEW else (low + high) // 2
        trial = min(max(likely, low + 1), high - 1)
    return low


def _likely(line: Line, start_pa: float) -> int:
    """How many drippers might vary by as much as is good, from what so many do."""
    try:
        varies = line.solved(start_pa).variation
    except InputError:
        return line.outlets // 2
    if varies <= 0:
        return MOST_DRIPPERS
    share = (practice.FLOW_VARIES[0] / varies) ** (1 / (1 + lateral.BLASIUS))
    return min(int(line.outlets * share), MOST_DRIPPERS)


@dataclass(frozen=True)
class Case:
    """A garden: its water, its lines, its source.

    area: m2; rows: m apart; laid: length of a line, m; need: crop coefficient; reaches: share of
    the water; line: one of its lines; flow: m3/s of the source; pressure: Pa where lines begin,
    or their manifold; hours: s a day; daily: m3 there is a day, None: not known; asked: zones in
    mind; filtered: whether there is a filter; manifold: of each zone, None: not counted.
    """

    area: float
    rows: float
    laid: float
    climate: Climate
    need: float
    reaches: float
    line: Line
    flow: float
    pressure: float
    hours: float
    daily: float | None
    asked: int | None
    filtered: bool
    manifold: Manifold | None = None

    # Water ------------------------------------------------------------------------------------

    @property
    def depth(self) -> float:
        """Water to be given a day, m over the area."""
        return self.climate.reference * self.need / self.reaches

    @property
    def water(self) -> float:
        """The same, m3."""
        return self.depth * self.area

    # Lines and zones --------------------------------------------------------------------------

    @cached_property
    def zone(self) -> Subunit | None:
        """The largest zone with its manifold; None where that is not counted."""
        if self.manifold is None:
            return None
        return self.manifold.zone(self.line, self.in_zone, self.pressure)

    @cached_property
    def solved(self) -> Lateral:
        """One line, outlet by outlet: on a manifold the weakest of the largest zone."""
        return self.line.solved(self.pressure) if self.zone is None else self.zone.weakest

    @property
    def start(self) -> float:
        """Pressure where that line begins, Pa."""
        return self.pressure if self.zone is None else min(self.zone.starts)

    @property
    def least(self) -> float:
        """Least pressure at a dripper, Pa."""
        return min(self.solved.pressures)

    @property
    def most(self) -> float:
        """Most pressure at a dripper, Pa."""
        return max(self.solved.pressures) if self.zone is None else self.zone.range[1]

    @property
    def line_flow(self) -> float:
        """What a line takes, of a zone on a manifold the mean, m3/s."""
        return self.solved.flow if self.zone is None else self.zone.flow / self.in_zone

    @property
    def each(self) -> float:
        """Area that one line waters, m2."""
        return self.rows * self.laid

    @property
    def lines(self) -> float:
        """Lines of this length that the area has; the last may be a part of one."""
        return self.area / self.each

    @property
    def drippers(self) -> float:
        return self.lines * self.line.outlets

    @property
    def whole_flow(self) -> float:
        """All lines at once, m3/s."""
        return self.lines * self.line_flow

    @cached_property
    def per_zone(self) -> int:
        """Whole lines that the source can feed at once; 0 where one is too many.

        On a manifold no more than there are.
        """
        if self.manifold is not None:
            most = min(self.count, MOST_LINES)
            return self.manifold.fed_by(self.line, self.pressure, self.flow, most)
        return math.floor(self.flow / self.solved.flow * MET)

    @property
    def count(self) -> int:
        """Lines as they are laid, with the last part of one."""
        return math.ceil(self.lines / MET)

    @property
    def fitting(self) -> int:
        """The fewest zones that the source can feed."""
        return math.ceil(self.count / max(1, self.per_zone))

    @property
    def zones(self) -> int:
        return self.fitting if self.asked is None else self.asked

    @property
    def in_zone(self) -> int:
        """Lines of the largest zone."""
        return math.ceil(self.count / self.zones)

    @property
    def zone_flow(self) -> float:
        """Flow of the largest zone, m3/s."""
        return min(self.lines, self.in_zone) * self.line_flow

    @property
    def zone_time(self) -> float:
        """How long a zone runs a day, s."""
        return self.depth * self.each / self.line_flow

    def zone_time_of(self, reference_m: float) -> float:
        """How long a zone runs on a day of another month, s. reference_m: its ET_0, m."""
        return self.zone_time * reference_m / self.climate.reference

    @property
    def time(self) -> float:
        """How long all zones run a day, one after the other, s."""
        return self.zones * self.zone_time

    @property
    def emission(self) -> float:
        """Emission uniformity, share: of a zone on a manifold, else of one line."""
        one = self.solved if self.zone is None else self.zone
        return one.emission(self.line.made)


def case_of(values: Values, reader: Reader) -> Case:
    """The ``Case`` of a form.  Raises InputError, also by the physics' own arguments."""
    case = Case(
        area=values.area,
        rows=values.rows,
        laid=values.length,
        climate=climate_of(values),
        need=values.need if values.crop == "own" else crop.CROP_BY_KEY[values.crop].need,
        reaches=values.reaches,
        line=_line(values, reader),
        flow=values.flow,
        pressure=values.pressure,
        hours=values.hours * HOUR,
        daily=None if values.daily is None else values.daily * DAY,
        asked=None,
        filtered=values.filter == "yes",
        manifold=_manifold(values),
    )
    if case.each > case.area * MET:
        most = reader.show(case.area / case.rows, "length")
        raise InputError(
            f"“Length of one drip line” must be {most} or less: this area has no more row than "
            "that",
            name="length",
        )
    case = replace(case, asked=_asked(values, case))
    _carried(case, reader)
    return case


def _manifold(values: Values) -> Manifold | None:
    if values.fed == "none":
        return None
    middle = values.fed == "middle"
    return Manifold(pipe_of(values.manifold), middle, values.across, values.rows)


def _asked(values: Values, case: Case) -> int | None:
    """Zones in mind.  Raises InputError where they cannot be."""
    if values.zones is None:
        return None
    if abs(values.zones - round(values.zones)) > 1e-9:
        raise InputError("“Zones, one after another” must be a whole number", name="zones")
    if values.zones > case.count:
        lines = "is one line" if case.count == 1 else f"are {case.count} lines"
        raise InputError(
            f"“Zones, one after another” must be {case.count} or fewer: there {lines}",
            name="zones",
        )
    zones = round(values.zones)
    if case.manifold is not None and math.ceil(case.count / zones) > MOST_LINES:
        least = math.ceil(case.count / MOST_LINES)
        raise InputError(
            f"“Zones, one after another” must be {least} or more: {MOST_LINES} lines on a manifold "
            "are the most that is worked out",
            name="zones",
        )
    return zones


def _line(values: Values, reader: Reader) -> Line:
    """Raises InputError for a line without a dripper or with too many."""
    outlets = math.floor(values.length / values.spacing * MET)
    if outlets < 1:
        long = reader.show(values.length, "length")
        raise InputError(
            f"“Distance between drippers” must be {long}, the length of a line, or less",
            name="spacing",
        )
    if outlets > MOST_DRIPPERS:
        most = reader.show(MOST_DRIPPERS * values.spacing, "length")
        raise InputError(
            f"“Length of one drip line” must be {most} or less: {MOST_DRIPPERS} drippers are the "
            "most that is worked out",
            name="length",
        )
    steady = values.holds == "steady"
    dripper = Dripper(values.dripper, values.least if steady else values.rated, steady)
    return Line(outlets, values.spacing, values.bore, values.slope, dripper, values.made)


def _carried(case: Case, reader: Reader) -> None:
    """Raises InputError where a slope takes all the pressure before a line ends."""
    has = reader.show(case.pressure, "pressure")
    try:
        case.line.solved(case.pressure)
    except InputError:
        rise = reader.show(case.line.slope * case.line.length, "length")
        raise InputError(
            f"No water comes to the end: a climb of {rise} and friction take all of {has}. Feed "
            "the line from above, or enter a shorter one or more pressure",
            name="slope",
        ) from None
    try:
        case.zone  # noqa: B018
    except InputError:
        long = reader.show(case.in_zone * case.rows, "length")
        raise InputError(
            f"No water comes to the weakest line: on a manifold of {long} slope and friction take "
            f"all of {has}. Enter more zones, a wider pipe or more pressure",
            name="manifold",
        ) from None
