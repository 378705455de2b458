"""Rules and usual values of cables, panels, controllers and batteries.

Said as in ``calc.practice``, where everybody asks for them.
"""

from dataclasses import dataclass

# Cables -------------------------------------------------------------------------------------

CABLE_WARM = 323.15  # K, a conductor under load out of doors; our choice
CABLE_REACTANCE = 0.08e-3  # ohm/m of each conductor: IEC 60364-5-52 annex G, from memory
STRANDED = 1.07  # resistance over that of the plain area, IEC 60228 class 2, from memory
FLEXIBLE = 1.15  # the same, class 5: IEC 60228, from memory
STRANDED_AWG = 1.02  # the same, stranded conductors of NEC chapter 9 table 8; from memory
DROP_RUNNING = 0.03  # of the voltage, most that a cable takes, running; common practice, no source
DROP_STARTING = 0.15  # the same while a motor starts; common practice, no source
START_TIMES = 6.0  # running current, an AC motor switched on directly; common practice, no source
START_SOFT = 1.25  # running current, a motor behind a speed control; common practice, no source
MOTOR_POWER_FACTOR = 0.8  # a small AC motor nobody measured; common practice, no source
FUSE_TIMES = 1.25  # running current, a fuse or breaker of a cable; common practice, no source
FUSE_TIMES_PANELS = 1.56  # short-circuit current of panels: NEC 690.8 and 690.9, from memory
# A, ratings of fuses and breakers that are sold; common practice, no source
FUSE_RATINGS = (1, 2, 3, 5, 6, 8, 10, 15, 16, 20, 25, 30, 32, 40, 50, 60, 63, 80, 100, 125, 160,
                200, 250, 300, 400)  # fmt: skip

# Panels and controllers ---------------------------------------------------------------------

PANEL_POWER_RISE = -0.0040  # 1/K, maximum power of a panel nobody measured; common practice
PANEL_VOLTAGE_RISE = -0.0030  # 1/K, its open-circuit voltage; common practice, no source
PANEL_CURRENT_RISE = 0.0005  # 1/K, its currents; common practice, no source
PANEL_BEST_SHARE = 0.83  # maximum-power over open-circuit voltage; common practice, no source
PANEL_SHORT_SHARE = 1.06  # short-circuit over maximum-power current; common practice, no source
# (W, V): open-circuit voltage of a panel up to so many watts (36, 60, 72 cells), on the high side;
# our choice
PANEL_OPEN = ((200.0, 23.0), (380.0, 41.5), (1000.0, 50.5))
LOSS_SOILING = 0.03  # of a panel's power, dust and bird lime; common practice, no source
LOSS_MISMATCH = 0.02  # the same, panels that are not alike; common practice, no source
LOSS_WIRING = 0.03  # the same, cables and connectors; common practice, no source
MPPT_EFFICIENCY = 0.95  # a charge controller nobody measured; common practice, no source
PWM_EFFICIENCY = 0.98  # the same, one that only switches; common practice, no source
CONTROLLER_STANDBY = 2.0  # W, a charge controller's own draw; common practice, no source
INVERTER_STANDBY = 15.0  # W, one left switched on, no load; common practice, no source
PUMP_STANDBY = 5.0  # W, a pump's controller while the pump rests; common practice, no source
# (load over rated, efficiency) of an inverter or motor controller; common practice, no source
LOAD_EFFICIENCY = ((0.05, 0.70), (0.1, 0.82), (0.2, 0.89), (0.5, 0.92), (1.0, 0.90))
GENERATOR_FUEL = 1.0e-3 / 3.6e6  # m3/J, 1 L a kWh, a small one at part load; common practice
COLDEST_BELOW = 20.0  # K, the coldest hour below the coldest month's mean; our choice, careful
BATTERY_START = 1.0  # of its energy, that a battery holds as a year begins; our choice
YEAR_SHORT = 5.0  # days in a hundred that may fail where nobody says; our choice

# Batteries ----------------------------------------------------------------------------------


@dataclass(frozen=True)
class BatteryKind:
    """A kind of battery.

    usable: share of its energy that is drawn; charging, discharging: efficiencies; exponent:
    Peukert's, about the 20 h rate; fading: share lost a month at rest; charge_rate,
    discharge_rate: most power over energy, 1/h; cold: (K, share of the energy it gives);
    charge_above: K, not to be charged below; cycles: (depth, cycles it lasts); years: it lasts
    at most.
    """

    key: str
    name: str
    usable: float
    charging: float
    discharging: float
    exponent: float
    fading: float
    charge_rate: float
    discharge_rate: float
    cold: tuple[tuple[float, float], ...]
    charge_above: float
    cycles: tuple[tuple[float, float], ...]
    years: float


# (K, share of the energy) and (depth, cycles); common practice, no source
_COLD_LEAD = ((253.15, 0.60), (263.15, 0.75), (273.15, 0.85), (283.15, 0.93), (298.15, 1.0))
# the same; common practice, no source
_COLD_LFP = ((253.15, 0.65), (263.15, 0.80), (273.15, 0.90), (283.15, 0.96), (298.15, 1.0))
# the same; common practice, no source
_CYCLES_LFP = ((0.1, 20000.0), (0.3, 9000.0), (0.5, 6000.0), (0.8, 3500.0), (1.0, 2500.0))
# Usual values of batteries on sale, on the low side: common practice, no source.
BATTERIES = (
    BatteryKind("flooded", "Flooded lead-acid", 0.5, 0.85, 0.97, 1.25, 0.05, 0.13, 0.5, _COLD_LEAD,
                233.15, ((0.1, 4500.0), (0.3, 2000.0), (0.5, 1200.0), (0.8, 700.0)), 8.0),
    BatteryKind("agm", "AGM lead-acid", 0.5, 0.90, 0.97, 1.12, 0.02, 0.25, 0.5, _COLD_LEAD,
                233.15, ((0.1, 4000.0), (0.3, 1700.0), (0.5, 900.0), (0.8, 500.0)), 7.0),
    BatteryKind("gel", "Gel lead-acid", 0.5, 0.88, 0.97, 1.15, 0.02, 0.15, 0.4, _COLD_LEAD,
                233.15, ((0.1, 4800.0), (0.3, 2000.0), (0.5, 1100.0), (0.8, 600.0)), 10.0),
    BatteryKind("lfp", "Lithium iron phosphate", 0.8, 0.97, 0.97, 1.03, 0.03, 0.5, 0.5, _COLD_LFP,
                273.15, _CYCLES_LFP, 12.0),
)  # fmt: skip
BATTERY_BY_KEY = {kind.key: kind for kind in BATTERIES}
