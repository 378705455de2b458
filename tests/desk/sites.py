"""Sites and requests for the tests of the desk: as a page asks, through the bridge alone."""

import functools
import json

from calc import bridge
from calc.desk.work import work_out
from calc.site import link
from calc.site.demo import alder_terrace, with_hill_tank
from calc.site.facts import Fact
from calc.site.pack import pack
from tests.site.made_sites import workable

UNKNOWN = Fact("", "unknown")
BASE = "https://water.example/"
WORST = ("bad", "tight", "good")


def by_height():
    """Alder Terrace from a spring 40 m up, without its pump."""
    site = alder_terrace().put("pump.present", Fact("no"))
    spring = {"name": Fact("source"), "kind": Fact("spring"), "level": Fact("40 m")}
    return site.put_rows("sources", (spring,))


def without_set_pressure():
    return alder_terrace().put("pump.set", UNKNOWN)


def switched():
    return alder_terrace().put("pump.control", Fact("switch"))


NAMED = {
    "alder": alder_terrace, "hill": with_hill_tank, "spring": by_height,
    "unknown": without_set_pressure, "switch": switched,
}  # fmt: skip
MADE = tuple(range(20))  # seeds of made sites


@functools.cache
def site(key):
    return NAMED[key]() if key in NAMED else workable(key)


@functools.cache
def worked(key, system=""):
    return work_out(site(key), system)


def fragment(key, system=""):
    made = site(key)
    return link.of_site(system or made.system, pack(made))


def asked(do, **more):
    """A reply of the desk."""
    request = {"op": "desk", "sheet": "reach", "do": do, "base": BASE, **more}
    return json.loads(bridge.handle(json.dumps(request)))


@functools.cache
def desk(do, key, system=""):
    """The desk's page for a site; not to be changed."""
    return asked(do, fragment=fragment(key, system))


def page(sheet, fragment_of_page):
    """What a sheet's own page shows when it opens a fragment: read, then worked out."""
    ask = {"sheet": sheet, "base": "", "flat": False}
    read = json.loads(bridge.handle(json.dumps(
        {"op": "read", **ask, "fragment": fragment_of_page})))  # fmt: skip
    held = read["site"]
    return json.loads(bridge.handle(json.dumps({
        "op": "work", **ask, "system": read["system"], "texts": read["texts"],
        "units": read["units"], "standing": read["standing"],
        "reasons": {**held["reasons"], **held["cells"]},
        "site": {"text": held["packed"], "way": held["way"], "kept": held["filled"]},
    })))  # fmt: skip


@functools.cache
def pages(key, system=""):
    """{key of a sheet: what its own page shows} of all that the desk worked out."""
    return {one.key: page(one.key, one.fragment) for one in worked(key, system).parts}
