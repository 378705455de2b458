"""``calc`` as a wheel for the browser: by setuptools, without a network, the same bytes every time.

What the wheel says of itself stands in ``pyproject.toml``. setuptools is the pinned one of our
environment. It works on a copy of the sources, because it leaves folders beside them, and because
modes and forgotten files of a working folder would get into the wheel.
"""

import os
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

# s since 1970; 1980-01-01, the oldest that zip can say. Not the time of the commit: the wheel, and
# so the name of the runtime, stays the same where no module of calc has changed.
TIME = 315532800
SAID = ("pyproject.toml", "README.md", "LICENSE")  # what pyproject.toml names, and itself
# input and output of the command line, which a browser has not; what no page asks yet
LEFT_OUT = ("calc/__main__.py", "calc/bulk/")
MODE, MASK = 0o644, 0o022
MAKE = "import sys, setuptools.build_meta as made; made.build_wheel(sys.argv[1])"


def sources(root):
    """Names of every module of ``calc`` that goes into the wheel, sorted."""
    names = (path.relative_to(root).as_posix() for path in (root / "calc").rglob("*.py"))
    return sorted(name for name in names if not name.startswith(LEFT_OUT))


def write(root, folder):
    """Write the wheel of the sources in ``root`` into ``folder``; returns its path."""
    folder.mkdir(parents=True, exist_ok=True)
    with tempfile.TemporaryDirectory() as place:
        copy, made = Path(place, "sources"), Path(place, "made")
        for name in (*SAID, *sources(root)):
            _copy(root / name, copy / name)
        _build(copy, made)
        (wheel,) = made.glob("*.whl")
        return Path(shutil.copyfile(wheel, folder / wheel.name))


def _copy(source, target):
    target.parent.mkdir(parents=True, exist_ok=True)
    shutil.copyfile(source, target)
    target.chmod(MODE)


def _build(copy, made):
    """Run setuptools in ``copy``; raises ``ValueError`` with its words where it fails."""
    ran = subprocess.run(
        [sys.executable, "-I", "-c", MAKE, str(made)],
        cwd=copy, env={**os.environ, "SOURCE_DATE_EPOCH": str(TIME)}, umask=MASK,
        capture_output=True, text=True,
    )  # fmt: skip
    if ran.returncode:
        raise ValueError(f"setuptools made no wheel of calc:\n{ran.stderr}")
