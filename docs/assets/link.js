/* The link: what a reader typed, in the part of the address after "#". Never sent to a server.
   Here it is only parted into keys and raw texts, to be shown until Python has read it: what they
   mean, and how a link is written, Python alone knows. */
(function () {
  "use strict";

  const LONGEST = 100_000; // characters; a longer one is no link of ours

  function plain(text) {
    try {
      return decodeURIComponent(text.replace(/\+/g, " "));
    } catch {
      return text; // cut inside a letter
    }
  }

  /* [[key, raw text], ...] of a fragment. */
  function split(fragment) {
    const pairs = [];
    const whole = fragment.replace(/^#/, "").slice(0, LONGEST);
    for (const part of (whole.includes("=") ? whole : plain(whole)).split(/&(?:amp;)?/)) {
      const at = part.indexOf("=");
      if (at > 0) pairs.push([plain(part.slice(0, at)), plain(part.slice(at + 1))]);
    }
    return pairs;
  }

  /* True where the fragment holds numbers and is not the name of a heading. "#v" is a link cut off. */
  function holdsNumbers(fragment) {
    return /=|%3d|^#v$/i.test(fragment);
  }

  /* True where the page should open on the answer: some number is given, not the units alone. */
  function opensOnAnswer(fragment) {
    return holdsNumbers(fragment) && !/^#(?:v=1&)?(?:u=\w+)?(?:&?c=\w+)?$/.test(fragment);
  }

  /* "head/%23climb=20m": a mail program took "#" for a sign of the path, and no page is there. */
  const { pathname, search, hash } = location;
  const at = pathname.indexOf("%23");
  if (at >= 0) location.replace(pathname.slice(0, at) + search + "#" + pathname.slice(at + 3) + hash);

  // before anything is painted, so that nothing jumps
  document.documentElement.classList.toggle("sl-linked", opensOnAnswer(location.hash));

  /* Where the page opens on the answer, the prose before it comes after it. */
  function proseBelow(block) {
    if (!opensOnAnswer(location.hash)) return;
    const prose = [];
    for (let one = block.previousElementSibling; one?.tagName === "P";) {
      prose.unshift(one);
      one = one.previousElementSibling;
    }
    block.after(...prose);
  }

  window.SpringlineLink = { split, holdsNumbers, opensOnAnswer, proseBelow };
})();
