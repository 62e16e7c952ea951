// Ends the pocket page at random moments while somebody adds finds, and looks whether everything
// that was acknowledged is still there.
//
//   node tests/outside/pocket_kills.mjs PAGE.html KILLS [--modules DIR] [--chromium PATH] [--seed N]
//
// Half of the kills come within some milliseconds after a form was sent, half at any moment. Two of
// three end the tab's own process, one the whole browser (SIGKILL), whose profile is on the disk.
// Afterwards the collection is opened again: every find whose screen was seen must be there.
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";

import { CHROMIUM_ARGS, called } from "./options.mjs";

const { options, given, require } = called({ seed: "1" });
const [page, kills] = [pathToFileURL(resolve(given[0])).href, Number(given[1])];
const { chromium } = require("playwright-core");

// A small generator (mulberry32), so that a run can be repeated.
let seed = Number(options.seed);
function random() {
  seed = (seed + 0x6d2b79f5) | 0;
  let one = Math.imul(seed ^ (seed >>> 15), 1 | seed);
  one = (one + Math.imul(one ^ (one >>> 7), 61 | one)) ^ one;
  return ((one ^ (one >>> 14)) >>> 0) / 2 ** 32;
}

const profile = mkdtempSync(join(tmpdir(), "spinney-kills-"));
const pause = (time) => new Promise((done) => setTimeout(done, time));
const acknowledged = new Set();
const everAcknowledged = new Set();
const sent = new Set();
const wrong = [];
const counted = { tab: 0, browser: 0, edits: 0, inAnAnswer: 0 };
let context = null;
let number = 0;
let begun = 0;

async function window() {
  context ??= await chromium.launchPersistentContext(profile, { executablePath: options.chromium, headless: true, args: CHROMIUM_ARGS });
  const tab = context.pages()[0] ?? await context.newPage();
  await tab.goto("about:blank");
  await tab.goto(`${page}#/finds`);
  await tab.waitForFunction(() => document.documentElement.dataset.shown !== undefined, null, { timeout: 60000 });
  return tab;
}

async function add(tab) {
  const name = `find number ${(number += 1)}.`;
  const before = await tab.evaluate(() => document.documentElement.dataset.shown);
  await tab.locator("#names").fill(name);
  sent.add(name);
  await tab.evaluate(() => document.getElementById("add-finds").click());
  return { name, before };
}

async function seen(tab, { name, before }) {
  await tab.waitForFunction((before) => document.documentElement.dataset.shown !== before, before, { polling: 5, timeout: 20000 });
  // A screen that says why not shows what was typed, too.
  const refused = await tab.locator("main [role=alert]").allTextContents();
  if (refused.length > 0) {
    wrong.push(`${name}: ${refused.join(" ")}`);
  } else if ((await tab.textContent("main")).includes(name)) {
    acknowledged.add(name);
    everAcknowledged.add(name);
    counted.edits += 1;
  } else {
    wrong.push(`${name} was sent, and the screen that followed does not show it`);
  }
}

async function kill(tab, whole) {
  if (whole) {
    counted.browser += 1;
    execFileSync("pkill", ["-9", "-f", profile]);
    await context.close().catch(() => {});
    context = null;
    return;
  }
  counted.tab += 1;
  const talk = await context.newCDPSession(tab);
  await Promise.race([talk.send("Page.crash").catch(() => {}), pause(500)]);
  await tab.close().catch(() => {});
}

let tab = await window();
await tab.goto(`${page}#/collections`);
await tab.locator("#begin-empty").click();
await tab.locator("#names").waitFor();
for (let kills_ = 0; kills_ < kills; kills_ += 1) {
  const whole = kills_ % 3 === 2;
  const quiet = Math.floor(random() * 3);
  for (let edits = 0; edits < quiet; edits += 1) await seen(tab, await add(tab));
  if (kills_ % 2 === 0) {
    counted.inAnAnswer += 1;
    await add(tab);
    await pause(random() * 60);
    await kill(tab, whole);
  } else {
    const hand = add(tab).then((sent) => seen(tab, sent)).catch(() => {});
    await pause(random() * 400);
    await kill(tab, whole);
    await Promise.race([hand, pause(1000)]);
  }
  if (wrong.length > 0) break;
  tab = await window();
  const there = await tab.textContent("main");
  if (await tab.locator("#names").count() === 0) {
    wrong.push(`after kill ${kills_ + 1} the page says: ${there.slice(0, 400)}`);
    break;
  }
  for (const name of acknowledged) if (!there.includes(name)) wrong.push(`${name} was acknowledged and is lost after kill ${kills_ + 1}`);
  if (wrong.length > 5) break;
  // A collection on the screens holds 200 kinds: another one is begun beside it.
  if (sent.size - begun > 120) {
    await tab.goto(`${page}#/collections`);
    await tab.locator("#begin-empty").click();
    await tab.locator("#names").waitFor();
    acknowledged.clear();
    begun = sent.size;
  }
}
if (wrong.length === 0) {
  // Every collection opens, and all that was ever acknowledged is in one of them.
  let all = "";
  await tab.goto(`${page}#/collections`);
  await tab.locator("#begin-empty").waitFor();
  const count = await tab.locator(".collections button.main").count();
  for (let at = 0; at < count; at += 1) {
    await tab.goto("about:blank");
    await tab.goto(`${page}#/collections`);
    await tab.locator(".collections button.main").nth(at).click();
    await tab.locator("#names").waitFor();
    all += await tab.textContent("main");
    // What is opened goes to the top of the list.
  }
  for (const name of everAcknowledged) if (!all.includes(name)) wrong.push(`${name} is in no collection`);
}
await context?.close();
rmSync(profile, { recursive: true, force: true });
console.log(`${counted.tab + counted.browser} kills (${counted.tab} of the tab, ${counted.browser} of the browser; ` +
  `${counted.inAnAnswer} in the middle of an answer), ${counted.edits} acknowledged of ${sent.size} edits`);
for (const line of wrong) console.error(line);
process.exit(wrong.length ? 1 : 0);
