// scripts/folder_worker.js: files out of base64, gzipped or not as their names say.
import assert from "node:assert/strict";
import { test } from "node:test";
import { gzipSync } from "node:zlib";

import { load } from "./load.mjs";

const packed = (text) => gzipSync(text).toString("base64");
const files = { "pyodide-lock.json": packed('{"packages": {}}'), "memory.bin.gz": packed("memory") };

const asked = [];
const world = load("scripts/folder_worker.js", { fetch: (address) => asked.push(address) });
const source = world.SpringlineFolder({ files, wheel: "calc.whl" });

test("a file is given unpacked, with its type", async () => {
  const reply = await source.read("pyodide-lock.json");
  assert.equal(reply.headers.get("Content-Type"), "application/json");
  assert.equal(await reply.text(), '{"packages": {}}');
});

test("a file that is called .gz stays packed", async () => {
  const reply = await source.read("memory.bin.gz");
  assert.deepEqual(Buffer.from(await reply.arrayBuffer()), gzipSync("memory"));
});

test("a file that is not there is named", async () => {
  await assert.rejects(source.read("other.zip"), /other\.zip is not in this folder/);
});

test("the settings go on to whoever starts Python", () => {
  assert.equal(source.wheel, "calc.whl");
});
