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

    at: its name in the picture; label: said under it where there is room.  in_device: the cause is
    in the device, not in the pipe.
    """

    at: str
    start: str
    end: str
    bore_m: float
    device: bool = False
    cause: Cause | None = None
    in_device: bool = False
    label: str = ""


@dataclass(frozen=True)
class Column:
    """Water over an outlet. before_m, after_m: as high as its pressure lifts it, m.

    before_m None: there is no before, or it is the same.  needs_m: heights that are enough;
    level: "bad", "tight", "good" or "shut"; before, after: the pressures as written, without
    unit; words: said over it, the best first ("too weak", "weak"); change: key of its field; said:
    for a screen reader, after name and pressures; opens: it opens after; shown: its name
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
    """Where the water comes from, at height 0.

    kind: "well", water at ``level_m`` and the pump; "pump" alone; "tank", open, with its water at
    0; "place", where a pressure is known.  bore_m: of the suction pipe; water, pump: words under
    them, or under what is there in place of the pump.
    """

    kind: str = "well"
    level_m: float = 0.0
    bore_m: float = 0.0
    water: tuple[str, ...] = ()
    pump: tuple[str, ...] = ()
    water_cause: Cause | None = None
    pump_cause: Cause | None = None

    @property
    def has_well(self) -> bool:
        return self.kind == "well"

    @property
    def has_pump(self) -> bool:
        return self.kind in ("well", "pump")


@dataclass(frozen=True)
class Scene:
    """All of it. root: key of the stop at the source; unit: of the pressures.

    line_m: height to which water would rise everywhere, drawn as a line, None for none.
    """

    root: str
    source: Source
    stops: tuple[Stop, ...]
    pipes: tuple[Pipe, ...]
    columns: tuple[Column, ...]
    unit: str
    line_m: float | None = None

    @cached_property
    def by_key(self) -> dict[str, Stop]:
        """The stops by their keys."""
        return {stop.key: stop for stop in self.stops}
