"""What puts a pump and its line right, each change judged anew as the whole sheet judges."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator
from dataclasses import replace
from typing import TYPE_CHECKING

from calc import practice
from calc.errors import InputError
from calc.page.answer import TRY, Link
from calc.page.findings import Fix
from calc.pipe import pipes
from calc.pipe.line import larger_pipes
from calc.pump import sets
from calc.pump.invented import PUMPS
from calc.sheets.parts.carry import exact, texts
from calc.sheets.parts.fix_search import Search, Tried
from calc.sheets.parts.guard import BOTH, FIT
from calc.sheets.parts.line_fixes import line_changes, round_down
from calc.sheets.parts.line_judge import the
from calc.sheets.parts.line_rows import as_text
from calc.sheets.parts.small_draw import KEY as SMALL_DRAW
from calc.sheets.parts.small_draw import remedies
from calc.sheets.parts.tank_sizes import round_up
from calc.sheets.parts.tries import MOST_FIXES
from calc.sheets.pump_match.case import MOST_SET, SAFE, Case
from calc.sheets.pump_match.judge import findings

if TYPE_CHECKING:
    from calc.page.fields import Field
    from calc.page.findings import Finding
    from calc.page.form import Values
    from calc.sheets.parts.line_fixes import Change
    from calc.units import Reader

    Way = Callable[[Case, Reader, str], Iterator[Tried[Case]]]

SUCTION = frozenset({"npsh", "npsh-margin", "lift-practice"})
WEAK = frozenset({"short", "no-water", "pump-most", "runs-on", "grade", "past-curve"})
LEAST_SET = 1e3  # Pa, the least set pressure that the form takes
LEAST_LIFT = -50.0  # m, the least suction lift that the form takes
LEAST_OF_LOSS = 0.1  # of a suction pipe's loss, about what three sizes up leave; our choice
LAST_DIGIT = 2e-3  # m, so that a height as printed still holds
NONE = "No change we tried is enough."


def fixes(case: Case, fields: tuple[Field, ...], values: Values, reader: Reader) -> tuple[Fix, ...]:
    """``Fix``es of everything wrong, each reaching Works or saying what it leaves; where there
    is none, what to look for."""
    search: Search[Case] = Search(
        judged=lambda one: findings(one, reader),
        changes=lambda one, key: _changes(one, key, reader),
        linked=lambda one: _linked(case, one, lambda **new: texts(fields, values, **new), reader),
        gives=lambda one: _gives(one, reader),
        fixable=_fixable,
    )
    wrong = {one.key for one in search.wrong(case)}
    if not wrong:
        return ()
    found = search.fixes(case)
    if not search.enough:
        found += tuple(_look_for(case, wrong, reader))
    return found[:MOST_FIXES] or (Fix(NONE),)


def _fixable(case: Case, one: Finding) -> bool:
    return one.key == SMALL_DRAW and case.small is not None and case.small.least_known is not None


def _gives(case: Case, reader: Reader) -> str:
    state = case.running
    return f"That leaves {reader.show(state.left, 'pressure')} at the outlet." if state else ""


def _changes(case: Case, key: str, reader: Reader) -> Iterator[Tried[Case]]:
    """What is tried for a finding, the likely best first."""
    ways: tuple[Way, ...] = {
        "shut-off-over-rating": (_relief,),
        SMALL_DRAW: (_small,),
        "displacement-relief": (_guard,),
    }.get(key, ())
    if key in WEAK:
        ways = (_set, _pipe, _pump, _less, _beside)
    elif key in SUCTION:
        ways = (_suction, _lower, _beside)
    for way in ways or (_line,):
        yield from way(case, reader, key)


# Too little --------------------------------------------------------------------------------------


def _at_advised(case: Case, reader: Reader) -> Case | None:
    """The case at the set pressure worked out for it, as printed, no less than a control holds;
    None where the form takes none such."""
    least = max(case.as_set(case.advised), practice.LEAST_CONTROL)
    at_control = round_up(least, "pressure", reader)
    if at_control > MOST_SET:
        return None
    return replace(case, given_set=at_control + case.weight * case.sensed_m)


def _shown_set(case: Case, reader: Reader) -> str:
    return reader.show(case.as_set(case.given_set or 0.0), "pressure")


def _set(case: Case, reader: Reader, key: str) -> Iterator[Tried[Case]]:
    after = _at_advised(case, reader) if case.given_set is not None else None
    if after is None:
        return
    cause = "The set pressure is the bottleneck: set" if key != "runs-on" else "Set"
    where = "sensor" if case.sensed_m else "pump"
    does = f"{_shown_set(after, reader)} at the {where}."
    gives = _gives(after, reader)
    yield Tried("pressure", f"{cause} {does} {gives}".strip(), after, f"Set {does}")


def _height_allows(case: Case) -> bool:
    """Whether still water could leave enough, so that a wider pipe might help."""
    return case.pump.shut_off_head > case.system(0.0, case.need.sure_pa)


def _pipe(case: Case, reader: Reader, key: str) -> Iterator[Tried[Case]]:
    if key == "past-curve" or not _height_allows(case):
        return
    worst = case.line.worst(case.flow)
    section = case.line.sections[worst]
    where = f" for {the(section).lower()}" if section.name else ""
    for pipe in larger_pipes(section.pipe, practice.MOST_SIZES_UP):
        after = replace(case, line=case.line.with_pipe(pipe, worst))
        if after.running is not None:
            left = reader.show(after.running.left, "pressure")
            text = f"{pipe.label}{where} leaves {left} at the outlet."
            uses, laid = f"Use {pipe.label}{where}.", frozenset({worst})
            yield Tried("wider", text, after, pipe=uses, laid=laid)


def _pump(case: Case, reader: Reader, _key: str) -> Iterator[Tried[Case]]:
    """The invented pumps, as it is set and set as each then takes."""
    for pump in PUMPS.values():
        after = replace(case, single=pump)
        if pump is case.single or after.displaces:
            continue
        name = f"a pump like the {pump.name[0].lower()}{pump.name[1:]}"
        yield Tried("pump", f"{_begun(name)} is enough.", after, f"Use {name}.")
        other = _at_advised(after, reader) if case.given_set is not None else None
        if other is not None:
            name += f", set to {_shown_set(other, reader)}"
            yield Tried("pump", f"{_begun(name)}, is enough.", other, f"Use {name}.")


def _begun(words: str) -> str:
    return words[0].upper() + words[1:]


def _less(case: Case, reader: Reader, key: str) -> Iterator[Tried[Case]]:
    if key == "past-curve" or not _height_allows(case):
        return
    duty = sets.duty(case.pump, lambda flow: case.system(flow, case.need.sure_pa))
    flow = round_down(duty.flow * (1 - 2 * SAFE), "flow", reader)
    if not practice.LEAST_FLOW_KEPT * case.flow <= flow < case.flow:
        return
    intake = replace(case.intake, flow=flow, loss_m=case.intake.lost(flow))
    fewer = replace(case, need=replace(case.need, flow_m3s=flow), intake=intake)
    shown = reader.show(flow, "flow")
    yield Tried("flow", f"Open less at once: {shown} or less.", fewer)
    other = _at_advised(fewer, reader) if case.given_set is not None else None
    if other is not None:
        text = f"Open less at once, {shown} or less, and set {_shown_set(other, reader)}."
        yield Tried("flow", text, other)


def _beside(case: Case, _reader: Reader, _key: str) -> Iterator[Tried[Case]]:
    """A second pump of the kind, each then with its share of the flow."""
    if case.pumps < practice.MOST_IN_PARALLEL:
        words = "two such pumps side by side, each with its own check valve"
        after = replace(case, pumps=practice.MOST_IN_PARALLEL)
        yield Tried("beside", f"{_begun(words)}, are enough.", after, f"Fit {words}.")


def _look_for(case: Case, wrong: set[str], reader: Reader) -> Iterator[Fix]:
    """What a pump must give, where none of ours does."""
    if not wrong & WEAK:
        return
    head = case.system(case.flow, case.need.sure_pa)
    if head == math.inf:
        held = "A pressure-reducing valve on the way holds less than you need: set it higher."
        if case.line.vented:
            held = "A break-pressure tank on the way takes the pressure: place it higher."
        yield Fix(held)
        return
    if head > practice.MOST_HEAD >= case.system(0.0, case.need.sure_pa):
        yield Fix(_far_too_narrow(case, head, reader))
        return
    text = f"Look for a pump that gives {reader.show(case.flow, 'flow')} at "
    text += f"{reader.show(head, 'head')}."
    if not _height_allows(case) and wrong & WEAK != {"past-curve"}:
        most = reader.show(max(case.pump.shut_off_head - case.intake.lift, 0.0), "head")
        text = f"Height is the bottleneck: this pump raises water {most} at most. {text}"
    yield Fix(text)


def _far_too_narrow(case: Case, head: float, reader: Reader) -> str:
    """That friction asks for more head than a pump for a house has; the pipe that does not.

    head: m, that this line asks for.
    """
    show, section = reader.show, case.line.sections[case.line.worst(case.flow)]
    flow = show(case.flow, "flow")
    text = (
        f"The pipe is the bottleneck: it asks for {show(head, 'head')} of head at {flow}, more "
        "than a pump for a house has."
    )
    for pipe in larger_pipes(section.pipe, len(pipes.sizes(section.pipe.kind))):
        wide = replace(case, line=case.line.with_pipe(pipe))
        asks = wide.system(case.flow, case.need.sure_pa)
        slow = practice.speed_level(wide.line.speed(case.flow)) != "care"
        if slow and asks <= practice.MOST_HEAD:
            return f"{text} In {pipe.label} a pump must give {flow} at {show(asks, 'head')}."
    most = larger_pipes(section.pipe, len(pipes.sizes(section.pipe.kind)))
    widest = most[-1] if most else section.pipe
    return f"{text} Even {widest.label} is too narrow for it: open less at once."


# The suction side --------------------------------------------------------------------------------


def _missing(case: Case) -> float:
    """NPSH that is missing for need and margin together, m."""
    state = case.running
    needs = None if state is None else case.npsh_required(state.flow, state.speed)
    return (needs or 0.0) + practice.NPSH_MARGIN - case.intake.available(case.flow)


def _suction(case: Case, reader: Reader, _key: str) -> Iterator[Tried[Case]]:
    intake = case.intake
    loss = round_down((intake.loss_m - _missing(case)) * (1 - SAFE), "head", reader)
    if LEAST_OF_LOSS * intake.loss_m < loss < intake.loss_m:
        shown = reader.show(loss, "head")
        after = replace(case, intake=replace(intake, loss_m=loss))
        text = f"A wider suction pipe, which loses {shown} at most."
        yield Tried("suction", text, after, f"Lay a wider suction pipe, which loses {shown}.")


def _lower(case: Case, reader: Reader, _key: str) -> Iterator[Tried[Case]]:
    intake, show = case.intake, reader.show
    target = min(intake.lift - max(_missing(case), 0.0), intake.usual_lift)
    lift = intake.lift - (intake.lift - target) * (1 + SAFE) - LAST_DIGIT
    if not LEAST_LIFT <= lift < intake.lift:
        return
    where = (
        f"{show(lift, 'length')} above the water at most"
        if lift >= 0
        else f"with the water {show(-lift, 'length')} above it"
    )
    text = f"Place the pump {show(intake.lift - lift, 'length')} lower, {where}."
    yield Tried("lower", text, replace(case, intake=replace(intake, lift=lift)))


# The control -------------------------------------------------------------------------------------


def _relief(case: Case, reader: Reader, _key: str) -> Iterator[Tried[Case]]:
    rated = [s.rating_pa for s in case.failed.stresses() if s.over and s.rating_pa]
    if not rated:
        return
    least = reader.show(round_down(min(rated), "pressure", reader), "pressure")
    text = f"Fit a relief valve that keeps every point of the pipe below {least}."
    fitted = {"guard": BOTH} if case.displaces else {"relief": True}
    yield Tried("relief", text, replace(case, **fitted))


def _small(case: Case, reader: Reader, _key: str) -> Iterator[Tried[Case]]:
    if case.small is None:
        return
    for text, charge, tank in remedies(case.small, reader):
        steady = replace(case.steady, charge=charge, tank=tank)
        way = "charge" if tank == case.steady.tank else "tank"
        yield Tried(way, f"{text}.", replace(case, steady=steady))


def _guard(case: Case, _reader: Reader, _key: str) -> Iterator[Tried[Case]]:
    yield Tried("relief", f"{FIT}.", replace(case, guard=BOTH))


# The line ----------------------------------------------------------------------------------------


def _line(case: Case, reader: Reader, key: str) -> Iterator[Tried[Case]]:
    """What the line's own changes come to with this pump."""
    state = case.running or case.state(0.0)
    if state is None:
        return
    need = replace(case.need, flow_m3s=state.flow)
    for change in line_changes(case.line_at(state), need, reader, key):
        after = _changed(case, change)
        yield Tried(change.way, change.text, after, change.does, change.pipe, change.laid)


