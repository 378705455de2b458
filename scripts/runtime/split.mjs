// Pyodide's WebAssembly in two: "first" holds the functions that a start and the answers run, "rest"
// all others, so that nobody waits for those. In place of a function of the rest that something may
// ask for, first has a stub, which fetches the rest ("need") before it goes on there; so every
// function can still be called, and a function that is missed costs a wait, never an answer.
import { createHash } from "node:crypto";

import {
  KIND, SECTION, afterBody, afterGlobal, afterIndex, afterMemory, afterTable, afterTag, afterType,
  assemble, encoded, encodedSigned, entries, exportsOf, imports, instructions, joined, named, number,
  parse, signed, sized, vector,
} from "./wasm.mjs";
import { renumbered, walk } from "./walk.mjs";

export const OURS = "+"; // begins the names of exports that only the rest takes
const FROM = "first"; // the module that the rest imports all from
const NEED = ["springline", "need"];
const I32 = 0x7f;
const FUNCREF = 0x70;
const DATA_COUNT = 12; // the section

// Tables that only functions of the rest read, by address in Pyodide's memory: character sets of East
// Asia and the names of characters, a quarter of all that would be sent. They go with the rest. Found by
// looking through the data of this very module, named by its sha256; another keeps all its data.
const KNOWN = "f52170c3fefb5c455f8a6436477ea2f0f87aba24ed4de8a0b421642ef37d2217";
const TABLES = [
  [800545, 1389908], // CPython's Modules/cjkcodecs
  [1574129, 2022631], // its Modules/unicodename_db.h and unicodedata_db.h
  [2823168, 2962525], // musl's src/locale/iconv.c
];
// Numbers in these spans that functions use as such: powers of ten, the ends of Unicode, sums of the
// UTF-8 and UTF-16 decoders, O_SYNC, the Mersenne Twister's seeding. Any other may be an address.
const PLAIN = new Set([
  925824, 999999, 1000000, 1000003, 1047552, 1048575, 1048576, 1052672, 1114111, 1114112, 1179648,
  1664525,
]);

/* All that the parting asks about a module, in the numbers that the module itself uses. */
function look(bytes) {
  const { head, order, sections } = parse(bytes);
  const list = (kind, end) => entries(sections.get(SECTION[kind]), end);
  const brought = imports(sections.get(SECTION.import));
  const of = (kind) => brought.filter((one) => one.kind === KIND[kind]).map((one) => one.about);
  const types = list("type", afterType);
  const bodies = list("code", afterBody).map((body) => body.subarray(number(body, 0)[1]));
  const functionTypes = [...of("function"), ...list("function", afterIndex)]
    .map((one) => number(one, 0)[0]);
  const globals = list("global", afterGlobal);
  const made = {
    head, order, sections, types, bodies, functionTypes, globals,
    brought: of("function").length,
    broughtGlobals: of("global"),
    tables: list("table", afterTable),
    memories: list("memory", afterMemory),
    tags: sections.has(SECTION.tag) ? list("tag", afterTag) : [],
    exports: exportsOf(sections.get(SECTION.export)),
    elements: elements(sections.get(SECTION.element)),
  };
  const counted = brought.filter((one) => one.kind === KIND.function || one.kind === KIND.global);
  if (counted.length !== brought.length || sections.has(SECTION.start)) {
    throw new Error("the module imports a table, memory or tag, or starts by itself");
  }
  return made;
}

/* {before, functions} of the one segment that fills the one table of functions. */
function elements(section) {
  const start = [1, 0, 0x41]; // one segment, active, an offset that is a constant
  if (start.some((byte, at) => section[at] !== byte)) throw new Error("other elements");
  const begins = afterIndex(section, 3) + 1;
  const functions = entries(section, afterIndex, begins).map((one) => number(one, 0)[0]);
  return { before: section.subarray(0, begins), functions };
}

