"""What would put a supply right: each change made in the rows, solved again and judged anew.

A change counts as a fix only where nothing it is for is left, not even borderline, and nothing
else has become wrong.  Changes are tried in the order of usual cost (our estimate): look after
the filter, turn the set pressure up, a second filter, wider pipe (by the plastic it takes), a
second pump, another pump, a tank up the hill, less open at once.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc.errors import InputError
from calc.sheets.keep_up import fixes_press, fixes_short
from calc.sheets.keep_up.case import Case, solved
from calc.sheets.keep_up.judge import signs
from calc.sheets.keep_up.options import Option, fits
from calc.site.supply import INLET

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from calc.network.findings import Trouble
    from calc.site.supply import Supply
    from calc.units import Reader

    Mark = tuple[str, str]  # a sign's kind and part
    Asked = tuple[set[Mark], tuple[str, ...]]  # what is wrong now, kinds it is for
    Maker = Callable[[Case, Reader], Iterator[Option]]

SHORT = ("short", "no-water")
SUCTION = ("npsh", "npsh-margin", "lift-practice", "vacuum-collapse")
RATED = ("over-rating", "too-hot", "shut-off-over-rating")
# (kinds of sign, makers of changes tried for them), the most pressing first
GROUPS = (
    (SUCTION, fixes_press.SUCTION_MAKERS),
    (("set-too-high",), fixes_press.SETTING),
    (RATED, fixes_press.RATING),
    (SHORT, fixes_short.MAKERS),
    (("outlet-over-limit",), fixes_press.OUTLET),
    (("below-vacuum", "negative-pressure"), (fixes_short.wider, fixes_short.set_higher)),
    (("fast",), (fixes_short.slower,)),
    (("least-flow",), (fixes_press.small_tank,)),
)
MOST_TRIED = 8  # changes of one maker solved at most: a reader waits; our choice


@dataclass(frozen=True)
class Change:
    """A change that was tried, solved.

    kinds: of sign that it is for; fixes: it leaves none of them and makes nothing else wrong.
    """

    option: Option
    case: Case
    kinds: tuple[str, ...]
    fixes: bool

    @property
    def supply(self) -> Supply:
        return self.case.supply

    def pressure(self, name: str) -> float:
        """Running pressure of an outlet with the change, Pa."""
        return self.case.after.outlet(name).pressure_pa

    def text(self, name: str, reader: Reader) -> str:
        """What to do and what it gives at an outlet, as a sentence."""
        if self.kinds is not SHORT:
            return f"{self.option.text}."
        gives = reader.show(max(0.0, self.pressure(name)), "pressure")
        if self.fixes:
            return f"{self.option.text}. That gives {gives} at {name}."
        first = self.option.text[0].lower()
        return (
            f"No single change we tried is enough: to {first}{self.option.text[1:]} gives {gives} "
            f"at {name}."
        )


def tried(case: Case, reader: Reader) -> tuple[Change, ...]:
    """Fixes of everything that is wrong, the most pressing first.

    Where nothing tried for short outlets is enough, the change that helps the main one most comes
    last.  Raises nothing.
    """
    now = {_mark(one) for one in signs(case) if one.level != "note"}
    starved = any(kind in SUCTION[:2] or row == INLET for kind, row in now)
    found: list[Change] = []
    for kinds, makers in GROUPS:
        if _mine(kinds, now) and not (
            kinds is SHORT and starved
        ):  # till then they get less than is shown
            found += _group(case, reader, (now, kinds), makers)
    several = sum(bool(_mine(kinds, now)) for kinds, _ in GROUPS) > 1
    together = _together(case, reader) if several and found else ()
    return tuple(sorted((*together, *found), key=lambda one: not one.fixes))


def _together(case: Case, reader: Reader) -> tuple[Change, ...]:
    """The fixes of several groups made one after the other, where that leaves nothing wrong."""
    texts: list[str] = []
    for _ in GROUPS:
        now = {_mark(one) for one in signs(case) if one.level != "note"}
        if not now:
            break
        change = _first(case, reader, now)
        if change is None:
            return ()
        case = change.case
        texts.append(change.option.text)
    if len(texts) < 2 or any(one.level != "note" for one in signs(case)):
        return ()
    option = Option(f"Do all of this. {'. '.join(texts)}", case.supply)
    return (Change(option, case, (), True),)


def _first(case: Case, reader: Reader, now: set[Mark]) -> Change | None:
    """The first fix of the most pressing group; None where it has none."""
    for kinds, makers in GROUPS:
        if _mine(kinds, now):
            found = _group(case, reader, (now, kinds), makers)
            return found[0] if found and found[0].fixes else None
    return None


def _mine(kinds: tuple[str, ...], now: set[Mark]) -> set[Mark]:
    """Signs that a group is for; water that boils at the pump's inlet is the suction's."""
    mine = {one for one in now if one[0] in kinds and one != ("below-vacuum", INLET)}
    return mine | (now & {("below-vacuum", INLET)} if kinds is SUCTION else set())


def _mark(one: Trouble) -> tuple[str, str]:
    return one.kind, one.row


def _group(case: Case, reader: Reader, asked: Asked, makers: tuple[Maker, ...]) -> list[Change]:
    """The first fix; where that needs no digging, the wider pipe that is enough too."""
    kept: list[Change] = []
    rest: list[Change] = []
    for make in makers:
        if kept and not (make is fixes_short.wider and len(kept) == 1):
            continue
        for change in _changes(make, case, reader, asked):
            (kept if change.fixes else rest).append(change)
            if change.fixes:
                break
    if kept or not rest or case.main is None or asked[1] is not SHORT:
        return kept
    name = case.main.name
    return [max(rest, key=lambda one: one.pressure(name))]


def _changes(make: Maker, case: Case, reader: Reader, asked: Asked) -> Iterator[Change]:
    """Each change of a maker, solved and judged; one that cannot be solved is left out."""
    now, kinds = asked
    options = make(case, reader)
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
        left = {_mark(one) for one in signs(changed) if one.level != "note"}
        fixed = left <= now and not any(kind in kinds for kind, _ in left)
        yield Change(option, changed, kinds, fixed)
