"""The browser's Python: its files in a folder named after all that is in it.

``site/runtime/manifest.js`` tells the page where they are; everything else under
``site/runtime/`` may be cached for ever. The snapshot differs between versions of node, so the
folder's name covers the snapshot itself: two releases never share a name unless they share
every byte. The large files lie there in pieces, so that a line that breaks costs one of them.
"""

import base64
import gzip
import hashlib
import json
import subprocess

from scripts.build_steps import lean, parts, wheel
from scripts.build_steps.places import CACHE, ROOT, SCRIPTS, run, say

FIRST = "first.wasm"  # the functions that a start and the answers run
REST = "rest.wasm"  # all others
LIBRARY = "python.bin"  # Python's library and calc; .bin: hosts give .gz an encoding of their own
SNAPSHOT = "snapshot.bin"  # the memory of a started Python, gzipped
MEMORY = "memory.json"  # where the snapshot's pieces belong; goes into the manifest
WORKER = "worker.js"
RUNTIME = SCRIPTS / "runtime"
WORKER_PARTS = ("reading.js", "unpacking.js", "worker.js")
PIECE = 1 << 20  # bytes; our choice: a second or two on a poor line
CUT = (FIRST, REST, LIBRARY, SNAPSHOT)
WHOLE = (*lean.RENAMED.values(), WORKER)
COPIED = tuple(name for name in parts.RUNTIME if not name.endswith("-lock.json"))
LOCK = "pyodide-lock.json"
MADE_BY = ("exercise.py", "lean_python.py", "node.mjs", "prepare.mjs", "snapshot.mjs", "split.mjs",
           "walk.mjs", "wasm.mjs")  # fmt: skip
SHAPING = (*(RUNTIME / name for name in MADE_BY), SCRIPTS / "npm" / "package-lock.json")
LONGEST = 1800  # s; a minute on an idle machine
BARE = "bare.json"  # modules without comments, between builds


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
    (made / WORKER).write_text(worker())
    packed = wheel.write(ROOT, made)
    (made / LOCK).write_text(json.dumps(lock()))
    (made / "package.json").write_text('{"type": "module"}')  # or node takes .js for something else
    kept = CACHE / "runtime" / content_name([*made.iterdir(), *SHAPING], node_version())
    if not (kept / MEMORY).exists():
        prepare(made, packed)
        take_snapshot(made)
        _replace(made, kept)
    shipped = {name: (kept / name).read_bytes() for name in WHOLE}
    files = {name: pieces(name, (kept / name).read_bytes(), shipped) for name in CUT}
    memory = json.loads((kept / MEMORY).read_text())
    manifest = {"folder": named(shipped), "memory": memory, "lock": lock(), "files": files}
    _publish(shipped, folder / manifest["folder"])
    tell(folder, manifest)
    return manifest


def worker():
    """The worker's script: no part of it may import another, since a disk allows none."""
    return "".join((RUNTIME / name).read_text() for name in WORKER_PARTS)


def published():
    """{name: bytes} of Pyodide as it is published, without its list of packages."""
    return {name.rsplit("/", 1)[1]: parts.read(name) for name in COPIED}


def content_name(paths, more=""):
    """16 hexadecimal digits of the sha256 of the names and contents of files, and of ``more``."""
    return named({path.name: path.read_bytes() for path in paths}, more)


def named(files, more=""):
    """The same of ``files`` ({name: bytes})."""
    whole = hashlib.sha256(more.encode())
    for name, content in sorted(files.items()):
        whole.update(f"{name} {parts.digest(content)}\n".encode())
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


def prepare(folder, packed):
    """Find out what a start needs, and part the files by it."""
    say("finding out what a start of Python needs")
    script = RUNTIME / "prepare.mjs"
    run(["node", script, folder, packed.name, CACHE / BARE], timeout=LONGEST)


def take_snapshot(folder):
    """Start Python in node, import every calculator, keep its memory."""
    say("taking a snapshot of the started Python")
    run(["node", RUNTIME / "snapshot.mjs", folder, SNAPSHOT, MEMORY], timeout=LONGEST)


def piece_name(name, index):
    """As in ``reading.js``: "first.0.wasm"."""
    stem, end = name.rsplit(".", 1)
    return f"{stem}.{index}.{end}"


def pieces(name, content, shipped):
    """[bytes, bytes as sent, sha256] of each piece of a file, which is put into ``shipped``."""
    found = []
    for index, start in enumerate(range(0, len(content), PIECE)):
        piece = content[start : start + PIECE]
        shipped[piece_name(name, index)] = piece
        sent = min(len(piece), len(gzip.compress(piece, 9)))
        found.append([len(piece), sent, base64.b64encode(hashlib.sha256(piece).digest()).decode()])
    return found


def _replace(made, kept):
    for old in (CACHE / "runtime").iterdir():
        if old != made:
            for path in old.iterdir():
                path.unlink()
            old.rmdir()
    made.rename(kept)


def _publish(shipped, target):
    target.mkdir(parents=True)
    for name, content in shipped.items():
        (target / name).write_bytes(content)


def tell(folder, manifest):
    """Write the file that the pages read first."""
    text = json.dumps(manifest, separators=(",", ":"))
    (folder / "manifest.js").write_text(f"window.SPRINGLINE_RUNTIME = {text};\n")
