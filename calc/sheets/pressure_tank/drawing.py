"""The pressure tank sheet's picture: the tank when the pump starts and when it stops.

Its water and the air over it are to scale, by Boyle's law as in the working; between the two levels
is the drawdown.  Below stands the drawdown beside the one that is needed.  Where there is no tank
the one needed is drawn.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.page.shapes import SMALL, Block, Drawing, Stroke, Words
from calc.page.text_boxes import text_width
from calc.sheets.parts.scaled import LINE, WIDTH, Scale, brief
from calc.sheets.pressure_tank.judge import cut_out_level

if TYPE_CHECKING:
    from collections.abc import Iterator

    from calc.page.form import Values
    from calc.page.shapes import Shape
    from calc.sheets.pressure_tank.case import Case
    from calc.units import Reader

    Bar = tuple[str, float, str]  # name, amount, role of its colour

HEAD, HIGH, WIDE = 42.0, 120.0, 84.0  # units over the tanks, their height and width
LEFT, RIGHT, SPAN = 8.0, 134.0, 232.0  # units: the two tanks, and the line along the drawdown
CORNER = 14.0  # units
NAMED, BAR, ROW = 94.0, 12.0, 20.0  # units: names of bars, their height, from one to the next


def water(case: Case, tank: float, pressure: float) -> float:
    """Water in a tank (m3) at a gauge pressure (Pa), m3.

    V_w = V - V (p_0 + p_a) / (p + p_a).  Raises nothing.  Source: Boyle's law.
    """
    return tank - tank * (case.charge + case.air) / (pressure + case.air)


def draw(values: Values, case: Case, reader: Reader) -> tuple[Drawing, ...]:
    """The ``Drawing`` of a case; none where there is no tank and none is needed."""
    tank = values.tank or case.asked
    if tank <= 0:
        return ()
    scale = Scale(0.0, tank, HEAD + HIGH, HEAD)
    low, high = (water(case, tank, p) for p in (case.cut_in, case.high))
    names = ("starts again at", "rests at") if case.speed else ("pump starts at", "pump stops at")
    shapes: list[Shape] = []
    for x, name, pressure, held in (
        (LEFT, names[0], case.cut_in, low),
        (RIGHT, names[1], case.high, high),
    ):
        shown = brief(pressure, "pressure", reader)
        shapes += _tank(x, (name, shown), held, scale)
    shapes += _drawdown(low, high, scale, reader)
    shapes += _pump_makes(case, reader)
    below = HEAD + HIGH + 14
    groups = (
        (_enough(case) if values.tank else (), "volume"),
        (_relief(values, case, reader), "pressure"),
    )
    for bars, quantity in groups:
        if bars:
            shapes += _bars(bars, quantity, below, reader)
            below += len(bars) * ROW + 8
    size = reader.show(tank, "volume")
    title = f"A tank of {size}" if values.tank else f"The smallest tank that is enough: {size}"
    alt = _alt(case, tank, low, high, reader) + _relief_said(values, reader)
    scaled = "Air and water are to scale."
    height = below - 6
    return (Drawing("tank", title, alt, WIDTH, height, tuple(shapes), scaled),)


def _tank(x: float, said: tuple[str, str], held: float, scale: Scale) -> Iterator[Shape]:
    """One tank with its water, named by when it is so."""
    name, pressure = said
    middle, low, level = x + WIDE / 2, scale.start, scale.at(held)
    yield Words(middle, HEAD - 8 - LINE, name, "middle", size=SMALL)
    yield Words(middle, HEAD - 8, pressure, "middle", bold=True, size=SMALL)
    yield Block(x, HEAD, WIDE, HIGH, "glass")
    if held > 0:
        yield Block(x, level, WIDE, low - level, "water", at=f"water at {name}")
    yield Block(x, HEAD, WIDE, HIGH, "", "ink", line=2.5, corner=3)
    if level - HEAD >= LINE + 2:
        yield Words(middle, (HEAD + level) / 2 + 4, "air", "middle", size=SMALL)
    if low - level >= LINE + 2:
        y = (low + level) / 2 + 4
        yield Words(middle, y, "water", "middle", bold=True, size=SMALL, halo="paper")


def _pump_makes(case: Case, reader: Reader) -> Iterator[Shape]:
    """What the pump makes with no flow, beside where it should stop; nothing where not known."""
    level = cut_out_level(case)
    if case.most is None:
        return
    role = {"stop": "bad", "care": "tight"}.get(level, "ink")
    made = brief(case.most, "pressure", reader)
    yield Words(SPAN + 8, HEAD - 8 - LINE, "pump makes", size=SMALL)
    yield Words(SPAN + 8, HEAD - 8, made, role=role, bold=True, size=SMALL, at="pump makes")


def _drawdown(low: float, high: float, scale: Scale, reader: Reader) -> Iterator[Shape]:
    """Lines at both levels, and what is between them."""
    start, stop = scale.at(low), scale.at(high)
    for x, y, name in ((LEFT + WIDE, start, "start"), (RIGHT + WIDE, stop, "stop")):
        yield Stroke(((x, y), (SPAN + 4, y)), "ink", "dotted", 1.2, at=name)
    yield Stroke(((SPAN, stop), (SPAN, start)), "ink", width=2.5, at="drawdown")
    y = min(max((start + stop) / 2 - 4, HEAD + 10), scale.start - LINE)
    yield Words(SPAN + 8, y, brief(high - low, "volume", reader), bold=True, size=SMALL)
    yield Words(SPAN + 8, y + LINE, "drawdown", size=SMALL)


def _enough(case: Case) -> tuple[Bar, ...]:
    """Bars of the drawdown and of the one that is enough."""
    if case.target <= 0:
        return ()
    short = case.gives < case.target * (1 - 1e-9)
    return (
        ("it gives", case.gives, "bad" if short else "ink"),
        ("it must give", case.target, "ink"),
    )


def _relief(values: Values, case: Case, reader: Reader) -> tuple[Bar, ...]:
    """Bars of where the pump stops, where a relief valve opens, what it then holds and what is
    rated least; none where no valve is given."""
    if values.relief is None:
        return ()
    from calc.sheets.pressure_tank import relief_judge  # only who has a valve waits for it
    from calc.sheets.pressure_tank.relief_case import relief_of

    valve = relief_of(values, case)
    levels = {one.key: one.level for one in relief_judge.findings(values, case, reader)}
    roles = {"stop": "bad", "care": "tight"}
    opens = levels.get("relief-low") or levels.get("relief-high", "")
    found: list[Bar] = [
        ("rests at" if case.speed else "stops at", valve.high, "ink"),
        ("relief opens", valve.opens, roles.get(opens, "ink")),
    ]
    if valve.small and valve.reaches is not None:
        role = roles.get(levels.get("relief-small", ""), "ink")
        found.append(("it rises to", valve.reaches, role))
    if valve.rating is not None:
        found.append(("lowest rating", valve.rating, "ink"))
    return tuple(found)


def _bars(bars: tuple[Bar, ...], quantity: str, top: float, reader: Reader) -> Iterator[Shape]:
    """The bars, one below the other, to one scale, each with its number."""
    numbers = [brief(amount, quantity, reader) for _, amount, _ in bars]
    room = max(text_width(one, SMALL, bold=True) for one in numbers) + 6
    scale = Scale(0.0, max(amount for _, amount, _ in bars), NAMED, WIDTH - room)
    for number, ((name, amount, role), text) in enumerate(zip(bars, numbers, strict=True)):
        y, plain = top + number * ROW, role == "ink"
        yield Words(NAMED - 6, y + BAR - 2, name, "end", size=SMALL)
        yield Block(NAMED, y, scale.long(amount), BAR, "water" if plain else role,
                    "" if plain else role, at=name)  # fmt: skip
        yield Words(scale.at(amount) + 5, y + BAR - 2, text, role=role, bold=not plain, size=SMALL)


def _alt(case: Case, tank: float, low: float, high: float, reader: Reader) -> str:
    show = reader.show
    said = (
        f"The same tank twice: at {show(case.cut_in, 'pressure')} it holds {show(low, 'volume')} "
        f"of water, at {show(case.high, 'pressure')} {show(high, 'volume')}, the rest of its "
        f"{show(tank, 'volume')} is air. The drawdown between them is {show(high - low, 'volume')}"
    )
    if case.target > 0 and case.gives:
        said += f"; {show(case.target, 'volume')} is needed"
    if case.most is None:
        return f"{said}."
    return f"{said}. With no flow the pump makes {show(case.most, 'pressure')}."


def _relief_said(values: Values, reader: Reader) -> str:
    if values.relief is None:
        return ""
    said = f" The relief valve opens at {reader.show(values.relief, 'pressure')}"
    if values.weakest is None:
        return f"{said}."
    return f"{said}; the lowest rating is {reader.show(values.weakest, 'pressure')}."
