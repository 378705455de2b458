"""Print every measure, one a line, as it is taken."""

import itertools

from scripts.bench_steps import elsewhere, friction, heights, keystroke, memory, start, weak, year


def main():
    for label, ratio in itertools.chain(
        friction.measures(),
        start.measures(),
        weak.measures(),
        elsewhere.measures(),
        keystroke.measures(),
        year.measures(),
        heights.measures(),
        memory.measures(),
    ):
        print(f"{label:<72} {ratio:>9.3g}", flush=True)


if __name__ == "__main__":
    main()
