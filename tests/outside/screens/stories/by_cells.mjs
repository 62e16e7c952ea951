// The table by its keys: from cell to cell, typing anew and writing on, a slip brought back, a
// block pasted from a spreadsheet, and what did not fit. Everything is kept as soon as the hand
// leaves a cell; a new start shows it.
import { LAPTOP } from "../stage.mjs";

export async function byCells(stage) {
  const host = await stage.open("cells.spinney");
  const page = await stage.window(host, { ...LAPTOP, permissions: ["clipboard-read", "clipboard-write"] });
  await page.goto(host.address);
  await page.getByRole("textbox", { name: "Or paste a table: a find a row, headings above" })
    .fill("kind\tedge\tlobed\tshine\nsallow\twavy\t\t\nyew\tsmooth\t\t\nalder\ttoothed\t\t");
  await press(page, "button", "Take the table in");
  await press(page, "link", "Table");
  await moves(stage, page);
  await typing(stage, page);
  await pasting(stage, page);
  await stage.look(page, "pasted");
  host.end();
  const again = await stage.open("cells.spinney");
  const later = await stage.window(again, LAPTOP);
  await later.goto(`${again.address}/table`);
  for (const [name, text] of [["sallow edge", "wavy-ish"], ["yew lobed", "no"], ["yew shine", "very, very shiny"],
    ["alder lobed", "no"], ["alder shine", "dull"], ["sallow shine", "silky"]]) {
    const kept = await cell(later, name).inputValue();
    stage.expect(kept === text, `${name} is kept as ${kept}`);
  }
  again.end();
}

const cell = (page, name) => page.getByRole("textbox", { name, exact: true });

async function press(page, role, name) {
  await Promise.all([page.waitForNavigation(), page.getByRole(role, { name, exact: true }).click()]);
}

/** Which cell has the focus, by its row and its heading. */
function here(page) {
  return page.evaluate(() => {
    const ids = document.activeElement.getAttribute("aria-labelledby") ?? "";
    return ids.split(" ").map((id) => document.getElementById(id)?.textContent).join(" ");
  });
}

async function moves(stage, page) {
  await cell(page, "sallow edge").focus();
  for (const [key, there] of [["ArrowRight", "sallow lobed"], ["ArrowDown", "yew lobed"], ["End", "yew shine"],
    ["ArrowDown", "alder shine"], ["ArrowDown", "alder shine"], ["ArrowRight", "alder shine"], ["Home", "alder edge"],
    ["Shift+Enter", "yew edge"], ["ArrowUp", "sallow edge"], ["ArrowUp", "sallow edge"], ["Control+End", "alder shine"],
    ["Control+Home", "sallow edge"], ["Enter", "yew edge"], ["Tab", "yew lobed"],
    ["Tab", "yew shine"], ["Tab", "alder edge"], ["Shift+Tab", "yew shine"]]) {
    await page.keyboard.press(key);
    const at = await here(page);
    stage.expect(at === there, `${key} goes to ${at}, not to ${there}`);
  }
}

async function typing(stage, page) {
  // Typing writes anew, and the arrows move in the text while somebody writes.
  await cell(page, "sallow shine").focus();
  await page.keyboard.type("slky");
  for (let steps = 0; steps < 3; steps += 1) await page.keyboard.press("ArrowLeft");
  await page.keyboard.type("i");
  stage.expect(await here(page) === "sallow shine", "an arrow moves in the text that is being written");
  await kept(stage, page, () => page.keyboard.press("Enter"));
  stage.expect(await cell(page, "sallow shine").inputValue() === "silky", "the letter is where it was put");
  // F2 writes on; Escape brings back what stood there.
  await cell(page, "sallow edge").focus();
  await page.keyboard.press("F2");
  await page.keyboard.type("-ish");
  await kept(stage, page, () => page.keyboard.press("Tab"));
  stage.expect(await cell(page, "sallow edge").inputValue() === "wavy-ish", "F2 writes on");
  await cell(page, "yew edge").focus();
  await page.keyboard.type("nonsense");
  await page.keyboard.press("Escape");
  stage.expect(await cell(page, "yew edge").inputValue() === "smooth", "Escape brings back what stood there");
}

async function pasting(stage, page) {
  // As spreadsheets copy it: a cell with a line end in it stands between quotation marks.
  await page.evaluate(() => navigator.clipboard.writeText("no\t\"very, very\nshiny\"\nno\tdull\n"));
  await cell(page, "yew lobed").focus();
  await kept(stage, page, () => page.keyboard.press("Control+V"));
  stage.expect(await cell(page, "alder shine").inputValue() === "dull", "the block fills the cells from there on");
  stage.expect(await page.locator("#not-pasted").isHidden(), "all of it fitted");
  await page.evaluate(() => navigator.clipboard.writeText("dull\nyes\n"));
  await cell(page, "alder shine").focus();
  await page.keyboard.press("Control+V");
  await page.locator("#not-pasted").waitFor({ state: "visible" });
  stage.expect(await cell(page, "alder shine").inputValue() === "dull", "what fits is there");
}

/** Does something, and waits until the program has kept it. */
async function kept(stage, page, act) {
  await stage.kept(page, act);
  await page.waitForFunction(() => [...document.querySelectorAll("#cells td")].every((one) => {
    const [typed, was] = [one.querySelector("input[id^=i-]"), one.querySelector("input[type=hidden]")];
    return !typed || typed === document.activeElement || typed.value === was.value;
  }));
}
