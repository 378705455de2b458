"""How many of its random cases a test takes: some in every run, all where they are asked for.

``SPRINGLINE_ROUNDS=all scripts/test`` takes all of them; to be run now and then, and after larger
changes. The cases are the same ones on every run, so the few are the first of the many.
"""

import os

ALL = os.environ.get("SPRINGLINE_ROUNDS") == "all"
PART = 3  # one in so many; our choice, so that a run stays below half an hour on two cores


def some(many, least=8):
    """How many of ``many`` cases are taken; ``least``: of so few all are."""
    return many if ALL else max(min(many, least), many // PART)


def one_in(cases, at=0):
    """Every third of a list of cases, ``at`` shifting which; all where they are asked for."""
    return list(cases) if ALL else list(cases)[at % PART :: PART]
