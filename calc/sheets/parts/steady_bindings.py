"""How the fields about a small steady draw stand to a site, for the sheets that know no pump."""

from __future__ import annotations

from dataclasses import replace

from calc import water
from calc.pump.curve import DisplacementPump
from calc.sheets.parts import ways
from calc.sheets.parts.bindings import NOT_KNOWN, Asked, Binding, figure, known, written
from calc.sheets.parts.moments import THEN
from calc.sheets.parts.small_draw import SmallDraw, least_of, smallest_lasting
from calc.site.facts import ASSUMED, Fact
from calc.units import GRAVITY

NO_LEAST = "a displacement pump runs at any flow"
A_TENTH = "a tenth of its best flow; common practice"


def smallest(field: str) -> Binding:
    """The smallest steady draw: one to one with its fact; where that is not known, the smallest
    of the site's outlets that may stay open for hours, as the page of the whole supply finds it."""
    path = "use.smallest"

    def give(asked: Asked) -> Fact:
        given = asked.site.get(path)
        if given.known:
            return given
        solved = ways.solved(asked.site, THEN)
        rows, places = solved.made.supply.outlets, solved.made.outlet_rows
        kinds = {name: rows[at].kind for name, at in places.items()}
        found = smallest_lasting(solved.moving, kinds)
        return NOT_KNOWN if found is None else written(found[0], "flow")

    return replace(known(field, path), give=give)


def least_flow(field: str) -> Binding:
    """The pump's least flow: one to one with its fact; where that is not known, by practice."""
    path = "pump.least_flow"

    def give(asked: Asked) -> Fact:
        given = asked.site.get(path)
        if given.known:
            return given
        pump = ways.pump_of(asked.site)
        if isinstance(pump, DisplacementPump):
            return written(0.0, "flow", ASSUMED, NO_LEAST)
        least = least_of(pump)
        return NOT_KNOWN if least is None else written(least, "flow", ASSUMED, A_TENTH)

    return replace(known(field, path), give=give)


def refill(field: str) -> Binding:
    """What the site's pumps give while they fill the pressure tank: worked out."""

    def of(asked: Asked) -> float | None:
        site = asked.site
        held = ways.set_pressure(site)
        if held is None:
            return None
        weight = water.density(site.value("water.temperature")) * GRAVITY
        small = SmallDraw(
            pump=ways.pump_of(site),
            draw=0.0,
            least=None,
            tank=None,
            set_pa=held,
            lift_m=ways.suction_lift(site),
            weight=weight,
            air_pa=water.air_pressure(site.value("place.altitude")),
            pumps=site.value("pump.count"),
            sensed_pa=ways.sensed_pressure(site),
        )
        return small.refill

    return figure(field, "flow", of)
