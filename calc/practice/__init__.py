"""Every rule of the trade and every usual value, once: unit, and where it comes from.

Each line says its source, "common practice, no source", "our choice", or a standard with
"from memory" where the number was recalled and not read.  A figure that is only a law's own
constant stands beside the law.
"""

from dataclasses import dataclass

from calc.practice.power import *  # noqa: F403
from calc.units import DAY, FOOT, GALLON_US, HOUR, LITRE, MINUTE, PSI

GPM = GALLON_US / MINUTE  # m3/s
LPM = LITRE / MINUTE  # m3/s
MM_HOUR = 1e-3 / HOUR  # m/s

# Flow and pressure at outlets ---------------------------------------------------------------

SHOWER_FLOW = 2 * GPM  # m3/s, a shower or sink; common practice, no source
HOSE_FLOW = 10 * GPM  # m3/s, a garden hose; common practice, no source
SHOWER_WORKS = 15 * PSI  # Pa, running, least a shower is pleasant at; common practice, no source
SHOWER_COMFORTABLE = 30 * PSI  # Pa, running, at which it is rated; common practice, no source
DRIP_PRESSURE = 20 * PSI  # Pa, suits drip lines; common practice, no source
HOUSE_PRESSURE = (30 * PSI, 40 * PSI)  # Pa, suits a house; common practice, no source
TROUGH_WORKS = 5 * PSI  # Pa, fills through an open float valve; common practice, no source
BORDERLINE = 1.1  # of the pressure that works: up to it an answer is Borderline; our choice
HIGHEST_AT_OUTLET = 80 * PSI  # Pa, static, at an outlet: IPC 604.8 and UPC 608.2, from memory
DRIP_HOLDS_TO = 50 * PSI  # Pa, to which drippers keep their flow; common practice, no source


@dataclass(frozen=True)
class OutletKind:
    """A kind of outlet. flow: m3/s at ``rated`` Pa; works: least running pressure, Pa.

    An outlet's own rated pressure scales ``works`` in the same proportion; at ``rated`` it is
    comfortable.  None: the reader must give it.  lasting: it may stay open for hours.
    """

    key: str
    name: str
    flow: float | None
    rated: float | None
    works: float | None
    lasting: bool = False

    def levels(self, rated: float | None = None) -> tuple[float | None, float | None]:
        """(works, comfortable) in Pa for an outlet rated at ``rated`` Pa (None: the usual)."""
        if self.rated is None or self.works is None:
            return rated, rated
        share = 1.0 if rated is None else rated / self.rated
        return self.works * share, self.rated * share


# Flows, rated and least pressures of outlets: common practice, no source.
OUTLETS = (
    OutletKind("shower", "Shower", SHOWER_FLOW, SHOWER_COMFORTABLE, SHOWER_WORKS),
    # its limiter holds the flow from 20 psi up; a plain low-flow head is rated at 80 psi: at 30 psi
    # one of 2 gpm gives 1.2
    OutletKind("saver", "Shower with a flow limiter", SHOWER_FLOW, 20 * PSI, 20 * PSI),
    OutletKind("sink", "Sink or basin", SHOWER_FLOW, 30 * PSI, 10 * PSI),
    OutletKind("hose", "Hose", HOSE_FLOW, 40 * PSI, 10 * PSI, lasting=True),
    OutletKind("float", "Float valve", 6 * GPM, 30 * PSI, TROUGH_WORKS, lasting=True),
    OutletKind("drip", "Drip zone", 3 * GPM, DRIP_PRESSURE, DRIP_PRESSURE, lasting=True),
    OutletKind("steady", "Steady draw", None, None, None, lasting=True),
    OutletKind("opening", "Nozzle or opening", None, None, None, lasting=True),
    OutletKind("toilet", "Toilet cistern", 3 * GPM, 30 * PSI, 10 * PSI),
    # 3.5 gpm: Peak Water Demand Study (2017), from memory
    OutletKind("washer", "Washing machine", 3.5 * GPM, 30 * PSI, 15 * PSI),
    OutletKind("sprinkler", "Sprinkler", 3 * GPM, 40 * PSI, 30 * PSI, lasting=True),
    # made for little pressure: larger nozzles or deflectors that break the jet up
    OutletKind("spray", "Low-pressure sprinkler", 1.5 * GPM, 30 * PSI, 20 * PSI, lasting=True),
    OutletKind("micro", "Microsprinkler", 0.3 * GPM, 20 * PSI, 15 * PSI, lasting=True),
)
OUTLET_BY_KEY = {kind.key: kind for kind in OUTLETS}


