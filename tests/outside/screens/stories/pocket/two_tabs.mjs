// Two windows of the page that holds everything, on one collection: neither loses the other's
// edits, and one whose collection the other has removed says so.
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

async function step(page, fill, button) {
  await fill();
  await Promise.all([page.waitForNavigation(), page.locator(button).click()]);
}
