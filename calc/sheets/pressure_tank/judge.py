"""What the pressure tank sheet finds: too many starts, runs too short, charge and rating."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from calc import practice, storage, water
from calc.page.answer import Link
from calc.page.findings import Finding, unchecked
from calc.sheets.parts.carry import exact
from calc.sheets.parts.line_fixes import round_down
from calc.sheets.parts.small_draw import restart_pressure, small_draw_finding, usual_charge
from calc.sheets.parts.tank_sizes import gap_words, round_up
from calc.sheets.parts.tries import Change
from calc.units import GALLON_US, HOUR, LITRE, MINUTE, number_text, numbers_apart

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.form import Values
    from calc.sheets.parts.small_draw import SmallDraw
    from calc.sheets.pressure_tank.case import Case
    from calc.units import Reader

FEW_MORE = 1.5  # times the starts allowed, up to which it is borderline; our choice
LOW_CHARGE = 0.6  # of the cut-in pressure, below which the pre-charge is low; our choice
LARGEST = 10.0  # m3, largest pressure tank the form takes; our choice
STOPS = 0.95  # of the pump's flow, the most that lets it fill the tank in good time; our choice
COMMON = {  # m3, sizes tanks are sold in; common practice, no source
    "metric": tuple(v * LITRE for v in (8, 18, 24, 35, 60, 80, 100, 150, 200, 300, 450)),
    "us": tuple(v * GALLON_US for v in (2, 5, 9, 14, 20, 32, 44, 62, 86, 119)),
}
DRIPS = 0.05 * LITRE / MINUTE  # m3/s, leaks that the form takes where nobody knows them
LEAKS, NEVER_STOPS = frozenset({"leaks"}), frozenset({"never-stops"})
CUTS_OUT = frozenset({"never-cuts-out"})
OVER_CUT_OUT = 1.1  # times cut-out, what a pump should make with no flow; our choice
CYCLES = LEAKS | {"no-tank", "starts", "least-flow"}  # what a larger drawdown puts right


def starts_now(values: Values, drawdown_m3: float) -> float:
    """Starts a second at the reader's draw (1/s); none where the pump never stops."""
    if values.draw >= values.pump:
        return 0.0
    return storage.starts_rate(drawdown_m3, values.pump, values.draw)


def told(values: Values, case: Case, reader: Reader) -> str:
    """What the tank gives, and how often the pump then starts."""
    gives = reader.show(case.gives, "volume") if case.gives else ""
    if not case.speed:
        worst, allowed = _an_hour(case.worst, values.starts)
        return f"Drawdown is {gives}: {worst} starts an hour at most, {allowed} allowed."
    if not case.gives:
        return "Speed control holds the pressure without a pressure tank while enough is drawn."
    if values.leak <= 0:
        return f"Drawdown is {gives}, and with no leak nothing starts the pump but an open outlet."
    return f"Drawdown is {gives}: leaks start the pump every {gap_words(1 / case.leaks)}."


def _an_hour(rate: float, allowed: float) -> tuple[str, str]:
    """Starts (1/s) and those allowed as numbers an hour; told apart where they are not the same."""
    starts, most = numbers_apart(rate * HOUR, allowed * HOUR)
    return starts, most.rstrip("0").rstrip(".") if "." in most else most


def findings(values: Values, case: Case, reader: Reader) -> Iterator[Finding]:
    """``Finding``s from starts, runs and pressures."""
    yield from (_of_speed if case.speed else _of_switch)(values, case, reader)
    if case.gives and case.charge < LOW_CHARGE * case.cut_in and case.usual_charge > 0:
        better = reader.show(case.usual_charge, "pressure")
        text = f"The pre-charge is low: at {better} the same tank gives more."
        yield Finding("note", "low-charge", text)
    if case.gives and case.high > practice.TANK_RATING:
        high, usual = reader.apart(case.high, practice.TANK_RATING, "pressure")
        text = f"The tank must be rated for more than {high}; many small ones stop at {usual}."
        yield Finding("care", "rating", text, "harm")
    if values.relief is not None:
        from calc.sheets.pressure_tank import relief_judge  # asked by few: not in a start

        yield from relief_judge.findings(values, case, reader)


