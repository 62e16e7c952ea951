// Where collections are kept: the browser's own storage, or, where a browser has none here, the
// memory. Both give the same promises: what `append` has acknowledged is there afterwards, all of
// it or nothing, and nothing is kept that was thought out before somebody else's lines.
//
// A collection is a record with the number of its last line (`head`), how often it was written
// anew (`epoch`) and how many bytes its pictures have (`bytes`), its lines under [id, number] and its pictures under [id, hash].

/** Somebody else kept something since the desk looked. */
class Moved extends Error {}

const lines = (id, from = 1) => IDBKeyRange.bound([id, from], [id, Infinity]);
const pictures = (id) => IDBKeyRange.bound([id], [id, []]);

const isAnew = (record, epoch, head) => record.epoch !== epoch || record.head < head;

const size = (given) => [...given].reduce((sum, [, bytes]) => sum + (bytes?.length ?? 0), 0);

const done = (request) => new Promise((good, bad) => {
  request.onsuccess = () => good(request.result);
  request.onerror = () => bad(request.error);
});

class InBrowser {
  /** Opens the storage; an error says why it cannot be had. */
  static async open() {
    const request = indexedDB.open("spinney", 1);
    // Also where it comes too late to be waited for: a page that is newer must not wait for this one.
    request.addEventListener("success", () => {
      request.result.onversionchange = () => request.result.close();
    });
    request.onupgradeneeded = () => {
      const base = request.result;
      base.createObjectStore("collections", { keyPath: "id" });
      base.createObjectStore("lines");
      base.createObjectStore("pictures");
    };
    // A window with an older page that will not close its hold must not keep this one waiting for ever.
    const late = new Promise((_, bad) => {
      request.onblocked = () => setTimeout(() => bad(new Error("blocked")), 5000);
    });
    return new InBrowser(await Promise.race([done(request), late]));
  }

  constructor(base) {
    this.base = base;
    this.memory = false;
    this.why = "";
  }

  /** One transaction. It is on the disk, or undone, when this returns. */
  async all(mode, work) {
    const begun = () => this.base.transaction(["collections", "lines", "pictures"], mode, { durability: "strict" });
    let hold;
    try {
      hold = begun();
    } catch (error) {
      // The browser has closed it: somebody cleared its data, or a newer page has opened it.
      if (error.name !== "InvalidStateError") throw error;
      this.base = (await InBrowser.open()).base;
      hold = begun();
    }
    const over = new Promise((good, bad) => {
      hold.oncomplete = good;
      hold.onabort = () => bad(hold.error ?? new Error("it was broken off"));
    });
    // Whoever hears of the end below hears it once.
    over.catch(() => {});
    let said;
    try {
      said = await work(
        hold.objectStore("collections"), hold.objectStore("lines"), hold.objectStore("pictures"));
    } catch (error) {
      try { hold.abort(); } catch { /* it has ended */ }
      throw error;
    }
    await over;
    return said;
  }

  list() {
    return this.all("readonly", (collections) => done(collections.getAll()));
  }

  record(id) {
    return this.all("readonly", (collections) => done(collections.get(id)));
  }

  begin(record) {
    return this.all("readwrite", (collections) => done(collections.add(record)));
  }

  /** Notes something about a collection that is not part of it. */
  note(id, news) {
    return this.all("readwrite", async (collections) => {
      const record = await done(collections.get(id));
      if (record) await done(collections.put({ ...record, ...news }));
    });
  }

  /** The record of a collection and the lines that somebody does not have who has read `head` of them;
   * all, where it was written anew meanwhile. */
  since(id, { epoch, head }) {
    return this.all("readonly", async (collections, all) => {
      const record = await done(collections.get(id));
      if (!record) return {};
      const anew = isAnew(record, epoch, head);
      return { record, anew, lines: await done(all.getAll(lines(id, anew ? 1 : head + 1))) };
    });
  }

  picture(id, hash) {
    return this.all("readonly", (_, __, all) => done(all.get([id, hash])));
  }

  append(id, { epoch, head }, added, given) {
    return this.all("readwrite", async (collections, allLines, allPictures) => {
      const record = await done(collections.get(id));
      if (record?.epoch !== epoch || record.head !== head) throw new Moved();
      added.forEach((line, at) => allLines.add(line, [id, head + 1 + at]));
      for (const [hash, bytes] of given) allPictures.put(bytes, [id, hash]);
      collections.put({ ...record, head: head + added.length, bytes: (record.bytes ?? 0) + size(given) });
    });
  }

  /** These lines are the whole journal; of the pictures stay those that are named. */
  rewrite(id, { epoch, head }, whole, given, stays) {
    return this.all("readwrite", async (collections, allLines, allPictures) => {
      const record = await done(collections.get(id));
      if (record?.epoch !== epoch || record.head !== head) throw new Moved();
      allLines.delete(lines(id));
      whole.forEach((line, at) => allLines.add(line, [id, 1 + at]));
      let bytes = size(given);
      for (const key of await done(allPictures.getAllKeys(pictures(id)))) {
        if (stays.has(key[1])) bytes += (await done(allPictures.get(key))).length;
        else allPictures.delete(key);
      }
      for (const [hash, bytes] of given) allPictures.put(bytes, [id, hash]);
      collections.put({ ...record, epoch: epoch + 1, head: whole.length, bytes });
    });
  }

  remove(id) {
    return this.all("readwrite", async (collections, allLines, allPictures) => {
      collections.delete(id);
      allLines.delete(lines(id));
      allPictures.delete(pictures(id));
    });
  }
}

class InMemory {
  /** `why`: "held", "newer", or nothing that is known. */
  constructor(why) {
    this.memory = true;
    this.why = why;
    this.collections = new Map();
  }

  async list() {
    return [...this.collections.values()].map(({ record }) => record);
  }

  async record(id) {
    return this.collections.get(id)?.record;
  }

  async begin(record) {
    this.collections.set(record.id, { record, lines: [], pictures: new Map() });
  }

  async note(id, news) {
    const one = this.collections.get(id);
    if (one) Object.assign(one.record, news);
  }

  async since(id, { epoch, head }) {
    const one = this.collections.get(id);
    if (!one) return {};
    const anew = isAnew(one.record, epoch, head);
    return { record: one.record, anew, lines: one.lines.slice(anew ? 0 : head) };
  }

  async picture(id, hash) {
    return this.collections.get(id)?.pictures.get(hash);
  }

  async append(id, _, added, given) {
    const one = this.collections.get(id);
    if (!one) throw new Moved();
    one.lines.push(...added);
    for (const [hash, bytes] of given) one.pictures.set(hash, bytes);
    Object.assign(one.record, { head: one.lines.length, bytes: size(one.pictures) });
  }

  async rewrite(id, { epoch }, whole, given, stays) {
    const one = this.collections.get(id);
    if (!one) throw new Moved();
    one.lines = whole;
    for (const hash of [...one.pictures.keys()]) if (!stays.has(hash)) one.pictures.delete(hash);
    for (const [hash, bytes] of given) one.pictures.set(hash, bytes);
    Object.assign(one.record, { epoch: epoch + 1, head: whole.length, bytes: size(one.pictures) });
  }

  async remove(id) {
    this.collections.delete(id);
  }
}
