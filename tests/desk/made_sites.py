"""Sites made at random from Alder Terrace: pipes, lengths, pump, outlets, what is known."""

import random

from calc.site.demo import alder_terrace
from calc.site.facts import ASSUMED, NOT_KNOWN, Fact

SIZES = ("20", "25", "32", "40", "50", "63")
FITTINGS = ("none", "filter", "twin", "check", "r15")
SCALARS = {
    "pump.set": lambda r: f"{r.uniform(1.5, 6):.2f} bar",
    "pump.id": lambda r: r.choice(("small", "middle", "large")),
    "pump.control": lambda r: r.choice(("speed", "fixed", "switch")),
    "water.level": lambda r: f"{-r.uniform(1, 7):.1f} m",
    "water.temperature": lambda r: f"{r.uniform(3, 25):.0f} °C",
    "use.people": lambda r: str(r.randint(1, 12)),
    "power.strings": lambda r: str(r.randint(1, 4)),
    "power.capacity": lambda r: f"{r.uniform(20, 200):.0f} Ah",
    "place.altitude": lambda r: f"{r.uniform(0, 2500):.0f} m",
    "hot.volume": lambda r: f"{r.uniform(30, 300):.0f} L",
    "store.inflow": lambda r: f"{r.uniform(1, 20):.1f} L/min",
}


def site(seed):
    """One site, the same for the same seed."""
    r = random.Random(seed)
    made = alder_terrace()
    for path in r.sample(sorted(SCALARS), r.randint(2, 6)):
        made = made.put(path, fact(r, SCALARS[path](r)))
    for path in r.sample(("pump.cut_in", "pipes.weakest", "power.cable", "hot.stored"), 1):
        made = made.put(path, NOT_KNOWN)
    for index in range(len(made.rows("sections"))):
        if r.random() < 0.4:
            made = made.put_cell("sections", index, "pipe", Fact(f"pe100-sdr11/{r.choice(SIZES)}"))
        if r.random() < 0.4:
            made = made.put_cell("sections", index, "length", fact(r, f"{r.uniform(5, 120):.0f} m"))
        if r.random() < 0.2:
            made = made.put_cell("sections", index, "fitting", Fact(r.choice(FITTINGS)))
    for index in range(len(made.rows("outlets"))):
        if r.random() < 0.3:
            made = made.put_cell("outlets", index, "after", Fact(str(r.randint(0, 3))))
    if r.random() < 0.3:
        made = made.put_rows("outlets", made.rows("outlets")[: r.randint(1, 5)])
    return made


def fact(r, text):
    return Fact(text, ASSUMED, "a guess") if r.random() < 0.3 else Fact(text)


def gravity():
    """Alder Terrace below a spring, without a pump."""
    made = alder_terrace().put("pump.present", Fact("no")).put("water.level", Fact("45 m"))
    return made.put("water.yield", Fact("80 L/min"))
