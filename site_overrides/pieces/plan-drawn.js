// The plans of the floor on a lesson, its card and its wall, drawn anew for a class: who dances at once of it, in this
// hall. Loaded with the floor. Each keeps the height that it has on paper.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const { gettext } = bank;
  const SPACE = { p: "http://www.w3.org/1999/xhtml" }, SVG = "http://www.w3.org/2000/svg"; // of elements
  const EDGE = 22, ACROSS = 0.42; // units round the hall for the names of its sides; of the way to the nearest neighbour
  const MOST = 8; // units of a dancer's radius
  const SIZES = [[20, 16], [15, 13], [11, 9]]; // units across a dancer and of the number in it, as standing_plan.py has them
  const NAMED = ["front", "back", "left", "right"];
  const FRONT = gettext("front");
  const written = new WeakMap();

  // the plans of a page as they are for `room`; back to its own where there is no room to draw for
  bank.plansToday = (root, room) => {
    if (!written.has(root)) written.set(root, { room: null, plans: [...root.querySelectorAll("svg.standing")].map(keep) });
    const kept = written.get(root);
    const now = room?.found ? room : null;
    if (kept.room === now) return;
    kept.room = now;
    for (const plan of kept.plans) {
      const words = now && `${forWhom(plan.letter, now)}.`;
      const shown = now ? drawn(plan.own, plan.letter, now) : plan.own;
      plan.shown.replaceWith(shown);
      plan.shown = shown;
      if (plan.line) plan.line.textContent = words ?? plan.words;
      plan.told?.remove();
      plan.told = now && add(null, "p", { class: "for-whom" }, words);
      if (now) shown.after(plan.told);
    }
  };

  function keep(own) {
    const line = own.parentElement.querySelector("ol li:last-child");
    const letter = [...own.classList].find((one) => one.startsWith("part-")).slice(5).replace("-changed", "'");
    return { own, letter, line, words: line?.textContent, shown: own, told: null };
  }

  function forWhom(letter, room) {
    const { teams } = room.sharing;
    const [wide, deep] = room.turned ? [...room.hall].reverse() : room.hall;
    const many = bank.sums.floor.dancingIn(room, letter);
    const who = many === room.pupils ? gettext("all {pupils}", room)
      : teams.length ? bank.sums.floor.teamInWords(1, teams[0]).slice(0, -1)
        : gettext("{many} of {pupils}, the others sitting", { many, pupils: room.pupils });
    return gettext("Drawn for {who}, in a hall {wide} metres along the front and {deep} deep", { who, wide, deep });
  }

  function drawn(own, letter, room) {
    const { floor } = bank.sums;
    const paths = floor.drawnIn(bank.danceOnFloor, room, floor.dancingIn(room, letter));
    const [, , width, height] = own.getAttribute("viewBox").split(" ").map(Number);
    const [wide, deep] = paths.hall;
    const scale = Math.min((width - 2 * EDGE) / wide, (height - 2 * EDGE) / deep);
    const [x, y] = [width / 2, height / 2];
    const svg = add(null, "svg", { viewBox: `0 0 ${width} ${height}`, class: own.getAttribute("class"), role: "img",
      "aria-label": `${own.querySelector("title")?.textContent ?? gettext("Where they stand")}. ${forWhom(letter, room)}` });
    add(svg, "rect", { x: x - (wide / 2) * scale, y: y - (deep / 2) * scale, width: wide * scale, height: deep * scale,
      fill: "none", stroke: "currentColor" });
    names(svg, paths, x, y, scale);
    dancers(svg, paths, letter, ([across, back]) => [x + across * scale, y + back * scale], scale);
    return svg;
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
