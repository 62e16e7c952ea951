// What is on the page: shows what the worker answers, and makes links, forms, files, back and
// forward do what they do where every screen is a page of its own.
//
// An address stands behind the mark of the page's own: `#/heaps?key=1`, with a part of the screen
// behind another one: `#/table#i-3-4`. The page asks nothing of anybody but its worker.

const { textContent: source, dataset: { most } } = document.getElementById("worker");
const notDone = document.getElementById("not-done").content.textContent.trim();
const notOpen = document.getElementById("not-open").content.textContent.trim();
const takesLong = document.getElementById("takes-long").content;
const sourceAt = URL.createObjectURL(new Blob([source], { type: "text/javascript" }));
let worker = seated();

// --- The code of the desk, which stands below this script in pieces: each goes to the worker as soon as
// the browser has read it, and is unpacked and compiled there while the next is read.

let given = 0;

function give(all) {
  const pieces = document.getElementsByClassName("code");
  // The last one that is there may be read only in part.
  for (const whole = pieces.length - (all ? 0 : 1); given < whole; given += 1) {
    worker.postMessage({ code: pieces[given].textContent });
    pieces[given].textContent = "";
  }
  if (all) worker.postMessage({ code: null });
}

const reading = new MutationObserver(() => give(false));
reading.observe(document.body, { childList: true });
document.addEventListener("DOMContentLoaded", () => {
  reading.disconnect();
  give(true);
});

// --- Asking the worker.

const asked = new Map();
let number = 0;
/** The code of the desk, compiled: for the next worker. */
let code = null;

function seated() {
  const worker = new Worker(sourceAt);
  worker.onerror = ({ message }) => failed(new Error(message ?? "worker"));
  worker.onmessage = ({ data: { id, failed, swollen, ...answer } }) => {
    const { good, bad } = asked.get(id);
    asked.delete(id);
    if (failed === undefined) good(answer);
    else bad(new Error(failed));
    if (swollen && asked.size === 0) relieve();
  };
  return worker;
}

/** Puts another worker in this one's place, which knows what is kept. The memory of WebAssembly never
 * becomes less: after photographs were unpacked, or a file with many was put together, this is how the
 * tab becomes small again. It is also how a person stops what takes long: screens that were asked
 * for are given up, and forms that wait behind them are asked anew. */
function relieve() {
  if (!mayRelieve()) return;
  worker.terminate();
  const waiting = [...asked];
  asked.clear();
  worker = seated();
  tell({ begin: true, compiled: code }).then(({ memory }) => { inMemory = memory; }).catch(failed);
  for (const [id, { good, bad, message }] of waiting) {
    if (!changes(message)) {
      bad(new Stopped());
      continue;
    }
    asked.set(id, { good, bad, message });
    worker.postMessage({ id, ...message });
  }
}

/** Not while a form is answered, which is the first that waits: nobody would know whether it was kept. And
 * files were handed over, and cannot be handed over again. */
function mayRelieve() {
  const [first, ...others] = asked.values();
  const holds = ({ message }) => message.request?.files.length > 0;
  return code && !inMemory && !(first && changes(first.message)) && !others.some(holds);
}

const changes = (message) => message.saved !== undefined || message.request?.method === "post";

/** A person did not want to wait any longer. */
class Stopped extends Error {}

function tell(message, transfer = []) {
  number += 1;
  worker.postMessage({ id: number, ...message }, transfer);
  return new Promise((good, bad) => asked.set(number, { good, bad, message }));
}

const MONTHS = ["January", "February", "March", "April", "May", "June", "July", "August",
  "September", "October", "November", "December"];

function today() {
  const now = new Date();
  return `${now.getDate()} ${MONTHS[now.getMonth()]} ${now.getFullYear()}`;
}

/** Something small that the browser remembers; it may not. */
function memory(store) {
  const ours = new Map();
  return {
    get: (name) => { try { return ours.get(name) ?? store().getItem(name); } catch { return null; } },
    set: (name, text) => { ours.set(name, text); try { store().setItem(name, text); } catch { /* it does not */ } },
  };
}
const ofWindow = memory(() => sessionStorage);
const ofBrowser = memory(() => localStorage);

