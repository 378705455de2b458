/* What stands between the page and Python, for engine.js: a worker, or the page itself. Both are
   {send(message) -> Promise, again(), stop()}. */
(function () {
  "use strict";

  const LATE = 5_000; // ms by which a clock may be late, as after a sleep

  const fault = (kind, message = kind) => Object.assign(new Error(message), { kind });

  function script(source) {
    return new Promise((resolve, reject) => {
      const tag = document.createElement("script");
      tag.src = source;
      tag.onload = () => resolve();
      tag.onerror = () => reject(fault("network", "a file of the calculator could not be loaded"));
      document.head.append(tag);
    });
  }

  /* Calls ``late`` after so long without ``clock.wind()``. */
  function clock(late) {
    let running = null;
    function wind(longest) {
      clearTimeout(running);
      const due = Date.now() + longest;
      running = setTimeout(() => {
        if (Date.now() - due > LATE) wind(LATE); // the device slept, and the worker with it
        else late();
      }, longest);
    }
    return { wind, stop: () => clearTimeout(running) };
  }

  /* Numbers the messages and matches the replies. A worker may say nothing for a while, not for ever:
     ``longest()`` is how many ms; ``lost()`` is called when it is gone, ``told(news)`` as it loads. */
  class InWorker {
    constructor(worker, { told, lost, longest }) {
      Object.assign(this, { worker, told, lost, longest });
      this.waiting = new Map();
      this.count = 0;
      this.broken = null;
      this.silence = clock(() => this.fail(Object.assign(fault("silent"), { lost: true })));
      worker.onmessage = ({ data }) => {
        if (data.told) told(data.told);
        else this.replied(data);
        if (!this.broken) this.sign();
      };
      worker.onerror = (event) => {
        event.preventDefault();
        const reason = event.message || "the browser refused to run the calculator in the background";
        this.fail(Object.assign(fault(undefined, reason), { noWorker: true, lost: true }));
      };
    }

    sign() {
      if (this.waiting.size) this.silence.wind(this.longest());
      else this.silence.stop();
    }

    fail(error) {
      this.broken = error;
      this.stop();
      this.lost(); // before those who wait decide what to do
      for (const { reject } of this.waiting.values()) reject(error);
      this.waiting.clear();
    }

    replied({ id, error, kind, reply, lost }) {
      const { resolve, reject } = this.waiting.get(id);
      this.waiting.delete(id);
      if (error === undefined) return resolve(reply);
      const about = Object.assign(fault(kind, error), { lost });
      reject(about);
      if (lost) this.fail(about);
    }

    send(message) {
      if (this.broken) return Promise.reject(this.broken);
      return new Promise((resolve, reject) => {
        this.count += 1;
        this.waiting.set(this.count, { resolve, reject });
        this.worker.postMessage({ id: this.count, ...message });
        this.sign();
      });
    }

    again() {
      this.worker.postMessage({ again: true });
    }

    stop() {
      this.silence.stop();
      this.worker.terminate();
    }
  }

  /* The same code in the page: typing may stutter, the figures are the same. */
  async function inPage(source, { told }) {
    if (!window.SpringlineRuntime) await script(source);
    let python = null;
    return {
      async send({ settings, request }) {
        if (!settings) return python.handle(request);
        python = await window.SpringlineRuntime.start(settings, told);
        return python.way;
      },
      again: () => window.SpringlineRuntime.again(),
      stop() {},
    };
  }

  /* In the copy that opens from a folder the files are scripts that hold base64. */
  async function unpackFolder(base, names) {
    if (!window.SPRINGLINE_FILES) {
      await Promise.all(names.map((name) => script(base + name + ".js")));
    }
    return window.SPRINGLINE_FILES;
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

  window.SpringlineBackend = { fault, script, InWorker, inPage, unpackFolder, classicWorker };
})();
