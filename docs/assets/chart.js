/* Charts in the page: the drawing library is loaded when the first changed chart comes into view. */
(function () {
  "use strict";

  const root = new URL("..", document.currentScript.src).href;
  const LIBRARIES = ["vega.min.js", "vega-lite.min.js", "vega-interpreter.min.js", "vega-embed.min.js"];
  const Engine = window.SpringlineEngine;
  let loading = null;

  async function loadAll() {
    for (const name of LIBRARIES) await Engine.script(root + "vendor/" + name);
  }

  function libraries() {
    loading = loading || loadAll().catch((error) => {
      loading = null;
      throw error;
    });
    return loading;
  }

  /* Draw ``spec`` in ``place``; the old drawing stands until the new one is ready. */
  async function draw(place, spec) {
    await libraries();
    const fresh = document.createElement("div");
    await window.vegaEmbed(fresh, spec, {
      actions: false,
      defaultStyle: false, // a style element of its own, which the policy forbids
      renderer: "svg",
      ast: true,
      expr: window.vega.expressionInterpreter,
      tooltip: false,
    });
    const svg = fresh.querySelector("svg");
    if (!svg || !place.isConnected) return;
    svg.setAttribute("aria-hidden", "true");
    svg.setAttribute("focusable", "false");
    place.replaceChildren(svg);
    place.classList.remove("sl-waiting");
  }

  const waiting = new WeakMap();
  const watcher = "IntersectionObserver" in window
    ? new IntersectionObserver((entries) => {
        for (const entry of entries) if (entry.isIntersecting) start(entry.target);
      }, { rootMargin: "300px" })
    : null;

  function start(place) {
    const spec = waiting.get(place);
    if (!spec) return Promise.resolve();
    waiting.delete(place);
    if (watcher) watcher.unobserve(place);
    return draw(place, spec).catch(() => {
      place.textContent = place.getAttribute("aria-label");
      place.classList.remove("sl-waiting");
    });
  }

  const idle = window.requestIdleCallback || ((task) => setTimeout(task, 500));

  /* Draw when in view. Once one was, the library is here and the others are drawn when the reader
     pauses, since a page may be printed at any time. */
  function show(place, spec) {
    waiting.set(place, spec);
    if (!watcher) return start(place);
    watcher.observe(place);
    clearTimeout(place.pause);
    if (loading) place.pause = setTimeout(() => idle(() => start(place)), 1500);
    return undefined;
  }

  /* All that waits, at once; a promise of when it is drawn. */
  function showAll(container) {
    return Promise.all([...container.querySelectorAll(".sl-plot")].map(start));
  }

  /* On paper no drawing of other numbers: what it shows is said in words. */
  window.addEventListener("beforeprint", () => {
    for (const place of document.querySelectorAll(".sl-plot.sl-waiting")) {
      place.textContent = place.getAttribute("aria-label");
    }
  });

  window.SpringlineDrawing = { show, showAll };
})();
