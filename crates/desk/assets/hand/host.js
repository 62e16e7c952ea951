// What the scripts of the screens ask of the page that they are on, where every screen is a page
// with an address of its own. Where all screens are in one file it is another object of the same
// shape.

const parsed = (text) => new DOMParser().parseFromString(text, "text/html");

const host = {
  /** The path and the query of this screen. */
  here: () => location.pathname + location.search,
  /** The part of the screen that the address names; empty: none. */
  part: () => location.hash.slice(1),
  onPart: (hear, signal) => addEventListener("hashchange", hear, { signal }),
  /** Something to know on the next screen, once. */
  remember: (name, text) => sessionStorage.setItem(name, text),
  recall: (name) => {
    const text = sessionStorage.getItem(name);
    sessionStorage.removeItem(name);
    return text;
  },
  /** Another screen, not shown: as a document, with the address that it has in the end. */
  look: async (address) => {
    const answer = await fetch(address, { redirect: "follow" });
    return { page: parsed(await answer.text()), address: answer.url };
  },
  /** Sends a form, and gives the screen that follows, not shown; `fine`: it was done. */
  send: async (address, fields) => {
    const answer = await fetch(address, { method: "POST", body: fields });
    return { fine: answer.ok, page: parsed(await answer.text()) };
  },
  /** Shows another screen in the place of this one. */
  go: (address) => location.replace(address),
};
