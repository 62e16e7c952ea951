// Somebody brings a find that is not in the key: nothing that was typed is lost on the way, and
// it gets a place beside the kind that it was taken for.
import { PHONE } from "../stage.mjs";

export async function newcomer(stage) {
  const host = await stage.open("newcomer.spinney");
  const page = await stage.window(host, PHONE);
  await page.goto(`${host.address}/finds`);
  const folder = new URL("../../../../crates/spinney/scenarios/hedge_walk/", import.meta.url);
  const files = ["table", "characters"].map((name) => new URL(`${name}.csv`, folder).pathname);
  await page.locator("#table-file").setInputFiles(files);
  await Promise.all([page.waitForNavigation(), page.locator("#take-table button").last().click()]);
  const go = (what) => Promise.all([page.waitForNavigation(), page.locator(what).click()]);
  await page.goto(`${host.address}/newcomer`);
  await go("#newcomer-key");
  await page.locator("#newcomer-name").fill("dewberry");
  await go("#newcomer-walk");
  for (let steps = 0; steps < 20 && await page.locator("#walk-no").count(); steps += 1) {
    await stage.look(page, `walk-${steps}`);
    const hand = (await page.textContent("h1")).includes("hand");
    await go(hand ? "#walk-yes" : "#walk-no");
  }
  stage.expect((await page.textContent("h1")).includes("bramble"), "it comes out at bramble");
  await page.locator("#d-name").fill("underside");
  await page.locator("#d-ours").fill("white");
  await page.locator("#d-theirs-12").fill("green");
  const [ours, theirs] = await page.$$eval(".cards.two .card", (all) => all.map((one) => one.getBoundingClientRect().top));
  stage.expect(ours === theirs, "the two cards lie side by side");
  await stage.look(page, "cards");
  await go("#newcomer-slot");
  stage.expect((await page.textContent("main")).includes("Nothing is kept yet."), "it is only shown");
  await stage.look(page, "shown");
  await go("#newcomer-again");
  stage.expect(await page.locator("#d-ours").inputValue() === "white", "what was typed is there again");
  await go("#newcomer-slot");
  await page.locator("#newcomer-picture").setInputFiles({ name: "dewberry.png", mimeType: "image/png",
    buffer: await page.screenshot() });
  await go("#newcomer-keep");
  stage.expect((await page.textContent("h1")).includes("dewberry has a place"), "it has a place");
  stage.expect(await page.locator(".cards.two img").count() === 1, "its picture is on its card");
  await stage.look(page, "kept");
  host.end();
}
