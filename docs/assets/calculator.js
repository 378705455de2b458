/* The form of a calculator: reads what is typed, asks Python, shows the reply.
   No sums are done here; the figures come from the same Python that printed the page. */
(function () {
  "use strict";

  const UNITS_KEY = "springline-units";
  const Link = window.SpringlineLink;
  const Engine = window.SpringlineEngine;
  const Drawing = window.SpringlineDrawing;
  const Scan = window.SpringlineScan;
  const RowsField = window.SpringlineRows.RowsField;

  function remembered() {
    try {
      return localStorage.getItem(UNITS_KEY);
    } catch {
      return null; // storage refused: the choice lasts for this page
    }
  }

  function remember(system) {
    try {
      localStorage.setItem(UNITS_KEY, system);
    } catch {
      /* as above */
    }
  }

  function preferred() {
    return remembered() || (/^en-(US|LR)$/.test(navigator.language) ? "us" : "metric");
  }

  /* One field: its box, its unit menu and the three lines under it. */
  class Field {
    constructor(wrap) {
      this.wrap = wrap;
      this.key = wrap.dataset.key;
      this.box = wrap.querySelector("input, textarea, select:not(.sl-unit)");
      this.menu = wrap.querySelector("select.sl-unit");
      this.error = wrap.querySelector(".sl-error");
      this.note = wrap.querySelector(".sl-note");
      this.same = wrap.querySelector(".sl-same");
      this.choice = this.box.tagName === "SELECT";
      this.original = null; // as last typed: {text, unit, system}
    }

    symbols() {
      return this.menu ? [...this.menu.options].map((option) => option.value) : [];
    }

    standard(system) {
      const data = this.box.dataset;
      return { text: data[system], unit: this.menu ? data[system + "Unit"] : undefined };
    }

    toStandard(system) {
      const { text, unit } = this.standard(system);
      this.box.value = text;
      if (this.menu) this.menu.value = unit;
      this.original = null;
    }

    isStandard(system) {
      const { text, unit } = this.standard(system);
      return this.box.value === text && (!this.menu || this.menu.value === unit);
    }

    /* What a field that shows only for some choices compares with. */
    get value() {
      return this.box.value;
    }

    /* What Python is told: the text as typed and the unit its menu stands on. */
    tell({ texts, units }) {
      texts[this.key] = this.box.value;
      if (this.menu) units[this.key] = this.menu.value;
    }

    /* Python's reply to "convert"; what was typed in that system comes back as it was typed. */
    convert(system, from, reply) {
      const before = this.original;
      if (before && before.system === system) {
        this.box.value = before.text;
        if (this.menu) this.menu.value = before.unit;
      } else if (this.menu) {
        if (!before) this.keep(from);
        this.box.value = reply.texts[this.key];
        this.menu.value = reply.units[this.key];
      }
    }

    /* Take a link's text; returns what of it could not be read. */
    take(text, system) {
      if (this.choice) {
        if (![...this.box.options].some((option) => option.value === text)) return [text];
        this.box.value = text;
        return [];
      }
      const [number, unit] = Link.splitUnit(text, this.symbols());
      this.box.value = number;
      if (this.menu) this.menu.value = unit || this.standard(system).unit;
      this.keep(system);
      return [];
    }

    keep(system) {
      this.original = { text: this.box.value, unit: this.menu && this.menu.value, system };
    }

    /* "40 psi" typed in a field whose menu says bar: the menu follows. */
    tidy(target) {
      if (!this.menu || target !== this.box) return;
      const [number, unit] = Link.splitUnit(this.box.value, this.symbols());
      if (unit) {
        this.box.value = number;
        this.menu.value = unit;
      }
    }

    linkText() {
      const text = this.box.value.trim();
      if (Link.splitUnit(text, this.symbols())[1]) return text; // typed with a unit of its own
      return text + (this.menu ? Link.plainUnit(this.menu.value) : "");
    }

    show(errors, notes, same) {
      const wrong = errors[this.key] || "";
      this.error.textContent = wrong;
      this.note.textContent = wrong ? "" : notes[this.key] || "";
      if (this.same) this.same.textContent = same[this.key] || "";
      this.box.setAttribute("aria-invalid", wrong ? "true" : "false");
      this.wrap.classList.toggle("sl-wrong", Boolean(wrong));
      if (wrong) this.wrap.closest("details")?.setAttribute("open", "");
    }
  }

  class Calculator {
    constructor(section) {
      this.section = section;
      this.sheet = section.dataset.sheet;
      this.form = section.querySelector(".sl-form");
      this.answer = section.querySelector(".sl-answer");
      this.status = section.querySelector(".sl-status");
      this.live = section.querySelector(".sl-live");
      this.said = section.querySelector(".sl-said");
      this.fields = [...section.querySelectorAll(".sl-field")].map((wrap) =>
        wrap.classList.contains("sl-rows")
          ? new RowsField(wrap, () => this.changed(wrap))
          : new Field(wrap));
      this.examples = { metric: this.answer.innerHTML, us: section.querySelector(".sl-us").innerHTML };
      this.system = "metric";
      this.text = "";
      this.busy = false;
      this.again = false;
      this.linkProblem = "";
      section.classList.add("sl-scripted");
      this.listen();
      this.open();
      this.startWhenNear();
    }

    listen() {
      this.form.addEventListener("input", (event) => this.typed(event.target));
      this.form.addEventListener("change", (event) => {
        const field = this.fieldOf(event.target);
        if (field) field.tidy(event.target);
        if (field) this.typed(event.target);
      });
      this.form.addEventListener("submit", (event) => event.preventDefault());
      this.form.addEventListener("focusin", () => this.start());
      this.section.addEventListener("click", (event) => this.clicked(event));
      window.addEventListener("hashchange", () => {
        if (Link.holdsNumbers(location.hash) && location.hash !== this.ownHash) this.open();
      });
      window.addEventListener("beforeprint", () => {
        Drawing.showAll(this.section);
        const address = this.address();
        this.section.querySelector(".sl-address").textContent = address;
        Scan.show(this.section.querySelector(".sl-scan"), address);
      });
    }

    fieldOf(target) {
      return this.fields.find((field) => field.wrap.contains(target));
    }

    /* Read the address, or start from the example in the preferred units. */
    open() {
      const fragment = location.hash;
      const { pairs, damaged } = Link.holdsNumbers(fragment)
        ? Link.decode(fragment)
        : { pairs: [], damaged: [] };
      const entries = new Map(pairs);
      this.system = entries.size
        ? (entries.get("u") === "us" ? "us" : "metric")
        : preferred();
      entries.delete("u");
      this.fields.forEach((field) => field.toStandard(this.system));
      const unread = damaged;
      for (const [key, text] of entries) {
        const field = this.fields.find((one) => one.key === key);
        const left = field ? field.take(text, this.system) : [text];
        unread.push(...left.map((part) => key + "=" + part.slice(0, 40)));
      }
      this.linkProblem = unread.length
        ? "Not understood in this link, and left out: " + unread.join(", ") + "."
        : "";
      this.showSystem();
      this.showConditions();
      if (this.untouched()) {
        this.setAnswer(this.examples[this.system]);
        this.say("A worked example. " + this.linkProblem);
      } else {
        this.answer.classList.add("sl-stale");
        this.say("Working out your numbers. Until then this is the example. " + this.linkProblem);
        this.start();
      }
      if (Engine.ready) this.ask();
    }

    untouched() {
      return this.fields.every((field) => field.isStandard(this.system));
    }

    startWhenNear() {
      const idle = window.requestIdleCallback || ((task) => setTimeout(task, 300));
      const go = () => idle(() => this.start(), { timeout: 2000 });
      if (!("IntersectionObserver" in window)) return go();
      const watcher = new IntersectionObserver((entries) => {
        if (entries.some((entry) => entry.isIntersecting)) {
          watcher.disconnect();
          go();
        }
      }, { rootMargin: "400px" });
      watcher.observe(this.form);
    }

    start() {
      if (this.started) return;
      this.started = true;
      Engine.start().then(() => this.ask(), (error) => this.failed(error));
    }

    failed(error) {
      this.started = false;
      this.say("The calculator could not start (" + error.message + "). The worked example stands. "
        + "Change a number to try again. " + this.linkProblem);
      this.answer.classList.toggle("sl-stale", !this.untouched());
    }

    typed(target) {
      const field = this.fieldOf(target);
      if (!field) return;
      this.changed(target);
    }

    changed(target) {
      this.fieldOf(target).keep(this.system);
      this.linkProblem = "";
      this.showConditions();
      this.saveLink();
      this.start();
      if (Engine.ready) this.ask();
      else this.say("Starting the calculator. Until then this is the example.");
    }

    clicked(event) {
      const button = event.target.closest("button");
      if (!button) return;
      if (button.dataset.system) this.switchTo(button.dataset.system);
      const action = button.dataset.action;
      if (action === "link") this.copy(this.address(), "Link copied.");
      if (action === "text") this.copyText();
      if (action === "print") this.print();
      if (action === "reset") this.reset();
    }

    /* The sheet alone: numbers, figures and working, without the guide around it. */
    async print() {
      await Promise.all([Drawing.showAll(this.section), Scan.load()]);
      document.body.classList.add("sl-sheet-only");
      window.print();
      document.body.classList.remove("sl-sheet-only");
    }

    /* A new entry in the history, so that "back" brings the reader's numbers again. */
    reset() {
      clearTimeout(this.saving);
      history.replaceState(history.state, "", this.fragment());
      this.fields.forEach((field) => field.toStandard(this.system));
      this.linkProblem = "";
      this.showConditions();
      this.ownHash = this.fragment();
      history.pushState(history.state, "", this.ownHash);
      if (Engine.ready) this.ask();
      else this.setAnswer(this.examples[this.system]);
    }

    /* Conditional fields, before Python has said anything: by their data attributes. */
    showConditions() {
      const hidden = new Set();
      for (const field of this.fields) {
        const key = field.wrap.dataset.when;
        if (!key) continue;
        const ruler = this.fields.find((one) => one.key === key);
        const wanted = field.wrap.dataset.wanted.split(" ");
        const out = hidden.has(key) || !wanted.includes(ruler.value);
        field.wrap.hidden = out;
        if (out) hidden.add(field.key);
      }
    }

    showSystem() {
      this.section.querySelectorAll("[data-system]").forEach((button) => {
        button.setAttribute("aria-pressed", String(button.dataset.system === this.system));
      });
    }

    state() {
      const texts = {};
      const units = {};
      this.fields.forEach((field) => field.tell({ texts, units }));
      return { sheet: this.sheet, system: this.system, texts, units };
    }

    async switchTo(system) {
      remember(system);
      if (system === this.system) return;
      if (this.untouched()) {
        this.system = system;
        this.fields.forEach((field) => field.toStandard(system));
        this.setAnswer(this.examples[system]);
      } else {
        await this.convert(system);
      }
      this.showSystem();
      this.showConditions();
      this.saveLink();
      if (Engine.ready) this.ask();
    }

    /* Every number into the other system; one typed in that system comes back as it was typed. */
    async convert(system) {
      const request = { ...this.state(), op: "convert", to: system };
      try {
        await Engine.start();
        const reply = await Engine.ask(request);
        this.system = system;
        this.fields.forEach((field) => field.convert(system, request.system, reply));
      } catch (error) {
        this.failed(error);
      }
    }

    /* Ask for the newest state; while one question is out, later ones are rolled into one. */
    async ask() {
      if (this.busy) {
        this.again = true;
        return;
      }
      this.busy = true;
      try {
        do {
          this.again = false;
          const { base, flat } = this.section.dataset;
          const reply = await Engine.ask({ ...this.state(), op: "work", base, flat: flat === "1" });
          if (!this.again) this.show(reply);
        } while (this.again);
      } catch (error) {
        this.failed(error);
      } finally {
        this.busy = false;
      }
    }

    show(reply) {
      this.fields.forEach((field) => field.show(reply.errors, reply.notes, reply.same));
      const general = reply.errors[""] || "";
      if (reply.html === undefined) {
        this.answer.classList.add("sl-stale");
        const where = general || "Mend the marked field.";
        this.say(where + " The figures below are from before, not from what is entered now.", true);
        return;
      }
      this.text = reply.text;
      this.answer.classList.remove("sl-stale");
      const standing = this.html === undefined && this.untouched();
      if (!standing && reply.html !== this.html) this.setAnswer(reply.html, reply.charts);
      this.html = reply.html;
      this.say((this.untouched() ? "A worked example: change any number. " : "") + this.linkProblem);
      this.section.dataset.state = "live";
    }

    /* New answer; the reader's open and closed parts stay, old drawings stand until redrawn. */
    setAnswer(html, charts) {
      const working = this.answer.querySelector(".sl-working");
      const open = working ? working.open : true;
      const drawings = new Map();
      this.answer.querySelectorAll(".sl-chart").forEach((figure) => {
        drawings.set(figure.dataset.chart, [...figure.querySelector(".sl-drawing").childNodes]);
      });
      this.answer.innerHTML = html;
      this.html = charts ? html : undefined;
      const fresh = this.answer.querySelector(".sl-working");
      if (fresh) fresh.open = open;
      if (charts) {
        this.answer.querySelectorAll(".sl-chart").forEach((figure) => {
          const place = figure.querySelector(".sl-drawing");
          place.replaceChildren(...(drawings.get(figure.dataset.chart) || []));
          place.classList.add("sl-waiting");
          Drawing.show(place, charts[figure.dataset.chart]);
        });
      }
      clearTimeout(this.speaking);
      this.speaking = setTimeout(() => {
        this.live.textContent = this.answer.querySelector(".sl-verdict")?.textContent || "";
      }, 900);
    }

    say(sentence, wrong = false) {
      this.status.textContent = sentence.trim();
      this.status.classList.toggle("sl-alarm", wrong);
    }

    fragment() {
      const pairs = this.system === "us" ? [["u", "us"]] : [];
      for (const field of this.fields) {
        if (!field.wrap.hidden && !field.isStandard(this.system)) {
          pairs.push([field.key, field.linkText()]);
        }
      }
      if (pairs.length === 0) pairs.push(["u", this.system]);
      return "#" + Link.encode(pairs);
    }

    saveLink() {
      clearTimeout(this.saving);
      this.saving = setTimeout(() => {
        this.ownHash = this.fragment();
        history.replaceState(history.state, "", this.ownHash);
      }, 250);
    }

    address() {
      const published = document.querySelector('link[rel="canonical"]');
      const here = location.protocol === "file:" && published ? published.href : location.href;
      return here.split("#")[0] + this.fragment();
    }

    copyText() {
      if (!this.text) return this.tell("Wait for the calculator to start, then copy again.");
      return this.copy(this.text + "\n" + this.address() + "\n", "Text copied.");
    }

    async copy(text, done) {
      try {
        await navigator.clipboard.writeText(text);
        this.tell(done);
      } catch {
        this.offer(text);
      }
    }

    /* Where the clipboard is refused, the text stands selected to be copied by hand. */
    offer(text) {
      const area = document.createElement("textarea");
      area.className = "sl-offer";
      area.readOnly = true;
      area.rows = 4;
      area.value = text;
      area.setAttribute("aria-label", "Copy this text");
      this.said.replaceChildren("Copy this: ", area);
      area.focus();
      area.select();
    }

    tell(sentence) {
      this.said.textContent = sentence;
      clearTimeout(this.telling);
      this.telling = setTimeout(() => (this.said.textContent = ""), 6000);
    }
  }

  document.querySelectorAll("section.sl").forEach((section) => new Calculator(section));
})();
