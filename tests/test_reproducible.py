"""The same sources give the same bytes: the site as it is built here, and once more from nothing
elsewhere.

That folder has a name that must not be taken for part of an address, a comment or a code.
"""

import hashlib
import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from scripts.build_steps import release
from scripts.build_steps.places import PARTS, ROOT

LEFT_BEHIND = (".git", ".venv", ".cache", "__pycache__", ".hypothesis")
MADE = ("site", "dist", "build")  # at the top alone: calc has a room named site


def _copy(target):
    """The sources as they are now, with the parts from npm but nothing made earlier."""

    def left(folder, names):
        gone = shutil.ignore_patterns(*LEFT_BEHIND)(folder, names)
        return {*gone, *MADE} if Path(folder) == ROOT else gone

    shutil.copytree(ROOT, target, ignore=left)
    (target / ".cache" / "npm").mkdir(parents=True)
    (target / ".cache" / "npm" / "node_modules").symlink_to(PARTS.resolve())
    return target


def _build(where, seed):
    """{name: sha256} of the site built in ``where``."""
    settings = {
        "PYTHONPATH": str(where),
        "PYTHONHASHSEED": seed,
        "SOURCE_DATE_EPOCH": str(release.commit_time()),
        "TZ": {"1": "Pacific/Auckland"}.get(seed, "UTC"),
    }
    # node may lie beside this Python and nowhere else
    path = os.pathsep.join((os.environ["PATH"], os.path.dirname(sys.executable)))
    subprocess.run(
        [sys.executable, "-m", "scripts.build_steps"],
        check=True, cwd=where, env={**os.environ, **settings, "PATH": path}, timeout=1800,
    )  # fmt: skip
    return _hashes(where / "site")


def _hashes(site):
    return {
        path.relative_to(site).as_posix(): hashlib.sha256(path.read_bytes()).hexdigest()
        for path in site.rglob("*")
        if path.is_file()
    }


@pytest.fixture(scope="module")
def two_builds(site_folder, tmp_path_factory):
    where = tmp_path_factory.mktemp("builds") / "a #name? %41 ü"
    return _hashes(site_folder), _build(_copy(where), "1")


def test_two_builds_hold_the_same_files(two_builds):
    first, second = two_builds
    assert first.keys() == second.keys()


def test_two_builds_hold_the_same_bytes_the_memory_snapshot_too(two_builds):
    first, second = two_builds
    assert [name for name in first if first[name] != second.get(name)] == []
    assert any(name.endswith("snapshot.0.bin") for name in first)


def test_the_release_is_dated_by_its_commit_not_by_the_clock(monkeypatch):
    monkeypatch.setenv("SOURCE_DATE_EPOCH", "1700000000")
    assert release.day() == "2023-11-14"
    monkeypatch.delenv("SOURCE_DATE_EPOCH")
    assert release.epoch() == release.commit_time()


def test_without_a_clone_the_release_has_no_date(monkeypatch, tmp_path):
    monkeypatch.delenv("SOURCE_DATE_EPOCH", raising=False)
    monkeypatch.setattr(release, "ROOT", tmp_path)
    monkeypatch.setenv("GIT_CEILING_DIRECTORIES", str(tmp_path.parent))
    assert release.day() == ""
    assert " of " not in release.name()
