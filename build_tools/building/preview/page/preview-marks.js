// Only in the preview: what is to mend, counted file by file with a way to each, and marked beside
// its place on the page.
(() => {
  const preview = window.danceUnitPreview;
  const { made, plain } = preview;
  const body = document.querySelector("main") || document.body;

  const count = (found, grade) => found.filter((one) => one.grade === grade).length;
  const fileOf = (name) => name.split("/").pop();
  const unitOf = (name) => (name.startsWith("units/") ? name.split("/")[1] : "");

  // Two to mend and one to think about: as many as there are of each, in words.
  function counted(found) {
    const [errors, questions, notes] = ["error", "question", "note"].map((grade) => count(found, grade));
    const parts = [];
    if (errors) parts.push(`${errors} to mend`);
    if (questions) parts.push(`${questions} to think about`);
    if (notes && !parts.length) parts.push(`${notes} ${notes === 1 ? "note" : "notes"}`);
    return parts.join(" and ");
  }

  // A way to the page of a file; where this unit has no such page, the name alone.
  function way(name, words) {
    const page = fileOf(name).replace(/^unit\.md$/, "index.html").replace(/\.md$/, ".html");
    if (unitOf(name) === "") return words;
    return made("a", { href: preview.at(`units/${unitOf(name)}/${page}`).href, textContent: words });
  }

  const listed = (items) => items.flatMap((one, n) => (n ? [", ", one] : [one]));

  // What the bar says: of this file, of the others of this unit, of other units and of the bank.
  function summary(state, { file, slug, lesson }) {
    const mine = state.marks.filter((one) => one.file === file);
    const beside = state.marks.filter((one) => slug && one.file !== file && unitOf(one.file) === slug);
    const others = state.marks.filter((one) => !mine.includes(one) && !beside.includes(one));
    const where = lesson ? "in this lesson" : "in this unit’s own file";
    const said = [];
    const names = [...new Set(beside.map((one) => one.file))];
    const ways = names.map((name) => way(name, `${beside.filter((one) => one.file === name).length} in ${fileOf(name)}`));
    if (file && mine.length) said.push(`${counted(mine)} ${where}`, ...(ways.length ? [", and ", ...listed(ways)] : []), ". ");
    else if (file && beside.length) said.push(`Nothing ${where}, but `, ...listed(ways), ". ");
    else if (file) said.push(`Nothing to mend ${where}. `);
    if (others.length) {
      const units = [...new Set(others.map((one) => one.file))];
      const shown = units.slice(0, 5).map((name) => way(name, `${others.filter((one) => one.file === name).length} in ${name.replace(/^units\//, "")}`));
      said.push(file ? "Elsewhere: " : "To look at: ", ...listed(shown), units.length > 5 ? ` and in ${units.length - 5} more files. ` : ". ");
    }
    if (state.older.includes(slug)) said.push("This page is older than the file: an error leaves nothing to draw it from. ");
    return said;
  }

  // The smallest element that holds these words among others.
  function withWords(words) {
    const wanted = plain(words);
    const fits = (element) => plain(element.textContent).includes(wanted);
    if (wanted.length < 3) return null;
    return [...body.querySelectorAll("*")].find(
      (element) => !element.closest(preview.untouched) && fits(element) && ![...element.children].some(fits),
    );
  }

  // Where a problem shows: its field on the page, its words, its step, or the page's title.
  function placeOf({ path, words }) {
    const field = path.length
      ? [...document.querySelectorAll("[data-preview-path]")].find((one) => one.dataset.previewPath === JSON.stringify(path))
      : null;
    if (field && !field.closest("#preview-bar")) return field.matches("input, select") ? field.parentElement : field;
    const step = path[0] === "steps" && path.length > 1 ? body.querySelectorAll(".lesson .step")[path[1]] : null;
    return withWords(words) || step?.querySelector("h2, h3, h4") || body.querySelector("h1");
  }

  function mark(problem, number, act) {
    const place = placeOf(problem);
    if (!place) return;
    const words = `${problem.message}. To mend it: ${problem.help}`;
    const button = made("button", { type: "button", className: `preview-mark preview-${problem.grade}`, textContent: String(number), title: words });
    button.setAttribute("aria-label", `${number}: ${words}`);
    button.addEventListener("click", (event) => {
      event.stopPropagation();
      event.preventDefault();
      act();
    });
    // never inside of what is typed over: its number would be sent with the words
    if (place.closest(".preview-text")) place.closest(".preview-text").after(button);
    else place.append(button);
  }

  Object.assign(preview, { summary, mark });
})();
