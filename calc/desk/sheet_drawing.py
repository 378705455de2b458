"""The drawing of a supply for the installer, and the same as a file of its own."""

from __future__ import annotations

import re
from dataclasses import replace
from html import escape
from typing import TYPE_CHECKING

from calc.desk.said_of import running
from calc.page import drawing
from calc.page.hill.draw import drawn
from calc.sheets.keep_up.drawing import scene

if TYPE_CHECKING:
    from calc.desk.first_start import Start
    from calc.page.hill.scene import Scene
    from calc.page.shapes import Drawing
    from calc.units import Reader

KEY = "Heights are to scale. Columns: running pressure with all of it open; bars: needed."
# The light scheme of docs/assets/tokens.css: a file of its own has no style sheet to ask.
PALETTE = {
    "--sl-ink": "#1c2422", "--sl-soft": "#4f5b58", "--sl-paper": "#ffffff",
    "--sl-rule": "#c9d1cc", "--sl-edge": "#7b8884", "--sl-accent": "#1f6a60",
    "--sl-line-1": "#1f6a60", "--sl-line-2": "#8a6a14", "--sl-line-3": "#343d3b",
    "--sl-line-4": "#a2537c", "--sl-good": "#1d6a3a", "--sl-tight": "#7d5400",
    "--sl-bad": "#a32b1e", "--sl-earth": "#e7e2d6", "--sl-water": "#5a9fb3",
    "--sl-glass": "#dcebef",
}  # fmt: skip
_COLOUR = re.compile(r"var\((--sl-[\w-]+)\)")
SCALE = 3.0  # px to a unit in the file; our choice


def draw(start: Start, reader: Reader) -> Drawing:
    """The hillside with sizes and lengths of pipe, and pressures with all of it open."""
    return drawn(_scene(start, reader), "installer", "The supply", _alt(start, reader), KEY)


def _scene(start: Start, reader: Reader) -> Scene:
    """As ``keep_up`` draws it, without what is pressed and what was before."""
    shown = scene(start.case, reader)
    network = start.case.after.network
    labels = {}
    for name, at in start.case.built.section_rows.items():
        run = network.run(name)
        length = reader.show(run.length_m, "length", 2)
        labels[f"pipe runs.{at}"] = f"{run.pipe.name}, {length}"
    pipes = tuple(
        replace(one, label=labels[one.at], cause=None, in_device=False) for one in shown.pipes
    )
    columns = tuple(
        replace(one, before_m=None, change="", shown="", opens=False) for one in shown.columns
    )
    stops = tuple(replace(one, cause=None) for one in shown.stops)
    source = replace(shown.source, water_cause=None, pump_cause=None)
    return replace(shown, pipes=pipes, columns=columns, stops=stops, source=source)


def _alt(start: Start, reader: Reader) -> str:
    taps = [f"{tap.name} {running(tap.after.pressure_pa, reader, 2)}" for tap in start.case.running]
    told = ", ".join(taps) or "nothing is open"
    return f"The supply in section, from its source to every outlet. Running pressure: {told}."


def download(made: Drawing) -> str:
    """A drawing as an SVG file: its colours inline, title and description in it.

    Raises KeyError for a colour that the palette lacks.
    """
    plain = _COLOUR.sub(lambda found: PALETTE[found[1]], drawing.svg(made))
    body = plain.partition(">")[2].removesuffix("</svg>")
    wide, high = made.width, made.height
    return (
        '<?xml version="1.0" encoding="UTF-8"?>\n'
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {wide:.1f} {high:.1f}" '
        f'width="{wide * SCALE:.0f}" height="{high * SCALE:.0f}" font-family="sans-serif">'
        f"<title>{escape(made.title)}</title><desc>{escape(made.alt)}</desc>"
        f'<rect width="100%" height="100%" fill="{PALETTE["--sl-paper"]}"/>{body}</svg>\n'
    )
