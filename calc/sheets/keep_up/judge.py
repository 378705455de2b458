"""What is found in a supply, as findings in words; what is told where nothing is wrong."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import practice
from calc.network.findings import LEVELS, Trouble, troubles
from calc.network.parts import Run
from calc.network.state import SEEPING
from calc.network.static import highest_pressures
from calc.page.findings import Finding
from calc.pipe import pipes
from calc.sheets.keep_up import falls, pump_signs, valves
from calc.sheets.keep_up.cause import HEIGHTS, called, the_pipe
from calc.sheets.keep_up.cause import words as cause_words
from calc.sheets.keep_up.pump_signs import small_draws
from calc.sheets.parts import guard
from calc.sheets.parts.line_judge import fast_words, hot_words
from calc.sheets.parts.small_draw import KEY, small_draw_finding
from calc.site.supply import PUMP, PUMP_PART, SUCTION

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator, Sequence

    from calc.sheets.keep_up.case import Case, Tap
    from calc.units import Reader

MOST_WORDS = 25  # of a verdict, a number with its unit as one; our choice
RANKS = {
    "over-rating": "harm", "too-hot": "harm", "shut-off-over-rating": "harm",
    "outlet-over-limit": "harm", "negative-pressure": "harm", "no-water": "cannot",
    "npsh": "cannot", "below-vacuum": "cannot", "vacuum-collapse": "cannot",
    "set-too-high": "cannot", "fight": "cannot", "npsh-unchecked": "unchecked",
    guard.KEY: "harm",
    "no-rating": "unchecked", "suction-too-short": "unchecked",
    falls.DRY: "cannot", falls.EMPTY: "cannot", falls.OVER: "cannot", falls.GIVES: "cannot",
    falls.UNCHECKED: "unchecked",
}  # fmt: skip


# What is found, as figures ----------------------------------------------------------------------


def signs(case: Case) -> tuple[Trouble, ...]:
    """Everything found, without words, worst first."""
    found = [*troubles(case.after), *pump_signs.signs(case)]
    found += [*_tanks(case), *_shapes(case), *_cautious(case), *valves.falling(case)]
    found += [*pump_signs.guards(case), *falls.signs(case)]
    found = falls.weighed(case, found)
    if pump_signs.relieved(case):
        found = [one for one in found if one.kind != "shut-off-over-rating"]
    # of one kind of pipe the lines come first: they are under pressure, a suction pipe is not
    found.sort(key=lambda one: (one.kind, one.row) == ("too-hot", SUCTION))
    seen, kept = set(), []
    for one in found:
        # equal pumps in parallel and outlets of one kind of pipe are told of once
        key = _once(case, one)
        if key not in seen:
            seen.add(key)
            kept.append(one)
    return tuple(kept)


def _once(case: Case, one: Trouble) -> tuple[str, str]:
    if one.kind in ("too-hot", "cautious-heat"):
        return one.kind, case.after.network.run(one.row).pipe.kind
    if one.row.startswith(PUMP_PART):
        return one.kind, PUMP_PART
    return one.kind, one.row


def _tanks(case: Case) -> Iterator[Trouble]:
    for level in case.after.network.levels:
        flow = case.after.supplied[level.name]
        if level.fills and abs(flow) > SEEPING:
            yield Trouble(level.name, "tank-flow", "note", flow, None, "flow")


def _shapes(case: Case) -> Iterator[Trouble]:
    """Pipe sections shorter than the height between their ends."""
    heights = case.after.network.heights
    for name, at in case.built.section_rows.items():
        run, row = case.after.network.link(name), case.supply.sections[at]
        rise = abs(heights[run.end] - heights[run.start])
        if row.length_m < rise * (1 - 1e-9):
            yield Trouble(name, "section-too-short", "note", row.length_m, rise, "length")


def _cautious(case: Case) -> Iterator[Trouble]:
    """Pipes refused for their heat on the careful side, with cold water in them."""
    network = case.after.network
    if network.temperature_k > practice.HOT_FROM + 1e-9:
        return
    for link in network.links:
        if not isinstance(link, Run) or not link.pipe.heat_note:
            continue
        if pipes.too_hot(link.pipe, network.heat_k, network.temperature_k):
            yield Trouble(link.name, "cautious-heat", "note")


# In words ---------------------------------------------------------------------------------------


def findings(case: Case, reader: Reader, brief: bool = False) -> tuple[Finding, ...]:
    """Everything found, in words, the main outlet's first; brief: not why it gets too little."""
    found: Sequence[Trouble] = signs(case)
    if case.main is not None:
        found = sorted(found, key=lambda one: one.row != case.main.name)
    return tuple(
        Finding(
            one.level, one.kind, _sentence(case, one, reader, brief), rank_of(case, one), one.row
        )
        for one in found
    )


def rank_of(case: Case, one: Trouble) -> str:
    """The rank of a sign's finding."""
    if one.kind == KEY:
        return next(small.judged[1] for small, _ in small_draws(case))
    # a pipe too hot under no pressure cannot burst: only whether it keeps its shape is open
    if one.kind == "too-hot" and one.level == "care":
        return "unchecked"
    return RANKS.get(one.kind, "weak")


