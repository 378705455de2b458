"""What physics refuses is named by an argument of the function that refuses it."""

import ast

import pytest

from calc.sheets import KEYS, sheet
from tests.house.modules import modules
from tests.house.test_docstrings import PHYSICS

RAISERS = ("require", "RangeError")  # the name comes first


def physics():
    for module in modules():
        room = module.name.split(".")[1] if "." in module.name else ""
        if room in PHYSICS:
            yield module


def refusals(tree, known=frozenset()):
    """(line, name, arguments and attributes it may be of) of every name given to an error."""
    for child in ast.iter_child_nodes(tree):
        here = known
        if isinstance(child, ast.FunctionDef | ast.Lambda):
            here = known | {one.arg for one in (*child.args.args, *child.args.kwonlyargs)}
        if isinstance(child, ast.ClassDef):
            here = known | attributes(child)
        if isinstance(child, ast.Call):
            called = getattr(child.func, "id", getattr(child.func, "attr", ""))
            names = [child.args[0]] if called in RAISERS and child.args else []
            names += [word.value for word in child.keywords if word.arg == "name"]
            for one in names:
                if isinstance(one, ast.Constant) and isinstance(one.value, str):
                    yield child.lineno, one.value, here
        yield from refusals(child, here)


def attributes(node):
    return {one.target.id for one in node.body if isinstance(one, ast.AnnAssign)}


def fields_of(module):
    """Attributes of a module's dataclasses, which its helpers check for them."""
    classes = [node for node in module.tree.body if isinstance(node, ast.ClassDef)]
    return set().union(*(attributes(one) for one in classes))


@pytest.mark.parametrize("module", [pytest.param(one, id=one.name) for one in physics()])
def test_every_name_of_an_error_is_an_argument(module):
    helpers = fields_of(module)
    wrong = [
        (line, name)
        for line, name, known in refusals(module.tree)
        if name not in known and not (name in helpers and known <= {"law", "self"})
    ]
    assert not wrong


def test_names_are_looked_at():
    found = [name for module in physics() for _, name, _ in refusals(module.tree)]
    assert len(found) > 60
    tree = ast.parse("def f(bore_m):\n    require('bore', bore_m, 0, 1, 'length')")
    assert [(name, name in known) for _, name, known in refusals(tree)] == [("bore", False)]


@pytest.mark.parametrize("key", KEYS)
def test_a_sheet_maps_arguments_that_there_are(key):
    known = {
        one.arg
        for module in physics()
        for _, node in module.functions()
        for one in (*node.args.args, *node.args.kwonlyargs)
    }
    known |= set().union(*(fields_of(module) for module in physics()))
    assert set(sheet(key).arguments) <= known
