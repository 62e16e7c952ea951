// From nothing but two names to a table with questions that others have thought of: ticked by the
// names that they go by, on a narrow screen and on a laptop.
import { LAPTOP, NARROW } from "../stage.mjs";

export async function fromNothing(stage) {
  const host = await stage.open("nothing.spinney");
  const page = await stage.window(host, NARROW);
  await page.goto(`${host.address}/finds`);
  await page.locator("#names").fill("holly\nsallow");
  await step(page, "#add-finds");
  await page.goto(`${host.address}/table`);
  await stage.look(page, "offered, narrow");
  for (const group of ["Lobes", "Animals from the pond"]) await page.locator("summary", { hasText: group }).click();
  stage.expect(await page.getByText("With large parts that stick out").isVisible(), "a word is explained where it is met");
  stage.expect(await page.locator("details.starters[open] svg").count() > 5, "and drawn");
  await stage.look(page, "offered, opened");
  await page.getByLabel("form of the leaf", { exact: true }).check();
  await page.getByLabel("lobes", { exact: true }).check();
  await page.getByLabel("number of lobes", { exact: true }).check();
  await step(page, "#take-starters");
  const heads = await page.locator("#cells thead th a").allTextContents();
  stage.expect(heads.length === 3 && heads[2].includes("number of lobes"), `the columns are ${heads.join(", ")}`);
  stage.expect(!(await page.locator("#starters").getAttribute("open")), "the list is folded once there is a table");
  await page.goto(`${host.address}/table/3`);
  stage.expect(await page.locator("#f-applies-when").inputValue() === "lobes = lobed", "only a lobed leaf has lobes to count");
  await page.setViewportSize(LAPTOP.viewport);
  await page.goto(`${host.address}/table`);
  await page.locator("#starters > summary").click();
  await page.locator("summary", { hasText: "Lobes" }).click();
  stage.expect(await page.getByLabel("lobes (in the table already)", { exact: true }).isDisabled(), "what is there is not offered again");
  await stage.look(page, "offered, laptop");
  host.end();
}

const step = (page, button) => Promise.all([page.waitForNavigation(), page.locator(button).click()]);
