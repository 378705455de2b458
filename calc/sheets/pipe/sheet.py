"""Pipe sizing: the smallest pipe that leaves the pressure wanted, and why others do not."""

from calc.errors import InputError
from calc.page.answer import Answer, Verdict
from calc.page.fields import Count, Number, Sheet
from calc.pipe import friction, pipes
from calc.sheets.parts.fields import water_temperature
from calc.sheets.parts.pipe_choice import kind_field
from calc.sheets.pipe import case as pipe_case
from calc.sheets.pipe import show as pipe_show

NARROW = 1.05  # left over wanted: below it the verdict says "only just" (our rule)
FITTINGS, LIMITS = "Fittings", "Water and limits"
COUNTS = {
    "elbow90": 6,
    "ball": 2,
    "spring": 1,
}  # a plain run: bends, a valve at each end, a check valve

FIELDS = (
    Number(
        "flow",
        "Flow with everything open",
        "flow",
        "15 L/min",
        "4 gpm",
        1e-6,
        0.05,
        help="A shower or sink takes about 7.5 L/min (2 gpm), a hose about 38 L/min (10 gpm).",
    ),
    Number("length", "Length of pipe", "length", "140 m", "450 ft", 0.5, 20e3),
    Number(
        "climb",
        "Climb from start to far end",
        "length",
        "12 m",
        "40 ft",
        -200.0,
        200.0,
        help="Height, not distance. Downhill: a minus sign.",
    ),
    Number(
        "pressure",
        "Pressure at the start",
        "pressure",
        "3.5 bar",
        "50 psi",
        0.0,
        20e5,
        help="What the pump holds, or the tank gives, while water runs.",
    ),
    Number(
        "wanted",
        "Pressure wanted at the far end",
        "pressure",
        "2 bar",
        "30 psi",
        0.0,
        20e5,
        help="A house likes 2 bar (30 psi) or more, drip lines 1.4 bar (20 psi).",
    ),
    kind_field("pe100-sdr11", "pvc40", own=False),
    *(
        Count(f.key, f.name, COUNTS.get(f.key, 0), 0, 200, group=FITTINGS)
        for f in friction.FITTINGS
    ),
    water_temperature(373.15, LIMITS),
    Number(
        "hottest",
        "Hottest the pipe gets",
        "temperature",
        "20 °C",
        "68 °F",
        273.15,
        373.15,
        help="Its rating is for this. A pipe lying in the sun can pass 40 °C (104 °F).",
        group=LIMITS,
    ),
    Number(
        "fastest",
        "Highest speed allowed",
        "speed",
        "1.5 m/s",
        "5 ft/s",
        0.1,
        10.0,
        help="Faster water is noisy and hammers when a valve shuts.",
        group=LIMITS,
    ),
    Number(
        "highest",
        "Highest pressure at the start",
        "pressure",
        "",
        "",
        0.0,
        40e5,
        optional=True,
        help="With every tap shut, or the relief valve's setting. Empty: as while water runs.",
        group=LIMITS,
    ),
)


def solve(values, reader):
    """The ``Answer`` of the pipe-sizing sheet."""
    run = _run(values)
    tries = pipe_case.trials(run, values.kind)
    chosen = pipe_case.smallest(tries)
    shown = chosen or pipe_case.modest(run, tries)
    return Answer(
        given_verdict=_fitting(run, tries, chosen, reader)
        if chosen
        else _none_fits(run, tries, values.kind, reader),
        figures=pipe_show.figures(run, shown),
        steps=pipe_show.steps(run, shown),
        tables=pipe_show.tables(run, tries, chosen),
        charts=(pipe_show.chart(run, tries, shown),),
        warnings=pipe_show.warnings(run, shown, reader),
        links=pipe_show.links(run, shown, reader),
    )


def _run(values):
    highest = values.pressure if values.highest is None else values.highest
    if highest < values.pressure:
        raise InputError(
            "The highest pressure cannot be lower than the pressure at the start. "
            "Enter what is reached with every tap shut, or leave this empty.",
            name="highest",
        )
    counted = tuple((f, values.numbers[f.key]) for f in friction.FITTINGS if values.numbers[f.key])
    return pipe_case.Run(
        values.flow,
        values.length,
        values.climb,
        values.pressure,
        values.wanted,
        values.fastest,
        highest,
        values.water,
        max(values.hottest, values.water),
        counted,
    )


