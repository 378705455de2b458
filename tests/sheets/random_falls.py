"""Random supplies without a pump: a spring or tank above, branches, valves and tanks on the way."""

import random

from calc.page import row_text
from calc.page.state import State

SIZES = ("25", "32", "40", "50")
PARTS = ("none", "none", "none", "filter", "dirty", "check", "r10", "r30", "r50", "break", "break")
KINDS = ("shower", "saver", "sink", "hose", "float", "drip")


def state(seed):
    """One request by its seed, in metric or US units."""
    dice = random.Random(seed)
    system = dice.choice(("metric", "us"))
    unit, each = ("m", 1.0) if system == "metric" else ("ft", 3.28084)

    def metres(value):
        return f"{value * each:.4g} {unit}"

    level = dice.uniform(0, 130) if dice.random() < 0.5 else 0.0  # or heights from the source
    rows, points = [], [("pump", level)]
    for number in range(dice.randint(1, 6)):
        start, high = dice.choice(points)
        down = dice.uniform(-8, dice.choice((40, 70, 180)))
        end = f"point {number}"
        rows.append(
            (start, end, metres(max(5.0, abs(down) * dice.uniform(1.2, 8))), metres(high - down),
             f"pe100-sdr11/{dice.choice(SIZES)}", str(dice.randint(0, 5)), dice.choice(PARTS))
        )  # fmt: skip
        points.append((end, high - down))
    taps = [
        (f"Tap {number}", dice.choice(points[1:])[0], dice.choice(KINDS), str(dice.randint(0, 1)),
         str(dice.randint(0, 3)))
        for number in range(dice.randint(1, 4))
    ]  # fmt: skip
    texts = {
        "drive": "none",
        "fall": metres(level),
        "runs": row_text.encode(rows),
        "taps": row_text.encode(taps),
        "tanks": "",
        "altitude": metres(dice.choice((0, 300, 2000))),
    }
    if dice.random() < 0.6:
        gives = dice.uniform(3, 120)
        texts["gives"] = f"{gives:.3g} L/min" if system == "metric" else f"{gives / 3.785:.3g} gpm"
    if dice.random() < 0.15:
        texts["tanks"] = row_text.encode((("pond", metres(level - dice.uniform(0, 20))),))
        rows.append((dice.choice(points[1:])[0], "pond", metres(60), metres(0), "pe100-sdr11/32"))
        texts["runs"] = row_text.encode(rows)
    return State(system, texts)
