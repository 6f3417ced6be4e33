// Where every dancer is at a moment, from what build_tools/paths/for_pages.py gives a page.
// Metres from the middle of the floor (x to the right of who faces the front, y to the back), degrees clockwise
// from the front, moments in counts, or in seconds where nothing is counted.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const found = (bank.paths ||= {});
  const FINE = 1000;
  const TENTHS = 10;
  const ZIGS = 2;

  // each dancer's legs, from the page's data: to be asked of at
  found.from = (data) => {
    const legs = data.dancers.map(([x, y, facing, level, way]) => {
      let here = [x / FINE, y / FINE, facing / TENTHS, level];
      return data.ways[way].map((number) => {
        const [start, lasts, right, back = 0, turn = 0, to = 0, bend = 0, zigzag = 0] = data.moves[number];
        const there = [here[0] + right / FINE, here[1] + back / FINE, here[2] + turn / TENTHS, to];
        const leg = { start: start / FINE, end: (start + lasts) / FINE, here, there, bend: bend / FINE, zigzag };
        here = there;
        return leg;
      });
    });
    const first = data.dancers.map(([x, y, facing, level]) => [x / FINE, y / FINE, facing / TENTHS, level]);
    return { legs, first };
  };

  // everybody at a moment: x, y, facing and level (0 low, 1 middle, 2 high, or between) of each
  found.at = (paths, moment) =>
    paths.legs.map((legs, dancer) => {
      const leg = legs[lastBegun(legs, moment)];
      return leg ? during(leg, moment) : paths.first[dancer];
    });

  // the number of the last leg that has begun; -1 before the first
  function lastBegun(legs, moment) {
    let [low, high] = [0, legs.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (legs[middle].start <= moment) low = middle + 1;
      else high = middle;
    }
    return low - 1;
  }

  function during(leg, moment) {
    const part = moment >= leg.end ? 1 : moment <= leg.start ? 0 : (moment - leg.start) / (leg.end - leg.start);
    const { here, there } = leg;
    const [right, back] = [there[0] - here[0], there[1] - here[1]];
    const long = Math.hypot(right, back);
    const out = leg.bend && long ? (leg.bend * (leg.zigzag ? corners(part) : 4 * part * (1 - part))) / long : 0;
    const between = (n) => here[n] + (there[n] - here[n]) * part;
    return [between(0) + back * out, between(1) - right * out, (((between(2) % 360) + 360) % 360), between(3)];
  }

  function corners(part) {
    const phase = (part * ZIGS) % 1;
    if (phase < 0.25) return 4 * phase;
    return phase < 0.75 ? 2 - 4 * phase : 4 * phase - 4;
  }
})();
