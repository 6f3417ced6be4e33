// Filters the list of units as the reader types; the list is whole without it.
(() => {
  const AS_TYPED = 3;
  const LITTLE = new Set(["a", "an", "and", "for", "in", "of", "on", "or", "our", "the", "to", "with"]);

  for (const root of document.querySelectorAll('[data-part="finder"]:not([data-started])')) {
    try { start(root); root.dataset.started = ""; } catch (error) { console.error("finder:", error); }
  }

  function start(form) {
    const found = document.querySelector('[data-part="found"]');
    const list = document.querySelector('[data-part="units"]');
    const units = [...list.querySelectorAll("[data-search]")].map((item) => ({
      item,
      title: item.querySelector("h3").textContent.trim(),
      words: [...new Set(wordsIn(item.dataset.search))],
      years: item.dataset.years.split(" "),
      longest: Number(item.dataset.longest),
      spaces: [...item.querySelectorAll("[data-space]")],
    }));
    const field = (name) => form.querySelector(`#finder-${name}`);
    const [word, year, minutes, space] = ["word", "year", "minutes", "space"].map(field);

    function show() {
      const typed = wordsIn(word.value);
      const slot = Number(minutes.value);
      const said = asked(word.value.trim(), year, slot);
      const met = units.map((unit) => ({ unit, score: score(typed, unit.words) }));
      // a slip of spelling counts only where nothing is spelt as typed
      const best = met.some(({ score }) => score >= AS_TYPED) ? AS_TYPED : 1;
      const scored = met.map(({ unit, score }) => ({ unit, score: score < best ? 0 : score }));
      const fits = (unit) =>
        (!year.value || unit.years.includes(year.value)) && (!(slot > 0) || unit.longest <= slot);
      let shown = scored.filter(({ unit, score }) => score > 0 && fits(unit)).map(({ unit }) => unit);
      let message = "";
      if (shown.length) {
        message = said.length || space.value ? count(shown.length) : "";
      } else if (units.length) {
        const pool = scored.some(({ score }) => score > 0)
          ? scored.filter(({ score }) => score > 0).map(({ unit }) => unit)
          : nearest(typed, units);
        shown = pool.slice(0, 3);
        message = `No unit ${said.join(" ")}. The nearest: ${shown.map((unit) => unit.title).join("; ")}.`;
      }
      for (const unit of units) {
        unit.item.hidden = !shown.includes(unit);
        for (const line of unit.spaces) line.hidden = line.dataset.space !== space.value;
      }
      if (found.textContent !== message) found.textContent = message;
    }

    form.addEventListener("submit", (event) => event.preventDefault());
    form.addEventListener("input", show);
    form.addEventListener("change", show);
    form.hidden = false;
    show();
  }

  function count(number) {
    return number === 1 ? "1 unit found." : `${number} units found.`;
  }

  // What is asked for, in words: said where nothing is found, and empty where nothing is asked.
  function asked(words, year, slot) {
    const parts = [];
    if (wordsIn(words).length) parts.push(`for “${words}”`);
    if (year.value) parts.push(`for ${year.selectedOptions[0].textContent.trim()}`);
    if (slot > 0) parts.push(`with lessons of ${slot} minutes or less`);
    return parts;
  }

  function wordsIn(text) {
    const plain = text.toLowerCase().normalize("NFD").replace(/[\u0300-\u036f]/g, "");
    return (plain.match(/[a-z0-9]+/g) || []).filter((word) => !LITTLE.has(word));
  }

  // Every typed word has to be met by some word of the unit; the worst met word decides.
  function score(typed, words) {
    return Math.min(9, ...typed.map((one) => Math.max(0, ...words.map((word) => alike(one, word)))));
  }

  function alike(typed, word) {
    if (typed === word) return 4;
    if (word.startsWith(typed)) return AS_TYPED;
    if (stem(typed) === stem(word)) return AS_TYPED;
    // three letters are little to go by: the first has to be right
    const short = typed.length === 3 && typed[0] === word[0];
    const slips = typed.length < 4 ? Number(short) : typed.length < 7 ? 1 : 2;
    if (slips && Math.min(distance(typed, word), distance(stem(typed), stem(word))) <= slips) return 2;
    return 0;
  }

  function stem(word) {
    for (const end of ["ations", "ation", "ings", "ing", "ies", "oes", "es", "ed", "s", "y"]) {
      if (word.endsWith(end) && word.length - end.length >= 3) return word.slice(0, -end.length);
    }
    return word;
  }

  // How many letters are added, lost, changed or swapped with a neighbour.
  function distance(a, b) {
    if (Math.abs(a.length - b.length) > 2) return 3;
    const rows = [[...Array(b.length + 1).keys()]];
    for (let i = 1; i <= a.length; i += 1) {
      rows.push([i]);
      for (let j = 1; j <= b.length; j += 1) {
        const change = rows[i - 1][j - 1] + (a[i - 1] === b[j - 1] ? 0 : 1);
        let least = Math.min(rows[i - 1][j] + 1, rows[i][j - 1] + 1, change);
        if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
          least = Math.min(least, rows[i - 2][j - 2] + 1);
        }
        rows[i].push(least);
      }
    }
    return rows[a.length][b.length];
  }

  // The units that share the most pairs of letters with what was typed.
  function nearest(typed, units) {
    const wanted = new Set(typed.flatMap(pairs));
    const shared = (unit) =>
      Math.max(0, ...unit.words.map((word) => pairs(word).filter((pair) => wanted.has(pair)).length));
    return units
      .map((unit, place) => ({ unit, place, near: shared(unit) }))
      .sort((a, b) => b.near - a.near || a.place - b.place)
      .map(({ unit }) => unit);
  }

  function pairs(word) {
    return [...word].slice(1).map((letter, n) => word[n] + letter);
  }
})();
