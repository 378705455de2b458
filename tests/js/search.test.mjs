// docs/assets/search.js: the search index waits for the calculator; other workers do not.
import assert from "node:assert/strict";
import { test } from "node:test";

import { load, page, plain } from "./load.mjs";

function opened(address, calculator = true) {
  const sent = [];
  const settled = {};
  const form = { addEventListener: (_kind, what) => (settled.focus = what) };
  const world = page(address, {
    Worker: class {
      postMessage(...message) {
        sent.push(...message);
      }
    },
    XMLHttpRequest: class {
      open() {}

      send(what) {
        sent.push(what);
      }
    },
    SpringlineEngine: { settled: () => new Promise((go) => (settled.go = go)) },
  });
  world.document.forms.namedItem = () => form;
  world.document.querySelector = (what) => (calculator && what === "section.sl" ? {} : null);
  const { Worker, XMLHttpRequest } = load("docs/assets/search.js", world);
  return { Worker, XMLHttpRequest, sent, settled };
}

const SEARCH = "https://example.org/site/assets/javascripts/workers/search.123.min.js";

test("what the search is told waits until the calculator is live", async () => {
  const { Worker, sent, settled } = opened();
  const worker = new Worker(SEARCH);
  worker.postMessage("index");
  assert.deepEqual(plain(sent), []);
  settled.go();
  await new Promise((go) => setTimeout(go, 150));
  assert.deepEqual(plain(sent), ["index"]);
});

test("the index is fetched once the calculator is live, anything else at once", async () => {
  const { XMLHttpRequest, sent, settled } = opened();
  for (const name of ["search/search_index.json", "versions.json"]) {
    const request = new XMLHttpRequest();
    request.open("GET", `https://example.org/site/${name}`);
    request.send(name);
  }
  await new Promise((go) => setTimeout(go, 10));
  assert.deepEqual(plain(sent), ["versions.json"]);
  settled.go();
  await new Promise((go) => setTimeout(go, 150));
  assert.deepEqual(plain(sent), ["versions.json", "search/search_index.json"]);
});

test("a reader who turns to the search does not wait", async () => {
  const { Worker, sent, settled } = opened();
  const worker = new Worker(SEARCH);
  worker.postMessage("index");
  worker.postMessage("more");
  settled.focus();
  worker.postMessage("asked");
  await new Promise((go) => setTimeout(go, 1));
  assert.deepEqual(plain(sent), ["index", "more", "asked"]);
});

for (const [why, address, calculator] of [
  ["the link searches", "https://example.org/site/?q=pump", true],
  ["the page holds no calculator", "https://example.org/site/", false],
  ["the page lies on a disk", "file:///site/head.html", true],
]) {
  test(`nothing waits where ${why}`, () => {
    const { Worker, sent } = opened(address, calculator);
    new Worker(SEARCH).postMessage("index");
    assert.deepEqual(plain(sent), ["index"]);
  });
}

test("another worker is none of its business", () => {
  const { Worker, sent } = opened();
  new Worker("https://example.org/site/runtime/f/worker.js").postMessage("start");
  assert.deepEqual(plain(sent), ["start"]);
});
