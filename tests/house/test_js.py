"""Our JavaScript: what its linter finds, and the tests of it that node runs by itself."""

import subprocess

import pytest

from scripts.build_steps.places import PARTS
from tests.house.modules import ROOT

ESLINT = PARTS / "eslint" / "bin" / "eslint.js"
TESTS = sorted((ROOT / "tests" / "js").glob("*.test.mjs"))


def node(*words):
    return subprocess.run(
        ["node", *words], cwd=ROOT, capture_output=True, text=True, check=False, timeout=120
    )


def linted(*places):
    return node(str(ESLINT), "--config", "scripts/eslint.config.mjs", *places)


def test_eslint_finds_nothing():
    done = linted("docs", "scripts", "tests")
    assert done.returncode == 0, done.stdout + done.stderr


@pytest.mark.parametrize("fault", ["missing();", "var old = 1; window.old = old;", "eval('1');"])
def test_eslint_looks_at_the_pages_scripts(fault):
    done = subprocess.run(
        ["node", str(ESLINT), "--config", "scripts/eslint.config.mjs", "--stdin",
         "--stdin-filename", "docs/assets/planted.js"],
        cwd=ROOT, input=fault, capture_output=True, text=True, check=False, timeout=120,
    )  # fmt: skip
    assert done.returncode == 1, done.stdout + done.stderr


@pytest.mark.parametrize("path", TESTS, ids=lambda path: path.stem)
def test_node(path):
    done = node("--test", str(path))
    assert done.returncode == 0, done.stdout + done.stderr
