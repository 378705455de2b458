"""How much work a question is, counted and not timed: the same on a slow machine as on a fast one.

Two counts: the lines of Python run, and the calls made (of Python and of its built-in functions),
which costs less to count. Neither sees how long one call into C takes.
"""

import sys


def calls(question):
    """What the question gives, and how many calls and returns it takes."""
    return _counted(question, sys.getprofile, sys.setprofile, lambda event: True)


def lines(question):
    """What the question gives, and how many lines of Python it runs."""
    return _counted(question, sys.gettrace, sys.settrace, lambda event: event == "line")


def _counted(question, now, watch, counts):
    count = 0

    def seen(_frame, event, _given):
        nonlocal count
        count += counts(event)
        return seen

    before = now()
    watch(seen)
    try:
        given = question()
    finally:
        watch(before)
    return given, count
