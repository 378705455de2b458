"""Hot water judged: relief, ratings, room to expand, the pipe, the tap, the store."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from calc import hot_water, practice, water
from calc.page.answer import Link
from calc.page.findings import Finding, unchecked
from calc.sheets.hot_water.case import HAIR
from calc.sheets.parts.carry import exact
from calc.sheets.parts.line_judge import hot_words, kind_name
from calc.sheets.parts.tank_sizes import gap_words, round_up
from calc.units import MET, number_text

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.sheets.hot_water.case import Case
    from calc.units import Reader


def findings(case: Case, reader: Reader) -> tuple[Finding, ...]:
    """All that is wrong, not checked or worth saying."""
    return (
        *_relief(case, reader),
        *_ratings(case, reader),
        *_heat(case, reader),
        *_room(case, reader),
        *_tap(case, reader),
        *_store(case, reader),
        *_wait(case),
    )


# Pressure -------------------------------------------------------------------------------------


def bursts(case: Case) -> bool:
    """Whether nothing at all takes up the growth."""
    return case.closed and not case.relieved and case.tank == 0.0


def _relief(case: Case, reader: Reader) -> Iterator[Finding]:
    """The relief valve: whether there is one, and whether it rests while nothing is wrong."""
    if bursts(case):
        grows = reader.show(case.growth, "volume")
        said = (
            f"With no expansion tank and no relief valve, the {grows} by which the water grows "
            "bursts something."
        )
        yield Finding("stop", "bursts", said, "harm")
    elif not case.relieved and not case.vented:
        said = "This heater has no relief valve: if its thermostat fails, it can explode."
        yield Finding("stop", "no-relief", said, "harm")
    if not case.relieved:
        return
    if case.setting is None:
        most = "the lowest rating"
        if case.lowest is not None:
            most = reader.show(case.lowest, "pressure")
        said = f"Not checked: whether the relief valve opens in time; set to {most} or less passes."
        yield unchecked("heater-relief-unchecked", said)
        return
    yield from _set_close(case, case.setting, reader)
    if case.values.valve == "pressure":
        said = (
            "The relief valve minds pressure only; many codes ask for one that minds the "
            "temperature too."
        )
        yield Finding("note", "pressure-only", said)


def _set_close(case: Case, setting: float, reader: Reader) -> Iterator[Finding]:
    """A static pressure that lifts the relief valve by itself."""
    if case.static * MET >= setting:
        static, opens = reader.apart(case.static, setting, "pressure")
        said = f"The static pressure is {static}: the relief valve, set to {opens}, never closes."
        if static == opens:
            said = f"The static pressure of {static} holds the relief valve open."
        yield Finding("stop", "relief-runs", said, "cannot")
    elif case.static > practice.RELIEF_SEEPS * setting * MET:
        static, opens = reader.apart(case.static, setting, "pressure")
        said = f"The static pressure of {static} is so near the relief valve's {opens} that it "
        yield Finding("care", "relief-near", f"{said}may drip all the time.")


def _ratings(case: Case, reader: Reader) -> Iterator[Finding]:
    """What the parts are rated for, against the highest pressure there can be."""
    if case.lowest is not None:
        for value, said in (
            (case.static, "The static pressure is {}"),
            (case.setting, "The relief valve opens only at {}"),
            (_unrelieved(case), "Heating raises the pressure to {}"),
        ):
            if value is not None and value > case.lowest * MET:
                shown, rated = reader.apart(value, case.lowest, "pressure")
                text = f"{said.format(shown)}, but {_lowest_part(case, rated, reader)}."
                yield Finding("stop", "over-rating", text, "harm")
                break
    if case.values.weakest is None or case.pipe.rating_pa is None:
        part = "every part" if case.values.weakest is None else "the pipe"
        most = case.setting or case.highest or case.static
        said = (
            f"Not checked: the rating of {part}; {reader.show(most, 'pressure')} or more at "
            f"{reader.show(case.heat, 'temperature')} passes."
        )
        yield unchecked("rating-unchecked", said)


def _lowest_part(case: Case, rated: str, reader: Reader) -> str:
    """What is rated least, and how much: a pipe's rating is for its heat."""
    if not case.pipe_is_lowest:
        return f"the weakest part is rated {rated}"
    heat = reader.show(case.heat, "temperature")
    return f"the pipe ({kind_name(case.pipe)}) is rated {rated} at {heat}"


