"""Working of the hot water sheet: growth, expansion tank, pressures, the pipe, mixing, heat."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from calc import hot_water, practice, water
from calc.page.answer import Step, Value

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping

    from calc.sheets.hot_water.case import Case

BOYLE = "Boyle's law, absolute pressures"


def steps(case: Case) -> tuple[Step, ...]:
    """From the heater to the tap."""
    return (*_growth(case), *_rating(case), *_tank(case), *_locked(case), *_tap(case), *_heat(case))


def _growth(case: Case) -> Iterator[Step]:
    given = {
        "V": Value(case.values.heater, "volume"),
        "rho_c": Value(water.density(case.cold), "density", 5),
        "rho_h": Value(water.density(case.stored), "density", 5),
    }
    yield Step("How much the water grows", "Delta_V = V * (rho_c / rho_h - 1)", given,
               Value(case.growth, "volume"), note="The mass stays; the density falls.",
               source="Conservation of mass; density by IAPWS SR6-08")  # fmt: skip


def _rating(case: Case) -> Iterator[Step]:
    rating = case.pipe_rating
    if rating is None or case.pipe.rating_pa is None:
        return
    given = {
        "p_n": Value(case.pipe.rating_pa, "pressure"),
        "k": Value(rating / case.pipe.rating_pa, "percent"),
    }
    yield Step("What the pipe is rated at this heat", "p_k = p_n * k", given,
               Value(rating, "pressure"), note="k by the table of its kind.",
               source=case.pipe.source)  # fmt: skip


def _limit(case: Case) -> Step | None:
    """The pressure to stay below."""
    if case.limit is None:
        return None
    title = "Pressure to stay below"
    if case.setting is None:
        return Step(title, result=Value(case.limit, "pressure"), note="The lowest rating.")
    given = {
        "s": Value(practice.RELIEF_SEEPS, "number"),
        "p_r": Value(case.setting, "pressure"),
    }
    formula, note = "p_m = s * p_r", "From p_m on a relief valve may drip."
    if case.lowest is not None:
        given["p_w"] = Value(case.lowest, "pressure")
        formula, note = "p_m = min(s * p_r, p_w)", f"{note} p_w is the lowest rating."
    return Step(title, formula, given, Value(case.limit, "pressure"), note=note,
                source="EN 12828, from memory")  # fmt: skip


def _tank(case: Case) -> Iterator[Step]:
    """The tank that is needed, and what the one that is there does."""
    limit = _limit(case)
    if not case.closed or limit is None:
        return
    yield limit
    air, static = Value(case.air, "pressure"), Value(case.static, "pressure")
    if case.needed is not None and 0 < case.needed < math.inf:
        given = {
            "Delta_V": Value(case.growth, "volume"),
            "p_s": static,
            "p_m": Value(case.limit or 0.0, "pressure"),
            "p_a": air,
        }
        yield Step("Expansion tank needed", "V_t = Delta_V / (1 - (p_s + p_a) / (p_m + p_a))",
                   given, Value(case.needed, "volume"),
                   note="Its pre-charge is the static pressure p_s; p_a is the air's.",
                   source=BOYLE)  # fmt: skip
    if case.tank and case.charge is not None:
        yield from _there(case, case.tank, case.charge, air)


def _there(case: Case, tank: float, charge: float, air: Value) -> Iterator[Step]:
    start = max(charge, case.static)
    gas = tank * (charge + case.air) / (start + case.air)
    p_s = Value(start, "pressure")
    given: Mapping[str, Value] = {
        "V_t": Value(tank, "volume"),
        "p_0": Value(charge, "pressure"),
        "p_s": p_s,
        "p_a": air,
    }
    note = "Before it heats. p_0 is the pre-charge."
    if charge > case.static:
        note += " The tank takes nothing until the pressure has risen to it."
    yield Step("Gas in the tank that is there", "V_g = V_t * (p_0 + p_a) / (p_s + p_a)", given,
               Value(gas, "volume"), note=note, source=BOYLE)  # fmt: skip
    reached = hot_water.pressure_reached(case.growth, tank, charge, case.static, case.air)
    if math.isinf(reached) or reached > case.locked:
        note = "The gas has less room than the water grows by: the tank is full before."
        yield Step("Pressure when hot", note=note)
        return
    given = {
        "p_s": p_s,
        "p_a": air,
        "V_g": Value(gas, "volume"),
        "Delta_V": Value(case.growth, "volume"),
    }
    yield Step("Pressure when hot", "p = (p_s + p_a) * V_g / (V_g - max(Delta_V, 0)) - p_a", given,
               Value(reached, "pressure"), note="If the relief valve stays closed.",
               source=BOYLE)  # fmt: skip


def _locked(case: Case) -> Iterator[Step]:
    if not case.closed:
        return
    steel = hot_water.STEEL
    given = {
        "p_s": Value(case.static, "pressure"),
        "Delta_V": Value(case.growth, "volume"),
        "V": Value(case.values.heater, "volume"),
        "K": Value(water.bulk_modulus(case.stored), "pressure"),
        "nu": Value(steel.poisson, "number"),
        "d": Value(practice.HEATER_SLENDER, "number"),
        "E": Value(steel.modulus, "pressure"),
    }
    yield Step(
        "With no room and no relief",
        "p = p_s + max(Delta_V, 0) / V / (1 / K + (1.25 - nu) * d / E)",
        given,
        Value(case.locked, "pressure"),
        note="Only water and wall give way: K is the water's bulk modulus, d the diameter of a "
        "steel heater over its wall. No heater holds this: a relief valve opens, or something "
        "bursts.",
        source="Thin closed cylinder; wall: our choice",
    )


def _tap(case: Case) -> Iterator[Step]:
    given = {
        "D": Value(case.pipe.inside_m, "diameter"),
        "L": Value(case.values.length, "length"),
    }
    left = Value(case.left, "volume")
    yield Step("Water in the pipe to the tap", "V_p = pi / 4 * D**2 * L", given, left)
    yield Step("Wait at the tap", "t = V_p / Q",
               {"V_p": left, "Q": Value(case.values.flow, "flow")}, Value(case.wait, "time"),
               note="The heat that the pipe's own wall takes up is not counted.")  # fmt: skip
    if case.share is not None and case.at_tap is not None:
        given = {
            "T_m": Value(case.at_tap, "temperature"),
            "T_c": Value(case.cold, "temperature"),
            "T_h": Value(case.stored, "temperature"),
        }
        yield Step("Hot water in the mixed water", "x = (T_m - T_c) / (T_h - T_c)", given,
                   Value(case.share, "percent"), source="Conservation of energy")  # fmt: skip


def _heat(case: Case) -> Iterator[Step]:
    warming = _warmed("Heat for the whole heater", case, case.values.heater, case.stored)
    yield warming
    if case.values.power is not None and warming.result is not None:
        yield Step("Time to heat it", "t = Q / P",
                   {"Q": warming.result, "P": Value(case.values.power, "power")},
                   Value(case.warming / case.values.power, "minutes"))  # fmt: skip
    yield _warmed("Heat that cools in the pipe, each draw", case, case.left, case.in_pipe)


def _warmed(title: str, case: Case, volume: float, hot: float) -> Step:
    given = {
        "rho": Value(water.density(case.cold), "density", 5),
        "V": Value(volume, "volume"),
        "c": Value(hot_water.mean_capacity(case.cold, hot), "number", 4),
        "T_h": Value(hot, "temperature"),
        "T_c": Value(case.cold, "temperature"),
    }
    note = "c is the heat capacity in J/(kg K), the mean of all between."
    return Step(title, "Q = rho * V * c * (T_h - T_c)", given,
                Value(hot_water.heat(volume, case.cold, hot), "energy"), note=note)  # fmt: skip