def enough(pressure_pa: float, works_pa: float, comfortable_pa: float) -> str:
    """Level of a running pressure: "stop", "care", "note", or "" where it is comfortable.

    Below ``works_pa`` it does not work; up to a tenth above it is borderline; below
    ``comfortable_pa`` is worth a note.  All in Pa, gauge.  Raises nothing.  Source: our choice.

    >>> [enough(p * 6894.757, 15 * 6894.757, 30 * 6894.757) for p in (14, 16, 20, 30)]
    ['stop', 'care', 'note', '']
    """
    slack = 1e-9 * works_pa  # a pressure typed in another unit is still met
    if pressure_pa < works_pa - slack:
        return "stop"
    if pressure_pa <= BORDERLINE * works_pa - slack:
        return "care"
    return "note" if pressure_pa < comfortable_pa - slack else ""


# Pipes --------------------------------------------------------------------------------------

SPEED_NOTE = 1.5  # m/s, above which water is heard and surges matter; common practice, no source
SPEED_CARE = 2.4  # m/s, too fast for small pipes for long; our choice
# m/s, that carries air out of crests and sand out of dips; common practice, no source
SPEED_FLUSHES = 0.6
PIPE_SPARE = 0.10  # of the length, ordered beside it for joints, bends and the trench; our choice
EXTRA_LENGTH = 0.10  # of the length, for fittings nobody counted; common practice, no source
MOST_SIZES_UP = 3  # sizes a fix may go up, so that it stays a repair; our choice
MODEST_LOSS = 0.2  # of climb and needed pressure that friction may take; our choice
HOT_FROM = 313.15  # K, above which water counts as hot; our choice
# K, hot distribution pipe is rated 100 psi at 180 F: IPC 605.4 and UPC 604, from memory
HOT_RATED_AT = 355.37
HOT_RATED = 100 * PSI  # Pa, what such pipe is rated there: IPC 605.4 and UPC 604, from memory
DEEPEST_VACUUM = -0.9e5  # Pa gauge, below which a column of water parts; our choice
REDUCED_TO = (3e5, 4e5, 5e5)  # Pa, usual settings of a pressure-reducing valve; our choice
SUN_HEATS_TO = 333.15  # K, black pipe lying in the sun; common practice, no source


def speed_level(speed_ms: float) -> str:
    """Level of a water speed (m/s): "care", "note" or "".  Source: our choice.

    >>> [speed_level(v) for v in (1.0, 1.5, 2.4)]
    ['', 'note', 'care']
    """
    slack = 1e-9
    if speed_ms >= SPEED_CARE - slack:
        return "care"
    return "note" if speed_ms >= SPEED_NOTE - slack else ""


# Devices in a pipe --------------------------------------------------------------------------

FILTER_FLOW = 40 * LPM  # m3/s, at which the losses below hold; common practice, no source
FILTER_CLEAN = 0.15e5  # Pa, a 1 in cartridge housing, clean; common practice, no source
FILTER_DIRTY = 0.7e5  # Pa, the same due for a change; common practice, no source
# Pa, a Y strainer of the pipe's size, its screen clean; common practice, no source
STRAINER_CLEAN = 0.07e5
REDUCER_FLOW = 30 * LPM  # m3/s, at which the loss below holds; common practice, no source
REDUCER_FALL = (0.5e5, 1e5)  # Pa, it gives so much less near its rated flow; common practice
REDUCER_NEAR = 0.8  # of its rated flow, from which that is said; our choice
REDUCER_LOSS = 4.0  # m, a 3/4 in pressure-reducing valve wide open; common practice, no source
FLOAT_FLOW = 40 * LPM  # m3/s, at which the loss below holds; common practice, no source
FLOAT_LOSS = 10.0  # m, a 1 in float valve wide open; common practice, no source

# A bad day, on which a whole supply is tried -----------------------------------------------

