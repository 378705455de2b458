"""All kinds of what a page asks, run by Pyodide at build.

What Python imports and which functions it runs here is what browsers are sent first. The sheets of
``LATER`` and what only they ask are left out: ``later`` imports them, so that what they need of the
standard library is sent too.
"""

import gc
import importlib
import json
import pkgutil
import traceback

import calc
from calc import bridge
from calc.page.fields import Number, Rows
from calc.sheets import KEYS, LATER, LATER_ROOMS
from calc.sheets import sheet as find_sheet
from calc.site import parts_list

OFTEN = (100, 5, 5)  # objects, rounds: rubbish of all kinds is cleared at all kinds of moments
WRONG = ("", "?", "x", "1,250", "30/50", "-5", "1e9", "12 1/2", "3 kg/cm2", "\u0661")

SHELF = json.dumps(  # a parts list of one pump
    {
        "format": parts_list.FORMAT,
        "version": 1,
        "name": "Our shelf",
        "pumps": [
            {
                "name": "Shed pump",
                "points": [
                    {"flow": "0 L/min", "head": "40 m", "power": "300 W", "npsh": "1.8 m"},
                    {"flow": "30 L/min", "head": "34 m", "power": "500 W", "npsh": "2.2 m"},
                    {"flow": "60 L/min", "head": "20 m", "power": "620 W"},
                ],
            }
        ],
    }
)


def ask(**request):
    return json.loads(bridge.handle(json.dumps(request)))


# what no sheet of a start imports, each with a dot behind it
FIRST = tuple(key for key in KEYS if key not in LATER)


def modules():
    """Names of all modules of ``calc``; of the packages among them it imports what they hold."""
    return [module.name for module in pkgutil.walk_packages(calc.__path__, "calc.")]


def later():
    """Import all that a start does not ask."""
    for name in modules():
        importlib.import_module(name)


def everything():
    """Import all that a start may ask, then ask each sheet for all it can do."""
    for name in modules():
        if not name.startswith(LATER_ROOMS):
            importlib.import_module(name)
    gc.set_threshold(*OFTEN)
    for key in FIRST:
        numbers(key, "metric", "us")
        numbers(key, "us", "metric")
        wrong(key)
        site(key, "metric")
    failing()


def sun():
    """Ask the sheets that come later, so that their first answers need no more functions either."""
    for key in LATER:
        numbers(key, "metric", "us")
        wrong(key)


def numbers(key, system, other):
    worked = ask(op="work", sheet=key, system=system)
    for phase in ("first", "form", "rest"):
        ask(op="work", sheet=key, system=system, base="../", flat=True, phase=phase)
    ask(op="letter", sheet=key, system=system, address="https://springline.example/")
    for fragment in (worked["link"], worked["link"][:-1], f"u={system}&climb=20m", "a=%E9&&b"):
        ask(op="read", sheet=key, fragment=f"#{fragment}")
    converted = ask(op="convert", sheet=key, system=system, to=other)
    ask(op="work", sheet=key, **{**_state(converted), "system": other})


def wrong(key):
    """What cannot be read, and what is out of bounds."""
    entries = find_sheet(key).fields
    number = next(entry.key for entry in entries if isinstance(entry, Number))
    for text in WRONG:
        ask(op="work", sheet=key, texts={number: text})
    for entry in entries:
        if isinstance(entry, Rows):
            ask(op="work", sheet=key, texts={entry.key: "x~~~~~~~"})


def _state(reply):
    return {name: reply[name] for name in ("texts", "units", "standing")}


def site(key, system):
    """What is asked of a site, and the sheet as the site fills it."""
    common = {"op": "site", "sheet": key, "system": system}
    demo = ask(**common, do="demo")
    filled = ask(**common, do="fill", site=demo["site"])
    held = {"text": demo["packed"], "way": filled["way"], "kept": sorted(filled["texts"])}
    worked = ask(op="work", sheet=key, system=system, site=held, **_state(filled))
    ask(op="read", sheet=key, fragment=f"#{worked['link']}")
    ask(**common, do="back", site=demo["site"], way=filled["way"], **_state(filled))
    exported = ask(**common, do="export", site=demo["site"])["text"]
    for asked in (
        {"do": "open", "text": exported},
        {"do": "open", "text": "{"},
        {"do": "pack", "site": demo["site"]},
        {"do": "unpack", "text": demo["packed"]},
        {"do": "unpack", "text": "cut"},
        {"do": "derive", "name": "Another"},
        {"do": "new", "name": "Another"},
        {"do": "duplicate", "name": "Another", "site": demo["site"]},
        {"do": "parts", "text": "{}"},
        {"do": "parts", "text": SHELF},
        {"do": "use_pump", "text": SHELF, "pump": "Shed pump", "site": demo["site"]},
    ):
        ask(**common, **asked)


def failing():
    """A fault in the code itself, as it is written out, and a question nobody can answer."""
    try:
        raise ZeroDivisionError("a fault")
    except ZeroDivisionError:
        traceback.format_exc()
    for request in ({"op": "work", "sheet": "none"}, {"op": "none", "sheet": KEYS[0]}):
        try:
            ask(**request)
        except KeyError:
            traceback.format_exc()
