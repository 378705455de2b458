// scripts/theme/404.html: where it sends a reader, and what it keeps of the numbers in the address.
import assert from "node:assert/strict";
import { test } from "node:test";
import vm from "node:vm";

import { plain, textOf } from "./load.mjs";

const SITE = "https://example.org/site/";
const SCRIPT = textOf("scripts/theme/404.html").match(/<script>\n([^]*?)<\/script>/)[1];
const KNOWN = { pages: [["", "Start"], ["head/", "Head"]], renamed: { reach: "head" } };

/* Where the page at ``address`` goes, and what it offers where it stays. */
async function opened(address) {
  const went = { to: "", offered: [], start: "", said: "" };
  const { origin, pathname, hash } = new URL(address);
  const parts = {
    known: { textContent: JSON.stringify(KNOWN) },
    start: { set href(where) { went.start = where; } },
    list: { replaceChildren: (...items) => { went.offered = items.map((one) => one.link.href); } },
    said: { get textContent() { return ""; }, set textContent(text) { went.said = text; } },
  };
  const document = {
    getElementById: (id) => parts[id],
    createElement: (name) => (name === "li" ? { append(link) { this.link = link; } } : {}),
  };
  const location = { origin, pathname, hash, replace: (where) => { went.to = where; } };
  const fetch = async (where) => ({
    ok: where === `${SITE}runtime/manifest.js`, text: async () => "window.SPRINGLINE_RUNTIME = {}",
  });
  vm.runInNewContext(SCRIPT, { document, location, fetch, URL });
  await new Promise((done) => setImmediate(done));
  return plain(went);
}

test("a # that mail spelled as a sign of the path is a # again", async () => {
  for (const [wrong, right] of [
    ["head/%23climb=20m&u=us", "head/#climb=20m&u=us"],
    ["head%23climb=20m", "head/#climb=20m"],
    ["reach/%23climb=20m", "head/#climb=20m"],
    ["head/%23v=1&pipe=No.%2323", "head/#v=1&pipe=No.%2323"],
  ]) assert.equal((await opened(SITE + wrong)).to, SITE + right);
});

test("numbers spelled so are kept where no page is meant", async () => {
  const { to, offered, start, said } = await opened(`${SITE}weather/%23climb=20m`);
  assert.equal(to, "");
  assert.deepEqual(offered, [`${SITE}head/#climb=20m`]);
  assert.equal(start, `${SITE}#climb=20m`);
  assert.match(said, /numbers are kept/);
});

test("an address that is only wrong keeps its numbers", async () => {
  assert.equal((await opened(`${SITE}reach#climb=20m`)).to, `${SITE}head/#climb=20m`);
});
