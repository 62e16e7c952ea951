// A group's eight finds and the seven questions that part them. Invented for the stories: no
// such key was ever tried, and what it says of the kinds is not meant to be true.

export const EIGHT = [
  "sallow", "guelder rose", "spindle", "alder", "aspen", "yew", "walnut", "elder twig",
];

/** Question by question: its words, who says yes, who says no. */
const QUESTIONS = [
  ["Is it soft to the touch?", "sallow, guelder rose, spindle, alder", "aspen, yew, walnut, elder twig"],
  ["Is its edge jagged?", "sallow, guelder rose", "spindle, alder"],
  ["Is it as long as your thumb?", "sallow", "guelder rose"],
  ["Are there two beside each other?", "spindle", "alder"],
  ["Does it shine?", "aspen, yew", "walnut, elder twig"],
  ["Is it round?", "aspen", "yew"],
  ["Is there a stalk?", "walnut", "elder twig"],
].map(([words, yes, no]) => ({ words, yes: yes.split(", "), no: no.split(", ") }));

/** What the group asks of a heap: the question that parts exactly these kinds. */
export function questionFor(kinds) {
  const wanted = [...kinds].sort().join();
  const found = QUESTIONS.find(({ yes, no }) => [...yes, ...no].sort().join() === wanted);
  if (!found) throw new Error(`the group has no question for ${kinds.join(", ")}`);
  return found;
}

/** Whether the words of a sheet hold every kind and every question. */
export function missingFrom(text) {
  return [...EIGHT, ...QUESTIONS.map(({ words }) => words)].filter((words) => !text.includes(words));
}
