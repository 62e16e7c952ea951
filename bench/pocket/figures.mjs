// How fast the pocket page is on a slow machine, and what it holds.
//
//   node bench/pocket/figures.mjs PAGE.html [--modules DIR] [--chromium PATH] [--runs N] [--slow 4]
//
// A slow machine: the whole browser in a control group of the kernel that has a quarter of the time of
// all cores (as root, control groups of version 1); --slow 1 leaves it as it is. Each figure is the median
// of N runs, each in a new profile on the disk; times are those of the page's own clock.
import { chmodSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
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

async function go(tab, path) {
  await tab.goto("about:blank");
  await tab.goto(`${page}#${path}`, { timeout: 120000 });
  await tab.waitForFunction(() => document.documentElement.dataset.shown !== undefined, null, { timeout: 120000 });
}

// A table of 20 kinds and 20 columns, drawn by a fixed rule.
const table = ["kind", ...Array.from({ length: 20 }, (_, column) => `column ${column}`)].join("\t") + "\n" +
  Array.from({ length: 20 }, (_, kind) => [`kind ${kind}`, ...Array.from({ length: 20 }, (_, column) =>
    ["one", "two", "three"][((kind + 3) * (column + 5) * 7919 + kind * column * 31) % 97 % 3])].join("\t")).join("\n");

for (let run = 0; run < Number(options.runs); run += 1) {
  const context = await open(run);
  const tab = context.pages()[0];
  tab.setDefaultTimeout(120000);
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
  const [pdf] = await Promise.all([
    tab.waitForEvent("download"),
    tab.evaluate(() => {
      globalThis.since = performance.now();
      const made = URL.createObjectURL;
      URL.createObjectURL = (blob) => { globalThis.took ??= performance.now() - globalThis.since; return made.call(URL, blob); };
      const link = document.querySelector("#download");
      link.setAttribute("href", link.getAttribute("href").replace(/\/print\/[a-z-]+\.pdf/, "/print/today.pdf"));
      link.click();
    }),
  ]);
  if (!pdf.suggestedFilename().includes("today")) throw new Error(`this is not everything for today: ${pdf.suggestedFilename()}`);
  note("everything for today as PDF, 12 kinds", await tab.evaluate(() => globalThis.took));
  await go(tab, "/collections");
  await press(tab, "#begin-empty");
  await tab.fill("#table", table);
  await press(tab, "#take-table-button");
  await go(tab, "/heaps");
  await tab.evaluate(() => {
    new PerformanceObserver((all) => {
      for (const { duration } of all.getEntries()) globalThis.longest = Math.max(globalThis.longest ?? 0, duration);
    }).observe({ type: "longtask" });
  });
  await tab.evaluate(() => document.querySelectorAll("details").forEach((one) => { one.open = true; }));
  await tab.fill("#key-name", "Ours");
  await press(tab, "form:has(#key-name) button");
  for (let again = 0; again < 5; again += 1) {
    await press(tab, "nav a[href^='#/words']");
    note("/heaps of 20 x 20", await press(tab, "nav a[href^='#/heaps']"));
  }
  note("longest task on the page, after it had opened", await tab.evaluate(() => globalThis.longest ?? 0));
  await context.close();
}
rmSync(folder, { recursive: true, force: true });

const median = (all) => [...all].sort((one, two) => one - two)[Math.floor(all.length / 2)];
const version = readFileSync(resolve(file)).length;
console.log(`${version} bytes, ${options.runs} runs, ${options.slow === "1" ? "as the machine is" : `${cpus().length} cores, 1/${options.slow} of their time`}`);
for (const [name, all] of figures) {
  console.log(`${median(all).toFixed(0).padStart(7)} ms  ${name} (worst ${Math.max(...all).toFixed(0)})`);
}
