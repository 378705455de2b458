/* What takes seconds (designs for a target): asked of Python a slice at a time, so that the form
   answers in between. It belongs to the numbers it was begun with: a change ends it.
   SpringlineJob.begin(calculator), where the page has a place for it. */
(function () {
  "use strict";

  const Engine = window.SpringlineEngine;
  const SOON = 500; // ms, a wait that need not be shown

  class Job {
    constructor(calc, place) {
      this.calc = calc;
      this.place = place;
      this.turn = 0; // so that a slice of one that was ended is dropped
      for (const part of ["start", "stop", "bar", "said", "found"]) {
        this[part] = place.querySelector(`[data-sl-job-${part}]`);
      }
      this.start.addEventListener("click", () => this.run());
      this.stop.addEventListener("click", () => this.end("Stopped."));
      const watcher = new MutationObserver(() => this.changed());
      watcher.observe(calc.section, { attributeFilter: ["data-sl-busy"] });
    }

    get isRunning() {
      return !this.stop.hidden;
    }

    /* The numbers have changed: what was found belongs to those before. */
    changed() {
      if (!this.calc.section.hasAttribute("data-sl-busy")) return;
      if (!this.isRunning && !this.found.firstChild) return;
      this.found.replaceChildren();
      this.end("The numbers have changed. Begin again.");
    }

    show(running) {
      this.start.hidden = running;
      this.stop.hidden = !running;
      if (!running) this.bar.hidden = true;
    }

    end(said) {
      if (this.isRunning) Engine.ask({ op: "job", sheet: this.calc.sheet, do: "stop" }).catch(() => {});
      this.turn += 1;
      this.show(false);
      this.said.textContent = said;
    }

    async run() {
      const turn = (this.turn += 1);
      const { calc } = this;
      this.found.replaceChildren();
      this.said.textContent = "";
      this.show(true);
      this.stop.focus();
      try {
        await calc.asking.current();
        const question = { ...calc.state(), op: "job" };
        const began = performance.now();
        let reply = await Engine.ask({ ...question, do: "start" });
        while (turn === this.turn && reply.html === undefined && reply.of) {
          if (performance.now() - began > SOON) this.progress(reply);
          reply = await Engine.ask({ op: "job", sheet: calc.sheet, do: "step" });
        }
        if (turn === this.turn) this.finish(reply);
      } catch (error) {
        if (turn === this.turn) this.end(`Not worked out: ${error.message}`);
      }
    }

    progress({ done, of, said }) {
      this.bar.hidden = false;
      Object.assign(this.bar, { max: of, value: done });
      const sentence = `${said} …`;
      if (this.said.textContent !== sentence) this.said.textContent = sentence;
    }

    finish({ html, error, failed }) {
      const focused = document.activeElement === this.stop;
      this.show(false);
      if (focused) this.start.focus();
      this.said.textContent = error || failed || (html ? "" : "Stopped.");
      const made = document.createElement("template");
      made.innerHTML = html || "";
      this.found.replaceChildren(...made.content.childNodes);
    }
  }

  function begin(calc) {
    const place = calc.section.querySelector(".sl-job");
    if (place) new Job(calc, place);
  }

  window.SpringlineJob = { begin };
})();
