"""Supplies of any size and sites, made for benchmarks and for tests of large networks."""

import random

from calc.network.outlets import CompensatingDripper, LimitedShower, Orifice, Outlet
from calc.network.parts import Level, Network, Place, PumpSet, Run
from calc.pipe import pipes
from calc.pump import invented as pumps_demo
from calc.site.facts import Fact
from calc.site.site import Site
from calc.units import LITRE, MINUTE

ROW = 10  # outlets along one lateral
LPM = LITRE / MINUTE


def supply(outlets, loops):
    """A pumped main with laterals of ten outlets each; ``loops``: every fifth lateral is ringed.

    Flow a outlet shrinks with their number, so that one pump feeds any size.
    """
    share = 40.0 * LPM / outlets
    laws = (
        Orifice(share, 1e5),
        LimitedShower(1.2 * share, 1e5, share),
        CompensatingDripper(share, 0.5e5, 4e5),
    )
    places, links, taps = [Place("inlet", 0.0), Place("main0", 0.0)], [], []
    main, lateral = pipes.pipe("pe100-sdr11", "50"), pipes.pipe("pe100-sdr11", "32")
    links.append(Run("suction", "well", "inlet", main, 6.0, 3.0))
    links.append(PumpSet("pump", "inlet", "main0", pumps_demo.PUMPS["middle"], 4e5))
    rows = (outlets + ROW - 1) // ROW
    for row in range(rows):
        head = f"main{row + 1}"
        places.append(Place(head, 10.0 * (row + 1) / rows))
        links.append(Run(f"m{row}", f"main{row}", head, main, 60.0 / rows, 0.2))
        before = head
        for step in range(ROW):
            name = f"{row}.{step}"
            places.append(Place(name, places[-1].height_m + 0.02))
            links.append(Run(f"l{name}", before, name, lateral, 3.0, 0.1))
            taps.append(Outlet(f"o{name}", name, laws[(row + step) % 3]))
            before = name
        if loops and row % 5 == 4:
            links.append(Run(f"ring{row}", f"{row}.9", f"{row - 1}.9", lateral, 10.0))
    return Network(tuple(places), (Level("well", -4.0),), tuple(links), tuple(taps))


def site(seed, outlets=6):
    """A site with a well, a pump and a tree of pipe sections, one for each outlet; in metric."""
    dice = random.Random(seed)
    given = {
        "water.level": f"{-dice.uniform(2, 5):.3g} m", "suction.length": "7 m",
        "suction.pipe": "pe100-sdr11/50", "pump.id": dice.choice(("middle", "large")),
        "pump.height": "0 m", "pump.set": f"{dice.uniform(2.5, 4.5):.2g} bar",
    }  # fmt: skip
    sections, taps, points = [], [], ["pump"]
    for number in range(outlets):
        points.append(f"point {number}")
        length, height = f"{dice.uniform(5, 90):.3g} m", f"{dice.uniform(-3, 12):.3g} m"
        size = f"pe100-sdr11/{dice.choice((32, 40, 50))}"
        cells = (dice.choice(points[:-1]), points[-1], length, height, size)
        sections.append(_row(zip(("from", "to", "length", "height", "pipe"), cells, strict=True)))
        kind, opened = dice.choice(("shower", "sink", "hose")), str(dice.randint(0, 1))
        cells = (f"outlet {number}", points[-1], kind, opened, "1")
        taps.append(_row(zip(("name", "at", "kind", "before", "after"), cells, strict=True)))
    made = Site(f"Made {seed}", "metric", {path: Fact(text) for path, text in given.items()})
    return made.put_rows("sections", tuple(sections)).put_rows("outlets", tuple(taps))


def _row(pairs):
    return {key: Fact(text) for key, text in pairs}
