/* A pasted letter becomes facts of a site: Python reads it, the reader of this page unticks, corrects
   and chooses. What is typed is kept for this tab, and goes nowhere else. */
(function () {
  "use strict";

  const Engine = window.SpringlineEngine;
  const DRAFT = "springline-enquiry";
  const LARGEST = 1_000_000; // characters
  const QUIET = 600; // ms without a key before a correction is read
  const NOTHING = "Paste a letter first.";

  function make(tag, attributes = {}, ...inside) {
    const made = document.createElement(tag);
    for (const [key, value] of Object.entries(attributes)) {
      if (value !== false) made.setAttribute(key, value === true ? "" : value);
    }
    made.append(...inside);
    return made;
  }

  function draft(held) {
    try {
      if (held === undefined) return JSON.parse(sessionStorage.getItem(DRAFT)) || {};
      sessionStorage.setItem(DRAFT, JSON.stringify(held));
    } catch {
      /* then nothing is kept, and what stands in the box stays there */
    }
    return {};
  }

  class Enquiry {
    constructor(block) {
      Object.assign(this, { block, turn: 0, chosen: {}, read: "" });
      this.box = this.part("text");
      this.said = this.part("said");
      const { text = "", chosen = {} } = draft();
      if (!this.box.value && text) Object.assign(this, { chosen }).box.value = text;
      this.box.addEventListener("input", () => this.keep());
      this.box.addEventListener("input", () => this.prepare(), { once: true });
      this.box.addEventListener("keydown", (event) => {
        if (event.key === "Enter" && (event.ctrlKey || event.metaKey)) this.fresh();
      });
      this.part("read").addEventListener("click", () => this.fresh());
      this.part("clear").addEventListener("click", () => this.clear());
      for (const kind of ["dragover", "dragleave", "drop"]) {
        block.addEventListener(kind, (event) => this.dragged(event, kind));
      }
      this.part("box").hidden = false;
    }

    part = (name) => this.block.querySelector(`[data-sl-enquiry-${name}]`);

    say(text, alarm = false) {
      this.said.textContent = text;
      this.said.classList.toggle("sl-alarm", alarm);
    }

    /* The reader of letters takes a while to load: begun with the first word, it is there for the last. */
    prepare() {
      const nothing = this.request("", {});
      Engine.start().then(() => Engine.ask(nothing)).catch(() => {}); // what fails is said when it is read
    }

    request(text, chosen) {
      const { base, flat } = this.block.dataset;
      return { op: "enquiry", sheet: "reach", text, chosen, base, flat: flat === "1" };
    }

    keep() {
      draft({ text: this.box.value.slice(0, LARGEST), chosen: this.chosen });
    }

    dragged(event, kind) {
      if (!event.dataTransfer?.types.includes("Files")) return;
      event.preventDefault();
      this.block.classList.toggle("is-over", kind === "dragover");
      if (kind === "drop") this.open(event.dataTransfer.files[0]);
    }

    async open(file) {
      if (!file) return;
      if (file.size > LARGEST) return this.say(`“${file.name}” is too large for a letter.`, true);
      const text = await file.text().catch(() => "");
      if (this.box.value.trim()) this.box.value += `\n\n${text}`;
      else this.box.value = text;
      this.fresh();
    }

    clear() {
      this.turn += 1;
      this.box.value = "";
      this.chosen = {};
      this.keep();
      this.part("found").hidden = true;
      this.say("");
      this.box.focus();
    }

    /* A letter that was changed is read with nothing chosen, save what was put right for this one. */
    fresh() {
      if (this.read && this.read !== this.box.value) this.chosen = {};
      this.keep();
      return this.ask(true);
    }

    async ask(whole = false) {
      const text = this.box.value;
      if (!text.trim()) return this.say(NOTHING, true);
      const turn = (this.turn += 1);
      this.say("Reading it…");
      const request = this.request(text, this.chosen);
      try {
        await Engine.start();
        const reply = await Engine.ask(request);
        if (turn !== this.turn) return;
        if (reply.failed) return this.say(reply.failed, true);
        this.read = text;
        this.show(reply, whole);
        const weighed = await Engine.ask({ ...request, ask: true });
        if (turn === this.turn && !weighed.failed) this.asks(weighed.asks);
      } catch (error) {
        if (turn === this.turn) this.say(error.message, true);
      }
    }

    choose(path, text, beside) {
      this.chosen = { ...this.chosen, [path]: text };
      this.keep();
      this.beside = beside;
      this.ask();
    }

    // What was read ---------------------------------------------------------------------------

    show(reply, whole) {
      const count = reply.facts.length;
      const open = reply.unclear.length + reply.contradictions.length;
      const read = `${count} ${count === 1 ? "fact" : "facts"} read`;
      this.say(`${read}, ${open} to choose, ${reply.unused.length} not used.`);
      this.part("found").hidden = false;
      this.part("notes").replaceChildren(...reply.notes.map((note) => make("li", {}, note)));
      if (whole) this.part("marked").innerHTML = reply.html; // Python escapes it
      if (whole || this.part("facts").childElementCount !== count) {
        this.part("facts").replaceChildren(...reply.facts.map((fact) => this.fact(fact)));
        this.part("choices").replaceChildren(...this.choices(reply));
      }
      this.faults(reply.errors);
      this.list("left", reply.left.map(({ quote, why }) => `“${quote}”: ${why}`));
      this.list("unused", reply.unused.map((quote) => `“${quote}”`));
      this.part("goes").replaceChildren(...reply.goes.map(({ address, text }) =>
        make("li", {}, make("a", { href: address }, text))));
      this.part("go").hidden = !reply.goes.length;
      this.part("asks").replaceChildren();
      this.part("asked").hidden = true;
    }

    list(name, lines) {
      this.part(name).replaceChildren(...lines.map((line) => make("li", {}, line)));
      this.part(`${name}-all`).hidden = !lines.length;
    }

    fact(fact) {
      const id = `enquiry-${fact.path.replaceAll(".", "-")}`;
      const tick = make("input", { type: "checkbox", id, checked: fact.kept });
      const value = fact.options.length ? this.menu(fact) : this.number(fact);
      value.setAttribute("aria-label", `${fact.label}, value`);
      value.disabled = !fact.kept;
      tick.addEventListener("change", () => {
        value.disabled = !tick.checked;
        this.choose(fact.path, tick.checked ? value.value : "", id);
      });
      const more = [fact.range && `told as ${fact.range}`, fact.reason].filter(Boolean).join("; ");
      return make("li", { "data-path": fact.path },
        make("label", { for: id }, tick, ` ${fact.label}`), value,
        make("span", { class: "sl-help" }, `“${fact.quote}”${more ? ` (${more})` : ""}`),
        make("span", { class: "sl-error", role: "alert", hidden: true }));
    }

    menu(fact) {
      const menu = make("select", {}, ...fact.options.map(([value, label]) =>
        make("option", { value, selected: value === fact.shown }, label)));
      menu.addEventListener("change", () => this.choose(fact.path, menu.value, menu.id));
      return menu;
    }

    number(fact) {
      const box = make("input", { type: "text", value: fact.shown, autocomplete: "off" });
      box.addEventListener("input", () => {
        clearTimeout(this.pause);
        this.pause = setTimeout(() => this.choose(fact.path, box.value), QUIET);
      });
      return box;
    }

    choices({ unclear, contradictions }) {
      const made = unclear.map(({ quote, choices }) => this.choice(`“${quote}” may mean`, choices));
      return [...made, ...contradictions.map(({ label, choices }) =>
        this.choice(`${label}: said in two ways`, choices))];
    }

    choice(told, choices) {
      const name = `enquiry-choice-${(this.counted = (this.counted || 0) + 1)}`;
      const none = { label: "Not known", none: true, chosen: choices.every(({ chosen }) => !chosen) };
      const set = make("fieldset", {}, make("legend", {}, told));
      for (const one of [...choices, none]) {
        const button = make("input", { type: "radio", name, checked: one.chosen });
        button.addEventListener("change", () => this.pick(choices, one));
        set.append(make("label", {}, button, ` ${one.label}`));
      }
      return set;
    }

    /* One reading is taken; what the others would say is not known again. */
    pick(choices, { path, text }) {
      const others = new Set(choices.map((one) => one.path));
      this.chosen = Object.fromEntries(Object.entries(this.chosen).filter(([key]) => !others.has(key)));
      if (path) this.chosen[path] = text;
      this.keep();
      this.ask();
    }

    faults(errors) {
      for (const row of this.part("facts").children) {
        const place = row.querySelector(".sl-error");
        const sentence = errors[row.dataset.path] || "";
        place.textContent = sentence;
        place.hidden = !sentence;
      }
    }

    asks(questions) {
      this.part("asks").replaceChildren(...questions.map(({ label, told }) =>
        make("li", {}, make("strong", {}, label), `: ${told}`)));
      this.part("asked").hidden = !questions.length;
    }
  }

  for (const block of document.querySelectorAll("[data-sl-enquiry]")) new Enquiry(block);
})();
