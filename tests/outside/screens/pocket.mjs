// The same stage with another host: the page that holds everything, opened from a file, with
// nothing to ask anybody for.
//
// A host is a profile of the browser: its windows share one storage, and a story that opens the
// same collection again opens the same profile.
import { pathToFileURL } from "node:url";

import { Stage } from "./stage.mjs";

export class PocketStage extends Stage {
  constructor({ page, ...stage }) {
    super(stage);
    this.base = `${pathToFileURL(page).href}#`;
    this.profiles = new Map();
  }

  async open(name) {
    const profile = (name && this.profiles.get(name)) ?? { context: null, begun: false };
    if (name) this.profiles.set(name, profile);
    const host = { address: this.base, profile, ended: false };
    host.end = () => { host.ended = true; };
    return host;
  }

  async window(host, settings, requests) {
    const { profile } = host;
    profile.context ??= await this.browser.newContext({ ...settings, acceptDownloads: true });
    const page = await profile.context.newPage();
    await page.setViewportSize(settings.viewport);
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
    if (requests) await this.listen(page, requests);
    if (!profile.begun) {
      await page.goto(`${this.base}/collections`);
      await Promise.all([page.waitForNavigation(), page.click("#begin-empty")]);
      profile.begun = true;
    }
    return page;
  }

  async listen() {
    // The requests of a story are written down where they can be seen, on the way to the program.
  }
}

/** Goes to an address as a person does who types it: the screen is there when it returns. */
function goes(page) {
  const goto = page.goto.bind(page);
  page.goto = async (address) => {
    const shown = () => page.evaluate(() => document.documentElement.dataset.shown ?? "").catch(() => "");
    const before = await shown();
    if (page.url() === address) await page.reload();
    else await goto(address);
    await page.waitForFunction((before) => (document.documentElement.dataset.shown ?? before) !== before, before);
  };
}
