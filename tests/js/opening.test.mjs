// docs/assets/opening.js: the address that leaves the page, in links, letters, print.
import assert from "node:assert/strict";
import { test } from "node:test";

import { load, page } from "./load.mjs";

function address(where, published) {
  const world = page(where, {
    SpringlineLink: { opensOnAnswer: () => true, holdsNumbers: () => true },
    matchMedia: () => ({ matches: false, addEventListener() {} }),
  });
  world.document.addEventListener = () => {};
  world.document.querySelector = (what) =>
    what.includes("canonical") && published ? { href: published } : null;
  const { Opening } = load("docs/assets/opening.js", world).SpringlineOpening;
  return new Opening({ fresh: true, link: "v=1&climb=22m&c=abcde" }).address();
}

test("from a disk it leads to the site, where one is known", () => {
  const site = "https://example.org/site/head/";
  assert.equal(address("file:///stick/ana/springline/head.html#v=1", site),
    `${site}#v=1&climb=22m&c=abcde`);
});

test("from a disk it tells nothing of the disk where no site is known", () => {
  assert.equal(address("file:///stick/ana/springline/head.html#v=1"),
    "head.html#v=1&climb=22m&c=abcde");
});

test("elsewhere it is the page's own", () => {
  assert.equal(address("https://example.org/site/head/?q=1#old"),
    "https://example.org/site/head/?q=1#v=1&climb=22m&c=abcde");
});
