"""Values to the units of a drawing, the names beside them, and what an axis says."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Sequence

    from calc.units import Reader, Unit

WIDTH = 328.0  # units, of every picture: its small words are 11 px on a phone
LINE = 16.0  # units from one line of small words to the next
SEEN = 0.01  # of the reader's unit, the least that a picture tells from nothing; our choice
STEPS = (1.0, 2.0, 5.0)  # in each decade, what the steps of an axis may be


@dataclass(frozen=True)
class Scale:
    """Values from ``low`` to ``high`` drawn from ``start`` to ``end``, either way round."""

    low: float
    high: float
    start: float
    end: float

    def at(self, value: float) -> float:
        """Where a value is drawn, also beyond the ends."""
        return self.start + self.long(value - self.low)

    def long(self, value: float) -> float:
        """How far apart two values are drawn that differ by ``value``, with its sign."""
        return value / (self.high - self.low) * (self.end - self.start)

    def shows(self, value: float) -> bool:
        """Whether a value is between the ends."""
        room = 1e-9 * (self.high - self.low)
        return self.low - room <= value <= self.high + room


def brief(value: float, quantity: str, reader: Reader) -> str:
    """An SI ``value``, 0 or more, with its unit, in few letters: three figures, no thousandths.

    >>> from calc.units import Reader
    >>> [brief(v, "length", Reader()).replace("\u00a0", " ") for v in (12.345, 0.0823, 0.0004)]
    ['12.3 m', '0.08 m', '<0.01 m']
    """
    unit = reader.unit(quantity)
    number = unit.from_si(value)
    if 0 < number < SEEN:
        return f"<{reader.show(unit.to_si(SEEN), quantity, 1)}"
    return reader.show(value, quantity, 3 if number >= 10 * SEEN else 1)


def spread(wanted: Sequence[float], gap: float, low: float, high: float) -> list[float]:
    """Places as near as may be to those wanted, in their order, at least ``gap`` apart.

    All from ``low`` to ``high``, which must have room for them; wanted: rising.

    >>> spread([10.0, 11.0, 40.0], 16.0, 0.0, 100.0)
    [2.5, 18.5, 40.0]
    """
    blocks: list[list[float]] = []  # [sum of the middles wanted, number, start]
    most = high - low - gap * (len(wanted) - 1)
    for number, place in enumerate(wanted):
        # without the gaps each wants to be no lower than the one before it
        blocks.append([place - number * gap - low, 1.0])
        while len(blocks) > 1 and blocks[-2][0] / blocks[-2][1] > blocks[-1][0] / blocks[-1][1]:
            total, count = blocks.pop()
            blocks[-1][0] += total
            blocks[-1][1] += count
    free = [total / count for total, count in blocks for _ in range(int(count))]
    return [low + min(max(one, 0.0), most) + n * gap for n, one in enumerate(free)]


def ticks(low: float, high: float, unit: Unit, most: int) -> list[tuple[float, str]]:
    """(SI value, number) of up to ``most`` steps of 1, 2 or 5 from ``low`` to ``high``, SI."""
    first, last = unit.from_si(low), unit.from_si(high)
    power = 10.0 ** math.floor(math.log10((last - first) / most))
    step = next(
        size * power * ten
        for ten in (1.0, 10.0, 100.0)
        for size in STEPS
        if (last - first) / (size * power * ten) <= most - 1
    )
    decimals = max(0, -math.floor(math.log10(step)))
    found = []
    for number in range(math.ceil(first / step - 1e-9), math.floor(last / step + 1e-9) + 1):
        text = f"{number * step:.{decimals}f}".replace("-", "−")
        found.append((unit.to_si(number * step), text))
    return found
