"""Reads and writes the stored lines: JSON, one thing a line, gzip'ed the same on every run."""

import gzip
import json
from pathlib import Path

HERE = Path(__file__).parent


def path(folder, key):
    return HERE / folder / f"{key}.jsonl.gz"


def write(folder, key, things):
    lines = "".join(
        json.dumps(thing, ensure_ascii=False, separators=(",", ":")) + "\n" for thing in things
    )
    path(folder, key).parent.mkdir(exist_ok=True)
    packed = gzip.compress(lines.encode(), compresslevel=9, mtime=0)
    path(folder, key).write_bytes(packed)


def read(folder, key):
    lines = gzip.decompress(path(folder, key).read_bytes()).decode()
    return [json.loads(line) for line in lines.split("\n") if line]