def _unrelieved(case: Case) -> float | None:
    """Pressure when hot where no relief valve ends it, and a tank should."""
    return case.reached if not case.relieved and not bursts(case) else None


def _heat(case: Case, reader: Reader) -> Iterator[Finding]:
    if case.too_hot:
        named = f"The hot pipe ({kind_name(case.pipe)})"
        said = hot_words(case.pipe, case.heat, reader, named)
        yield Finding("stop", "too-hot", said, "harm")


def _room(case: Case, reader: Reader) -> Iterator[Finding]:
    """Whether an expansion tank takes up the growth before the relief valve drips."""
    if not case.closed or bursts(case):
        return
    grows = reader.show(case.growth, "volume")
    if case.tank == 0.0:
        said = (
            f"Each time it heats, the water grows by {grows} and has no room: the relief valve "
            "drips."
        )
        yield Finding("care", "no-room", said)
        return
    if case.reached is None:
        yield unchecked("tank-unchecked", _would_pass(case, reader))
        return
    limit = case.limit
    if limit is not None and case.static < limit and case.reached > limit * MET and case.relieved:
        yield Finding("care", "tank-small", _small(case, limit, reader))
    elif case.charge is not None and case.charge > case.static * MET:
        charge, static = reader.apart(case.charge, case.static, "pressure")
        said = (
            f"The tank's pre-charge of {charge} is above the static {static}: it takes nothing "
            "until then."
        )
        yield Finding("note", "charge-high", said)


def _would_pass(case: Case, reader: Reader) -> str:
    charged = reader.show(case.static, "pressure")
    if case.needed is None or math.isinf(case.needed):
        return "Not checked: whether the expansion tank is enough; its numbers are not known."
    size = reader.show(round_up(case.needed, "volume", reader), "volume")
    return (
        f"Not checked: whether the expansion tank is enough; {size} or more, pre-charged to "
        f"{charged}, passes."
    )


def _small(case: Case, limit: float, reader: Reader) -> str:
    """That the tank which is there takes up too little, in words."""
    size = reader.show(case.tank or 0.0, "volume")
    if case.reached is None or case.reached >= case.locked:
        return (
            f"The expansion tank of {size} is full before the water is hot: then the relief "
            "valve drips."
        )
    hot, most = reader.apart(case.reached, limit, "pressure")
    opens = "the relief valve may drip" if case.setting is not None else "a part is over its rating"
    return f"With its tank of {size} the pressure rises to {hot}; from {most} on {opens}."


# Water at the tap ------------------------------------------------------------------------------


def burns_in(hot: float) -> str:
    """How long water of a temperature (K) takes to burn an adult's skin, in words."""
    points = practice.SCALDS
    if hot < points[0][0]:
        return "more than 5 minutes"
    if hot > points[-1][0]:
        return "less than a second"
    seconds = hot_water.scald_time(hot)
    if seconds < 60:
        return f"about {number_text(seconds, 1)} s"
    return f"about {number_text(seconds / 60, 1)} min"


def _tap(case: Case, reader: Reader) -> Iterator[Finding]:
    """Scalding, and a mixing valve that mixes nothing."""
    usual = reader.show(practice.SCALDS_ABOVE, "temperature")
    if case.at_tap is None:
        said = f"Not checked: how hot the tap runs; a mixing valve set to {usual} or less passes."
        yield unchecked("mix-unchecked", said)
        return
    if case.at_tap > practice.SCALDS_ABOVE + HAIR:
        hot, most = reader.apart(case.at_tap, practice.SCALDS_ABOVE, "temperature")
        by = "The mixing valve lets" if case.mixed else "With no mixing valve the tap gives"
        through = " through" if case.mixed else ""
        said = (
            f"{by} {hot}{through}, above {most}: it burns skin in {burns_in(case.at_tap)}, "
            "a child's sooner."
        )
        yield Finding("care", "scald", said, "harm")
    elif case.values.set is not None and case.values.set >= case.stored:
        said = "The mixing valve is set no lower than the store: it lets hot water through as it is"
        yield Finding("note", "mix-idle", f"{said}.")


