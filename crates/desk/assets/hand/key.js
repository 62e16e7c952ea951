// Adds to the key what a hand wants: a threshold that can be dragged, and a progress that
// shows itself anew without loading the page.

function key(host, signal) {
  const ranges = document.querySelector(".ranges");
  const field = document.getElementById("number");

  if (ranges && field) {
    const { low, high, gap } = Object.fromEntries(
      Object.entries(ranges.dataset).map(([name, text]) => [name, Number(text)]));
    const drawings = [...ranges.querySelectorAll("svg.range")];
    const place = (number) => Math.min(1000, Math.max(0, (number - low) / (high - low) * 1000));
    const show = () => {
      const at = Number(field.value);
      if (!Number.isFinite(at)) return;
      for (const drawing of drawings) {
        const line = drawing.querySelector(".at");
        line.setAttribute("x1", place(at));
        line.setAttribute("x2", place(at));
        const band = drawing.querySelector(".gap");
        band.setAttribute("x", place(at - gap));
        band.setAttribute("width", place(at + gap) - place(at - gap));
      }
    };
    // Steps that a hand can hold: a five-hundredth of what is drawn, in round numbers.
    const step = field.step === "1" ? 1 : 10 ** Math.floor(Math.log10((high - low) / 100));
    const drag = (event) => {
      const box = event.currentTarget.getBoundingClientRect();
      const at = low + (event.clientX - box.left) / box.width * (high - low);
      field.value = Number((Math.round(at / step) * step).toFixed(3));
      show();
    };
    field.addEventListener("input", show);
    for (const drawing of drawings) {
      drawing.classList.add("draggable");
      drawing.addEventListener("pointerdown", (event) => {
        drawing.setPointerCapture(event.pointerId);
        drag(event);
      });
      drawing.addEventListener("pointermove", (event) => {
        if (drawing.hasPointerCapture(event.pointerId)) drag(event);
      });
    }
  }

  const progress = document.getElementById("progress");

  if (progress) {
    const again = async () => {
      const { page, address } = await host.look(host.here());
      if (signal.aborted) return;
      const next = page.getElementById("progress");
      if (!next) {
        host.go(address);
        return;
      }
      progress.replaceChildren(...next.childNodes);
      setTimeout(again, 700);
    };
    setTimeout(again, 700);
  }
}
