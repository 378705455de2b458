"""A cable judged: what is found, the sentence told, the advice that belongs to these numbers."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import practice
from calc.page.answer import Link
from calc.page.findings import Finding, unchecked
from calc.sheets.cable.case import METRIC_FIRST
from calc.units import MET, numbers_apart, plain_number

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.sheets.cable.case import Case
    from calc.units import Reader

HALF = 0.5  # of the voltage lost at start: hardly any motor starts with less; our choice
EQUAL = {1: "one", 2: "two", 3: "three", 4: "four"}
# V from which a bare wire can kill in dry surroundings: IEC 60364-4-41, from memory.  In wet ones
# less does.
TOUCH = {"dc": 120.0, "single": 50.0, "three": 50.0}


def _several(case: Case) -> str:
    return "" if case.cables == 1 else f"{EQUAL[case.cables]} cables of "


def size_words(case: Case, reader: Reader) -> str:
    """The size that the answer is about: "25 mm² (3 AWG)", the reader's first."""
    if case.own is not None or case.best is None:
        return _several(case) + case.found.conductor.name
    names = [one.conductor.name for one in map(case.smallest, METRIC_FIRST[reader.system]) if one]
    other = f" ({names[1]})" if len(names) > 1 else ""
    return f"{_several(case)}{names[0]}{other}"


def share(value: float) -> str:
    """A share in percent, as it is said: "2.4 %"; more than all of it is all of it."""
    return f"{plain_number(100 * min(value, 1.0), 2)}\u00a0%"


def _against(size: str, volts: float, part: float, most: float, when: str, reader: Reader) -> str:
    """What a size loses, and what is accepted: "2.88 V (6 %) running, and you accept 3 %"."""
    shown = share(part), share(most)
    if shown[0] == shown[1]:
        apart = numbers_apart(100 * part, 100 * most, 2)
        shown = f"{apart[0]}\u00a0%", f"{apart[1]}\u00a0%"
    lost = f"{reader.show(volts, 'voltage')} ({shown[0]})"
    lost = "all of the voltage" if part >= 1 else lost  # no such current flows
    return f"{size} {lost} {when}, and you accept {shown[1]}"


def _begun(size: str) -> str:
    """A size that begins a sentence."""
    return size[0].upper() + size[1:]


def _does(case: Case, verb: str) -> str:
    """The verb of one cable, or of several."""
    return f"{verb}s" if case.cables == 1 else verb


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
    current, fuse = case.each.current_a, case.fuse.rating or case.fuse.least
    together = case.cables * case.carries
    if current > case.carries * MET:
        takes, may = reader.apart(current, case.carries, "current")
        said = (
            f"The cable would overheat: it carries {takes} and may carry {may}. Use a larger one."
        )
        yield Finding("stop", "over-capacity", said, "harm")
    elif fuse > together * MET:
        rated, may = reader.apart(fuse, together, "current")
        said = f"The usual fuse of {rated} does not protect a cable that may carry {may}."
        yield Finding("care", "fuse", said, "harm")


def _none(case: Case, reader: Reader) -> Iterator[Finding]:
    """No size is enough: the largest, running or else at start."""
    if case.own is not None or case.best is not None:
        return
    drop = case.found
    size = f"{size_words(case, reader)} {_does(case, 'lose')}"
    if drop.share > case.drop * MET:
        said = _against(size, drop.drop, drop.share, case.drop, "running", reader)
    else:
        said = _against(
            size, drop.start_drop, drop.start_share, case.start_drop, "at start", reader
        )
    yield Finding("stop", "no-size", f"No size listed is enough: even {said}.", "cannot")


def _drops(case: Case, reader: Reader) -> Iterator[Finding]:
    """Of the cable in mind, running and starting."""
    if case.own is None:
        return
    drop, size = case.found, size_words(case, reader)
    loses = f"{size} {_does(case, 'lose')}"
    if drop.share > case.drop * MET:
        said = _against(loses, drop.drop, drop.share, case.drop, "running", reader)
        yield Finding("stop", "too-thin", f"Too thin: {said}.")
    if drop.start_share > HALF * MET:
        left, whole = reader.apart(drop.start_left, case.line.voltage_v, "voltage")
        said = f"The pump may not start: {size} then {_does(case, 'leave')} it {left} of {whole}."
        yield Finding("stop", "start-half", said, "cannot")
    elif drop.start_share > case.start_drop * MET:
        said = _against(
            loses, drop.start_drop, drop.start_share, case.start_drop, "at start", reader
        )
        yield Finding("stop", "start-drop", f"Too thin: {said}.")


def _unknown(case: Case, reader: Reader) -> Iterator[Finding]:
    """Whether it may carry its current: never decided here."""
    if case.carries is not None:
        return
    size, takes = size_words(case, reader), reader.show(case.each.current_a, "current")
    one = "it" if case.cables == 1 else "each"
    if case.keeps(case.found):
        said = f"{_begun(size)} {_does(case, 'keep')} to the drop. Not checked: whether {one} "
    else:
        said = f"Not checked: whether {size if case.cables == 1 else one} "
    yield unchecked("capacity", f"{said}may carry {takes} where it lies; the local code says that.")


def told(case: Case, reader: Reader) -> str:
    """The voltage left at the pump."""
    drop, size = case.found, _begun(size_words(case, reader))
    left, start = (reader.show(one, "voltage") for one in (drop.left, drop.start_left))
    return f"{size} {_does(case, 'leave')} the pump {left} running and {start} at start."


def cautions(case: Case, reader: Reader) -> tuple[str, ...]:
    """Advice for these numbers, which the local code and an electrician go before."""
    rating = case.fuse.rating
    current = reader.show(case.line.current_a, "current")
    rated = f"{rating:g}\u00a0A" if rating else f"over {practice.FUSE_RATINGS[-1]}\u00a0A"
    made = "made for motors"
    if case.fuse.dc:
        made = f"made for DC at {reader.show(case.line.voltage_v, 'voltage')} or more"
    found = [
        f"Usual for {current} is a fuse or breaker of {rated}, {made}. "
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
