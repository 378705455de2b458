"""The wheel of ``calc`` that browsers load: what is in it, and the same bytes everywhere."""

import hashlib
import json
import os
import shutil
import subprocess
import sys
import tomllib
import zipfile
from email import message_from_bytes
from pathlib import Path

import pytest

from scripts.build_steps import wheel
from scripts.build_steps.places import PARTS, ROOT

COMMAND_LINE = "calc/__main__.py"


@pytest.fixture(scope="module")
def packed(tmp_path_factory):
    return wheel.write(ROOT, tmp_path_factory.mktemp("wheel"))


@pytest.fixture
def elsewhere(tmp_path):
    """The sources in another folder, as another person's machine might hold them."""
    copy = tmp_path / "another #place ü"
    for name in wheel.SAID:
        copy.mkdir(exist_ok=True)
        shutil.copyfile(ROOT / name, copy / name)
    shutil.copytree(ROOT / "calc", copy / "calc", copy_function=shutil.copyfile)
    return copy


def _modules(names):
    return {name for name in names if name.startswith("calc/")}


def test_the_wheel_is_the_same_bytes_whatever_the_modes_times_and_leftovers(
    packed, elsewhere, monkeypatch
):
    for path in elsewhere.rglob("*.py"):
        path.chmod(0o600)
        os.utime(path, (1_600_000_000, 1_600_000_000))
    (elsewhere / "build" / "lib" / "calc").mkdir(parents=True)
    (elsewhere / "build" / "lib" / "calc" / "old.py").write_text("left by an earlier build\n")
    monkeypatch.setenv("SOURCE_DATE_EPOCH", "1700000000")
    old = os.umask(0o077)
    try:
        again = wheel.write(elsewhere, elsewhere / "made")
    finally:
        os.umask(old)
    assert again.name == packed.name
    assert again.read_bytes() == packed.read_bytes()


def test_the_wheel_changes_with_a_byte_of_a_module(packed, elsewhere):
    (elsewhere / "calc" / "errors.py").open("a").write("\n")
    assert wheel.write(elsewhere, elsewhere / "made").read_bytes() != packed.read_bytes()


def test_the_wheel_holds_every_module_that_a_page_may_ask_and_no_other(packed):
    wanted = {path.relative_to(ROOT).as_posix() for path in (ROOT / "calc").rglob("*.py")}
    wanted = {name for name in wanted if not name.startswith(NOT_YET)}
    assert _modules(zipfile.ZipFile(packed).namelist()) == wanted - {COMMAND_LINE}


NOT_YET = ("calc/bulk/",)  # that no page asks
ROOMS = ["calc.sun", "calc.power", "calc.drip", "calc.recovery", "calc.well_yield"]
ASKED = """
import json, sys, calc.bridge
from calc.sheets import KEYS, LATER, sheet
for key in KEYS:
    sheet(key)
    if key not in LATER:
        calc.bridge.handle(json.dumps({"op": "work", "sheet": key}))
        calc.bridge.handle(json.dumps({"op": "site", "do": "fill", "sheet": key, "site": {}}))
"""


def _asked(more):
    """Which of the rooms Python has imported once it ran this."""
    code = f"{ASKED}{more}\nprint([name for name in {ROOMS} if name in sys.modules])"
    ran = subprocess.run([sys.executable, "-c", code], cwd=ROOT, capture_output=True, text=True)
    assert ran.returncode == 0, ran.stderr
    return json.loads(ran.stdout.replace("'", '"'))


def test_only_a_sheet_that_comes_later_asks_for_sun_and_power_and_only_for_its_answer():
    """What they hold is not in the memory that every start waits for."""
    assert _asked("") == []
    assert _asked('calc.bridge.handle(json.dumps({"op": "work", "sheet": "cable"}))') == [
        "calc.power"
    ]


