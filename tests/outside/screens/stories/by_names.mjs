// From a pasted table to the best key on paper, by the roles and names that the browser hands
// to a screen reader.
import { Ears } from "../ears.mjs";
import { LAPTOP } from "../stage.mjs";

/** Invented: what it says of the kinds is not meant to be true. */
const TABLE = [
  ["kind", "edge", "lobed", "shine"],
  ["sallow", "wavy", "no", "dull"],
  ["yew", "smooth", "no", "shiny"],
  ["alder", "toothed", "no", "dull"],
  ["guelder rose", "toothed", "yes", "dull"],
];

export async function byNames(stage) {
  const host = await stage.open("names.spinney");
  const page = await stage.window(host, LAPTOP);
  await page.goto(host.address);
  const ears = await Ears.of(page);
  stage.expect(await ears.title() === "Our finds", "the first screen says what it is");
  await ears.type("Or paste a table: a find a row, headings above", TABLE.map((row) => row.join("\t")).join("\n"));
  await ears.press("button", "Take the table in");
  stage.expect(await ears.hears("guelder rose"), "the finds are said");
  await ears.screen("Table");
  for (const [kind, ...cells] of TABLE.slice(1)) {
    for (const [at, text] of cells.entries()) {
      const cell = await ears.one("textbox", `${kind} ${TABLE[0][at + 1]}`);
      stage.expect(cell.value === text, `the cell ${cell.name} says ${cell.value}`);
    }
  }
  await stage.look(page, "table");
  await ears.screen("Key");
  await stage.look(page, "no-key-yet");
  await ears.type("What is the key called?", "The shortest");
  await ears.press("button", "Find a key from the table");
  stage.expect(await ears.title() === "Key · The shortest", `the key has its name: ${await ears.title()}`);
  stage.expect(await ears.hears("No key needs fewer questions"), "the key is proved");
  stage.expect(await ears.hears("3 questions for 4 kinds"), "three questions part four kinds");
  await stage.look(page, "key");
  for (const [name, title] of [["Our finds", "Our finds"], ["Words", "Words"], ["What we did", "What we did"]]) {
    await ears.screen(name);
    stage.expect(await ears.title() === title, `${name} is called ${await ears.title()}`);
    await stage.look(page, name.replaceAll(" ", "-"));
  }
  await walk(stage, page, ears);
  await ears.screen("Print");
  await stage.look(page, "Print");
  const words = await stage.words(await ears.take("Get the PDF"), "names.pdf");
  for (const [kind] of TABLE.slice(1)) stage.expect(words.includes(kind), `${kind} is printed`);
  host.end();
}

/** Whoever answers no to everything comes out somewhere, and hears it as a heading. */
async function walk(stage, page, ears) {
  await ears.screen("Try it");
  await ears.press("link", "Begin");
  for (let questions = 1; (await ears.all()).some(({ role, name }) => role === "link" && name === "no"); questions += 1) {
    if (questions > 3) throw new Error("more questions than the key has");
    await ears.press("link", "no");
  }
  stage.expect(await ears.title() === "It comes out as", `the end says ${await ears.title()}`);
  const kinds = TABLE.slice(1).map(([kind]) => kind);
  const named = (await ears.all()).filter(({ role, name, level }) => role === "heading" && level === 2 && kinds.includes(name));
  stage.expect(named.length === 1, "one kind comes out");
  await stage.look(page, "try-ending");
  await ears.press("link", "Leave");
}
