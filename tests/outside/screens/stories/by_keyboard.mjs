// From an empty collection by heaps to a printed key with eight kinds, by keyboard alone: no
// address is typed after the first, no mouse is moved.
import { writeFileSync } from "node:fs";

import { EIGHT, missingFrom, questionFor } from "../eight.mjs";
import { Fingers } from "../fingers.mjs";
import { LAPTOP } from "../stage.mjs";

export async function byKeyboard(stage) {
  const host = await stage.open("keyboard.spinney");
  const requests = [];
  const page = await stage.window(host, LAPTOP, requests);
  const fingers = new Fingers(page);
  await page.goto(host.address);
  await stage.look(page, "empty");
  await fingers.type("Names, one a line", EIGHT.join("\n"));
  await fingers.button("Add");
  stage.expect((await page.textContent("main")).includes("guelder rose"), "the finds are there");
  await stage.look(page, "finds");
  await fingers.follow("Heaps");
  await stage.look(page, "heaps-beginning");
  await fingers.type("Whose key is it?", "Group Blue");
  await fingers.press();
  await sortHeap(fingers, EIGHT);
  await stage.look(page, "sorted");
  // Whoever lies together with somebody is named in the margin, each heap a link.
  for (let heaps = 1; await together(page) > 0; heaps += 1) {
    if (heaps > 7) throw new Error("the heaps do not come to an end");
    const kinds = await fingers.to("a", (words) => words.includes(", ") && EIGHT.includes(words.split(", ")[0]));
    await fingers.press();
    await sortHeap(fingers, kinds.split(", "));
  }
  const beside = await page.textContent("#margin");
  stage.expect(beside.includes("No find is forgotten."), "all eight are placed");
  stage.expect(beside.includes("No heap holds two kinds any more."), "all eight come out");
  await stage.look(page, "all-sorted");
  await fingers.follow("Key");
  stage.expect((await page.textContent("main")).includes("7 questions for 8 kinds"), "the key has seven questions");
  await stage.look(page, "key");
  await fingers.follow("Print");
  await stage.look(page, "print");
  await fingers.to("a", "Get the PDF");
  const [file] = await Promise.all([page.waitForEvent("download"), page.keyboard.press("Enter")]);
  const lacking = missingFrom(await stage.words(file, "keyboard.pdf"));
  stage.expect(lacking.length === 0, `the printed key lacks ${lacking.join("; ")}`);
  writeFileSync(stage.file("story.txt"),
    `${requests.filter((line) => !line.includes(".pdf") && !line.includes("/print")).join("\n")}\n`);
  await undoAll(stage, page, fingers);
  host.end();
}

/** How many heaps of several kinds are left, as the margin lists them. */
function together(page) {
  return page.locator("#margin a", { hasText: ", " }).count();
}

/** Asks the group's question of a heap, and sorts every card by the arrow keys. */
async function sortHeap(fingers, kinds) {
  const question = questionFor(kinds);
  await fingers.type("Ask in your own words", question.words);
  await fingers.press();
  await fingers.to("card", kinds[0]);
  for (const kind of kinds) {
    // The card that waits next has the focus by itself after each that was put somewhere.
    const here = await fingers.here();
    if (here.words !== kind) throw new Error(`the focus is on ${here.words}, not on the card ${kind}`);
    await fingers.press(question.yes.includes(kind) ? "ArrowLeft" : "ArrowRight");
  }
}

/** Undo after undo, back to empty; the focus stays on the button. */
async function undoAll(stage, page, fingers) {
  await fingers.follow("What we did");
  let undone = 0;
  for (; undone < 200 && await page.locator("#undo").isEnabled(); undone += 1) {
    const here = await fingers.here();
    if (here.words !== "Undo") await fingers.to("button", "Undo");
    else if (undone > 0) stage.counted.steps += 1;
    await fingers.press();
  }
  // Eight finds in one go, a key, seven questions, 24 cards put somewhere.
  stage.expect(undone === 33, `everything was undone one by one (${undone})`);
  await fingers.follow("Our finds");
  stage.expect(!(await page.textContent("main")).includes("guelder rose"), "undone back to empty");
  await stage.look(page, "undone");
}
