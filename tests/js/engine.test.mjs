// docs/assets/engine.js: questions and replies meet; what fails is said in plain words.
import assert from "node:assert/strict";
import { test } from "node:test";

import { load, page } from "./load.mjs";

const RUNTIME = { folder: "f", wheel: "calc.whl", snapshot: "s.gz", memory: {}, embedded: null };

/* A page with a worker that answers with ``reply(message)``: {reply} or {error, lost}. */
function started(reply, more = {}) {
  const made = [];
  class Worker {
    constructor(source) {
      this.source = source;
      this.ended = false;
      made.push(this);
    }

    postMessage(message) {
      setTimeout(() => this.onmessage?.({ data: { id: message.id, ...reply(message) } }), 1);
    }

    terminate() {
      this.ended = true;
    }
  }
  const world = load("docs/assets/engine.js", page(undefined, {
    SPRINGLINE_RUNTIME: RUNTIME, Worker, ...more,
  }));
  return { engine: world.SpringlineEngine, made };
}

const kind = (message) => (message.settings ? { reply: "snapshot" } : { reply: message.request });

test("a question starts Python once and each reply finds who asked", async () => {
  const { engine, made } = started(kind);
  const replies = await Promise.all([1, 2, 3].map((number) => engine.ask({ number })));
  assert.deepEqual(replies.map((one) => one.number), [1, 2, 3]);
  assert.equal(made.length, 1);
  assert.equal(engine.way, "snapshot");
  assert.equal(made[0].source, "https://example.org/site/runtime/f/worker.js");
});

test("an error of Python's leaves Python running", async () => {
  const { engine, made } = started((message) =>
    (message.settings ? { reply: "plain" } : { error: "no such sheet", lost: false }));
  await assert.rejects(engine.ask({}), /no such sheet/);
  assert.equal(made[0].ended, false);
  assert.equal(engine.ready, true);
});

test("after a fault of the runtime the next question starts another", async () => {
  let broken = true;
  const { engine, made } = started((message) => {
    if (message.settings) return { reply: "plain" };
    if (!broken) return { reply: "{}" };
    broken = false;
    return { error: "memory access out of bounds", lost: true };
  });
  await assert.rejects(engine.ask({}), /out of bounds/);
  assert.equal(made[0].ended, true);
  await engine.ask({});
  assert.equal(made.length, 2);
});

test("a start that fails without a network says so", async () => {
  const { engine } = started(() => ({ error: "TypeError: Load failed" }), {
    navigator: { onLine: false },
  });
  await assert.rejects(engine.start(), /this device is offline/);
});

test("work that can wait goes on at the start, or after so long", async () => {
  const { engine } = started(kind);
  const before = Date.now();
  await engine.settled(20);
  assert.ok(Date.now() - before >= 19);
  const waiting = engine.settled(3_000);
  await engine.start();
  await waiting;
  assert.ok(Date.now() - before < 2_000);
});
