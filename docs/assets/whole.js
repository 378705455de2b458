/* The whole answer of a site, and two ways side by side. What stands here was printed with our
   example; for a link with a site Python fills the same places, one stage after the other. */
(function () {
  "use strict";

  const Engine = window.SpringlineEngine;
  const Store = window.SpringlineStore;
  const { holdsNumbers } = window.SpringlineLink;
  const STAGES = [
    ["verdict", ["top", "outlets"], "Working out whether it reaches and keeps up…"],
    ["parts", ["list", "set", "assumed", "unchecked", "goes"], "Working out every part…"],
    ["changes", ["changes"], "Trying changes…"],
    ["fails", ["fails"], "Trying bad days…"],
    ["bands", ["bands"], "Working out how sure the figures are…"],
  ];
  const DRAFT = "springline-compare";
  const WAIT = "Still being worked out …";

  function make(tag, attributes = {}, ...inside) {
    const made = document.createElement(tag);
    for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
    made.append(...inside);
    return made;
  }

  class Page {
    constructor(block) {
      Object.assign(this, { block, turn: 0 });
      block.classList.add("sl-scripted"); // what a link brings is shown by this script
      window.SpringlineLink.proseBelow(block);
      this.name = this.part("name");
      this.said = this.part("said");
      window.addEventListener("hashchange", () => this.open());
    }

    part = (name) => this.block.querySelector(`[data-sl-desk-${name}]`);

    place = (name) => this.block.querySelector(`[data-sl-place="${name}"]`);

    say(text, alarm = false) {
      this.said.textContent = text;
      this.said.classList.toggle("sl-alarm", alarm);
    }

    /* Python escapes all that a person typed. */
    fill(parts) {
      for (const [name, html] of Object.entries(parts)) {
        const place = this.place(name);
        if (!place) continue;
        place.classList.remove("is-pending");
        place.innerHTML = html;
      }
    }

    pending(names) {
      for (const name of names) {
        const place = this.place(name);
        place.classList.add("is-pending");
        place.textContent = WAIT;
      }
    }

    empty(names) {
      for (const name of names) this.place(name).replaceChildren();
    }

    /* null where a newer question was put, or it went wrong, which is said. */
    async ask(request, turn) {
      const { base, flat } = this.block.dataset;
      try {
        await Engine.start();
        const reply = await Engine.ask({ op: "desk", sheet: "reach", base, flat: flat === "1", ...request });
        if (turn !== this.turn) return null;
        const wrong = reply.failed || (reply.errors || []).join(" ");
        if (!wrong) return reply;
        this.say(wrong, true);
      } catch (error) {
        if (turn === this.turn) this.say(error.message, true);
      }
      return null;
    }
  }

  class Whole extends Page {
    constructor(block) {
      super(block);
      this.open();
    }

    async open() {
      if (!holdsNumbers(location.hash)) return;
      const turn = (this.turn += 1);
      const fragment = location.hash.slice(1);
      const all = STAGES.flatMap(([, places]) => places);
      this.name.textContent = "";
      this.pending(all);
      for (const [stage, places, told] of STAGES) {
        this.say(told);
        for (let at = 0, done = false; !done;) {
          const reply = await this.ask({ do: "whole", stage, at, fragment }, turn);
          if (!reply) {
            if (turn === this.turn) this.empty(places.includes("top") ? all : places);
            return;
          }
          this.fill(reply.parts);
          ({ at, done } = reply);
          if (stage === "verdict") this.named(reply);
        }
      }
      this.say("All parts are worked out.");
    }

    named({ name, said }) {
      this.name.textContent = [name, ...said].filter(Boolean).join(". ");
    }
  }

  class Compare extends Page {
    constructor(block) {
      super(block);
      this.form = this.part("form");
      this.form.hidden = false;
      this.form.addEventListener("submit", (event) => {
        event.preventDefault();
        this.compare();
      });
      this.copier = this.part("copy");
      this.copier.addEventListener("click", () => this.copy());
      for (const key of ["a", "b"]) {
        this.box(key).value = this.draft()[key] || "";
        this.box(key).addEventListener("input", () => this.keep());
        this.saved(key);
      }
      this.open();
    }

    box = (key) => this.block.querySelector(`[data-sl-desk-link="${key}"]`);

    draft() {
      try {
        return JSON.parse(sessionStorage.getItem(DRAFT)) || {};
      } catch {
        return {};
      }
    }

    keep() {
      try {
        sessionStorage.setItem(DRAFT, JSON.stringify({ a: this.box("a").value, b: this.box("b").value }));
      } catch {
        /* then it stands in the box alone */
      }
    }

    saved(key) {
      const menu = this.block.querySelector(`[data-sl-desk-saved="${key}"]`);
      const names = Store ? Store.names() : [];
      menu.hidden = !names.length;
      menu.replaceChildren(make("option", { value: "" }, "Or a saved site"),
        ...names.map((name) => make("option", { value: name }, name)));
      menu.addEventListener("change", () => {
        if (menu.value) this.box(key).value = "";
      });
    }

    chosen(key) {
      const menu = this.block.querySelector(`[data-sl-desk-saved="${key}"]`);
      return (menu.value && !this.box(key).value.trim() && Store.get(menu.value)?.packed) || "";
    }

    open() {
      if (holdsNumbers(location.hash)) this.compare();
    }

    async compare() {
      const turn = (this.turn += 1);
      this.say("Working out both ways…");
      const request = { do: "compare", fragment: holdsNumbers(location.hash) ? location.hash.slice(1) : "" };
      for (const key of ["a", "b"]) {
        request[key] = this.box(key).value;
        request[`${key}_site`] = this.chosen(key);
      }
      const reply = await this.ask(request, turn);
      if (!reply) return;
      this.faults(reply.fields);
      if (Object.keys(reply.fields).length) return this.say("One of the links cannot be read.", true);
      const places = [...this.block.querySelectorAll("[data-sl-place]")].map((one) => one.dataset.slPlace);
      this.empty(places);
      this.fill(reply.parts);
      const { fragment, a, b, a_site: savedA, b_site: savedB } = request;
      if (fragment || a || b || savedA || savedB) this.name.textContent = "";
      this.say(reply.said.join(" ") || "Both ways are worked out.");
      this.kept(reply.fragment, reply.a);
    }

    /* The address holds both ways; a page opened from here takes the first one along. */
    kept(fragment, first) {
      if (!fragment) return;
      history.replaceState(history.state, "", `#${fragment}`);
      this.copier.hidden = false;
      window.SpringlineCarry?.from(() => first);
    }

    faults(fields) {
      for (const key of ["a", "b"]) {
        const place = this.block.querySelector(`[data-sl-desk-error="${key}"]`);
        place.textContent = fields[key] || "";
        place.hidden = !fields[key];
        this.box(key).setAttribute("aria-invalid", String(Boolean(fields[key])));
      }
    }

    async copy() {
      try {
        await navigator.clipboard.writeText(location.href);
        this.say("Link copied.");
      } catch {
        this.say("This browser does not copy. Take the address from its bar.", true);
      }
    }
  }

  const KINDS = { whole: Whole, compare: Compare };
  for (const block of document.querySelectorAll("[data-sl-desk]")) {
    const Kind = KINDS[block.dataset.slDesk];
    if (Kind) new Kind(block);
  }
})();
