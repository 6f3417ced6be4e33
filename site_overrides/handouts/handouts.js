// Handouts for the class of the day: as many strips, sets of cards and rows as the teacher's settings ask for.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const USUAL = 30;

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

    function show() {
      const fit = bank.settings.fit();
      const pupils = fit ? fit.dancing : USUAL;
      const groupings = shown.dataset.groupings.split(" ").filter(Boolean).map((one) => one.replace("_", " "));
      for (const given of root.querySelectorAll("[data-grouping]:not([data-out], [data-out] *)")) {
        const part = given.closest(".handed") ?? given;
        const many = copies(groupings, given.dataset.grouping, pupils);
        counted(part, many);
        const said = given.querySelector("[data-count]");
        if (said) said.textContent = String(many);
      }
      for (const sheet of root.querySelectorAll(".observed tbody")) rows(sheet, fit ? fit.dancing + fit.watching : USUAL);
      planned.textContent = fit
        ? bank.gettext("Counted for your {pupils} pupils. Print only the sides you need.", { pupils })
        : written;
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
