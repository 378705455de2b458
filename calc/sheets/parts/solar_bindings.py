"""How the fields of a supply that runs on the sun stand to a site."""

from __future__ import annotations

from dataclasses import replace

from calc import practice
from calc.network.parts import PumpSet
from calc.sheets.parts import ways
from calc.sheets.parts.bindings import NOT_KNOWN, Asked, Binding, figure, known
from calc.sheets.parts.place import BINDINGS as PLACE
from calc.sheets.parts.table_bindings import TableBinding
from calc.site.facts import Fact
from calc.units import GRAVITY

# V, of batteries that are sold; common practice, no source
VOLTS = ("12", "24", "48")


def _flow(asked: Asked) -> float | None:
    """All that the pump gives with what is open, m3/s; None where that is nothing."""
    flow = asked.solved.flow
    return flow if flow > ways.LEAST else None


def _watts(asked: Asked) -> float | None:
    """What the pumps draw while they give that, W; None where their tables do not tell."""
    site, found = asked.site, asked.solved.moving
    motor = site.value("pump.motor") or practice.MOTOR_EFFICIENCY
    controller = site.value("pump.controller") or practice.CONTROL_EFFICIENCY
    density, total = found.network.weight / GRAVITY, 0.0
    for link in found.network.links:
        if not isinstance(link, PumpSet):
            continue
        state = found.pump(link.name)
        if state.speed is None or state.flow_m3s <= 0:
            return None
        drawn = link.pump.drawn_at(state.flow_m3s, state.speed, density, motor, controller)
        if drawn is None:
            return None
        total += drawn
    return total or None


def _volts(asked: Asked) -> Fact:
    """The battery's voltage, where it is one of those that are sold."""
    given = asked.site.get("power.voltage")
    volts = f"{asked.site.value('power.voltage'):g}" if given.known else ""
    return replace(given, text=volts) if volts in VOLTS else NOT_KNOWN


def _own_tank(asked: Asked) -> Fact:
    """A tank up the hill that the site names: without a battery there must be one."""
    return asked.site.get("power.hill_tank")


FLOW, WATTS = figure("flow", "flow", _flow), figure("watts", "power", _watts)
STAND = (
    known("tilt", "power.tilt"), known("facing", "power.facing"), known("shade", "power.shade"),
)  # fmt: skip
PANELS = (
    known("rated", "power.panel"), known("series", "power.series"),
    known("strings", "power.strings"), known("openv", "power.open_voltage"),
)  # fmt: skip
BATTERY = (
    known("kind", "power.battery"),
    Binding("volts", _volts, path="power.voltage"),
    known("ah", "power.capacity"),
)  # fmt: skip
CONTROLLER = (
    known("control", "power.controller"), known("limit", "power.limit"),
    known("amps", "power.amps"),
)  # fmt: skip
USE = (known("pattern", "use.pattern"), known("season", "power.season"))
TANK = known("tank", "power.hill_tank")


def solar(use: Binding) -> tuple[Binding | TableBinding, ...]:
    """Of the sheets of panels and battery. use: the binding of a day's water."""
    return (
        use, FLOW, WATTS, *PANELS, *BATTERY, TANK, known("fail", "power.fail"), *PLACE, *STAND,
        *CONTROLLER, *USE,
    )  # fmt: skip


def direct(use: Binding) -> tuple[Binding | TableBinding, ...]:
    """Of the sheet without a battery."""
    return (
        use, *PANELS, known("fail", "power.fail"), *PLACE, *STAND, known("limit", "power.limit"),
        replace(TANK, give=_own_tank, spare=True), *USE,
    )  # fmt: skip


def standing() -> tuple[Binding | TableBinding, ...]:
    """Of the sheet on where panels stand."""
    return (*STAND[:2], known("away", "power.cable"), *PLACE)
