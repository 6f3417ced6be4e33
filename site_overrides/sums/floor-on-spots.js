// The spots of a team: laid for the largest team, so that each team stands on the same ones. As
// build_tools/paths/on_spots.py has them.
(() => {
  const { floor } = window.danceUnitBank.sums;
  const HAND = 0.1; // metres between two marks that are one
  const CLOSING_UP = ["circle", "semicircle", "horseshoe", "V", "cluster"];

  floor.hasSpots = (standing, sizes) =>
    standing[0] !== "scattered" && (floor.eachItsOwn(standing, sizes) || !CLOSING_UP.includes(standing[0]));

  // { places, closer }: each dancer's place on the spots of `many` groups of `size`; `at` is where all are, null at the
  // very start
  floor.onSpots = (standing, together, size, many, at, area, step, asAClass) => {
    const sizes = floor.sized(together);
    const columns = asAClass && standing[5] ? Math.ceil(many / floor.rowsOfAClass(standing[5], size)) : 0;
    const free = columns < 2; // else in as many rows as a class
    if (!free) standing = standing.map((one, n) => (n === 5 ? columns : one));
    if (!asAClass) sizes.sort((a, b) => (a !== size) - (b !== size) || a - b);
    const own = floor.eachItsOwn(standing, sizes);
    const all = sizes.reduce((sum, one) => sum + one, 0);
    const ends = (standing[7] ?? null) !== null && (standing[9] ?? null) === null;
    if (sizes.some((one) => Math.abs(one - size) > 1 || (ends && one > size))) {
      const { groups, closer } = floor.slots(standing, sizes, area, step, free);
      return { places: floor.byDancer(groups, together, floor.takes(groups, together, at)), closer };
    }
    const laidFor = own ? Array(Math.max(many, sizes.length)).fill(size) : Array(Math.max(many * size, all)).fill(1);
    const laid = floor.slots(standing, laidFor, area, step, free);
    const flat = laid.groups.flat();
    let first = 0;
    const groups = sizes.map((one, n) => (own ? placed(standing, one, laid.groups[n], step) : flat.slice(first, (first += one))));
    return { places: floor.byDancer(groups, together, floor.takes(groups, together, at)), closer: laid.closer };
  };

  // of teams as they are drawn, the largest first: "same", "but odd groups" or "none", as same_spots.py has it
  floor.sameSpots = (teams) => {
    const starts = teams.map(newPlaces);
    if (!teams.length || !starts.flat().every(({ keep }) => keep)) return "none";
    const marked = (place, n) => starts[0][n].groups.flat().some((mark) => floor.metres(place, mark) <= HAND);
    const off = starts.flatMap((team) => team.flatMap(({ groups, size }, n) => groups
      .map((places) => [places.length - size, places.filter((place) => !marked(place, n)).length])));
    if (off.some(([over, many]) => over === 0 && many)) return "none";
    return off.some(([over, many]) => many > Math.max(over, 0)) ? "but odd groups" : "same";
  };

  // each start in new places: whether spots stay there where fewer dance, and the places of each group
  function newPlaces({ parts, data, legs }) {
    return parts.filter(({ letter, spot }) => letter && spot === "new place").map(({ letter, wanted }) => {
      const { start, size } = data.sections[letter];
      const sizes = floor.groupSizes(legs.length, size, data.sizes);
      let first = 0;
      const groups = sizes.map((many) => wanted.slice(first, (first += many)));
      return { size, keep: floor.hasSpots(start, sizes), groups };
    });
  }

  // so many dancers where a usual group has `spot`, their first row level with its own
  floor.inSpot = placed;
  function placed(standing, many, spot, step) {
    if (many === spot.length) return spot;
    const quarters = (floor.SIDES[standing[1]] || 0) / 90;
    const facing = spot.map((point) => floor.turned(point, -quarters));
    const inside = floor.ownShape(standing, many, spot.length, step);
    const [xs, ys] = [0, 1].map((at) => facing.map((point) => point[at]));
    const across = (Math.min(...xs) + Math.max(...xs)) / 2;
    const front = Math.min(...ys) - Math.min(...inside.map(([, y]) => y));
    return inside.map(([x, y]) => floor.turned([x + across, y + front], quarters));
  }
})();
