"""Figures, working, tables and chart of the keep_up sheet."""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc import practice
from calc.network.parts import Device, PumpSet, Reducer, Run
from calc.network.state import SEEPING, STILL
from calc.network.way import largest_loss
from calc.page.answer import Chart, Column, Figure, Series, Step, Table, Value
from calc.pipe import friction
from calc.sheets.keep_up import show_fall
from calc.sheets.keep_up.cause import between
from calc.site.supply import PUMP, PUMP_PART, SUCTION
from calc.units import GRAVITY

if TYPE_CHECKING:
    from collections.abc import Sequence

    from calc.network.parts import Link
    from calc.network.state import OutletState
    from calc.sheets.keep_up.case import Case, Tap
    from calc.sheets.keep_up.fixes import Change
    from calc.site.supply_rows import Source
    from calc.units import Reader

CHART_POINTS = 25
MOST_STEPS = 12  # runs whose working is shown in full, our choice
G = Value(GRAVITY, "number", 6)


def figures(case: Case) -> tuple[Figure, ...]:
    """The worst off outlet before and after, and the pump."""
    tap, total = case.main, sum(case.after.draws.values())
    found = [Figure("Flow of everything open", total, "flow")]
    found += show_fall.figures(case) if case.supply.pumping is None else _pump_figures(case)
    if tap is None:
        return tuple(found)
    was = (_least(tap.before), tap.before.flow_m3s) if tap.before.open else (None, None)
    pressure, flow = (f"{what} at {tap.name}" for what in ("Pressure", "Flow"))
    return (
        Figure(pressure, _least(tap.after), "pressure", main=True, note=_was(tap), was=was[0]),
        Figure(flow, tap.after.flow_m3s, "flow", main=True, was=was[1]),
        *found,
    )


def _pump_figures(case: Case) -> list[Figure]:
    speed = case.after.pump(PUMP_PART).speed
    found = [Figure("Pressure at the pump", case.after.pressure(PUMP), "pressure")]
    if speed is not None:
        found.append(Figure("Pump speed", speed, "percent", 2, note="of full"))
    return found


def _least(state: OutletState) -> float:
    return max(0.0, state.pressure_pa)


def _flow(state: OutletState) -> float | None:
    return state.flow_m3s if state.open else None


def _was(tap: Tap) -> str:
    return f"open: {tap.row.before} before, {tap.row.after} after"


# Tables ---------------------------------------------------------------------------------------


def outlets(case: Case) -> Table:
    """Every outlet before and after."""
    rows = []
    for tap in case.taps:
        rows.append(
            (
                tap.name,
                _said(tap),
                (_least(tap.before), _least(tap.after)),
                tap.after.wanted_pa,
                (_flow(tap.before), _flow(tap.after)),
                f"{tap.row.before} → {tap.row.after}",
            )
        )
    columns = (
        Column("Outlet"),
        Column("After"),
        Column("Pressure", "pressure"),
        Column("Needed", "pressure"),
        Column("Flow", "flow"),
        Column("Open"),
    )
    short = set(case.short)
    return Table(
        "Every outlet before and after",
        columns,
        tuple(rows),
        marked=tuple(i for i, tap in enumerate(case.taps) if tap.name in short),
        dimmed=tuple(i for i, tap in enumerate(case.taps) if not tap.row.after),
        note="Before → after. Pressures are running pressures at the point; the flow is that of "
        "all open there.",
    )


def _said(tap: Tap) -> str:
    if not tap.after.open:
        return "closed"
    return {"stop": "too little", "care": "only just enough"}.get(tap.level, "enough")


