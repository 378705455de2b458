/* Lets a served site be read without a network after one visit: asks the browser to run sw.js.
   Late on purpose: the page and its calculator come first. Where the browser refuses, or has
   no room, the site works as before, with a network. */
(function () {
  "use strict";

  const root = new URL("..", document.currentScript.src).href;
  const LONGEST_IDLE = 3_000; // ms
  const SETTLED = 2_000; // ms after the start; the first figures and keystrokes come first
  const KEPT = "It is kept on this device for use without a network.";
  const NEWER = "A newer release is on this device now: reload the page to use it.";

  let newer = false; // said once, it stays true until the page is reloaded

  function say(sentence) {
    const place = document.querySelector("[data-offline]");
    if (place) place.textContent = sentence;
  }

  async function whenQuiet(task) {
    const idle = window.requestIdleCallback || ((later) => setTimeout(later, 0));
    const Engine = window.SpringlineEngine;
    if (document.querySelector("section.sl")) {
      do await Engine.settled();
      while (Engine.starting); // over a weak line the runtime comes first, however long it takes
    }
    setTimeout(() => idle(task, { timeout: LONGEST_IDLE }), SETTLED);
  }

  function tellWhenKept(registration) {
    const first = registration.active ? null : registration.installing || registration.waiting;
    if (!first) return say(KEPT);
    first.addEventListener("statechange", () => {
      if (first.state === "activated") say(KEPT);
    });
  }

  /* At once, since the browser looks for a newer release by itself when a page opens. */
  function watch(workers) {
    if (!workers.controller) return;
    workers.addEventListener("controllerchange", () => {
      newer = true;
      say(NEWER);
    });
  }

  async function keep() {
    try {
      const script = root + "sw.js";
      const registration = await navigator.serviceWorker.register(script, { updateViaCache: "none" });
      if (!newer) tellWhenKept(registration);
    } catch (error) {
      console.info("Springline is not kept for use without a network: " + error.message);
    }
  }

  if (!location.protocol.startsWith("http") || !("serviceWorker" in navigator)) return;
  watch(navigator.serviceWorker);
  if (navigator.connection?.saveData) return; // 20 MB more than this page needs
  if (document.readyState === "complete") whenQuiet(keep);
  else window.addEventListener("load", () => whenQuiet(keep));
})();
