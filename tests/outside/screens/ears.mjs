// Somebody who only hears the screen: everything is found in the browser's own accessibility
// tree, by its role and its name, and by nothing else. Where two things of one role have one
// name the person cannot tell them apart, so that is an error.

const plain = (text) => (text ?? "").replace(/\s+/g, " ").trim();

export class Ears {
  static async of(page) {
    const talk = await page.context().newCDPSession(page);
    await talk.send("DOM.enable");
    await talk.send("Accessibility.enable");
    return new Ears(page, talk);
  }

  constructor(page, talk) {
    Object.assign(this, { page, talk });
  }

  /** Everything that is said, in order. */
  async all() {
    const { nodes } = await this.talk.send("Accessibility.getFullAXTree");
    const byId = new Map(nodes.map((node) => [node.nodeId, node]));
    const said = nodes.filter((node) => !node.ignored).map((node) => ({
      role: node.role.value,
      name: plain(node.name?.value),
      value: plain(String(node.value?.value ?? "")),
      level: node.properties?.find(({ name }) => name === "level")?.value.value,
      element: node.backendDOMNodeId,
      inside: (role, name) => {
        for (let up = byId.get(node.parentId); up; up = byId.get(up.parentId)) {
          if (up.role?.value === role && plain(up.name?.value) === name) return true;
        }
        return false;
      },
    }));
    return said;
  }

  /** The one thing of this role and name; `inside` a part of the screen, by its role and name. */
  async one(role, name, inside) {
    const fits = (one) => one.role === role && one.name === name && (!inside || one.inside(...inside));
    const found = (await this.all()).filter(fits);
    if (found.length !== 1) throw new Error(`${found.length} times ${role} “${name}”`);
    return found[0];
  }

  async touch(role, name, inside) {
    const { element } = await this.one(role, name, inside);
    await this.talk.send("DOM.focus", { backendNodeId: element });
  }

  /** Presses a link or a button, and waits for the page that follows. */
  async press(role, name, inside) {
    await this.touch(role, name, inside);
    await Promise.all([this.page.waitForNavigation(), this.page.keyboard.press("Enter")]);
  }

  /** Goes to another screen by the ways at the head of every page. */
  screen(name) {
    return this.press("link", name, ["navigation", "Screens"]);
  }

  async type(name, text) {
    await this.touch("textbox", name);
    await this.page.keyboard.press("ControlOrMeta+A");
    await this.page.keyboard.insertText(text);
  }

  /** Presses a link to a file, and gives the file. */
  async take(name) {
    await this.touch("link", name);
    const [file] = await Promise.all([this.page.waitForEvent("download"), this.page.keyboard.press("Enter")]);
    return file;
  }

  /** Whether a text is said somewhere. */
  async hears(text) {
    return (await this.all()).some(({ name, value }) => name.includes(text) || value.includes(text));
  }

  /** The first heading: what screen this is. */
  async title() {
    return (await this.all()).find(({ role, level }) => role === "heading" && level === 1)?.name;
  }
}
