"""What the fault sheet finds: the cause that fits, how sure it is, what to read next."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.network.faults import NOTHING
from calc.page.answer import Link
from calc.page.findings import Finding, Fix, unchecked
from calc.sheets.fault import words
from calc.sheets.fault.case import SURE
from calc.sheets.fault.keep_up_link import as_it_is
from calc.sheets.parts.line_cautions import pipe_cautions

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.sheets.fault.case import Case, Weak
    from calc.units import Reader

ALIKE = 0.02  # share from which another cause of the group is named; our choice
MOST_WORDS = 25  # of a sentence that can open the verdict
_CAN_BE_READ = {
    "volts": "the voltage when all is well",
    "amps": "the voltage when all is well",
    "cycles": "the pressure tank’s volume and the pressures of the control",
    "watts": "the power in the pump’s table",
}


def told(case: Case, reader: Reader) -> str:
    """The facts in one sentence."""
    share = reader.show(case.first.share, "percent", 2)
    if case.sound:
        return f"These readings fit a supply with nothing wrong that they could show ({share})."
    return _fits(case, reader)


def _fits(case: Case, reader: Reader) -> str:
    share = reader.show(case.leader.share, "percent", 2)
    named = words.cause(case.leader.fault)
    full = f"What was read fits best {named} ({share})."
    if len(full.split()) <= MOST_WORDS:
        return full
    return f"Fits best: {named} ({share})."


def findings(case: Case, reader: Reader) -> tuple[Finding, ...]:
    """``Finding``s of a case."""
    return tuple(_findings(case, reader))


def _findings(case: Case, reader: Reader) -> Iterator[Finding]:
    if not case.readings:
        yield unchecked("no-reading", _read_first(case))
        yield from _left_out(case)
        yield from _weak_sound(case, reader)
        return
    if case.unseen:
        yield _unseen(case, reader)
    elif not case.sound:
        yield _cause(case, reader)
        if case.first.share < SURE:
            share = reader.show(case.first.share, "percent", 2)
            yield Finding(
                "care", "unsure", f"Other causes are as likely: this one has {share} of all."
            )
    if case.ranking.unlike:
        yield Finding(
            "care",
            "unlike",
            "No single cause fits these readings well: read again, or look for two faults.",
        )
    yield from _weak_sound(case, reader)
    yield from _alike(case)
    yield from _next(case, reader)
    yield from _left_out(case)


def _cause(case: Case, reader: Reader) -> Finding:
    """The cause; a stop where an outlet gets too little with it."""
    weak = any(one.level == "stop" for one in case.weak_now)
    return Finding("stop" if weak else "care", "cause", _fits(case, reader), "cannot",
                   case.leader.fault.where)  # fmt: skip


def _unseen(case: Case, reader: Reader) -> Finding:
    """The cause that what was noticed speaks for, and that no reading would show."""
    named = words.cause(case.leader.fault)
    share = reader.show(case.leader.share, "percent", 2)
    text = f"No reading shows it yet; likeliest by what you notice: {named} ({share})."
    if len(text.split()) > MOST_WORDS:
        text = f"No reading shows it yet; likeliest: {named} ({share})."
    return Finding("care", "unseen", text, at=case.leader.fault.where)


def _read_first(case: Case) -> str:
    if case.next is None:
        return "Not checked: no reading is given that can be compared. Read a pressure first."
    return (
        f"Not checked: no reading is given yet. Read first: {words.what(case, case.next.reading)}."
    )


def _weak_sound(case: Case, reader: Reader) -> Iterator[Finding]:
    """An outlet that gets too little by its pipes alone, whatever else is wrong."""
    if not case.weak_sound:
        return
    one: Weak = case.weak_sound[0]
    has, needs = (reader.show(p, "pressure", 2) for p in (one.has, one.needs))
    text = f"Even with nothing wrong {one.name} gets {has}, and it needs {needs}."
    if has == needs:
        text = f"Even with nothing wrong {one.name} gets only just what it needs, {needs}."
    yield Finding(one.level, "weak-sound", text, "weak", one.name)


def _alike(case: Case) -> Iterator[Finding]:
    """What these readings cannot tell from the first."""
    fits = [one for one in case.first.fits[1:] if one.fault != NOTHING]
    others = [one for one in fits if one.share >= ALIKE]
    if not others:
        return
    named = words.cause(others[0].fault)
    more = f", and {len(others) - 1} more causes" if others[1:] else ""
    begins = "These readings cannot tell it from"
    if case.first.has(NOTHING):
        begins = "These readings would not show"
    yield Finding("note", "alike", f"{begins} {named}{more}.")


def _next(case: Case, reader: Reader) -> Iterator[Finding]:
    part = case.next
    if part is None:
        return
    yield Finding("note", "next", f"Read next: {words.what(case, part.reading)}.")
    (first, value), *others = part.expected
    apart = [one for one in others if abs(one[1] - value) > part.error]
    a = words.shown(part.reading, value, reader)
    b = words.shown(part.reading, apart[0][1], reader) if apart else a
    if a == b:
        return
    one, other = words.cause(first.fault), words.cause(apart[0][0].fault)
    text = f"It would say {a} with {one}, {b} with {other}."
    if len(text.split()) > MOST_WORDS:
        text = f"It would say {a} with the likeliest cause, {b} with {other}."
    if len(text.split()) > MOST_WORDS:
        text = f"It would say {a} with the likeliest cause, {b} with another."
    yield Finding("note", "next-says", text)


def _left_out(case: Case) -> Iterator[Finding]:
    for place in case.left_out:
        key = place.partition(".")[0]
        needs = _CAN_BE_READ.get(key, "more of the supply")
        yield Finding("note", f"left-out-{key}", f"One reading is not compared: enter {needs}.")


def fixes(case: Case, reader: Reader) -> tuple[Fix, ...]:
    """What is safe to try, for the likeliest causes."""
    if not case.readings or case.sound:
        return ()
    seen = dict.fromkeys(words.to_try(fit.fault) for fit in case.first.fits[:2])
    return tuple(Fix(text) for text in seen)


def cautions(case: Case) -> tuple[str, ...]:
    """Standing advice that belongs to these numbers."""
    laid = (row.pipe for row in case.built.supply.sections)
    return pipe_cautions(laid, case.built.supply.source.temperature_k)


def links(case: Case, reader: Reader) -> tuple[Link, ...]:
    """On to the whole supply, as it should be and with the likeliest cause in it."""
    found = [
        Link("Will it keep up with nothing wrong?", "keep_up", as_it_is(case, NOTHING, 1.0, reader))
    ]
    leader = case.leader
    if case.readings and not case.sound:
        texts = as_it_is(case, leader.fault, leader.severity, reader)
        if texts:
            found.append(Link("The same with this fault in it", "keep_up", texts))
    return tuple(found)
