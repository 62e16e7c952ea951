// Two leaves touch, a stalkless one lies upside down, and a card is no label but a leaf: a person puts
// all of it right with the mouse; without scripts by numbers; and takes it back.
import { LAPTOP, PHONE } from "../stage.mjs";

/** Dots per inch of the drawn scan, and millimetres in dots. */
const DPI = 150;
const MM = DPI / 25.4;

export async function putRight(stage) {
  const host = await stage.open("put_right.spinney");
  const page = await stage.window(host, LAPTOP);
  const go = (what) => Promise.all([page.waitForNavigation(), page.locator(what).click()]);
  const count = () => page.locator(".leaf-card").count();
  const blades = () => page.$$eval(".leaf-card", (all) => all.map((one) => parseFloat(one.querySelector("dd").textContent)));
  await page.goto(`${host.address}/measure`);
  const buffer = await scan(page);
  await page.locator("#scan").setInputFiles({ name: "scan.png", mimeType: "image/png", buffer });
  await page.locator("#dpi").fill(String(DPI));
  await go("#measure-do");
  stage.expect(await count() === 2, "two leaves that touch are one at first, and the card is none");
  await page.locator("#name-1").fill("hazel");
  await stage.look(page, "before");

  await go("#mend-1");
  stage.expect(await page.evaluate(() => document.querySelector("main h1").textContent.startsWith("Leaf 1")), "one leaf, large");
  await click(page, [47, 22]);
  stage.expect(await page.evaluate(() => document.activeElement.id) === "said-base", "a place for the base leads on to its button");
  await page.locator("#one-side").click();
  await click(page, [53, 38]);
  stage.expect(await page.evaluate(() => document.activeElement.id) === "other-side", "the first side leads on to the other");
  await click(page, [53, 62]);
  await stage.look(page, "two-places");
  await go("#said-two");
  stage.expect(await count() === 3, "they are two now");
  const [first, , third] = await blades();
  stage.expect(Math.abs(first - 60) < 1.5 && Math.abs(third - 60) < 1.5, `each as long as it was drawn: ${first}, ${third}`);
  stage.expect(await page.locator("#name-1").inputValue() === "hazel", "the name is still there");
  stage.expect((await page.textContent("#mends")).includes("leaf 1 is cut in two"), "and it is said");

  await page.locator("#left-out summary").click();
  await stage.look(page, "after");
  await go("#left-out button");
  stage.expect(await count() === 4, "what was left out is a leaf");
  await go("#mend-undo");
  stage.expect(await count() === 3 && await page.locator("#left-out").count() === 1, "that is taken back");

  await go("#mend-2");
  await page.locator("#base").fill("1");
  await go("#said-base");
  stage.expect(!(await page.textContent("#leaf-card-2")).includes("is a guess"), "where it begins was said by number");
  await go("#mend-2");
  await page.locator("#tip").fill("thirty");
  await go("#said-tip");
  stage.expect((await page.textContent("[role=alert]")).includes("thirty"), "what is no place is said back");
  stage.expect(await page.locator("#tip").inputValue() === "thirty", "and still stands there");
  await stage.look(page, "no-place");
  await go("#said-no-leaf");
  stage.expect(await count() === 2, "what is no leaf goes");
  await page.locator("#name-3").fill("hazel");
  await go("#measure-look");
  stage.expect(/60(\.\d)?–6\d mm|5\d–60 mm|60 mm/.test(await page.textContent("main")), "both are taken as one kind");
  await go("#measure-take");
  stage.expect(await page.locator('#cells td > input:not([type=hidden])[value$="(2 seen)"]').count() > 0, "and stand in the table");

  await page.goto(`${host.address}/measure`);
  await page.locator("#scan").setInputFiles({ name: "scan.png", mimeType: "image/png", buffer });
  await go("#measure-do");
  stage.expect((await page.textContent(".no-scale")).includes("Shape and ratios only"), "nobody said how large a dot is");
  await page.locator("#ruler summary").click();
  await click(page, [20, 100]);
  await click(page, [160, 100]);
  stage.expect(await page.evaluate(() => document.activeElement.id) === "ruler-mm", "two marks of the ruler lead on to its length");
  await page.keyboard.type("140");
  await stage.look(page, "ruler");
  await go("#measure-ruler");
  const byRuler = await blades();
  stage.expect(Math.abs(byRuler[1] - 60) < 1, `by the ruler it is as long: ${byRuler}`);
  stage.expect((await page.textContent("#mends")).includes("a ruler of 140 mm"), "and that is said");
  await go("#mend-undo");
  stage.expect((await page.textContent(".no-scale")).includes("Shape and ratios only"), "it is taken back");

  const phone = await stage.window(host, { ...PHONE, javaScriptEnabled: false });
  const tap = (what) => Promise.all([phone.waitForNavigation(), phone.locator(what).click()]);
  await phone.goto(`${host.address}/measure`);
  await phone.locator("#scan").setInputFiles({ name: "scan.png", mimeType: "image/png", buffer });
  await phone.locator("#dpi").fill(String(DPI));
  await tap("#measure-do");
  await tap("#mend-1");
  await phone.screenshot({ path: stage.file("putRight-phone.png"), fullPage: true });
  await phone.locator("#part-of").selectOption("2");
  await tap("#said-part-of");
  stage.expect(await phone.locator(".leaf-card").count() === 1, "joined by hand, without scripts");
  host.end();
}

/** Clicks on a place of the scan, in mm. */
async function click(page, place) {
  const [x, y] = await page.evaluate(([x, y]) => {
    const point = new DOMPoint(x, y).matrixTransform(document.querySelector("svg.places").getScreenCTM());
    return [point.x, point.y];
  }, place.map((mm) => mm * MM));
  await page.mouse.click(x, y);
}

/** Two ellipses side by side that touch, of which only one has a stalk, so that nobody cuts them apart but a person;
 * one by itself without a stalk, and a card. */
async function scan(page) {
  const drawn = await page.evaluate((mm) => {
    const canvas = document.createElement("canvas");
    [canvas.width, canvas.height] = [170 * mm, 125 * mm];
    const pen = canvas.getContext("2d");
    pen.fillStyle = "#f4f3ee";
    pen.fillRect(0, 0, canvas.width, canvas.height);
    pen.fillStyle = pen.strokeStyle = "#3f6b2c";
    pen.lineWidth = 1.3 * mm;
    for (const [x, stalk] of [[40, 1], [66, 0], [125, 0]]) {
      pen.beginPath();
      pen.ellipse(x * mm, 50 * mm, 13.2 * mm, 30 * mm, 0, 0, 7);
      pen.fill();
      if (!stalk) continue;
      pen.beginPath();
      pen.moveTo(x * mm, 79 * mm);
      pen.lineTo(x * mm, 95 * mm);
      pen.stroke();
    }
    pen.fillRect(30 * mm, 105 * mm, 40 * mm, 12 * mm);
    return canvas.toDataURL("image/png").split(",")[1];
  }, MM);
  return Buffer.from(drawn, "base64");
}
