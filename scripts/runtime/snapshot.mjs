// Start Python as the browser would, import all of calc, write its memory: the pieces of it that
// the WebAssembly does not lay down by itself, gzipped, and where they lie, as JSON.
// node scripts/runtime/snapshot.mjs FOLDER SNAPSHOT PLACES; FOLDER holds what prepare.mjs made and
// worker.js. Fails loudly.
import { readFileSync, writeFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { gunzipSync, gzipSync } from "node:zlib";

import { FORGET, IMPORT_ALL, begin, start } from "./node.mjs";

const base = begin("snapshot");
const [, , , snapshot, places] = process.argv;
const lock = JSON.parse(readFileSync(base + "pyodide-lock.json"));
const library = new Uint8Array(gunzipSync(readFileSync(base + "python.bin")));
const [wasm, rest] = ["first.wasm", "rest.wasm"].map((name) => readFileSync(base + name));
const common = { wasm, rest, library, lock };

const ASK = (key) => JSON.stringify({ op: "work", sheet: key });

const { python: first } = await start(base, { ...common, _makeSnapshot: true });
first.runPython(IMPORT_ALL);
const keys = JSON.parse(first.runPython("json.dumps(list(KEYS))"));
const handle = first.pyimport("calc.bridge").handle;
const wanted = keys.map((key) => handle(ASK(key)));
handle.destroy();
first.runPython(FORGET);
const whole = first.makeMemorySnapshot();
const head = new Uint32Array(whole.buffer, whole.byteOffset, 2)[1]; // Pyodide's own, in bytes
const memory = whole.subarray(head);

// What a start finds in memory before the snapshot comes: as compiled, and once it has run a little.
// The second differs by reader (it holds the language, say), so where it is written to, the
// snapshot must write too.
const { default: createPyodideModule } = await import(pathToFileURL(base + "pyodide.asm.js"));
const seen = {};
await start(base, {
  ...common,
  made: ({ exports }) => (seen.compiled = new Uint8Array(exports.memory.buffer).slice()),
  _loadSnapshot: whole,
  async createPyodideModule(settings) {
    const made = await createPyodideModule(settings);
    seen.begun = made.HEAPU8.slice();
    return made;
  },
});
if (seen.compiled?.length !== memory.length || seen.begun?.length !== memory.length) {
  throw new Error("a start from the snapshot has memory of another size");
}

// Left out are long stretches as they were compiled, and very long ones of nothing. Where Python
// keeps its objects a start may have written something of the reader's, so there gaps are kept.
const LONG = 4096; // bytes
const VERY_LONG = 1 << 20;

function differing({ compiled, begun }) {
  const found = [];
  let end = 0; // of the last piece
  let filled = false; // whether the gap after it holds anything
  for (let at = 0; at < memory.length; at += 1) {
    if (memory[at] === compiled[at] && begun[at] === compiled[at]) {
      filled ||= compiled[at] !== 0;
      continue;
    }
    const last = found.at(-1);
    if (last && at - end < (filled ? LONG : VERY_LONG)) last[1] = at + 1 - last[0];
    else found.push([at, 1]);
    end = at + 1;
    filled = false;
  }
  return found;
}

const pieces = differing(seen);
const parts = pieces.map(([place, length]) => memory.subarray(place, place + length));
const content = Buffer.concat([whole.subarray(0, head), ...parts]);
writeFileSync(base + snapshot, gzipSync(content, { level: 9 }));
const told = { bytes: memory.length, head, packed: content.length, pieces };
writeFileSync(base + places, JSON.stringify(told));

// what does not come back to life, or answers differently, must stop the build; it is started by
// the very script that the browser runs, from files whose names need not make an address
self.SpringlineFolder = () => ({
  script: (name) => import(pathToFileURL(base + name)),
  get: (name) => new Uint8Array(readFileSync(base + name.replace(".0.", "."))),
});
await import(pathToFileURL(base + "worker.js"));
const files = Object.fromEntries(
  ["first.wasm", "rest.wasm", "python.bin", snapshot].map((name) => [name, [[1, 1, ""]]]),
);
for (const way of ["snapshot", "plain"]) {
  const settings = { base, files, memory: told, lock, plain: way === "plain" };
  const again = await self.SpringlineRuntime.start(settings);
  if (again.way !== way) throw new Error(`the ${way} start does not come to life`);
  keys.forEach((key, index) => {
    if (again.handle(ASK(key)) !== wanted[index]) {
      throw new Error(`the ${way} start answers ${key} differently`);
    }
  });
}
process.exit(0);