function languages() {
  const chosen = ofBrowser.get("spinney language");
  return [...(chosen ? [chosen] : []), ...navigator.languages];
}

/** Whether the browser has promised to keep what is kept here: not known until it answers. */
let lasting = "";

/** What the desk answers to a request: its page. */
async function ask(address, method = "get", form = "", files = [], trouble = "") {
  const request = {
    method, address, form, files, trouble, at: Date.now(), today: today(), languages: languages(),
    lasting, collection: ofWindow.get("spinney collection"),
  };
  const { shown, collection } = await tell({ request }, files.map(({ bytes }) => bytes.buffer));
  ofWindow.set("spinney collection", collection ?? "");
  return shown;
}

// --- Where one is.

/** Where each screen of the history was scrolled to, by its number; also after the page was loaded anew. */
const scrolled = new Map(JSON.parse(ofWindow.get("spinney scrolled") ?? "[]"));
let place = history.state?.place ?? 0;
addEventListener("pagehide", () => {
  scrolled.set(place, scrollY);
  ofWindow.set("spinney scrolled", JSON.stringify([...scrolled]));
});

const FIRST = "/collections";
const addressOf = (mark) => mark.startsWith("#/") ? mark.slice(1) : FIRST;
let here = FIRST;

function split(address) {
  const mark = address.indexOf("#");
  return mark < 0 ? [address, ""] : [address.slice(0, mark), address.slice(mark + 1)];
}

// --- What the scripts of the screens ask of the page that they are on.

const parsed = ({ body }) => new DOMParser().parseFromString(new TextDecoder().decode(body), "text/html");
const remembered = new Map();
const parts = new Set();

/** Follows an answer that leads on. */
async function followed(address, shown) {
  let [at, answer] = [address, shown];
  for (let steps = 0; answer.status === 303 && steps < 10; steps += 1) {
    at = answer.location;
    answer = await ask(split(at)[0]);
  }
  return { address: at, shown: answer };
}

const host = {
  here: () => split(here)[0],
  part: () => split(here)[1],
  onPart: (hear, signal) => {
    parts.add(hear);
    signal.addEventListener("abort", () => parts.delete(hear));
  },
  remember: (name, text) => remembered.set(name, text),
  recall: (name) => {
    const text = remembered.get(name) ?? null;
    remembered.delete(name);
    return text;
  },
  look: async (address) => {
    const { address: at, shown } = await followed(address, await ask(address));
    return { page: linked(shown), address: at };
  },
  send: async (address, fields) => {
    const { shown } = await followed(address, await ask(address, "post", fields.toString()));
    setTimeout(one);
    return { fine: shown.status < 400, page: linked(shown) };
  },
  go: (address) => {
    if (sending.size === 0) visit(address, "replace").catch(failed);
  },
};

// --- Showing a screen.

/** Lets the browser do what else it has to do: to read a screen, to lay it out and to give it its hands
 * in one go keeps a slow machine for longer than a finger takes to lift. */
const pause = () => globalThis.scheduler?.yield?.() ?? new Promise((done) => {
  const { port1, port2 } = new MessageChannel();
  port1.onmessage = done;
  port2.postMessage(null);
});

const hands = { heaps, table, key, finds, measure };
let hold = new AbortController();
let turn = 0;
/** How many screens and answers to scripts there were, for whoever waits for one. */
let heard = 0;
const one = () => {
  document.documentElement.dataset.first ??= String(performance.now());
  document.documentElement.dataset.shown = String(heard += 1);
};
const pictures = new Map();
let drawn = [];

