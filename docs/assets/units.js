/* Which units the reader likes, kept in this browser: SpringlineUnits.preferred() and .remember(). */
(function () {
  "use strict";

  const KEY = "springline-units";

  function remembered() {
    try {
      return localStorage.getItem(KEY);
    } catch {
      return null; // storage refused: the choice lasts for this page
    }
  }

  function remember(system) {
    try {
      localStorage.setItem(KEY, system);
    } catch {
      /* as above */
    }
  }

  function preferred() {
    return remembered() || (/^en-(US|LR)$/.test(navigator.language) ? "us" : "metric");
  }

  window.SpringlineUnits = { preferred, remember };
})();
