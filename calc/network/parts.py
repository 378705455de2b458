"""The parts of a supply: places at heights, water levels, pipes, devices, pumps, outlets.

Heights are in m above one datum of the site, heads in m of the site's water above the same
datum, pressures in Pa gauge.  A ``Network`` only holds the parts; ``network_check`` says what
is wrong with them and ``network_solve`` solves them.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cached_property
from typing import TYPE_CHECKING

from calc import water
from calc.errors import require
from calc.pipe import pipes

if TYPE_CHECKING:
    from collections.abc import Container

    from calc.network.outlets import Outlet
    from calc.pump.curve import Pump


@dataclass(frozen=True)
class Place:
    """A point where pipes meet or an outlet stands. height_m: m above the datum."""

    name: str
    height_m: float


@dataclass(frozen=True)
class Level:
    """Open water that stands at a level: well, cistern, header tank, pond.

    level_m: height of the water's surface while running, m above the datum.
    fills: water may also run into it (a header tank that the pump fills through its outlet).
    """

    name: str
    level_m: float
    fills: bool = False

    @property
    def height_m(self) -> float:
        return self.level_m


@dataclass(frozen=True)
class Run:
    """A length of one pipe with its fittings.

    pipe: ``calc.pipe.pipes.Pipe``; length_m: m, above 0; k: sum of loss coefficients on the pipe's
    own velocity head, -; check: water passes from start to end only.
    """

    name: str
    start: str
    end: str
    pipe: pipes.Pipe
    length_m: float
    k: float = 0.0
    check: bool = False


@dataclass(frozen=True)
class Device:
    """A filter, meter or valve by what it loses at one flow: h = h_r (Q / Q_r)^2.

    flow_m3s: Q_r; loss_m: h_r, m of head; check: from start to end only.
    """

    name: str
    start: str
    end: str
    flow_m3s: float
    loss_m: float
    check: bool = False


@dataclass(frozen=True)
class Reducer:
    """A pressure reducer: holds its set pressure at its end, from the end's own height.

    set_pa: 0 for a break-pressure tank, a tank open to the air behind a float valve; flow_m3s,
    loss_m: what it loses wide open at one flow.  Water passes from start to end only.
    """

    name: str
    start: str
    end: str
    set_pa: float
    flow_m3s: float
    loss_m: float

    check = True

    @property
    def vented(self) -> bool:
        """Whether its end is open to the air: no failure puts pressure on it."""
        return self.set_pa <= 0.0


@dataclass(frozen=True)
class PumpSet:
    """A pump from start (inlet) to end (outlet).

    pump: ``calc.pump.curve.Pump``; set_pa: gauge pressure its speed control holds at the end (None:
    it runs at ``speed`` whatever happens); check: it has a check valve.  npsh_m: what it needs
    at its inlet where its table has no NPSH column, m.
    """

    name: str
    start: str
    end: str
    pump: Pump
    set_pa: float | None = None
    speed: float = 1.0
    check: bool = True
    npsh_m: float | None = None


Link = Run | Device | Reducer | PumpSet


@dataclass(frozen=True)
class Network(water.AtTemperature):
    """A whole supply. links: ``Run``, ``Device``, ``Reducer`` and ``PumpSet``, in any order.

    temperature_k: of the water, K; altitude_m: of the site above the sea, m; hottest_k: most the
    pipes get, K (None: the water's).
    """

    places: tuple[Place, ...]
    levels: tuple[Level, ...]
    links: tuple[Link, ...]
    outlets: tuple[Outlet, ...]
    temperature_k: float = 288.15
    altitude_m: float = 0.0
    hottest_k: float | None = None

    def __post_init__(self) -> None:
        require("temperature_k", self.temperature_k, 273.15, 373.15, "temperature")

    @property
    def heat_k(self) -> float:
        """The hottest the pipes get, K: never less than their water."""
        return max(self.hottest_k or self.temperature_k, self.temperature_k)

    @cached_property
    def heights(self) -> dict[str, float]:
        """Height of every place and level by name, m."""
        return {node.name: node.height_m for node in self.places + self.levels}

    def link(self, name: str) -> Link:
        """The link of this name.  Raises KeyError."""
        return self._by_name[name]

    def pump(self, name: str) -> PumpSet:
        """The pump of this name.  Raises KeyError, also where another part has it."""
        found = self._by_name[name]
        if not isinstance(found, PumpSet):
            raise KeyError(name)
        return found

    def run(self, name: str) -> Run:
        """The pipe of this name.  Raises KeyError, also where another part has it."""
        found = self._by_name[name]
        if not isinstance(found, Run):
            raise KeyError(name)
        return found

    @cached_property
    def _by_name(self) -> dict[str, Link]:
        return {link.name: link for link in self.links}

    @cached_property
    def outlets_by_name(self) -> dict[str, Outlet]:
        return {outlet.name: outlet for outlet in self.outlets}

    def with_link(self, link: Link) -> Network:
        """The same network with the link of that name exchanged for ``link``."""
        changed = tuple(link if one.name == link.name else one for one in self.links)
        return replace(self, links=changed)

    def with_open(self, names: Container[str]) -> Network:
        """The same network with just these outlets open."""
        opened = tuple(replace(one, open=one.name in names) for one in self.outlets)
        return replace(self, outlets=opened)
