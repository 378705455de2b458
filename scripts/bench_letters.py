"""How much longer a letter of twice the length takes to read. Prints only, as ratios.

Run as ``python -m scripts.bench_letters``.
"""

import time

from calc.site.enquiry import read

PIECES = (
    "The house is 20 m above the pump. ",
    "2 showers, 3 sinks, 4 goats at once, ",
    "1 ",
)
SIGNS = 10_000  # of the shorter one


def seconds(text):
    """Processor time of reading a text, the least of three."""
    times = []
    for _ in range(3):
        begun = time.process_time()
        read(text)
        times.append(time.process_time() - begun)
    return min(times)


def main():
    print("Reading a letter of twice the length, times the time of the shorter:")
    for piece in PIECES:
        short = piece * (SIGNS // len(piece))
        print(f"  {seconds(2 * short) / seconds(short):.1f}  of “{piece.strip()}” over and over")


if __name__ == "__main__":
    main()
