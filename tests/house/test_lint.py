"""What the linters find in Python: nothing.  What they look for stands in ``pyproject.toml``."""

import subprocess
import sys

import pytest

from tests.house.modules import ROOT

CODE = ("calc", "scripts", "tests")


def ran(*words):
    return subprocess.run(
        [sys.executable, "-m", *words], cwd=ROOT, capture_output=True, text=True, check=False
    )


def test_ruff_finds_nothing():
    done = ran("ruff", "check", "--output-format", "concise", *CODE)
    assert done.returncode == 0, done.stdout + done.stderr


def test_the_code_is_laid_out_as_ruff_does():
    done = ran("ruff", "format", "--check", *CODE)
    assert done.returncode == 0, done.stdout + done.stderr


def test_types_agree_all_through_calc():
    done = ran("mypy")
    assert done.returncode == 0, done.stdout + done.stderr


@pytest.mark.parametrize("fault", ["def f(x):\n    return x\n", "x = 1\nassert x == '1'\n"])
def test_the_types_are_looked_at(tmp_path, fault):
    """A fault planted in a module of calc is found: what is set up looks where it should."""
    place = tmp_path / "planted.py"
    place.write_text(fault)
    done = ran("mypy", "--strict", str(place))
    assert done.returncode == 1, done.stdout + done.stderr
