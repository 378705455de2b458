/* Put before worker.js in the copy that opens from a folder: answers from memory what the
   browser will not read from a disk. The files come as base64 in the "start" message. */
(function () {
  "use strict";

  const BASE = "memory://springline/"; // never asked for: fetch below answers it
  const TYPES = { mjs: "text/javascript", json: "application/json", wasm: "application/wasm" };

  function bytes(base64) {
    if (Uint8Array.fromBase64) return Uint8Array.fromBase64(base64);
    const text = atob(base64);
    const made = new Uint8Array(text.length);
    for (let at = 0; at < made.length; at += 1) made[at] = text.charCodeAt(at);
    return made;
  }

  function typed(name, body) {
    const type = TYPES[name.split(".").pop()] || "application/octet-stream";
    return new Response(body, { headers: { "Content-Type": type } });
  }

  /* All is gzipped before it becomes base64; what is called .gz is wanted gzipped. */
  function reply(files, name) {
    if (!(name in files)) return Promise.reject(new Error(name + " is not in this folder"));
    const packed = bytes(files[name]);
    if (name.endsWith(".gz")) return Promise.resolve(typed(name, packed));
    const stream = new Blob([packed]).stream().pipeThrough(new DecompressionStream("gzip"));
    return Promise.resolve(typed(name, stream));
  }

  async function module(files, name) {
    const text = await (await reply(files, name)).arrayBuffer();
    const address = URL.createObjectURL(new Blob([text], { type: TYPES.mjs }));
    try {
      return await import(address);
    } finally {
      URL.revokeObjectURL(address);
    }
  }

  self.SpringlineFolder = function ({ files, ...settings }) {
    // Pyodide refuses a classic worker, and knows it by importScripts; a module worker
    // cannot be started from a folder
    if (self.importScripts) self.importScripts = undefined;
    const outside = self.fetch.bind(self);
    self.fetch = (address, options) => {
      const asked = String(address.url || address);
      return asked.startsWith(BASE)
        ? reply(files, asked.slice(BASE.length))
        : outside(address, options);
    };
    return {
      ...settings,
      base: BASE,
      module: (name) => module(files, name),
      read: (name) => reply(files, name),
    };
  };
})();
