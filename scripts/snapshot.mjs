// Start Python as the browser would, import all of calc, write its memory: the pieces of it that
// the WebAssembly does not lay down by itself, gzipped, and where they lie, as JSON.
// node scripts/snapshot.mjs FOLDER WHEEL SNAPSHOT PLACES; fails loudly.
import nodeCrypto from "node:crypto";
import { readFileSync, writeFileSync } from "node:fs";
import { syncBuiltinESMExports } from "node:module";
import { resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { gzipSync } from "node:zlib";

const [folder, wheel, snapshot, places] = process.argv.slice(2);
const base = resolve(folder) + "/";

const IMPORT_ALL = `
import importlib, json, pkgutil
import calc, calc.bridge
from calc.sheets import KEYS, sheet

for module in pkgutil.walk_packages(calc.__path__, "calc."):
    importlib.import_module(module.name)
# one answer each, so that what is made on first use is in the snapshot too
for key in KEYS:
    calc.bridge.handle(json.dumps({"op": "work", "sheet": key}))
`;
const ASK = (key) => JSON.stringify({ op: "work", sheet: key });

// the message alone: node would print the line it came from, a megabyte long
process.on("uncaughtException", (error) => {
  console.error("snapshot: " + error.message);
  process.exit(1);
});

// The same calculators give the same bytes: no clock and no chance may get into the memory.
// What Python draws from chance here (hash seed, the generator of "random") guards nothing.
let drawn = 1;
const next = () => (drawn = (drawn * 48271) % 2147483647); // a minimal standard generator
const fill = (array) => {
  const bytes = new Uint8Array(array.buffer, array.byteOffset, array.byteLength);
  for (let index = 0; index < bytes.length; index += 1) bytes[index] = next();
  return array;
};
crypto.getRandomValues = fill;
nodeCrypto.randomFillSync = fill;
syncBuiltinESMExports();
Math.random = () => next() / 2147483647;
Date.now = () => 315532800_000; // ms; 1980-01-01, as in the wheel
performance.now = () => 0;
process.env.TZ = "UTC"; // no zone and no path of this machine either
process.argv[1] = "/snapshot.mjs";
const ENVIRONMENT = { HOME: "/home/pyodide", LANG: "en_US.UTF-8", PYTHONHASHSEED: "0" };

const { loadPyodide } = await import(pathToFileURL(base + "pyodide.mjs"));

async function python(options) {
  return loadPyodide({ indexURL: base, packageBaseUrl: base, env: ENVIRONMENT, ...options });
}

const first = await python({ _makeSnapshot: true });
first.unpackArchive(new Uint8Array(readFileSync(base + wheel)), "wheel");
first.runPython(IMPORT_ALL);
const keys = first.runPython("list(KEYS)").toJs();
const handle = first.pyimport("calc.bridge").handle;
const wanted = keys.map((key) => handle(ASK(key)));
handle.destroy();
first.runPython("import gc; del importlib, pkgutil, module, KEYS, sheet, key; gc.collect()");
const whole = first.makeMemorySnapshot();
const head = new Uint32Array(whole.buffer, whole.byteOffset, 2)[1]; // Pyodide's own, in bytes
const memory = whole.subarray(head);

// What a start finds in memory before the snapshot comes: as compiled, and once it has run a little.
// The second differs by reader (it holds the language, say), so where it is written to, the
// snapshot must write too.
const { instantiate } = WebAssembly;
let compiled = null;
WebAssembly.instantiate = async (...given) => {
  const made = await instantiate(...given);
  const own = made.instance?.exports.memory;
  if (own) compiled = new Uint8Array(own.buffer).slice();
  return made;
};
const { default: createPyodideModule } = await import(pathToFileURL(base + "pyodide.asm.mjs"));
let begun = null;
await python({
  _loadSnapshot: whole,
  async createPyodideModule(settings) {
    const made = await createPyodideModule(settings);
    begun = made.HEAPU8.slice();
    return made;
  },
});
WebAssembly.instantiate = instantiate;
if (compiled?.length !== memory.length || begun?.length !== memory.length) {
  throw new Error("a start from the snapshot has memory of another size");
}

// Left out are long stretches as they were compiled, and very long ones of nothing. Where Python
// keeps its objects a start may have written something of the reader's, so there gaps are kept.
const LONG = 4096; // bytes
const VERY_LONG = 1 << 20;
const pieces = [];
let end = 0; // of the last piece
let filled = false; // whether the gap after it holds anything
for (let at = 0; at < memory.length; at += 1) {
  if (memory[at] === compiled[at] && begun[at] === compiled[at]) {
    filled ||= compiled[at] !== 0;
    continue;
  }
  const last = pieces.at(-1);
  if (last && at - end < (filled ? LONG : VERY_LONG)) last[1] = at + 1 - last[0];
  else pieces.push([at, 1]);
  end = at + 1;
  filled = false;
}
const parts = pieces.map(([place, length]) => memory.subarray(place, place + length));
const content = Buffer.concat([whole.subarray(0, head), ...parts]);
writeFileSync(base + snapshot, gzipSync(content, { level: 9 }));
const told = { bytes: memory.length, head, packed: content.length, pieces };
writeFileSync(base + places, JSON.stringify(told));

// a snapshot that does not come back to life, or answers differently, must stop the build; it is
// started by the very script that the browser runs, from files whose names need not make an address
globalThis.self = globalThis;
self.SpringlineFolder = (given) => ({
  ...given,
  module: (name) => import(pathToFileURL(base + name)),
  read: async (name) => new Response(readFileSync(base + name)),
});
await import(pathToFileURL(base + "worker.js"));
const settings = { base, wheel, snapshot, memory: told };
const again = await self.SpringlineRuntime.start(settings);
if (again.way !== "snapshot") throw new Error("the snapshot does not come back to life");
keys.forEach((key, index) => {
  if (again.handle(ASK(key)) !== wanted[index]) {
    throw new Error(`the snapshot answers ${key} differently`);
  }
});
process.exit(0);
