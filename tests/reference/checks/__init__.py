"""Every check against the outside, by subject: the tables behind docs/checks.md."""

from tests.reference.checks import (
    friction,
    garden,
    hot,
    pipes,
    power,
    pumps,
    storage,
    suction,
    sun,
    supplies,
    surges,
    units,
    uses,
    water,
    wells,
)  # fmt: skip
from tests.reference.checks.check import COUNTS, KINDS, NAMED, Check

__all__ = ["CHECKS", "COUNTS", "KINDS", "SUBJECTS", "Check", "counted", "sources"]

SUBJECTS = (water, units, pipes, friction, supplies, pumps, suction, surges, storage, wells, uses,
            hot, sun, power, garden)  # fmt: skip
CHECKS: tuple[Check, ...] = tuple(check for one in SUBJECTS for check in one.CHECKS)


def counted() -> list[Check]:
    """Those that count: read, of a library, or worked out another way."""
    return [check for check in CHECKS if check.kind in COUNTS]


def sources() -> list[str]:
    """Documents and libraries that checks are from, each once, by name."""
    return sorted({check.source for check in CHECKS if check.kind in NAMED}, key=str.lower)
