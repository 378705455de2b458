"""Panels, batteries and cables: tables of conductors, pvlib, a year by another program."""

import numpy as np
import pvlib

from calc.power import array, battery, cable, design
from calc.power.array import Array, Module, usual_module
from calc.power.year import simulate
from calc.practice import BATTERY_BY_KEY
from tests.power.places import HOME, system, weather
from tests.reference.checks.check import (
    INDEPENDENT,
    LIBRARY,
    MEMORY,
    PUBLISHED,
    give,
    library,
    part,
    table,
)  # fmt: skip

SUBJECT = "Panels, batteries and cables"
IEC = "IEC 60228, plain copper, as printed in cable tables"
NEC = "NEC chapter 9 table 8"
FOOT_1000 = 304.8  # m

# ohm/km at 20 degC, largest allowed.  50 mm2 is left out: such conductors are made with 47 mm2,
# which is no relation of area and resistance.
_CLASS_2 = [(1.5, 12.1), (2.5, 7.41), (4, 4.61), (6, 3.08), (10, 1.83), (16, 1.15), (25, 0.727),
            (35, 0.524), (70, 0.268), (95, 0.193), (120, 0.153)]  # fmt: skip
_CLASS_5 = [(1.5, 13.3), (2.5, 7.98), (4, 4.95), (6, 3.30), (10, 1.91), (16, 1.21), (25, 0.780),
            (35, 0.554), (70, 0.272), (95, 0.206), (120, 0.161)]  # fmt: skip
# AWG, ohm/kFT at 75 degC, uncoated copper and aluminium, stranded
_COPPER = [("14", 3.14), ("12", 1.98), ("10", 1.24), ("8", 0.778)]
_COPPER_READ = [("6", 0.491), ("4", 0.308), ("2", 0.194), ("1/0", 0.122), ("4/0", 0.0608)]
_ALUMINIUM = [("6", 0.808), ("4", 0.508), ("2", 0.319), ("1/0", 0.201), ("4/0", 0.100)]
STRANDS = "strands by size differ by 1 %, and three figures are printed"


def _one(series, name):
    return next(one for one in cable.SERIES[series] if one.name.split()[0] == name)


def _by_area(series, area):
    one = _one(series, f"{area:g}")
    return 1e3 * cable.resistance(one.area, 293.15, allowance=one.allowance)


def _gauge(metal):
    def found(name):
        one = _one("awg", name)
        return FOOT_1000 * cable.resistance(one.area, 348.15, metal, one.allowance)

    return found


CABLES = (
    *table(SUBJECT, "power.cable", "A km of stranded copper, {0} mm²", _CLASS_2,
           lambda area: _by_area("mm2", area), source=IEC, kind=PUBLISHED, near=part(0.025),
           unit="Ω", place="class 2", why="its own allowance for strands is 5 to 9 %, ours is one"),
    *table(SUBJECT, "power.cable", "A km of flexible copper, {0} mm²", _CLASS_5,
           lambda area: _by_area("mm2-flexible", area), source=IEC, kind=PUBLISHED,
           near=part(0.045), unit="Ω", place="class 5",
           why="its own allowance for strands is 10 to 16 %, ours is one"),
    *table(SUBJECT, "power.cable", "1000 ft of copper, {0} AWG, 75 °C", _COPPER_READ,
           _gauge("copper"), source=f"{NEC}, as reprinted", kind=PUBLISHED, near=part(0.015),
           unit="Ω", why=STRANDS),
    *table(SUBJECT, "power.cable", "1000 ft of aluminium, {0} AWG, 75 °C", _ALUMINIUM,
           _gauge("aluminium"), source=f"{NEC}, as reprinted", kind=PUBLISHED, near=part(0.015),
           unit="Ω", why=STRANDS),
    *table(SUBJECT, "power.cable", "1000 ft of copper, {0} AWG, 75 °C", _COPPER, _gauge("copper"),
           source=NEC, kind=MEMORY, near=part(0.015), unit="Ω", why=STRANDS),
)  # fmt: skip

