// A hall from above, as build_tools/paths/hall.py has it: metres from the middle of the floor (x to the right of
// who faces the front, y to the back), degrees clockwise from the front. An area is [left, front, right, back].
(() => {
  const bank = (window.danceUnitBank ||= {});
  const floor = ((bank.sums ||= {}).floor ||= {});
  const SIDES = { front: 0, right: 90, back: 180, left: 270 };
  const WATCHERS_DEEP = 1.5, BORDER = 0.5, GRID = 999983; // as hall.py says why

  const metres = (one, other) => Math.hypot(one[0] - other[0], one[1] - other[1]);
  const fine = (value) => Math.floor(value * GRID + 0.5) / GRID;

  Object.assign(floor, {
    SIDES,
    BORDER,
    metres,
    fine,
    rest: (value, by) => ((value % by) + by) % by,
    middle: ([left, front, right, back]) => [(left + right) / 2, (front + back) / 2],
    wide: ([left, , right]) => right - left,
    deep: ([, front, , back]) => back - front,
    ahead: (degrees) => [Math.sin((degrees * Math.PI) / 180), -Math.cos((degrees * Math.PI) / 180)],
    bearing: (start, end) =>
      floor.rest((Math.atan2(end[0] - start[0], start[1] - end[1]) * 180) / Math.PI, 360),

    // a point so many quarters clockwise round the middle of the floor
    turned([x, y], quarters) {
      for (let n = 0; n < floor.rest(quarters, 4); n += 1) [x, y] = [-y, x];
      return [x, y];
    },

    turnedArea([left, front, right, back], quarters) {
      const [[x1, y1], [x2, y2]] = [[left, front], [right, back]].map((corner) => floor.turned(corner, quarters));
      return [Math.min(x1, x2), Math.min(y1, y2), Math.max(x1, x2), Math.max(y1, y2)];
    },

    // where dancers may be put down: the floor less the watchers' strip, or a border, on each side; `free` are the metres
    // that a dance wants free at some of them
    dancingArea([width, depth], lined, border = BORDER, free = {}) {
      const less = (side) => Math.max(lined.includes(side) ? WATCHERS_DEEP : border, free[side] ?? 0);
      const across = Math.min(1, width / 2 / (less("left") + less("right")));
      const along = Math.min(1, depth / 2 / (less("front") + less("back")));
      return [
        -width / 2 + less("left") * across,
        -depth / 2 + less("front") * along,
        width / 2 - less("right") * across,
        depth / 2 - less("back") * along,
      ];
    },

    // metres between the two points that are nearest to one another; no limit for one alone
    nearestTwo(points) {
      const known = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
      let least = Infinity;
      known.forEach((one, n) => {
        for (let m = n + 1; m < known.length && known[m][0] - one[0] < least; m += 1) {
          least = Math.min(least, metres(one, known[m]));
        }
      });
      return fine(least);
    },

    // the first of `things` of which no other is more, by the numbers that `key` gives
    most(things, key) {
      let best = null, reached = null;
      for (const one of things) {
        const now = key(one);
        const at = reached ? now.findIndex((value, n) => value !== reached[n]) : 0;
        if (!reached || (at >= 0 && now[at] > reached[at])) [best, reached] = [one, now];
      }
      return best;
    },
  });
})();
