"""What release 0.1.0 had and how it read links, as kept in ``tests/release_0_1_0``."""

import gzip
import json
from pathlib import Path

KEPT = Path(__file__).with_name("release_0_1_0")


def defaults():
    """Fields, units, pipes and pumps of release 0.1.0."""
    return json.loads((KEPT / "defaults.json").read_text(encoding="utf-8"))


def readings(key):
    """The links of one calculator and what 0.1.0 read from each."""
    lines = gzip.decompress((KEPT / "readings" / f"{key}.jsonl.gz").read_bytes()).decode()
    return [json.loads(line) for line in lines.split("\n") if line]
