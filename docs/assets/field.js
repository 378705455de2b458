/* One field of a form: its box, its unit menu and the lines under it. It knows no unit and no
   default but what the page's HTML holds to be shown.

   What a calculator asks of a field, a RowsField too:
     key, wrap             its key, and the element with its label and its errors
     value                 its text as typed; table: a RowsField's element, which a Field lacks
     standing              whose number it is: "given", "site", "example", ...; left: the reader
                           typed and went on
     toStandard(system)    to the example's text
     tell(reply), take(reply, system)   whose number it is; its text, units and standing as well
     pend(text), told(text)   show a link's text before Python has read it; what cannot be shown
     convert(system, from, reply)       to the other units, as Python wrote them; what was typed
                           comes back when they are switched back
     touch(system)         the reader changed it; tidy(found, system): its unit moves to the menu
     show(errors, reply)   its errors and notes, by its key (rows: key.row.column) */
(function () {
  "use strict";

  /* What is wrong, in its place; a screen reader hears first that it is an error. */
  function wrong(place, sentence) {
    const lead = document.createElement("span");
    lead.className = "sl-quiet";
    lead.textContent = "Error: ";
    place.replaceChildren(...(sentence ? [lead, sentence] : []));
  }

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
      this.standing = "example"; // whose number it is, as Python names it
      this.left = false; // the reader typed and went on: its unit may move to the menu
    }

    toStandard(system) {
      const data = this.box.dataset;
      this.box.value = data[system];
      if (this.menu) this.menu.value = data[system + "Unit"];
      this.original = null;
      this.standing = "example";
    }

    /* What a field that shows only for some choices compares with. */
    get value() {
      return this.box.value;
    }

    /* What Python is told: the text as typed, the unit its menu is on, whose number it is. */
    tell({ texts, units, standing }) {
      texts[this.key] = this.box.value;
      if (this.menu) units[this.key] = this.menu.value;
      standing[this.key] = this.standing;
    }

    /* A link's raw text, until Python has read it. */
    pend(text) {
      if (!this.choice || this.offers(text)) this.box.value = text;
    }

    /* A link's raw text as a person reads it. */
    told(text) {
      const label = this.wrap.querySelector("label").textContent;
      const option = this.choice && [...this.box.options].find((one) => one.value === text);
      return text ? `${label} ${option ? option.text : text}` : "";
    }

    offers(text) {
      return [...this.box.options].some((option) => option.value === text);
    }

    /* What Python read. */
    take({ texts, units, standing }) {
      const text = texts[this.key];
      if (!this.choice || this.offers(text)) this.box.value = text;
      if (this.menu) this.menu.value = units[this.key];
      this.standing = standing[this.key];
      this.original = null;
      this.left = false;
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

    keep(system) {
      this.original = { text: this.box.value, unit: this.menu && this.menu.value, system };
    }

    /* The reader typed here. */
    touch(system) {
      this.standing = "given";
      this.left = false;
      this.keep(system);
    }

    /* "40 psi" typed in a field whose menu says bar: the menu follows once the field is left. */
    tidy(found, system) {
      const said = found[this.key];
      if (!this.menu || !this.left || !said || said.from !== this.box.value) return;
      this.box.value = said.text;
      this.menu.value = said.unit;
      this.left = false;
      this.keep(system);
    }

    show(errors, { notes, same }) {
      const said = errors[this.key] || "";
      wrong(this.error, said);
      this.note.textContent = said ? "" : notes[this.key] || "";
      if (this.same) this.same.textContent = same[this.key] || "";
      this.box.setAttribute("aria-invalid", said ? "true" : "false");
      this.wrap.classList.toggle("sl-wrong", Boolean(said));
      if (said) this.wrap.closest("details")?.setAttribute("open", "");
    }
  }

  window.SpringlineField = { Field, wrong };
})();