def _changed(case: Case, change: Change) -> Case:
    """The case with a line's change made, at the set pressure that goes with it."""
    flow = change.need.flow_m3s
    bare = replace(change.line, start_pa=0.0, highest_pa=None)
    if case.running is None:  # tried with everything closed
        return replace(case, line=bare)
    held = case.running.held and case.set_pressure >= LEAST_SET
    given = case.set_pressure if held else case.given_set  # the one the change was tried at
    if change.way == "pressure":
        given = max(change.line.start_pa, LEAST_SET)
    intake = replace(case.intake, flow=flow, loss_m=case.intake.lost(flow))
    return replace(case, line=bare, need=change.need, given_set=given, intake=intake)


# The link ----------------------------------------------------------------------------------------


def _linked(
    case: Case, after: Case, written: Callable[..., dict[str, str]], reader: Reader
) -> Link | None:
    """The sheet with changes made; None where the form has no words for them.

    written: the texts of the form, with some changed.
    """
    changed = {key: text for key, (was, text) in _figures(case, after, reader).items() if was}
    at_control = after.as_set(after.given_set or 0.0)
    set_now = "set" in changed and after.given_set is not None
    if set_now and not LEAST_SET <= at_control <= MOST_SET:
        return None
    try:
        changed |= _line_texts(case, after, reader)
    except InputError:
        return None
    return Link(TRY, "pump_match", written(**changed))


