"""What every public relation of physics says of itself: its arguments, their units, what it gives.

A relation is a public function of a room of physics that takes numbers.
"""

import ast
import re

import pytest

from tests.house.modules import modules

PHYSICS = ("water", "practice", "pipe", "pump", "network", "suction", "surge", "storage", "well",
           "well_yield", "recovery", "trip", "relief",
           "day_tank",
           "demand", "sun", "power", "drip", "hot_water")  # fmt: skip
UNITS = re.compile(
    r"(?<![\w/])(?:m|m2|m3|mm|s|h|hours|days|K|Pa|W|Wh|kW|J|kg|kg/m3|m/s|m2/s|m3/s|1/s|rad|deg|degrees|"
    r"V|A|ohm|ohm/m|W/m2|"
    r"share|shares|-|0 to 1|m3 a day|count|number|whole|True|False|[0-9.]+)(?![\w/])"
)
SUFFIXES = ("_m", "_m2", "_m3", "_s", "_h", "_k", "_pa", "_m3s", "_m2s", "_ms", "_kg_m3", "_w",
            "_m3_day", "_v", "_a", "_j")  # fmt: skip


def relations():
    for module in modules():
        room = module.name.split(".")[1] if "." in module.name else ""
        if room not in PHYSICS:
            continue
        for name, node in module.functions():
            takes = [one for one in node.args.args if one.annotation and _number(one.annotation)]
            if takes and "." not in name and not name.startswith("_"):
                yield pytest.param(node, takes, id=f"{module.name}.{name}")


def _number(annotation):
    return ast.unparse(annotation).split(" |")[0] in ("float", "int")


@pytest.mark.parametrize("node, takes", relations())
def test_it_says_what_it_gives_and_in_what_unit(node, takes):
    told = ast.get_docstring(node) or ""
    assert told, "no docstring"
    gives = ast.unparse(node.returns)
    if gives in ("float", "int", "float | None"):
        said = told.partition("Returns")[2] or told.splitlines()[0]
        assert UNITS.search(said), f"no unit of what it returns: {said!r}"


@pytest.mark.parametrize("node, takes", relations())
def test_it_says_what_it_takes_and_in_what_unit(node, takes):
    told = ast.get_docstring(node) or ""
    as_another = re.search(r"\b(?:as|of)(?: for)? ``\w+``", told)
    for one in takes:
        mentions = [told[found.end() :] for found in re.finditer(rf"\b{one.arg}\b", told)]
        said = any(UNITS.search(re.split(r";|\.(?=\s|$)", rest)[0]) for rest in mentions)
        assert said or as_another or one.arg.endswith(SUFFIXES), one.arg


def test_there_are_many_relations():
    assert len(list(relations())) > 60
