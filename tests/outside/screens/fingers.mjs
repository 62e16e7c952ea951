// Somebody who has a keyboard and nothing else: goes by Tab, and never by an address.

export class Fingers {
  constructor(page) {
    this.page = page;
  }

  /** What the focus is on: its visible words, and its kind of thing. */
  here() {
    return this.page.evaluate(() => {
      const at = document.activeElement;
      const label = at.labels?.[0]?.textContent ?? at.getAttribute("aria-label") ?? at.textContent;
      return {
        what: at.classList.contains("card") ? "card" : at.localName,
        words: (at.querySelector(".name") ?? { textContent: label }).textContent.replace(/\s+/g, " ").trim(),
        disabled: at.disabled === true,
      };
    });
  }

  /** Tab after Tab until the focus is on what is wanted. */
  async to(what, words) {
    const fits = typeof words === "function" ? words : (found) => found === words;
    for (let steps = 0; steps < 300; steps += 1) {
      const here = await this.here();
      if (what.split(" ").includes(here.what) && fits(here.words)) return here.words;
      await this.page.keyboard.press("Tab");
    }
    throw new Error(`Tab never comes to ${what} ${words}`);
  }

  /** Presses a key on what has the focus, and waits for the page that follows. */
  async press(key = "Enter") {
    await Promise.all([this.page.waitForNavigation(), this.page.keyboard.press(key)]);
  }

  async follow(words) {
    await this.to("a", words);
    await this.press();
  }

  async button(words) {
    await this.to("button", words);
    await this.press();
  }

  async type(label, text) {
    await this.to("input textarea", label);
    await this.page.keyboard.type(text);
  }
}
