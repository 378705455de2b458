/* What a screen reader says of new figures: one queue, a while after the last change, so that
   somebody who types hears their own keys. new SpringlineSpeak.Speaker(place). */
(function () {
  "use strict";

  const AFTER = 900; // ms after the last change; our choice

  class Speaker {
    constructor(place) {
      this.place = place;
      this.before = {};
    }

    /* The newest replaces what was not said yet; what is heard goes by later changes. */
    say(sentence) {
      clearTimeout(this.timer);
      this.timer = setTimeout(() => (this.place.textContent = sentence), AFTER);
    }

    /* Of a verdict and a main figure the one that changed, or both. */
    tell(parts) {
      const changed = Object.keys(parts).filter((key) => parts[key] !== this.before[key]);
      this.before = parts;
      if (changed.length) this.say(changed.map((key) => parts[key]).join(" "));
    }

    hush() {
      clearTimeout(this.timer);
      this.place.textContent = "";
      this.before = {};
    }
  }

  window.SpringlineSpeak = { Speaker };
})();
