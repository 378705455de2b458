/* A table of rows that the reader edits: add, remove, duplicate, move; one unit a column.
   Its text is that of the link: rows parted by ";", cells by ",", "!" before a sign to keep. */
(function () {
  "use strict";

  const { wrong } = window.SpringlineField;

  function encode(rows) {
    const escaped = (cell) => cell.replace(/[!,;]/g, "!$&");
    return rows.map((row) => row.map(escaped).join(",")).join(";");
  }

  function decode(text) {
    const rows = [[""]]; // as calc/page/row_text.py
    for (let i = 0; i < text.length; i += 1) {
      const row = rows[rows.length - 1];
      if (text[i] === "!") row[row.length - 1] += text[++i] ?? "!";
      else if (text[i] === ",") row.push("");
      else if (text[i] === ";") rows.push([""]);
      else row[row.length - 1] += text[i];
    }
    return rows.map((row) => row.map((cell) => cell.trim())).filter((row) => row.length > 1 || row[0] !== "");
  }

  /* One column: its unit menu and the default of a new cell. */
  class Column {
    constructor(cell, table) {
      this.key = cell.dataset.column;
      this.control = cell.querySelector("input, select");
      this.menu = table.querySelector(`thead select[data-column="${this.key}"]`);
    }

    standard(system) {
      const text = this.control.dataset[system];
      return this.menu ? this.withUnit(text, this.menu.dataset[system]) : text;
    }

    /* A bare number that was typed under another unit than the menu's keeps that unit. */
    withUnit(text, unit) {
      if (!this.menu || !unit || unit === this.menu.value || !/\d$/.test(text.trim())) return text;
      return text.trim() + " " + unit;
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
      window.SpringlineShort?.dress(this);
    }

    get value() { return ""; }

    // Cells ------------------------------------------------------------------------------------

    rows() {
      return [...this.body.rows];
    }

    /* The controls of a row, or of one cell of it. */
    controls(row, cell = row) {
      const all = [...row.querySelectorAll("td[data-column] > input, td[data-column] > select")];
      return all.filter((control) => cell.contains(control));
    }

    texts(row) {
      return this.controls(row).map((control) => control.value);
    }

    newRow(cells) {
      const row = this.template.cloneNode(true);
      this.controls(row).forEach((control, at) => (control.value = cells[at]));
      return row;
    }

    /* Cells of a row as they are; those that are missing are their columns' defaults. */
    filled(cells, system) {
      return this.columns.map((column, at) => cells[at] ?? column.standard(system));
    }

    units() {
      return Object.fromEntries(this.columns.filter((column) => column.menu).map(
        (column) => [this.key + "." + column.key, column.menu.value]));
    }

    /* Ids and names follow the place of a row. */
    number() {
      const rows = this.rows();
      this.said = undefined; // nothing is said of rows that are new or elsewhere
      rows.forEach((row, at) => {
        row.querySelectorAll("td[data-column]").forEach((cell) => {
          const place = [this.name, at, cell.dataset.column].join("-");
          const [control] = this.controls(cell.parentNode, cell);
          control.id = place;
          control.setAttribute("aria-label", cell.dataset.label + ", row " + (at + 1));
          control.setAttribute("aria-describedby", place + "-error " + place + "-note");
          cell.querySelector(".sl-error").id = place + "-error";
          cell.querySelector(".sl-note").id = place + "-note";
        });
        row.querySelectorAll("button[data-rows]").forEach((button) => {
          button.setAttribute("aria-label", button.dataset.word + ": row " + (at + 1));
          const action = button.dataset.rows;
          button.disabled = (action === "up" && at === 0)
            || (action === "down" && at === rows.length - 1)
            || (action === "remove" && rows.length <= this.least)
            || (action === "copy" && rows.length >= this.most);
        });
      });
      this.wrap.querySelector('[data-rows="add"]').disabled = rows.length >= this.most;
      this.dress?.(); // points.js
      window.SpringlineShort?.dress(this);
    }

    // As other fields --------------------------------------------------------------------------

    put(text, units, system) {
      for (const column of this.columns) {
        if (!column.menu) continue;
        column.menu.value = units[this.key + "." + column.key] ?? column.menu.dataset[system];
      }
      this.system = system;
      this.body.replaceChildren(...decode(text).map((cells) => this.newRow(this.filled(cells, system))));
      this.number();
      this.offerUndo();
    }

    toStandard(system) {
      this.removed = [];
      this.put(this.wrap.dataset[system], {}, system);
      this.standing = "example";
      this.original = null;
    }

    /* A link's raw text, until Python has read it. */
    pend(text) {
      const rows = decode(text).filter((cells) => cells.length <= this.columns.length);
      if (rows.length <= this.most) this.put(encode(rows), {}, this.system);
    }

    told(text) {
      const count = decode(text).length;
      const label = this.wrap.querySelector(".sl-rows-label").textContent;
      return count ? `${label} in ${count} ${count === 1 ? "row" : "rows"}` : "";
    }

    /* What Python read. */
    take({ texts, units, standing }, system) {
      this.removed = [];
      this.put(texts[this.key], units, system);
      this.standing = standing[this.key];
      this.original = null;
    }

    text() {
      return encode(this.rows().map((row) => this.texts(row)));
    }

    touch(system) {
      this.system = system;
      this.standing = "given";
      this.original = { text: this.text(), units: this.units(), system };
    }

    /* "40 psi" typed in a column whose menu says bar stands as typed: the menu is for all rows. */
    tidy() {}

    tell({ texts, units, standing }) {
      texts[this.key] = this.text();
      Object.assign(units, this.units());
      standing[this.key] = this.standing;
    }

    convert(system, from, reply) {
      const before = this.original || { text: this.text(), units: this.units(), system: from };
      if (before.system === system) this.put(before.text, before.units, system);
      else this.put(reply.texts[this.key], reply.units, system);
      this.original = before;
    }

    show(errors, { notes, cells }) {
      const own = this.key + ".";
      const mine = (all) => Object.entries(all).filter(([key]) => `${key}.`.startsWith(own));
      const now = JSON.stringify([mine(errors), mine(cells), mine(notes), this.assumed]);
      if (now === this.said) return; // as it stands
      this.said = now;
      let faulty = Boolean(errors[this.key]);
      wrong(this.error, errors[this.key]);
      this.rows().forEach((row, at) => {
        const place = own + at;
        wrong(row.querySelector(".sl-row-change .sl-error"), errors[place] && cells[place]);
        row.classList.toggle("sl-wrong", Boolean(errors[place]));
        faulty ||= Boolean(errors[place]);
        row.querySelectorAll("td[data-column]").forEach((cell) => {
          const where = place + "." + cell.dataset.column;
          const said = errors[where] ? cells[where] : "";
          wrong(cell.querySelector(".sl-error"), said);
          const assumed = this.assumed?.[where]; // marks.js
          cell.querySelector(".sl-note").textContent =
            said ? "" : notes[where] || (assumed ? "assumed" : "");
          this.controls(row, cell)[0].setAttribute("aria-invalid", said ? "true" : "false");
          cell.classList.toggle("sl-wrong", Boolean(said));
          faulty ||= Boolean(said);
        });
      });
      if (faulty) this.wrap.closest("details")?.setAttribute("open", "");
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
      const row = this.newRow(this.filled([], this.system));
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

    /* What is removed is kept with its columns' units, and comes back where it was. */
    remove(row) {
      const next = row.nextElementSibling || row.previousElementSibling;
      this.removed.push({
        cells: this.texts(row),
        units: this.columns.map((column) => column.menu?.value),
        at: this.rows().indexOf(row),
      });
      row.remove();
      this.number();
      this.offerUndo();
      const button = next?.querySelector('[data-rows="remove"]');
      (button && !button.disabled ? button : this.undoPlace.querySelector("button")).focus();
    }

    undo() {
      const { cells, units, at } = this.removed.pop();
      const row = this.newRow(
        cells.map((text, place) => this.columns[place].withUnit(text, units[place])));
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