/** The pictures of a screen, from the worker; those under their hash are kept. */
async function withPictures(page) {
  const fresh = [];
  await Promise.all([...page.querySelectorAll("img[src^='/']")].map(async (image) => {
    const address = image.getAttribute("src");
    let url = pictures.get(address);
    image.removeAttribute("src");
    if (!url) {
      const shown = await ask(address);
      if (shown.status !== 200 || !shown.kind.startsWith("image/")) return;
      url = URL.createObjectURL(new Blob([shown.body], { type: shown.kind }));
      if (address.startsWith("/picture/")) pictures.set(address, url);
      else fresh.push(url);
    }
    // What is not there yet would flash, and have no height. It is not decoded ahead: fifty
    // photographs, decoded whole, take a quarter of a gigabyte.
    const ahead = new Image();
    ahead.src = url;
    await new Promise((there) => { ahead.onload = ahead.onerror = there; });
    image.src = url;
  }));
  return fresh;
}

/** Links as addresses of this page, so that they also open in a window of their own. */
function linked(shown) {
  const page = parsed(shown);
  for (const link of page.querySelectorAll("a[href^='/']:not([download])")) {
    link.setAttribute("href", `#${link.getAttribute("href")}`);
  }
  return page;
}

/** Puts a screen in the place of the one that is there. `how`: push, replace, back, or again, when the page
 * was loaded. */
async function show({ address, shown }, how, mine, there) {
  const page = linked(shown);
  await pause();
  const fresh = await withPictures(page);
  if (mine !== turn) {
    fresh.forEach((url) => URL.revokeObjectURL(url));
    return;
  }
  const left = scrollY;
  hold.abort();
  hold = new AbortController();
  drawn.forEach((url) => URL.revokeObjectURL(url));
  drawn = fresh;
  if (how !== "again") scrolled.set(place, left);
  const { lang } = page.documentElement;
  // To say the same again has every style worked out anew.
  if (document.documentElement.lang !== lang) document.documentElement.lang = lang;
  document.title = page.title;
  document.body.replaceWith(document.adoptNode(page.body));
  here = address;
  if (how === "push") place += 1;
  if (how === "back") place = there;
  const returned = how === "back" || how === "again";
  const [at, part] = [place, split(address)[1]];
  const { signal } = hold;
  const top = returned ? scrolled.get(at) ?? 0 : 0;
  // What stays where it is may be laid out in the next task; anything else would be seen to jump.
  const stays = top === left && !part;
  if (stays) await pause();
  scrollTo({ top, behavior: "instant" });
  if (part) document.getElementById(part)?.scrollIntoView({ behavior: "instant" });
  if (!stays) await pause();
  // To note an address takes the browser as long as half a screen.
  if (how === "push") history.pushState({ place: at }, "", `#${address}`);
  if (how === "replace" || how === "again") history.replaceState({ place: at }, "", `#${address}`);
  if (signal.aborted) return;
  free(mine);
  fromTheTop();
  toPart(part);
  hand(host, signal);
  ofThisHost(signal);
  hands[document.body.dataset.hand]?.(host, signal);
  const said = document.getElementById("told");
  if (said && how !== "replace" && how !== "again") said.textContent = document.title;
  one();
}

/** As on a page that was loaded, Tab begins at the top. */
function fromTheTop() {
  document.body.tabIndex = -1;
  document.body.focus({ preventScroll: true });
  document.body.removeAttribute("tabindex");
}

function toPart(part) {
  const at = part && document.getElementById(part);
  if (!at) return;
  at.scrollIntoView({ behavior: "instant" });
  at.focus({ preventScroll: true });
}

/** A file for the person's own folder. */
function save({ body, kind, file }) {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([body], { type: kind }));
  link.download = file;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

/** A link to a file: the person may go on meanwhile. A copy counts as saved once it was handed over. */
async function fetched(address) {
  const mine = turn += 1;
  busy(mine, { stops: true });
  const answer = await followed(address, await ask(address)).finally(() => free(mine));
  if (!answer.shown.file) {
    if (mine === turn) await show(answer, "push", mine, 0);
    return;
  }
  save(answer.shown);
  await copied(answer.shown);
}

async function copied({ file, head }) {
  if (head !== undefined) await tell({ saved: { name: file, day: today(), head } });
}

