/* Put before worker.js: reads the runtime's files, which lie on the host in pieces. A piece that has
   come is kept, so a line that breaks costs no more than those on their way. Each is checked against
   the sha256 the build wrote down, and fetched past every store where it does not fit. */
(function () {
  "use strict";

  const AT_ONCE = 3; // pieces on their way; the page's own files need room on the line too
  const STILL = 20_000; // ms without a byte; then a try is given up, however long it has gone well
  const FIRST_PAUSE = 300; // ms before the second try; then longer each time
  const LONGEST_PAUSE = 15_000; // ms
  const WINDOW = 500; // ms back, over which the line's speed is taken
  const SHORTEST = 5; // ms; clocks are coarse
  const GONE = [401, 403, 404, 410];

  /* ``kind`` is what engine.js has words for; ``final``: another try would bring no more. */
  function fault(kind, final = false) {
    return Object.assign(new Error(kind), { kind, final });
  }

  const pieceName = (file, index) => file.replace(/\.(\w+)$/, `.${index}.$1`);

  /* Only pages from a safe address may hash; elsewhere the length must do. */
  async function isWhole(content, sha256) {
    if (!self.crypto?.subtle || !sha256) return true;
    const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", content));
    return btoa(String.fromCharCode(...digest)) === sha256;
  }

  class Reading {
    /* ``files``: {name: [[bytes, bytes as sent, sha256] of each piece]}; ``get(name)``, where the
       files are at hand already; ``tell({got, of, trouble})``. */
    constructor({ base, files, get, still = STILL }, tell) {
      Object.assign(this, { base, files, get, still, tell });
      Object.assign(this, { got: 0, of: 0, trouble: "" });
      this.came = []; // [ms, bytes] of late
      this.since = 0; // ms; the first reply
      this.asked = new Map(); // name of a file -> promises of its pieces
      this.left = new Map(); // name of a file -> bytes that have not come
      this.tries = new Map(); // name of a file -> those on their way, to be stopped
      this.line = []; // those who wait for their turn
      this.busy = 0;
      this.pausing = new Set();
      this.heard = new Set(); // called when something has come
      self.addEventListener?.("online", () => this.again());
    }

    /* Promises of the pieces of a file, in their order; fetched once. */
    pieces(file) {
      if (!this.asked.has(file)) {
        const sent = this.files[file].reduce((sum, about) => sum + about[1], 0);
        this.of += sent;
        this.left.set(file, sent);
        this.tries.set(file, new Set());
        const promises = this.files[file].map((about, index) =>
          this.#inTurn(() => this.#fetched(file, pieceName(file, index), about)));
        for (const promise of promises) promise.catch(() => {}); // said where it is waited for
        this.asked.set(file, promises);
      }
      return this.asked.get(file);
    }

    async whole(file) {
      const pieces = await Promise.all(this.pieces(file));
      if (pieces.length === 1) return pieces[0];
      const content = new Uint8Array(pieces.reduce((sum, piece) => sum + piece.length, 0));
      let at = 0;
      for (const piece of pieces) {
        content.set(piece, at);
        at += piece.length;
      }
      return content;
    }

    stream(file) {
      const pieces = this.pieces(file);
      let next = 0;
      return new ReadableStream({
        async pull(controller) {
          if (next === pieces.length) return controller.close();
          controller.enqueue(await pieces[next++]);
        },
      });
    }

    /* Whether all of these files are here. */
    has(...files) {
      return files.every((file) => this.left.get(file) < 1);
    }

    /* ms until the rest of a file will be here, as the line goes now; asked for yet or not. */
    until(file) {
      const sent = this.files[file].reduce((sum, about) => sum + about[1], 0);
      const now = performance.now();
      const late = this.came.filter(([at]) => at > now - WINDOW);
      const bytes = late.reduce((sum, [, count]) => sum + count, 0);
      const time = Math.max(Math.min(now - this.since, WINDOW), SHORTEST);
      return ((this.left.get(file) ?? sent) * time) / bytes;
    }

    stop(file) {
      if (!this.asked.has(file)) return;
      this.of -= this.left.get(file);
      this.left.set(file, 0);
      for (const control of this.tries.get(file)) control.abort();
      this.tries.set(file, null);
      this.asked.delete(file);
    }

    /* Those who pause try at once. */
    again() {
      for (const go of this.pausing) go();
    }

    async #inTurn(task) {
      if (this.busy >= AT_ONCE) await new Promise((resolve) => this.line.push(resolve));
      this.busy += 1;
      try {
        return await task();
      } finally {
        this.busy -= 1;
        this.line.shift()?.();
      }
    }

    async #fetched(file, name, about) {
      if (this.get) {
        const content = await this.get(name);
        this.#count(file, about[1]);
        return content;
      }
      let damaged = false;
      for (let turn = 0; ; turn += 1) {
        try {
          return await this.#once(file, name, about, damaged);
        } catch (error) {
          if (!this.tries.get(file)) throw fault("stopped", true);
          const { kind = "network", final } = error;
          if (final || (damaged && kind === "damaged")) throw fault(kind, true);
          damaged = kind === "damaged";
          if (turn || !navigator.onLine) this.#said(navigator.onLine ? kind : "offline");
          if (!damaged) await this.#pause(turn);
        }
      }
    }

    /* One try. ``past``: the browser's own store holds something else. */
    async #once(file, name, [bytes, sent, sha256], past) {
      const control = new AbortController();
      const tries = this.tries.get(file);
      if (!tries) throw fault("stopped", true);
      tries.add(control);
      const content = new Uint8Array(bytes);
      let filled = 0;
      let still = null;
      const wait = () => {
        clearTimeout(still);
        still = setTimeout(() => control.abort(), this.still);
      };
      try {
        wait();
        const reader = await this.#reader(name, past ? "reload" : "default", control.signal);
        for (let part = await reader.read(); !part.done; part = await reader.read()) {
          wait();
          if (filled + part.value.length > bytes) throw fault("damaged");
          content.set(part.value, filled);
          filled += part.value.length;
          this.#count(file, (part.value.length * sent) / bytes);
        }
        if (filled < bytes) throw fault("network");
        if (!(await isWhole(content, sha256))) throw fault("damaged");
        return content;
      } catch (error) {
        this.#count(file, (-filled * sent) / bytes); // it must come again
        control.abort();
        throw error;
      } finally {
        clearTimeout(still);
        tries.delete(control);
      }
    }

    async #reader(name, cache, signal) {
      const reply = await fetch(this.base + name, { cache, signal });
      const isPage = reply.headers.get("Content-Type")?.startsWith("text/html");
      if (GONE.includes(reply.status) || (reply.ok && isPage)) throw fault("missing", true);
      if (!reply.ok) throw fault("network");
      this.since ||= performance.now();
      return reply.body.getReader();
    }

    #count(file, sent) {
      if (!this.tries.get(file)) return;
      this.got += sent;
      this.left.set(file, this.left.get(file) - sent);
      if (sent > 0) {
        const now = performance.now();
        this.came = [...this.came.filter(([at]) => at > now - WINDOW), [now, sent]];
        this.trouble = "";
      }
      this.#report();
    }

    #said(kind) {
      this.trouble = kind;
      this.#report();
    }

    #report() {
      const { got, of, trouble } = this;
      this.tell({ got: Math.round(got), of: Math.round(of), trouble });
      for (const go of this.heard) go();
    }

    /* Until the network is back, somebody asks for it, or for a while. */
    #pause(turn) {
      return new Promise((resolve) => {
        const go = () => {
          clearTimeout(clock);
          this.pausing.delete(go);
          resolve();
        };
        const clock = setTimeout(go, Math.min(FIRST_PAUSE * 2 ** turn, LONGEST_PAUSE));
        this.pausing.add(go);
      });
    }
  }

  self.SpringlineReading = { Reading, fault, pieceName };
})();
