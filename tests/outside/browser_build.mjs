// Plays a story to the desk of the pocket page in Node and writes its replies, as the native desk's
// example `replay` does.
//   node browser_build.mjs desk.wasm story.txt replies.bin
import { readFileSync, writeFileSync } from "node:fs";

const [, , build, story, replies] = process.argv;
const module = new WebAssembly.Module(readFileSync(build));
const imports = {};
for (const { module: from, name } of WebAssembly.Module.imports(module)) {
  (imports[from] ??= {})[name] = () => {
    throw new Error(`the desk asked the browser for ${from}.${name}: it must not need anything`);
  };
}
const { exports: desk } = new WebAssembly.Instance(module, imports);

/** One message to the desk and its answer, as crates/pocket/src/message.rs has them. */
function ask(what, texts, parts = []) {
  const pairs = new URLSearchParams([["what", what], ...texts]).toString();
  const all = [Buffer.from(pairs), ...parts];
  const four = (number) => { const bytes = Buffer.alloc(4); bytes.writeUInt32LE(number); return bytes; };
  const question = Buffer.concat([four(all.length), ...all.flatMap((part) => [four(part.length), part])]);
  const room = desk.room(question.length);
  new Uint8Array(desk.memory.buffer, room, question.length).set(question);
  const at = desk.ask(room, question.length);
  const length = new DataView(desk.memory.buffer).getUint32(at, true);
  const answer = Buffer.from(new Uint8Array(desk.memory.buffer, at + 4, length));
  const given = [];
  for (let from = 4; from < answer.length;) {
    const size = answer.readUInt32LE(from);
    given.push(answer.subarray(from + 4, from + 4 + size));
    from += 4 + size;
  }
  return { said: new URLSearchParams(given[0].toString()), parts: given.slice(1) };
}

const some = (text) => text ? `Some(${JSON.stringify(text)})` : "None";
const out = [];
let mark = ask("stands", []).said.get("mark");
readFileSync(story, "utf8").split("\n").forEach((text, line) => {
  const [method, address, form = ""] = text.split(" ");
  if (address === undefined) return;
  const texts = [["address", address], ["at", String(line)]];
  if (method === "POST") texts.push(["method", "post"], ["form", `${form}&head=${mark}`]);
  out.push(Buffer.from(`\n== ${line} ${text}\n`));
  const { said, parts } = ask("handle", texts);
  const page = parts.at(-1);
  if (said.get("what") === "keep") {
    const lines = parts.slice(0, Number(said.get("lines")));
    for (const one of lines) out.push(one, Buffer.from("\n"));
    mark = ask("catch-up", [], lines).said.get("mark");
    out.push(Buffer.from(`${said.get("status")} ${some(said.get("location"))}`));
  } else if (said.get("what") === "page") {
    out.push(Buffer.from(`${said.get("status")} ${said.get("kind")} ${some(said.get("location"))}\n`), page);
  } else {
    throw new Error(`${text}: the desk answers ${said}`);
  }
});
writeFileSync(replies, Buffer.concat(out));
console.log(`${WebAssembly.Module.imports(module).length} imports, ${Buffer.concat(out).length} bytes of replies`);
