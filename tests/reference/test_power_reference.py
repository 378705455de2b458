"""Power against outside figures: conductor tables, another program, a worked sum, another year."""

import numpy as np
import pvlib
import pytest

from calc.power import array, battery, cable, design
from calc.power.array import Array, Module, usual_module
from calc.power.year import simulate, trace
from calc.practice import BATTERY_BY_KEY
from tests.power.places import HOME, system, weather

FOOT_1000 = 304.8  # m

# ohm/km at 20 degC, largest allowed, plain copper: IEC 60228, from memory.  50 mm2 is left out:
# such conductors are made with 47 mm2, which is no relation of area and resistance.
CLASS_2 = {1.5: 12.1, 2.5: 7.41, 4: 4.61, 6: 3.08, 10: 1.83, 16: 1.15, 25: 0.727, 35: 0.524,
           70: 0.268, 95: 0.193, 120: 0.153}  # fmt: skip
CLASS_5 = {1.5: 13.3, 2.5: 7.98, 4: 4.95, 6: 3.30, 10: 1.91, 16: 1.21, 25: 0.780, 35: 0.554,
           70: 0.272, 95: 0.206, 120: 0.161}  # fmt: skip
# ohm/kFT at 75 degC, uncoated copper, stranded: NEC chapter 9 table 8, from memory
NEC = {"14": 3.14, "12": 1.98, "10": 1.24, "8": 0.778, "6": 0.491, "4": 0.308, "2": 0.194,
       "1/0": 0.122, "4/0": 0.0608}  # fmt: skip
NEC_ALUMINIUM = {"6": 0.808, "4": 0.508, "2": 0.319, "1/0": 0.201, "4/0": 0.100}


@pytest.mark.parametrize(
    "series, table, tolerance",
    # the standard's own allowance for strands is 5 to 9 % in class 2, 10 to 16 % in class 5, size
    # by size; one number a class stands within half of that spread of each
    [("mm2", CLASS_2, 0.025), ("mm2-flexible", CLASS_5, 0.045)],
)
def test_conductors_by_area_resist_as_the_standard_allows(series, table, tolerance):
    for one in cable.SERIES[series]:
        area = round(one.area * 1e6, 3)
        if area in table:
            ours = cable.resistance(one.area, 293.15, allowance=one.allowance) * 1e3
            assert ours == pytest.approx(table[area], rel=tolerance)


@pytest.mark.parametrize("metal, table", [("copper", NEC), ("aluminium", NEC_ALUMINIUM)])
def test_conductors_by_gauge_resist_as_the_code_says(metal, table):
    for one in cable.SERIES["awg"]:
        name = one.name.split()[0]
        if name in table:
            ours = cable.resistance(one.area, 348.15, metal, one.allowance) * FOOT_1000
            # three figures are printed (0.5 % of 0.100), strands by size differ by 1 %
            assert ours == pytest.approx(table[name], rel=0.015)


# Panels against pvlib -----------------------------------------------------------------------


@pytest.mark.parametrize("plane", [0.0, 80.0, 450.0, 1000.0, 1150.0])
@pytest.mark.parametrize("celsius", [-20.0, 25.0, 68.0])
def test_panels_give_what_pvlib_says(plane, celsius):
    one = Array(usual_module(400.0), 2, 3)
    theirs = pvlib.pvsystem.pvwatts_dc(plane, celsius, one.rated_w, one.module.power_rise)
    left = 1 - pvlib.pvsystem.pvwatts_losses(
        soiling=3, shading=0, snow=0, mismatch=2, wiring=3, connections=0, lid=0,
        nameplate_rating=0, age=0, availability=0,
    ) / 100  # fmt: skip
    ours = array.power(one, plane, 273.15 + celsius)
    # the same formula; only the last bits differ
    assert ours == pytest.approx(theirs * left, rel=1e-12, abs=1e-12)


# A sum by hand ------------------------------------------------------------------------------


def test_a_worked_sum_after_ieee_1562_and_1013():
    """Laid out as in the standards' annexes, from memory; the numbers are our own.

    A load of 75 Ah a day at 24 V (1,800 Wh), worst month 4.0 h of full sun, five days of autonomy,
    80 % of a lead-acid battery to be drawn, nothing lost: 1,800 / 4 = 450 W, and with a tenth for
    the system's losses 500 W; 75 x 5 / 0.8 = 468.75 Ah.
    """
    daily = battery.energy_from_ah(24.0, 75.0)
    assert design.hand_sum(daily, 4.0, 1.0) == pytest.approx(450.0, rel=1e-12)
    assert design.hand_sum(daily, 4.0, 0.9) == pytest.approx(500.0, rel=1e-12)
    stored = design.hand_battery(daily, 5.0, 0.8, 1.0)
    assert stored == pytest.approx(battery.energy_from_ah(24.0, 468.75), rel=1e-12)


def test_a_worked_cold_voltage():
    """NEC 690.7 by the module's coefficient, from memory; the numbers are our own.

    U_oc 40 V, -0.30 % a kelvin, -15 degC: 40 x (1 + 0.003 x 40) = 44.8 V, so 3 in series stay
    below 150 V with 134.4 V, and 4 do not.
    """
    one = Module(330.0, 40.0, 33.0, 10.6, 10.0, voltage_rise=-0.0030)
    assert array.open_voltage(one, 3, 258.15) == pytest.approx(134.4, rel=1e-12)
    assert array.most_in_series(one, 258.15, 150.0) == 3


# The year against another one ---------------------------------------------------------------


def other_year(weather, one, demand, start_wh):
    """The year again, all inputs as numpy arrays, told by what each hour could do at most.

    Written apart from the calculator: the pump's water of an hour is the least of four limits,
    and energy is booked by balance instead of step by step.
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


@pytest.mark.parametrize("kind", ["flooded", "lfp"])
@pytest.mark.parametrize("strings, wh, tank", [(1, 900.0, 0.0), (1, 500.0, 2.0), (3, 2500.0, 0.5)])
@pytest.mark.parametrize("mean_k", [276.0, 293.0])
def test_the_year_is_that_of_another_program(kind, strings, wh, tank, mean_k):
    there, one = weather(2, mean_k), system(strings, wh, tank, kind)
    asked, served, charge, sun = other_year(there, one, HOME, wh)
    ours = simulate(there, one, HOME)
    # rounding of some ten operations an hour, 8,760 hours: measured at 1e-12, asked for 1e-9
    assert ours.served == pytest.approx(served.sum(), rel=1e-9)
    assert ours.unserved == pytest.approx((asked - served).sum(), rel=1e-9, abs=1e-9)
    assert ours.lowest == pytest.approx(min(1.0, charge.min()), rel=1e-9, abs=1e-9)
    assert ours.array == pytest.approx(sun.sum() * 3600, rel=1e-9)
    hours = trace(there, one, HOME)
    mine = np.array([hour.served for hour in hours])
    assert mine == pytest.approx(served, rel=1e-9, abs=1e-9)
    stored = np.array([hour.stored for hour in hours]) / wh
    assert stored == pytest.approx(charge, rel=1e-9, abs=1e-9)
