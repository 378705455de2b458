"""A cable judged: what is found, the sentence told, the advice that belongs to these numbers."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.page.answer import Link
from calc.page.findings import Finding, unchecked
from calc.sheets.cable.case import METRIC_FIRST
from calc.units import number_text

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.sheets.cable.case import Case
    from calc.units import Reader

MET = 1 + 1e-9  # a current typed in another unit is still met
HALF = 0.5  # of the voltage lost at start: hardly any motor starts with less; our choice
SEVERAL = {1: "", 2: "two cables of ", 3: "three cables of ", 4: "four cables of "}
# V from which a bare wire can kill in dry surroundings: IEC 60364-4-41, from memory.  In wet ones
# less does.
TOUCH = {"dc": 120.0, "single": 50.0, "three": 50.0}


def size_words(case: Case, reader: Reader) -> str:
    """The size that the answer is about: "25 mm² (3 AWG)", the reader's first."""
    if case.own is not None or case.best is None:
        return SEVERAL[case.cables] + case.found.conductor.name
    names = [one.conductor.name for one in map(case.smallest, METRIC_FIRST[reader.system]) if one]
    other = f" ({names[1]})" if len(names) > 1 else ""
    return f"{SEVERAL[case.cables]}{names[0]}{other}"


def share(value: float) -> str:
    """A share in percent, as it is said: "2.2 %"."""
    return f"{number_text(100 * value, 2)}\u00a0%"


def findings(case: Case, reader: Reader) -> tuple[Finding, ...]:
    """All that is wrong or not checked."""
    return (
        *_capacity(case, reader),
        *_none(case, reader),
        *_drops(case, reader),
        *_unknown(case, reader),
    )


def _capacity(case: Case, reader: Reader) -> Iterator[Finding]:
    """Against the current that the cable in mind may carry."""
    if case.carries is None:
        return
    current, fuse = case.each.current_a, case.fuse.rating
    if current > case.carries * MET:
        takes, may = reader.apart(current, case.carries, "current")
        said = f"The cable would overheat: it carries {takes}, and may carry {may}."
        yield Finding("stop", "over-capacity", said, "harm")
    elif fuse is not None and fuse > case.cables * case.carries * MET:
        rated, may = reader.apart(fuse, case.cables * case.carries, "current")
        said = f"The usual fuse of {rated} does not protect a cable that may carry {may}."
        yield Finding("care", "fuse", said, "harm")


def _none(case: Case, reader: Reader) -> Iterator[Finding]:
    if case.own is not None or case.best is not None:
        return
    drop, when = case.found, "running"
    lost, most = drop.share, case.drop
    if lost <= most * MET:
        lost, most, when = drop.start_share, case.start_drop, "at start"
    said = (
        f"No size listed is enough: even {size_words(case, reader)} loses {share(lost)} {when}, "
        f"and you accept {share(most)}."
    )
    yield Finding("stop", "no-size", said, "cannot")


def _drops(case: Case, reader: Reader) -> Iterator[Finding]:
    """Of the cable in mind, running and starting."""
    if case.own is None:
        return
    drop, size = case.found, size_words(case, reader)
    if drop.start_share > HALF * MET:
        left, whole = reader.apart(drop.start_left, case.line.voltage_v, "voltage")
        said = f"The pump may not start: {size} then leaves it {left} of {whole}."
        yield Finding("stop", "start-half", said, "cannot")
    if drop.share > case.drop * MET:
        lost = f"{reader.show(drop.drop, 'voltage')} ({share(drop.share)}) running"
        said = f"{_begun(size)} loses {lost}; you accept {share(case.drop)}. It is too thin."
        yield Finding("stop", "too-thin", said)
    if drop.start_share > case.start_drop * MET:
        lost = f"{reader.show(drop.start_drop, 'voltage')} ({share(drop.start_share)}) at start"
        said = f"{_begun(size)} loses {lost}; you accept {share(case.start_drop)}. It is too thin."
        yield Finding("stop", "start-drop", said)


def _begun(size: str) -> str:
    """A size that begins a sentence."""
    return size[0].upper() + size[1:]


def _unknown(case: Case, reader: Reader) -> Iterator[Finding]:
    """Whether it may carry its current: never decided here."""
    if case.carries is not None or (case.own is None and case.best is None):
        return
    size, takes = size_words(case, reader), reader.show(case.each.current_a, "current")
    ask = f"Not checked: whether it may carry {takes} where it lies; the local code says that."
    said = f"{_begun(size)} keeps to the drop. {ask}"
    if not case.keeps(case.found):
        said = ask.replace(" it ", f" {size} ", 1)
    yield unchecked("capacity", said)


def told(case: Case, reader: Reader) -> str:
    """The voltage left at the pump."""
    drop, size = case.found, size_words(case, reader)
    left, start = (reader.show(one, "voltage") for one in (drop.left, drop.start_left))
    return f"{_begun(size)} leaves the pump {left} running and {start} at start."


def cautions(case: Case, reader: Reader) -> tuple[str, ...]:
    """Advice for these numbers, which the local code and an electrician go before."""
    rating = case.fuse.rating
    current = reader.show(case.line.current_a, "current")
    rated = "more than 400 A" if rating is None else reader.show(rating, "current")
    kind = f"made for DC at {reader.show(case.line.voltage_v, 'voltage')} or more"
    made = kind if case.fuse.dc else "made for motors"
    found = [
        f"Usual for {current} is a fuse or breaker of {rated}, {made} (advice; common practice). "
        "The local code and a licensed electrician decide; it must protect the cable too.",
    ]
    if case.line.voltage_v > TOUCH[case.line.circuit]:
        found.append("This voltage can kill at a touch. Lock off and test before any work.")
    if case.cables > 1:
        found.append(
            "Cables side by side must be of one size, length and make. Many codes allow them for "
            "large sizes only."
        )
    if case.line.metal == "aluminium":
        found.append("Aluminium needs terminals made for it, and must not touch copper.")
    return tuple(found)


def links() -> tuple[Link, ...]:
    """On to the pump whose power this is."""
    return (Link("The pump and the power it draws", "pump_match", {}),)