def test_the_command_line_stays_out_of_the_browsers_wheel(elsewhere):
    (elsewhere / COMMAND_LINE).write_text("print('for a terminal')\n")
    made = wheel.write(elsewhere, elsewhere / "made")
    names = _modules(zipfile.ZipFile(made).namelist())
    assert COMMAND_LINE not in names and "calc/__init__.py" in names
    assert not [name for name in names if name.startswith("calc/bulk/")]


def test_making_the_wheel_leaves_nothing_beside_the_sources(elsewhere, tmp_path):
    before = sorted(elsewhere.rglob("*"))
    wheel.write(elsewhere, tmp_path / "made")
    assert sorted(elsewhere.rglob("*")) == before


def test_the_wheel_says_of_itself_what_pyproject_says(packed):
    said = tomllib.loads((ROOT / "pyproject.toml").read_text())["project"]
    archive = zipfile.ZipFile(packed)
    (name,) = (one for one in archive.namelist() if one.endswith(".dist-info/METADATA"))
    found = message_from_bytes(archive.read(name))
    assert (found["Name"], found["Summary"]) == (said["name"], said["description"])
    assert found["Requires-Python"] == said["requires-python"]
    assert found["License-Expression"] == said["license"]
    assert found["Version"] == packed.name.split("-")[1]


def test_sources_that_make_no_wheel_stop_the_build_with_the_reason(elsewhere):
    (elsewhere / "pyproject.toml").write_text("[project]\nname = 3\n")
    with pytest.raises(ValueError, match="project` must contain"):
        wheel.write(elsewhere, elsewhere / "made")


def test_the_wheel_installs_and_answers_where_nothing_else_is_installed(packed, tmp_path):
    target = tmp_path / "installed"
    install = [sys.executable, "-m", "pip", "install", "-qq", "--no-index", "--no-deps"]
    subprocess.run([*install, "--target", target, packed], check=True)
    code = (
        "import sys; sys.path.insert(0, sys.argv[1]); import calc.bridge; print(calc.__file__);"
        'print(calc.bridge.handle(\'{"op": "work", "sheet": "pressure"}\')[:9])'
    )
    ran = subprocess.run(
        [sys.executable, "-I", "-S", "-c", code, str(target)], capture_output=True, text=True
    )
    wanted = [str(target / "calc" / "__init__.py"), '{"errors"']
    assert ran.stdout.splitlines() == wanted, ran.stderr


pyodides_own_tools = pytest.mark.skipif(
    sys.version_info < (3, 12), reason="pyodide-build and pyodide-lock need Python 3.12 or newer"
)


def _pyodide(*words):
    command = [Path(sys.executable).with_name("pyodide"), *words]
    ran = subprocess.run(command, capture_output=True, text=True)
    assert ran.returncode == 0, ran.stderr


@pyodides_own_tools
def test_pyodide_lock_takes_the_wheel_as_a_package_that_needs_no_other(packed, tmp_path):
    """Source of the check: the command ``pyodide lockfile add-wheels`` of pyodide-lock."""
    told, written = PARTS / "pyodide" / "pyodide-lock.json", tmp_path / "lock.json"
    words = ("--input", told, "--output", written, "--base-path", packed.parent)
    _pyodide("lockfile", "add-wheels", *words, packed)
    found = json.loads(written.read_text())["packages"]["calc"]
    assert (found["imports"], found["depends"]) == (["calc"], [])
    assert found["file_name"] == packed.name
    assert found["sha256"] == hashlib.sha256(packed.read_bytes()).hexdigest()


@pyodides_own_tools
def test_pyodide_build_compiles_every_module_of_the_wheel(packed, tmp_path):
    """Source of the check: the command ``pyodide py-compile`` of pyodide-build."""
    copy = Path(shutil.copy(packed, tmp_path))
    _pyodide("py-compile", "--silent", "--keep", copy)
    (compiled,) = set(tmp_path.glob("*.whl")) - {copy}
    wanted = {name + "c" for name in _modules(zipfile.ZipFile(packed).namelist())}
    assert _modules(zipfile.ZipFile(compiled).namelist()) == wanted
