// Only in the preview: asks once a second whether anything changed, shows in a bar what is to mend,
// marks it beside its place, lets texts be changed, and loads the page anew. No page elsewhere can
// read the answer.
(() => {
  const preview = window.danceUnitPreview;
  const { made, plain } = preview;
  const here = document.currentScript.src;
  const at = (name) => new URL(name, here);
  const [, slug, page] = /\/units\/([^/]+)\/([^/]*)$/.exec(location.pathname) || [];
  const lesson = /^lesson-\d+/.exec(page || "");
  const file = slug && `units/${slug}/${lesson ? lesson[0] : "unit"}.md`;
  const json = { "Content-Type": "application/json" };
  let number = null;
  let seen = "";
  let editing = null;

  const style = made("link", { rel: "stylesheet", href: at("preview.css").href });
  document.head.append(style);
  const says = made("strong", { id: "preview-says" });
  const answer = made("span", { id: "preview-answer" });
  const undo = made("button", { type: "button", textContent: "Undo", hidden: true });
  const list = made("ul", {});
  const all = made("pre", { id: "preview-problems" });
  const more = made("details", {}, made("summary", { textContent: "What and where" }), list, all);
  const others = made("div", {});
  const rest = made(
    "details",
    { id: "preview-rest", hidden: true },
    made("summary", { textContent: "Choices, numbers and lists of this file" }),
    others,
  );
  const line = made("p", {}, says, " ", answer);
  const acts = made("p", { className: "preview-acts" });
  if (file) {
    const whole = lesson ? "Add to this lesson, or change it…" : "Add to this unit, or change it…";
    acts.append(preview.opener(whole, whole, []), ...preview.chooser());
  }
  acts.append(undo);
  line.setAttribute("role", "status");
  const bar = made("div", { id: "preview-bar", hidden: true }, line, acts, more, rest);
  document.body.append(bar);

  const body = document.querySelector("main") || document.body;
  const untouched = "#preview-bar, dialog, .preview-step, .preview-more, script, style, svg, select, a, button, .preview-mark";

  preview.untouched = untouched;

  function show(state) {
    const told = JSON.stringify([state.marks, state.older, state.problems]);
    if (told === seen) return;
    seen = told;
    const mine = state.marks.filter((one) => one.file === file);
    document.querySelectorAll(".preview-mark").forEach((one) => one.remove());
    says.replaceChildren(...preview.summary(state, { file, slug, lesson }));
    list.replaceChildren(
      ...mine.map((one) =>
        made("li", {}, `Line ${one.line}: ${one.message}. To mend it: ${one.help}.`),
      ),
    );
    mine.forEach((one, n) =>
      preview.mark(one, n + 1, () => {
        more.open = true;
        list.children[n].scrollIntoView({ block: "nearest" });
      }),
    );
    all.textContent = state.problems;
    all.hidden = !state.problems;
    bar.hidden = !says.textContent && !state.problems && rest.hidden;
    document.body.classList.toggle("preview-older", state.older.includes(slug));
  }

  // What the button would undo stands on it; it is of this page's file alone.
  function canUndo(what) {
    undo.hidden = !what;
    undo.textContent = what ? `Undo: ${what}` : "Undo";
  }

  async function send(name, asked) {
    const sent = { method: "POST", headers: json, body: JSON.stringify(asked) };
    const got = await fetch(at(name), sent);
    const { said, undo: next } = await got.json();
    answer.textContent = said;
    bar.hidden = false;
    if (got.ok) canUndo(next);
    return { ok: got.ok, said };
  }
  Object.assign(preview, { at, file, send, slug });

  async function finish(keep) {
    if (!editing) return;
    const { element, text, path, was, field } = editing;
    editing = null;
    element.contentEditable = "false";
    const fresh = plain(element.textContent);
    if (!keep || fresh === plain(text)) {
      field.typed = "";
      element.replaceChildren(...was);
      return;
    }
    const { ok } = await send("preview-change", { file, path, old: text, new: fresh });
    // what she typed is there again at the next click, to be mended
    field.typed = ok ? "" : fresh;
    if (!ok) element.replaceChildren(...was);
  }

  // What is typed over is what the file says: no quotation mark, capital or mark of the page's own.
  function start(element, field) {
    if (editing) return;
    editing = { element, ...field, field, was: [...element.childNodes] };
    element.textContent = field.typed || field.text;
    element.contentEditable = "plaintext-only";
    if (element.contentEditable !== "plaintext-only") element.contentEditable = "true";
    element.focus();
  }

  function editable(element, field) {
    element.classList.add("preview-text");
    element.dataset.previewPath = JSON.stringify(field.path);
    element.tabIndex = 0;
    element.title = "Click to change this text; Enter keeps it, Escape leaves it";
    element.addEventListener("click", () => start(element, field));
    element.addEventListener("blur", () => finish(true));
    element.addEventListener("keydown", (event) => {
      if (event.key === "Escape") finish(false);
      else if (event.key === "Enter") {
        event.preventDefault();
        if (editing) finish(true);
        else start(element, field);
      }
    });
  }

  async function offer() {
    const got = file ? await fetch(at(`preview-texts/${file}`), { cache: "no-store" }) : null;
    if (!got || !got.ok || !(got.headers.get("content-type") || "").includes("json")) return;
    for (const { element, field } of preview.sentences(await got.json(), body)) editable(element, field);
  }

  const SAID = { up: "Up", down: "Down", again: "Write it again", away: "Take away", new: "Add a step below" };

  // A move cell by cell, under its columns; in the file each cell stays as wide as it was.
  function moveField(one) {
    const row = made("fieldset", { className: "preview-row" }, made("legend", { textContent: one.within }));
    const inputs = one.cells.map(({ called, value, words }) => {
      const known = ["", ...words];
      const choose = words.length && known.includes(value);
      const input = choose
        ? made("select", {}, ...known.map((word) => made("option", { textContent: word, selected: word === value })))
        : made("input", { type: "text", value });
      input.dataset.path = [...one.path, called].join(".");
      row.append(made("label", {}, made("span", { textContent: called }), " ", input));
      return input;
    });
    const were = one.value.split("|");
    const cell = (input, n) => {
      const was = were[n] ?? " ";
      const fresh = `${n ? " " : ""}${plain(input.value.replaceAll("|", " "))}`;
      return `${fresh.padEnd(was.trimEnd() === was ? 0 : was.length - 1)} `;
    };
    inputs.forEach((input) =>
      input.addEventListener("change", async () => {
        const fresh = inputs.map(cell).join("|").replace(/[\s|]+$/, "");
        const { ok } = await send("preview-set", { file, path: one.path, old: one.value, new: fresh });
        if (ok) one.value = fresh;
        else inputs.forEach((each, n) => (each.value = one.cells[n].value));
      }),
    );
    return row;
  }

  function valueField(one) {
    if (one.cells.length) return moveField(one);
    const inStep = one.path[0] === "steps" && one.path.length === 3;
    const name = inStep || one.path.length === 1 ? one.called : `${one.within}: ${one.called.toLowerCase()}`;
    const field = made("label", {}, made("span", { textContent: name }), " ");
    const set = async (fresh) => (await send("preview-set", { file, path: one.path, old: one.value, new: fresh })).ok;
    let input;
    if (one.choices.length) {
      const words = one.choices.map(String);
      const option = (word) => made("option", { textContent: { true: "yes", false: "no" }[word] || word });
      input = made("select", {}, ...words.map(option));
      input.selectedIndex = words.indexOf(String(one.value));
      input.addEventListener("change", async () => {
        const ok = await set(one.choices[input.selectedIndex]);
        if (!ok) input.selectedIndex = words.indexOf(String(one.value));
      });
    } else {
      const number = typeof one.value === "number";
      input = made("input", { type: number ? "number" : "text", step: "any", value: one.value });
      input.addEventListener("change", async () => {
        const fresh = number ? Number(input.value) : plain(input.value);
        const ok = input.value.trim() !== "" && (await set(fresh));
        if (!ok) input.value = one.value;
      });
    }
    input.dataset.path = one.path.join(".");
    input.dataset.previewPath = JSON.stringify(one.path);
    field.append(input);
    return field;
  }

  function ways(path, part, names) {
    const name = part.called;
    return names.map((way) => {
      const button = made("button", { type: "button", textContent: SAID[way], title: `${SAID[way]}: ${name}` });
      button.setAttribute("aria-label", `${SAID[way]}: ${name}`);
      const asked = { file, path: [...path, part.number], old: part.mark, way };
      button.addEventListener("click", () => send("preview-move", asked));
      return button;
    });
  }

  // What is no sentence: in the step itself, or with the rest in the bar.
  async function offerParts() {
    const got = file ? await fetch(at(`preview-parts/${file}`), { cache: "no-store" }) : null;
    if (!got || !got.ok || !(got.headers.get("content-type") || "").includes("json")) return;
    const { values, lists, undo: can } = await got.json();
    canUndo(can);
    const steps = [...body.querySelectorAll(".lesson .step")];
    const boxes = steps.map((step) => step.appendChild(made("div", { className: "preview-step" })));
    const inStep = (path) => path[0] === "steps" && path.length === 3 && boxes[path[1]];
    for (const one of values) (inStep(one.path) || others).append(valueField(one));
    boxes.forEach((box, n) => box.append(preview.opener("Add to this step, or change it…", `Step ${n + 1}: add to it, or change it`, ["steps", n])));
    for (const { path, parts, called } of lists) {
      if (path.join() === "steps" && boxes.length === parts.length) {
        parts.forEach((part, n) => boxes[n].append(...ways(path, part, ["up", "down", "new", "away"])));
        continue;
      }
      const rows = parts.map((part) =>
        made("li", {}, `${part.says} `, ...ways(path, part, ["up", "down", "again", "away"])),
      );
      const summary = made("summary", { textContent: called });
      others.append(made("details", {}, summary, made("ul", {}, ...rows)));
    }
    if (others.children.length) rest.hidden = bar.hidden = false;
  }

  undo.addEventListener("click", () => send("preview-undo", { file }));

  async function ask() {
    try {
      const got = await fetch(at("preview-state.json"), { cache: "no-store" });
      if (!got.ok) throw new Error(`${got.status}`);
      const state = await got.json();
      // what somebody is typing is not lost to a page that loads itself anew
      const busy = editing || document.querySelector("#preview-dialog[open], #preview-picture[open]");
      if (number !== null && state.number !== number && !busy) location.reload();
      if (number === null || !busy) number = state.number;
      show(state);
    } catch {
      all.textContent =
        "`watch` has ended, so this is the page it made last. Start it and open the address it prints.";
      says.textContent = "";
      all.hidden = bar.hidden = false;
      more.open = true;
      seen = "";
    }
    setTimeout(ask, 1000);
  }
  offer().catch(() => {}).then(offerParts).catch(() => {}).then(preview.offerThings).catch(() => {}).then(() => (seen = ""));
  ask();
})();
