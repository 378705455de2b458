/* Put before worker.js in the copy that opens from a folder: answers from memory what the
   browser will not read from a disk. The files come as base64 in the "start" message. */
(function () {
  "use strict";

  function bytes(base64) {
    if (Uint8Array.fromBase64) return Uint8Array.fromBase64(base64);
    const text = atob(base64);
    const made = new Uint8Array(text.length);
    for (let at = 0; at < made.length; at += 1) made[at] = text.charCodeAt(at);
    return made;
  }

  /* All is gzipped before it becomes base64. */
  async function unpacked(files, name) {
    if (!(name in files)) throw new Error(name + " is not in this folder");
    const stream = new Blob([bytes(files[name])]).stream();
    const reply = new Response(stream.pipeThrough(new DecompressionStream("gzip")));
    return new Uint8Array(await reply.arrayBuffer());
  }

  async function script(files, name) {
    const blob = new Blob([await unpacked(files, name)], { type: "text/javascript" });
    const address = URL.createObjectURL(blob);
    try {
      return await import(address);
    } finally {
      URL.revokeObjectURL(address);
    }
  }

  self.SpringlineFolder = function ({ embedded }) {
    // Pyodide refuses a classic worker, and knows it by importScripts; a module worker
    // cannot be started from a folder
    if (self.importScripts) self.importScripts = undefined;
    return {
      base: "memory://springline/", // never asked for
      script: (name) => script(embedded, name),
      get: (name) => unpacked(embedded, name),
    };
  };
})();
