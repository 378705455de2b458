"""What puts a pump and its line right, each change worked out anew; and where to go on."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace
from typing import TYPE_CHECKING

from calc import practice
from calc.errors import InputError
from calc.page.answer import Link
from calc.page.findings import Fix, ranked
from calc.pipe import pipes
from calc.pipe.line import larger_pipes
from calc.pump import sets
from calc.pump.invented import PUMPS
from calc.sheets.parts.carry import exact, texts
from calc.sheets.parts.line_fixes import line_fixes
from calc.sheets.parts.line_judge import the
from calc.sheets.parts.line_rows import as_text
from calc.sheets.parts.tank_sizes import round_up
from calc.sheets.pump_match.case import MOST_SET, SAFE, Case
from calc.sheets.pump_match.judge import findings, tank_for

if TYPE_CHECKING:
    from calc.page.fields import Field
    from calc.page.findings import Finding
    from calc.page.form import Values
    from calc.sheets.parts.line_fixes import Change
    from calc.units import Reader

MOST_FIXES = 3  # more is a list, not advice; our choice
WEAK = frozenset({"short", "no-water", "pump-most", "runs-on", "grade", "past-curve"})
SUCTION = frozenset({"npsh", "npsh-margin", "lift-practice"})
RUNS_LEVEL = 3.0  # m of suction pipe beyond the lift, where nothing is known; our choice
LEAST_SET = 1e3  # Pa, the least set pressure that the form takes
LEAST_OF_LOSS = 0.1  # of a suction pipe's loss, about what three sizes up leave; our choice
LEAST_TANK = 1e-4  # m3, the least tank that the form takes
LAST_DIGIT = 2e-3  # m, so that a height as printed still holds


class Fixer:
    """Tries changes of one case. key: of the finding that a change is for."""

    def __init__(
        self,
        case: Case,
        found: tuple[Finding, ...],
        fields: tuple[Field, ...],
        values: Values,
        reader: Reader,
    ) -> None:
        self.case, self.found, self.reader = case, found, reader
        self._fields, self._values = fields, values
        self.key = next((one.key for one in ranked(found) if one.level != "note"), "")

    def works(self, case: Case) -> bool:
        """Whether a changed case has nothing of the finding left and nothing newly wrong."""
        bad = {one.key for one in findings(case, self.reader) if one.level != "note"}
        before = {one.key for one in self.found if one.level != "note"}
        alike = next((group for group in (WEAK, SUCTION) if self.key in group), {self.key})
        return not bad & alike and bad <= before

    def link(self, **changed: str) -> Link:
        """The sheet with a change made."""
        if "line" not in changed:  # no rows are said too: without a word the example's would count
            rows = self.case.line.sections if self.case.counted else ()
            changed["line"] = as_text(rows, self.reader)
        words = texts(self._fields, self._values, **changed)
        return Link("Try this fix", "pump_match", words)

    def fixes(self) -> tuple[Fix, ...]:
        """The likely best first; none where nothing is wrong or only unknown."""
        ways: tuple[Callable[[], Iterator[Fix]], ...] = {
            "shut-off-over-rating": (self._relief,),
            "least-flow": (self._tank,),
            "displacement-relief": (self._guard,),
        }.get(self.key, ())
        if self.key in WEAK:
            ways = (self._set, self._pipe, self._pump, self._two, self._less, self._look_for)
        elif self.key in SUCTION:
            ways = (self._suction, self._lower)
        elif not ways:
            ways = (self._line,)
        kept: list[Fix] = []
        for way in ways:
            if len(kept) < MOST_FIXES and (way != self._look_for or not kept):
                kept += way()
        worst = next((one for one in ranked(self.found) if one.level != "note"), None)
        if not kept and worst is not None and worst.rank != "unchecked":
            kept.append(Fix("No single change we tried is enough."))
        return tuple(kept[:MOST_FIXES])

    # Too little -----------------------------------------------------------------------------

    def _set(self) -> Iterator[Fix]:
        case, show = self.case, self.reader.show
        if case.given_set is None:
            return
        case = replace(case, given_set=max(case.advised, LEAST_SET))
        at_control = case.as_set(case.set_pressure)
        if not self.works(case) or not LEAST_SET <= at_control <= MOST_SET:
            return
        pressure = show(at_control, "pressure")
        left = show(case.running.left, "pressure")
        cause = "The set pressure is the bottleneck: set" if self.key != "runs-on" else "Set"
        where = "sensor" if case.sensed_m else "pump"
        yield Fix(
            f"{cause} {pressure} at the {where}. That leaves {left} at the outlet.",
            self.link(set=exact(at_control, "pressure", self.reader)),
        )

    def _height_allows(self) -> bool:
        """Whether still water could leave enough, so that a wider pipe might help."""
        return self.case.pump.shut_off_head > self.case.system(0.0, self.case.need.sure_pa)

    def _pipe(self) -> Iterator[Fix]:
        if self.key == "past-curve" or not self._height_allows():
            return
        line = self.case.line
        worst = line.worst(self.case.flow)
        section = line.sections[worst]
        for pipe in larger_pipes(section.pipe, practice.MOST_SIZES_UP):
            case = replace(self.case, line=line.with_pipe(pipe, worst))
            if self.works(case):
                where = f" for {the(section).lower()}" if section.name else ""
                left = self.reader.show(case.running.left, "pressure")
                yield Fix(
                    f"{pipe.label}{where} leaves {left} at the outlet.", self._with_line(case)
                )
                return

    def _with_line(self, case: Case, **changed: str) -> Link | None:
        """A link with another line; None where the form has no words for it."""
        try:
            if case.counted or case.line.sections[0].reducer is not None:
                changed["line"] = as_text(case.line.sections, self.reader)
            elif case.line.single.pipe.kind in pipes.KINDS:
                pipe = case.line.single.pipe
                changed |= {"kind": pipe.kind, pipe.kind: pipe.size}
        except InputError:
            return None
        return self.link(**changed)

    def _pump(self) -> Iterator[Fix]:
        for key, pump in PUMPS.items():
            case = replace(self.case, pump=pump, given_set=None)
            if pump is self.case.pump or case.displaces or not self.works(case):
                continue
            name = f"{pump.name[0].lower()}{pump.name[1:]}"
            yield Fix(f"A pump like the {name} is enough.", self.link(pump=key, set=""))
            return

    def _two(self) -> Iterator[Fix]:
        case = self.case
        half, pump = case.flow / 2, case.pump
        if case.displaces or half > pump.largest_flow or self.key in ("runs-on", "past-curve"):
            return
        enough = pump.head_at(half) >= case.system(case.flow, case.need.sure_pa)
        needs = case.npsh_required(half, 1.0)
        margin = practice.NPSH_MARGIN
        drawn = needs is None or case.intake.available(case.flow) >= needs + margin
        if enough and drawn and (case.available is None or case.available < case.needed):
            yield Fix("Two such pumps side by side, each with its own check valve, are enough.")

    def _less(self) -> Iterator[Fix]:
        case, pump = self.case, self.case.pump
        if self.key == "past-curve" or not self._height_allows():
            return
        duty = sets.duty(pump, lambda flow: case.system(flow, case.need.sure_pa))
        flow = duty.flow * (1 - 2 * SAFE)
        if not practice.LEAST_FLOW_KEPT * case.flow <= flow < case.flow:
            return
        lost = case.intake.lost(flow)
        fewer = replace(
            case,
            need=replace(case.need, flow_m3s=flow),
            intake=replace(case.intake, flow=flow, loss_m=lost),
            given_set=None,
        )
        if self.works(fewer):
            typed = self.reader.typed
            shown = self.reader.show(flow, "flow")
            changed = {"flow": typed(flow, "flow"), "suction": typed(lost, "head"), "set": ""}
            yield Fix(f"Open less at once: {shown} or less.", self.link(**changed))

    def _look_for(self) -> Iterator[Fix]:
        case, show = self.case, self.reader.show
        head = case.system(case.flow, case.need.sure_pa)
        if head == float("inf"):
            yield Fix(
                "A pressure-reducing valve on the way holds less than you need: set it higher."
            )
            return
        text = f"Look for a pump that gives {show(case.flow, 'flow')} at {show(head, 'head')}."
        if not self._height_allows() and self.key != "past-curve":
            most = show(max(case.pump.shut_off_head - case.intake.lift, 0.0), "head")
            text = f"Height is the bottleneck: this pump raises water {most} at most. {text}"
        yield Fix(text)

    # The suction side -----------------------------------------------------------------------

    def _missing(self) -> float:
        """NPSH that is missing for need and margin together, m."""
        case, state = self.case, self.case.running
        needs = None if state is None else case.npsh_required(state.flow, state.speed)
        return (needs or 0.0) + practice.NPSH_MARGIN - case.intake.available(case.flow)

    def _suction(self) -> Iterator[Fix]:
        intake = self.case.intake
        loss = (intake.loss_m - self._missing()) * (1 - SAFE)
        if not LEAST_OF_LOSS * intake.loss_m < loss < intake.loss_m:
            return
        if self.works(replace(self.case, intake=replace(intake, loss_m=loss))):
            shown = self.reader.show(loss, "head")
            yield Fix(
                f"A wider suction pipe, which loses {shown} at most.",
                self.link(suction=self.reader.typed(loss, "head")),
            )

    def _lower(self) -> Iterator[Fix]:
        intake, show = self.case.intake, self.reader.show
        target = min(intake.lift - max(self._missing(), 0.0), intake.usual_lift)
        lift = intake.lift - (intake.lift - target) * (1 + SAFE) - LAST_DIGIT
        if lift < -50.0 or not self.works(replace(self.case, intake=replace(intake, lift=lift))):
            return
        where = (
            f"{show(lift, 'length')} above the water at most"
            if lift >= 0
            else f"with the water {show(-lift, 'length')} above it"
        )
        yield Fix(
            f"Place the pump {show(intake.lift - lift, 'length')} lower, {where}.",
            self.link(lift=self.reader.typed(lift, "length")),
        )

    # The control ----------------------------------------------------------------------------

    def _relief(self) -> Iterator[Fix]:
        rated = [s.rating_pa for s in self.case.failed.stresses() if s.over and s.rating_pa]
        least = self.reader.show(min(rated), "pressure")
        yield Fix(f"Fit a relief valve that keeps every point of the pipe below {least}.")

    def _tank(self) -> Iterator[Fix]:
        if self.case.steady.draw is None or self.case.least is None:
            return
        tank = max(tank_for(self.case) * (1 + SAFE), LEAST_TANK)
        tank = round_up(tank, "volume", self.reader)
        steady = replace(self.case.steady, tank=tank)
        if tank <= 10.0 and self.works(replace(self.case, steady=steady)):
            yield Fix(
                f"Fit a pressure tank of {self.reader.show(tank, 'volume')} or more at the pump.",
                self.link(tank=self.reader.typed(tank, "volume")),
            )

    def _guard(self) -> Iterator[Fix]:
        yield Fix("Fit a pressure switch or bypass, and a relief valve.", self.link(guard="both"))

    # The line -------------------------------------------------------------------------------

    def _line(self) -> Iterator[Fix]:
        """What the line's own fixes come to with this pump."""
        state = self.case.running or self.case.state(0.0)
        line, tried = self.case.line_at(state), {}

        def linked(change: Change) -> Link | None:
            tried[change.text] = case = self._changed(change)
            changed = {}
            if case.flow != self.case.flow:
                changed["flow"] = exact(case.flow, "flow", self.reader)
            if case.intake.flow != self.case.intake.flow:
                changed["suction"] = exact(case.intake.loss_m, "head", self.reader)
            at_control = case.as_set(case.given_set or 0.0)
            if case.given_set is not None and LEAST_SET <= at_control <= MOST_SET:
                changed["set"] = exact(at_control, "pressure", self.reader)
            if change.line.heat_k != line.heat_k:
                changed["hottest"] = ""
            return self._with_line(case, **changed)

        need = replace(self.case.need, flow_m3s=state.flow)
        for fix in line_fixes(line, need, self.reader, linked):
            if fix.text in tried and self.works(tried[fix.text]):
                yield fix

    def _changed(self, change: Change) -> Case:
        """The case with a line's change made, at the set pressure that goes with it."""
        case, line = self.case, change.line
        flow = change.need.flow_m3s
        bare = replace(line, start_pa=0.0, highest_pa=None)
        if case.running is None:  # tried with everything closed
            return replace(case, line=bare)
        held = case.running is not None and case.running.held and case.set_pressure >= LEAST_SET
        given = case.set_pressure if held else case.given_set  # the one the change was tried at
        if change.way == "pressure":
            given = max(line.start_pa, LEAST_SET)
        intake = replace(case.intake, flow=flow, loss_m=case.intake.lost(flow))
        return replace(case, line=bare, need=change.need, given_set=given, intake=intake)


