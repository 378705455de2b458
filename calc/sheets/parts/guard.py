"""What guards a displacement pump, which would raise the pressure until something bursts."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.page.fields import Choice, Unknown
from calc.page.findings import Finding
from calc.pump.curve import DisplacementPump
from calc.site.facts import BY_PATH

if TYPE_CHECKING:
    from calc.pump.curve import Pump
    from calc.units import Reader

KEY, SWITCH_AT_TOP = "displacement-relief", "switch-at-top"
BOTH = "both"
_FACT = BY_PATH["pump.guard"]
GUARDS = _FACT.options
CENTRIFUGAL = ("small", "middle", "large", "own")  # choices of pump that may be centrifugal
DISPLACEMENT = ("diaphragm", "own")
RELIEVED = (BOTH, "relief")  # guards with a relief valve
FIT = "Fit a pressure switch or bypass, and a relief valve"
_LACKS = {
    "none": (
        "stop",
        "Against a closed valve a displacement pump raises the pressure until something bursts: "
        "fit a pressure switch or bypass, and a relief valve.",
    ),
    "switch": (
        "care",
        "This displacement pump has no relief valve: if its pressure switch or bypass fails, "
        "something bursts.",
    ),
    "relief": (
        "care",
        "This displacement pump has no pressure switch or bypass: it would run on against its "
        "relief valve and overheat.",
    ),
}


def pump_guard(group: str = "") -> Choice:
    """The field that asks for it, shown where the pump may be a displacement pump."""
    return Choice(
        "guard",
        _FACT.label,
        GUARDS,
        BOTH,
        help="A displacement pump must never face a closed valve alone",
        when=("pump", DISPLACEMENT),
        group=group,
        unknown=Unknown("none", "none", "taken as neither, the careful side"),
    )


def relieved(pump: Pump, guard: str, relief: bool) -> bool:
    """Whether a relief valve guards the pipes, should the pump's control fail.

    guard: of a displacement pump, a key of ``GUARDS``; relief: of any other, whether it has one.
    """
    return guard in RELIEVED if isinstance(pump, DisplacementPump) else relief


def guard_level(guard: str) -> str:
    """Level of what a guard (a key of ``GUARDS``) lacks; "" for nothing."""
    return _LACKS[guard][0] if guard in _LACKS else ""


def guard_words(guard: str) -> str:
    """What a guard that lacks something leads to, as a sentence."""
    return _LACKS[guard][1]


def guard_findings(guard: str, top_head_m: float, reader: Reader) -> tuple[Finding, ...]:
    """What is found of a displacement pump. top_head_m: the highest head of its table, m."""
    note = Finding("note", SWITCH_AT_TOP, switch_words(reader.show(top_head_m, "head")))
    level = guard_level(guard)
    return (Finding(level, KEY, guard_words(guard), "harm"), note) if level else (note,)


def switch_words(top: str) -> str:
    """Where the switch is taken to act. top: the highest head of the table, with its unit."""
    return (
        f"The highest head of the pump's table, {top}, is taken as where its pressure switch or "
        "bypass acts."
    )
