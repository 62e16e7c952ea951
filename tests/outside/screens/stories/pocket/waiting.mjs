// What takes long on the page that holds everything can be stopped, and nothing is lost by it: a form that
// waited behind it is answered. A page that is loaded anew is where it was, and scrolled as it was.
import { LAPTOP } from "../../stage.mjs";

/** Has the desk think for a long time about the list of words. */
const slow = () => {
  const Real = Blob;
  const script = `
    const Instance = WebAssembly.Instance;
    WebAssembly.Instance = function (module, imports) {
      const { exports } = new Instance(module, imports);
      const ask = (room, length) => {
        const asked = new TextDecoder().decode(new Uint8Array(exports.memory.buffer, room, length));
        if (asked.includes("address=%2Fwords")) for (const until = Date.now() + 60000; Date.now() < until;);
        return exports.ask(room, length);
      };
      return { exports: { ...exports, ask } };
    };`;
  globalThis.Blob = class extends Real {
    constructor(parts, options) {
      super(options?.type === "text/javascript" ? [script, ...parts] : parts, options);
    }
  };
};

export async function waiting(stage) {
  const host = await stage.open();
  host.script = [slow];
  const page = await stage.window(host, LAPTOP);
  await page.goto(`${host.address}/finds`);
  await page.locator("#names").fill("holly");
  await Promise.all([page.waitForNavigation(), page.locator("#add-finds").click()]);
  await page.getByRole("link", { name: "Words", exact: true }).click();
  const stop = page.locator("#at-work button");
  await stop.waitFor();
  await stage.look(page, "at work");
  await stop.click();
  await page.locator("#at-work").waitFor({ state: "detached" });
  stage.expect(await page.locator("main").getAttribute("aria-busy") === null, "nothing is waited for any more");
  stage.expect((await page.textContent("main")).includes("holly"), "the screen that was there is there");
  // A form is sent while something else takes long; the stop has it answered at once.
  await page.getByRole("link", { name: "Words", exact: true }).click();
  await stop.waitFor();
  await page.locator("#names").fill("ivy");
  await page.locator("#add-finds").click();
  const since = Date.now();
  await Promise.all([page.waitForNavigation(), stop.click()]);
  stage.expect(Date.now() - since < 30000, "the form did not wait for what was stopped");
  stage.expect((await page.textContent("main")).includes("ivy"), "what the form said is kept");
  await scrolled(stage, page, host);
  host.end();
}

async function scrolled(stage, page, host) {
  await page.goto(`${host.address}/collections`);
  await Promise.all([page.waitForNavigation(), page.locator("#begin-walk").click()]);
  await page.goto(`${host.address}/table`);
  await page.evaluate(() => scrollTo(0, 400));
  const before = await page.evaluate(() => scrollY);
  await page.reload();
  await page.waitForFunction(() => document.documentElement.dataset.shown !== undefined);
  stage.expect(before > 200 && await page.evaluate(() => scrollY) === before, "a page that is loaded anew is scrolled as it was");
}
