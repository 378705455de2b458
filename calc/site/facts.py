"""What is known of a place: every scalar fact there is, by its path.

``code``s stand in links and never change.
"""

from __future__ import annotations

import math

from calc import practice, units
from calc.pipe import pipes
from calc.site.slot import (
    ASSUMED,
    GIVEN,
    LONG,
    NAME,
    NOT_KNOWN,
    SHORT,
    STANDINGS,
    UNKNOWN,
    Fact,
    Slot,
    choice,
    count,
    quantity,
    text,
)

__all__ = [
    "ASSUMED",
    "BATTERY_KINDS",
    "BY_PATH",
    "CHARGERS",
    "FACINGS",
    "GIVEN",
    "LONG",
    "MONTH_KEYS",
    "NAME",
    "NOT_KNOWN",
    "PATTERNS",
    "PIPES",
    "SEASONS",
    "SHORT",
    "SLOTS",
    "STANDINGS",
    "UNKNOWN",
    "WATERS",
    "Fact",
    "Slot",
    "choice",
    "count",
    "quantity",
    "text",
]

MONTHS = 24  # numbers of a climate: twelve of sun, then twelve of temperature
YEAR = 12  # numbers of a year, January first
YES_NO = (("yes", "Yes"), ("no", "No"))
WATERS = (("well", "Well"), ("spring", "Spring"), ("cistern", "Cistern"), ("stream", "Stream"))
CONTROLS = (
    ("speed", "Speed control"), ("fixed", "Fixed speed"), ("switch", "Pressure switch"),
)  # fmt: skip
FACINGS = (
    ("equator", "The midday sun"), ("n", "North"), ("ne", "North-east"), ("e", "East"),
    ("se", "South-east"), ("s", "South"), ("sw", "South-west"), ("w", "West"),
    ("nw", "North-west"),
)  # fmt: skip
BATTERY_KINDS = tuple((kind.key, kind.name) for kind in practice.BATTERIES)
CHARGERS = (("mppt", "MPPT (follows the panels)"), ("pwm", "PWM (only switches)"))
PATTERNS = (
    ("home", "Home: morning and evening"), ("dawn", "Drip lines at dawn"),
    ("day", "Through the day: stock, work"), ("even", "Evenly, day and night"),
)  # fmt: skip
SEASONS = (
    ("even", "The same in every month"), ("north", "More from April to September"),
    ("south", "More from October to March"),
)  # fmt: skip
MONTH_KEYS = tuple((name[:3].lower(), name) for name in units.MONTHS)
PIPES = tuple((f"{p.kind}/{p.size}", p.label) for kind in pipes.KINDS for p in pipes.sizes(kind))


def _same(words: str) -> tuple[tuple[str, str], ...]:
    """Choices that a form shows in words of its own."""
    return tuple((word, word) for word in words.split())


