"""Figures, tables and working of the fault sheet."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from calc.network.suspects import OF_CHANGE
from calc.page.answer import Column, Figure, Step, Table, Value
from calc.sheets.fault import words

if TYPE_CHECKING:
    from calc.network.suspects import Fit
    from calc.sheets.fault.case import Case
    from calc.units import Reader

MOST_APART = 300.0  # of a logarithm, from which its exponential is no number any more


def figures(case: Case, reader: Reader) -> tuple[Figure, ...]:
    """How likely, and how far off with nothing wrong."""
    count = len(case.readings)
    found = [
        Figure("Share of this cause", case.leader.share, "percent", 2, main=True,
               note=words.cause(case.leader.fault)),
        Figure("Share of nothing wrong", case.nothing.share, "percent", 2),
        Figure("Readings compared", float(count), "number", len(str(count))),
    ]  # fmt: skip
    if case.readings:
        found.append(
            Figure("Furthest off with nothing wrong", _furthest(case.nothing), "number", 2,
                   note="in errors of that reading")
        )  # fmt: skip
    return tuple(found)


def _furthest(fit: Fit) -> float:
    return max((abs(one) for one in fit.residuals), default=0.0)


# Tables -------------------------------------------------------------------------------------------


def tables(case: Case, reader: Reader) -> tuple[Table, ...]:
    """Causes with their shares; expected and read."""
    return (causes(case), *((expected(case, reader),) if case.readings else ()))


def causes(case: Case) -> Table:
    """What fits, likeliest first."""
    first = case.first.fits
    rows = tuple(
        (_capital(words.cause(fit.fault)), fit.share, words.to_try(fit.fault))
        for fit in case.listed
    )
    return Table(
        "What fits, and what is safe to try",
        (Column("Cause"), Column("Share", "percent", 2), Column("Safe to try")),
        rows,
        marked=tuple(at for at, fit in enumerate(case.listed) if fit in first),
        note="Marked: causes that these readings cannot tell apart. A licensed person does all "
        "that is electrical.",
    )


def expected(case: Case, reader: Reader) -> Table:
    """What each reading says, and what it would say."""
    rows = []
    for at, reading in enumerate(case.readings):
        rows.append(
            (
                _capital(words.what(case, reading)),
                words.shown(reading, reading.value, reader),
                f"{words.shown(reading, case.leader.expected[at], reader)}"
                f" ({_off(case.leader.residuals[at])})",
                f"{words.shown(reading, case.nothing.expected[at], reader)}"
                f" ({_off(case.nothing.residuals[at])})",
            )
        )
    return Table(
        "Read and expected",
        (Column("Reading"), Column("Read"), Column("With this cause"), Column("Nothing wrong")),
        tuple(rows),
        note="In parentheses how far off it is, in errors of the reading with what is known only "
        "roughly. Over 3 is a bad fit.",
    )


def _off(residual: float) -> str:
    return f"{residual:+.1f}".replace("-", "−")


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]


# Working ------------------------------------------------------------------------------------------


def steps(case: Case, reader: Reader) -> tuple[Step, ...]:
    """The likelihood of the reading that tells most, by the leading cause against nothing wrong."""
    words_only = Step(
        "How it is found",
        note="Each fault is put into the supply, which is solved for each set of open outlets. "
        "The likelihood of all readings together is averaged over how bad the fault may be, and "
        "multiplied by how likely it was before.",
        source="Bayes’ rule",
    )
    if not case.readings:
        given = {"W": Value(case.leader.share, "percent", 6), "S": Value(1.0, "number", 6)}
        share = Step("Share before any reading", "P = W / S", given,
                     Value(case.leader.share, "percent", 6), source="Bayes’ rule")  # fmt: skip
        return words_only, share
    at = max(range(len(case.readings)), key=lambda i: _told_by(case, i))
    return (words_only, *_of_reading(case, at), _group(case))


def _told_by(case: Case, at: int) -> float:
    """How much further off a reading is with nothing wrong than with the leading cause."""
    return abs(case.nothing.residuals[at]) - abs(case.leader.residuals[at])


def _of_reading(case: Case, at: int) -> tuple[Step, ...]:
    reading, total = case.readings[at], case.ranking.errors[at]
    kind = words.quantity(reading)

    def value(number: float) -> Value:
        return Value(words.in_si(reading, number), kind, 6)

    def plain(number: float) -> Value:
        return Value(number, "number", 6)

    unknown = math.sqrt(max(0.0, total**2 - reading.error**2))
    sound, told = case.nothing.expected[at], case.leader.expected[at]
    wide = math.hypot(total, OF_CHANGE * (told - sound))
    off, with_it = (reading.value - sound) / total, (reading.value - told) / wide
    log = (off**2 - with_it**2) / 2 + math.log(total / wide)
    title = _capital(words.what(case, reading))
    found = [
        Step(f"Error of a reading: {title}", "sigma_0 = sqrt(e**2 + m**2)",
             {"e": value(reading.error), "m": value(unknown)}, value(total),
             note="m: what roughness, fittings, heights and pump known only roughly make of it"),
        Step("How far off with nothing wrong", "z_0 = (x - x_0) / sigma_0",
             {"x": value(reading.value), "x_0": value(sound), "sigma_0": value(total)},
             plain(off)),
        Step("Its error with this cause", "sigma_1 = sqrt(sigma_0**2 + (c * (x_1 - x_0))**2)",
             {"sigma_0": value(total), "c": plain(OF_CHANGE), "x_1": value(told),
              "x_0": value(sound)}, value(wide)),
        Step("How far off with this cause", "z_1 = (x - x_1) / sigma_1",
             {"x": value(reading.value), "x_1": value(told), "sigma_1": value(wide)},
             plain(with_it)),
        Step("What this reading alone tells, as a logarithm",
             "Lambda = (z_0**2 - z_1**2) / 2 + log(sigma_0 / sigma_1)",
             {"z_0": plain(off), "z_1": plain(with_it), "sigma_0": value(total),
              "sigma_1": value(wide)}, plain(log), source="Normal distribution"),
    ]  # fmt: skip
    return tuple(found)


def _group(case: Case) -> Step:
    """Shares of what cannot be told apart, added."""
    shares = [fit.share for fit in case.first.fits]
    rest = sum(shares[1:])
    return Step(
        "Share of all that these readings cannot tell apart",
        "P = P_1 + P_2",
        {"P_1": Value(shares[0], "percent", 6), "P_2": Value(rest, "percent", 6)},
        Value(case.first.share, "percent", 6),
        note="P_1: this cause; P_2: the others of its group",
    )
