// Only in the preview: each part of a file in a window of its own, with what it has and what could
// be added to it, asked for one by one.
(() => {
  const preview = window.danceUnitPreview;
  const { made, control, isEmpty, said } = preview;

  const title = made("h2", { id: "preview-part" });
  const inside = made("div", {});
  const told = made("p", { className: "preview-told" });
  told.setAttribute("role", "alert");
  const close = made("button", { type: "button", className: "preview-close", textContent: "Close" });
  const dialog = made("dialog", { id: "preview-dialog" }, close, title, told, inside);
  dialog.setAttribute("aria-labelledby", title.id);
  document.body.append(dialog);
  const guard = preview.guarded(dialog, told);
  close.addEventListener("click", () => guard.mayLeave() && dialog.close());

  let things = [];
  const same = (one, other) => one.length === other.length && one.every((step, n) => step === other[n]);
  const within = (outer, inner) => inner.length > outer.length && outer.every((step, n) => step === inner[n]);
  const at = (path) => things.find((thing) => same(thing.path, path));
  const isList = (thing) => thing.line !== null;

  // The parts right inside: what a list holds counts as inside of what holds the list.
  function partsOf(thing) {
    const inner = things.filter((one) => !isList(one) && within(thing.path, one.path));
    return inner.filter((one) => !inner.some((other) => other !== one && within(other.path, one.path)));
  }

  const listsOf = (thing) =>
    things.filter((one) => isList(one) && within(thing.path, one.path) && !things.some((other) => !isList(other) && other !== thing && within(thing.path, other.path) && within(other.path, one.path)));

  async function send(asked) {
    const { ok, said: words } = await preview.send("preview-field", { file: preview.file, ...asked });
    if (ok) dialog.close();
    else told.textContent = words;
  }

  function button(words, about, act) {
    const one = made("button", { type: "button", textContent: words });
    if (about) one.setAttribute("aria-label", `${words}: ${about}`);
    one.addEventListener("click", act);
    return one;
  }

  // One question, with what it is for, and a button that puts the answer into the file.
  function ask(thing, asked, does, put, now) {
    told.textContent = "";
    title.textContent = `${asked.called}: ${thing.called[0].toLowerCase()}${thing.called.slice(1)}`;
    const wants = control({ ...asked, needed: true, alone: true }, now);
    const form = made("form", {}, wants.element);
    const keep = made("button", { type: "submit", textContent: does });
    form.append(made("p", {}, keep, " ", button("Back", "", () => guard.mayLeave() && show(thing))));
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      const empty = isEmpty(wants.inner ? wants.inner() : wants.value());
      if (empty) told.textContent = "Nothing is written there yet.";
      else send(put(wants));
    });
    inside.replaceChildren(form);
    (form.querySelector("textarea, input, select") || keep).focus();
  }

  // What stands below the fields, as it is typed: headings, lists and paragraphs of their own.
  async function notes(thing) {
    const got = await fetch(preview.at(`preview-notes/${preview.file}`), { cache: "no-store" });
    const { text, mark } = await got.json();
    told.textContent = "";
    title.textContent = "The notes below the fields";
    const area = made("textarea", { id: "preview-notes", rows: 18, value: text });
    const about = made("small", { id: "preview-notes-about", textContent: "An empty line starts a paragraph, a hyphen and a space a line of a list, ### and a space a heading. **Two stars** on both sides make words strong." });
    area.setAttribute("aria-describedby", about.id);
    const form = made("form", {}, made("div", { className: "preview-asked" }, made("label", { htmlFor: area.id, textContent: "Notes" }), about, area));
    form.append(made("p", {}, made("button", { type: "submit", textContent: "Keep them" }), " ", button("Back", "", () => guard.mayLeave() && show(thing))));
    form.addEventListener("submit", async (event) => {
      event.preventDefault();
      const asked = { file: preview.file, path: ["notes"], old: mark, new: area.value };
      const { ok, said: words } = await preview.send("preview-notes", asked);
      if (ok) dialog.close();
      else told.textContent = words;
    });
    inside.replaceChildren(form);
    area.focus();
  }

  function missing(thing, asked) {
    const list = isList(thing);
    const item = made("li", {});
    const words = list || !asked.name ? `One more: ${asked.called[0].toLowerCase()}${asked.called.slice(1)}` : asked.called;
    const put = (wants) => {
      const value = wants.inner ? wants.inner() : wants.value();
      const step = asked.name || (list ? thing.line : wants.name());
      if (asked.name) return { path: [...thing.path, step], old: thing.mark, way: "add", value: wants.value() };
      return { path: [...thing.path, step], old: thing.mark, way: "add", value };
    };
    item.append(button(words, "", () => ask(thing, asked, "Add it", put)), made("span", { textContent: asked.about.replace(/(\. ).*$/s, ".") }));
    return item;
  }

  function present(thing, asked) {
    const item = made("li", {}, made("strong", { textContent: asked.called }), " ");
    const path = [...thing.path, asked.name];
    if (asked.value !== null) {
      const shown = Array.isArray(asked.value) ? asked.value.map(said).join(", ") : said(asked.value);
      item.append(made("span", { textContent: shown }), " ");
      const put = (wants) => ({ path, old: asked.mark, way: "set", value: wants.value() });
      item.append(button("Change", asked.called, () => ask(thing, asked, "Keep it", put, asked.value)), " ");
    }
    if (asked.optional)
      item.append(button("Take away", asked.called, () => send({ path, old: asked.mark, way: "away", value: null })));
    return item;
  }

  function inner(thing) {
    const says = thing.says && thing.says !== thing.called ? ` ${thing.says}` : "";
    const item = made("li", {}, button(thing.called, "", () => show(thing)), says, " ");
    const number = thing.path.at(-1);
    if (typeof number === "number" && thing.path[0] !== "steps")
      item.append(button("Take away", thing.called, () => send({ path: thing.path, old: thing.mark, way: "away", value: null })));
    return item;
  }

  function group(words, items, className = "") {
    return items.length ? [made("h3", { textContent: words }), made("ul", { className }, ...items)] : [];
  }

  // A part: what it has, what can be added, and the parts in it.
  function show(thing) {
    guard.anew();
    told.textContent = "";
    title.textContent = thing.called + (thing.says ? `: ${thing.says}` : "");
    const lists = listsOf(thing);
    const adds = [thing, ...lists].flatMap((one) => one.missing.map((asked) => missing(one, asked)));
    const has = thing.has.filter((asked) => asked.value !== null || asked.optional);
    const around = things.filter((one) => !isList(one) && within(one.path, thing.path)).at(-1);
    const up = around ? [made("p", {}, button(`Back to: ${around.called}`, "", () => show(around)))] : [];
    inside.replaceChildren(
      ...up,
      ...(thing.path.length ? [] : [made("p", {}, button("Change the notes below the fields…", "", () => notes(thing)))]),
      ...group("Add", adds, "preview-adds"),
      ...group("It has", has.map((asked) => present(thing, asked))),
      ...group("Parts of it", partsOf(thing).map(inner)),
    );
    inside.querySelector("button")?.focus();
  }

  async function fresh() {
    const got = preview.file ? await fetch(preview.at(`preview-things/${preview.file}`), { cache: "no-store" }) : null;
    const json = got && got.ok && (got.headers.get("content-type") || "").includes("json");
    things = json ? await got.json() : [];
    return things;
  }

  // The window of the part at `path`, as the file is now.
  async function open(path) {
    told.textContent = title.textContent = "";
    inside.replaceChildren(made("p", { textContent: "The file is being read…" }));
    if (!dialog.open) dialog.showModal();
    await fresh().catch(() => (things = []));
    const thing = at(path);
    if (thing) show(thing);
    else inside.replaceChildren(made("p", { textContent: "The file cannot be read, or has no such part any more. See what is to mend, and load the page again." }));
  }

  function opener(words, name, path) {
    const one = made("button", { type: "button", className: "preview-more", textContent: words, title: name });
    one.setAttribute("aria-label", name);
    one.addEventListener("click", (event) => {
      event.stopPropagation();
      open(path);
    });
    return one;
  }

  // A small way to each part that has a text of its own on the page, beside the first of them.
  async function offer() {
    const parts = (await fresh()).filter((thing) => !isList(thing) && !(thing.path[0] === "steps" && thing.path.length === 2));
    const seen = new Set();
    for (const text of document.querySelectorAll(".preview-text[data-preview-path]")) {
      const path = JSON.parse(text.dataset.previewPath);
      const thing = parts.filter((one) => within(one.path, path)).at(-1);
      if (!thing || !thing.path.length || seen.has(thing)) continue;
      seen.add(thing);
      text.after(" ", opener("+", `${thing.called}: add, change or take away`, thing.path));
    }
  }

  Object.assign(preview, { offerThings: offer, opener, ask: open });
})();
