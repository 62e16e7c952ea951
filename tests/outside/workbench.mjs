// Stories at the workbench, in a real browser against the real program.
//
//   node tests/outside/workbench.mjs SPINNEY OUT [--modules DIR] [--chromium PATH] [--only STORY]
//
// Each story starts the program with a collection of its own in OUT and works as people do:
// by keyboard alone, by touch, by the names that a screen reader says, without scripts, in two
// windows. At every stop axe-core looks at the screen (the rules of WCAG 2.2 A and AA), no page
// may be wider than the screen, the console stays silent, and nothing but the program itself is
// asked for anything. OUT/story.txt then holds the requests of the first story, for the
// browser's build of the desk to answer. Exits 1 with a list of what is wrong.
import { spawn } from "node:child_process";
import { createRequire } from "node:module";
import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { sortedBothWays } from "./sorted_both_ways.mjs";

const options = { modules: "target/node", chromium: "/usr/bin/chromium", only: "" };
const given = [];
for (let at = 2; at < process.argv.length; at += 1) {
  const word = process.argv[at];
  if (word.startsWith("--")) options[word.slice(2)] = process.argv[(at += 1)];
  else given.push(word);
}
if (given.length !== 2) {
  console.error("Use: workbench.mjs SPINNEY OUT [--modules DIR] [--chromium PATH] [--only STORY]");
  process.exit(2);
}
const [program, out] = given.map((path) => resolve(path));
const require = createRequire(join(resolve(options.modules), "package.json"));
const { chromium } = require("playwright-core");
const axe = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");
const ARGS = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
  "--disable-background-networking", "--disable-component-update", "--disable-sync"];
const TAGS = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
const LAPTOP = { viewport: { width: 1366, height: 768 } };
const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };
const NARROW = { viewport: { width: 320, height: 640 } };

rmSync(out, { recursive: true, force: true });
mkdirSync(out, { recursive: true });
const wrong = [];
const counted = { stops: 0, steps: 0 };
let story = "";
const say = (what) => wrong.push(`${story}: ${what}`);
const expect = (holds, what) => { counted.steps += 1; if (!holds) say(what); };

/** Starts the program on a file; gives its address and a way to end it. */
function open(file) {
  const child = spawn(program, ["open", file, "--no-browser", "--port", "0"]);
  return new Promise((done, failed) => {
    let said = "";
    const hear = (bytes) => {
      said += bytes;
      const found = said.match(/http:\/\/127\.0\.0\.1:\d+/);
      if (found) done({ address: found[0], end: () => child.kill("SIGINT") });
    };
    child.stdout.on("data", hear);
    child.stderr.on("data", hear);
    child.on("exit", () => failed(new Error(`the program ended: ${said}`)));
  });
}

const browser = await chromium.launch({ executablePath: options.chromium, headless: true, args: ARGS });

