"""The browser's Python: its files in a folder named after all that is in it.

``site/runtime/manifest.js`` tells the page where they are; everything else under
``site/runtime/`` may be cached for ever. The snapshot differs between versions of node, so the
folder's name covers the snapshot itself: two releases never share a name unless they share
every byte.
"""

import hashlib
import json
import subprocess

from scripts.build_steps import lean, parts, wheel
from scripts.build_steps.places import CACHE, ROOT, SCRIPTS, run, say

SNAPSHOT = "calc.snapshot.bin"  # gzipped; a host might serve a .gz with an encoding of its own
MEMORY = "memory.json"  # where the pieces of the snapshot lie; goes into the manifest
COPIED = tuple(name for name in parts.RUNTIME if not name.endswith("-lock.json"))
WORKER = "worker.js"
SHAPING = (SCRIPTS / "snapshot.mjs", SCRIPTS / "npm" / "package-lock.json")


def lock():
    """The lock Pyodide wants, without the packages: it then has no address to ask for any."""
    whole = json.loads(parts.read("pyodide/pyodide-lock.json"))
    return {"info": whole["info"], "packages": {}}


def write(folder):
    """Make the runtime folder of a site; returns the manifest."""
    made = CACHE / "runtime" / "new"
    made.mkdir(parents=True, exist_ok=True)
    for old in made.iterdir():
        old.unlink()
    for name, content in lean.lean(published()).items():
        (made / name).write_bytes(content)
    (made / WORKER).write_bytes((SCRIPTS / WORKER).read_bytes())
    packed = wheel.write(ROOT, made)
    (made / "pyodide-lock.json").write_text(json.dumps(lock()))
    kept = CACHE / "runtime" / content_name([*made.iterdir(), *SHAPING], node_version())
    if not (kept / SNAPSHOT).exists():
        take_snapshot(made, packed)
        _replace(made, kept)
    manifest = describe(kept, content_name(_shipped(kept)), packed.name)
    _publish(kept, folder, manifest)
    tell(folder, manifest)
    return manifest


def published():
    """{name: bytes} of Pyodide as it is published, without its list of packages."""
    return {name.rsplit("/", 1)[1]: parts.read(name) for name in COPIED}


def content_name(paths, more=""):
    """16 hexadecimal digits of the sha256 of the names and contents of files, and of ``more``."""
    whole = hashlib.sha256(more.encode())
    for path in sorted(paths, key=lambda path: path.name):
        whole.update(f"{path.name} {parts.digest(path.read_bytes())}\n".encode())
    return whole.hexdigest()[:16]


def node_version():
    """Such as "v24.19.0"; another node takes another snapshot of the same files."""
    try:
        asked = subprocess.run(["node", "--version"], capture_output=True, text=True, check=True)
    except (OSError, subprocess.CalledProcessError) as error:
        raise SystemExit(
            "springline: stopped, because node does not run: run scripts/setup"
        ) from error
    return asked.stdout.strip()


def take_snapshot(folder, packed):
    """Start Python in node, import every calculator, keep its memory."""
    say("taking a snapshot of the started Python")
    run(["node", SCRIPTS / "snapshot.mjs", folder, packed.name, SNAPSHOT, MEMORY], timeout=300)


def describe(folder, name, packed):
    files = {
        path.name: {"bytes": path.stat().st_size, "sha256": parts.digest(path.read_bytes())}
        for path in _shipped(folder)
    }
    memory = json.loads((folder / MEMORY).read_text())
    told = {"folder": name, "wheel": packed, "snapshot": SNAPSHOT, "memory": memory}
    return {**told, "files": files}


def _replace(made, kept):
    for old in (CACHE / "runtime").iterdir():
        if old != made:
            for path in old.iterdir():
                path.unlink()
            old.rmdir()
    made.rename(kept)


def _shipped(folder):
    return sorted(path for path in folder.iterdir() if path.name != MEMORY)


def _publish(kept, folder, manifest):
    target = folder / manifest["folder"]
    target.mkdir(parents=True)
    for path in _shipped(kept):
        (target / path.name).write_bytes(path.read_bytes())


def tell(folder, manifest):
    """Write the file that the pages read first."""
    text = json.dumps(manifest)
    (folder / "manifest.js").write_text(f"window.SPRINGLINE_RUNTIME = {text};\n")
