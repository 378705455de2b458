"""What to know or do beside the keep_up sheet's answer."""

from calc.network.findings import findings
from calc.network.parts import Run
from calc.page.answer import Warning
from calc.pipe import friction

FAST = 2.0  # m/s, above which small pipes are noisy and surge hard: common practice, no source
HIGH = 4.6  # m (15 ft), suction lift to keep to: common practice, no source
TOLD = ("short", "past_end")  # kinds of finding that the verdict tells
COMPARED = ("suction", "rating", "over", "idle")


def warnings(case, reader):
    """Every ``Warning`` of a case, what will not work first."""
    for finding in findings(case.after):
        if finding.kind not in TOLD:
            yield Warning(finding.level, _sentence(finding, reader))
    yield from _setting(case, reader)
    if case.site.supply.lift > HIGH:
        high = reader.both(HIGH, "length", 2)
        text = f"Keep the suction lift to about {high} and fit a foot valve (common practice)."
        yield Warning("care", text)
    for link in case.after.network.links:
        if not isinstance(link, Run) or link.name not in case.site.run_rows:
            continue
        speed = friction.velocity(abs(case.after.flows[link.name]), link.pipe.inside_m)
        if speed > FAST:
            yield Warning(
                "care",
                f"Water runs at {reader.both(speed, 'speed')} in {link.name}: over about "
                f"{reader.show(FAST, 'speed')} pipes are noisy and a tap shut fast hammers "
                "(common practice).",
            )
    yield from _tank_warnings(case, reader)


def _sentence(finding, reader):
    """A finding in words, with its figure and limit where they say something."""
    text = finding.text[0].upper() + finding.text[1:]
    if finding.kind not in COMPARED or not finding.limit:
        return text
    value, limit = (reader.both(v, finding.quantity) for v in (finding.value, finding.limit))
    return f"{text} It is {value}; the limit is {limit}."


def _setting(case, reader):
    """A set pressure the pump cannot reach with every tap shut."""
    supply, state = case.site.supply, case.after.network
    if supply.set_pa is None:
        return
    most = state.weight * (supply.pump.shut_off_head - supply.lift)
    if supply.set_pa > most:
        yield Warning(
            "stop",
            f"The pump makes at most {reader.both(most, 'pressure')}: it cannot reach its set "
            "pressure and would run on against shut taps.",
        )


def _tank_warnings(case, reader):
    for level in case.after.network.levels:
        if not level.fills:
            continue
        flow = case.after.supplied[level.name]
        does = "is filled with" if flow < 0 else "gives"
        yield Warning("note", f"After, {level.name} {does} {reader.both(abs(flow), 'flow')}.")
