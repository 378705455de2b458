"""What is found of a pump that runs on the sun alone, and what the sheet says."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.page.answer import Link
from calc.page.findings import Finding
from calc.power.array import RATED_SUN
from calc.sheets.parts.solar_judge import cold_caution, days_served, no_file, short_days

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.sheets.direct.case import Case
    from calc.units import Reader

DIM = 700.0  # W/m2, a pump that needs more to start runs on few hours; our choice


def told(case: Case, reader: Reader) -> str:
    """What panels and tank do, where nothing is wrong."""
    panels, tank = case.array.count, reader.show(case.tank, "volume")
    some, s = ("One panel", "s") if panels == 1 else (f"{panels} panels", "")
    days = days_served(case)
    return f"{some} pump{s} straight into a tank of {tank} and serve{s} {days} of {case.years}."


def findings(case: Case, reader: Reader) -> tuple[Finding, ...]:
    """Everything found."""
    return (*_never(case, reader), *short_days(case), *_dim(case), *no_file(case))


def _never(case: Case, reader: Reader) -> Iterator[Finding]:
    if case.starts_at >= RATED_SUN:
        needs, has = reader.apart(case.made.starts_w, case.full_power, "power")
        text = f"The pump needs {needs} before water comes; these panels give {has} in full sun."
        yield Finding("stop", "never-starts", text, "cannot")


def _dim(case: Case) -> Iterator[Finding]:
    if DIM < case.starts_at < RATED_SUN:
        share = round(case.starts_at / RATED_SUN * 100)
        text = f"Water comes only from {share} % of full sun: more panels would start it earlier."
        yield Finding("care", "dim", text)


def cautions(case: Case, reader: Reader) -> tuple[str, ...]:
    """What belongs to these numbers."""
    mass = reader.show(case.tank * 1000, "mass")  # 1000 kg/m3
    return (
        cold_caution(case, reader),
        f"The water in a full tank weighs {mass}: it needs level, firm ground.",
    )


def links() -> tuple[Link, ...]:
    """Where to go on."""
    return (
        Link("With a battery instead", "panels", {}),
        Link("How big a tank", "tank", {}),
        Link("Which cable", "cable", {}),
        Link("Does the pump suit this pipe?", "pump_match", {}),
        Link("The pressure this height gives", "pressure", {}),
    )