COLD_WATER = 277.15  # K, of shallow ground water or a tank on a cold night; our choice
COLD_SPELL = 10.0  # K, air colder than the mean of its month; our choice
DRY_FALL = 1.5  # m, the water of a well lower in a dry month; our choice
DRY_YIELD = 0.5  # of what a source gives, in a dry month; our choice
LOW_BATTERY = 0.5  # of its capacity, that an old or half-charged battery has; our choice

# Suction ------------------------------------------------------------------------------------

SUCTION_LIFT = (
    15 * FOOT
)  # m, keep suction lift to about 15 ft at sea level; common practice, no source
CAREFUL_ALTITUDE = 1500.0  # m, taken where nobody knows it: most places lie lower; our choice
SEA_LEVEL_AIR = 101325.0  # Pa, air pressure the lift above is meant for: ISO 2533
NPSH_MARGIN = 0.6  # m (2 ft), NPSH to spare; common practice after ANSI/HI 9.6.1, from memory
COOLING_SMALL = 0.08  # m/s, least water speed past a small submersible motor; common practice
COOLING_LARGE = 0.15  # m/s, the same past a larger one; common practice, no source
SMALL_MOTOR = 0.105  # m, outside diameter up to which a motor is small; common practice, no source
CHECK_VALVES_EVERY = 60.0  # m of drop pipe; common practice, no source
LASTING = 100 * 86400.0  # s of pumping without rain that a yield is to last; our choice
WELL_SHARE = 0.9  # of a well's yield that may be planned on; our choice
HOSE_VACUUM = 0.2e5  # Pa, most a garden hose takes before it flattens; our choice
FLOODED_VACUUM = 0.1e5  # Pa, most that friction may leave at a pump below its water; our choice
SUCTION_LOSS = 1.0  # m, for a suction pipe nobody worked out; our choice
STRAINER_LOSS = 0.5  # m, for a suction strainer nobody measured, partly clogged; our choice
LEAST_FLOW_KEPT = 0.5  # of the flow asked for, that a fix by opening less must leave; our choice


@dataclass(frozen=True)
class Pulsing:
    """How a piston or diaphragm pump draws. factor: C of ``suction.acceleration_head``, -, for
    strokes a minute; the more chambers take turns, the steadier."""

    key: str
    name: str
    factor: float


# Factors C, of simplex single acting to quintuplex: Hydraulic Institute, standards for pumps that
# reciprocate (ANSI/HI 6.1-6.5), from memory
PULSING = (
    Pulsing("1", "One chamber", 0.400),
    Pulsing("2", "Two chambers, or one double-acting", 0.200),
    Pulsing("3", "Three chambers", 0.066),
    Pulsing("4", "Four chambers, or two double-acting", 0.115),
    Pulsing("5", "Five chambers", 0.040),
)
PULSING_BY_KEY = {kind.key: kind for kind in PULSING}
PULSE_GIVES = (
    1.4  # K of the same relation, -, water with hardly any air in it: ANSI/HI, from memory
)
DAMPER_NEAR = 1.0  # m of pipe between a dampener and the pump, at most, as a fix; our choice
WARM_SUCTION = 313.15  # K, from which vapour takes 0.75 m and more of the lift; our choice


def suction_lift(air_pa: float) -> float:
    """Suction lift to keep to where the air pressure is ``air_pa`` (Pa), m.

    z = 15 ft p_air / 101.325 kPa
    Raises nothing.  Source: common practice at sea level, scaled by air pressure (our choice).

    >>> round(suction_lift(70100.0), 1)
    3.2
    """
    return SUCTION_LIFT * air_pa / SEA_LEVEL_AIR


# Pumps and pressure tanks -------------------------------------------------------------------

