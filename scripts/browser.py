"""The browser that tests and benchmarks drive, and how it is started."""

import os
import shutil
from pathlib import Path

CHROMIUM = (
    "/usr/bin/chromium",
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
    "/Applications/Chromium.app/Contents/MacOS/Chromium",
)
FLAGS = (
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
)


def chromium_path():
    """The browser to drive; None lets Playwright use one of its own."""
    named = os.environ.get("CHROMIUM")
    names = (shutil.which(n) for n in ("chromium", "chromium-browser", "google-chrome"))
    return next((p for p in (named, *CHROMIUM, *names) if p and Path(p).exists()), None)
