"""What is found of a relief valve, and what puts it right: where it opens, and how wide."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import practice
from calc.page.findings import Finding, unchecked
from calc.sheets.parts.carry import exact
from calc.sheets.parts.line_fixes import round_down
from calc.sheets.parts.tank_sizes import round_up
from calc.sheets.parts.tries import Change
from calc.sheets.pressure_tank.relief_case import relief_of
from calc.units import MET

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.form import Values
    from calc.sheets.pressure_tank.case import Case
    from calc.sheets.pressure_tank.relief_case import Relief
    from calc.units import Reader

LOW, HIGH, SMALL = (frozenset({f"relief-{word}"}) for word in ("low", "high", "small"))
LEAST_CUT_IN = 0.5e5  # Pa, that a fix goes down to; our choice
WIDEST = 0.1  # m, the widest opening the form takes


def findings(values: Values, case: Case, reader: Reader) -> Iterator[Finding]:
    """``Finding``s of the relief valve; none where none is given."""
    valve = relief_of(values, case)
    if valve is None:
        return
    yield from _low(valve, case, reader)
    yield from _high(valve, reader)
    yield from _small(valve, reader)
    if valve.idle:
        most, opens = reader.apart(valve.most, valve.opens, "pressure")
        text = f"The pump makes {most} at most: the relief valve, set to {opens}, never opens."
        yield Finding("note", "relief-idle", text)


def _low(valve: Relief, case: Case, reader: Reader) -> Iterator[Finding]:
    name = "set pressure" if case.speed else "cut-out"
    if valve.opens <= valve.high * MET:
        opens, high = reader.apart(valve.opens, valve.high, "pressure")
        runs = "it lets water out all day" if case.speed else "the pump never stops"
        text = f"The relief valve opens at {opens}, not above the {name} of {high}: {runs}."
        yield Finding("stop", "relief-low", text, "cannot")
    elif valve.opens * MET < valve.lowest_set:
        opens, clear = reader.apart(valve.opens, valve.lowest_set, "pressure")
        text = f"The relief valve opens at {opens}, close above the {name}: it drips below {clear}."
        yield Finding("care", "relief-low", text)


def _high(valve: Relief, reader: Reader) -> Iterator[Finding]:
    if valve.rating is None:
        full = reader.show(round_up(valve.full, "pressure", reader), "pressure")
        text = "The lowest rating behind the relief valve is not known, so it is not checked: "
        yield unchecked("relief-unchecked", f"{text}{full} would work.")
        return
    # a pump that makes less than the rating needs no valve to keep under it
    safe = valve.most is not None and valve.most <= valve.rating * MET
    if valve.opens > valve.rating * MET:
        opens, rating = reader.apart(valve.opens, valve.rating, "pressure")
        text = f"The relief valve opens at {opens}, above the lowest rating of {rating}: too late."
        yield Finding("care" if safe else "stop", "relief-high", text, "harm")
    elif valve.full > valve.rating * MET and not safe:
        full, rating = reader.apart(valve.full, valve.rating, "pressure")
        text = f"Fully open, the relief valve holds {full}, above the lowest rating of {rating}."
        yield Finding("care", "relief-high", text, "harm")


def _small(valve: Relief, reader: Reader) -> Iterator[Finding]:
    if valve.passes is None:
        text = "The pump's flow is not known, so the opening of the relief valve is not checked."
        yield unchecked("relief-flow-unchecked", text)
    if not valve.small or valve.reaches <= valve.full * MET:
        return  # the pump itself makes no more
    flow = reader.show(valve.passes, "flow")
    text = f"The relief valve's opening is too small for {flow}: the pressure rises to "
    over = valve.rating is not None and valve.reaches > valve.rating * MET
    if over:
        reaches, rating = reader.apart(valve.reaches, valve.rating, "pressure")
        text += f"{reaches}, and the lowest rating is {rating}."
    else:
        text += f"{reader.show(valve.reaches, 'pressure')}."
    yield Finding("stop" if over else "care", "relief-small", text, "harm")


# Fixes ---------------------------------------------------------------------------------------


def changes(values: Values, case: Case, reader: Reader) -> Iterator[Change]:
    """Another setting, lower pressures, a stronger part, a wider valve."""
    valve = relief_of(values, case)
    if valve is None:
        return
    yield from _set(valve, reader)
    yield from _lower(valve, values, case, reader)
    yield from _stronger(valve, reader)
    yield from _wider(valve, reader)


def _set(valve: Relief, reader: Reader) -> Iterator[Change]:
    """Set between the pump's control and the lowest rating, where there is room between them."""
    opens = round_up(valve.lowest_set, "pressure", reader)
    if valve.highest_set is not None and opens > valve.highest_set:
        return
    if valve.opens >= valve.lowest_set and valve.highest_set is not None:
        opens = round_down(valve.highest_set, "pressure", reader)
        if opens < valve.lowest_set:
            return
    text = (
        f"Set the relief valve to open at {reader.show(opens, 'pressure')}, or fit one that does."
    )
    yield Change(text, LOW | HIGH, {"relief": exact(opens, "pressure", reader)})


def _lower(valve: Relief, values: Values, case: Case, reader: Reader) -> Iterator[Change]:
    """The pump stopped lower, where there is no room between its control and the rating."""
    top = valve.opens if valve.highest_set is None else min(valve.opens, valve.highest_set)
    opens = round_down(top, "pressure", reader)
    high = round_down(opens / practice.RELIEF_CLEAR, "pressure", reader)
    if high >= valve.high or high <= 0:
        return
    shown = reader.show(high, "pressure")
    changed = {"relief": exact(opens, "pressure", reader), "precharge": ""}
    at = f"the relief valve to open at {reader.show(opens, 'pressure')}"
    if case.speed:
        text = f"Lower the set pressure to {shown}, and set {at}."
        yield Change(text, LOW | HIGH, changed | {"set": exact(high, "pressure", reader)})
        return
    low = min(values.cutin, high - (case.high - values.cutin))
    low = round_down(max(low, 0.0), "pressure", reader)
    if LEAST_CUT_IN <= low < high:
        text = f"Set the switch to {reader.show(low, 'pressure')} and {shown}, and {at}."
        pair = {"cutin": exact(low, "pressure", reader), "cutout": exact(high, "pressure", reader)}
        yield Change(text, LOW | HIGH, changed | pair)


def _stronger(valve: Relief, reader: Reader) -> Iterator[Change]:
    if valve.rating is None or valve.full <= valve.rating * MET:
        return
    rated = round_up(valve.full, "pressure", reader)
    text = f"Replace every part rated less than {reader.show(rated, 'pressure')}."
    yield Change(text, HIGH, {"weakest": exact(rated, "pressure", reader)})


def _wider(valve: Relief, reader: Reader) -> Iterator[Change]:
    if not valve.small:
        return
    opening = round_up(valve.needed, "diameter", reader, 2)
    if opening <= WIDEST:
        shown = reader.show(opening, "diameter", 2)
        text = f"Fit a relief valve with an opening of {shown} or more."
        yield Change(text, SMALL, {"opening": exact(opening, "diameter", reader)})
