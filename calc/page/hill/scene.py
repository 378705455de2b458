"""What a hillside shows: heights in m above the pump, texts in the reader's units."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property


@dataclass(frozen=True)
class Cause:
    """Why an outlet gets too little, said at its place in the picture."""

    text: str
    climb_m: float | None = None  # where it is the climb: up to this height


@dataclass(frozen=True)
class Stop:
    """A point of the pipes, or an open tank (its height is the water's level)."""

    key: str
    name: str
    height_m: float
    tank: bool = False
    cause: Cause | None = None


@dataclass(frozen=True)
class Pipe:
    """A pipe section between two stops. bore_m: inside diameter; device: a filter or valve in it.

    at: its name in the picture.  in_device: the cause is in the device, not in the pipe.
    """

    at: str
    start: str
    end: str
    bore_m: float
    device: bool = False
    cause: Cause | None = None
    in_device: bool = False


@dataclass(frozen=True)
class Column:
    """Water over an outlet. before_m, after_m: as high as its pressure lifts it, m.

    before_m None: there is no before, or it is the same.  needs_m: heights that are enough;
    level: "bad", "tight", "good" or "shut"; before, after: the pressures as written, without
    unit; words: said over it, the best first ("too weak", "weak");
    change: key of its field; said: for a screen reader; opens: it opens after; shown: its name
    in the picture, where that is another.
    """

    at: str
    name: str
    stop: str
    before_m: float | None
    after_m: float
    needs_m: tuple[float, ...]
    level: str
    before: str
    after: str
    words: tuple[str, ...] = ()
    change: str = ""
    said: str = ""
    opens: bool = False
    shown: str = ""


@dataclass(frozen=True)
class Source:
    """The water and the pump, at height 0. level_m: of the water; bore_m: of the suction pipe.

    names: lines under water and pump; pump False: the pipe begins without one, at a place of
    pressure.
    """

    level_m: float = 0.0
    bore_m: float = 0.0
    water: tuple[str, ...] = ()
    pump: tuple[str, ...] = ()
    has_well: bool = True
    has_pump: bool = True
    water_cause: Cause | None = None
    pump_cause: Cause | None = None


@dataclass(frozen=True)
class Scene:
    """All of it. root: key of the stop at the source; unit: of the pressures."""

    root: str
    source: Source
    stops: tuple[Stop, ...]
    pipes: tuple[Pipe, ...]
    columns: tuple[Column, ...]
    unit: str

    @cached_property
    def by_key(self) -> dict[str, Stop]:
        """The stops by their keys."""
        return {stop.key: stop for stop in self.stops}
