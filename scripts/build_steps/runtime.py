"""The browser's Python: its files under a name that changes with their content.

``site/runtime/manifest.js`` tells the page where they are; everything else under
``site/runtime/`` may be cached for ever.
"""

import gzip
import hashlib
import json

from scripts.build_steps import parts, wheel
from scripts.build_steps.places import CACHE, ROOT, SCRIPTS, run, say

SNAPSHOT = "calc.snapshot.bin"  # gzipped; a host might serve a .gz with an encoding of its own
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
    for name in COPIED:
        (made / name.rsplit("/", 1)[1]).write_bytes(at_once(name, parts.read(name)))
    (made / WORKER).write_bytes((SCRIPTS / WORKER).read_bytes())
    packed = wheel.write(ROOT, made)
    (made / "pyodide-lock.json").write_text(json.dumps(lock()))
    name = content_name([*sorted(made.iterdir()), *SHAPING])
    kept = CACHE / "runtime" / name
    if not (kept / SNAPSHOT).exists():
        take_snapshot(made, packed)
        _replace(made, kept)
    manifest = describe(kept, name, packed.name)
    _publish(kept, folder, manifest)
    return manifest


def at_once(name, content):
    """The content, but Pyodide's one great function in brackets, which change nothing it does.

    A browser takes brackets as the sign that a function is called at once and compiles it when it
    reads it; without them it reads 1.2 MB twice. Raises ``ValueError`` where it is written
    otherwise, so that a new Pyodide is looked at.
    """
    if name != "pyodide/pyodide.asm.mjs":
        return content
    first, last = b"async function _createPyodideModule(", b"}export default _createPyodideModule;"
    if not content.startswith(first) or content.count(last) != 1:
        raise ValueError(f"{name} is not written as expected")
    content = content.replace(first, b"const _createPyodideModule=(async function(", 1)
    return content.replace(last, b"});export default _createPyodideModule;")


def content_name(paths):
    """The first 16 hexadecimal digits of the hash of all that shapes the runtime."""
    whole = hashlib.sha256()
    for path in paths:
        whole.update(f"{path.name} {parts.digest(path.read_bytes())}\n".encode())
    return whole.hexdigest()[:16]


def take_snapshot(folder, packed):
    """Start Python in node, import every calculator, keep its memory."""
    say("taking a snapshot of the started Python")
    run(["node", SCRIPTS / "snapshot.mjs", folder, packed.name, SNAPSHOT], timeout=300)


def describe(folder, name, packed):
    files = {
        path.name: {"bytes": path.stat().st_size, "sha256": parts.digest(path.read_bytes())}
        for path in sorted(folder.iterdir())
    }
    memory = len(gzip.decompress((folder / SNAPSHOT).read_bytes()))
    told = {"folder": name, "wheel": packed, "snapshot": SNAPSHOT, "memory": memory}
    return {**told, "files": files}


def _replace(made, kept):
    for old in (CACHE / "runtime").iterdir():
        if old != made:
            for path in old.iterdir():
                path.unlink()
            old.rmdir()
    made.rename(kept)


def _publish(kept, folder, manifest):
    target = folder / manifest["folder"]
    target.mkdir(parents=True)
    for path in kept.iterdir():
        (target / path.name).write_bytes(path.read_bytes())
    text = json.dumps(manifest, indent=1)
    (folder / "manifest.js").write_text(f"window.SPRINGLINE_RUNTIME = {text};\n")
