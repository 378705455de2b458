"""How the fields about a well stand to a site: its levels, its test, its pump, its busiest time."""

from __future__ import annotations

from dataclasses import replace

from calc.sheets.parts import table_bindings as t
from calc.sheets.parts import worked_out as w
from calc.sheets.parts.bindings import (
    CALCULATED,
    NOT_KNOWN,
    Asked,
    Binding,
    figure,
    known,
    told_or,
)
from calc.site.facts import BY_PATH, Fact
from calc.site.site import Site

TOP, HOUSE = "top", "house"  # where the pressure is sensed, as the form calls it


def _known(asked: Asked) -> Fact:
    """What is known of the well; where that was not said, the test of which there is a number, and
    a yield without any test is one that was told."""
    said, site = asked.site.get("well.known"), asked.site
    by = {
        "bucket": site.get("well.drawn").known,
        "levels": site.get("well.tested").known,
        "recovery": bool(site.rows("readings")),
        "told": site.get("water.yield").known,
    }
    found = next((word for word, there in by.items() if there), "")
    return said if said.known or not found else Fact(found, reason=CALCULATED)


def _steady(asked: Asked) -> Fact:
    """The yield that is counted on; where there is none, as the test found it."""
    counted = asked.site.get("water.yield")
    return counted if counted.known else asked.site.get("well.steady")


def _take_steady(asked: Asked, fact: Fact) -> Site:
    return asked.site.put("well.steady", fact).put("water.yield", fact)


def _from_top(asked: Asked) -> bool:
    """Whether the site counts its heights from the ground at the source, the top of the well."""
    return asked.site.best("place.datum").text == BY_PATH["place.datum"].usual


def _sensed(asked: Asked) -> Fact:
    """By the height of the sensor where that is known; else as it was said."""
    height = asked.site.get("pump.sensed")
    if not height.known or not _from_top(asked):
        return asked.site.get("pump.sensed_at")
    at_top = BY_PATH["pump.sensed"].read(height.text) == 0
    return replace(height, text=TOP if at_top else HOUSE)


def _take_sensed(asked: Asked, fact: Fact) -> Site:
    """At the top is at height 0; a house is as high as is known or told next."""
    site = asked.site.put("pump.sensed_at", fact)
    if not _from_top(asked):
        return site
    if fact.text == TOP:
        return site.put("pump.sensed", replace(fact, text="0 m"))
    return site.put("pump.sensed", NOT_KNOWN) if _sensed(asked).text == TOP else site


def _rise(asked: Asked) -> Fact:
    house = _from_top(asked) and _sensed(asked).text == HOUSE
    return asked.site.get("pump.sensed") if house else NOT_KNOWN


def _holds(asked: Asked) -> bool:
    return asked.site.value("pump.control") == "speed"


def _set(asked: Asked) -> Fact:
    """What a speed control holds; of a switch what it stops the pump at."""
    path = "pump.set" if _holds(asked) else "pump.cut_out"
    return asked.site.best(path)


_HEIGHT = known("rise", "pump.sensed")
FIELDS = (
    replace(known("known", "well.known"), give=_known),
    known("drawn", "well.drawn"), known("minutes", "well.drawn_for"),
    Binding("steady", _steady, _take_steady, "water.yield"), known("tested", "well.tested"),
    known("pumping", "well.pumping"), known("rate", "well.rate"),
    known("pumped", "well.pumped_for"), t.readings(), known("told", "water.yield"),
    w.DAILY, known("pump", "store.inflow"), known("dry", "pump.dry_run"),
    known("static", "well.static"), known("intake", "well.intake"), known("depth", "well.depth"),
    known("casing", "well.bore"), known("kind", "pump.placement"), known("cistern", "store.volume"),
    told_or(replace(figure("peak", "volume", w.busiest), spare=True), "use.peak"),
    known("peakfor", "use.peak_time"), known("pattern", "use.pattern"),
    known("cover", "well.cover"), known("clear", "well.clear"), known("motor", "pump.diameter"),
    known("sleeve", "pump.sleeve"), known("cooling", "pump.cooling"),
    known("drop", "well.drop_pipe"), Binding("sensed", _sensed, _take_sensed, "pump.sensed_at"),
    replace(_HEIGHT, give=_rise, only=_from_top),
    replace(known("set", "pump.set"), give=_set, only=_holds),
)  # fmt: skip
