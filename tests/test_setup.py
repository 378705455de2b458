"""Set-up: what is pinned, one at a time, whole or made anew, and only what a command needs."""

import importlib.metadata
import os
import re
import shutil
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest
from packaging.requirements import Requirement
from packaging.specifiers import SpecifierSet

from scripts.build_steps.places import ROOT

OLDEST = "3.11.0"
SCRIPTS = ROOT / "scripts"
LOCKS = {"requirements.in": "requirements.txt", "requirements.node.in": "requirements.node.txt"}
STEPS = ("say", "python", "lock", "npm", "browser")


def _entries(lock):
    """[(requirement, number of its hashes)] of a lock file."""
    text = re.sub(r" *#.*", "", (SCRIPTS / lock).read_text()).replace("\\\n", " ")
    words = (line.split("--hash=sha256:") for line in text.splitlines() if line.strip())
    return [(Requirement(first), len(hashes)) for first, *hashes in words]


def _environment(python):
    return {"python_version": ".".join(python.split(".")[:2]), "python_full_version": python}


def _for(python, lock="requirements.txt"):
    found = (one for one, _ in _entries(lock))
    return [one for one in found if not one.marker or one.marker.evaluate(_environment(python))]


def test_the_oldest_python_is_the_one_that_calc_asks_for():
    text = (ROOT / "pyproject.toml").read_text()
    (said,) = re.findall(r'^requires-python = "(.*)"$', text, re.MULTILINE)
    assert OLDEST in SpecifierSet(said) and "3.10.99" not in SpecifierSet(said)


def test_every_pin_can_be_installed_by_the_oldest_python():
    refused, seen = [], 0
    for one in _for(OLDEST):
        try:
            told = importlib.metadata.metadata(one.name)
        except importlib.metadata.PackageNotFoundError:
            continue  # of another system
        seen += 1
        asked = told.get("Requires-Python") or ""
        if OLDEST not in SpecifierSet(asked):
            refused.append(f"{one.name} {told['Version']} asks for Python {asked}")
    assert refused == []
    assert seen > 40


def test_what_is_installed_is_what_is_pinned():
    for one in _for(".".join(map(str, sys.version_info[:3]))):
        try:
            version = importlib.metadata.version(one.name)
        except importlib.metadata.PackageNotFoundError:
            continue  # of another system
        assert version in one.specifier, one


@pytest.mark.parametrize(("asked", "lock"), LOCKS.items())
def test_all_that_is_asked_for_by_name_is_pinned_to_one_version(asked, lock):
    lines = re.sub(r" *#.*", "", (SCRIPTS / asked).read_text()).splitlines()
    wanted = {Requirement(line).name.lower() for line in lines if line.strip()}
    pinned = {one.name for one, _ in _entries(lock)}
    assert wanted <= pinned
    assert all(re.fullmatch(r"==[\w.]+", str(one.specifier)) for one, _ in _entries(lock))


@pytest.mark.parametrize("lock", LOCKS.values())
def test_every_pin_has_its_hashes(lock):
    assert [str(one) for one, hashes in _entries(lock) if hashes == 0] == []


def test_no_lock_file_names_a_registry():
    for name in ("npm/package-lock.json", *LOCKS, *LOCKS.values()):
        text = (SCRIPTS / name).read_text()
        assert '"resolved"' not in text
        assert not re.search(r"^ *--(?:extra-)?(?:index-url|find-links)", text, re.MULTILINE)
        if name.startswith("requirements"):
            assert "://" not in text


@pytest.fixture
def clone(tmp_path):
    """A folder of an awkward name with the scripts of set-up and nothing else."""
    made = tmp_path / "a #clone? %41"
    shutil.copytree(SCRIPTS / "setup_steps", made / "scripts" / "setup_steps")
    for name in ("setup", "build", "serve", "test", "offline", "bench", "requirements.txt"):
        shutil.copy(SCRIPTS / name, made / "scripts" / name)
    return made


def _command(text):
    parts = "".join(f". scripts/setup_steps/{step}.sh\n" for step in STEPS)
    return ["bash", "-c", f"set -euo pipefail\n{parts}{text}"]


def _shell(clone, text, **settings):
    """What bash says to ``text`` once the steps of set-up are read: (code, output, errors)."""
    ran = subprocess.run(
        _command(text), cwd=clone, capture_output=True, text=True, timeout=60,
        env={**os.environ, **settings},
    )  # fmt: skip
    return ran.returncode, ran.stdout, ran.stderr


NOTHING_TO_INSTALL = "install_pinned() { echo installed; }; make_environment"


def test_an_environment_that_was_never_finished_is_made_anew(clone):
    (clone / ".venv" / "bin").mkdir(parents=True)
    # it runs, but has no pip of its own
    (clone / ".venv" / "bin" / "python").symlink_to(sys.executable)
    for wanted in ("installed\n", ""):  # and then it is let be
        assert _shell(clone, NOTHING_TO_INSTALL, PYTHON=sys.executable)[:2] == (0, wanted)
    pip = [clone / ".venv" / "bin" / "python", "-m", "pip", "--version"]
    said = subprocess.run(pip, capture_output=True, text=True).stdout
    assert str(clone / ".venv") in said