def cut_out_level(case: Case) -> str:
    """ "stop" where the pump never reaches cut-out, "care" where hardly, "" where it does or where
    its head is not known."""
    if case.most is None or case.most >= OVER_CUT_OUT * case.high * (1 - 1e-9):
        return ""
    return "stop" if case.most <= case.high * (1 + 1e-9) else "care"


def _cut_out(case: Case, reader: Reader) -> Iterator[Finding]:
    """Whether the pump reaches the pressure at which the switch stops it."""
    level = cut_out_level(case)
    if case.most is None or not level:
        return
    most, high = reader.apart(case.most, case.high, "pressure")
    if level == "stop":
        text = f"The pump makes {most} at most here, and cut-out is {high}: it never stops."
        yield Finding("stop", "never-cuts-out", text, "cannot")
        return
    text = f"The pump makes {most} at most here, little more than its cut-out of {high}: it stops "
    yield Finding("care", "never-cuts-out", f"{text}late, and a little wear keeps it running.")


def _of_switch(values: Values, case: Case, reader: Reader) -> Iterator[Finding]:
    yield from _cut_out(case, reader)
    if not case.gives:
        text = "Without a pressure tank a switch starts and stops the pump every few seconds."
        yield Finding("stop", "no-tank", text, "cannot")
        return
    yield from _examples_tank(values, reader)
    allowed = values.starts * (1 + 1e-9)
    if case.worst > allowed:
        worst, most = _an_hour(case.worst, values.starts)
        text = (
            f"The pump starts {worst} times an hour at most; {most} are allowed. The tank's "
            f"drawdown is {reader.show(case.gives, 'volume')}."
        )
        level = "care" if case.worst <= FEW_MORE * allowed else "stop"
        yield Finding(level, "starts", text)
    if values.draw >= values.pump:
        text = "The pump gives no more than is drawn: it never stops, and the pressure falls."
        yield Finding("care", "never-stops", text)
    shortest = storage.run_time(case.gives, values.pump, 0.0)
    if shortest < practice.SHORTEST_RUN * (1 - 1e-9):
        longer = round_up(values.tank * practice.SHORTEST_RUN / shortest, "volume", reader)
        text = (
            f"The shortest run is {shortest:.0f} s; many motors need a minute, which a tank of "
            f"{reader.show(longer, 'volume')} gives."
        )
        yield Finding("note", "short-run", text)


def _examples_tank(values: Values, reader: Reader) -> Iterator[Finding]:
    """Where the pressures are the reader's and the tank is the example's, nothing is green.

    Only where page or link say whose they are.
    """
    yours = {values.standing.get(key) for key in ("cutin", "cutout")}
    if "given" not in yours or values.standing.get("tank") != "example":
        return
    size = reader.show(values.tank, "volume")
    text = (
        f"This holds for the example's tank of {size}: check first the size on your tank's label, "
        "and its pre-charge."
    )
    yield unchecked("tank-not-given", text)


def _of_speed(values: Values, case: Case, reader: Reader) -> Iterator[Finding]:
    """A speed control cycles only where less is drawn than the pump's least flow, or it leaks."""
    if values.leak > 0 and not case.gives:
        text = "Without a pressure tank every drip starts the pump."
        yield Finding("care", "leaks", text)
    elif case.leaks > values.starts * (1 + 1e-9):
        often, most = _an_hour(case.leaks, values.starts)
        text = f"Leaks alone start the pump {often} times an hour; {most} are allowed."
        yield Finding("care", "leaks", text)
    if case.small is not None:
        yield from _small_draw(case.small, case, reader)


