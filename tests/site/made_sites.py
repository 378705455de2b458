"""Made-up sites for tests: any that a file can hold, and workable ones that a pump can feed."""

import random

from hypothesis import strategies as st

from calc.site.facts import ASSUMED, SLOTS, Fact
from calc.site.rows import TABLES
from calc.site.site import Site
from calc.units import QUANTITIES

WORDS = st.text(  # signs of category C do not print, and are left out as a site is read
    st.characters(codec="utf-8", exclude_categories=("C",)), min_size=1, max_size=20
).filter(lambda text: text.strip() == text)


def texts(slot):
    """Texts a slot can read: numbers in any of their units, words with any signs."""
    if slot.kind == "choice":
        return st.sampled_from([value for value, _ in slot.options])
    if slot.kind == "count":
        return st.integers(int(slot.low), int(slot.high)).map(str)
    if slot.kind == "numbers":
        numbers = st.lists(st.integers(-40, 40), min_size=slot.longest, max_size=slot.longest)
        return numbers.map(lambda found: " ".join(map(str, found)))
    if slot.kind == "text":
        return WORDS.filter(lambda text: len(text) <= slot.longest)
    units = [u for u in QUANTITIES[slot.quantity].units if u.symbol] or [None]
    return st.builds(_number, st.floats(0.001, 0.999), st.sampled_from(units), st.just(slot))


def _number(share, unit, slot):
    value = slot.low + share * (slot.high - slot.low)
    unit = unit or QUANTITIES[slot.quantity].default("metric")
    return f"{unit.from_si(value):.9g} {unit.symbol}".strip()


def facts(slot):
    given = texts(slot).map(Fact)
    usual = [Fact(slot.usual, ASSUMED, slot.reason)] if slot.usual else []
    return st.one_of(given, *(st.just(one) for one in usual))


def rows(table):
    cells = {slot.key: facts(slot) for slot in table.columns}
    return st.fixed_dictionaries({}, optional=cells)


@st.composite
def sites(draw):
    """Any site a file can hold."""
    site = Site(draw(WORDS), draw(st.sampled_from(["metric", "us"])), {}, {}, draw(WORDS))
    for slot in draw(st.lists(st.sampled_from(SLOTS), max_size=12, unique=True)):
        site = site.put(slot.key, draw(facts(slot)))
    for table in draw(st.lists(st.sampled_from(TABLES), max_size=4, unique=True)):
        site = site.put_rows(table.key, tuple(draw(st.lists(rows(table), max_size=4))))
    return site


# Workable ---------------------------------------------------------------------------------------

SIZES = ("25", "32", "40", "50")
KINDS = ("shower", "saver", "sink", "hose", "float", "drip")
EXTRAS = ("none", "none", "none", "filter", "meter", "check", "r20")


def workable(seed):
    """A well, a pump and a tree of pipe with outlets, in metric or US units."""
    dice = random.Random(seed)
    site = Site(f"Made {seed}", dice.choice(("metric", "us")))
    unit = ("m", 1.0) if site.system == "metric" else ("ft", 3.28084)

    def metres(low, high):
        return Fact(f"{dice.uniform(low, high) * unit[1]:.3g} {unit[0]}")

    base = dice.choice((0.0, 0.0, 2.0))
    given = {
        "water.level": Fact(f"{base - dice.uniform(-2, 5):.3g} m"),
        "pump.height": Fact(f"{base:g} m"),
        "suction.length": Fact(f"{dice.uniform(8, 20):.3g} m"),
        "suction.pipe": Fact("pe100-sdr11/50"),
        "pump.id": Fact(dice.choice(("middle", "large"))),
        "pump.set": Fact(f"{dice.uniform(2.5, 4.5):.2g} bar"),
        "pump.cut_in": Fact("2 bar"),
        "pump.cut_out": Fact("3.5 bar"),
        "pressure_tank.volume": Fact("100 L"),
        "store.inflow": Fact(f"{dice.uniform(5, 20):.2g} L/min"),
        "use.people": Fact(str(dice.randint(1, 12))),
        **{f"use.{kind}": Fact(str(dice.randint(0, 4))) for kind in (
            "showers", "sinks", "toilets", "washers", "hoses", "troughs")},
    }  # fmt: skip
    if dice.random() < 0.5:
        given["place.altitude"] = Fact(f"{dice.uniform(0, 1500):.3g} m")
    if dice.random() < 0.3:
        given["pump.control"] = Fact("fixed")
    for path, fact in given.items():
        site = site.put(path, fact)
    points, sections = ["pump"], []
    for number in range(dice.randint(1, 6)):
        to = f"point {number}"
        cells = {
            "from": Fact(dice.choice(points)), "to": Fact(to), "length": metres(5, 90),
            "height": metres(base - 3, base + 12),
            "pipe": Fact(f"pe100-sdr11/{dice.choice(SIZES)}"), "fitting": Fact(dice.choice(EXTRAS)),
        }  # fmt: skip
        if dice.random() < 0.7:
            cells["bends"] = Fact(str(dice.randint(0, 6)))
        sections.append(cells)
        points.append(to)
    outlets = []
    for number in range(dice.randint(1, 5)):
        outlets.append({
            "name": Fact(f"outlet {number}"), "at": Fact(dice.choice(points[1:])),
            "kind": Fact(dice.choice(KINDS)), "before": Fact(str(dice.randint(0, 2))),
            "after": Fact(str(dice.randint(0, 2))),
        })  # fmt: skip
    site = site.put_rows("sections", tuple(sections)).put_rows("outlets", tuple(outlets))
    if dice.random() < 0.5:
        site = site.put_rows("animals", ({"kind": Fact("goats"), "count": Fact("8")},))
    return site
