/* Whose number a field holds, in a word beside its label; and "I don't know" beside its control.
   SpringlineMarks.word(field, bar), .unknowns(form, system) and .inTables(form). */
(function () {
  "use strict";

  const UNKNOWN = "?"; // as Python names it

  function spot(field) {
    let mark = field.wrap.querySelector(":scope > .sl-mark");
    if (mark) return mark;
    mark = document.createElement("span");
    mark.className = "sl-mark";
    mark.id = (field.box?.id || field.wrap.dataset.name) + "-mark";
    field.wrap.querySelector("label, .sl-rows-label").after(mark);
    field.box?.setAttribute("aria-describedby",
      mark.id + " " + (field.box.getAttribute("aria-describedby") || ""));
    return mark;
  }

  /* "" takes the mark away. */
  function show(field, text) {
    const mark = spot(field);
    if (mark.textContent !== text) mark.textContent = text;
    mark.hidden = !text;
    field.wrap.toggleAttribute("data-sl-example", text === "example");
  }

  /* The word for one field; ``bar`` knows which are the site's. Why something is assumed stands
     under the verdict. */
  function word(field, { whose, filled, cells, may }) {
    const { key, standing } = field;
    const own = filled.includes(key);
    const asked = Boolean(may?.fields.includes(key));
    field.wrap.toggleAttribute("data-sl-may", asked);
    if (asked && own) return show(field, "please check");
    if (whose === "reading" || field.box?.value.trim() === UNKNOWN) return show(field, "");
    if (own && field.table && whose !== "example") {
      return show(field, assumedRows(field, cells) ? "assumed" : "from the site");
    }
    const words = { example: "example", assumed: "assumed", unknown: "not known" };
    if (field.box && !field.box.value.trim() && standing !== "unknown") return show(field, "");
    return show(field, words[standing] || (own ? "from the site" : ""));
  }

  /* Whether most cells of a table are assumed: then the table says it, else each cell. */
  function assumedRows(field, cells) {
    const places = Object.keys(cells).filter((place) => place.startsWith(field.key + "."));
    const most = places.length >= (field.rows().length * field.columns.length) / 2;
    field.assumed = most ? {} : cells;
    return places.length > 0 && most;
  }

  /* What follows from not knowing, as the page's HTML has it for each system of units. */
  function follows(wrap, system) {
    return (system === "us" && wrap.dataset.slUnknownUs) || wrap.dataset.slUnknown;
  }

  class Unknown {
    constructor(wrap, system) {
      this.wrap = wrap;
      this.system = system;
      this.box = wrap.querySelector("input, select:not(.sl-unit)");
      this.before = "";
      this.said = document.createElement("span");
      this.said.className = "sl-follows";
      this.said.id = this.box.id + "-follows";
      this.said.setAttribute("role", "status");
      wrap.querySelector(".sl-control").after(this.said);
      if (this.box.tagName === "INPUT") this.addButton();
    }

    addButton() {
      this.button = document.createElement("button");
      this.button.type = "button";
      this.button.className = "sl-unknown";
      this.button.textContent = "I don’t know";
      const name = this.wrap.querySelector("label").textContent;
      this.button.setAttribute("aria-label", "I don’t know: " + name);
      this.button.setAttribute("aria-describedby", this.said.id);
      this.button.addEventListener("click", () => this.press());
      this.wrap.querySelector(".sl-control").append(this.button);
    }

    get pressed() {
      return this.box.value.trim() === UNKNOWN;
    }

    /* Pressed again, what stood there comes back, and the cursor with it where that was nothing. */
    press() {
      if (this.pressed) {
        this.box.value = this.before;
        this.box.focus();
      } else {
        this.before = this.box.value;
        this.box.value = UNKNOWN;
      }
      this.box.dispatchEvent(new Event("input", { bubbles: true }));
    }

    show() {
      const text = this.pressed ? follows(this.wrap, this.system()) : "";
      if (this.said.textContent !== text) this.said.textContent = text;
      this.button?.setAttribute("aria-pressed", String(this.pressed));
      this.wrap.classList.toggle("sl-not-known", this.pressed);
    }
  }

  /* In a table one button comes to the cell that has the focus: one in each would be a wall of them.
     It is no stop for Tab, since "?" may be typed instead; its name says so. */
  class CellUnknown {
    constructor(wrap, columns) {
      this.columns = columns; // keys
      this.before = new WeakMap(); // cell's box -> what stood there
      this.box = null;
      this.button = document.createElement("button");
      this.button.type = "button";
      this.button.className = "sl-unknown";
      this.button.id = wrap.dataset.name + "-unknown";
      this.button.tabIndex = -1;
      this.button.textContent = "I don’t know";
      this.button.addEventListener("mousedown", (event) => event.preventDefault()); // the box keeps the focus
      this.button.addEventListener("click", () => this.press());
      wrap.addEventListener("focusin", ({ target }) => this.enter(target));
      wrap.addEventListener("focusout", ({ relatedTarget }) => {
        if (relatedTarget !== this.button) this.leave();
      });
      wrap.addEventListener("input", () => this.show());
    }

    enter(target) {
      if (target === this.button) return;
      this.leave();
      const cell = target.closest("td[data-column]");
      if (!cell || target.tagName !== "INPUT" || !this.columns.has(cell.dataset.column)) return;
      this.box = target;
      const name = target.closest("tr").querySelector('td[data-column="name"] > input')?.value.trim();
      const where = name ? cell.dataset.label + ", " + name : target.getAttribute("aria-label");
      this.button.setAttribute("aria-label", `I don’t know: ${where} (or type ?)`);
      cell.append(this.button);
      this.show();
    }

    leave() {
      this.box = null;
      this.button.remove();
    }

    /* Pressed again, what stood there comes back. */
    press() {
      const { box } = this;
      const known = box.value.trim() !== UNKNOWN;
      if (known) this.before.set(box, box.value);
      box.value = known ? UNKNOWN : this.before.get(box) ?? "";
      box.focus();
      box.dispatchEvent(new Event("input", { bubbles: true }));
    }

    show() {
      if (this.box) this.button.setAttribute("aria-pressed", String(this.box.value.trim() === UNKNOWN));
    }
  }

  /* Of every table with columns that may be left unknown. */
  function inTables(form) {
    for (const wrap of form.querySelectorAll(".sl-rows")) {
      const marked = wrap.querySelector("template").content.querySelectorAll("td[data-unknown]");
      if (marked.length) new CellUnknown(wrap, new Set([...marked].map((cell) => cell.dataset.column)));
    }
  }

  /* Of every field of a form that may be left unknown. */
  function unknowns(form, system) {
    return [...form.querySelectorAll("[data-sl-unknown]")].map((wrap) => new Unknown(wrap, system));
  }

  window.SpringlineMarks = { word, unknowns, inTables };
})();
