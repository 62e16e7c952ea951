// Names leaves in one pass: Enter goes on to the next leaf and at the last one to the button, and the
// leaf whose name is typed is marked in the picture.

function measure(_host, signal) {
  const names = [...document.querySelectorAll(".leaf-card input")];
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
  if (document.activeElement === document.body) names[0]?.focus({ preventScroll: true });
}
