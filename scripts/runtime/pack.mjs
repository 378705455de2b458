// Writes name.br and name.gz beside each file named on standard input (JSON), where that is smaller.
// node scripts/runtime/pack.mjs
import { readFileSync } from "node:fs";
import { readFile, writeFile } from "node:fs/promises";
import { promisify } from "node:util";
import { brotliCompress, constants, gzip } from "node:zlib";

const AT_ONCE = 4;
const PACK = {
  br: (content) => promisify(brotliCompress)(content, {
    params: {
      [constants.BROTLI_PARAM_QUALITY]: constants.BROTLI_MAX_QUALITY,
      [constants.BROTLI_PARAM_SIZE_HINT]: content.length,
    },
  }),
  gz: (content) => promisify(gzip)(content, { level: 9 }),
};

async function pack(name) {
  const content = await readFile(name);
  for (const [end, packed] of Object.entries(PACK)) {
    const made = await packed(content);
    if (made.length < content.length) await writeFile(`${name}.${end}`, made);
  }
}

const names = JSON.parse(readFileSync(0, "utf8"));
await Promise.all(Array.from({ length: AT_ONCE }, async () => {
  for (let name = names.pop(); name; name = names.pop()) await pack(name);
}));
