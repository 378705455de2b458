"""What is worth saying of a count, the sentence told, and where to go on."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import demand, practice
from calc.page.answer import Link
from calc.page.findings import Finding, unchecked
from calc.sheets.demand.case import SAME
from calc.units import number_text

if TYPE_CHECKING:
    from calc.sheets.demand.case import Case
    from calc.units import Reader

BEDS_MOST = 0.5  # of the day: garden beds that take more are said to take most; our choice
ALWAYS = 0.995  # of the moments, from which 100 of 100 would be printed
MOST_FLOW, MOST_DAILY = 0.0499, 0.00999  # m3/s, just under what the sheets linked to take
CATTLE = ("cattle", "nursing", "dairy")


def told(case: Case, reader: Reader) -> str:
    """The flow to plan for, the water of a day, and what decides the flow."""
    flow, day = reader.show(case.plan, "flow"), reader.show(case.daily, "daily")
    start = f"Plan for {flow} at once and {day}"
    if case.list_decides:
        return f"{start}; your list of what is open together decides."
    return f"{start}; with these outlets chance asks for more than your list."


def findings(case: Case, reader: Reader) -> tuple[Finding, ...]:
    """Nothing here is wrong; without an outlet there is no flow to plan for."""
    if case.plan == 0:
        day = reader.show(case.daily, "daily")
        said = f"No outlet is named yet, so there is no flow to plan for; the day takes {day}."
        return (unchecked("no-outlets", said), *_beds(case, reader))
    return (
        *_short(case, reader),
        *_counted(case),
        *_small_pump(case, reader),
        *_hose(case, reader),
        *_beds(case, reader),
    )


def _short(case: Case, reader: Reader) -> list[Finding]:
    listed = reader.show(case.listed, "flow")
    found = []
    if not case.list_decides:
        often = _often(case.more(case.listed) / (1 - case.dry))
        said = f"Your list comes to {listed}, but more is drawn in {often} when water runs."
        found.append(Finding("note", "list-short", said))
    if case.study * (1 - SAME) > case.plan:
        more = reader.show(case.study, "flow")
        said = (
            f"Counting only moments when water runs, the Peak Water Demand Study asks for {more}; "
            "plan that to be on the safe side."
        )
        found.append(Finding("note", "study-more", said))
    return found


def _often(share: float) -> str:
    """In how many moments, as words."""
    if share >= ALWAYS:
        return "every moment" if share >= 1 - 1e-9 else "nearly every moment"
    return f"{number_text(share * 100, 2)} of 100 moments"


def _counted(case: Case) -> list[Finding]:
    short = [f.name for f in demand.FIXTURES if case.taps[f.key][0] > case.there[f.key]]
    if not short:
        return []
    said = (
        f"{' and '.join(short)}: you named more as open than you have, so those named are counted."
    )
    return [Finding("note", "counted", said)]


def _small_pump(case: Case, reader: Reader) -> list[Finding]:
    if case.plan <= practice.SMALL_PUMP * 1.001:
        return []
    most = reader.show(practice.SMALL_PUMP, "flow")
    said = (
        f"Small diaphragm pumps give {most} at most: use a larger pump, a hill tank, or one outlet "
        "at a time."
    )
    return [Finding("note", "small-pump", said)]


def _hose(case: Case, reader: Reader) -> list[Finding]:
    hose = case.named["hose"] * case.taps["hose"][1]
    if not hose or not case.list_decides:
        return []
    without = reader.show(case.listed - hose, "flow")
    said = f"Without the hose your list is {without}: water by drip, or when nobody showers."
    return [Finding("note", "hose", said)]


def _beds(case: Case, reader: Reader) -> list[Finding]:
    beds = case.parts["Garden beds"]
    if beds <= BEDS_MOST * case.daily:
        return []
    said = (
        f"The garden beds take most of the day's water, {reader.show(beds, 'daily')}; water them "
        "at dawn, when no one showers."
    )
    return [Finding("note", "beds", said)]


def cautions(case: Case, reader: Reader) -> tuple[str, ...]:
    """Standing advice that belongs to these numbers."""
    found = []
    if any(case.animals[key] for key in CATTLE):
        most = reader.show(practice.HEAT_CATTLE, "daily", 2)
        found.append(f"In hot weather cattle can drink up to {most} each (extension handbooks).")
    return tuple(found)


def links(case: Case, reader: Reader) -> tuple[Link, ...]:
    """On with the flow and with the water of a day."""
    found = []
    if 0 < case.plan <= MOST_FLOW:
        flow = reader.typed(case.plan, "flow")
        found.append(Link("With this flow: will it reach?", "reach", {"flow": flow}))
        found.append(Link("With this flow: what pipe?", "pipe", {"flow": flow}))
        found.append(Link("With this flow: a pressure tank?", "pressure_tank", {"draw": flow}))
    if 0 < case.daily <= MOST_DAILY:
        use = reader.typed(case.daily, "daily")
        found.append(Link("With this water a day: how big a tank?", "tank", {"use": use}))
    return tuple(found)
