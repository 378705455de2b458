/* The pumps of the reader's own parts list, in the pump menu of a sheet that has one. */
(function () {
  "use strict";

  const Store = window.SpringlineStore;
  const MARK = "part:"; // before the name of a pump in the menu's values

  class Pumps {
    constructor(bar) {
      this.bar = bar;
      this.field = bar.calc.fields.find((one) => one.key === "pump" && one.box?.tagName === "SELECT");
      if (!this.field) return;
      for (const kind of ["input", "change"]) {
        bar.calc.section.addEventListener(kind, (event) => this.picked(event), true);
      }
      const held = Store.parts();
      if (held) window.SpringlineEngine.settled().then(() => this.offer(held)).catch(() => {});
    }

    /* A parts list from a file: kept, and offered; says so. */
    async take(text) {
      const read = await this.bar.ask({ do: "parts", text });
      const refused = Store.saveParts(text);
      if (this.field) this.list(read, text);
      const count = read.pumps.length === 1 ? "1 pump" : `${read.pumps.length} pumps`;
      const where = this.field ? "in the pump menu" : "in the pump menu of the pages that have one";
      return [`${count} of “${read.name || "your list"}” ${where}.`, refused, ...read.notes].join(" ").trim();
    }

    async offer(text) {
      this.list(await this.bar.ask({ do: "parts", text }), text);
    }

    list({ name, pumps }, text) {
      this.text = text;
      this.field.box.querySelector("optgroup")?.remove();
      const group = document.createElement("optgroup");
      group.label = "Your parts" + (name ? ": " + name : "");
      group.append(...pumps.map(({ value, label }) => new Option(label, MARK + value)));
      this.field.box.append(group);
    }

    picked(event) {
      if (event.target !== this.field.box || !event.target.value.startsWith(MARK)) return;
      event.stopImmediatePropagation();
      const pump = event.target.value.slice(MARK.length);
      if (event.type === "input") return; // the same choice is told twice
      this.field.box.value = this.before || "own";
      this.use(pump);
    }

    /* Its curve into the site, or where there is none into the form. */
    use(pump) {
      const { bar } = this;
      const before = bar.snapshot();
      return bar.attempt(async () => {
        const { site } = bar.site ? bar : await bar.start();
        const made = await bar.ask({ do: "use_pump", site, text: this.text, pump });
        if (bar.site) await bar.fill(made, "own", bar.way, bar.typed);
        else this.only(await bar.ask({ do: "fill", site: made.site, way: bar.way }));
        bar.offer(`The pump is now “${pump}” of your parts.`, before);
      });
    }

    only({ texts }) {
      const { calc } = this.bar;
      for (const key of ["pump", "table", "works"]) {
        const field = calc.fields.find((one) => one.key === key);
        if (!field || !(key in texts)) continue;
        field.box.value = texts[key];
        calc.changed(field.wrap);
      }
    }
  }

  window.SpringlineParts = { Pumps };
})();
