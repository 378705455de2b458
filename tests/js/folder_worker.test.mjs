// scripts/runtime/folder_worker.js: files out of base64, unpacked.
import assert from "node:assert/strict";
import { test } from "node:test";
import { gzipSync } from "node:zlib";

import { load } from "./load.mjs";

const embedded = { "python.0.bin": gzipSync("a zip").toString("base64") };
const world = load("scripts/runtime/folder_worker.js", { importScripts() {} });
const folder = world.SpringlineFolder({ embedded, files: {} });

test("a file is given unpacked", async () => {
  assert.equal(Buffer.from(await folder.get("python.0.bin")).toString(), "a zip");
});

test("a file that is not there is named", async () => {
  await assert.rejects(folder.get("other.zip"), /other\.zip is not in this folder/);
});

test("Pyodide does not see that the worker is a classic one", () => {
  assert.equal(world.importScripts, undefined);
});
