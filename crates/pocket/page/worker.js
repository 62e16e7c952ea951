// Sits at the desk: asks it one question after another, keeps what was done before the page that
// follows is shown, and steps long work while nobody asks.
//
// From requests of the page to pages. Every line is in the storage before it counts (`kept.js`);
// another window's lines are taken in before each answer. A mistake in the desk ends one request:
// the desk is made anew from its journal, which is not touched by it.

const MOST_TRIES = 20;
/** Heaps that long work takes apart between two looks for somebody who asks: some milliseconds. */
const HEAPS_A_STEP = 600;

// --- The desk as WebAssembly, by messages (`pocket/src/message.rs`).

const encoder = new TextEncoder();
const decoder = new TextDecoder();
let code = null;
let desk = null;

/** Where the pieces of the code go as they come: a deflated stream, written in signs. */
let pieces = null;
const packed = new ReadableStream({ start(stream) { pieces = stream; } });

function given(piece) {
  try {
    if (piece === null) pieces.close();
    else pieces.enqueue(decoded(piece));
  } catch (error) {
    // The file was cut off or changed on its way: whoever compiles it hears so.
    pieces.error(error);
  }
}

/** What each sign counts; `put_together` has written four bytes in five of `SIGNS`. */
const values = new Uint8Array(128);
for (let sign = 0; sign < SIGNS.length; sign += 1) values[SIGNS.charCodeAt(sign)] = sign;

function decoded(piece) {
  const view = new DataView(new ArrayBuffer(4 * Math.ceil(piece.length / 5)));
  for (let at = 0, to = 0; at < piece.length; at += 5, to += 4) {
    let word = 0;
    for (let sign = at; sign < at + 5; sign += 1) {
      word = 85 * word + (sign < piece.length ? values[piece.charCodeAt(sign)] : 84);
    }
    view.setUint32(to, word);
  }
  return new Uint8Array(view.buffer, 0, Math.floor(piece.length / 5 * 4));
}

/** The code of the desk. */
function compiled() {
  const stream = packed.pipeThrough(new DecompressionStream("deflate-raw"));
  const answer = new Response(stream, { headers: { "Content-Type": "application/wasm" } });
  return WebAssembly.compileStreaming(answer);
}

function sitDown() {
  const imports = {};
  for (const { module, name } of WebAssembly.Module.imports(code)) {
    (imports[module] ??= {})[name] = () => { throw new Error(`${module}.${name} is not there`); };
  }
  desk = new WebAssembly.Instance(code, imports).exports;
}

function written(texts, parts) {
  const all = [encoder.encode(new URLSearchParams(texts).toString()), ...parts];
  const bytes = new Uint8Array(4 + all.reduce((sum, part) => sum + 4 + part.length, 0));
  const view = new DataView(bytes.buffer);
  view.setUint32(0, all.length, true);
  let at = 4;
  for (const part of all) {
    view.setUint32(at, part.length, true);
    bytes.set(part, at + 4);
    at += 4 + part.length;
  }
  return bytes;
}

function read(bytes) {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const parts = [];
  let at = 4;
  for (let left = view.getUint32(0, true); left > 0; left -= 1) {
    const length = view.getUint32(at, true);
    parts.push(bytes.slice(at + 4, at + 4 + length));
    at += 4 + length;
  }
  return { texts: new URLSearchParams(decoder.decode(parts.shift())), parts };
}

/** Asks the desk. `texts` are pairs, `parts` are bytes. */
function ask(what, texts = [], parts = []) {
  const question = written([["what", what], ...texts], parts);
  const room = desk.room(question.length);
  new Uint8Array(desk.memory.buffer, room, question.length).set(question);
  const answer = desk.ask(room, question.length);
  const length = new DataView(desk.memory.buffer).getUint32(answer, true);
  const { texts: said, parts: given } = read(new Uint8Array(desk.memory.buffer, answer + 4, length));
  return { what: said.get("what"), texts: said, parts: given };
}

// --- What lies on it.

let kept = null;
/** The collection on the desk: which one, and how far it was read. */
let open = null;
let atWork = false;

class Trouble extends Error {
  constructor(name, why = "") {
    super(name);
    Object.assign(this, { name, why });
  }
}

