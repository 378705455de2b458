"""How the fields about the pump and its control stand to a site: what is set and read where."""

from __future__ import annotations

from dataclasses import replace

from calc.sheets.parts import ways
from calc.sheets.parts.bindings import CALCULATED, Asked, Binding, known, written
from calc.site.facts import ASSUMED, BY_PATH, GIVEN, NOT_KNOWN, Fact
from calc.site.rows import PUMP, SOURCE
from calc.site.site import Site
from calc.units import parse


def _pump(asked: Asked) -> Fact:
    """The menu's word: an invented pump's key, or "own" where there is a table."""
    if asked.site.get("pump.curve").known:
        return Fact("own")
    fact = asked.site.best("pump.id")
    return fact if fact.text in ways.PUMPS else replace(NOT_KNOWN, reason=fact.text)


def _take_pump(asked: Asked, fact: Fact) -> Site:
    if fact.text == "own":
        return asked.site
    return asked.site.put("pump.curve", NOT_KNOWN).put("pump.id", fact)


def pump() -> tuple[Binding, ...]:
    """The menu of pumps, the pasted table and the way it works."""
    return (
        Binding("pump", _pump, _take_pump, "pump.id"),
        known("table", "pump.curve"),
        known("works", "pump.works"),
    )


def menu(field: str, path: str, shown: dict[str, str], back: dict[str, str]) -> Binding:
    """A menu with fewer words than the fact has.

    shown: fact -> word of the menu; back: word of the menu -> fact, where it is not the same.
    """

    def give(asked: Asked) -> Fact:
        fact = asked.site.best(path)
        return replace(fact, text=shown.get(fact.text, fact.text)) if fact.known else fact

    def take(asked: Asked, fact: Fact) -> Site:
        same = fact.known and give(asked).text == fact.text
        text = asked.site.best(path).text if same else back.get(fact.text, fact.text)
        return asked.site.put(path, replace(fact, text=text))

    return Binding(field, give, take, path)


def _lift(asked: Asked) -> Fact:
    if not ways.has_pump(asked.site):
        return NOT_KNOWN
    level = asked.site.best("water.level")
    if not level.known:
        return NOT_KNOWN
    height = ways.pump_height(asked.site)
    if height == 0 and level.text.startswith("-"):
        return replace(level, text=level.text[1:])  # "-13 ft" is a lift of "13 ft", as typed
    value = ways.suction_lift(asked.site)
    return written(value, "length", level.standing, level.reason)


def _take_lift(asked: Asked, fact: Fact) -> Site:
    if not fact.known:
        return asked.site.put("water.level", fact)
    height = ways.pump_height(asked.site)
    if height == 0 and fact.text[:1].isdigit():
        return asked.site.put("water.level", replace(fact, text=f"-{fact.text}"))
    level = height - BY_PATH["water.level"].read(fact.text)
    return asked.site.put("water.level", replace(fact, text=written(level, "length").text))


def lift() -> Binding:
    """From the lowest water level up to the pump: one to one with that level."""
    return Binding("lift", _lift, _take_lift, "water.level")


# The pressure a line starts with --------------------------------------------------------------


def _is_set(asked: Asked) -> bool:
    """Whether the line starts with the pressure that the pump's control holds.

    What a pump can hold that is only assumed does not overrule a pressure that was given.
    """
    site = asked.site
    if site.value("pump.control") != "speed" or not ways.has_pump(site):
        return False
    if not asked.outlet:
        return True
    pump = site.get("pump.curve") if site.get("pump.curve").known else site.best("pump.id")
    told = (site.get("pump.set").standing, pump.standing) == (GIVEN, ASSUMED)
    return asked.way.start == PUMP and (asked.way.held or told)


def _not_held(asked: Asked, over_pa: float) -> Fact:
    """The pressure at the start of a line that no control holds, ``over_pa`` (Pa) less."""
    if not asked.outlet:
        start = PUMP if ways.has_pump(asked.site) else SOURCE
        return written(asked.solved.moving.pressure(start) - over_pa, "pressure")
    if asked.way.start != PUMP:
        return written(0.0, "pressure", reason="the line begins at open water")
    held = asked.site.value("pump.control") == "speed"
    reason = "the pump cannot hold more" if held else CALCULATED
    return written(asked.way.start_pa - over_pa, "pressure", reason=reason)


def start(field: str) -> Binding:
    """Pressure at the start of the line: where the pump's control holds it, one to one with what
    it is set to; not the same where its sensor is higher than the pump."""

    def give(asked: Asked) -> Fact:
        if not _is_set(asked):
            return _not_held(asked, 0.0)
        fact, over = asked.site.best("pump.set"), ways.sensed_pressure(asked.site)
        if not fact.known or not over:
            return fact
        at_pump = BY_PATH["pump.set"].read(fact.text) + over
        return written(at_pump, "pressure", fact.standing, fact.reason or "set at its sensor")

    def take(asked: Asked, fact: Fact) -> Site:
        over = ways.sensed_pressure(asked.site)
        if over and fact.known:
            at_sensor = parse(fact.text, "pressure").value - over
            fact = replace(fact, text=written(at_sensor, "pressure").text)
        return asked.site.put("pump.set", fact)

    return Binding(field, give, take, "pump.set", only=_is_set)


def set_to(field: str) -> Binding:
    """What the pump's control is set to; where it holds nothing, what it then reads."""

    def give(asked: Asked) -> Fact:
        if not ways.has_pump(asked.site):
            return NOT_KNOWN
        if _is_set(asked):
            return asked.site.best("pump.set")
        return _not_held(asked, ways.sensed_pressure(asked.site))

    def take(asked: Asked, fact: Fact) -> Site:
        return asked.site.put("pump.set", fact)

    return Binding(field, give, take, "pump.set", only=_is_set)


def sensor() -> Binding:
    """Height of the pump's sensor above it: one to one with that above the datum."""

    def give(asked: Asked) -> Fact:
        fact = asked.site.best("pump.sensed")
        if not fact.known or ways.pump_height(asked.site) == 0:
            return fact
        return written(ways.sensed_height(asked.site), "length", fact.standing, fact.reason)

    def take(asked: Asked, fact: Fact) -> Site:
        base = ways.pump_height(asked.site)
        if base and fact.known:
            height = base + parse(fact.text, "length").value
            fact = replace(fact, text=written(height, "length").text)
        return asked.site.put("pump.sensed", fact)

    return Binding("sensed", give, take, "pump.sensed")