# Cautions and links -------------------------------------------------------------------------


def cautions(case: Case, reader: Reader) -> tuple[str, ...]:
    """Standing advice that belongs to these numbers."""
    found = []
    if case.displaces:
        found.append(
            "A displacement pump must never face a closed valve without a pressure switch or "
            "bypass and a relief valve."
        )
    elif case.set_pressure > 0 and case.holds:
        found.append(
            "With everything closed the pump stops and a check valve holds the pressure; a "
            f"control commonly starts it again near {reader.show(case.restart, 'pressure')}."
        )
    if case.least is not None and case.steady.draw is None:
        found.append(
            f"Below about {reader.show(case.least, 'flow')} the pump cannot run on: a smaller "
            "steady draw, such as one drip zone, starts and stops it again and again. Enter your "
            "smallest to see how often."
        )
    if case.shut_off_pa > 0 and not case.displaces:
        most = reader.show(max(s.pressure_pa for s in case.failed.stresses()), "pressure")
        found.append(
            f"If the control fails, the pipe carries up to {most}: fit a relief valve where that "
            "is more than any part is rated for."
        )
    return tuple(found)


def links(case: Case, values: Values, reader: Reader) -> tuple[Link, ...]:
    """Where to go on, with every number that the other sheet asks for too."""
    line = _line_texts(case, values, reader)
    asked = {"flow": exact(case.flow, "flow", reader), "wanted": _typed(case.need.works_pa, reader)}
    set_at = {"pressure": _typed(max(case.set_pressure, 0.0), reader)}
    crest = exact(values.highest, "length", reader)
    found = []
    fits = case.set_pressure <= 20e5 and abs(values.climb) <= 200.0
    if fits:
        most = case.pump.largest_flow if case.duty is None else case.duty.flow
        given = {"use": "own", "most": reader.typed(max(most, 1e-7), "flow"), "highest": crest}
        given |= {"extra": exact(values.extra, "percent", reader)}
        found.append(Link("What this leaves at the outlet", "reach", line | asked | set_at | given))
    if fits and values.length >= 0.5 and values.kind in pipes.KINDS:
        sizes = {key: text for key, text in line.items() if key not in pipes.KINDS}
        texts_ = sizes | asked | set_at | {"crest": crest}
        found.append(Link("Every pipe size for this line", "pipe", texts_))
    found.append(Link("Check the suction lift", "suction", _suction_texts(case, reader)))
    return (*found, Link("Count the flow from showers, hoses and people", "demand", {}))


