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
  if (!location.hash) scrollTo({ top: y, behavior: "instant" });
  if (id) document.getElementById(id)?.focus({ preventScroll: true });
}
