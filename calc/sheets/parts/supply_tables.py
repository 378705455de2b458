"""Tables of a whole supply that several sheets ask for: pipe sections, outlets, tanks.

Their own default is one pipe to one outlet; on the page the example of ``calc.site.demo`` stands.
"""

from calc import practice
from calc.page.fields import Choice, Count, Number, Rows, Text, Unknown
from calc.sheets.parts.line_rows import EXTRAS
from calc.sheets.parts.pipe_choice import KIND_HEADINGS, pipe_options

NAME = 24  # characters of a name, our choice: it must fit in a table
PIPES = pipe_options()
USUAL = Unknown(reason="usual for this kind of outlet")
BENDS = Unknown("2", "2", "usual for a pipe section")

RUNS = Rows(
    "runs",
    "Pipe sections",
    (
        Text("from", "From point", "pump", longest=NAME, points=True),
        Text("to", "To point", "", longest=NAME, points=True),
        Number("long", "Length", "length", "20 m", "60 ft", 0.01, 20e3),
        Number("up", "Far end above pump", "length", "0 m", "0 ft", -300.0, 400.0),
        Choice("pipe", "Pipe", PIPES, "pe100-sdr11/32", "pvc40/1", groups=KIND_HEADINGS),
        Count("bends", "Bends", 2, 0, 200, unknown=BENDS),
        Choice("extra", "Filter or valve", EXTRAS, "none"),
    ),
    metric=(("pump", "house"),),
    us=(("pump", "house"),),
    row="pipe section",
    rare=("bends", "extra"),
    help="Each begins at the pump or where another ends. Below the pump: a minus sign. Without "
    "a pump, “pump” is the source",
)

TAPS = Rows(
    "taps",
    "Outlets",
    (
        Text("name", "Outlet", "", longest=NAME),
        Text("at", "At point", "", longest=NAME, points=True),
        Choice("kind", "Kind", tuple((kind.key, kind.name) for kind in practice.OUTLETS), "shower"),
        Count("now", "Open before", 0, 0, 50),
        Count("then", "Open after", 1, 0, 50),
        Number("flow", "Flow of one", "flow", "", "", 1e-8, 0.1, optional=True, unknown=USUAL),
        Number(
            "rated", "Rated pressure", "pressure", "", "", 1e3, 20e5, optional=True, unknown=USUAL
        ),
        Number(
            "want", "Needed pressure", "pressure", "", "", 0.0, 20e5, optional=True, unknown=USUAL
        ),
    ),
    metric=(("Shower", "house"),),
    us=(("Shower", "house"),),
    row="outlet",
    rare=("flow", "rated", "want"),
    help="Leave the last three empty for what is usual for the kind",
)

TANKS = Rows(
    "tanks",
    "Tanks up the hill",
    (
        Text("name", "Tank", "", longest=NAME),
        Number("up", "Water level above pump", "length", "20 m", "65 ft", -300.0, 400.0),
    ),
    metric=(),
    us=(),
    row="tank",
    least=0,
    most=10,
    help="An open tank: end a pipe section at its name",
)
