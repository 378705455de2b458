"""Python's memory is put back in pieces; nothing a reader's start writes may lie between them."""

import json

import pytest

from tests.conftest import visit

# what a start has written before the pieces come: how many bytes, and those outside the pieces
LOOK = """async ([base, { memory, lock, files }]) => {
  const [{ loadPyodide }, { default: make }] =
    await Promise.all([import(base + "pyodide.js"), import(base + "pyodide.asm.js")]);
  const pieces = files["first.wasm"].map((_, index) => fetch(`${base}first.${index}.wasm`));
  const parts = await Promise.all(pieces.map(async (reply) => (await reply).blob()));
  const first = await new Blob(parts).arrayBuffer();
  let compiled = null;
  const enough = new Error("seen enough");
  let begun = null;
  await loadPyodide({
    indexURL: base,
    packageBaseUrl: base,
    lockFileContents: lock,
    stdLibURL: new Uint8Array(0),
    _loadSnapshot: new Uint8Array(memory.head),
    async instantiate(imports, receive) {
      imports.springline = { need() {} };
      const { instance, module } = await WebAssembly.instantiate(first, imports);
      compiled = new Uint8Array(instance.exports.memory.buffer).slice();
      const theirs = Object.entries(instance.exports).filter(([name]) => !name.startsWith("+"));
      receive({ exports: Object.fromEntries(theirs) }, module);
    },
    async createPyodideModule(settings) {
      settings.INITIAL_MEMORY = memory.bytes;
      begun = (await make(settings)).HEAPU8.slice();
      throw enough;
    },
  }).catch((error) => { if (error !== enough) throw error; });
  let written = 0;
  const outside = [];
  for (let at = 0; at < begun.length; at += 1) {
    if (begun[at] === compiled[at]) continue;
    written += 1;
    const inside = memory.pieces.some(([place, length]) => place <= at && at < place + length);
    if (!inside) outside.push(at);
  }
  return { size: begun.length, written, outside };
}"""


@pytest.mark.parametrize("locale", ["en-GB", "sr-Latn-RS-u-nu-latn"])
def test_a_start_writes_nothing_between_the_pieces_of_the_snapshot(browser, address, locale):
    context = visit(browser, locale=locale)
    page = context.new_page()
    # a page of the site's origin without the site's policy, which bars this look from outside
    page.route("**/look.html", lambda route: route.fulfill(body="", content_type="text/html"))
    page.goto(address + "look.html")
    page.add_script_tag(url=address + "runtime/manifest.js")
    told = page.evaluate("window.SPRINGLINE_RUNTIME")
    seen = page.evaluate(LOOK, [f"{address}runtime/{told['folder']}/", told])
    assert seen["size"] == told["memory"]["bytes"]
    assert seen["written"] > 0
    assert seen["outside"] == [], json.dumps(told["memory"]["pieces"])
    context.close()