/* Counts for every function whether it ran: an exported global each, named by its number. */
export function watched(bytes) {
  const { head, order, bodies, globals, broughtGlobals, sections } = look(bytes);
  const flags = globals.length + broughtGlobals.length; // the number of the first
  const flag = [I32, 1, 0x41, 0, 0x0b];
  const own = entries(sections.get(SECTION.export), (all, at) => afterIndex(all, afterBody(all, at) + 1));
  const changed = {
    [SECTION.global]: () => vector([...globals, ...bodies.map(() => flag)]),
    [SECTION.export]: () => vector([...own, ...bodies.map((_, index) =>
      joined(named(OURS + index), [KIND.global], encoded(flags + index)))]),
    [SECTION.code]: () => vector(bodies.map((body, index) => {
      const at = instructions(body);
      const mark = [0x41, 1, 0x24, ...encoded(flags + index)];
      return sized(joined(body.subarray(0, at), mark, body.subarray(at)));
    })),
  };
  return assemble(head, order.map(([kind, all]) => [kind, changed[kind]?.() ?? all]));
}

/* The numbers of the functions that ran, of an instance of what ``watched`` gave. */
export function ran(exported) {
  const own = Object.keys(exported).filter((name) => name.startsWith(OURS));
  return own.filter((name) => exported[name].value).map((name) => Number(name.slice(OURS.length)));
}

/* {first, rest}; ``used``: numbers of the functions that go into first. */
export function split(bytes, used) {
  const module = look(bytes);
  const { brought, bodies } = module;
  const hot = new Set(used.map((index) => index + brought));
  const isCold = (index) => index >= brought && !hot.has(index);
  const stubs = stubbed(module, hot, isCold);
  const all = bodies.map((_, index) => index + brought);
  const plan = {
    module, stubs, hot, isCold,
    cold: all.filter(isCold),
    kept: all.filter((index) => hot.has(index) || stubs.has(index)),
    data: parted(module, hot),
    taken: takenByRest(module, all.filter(isCold), isCold),
  };
  return { first: first(plan), rest: rest(plan) };
}

/* Map of those of the rest that something in first may ask for -> their place in first's table. */
function stubbed({ bodies, brought, elements: { functions }, exports }, hot, isCold) {
  const asked = new Set(functions.filter(isCold));
  for (const { kind, index } of exports) {
    if (kind === KIND.function && isCold(index)) asked.add(index);
  }
  for (const index of hot) {
    walk(bodies[index - brought], (kind, value) => {
      if (kind === "function" && isCold(value)) asked.add(value);
    });
  }
  return new Map([...asked].sort((one, other) => one - other).map((index, place) => [index, place]));
}

/* Functions and globals of first that the rest uses, sorted. */
function takenByRest({ bodies, brought }, cold, isCold) {
  const found = { function: new Set(), global: new Set() };
  for (const index of cold) {
    walk(bodies[index - brought], (kind, value) => {
      if (kind === "global" || (kind === "function" && !isCold(value))) found[kind].add(value);
    });
  }
  const sorted = (set) => [...set].sort((one, other) => one - other);
  return { functions: sorted(found.function), globals: sorted(found.global) };
}

/* The data segments for first and for the rest. */
function parted({ sections, bodies, brought }, hot) {
  const section = sections.get(SECTION.data);
  const segments = entries(section, (all, at) => {
    if (all[at] !== 0 || all[at + 1] !== 0x41) throw new Error("a segment without a place");
    return afterBody(all, afterIndex(all, at + 2) + 1);
  });
  const known = createHash("sha256").update(section).digest("hex") === KNOWN;
  const meant = known ? TABLES : [];
  const seen = new Set();
  for (const index of hot) {
    walk(bodies[index - brought], (kind, value) => kind === "address" && seen.add(value));
  }
  const isRead = ([from, to]) => [...seen].some((at) => from <= at && at < to && !PLAIN.has(at));
  const moved = meant.filter((span) => !isRead(span));
  const inRest = (segment) => {
    const [at] = signed(segment, 2);
    return moved.some(([from, to]) => from <= at && at < to);
  };
  return {
    first: segments.filter((one) => !inRest(one)),
    rest: segments.filter(inRest),
  };
}

const short = (kind, place) => OURS + kind + place.toString(36);
const exported = (name, kind, index) => joined(named(name), [KIND[kind]], encoded(index));

/* The exports that the rest takes, in the order in which it takes them: [name, kind, index]. */
function offered({ module: { tables, tags }, taken }) {
  return [
    ...taken.functions.map((index, place) => [short("f", place), "function", index]),
    ...taken.globals.map((index, place) => [short("g", place), "global", index]),
    ...[...tables, null].map((_, place) => [short("t", place), "table", place]),
    [short("m", 0), "memory", 0],
    ...tags.map((_, place) => [short("e", place), "tag", place]),
  ];
}

const coldTable = ({ stubs }) => joined([FUNCREF, 0], encoded(stubs.size));