def _figures(case: Case, after: Case, reader: Reader) -> dict[str, tuple[bool, str]]:
    """{field: (whether it changed, its text now)}, the line apart."""
    at_control = None if after.given_set is None else after.as_set(after.given_set)
    pump = next((key for key, one in PUMPS.items() if one is after.single), "own")
    old, new = case.intake, after.intake
    was, now = case.steady, after.steady
    return {
        "pump": (after.single is not case.single, pump),
        "set": (after.given_set != case.given_set, exact(at_control, "pressure", reader)),
        "flow": (after.flow != case.flow, exact(after.flow, "flow", reader)),
        "suction": (new.loss_m != old.loss_m, exact(new.loss_m, "head", reader)),
        "lift": (new.lift != old.lift, exact(new.lift, "length", reader)),
        "tank": (was.tank != now.tank, exact(now.tank, "volume", reader)),
        "precharge": (was.charge != now.charge, exact(now.charge, "pressure", reader)),
        "pumps": (after.pumps != case.pumps, str(after.pumps)),
        "guard": (after.guard != case.guard, after.guard),
        "relief": (after.relief != case.relief, "yes" if after.relief else "no"),
        "hottest": (after.line.heat_k != case.line.heat_k, ""),
    }


def _line_texts(case: Case, after: Case, reader: Reader) -> dict[str, str]:
    """The texts of the pipe.  Raises InputError for one that the form has no words for."""
    sections, single = after.line.sections, after.line.single
    if case.counted or single is None or single.reducer is not None:
        return {"line": as_text(sections, reader)}
    pipe = single.pipe
    if sections == case.line.sections or pipe.kind not in pipes.KINDS:
        return {"line": ""}
    return {"line": "", "kind": pipe.kind, pipe.kind: pipe.size}