const isScreen = ({ kind }) => kind.startsWith("text/html");

/** Goes to an address. */
async function visit(address, how = "push", there = 0) {
  turn += 1;
  const mine = turn;
  busy(mine, { stops: true });
  const [, part] = split(address);
  const answer = await followed(address, await ask(split(address)[0]));
  if (mine !== turn) return;
  if (answer.shown.file || !isScreen(answer.shown)) {
    free(mine);
    save(answer.shown);
    return;
  }
  if (part && !answer.address.includes("#")) answer.address += `#${part}`;
  await show(answer, how === "push" && answer.address === here ? "replace" : how, mine, there);
}

/** What only this host has on a screen: a copy handed to another program, a copy dropped in. */
function ofThisHost(signal) {
  const share = document.getElementById("share-copy");
  const zip = (body, name) => new File([body], name, { type: "application/zip" });
  if (share && navigator.canShare?.({ files: [zip("", "copy.zip")] })) {
    share.hidden = false;
    share.addEventListener("click", async () => {
      const copy = await ask("/saved/copy.zip");
      if (!copy.file) return;
      // Where the browser has meanwhile forgotten the touch, the file is saved.
      const handed = navigator.share({ files: [zip(copy.body, copy.file)] });
      await handed.then(() => copied(copy), ({ name }) => { if (name !== "AbortError") save(copy); });
    }, { signal });
  }
  const copy = document.getElementById("copy-file");
  if (!copy) return;
  const brings = (event) => [...event.dataTransfer.types].includes("Files");
  addEventListener("dragover", (event) => { if (brings(event)) event.preventDefault(); }, { signal });
  addEventListener("drop", (event) => {
    if (!brings(event)) return;
    event.preventDefault();
    copy.files = event.dataTransfer.files;
    copy.form.requestSubmit();
  }, { signal });
}

/** Says that something takes time, once it does; what only reads can be stopped. */
let awaited = 0;

function busy(mine, { stops = false } = {}) {
  awaited = mine;
  const still = () => awaited === mine;
  setTimeout(() => { if (still()) document.querySelector("main")?.setAttribute("aria-busy", "true"); }, 150);
  if (stops) setTimeout(() => { if (still()) offerStop(mine); }, 3000);
}

function free(mine) {
  if (awaited > mine) return;
  awaited = 0;
  document.querySelector("main")?.removeAttribute("aria-busy");
  document.getElementById("at-work")?.remove();
}

function offerStop(mine) {
  if (inMemory || document.getElementById("at-work")) return;
  const slip = document.importNode(takesLong, true).querySelector(`[lang="${document.documentElement.lang}"]`);
  slip.id = "at-work";
  slip.querySelector("button").addEventListener("click", () => {
    if (!mayRelieve()) return;
    slip.remove();
    relieve();
    free(mine);
  });
  document.querySelector("main")?.prepend(slip);
}

/** Forms that are on their way. */
const sending = new Set();

async function send(form, submitter) {
  if (sending.has(form)) return;
  sending.add(form);
  try {
    await sent(form, submitter);
  } finally {
    sending.delete(form);
  }
}

async function sent(form, submitter) {
  turn += 1;
  const mine = turn;
  busy(mine);
  const address = submitter?.getAttribute("formaction") ?? form.getAttribute("action");
  const method = form.getAttribute("method")?.toLowerCase() ?? "get";
  const fields = new URLSearchParams();
  const files = [];
  // Counted before any of it is held.
  const given = [...new FormData(form, submitter)];
  const large = given.reduce((sum, [, { size = 0 }]) => sum + size, 0) > Number(most);
  for (const [field, entry] of given) {
    if (typeof entry === "string") fields.append(field, entry);
    else if ((entry.name || entry.size) && !large) {
      files.push({ field, name: entry.name, bytes: new Uint8Array(await entry.arrayBuffer()) });
    }
  }
  if (method === "get") {
    await visit(fields.size ? `${address}?${fields}` : address);
    return;
  }
  const answer = await followed(address, await ask(address, "post", fields.toString(), files, large ? "large" : ""));
  // Whoever has gone on meanwhile still hears that something was not done.
  if (mine !== turn && answer.shown.status < 400) return;
  if (answer.shown.file) {
    free(mine);
    save(answer.shown);
    return;
  }
  await show(answer, answer.address === here ? "replace" : "push", turn);
}

