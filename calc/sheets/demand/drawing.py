"""The demand sheet's pictures: what may run at once, and the day's water by hour and by use.

Lengths and heights are to scale.  The sheet does not ask when the water is used: the hours are
those that are usual for people, animals and drip lines.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import demand, storage
from calc.page.shapes import SMALL, Block, Drawing, Stroke, Words
from calc.page.text_boxes import text_width
from calc.sheets.parts.scaled import LINE, WIDTH, Scale, brief
from calc.units import DAY

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.shapes import Shape
    from calc.sheets.demand.case import Case
    from calc.units import Reader

ROW, BAR = LINE + 4, 12.0  # units from one bar to the next, and a bar's height
NAMED, BESIDE = 98.0, 5.0  # units kept for the names of bars, and from a bar to its number
HIGH, HOUR = 96.0, WIDTH / storage.HOURS  # units, the tallest hour and an hour's width
GAP = 2.0  # units between two hours
CLOCK = ((0, "midnight", "start"), (6, "6 am", "middle"), (12, "noon", "middle"),
         (18, "6 pm", "middle"), (24, "midnight", "end"))  # fmt: skip
NAMES = {"shower": ("shower", "showers"), "sink": ("sink", "sinks"), "hose": ("hose", "hoses")}
# use: (name, role, edge, the hours in which it is usual: a key of ``storage.PATTERNS``)
USES = (
    ("animals", "soft", "", "day"),
    ("people", "water", "", "home"),
    ("garden beds", "earth", "edge", "dawn"),
)


def draw(case: Case, reader: Reader) -> tuple[Drawing, ...]:
    """The ``Drawing``s of a case: of the flow at once, and of the day where water is used."""
    found = (_at_once(case, reader), _day(case, reader))
    return tuple(one for one in found if one is not None)


# At once ------------------------------------------------------------------------------------


def _at_once(case: Case, reader: Reader) -> Drawing | None:
    """Each kind of outlet named as open, the list as a whole, and what chance asks for."""
    rows = [(words, flow, False) for words, flow in _listed(case)]
    if len(rows) > 1:
        rows.append(("your list", case.listed, False))
    rows.append(("by chance", case.likely, False))
    if case.plan <= 0:
        return None
    decides = -2 if case.list_decides and len(rows) > 1 else -1
    words, flow, _ = rows[decides]
    rows[decides] = (words, flow, True)
    scale = _lengths([flow for _, flow, _ in rows], "flow", reader)
    shapes: list[Shape] = []
    for number, row in enumerate(rows):
        shapes += _bar(number, row, scale, reader)
    height = len(rows) * ROW + 6
    return Drawing(
        "flow", "Water at once", _flow_alt(case, reader), WIDTH, height, tuple(shapes),
        "Lengths are to scale. Plan for the bold one.",
    )  # fmt: skip


def _lengths(values: list[float], quantity: str, reader: Reader) -> Scale:
    """The ``Scale`` of bars that leaves room for the number beside the longest."""
    numbers = (text_width(brief(one, quantity, reader), SMALL, bold=True) for one in values)
    return Scale(0.0, max(values), NAMED, WIDTH - max(numbers) - BESIDE)


def _listed(case: Case) -> Iterator[tuple[str, float]]:
    """(words, m3/s) of what is named as open."""
    for key, number in case.named.items():
        flow = demand.together(((number, case.taps[key][1]),))
        if flow > 0:
            yield f"{number} {NAMES[key][number > 1]}", flow
    if case.drip > 0:
        yield "drip lines", case.drip


def _bar(
    number: int, row: tuple[str, float, bool], scale: Scale, reader: Reader
) -> Iterator[Shape]:
    words, flow, bold = row
    y = number * ROW + 4
    low = y + BAR - 2
    yield Words(NAMED - 6, low, words, "end", bold=bold, size=SMALL)
    yield Block(NAMED, y, scale.long(flow), BAR, "water", at=words)
    end = scale.at(flow) + BESIDE
    yield Words(end, low, brief(flow, "flow", reader), bold=bold, size=SMALL)


def _flow_alt(case: Case, reader: Reader) -> str:
    parts = [f"{words} {reader.show(flow, 'flow')}" for words, flow in _listed(case)]
    listed = f"{', '.join(parts)}: your list comes to {reader.show(case.listed, 'flow')}. "
    by = "your list" if case.list_decides else "chance"
    return (
        f"Bars of flow: {listed if parts else ''}Chance asks for "
        f"{reader.show(case.likely, 'flow')}. Plan for {reader.show(case.plan, 'flow')}, by {by}."
    )


# The day ------------------------------------------------------------------------------------


def _day(case: Case, reader: Reader) -> Drawing | None:
    """The hours of a day, each split by use, over the day's sums of those uses."""
    uses = _uses(case)
    if case.daily <= 0:
        return None
    hours = by_hour(case)
    scale = Scale(0.0, max(hours), HIGH + LINE, LINE)
    shapes: list[Shape] = []
    for hour in range(storage.HOURS):
        shapes += _hour(hour, uses, scale)
    shapes += _clock(scale, hours, reader)
    lengths = _lengths([amount for *_, amount in uses], "daily", reader)
    top = scale.start + 2 * LINE
    for number, use in enumerate(uses):
        shapes += _use(top + number * ROW, use, lengths, reader)
    height = top + len(uses) * ROW + 2
    return Drawing(
        "day", "The day’s water", _day_alt(case, hours, reader), WIDTH, height, tuple(shapes),
        "To scale. The hours are usual ones, not yours.",
    )  # fmt: skip


