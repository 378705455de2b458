"""Fields of a supply that runs on the sun, with a battery: asked alike wherever it is judged."""

from __future__ import annotations

import math

from calc import practice
from calc.page.fields import Choice, Count, Number, Unknown
from calc.sheets.parts.fields import daily_use, use_pattern, usual
from calc.sheets.parts.place import FIELDS as PLACE_FIELDS
from calc.site.facts import BATTERY_KINDS, CHARGERS, FACINGS, SEASONS
from calc.units import HOUR

SUN, STORE, MORE = "How the panels stand", "Controller", "Use, losses and backup"
SEASON = (
    Choice("season", "Over the year", SEASONS, "even", group=MORE),
    Number(
        "off", "Share of it in the other months", "percent", "60 %", "60 %", 0.0, 1.0,
        when=("season", ("north", "south")), group=MORE,
    ),
)  # fmt: skip
USE, PATTERN = daily_use(), use_pattern(MORE)
COMPASS = {word: at * math.pi / 4 for at, (word, _) in enumerate(FACINGS[1:])}
STAND = (
    Number(
        "tilt", "Tilt from level", "angle", "40°", "40°", 0.0, math.pi / 2,
        help="0° lies flat, 90° stands upright", group=SUN,
    ),
    Choice("facing", "Facing", FACINGS, "equator", group=SUN),
    Number(
        "shade", "Light lost to trees and hills", "percent", "0 %", "0 %", 0.0, 0.95,
        group=SUN,
        unknown=Unknown("10 %", "10 %", "careful where nobody has looked from dawn to dusk"),
    ),
)  # fmt: skip
PANELS = (
    Number("rated", "Rated power of one panel", "power", "250 W", "250 W", 1.0, 1000.0),
    Count("series", "Panels in a string, one after the other", 1, 1, 20),
    Count("strings", "Strings side by side", 2, 1, 100),
)
DEEPER = (
    Number(
        "openv", "Open-circuit voltage of one panel", "voltage", "", "", 1.0, 500.0,
        optional=True, help="From its label. If blank, what is usual", group=SUN,
    ),
    Number(
        "coldest", "Coldest air ever", "temperature", "", "", 203.15, 303.15, optional=True,
        help="Cold raises the panels’ voltage. If blank, "
        f"{practice.COLDEST_BELOW:g} °C ({1.8 * practice.COLDEST_BELOW:g} °F) below the coldest "
        "month",
        group=SUN,
    ),
)  # fmt: skip
BATTERY = (
    Choice("kind", "Kind of battery", BATTERY_KINDS, "lfp"),
    Choice("volts", "Battery voltage", (("12", "12 V"), ("24", "24 V"), ("48", "48 V")), "24"),
    Number(
        "ah", "Battery capacity", "charge", "100 Ah", "100 Ah", 0.1 * HOUR, 1e5 * HOUR,
        help="At the 20-hour rate, all batteries together",
    ),
)  # fmt: skip
TANK = Number(
    "tank", "Tank that feeds the taps by its height", "volume", "0 L", "0 gal", 0.0, 1e4,
    help="The pump then works into the tank: give its flow and power there",
)  # fmt: skip
FAIL = Count(
    "fail", "Days a year that may fail", 5, 0, 365,
    help="A day fails when any hour of it gets less water than is asked for",
)  # fmt: skip
PUMP = (
    Number("flow", "Flow of the pump at work", "flow", "15 L/min", "4 gpm", 1e-7, 1.0),
    Number(
        "watts", "Power it then draws", "power", "250 W", "250 W", 1.0, 1e5,
        help="From the supply, with its controller",
    ),
)  # fmt: skip
CONTROLLER = (
    Choice("control", "Charge controller", CHARGERS, "mppt", group=STORE),
    Number(
        "limit", "Maximum panel voltage it takes", "voltage", "100 V", "100 V", 1.0, 1500.0,
        group=STORE, unknown=Unknown("100 V", "100 V", "usual for a small one"),
    ),
    Number(
        "amps", "Maximum current it gives", "current", "30 A", "30 A", 0.1, 1000.0,
        group=STORE, unknown=Unknown("30 A", "30 A", "usual for a small one"),
    ),
    Number(
        "standby", "Drawn by the pump's controller at rest", "power", "5 W", "5 W", 0.0, 500.0,
        group=MORE, unknown=usual(practice.PUMP_STANDBY, "power", "usual; common practice"),
    ),
)  # fmt: skip
INVERTER = (
    Choice(
        "feed",
        "The pump runs on",
        (("dc", "The battery’s DC, by its controller"), ("ac", "AC, from an inverter")),
        "dc",
        group=MORE,
    ),
    Number(
        "inverter", "Rated power of the inverter", "power", "1500 W", "1500 W", 10.0, 1e5,
        when=("feed", ("ac",)), group=MORE,
        help="At part load it takes a larger share",
    ),
    Number(
        "noload", "Drawn by the inverter at rest", "power", "15 W", "15 W", 0.0, 500.0,
        when=("feed", ("ac",)), group=MORE,
        unknown=usual(
            practice.INVERTER_STANDBY, "power", "usual for one left switched on; common practice"
        ),
    ),
)  # fmt: skip
BACKUP = (
    Choice(
        "backup",
        "Backup",
        (("none", "None"), ("mains", "Mains"), ("generator", "Generator")),
        "none",
        group=MORE,
    ),
    Number(
        "aid", "Power the backup gives", "power", "1000 W", "1000 W", 1.0, 1e6,
        when=("backup", ("mains", "generator")), group=MORE,
    ),
    Number(
        "aidhours", "Hours a day it may run", "number", "4", "4", 0.0, 24.0,
        when=("backup", ("mains", "generator")), group=MORE,
    ),
)  # fmt: skip
FIELDS = (
    USE, *PUMP, *PANELS, *BATTERY, TANK, FAIL, *PLACE_FIELDS, *STAND, *DEEPER, *CONTROLLER,
    PATTERN, *SEASON, *INVERTER, *BACKUP,
)  # fmt: skip
# what the physics refuses -> the field it came from
ARGUMENTS = {
    "means": "months", "latitude": "lat", "slope": "tilt", "rated_w": "rated",
    "open_v": "openv", "best_v": "openv", "short_a": "openv",
    "series": "series", "parallel": "strings",
    "kind": "kind", "nominal_v": "volts", "energy_j": "ah", "amp_hours": "ah",
    "limit_v": "limit", "most_a": "amps", "power_w": "watts", "flow_m3s": "flow",
    "standby_w": "standby", "tank_m3": "tank", "hours": "aidhours", "load": "inverter",
    "air": "months", "air_k": "months", "module_k": "months", "plane": "months",
}  # fmt: skip
LIVE = (
    "Panels cannot be switched off by day: their terminals are live in any light.",
    "A DC arc does not go out by itself. Never unplug a connector under load.",
)
STORED = (
    "A battery short-circuits with thousands of amperes. Keep tools and rings off its "
    "terminals and put its fuse beside them.",
    "Batteries give off gas or burn: house them ventilated, dry, away from heat and from "
    "where people sleep.",
)
FALLS = "Falls from roofs kill: work at height is for people who are trained and secured."
EARTHED = "Earth (ground) frames and fit lightning protection as the local code asks."
BUILT = (
    FALLS,
    EARTHED,
    "Keep controllers and batteries in enclosures that stay dry, shaded and free of frost.",
    "Wiring, fuses and disconnects: a licensed person, to local codes.",
)
LIFT = "Panels and batteries are heavy: lift them with help, panels only in still air."
CAUTIONS = (*LIVE, *STORED, *BUILT, LIFT)
SOURCES = (
    "Sun and air by month: see “Where the figures come from”.",
    "Days from months: Bendt, Collares-Pereira and Rabl (1981); Graham, Hollands and Huget "
    "(1988). Light on panels: Hay and Davies (1980); their warmth: Faiman (2008).",
    "Batteries, controllers, losses: common practice, no source.",
    "Quick method: after IEEE 1013 and IEEE 1562, from memory.",
)
