/* Fills the fields of a place: by a town's name, this device's position, a touch on the map, the
   position typed, or an hourly file. Python looks everything up; the figures are scripts of their own
   (assets/places/), each loaded when it is wanted: SpringlinePlaces.take(part, text) receives them. */
(function () {
  "use strict";

  const Engine = window.SpringlineEngine;
  const { wrong } = window.SpringlineField;
  const FIGURES = new URL("places/", document.currentScript.src).href;
  const QUIET = 150; // ms without a key, then towns are looked for; our choice
  const SHORTEST = 2; // letters that are looked for
  const LARGEST = 20_000_000; // bytes of a file; an hourly year has 2 million
  const PATIENCE = { timeout: 30_000, maximumAge: 600_000, enableHighAccuracy: true }; // ms
  const BY_HAND = "Or enter latitude and longitude, and the twelve months, below.";
  const NAMES = { towns: "The list of towns", sun: "The figures of sunshine", air: "The figures of the air" };
  const NO_POSITION = { // codes of GeolocationPositionError
    1: "This browser was not allowed to tell its position. Find a town, or enter the position below.",
    2: "This device cannot tell its position here. Find a town, or enter the position below.",
    3: "This device found no position in half a minute. Try again outdoors, or find a town.",
  };
  const NO_TOWN = "No town of that name is in our list. Take one near it, or enter the position below.";
  const NO_WAY = "This browser tells a page like this no position. Find a town, or enter it below.";

  const texts = {}; // part -> text

  /* What was loaded before there was a service worker is asked for again when there is, to be kept. */
  function keep(source) {
    const workers = navigator.serviceWorker;
    if (!workers || workers.controller) return;
    workers.addEventListener("controllerchange", () => fetch(source).catch(() => {}), { once: true });
  }

  async function handOver(part, sheet) {
    const source = FIGURES + part + ".js";
    if (!texts[part]) {
      await Engine.script(source).catch(() => {
        throw new Error(`${NAMES[part]} could not be loaded: try again with a network. ${BY_HAND}`);
      });
      keep(source);
    }
    const { failed, error } = await Engine.ask({ op: "place", sheet, do: "take", part, text: texts[part] });
    if (failed || error) throw new Error(failed || error);
  }

  /* Asked again once Python has the figures that it misses. */
  async function ask(request) {
    for (;;) {
      const reply = await Engine.ask({ op: "place", ...request });
      if (reply.failed) throw new Error(reply.failed);
      if (!reply.missing) return reply;
      for (const part of reply.missing) await handOver(part, request.sheet);
    }
  }

  /* The box for a town's name with the list of those it may mean: a combobox. */
  class Towns {
    constructor(chooser) {
      Object.assign(this, { chooser, box: chooser.part("town"), found: [] });
      this.list = document.getElementById(this.box.getAttribute("aria-controls"));
      this.box.addEventListener("input", () => this.typed());
      this.box.addEventListener("keydown", (event) => this.key(event));
      this.box.addEventListener("blur", () => this.show([]));
      this.list.addEventListener("pointerdown", (event) => event.preventDefault()); // keeps the focus
      this.list.addEventListener("click", ({ target }) => {
        const option = target.closest("li");
        if (option) this.choose([...this.list.children].indexOf(option));
      });
    }

    typed() {
      clearTimeout(this.pause);
      this.chooser.newest();
      const asked = this.box.value.trim();
      if (asked.length < SHORTEST) return this.show([]);
      this.pause = setTimeout(() => this.look(asked), QUIET);
    }

    look(asked) {
      return this.chooser.attempt({ do: "towns", asked }, ({ towns }) => {
        this.show(document.activeElement === this.box ? towns : []);
        const count = towns.length > 1 ? `${towns.length} towns: choose one.` : "1 town: press Enter.";
        this.chooser.say([towns.length ? count : NO_TOWN]);
      });
    }

    show(towns) {
      this.found = towns;
      this.list.replaceChildren(...towns.map(({ label }, at) => {
        const option = document.createElement("li");
        option.id = `${this.list.id}-${at}`;
        option.setAttribute("role", "option");
        option.textContent = label;
        return option;
      }));
      this.list.hidden = !towns.length;
      this.box.setAttribute("aria-expanded", String(Boolean(towns.length)));
      this.mark(0);
    }

    mark(at) {
      this.at = at;
      [...this.list.children].forEach((option, place) => {
        option.setAttribute("aria-selected", String(place === at));
        if (place === at) option.scrollIntoView({ block: "nearest" });
      });
      if (this.found.length) this.box.setAttribute("aria-activedescendant", this.list.children[at].id);
      else this.box.removeAttribute("aria-activedescendant");
    }

    key(event) {
      const last = this.found.length - 1;
      if (last < 0) return;
      const goes = { ArrowDown: this.at === last ? 0 : this.at + 1, ArrowUp: this.at ? this.at - 1 : last };
      if (event.key in goes) this.mark(goes[event.key]);
      else if (event.key === "Enter") this.choose(this.at);
      else if (event.key === "Escape") this.show([]);
      else return;
      event.preventDefault();
    }

    choose(at) {
      const town = this.found[at];
      this.box.value = town.label;
      this.show([]);
      this.chooser.at(town, town.label);
    }
  }

  class Chooser {
    constructor(calc, block) {
      Object.assign(this, { calc, block, turn: 0, filled: {} });
      this.said = this.part("said");
      this.map = this.part("map");
      this.world = this.part("world");
      this.towns = new Towns(this);
      this.part("device").addEventListener("click", () => this.device());
      this.part("typed").addEventListener("click", () => this.typed());
      this.world.addEventListener("toggle", () => this.world.open && this.draw());
      this.map.addEventListener("click", (event) => this.touched(event));
      this.listenToFiles(this.part("file"));
      calc.section.addEventListener("click", ({ target }) => {
        if (target.closest('[data-action="reset"]')) this.forget();
      });
      block.hidden = false;
    }

    part = (name) => this.block.querySelector(`[data-sl-places-${name}]`);
    field = (key) => this.calc.fields.find((one) => one.key === key);

    say(sentences, alarm = false) {
      this.said.textContent = sentences.join(" ");
      this.said.classList.toggle("sl-alarm", alarm);
    }

    forget() {
      this.newest();
      this.say([]);
      this.towns.box.value = "";
    }

    /* What was asked before is not shown any more. */
    newest() {
      this.turn += 1;
      return this.turn;
    }

    /* Asks, and shows the reply where nothing else was asked meanwhile. */
    async attempt(request, show) {
      const turn = this.newest();
      const { sheet, system } = this.calc;
      this.say(["Looking it up…"]);
      try {
        const reply = await ask({ sheet, system, ...request });
        if (turn !== this.turn) return;
        if (reply.error) this.refused(reply, request.beside);
        else show(reply);
      } catch (error) {
        if (turn === this.turn) this.say([error.message], true);
      }
    }

    /* beside: the position stands in the fields, so that is where its fault is said as well. */
    refused({ error, key }, beside) {
      this.say([error], true);
      const field = beside && this.field(key);
      if (field) wrong(field.error, error);
    }

    // A position ------------------------------------------------------------------------------

    /* What the reader typed; "" for what stands there from elsewhere, or was filled in here. */
    own(key) {
      const field = this.field(key);
      const typed = field?.standing === "given" && field.box.value !== this.filled[key];
      return typed ? field.box.value : "";
    }

    at({ lat, lon, name = this.own("place"), ...more }, told) {
      const height = this.field("altitude");
      const known = { altitude: this.own("altitude"), units: { altitude: height?.menu?.value } };
      return this.attempt({ do: "at", lat, lon, name, ...known, ...more }, (reply) => {
        this.put(reply);
        this.say([`Filled in below: ${told}.`, ...reply.said]);
      });
    }

    typed() {
      const [lat, lon, altitude] = ["lat", "lon", "altitude"].map((key) => this.field(key)?.box.value ?? "");
      const name = this.field("place")?.box.value ?? "";
      this.at({ lat, lon, altitude, name, beside: true }, "sun and air of this position");
    }

    device() {
      if (!navigator.geolocation) return this.say([NO_WAY], true);
      const turn = this.newest();
      this.say(["Waiting for this device’s position…"]);
      navigator.geolocation.getCurrentPosition(({ coords }) => {
        if (turn !== this.turn) return;
        const high = typeof coords.altitude === "number"
          ? { altitude: String(coords.altitude), units: { altitude: "m" } } : {};
        const { latitude, longitude } = coords;
        this.at({ lat: String(latitude), lon: String(longitude), ...high },
          "this device’s position, to about 1 km (0.6 miles); it goes into the link");
      }, ({ code }) => {
        if (turn === this.turn) this.say([NO_POSITION[code] || NO_POSITION[2]], true);
      }, PATIENCE);
    }

    /* As if the reader had typed it. */
    put({ texts: found, units }) {
      const { calc } = this;
      for (const [key, text] of Object.entries(found)) {
        const field = this.field(key);
        if (!field) continue;
        if (field.table) {
          field.put(text, units, calc.system);
        } else {
          field.box.value = text;
          if (field.menu && units[key]) field.menu.value = units[key];
        }
        this.filled[key] = text;
        calc.changed(field.wrap);
      }
      calc.patient(false);
      if (this.world.open) this.draw();
    }

    // The map ---------------------------------------------------------------------------------

    async draw() {
      const { sheet, system } = this.calc;
      const [lat, lon] = ["lat", "lon"].map((key) => this.field(key)?.box.value ?? "");
      try {
        const { svg, key } = await ask({ sheet, system, do: "map", lat, lon });
        this.map.innerHTML = svg + key;
      } catch (error) {
        this.say([error.message], true);
      }
    }

    touched({ clientX, clientY }) {
      const svg = this.map.querySelector("svg");
      if (!svg) return;
      const { x, y } = new DOMPoint(clientX, clientY).matrixTransform(svg.getScreenCTM().inverse());
      this.attempt({ do: "touched", x, y }, (found) => this.at(found, "the place you touched"));
    }

    // A file ----------------------------------------------------------------------------------

    listenToFiles(input) {
      input.addEventListener("click", () => (input.value = "")); // the same file may be opened again
      input.addEventListener("change", () => this.open(input.files[0]));
      for (const kind of ["dragover", "dragleave", "drop"]) {
        this.block.addEventListener(kind, (event) => {
          if (!event.dataTransfer?.types.includes("Files")) return;
          event.preventDefault();
          this.block.classList.toggle("is-over", kind === "dragover");
          if (kind === "drop") this.open(event.dataTransfer.files[0]);
        });
      }
    }

    async open(file) {
      if (!file) return;
      if (file.size > LARGEST) return this.say([`“${file.name}” is too large for a year of hours.`], true);
      const text = await file.text().catch(() => "");
      await this.attempt({ do: "hours", text, name: file.name }, (reply) => {
        this.put(reply);
        this.say([`Filled in below: “${file.name}”.`, ...reply.said]);
      });
    }
  }

  window.SpringlinePlaces = { take: (part, text) => (texts[part] = text) };
  for (const calc of window.SpringlineCalculators) {
    const block = calc.section.querySelector("[data-sl-places]");
    if (block) new Chooser(calc, block);
  }
})();
