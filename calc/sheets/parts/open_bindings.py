"""How the fields about water that runs down by its own weight stand to a site."""

from __future__ import annotations

from dataclasses import replace

from calc.page.fields import Sheet
from calc.page.state import State
from calc.sheets.parts.bindings import NOT_KNOWN, Asked, Binding, written
from calc.sheets.parts.fields import NO_PUMP
from calc.sheets.parts.ways import has_pump
from calc.site.facts import ASSUMED, Fact
from calc.site.open_water import named
from calc.site.site import Site

# menu's word for each control of a pump, and back
SHOWN = {"speed": "held", "fixed": "full", "switch": "full"}
BACK = {"held": "speed", "full": "fixed"}


def _drive(asked: Asked) -> Fact:
    present = asked.site.best("pump.present")
    if present.text == "no":
        return replace(present, text=NO_PUMP)
    fact = asked.site.best("pump.control")
    return replace(fact, text=SHOWN[fact.text]) if fact.known else fact


def _take_drive(asked: Asked, fact: Fact) -> Site:
    site = asked.site
    if fact.text == NO_PUMP:
        return site.put("pump.present", replace(fact, text="no"))
    if not has_pump(site):
        site = site.put("pump.present", replace(fact, text="yes"))
    held = site.best("pump.control")
    same = fact.known and SHOWN.get(held.text) == fact.text
    text = held.text if same else BACK.get(fact.text, fact.text)  # what is no word of it is refused
    return site.put("pump.control", replace(fact, text=text))


def drive() -> Binding:
    """How the water is driven: by a pump and its control, or by its own weight."""
    return Binding("drive", _drive, _take_drive, "pump.control")


def with_its_water(site: Site, sheet: Sheet, state: State) -> State:
    """The form's state as it is put back: where it leaves a site's pump out and its reader left the
    level of the water as the example has it, that is assumed, and not the level in the well."""
    fall = sheet.field("fall")
    chosen = state.texts.get("drive", sheet.field("drive").default(state.system))
    if chosen != NO_PUMP or not has_pump(site) or state.standing_of(fall) != "example":
        return state
    return replace(state, standing={**state.standing, "fall": ASSUMED})


def _without_a_pump(field: str, path: str, column: str, quantity: str) -> Binding:
    """A field one to one with a fact where there is no pump, else left as it is.

    column: of the row of sources that stands for that fact, where it is called "source".
    """

    def give(asked: Asked) -> Fact:
        site = asked.site
        if has_pump(site):
            return NOT_KNOWN
        row = named(site)
        value = None if row is None else site.cell("sources", row, column)
        return site.best(path) if value is None else written(value, quantity)

    def take(asked: Asked, fact: Fact) -> Site:
        return asked.site.put(path, fact)

    def alone(asked: Asked) -> bool:
        row = named(asked.site)
        return row is None or asked.site.cell("sources", row, column) is None

    return Binding(field, give, take, path, spare=True, only=alone)


def fall() -> Binding:
    """The level of the source's water, above that which a site's heights are counted from."""
    return _without_a_pump("fall", "water.level", "level", "length")


def gives() -> Binding:
    """The least flow of the source."""
    return _without_a_pump("gives", "water.yield", "yield", "flow")
