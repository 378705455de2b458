"""The tables of the keep_up sheet: runs of pipe, outlets, tanks; Alder Terrace as the example.

What outlets take by default is common practice, no source: a shower or sink about 2 gpm, a hose
about 10 gpm; 20 psi suits drip, 15 psi is the least a shower is pleasant at.
"""

from dataclasses import dataclass

from calc.errors import InputError
from calc.network.outlets import CompensatingDripper, FixedFlow, LimitedShower, Orifice
from calc.page.fields import Choice, Count, Number, Rows, Text
from calc.pipe import pipes
from calc.units import GALLON_US, MINUTE, PSI

GPM = GALLON_US / MINUTE  # m3/s
NAME = 24  # characters of a name, own choice: it must fit in a table
MOST_DRIP = 50 * PSI  # Pa, up to which drippers keep their flow: common practice, no source


@dataclass(frozen=True)
class Kind:
    """A kind of outlet: its flow at a pressure and the running pressure wanted, in SI.

    None: the reader must give it.
    """

    key: str
    name: str
    flow: float | None
    pressure: float | None
    wanted: float | None


KINDS = (
    Kind("shower", "Shower", 2 * GPM, 30 * PSI, 15 * PSI),
    Kind("saver", "Shower with a flow limiter", 2 * GPM, 20 * PSI, 20 * PSI),
    Kind("sink", "Sink or basin", 2 * GPM, 30 * PSI, 10 * PSI),
    Kind("hose", "Hose", 10 * GPM, 40 * PSI, 10 * PSI),
    Kind("float", "Float valve", 2 * GPM, 30 * PSI, 5 * PSI),
    Kind("drip", "Drip zone", 3 * GPM, 15 * PSI, 20 * PSI),
    Kind("steady", "Steady draw", None, None, None),
    Kind("opening", "Nozzle or opening", None, None, None),
)
BY_KEY = {kind.key: kind for kind in KINDS}

EXTRAS = (
    ("none", "–"),
    ("filter", "Filter"),
    ("dirty", "Filter, dirty"),
    ("twin", "Two filters side by side"),
    ("meter", "Water meter"),
    ("check", "Check valve"),
    ("stop", "Stop tap (globe)"),
    ("r10", "Reducer, 1 bar (15 psi)"),
    ("r15", "Reducer, 1.5 bar (22 psi)"),
    ("r20", "Reducer, 2 bar (29 psi)"),
    ("r30", "Reducer, 3 bar (44 psi)"),
)


def pipe_options():
    """Every size of every kind as one menu: ("pe100-sdr11/32", "32 mm PE 100 SDR 11")."""
    return tuple((f"{p.kind}/{p.size}", p.label) for kind in pipes.KINDS for p in pipes.sizes(kind))


def pipe_of(value):
    """The ``Pipe`` of a value of ``pipe_options``."""
    kind, _, size = value.partition("/")
    return pipes.pipe(kind, size)


PIPES = pipe_options()