def _typed(pressure: float, reader: Reader) -> str:
    return exact(pressure, "pressure", reader)


def _line_texts(case: Case, values: Values, reader: Reader) -> dict[str, str]:
    found = {
        key: exact(values.numbers[key], "length", reader) for key in ("length", "climb", "lowest")
    }
    found |= {"water": exact(values.water, "temperature", reader), "kind": values.kind}
    if values.hottest is not None:
        found["hottest"] = exact(values.hottest, "temperature", reader)
    if values.kind in pipes.KINDS:
        found[values.kind] = values.numbers[values.kind]
    else:
        found |= {"bore": exact(values.bore, "diameter", reader), "inside": values.inside}
    if case.counted:
        found["line"] = as_text(case.line.sections, reader)
    return found


def _suction_texts(case: Case, reader: Reader) -> dict[str, str]:
    """Lift, flow and place; a pipe long enough for the lift, and what the pump needs."""
    intake, state = case.intake, case.running
    found = {
        "flow": exact(case.flow, "flow", reader),
        "lift": exact(intake.lift, "length", reader),
        "length": exact(max(intake.lift, 0.0) + RUNS_LEVEL, "length", reader),
        "water": exact(intake.temperature, "temperature", reader),
        "altitude": exact(intake.altitude, "length", reader),
    }
    needs = None if state is None or state.stands else case.npsh_required(state.flow, state.speed)
    found["npsh"] = "?" if needs is None or needs > 20.0 else reader.typed(needs, "head")
    return found