def test_a_python_named_that_does_not_run_is_said_and_no_other_taken(clone):
    code, said, errors = _shell(clone, NOTHING_TO_INSTALL, PYTHON="/no/such/python")
    assert (code, said) == (1, "")
    assert errors == (
        "springline: PYTHON=/no/such/python is no Python 3.11 or newer that runs and has venv\n"
    )


HOLD = "hold_lock; echo begun; read -r _; echo ended"


def _holder(clone):
    """A set-up that has the lock and waits for a line before it goes on."""
    pipes = {"stdin": subprocess.PIPE, "stdout": subprocess.PIPE, "text": True}
    running = subprocess.Popen(_command(HOLD), cwd=clone, **pipes)
    assert running.stdout.readline() == "begun\n"
    return running


def test_two_set_ups_at_once_go_one_after_the_other(clone):
    first = _holder(clone)
    pipes = {"stdout": subprocess.PIPE, "stderr": subprocess.PIPE, "text": True}
    second = subprocess.Popen(_command("hold_lock; echo begun"), cwd=clone, **pipes)
    assert "waiting for it" in second.stderr.readline()
    time.sleep(0.3)
    assert second.poll() is None
    assert first.communicate("\n")[0] == "ended\n"
    assert second.communicate(timeout=30)[0] == "begun\n"


def test_a_set_up_that_was_killed_does_not_hold_up_the_next(clone):
    first = _holder(clone)
    first.send_signal(signal.SIGKILL)
    first.wait()
    assert (clone / ".cache" / "setup.lock").exists()
    assert _shell(clone, "hold_lock; echo begun")[1:] == ("begun\n", "")


def test_the_node_that_had_to_be_brought_is_used_before_the_machines(clone):
    ask = ". scripts/setup_steps/use.sh; command -v node"
    _program(clone / "old" / "node", "exit 1")
    path = f"{clone / 'old'}{os.pathsep}{os.environ['PATH']}"
    assert _shell(clone, ask, PATH=path)[1] == f"{clone / 'old' / 'node'}\n"
    _program(clone / ".venv" / "bin" / "node", "exit 0")
    assert _shell(clone, ask, PATH=path)[1] == f"{clone / '.venv' / 'bin' / 'node'}\n"


def _program(path, text):
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_text(f"#!/usr/bin/env bash\n{text}\n")
    path.chmod(0o755)


def _runs(clone, name, *words):
    return subprocess.run(
        [clone / "scripts" / name, *words], capture_output=True, text=True, timeout=60
    )


STUBBED = (
    "hold_lock() { echo lock; }; make_environment() { echo python; }; "
    "make_npm_parts() { echo npm; }; find_browser() { echo browser; }"
)


@pytest.mark.parametrize(
    ("words", "wanted"),
    [((), "lock python npm browser"), (("--site",), "lock python npm")],
)
def test_set_up_for_the_site_alone_looks_for_no_browser(clone, words, wanted):
    (clone / "scripts" / "setup_steps" / "browser.sh").write_text(STUBBED)
    assert _runs(clone, "setup", *words).stdout.split() == wanted.split()


def test_set_up_refuses_a_word_it_does_not_know(clone):
    (clone / "scripts" / "setup_steps" / "browser.sh").write_text(STUBBED)
    ran = _runs(clone, "setup", "--sight")
    assert (ran.returncode, ran.stdout) == (2, "")
    assert "--sight" in ran.stderr


@pytest.mark.parametrize("name", ["build", "serve", "offline", "test", "bench"])
def test_only_what_drives_a_browser_looks_for_one(clone, name):
    _program(clone / "scripts" / "setup", 'echo "setup $*"')
    _program(clone / ".venv" / "bin" / "python", "true")
    ran = _runs(clone, name)
    assert ran.returncode == 0, ran.stderr
    asked = {line.strip() for line in ran.stdout.splitlines()}
    assert asked == ({"setup", "setup --site"} if name in ("test", "bench") else {"setup --site"})


def test_the_checking_machine_uses_debians_own_python_where_it_is_new_enough(clone):
    shutil.copytree(ROOT / ".ci", clone / ".ci")
    _program(clone / "scripts" / "test", 'echo "${PYTHON:-any}"')
    system = Path("/usr/bin/python3")
    ask = "import sys, venv, ensurepip; print(sys.version_info >= (3, 11))"
    found = system.exists() and subprocess.run([system, "-c", ask], capture_output=True).stdout
    settings = {name: value for name, value in os.environ.items() if name != "PYTHON"}
    ran = subprocess.run([clone / ".ci" / "run"], capture_output=True, text=True, env=settings)
    assert ran.stdout.strip() == (str(system) if found == b"True\n" else "any")
