// The plans of the floor on a lesson, its card and its wall, drawn anew for a class: who dances at once of it, in this
// hall. Each says for whom it is drawn; what no hall is known for stays as it was planned, and says so. Loaded with the
// floor. Each keeps the height that it has on paper.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const { gettext } = bank;
  const SPACE = { p: "http://www.w3.org/1999/xhtml" }, SVG = "http://www.w3.org/2000/svg"; // of elements
  const EDGE = 22, ACROSS = 0.42; // units round the hall for the names of its sides; of the way to the nearest neighbour
  const MOST = 8; // units of a dancer's radius
  const SIZES = [[20, 16], [15, 13], [11, 9]]; // units across a dancer and of the number in it, as standing_plan.py has them
  const LINE = 16, LETTERS = 13; // units from one line of words on paper to the next, and their size
  const NAMED = ["front", "back", "left", "right"];
  const FRONT = gettext("front");
  const PAIRS = gettext("An example. Pairs may stand anywhere."), GROUPS = gettext("An example. Groups may stand anywhere.");
  const HALF = gettext("Half of them dance at a time.");
  const written = new WeakMap();

  // the plans of a page as they are for `room`; its own where there is no room to draw for, for the class of a `fit` too
  bank.plansToday = (root, room, fit) => {
    if (!bank.danceOnFloor) return; // the unit's own comes after what draws it
    if (!written.has(root)) written.set(root, { room: null, plans: [...root.querySelectorAll("svg.standing")].map(keep) });
    const kept = written.get(root);
    const now = room?.found ? room : Boolean(fit);
    if (kept.room === now) return;
    kept.room = now;
    for (const plan of kept.plans) {
      const words = now && (now === true ? asPlanned() : `${forWhom(plan.letter, now)}.${plan.halved && !now.sharing.teams.length ? ` ${HALF}` : ""}${oneWay(plan.letter)}`);
      const shown = now && (now !== true || plan.paper) ? drawn(plan, now) : plan.own;
      plan.shown.replaceWith(shown);
      plan.shown = shown;
      if (plan.line) plan.line.textContent = words || plan.words;
      plan.told?.remove();
      plan.told = now && !plan.paper ? add(null, "p", { class: "for-whom" }, words) : null;
      if (plan.told) shown.after(plan.told);
    }
  };

  // `paper` is a plan that is printed alone: what it says stands in the drawing
  function keep(own) {
    const line = own.parentElement.querySelector("ol li:last-child");
    const letter = [...own.classList].find((one) => one.startsWith("part-")).slice(5).replace("-changed", "'");
    const halved = own.closest("[data-step]")?.dataset.grouping === "half class";
    return { own, letter, halved, line, words: line?.textContent, shown: own, told: null, paper: Boolean(own.closest(".plans")) };
  }

  const drawnFor = (many, wide, deep) => gettext("Drawn for {many} pupils, {wide} by {deep} m.", { many, wide, deep });

  function asPlanned() {
    const { pupils, hall: [wide, deep] } = bank.danceOnFloor;
    return gettext("Drawn for {pupils} pupils in a hall {wide} metres along the front and {deep} deep, not for your class and hall.", { pupils, wide, deep });
  }

  // that it is one way of many, where groups have no places of their own
  function oneWay(letter) {
    const { floor } = bank.sums;
    const data = bank.danceOnFloor;
    const section = data.sections[letter];
    const { spot } = data.parts.find((one) => one.letter === letter);
    if (spot !== "new place" || !floor.placesOpen(section) || (section.start[4] ?? null) !== null) return "";
    return ` ${section.size === 2 ? PAIRS : GROUPS}`;
  }

  function forWhom(letter, room) {
    const { teams } = room.sharing;
    const [wide, deep] = room.turned ? [...room.hall].reverse() : room.hall;
    const many = bank.sums.floor.dancingIn(room, letter);
    const largest = teams.findIndex((team) => team.reduce((sum, one) => sum + one, 0) === many); // it has a mark for everybody
    const who = many === room.pupils ? gettext("all {pupils}", room)
      : teams.length ? bank.sums.floor.teamInWords(largest + 1, teams[largest]).slice(0, -1)
        : gettext("{many} of {pupils}, the others sitting", { many, pupils: room.pupils });
    return gettext("Drawn for {who}, in a hall {wide} metres along the front and {deep} deep", { who, wide, deep });
  }

  // for `room`, or as it was planned where that is true: the same a little smaller, with a line below it
  function drawn({ own, letter, paper }, room) {
    const { floor } = bank.sums;
    const data = bank.danceOnFloor;
    const [, , width, height] = own.getAttribute("viewBox").split(" ").map(Number);
    if (room === true) {
      const copy = own.cloneNode(true);
      const larger = (height + LINE) / height;
      copy.setAttribute("viewBox", `${((1 - larger) * width) / 2} 0 ${larger * width} ${height + LINE}`);
      below(copy, [drawnFor(data.pupils, ...data.hall)], width, height + LINE);
      return copy;
    }
    const many = floor.dancingIn(room, letter);
    const paths = floor.drawnIn(data, room, many);
    const [wide, deep] = paths.hall;
    const lines = paper ? [drawnFor(many, wide, deep), oneWay(letter).trim()].filter(Boolean) : [];
    const high = height - LINE * lines.length;
    const scale = Math.min((width - 2 * EDGE) / wide, (high - 2 * EDGE) / deep);
    const [x, y] = [width / 2, high / 2];
    const svg = add(null, "svg", { viewBox: `0 0 ${width} ${height}`, class: own.getAttribute("class"), role: "img",
      "aria-label": `${own.querySelector("title")?.textContent ?? gettext("Where they stand")}. ${forWhom(letter, room)}` });
    below(svg, lines, width, height);
    add(svg, "rect", { x: x - (wide / 2) * scale, y: y - (deep / 2) * scale, width: wide * scale, height: deep * scale,
      fill: "none", stroke: "currentColor" });
    names(svg, paths, x, y, scale);
    dancers(svg, paths, letter, ([across, back]) => [x + across * scale, y + back * scale], scale);
    return svg;
  }

  function below(svg, lines, width, height) {
    lines.forEach((words, n) => add(svg, "text", { x: width / 2, y: height - 4 - LINE * (lines.length - 1 - n), "text-anchor": "middle",
      "font-size": LETTERS, fill: "currentColor" }, words));
  }

  function names(svg, { data: { names: own }, hall: [wide, deep] }, x, y, scale) {
    const at = { front: [x, y - (deep / 2) * scale - 6], back: [x, y + (deep / 2) * scale + 15],
      left: [x - (wide / 2) * scale - 6, y], right: [x + (wide / 2) * scale + 15, y] };
    for (const side of NAMED.filter((one) => one === "front" || own[one])) {
      const [across, down] = at[side];
      const turn = side === "left" || side === "right" ? { transform: `rotate(-90 ${across} ${down})` } : {};
      add(svg, "text", { x: across, y: down, "text-anchor": "middle", "font-size": 13, fill: "currentColor", ...turn },
        own[side] ?? FRONT);
    }
  }

  // each with their number in the group, and a mark for where they face
  function dancers(svg, paths, letter, placed, scale) {
    const { floor } = bank.sums;
    const { data } = paths;
    const part = paths.parts.find((one) => one.letter === letter);
    const places = bank.paths.at(paths, part.begins);
    const numbers = floor.groupSizes(places.length, data.sections[letter].size, data.sizes)
      .flatMap((many) => Array.from({ length: many }, (_, n) => (many > 1 ? n + 1 : "")));
    const near = scale * floor.nearestTwo(places);
    const [across, letters] = SIZES.find(([wide]) => wide <= near + 0.5) ?? [2 * Math.min(MOST, ACROSS * near), 0];
    const radius = across / 2;
    places.forEach((place, n) => {
      const [x, y] = placed(place);
      const [ahead, aside] = [floor.ahead(place[2]), floor.ahead(place[2] + 90)];
      const point = (far, wide) => `${(x + ahead[0] * far + aside[0] * wide).toFixed(1)} ${(y + ahead[1] * far + aside[1] * wide).toFixed(1)}`;
      add(svg, "path", { d: `M${point(radius * 0.9, -radius * 0.6)}L${point(radius * 1.7, 0)} ${point(radius * 0.9, radius * 0.6)}Z`, fill: "currentColor" });
      add(svg, "circle", { cx: x.toFixed(1), cy: y.toFixed(1), r: radius.toFixed(1), fill: "none", stroke: "currentColor" });
      if (letters && numbers[n]) {
        add(svg, "text", { x: x.toFixed(1), y: (y + letters * 0.36).toFixed(1), "text-anchor": "middle", "font-size": letters, "font-weight": 700, fill: "currentColor" }, String(numbers[n]));
      }
    });
  }

  function add(parent, name, attributes, words = "") {
    const element = document.createElementNS(SPACE[name] ?? SVG, name);
    for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
    element.textContent = words;
    parent?.append(element);
    return element;
  }
})();
