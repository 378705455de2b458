"""Battery and tank carried from hour to hour: the loop of the year, in Wh and m3.

What happens in an hour, in this order.  Standby is drawn.  What is asked comes from the tank, and
what the tank lacks is pumped: with the sun's power, then from the battery down to its cut-out, then
with the backup.  Sun that is left fills the tank, then the battery; the rest is spilled.  The
battery never fills the tank.  In an hour the pump may run for a part of it.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, NamedTuple

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

HOURS = 8760


class Hour(NamedTuple):
    """One hour: Wh in the battery and m3 in the tank at its end; m3 given and pumped in it; Wh.

    idle: standby that was met; drawn: out of the battery; charged: into it; faded: lost at rest;
    aided: by the backup; spilled: sun not used.
    """

    stored: float
    level: float
    served: float
    pumped: float
    idle: float
    drawn: float
    charged: float
    faded: float
    aided: float
    spilled: float


@dataclass(frozen=True)
class Plan:
    """All that the loop needs, hour by hour or once: Wh, m3, and powers for one hour each.

    sun: Wh from the controller; asked: m3; floors: Wh not to be drawn below; charging: most Wh
    into the battery; capacity: Wh; discharging: most Wh out; into, out: efficiencies; fading:
    share an hour; idle: Wh of standby an hour; per: Wh for a m3; rate: m3 an hour; volume: m3 of
    the tank; backup: Wh an hour; backup_hours: a day; stored, level: Wh and m3 at the start.
    """

    sun: Sequence[float]
    asked: Sequence[float]
    floors: Iterable[float]
    charging: Iterable[float]
    capacity: float
    discharging: float
    into: float
    out: float
    fading: float
    idle: float
    per: float
    rate: float
    volume: float
    backup: float
    backup_hours: float
    stored: float
    level: float


def run(plan: Plan) -> list[Hour]:
    """The hours of a year, one after the other.  Source: conservation of energy and water."""
    stored, level, capacity, volume = plan.stored, plan.level, plan.capacity, plan.volume
    into, out, fading, idle = plan.into, plan.out, plan.fading, plan.idle
    per, rate, aid = plan.per, plan.rate, _Aid(plan.backup, plan.backup_hours)
    rows: list[Hour] = []
    add, new = rows.append, tuple.__new__  # a third quicker than Hour(...)
    hours = zip(plan.sun, plan.asked, plan.floors, plan.charging, strict=False)
    for hour, (sun, ask, floor, most_in) in enumerate(hours):
        faded = stored * fading
        stored -= faded
        drawn = charged = pumped = aided = 0.0
        sun, met = sun - idle, idle
        if sun < 0.0:
            drawn = min(-sun / out, stored)
            stored -= drawn
            met += sun + drawn * out
            sun = 0.0
        level -= ask
        served = ask
        if level < 0.0:
            pumped = min(-level, rate)
            sun -= pumped * per
            if sun < 0.0:
                given = min(-sun, max(0.0, stored - floor) * out, plan.discharging)
                aided = aid.give(hour, -sun - given) if given < -sun else 0.0
                if given + aided < -sun:
                    pumped = max(0.0, pumped + (sun + given + aided) / per)
                drawn, stored = drawn + given / out, stored - given / out
                sun = 0.0
            served, level = ask + min(0.0, level + pumped), 0.0
        if sun > 0.0:
            if level < volume:
                extra = min(volume - level, rate - pumped, sun / per)
                level, pumped, sun = level + extra, pumped + extra, max(0.0, sun - extra * per)
            if stored < capacity:
                charged = min(sun, most_in, (capacity - stored) / into)
                stored, sun = stored + charged * into, sun - charged
        add(new(Hour, (stored, level, served, pumped, met, drawn, charged, faded, aided, sun)))
    return rows


class _Aid:
    """The backup: what it has left of the day."""

    def __init__(self, power: float, hours: float) -> None:
        self.power, self.most = power, power * hours
        self.day, self.left = -1, 0.0

    def give(self, hour: int, wanted: float) -> float:
        """Wh in this hour, up to what is ``wanted``."""
        if hour // 24 != self.day:
            self.day, self.left = hour // 24, self.most
        given = min(wanted, self.power, self.left)
        self.left -= given
        return given
