// Started bare, the collection is in memory only, and the screens say so. A copy is saved and
// opened in an empty file; where a file holds a collection, nothing is written over.
import { LAPTOP, NARROW } from "../stage.mjs";

export async function aCopy(stage) {
  const bare = await stage.open();
  const page = await stage.window(bare, LAPTOP);
  await page.goto(`${bare.address}/heaps`);
  stage.expect(await page.getByText("Kept in memory only").isVisible(), "it says where it is kept");
  await page.goto(`${bare.address}/finds`);
  await page.locator("#names").fill("wych elm");
  await Promise.all([page.waitForNavigation(), page.locator("#add-finds").click()]);
  const [file] = await Promise.all([page.waitForEvent("download"), page.locator("#foot-save").click()]);
  stage.expect(/^hedge-and-street-walk-[a-z-]*-\d+-[a-z]+-\d{4}\.zip$/.test(file.suggestedFilename()),
    `the copy is called ${file.suggestedFilename()}`);
  const copy = stage.file("copy.zip");
  await file.saveAs(copy);
  await page.goto(`${bare.address}/saved`);
  await stage.look(page, "in-memory");

  const empty = await stage.open("copied.spinney");
  const there = await stage.window(empty, NARROW);
  await there.goto(empty.address);
  stage.expect(!await there.getByText("Kept in memory only").isVisible(), "a file is no memory");
  await Promise.all([there.waitForNavigation(), there.getByRole("link", { name: "Open a copy you saved before" }).click()]);
  await there.locator("#copy-file").setInputFiles(copy);
  await Promise.all([there.waitForNavigation(), there.locator("#open-copy").click()]);
  stage.expect(await there.getByText("The copy is open.").isVisible(), "the copy is open");
  await stage.look(there, "opened");
  stage.expect(!await there.locator("#open-copy").isVisible(), "and nothing is written over it");
  await there.goto(`${empty.address}/finds`);
  stage.expect((await there.textContent("main")).includes("wych elm"), "everything is there");
  empty.end();

  // In memory it takes the place of what is there, once somebody says so.
  const other = await stage.open();
  const again = await stage.window(other, LAPTOP);
  await again.goto(`${other.address}/saved`);
  await again.locator("#copy-file").setInputFiles(copy);
  await again.locator("#sure").check();
  await Promise.all([again.waitForNavigation(), again.locator("#open-copy").click()]);
  await again.goto(`${other.address}/finds`);
  stage.expect((await again.textContent("main")).includes("wych elm"), "it took the place of the demo");
  other.end();
  bare.end();
}
