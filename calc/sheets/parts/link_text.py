"""A number as it stands in a link: read back it is the same number, to ten figures."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from calc.units import Reader


def exact(value: float | None, quantity: str, reader: Reader) -> str:
    """An SI value in the reader's unit as typed text, "" for None.

    value: SI; quantity: a key of ``units.QUANTITIES``.  Raises nothing.  Source: our choice.

    >>> from calc.units import Reader
    >>> exact(12.192, "length", Reader("us")), exact(-0.0, "length", Reader())
    ('40 ft', '0 m')
    """
    if value is None:
        return ""
    unit = reader.unit(quantity)
    number = unit.from_si(value) + 0.0  # never "-0"
    return f"{number:.10g} {unit.symbol}"
