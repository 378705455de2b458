"""Figures, working, table and chart of the pump_match sheet."""

from calc.page.answer import Chart, Column, Figure, Series, Step, Table, Value
from calc.pump.curve import DisplacementPump
from calc.pump.laws import water_power, wire_to_water
from calc.pump.sets import strongest_head, weakest_head
from calc.units import GRAVITY

CHART_POINTS = 25
LABEL_ROOM = 0.08  # of the chart's width: marks closer than this would print over each other
BLANK = Value(GRAVITY, "number", 6)


def figures(case):
    """The key figures: at the full flow where the pump reaches it, else where it stops."""
    site, state = case.site, case.state(case.site.flow)
    found = []
    if case.enough:
        found += [
            Figure("Pressure at the tap, everything open", state.tap, "pressure", main=True),
            Figure("Speed of the pump", state.speed, "percent", note="of full"),
        ]
    if case.duty is not None:
        note = "end of the pump's table" if case.duty.past_end else "at full speed"
        most = Figure(
            "Most it gives at that pressure",
            case.duty.flow,
            "flow",
            note=note,
            main=not case.enough,
        )
        found.append(most)
    if case.advised > 0:
        found.append(
            Figure("Pressure to set at the pump", case.advised, "pressure", main=case.enough)
        )
    found.append(Figure("Head needed with everything open", case.needed, "head"))
    if state is not None and state.power is not None and case.enough:
        found.append(Figure("Power drawn", state.power, "power"))
    required = case.npsh_required(site.flow, state.speed) if state is not None else None
    if required is not None:
        found.append(Figure("NPSH over what is required", site.npsh_available - required, "head"))
    return tuple(found)


def table(case):
    """Zero, half and full demand under speed control."""
    rows = []
    for name, share in (("Nothing open", 0.0), ("Half open", 0.5), ("Everything open", 1.0)):
        flow = share * case.site.flow
        state, system = case.state(flow), case.system(flow)
        if state is None:
            rows.append((name, flow, system, None, None, None, None))
        else:
            tap = state.tap if state.tap > 0 else None
            rows.append((name, flow, system, state.speed, state.outlet, tap, state.power))
    columns = (
        Column("Demand"),
        Column("Flow", "flow"),
        Column("Head the system takes", "head"),
        Column("Pump speed", "percent", 2),
        Column("At the pump", "pressure"),
        Column("At the tap", "pressure"),
        Column("Power drawn", "power"),
    )
    note = "A dash: past the pump's table, not known, or no pressure left."
    return Table("From nothing open to everything open", columns, tuple(rows), note=note)


def chart(case, grade):
    """Pump curve with its band, system curve, held pressure and where they meet."""
    pump, site = case.pump, case.site
    flows = tuple(pump.largest_flow * i / (CHART_POINTS - 1) for i in range(CHART_POINTS))
    top = 1.25 * pump.shut_off_head
    series = [Series("Pump at full speed", flows, tuple(pump.head_at(flow) for flow in flows))]
    if grade is not None:
        name = f"Grade {grade.key}"
        series += [
            Series(
                f"{name}, weakest",
                flows,
                tuple(weakest_head(pump, q, grade) for q in flows),
                "dashed",
            ),
            Series(
                f"{name}, strongest",
                flows,
                tuple(strongest_head(pump, q, grade) for q in flows),
                "dashed",
            ),
        ]
    end = max(pump.largest_flow, site.flow)
    system = [
        (q, case.system(q)) for q in (end * i / (CHART_POINTS - 1) for i in range(CHART_POINTS))
    ]
    shown = [(q, head) for q, head in system if head <= top] or system[:2]
    series.append(
        Series("What the system takes", *(tuple(part) for part in zip(*shown, strict=True)))
    )
    held = tuple(min(case.held_head(flow), pump.head_at(flow)) for flow in flows)
    series.append(Series("Held at the set pressure", flows, held))
    marks = []
    if case.needed <= top:
        marks.append((site.flow, case.needed, "yours"))
    apart = LABEL_ROOM * end
    if case.duty is not None and (not marks or abs(case.duty.flow - site.flow) > apart):
        marks.append((case.duty.flow, case.duty.head, "most"))
    return Chart(
        "curves",
        "Pump and system",
        "Head against flow: the pump's falling curve with its tolerance band, the system's rising "
        "curve, and "
        "yours, where everything is open; most, where the two meet.",
        "Flow",
        "flow",
        "Head",
        "head",
        tuple(series),
        marks=tuple(marks),
    )


def steps(case, values):
    """The working at the full flow."""
    site, flow = case.site, Value(case.site.flow, "flow")
    density = Value(site.density, "density", 5)
    loss = Value(case.loss(flow.value), "head")
    found = [*_friction_steps(case, values, flow, loss)]
    pressure = Value(site.wanted / site.weight, "head")
    found += [
        Step(
            "Pressure wanted, as a height of water",
            "H_w = p_w / (rho * g)",
            {"p_w": Value(site.wanted, "pressure"), "rho": density, "g": BLANK},
            pressure,
        ),
        Step(
            "Head the pump must give",
            "H = h_lift + h_s + z + h_f + H_w",
            {
                "h_lift": Value(site.lift, "length"),
                "h_s": Value(site.suction_loss, "head"),
                "z": Value(site.climb, "length"),
                "h_f": loss,
                "H_w": pressure,
            },
            Value(case.needed, "head"),
        ),
        Step(
            "Pressure to set at the pump's outlet",
            "p_set = p_w + rho * g * (z + h_f)",
            {
                "p_w": Value(site.wanted, "pressure"),
                "rho": density,
                "g": BLANK,
                "z": Value(site.climb, "length"),
                "h_f": loss,
            },
            Value(case.advised, "pressure"),
            note="A gauge at the pump reads this; the controller holds it.",
        ),
        *_meeting_steps(case),
    ]
    if case.enough and case.state(flow.value).speed > 0:
        found += _running_steps(case, flow, density)
    found.append(_npsh_step(case, density))
    return tuple(found)


