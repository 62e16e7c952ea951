// Adds to the heaps what a hand wants: cards that can be dragged, and keys. Everything goes
// through the buttons that are on the cards anyway.

function heaps(host) {
  const press = (card, side) => {
    const button = card.querySelector(`.ways button[value="${side}"]:not(:disabled)`);
    if (!button) return false;
    host.remember("heaps:next", card.id);
    button.click();
    return true;
  };

  const sides = { yes: "yes", no: "no", middle: "middle" };
  let held = null;

  for (const card of document.querySelectorAll(".top .card")) {
    card.draggable = true;
    card.tabIndex = 0;
    card.addEventListener("dragstart", (event) => {
      held = card;
      event.dataTransfer.effectAllowed = "move";
      event.dataTransfer.setData("text/plain", card.querySelector(".name").textContent);
    });
    card.addEventListener("dragend", () => { held = null; });
    card.addEventListener("keydown", (event) => {
      if (event.target !== card || event.ctrlKey || event.metaKey || event.altKey) return;
      const side = { ArrowLeft: "yes", ArrowRight: "no", ArrowUp: "middle", ArrowDown: "both" }[event.key];
      if (side && press(card, side)) event.preventDefault();
    });
  }

  for (const heap of document.querySelectorAll(".top .heap")) {
    heap.addEventListener("dragover", (event) => {
      if (!held) return;
      event.preventDefault();
      heap.classList.add("over");
    });
    heap.addEventListener("dragleave", () => heap.classList.remove("over"));
    heap.addEventListener("drop", (event) => {
      event.preventDefault();
      heap.classList.remove("over");
      const side = sides[heap.dataset.side];
      // In the middle lies what varies; what nobody has placed is there already.
      if (held && !press(held, side) && side === "middle") press(held, "both");
    });
  }

  // After a card was moved, the next that waits has the focus, so that a heap is sorted by the
  // arrow keys alone.
  const moved = host.recall("heaps:next");
  if (moved !== null) {
    const card = document.querySelector(".heap.middle .card:has(.waits)") ??
      document.querySelector(".heap.middle .card") ?? document.getElementById(moved);
    card?.focus({ preventScroll: true });
  }
}
