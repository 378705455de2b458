/* A table of rows that the reader edits: add, remove, duplicate, move; one unit a column.
   Its text is that of the link: rows parted by ";", cells by ",", "!" before a sign to keep. */
(function () {
  "use strict";

  const Link = window.SpringlineLink;

  function encode(rows) {
    const escaped = (cell) => cell.replace(/[!,;]/g, "!$&");
    return rows.map((row) => row.map(escaped).join(",")).join(";");
  }

  function decode(text) {
    const rows = [[""]];
    for (let i = 0; i < text.length; i += 1) {
      const row = rows[rows.length - 1];
      if (text[i] === "!") row[row.length - 1] += text[++i] ?? "!";
      else if (text[i] === ",") row.push("");
      else if (text[i] === ";") rows.push([""]);
      else row[row.length - 1] += text[i];
    }
    return rows.map((row) => row.map((cell) => cell.trim())).filter((row) => row.join("") !== "");
  }

  /* One column: what its cells are, its unit menu and the default of a new cell. */
  class Column {
    constructor(cell, table) {
      this.key = cell.dataset.column;
      this.label = cell.dataset.label;
      this.control = cell.querySelector("input, select");
      this.menu = table.querySelector(`thead select[data-column="${this.key}"]`);
      this.fixed = this.menu ? null : this.onlyUnit(table, cell);
      this.values = this.control.tagName === "SELECT"
        ? new Set([...this.control.options].map((option) => option.value))
        : null;
    }

    onlyUnit(table, cell) {
      const heading = table.querySelectorAll("thead th")[cell.cellIndex];
      return heading?.querySelector("span.sl-unit")?.textContent || null;
    }

    symbols() {
      if (this.menu) return [...this.menu.options].map((option) => option.value);
      return this.fixed ? [this.fixed] : [];
    }

    standard(system) {
      return this.control.dataset[system];
    }

    /* The text of a cell with its unit: "12" in a column of metres is "12m". */
    full(text) {
      const trimmed = text.trim();
      const symbols = this.symbols();
      if (!symbols.length || Link.splitUnit(trimmed, symbols)[1]) return trimmed;
      const unit = this.menu ? this.menu.value : this.fixed;
      return /[\d¼½¾⅛⅜⅝⅞.,]$/.test(trimmed) ? trimmed + Link.plainUnit(unit) : trimmed;
    }
  }

  class RowsField {
    constructor(wrap, changed) {
      this.wrap = wrap;
      this.key = wrap.dataset.key;
      this.name = wrap.dataset.name;
      this.changed = changed;
      this.most = Number(wrap.dataset.most);
      this.least = Number(wrap.dataset.least);
      this.table = wrap.querySelector("table");
      this.body = wrap.querySelector("tbody");
      this.template = wrap.querySelector("template").content.firstElementChild;
      this.error = this.wrap.querySelector(":scope > .sl-error");
      this.undoPlace = wrap.querySelector(".sl-undo");
      this.columns = [...this.template.querySelectorAll("td[data-column]")].map(
        (cell) => new Column(cell, this.table));
      this.original = null;
      this.removed = []; // rows taken out, newest last
      wrap.addEventListener("click", (event) => this.clicked(event));
    }

    get value() {
      return this.linkText();
    }

    // Cells ------------------------------------------------------------------------------------

    rows() {
      return [...this.body.rows];
    }

    controls(row) {
      return [...row.querySelectorAll("td[data-column] > input, td[data-column] > select")];
    }

    texts(row) {
      return this.controls(row).map((control) => control.value);
    }

    /* A row's texts with units, without what is only its column's default at the end. */
    short(row, system) {
      const cells = this.texts(row).map((text, at) => this.columns[at].full(text));
      while (cells.length > 1 && cells.at(-1) === this.usual(cells.length - 1, system)) cells.pop();
      return cells;
    }

    usual(at, system) {
      const column = this.columns[at];
      const [number, unit] = Link.splitUnit(column.standard(system), column.symbols());
      return unit ? number + Link.plainUnit(unit) : number;
    }

    newRow(cells) {
      const row = this.template.cloneNode(true);
      this.controls(row).forEach((control, at) => (control.value = cells[at]));
      return row;
    }

    /* The texts of a row that a link or a default gave, shown in the column's unit. */
    shown(cells, system) {
      return this.columns.map((column, at) => {
        const text = at < cells.length ? cells[at] : column.standard(system);
        if (!column.symbols().length) return text;
        const [number, unit] = Link.splitUnit(text, column.symbols());
        const here = column.menu ? column.menu.value : column.fixed;
        if (!unit || unit === here) return number;
        return number + " " + unit; // typed in a unit of its own
      });
    }

    /* Ids and names follow the place of a row. */
    number() {
      const rows = this.rows();
      rows.forEach((row, at) => {
        row.querySelectorAll("td[data-column]").forEach((cell) => {
          const place = [this.name, at, cell.dataset.column].join("-");
          const control = cell.querySelector("input, select");
          control.id = place;
          control.setAttribute("aria-label", cell.dataset.label + ", row " + (at + 1));
          control.setAttribute("aria-describedby", place + "-error " + place + "-note");
          cell.querySelector(".sl-error").id = place + "-error";
          cell.querySelector(".sl-note").id = place + "-note";
        });
        row.querySelectorAll("button").forEach((button) => {
          button.setAttribute("aria-label", button.dataset.word + ": row " + (at + 1));
          const action = button.dataset.rows;
          button.disabled = (action === "up" && at === 0)
            || (action === "down" && at === rows.length - 1)
            || (action === "remove" && rows.length <= this.least)
            || (action === "copy" && rows.length >= this.most);
        });
      });
      this.wrap.querySelector('[data-rows="add"]').disabled = rows.length >= this.most;
    }

    // As other fields --------------------------------------------------------------------------

    put(text, system) {
      const rows = decode(text);
      this.columns.forEach((column, at) => this.chooseUnit(column, at, rows, system));
      this.body.replaceChildren(...rows.map((cells) => this.newRow(this.shown(cells, system))));
      this.number();
      this.offerUndo();
    }

    /* The menu stands on the unit of the first cell that has one. */
    chooseUnit(column, at, rows, system) {
      if (!column.menu) return;
      column.menu.value = column.menu.dataset[system];
      for (const cells of rows) {
        const unit = Link.splitUnit(cells[at] ?? column.standard(system), column.symbols())[1];
        if (unit) {
          column.menu.value = unit;
          return;
        }
      }
    }

    toStandard(system) {
      this.removed = [];
      this.put(this.wrap.dataset[system], system);
      this.system = system;
      this.standards = { ...this.standards, [system]: this.linkText() };
      this.original = null;
    }

    isStandard(system) {
      return this.standards?.[system] === this.linkText();
    }

    /* Take a link's rows; returns those that cannot be read, the others are kept. */
    take(text, system) {
      const bad = [];
      const good = decode(text).filter((cells) => {
        const fits = cells.length <= this.columns.length && cells.every((cell, at) =>
          !this.columns[at].values || this.columns[at].values.has(cell));
        if (!fits) bad.push("row “" + cells.join(", ") + "”");
        return fits;
      });
      bad.push(...good.splice(this.most).map((cells) => "row “" + cells.join(", ") + "”"));
      if (good.length < this.least) return bad.length ? bad : [text || "no rows"];
      this.put(encode(good), system);
      this.keep(system);
      return bad;
    }

    keep(system) {
      this.system = system;
      this.original = { text: this.linkText(), system };
    }

    /* "40 psi" typed in a column whose menu says bar stands as typed: the menu is for all rows. */
    tidy() {}

    linkText() {
      return encode(this.rows().map((row) => this.short(row, this.system)));
    }

    tell({ texts }) {
      texts[this.key] = encode(this.rows().map((row) =>
        this.texts(row).map((text, at) => this.columns[at].full(text))));
    }

    convert(system, from, reply) {
      const before = this.original || { text: this.linkText(), system: from };
      this.put(before.system === system ? before.text : reply.texts[this.key], system);
      this.system = system;
      this.original = before;
    }

    show(errors, notes) {
      const own = this.key + ".";
      let wrong = Boolean(errors[this.key]);
      this.error.textContent = errors[this.key] || "";
      this.rows().forEach((row, at) => {
        const place = own + at;
        row.querySelector(".sl-row-change .sl-error").textContent = errors[place] || "";
        row.classList.toggle("sl-wrong", Boolean(errors[place]));
        wrong ||= Boolean(errors[place]);
        row.querySelectorAll("td[data-column]").forEach((cell) => {
          const said = errors[place + "." + cell.dataset.column] || "";
          cell.querySelector(".sl-error").textContent = said;
          cell.querySelector(".sl-note").textContent =
            said ? "" : notes[place + "." + cell.dataset.column] || "";
          cell.querySelector("input, select").setAttribute("aria-invalid", said ? "true" : "false");
          cell.classList.toggle("sl-wrong", Boolean(said));
          wrong ||= Boolean(said);
        });
      });
      if (wrong) this.wrap.closest("details")?.setAttribute("open", "");
    }

    // Changing rows ----------------------------------------------------------------------------

    clicked(event) {
      const button = event.target.closest("button[data-rows]");
      if (!button || button.disabled) return;
      const row = button.closest("tr");
      this[button.dataset.rows](row);
      this.number();
      this.changed();
    }

    add() {
      const row = this.newRow(this.shown([], this.system));
      this.body.append(row);
      this.controls(row)[0].focus();
    }

    copy(row) {
      const twin = this.newRow(this.texts(row));
      row.after(twin);
      this.controls(twin)[0].focus();
    }

    up(row) {
      this.move(row, () => row.previousElementSibling?.before(row), "up");
    }

    down(row) {
      this.move(row, () => row.nextElementSibling?.after(row), "down");
    }

    /* The focus goes with the row; at the end of the way it goes to the other button. */
    move(row, step, way) {
      step();
      this.number();
      const button = row.querySelector(`[data-rows="${way}"]`);
      const other = row.querySelector(`[data-rows="${way === "up" ? "down" : "up"}"]`);
      (button.disabled ? other : button).focus();
    }

    /* What is removed is kept, as texts with units, and comes back where it was. */
    remove(row) {
      const next = row.nextElementSibling || row.previousElementSibling;
      const cells = this.texts(row).map((text, at) => this.columns[at].full(text));
      this.removed.push({ cells, at: this.rows().indexOf(row) });
      row.remove();
      this.number();
      this.offerUndo();
      const button = next?.querySelector('[data-rows="remove"]');
      (button && !button.disabled ? button : this.undoPlace.querySelector("button")).focus();
    }

    undo() {
      const { cells, at } = this.removed.pop();
      const row = this.newRow(this.shown(cells, this.system));
      this.body.insertBefore(row, this.body.rows[at] || null);
      this.offerUndo();
      this.controls(row)[0].focus();
    }

    offerUndo() {
      this.undoPlace.replaceChildren();
      if (!this.removed.length || this.rows().length >= this.most) return;
      const button = document.createElement("button");
      button.type = "button";
      button.dataset.rows = "undo";
      button.textContent = "Undo";
      const name = this.removed.at(-1).cells[0];
      this.undoPlace.append("Removed: " + (name || this.wrap.dataset.row) + ". ", button);
    }
  }

  window.SpringlineRows = { RowsField, encode, decode };
})();
