"""Flows that a pump gives: told with a pressure, or at the place that it pumps to."""

from __future__ import annotations

import re

from calc.site.enquiry_model import Context

_UNDER_PRESSURE = re.compile(  # what a pump gives, and no source
    r" ?(?:at|@|with) (?:a pressure of )?[\d.]+ ?(?:psi|bar|kpa|(?:m|ft|feet|met(?:re|er)s) (?:of )?head)\b"
)

_AT_GOAL = re.compile(
    r" ?(?:at|up at|out of|from) the (?:[a-z]+ )?(?:tank|house|taps?|trough|top|kitchen|cabin|faucet|hydrant|hose)\b"
)
_A_SOURCE = re.compile(
    r"\b(?:wells?|bore\w*|springs?|seep|source|creek|stream|overflow|driller|intake)\b"
)


def of_a_pump(near: Context) -> bool:
    """Whether a flow is what a pump gives, by what stands behind it, and no source's yield."""
    at_goal = _AT_GOAL.match(near.after) and not _A_SOURCE.search(near.before)
    return bool(at_goal or _UNDER_PRESSURE.match(near.after))
