// docs/assets/marks.js: "I don't know" in a table is one button, which comes to the cell in use.
import assert from "node:assert/strict";
import { test } from "node:test";

import { load } from "./load.mjs";

/* As much of an element as the button needs. */
class Part {
  constructor(tagName = "BUTTON") {
    Object.assign(this, { tagName, dataset: {}, attributes: {}, heard: {}, said: [] });
  }

  setAttribute(name, value) {
    this.attributes[name] = value;
  }

  getAttribute(name) {
    return this.attributes[name];
  }

  addEventListener(kind, what) {
    this.heard[kind] = what;
  }

  append(part) {
    part.home = this;
  }

  remove() {
    this.home = null;
  }

  focus() {}

  dispatchEvent(event) {
    this.said.push(event.type);
  }
}

function box(column, { value = "", name = "Sink", kind = "INPUT" } = {}) {
  const made = new Part(kind);
  const cell = Object.assign(new Part("TD"), { dataset: { column, label: "Flow of one" } });
  const row = { querySelector: () => (name === null ? null : { value: name }) };
  Object.assign(made, { cell, value, closest: (wanted) => (wanted === "tr" ? row : cell) });
  made.setAttribute("aria-label", "Flow of one, row 3");
  return made;
}

function table() {
  const wrap = new Part("DIV");
  wrap.dataset.name = "keep_up-taps";
  const marked = [{ dataset: { column: "flow" } }];
  wrap.querySelector = () => ({ content: { querySelectorAll: () => marked } });
  const button = new Part();
  const { window } = load("docs/assets/marks.js", {
    document: { createElement: () => button },
    Event: class {
      constructor(type) {
        this.type = type;
      }
    },
  });
  window.SpringlineMarks.inTables({ querySelectorAll: () => [wrap] });
  return { button, enter: (target) => wrap.heard.focusin({ target }), leave: wrap.heard.focusout };
}

test("it is in the cell in use alone, named after its row, and no stop for Tab", () => {
  const { button, enter, leave } = table();
  const flow = box("flow");
  enter(flow);
  assert.equal(button.home, flow.cell);
  assert.equal(button.attributes["aria-label"], "I don’t know: Flow of one, Sink (or type ?)");
  assert.equal(button.tabIndex, -1);
  leave({ relatedTarget: null });
  assert.equal(button.home, null);
});

test("a row without a name is named by its number", () => {
  const { button, enter } = table();
  enter(box("flow", { name: null }));
  assert.match(button.attributes["aria-label"], /Flow of one, row 3/);
});

test("a cell that must be known has none, nor has a menu", () => {
  const { button, enter } = table();
  for (const other of [box("at"), box("flow", { kind: "SELECT" })]) {
    enter(box("flow"));
    enter(other);
    assert.equal(button.home, null);
  }
});

test("pressed it says so, pressed again what stood there comes back", () => {
  const { button, enter } = table();
  const flow = box("flow", { value: "8" });
  enter(flow);
  assert.equal(button.attributes["aria-pressed"], "false");
  button.heard.click();
  assert.equal(flow.value, "?");
  assert.deepEqual(flow.said, ["input"]); // as if it were typed
  button.heard.click();
  assert.equal(flow.value, "8");
});

test("a question mark that was typed goes away too", () => {
  const { button, enter } = table();
  const flow = box("flow", { value: "?" });
  enter(flow);
  assert.equal(button.attributes["aria-pressed"], "true");
  button.heard.click();
  assert.equal(flow.value, "");
});
