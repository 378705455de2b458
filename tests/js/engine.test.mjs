// docs/assets/engine.js and backend.js: questions and replies meet; what fails is said in plain words,
// and tried again.
import assert from "node:assert/strict";
import { test } from "node:test";

import { load, page, textOf } from "./load.mjs";

const RUNTIME = { folder: "f0123", files: {}, memory: {}, lock: {} };
const BACKEND = textOf("docs/assets/backend.js");
const pause = (ms) => new Promise((resolve) => setTimeout(resolve, ms));

/* A page with a worker that answers with ``reply(message, worker)``: {reply} or {error, kind, lost};
   nothing is no answer. */
function started(reply, { options = {}, ...more } = {}) {
  const made = [];
  class Worker {
    constructor(source) {
      this.source = source;
      this.ended = false;
      made.push(this);
    }

    postMessage(message) {
      setTimeout(() => {
        const said = reply(message, this);
        if (said && !this.ended) this.onmessage?.({ data: { id: message.id, ...said } });
      }, 1);
    }

    tell(told) {
      this.onmessage({ data: { told } });
    }

    terminate() {
      this.ended = true;
    }
  }
  const world = load("docs/assets/engine.js", page(undefined, {
    SPRINGLINE_RUNTIME: RUNTIME, SPRINGLINE_OPTIONS: { silence: 1_000, ...options }, Worker, ...more,
  }), BACKEND);
  return { engine: world.SpringlineEngine, made, world };
}

const kind = (message) => (message.settings ? { reply: "snapshot" } : { reply: message.request });

test("a question starts Python once and each reply finds who asked", async () => {
  const { engine, made } = started(kind);
  const replies = await Promise.all([1, 2, 3].map((number) => engine.ask({ number })));
  assert.deepEqual(replies.map((one) => one.number), [1, 2, 3]);
  assert.equal(made.length, 1);
  assert.equal(engine.way, "snapshot");
  assert.equal(made[0].source, "https://example.org/site/runtime/f0123/worker.js");
});

test("an error of Python's leaves Python running", async () => {
  const { engine, made } = started((message) =>
    (message.settings ? { reply: "plain" } : { error: "no such sheet", lost: false }));
  await assert.rejects(engine.ask({}), /no such sheet/);
  assert.equal(made[0].ended, false);
  assert.equal(engine.ready, true);
});

test("after a fault of the runtime the question is put to another", async () => {
  const { engine, made } = started((message, worker) => {
    if (message.settings) return { reply: "plain" };
    if (worker === made[1]) return { reply: "{}" };
    return { error: "memory access out of bounds", lost: true };
  });
  assert.deepEqual({ ...await engine.ask({}) }, {});
  assert.equal(made.length, 2);
  assert.equal(made[0].ended, true);
});

test("a question that breaks two runtimes is given up, and the next one starts a third", async () => {
  const { engine, made } = started((message) => {
    if (message.settings) return { reply: "plain" };
    return made.length < 3 ? { error: "memory access out of bounds", lost: true } : { reply: "{}" };
  });
  await assert.rejects(engine.ask({}), /out of bounds/);
  assert.equal(made.length, 2);
  await engine.ask({});
  assert.equal(made.length, 3);
});

test("a worker that hangs is ended and its questions go to another", async () => {
  const { engine, made } = started((message, worker) => {
    if (message.settings) return { reply: "plain" };
    return worker === made[0] ? undefined : { reply: message.request };
  }, { options: { patience: 30 } });
  const replies = await Promise.all([1, 2].map((number) => engine.ask({ number })));
  assert.deepEqual(replies.map((one) => one.number), [1, 2]);
  assert.deepEqual(made.map((one) => one.ended), [true, false]);
});

test("a worker that works for long is left alone while it gives signs of life", async () => {
  const { engine, made } = started((message, worker) => {
    if (!message.settings) return { reply: message.request };
    for (const at of [20, 40, 60, 80]) setTimeout(() => worker.tell({ got: at, of: 80 }), at);
    setTimeout(() => worker.onmessage({ data: { id: message.id, reply: "plain" } }), 90);
    return undefined;
  }, { options: { silence: 45 } });
  await engine.start();
  assert.equal(made.length, 1);
});

