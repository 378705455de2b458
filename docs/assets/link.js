/* The link: what a reader typed, in the part of the address after "#".
   Never sent to a server. "#u=us&climb=50ft&flow=10gpm"; a default is left out. */
(function () {
  "use strict";

  const LONGEST = 8000; // characters taken from one entry of a link: a long table and more

  /* A unit without what addresses spell badly: "m³/h" -> "m3/h", "°C" -> "C". */
  function plainUnit(symbol) {
    return symbol.replace(/³/g, "3").replace(/²/g, "2").replace(/[°·\s]/g, "");
  }

  function encode(pairs) {
    return pairs
      .map(([key, text]) => key + "=" +
        encodeURIComponent(text).replace(/%20/g, "+").replace(/%2F/g, "/").replace(/%2C/g, ",")
          .replace(/%3B/g, ";"))
      .join("&");
  }

  /* [[key, text], ...] of a fragment; entries that cannot be decoded go to ``damaged``. */
  function decode(fragment) {
    const pairs = [];
    const damaged = [];
    for (const part of fragment.replace(/^#/, "").split("&")) {
      const at = part.indexOf("=");
      if (at < 1) {
        if (part) damaged.push(part.slice(0, 40));
        continue;
      }
      try {
        const text = decodeURIComponent(part.slice(at + 1).replace(/\+/g, " "));
        pairs.push([part.slice(0, at), text.slice(0, LONGEST)]);
      } catch {
        damaged.push(part.slice(0, 40));
      }
    }
    return { pairs, damaged };
  }

  /* "18m" -> ["18", "m"] where "m" is one of ``symbols``; else [text, null]. */
  function splitUnit(text, symbols) {
    const trimmed = text.trim();
    for (const symbol of [...symbols].sort((a, b) => b.length - a.length)) {
      for (const written of [symbol, plainUnit(symbol)]) {
        if (!written || !trimmed.endsWith(written)) continue;
        const number = trimmed.slice(0, -written.length).trim();
        if (/[\d¼½¾⅛⅜⅝⅞.,]$/.test(number)) return [number, symbol];
      }
    }
    return [text, null];
  }

  /* True where the fragment holds numbers and is not the name of a heading. */
  function holdsNumbers(fragment) {
    return fragment.includes("=");
  }

  window.SpringlineLink = { encode, decode, splitUnit, plainUnit, holdsNumbers };
})();
