/* Cells that name a point of the supply: a menu of the points there are, a text box for a new one.
   A point renamed where a pipe section ends is renamed in every row that uses it. */
(function () {
  "use strict";

  const PUMP = "pump";
  const TANKS = ["tanks", "stores"]; // tables whose rows name a point of their own
  const OF_A_TANK = TANKS.map((key) => `[data-key="${key}"]`).join();
  const NEW = "\u0000new"; // no name: names are typed, and this cannot be
  const RENAME = "\u0000rename";

  const fold = (name) => name.trim().toLowerCase().replace(/\s+/g, " ");

  function option(value, text) {
    const made = document.createElement("option");
    made.value = value;
    made.textContent = text;
    return made;
  }

  /* Takes over the cells marked in the page's HTML; ``fields`` are those of the form, of which a
     ``RowsField`` has rows. */
  class Points {
    constructor(fields) {
      this.tables = fields.filter((field) => field.table);
      this.marked = this.tables.filter((field) => field.template.querySelector("[data-sl-points]"));
      if (!this.marked.length) return;
      for (const field of this.tables) {
        field.renamed = document.createElement("span");
        field.renamed.setAttribute("role", "status");
        field.undoPlace.after(field.renamed);
        field.dress = () => this.dress();
        field.wrap.addEventListener("focusin", ({ target }) => this.entered(target));
        field.wrap.addEventListener("input", (event) => this.typed(event));
        field.wrap.addEventListener("change", ({ target }) => this.changed(target));
        field.wrap.addEventListener("focusout", ({ target }) => this.left(target));
      }
      this.dress();
    }

    /* Column "to" of the sections and the names of tanks say which points there are. */
    cells(table, column) {
      return table.rows().map((row) => row.querySelector(`td[data-column="${column}"]`))
        .filter(Boolean).map((cell) => cell.querySelector("input, select"));
    }

    namers() {
      return this.tables.flatMap((table) => [
        ...this.cells(table, "to"),
        ...(TANKS.includes(table.key) ? this.cells(table, "name") : []),
      ]);
    }

    known() {
      const found = new Map([[fold(PUMP), PUMP]]);
      for (const control of this.namers()) {
        const name = control.value.trim();
        if (name && !name.startsWith("\u0000") && !found.has(fold(name))) found.set(fold(name), name);
      }
      return [...found.values()];
    }

    all() {
      return this.marked.flatMap((table) => table.rows()).flatMap(
        (row) => [...row.querySelectorAll("[data-sl-points]")]);
    }

    /* Every marked cell but one that is being typed in. */
    dress() {
      const known = this.known();
      for (const control of this.all()) {
        if (control.dataset.typing === undefined) this.menu(control, known);
      }
    }

    /* A new row's end is a new point as a rule: it opens as a box. */
    menu(control, known) {
      const column = control.closest("td").dataset.column;
      const value = control.value;
      if (column === "to" && !value.trim()) return;
      const select = control.tagName === "SELECT" ? control : this.swap(control, "select");
      const names = [...known];
      const own = names.find((name) => fold(name) === fold(value));
      if (!own && value.trim()) names.push(value);
      const options = names.filter((name) => column !== "to" || fold(name) !== fold(PUMP))
        .map((name) => option(fold(name) === fold(value) ? value : name, name));
      if (!value.trim()) options.unshift(option("", "Choose a point"));
      options.push(option(NEW, "New point…"));
      if (column === "to" && value.trim()) options.push(option(RENAME, `Rename “${value}”…`));
      select.replaceChildren(...options);
      select.value = value;
      select.dataset.held = value;
    }

    /* The same cell with the other kind of control: its id, name and errors stay. */
    swap(control, kind) {
      const made = document.createElement(kind);
      for (const { name, value } of control.attributes) {
        if (!["type", "value", "inputmode", "data-typing"].includes(name)) made.setAttribute(name, value);
      }
      if (kind === "input") made.type = "text";
      else made.append(option(control.value, control.value));
      made.value = control.value;
      const focused = document.activeElement === control;
      control.replaceWith(made);
      if (focused) made.focus();
      return made;
    }

    /* A box to type in: for a new point empty, to rename with the name in it. */
    type(select, text, renames) {
      const held = select.dataset.held || "";
      const box = this.swap(select, "input");
      box.dataset.typing = "";
      box.dataset.renames = renames;
      box.dataset.held = held;
      box.value = text;
      box.focus();
      box.select();
    }

    /* A tank's name is typed over where it stands. */
    entered(target) {
      if (target.matches('[data-column="name"] > input')) target.dataset.held = target.value;
    }

    /* What is half typed is no point yet, nor are the words that open a box. */
    typed(event) {
      const { target } = event;
      if (!target.matches("[data-sl-points]")) return;
      if (target.value === NEW || target.value === RENAME) {
        event.stopPropagation();
        const renames = target.value === RENAME ? target.dataset.held : "";
        this.type(target, renames, renames);
      } else if (target.tagName === "INPUT") {
        target.dataset.typing = "";
        if (target.dataset.renames) event.stopPropagation();
      }
    }

    changed(target) {
      const name = target.value.trim();
      const tank = target.closest(OF_A_TANK) && target.dataset.held;
      const old = target.dataset.renames || tank;
      if (target.tagName === "INPUT" && target.dataset.held && !name) {
        target.value = target.dataset.held; // nothing typed: as it was
      } else if (target.tagName === "INPUT" && old) {
        this.rename(old, name, target);
        target.dataset.held = target.value;
        if (target.dataset.renames) target.dataset.renames = target.value;
      }
      this.dress();
    }

    /* Only once the focus is elsewhere: what is taken out while it loses the focus loses it twice. */
    left(target) {
      if (target.tagName !== "INPUT" || !target.matches("[data-sl-points]")) return;
      if (!target.value.trim() && target.dataset.held) target.value = target.dataset.held;
      setTimeout(() => {
        if (document.activeElement === target) return;
        delete target.dataset.typing;
        delete target.dataset.renames;
        this.dress();
      });
    }

    /* Beside the table, and to who listens. */
    say(sentence, control) {
      const table = this.tables.find(({ wrap }) => wrap.contains(control));
      table.renamed.textContent = sentence;
    }

    rename(old, name, except) {
      if (fold(old) === fold(name)) return;
      const taken = this.namers().some((one) => one !== except && fold(one.value) === fold(name));
      if (taken || fold(name) === fold(PUMP)) {
        except.value = old;
        this.say(`“${name}” is another point already. Give another name.`, except);
        return;
      }
      let count = 0;
      for (const control of [...this.all(), ...this.namers()]) {
        if (control === except || fold(control.value) !== fold(old)) continue;
        if (control.tagName === "SELECT") control.append(option(name, name));
        control.value = name;
        count += 1;
      }
      this.say(`“${old}” is now “${name}”` + (count ? `, in ${count + 1} cells.` : "."), except);
    }
  }

  window.SpringlinePoints = { Points };
})();
