"""How the time to solve a supply grows with its outlets, as ratios.

Prints one line for 10, 100 and 1000 outlets, on a branching and on a looped supply: the time
over that of the case before, and over the number of outlets.  Run: python scripts/bench_network.py
"""

import sys
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))

from calc.network.solve import solve  # noqa: E402
from scripts.made_supplies import supply  # noqa: E402

SIZES = (10, 100, 1000)


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