def _store(case: Case, reader: Reader) -> Iterator[Finding]:
    """Legionella in a lukewarm store; boiling in an open one."""
    stored = reader.show(case.stored, "temperature")
    asked = reader.show(practice.STORED_HOT, "temperature")
    if case.stored < practice.LUKEWARM_TO - HAIR:
        said = f"Stored at {stored}, water can grow legionella; codes commonly ask for {asked}."
        yield Finding("care", "lukewarm", said, "harm")
    elif case.stored < practice.STORED_HOT - HAIR:
        said = f"Stored at {stored}, legionella lives on; codes commonly ask for {asked}."
        yield Finding("note", "store-cool", said)
    if case.vented and water.vapour_pressure(case.stored) >= case.air:
        boils = reader.show(water.boiling_temperature(case.air), "temperature")
        said = f"At this height water boils at {boils}, and an open system cannot be hotter."
        yield Finding("stop", "boils", said, "cannot")


def _wait(case: Case) -> Iterator[Finding]:
    if case.wait > practice.HOT_WITHIN * MET:
        said = (
            f"The tap runs for {gap_words(case.wait)} before it is hot; within a minute is "
            "commonly asked."
        )
        yield Finding("note", "slow", said)


# Around it -------------------------------------------------------------------------------------


def told(case: Case, reader: Reader) -> str:
    """What the water does, where nothing is wrong."""
    grows, static = reader.show(case.growth, "volume"), reader.show(case.static, "pressure")
    if case.vented:
        return f"The water grows by {grows} and goes up into its open tank."
    if not case.closed:
        return f"The water grows by {grows} and pushes back; the pressure stays at {static}."
    if case.highest is None:
        return f"The water grows by {grows} each time it is heated."
    hot = reader.show(case.highest, "pressure")
    if case.setting is None:
        return f"The water grows by {grows}; the pressure rises from {static} to {hot}."
    opens = reader.show(case.setting, "pressure")
    return (
        f"The water grows by {grows}; the pressure rises from {static} to {hot}, and the relief "
        f"valve opens at {opens}."
    )


def cautions(case: Case, reader: Reader) -> tuple[str, ...]:
    """Advice for these numbers."""
    found = []
    if case.closed and case.tank != 0.0:
        found.append(
            "Use an expansion tank made for drinking water, on the cold side, with no valve "
            "between it and the heater. Check its pre-charge once a year, with the water let out."
        )
    if not case.closed and not case.vented:
        found.append(
            "A check valve, reducing valve or backflow preventer fitted later closes the cold "
            "pipe: an expansion tank is then needed."
        )
    if case.vented:
        found.append("Never close or narrow the vent pipe, and keep it from freezing.")
    if case.values.mix == "heater":
        found.append(
            "Mixed at the heater, lukewarm water stays in the pipe, where legionella can grow. "
            "Keep that pipe short, and run it hot now and then."
        )
    if case.mixed:
        found.append(
            "Check the mixing valve once a year with a thermometer, and clean its strainer."
        )
    metre = reader.show(1.0, "length", 2)
    found.append(
        f"A heater that fails gets hotter than its thermostat: use metal for the first {metre}, "
        "and for the pipe of its relief valve."
    )
    return tuple(found)


def links(case: Case, reader: Reader) -> tuple[Link, ...]:
    """Where to go on from hot water."""
    pipe = {
        "flow": exact(case.values.flow, "flow", reader),
        "length": exact(max(case.values.length, 0.5), "length", reader),
        "water": exact(case.stored, "temperature", reader),
        "hottest": exact(case.heat, "temperature", reader),
    }
    if case.pipe.kind != "own":
        pipe["kind"] = case.pipe.kind
    return (
        Link("What size of hot pipe", "pipe", pipe),
        Link("The pressure tank that takes the water up", "pressure_tank", {}),
    )