# Panels -----------------------------------------------------------------------------------------

PVLIB = library("pvlib")


def pvwatts(plane, celsius):
    one = Array(usual_module(400.0), 2, 3)
    left = 1 - pvlib.pvsystem.pvwatts_losses(
        soiling=3, shading=0, snow=0, mismatch=2, wiring=3, connections=0, lid=0,
        nameplate_rating=0, age=0, availability=0,
    ) / 100  # fmt: skip
    return left * pvlib.pvsystem.pvwatts_dc(plane, celsius, one.rated_w, one.module.power_rise)


def _cold(series):
    """V, of panels of 40 V open and -0.30 % a kelvin, at -15 degC."""
    one = Module(330.0, 40.0, 33.0, 10.6, 10.0, voltage_rise=-0.0030)
    return array.open_voltage(one, series, 258.15)


def _string_example():
    """V: 49.5 V open, -0.28 % a kelvin, -5 degC."""
    one = Module(550.0, 49.5, 41.2, 14.0, 13.3, voltage_rise=-0.0028)
    return array.open_voltage(one, 1, 268.15), array.most_in_series(one, 268.15, 1000.0)


LESSON = "Lesson on strings of solar panels, worked example (stored page)"
PANELS = (
    *table(SUBJECT, "power.array", "Six panels of 400 W in {0:g} W/m² at {1:g} °C",
           [(plane, celsius) for plane in (80.0, 450.0, 1150.0) for celsius in (-20.0, 68.0)],
           lambda plane, celsius: array.power(Array(usual_module(400.0), 2, 3), plane,
                                              273.15 + celsius),
           source=PVLIB, kind=LIBRARY, near=part(1e-12), unit="W", against=pvwatts),
    *table(SUBJECT, "power.array", "Open voltage of a 49.5 V panel at -5 °C", [(53.66,)],
           lambda: _string_example()[0], source=LESSON, kind=PUBLISHED, near=give(0.005), unit="V"),
    *table(SUBJECT, "power.array", "Most such panels in a string of 1000 V", [(18,)],
           lambda: _string_example()[1], source=LESSON, kind=PUBLISHED, near=give(0.0)),
    *table(SUBJECT, "power.array", "Open voltage of {0} panels of 40 V at -15 °C", [(3, 134.4)],
           _cold, source="NEC 690.7, by hand", kind=MEMORY, near=part(1e-12), unit="V"),
)  # fmt: skip


def _autonomy():
    """Ah at 24 V, 75 Ah a day, five days, 80 % to be drawn."""
    daily = battery.energy_from_ah(24.0, 75.0)
    return design.hand_battery(daily, 5.0, 0.8, 1.0) / 3600 / 24


SIZES = (
    *table(SUBJECT, "power.design", "Battery for 1000 Wh a day, 2.5 days, half of it drawn",
           [(5000.0,)], lambda: design.hand_battery(1000.0 * 3600, 2.5, 0.5, 1.0) / 3600,
           source="Simplified battery sizing after IEEE, worked example (stored page)",
           kind=PUBLISHED, near=part(1e-9), unit="Wh"),
    *table(SUBJECT, "power.design", "Panels for 75 Ah a day at 24 V, 4 h of sun, {0} left",
           [(1.0, 450.0), (0.9, 500.0)],
           lambda left: design.hand_sum(battery.energy_from_ah(24.0, 75.0), 4.0, left),
           source="IEEE 1562 and 1013, laid out as in their annexes", kind=MEMORY,
           near=part(1e-12), unit="W"),
    *table(SUBJECT, "power.design", "Battery for 75 Ah a day, five days, 80 % drawn", [(468.75,)],
           _autonomy, source="IEEE 1562 and 1013, laid out as in their annexes", kind=MEMORY,
           near=part(1e-12), unit="Ah"),
)  # fmt: skip