def pipes_table(case: Case) -> Table:
    """Every pipe, filter and reducer before and after."""
    rows, taken = [], None
    for link in case.after.network.links:
        if isinstance(link, PumpSet):
            continue
        before, flow = (_seen(one.flows[link.name]) for one in (case.before, case.after))
        speed = bore = None
        if isinstance(link, Run):
            bore = link.pipe.label
            speed = friction.velocity(abs(flow), link.pipe.inside_m)
        name = link.name[0].upper() + link.name[1:]
        if link.name in case.built.section_rows:
            name = link.name
        loss = abs(case.after.loss(link.name)) * case.weight
        rows.append((name, bore, (before, flow), speed, loss))
    if case.main is not None:
        names = [link.name for link in case.after.network.links if not isinstance(link, PumpSet)]
        most = largest_loss(case.after, [link.name for link in case.way])
        taken = names.index(most) if most in names else None
    columns = (
        Column("Pipe section"),
        Column("Pipe"),
        Column("Flow before → after", "flow"),
        Column("Water speed after", "speed"),
        Column("Pressure loss after", "pressure"),
    )
    return Table(
        "Every pipe",
        columns,
        tuple(rows),
        marked=() if taken is None else (taken,),
        note="A minus sign: the water runs the other way. Marked: the largest loss on the way to "
        "the weakest outlet.",
    )


def _seen(flow: float) -> float:
    """No flow where it is only what the solver lets seep past a shut valve."""
    return flow if abs(flow) > SEEPING else 0.0


def changes_table(case: Case, changes: Sequence[Change]) -> Table:
    """What was tried, in the order of its usual cost."""
    tap = case.main
    rows = [("as it is", _least(tap.after), "")]
    for change in changes:
        others = change.case.short
        said = "enough" if change.fixes else "not enough"
        said = f"not enough at {others[0]}" if others and not change.fixes else said
        rows.append((change.option.text, max(0.0, change.pressure(tap.name)), said))
    columns = (Column("Change"), Column(f"{tap.name} then", "pressure"), Column("Result"))
    marked = tuple(i for i, change in enumerate(changes, 1) if change.fixes)
    return Table(
        "Possible fixes",
        columns,
        tuple(rows),
        marked=marked,
        note="Each fix alone, the whole supply solved again, usually cheapest first (our "
        "estimate).",
    )


# Chart ----------------------------------------------------------------------------------------


def charts(case: Case, reader: Reader) -> tuple[Chart, ...]:
    """Where the pump runs; without one the pressure line."""
    source = case.supply.pumping
    return show_fall.chart(case, reader) if source is None else (_pump(case, source, reader),)


def _pump(case: Case, source: Source, reader: Reader) -> Chart:
    """The pump's curve as pressure at its outlet, and where it runs before and after."""
    pump = source.pump
    weight, suction_flow = case.weight, case.after.flows[SUCTION]
    square = case.after.loss(SUCTION) / suction_flow**2 if suction_flow > STILL else 0.0
    flows = tuple(pump.largest_flow * i / (CHART_POINTS - 1) for i in range(CHART_POINTS))
    most = tuple(weight * (pump.head_at(q) - source.lift_m - square * q * q) for q in flows)
    marks = []
    for solution, word in ((case.before, "before"), (case.after, "after")):
        flow = solution.flows[PUMP_PART]
        marks.append((flow if abs(flow) > STILL else 0.0, solution.pressure(PUMP), word))
    if abs(marks[0][0] - marks[1][0]) < 0.04 * flows[-1]:
        marks = [(*marks[1][:2], "before and after")]
    levels: tuple[tuple[float, str], ...] = ()
    if source.set_pa is not None:
        levels = ((source.set_pa, "set at the sensor" if source.sensed_m else "set pressure"),)
    at = [f"{reader.show(q, 'flow')} at {reader.show(p, 'pressure')}" for q, p, _ in marks]
    return Chart(
        "pump",
        "Where the pump runs",
        f"Pressure at the pump at full speed against flow. It runs at {' and then '.join(at)}.",
        "Flow",
        "flow",
        "Pressure at the pump",
        "pressure",
        (Series("Full speed", flows, most),),
        marks=tuple(marks),
        levels=levels,
    )


# Working --------------------------------------------------------------------------------------


