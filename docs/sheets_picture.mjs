// Takes docs/pictures/sheets.png: every sheet of the demo's walk in small, on one A4 page.
//
//   node docs/sheets_picture.mjs SPINNEY [--modules DIR] [--chromium PATH]
//
// The sheets are those that the program SPINNEY writes for its invented walk, drawn by poppler
// (pdftoppm); of a long one the first pages, and how many there are. The modules are those of the
// stories (`./check` puts them into target/check/node). Nothing is drawn over the pages.
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, readdirSync, rmSync, statSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";

import { CHROMIUM_ARGS } from "../tests/outside/options.mjs";

const [program, ...rest] = process.argv.slice(2);
const option = (name, otherwise) => rest[rest.indexOf(name) + 1 || rest.length] ?? otherwise;
const require = createRequire(join(resolve(option("--modules", "target/check/node")), "package.json"));
const { chromium } = require("playwright-core");
const HEDGE_WALK = new URL("../crates/spinney/scenarios/hedge_walk/", import.meta.url).pathname;
const PICTURE = new URL("pictures/sheets.png", import.meta.url).pathname;
// A4 at 150 dots to the inch, pages a tenth as high, and the most of one sheet.
const [WIDE, HIGH, PAGE, MOST] = [1240, 1754, 131, 4];

const folder = mkdtempSync(join(tmpdir(), "spinney-sheets-"));
const visit = join(folder, "visit");
execFileSync(resolve(program), ["key", HEDGE_WALK, "--out", visit, "--date", "3 October 2026"]);
const read = (name, key) =>
  execFileSync("pdfinfo", [join(visit, name)]).toString().match(new RegExp(`^${key}:\\s+(.*)$`, "m"))[1];
const sheets = readdirSync(visit).filter((name) => name.endsWith(".pdf")).map((name) => {
  execFileSync("pdftoppm", ["-r", "48", "-png", "-l", String(MOST), join(visit, name), join(folder, name)]);
  const pages = readdirSync(folder).filter((page) => page.startsWith(`${name}-`)).sort()
    .map((page) => readFileSync(join(folder, page)).toString("base64"));
  return { title: read(name, "Title").split(": ").at(-1), of: Number(read(name, "Pages")), pages, name };
});
// Everything for today holds others once more.
sheets.sort((one, other) => (one.name > other.name ? 1 : -1) - 2 * (one.name === "today.pdf"));
const figure = ({ title, of, pages, name }) => `<figure>
  <div>${pages.map((page) => `<img src="data:image/png;base64,${page}">`).join("")}</div>
  <figcaption>${title}${name.includes("-a3") ? ", A3" : ""}${of > pages.length ? ` · ${of} pages` : ""}</figcaption>
</figure>`;
const html = `<!doctype html><style>
  body { margin: 0; padding: 28px; width: ${WIDE - 56}px; background: #eaf1e6; color: #1f2a24;
    display: flex; flex-wrap: wrap; gap: 14px 18px; align-content: flex-start;
    font: 15px/1.25 Andika, sans-serif; }
  figure { margin: 0; } figure div { display: flex; gap: 4px; }
  img { height: ${PAGE}px; border: 1px solid #55615a; background: #fff; }
</style>${sheets.map(figure).join("")}`;

const browser = await chromium.launch({
  executablePath: option("--chromium", "/usr/bin/chromium"),
  args: CHROMIUM_ARGS,
});
const page = await browser.newPage({ viewport: { width: WIDE, height: HIGH } });
await page.setContent(html);
const used = await page.evaluate(() => document.documentElement.scrollHeight);
await page.screenshot({ path: PICTURE });
await browser.close();
rmSync(folder, { recursive: true });
const size = statSync(PICTURE).size;
console.log(`${PICTURE}: ${sheets.length} sheets, ${used} of ${HIGH} px, ${size} bytes`);
process.exit(used > HIGH || size > 900_000 ? 1 : 0);
