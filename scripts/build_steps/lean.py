"""Pyodide's files without what only compiled packages, loaded later, would need.

For such packages Pyodide exports every name of its WebAssembly, 8 500 of them, and takes each in
hand at every start. The calculators are pure Python and load none. A name stays where either
script holds it as a word, in whatever way it is used there. Each step raises ``ValueError`` where a
file is not written as expected, so that a new Pyodide is looked at.
"""

import re

LOADER, JAVASCRIPT, WASM = "pyodide.mjs", "pyodide.asm.mjs", "pyodide.asm.wasm"
# hosts that do not know .mjs send it as a type that browsers do not run
RENAMED = {LOADER: "pyodide.js", JAVASCRIPT: "pyodide.asm.js"}
EXPORTS_TAKEN = re.compile(
    r"var ([\w,]+);function assignWasmExports\(wasmExports\)\{([^{}]*)\}", re.ASCII
)
WORD = re.compile(r"\w+", re.ASCII)
# 4 bytes to wait at while a keyboard is silent. Shared memory is not given to pages like ours, and
# asking has the browser read the whole file again to say where the question stands. With memory
# of its own the waiting fails, as Pyodide foresees, and there is no keyboard to wait for.
SHARED = "new Int32Array(new WebAssembly.Memory({shared:!0,initial:1,maximum:1}).buffer)"
OWN = "new Int32Array(1)"
# A browser takes brackets as the sign that a function is called at once and compiles it when it
# reads it; without them it reads it twice.
LATER = "async function _createPyodideModule(", "}export default _createPyodideModule;"
AT_ONCE = "const _createPyodideModule=(async function(", "});export default _createPyodideModule;"
# The loader would fetch WebAssembly and library by itself and wait for ever where that fails. We
# hand it both: "instantiate(imports, receive)", and the library's bytes in place of its address.
GIVEN = (
    ("instantiateWasm:Ie(e.indexURL)", "instantiateWasm:Ie(e.instantiate)"),
    ('let{binary:t,response:n}=_(e+"pyodide.asm.wasm"),i=K();', "let i=K();"),
    (
        "try{let l;n?l=await WebAssembly.instantiateStreaming(n,s):l=await "
        "WebAssembly.instantiate(await t,s);let{instance:d,module:u}=l;r(d,u)}"
        'catch(l){console.warn("wasm instantiation failed!"),console.warn(l)}',
        "await e(s,r)",
    ),
    ("function he(e){let t=j(e);", "function he(e){let t=e;"),
    ("\n//# sourceMappingURL=pyodide.mjs.map", ""),
)
EXPORT_SECTION = 7  # WebAssembly Core Specification 2.0, section 5.5.2


def lean(files):
    """``files`` ({name: bytes} of Pyodide) made smaller, and as our worker loads them."""
    script, names = javascript(files[JAVASCRIPT].decode(), files[LOADER].decode())
    made = {
        **files,
        LOADER: loader(files[LOADER].decode()).encode(),
        JAVASCRIPT: script.encode(),
        WASM: wasm(files[WASM], names),
    }
    return {RENAMED.get(name, name): content for name, content in made.items()}


def loader(text):
    """Pyodide's loader, which takes WebAssembly and library from whoever calls it."""
    return _replaced(text, GIVEN, LOADER)


def _replaced(text, pairs, name):
    for old, new in pairs:
        if text.count(old) != 1:
            raise ValueError(f"{name} is not written as expected: {old}")
        text = text.replace(old, new)
    return text


def javascript(text, beside):
    """(``text`` without exports neither it nor ``beside`` uses, the names they may still use)."""
    found = EXPORTS_TAKEN.findall(text)
    if len(found) != 1:
        raise ValueError(f"{JAVASCRIPT} takes its exports in another way")
    declared, taken = found[0][0].split(","), found[0][1].split(";")
    words = set(WORD.findall(EXPORTS_TAKEN.sub("", text) + beside))
    kept = [line for line in taken if targets(line) & words]
    dropped = set().union(*map(targets, taken)) - set().union(*map(targets, kept))
    variables = ",".join(name for name in declared if name not in dropped)
    assigned = f"var {variables};function assignWasmExports(wasmExports){{{';'.join(kept)}}}"
    text = EXPORTS_TAKEN.sub(lambda _: assigned, text)
    text = _replaced(text, ((SHARED, OWN), *zip(LATER, AT_ONCE, strict=True)), JAVASCRIPT)
    return text, set(WORD.findall(text))


def targets(line):
    """What ``a=Module["a"]=wasmExports["b"]`` gives a value to: {"a"}."""
    left, mark, _ = line.partition("=wasmExports[")
    if not mark:
        raise ValueError(f"{JAVASCRIPT} takes an export in another way: {line}")
    return set(WORD.findall(left)) - {"Module"}


def wasm(content, names):
    """The WebAssembly module ``content`` with only those exports that are among ``names``."""
    made = content[:8]  # magic number and version
    at = len(made)
    while at < len(content):
        length, start = number(content, at + 1)
        end = start + length
        if content[at] == EXPORT_SECTION:
            section = exports(content[start:end], names)
            made += bytes([EXPORT_SECTION]) + encoded(len(section)) + section
        else:
            made += content[at:end]
        at = end
    return made


def exports(section, names):
    """The export section with only ``names``: each entry is name, kind and index."""
    count, at = number(section, 0)
    kept = []
    for _ in range(count):
        length, start = number(section, at)
        name = section[start : start + length].decode()
        _, end = number(section, start + length + 1)
        if name in names:
            kept.append(section[at:end])
        at = end
    return encoded(len(kept)) + b"".join(kept)


def number(content, at):
    """(unsigned LEB128 number at ``at``, where it ends); Core Specification 2.0, section 5.2.2."""
    value = shift = 0
    while True:
        byte = content[at]
        value |= (byte & 0x7F) << shift
        at, shift = at + 1, shift + 7
        if byte < 0x80:
            return value, at


def encoded(value):
    """``value`` as unsigned LEB128."""
    made = b""
    while value >= 0x80:
        made += bytes([value & 0x7F | 0x80])
        value >>= 7
    return made + bytes([value])
