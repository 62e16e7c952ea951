// What the pocket page's tab holds with the invented walk and so many photographs, each seen once.
//
//   node bench/pocket/memory.mjs PAGE.html [--modules DIR] [--chromium PATH] [--pictures 50]
//
// Photographs of 12 megapixels are drawn (noise and shapes), added to a find each, and every find is
// looked at; then the private memory of the tab's own process is read from the kernel (smaps_rollup:
// private clean and dirty pages).
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
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

/** The private memory of every renderer of the machine, in MiB; ours is the largest, and the only one
 * once the photographs are drawn. */
function renderers() {
  const all = execFileSync("pgrep", ["-f", `type=renderer`], { encoding: "utf8" }).trim().split("\n");
  return new Map(all.flatMap((id) => {
    try {
      const rollup = readFileSync(`/proc/${id}/smaps_rollup`, "utf8");
      const kib = [...rollup.matchAll(/^Private_(?:Clean|Dirty):\s+(\d+)/gm)].reduce((sum, [, number]) => sum + Number(number), 0);
      return [[id, kib / 1024]];
    } catch { return []; }
  }));
}
const largest = () => Math.max(...renderers().values());

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

// Whoever draws them has gone before anything is measured.
const photographs = [];
for (let seed = 0; seed < Number(options.pictures); seed += 1) photographs.push(Buffer.from(await photograph(seed), "base64"));
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
console.log(`${largest().toFixed(0)} MiB  the page opened`);
await press("#begin-walk");
console.log(`${largest().toFixed(0)} MiB  with the invented walk`);
let most = 0;
for (let seed = 0; seed < Number(options.pictures); seed += 1) {
  await press("nav a[href^='#/finds']");
  await tab.locator("#pictures").setInputFiles({ name: `${seed}.jpg`, mimeType: "image/jpeg", buffer: photographs[seed] });
  await press("#add-finds");
  most = Math.max(most, largest());
}
console.log(`${largest().toFixed(0)} MiB  after ${options.pictures} photographs (at most ${most.toFixed(0)} while they came)`);
await press("nav a[href^='#/finds']");
await tab.waitForTimeout(2000);
console.log(`${largest().toFixed(0)} MiB  all finds shown`);
await press("nav a[href^='#/heaps']");
await tab.waitForTimeout(2000);
console.log(`${largest().toFixed(0)} MiB  on the heaps`);
await go("/finds");
await tab.waitForTimeout(3000);
console.log(`${largest().toFixed(0)} MiB  the page opened anew with them`);
await go("/done");
await tab.waitForTimeout(3000);
console.log(`${largest().toFixed(0)} MiB  the same on a screen without pictures`);
await context.close();
rmSync(folder, { recursive: true, force: true });
