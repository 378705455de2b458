/* Fills in the points along a pipe from a pasted or dropped GPS track, or a table: Python reads it. */
(function () {
  "use strict";

  const Engine = window.SpringlineEngine;
  const FIELD = "profile";
  const LARGEST = 5_000_000; // bytes; a day's track has a million
  const NOTHING = "Paste a track or a table first.";

  class Track {
    constructor(calc, block) {
      Object.assign(this, { calc, block, turn: 0 });
      this.text = block.querySelector("[data-sl-track-text]");
      this.said = block.querySelector("[data-sl-track-said]");
      block.querySelector("[data-sl-track-read]").addEventListener("click", () => this.read());
      this.text.addEventListener("input", (event) => event.stopPropagation()); // no number of the form
      for (const kind of ["dragover", "dragleave", "drop"]) {
        block.addEventListener(kind, (event) => {
          if (!event.dataTransfer?.types.includes("Files")) return;
          event.preventDefault();
          block.classList.toggle("is-over", kind === "dragover");
          if (kind === "drop") this.open(event.dataTransfer.files[0]);
        });
      }
      block.hidden = false;
    }

    say(text, alarm = false) {
      this.said.textContent = text;
      this.said.classList.toggle("sl-alarm", alarm);
    }

    async open(file) {
      if (!file) return;
      if (file.size > LARGEST) return this.say(`“${file.name}” is too large for a track.`, true);
      this.text.value = await file.text().catch(() => "");
      await this.read();
    }

    async read() {
      const { calc, text: { value: text } } = this;
      if (!text.trim()) return this.say(NOTHING, true);
      const turn = (this.turn += 1);
      this.say("Reading it…");
      try {
        await Engine.start();
        const reply = await Engine.ask({ op: "track", sheet: calc.sheet, system: calc.system, text });
        if (turn !== this.turn) return;
        if (reply.failed || reply.error) return this.say(reply.failed || reply.error, true);
        this.put(reply);
        this.say(reply.said.join(" "));
      } catch (error) {
        if (turn === this.turn) this.say(error.message, true);
      }
    }

    /* As if the reader had typed it. */
    put({ texts, units }) {
      const { calc } = this;
      const field = calc.fields.find((one) => one.key === FIELD);
      field.put(texts[FIELD], units, calc.system);
      calc.changed(field.wrap);
      calc.patient(false);
    }
  }

  for (const calc of window.SpringlineCalculators) {
    const block = calc.section.querySelector("[data-sl-track]");
    if (block) new Track(calc, block);
  }
})();