/** Puts a collection on the desk, or takes in what another window has kept. */
async function lookUp() {
  const { record, lines, anew } = await kept.since(open.id, open);
  if (!record) throw new Gone("gone");
  if (anew) stood(ask("open", [], lines), record);
  else if (lines.length > 0) stood(ask("catch-up", [], lines), record);
  open.record = record;
}

/** The collection cannot be shown: another one is to be chosen. */
class Gone extends Error {
  constructor(notice, title = "") {
    super(notice);
    Object.assign(this, { notice, title });
  }
}

function stood(answer, record) {
  if (answer.what !== "stands") throw new Gone("unreadable", record.title);
  open.head = Number(answer.texts.get("head"));
  open.epoch = record.epoch;
  atWork = answer.texts.get("at-work") === "yes";
}

/** The desk is to be laid anew from the journal. */
const setDown = () => { open = open && { id: open.id, head: 0, epoch: -1 }; };

/** Notes for the list what the collection is called and holds, where that is new. */
async function noted({ texts: said }) {
  const [title, kinds] = [said.get("title"), Number(said.get("kinds"))];
  if (open.record.title === title && open.record.kinds === kinds) return;
  Object.assign(open.record, { title, kinds });
  await beside({ title, kinds });
}

/** What the list says beside the collection; where it cannot be noted, nothing else fails. */
const beside = (news) => kept.note(open.id, news).catch(() => {});

function texts(request) {
  const all = [
    ["method", request.method], ["address", request.address], ["form", request.form ?? ""],
    ["at", String(request.at)], ["today", request.today],
    ...request.languages.map((language) => ["language", language]),
    ["kept", kept.memory ? "memory" : "browser"], ["why", kept.why], ["lasting", request.lasting],
  ];
  for (const { field, name } of request.files ?? []) all.push(["file-field", field], ["file-name", name]);
  if (open?.record?.copy) {
    const { name, day, head } = open.record.copy;
    all.push(["copy-name", name], ["copy-day", day], ["copy-head", String(head)]);
  }
  return all;
}

const page = ({ texts: said, parts }) => ({
  status: Number(said.get("status")),
  kind: said.get("kind"),
  location: said.get("location"),
  file: said.get("file"),
  body: parts[parts.length - 1],
});

/** Answers a request about the collection on the desk. */
async function handle(request) {
  const pictures = new Map();
  let cut = "";
  for (let tries = 0; tries < MOST_TRIES; tries += 1) {
    await lookUp();
    const given = [...pictures].filter(([, bytes]) => bytes);
    const lost = [...pictures].filter(([, bytes]) => !bytes).map(([hash]) => ["lost", hash]);
    const answer = ask(
      "handle",
      [...texts(request), ...given.map(([hash]) => ["picture", hash]), ...lost, ["pictures-cut", cut]],
      [...(request.files ?? []).map(({ bytes }) => bytes), ...given.map(([, bytes]) => bytes)]);
    atWork = answer.texts.get("at-work") === "yes";
    switch (answer.what) {
      case "page": return page(answer);
      case "picture": return picture(answer.texts.get("hash"));
      case "need":
        for (const hash of answer.texts.getAll("hash")) {
          if (size(pictures) >= Number(answer.texts.get("most"))) cut = "yes";
          pictures.set(hash, cut ? undefined : await kept.picture(open.id, hash));
        }
        break;
      default:
        try {
          return await keep(answer);
        } catch (error) {
          if (!(error instanceof Moved)) throw error;
        }
    }
  }
  throw new Trouble("overtaken");
}

/** A picture as it is kept: the desk has written it anew before, so that it is pixels alone. */
async function picture(hash) {
  const bytes = await kept.picture(open.id, hash);
  const kind = { 0x89: "image/png", 0xff: "image/jpeg" }[bytes?.[0]];
  if (!kind) throw new Trouble("picture-lost");
  return { status: 200, kind, location: "", file: "", body: bytes };
}

