// A part of the stories at the screens: a find that two groups put on different heaps.
//
// From a page on the program, whose table says of some finds whether their edge is toothed, to
// a third find that one group puts to yes and the other to no; the page ends at the first
// group's heaps, where the card says so.

/** Two groups sort a find that the table knows nothing of, one to yes and one to no. */
export async function sortedBothWays(stage, page, host) {
  const step = (click) => Promise.all([page.waitForNavigation(), click]);
  await page.goto(`${host.address}/finds`);
  await page.locator("#table").fill("kind\tedge\nash\t");
  await step(page.locator("#take-table button").last().click());
  for (const [at, side] of [[1, "yes"], [2, "no"]]) {
    await page.goto(`${host.address}/heaps`);
    await page.evaluate(() => document.querySelectorAll("details").forEach((one) => { one.open = true; }));
    await page.locator("#key-name").fill(`Group ${at}`);
    await step(page.getByRole("button", { name: "Begin with two heaps" }).click());
    await page.locator("#words").fill("Is the edge toothed?");
    await step(page.locator("#ask").click());
    await step(page.locator("#reads-0").click());
    await page.locator(`#${side}-3`).click();
    await page.locator(`.heap.${side} #card-3`).waitFor();
  }
  await page.goto(`${host.address}/heaps?key=1`);
  stage.expect((await page.textContent("#card-3")).includes("Group 2 put it on the no heap."), "the other group hears it");
}
