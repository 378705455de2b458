// Pyodide in node, at build, made to believe that it runs in a browser's worker, so that it does there
// what it will do here. The same calculators give the same bytes: no clock, no chance and nothing of
// this machine may get into Python's memory.
import nodeCrypto from "node:crypto";
import { syncBuiltinESMExports } from "node:module";
import { resolve } from "node:path";
import { pathToFileURL } from "node:url";

const PLACE = "memory://springline/"; // never asked for
const ENVIRONMENT = { HOME: "/home/pyodide", LANG: "en_US.UTF-8", PYTHONHASHSEED: "0" };

// what is in the snapshot's memory, and what is not left lying there; nothing of the sheets that
// browsers import only when they are asked for
export const IMPORT_ALL = `
import importlib, json, pkgutil
import calc, calc.bridge
from calc.sheets import KEYS, LATER, LATER_ROOMS

for module in pkgutil.walk_packages(calc.__path__, "calc."):
    if not module.name.startswith(LATER_ROOMS):
        importlib.import_module(module.name)
# one answer each, so that what is made on first use is in the snapshot too
KEYS = [key for key in KEYS if key not in LATER]
for key in KEYS:
    calc.bridge.handle(json.dumps({"op": "work", "sheet": key}))
`;
// What is there stays: no search for rubbish need go through it again, in the middle of an answer.
export const FORGET =
  "import gc; del importlib, pkgutil, module, KEYS, LATER, LATER_ROOMS, key; gc.collect(); gc.freeze()";

/* The folder named first on the command line, with a slash; a failure is said in one line. */
export function begin(called) {
  // the message alone: node would print the line it came from, a megabyte long
  process.on("uncaughtException", (error) => {
    console.error(`${called}: ${error.message}`);
    process.exit(1);
  });
  const [, , folder] = process.argv;
  settle();
  disguise();
  return resolve(folder) + "/";
}

/* What Python draws from chance here (hash seed, the generator of "random") guards nothing. */
function settle() {
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
  process.env.TZ = "UTC"; // no zone of this machine either
}

/* By what Pyodide and Emscripten tell where they are. */
function disguise() {
  process.browser = true;
  process.type = "renderer";
  Object.assign(globalThis, {
    self: globalThis, WorkerGlobalScope: Object, location: new URL(PLACE), addEventListener() {},
  });
}

/* Starts Python from the files in ``base``: {python, exported} of WebAssembly. ``wasm``: bytes, and
   ``rest`` where it is parted; ``library``: the zip; ``made(instance)`` is called before Python runs. */
export async function start(base, { wasm, rest, library, lock, made = () => {}, ...options }) {
  const { loadPyodide } = await import(pathToFileURL(base + "pyodide.js"));
  const { default: createPyodideModule } = await import(pathToFileURL(base + "pyodide.asm.js"));
  let exported = null;
  const failed = Promise.withResolvers?.() ?? never();
  const python = await Promise.race([failed.promise, loadPyodide({
    indexURL: PLACE, packageBaseUrl: PLACE, env: ENVIRONMENT, lockFileContents: lock,
    stdLibURL: library, createPyodideModule,
    async instantiate(given, receive) {
      try {
        given.springline = { need: () => bring(rest, exported) };
        const { instance, module } = await WebAssembly.instantiate(wasm, given);
        exported = instance.exports;
        made(instance);
        receive({ exports: theirs(exported) }, module);
      } catch (error) {
        failed.reject(error);
      }
    },
    ...options,
  })]);
  return { python, exported };
}

/* It costs a reader a wait, so exercise.py should have come to it. */
function bring(rest, first) {
  console.error("springline: the rest of the WebAssembly is asked for before it should be");
  new WebAssembly.Instance(new WebAssembly.Module(rest), { first });
  first["+ready"].value = 1;
}

function never() {
  const made = {};
  made.promise = new Promise((_, reject) => (made.reject = reject));
  return made;
}

/* What Pyodide is to see of the exports: not those that only the parting needs. */
export const theirs = (exported) => Object.fromEntries(
  Object.entries(exported).filter(([name]) => !name.startsWith("+")));
