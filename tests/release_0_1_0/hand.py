"""Draws links as people type or mangle them: the part of the address after "#"."""

from urllib.parse import quote

from tests.release_0_1_0 import tables, typed

WHOLE = (
    "", "#", "climb", "the-working", "=", "=5", "&", "&&u=us&&", "u", "u=", "u=us", "u=US",
    "u=metric", "u=us&u=metric", "u=metric&u=us", "u=%75s", "u=us+", "%75=us", "u=%ZZ", "foo=%ZZ",
    "u=us&foo=%E9", "__proto__=1", "constructor=a&u=us", "u=us#u=metric", "?u=us", "u:us=1",
    "u=us=metric",
)  # fmt: skip
STRAYS = (
    "foo=3", "foo=", "=7", "stray", "%ZZ", "bad=%ZZ", "bad=%", "bad=%E9", "ü=1", "x=" + "y" * 60,
    "a%20b=1", "toString=2", "", "&", "sheet=reach", "utm_source=mail",
)  # fmt: skip
PLAIN = str.maketrans({"³": "3", "²": "2", "°": "", "·": "", " ": ""})
SYSTEM = ("u=us", "u=us", "u=metric", "u=US", "u=", "u=imperial")
LONG = 8200  # characters: more than 0.1.0 takes from one entry


class Hand:
    """The draws for one sheet."""

    def __init__(self, rng, frozen):
        self.rng, self.frozen = rng, frozen
        self.choices = typed.Choices(rng)

    def link(self):
        """One link of one to four fields, told apart by units, order, spelling and strays."""
        rng = self.rng
        system = rng.choice(("metric", "us"))
        texts = self.texts(system)
        parts = [f"{self.name(key)}={self.spelled(text)}" for key, text in texts.items()]
        if rng.random() < 0.2:
            parts.append(rng.choice(parts))
        if rng.random() < 0.15:
            key = rng.choice(list(texts))
            again = self.text(self.frozen.field(key), system)
            parts.insert(rng.randint(0, len(parts)), f"{key}={self.spelled(again)}")
        if rng.random() < 0.2:
            parts.insert(rng.randint(0, len(parts)), rng.choice(STRAYS))
        self.say_system(system, parts)
        return "&".join(parts)

    def say_system(self, system, parts):
        """Mostly the right one and first; also last, in the middle, wrong, or not at all."""
        rng = self.rng
        way = rng.random()
        said = "u=us" if system == "us" else rng.choice(("", "", "u=metric"))
        if way > 0.9:
            said = rng.choice(SYSTEM)
        if said and way > 0.08:
            place = 0 if way < 0.5 else len(parts) if way < 0.75 else rng.randint(0, len(parts))
            parts.insert(place, said)

    def texts(self, system):
        """Texts by key; a choice that shows a field mostly comes with it."""
        rng, texts = self.rng, {}
        for entry in rng.choices(self.frozen.fields, k=rng.choice((1, 1, 2, 3, 4))):
            texts[entry["key"]] = self.text(entry, system)
            while entry["when"] and rng.random() < 0.8:
                key, wanted = entry["when"]
                texts.setdefault(key, rng.choice(wanted))
                entry = self.frozen.field(key)
        if rng.random() < 0.3:
            texts = dict(rng.sample(list(texts.items()), len(texts)))
        return texts

    def text(self, entry, system):
        rng = self.rng
        wrong = rng.random() < 0.3
        if entry["kind"] == "Choice":
            return typed.odd_choice(rng, entry) if wrong else self.choices.next(entry)
        if entry["kind"] == "Count":
            return typed.odd_count(rng, entry) if wrong else typed.count(rng, entry)
        if entry["kind"] == "Text":
            return rng.choice(typed.BAD_TABLES if wrong else typed.TABLES)
        if entry["kind"] == "Rows":
            made = tables.odd if wrong else tables.drawn
            return made(rng, self.frozen, entry, system, self.choices)
        return self.number(entry, system, wrong)

    def number(self, entry, system, wrong):
        """A number, with its unit mostly; "mm2/s" for "mm²/s", "C" for "°C"."""
        rng = self.rng
        if rng.random() < 0.05:
            return entry[system]
        text, symbol = (typed.odd if wrong else typed.near)(rng, self.frozen, entry, system)
        if symbol and text[-1:].isdigit() and rng.random() < 0.8:
            text += rng.choice(("", "", " ")) + symbol
        if rng.random() < 0.5:
            text = text.translate(PLAIN)
        if rng.random() < 0.08:
            text = text.replace(".", ",")
        return text

    def name(self, key):
        """A key, now and then as it should not be."""
        ways = (key.upper(), key + " ", "%" + key.encode().hex()[:2] + key[1:], f"{key}s")
        return self.rng.choice(ways) if self.rng.random() < 0.04 else key

    def spelled(self, text):
        """As 0.1.0 spells it, or all signs as %, or typed with no heed to an address."""
        rng = self.rng
        way = rng.random()
        if rng.random() < 0.01:
            text = text.ljust(LONG, "0")
        if way < 0.4:
            return quote(text, safe="/,;!~*'()").replace("%20", "+")
        if way < 0.55:
            return quote(text, safe="")
        if way < 0.65:
            return "".join(f"%{byte:02x}" for byte in text.encode())
        if way < 0.72:
            return quote(text, safe="/,;!").replace("%", "%25")
        raw = text.replace("&", "%26").replace("#", "%23").replace("\n", "%0A").replace("\t", "%09")
        return raw.replace(" ", "+") if way < 0.85 else raw


def links(rng, frozen, count):
    """``count`` different links; those of ``WHOLE`` come first."""
    found, hand = dict.fromkeys(WHOLE), Hand(rng, frozen)
    while len(found) < count:
        found[hand.link()] = None
    return list(found)[:count]
