"""Draws the requests that were put to release 0.1.0: 200 for each sheet and system.

They are drawn from ``defaults.json`` alone, so the same ones come on every run and with any
later code.  A third change few fields, a third change many, a third hold what goes wrong: bounds,
zero, signs, nothing, words, units of another kind.
"""

import random

from tests.release_0_1_0 import tables, typed
from tests.release_0_1_0.frozen import SYSTEMS, Frozen

EACH = 200  # requests for a sheet in a system
SEED = "0.1.0 requests"


def requests(key):
    """The 400 requests of sheet ``key``, metric first."""
    rng = random.Random(f"{SEED} {key}")
    draw = Draw(rng, Frozen(key))
    return [draw.request(index, system) for system in SYSTEMS for index in range(EACH)]


class Draw:
    """The draws for one sheet."""

    def __init__(self, rng, frozen):
        self.rng, self.frozen = rng, frozen
        self.choices = typed.Choices(rng)
        self.due = []  # (field, value) of every choice, each to be asked in its turn

    def request(self, index, system):
        texts, units = {}, {}
        ways = (self.few, self.many, self.wrong)
        ways[index % 3](system, texts, units)
        request = {"op": "work", "sheet": self.frozen.key, "system": system}
        request |= {"texts": texts, "units": units}
        if index % 4 == 1:
            request["base"] = "../"
        if index % 8 == 5:
            request["flat"] = True
        return request

    def few(self, system, texts, units):
        """One choice, and up to three other fields, shown by it or always."""
        self.turn(texts)
        self.some(self.rng.randint(1, 3), system, texts, units)

    def many(self, system, texts, units):
        """One choice, and most of the other fields that show."""
        self.turn(texts)
        for entry in self.frozen.fields:
            free = entry["key"] not in texts and self.frozen.shown(entry, texts, system)
            if free and self.rng.random() < 0.7:
                self.draw(entry, system, texts, units)

    def wrong(self, system, texts, units):
        """One or two fields with what may not be allowed there, sometimes beside good ones."""
        self.turn(texts)
        if self.rng.random() < 0.4:
            self.some(2, system, texts, units)
        for entry in self.picked(self.rng.choice((1, 1, 2)), system, texts):
            if entry["kind"] != "Choice" or entry["key"] not in texts:
                self.odd(entry, system, texts, units)

    def some(self, count, system, texts, units):
        for entry in self.picked(count, system, texts):
            if entry["key"] not in texts:
                self.draw(entry, system, texts, units)

    def picked(self, count, system, texts):
        """Fields that show; choices stand back, they have their turn."""
        shown = [e for e in self.frozen.fields if self.frozen.shown(e, texts, system)]
        weights = [0.2 if entry["kind"] == "Choice" else 1.0 for entry in shown]
        return self.rng.choices(shown, weights, k=count)

    def turn(self, texts):
        """The next value of the next choice, with the choices that show its field."""
        if not self.due:
            self.due = [
                (entry, value)
                for entry in self.frozen.fields
                if entry["kind"] == "Choice"
                for value in entry["values"]
            ]
            self.rng.shuffle(self.due)
        if self.due:
            entry, value = self.due.pop()
            texts[entry["key"]] = value
            self.reveal(entry, texts)

    def reveal(self, entry, texts):
        if entry["when"]:
            key, wanted = entry["when"]
            texts.setdefault(key, self.rng.choice(wanted))
            self.reveal(self.frozen.field(key), texts)

    def draw(self, entry, system, texts, units):
        rng, key = self.rng, entry["key"]
        if entry["kind"] == "Choice":
            texts[key] = self.choices.next(entry)
        elif entry["kind"] == "Count":
            texts[key] = typed.count(rng, entry)
        elif entry["kind"] == "Text":
            texts[key] = rng.choice(typed.TABLES)
        elif entry["kind"] == "Rows":
            texts[key] = tables.drawn(rng, self.frozen, entry, system, self.choices)
        else:
            texts[key], units[key] = typed.near(rng, self.frozen, entry, system)

    def odd(self, entry, system, texts, units):
        rng, key = self.rng, entry["key"]
        if entry["kind"] == "Choice":
            texts[key] = typed.odd_choice(rng, entry)
        elif entry["kind"] == "Count":
            texts[key] = typed.odd_count(rng, entry)
        elif entry["kind"] == "Text":
            texts[key] = rng.choice(typed.BAD_TABLES)
        elif entry["kind"] == "Rows":
            texts[key] = tables.odd(rng, self.frozen, entry, system, self.choices)
        else:
            texts[key], symbol = typed.odd(rng, self.frozen, entry, system)
            if symbol is not None:
                units[key] = symbol
