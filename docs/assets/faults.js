/* Every fault of a form in one list above the answer, each a link to its field or cell.
   SpringlineFaults.list(errors, fields, before) -> an element, the one before where it says the
   same, or null where no fault has a place.
   .control(key, fields) is what an error's key names, and .lead(control) goes there. */
(function () {
  "use strict";

  const MOST = 8; // links; the rest are counted
  const said = new WeakMap(); // a list -> the faults it was made of

  /* The control that an error's key names: "climb", "taps", "taps.2" or "taps.2.flow". */
  function control(key, fields) {
    const [name, at, column] = key.split(".");
    const field = fields.find((one) => one.key === name);
    if (!field) return null;
    if (!field.table) return field.box;
    const row = at === undefined ? null : field.rows()[Number(at)];
    if (!row) return field.wrap.querySelector("tbody :is(input, select), [data-rows='add']");
    const cell = column && row.querySelector(`td[data-column="${column}"]`);
    return (cell || row).querySelector("input, select");
  }

  function words(key, sentence, fields) {
    const field = fields.find((one) => one.key === key.split(".")[0]);
    if (key.includes(".")) return sentence; // names its row
    const label = field.wrap.querySelector("label, .sl-rows-label").textContent.replace(" (optional)", "");
    return sentence.toLowerCase().includes(label.toLowerCase()) ? sentence : label + ": " + sentence;
  }

  /* The group opens, the label comes into view, then the control has the focus. */
  function lead(target) {
    if (!target) return;
    target.closest("details")?.setAttribute("open", "");
    (target.closest("td, .sl-field") || target).scrollIntoView({ block: "center" });
    target.focus({ preventScroll: true });
  }

  function list(errors, fields, before) {
    const told = JSON.stringify(errors);
    if (before && said.get(before) === told) return before;
    const found = Object.entries(errors).map(([key, sentence]) => [key, sentence, control(key, fields)])
      .filter(([, , target]) => target);
    if (!found.length) return null;
    const made = document.createElement("ul");
    made.className = "sl-faults";
    for (const [key, sentence, target] of found.slice(0, MOST)) {
      const link = document.createElement("a");
      link.href = "#" + target.id;
      link.textContent = words(key, sentence, fields);
      link.addEventListener("click", (event) => {
        event.preventDefault();
        lead(control(key, fields));
      });
      const item = document.createElement("li");
      item.append(link);
      made.append(item);
    }
    said.set(made, told);
    if (found.length > MOST) {
      const item = document.createElement("li");
      item.textContent = `and ${found.length - MOST} more`;
      made.append(item);
    }
    return made;
  }

  window.SpringlineFaults = { list, lead, control };
})();
