/* A calculator's questions to Python: one at a time, always about the newest numbers.
   new SpringlineAsking.Asking(calculator), which has state(), take(), show() and broken(). */
(function () {
  "use strict";

  const Engine = window.SpringlineEngine;
  const QUIET = 100; // ms without a key, then what takes longer is asked for; our choice

  class Asking {
    constructor(calc) {
      this.calc = calc;
      this.opened = 0; // forms filled, so that a late reply to one before is dropped
      this.busy = false;
      this.again = false;
      this.waiting = []; // for an answer to the numbers as they are
      document.addEventListener("springline-live", () => this.now()); // after a start that had failed
    }

    // Python's start --------------------------------------------------------------------------

    startWhenNear() {
      const idle = window.requestIdleCallback || ((task) => setTimeout(task, 300));
      const go = () => idle(() => this.start(), { timeout: 2000 });
      if (!("IntersectionObserver" in window)) return go();
      const watcher = new IntersectionObserver((entries) => {
        if (entries.some((entry) => entry.isIntersecting)) {
          watcher.disconnect();
          go();
        }
      }, { rootMargin: "400px" });
      watcher.observe(this.calc.section);
    }

    start() {
      if (this.started) return;
      this.started = true;
      Engine.start().then(() => this.now(), (error) => this.failed(error));
    }

    failed(error) {
      this.started = Engine.ready;
      this.calc.broken(this.what() + " (" + error.message + "). Change a number to try again.");
    }

    /* A worker that is gone leaves Engine.ready false: that it was live once, only its way tells. */
    what() {
      if (Engine.ready) return "This could not be worked out";
      return Engine.way ? "The calculator stopped" : "The calculator could not start";
    }

    // Questions -------------------------------------------------------------------------------

    /* What was asked of another form is not for this one. */
    drop() {
      this.opened += 1;
    }

    /* At once where Python is live, else once it is. */
    go() {
      this.start();
      if (Engine.ready) this.now();
    }

    now() {
      return this.calc.reading ? this.read() : this.ask();
    }

    /* What the link means, Python says. */
    async read() {
      const { calc, opened } = this;
      try {
        const reply = await Engine.ask({ op: "read", sheet: calc.sheet, fragment: calc.opening.own });
        if (opened !== this.opened) return;
        if (reply.failed) calc.broken(reply.failed);
        else calc.take(reply);
      } catch (error) {
        if (opened === this.opened) this.failed(error);
      }
    }

    /* The newest state; while one question is out, later ones are rolled into one. */
    async ask() {
      const { calc } = this;
      if (calc.reading || calc.cut) return; // no verdict on numbers that are not known yet, or cut
      this.again = true;
      this.wake?.();
      if (this.busy) return;
      this.busy = true;
      try {
        while (this.again && !calc.reading && !calc.cut) await this.answer();
      } catch (error) {
        this.failed(error);
      } finally {
        this.busy = false;
      }
    }

    /* The figures first, then what is said of the form; picture, fixes and working take longer, and
       are for who waits. All at once where no answer stands whose picture could stay meanwhile. */
    async answer() {
      const { base, flat } = this.calc.section.dataset;
      const question = { ...this.calc.state(), op: "work", base, flat: flat === "1" };
      const { opened } = this;
      const given = async (phase) => {
        const reply = await Engine.ask({ ...question, phase });
        if (this.again || opened !== this.opened) return false;
        this.calc.show(reply);
        return reply.more;
      };
      this.again = false;
      const more = await given(this.calc.figures.stands ? "first" : "");
      if (more && await given("form") && await this.quiet()) await given("rest");
    }

    /* True where nothing was typed for a moment. */
    async quiet() {
      await new Promise((resolve) => {
        this.wake = resolve;
        setTimeout(resolve, QUIET);
      });
      this.wake = undefined;
      return !this.again;
    }

    // Those who wait --------------------------------------------------------------------------

    /* Resolves once the answer and its link belong to what is in the form; rejects where none can. */
    current() {
      const { calc } = this;
      if (calc.fresh && !calc.partial) return Promise.resolve();
      if (calc.cut) return Promise.reject(new Error(calc.figures.problem));
      const promise = new Promise((resolve, reject) => this.waiting.push({ resolve, reject }));
      if (!calc.fresh) this.go();
      return promise;
    }

    settled(error) {
      for (const { resolve, reject } of this.waiting.splice(0)) {
        if (error) reject(error);
        else resolve();
      }
    }
  }

  window.SpringlineAsking = { Asking };
})();
