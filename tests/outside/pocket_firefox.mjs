// A short story on the pocket page in stock Firefox, driven by WebDriver BiDi: opened from a file,
// a collection begun and kept, a key, a PDF, back and forward, the page closed and opened again.
//
//   node tests/outside/pocket_firefox.mjs PAGE.html OUT [--modules DIR] [--firefox PATH]
//
// Nothing may be asked of a network and nothing may fail in the page. Exits 1 with what is wrong.
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync } from "node:fs";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";

import { called } from "./options.mjs";

const { options, given, require } = called({ firefox: "/usr/bin/firefox-esr" });
const [file, out] = given.map((path) => resolve(path));
const page = pathToFileURL(file).href;
const puppeteer = require("puppeteer-core").default ?? require("puppeteer-core");

const wrong = [];
let steps = 0;
const expect = (holds, what) => { steps += 1; if (!holds) wrong.push(what); };
rmSync(out, { recursive: true, force: true });
const [profile, downloads] = [join(out, "profile"), join(out, "downloads")];
mkdirSync(profile, { recursive: true });
mkdirSync(downloads);

async function begin() {
  const browser = await puppeteer.launch({
    browser: "firefox", executablePath: options.firefox, headless: true, userDataDir: profile,
    protocolTimeout: 60000,
    extraPrefsFirefox: {
      "browser.download.folderList": 2, "browser.download.dir": downloads,
      "browser.download.useDownloadDir": true, "browser.download.always_ask_before_handling_new_types": false,
      "pdfjs.disabled": true, "browser.helperApps.neverAsk.saveToDisk": "application/pdf,application/zip",
    },
  });
  const tab = await browser.newPage();
  tab.setDefaultTimeout(30000);
  tab.on("request", (asked) => {
    const url = asked.url();
    if (!/^(blob|data|about):/.test(url) && !url.startsWith(page)) wrong.push(`asked for ${url}`);
  });
  tab.on("pageerror", (error) => wrong.push(`script: ${error.message}`));
  tab.on("console", (line) => { if (line.type() === "error") wrong.push(`console: ${line.text()}`); });
  return { browser, tab };
}

/** Does something, and waits until another screen is there. */
async function step(tab, act) {
  const before = await tab.evaluate(() => document.documentElement.dataset.shown);
  await act();
  await tab.waitForFunction((before) => document.documentElement.dataset.shown !== before, {}, before);
}

async function go(tab, path) {
  await tab.goto("about:blank");
  await tab.goto(`${page}#${path}`);
  await tab.waitForFunction(() => document.documentElement.dataset.shown !== undefined);
}

const text = (tab) => tab.$eval("body", (body) => body.textContent);
const press = (tab, selector) => step(tab, () => tab.$eval(selector, (one) => one.click()));

let { browser, tab } = await begin();
await go(tab, "/collections");
expect((await text(tab)).includes("kept in this browser"), "the list says where collections are kept");
await press(tab, "#begin-walk");
expect((await text(tab)).includes("12 kinds"), "the invented walk has its key");
await press(tab, "nav a[href^='#/finds']");
await tab.type("#names", "holm oak");
await press(tab, "#add-finds");
expect((await text(tab)).includes("holm oak"), "a find is added");
await press(tab, "nav a[href^='#/heaps']");
await step(tab, () => tab.goBack());
expect(tab.url().endsWith("#/finds"), `back leads to ${tab.url()}`);
await press(tab, "#undo");
expect((await text(tab)).includes("taken back") || !(await tab.$eval("main", (main) => main.textContent)).includes("holm oak"), "and taken back");
await press(tab, "#redo");
await go(tab, "/print?key=1");
await tab.screenshot({ path: join(out, "print.png") });
await tab.$eval("#download", (link) => link.click());
const there = () => readdirSync(downloads).filter((name) => name.endsWith(".pdf"));
for (let tries = 0; tries < 100 && there().length === 0; tries += 1) await new Promise((done) => setTimeout(done, 100));
expect(there().length === 1, "the PDF is a file");
if (there().length) {
  const pdf = join(downloads, there()[0]);
  // An empty file holds its name before the first bytes come.
  const coming = () => existsSync(`${pdf}.part`) || statSync(pdf).size === 0;
  for (let tries = 0; tries < 100 && coming(); tries += 1) await new Promise((done) => setTimeout(done, 100));
  expect(readFileSync(pdf).subarray(0, 5).toString() === "%PDF-", "and it is a PDF");
}
await browser.close();

// Beside other work Firefox at times never answers the first navigation after it begins with a
// profile that it had before. Then it is ended and begun once more: what is expected stays the same.
for (let again = 1; ; again += 1) {
  ({ browser, tab } = await begin());
  try {
    await go(tab, "/finds");
    break;
  } catch (error) {
    browser.process()?.kill("SIGKILL");
    console.error(`Firefox did not open the page, attempt ${again}: ${error.message}`);
    if (again === 3) throw error;
  }
}
expect((await text(tab)).includes("holm oak"), "closed and opened again, everything is there");
await tab.screenshot({ path: join(out, "again.png") });
const version = await browser.version();
await browser.close();
rmSync(profile, { recursive: true, force: true });
console.log(`${version}: ${steps} steps`);
for (const line of wrong) console.error(line);
process.exit(wrong.length ? 1 : 0);
