"""What to try where a day goes wrong: a larger tank, other hours, less at once, wider pipe.

Each is followed through the day anew.  All but wider pipe and a higher tank keep the flows that
were solved, so that trying them takes little time.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from calc import practice
from calc.errors import InputError
from calc.page.form import Row
from calc.pipe import pipes
from calc.sheets.day.form import table_texts
from calc.sheets.day.judge import enough_source
from calc.sheets.parts.carry import exact
from calc.sheets.parts.fields import NO_PUMP
from calc.sheets.parts.pipe_choice import pipe_of
from calc.sheets.parts.tank_sizes import round_up
from calc.sheets.parts.tries import Change
from calc.site.supply import PUMP, SOURCE, fold, plain

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from calc.sheets.day.case import Case
    from calc.units import Reader

NONE = (
    "No single change we tried is enough. A larger tank, longer hours of power, less use at once "
    "and wider pipe each help: combine them."
)
FALLS = "Less use at once, a tank that fills slowly, and wider pipe each help: combine them."
UNFILLED = "Nothing fills the tanks: they need a pump, or a spring above them."
WATER = frozenset({"no-water", "tank-empty", "lower"})
WEAK = frozenset({"short", "too-weak", "no-water"})
LARGER = (1.25, 1.5, 2.0, 3.0, 5.0)  # times the tank that are tried; our choice
LONGER = (1.0, 2.0, 4.0)  # hours of power more; our choice
LONGEST = 24.0
LESS = (0.75, 0.5, 0.25)  # of the hours of the largest use; our choice
STORED = (2.0, 4.0, 8.0)  # times what is stored at the source; our choice
LATER = 4  # hours at which the largest use is tried while the pump runs; our choice
RAISED = (1.1, 1.5)  # of the head that is missing: with more pressure more is drawn; our choice
MOST_TRIED = 30  # days followed for one answer: a reader waits; our choice
AGAIN = (0.8, 0.6, 0.4, 0.2)  # shares at which a pump starts again; our choice


def last(case: Case) -> str:
    """What to say where nothing is enough."""
    if case.falls:
        return FALLS
    return NONE if case.pumped else UNFILLED


@dataclass(frozen=True)
class Rowed:
    """Rows of one table with a cell changed. key: of the table."""

    key: str
    rows: tuple[Row, ...]

    def texts(self, case: Case, reader: Reader) -> dict[str, str]:
        numbers = {**case.values.numbers, self.key: self.rows}
        changed = type(case.values)(numbers, case.values.typed)
        return {self.key: table_texts(changed, reader)[self.key]}


def changes(case: Case, reader: Reader) -> Iterator[Change]:
    """The likely best first."""
    yield from _larger(case, reader)
    yield from _moved(case, reader)
    yield from _longer(case)
    yield from _fewer(case, reader)
    yield from _less(case, reader)
    yield from _stored(case, reader)
    yield from _switched(case)
    yield from _wider(case, reader)
    yield from _raised(case, reader)


def _with(case: Case, key: str, at: int, **cells: Any) -> Rowed:
    """A table with cells of one row changed. at: its index."""
    rows = list(case.values.numbers[key])
    rows[at] = Row({**rows[at].numbers, **cells}, rows[at].place)
    return Rowed(key, tuple(rows))


def _first(case: Case, tried: Iterable[tuple[str, dict[str, str], dict[str, Any]]]) -> Any:
    """The first of (text, texts, numbers) with which the day has water all through; None."""
    for text, texts, numbers in tried:
        if len(case.kept.days) >= MOST_TRIED:
            return None
        try:
            if _well(case.changed(**numbers)):
                return text, texts
        except InputError:
            continue
    return None


def _well(case: Case) -> bool:
    """Whether every outlet has water whenever it is open, and the days repeat."""
    lower = not case.repeats and not case.begun and any(map(case.lower, range(len(case.tanks))))
    return not lower and not any(case.nothing(name) for name in case.failing)


def _change(found: Any, keys: frozenset[str]) -> Iterator[Change]:
    if found is not None:
        yield Change(found[0], keys, found[1])


# Tanks and hours ------------------------------------------------------------------------------


def _larger(case: Case, reader: Reader) -> Iterator[Change]:
    """A larger tank, of the one that falls to the least."""
    if not case.tanks or _well(case):
        return
    at = case.lowest_share
    tank = case.tanks[at]

    def tried() -> Iterator[tuple[str, dict[str, str], dict[str, Any]]]:
        for times in LARGER:
            size = round_up(times * tank.volume_m3, "volume", reader, 2)
            made = _with(case, "stores", at, volume=size)
            text = f"Choose {reader.show(size, 'volume')} for {tank.name}."
            yield text, made.texts(case, reader), {"stores": made.rows}

    yield from _change(_first(case, tried()), WATER)


def _largest(case: Case) -> int | None:
    """Index of the row of use that takes the most; None where there is none."""
    one = {name: at for at, name in enumerate(case.run.outlets)}
    wanted = {fold(name): case.run.flows.wanted(((name, 1),))[at] for name, at in one.items()}
    sizes = [wanted[fold(row.tap)] * row.open * row.hours for row in case.values.draws]
    return sizes.index(max(sizes)) if sizes and max(sizes) > 0 else None


def _moved(case: Case, reader: Reader) -> Iterator[Change]:
    """The largest use at an hour at which the pump has power."""
    at, values = _largest(case), case.values
    if at is None or _well(case) or values.powered != "hours":
        return
    row = values.draws[at]
    begins = [float(int(values.pfrom + 1 + n) % 24) for n in range(int(values.phours))]

    def tried() -> Iterator[tuple[str, dict[str, str], dict[str, Any]]]:
        for hour in begins[:LATER]:
            made = _with(case, "draws", at, **{"from": hour})
            text = f"Open {plain(row.tap)} at {hour:g}:00, while the pump has power."
            yield text, made.texts(case, reader), {"draws": made.rows}

    yield from _change(_first(case, tried()), WATER)


def _longer(case: Case) -> Iterator[Change]:
    """Power for more hours a day."""
    values = case.values
    if values.drive == NO_PUMP or values.powered != "hours" or _well(case):
        return

    def tried() -> Iterator[tuple[str, dict[str, str], dict[str, Any]]]:
        for more in LONGER:
            long = min(values.phours + more, LONGEST)
            begins = (values.pfrom - more / 2) % 24
            texts = {"phours": f"{long:g}", "pfrom": f"{begins:g}"}
            text = f"Give the pump {long:g} hours of power, as with a battery."
            yield text, texts, {"phours": float(texts["phours"]), "pfrom": float(texts["pfrom"])}
        text = "Give the pump power day and night."
        yield text, {"powered": "always"}, {"powered": "always"}

    yield from _change(_first(case, tried()), WATER)


# Use ------------------------------------------------------------------------------------------


def _fewer(case: Case, reader: Reader) -> Iterator[Change]:
    """One fewer open at once, where several of one row are."""
    for at, row in enumerate(case.values.draws):
        if row.open > 1:
            made = _with(case, "draws", at, open=row.open - 1)
            text = f"Open no more than {row.open - 1} of {plain(row.tap)} at once."
            yield Change(text, WATER | WEAK, made.texts(case, reader))


def _less(case: Case, reader: Reader) -> Iterator[Change]:
    """The largest use for a shorter time."""
    at = _largest(case)
    if at is None or _well(case):
        return
    row = case.values.draws[at]

    def tried() -> Iterator[tuple[str, dict[str, str], dict[str, Any]]]:
        for share in LESS:
            minutes = int(60 * row.hours * share)
            if minutes < 1:
                return
            made = _with(case, "draws", at, hours=minutes / 60)
            text = f"Open {plain(row.tap)} for {minutes} minutes at most, not for"
            text = f"{text} {60 * row.hours:.0f}."
            yield text, made.texts(case, reader), {"draws": made.rows}

    yield from _change(_first(case, tried()), WATER)


# Source and switch ----------------------------------------------------------------------------


def _stored(case: Case, reader: Reader) -> Iterator[Change]:
    """More stored at the source, or more that comes."""
    values = case.values
    if not case.pumped or values.gives is None:
        return
    if case.limited and case.dry and not _well(case):

        def tried() -> Iterator[tuple[str, dict[str, str], dict[str, Any]]]:
            for times in STORED:
                size = round_up(times * values.stored, "volume", reader, 2)
                text = f"Store {reader.show(size, 'volume')} at the source, in a cistern."
                yield text, {"stored": exact(size, "volume", reader)}, {"stored": size}

        yield from _change(_first(case, tried()), WATER)
    elif not case.limited:
        flow, size = enough_source(case, None, reader)
        shown = reader.show(flow, "flow"), reader.show(size, "volume")
        text = f"Find a source that gives {shown[0]}, with {shown[1]} stored."
        texts = {"gives": exact(flow, "flow", reader), "stored": exact(size, "volume", reader)}
        yield Change(text, frozenset({"source-short"}), texts)


def _switched(case: Case) -> Iterator[Change]:
    """A switch in the tank, or one that waits longer."""
    if not case.pumped or not case.tanks:
        return
    for share in AGAIN:
        if case.values.again is None or share < case.values.again:
            text = f"Fit a level switch that starts the pump at {100 * share:g} % of the tank."
            keys = frozenset({"against-closed", "starts"})
            yield Change(text, keys, {"again": f"{100 * share:g} %"})


# Pipe and height ------------------------------------------------------------------------------


def _weakest(case: Case) -> str | None:
    """The outlet with the least share of the pressure it needs; None where none is short."""
    found = []
    for name in case.used:
        one, least = case.run.flows.network.outlets_by_name[name], case.run.least(name)
        if least is not None and least[0] < practice.BORDERLINE * one.content_pa:
            found.append((least[0] / max(one.content_pa, 1.0), name))
    return min(found)[1] if found else None


def _wider(case: Case, reader: Reader) -> Iterator[Change]:
    """The section on the way to the weakest outlet that loses most, made wider."""
    name = _weakest(case)
    at = None if name is None else _narrow(case, name)
    if at is None:
        return
    row = case.values.runs[at]
    pipe = pipe_of(row.pipe)
    sizes = pipes.sizes(pipe.kind)
    place = next(i for i, one in enumerate(sizes) if one.size == pipe.size)
    for wider in sizes[place + 1 : place + 1 + practice.MOST_SIZES_UP]:
        made = _with(case, "runs", at, pipe=f"{wider.kind}/{wider.size}")
        ends = f"{plain(row.numbers['from'])} to {plain(row.to)}"
        yield Change(f"Use {wider.label} from {ends}.", WEAK, made.texts(case, reader))


def _narrow(case: Case, name: str) -> int | None:
    """Row of the section that loses most when an outlet is weakest, by L Q^2 / D^5."""
    least = case.run.least(name)
    assert least is not None
    step = case.run.step(least[2] - 1e-3)
    rates = step.rates_then if abs(step.end - least[2]) < 1e-3 else step.rates
    flows = [0.0] * len(case.values.runs)
    goals = {fold(tank.name) for tank in case.tanks}
    goals |= {fold(PUMP), fold(SOURCE)} if step.state.pumping or case.falls else set()
    for drawn, row in zip(rates.drawn, case.values.taps, strict=True):
        for at in _path(case, fold(row.at), goals) if drawn > 0 else ():
            flows[at] += drawn
    row = next(one for one in case.values.taps if plain(one.name) == name)
    way = _path(case, fold(row.at), goals)

    def loses(at: int) -> float:
        run = case.values.runs[at]
        return float(run.long * max(flows[at], 1e-9) ** 2 / pipe_of(run.pipe).inside_m ** 5)

    return max(way, key=loses) if way else None


def _path(case: Case, point: str, goals: set[str]) -> list[int]:
    """Rows of the fewest sections from a point to open water or the pump."""
    found: dict[str, list[int]] = {point: []}
    todo = [point]
    for here in todo:
        if here in goals:
            return found[here]
        for at, row in enumerate(case.values.runs):
            ends = fold(row.numbers["from"]), fold(row.to)
            if here in ends:
                other = ends[1 - ends.index(here)]
                if other not in found:
                    found[other] = [*found[here], at]
                    todo.append(other)
    return []


def _raised(case: Case, reader: Reader) -> Iterator[Change]:
    """The tank higher, by the head that the weakest outlet is short of."""
    name = _weakest(case)
    if name is None or not case.tanks:
        return
    one, least = case.run.flows.network.outlets_by_name[name], case.run.least(name)
    short = practice.BORDERLINE * one.content_pa * (1 + 1e-6) - (least[0] if least else 0.0)
    if short <= 0:
        return
    at = case.lowest_share
    row = case.values.stores[at]
    for times in RAISED:
        up = round_up(times * short / case.weight, "length", reader, 2)
        texts = _with(case, "stores", at, up=row.up + up).texts(case, reader)
        text = f"Set {plain(row.name)} {reader.show(up, 'length')} higher."
        yield Change(text, WEAK, texts)
