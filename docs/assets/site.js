/* Whose numbers a form holds: the bar above it. The site itself is Python's; here it is only held,
   shown by name, and handed on. new SpringlineSite.Bar(calculator). */
(function () {
  "use strict";

  const Engine = window.SpringlineEngine;
  const Store = window.SpringlineStore;
  const Marks = window.SpringlineMarks;
  const CHANGED = "Alder Terrace, changed";
  const UNNAMED = "Unnamed site";
  const EMPTY = { site: null, name: "", packed: "", summary: "", ways: [], way: "", line: "",
    oneToOne: [], reasons: {}, cells: {}, filled: [], typed: [], may: null };

  function button(text, press, about) {
    const made = document.createElement("button");
    made.type = "button";
    made.textContent = text;
    if (about) made.setAttribute("aria-label", about);
    made.addEventListener("click", press);
    return made;
  }

  class Bar {
    constructor(calculator) {
      this.calc = calculator;
      this.el = calculator.section.querySelector("[data-sl-site]");
      this.parts = Object.fromEntries(["whose", "about", "way", "back", "save", "said"].map(
        (name) => [name, this.el.querySelector(`[data-sl-site-${name}]`)]));
      this.choose = this.parts.way.querySelector("select");
      this.printed = { ...EMPTY, oneToOne: this.el.dataset.slSite.split(" "),
        ways: [...this.choose.options].map(({ value, text }) => ({ value, label: text })) };
      this.printed.way = this.printed.ways[0]?.value || "";
      this.unknowns = Marks.unknowns(calculator.form, () => calculator.system);
      Marks.inTables(calculator.form);
      Object.assign(this, this.printed, { whose: "example", stamp: "", onward: "" });
      this.choose.addEventListener("change", () => this.another());
      this.parts.back.addEventListener("click", () => this.putBack());
      this.parts.save.addEventListener("click", () => this.save(this.name));
      this.menu = new window.SpringlineSites.Menu(this);
      Store.watch((name, record) => this.heard(name, record));
    }

    // What the calculator tells ---------------------------------------------------------------

    example() {
      Object.assign(this, this.printed, { whose: "example", stamp: "", onward: "" });
      this.say("");
      this.show();
    }

    pending() {
      Object.assign(this, EMPTY, { whose: "reading", stamp: "", onward: "" });
      this.say("");
      this.show();
    }

    /* Python has read a link. */
    take({ site, standing }) {
      if (site) {
        this.hold(site);
        this.filled = site.filled;
        this.may = site.may || null; // what whoever made the link asks its reader to change
        this.whose = Store.carried() === site.packed ? "own" : "link";
      } else {
        const given = Object.values(standing).some((one) => one !== "example");
        Object.assign(this, this.printed, { whose: given ? "numbers" : "example" });
      }
      this.show();
    }

    /* A field was typed in. */
    changed(key) {
      this.filled = this.filled.filter((one) => one !== key);
      if (!this.typed.includes(key)) this.typed = [...this.typed, key];
      this.show();
    }

    /* What Python is told of it with the numbers. */
    tell() {
      const { packed: text, way, filled: kept } = this;
      const site = this.site && { text, way, kept, ...(this.may && { may: this.may.code }) };
      return { reasons: this.reasons, site, way: this.way };
    }

    answered(reply) {
      this.onward = reply.onward ?? this.onward; // with the rest of an answer
    }

    /* The other units: what is the site's is filled again, so that it is rounded once. */
    async converted() {
      if (this.site) await this.fill(this.now(), this.whose, this.way, this.typed);
    }

    // The site --------------------------------------------------------------------------------

    async ask(request) {
      await Engine.start();
      const { sheet, system } = this.calc;
      const reply = await Engine.ask({ op: "site", sheet, system, ...request });
      if (reply.failed) throw new Error(reply.failed);
      if (reply.errors.length) throw new Error(reply.errors.join(" "));
      return reply;
    }

    /* Runs what may fail; the sentence why stands in the bar. */
    async attempt(task) {
      try {
        return await task();
      } catch (error) {
        this.say(error.message, true);
        return null;
      }
    }

    hold({ site, name, summary, packed, ways, way, line, one_to_one, reasons, cells }) {
      Object.assign(this, { site, name, summary, packed });
      if (ways) Object.assign(this, { ways, way, line, oneToOne: one_to_one, reasons, cells });
      const saved = Store.get(name);
      if (saved?.packed === packed) this.stamp = saved.stamp;
    }

    /* The form from a site; ``kept`` are keys that stay as they are typed. */
    async fill(made, whose, way = "", kept = []) {
      const { calc } = this;
      const site = made.site;
      const filled = await this.ask({ do: "fill", site, way });
      const other = !kept.length && made.packed !== this.packed;
      if (other) calc.fields.forEach((one) => one.toStandard(calc.system));
      const now = calc.state();
      const keys = Object.keys(filled.texts).filter((key) => !kept.includes(key));
      const mine = (found) => Object.fromEntries(Object.entries(found).filter(
        ([key]) => keys.includes(key.split(".")[0])));
      const standing = whose === "example"
        ? Object.fromEntries(keys.map((key) => [key, "example"])) : mine(filled.standing);
      this.hold({ ...made, ...filled });
      Object.assign(this, { whose, filled: keys, typed: kept });
      if (whose === "example") Object.assign(this, { site: null, packed: "", stamp: "" });
      else Store.carried(this.packed);
      calc.fill({
        texts: { ...now.texts, ...mine(filled.texts) },
        units: { ...now.units, ...mine(filled.units) },
        standing: { ...now.standing, ...standing },
      });
      this.show();
    }

    /* Another way through the same site. */
    async another() {
      const way = this.choose.value;
      const { typed } = this;
      const before = this.snapshot();
      await this.attempt(async () => {
        const made = this.site ? this : await this.ask({ do: "demo" });
        await this.fill({ ...this.now(), ...made }, this.site ? this.whose : "example", way);
        this.say("");
        if (typed.length) this.offer("What you typed was for the way before, and is left out.", before);
      });
    }

    now() {
      const { site, name, summary, packed } = this;
      return { site, name, summary, packed };
    }

    snapshot() {
      const { calc } = this;
      const state = Object.fromEntries(Object.keys(EMPTY).map((key) => [key, this[key]]));
      return { bar: { ...state, whose: this.whose, stamp: this.stamp }, form: calc.state() };
    }

    restore({ bar, form }) {
      Object.assign(this, bar);
      if (this.site) Store.carried(this.packed);
      this.calc.fill(form);
      this.say("");
      this.show();
    }

    back() {
      const groups = (key) => this.calc.fields.find((one) => one.key === key)?.wrap.dataset.when;
      return this.typed.filter((key) =>
        this.oneToOne.includes(key) || (groups(key) === "kind" && this.oneToOne.includes("kind")));
    }

    async putBack() {
      const before = this.snapshot();
      await this.attempt(async () => {
        const { site } = this.site ? this : await this.start();
        const { system, texts, units, standing } = this.calc.state();
        const put = await this.ask({ do: "back", site, way: this.way, system, texts, units, standing });
        const kept = this.typed.filter((key) => put.stays.includes(key));
        await this.fill(put, "own", this.way, kept);
        this.offer(put.changes.length ? "Put into the site:" : "Nothing in the site is changed.", before,
          [...put.changes, ...put.what_if]);
      });
    }

    /* A site to put numbers into where there is none yet. */
    start() {
      return this.whose === "example"
        ? this.ask({ do: "derive", name: CHANGED })
        : this.ask({ do: "new", name: UNNAMED });
    }

    // Saved copies ----------------------------------------------------------------------------

    get saved() {
      const held = this.site && Store.get(this.name);
      return held && held.stamp === this.stamp ? held : null;
    }

    save(name) {
      const known = this.name === name ? this.stamp : "";
      const { stamp, refused, other } = Store.save(name, this, known);
      if (refused) return this.say(refused, true);
      if (other) return this.clash(name, other, "is saved here already and differs");
      Object.assign(this, { stamp, whose: "own" });
      Store.carried(this.packed);
      this.show();
      this.say(`Saved in this browser as “${name}”.`);
    }

    /* Another tab saved or forgot a site. */
    heard(name, record) {
      this.menu.refresh();
      if (!this.site || name !== this.name || !this.stamp) return;
      if (!record) {
        this.stamp = "";
        this.say(`“${name}” was forgotten in another tab; here it is still in use.`);
      } else if (record.packed !== this.packed) {
        this.clash(name, record, "was changed in another tab");
      }
      this.show();
    }

    clash(name, record, how) {
      const load = () => this.attempt(async () => {
        await this.fill(record, "own", this.way);
        this.say(`Loaded “${name}” as it is saved.`);
      });
      const keep = () => {
        this.stamp = record.stamp; // seen: saving replaces it
        this.say(`Yours is kept. “${name}” stays as it is saved until you save yours.`);
        this.show();
      };
      this.say(`“${name}” ${how}.`, true);
      this.parts.said.append(" ", button("Load it", load), " ", button("Keep mine", keep));
    }

    // What is shown ---------------------------------------------------------------------------

    words() {
      const mine = this.typed.length ? ", with your changes" : "";
      if (this.whose === "reading") return ["", "Reading whose numbers these are"];
      if (this.whose === "example") return ["Alder Terrace", ", our example" + mine];
      if (this.whose === "numbers") return ["", "Numbers from a link, not saved"];
      if (this.saved) {
        const same = this.saved.packed === this.packed;
        return [this.name, same ? ", saved here" : ", changed since it was saved here"];
      }
      return [this.name || "A site", (this.whose === "link" ? ", from a link" : "") + ", not saved"];
    }

    show() {
      const { whose, about, way, back, save } = this.parts;
      const [name, rest] = this.words();
      const strong = document.createElement("strong");
      strong.textContent = name;
      whose.replaceChildren(strong, rest);
      const told = [this.summary, this.line && "this way: " + this.line].filter(Boolean).join("; ");
      about.textContent = [told, this.may?.words].filter(Boolean).join(". ");
      way.hidden = this.ways.length < 2;
      if (this.choose.dataset.ways !== JSON.stringify(this.ways)) {
        this.choose.replaceChildren(...this.ways.map(({ value, label }) => new Option(label, value)));
        this.choose.dataset.ways = JSON.stringify(this.ways);
      }
      this.choose.value = this.way;
      back.hidden = this.back().length === 0 || this.whose === "reading";
      save.hidden = !this.saved || this.saved.packed === this.packed;
      this.unknowns.forEach((one) => one.show());
      this.calc.fields.forEach((field) => Marks.word(field, this));
    }

    say(sentence, wrong = false) {
      this.parts.said.textContent = sentence;
      this.parts.said.classList.toggle("sl-alarm", wrong);
    }

    /* A sentence, what changed, and the way back. */
    offer(sentence, before, changes = []) {
      this.say(sentence);
      const list = document.createElement("ul");
      for (const textContent of changes) {
        list.append(Object.assign(document.createElement("li"), { textContent }));
      }
      if (changes.length) this.parts.said.append(list);
      this.parts.said.append(" ", button("Undo", () => this.restore(before), "Undo putting back"));
    }
  }

  window.SpringlineSite = { Bar, button };
})();
