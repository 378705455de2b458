/* The theme indexes the site for its search as soon as a page opens, on a processor that Python's
   start needs. What it tells its search worker waits until the calculator is live, the reader
   turns to the search, or some seconds have passed. */
(function () {
  "use strict";

  const SEARCH = /\/workers\/search\.[^/]*\.js$/;
  const LONGEST_WAIT = 5_000; // ms; by then Python's files are still on their way
  const AFTER_THE_START = 100; // ms; the first figures come before

  const form = document.forms.namedItem("search");
  document.querySelector("[data-sl-search]")?.addEventListener("click", () =>
    form.querySelector("input").focus()); // the theme opens the search where it has the focus
  const asked = new URLSearchParams(location.search).has("q"); // a link that searches
  const needless = asked || !form || !document.querySelector("section.sl");
  if (needless || !window.Worker || !location.protocol.startsWith("http")) return;

  window.Worker = class extends window.Worker {
    #held = null;

    constructor(source, options) {
      super(source, options);
      if (!SEARCH.test(String(source))) return;
      this.#held = [];
      form.addEventListener("focusin", () => this.#release());
      window.SpringlineEngine.settled(LONGEST_WAIT).then(() =>
        setTimeout(() => this.#release(), AFTER_THE_START));
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
