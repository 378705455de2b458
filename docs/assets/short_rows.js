/* Rows made short: a long menu is asked in two steps, the kind first; on a phone the cells that few
   need are behind a button, unless they hold something. */
(function () {
  "use strict";

  /* A menu of one group's choices, behind a menu of the groups. */
  function twoSteps(select, label) {
    select.previousElementSibling?.firstElementChild?.setAttribute("aria-label", label);
    if (select.dataset.steps !== undefined) return;
    const groups = [...select.querySelectorAll("optgroup")];
    if (groups.length < 2) return;
    select.dataset.steps = "";
    const kind = document.createElement("select");
    kind.setAttribute("aria-label", label);
    kind.append(...groups.map((group) => new Option(group.label, group.label)));
    const chosen = () => groups.find((group) => group.label === kind.value);
    const offer = (group) => select.replaceChildren(...[...group.children].map((one) => one.cloneNode(true)));
    const { value } = select;
    const own = groups.find((group) => [...group.children].some((one) => one.value === value)) || groups[0];
    kind.value = own.label;
    offer(own);
    select.value = value;
    const place = document.createElement("span");
    place.className = "sl-kind";
    place.append(kind);
    select.before(place);
    kind.addEventListener("change", (event) => {
      event.stopPropagation();
      offer(chosen());
      select.selectedIndex = Math.floor((select.options.length - 1) / 2); // neither thin nor huge
      select.dispatchEvent(new Event("input", { bubbles: true }));
      select.dispatchEvent(new Event("change", { bubbles: true }));
    });
    kind.addEventListener("input", (event) => event.stopPropagation());
  }

  /* Whether a cell says more than a new row's, or than that it is not known. */
  function holds(control, system) {
    const text = control.value.trim();
    return text !== "?" && text !== (control.dataset[system] ?? "").trim();
  }

  function folded(row, field) {
    const rare = [...row.querySelectorAll("td[data-rare]")];
    if (!rare.length) return;
    rare.forEach((cell) => {
      const [control] = field.controls(row, cell);
      cell.toggleAttribute("data-held", holds(control, field.system || "metric"));
    });
    if (row.querySelector(".sl-row-more")) return;
    const button = document.createElement("button");
    button.type = "button";
    button.className = "sl-row-more";
    const say = (open) => {
      row.classList.toggle("is-open", open);
      button.setAttribute("aria-expanded", String(open));
      button.textContent = open ? "Less" : "More";
    };
    say(false);
    button.addEventListener("click", () => say(!row.classList.contains("is-open")));
    row.querySelector(".sl-row-change").append(button);
  }

  function dress(field) {
    field.rows().forEach((row, at) => {
      folded(row, field);
      field.controls(row).filter((control) => control.tagName === "SELECT").forEach((select) =>
        twoSteps(select, `${select.closest("td").dataset.label}: kind, row ${at + 1}`));
    });
  }

  window.SpringlineShort = { dress };
})();
