// What is seen without scrolling, and what stays where it is: nine cards that wait, both answers
// of every question on a phone, and "Undo" on every screen.
import { LAPTOP, NARROW, PHONE } from "../stage.mjs";

const NINE = ["sallow", "guelder rose", "spindle", "alder", "aspen", "yew", "walnut", "holly", "ivy"];

export async function atAGlance(stage) {
  await nineCards(stage);
  await demoScreens(stage);
}

/** Whether all of a thing is on the screen. */
function inSight(page, css) {
  return page.$$eval(css, (all) => all.length > 0 && all.every((one) => {
    const box = one.getBoundingClientRect();
    return box.top >= 0 && box.left >= 0 && box.bottom <= innerHeight && box.right <= innerWidth;
  }));
}

async function press(page, button) {
  await Promise.all([page.waitForNavigation(), button.click()]);
}

async function nineCards(stage) {
  const host = await stage.open("nine.spinney");
  const page = await stage.window(host, LAPTOP);
  await page.goto(`${host.address}/finds`);
  await page.locator("#names").fill(NINE.join("\n"));
  await press(page, page.locator("#add-finds"));
  await page.goto(`${host.address}/heaps`);
  await page.locator("#key-name").fill("Group Blue");
  await press(page, page.locator("button.main").first());
  await page.locator("#words").fill("Is it soft to the touch?");
  await press(page, page.locator("#ask"));
  stage.expect(await page.locator(".heap.middle .card").count() === 9, "nine cards wait");
  stage.expect(await inSight(page, ".heap.middle .card"), "all nine cards are in sight");
  stage.expect(await inSight(page, ".heap.yes h3, .heap.no h3, #asked"), "so are both heaps and the question");
  // Another group's key beside it takes no room away from the cards.
  await page.goto(`${host.address}/heaps?key=1`);
  await page.locator(".whose details summary").click();
  await page.locator("#key-name").fill("Group Red");
  await press(page, page.locator(".whose details button"));
  await page.goto(`${host.address}/heaps?key=1`);
  stage.expect(await inSight(page, ".heap.middle .card"), "nine cards are in sight beside a choice of keys");
  stage.expect(await page.getByText("Drag a card onto yes or no").isVisible(), "dragging is offered in words");
  await stage.look(page, "nine");
  // Every card has its buttons in the same order and at the same place, wherever it lies.
  const order = (css) => page.$$eval(`${css} .ways`, (all) => all.map((ways) =>
    [...ways.querySelectorAll("button:not(.middle)")].map((b) => [b.value, Math.round(b.offsetLeft - ways.offsetLeft)]).join(" ")));
  const [before] = await order(".heap.middle .card");
  await press(page, page.locator("#yes-1"));
  await press(page, page.locator("#no-2"));
  await press(page, page.locator("#both-3"));
  const after = await order(".card");
  const sides = (text) => text.replaceAll(/ -?\d+|\d+|,/g, "").trim();
  stage.expect(after.every((one) => sides(one) === sides(before)), `buttons keep their order: ${after.join(" | ")}`);
  stage.expect(new Set(await order(".heap.middle .card")).size === 1, "and in a heap their places");
  const touch = await stage.window(host, PHONE);
  await touch.goto(`${host.address}/heaps?key=1`);
  stage.expect(await touch.getByText("Tap yes or no on each card").isVisible(), "a finger is told to tap");
  stage.expect(!await touch.getByText("Drag a card").isVisible(), "and not to drag");
  host.end();
}

async function demoScreens(stage) {
  const host = await stage.open();
  for (const [name, settings] of [["laptop", LAPTOP], ["phone", PHONE], ["narrow", NARROW],
    ["double", { viewport: { width: 683, height: 384 } }], ["german", { ...NARROW, locale: "de-DE" }]]) {
    const page = await stage.window(host, settings);
    await undoStays(stage, page, host, name);
    await page.context().close();
  }
  for (const [name, settings] of [["phone", PHONE], ["narrow", NARROW]]) {
    const page = await stage.window(host, settings);
    await bothAnswers(stage, page, host, name);
    await page.context().close();
  }
  host.end();
}

/** Where "Undo" and its twin stand, to the pixel. */
function place(page) {
  return page.$$eval("#undo, #redo", (both) => both.map((one) => {
    const { left, top, width, height } = one.getBoundingClientRect();
    return [left, top + scrollY, width, height].map(Math.round).join(",");
  }).join(" "));
}

async function undoStays(stage, page, host, name) {
  const screens = ["/finds", "/finds/1", "/heaps?key=1", "/table", "/key?key=1", "/words?key=1",
    "/print?key=1", "/done", "/share-out", "/saved", "/nothing-here"];
  await page.goto(`${host.address}/finds`);
  const here = await place(page);
  for (const path of screens) {
    await page.goto(`${host.address}${path}`);
    const there = await place(page);
    stage.expect(there === here, `${name}${path}: “Undo” moved from ${here} to ${there}`);
  }
  // A long title grows below or beside, and so does what was taken back.
  await page.goto(`${host.address}/finds`);
  await page.locator("#scene-open").click();
  await page.locator("#scene-title").fill("Hedge, street and churchyard walk with the whole of class four in early October");
  await press(page, page.locator("#scene-keep"));
  stage.expect(await place(page) === here, `${name}: a long title moved “Undo” to ${await place(page)}`);
  await press(page, page.locator("#undo"));
  stage.expect(await page.locator(".taken-back").isVisible(), `${name}: it says what was taken back`);
  stage.expect(await place(page) === here, `${name}: what was taken back moved “Undo” to ${await place(page)}`);
  await stage.look(page, `${name}-undone`);
}

/** Every question of the demo's key, with everything that may hurt. */
async function bothAnswers(stage, page, host, name) {
  const open = [""];
  let asked = 0;
  while (open.length > 0) {
    const at = open.pop();
    await page.goto(`${host.address}/try?key=1&at=${at}`);
    if (await page.locator("#yes").count() === 0) continue;
    asked += 1;
    stage.expect(await inSight(page, "#yes, #no"), `${name}: both answers are in sight at “${at}”`);
    if (asked === 1 || await page.locator("#before-touching").count() > 0) await stage.look(page, `${name}-try-${at}`);
    open.push(`${at}y`, `${at}n`);
  }
  stage.expect(asked > 5, `${name}: the walk was looked at (${asked} questions)`);
}
