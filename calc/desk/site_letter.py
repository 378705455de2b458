"""The letter of a whole site: what a customer reads, short enough for a phone.

All that is found stands on the pages behind its link; what is left out here is counted or named.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Any

from calc.desk import blocks, may_change, said_of, verdict
from calc.desk.blocks import Address, Grid, Heading, Items, Para
from calc.page.findings import BAD, GOOD, WORDS
from calc.page.render import WARNING_WORDS, beside
from calc.sheets.keep_up import falls
from calc.sheets.parts import ways
from calc.site.facts import GIVEN
from calc.site.pack import FROM_A_LINK
from calc.units import Reader

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from calc.desk.asked import Asked
    from calc.desk.blocks import Block
    from calc.desk.opened import Opened
    from calc.desk.work import Left, Part, Work

WORDS_MOST = 250  # of a letter without its questions and its address; our choice
EXAMPLE = "A worked example with invented numbers, not yours."
# Pages that ask one and the same thing of the weakest outlet: does enough arrive.
ARRIVES = ("keep_up", "reach", "gravity", "pump_match", "pipe")
# Advice that nobody may miss, by the words it begins with: what can kill.
ALWAYS = ("Switch off", "Do not enter", "Wiring near", "Know what is buried")
# Findings of a pump whose inlet has too little pressure, by the keys that pages give them.
UNDRAWN = ("npsh", "below-vacuum", "vacuum-collapse")
RUNS_OUT = (falls.GIVES, falls.EMPTY)  # of a source or tank that gives less than runs out of it
OTHERS = ("demand", "tank", "panels", "battery", "cable")  # parts whose sentence is a size
# Pages that only those are asked about who told something of it: beginnings of its facts' paths
# (others are everybody's), or rows of a table.
OF_FACTS = {
    "panels": ("power.panel", "power.battery", "place."), "battery": ("power.battery", "place."),
    "cable": ("power.",), "hot_water": ("hot.",), "well": ("well.", "water.yield"),
    "pressure_tank": ("pressure_tank.", "pump.cut_in"), "drip": ("drip.",),
    "tank": ("store.", "rain."), "hill_tank": ("store.", "rain."), "demand": ("use.",),
}  # fmt: skip
OF_TABLES = {"drip": ("beds",), "hill_tank": ("tanks",), "demand": ("animals", "beds")}


@dataclass(frozen=True)
class Room:
    """How much of each kind a letter holds: other findings, outlets, fixes, sizes of pipe, other
    sizes, assumed facts, cares and cautions."""

    found: int
    outlets: int
    fixes: int
    pipes: int
    sizes: int
    assumed: int
    minded: int


# From a roomy letter to the shortest; our choice.
ROOMS = (
    Room(6, 12, 4, 6, 5, 8, 8), Room(4, 8, 3, 4, 3, 6, 6), Room(3, 6, 2, 3, 2, 4, 5),
    Room(2, 5, 2, 2, 0, 4, 4), Room(2, 4, 1, 2, 0, 3, 4), Room(1, 3, 1, 1, 0, 2, 4),
    Room(1, 2, 1, 1, 0, 2, 4), Room(1, 1, 1, 1, 0, 2, 4), Room(1, 1, 1, 1, 0, 1, 4),
    Room(0, 1, 1, 1, 0, 1, 4), Room(0, 1, 1, 1, 0, 0, 4),
)  # fmt: skip


def letter(
    found: Opened, work: Work, questions: list[Asked] | None, may: str, address: str
) -> tuple[Block, ...]:
    """The letter: the roomiest that keeps to ``WORDS_MOST``.

    Stops, and advice on what can kill, are in each of them.  Raises nothing.
    """
    end = tuple(_link(may, address))
    for room in ROOMS:
        first, last = tuple(_answer(found, work, room)), tuple(_minded(work, room))
        if words((*first, *last, *end)) <= WORDS_MOST:
            break
    return (*first, *_questions(work, questions), *last, *end)


def words(made: Iterable[Block]) -> int:
    """Words and figures of blocks as text, without addresses."""
    text = blocks.text(replace(one, href="") if isinstance(one, Address) else one for one in made)
    return sum(any(sign.isalnum() for sign in word) for word in text.split())


def _answer(found: Opened, work: Work, room: Room) -> Iterator[Block]:
    reader = Reader(work.system)
    name = f"“{found.site.name}”" if found.site.name else "you described"
    told = f"We worked out the water supply {name} from what you told us."
    yield Para(EXAMPLE if found.example else told)
    yield from _verdict(work, room)
    yield from _outlets(work, room, reader)
    yield from _fixes(work, room)
    yield from _sizes(work, room, reader)
    yield from _assumed(work, room, reader)


# What is found ----------------------------------------------------------------------------------


def _verdict(work: Work, room: Room) -> Iterator[Block]:
    parts = said_of.worst_first(work)
    if not parts:
        yield Para("Too little is known yet to work anything out.", f"{work.word}.")
        return
    first, told = parts[0], verdict.of(work)
    decides = first.verdict is not None and first.verdict.level == work.level != GOOD
    sentence = said_of.bare(first) if decides else told.sentence
    title = said_of.title(first) if decides else told.title
    yield Para(f"{told.lead} {title} {sentence}" if told.lead else sentence, f"{work.word}.")
    own = _of_their_own(work, parts, sentence)[: room.found]
    lines = [f"{said_of.title(one)} {said_of.sentence(one)}" for one in own]
    named: dict[str, list[str]] = {}
    for one in parts:
        if one not in own:
            named.setdefault(_led(one, work), []).append(one.sheet.title.rstrip("?"))
    lines += [f"{lead}: {', '.join(titles)}." for lead, titles in named.items()]
    yield Heading("What we looked at")
    yield Items(tuple(lines))


def _of_their_own(work: Work, parts: list[Part], told: str) -> list[Part]:
    """Parts that do not work, or only just, and say what was not said yet.

    What a part lacks is among the questions.  Of the pages that ask whether enough arrives the
    first tells it for all that are as bad; what a pump cannot draw is told once.
    """
    own: list[Part] = []
    seen = {told}
    arrives = next((one for one in parts if one.key in ARRIVES and one.verdict), None)
    for one in parts:
        sentence = said_of.bare(one)
        again = (
            arrives is not None
            and one is not arrives
            and one.key in ARRIVES
            and _level(one) == _level(arrives)
        )
        undrawn = parts[0].key == said_of.CAUSE and one.key in ("keep_up", "pump_match")
        undrawn = undrawn and cannot_draw(work)
        if (
            one.verdict is None
            or _level(one) == GOOD
            or sentence in seen
            or again
            or said_of.lacking(one)
            or undrawn
        ):
            continue
        seen.add(sentence)
        own.append(one)
    return own


def _level(one: Part) -> str:
    return one.verdict.level if one.verdict else ""


def _led(one: Part, work: Work) -> str:
    """What leads the names of parts that have no sentence of their own in the letter."""
    if one.verdict is None:
        return "Not worked out"
    word = one.verdict.word if one.verdict.word in WORDS.values() else "Worked out"
    return f"{word}, if the pump could draw" if _level(one) == GOOD and cannot_draw(work) else word


def cannot_draw(work: Work) -> bool:
    """Whether the pump cannot draw its water, so that no figure after it can be had."""
    return bool(_keys(work, "stop") & set(UNDRAWN))


def _keys(work: Work, level: str) -> set[str]:
    """Keys of the findings of a level of the whole supply and of its suction."""
    return {
        finding.key
        for part in work.parts
        if part.key in ("suction", "keep_up") and part.answer is not None
        for finding in part.answer.findings
        if finding.level == level
    }


def _outlets(work: Work, room: Room, reader: Reader) -> Iterator[Block]:
    table = said_of.table(work.part("keep_up"), "Every outlet")
    yield Heading("At the outlets")
    if table is None or not table.rows:
        yield Para("Not worked out: the pipe, the pump or the outlets are not known well enough.")
        return
    if cannot_draw(work):
        yield Para("None can be had: the pump cannot draw the water for it.")
        return
    rank = {"too little": 0, "no water": 0, "enough": 2}
    every: tuple[Any, ...] = table.rows
    is_open = [row for row in every if row[4][1] is not None]
    worst = sorted(is_open, key=lambda row: rank.get(row[1], 1))[: room.outlets]
    shown = [row for row in is_open if row in worst]
    rows = tuple(tuple(_outlet(row, reader)) for row in shown)
    yield Grid(("Outlet", "Pressure", "Needed", "Flow", "Result"), rows)
    rest: dict[str, list[str]] = {}
    for row in every:
        if row not in shown:
            rest.setdefault(str(row[1]), []).append(str(row[0]))
    yield Para(" ".join(f"{said.capitalize()}: {', '.join(who)}." for said, who in rest.items()))
    if _keys(work, "stop") & set(RUNS_OUT):
        yield Para("These hold only while the source has so much to give.")


def _outlet(row: Any, reader: Reader) -> Iterator[str]:
    """One row of the table of outlets, with the values after the others open."""
    name, result, (_, pressure), needed, (_, flow), count = row
    many = str(count).rpartition(" ")[2]
    dry = flow <= 0 and pressure <= 0
    yield f"{name} ({many} open)" if many not in {"0", "1"} else str(name)
    yield said_of.NO_WATER if dry else reader.show(pressure, "pressure")
    yield reader.show(needed, "pressure")
    yield "none" if dry else reader.show(flow, "flow")
    yield str(result)


def _fixes(work: Work, room: Room) -> Iterator[Block]:
    lines: dict[str, str] = {}
    arrives = False
    for one in said_of.worst_first(work):
        if one.answer is None or one.answer.verdict.level == GOOD or not one.answer.fixes:
            continue
        if one.key in ARRIVES and arrives:
            continue  # it mends what another page's fix mends
        arrives = arrives or one.key in ARRIVES
        for fix in one.answer.fixes[:2]:
            lines.setdefault(fix.text, one.key)
    if lines:
        yield Heading("What to do, each worked out again")
        yield Items(tuple(lines)[: room.fixes])


# Sizes ------------------------------------------------------------------------------------------


def _sizes(work: Work, room: Room, reader: Reader) -> Iterator[Block]:
    site = work.site
    lines = []
    for size, length, _ in said_of.pipes(site, reader):
        told = said_of.NOT_KNOWN if length is None else reader.show(length, "length")
        lines.append(f"Pipe, {size}: {told}")
    if len(lines) > room.pipes:
        lines = [*lines[: room.pipes], f"And {len(lines) - room.pipes} more sizes of pipe"]
    lines = lines or [f"Pipe: {said_of.NOT_KNOWN}"]
    if ways.has_pump(site):
        lines += _pump(work, reader)
    if site.get("pressure_tank.volume").known:
        lines.append(f"Pressure tank: {said_of.fact(site, 'pressure_tank.volume', reader)}")
    others = [one for one in work.parts if one.key in OTHERS and _level(one) == GOOD]
    lines += [f"{said_of.title(one)} {said_of.bare(one)}" for one in others[: room.sizes]]
    yield Heading("Main sizes")
    yield Items(tuple(lines))


def _pump(work: Work, reader: Reader) -> list[str]:
    site, part = work.site, work.part("keep_up")
    flow = said_of.shown(part, "Flow of everything open")
    pressure = said_of.shown(part, "Pressure at the pump")
    if cannot_draw(work):
        return [f"Pump: {said_of.pump(site)}"]
    duty = said_of.NOT_KNOWN if flow == said_of.NOT_KNOWN else f"{flow} at {pressure}"
    lines = [f"Pump: {said_of.pump(site)}", f"Pump duty, all open: {duty}"]
    if site.best("pump.control").text == "switch":
        on, off = (said_of.fact(site, f"pump.{key}", reader) for key in ("cut_in", "cut_out"))
        return [*lines, f"Pressure switch: on {on}, off {off}"]
    return [*lines, f"Set pressure: {said_of.fact(site, 'pump.set', reader)}"]


# What was assumed -------------------------------------------------------------------------------


def _assumed(work: Work, room: Room, reader: Reader) -> Iterator[Block]:
    """What of the site was assumed, by reason; what the pages take as usual is counted."""
    by_reason: dict[str, list[str]] = {}
    held = list(said_of.assumed_facts(work.site, reader))
    for said, reason in held[: room.assumed]:
        reason = "taken by us" if reason == FROM_A_LINK else reason
        by_reason.setdefault(reason, []).append(said)
    lines = [f"{reason[:1].upper()}{reason[1:]}: {', '.join(said)}."
             for reason, said in by_reason.items()]  # fmt: skip
    labels = {one.label for part in work.parts for one in part.outcome.assumed}
    # what has no room for its own line is counted with the rest, which is said
    more = len(labels) + max(0, len(held) - room.assumed) - len(lines)
    if more > 0:
        lines.append(f"{more} usual values, named behind the link.")
    if lines:
        yield Heading("Assumed, not from you")
        yield Items(tuple(lines))


# Asked, minded, linked --------------------------------------------------------------------------


def _questions(work: Work, questions: list[Asked] | None) -> Iterator[Block]:
    if questions is None:
        return
    undecided = _by_lack(work.undecided)
    lines = [f"{lacks[:1].upper()}{lacks[1:]}: without it there is no answer to: "
             f"{', '.join(titles)}." for lacks, titles in undecided.items()]  # fmt: skip
    lines += [f"{one.label}: {one.told}" for one in questions]
    meant = (one for one in work.left if one not in work.undecided and _is_meant(work, one.key))
    if wanted := _by_lack(one for one in meant if one.lacks not in undecided):
        told = "; ".join(f"{', '.join(titles)} ({lacks})" for lacks, titles in wanted.items())
        lines.append(f"Only if you want these too: {told}.")
    if lines:
        yield Heading("Please tell us, what matters most first")
        yield Items(tuple(lines), numbered=True)


def _by_lack(left: Iterable[Left]) -> dict[str, list[str]]:
    """{what is lacking: titles of what was not worked out for want of it}."""
    found: dict[str, list[str]] = {}
    for one in left:
        found.setdefault(one.lacks, []).append(one.title.rstrip("?"))
    return found


def _is_meant(work: Work, key: str) -> bool:
    """Whether something was told that a page is about: nobody else wants its questions."""
    told = [path for path in work.site.facts if work.site.get(path).standing == GIVEN]
    tables = any(work.site.rows(table) for table in OF_TABLES.get(key, ()))
    return tables or any(path.startswith(OF_FACTS.get(key, ("",))) for path in told)


def _minded(work: Work, room: Room) -> Iterator[Block]:
    """What was found beside the verdicts, then standing advice: of each text one.

    Every stop is told, and what can kill; of the rest as much as there is room for.
    """
    said = {said_of.bare(one) for one in work.parts} | {verdict.of(work).sentence}
    suction = work.part(said_of.CAUSE)
    told = suction is not None and _level(suction) == BAD and cannot_draw(work)
    found = [
        (one.level, f"{WARNING_WORDS[one.level]}: {one.text}")
        for part in said_of.worst_first(work)
        if part.answer is not None
        for one in beside(part.answer)
        if one.level != "note" and one.text not in said and not (told and one.key in UNDRAWN)
    ]
    standing = [
        caution
        for part in work.parts
        if part.answer is not None
        for caution in (*part.answer.cautions, *part.sheet.cautions)
    ]
    must = [text for level, text in found if level == "stop"]
    short = verdict.overdrawn(work)  # on no page, so it would be behind no link
    if short and short.text not in said:
        must.append(f"{WARNING_WORDS[short.level]}: {short.text}")
    deadly = {start: one for start in ALWAYS for one in standing if one.startswith(start)}
    must = list(dict.fromkeys([*must, *deadly.values()]))
    rest = [*(text for level, text in found if level != "stop"),
            *(one for one in standing if not one.startswith(ALWAYS))]  # fmt: skip
    rest = list(dict.fromkeys(rest))
    kept = [*must, *rest[: max(0, room.minded - len(must))]]
    if kept:
        yield Heading("Please mind")
        yield Items(tuple(kept))
    more = len(must) + len(rest) - len(kept)
    if more:
        yield Para(f"{more} more behind the link; local codes come first.")


def _link(may: str, address: str) -> Iterator[Block]:
    yield Heading("These numbers")
    named = may_change.labels(may)
    if named:
        yield Para(f"Please check and change: {'; '.join(named)}. {may_change.COURTESY}")
        yield Para("Then send us the address of the page: it holds your changes.")
    yield Address("Open these numbers", address)