def _fitting(run, tries, chosen, reader):
    show = reader.both
    next_up = tries[tries.index(chosen) + 1 :]
    sentence = (
        f"{chosen.pipe.label} is the smallest that does it: {show(chosen.left, 'pressure')} is "
        "left at the "
        f"far end while {show(run.flow, 'flow')} runs; {show(run.wanted, 'pressure')} is wanted."
    )
    if chosen.left >= NARROW * run.wanted:
        return Verdict("good", sentence)
    wider = next((trial for trial in next_up if trial.fits), None)
    more = f" {wider.pipe.label} would leave {show(wider.left, 'pressure')}." if wider else ""
    return Verdict("tight", f"{sentence} There is little to spare.{more}")


def _none_fits(run, tries, kind, reader):
    show = reader.both
    label = pipes.KINDS[kind]
    if run.standing < run.wanted or run.standing < 0:
        cure = _more_pressure(run, pipe_case.modest(run, tries), reader)
        if run.standing <= 0:
            top = show(run.start / run.weight, "head")
            return Verdict(
                "bad", f"No pipe can help: this pressure lifts water {top} and no higher. {cure}"
            )
        return Verdict(
            "bad",
            f"No pipe is wide enough: with nothing running {show(run.standing, 'pressure')} is "
            "left at the far "
            f"end, and {show(run.wanted, 'pressure')} is wanted. {cure}",
        )
    if pipe_case.HOT in tries[0].reasons:
        said = f"{label} has no rating at {show(run.hottest, 'temperature')}."
    elif all(pipe_case.WEAK in trial.reasons for trial in tries):
        strongest = max(trial.rating for trial in tries)
        said = (
            f"No size of {label} is strong enough: the best is rated "
            f"{show(strongest, 'pressure')}, and the "
            f"lowest point stands under {show(run.lowest_point, 'pressure')}."
        )
    else:
        said = _falls_short(run, tries, label, reader)
    return Verdict("bad", f"{said} {_other(run, tries, reader)}".strip())


def _falls_short(run, tries, label, reader):
    show = reader.both
    strong = [trial for trial in tries if not {pipe_case.WEAK, pipe_case.HOT} & set(trial.reasons)]
    best = strong[-1]
    if pipe_case.SHORT in best.reasons or pipe_case.DRY in best.reasons:
        left = (
            f"{best.pipe.label} leaves {show(best.left, 'pressure')}"
            if best.left > 0
            else (f"through {best.pipe.label} the water does not arrive")
        )
        return f"No size of {label} does it: {left}; {show(run.wanted, 'pressure')} is wanted."
    return (
        f"No size of {label} does it: in {best.pipe.label} water runs at "
        f"{show(best.speed, 'speed')}; "
        f"{show(run.fastest, 'speed')} is allowed."
    )


def _other(run, tries, reader):
    """What would do it: another kind, else less flow or more pressure in the best size."""
    other = pipe_case.another_kind(run, tries[0].pipe)
    if other:
        return f"{other.pipe.label} would: it leaves {reader.both(other.left, 'pressure')}."
    strong = [
        trial for trial in tries if trial.rating is not None and trial.rating >= run.lowest_point
    ]
    if not strong:
        return "No kind of pipe listed here does; lower the pressure at the start."
    best = strong[-1]
    flow = pipe_case.largest_flow(run, best.pipe)
    said = "No other kind listed here does."
    if flow > 0:
        said += f" {best.pipe.label} would carry {reader.both(flow, 'flow')} at most."
    return said if best.left >= run.wanted else f"{said} {_more_pressure(run, best, reader)}"


def _more_pressure(run, trial, reader):
    needed = pipe_case.start_needed(run, trial.pipe)
    said = f"With {trial.pipe.label} the start would have to hold {reader.both(needed, 'pressure')}"
    lowest = needed + run.lowest_point - run.highest
    if trial.rating is not None and trial.rating < lowest:
        return f"{said}, but that pipe is rated {reader.both(trial.rating, 'pressure')}."
    return f"{said}."


SHEET = Sheet(
    "pipe",
    "Pipe sizing",
    FIELDS,
    solve,
    folded=(FITTINGS, LIMITS),
    cautions=(
        "Pipe and fittings must be rated for the highest pressure at the lowest point, at the "
        "hottest they get.",
        "Let the pressure out before you open a joint; a pressurised line can whip and cut.",
        "Have buried services located before you dig; shore or slope trenches, never work alone in "
        "a deep one.",
        "Use pipe approved for drinking water where people or animals drink; local codes come "
        "first.",
    ),
    sources=(
        "Darcy-Weisbach with the friction factor of Colebrook, J. Inst. Civ. Eng. 11 (1939) "
        "133-156.",
        "Loss coefficients of fittings: Crane Technical Paper 410 and Idelchik, from memory.",
        "Pipe dimensions and ratings: the standard named with each kind.",
        "Highest speed of 1.5 m/s (5 ft/s): common practice, no source.",
    ),
    page="pipe-sizing/",
)
