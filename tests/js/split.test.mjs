// scripts/runtime/split.mjs: a WebAssembly module in two answers as it does in one.
import assert from "node:assert/strict";
import { test } from "node:test";

import { load, textOf } from "./load.mjs";
import { ran, split, watched } from "../../scripts/runtime/split.mjs";
import { SECTION, assemble, joined, named, sized, vector } from "../../scripts/runtime/wasm.mjs";

const HEAD = [0, 0x61, 0x73, 0x6d, 1, 0, 0, 0];
const I32 = 0x7f;
const [GET, CONSTANT, ADD, CALL, THROUGH, END] = [0x20, 0x41, 0x6a, 0x10, 0x11, 0x0b];
const LOCALS = 0;
// every function adds something to what it is given; the numbers count the import too
const BODIES = [
  [GET, 0, CONSTANT, 1, ADD, END], // 1: plus one
  [GET, 0, CALL, 1, CALL, 3, END], // 2: plus one, then function 3
  [GET, 0, CONSTANT, 10, ADD, CALL, 1, CALL, 0, END], // 3: plus ten, plus one, and the import
  [GET, 0, 0x23, 0, ADD, END], // 4: plus the global
  [GET, 0, CONSTANT, 0, THROUGH, 0, 0, END], // 5: what stands in the table
  [CONSTANT, 0, 0x2d, 0, 0, GET, 0, ADD, END], // 6: plus the first byte of memory
];
const MODULE = assemble(Buffer.from(HEAD), [
  [SECTION.type, vector([[0x60, 1, I32, 1, I32], [0x60, 0, 0]])],
  [SECTION.import, vector([joined(named("env"), named("given"), [0, 0])])],
  [SECTION.function, vector(BODIES.map(() => [0]))],
  [SECTION.table, vector([[0x70, 0, 2]])],
  [SECTION.memory, vector([[0, 1]])],
  [SECTION.global, vector([[I32, 1, CONSTANT, 5, END]])],
  [SECTION.export, vector([
    ...BODIES.map((_, index) => joined(named(`f${index + 1}`), [0, index + 1])),
    joined(named("memory"), [2, 0]),
  ])],
  [SECTION.element, joined([1, 0, CONSTANT, 0, END], vector([[3], [4]]))],
  [SECTION.code, vector(BODIES.map((body) => sized([LOCALS, ...body])))],
  [SECTION.data, vector([joined([0, CONSTANT, 0, END], sized([7]))])],
]);
const NAMES = BODIES.map((_, index) => `f${index + 1}`);
const given = { env: { given: (value) => value + 100 } };

const instance = (bytes, imports) =>
  new WebAssembly.Instance(new WebAssembly.Module(bytes), imports).exports;

/* {exports, needs}: how often the rest was fetched. */
function inTwo(used) {
  const { first, rest } = split(MODULE, used);
  const made = { needs: 0 };
  const need = () => {
    made.needs += 1;
    instance(rest, { first: made.exports });
    made.exports["+ready"].value = 1;
  };
  made.exports = instance(first, { ...given, springline: { need } });
  return made;
}

const every = (exported) => NAMES.map((name) => exported[name](1000));
const WANTED = every(instance(MODULE, given));

test("the module used here does something", () => {
  assert.deepEqual(WANTED, [1001, 1112, 1111, 1005, 1111, 1007]);
});

for (const used of [[], [0], [0, 1], [2, 3], [4], [0, 1, 2, 3, 4, 5]]) {
  test(`all functions answer as before where first has ${used.join(", ") || "none"}`, () => {
    const made = inTwo(used);
    assert.deepEqual(every(made.exports), WANTED);
    assert.deepEqual(every(made.exports), WANTED);
    assert.equal(made.needs, used.length === BODIES.length ? 0 : 1);
  });
}

test("what runs in first alone does not ask for the rest", () => {
  const made = inTwo([0, 1, 2]);
  assert.equal(made.exports.f2(1000), 1112);
  assert.equal(made.needs, 0);
  made.exports.f4(0);
  assert.equal(made.needs, 1);
});

test("in the browser the rest is fetched in the middle of a call, from its pieces", () => {
  const { first, rest } = split(MODULE, [0]);
  const asked = [];
  class XMLHttpRequest {
    open(_, address, later) {
      Object.assign(this, { address, later });
    }

    send() {
      asked.push(this.address);
      const [, index] = /rest\.(\d)\.wasm$/.exec(this.address);
      const at = Number(index) * 100;
      this.status = this.later ? 0 : 200;
      this.response = new Uint8Array(rest.subarray(at, at + 100)).buffer;
    }
  }
  const before = ["reading", "unpacking"].map((name) => textOf(`scripts/runtime/${name}.js`)).join("");
  const console = { info() {} };
  const world = load("scripts/runtime/worker.js", { XMLHttpRequest, console, WebAssembly }, before);
  const files = { "rest.wasm": Array(Math.ceil(rest.length / 100)).fill([100, 100, ""]) };
  const exported = instance(first, { ...given, springline: { need: () => late.now() } });
  const late = new world.SpringlineRuntime.Rest({ base: "r/", files }, exported);
  assert.deepEqual(every(exported), WANTED);
  assert.deepEqual(asked, files["rest.wasm"].map((_, index) => `r/rest.${index}.wasm`));
});

test("those that ran are counted, each once, through the table too", () => {
  const exported = instance(watched(MODULE), given);
  exported.f2(0);
  assert.deepEqual(ran(exported), [0, 1, 2]);
  exported.f5(0);
  exported.f5(0);
  assert.deepEqual(ran(exported), [0, 1, 2, 4]);
});

test("counting changes no answer", () => {
  assert.deepEqual(every(instance(watched(MODULE), given)), WANTED);
});

test("a module with parts that cannot be shared is refused", () => {
  const start = assemble(Buffer.from(HEAD), [[SECTION.import, vector([])], [SECTION.start, [0]]]);
  assert.throws(() => split(start, []));
});
