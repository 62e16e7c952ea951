// What the pocket page's tab holds with the invented walk and so many photographs, each seen once.
//
//   node bench/pocket/memory.mjs PAGE.html [--modules DIR] [--chromium PATH] [--pictures 50]
//
// Photographs of 12 megapixels are drawn (noise and shapes), added to a find each, and every find is
// looked at; then the memory of the tab's own process is read from the kernel (smaps_rollup): its private
// clean and dirty pages, and in brackets also its share of what several processes have (Pss: the browser's own
// code, pictures that are on the screen). While photographs come it is read four times a second.
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";

import { CHROMIUM_ARGS, called } from "../../tests/outside/options.mjs";

const { options, given: [file = "target/pocket/spinney.html"], require } = called({ pictures: "50" });
const page = pathToFileURL(resolve(file)).href;
const { chromium } = require("playwright-core");
const folder = mkdtempSync(join(tmpdir(), "spinney-memory-"));
const context = await chromium.launchPersistentContext(folder, {
  executablePath: options.chromium, headless: true,
  args: CHROMIUM_ARGS,
});
const drawing = await context.newPage();

/** The memory of the tab, in MiB, private and with its share of the rest: of all renderers of this browser
 * the largest, and the only one once the photographs are drawn. */
function held() {
  const all = execFileSync("pgrep", ["-f", "type=renderer"], { encoding: "utf8" }).trim().split("\n");
  return all.flatMap((id) => {
    try {
      if (!readFileSync(`/proc/${id}/cmdline`, "utf8").includes("type=renderer")) return [];
      const rollup = readFileSync(`/proc/${id}/smaps_rollup`, "utf8");
      const sum = (line) => [...rollup.matchAll(line)].reduce((sum, [, kib]) => sum + Number(kib) / 1024, 0);
      return [[sum(/^Private_(?:Clean|Dirty):\s+(\d+)/gm), sum(/^Pss:\s+(\d+)/gm)]];
    } catch { return []; }
  }).reduce((most, one) => one[0] > most[0] ? one : most, [0, 0]);
}
const told = ([own, whole], what) => console.log(`${own.toFixed(0)} MiB (${whole.toFixed(0)})  ${what}`);

const photograph = (seed) => drawing.evaluate(async (seed) => {
  const canvas = new OffscreenCanvas(4000, 3000);
  const pen = canvas.getContext("2d");
  for (let shape = 0; shape < 400; shape += 1) {
    pen.fillStyle = `hsl(${(seed * 37 + shape * 53) % 360} 60% ${20 + shape % 60}%)`;
    pen.beginPath();
    pen.ellipse((shape * 977 + seed * 131) % 4000, (shape * 613) % 3000, 40 + shape % 300, 20 + shape % 170, shape, 0, 7);
    pen.fill();
  }
  const blob = await canvas.convertToBlob({ type: "image/jpeg", quality: 0.9 });
  const bytes = new Uint8Array(await blob.arrayBuffer());
  let text = "";
  for (let at = 0; at < bytes.length; at += 32768) text += String.fromCharCode(...bytes.subarray(at, at + 32768));
  return btoa(text);
}, seed);

// Whoever draws them has gone before anything is measured. They lie on the disk, as a person's do: what is
// handed over otherwise goes through the tab's own memory as text.
const photographs = [];
for (let seed = 0; seed < Number(options.pictures); seed += 1) {
  photographs.push(join(folder, `${seed}.jpg`));
  writeFileSync(photographs[seed], Buffer.from(await photograph(seed), "base64"));
}
const tab = await context.newPage();
tab.setDefaultTimeout(60000);
await drawing.close();

async function go(path) {
  await tab.goto("about:blank");
  await tab.goto(`${page}#${path}`);
  await tab.waitForFunction(() => document.documentElement.dataset.shown !== undefined);
}
const press = (selector) => tab.evaluate((selector) => new Promise((done) => {
  new MutationObserver((_, watch) => { watch.disconnect(); done(); })
    .observe(document.documentElement, { attributes: true, attributeFilter: ["data-shown"] });
  document.querySelector(selector).click();
}), selector);

await go("/collections");
told(held(), "the page opened");
await press("#begin-walk");
told(held(), "with the invented walk");
let most = [0, 0];
const watch = setInterval(() => { most = most.map((one, at) => Math.max(one, held()[at])); }, 250);
for (let seed = 0; seed < Number(options.pictures); seed += 1) {
  await press("nav a[href^='#/finds']");
  await tab.locator("#pictures").setInputFiles(photographs[seed]);
  await press("#add-finds");
}
clearInterval(watch);
told(held(), `after ${options.pictures} photographs`);
told(most, "at most, while they came");
await press("nav a[href^='#/finds']");
await tab.waitForTimeout(2000);
const shown = await tab.$$eval("main img", (all) => all.filter((one) => one.complete && one.naturalWidth > 0).length);
if (shown < Number(options.pictures)) throw new Error(`only ${shown} pictures are shown`);
told(held(), `all finds shown, ${shown} pictures`);
await press("nav a[href^='#/heaps']");
await tab.waitForTimeout(2000);
told(held(), "on the heaps");
await go("/finds");
await tab.waitForTimeout(3000);
told(held(), "the page opened anew with them");
await go("/done");
await tab.waitForTimeout(3000);
told(held(), "the same on a screen without pictures");
await context.close();
rmSync(folder, { recursive: true, force: true });
