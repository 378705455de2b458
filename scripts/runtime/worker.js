/* Python, usually in a worker: starts Pyodide, hands questions to calc.bridge.
   Loaded as a module worker over http and as a classic script from a folder, so it
   has no import or export of its own; what it needs comes in the first message:
   {id, settings} to start, {id, request} to ask, {again} to try the network at once, and, in a worker
   that only unpacks, {unpack: bytes} and then the pieces. */
(function () {
  "use strict";

  const { Reading, fault, pieceName } = self.SpringlineReading;
  const { unpacker, unpackerBeside, told } = self.SpringlineUnpacking;
  const inWorker = typeof WorkerGlobalScope !== "undefined" && self instanceof WorkerGlobalScope;
  const mayWait = inWorker && typeof XMLHttpRequest !== "undefined"; // in the middle of a question
  const SCRIPTS = ["pyodide.js", "pyodide.asm.js"];
  const FIRST = "first.wasm"; // the functions that a start and the answers run
  const REST = "rest.wasm"; // all others
  const LIBRARY = "python.bin"; // the library and calc, a gzipped zip
  const SNAPSHOT = "snapshot.bin"; // Python's memory with every calculator imported, gzipped
  const KNOWN = 100_000; // bytes after which the line's speed is known
  const PATIENCE = 4_000; // ms; about what a start from the library takes longer on a phone: our choice
  const LATER = 1_000; // ms after an answer
  const OFTEN = 100; // ms
  const EMPTY = new Uint8Array([0, 0x61, 0x73, 0x6d, 1, 0, 0, 0]); // the smallest module

  /* What is in the snapshot. Given up where the line has become so slow that the library, which is
     here, is the shorter way. */
  async function unpacked(source) {
    const { reading, memory } = source;
    const pieces = reading.pieces(SNAPSHOT);
    const target = (await unpackerBeside(source, memory.packed)) || unpacker(memory.packed);
    let slow = 0; // looks one after the other; after one, what has come may only not be counted yet
    const tooSlow = new Promise((_, reject) => {
      const look = () => {
        const here = reading.has(FIRST, LIBRARY) && !reading.has(SNAPSHOT);
        slow = here && reading.until(SNAPSHOT) > 2 * PATIENCE ? slow + 1 : 0;
        if (slow > 2) reject(new Error("the line is slow"));
      };
      source.looking = setInterval(look, PATIENCE / 8);
    });
    try {
      for (const piece of pieces) target.write(await Promise.race([piece, tooSlow]));
      return await target.done();
    } finally {
      clearInterval(source.looking);
      reading.stop(SNAPSHOT);
      target.stop();
    }
  }

  /* Whether the snapshot, twice as many bytes as a start from the library needs, is the quicker way. */
  async function isLineFast({ reading, kept, get }) {
    if (kept || get) return true; // all is on this device
    const { saveData, effectiveType } = navigator.connection || {};
    if (saveData || /^(slow-2g|2g|3g)$/.test(effectiveType)) return false;
    return new Promise((resolve) => {
      const look = () => {
        const fast = reading.got > KNOWN && reading.until(SNAPSHOT) < PATIENCE;
        if (!fast && !reading.has(FIRST, LIBRARY)) return;
        reading.heard.delete(look);
        resolve(fast);
      };
      reading.heard.add(look);
      look();
    });
  }

  /* Compiled while it comes; a browser that cannot do that gets it whole. */
  async function compiled(reading, file) {
    if (WebAssembly.compileStreaming) {
      const headers = { "Content-Type": "application/wasm" }; // whatever the host said
      return WebAssembly.compileStreaming(new Response(reading.stream(file), { headers }));
    }
    return WebAssembly.compile(await reading.whole(file));
  }

  /* The functions that nobody waits for. WebAssembly asks for them in the middle of one of the others,
     so where they have not come by then they are fetched while all else stands still. */
  class Rest {
    constructor(source, exported) {
      Object.assign(this, { source, exported });
    }

    get isHere() {
      return this.exported["+ready"].value === 1;
    }

    #settle(module) {
      if (this.isHere) return;
      new WebAssembly.Instance(module, { first: this.exported });
      this.exported["+ready"].value = 1;
    }

    async later() {
      if (this.isHere) return;
      this.#settle(await compiled(this.source.reading, REST));
    }

    now() {
      console.info("Springline fetches the rest of Python in the middle of a question");
      const { base, files } = this.source;
      const parts = files[REST].map((_, index) =>
        fetchedAtOnce(base + pieceName(REST, index)));
      const content = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
      parts.reduce((at, part) => (content.set(part, at), at + part.length), 0);
      this.#settle(new WebAssembly.Module(content));
    }
  }

  function fetchedAtOnce(address) {
    const request = new XMLHttpRequest();
    request.open("GET", address, false);
    request.responseType = "arraybuffer";
    request.send();
    if (request.status !== 200) throw fault("network");
    return new Uint8Array(request.response);
  }

  /* ``create`` may see to the settings of Pyodide's WebAssembly before, and to its memory after. */
  async function load(source, options, create = (make, settings) => make(settings)) {
    const [{ loadPyodide }, { default: make }] = await source.scripts;
    const module = await source.module;
    const library = await source.library;
    return new Promise((resolve, reject) => {
      const instantiate = async (imports, receive) => {
        try {
          receive({ exports: await instance(source, module, imports) }, module);
        } catch (error) {
          reject(error); // Pyodide would wait for ever
        }
      };
      loadPyodide({
        indexURL: source.base,
        packageBaseUrl: source.base,
        lockFileContents: source.lock,
        stdLibURL: library,
        instantiate,
        createPyodideModule: (settings) => create(make, settings),
        ...options,
      }).then(resolve, reject);
    });
  }

  /* The exports that Pyodide is to see. */
  async function instance(source, module, imports) {
    let rest = null;
    imports.springline = { need: () => rest.now() };
    const { exports: all } = await WebAssembly.instantiate(module, imports);
    rest = source.rest = new Rest(source, all);
    if (!mayWait || source.get) await rest.later();
    return Object.fromEntries(Object.entries(all).filter(([name]) => !name.startsWith("+")));
  }

  /* Pyodide would wait for the whole memory before it compiles anything. It is given room for the
     snapshot's head, which it reads last; the pieces that differ from what the compiled code lays
     down by itself are put in their places once it has compiled. */
  async function fromSnapshot(source) {
    const content = unpacked(source);
    content.catch(() => {}); // said below, where it is waited for
    const { bytes, head, pieces } = source.memory;
    const room = new Uint8Array(head);
    const python = await load(source, { _loadSnapshot: room }, async (make, settings) => {
      settings.INITIAL_MEMORY = bytes;
      const made = await make(settings);
      const memory = await content;
      room.set(memory.subarray(0, head));
      let at = head;
      for (const [place, length] of pieces) {
        made.HEAPU8.set(memory.subarray(at, at + length), place);
        at += length;
      }
      return made;
    });
    return python.pyimport("calc.bridge").handle;
  }

  async function fromLibrary(source) {
    const python = await load(source, {});
    return python.pyimport("calc.bridge").handle;
  }

  async function unzipped(content) {
    const stream = new Blob([content]).stream().pipeThrough(new DecompressionStream("gzip"));
    return new Uint8Array(await new Response(stream).arrayBuffer());
  }

  /* Scripts come by import, which says nothing on the way and keeps a failure for good: another
     address is tried after one. */
  async function scripts(source) {
    for (let turn = 0; ; turn += 1) {
      try {
        return await Promise.all(SCRIPTS.map((name) => source.script(name + (turn ? "?" + turn : ""))));
      } catch (error) {
        if (turn === 3) throw error;
      }
    }
  }

  /* Everything that both ways need is on its way at once. */
  function from(settings, heard) {
    const folder = self.SpringlineFolder ? self.SpringlineFolder(settings) : {};
    const source = { script: (name) => import(settings.base + name), ...settings, ...folder };
    source.reading = new Reading(source, heard);
    source.module = compiled(source.reading, FIRST);
    source.library = source.reading.whole(LIBRARY).then(unzipped);
    source.scripts = scripts(source);
    for (const part of ["module", "library", "scripts"]) source[part].catch(() => {}); // said in load()
    return source;
  }

  /* Said before anything is fetched. */
  function refuseEarly() {
    if (typeof WebAssembly === "undefined" || typeof DecompressionStream === "undefined") {
      throw fault("old", true);
    }
    try {
      new WebAssembly.Module(EMPTY);
    } catch {
      throw fault("policy", true);
    }
  }

  /* {handle, way, source}: ``way`` says how Python was started. */
  async function start(settings, heard = () => {}) {
    refuseEarly();
    const source = from(settings, heard);
    self.SpringlineRuntime.again = () => source.reading.again();
    const all = Promise.all([source.module, source.library, source.scripts]);
    if (!source.plain && (await Promise.race([isLineFast(source), all.then(() => false)]))) {
      try {
        return { handle: await fromSnapshot(source), way: "snapshot", source };
      } catch (error) {
        console.info("Springline starts without its snapshot: " + error.message);
      }
    }
    return { handle: await fromLibrary(source), way: "plain", source };
  }

  self.SpringlineRuntime = { start, Rest, again() {} };

  if (!inWorker) return;

  let runtime = null;
  let later = null; // the clock of the rest
  let last = 0; // ms; when the page was told last

  /* A page need not know of every packet, nor of what comes after the start. */
  function tell(news) {
    if (runtime) return;
    const now = performance.now();
    if (!news.trouble && news.got < news.of && now - last < OFTEN) return;
    last = now;
    self.postMessage({ told: news });
  }

  function answer(request) {
    const reply = runtime.handle(request);
    later ||= setTimeout(() => runtime.source.rest.later().catch(() => {}), LATER); // asked for when needed
    return reply;
  }

  /* Of a Python traceback the last line says what went wrong. */
  function lastLine(error) {
    return String(error.message || error).trim().split("\n").pop();
  }

  self.addEventListener("message", async ({ data }) => {
    const { id, settings, request, again } = data;
    if (again) return self.SpringlineRuntime.again();
    if (id === undefined) return told(data);
    try {
      if (settings) {
        runtime = await start(settings, tell);
        self.postMessage({ id, reply: runtime.way });
      } else {
        self.postMessage({ id, reply: answer(request) });
      }
    } catch (error) {
      // a Python error leaves Python whole; after any other it cannot be trusted
      const lost = error.name !== "PythonError";
      self.postMessage({ id, error: lastLine(error), kind: error.kind, lost });
    }
  });
})();
