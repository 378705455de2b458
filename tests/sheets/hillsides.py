"""Supplies to draw: one for each cause, many outlets, tall and flat sites, and at random."""

from calc.page import row_text
from calc.page.form import work
from calc.page.state import State
from calc.sheets import sheet
from calc.sheets.keep_up import sheet as keep_up
from tests.sheets import random_supplies

SHEET = sheet("keep_up")
PIPE = "pe100-sdr11/"
SHOWER = ("Shower", "house", "shower", "1", "1")
HOSE = ("Hose", "house", "hose", "0", "1")


def supply(runs, taps, tanks=(), system="metric", **texts):
    """A state of the keep_up sheet; a section's pipe is given by its size alone."""
    rows = [(*run[:4], PIPE + run[4], *run[5:]) for run in runs]
    tables = {"runs": rows, "taps": taps, "tanks": tanks}
    return State(system, {key: row_text.encode(cells) for key, cells in tables.items()} | texts)


def _fan(count, chain=1):
    """Cabins from one fork, or each ``chain`` of them behind one another."""
    runs = [("pump", "fork", "60 m", "5 m", "50")]
    for at in range(count):
        start = "fork" if at % chain == 0 else f"cabin {at - 1}"
        runs.append((start, f"cabin {at}", f"{20 + 5 * at} m", f"{4 + 0.9 * at:.1f} m", "25"))
    taps = [
        (f"Cabin {at} shower", f"cabin {at}", "shower", str(at % 2), "1") for at in range(count)
    ]
    return supply(runs, taps)


def _one(length, height, size="32", *more, taps=(SHOWER, HOSE), **texts):
    return supply([("pump", "house", length, height, size, *more)], taps, **texts)


LONG = "Wwwwwwwwwwwwwwwwwwwwwwww"
CAUSES = {
    "thin pipe": supply(
        [("pump", "fork", "60 m", "5 m", "50"), ("fork", "house", "200 m", "8 m", "25")],
        [SHOWER, HOSE],
    ),
    "suction pipe": _one("60 m", "12 m", "40", suctionpipe=PIPE + "20", suctionlong="60 m"),
    "filter": _one(
        "20 m", "21 m", "63", "2", "dirty", taps=(("Shower", "house", "shower", "2", "2"), HOSE)
    ),
    "valve": _one("20 m", "6 m", "50", "2", "r10", taps=(SHOWER,)),
    "climb": _one("60 m", "30 m"),
    "pump": _one("20 m", "20 m", "63", taps=(("Shower", "house", "shower", "6", "14"),)),
}
AWKWARD = {
    "example": State(),
    "example in us": State("us"),
    "few": State("us", {"ask": "few"}),
    "twelve": _fan(12),
    "thirty": _fan(30, chain=3),
    "sixty": _fan(59, chain=59),
    "flat": _one("60 m", "0 m", taps=(SHOWER, HOSE, ("Garden sink", "house", "sink", "1", "1"))),
    "tall": _one("400 m", "120 m"),
    "below": supply(
        [("pump", "house", "60 m", "-12 m", "32"), ("house", "barn", "50 m", "-20 m", "25")],
        [SHOWER, ("Trough", "barn", "float", "0", "1")],
    ),
    "deep valley": supply(
        [("pump", "dip", "300 m", "-200 m", "40"), ("dip", "house", "300 m", "20 m", "40")],
        [SHOWER],
    ),
    "tank": supply(
        [("pump", "fork", "60 m", "5 m", "32"), ("fork", "hill tank", "100 m", "20 m", "32"),
         ("fork", "house", "40 m", "8 m", "25")],
        [SHOWER, HOSE], [("hill tank", "20 m")],
    ),
    "flooded": _one("60 m", "12 m", lift="-3 m"),
    "far above the pump": _one("60 m", "12 m", lift="-50 m"),
    "loop": supply(
        [("pump", "fork", "60 m", "5 m", "40"), ("fork", "house", "30 m", "7 m", "25"),
         ("fork", "barn", "30 m", "8 m", "25"), ("house", "barn", "20 m", "8 m", "25"),
         ("house", "barn", "25 m", "8 m", "20")],
        [SHOWER, ("Hose", "barn", "hose", "0", "1")],
    ),
    "long names": supply(
        [("pump", LONG, "60 m", "5 m", "40"), (LONG, "a", "30 m", "7 m", "25"),
         (LONG, "b", "30 m", "8 m", "25")],
        [("Unpronounceable name", "a", "shower", "1", "1"),
         ("M" * 24, "b", "hose", "0", "1"), ("水井水井水井水井", LONG, "hose", "0", "1")],
    ),
    "closed": _one("60 m", "12 m", taps=(("Shower", "house", "shower", "0", "0"),)),
    "outlets at the pump": supply(
        [("pump", "house", "60 m", "12 m", "32")],
        [SHOWER, ("Tap", "pump", "hose", "0", "1"), ("Sink", "pump", "sink", "1", "1")],
    ),
    "chain": supply(
        [("pump", "p0", "20 m", "1 m", "40")]
        + [(f"p{n}", f"p{n + 1}", "20 m", f"{2 + 1.1 * n:.1f} m", "32") for n in range(14)],
        [("End shower", "p14", "shower", "1", "1"), ("Mid hose", "p6", "hose", "0", "1")],
    ),
    **CAUSES,
}  # fmt: skip


def drawn(state, monkeypatch):
    """(case, drawing) of a state; None where it has no answer.  No cures are looked for."""
    seen = []
    draw = keep_up.draw

    def watched(case, reader):
        seen.append((case, draw(case, reader)))
        return seen[-1][1]

    monkeypatch.setattr(keep_up, "tried", lambda *_: ())
    monkeypatch.setattr(keep_up, "draw", watched)
    outcome = work(SHEET, state)
    monkeypatch.undo()
    return seen[-1] if outcome.answer is not None else None


def at_random(count, monkeypatch):
    """(seed, case, drawing) of the first ``count`` random supplies that have an answer."""
    seed = 0
    while count:
        found = drawn(random_supplies.state(seed), monkeypatch)
        if found is not None:
            yield seed, *found
            count -= 1
        seed += 1
