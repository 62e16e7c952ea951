// Sharing out among groups: anew is another proposal at the same place of the page, with the
// numbers that were typed; and after the keys were begun it leads on to each group's sheets.
import { PHONE } from "../stage.mjs";

/** Invented: what it says of the kinds is not meant to be true. */
const TABLE = [
  "kind\tedge\tlobed\tshine\tpaired", "sallow\twavy\tno\tdull\tno", "yew\tsmooth\tno\tshiny\tno",
  "alder\ttoothed\tno\tdull\tno", "guelder rose\ttoothed\tyes\tdull\tyes",
  "spindle\ttoothed\tno\tdull\tyes", "box\tsmooth\tno\tshiny\tyes", "aspen\twavy\tyes\tdull\tno",
  "walnut\tsmooth\tno\tdull\tno",
].join("\n");

export async function shareOut(stage) {
  const host = await stage.open("share.spinney");
  const page = await stage.window(host, PHONE);
  await page.goto(host.address);
  await page.getByRole("textbox", { name: "Or paste a table: a find a row, headings above" }).fill(TABLE);
  await press(page, "button", "Take the table in");
  await press(page, "link", "Share out among groups");
  await page.getByRole("spinbutton", { name: "Groups" }).fill("3");
  await page.getByRole("spinbutton", { name: "Finds a group" }).fill("4");
  await press(page, "button", "Share out again");
  const first = await sets(page);
  const again = page.getByRole("button", { name: "Share out again" });
  await page.evaluate(() => scrollTo({ top: 90, behavior: "instant" }));
  await Promise.all([page.waitForNavigation(), again.tap()]);
  const at = await page.evaluate(() => scrollY);
  stage.expect(at === 90, `the page stays where it was, at 90 (${at})`);
  const second = await sets(page);
  stage.expect(first.length === 3 && second.length === 3, "three groups are still three");
  stage.expect(await page.getByRole("spinbutton", { name: "Finds a group" }).inputValue() === "4", "four finds are still four");
  stage.expect([...first].sort().join() !== [...second].sort().join(), "anew is another proposal");
  await stage.look(page, "proposal");
  await press(page, "button", "Begin a key for each group");
  const begun = await page.getByRole("heading", { name: "Sets that groups have" }).boundingBox();
  // The letters may come later than the page, and move it by a line.
  stage.expect(begun.y > -40 && begun.y < 500, `what was begun is in sight, at ${begun.y}`);
  await stage.look(page, "begun");
  const [sheets] = await Promise.all([
    page.waitForEvent("download"), page.getByRole("link", { name: "Sheets for the group" }).first().tap(),
  ]);
  stage.expect((await stage.words(sheets, "set.pdf")).includes("Group 1"), "the first group has its sheets");
  await Promise.all([page.waitForNavigation(), page.getByRole("link", { name: "Sort into heaps" }).first().tap()]);
  stage.expect((await page.textContent("main")).includes("here: 4 kinds"), "the first group sorts its four");
  await press(page, "link", "Print");
  stage.expect((await page.textContent("main")).includes("this key has no question"), "nothing is printed of nothing");
  await stage.look(page, "nothing-to-print");
  host.end();
}

async function press(page, role, name) {
  await Promise.all([page.waitForNavigation(), page.getByRole(role, { name, exact: true }).first().tap()]);
}

/** Who lies in each proposed set. */
function sets(page) {
  return page.locator("form ul.sets > li.set").evaluateAll((all) => all.map((set) =>
    [...set.querySelectorAll(".slip .name")].map((name) => name.textContent).join(" ")));
}
