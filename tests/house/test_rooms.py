"""The house: which room may ask which, how large a room may be, and what calc leans on."""

import subprocess
import sys

import pytest

from calc.desk.ops import DO
from calc.sheets import KEYS
from calc.site import frozen
from tests.house.modules import ROOT, imported, modules

MOST_LINES, MOST_OF_A_FUNCTION = 400, 40  # our choice: what can be read in one go
STARTS = (
    "calc.bridge",
    "calc.__main__",
    "calc.page.blank",  # the build prints it into the pages
    "calc.sheets.start",  # the same
    "calc.sheets.views",
    *(f"calc.sheets.{key}.sheet" for key in KEYS),
    *(f"calc.desk.{name}" for name in DO.values()),  # by what a page asks them to do
    *(f"calc.site.frozen.v{version}" for version in range(frozen.NEWEST + 1)),  # by their number
)


def _readable(places):
    return [pytest.param(one, id=one.name) for place in places for one in modules(place)]


def test_arrows_between_rooms_run_one_way():
    # import-linter, with the contracts in pyproject.toml
    done = subprocess.run(
        [sys.executable, "-c", "from importlinter.cli import lint_imports_command as c; c()"],
        cwd=ROOT,
        capture_output=True,
        text=True,
    )
    assert done.returncode == 0, done.stdout + done.stderr


@pytest.mark.parametrize("module", _readable(["calc"]))
def test_calc_leans_on_the_standard_library_only(module):
    others = {name.split(".")[0] for name in imported(module)} - {"calc", "__future__"}
    assert others <= sys.stdlib_module_names


# the page of checks is made of the register that the tests hold calc to: of that alone
SHOWN = {"scripts.checks_hook": "tests.reference.checks"}


@pytest.mark.parametrize("module", _readable(["scripts"]))
def test_scripts_do_not_lean_on_tests(module):
    leans = [name for name in imported(module) if name.split(".")[0] == "tests"]
    assert set(leans) <= {SHOWN.get(module.name)}


@pytest.mark.parametrize("module", _readable(["tests"]))
def test_tests_lean_on_no_benchmark(module):
    assert not [name for name in imported(module) if "bench" in name]


@pytest.mark.parametrize("module", _readable(["calc", "scripts"]))
def test_no_module_is_longer_than_can_be_read(module):
    if module.name.startswith(("calc.site.frozen.v", "calc.site.enquiry_usual_table")):
        pytest.skip("a table that a script writes, and nobody reads in one go")
    assert len(module.lines) <= MOST_LINES


@pytest.mark.parametrize("module", _readable(["calc", "scripts"]))
def test_no_function_is_longer_than_can_be_read(module):
    sizes = {name: node.end_lineno - node.lineno + 1 for name, node in module.functions()}
    long = {name: size for name, size in sizes.items() if size > MOST_OF_A_FUNCTION}
    assert not long


def test_every_module_is_asked_by_one_that_runs():
    asks = {one.name: set(imported(one)) for one in modules()}
    found, new = set(), set(STARTS) & set(asks)
    while new:
        found |= new
        named = {name for one in new for name in asks[one]}
        new = {one for one in asks if one in named} - found
    rooms = {one.name for one in modules() if one.path.name == "__init__.py"}
    alone = set(asks) - found - rooms
    assert {one for one in alone if not _below(one, asks)} == set()


def _below(one, asks):
    """Whether ``one`` is asked by another that nothing runs, which then stands for both."""
    return any(one in named for asker, named in asks.items() if asker != one)