def _sentence(case: Case, one: Trouble, reader: Reader, brief: bool) -> str:
    if one.kind == "short":
        tap = next(tap for tap in case.taps if tap.name == one.row)
        return _short(case, tap, one, reader, brief)
    pipe = case.pipe_of(one.row)
    if one.kind == "too-hot" and pipe is not None:
        named = "The suction pipe" if one.row == SUCTION else "The pipe"
        return hot_words(pipe, case.after.network.heat_k, reader, named)
    if one.kind == "cautious-heat" and pipe is not None:
        return pipe.heat_note
    if one.kind == KEY:
        return _small_draw(case, reader)
    if one.kind == valves.FALLS:
        return valves.words(one, reader)
    if one.kind in falls.WORDS:
        text = falls.words(case, one, reader)
        return text[0].upper() + text[1:]
    if one.kind == "fast" and one.value is not None:
        return fast_words(one.value, one.level, the_pipe(case, one.row), reader)
    value = limit = ""
    if one.value is not None:
        value = reader.show(one.value, one.quantity)
        if one.limit is not None:
            value, limit = reader.apart(one.value, one.limit, one.quantity)
    text = _WORDS[one.kind](case, one, value, limit)
    return text[0].upper() + text[1:]


def _small_draw(case: Case, reader: Reader) -> str:
    (small, name), *_ = small_draws(case)
    tap = next((tap for tap in case.taps if tap.name == name), None)
    draws = "The smallest draw is"
    if tap is not None:
        draws = f"One of {name} draws" if tap.row.after > 1 else f"{name} alone draws"
    found = small_draw_finding(small, draws, reader)
    return found.text if found is not None else ""


def _short(case: Case, tap: Tap, one: Trouble, reader: Reader, brief: bool) -> str:
    got, needed = reader.apart(max(one.value or 0.0, 0.0), one.limit or 0.0, "pressure")
    if one.level == "note":
        return f"{got} at {tap.name} works; from {needed} it is comfortable."
    told = f"pressure at {tap.name} is {got}"
    begins = beginnings(case, tap) if blamed(case, tap) else [""]
    if one.level == "care":
        more = "just what is" if got == needed else f"little more than the {needed}"
        return _shortest(begins, [f"{told}, {more} needed."])
    if tap is not case.main:
        return f"Pressure at {tap.name} is {got}; {needed} is needed."
    told = f"{told}; {needed} is needed"
    if brief:
        return _shortest(begins, [f"{told}."])
    # next to nothing is lost on the way: with no flow it is as much
    cause = cause_words(case.cause, case, reader).removesuffix(f", {got} with no flow")
    return _shortest(begins, [f"{told}: {cause}.", f"{told}."])


def _shortest(begins: list[str], told: list[str]) -> str:
    """The first of the ways to begin and to go on, fullest first, that a verdict has room for."""
    ways = [begin + rest for rest in told for begin in begins]
    text = next((way for way in ways if len(way.split(" ")) <= MOST_WORDS), ways[-1])
    return text[0].upper() + text[1:]


def beginnings(case: Case, tap: Tap) -> list[str]:
    """Ways to say what else opens: "with Wash-house hose open, ", by number, or not at all."""
    others = [other.name for other in case.opened if other.name != tap.name]
    if not others:
        return [""]
    several = f"with {others[0]} and {len(others) - 1} more open, "
    named = several if len(others) > 2 else f"with {' and '.join(others)} open, "
    counted = f"with {len(others)} more open, " if others[1:] else "with one more open, "
    return [named, counted, ""]


def blamed(case: Case, tap: Tap) -> bool:
    """Whether what else opens is why an outlet has too little: not where it had before too."""
    if tap.before.open:
        levels = (*LEVELS, "")
        was = practice.enough(tap.before.pressure_pa, tap.after.wanted_pa, tap.best_pa)
        return levels.index(was) > levels.index(tap.level)
    return tap is case.main and case.cause.kind not in HEIGHTS


def _fight(case: Case, one: Trouble, value: str, _limit: str) -> str:
    if one.quantity == "flow":
        return f"water runs from {one.other} into {one.row}: fit a check valve in its pipe"
    return f"another source holds more pressure at {one.other} than {one.row} can: water runs back"


def _collapse(_case: Case, one: Trouble, value: str, limit: str) -> str:
    if one.level == "stop":
        return f"lay-flat hose closes under suction: the vacuum at the pump is {value}."
    text = f"garden hose may be sucked flat: the vacuum at the pump is {value}"
    return f"{text}, and {limit} is the most to ask of it." if one.level == "care" else f"{text}."


def _no_water(case: Case, one: Trouble, _value: str, _limit: str) -> str:
    tap = next(tap for tap in case.taps if tap.name == one.row)
    begins = beginnings(case, tap) if blamed(case, tap) else [""]
    if tap is not case.main or begins != [""]:
        return _shortest(begins, [f"no water reaches {one.row}."])
    kind, row = case.cause.kind, case.cause.row
    why = {
        "lift": "the pump is too weak for this height",
        "set": "the set pressure is too low",
        "valve": f"{row} is set too low",
        "tank": f"{called(case, row)} is too low",
        "break": f"{row} is too low",
    }
    return f"no water reaches {one.row}: {why.get(kind, 'it is too high')}."


