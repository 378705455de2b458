/* What stands in the answer's place, and whether it belongs to the numbers in the form: a word says
   so first, colours follow (answer.css), on the screen and on paper.
   new SpringlineFigures.Figures(section, speaker). */
(function () {
  "use strict";

  const Drawing = window.SpringlineDrawing;
  const PLACES = ["top", "beside", "more"]; // classes of the answer's parts, as Python writes them
  const LATE = 300; // ms without an answer, then the figures are said to be from before
  const OURS = "These numbers are those of Alder Terrace, not yours: change any of them.";
  const WORDS = {
    example: "Example.",
    reading: "Reading the link.",
    starting: "Starting.",
    pending: "Working it out.",
    stale: "From before.",
    failed: "Not worked out.",
    none: "No answer yet.",
    yours: "",
  };

  function paragraph(kind, text) {
    const made = document.createElement("p");
    made.className = kind;
    made.textContent = text;
    return made;
  }

  class Figures {
    constructor(section, speaker) {
      this.section = section;
      this.speaker = speaker;
      this.answer = section.querySelector(".sl-answer");
      this.status = section.querySelector(".sl-status");
      this.glance = section.querySelector(".sl-glance");
      const entry = this.glance.parentElement; // the glance stays in sight while one types in it
      entry.addEventListener("focusin", ({ target }) =>
        entry.classList.toggle("is-typing", target.matches("input, select, textarea")));
      entry.addEventListener("focusout", () => entry.classList.remove("is-typing"));
      this.examples = {
        metric: this.places().map((place) => place.outerHTML).join(""),
        us: section.querySelector(".sl-us").innerHTML,
      };
      this.printed = true; // the example as the build drew it
      this.room = 0; // px, the height of the last whole verdict
      this.html = this.examples.metric;
      document.addEventListener("springline-progress", ({ detail }) => this.progress(detail));
      this.problem = ""; // what a link said of itself, kept until its numbers are changed
    }

    places() {
      return PLACES.map((name) => this.section.querySelector(`.sl-${name}`));
    }

    get state() {
      return this.section.dataset.slFigures;
    }

    /* One of ``WORDS``, and a sentence after the word. */
    is(state, sentence = state === "example" ? OURS : "", wrong = false) {
      clearTimeout(this.late);
      const news = wrong || (state !== this.state && ["reading", "starting"].includes(state));
      this.section.dataset.slFigures = state;
      const word = document.createElement("strong");
      word.textContent = this.inVerdict(state) ? "" : WORDS[state];
      const parts = [word.textContent && word, this.problem, sentence].filter(Boolean);
      this.status.replaceChildren(...parts.flatMap((part) => [part, " "]).slice(0, -1));
      this.status.classList.toggle("sl-alarm", wrong);
      if (news) this.speaker.say(this.status.textContent);
      this.look();
    }

    /* While an answer is worked out the word stands in place of the verdict's, so that nothing
       moves; true where it does. */
    inVerdict(state) {
      const word = this.answer.querySelector(".sl-word");
      if (word) word.textContent = state === "pending" ? WORDS.pending : (this.word ??= word.textContent);
      return state === "pending" && Boolean(word);
    }

    /* The line that stays in sight while a field has the focus: the word and the main figure. */
    look() {
      const own = ["example", "yours"].includes(this.state);
      const [verdict, main] = [".sl-word", ".sl-main"].map((one) => this.answer.querySelector(one));
      const figure = main?.querySelector(".sl-first").textContent;
      const name = main?.querySelector("dt").textContent;
      const word = document.createElement("strong");
      word.textContent = own && verdict ? verdict.textContent : WORDS[this.state] || WORDS.pending;
      this.glance.replaceChildren(word, own && figure ? ` ${figure} ${name}` : "");
      this.glance.className = "sl-glance " + (own ? this.level() : "");
    }

    level() {
      const verdict = this.answer.querySelector(".sl-verdict");
      return ["sl-good", "sl-tight", "sl-bad"].find((one) => verdict?.classList.contains(one)) || "";
    }

    /* A number was changed: if no answer comes soon, the figures are told apart from it. */
    expect() {
      clearTimeout(this.late);
      if (!["yours", "example"].includes(this.state)) return;
      this.late = setTimeout(() => this.is("pending"), LATE);
    }

    get isShown() {
      return ["yours", "example", "pending"].includes(this.state) && Boolean(this.html);
    }

    /* At once, for paper. */
    settle() {
      if (this.state === "yours" || this.state === "example") this.is("pending");
    }

    /* Not the example's verdict where its reader takes it for an answer to these numbers. */
    empty(state, sentence, ...more) {
      this.speaker.hush();
      clearTimeout(this.keeping);
      const [top, beside, rest] = this.places();
      rest.classList.remove("sl-waiting");
      top.replaceChildren(...more);
      beside.replaceChildren();
      rest.replaceChildren();
      this.html = undefined;
      this.printed = false;
      this.is(state, sentence, ["none", "failed"].includes(state));
    }

    /* A link's raw numbers, which stay where it could not be read. */
    kept() {
      return [...this.section.querySelectorAll(".sl-top > .sl-yours")];
    }

    /* How much of the calculator has come, or what holds it up, while somebody waits for it. */
    progress({ loaded, total, trouble }) {
      if (!["reading", "starting"].includes(this.state)) return;
      const [some, all] = [loaded, total].map((bytes) => (bytes / 1e6).toFixed(1));
      this.is(this.state, trouble || (total ? `${some} of ${all} MB of the calculator are here.` : ""));
    }

    /* The last figures stay, without a verdict, which would be taken for one on the new numbers.
       Nothing moves under a finger: the place keeps its height. */
    withoutVerdict(state, sentence, none = "No answer to these numbers yet.") {
      this.speaker.hush();
      clearTimeout(this.keeping);
      const [top] = this.places();
      top.style.minHeight = top.offsetHeight + "px";
      top.replaceChildren(paragraph("sl-none", none));
      this.html = undefined;
      this.is(state, sentence, true);
    }

    example(system) {
      this.show(this.examples[system]);
      this.printed = true;
      this.speaker.hush();
      this.is("example");
    }

    /* Whether an answer is shown, to these numbers or those before. */
    get stands() {
      return this.html !== undefined;
    }

    /* A new answer; the reader's open and closed parts stay, old drawings stand until redrawn.
       partial: picture, charts and working are still to come. */
    show(html, charts = {}, partial = false) {
      clearTimeout(this.keeping);
      if (html === this.html) return;
      this.word = undefined;
      this.open = this.section.querySelector(".sl-working")?.open ?? this.open;
      const drawn = new Map();
      for (const figure of this.section.querySelectorAll(".sl-chart")) {
        const place = figure.querySelector(".sl-plot");
        const { told } = place.classList.contains("sl-waiting") ? {} : place;
        drawn.set(figure.dataset.chart, { drawing: [...place.childNodes], told });
      }
      const made = document.createElement("template");
      made.innerHTML = html;
      const parts = [...made.content.children];
      if (partial && this.stands) this.renew(parts);
      else this.places().forEach((place, at) => place.replaceWith(parts[at]));
      Object.assign(this, { html, printed: false });
      if (!partial) this.measure();
      const working = this.section.querySelector(".sl-working");
      if (working && this.open) working.open = true;
      for (const figure of this.section.querySelectorAll(".sl-chart")) {
        const chart = charts[figure.dataset.chart];
        if (chart) this.draw(figure.querySelector(".sl-plot"), chart, drawn.get(figure.dataset.chart));
      }
      this.speaker.tell({ verdict: this.text(".sl-verdict"), main: this.text(".sl-main") });
    }

    /* Verdict and figures alone are new. Picture and what follows the figures stay where they are,
       for a moment; after that they are told apart. The verdict keeps the room for its cause. */
    renew([fresh, figures]) {
      const [top, beside, more] = this.places();
      const drawn = fresh.querySelector(":scope > .sl-picture");
      const picture = !drawn && top.querySelector(":scope > .sl-picture");
      if (picture) {
        const [verdict, ...rest] = fresh.children;
        verdict.style.minHeight = this.room + "px";
        [...top.children].filter((one) => one !== picture).forEach((one) => one.remove());
        picture.before(verdict);
        picture.after(...rest);
        top.style.minHeight = "";
      } else {
        top.replaceWith(fresh);
      }
      beside.replaceWith(figures);
      const kept = [picture, more].filter(Boolean);
      this.keeping = setTimeout(() => kept.forEach((one) => one.classList.add("sl-waiting")), LATE);
    }

    /* The verdict's height, asked for once the page is laid out anyway. */
    measure() {
      const verdict = this.answer.querySelector(".sl-verdict");
      this.room = 0;
      requestAnimationFrame(() => setTimeout(() => (this.room = verdict?.offsetHeight || 0)));
    }

    /* The drawing before stands until the new one is there, and stays where it is the same. */
    draw(place, chart, { drawing = [], told } = {}) {
      place.replaceChildren(...drawing);
      place.told = JSON.stringify(chart);
      if (drawing.length && place.told === told) return;
      place.classList.add("sl-waiting");
      Drawing.show(place, chart);
    }

    text(part) {
      return this.answer.querySelector(part)?.textContent || "";
    }
  }

  window.SpringlineFigures = { Figures };
})();
