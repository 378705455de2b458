"""The one family of errors for what a reader or caller gives.

Every error says what was given, what is allowed and what to do.  A range is
kept in SI with its quantity, so the page can say it in the reader's units.
"""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterable


class InputError(ValueError):
    """Something given cannot be used.

    ``name`` is the argument or field it concerns (None: no single one).
    """

    def __init__(self, message: str, *, name: str | None = None) -> None:
        super().__init__(message)
        self.message = message
        self.name = name


class UnsolvedError(InputError):
    """No answer was found where one was looked for.

    A reader meets ``message``; ``detail`` is for whoever mends the code, and is in the traceback.
    """

    def __init__(self, detail: str) -> None:
        super().__init__(
            "These numbers could not be worked out together. Change the last one and try again."
        )
        self.add_note(detail)


class InputErrors(InputError):
    """Several things given that cannot be used, all said at once. ``errors``: one or more."""

    def __init__(self, errors: Iterable[InputError]) -> None:
        self.errors = tuple(errors)
        more = len(self.errors) - 1
        rest = f" ({more} more {'fault' if more == 1 else 'faults'}.)" if more else ""
        super().__init__(self.errors[0].message + rest, name=self.errors[0].name)


class RangeError(InputError):
    """A number outside the span its relation holds for.

    ``value``, ``low`` and ``high`` are SI numbers of ``quantity`` (a key of
    ``calc.units.QUANTITIES``); ``remedy`` is a sentence saying what to do.
    """

    def __init__(
        self, name: str, value: float, low: float, high: float, quantity: str, remedy: str = ""
    ) -> None:
        self.value, self.low, self.high = value, low, high
        self.quantity, self.remedy = quantity, remedy
        message = f"{name} is {value:g}; allowed: {low:g} to {high:g}."
        super().__init__(f"{message} {remedy}".strip(), name=name)
        self.add_note(f"Numbers in the SI unit of {quantity}.")


def require(
    name: str, value: float, low: float, high: float, quantity: str, remedy: str = ""
) -> float:
    """Return ``value`` if ``low <= value <= high``, else raise ``RangeError``.

    ``quantity`` names the kind of number (a key of ``calc.units.QUANTITIES``)
    and all three numbers are in its SI unit.  NaN is never in range.
    """
    if not math.isfinite(value) or not low <= value <= high:
        raise RangeError(name, value, low, high, quantity, remedy)
    return value
