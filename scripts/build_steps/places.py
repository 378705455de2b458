"""Where the build reads from and writes to."""

import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
SITE = ROOT / "site"
DIST = ROOT / "dist"
CACHE = ROOT / ".cache"
PARTS = CACHE / "npm" / "node_modules"
WORKSHOP = ROOT / "build"
SCRIPTS = ROOT / "scripts"
ASSETS = ROOT / "docs" / "assets"


def say(sentence):
    """One line of progress."""
    print(f"springline: {sentence}", file=sys.stderr, flush=True)
