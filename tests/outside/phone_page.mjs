// Replays walks on a phone page in a real browser, and looks for what only a browser sees.
//
//   node tests/outside/phone_page.mjs PAGE.html WALKS.json [--modules DIR] [--chromium PATH]
//
// WALKS.json: [{"taxon": "hazel" or null, "answers": ["yes", "no", "cant_tell", …],
//               "ends": ["hazel", …]}]. After "cant_tell" the answers of the yes way come
// first, then those of the no way; `ends` are the names shown ("hazel or lime" where two kinds
// stay together), in the order in which the walk comes to them, none twice; none at all where
// the key goes round in a circle. Where taxon is given it must be among them.
//
// For each of two screens (320 × 640 and 1366 × 768): every walk is clicked through; the trail
// leads back; the address alone leads to the same end; nothing is fetched; the console stays
// silent; no page is wider than the screen; answers are 44 px or more. On 320 × 640 and 390 × 844
// both answers of every question are in sight without scrolling, cautions and all (not looked at
// with --hostile, for pages whose questions are as long as a page). Then axe-core (the
// rules of WCAG 2.2 A and AA) on every kind of screen, light and dark; and, without scripts,
// every link of the numbered key, and the walks without doubts by following its links.
//
// Reading aloud is looked at with a stand-in for the browser's voices, put in before the page's
// script: what is read, and that it is read by voices of the device alone.
//
// Needs the npm packages playwright-core and axe-core in DIR (default target/node) and a
// Chromium. Exits 1 with a list of what is wrong.
import { createRequire } from "node:module";
import { readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";

import { CHROMIUM_ARGS } from "./options.mjs";

const options = { modules: "target/node", chromium: "/usr/bin/chromium" };
const files = [];
for (let at = 2; at < process.argv.length; at += 1) {
  const word = process.argv[at];
  if (word === "--hostile") options.hostile = true;
  else if (word.startsWith("--")) options[word.slice(2)] = process.argv[(at += 1)];
  else files.push(word);
}
if (files.length !== 2) {
  console.error("Use: phone_page.mjs PAGE.html WALKS.json [--modules DIR] [--chromium PATH]");
  process.exit(2);
}
const require = createRequire(join(resolve(options.modules), "package.json"));
const { chromium } = require("playwright-core");
const axeSource = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");
const address = pathToFileURL(resolve(files[0])).href;
const walks = JSON.parse(readFileSync(files[1], "utf8"));
const scripted = !readFileSync(files[0], "utf8").includes("This key has no question yet.");

const TAGS = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
const wrong = [];
const counted = { clicks: 0, walks: 0, axe: 0, links: 0, seen: 0 };

// A fresh profile in a folder of its own, which Playwright makes and removes.
const browser = await chromium.launch({
  executablePath: options.chromium, headless: true, args: CHROMIUM_ARGS,
});

// A device's voices, or none: the page is told of them before its script runs. What they are
// asked to say is kept in `window.heard`.
function standIn(voices) {
  const listeners = [];
  window.heard = { said: [], stopped: 0, tell: () => listeners.forEach((tell) => tell()) };
  window.voices = voices;
  if (voices === null) {
    delete window.speechSynthesis;
    Object.defineProperty(window, "speechSynthesis", { value: undefined });
    return;
  }
  const synth = {
    getVoices: () => window.voices,
    speak: (spoken) => window.heard.said.push(spoken),
    cancel: () => { window.heard.stopped += 1; },
    addEventListener: (name, tell) => { if (name === "voiceschanged") listeners.push(tell); },
  };
  Object.defineProperty(window, "speechSynthesis", { value: synth });
  window.SpeechSynthesisUtterance = function (text) { this.text = text; };
}

const LOCAL = { name: "local", lang: "en-GB", localService: true };
const REMOTE = { name: "remote", lang: "en-GB", localService: false, default: true };
const UNSAID = { name: "unsaid", lang: "en-GB" };
const WELSH = { name: "other", lang: "cy", localService: true };

async function withPage({ voices, ...settings }, work) {
  const context = await browser.newContext(settings);
  if (voices !== undefined) await context.addInitScript(standIn, voices);
  const page = await context.newPage();
  page.setDefaultTimeout(20000);
  page.on("request", (asked) => {
    const url = asked.url();
    if (url.split("#")[0] !== address && !url.startsWith("data:")) wrong.push(`fetched ${url}`);
  });
  page.on("console", (said) => wrong.push(`console: ${said.text()}`));
  page.on("pageerror", (fault) => wrong.push(`script: ${fault.message}`));
  page.on("dialog", (dialog) => { wrong.push("a dialog opened"); dialog.dismiss(); });
  try {
    await work(page);
  } catch (fault) {
    wrong.push(`stopped at ${page.url().split("/").pop()}: ${fault.message.split("\n")[0]}`);
  }
  await context.close();
}

const same = (a, b) => JSON.stringify(a) === JSON.stringify(b);
const CLICKED = { yes: ".now .yes", no: ".now .no", cant_tell: ".now .cannot" };

// The names at which a walk has come out; null while a question stands.
function endsShown(page) {
  return page.evaluate(() => {
    const now = document.querySelector(".now");
    if (now.classList.contains("end")) return [now.getAttribute("data-name")];
    if (now.id !== "list") return null;
    return [...now.querySelectorAll(".this-one")].map((a) => a.textContent.slice("It fits: ".length));
  });
}

// Clicks without waiting for the drawing of a frame, as 4 in 5 of the minutes would go there.
// The new screen is looked at once the address is the one that the link leads to.
async function click(page, css, nth = 0) {
  counted.clicks += 1;
  return page.evaluate(([css, nth]) => new Promise((done) => {
    const link = document.querySelectorAll(css)[nth];
    if (!link) { done(`nothing at ${css}`); return; }
    const box = link.getBoundingClientRect();
    if (box.width < 44 || box.height < 44) { done(`${css} is under 44 px`); return; }
    const to = link.hash;
    const late = setTimeout(() => done(`${css} did not lead to ${to}`), 10000);
    const arrived = () => {
      if (location.hash !== to) return;
      window.removeEventListener("hashchange", arrived);
      clearTimeout(late);
      setTimeout(() => {
        const now = document.querySelector(".now");
        const wide = document.documentElement.scrollWidth > window.innerWidth;
        if (wide) done(`wider than the screen: ${location.hash}`);
        else if (document.activeElement !== now.querySelector("h2")) done("focus did not move");
        else if (document.querySelectorAll(".now").length !== 1) done("not one screen");
        else done(null);
      });
    };
    window.addEventListener("hashchange", arrived);
    link.click();
  }), [css, nth]);
}

// Whether the page says of another number of kinds than it names; null: it does not.
function miscount() {
  const words = { two: 2, three: 3, four: 4 };
  const said = (text) => words[text.trim().split(" ").at(-1)] ?? Number(text.match(/\d+/)?.[0]);
  const now = document.querySelector(".now");
  const told = now.querySelector("h2").textContent;
  if (now.id === "list" && told.startsWith("It may be")) {
    const stops = [...now.querySelectorAll(".this-one")].some((way) => /question \d+, which|nothing is written/.test(way.textContent));
    const named = new Set([...now.querySelectorAll(".kind h3")].map((kind) => kind.textContent)).size;
    if (!stops && said(told) !== named) return `“${told}” before ${named} names`;
  }
  // At the first question all kinds of a whole key are left.
  if (document.querySelector("#trail li, [data-stops]")) return null;
  const all = new Set([...document.querySelectorAll(".end:not([data-stops]) .kind h3")]
    .map((kind) => kind.textContent)).size;
  const spoken = document.getElementById("spoken").textContent;
  return spoken.includes("still be") && said(spoken) !== all ? `“${spoken}” of ${all}` : null;
}

async function replay(page, walk, size) {
  const name = `${size}: ${walk.answers.join(" ")}`;
  await page.evaluate(() => { location.hash = "#start"; });
  await page.waitForSelector("#start.now");
  for (const css of [".begin a", ...walk.answers.map((answer) => CLICKED[answer])]) {
    const fault = await click(page, css);
    if (fault) { wrong.push(`${name}: ${fault}`); return; }
    const miscounted = await page.evaluate(miscount);
    if (miscounted) wrong.push(`${name}: ${miscounted}`);
  }
  counted.walks += 1;
  const ends = await endsShown(page);
  if (!same(ends, walk.ends)) wrong.push(`${name}: came to ${ends}, not ${walk.ends}`);
  if (walk.taxon && !(ends ?? []).some((end) => end.split(" or ").includes(walk.taxon))) {
    wrong.push(`${name}: ${walk.taxon} does not come out`);
  }
  const trail = await page.locator("#trail li").count();
  if (trail !== walk.answers.length) wrong.push(`${name}: the trail has ${trail} answers`);
}

async function walkAll(size, width, height) {
  await withPage({ viewport: { width, height } }, async (page) => {
    await page.goto(address);
    if (!scripted) return;
    for (const walk of walks) await replay(page, walk, size);
    for (const walk of walks.slice(0, 3)) await backAndAgain(page, walk, size);
    await byKeyboard(page, size);
  });
}

// The trail leads back to each answer; the browser's own Back undoes one; the address alone
// leads to the same place in a fresh page.
async function backAndAgain(page, walk, size) {
  await replay(page, walk, size);
  const hash = await page.evaluate(() => location.hash);
  for (let at = walk.answers.length - 1; at >= 0; at -= 1) {
    const fault = await click(page, "#trail li a", at);
    if (fault) wrong.push(`${size}: the trail: ${fault}`);
    const left = await page.locator("#trail li").count();
    if (left !== at) wrong.push(`${size}: the trail led to ${left} answers, not ${at}`);
  }
  for (let at = 1; at <= walk.answers.length; at += 1) {
    await page.goBack();
    await page.waitForFunction(
      (count) => document.querySelectorAll("#trail li").length === count, at, { timeout: 10000 });
  }
  if ((await page.evaluate(() => location.hash)) !== hash) wrong.push(`${size}: Back is lost`);
  await page.goto("about:blank");
  await page.goto(address + hash);
  if (!same(await endsShown(page), walk.ends)) wrong.push(`${size}: ${hash} leads elsewhere`);
}

// Tab and Enter alone reach an end, and whoever holds the focus shows it.
async function byKeyboard(page, size) {
  await page.evaluate(() => { location.hash = "#start"; });
  await page.waitForSelector("#start.now");
  for (let press = 0; press < 400; press += 1) {
    await page.keyboard.press("Tab");
    const focus = await page.evaluate(() => {
      const on = document.activeElement;
      const style = getComputedStyle(on);
      return { wanted: on.matches(".begin a, .now .yes"), outline: style.outlineStyle, tag: on.tagName };
    });
    if (focus.tag !== "BODY" && focus.outline === "none") wrong.push(`${size}: focus unseen`);
    if (focus.wanted) {
      const before = await page.evaluate(() => location.hash);
      await page.keyboard.press("Enter");
      await page.waitForFunction((before) => location.hash !== before
        && document.activeElement === document.querySelector(".now h2"), before);
      if (await endsShown(page)) return;
    }
  }
  wrong.push(`${size}: the keyboard alone reaches no end`);
}

async function axe(page, what) {
  counted.axe += 1;
  await page.evaluate(axeSource);
  const found = await page.evaluate(
    (tags) => window.axe.run(document, { runOnly: { type: "tag", values: tags } }), TAGS);
  for (const fault of found.violations) {
    const where = fault.nodes.slice(0, 3).map((node) => node.target.join(" ")).join("; ");
    wrong.push(`axe on ${what}: ${fault.id}: ${fault.help} (${where})`);
  }
}

// One screen of each sort: start, first question, after a doubt, an end, the short list.
async function accessible(colorScheme) {
  const settings = {
    viewport: { width: 390, height: 844 }, colorScheme, reducedMotion: "reduce", voices: [LOCAL],
  };
  await withPage(settings, async (page) => {
    const lists = walks.filter((walk) => walk.ends.length > 1).slice(0, 1);
    const letters = (walk) => walk.answers.map((answer) => answer[0]).join("");
    const hashes = ["#start", "#w-", "#w-c", ...[walks[0], ...lists].filter(Boolean).map((walk) => `#w-${letters(walk)}`)];
    for (const hash of scripted ? hashes : ["#start"]) {
      await page.goto("about:blank");
      await page.goto(address + hash);
      await page.evaluate(() => document.querySelectorAll(".now details").forEach((d) => { d.open = true; }));
      await axe(page, `${hash} (${colorScheme})`);
    }
  });
}

// Without scripts: every link leads somewhere, and every walk without doubts comes out.
async function withoutScripts() {
  await withPage({ viewport: { width: 320, height: 640 }, javaScriptEnabled: false }, async (page) => {
    await page.goto(address);
    const links = await page.locator("a[href]").evaluateAll((all) => all
      .filter((link) => link.getClientRects().length)
      .map((link) => [link.getAttribute("href"), link.textContent.trim()]));
    for (const [href, words] of links) {
      counted.links += 1;
      const there = href.startsWith("#") && (await page.locator(`[id="${href.slice(1)}"]`).count());
      if (there !== 1) wrong.push(`without scripts: "${words}" leads to ${href}, ${there} places`);
    }
    if (!scripted) return;
    for (const walk of walks.filter((walk) => !walk.answers.includes("cant_tell"))) {
      let at = await page.locator(".begin a").getAttribute("href");
      for (const answer of walk.answers) {
        at = await page.locator(`[id="${at.slice(1)}"] .${answer}`).getAttribute("href");
      }
      const name = await page.locator(`[id="${at.slice(1)}"]`).getAttribute("data-name");
      const seen = await page.locator(`[id="${at.slice(1)}"] h2`).isVisible();
      if (!same(name === null ? [] : [name], walk.ends) || !seen) {
        wrong.push(`without scripts: ${walk.answers.join(" ")} came to ${name}`);
      }
    }
    await page.locator(".begin a").click();
    if (!(await page.url()).includes("#q")) wrong.push("without scripts: Begin leads nowhere");
  });
}

// Both answers of every question that a walk without doubts passes are in sight.
async function inSight(width, height) {
  const settings = { viewport: { width, height }, reducedMotion: "reduce", voices: [LOCAL] };
  await withPage(settings, async (page) => {
    const asked = new Set();
    for (const walk of walks.filter((walk) => !walk.answers.includes("cant_tell"))) {
      const letters = walk.answers.map((answer) => answer[0]).join("");
      for (let at = 0; at < letters.length; at += 1) asked.add(letters.slice(0, at));
    }
    for (const letters of asked) {
      await page.goto("about:blank");
      await page.goto(`${address}#w-${letters}`);
      const answers = await page.evaluate(() => [...document.querySelectorAll(".now .answer")]
        .map((answer) => answer.getBoundingClientRect())
        .map((box) => ({ bottom: box.bottom, seen: box.width > 0 && box.height > 0 })));
      counted.seen += 1;
      if (answers.length !== 2 || !answers.every((answer) => answer.seen)) {
        wrong.push(`${width} × ${height}: after "${letters}" there are not two answers`);
        continue;
      }
      const lowest = Math.max(...answers.map((answer) => answer.bottom));
      if (lowest > height) {
        wrong.push(`${width} × ${height}: after "${letters}" an answer ends at ${Math.round(lowest)} px`);
      }
    }
  });
}

// Whether the button that reads aloud is there, and what it says.
function theButton(page) {
  return page.evaluate(() => {
    const button = document.getElementById("aloud");
    return button.getClientRects().length ? button.textContent.trim() : null;
  });
}

// What was said since this was last asked: texts, and the voices that said them.
function heard(page) {
  return page.evaluate(() => {
    const said = window.heard.said.splice(0);
    return { texts: said.map((one) => one.text), voices: [...new Set(said.map((one) => one.voice.name))] };
  });
}

async function aloud() {
  const no = [["no voices", []], ["no speech", null], ["a voice elsewhere", [REMOTE]],
    ["a voice that does not say where it is", [UNSAID]], ["a voice for another language", [WELSH]]];
  for (const [what, voices] of no) {
    await withPage({ voices }, async (page) => {
      await page.goto(`${address}#w-`);
      if ((await theButton(page)) !== null) wrong.push(`aloud, ${what}: there is a button`);
    });
  }
  const settings = { viewport: { width: 320, height: 640 }, voices: [REMOTE, WELSH, UNSAID, LOCAL] };
  await withPage(settings, async (page) => {
    await page.goto(address);
    if ((await theButton(page)) !== null) wrong.push("aloud: a button before the first question");
    await page.evaluate(() => { location.hash = "#w-"; });
    await page.waitForSelector(".question.now");
    if ((await theButton(page)) !== "Read aloud") wrong.push("aloud: no button at a question");
    const button = await page.locator("#aloud").boundingBox();
    if (button.height < 44 || button.width < 44) wrong.push("aloud: the button is under 44 px");
    const shown = await page.evaluate(() => {
      const now = document.querySelector(".now");
      const plain = (element) => element.textContent.trim();
      return [now.querySelector("h2").lastChild, ...now.querySelectorAll(".answers strong")].map(plain);
    });
    await page.locator("#aloud").click();
    let said = await heard(page);
    if (!shown.every((text) => said.texts.includes(text)) || said.texts[0] !== shown[0]) {
      wrong.push(`aloud: read ${said.texts.join(" | ")}, not ${shown.join(" | ")}`);
    }
    if (!same(said.voices, ["local"])) wrong.push(`aloud: by ${said.voices}`);
    if ((await theButton(page)) !== "Stop reading") wrong.push("aloud: the button does not stop");
    const stops = async (what, deed) => {
      const before = await page.evaluate(() => window.heard.stopped);
      await deed();
      const after = await page.evaluate(() => window.heard.stopped);
      if (after === before) wrong.push(`aloud: ${what} does not stop it`);
    };
    await stops("pressing again", () => page.locator("#aloud").click());
    if ((await theButton(page)) !== "Read aloud") wrong.push("aloud: stopped, and it does not say so");
    if ((await heard(page)).texts.length) wrong.push("aloud: stopped, and it goes on");
    // By the keyboard; and when the last words have been said, the button offers to read again.
    await page.locator("#aloud").focus();
    await page.keyboard.press("Enter");
    await page.evaluate(() => { window.heard.said.at(-1)?.onend(); });
    if ((await heard(page)).texts.length < 3) wrong.push("aloud: not by the keyboard");
    if ((await theButton(page)) !== "Read aloud") wrong.push("aloud: at its end it still reads");
    await page.keyboard.press("Space");
    await stops("going on", () => click(page, ".now .yes"));
    await heard(page);
    // At an end: the name, and what may hurt.
    const walk = walks.find((walk) => walk.ends.length === 1 && !walk.answers.includes("cant_tell"));
    if (!walk) return;
    await page.goto("about:blank");
    await page.goto(`${address}#w-${walk.answers.map((answer) => answer[0]).join("")}`);
    if ((await theButton(page)) === null) return void wrong.push("aloud: no button at an end");
    await page.locator("#aloud").click();
    said = await heard(page);
    // Where the key stops, it reads why.
    if (await page.locator(".now[data-stops]").count()) return;
    const cautions = await page.locator(".now .kind .caution").count();
    if (!walk.ends[0].split(" or ").every((name) => said.texts.join(" ").includes(name.trim()))
      || said.texts.filter((text) => text.startsWith("Take care.")).length !== cautions) {
      wrong.push(`aloud: at ${walk.ends[0]} it read ${said.texts.join(" | ")}`);
    }
  });
  // A second language is read by a voice of its own, and passed over where there is none.
  const asked = `${address}#w-`;
  await withPage({ voices: [LOCAL] }, async (page) => {
    await page.goto(asked);
    const second = page.locator(".now .second").first();
    if (!(await second.count())) return;
    const [text, lang] = [(await second.textContent()).trim(), await second.getAttribute("lang")];
    await page.locator("#aloud").click();
    if ((await heard(page)).texts.includes(text)) wrong.push("aloud: a language without a voice is read");
    await page.evaluate((lang) => {
      window.voices.push({ name: "second", lang: `${lang}_XX`, localService: true });
    }, lang);
    await page.locator("#aloud").click();
    await page.locator("#aloud").click();
    const by = await page.evaluate(
      (text) => window.heard.said.find((one) => one.text === text)?.voice.name, text);
    if (by !== "second") wrong.push(`aloud: ${lang} is read by ${by}`);
  });
  // A device that learns of its voices late.
  await withPage({ voices: [] }, async (page) => {
    await page.goto(`${address}#w-`);
    await page.evaluate((voice) => { window.voices = [voice]; window.heard.tell(); }, LOCAL);
    if ((await theButton(page)) !== "Read aloud") wrong.push("aloud: voices that come late are not seen");
  });
}

await walkAll("320 × 640", 320, 640);
await walkAll("1366 × 768", 1366, 768);
if (scripted && !options.hostile) {
  await inSight(320, 640);
  await inSight(390, 844);
}
if (scripted) await aloud();
await accessible("light");
await accessible("dark");
await withoutScripts();
await browser.close();
if (wrong.length) {
  console.error([...new Set(wrong)].slice(0, 40).join("\n"));
  process.exit(1);
}
console.log(`${files[0]}: ${counted.walks} walks, ${counted.clicks} clicks, ` +
  `${counted.seen} questions in sight, ${counted.links} links without scripts, ${counted.axe} screens past axe-core: all well`);
