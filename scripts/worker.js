/* Python, usually in a worker: starts Pyodide, hands questions to calc.bridge.
   Loaded as a module worker over http and as a classic script from a folder, so it
   has no import or export of its own; what it needs comes in the first message:
   {id, settings} to start, {id, request} to ask, {id, unpack} in a worker that only unpacks. */
(function () {
  "use strict";

  const inWorker = typeof WorkerGlobalScope !== "undefined" && self instanceof WorkerGlobalScope;

  /* The snapshot holds Python's memory with every calculator imported already. */
  async function unpack(source) {
    const packed = await source.read(source.snapshot);
    return new Response(packed.body.pipeThrough(new DecompressionStream("gzip"))).arrayBuffer();
  }

  /* Unpacking takes as long as much of the start: another core may do it meanwhile. */
  async function unpackBeside(settings) {
    const helper = new Worker(settings.base + "worker.js", { type: "module" });
    return new Promise((resolve, reject) => {
      helper.onmessage = ({ data }) => (data.reply ? resolve(data.reply) : reject(Error(data.error)));
      helper.onerror = (event) => {
        event.preventDefault();
        reject(Error(event.message || "no second worker"));
      };
      helper.postMessage({ id: 1, unpack: settings });
    }).finally(() => helper.terminate());
  }

  async function load(source, options, filled) {
    const [{ loadPyodide }, { default: createPyodideModule }] = await Promise.all([
      source.module("pyodide.mjs"),
      source.module("pyodide.asm.mjs"),
    ]);
    return loadPyodide({
      indexURL: source.base,
      packageBaseUrl: source.base,
      createPyodideModule: async (settings) => {
        const made = await createPyodideModule(settings);
        await filled?.();
        return made;
      },
      ...options,
    });
  }

  async function fromSnapshot(source) {
    if (typeof DecompressionStream === "undefined") throw new Error("no DecompressionStream");
    const memory = source.unpack();
    memory.catch(() => {}); // said below, where it is waited for
    // Pyodide would wait for the memory before it compiles anything: it gets the room at once
    const room = new Uint8Array(source.memory);
    const python = await load(source, { _loadSnapshot: room }, async () => {
      const content = new Uint8Array(await memory);
      if (content.length !== room.length) throw new Error("the snapshot has another length");
      room.set(content);
    });
    return python.pyimport("calc.bridge").handle;
  }

  async function fromWheel(source) {
    const wheel = source.read(source.wheel).then((reply) => reply.arrayBuffer());
    wheel.catch(() => {}); // said below, where it is waited for
    const python = await load(source, {});
    python.unpackArchive(await wheel, "wheel");
    return python.pyimport("calc.bridge").handle;
  }

  /* Files over http, below ``base``. */
  function served(settings) {
    const { base } = settings;
    const beside = inWorker && typeof Worker !== "undefined";
    const source = {
      ...settings,
      unpack: () => (beside ? unpackBeside(settings).catch(() => unpack(source)) : unpack(source)),
      module: (name) => import(base + name),
      async read(name) {
        const reply = await fetch(base + name);
        if (!reply.ok) throw new Error(name + " could not be loaded (" + reply.status + ")");
        return reply;
      },
    };
    return source;
  }

  /* Files held as text by the page, below ``base`` too. */
  function embedded(settings) {
    const source = { ...self.SpringlineFolder(settings), memory: settings.memory };
    source.unpack = () => unpack(source);
    return source;
  }

  /* {handle, way}: ``way`` says how Python was started. */
  async function start(settings) {
    const source = self.SpringlineFolder ? embedded(settings) : served(settings);
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

  if (!inWorker) return;

  let runtime = null;
  self.addEventListener("message", async ({ data }) => {
    const { id, settings, request, unpack: wanted } = data;
    try {
      if (wanted) {
        const reply = await unpack(served(wanted));
        self.postMessage({ id, reply }, [reply]);
      } else if (settings) {
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
