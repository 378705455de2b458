// A classic script of ours in a world of its own: what it sees is what a test gives it.
import { readFileSync } from "node:fs";
import vm from "node:vm";

const root = new URL("../../", import.meta.url);

// What browsers and workers have, and node too.
const COMMON = {
  atob, Blob, btoa, clearTimeout, console, crypto, DecompressionStream, DOMException, Headers,
  Response, setTimeout, TextDecoder, URL, URLSearchParams,
};

/* The text of a script, to be run before another. */
export const textOf = (name) => readFileSync(new URL(name, root), "utf8");

/* Runs ``name`` (a path below the repository's root); returns its globals. */
export function load(name, world = {}, before = "") {
  const context = vm.createContext({ ...COMMON, ...world });
  context.window ??= context;
  context.self ??= context;
  vm.runInContext(before + textOf(name), context, { filename: name });
  return context;
}

/* Plain data of another world, comparable with deepEqual. */
export function plain(value) {
  return JSON.parse(JSON.stringify(value));
}

/* What a page's script finds: an address, no elements, no more. */
export function page(address = "https://example.org/site/head/", more = {}) {
  const heard = {};
  const told = []; // what the document was told
  return {
    location: new URL(address),
    navigator: { onLine: true },
    document: {
      currentScript: { src: "https://example.org/site/assets/script.js" },
      forms: { namedItem: () => null },
      querySelector: () => null,
      head: { append() {} },
      createElement: () => ({}),
      dispatchEvent: (event) => told.push(event),
    },
    CustomEvent: class {
      constructor(type, { detail } = {}) {
        Object.assign(this, { type, detail });
      }
    },
    told,
    addEventListener: (kind, what) => (heard[kind] = what),
    removeEventListener: (kind) => delete heard[kind],
    heard,
    ...more,
  };
}
