// The same stage with another host: the page that holds everything, opened from a file, with
// nothing to ask anybody for.
//
// A host is a profile of the browser: its windows share one storage, and a story that opens the
// same collection again opens the same profile.
import { resolve } from "node:path";
import { pathToFileURL } from "node:url";

import { Stage } from "./stage.mjs";

export class PocketStage extends Stage {
  constructor({ page, ...stage }) {
    super(stage);
    this.base = `${/^https?:/.test(page) ? page : pathToFileURL(resolve(page)).href}#`;
    this.profiles = new Map();
  }

  async open(name) {
    const profile = (name && this.profiles.get(name)) ?? { context: null, begun: false };
    if (name) this.profiles.set(name, profile);
    const host = { address: this.base, profile, ended: false };
    host.end = () => { host.ended = true; };
    return host;
  }

  async window(host, settings) {
    const { profile } = host;
    const { locale, colorScheme, reducedMotion, forcedColors, ...others } = settings;
    if (!profile.context) {
      profile.context = await this.browser.newContext(others);
      // A story that closes what it takes for a window of its own closes no more than that.
      profile.context.close = async () => { await profile.context.pages().at(-1)?.close(); };
    }
    const page = await profile.context.newPage();
    await page.setViewportSize(settings.viewport);
    await page.emulateMedia({ colorScheme, reducedMotion, forcedColors });
    if (host.script) await page.addInitScript(...host.script);
    if (locale) await page.addInitScript(speak, locale);
    page.setDefaultTimeout(20000);
    page.on("request", (asked) => {
      const url = asked.url();
      if (!url.startsWith("blob:") && !url.startsWith("data:") && !url.startsWith(this.base.slice(0, -1))) {
        this.say(`asked for ${url}`);
      }
    });
    page.on("console", (line) => {
      if (line.type() === "error") this.say(`console at ${page.url()}: ${line.text()}`);
    });
    page.on("pageerror", (error) => this.say(`script: ${error.message}`));
    goes(page);
    if (!profile.begun) {
      await page.goto(`${this.base}/collections`);
      await Promise.all([page.waitForNavigation(), page.click("#begin-empty")]);
      profile.begun = true;
    }
    return page;
  }

  async kept(page, act) {
    const before = await shown(page);
    await act();
    await other(page, before);
  }
}

/** Has the browser read another language. */
function speak(locale) {
  Object.defineProperty(navigator, "languages", { get: () => [locale] });
}

/** The number of the screen, or of the answer to a script of it, that came last. */
const shown = (page) => page.evaluate(() => document.documentElement.dataset.shown ?? "").catch(() => "");
const other = (page, before) => page.waitForFunction(
  (before) => (document.documentElement.dataset.shown ?? before) !== before, before);

/** Goes to an address as a person does who types it: the screen is there when it returns. */
function goes(page) {
  const goto = page.goto.bind(page);
  page.goto = async (given) => {
    const address = given.endsWith("#") ? `${given}/finds` : given;
    const before = await shown(page);
    if (page.url() === address) {
      await page.reload();
      await other(page, "");
    } else {
      await goto(address);
      await other(page, before);
    }
  };
}
