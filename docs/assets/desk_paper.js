/* The letter to a customer and the installer's sheet, of the site in this page's fragment. Python works
   all of it out and escapes it; here it is shown, copied, printed. */
(function () {
  "use strict";

  const Engine = window.SpringlineEngine;
  const Scan = window.SpringlineScan;
  const HEARD = 6000; // ms that a sentence stands beside the buttons
  const QUIET = 400; // ms after the last tick, before the letter is written again

  function make(tag, attributes = {}, ...inside) {
    const made = document.createElement(tag);
    for (const [key, value] of Object.entries(attributes)) {
      if (value !== false) made.setAttribute(key, value === true ? "" : value);
    }
    made.append(...inside);
    return made;
  }

  function save(text, type, name) {
    const href = URL.createObjectURL(new Blob([text], { type }));
    make("a", { href, download: name }).click();
    setTimeout(() => URL.revokeObjectURL(href), 10_000);
  }

  /* What both pages do: read the fragment, ask, say whose numbers these are. */
  class Page {
    constructor(block) {
      Object.assign(this, { block, turn: 0, system: "", reply: null });
      block.classList.add("sl-scripted"); // what a link brings is shown by this script
      window.SpringlineLink.proseBelow(block);
      this.said = this.part("said");
      for (const button of block.querySelectorAll("[data-sl-desk-system]")) {
        button.addEventListener("click", () => this.units(button.dataset.slDeskSystem));
      }
      for (const button of block.querySelectorAll("[data-sl-desk-do]")) {
        button.addEventListener("click", () => this.act(button.dataset.slDeskDo));
      }
      window.addEventListener("hashchange", () => this.moved());
      this.part("box").hidden = false;
      this.open();
    }

    part = (name) => this.block.querySelector(`[data-sl-desk-${name}]`);

    get fragment() {
      return location.hash.includes("=") ? location.hash.slice(1) : "";
    }

    moved() {
      if (location.hash.includes("=")) this.open();
    }

    /* Way to the site's root as a letter needs it: not that on this disk. */
    get root() {
      const { protocol, href } = location;
      const published = document.querySelector('link[rel="canonical"]')?.href;
      const here = protocol === "file:" ? published : href;
      return here ? new URL(this.block.dataset.base, here.split("#")[0]).href : "";
    }

    request(more = {}) {
      const { flat } = this.block.dataset;
      return { op: "desk", sheet: "reach", fragment: this.fragment, system: this.system,
        base: this.root, flat: flat === "1", ...more };
    }

    units(system) {
      this.system = system;
      this.open();
    }

    tell(text, alarm = false) {
      this.said.textContent = text;
      this.said.classList.toggle("sl-alarm", alarm);
      clearTimeout(this.telling);
      if (text && !alarm) this.telling = setTimeout(() => (this.said.textContent = ""), HEARD);
    }

    /* A reply, or null where a later question overtook it or it failed, which is said. */
    async ask(request, turn) {
      try {
        await Engine.start();
        const reply = await Engine.ask(request);
        if (turn !== this.turn) return null;
        if (reply.failed) throw new Error(reply.failed);
        if (reply.errors?.length) throw new Error(reply.errors.join(" "));
        return reply;
      } catch (error) {
        if (turn === this.turn) this.tell(error.message, true);
        return null;
      }
    }

    whose({ name, example, word }) {
      const told = example ? "Alder Terrace, our invented example" : name || "A site without a name";
      this.part("whose").textContent = `${told}: ${word}`;
    }

    pressed(system) {
      for (const button of this.block.querySelectorAll("[data-sl-desk-system]")) {
        button.setAttribute("aria-pressed", String(button.dataset.slDeskSystem === system));
      }
    }
  }

  class Letter extends Page {
    async open() {
      const turn = (this.turn += 1);
      this.may = null; // as the link has it
      this.tell("Working out the whole site…");
      await this.write(turn);
    }

    /* Once without what to ask back, which takes some answers more, and then with it. */
    async write(turn) {
      const request = this.request({ do: "reply", may: this.may, asks: false });
      const first = await this.ask(request, turn);
      if (!first) return;
      this.show(first, true);
      this.tell("Weighing what to ask back…");
      const whole = await this.ask({ ...request, asks: true }, turn);
      if (!whole) return;
      this.show(whole);
      this.tell(["The letter is written.", ...whole.said].join(" "));
    }

    show(reply, ticks = false) {
      this.reply = reply;
      this.whose(reply);
      this.pressed(reply.system);
      this.part("letter").innerHTML = reply.html; // Python escapes it
      if (ticks && this.may === null) this.draw(reply);
    }

    draw({ groups, may, courtesy }) {
      this.part("may").hidden = !groups.length;
      this.part("courtesy").textContent = courtesy;
      this.part("ticks").replaceChildren(...groups.flatMap((group) => this.group(group, may)));
    }

    group({ code, label, facts }, may) {
      const one = [this.tick(code, label, may)];
      if (facts.length) {
        one.push(make("details", {}, make("summary", {}, `Only some of it (${facts.length})`),
          ...facts.map((fact) => this.tick(fact.code, fact.label, may))));
      }
      return one;
    }

    tick(code, label, may) {
      const box = make("input", { type: "checkbox", value: code, checked: may.includes(code) });
      box.addEventListener("change", () => this.ticked());
      return make("label", {}, box, " ", label);
    }

    ticked() {
      const boxes = this.part("ticks").querySelectorAll("input:checked");
      this.may = [...boxes].map((box) => box.value);
      clearTimeout(this.pause);
      this.pause = setTimeout(() => this.write((this.turn += 1)), QUIET);
    }

    act(name) {
      if (name === "find") return this.find();
      if (!this.reply) return this.tell("The letter is not written yet.");
      return name === "copy" ? this.copy() : this.plain();
    }

    async copy() {
      const { text, html } = this.reply;
      const blob = (body, type) => new Blob([body], { type });
      try {
        await navigator.clipboard.write([new window.ClipboardItem({
          "text/plain": blob(text, "text/plain"), "text/html": blob(html, "text/html") })]);
        this.tell("Letter copied.");
      } catch {
        this.selected();
      }
    }

    /* Where the clipboard is refused, the letter as it stands is selected and copied. */
    selected() {
      const range = document.createRange();
      range.selectNodeContents(this.part("letter"));
      const chosen = window.getSelection();
      chosen.removeAllRanges();
      chosen.addRange(range);
      if (this.copied()) this.tell("Letter copied.");
      else this.offer(this.reply.text);
    }

    copied() {
      try {
        return document.execCommand("copy");
      } catch {
        return false;
      }
    }

    async plain() {
      try {
        await navigator.clipboard.writeText(this.reply.text);
        this.tell("Letter copied as plain text.");
      } catch {
        this.offer(this.reply.text);
      }
    }

    offer(text) {
      clearTimeout(this.telling);
      const area = make("textarea", { rows: 6, readonly: true, "aria-label": "Copy this text" });
      area.value = text;
      this.said.replaceChildren("Copy this: ", area);
      area.focus();
      area.select();
    }

    // A pasted mail ---------------------------------------------------------------------------

    async find() {
      const mail = this.part("mail").value;
      const list = this.part("found");
      if (!mail.trim()) return list.replaceChildren(make("li", {}, "Paste a mail or a link first."));
      const turn = this.turn;
      const reply = await this.ask(this.request({ do: "reply", mail }), turn);
      if (!reply) return undefined;
      list.replaceChildren(...reply.found.map((one) => this.found(one)),
        ...reply.said.map((sentence) => make("li", { class: "sl-alarm" }, sentence)));
      return undefined;
    }

    found({ fragment, name, said, both }) {
      const open = make("a", { href: `#${fragment}` }, `Write the reply for “${name || "a site"}”`);
      const { base, flat } = this.block.dataset;
      const beside = make("a", { href: `${base}compare${flat === "1" ? ".html" : "/"}#${both}` },
        "Compare with the site above");
      return make("li", {}, open, ...(both ? [" ", beside] : []), ...said.map((one) => ` ${one}`));
    }
  }

  class Paper extends Page {
    constructor(block) {
      super(block);
      window.addEventListener("beforeprint", () => this.code());
      Engine.settled().then(() => Scan.load());
    }

    async open() {
      const turn = (this.turn += 1);
      this.tell("Working out the whole site…");
      const reply = await this.ask(this.request({ do: "installer" }), turn);
      if (!reply) return;
      this.reply = reply;
      this.whose(reply);
      this.pressed(reply.system);
      this.part("sheet").innerHTML = reply.html; // Python escapes it
      this.tell("");
    }

    code() {
      const place = this.block.querySelector("[data-sl-installer-scan]");
      if (place) Scan.show(place, this.reply.address);
    }

    async act(name) {
      if (!this.reply) return this.tell("The sheet is not made yet.");
      if (name === "svg") {
        if (!this.reply.svg) return this.tell("Nothing can be drawn: too little is known.", true);
        return save(this.reply.svg, "image/svg+xml", "supply.svg");
      }
      await Scan.load();
      return window.print();
    }
  }

  const PAGES = { reply: Letter, installer: Paper };
  for (const block of document.querySelectorAll("[data-sl-desk]")) new PAGES[block.dataset.slDesk](block);
})();
