// Plays a story to the desk's WebAssembly build in Node and writes its replies.
//   node browser_build.mjs replay.wasm story.txt replies.bin
import { readFileSync, writeFileSync } from "node:fs";

const [, , build, story, replies] = process.argv;
const module = new WebAssembly.Module(readFileSync(build));
const imports = {};
for (const { module: from, name } of WebAssembly.Module.imports(module)) {
  (imports[from] ??= {})[name] = () => {
    throw new Error(`the desk asked the browser for ${from}.${name}: it must not need anything`);
  };
}
const { exports } = new WebAssembly.Instance(module, imports);
const text = readFileSync(story);
const at = exports.room(text.length);
new Uint8Array(exports.memory.buffer, at, text.length).set(text);
const out = exports.play(at, text.length);
const length = new DataView(exports.memory.buffer).getUint32(out, true);
writeFileSync(replies, new Uint8Array(exports.memory.buffer, out + 4, length));
console.log(`${WebAssembly.Module.imports(module).length} imports, ${length} bytes of replies`);