// --- What a person does.

// A file that is let fall beside its place would take the page away.
for (const kind of ["dragover", "drop"]) {
  addEventListener(kind, (event) => {
    const files = [...event.dataTransfer?.types ?? []].includes("Files");
    if (files && !event.target.closest?.("input[type=file]")) event.preventDefault();
  });
}
let inMemory = false;
addEventListener("beforeunload", (event) => { if (inMemory || sending.size > 0) event.preventDefault(); });

const failed = (error) => {
  if (error instanceof Stopped) return;
  const slip = document.createElement("p");
  slip.setAttribute("role", "alert");
  slip.textContent = `${heard > 0 ? notDone : notOpen} (${error.message})`;
  (document.querySelector("main") ?? document.body).prepend(slip);
};

addEventListener("click", (event) => {
  if (event.defaultPrevented || event.button !== 0) return;
  if (event.ctrlKey || event.metaKey || event.shiftKey || event.altKey) return;
  const link = event.target.closest?.("a[href]");
  const address = link?.getAttribute("href");
  if (!address) return;
  if (address.startsWith("#/")) {
    event.preventDefault();
    chosen(address.slice(1));
  } else if (address.startsWith("#")) {
    event.preventDefault();
    const part = address.slice(1);
    here = `${split(here)[0]}#${part}`;
    history.pushState({ place: place += 1 }, "", `#${here}`);
    toPart(part);
    parts.forEach((hear) => hear());
  } else if (address.startsWith("/")) {
    event.preventDefault();
    (link.hasAttribute("download") ? fetched(address) : visit(address)).catch(failed);
  }
});

/** A link; one that chooses a language is remembered, and leads to the same screen in it. */
function chosen(address) {
  const [path, query] = split(address)[0].split("?");
  const fields = new URLSearchParams(query);
  const language = fields.get("language");
  if (language === null) {
    visit(address).catch(failed);
    return;
  }
  ofBrowser.set("spinney language", language);
  fields.delete("language");
  visit(fields.size ? `${path}?${fields}` : path, "replace").catch(failed);
}

addEventListener("submit", (event) => {
  event.preventDefault();
  send(event.target, event.submitter).catch(failed);
});

addEventListener("popstate", ({ state }) => {
  const address = addressOf(location.hash);
  const [there, part] = split(address);
  if (there === split(here)[0] && part !== split(here)[1]) {
    here = address;
    place = state?.place ?? place;
    toPart(part);
    parts.forEach((hear) => hear());
    return;
  }
  // What was typed into a cell is kept when it is left.
  document.activeElement?.blur?.();
  // A mark that somebody typed is a new screen, and stands in the history already.
  visit(address, state ? "back" : "replace", state?.place).catch(failed);
});

// --- Opening.

history.scrollRestoration = "manual";
const type = async () => {
  const faces = await Promise.all([["regular", "400"], ["bold", "700"]].map(async ([name, weight]) => {
    const { body } = await ask(`/assets/${name}.woff2`);
    return new FontFace("Andika", body, { weight });
  }));
  for (const face of faces) document.fonts.add(await face.load());
};

tell({ begin: true }).then(({ spent, memory, compiled }) => {
  inMemory = memory;
  code = compiled;
  // Asked for, and not waited for: some browsers leave it open until a person decides.
  if (!memory) navigator.storage?.persist?.().then((said) => { lasting = said ? "promised" : "not-promised"; }, () => {});
  for (const [name, since, duration] of spent) {
    performance.measure(name, { start: since - performance.timeOrigin, duration });
  }
}).then(() => Promise.all([type().catch(() => {}), visit(addressOf(location.hash), "again")])).catch(failed);
