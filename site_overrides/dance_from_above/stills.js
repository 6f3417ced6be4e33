// The pictures part by part, drawn anew for the class and the hall of the day as the moving plan is: what
// build_tools/views/diagrams/floor_plan.py draws for who has chosen none. Loaded with who dances at once there.
(() => {
  const bank = window.danceUnitBank;
  const { gettext } = bank;
  const { floor } = bank.sums;
  const dance = (bank.dance ||= {});
  const SVG = "http://www.w3.org/2000/svg";
  const WIDTH = 360, BESIDE = 20, ABOVE = 22, HIGHEST = 10 / 18, EDGE = 12; // as floor_plan.py and floor_hall.py have them
  const MOVED = 0.3, TURNED = 30, JUST_BEFORE = 1e-6; // metres, degrees, counts
  const A_COUNT = 4; // points of a way to each count
  const SIZE = 7, TIP = 9.5, BASE = 4.6, HALF = 3.4; // of a mark, as floor_marks.py draws it
  let kept = null;

  dance.stills = (paths, data) => {
    kept ??= keep(data);
    const [pupils, [wide, deep]] = [paths.first.length, paths.hall];
    const planned = paths.data === data && [pupils, wide, deep].join() === [data.pupils, ...data.hall].join();
    kept.who.textContent = planned ? kept.said : gettext(
      "Drawn for {pupils} pupils in a hall {wide} metres wide and {deep} deep, with the front at the top.", { pupils, wide, deep });
    for (const still of kept.stills) {
      const shown = planned ? still.own : drawn(still.own, paths, still.letter);
      still.shown.replaceWith(shown);
      still.shown = shown;
      if (!still.line) continue;
      still.line.textContent = planned ? still.words : onAFloor(pupils, wide, deep);
      // who would go through a wall is told above, for the class of the day
      for (const more of still.more) more.hidden = !planned;
    }
  };

  const onAFloor = (pupils, wide, deep) =>
    gettext("Drawn for {pupils} pupils on a floor of {wide} by {deep} metres.", { pupils, wide, deep });

  function keep(data) {
    const letters = [...new Set(data.parts.map((one) => one.letter).filter(Boolean))];
    const who = document.querySelector("[data-drawn-for]");
    const words = onAFloor(data.pupils, ...data.hall);
    const stills = [...document.querySelectorAll(".still")].map((still, n) => {
      const own = still.querySelector("svg.floor");
      const lines = [...still.querySelectorAll(".in-words li")];
      const at = lines.findIndex((one) => one.textContent === words);
      return { own, letter: letters[n], shown: own, line: lines[at], words, more: at < 0 ? [] : lines.slice(at + 1) };
    });
    return { who, said: who.textContent, stills };
  }

  // the same drawing with another hall and other dancers in it; what its marks mean stands below
  function drawn(own, paths, letter) {
    const [title, walls, window_, ...legend] = own.children;
    const [, , width, height] = own.getAttribute("viewBox").split(" ").map(Number);
    const [wide, deep] = paths.hall;
    const scale = Math.min((WIDTH - 2 * BESIDE) / wide, ((WIDTH - 2 * BESIDE) * HIGHEST) / deep);
    const [left, bottom] = [(WIDTH - wide * scale) / 2, ABOVE + deep * scale];
    const before = walls.querySelector("rect");
    const lower = bottom - Number(before.getAttribute("y")) - Number(before.getAttribute("height"));
    const svg = own.cloneNode(false);
    svg.setAttribute("viewBox", `0 0 ${width} ${height + lower}`);
    const frame = { left, right: WIDTH - left, bottom, scale, x: WIDTH / 2, y: ABOVE + (deep * scale) / 2 };
    svg.append(title.cloneNode(true), hall(walls, paths, frame), everybody(window_, paths, letter, frame));
    const below = add(svg, "g", { transform: `translate(0 ${lower})` });
    below.append(...legend.map((one) => one.cloneNode(true)));
    return svg;
  }

  function hall(walls, { data, hall: metres }, { left, right, bottom, scale, x, y }) {
    const made = add(null, "g", {});
    add(made, "rect", { x: left, y: ABOVE, width: right - left, height: bottom - ABOVE, fill: "none", stroke: "currentColor" });
    const ends = { front: [left, ABOVE, right, ABOVE], back: [left, bottom, right, bottom], left: [left, ABOVE, left, bottom], right: [right, ABOVE, right, bottom] };
    for (const [x1, y1, x2, y2] of data.lined.map((side) => ends[side])) {
      add(made, "line", { x1, y1, x2, y2, stroke: "currentColor", "stroke-width": 4 });
    }
    // the edge of the floor that watchers take
    const [west, north, east, south] = floor.dancingArea(metres, data.lined, Math.max(floor.BORDER, data.wide));
    const along = { front: y + north * scale, back: y + south * scale }, across = { left: x + west * scale, right: x + east * scale };
    const d = data.lined.map((side) => (side in along ? `M${left} ${along[side]}H${right}` : `M${across[side]} ${ABOVE}V${bottom}`)).join("");
    if (d) add(made, "path", { d, fill: "none", stroke: "currentColor", "stroke-dasharray": "2 4", class: "quiet" });
    const signs = [...walls.querySelectorAll("text")].map((one) => one.cloneNode(true));
    const { back, left: onLeft, right: onRight } = data.names;
    const sides = [[x, ABOVE - 7], back && [x, bottom + 15], onLeft && [left - 7, y, -90], onRight && [right + 7, y, 90]].filter(Boolean);
    signs.forEach((sign, n) => {
      const [to, down, turn] = sides[n];
      for (const [name, value] of Object.entries({ x: 0, y: 0, transform: `translate(${to} ${down}) rotate(${turn ?? 0})` })) sign.setAttribute(name, value);
      made.append(sign);
    });
    return made;
  }

  // everybody where they start, pale if they end elsewhere, where they end, and their ways; a little around the hall too
  function everybody(window_, paths, letter, { left, right, bottom, scale, x, y }) {
    const box = [left - EDGE, ABOVE - EDGE, right - left + 2 * EDGE, bottom - ABOVE + 2 * EDGE];
    const [, , width, height] = box;
    const made = add(null, "svg", { x: box[0], y: box[1], width, height, viewBox: box.join(" "), "aria-hidden": "true" });
    const part = paths.parts.find((one) => one.letter === letter);
    const at = (moment) => bank.paths.at(paths, moment)
      .map(([across, back, facing]) => [x + across * scale, y + back * scale, facing]);
    const until = Math.max(part.begins, part.begins + part.lasts - JUST_BEFORE);
    const [start, end] = [at(part.begins), at(until)];
    const steps = Math.max(A_COUNT, Math.ceil(part.lasts) * A_COUNT);
    const along = Array.from({ length: steps + 1 }, (_, n) => at(part.begins + ((until - part.begins) * n) / steps));
    const ways = start.map((_, n) => [...new Set(along.map((all) => `${all[n][0].toFixed(1)} ${all[n][1].toFixed(1)}`))])
      .filter((points) => points.length > 1);
    if (ways.length) {
      const dashed = paths.data.sections[letter].danced ? {} : { "stroke-dasharray": "3 3" };
      add(made, "path", { d: ways.map((points) => `M${points.join("L")}`).join(""), fill: "none", stroke: "currentColor", class: "quiet", ...dashed });
    }
    const apart = (one, other) => floor.metres(one, other) > MOVED * scale || Math.abs(((one[2] - other[2] + 540) % 360) - 180) > TURNED;
    if (start.some((one, n) => apart(one, end[n]))) marks(add(made, "g", { class: "quiet", opacity: 0.55 }), start, part.who);
    marks(made, end, part.who);
    return made;
  }

  // a dot and an arrowhead each; roles by shape and fill, as floor_marks.py has them
  function marks(holder, places, who) {
    places.forEach(([x, y, degrees], n) => {
      const kind = Math.max(0, who?.[n] ?? 0) % 6;
      const [dx, dy] = floor.ahead(degrees);
      const point = (far, wide) => `${(x + dx * far - dy * wide).toFixed(1)} ${(y + dy * far + dx * wide).toFixed(1)}`;
      add(holder, "path", { d: `M${point(BASE, HALF)}L${point(TIP, 0)} ${point(BASE, -HALF)}Z` });
      const cap = kind === 2 || kind === 3 || kind === 5 ? "square" : "round";
      const dot = (width, more = {}) => add(holder, "path", { d: `M${x.toFixed(1)} ${y.toFixed(1)}h0`, fill: "none", stroke: "currentColor", "stroke-width": width, "stroke-linecap": cap, ...more });
      dot(SIZE);
      if (kind !== 0 && kind !== 2) dot(SIZE - 2.6, { class: "hollow" });
      if (kind > 3) dot(1.8);
    });
  }

  function add(parent, name, attributes) {
    const made = document.createElementNS(SVG, name);
    for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
    parent?.append(made);
    return made;
  }
})();
