/* The page's way to Python: SpringlineEngine.start(), .ask(request), .ready, .settled(ms).
   Python runs in a worker; where no worker can be had it runs in the page itself.
   .script(address) adds a script to the page, for whoever needs one late. */
(function () {
  "use strict";

  const here = document.currentScript.src;
  const runtime = new URL("../runtime/", here).href;
  const LONGEST_START = 120_000; // ms; after that something is wrong
  const LONGEST_WAIT = 15_000; // ms; a calculator out of view may not start at all

  // a test may set these before the page loads
  const options = { plain: false, worker: true, ...window.SPRINGLINE_OPTIONS };
  const Engine = { ready: false, way: null, start, ask, settled, script };
  window.SpringlineEngine = Engine;

  let starting = null; // the promise of start()
  let backend = null; // {send(message) -> Promise, stop()}
  const queue = []; // of those who wait in settled()

  function script(source) {
    return new Promise((resolve, reject) => {
      const tag = document.createElement("script");
      tag.src = source;
      tag.onload = () => resolve();
      tag.onerror = () => reject(new Error("a file of the calculator could not be loaded"));
      document.head.append(tag);
    });
  }

  /* Pages load it before this script; it is asked for again where that failed. */
  async function manifest() {
    if (!window.SPRINGLINE_RUNTIME) await script(runtime + "manifest.js");
    return window.SPRINGLINE_RUNTIME;
  }

  /* Number the messages and match the replies. */
  function inWorker(worker) {
    const waiting = new Map();
    let count = 0;
    let broken = null;

    function fail(error) {
      broken = error;
      worker.terminate();
      for (const { reject } of waiting.values()) reject(error);
      waiting.clear();
      if (Engine.ready) lost(); // before that start() decides what to do
    }

    worker.onmessage = ({ data }) => {
      const { resolve, reject } = waiting.get(data.id);
      waiting.delete(data.id);
      if (data.error === undefined) resolve(data.reply);
      else reject(new Error(data.error));
      if (data.lost) fail(new Error(data.error));
    };
    worker.onerror = (event) => {
      event.preventDefault();
      const reason = event.message || "the browser refused to run the calculator in the background";
      fail(Object.assign(new Error(reason), { noWorker: true }));
    };
    return {
      send(message) {
        if (broken) return Promise.reject(broken);
        return new Promise((resolve, reject) => {
          count += 1;
          waiting.set(count, { resolve, reject });
          worker.postMessage({ id: count, ...message });
        });
      },
      stop: () => worker.terminate(),
    };
  }

  /* The same code in the page: typing may stutter, the figures are the same. */
  async function inPage(source) {
    if (!window.SpringlineRuntime) await script(source);
    let python = null;
    return {
      async send({ settings, request }) {
        if (!settings) return python.handle(request);
        python = await window.SpringlineRuntime.start(settings);
        return python.way;
      },
      stop() {},
    };
  }

  function inTime(promise) {
    return new Promise((resolve, reject) => {
      const clock = setTimeout(
        () => reject(new Error("the calculator took longer than two minutes to start")),
        LONGEST_START,
      );
      promise.then(resolve, reject).finally(() => clearTimeout(clock));
    });
  }

  /* In the copy that opens from a folder the files are scripts that hold base64. */
  async function unpackFolder(base, names) {
    if (!window.SPRINGLINE_FILES) {
      await Promise.all(names.map((name) => script(base + name + ".js")));
    }
    return window.SPRINGLINE_FILES;
  }

  /* What worker.js needs to know, its address for a script tag, and how to make a worker. */
  async function plan() {
    const { folder, wheel, snapshot, memory, embedded } = await manifest();
    const base = runtime + folder + "/";
    const source = base + "worker.js";
    const settings = { base, wheel, snapshot, memory, plain: options.plain };
    if (!embedded) return { settings, source, make: () => new Worker(source, { type: "module" }) };
    settings.files = await unpackFolder(base, embedded);
    return { settings, source, make: () => classicWorker() };
  }

  /* On a disk the search puts another kind of Worker in the browser's place.
     From a disk only a worker made of text already here is allowed, and only a classic one. */
  async function classicWorker() {
    const letters = atob(window.SPRINGLINE_FILES["worker.js"]);
    const packed = Uint8Array.from(letters, (letter) => letter.charCodeAt(0));
    const stream = new Blob([packed]).stream().pipeThrough(new DecompressionStream("gzip"));
    const text = await new Response(stream).text();
    const RealWorker = window.SpringlineWorker || window.Worker;
    return new RealWorker(URL.createObjectURL(new Blob([text], { type: "text/javascript" })));
  }

  async function begin() {
    backend = null;
    const { settings, source, make } = await plan();
    if (options.worker) {
      try {
        backend = inWorker(await make());
        return await inTime(backend.send({ settings }));
      } catch (error) {
        backend?.stop();
        if (backend && !error.noWorker) throw error;
        console.info("Springline runs in the page, not in a worker: " + error.message);
      }
    }
    backend = await inPage(source);
    return inTime(backend.send({ settings }));
  }

  /* Forget a dead worker, so that the next start() makes a new one. */
  function lost() {
    starting = null;
    Engine.ready = false;
  }

  function start() {
    starting = starting || begin().then(
      (way) => {
        Engine.way = way;
        Engine.ready = true;
        for (const go of queue.splice(0)) go();
      },
      (error) => {
        lost();
        throw new Error(plainWords(error));
      },
    );
    return starting;
  }

  /* Work that would take line and processor from the start waits here: until Python is live, or
     for so many ms. */
  function settled(longest = LONGEST_WAIT) {
    if (Engine.ready) return Promise.resolve();
    return new Promise((resolve) => {
      queue.push(resolve);
      setTimeout(resolve, longest);
    });
  }

  function plainWords(error) {
    if (location.protocol !== "file:" && !navigator.onLine) {
      return "this device is offline and the calculator is not stored here yet";
    }
    return error.message || "the browser gave no reason";
  }

  async function ask(request) {
    await start();
    return JSON.parse(await backend.send({ request: JSON.stringify(request) }));
  }

  // a link with numbers: its reader waits for the answer, so the rest of the page may come later
  if (location.hash.includes("=")) start().catch(() => {}); // the calculator asks again, and says
})();
