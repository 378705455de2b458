"""Texts as people type them into one field, drawn from the frozen fields of 0.1.0."""

WORDS = (
    "", " ", "0", "-0", "0.0", "12,5", "1,234", "1,234.5", "1.234,5", "1 1/4", "3/4", "½", "1½",
    "1e1", "1e20", "nan", "inf", "about 5", "5 ft 6 in", "5'6\"", "5 7", "12..5", "30 psi", "30psi",
    "20 °C", "70F", "10 gal/min", "6 L/min", ".5", "5.", "1 000", "1\u202f000", "٣", "１２", "−2",
    "-1", "+4", "1/0", "4 furlongs", "7 m", "12 ft", "80 %", "3 bar.", "2 BAR", "<b>4</b>", "-",
)  # fmt: skip
COUNTS = ("", "0", "-1", "2.5", "2.0", " 3 ", "1e1", "two", "999999", "nan", "3 m", "1,0", "٣")
TABLES = (
    "Flow L/min; Head m; Power W; NPSH m\n0; 38.0; 230; 1.6\n20; 35.5; 355; 1.9\n"
    "40; 27.5; 450; 2.7\n58; 13.0; 480; 4.3\n",
    "Flow gpm, Head ft\n0, 120\n5, 112\n10, 90\n14, 55",
    "Q m3/h\t0\t1.2\t2.4\t3.6\nH m\t46\t44\t37\t24",
    "Flow (L/h) Head (m) Efficiency (%)\n0 60 0\n1000 57 38\n2000 49 52\n3000 33 47",
    "Capacity L/s; Pressure bar\n0; 5,2\n0,3; 4,9\n0,6; 4,1\n0,9; 2,4",
    "Head m; Flow L/min; Power kW\n70; 0; 0.6\n66; 25; 0.85\n52; 50; 1.05\n25; 75; 1.1",
    "Flow L/min; Head m\n8; 0\n7.6; 30\n7.2; 60",
    "Flow L/min; Head m\n0; 20\n10; 25\n20; 15\n30; 5",
)  # fmt: skip
BAD_TABLES = (
    "",
    "Flow L/min; Head m",
    "Flow L/min; Head m\n0; 40\n20; thirty\n40; 20",
    "Flow L/min; Head m\n0; 40\n20; 30",
    "0; 40\n20; 30\n40; 10",
    "Flow L/min; Head m\n0; 40\n20; 45\n40; 50",
    "Flow L/min; Temperature C\n0; 40\n20; 30\n40; 10",
    "Flow L/min; Head m\n0; 40\n0; 40\n0; 40",
    "x" * 4001,
)


def plain(number, digits=4):
    """A number as a person types it: no exponent."""
    text = f"{number:.{digits}g}"
    if "e" in text:
        text = f"{number:.12f}".rstrip("0").rstrip(".") or "0"
    return text


def _bounded(value, entry):
    return min(max(value, entry["low"]), entry["high"])


def near_value(rng, frozen, entry, system, spread=2.5):
    """An SI value around the default, inside the field's bounds."""
    around = frozen.around(entry, system)
    if entry["quantity"] == "temperature":
        return _bounded(around + rng.uniform(-10, 15), entry)
    return _bounded(around * spread ** rng.uniform(-1, 1), entry)


def in_unit(value, unit, digits=4):
    return plain((value - unit["offset"]) / unit["factor"], digits)


def near(rng, frozen, entry, system):
    """(text, unit symbol for the menu or None): a number near the default."""
    value = near_value(rng, frozen, entry, system)
    unit = rng.choice(frozen.units(entry))
    text = in_unit(value, unit, rng.choice((2, 3, 3, 4, 6)))
    way = rng.random()
    if way < 0.6 or not unit["symbol"]:
        return text, unit["symbol"]
    spelled = rng.choice((unit["symbol"], *unit["aliases"]))
    return text + rng.choice(("", " ")) + spelled, frozen.symbol(entry, system)


def bound(rng, frozen, entry, system):
    """At a bound, a hair beyond it, or far beyond it."""
    end = entry[rng.choice(("low", "high"))]
    value = rng.choice((end, end * 1.01, end / 1.01, end + 1e-6, end - 1e-6, end * 30))
    unit = rng.choice(frozen.units(entry))
    number = (value - unit["offset"]) / unit["factor"]
    text = rng.choice((repr(number), plain(number, 8)))
    return text, rng.choice((unit["symbol"], unit["symbol"], frozen.symbol(entry, system)))


def odd(rng, frozen, entry, system):
    """What a number field may meet: bounds, signs, nothing, words, other units."""
    if rng.random() < 0.4:
        return bound(rng, frozen, entry, system)
    if rng.random() < 0.15:
        text, symbol = near(rng, frozen, entry, system)
        return rng.choice(("-", "+", "−", " ")) + text, symbol
    unit = rng.choice(frozen.units(entry))["symbol"]
    return rng.choice(WORDS), rng.choice((None, unit, frozen.symbol(entry, system)))


def count(rng, entry):
    start = int(entry["metric"])
    return str(rng.randint(entry["low"], min(entry["high"], max(3, 2 * start))))


def odd_count(rng, entry):
    ends = (entry["low"], entry["low"] - 1, entry["high"], entry["high"] + 1)
    return rng.choice((rng.choice(COUNTS), str(rng.choice(ends))))


def odd_choice(rng, entry):
    return rng.choice(("", "other", entry["values"][0].upper(), entry["values"][-1] + " "))


class Choices:
    """Deals each choice field's values in a shuffled round, so that every one has its turn."""

    def __init__(self, rng):
        self.rng, self.rounds = rng, {}

    def next(self, entry, name=None):
        turn = self.rounds.setdefault(name or entry["key"], [])
        if not turn:
            turn += self.rng.sample(entry["values"], len(entry["values"]))
        return turn.pop()
