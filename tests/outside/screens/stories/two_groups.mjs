// Two groups' tables, their disagreement shown on the spot, and a person decides.
import { sortedBothWays } from "../sorted_both_ways.mjs";
import { LAPTOP } from "../stage.mjs";

export async function twoGroups(stage) {
  const host = await stage.open("groups.spinney");
  const page = await stage.window(host, LAPTOP);
  for (const [source, edge] of [["group Blue", "toothed"], ["group Red", "smooth"]]) {
    await page.goto(`${host.address}/finds`);
    await page.locator("#table").fill(`kind\tedge\nsallow\t${edge}\nyew\tsmooth`);
    await page.locator("#source").fill(source);
    await Promise.all([page.waitForNavigation(), page.locator("#take-table button").last().click()]);
  }
  await page.goto(`${host.address}/finds`);
  const main = await page.textContent("body");
  stage.expect(main.includes("group Blue") && main.includes("group Red"), "both groups are named");
  await stage.look(page, "disagree");
  await page.goto(`${host.address}/table`);
  await stage.look(page, "table");
  // Tab goes from cell to cell, but into what is to be decided in one.
  await page.locator("#i-1-1").focus();
  await page.keyboard.press("Tab");
  const inside = await page.evaluate(() =>
    ["BUTTON", "SUMMARY"].includes(document.activeElement.tagName) &&
    document.activeElement.closest("td")?.contains(document.getElementById("i-1-1")));
  stage.expect(inside, "the buttons of a cell are reached by Tab");
  await page.goto(`${host.address}/finds`);
  await Promise.all([page.waitForNavigation(), page.locator("form.decision button").first().click()]);
  await page.goto(`${host.address}/finds`);
  stage.expect(await page.locator("form.decision").count() === 0, "it is decided");
  await sortedBothWays(stage, page, host);
  await stage.look(page, "sorted-both-ways");
  host.end();
}
