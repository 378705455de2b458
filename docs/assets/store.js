/* Sites that the reader saved in this browser, each under its name; nothing else is kept here, and
   nothing of it enters a link. A stamp tells whether another tab has saved in between. */
(function () {
  "use strict";

  const PREFIX = "springline-site:";
  const PARTS = "springline-parts";
  const CARRIED = "springline-carried";
  const LONGEST = 300_000; // characters of one site, and of a parts list; our choice
  const MOST = 60; // sites; our choice
  const REFUSED = "This browser refuses to keep anything here. Export the site as a file instead.";
  const FULL = "There is no room left in this browser. Export the site, or forget another.";

  function read(key) {
    try {
      return localStorage.getItem(key);
    } catch {
      return null;
    }
  }

  /* {name, stamp, packed, site} of a stored text; null for what is none of ours. */
  function record(name, text) {
    try {
      const held = JSON.parse(text);
      return held && held.site && held.packed ? { ...held, name } : null;
    } catch {
      return null;
    }
  }

  function get(name) {
    return record(name, read(PREFIX + name));
  }

  function names() {
    try {
      return Object.keys(localStorage).filter((key) => key.startsWith(PREFIX))
        .map((key) => key.slice(PREFIX.length)).filter(get).sort((a, b) => a.localeCompare(b));
    } catch {
      return [];
    }
  }

  /* A sentence where it could not be written, "" where it was. */
  function write(key, text) {
    if (text.length > LONGEST) return "This is too large to be kept in this browser.";
    try {
      localStorage.setItem(key, text);
      return "";
    } catch (error) {
      return error.name === "QuotaExceededError" && names().length ? FULL : REFUSED;
    }
  }

  /* {stamp}, {refused: sentence}, or {other: what stands there} where that is not what the
     writer last saw (``stamp``; none: nothing). */
  function save(name, { site, packed }, stamp) {
    const other = get(name);
    if (other && other.stamp !== stamp && other.packed !== packed) return { other };
    if (!other && names().length >= MOST) return { refused: FULL };
    const fresh = Date.now().toString(36) + Math.random().toString(36).slice(2, 8);
    const refused = write(PREFIX + name, JSON.stringify({ stamp: fresh, packed, site }));
    return refused ? { refused } : { stamp: fresh };
  }

  function forget(name) {
    try {
      localStorage.removeItem(PREFIX + name);
    } catch {
      /* then there is nothing to forget */
    }
  }

  /* ``heard(name, record or null)`` when another tab saves or forgets. */
  function watch(heard) {
    window.addEventListener("storage", ({ key, newValue }) => {
      if (key?.startsWith(PREFIX)) {
        const name = key.slice(PREFIX.length);
        heard(name, newValue && record(name, newValue));
      }
    });
  }

  /* The site this tab had in use last, packed: then it is not from somebody's link. */
  function carried(packed) {
    try {
      if (packed === undefined) return sessionStorage.getItem(CARRIED);
      sessionStorage.setItem(CARRIED, packed);
    } catch {
      /* the bar says "from a link" then */
    }
    return null;
  }

  const parts = () => read(PARTS) || "";
  const saveParts = (text) => write(PARTS, text);

  window.SpringlineStore = { get, names, save, forget, watch, carried, parts, saveParts };
})();
