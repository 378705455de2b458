"""Fields that several sheets ask for in the same words and with the same limits."""

from calc import practice
from calc.page.fields import Choice, Count, Number, Unknown
from calc.site.facts import PATTERNS
from calc.units import HOUR, QUANTITIES

USUAL_WATER = Unknown("15 °C", "59 °F", "usual for water from the ground")
USUAL_EXTRA = Unknown("10 %", "10 %", "usual where fittings are not counted")
# sea level is not the careful side: thinner air lifts less, and a column parts sooner
CAREFUL_ALTITUDE = Unknown(
    f"{practice.CAREFUL_ALTITUDE:g} m", "5000 ft", "careful: most places lie lower"
)
# where air presses against the water's own pressure, thinner air leaves more of it: sea level
SEA_LEVEL = Unknown("0 m", "0 ft", "careful: at a greater altitude there is more to use")
NO_PUMP = "none"  # choice of how the water is driven: it comes from above
BURIED = Unknown("20 °C", "68 °F", "usual for buried pipe")


def water_temperature(hottest: float, group: str = "") -> Number:
    """Of the water in the pipe. hottest: K, the highest at which the sheet's formulas hold."""
    return Number(
        "water",
        "Water temperature",
        "temperature",
        "15 °C",
        "59 °F",
        273.15,
        hottest,
        group=group,
        unknown=USUAL_WATER,
    )


def hottest_pipe(metric: str = "", us: str = "", group: str = "") -> Number:
    """The most the pipe itself gets, for its rating; empty: the water's temperature."""
    return Number(
        "hottest",
        "Hottest the pipe gets",
        "temperature",
        metric,
        us,
        273.15,
        373.15,
        optional=not metric,
        help="Its rating is for this. Black pipe lying in the sun can reach 60 °C (140 °F)."
        + ("" if metric else " If blank, the water's temperature is used."),
        group=group,
        unknown=BURIED,
    )


def lowest_point(group: str = "") -> Number:
    """Height of a dip of the pipe above its start; empty: none below its ends."""
    return Number(
        "lowest",
        "Lowest point of the pipe, above the start",
        "length",
        "",
        "",
        -400.0,
        400.0,
        optional=True,
        help="Where the pipe dips below both ends: the pressure is highest there. Below the "
        "start: a minus sign.",
        group=group,
    )


def highest_point(key: str, group: str = "") -> Number:
    """Height of a crest of the pipe above its start; empty: none above its ends."""
    return Number(
        key,
        "Highest point of the pipe, above the start",
        "length",
        "",
        "",
        -400.0,
        400.0,
        optional=True,
        help="Where the pipe passes over a crest: the pressure is lowest there.",
        group=group,
    )


def altitude(
    highest: float, metric: str = "0 m", us: str = "0 ft", group: str = "", help: str = ""
) -> Number:
    """Of the site. highest: m, to which the sheet is meant; metric, us: as typed in the example."""
    return Number(
        "altitude",
        "Height above sea level",
        "length",
        metric,
        us,
        -400.0,
        highest,
        help=help,
        group=group,
    )


def climb(metric: str, us: str, most: float) -> Number:
    """From the pump to the outlet. metric, us: as typed in the example; most: m."""
    return Number(
        "climb",
        "Climb from pump to outlet",
        "length",
        metric,
        us,
        -200.0,
        most,
        help="Height, not distance. Below the pump: a minus sign.",
    )


def extra_length(group: str = "") -> Number:
    """The share of length added for bends and valves nobody counted."""
    return Number(
        "extra",
        "Added length for bends and valves",
        "percent",
        "10 %",
        "10 %",
        0.0,
        2.0,
        help="10 % is usual for a long buried pipe. For every fitting, see pipe sizing.",
        group=group,
        unknown=USUAL_EXTRA,
    )


def relief_valve(group: str = "", when: tuple[str, tuple[str, ...]] | None = None) -> Choice:
    """Whether a relief valve guards the pipes, should the pump's control fail."""
    return Choice(
        "relief",
        "Relief valve at the pump",
        (("no", "None, or not known"), ("yes", "Yes, set below the rating of every pipe")),
        "no",
        when=when,
        group=group,
    )


def _may_be_blank(
    key: str, label: str, quantity: str, bounds: tuple[float, float], help_: str, group: str
) -> Number:
    """A number that need not be given. bounds: SI."""
    return Number(
        key,
        f"{label} (optional)",
        quantity,
        "",
        "",
        *bounds,
        help=help_,
        optional=True,
        group=group,
        unknown=Unknown(reason="as if blank"),
    )


