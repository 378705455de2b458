"""The hot water sheet's picture: heater, tank, valves and tap, and its pressures as bars.

The bars are to scale, and so is the water in the expansion tank once it is hot.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.page.shapes import SMALL, Area, Block, Dot, Drawing, Stroke, Words
from calc.page.text_boxes import text_width
from calc.sheets.hot_water.judge import burns_in, findings
from calc.sheets.parts.scaled import WIDTH, Scale, brief

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.shapes import Shape
    from calc.sheets.hot_water.case import Case
    from calc.units import Reader

LEFT, WIDE, TOP, BOTTOM = 122.0, 64.0, 44.0, 152.0  # units: the heater
COLD, HOT = 142.0, 58.0  # units: y of the cold pipe and of the hot one
TANK, TANK_WIDE, TANK_TOP, TANK_LOW = 40.0, 46.0, 62.0, 116.0  # units: the expansion tank
TAP, TAP_LOW = 296.0, 86.0  # units: where the hot pipe turns down, and how far
MIXES = {"heater": 202.0, "tap": 276.0}  # units: x of the mixing valve
NAMED, FIRST, BAR, ROW = 92.0, 204.0, 12.0, 20.0  # units: bars
CLOSERS = {
    "check": "check valve", "reducer": "reducing valve", "open": "open to the supply",
    "vent": "from an open tank",
}  # fmt: skip
SHORTER = (
    ("about ", ""),
    ("more than 5 minutes", "over 5 min"),
    ("less than a second", "under 1 s"),
)
ROLES = {"stop": "bad", "care": "tight"}


def draw(case: Case, reader: Reader) -> Drawing:
    """The ``Drawing`` of a case."""
    levels = _levels(case, reader)
    bars, end = _bars(case, levels, reader)
    shapes = (
        *_pipes(case, reader),
        *_heater(case, reader),
        *_expansion(case, levels, reader),
        *_relief(case, levels, reader),
        *_tap(case, levels, reader),
        *bars,
    )
    scaled = "The bars are to scale"
    if _filled(case) is not None:
        scaled += ", and the water in the expansion tank when hot"
    return Drawing("hot", "Heater, valves and tap", _alt(case, reader), WIDTH, end + 4, shapes,
                   f"{scaled}.")  # fmt: skip


def _levels(case: Case, reader: Reader) -> dict[str, str]:
    """Key of what is found -> role of the words about it; nothing for notes."""
    found = findings(case, reader)
    return {one.key: ROLES[one.level] for one in found if one.level in ROLES}


def _worst(levels: dict[str, str], *keys: str) -> str:
    """The role of the worst of some findings, "ink" where none of them is found."""
    roles = [levels[key] for key in keys if key in levels]
    return "bad" if "bad" in roles else "tight" if roles else "ink"


def _pipes(case: Case, reader: Reader) -> Iterator[Shape]:
    right = LEFT + WIDE
    yield Stroke(((4.0, COLD), (LEFT, COLD)), "pipe", width=4, at="pipe cold")
    hot = ((right, HOT), (TAP, HOT), (TAP, TAP_LOW))
    yield Stroke(hot, "pipe", width=4, at="pipe hot")
    if case.closed:
        yield Area(((12.0, COLD - 7), (12.0, COLD + 7), (25.0, COLD)), "paper", "ink", 1.5)
        yield Stroke(((26.0, COLD - 8), (26.0, COLD + 8)), "ink", width=2.5, at="closed")
    cold = f"{brief(case.cold, 'temperature', reader)} comes in"
    yield Words(4.0, COLD + 24, CLOSERS[case.values.closed], size=SMALL)
    yield Words(4.0, COLD + 40, cold, bold=True, size=SMALL)


def _heater(case: Case, reader: Reader) -> Iterator[Shape]:
    middle = LEFT + WIDE / 2
    yield Block(LEFT, TOP, WIDE, BOTTOM - TOP, "water", "ink", line=2.5, corner=8, at="heater")
    for y, text in ((96.0, brief(case.stored, "temperature", reader)),
                    (114.0, brief(case.values.heater, "volume", reader))):  # fmt: skip
        yield Words(middle, y, text, "middle", bold=True, size=SMALL, halo="paper")


def _filled(case: Case) -> float | None:
    """Share of the expansion tank that is water when hot; None where there is none to draw."""
    if not case.tank or case.charge is None or case.highest is None:
        return None
    gas = (case.charge + case.air) / (max(case.highest, case.charge) + case.air)
    return 1 - gas


def _expansion(case: Case, levels: dict[str, str], reader: Reader) -> Iterator[Shape]:
    """The expansion tank on the cold pipe, or the room where it is missing."""
    if not case.closed:
        return
    role = _worst(levels, "no-room", "tank-small", "tank-unchecked", "bursts")
    middle, high = TANK + TANK_WIDE / 2, TANK_LOW - TANK_TOP
    title = "tank too small" if "tank-small" in levels else "expansion tank"
    yield Words(middle, TANK_TOP - 22, title, "middle", role if "tank-small" in levels else "ink",
                size=SMALL)  # fmt: skip
    if case.tank == 0.0:
        yield Block(TANK, TANK_TOP, TANK_WIDE, high, "", "edge", "dashed", corner=8)
        yield Words(middle, TANK_TOP - 6, "none", "middle", role, bold=True, size=SMALL)
        return
    yield Stroke(((middle, TANK_LOW), (middle, COLD)), "pipe", width=4, at="pipe tank")
    yield Block(TANK, TANK_TOP, TANK_WIDE, high, "glass")
    share = _filled(case)
    if share:
        yield Block(TANK, TANK_LOW - share * high, TANK_WIDE, share * high, "water",
                    at="tank water")  # fmt: skip
    yield Block(TANK, TANK_TOP, TANK_WIDE, high, "", "ink", line=2.5, corner=3, at="tank")
    said = "size not known" if case.tank is None else brief(case.tank, "volume", reader)
    yield Words(middle, TANK_TOP - 6, said, "middle", role, bold=True, size=SMALL)


def _relief(case: Case, levels: dict[str, str], reader: Reader) -> Iterator[Shape]:
    """The relief valve over the heater, or that there is none."""
    middle = LEFT + WIDE / 2
    role = _worst(
        levels, "bursts", "no-relief", "relief-runs", "relief-near", "heater-relief-unchecked"
    )
    if case.relieved:
        yield Stroke(((middle, TOP), (middle, 30.0), (middle + 56, 30.0)), "pipe", width=2.5,
                     at="pipe relief")  # fmt: skip
        yield Dot(middle, 30.0, 5.0, "ink", hollow=True, at="relief valve")
        said = "relief valve"
        if case.setting is not None:
            said += f" {brief(case.setting, 'pressure', reader)}"
    elif case.vented:
        yield Stroke(((middle, TOP), (middle, 22.0)), "pipe", width=4, at="pipe vent")
        said = "vent pipe"
    else:
        said = "no relief valve"
    yield Words(middle, 16.0, said, "middle", role, bold=role != "ink", size=SMALL)


def _tap(case: Case, levels: dict[str, str], reader: Reader) -> Iterator[Shape]:
    """Mixing valve and tap, how hot it runs and how soon that burns."""
    if case.mixed:
        yield Dot(MIXES[case.values.mix], HOT, 6.0, "ink", hollow=True, at="mixing valve")
    valve = "mixing valve" if case.mixed else "no mixing valve"
    yield Words(WIDTH - 4, HOT - 14, valve, "end", size=SMALL)
    if "too-hot" in levels:
        yield Words(LEFT + WIDE + 10, HOT + 20, "pipe too hot", role="bad", bold=True, size=SMALL)
    role = _worst(levels, "scald", "mix-unchecked")
    hot = "not known" if case.at_tap is None else brief(case.at_tap, "temperature", reader)
    yield Words(WIDTH - 4, TAP_LOW + 20, hot, "end", role, bold=True, size=SMALL, lead="tap")
    if case.at_tap is not None:
        said = f"burns in {burns_in(case.at_tap)}"
        for words, brief_ones in SHORTER:
            said = said.replace(words, brief_ones)
        yield Words(WIDTH - 4, TAP_LOW + 36, said, "end", role, size=SMALL)


def _bars(case: Case, levels: dict[str, str], reader: Reader) -> tuple[tuple[Shape, ...], float]:
    """(bars of the pressures, y of their end)."""
    drips = _worst(levels, "no-room", "tank-small", "bursts")
    rows = [("static", case.static, "ink")]
    if case.highest is not None and case.closed:
        rows.append(("when hot", case.highest, drips))
    if case.setting is not None:
        rows.append(("relief opens", case.setting, "ink"))
    if case.lowest is not None:
        rows.append(("lowest rating", case.lowest, _worst(levels, "over-rating")))
    numbers = [brief(value, "pressure", reader) for _, value, _ in rows]
    room = max(text_width(one, SMALL, bold=True) for one in numbers) + 8
    scale = Scale(0.0, max(value for _, value, _ in rows), NAMED, WIDTH - room)
    found: list[Shape] = []
    for at, ((name, value, role), text) in enumerate(zip(rows, numbers, strict=True)):
        y = FIRST + at * ROW
        fill = "water" if role == "ink" else role
        found += [
            Words(NAMED - 6, y + BAR - 2, name, "end", size=SMALL),
            Block(NAMED, y, scale.long(value), BAR, fill, "bad" if role == "bad" else "", at=name),
            Words(scale.at(value) + 5, y + BAR - 2, text, role=role, bold=role != "ink",
                  size=SMALL),
        ]  # fmt: skip
    return tuple(found), FIRST + len(rows) * ROW


def _alt(case: Case, reader: Reader) -> str:
    show = reader.show
    said = (
        f"A heater of {show(case.values.heater, 'volume')} at {show(case.stored, 'temperature')}. "
        f"Cold water of {show(case.cold, 'temperature')} and {show(case.static, 'pressure')} comes "
        f"in: {CLOSERS[case.values.closed]}."
    )
    if case.closed:
        tank = "no expansion tank"
        if case.tank != 0.0:
            tank = "an expansion tank"
        said += f" There is {tank}"
        if case.highest is not None:
            said += f", and the pressure when hot is {show(case.highest, 'pressure')}"
        said += "."
    if case.setting is not None:
        said += f" The relief valve opens at {show(case.setting, 'pressure')}."
    elif not case.relieved:
        said += " There is no relief valve."
    if case.at_tap is not None:
        said += f" The tap runs at {show(case.at_tap, 'temperature')} at most."
    return said
