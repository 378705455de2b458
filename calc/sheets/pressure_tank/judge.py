"""What the pressure tank sheet finds: too many starts, runs too short, charge and rating."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import practice, storage
from calc.page.answer import Link
from calc.page.findings import Finding, Fix, unchecked
from calc.sheets.parts.tank_sizes import gap_words, round_up
from calc.units import HOUR, number_text

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.form import Values
    from calc.sheets.pressure_tank.case import Case
    from calc.units import Reader

FEW_MORE = 1.5  # times the starts allowed, up to which it is borderline; our choice
LOW_CHARGE = 0.6  # of the cut-in pressure, below which the pre-charge is low; our choice
LARGEST = 10.0  # m3, largest pressure tank the form takes; our choice


def starts_now(values: Values, drawdown_m3: float) -> float:
    """Starts a second at the reader's draw (1/s); none where the pump never stops."""
    if values.draw >= values.pump:
        return 0.0
    return storage.starts_rate(drawdown_m3, values.pump, values.draw)


def told(values: Values, case: Case, reader: Reader) -> str:
    """What the tank gives, and how often the pump then starts."""
    gives = reader.show(case.gives, "volume") if case.gives else ""
    if not case.speed:
        worst, allowed = number_text(case.worst * HOUR), f"{values.starts * HOUR:.3g}"
        return f"Drawdown is {gives}: {worst} starts an hour at most, {allowed} allowed."
    if not case.gives:
        return "Speed control holds the pressure without a pressure tank while enough is drawn."
    if values.leak <= 0:
        return f"Drawdown is {gives}, and with no leak nothing starts the pump but an open outlet."
    return f"Drawdown is {gives}: leaks start the pump every {gap_words(1 / case.leaks)}."


def findings(values: Values, case: Case, reader: Reader) -> Iterator[Finding]:
    """``Finding``s from starts, runs and pressures."""
    yield from (_of_speed if case.speed else _of_switch)(values, case, reader)
    if case.gives and case.charge < LOW_CHARGE * values.cutin and case.usual_charge > 0:
        better = reader.show(case.usual_charge, "pressure")
        text = f"The pre-charge is low: at {better} the same tank gives more."
        yield Finding("note", "low-charge", text)
    if case.gives and case.high > practice.TANK_RATING:
        high, usual = (reader.show(p, "pressure") for p in (case.high, practice.TANK_RATING))
        text = f"The tank must be rated for more than {high}; many small ones stop at {usual}."
        yield Finding("care", "rating", text, "harm")


def _of_switch(values: Values, case: Case, reader: Reader) -> Iterator[Finding]:
    if not case.gives:
        text = "Without a pressure tank a switch starts and stops the pump every few seconds."
        yield Finding("stop", "no-tank", text, "cannot")
        return
    allowed = values.starts * (1 + 1e-9)
    if case.worst > allowed:
        text = (
            f"The pump starts {number_text(case.worst * HOUR)} times an hour at most; "
            f"{values.starts * HOUR:.3g} are allowed. Its drawdown is "
            f"{reader.show(case.gives, 'volume')}."
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


def _of_speed(values: Values, case: Case, reader: Reader) -> Iterator[Finding]:
    """A speed control cycles only where less is drawn than the pump's least flow, or it leaks."""
    if values.leak > 0 and not case.gives:
        text = "Without a pressure tank every drip starts the pump."
        yield Finding("care", "leaks", text)
    elif case.leaks > values.starts * (1 + 1e-9):
        text = (
            f"Leaks alone start the pump {number_text(case.leaks * HOUR)} times an hour; "
            f"{values.starts * HOUR:.3g} are allowed."
        )
        yield Finding("care", "leaks", text)
    if values.smallest is None or values.smallest <= 0:
        return
    if values.least is None:
        text = (
            "Whether the pump cycles at your smallest draw is not checked: its least flow must be "
            f"under {reader.show(values.smallest, 'flow')}."
        )
        yield unchecked("least-flow-unchecked", text)
    elif values.smallest < values.least * (1 - 1e-9):
        yield from _cycling(values, case, reader)


def _cycling(values: Values, case: Case, reader: Reader) -> Iterator[Finding]:
    draw, least = (reader.show(q, "flow") for q in (values.smallest, values.least))
    if not case.gives:
        text = f"At {draw} the pump cycles without a pause: its least flow is {least}."
        yield Finding("stop", "least-flow", text)
        return
    rate = storage.starts_rate(case.gives, values.least, values.smallest)
    if rate > values.starts * (1 + 1e-9):
        text = (
            f"At {draw} the pump starts {number_text(rate * HOUR)} times an hour, since its least "
            f"flow is {least}; {values.starts * HOUR:.3g} are allowed."
        )
        yield Finding("care" if rate <= FEW_MORE * values.starts else "stop", "least-flow", text)


def fixes(values: Values, case: Case, reader: Reader) -> Iterator[Fix]:
    """A tank that is large enough, and what else helps."""
    needed = case.asked
    if not case.gives or values.tank < needed * (1 - 1e-9):
        if 0 < needed <= LARGEST:
            yield Fix(f"A pressure tank of {reader.show(needed, 'volume')} is enough.")
        elif needed > LARGEST:
            yield Fix("No single pressure tank is large enough: use several, side by side.")
    if case.speed:
        if case.gives and case.leaks > values.starts * (1 + 1e-9):
            yield Fix("Repair the leak.")
        return
    if not case.gives or case.worst > values.starts * (1 + 1e-9):
        yield Fix("Or use a pump with speed control.")
    if case.gives and case.worst > values.starts * (1 + 1e-9):
        yield Fix("First check the pre-charge, pump off and tank empty: lost air looks the same.")


def cautions(case: Case, reader: Reader) -> tuple[str, ...]:
    """What to look after once a year, and what the tank must carry."""
    if not case.gives:
        return ()
    return (
        "Check the pre-charge once a year, pump off and tank empty. The tank must be rated for "
        f"more than {reader.show(case.high, 'pressure')}; a relief valve opens between that and "
        "the weakest part's rating.",
    )


def links(values: Values, reader: Reader) -> tuple[Link, ...]:
    """Where to go on from a pressure tank."""
    asked = {"pressure": reader.typed(values.cutin, "pressure")}
    if values.draw:
        asked["flow"] = reader.typed(values.draw, "flow")
    return (
        Link("At the cut-in pressure: will it reach?", "reach", asked),
        Link("Water for days without the pump: a storage tank", "tank", {}),
    )
