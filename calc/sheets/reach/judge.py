"""Whether the water reaches, what is wrong, and where to go on."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.page.answer import Link
from calc.page.findings import Finding, unchecked
from calc.pipe import pipes
from calc.sheets.parts.carry import exact
from calc.sheets.parts.line_judge import line_findings, too_hot
from calc.sheets.parts.line_rows import as_text, line_texts

if TYPE_CHECKING:
    from calc.page.form import Values
    from calc.sheets.reach.case import Case
    from calc.units import Reader

LEAST_FLOW, SHORTEST = 1e-6, 0.5  # m3/s, m: what the next sheets take
LEAST_SET = 1e3  # Pa, the same


def findings(case: Case, reader: Reader) -> tuple[Finding, ...]:
    """What is found: of the line, then of the pump."""
    return (*line_findings(case.line, case.need, reader), *_pump(case, reader))


def _pump(case: Case, reader: Reader) -> list[Finding]:
    if not case.pumped or case.need.flow_m3s == 0:
        return []
    if case.most is None:
        flow = reader.show(case.need.flow_m3s, "flow")
        said = (
            f"The pump's maximum flow is not known, so it is not checked: {flow} or more at this "
            "pressure would pass."
        )
        return [unchecked("unchecked-pump-most", said)]
    if case.asks_too_much:
        most, asked = reader.apart(case.most or 0.0, case.need.flow_m3s, "flow")
        said = f"The pump gives {most} at most at this pressure; you ask for {asked}."
        return [Finding("stop", "pump-most", said, "cannot")]
    return []


def told(case: Case, reader: Reader) -> str:
    """The facts in one sentence."""
    flow, needed = case.need.flow_m3s, reader.show(case.need.works_pa, "pressure")
    left = reader.show(case.line.left(flow), "pressure")
    if flow == 0:
        return f"You get {left} at the outlet with no flow; you need {needed}."
    return (
        f"You get {left} at the outlet with {reader.show(flow, 'flow')} flowing; you need {needed}."
    )


def given(case: Case, values: Values, reader: Reader) -> dict[str, str]:
    """Every text of the form as it now is, for a link to the same sheet."""
    texts = shared(case, values, reader) | {
        "pressure": exact(values.pressure, "pressure", reader),
        "use": values.use,
        "most": exact(values.most, "flow", reader) or "?",
        "extra": exact(values.extra, "percent", reader),
        "hottest": exact(values.hottest, "temperature", reader),
        "lowest": exact(values.lowest, "length", reader),
        "highest": exact(values.highest, "length", reader),
    }
    if values.use == "own":
        texts["wanted"] = exact(values.wanted, "pressure", reader)
    if values.kind == "own" and not case.counted:
        texts |= {"bore": exact(values.bore, "diameter", reader), "inside": values.inside}
    return texts


def shared(case: Case, values: Values, reader: Reader) -> dict[str, str]:
    """The texts that other sheets of one line have too."""
    counted = case.line.sections if case.counted else ()
    texts = line_texts(values, reader) | {"line": as_text(counted, reader)}
    if case.counted:
        return texts
    texts["kind"] = values.kind
    if values.kind in pipes.KINDS:
        texts[values.kind] = values.numbers[values.kind]
    return texts


def links(case: Case, values: Values, reader: Reader) -> tuple[Link, ...]:
    """Where to go on, with every number the other sheet asks for too."""
    every = shared(case, values, reader)
    sizes = {"kind", *pipes.KINDS}
    wanted = {"wanted": exact(case.need.works_pa, "pressure", reader)}
    pressure = exact(values.pressure, "pressure", reader)
    found = []
    if values.flow >= LEAST_FLOW and values.length >= SHORTEST:
        texts = {key: text for key, text in every.items() if key not in sizes} | wanted
        texts |= {
            "pressure": pressure,
            "lowest": exact(values.lowest, "length", reader),
            "crest": exact(values.highest, "length", reader),
        }
        if values.hottest is not None:
            texts["hottest"] = exact(values.hottest, "temperature", reader)
        if values.kind in pipes.KINDS and not case.counted:
            texts["kind"] = values.kind
        found.append(Link("Every pipe size for this line", "pipe", texts))
    fit = not any(too_hot(case.line, one.pipe) for one in case.line.sections)
    if values.flow >= LEAST_FLOW and fit:
        texts = every | wanted | {"extra": exact(values.extra, "percent", reader)}
        if values.pressure >= LEAST_SET:
            texts["set"] = pressure
        if values.kind == "own" and not case.counted:
            texts |= {"bore": exact(values.bore, "diameter", reader), "inside": values.inside}
        found.append(Link("Which pump suits this pipe", "pump_match", texts))
    return (*found, Link("Count the flow from showers, hoses and people", "demand", {}))
