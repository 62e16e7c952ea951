// Two windows of the page that holds everything, on one collection: neither loses the other's
// edits, one cell that both write into is asked back, and a window whose collection the other has
// removed says so.
import { LAPTOP } from "../../stage.mjs";

export async function twoTabs(stage) {
  const host = await stage.open("tabs");
  const one = await stage.window(host, LAPTOP);
  const other = await stage.window(host, LAPTOP);
  await other.goto(`${host.address}/finds`);
  await step(one, () => one.locator("#names").fill("holly"), "#add-finds");
  await step(other, () => other.locator("#names").fill("ivy"), "#add-finds");
  stage.expect((await other.textContent("main")).includes("holly"), "the second window has the first one's find");
  await one.goto(`${host.address}/table`);
  await other.goto(`${host.address}/table`);
  // Both at the same moment: both are kept, one after the other.
  for (let round = 0; round < 10; round += 1) {
    await one.goto(`${host.address}/finds`);
    await other.goto(`${host.address}/finds`);
    await one.locator("#names").fill(`one ${round}`);
    await other.locator("#names").fill(`other ${round}`);
    await Promise.all([
      one.waitForNavigation(), other.waitForNavigation(),
      one.locator("#add-finds").click(), other.locator("#add-finds").click(),
    ]);
  }
  await one.goto(`${host.address}/finds`);
  const finds = await one.textContent("main");
  const lost = [...Array(10).keys()].flatMap((round) => [`one ${round}`, `other ${round}`])
    .filter((name) => !finds.includes(name));
  stage.expect(lost.length === 0, `lost: ${lost.join(", ")}`);
  await oneCell(stage, host, one, other);
  // A window whose collection was removed by the other says so.
  await other.goto(`${host.address}/collections`);
  await other.locator("summary", { hasText: "Remove a collection" }).click();
  await other.locator("#remove-which").selectOption({ index: 1 });
  await other.locator("#sure").check();
  await Promise.all([other.waitForNavigation(), other.locator("#remove").click()]);
  await one.getByRole("link", { name: "Heaps", exact: true }).click();
  await one.getByRole("alert").filter({ hasText: "not in this browser any more" }).waitFor();
  await stage.look(one, "gone");
  host.end();
}

/** The same cell in both windows: both texts are seen, and a person decides. */
async function oneCell(stage, host, one, other) {
  await one.locator("#table").fill("kind\tedge\tshine\nsallow\twavy\tdull\nyew\tsmooth\tshiny");
  await Promise.all([one.waitForNavigation(), one.locator("#take-table button").last().click()]);
  for (const page of [one, other]) await page.goto(`${host.address}/table`);
  const cell = (page) => page.locator("#cells tr", { hasText: "sallow" }).locator("input[id^=i-]").nth(1);
  for (const [page, text] of [[one, "matt"], [other, "glossy"]]) {
    await cell(page).fill(text);
    await stage.kept(page, () => cell(page).press("Tab"));
  }
  const asked = await other.textContent("#cells");
  stage.expect(asked.includes("matt") && asked.includes("glossy"), `both texts of one cell are there: ${asked}`);
  await stage.look(other, "one cell");
}

async function step(page, fill, button) {
  await fill();
  await Promise.all([page.waitForNavigation(), page.locator(button).click()]);
}
