// Only in the preview: asks once a second whether anything changed, shows in a bar what is to mend,
// marks it beside its place, lets texts be changed, and loads the page anew. No page elsewhere can
// read the answer.
(() => {
  const here = document.currentScript.src;
  const at = (name) => new URL(name, here);
  const [, slug, page] = /\/units\/([^/]+)\/([^/]*)$/.exec(location.pathname) || [];
  const lesson = /^lesson-\d+/.exec(page || "");
  const file = slug && `units/${slug}/${lesson ? lesson[0] : "unit"}.md`;
  const json = { "Content-Type": "application/json" };
  let number = null;
  let seen = "";
  let editing = null;

  function made(tag, options, ...inside) {
    const element = Object.assign(document.createElement(tag), options);
    element.append(...inside);
    return element;
  }

  const style = made("link", { rel: "stylesheet", href: at("preview.css").href });
  document.head.append(style);
  const says = made("strong", { id: "preview-says" });
  const answer = made("span", { id: "preview-answer" });
  const undo = made("button", { type: "button", textContent: "Undo", hidden: true });
  const list = made("ul", {});
  const all = made("pre", { id: "preview-problems" });
  const more = made("details", {}, made("summary", { textContent: "What and where" }), list, all);
  const line = made("p", {}, says, " ", answer, " ", undo);
  line.setAttribute("role", "status");
  const bar = made("div", { id: "preview-bar", hidden: true }, line, more);
  document.body.append(bar);

  const plain = (text) => text.replace(/\s+/g, " ").trim();
  const count = (found, grade) => found.filter((mark) => mark.grade === grade).length;

  const body = document.querySelector("main") || document.body;
  const untouched = "#preview-bar, script, style, svg, select, a, button, .preview-mark";

  // The smallest element that holds these words among others.
  function placeOf(words) {
    const wanted = plain(words);
    const fits = (element) => plain(element.textContent).includes(wanted);
    if (wanted.length < 3) return null;
    return [...body.querySelectorAll("*")].find(
      (element) =>
        !element.closest(untouched) && fits(element) && ![...element.children].some(fits),
    );
  }

  // The pieces of text on the page, each with what it says.
  function pieces() {
    const found = new Map();
    const walker = document.createTreeWalker(body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const said = plain(node.textContent);
      if (said.length > 2 && !node.parentElement.closest(untouched))
        found.set(said, [...(found.get(said) || []), node]);
    }
    return found;
  }

  function mark(problem, index) {
    const place = placeOf(problem.words);
    if (!place) return;
    const button = made("button", {
      type: "button",
      className: `preview-mark preview-${problem.grade}`,
      textContent: String(index + 1),
      title: `${problem.message}. To mend it: ${problem.help}`,
    });
    button.addEventListener("click", () => {
      more.open = true;
      list.children[index].scrollIntoView({ block: "nearest" });
    });
    place.append(button);
  }

  function summary(state) {
    const mine = state.marks.filter((one) => one.file === file);
    const [errors, questions] = [count(mine, "error"), count(mine, "question")];
    const parts = [];
    if (errors) parts.push(`${errors} to mend`);
    if (questions) parts.push(`${questions} to think about`);
    const where = lesson ? "in this lesson" : "in this unit’s own file";
    if (file) parts.push(parts.length ? where : `Nothing to mend ${where}`);
    const elsewhere = state.marks.length - mine.length;
    const others = elsewhere ? `${elsewhere} elsewhere. ` : "";
    const older = state.older.includes(slug)
      ? "This page is older than the file: it is the last one without errors. "
      : "";
    return `${parts.join(" ")}${parts.length ? ". " : ""}${others}${older}`.trim();
  }

  function show(state) {
    const told = JSON.stringify([state.marks, state.older, state.problems]);
    if (told === seen) return;
    seen = told;
    const mine = state.marks.filter((one) => one.file === file);
    document.querySelectorAll(".preview-mark").forEach((one) => one.remove());
    says.textContent = summary(state);
    list.replaceChildren(
      ...mine.map((one) =>
        made("li", {}, `Line ${one.line}: ${one.message}. To mend it: ${one.help}.`),
      ),
    );
    mine.forEach(mark);
    all.textContent = state.problems;
    all.hidden = !state.problems;
    bar.hidden = !says.textContent && !state.problems;
    document.body.classList.toggle("preview-older", state.older.includes(slug));
  }

  async function send(name, asked) {
    const sent = { method: "POST", headers: json, body: JSON.stringify(asked) };
    const got = await fetch(at(name), sent);
    const { said } = await got.json();
    answer.textContent = said;
    bar.hidden = false;
    undo.hidden = !got.ok || name === "preview-undo";
    return got.ok;
  }

  async function finish(keep) {
    if (!editing) return;
    const { element, text, path } = editing;
    editing = null;
    element.contentEditable = "false";
    const fresh = plain(element.textContent);
    if (!keep || fresh === plain(text)) {
      element.textContent = text;
      return;
    }
    const ok = await send("preview-change", { file, path, old: text, new: fresh });
    if (!ok) element.textContent = text;
  }

  function start(element, field) {
    if (editing) return;
    element.querySelectorAll(".preview-mark").forEach((one) => one.remove());
    editing = { element, ...field };
    element.textContent = field.text;
    element.contentEditable = "plaintext-only";
    if (element.contentEditable !== "plaintext-only") element.contentEditable = "true";
    element.focus();
  }

  function editable(element, field) {
    element.classList.add("preview-text");
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
    const fields = await got.json();
    const shown = pieces();
    for (const field of fields) {
      // a text that two fields share could be either
      if (fields.filter((other) => plain(other.text) === plain(field.text)).length > 1) continue;
      for (const node of shown.get(plain(field.text)) || []) {
        const words = document.createElement("span");
        words.textContent = field.text;
        const before = /^\s/.test(node.textContent) ? " " : "";
        node.replaceWith(before, words);
        editable(words, field);
      }
    }
  }

  undo.addEventListener("click", () => send("preview-undo", {}));

  async function ask() {
    try {
      const got = await fetch(at("preview-state.json"), { cache: "no-store" });
      if (!got.ok) throw new Error(`${got.status}`);
      const state = await got.json();
      if (number !== null && state.number !== number && !editing) location.reload();
      if (number === null || !editing) number = state.number;
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
  offer().catch(() => {});
  ask();
})();
