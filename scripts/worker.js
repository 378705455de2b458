/* Python, usually in a worker: starts Pyodide, hands questions to calc.bridge.
   Loaded as a module worker over http and as a classic script from a folder, so it
   has no import or export of its own; what it needs comes in the first message:
   {id, settings} to start, {id, request} to ask, {id, unpack} in a worker that only unpacks. */
(function () {
  "use strict";

  const inWorker = typeof WorkerGlobalScope !== "undefined" && self instanceof WorkerGlobalScope;

  /* The snapshot holds Python's memory with every calculator imported already. */
  async function unpack({ read, snapshot, memory }) {
    const packed = await read(snapshot);
    const reader = packed.body.pipeThrough(new DecompressionStream("gzip")).getReader();
    const content = new Uint8Array(memory.packed);
    let filled = 0;
    for (let part = await reader.read(); !part.done; part = await reader.read()) {
      content.set(part.value, filled);
      filled += part.value.length;
    }
    if (filled !== content.length) throw new Error("the snapshot is too short");
    return content;
  }

  /* Null in the page, in a folder, and where the browser allows a worker no other. */
  function secondWorker(base) {
    if (!inWorker || self.SpringlineFolder) return null;
    try {
      return new Worker(base + "worker.js", { type: "module" });
    } catch {
      return null;
    }
  }

  /* Unpacking takes as long as much of the start: another core may do it meanwhile. */
  async function unpackBeside(source) {
    const helper = secondWorker(source.base);
    if (!helper) return unpack(source);
    return new Promise((resolve, reject) => {
      helper.onmessage = ({ data }) => (data.reply ? resolve(data.reply) : reject(Error(data.error)));
      helper.onerror = (event) => {
        event.preventDefault();
        resolve(unpack(source));
      };
      helper.postMessage({ id: 1, unpack: source.settings });
    }).finally(() => helper.terminate());
  }

  /* ``create`` may see to the settings of Pyodide's WebAssembly before, and to its memory after. */
  async function load(source, options, create = (make, settings) => make(settings)) {
    const [{ loadPyodide }, { default: make }] = await Promise.all([
      source.module("pyodide.mjs"),
      source.module("pyodide.asm.mjs"),
    ]);
    return loadPyodide({
      indexURL: source.base,
      packageBaseUrl: source.base,
      createPyodideModule: (settings) => create(make, settings),
      ...options,
    });
  }

  /* Pyodide would wait for the whole memory before it compiles anything. It is given room for the
     snapshot's head, which it reads last; the pieces that differ from what the compiled code lays
     down by itself are put in their places once it has compiled. */
  async function fromSnapshot(source) {
    if (typeof DecompressionStream === "undefined") throw new Error("no DecompressionStream");
    const unpacked = unpackBeside(source);
    unpacked.catch(() => {}); // said below, where it is waited for
    const { bytes, head, pieces } = source.memory;
    const room = new Uint8Array(head);
    const python = await load(source, { _loadSnapshot: room }, async (make, settings) => {
      settings.INITIAL_MEMORY = bytes;
      const made = await make(settings);
      const content = await unpacked;
      room.set(content.subarray(0, head));
      let at = head;
      for (const [place, length] of pieces) {
        made.HEAPU8.set(content.subarray(at, at + length), place);
        at += length;
      }
      return made;
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

  /* Where the files come from: over http, or from text that the page of a folder holds. */
  function from(settings) {
    if (self.SpringlineFolder) return self.SpringlineFolder(settings);
    const { base } = settings;
    return {
      ...settings,
      settings,
      module: (name) => import(base + name),
      async read(name) {
        const reply = await fetch(base + name);
        if (!reply.ok) throw new Error(name + " could not be loaded (" + reply.status + ")");
        return reply;
      },
    };
  }

  /* {handle, way}: ``way`` says how Python was started. */
  async function start(settings) {
    const source = from(settings);
    if (!source.plain) {
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
        const reply = await unpack(from(wanted));
        self.postMessage({ id, reply }, [reply.buffer]);
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
