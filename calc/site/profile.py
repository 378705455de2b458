"""Points on the way of a pipe section, as its row keeps them: a text of distances and heights."""

from __future__ import annotations

import re

from calc.errors import InputError
from calc.units import parse

_PAIR = re.compile(r"([-+−]?\d+(?:\.\d+)?)\s*([^\W\d_]*|′|')")


def points(text: str, length_m: float) -> tuple[tuple[float, float], ...]:
    """(distance along the section, height), m, of the points between its ends, in order.

    text: pairs parted by ";" or by lines, metres where no unit stands: "120 m 35 m; 300 m 28 m".
    length_m: of the section, m.  () for a text that is no such table: distances that do not
    rise, or more than two numbers in a pair.  Raises nothing.

    >>> points("20 m 5 m; 60 4", 100.0)
    ((20.0, 5.0), (60.0, 4.0))
    """
    found: list[tuple[float, float]] = []
    for line in re.split(r"[;\n]", text):
        pair = _PAIR.findall(line)
        if not line.strip():
            continue
        if len(pair) != 2:
            return ()
        try:
            along, high = (
                parse(f"{number.replace('−', '-')} {unit or 'm'}", "length").value
                for number, unit in pair
            )
        except InputError:
            return ()
        if found and along <= found[-1][0]:
            return ()
        found.append((along, high))
    return tuple(one for one in found if 0.0 < one[0] < length_m)
