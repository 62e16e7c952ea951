// A browser that keeps nothing, one whose storage is full, and one that fails: a sentence and a way
// on, and nothing that was acknowledged is lost.
import { LAPTOP } from "../../stage.mjs";

/** Has the worker begin with a script: the page hands its source to a blob. */
const before = (script) => {
  const Real = Blob;
  globalThis.Blob = class extends Real {
    constructor(parts, options) {
      super(options?.type === "text/javascript" ? [script, ...parts] : parts, options);
    }
  };
};

export async function refused(stage) {
  await keepsNothing(stage);
  await full(stage);
}

async function keepsNothing(stage) {
  const host = await stage.open();
  host.script = [before, "Object.defineProperty(self, 'indexedDB', { get() { throw new DOMException('no', 'SecurityError'); } });"];
  const page = await stage.window(host, LAPTOP);
  await page.goto(`${host.address}/collections`);
  stage.expect((await page.textContent("main")).includes("keeps nothing here"), "the list says that nothing is kept");
  await stage.look(page, "memory");
  await step(page, "#begin-walk");
  await page.goto(`${host.address}/heaps?key=1`);
  stage.expect((await page.textContent("header")).includes("Kept in memory only"), "every screen says so");
  await page.goto(`${host.address}/saved`);
  const [file] = await Promise.all([page.waitForEvent("download"), page.locator("#save-copy").click()]);
  stage.expect(file.suggestedFilename().endsWith(".zip"), "a copy can be saved all the same");
  host.end();
}

async function full(stage) {
  const host = await stage.open();
  host.script = [before, `
    const add = IDBObjectStore.prototype.add;
    IDBObjectStore.prototype.add = function (value, key) {
      if (value instanceof Uint8Array && new TextDecoder().decode(value).includes("the last straw")) {
        throw new DOMException("full", "QuotaExceededError");
      }
      return add.call(this, value, key);
    };
    const put = IDBObjectStore.prototype.put;
    IDBObjectStore.prototype.put = function (value, key) {
      if (value?.copy || value?.title) throw new DOMException("full", "QuotaExceededError");
      return put.call(this, value, key);
    };`];
  const page = await stage.window(host, LAPTOP);
  await page.goto(host.address);
  await page.locator("#names").fill("holly");
  await step(page, "#add-finds");
  await page.locator("#names").fill("the last straw");
  await step(page, "#add-finds");
  const said = await page.textContent("main");
  stage.expect(said.includes("no room left"), "it says that there is no room");
  stage.expect(said.includes("the last straw"), "what was typed is still there");
  await stage.look(page, "full");
  await page.goto(`${host.address}/saved`);
  const [copy] = await Promise.all([page.waitForEvent("download"), page.locator("#save-copy").click()]);
  stage.expect(copy.suggestedFilename().endsWith(".zip"), "a copy can be saved though nothing can be noted of it");
  await page.reload();
  await page.goto(host.address);
  const finds = await page.textContent("main");
  stage.expect(finds.includes("holly") && !finds.includes("the last straw"), "what was kept is there, and no half");
  host.end();
}

async function step(page, button) {
  await Promise.all([page.waitForNavigation(), page.locator(button).click()]);
}
