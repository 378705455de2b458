/* The page's way to Python: SpringlineEngine.start(), .ask(request), .ready, .starting,
   .settled(ms).
   Python runs in a worker; where no worker can be had it runs in the page itself.
   .script(address) adds a script to the page, for whoever needs one late.
   While Python comes the document hears "springline-progress" with {loaded, total, trouble}: bytes, and
   "" or a sentence on what holds it up; "springline-live" when it has come after that had been said. */
(function () {
  "use strict";

  const { fault, script, InWorker, inPage, unpackFolder, classicWorker } = window.SpringlineBackend;
  const here = document.currentScript.src;
  const runtime = new URL("../runtime/", here).href;
  const LONGEST_WAIT = 15_000; // ms; a calculator out of view may not start at all
  // a test may set these before the page loads
  const options = {
    plain: false,
    worker: true,
    still: 20_000, // ms without a byte, then a file is asked for again
    silence: 60_000, // ms without a sign of life of a worker that starts
    // ms without one of a worker that was asked: Python gives none until it has its answer, and a
    // letter or a year on a slow phone takes several seconds; our choice
    patience: 20_000,
    retry: 10_000, // ms between starts that fail for want of a network
    ...window.SPRINGLINE_OPTIONS,
  };
  const WORDS = {
    offline: "this device is offline and the calculator is not stored here yet; it starts by itself "
      + "when the network is back",
    network: "the network does not answer; the calculator starts by itself when it does",
    missing: "a file of the calculator is missing on this host: tell whoever runs it",
    replaced: "the site was renewed since this page was opened: reload the page",
    damaged: "a file of the calculator arrives damaged: reload the page in a while",
    policy: "this host forbids WebAssembly, which the calculator needs: tell whoever runs it",
    old: "this browser is too old for the calculator",
    silent: "the calculator gave no answer twice",
  };
  // way: how the newest start went; it stays when that one is gone
  const Engine = { ready: false, way: null, start, ask, settled, script };
  window.SpringlineEngine = Object.defineProperty(Engine, "starting", {
    get: () => Boolean(run) && !Engine.ready,
  });

  let run = null; // the start that is under way or was: {promise, resolve, reject, open, backend}
  let refused = false; // somebody was told that it failed
  let loaded = 0; // bytes of the start that is under way
  let strikes = 0; // workers that fell silent one after the other
  const queue = []; // of those who wait in settled()

  /* Pages load it before this script; it is asked for again where that failed. */
  async function manifest() {
    if (!window.SPRINGLINE_RUNTIME) await script(runtime + "manifest.js");
    return window.SPRINGLINE_RUNTIME;
  }

  /* What worker.js needs to know, its address for a script tag, and how to make a worker. */
  async function plan() {
    const { folder, files, memory, lock, embedded } = await manifest();
    const base = runtime + folder + "/";
    const source = base + "worker.js";
    const kept = Boolean(navigator.serviceWorker?.controller); // all of it lies on this device
    const settings = { base, files, memory, lock, kept, plain: options.plain, still: options.still };
    if (!embedded) return { settings, source, make: () => new Worker(source, { type: "module" }) };
    settings.embedded = await unpackFolder(base, embedded);
    return { settings, source, make: () => classicWorker() };
  }

  /* For how long a worker may say nothing. */
  function longest() {
    return Engine.ready ? options.patience * (strikes + 1) : options.silence;
  }

  async function begin(own) {
    const { settings, source, make } = await plan();
    const hears = { told, longest, lost: () => Engine.ready && lost() };
    if (options.worker) {
      try {
        own.backend = new InWorker(await make(), hears);
        return await own.backend.send({ settings });
      } catch (error) {
        own.backend?.stop();
        if (own.backend && !error.noWorker) throw error;
        console.info("Springline runs in the page, not in a worker: " + error.message);
      }
    }
    own.backend = await inPage(source, hears);
    return own.backend.send({ settings });
  }

  /* Forget a dead worker, so that the next start() makes a new one. */
  function lost() {
    run = null;
    Engine.ready = false;
  }

  function promised(own) {
    own.promise = new Promise((resolve, reject) => Object.assign(own, { resolve, reject }));
    own.promise.catch(() => {}); // for whoever asked
    own.open = true;
  }

  function attempt() {
    const own = {};
    promised(own);
    begin(own).then((way) => live(own, way), (error) => ended(own, error));
    return own;
  }

  function start() {
    run = run || attempt();
    if (!run.open) {
      promised(run); // it was said that it is held up; whoever asks again waits anew
      run.backend?.again();
    }
    return run.promise;
  }

  function live(own, way) {
    Engine.way = way;
    Engine.ready = true;
    if (!own.open) promised(own); // who asked before was told that it is held up
    own.resolve(way);
    for (const go of queue.splice(0)) go();
    if (refused) announce("live");
    refused = false;
  }

  function refuse(own, error) {
    refused = true;
    own.open = false;
    own.reject(error);
  }

  async function ended(own, error) {
    lost();
    if (error.kind === "silent" && strikes < 1) return restart(own);
    strikes = 0;
    const kind = await kindOf(error);
    refuse(own, fault(kind, WORDS[kind] || error.message || "the browser gave no reason"));
    if (kind === "network" || kind === "offline") return later();
    for (const go of queue.splice(0)) go();
  }

  /* For those who wait for a worker that fell silent while it started. */
  function restart(own) {
    strikes += 1;
    start().then(own.resolve, own.reject);
  }

  /* What is missing may be of a release that the host no longer has. */
  async function kindOf({ kind }) {
    if (location.protocol === "file:") return kind;
    if (!navigator.onLine) return "offline";
    if (kind !== "missing" && kind !== "network") return kind;
    try {
      const reply = await fetch(runtime + "manifest.js", { cache: "no-store" });
      if (!reply.ok) return kind;
      return (await reply.text()).includes(window.SPRINGLINE_RUNTIME.folder) ? kind : "replaced";
    } catch {
      return kind;
    }
  }

  /* Nothing of it is under way: once the network is back, or in a while. */
  function later() {
    const go = () => {
      clearTimeout(waiting);
      window.removeEventListener("online", go);
      if (!run) start().catch(() => {});
    };
    const waiting = setTimeout(go, options.retry);
    window.addEventListener("online", go);
  }

  function announce(what, detail) {
    document.dispatchEvent(new CustomEvent("springline-" + what, { detail }));
  }

  /* From whoever fetches: how far it is, and what holds it up. It goes on trying. */
  function told({ got, of, trouble }) {
    loaded = got;
    announce("progress", { loaded: got, total: of, trouble: WORDS[trouble] || "" });
    if (trouble && run?.open && !Engine.ready) refuse(run, fault(trouble, WORDS[trouble]));
  }

  /* Work that would take line and processor from the start waits here: until Python is live or
     cannot be, or nothing of it has come for so many ms. */
  function settled(most = LONGEST_WAIT) {
    if (Engine.ready || (refused && !run)) return Promise.resolve();
    return new Promise((resolve) => {
      let seen = 0;
      const look = () => {
        if (loaded === seen) return resolve();
        seen = loaded;
        setTimeout(look, most);
      };
      queue.push(resolve);
      setTimeout(look, most);
    });
  }

  /* Asked once more of a new worker where the one that was asked is gone. */
  async function ask(request) {
    const text = JSON.stringify(request);
    for (let turn = 1; ; turn += 1) {
      await start();
      try {
        const reply = await run.backend.send({ request: text });
        strikes = 0;
        return JSON.parse(reply);
      } catch (error) {
        if (!error.lost) throw error;
        if (error.kind === "silent") strikes = turn;
        if (turn === 2) throw fault(error.kind, WORDS[error.kind] || error.message);
      }
    }
  }

  // a link with numbers: its reader waits for the answer, so the rest of the page may come later
  if (location.hash.includes("=")) start().catch(() => {}); // the calculator asks again, and says
})();
