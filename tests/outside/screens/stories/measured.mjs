// A teacher measures a scan: three drawn leaves are named by the keyboard alone and become finds
// with ranges in the table; a scan that does not know its size has no lengths until somebody
// says it; without scripts all of it is forms.
import { crc32 } from "../crc32.mjs";
import { LAPTOP, NARROW, PHONE } from "../stage.mjs";

/** Of the drawn leaves: how long each blade is, in mm. */
const BLADES = [52, 61, 38];

export async function measured(stage) {
  const host = await stage.open("measured.spinney");
  const page = await stage.window(host, LAPTOP);
  const go = (what) => Promise.all([page.waitForNavigation(), page.locator(what).click()]);
  await page.goto(`${host.address}/finds`);
  await page.locator("#names").fill("ash");
  await go("#add-finds");
  await go("#to-measure");
  await stage.look(page, "choose");
  const drawn = await scan(page);
  const named = { name: "scan.png", mimeType: "image/png", buffer: sized(drawn, 150) };
  await drop(page, drawn);
  stage.expect(await page.$eval("#scan", (one) => one.files.length) === 1, "what is dropped on the form is chosen");
  await page.locator("#scan").setInputFiles(named);
  await go("#measure-do");
  stage.expect((await page.textContent("h1")).includes("3 leaves were found"), "three leaves are found");
  const lengths = await page.$$eval(".leaf-card",
    (all) => all.map((one) => parseFloat(one.querySelector("dd").textContent)));
  stage.expect([0, 1, 2].every((at) => Math.abs(lengths[at] - BLADES[at]) < 1), `as long as they are drawn: ${lengths}`);
  stage.expect(await page.evaluate(() => document.activeElement.id) === "name-1", "the first name is asked for");
  stage.expect(await page.locator("#lines-1.here").count() === 1, "and its leaf is marked in the picture");
  await stage.look(page, "leaves");
  for (const name of ["hazel", "hazel", "?"]) {
    await page.keyboard.type(name);
    await page.keyboard.press("Enter");
  }
  stage.expect(await page.evaluate(() => document.activeElement.id) === "measure-look", "Enter leads on to the button");
  await Promise.all([page.waitForNavigation(), page.keyboard.press("Enter")]);
  const shown = await page.textContent("main");
  stage.expect(/52–61 mm, from 2 leaves\./.test(shown), "the range and on how many leaves it rests");
  stage.expect(shown.includes("1 leaf has no name and is left out."), "what is left out is said");
  stage.expect(await page.locator("#look-leaf-lobes").isChecked(), "of one kind alone what most keys ask is ticked");
  stage.expect(!(await page.locator("#look-leaf-tip").isChecked()), "and nothing else");
  await stage.look(page, "to-take");
  await go("#measure-back");
  stage.expect(await page.locator("#name-2").inputValue() === "hazel", "what was typed is there again");
  await go("#measure-look");
  await go("#measure-take");
  stage.expect(await page.locator('#cells td > input:not([type=hidden])[value="52-61 mm (2 seen)"]').count() === 1, "it is in the table");
  stage.expect(await page.locator('#cells td > input:not([type=hidden])[value="unlobed 2"]').count() === 1, "and so is how they look");
  await stage.look(page, "table");
  await page.goto(`${host.address}/finds`);
  stage.expect(await page.locator(".slip img").count() === 1, "its cut-out is its picture");
  await page.goto(`${host.address}/leaves/1`);
  stage.expect(/5[12](\.\d)? ± 0\.\d mm/.test(await page.textContent("main")), "each leaf is kept with its ±");
  stage.expect(await page.locator(".one-leaf img").count() === 1, "and its picture");
  await page.locator("#put-right summary").click();
  await stage.look(page, "one-leaf");
  await page.locator("#put-right .field input").first().fill("no such thing 7");
  await go("#measured-keep");
  stage.expect(await page.locator("[role=alert]").count() === 1, "what the column does not know is refused");
  await page.goto(`${host.address}/leaves/1`);

  const phone = await stage.window(host, { ...PHONE, locale: "de-DE" });
  const tap = (what) => Promise.all([phone.waitForNavigation(), phone.locator(what).click()]);
  await phone.goto(`${host.address}/measure`);
  await phone.locator("#scan").setInputFiles({ ...named, buffer: drawn });
  await tap("#measure-do");
  stage.expect((await phone.textContent(".no-scale")).includes("Nur Form"), "without a scale there are no lengths");
  await phone.locator("#name-1").fill("Hasel");
  await phone.locator("#dpi").fill("150");
  await tap("#measure-scale");
  stage.expect(await phone.locator("#name-1").inputValue() === "Hasel", "the name is still there");
  stage.expect((await phone.textContent(".leaf-card dd")).includes("mm"), "now there are lengths");
  await stage.look(phone, "phone");
  await tap("#measure-look");
  stage.expect((await phone.textContent("main")).includes("Alle diese Blätter sind schon hier"), "the same scan brings no leaf twice");
  await stage.look(phone, "phone-to-take");

  const narrow = await stage.window(host, NARROW);
  await narrow.goto(`${host.address}/measure`);
  const none = await narrow.screenshot({ clip: { x: 0, y: 0, width: 1, height: 1 } });
  await narrow.locator("#scan").setInputFiles({ ...named, buffer: none });
  await Promise.all([narrow.waitForNavigation(), narrow.locator("#measure-do").click()]);
  stage.expect((await narrow.textContent("[role=alert]")).includes("scan.png"), "nothing is found, and it says so");
  await stage.look(narrow, "nothing-there");
  host.end();
}

