/* Put before worker.js: unpacks the snapshot while it comes. */
(function () {
  "use strict";

  /* Write gzipped pieces, get what they hold. */
  function unpacker(size) {
    const { readable, writable } = new DecompressionStream("gzip");
    const writer = writable.getWriter();
    const content = filled(readable.getReader(), size);
    content.catch(() => {}); // said where it is waited for
    const quiet = (promise) => promise.catch(() => {});
    return {
      write: (piece) => quiet(writer.write(piece)),
      stop: () => quiet(writer.abort()),
      done() {
        quiet(writer.close());
        return content;
      },
    };
  }

  async function filled(reader, size) {
    const content = new Uint8Array(size);
    let at = 0;
    for (let part = await reader.read(); !part.done; part = await reader.read()) {
      content.set(part.value, at);
      at += part.value.length;
    }
    if (at !== size) throw new Error("the snapshot is too short");
    return content;
  }

  /* The same in a second worker: unpacking takes as long as much of the start, and another core may do
     it. Null in the page, in a folder, and where the browser allows a worker no other. */
  function unpackerBeside({ base, get }, size) {
    if (get || typeof WorkerGlobalScope === "undefined") return null;
    return new Promise((resolve) => {
      let helper = null;
      try {
        helper = new Worker(base + "worker.js", { type: "module" });
      } catch {
        return resolve(null);
      }
      const content = new Promise((give, refuse) => {
        helper.onmessage = ({ data }) => {
          if (data.ready) resolve({
            write: (piece) => helper.postMessage({ piece }, [piece.buffer]),
            stop: () => helper.terminate(),
            done() {
              helper.postMessage({ end: true });
              return content;
            },
          });
          else if (data.reply) give(data.reply);
          else refuse(new Error(data.error));
        };
      });
      content.catch(() => {});
      helper.onerror = (event) => {
        event.preventDefault();
        resolve(null);
      };
      helper.postMessage({ unpack: size });
    });
  }

  let own = null; // in a second worker: what it unpacks with

  /* What the second worker is told: {unpack: bytes in all}, {piece} each, {end}. */
  async function told({ unpack, piece, end }) {
    try {
      if (unpack) {
        own = unpacker(unpack);
        self.postMessage({ ready: true });
      } else if (piece) {
        own.write(piece);
      } else if (end) {
        const reply = await own.done();
        self.postMessage({ reply }, [reply.buffer]);
      }
    } catch (error) {
      self.postMessage({ error: error.message });
    }
  }

  self.SpringlineUnpacking = { unpacker, unpackerBeside, told };
})();