function first(plan) {
  const { module, stubs, kept, data } = plan;
  const { brought, bodies, functionTypes, globals, elements: { before, functions } } = module;
  const place = new Map(kept.map((index, at) => [index, brought + 1 + at])); // 1: need
  const to = (index) => (index < brought ? index : place.get(index));
  const nothing = module.types.findIndex((type) => joined(type).equals(Buffer.from([0x60, 0, 0])));
  const ready = globals.length + module.broughtGlobals.length;
  const check = brought + 1 + kept.length;
  const body = (index) => (stubs.has(index) ? stub(plan, index, check)
    : renumbered(bodies[index - brought], { function: to }));
  const whenNotReady = [0, 0x23, ...encoded(ready), 0x45, 0x04, 0x40, 0x10, ...encoded(brought), 0x0b, 0x0b];
  const kinds = kept.map((index) => encoded(functionTypes[index]));
  const own = module.exports.map(({ name, kind, index }) =>
    joined(named(name), [kind], encoded(kind === KIND.function ? to(index) : index)));
  const more = offered(plan).map(([name, kind, index]) =>
    exported(name, kind, kind === "function" ? to(index) : index));
  const need = joined(...NEED.map(named), [KIND.function], encoded(nothing));
  const [count, start] = number(module.sections.get(SECTION.import), 0);
  const changed = {
    [SECTION.import]: (all) => joined(encoded(count + 1), all.subarray(start), need),
    [SECTION.function]: () => vector([...kinds, encoded(nothing)]),
    [SECTION.table]: () => vector([...module.tables, coldTable(plan)]),
    [SECTION.global]: () => vector([...globals, [I32, 1, 0x41, 0, 0x0b]]),
    [SECTION.export]: () => vector([...own, ...more, exported(OURS + "ready", "global", ready)]),
    [SECTION.element]: () => joined(before, vector(functions.map((index) => encoded(to(index))))),
    [SECTION.code]: () => vector([...kept.map((index) => sized(body(index))), sized(whenNotReady)]),
    [SECTION.data]: () => vector(data.first),
    [DATA_COUNT]: () => encoded(data.first.length),
  };
  return assemble(module.head, module.order.map(([kind, all]) => [kind, changed[kind]?.(all) ?? all]));
}

/* A function that sees to it that the rest is there, then calls its own body in it. */
function stub({ module: { functionTypes, types, tables }, stubs }, index, check) {
  const type = functionTypes[index];
  const [count] = number(types[type], 1);
  const given = Array.from({ length: count }, (_, at) => [0x20, ...encoded(at)]).flat();
  const called = [0x41, ...encodedSigned(stubs.get(index)), 0x11, ...encoded(type), tables.length];
  return [0, 0x10, ...encoded(check), ...given, ...called, 0x0b];
}

function rest(plan) {
  const { module, stubs, cold, data, taken } = plan;
  const { brought, bodies, functionTypes, globals, broughtGlobals, tables } = module;
  const places = [...taken.functions, ...cold];
  const place = new Map(places.map((index, at) => [index, at]));
  const global = new Map(taken.globals.map((index, at) => [index, at]));
  const globalTypes = [...broughtGlobals, ...globals.map((one) => one.subarray(0, 2))];
  const about = {
    function: (index) => encoded(functionTypes[index]),
    global: (index) => globalTypes[index],
    table: (index) => tables[index] ?? coldTable(plan),
    memory: (index) => module.memories[index],
    tag: (index) => module.tags[index],
  };
  const taking = offered(plan).map(([name, kind, index]) =>
    joined(named(FROM), named(name), [KIND[kind]], about[kind](index)));
  const to = { function: (index) => place.get(index), global: (index) => global.get(index) };
  const filled = [...stubs.keys()].map((index) => encoded(place.get(index)));
  const active = [1, 2, ...encoded(tables.length), 0x41, 0, 0x0b, 0]; // from place 0, functions
  return assemble(module.head, [
    [SECTION.type, module.sections.get(SECTION.type)],
    [SECTION.import, vector(taking)],
    [SECTION.function, vector(cold.map((index) => encoded(functionTypes[index])))],
    [SECTION.element, joined(active, vector(filled))],
    [SECTION.code, vector(cold.map((index) => sized(renumbered(bodies[index - brought], to))))],
    [SECTION.data, vector(data.rest)],
  ]);
}
