"""What may differ from release 0.1.0, and why: empty until something does.

A sheet in ``CHANGED`` is no longer held to its replies byte by byte, but still to what must hold
of any change (see ``held.py``).  Say in ``changes.md`` what changed, under the sheet's key.
"""

CHANGED = {  # sheet key: why its replies are others now
    "keep_up": "judged by findings; ratings at shut-off, 80 psi, NPSH margin; levels of practice",
}
MENDED = {}  # (sheet key, index of the request): why what was an error is an answer now
BETTER = {}  # (sheet key, index of the request): why its verdict is better now
