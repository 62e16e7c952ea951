// What a hand wants on every screen. Without it every form is sent and every page is loaded;
// with it the page stays where it was scrolled to, and the focus on what was touched.

function hand(host, signal) {
  const place = `at:${host.here().split("?")[0]}`;
  addEventListener("submit", (event) => {
    const touched = document.activeElement;
    host.remember(place, JSON.stringify({
      y: scrollY,
      id: touched?.id || event.submitter?.id || null,
    }));
  }, { signal });

  const before = host.recall(place);
  if (before === null) return;
  const { y, id } = JSON.parse(before);
  // Where a deed leads on to a part of the page, that part is shown.
  if (!host.part()) {
    const back = () => scrollTo({ top: y, behavior: "instant" });
    back();
    // Letters that come later than the page move it by a line, and the browser moves along.
    document.fonts?.ready.then(() => { if (Math.abs(scrollY - y) < 40) back(); });
  }
  if (id) document.getElementById(id)?.focus({ preventScroll: true });
}
