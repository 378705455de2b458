/* What leaves the page: the phone's share sheet, the link, texts to paste, paper. All of it waits for
   the answer to the numbers as they are, or says that there is none.
   new SpringlineShare.Share(calculator). */
(function () {
  "use strict";

  const Engine = window.SpringlineEngine;
  const Drawing = window.SpringlineDrawing;
  const Scan = window.SpringlineScan;
  const HEARD = 6000; // ms that a sentence stands beside the buttons
  const NO_ANSWER = "There is no answer to share yet: correct the marked field.";

  class Share {
    constructor(calc) {
      this.calc = calc;
      this.said = calc.section.querySelector(".sl-said");
      const button = calc.section.querySelector('[data-action="share"]');
      button.hidden = !navigator.share;
      window.addEventListener("beforeprint", () => this.paper());
      window.addEventListener("afterprint", () => this.screen());
    }

    /* What a button of this name does. */
    act(name) {
      const acts = { share: () => this.send(), link: () => this.copyLink(),
        letter: () => this.copyLetter(), text: () => this.copyText(),
        print: () => this.print(), blank: () => this.blank() };
      return acts[name]?.();
    }

    /* Once the answer is there; null, and said, where none can be. */
    async settled(go) {
      const { calc } = this;
      if (!calc.fresh) this.tell("Wait for the calculator.");
      try {
        await calc.asking.current();
      } catch (error) {
        this.tell(error.message);
        return null;
      }
      return go();
    }

    send() {
      const { calc } = this;
      return this.settled(async () => {
        const url = calc.opening.address();
        const text = calc.answered ? calc.figures.text(".sl-verdict") : "";
        try {
          await navigator.share({ title: document.title, text, url });
          this.tell("");
        } catch (error) {
          if (error.name !== "AbortError") await this.copy(() => url, "Link copied."); // else given up
        }
      });
    }

    copyLink() {
      return this.copy(() => this.settled(() => this.calc.opening.address()), "Link copied.");
    }

    copyText() {
      const { calc } = this;
      return this.copy(() => this.answered(() => calc.text + "\n" + calc.opening.address() + "\n"),
        "Text copied.");
    }

    /* Python writes it: what to ask back takes some answers more. */
    copyLetter() {
      const { calc } = this;
      return this.copy(() => this.answered(async () => {
        this.tell("Writing the letter.");
        const request = { ...calc.state(), op: "letter", address: calc.opening.address() };
        return (await Engine.ask(request)).text;
      }), "Letter copied.");
    }

    answered(go) {
      return this.settled(() => {
        if (this.calc.answered) return go();
        this.tell(NO_ANSWER);
        return null;
      });
    }

    /* What ``make`` gives, once it is there: a browser lets the clipboard be written only while a
       press is fresh, so it is promised the text at once. */
    async copy(make, done) {
      const made = Promise.resolve().then(make);
      const blob = made.then((text) => text === null
        ? Promise.reject(new Error("nothing to copy")) : new Blob([text], { type: "text/plain" }));
      blob.catch(() => {});
      try {
        if (window.ClipboardItem) {
          await navigator.clipboard.write([new window.ClipboardItem({ "text/plain": blob })]);
        } else {
          await navigator.clipboard.writeText(await (await blob).text());
        }
        this.tell(done);
      } catch {
        const text = await made.catch((error) => this.tell(error.message));
        if (text) this.offer(text);
      }
    }

    /* Where the clipboard is refused, the text stands selected to be copied by hand. */
    offer(text) {
      const area = document.createElement("textarea");
      area.className = "sl-offer";
      area.readOnly = true;
      area.rows = 4;
      area.value = text;
      area.setAttribute("aria-label", "Copy this text");
      this.said.replaceChildren("Copy this: ", area);
      area.focus();
      area.select();
    }

    tell(sentence) {
      this.said.textContent = sentence;
      clearTimeout(this.telling);
      this.telling = setTimeout(() => (this.said.textContent = ""), HEARD);
    }

    // Paper -----------------------------------------------------------------------------------

    /* The sheet alone: answer and numbers, without the guide around it. */
    async print() {
      const { calc } = this;
      await calc.asking.current().catch(() => {});
      const working = calc.section.querySelector(".sl-working")?.open;
      await Promise.all([working && Drawing.showAll(calc.section), Scan.load()]);
      this.alone("sl-sheet-only");
    }

    /* A form with empty lines, to be filled in at the place; needs no answer. */
    async blank() {
      const { section } = this.calc;
      const sheet = document.createElement("div");
      sheet.className = "sl-blank";
      sheet.append(section.querySelector("[data-sl-blank]").content.cloneNode(true));
      await Scan.load();
      const address = this.calc.opening.address(false);
      sheet.querySelector(".sl-address").textContent = address;
      Scan.show(sheet.querySelector(".sl-scan"), address);
      section.after(sheet);
      this.alone("sl-blank-only");
      sheet.remove();
    }

    alone(what) {
      document.body.classList.add(what);
      window.print();
      document.body.classList.remove(what);
    }

    /* However printing was begun: no figures beside numbers they do not belong to, and only what
       was open; the theme opens every fold once we are through here. */
    paper() {
      const { calc } = this;
      const { section } = calc;
      const own = calc.fresh && calc.answered;
      if (!own && !calc.example) calc.figures.settle();
      document.body.classList.toggle("sl-own-only", !calc.example);
      for (const fold of section.querySelectorAll("details")) {
        fold.toggleAttribute("data-sl-closed", !fold.open);
        if (fold.matches(".sl-others")) fold.open = true; // paper has all that was assumed
      }
      const address = own || (calc.example && calc.figures.printed) ? calc.opening.address() : "";
      section.querySelector(".sl-address").textContent = address || calc.opening.address(calc.fresh);
      Scan.show(section.querySelector(".sl-scan"), address);
    }

    screen() {
      document.body.classList.remove("sl-own-only");
      for (const fold of this.calc.section.querySelectorAll("[data-sl-closed]")) {
        fold.removeAttribute("data-sl-closed");
        fold.open = false;
      }
    }
  }

  window.SpringlineShare = { Share };
})();