def steps(case: Case) -> tuple[Step, ...]:
    """From the water to the weakest outlet, after: every loss, the pressure, the flow."""
    total = sum(case.after.draws.values())
    listed = [n for n in case.after.draws.values() if n > STILL][:20]
    found = [_continuity(listed, total)] if len(listed) > 1 else []
    if case.main is None:
        note = "Nothing is open, so nothing flows and nothing is lost on the way."
        still = show_fall.standing(case) if case.supply.pumping is None else _standing(case)
        return (*found, Step("No flow", note=note), still)
    shown = [link for link in case.way if case.after.flows[link.name] > STILL][:MOST_STEPS]
    for link in shown:
        found += _of_link(case, link)
    found += [_pressure(case), *_outlet(case)]
    note = (
        "The flows of all outlets and pipes depend on each other: they are found together, so that "
        "the flows into and out of every point agree. The steps above show one way through the "
        "result."
    )
    found.append(Step("All at once", note=note, source="Newton’s method on the heads"))
    return tuple(found)


def _continuity(flows: Sequence[float], total: float) -> Step:
    names = [f"Q_{i}" for i in range(1, len(flows) + 1)]
    given = {name: Value(flow, "flow", 4) for name, flow in zip(names, flows, strict=True)}
    formula = f"Q = {' + '.join(names)}"
    return Step("What runs out of all open outlets", formula, given, Value(total, "flow", 4))


def _standing(case: Case) -> Step:
    head = case.after.heads[PUMP]
    return Step(
        "Pressure at the pump",
        "p = w * (H - z)",
        {"w": Value(case.weight, "number", 6), "H": Value(head, "head"), "z": Value(0.0, "head")},
        Value(case.after.pressure(PUMP), "pressure"),
        note="w is the weight of water, Pa per metre; H is the head above the pump.",
    )


def _of_link(case: Case, link: Link) -> list[Step]:
    flow, loss = case.after.flows[link.name], case.after.loss(link.name)
    if isinstance(link, Run):
        return _of_run(case, link, flow, loss)
    if isinstance(link, PumpSet):
        return [_of_pump(case, link, flow)]
    if isinstance(link, Device):
        given = {
            "h_r": Value(link.loss_m, "head", 4),
            "Q": Value(flow, "flow", 6),
            "Q_r": Value(link.flow_m3s, "flow"),
        }
        return [
            Step(
                f"Loss in {link.name}",
                "h = h_r * (Q / Q_r)**2",
                given,
                Value(link.loss_m * (flow / link.flow_m3s) ** 2, "head"),
                source="loss of a cartridge filter: common practice, no source",
            )
        ]
    if isinstance(link, Reducer) and link.vented:
        note = "Its float valve lets in what runs on. Behind it pressure begins again from nothing."
        return [Step(f"Drop in {link.name}", note=note, result=Value(loss, "head"))]
    if isinstance(link, Reducer):
        note = "It holds its set pressure at its outlet as long as more than that comes to it."
        return [Step(f"Loss in {link.name}", note=note, result=Value(loss, "head"))]
    raise TypeError(f"{link!r} has no working.")


def _of_run(case: Case, link: Run, flow: float, loss: float) -> list[Step]:
    bore, name = link.pipe.inside_m, between(link.name)
    speed = friction.velocity(flow, bore)
    reynolds = friction.reynolds(speed, bore, case.after.network.viscosity)
    kinetic = speed**2 / (2 * GRAVITY)
    # the solver's own factor: Colebrook's, or the straight bridge between 2040 and 4000
    factor = (loss - link.k * kinetic) / (link.length_m / bore * kinetic)
    number = Value(reynolds, "number", 4)
    return [
        Step(
            f"Water speed in {name}",
            "v = Q / (pi / 4 * D**2)",
            {"Q": Value(flow, "flow", 4), "D": Value(bore, "diameter", 4)},
            Value(speed, "speed"),
            note=link.pipe.label,
        ),
        Step(
            f"Loss in {name}",
            "h = (f * L / D + K) * v**2 / (2 * g)",
            {
                "f": Value(factor, "number", 4),
                "L": Value(link.length_m, "length"),
                "D": Value(bore, "diameter", 4),
                "K": Value(link.k, "number"),
                "v": Value(speed, "speed"),
                "g": G,
            },
            Value(loss, "head"),
            note=f"Friction factor for a Reynolds number of {_whole(number.value)}.",
            source="Darcy-Weisbach with Colebrook (1939)",
        ),
    ]


