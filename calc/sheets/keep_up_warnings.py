"""What to know or do beside the keep_up sheet's answer."""

from calc import friction, pipes
from calc.answer import Warning
from calc.network import Run

FAST = 2.0  # m/s, above which small pipes are noisy and surge hard: common practice, no source


def warnings(case, reader):
    yield from _suction_warnings(case, reader)
    supply, weight = case.site.supply, case.weight
    most = weight * (supply.pump.shut_off_head - supply.lift)
    if supply.set_pa is not None and supply.set_pa > most:
        yield Warning(
            "stop",
            f"The pump makes at most {reader.both(most, 'pressure')}: it cannot reach its set "
            "pressure and would run on against shut taps.",
        )
    yield from _rating_warnings(case, most, reader)
    for link in case.after.network.links:
        if isinstance(link, Run) and link.name in case.site.run_rows:
            speed = friction.velocity(abs(case.after.flows[link.name]), link.pipe.inside_m)
            if speed > FAST:
                yield Warning(
                    "care",
                    f"Water runs at {reader.both(speed, 'speed')} in {link.name}: over about "
                    f"{reader.show(FAST, 'speed')} pipes are noisy and a tap shut fast hammers "
                    "(common practice).",
                )
    yield from _drip_warnings(case, reader)
    yield from _tank_warnings(case, reader)


def _suction_warnings(case, reader):
    if case.starved:
        yield Warning(
            "stop",
            "The suction is the bottleneck: the inlet has "
            f"{reader.both(case.npsh, 'head')} of NPSH and the pump needs "
            f"{reader.both(case.npsh_required, 'head')}. It would cavitate and give less than "
            "shown. Lower the pump, or lay a shorter or wider suction pipe.",
        )
    if case.site.supply.lift > 4.6:
        yield Warning(
            "care",
            "Keep the suction lift to about 4.6 m (15 ft) and fit a foot valve (common practice).",
        )


def _rating_warnings(case, most, reader):
    """Pipes that the pump could press beyond their rating."""
    supply, weight = case.site.supply, case.weight
    held = most if supply.set_pa is None else min(most, supply.set_pa)
    for link in case.after.network.links:
        if not isinstance(link, Run) or link.name not in case.site.run_rows:
            continue
        if link.pipe.rating_pa is None:
            continue
        lowest = min(case.after.network.heights[n] for n in (link.start, link.end))
        rating = pipes.rating_at(link.pipe, supply.temperature)
        stands = held - weight * lowest
        if stands > rating:
            yield Warning(
                "stop",
                f"With taps shut {link.name} stands at {reader.both(stands, 'pressure')}; "
                f"its pipe is rated {reader.both(rating, 'pressure')}.",
            )


def _drip_warnings(case, reader):
    for tap in case.running:
        most = case.after.network.outlets_by_name[tap.name].law.most_pa
        if most is not None and tap.after.pressure_pa > most:
            yield Warning(
                "care",
                f"{tap.name} gets {reader.both(tap.after.pressure_pa, 'pressure')}: drip parts "
                f"take about {reader.both(most, 'pressure')}. Put a reducer in its run.",
            )


def _tank_warnings(case, reader):
    for level in case.after.network.levels:
        if not level.fills:
            continue
        flow = case.after.supplied[level.name]
        does = "is filled with" if flow < 0 else "gives"
        yield Warning("note", f"After, {level.name} {does} {reader.both(abs(flow), 'flow')}.")
