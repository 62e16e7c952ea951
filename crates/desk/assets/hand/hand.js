// What a hand wants on every screen. Without it every form is sent and every page is loaded;
// with it the page stays where it was scrolled to, and the focus on what was touched.

const place = `at:${location.pathname}`;

addEventListener("submit", (event) => {
  const touched = document.activeElement;
  sessionStorage.setItem(place, JSON.stringify({
    y: scrollY,
    id: touched?.id || event.submitter?.id || null,
  }));
});

const before = sessionStorage.getItem(place);
if (before !== null) {
  sessionStorage.removeItem(place);
  const { y, id } = JSON.parse(before);
  // Where a deed leads on to a part of the page, that part is shown.
  if (!location.hash) {
    const back = () => scrollTo({ top: y, behavior: "instant" });
    back();
    // Letters that come later than the page move it by a line, and the browser moves along.
    document.fonts?.ready.then(() => { if (Math.abs(scrollY - y) < 40) back(); });
  }
  if (id) document.getElementById(id)?.focus({ preventScroll: true });
}
