"""Weights of words: ``python -m tests.enquiries.weights`` writes calc/site/enquiry_usual_table.py.

A multinomial logistic regression on the numbers of our own letters, with a penalty on the squares
of the weights; small weights are left out, and the rest worked out again without them. It takes
the numbers as the rules leave them, so it is to be run again when rules have changed much.
"""

import json
import sys
from collections import Counter
from pathlib import Path

import numpy as np
from scipy.optimize import minimize
from scipy.sparse import csr_matrix

from calc.site import enquiry_usual
from calc.site.enquiry import read
from tests.enquiries.phrased import NOT_SAID, SAID
from tests.enquiries.score import number, slot

HERE = Path(__file__).parent
TABLE = Path(enquiry_usual.__file__).with_name("enquiry_usual_table.py")
PENALTY = 1.0  # of squares of weights; among 0.5 to 4 it hardly mattered for letters left out
LEAST = 3  # letters' numbers that a feature must be beside, lest it be one letter's
SMALL = 0.2  # weights below it are left out
FEW = 4  # numbers that a path must have been, to be one of those told
SAME = 0.006  # share within which a number is the one expected


def samples(enquiries):
    """[(features of a number, path with its sign or "none")] of letters."""
    found, seen = [], []
    settle = enquiry_usual.settle
    enquiry_usual.settle = lambda low, numbers, found: seen.append((low, numbers, found))
    try:
        for enquiry in enquiries:
            seen.clear()
            read(enquiry["text"])
            for low, numbers, pieces in seen:
                for token in numbers:
                    label = expected(enquiry, low, token)
                    if label:
                        found.append((enquiry_usual.features(low, token, pieces.pieces), label))
    finally:
        enquiry_usual.settle = settle
    return found


def sentences():
    """Sentences of phrasings as letters; what they do not name of their numbers is open."""
    facts = {}
    for path, value, texts in SAID:
        number_, _, unit = str(value).partition(" ")
        for words in texts if unit and isinstance(value, str) and path != "way.pipe" else ():
            facts.setdefault(words, []).append({"path": path, "value": number_, "unit": unit})
    told = [{"text": words, "facts": ones, "readings": (), "open": True}
            for words, ones in facts.items()]  # fmt: skip
    traps = {words for _, texts in NOT_SAID for words in texts} - set(facts)
    return told + [{"text": one, "facts": (), "readings": (), "trap": True}
                   for one in sorted(traps)]  # fmt: skip


def expected(enquiry, low, token):
    """What a number is expected to be; "" where that may be read in several ways."""
    for fact in enquiry["facts"]:
        value = fact.get("value", fact.get("low"))
        if over(low, fact.get("quote", low), token):
            want, got = (number(fact["path"], one, unit) for one, unit in
                         ((value, fact.get("unit", "")), (token.low, token.unit)))  # fmt: skip
            numeric = isinstance(want, float) and isinstance(got, float)
            if numeric and abs(abs(want) - abs(got)) <= SAME * max(abs(want), abs(got), 1e-12):
                return fact["path"] + ("-" if want < 0 else "")
    unsaid = "open" in enquiry or ("trap" in enquiry and token.used)
    if unsaid or any(over(low, one["quote"], token) for one in enquiry["readings"]):
        return ""
    return enquiry_usual.NONE


def over(low, quote, token):
    """Whether a quote stands where a number does."""
    quote = quote.lower()
    at = low.find(quote)
    while at >= 0:
        if at < token.end and token.start < at + len(quote):
            return True
        at = low.find(quote, at + 1)
    return False


def matrix(rows, at):
    """Features of many numbers as a sparse matrix of ones."""
    cells = [sorted(at[one] for one in row if one in at) for row in rows]
    ends = np.cumsum([0, *map(len, cells)])
    flat = [one for row in cells for one in row]
    return csr_matrix((np.ones(len(flat)), flat, ends), shape=(len(rows), len(at)))


def fitted(ones, kept, start):
    """Weights (features by classes) of least loss, where ``kept`` lets them be."""
    known, right = ones
    many = np.arange(known.shape[0])

    def loss(flat):
        weights = flat.reshape(kept.shape)
        sums = known @ weights
        sums -= sums.max(1, keepdims=True)
        shares = np.exp(sums)
        shares /= shares.sum(1, keepdims=True)
        cost = -np.log(shares[many, right] + 1e-12).sum() + PENALTY / 2 * (flat @ flat)
        shares[many, right] -= 1
        return cost, ((known.T @ shares + PENALTY * weights) * kept).ravel()

    done = minimize(loss, start.ravel(), jac=True, method="L-BFGS-B", options={"maxiter": 150})
    return done.x.reshape(kept.shape)


def trained(enquiries):
    """(classes, {feature: weights by class}) of letters."""
    found = samples(enquiries)
    counts = Counter(one for row, _ in found for one in row)
    names = sorted(one for one, times in counts.items() if times >= LEAST)
    times = Counter(label for _, label in found)
    paths = sorted(one for one, many in times.items() if many >= FEW and one != enquiry_usual.NONE)
    classes = [enquiry_usual.NONE, *(one for one in paths if slot(one.rstrip("-")))]
    right = np.array([classes.index(one) if one in classes else 0 for _, one in found])
    ones = matrix([row for row, _ in found], {one: at for at, one in enumerate(names)}), right
    kept = np.ones((len(names), len(classes)))
    weights = fitted(ones, kept, np.zeros(kept.shape))
    kept = (np.abs(weights) >= SMALL).astype(float)
    weights = fitted(ones, kept, weights * kept)
    return classes, dict(zip(names, np.round(100 * weights).astype(int).tolist(), strict=True))


def text(classes, weights):
    """The module of the table."""
    lines, line = [], ""
    for name, row in weights.items():
        pairs = ",".join(f"{at}:{weight}" for at, weight in enumerate(row) if weight)
        word = f"{name}~{pairs}"
        if not pairs:
            continue
        if line and len(line) + len(word) > 98:
            lines.append(line)
            line = ""
        line = f"{line} {word}".strip()
    listed = "\n".join(f'    "{one}",' for one in classes)
    table = "\n".join([*lines, line]).replace("\\", "\\\\")
    return (
        '"""Weights of words near numbers, in hundredths: '
        'written by ``python -m tests.enquiries.weights``."""\n\n'
        f"CLASSES = (\n{listed}\n)\n"
        f'WEIGHTS = """\n{table}\n"""\n'
    )


def main(paths):
    enquiries = [one for path in paths for one in json.loads(Path(path).read_text("utf-8"))]
    TABLE.write_text(text(*trained([*enquiries, *sentences()])), "utf-8")
    print(f"{len(enquiries)} letters, {TABLE.stat().st_size} bytes")


if __name__ == "__main__":
    main(sys.argv[1:] or sorted(HERE.glob("own*.json")))
