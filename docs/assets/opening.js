/* How a page opens, and the address it keeps: a link with numbers opens on the answer, with the form
   and the guide below it; form, figures and address stay together through Back and Forward.
   new SpringlineOpening.Opening(calculator). */
(function () {
  "use strict";

  const Link = window.SpringlineLink;
  const LATER = 250; // ms; browsers allow few changes of the address in a second
  const MOST = 6; // of a link's raw numbers, shown while they are read
  const narrow = window.matchMedia("(max-width: 59.99em)"); // as in answer.css

  class Opening {
    constructor(calc) {
      this.calc = calc;
      this.lead = document.querySelector("[data-sl-lead]");
      this.own = location.hash;
      window.addEventListener("hashchange", () => this.moved());
      document.addEventListener("click", (event) => this.clicked(event), true);
      narrow.addEventListener("change", () => this.arrange(this.linked));
    }

    // Where the parts stand -------------------------------------------------------------------

    get linked() {
      return document.documentElement.classList.contains("sl-linked");
    }

    /* In the order they are read in: the answer first where a link brought numbers. */
    arrange(linked) {
      const { section } = this.calc;
      document.documentElement.classList.toggle("sl-linked", linked);
      if (this.lead) section[linked ? "after" : "before"](this.lead);
      const [bar, entry, answer, paper] = ["bar", "entry", "answer", "foreign"].map(
        (name) => section.querySelector(`.sl-${name}`));
      const below = linked && (narrow.matches || section.classList.contains("sl-wide"));
      if (below) answer.after(bar, entry);
      else if (section.classList.contains("sl-wide")) paper.after(bar);
      else paper.after(bar, entry);
    }

    // The address -----------------------------------------------------------------------------

    /* What the address says now; true where it holds numbers. */
    take() {
      clearTimeout(this.saving);
      this.own = location.hash;
      this.arrange(Link.opensOnAnswer(this.own));
      if (this.called && this.linked) window.scrollTo(0, 0);
      this.called = false;
      return Link.holdsNumbers(this.own);
    }

    moved() {
      if (location.hash === this.own) return;
      if (Link.holdsNumbers(location.hash) || !this.calc.example) this.calc.open();
    }

    /* A link to a heading of this page would take the numbers out of the address. */
    clicked(event) {
      const anchor = event.target.closest?.("a[href]");
      if (!anchor || event.defaultPrevented || event.button || event.ctrlKey || event.metaKey
        || event.shiftKey || event.altKey || anchor.getAttribute("target")) return;
      const there = new URL(anchor.getAttribute("href"), location.href); // a picture's links too
      const here = there.origin === location.origin && there.pathname === location.pathname
        && there.search === location.search;
      if (!here) return;
      this.flush();
      this.called = Link.holdsNumbers(there.hash);
      if (this.called || this.calc.example || !there.hash) return;
      const heading = document.getElementById(decodeURIComponent(there.hash.slice(1)));
      if (!heading) return;
      event.preventDefault();
      heading.scrollIntoView();
      if (heading.tabIndex < 0) heading.setAttribute("tabindex", "-1");
      heading.focus({ preventScroll: true });
    }

    /* The address bar follows, a little later. */
    save() {
      clearTimeout(this.saving);
      this.saving = setTimeout(() => this.flush(), LATER);
    }

    flush() {
      const { calc } = this;
      clearTimeout(this.saving);
      if (!calc.fresh || !calc.touched) return;
      this.own = "#" + calc.link;
      if (location.hash !== this.own) history.replaceState(history.state, "", this.own);
    }

    /* A new entry, so that "back" brings the numbers before. */
    push(fragment) {
      this.flush();
      this.own = fragment;
      history.pushState(history.state, "", fragment);
    }

    /* Of the page with the numbers as they are; of the page alone while the example is as printed.
       From a folder that knows no site it is the page's name in the folder: the way to it on this
       disk is of use to nobody else, and nobody else's business. */
    address(whole = this.calc.fresh) {
      const { protocol, pathname, href } = location;
      const published = document.querySelector('link[rel="canonical"]')?.href;
      const here = protocol === "file:" ? published || pathname.split("/").pop() : href;
      return here.split("#")[0] + (whole ? "#" + this.calc.link : "");
    }

    // Until Python has read a link ------------------------------------------------------------

    /* [[key, raw text], ...] of the link, and the same as a line to be read meanwhile. */
    raw(fields) {
      const pairs = Link.split(this.own);
      const told = pairs.filter(([key]) => !key.endsWith("-"))
        .map(([key, text]) => [fields.find((one) => one.key === key.replace(/\.$/, "")), text])
        .filter(([field]) => field).map(([field, text]) => field.told(text)).filter(Boolean);
      const line = document.createElement("p");
      line.className = "sl-yours";
      const more = told.length > MOST ? ` and ${told.length - MOST} more` : "";
      line.textContent = told.length
        ? "Numbers in this link: " + told.slice(0, MOST).join(", ") + more + "." : "";
      return { pairs, line };
    }
  }

  window.SpringlineOpening = { Opening };
})();
