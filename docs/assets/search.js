/* The theme fetches the index of its search as soon as a page opens, over a line and on a processor
   that Python's start needs. Both wait until the calculator is live, the reader turns to the search,
   or the start has not moved for some seconds. */
(function () {
  "use strict";

  const SEARCH = /\/workers\/search\.[^/]*\.js$/;
  const INDEX = /\/search\/search_index\.json$/;
  const LONGEST_WAIT = 5_000; // ms in which nothing of Python has come
  const AFTER_THE_START = 100; // ms; the first figures come before

  const form = document.forms.namedItem("search");
  document.querySelector("[data-sl-search]")?.addEventListener("click", () =>
    form.querySelector("input").focus()); // the theme opens the search where it has the focus
  const asked = new URLSearchParams(location.search).has("q"); // a link that searches
  const needless = asked || !form || !document.querySelector("section.sl");
  if (needless || !window.Worker || !window.XMLHttpRequest || !location.protocol.startsWith("http")) return;

  const released = new Promise((release) => {
    form.addEventListener("focusin", release);
    window.SpringlineEngine.settled(LONGEST_WAIT).then(() => setTimeout(release, AFTER_THE_START));
  });
  const RealWorker = window.Worker;
  const RealRequest = window.XMLHttpRequest;

  window.Worker = class extends RealWorker {
    #held = [];

    constructor(source, options) {
      super(source, options);
      if (SEARCH.test(String(source))) released.then(() => this.#release());
      else this.#held = null;
    }

    postMessage(...message) {
      if (this.#held) this.#held.push(message);
      else super.postMessage(...message);
    }

    #release() {
      const held = this.#held;
      this.#held = null;
      for (const message of held) super.postMessage(...message);
    }
  };

  window.XMLHttpRequest = class extends RealRequest {
    #waits = false;

    open(method, address, ...more) {
      this.#waits = INDEX.test(String(address));
      super.open(method, address, ...more);
    }

    send(...body) {
      if (this.#waits) released.then(() => super.send(...body));
      else super.send(...body);
    }
  };
})();
