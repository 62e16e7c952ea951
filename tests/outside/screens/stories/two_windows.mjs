// Two windows at once lose nothing, and the same cell is asked back.
import { LAPTOP } from "../stage.mjs";

export async function twoWindows(stage) {
  const host = await stage.open("windows.spinney");
  const one = await stage.window(host, { ...LAPTOP, javaScriptEnabled: false });
  const other = await stage.window(host, { ...LAPTOP, javaScriptEnabled: false });
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
  stage.expect(await one.locator("[name=c-1-1]").inputValue() === "toothed", "the first window's cell is there");
  stage.expect(await one.locator("[name=c-2-2]").inputValue() === "very shiny", "the second window's cell is there");
  // The same cell in both: both texts are seen, and a person decides.
  await one.goto(`${host.address}/table`);
  await other.goto(`${host.address}/table`);
  await one.locator("[name=c-1-2]").fill("matt");
  await other.locator("[name=c-1-2]").fill("glossy");
  for (const page of [one, other]) {
    await Promise.all([page.waitForNavigation(), page.locator("#cells button").first().click()]);
  }
  const asked = await other.content();
  stage.expect(asked.includes("matt") && asked.includes("glossy"), "both texts of one cell are there");
  // Two fields of one kind: an old page takes nothing back.
  await one.goto(`${host.address}/finds/1`);
  await other.goto(`${host.address}/finds/1`);
  await one.locator("#about-caution").fill("Look, do not taste.");
  await other.locator("#about-where").fill("by the bridge (invented)");
  for (const page of [one, other]) {
    await Promise.all([page.waitForNavigation(), page.locator("#about-keep").click()]);
  }
  await one.goto(`${host.address}/finds/1`);
  stage.expect(await one.locator("#about-caution").inputValue() === "Look, do not taste.", "the caution is kept");
  stage.expect((await one.locator("#about-where").inputValue()).startsWith("by the bridge"), "the place is kept");
  // One heap: a card sorted for another question is refused.
  await one.goto(`${host.address}/heaps`);
  await one.locator("#key-name").fill("Group Blue");
  await Promise.all([one.waitForNavigation(), one.getByRole("button", { name: "Begin with two heaps" }).click()]);
  await other.goto(`${host.address}/heaps?key=1`);
  for (const [page, words] of [[one, "Does it shine?"], [other, "Is it wavy?"]]) {
    await page.locator("#words").fill(words);
    await Promise.all([page.waitForNavigation(), page.locator("#ask").click()]);
  }
  stage.expect((await other.content()).includes("Someone changed the question here in another window"), "it is refused");
  await one.goto(`${host.address}/heaps?key=1`);
  stage.expect((await one.textContent("#asked")).includes("Does it shine?"), "the first question stands");
  // Undo on a page that has not seen what the other window did.
  await one.goto(`${host.address}/finds/1`);
  await other.goto(`${host.address}/finds/1`);
  await other.locator("#about-when").fill("in October");
  await Promise.all([other.waitForNavigation(), other.locator("#about-keep").click()]);
  const undo = one.locator("form[action='/do/undo'] button");
  await Promise.all([one.waitForNavigation(), undo.click()]);
  stage.expect((await one.textContent("main")).includes("in October"), "it says what it would take back");
  await one.goto(`${host.address}/finds/1`);
  stage.expect(await one.locator("#about-when").inputValue() === "in October", "nothing was taken back unseen");
  host.end();
  // What was acknowledged is there after a new start.
  const again = await stage.open("windows.spinney");
  const page = await stage.window(again, LAPTOP);
  await page.goto(`${again.address}/table`);
  stage.expect(await page.locator("[name=c-1-1]").inputValue() === "toothed", "it is kept");
  again.end();
}
