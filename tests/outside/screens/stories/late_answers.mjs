// Whoever types faster than the program answers finds what they typed: an answer that comes late
// is older than what still waits to be sent.
import { LAPTOP } from "../stage.mjs";

export async function lateAnswers(stage) {
  const host = await stage.open("late.spinney");
  const page = await stage.window(host, LAPTOP);
  await page.goto(host.address);
  await page.getByRole("textbox", { name: "Or paste a table: a find a row, headings above" })
    .fill("kind\tedge\tshine\nsallow\twavy\t\nyew\tsmooth\t");
  await Promise.all([
    page.waitForNavigation(),
    page.getByRole("button", { name: "Take the table in", exact: true }).click(),
  ]);
  await page.goto(`${host.address}/table`);
  const asked = [];
  await page.route("**/do/cells", (route) => { asked.push(route); });
  const come = async (number) => { while (asked.length < number) await page.waitForTimeout(20); };
  const cell = (name) => page.getByRole("textbox", { name, exact: true });
  await write(page, cell("sallow shine"), "silky");
  await come(1);
  await write(page, cell("sallow edge"), "wavy-ish");
  // The first answer comes now. The second cell is asked for as soon as it is taken in.
  await asked[0].continue();
  await come(2);
  const typed = await cell("sallow edge").inputValue();
  stage.expect(typed === "wavy-ish", `an older answer puts ${typed} where something newer waits`);
  const answered = page.waitForResponse((answer) => answer.url().endsWith("/do/cells"));
  await asked[1].continue();
  await answered;
  await page.goto(`${host.address}/table`);
  for (const [name, text] of [["sallow edge", "wavy-ish"], ["sallow shine", "silky"]]) {
    const kept = await cell(name).inputValue();
    stage.expect(kept === text, `${name} is kept as ${kept}`);
  }
  host.end();
}

/** Writes into a cell and leaves it by Tab. */
async function write(page, cell, text) {
  await cell.focus();
  await page.keyboard.type(text);
  await page.keyboard.press("Tab");
}
