// Every screen with the demo: narrow, wide, dark, at double size, in German, calm.
import { LAPTOP, NARROW, PHONE } from "../stage.mjs";

export async function everyScreen(stage) {
  const host = await stage.open("screens.spinney");
  const setup = await stage.window(host, LAPTOP);
  await setup.goto(`${host.address}/finds`);
  const folder = new URL("../../../../crates/spinney/scenarios/hedge_walk/", import.meta.url);
  const files = ["table", "characters", "kinds", "about"].map((name) => new URL(`${name}.csv`, folder).pathname);
  await setup.locator("#table-file").setInputFiles(files);
  await Promise.all([setup.waitForNavigation(), setup.locator("#take-table button").last().click()]);
  await setup.goto(`${host.address}/key`);
  await setup.locator("#new-name").fill("Our key");
  await Promise.all([setup.waitForNavigation(), setup.locator("#start-finished").click()]);
  const screens = ["/finds", "/finds/1", "/measure", "/leaves", "/forget/kind/1", "/share-out", "/newcomer", "/heaps?key=1", "/heaps/answers?key=1",
    "/copy?key=1", "/copy/new", "/table", "/table/4", "/key?key=1", "/key?key=1&as=tree", "/words?key=1",
    "/try?key=1", "/try?key=1&at=y", "/print?key=1", "/done", "/saved", "/nothing-here"];
  for (const [name, settings] of [["narrow", NARROW], ["laptop", LAPTOP],
    ["dark", { ...LAPTOP, colorScheme: "dark" }], ["double", { viewport: { width: 683, height: 384 } }],
    ["german", { ...PHONE, locale: "de-DE" }],
    ["calm", { ...LAPTOP, reducedMotion: "reduce", forcedColors: "active" }]]) {
    const page = await stage.window(host, settings);
    for (const path of screens) {
      await page.goto(`${host.address}${path}`).catch((error) => stage.say(`${path}: ${error.message}`));
      await stage.look(page, `${name}${path.replaceAll(/[/?=&]/g, "_")}`);
    }
    await page.context().close();
  }
  host.end();
}