def _whole(number: float) -> str:
    return f"{float(f'{number:.3g}'):.0f}"


def _of_pump(case: Case, link: PumpSet, flow: float) -> Step:
    gain = -case.after.loss(link.name)
    state = case.after.pump(link.name)
    if state.held:
        note = "Its control turns it just fast enough to hold the set pressure."
    else:
        note = "It runs at full speed: the head follows from its curve at this flow."
    head_in, head_out = case.after.heads[link.start], case.after.heads[link.end]
    given = {"H_out": Value(head_out, "head", 4), "H_in": Value(head_in, "head", 4)}
    text = "h_p = H_out - H_in"
    return Step("Head the pump adds at this flow", text, given, Value(gain, "head"), note)


def _pressure(case: Case) -> Step:
    """The tap's pressure: what the pump adds less everything lost and the climb."""
    solution, tap = case.after, case.main
    source = case.way[0].start if case.way else tap.node
    if case.way and solution.flows[case.way[0].name] < 0:
        source = case.way[0].end
    lost = sum(abs(solution.loss(n.name)) for n in case.way if not isinstance(n, PumpSet))
    gained = sum(-solution.loss(n.name) for n in case.way if isinstance(n, PumpSet))
    head, height = solution.heads[source], solution.network.heights[tap.node]
    pumped = case.supply.pumping is not None
    above = "both above the pump" if pumped else "both as you counted them"
    return Step(
        f"Pressure at {tap.name}",
        f"p = w * (H_0 {'+ h_p ' if pumped else ''}- h_lost - z)",
        {
            "w": Value(case.weight, "number", 6),
            "H_0": Value(head, "head"),
            **({"h_p": Value(gained, "head", 4)} if pumped else {}),
            "h_lost": Value(lost, "head", 4),
            "z": Value(height, "length"),
        },
        Value(tap.after.pressure_pa, "pressure"),
        note="w: weight of water, Pa per metre; H_0: level of the water drawn from and z: height "
        f"of the outlet, {above}; h_lost: all losses on the way together.",
    )


def _outlet(case: Case) -> list[Step]:
    tap = case.main
    outlet = case.after.network.outlets_by_name[tap.name]
    law, pressure = outlet.law, tap.after.pressure_pa
    kind = practice.OUTLET_BY_KEY[tap.row.kind].name
    flow = tap.after.flow_m3s
    if not 1e-4 * law.pressure_pa < pressure:
        return []
    if pressure >= law.least_pa and tap.row.kind in ("saver", "drip", "steady"):
        full = outlet.count * law.flow_and_slope(pressure)[0]
        given = {"n": Value(outlet.count, "number"), "Q_1": Value(full / outlet.count, "flow")}
        note = f"{kind}: it holds its flow from {law.least_pa / 1e5:.2f} bar up."
        return [Step(f"Flow of {tap.name}", "Q = n * Q_1", given, Value(flow, "flow"), note)]
    rated = getattr(law, "limit_m3s", law.flow_m3s)
    given = {
        "n": Value(outlet.count, "number"),
        "Q_r": Value(rated, "flow"),
        "p": Value(pressure, "pressure"),
        "p_r": Value(law.least_pa, "pressure"),
    }
    return [
        Step(
            f"Flow of {tap.name}",
            "Q = n * Q_r * sqrt(p / p_r)",
            given,
            Value(flow, "flow"),
            note="n of them are open; one gives Q_r at p_r.",
            source="Torricelli’s law",
        )
    ]