def pressure_tank(group: str = "") -> Number:
    """The pressure tank at the pump; empty: not known."""
    label, says = "Pressure tank", "Its whole volume, the size on its label"
    return _may_be_blank("tank", label, "volume", (1e-4, 10.0), says, group)


def precharge(group: str = "") -> Number:
    """The air charge of the pressure tank; empty: the usual one."""
    says = "If blank: 0.14 bar (2 psi) below where the pump starts"
    return _may_be_blank("precharge", "Pre-charge", "pressure", (0.0, 15e5), says, group)


def smallest_draw(group: str = "", blank: str = "") -> Number:
    """The least that is drawn for hours. blank: what follows the help, on a blank field."""
    says = f"The least that runs for long, such as one drip zone{blank}"
    return _may_be_blank("draw", "Smallest steady draw", "flow", (1e-8, 0.05), says, group)


def least_pump_flow(group: str = "") -> Number:
    """Below it the pump must not run on; empty: by practice."""
    says = "From its data sheet; if blank, a tenth of its best flow"
    return _may_be_blank("least", "Least pump flow", "flow", (1e-8, 0.05), says, group)


def pumps_in_parallel(group: str = "") -> Count:
    """How many equal pumps stand side by side."""
    label, says = "Identical pumps in parallel", "Each behind its own check valve"
    return Count("pumps", label, 1, 1, 3, help=says, group=group)


def starts_allowed(group: str = "") -> Number:
    """How often the motor may be started."""
    usual = f"{practice.STARTS_AN_HOUR:g} per hour"
    return Number(
        "starts",
        "Starts per hour allowed",
        "per_hour",
        usual,
        usual,
        1 / HOUR,
        300 / HOUR,
        help="From the motor's data sheet",
        group=group,
        unknown=Unknown(usual, usual, "usual for a small motor"),
    )


SUCTION_LONG = Unknown("10 m", "33 ft", "careful for a pump beside its well")
MOST_LIFT = 60.0  # m: no pump draws so deep, and the answer says so; our choice
SENSED_M = (-50.0, 300.0)  # least and most that a form takes


def sensor(group: str = "", when: tuple[str, tuple[str, ...]] | None = None) -> Number:
    """The height above the pump at which its control reads the pressure; empty: at the pump."""
    return Number(
        "sensed",
        "Sensor above the pump (optional)",
        "length",
        "",
        "",
        *SENSED_M,
        help="Where the control reads the pressure, as at the wellhead",
        optional=True,
        when=when,
        group=group,
        unknown=Unknown(reason="taken as at the pump"),
    )


def pipe_length() -> Number:
    """Of the pipe from the pump to the outlet."""
    return Number("length", "Length of pipe", "length", "140 m", "450 ft", 0.1, 20e3)


def usual(value: float, quantity: str, reason: str, digits: int = 2) -> Unknown:
    """What follows from "I don't know": a usual value of ``practice``, in round numbers.

    value: SI; quantity: a key of ``units.QUANTITIES``; reason: why that, with its standing.

    >>> usual(6.3e-4, "flow", "common practice").us
    '10 gpm'
    """

    def text(system: str) -> str:
        unit = QUANTITIES[quantity].default(system)
        return f"{float(f'{unit.from_si(value):.{digits}g}'):g} {unit.symbol}"

    return Unknown(text("metric"), text("us"), reason)


def everything_open(metric: str, us: str, least: float) -> Number:
    """Flow a line must carry. metric, us: as typed in the example; least: m3/s."""
    return Number(
        "flow",
        "Flow with everything open",
        "flow",
        metric,
        us,
        least,
        0.05,
        help="A shower or sink uses about 7.5 L/min (2 gpm), a hose about 38 L/min (10 gpm).",
    )


def suction_lift(most: float, group: str = "") -> Number:
    """From the lowest water up to the pump. most: m."""
    return Number(
        "lift",
        "Suction lift",
        "length",
        "4 m",
        "13 ft",
        -50.0,
        most,
        help="Lowest water up to the pump. Water above it: a minus sign",
        group=group,
    )


def daily_use() -> Number:
    """Water of a day, all of it."""
    return Number("use", "Water used a day", "daily", "930 L/day", "245 gal/day", 1e-9, 1e-2)


def use_pattern(group: str = "") -> Choice:
    """When in the day water is used."""
    return Choice("pattern", "When it is used", PATTERNS, "home", group=group)
