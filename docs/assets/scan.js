/* The address of a printed sheet as a QR code (ISO/IEC 18004), so that a phone at the site opens
   the same numbers. The library is loaded once the calculator is live, or for "Print". */
(function () {
  "use strict";

  const LIBRARY = new URL("../vendor/qrcode.js", document.currentScript.src).href;
  const CORRECTION = "L"; // 7 % of it may be smudged; what holds more of that holds fewer outlets
  const MOST = 117; // squares a side; a larger code would be too fine to read from paper
  const SQUARE = 0.45; // mm
  const MARGIN = 4; // squares left white all around, as the standard wants
  const AFTER_THE_START = 1000; // ms
  const TOO_LONG = "This address is too long for a QR code that a phone could read.";
  const SVG = "http://www.w3.org/2000/svg";
  const Engine = window.SpringlineEngine;

  let loading = null;

  /* Where it cannot be had, the address stands in words. */
  function load() {
    loading = loading || Engine.script(LIBRARY).catch(() => {
      loading = null;
    });
    return loading;
  }

  function element(name, attributes) {
    const made = document.createElementNS(SVG, name);
    for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
    return made;
  }

  function encode(text) {
    const code = window.qrcode(0, CORRECTION); // 0: as few squares as will do
    code.addData(text, "Byte");
    code.make();
    return code;
  }

  function drawing(code) {
    const side = code.getModuleCount();
    const squares = [];
    for (let row = 0; row < side; row += 1) {
      for (let column = 0; column < side; column += 1) {
        if (code.isDark(row, column)) squares.push(`M${column} ${row}h1v1h-1z`);
      }
    }
    const whole = side + 2 * MARGIN;
    const svg = element("svg", {
      viewBox: `${-MARGIN} ${-MARGIN} ${whole} ${whole}`,
      width: `${whole * SQUARE}mm`,
      height: `${whole * SQUARE}mm`,
      role: "img",
      "aria-label": "QR code of this sheet's address",
      "shape-rendering": "crispEdges",
    });
    svg.append(element("path", { d: squares.join(""), fill: "#000" }));
    return svg;
  }

  /* Nothing is drawn for an address that only this computer knows; one too long is said to be. */
  function show(place, address) {
    place.replaceChildren();
    if (!window.qrcode || !/^https?:/.test(address)) return;
    try {
      const code = encode(address);
      place.append(code.getModuleCount() <= MOST ? drawing(code) : TOO_LONG);
    } catch (error) {
      place.append(TOO_LONG);
      console.info("Springline prints no code: " + (error.message || error));
    }
  }

  if (document.querySelector("section.sl")) {
    Engine.settled().then(() => setTimeout(load, AFTER_THE_START));
  }
  window.SpringlineScan = { load, show };
})();