def _tank(_case: Case, one: Trouble, value: str, _limit: str) -> str:
    if one.value < 0:
        return f"{one.row} is filled with {value.lstrip('−')}."
    return f"{one.row} gives {value}."


_WORDS: dict[str, Callable[[Case, Trouble, str, str], str]] = {
    guard.KEY: lambda c, *_: guard.guard_words(c.supply.source.guard),
    guard.SWITCH_AT_TOP: lambda c, o, v, m: guard.switch_words(v),
    "fight": lambda *a: _fight(*a) + ".",
    "vacuum-collapse": _collapse,
    "no-water": _no_water,
    "tank-flow": _tank,
    "below-vacuum": lambda c, o, v, m: (
        f"at {o.row} the pressure would fall to {v}: the water column separates, and less flows."
    ),
    "negative-pressure": lambda c, o, v, m: (
        f"pressure at {o.row} falls to {v}: polluted water can be drawn in."
        if c.supply.pumping
        else f"pressure at {o.row} falls to {v}: air and dirt come in, and less runs."
    ),
    "npsh": lambda c, o, v, m: (
        f"the pump needs {m} NPSH at this flow and has {v}: it would cavitate or lose its prime."
    ),
    "npsh-margin": lambda c, o, v, m: (
        f"this uses up the NPSH margin: the pump has {v} and needs {m} at this flow."
    ),
    "npsh-unchecked": lambda c, o, v, m: (
        f"NPSH required is not known, so it is not checked: up to {v} at this flow would pass."
        if o.value > 0
        else "NPSH required is not known, and no pump could keep its margin at this flow."
    ),
    "lift-practice": lambda c, o, v, m: (
        f"the suction lift is {v}: above about {m} at this altitude, a small air leak can stop "
        "the pump."
    ),
    "suction-too-short": lambda c, o, v, m: (
        f"the suction pipe is {v} long, shorter than the lift: check both."
    ),
    "section-too-short": lambda c, o, v, m: (
        f"{the_pipe(c, o.row)} is {v} long, yet its ends are {m} apart in height: check both."
    ),
    "over": lambda c, o, v, m: f"pressure at {o.row} is {v}; drippers are made for {m} at most.",
    "outlet-over-limit": lambda c, o, v, m: (
        f"static pressure at {o.row} is {v}; codes commonly allow {m} at most."
    ),
    "past-curve": lambda c, o, v, m: (
        f"the pump runs past the end of its curve, {m}: what it gives there is a guess."
    ),
    "idle": lambda c, o, v, m: "the pump gives nothing: a tank holds more pressure than it does.",
    "over-rating": lambda c, o, v, m: (
        f"{the_pipe(c, o.row)} is rated {m} but carries {v} with no flow."
    ),
    "shut-off-over-rating": lambda c, o, v, m: (
        f"if {'the pump’s control or ' if c.supply.pumping else ''}a valve fails, "
        f"{the_pipe(c, o.row)} carries {v} and is rated {m}."
    ),
    "no-rating": lambda c, o, v, m: (
        f"{the_pipe(c, o.row)} has no known rating: check that it is rated {v} or more."
    ),
    "set-too-high": lambda c, o, v, m: (
        f"the pump makes {m} at most: it cannot reach its set pressure of {v} and would not stop."
    ),
}


def told(case: Case, reader: Reader) -> str:
    """The facts in one sentence."""
    tap = case.main
    if tap is None:
        return _nothing_open(case, reader)
    after = reader.show(max(0.0, tap.after.pressure_pa), "pressure")
    flow = reader.show(tap.after.flow_m3s, "flow")
    begins = beginnings(case, tap)
    if begins == [""]:
        return f"Every open outlet gets enough: the least, {tap.name}, {after} and {flow}."
    before = reader.show(max(0.0, tap.before.pressure_pa), "pressure")
    if tap.before.open and tap.drop > 1.0 and before != after:
        told = f"pressure at {tap.name} drops from {before} to {after}, which is enough"
    else:
        told = f"pressure at {tap.name} is {after}, which is enough for {flow}"
    return _shortest(begins, [f"{told}."])


def _nothing_open(case: Case, reader: Reader) -> str:
    if case.supply.pumping is not None:
        static = reader.show(case.after.pressure(PUMP), "pressure")
        return f"Nothing is open: static pressure at the pump is {static}."
    where, most = most_static(case)
    return (
        f"Nothing is open: the most static pressure is {reader.show(most, 'pressure')}, at {where}."
    )


def most_static(case: Case) -> tuple[str, float]:
    """(the point with the highest static pressure, that in Pa)."""
    found = highest_pressures(case.after.network)
    points = [name for name in case.built.shown if name in found]
    where = max(points, key=lambda name: found[name])
    return where, max(0.0, found[where])
