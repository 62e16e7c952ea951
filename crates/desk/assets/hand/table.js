// What a hand wants in a table: keys that go from cell to cell, every cell kept as soon as one
// leaves it, a block pasted from a spreadsheet. Without it the form is sent as a whole.

function table(host, signal) {
  // Also when another screen is there already: what was typed before is still sent from it.
  const cells = document.getElementById("cells");
  const form = () => cells;
  const told = (text) => { const at = document.getElementById("told"); if (at) at.textContent = text; };
  const cellOf = (input) => input?.closest?.("#cells td");
  const isCell = (at) => at instanceof HTMLInputElement && /^i-\d+-\d+$/.test(at.id);
  const base = (input) => cellOf(input).querySelector("input[type=hidden]");
  const changed = (input) => input.value.trim() !== base(input).value.trim();

  // Writing on (the arrows move in the text) or going about (the arrows move between cells).
  let writing = null;

  function go(input) {
    if (!input) return;
    writing = null;
    input.focus();
    input.select();
  }

  function grid() {
    return [...form().querySelectorAll("tbody tr")].map((row) =>
      [...row.querySelectorAll("td")].map((cell) => cell.querySelector("input[id^=i-]")));
  }

  function placeOf(input, rows) {
    for (let y = 0; y < rows.length; y++) {
      const x = rows[y].indexOf(input);
      if (x >= 0) return { x, y };
    }
    return null;
  }

  function next(input, dx, dy) {
    const rows = grid();
    const at = placeOf(input, rows);
    if (!at) return null;
    let { x, y } = at;
    for (;;) {
      x += dx; y += dy;
      if (y < 0 || y >= rows.length || x < 0 || x >= rows[y].length) return null;
      if (rows[y][x]) return rows[y][x];
    }
  }

  function end(input, last, whole) {
    const rows = grid();
    const at = placeOf(input, rows);
    if (!at) return null;
    const cells = (whole ? rows.flat() : rows[at.y]).filter(Boolean);
    return last ? cells[cells.length - 1] : cells[0];
  }

  document.addEventListener("keydown", (event) => {
    const input = event.target;
    if (!isCell(input) || event.altKey || event.isComposing) return;
    const { key } = event;
    const free = writing !== input;
    const along = document.dir === "rtl" ? -1 : 1;
    const move = {
      ArrowUp: () => next(input, 0, -1),
      ArrowDown: () => next(input, 0, 1),
      Enter: () => next(input, 0, event.shiftKey ? -1 : 1) ?? input,
      ...(free && !event.shiftKey && {
        ArrowLeft: () => next(input, -along, 0),
        ArrowRight: () => next(input, along, 0),
        Home: () => end(input, false, event.ctrlKey || event.metaKey),
        End: () => end(input, true, event.ctrlKey || event.metaKey),
      }),
    }[key];
    if (move && !(event.shiftKey && key !== "Enter")) {
      event.preventDefault();
      const to = move();
      if (to === input) keep([input]);
      go(to);
    } else if (key === "Tab" && !event.ctrlKey && !event.metaKey) {
      // Cell after cell, row after row; past the last one, and into what is to be decided in a
      // cell, Tab goes on as everywhere.
      if (!event.shiftKey && cellOf(input).querySelector("button, summary")) return;
      const cells = grid().flat().filter(Boolean);
      const to = cells[cells.indexOf(input) + (event.shiftKey ? -1 : 1)];
      if (!to) return;
      event.preventDefault();
      go(to);
    } else if (key === "Escape") {
      if (!changed(input) && free) return;
      event.preventDefault();
      input.value = base(input).value;
      go(input);
    } else if (key === "F2") {
      event.preventDefault();
      writing = input;
      input.setSelectionRange(input.value.length, input.value.length);
    } else if (key.length === 1 && !event.ctrlKey && !event.metaKey) {
      writing = input;
    }
  }, { signal });

  // The first touch goes to a cell, the second one into its text.
  document.addEventListener("mousedown", (event) => {
    if (isCell(event.target) && document.activeElement === event.target) writing = event.target;
  }, { signal });
  document.addEventListener("focusin", (event) => {
    if (isCell(event.target) && writing !== event.target) { writing = null; event.target.select(); }
  }, { signal });
  document.addEventListener("focusout", (event) => {
    if (!isCell(event.target) || !changed(event.target)) return;
    const to = event.relatedTarget;
    // Who decides in a cell by its buttons writes nothing into it besides.
    if (to instanceof HTMLButtonElement && cellOf(to) === cellOf(event.target)) {
      event.target.value = base(event.target).value;
      return;
    }
    keep([event.target]);
  }, { signal });

  // Cells wait for each other, so that answers come in the order of the questions. What still
  // waits is newer than an answer that comes before it.
  let queue = Promise.resolve();
  const waiting = [];
  function keep(inputs) {
    const sent = inputs.map((input) => ({
      id: input.id, name: input.name, text: input.value,
      base: base(input).name, was: base(input).value,
    }));
    // A cell that is sent counts as kept: it is not sent again when the focus leaves it.
    for (const input of inputs) base(input).value = input.value;
    waiting.push(sent);
    queue = queue.then(() => send(sent)).catch(() => {
      for (const cell of sent) {
        const input = document.getElementById(cell.id);
        if (input) base(input).value = cell.was;
      }
      const slip = document.getElementById("not-kept");
      if (slip) { slip.hidden = false; told(slip.textContent); }
    });
  }

  async function send(sent) {
    const fields = new URLSearchParams();
    for (const name of ["back", "as", "head"]) fields.set(name, form().elements[name].value);
    for (const cell of sent) { fields.set(cell.name, cell.text); fields.set(cell.base, cell.was); }
    const { fine, page } = await host.send("/do/cells", fields).finally(() => waiting.shift());
    if (!fine || !page.getElementById("cells")) {
      const slip = page.querySelector("[role=alert]");
      if (!slip) throw new Error("not kept");
      for (const cell of sent) {
        const input = document.getElementById(cell.id);
        if (input) base(input).value = cell.was;
      }
      told(slip.textContent);
      document.getElementById("margin")?.prepend(document.adoptNode(slip));
      return;
    }
    const slip = document.getElementById("not-kept");
    if (slip) slip.hidden = true;
    take(page);
  }

  // Takes over what the new page says, and leaves alone what a hand is at.
  function take(page) {
    if (signal.aborted) return;
    const at = document.activeElement;
    const newer = new Set(waiting.flat().map((cell) => cell.id));
    for (const cell of document.querySelectorAll("#cells td")) {
      const fresh = page.getElementById(cell.id);
      const input = cell.querySelector("input[id^=i-]");
      if (!fresh || newer.has(input?.id) || (input && input !== at && changed(input))) continue;
      if (cell.contains(at)) {
        const from = fresh.querySelector("input[type=hidden]");
        // While somebody writes on here, what was sent is what stands there for them.
        if (from && input === at && !changed(input)) {
          base(input).value = from.value;
          if (writing !== input) input.value = fresh.querySelector("input[id^=i-]").value;
        }
        const notes = fresh.querySelector(".notes");
        const old = cell.querySelector(".notes");
        if (input === at) {
          cell.className = fresh.className;
          old?.remove();
          if (notes) cell.append(document.adoptNode(notes));
        }
        continue;
      }
      if (cell.outerHTML !== fresh.outerHTML) cell.replaceWith(document.adoptNode(fresh));
      else if (input) base(input).value = fresh.querySelector("input[type=hidden]").value;
    }
    for (const part of ["margin"]) {
      const old = document.getElementById(part);
      const fresh = page.getElementById(part);
      if (!old || !fresh || old.contains(at)) continue;
      const panel = old.querySelector("#panel");
      const freshPanel = fresh.querySelector("#panel");
      // What is being typed in a character's sheet stays.
      if (panel && freshPanel) freshPanel.replaceWith(panel);
      old.replaceWith(document.adoptNode(fresh));
    }
    const heads = page.querySelector(".back-and-forth");
    const here = document.querySelector(".back-and-forth");
    if (heads && here && !here.contains(at)) here.replaceWith(document.adoptNode(heads));
    // The cells carry what stood in them, each by itself, so the form may say that it saw it all.
    document.body.dataset.head = page.body.dataset.head ?? "";
    form().elements.head.value = page.getElementById("cells").elements.head.value;
  }

  // A block from a spreadsheet: cells with tabs between, rows with line ends; a cell with either
  // in it stands between quotation marks.
  function block(text) {
    const rows = [[]];
    let cell = "", quoted = false;
    const put = () => { rows[rows.length - 1].push(cell.replace(/\s+/g, " ").trim()); cell = ""; };
    for (let n = 0; n < text.length; n++) {
      const sign = text[n];
      if (quoted) {
        if (sign === '"' && text[n + 1] === '"') { cell += '"'; n++; }
        else if (sign === '"') quoted = false;
        else cell += sign;
      } else if (sign === '"' && cell === "" && /^"(?:[^"]|"")*"(?:[\t\r\n]|$)/.test(text.slice(n))) quoted = true;
      else if (sign === "\t") put();
      else if (sign === "\n") { put(); rows.push([]); }
      else if (sign !== "\r") cell += sign;
    }
    put();
    if (rows.length > 1 && rows[rows.length - 1].join("") === "") rows.pop();
    return rows;
  }

  document.addEventListener("paste", (event) => {
    const first = event.target;
    if (!isCell(first)) return;
    const text = event.clipboardData?.getData("text/plain") ?? "";
    if (!/[\t\n]/.test(text.replace(/[\r\n]+$/, ""))) return;
    event.preventDefault();
    const rows = grid();
    const at = placeOf(first, rows);
    const filled = [];
    let outside = 0;
    block(text).forEach((cells, dy) => cells.forEach((typed, dx) => {
      const input = rows[at.y + dy]?.[at.x + dx];
      if (!input) { outside += typed === "" ? 0 : 1; return; }
      if (input.value.trim() === typed) return;
      input.value = typed.slice(0, input.maxLength > 0 ? input.maxLength : undefined);
      filled.push(input);
    }));
    if (filled.length) keep(filled);
    if (outside) {
      const slip = document.getElementById("not-pasted");
      if (slip) { slip.hidden = false; told(slip.textContent); }
    }
  }, { signal });

  // A link to a cell puts the hand on it.
  const linked = () => {
    const input = document.getElementById(host.part());
    if (isCell(input)) go(input);
    else if (input?.id === "panel") input.focus();
  };
  host.onPart(linked, signal);
  linked();
}
