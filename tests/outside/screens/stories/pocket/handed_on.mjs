// Copies on the page that holds everything, where a browser can hand a file to another program and where
// one is let fall on the page: with pictures in it, and the same bytes on every way. What is larger than
// a form may be is refused before it is read.
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";

import { LAPTOP } from "../../stage.mjs";

/** A browser that hands files on. What it was handed is there to be looked at. */
const handsOn = () => {
  navigator.canShare = ({ files }) => files.length === 1;
  navigator.share = async ({ files: [file] }) => {
    const bytes = new Uint8Array(await file.arrayBuffer());
    globalThis.handed = { name: file.name, type: file.type, bytes: [...bytes] };
  };
};

export async function handedOn(stage) {
  const host = await stage.open("handed on");
  host.script = [handsOn];
  const page = await stage.window(host, LAPTOP);
  await page.goto(`${host.address}/finds`);
  for (const hue of [30, 120]) {
    await page.locator("#pictures").setInputFiles({
      name: `leaf ${hue}.png`, mimeType: "image/png", buffer: Buffer.from(await drawn(page, hue), "base64"),
    });
    await step(page, "#add-finds");
  }
  const shown = page.locator("main img");
  await shown.nth(1).waitFor();
  stage.expect(await shown.evaluateAll((all) => all.every((one) => one.complete && one.naturalWidth > 0)), "both pictures are shown");
  await page.goto(`${host.address}/saved`);
  const [file] = await Promise.all([page.waitForEvent("download"), page.locator("#save-copy").click()]);
  const zip = stage.file("pictures.zip");
  await file.saveAs(zip);
  const names = execFileSync("unzip", ["-Z1", zip], { encoding: "utf8" }).trim().split("\n");
  stage.expect(names.filter((name) => name.startsWith("pictures/")).length === 2, `the copy holds ${names}`);
  await page.goto(`${host.address}/saved`);
  await page.locator("#share-copy").click();
  await page.waitForFunction(() => globalThis.handed);
  const handed = await page.evaluate(() => globalThis.handed);
  stage.expect(handed.name === file.suggestedFilename() && handed.type === "application/zip", `${handed.name} was handed on`);
  stage.expect(Buffer.from(handed.bytes).equals(readFileSync(zip)), "what is handed on is what is saved");
  await fallen(stage, page, host, zip);
  await tooLarge(stage, page, host);
  host.end();
}

/** A copy is let fall on the page, and opens beside the others. */
async function fallen(stage, page, host, zip) {
  await page.goto(`${host.address}/collections`);
  const brought = await page.evaluateHandle((text) => {
    const brought = new DataTransfer();
    const bytes = Uint8Array.from(atob(text), (sign) => sign.charCodeAt(0));
    brought.items.add(new File([bytes], "copy.zip", { type: "application/zip" }));
    return brought;
  }, readFileSync(zip).toString("base64"));
  await Promise.all([page.waitForNavigation(), page.dispatchEvent("main", "drop", { dataTransfer: brought })]);
  stage.expect(page.url().endsWith("#/finds"), `a copy that falls on the page is opened: ${page.url()}`);
  await page.locator("main img").nth(1).waitFor();
  await page.goto(`${host.address}/saved`);
  const [again] = await Promise.all([page.waitForEvent("download"), page.locator("#save-copy").click()]);
  await again.saveAs(stage.file("fallen.zip"));
  stage.expect(readFileSync(stage.file("fallen.zip")).equals(readFileSync(zip)), "it holds the same, byte for byte");
}

async function tooLarge(stage, page, host) {
  await page.goto(`${host.address}/finds`);
  // It only says that it is so large: nobody may read it.
  await page.evaluate(() => {
    const large = new File(["leaf"], "large.jpg", { type: "image/jpeg" });
    Object.defineProperty(large, "size", { value: 2 ** 31 });
    large.arrayBuffer = () => { throw new Error("it was read"); };
    const entries = FormData.prototype[Symbol.iterator];
    FormData.prototype[Symbol.iterator] = function* () {
      for (const [field, entry] of entries.call(this)) yield [field, typeof entry === "string" ? entry : large];
    };
  });
  await step(page, "#add-finds");
  const said = await page.textContent("main");
  stage.expect(/more than \d+ MiB/.test(said), `what is too large is refused: ${said.slice(0, 200)}`);
  await stage.look(page, "too large");
}

const step = (page, button) => Promise.all([page.waitForNavigation(), page.locator(button).click()]);

/** A drawn picture, as base64 of a PNG. */
const drawn = (page, hue) => page.evaluate(async (hue) => {
  const canvas = new OffscreenCanvas(600, 400);
  const pen = canvas.getContext("2d");
  pen.fillStyle = `hsl(${hue} 50% 50%)`;
  pen.ellipse(300, 200, 200, 90, 0, 0, 7);
  pen.fill();
  const bytes = new Uint8Array(await (await canvas.convertToBlob({ type: "image/png" })).arrayBuffer());
  return btoa(String.fromCharCode(...bytes));
}, hue);