_PRACTICE, _OURS, _DATUM = "common practice", "our choice", "counted from the ground at the source"
_PLACE = (
    text("place.name", "pn", "Place", NAME),
    quantity("place.latitude", "pa", "Latitude", "angle", -math.pi / 2, math.pi / 2),
    quantity("place.longitude", "po", "Longitude", "angle", -math.pi, math.pi),
    quantity("place.altitude", "ph", "Height above sea level", "length", -400.0, 5000.0,
             "300 m", "most places lie lower; our choice"),
    text("place.datum", "pz", "Heights are counted from", SHORT, "the ground at the source",
         _OURS),
    text("place.data", "pv", "Version of the climate data"),
    Slot("place.climate", "pc", "Sun and temperature by month", "numbers", longest=MONTHS),
)  # fmt: skip
_WATER = (
    choice("water.kind", "wk", "Source", WATERS),
    quantity("water.level", "wl", "Lowest water level", "length", -200.0, 400.0),
    quantity("water.yield", "wy", "Yield of the source", "flow", 0.0, 1.0),
    quantity("water.stored", "ws", "Water standing in the well", "volume", 0.0, 200.0, "0 L",
             "none counted on"),
    quantity("water.temperature", "wt", "Water temperature", "temperature", 273.15, 373.15,
             "15 °C", f"usual for ground water; {_PRACTICE}"),
)  # fmt: skip
_SUCTION = (
    quantity("suction.length", "sl", "Length of suction pipe", "length", 0.1, 500.0),
    choice("suction.pipe", "sp", "Suction pipe size", PIPES),
    count("suction.foot_valves", "sf", "Foot valves with strainer", 0, 3, "1", _PRACTICE),
    count("suction.bends", "sb", "Bends in the suction pipe", 0, 20, "1", _PRACTICE),
    quantity("suction.strainer", "ss", "Lost in a strainer at the pump", "head", 0.0, 5.0, "0 m",
             "none named"),
)  # fmt: skip
_PUMP = (
    choice("pump.present", "up", "There is a pump", YES_NO, "yes", _OURS),
    quantity("pump.height", "uh", "Height of the pump", "length", -200.0, 400.0, "0 m", _DATUM),
    choice("pump.placement", "ul", "Where the pump is",
           (("out", "Out of the water"), ("in", "In the water")), "out", _OURS),
    text("pump.id", "ui", "Pump", SHORT, "middle",
         "an invented pump; choose yours"),
    text("pump.curve", "uv", "The pump's table", LONG),
    choice("pump.works", "uw", "How the pump works",
           (("centrifugal", "Centrifugal (impeller)"),
            ("diaphragm", "Diaphragm or other displacement pump")), "centrifugal", _PRACTICE),
    quantity("pump.npsh", "un", "NPSH required", "head", 0.0, 20.0),
    quantity("pump.dry_lift", "ud", "Dry lift at sea level", "length", 0.1, 10.0),
    quantity("pump.most_flow", "um", "Maximum flow at set pressure", "flow", 1e-7, 0.05),
    choice("pump.control", "uc", "Control", CONTROLS, "speed", f"usual with solar power; {_OURS}"),
    quantity("pump.set", "us", "Set pressure", "pressure", 0.1e5, 16e5),
    quantity("pump.sensed", "ue", "Height where pressure is sensed", "length", -200.0, 400.0),
    quantity("pump.cut_in", "ua", "Cut-in pressure", "pressure", 0.1e5, 15e5),
    quantity("pump.cut_out", "uo", "Cut-out pressure", "pressure", 0.1e5, 20e5),
    quantity("pump.starts", "ut", "Starts per hour allowed", "per_hour", 1 / 3600, 300 / 3600,
             f"{practice.STARTS_AN_HOUR:g} per hour", _PRACTICE),
    count("pump.count", "uu", "Identical pumps in parallel", 1, 3, "1", _OURS),
    quantity("pump.least_flow", "uf", "Least flow of the pump", "flow", 0.0, 0.05),
    quantity("pump.motor", "uy", "Motor efficiency", "percent", 0.2, 1.0, "75 %", _PRACTICE),
    quantity("pump.controller", "uz", "Controller efficiency", "percent", 0.2, 1.0, "95 %",
             _PRACTICE),
    choice("pump.guard", "uq", "What guards a diaphragm pump",
           (("both", "A pressure switch or bypass, and a relief valve"),
            ("switch", "A pressure switch or bypass only"), ("relief", "A relief valve only"),
            ("none", "Neither")), "both", _PRACTICE),
    choice("pump.relief", "uk", "Relief valve at the pump", YES_NO, "no", _OURS),
    choice("pump.grade", "ug", "Tolerance of the pump curve",
           tuple((key, key) for key in ("1B", "2B", "3B", "none")), "3B", _PRACTICE),
)  # fmt: skip
_TANKS = (
    quantity("pressure_tank.volume", "tv", "Pressure tank volume", "volume", 1e-4, 10.0),
    quantity("pressure_tank.precharge", "tp", "Pre-charge", "pressure", 0.0, 15e5),
    quantity("pressure_tank.rating", "tr", "Pressure tank rating", "pressure", 1e5, 40e5),
    quantity("store.volume", "cv", "Storage tank volume", "volume", 0.01, 1e4),
    quantity("store.days", "cd", "Days without supply", "days", 0.0, 60 * 86400.0, "3 days",
             _PRACTICE),
    quantity("store.usable", "cu", "Usable share of the tank", "percent", 0.3, 1.0,
             "90 %", _PRACTICE),
    quantity("store.inflow", "ci", "What the pump or source gives it", "flow", 0.0, 1.0),
    quantity("store.hours", "ch", "Hours it is filled a day", "number", 0.5, 24.0, "6",
             f"full sun on a fair day; {_PRACTICE}"),
)  # fmt: skip
_USE = (
    count("use.people", "ep", "People", 0, 500),
    quantity("use.each", "ee", "Water a person uses a day", "daily", 0.0, 1e-5, "100 L/day",
             _PRACTICE),
    choice("use.pattern", "et", "When it is used", PATTERNS, "home", _OURS),
    count("use.showers", "ea", "Showers", 0, 60),
    count("use.sinks", "eb", "Sinks and wash basins", 0, 60),
    count("use.toilets", "ec", "Toilets with a cistern", 0, 60),
    count("use.washers", "ed", "Washing machines", 0, 60),
    count("use.hoses", "ef", "Hoses", 0, 60),
    count("use.troughs", "eg", "Trough float valves", 0, 60),
    quantity("use.busy", "eh", "Peak-hour use", "percent", 0.1, 5.0, "100 %", _PRACTICE),
    quantity("use.leak", "el", "Leaks and drips", "flow", 0.0, 0.01, "0.05 L/min", _PRACTICE),
    quantity("use.drip_share", "es", "Drip water that reaches roots", "percent", 0.3, 1.0,
             "90 %", _PRACTICE),
    quantity("use.depth", "ew", "Water the plants use a day", "rain", 0.0, 0.02, "4 mm",
             f"a summer day; {_PRACTICE}"),
    quantity("use.smallest", "em", "Smallest steady draw", "flow", 1e-8, 0.05),
    quantity("use.daily", "ey", "Water used a day, as measured", "daily", 1e-9, 1e-2),
)  # fmt: skip
_LINES = (
    quantity("pipes.hottest", "lh", "Hottest the pipe gets", "temperature", 273.15, 373.15,
             "20 °C", "buried or in the shade"),
    quantity("pipes.weakest", "lw", "Lowest-rated part in the line", "pressure", 0.1e5, 100e5),
    choice("pipes.held", "ld", "How the pipe is held",
           (("buried", "Buried, or clipped and glued"), ("laid", "Laid on the ground"),
            ("joints", "Push-fit joints")), "buried", _OURS),
)  # fmt: skip
_POWER = (
    choice("power.source", "rs", "Power",
           (("grid", "Mains"), ("sun", "Sun"), ("generator", "Generator"), ("none", "None"))),
    quantity("power.voltage", "rv", "System voltage", "voltage", 1.0, 1000.0),
    quantity("power.cable", "rc", "Length of cable", "length", 0.1, 20e3),
    quantity("power.shade", "rh", "Share lost to shade", "percent", 0.0, 0.95),
    quantity("power.panel", "rw", "Rated power of one panel", "power", 1.0, 1000.0),
    quantity("power.open_voltage", "ro", "Open-circuit voltage of a panel", "voltage", 1.0,
             500.0),
    count("power.series", "ri", "Panels in a string", 1, 20),
    count("power.strings", "rp", "Strings side by side", 1, 100),
    quantity("power.tilt", "rt", "Tilt of the panels", "angle", 0.0, math.pi / 2),
    choice("power.facing", "rf", "Facing of the panels", FACINGS),
    choice("power.battery", "rb", "Kind of battery", BATTERY_KINDS),
    quantity("power.capacity", "ra", "Battery capacity", "charge", 360.0, 3.6e8),
    choice("power.controller", "rx", "Charge controller", CHARGERS),
    quantity("power.limit", "rl", "Maximum panel voltage", "voltage", 1.0, 1500.0),
    quantity("power.amps", "rm", "Maximum charging current", "current", 0.1, 1000.0),
    count("power.fail", "rd", "Days a year that may fail", 0, 365),
    quantity("power.hill_tank", "rk", "Tank that feeds the taps", "volume", 0.0,
             1e4, "0 L", "none named"),
    choice("power.season", "rn", "Use over the year", SEASONS, "even", _OURS),
)  # fmt: skip

