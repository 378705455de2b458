"""What is wrong with one line at a flow, the same for every sheet that asks it.

Rating, heat, static pressure at the outlet, whether water arrives, pressure at a crest, enough
or not, water speed: each a ``Finding`` with a key that sheets share.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc import practice, water
from calc.page.findings import Finding, unchecked
from calc.pipe import fittings, pipes

if TYPE_CHECKING:
    from calc.pipe.line import Line, Section, Stress
    from calc.units import Reader

AIR = practice.SEA_LEVEL_AIR  # Pa, where no height above sea level is asked for
HAIR = 1.0  # Pa, below which a pressure counts as zero; our choice
LEVEL = 1e-6  # m, by which heights may differ and still be level; our choice


@dataclass(frozen=True)
class Need:
    """What is asked of a line, SI: its flow, m3/s; the pressure at the outlet that works and that
    is comfortable, Pa."""

    flow_m3s: float
    works_pa: float
    comfortable_pa: float

    @property
    def sure_pa(self) -> float:
        """The pressure from which it is no longer borderline, Pa."""
        return practice.BORDERLINE * self.works_pa


def the(section: Section) -> str:
    """A section as the subject of a sentence."""
    return f"Pipe {section.name}" if section.name else "The pipe"


def below_zero(pressure_pa: float) -> str:
    """What a pressure below zero means: "" for none."""
    if pressure_pa < -AIR:
        return "not a real pressure: the water column separates before"
    return "below zero: the water does not arrive" if pressure_pa < 0 else ""


def line_findings(line: Line, need: Need, reader: Reader) -> tuple[Finding, ...]:
    """Findings of a line that carries what is needed, harm first."""
    dry = _no_water(line, need, reader)
    return (
        *_heat(line, reader),
        *_ratings(line, reader),
        *over_limit(line.most_static, reader),
        *(dry or (*_crest(line, need, reader), *_enough(line, need, reader))),
        *(_not_real(line, need, reader) if dry else _valves(line, need, reader)),
        *_speed(line, need, reader),
        *_no_rating(line, reader),
    )


# Rating and heat -----------------------------------------------------------------------------


def _ratings(line: Line, reader: Reader) -> list[Finding]:
    over = [s for s in line.stresses() if s.over and not s.hot]
    over.sort(key=lambda s: -s.pressure_pa / (s.rating_pa or 1.0))
    return [_over(line, stress, reader) for stress in over]


def _over(line: Line, stress: Stress, reader: Reader) -> Finding:
    rating, carries = reader.apart(stress.rating_pa, stress.pressure_pa, "pressure")
    warm = stress.rating_pa < stress.section.pipe.rating_pa
    at = f" at {reader.show(line.heat_k, 'temperature')}" if warm else ""
    said = f"{the(stress.section)} is rated {rating}{at} but carries {carries} with no flow."
    return Finding("stop", "over-rating", said, "harm", stress.section.name)


def too_hot(line: Line, pipe: pipes.Pipe) -> bool:
    """Whether a pipe gets hotter than its kind may, or carries hot water and is not made for it."""
    return pipes.too_hot(pipe, line.heat_k, line.temperature_k)


def _heat(line: Line, reader: Reader) -> list[Finding]:
    found: list[Finding] = []
    seen = set()
    for section in line.sections:
        if section.pipe.kind not in seen:
            seen.add(section.pipe.kind)
            found += heat_findings(line, section, reader)
    return found


def heat_findings(line: Line, section: Section, reader: Reader) -> list[Finding]:
    """What a section's pipe is too hot for, if it is; with what to know of its kind's limit."""
    if not too_hot(line, section.pipe):
        return []
    said = hot_words(section.pipe, line.heat_k, reader, the(section))
    found = [Finding("stop", "too-hot", said, "harm", section.name)]
    if section.pipe.heat_note and line.temperature_k <= practice.HOT_FROM + 1e-9:
        found.append(Finding("note", "cautious-heat", section.pipe.heat_note, at=section.name))
    return found


def kind_name(pipe: pipes.Pipe) -> str:
    """A kind by its name alone: "PE 100 SDR 11"."""
    return pipe.kind_label.partition(" (")[0]


def hot_words(pipe: pipes.Pipe, heat_k: float, reader: Reader, named: str = "The pipe") -> str:
    """That a pipe is too hot, or carries hot water and is not made for it, as a sentence.

    heat_k: the hottest it gets, K; named: the pipe as the subject.
    """
    limit = pipes.hottest_k(pipe) or 0.0
    if heat_k > limit + 1e-9:
        gets, may = reader.apart(heat_k, limit, "temperature")
        return f"{named} gets {gets}, and no rating of its kind is known above {may}."
    asked = reader.show(practice.HOT_RATED, "pressure")
    at = reader.show(practice.HOT_RATED_AT, "temperature")
    return f"{named} is not made for hot water: codes ask for a rating of {asked} at {at}."


def _no_rating(line: Line, reader: Reader) -> list[Finding]:
    bare = [s for s in line.stresses() if s.rating_pa is None and not s.hot]
    return [
        unchecked(
            "no-rating",
            f"{the(s.section)} has no known rating: check that it is rated "
            f"{reader.show(s.pressure_pa, 'pressure')} or more.",
            s.section.name,
        )
        for s in bare[:1]
    ]


# At the outlet -------------------------------------------------------------------------------


def over_limit(static_pa: float, reader: Reader) -> list[Finding]:
    """A static pressure at the outlet (Pa) over what codes commonly allow, if it is."""
    if static_pa <= practice.HIGHEST_AT_OUTLET * (1 + 1e-9):
        return []
    static, most = reader.apart(static_pa, practice.HIGHEST_AT_OUTLET, "pressure")
    said = f"Static pressure at the outlet is {static}; codes commonly allow {most} at most."
    return [Finding("care", "outlet-over-limit", said, "harm")]


def _no_water(line: Line, need: Need, reader: Reader) -> list[Finding]:
    if line.static <= 0 or line.crest(0.0) < -HAIR:
        reach, top = reader.apart(line.reach_m, line.top_m, "head")
        level = line.top_m <= line.rise_m + LEVEL
        where = "outlet" if line.static <= 0 and level else "highest point"
        if line.vented:
            said = (
                f"With no flow, no pressure is left at the {where}: a break-pressure tank takes it."
            )
        elif line.reduced:
            said = f"With no flow, no pressure is left at the {where}: the climb uses it all."
        elif reach == top:
            said = f"This pressure raises water {reach}, no higher than the {where}: none flows."
        else:
            said = f"This pressure raises water {reach} at most; the {where} is {top} up."
        return [Finding("stop", "no-water", said, "cannot")]
    left = line.left(need.flow_m3s)
    if left < 0 or (left <= 0 < need.works_pa):
        arrives = line.largest_flow(0.0, need.flow_m3s)
        most, asked = reader.apart(arrives, need.flow_m3s, "flow")
        said = f"Friction uses all the pressure; at most {most} will arrive, not {asked}."
        if most == asked:
            said = f"At {asked} friction uses all the pressure: none is left at the outlet."
        elif line.static < need.works_pa:  # the height is at fault first: no pipe would do
            with_none = reader.show(line.static, "pressure")
            said = f"Only {with_none} is left with no flow, and friction uses it all; at most "
            said += f"{most} will arrive, not {asked}."
        return [Finding("stop", "no-water", said, "cannot")]
    return []


def _not_real(line: Line, need: Need, reader: Reader) -> list[Finding]:
    """That a figure below a vacuum is only arithmetic, where one is shown."""
    if line.left(need.flow_m3s) >= -AIR:
        return []
    vacuum = reader.show(-AIR, "pressure")
    said = (
        f"A figure below {vacuum} cannot happen: the water column separates first, and less flows."
    )
    return [Finding("note", "not-real", said)]


def breaks_at(line: Line) -> float:
    """Gauge pressure below which a column of water breaks, Pa: near a vacuum, or where it boils."""
    return max(practice.DEEPEST_VACUUM, water.vapour_pressure(line.temperature_k) - AIR)


def _crest(line: Line, need: Need, reader: Reader) -> list[Finding]:
    least = line.crest(need.flow_m3s)
    shown = reader.show(least, "pressure")
    if least < breaks_at(line):
        said = f"Pressure at the highest point would be {shown}: the water column separates there."
        return [Finding("stop", "below-vacuum", said, "cannot")]
    if least < -HAIR:
        said = f"Pressure at the highest point falls to {shown}: polluted water can be drawn in."
        return [Finding("care", "negative-pressure", said, "harm")]
    return []


def _enough(line: Line, need: Need, reader: Reader) -> list[Finding]:
    return enough(line.left(need.flow_m3s), line.static, need, reader)


def enough(left_pa: float, static_pa: float, need: Need, reader: Reader) -> list[Finding]:
    """Too little pressure at the outlet, running (Pa), if it is; static: with no flow, Pa."""
    level = practice.enough(left_pa, need.works_pa, need.comfortable_pa)
    if not level:
        return []
    got, needed = reader.apart(left_pa, need.works_pa, "pressure")
    flowing = f"with {reader.show(need.flow_m3s, 'flow')} flowing"
    if level == "stop" and static_pa < need.works_pa:
        static, needed = reader.apart(static_pa, need.works_pa, "pressure")
        said = f"Even with no flow you get {static} at the outlet; you need {needed}."
    elif level == "stop":
        said = f"You get {got} at the outlet {flowing}; you need {needed}."
    elif level == "care":
        more = "just what" if got == needed else f"little more than the {needed}"
        said = f"You get {got} at the outlet {flowing}, {more} you need."
    else:
        got, comfortable = reader.apart(left_pa, need.comfortable_pa, "pressure")
        said = f"{got} at the outlet works; from {comfortable} it is comfortable."
    return [Finding(level, "short", said)]


def falling_valves(line: Line, need: Need) -> list[int]:
    """Indices of the sections whose pressure-reducing valve holds near its rated flow."""
    ends = line.points(need.flow_m3s)[1:]
    return [
        at
        for at, (section, end) in enumerate(zip(line.sections, ends, strict=True))
        if section.reducer is not None
        and not section.vented
        and end.pressure_pa >= section.reducer[0] - HAIR
        and fittings.falls_off(need.flow_m3s * section.share, section.reducer[1])
    ]


def _valves(line: Line, need: Need, reader: Reader) -> list[Finding]:
    """A valve near its rated flow: what it holds falls off, and less is left at the outlet."""
    low = falling_valves(line, need)
    if not low:
        return []
    left = line.left(need.flow_m3s)
    levels = [
        practice.enough(one, need.works_pa, need.comfortable_pa)
        for one in (left, left - practice.REDUCER_FALL[1])
    ]
    least, most = (reader.show(fall, "pressure") for fall in practice.REDUCER_FALL)
    start, at = "Near its rated flow, the pressure-reducing valve may give", line.sections[low[0]]
    if levels[1] not in ("stop", "care") or levels[0] in ("stop", "care"):
        said = f"{start} {least} to {most} less than it is set to."
        return [Finding("note", "reducer-fall", said, at=at.name)]
    then = max(left - practice.REDUCER_FALL[1], 0.0)
    got, needed = reader.apart(then, need.works_pa, "pressure")
    said = f"{start} less than it is set to: {got} at the outlet, where you need {needed}."
    return [Finding("care", "reducer-fall", said, at=at.name)]


def _speed(line: Line, need: Need, reader: Reader) -> list[Finding]:
    section = max(line.sections, key=lambda one: line.speed_in(one, need.flow_m3s))
    speed = line.speed_in(section, need.flow_m3s)
    return speed_finding(speed, the(section).lower(), reader, section.name)


def speed_finding(speed_ms: float, where: str, reader: Reader, at: str) -> list[Finding]:
    """Water that runs fast (m/s), if it does; where, at: the pipe in words and by name."""
    level = practice.speed_level(speed_ms)
    if not level:
        return []
    return [Finding(level, "fast", fast_words(speed_ms, level, where, reader), at=at)]


def fast_words(speed_ms: float, level: str, where: str, reader: Reader) -> str:
    """That water runs fast (m/s) in ``where``, as a sentence. level: "care" or "note"."""
    limit = practice.SPEED_CARE if level == "care" else practice.SPEED_NOTE
    runs, most = reader.apart(speed_ms, limit, "speed")
    said = f"Water runs at {runs} in {where}"
    if level == "care":
        kept = "slower" if runs == most else f"below {most}"
        return f"{said}, too fast for small pipe: keep it {kept}."
    from_ = "From there" if runs == most else f"From {most}"
    return f"{said}. {from_} up, expect noise and water hammer."
