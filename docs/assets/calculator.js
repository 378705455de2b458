/* The form of a calculator: reads what is typed, asks Python, shows the reply.
   No sums are done here; the figures come from the same Python that printed the page. */
(function () {
  "use strict";

  const PATIENCE = 800; // ms without a key, then what is wrong is said; our choice
  const Engine = window.SpringlineEngine;
  const Faults = window.SpringlineFaults;
  const Units = window.SpringlineUnits;
  const { Field } = window.SpringlineField;
  const { RowsField } = window.SpringlineRows;

  class Calculator {
    constructor(section) {
      this.section = section;
      this.sheet = section.dataset.sheet;
      this.form = section.querySelector(".sl-form");
      this.fields = [...section.querySelectorAll(".sl-field")].map((wrap) =>
        wrap.classList.contains("sl-rows")
          ? new RowsField(wrap, () => this.changed(wrap))
          : new Field(wrap));
      this.points = new window.SpringlinePoints.Points(this.fields);
      const speaker = new window.SpringlineSpeak.Speaker(section.querySelector(".sl-live"));
      this.figures = new window.SpringlineFigures.Figures(section, speaker);
      this.opening = new window.SpringlineOpening.Opening(this);
      this.share = new window.SpringlineShare.Share(this);
      this.system = "metric";
      this.text = "";
      this.asking = new window.SpringlineAsking.Asking(this);
      this.tidied = {};
      this.idle = []; // keys of fields that the rows of a table replace
      this.errors = {}; // of the newest reply
      this.told = {}; // those of them that stand at their fields
      this.site = new window.SpringlineSite.Bar(this);
      window.SpringlineJob.begin(this);
      window.SpringlineCarry.from(() => this.site.onward);
      section.classList.add("sl-scripted");
      this.listen();
      this.open();
      this.asking.startWhenNear();
    }

    listen() {
      this.form.addEventListener("input", (event) => this.typed(event.target));
      this.form.addEventListener("change", (event) => {
        const field = this.fieldOf(event.target);
        if (!field) return;
        this.typed(event.target);
        this.patient(false);
        field.left = event.target === field.box;
        if (this.fresh) field.tidy(this.tidied, this.system);
      });
      this.form.addEventListener("focusout", () => this.patient(false));
      this.form.addEventListener("submit", (event) => event.preventDefault());
      this.form.addEventListener("focusin", () => this.asking.start());
      this.section.addEventListener("click", (event) => this.clicked(event));
    }

    fieldOf(target) {
      return this.fields.find((field) => field.wrap.contains(target));
    }

    /* Read the address, or start from the example in the preferred units. */
    open() {
      this.asking.drop();
      const linked = this.opening.take();
      Object.assign(this, { example: !linked, reading: linked, cut: false, touched: false });
      Object.assign(this, { own: false, eager: true });
      this.figures.problem = "";
      this.changedState();
      const { pairs, line } = linked ? this.opening.raw(this.fields) : { pairs: [] };
      const shown = new Map(pairs);
      this.system = !linked ? Units.preferred() : /^us/i.test(shown.get("u")) ? "us" : "metric";
      this.fields.forEach((field) => field.toStandard(this.system));
      this.showSystem();
      if (linked) this.site.pending();
      else this.site.example();
      if (linked) {
        this.fields.forEach((field) => shown.has(field.key) && field.pend(shown.get(field.key)));
        if (Engine.ready && this.figures.isShown) this.figures.is("pending"); // it is read at once
        else this.figures.empty("reading", "", line);
        this.asking.go();
      } else {
        this.figures.example(this.system);
        if (Engine.ready) this.asking.ask();
      }
      this.showConditions();
    }

    take(reply) {
      this.reading = false;
      this.cut = reply.cut;
      this.figures.problem = reply.said.join(" ");
      this.system = reply.system;
      for (const field of this.fields) {
        if (field.standing !== "given") field.take(reply, reply.system); // or typed meanwhile
      }
      this.site.take(reply);
      this.showSystem();
      this.showConditions();
      if (!this.cut) return this.asking.ask();
      this.figures.empty("none");
      this.section.dataset.state = "live";
      this.settled(new Error(this.figures.problem));
    }

    /* Texts that the site fills in, or that stood here before. */
    fill({ texts, units, standing, system = this.system }) {
      this.asking.drop();
      Object.assign(this, { example: false, reading: false, cut: false, touched: true, eager: true });
      this.figures.problem = "";
      this.system = system;
      this.fields.forEach((field) => field.take({ texts, units, standing }, system));
      this.changedState();
      this.showSystem();
      this.showConditions();
      this.figures.expect();
      this.asking.go();
    }

    /* Nothing of what was worked out belongs to what is in the form now. */
    changedState() {
      Object.assign(this, { fresh: false, partial: false, text: "" });
      this.section.setAttribute("data-sl-busy", "");
    }

    /* Nothing more is to come: whoever waits goes on, or hears why not. */
    settled(error) {
      this.section.removeAttribute("data-sl-busy");
      this.asking.settled(error);
    }

    /* No answer came; what is on the page is said to be the example's, or is none. */
    broken(sentence) {
      const { figures } = this;
      if (this.example) figures.is("example", sentence + " The worked example is as printed.");
      else if (this.own) figures.withoutVerdict("failed", sentence);
      else figures.empty("failed", sentence, ...figures.kept());
      this.settled(new Error(sentence));
    }

    typed(target) {
      if (this.fieldOf(target)) this.changed(target);
    }

    changed(target) {
      const field = this.fieldOf(target);
      field.touch(this.system);
      this.site.changed(field.key);
      if (!this.cut && !this.reading) this.figures.problem = "";
      Object.assign(this, { example: false, cut: false, touched: true });
      this.changedState();
      this.showConditions();
      this.patient(true);
      this.figures.expect();
      this.asking.go();
      if (!Engine.ready && !this.own && !this.reading) this.figures.empty("starting");
    }

    /* Somebody who types is not told of what is half typed: only once they pause or go on. */
    patient(waits) {
      clearTimeout(this.pause);
      this.eager = !waits;
      if (waits) this.pause = setTimeout(() => this.patient(false), PATIENCE);
      else if (this.fresh) this.showFaults();
    }

    clicked(event) {
      const change = event.target.closest("[data-sl-change]");
      if (change) {
        event.preventDefault();
        Faults.lead(Faults.control(change.dataset.slChange, this.fields));
      }
      const button = event.target.closest("button");
      if (!button) return;
      if (button.dataset.system) this.switchTo(button.dataset.system);
      if (button.dataset.action === "reset") this.reset();
      else this.share.act(button.dataset.action);
    }

    /* "Back" brings the reader's numbers again. */
    reset() {
      this.asking.drop();
      this.opening.push("#u=" + this.system); // until Python has written it
      this.fields.forEach((field) => field.toStandard(this.system));
      Object.assign(this, { example: true, reading: false, cut: false, touched: true, own: false });
      this.figures.problem = "";
      this.changedState();
      this.site.example();
      this.showConditions();
      this.figures.example(this.system);
      if (Engine.ready) this.asking.ask();
    }

    /* Conditional fields, before Python has said anything, by their data attributes; and those
       that Python said the rows of a table replace. */
    showConditions() {
      const hidden = new Set();
      for (const field of this.fields) {
        const { when, wanted } = field.wrap.dataset;
        const ruler = when && this.fields.find((one) => one.key === when);
        const out = Boolean(ruler) && (hidden.has(when) || !wanted.split(" ").includes(ruler.value));
        field.wrap.hidden = out || this.idle.includes(field.key);
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
      const standing = {};
      this.fields.forEach((field) => field.tell({ texts, units, standing }));
      return { sheet: this.sheet, system: this.system, texts, units, standing, ...this.site.tell() };
    }

    async switchTo(system) {
      Units.remember(system);
      if (system === this.system || this.reading) return;
      if (this.example) {
        this.system = system;
        this.fields.forEach((field) => field.toStandard(system));
        this.figures.example(system);
      } else {
        await this.convert(system);
      }
      this.touched = true;
      this.changedState();
      this.showSystem();
      this.showConditions();
      if (Engine.ready) this.asking.ask();
    }

    /* Every number into the other system; one typed in that system comes back as it was typed. */
    async convert(system) {
      const request = { ...this.state(), op: "convert", to: system };
      try {
        await Engine.start();
        const reply = await Engine.ask(request);
        if (reply.failed) return this.broken(reply.failed);
        this.system = system;
        this.fields.forEach((field) => field.convert(system, request.system, reply));
        await this.site.converted();
      } catch (error) {
        this.asking.failed(error);
      }
    }

    show(reply) {
      if (reply.failed) return this.broken(reply.failed);
      Object.assign(this, { fresh: true, partial: Boolean(reply.more), text: reply.text || "" });
      this.answered = reply.html !== undefined || this.partial; // partial: its figures came first
      if (reply.errors) this.around(reply);
      if (reply.html !== undefined) this.showAnswer(reply);
      this.section.dataset.state = "live";
      if (!this.partial) this.settled();
    }

    around(reply) { // what a reply says of the form
      Object.assign(this, { link: reply.link, tidied: reply.tidy, idle: reply.idle });
      Object.assign(this, { errors: reply.errors, reply });
      this.site.answered(reply);
      this.showConditions();
      this.fields.forEach((field) => field.tidy(reply.tidy, this.system));
      if (this.touched) this.opening.save();
      this.showFaults();
    }

    showAnswer(reply) {
      const standing = this.figures.printed && this.example; // the very same, with its drawings
      if (!standing) this.figures.show(reply.html, reply.charts, reply.more);
      this.own = this.own || !this.example;
      this.figures.is(reply.example ? "example" : "yours");
    }

    /* What is wrong is told to who paused or went on; what is put right is taken away at once. */
    showFaults() {
      const { figures } = this;
      const told = Object.entries(this.errors).filter(([key]) => this.eager || key in this.told);
      this.told = Object.fromEntries(told);
      this.fields.forEach((field) => field.show(this.told, this.reply));
      const before = figures.status.querySelector(".sl-faults");
      if (!told.length) return before && !this.answered && figures.is("pending");
      const list = Faults.list(this.told, this.fields, before);
      if (list === before && before) return; // a finger may be on it
      const count = told.length;
      const where = this.told[""] ? "" : count > 1 ? `Correct these ${count}:` : "Correct this:";
      if (this.own) figures.withoutVerdict("stale", where, this.told[""]);
      else figures.empty("none", this.told[""] || where);
      if (list) figures.status.append(list);
      figures.speaker.say(figures.status.textContent);
    }
  }

  window.SpringlineCalculators = [...document.querySelectorAll("section.sl")].map(
    (section) => new Calculator(section)); // for scripts that come later
})();
