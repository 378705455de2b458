"""The functions of Pyodide that are not sent first: fetched when they are needed, right answers."""

import json

import pytest

from calc import bridge
from calc.sheets import KEYS, LATER_ROOMS
from tests.house.modules import modules

# The worker with a probe behind it: it starts Python, asks the questions, then has Python evaluate
# expressions, all before anything of the rest has come by itself.
PROBE = """
self.addEventListener("message", async ({ data: { probe } }) => {
  if (!probe) return;
  self.addEventListener("unhandledrejection", ({ reason }) => {
    self.postMessage({ failed: String(reason?.stack ?? reason) });
  });
  const { settings, requests, expressions } = probe;
  const { handle, way, source } = await self.SpringlineRuntime.start(settings);
  const replies = requests.map((request) => handle(request));
  const early = source.rest.isHere;
  const names = handle.__globals__;
  const evaluate = names.get("__builtins__").get("eval");
  const values = expressions.map((expression) => evaluate(expression, names));
  self.postMessage({ way, replies, early, values, late: source.rest.isHere });
});
"""
RUN = """async (probe) => {
  const { folder, ...told } = window.SPRINGLINE_RUNTIME;
  const base = new URL("runtime/" + folder + "/", location).href;
  probe.settings = { ...probe.settings, base, ...told };
  const worker = new Worker(base + "worker.js", { type: "module" });
  return new Promise((resolve, reject) => {
    worker.onmessage = ({ data }) => {
      if ("failed" in data) reject(new Error(data.failed));
      else resolve(data);
    };
    worker.onerror = (event) => reject(new Error(event.message));
    worker.postMessage({ probe });
  });
}"""
# What browsers import only when they are asked for it: none is in the memory that a start comes
# from, and all of it, with what it asks of Python's library, is in what is sent.
IMPORTED_LATER = [one.name for one in modules() if one.name.startswith(LATER_ROOMS)]
IMPORTS = (  # a sheet's fields are known to the pages that lead to it
    f"repr([name for name in __import__('sys').modules if name.startswith({LATER_ROOMS!r})"
    " and not name.endswith('.sheet')])",
    f"repr([__import__(name, None, None, ['all']).__name__ for name in {IMPORTED_LATER!r}])",
)
# What no calculator asks of Python: each runs functions of the rest, the first two read its tables.
EXPRESSIONS = (
    "__import__('unicodedata').name(chr(0x4e95)) + __import__('unicodedata').name(chr(0xe9))",
    "__import__('_codecs_jp').getcodec('shift_jis').encode(chr(0x4e95) + chr(0x6238))[0].hex()",
    "__import__('_codecs_cn').getcodec('gb18030').decode(bytes([0xbe, 0xae]))[0]",
    "repr(round(__import__('math').lgamma(7.5), 12))",
    "repr(round(__import__('cmath').atanh(0.25 + 0.5j).imag, 12))",
    "repr(sorted(__import__('itertools').permutations('abc'), reverse=True))",
    "repr(pow(3, -5, 10**40 + 7)) + repr((10**60).as_integer_ratio())",
)


def _probed(page, address, **probe):
    page.route(
        "**/worker.js",
        lambda route: route.fulfill(
            body=route.fetch().text() + PROBE, content_type="text/javascript"
        ),
    )
    # a page of the site's origin without the site's policy, which bars this look from outside
    page.route("**/look.html", lambda route: route.fulfill(body="", content_type="text/html"))
    page.goto(address + "look.html")
    page.add_script_tag(url=address + "runtime/manifest.js")
    return page.evaluate(RUN, probe)


@pytest.mark.parametrize("way", ["snapshot", "plain"])
def test_a_function_of_the_rest_is_fetched_when_it_is_needed_and_answers_as_elsewhere(
    page, address, way
):
    settings = {"plain": way == "plain", "kept": True}
    requests = [
        json.dumps({"op": "work", "sheet": key, "system": system})
        for key in KEYS
        for system in ("metric", "us")
    ]
    expressions = (*EXPRESSIONS, IMPORTS[1])
    seen = _probed(page, address, settings=settings, requests=requests, expressions=expressions)
    assert seen["way"] == way
    assert not seen["early"] and seen["late"]
    assert seen["values"] == [eval(expression) for expression in expressions]
    assert seen["replies"] == [bridge.handle(request) for request in requests]


def test_a_start_from_the_snapshot_holds_nothing_of_what_comes_later(page, address):
    """Nobody waits for what only few ask; it is imported where somebody does."""
    assert len(IMPORTED_LATER) > 15
    seen = _probed(page, address, settings={"kept": True}, requests=[], expressions=IMPORTS)
    assert (seen["way"], seen["values"]) == ("snapshot", ["[]", repr(IMPORTED_LATER)])
