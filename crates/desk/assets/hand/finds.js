// Adds to the finds what a hand wants: pictures can be dropped on their form, or pasted. They
// go into the field that is there anyway, and are sent by its button.

function finds(host, signal) {
  const told = document.getElementById("told");

  const take = (input, files) => {
    const fitting = [...files].filter((file) => /^image\/(jpeg|png)$/.test(file.type));
    if (fitting.length === 0) return false;
    const all = new DataTransfer();
    const before = input.multiple ? [...input.files] : [];
    const more = input.multiple ? fitting : fitting.slice(0, 1);
    for (const file of [...before, ...more]) all.items.add(file);
    input.files = all.files;
    if (told) told.textContent = `${all.files.length} · ${input.dataset.dropped}`;
    input.focus();
    return true;
  };

  for (const area of document.querySelectorAll(".drop")) {
    const input = area.querySelector("input[type=file]");
    const form = area.closest("form");
    area.querySelector(".drop-here").hidden = false;
    form.addEventListener("dragover", (event) => {
      if (![...event.dataTransfer.types].includes("Files")) return;
      event.preventDefault();
      area.classList.add("over");
    });
    form.addEventListener("dragleave", (event) => {
      if (!form.contains(event.relatedTarget)) area.classList.remove("over");
    });
    form.addEventListener("drop", (event) => {
      area.classList.remove("over");
      if (take(input, event.dataTransfer.files)) event.preventDefault();
    });
    document.addEventListener("paste", (event) => {
      if (event.clipboardData && take(input, event.clipboardData.files)) event.preventDefault();
    }, { signal });
  }
}