RESTART_SHARE = 0.95  # restart over set pressure of a speed control; common practice, no source
LEAST_FLOW_SHARE = 0.10  # of the best flow, small pumps; common practice, no source
PREFERRED_FLOW = (0.70, 1.20)  # of the best flow: ANSI/HI 9.6.3, preferred region, from memory
MOTOR_EFFICIENCY = 0.60  # a small motor nobody measured, on the low side; our choice
CONTROL_EFFICIENCY = 0.90  # a controller nobody measured, on the low side; our choice
LEAST_CONTROL = 0.5e5  # Pa, least that a pump's control or switch is set to; our choice
SENSOR_OVER = 10.0  # m, sensor above the outlet, from which it is odd; our choice
MOST_HEAD = 400.0  # m, most head of a pump to look for, for a house; our choice
PRECHARGE_GAP = 2 * PSI  # Pa, pre-charge below cut-in; common practice, no source
MOST_IN_PARALLEL = 2  # equal pumps side by side, as a fix; our choice
STARTS_AN_HOUR = 20.0  # most starts of a small motor; common practice, no source
SHORTEST_RUN = 60.0  # s, least run of a small motor; common practice, no source
TANK_RATING = 100 * PSI  # Pa, a usual rating of small pressure tanks; common practice, no source
RELIEF_OVER = 0.10  # of the set pressure, added while fully open: ASME and API 520, from memory
# -, of discharge, under the 0.65 of API 520 for valves certified, from memory; our choice
RELIEF_COEFFICIENT = 0.62
# times cut-out, from which a relief valve rests closed, without drips; common practice, no source
RELIEF_CLEAR = 1.1
# (bore in m, name) of connections: nominal sizes of ISO 6708 and ISO 7, from memory
RELIEF_CONNECTIONS = (
    (0.015, "½ in (DN 15)"), (0.020, "¾ in (DN 20)"), (0.025, "1 in (DN 25)"),
    (0.032, "1¼ in (DN 32)"), (0.040, "1½ in (DN 40)"), (0.050, "2 in (DN 50)"),
)  # fmt: skip
SMALL_PUMP = 5 * GPM  # m3/s, most that small diaphragm pumps give; common practice, no source

# Surges -------------------------------------------------------------------------------------

KNOCK_HEARD = 1e5  # Pa, a rise heard as a knock; our choice
NEAR_RATING = 0.9  # of a rating: a peak above it leaves too little to spare; our choice
SNAP_CLOSING = 0.1  # s, a solenoid, a float that snaps, a lever tap; common practice, no source
RELIEF_SHARE = 0.05  # of the flow: a smaller relief flow is not worth saying; our choice
# Peak of surges that come again and again over the rating, by kind of pipe.  Polyethylene on AWWA's
# pressure classes: 1.5, AWWA M55, from memory.  None elsewhere: EN 805 keeps the peak within
# the allowable maximum pressure, of which a plain PN states no more than itself; our choice.
SURGE_ALLOWANCE = {"pe-sidr15": 1.5, "pe-sidr7": 1.5}
PART_RATING = 100 * PSI  # Pa, a usual filter housing or small tank; common practice, no source

# Sun ----------------------------------------------------------------------------------------

ALBEDO = 0.2  # share of the light that the ground throws back, grass or soil; common practice
MODULE_WIND = 1.0  # m/s, past a module where nobody knows it, on the low side; our choice
TURBIDITY = 3.0  # of Linke, clean air over land; common practice, no source
BRIGHTEST_DAY = 50e6  # J/m2 a day, above any on Earth outside the air (48e6 at a pole); our choice
AIR_SWING = 12.0  # K, from the coolest to the warmest of a day, dry inland places; our choice
WARMEST_HOUR = 15.0  # solar hour, at which the air is warmest; common practice, no source

# What is used -------------------------------------------------------------------------------

DAILY_PERSON = 100 * LITRE / DAY  # m3/s, taps in the house: WHO (2020), from memory
# K, water where a page asks no temperature: from 5 to 30 degC its density differs by less than
# 0.5 %; our choice
COOL_WATER = 288.15
WELL_WATER = 283.15  # K, groundwater away from the tropics; common practice, no source
HOT_DRY_DEPTH = (6e-3, 9e-3)  # m a day, warm arid places: FAO-56 table 2, from memory
HEAT_CATTLE = 40 * GALLON_US / DAY  # m3/s, one animal in heat: extension handbooks, from memory

# Rain and tanks -----------------------------------------------------------------------------

# share of the rain on a roof that reaches a tank: the rest wets it, splashes, is let go first;
# common practice, no source
ROOF_RUNOFF = 0.8
BETWEEN_RAINS = 14 * DAY  # s that a full tank that rain fills should last without; our choice
TANK_IN_HAND = 0.1  # of what a tank may give, left at the lowest of a day to be sure; our choice

