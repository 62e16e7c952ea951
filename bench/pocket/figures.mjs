// How fast the pocket page is on a slow machine, and what it holds.
//
//   node bench/pocket/figures.mjs PAGE.html [--modules DIR] [--chromium PATH] [--runs N] [--slow 4]
//                                 [--scan SCAN.jpg] [--throttle 4]
//
// With --throttle the browser itself slows down the page's own thread so many times, as its tools for
// developers do; what works beside it is not slowed.
// With --scan it also measures the leaves of that scan (crates/desk/examples/drawn_scan.rs draws one).
// A slow machine: the whole browser in a control group of the kernel that has a quarter of the time of
// all cores (as root, control groups of version 1); --slow 1 leaves it as it is. Each figure is the median
// of N runs, each in a new profile on the disk; times are those of the page's own clock. Machines differ, and
// one machine differs from hour to hour, so a loop that has nothing to do with us is timed in each run, too.
import { chmodSync, mkdirSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { cpus, tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";

import { CHROMIUM_ARGS, called } from "../../tests/outside/options.mjs";

const { options, given: [file = "target/pocket/spinney.html"], require } = called({ runs: "5", slow: "4" });
const page = pathToFileURL(resolve(file)).href;
const { chromium } = require("playwright-core");

const folder = mkdtempSync(join(tmpdir(), "spinney-figures-"));
const group = "/sys/fs/cgroup/cpu/spinney-figures";
let browser = options.chromium;
if (options.slow !== "1") {
  mkdirSync(group, { recursive: true });
  writeFileSync(join(group, "cpu.cfs_period_us"), "10000");
  writeFileSync(join(group, "cpu.cfs_quota_us"), String(Math.round(10000 * cpus().length / Number(options.slow))));
  browser = join(folder, "slow-chromium");
  writeFileSync(browser, `#!/bin/sh\necho $$ > ${group}/cgroup.procs\nexec ${options.chromium} "$@"\n`);
  chmodSync(browser, 0o755);
}

const figures = new Map();
const note = (name, value) => figures.set(name, [...(figures.get(name) ?? []), value]);

async function open(number) {
  const profile = join(folder, `profile-${number}`);
  return chromium.launchPersistentContext(profile, {
    executablePath: browser, headless: true, args: CHROMIUM_ARGS, viewport: { width: 1366, height: 768 }, acceptDownloads: true,
    timeout: 120000,
  });
}

/** How long a screen takes from a press on a link or button to when it is there, in ms. */
const press = (tab, selector) => tab.evaluate((selector) => new Promise((done) => {
  const since = performance.now();
  new MutationObserver((_, watch) => { watch.disconnect(); done(performance.now() - since); })
    .observe(document.documentElement, { attributes: true, attributeFilter: ["data-shown"] });
  document.querySelector(selector).click();
}), selector);

/** Begins to watch for tasks that keep the page from hearing a hand. Whatever drives the page puts a script of its
 * own into it the first time that it looks for something there, which takes longer than a screen: that first. */
const watchTasks = async (tab) => {
  await tab.locator("main").isVisible();
  await tab.evaluate(() => new Promise((done) => { requestIdleCallback(done); }));
  await tab.evaluate(() => {
    new PerformanceObserver((all) => {
      for (const { duration } of all.getEntries()) globalThis.longest = Math.max(globalThis.longest ?? 0, duration);
    }).observe({ type: "longtask" });
  });
};

/** The longest of them since, in ms; the browser reports none below 50. */
const longestTask = (tab) => tab.evaluate(() => globalThis.longest ?? 0);

/** How long fifty million steps of a loop take, in ms. */
const yardstick = (tab) => tab.evaluate(() => {
  const since = performance.now();
  let mixed = 1;
  for (let step = 0; step < 50_000_000; step += 1) mixed = (Math.imul(mixed, 1664525) + step) | 0;
  return mixed === 0.5 ? 0 : performance.now() - since;
});

async function go(tab, path) {
  await tab.goto("about:blank");
  await tab.goto(`${page}#${path}`, { timeout: 120000 });
  await tab.waitForFunction(() => document.documentElement.dataset.shown !== undefined, null, { timeout: 120000 });
}

/** How long a sheet of the print screen takes to come as a PDF, in ms, and its size. */
async function pdf(tab, sheet) {
  await tab.evaluate((sheet) => {
    const link = document.querySelector("#download");
    link.setAttribute("href", link.getAttribute("href").replace(/\/print\/[a-z-]+\.pdf/, `/print/${sheet}.pdf`));
    link.addEventListener("click", () => { globalThis.since = performance.now(); }, { capture: true, once: true });
    const made = URL.createObjectURL;
    URL.createObjectURL = (blob) => {
      URL.createObjectURL = made;
      globalThis.took = performance.now() - globalThis.since;
      return made.call(URL, blob);
    };
  }, sheet);
  // By a hand: a browser asks before a page saves many files of its own accord.
  const [download] = await Promise.all([tab.waitForEvent("download"), tab.click("#download")]);
  const took = await tab.evaluate(() => globalThis.took);
  const name = download.suggestedFilename();
  if (!name.includes(sheet)) throw new Error(`this is not the sheet ${sheet}: ${name}`);
  return { took, bytes: statSync(await download.path()).size };
}

// A table of 20 kinds and 20 columns, drawn by a fixed rule.
const table = ["kind", ...Array.from({ length: 20 }, (_, column) => `column ${column}`)].join("\t") + "\n" +
  Array.from({ length: 20 }, (_, kind) => [`kind ${kind}`, ...Array.from({ length: 20 }, (_, column) =>
    ["one", "two", "three"][((kind + 3) * (column + 5) * 7919 + kind * column * 31) % 97 % 3])].join("\t")).join("\n");

for (let run = 0; run < Number(options.runs); run += 1) {
  const context = await open(run);
  const tab = context.pages()[0];
  tab.setDefaultTimeout(120000);
  if (options.throttle) {
    const tools = await context.newCDPSession(tab);
    await tools.send("Emulation.setCPUThrottlingRate", { rate: Number(options.throttle) });
  }
  note("yardstick: fifty million steps of a loop", await yardstick(tab));
  await go(tab, "/collections");
  const spent = await tab.evaluate(() => [
    ...performance.getEntriesByType("measure").map(({ name, startTime, duration }) => [name, startTime, duration]),
    ["document read", 0, performance.getEntriesByType("navigation")[0].domInteractive],
    ["first screen", 0, Number(document.documentElement.dataset.first)],
  ]);
  for (const [name, start, duration] of spent) {
    note(name, duration);
    if (start > 0) note(`  ${name}: begun after`, start);
  }
  // The second time the browser has its caches.
  await go(tab, "/collections");
  note("first screen, opened again", await tab.evaluate(() => Number(document.documentElement.dataset.first)));
  await press(tab, "#begin-walk");
  for (let again = 0; again < 5; again += 1) {
    await press(tab, "nav a[href^='#/words']");
    note("a 12-kind key with findings", await press(tab, "nav a[href^='#/key']"));
  }
  await press(tab, "nav a[href^='#/print']");
  const sheets = await tab.$$eval("ul.sheets a", (all) => all.map((one) => one.id.replace("sheet-", "")));
  let [whole, bytes] = [0, 0];
  const print = await tab.evaluate(() => location.hash.slice(1));
  for (const [at, sheet] of sheets.entries()) {
    // A browser lets a page save ten files.
    if (at % 8 === 7) await go(tab, print);
    const made = await pdf(tab, sheet);
    whole += made.took;
    bytes += made.bytes;
    if (sheet === "today") note("everything for today as PDF, 12 kinds", made.took);
  }
  note(`all ${sheets.length} sheets as PDF, ${bytes} bytes`, whole);
  await go(tab, "/collections");
  await press(tab, "#begin-empty");
  await tab.fill("#table", table);
  await press(tab, "#take-table-button");
  await go(tab, "/heaps");
  await watchTasks(tab);
  await tab.evaluate(() => document.querySelectorAll("details").forEach((one) => { one.open = true; }));
  await tab.fill("#key-name", "Ours");
  await press(tab, "form:has(#key-name) button");
  for (let again = 0; again < 5; again += 1) {
    await press(tab, "nav a[href^='#/words']");
    note("/heaps of 20 x 20", await press(tab, "nav a[href^='#/heaps']"));
  }
  note("longest task on the page, after it had opened", await longestTask(tab));
  if (options.scan) {
    await go(tab, "/measure");
    await watchTasks(tab);
    await tab.setInputFiles("#scan", options.scan);
    note("from a scan to its cards", await press(tab, "#measure-do"));
    note("leaves found", await tab.locator(".leaf-card").count());
    note("longest task on the page meanwhile", await longestTask(tab));
  }
  await context.close();
}
rmSync(folder, { recursive: true, force: true });

const median = (all) => [...all].sort((one, two) => one - two)[Math.floor(all.length / 2)];
const version = readFileSync(resolve(file)).length;
console.log(`${version} bytes, ${options.runs} runs, ${options.slow === "1" ? "as the machine is" : `${cpus().length} cores, 1/${options.slow} of their time`}`);
for (const [name, all] of figures) {
  console.log(`${median(all).toFixed(0).padStart(7)} ms  ${name} (worst ${Math.max(...all).toFixed(0)})`);
}
