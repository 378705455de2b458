"""Where the build reads from and writes to; who may write now."""

import contextlib
import fcntl
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
SITE = ROOT / "site"
DIST = ROOT / "dist"
CACHE = ROOT / ".cache"
PARTS = CACHE / "npm" / "node_modules"
WORKSHOP = ROOT / "build"
SCRIPTS = ROOT / "scripts"


def run(command, **options):
    """Run a program that says for itself what went wrong; then stop in one line."""
    try:
        subprocess.run([str(word) for word in command], check=True, **options)
    except subprocess.CalledProcessError as error:
        raise SystemExit(f"springline: stopped, because {command[0]} failed: see above") from error


def say(sentence):
    """One line of progress."""
    print(f"springline: {sentence}", file=sys.stderr, flush=True)


@contextlib.contextmanager
def locked():
    """One build at a time: two at once would write into each other's folders."""
    CACHE.mkdir(exist_ok=True)
    WORKSHOP.mkdir(exist_ok=True)
    with (CACHE / "build.lock").open("w") as lock:
        fcntl.flock(lock, fcntl.LOCK_EX)
        yield
