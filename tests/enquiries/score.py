"""How well enquiries are read: the share found, the share of what is reported that is wrong.

``python -m tests.enquiries.score tests/enquiries/apart.json`` prints the two shares and, of each
enquiry, the paths that were missed or wrong. It prints no words of an enquiry.
"""

import json
import re
import sys
from collections import Counter
from dataclasses import dataclass, field
from pathlib import Path

from calc.errors import InputError
from calc.site.enquiry import read
from calc.site.enquiry_slots import slot
from calc.units import parse

HERE = Path(__file__).parent
SAME = 0.005  # share within which a number is the one expected, as README.md says
# Facts of a site that there were none of when the fifty were written: they expect none of these,
# so what is reported of them counts neither way.
LATER = ("well.", "fall.", "drip.", "hot.", "rain.", "pump.dry_run", "store.fills", "store.height")
MATERIALS = (("cpvc", "cpvc"), ("pvc", "pvc"), ("pex", "pex"), ("copper", "copper"),
             ("steel", "steel"), ("galv", "steel"), ("iron", "steel"), ("hose", "hose"),
             ("lay", "layflat"), ("poly", "pe"), ("pe", "pe"))  # fmt: skip


@dataclass
class Score:
    """Counts over many enquiries; faults by name of the enquiry: (what, path)."""

    expected: int = 0
    found: int = 0
    reported: int = 0
    wrong: int = 0
    faults: dict = field(default_factory=dict)

    @property
    def found_share(self):
        return self.found / max(1, self.expected)

    @property
    def wrong_share(self):
        return self.wrong / max(1, self.reported)

    def fault(self, name, what, path):
        self.faults.setdefault(name, []).append((what, path))


def number(path, value, unit=""):
    """A value in SI, or a key as it is."""
    kind = slot(path).quantity or "number"
    text = f"{value} {unit}".strip()
    try:
        return parse(text, kind).value
    except InputError:
        try:
            return parse(str(value), kind).value if kind != "number" else float(value)
        except (InputError, ValueError):
            return value


def pipe(words):
    """(size in mm or inches, unit, material) of a pipe in words."""
    low = re.sub(r"(?<=\d)-(?=\d+/)", " ", str(words).lower())  # 1-1/4 in is 1 1/4 in
    material = next((short for word, short in MATERIALS if word in low), "")
    unit = "mm" if "mm" in low else "in"
    digits = low.split(unit)[0].strip().split()
    size = sum(float(p.split("/")[0]) / float(p.split("/")[1]) if "/" in p else float(p)
               for p in digits if p[0].isdigit())  # fmt: skip
    return round(size, 3), unit, material


def same(fact, told):
    """Whether what was told is the fact expected."""
    path = fact["path"]
    if path.endswith(".pipe"):
        return pipe(fact["value"]) == pipe(told.words)
    if fact.get("low") is not None:
        ends = [(fact["low"], told.low), (fact["high"], told.high)]
        return bool(told.low) and all(close(path, a, fact.get("unit", ""), b) for a, b in ends)
    if told.low:
        return False
    return close(path, fact["value"], fact.get("unit", ""), told.text)


def close(path, value, unit, text):
    if slot(path).kind in {"choice", "text"}:
        return str(value).casefold() == text.casefold()
    one, other = number(path, value, unit), number(path, text)
    if isinstance(one, str) or isinstance(other, str):
        return str(one) == str(other)
    return one == other if one == 0 else abs(one - other) <= SAME * abs(one)


def uncounted(enquiry, told, later=LATER):
    """What README.md says is counted neither way."""
    if told.path == "pump.present" and told.text == "yes":
        return True
    if told.path == "pump.works" and "jet" in told.quote.lower():
        return True
    gone = (
        words
        for words in enquiry.get("not_facts", ())
        if told.quote in words or words in told.quote
    )
    if told.path.startswith(later) or (told.text == "0" and any(gone)):
        return True
    return any(allows(reading, told) for reading in enquiry.get("readings", ()))


def allows(reading, told):
    """Whether an unclear quote may be what was told: the same words, and the number among them."""
    if reading["quote"] not in told.quote and told.quote not in reading["quote"]:
        return False
    for one in reading["may_be"]:
        if isinstance(one, dict):
            if one["path"] == told.path and same(one, told):
                return True
        elif told.text.split()[0].lstrip("-") in one.replace(",", " ").split():
            return True
    return False


def score(enquiries, later=LATER):
    total = Score()
    for enquiry in enquiries:
        told = read(enquiry["text"]).told
        left = list(enquiry["facts"])
        total.expected += len(left)
        for one in told:
            hit = next((f for f in left if f["path"] == one.path and same(f, one)), None)
            if hit is not None:
                left.remove(hit)
                total.found += 1
                total.reported += 1
            elif not uncounted(enquiry, one, later):
                total.reported += 1
                total.wrong += 1
                total.fault(enquiry["name"], "wrong", one.path)
        for fact in left:
            total.fault(enquiry["name"], "missed", fact["path"])
    return total


def causes(enquiries):
    """What became of the quotes of missed facts: counts of (path, why), no words of them."""
    counts = Counter()
    for enquiry in enquiries:
        found = read(enquiry["text"])
        for fact in enquiry["facts"]:
            if any(one.path == fact["path"] and same(fact, one) for one in found.told):
                continue
            start = found.text.find(fact["quote"])
            end = start + len(fact["quote"])
            spans = [(one.start, one.end, f"left out: {one.why}") for one in found.ignored]
            spans += [(one.start, one.end, "unclear") for one in found.unclear]
            spans += [
                (o.start, o.end, "contradiction") for c in found.contradictions for o in c.said
            ]
            spans += [(one.start, one.end, "unused") for one in found.unused]
            spans += [(one.start, one.end, "told as " + one.path) for one in found.told]
            why = next((why for s, e, why in spans if s < end and start < e), "unread")
            counts[fact["path"], why] += 1
    return counts


def said(total):
    return (
        f"{total.found} of {total.expected} found ({100 * total.found_share:.1f} %), "
        f"{total.wrong} of {total.reported} wrong ({100 * total.wrong_share:.2f} %)"
    )


def main(paths):
    enquiries = [one for path in paths for one in json.loads(Path(path).read_text("utf-8"))]
    total = score(enquiries)
    counts = Counter(fault for faults in total.faults.values() for fault in faults)
    for (what, path), times in sorted(counts.items()):
        print(f"{what} {path}: {times}")
    for (path, why), times in sorted(causes(enquiries).items(), key=lambda one: one[0][1]):
        print(f"{why}: {path} {times}")
    print(said(total))
    print("with every path counted:", said(score(enquiries, ("-",))))


if __name__ == "__main__":
    main(sys.argv[1:] or [str(path) for path in sorted(HERE.glob("own*.json"))])
