/* The theme indexes the site for its search as soon as a page opens, on a processor that Python's
   start needs. What it tells its search worker waits until the calculator is live, the reader
   turns to the search, or some seconds have passed. */
(function () {
  "use strict";

  const SEARCH = /\/workers\/search\.[^/]*\.js$/;
  const LONGEST_WAIT = 5_000; // ms; by then Python's files are still on their way
  const LOOK_AGAIN = 100; // ms

  const form = document.forms.namedItem("search");
  const asked = new URLSearchParams(location.search).has("q"); // a link that searches
  const needless = asked || !form || !document.querySelector("section.sl");
  if (needless || !window.Worker || !location.protocol.startsWith("http")) return;

  function whenLive(task) {
    const since = performance.now();
    const look = () => {
      const live = window.SpringlineEngine.ready;
      if (live || performance.now() - since > LONGEST_WAIT) setTimeout(task, LOOK_AGAIN);
      else setTimeout(look, LOOK_AGAIN);
    };
    look();
  }

  window.Worker = class extends window.Worker {
    #held = null;

    constructor(source, options) {
      super(source, options);
      if (!SEARCH.test(String(source))) return;
      this.#held = [];
      form.addEventListener("focusin", () => this.#release());
      whenLive(() => this.#release());
    }

    postMessage(...message) {
      if (this.#held) this.#held.push(message);
      else super.postMessage(...message);
    }

    #release() {
      const held = this.#held || [];
      this.#held = null;
      for (const message of held) super.postMessage(...message);
    }
  };
})();
