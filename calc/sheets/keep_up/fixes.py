"""What would put a supply right: each change made in the rows, solved again and judged anew.

A change is offered where it leaves nothing wrong, not even borderline; where no one does, several
made one after the other; where those leave something, it is said.  Changes are tried in the order
of usual cost (our estimate): look after the filter, turn the set pressure up, a second filter,
wider pipe (by the plastic it takes), a second pump, another pump, a tank up the hill, less open at
once.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from calc.errors import InputError
from calc.network.static import highest_pressures
from calc.page.findings import Finding
from calc.sheets.keep_up import falls, fixes_fall, fixes_press, fixes_short
from calc.sheets.keep_up.case import Case, solved
from calc.sheets.keep_up.changed import changes_told
from calc.sheets.keep_up.judge import rank_of, signs
from calc.sheets.keep_up.options import Option, fits, pump_side, repair
from calc.sheets.keep_up.pump_signs import settled_by_tank
from calc.sheets.keep_up.valves import FALLS
from calc.sheets.parts import guard
from calc.sheets.parts.fix_search import NONE as NOT_ALL
from calc.sheets.parts.left_over import left_words
from calc.sheets.parts.small_draw import KEY as SMALL_DRAW
from calc.site.supply import INLET
from calc.units import DAY

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from calc.site.supply import Supply
    from calc.units import Reader

    Mark = tuple[str, str]  # a sign's kind and part
    Maker = Callable[[Case, Reader], Iterator[Option]]

SHORT = ("short", "no-water")
SUCTION = ("npsh", "npsh-margin", "lift-practice", "vacuum-collapse")
RATED, FAILED = ("over-rating", "too-hot"), "shut-off-over-rating"
# (kinds of sign, makers of changes tried for them), the most pressing first
GROUPS = (
    (SUCTION, fixes_press.SUCTION_MAKERS),
    (("set-too-high",), fixes_press.SETTING),
    ((guard.KEY,), fixes_press.GUARD),
    # a tank on the way costs less than the pipe laid anew
    (RATED, (*fixes_press.RATING[:2], fixes_fall.put_tanks, *fixes_press.RATING[2:])),
    ((FAILED,), (fixes_fall.tank_instead, *fixes_press.FAILING)),
    (SHORT, (*fixes_short.MAKERS[:2], fixes_fall.valve_instead, *fixes_short.MAKERS[2:])),
    (("outlet-over-limit", "over"), (*fixes_press.OUTLET, fixes_fall.put_tanks)),
    (("below-vacuum", "negative-pressure"), (*fixes_short.CREST, *fixes_fall.SUCKING)),
    ((falls.EMPTY,), fixes_fall.SUCKING),
    ((falls.GIVES,), fixes_fall.TAKING),
    (("past-curve",), fixes_short.PAST_CURVE),
    (("fast",), (fixes_short.slower,)),
    ((SMALL_DRAW,), (fixes_press.small_tank,)),
    ((FALLS,), fixes_short.VALVE),
)
MOST_TRIED = 8  # changes of one maker solved at most: a reader waits; our choice
MOST_TOGETHER = 4  # changes made one after the other; our choice
SAME = 1.0  # Pa, by which pressures may differ and still be the same; our choice
HELPS = 1.01  # of the pressure before, from which a change that is not enough is worth naming
NONE = "No change we tried is enough"


@dataclass(frozen=True)
class Change:
    """A change that was tried, solved.

    kinds: of sign that it is for, () for several; fixes: it leaves none of them and makes nothing
    else wrong; left: sentences about what it leaves, "" for nothing.
    """

    option: Option
    case: Case
    kinds: tuple[str, ...]
    fixes: bool
    left: str = ""

    @property
    def supply(self) -> Supply:
        return self.case.supply

    def pressure(self, name: str) -> float:
        """Running pressure of an outlet with the change, Pa."""
        return self.case.after.outlet(name).pressure_pa

    def text(self, name: str, reader: Reader) -> str:
        """What to do and what it gives at an outlet, as a sentence."""
        begins = "" if self.fixes else f"{NONE}. This helps most:"
        gives = ""
        if self.kinds is SHORT or not self.fixes:
            pressure = reader.show(max(0.0, self.pressure(name)), "pressure")
            gives = f"That gives {pressure} at {name}."
        left = self.left if self.fixes else ""
        return " ".join(part for part in (begins, f"{self.option.text}.", gives, left) if part)


def tried(case: Case, reader: Reader) -> tuple[Change, ...]:
    """Fixes of everything that is wrong, the most pressing first; ``NONE`` of them is said by
    ``none_words``.

    Where nothing tried for short outlets alone is enough, the change that helps the main one most
    stands alone, if any does.  Raises nothing.
    """
    now = _wrong(case)
    starved = any(kind in SUCTION[:2] or row == INLET for kind, row in now)
    found: list[Change] = []
    for kinds, makers in GROUPS:
        if _mine(kinds, now) and not (
            kinds is SHORT and starved
        ):  # till then they get less than is shown
            found += _group(case, reader, now, kinds, makers)
    whole = tuple(_told(one) for one in found if one.fixes and not _wrong(one.case))
    if whole:
        return whole
    found = [one for one in found if one.fixes or _helps(one, case)]
    return _together(case, reader, found) or tuple(one for one in found if not one.fixes)


def none_words(case: Case, changes: tuple[Change, ...], reader: Reader) -> str:
    """The sentence where no change puts right what is known to be wrong; "" where one does."""
    if not _wrong(case) or any(one.fixes or one.kinds is SHORT for one in changes):
        return ""
    tap = case.main
    if case.gives and _kinds(_wrong(case)) == {falls.GIVES}:
        day = reader.show(case.gives * DAY, "volume")
        return f"{NONE}. The source gives {day} a day: let it fill a tank day and night."
    if tap is not None and case.supply.pumping is None and case.cause_known == "tank":
        static = highest_pressures(case.after.network)[tap.node]
        lacks = reader.show((tap.sure_pa - static) / case.weight, "length")
        return (
            f"{NONE}. Height is the bottleneck: {tap.name} needs water at least {lacks} higher, or "
            "a pump."
        )
    if tap is None or case.cause_known != "lift":
        return f"{NONE}."
    source = pump_side(case.supply)
    high = case.after.network.heights[tap.node] + source.lift_m
    needed, has = reader.apart(
        high + tap.sure_pa / case.weight, source.pump.head_and_slope(0.0)[0], "head"
    )
    return (
        f"{NONE}. Height is the bottleneck: {tap.name} needs a pump with more than {needed} of "
        f"head; this one has {has}."
    )


# Judging a change ---------------------------------------------------------------------------------


def _found(case: Case) -> list[Finding]:
    """What is wrong, only just right or not checked, without words."""
    return [
        Finding(one.level, one.kind, "", rank_of(case, one), one.row)
        for one in signs(case)
        if one.level != "note"
    ]


def _wrong(case: Case) -> set[Mark]:
    """What is known to be wrong or only just right, or can be settled."""
    settled = settled_by_tank(case)
    return {
        (one.key, one.at)
        for one in _found(case)
        if one.rank != "unchecked" or one.key == "too-hot" or (one.key == SMALL_DRAW and settled)
    }


def _new(left: set[Mark], now: set[Mark]) -> set[Mark]:
    """What a change makes wrong: not what another fault only hid."""
    hidden = {(FAILED, at) for kind, at in now if kind == "over-rating"}
    new = left - now - hidden
    if "set-too-high" in _kinds(now):  # the pump never stopped, so that no draw was too small
        new = {one for one in new if one[0] != SMALL_DRAW}
    return new


def _unknown(case: Case) -> set[str]:
    return {one.key for one in _found(case)} - _kinds(_wrong(case))


def _known(case: Case) -> set[Mark]:
    """What is known to be wrong or only just right."""
    return {(one.key, one.at) for one in _found(case) if one.rank != "unchecked"}


def _kinds(marks: set[Mark]) -> set[str]:
    return {kind for kind, _ in marks}


def _told(change: Change) -> Change:
    """The change with what it leaves."""
    return replace(change, left=left_words(_found(change.case)))


def _helps(change: Change, case: Case) -> bool:
    """Whether a change that is not enough gives the main outlet more than it had."""
    name = case.main.name if case.main else ""
    had = max(case.after.outlet(name).pressure_pa, 0.0) if name else 0.0
    return bool(name) and change.pressure(name) > max(HELPS * had, 1e3)


def _mine(kinds: tuple[str, ...], now: set[Mark]) -> set[Mark]:
    """Signs that a group is for; water that boils at the pump's inlet is the suction's."""
    mine = {one for one in now if one[0] in kinds and one != ("below-vacuum", INLET)}
    return mine | (now & {("below-vacuum", INLET)} if kinds is SUCTION else set())


# Several together ---------------------------------------------------------------------------------


def _together(case: Case, reader: Reader, found: list[Change]) -> tuple[Change, ...]:
    """Several changes made one after the other, with what they leave; () where that is of no use.

    found: what was tried of the case as it is, to begin from: a fix of one of several faults, or
    else what helps most.
    """
    partial: Case | None = None
    for first in sorted(found, key=lambda one: not one.fixes):
        last = _steps(case, first, reader)
        if not _wrong(last):
            return (_several(case, last, "Do all of this.", reader),)
        if partial is None and first.fixes and len(_known(last)) < len(_known(case)):
            partial = last
    if partial is None:
        return ()
    return (_several(case, partial, f"{NOT_ALL} Do this first.", reader),)


def _steps(origin: Case, first: Change, reader: Reader) -> Case:
    """The case after a first change and those that then follow."""
    case = first.case
    for _ in range(MOST_TOGETHER - 1):
        now = _wrong(case)
        after = _next(origin, case, reader, now) if now else None
        if after is None:
            break
        case = after.case
    return case


def _several(case: Case, last: Case, begins: str, reader: Reader) -> Change:
    texts = changes_told(case.supply, last.supply, reader)
    begins = "" if len(texts) == 1 and not _wrong(last) else f"{begins} "
    option = Option(f"{begins}{'. '.join(texts)}", last.supply)
    return Change(option, last, (), True, left_words(_found(last)))


def _next(origin: Case, case: Case, reader: Reader, now: set[Mark]) -> Change | None:
    """The first fix of the most pressing group that has one, still a repair of the ``origin``."""
    for kinds, makers in GROUPS:
        if _mine(kinds, now):
            for one in _group(case, reader, now, kinds, makers):
                if one.fixes and repair(origin.supply, one.supply):
                    return one
    return None


# One group ----------------------------------------------------------------------------------------


def _group(
    case: Case, reader: Reader, now: set[Mark], kinds: tuple[str, ...], makers: tuple[Maker, ...]
) -> list[Change]:
    """The first fix; where that needs no digging, the wider pipe that is enough too."""
    kept: list[Change] = []
    rest: list[Change] = []
    for make in makers:
        if kept and not (make is fixes_short.wider and len(kept) == 1):
            continue
        for change in _changes(make, case, reader, now, kinds):
            (kept if change.fixes else rest).append(change)
            if change.fixes:
                break
    if kept or not rest or case.main is None or kinds is not SHORT:
        return kept
    name = case.main.name
    most = max(one.pressure(name) for one in rest)
    # several may hold the same set pressure: the first of those is the least to do
    return [next(one for one in rest if one.pressure(name) >= most - SAME)]


def _changes(
    make: Maker, case: Case, reader: Reader, now: set[Mark], kinds: tuple[str, ...]
) -> Iterator[Change]:
    """Each change of a maker, solved and judged; one that cannot be solved is left out."""
    unknown, options = _unknown(case), make(case, reader)
    for _ in range(MOST_TRIED):
        try:
            option = next(options, None)
            if option is None:
                return
            if not fits(option.supply):
                continue
            changed = option.case or solved(option.supply, case.ask, case)
        except InputError:
            continue
        left = _wrong(changed)
        mine = _mine(kinds, left)
        fixed = not mine and not _new(left, now) and _unknown(changed) <= unknown
        yield Change(option, changed, kinds, fixed)
