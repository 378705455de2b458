"""The one family of errors for what a reader or caller gives.

Every error says what was given, what is allowed and what to do.  A range is
kept in SI with its quantity, so the page can say it in the reader's units.
"""

import math


class InputError(ValueError):
    """Something given cannot be used.

    ``name`` is the argument or field it concerns (None: no single one).
    """

    def __init__(self, message, *, name=None):
        super().__init__(message)
        self.message = message
        self.name = name


class InputErrors(InputError):
    """Several things given that cannot be used, all said at once. ``errors``: one or more."""

    def __init__(self, errors):
        self.errors = tuple(errors)
        more = len(self.errors) - 1
        rest = f" ({more} more {'fault' if more == 1 else 'faults'}.)" if more else ""
        super().__init__(self.errors[0].message + rest, name=self.errors[0].name)


class RangeError(InputError):
    """A number outside the span its relation holds for.

    ``value``, ``low`` and ``high`` are SI numbers of ``quantity`` (a key of
    ``calc.units.QUANTITIES``); ``remedy`` is a sentence saying what to do.
    """

    def __init__(self, name, value, low, high, quantity, remedy=""):
        self.value, self.low, self.high = value, low, high
        self.quantity, self.remedy = quantity, remedy
        message = f"{name} is {value:g}; allowed: {low:g} to {high:g} (SI, {quantity})."
        super().__init__(f"{message} {remedy}".strip(), name=name)


def require(name, value, low, high, quantity, remedy=""):
    """Return ``value`` if ``low <= value <= high``, else raise ``RangeError``.

    ``quantity`` names the kind of number (a key of ``calc.units.QUANTITIES``)
    and all three numbers are in its SI unit.  NaN is never in range.
    """
    if not math.isfinite(value) or not low <= value <= high:
        raise RangeError(name, value, low, high, quantity, remedy)
    return value
