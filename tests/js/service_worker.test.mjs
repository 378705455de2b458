// scripts/runtime/service_worker.js: a release is kept whole or not at all, and never mixed with another.
import assert from "node:assert/strict";
import { createHash } from "node:crypto";
import { test } from "node:test";

import { load } from "./load.mjs";

const SCOPE = "https://example.org/site/";
const sha256 = (text) => "sha256-" + createHash("sha256").update(text).digest("base64");

/* The store of one origin: names of caches -> address -> text. */
function storage(held = {}) {
  const all = new Map(Object.entries(held).map(([name, one]) => [name, new Map(Object.entries(one))]));
  const cache = (store) => ({
    match: async (key) => (store.has(key) ? new Response(store.get(key)) : undefined),
    put: async (key, reply) => void store.set(key, await reply.text()),
    delete: async (request) => store.delete(request.url),
    keys: async () => [...store.keys()].map((url) => ({ url })),
  });
  return {
    all,
    async open(name) {
      if (!all.has(name)) all.set(name, new Map());
      return cache(all.get(name));
    },
    match: async (key) => {
      for (const store of all.values()) if (store.has(key)) return new Response(store.get(key));
      return undefined;
    },
    delete: async (name) => all.delete(name),
    keys: async () => [...all.keys()],
  };
}

/* A worker of release "two" of ``site`` (address -> text) before a ``network`` of the same kind. */
function worker(site, network, held) {
  const heard = {};
  const caches = storage(held);
  const files = Object.entries(site).map(([address, text]) => [address, sha256(text)]);
  load("scripts/runtime/service_worker.js", {
    addEventListener: (kind, what) => (heard[kind] = what),
    registration: { scope: SCOPE },
    clients: { matchAll: async () => [], claim: async () => {} },
    skipWaiting: async () => {},
    caches,
    async fetch(asked, { integrity } = {}) {
      const address = (asked.url ?? asked).slice(SCOPE.length);
      if (!Object.hasOwn(network, address)) throw new TypeError("Failed to fetch");
      const text = network[address];
      if (integrity && sha256(text) !== integrity) throw new TypeError("Failed integrity");
      return new Response(text);
    },
  }, `const RELEASE = "two"; const FILES = ${JSON.stringify(files)};\n`);

  async function tell(kind, event = {}) {
    const waiting = [];
    let reply;
    heard[kind]({
      ...event,
      waitUntil: (promise) => waiting.push(promise),
      respondWith: (promise) => (reply = promise),
    });
    if (reply) return reply;
    return Promise.all(waiting);
  }

  const open = (address, mode = "navigate", id = "tab") => tell("fetch", {
    request: { url: SCOPE + address, method: "GET", mode },
    resultingClientId: id,
    clientId: id,
  });
  return { caches, tell, open };
}

const SITE = { "": "start", "head/": "will it reach", "runtime/f/x.wasm": "code", "404.html": "no" };
const KEPT = `springline ${SCOPE} `;

test("installing keeps every file", async () => {
  const { caches, tell } = worker(SITE, SITE);
  await tell("install");
  assert.deepEqual([...caches.all.get(KEPT + "two").keys()].sort(),
    Object.keys(SITE).map((one) => SCOPE + one).sort());
});

test("a file of another release on the way stops the installing, and nothing is kept", async () => {
  const { caches, tell } = worker(SITE, { ...SITE, "head/": "a newer page" });
  await assert.rejects(tell("install"), /integrity/);
  assert.equal(caches.all.has(KEPT + "two"), false);
});

test("a page is answered from the store, however its address is spelled", async () => {
  const { tell, open } = worker(SITE, { ...SITE });
  await tell("install");
  for (const address of ["head/", "head/index.html", "head/?u=us", "head/#climb=50ft"]) {
    assert.equal(await (await open(address)).text(), "will it reach", address);
  }
});

test("a page without its last stroke is sent to the one that has it", async () => {
  const { tell, open } = worker(SITE, SITE);
  await tell("install");
  assert.equal((await open("head")).headers.get("Location"), SCOPE + "head/");
});

test("without a network an unknown page is said not to be here", async () => {
  const { tell, open } = worker(SITE, SITE);
  await tell("install");
  const reply = await open("nowhere/");
  assert.equal(reply.status, 404);
  assert.equal(await reply.text(), "no");
});

test("a tab of an older release goes on with that release's files", async () => {
  const tab = { [SCOPE + "?tab=old"]: "one" };
  const one = { [SCOPE + "assets/a.js"]: "older" };
  const site = { ...SITE, "assets/a.js": "newer" };
  const { tell, open } = worker(site, site, {
    [KEPT + "one"]: one, [`springline-tabs ${SCOPE}`]: tab,
  });
  await tell("install");
  assert.equal(await (await open("assets/a.js", "no-cors", "old")).text(), "older");
  assert.equal(await (await open("assets/a.js", "no-cors", "fresh")).text(), "newer");
});

test("an older release goes once no tab is of it", async () => {
  const { caches, tell } = worker(SITE, SITE, { [KEPT + "one"]: { [SCOPE]: "old start" } });
  await tell("install");
  await tell("activate");
  assert.deepEqual(await caches.keys(), [KEPT + "two", `springline-tabs ${SCOPE}`]);
});

test("another site of the same origin keeps its store", async () => {
  const other = "springline https://example.org/other/ one";
  const { caches, tell } = worker(SITE, SITE, { [other]: { "https://example.org/other/": "x" } });
  await tell("install");
  await tell("activate");
  assert.ok(caches.all.has(other));
});

const FIGURES = "assets/places/sun.js";

test("figures of places are kept once they were asked for, and not before", async () => {
  const { caches, tell, open } = worker({ ...SITE, [FIGURES]: "sun" }, { ...SITE, [FIGURES]: "sun" });
  await tell("install");
  assert.equal(caches.all.get(KEPT + "two").has(SCOPE + FIGURES), false);
  await open("head/");
  assert.equal(await (await open(FIGURES, "no-cors")).text(), "sun");
  await new Promise((done) => setTimeout(done));
  assert.equal(caches.all.get(KEPT + "two").get(SCOPE + FIGURES), "sun");
});

test("figures of places that were kept are kept in the next release too, as it has them", async () => {
  for (const now of ["sun", "better sun"]) {
    const site = { ...SITE, [FIGURES]: now };
    const { caches, tell } = worker(site, site, { [KEPT + "one"]: { [SCOPE + FIGURES]: "sun" } });
    await tell("install");
    assert.equal(caches.all.get(KEPT + "two").get(SCOPE + FIGURES), now);
  }
});
