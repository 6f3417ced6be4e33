// The body that moves beside the floor: sixteen places joined to a line figure. Which places, playing/bodies.js says.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const dance = (bank.dance ||= {});
  const SVG = "http://www.w3.org/2000/svg";
  const ROOM = "-80 -150 160 156"; // a standing child is 100; the floor is at 0
  const ASIDE = [-38, 20]; // at rest: where a move starts and where it ends, beside each other
  const FAR = 4; // how many limbs there are: right arm, left arm, right leg, left leg

  dance.mover = (holder, form) => {
    const svg = make("svg", { class: "drawing body", viewBox: ROOM, "aria-hidden": "true" });
    svg.append(make("path", { class: "ground", d: "M-78 3H78" }));
    const [before, now] = [body(svg, "before"), body(svg, "now")];
    const word = document.createElement("b"), words = document.createElement("p");
    let said = "", shown = "";

    // the body when `time` (0 to 1) of a move is over; without one where it ends, and pale where it starts
    function show(number, time, label, told) {
      const text = time === null ? `${label} ${told}` : label;
      if (text !== said) {
        said = text;
        word.textContent = label;
        words.replaceChildren(word, text.slice(label.length));
      }
      const key = `${number} ${time}`;
      if (key !== shown) {
        shown = key;
        const pale = form.moves[number][1];
        const rest = time === null;
        before.holder.toggleAttribute("hidden", !rest);
        if (rest) before.stand(bank.bodies.at(form, number, 0), pale, ASIDE[0]);
        now.stand(bank.bodies.at(form, number, time ?? 1), pale, rest ? ASIDE[1] : 0);
      }
      if (svg.parentNode !== holder) holder.replaceChildren(svg, words);
    }

    function clear() { holder.replaceChildren(); }

    return { show, clear };
  };

  // one body, drawn by where its sixteen places are; `pale` names the limbs on its far side
  function body(svg, kind) {
    const holder = make("g", { class: kind });
    const limbs = Array.from({ length: FAR }, () => make("path", { class: "limb" }));
    const trunk = make("path", { class: "trunk" }), head = make("circle", { class: "head", r: 9 });
    holder.append(...limbs, trunk, head);
    svg.append(holder);

    function stand(at, pale, aside) {
      holder.setAttribute("transform", `translate(${aside})`);
      const point = (n) => `${at[2 * n].toFixed(1)} ${(-at[2 * n + 1]).toFixed(1)}`;
      const middle = (a, b) => `${((at[2 * a] + at[2 * b]) / 2).toFixed(1)} ${(-(at[2 * a + 1] + at[2 * b + 1]) / 2).toFixed(1)}`;
      const lines = [[2, 3, 4], [5, 6, 7], [8, 9, 10, 11], [12, 13, 14, 15]];
      lines.forEach((line, n) => {
        limbs[n].setAttribute("d", `M${line.map(point).join("L")}`);
        limbs[n].classList.toggle("far", Boolean(pale & (1 << n)));
      });
      trunk.setAttribute("d", `M${middle(2, 5)}L${point(1)}L${middle(8, 12)}M${point(2)}L${point(5)}M${point(8)}L${point(12)}`);
      head.setAttribute("cx", at[0].toFixed(1));
      head.setAttribute("cy", (-at[1]).toFixed(1));
    }

    return { holder, stand };
  }

  function make(name, attributes) {
    const made = document.createElementNS(SVG, name);
    for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
    return made;
  }
})();
