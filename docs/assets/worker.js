/* Python, usually in a worker: starts Pyodide, hands questions to calc.bridge.
   Loaded as a module worker over http and as a classic script from a folder, so it
   has no import or export of its own; what it needs comes in the "start" message. */
(function () {
  "use strict";

  /* The snapshot holds Python's memory with every calculator imported already. */
  async function unpack(source, name) {
    const packed = await source.read(name);
    const stream = new Blob([packed]).stream().pipeThrough(new DecompressionStream("gzip"));
    return new Uint8Array(await new Response(stream).arrayBuffer());
  }

  async function load(source, options) {
    const [{ loadPyodide }, { default: createPyodideModule }] = await Promise.all([
      source.module("pyodide.mjs"),
      source.module("pyodide.asm.mjs"),
    ]);
    return loadPyodide({
      indexURL: source.base,
      packageBaseUrl: source.base,
      createPyodideModule,
      ...options,
    });
  }

  async function fromSnapshot(source) {
    if (typeof DecompressionStream === "undefined") throw new Error("no DecompressionStream");
    const memory = unpack(source, source.snapshot);
    memory.catch(() => {}); // said by load, which waits for it
    const python = await load(source, { _loadSnapshot: memory });
    return python.pyimport("calc.bridge").handle;
  }

  async function fromWheel(source) {
    const wheel = source.read(source.wheel);
    wheel.catch(() => {}); // said below, where it is waited for
    const python = await load(source, {});
    python.unpackArchive(await wheel, "wheel");
    return python.pyimport("calc.bridge").handle;
  }

  /* Files over http, below ``base``. */
  function served({ base, wheel, snapshot }) {
    return {
      base,
      wheel,
      snapshot,
      module: (name) => import(base + name),
      async read(name) {
        const reply = await fetch(base + name);
        if (!reply.ok) throw new Error(name + " could not be loaded (" + reply.status + ")");
        return reply.arrayBuffer();
      },
    };
  }

  /* {handle, way}: ``way`` says how Python was started. */
  async function start(settings) {
    const source = self.SpringlineFolder ? self.SpringlineFolder(settings) : served(settings);
    if (!settings.plain) {
      try {
        return { handle: await fromSnapshot(source), way: "snapshot" };
      } catch (error) {
        console.info("Springline starts without its snapshot: " + error.message);
      }
    }
    return { handle: await fromWheel(source), way: "plain" };
  }

  /* Of a Python traceback the last line says what went wrong. */
  function lastLine(error) {
    return String(error.message || error).trim().split("\n").pop();
  }

  self.SpringlineRuntime = { start };

  if (typeof WorkerGlobalScope === "undefined" || !(self instanceof WorkerGlobalScope)) return;

  let runtime = null;
  self.addEventListener("message", async ({ data }) => {
    const { id, settings, request } = data;
    try {
      if (settings) {
        runtime = await start(settings);
        self.postMessage({ id, reply: runtime.way });
      } else {
        self.postMessage({ id, reply: runtime.handle(request) });
      }
    } catch (error) {
      // a Python error leaves Python whole; after any other it cannot be trusted
      const lost = error.name !== "PythonError";
      self.postMessage({ id, error: lastLine(error), lost });
    }
  });
})();