# Drip ---------------------------------------------------------------------------------------

DRIP_EFFICIENCY = 0.90  # of the water, that reaches the roots by drip; common practice, no source
DRIPPER_RATED = 1e5  # Pa, at which a plain dripper gives its flow; common practice, no source
DRIPPER_LEAST = 0.7e5  # Pa, from which compensating ones hold it; common practice, no source
DRIPPER_MADE = 0.05  # variation of new drippers, good ones: ASAE EP405, from memory
# of the flow along a line, to which it is good and to which it may vary: Wu and Gitlin, from memory
FLOW_VARIES = (0.10, 0.20)
# emission uniformity that is good, and the least that passes: ASAE EP458, from memory
EMISSION = (0.80, 0.70)
DRIP_SCREEN = 0.13e-3  # m, openings of a filter for drip, 120 mesh; common practice, no source
# m, inside diameters of drip lines (16, 20, 25 and 32 mm outside); common practice, no source
DRIP_BORES = (13.6e-3, 17.6e-3, 21.2e-3, 28.0e-3)

# Sprinklers ---------------------------------------------------------------------------------

# of the water, that reaches the roots by sprinklers: FAO training manual 4 (1989), from memory
SPRINKLER_EFFICIENCY = 0.75
# of its wetted radius, that a sprinkler throws below its least pressure; common practice, no source
SHORT_THROW = 0.6
# (m/s, share of the wetted diameter): up to that wind sprinklers may be so far apart; handbooks of
# sprinkling, from memory
WIND_APART = ((0.5, 0.65), (2.0, 0.60), (3.6, 0.50))
WINDY_APART = 0.30  # of the wetted diameter, in more wind; handbooks of sprinkling, from memory


@dataclass(frozen=True)
class Soil:
    """A kind of soil. low, high: how fast it takes in water once wet, from and to, m/s."""

    key: str
    name: str
    low: float
    high: float


# Basic intake of level ground: FAO training manual 5 (1988), table 7, from memory; of sand no upper
# end is given, twice the lower one is our choice.
SOILS = (
    Soil("sand", "Sand", 30 * MM_HOUR, 60 * MM_HOUR),
    Soil("sandy", "Sandy loam", 20 * MM_HOUR, 30 * MM_HOUR),
    Soil("loam", "Loam", 10 * MM_HOUR, 20 * MM_HOUR),
    Soil("clayloam", "Clay loam", 5 * MM_HOUR, 10 * MM_HOUR),
    Soil("clay", "Clay", 1 * MM_HOUR, 5 * MM_HOUR),
)
SOIL_BY_KEY = {soil.key: soil for soil in SOILS}

# Hot water ----------------------------------------------------------------------------------

RELIEF_SEEPS = 0.9  # of its setting, from which a relief valve may drip: EN 12828, from memory
# Pa, settings of relief valves at heaters, metric and US; common practice, no source
RELIEF_USUAL = (7e5, 100 * PSI)
STORED_HOT = 333.15  # K, that keeps legionella out of a store: WHO (2007), from memory
LUKEWARM_TO = 323.15  # K, from 20 degC to which legionella grows: WHO (2007), from memory
SCALDS_ABOVE = 322.15  # K (120 F), water at a tap or shower: IPC 424.3, from memory
MIXED_TO = 318.15  # K, a mixing valve set with something to spare; our choice
HOT_WITHIN = 60.0  # s, in which a tap should run hot: HSE HSG274 part 2, from memory
HEATER_SLENDER = 150.0  # diameter of a steel heater over its wall, about 3 mm of 450; our choice
# (K, s): how long water of that heat takes to burn an adult's skin deeply, 120 to 155 degF; after
# A. R. Moritz and F. C. Henriques, Am. J. Pathology 23 (1947), as the trade prints it, from memory
SCALDS = tuple(
    (273.15 + (f - 32) * 5 / 9, s)
    for f, s in (
        (120, 300.0), (124, 180.0), (127, 60.0), (133, 15.0), (140, 5.0), (148, 2.0), (155, 1.0),
    )
)  # fmt: skip
