// Start Python as the browser would, import all of calc, write its memory, gzipped.
// node scripts/snapshot.mjs FOLDER WHEEL SNAPSHOT; fails loudly.
import nodeCrypto from "node:crypto";
import { readFileSync, writeFileSync } from "node:fs";
import { syncBuiltinESMExports } from "node:module";
import { resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { gzipSync, gunzipSync } from "node:zlib";

const [folder, wheel, snapshot] = process.argv.slice(2);
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
writeFileSync(base + snapshot, gzipSync(first.makeMemorySnapshot(), { level: 9 }));

// a snapshot that does not come back to life, or answers differently, must stop the build
const second = await python({ _loadSnapshot: gunzipSync(readFileSync(base + snapshot)) });
const again = second.pyimport("calc.bridge").handle;
keys.forEach((key, index) => {
  if (again(ASK(key)) !== wanted[index]) throw new Error(`the snapshot answers ${key} differently`);
});
process.exit(0);