/** A window on the program, with everything watched. */
async function window(host, settings, requests) {
  const context = await browser.newContext(settings);
  const page = await context.newPage();
  page.setDefaultTimeout(15000);
  page.on("request", (asked) => {
    const url = asked.url();
    if (!url.startsWith(`${host.address}/`) && !url.startsWith("data:")) say(`asked for ${url}`);
    const path = url.slice(host.address.length);
    if (requests && !/^\/(assets|picture)\//.test(path) && !url.startsWith("data:")) {
      requests.push(`${asked.method()} ${path}${asked.postData() ? ` ${form(asked)}` : ""}`);
    }
  });
  page.on("console", (line) => {
    // The one page that is not there, and what is refused, are asked for on purpose.
    const meant = (page.url().endsWith("/nothing-here") && line.text().includes("404")) ||
      (page.url().includes("/do/") && line.text().includes("422"));
    if (line.type() === "error" && !meant) say(`console at ${page.url()}: ${line.text()}`);
  });
  page.on("pageerror", (error) => say(`script: ${error.message}`));
  return page;
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

/** A stop: the screen as axe-core, a ruler and a person see it. */
async function look(page, name) {
  counted.stops += 1;
  const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  if (wide > 0) say(`${name} is ${wide} px wider than the screen`);
  await page.evaluate(axe);
  const found = await page.evaluate(
    (tags) => globalThis.axe.run(document, { runOnly: tags }).then((all) => all.violations), TAGS);
  for (const rule of found) {
    say(`${name}: axe ${rule.id}: ${rule.nodes.slice(0, 3).map((n) => n.html.slice(0, 120)).join(" | ")}`);
  }
  const small = await page.$$eval(
    "button, a.button, a.main, nav a, summary, input:not([type=hidden]), select",
    (all) => all.filter((one) => {
      const box = one.getBoundingClientRect();
      return box.width > 1 && box.height > 1 && Math.max(box.height, box.width) >= 1 && box.height < 23.5;
    }).map((one) => one.outerHTML.slice(0, 100)));
  if (small.length) say(`${name}: too small to touch: ${small.slice(0, 3).join(" | ")}`);
  await page.screenshot({ path: join(out, `${story}-${name}.png`), fullPage: true });
}

/** Moves the focus by Tab alone until it is on what is wanted. */
async function tabTo(page, selector, text) {
  for (let steps = 0; steps < 400; steps += 1) {
    const there = await page.evaluate(([wanted, words]) => {
      const now = document.activeElement;
      return now !== null && now.matches(wanted) && (!words || now.textContent.trim() === words);
    }, [selector, text]);
    if (there) return;
    await page.keyboard.press("Tab");
  }
  throw new Error(`Tab never comes to ${selector} ${text ?? ""}`);
}

/** Presses Enter on what has the focus, and waits for the page that follows. */
async function enter(page, key = "Enter") {
  await Promise.all([page.waitForNavigation(), page.keyboard.press(key)]);
}

const EIGHT = ["sallow", "guelder rose", "spindle", "alder", "aspen", "yew", "walnut", "elder twig"];
// Invented for this story: which of the eight say yes, question by question.
const KEY = [
  ["", "Is it soft to the touch?", [1, 2, 3, 4], [5, 6, 7, 8]],
  ["y", "Is its edge jagged?", [1, 2], [3, 4]],
  ["yy", "Is it as long as your thumb?", [1], [2]],
  ["yn", "Are there two beside each other?", [3], [4]],
  ["n", "Does it shine?", [5, 6], [7, 8]],
  ["ny", "Is it round?", [5], [6]],
  ["nn", "Is there a stalk?", [7], [8]],
];

const stories = {
  /** From an empty collection by heaps to a printed key with eight kinds, by keyboard alone. */
  async byKeyboard() {
    const host = await open(join(out, "keyboard.spinney"));
    const requests = [];
    const page = await window(host, LAPTOP, requests);
    await page.goto(`${host.address}/finds`);
    await look(page, "empty");
    await tabTo(page, "#names");
    await page.keyboard.type(EIGHT.join("\n"));
    await tabTo(page, "form.add button");
    await enter(page);
    expect((await page.textContent("main")).includes("guelder rose"), "the finds are there");
    await look(page, "finds");
    await tabTo(page, "nav a", "Heaps");
    await enter(page);
    await look(page, "heaps-beginning");
    await tabTo(page, "#key-name");
    await page.keyboard.type("Group Blue");
    await enter(page);
    for (const [at, words, yes, no] of KEY) {
      await page.goto(`${host.address}/heaps?key=1&at=${at}`);
      await tabTo(page, "#words");
      await page.keyboard.type(words);
      await enter(page);
      for (const kind of [...yes, ...no]) {
        const key = yes.includes(kind) ? "ArrowLeft" : "ArrowRight";
        await tabTo(page, `#card-${kind}`);
        await enter(page, key);
      }
      if (at === "") await look(page, "sorted");
    }
    const beside = await page.textContent("#margin");
    expect(beside.includes("Nobody is forgotten."), "all eight are placed");
    expect(beside.includes("No heap holds two kinds any more."), "all eight come out");
    await tabTo(page, "nav a", "Key");
    await enter(page);
    expect((await page.textContent("main")).includes("7 questions for 8 kinds"), "the key has seven questions");
    await look(page, "key");
    await tabTo(page, "nav a", "Print");
    await enter(page);
    await look(page, "print");
    const pdf = await page.evaluate(async () => {
      const link = [...document.querySelectorAll("main a")].find((a) => a.href.includes(".pdf"));
      const bytes = new Uint8Array(await (await fetch(link.href)).arrayBuffer());
      return String.fromCharCode(...bytes.slice(0, 5));
    });
    expect(pdf === "%PDF-", "the key is printed");
    writeFileSync(join(out, "story.txt"), `${requests.filter((line) => !line.includes(".pdf") && !line.includes("/print")).join("\n")}\n`);
    // Undo of everything, back to empty.
    let undone = 0;
    for (; undone < 200; undone += 1) {
      await page.goto(`${host.address}/done`);
      const undo = page.locator("form[action='/do/undo'] button");
      if (await undo.isDisabled()) break;
      await Promise.all([page.waitForNavigation(), undo.press("Enter")]);
    }
    expect(undone === 33, `everything was undone one by one (${undone})`);
    await page.goto(`${host.address}/finds`);
    expect(!(await page.textContent("main")).includes("guelder rose"), "undone back to empty");
    await look(page, "undone");
    host.end();
  },

  /** The same by touch on a phone, the rest found by the machine. */
  async byTouch() {
    const host = await open(join(out, "touch.spinney"));
    const page = await window(host, PHONE);
    await page.goto(`${host.address}/finds`);
    await page.locator("#names").tap();
    await page.locator("#names").fill("sallow\nspindle\nalder\nyew");
    await Promise.all([page.waitForNavigation(), page.locator("form.add button").first().tap()]);
    await look(page, "finds");
    await page.getByRole("link", { name: "Heaps", exact: true }).first().tap();
    await page.locator("#key-name").fill("Group Green");
    await Promise.all([page.waitForNavigation(), page.getByRole("button", { name: "Begin with two heaps" }).tap()]);
    await page.locator("#words").fill("Is it a needle?");
    await Promise.all([page.waitForNavigation(), page.locator("#ask").tap()]);
    for (const [kind, side] of [[1, "no"], [2, "no"], [3, "no"], [4, "yes"]]) {
      await Promise.all([page.waitForNavigation(), page.locator(`#${side}-${kind}`).tap()]);
    }
    await look(page, "heaps");
    expect((await page.textContent("main")).includes("yew comes out here."), "yew comes out");
    expect((await page.textContent("main")).includes("Go on with these 3"), "three go on");
    await page.goto(`${host.address}/try?key=1`);
    await look(page, "try");
    host.end();
  },

  /** From a pasted table to the best key, by the names that a screen reader says. */
  async byNames() {
    const host = await open(join(out, "names.spinney"));
    const page = await window(host, LAPTOP);
    await page.goto(`${host.address}/finds`);
    const table = ["kind\tedge\tlobed\tshine", "sallow\twavy\tno\tdull", "yew\tsmooth\tno\tshiny",
      "alder\ttoothed\tno\tdull", "guelder rose\ttoothed\tyes\tdull"].join("\n");
    await page.locator("#table").fill(table);
    await Promise.all([page.waitForNavigation(), page.locator("#take-table button").last().click()]);
    await page.getByRole("navigation", { name: "Screens" }).getByRole("link", { name: "Table" }).click();
    await look(page, "table");
    await page.getByRole("navigation", { name: "Screens" }).getByRole("link", { name: "Key" }).click();
    await look(page, "no-key-yet");
    await page.locator("#new-name").fill("The shortest");
    await Promise.all([page.waitForNavigation(), page.locator("#start-finished").click()]);
    expect((await page.textContent("main")).includes("No key needs fewer questions"), "the key is proved");
    await look(page, "key");
    for (const name of ["Our finds", "Words", "Print", "What we did"]) {
      await page.getByRole("navigation", { name: "Screens" }).getByRole("link", { name }).click();
      await page.getByRole("heading", { level: 1 }).waitFor();
      await look(page, name.replaceAll(" ", "-"));
    }
    host.end();
  },

  /** Two groups' tables, their disagreement shown on the spot, and a person decides. */
  async twoGroups() {
    const host = await open(join(out, "groups.spinney"));
    const page = await window(host, LAPTOP);
    for (const [source, edge] of [["group Blue", "toothed"], ["group Red", "smooth"]]) {
      await page.goto(`${host.address}/finds`);
      await page.locator("#table").fill(`kind\tedge\nsallow\t${edge}\nyew\tsmooth`);
      await page.locator("#source").fill(source);
      await Promise.all([page.waitForNavigation(), page.locator("#take-table button").last().click()]);
    }
    await page.goto(`${host.address}/finds`);
    const main = await page.textContent("body");
    expect(main.includes("group Blue") && main.includes("group Red"), "both groups are named");
    await look(page, "disagree");
    await page.goto(`${host.address}/table`);
    await look(page, "table");
    await page.goto(`${host.address}/finds`);
    await Promise.all([page.waitForNavigation(), page.locator("form.decision button").first().click()]);
    await page.goto(`${host.address}/finds`);
    expect(await page.locator("form.decision").count() === 0, "it is decided");
    await sortedBothWays(page, host, expect);
    await look(page, "sorted-both-ways");
    host.end();
  },

  /** Two windows at once lose nothing, and the same cell is asked back. */
  async twoWindows() {
    const host = await open(join(out, "windows.spinney"));
    const one = await window(host, { ...LAPTOP, javaScriptEnabled: false });
    const other = await window(host, { ...LAPTOP, javaScriptEnabled: false });
    await one.goto(`${host.address}/finds`);
    await one.locator("#table").fill("kind\tedge\tshine\nsallow\twavy\tdull\nyew\tsmooth\tshiny");
    await Promise.all([one.waitForNavigation(), one.locator("#take-table button").last().click()]);
    await one.goto(`${host.address}/table`);
    await other.goto(`${host.address}/table`);
    await one.locator("[name=c-1-1]").fill("toothed");
    await other.locator("[name=c-2-2]").fill("very shiny");
    for (const page of [one, other]) {
      await Promise.all([page.waitForNavigation(), page.locator("#cells button").first().click()]);
    }
    await one.goto(`${host.address}/table`);
    expect(await one.locator("[name=c-1-1]").inputValue() === "toothed", "the first window's cell is there");
    expect(await one.locator("[name=c-2-2]").inputValue() === "very shiny", "the second window's cell is there");
    // The same cell in both: both texts are seen, and a person decides.
    await one.goto(`${host.address}/table`);
    await other.goto(`${host.address}/table`);
    await one.locator("[name=c-1-2]").fill("matt");
    await other.locator("[name=c-1-2]").fill("glossy");
    for (const page of [one, other]) {
      await Promise.all([page.waitForNavigation(), page.locator("#cells button").first().click()]);
    }
    const asked = await other.content();
    expect(asked.includes("matt") && asked.includes("glossy"), "both texts of one cell are there");
    // Two fields of one kind: an old page takes nothing back.
    await one.goto(`${host.address}/finds/1`);
    await other.goto(`${host.address}/finds/1`);
    await one.locator("#about-caution").fill("Look, do not taste.");
    await other.locator("#about-where").fill("by the bridge (invented)");
    for (const page of [one, other]) {
      await Promise.all([page.waitForNavigation(), page.locator("#about-keep").click()]);
    }
    await one.goto(`${host.address}/finds/1`);
    expect(await one.locator("#about-caution").inputValue() === "Look, do not taste.", "the caution is kept");
    expect((await one.locator("#about-where").inputValue()).startsWith("by the bridge"), "the place is kept");
    // One heap: a card sorted for another question is refused.
    await one.goto(`${host.address}/heaps`);
    await one.locator("#key-name").fill("Group Blue");
    await Promise.all([one.waitForNavigation(), one.getByRole("button", { name: "Begin with two heaps" }).click()]);
    await other.goto(`${host.address}/heaps?key=1`);
    for (const [page, words] of [[one, "Does it shine?"], [other, "Is it wavy?"]]) {
      await page.locator("#words").fill(words);
      await Promise.all([page.waitForNavigation(), page.locator("#ask").click()]);
    }
    expect((await other.content()).includes("Another window has changed the question"), "it is refused");
    await one.goto(`${host.address}/heaps?key=1`);
    expect((await one.textContent("#asked")).includes("Does it shine?"), "the first question stands");
    // Undo on a page that has not seen what the other window did.
    await one.goto(`${host.address}/finds/1`);
    await other.goto(`${host.address}/finds/1`);
    await other.locator("#about-when").fill("in October");
    await Promise.all([other.waitForNavigation(), other.locator("#about-keep").click()]);
    const undo = one.locator("form[action='/do/undo'] button");
    await Promise.all([one.waitForNavigation(), undo.click()]);
    expect((await one.textContent("main")).includes("in October"), "it says what it would take back");
    await one.goto(`${host.address}/finds/1`);
    expect(await one.locator("#about-when").inputValue() === "in October", "nothing was taken back unseen");
    host.end();
    // What was acknowledged is there after a new start.
    const again = await open(join(out, "windows.spinney"));
    const page = await window(again, LAPTOP);
    await page.goto(`${again.address}/table`);
    expect(await page.locator("[name=c-1-1]").inputValue() === "toothed", "it is kept");
    again.end();
  },

  /** Somebody brings a find that is not in the key: nothing that was typed is lost. */
  async newcomer() {
    const host = await open(join(out, "newcomer.spinney"));
    const page = await window(host, PHONE);
    await page.goto(`${host.address}/finds`);
    const folder = new URL("../../crates/spinney/scenarios/hedge_walk/", import.meta.url);
    const files = ["table", "characters"].map((name) => new URL(`${name}.csv`, folder).pathname);
    await page.locator("#table-file").setInputFiles(files);
    await Promise.all([page.waitForNavigation(), page.locator("#take-table button").last().click()]);
    const go = (what) => Promise.all([page.waitForNavigation(), page.locator(what).click()]);
    await page.goto(`${host.address}/newcomer`);
    await go("#newcomer-key");
    await page.locator("#newcomer-name").fill("dewberry");
    await go("#newcomer-walk");
    for (let steps = 0; steps < 20 && await page.locator("#walk-no").count(); steps += 1) {
      await look(page, `walk-${steps}`);
      const hand = (await page.textContent("h1")).includes("hand");
      await go(hand ? "#walk-yes" : "#walk-no");
    }
    expect((await page.textContent("h1")).includes("bramble"), "it comes out at bramble");
    await page.locator("#d-name").fill("underside");
    await page.locator("#d-ours").fill("white");
    await page.locator("#d-theirs-12").fill("green");
    const [ours, theirs] = await page.$$eval(".cards.two .card", (all) => all.map((one) => one.getBoundingClientRect().top));
    expect(ours === theirs, "the two cards lie side by side");
    await look(page, "cards");
    await go("#newcomer-slot");
    expect((await page.textContent("main")).includes("Nothing is kept yet."), "it is only shown");
    await look(page, "shown");
    await go("#newcomer-again");
    expect(await page.locator("#d-ours").inputValue() === "white", "what was typed is there again");
    await go("#newcomer-slot");
    await page.locator("#newcomer-picture").setInputFiles({ name: "dewberry.png", mimeType: "image/png",
      buffer: await page.screenshot() });
    await go("#newcomer-keep");
    expect((await page.textContent("h1")).includes("dewberry has a place"), "it has a place");
    expect(await page.locator(".cards.two img").count() === 1, "its picture is on its card");
    await look(page, "kept");
    host.end();
  },

  /** Every screen with the demo, narrow and wide, and without scripts. */
  async everyScreen() {
    const host = await open(join(out, "screens.spinney"));
    const setup = await window(host, LAPTOP);
    await setup.goto(`${host.address}/finds`);
    const folder = new URL("../../crates/spinney/scenarios/hedge_walk/", import.meta.url);
    const files = ["table", "characters", "kinds", "about"].map((name) => new URL(`${name}.csv`, folder).pathname);
    await setup.locator("#table-file").setInputFiles(files);
    await Promise.all([setup.waitForNavigation(), setup.locator("#take-table button").last().click()]);
    await setup.goto(`${host.address}/key`);
    await setup.locator("#new-name").fill("Our key");
    await Promise.all([setup.waitForNavigation(), setup.locator("#start-finished").click()]);
    const screens = ["/finds", "/finds/1", "/share-out", "/newcomer", "/heaps?key=1", "/heaps/answers?key=1",
      "/copy?key=1", "/table", "/table/4", "/key?key=1", "/key?key=1&as=tree", "/words?key=1",
      "/try?key=1", "/try?key=1&at=y", "/print?key=1", "/done", "/nothing-here"];
    for (const [name, settings] of [["narrow", NARROW], ["laptop", LAPTOP],
      ["dark", { ...LAPTOP, colorScheme: "dark" }], ["double", { viewport: { width: 683, height: 384 } }],
      ["calm", { ...LAPTOP, reducedMotion: "reduce", forcedColors: "active" }]]) {
      const page = await window(host, settings);
      for (const path of screens) {
        await page.goto(`${host.address}${path}`).catch((error) => say(`${path}: ${error.message}`));
        await look(page, `${name}${path.replaceAll(/[/?=&]/g, "_")}`);
      }
      await page.context().close();
    }
    host.end();
  },
};

for (const [name, tell] of Object.entries(stories)) {
  if (options.only && options.only !== name) continue;
  story = name;
  try {
    await tell();
  } catch (error) {
    say(`${error.message.split("\n")[0]}`);
  }
  for (const context of browser.contexts()) await context.close().catch(() => {});
}
await browser.close();
console.log(`${counted.steps} steps, ${counted.stops} stops with axe-core`);
for (const line of wrong) console.error(line);
process.exit(wrong.length ? 1 : 0);