_FALL = (  # a pipe line that runs down by its height alone
    quantity("fall.drop", "gd", "Drop from source to outlet", "length", -200.0, 400.0),
    quantity("fall.length", "gl", "Length of the line", "length", 0.1, 20e3),
    quantity("fall.flow", "gf", "Flow wanted from the line", "flow", 1e-7, 0.05),
    choice("fall.pipe", "gp", "Pipe of the line", PIPES),
    choice("fall.use", "gu", "What its water is for",
           (("house", "House"), ("drip", "Drip lines"), ("trough", "Open trough or tank"),
            ("own", "Another pressure"))),
    quantity("fall.wanted", "gw", "Pressure wanted from the line", "pressure", 0.0, 20e5),
    choice("fall.broken", "gb", "What takes pressure away",
           (("none", "Nothing"), ("tank", "Break-pressure tanks"),
            ("valve", "Pressure-reducing valves"))),
    count("fall.breaks", "gn", "How many of those", 1, 20),
    quantity("fall.held", "gh", "Pressure after each valve", "pressure", 0.1e5, 10e5),
    quantity("pipes.extra", "le", "Added length for bends, valves", "percent", 0.0, 2.0,
             f"{100 * practice.EXTRA_LENGTH:g} %", "usual where fittings are not counted"),
)  # fmt: skip
_WELL = (  # levels and depths below the top of the well
    choice("well.known", "bk", "What is known of the well",
           (("bucket", "A pumping or bucket test"), ("levels", "Two levels"),
            ("recovery", "A recovery test"), ("told", "A figure from the driller"))),
    quantity("well.drawn", "bd", "Drawn before the flow fell", "volume", 1e-3, 1e3),
    quantity("well.drawn_for", "bt", "Time that took", "minutes", 60.0, 30 * 86400.0),
    quantity("well.steady", "by", "Steady flow after that", "flow", 0.0, 1.0),
    quantity("well.tested", "bf", "Flow of the test", "flow", 1e-6, 1.0),
    quantity("well.pumping", "bp", "Pumping level at that flow", "length", 0.0, 500.0),
    quantity("well.rate", "br", "Flow before a recovery", "flow", 1e-6, 1.0),
    quantity("well.pumped_for", "bm", "Time it was pumped", "minutes", 60.0, 30 * 86400.0),
    quantity("well.static", "bs", "Static level", "length", 0.0, 500.0),
    quantity("well.intake", "bi", "Depth of the intake", "length", 0.1, 500.0),
    quantity("well.depth", "be", "Depth of the well", "length", 0.2, 500.0),
    quantity("well.bore", "bb", "Inside diameter of the well", "diameter", 0.03, 10.0),
    quantity("well.cover", "bc", "Least water above the intake", "length", 0.0, 30.0),
    quantity("well.clear", "bl", "Kept free above the floor", "length", 0.0, 30.0),
    quantity("well.drop_pipe", "bj", "Length of drop pipe", "length", 0.1, 500.0),
    choice("pump.dry_run", "bu", "Dry-run protection", YES_NO, "no", "the careful side"),
    quantity("pump.diameter", "bo", "Outside diameter of the pump", "diameter", 0.03, 0.5),
    quantity("pump.sleeve", "bv", "Cooling sleeve, inside", "diameter", 0.03, 1.0),
    quantity("pump.cooling", "bw", "Least cooling speed", "speed", 0.01, 1.0),
    choice("pump.sensed_at", "bh", "Where the pressure is sensed",
           (("top", "At the top of the well"), ("house", "At the house"))),
    quantity("use.peak", "eq", "Used in the busiest time", "volume", 0.0, 1e3),
    quantity("use.peak_time", "ez", "How long that lasts", "minutes", 60.0, 86400.0, "60 min",
             "the busiest hour"),
)  # fmt: skip
_HILL = (  # the storage tank by the hour, its pipe, and a roof that fills it
    quantity("use.garden", "hg", "More on a dry month's day", "daily", 0.0, 1e-2),
    quantity("use.garden_from", "hf", "Hour that watering begins", "number", 0.0, 24.0, "18",
             f"evening, when less dries up; {_OURS}"),
    quantity("use.garden_hours", "hh", "Hours of watering a day", "number", 0.25, 24.0, "2",
             _OURS),
    choice("store.fills", "hx", "What fills the tank",
           (("sun", "A pump, while the sun shines"), ("hours", "A pump or spring in some hours"),
            ("always", "A spring, day and night"), ("none", "Nothing but rain"))),
    quantity("store.dry_inflow", "hd", "Flow into it in the dry month", "flow", 0.0, 1.0),
    quantity("store.begins", "hb", "Hour that filling begins", "number", 0.0, 24.0),
    quantity("store.height", "ht", "Tank above the outlet", "length", 0.0, 300.0),
    quantity("store.reserve", "hr", "Fire reserve kept in the tank", "volume", 0.0, 1e4),
    choice("store.shape", "hs", "What is known of its shape",
           (("depth", "How deep its water is"), ("plan", "Its floor area"))),
    quantity("store.depth", "hp", "Depth of its water when full", "length", 0.05, 30.0),
    quantity("store.floor", "ha", "Floor area of the tank", "area", 0.05, 1e5),
    quantity("store.line", "hl", "Pipe from tank to outlet", "length", 0.1, 20e3),
    choice("store.pipe", "hk", "Size of that pipe", PIPES),
    choice("rain.used", "hu", "A roof fills the tank too", YES_NO),
    quantity("rain.roof", "ho", "Roof area, from above", "area", 1.0, 1e5),
    quantity("rain.runoff", "hn", "Share that reaches the tank", "percent", 0.1, 1.0),
    Slot("rain.months", "hm", "Rain by month", "numbers", longest=YEAR),
    count("rain.dry_from", "hj", "First dry month", 1, 12),
    count("rain.dry_count", "hc", "Number of dry months", 0, 12),
)  # fmt: skip
_DRIP = (  # a garden on drip
    quantity("drip.rows", "ir", "Distance between rows", "length", 0.1, 20.0),
    choice("drip.crop", "ic", "What grows there", _same(
        "tomato pepper potato onion carrot cabbage lettuce cucumber squash melon bean corn "
        "strawberry mint berry grape apple olive own")),
    quantity("drip.need", "in", "Crop coefficient", "number", 0.1, 1.5),
    choice("drip.climate", "ik", "How its climate is known",
           (("known", "Reference ET₀"), ("warm", "Temperature and latitude"),
            ("full", "With humidity, wind and sun"), ("months", "ET₀ of each month"))),
    quantity("drip.reference", "ie", "Reference ET₀ a day", "rain", 0.5e-3, 15e-3),
    choice("drip.month", "im", "Month with the greatest need", MONTH_KEYS),
    quantity("drip.warmest", "iw", "Mean daily maximum", "temperature", 273.15, 328.15),
    quantity("drip.coolest", "io", "Mean daily minimum", "temperature", 263.15, 318.15),
    quantity("drip.humidity", "iu", "Mean humidity of the air", "percent", 0.05, 1.0),
    quantity("drip.wind", "iv", "Wind, 2 m above the ground", "speed", 0.0, 15.0),
    quantity("drip.light", "ig", "Sun on level ground, a day", "irradiation", 0.1 * 3.6e6,
             11 * 3.6e6),
    quantity("drip.flow", "if", "Flow at the garden", "flow", 1e-6, 1.0),
    quantity("drip.pressure", "ip", "Pressure where lines begin", "pressure", 1e3, 10e5),
    quantity("drip.hours", "ih", "Hours a day it may run", "number", 0.1, 24.0),
    quantity("drip.length", "il", "Length of one drip line", "length", 0.5, 500.0),
    quantity("drip.spacing", "is", "Distance between drippers", "length", 0.05, 10.0),
    quantity("drip.dripper", "id", "Flow of one dripper", "dripper", 0.1e-6, 50e-6),
    choice("drip.holds", "ia", "Kind of dripper",
           (("plain", "More pressure gives more"), ("steady", "Pressure-compensating"))),
    quantity("drip.rated", "it", "Pressure a dripper is rated at", "pressure", 0.05e5, 5e5),
    quantity("drip.least", "iz", "Least pressure it needs", "pressure", 0.05e5, 5e5),
    quantity("drip.bore", "ib", "Inside diameter of a drip line", "diameter", 4e-3, 0.1),
    quantity("drip.slope", "ij", "Slope along the line", "percent", -0.2, 0.2, "0 %",
             f"taken as level; {_OURS}"),
    quantity("drip.made", "iq", "Variation of new drippers", "percent", 0.0, 0.3),
    quantity("drip.zones", "ix", "Zones, one after another", "number", 1.0, 500.0),
    quantity("drip.daily", "ii", "Water there is a day", "daily", 1e-9, 1.0),
    choice("drip.filter", "iy", "Filter before the lines", YES_NO, "no", "as if there is none"),
    choice("drip.fed", "nf", "Where the manifold is fed",
           (("none", "Not counted"), ("start", "At one end"), ("middle", "In the middle"))),
    choice("drip.manifold", "np", "Pipe of the manifold", PIPES),
    quantity("drip.across", "ns", "Slope along the manifold", "percent", -0.2, 0.2, "0 %",
             f"taken as level; {_OURS}"),
)  # fmt: skip
_HOT = (
    quantity("hot.volume", "qv", "Water heater volume", "volume", 1e-3, 10.0),
    quantity("hot.stored", "qs", "Hot water is stored at", "temperature", 293.15, 368.15),
    quantity("hot.tank", "qt", "Expansion tank volume", "volume", 1e-4, 10.0),
    quantity("hot.precharge", "qp", "Pre-charge of expansion tank", "pressure", 0.0, 16e5),
    quantity("hot.relief", "qr", "Relief valve setting, heater", "pressure", 0.5e5, 25e5),
)  # fmt: skip

SLOTS = (
    *_PLACE, *_WATER, *_SUCTION, *_PUMP, *_TANKS, *_USE, *_LINES, *_POWER, *_FALL, *_WELL, *_HILL,
    *_DRIP, *_HOT,
)  # fmt: skip
BY_PATH = {slot.key: slot for slot in SLOTS}
