// Handouts for the class of the day: as many strips, sets of cards and rows as the teacher's settings ask for.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const { gettext } = bank;
  const USUAL = 30, MOST = 120;
  const EACH = {
    alone: gettext("one between two"),
    pairs: gettext("one for each pair"),
    "half class": gettext("one for each half of the class"),
  };
  const HOW_MANY = gettext("How many pupils");
  const FOR_EACH = gettext("One for each group, in place of one to put up");
  const ONE_LESSON = gettext("For one lesson only:");
  const EACH_GROUP = gettext("one for each group");

  for (const root of document.querySelectorAll('[data-part="handouts"]:not([data-started])')) {
    try { start(root); root.dataset.started = ""; } catch (error) { console.error("handouts:", error); }
  }

  function start(root) {
    const views = new Map();
    for (const one of root.querySelectorAll("i[data-groupings]")) {
      views.set(one.id.replace(/^lesson-/, ""), one);
    }
    const whole = root.querySelector("i[data-groupings]");
    const after = document.title.slice(whole.dataset.title.length);
    let shown = whole;
    const planned = root.querySelector("[data-planned]");
    const written = planned.textContent;
    let own = null; // how many pupils were written here, where nothing is fitted
    planned.insertAdjacentHTML("afterend", `<p><label>${HOW_MANY} <input class="how-many" inputmode="numeric" size="3" autocomplete="off"></label></p>`);
    const many = planned.nextElementSibling.querySelector("input");
    many.addEventListener("input", count);
    const links = [...views].filter(([name]) => /^\d+$/.test(name)).map(([name, { id }]) => `<a href="#${id}">${gettext("Lesson {number}", { number: name })}</a>`);
    planned.insertAdjacentHTML("afterend", `<p data-in="all">${ONE_LESSON} ${links.join(" ")}</p>`);
    const forEach = root.querySelector(".strips .handed") && document.createElement("p"); // of use where one is put up
    if (forEach) {
      forEach.className = "on-screen";
      forEach.innerHTML = `<label><input type="checkbox"> ${FOR_EACH}</label>`;
      forEach.addEventListener("change", show);
      root.querySelector(".strips .handed").before(forEach);
    }
    bank.settings.onChange(show);
    window.addEventListener("hashchange", choose);
    choose();

    // The address says which lesson's; a place on the page stays in what is shown.
    function choose() {
      const named = /^#lesson-(\d+)(?!\d)/.exec(window.location.hash);
      if (named) shown = views.get(named[1]) ?? whole;
      else if (!window.location.hash.startsWith("#at-")) shown = whole;
      else if (shown !== whole) window.history.replaceState(null, "", `#${shown.id}`);
      only(shown === whole ? "all" : shown.id.replace("lesson-", ""));
      document.title = shown.dataset.title + after;
      show();
    }

    function only(name) {
      root.dataset.shown = name;
      for (const part of root.querySelectorAll("[data-in]")) {
        part.toggleAttribute("data-out", !part.dataset.in.split(" ").includes(name));
      }
      for (const card of root.querySelectorAll("[data-left-over]")) {
        card.classList.toggle("left-over", card.dataset.leftOver.split(" ").includes(name));
      }
    }

    // the class is kept with the rest of the fit, if there is one
    function count() {
      const pupils = /^\d+$/.test(many.value.trim()) ? Number(many.value) : 0;
      if (pupils < 1 || pupils > MOST) { many.setAttribute("aria-invalid", "true"); return; }
      many.removeAttribute("aria-invalid");
      own = pupils;
      const fit = bank.settings.fit();
      if (fit) bank.settings.keepFit({ ...fit, dancing: pupils });
      else show();
    }

    function show() {
      const fit = bank.settings.fit();
      const pupils = fit ? fit.dancing : own ?? USUAL;
      if (document.activeElement !== many) many.value = String(pupils);
      if (forEach) forEach.hidden = !root.querySelector("[data-more]:not([data-out], [data-out] *)");
      const each = Boolean(forEach && !forEach.hidden && forEach.querySelector("input").checked);
      const groupings = shown.dataset.groupings.split(" ").filter(Boolean).map((one) => one.replace("_", " "));
      for (const given of root.querySelectorAll("[data-grouping]:not([data-out], [data-out] *)")) {
        const part = given.closest(".handed") ?? given;
        const { grouping, more } = given.dataset;
        const some = copies(groupings, each && more ? more : grouping, pupils);
        counted(part, some);
        const said = given.querySelector("[data-count]");
        if (said) said.textContent = String(some);
        if (!more) continue;
        given.dataset.written ??= given.firstChild.data;
        const name = part.querySelector(".strip-head strong").textContent;
        given.firstChild.data = each ? `${name}, ${EACH[more] ?? EACH_GROUP}: ` : given.dataset.written;
      }
      for (const sheet of root.querySelectorAll(".observed tbody")) rows(sheet, fit ? fit.dancing + fit.watching : pupils);
      planned.textContent = fit || own
        ? gettext("Counted for your {pupils} pupils. Print only the sides you need.", { pupils })
        : written;
      for (const link of root.querySelectorAll(".on-page a")) told(link);
    }

    // how many of a thing there are to print: Word cards: 6; Device cards: 8 sets of 7
    function told(link) {
      link.dataset.words ??= link.textContent;
      const part = root.querySelector(link.getAttribute("href"));
      const pieces = [...part.querySelectorAll(".whole-side, .card, .handed")].filter((one) => !one.closest("[data-out], [data-copy]"));
      const sets = part.dataset.grouping ? part.querySelectorAll("[data-copied], [data-copy]").length : 1;
      const number = sets > 1 ? gettext("{sets} sets of {cards}", { sets, cards: pieces.length }) : pieces.length;
      link.textContent = number ? `${link.dataset.words}: ${number}` : link.dataset.words;
    }

    // one for each group; pupils who dance alone share one between two
    function copies(groupings, grouping, pupils) {
      if (grouping === "alone") return Math.max(1, bank.sums.groups(pupils, 2).length);
      return Math.max(1, bank.sums.classGroups(groupings, grouping, pupils).length);
    }

    function counted(part, many) {
      const [first, ...others] = part.querySelectorAll("[data-copied], [data-copy]");
      for (const one of others.slice(many - 1)) one.remove();
      let last = others.slice(0, many - 1).at(-1) ?? first;
      for (let number = others.length + 2; number <= many; number += 1) {
        const copy = first.cloneNode(true);
        copy.classList.add("copy");
        copy.removeAttribute("data-copied");
        copy.dataset.copy = String(number);
        copy.setAttribute("aria-hidden", "true");
        for (const named of copy.querySelectorAll("[id]")) pointed(named);
        last.after(copy);
        last = copy;
      }
    }

    // a copy shows the first one's drawing: a name stands on a page once
    function pointed(named) {
      const use = document.createElementNS("http://www.w3.org/2000/svg", "use");
      use.setAttribute("href", `#${named.id}`);
      named.removeAttribute("id");
      if (named.localName !== "svg") { named.replaceWith(use); return; }
      named.removeAttribute("role");
      named.replaceChildren(use);
    }

    function rows(body, many) {
      while (body.rows.length > many) body.lastElementChild.remove();
      while (body.rows.length < many) {
        const row = body.rows[0].cloneNode(true);
        row.cells[0].textContent = String(body.rows.length + 1);
        body.append(row);
      }
    }
  }
})();