async function keep(answer) {
  const count = Number(answer.texts.get("lines"));
  const lines = answer.parts.slice(0, count);
  const given = answer.texts.getAll("hash").map((hash, at) => [hash, answer.parts[count + at]]);
  const at = { epoch: open.epoch, head: Number(answer.texts.get("after")) };
  if (answer.what === "keep") {
    const most = Number(answer.texts.get("most"));
    const more = given.reduce((sum, [, { length }]) => sum + length, 0);
    if (more > 0 && (open.record.bytes ?? 0) + more > most) throw new Trouble("copy-full");
    await kept.append(open.id, at, lines, given);
    await afterwards(() => ask("catch-up", [], lines));
  } else {
    const stays = new Set([...answer.texts.getAll("stays"), ...answer.texts.getAll("hash")]);
    await kept.rewrite(open.id, at, lines, given, stays);
    setDown();
    await afterwards(async () => { await lookUp(); return ask("stands"); });
  }
  return page(answer);
}

/** It is kept: whatever fails now must not be told as if nothing had changed. */
async function afterwards(taking) {
  try {
    const stands = await taking();
    stood(stands, open.record);
    await noted(stands);
  } catch (error) {
    console.warn(error);
    sitDown();
    setDown();
  }
}

// --- The screens that this host has besides: which collections there are, another one.

const to = (location) => ({ status: 303, kind: "", location, file: "", body: new Uint8Array() });

async function collections(request, notice = "", of = "") {
  const all = (await kept.list()).sort((one, two) => two.opened - one.opened);
  const listed = all.flatMap(({ id, title, kinds, day }) =>
    [["id", id], ["title", title], ["kinds", String(kinds)], ["day", day]]);
  return page(ask("collections", [...texts(request), ...listed, ["notice", notice], ["of", of]]));
}

async function begin(request, fields) {
  const record = {
    id: crypto.randomUUID?.() ?? `${request.at}-${Math.random()}`,
    title: "", kinds: 0, head: 0, epoch: 0, opened: request.at, day: request.today, copy: null,
  };
  const before = open;
  await kept.begin(record);
  open = { id: record.id, head: 0, epoch: -1 };
  try {
    const shown = await filled(request, fields.get("what"), record);
    if (shown.status === 303) return shown;
    // The page says why not.
    await undone(record, before);
    return shown;
  } catch (error) {
    await undone(record, before);
    throw error;
  }
}

/** Nothing is left of a collection that could not be begun. */
async function undone(record, before) {
  await kept.remove(record.id).catch(() => {});
  open = before;
  setDown();
}

/** What a collection begins with: nothing, the invented walk, a copy. */
async function filled(request, what, record) {
  if (what === "walk") {
    const { parts } = ask("walk", texts(request));
    await kept.append(record.id, record, parts, []);
    await lookUp();
    await noted(ask("stands"));
    return to("/key");
  }
  if (what !== "copy") return to("/finds");
  const opened = await handle({ ...request, address: "/do/open-copy", form: "head=0-0&back=/collections" });
  return opened.status === 303 ? to("/finds") : opened;
}

async function goOn(request, id) {
  const record = await kept.record(id);
  if (!record) return collections(request, "gone");
  open = { id, head: 0, epoch: -1 };
  await lookUp();
  await beside({ opened: request.at, day: request.today });
  return to("/finds");
}

async function remove(request, fields) {
  if (fields.get("sure") !== "yes") return collections(request, "unsure");
  const record = await kept.record(fields.get("collection"));
  if (!record) return collections(request, "gone");
  await kept.remove(record.id);
  if (open?.id === record.id) open = null;
  return collections(request, "removed", record.title);
}

async function answer(request) {
  if (request.trouble) throw new Trouble(request.trouble);
  const path = request.address.split("?")[0];
  const fields = new URLSearchParams(request.form ?? "");
  if (request.method === "post") {
    switch (path) {
      case "/do/begin": return begin(request, fields);
      case "/do/go-on": return goOn(request, fields.get("collection"));
      case "/do/remove-collection": return remove(request, fields);
    }
  }
  if (path === "/" || path === "/collections") return collections(request);
  // The looks of a page are there without a collection.
  if (path.startsWith("/assets/")) return page(ask("handle", texts(request)));
  // A form that was answered has no address to come back to.
  if (request.method === "get" && path.startsWith("/do/")) {
    return to(/\/(begin|go-on|remove-collection)$/.test(path) ? "/collections" : "/finds");
  }
  if (!open) await mostRecent(request);
  if (!open) return to("/collections");
  // A form is meant for the collection that its page showed.
  if (request.method === "post" && request.collection && request.collection !== open.id) throw new Gone("gone");
  const shown = await handle(request);
  return path === "/saved/copy.zip" ? { ...shown, head: open.head } : shown;
}

