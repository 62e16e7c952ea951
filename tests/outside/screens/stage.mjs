// Where the stories play: the program on a file of its own, windows of a real browser on it,
// and everybody who looks on. What is wrong is written down, and a story goes on.
import { spawn, spawnSync } from "node:child_process";
import { join } from "node:path";

const TAGS = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
export const LAPTOP = { viewport: { width: 1366, height: 768 } };
export const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };
export const NARROW = { viewport: { width: 320, height: 640 } };

export class Stage {
  constructor({ program, out, browser, axe }) {
    Object.assign(this, { program, out, browser, axe, story: "" });
    this.wrong = [];
    this.counted = { stops: 0, steps: 0 };
  }

  say(what) {
    this.wrong.push(`${this.story}: ${what}`);
  }

  expect(holds, what) {
    this.counted.steps += 1;
    if (!holds) this.say(what);
  }

  file(name) {
    return join(this.out, name);
  }

  /** Starts the program on a file, or on none; gives its address and a way to end it. */
  open(name) {
    const file = name ? [this.file(name)] : [];
    const child = spawn(this.program, ["open", ...file, "--no-browser", "--port", "0"]);
    return new Promise((done, failed) => {
      let said = "";
      const hear = (bytes) => {
        said += bytes;
        const found = said.match(/http:\/\/127\.0\.0\.1:\d+/);
        if (!found) return;
        const host = { address: found[0], ended: false };
        host.end = () => { host.ended = true; child.kill("SIGINT"); };
        done(host);
      };
      child.stdout.on("data", hear);
      child.stderr.on("data", hear);
      child.on("exit", () => failed(new Error(`the program ended: ${said}`)));
    });
  }

  /** A window on the program, with everything watched. */
  async window(host, settings, requests) {
    const context = await this.browser.newContext(settings);
    const page = await context.newPage();
    page.setDefaultTimeout(15000);
    page.on("request", (asked) => {
      const url = asked.url();
      if (!url.startsWith(`${host.address}/`) && !url.startsWith("data:")) this.say(`asked for ${url}`);
      const path = url.slice(host.address.length);
      if (requests && !/^\/(assets|picture)\//.test(path) && !url.startsWith("data:")) {
        requests.push(`${asked.method()} ${path}${asked.postData() ? ` ${form(asked)}` : ""}`);
      }
    });
    page.on("console", (line) => {
      // The one page that is not there, and what is refused, are asked for on purpose.
      const meant = (page.url().endsWith("/nothing-here") && line.text().includes("404")) ||
        (/\/(do|measure)\//.test(page.url()) && line.text().includes("422"));
      // A window that still looks on asks once more: of a program that ends, or has ended.
      const gone = host.ended && /ERR_CONNECTION_|ERR_EMPTY_RESPONSE|status of 503/.test(line.text());
      if (line.type() === "error" && !meant && !gone) this.say(`console at ${page.url()}: ${line.text()}`);
    });
    page.on("pageerror", (error) => this.say(`script: ${error.message}`));
    return page;
  }

  /** Does something, and waits until a script has heard that it is kept. */
  async kept(page, act) {
    const heard = (answer) => answer.url().endsWith("/do/cells") || answer.url().includes("/table");
    await Promise.all([page.waitForResponse(heard), act()]);
  }

  /** A stop: the screen as axe-core, a ruler and a person see it. */
  async look(page, name) {
    this.counted.stops += 1;
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    if (wide > 0) this.say(`${name} is ${wide} px wider than the screen`);
    await page.evaluate(this.axe);
    const found = await page.evaluate(
      (tags) => globalThis.axe.run(document, { runOnly: tags }).then((all) => all.violations), TAGS);
    for (const rule of found) {
      this.say(`${name}: axe ${rule.id}: ${rule.nodes.slice(0, 3).map((n) => n.html.slice(0, 120)).join(" | ")}`);
    }
    const small = await page.$$eval(
      "button, a.button, a.main, nav a, summary, input:not([type=hidden]), select",
      (all) => all.filter((one) => {
        const box = one.getBoundingClientRect();
        return box.width > 1 && box.height > 1 && box.height < 23.5;
      }).map((one) => one.outerHTML.slice(0, 100)));
    if (small.length) this.say(`${name}: too small to touch: ${small.slice(0, 3).join(" | ")}`);
    await page.screenshot({ path: this.file(`${this.story}-${name}.png`), fullPage: true });
  }

  /** The words of a PDF that a person was given, in the order of reading. */
  async words(download, name) {
    const path = this.file(name);
    await download.saveAs(path);
    const read = spawnSync("pdftotext", [path, "-"], { encoding: "utf8" });
    if (read.status !== 0) throw new Error(`pdftotext cannot read ${name}: ${read.stderr}`);
    return read.stdout.replace(/\s+/g, " ");
  }
}

/** The fields of a form as an address has them. */
function form(asked) {
  const type = asked.headers()["content-type"] ?? "";
  if (!type.startsWith("multipart/")) return asked.postData();
  const edge = type.split("boundary=")[1];
  const fields = new URLSearchParams();
  for (const part of asked.postData().split(`--${edge}`)) {
    const name = part.match(/name="([^"]*)"(?!; filename)/);
    const from = part.indexOf("\r\n\r\n");
    if (name && from >= 0 && !part.includes("filename=")) {
      fields.append(name[1], part.slice(from + 4, -2));
    }
  }
  return fields.toString();
}