def _small_draw(small: SmallDraw, case: Case, reader: Reader) -> Iterator[Finding]:
    if small.below and not case.gives:
        draw, least = reader.apart(small.draw, small.least_known, "flow")
        text = f"At {draw} the pump cycles without a pause: its least flow is {least}."
        yield Finding("stop", "least-flow", text)
        return
    found = small_draw_finding(small, "The smallest draw is", reader)
    if found is not None and small.least_known is None:
        found = replace(found, key="least-flow-unchecked")
    if found is not None:
        yield found


def changes(values: Values, case: Case, reader: Reader) -> Iterator[Change]:
    """What to try: the charge first, then a tank, a slower draw, other pressures, control."""
    yield from _reached(values, case, reader)
    yield from _charged(values, case, reader)
    yield from _larger(values, case, reader)
    if case.speed and values.leak > 0:
        yield Change("Repair the leak.", LEAKS, {"leak": exact(0.0, "flow", reader)})
    if values.relief is not None:
        from calc.sheets.pressure_tank import relief_judge

        yield from relief_judge.changes(values, case, reader)
    yield from _gentler_draw(values, reader)
    yield from _lower(values, case, reader)
    if not case.speed:
        yield from _controlled(values, case, reader)


def _reached(values: Values, case: Case, reader: Reader) -> Iterator[Change]:
    """Both pressures lower, or a pump with more head, where the pump does not reach cut-out."""
    if case.most is None:
        return
    high = round_down(case.most / OVER_CUT_OUT, "pressure", reader)
    low = min(
        case.cut_in, round_down(max(high - (case.high - case.cut_in), 0.0), "pressure", reader)
    )
    if practice.LEAST_CONTROL <= low < high < case.high:
        shown = [reader.show(one, "pressure") for one in (low, high)]
        text = f"Set the switch to start the pump at {shown[0]} and to stop it at {shown[1]}."
        pair = {"cutin": exact(low, "pressure", reader), "cutout": exact(high, "pressure", reader)}
        yield Change(text, CUTS_OUT, pair | {"precharge": ""})
    lift = max(values.lift, 0.0) if case.most == 0 else values.lift
    over = water.head_from_pressure(OVER_CUT_OUT * case.high, water.density(practice.COOL_WATER))
    head = round_up(over + lift, "head", reader)
    text = f"Use a pump that makes {reader.show(head, 'head')} of head or more with no flow."
    yield Change(text, CUTS_OUT, {"shutoff": exact(head, "head", reader)})


def _charged(values: Values, case: Case, reader: Reader) -> Iterator[Change]:
    """Another pre-charge, where the tank that is there is then enough."""
    if not case.gives or case.charge >= case.usual_charge:
        return
    charge = round_down(case.usual_charge, "pressure", reader)
    text = (
        f"Set the pre-charge to {reader.show(charge, 'pressure')}: the same tank then gives more."
    )
    yield Change(text, CYCLES, {"precharge": exact(charge, "pressure", reader)})


def _larger(values: Values, case: Case, reader: Reader) -> Iterator[Change]:
    """A pressure tank that is large enough."""
    size = max(case.asked, COMMON[reader.system][0])
    if size > LARGEST:
        text = "No single pressure tank is large enough: use several, side by side."
        left = (one for one in findings(values, case, reader) if one.key not in CYCLES)
        yield Change(text, CYCLES, left=tuple(one for one in left if one.level != "note"))
    elif not case.gives or values.tank < size:
        text = f"Fit a pressure tank of {reader.show(size, 'volume')}."
        yield Change(text, CYCLES, {"has": "tank", "tank": exact(size, "volume", reader)})


def _gentler_draw(values: Values, reader: Reader) -> Iterator[Change]:
    """Less drawn than the pump gives; a pump that goes down to what is drawn."""
    if values.draw is not None:
        draw = round_down(values.pump * STOPS, "flow", reader)
        text = f"Draw {reader.show(draw, 'flow')} or less at once, so that the pump can stop."
        yield Change(text, NEVER_STOPS, {"draw": exact(draw, "flow", reader)})
        pump = round_up(values.draw / STOPS, "flow", reader)
        text = f"Use a pump that gives {reader.show(pump, 'flow')}."
        yield Change(text, NEVER_STOPS, {"pump": exact(pump, "flow", reader)})
    if values.smallest and values.least:
        least = round_down(values.smallest, "flow", reader)
        text = f"Use a pump whose least flow is {reader.show(least, 'flow')}."
        yield Change(text, frozenset({"least-flow"}), {"least": exact(least, "flow", reader)})


