// The floor from above: where everybody is at a moment, drawn. Knows neither counts nor sound.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const { gettext } = bank;
  const dance = (bank.dance ||= {});
  const SVG = "http://www.w3.org/2000/svg";
  const BODY = 0.3, NOSE = 0.26; // metres: a child's shoulders from above, and the mark for where they face
  const SMALLER = 0.22; // how much smaller a dancer is drawn at each level below high
  const MARKS = ["full", "open", "dot", "bar"];
  const EDGE = 0.95; // metres of paper round the hall, for the names of its sides

  // `paths` are those of sums/floor-whole.js; a stage is drawn anew for another class or hall
  dance.stage = (svg, paths) => {
    const [wide, deep] = paths.hall;
    svg.replaceChildren(svg.querySelector("title"));
    svg.setAttribute("viewBox", [-wide / 2 - EDGE, -deep / 2 - EDGE, wide + 2 * EDGE, deep + 2 * EDGE].join(" "));
    const floor = add(svg, "rect", { x: -wide / 2, y: -deep / 2, width: wide, height: deep });
    sides(svg, paths);
    const ways = add(svg, "g", { class: "ways" });
    const marks = paths.first.map(() => {
      const mark = add(svg, "g", { class: "dancer" });
      add(mark, "path", { class: "nose", d: `M0 ${-BODY - NOSE}L${BODY * 0.75} ${-BODY * 0.66}H${-BODY * 0.75}Z` });
      add(mark, "circle", { class: "body", r: BODY });
      add(mark, "circle", { class: "dot", r: BODY * 0.4 });
      add(mark, "path", { class: "bar", d: `M${-BODY * 0.8} 0H${BODY * 0.8}` });
      return mark;
    });

    // everybody at a moment; a dancer lower down is drawn smaller
    function show(moment) {
      bank.paths.at(paths, moment).forEach(([x, y, facing, level], n) => {
        const size = 1 - SMALLER * (2 - level);
        marks[n].setAttribute("transform", `translate(${x.toFixed(3)} ${y.toFixed(3)}) rotate(${facing.toFixed(1)}) scale(${size.toFixed(2)})`);
      });
    }

    // each dancer's mark by role; those of another role than `alone` are pale
    function roles(part, alone) {
      const who = part && part.who;
      marks.forEach((mark, n) => {
        const role = who ? who[n] : 0;
        mark.dataset.mark = MARKS[role % MARKS.length] || MARKS[0];
        mark.classList.toggle("pale", alone >= 0 && role !== alone);
      });
    }

    // the ways of a part, from its start to its end
    function draw(part, shown, alone) {
      ways.replaceChildren();
      if (!shown || !part) return;
      const steps = Math.max(2, Math.ceil(part.lasts) * 2);
      const lines = marks.map(() => []);
      for (let n = 0; n <= steps; n += 1) {
        bank.paths.at(paths, part.begins + (part.lasts * n) / steps).forEach(([x, y], at) => {
          const point = `${x.toFixed(2)} ${y.toFixed(2)}`;
          if (lines[at].at(-1) !== point) lines[at].push(point);
        });
      }
      lines.forEach((points, n) => {
        if (points.length < 2 || (alone >= 0 && part.who && part.who[n] !== alone)) return;
        add(ways, "path", { d: `M${points.join("L")}` });
      });
    }

    return { show, roles, draw, floor };
  };

  // a thick line where watchers sit, and each side's name
  function sides(svg, { hall: [wide, deep], data: { names, lined, waiting } }) {
    const [x, y] = [wide / 2, deep / 2];
    const ends = { front: [-x, -y, x, -y], back: [-x, y, x, y], left: [-x, -y, -x, y], right: [x, -y, x, y] };
    for (const side of lined) {
      const [x1, y1, x2, y2] = ends[side];
      add(svg, "line", { class: "watchers", x1, y1, x2, y2 });
    }
    const places = { front: [0, -y - 0.25, 0], back: [0, y + 0.6, 0], left: [-x - 0.25, 0, -90], right: [x + 0.25, 0, 90] };
    for (const [side, [tx, ty, turn]] of Object.entries(places)) {
      const words = names[side] || signed(side, lined, waiting?.door);
      if (words) add(svg, "text", { transform: `translate(${tx} ${ty}) rotate(${turn})` }).textContent = words;
    }
  }

  // what a side without a name is called: the front, and where watchers sit without it; at one of two walls, not the door's
  function signed(side, lined, door) {
    if (!lined.length) return "";
    const fronted = lined.includes("front");
    if (side === "front") return fronted ? gettext("front: watchers") : gettext("front");
    return !fronted && lined.includes(side) ? (door ? gettext("watchers, or the door") : gettext("watchers")) : "";
  }

  function add(parent, name, attributes) {
    const made = document.createElementNS(SVG, name);
    for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
    parent.append(made);
    return made;
  }
})();