RUNS = Rows(
    "runs",
    "Runs of pipe",
    (
        Text("from", "From", "pump", longest=NAME, points=True),
        Text("to", "To", "", longest=NAME, points=True),
        Number("long", "Length", "length", "20 m", "60 ft", 0.01, 20e3),
        Number("up", "Far end above pump", "length", "0 m", "0 ft", -300.0, 400.0),
        Choice("pipe", "Pipe", PIPES, "pe100-sdr11/32", "pvc40/1"),
        Count("bends", "Bends", 2, 0, 200),
        Choice("extra", "Also in it", EXTRAS, "none"),
    ),
    metric=(
        ("pump", "lower fork", "60 m", "5 m", "pe100-sdr11/40"),
        ("lower fork", "upper fork", "70 m", "11.5 m", "pe100-sdr11/32"),
        ("upper fork", "wash-house", "25 m", "12 m", "pe100-sdr11/25"),
        ("upper fork", "cabin 2", "35 m", "12 m", "pe100-sdr11/25"),
        ("upper fork", "cabin 3", "80 m", "18 m", "pe100-sdr11/25"),
        ("lower fork", "cabin 1", "20 m", "6 m", "pe100-sdr11/25"),
        ("lower fork", "goat trough", "50 m", "3 m", "pe100-sdr11/20"),
        ("lower fork", "herb terraces", "40 m", "9 m", "pe100-sdr11/25", "2", "r15"),
    ),
    us=(
        ("pump", "lower fork", "200 ft", "16 ft", "pvc40/1.25"),
        ("lower fork", "upper fork", "230 ft", "38 ft", "pvc40/1"),
        ("upper fork", "wash-house", "80 ft", "39 ft", "pvc40/0.75"),
        ("upper fork", "cabin 2", "115 ft", "39 ft", "pvc40/0.75"),
        ("upper fork", "cabin 3", "260 ft", "59 ft", "pvc40/0.75"),
        ("lower fork", "cabin 1", "65 ft", "20 ft", "pvc40/0.75"),
        ("lower fork", "goat trough", "165 ft", "10 ft", "pvc40/0.5"),
        ("lower fork", "herb terraces", "130 ft", "30 ft", "pvc40/0.75", "2", "r15"),
    ),
    row="run",
    help="Each run starts at the pump or where another run ends. Any names will do. Heights are "
    "above the pump; below it: a minus sign.",
)

_TAPS = (
    ("Wash-house shower", "wash-house", "shower", "2", "2"),
    ("Wash-house hose", "wash-house", "hose", "0", "1"),
    ("Cabin 1 sink", "cabin 1", "sink", "0", "0"),
    ("Cabin 2 sink", "cabin 2", "sink", "0", "0"),
    ("Cabin 3 shower", "cabin 3", "shower", "1", "1"),
    ("Goat trough", "goat trough", "float", "1", "1"),
    ("Herb terraces", "herb terraces", "drip", "0", "0"),
)

TAPS = Rows(
    "taps",
    "Outlets",
    (
        Text("name", "Outlet", "", longest=NAME),
        Text("at", "At", "", longest=NAME, points=True),
        Choice("kind", "Kind", tuple((kind.key, kind.name) for kind in KINDS), "shower"),
        Count("now", "Open now", 0, 0, 50),
        Count("then", "Open then", 1, 0, 50),
        Number("flow", "Flow of one", "flow", "", "", 1e-8, 0.1, optional=True),
        Number("rated", "at pressure", "pressure", "", "", 1e3, 20e5, optional=True),
        Number("want", "Wanted", "pressure", "", "", 0.0, 20e5, optional=True),
    ),
    metric=_TAPS,
    us=_TAPS,
    row="outlet",
    help="“At” is the end of a run. Leave the last three empty to take what is usual for the kind.",
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
    help="An open tank that feeds the pipes or is filled by them: end a run at its name.",
)


def law_of(row):
    """(law of one outlet, pressure wanted in Pa) of a row of ``TAPS``.

    Raises InputError at the cell where a figure is missing.
    """
    kind = BY_KEY[row.kind]
    flow = kind.flow if row.flow is None else row.flow
    pressure = kind.pressure if row.rated is None else row.rated
    if flow is None:
        raise InputError("Give the flow of one; this kind has no usual one.", name=row.cell("flow"))
    if row.kind == "steady":
        law = FixedFlow(flow) if pressure is None else FixedFlow(flow, pressure)
    elif pressure is None:
        raise InputError("Give the pressure that goes with the flow.", name=row.cell("rated"))
    elif row.kind == "saver":
        law = LimitedShower(flow, pressure, flow)
    elif row.kind == "drip":
        law = CompensatingDripper(flow, pressure, max(MOST_DRIP, 2 * pressure))
    else:
        law = Orifice(flow, pressure)
    wanted = kind.wanted if row.want is None else row.want
    return law, law.least_pa if wanted is None else wanted