def _friction_steps(case, values, flow, loss):
    bore, velocity = (
        Value(case.pipe.inside_m, "diameter"),
        Value(case.velocity(flow.value), "speed"),
    )
    length, factor = Value(case.site.length, "length"), case.factor(flow.value)
    return [
        Step(
            "Speed in the pipe",
            "v = Q / (pi / 4 * D**2)",
            {"Q": flow, "D": bore},
            velocity,
            note=f"{case.pipe.label}: the bore is its real inside diameter.",
            source=case.pipe.source,
        ),
        Step(
            "Length with bends and valves",
            "L = L_pipe * (1 + a)",
            {"L_pipe": Value(values.length, "length"), "a": Value(values.extra, "percent")},
            length,
        ),
        Step(
            "Reynolds number",
            "Re = v * D / nu",
            {"v": velocity, "D": bore, "nu": Value(case.site.viscosity, "kinematic", 4)},
            Value(case.reynolds(flow.value), "number"),
            note=f"It gives a friction factor f = {factor:.4f} (Colebrook; 64/Re where the flow "
            "is laminar).",
        ),
        Step(
            "Head lost to friction",
            "h_f = f * L / D * v**2 / (2 * g)",
            {"f": Value(factor, "number", 4), "L": length, "D": bore, "v": velocity, "g": BLANK},
            loss,
            source="Darcy-Weisbach",
        ),
    ]


def _meeting_steps(case):
    if case.duty is None:
        note = (
            "The pump's highest head is below what the system takes with no flow: they never meet."
        )
        return [Step("Where pump and system meet", note=note)]
    if case.duty.past_end:
        note = (
            "At the last flow of its table the pump still has head to spare: they meet beyond it."
        )
        return [Step("Where pump and system meet", note=note)]
    return [
        Step(
            "Where pump and system meet at full speed",
            "H_meet = h_0 + h_f + h_s",
            {
                "h_0": Value(case.static(), "head"),
                "h_f": Value(case.loss(case.duty.flow), "head"),
                "h_s": Value(case.site.suction_at(case.duty.flow), "head"),
            },
            Value(case.duty.head, "head"),
            note="The flow at which the pump's curve gives as much as lift, climb and wanted "
            "pressure (h_0), "
            "friction (h_f) and suction (h_s) take at that flow.",
        )
    ]


def _running_steps(case, flow, density):
    state = case.state(flow.value)
    head, speed = Value(state.head, "head"), Value(state.speed, "percent")
    found = [_speed_step(case, flow, head, speed)]
    power = Value(water_power(flow.value, state.head, density.value), "power")
    found.append(
        Step(
            "Power in the water",
            "P_w = rho * g * Q * H",
            {"rho": density, "g": BLANK, "Q": flow, "H": head},
            power,
        )
    )
    if state.power:
        found.append(
            Step(
                "Share of the electricity that ends in the water",
                "eta = P_w / P_e",
                {"P_w": power, "P_e": Value(state.power, "power")},
                Value(wire_to_water(power.value, state.power), "percent"),
                note="P_e is read from the pump's table at the similar flow and scaled with its "
                "speed.",
            )
        )
    share = case.best_share(flow.value, state.speed)
    if share is not None and not isinstance(case.pump, DisplacementPump):
        found.append(
            Step(
                "Where on the curve",
                "b = Q / (s * Q_best)",
                {"Q": flow, "s": speed, "Q_best": Value(case.pump.best.flow, "flow")},
                Value(share, "percent"),
                note="Against the best-efficiency flow at this speed; 70 to 120% is preferred.",
                source="ANSI/HI 9.6.3, from memory",
            )
        )
    return found


def _speed_step(case, flow, head, speed):
    if isinstance(case.pump, DisplacementPump):
        full = Value(case.pump.largest_flow, "flow")
        similar = Value(flow.value + (1 - speed.value) * full.value, "flow")
        return Step(
            "Speed that gives this head",
            "Q_1 = Q + (1 - s) * Q_free",
            {"Q": flow, "s": speed, "Q_free": full},
            similar,
            note="The speed at which the full-speed curve, moved by the flow that slowing takes "
            "off, gives the "
            "head needed.",
        )
    return Step(
        "Speed that gives this head",
        "H = s**2 * H_1",
        {"s": speed, "H_1": Value(case.pump.head_and_slope(flow.value / speed.value)[0], "head")},
        head,
        note="H_1 is the full-speed curve's head at the flow Q / s; s is found so that this holds.",
        source="affinity laws",
    )


def _npsh_step(case, density):
    site = case.site
    return Step(
        "NPSH available",
        "NPSH = (p_air - p_v) / (rho * g) - h_lift - h_s",
        {
            "p_air": Value(site.place.air_pa, "pressure", 4),
            "p_v": Value(site.place.vapour_pa, "pressure"),
            "rho": density,
            "g": BLANK,
            "h_lift": Value(site.lift, "length"),
            "h_s": Value(site.suction_loss, "head"),
        },
        Value(site.npsh_available, "head"),
        note="Absolute pressures; compare with the NPSH the pump requires at this flow.",
    )
