"""Hot water: enthalpies and densities of libraries, tables of burns."""

from iapws import IAPWS95, IAPWS97

from calc import hot_water, practice
from calc.units import CELSIUS
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
from tests.reference.checks.water import kelvin

SUBJECT, MODULE = "Hot water", "hot_water"
IAPWS = library("iapws")
HEATED = [(278.15, 333.15), (288.15, 333.15), (288.15, 353.15), (293.15, 368.15)]
BURN = "seconds to a deep burn: skin differs more than half, and so do printed tables"


def _grown(cold, hot):
    return 100 * hot_water.growth(1.0, cold, hot)


def growth_95(cold, hot):
    return 100 * (IAPWS95(T=cold, P=0.1).rho / IAPWS95(T=hot, P=0.1).rho - 1)


def growth_97(cold, hot):
    return 100 * (IAPWS97(T=cold, P=0.6).rho / IAPWS97(T=hot, P=0.6).rho - 1)


def heat_95(cold, hot):
    """MJ/m3"""
    start, end = (IAPWS95(T=t, P=0.1) for t in (cold, hot))
    return start.rho * (end.h - start.h) / 1e3


def share_95(cold, hot, mixed):
    h = {t: IAPWS95(T=t, P=0.1).h for t in (cold, hot, mixed)}
    return (h[mixed] - h[cold]) / (h[hot] - h[cold])


HEAT = (
    *table(SUBJECT, MODULE, "Growth of water from {0} to {1} K, IAPWS-95", HEATED, _grown,
           source=IAPWS, kind=LIBRARY, near=part(3e-5), unit="%", against=growth_95,
           why="a growth is a hundredth of the density, which is a fit"),
    *table(SUBJECT, MODULE, "Growth of water from {0} to {1} K under 6 bar", HEATED, _grown,
           source=IAPWS, kind=LIBRARY, near=part(5e-3), unit="%", against=growth_97,
           place="IAPWS-97", why="calc leaves the pressure out"),
    *table(SUBJECT, MODULE, "Heat that takes 1 m³ from {0} to {1} K", HEATED,
           lambda cold, hot: hot_water.heat(1.0, cold, hot) / 1e6, source=IAPWS, kind=LIBRARY,
           near=part(2e-4), unit="MJ", against=heat_95,
           why="the heat capacity of SR6-08 itself is a part in 10 000 apart"),
    *table(SUBJECT, MODULE, "Share of {1} K water among {0} K for {2} K",
           [(*pair, mixed) for pair in HEATED[1:3] for mixed in (311.15, 322.15)],
           hot_water.hot_share, source=IAPWS, kind=LIBRARY, near=part(5e-3), against=share_95,
           why="enthalpies mix; the heat capacity bends by 0.7 %"),
    *table(SUBJECT, MODULE, "Tank for 3 L of growth, charged to 3 bar, up to 6 bar", [(7.0,)],
           lambda: 1e3 * hot_water.tank_needed(3e-3, 3e5, 3e5, 6e5, 1e5),
           source="Boyle's law by hand", kind=INDEPENDENT, near=part(1e-9), unit="L"),
)  # fmt: skip

CHILDREN = "Children's of Alabama, Prevent scald burn injuries"
ANTISCALD = "Exposure time to receive a severe burn, table for scald valves"
BURNS = (
    *table(SUBJECT, MODULE, "Time to a deep burn at {0} °F",
           [(130, 30.0), (150, 1.5), (155, 1.0)], lambda f: hot_water.scald_time(kelvin(f)),
           source=CHILDREN, kind=PUBLISHED, near=part(0.5), unit="s", why=BURN),
    *table(SUBJECT, MODULE, "Time to a deep burn at {0} °F",
           [(124, 252.0), (131, 30.0), (140, 5.0)],
           lambda f: hot_water.scald_time(kelvin(f)), source=ANTISCALD, kind=PUBLISHED,
           near=part(0.5), unit="s", place="third degree", why=BURN),
    *table(SUBJECT, MODULE, "Time to a deep burn at {0} °F",
           [(120, 300.0), (130, 30.0), (140, 6.0), (150, 2.0)],
           lambda f: hot_water.scald_time(kelvin(f)), kind=MEMORY, near=part(0.5), unit="s",
           source="US Consumer Product Safety Commission, document 5098", why=BURN),
    *table(SUBJECT, "practice", "Heat above which a tap scalds", [(120.0,)],
           lambda: (practice.SCALDS_ABOVE - CELSIUS) * 1.8 + 32, source=ANTISCALD, kind=PUBLISHED,
           near=give(0.3), unit="°F", why="49 °C stands for 120 °F"),
)  # fmt: skip

# degC, kg/m3
_CRC = {10: 999.70, 20: 998.21, 40: 992.22, 60: 983.20, 80: 971.82}
RECALLED = (
    *table(SUBJECT, MODULE, "Growth of water from 10 to {0} °C",
           [(60, 1.71), (70, 2.22), (80, 2.81), (90, 3.47)],
           lambda t: _grown(10 + CELSIUS, t + CELSIUS), source="EN 12828", kind=MEMORY,
           near=give(0.1), unit="%", place="annex D", why="its parabola is that far off"),
    *table(SUBJECT, MODULE, "Growth of water from {0} to {1} °C",
           [(cold, hot) for cold in (10, 20) for hot in (40, 60, 80)],
           lambda cold, hot: _grown(cold + CELSIUS, hot + CELSIUS), kind=MEMORY,
           source="CRC Handbook of Chemistry and Physics", near=give(4e-3), unit="%",
           against=lambda cold, hot: 100 * (_CRC[cold] / _CRC[hot] - 1),
           why="older editions are up to 0.03 kg/m³ apart"),
)  # fmt: skip

CHECKS = (*HEAT, *BURNS, *RECALLED)
