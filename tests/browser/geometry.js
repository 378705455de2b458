/* What of a page's text leaves its box, which names in a picture meet, and which stops of the Tab
   key have no name; as sentences, none where all is well. Run in the page by the tests. */
(() => {
  "use strict";
  const SLACK = 1.5; // px; browsers round
  const found = [];
  const seen = (one) => one.offsetWidth !== 1 && one.getClientRects().length > 0
    && getComputedStyle(one).visibility !== "hidden" // 1 px wide: for screen readers only
    && !one.closest(".sl-quiet, .sl-live, .md-skip, .md-search, .md-sidebar, .md-header, [data-md-toggle]");
  const named = (one) => `${one.tagName.toLowerCase()}.${one.getAttribute("class") || one.id}`
    + ` "${(one.textContent || "").trim().slice(0, 40)}"`;

  const wide = document.documentElement.scrollWidth - innerWidth;
  if (wide > SLACK) found.push(`the page is ${wide} px wider than the window`);

  /* Text against the box it stands in: the nearest that has an edge, a ground of its own or cuts. */
  function box(one) {
    for (let at = one; at && at !== document.body; at = at.parentElement) {
      const style = getComputedStyle(at);
      if (["auto", "scroll"].includes(style.overflowX)) return null; // it can be scrolled to
      if (style.textOverflow === "ellipsis" || at.matches("select")) return null;
      if (parseFloat(style.borderLeftWidth) + parseFloat(style.borderRightWidth) > 0
        || style.overflowX === "hidden") return at;
    }
    return document.body;
  }

  const OTHERWISE = "svg, script, style, template, noscript, option, math";
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const range = document.createRange();
  while (walker.nextNode()) {
    const text = walker.currentNode;
    const parent = text.parentElement;
    if (!text.data.trim() || parent.closest(OTHERWISE) || !seen(parent)) continue;
    const holder = box(parent);
    if (!holder) continue;
    range.selectNodeContents(text);
    const inside = holder.getBoundingClientRect();
    for (const one of range.getClientRects()) {
      if (one.width < 1) continue;
      if (one.left < inside.left - SLACK || one.right > inside.right + SLACK) {
        found.push(`${named(parent)} leaves ${named(holder)}`);
        break;
      }
    }
  }

  /* The words of a picture: inside it, and apart. */
  for (const svg of document.querySelectorAll(".sl-picture svg")) {
    if (!seen(svg)) continue;
    const frame = svg.getBoundingClientRect();
    const words = [...svg.querySelectorAll("text")].map((one) => [one, one.getBoundingClientRect()])
      .filter(([one, at]) => one.textContent.trim() && at.width);
    words.forEach(([one, at], number) => {
      if (at.left < frame.left - SLACK || at.right > frame.right + SLACK || at.top < frame.top - SLACK
        || at.bottom > frame.bottom + SLACK) found.push(`${named(one)} leaves its picture`);
      for (const [other, there] of words.slice(number + 1)) {
        const across = Math.min(at.right, there.right) - Math.max(at.left, there.left);
        // a line of text is higher than its letters: a fifth above and below is air
        const down = Math.min(at.bottom, there.bottom) - Math.max(at.top, there.top);
        const air = 0.4 * Math.min(at.height, there.height);
        if (across > SLACK && down > air) found.push(`${named(one)} meets ${named(other)}`);
      }
    });
  }

  /* Where the Tab key stops; what scrolls sideways is a stop too. */
  const STOPS = "a[href], button, input, select, textarea, summary, [tabindex='0']";
  const name = (one) => one.getAttribute("aria-label") || one.title
    || [...(one.labels || [])].map((label) => label.textContent).join("")
    || (one.getAttribute("aria-labelledby") || "").split(" ")
      .map((id) => document.getElementById(id)?.textContent || "").join("")
    || (one.matches("input, select, textarea") ? "" : one.textContent);
  for (const one of document.querySelectorAll(STOPS)) {
    if (seen(one) && one.tabIndex >= 0 && !name(one).trim()) found.push(`${named(one)} has no name`);
  }
  for (const one of document.querySelectorAll("main *")) {
    const style = getComputedStyle(one);
    if (["auto", "scroll"].includes(style.overflowX) && one.scrollWidth > one.clientWidth + 1 && seen(one)
      && !one.matches("input, textarea, select")
      && !(one.tabIndex === 0 && name(one) && one.hasAttribute("role"))
      && !one.matches("pre > code") // its words are its name
      && !one.querySelector(STOPS)) found.push(`${named(one)} scrolls and has no name`);
  }
  return found;
})();
