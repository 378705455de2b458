/* The menu "Sites": saved ones, new, save under a name, duplicate, rename, forget, files. */
(function () {
  "use strict";

  const Store = window.SpringlineStore;
  const LONGEST = 500_000; // characters of a file that is read
  const HIDDEN = /\p{C}/gu; // signs that show nothing or turn the way of writing round

  function make(tag, attributes = {}, ...inside) {
    const made = document.createElement(tag);
    for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
    made.append(...inside);
    return made;
  }

  class Menu {
    constructor(bar) {
      this.bar = bar;
      this.opener = bar.el.querySelector("[data-sl-sites]");
      this.panel = bar.el.querySelector("[data-sl-site-menu]");
      this.opener.addEventListener("click", () => this.toggle());
      this.panel.addEventListener("keydown", ({ key }) => {
        if (key === "Escape") this.close();
      });
      this.pumps = new window.SpringlineParts.Pumps(bar);
    }

    get open() {
      return !this.panel.hidden;
    }

    toggle() {
      if (this.open) return this.close();
      this.panel.hidden = false;
      this.opener.setAttribute("aria-expanded", "true");
      this.draw();
      this.panel.querySelector("button").focus();
    }

    close() {
      this.panel.hidden = true;
      this.panel.replaceChildren();
      this.opener.setAttribute("aria-expanded", "false");
      this.opener.focus();
    }

    refresh() {
      if (this.open) this.draw();
    }

    // What is in it ---------------------------------------------------------------------------

    draw() {
      const { button } = window.SpringlineSite;
      const names = Store.names();
      const list = make("ul", { class: "sl-site-list" });
      list.append(make("li", {}, button("Alder Terrace, our example", () => this.example())));
      for (const name of names) list.append(this.saved(name));
      const actions = make("div", { class: "sl-site-actions" },
        button("New site…", () => this.named("Name of the new site", "", "Make it",
          (name) => this.fresh(name))),
        button("Save as…", () => this.named("Save under this name", this.suggested(), "Save",
          (name) => this.saveAs(name))),
        button("Duplicate…", () => this.named("Name of the copy", this.suggested() + " 2", "Duplicate",
          (name) => this.duplicate(name))),
        button("Export as file", () => this.export()),
        this.file());
      this.form = make("div", { class: "sl-site-form" });
      const told = names.length ? "Saved in this browser" : "No site is saved in this browser yet";
      this.panel.replaceChildren(make("p", { class: "sl-site-told" }, told), list, actions, this.form);
    }

    saved(name) {
      const { button } = window.SpringlineSite;
      const row = make("li");
      const forget = button("Forget", () => {
        const sure = button("Forget it", () => this.forget(name));
        const not = button("Keep it", () => this.draw());
        row.replaceChildren(make("span", {}, `Forget “${name}”? It cannot be brought back. `), sure, not);
        sure.focus();
      }, "Forget " + name);
      const rename = button("Rename", () => this.named("New name of “" + name + "”", name, "Rename",
        (to) => this.rename(name, to)), "Rename " + name);
      row.append(button(name, () => this.load(name)), rename, forget);
      return row;
    }

    suggested() {
      return this.bar.site ? this.bar.name : "My site";
    }

    /* Asks for a name, then does ``go(name)``. */
    named(label, text, word, go) {
      const { button } = window.SpringlineSite;
      const id = this.bar.calc.sheet + "-site-name";
      const box = make("input", { id, type: "text", maxlength: "60", autocomplete: "off" });
      box.value = text;
      const done = () => {
        const name = box.value.replace(HIDDEN, "").trim();
        if (!name) return this.tell("Enter a name", box);
        return go(name);
      };
      box.addEventListener("keydown", (event) => {
        if (event.key === "Enter") {
          event.preventDefault();
          done();
        }
      });
      this.form.replaceChildren(make("label", { for: id }, label), box, button(word, done),
        make("p", { class: "sl-error", role: "alert" }));
      box.focus();
      box.select();
    }

    tell(sentence, box) {
      this.form.querySelector(".sl-error").textContent = sentence;
      box?.focus();
    }

    /* A text box is no part of the calculator's form, so a file is asked for by its own button. */
    file() {
      const { button } = window.SpringlineSite;
      const input = make("input", { type: "file", accept: ".json,application/json", class: "sl-quiet",
        tabindex: "-1", "aria-label": "File of a site or a parts list" });
      input.addEventListener("change", async () => {
        const [file] = input.files;
        input.value = "";
        if (file) await this.import(file);
      });
      return make("span", {}, button("Import site or parts…", () => input.click()), input);
    }

    // What it does ----------------------------------------------------------------------------

    done(sentence) {
      this.close();
      this.bar.say(sentence);
    }

    example() {
      this.close();
      this.bar.calc.reset();
    }

    async load(name) {
      const held = Store.get(name);
      if (!held) return this.draw();
      await this.bar.attempt(async () => {
        const made = await this.bar.ask({ do: "open", text: JSON.stringify(held.site) });
        this.bar.stamp = held.stamp;
        await this.bar.fill(made, "own");
        this.done("");
      });
    }

    async fresh(name) {
      await this.bar.attempt(async () => {
        const made = await this.bar.ask({ do: "new", name });
        this.bar.stamp = "";
        await this.bar.fill(made, "own");
        this.done("A new site: nothing is known of it yet. Enter what you know, then put it into the site.");
      });
    }

    /* The site in use under a name; where there is none yet, one of the numbers as they stand. */
    async copy(name) {
      const { bar } = this;
      if (bar.back().length) await bar.putBack();
      if (!bar.site) await bar.fill(await bar.start(), "own", bar.way, bar.typed);
      if (!bar.site) return null;
      return bar.ask({ do: "duplicate", site: bar.site, name });
    }

    async saveAs(name) {
      await this.bar.attempt(async () => {
        const made = await this.copy(name);
        if (!made) return;
        const known = this.bar.name === name ? this.bar.stamp : "";
        Object.assign(this.bar, { name, site: made.site, packed: made.packed, stamp: known });
        this.close();
        this.bar.save(name);
        this.bar.calc.asking.ask();
      });
    }

    async duplicate(name) {
      await this.bar.attempt(async () => {
        const made = await this.copy(name);
        if (!made) return;
        Object.assign(this.bar, { name, site: made.site, packed: made.packed, stamp: "", whose: "own" });
        this.bar.show();
        this.bar.calc.asking.ask();
        this.done(`“${name}” is a copy, not saved yet.`);
      });
    }

    async rename(name, to) {
      const held = Store.get(name);
      if (!held || name === to) return this.draw();
      if (Store.get(to)) return this.tell(`“${to}” is another saved site. Give another name`);
      await this.bar.attempt(async () => {
        const made = await this.bar.ask({ do: "duplicate", site: held.site, name: to });
        const { stamp, refused } = Store.save(to, made, "");
        if (refused) return this.tell(refused);
        Store.forget(name);
        if (this.bar.site && this.bar.name === name) {
          const own = await this.bar.ask({ do: "duplicate", site: this.bar.site, name: to });
          Object.assign(this.bar, { name: to, site: own.site, packed: own.packed, stamp });
          this.bar.calc.asking.ask();
        }
        this.bar.show();
        this.done(`“${name}” is now “${to}”.`);
      });
    }

    forget(name) {
      Store.forget(name);
      if (this.bar.name === name) this.bar.stamp = "";
      this.bar.show();
      this.done(`“${name}” is forgotten here. Links and files of it stay as they are.`);
    }

    async export() {
      await this.bar.attempt(async () => {
        const { site, name } = this.bar.site ? this.bar : await this.bar.ask({ do: "demo" });
        const { text } = await this.bar.ask({ do: "export", site });
        const href = URL.createObjectURL(new Blob([text], { type: "application/json" }));
        const plain = name.toLowerCase().replace(/[^a-z0-9]+/g, "-").replace(/^-|-$/g, "") || "site";
        make("a", { href, download: plain + ".json" }).click();
        setTimeout(() => URL.revokeObjectURL(href), 10_000);
        this.done(`“${name}” is exported.`);
      });
    }

    async import(file) {
      await this.bar.attempt(async () => {
        if (file.size > LONGEST) throw new Error("This file is too large to be a site or a parts list.");
        const text = await file.text();
        if (/"format"\s*:\s*"springline-parts"/.test(text)) {
          return this.done(await this.pumps.take(text));
        }
        const made = await this.bar.ask({ do: "open", text });
        this.bar.stamp = "";
        await this.bar.fill(made, "own");
        this.done([`“${made.name || "The site"}” is imported, not saved yet.`, ...made.notes].join(" "));
      });
    }
  }

  window.SpringlineSites = { Menu };
})();
