/* The form of a calculator: reads what is typed, asks Python, shows the reply.
   No sums are done here; the figures come from the same Python that printed the page. */
(function () {
  "use strict";

  const UNITS_KEY = "springline-units";
  const Link = window.SpringlineLink;
  const Engine = window.SpringlineEngine;
  const Drawing = window.SpringlineDrawing;
  const Scan = window.SpringlineScan;
  const Faults = window.SpringlineFaults;
  const { Field } = window.SpringlineField;
  const { RowsField } = window.SpringlineRows;
  const FOREIGN = "These figures do not belong to the numbers above: wait for the answer, "
    + "then print again.";

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
      this.points = new window.SpringlinePoints.Points(this.fields);
      this.examples = { metric: this.answer.innerHTML, us: section.querySelector(".sl-us").innerHTML };
      this.system = "metric";
      this.text = "";
      this.busy = false;
      this.again = false;
      this.opened = 0; // links opened, so that a late reading of one before is dropped
      this.waiting = []; // for an answer to the numbers as they are
      this.tidied = {};
      this.idle = []; // keys of fields that the rows of a table replace
      this.site = new window.SpringlineSite.Bar(this);
      window.SpringlineCarry.from(() => this.site.onward);
      section.classList.add("sl-scripted");
      this.listen();
      this.open();
      this.startWhenNear();
    }

    listen() {
      this.form.addEventListener("input", (event) => this.typed(event.target));
      this.form.addEventListener("change", (event) => {
        const field = this.fieldOf(event.target);
        if (!field) return;
        this.typed(event.target);
        field.left = event.target === field.box;
        if (this.fresh) field.tidy(this.tidied, this.system);
      });
      this.form.addEventListener("submit", (event) => event.preventDefault());
      this.form.addEventListener("focusin", () => this.start());
      this.section.addEventListener("click", (event) => this.clicked(event));
      window.addEventListener("hashchange", () => {
        if (Link.holdsNumbers(location.hash) && location.hash !== this.ownHash) this.open();
      });
      window.addEventListener("beforeprint", () => {
        Drawing.showAll(this.section);
        const own = this.fresh && this.answered;
        const address = own || (this.printed && this.example) ? this.address() : "";
        this.section.querySelector(".sl-address").textContent =
          address || FOREIGN + (this.fresh ? " " + this.address() : "");
        Scan.show(this.section.querySelector(".sl-scan"), address);
      });
    }

    fieldOf(target) {
      return this.fields.find((field) => field.wrap.contains(target));
    }

    /* Read the address, or start from the example in the preferred units. */
    open() {
      clearTimeout(this.saving);
      this.opened += 1;
      this.ownHash = location.hash;
      const linked = Link.holdsNumbers(location.hash);
      Object.assign(this, { example: !linked, reading: linked, cut: false, touched: false });
      Object.assign(this, { problem: "", own: false });
      this.changedState();
      const pairs = linked ? Link.split(location.hash) : [];
      const shown = new Map(pairs);
      this.system = !linked ? preferred() : /^us/i.test(shown.get("u")) ? "us" : "metric";
      this.fields.forEach((field) => field.toStandard(this.system));
      this.showSystem();
      if (linked) this.site.pending();
      else this.site.example();
      if (linked) {
        this.fields.forEach((field) => shown.has(field.key) && field.pend(shown.get(field.key)));
        this.noAnswer("Reading the numbers of this link.");
        this.say("Working out the numbers of this link.");
        this.start();
        if (Engine.ready) this.read();
      } else {
        this.setAnswer(this.examples[this.system]);
        this.say("A worked example.");
        if (Engine.ready) this.ask();
      }
      this.showConditions();
    }

    /* What the link means, Python says. */
    async read() {
      const { opened, sheet } = this;
      try {
        const reply = await Engine.ask({ op: "read", sheet, fragment: this.ownHash });
        if (opened !== this.opened) return;
        if (reply.failed) this.broken(reply.failed);
        else this.take(reply);
      } catch (error) {
        if (opened === this.opened) this.failed(error);
      }
    }

    take(reply) {
      this.reading = false;
      this.cut = reply.cut;
      this.problem = reply.said.join(" ");
      this.system = reply.system;
      for (const field of this.fields) {
        if (field.standing !== "given") field.take(reply, reply.system); // or typed meanwhile
      }
      this.site.take(reply);
      this.showSystem();
      this.showConditions();
      if (!this.cut) return this.ask();
      this.noAnswer("No answer: this link is not whole.");
      this.say("", true);
      this.section.dataset.state = "live";
      this.settled(new Error(this.problem));
    }

    /* Texts that the site fills in, or that stood here before. */
    fill({ texts, units, standing, system = this.system }) {
      this.opened += 1;
      Object.assign(this, { example: false, reading: false, cut: false, touched: true, problem: "" });
      this.system = system;
      this.fields.forEach((field) => field.take({ texts, units, standing }, system));
      this.changedState();
      this.showSystem();
      this.showConditions();
      this.start();
      if (Engine.ready) this.ask();
    }

    /* Nothing of what was worked out belongs to what is in the form now. */
    changedState() {
      this.fresh = false;
      this.text = "";
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
      watcher.observe(this.section);
    }

    start() {
      if (this.started) return;
      this.started = true;
      Engine.start().then(
        () => (this.reading ? this.read() : this.ask()),
        (error) => this.failed(error),
      );
    }

    failed(error) {
      this.started = Engine.ready;
      const could = Engine.ready ? "This could not be worked out" : "The calculator could not start";
      this.broken(could + " (" + error.message + "). Change a number to try again.");
    }

    /* No answer came; what is on the page is said to be the example's, or is none. */
    broken(sentence) {
      if (this.example) this.say(sentence + " The worked example is as printed.");
      else {
        this.say(sentence, true);
        if (this.own) this.answer.classList.add("sl-stale");
        else this.noAnswer("No answer yet.");
      }
      this.settled(new Error(sentence));
    }

    /* Not the example's verdict where its reader takes it for an answer to these numbers. */
    noAnswer(sentence) {
      const none = document.createElement("p");
      none.className = "sl-none";
      clearTimeout(this.speaking);
      this.live.textContent = "";
      none.textContent = sentence;
      this.answer.replaceChildren(none);
      this.answer.classList.remove("sl-stale");
      this.html = undefined;
      Object.assign(this, { printed: false, answered: false });
    }

    typed(target) {
      const field = this.fieldOf(target);
      if (!field) return;
      this.changed(target);
    }

    changed(target) {
      const field = this.fieldOf(target);
      field.touch(this.system);
      this.site.changed(field.key);
      if (!this.cut && !this.reading) this.problem = "";
      Object.assign(this, { example: false, cut: false, touched: true });
      this.changedState();
      this.showConditions();
      this.start();
      if (Engine.ready) this.ask();
      else {
        if (!this.own) this.noAnswer("Starting the calculator.");
        this.say("Starting the calculator.");
      }
    }

    clicked(event) {
      const change = event.target.closest("[data-sl-change]");
      if (change) {
        event.preventDefault();
        this.lead(change.dataset.slChange);
      }
      const button = event.target.closest("button");
      if (!button) return;
      if (button.dataset.system) this.switchTo(button.dataset.system);
      const action = button.dataset.action;
      if (action === "link") this.copyLink();
      if (action === "text") this.copyText();
      if (action === "print") this.print();
      if (action === "reset") this.reset();
    }

    /* "change" beside what was assumed leads to its field. */
    lead(key) {
      Faults.lead(Faults.control(key, this.fields));
    }

    /* The sheet alone: numbers, figures and working, without the guide around it. */
    async print() {
      await this.current().catch(() => {});
      await Promise.all([Drawing.showAll(this.section), Scan.load()]);
      document.body.classList.add("sl-sheet-only");
      window.print();
      document.body.classList.remove("sl-sheet-only");
    }

    /* A new entry in the history, so that "back" brings the reader's numbers again. */
    reset() {
      clearTimeout(this.saving);
      this.opened += 1; // a link that is being read is dropped
      if (this.touched && this.fresh) history.replaceState(history.state, "", "#" + this.link);
      this.fields.forEach((field) => field.toStandard(this.system));
      Object.assign(this, { example: true, reading: false, cut: false, touched: true });
      Object.assign(this, { problem: "", own: false });
      this.changedState();
      this.site.example();
      this.showConditions();
      this.ownHash = "#u=" + this.system; // until Python has written it
      history.pushState(history.state, "", this.ownHash);
      if (Engine.ready) this.ask();
      else this.setAnswer(this.examples[this.system]);
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
      remember(system);
      if (system === this.system || this.reading) return;
      if (this.example) {
        this.system = system;
        this.fields.forEach((field) => field.toStandard(system));
        this.setAnswer(this.examples[system]);
      } else {
        await this.convert(system);
      }
      this.touched = true;
      this.changedState();
      this.showSystem();
      this.showConditions();
      if (Engine.ready) this.ask();
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
        this.failed(error);
      }
    }

    /* Ask for the newest state; while one question is out, later ones are rolled into one. */
    async ask() {
      if (this.reading || this.cut) return; // no verdict on numbers that are not known yet, or cut
      if (this.busy) {
        this.again = true;
        return;
      }
      this.busy = true;
      try {
        do {
          this.again = false;
          const { base, flat } = this.section.dataset;
          const { opened } = this;
          const reply = await Engine.ask({ ...this.state(), op: "work", base, flat: flat === "1" });
          if (!this.again && opened === this.opened) this.show(reply);
        } while (this.again && !this.reading && !this.cut);
      } catch (error) {
        this.failed(error);
      } finally {
        this.busy = false;
      }
    }

    show(reply) {
      if (reply.failed) return this.broken(reply.failed);
      this.site.answered(reply);
      this.idle = reply.idle;
      this.showConditions();
      this.fields.forEach((field) => field.show(reply.errors, reply.notes, reply.same));
      Object.assign(this, { link: reply.link, tidied: reply.tidy, text: reply.text || "" });
      Object.assign(this, { fresh: true, answered: reply.html !== undefined });
      this.fields.forEach((field) => field.tidy(reply.tidy, this.system));
      if (this.touched) this.saveLink();
      if (this.answered) this.showAnswer(reply);
      else this.showFault(reply.errors);
      this.section.dataset.state = "live";
      this.settled();
    }

    /* The same faults stay as they are: else the list would be made anew under a finger that
       leaves a field by pressing one of its links. */
    showFault(errors) {
      const told = JSON.stringify(errors);
      if (told === this.told && this.status.querySelector(".sl-faults")) return;
      this.told = told;
      const count = Object.keys(errors).length;
      const where = errors[""] || (count > 1 ? `Correct these ${count}:` : "Correct the marked field:");
      if (!this.own) {
        this.noAnswer("No answer yet.");
        this.say(where, true);
      } else {
        this.answer.classList.add("sl-stale");
        this.say("The figures below are from before, not from what is entered now. " + where, true);
      }
      const list = Faults.list(errors, this.fields);
      if (list) this.status.append(list);
    }

    showAnswer(reply) {
      this.answer.classList.remove("sl-stale");
      const standing = this.printed && this.example; // the very same, with its drawings
      if (!standing && reply.html !== this.html) this.setAnswer(reply.html, reply.charts);
      this.html = reply.html;
      this.own = this.own || !this.example;
      this.say(this.example ? "A worked example: change any number." : "");
    }

    /* Resolves once the answer and its link belong to what is in the form; rejects where none can. */
    current() {
      if (this.fresh) return Promise.resolve();
      if (this.cut) return Promise.reject(new Error(this.problem));
      const promise = new Promise((resolve, reject) => this.waiting.push({ resolve, reject }));
      this.start();
      if (Engine.ready) this.ask();
      return promise;
    }

    settled(error) {
      for (const { resolve, reject } of this.waiting.splice(0)) {
        if (error) reject(error);
        else resolve();
      }
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
      Object.assign(this, { printed: !charts, answered: true });
      this.answer.classList.remove("sl-stale");
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
      this.status.textContent = (this.problem + " " + sentence).trim();
      this.status.classList.toggle("sl-alarm", wrong);
    }

    /* The address bar follows, a little later: browsers allow few changes in a second. */
    saveLink() {
      clearTimeout(this.saving);
      this.saving = setTimeout(() => {
        if (!this.fresh) return;
        this.ownHash = "#" + this.link;
        history.replaceState(history.state, "", this.ownHash);
      }, 250);
    }

    /* Of the page with the numbers as they are; of the page alone while the example is as printed. */
    address() {
      const published = document.querySelector('link[rel="canonical"]');
      const here = location.protocol === "file:" && published ? published.href : location.href;
      return here.split("#")[0] + (this.fresh ? "#" + this.link : "");
    }

    copyLink() {
      return this.share(() => this.copy(this.address(), "Link copied."));
    }

    copyText() {
      return this.share(() => this.text
        ? this.copy(this.text + "\n" + this.address() + "\n", "Text copied.")
        : this.tell("There is no answer to copy yet: correct the marked field."));
    }

    async share(go) {
      if (!this.fresh) this.tell("Wait for the calculator.");
      try {
        await this.current();
      } catch (error) {
        return this.tell(error.message);
      }
      return go();
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
