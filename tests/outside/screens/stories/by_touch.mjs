// The same by touch on a phone: eight finds, seven questions, every card by a finger, and the
// printed key. Everything is found by its role and its words.
import { EIGHT, missingFrom, questionFor } from "../eight.mjs";
import { PHONE } from "../stage.mjs";

export async function byTouch(stage) {
  const host = await stage.open("touch.spinney");
  const page = await stage.window(host, PHONE);
  await page.goto(host.address);
  await type(page, "Names, one a line", EIGHT.join("\n"));
  await tap(page, "button", "Add");
  await stage.look(page, "finds");
  await screen(page, "Heaps");
  await type(page, "Whose key is it?", "Group Green");
  await tap(page, "button", "Begin with two heaps");
  await sortHeap(page, EIGHT);
  await stage.look(page, "heaps");
  const margin = page.getByRole("complementary", { name: "Beside the work" });
  const open = margin.getByRole("link", { name: ", " });
  for (let heaps = 1; await open.count() > 0; heaps += 1) {
    if (heaps > 7) throw new Error("the heaps do not come to an end");
    const kinds = (await open.first().textContent()).trim().split(", ");
    await Promise.all([page.waitForNavigation(), open.first().tap()]);
    await sortHeap(page, kinds);
  }
  const beside = await margin.textContent();
  stage.expect(beside.includes("No find is forgotten."), "all eight are placed");
  stage.expect(beside.includes("No heap holds two kinds any more."), "all eight come out");
  await stage.look(page, "last-heap");
  await screen(page, "Key");
  stage.expect((await page.textContent("main")).includes("7 questions for 8 kinds"), "the key has seven questions");
  await stage.look(page, "key");
  await walk(stage, page);
  await screen(page, "Print");
  await stage.look(page, "print");
  const [file] = await Promise.all([
    page.waitForEvent("download"), page.getByRole("link", { name: "Get the PDF", exact: true }).tap(),
  ]);
  const lacking = missingFrom(await stage.words(file, "touch.pdf"));
  stage.expect(lacking.length === 0, `the printed key lacks ${lacking.join("; ")}`);
  host.end();
}

async function tap(page, role, name, inside = page) {
  const there = inside.getByRole(role, { name, exact: true });
  await Promise.all([page.waitForNavigation(), there.tap()]).catch((error) => {
    throw new Error(`nothing comes of a finger on ${role} “${name}”: ${error.message}`);
  });
}

function screen(page, name) {
  return tap(page, "link", name, page.getByRole("navigation", { name: "Screens" }));
}

async function type(page, label, text) {
  await page.getByRole("textbox", { name: label, exact: true }).tap();
  await page.keyboard.insertText(text);
}

async function sortHeap(page, kinds) {
  const question = questionFor(kinds);
  await type(page, "Ask in your own words", question.words);
  await tap(page, "button", "Ask this");
  for (const kind of kinds) {
    await tap(page, "button", `${question.yes.includes(kind) ? "yes" : "no"}: ${kind}`);
  }
}

/** Tries the key with an aspen in the hand, and finds out of the walk again. */
async function walk(stage, page) {
  await screen(page, "Try it");
  await tap(page, "link", "Begin");
  await stage.look(page, "try");
  for (const answer of ["no", "yes", "yes"]) await tap(page, "link", answer);
  const ending = page.getByRole("heading", { name: "aspen" });
  stage.expect(await ending.count() === 1, "the aspen comes out");
  await stage.look(page, "try-ending");
  await tap(page, "link", "Leave");
}
