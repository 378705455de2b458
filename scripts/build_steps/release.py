"""Which release this is: the version of ``calc`` and the day of the commit it is built from.

Nothing here is the time of the build, so that the same commit gives the same bytes.
"""

import datetime
import os
import subprocess

import calc
from scripts.build_steps.places import ROOT

OLDEST = 315532800  # s since 1970; 1980-01-01, said where neither git nor the caller knows better


def epoch():
    """Seconds since 1970: SOURCE_DATE_EPOCH where it is set, else the time of the commit."""
    told = os.environ.get("SOURCE_DATE_EPOCH")
    return int(told) if told else commit_time()


def commit_time():
    """Seconds since 1970 of the newest commit; ``OLDEST`` where this is not a clone."""
    command = ["git", "log", "-1", "--format=%ct"]
    try:
        asked = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=True)
    except (OSError, subprocess.CalledProcessError):
        return OLDEST
    return int(asked.stdout)


def day():
    """The day of the release, such as "2026-03-01"; empty where it is not known."""
    if epoch() == OLDEST:
        return ""
    return datetime.datetime.fromtimestamp(epoch(), datetime.UTC).date().isoformat()


def environment():
    """What mkdocs is run with: its site map and zipped files carry the release's time."""
    return {"SOURCE_DATE_EPOCH": str(epoch()), "PYTHONHASHSEED": "0"}


def name():
    """Such as "Springline 0.1.0 of 2026-03-01"."""
    return f"Springline {calc.__version__}" + (f" of {day()}" if day() else "")
