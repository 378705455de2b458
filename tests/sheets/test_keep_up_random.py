"""Whatever is asked: no exception but our own, each error at its field, every fault found.

The figures judge: a finding that they call for and that is not raised is the danger.
"""

import os
import re

import pytest

from calc import practice, water
from calc.network.parts import PumpSet, Run
from calc.network.state import SEEPING
from calc.page import row_text
from calc.page.fields import Number, Rows
from calc.page.form import work
from calc.page.state import State
from calc.pipe import pipes
from calc.sheets.keep_up.case import solved, supply_of
from calc.units import QUANTITIES, parse
from tests.rounds import some
from tests.sheets.random_supplies import SHEET, state

# requests; more, apart from the daily run: SPRINGLINE_SUPPLIES=2000
BLOCKS, COUNT = 20, int(os.environ.get("SPRINGLINE_SUPPLIES", some(500)))
EACH = -(-COUNT // BLOCKS)
INSIDE = re.compile(r"\(SI, |m3/s|\bKeyError\b|No crossing|Traceback|NaN|\binf\b")


def asked(request):
    """(outcome, the case the sheet solved or None)."""
    kept = {}

    def keep(values, reader):
        kept["case"], kept["values"] = solved(supply_of(values), values.ask), values
        return SHEET.solve(values, reader)

    outcome = work(type(SHEET)(**{**vars(SHEET), "solve": keep}), request)
    return outcome, kept.get("case"), kept.get("values")


def keys():
    plain = {entry.key for entry in SHEET.fields}
    tables = {e.key: {c.key for c in e.columns} for e in SHEET.fields if isinstance(e, Rows)}
    return plain, tables


def too_long(text):
    """Whether a sentence of a text has over 25 words, as no reader's has: our choice."""
    sentences = re.split(r"(?<=[.?!])\s+(?=[^a-z])", text)
    return any(len(re.findall(r"\S*\w\S*", one)) > 25 for one in sentences)


def misplaced(key):
    """Whether an error is not at a field, a row or a cell of the form."""
    plain, tables = keys()
    table, _, rest = key.partition(".")
    if table not in plain:
        return True
    index, _, column = rest.partition(".")
    return bool(rest) and not (index.isdigit() and column in {"", *tables[table]})


def called_for(case):
    """(key, at) that the solved figures call for, judged here anew."""
    network, after, wanted = case.after.network, case.after, set()
    air = water.air_pressure(network.altitude_m)
    vapour = water.vapour_pressure(network.temperature_k)
    flowing = {
        end for link in network.links if abs(after.flows[link.name]) > SEEPING
        for end in (link.start, link.end)
    }  # fmt: skip
    for place in flowing & {place.name for place in network.places}:
        if after.pressure(place) < vapour - air:
            wanted.add(("below-vacuum", place))
    for outlet in network.outlets:
        pressure = after.pressure(outlet.node)
        if outlet.open and pressure < outlet.content_pa * (1 - 1e-6) and after.draws[outlet.name]:
            wanted.add(("short", outlet.name))
        if max(pressure, 0.0) > practice.HIGHEST_AT_OUTLET * 1.0001:
            wanted.add(("outlet-over-limit", outlet.name))
    for link in network.links:
        if isinstance(link, Run) and link.pipe.rating_pa is not None:
            most = max(after.pressure(link.start), after.pressure(link.end))
            hot = pipes.too_hot(link.pipe, network.heat_k, network.temperature_k)
            if not hot and most > pipes.rating_at(link.pipe, network.heat_k) * 1.0001:
                wanted.add(("over-rating", link.name))
        if isinstance(link, PumpSet) and after.flows[link.name] > 1e-7:
            wanted |= npsh(link, after, (air - vapour) / network.weight)
    return wanted


def npsh(link, after, free):
    flow = after.flows[link.name]
    try:
        needed = link.pump.npsh_required_at(flow)
    except Exception:  # past its table: judged elsewhere
        return set()
    given = after.pressure(link.start) / after.network.weight + free
    if needed is None:
        return {("npsh-unchecked", "the pump")}
    if given < needed + practice.NPSH_MARGIN - 1e-6:
        return {("npsh" if given < needed else "npsh-margin", "the pump")}
    return set()


@pytest.mark.parametrize("block", range(BLOCKS))
def test_any_request_gets_an_answer_or_errors_at_their_fields(block):
    for seed in range(EACH * block, EACH * (block + 1)):
        outcome, case, _ = asked(state(seed))
        said = list(outcome.errors.values())
        assert (outcome.answer is None) == bool(outcome.errors), seed
        assert not [key for key in outcome.errors if misplaced(key)], (seed, outcome.errors)
        if outcome.answer is not None:
            said += [one.text for one in outcome.answer.findings + outcome.answer.fixes]
            said.append(outcome.answer.verdict.sentence)
            assert not [fix.text for fix in outcome.answer.fixes if too_long(fix.text)], seed
            found = {(one.key, one.at) for one in outcome.answer.findings}
            missing = {
                (key, at) for key, at in called_for(case) - found
                if not (key == "npsh-margin" and ("npsh", at) in found)
            }  # fmt: skip
            assert not missing, (seed, missing)
        assert not [text for text in said if INSIDE.search(text)], (seed, said)


# The same site in feet ------------------------------------------------------------------------


def in_feet(request):
    """A metric request with every number written in US units to the last bit."""
    texts = dict(request.texts)
    for entry in SHEET.fields:
        text = texts.get(entry.key, entry.default("metric"))
        if isinstance(entry, Number):
            texts[entry.key] = converted(text, entry)
        elif isinstance(entry, Rows):
            rows = [
                [
                    converted(cell, column) if isinstance(column, Number) else cell
                    for cell, column in zip(filled, entry.columns, strict=True)
                ]
                for filled in rows_of(entry, text)
            ]
            texts[entry.key] = row_text.encode(rows)
        else:
            texts[entry.key] = text
    return State("us", texts)


def rows_of(entry, text):
    from calc.page.state import filled_rows

    return filled_rows(entry, text, "metric")


def converted(text, entry):
    if not text.strip() or text == "?":
        return text
    usual, unit = (QUANTITIES[entry.quantity].default(s) for s in ("metric", "us"))
    value = parse(text, entry.quantity, usual.symbol).value
    return f"{unit.from_si(value)!r} {unit.symbol}"


def nothing_new(seed):
    """A site of a few houses at one height, several outlets alike, nothing newly opened."""
    import random

    rng = random.Random(seed)
    up = f"{rng.uniform(0, 25):.1f} m"
    size = rng.choice(("20", "25", "32"))
    long = f"{rng.uniform(5, 60):.0f} m"
    runs = [("pump", "fork", f"{rng.uniform(20, 120):.0f} m", "3 m", "pe100-sdr11/32")]
    runs += [("fork", name, long, up, f"pe100-sdr11/{size}") for name in ("a", "b", "c")]
    open_ = str(rng.randint(0, 2))
    taps = [(f"Shower {name}", name, "shower", open_, open_) for name in ("c", "a", "b")]
    texts = {"runs": row_text.encode(runs), "taps": row_text.encode(taps)}
    texts["set"] = f"{rng.uniform(1, 4.5):.1f} bar"
    return State("metric", texts)


@pytest.mark.parametrize("block", range(6))
def test_feet_and_metres_name_the_same_outlet_and_give_the_same_verdict(block):
    for seed in range(50 * block, 50 * block + 50):
        metric, case, _ = asked(nothing_new(seed))
        us, other, _ = asked(in_feet(nothing_new(seed)))
        assert metric.errors == us.errors == {}
        assert (case.main and case.main.name) == (other.main and other.main.name), seed
        assert metric.answer.verdict.word == us.answer.verdict.word, seed
        ours, theirs = (
            [(one.key, one.at, one.level) for one in outcome.answer.findings]
            for outcome in (metric, us)
        )
        assert ours == theirs, seed
