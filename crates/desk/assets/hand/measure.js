// Names leaves in one pass: Enter goes on to the next leaf and at the last one to the button, and the
// leaf whose name is typed is marked in the picture. A leaf that is put right takes its places from
// clicks on its picture.

function measure(_host, signal) {
  const names = [...document.querySelectorAll(".leaf-card input[list=kinds]")];
  const go = document.getElementById("measure-look");
  names.forEach((input, at) => {
    input.addEventListener("keydown", (event) => {
      if (event.key !== "Enter" || event.isComposing) return;
      event.preventDefault();
      const next = names[at + 1] ?? go;
      next.focus();
      next.scrollIntoView({ block: "nearest" });
    }, { signal });
    const lines = document.getElementById(`lines-${input.id.slice("name-".length)}`);
    input.addEventListener("focus", () => lines?.classList.add("here"), { signal });
    input.addEventListener("blur", () => lines?.classList.remove("here"), { signal });
  });
  places(signal);
  if (document.activeElement === document.body) names[0]?.focus({ preventScroll: true });
}

/** A click on the large picture is typed into the field that was chosen last, and marked there. */
function places(signal) {
  const picture = document.querySelector("svg.places");
  const fields = [...document.querySelectorAll("input.place")];
  if (!picture || fields.length === 0) return;
  for (const how of document.querySelectorAll(".by-click")) how.hidden = false;
  let chosen = fields[0];
  const choose = (field) => {
    chosen = field;
    for (const other of fields) other.classList.toggle("chosen", other === field);
  };
  choose(chosen);
  const marks = new Map();
  const mark = (field, x, y) => {
    marks.get(field)?.remove();
    const dot = document.createElementNS("http://www.w3.org/2000/svg", "circle");
    const large = picture.viewBox.baseVal;
    for (const [name, value] of [["cx", x], ["cy", y], ["r", Math.max(large.width, large.height) / 120]]) {
      dot.setAttribute(name, value);
    }
    dot.classList.add("said");
    picture.append(dot);
    marks.set(field, dot);
  };
  for (const field of fields) field.addEventListener("focus", () => choose(field), { signal });
  picture.addEventListener("click", (event) => {
    // A field that is folded away takes nothing.
    if (chosen.offsetParent === null) return;
    const place = new DOMPoint(event.clientX, event.clientY).matrixTransform(picture.getScreenCTM().inverse());
    // The middle of the first pixel is half a pixel from the corner.
    chosen.value = `${(place.x - .5).toFixed(1)} ${(place.y - .5).toFixed(1)}`;
    mark(chosen, place.x, place.y);
    // On to what else is asked there, and then to its button.
    const group = chosen.closest(".one-line");
    const empty = [...group.querySelectorAll("input")].find((input) => !input.value);
    (empty ?? group.querySelector("button")).focus({ preventScroll: true });
  }, { signal });
}
