"""What a check against the outside is: of what, from where, how near it must come, and how to
work it out with ``calc`` now.

The page docs/checks.md is made of these, and tests/reference/test_checks.py holds calc to each.
"""

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from functools import cached_property, partial
from importlib.metadata import version

# Kinds of check. Published: read in print or in a stored copy while this was written.
PUBLISHED = "published table or example"
LIBRARY = "independent library"
INDEPENDENT = "independent computation"  # written in the tests, another way than in calc
MEMORY = "from memory"  # a published value that was recalled and not read
PRACTICE = "common practice, no source"
KINDS = (PUBLISHED, LIBRARY, INDEPENDENT, MEMORY, PRACTICE)
COUNTS = (PUBLISHED, LIBRARY, INDEPENDENT)  # that count as checks; the others are shown apart
NAMED = (PUBLISHED, LIBRARY)  # whose sources count as sources


@dataclass(frozen=True)
class Near:
    """How near a value must come: ``size`` of the expected value, or in its unit."""

    size: float
    relative: bool

    def allowed(self, expected: float) -> float:
        """In the unit of the check."""
        return self.size * abs(expected) if self.relative else self.size


def part(size: float) -> Near:
    """So much of the expected value."""
    return Near(size, True)


def give(size: float) -> Near:
    """So much in the unit of the check."""
    return Near(size, False)


@dataclass(frozen=True)
class Check:
    """One value of ``calc`` against one from outside.

    module: of calc; source: a document or a library, with its version; place: where in it;
    expected: the value or how to have it, in ``unit``; why: the reason of a tolerance that is not
    the source's own rounding; found: what works it out with calc, in ``unit``.
    """

    subject: str
    module: str
    what: str
    source: str
    expected: float | Callable[[], float]
    unit: str
    near: Near
    kind: str
    found: Callable[[], float]
    place: str = ""
    why: str = ""

    @cached_property
    def wanted(self) -> float:
        """What is expected, in ``unit``."""
        return float(self.expected() if callable(self.expected) else self.expected)

    @cached_property
    def got(self) -> float:
        """What calc gives, in ``unit``."""
        return float(self.found())

    @property
    def apart(self) -> float:
        """How far the two are apart, in ``unit``."""
        return abs(self.got - self.wanted)

    @property
    def holds(self) -> bool:
        """Is it near enough?"""
        return self.apart <= self.near.allowed(self.wanted)


def library(name: str) -> str:
    """A library as a source: its name and the version that is installed."""
    return f"{name} {version(name)}"


def table(
    subject: str,
    module: str,
    what: str | Callable[..., str],
    rows: Iterable[tuple],
    found: Callable[..., float],
    *,
    source: str,
    kind: str,
    near: Near,
    unit: str = "",
    against: Callable[..., float] | None = None,
    place: str = "",
    why: str = "",
) -> tuple[Check, ...]:
    """A check of each row: what it is worked out from, and at the end what is expected.

    what: a sentence with ``{0}`` and so on for the row's cells, or what makes one of them; found:
    takes the cells.
    against: takes the cells and gives what is expected, where the row does not hold it.
    """
    made = []
    for row in rows:
        cells, expected = (row, partial(against, *row)) if against else (row[:-1], row[-1])
        told = what(*cells) if callable(what) else what.format(*cells)
        made.append(
            Check(subject, module, told, source, expected, unit, near, kind,
                  partial(found, *cells), place, why)
        )  # fmt: skip
    return tuple(made)
