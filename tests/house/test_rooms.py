"""The house: which room may ask which, how large a room may be, and what calc leans on."""

import ast
import subprocess
import sys

import pytest

from tests.house.modules import ROOT, imported, modules

MOST_LINES, MOST_OF_A_FUNCTION = 400, 40  # own choice: what can be read in one go
PHYSICS = ("units", "errors", "solve", "water", "practice", "pipe", "pump", "network", "suction",
           "surge", "storage", "well", "demand", "sun", "power")  # fmt: skip


def test_arrows_between_rooms_run_one_way():
    # import-linter, with the contracts in pyproject.toml
    done = subprocess.run(
        [sys.executable, "-c", "from importlinter.cli import lint_imports_command as c; c()"],
        cwd=ROOT,
        capture_output=True,
        text=True,
    )
    assert done.returncode == 0, done.stdout + done.stderr


@pytest.mark.parametrize("module", modules(), ids=lambda one: one.name)
def test_calc_leans_on_the_standard_library_only(module):
    others = {name.split(".")[0] for name in imported(module)} - {"calc", "", "__future__"}
    assert others <= sys.stdlib_module_names


@pytest.mark.parametrize("module", modules("scripts"), ids=lambda one: one.name)
def test_scripts_do_not_lean_on_tests(module):
    assert not [name for name in imported(module) if name.split(".")[0] == "tests"]


@pytest.mark.parametrize("module", modules("tests"), ids=lambda one: one.name)
def test_tests_lean_on_no_benchmark(module):
    assert not [name for name in imported(module) if "bench" in name]


@pytest.mark.parametrize("module", [*modules(), *modules("scripts")], ids=lambda one: one.name)
def test_no_module_is_longer_than_can_be_read(module):
    assert len(module.lines) <= MOST_LINES


@pytest.mark.parametrize("module", [*modules(), *modules("scripts")], ids=lambda one: one.name)
def test_no_function_is_longer_than_can_be_read(module):
    long = {name: node.end_lineno - node.lineno + 1 for name, node in module.functions()}
    assert {name: size for name, size in long.items() if size > MOST_OF_A_FUNCTION} == {}


def _is_physics(module):
    return len(module.name.split(".")) > 1 and module.name.split(".")[1] in PHYSICS


@pytest.mark.parametrize("module", filter(_is_physics, modules()), ids=lambda one: one.name)
def test_public_relations_say_what_they_return(module):
    """Functions of physics with arguments: a docstring with returns and, for numbers, units."""
    silent = []
    for node in module.tree.body:
        if not isinstance(node, ast.FunctionDef) or node.name.startswith("_"):
            continue
        told = ast.get_docstring(node) or ""
        if not told or (node.args.args and "Returns" not in told and ": " not in told):
            silent.append(node.name)
    assert silent == []
