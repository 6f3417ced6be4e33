// Where every dancer is at a moment, from the legs that sums/floor-whole.js works out.
// Metres from the middle of the floor (x to the right of who faces the front, y to the back), degrees clockwise
// from the front, moments in counts, or in seconds where nothing is counted.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const found = (bank.paths ||= {});
  const ZIGS = 2;

  // everybody at a moment: x, y, facing and level (0 low, 1 middle, 2 high, or between) of each
  found.at = (paths, moment) =>
    paths.legs.map((legs, dancer) => {
      const leg = legs[lastBegun(legs, moment)];
      return leg ? found.during(leg, moment) : paths.first[dancer];
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

  // where a dancer is at a moment of a leg
  found.during = (leg, moment) => {
    const part = moment >= leg.end ? 1 : moment <= leg.start ? 0 : (moment - leg.start) / (leg.end - leg.start);
    const { here, there } = leg;
    const [right, back] = [there[0] - here[0], there[1] - here[1]];
    const long = Math.hypot(right, back);
    const out = leg.bend && long ? (leg.bend * (leg.zigzag ? corners(part) : 4 * part * (1 - part))) / long : 0;
    const between = (n) => here[n] + (there[n] - here[n]) * part;
    return [between(0) + back * out, between(1) - right * out, (((between(2) % 360) + 360) % 360), between(3)];
  };

  function corners(part) {
    const phase = (part * ZIGS) % 1;
    if (phase < 0.25) return 4 * phase;
    return phase < 0.75 ? 2 - 4 * phase : 4 * phase - 4;
  }
})();
