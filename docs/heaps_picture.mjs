// Takes docs/pictures/heaps.png: an invented group in the middle of sorting the demo's walk.
//
//   node docs/heaps_picture.mjs SPINNEY [--modules DIR] [--chromium PATH]
//
// The modules are those of the stories (`./check` puts them into target/check/node). The picture
// shows a real screen of the program SPINNEY; nothing is drawn over it.
import { mkdtempSync, statSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";

import { CHROMIUM_ARGS } from "../tests/outside/options.mjs";
import { Stage } from "../tests/outside/screens/stage.mjs";

const [program, ...rest] = process.argv.slice(2);
const option = (name, otherwise) => rest[rest.indexOf(name) + 1 || rest.length] ?? otherwise;
const require = createRequire(join(resolve(option("--modules", "target/check/node")), "package.json"));
const { chromium } = require("playwright-core");
const HEDGE_WALK = new URL("../crates/spinney/scenarios/hedge_walk/", import.meta.url);
const PICTURE = new URL("pictures/heaps.png", import.meta.url).pathname;
// Where the group has put whom so far; ivy and holly wait. Invented.
const SORTED = { "Is the leaf in one piece?": [
  ["hazel", "yes"], ["lime", "yes"], ["blackthorn", "yes"], ["plane", "yes"],
  ["dog rose", "no"], ["rowan", "no"], ["bramble", "no"],
] };

const browser = await chromium.launch({
  executablePath: option("--chromium", "/usr/bin/chromium"),
  args: CHROMIUM_ARGS,
});
const out = mkdtempSync(join(tmpdir(), "spinney-picture-"));
const stage = new Stage({ program: resolve(program), out, browser, axe: "" });
const host = await stage.open("picture.spinney");
const page = await stage.window(host, { viewport: { width: 1366, height: 860 } });
const press = (role, name) => Promise.all([
  page.waitForNavigation(), page.getByRole(role, { name, exact: true }).first().click(),
]);

await page.goto(host.address);
await page.locator("#table-file").setInputFiles(
  ["table", "characters", "kinds", "about"].map((name) => new URL(`${name}.csv`, HEDGE_WALK).pathname));
await page.getByRole("textbox", { name: "Names, one a line" }).fill("");
await press("button", "Take the table in");
await press("link", "Heaps");
await page.getByRole("textbox", { name: "Whose key is it?" }).fill("Group Blue");
await press("button", "Begin with two heaps");
for (const [words, cards] of Object.entries(SORTED)) {
  await page.getByRole("textbox", { name: "Ask in your own words" }).fill(words);
  await press("button", "Ask this");
  for (const [kind, side] of cards) await press("button", `${side}: ${kind}`);
}
await page.evaluate(() => { document.activeElement.blur(); scrollTo(0, 0); });
await page.screenshot({ path: PICTURE });
await browser.close();
host.end();
for (const line of stage.wrong) console.error(line);
const size = statSync(PICTURE).size;
console.log(`${PICTURE}: ${size} bytes`);
process.exit(stage.wrong.length || size > 200_000 ? 1 : 0);
