// Stories at the screens, in a real browser against the real program.
//
//   node tests/outside/screens.mjs SPINNEY OUT [--modules DIR] [--chromium PATH] [--only STORY]
//                                  [--pocket PAGE]
//
// Each story starts the program with a collection of its own in OUT and works as people do:
// by keyboard alone, by touch, by the names that a screen reader says, without scripts, in two
// windows. At every stop axe-core looks at the screen (the rules of WCAG 2.2 A and AA), no page
// may be wider than the screen, the console stays silent, and nothing but the program itself is
// asked for anything. OUT/story.txt then holds the requests of the first story, for the
// browser's build of the desk to answer. With --pocket the same stories are played on the page that
// holds everything, but for those about the program's files. Exits 1 with a list of what is wrong.
import { mkdirSync, readFileSync, rmSync } from "node:fs";
import { resolve } from "node:path";

import { CHROMIUM_ARGS, called } from "./options.mjs";
import { PocketStage } from "./screens/pocket.mjs";
import { Stage } from "./screens/stage.mjs";
import { aCopy } from "./screens/stories/a_copy.mjs";
import { atAGlance } from "./screens/stories/at_a_glance.mjs";
import { byCells } from "./screens/stories/by_cells.mjs";
import { byKeyboard } from "./screens/stories/by_keyboard.mjs";
import { byNames } from "./screens/stories/by_names.mjs";
import { byTouch } from "./screens/stories/by_touch.mjs";
import { everyScreen } from "./screens/stories/every_screen.mjs";
import { collections } from "./screens/stories/pocket/collections.mjs";
import { handedOn } from "./screens/stories/pocket/handed_on.mjs";
import { refused } from "./screens/stories/pocket/refused.mjs";
import { twoTabs } from "./screens/stories/pocket/two_tabs.mjs";
import { waiting } from "./screens/stories/pocket/waiting.mjs";
import { fromNothing } from "./screens/stories/from_nothing.mjs";
import { leaves, leavesBare } from "./screens/stories/leaves.mjs";
import { measured, measuredBare } from "./screens/stories/measured.mjs";
import { putRight } from "./screens/stories/put_right.mjs";
import { lateAnswers } from "./screens/stories/late_answers.mjs";
import { newcomer } from "./screens/stories/newcomer.mjs";
import { shareOut } from "./screens/stories/share_out.mjs";
import { twoGroups } from "./screens/stories/two_groups.mjs";
import { twoWindows } from "./screens/stories/two_windows.mjs";

const STORIES = {
  byKeyboard, byTouch, byNames, byCells, shareOut, twoGroups, twoWindows, lateAnswers, newcomer, atAGlance,
  aCopy, fromNothing, measured, measuredBare, leaves, leavesBare, putRight, everyScreen,
};
/** What is about the program alone: files of its own, screens without scripts, answers held back. */
const OF_THE_PROGRAM = ["atAGlance", "aCopy", "twoWindows", "lateAnswers", "measuredBare", "leavesBare"];
/** What is about the page that holds everything alone. */
const OF_THE_POCKET = { collections, twoTabs, refused, handedOn, waiting };

const { options, given, require } = called({ only: "", pocket: "" });
if (given.length !== 2) {
  console.error("Use: screens.mjs SPINNEY OUT [--modules DIR] [--chromium PATH] [--only STORY] [--pocket PAGE]");
  process.exit(2);
}
const [program, out] = given.map((path) => resolve(path));
const { chromium } = require("playwright-core");
const axe = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");
rmSync(out, { recursive: true, force: true });
mkdirSync(out, { recursive: true });

const browser = await chromium.launch({ executablePath: options.chromium, headless: true, args: CHROMIUM_ARGS });
const cast = { program, out, browser, axe };
const stage = options.pocket ? new PocketStage({ ...cast, page: options.pocket }) : new Stage(cast);
const stories = options.pocket ? { ...OF_THE_POCKET, ...STORIES } : STORIES;
for (const [name, tell] of Object.entries(stories)) {
  if (options.only && options.only !== name) continue;
  if (options.pocket && OF_THE_PROGRAM.includes(name)) continue;
  stage.story = name;
  try {
    await tell(stage);
  } catch (error) {
    stage.say(`${error.message.split("\n")[0]}`);
  }
  for (const context of browser.contexts()) await context.close().catch(() => {});
}
await browser.close();
console.log(`${stage.counted.steps} steps, ${stage.counted.stops} stops with axe-core`);
for (const line of stage.wrong) console.error(line);
process.exit(stage.wrong.length ? 1 : 0);
