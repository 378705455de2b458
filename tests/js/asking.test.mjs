// docs/assets/asking.js: what is said where no answer comes.
import assert from "node:assert/strict";
import { test } from "node:test";

import { load, page } from "./load.mjs";

/* What a calculator says of an error, with Python as it is then. */
function said(engine, message) {
  const heard = [];
  const world = page(undefined, { SpringlineEngine: engine });
  world.document.addEventListener = () => {};
  const { Asking } = load("docs/assets/asking.js", world).SpringlineAsking;
  new Asking({ broken: (sentence) => heard.push(sentence) }).failed(new Error(message));
  return heard.join();
}

test("what was never live could not start", () => {
  assert.equal(said({ ready: false, way: null }, "the calculator gave no answer twice"),
    "The calculator could not start (the calculator gave no answer twice). Change a number to try again.");
});

test("what answered before has stopped", () => {
  assert.equal(said({ ready: false, way: "plain" }, "the calculator gave no answer twice"),
    "The calculator stopped (the calculator gave no answer twice). Change a number to try again.");
});

test("an error of Python's stops nothing", () => {
  assert.match(said({ ready: true, way: "plain" }, "no such sheet"), /^This could not be worked out/);
});
