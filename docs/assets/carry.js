/* The site in use goes along in the part after "#" when the reader goes to another of our pages, so
   that it works from a folder too. Python wrote it; a page without a calculator hands it on. */
(function () {
  "use strict";

  const root = new URL("..", document.currentScript.src).href;
  const plain = new WeakMap(); // a link -> its address as printed
  let onward = () => (/[#&]site=/.test(location.hash) && !document.querySelector("section.sl")
    ? location.hash.slice(1) : "");

  /* ``give()`` returns the fragment that carries the site, "" for none. */
  function from(give) {
    onward = give;
  }

  function carried(anchor) {
    const printed = plain.get(anchor) ?? anchor.getAttribute("href");
    const target = new URL(printed, location.href);
    const here = target.pathname === location.pathname;
    const page = /(\/|\.html)$/.test(target.pathname) && target.href.startsWith(root);
    if (!page || here || target.hash || anchor.hasAttribute("download")) return;
    const fragment = onward();
    plain.set(anchor, printed);
    anchor.setAttribute("href", fragment ? printed + "#" + fragment : printed);
  }

  for (const kind of ["click", "auxclick", "contextmenu"]) {
    document.addEventListener(kind, ({ target }) => {
      const anchor = target.closest?.("a[href]");
      if (anchor) carried(anchor);
    }, true);
  }

  window.SpringlineCarry = { from };
})();
