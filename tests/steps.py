"""How much work a question is, counted and not timed: the same on a slow machine as on a fast one.

Two counts: the lines of Python run, and the calls made (of Python and of its built-in functions),
which costs less to count. Neither sees how long one call into C takes.
"""

import sys


def calls(question):
    """What the question gives, and how many calls and returns it takes."""
    count = 0

    def seen(*_):
        nonlocal count
        count += 1

    sys.setprofile(seen)
    try:
        given = question()
    finally:
        sys.setprofile(None)
    return given, count


def lines(question):
    """What the question gives, and how many lines of Python it runs."""
    count = 0

    def seen(_frame, event, _given):
        nonlocal count
        count += event == "line"
        return seen

    before = sys.gettrace()
    sys.settrace(seen)
    try:
        given = question()
    finally:
        sys.settrace(before)
    return given, count
