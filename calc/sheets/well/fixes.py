"""What to try with a well that gives too little: less flow, a tank, a deeper pump, a sleeve."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import practice, well_yield
from calc.sheets.parts.carry import exact
from calc.sheets.parts.line_fixes import round_down
from calc.sheets.parts.tank_sizes import round_up
from calc.sheets.parts.tries import Change
from calc.units import DAY

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.sheets.well.case import Case
    from calc.units import Reader

LEAST_GAP = 2e-3  # m between a motor and its sleeve, on each side; our choice
SURE = 1 + 1e-6  # beyond what is just enough, so that rounding leaves enough
NONE = (
    "No single change we tried is enough. A second source, a smaller use and a storage tank each "
    "help: combine them."
)
NO_FLOW = "Find another source, or ask a licensed driller whether a deeper well helps."
DAY_SHORT = frozenset({"too-little", "well-near"})
DRY = frozenset({"runs-dry"})
BUSIEST = frozenset({"peak", "cistern"})


def last(case: Case) -> str:
    """What to say where nothing we tried is enough."""
    return NONE if case.yields > 0 else NO_FLOW


def changes(case: Case, reader: Reader) -> Iterator[Change]:
    """The likely best first."""
    if case.yields <= 0:
        return
    if not case.submersible:
        text = "Use a submersible pump in the well: it pushes the water up."
        yield Change(text, frozenset({"suction"}), {"kind": "in"})
    yield from _stronger(case, reader)
    yield from _protected(case, reader)
    yield from _cistern(case, reader)
    yield from _deeper(case, reader)
    yield from _less(case, reader)
    yield from _off_the_floor(case, reader)
    yield from _sleeve(case, reader)


def _stronger(case: Case, reader: Reader) -> Iterator[Change]:
    """Where the pump and not the well is the limit."""
    wanted = round_up(case.use / DAY / practice.WELL_SHARE * SURE, "flow", reader)
    if case.pump < wanted <= case.yields:
        text = f"Use a pump that takes {reader.show(wanted, 'flow')}: the well gives that."
        yield Change(text, DAY_SHORT, {"pump": exact(wanted, "flow", reader)})


def _protected(case: Case, reader: Reader) -> Iterator[Change]:
    """A pump held to what flows in, and one that stops by itself."""
    flow = round_down(case.yields, "flow", reader)
    if 0 < flow < case.pump:
        shown = reader.show(flow, "flow")
        text = f"Throttle the pump, or set it slower, to {shown}: the well keeps up with that."
        yield Change(text, DRY, {"pump": exact(flow, "flow", reader)})
    if not case.dry:
        text = "Fit dry-run protection: it stops the pump before it draws air."
        yield Change(text, DRY, {"dry": "yes"})


def _cistern(case: Case, reader: Reader) -> Iterator[Change]:
    """A tank that is filled slowly over the day, and meets the busiest time."""
    size = round_up(max(case.tank, 0.01) * SURE, "volume", reader)
    flow = reader.show(case.use / DAY, "flow")
    text = (
        f"Let the well fill a storage tank of {reader.show(size, 'volume')} slowly, at {flow} on "
        "average. A second pump serves the outlets from it."
    )
    yield Change(text, BUSIEST, {"cistern": exact(size, "volume", reader)})


def _deeper(case: Case, reader: Reader) -> Iterator[Change]:
    """The intake so deep that the ground gives enough, where the well is that deep."""
    if case.needed_intake is None or case.deepest is None:
        return
    for flow, keys in (
        (case.use / DAY / practice.WELL_SHARE, DAY_SHORT),
        (case.pump, DRY),
    ):
        deep = round_up((case.intake_for(flow) or 0.0) * SURE, "length", reader)
        if case.intake < deep <= case.deepest:
            shown, gives = reader.show(deep, "length"), reader.show(flow, "flow")
            text = f"Set the intake {shown} down: the well then gives {gives}."
            yield Change(text, keys, {"intake": exact(deep, "length", reader)})


def _less(case: Case, reader: Reader) -> Iterator[Change]:
    """As much as may be planned on."""
    most = round_down(practice.WELL_SHARE * case.steadily, "daily", reader)
    if most > 0:
        text = f"Use no more than {reader.show(most, 'daily')}."
        yield Change(text, DAY_SHORT, {"use": exact(most, "daily", reader)})


def _off_the_floor(case: Case, reader: Reader) -> Iterator[Change]:
    if case.deepest is None:
        return
    high = round_down(case.deepest, "length", reader)
    if high - case.values.cover > case.static:
        text = f"Raise the intake to {reader.show(high, 'length')} below the top of the well."
        yield Change(text, frozenset({"floor"}), {"intake": exact(high, "length", reader)})


def _sleeve(case: Case, reader: Reader) -> Iterator[Change]:
    """A tube about the motor that makes the water pass it."""
    if not case.submersible:
        return
    motor = case.values.motor
    wide = well_yield.sleeve_bore(case.pump, motor, case.least_cooling * SURE)
    size = round_down(wide, "diameter", reader)
    if size < motor + 2 * LEAST_GAP or (case.casing is not None and size >= case.casing):
        return
    text = f"Fit a cooling sleeve no wider than {reader.show(size, 'diameter')} inside."
    yield Change(text, frozenset({"cooling"}), {"sleeve": exact(size, "diameter", reader)})