Use = tuple[str, str, str, str, float]  # one of ``USES`` and its m3/s over the day


def _uses(case: Case) -> tuple[Use, ...]:
    """What is used at all, in the order in which it is piled up."""
    beds, people = case.parts["Garden beds"], case.parts["People"]
    animals = sum(case.parts[one.name] for one in demand.ANIMALS)
    return tuple(
        (*use, amount)
        for use, amount in zip(USES, (animals, people, beds), strict=True)
        if amount > 0
    )


def by_hour(case: Case) -> list[float]:
    """Water of each hour of the day by the usual hours, m3."""
    uses = _uses(case)
    return [
        sum(amount * DAY * storage.PATTERNS[pattern][hour] for *_, pattern, amount in uses)
        for hour in range(storage.HOURS)
    ]


def _hour(hour: int, uses: tuple[Use, ...], scale: Scale) -> Iterator[Shape]:
    low = scale.start
    for name, role, edge, pattern, amount in uses:
        long = -scale.long(amount * DAY * storage.PATTERNS[pattern][hour])
        if long > 0:
            low -= long
            x, wide = hour * HOUR + GAP / 2, HOUR - GAP
            yield Block(x, low, wide, long, role, edge, at=f"{name} {hour}")


def _clock(scale: Scale, hours: list[float], reader: Reader) -> Iterator[Shape]:
    low = scale.start
    yield Stroke(((0.0, low), (WIDTH, low)), "edge", width=1.0)
    for hour, text, anchor in CLOCK:
        x = hour * HOUR
        yield Stroke(((x, low), (x, low + 4)), "edge", width=1.0)
        yield Words(x, low + LINE, text, anchor, "soft", size=SMALL)
    most = max(hours)
    text = f"{brief(most, 'volume', reader)} in an hour"
    half = text_width(text, SMALL) / 2
    x = (hours.index(most) + 0.5) * HOUR
    middle = min(max(x, half), WIDTH - half)
    yield Words(middle, scale.end - 4, text, "middle", size=SMALL)


def _use(y: float, use: Use, scale: Scale, reader: Reader) -> Iterator[Shape]:
    name, role, edge, _, amount = use
    low = y + BAR - 2
    yield Words(NAMED - 6, low, name, "end", size=SMALL)
    yield Block(NAMED, y, scale.long(amount), BAR, role, edge, at=name)
    yield Words(scale.at(amount) + BESIDE, low, brief(amount, "daily", reader), size=SMALL)


def _day_alt(case: Case, hours: list[float], reader: Reader) -> str:
    parts = ", ".join(f"{name} {reader.show(amount, 'daily')}" for name, *_, amount in _uses(case))
    most = max(hours)
    return (
        f"Bars of water for each hour of a usual day, the tallest {reader.show(most, 'volume')} "
        f"in the hour from {hours.index(most)}:00. In all {reader.show(case.daily, 'daily')}: "
        f"{parts}."
    )
