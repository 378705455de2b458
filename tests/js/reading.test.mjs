// scripts/runtime/reading.js: what has come is kept, what is damaged or cut comes again.
import assert from "node:assert/strict";
import { createHash } from "node:crypto";
import { test } from "node:test";

import { load } from "./load.mjs";

const text = (letter) => new TextEncoder().encode(letter.repeat(1000));
const about = (content) => [content.length, 500, createHash("sha256").update(content).digest("base64")];
const FILES = { "a.bin": ["x", "y", "z"].map((letter) => about(text(letter))) };
const CONTENT = { "a.0.bin": text("x"), "a.1.bin": text("y"), "a.2.bin": text("z") };

/* {reading, asked, told}; ``answer(name, options, turn)`` gives a Response, or throws. */
function reader(answer = () => undefined, settings = {}, onLine = true) {
  const asked = [];
  const told = [];
  const online = [];
  const world = load("scripts/runtime/reading.js", {
    AbortController, ReadableStream, performance, Uint8Array,
    navigator: { onLine },
    addEventListener: (kind, heard) => online.push(heard),
    async fetch(address, options) {
      const name = address.split("/").pop();
      const turn = asked.filter((one) => one.name === name).length;
      asked.push({ name, cache: options.cache });
      const given = await answer(name, options, turn);
      return given || new Response(CONTENT[name]);
    },
  });
  const { Reading } = world.SpringlineReading;
  const reading = new Reading({ base: "https://example.org/r/", files: FILES, ...settings },
    (news) => told.push(news));
  return { reading, asked, told, world, online };
}

const letters = (content) => Buffer.from(content).toString().replace(/(.)\1+/g, "$1");
const names = (asked) => asked.map(({ name }) => name);

test("a file is put together from its pieces, each asked for once", async () => {
  const { reading, asked, told } = reader();
  assert.equal(letters(await reading.whole("a.bin")), "xyz");
  assert.equal(letters(await reading.whole("a.bin")), "xyz");
  assert.deepEqual(names(asked), ["a.0.bin", "a.1.bin", "a.2.bin"]);
  assert.deepEqual({ ...told.at(-1) }, { got: 1500, of: 1500, trouble: "" });
});

test("a piece that was cut half way comes again, and only that", async () => {
  const cut = () => new Response(new ReadableStream({
    start(controller) {
      controller.enqueue(text("y").subarray(0, 400));
      controller.error(new TypeError("network error"));
    },
  }));
  const { reading, asked, told } = reader((name, _, turn) => name === "a.1.bin" && !turn && cut());
  assert.equal(letters(await reading.whole("a.bin")), "xyz");
  assert.deepEqual(names(asked).sort(), ["a.0.bin", "a.1.bin", "a.1.bin", "a.2.bin"]);
  assert.equal(told.at(-1).got, 1500); // what came twice is counted once
});

test("a damaged piece is asked for again past the browser's store", async () => {
  const { reading, asked } = reader((name, _, turn) =>
    name === "a.0.bin" && !turn && new Response(text("w")));
  assert.equal(letters(await reading.whole("a.bin")), "xyz");
  assert.deepEqual(asked.filter(({ name }) => name === "a.0.bin").map(({ cache }) => cache),
    ["default", "reload"]);
});

test("a piece that stays damaged is said to be", async () => {
  const { reading } = reader((name) => name === "a.0.bin" && new Response(text("w")));
  await assert.rejects(reading.whole("a.bin"), { kind: "damaged", final: true });
});

for (const [what, reply] of [
  ["not there", () => new Response("", { status: 404 })],
  ["a page", () => new Response("<p>", { headers: { "Content-Type": "text/html" } })],
]) {
  test(`a file that is ${what} is missing at once`, async () => {
    const { reading, asked } = reader((name) => name === "a.0.bin" && reply());
    await assert.rejects(reading.whole("a.bin"), { kind: "missing", final: true });
    assert.equal(names(asked).filter((name) => name === "a.0.bin").length, 1);
  });
}

test("a line that stands still is given up, one that creeps is not", async () => {
  const creeping = new Response(new ReadableStream({
    async start(controller) {
      for (let at = 0; at < 1000; at += 100) {
        controller.enqueue(text("x").subarray(at, at + 100));
        await new Promise((resolve) => setTimeout(resolve, 20));
      }
      controller.close();
    },
  }));
  const standing = (signal) => new Response(new ReadableStream({
    start(controller) {
      signal.addEventListener("abort", () => controller.error(signal.reason));
    },
  }));
  const { reading, asked } = reader((name, { signal }, turn) =>
    ({ "a.0.bin": creeping, "a.1.bin": !turn && standing(signal) })[name], { still: 100 });
  assert.equal(letters(await reading.whole("a.bin")), "xyz");
  assert.deepEqual(names(asked).sort(), ["a.0.bin", "a.1.bin", "a.1.bin", "a.2.bin"]);
});

test("without a network it is said at once, and goes on when the network is back", async () => {
  const state = { onLine: false };
  const { reading, told, world, online } = reader(() => {
    if (!state.onLine) throw new TypeError("Failed to fetch");
  }, {}, false);
  const whole = reading.whole("a.bin");
  await new Promise((resolve) => setTimeout(resolve, 20));
  assert.equal(told.at(-1).trouble, "offline");
  state.onLine = world.navigator.onLine = true;
  for (const heard of online) heard();
  assert.equal(letters(await whole), "xyz");
  assert.equal(told.at(-1).trouble, "");
});

test("a host that refuses for a while is tried again, and that is said", async () => {
  const { reading, told } = reader((name, _, turn) =>
    name === "a.2.bin" && turn < 2 && new Response("", { status: 503 }));
  assert.equal(letters(await reading.whole("a.bin")), "xyz");
  assert.ok(told.some(({ trouble }) => trouble === "network"));
});

test("a file that is no longer wanted is stopped and not counted", async () => {
  const { reading, told } = reader((_, { signal }) => new Promise((_resolve, reject) =>
    signal.addEventListener("abort", () => reject(signal.reason))));
  const pieces = reading.pieces("a.bin");
  reading.stop("a.bin");
  for (const piece of pieces) await assert.rejects(piece, { kind: "stopped" });
  assert.equal(reading.of, 0);
  assert.deepEqual(told.filter(({ trouble }) => trouble), []);
});

test("what is at hand is not asked for", async () => {
  const { reading, asked } = reader(undefined, { get: async (name) => CONTENT[name] });
  assert.equal(letters(await reading.whole("a.bin")), "xyz");
  assert.deepEqual(asked, []);
});