# A year -----------------------------------------------------------------------------------------


def other_year(weather, one, demand, start_wh):
    """The year again, all inputs as numpy arrays, told by what each hour could do at most.

    Written apart from the calculator: the pump's water of an hour is the least of four limits,
    and energy is booked by balance instead of step by step.
    Gives what was asked and served (m3), the battery's share and the sun's W of every hour.
    """
    kind, pump = BATTERY_BY_KEY[one.battery.kind], one.pump
    plane, warm, air = (np.asarray(x) for x in (weather.plane, weather.module_k, weather.air_k))
    dc = one.array.rated_w * plane / 1000 * (1 - 0.004 * (warm - 298.15)) * 0.97 * 0.98 * 0.97
    sun = np.minimum(0.95 * np.maximum(dc, 0), one.controller.most_a * one.battery.nominal_v)
    days = np.repeat(demand.by_month, (31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31))
    asked = (days[:, None] * np.asarray(demand.shares)[None, :]).ravel()
    size = one.battery.energy_j / 3600
    kelvin, share = (np.asarray(x) for x in zip(*kind.cold, strict=True))
    floor = np.maximum((1 - kind.usable) * size, (1 - np.interp(air, kelvin, share)) * size)
    into = np.where(air >= kind.charge_above, kind.charge_rate * size, 0.0)
    slow = min(1.0, (size / 20 / pump.power_w) ** (kind.exponent - 1))
    out = kind.discharging * slow
    per, rate = pump.power_w / pump.flow_m3s / 3600, pump.flow_m3s * 3600
    keep = (1 - kind.fading) ** (1 / (365 / 12 * 24))
    idle = pump.standby_w + one.controller.standby_w
    held, level, served, charge = start_wh, one.tank_m3, np.zeros(8760), np.zeros(8760)
    for hour in range(8760):
        held *= keep
        spare = sun[hour] - idle
        if spare < 0:
            held, spare = max(0.0, held + spare / out), 0.0
        free = min(max(0.0, held - floor[hour]) * out, kind.discharge_rate * size)
        now = max(0.0, min(asked[hour] - level, rate, (spare + free) / per))
        served[hour] = min(asked[hour], level + now)
        held -= max(0.0, now * per - spare) / out
        after = level + now - served[hour]
        most = max(now, min(rate, spare / per, now + one.tank_m3 - after))
        level = after + most - now
        over = max(0.0, spare - most * per)
        held += min(over, into[hour], max(0.0, size - held) / kind.charging) * kind.charging
        charge[hour] = held
    return asked, served, charge / size, sun


YEARS = [(kind, strings, wh, tank, mean_k) for kind in ("flooded", "lfp")
         for strings, wh, tank in ((1, 900.0, 0.0), (1, 500.0, 2.0), (3, 2500.0, 0.5))
         for mean_k in (276.0, 293.0)]  # fmt: skip


def set_up(kind, strings, wh, tank, mean_k):
    """(weather, system) of a made-up year."""
    return weather(2, mean_k), system(strings, wh, tank, kind)


def _year(*row):
    there, one = set_up(*row)
    return simulate(there, one, HOME).unserved


def _other(kind, strings, wh, tank, mean_k):
    there, one = set_up(kind, strings, wh, tank, mean_k)
    asked, served, _, _ = other_year(there, one, HOME, wh)
    return (asked - served).sum()


YEAR = table(
    SUBJECT, "power.year", "Water missing in a year: {0}, {1} panels, {2:g} Wh, {3:g} m³, {4:g} K",
    YEARS[::2], _year, source="Another program of the year, written in the tests with numpy",
    kind=INDEPENDENT, near=part(1e-9), unit="m³", against=_other,
)  # fmt: skip

CHECKS = (*CABLES, *PANELS, *SIZES, *YEAR)