/** A link into a collection, in a window that has none yet: the one that this window had, or the
 * one that was open last. */
async function mostRecent(request) {
  const all = await kept.list();
  const last = all.sort((one, two) => two.opened - one.opened)[0];
  const id = all.find(({ id: had }) => had === request.collection)?.id ?? last?.id;
  if (id) open = { id, head: 0, epoch: -1 };
}

/** Answers, whatever happens. */
async function told(request) {
  try {
    return await answer(request);
  } catch (error) {
    if (error instanceof Gone) {
      open = null;
      return collections(request, error.notice, error.title);
    }
    if (!(error instanceof Trouble || error instanceof DOMException)) {
      // Half-finished thoughts are thrown away; the journal has none.
      sitDown();
      setDown();
    }
    const [name, why] = trouble(error);
    if (open) await lookUp().catch(() => { sitDown(); open = null; });
    return page(ask("trouble", [...texts(request), ["trouble", name], ["why", why]]));
  }
}

function trouble(error) {
  if (error instanceof Trouble) return [error.name, error.why];
  if (error?.name === "QuotaExceededError") return ["full", ""];
  if (error instanceof DOMException) return ["not-reached", error.name];
  console.error(error);
  return ["bug", ""];
}

// --- One question after another; between them, long work.

let queue = Promise.resolve();
let waiting = 0;

function workOn() {
  if (!atWork || waiting > 0) return;
  try {
    atWork = ask("work", [["heaps", String(HEAPS_A_STEP)]]).texts.get("at-work") === "yes";
  } catch {
    sitDown();
    setDown();
    atWork = false;
  }
  setTimeout(workOn);
}

/** What opening took: since when, and how long, in milliseconds since 1 January 1970. */
const spent = [];
const timed = (name, since) => spent.push([name, performance.timeOrigin + since, performance.now() - since]);

async function begun(before) {
  const since = performance.now();
  const compiling = before ?? compiled().finally(() => timed("code unpacked and compiled", since));
  const opening = InBrowser.open().finally(() => timed("storage opened", since));
  const [made, storage] = await Promise.allSettled([compiling, opening]);
  if (made.status === "rejected") throw made.reason;
  code = made.value;
  kept = storage.status === "fulfilled" ? storage.value : new InMemory(whyNot(storage.reason));
  const sitting = performance.now();
  sitDown();
  timed("desk made", sitting);
}

/** Why the browser's storage cannot be had, where a person can do something. */
const whyNot = ({ name, message }) => message === "blocked" ? "held" : name === "VersionError" ? "newer" : "";

/** More memory than this, in bytes, that one answer took for pictures and files is given back (`page.js`). */
const SWOLLEN = 24 << 20;

onmessage = ({ data: { id, code: piece, begin: first, compiled: before, saved, request } }) => {
  if (piece !== undefined) {
    given(piece);
    return;
  }
  waiting += 1;
  queue = queue.then(async () => {
    try {
      if (first) {
        await begun(before);
        postMessage({ id, spent, memory: kept.memory, compiled: code });
      } else if (saved) {
        if (open) await beside({ copy: saved });
        postMessage({ id });
      } else {
        const size = desk.memory.buffer.byteLength;
        const shown = await told(request);
        // Other answers may take what they need again and again: a search does.
        const passing = request.files?.length > 0 || shown.file;
        const swollen = passing && desk.memory.buffer.byteLength - size > SWOLLEN;
        postMessage({ id, shown, swollen, collection: open?.id ?? null }, [shown.body.buffer]);
      }
    } catch (error) {
      postMessage({ id, failed: String(error?.message ?? error) });
    } finally {
      waiting -= 1;
      setTimeout(workOn);
    }
  });
};
