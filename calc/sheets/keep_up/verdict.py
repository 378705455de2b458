"""The keep_up sheet's sentence: what happens, to whom, because of what, and what cures it."""

from calc.network.parts import Run
from calc.page.answer import Verdict
from calc.sheets.keep_up.case import PUMP_PART, SUCTION
from calc.sheets.keep_up.show import bottleneck


def verdict(case, changes, reader):
    tap = case.main
    if tap is None:
        standing = reader.both(case.after.pressure("pump"), "pressure")
        return Verdict("good", f"Nothing is open: the pump’s outlet stands at {standing}.", "Still")
    told = _told(case, tap, reader)
    if case.after.pump(PUMP_PART).past_end:
        told += " The pump runs past the end of its table, where its curve is a guess."
    if case.starved:
        tail = "But the suction is the bottleneck: the pump would cavitate and give less than that."
        return Verdict("bad", f"{told} {tail} {_suction_cure(changes)}", "Does not keep up")
    if not case.short:
        tight = bool(case.tight)
        tail = "it is only just enough" if tight else "every open outlet gets enough"
        level = "tight" if tight else "good"
        return Verdict(level, f"{told} {tail[0].upper()}{tail[1:]}.", "" if tight else "Keeps up")
    wanted = reader.both(tap.after.wanted_pa, "pressure")
    return Verdict(
        "bad",
        f"{told} It wants {wanted}. {_cause(case, reader)} {_cure(case, changes, reader)}",
        "Does not keep up",
    )


def _suction_cure(changes):
    best = next((change for change in changes if change.cures), None)
    if best is not None:
        return f"Cheapest cure: {best.text}."
    return "Set the pump lower or nearer to the water, or use less at once."


def _told(case, tap, reader):
    """What happens at the outlet, in one sentence."""
    after = reader.both(max(0.0, tap.after.pressure_pa), "pressure")
    flow = reader.both(tap.after.flow_m3s, "flow")
    others = [other.name for other in case.opened if other.name != tap.name]
    if not others:
        return f"With these open, {tap.name} gets {after} and {flow}."
    when = _and(others[:3]) + (" and more" if len(others) > 3 else "")
    verb = "opens" if len(others) == 1 else "open"
    if not tap.before.open:
        return f"When {when} {verb} as well, {tap.name} gets {after} and {flow}."
    before = reader.both(max(0.0, tap.before.pressure_pa), "pressure")
    was = reader.show(tap.before.flow_m3s, "flow")
    how = "falls" if tap.drop > 0 else "goes"
    return (
        f"When {when} {verb}, {tap.name} {how} from {before} to {after}, and from {was} to {flow}."
    )


def _and(names):
    return names[0] if len(names) == 1 else f"{', '.join(names[:-1])} and {names[-1]}"


def _cause(case, reader):
    """Which part keeps the pressure down."""
    tap, supply = case.main, case.site.supply
    height = case.after.network.heights[tap.node]
    pump = case.after.pump(PUMP_PART)
    worst = bottleneck(case)
    lost = case.weight * case.after.loss(worst.name) if worst is not None else 0.0
    most = case.weight * (supply.pump.shut_off_head - supply.lift - height)
    if most < tap.after.wanted_pa:
        return "The pump is the bottleneck: it cannot lift so high even with nothing open."
    if supply.set_pa is not None:
        still = supply.set_pa - case.weight * height
        if still < tap.after.wanted_pa:
            return (
                "The set pressure is the bottleneck: with nothing running it leaves "
                f"{reader.both(max(0.0, still), 'pressure')} up there."
            )
        missing = supply.set_pa - case.after.pressure("pump")
        if missing > max(lost, 1e3):
            return (
                "The pump is the bottleneck: at this flow it falls "
                f"{reader.both(missing, 'pressure')} short of its set pressure."
            )
    elif not pump.held and case.weight * (supply.pump.shut_off_head - pump.head_m) > 2 * lost:
        return "The pump is the bottleneck: at this flow its head has fallen that far."
    name = worst.name.replace(" – ", " to ")
    what = f"the pipe from {name}" if isinstance(worst, Run) and worst.name != SUCTION else name
    return f"The bottleneck is {what}: it takes {reader.both(lost, 'pressure')}."


def _cure(case, changes, reader):
    tap = case.main
    best = next((change for change in changes if change.cures), None)
    if best is not None:
        then = reader.both(best.pressure(tap.name), "pressure")
        return f"Cheapest cure: {best.text}; then it holds {then}."
    if not changes:
        return "No single change tried here mends it: use less at once."
    most = max(changes, key=lambda change: change.pressure(tap.name))
    then = reader.both(max(0.0, most.pressure(tap.name)), "pressure")
    return f"No single change tried cures it; the best, to {most.text}, gives {then}."
