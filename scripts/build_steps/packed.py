"""The site's texts and WebAssembly packed beforehand, for hosts that send such files as they are.

``python -m scripts.build_steps.packed`` writes ``name.br`` and ``name.gz`` beside each file of
``site/`` that becomes smaller. Node packs, because Python has no Brotli.
"""

import json
import subprocess

from scripts.build_steps.places import SCRIPTS, SITE, locked, say
from scripts.build_steps.serviceworker import PACKED

ENDS = {".html", ".css", ".js", ".json", ".svg", ".wasm", ".xml", ".txt"}
LEAST = 1000  # bytes; smaller ones fit into a packet or two anyhow


def files(folder):
    """Those worth packing; the others are packed already."""
    found = (path for path in folder.rglob("*") if path.suffix in ENDS and path.is_file())
    return sorted(path for path in found if path.stat().st_size >= LEAST)


def write(folder):
    """Pack; returns how many files there are now beside the others."""
    for old in folder.rglob("*"):
        if PACKED.search(old.name) and old.with_suffix("").exists():
            old.unlink()
    names = json.dumps([str(path) for path in files(folder)])
    script = SCRIPTS / "runtime" / "pack.mjs"
    subprocess.run(["node", script], input=names, text=True, check=True, timeout=1200)
    return sum(1 for path in folder.rglob("*") if PACKED.search(path.name))


def main():
    with locked():
        say("packing the site with Brotli and gzip: this takes a minute")
        say(f"wrote {write(SITE)} files beside the others")


if __name__ == "__main__":
    main()
