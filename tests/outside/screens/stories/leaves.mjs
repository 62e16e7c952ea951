// Leaves are kept one by one: a table with a row a leaf comes in, one leaf is far from the others, a
// child sees it, says that it was measured wrongly, and the range in the table follows; narrow, in
// German, by the keyboard, and without scripts.
import { LAPTOP, NARROW, PHONE } from "../stage.mjs";

/** Invented leaves: elm e is far from the others. */
const LEAVES = ["kind\tleaf\ttree\twhich part\tblade length (mm)", "elm\ta\tgate\tsun\t50", "elm\tb\tgate\tsun\t52",
  "elm\tc\tpond\tshade\t54", "elm\td\tpond\t\t56", "elm\te\tpond\t\t140", "oak\tf\thill\t\t90", "oak\tg\thill\t\t95"].join("\n");

async function taken(page, host) {
  await page.goto(`${host.address}/finds`);
  await page.locator("#table").fill(LEAVES);
  await page.locator("#rows-leaves").check();
  await Promise.all([page.waitForNavigation(), page.locator("#take-table-button").click()]);
}

export async function leaves(stage) {
  const host = await stage.open("leaves.spinney");
  const page = await stage.window(host, LAPTOP);
  await taken(page, host);
  await Promise.all([page.waitForNavigation(), page.locator("#to-leaves").click()]);
  stage.expect((await page.textContent("main")).includes("50–140 mm, 5 leaves of 2 plants"), "how far they reach");
  stage.expect(await page.locator(".strip circle").count() === 10, "a dot a leaf, those of sun and shade again");
  stage.expect(await page.locator(".strip circle.far").count() === 1, "a ring is far from the others");
  stage.expect((await page.textContent("#far")).includes("elm, blade length: 140 mm. The others are 50–56 mm."), "and is named");
  await stage.look(page, "leaves");
  await page.locator("#wrong-5-1").focus();
  await Promise.all([page.waitForNavigation(), page.keyboard.press("Enter")]);
  stage.expect(await page.locator("#far").count() === 0, "nobody is asked again");
  stage.expect((await page.textContent("main")).includes("50–56 mm, 4 leaves"), "the range follows");
  await stage.look(page, "leaves-not-counted");
  await page.goto(`${host.address}/table`);
  stage.expect(await page.locator('#cells td > input:not([type=hidden])[value="50-56 mm (4 seen on 2 plants)"]').count() === 1, "so it does in the table");

  const narrow = await stage.window(host, NARROW);
  await narrow.goto(`${host.address}/leaves`);
  await Promise.all([narrow.waitForNavigation(), narrow.locator("#again-5-1").click()]);
  await stage.look(narrow, "leaves-narrow");
  await narrow.goto(`${host.address}/leaves/5`);
  await narrow.locator("#leaf-plant").fill("by the pond");
  await Promise.all([narrow.waitForNavigation(), narrow.locator("#leaf-keep").click()]);
  stage.expect(await narrow.locator("#leaf-plant").inputValue() === "by the pond", "it is written down");
  await stage.look(narrow, "one-leaf-narrow");

  const german = await stage.window(host, { ...PHONE, locale: "de-DE" });
  await german.goto(`${host.address}/leaves`);
  stage.expect((await german.textContent("#far")).includes("Die anderen haben 50–56 mm."), "in German");
  await stage.look(german, "leaves-german");
  const dark = await stage.window(host, { ...LAPTOP, colorScheme: "dark" });
  await dark.goto(`${host.address}/leaves`);
  await stage.look(dark, "leaves-dark");
  host.end();
}

/** The same without scripts. */
export async function leavesBare(stage) {
  const host = await stage.open("leaves-bare.spinney");
  const page = await stage.window(host, { ...LAPTOP, javaScriptEnabled: false });
  await taken(page, host);
  await page.goto(`${host.address}/leaves`);
  await page.locator("#kind-5-1").selectOption({ label: "oak" });
  await Promise.all([page.waitForNavigation(), page.locator("#move-5-1").click()]);
  stage.expect((await page.textContent("main")).includes("90–140 mm, 3 leaves of 2 plants"), "it went over to the other kind");
  host.end();
}