def _lower(values: Values, case: Case, reader: Reader) -> Iterator[Change]:
    """A rating that small tanks have, or a tank with another."""
    rating = frozenset({"rating"})
    high = round_down(practice.TANK_RATING, "pressure", reader)
    key, name = ("set", "set") if case.speed else ("cutout", "cut-out")
    text = f"Lower the {name} pressure to {reader.show(high, 'pressure')}"
    changed = {key: exact(high, "pressure", reader)}
    if not case.speed and values.cutin > LOW_CHARGE * high:
        low = round_down(LOW_CHARGE * high, "pressure", reader)
        text += f" and the cut-in pressure to {reader.show(low, 'pressure')}"
        changed |= {"cutin": exact(low, "pressure", reader), "precharge": ""}
    yield Change(f"{text}.", rating, changed)
    text = f"Use a tank rated for more than {reader.show(case.high, 'pressure')}."
    left = (one for one in findings(values, case, reader) if one.key not in rating)
    yield Change(text, rating, left=tuple(one for one in left if one.level != "note"))


def _controlled(values: Values, case: Case, reader: Reader) -> Iterator[Change]:
    """Speed control, with the tank that its leaks ask for; it makes no pump give more."""
    if values.draw >= values.pump:
        return
    held, keys = {"control": "speed", "set": exact(case.high, "pressure", reader)}, CYCLES
    if case.gives:
        yield Change("Use a pump with speed control: this tank is then enough.", keys, held)
    restart = restart_pressure(case.high)
    charge = usual_charge(restart) if values.precharge is None else min(case.charge, restart)
    pressures = (charge, restart, case.high, case.air)
    least = storage.tank_for_drawdown(DRIPS / values.starts, *pressures)
    size = next((one for one in COMMON[reader.system] if one >= least), None)
    if size is not None:
        shown = reader.show(size, "volume")
        text = f"Use a pump with speed control and a pressure tank of {shown}."
        yield Change(text, keys, held | {"has": "tank", "tank": exact(size, "volume", reader)})


def cautions(values: Values, case: Case, reader: Reader) -> tuple[str, ...]:
    """What to look after once a year, what the tank must carry, and what looks like too small."""
    if not case.gives:
        return ()
    found = [
        "Check the pre-charge once a year, pump off and tank empty. The tank must be rated for "
        f"more than {reader.show(case.high, 'pressure')}; a relief valve opens between that and "
        "the weakest part's rating.",
    ]
    if not case.speed and case.charge > 0:
        lost = storage.drawdown(values.tank, 0.0, case.cut_in, case.high, case.air)
        often = number_text(storage.most_starts_rate(lost, values.pump) * HOUR, 2)
        gives = reader.show(lost, "volume")
        found.append(
            f"If it loses its pre-charge it gives {gives}, and the pump starts up to {often} times "
            "an hour."
        )
    if max(case.worst, case.leaks) > values.starts * (1 + 1e-9):
        found.append("A tank that has lost its air starts the pump as often: check that first.")
    return tuple(found)


def links(values: Values, case: Case, reader: Reader) -> tuple[Link, ...]:
    """Where to go on from a pressure tank."""
    asked = {"pressure": exact(case.cut_in, "pressure", reader)}
    if values.draw:
        asked["flow"] = exact(values.draw, "flow", reader)
    where = "restart" if case.speed else "cut-in"
    return (
        Link(f"At the {where} pressure: will it reach?", "reach", asked),
        Link("Water for days without the pump: a storage tank", "tank", {}),
    )
