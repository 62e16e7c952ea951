// The page that holds everything keeps several collections: they are there after the page was
// closed, they go out as copies and come in again, the program opens them line for line the same,
// and one that is removed is gone. Addresses, back and forward do what they do on pages.
import { execFileSync } from "node:child_process";
import { mkdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";

import { LAPTOP } from "../../stage.mjs";

export async function collections(stage) {
  const host = await stage.open("several");
  const page = await stage.window(host, LAPTOP);
  await add(page, "holly");
  await page.goto(`${host.address}/collections`);
  await stage.look(page, "one");
  await step(page, page.locator("#begin-walk").click());
  stage.expect(page.url().endsWith("#/key"), "the invented walk opens at its key");
  stage.expect((await page.textContent("main")).includes("12 kinds"), "its key is there");
  await page.goto(`${host.address}/collections`);
  const listed = await page.locator(".collections li button.main").allTextContents();
  stage.expect(listed.length === 2 && listed[0].includes("invented"), `the list has ${listed.join("; ")}`);
  await stage.look(page, "two");
  await history(stage, page, host);
  await again(stage, page, host);
  await copies(stage, page, host);
  await removed(stage, page, host);
  host.end();
}

const step = (page, act) => Promise.all([page.waitForNavigation(), act]);

async function add(page, names) {
  await page.locator("#names").fill(names);
  await step(page, page.locator("#add-finds").click());
}

/** Back, forward, a place in a page, an address typed, another language. */
async function history(stage, page, host) {
  await step(page, page.locator("button.main", { hasText: "invented" }).click());
  await step(page, page.getByRole("link", { name: "Table", exact: true }).click());
  await page.evaluate(() => scrollTo(0, 300));
  // Pressed where it is: a click would scroll to it first.
  await step(page, page.getByRole("link", { name: "Words", exact: true }).evaluate((link) => link.click()));
  const title = () => page.evaluate(() => document.querySelector("h1").textContent);
  const words = await title();
  await step(page, page.goBack());
  await page.waitForFunction((words) => document.querySelector("h1").textContent !== words, words);
  stage.expect(page.url().endsWith("#/table"), `back leads to ${page.url()}`);
  stage.expect(await page.evaluate(() => scrollY) > 100, "back is where it was scrolled to");
  await step(page, page.goForward());
  await page.waitForFunction((words) => document.querySelector("h1").textContent === words, words);
  await page.goto(`${host.address}/heaps?key=1`);
  await page.getByRole("link", { name: "To the work" }).focus();
  await page.keyboard.press("Enter");
  stage.expect(await page.evaluate(() => document.activeElement.id) === "work", "a link within the page has the focus go there");
  const link = await page.getByRole("link", { name: "Key", exact: true }).first().getAttribute("href");
  stage.expect(link.startsWith("#/key"), "a link can be opened in a window of its own");
  await step(page, page.getByRole("link", { name: "Deutsch" }).click());
  stage.expect(await page.evaluate(() => document.documentElement.lang) === "de", "the screens speak German");
  await step(page, page.getByRole("link", { name: "English" }).click());
  stage.expect(await page.evaluate(() => document.documentElement.lang) === "en", "and English again");
}

/** Closed and opened again, in this window and in another. */
async function again(stage, page, host) {
  await page.reload();
  await page.getByRole("heading", { level: 1 }).filter({ hasText: "Two heaps" }).waitFor();
  stage.expect(page.url().includes("#/heaps"), "a page that is loaded again is where it was");
  const other = await stage.window(host, LAPTOP);
  await other.goto(`${host.address}/finds`);
  stage.expect((await other.textContent(".collection")).includes("invented"), "another window has what was open last");
  await other.close();
}

/** A copy goes out, into the program, and back. */
async function copies(stage, page, host) {
  await page.goto(`${host.address}/saved`);
  await stage.look(page, "saved");
  stage.expect((await page.textContent("#last-copy")).includes("No copy was saved"), "no copy was saved yet");
  const [file] = await Promise.all([page.waitForEvent("download"), page.locator("#save-copy").click()]);
  const zip = stage.file("walk.zip");
  await file.saveAs(zip);
  await page.goto(`${host.address}/saved`);
  stage.expect((await page.textContent("#last-copy")).includes(file.suggestedFilename()), "it says where the copy went");
  const folder = stage.file("program");
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder);
  const [walk, back] = [join(folder, "walk.spinney"), join(folder, "back.zip")];
  execFileSync(stage.program, ["unpack", zip, walk]);
  execFileSync(stage.program, ["pack", walk, back]);
  stage.expect(names(zip).join() === names(back).join(), `the copies hold ${names(zip)} and ${names(back)}`);
  const same = names(zip).every((name) => part(zip, name).equals(part(back, name)));
  stage.expect(same, "the program has every line as the page has it");
  await page.goto(`${host.address}/collections`);
  await page.locator("#copy-file").setInputFiles(back);
  await step(page, page.locator("#begin-copy").click());
  stage.expect((await page.textContent("main")).includes("hazel"), "the program's copy opens on the page");
  await page.goto(`${host.address}/saved`);
  const [third] = await Promise.all([page.waitForEvent("download"), page.locator("#save-copy").click()]);
  await third.saveAs(stage.file("third.zip"));
  stage.expect(readFileSync(stage.file("third.zip")).equals(readFileSync(zip)), "and is saved as the same bytes");
  await page.goto(`${host.address}/collections`);
  await page.locator("#copy-file").setInputFiles({ name: "x.zip", mimeType: "application/zip", buffer: Buffer.from("leaf") });
  await step(page, page.locator("#begin-copy").click());
  stage.expect((await page.textContent("main")).includes("not a copy of a collection"), "what is no copy is refused");
  await page.goto(`${host.address}/finds`);
  stage.expect((await page.textContent("main")).includes("hazel"), "what was open before is open, with all that it has");
  await page.goto(`${host.address}/collections`);
  stage.expect(await page.locator(".collections li button.main").count() === 3, "nothing is left of the attempt");
}

const names = (zip) => execFileSync("unzip", ["-Z1", zip], { encoding: "utf8" }).trim().split("\n");
const part = (zip, name) => execFileSync("unzip", ["-p", zip, name]);

async function removed(stage, page, host) {
  await page.goto(`${host.address}/collections`);
  await page.locator("summary", { hasText: "Remove a collection" }).click();
  await page.locator("#remove-which").selectOption({ index: 1 });
  await page.locator("#sure").check();
  await step(page, page.locator("#remove").click());
  stage.expect(await page.getByRole("status").filter({ hasText: "no longer in this browser" }).count() === 1, "it says what is gone");
  stage.expect(await page.locator(".collections li button.main").count() === 2, "it is gone");
  await stage.look(page, "removed");
}
