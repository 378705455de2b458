"""Faults and readings in words: what it may be, what was read, what is safe to try."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.network.fault_readings import (
    AMPS,
    BUCKET,
    CLOSED,
    LEVEL,
    PRESSURE,
    STANDBY,
    STARTS,
    STATIC,
    SUCTION,
    VOLTS,
    WATTS,
)
from calc.units import HOUR

if TYPE_CHECKING:
    from calc.network.fault_readings import Opened, Reading
    from calc.network.faults import Fault
    from calc.sheets.fault.case import Case
    from calc.units import Reader

_CAUSES = {
    "nothing": "nothing wrong",
    "valve": "a partly closed valve or a blockage from {where}",
    "shut": "a closed valve or a full blockage from {where}",
    "narrow": "pipe one size smaller than given from {where}",
    "leak": "a leak near the end of {where}",
    "filter": "a blocked {where}",
    "strainer": "a blocked foot valve or strainer",
    "outlet": "a furred or blocked outlet: {where}",
    "worn": "a worn pump",
    "air": "air drawn in on the suction side",
    "volts": "low voltage at the pump",
    "charge": "a pressure tank that has lost its air",
    "check": "a check valve that stays open",
    "level": "water that is lower in the source",
    "set": "a set pressure that is too low, or a faulty control",
}
# What anybody may try; what needs more is for a licensed person. Common practice, no source.
_TRIES = {
    "nothing": "Nothing to put right; read again when the trouble is there.",
    "valve": "Open every valve on the way fully; then close off, let the pressure out and look for "
    "grit at the valve.",
    "shut": "Open every valve on the way; feel where the pipe is frozen, crushed or still dry.",
    "narrow": "Read the print on the pipe where it can be seen.",
    "leak": "Close the section off and see whether the fall stops; walk it, look for wet ground.",
    "filter": "Let the pressure out, then clean or change the cartridge.",
    "strainer": "Pull up the suction pipe from above and clean the strainer; never climb in.",
    "outlet": "Unscrew the outlet’s screen or shower head and clean it; compare its bucket with "
    "another.",
    "worn": "Compare with the pump’s table at two flows; then have it looked at by the dealer.",
    "air": "Look for bubbles at a clear piece; tighten the suction joints with the pump switched "
    "off.",
    "volts": "Read the display only, at noon and under load; a licensed person checks cable and "
    "supply.",
    "charge": "Switch off, drain the tank, then read its air with a tyre gauge and fill it to its "
    "pre-charge.",
    "check": "Close the valve behind the tank, pump off: if it still falls, clean or change the "
    "check valve.",
    "level": "Measure down to the water with a weighted line; draw less until it has recovered.",
    "set": "Read the set pressure on the control’s display, and put it back.",
}
SHORT = {
    "nothing": "nothing wrong", "valve": "valve {where}", "shut": "closed {where}",
    "narrow": "narrow {where}", "leak": "leak {where}", "filter": "filter", "strainer": "strainer",
    "outlet": "outlet {where}", "worn": "worn pump", "air": "air in suction",
    "volts": "low voltage", "charge": "tank’s air", "check": "check valve", "level": "low water",
    "set": "set pressure",
}  # fmt: skip
_QUANTITIES = {
    PRESSURE: "pressure", BUCKET: "flow", SUCTION: "pressure", WATTS: "power", VOLTS: "voltage",
    AMPS: "current", LEVEL: "length", STARTS: "per_hour", STANDBY: "pressure", CLOSED: "pressure",
}  # fmt: skip


def between(name: str) -> str:
    """A section's name in a sentence: "pump to house"."""
    return name.replace(" – ", " to ")


def cause(fault: Fault) -> str:
    """What it may be, to stand in a sentence."""
    return _CAUSES[fault.kind].format(where=between(fault.where).removeprefix("the "))


def short(fault: Fault) -> str:
    """The same in few letters, for a picture."""
    return SHORT[fault.kind].format(where=between(fault.where))


def to_try(fault: Fault) -> str:
    """What is safe to try."""
    return _TRIES[fault.kind]


def quantity(reading: Reading) -> str:
    """Key of ``units.QUANTITIES`` of what was read."""
    return _QUANTITIES[reading.kind]


def in_si(reading: Reading, value: float) -> float:
    """A reading's value in the SI unit of its quantity: starts are counted an hour."""
    return value / HOUR if reading.kind == STARTS else value


def shown(reading: Reading, value: float, reader: Reader, digits: int = 3) -> str:
    """A value of a reading with its unit."""
    return reader.show(in_si(reading, value), quantity(reading), digits)


def opened(case: Case, which: Opened) -> str:
    """What is open meanwhile: "all closed", "with Sink open"."""
    if which == STATIC:
        return "all closed"
    if which == case.after and len(which) > 1:
        return "with all of “open after”"
    names = [name if count == 1 else f"{count} × {name}" for name, count in which]
    return f"with {names[0]} open" if len(names) == 1 else f"with {len(names)} outlets open"


def what(case: Case, reading: Reading) -> str:
    """What is read, to stand in a sentence."""
    meanwhile = opened(case, reading.opened)
    return {
        PRESSURE: f"pressure at {reading.at}, {meanwhile}",
        BUCKET: f"bucket at {reading.at}"
        + ("" if reading.opened == ((reading.at, 1),) else f", {meanwhile}"),
        SUCTION: f"suction gauge at the pump, {meanwhile}",
        WATTS: f"power on the display, {meanwhile}",
        VOLTS: "voltage on the display",
        AMPS: f"current on the display, {meanwhile}",
        LEVEL: "water below the pump, by a line",
        STARTS: f"pump starts per hour, {meanwhile}",
        STANDBY: "fall of pressure at rest, pump off",
        CLOSED: "fall of pressure with the valve behind the tank closed",
    }[reading.kind]
