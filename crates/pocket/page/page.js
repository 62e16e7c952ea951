// What is on the page: shows what the worker answers, and makes links, forms, files, back and
// forward do what they do where every screen is a page of its own.
//
// An address stands behind the mark of the page's own: `#/heaps?key=1`, with a part of the screen
// behind another one: `#/table#i-3-4`. The page asks nothing of anybody but its worker.

const source = document.getElementById("worker").textContent;
const notDone = document.getElementById("not-done").content.textContent.trim();
const notOpen = document.getElementById("not-open").content.textContent.trim();
const worker = new Worker(URL.createObjectURL(new Blob([source], { type: "text/javascript" })));

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

worker.onmessage = ({ data: { id, failed, ...answer } }) => {
  const { good, bad } = asked.get(id);
  asked.delete(id);
  if (failed === undefined) good(answer);
  else bad(new Error(failed));
};

function tell(message, transfer = []) {
  number += 1;
  worker.postMessage({ id: number, ...message }, transfer);
  return new Promise((good, bad) => asked.set(number, { good, bad }));
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

/** What the desk answers to a request: its page. */
async function ask(address, method = "get", form = "", files = []) {
  const request = {
    method, address, form, files, at: Date.now(), today: today(), languages: languages(),
    collection: ofWindow.get("spinney collection"),
  };
  const { shown, collection } = await tell({ request }, files.map(({ bytes }) => bytes.buffer));
  ofWindow.set("spinney collection", collection ?? "");
  return shown;
}

// --- Where one is.

/** Where each screen of the history was scrolled to, by its number. */
const scrolled = new Map();
let place = history.state?.place ?? 0;

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

const hands = { heaps, table, key, finds };
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

/** Puts a screen in the place of the one that is there. `how`: push, replace, or back. */
async function show({ address, shown }, how, mine, there) {
  const page = linked(shown);
  const fresh = await withPictures(page);
  if (mine !== turn) {
    fresh.forEach((url) => URL.revokeObjectURL(url));
    return;
  }
  hold.abort();
  hold = new AbortController();
  drawn.forEach((url) => URL.revokeObjectURL(url));
  drawn = fresh;
  scrolled.set(place, scrollY);
  document.documentElement.lang = page.documentElement.lang;
  document.title = page.title;
  document.body.replaceWith(document.adoptNode(page.body));
  here = address;
  if (how === "push") history.pushState({ place: place += 1 }, "", `#${address}`);
  if (how === "replace") history.replaceState({ place }, "", `#${address}`);
  free(mine);
  one();
  if (how === "back") place = there;
  scrollTo({ top: how === "back" ? scrolled.get(place) ?? 0 : 0, behavior: "instant" });
  fromTheTop();
  toPart(split(address)[1]);
  hand(host, hold.signal);
  ofThisHost(hold.signal);
  hands[document.body.dataset.hand]?.(host, hold.signal);
  const said = document.getElementById("told");
  if (said && how !== "replace") said.textContent = document.title;
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
  const answer = await followed(address, await ask(address));
  if (!answer.shown.file) {
    await show(answer, "push", turn += 1, 0);
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
  busy(mine);
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

/** Says that something takes time, once it does. */
let awaited = 0;

function busy(mine) {
  awaited = mine;
  setTimeout(() => { if (awaited === mine) document.querySelector("main")?.setAttribute("aria-busy", "true"); }, 150);
}

function free(mine) {
  if (awaited > mine) return;
  awaited = 0;
  document.querySelector("main")?.removeAttribute("aria-busy");
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
  for (const [field, entry] of new FormData(form, submitter)) {
    if (typeof entry === "string") fields.append(field, entry);
    else if (entry.name || entry.size) {
      files.push({ field, name: entry.name, bytes: new Uint8Array(await entry.arrayBuffer()) });
    }
  }
  if (method === "get") {
    await visit(fields.size ? `${address}?${fields}` : address);
    return;
  }
  const answer = await followed(address, await ask(address, "post", fields.toString(), files));
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
worker.onerror = ({ message }) => failed(new Error(message ?? "worker"));

const failed = (error) => {
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

tell({ begin: true }).then(({ spent, memory }) => {
  inMemory = memory;
  // Asked for, and not waited for: some browsers leave it open until a person decides.
  if (!memory) navigator.storage?.persist?.().catch(() => {});
  for (const [name, since, duration] of spent) {
    performance.measure(name, { start: since - performance.timeOrigin, duration });
  }
}).then(() => Promise.all([type().catch(() => {}), visit(addressOf(location.hash), "replace")])).catch(failed);
