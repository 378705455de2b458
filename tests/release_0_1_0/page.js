/* In the page of 0.1.0: what it asks Python for is kept, and Python itself is not needed. */
(() => {
  const asked = [];
  let turn = 0;

  async function ask(request) {
    asked.push(request);
    if (request.op === "work") return { errors: {}, notes: {}, same: {}, html: "", text: "" };
    return JSON.parse(await window.answered(JSON.stringify(request)));
  }

  let engine;
  Object.defineProperty(window, "SpringlineEngine", {
    get: () => engine,
    set(made) {
      engine = Object.defineProperty(made, "ready", { get: () => true, set() {} });
      engine.ask = ask;
      engine.start = () => Promise.resolve();
    },
  });

  const pause = (ms) => new Promise((done) => setTimeout(done, ms));
  const section = () => document.querySelector("section.sl");

  function seen() {
    const said = section().querySelector(".sl-status").textContent;
    const at = said.indexOf("Not understood in this link");
    const { system, texts, units } = asked.at(-1);
    return { hash: location.hash, system, texts, units, left: at < 0 ? "" : said.slice(at) };
  }

  /* What the page makes of a link that comes while it is open. */
  async function read(fragment) {
    history.replaceState(null, "", location.pathname);
    await pause(0);
    asked.length = 0;
    const come = new Promise((done) => addEventListener("hashchange", done, { once: true }));
    location.hash = fragment;
    await come;
    await pause(0);
    return seen();
  }

  function put(control, text) {
    control.value = text;
    control.dispatchEvent(new Event("input", { bubbles: true }));
  }

  function field(key, text, unit, leave) {
    const wrap = section().querySelector(`.sl-field[data-key="${key}"]`);
    const menu = wrap.querySelector("select.sl-unit");
    if (menu && unit) menu.value = unit;
    const box = wrap.querySelector("input, textarea, select:not(.sl-unit)");
    put(box, text);
    if (leave) box.dispatchEvent(new Event("change", { bubbles: true }));
  }

  function step(wrap, [way, at, column, text]) {
    const rows = wrap.querySelector("tbody").rows;
    const row = rows[at % (rows.length || 1)];
    if (way === "add") wrap.querySelector('[data-rows="add"]').click();
    else if (way === "unit") unit(wrap, at, column);
    else if (way === "cell") {
      if (row) put(row.cells[column].querySelector("input, select"), text);
    } else row?.querySelector(`[data-rows="${way}"]`).click();
  }

  function unit(wrap, column, symbol) {
    const menu = wrap.querySelector(`thead select[data-column="${column}"]`);
    if (menu) put(menu, symbol);
  }

  /* The link that the page writes of what a reader does in it. */
  async function write(act) {
    turn += 1; // the page does not open the link it wrote last: no two may be the same
    await read(`u=${act.system}&turn=${turn}`);
    for (const [key, text, symbol] of act.fields) field(key, text, symbol, act.leave);
    for (const [key, steps] of act.rows) {
      const wrap = section().querySelector(`.sl-field[data-key="${key}"]`);
      for (const one of steps) step(wrap, one);
    }
    const other = act.system === "us" ? "metric" : "us";
    if (act.switch) {
      section().querySelector(`button[data-system="${other}"]`).click();
      while (section().querySelector(`button[data-system="${other}"]`).ariaPressed !== "true") {
        await pause(5);
      }
    }
    await pause(300); // the page writes its own address a little later
    window.SpringlineScan.show = () => {};
    window.dispatchEvent(new Event("beforeprint"));
    return section().querySelector(".sl-address").textContent.split("#")[1];
  }

  window.Kept = { read, seen, write };
})();
