"""How the time to solve a supply grows with its outlets, as ratios.

Prints one line for 10, 100 and 1000 outlets, on a branching and on a looped supply: the time
over that of the case before, and over the number of outlets.  Run: python scripts/bench_network.py
"""

import sys
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))

from calc.network.outlets import CompensatingDripper, LimitedShower, Orifice, Outlet  # noqa: E402
from calc.network.parts import Level, Network, Place, PumpSet, Run  # noqa: E402
from calc.network.solve import solve  # noqa: E402
from calc.pipe import pipes  # noqa: E402
from calc.pump import invented as pumps_demo  # noqa: E402
from calc.units import LITRE, MINUTE  # noqa: E402

SIZES = (10, 100, 1000)
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


def best_of(count, network):
    """Least processor time of ``count`` runs, s, and the solution."""
    times = []
    for _ in range(count):
        start = time.process_time()
        solution = solve(network)
        times.append(time.process_time() - start)
    return min(times), solution


def main():
    for kind, loops in (("branching", False), ("looped", True)):
        first = before = None
        for size in SIZES:
            seconds, solution = best_of(3000 // size, supply(size, loops))
            first, before = first or seconds, before or seconds
            print(
                f"{kind:9} {size:5} outlets: {seconds / before:6.2f} times the size before, "
                f"{seconds / first / (size / SIZES[0]):5.2f} per outlet against {SIZES[0]}; "
                f"{solution.steps} steps, imbalance {solution.imbalance:.1e}; "
                f"{'under' if seconds < 1 else 'OVER'} a second"
            )
            before = seconds


if __name__ == "__main__":
    main()
