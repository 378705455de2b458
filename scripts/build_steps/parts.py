"""What we take from npm: each file checked against a committed hash before it is used.

``scripts/npm/parts.sha256`` names the files. After an update of the lock, renew it with
``python -m scripts.build_steps.parts`` and read the difference.
"""

import hashlib

from scripts.build_steps.places import PARTS, SCRIPTS

HASHES = SCRIPTS / "npm" / "parts.sha256"
RUNTIME = (
    "pyodide/pyodide.mjs",
    "pyodide/pyodide.asm.mjs",
    "pyodide/pyodide.asm.wasm",
    "pyodide/python_stdlib.zip",
    "pyodide/pyodide-lock.json",
)
AS_PUBLISHED = (
    "vega/build/vega.min.js",
    "vega-lite/build/vega-lite.min.js",
    "vega-embed/build/vega-embed.min.js",
    "qrcode-generator/dist/qrcode.js",
)
INTERPRETER = "vega-interpreter/build/vega-interpreter.js"
SHIM = "iframe-worker/shim/index.js"
LICENCES = tuple(
    f"{name}/LICENSE"
    for name in ("vega", "vega-lite", "vega-embed", "vega-interpreter", "iframe-worker")
)
# the package holds no text of its licence; its package.json names it
PYODIDE_LICENCE = (
    "pyodide: Mozilla Public License 2.0, https://www.mozilla.org/MPL/2.0/; changed for this site\n"
    "as scripts/build_steps/lean.py in its source says. It holds CPython: Python Software\n"
    "Foundation License 2, https://docs.python.org/3/license.html\n"
)
# nor does this one; the file names it
QRCODE_LICENCE = (
    "qrcode-generator: MIT License, https://opensource.org/license/mit;\n"
    "Copyright (c) 2009 Kazuhiko Arase\n"
)
# the shim puts its own kind of Worker in the browser's place; engine.js wants the real one
KEEP_WORKER = b"window.SpringlineWorker = window.Worker;\n"
IMPORTED = "import { ascending, isString, DisallowedObjectProperties } from 'vega-util';"
EXPORTED = "export { expression as expressionInterpreter };"


def digest(content):
    return hashlib.sha256(content).hexdigest()


def known_hashes():
    lines = HASHES.read_text().splitlines()
    return {name: known for known, name in (line.split("  ") for line in lines)}


def read(name):
    """Bytes of a part. Raises ``ValueError`` if they are not the ones we looked at."""
    content = (PARTS / name).read_bytes()
    wanted, found = known_hashes().get(name), digest(content)
    if found != wanted:
        raise ValueError(
            f"{name} has sha256 {found}, but {HASHES.name} says {wanted}. "
            "If you changed the npm lock on purpose, renew the file (see parts.py)."
        )
    return content


def write_vendor(folder):
    """Put the libraries for drawing, codes and search into ``folder``, with their licences."""
    folder.mkdir(parents=True, exist_ok=True)
    for name in AS_PUBLISHED:
        content = _without_map(read(name))
        (folder / name.rsplit("/", 1)[1]).write_bytes(content)
    (folder / "vega-interpreter.min.js").write_text(classic_interpreter())
    texts = (f"{name.split('/')[0]}\n\n{read(name).decode()}\n" for name in LICENCES)
    (folder / "LICENCES.txt").write_text("\n".join((PYODIDE_LICENCE, QRCODE_LICENCE, *texts)))
    (folder / "iframe-worker.js").write_bytes(KEEP_WORKER + _without_map(read(SHIM)))


def classic_interpreter():
    """The expression interpreter as a classic script: a module cannot load over file://."""
    text = _without_map(read(INTERPRETER)).decode()
    if text.count(IMPORTED) != 1 or text.count(EXPORTED) != 1:
        raise ValueError("vega-interpreter imports or exports something new: see parts.py")
    names = IMPORTED.split(" from ")[0].removeprefix("import")
    text = text.replace(IMPORTED, f"const{names} = vega;")
    text = text.replace(EXPORTED, "vega.expressionInterpreter = expression;")
    return f'(function (vega) {{\n"use strict";\n{text}}})(globalThis.vega);\n'


def _without_map(content):
    """No link to a source map that the site does not hold."""
    lines = content.splitlines(keepends=True)
    return b"".join(line for line in lines if not line.startswith(b"//# sourceMappingURL="))


def main():
    names = sorted((*RUNTIME, *AS_PUBLISHED, INTERPRETER, SHIM, *LICENCES))
    lines = (f"{digest((PARTS / name).read_bytes())}  {name}\n" for name in names)
    HASHES.write_text("".join(lines))


if __name__ == "__main__":
    main()
