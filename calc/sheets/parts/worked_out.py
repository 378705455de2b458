"""What a site works out to for the fields of the sheets: each a figure, a fact or a word."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from calc import storage
from calc.pipe.line import Line
from calc.pump.curve import DisplacementPump
from calc.sheets.parts import bindings as b
from calc.sheets.parts import use, ways
from calc.sheets.parts.bindings import Asked, Binding, figure, known, words
from calc.site.facts import ASSUMED, Fact
from calc.site.site import Site
from calc.units import DAY, HOUR, parse

if TYPE_CHECKING:
    from collections.abc import Sequence


def line_of(asked: Asked) -> Line:
    return Line(asked.way.sections, asked.way.start_pa, asked.site.value("water.temperature"))


def extra(asked: Asked) -> float:
    """Bends as added length, at the flow asked: a share that loses the same.  0 with sections."""
    way = asked.way
    if not way.plain or way.flow <= 0:
        return 0.0
    line, only = line_of(asked), way.sections[0]
    return line.local_loss_in(only, way.flow) / line.straight_loss_in(only, way.flow)


def most(asked: Asked) -> float:
    """The most the pump gives at the pressure the line starts with, m3/s."""
    way = asked.way
    if way.start != ways.PUMP:
        return way.flow
    return ways.most_flow(asked.site, way.start_pa) if way.held else way.flow


def fitting(key: str) -> Binding:
    """How many of a fitting are on the way."""

    def give(asked: Asked) -> str:
        counted = (pair for section in asked.way.sections for pair in section.fittings)
        return str(sum(int(count) for fitting, count in counted if fitting.key == key))

    return words(key, give)


def npsh(asked: Asked) -> Fact:
    """NPSH required: given, or by the pump's curve at the flow of one pump."""
    given = asked.site.best("pump.npsh")
    if given.known:
        return given
    flow = asked.solved.flow / asked.site.value("pump.count")
    needed = ways.pump_of(asked.site).npsh_required_at(flow)
    return b.NOT_KNOWN if needed is None else b.written(needed, "head")


def figure_known(asked: Asked) -> str:
    """Whether the data sheet's NPSH or its dry lift is what is known."""
    site = asked.site
    only_lift = site.get("pump.dry_lift").known and not site.get("pump.npsh").known
    return "lift" if only_lift and not site.get("pump.curve").known else "npsh"


def raised(asked: Asked) -> float | None:
    """Water of a tank above the outlet, m, where the line begins at open water."""
    return -asked.way.climb if asked.way.start != ways.PUMP else None


def lifted(asked: Asked) -> float | None:
    """Rise from the pump to the point, m; None where the line begins elsewhere or falls."""
    rises = asked.way.start == ways.PUMP and asked.way.climb > 0
    return asked.way.climb if rises else None


def lost(asked: Asked) -> float:
    """Head lost on the way to the outlet, m."""
    return line_of(asked).loss(asked.way.flow)


def pump_flow(asked: Asked) -> float:
    """Flow of the pump half-way between cut-in and cut-out, m3/s."""
    low, high = (
        ways.known(asked.site, path, "The pressure switch") for path in (
            "pump.cut_in", "pump.cut_out")
    )  # fmt: skip
    return ways.most_flow(asked.site, (low + high) / 2 + ways.sensed_pressure(asked.site))


def shut_off(asked: Asked) -> float | None:
    """Head of the pump with no flow, m; None where it is not known, or a relief ends it."""
    site = asked.site
    if not site.get("pump.curve").known and not site.get("pump.id").known:
        return None
    pump = ways.pump_of(site)
    return None if isinstance(pump, DisplacementPump) else pump.shut_off_head


def whole_flow(asked: Asked) -> float | None:
    """All that is open, m3/s; None where nothing is."""
    flow = asked.solved.flow
    return flow if flow > ways.LEAST else None


def drawn(asked: Asked) -> float:
    return max(0.0, asked.solved.flow)


def take_npsh(asked: Asked, fact: Fact) -> Site:
    return asked.site.put("pump.npsh", fact)


def npsh_asked(asked: Asked) -> bool:
    """Whether NPSH is a fact of its own, and not read off the pump's curve."""
    if asked.site.get("pump.npsh").known:
        return True
    return ways.pump_of(asked.site).npsh_required_at(0.0) is None


def number_open(field: str, kind: str) -> Binding:
    return words(field, lambda asked: str(use.number_open(asked.site, kind, asked.moment)))


def flow(field: str, kind: str) -> Binding:
    return figure(field, "flow", lambda asked: use.flow_of(asked.site, kind))


def most_power(asked: Asked) -> Fact:
    """The most that the pumps draw by their table, assumed with an assumed pump; not known where
    the table does not tell."""
    site = asked.site
    powers = [point.power for point in ways.pump_of(site).points]
    if not ways.has_pump(site) or not all(powers):
        return b.NOT_KNOWN
    most = max(powers) * site.value("pump.count")
    if site.get("pump.curve").known or site.get("pump.id").known:
        return b.written(most, "power")
    return b.written(most, "power", ASSUMED, site.best("pump.id").reason)


def daily_use(asked: Asked) -> Fact:
    """Water of a day as given; else worked out, without the animals of which it is not known what
    they drink."""
    if asked.site.get("use.daily").known:
        return asked.site.get("use.daily")
    daily = use.daily(asked.site)
    if daily is None:
        return b.NOT_KNOWN
    if use.stock(asked.site).open:
        return b.written(daily, "daily", ASSUMED, "without animals whose use is not known")
    return b.written(daily, "daily")


def busiest(asked: Asked) -> float | None:
    """Water of the busiest time of the day, m3, by the pattern of the day."""
    daily = daily_use(asked)
    if not daily.known:
        return None
    shares = storage.PATTERNS[asked.site.best("use.pattern").text]
    share = _largest_share(shares, asked.site.value("use.peak_time") / HOUR)
    return parse(daily.text, "daily").value * DAY * share


def _largest_share(shares: Sequence[float], hours: float) -> float:
    """The most of a day that so many hours on end may take, each hour evenly used.

    The busiest such time begins or ends with an hour.
    """
    whole, part = divmod(hours, 1.0)
    twice = [*shares, *shares, *shares[:1]]  # past midnight
    return max(
        sum(twice[at : at + int(whole)]) + part * max(twice[at - 1], twice[at + int(whole)])
        for at in range(1, len(shares) + 1)
    )


DAILY = replace(known("use", "use.daily"), give=daily_use)
