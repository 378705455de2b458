"""What the desk's pages ask: plain dictionaries in and out, for the bridge to dispatch."""

from __future__ import annotations

from importlib import import_module
from typing import Any

from calc.errors import InputError

Data = dict[str, Any]

# "do" of a request: the module whose ``handle`` answers; only who asks for one waits for it
DO = {"whole": "whole", "compare": "compare", "reply": "reply", "installer": "installer"}


def handle(request: Data) -> Data:
    """Answer one request: {"op": "desk", "do": one of ``DO``, ...}.

    Returns a dictionary for JSON; its "errors" is a list of sentences, and where it is not empty
    the rest is missing.  Raises KeyError for an unknown "do".
    """
    module = import_module(f"calc.desk.{DO[request['do']]}")
    try:
        return {"errors": [], **module.handle(request)}
    except InputError as error:
        return {"errors": [error.message]}
