// What the checks and measurements in a browser have in common: how they are called, and with which
// arguments a browser is begun that asks nobody for anything.
import { createRequire } from "node:module";
import { join, resolve } from "node:path";

/** What Chromium is begun with, also as root and without a screen. */
export const CHROMIUM_ARGS = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
  "--disable-background-networking", "--disable-component-update", "--disable-sync"];

/** The words of the command line, and its options `--name TEXT` over what they are otherwise. */
export function called(otherwise) {
  const options = { modules: "target/check/node", chromium: "/usr/bin/chromium", ...otherwise };
  const given = [];
  for (let at = 2; at < process.argv.length; at += 1) {
    const word = process.argv[at];
    if (word.startsWith("--")) options[word.slice(2)] = process.argv[(at += 1)];
    else given.push(word);
  }
  const require = createRequire(join(resolve(options.modules), "package.json"));
  return { options, given, require };
}
