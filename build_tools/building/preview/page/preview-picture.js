// Only in the preview: a picture dropped on the page, or chosen by a button, is sent to this
// machine's preview alone, shown as it will be, and entered with what is told of it.
(() => {
  const preview = window.danceUnitPreview;
  const { made, control, isEmpty, plain } = preview;
  const MOST = 20_000_000;

  const title = made("h2", { id: "preview-picture-title", textContent: "A picture for this page" });
  const inside = made("div", {});
  const told = made("p", { className: "preview-told" });
  told.setAttribute("role", "alert");
  const leave = made("button", { type: "button", textContent: "Leave it" });
  const dialog = made("dialog", { id: "preview-picture" }, title, told, inside, made("p", {}, leave));
  dialog.setAttribute("aria-labelledby", title.id);
  document.body.append(dialog);
  const guard = preview.guarded(dialog, told);
  leave.addEventListener("click", () => guard.mayLeave() && dialog.close());

  function say(words) {
    inside.replaceChildren();
    told.textContent = words;
    if (!dialog.open) dialog.showModal();
  }

  // What the preview made of it, and the questions that have to be answered.
  function ask(file, { said, key, asked }) {
    told.textContent = "";
    const shown = made("img", { src: preview.at(`preview-kept/${key}`).href, alt: "The picture as it will be published" });
    const caution = "Use it only if its maker allows it. No pupil may be recognised in it, and no name be read.";
    const wants = asked.map((one) => [one.name, control(one)]);
    const form = made("form", {}, ...wants.map(([, one]) => one.element), made("p", {}, made("button", { type: "submit", textContent: "Put it in" })));
    form.addEventListener("submit", async (event) => {
      event.preventDefault();
      const pairs = wants.map(([name, one]) => [name, one.value()]).filter(([, value]) => !isEmpty(value));
      const { ok, said: words } = await preview.send("preview-enter", { file, key, told: Object.fromEntries(pairs) });
      if (ok) dialog.close();
      else told.textContent = words;
    });
    inside.replaceChildren(made("p", {}, shown), made("p", { textContent: `It is published ${said}. Your own file stays as it is.` }), made("p", { textContent: caution }), form);
    form.querySelector("textarea, input, select").focus();
  }

  async function take(picture) {
    const file = preview.file;
    if (!file || !picture) return;
    if (picture.size > MOST) {
      say(`The picture has ${picture.size.toLocaleString("en-GB")} bytes, and 20,000,000 is the most: save it smaller.`);
      return;
    }
    say("The picture is being looked at…");
    const name = encodeURIComponent(plain(picture.name.replace(/[^\p{L}\p{N}. _-]/gu, "-")) || "picture");
    try {
      const headers = { "Content-Type": "application/octet-stream" };
      const got = await fetch(preview.at(`preview-picture/${file}/${name}`), { method: "POST", headers, body: picture });
      const json = (got.headers.get("content-type") || "").includes("json");
      const answer = json ? await got.json() : { said: await got.text() };
      if (got.ok) ask(file, answer);
      else say(answer.said[0].toUpperCase() + answer.said.slice(1));
    } catch {
      say("The picture could not be sent: see whether `watch` still runs, and whether the file is still there.");
    }
  }

  const chosen = made("input", { type: "file", accept: "image/*,.heic,.heif", hidden: true, id: "preview-choose" });
  chosen.addEventListener("change", () => {
    take(chosen.files[0]);
    chosen.value = "";
  });

  // A button for who does not drag, and the way to choose behind it.
  function chooser() {
    const button = made("button", { type: "button", className: "preview-more", textContent: "Add a picture…", title: "Or drop one anywhere on this page" });
    button.addEventListener("click", () => chosen.click());
    return [button, chosen];
  }

  const carries = (event) => event.dataTransfer && [...event.dataTransfer.types].includes("Files");
  const over = (is) => document.body.classList.toggle("preview-over", is);
  document.addEventListener("dragover", (event) => {
    if (!carries(event) || !preview.file) return;
    event.preventDefault();
    over(true);
  });
  document.addEventListener("dragleave", (event) => event.relatedTarget || over(false));
  document.addEventListener("drop", (event) => {
    over(false);
    if (!carries(event) || !preview.file) return;
    event.preventDefault();
    take(event.dataTransfer.files[0]);
  });

  preview.chooser = chooser;
})();
