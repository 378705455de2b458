// What a start needs of Pyodide, found by running all that a page may ask: Python's modules as one
// gzipped zip (python.bin), and the WebAssembly in two (first.wasm, rest.wasm).
// node scripts/runtime/prepare.mjs FOLDER WHEEL KEPT; FOLDER holds Pyodide and its lock.
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { gzipSync } from "node:zlib";

import { FORGET, IMPORT_ALL, begin, start } from "./node.mjs";
import { ran, split, watched } from "./split.mjs";

const base = begin("prepare");
const read = (name) => new Uint8Array(readFileSync(base + name)); // Pyodide knows no Buffer
const own = (name) => readFileSync(new URL(name, import.meta.url), "utf8");
const [, , , called, kept] = process.argv;
const wheel = read(called);
const whole = read("pyodide.asm.wasm");
const lock = JSON.parse(readFileSync(base + "pyodide-lock.json"));

// which modules are imported
const { python } = await start(base, { wasm: whole, library: read("python_stdlib.zip"), lock });
python.unpackArchive(wheel, "wheel");
for (const name of ["exercise.py", "lean_python.py"]) python.FS.writeFile("/" + name, own(name));
python.FS.writeFile("/calc.whl", wheel);
python.runPython(`
import sys
sys.path.append("/")
import exercise
exercise.everything()
exercise.later()
names = list(sys.modules)
import lean_python
`);
// making modules bare takes longest, so what is known of it stays between builds
if (existsSync(kept)) python.FS.writeFile("/bare.json", readFileSync(kept, "utf8"));
const library = python.runPython('lean_python.run("/calc.whl", names, "/bare.json")').toJs();
writeFileSync(kept, python.FS.readFile("/bare.json"));
writeFileSync(base + "python.bin", gzipSync(library, { level: 9 }));

// which functions of the WebAssembly they run: when the snapshot is made, when a start comes from it
// and when one does not, and in all that a page may ask
const common = { wasm: watched(whole), library, lock };
const first = await start(base, { ...common, _makeSnapshot: true });
first.python.runPython(IMPORT_ALL);
const keys = JSON.parse(first.python.runPython("json.dumps(list(KEYS))"));
asked(first.python).destroy();
first.python.runPython(FORGET);
const second = await start(base, { ...common, _loadSnapshot: first.python.makeMemorySnapshot() });
asked(second.python);
const third = await start(base, common);
asked(third.python);
third.python.FS.writeFile("/exercise.py", own("exercise.py"));
third.python.runPython('import sys; sys.path.append("/"); import exercise; exercise.everything()');
third.python.runPython("exercise.sun()");
const used = new Set([first, second, third].flatMap(({ exported }) => ran(exported)));
for (const [name, content] of Object.entries(split(whole, [...used]))) {
  writeFileSync(`${base}${name}.wasm`, content);
}
process.exit(0);

/* As the worker asks: an answer of each sheet, and a question that nobody can answer. */
function asked(started) {
  const { handle } = started.pyimport("calc.bridge");
  for (const sheet of keys) handle(JSON.stringify({ op: "work", sheet }));
  try {
    handle('{"op": "none", "sheet": "none"}');
  } catch (error) {
    if (error.name !== "PythonError") throw error;
  }
  return handle;
}
