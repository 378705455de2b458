// A walk over the instructions of a WebAssembly function, to find what they name.
// Opcodes: WebAssembly Core Specification 3.0, section 5.4, and the older exception handling.
import { encoded, instructions, joined, number, signed } from "./wasm.mjs";

const NONE = [0x00, 0x01, 0x05, 0x0a, 0x0b, 0x0f, 0x19, 0x1a, 0x1b, 0xd1, 0xd3, 0xd4];
const ONE = [ // a type of block, a label, a local variable, a table or a constant of 64 bits
  0x02, 0x03, 0x04, 0x06, 0x09, 0x0c, 0x0d, 0x18, 0x20, 0x21, 0x22, 0x25, 0x26, 0x3f, 0x40, 0x42,
  0xd0, 0xd5, 0xd6,
];
const NAMED = {
  0x07: "tag", 0x08: "tag", 0x10: "function", 0x12: "function", 0xd2: "function", 0x23: "global",
  0x24: "global",
};

const after = (body, at) => number(body, at)[1];

function named(body, at, kind, see) {
  const [value, end] = number(body, at);
  see(kind, value, at, end);
  return end;
}

function memory(body, at, see) {
  return named(body, after(body, at), "address", see);
}

function labels(body, at) {
  let [count, end] = number(body, at);
  for (; count >= 0; count -= 1) end = after(body, end);
  return end;
}

/* try_table: a type of block, then clauses, of which two kinds name a tag */
function clauses(body, at, see) {
  let [count, end] = number(body, after(body, at));
  for (; count; count -= 1) {
    const tagged = body[end] < 2;
    end += 1;
    if (tagged) end = named(body, end, "tag", see);
    end = after(body, end);
  }
  return end;
}

function constant(body, at, see) {
  const [value, end] = signed(body, at);
  see("address", value, at, end);
  return end;
}

/* 0xfc: numbers that saturate, memory and tables in bulk */
function more(body, at) {
  const [code, start] = number(body, at);
  if (code < 8) return start;
  if (code === 8 || code === 9 || code === 12 || code === 13) {
    throw new Error("a passive segment, which has no place when a module is parted");
  }
  const count = { 10: 2, 14: 2 }[code] || 1;
  let end = start;
  for (let each = 0; each < count; each += 1) end = after(body, end);
  return end;
}

/* 0xfd: vectors */
function vectors(body, at, see) {
  const [code, start] = number(body, at);
  if (code <= 11 || code === 92 || code === 93) return memory(body, start, see);
  if (code === 12 || code === 13) return start + 16;
  if (code >= 21 && code <= 34) return start + 1;
  if (code >= 84 && code <= 91) return memory(body, start, see) + 1;
  return start;
}

const AFTER = new Array(256).fill(null);
for (let code = 0x45; code <= 0xc4; code += 1) AFTER[code] = (_, at) => at; // sums and comparisons
for (let code = 0x28; code <= 0x3e; code += 1) AFTER[code] = memory;
for (const code of NONE) AFTER[code] = (_, at) => at;
for (const code of ONE) AFTER[code] = after;
for (const [code, kind] of Object.entries(NAMED)) {
  AFTER[code] = (body, at, see) => named(body, at, kind, see);
}
for (const code of [0x11, 0x13]) AFTER[code] = (body, at) => after(body, after(body, at));
Object.assign(AFTER, {
  0x0e: labels,
  0x1c: (body, at) => number(body, at).reduce((count, start) => count + start),
  0x1f: clauses,
  0x41: constant,
  0x43: (_, at) => at + 4,
  0x44: (_, at) => at + 8,
  0xfc: more,
  0xfd: vectors,
});

/* Calls ``see(kind, value, at, end)`` for each function, global, tag and address that the
   instructions of ``body`` name: ``at`` and ``end`` say where its number stands. */
export function walk(body, see) {
  let at = instructions(body);
  while (at < body.length) {
    const next = AFTER[body[at]];
    if (!next) throw new Error(`an instruction that is not known here: 0x${body[at].toString(16)}`);
    at = next(body, at + 1, see);
  }
  if (at !== body.length) throw new Error("a function that ends in the middle of an instruction");
}

/* ``body`` with other numbers of functions and globals: ``to[kind](old)``. */
export function renumbered(body, to) {
  const parts = [];
  let done = 0;
  walk(body, (kind, value, at, end) => {
    const fresh = to[kind] ? to[kind](value) : value;
    if (fresh === value) return;
    parts.push(body.subarray(done, at), encoded(fresh));
    done = end;
  });
  return joined(...parts, body.subarray(done));
}