/** The same without scripts. */
export async function measuredBare(stage) {
  const host = await stage.open("bare.spinney");
  const hand = await stage.window(host, LAPTOP);
  await hand.goto(`${host.address}/measure`);
  const buffer = sized(await scan(hand), 150);
  const page = await stage.window(host, { ...LAPTOP, javaScriptEnabled: false });
  const go = (what) => Promise.all([page.waitForNavigation(), page.locator(what).click()]);
  await page.goto(`${host.address}/measure`);
  await page.locator("#scan").setInputFiles({ name: "scan.png", mimeType: "image/png", buffer });
  await go("#measure-do");
  await page.locator("#name-1").fill("hazel");
  await page.locator("#name-3").fill("oak");
  await go("#measure-look");
  stage.expect(await page.locator(".taken-kinds > li").count() === 2, "two kinds would be taken");
  await go("#measure-back");
  await page.locator("#name-2").fill("hazel");
  await go("#measure-look");
  await go("#measure-take");
  stage.expect(await page.locator('#cells td > input:not([type=hidden])[value="52-61 mm (2 seen)"]').count() === 1, "it is in the table");
  host.end();
}

/** Lets a picture fall on the form. */
async function drop(page, png) {
  const dropped = await page.evaluateHandle((bytes) => {
    const all = new DataTransfer();
    const file = Uint8Array.from(atob(bytes), (letter) => letter.charCodeAt(0));
    for (const name of ["one.png", "another.png"]) all.items.add(new File([file], name, { type: "image/png" }));
    return all;
  }, png.toString("base64"));
  await page.dispatchEvent("#measure-form", "drop", { dataTransfer: dropped });
}

/** Three leaves on paper, at 150 dots per inch: ellipses with a stalk, drawn by the page itself. */
async function scan(page) {
  const drawn = await page.evaluate((blades) => {
    const mm = 150 / 25.4;
    const canvas = document.createElement("canvas");
    [canvas.width, canvas.height] = [150 * mm, 110 * mm];
    const pen = canvas.getContext("2d");
    pen.fillStyle = "#f4f3ee";
    pen.fillRect(0, 0, canvas.width, canvas.height);
    pen.fillStyle = pen.strokeStyle = "#3f6b2c";
    pen.lineWidth = 1.3 * mm;
    blades.forEach((blade, at) => {
      const [x, base] = [(30 + 45 * at) * mm, 80 * mm];
      pen.beginPath();
      pen.ellipse(x, base - blade / 2 * mm, 12 * mm, blade / 2 * mm, 0, 0, 7);
      pen.fill();
      pen.beginPath();
      pen.moveTo(x, base - mm);
      pen.lineTo(x, base + 15 * mm);
      pen.stroke();
    });
    return canvas.toDataURL("image/png").split(",")[1];
  }, BLADES);
  return Buffer.from(drawn, "base64");
}

/** A PNG file that says how many dots it has to an inch: pHYs, behind the header (PNG, third edition, 11.3.4.3). */
function sized(png, dpi) {
  const chunk = Buffer.alloc(21);
  chunk.writeUInt32BE(9, 0);
  chunk.write("pHYs", 4, "latin1");
  const perMetre = Math.round(dpi / 0.0254);
  chunk.writeUInt32BE(perMetre, 8);
  chunk.writeUInt32BE(perMetre, 12);
  chunk.writeUInt8(1, 16);
  chunk.writeUInt32BE(crc32(chunk.subarray(4, 17)), 17);
  const header = 8 + 25;
  return Buffer.concat([png.subarray(0, header), chunk, png.subarray(header)]);
}
