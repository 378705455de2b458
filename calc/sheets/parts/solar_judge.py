"""What is found of panels and battery over the dullest of a place's years, for both sheets."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.page.findings import Finding
from calc.power.battery import YEAR
from calc.power.service import DAYS
from calc.units import DAY, HOUR

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.sheets.parts.solar_case import Case
    from calc.sheets.parts.sun_case import SunCase
    from calc.units import Reader

SHORT_LIFE = 3.0  # years, a battery that wears out sooner is worth saying; our choice
MUCH = 0.6  # of the sun that finds no use: fewer panels might do; our choice


def parts(case: Case, reader: Reader) -> str:
    """Panels and battery in words."""
    panels = case.system.array.count
    watts = reader.show(case.system.array.module.rated_w, "power")
    energy = reader.show(case.system.battery.energy_j, "energy")
    some = "One panel" if panels == 1 else f"{panels} panels"
    return f"{some} of {watts} and a battery of {energy}"


def days_served(case: SunCase) -> str:
    """How many days of the year are served: "every day", "all but 2 days"."""
    short = case.served.short_days
    return "every day" if short == 0 else f"all but {count(short, 'day')}"


def count(number: int, name: str) -> str:
    """A count with its name: "1 day", "3 days"."""
    return f"{number} {name}{'' if number == 1 else 's'}"


def digits(number: float) -> int:
    """Figures with which a whole number is shown whole."""
    return max(1, len(f"{number:.0f}"))


def findings(case: Case, reader: Reader) -> tuple[Finding, ...]:
    """Everything found."""
    return (
        *_too_slow(case, reader),
        *short_days(case),
        *_life(case),
        *_frost(case),
        *_unused(case),
        *no_file(case),
    )


def busiest(case: Case) -> float:
    """m3/s asked in the busiest hour of the busiest month."""
    return case.daily * max(case.demand.shares) / HOUR


def _too_slow(case: Case, reader: Reader) -> Iterator[Finding]:
    """A pump too slow for the busiest hour, or for the day: no panel helps that."""
    gives = case.system.pump.flow_m3s
    if case.daily > gives * DAY * (1 + 1e-9):
        most, asked = reader.apart(gives * DAY, case.daily, "volume")
        text = f"The pump gives {most} in 24 hours; a day asks for {asked}."
        yield Finding("stop", "too-slow", text, "cannot")
    elif case.system.tank_m3 <= 0 and busiest(case) > gives * (1 + 1e-9):
        most, asked = reader.apart(gives, busiest(case), "flow")
        text = f"The busiest hour asks for {asked}; the pump gives {most}, and no tank helps it."
        yield Finding("stop", "too-slow", text, "cannot")


def short_days(case: SunCase) -> Iterator[Finding]:
    """More days with too little water than may be."""
    if not case.meets:
        short = case.served.short_days
        allowed = "none" if case.most == 0 else str(case.most)
        text = f"Too little water on {count(short, 'day')} of {case.years}; you allow {allowed}."
        yield Finding("stop", "short-days", text)


def lasts(case: Case) -> float:
    """Years until the battery is replaced."""
    return case.year.lasts / YEAR


def _life(case: Case) -> Iterator[Finding]:
    if lasts(case) < SHORT_LIFE:
        text = f"The battery wears out in about {lasts(case):.1f} years: it is drawn too deep."
        yield Finding("care", "battery-life", text)


def frosty_days(case: Case) -> int:
    """Days of the year on which frost keeps the battery from being charged for an hour or more."""
    above, air = case.system.battery.of.charge_above, case.weather.air_k
    return sum(min(air[24 * day : 24 * day + 24]) < above for day in range(DAYS))


def _frost(case: Case) -> Iterator[Finding]:
    days = frosty_days(case)
    if days:
        text = (
            f"On {count(days, 'day')} of the year the battery may be too cold to charge: "
            "keep it above freezing."
        )
        yield Finding("care", "frost", text)


def _unused(case: Case) -> Iterator[Finding]:
    year = case.year
    if year.array > 0 and year.spilled > MUCH * year.array and case.meets:
        share = round(100 * year.spilled / year.array)
        text = (
            f"{share} % of the sun’s energy finds no use over the year; dull weeks need the rest."
        )
        yield Finding("note", "unused", text)


def no_file(case: SunCase) -> Iterator[Finding]:
    """An hourly file that is asked for and not open."""
    if case.values.weather == "file" and case.place.count > 1:
        text = "The hourly file is not here: the year is made of its monthly means instead."
        yield Finding("note", "no-file", text)


def cold_caution(case: SunCase, reader: Reader) -> str:
    """What the panels' voltage may do."""
    volts = reader.show(case.cold_v, "voltage")
    return (
        f"In the cold the panels reach {volts}: it can kill. Leave the wiring to a licensed person."
    )


def cautions(case: Case, reader: Reader) -> tuple[str, ...]:
    """What belongs to these numbers."""
    said = [cold_caution(case, reader)]
    if case.system.battery.kind == "flooded":
        said.append(
            "This battery gives off explosive gas: ventilate it, no flame or spark near it."
        )
    if case.system.backup and case.values.backup == "generator":
        said.append("A generator’s exhaust kills: run it outdoors, far from windows.")
    return tuple(said)


def made_of(case: SunCase) -> str:
    """Where the year comes from that decides, as a sentence of the working."""
    if case.place.count == 1:
        return "The year is that of the hourly file."
    return (
        "Twenty years of days are made from the twelve months, with runs of dull weather; the one "
        "with the dullest thirty days for this use decides."
    )


def source_of(case: SunCase) -> str:
    """The source of its days, to follow others."""
    return "; days: Bendt et al. (1981), Graham et al. (1988)" if case.place.count > 1 else ""


def closes(gap: float) -> str:
    """How well a balance closes, in words; its last digits are rounding, and differ by device.

    >>> closes(-2e-16), closes(3e-6)
    ('to a billionth', 'to 3e-06')
    """
    return "to a billionth" if abs(gap) < 1e-9 else f"to {abs(gap):.0e}"