test("a worker that falls silent as it starts is replaced once, then that is said", async () => {
  const { engine, made } = started(() => undefined, { options: { silence: 20 } });
  await assert.rejects(engine.start(), /gave no answer twice/);
  assert.equal(made.length, 2);
});

test("a start that fails without a network says so, and begins again when it is back", async () => {
  const world = { navigator: { onLine: false } };
  let down = true;
  const { engine, made, world: { heard } } = started((message) =>
    (down ? { error: "TypeError: Load failed", kind: "network", lost: true } : kind(message)), world);
  await assert.rejects(engine.start(), /this device is offline/);
  down = false;
  world.navigator.onLine = true;
  heard.online();
  await pause(20);
  assert.equal(engine.ready, true);
  assert.equal(made.length, 2);
});

test("what holds a start up is said at once; it goes on, and that is said too", async () => {
  let id = 0;
  const { engine, made, world: { told } } = started((message) => {
    if (message.settings) id = message.id;
  });
  const waiting = engine.start();
  await pause(10);
  made[0].tell({ got: 1, of: 4, trouble: "network" });
  await assert.rejects(waiting, /the network does not answer/);
  made[0].tell({ got: 2, of: 4, trouble: "" });
  made[0].onmessage({ data: { id, reply: "plain" } });
  await pause(10);
  assert.equal(engine.ready, true);
  assert.equal(await engine.start(), "plain"); // who asks now is not told what was in the way before
  assert.deepEqual(told.map(({ type }) => type),
    ["springline-progress", "springline-progress", "springline-live"]);
  assert.match(told[0].detail.trouble, /the network does not answer/);
  assert.deepEqual({ ...told[1].detail }, { loaded: 2, total: 4, trouble: "" });
  assert.equal(made.length, 1);
});

test("whoever asks while a start is held up has it try again", async () => {
  const asked = [];
  const { engine, made } = started((message) => {
    asked.push(message.again ? "again" : "start");
  });
  engine.start().catch(() => {});
  await pause(10);
  made[0].tell({ got: 1, of: 4, trouble: "network" });
  engine.start().catch(() => {});
  await pause(10);
  assert.deepEqual(asked, ["start", "again"]);
});

for (const [what, manifest, words] of [
  ["is gone with its release", 'SPRINGLINE_RUNTIME = {"folder":"another"}', /reload the page/],
  ["is missing", 'SPRINGLINE_RUNTIME = {"folder":"f0123"}', /missing on this host/],
]) {
  test(`a file that ${what} is told so`, async () => {
    const { engine } = started(() => ({ error: "missing", kind: "missing", lost: true }), {
      fetch: async () => new Response(manifest),
    });
    await assert.rejects(engine.start(), words);
  });
}

test("a host that forbids WebAssembly is named as the reason, and nobody waits", async () => {
  const { engine } = started(() => ({ error: "policy", kind: "policy", lost: true }));
  const waiting = engine.settled(3_000);
  await assert.rejects(engine.start(), /forbids WebAssembly/);
  const before = Date.now();
  await waiting;
  await engine.settled(3_000);
  assert.ok(Date.now() - before < 2_000);
});

test("work that can wait goes on at the start, or after so long where nothing starts", async () => {
  const { engine } = started(kind);
  const before = Date.now();
  await engine.settled(20);
  assert.ok(Date.now() - before >= 19);
  const waiting = engine.settled(3_000);
  await engine.start();
  await waiting;
  assert.ok(Date.now() - before < 2_000);
});

test("work that can wait does so for as long as a start moves on", async () => {
  let tell = null;
  const { engine } = started((message, worker) => {
    if (message.settings) tell = (got) => worker.tell({ got, of: 9, trouble: "" });
  });
  engine.start();
  while (!tell) await pause(1);
  let gone = false;
  const waiting = engine.settled(200).then(() => (gone = true));
  for (let got = 1; got < 9; got += 1) {
    tell(got);
    await pause(10);
  }
  assert.equal(gone, false);
  assert.equal(engine.starting, true);
  await waiting; // nothing comes any more
});

test("after two silent workers it is told from a start that failed", async () => {
  const { engine } = started((message) => (message.settings ? { reply: "plain" } : undefined),
    { options: { patience: 20 } });
  await assert.rejects(engine.ask({}), /^Error: the calculator gave no answer twice/);
  assert.equal(engine.ready, false);
  assert.equal(engine.way, "plain");
});
